//! What the TOML reader finds wrong, in our words: it speaks English only, and does not say how to mend it.
//!
//! What is not known here stays as the reader says it.

use toml::de::Error;

use crate::language::Message;
use crate::messages;
use crate::problem::{Problem, did_you_mean, quoted};
use crate::registry::{Registry, nearest};

use super::line_at;
use super::quotes::Lacking;

messages! { pub(crate) SAYS {
    NOT_VALID = "problem-file-not-valid", "This is not valid here: {why}.";
    NO_NAME = "problem-file-no-name", "Nothing here is called {name}.";
    KNOWN = "problem-file-known", "Known here: {names}.";
    LACKS = "problem-file-lacks", "This lacks {name}.";
    LACKS_MEND = "problem-file-lacks-mend", "Write a line such as this one:\n{line}";
    LACKS_HEADING_MEND = "problem-file-lacks-heading-mend", "Write a heading such as this one, and below it what belongs to it:\n{line}";
    NO_VARIANT = "problem-file-no-variant", "{name} is none of the possibilities here.";
    OTHER_SORT = "problem-file-other-sort", "This is {is}, but {wanted} is wanted here.";
    TEXT = "problem-file-text", "text";
    NUMBER = "problem-file-number", "the number {number}";
    A_LIST = "problem-file-a-list", "a list";
    A_DATE = "problem-file-a-date", "a date";
    A_TABLE = "problem-file-a-table", "a table";
    WANTED_TEXT = "problem-file-wanted-text", "text in quotation marks";
    WANTED_WHOLE = "problem-file-wanted-whole", "a whole number";
    WANTED_COUNT = "problem-file-wanted-count", "a whole number, nought or more";
    WANTED_NUMBER = "problem-file-wanted-number", "a number";
    WANTED_TRUTH = "problem-file-wanted-truth", "true or false";
    WANTED_LIST = "problem-file-wanted-list", "a list in square brackets";
    QUOTE = "problem-file-quote", "Put it in quotation marks.";
    UNQUOTE_NUMBER = "problem-file-unquote-number", "Write the number alone, without quotation marks and without a unit.";
    WRITE_NUMBER = "problem-file-write-number", "Write such a number there.";
    WRITE_TRUTH = "problem-file-write-truth", "Write true or false, without quotation marks.";
    WRITE_LIST = "problem-file-write-list", "Put it in square brackets, with commas between several.";
    WRITE_TABLE = "problem-file-write-table", "Give it a heading of its own, [{name}], and write below it what belongs to it, or put that in curly brackets.";
    WRITE_SO = "problem-file-write-so", "Write it so:\n{line}";
    CURLY = "problem-file-curly", "these quotation marks are not the straight ones";
    CURLY_MEND = "problem-file-curly-mend", "Write \" in place of both; a text editor that is no word processor leaves them straight.";
    LINE_ELSEWHERE = "problem-file-line-elsewhere", "It is a quantity: its line stands under [fixed] or [draw], above the parts with double brackets.";
    UNQUOTED = "problem-file-unquoted", "text stands in quotation marks";
    COMMA = "problem-file-comma", "a number is written with a decimal point";
    HEADING_OPEN = "problem-file-heading-open", "this heading is not closed";
    HEADING_MEND = "problem-file-heading-mend", "Write it as [name], with a bracket at each end.";
    HEADINGS_MEND = "problem-file-headings-mend", "Write it as [[name]], with two brackets at each end.";
    NO_VALUE = "problem-file-no-value", "there is no value here";
    NO_VALUE_MEND = "problem-file-no-value-mend", "Write name = value: a name, the sign of equality, and what it is.";
    ONE_SIGN = "problem-file-one-sign", "there is a second sign of equality";
    ONE_SIGN_MEND = "problem-file-one-sign-mend", "Leave one, or put the whole value in quotation marks.";
    NO_COMMA = "problem-file-no-comma", "there is no comma between two things of this list";
    NO_COMMA_MEND = "problem-file-no-comma-mend", "Put one between them.";
    EXTRA_COMMA = "problem-file-extra-comma", "there is a comma too many";
    EXTRA_COMMA_MEND = "problem-file-extra-comma-mend", "Take it out.";
    LIST_OPEN = "problem-file-list-open", "this list is not closed";
    LIST_OPEN_MEND = "problem-file-list-open-mend", "Put a ] at its end.";
    LIST_UNCLOSED = "problem-file-list-unclosed", "This list is not closed.";
    TABLE_OPEN = "problem-file-table-open", "what begins with a curly bracket is not closed";
    TABLE_OPEN_MEND = "problem-file-table-open-mend", "Put a curly bracket at its end.";
    TEXT_OPEN = "problem-file-text-open", "this text is not closed, or holds what text cannot hold";
    TEXT_OPEN_MEND = "problem-file-text-open-mend", "Begin and end it in the same line, with the same quotation mark; three of them stand round text of several lines.";
    NO_FELLOW = "problem-file-no-fellow", "a quotation mark is lacking";
    TWICE = "problem-file-twice", "this stands here a second time";
    TWICE_MEND = "problem-file-twice-mend", "Take one of them out, or put together what belongs to both.";
    TWO_BRACKETS_MEND = "problem-file-two-brackets-mend", "There may be several of these, so write each heading with two brackets:\n{line}";
    BAD_KEY = "problem-file-bad-key", "this cannot be a name";
    BAD_KEY_MEND = "problem-file-bad-key-mend", "Put it in quotation marks, or write letters, figures, - and _ only.";
    LEFT_OVER = "problem-file-left-over", "something follows that does not belong here";
    LEFT_OVER_MEND = "problem-file-left-over-mend", "Put the whole value in quotation marks, begin a new line for the next name, or put # before a note.";
    NOUGHT = "problem-file-nought", "a number does not begin with nought";
    NOUGHT_MEND = "problem-file-nought-mend", "Leave the nought out, or put the whole value in quotation marks.";
    IN_LIST = "problem-file-in-list", "a sign of equality stands inside a list";
    IN_LIST_MEND = "problem-file-in-list-mend", "Close the list with a ] before it, or put it and its name in curly brackets.";
    LIST_NOT_BEGUN = "problem-file-list-not-begun", "a list ends here that does not begin";
    LIST_NOT_BEGUN_MEND = "problem-file-list-not-begun-mend", "Take the ] out, or put a [ where the list begins.";
    TABLE_NOT_BEGUN = "problem-file-table-not-begun", "a curly bracket closes what none has begun";
    TABLE_NOT_BEGUN_MEND = "problem-file-table-not-begun-mend", "Take this bracket out, or put an opening one where it begins.";
    NO_SUCH_NUMBER = "problem-file-no-such-number", "this is neither a number nor text in quotation marks";
    NO_SUCH_NUMBER_MEND = "problem-file-no-such-number-mend", "Write a number, such as 12 or 0.5, or put text in quotation marks.";
    NO_SUCH_DATE = "problem-file-no-such-date", "this is no date";
    NO_SUCH_DATE_MEND = "problem-file-no-such-date-mend", "Write it as 2026-01-31, or put text in quotation marks.";
    ESCAPE = "problem-file-escape", "a backslash stands before something that it does not go with";
    ESCAPE_MEND = "problem-file-escape-mend", "Write it twice, or put the text in single quotation marks.";
} }

