//! Reads a TOML file into its type with every fault of its shape found in one pass.

mod open;
mod quotes;
mod said;

use core::ops::Range;

use serde::de::DeserializeOwned;
use toml::Spanned;
use toml::de::{DeArray, DeTable, DeValue, Deserializer, Error};

use crate::problem::Problem;
pub(crate) use said::SAYS;
use said::{in_two_brackets, of_shape, of_syntax, one_bracket, repeated, unclosed_list, without_fellow};

/// Faults of shape reported at most; whoever has more begins with these.
const MOST: usize = 50;

/// Reads `text`; where something does not belong, it is left out and the rest is read again, so that one pass tells all.
///
/// # Errors
/// Every [`Problem`] of syntax, or, where there is none, of shape: unknown and missing keys, values of another type.
pub fn read_toml<T: DeserializeOwned>(text: &str) -> Result<T, Vec<Problem>> {
    if let Ok(value) = toml::from_str(text) {
        return Ok(value);
    }
    if !DeTable::parse_recoverable(text).1.is_empty()
        && let Some(open) = open::unclosed(text)
    {
        // All that the reader stumbles over inside follows from that. What else is wrong, it finds with the list closed.
        let mut problems = read_closed::<T>(&open.closed).err().unwrap_or_default();
        problems.iter_mut().for_each(|problem| problem.span = problem.span.take().map(|span| open.place(span)));
        problems.extend(open.brackets.iter().map(|at| unclosed_list(*at)));
        problems.sort_by_key(|problem| problem.span.as_ref().map(|span| span.start));
        if !problems.is_empty() {
            return Err(problems);
        }
    }
    read_closed(text)
}

/// As [`read_toml`], of a text whose lists are closed.
fn read_closed<T: DeserializeOwned>(text: &str) -> Result<T, Vec<Problem>> {
    let error = match toml::from_str(text) {
        Ok(value) => return Ok(value),
        Err(error) => error,
    };
    let (mut table, faults) = DeTable::parse_recoverable(text);
    if !faults.is_empty() {
        let mut problems = of_syntax_faults(&faults, text);
        // A misspelt heading may be what the rest stumbles over; what stumbles is taken out until it is found.
        for _ in 0..MOST {
            let Err(error) = T::deserialize(Deserializer::from(table.clone())) else { break };
            if error.message().starts_with("unknown field") && !error.message().starts_with("unknown field ``") {
                problems.push(of_shape(&error, text, None));
                break;
            }
            if error.span().and_then(|span| remove(table.get_mut(), &span)).is_none() {
                break;
            }
        }
        problems.sort_by_key(|problem| problem.span.as_ref().map(|span| span.start));
        return Err(problems);
    }
    let (mut problems, mut robbed, mut next) = (Vec::new(), Vec::new(), error);
    while problems.len() < MOST {
        // What was taken out of a table, or stood there under a wrong name, may be missed there afterwards: that is no
        // fault of its own.
        let missing = named(&next, "missing field `");
        let taken = |(span, name): &(Option<Range<usize>>, Option<String>)| {
            next.span() == *span && (name.is_none() || name.as_deref() == missing)
        };
        if missing.is_none() || !robbed.iter().any(taken) {
            problems.push(of_shape(&next, text, wanted::<T>(&next, &table).as_deref()));
        }
        let Some(span) = next.span() else { break };
        let whole = table.span();
        let Some((from, name)) = remove(table.get_mut(), &span) else { break };
        // An unknown name may have been meant for any that is missing.
        let name = name.filter(|_| named(&next, "unknown field `").is_none());
        robbed.push((Some(from.unwrap_or(whole)), name));
        match T::deserialize(Deserializer::from(table.clone())) {
            Ok(_) => break,
            Err(error) => next = error,
        }
    }
    Err(problems)
}

/// Where the line begins that the byte `at` stands in, and the line; `None` where `text` has no line there.
fn line_at(text: &str, at: usize) -> Option<(usize, &str)> {
    let from = text.get(..at)?.rfind('\n').map_or(0, |newline| newline + 1);
    Some((from, text[from..].lines().next()?))
}

