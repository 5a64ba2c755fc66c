//! Tables as spreadsheets and people make them: bytes to text, delimiter, quotes, formula-leading cells.

use core::ops::Range;

use csv::{QuoteStyle, ReaderBuilder, WriterBuilder};
use drivecourse_machine::line_number;
use encoding_rs::{Encoding, UTF_8, UTF_16BE, UTF_16LE, WINDOWS_1252};

use super::{DAMAGED, NO_UTF_8, UTF_16};

/// The text of a file, and a sentence where its encoding had to be guessed.
///
/// A byte order mark decides; else what is valid UTF-8 is UTF-8; else a file in which every second
/// byte is mostly nought is UTF-16; all else is Windows-1252, in which any bytes can be read.
pub fn decode(bytes: &[u8]) -> (String, Option<&'static str>) {
    if let Some((encoding, length)) = Encoding::for_bom(bytes) {
        let (text, damaged) = encoding.decode_without_bom_handling(&bytes[length..]);
        let damaged = damaged.then(|| DAMAGED.text());
        return (text.into_owned(), damaged);
    }
    let (encoding, note) = match zeros(bytes) {
        [even, odd] if odd > bytes.len() / 8 && even < odd / 4 => (UTF_16LE, Some(UTF_16.text())),
        [even, odd] if even > bytes.len() / 8 && odd < even / 4 => (UTF_16BE, Some(UTF_16.text())),
        _ if core::str::from_utf8(bytes).is_ok() => (UTF_8, None),
        _ => (WINDOWS_1252, Some(NO_UTF_8.text())),
    };
    (encoding.decode_without_bom_handling(bytes).0.into_owned(), note)
}

/// How many bytes are nought at even and at odd places.
fn zeros(bytes: &[u8]) -> [usize; 2] {
    let mut count = [0, 0];
    for (place, _) in bytes.iter().enumerate().filter(|(_, byte)| **byte == 0) {
        count[place % 2] += 1;
    }
    count
}

/// One row of a table.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Row {
    /// Counted from 1.
    pub(crate) line: usize,
    /// Where it starts in the text, in bytes.
    pub(crate) at: usize,
    pub(crate) cells: Vec<String>,
}

impl Row {
    /// The cell under the `column`-th heading, trimmed; empty where the row is too short.
    pub(crate) fn cell(&self, column: Option<usize>) -> &str {
        column.and_then(|column| self.cells.get(column)).map_or("", |cell| cell.as_str())
    }

    /// Whether something is written beyond the `columns`-th cell.
    pub(crate) fn overflows(&self, columns: usize) -> bool {
        self.cells.iter().skip(columns).any(|cell| !cell.is_empty())
    }
}

/// A table with its headings, in lower case.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Table {
    pub(crate) headings: Vec<String>,
    pub(crate) rows: Vec<Row>,
    /// What parts its cells.
    pub(crate) delimiter: u8,
    /// Line and place of a quotation mark that is never closed.
    pub(crate) unclosed: Option<(usize, usize)>,
}

impl Table {
    /// Reads a table. The delimiter (comma, semicolon or tab) is the one with which the first row
    /// shows the most of the `known` headings; rows with nothing in them are left out.
    pub(crate) fn read(text: &str, known: &[&str]) -> Self {
        let bom = text.len() - text.trim_start_matches('\u{feff}').len();
        let (first, rest) = text[bom..].split_once('\n').unwrap_or((&text[bom..], ""));
        // Some spreadsheets name the delimiter in a line of its own.
        let named = first.trim_end_matches('\r').strip_prefix("sep=").filter(|name| name.len() == 1);
        let skip = bom + if named.is_some() { first.len() + 1 } else { 0 };
        let body = text.get(skip..).unwrap_or("");
        let shown = if named.is_some() { rest } else { &text[bom..] };
        let delimiter = named.and_then(|name| name.bytes().next()).unwrap_or_else(|| guess(shown, known));
        let mut reader =
            ReaderBuilder::new().delimiter(delimiter).flexible(true).has_headers(false).from_reader(body.as_bytes());
        let (mut headings, mut rows) = (None, Vec::new());
        let (mut line, mut counted) = (1, 0);
        // The text is UTF-8 and rows may have any length, so every record reads.
        for record in reader.records().flatten() {
            let start = record.position().map_or(0, |position| position.byte() as usize);
            let blank = body[start..].len() - body[start..].trim_start_matches(['\n', '\r']).len();
            let at = skip + start + blank;
            line += text[counted..at].matches('\n').count();
            counted = at;
            let cells: Vec<String> = record.iter().map(|cell| unguard(cell.trim()).to_owned()).collect();
            if cells.iter().all(String::is_empty) {
                continue;
            }
            match headings {
                None => headings = Some(cells.iter().map(|cell| cell.trim().to_lowercase()).collect()),
                Some(_) => rows.push(Row { line, at, cells }),
            }
        }
        let unclosed = unclosed(body, delimiter).map(|at| (line_number(text, skip + at), skip + at));
        Self { headings: headings.unwrap_or_default(), rows, delimiter, unclosed }
    }

