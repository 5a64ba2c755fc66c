//! Rows that say what their questions are worth and how hard they are.

use super::*;

/// The usual blueprint with a weight in every row.
fn weighted() -> String {
    BLUEPRINT.replace("count = 2", "count = 2\nweight = 5").replace("count = 1", "count = 1\nweight = 4")
}

#[test]
fn papers_of_weighted_rows_have_one_total_and_are_made_again() {
    let bank = bank();
    let plain = Blueprint::read(BLUEPRINT).unwrap();
    let totals = |blueprint: &Blueprint| -> BTreeSet<u32> {
        draw(&bank, blueprint, 40, 2).1.iter().map(|paper| paper.marks).collect()
    };
    assert!(totals(&plain).len() > 1, "without weights the totals differ");
    let blueprint = Blueprint::read(&weighted()).unwrap();
    assert_eq!(totals(&blueprint), BTreeSet::from([22]));
    assert_eq!(
        Draw::new(&bank, &blueprint, "spring", secret(), &people(1), Used::new()).unwrap().remarks(),
        [""; 0],
        "nothing is unequal"
    );
    let (exam, papers) = draw(&bank, &blueprint, 12, 1);
    let exam = Exam::read(&exam.write()).unwrap();
    let settings = exam.settings(&bank);
    for (record, paper) in exam.papers.iter().zip(&papers) {
        let again = exam.paper(record, &settings).unwrap();
        let marks = |paper: &Paper| paper.questions.iter().map(|placed| placed.question.marks()).collect::<Vec<_>>();
        assert_eq!((marks(&again), again.digest()), (vec![5, 5, 4, 4, 4], paper.digest()));
        assert!(record.questions.iter().all(|reference| reference.weight.is_some()));
    }
}

#[test]
fn neighbours_get_different_papers() {
    let (bank, blueprint) = (bank(), Blueprint::read(BLUEPRINT).unwrap());
    let (_, papers) = draw(&bank, &blueprint, 30, 1);
    for pair in papers.windows(2) {
        let asked =
            |paper: &Paper| paper.questions.iter().map(|placed| placed.question.text.clone()).collect::<Vec<_>>();
        let shown = |paper: &Paper| {
            let parts = paper.questions.iter().flat_map(|placed| &placed.question.parts);
            parts.map(|part| format!("{:?}", part.givens)).collect::<Vec<_>>()
        };
        assert!(asked(&pair[0]) != asked(&pair[1]) || shown(&pair[0]) != shown(&pair[1]));
        for (one, other) in pair[0].questions.iter().zip(&pair[1].questions) {
            assert_ne!(one.case(), other.case(), "not one machine in common");
        }
    }
}

#[test]
fn a_row_that_cannot_be_met_is_refused_where_it_stands() {
    let bank = bank();
    for (from, to, line, what) in [
        ("skill = \"soft-foot\"\ncount = 2", "item = \"twist-gap\"\ncount = 1\nweight = 2", 6, "cannot be shared"),
        ("skill = \"level\"\ncount = 1", "skill = \"level\"\ncount = 1\ndifficulty = [90, 99]", 12, "difficulty of"),
    ] {
        let text = BLUEPRINT.replacen(from, to, 1);
        let blueprint = Blueprint::read(&text).unwrap();
        let problems = Draw::new(&bank, &blueprint, "spring", secret(), &people(1), Used::new()).unwrap_err();
        assert_eq!(problems[0].line_column(&text).map(|(line, _)| line), Some(line), "{problems:?}");
        assert!(problems[0].to_string().contains(what), "{problems:?}");
    }
    // A band in the middle leaves the items that lie in it.
    let text = BLUEPRINT.replace("skill = \"level\"", "skill = \"level\"\ndifficulty = [0, 2]");
    let blueprint = Blueprint::read(&text.replace("12 %", "90 %")).unwrap();
    let (_, papers) = draw(&bank, &blueprint, 10, 1);
    assert!(papers.iter().all(|paper| paper.questions[3].question.difficulty() <= 2.0));
}
