//! The list of a chapter's parts below its heading: a long chapter on a phone is many screens.

use std::fmt::Write as _;

use crate::words::Words;

/// Parts from which on a list of them is worth its line.
const FEWEST: usize = 3;

/// Puts the list into the text of a chapter's page, behind its first heading. `ours` is the attribute that names the language
/// of its title, where it is not the chapter's; else empty.
pub(super) fn put_list(text: &mut String, words: &Words, ours: &str) {
    let Some(place) = text.find("</h1>").map(|at| at + "</h1>".len()) else { return };
    let all = headings(&text[place..]);
    if all.iter().filter(|heading| heading.level == 2).count() < FEWEST {
        return;
    }
    let title = words.say("frame-on-this-page", &[]);
    let mut list =
        format!("\n<details class=\"parts\"><summary{ours}>{title}</summary>\n<nav aria-label=\"{title}\">\n<ul>\n");
    for heading in &all {
        let class = if heading.level == 2 { "" } else { " class=\"part-within\"" };
        let _ = writeln!(list, "<li{class}><a href=\"#{}\">{}</a></li>", heading.id, heading.words);
    }
    list.push_str("</ul>\n</nav>\n</details>");
    text.insert_str(place, &list);
}

struct Heading<'t> {
    level: u8,
    id: &'t str,
    words: &'t str,
}

/// The headings that the chapter itself has, of its parts and of theirs; those of cards have no link to themselves.
fn headings(text: &str) -> Vec<Heading<'_>> {
    let mut all = Vec::new();
    for (at, _) in text.match_indices("<h") {
        let rest = &text[at + 2..];
        let level = match rest.as_bytes().first() {
            Some(b'2') => 2,
            Some(b'3') => 3,
            _ => continue,
        };
        let heading = rest[1..].strip_prefix(" id=\"").and_then(|rest| {
            let (id, rest) = rest.split_once('"')?;
            let (tag, rest) = rest.split_once("><a class=\"header\" href=\"#")?;
            let words = rest.split_once("\">")?.1.split_once("</a></h")?.0;
            (!tag.contains('>')).then_some(Heading { level, id, words })
        });
        all.extend(heading);
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lists_what_the_chapter_says_and_not_its_cards() {
        let part = |level: u8, id: &str| {
            format!("<h{level} id=\"{id}\"><a class=\"header\" href=\"#{id}\">{id} <em>x</em></a></h{level}>")
        };
        let card = "<h3 id=\"card-head\">Practice: a card</h3>";
        let mut text =
            format!("<h1>Top</h1>{}{}{card}{}{}<p>end</p>", part(2, "a"), part(3, "b"), part(2, "c"), part(2, "d"));
        let found: Vec<_> = headings(&text).iter().map(|heading| (heading.level, heading.id)).collect();
        assert_eq!(found, [(2, "a"), (3, "b"), (2, "c"), (2, "d")]);
        put_list(&mut text, &Words::default(), "");
        assert!(text.starts_with("<h1>Top</h1>\n<details class=\"parts\">"), "{text}");
        assert!(text.contains("<li class=\"part-within\"><a href=\"#b\">b <em>x</em></a></li>"), "{text}");
        assert!(!text.contains("#card-head"), "{text}");
    }

    #[test]
    fn a_short_chapter_has_none() {
        let mut text = "<h1>Top</h1><h2 id=\"a\"><a class=\"header\" href=\"#a\">a</a></h2>".to_owned();
        let before = text.clone();
        put_list(&mut text, &Words::default(), "");
        assert_eq!(text, before);
    }
}
