//! The program killed at random moments: nothing is lost, nothing doubled, every file opens.

use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use drivecourse_machine::chance::Stream;
use drivecourse_records::{Filter, Store};

use crate::exam::{csv, fill, graded, rows, small};
use crate::{PROGRAM, Place, tree};

/// How often a process is killed; 200 or more with `DRIVECOURSE_KILLS=200`.
fn kills() -> u32 {
    std::env::var("DRIVECOURSE_KILLS").ok().and_then(|text| text.parse().ok()).unwrap_or(40)
}

/// People enough for an import to take its time.
const PEOPLE: usize = 250;

/// The small exam and one for many people, both graded.
fn graded_exams() -> Place {
    let place = Place::new();
    small(&place);
    let roster: String = (0..PEOPLE).map(|n| format!("k{n:03},Person {n},si\n")).collect();
    place.write("two.csv", format!("id,name,units\n{roster}"));
    let made = ["papers", "--module", "plant", "--exam", "small", "--roster", "two.csv", "--secret", "secret"];
    place.run(&[&made[..], &["--out", "large", "--name", "large"]].concat()).done();
    for exam in ["exam", "large"] {
        let mut answers = rows(&place.text(&format!("{exam}/responses.csv")));
        let file = format!("{exam}/responses.csv");
        fill(&mut answers, &graded(&place, &[exam, &file, "--module", "plant", "--out", "blank"]));
        place.write(&format!("{exam}.csv"), csv(&answers));
        place.run(&["grade", exam, &format!("{exam}.csv"), "--module", "plant"]).done();
    }
    place
}

/// Starts the program and kills it after `patience`; whether it had ended by itself.
fn killed(place: &Place, arguments: &[&str], patience: Duration) -> bool {
    let mut command = Command::new(PROGRAM);
    command.args(arguments).current_dir(place.path(""));
    let mut child = command.stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null()).spawn().unwrap();
    std::thread::sleep(patience);
    let ended = child.try_wait().unwrap().is_some();
    let _ = child.kill();
    child.wait().unwrap();
    ended
}

/// How long a whole run takes.
fn time(place: &Place, arguments: &[&str]) -> Duration {
    let start = Instant::now();
    place.run(arguments).done();
    start.elapsed()
}

/// A moment up to a little beyond the end of a run.
fn moment(stream: &mut Stream, whole: Duration) -> Duration {
    whole.mul_f64(1.1 * stream.unit())
}

#[test]
fn an_import_killed_at_any_moment_counts_whole_or_not_at_all() {
    let place = graded_exams();
    place.run(&["record", "exam", "--records", "base", "--on", "2026-03-02"]).done();
    let record = ["record", "large", "--records", "kept", "--on", "2026-03-03"];
    std::fs::copy(place.path("base"), place.path("kept")).unwrap();
    let whole = time(&place, &record);
    let all = papers(&place);
    assert_eq!(all.len(), PEOPLE + 2);
    let mut stream = Stream::new(7, "kills");
    let (mut none, mut full) = (0, 0);
    for _ in 0..kills() {
        let _ = std::fs::remove_file(place.path("kept-journal"));
        std::fs::copy(place.path("base"), place.path("kept")).unwrap();
        killed(&place, &record, moment(&mut stream, whole));
        let found = papers(&place);
        match found.len() {
            2 => none += 1,
            length if length == PEOPLE + 2 => full += 1,
            length => panic!("{length} papers: half an import counts"),
        }
        assert!(found.iter().all(|paper| all.contains(paper)), "what is there is as it was");
        // Going on from there: all of it, once.
        place.run(&record).done();
        assert_eq!(papers(&place), all);
    }
    println!("{} kills: {none} before it counted, {full} after", kills());
    assert!(none > 0, "some kills must come before the end");
}

/// Every paper as it counts, after a look through the whole file.
fn papers(place: &Place) -> Vec<(String, u32, u32)> {
    let store = Store::existing(&place.path("kept")).unwrap();
    store.check().unwrap();
    let papers = store.all_papers(&Filter::default()).unwrap();
    papers.into_iter().map(|paper| (paper.code, paper.revision, paper.earned)).collect()
}

#[test]
fn grading_killed_at_any_moment_leaves_whole_files_and_is_done_again() {
    let place = graded_exams();
    let arguments = ["grade", "large", "large.csv", "--module", "plant"];
    let handed_in = place.text("large.csv");
    let record = place.text("large/exam.json");
    let whole = time(&place, &arguments);
    let wanted = tree(&place.path("large/results"));
    let mut stream = Stream::new(8, "kills");
    for _ in 0..(kills() / 5).max(5) {
        std::fs::remove_dir_all(place.path("large/results")).unwrap();
        killed(&place, &arguments, moment(&mut stream, whole));
        for (path, bytes) in tree(&place.path("large/results")) {
            // A file of a killed process that never got its name is no result.
            if let Some(whole) = wanted.get(&path) {
                assert!(*whole == bytes, "{} is half written", path.display());
            }
        }
        assert!(handed_in == place.text("large.csv") && record == place.text("large/exam.json"));
        place.run(&arguments).done();
        let again = tree(&place.path("large/results"));
        assert!(wanted.iter().all(|(path, bytes)| again.get(path) == Some(bytes)));
    }
}

#[test]
fn two_imports_at_once_both_count() {
    let place = graded_exams();
    let start = |exam: &str| {
        let mut command = Command::new(PROGRAM);
        command.args(["record", exam, "--records", "kept", "--on", "2026-03-02"]).current_dir(place.path(""));
        command.stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::piped()).spawn().unwrap()
    };
    for round in 0..5 {
        let _ = std::fs::remove_file(place.path("kept"));
        let hands = [start("large"), start("exam"), start("large")];
        for hand in hands {
            let output = hand.wait_with_output().unwrap();
            assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
        }
        assert_eq!(papers(&place).len(), PEOPLE + 2, "round {round}");
    }
}