    /// Where the cell at `place` of `row` stands in `text`, which the table was read from, without the spaces round it.
    pub(crate) fn span(&self, text: &str, row: &Row, place: usize) -> Range<usize> {
        let (mut start, mut cell, mut open) = (row.at, 0, false);
        let mut end = text.len();
        for (at, byte) in text.bytes().enumerate().skip(row.at) {
            let ends = !open && (byte == self.delimiter || byte == b'\n');
            if byte == b'"' && (open || text[start..at].trim().is_empty()) {
                open = !open;
            } else if ends && cell == place {
                end = at;
                break;
            } else if ends {
                (start, cell) = (at + 1, cell + 1);
            }
        }
        let written = &text[start..end];
        let start = start + (written.len() - written.trim_start().len());
        start..start + written.trim().len()
    }

    /// The place of the column called `name`.
    pub(crate) fn column(&self, name: &str) -> Option<usize> {
        self.headings.iter().position(|heading| heading == name)
    }
}

fn guess(text: &str, known: &[&str]) -> u8 {
    let line = text.lines().find(|line| !line.trim().is_empty()).unwrap_or("").to_lowercase();
    let shows = |delimiter: u8| {
        let cells = line.split(char::from(delimiter)).map(|cell| cell.trim().trim_matches('"').trim());
        let count = cells.clone().count();
        (cells.filter(|cell| known.contains(cell)).count(), count)
    };
    // The comma comes last, so that it wins where nothing tells them apart.
    [b'\t', b';', b','].into_iter().max_by_key(|delimiter| shows(*delimiter)).unwrap_or(b',')
}

/// Where a quotation mark opens that nothing closes: all that follows would be one cell.
fn unclosed(text: &str, delimiter: u8) -> Option<usize> {
    let (mut open, mut start, mut bytes) = (None, true, text.bytes().enumerate().peekable());
    while let Some((at, byte)) = bytes.next() {
        match (open, byte) {
            (Some(_), b'"') if bytes.next_if(|(_, next)| *next == b'"').is_none() => open = None,
            (None, b'"') if start => open = Some(at),
            _ => {}
        }
        start = open.is_none() && (byte == delimiter || byte == b'\n' || byte == b'\r');
    }
    open
}

/// Whether a spreadsheet would take the cell for a formula, or our own guard for one.
fn needs_guard(cell: &str) -> bool {
    let first = cell.trim_start_matches(' ').chars().next();
    matches!(first, Some('=' | '+' | '-' | '@' | '\t' | '\r' | '\n' | '＝' | '＋' | '－' | '＠'))
        || cell.starts_with('\'')
}

/// A cell as it is written: one that a spreadsheet would run as a formula gets an apostrophe before it.
pub(crate) fn guard(cell: &str) -> String {
    if needs_guard(cell) { format!("'{cell}") } else { cell.to_owned() }
}

/// A cell as it was before [`guard`].
pub(crate) fn unguard(cell: &str) -> &str {
    cell.strip_prefix('\'').filter(|rest| needs_guard(rest)).unwrap_or(cell)
}

/// A table for spreadsheets: UTF-8 with its mark, commas, CRLF (RFC 4180), formula-leading cells guarded.
pub struct Writer(csv::Writer<Vec<u8>>);

impl Writer {
    /// A table with these headings.
    pub fn new(headings: &[&str]) -> Self {
        let builder = WriterBuilder::new()
            .quote_style(QuoteStyle::Necessary)
            .terminator(csv::Terminator::CRLF)
            .flexible(true)
            .from_writer("\u{feff}".as_bytes().to_vec());
        let mut writer = Self(builder);
        writer.row(headings);
        writer
    }

    /// Adds a row.
    pub fn row<T: AsRef<str>>(&mut self, cells: &[T]) {
        // Writing to memory cannot fail.
        let _ = self.0.write_record(cells.iter().map(|cell| guard(cell.as_ref())));
    }

