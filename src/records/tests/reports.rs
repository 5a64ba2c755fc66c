//! What is read from the records.

#![allow(clippy::unwrap_used)]

mod common;

use common::{date, paper, sitting};
use drivecourse_quiz::grade::GradedPaper;
use drivecourse_records::report::{ItemFilter, State};
use drivecourse_records::{Filter, Store};

fn store(sittings: &[(&str, &str, Vec<GradedPaper>)]) -> Store {
    let mut store = Store::in_memory().unwrap();
    for (exam, sat, papers) in sittings {
        let mut import = store.import(sitting(exam, sat)).unwrap();
        papers.iter().for_each(|paper| {
            import.paper(paper).unwrap();
        });
        import.finish().unwrap();
    }
    store
}

#[test]
fn the_latest_paper_decides_and_a_pass_lapses() {
    let ada = |number, right| paper(number, "a1", "Ada Brenn", right);
    let store = store(&[
        ("check", "2025-01-10", vec![ada(1, "1111"), paper(2, "b2", "Bo Carrow", "111w"), paper(3, "c3", "Cy", "")]),
        ("check", "2025-06-10", vec![ada(4, "w111")]),
        ("check", "2025-07-10", vec![ada(5, "1111")]),
        ("check", "2025-08-10", vec![ada(6, "")]),
    ]);
    let state = |person: &str, day: &str| {
        let class = store.class(&Filter::default(), date(day), 2).unwrap();
        class.standings.into_iter().find(|standing| standing.person == person).map(|standing| standing.state)
    };
    for (person, day, wanted) in [
        ("a1", "2025-01-10", Some(State::Ready)),
        ("a1", "2025-06-10", Some(State::NotPassed)),
        // A later paper passes again; one not handed in takes nothing away.
        ("a1", "2025-07-10", Some(State::Ready)),
        ("a1", "2025-09-01", Some(State::Ready)),
        ("a1", "2026-05-09", Some(State::Ready)),
        ("a1", "2026-05-10", Some(State::Due)),
        ("a1", "2026-07-10", Some(State::Due)),
        ("a1", "2026-07-11", Some(State::Lapsed)),
        ("b2", "2025-12-01", Some(State::Due)),
        ("b2", "2026-01-11", Some(State::Lapsed)),
        ("c3", "2026-01-11", Some(State::NothingHandedIn)),
    ] {
        assert_eq!(state(person, day), wanted, "{person} on {day}");
    }
    let due = store.due(&Filter::default(), date("2026-06-01"), 2).unwrap();
    let list: Vec<_> = due.due.iter().map(|s| (s.person.as_str(), s.until.unwrap().to_string(), s.alone)).collect();
    assert_eq!(list, [("b2", "2026-01-10".to_owned(), false), ("a1", "2026-07-10".to_owned(), true)]);
}

/// Who may work alone does so on one paper, or on several passed in a row that still hold: the report says on how many.
#[test]
fn a_yes_says_on_how_many_papers_and_answers_it_rests() {
    let ada = |number, right| paper(number, "a1", "Ada Brenn", right);
    let store = store(&[
        ("check", "2025-01-10", vec![ada(1, "1111"), paper(2, "b2", "Bo Carrow", "w111")]),
        ("check", "2025-06-10", vec![ada(4, "1110"), paper(5, "b2", "Bo Carrow", "11w1")]),
        ("check", "2025-08-10", vec![ada(6, "")]),
        ("other", "2025-03-10", vec![ada(7, "1111")]),
    ]);
    let rests = |person: &str, day: &str| {
        let class = store.class(&Filter { exam: Some("check".into()), ..Filter::default() }, date(day), 2).unwrap();
        let own = class.standings.into_iter().find(|standing| standing.person == person).unwrap();
        (own.alone, own.papers, own.answers)
    };
    assert_eq!(rests("a1", "2025-01-10"), (true, 1, 4));
    // Blanks are no answers; a paper that was not handed in counts for nothing, nor does one of another exam.
    assert_eq!(rests("a1", "2025-09-01"), (true, 2, 7));
    // What has lapsed is nothing to rest on.
    assert_eq!(rests("a1", "2026-01-11"), (true, 1, 3));
    assert_eq!(rests("a1", "2026-06-11"), (false, 0, 0));
    assert_eq!(rests("b2", "2025-01-10"), (false, 0, 0));
    // The one before was not passed.
    assert_eq!(rests("b2", "2025-07-01"), (true, 1, 4));
}

