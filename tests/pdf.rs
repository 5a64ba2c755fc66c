//! Papers and keys as PDF: the same bytes each time, tagged, whole, and nothing given away. Run by `sh tests/run pdf`.

#![allow(clippy::unwrap_used)]

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use lopdf::{Document, Object};
use serde_json::Value;

/// Points on a sheet: 210 mm by 297 mm (ISO 216), 8.5 in by 11 in (ANSI/ASME Y14.1 size A), 72 points an inch.
const A4: (f64, f64) = (210.0 / 25.4 * 72.0, 297.0 / 25.4 * 72.0);
const LETTER: (f64, f64) = (8.5 * 72.0, 11.0 * 72.0);

struct Place(tempfile::TempDir);

impl Place {
    fn new() -> Self {
        Self(tempfile::tempdir().unwrap())
    }

    fn path(&self, name: &str) -> PathBuf {
        self.0.path().join(name)
    }

    fn run(&self, arguments: &[&str]) -> Output {
        Command::new(env!("CARGO_BIN_EXE_drivecourse")).args(arguments).current_dir(self.0.path()).output().unwrap()
    }

    /// Draws an exam with PDF into `out`; `more` are further arguments. Returns what was said on the way.
    fn papers(&self, roster: &str, out: &str, more: &[&str]) -> String {
        let usual = ["papers", "--roster", roster, "--secret", "secret", "--out", out, "--name", "spring", "--pdf"];
        let ran = self.run(&[&usual[..], more].concat());
        let said = String::from_utf8(ran.stderr).unwrap();
        assert!(ran.status.success(), "{said}");
        said
    }
}

/// The PDF files in a folder, in order of name.
fn files(folder: &Path) -> Vec<PathBuf> {
    let all = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    let mut found: Vec<_> = all.filter(|path| path.extension().is_some_and(|ending| ending == "pdf")).collect();
    found.sort();
    found
}

fn open(file: &Path) -> Document {
    Document::load(file).unwrap()
}

/// The words on each page, with every run of white space as one space.
fn words(pdf: &Document) -> Vec<String> {
    let text = |page: &u32| pdf.extract_text(&[*page]).unwrap().split_whitespace().collect::<Vec<_>>().join(" ");
    pdf.get_pages().keys().map(text).collect()
}

/// Width and height of the first page.
fn size(pdf: &Document) -> (f64, f64) {
    let first = *pdf.get_pages().values().next().unwrap();
    let page = pdf.get_dictionary(first).unwrap();
    let sides: Vec<f64> = page
        .get(b"MediaBox")
        .unwrap()
        .as_array()
        .unwrap()
        .iter()
        .map(|side| f64::from(side.as_float().unwrap()))
        .collect();
    (sides[2] - sides[0], sides[3] - sides[1])
}

/// Tagged, with a title and a language, and no date: what ISO 14289-1 asks for first, and what gives the same bytes each day.
fn is_tagged(pdf: &Document, language: &str) {
    let catalog = pdf.catalog().unwrap();
    let marks = pdf.dereference(catalog.get(b"MarkInfo").unwrap()).unwrap().1.as_dict().unwrap();
    assert!(matches!(marks.get(b"Marked").unwrap(), Object::Boolean(true)));
    let tree = pdf.dereference(catalog.get(b"StructTreeRoot").unwrap()).unwrap().1.as_dict().unwrap();
    assert!(tree.has(b"K"));
    assert_eq!(catalog.get(b"Lang").unwrap().as_str().unwrap(), language.as_bytes());
    let metadata = pdf.dereference(catalog.get(b"Metadata").unwrap()).unwrap().1.as_stream().unwrap();
    let metadata = metadata.get_plain_content().unwrap_or_else(|_| metadata.content.clone());
    let metadata = String::from_utf8_lossy(&metadata);
    assert!(metadata.contains("pdfuaid:part>1<") && metadata.contains("dc:title"), "{metadata}");
    assert!(!metadata.contains("CreateDate"), "{metadata}");
}