/// Beginnings of what the reader says of what is no TOML, with ours and what to do about it.
const SYNTAX: &[(&str, Message, Message)] = &[
    ("unclosed array table", HEADING_OPEN, HEADINGS_MEND),
    ("unclosed table", HEADING_OPEN, HEADING_MEND),
    ("invalid table", HEADING_OPEN, HEADING_MEND),
    ("key with no value", NO_VALUE, NO_VALUE_MEND),
    ("missing value", NO_VALUE, NO_VALUE_MEND),
    (STRING_UNQUOTED, NO_VALUE, NO_VALUE_MEND),
    ("missing assignment", NO_VALUE, NO_VALUE_MEND),
    ("extra assignment", ONE_SIGN, ONE_SIGN_MEND),
    ("extra `=`", ONE_SIGN, ONE_SIGN_MEND),
    ("missing comma", NO_COMMA, NO_COMMA_MEND),
    ("extra comma", EXTRA_COMMA, EXTRA_COMMA_MEND),
    ("unclosed array", LIST_OPEN, LIST_OPEN_MEND),
    ("unexpected `=` in array", IN_LIST, IN_LIST_MEND),
    ("missing array opening", LIST_NOT_BEGUN, LIST_NOT_BEGUN_MEND),
    ("missing inline table opening", TABLE_NOT_BEGUN, TABLE_NOT_BEGUN_MEND),
    ("invalid float", NO_SUCH_NUMBER, NO_SUCH_NUMBER_MEND),
    ("invalid integer", NO_SUCH_NUMBER, NO_SUCH_NUMBER_MEND),
    ("invalid fraction", NO_SUCH_NUMBER, NO_SUCH_NUMBER_MEND),
    ("invalid exponent", NO_SUCH_NUMBER, NO_SUCH_NUMBER_MEND),
    ("invalid hexadecimal", NO_SUCH_NUMBER, NO_SUCH_NUMBER_MEND),
    ("invalid octal", NO_SUCH_NUMBER, NO_SUCH_NUMBER_MEND),
    ("invalid binary", NO_SUCH_NUMBER, NO_SUCH_NUMBER_MEND),
    ("invalid boolean", NO_SUCH_NUMBER, NO_SUCH_NUMBER_MEND),
    ("`_` may only go between digits", NO_SUCH_NUMBER, NO_SUCH_NUMBER_MEND),
    ("redundant", NO_SUCH_NUMBER, NO_SUCH_NUMBER_MEND),
    ("unexpected sign", NO_SUCH_NUMBER, NO_SUCH_NUMBER_MEND),
    ("integers with a radix", NO_SUCH_NUMBER, NO_SUCH_NUMBER_MEND),
    ("radix must", NO_SUCH_NUMBER, NO_SUCH_NUMBER_MEND),
    ("invalid date", NO_SUCH_DATE, NO_SUCH_DATE_MEND),
    ("invalid value", NO_VALUE, NO_VALUE_MEND),
    ("missing key for inline table", NO_VALUE, NO_VALUE_MEND),
    ("invalid inline table element", NO_VALUE, NO_VALUE_MEND),
    ("invalid key-value pair", NO_VALUE, NO_VALUE_MEND),
    ("keys cannot be multi-line", BAD_KEY, BAD_KEY_MEND),
    ("too few unicode value digits", ESCAPE, ESCAPE_MEND),
    ("unclosed inline table", TABLE_OPEN, TABLE_OPEN_MEND),
    ("invalid basic string", TEXT_OPEN, TEXT_OPEN_MEND),
    ("invalid literal string", TEXT_OPEN, TEXT_OPEN_MEND),
    ("invalid multi-line", TEXT_OPEN, TEXT_OPEN_MEND),
    ("invalid string", TEXT_OPEN, TEXT_OPEN_MEND),
    ("duplicate key", TWICE, TWICE_MEND),
    ("duplicate field", TWICE, TWICE_MEND),
    ("cannot extend value", TWICE, TWICE_MEND),
    ("invalid unquoted key", BAD_KEY, BAD_KEY_MEND),
    ("invalid key", BAD_KEY, BAD_KEY_MEND),
    ("unquoted keys cannot be empty", BAD_KEY, BAD_KEY_MEND),
    ("unexpected key or value", LEFT_OVER, LEFT_OVER_MEND),
    ("unexpected content", LEFT_OVER, LEFT_OVER_MEND),
    ("unexpected leading zero", NOUGHT, NOUGHT_MEND),
    ("missing escaped value", ESCAPE, ESCAPE_MEND),
];

