//! `enter`: answers typed in from paper.

use crate::exam::{expected, graded, parts, rows, small};
use crate::{Place, tree};

/// The codes of Ada's and Bo's papers.
fn codes(place: &Place) -> (String, String) {
    let answers = rows(&place.text("exam/responses.csv"));
    (answers[0].paper.clone(), answers[2].paper.clone())
}

fn enter(place: &Place, lines: &[&str]) -> String {
    place.run_with(&["enter", "exam", "--module", "plant"], (lines.join("\n") + "\n").as_bytes()).done()
}

fn answers(place: &Place) -> Vec<String> {
    rows(&place.text("exam/responses.csv")).into_iter().map(|row| row.answer).collect()
}

#[test]
fn each_answer_is_read_back_saved_and_mended_on_the_way() {
    let place = Place::new();
    small(&place);
    let (ada, bo) = codes(&place);
    let keys = graded(&place, &["exam", "exam/responses.csv", "--module", "plant", "--out", "blank"]);
    let right: Vec<String> = parts(&keys).iter().map(|(_, _, part)| expected(part)).collect();
    let said = enter(&place, &[&ada, "10 rpm", "twelve Nm", "900 N·m", "<", "?", "1,200 ft-lb", "q"]);
    assert!(said.contains("Ada Brenn") && said.contains("0 of 2 answers"), "{said}");
    assert!(said.contains("read as 10") && said.contains("read as 900") && said.contains("read as 1200"), "{said}");
    assert!(said.contains("Type it again") && said.contains("3 answers taken down"), "{said}");
    for answer in &right {
        assert!(!said.contains(answer.as_str()), "the key {answer} is given away: {said}");
    }
    assert_eq!(answers(&place), ["10 rpm", "1,200 ft-lb", "", ""]);

    // The next run goes on where this one stopped; the end of the input loses nothing.
    let said = enter(&place, &[&bo.to_lowercase(), "-", "!about a lot", &ada, "@1b", "", &bo, "5 rpm"]);
    assert!(said.contains("2 of 2 answers are there") && said.contains("taken as it stands"), "{said}");
    assert_eq!(answers(&place), ["10 rpm", "1,200 ft-lb", "5 rpm", "about a lot"]);
    let said = enter(&place, &[&ada, "@9z", "q"]);
    assert!(said.contains("no \"9z\"") && said.contains("0 answers taken down"), "{said}");

    // What was typed is graded as it was read.
    let all = graded(&place, &["exam", "exam/responses.csv", "--module", "plant", "--out", "blank"]);
    let read: Vec<_> = parts(&all).iter().map(|(_, _, part)| part["read_as"].as_str().unwrap().to_owned()).collect();
    assert!(read[0].starts_with("10") && read[1].starts_with("1200"), "{read:?}");
}

#[test]
fn slips_in_a_code_are_said_and_nothing_is_lost_of_a_file_it_cannot_keep() {
    let place = Place::new();
    small(&place);
    let (ada, _) = codes(&place);
    let slip = format!("{}{}{}", &ada[1..2], &ada[..1], &ada[2..]);
    let said = enter(&place, &["hello", "7KQ4M-2HX9D", &slip, ""]);
    assert!(said.contains("ten letters and figures"), "{said}");
    if slip != ada {
        assert!(said.contains(&format!("Was {ada} meant?")), "{said}");
    }
    let before = tree(&place.path("exam"));
    place.write("mine.csv", format!("paper,question,part,answer\n{ada},1,a,1 rpm\n{ada},7,a,2 rpm\n"));
    let keep = ["enter", "exam", "--module", "plant", "--out", "mine.csv"];
    place.run_with(&keep, b"").refused(&["mine.csv", "would lose rows", "questions 1 to 1"]);
    // Steering characters are typed, not obeyed; other encodings are taken over as UTF-8.
    let latin = [format!("paper;question;part;answer\r\n{ada};1;a;\"1 r/min ").as_bytes(), b"\xb1\"\r\n"].concat();
    place.write("mine.csv", latin);
    let said = place.run_with(&keep, format!("{ada}\n\u{1b}[2J9 Nm\n8 Nm\u{7}\n8 Nm\n\n").as_bytes()).done();
    assert!(!said.contains(['\u{1b}', '\u{7}']), "{said:?}");
    assert!(place.text("mine.csv").contains("1 r/min ±"));
    assert!(before == tree(&place.path("exam")), "the exam's own file was not touched");
    place.run_with(&["enter", "nowhere"], b"").refused(&["nowhere is no exam folder"]);
}
