//! The file: what goes in, what stays, what is refused.

#![allow(clippy::unwrap_used)]

mod common;

use std::collections::BTreeMap;
use std::path::Path;

use common::{date, paper, sitting};
use drivecourse_quiz::grade::GradedPaper;
use drivecourse_records::change::Place;
use drivecourse_records::{Error, Filter, Reason, Sitting, Store, Taken};

fn take(store: &mut Store, sitting: Sitting, papers: &[GradedPaper]) -> BTreeMap<Taken, usize> {
    let mut import = store.import(sitting).unwrap();
    papers.iter().for_each(|paper| {
        import.paper(paper).unwrap();
    });
    import.finish().unwrap()
}

fn marks(store: &Store) -> Vec<(String, u32, u32, bool)> {
    let papers = store.all_papers(&Filter::default()).unwrap();
    papers.into_iter().map(|paper| (paper.person, paper.earned, paper.revision, paper.passed)).collect()
}

fn class() -> Vec<GradedPaper> {
    vec![paper(1, "a1", "Ada Brenn", "11w1"), paper(2, "b2", "Bo Carrow", "w111"), paper(3, "c3", "Cy Dunmore", "")]
}

#[test]
fn what_goes_in_comes_out_and_goes_in_once() {
    let mut store = Store::in_memory().unwrap();
    let counts = take(&mut store, sitting("test", "2026-01-10"), &class());
    assert_eq!(counts, BTreeMap::from([(Taken::New, 2), (Taken::Absent, 1)]));
    let papers = store.all_papers(&Filter::default()).unwrap();
    for (row, graded) in papers.iter().zip(class()) {
        assert_eq!((&row.person, &row.name), (&graded.candidate.id, &graded.candidate.name));
        assert_eq!((row.earned, row.passed, &row.says), (graded.earned, graded.passed, &graded.says));
        assert_eq!(row.safety_missed, graded.safety_missed);
        assert_eq!(row.questions.len(), graded.questions.len());
    }
    assert_eq!(papers[0].questions[2].parts[0].cause.as_ref().unwrap().1, "You left out the 8.");
    for _ in 0..3 {
        let counts = take(&mut store, sitting("test", "2026-01-10"), &class());
        assert_eq!(counts, BTreeMap::from([(Taken::Same, 2), (Taken::Absent, 1)]));
    }
    assert_eq!(store.all_papers(&Filter::default()).unwrap(), papers);
    store.check().unwrap();
}

#[test]
fn other_answers_count_only_as_a_correction() {
    let mut store = Store::in_memory().unwrap();
    take(&mut store, sitting("test", "2026-01-10"), &[paper(1, "a1", "Ada Brenn", "11w1")]);
    let late = [paper(1, "a1", "Ada Brenn", "1111")];
    assert_eq!(take(&mut store, sitting("test", "2026-01-10"), &late), BTreeMap::from([(Taken::Changed, 1)]));
    assert_eq!(marks(&store), [("a1".to_owned(), 6, 1, true)]);
    let correction = Reason::new("question 3 was typed in wrongly", "assessor").unwrap();
    let mended = Sitting { correction: Some(correction), ..sitting("test", "2026-01-10") };
    assert_eq!(take(&mut store, mended.clone(), &late), BTreeMap::from([(Taken::Corrected, 1)]));
    assert_eq!(take(&mut store, mended, &late), BTreeMap::from([(Taken::Same, 1)]));
    assert_eq!(marks(&store), [("a1".to_owned(), 8, 2, true)]);
    // The file from before the correction changes nothing.
    let old = [paper(1, "a1", "Ada Brenn", "11w1")];
    assert_eq!(take(&mut store, sitting("test", "2026-01-10"), &old), BTreeMap::from([(Taken::Superseded, 1)]));
    assert_eq!(marks(&store), [("a1".to_owned(), 8, 2, true)]);
    let place = Place { code: late[0].code.to_string(), question: 3, part: 0, exam: None };
    let answer = store.answer(&place).unwrap();
    let written: Vec<_> = answer.revisions.iter().map(|revision| revision.written.as_str()).collect();
    assert_eq!((written, answer.counts), (vec!["8 mm", "1 mm"], 2), "the first answer stays on record");
    assert!(
        Reason::new(" ", "x").is_err() && Reason::new("x", "").is_err() && Reason::new(&"x".repeat(501), "y").is_err()
    );
}