/// Begins what the reader says of text without quotation marks, and where there is nothing.
const STRING_UNQUOTED: &str = "string values must be quoted";

/// A list whose opening bracket, at `at`, has no fellow.
pub(super) fn unclosed_list(at: usize) -> Problem {
    Problem::at(at..at + 1, told!(LIST_UNCLOSED), told!(LIST_OPEN_MEND))
}

/// A line in which a quotation mark is lacking.
pub(super) fn without_fellow(lacking: &Lacking) -> Problem {
    let what = told!(NOT_VALID, "why" = told!(NO_FELLOW));
    Problem::at(lacking.at..lacking.at + 1, what, told!(WRITE_SO, "line" = lacking.meant.as_str()))
}

/// What is no TOML.
pub(super) fn of_syntax(fault: &Error, text: &str) -> Problem {
    let message = fault.message().trim_end();
    let problem = |why: String, mend: String| placed(fault, text, told!(NOT_VALID, "why" = why), mend);
    let span = fault.span().unwrap_or_default();
    if message.starts_with(STRING_UNQUOTED) && !span.is_empty() {
        let line = with_quoted(text, span.start);
        if line.is_none() && text.get(span.start..).is_some_and(|rest| rest.starts_with(PRINTED)) {
            return problem(told!(CURLY), told!(CURLY_MEND));
        }
        let mend = line.map_or_else(|| told!(QUOTE), |line| told!(WRITE_SO, "line" = line));
        return problem(told!(UNQUOTED), mend);
    }
    if let Some(line) = with_point(text, span.start) {
        return problem(told!(COMMA), told!(WRITE_SO, "line" = line));
    }
    match SYNTAX.iter().find(|(begins, ..)| message.starts_with(begins)) {
        Some((_, BAD_KEY, _)) if text.get(span.clone()) == Some(":") => problem(told!(BAD_KEY), told!(NO_VALUE_MEND)),
        Some((_, why, mend)) => problem(told!(why), told!(mend)),
        None => problem(message.to_owned(), String::new()),
    }
}

