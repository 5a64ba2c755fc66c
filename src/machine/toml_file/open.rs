//! Lists that are never closed: the TOML reader takes all that follows for things in the list, and stumbles over each.

use core::ops::Range;

/// Lists in a text that are not closed before the next name or heading, and the text as it reads with them closed.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Open {
    /// Where the opening brackets stand that nothing closes, in bytes. None of a list that holds a text without its end:
    /// the bracket is there, inside that text, and the reader tells of the text.
    pub brackets: Vec<usize>,
    /// The text with brackets put in.
    pub closed: String,
    /// Where in the text brackets were put in, and how.
    put_in: Vec<(usize, String)>,
}

impl Open {
    /// The place in the text itself of a place in the closed one.
    pub(super) fn place(&self, span: Range<usize>) -> Range<usize> {
        let back = |at: usize| {
            let mut before = 0;
            for (place, put) in &self.put_in {
                if at < place + before {
                    break;
                }
                before += put.len().min(at - (place + before));
            }
            at - before
        };
        back(span.start)..back(span.end)
    }
}

/// What is not closed in `text`, if there is something. To be asked of a text only that is no TOML: in one that is, no
/// list holds a line that begins with a name and the sign of equality, or a heading.
pub(super) fn unclosed(text: &str) -> Option<Open> {
    let bytes = text.as_bytes();
    let mut open = Open { brackets: Vec::new(), closed: String::new(), put_in: Vec::new() };
    let mut at = 0;
    while at < bytes.len() {
        at = match assignment(text, at) {
            Some(value) => statement(text, value, &mut open),
            None => line_end(text, at) + 1,
        };
    }
    if open.put_in.is_empty() {
        return None;
    }
    let mut from = 0;
    for (place, put) in &open.put_in {
        open.closed.push_str(&text[from..*place]);
        open.closed.push_str(put);
        from = *place;
    }
    open.closed.push_str(&text[from..]);
    Some(open)
}

/// Reads the value that begins at `at`; where the next line begins that is none of its own.
fn statement(text: &str, mut at: usize, open: &mut Open) -> usize {
    let bytes = text.as_bytes();
    // Brackets that wait for their fellows, and the end of the last thing that is no remark.
    let (mut waiting, mut last): (Vec<usize>, usize) = (Vec::new(), at);
    let mut cut_off = false;
    let lists = |waiting: &[usize]| waiting.iter().all(|place| bytes[*place] == b'[');
    while at < bytes.len() {
        match bytes[at] {
            b'\n' if waiting.is_empty() => return at + 1,
            b'\n' if lists(&waiting) && (assignment(text, at + 1).is_some() || is_heading(text, at + 1)) => {
                at += 1;
                break;
            }
            b'\n' | b'\r' | b' ' | b'\t' => at += 1,
            b'#' => at = line_end(text, at),
            quote @ (b'"' | b'\'') => {
                let whole;
                (at, whole) = text_end(text, at, quote);
                cut_off |= !whole;
                last = at;
            }
            byte => {
                match byte {
                    b'[' | b'{' => waiting.push(at),
                    b']' | b'}' => {
                        // One that does not fit closes what is inside as well: the reader tells of that.
                        let fellow = if byte == b']' { b'[' } else { b'{' };
                        if let Some(place) = waiting.iter().rposition(|place| bytes[*place] == fellow) {
                            waiting.truncate(place);
                        }
                    }
                    _ => {}
                }
                at += 1;
                last = at;
            }
        }
    }
    if !waiting.is_empty() && lists(&waiting) {
        if !cut_off {
            open.brackets.push(waiting[0]);
        }
        // A text without its end goes on to the end of its line, and would swallow what is put in there.
        let begin = if cut_off { "\n" } else { "" };
        open.put_in.push((last, format!("{begin}{}", "]".repeat(waiting.len()))));
    }
    at
}

/// Behind the sign of equality, where the line at `at` begins with a name and that sign.
fn assignment(text: &str, at: usize) -> Option<usize> {
    let bytes = text.as_bytes();
    let begin = blanks(text, at);
    let mut at = begin;
    loop {
        match *bytes.get(at)? {
            b'=' if at > begin => return Some(at + 1),
            quote @ (b'"' | b'\'') => {
                let (end, whole) = text_end(text, at, quote);
                at = if whole { end } else { return None };
            }
            b'-' | b'_' | b'.' | b' ' | b'\t' => at += 1,
            byte if byte.is_ascii_alphanumeric() => at += 1,
            _ => return None,
        }
    }
}