#[test]
fn a_changed_mark_counts_and_the_original_stays() {
    let mut store = Store::in_memory().unwrap();
    take(&mut store, sitting("test", "2026-01-10"), &class());
    let code = class()[1].code.to_string();
    let place = Place { code: code.clone(), question: 1, part: 0, exam: None };
    assert!(!store.all_papers(&Filter::default()).unwrap()[1].passed, "the safety question is missed");
    let reason = Reason::new("the drawing was misprinted", "assessor").unwrap();
    let change = store.change_mark(&place, 2, &reason, date("2026-01-12")).unwrap();
    assert_eq!((change.was, change.of, change.stood), (0, 2, false));
    assert!(store.change_mark(&place, 2, &reason, date("2026-01-13")).unwrap().stood, "the same change once");
    let row = store.all_papers(&Filter::default()).unwrap().remove(1);
    assert!(row.passed && row.changed == 1 && row.earned == 8, "{row:?}");
    let answer = store.answer(&place).unwrap();
    assert_eq!((answer.counts, answer.revisions[0].earned, answer.revisions[0].changes.len()), (2, 0, 1));
    assert_eq!(answer.revisions[0].changes[0].reason, "the drawing was misprinted");
    let back = store.change_mark(&place, 1, &reason, date("2026-01-14")).unwrap();
    assert_eq!((back.was, store.answer(&place).unwrap().counts), (2, 1));
    for (place, earned) in [
        (place.clone(), 3),
        (Place { question: 9, ..place.clone() }, 1),
        (Place { part: 4, ..place.clone() }, 1),
        (Place { code: "AAAAA-AAAAA".into(), ..place.clone() }, 1),
        (Place { code: class()[2].code.to_string(), ..place }, 1),
    ] {
        assert!(matches!(store.change_mark(&place, earned, &reason, date("2026-01-14")), Err(Error::Refused(_))));
    }
}

/// Whatever program opens the file, rows are neither changed nor taken out.
#[test]
fn the_file_itself_refuses_changes() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("records");
    let mut store = Store::open(&path).unwrap();
    take(&mut store, sitting("test", "2026-01-10"), &class());
    let place = Place { code: class()[0].code.to_string(), question: 1, part: 0, exam: None };
    store.change_mark(&place, 1, &Reason::new("a", "b").unwrap(), date("2026-01-12")).unwrap();
    store.forget("c3").unwrap();
    drop(store);
    let db = rusqlite::Connection::open(&path).unwrap();
    for table in ["exam", "person", "paper", "item", "cause", "attempt", "answer", "changed", "forgotten"] {
        let rows: i64 = db.query_row(&format!("SELECT count(*) FROM {table}"), [], |row| row.get(0)).unwrap();
        assert!(rows > 0, "{table}");
        let column: String = db
            .query_row(&format!("SELECT name FROM pragma_table_info('{table}') LIMIT 1"), [], |row| row.get(0))
            .unwrap();
        for order in [format!("UPDATE {table} SET {column} = {column}"), format!("DELETE FROM {table}")] {
            let error = db.execute(&order, []).unwrap_err().to_string();
            assert!(error.contains("only added to"), "{order}: {error}");
        }
    }
}

fn holds(path: &Path, text: &str) -> bool {
    std::fs::read(path).unwrap().windows(text.len()).any(|bytes| bytes == text.as_bytes())
}

#[test]
fn a_person_is_forgotten_and_totals_are_kept() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("records");
    let mut store = Store::open(&path).unwrap();
    let mut papers = class();
    papers[0].questions[0].parts[0].answer = "a mark that only Ada makes".into();
    take(&mut store, sitting("test", "2026-01-10"), &papers);
    let place = Place { code: papers[0].code.to_string(), question: 1, part: 0, exam: None };
    store.change_mark(&place, 1, &Reason::new("smudged by Ada", "b").unwrap(), date("2026-01-12")).unwrap();
    let before = store.class(&Filter::default(), date("2026-02-01"), 1).unwrap();
    let items = store.items(&Filter::default(), &Default::default()).unwrap();
    assert!(holds(&path, "Ada Brenn") && holds(&path, "only Ada makes") && holds(&path, "smudged by Ada"));
    let removed = store.forget("a1").unwrap();
    assert_eq!((removed.papers, removed.answers, removed.changed), (1, 4, 1));
    assert!(!holds(&path, "Ada"), "nothing of her is left in the file, not even in freed space");
    let after = store.class(&Filter::default(), date("2026-02-01"), 1).unwrap();
    assert_eq!(after.standings.len(), 2);
    let (was, is) = (&before.totals[0], &after.totals[0]);
    assert_eq!(
        (was.papers, was.handed_in, was.passed, was.earned, was.of),
        (is.papers, is.handed_in, is.passed, is.earned, is.of)
    );
    assert_eq!(is.removed, 1);
    let kept = store.items(&Filter::default(), &Default::default()).unwrap();
    for (was, is) in items.items.iter().zip(&kept.items) {
        assert_eq!((was.asked, was.full, is.removed), (is.asked, is.full, 1));
        assert!((was.facility - is.facility).abs() < 1e-12);
        let times =
            |line: &drivecourse_records::report::ItemLine| line.causes.iter().map(|c| c.times).collect::<Vec<_>>();
        assert_eq!(times(was), times(is));
    }
    // A repeated import does not bring her back.
    let counts = take(&mut store, sitting("test", "2026-01-10"), &papers);
    assert_eq!(counts, BTreeMap::from([(Taken::Forgotten, 1), (Taken::Same, 1), (Taken::Absent, 1)]));
    assert!(!holds(&path, "Ada"));
    assert!(matches!(store.forget("a1"), Err(Error::Refused(_))));
    store.check().unwrap();
    // All gone: the totals still stand.
    store.forget("b2").unwrap();
    store.forget("c3").unwrap();
    let empty = store.class(&Filter::default(), date("2026-02-01"), 1).unwrap();
    assert_eq!((empty.standings.len(), empty.totals[0].papers, empty.totals[0].earned), (0, was.papers, was.earned));
}