/// What is TOML, and not of the shape that is wanted. `wanted` is what is wanted for a key that is missing.
pub(super) fn of_shape(error: &Error, text: &str, wanted: Option<&str>) -> Problem {
    let message = error.message().trim_end();
    let problem = |what: String, mend: String| placed(error, text, what, mend);
    for (begins, what) in [("unknown field `", NO_NAME), ("unknown variant `", NO_VARIANT)] {
        let Some(rest) = message.strip_prefix(begins) else { continue };
        // `unknown field `a`, expected one of `b`, `c``: every second piece is a name.
        let name = rest.split('`').next().unwrap_or("");
        let known: Vec<&str> = rest.split('`').skip(2).step_by(2).filter(|name| !name.is_empty()).collect();
        let mend =
            nearest(name, known.iter().copied()).map_or_else(|| told!(KNOWN, "names" = known.join(", ")), did_you_mean);
        // A line of [fixed] that was added at the file's end stands in what comes last there.
        let mend = match Registry::get().find(name) {
            Some(_) => told!(LINE_ELSEWHERE),
            None => mend,
        };
        return problem(told!(what, "name" = quoted(name)), mend);
    }
    if let Some(name) = message.strip_prefix("missing field `").and_then(|rest| rest.split('`').next()) {
        let (message, line) = example(name, wanted.unwrap_or_default());
        return problem(told!(LACKS, "name" = quoted(name)), told!(message, "line" = line));
    }
    let sorts = ["invalid type: ", "invalid value: "].iter().find_map(|begins| message.strip_prefix(begins));
    if let Some((is, wanted)) = sorts.and_then(|sorts| sorts.rsplit_once(", expected "))
        && let Some((is, wanted, mend)) = sort(is, wanted, error, text)
    {
        return problem(told!(OTHER_SORT, "is" = is, "wanted" = wanted), mend);
    }
    of_syntax(error, text)
}

/// Begins what is wanted where that is a list; what each thing in it should be follows.
pub(super) const LIST_OF: &str = "a list of ";

/// What to do where a value of the sort `wanted` is missing, and an example of a line that gives it.
fn example(name: &str, wanted: &str) -> (Message, String) {
    let is_table = |wanted: &str| wanted == "a map" || wanted.starts_with("struct ");
    let value = |wanted: &str| match wanted {
        wanted if wanted.contains("string") => "\"...\"",
        wanted if is_whole(wanted) || wanted == "f64" => "1",
        _ => "...",
    };
    match wanted.strip_prefix(LIST_OF) {
        Some(each) if is_table(each) => (LACKS_HEADING_MEND, format!("[[{name}]]")),
        Some(each) => (LACKS_MEND, format!("{name} = [{}]", value(each))),
        None if is_table(wanted) => (LACKS_HEADING_MEND, format!("[{name}]")),
        None if wanted.contains("sequence") => (LACKS_MEND, format!("{name} = [...]")),
        None => (LACKS_MEND, format!("{name} = {}", value(wanted))),
    }
}

/// Whether these are the reader's words for a whole number.
fn is_whole(wanted: &str) -> bool {
    let bits = wanted.strip_prefix(['u', 'i']);
    bits.is_some_and(|bits| bits == "size" || !bits.is_empty() && bits.bytes().all(|byte| byte.is_ascii_digit()))
}