#[test]
fn one_apprentice_with_skills_and_trend() {
    let store = store(&[
        ("check", "2025-01-10", vec![paper(1, "a1", "Ada Brenn", "1w0w")]),
        ("check", "2025-06-10", vec![paper(4, "a1", "Ada Brenn", "11w1"), paper(5, "b2", "Bo", "1111")]),
    ]);
    let report = store.person("a1", date("2025-07-01"), 1).unwrap();
    assert_eq!(report.papers.len(), 2);
    let skills: Vec<_> = report.skills.iter().map(|s| (s.skill.as_str(), s.last, s.trend, s.practise)).collect();
    assert_eq!(
        skills,
        [("sag", 0.0, Some(0.0), true), ("length", 1.0, Some(1.0), false), ("safe-work", 1.0, Some(0.0), false)]
    );
    assert_eq!(report.to_practise().count(), 1);
    assert_eq!(report.skills[0].causes[0].says, "You left out the 8.");
    assert!(store.person("zz", date("2025-07-01"), 1).is_err());
    assert!(store.person("a1", date("2024-07-01"), 1).is_err(), "nothing was known of her then");
    // Her first paper alone, as it stood.
    assert_eq!(store.person("a1", date("2025-02-01"), 1).unwrap().skills[0].trend, None);
}

/// Ten students, ten items: the class of `statistics`, stored and read back.
#[test]
fn items_of_the_published_class() {
    const CLASS: [&str; 10] = [
        "1111110110",
        "1011011101",
        "1111011001",
        "0010001000",
        "0000010010",
        "1110111111",
        "1101110111",
        "1111111101",
        "0101111101",
        "1101101110",
    ];
    let papers = CLASS.iter().enumerate().map(|(n, right)| {
        let right: String = right.chars().map(|c| if c == '1' { '1' } else { 'w' }).collect();
        paper(n as u64, &format!("p{n}"), &format!("Person {n}"), &right)
    });
    let store = store(&[("check", "2025-01-10", papers.collect())]);
    let report = store.items(&Filter::default(), &ItemFilter::default()).unwrap();
    let exam = &report.exams[0];
    assert_eq!((exam.papers, exam.questions), (10, 10));
    let kr20 = 10.0 / 9.0 * (1.0 - 2.18 / 5.84);
    assert!((exam.kr20.unwrap() - kr20).abs() < 1e-12 && (exam.alpha.unwrap() - kr20).abs() < 1e-12);
    let facility: Vec<f64> = report.items.iter().map(|item| (item.facility * 10.0).round() / 10.0).collect();
    assert_eq!(facility, [0.7, 0.7, 0.6, 0.7, 0.6, 0.8, 0.7, 0.7, 0.5, 0.6]);
    // Corrected point-biserials of the same data, worked out independently.
    let known = [0.7059, 0.7059, 0.0, 0.4736, 0.5839, 0.2861, -0.0274, 0.7059, -0.1236, 0.4759];
    for (item, known) in report.items.iter().zip(known) {
        assert!((item.discrimination.unwrap() - known).abs() < 0.000_05, "{item:?}");
        assert_eq!(item.causes[0].times, 10 - item.full);
        assert_eq!(item.variants.iter().map(|variant| variant.asked).sum::<usize>(), 10);
        assert!(item.alike.is_some_and(|alike| alike.rough && alike.freedom == 1));
    }
    let one = store
        .items(&Filter::default(), &ItemFilter { item: Some("item-3".into()), family: Some("belt".into()) })
        .unwrap();
    assert_eq!((one.items.len(), one.items[0].asked, one.items[0].variants.len()), (1, 5, 1));
}

#[test]
fn a_class_by_group_and_exam() {
    let mut other = paper(2, "b2", "Bo Carrow", "1w11");
    other.candidate.group = Some("night".into());
    let store = store(&[
        ("check", "2025-01-10", vec![paper(1, "a1", "Ada Brenn", "1111"), other]),
        ("second", "2025-01-11", vec![paper(3, "a1", "Ada Brenn", "wwww")]),
    ]);
    let class = |filter: Filter| store.class(&filter, date("2025-02-01"), 1).unwrap();
    assert_eq!(class(Filter::default()).standings.len(), 3);
    let night = class(Filter { group: Some("night".into()), ..Filter::default() });
    assert_eq!((night.standings.len(), night.causes[0].times, night.causes[0].people), (1, 1, 1));
    let second = class(Filter { exam: Some("second".into()), ..Filter::default() });
    assert_eq!((second.standings.len(), second.totals.len(), second.totals[0].passed), (1, 1, 0));
    assert!(!second.standings[0].alone && second.standings[0].says.contains("Safety question 1"));
    // Serialised reports are the same each time.
    let json = || serde_json::to_string(&class(Filter::default())).unwrap();
    assert_eq!(json(), json());
}
