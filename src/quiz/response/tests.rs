use super::*;
use crate::blueprint::Blueprint;
use crate::paper::tests::{BLUEPRINT, bank, draw};

fn exam() -> Exam {
    let (bank, blueprint) = (bank(), Blueprint::read(BLUEPRINT).unwrap());
    draw(&bank, &blueprint, 3, 1).0
}

/// What `text` gives for the first part of question 1, the notices' lines, and what they say.
fn read(exam: &Exam, text: &[u8]) -> (String, Vec<(Option<usize>, bool)>, String) {
    let mut responses = Responses::new(exam);
    responses.add("r.csv", text);
    let answer = responses.answers(exam.papers[0].code, 0, 1)[0].answer.to_owned();
    let lines = responses.notices.iter().map(|notice| (notice.line, notice.lost)).collect();
    (answer, lines, responses.notices.iter().map(|notice| format!("{notice}\n")).collect())
}

#[test]
fn clean_files_of_every_make_are_read_without_a_word() {
    let exam = exam();
    let code = exam.papers[0].code;
    let lower = code.to_string().to_lowercase().replace('-', " ");
    for text in [
        format!("paper,question,part,answer\n{code},1,a,0.12 mm\n"),
        format!("\u{feff}Answer;Part;Question;Paper;note\r\n0.12 mm;(A);Q1;{lower};-\r\n;;;;\r\n"),
        format!("sep=\t\npaper\tquestion\tpart\tanswer\n{code}\t1.0\t1\t0.12 mm"),
        format!("paper,candidate,question,part,asked,answer\n{code},person 0,1,a,\"a\nb\",\"0.12 mm\"\n"),
        format!("[{{\"paper\":\"{code}\",\"question\":1,\"part\":\"a\",\"answer\":\"0.12 mm\"}}]"),
        format!(
            "{{\"responses\":[{{\"paper\":\"{code}\",\"answers\":[{{\"question\":\"1\",\"part\":1,\"answer\":\"0.12 mm\"}}]}}]}}"
        ),
        format!("{{\"paper\":\"{code}\",\"answers\":[{{\"question\":1,\"part\":\"A\",\"answer\":\"0.12 mm\"}}]}}"),
    ] {
        let (answer, lines, says) = read(&exam, text.as_bytes());
        assert_eq!((answer.as_str(), lines.len()), ("0.12 mm", 0), "{text:?}: {says}");
        let utf16: Vec<u8> = [0xfeff]
            .into_iter()
            .chain(text.trim_start_matches('\u{feff}').encode_utf16())
            .flat_map(u16::to_le_bytes)
            .collect();
        assert_eq!(read(&exam, &utf16).0, "0.12 mm");
    }
    let guarded = format!("paper,question,part,answer\n{code},1,a,'-0.12 mm\n");
    assert_eq!(read(&exam, guarded.as_bytes()).0, "-0.12 mm");
    let latin = [format!("paper;question;part;answer\n{code};1;a;\"0,12 ").as_bytes(), b"\xb5m\"\n"].concat();
    let (answer, lines, _) = read(&exam, &latin);
    assert_eq!((answer.as_str(), lines), ("0,12 µm", vec![(None, false)]));
}