/// Whether the line at `at` is a heading such as `[item]` or `[[item.part]]`, and not a list inside a list.
fn is_heading(text: &str, at: usize) -> bool {
    let line = text[at.min(text.len())..].lines().next().unwrap_or("");
    let line = line.split('#').next().unwrap_or("").trim();
    let inner = line.strip_prefix("[[").and_then(|rest| rest.strip_suffix("]]"));
    let Some(inner) = inner.or_else(|| line.strip_prefix('[')?.strip_suffix(']')) else { return false };
    let name = inner.trim();
    name.starts_with(|c: char| c.is_ascii_alphabetic())
        && name.bytes().all(|byte| byte.is_ascii_alphanumeric() || b"-_.".contains(&byte))
        && !["true", "false", "inf", "nan"].contains(&name)
}

/// The end of the text that begins with a quotation mark at `at`, and whether it has one of its own: without, it goes on
/// to the end of its line, or of the file with three marks.
fn text_end(text: &str, at: usize, quote: u8) -> (usize, bool) {
    let bytes = text.as_bytes();
    let three = [quote; 3];
    let long = bytes[at..].starts_with(&three);
    let mut at = at + if long { 3 } else { 1 };
    while at < bytes.len() {
        match bytes[at] {
            b'\\' if quote == b'"' && bytes.get(at + 1) != Some(&b'\n') => at += 2,
            b'\n' if !long => return (at, false),
            byte if byte == quote && !long => return (at + 1, true),
            _ if long && bytes[at..].starts_with(&three) => {
                // Up to two marks more belong to the text.
                let marks = bytes[at..].iter().take_while(|byte| **byte == quote).count().min(5);
                return (at + marks, true);
            }
            _ => at += 1,
        }
    }
    (text.len(), false)
}

fn blanks(text: &str, at: usize) -> usize {
    text.bytes().skip(at).take_while(|byte| matches!(byte, b' ' | b'\t')).count() + at
}

/// The end of the line at `at`: its newline, or the end of the text.
fn line_end(text: &str, at: usize) -> usize {
    text.as_bytes()[at..].iter().position(|byte| *byte == b'\n').map_or(text.len(), |length| at + length)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_list_ends_before_the_next_name_or_heading() {
        for (text, closed) in [
            ("a = [\"x\", \"y\" # two\nb = 1\n", "a = [\"x\", \"y\"] # two\nb = 1\n"),
            ("a = [\n  1,\n  [2, 3],\n\n[[next.one]]\n", "a = [\n  1,\n  [2, 3],]\n\n[[next.one]]\n"),
            ("a = [[1], [2\n\"b.c\" = [3\n", "a = [[1], [2]]\n\"b.c\" = [3]\n"),
            ("a = [\n { b = 1 },\nc = 2\n", "a = [\n { b = 1 },]\nc = 2\n"),
            ("a = [1, 2", "a = [1, 2]"),
            ("a = [\"ö\"\nü = 1\nb = 2", "a = [\"ö\"\nü = 1]\nb = 2"),
        ] {
            assert_eq!(unclosed(text).map(|open| open.closed).as_deref(), Some(closed), "{text}");
        }
    }

    #[test]
    fn what_is_closed_or_is_no_list_is_left_alone() {
        for text in [
            "",
            "a = [\n  1, # b = [\n  \"[\", '[', \"\\\"[\",\n]\nb = 2\n",
            "a = \"\"\"\nb = [\n\"\"\"\nc = '''\n[[d\n'''\n",
            "[[heading\na = 1\n",
            "a = [ { b = 1,\n c = 2 } ]\n",
            "a = [\n[true],\n[1]\n]\n",
            "a = { b = [1, }\nc = 2\n",
            "a [1\nb = 2",
        ] {
            assert_eq!(unclosed(text), None, "{text}");
        }
    }

    #[test]
    fn places_in_the_closed_text_lead_back() {
        let text = "a = [[1\nb = 2\nc = [3\nd = 4\n";
        let open = unclosed(text).unwrap();
        assert_eq!(open.brackets, [4, 18]);
        for name in ["a", "b", "c", "d", "1", "2", "3", "4"] {
            let (here, there) = (text.find(name).unwrap(), open.closed.find(name).unwrap());
            assert_eq!(open.place(there..there + 1).start, here, "{name}");
        }
    }

    #[test]
    fn no_text_cut_off_anywhere_or_with_a_byte_turned_panics() {
        let text = "a = [\"ö\\\"\", '''x''', [1]]\nb = { c = [1] }\n[[d]]\n";
        let cuts = text.char_indices().flat_map(|(at, c)| {
            let turned = ['"', '\'', '[', ']', '{', '\\', '\n', '=']
                .map(|mark| format!("{}{mark}{}", &text[..at], &text[at + c.len_utf8()..]));
            turned.into_iter().chain([text[..at].to_owned()])
        });
        for text in cuts {
            if let Some(open) = unclosed(&text) {
                assert!(open.brackets.iter().all(|at| text.as_bytes()[*at] == b'['), "{text}");
                let end = open.closed.len();
                assert_eq!(open.place(0..end), 0..text.len(), "{text}");
            }
        }
    }
}
