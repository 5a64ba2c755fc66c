//! Responses from JSON.

use serde_json::{Map, Value};

use super::Written;

type Rows = Vec<(usize, Result<Written, String>)>;

/// Every answer with its number, counted from 1.
///
/// # Errors
/// Line and sentence, where the text is no JSON or holds no list of answers.
pub(super) fn read(text: &str) -> Result<Rows, (Option<usize>, String)> {
    let value: Value = serde_json::from_str(text.trim_start_matches('\u{feff}')).map_err(|error| {
        (Some(error.line()), format!("This file is not sound JSON: {error}. Nothing was taken from it."))
    })?;
    let list = match value {
        Value::Array(list) => list,
        Value::Object(mut map) => match map.remove("responses") {
            Some(Value::Array(list)) => list,
            None if map.contains_key("answers") || map.contains_key("answer") => vec![Value::Object(map)],
            _ => return Err((None, "This file has no list \"responses\". Nothing was taken from it.".into())),
        },
        _ => return Err((None, "This file holds no list of answers. Nothing was taken from it.".into())),
    };
    let mut rows = Vec::new();
    for entry in list {
        let Value::Object(mut map) = entry else {
            rows.push((rows.len() + 1, Err("An entry is no object; it was left out.".into())));
            continue;
        };
        match map.remove("answers") {
            None => rows.push((rows.len() + 1, written(&Map::new(), &map))),
            Some(Value::Array(answers)) => {
                for answer in answers {
                    let row = match &answer {
                        Value::Object(answer) => written(&map, answer),
                        _ => Err("An answer is no object; it was left out.".into()),
                    };
                    rows.push((rows.len() + 1, row));
                }
            }
            Some(_) => rows.push((rows.len() + 1, Err("\"answers\" is no list; it was left out.".into()))),
        }
    }
    Ok(rows)
}

/// A row from the paper's members and the answer's own.
fn written(paper: &Map<String, Value>, answer: &Map<String, Value>) -> Result<Written, String> {
    let text = |name: &str| match answer.get(name).or_else(|| paper.get(name)) {
        None | Some(Value::Null) => Ok(String::new()),
        Some(Value::String(text)) => Ok(text.clone()),
        Some(Value::Number(number)) => Ok(number.to_string()),
        // Orders may come as lists: ["C", "A", "B"].
        Some(Value::Array(list)) if list.iter().all(Value::is_string) => {
            Ok(list.iter().filter_map(Value::as_str).collect::<Vec<_>>().join(" "))
        }
        Some(_) => Err(format!("{name:?} is neither text nor a number; the answer was left out.")),
    };
    Ok(Written {
        paper: text("paper")?,
        candidate: text("candidate")?,
        question: text("question")?,
        part: text("part")?,
        answer: text("answer")?,
    })
}
