use std::path::Path;
use std::sync::Arc;

use super::*;

/// The English words of the theme.
pub(crate) fn english() -> Arc<Words> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../theme/words/en");
    let file = |entry: std::io::Result<std::fs::DirEntry>| {
        let path = entry.unwrap().path();
        (path.file_name().unwrap().to_string_lossy().into_owned(), std::fs::read_to_string(&path).unwrap())
    };
    let files = std::fs::read_dir(folder).unwrap().map(file).collect();
    Arc::new(Words::read(ENGLISH, &[], &[&files], false).unwrap())
}

fn files(text: &str) -> Files {
    Files::from([("some.ftl".to_owned(), text.to_owned())])
}

const ENGLISH_WORDS: &str = "\
decimal-mark = .
marks = { $n ->
    [1] { $n } mark
   *[other] { $n } marks
}
head = Paper { $code } of { $name }
only = Only here
card = A card
    .hint = Look at { $what }.
";

const GERMAN_WORDS: &str = "\
-sheet = Bogen
decimal-mark = ,
marks = { $n ->
    [1] { $n } Punkt
   *[other] { $n } Punkte
}
head = { -sheet } { $code }, { $name }
card = Eine Karte
    .hint = Sehen Sie nach: { $what }.
";

fn german(marked: bool) -> Words {
    Words::read("de", &[&files(GERMAN_WORDS)], &[&files(ENGLISH_WORDS)], marked).unwrap()
}

#[test]
fn texts_are_said_in_the_language_or_in_english() {
    let words = german(true);
    assert_eq!(words.say("marks", &[("n", "1")]), "1 Punkt");
    assert_eq!(words.say("marks", &[("n", "12")]), "12 Punkte");
    assert_eq!(words.say("head", &[("code", "007"), ("name", "<Ann>")]), "Bogen 007, <Ann>");
    assert_eq!(words.say("card.hint", &[("what", "{x}")]), "Sehen Sie nach: {x}.");
    assert_eq!(words.say("only", &[]), "⟦Only here⟧");
    assert_eq!(words.say("nowhere", &[]), "⟦nowhere⟧");
    assert_eq!(german(false).say("only", &[]), "Only here");
    assert_eq!(words.decimal_mark(), DecimalMark::Comma);
    let english = Words::read(ENGLISH, &[], &[&files(ENGLISH_WORDS)], true).unwrap();
    assert_eq!(english.say("marks", &[("n", "1")]), "1 mark");
    assert_eq!(english.decimal_mark(), DecimalMark::Point);
}

#[test]
fn plain_texts_are_handed_out_with_their_places() {
    let words = german(false);
    let texts = words.texts();
    assert_eq!(texts.get("head").map(String::as_str), Some("Bogen {code}, {name}"));
    assert_eq!(texts.get("card.hint").map(String::as_str), Some("Sehen Sie nach: {what}."));
    assert!(!texts.contains_key("marks"), "what has variants is for pages only");
    assert_eq!(
        words.beginning("car"),
        BTreeMap::from([("card".into(), "Eine Karte".into()), ("card.hint".into(), "Sehen Sie nach: {what}.".into())])
    );
}

#[test]
fn faults_are_told_with_their_line() {
    let read = |text: &str| Words::read("de", &[&files(text)], &[&files(ENGLISH_WORDS)], false).unwrap_err();
    let broken = read("a = one\nb two\nc = three\n");
    assert_eq!((broken[0].file.as_str(), broken[0].line), ("some.ftl", Some(2)), "{broken:?}");
    assert_eq!(read("a = one\na = two\n")[0].line, Some(2));
    assert!(read("a = { -lost }\n")[0].says.contains("a cannot be used"));
    assert!(
        Words::read("no tag", &[&files("a = b\n")], &[&files(ENGLISH_WORDS)], false).unwrap_err()[0]
            .says
            .contains("no tag")
    );
    assert!(Words::read("fr", &[], &[&files(ENGLISH_WORDS)], false).unwrap_err()[0].says.contains("theme/words/fr"));
}

#[test]
fn what_is_written_is_read_again() {
    for text in [
        "Plain",
        "With {unit} and {heat.rise_limit}",
        "{odd",
        "two }",
        "{ a } or { b } of {c}",
        "[first",
        "one\n\n*two\n.three",
        "a \"b\" ’c’",
    ] {
        let source = format!("m = x\n{}\n", written(".part", text));
        let words = Words::read(ENGLISH, &[], &[&files(&source)], false).unwrap();
        assert_eq!(words.texts()["m.part"], text.replace("heat.rise", "heat-rise"), "{source}");
    }
}

#[test]
fn a_later_layer_takes_the_place_of_a_message() {
    let over = files("card = Deine Karte\n");
    let words = Words::read("de", &[&files(GERMAN_WORDS), &over], &[&files(ENGLISH_WORDS)], false).unwrap();
    assert_eq!(words.say("card", &[]), "Deine Karte");
    // The whole message is another one: its attribute is English now.
    assert_eq!(words.say("card.hint", &[("what", "x")]), "Look at x.");
    assert!(!words.places().contains_key("card.hint"));
}
