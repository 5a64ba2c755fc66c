//! Responses from JSON.

use drivecourse_machine::language::Message;
use drivecourse_machine::messages;
use serde_json::{Map, Value};

use super::Row;

messages! { pub(crate) SAYS {
    UNSOUND = "problem-json-unsound", "This file is not sound JSON: {why}. Nothing was taken from it.";
    NO_RESPONSES = "problem-json-no-responses", "This file has no list {name}. Nothing was taken from it.";
    NO_LIST = "problem-json-no-list", "This file holds no list of answers. Nothing was taken from it.";
    ENTRY = "problem-json-entry", "An entry is no object; it was left out.";
    ANSWER = "problem-json-answer", "An answer is no object; it was left out.";
    ANSWERS = "problem-json-answers", "{name} is no list; it was left out.";
    STEPS = "problem-json-steps", "{name} is neither text nor a list of texts; the answer was left out.";
    MEMBER = "problem-json-member", "{name} is neither text nor a number; the answer was left out.";
} }

type Rows = Vec<(usize, Result<Row, String>)>;

/// Every answer with its number, counted from 1.
///
/// # Errors
/// Line and sentence, where the text is no JSON or holds no list of answers.
pub(super) fn read(text: &str) -> Result<Rows, (Option<usize>, String)> {
    let value: Value = serde_json::from_str(text.trim_start_matches('\u{feff}'))
        .map_err(|error| (Some(error.line()), UNSOUND.say(&[("why", &error.to_string())])))?;
    let list = match value {
        Value::Array(list) => list,
        Value::Object(mut map) => match map.remove("responses") {
            Some(Value::Array(list)) => list,
            None if map.contains_key("answers") || map.contains_key("answer") => vec![Value::Object(map)],
            _ => return Err((None, named(NO_RESPONSES, "responses"))),
        },
        _ => return Err((None, NO_LIST.text().into())),
    };
    let mut rows = Vec::new();
    for entry in list {
        let Value::Object(mut map) = entry else {
            rows.push((rows.len() + 1, Err(ENTRY.text().into())));
            continue;
        };
        match map.remove("answers") {
            None => rows.push((rows.len() + 1, written(&Map::new(), &map))),
            Some(Value::Array(answers)) => {
                for answer in answers {
                    let row = match &answer {
                        Value::Object(answer) => written(&map, answer),
                        _ => Err(ANSWER.text().into()),
                    };
                    rows.push((rows.len() + 1, row));
                }
            }
            Some(_) => rows.push((rows.len() + 1, Err(named(ANSWERS, "answers")))),
        }
    }
    Ok(rows)
}

/// `message` about the member `name`.
fn named(message: Message, name: &str) -> String {
    message.say(&[("name", &format!("{name:?}"))])
}

/// Results on the way: one text, or a list of texts and numbers.
fn steps(value: Option<&Value>) -> Result<String, String> {
    let one = |value: &Value| match value {
        Value::String(text) => Some(text.clone()),
        Value::Number(number) => Some(number.to_string()),
        _ => None,
    };
    let fault = || named(STEPS, "steps");
    match value {
        None | Some(Value::Null) => Ok(String::new()),
        Some(Value::Array(list)) => {
            let texts: Option<Vec<String>> = list.iter().map(one).collect();
            texts.map(|texts| texts.join("; ")).ok_or_else(fault)
        }
        Some(value) => one(value).ok_or_else(fault),
    }
}

/// A row from the paper's members and the answer's own.
fn written(paper: &Map<String, Value>, answer: &Map<String, Value>) -> Result<Row, String> {
    let text = |name: &str| match answer.get(name).or_else(|| paper.get(name)) {
        None | Some(Value::Null) => Ok(String::new()),
        Some(Value::String(text)) => Ok(text.clone()),
        Some(Value::Number(number)) => Ok(number.to_string()),
        // Orders may come as lists: ["C", "A", "B"].
        Some(Value::Array(list)) if list.iter().all(Value::is_string) => {
            Ok(list.iter().filter_map(Value::as_str).collect::<Vec<_>>().join(" "))
        }
        Some(_) => Err(named(MEMBER, name)),
    };
    Ok(Row {
        paper: text("paper")?,
        candidate: text("candidate")?,
        question: text("question")?,
        part: text("part")?,
        steps: steps(answer.get("steps"))?,
        answer: text("answer")?,
    })
}