#[test]
fn every_mess_is_said_at_its_line() {
    let exam = exam();
    let code = exam.papers[0].code.to_string();
    let mut other: Vec<char> = code.chars().collect();
    let swap = (0..4).find(|place| other[*place] != other[place + 1]).unwrap();
    other.swap(swap, swap + 1);
    let slip: String = other.into_iter().collect();
    let stranger = Code::new(12_345);
    let meant = format!("Was {code} meant?");
    let stranger_says = format!("no paper {stranger}");
    for (rows, wanted, lines, what) in [
        (format!("{slip},1,a,1 mm"), "", vec![(Some(2), true)], meant.as_str()),
        (format!("{stranger},1,a,1 mm"), "", vec![(Some(2), true)], stranger_says.as_str()),
        ("OOPS,1,a,1 mm".into(), "", vec![(Some(2), true)], "no paper code"),
        (",1,a,1 mm".into(), "", vec![(Some(2), true)], "names no paper"),
        (format!("{code},6,a,1 mm"), "", vec![(Some(2), true)], "questions 1 to 5"),
        (format!("{code},0,a,1 mm"), "", vec![(Some(2), true)], "questions 1 to 5"),
        (format!("{code},99999999999999999999,a,"), "", vec![(Some(2), false)], "questions 1 to 5"),
        (format!("{code},1,z,1 mm"), "", vec![(Some(2), true)], "has parts a to"),
        (format!("{code},1,,1 mm"), "", vec![(Some(2), true)], "has parts a to"),
        (format!("{code},1,a,1 mm\n\n{code},1,a,1 mm"), "1 mm", vec![(Some(4), false)], "counts once"),
        (
            format!("{code},1,a,1 mm\n{code},1,a,2 mm"),
            "2 mm",
            vec![(Some(3), false)],
            "\"2 mm\" counts, \"1 mm\" does not",
        ),
        (format!("{code},1,a,1 mm\n{code},1,a,"), "1 mm", vec![(Some(3), false)], "that answer stands"),
        (format!("{code},1,a,\n{code},1,a,1 mm"), "1 mm", vec![], ""),
        (format!("{code},1,a,1,5 mm"), "1,5 mm", vec![(Some(2), false)], "runs over several cells"),
        (format!("{code},1,a,\"1 mm\n{code},1,b,2"), "", vec![(Some(2), true)], "never closed"),
        (code.clone(), "", vec![(Some(2), false)], "no \"\""),
    ] {
        let (answer, found, says) = read(&exam, format!("paper,question,part,answer\n{rows}\n").as_bytes());
        assert_eq!(found, lines, "{rows}: {says}");
        assert!(says.contains(what), "{rows}: {says}");
        if !what.contains("closed") {
            assert_eq!(answer, wanted, "{rows}");
        }
    }
    for (text, what) in [
        ("", "no column paper, question, answer"),
        ("paper,question\nx,1\n", "no column answer"),
        ("\u{0}\u{1}\u{2}\u{ff}", "no column"),
        ("{", "not sound JSON"),
        ("[1]", "no object"),
        ("{\"a\": 1}", "no list"),
        ("{\"responses\": [{\"paper\": \"x\", \"answers\": 3}]}", "no list"),
        ("[{\"paper\": {}, \"question\": 1, \"answer\": true}]", "neither text nor a number"),
        ("[]", "no new answers"),
        ("paper,question,answer\n", "no new answers"),
    ] {
        let (_, _, says) = read(&exam, text.as_bytes());
        assert!(says.contains(what), "{text:?}: {says}");
    }
    let deep = "[".repeat(100_000);
    assert!(read(&exam, deep.as_bytes()).2.contains("not sound JSON"));
}

/// One slip is one remark, however many rows of the paper bear it: with its first line, and all its lines named.
#[test]
fn a_code_is_told_once_a_file_with_all_its_lines() {
    let exam = exam();
    let code = exam.papers[0].code;
    let stranger = Code::new(12_345);
    let mut rows = vec!["paper,candidate,question,part,answer".to_owned()];
    // Lines 2 to 6, 8 and 9, 12 and 13, 15: a slip, with a row of the paper itself between.
    for line in 2..=15 {
        rows.push(match line {
            7 => format!("{code},,1,a,1 mm"),
            10 => format!("{stranger},,1,a,"),
            11 => format!("{stranger},,1,b,2 mm"),
            14 => format!("{code},Person 1,1,a,3 mm"),
            _ => format!("OOPS,,1,a,{line} mm"),
        });
    }
    let text = rows.join("\n");
    let (answer, lines, says) = read(&exam, text.as_bytes());
    assert_eq!(answer, "1 mm");
    assert_eq!(lines, [(Some(2), true), (Some(10), true), (Some(14), true)], "{says}");
    let said: Vec<&str> = says.lines().collect();
    assert!(said[0].ends_with("never 0 or O. Lines 2 to 6, 8, 9, 12, 13 and 15 were left out."), "{says}");
    assert!(said[1].ends_with("another exam or sitting. Lines 10 and 11 were left out."), "{says}");
    assert!(said[2].ends_with("a code miscopied. The row was left out."), "{says}");
    // Another file has its own remark, and blank rows alone lose nothing.
    let mut responses = Responses::new(&exam);
    responses.add("one.csv", b"paper,question,part,answer\nOOPS,1,a,\nOOPS,1,b,\nOOPS,2,a,\n");
    responses.add(
        "two.json",
        b"[{\"paper\":\"OOPS\",\"question\":1,\"answer\":\"1\"},{\"paper\":\"OOPS\",\"question\":2,\"answer\":\"1\"}]",
    );
    let told: Vec<_> = responses.notices.iter().map(|n| (n.file.as_str(), n.line, n.lost)).collect();
    assert_eq!(told, [("one.csv", Some(2), false), ("two.json", Some(1), true)]);
    assert!(responses.notices[0].says.ends_with("Lines 2 to 4 were left out."), "{}", responses.notices[0]);
    assert!(responses.notices[1].says.ends_with("Answers 1 and 2 were left out."), "{}", responses.notices[1]);
}