/// What is no TOML. All that is wrong in a line that lacks a quotation mark follows from that; so does it where a heading with
/// single brackets stands several times: what is below the later ones is read as if it stood below the first. Each of them is
/// told of, the first too.
fn of_syntax_faults(faults: &[Error], text: &str) -> Vec<Problem> {
    let mut lines: Vec<Range<usize>> = Vec::new();
    let mut problems = Vec::new();
    for fault in faults {
        let at = fault.span().map_or(0, |span| span.start);
        if lines.iter().any(|line| (line.start..=line.end).contains(&at)) {
            continue;
        }
        if let Some(lacking) = quotes::lacking(text, at) {
            problems.push(without_fellow(&lacking));
            lines.push(lacking.line);
        } else if let Some(heading) = repeated(fault, text) {
            for line in headings(text).filter(|line| in_two_brackets(text, line.start).as_ref() == Some(&heading)) {
                let end = headings(text).find(|next| next.start > line.start).map_or(text.len(), |next| next.start);
                lines.push(line.start..end.saturating_sub(1));
                problems.push(one_bracket(line, &heading));
            }
        } else {
            problems.push(of_syntax(fault, text));
        }
    }
    problems
}

/// The places of the lines that are headings.
fn headings(text: &str) -> impl Iterator<Item = Range<usize>> + '_ {
    let mut start = 0;
    let lines = text.split_inclusive('\n').map(move |line| {
        let place = start..start + line.trim_end().len();
        start += line.len();
        place
    });
    lines.filter(|line| text[line.clone()].trim_start().starts_with('['))
}

/// What is wrong with the one piece of TOML in `text`, which could not be read into its type because of `error`.
pub fn toml_problem<T: DeserializeOwned>(error: &Error, text: &str) -> Problem {
    let (table, faults) = DeTable::parse_recoverable(text);
    if faults.is_empty() {
        return of_shape(error, text, wanted::<T>(error, &table).as_deref());
    }
    match open::unclosed(text).and_then(|open| open.brackets.first().copied()) {
        Some(at) => unclosed_list(at),
        None => of_syntax_faults(&faults, text).swap_remove(0),
    }
}

/// What the reader wants for the key that `error` misses, in its own words: it is asked with a value that it does not
/// want, and where it wants a list with a list of that.
fn wanted<T: DeserializeOwned>(error: &Error, table: &Spanned<DeTable<'_>>) -> Option<String> {
    const NOWHERE: Range<usize> = usize::MAX - 1..usize::MAX;
    let name = named(error, "missing field `")?;
    let span = error.span()?;
    let wants = |value: DeValue<'static>| {
        let mut table = table.clone();
        let whole = table.span() == span;
        let lacking = if whole { table.get_mut() } else { inside(table.get_mut(), &span)? };
        lacking.insert(Spanned::new(NOWHERE, name.to_owned().into()), Spanned::new(NOWHERE, value));
        let error = T::deserialize(Deserializer::from(table)).err().filter(|error| error.span() == Some(NOWHERE))?;
        error.message().strip_prefix("invalid type: boolean `true`, expected ").map(str::to_owned)
    };
    let wanted = wants(DeValue::Boolean(true))?;
    let mut list = DeArray::new();
    list.push(Spanned::new(NOWHERE, DeValue::Boolean(true)));
    let each = if wanted.contains("sequence") { wants(DeValue::Array(list)) } else { None };
    Some(each.map_or(wanted, |each| format!("{}{each}", said::LIST_OF)))
}

/// The table at `span` inside `table`.
fn inside<'t, 'i>(table: &'t mut DeTable<'i>, span: &Range<usize>) -> Option<&'t mut DeTable<'i>> {
    table.iter_mut().find_map(|(_, value)| inside_value(value, span))
}

fn inside_value<'t, 'i>(value: &'t mut Spanned<DeValue<'i>>, span: &Range<usize>) -> Option<&'t mut DeTable<'i>> {
    let found = value.span() == *span;
    match value.get_mut() {
        DeValue::Table(table) => {
            if found {
                Some(table)
            } else {
                inside(table, span)
            }
        }
        DeValue::Array(array) => array.iter_mut().find_map(|item| inside_value(item, span)),
        _ => None,
    }
}

/// The name that `error` is about, where it begins so.
fn named<'e>(error: &'e Error, begins: &str) -> Option<&'e str> {
    error.message().strip_prefix(begins)?.split('`').next()
}

/// Takes the key or value at `span` out of `table` or of one inside it; the span of what it was taken out of, `None`
/// inside for the file itself, and its name, where it had one.
fn remove(table: &mut DeTable<'_>, span: &Range<usize>) -> Option<(Option<Range<usize>>, Option<String>)> {
    let found = table.iter().find(|(key, value)| key.span() == *span || value.span() == *span);
    if let Some(key) = found.map(|(key, _)| key.clone()) {
        let name = key.get_ref().to_string();
        return table.remove(&key).map(|_| (None, Some(name)));
    }
    table.iter_mut().find_map(|(_, value)| remove_inside(value, span)).map(|(from, name)| (Some(from), name))
}

