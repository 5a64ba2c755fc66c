//! Reads a TOML file into its type with every fault of its shape found in one pass.

use core::ops::Range;

use serde::de::DeserializeOwned;
use toml::Spanned;
use toml::de::{DeTable, DeValue, Deserializer, Error};

use crate::problem::Problem;
use crate::registry::nearest;

/// Faults of shape reported at most; whoever has more begins with these.
const MOST: usize = 50;

/// Reads `text`; where something does not belong, it is left out and the rest is read again, so that one pass tells all.
///
/// # Errors
/// Every [`Problem`] of syntax, or, where there is none, of shape: unknown and missing keys, values of another type.
pub fn read_toml<T: DeserializeOwned>(text: &str) -> Result<T, Vec<Problem>> {
    let error = match toml::from_str(text) {
        Ok(value) => return Ok(value),
        Err(error) => error,
    };
    let (mut table, faults) = DeTable::parse_recoverable(text);
    if !faults.is_empty() {
        let mut problems: Vec<_> = faults.iter().map(|fault| problem(fault, text)).collect();
        // A misspelt heading may be what the rest stumbles over; what stumbles is taken out until it is found.
        for _ in 0..MOST {
            let Err(error) = T::deserialize(Deserializer::from(table.clone())) else { break };
            if error.message().starts_with("unknown field") {
                problems.push(problem(&error, text));
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
        // What was taken out of a table may be missed there afterwards: that is no fault of its own.
        let missing = next.message().starts_with("missing field");
        if !(missing && robbed.contains(&next.span())) {
            problems.push(problem(&next, text));
        }
        let Some(span) = next.span() else { break };
        match remove(table.get_mut(), &span) {
            Some(from) => robbed.push(from),
            None => break,
        }
        match T::deserialize(Deserializer::from(table.clone())) {
            Ok(_) => break,
            Err(error) => next = error,
        }
    }
    Err(problems)
}

/// Takes the key or value at `span` out of `table` or of one inside it; the span of what it was taken out of, `None`
/// inside for the file itself.
fn remove(table: &mut DeTable<'_>, span: &Range<usize>) -> Option<Option<Range<usize>>> {
    let found = table.iter().find(|(key, value)| key.span() == *span || value.span() == *span);
    if let Some(key) = found.map(|(key, _)| key.clone()) {
        return table.remove(&key).map(|_| None);
    }
    table.iter_mut().find_map(|(_, value)| remove_inside(value, span)).map(Some)
}

fn remove_inside(value: &mut Spanned<DeValue<'_>>, span: &Range<usize>) -> Option<Range<usize>> {
    let own = value.span();
    match value.get_mut() {
        DeValue::Table(table) => remove(table, span).map(|from| from.unwrap_or(own)),
        DeValue::Array(array) => {
            if array.iter().any(|item| item.span() == *span) {
                *array = array.clone().into_iter().filter(|item| item.span() != *span).collect();
                return Some(own);
            }
            array.iter_mut().find_map(|item| remove_inside(item, span))
        }
        _ => None,
    }
}

/// An error of the reader in our words, with the nearest name where a key is not known.
fn problem(error: &Error, text: &str) -> Problem {
    let message = error.message().trim_end();
    let mut problem = Problem::toml(error);
    // The end of the file is behind its last line: say it on that line.
    if let Some(span) = &mut problem.span
        && span.start >= text.len()
    {
        let last = text.trim_end().len();
        *span = last.saturating_sub(1)..last;
    }
    if let Some(rest) = message.strip_prefix("unknown field `") {
        let mut names = rest.split('`').step_by(2);
        let name = names.next().unwrap_or("");
        // `unknown field `a`, expected one of `b`, `c``: every second piece is a name.
        let known: Vec<&str> = rest.split('`').skip(2).step_by(2).filter(|name| !name.is_empty()).collect();
        problem.what = format!("Nothing here is called {name:?}.");
        problem.mend = match nearest(name, known.iter().copied()) {
            Some(near) => format!("Did you mean {near:?}?"),
            None => format!("Known here: {}.", known.join(", ")),
        };
    } else if let Some(name) = message.strip_prefix("missing field `").and_then(|rest| rest.split('`').next()) {
        problem.what = format!("This lacks {name:?}.");
        problem.mend = format!("Add {name} = ...");
    }
    problem
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
    fn every_fault_of_shape_is_found() {
        let text = "name = \"x\"\nnmae = 1\n[[row]]\ncount = 1\nbecuase = \"y\"\n[[row]]\ncount = \"two\"\n[[row]]\ncount = 2\nbecause = 3\n";
        let told = told(text);
        assert_eq!(told.iter().map(|(line, _)| *line).collect::<Vec<_>>(), [2, 5, 7, 10], "{told:?}");
        assert!(told[0].1.contains("Did you mean \"name\"?"), "{told:?}");
        assert!(told[1].1.contains("Did you mean \"because\"?"), "{told:?}");
    }

    #[test]
    fn syntax_and_what_is_missing() {
        assert_eq!(told("name = \"x\"\n[[row]]\nbecause = \"z\"\n")[0].1, "This lacks \"count\". Add count = ...");
        let broken = told("name = \"x\n[[row]\ncount = 1\n");
        assert!(broken.len() >= 2 && broken[0].0 == 1 && broken[1].0 == 2, "{broken:?}");
        assert_eq!(told("name = \"x\"\n[[row]]\ncount = \"\"\"\n").last().unwrap().0, 3);
    }
}
