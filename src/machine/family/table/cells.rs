//! Parts the text of a table into cells, each with its place.

use core::ops::Range;

use super::Cell;

/// The mark between the cells of the table in `text`.
pub(super) fn delimiter(text: &str) -> u8 {
    let first = text.lines().find(|line| !line.trim().is_empty()).unwrap_or("");
    // The comma comes last, so that it wins where nothing tells them apart.
    let delimiter = [b'\t', b';', b','].into_iter().max_by_key(|mark| first.bytes().filter(|b| b == mark).count());
    delimiter.unwrap_or(b',')
}

/// The cells of every row that holds something, with their places; and where a quotation mark is never closed: from there
/// on the line is read as if it had none.
pub(super) fn rows(text: &str) -> (Vec<Vec<Cell>>, Option<usize>) {
    let delimiter = delimiter(text);
    let bytes = text.as_bytes();
    let (mut rows, mut row) = (Vec::new(), Vec::new());
    let (mut start, mut at) = (text.len() - text.trim_start_matches('\u{feff}').len(), 0);
    at = at.max(start);
    let (mut open, mut never_closed): (Option<usize>, Option<usize>) = (None, None);
    loop {
        let byte = bytes.get(at).copied();
        match (open, byte) {
            (Some(mark), None) => {
                (open, never_closed) = (None, Some(mark));
                at = mark;
            }
            (Some(_), Some(b'"')) if bytes.get(at + 1) == Some(&b'"') => at += 1,
            (Some(_), Some(b'"')) => open = None,
            (Some(_), Some(_)) => {}
            (None, Some(b'"')) if text[start..at].trim().is_empty() && never_closed.is_none() => open = Some(at),
            (None, Some(b)) if b != delimiter && b != b'\n' => {}
            (None, end) => {
                row.push(cell(text, start..at));
                start = at + 1;
                if end != Some(delimiter) {
                    if row.iter().any(|cell| !cell.text.is_empty()) {
                        rows.push(core::mem::take(&mut row));
                    }
                    row.clear();
                }
                if end.is_none() {
                    return (rows, never_closed);
                }
            }
        }
        at += 1;
    }
}

/// The cell written in `span`, without the spaces and quotation marks round it.
fn cell(text: &str, span: Range<usize>) -> Cell {
    let written = &text[span.clone()];
    let inner = written.trim();
    let from = span.start + (written.len() - written.trim_start().len());
    let text = match inner.strip_prefix('"').and_then(|rest| rest.strip_suffix('"')) {
        Some(quoted) => quoted.replace("\"\"", "\"").trim().to_owned(),
        None => inner.to_owned(),
    };
    Cell { text, span: from..from + inner.len() }
}