    /// The text.
    pub fn finish(self) -> String {
        let bytes = self.0.into_inner().unwrap_or_default();
        String::from_utf8_lossy(&bytes).into_owned()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const KNOWN: &[&str] = &["paper", "answer"];

    #[test]
    fn guards_come_off_again() {
        for cell in ["", "=1+1", "-0.12 mm", "'", "'=x", "''=x", "'x", "  @x", "+", "\ttab", "0.005\"", "＝x", "a=b"] {
            assert_eq!(unguard(&guard(cell)), cell);
            let first = guard(cell).trim_start().chars().next();
            assert!(!matches!(first, Some('=' | '+' | '-' | '@' | '＝')), "{cell:?}");
        }
    }

    #[test]
    fn what_is_written_is_read_back() {
        let mut writer = Writer::new(&["paper", "answer"]);
        writer.row(&["a;b", "=HYPERLINK(\"x\")\nline two, and three"]);
        writer.row(&["''", "3/8\""]);
        let table = Table::read(&writer.finish(), KNOWN);
        assert_eq!(table.rows[0].cells, ["a;b", "=HYPERLINK(\"x\")\nline two, and three"]);
        assert_eq!((table.rows[1].line, table.rows[1].cell(Some(1))), (4, "3/8\""));
        assert_eq!(table.unclosed, None);
    }

    #[test]
    fn delimiters_marks_and_empty_rows() {
        for text in [
            "paper;answer\n\n;;\nx;1,5 mm\n",
            "\u{feff}sep=;\r\nPaper;Answer\r\n\r\nx;1,5 mm",
            "answer\tpaper\n\n\n1,5 mm\tx",
            "\"paper\",\"answer\"\n\n,\nx,\"1,5 mm\"\n",
        ] {
            let table = Table::read(text, KNOWN);
            assert_eq!(table.rows.len(), 1, "{text:?}: {table:?}");
            let row = &table.rows[0];
            assert_eq!(row.cell(table.column("answer")), "1,5 mm", "{text:?}");
            assert_eq!(row.cell(table.column("paper")), "x");
            assert_eq!(row.line, 4, "{text:?}");
            assert!(text[row.at..].starts_with(['x', '1']), "{text:?}");
        }
        assert_eq!(Table::read("", KNOWN).rows, []);
        assert_eq!(Table::read("sep=;", KNOWN).rows, []);
    }

    #[test]
    fn cells_are_found_in_the_text() {
        let text = "\u{feff}paper;answer;note\nä ; \"1;5 \"\" mm\" ;x\r\nlast;;end";
        let table = Table::read(text, KNOWN);
        let found = |row: usize, place: usize| &text[table.span(text, &table.rows[row], place)];
        assert_eq!([0, 1, 2].map(|place| found(0, place)), ["ä", "\"1;5 \"\" mm\"", "x"]);
        assert_eq!([0, 1, 2].map(|place| found(1, place)), ["last", "", "end"]);
    }

    #[test]
    fn an_unclosed_quote_is_found() {
        let table = Table::read("paper,answer\nx,\"open\ny,2\n", KNOWN);
        assert_eq!(table.unclosed, Some((2, 15)));
        assert_eq!(Table::read("paper,answer\nx,3/8\"\ny,\"a \"\"b\"\"\"\n", KNOWN).unclosed, None);
    }

    #[test]
    fn bytes_of_every_kind_become_text() {
        let text = "paper;answer\nÄ;1,5 µm ±\n";
        let le: Vec<u8> = text.encode_utf16().flat_map(u16::to_le_bytes).collect();
        let be: Vec<u8> = text.encode_utf16().flat_map(u16::to_be_bytes).collect();
        assert_eq!(decode(text.as_bytes()), (text.into(), None));
        assert_eq!(decode(&[b"\xef\xbb\xbf", text.as_bytes()].concat()), (text.into(), None));
        assert_eq!(decode(&[b"\xff\xfe", le.as_slice()].concat()), (text.into(), None));
        assert_eq!(decode(&[b"\xfe\xff", be.as_slice()].concat()), (text.into(), None));
        assert_eq!(decode(&le).0, text);
        assert_eq!(decode(&be).0, text);
        let (latin, note) = decode(b"paper;answer\n\xc4;1,5 \xb5m \xb1\n");
        assert_eq!(latin, text);
        assert!(note.unwrap().contains("Windows-1252"));
        assert_eq!(decode(b""), (String::new(), None));
    }
}