/// What a value is and what it should be, in our words, and how to mend it.
fn sort(is: &str, wanted: &str, error: &Error, text: &str) -> Option<(String, String, String)> {
    let is_text = is.starts_with("string ");
    let number = ["integer `", "floating point `"].iter().find_map(|begins| is.strip_prefix(begins));
    let said = match (is, number) {
        (_, Some(number)) => told!(NUMBER, "number" = number.trim_end_matches('`')),
        _ if is_text => told!(TEXT),
        ("sequence", _) => told!(A_LIST),
        // The reader calls a date so too.
        ("map", _)
            if error.span().and_then(|span| text.get(span)?.bytes().next()).is_some_and(|b| b.is_ascii_digit()) =>
        {
            told!(A_DATE)
        }
        ("map", _) => told!(A_TABLE),
        _ => is.strip_prefix("boolean `")?.trim_end_matches('`').to_owned(),
    };
    let (wanted, mend) = match wanted {
        "a string" | "a borrowed string" => {
            let line = error.span().and_then(|span| with_quoted(text, span.start));
            let mend = line.map_or_else(|| told!(QUOTE), |line| told!(WRITE_SO, "line" = line));
            (told!(WANTED_TEXT), mend)
        }
        wanted if is_whole(wanted) || wanted == "f64" => {
            let words = match wanted.chars().next() {
                Some('u') => WANTED_COUNT,
                Some('i') => WANTED_WHOLE,
                _ => WANTED_NUMBER,
            };
            (told!(words), if is_text { told!(UNQUOTE_NUMBER) } else { told!(WRITE_NUMBER) })
        }
        "a boolean" => (told!(WANTED_TRUTH), told!(WRITE_TRUTH)),
        "a sequence" => {
            let heading = error.span().and_then(|span| in_two_brackets(text, span.start));
            let mend = heading.map_or_else(|| told!(WRITE_LIST), |line| told!(TWO_BRACKETS_MEND, "line" = line));
            (told!(WANTED_LIST), mend)
        }
        wanted if wanted == "a map" || wanted.starts_with("struct ") => {
            let name = error.span().and_then(|span| assigned(text, span.start)).map_or("...", |(name, _)| name);
            (told!(A_TABLE), told!(WRITE_TABLE, "name" = name))
        }
        _ => return None,
    };
    Some((said, wanted, mend))
}

/// The headings of which a file may have several.
const SEVERAL: [&str; 7] = ["limit", "fault", "pool", "item", "part", "row", "person"];

/// As [`in_two_brackets`], where the heading is one of which a file may have several.
fn several(text: &str, at: usize) -> Option<String> {
    let line = in_two_brackets(text, at)?;
    let name = line.trim_matches(['[', ']']);
    SEVERAL.contains(&name.rsplit('.').next().unwrap_or(name).trim()).then_some(line)
}

/// The heading that `fault` is about with two brackets, where that stands a second time and a file may have several of it.
pub(super) fn repeated(fault: &Error, text: &str) -> Option<String> {
    let known = SYNTAX.iter().find(|(begins, ..)| fault.message().starts_with(begins));
    known.filter(|(_, why, _)| *why == TWICE)?;
    several(text, fault.span()?.start)
}

/// A heading with single brackets at `line`, of which a file may have several: `heading` has two.
pub(super) fn one_bracket(line: core::ops::Range<usize>, heading: &str) -> Problem {
    let what = told!(OTHER_SORT, "is" = told!(A_TABLE), "wanted" = told!(WANTED_LIST));
    Problem::at(line, what, told!(TWO_BRACKETS_MEND, "line" = heading))
}

/// The heading in the line at `at` with two brackets, where it has one at each end.
pub(super) fn in_two_brackets(text: &str, at: usize) -> Option<String> {
    let line = line_at(text, at)?.1.split('#').next()?.trim();
    let name = line.strip_prefix('[')?.strip_suffix(']')?;
    (!name.starts_with('[')).then(|| format!("[[{name}]]"))
}

/// The name and the value of the line at `at`, where it is nothing but `name = value` and perhaps a note.
fn assigned(text: &str, at: usize) -> Option<(&str, &str)> {
    let (from, line) = line_at(text, at)?;
    let (name, value) = line.split_once('=')?;
    let value = value.split('#').next()?.trim();
    let plain = !value.is_empty() && !value.contains(['"', '\'', '[', ']', '{', '}', '=', '\\']);
    // The place is one of the value, not of the name.
    (plain && at > from + name.len()).then_some((name.trim(), value))
}

/// Quotation marks of print, which TOML does not know.
const PRINTED: [char; 8] = ['„', '“', '”', '‚', '‘', '’', '«', '»'];

/// The line at `at` with its value in quotation marks.
fn with_quoted(text: &str, at: usize) -> Option<String> {
    let (name, value) = assigned(text, at)?;
    Some(format!("{name} = {}", quoted(value.trim_matches(PRINTED))))
}

/// The line at `at` with a decimal point, where its value is a number with a comma.
fn with_point(text: &str, at: usize) -> Option<String> {
    let (name, value) = assigned(text, at)?;
    let (whole, parts) = value.split_once(',')?;
    let figures = |text: &str| !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
    (figures(whole.trim_start_matches('-')) && figures(parts)).then(|| format!("{name} = {whole}.{parts}"))
}

/// A problem at the place of `error`.
fn placed(error: &Error, text: &str, what: String, mend: String) -> Problem {
    let mut span = error.span();
    // The end of the file is behind its last line: say it on that line.
    if let Some(span) = &mut span
        && span.start >= text.len()
    {
        let last = text.trim_end().len();
        *span = last.saturating_sub(1)..last;
    }
    Problem { span, what, mend }
}