#[test]
fn a_dropped_import_leaves_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let mut store = Store::open(&folder.path().join("records")).unwrap();
    take(&mut store, sitting("first", "2026-01-10"), &class());
    let before = store.all_papers(&Filter::default()).unwrap();
    for stop in 0..3 {
        let mut import = store.import(sitting("second", "2026-02-10")).unwrap();
        class().iter().take(stop).for_each(|paper| {
            import.paper(paper).unwrap();
        });
        drop(import);
        assert_eq!(store.all_papers(&Filter::default()).unwrap(), before);
    }
    store.check().unwrap();
}

#[test]
fn two_imports_at_once_both_count() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("records");
    let all: Vec<GradedPaper> = (0..400).map(|n| paper(n, &format!("p{n}"), &format!("Person {n}"), "1w11")).collect();
    let import = |exam: &'static str, papers: Vec<GradedPaper>| {
        let path = path.clone();
        std::thread::spawn(move || take(&mut Store::open(&path).unwrap(), sitting(exam, "2026-01-10"), &papers))
    };
    // The file is made by whoever comes first; one of them imports the same papers as another.
    let hands = [import("one", all.clone()), import("two", all.clone()), import("one", all.clone())];
    let counts: Vec<_> = hands.into_iter().map(|hand| hand.join().unwrap()).collect();
    let new: usize = counts.iter().filter_map(|count| count.get(&Taken::New)).sum();
    let same: usize = counts.iter().filter_map(|count| count.get(&Taken::Same)).sum();
    assert_eq!((new, same), (800, 400), "{counts:?}");
    let store = Store::existing(&path).unwrap();
    assert_eq!(marks(&store).len(), 800);
    store.check().unwrap();
}

#[test]
fn one_id_is_one_person() {
    let mut store = Store::in_memory().unwrap();
    take(&mut store, sitting("first", "2026-01-10"), &[paper(1, "a1", "Ada Brenn", "1111")]);
    let second = paper(9, "a1", "Ada Carrow", "1111");
    let mut import = store.import(sitting("second", "2026-02-10")).unwrap();
    let error = import.paper(&second).unwrap_err().to_string();
    assert!(error.contains("Ada Brenn") && error.contains("--renamed a1"), "{error}");
    drop(import);
    let renamed = Sitting { renamed: vec!["a1".into()], ..sitting("second", "2026-02-10") };
    take(&mut store, renamed, &[second]);
    let report = store.person("a1", date("2026-03-01"), 1).unwrap();
    assert_eq!((report.name.as_str(), report.papers.len()), ("Ada Carrow", 2));
}

#[test]
fn foreign_damaged_and_later_files_are_told_apart() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    assert!(matches!(Store::existing(&path("none")), Err(Error::Missing(_))));
    std::fs::write(path("text"), "this is a letter, not a table of marks, and it is long enough").unwrap();
    assert!(matches!(Store::open(&path("text")), Err(Error::Foreign(..))));
    let other = rusqlite::Connection::open(path("other")).unwrap();
    other.execute_batch("CREATE TABLE mine (x)").unwrap();
    assert!(matches!(Store::open(&path("other")), Err(Error::Foreign(..))));
    assert!(other.query_row("SELECT count(*) FROM sqlite_schema", [], |row| row.get::<_, i64>(0)).unwrap() == 1);
    drop(Store::open(&path("ours")).unwrap());
    let ours = rusqlite::Connection::open(path("ours")).unwrap();
    ours.pragma_update(None, "user_version", 2).unwrap();
    assert!(matches!(Store::open(&path("ours")), Err(Error::Newer(_, 2))));
    assert!(Store::open(&path("no/such/folder")).is_err());
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        assert_eq!(std::fs::metadata(path("ours")).unwrap().permissions().mode() & 0o777, 0o600);
    }
}