fn remove_inside(value: &mut Spanned<DeValue<'_>>, span: &Range<usize>) -> Option<(Range<usize>, Option<String>)> {
    let own = value.span();
    match value.get_mut() {
        DeValue::Table(table) => remove(table, span).map(|(from, name)| (from.unwrap_or(own), name)),
        DeValue::Array(array) => {
            if array.iter().any(|item| item.span() == *span) {
                *array = array.clone().into_iter().filter(|item| item.span() != *span).collect();
                return Some((own, None));
            }
            array.iter_mut().find_map(|item| remove_inside(item, span))
        }
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[derive(Debug, serde::Deserialize)]
    #[serde(deny_unknown_fields)]
    #[allow(dead_code)]
    struct File {
        name: String,
        #[serde(default)]
        row: Vec<Row>,
    }

    #[derive(Debug, serde::Deserialize)]
    #[serde(deny_unknown_fields)]
    #[allow(dead_code)]
    struct Row {
        count: u32,
        because: Option<String>,
    }

    fn told(text: &str) -> Vec<(usize, String)> {
        let problems = read_toml::<File>(text).unwrap_err();
        problems.iter().map(|problem| (problem.line_column(text).unwrap().0, problem.to_string())).collect()
    }

    #[test]
    fn a_misspelt_heading_is_named_beside_what_stumbles_over_it() {
        // Without its own heading `row.more` makes a table, which the next `[[row]]` cannot add to.
        let text = "name = \"x\"\n[[rowq]]\ncount = 1\n[[row.more]]\ncount = 2\n[[row]]\ncount = 3\n";
        let told = told(text);
        assert!(told.iter().any(|(line, says)| *line == 2 && says.contains("Did you mean \"row\"?")), "{told:?}");
    }

    #[test]
    fn each_heading_that_wants_two_brackets_is_told_of_and_not_what_is_below_it() {
        let text = "name = \"x\"\n[row] # a\ncount = 1\n[row]\ncount = 2\n\n[row]\ncount = 3\nbecause = \"z\"\n";
        let said = told(text);
        assert_eq!(said.iter().map(|(line, _)| *line).collect::<Vec<_>>(), [2, 4, 7], "{said:?}");
        assert!(said.iter().all(|(_, says)| says.ends_with("\n[[row]]")), "{said:?}");
        // A name that stands twice below one heading is another fault; so is what is wrong below another.
        let twice = told("[[row]]\ncount = 1\ncount = 2\n[row]\ncount = 3\n[name]\n[name]\n");
        assert_eq!(twice.iter().map(|(line, _)| *line).collect::<Vec<_>>(), [3, 4, 7], "{twice:?}");
    }

    #[test]
    fn every_fault_of_shape_is_found() {
        let text = "name = \"x\"\nnmae = 1\n[[row]]\ncount = 1\nbecuase = \"y\"\n[[row]]\ncount = \"two\"\n[[row]]\ncount = 2\nbecause = 3\n";
        let told = told(text);
        assert_eq!(told.iter().map(|(line, _)| *line).collect::<Vec<_>>(), [2, 5, 7, 10], "{told:?}");
        assert!(told[0].1.contains("Did you mean \"name\"?"), "{told:?}");
        assert!(told[1].1.contains("Did you mean \"because\"?"), "{told:?}");
    }

    #[test]
    fn syntax_and_what_is_missing() {
        assert_eq!(
            told("name = \"x\"\n[[row]]\nbecause = \"z\"\n")[0].1,
            "This lacks \"count\". Write a line such as this one:\ncount = 1"
        );
        // One that is there and cannot be read is not missed as well.
        assert_eq!(told("name = 3\n").len(), 1);
        let broken = told("name = \"x\n[[row]\ncount = 1\n");
        assert!(broken.len() >= 2 && broken[0].0 == 1 && broken[1].0 == 2, "{broken:?}");
        assert_eq!(told("name = \"x\"\n[[row]]\ncount = \"\"\"\n").last().unwrap().0, 3);
    }

    #[test]
    fn a_list_that_is_not_closed_is_told_of_once_at_its_bracket() {
        #[derive(Debug, serde::Deserialize)]
        #[serde(deny_unknown_fields)]
        #[allow(dead_code)]
        struct Lists {
            from: Vec<String>,
            marks: u32,
            because: Option<String>,
        }
        let told = |text: &str| -> Vec<(Option<(usize, usize)>, String)> {
            let problems = read_toml::<Lists>(text).unwrap_err();
            assert!(toml_problem::<Lists>(&toml::from_str::<Lists>(text).unwrap_err(), text).span.is_some());
            problems.iter().map(|problem| (problem.line_column(text), problem.what.clone())).collect()
        };
        let open = "This list is not closed.".to_owned();
        let rest = "marks = 2\nbecause = \"it, = is [so\"\n";
        assert_eq!(told(&format!("from = [\"a\", \"b\"\n{rest}")), [(Some((1, 8)), open.clone())]);
        assert_eq!(told(&format!("{rest}from = [\n    \"a\",\n    \"b\",")), [(Some((3, 8)), open.clone())]);
        // What else is wrong is told of in its own place.
        let both = told("from = [\"a\", \"b\"\nmarks = \"two\"\nbecuase = \"so\"\n");
        assert_eq!(both.iter().map(|(place, _)| place.unwrap()).collect::<Vec<_>>(), [(1, 8), (2, 9), (3, 1)]);
        assert_eq!(both[0].1, open);
        // The bracket is there, and stands in a text that has no end.
        let text = told("from = [\"a\", \"b]\nmarks = 2\n");
        assert!(text.iter().all(|(place, what)| place.unwrap().0 == 1 && *what != open), "{text:?}");
    }

    #[test]
    fn what_the_reader_says_is_said_in_our_words_with_a_line_to_copy() {
        for (text, what, mend) in [
            ("name = too tight", "text stands in quotation marks", "\nname = \"too tight\""),
            ("name = 7.5 kW # at the plate", "text stands in quotation marks", "\nname = \"7.5 kW\""),
            ("name = „x y“", "text stands in quotation marks", "\nname = \"x y\""),
            ("name = 80", "is the number 80, but text in quotation marks is wanted", "\nname = \"80\""),
            ("name = [1]", "is a list, but text", "Put it in quotation marks."),
            ("name = 2026-01-01", "is a date, but text", "\nname = \"2026-01-01\""),
            ("name =", "no value here", "Write name = value"),
            ("name", "no value here", "Write name = value"),
            ("name: \"x\"", "cannot be a name", "Write name = value"),
            ("name = \"x", "mark is lacking", "\nname = \"x\""),
            ("name = \"x\u{1}\"", "not closed", "same quotation mark"),
            ("name = \"x\"\nname = \"y\"", "a second time", "Take one of them out"),
            ("name = \"x\" y", "does not belong here", "# before a note"),
            ("[[row]]\ncount = 1,5", "with a decimal point", "\ncount = 1.5"),
            ("[[row]]\ncount = 1.5", "is the number 1.5, but a whole number, nought or more", "Write such a number"),
            ("[[row]]\ncount = \"1\"", "is text, but a whole number", "without quotation marks"),
            ("row = 3", "is the number 3, but a list", "square brackets"),
            ("row = [3]", "is the number 3, but a table", "heading of its own"),
            ("[row]\ncount = 1", "is a table, but a list", "\n[[row]]"),
            ("[row]\ncount = 1\n[row]\ncount = 2", "is a table, but a list", "\n[[row]]"),
            ("[[row]", "heading is not closed", "[[name]]"),
            ("[row", "heading is not closed", "[name]"),
            ("row = [\n{ count = 1 }, = 2\n]", "inside a list", "curly brackets"),
            ("row = [1, 2]]", "does not belong here", "# before a note"),
            ("name = 2026-01-99", "no date", "2026-01-31"),
            ("[[row]]\ncount = 1..5", "neither a number", "such as 12 or 0.5"),
        ] {
            let problem = &read_toml::<File>(text).unwrap_err()[0];
            assert!(problem.what.contains(what), "{text}: {problem}");
            assert!(problem.mend.contains(mend), "{text}: {problem}");
        }
    }

    #[test]
    fn a_line_for_what_is_missing_is_of_the_sort_that_is_wanted() {
        #[derive(Debug, serde::Deserialize)]
        #[allow(dead_code)]
        struct Wants<T> {
            it: T,
        }
        fn line<T: DeserializeOwned + core::fmt::Debug>() -> String {
            read_toml::<Wants<T>>("").unwrap_err()[0].mend.lines().last().unwrap().to_owned()
        }
        assert_eq!(line::<Spanned<String>>(), "it = \"...\"");
        assert_eq!((line::<f64>(), line::<i64>()), ("it = 1".to_owned(), "it = 1".to_owned()));
        assert_eq!((line::<Vec<String>>(), line::<Vec<Row>>()), ("it = [\"...\"]".to_owned(), "[[it]]".to_owned()));
        assert_eq!((line::<Row>(), line::<bool>()), ("[it]".to_owned(), "it = ...".to_owned()));
    }
}