#[test]
fn swapped_papers_are_seen() {
    let exam = exam();
    let code = exam.papers[0].code;
    let text = format!("paper,candidate,question,part,answer\n{code},Person 1,1,a,1 mm\n{code},p00000,1,a,2 mm\n");
    let (answer, lines, says) = read(&exam, text.as_bytes());
    assert_eq!((answer.as_str(), lines), ("2 mm", vec![(Some(2), true)]));
    assert!(says.contains("is Person 0's"), "{says}");
}

#[test]
fn files_are_merged_in_order() {
    let exam = exam();
    let code = exam.papers[0].code;
    let mut responses = Responses::new(&exam);
    responses.add("first.csv", format!("paper,question,part,answer\n{code},1,a,1 mm\n").as_bytes());
    responses.add(
        "second.json",
        format!("[{{\"paper\":\"{code}\",\"question\":1,\"part\":\"a\",\"answer\":2}}]").as_bytes(),
    );
    assert_eq!(responses.answers(code, 0, 1)[0].answer, "2");
    let says = responses.notices[0].to_string();
    assert!(says.starts_with("second.json:1: ") && says.contains("first.csv:2"), "{says}");
    assert!(responses.has(code) && !responses.has(exam.papers[1].code));
}

#[test]
fn the_template_is_read_back_and_bears_hostile_names() {
    let (bank, blueprint) = (bank(), Blueprint::read(BLUEPRINT).unwrap());
    let (mut exam, mut papers) = draw(&bank, &blueprint, 1, 1);
    for name in ["=cmd|' /C calc'!A0", "O'Neil, \"Bob\"", "-Ada", "@b", "'quoted'", "<b>李雷</b>"] {
        papers[0].candidate.name = name.into();
        exam.papers[0].candidate.name = name.into();
        let text = template(&papers);
        assert!(!text.contains(",=") && !text.contains(",-") && !text.contains(",@"), "{text}");
        let mut responses = Responses::new(&exam);
        responses.add("t.csv", text.as_bytes());
        assert_eq!(responses.notices, [], "{name}");
        assert!(!responses.has(papers[0].code) && !responses.is_empty());
        // An answer handed in late fills a blank of the template, which is nothing to remark on.
        let late = format!("paper,question,part,answer\n{},1,a,12 mm\n", papers[0].code);
        responses.add("late.csv", late.as_bytes());
        assert_eq!((responses.notices.len(), responses.answers(papers[0].code, 0, 1)[0].answer), (0, "12 mm"));
    }
}

#[test]
fn results_on_the_way_have_a_column_and_a_member_of_their_own() {
    let exam = exam();
    let code = exam.papers[0].code;
    for text in [
        format!("paper,question,part,steps,answer\n{code},1,a,1 mm; 2 mm,3 mm\n"),
        format!("paper;question;part;answer;steps\n{code};1;a;3 mm;\"1 mm; 2 mm\"\n"),
        format!(
            "[{{\"paper\":\"{code}\",\"question\":1,\"part\":\"a\",\"answer\":\"3 mm\",\"steps\":[\"1 mm\",\"2 mm\"]}}]"
        ),
    ] {
        let mut responses = Responses::new(&exam);
        responses.add("r", text.as_bytes());
        assert_eq!(responses.notices, [], "{text}");
        let written = responses.answers(code, 0, 1)[0];
        assert_eq!((written.answer, written.steps), ("3 mm", "1 mm; 2 mm"));
        // A later file with the answer alone leaves them; other results take their place, and it is said.
        responses.add("s", format!("paper,question,part,answer\n{code},1,a,3 mm\n").as_bytes());
        assert_eq!(responses.answers(code, 0, 1)[0].steps, "1 mm; 2 mm");
        responses.add("t", format!("paper,question,part,answer,steps\n{code},1,a,3 mm,4 mm\n").as_bytes());
        assert_eq!(responses.answers(code, 0, 1)[0].steps, "4 mm");
        assert!(responses.notices.last().unwrap().says.contains("later ones count"));
    }
    let mut responses = Responses::new(&exam);
    let odd = format!("[{{\"paper\":\"{code}\",\"question\":1,\"part\":\"a\",\"answer\":\"1\",\"steps\":[[]]}}]");
    responses.add("r", odd.as_bytes());
    assert!(responses.notices[0].lost && responses.notices[0].says.contains("steps"));
}