#[test]
fn papers_and_keys_are_whole_tagged_and_the_same_each_time() {
    let place = Place::new();
    place.papers("tarn-ridge", "exam", &[]);
    place.papers("tarn-ridge", "again", &[]);
    place.papers("tarn-ridge", "letter", &["--sheet", "letter"]);
    let record: Value = serde_json::from_slice(&fs::read(place.path("exam/exam.json")).unwrap()).unwrap();
    let graded = place.run(&["grade", "exam", "exam/responses.csv", "--json"]);
    let graded: Value = serde_json::from_slice(&graded.stdout).unwrap();
    let (mut pages, mut looked_for) = (0, 0);
    for folder in ["papers", "keys"] {
        let (ours, again, letter) = (
            files(&place.path("exam").join(folder)),
            files(&place.path("again").join(folder)),
            files(&place.path("letter").join(folder)),
        );
        assert_eq!((ours.len(), again.len(), letter.len()), (14, 14, 14));
        for ((ours, again), letter) in ours.iter().zip(&again).zip(&letter) {
            assert!(fs::read(ours).unwrap() == fs::read(again).unwrap(), "{} differs", ours.display());
            let name = ours.file_stem().unwrap().to_string_lossy().into_owned();
            let paper = record["papers"]
                .as_array()
                .unwrap()
                .iter()
                .find(|paper| name.contains(paper["code"].as_str().unwrap()));
            let code = paper.unwrap()["code"].as_str().unwrap();
            for (file, wanted) in [(ours, A4), (letter, LETTER)] {
                let pdf = open(file);
                is_tagged(&pdf, "en");
                let (wide, high) = size(&pdf);
                assert!((wide - wanted.0).abs() < 0.1 && (high - wanted.1).abs() < 0.1, "{wide} by {high}");
                let texts = words(&pdf);
                for (at, text) in texts.iter().enumerate() {
                    let number = format!("Page {} of {}", at + 1, texts.len());
                    assert!(text.contains(&number) && text.contains(code), "{name}: no {number:?} in {text}");
                }
                pages += texts.len();
                if folder == "papers" {
                    let page = fs::read_to_string(ours.with_extension("html")).unwrap();
                    looked_for += gives_nothing_away(&graded, paper.unwrap(), &page, &texts.join(" "));
                }
            }
        }
    }
    assert!(pages > 100, "only {pages} pages");
    assert!(looked_for > 80, "only {looked_for} answers were looked for");
}

/// Looks for answers and seeds in what a candidate receives; how many answers were looked for. An answer may equal a number
/// that is given: then it stands on the page as well, which has a test of its own.
fn gives_nothing_away(graded: &Value, paper: &Value, page: &str, text: &str) -> usize {
    let code = paper["code"].as_str().unwrap();
    for told in ["accepted ±", "Source:", "Wrong answers to expect", "Examiner"] {
        assert!(!text.contains(told), "{code} tells {told:?}");
    }
    let mut secrets = vec![paper["digest"].as_str().unwrap().to_owned()];
    for question in paper["questions"].as_array().unwrap() {
        for field in ["seed", "case"] {
            let figures = question[field].as_str().unwrap();
            secrets.push(figures.to_owned());
            secrets.push(u64::from_str_radix(figures, 16).unwrap().to_string());
        }
    }
    for secret in secrets {
        assert!(!text.contains(&secret), "{code} holds {secret}");
    }
    let mut looked_for = 0;
    for part in expected(graded, code) {
        if part.starts_with(|c: char| c.is_ascii_digit()) && !part.ends_with(|c: char| c.is_ascii_digit()) {
            looked_for += 1;
            assert!(!text.contains(&part) || page.contains(&part), "{code} tells {part}");
        }
    }
    looked_for
}

/// The answers expected to one paper.
fn expected(graded: &Value, code: &str) -> Vec<String> {
    fn gather(value: &Value, out: &mut Vec<String>) {
        match value {
            Value::Array(inside) => inside.iter().for_each(|value| gather(value, out)),
            Value::Object(inside) => inside.iter().for_each(|(name, value)| match value.as_str() {
                Some(text) if name == "expected" => out.push(text.to_owned()),
                _ => gather(value, out),
            }),
            _ => {}
        }
    }
    let mut out = Vec::new();
    let all = graded.as_object().unwrap().values().filter_map(Value::as_array).flatten();
    all.filter(|result| result["code"] == code || result["paper"] == code).for_each(|result| gather(result, &mut out));
    out
}

