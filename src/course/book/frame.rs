//! The words of the frame round every page: templates and scripts name them by their ids.
//!
//! `[[frame-contents]]` stands for the text of that message; `"words-to-be-set"` for those of the scripts, as JSON.

use crate::words::Words;

/// What scripts say begins so: some of it is on cards that the page itself holds too.
const SCRIPTS: [&str; 4] = ["script-", "card-", "marks", "table-"];
const SCRIPTS_SLOT: &str = "\"words-to-be-set\"";

/// `template` with its words.
pub(super) fn say(template: &str, words: &Words) -> String {
    let mut out = String::with_capacity(template.len());
    let mut rest = template;
    while let Some((before, after)) = rest.split_once("[[") {
        out.push_str(before);
        let named = after.split_once("]]").filter(|(id, _)| {
            !id.is_empty() && id.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'-')
        });
        match named {
            Some((id, tail)) => {
                out.push_str(&escaped(&words.say(id, &[])));
                rest = tail;
            }
            None => {
                out.push_str("[[");
                rest = after;
            }
        }
    }
    out.push_str(rest);
    if out.contains(SCRIPTS_SLOT) {
        out = out.replacen(SCRIPTS_SLOT, &for_scripts(words), 1);
    }
    out
}

/// The texts of the scripts by their ids.
fn for_scripts(words: &Words) -> String {
    let texts = SCRIPTS.map(|start| words.beginning(start)).into_iter().flatten();
    let pairs: Vec<String> =
        texts.map(|(id, text)| format!("{}: {}", super::live::quoted(&id), super::live::quoted(&text))).collect();
    format!("{{\n  {}\n}}", pairs.join(",\n  "))
}

/// For HTML text and quoted attributes.
fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{ENGLISH, Files};

    #[test]
    fn names_become_words() {
        let text = "frame-a = One & \"two\"\nscript-b = It’s { $n }\nother = no\n";
        let files = Files::from([("w.ftl".to_owned(), text.to_owned())]);
        let words = Words::read(ENGLISH, &[], &[&files], false).unwrap();
        assert_eq!(
            say("<p>[[frame-a]]</p> a[[0]] [[x y]]", &words),
            "<p>One &amp; &quot;two&quot;</p> a[[0]] [[x y]]".replace("[[0]]", "⟦0⟧")
        );
        assert_eq!(say("const w = \"words-to-be-set\";", &words), "const w = {\n  \"script-b\": \"It’s {n}\"\n};");
    }
}