#[test]
fn large_print_is_half_as_large_again_and_one_file_holds_all() {
    let place = Place::new();
    place.papers("tarn-ridge", "usual", &["--one-file"]);
    place.papers("tarn-ridge", "large", &["--one-file", "--large-print"]);
    let usual = open(&place.path("usual/papers/papers.pdf"));
    let large = open(&place.path("large/papers/papers-large-print.pdf"));
    assert!(large.get_pages().len() * 2 > usual.get_pages().len() * 3, "larger letters need more pages");
    let keys = open(&place.path("usual/keys/keys.pdf"));
    for pdf in [&usual, &large, &keys] {
        is_tagged(pdf, "en");
        let firsts = words(pdf).iter().filter(|text| text.contains("Page 1 of ")).count();
        assert_eq!(firsts, 14, "each paper begins with page 1");
    }
}

/// About warm-up temperature, which is all in German.
const GERMAN: &str = include_str!("command_line/german-exam.toml");

#[test]
fn papers_and_keys_are_german_where_german_is_spoken() {
    let place = Place::new();
    fs::write(place.path("exam.toml"), GERMAN).unwrap();
    fs::write(place.path("two.csv"), "id,name,units\na1,Jürgen Müller,si\na2,Käthe Groß,us\n").unwrap();
    let german = ["--exam", "exam.toml", "--plant", "Werk", "--mark-untranslated"];
    let said = place.papers("two.csv", "german", &german);
    assert!(!said.contains("empty square"), "{said}");
    let mut decimals = 0;
    for (folder, wanted) in [("papers", ["Zeit", "Ende des Blatts"]), ("keys", ["Lösung für den Prüfer", "Quelle: "])]
    {
        let all = files(&place.path("german").join(folder));
        assert_eq!(all.len(), 2);
        for file in all {
            let pdf = open(&file);
            is_tagged(&pdf, "de");
            let texts = words(&pdf);
            for (at, text) in texts.iter().enumerate() {
                assert!(text.contains(&format!("Seite {} von {}", at + 1, texts.len())), "{text}");
            }
            let text = texts.join(" ");
            for words in ["Prüfling", "Aufgabe 1: ", "Gegeben", "Andere Einheiten", " Punkte"].iter().chain(&wanted) {
                assert!(text.contains(words), "{}: no {words:?} in {text}", file.display());
            }
            assert!(!text.contains('⟦') && !text.contains('□'), "{text}");
            let english = ["the", "of", "and", "your", "with", "is", "from", "to", "mark", "marks", "answer", "page"];
            let found =
                text.split(|c: char| !c.is_alphabetic()).filter(|word| english.contains(&&*word.to_lowercase()));
            assert_eq!(found.collect::<Vec<_>>(), Vec::<&str>::new(), "{}", file.display());
            let tenths = |(at, _): &(usize, &str)| text[at + 1..].starts_with(|c: char| c.is_ascii_digit());
            decimals += text.match_indices(',').filter(tenths).count();
        }
    }
    assert!(decimals > 20, "{decimals} decimal commas");
}

#[test]
fn names_come_out_harmless() {
    let place = Place::new();
    let names = ["#panic(\"no\")", "*bold* _x_ $y$ <label> @ref // gone", "=HYPERLINK(\"x\",\"y\")", "Zoë 🙂 محمد"];
    let mut roster = String::from("id,name,units\n");
    for (number, name) in names.iter().enumerate() {
        roster.push_str(&format!("h{number},\"{}\",si\n", name.replace('"', "\"\"")));
    }
    fs::write(place.path("odd.csv"), roster).unwrap();
    // A roster refuses a mark that turns the text after it; the plant's name is the assessor's own.
    let said = place.papers("odd.csv", "odd", &["--one-file", "--plant", "\u{202e}lliM #eval(1)"]);
    assert!(said.contains("U+1F642") && said.contains("empty square"), "{said}");
    let text = words(&open(&place.path("odd/papers/papers.pdf"))).join(" ");
    for shown in ["#panic(", "*bold* _x_ $y$ <label> @ref // gone", "=HYPERLINK(", "lliM #eval(1)", "Zoë"] {
        assert!(text.contains(shown), "no {shown:?} in {text}");
    }
    assert!(!text.contains('\u{202e}'));
}
