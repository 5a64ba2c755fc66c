//! A small bank about mounting, and what papers drawn from it must be like.

use crate::bank::Bank;
use std::collections::BTreeSet;

use drivecourse_machine::{Family, Plan, Problem, System};

use super::*;
use crate::blueprint::Blueprint;
use crate::exam::Exam;
use crate::item::read_items;
use crate::roster::Roster;
use crate::seal::Secret;

mod weights;

const FAMILY: &str = r#"
name = "test bench"
[fixed]
"mount.shim_stock" = "metric leaves"
"mount.shim_most" = "4"
"mount.gap_limit" = "0.05 mm"
"mount.level_limit" = "0.5 mm/m"
[draw]
"mount.along" = { between = ["400 mm", "900 mm"] }
"mount.across" = { between = ["300 mm", "600 mm"] }
"mount.weight_along" = { between = ["150 mm", "250 mm"] }
"mount.weight_across" = { between = ["100 mm", "200 mm"] }
"mount.height_1" = { between = ["-0.3 mm", "0.6 mm"] }
"mount.height_2" = { between = ["-0.6 mm", "0.3 mm"] }
"mount.height_3" = { between = ["-0.3 mm", "0.7 mm"] }
"mount.height_4" = { between = ["-0.6 mm", "0.3 mm"] }
"mount.foot_length" = { between = ["80 mm", "140 mm"] }
"mount.foot_width" = { between = ["60 mm", "120 mm"] }
"mount.corner_mean" = { between = ["0.9 mm", "1.5 mm"] }
"mount.slope_along" = { between = ["-6 mm/m", "6 mm/m"] }
"mount.slope_across" = { between = ["-6 mm/m", "6 mm/m"] }
"mount.corner_residual" = { between = ["0 mm", "0.01 mm"] }
"mount.level" = { between = ["-1.2 mm/m", "1.2 mm/m"] }
"mount.level_run" = { between = ["1.5 m", "4 m"] }
[[limit]]
quantity = "mount.gap"
at_least = "0.15 mm"
"#;

const HEIGHTS: &str = r#"["mount.height_1", "mount.height_2", "mount.height_3", "mount.height_4"]"#;

pub(crate) fn items() -> String {
    format!(
        r#"
[[item]]
id = "lock-out"
topic = "mount"
skill = "lock-out"
title = "Before you loosen a foot"
text = "You want to loosen a foot of the {{machine}}."
safety = true
[[item.part]]
text = "In which order?"
order = ["tell the operators", "switch off and isolate", "lock out", "try the start", "loosen the bolt"]
because = "Only a try at the start shows that the right switch is locked."
marks = 2

[[item]]
id = "run-bare"
topic = "mount"
skill = "lock-out"
title = "A short test run"
text = "The guard of the {{machine}} is off."
safety = true
[[item.part]]
text = "What do you do?"
pick = ["run it briefly", "fit the guard first", "stand well back"]
right = 2
because = "No drive runs without its guard."
marks = 2

[[item]]
id = "twist-gap"
topic = "mount"
skill = "soft-foot"
title = "Twist and gap"
text = "The {{machine}} stands on four pads."
[[item.part]]
text = "What is the twist?"
ask = "mount.twist"
from = {HEIGHTS}
marks = 2
[[item.part]]
text = "How wide is the gap under the loose foot?"
ask = "mount.gap"
from = ["mount.twist"]
[[item.part]]
text = "What about it?"
ask = "mount.gap_verdict"
from = ["mount.gap", "mount.gap_limit"]

[[item]]
id = "loose"
topic = "mount"
skill = "soft-foot"
title = "The loose foot"
text = "The {{machine}} stands on four pads."
[[item.part]]
text = "Which foot is loose?"
ask = "mount.loose_foot"
from = ["mount.height_1", "mount.height_2", "mount.height_3", "mount.height_4", "mount.along", "mount.across", "mount.weight_along", "mount.weight_across"]
[[item.part]]
text = "How wide is its gap?"
ask = "mount.gap"
from = {HEIGHTS}

[[item]]
id = "worst"
topic = "mount"
skill = "soft-foot"
title = "Dial at each foot"
text = "One bolt of the {{machine}} after another is loosened."
[[item.part]]
text = "What is the largest rise?"
ask = "mount.worst_rise"
from = ["mount.rise_1", "mount.rise_2", "mount.rise_3", "mount.rise_4"]
[[item.part]]
text = "What about it?"
ask = "mount.gap_verdict"
from = ["mount.worst_rise", "mount.gap_limit"]

[[item]]
id = "angled"
topic = "mount"
skill = "angled-foot"
title = "An angled foot"
text = "Feelers at the corners of a foot of the {{machine}}."
[[item.part]]
text = "How wide is the gap at the middle?"
ask = "mount.corner_mean"
from = ["mount.corner_1", "mount.corner_2", "mount.corner_3", "mount.corner_4"]
[[item.part]]
text = "How steep is it along the shaft?"
ask = "mount.slope_along"
from = ["mount.corner_1", "mount.corner_2", "mount.corner_3", "mount.corner_4", "mount.foot_length"]

[[item]]
id = "level-run"
topic = "mount"
skill = "level"
title = "Height over the base"
text = "A level lies on the base of the {{machine}}."
[[item.part]]
text = "By how much does the height change over the base?"
ask = "mount.height_change"
from = ["mount.level", "mount.level_run"]
[[item.part]]
text = "Is it level enough?"
ask = "mount.level_verdict"
from = ["mount.level", "mount.level_limit"]

[[item]]
id = "level-only"
topic = "mount"
skill = "level"
title = "The level"
text = "A level lies on the base of the {{machine}}."
[[item.part]]
text = "Is it level enough?"
ask = "mount.level_verdict"
from = ["mount.level", "mount.level_limit"]
"#
    )
}

pub(crate) const BLUEPRINT: &str = r#"title = "Mounting"
minutes = 40
pass = "70 %"
band = "12 %"
[[row]]
skill = "soft-foot"
count = 2
[[row]]
item = "angled"
count = 1
[[row]]
skill = "level"
count = 1
[[row]]
skill = "lock-out"
count = 1
safety_only = true
marks = 2
"#;

/// `FAMILY` in mm, and a second family of the same sort.
pub(crate) fn bank() -> Bank {
    let plan = |id: &str, text: &str| Plan::new(Family::read(id, text).unwrap()).unwrap();
    let second = FAMILY.replace("test bench", "second bench").replace("metric leaves", "inch leaves");
    Bank::new(read_items(&items()).unwrap(), vec![plan("bench", FAMILY), plan("second", &second)]).unwrap()
}

pub(crate) fn secret() -> Secret {
    Secret::new([42; 32])
}

/// So many people; every fourth wants US units.
pub(crate) fn people(count: usize) -> Vec<Person> {
    let units = |index: usize| if index % 4 == 3 { "us" } else { "si" };
    let rows: String = (0..count).map(|i| format!("p{i:05},Person {i},day,{}\n", units(i))).collect();
    Roster::read_csv(&format!("id,name,group,units\n{rows}")).unwrap().people
}

pub(crate) fn draw<'a>(
    bank: &'a Bank,
    blueprint: &'a Blueprint,
    count: usize,
    threads: usize,
) -> (Exam, Vec<Paper<'a>>) {
    let people = people(count);
    let mut draw = Draw::new(bank, blueprint, "spring", secret(), &people, Used::new()).unwrap();
    let mut exam = Exam::new("spring", "scenario digest", &secret(), blueprint.clone());
    let mut papers = Vec::new();
    let take = |paper: Paper<'a>| {
        exam.push(&paper);
        papers.push(paper);
    };
    draw.papers(&people, 1, threads, take).unwrap();
    (exam, papers)
}

#[test]
fn the_same_secret_gives_the_same_bytes_on_any_number_of_threads() {
    let (bank, blueprint) = (bank(), Blueprint::read(BLUEPRINT).unwrap());
    let (first, papers) = draw(&bank, &blueprint, 12, 1);
    let (second, _) = draw(&bank, &blueprint, 12, 3);
    assert_eq!(first.write(), second.write());
    assert_eq!(Exam::read(&first.write()).unwrap().write(), first.write());
    let other = Draw::new(&bank, &blueprint, "spring", Secret::new([1; 32]), &people(1), Used::new());
    other.unwrap().papers(&people(1), 1, 1, |paper| assert_ne!(paper.digest(), papers[0].digest())).unwrap();
    assert!(first.fits(&secret()) && !first.fits(&Secret::new([1; 32])));
    assert!(!first.write().contains(&secret().write()[21..37]), "the record does not hold the secret");
}

#[test]
fn papers_meet_the_blueprint_and_share_nothing() {
    let (bank, blueprint) = (bank(), Blueprint::read(BLUEPRINT).unwrap());
    let (exam, papers) = draw(&bank, &blueprint, 60, 2);
    assert_eq!(papers.len(), 60);
    let draw = Draw::new(&bank, &blueprint, "spring", secret(), &people(60), Used::new()).unwrap();
    let mut seen = BTreeSet::new();
    let mut codes = BTreeSet::new();
    for paper in &papers {
        assert!(codes.insert(paper.code));
        let mut place = 0;
        for row in &blueprint.rows {
            for placed in &paper.questions[place..place + row.count as usize] {
                assert!(blueprint.takes(row, placed.item), "{} in {}", placed.item.id, row.pick);
            }
            place += row.count as usize;
        }
        assert_eq!(place, paper.questions.len());
        let items: BTreeSet<&str> = paper.questions.iter().map(|placed| placed.item.id.as_str()).collect();
        assert_eq!(items.len(), paper.questions.len(), "no item twice on a paper");
        assert!(paper.questions.iter().any(|placed| placed.item.safety));
        let (target, band) = draw.difficulty(paper.system).unwrap();
        assert!((paper.difficulty - target).abs() <= band, "{} against {target} ± {band}", paper.difficulty);
        for placed in &paper.questions {
            assert!(seen.insert(placed.case()), "a case comes twice");
            assert_eq!(placed.question.system, paper.candidate.units.unwrap());
        }
    }
    assert_eq!(papers[3].system, System::Us);
    assert_eq!(exam.papers[7].digest, papers[7].digest());
    let remarks = draw.remarks();
    assert!(remarks.iter().all(|remark| remark.contains("give the row a weight")), "{remarks:?}");
}

#[test]
fn a_resit_repeats_no_case_even_under_the_same_name() {
    let (bank, blueprint) = (bank(), Blueprint::read(BLUEPRINT).unwrap());
    let (exam, papers) = draw(&bank, &blueprint, 12, 1);
    let mut used = Used::new();
    used.add(&exam);
    let before: BTreeSet<u64> = papers.iter().flat_map(|paper| &paper.questions).map(Placed::case).collect();
    // The same sitting again: every first number is taken, so all of it is drawn otherwise.
    for sitting in [1, 2] {
        let mut draw = Draw::new(&bank, &blueprint, "spring", secret(), &people(12), used.clone()).unwrap();
        let mut count = 0;
        let take = |paper: Paper| {
            assert!(paper.questions.iter().all(|placed| !before.contains(&placed.case())));
            assert!(exam.find(paper.code).is_none());
            count += 1;
        };
        draw.papers(&people(12), sitting, 2, take).unwrap();
        assert_eq!(count, 12);
    }
}

#[test]
fn a_family_with_too_few_machines_is_refused_at_the_row() {
    let fixed: String = FAMILY
        .lines()
        .map(|line| match line.split_once("{ between = [") {
            Some((name, rest)) => {
                format!("{name}{}\n", rest.split(',').next_back().unwrap().trim_end_matches(" }").trim_end_matches(']'))
            }
            None => format!("{line}\n"),
        })
        .collect();
    let plan = Plan::new(Family::read("one", &fixed).unwrap()).unwrap();
    let bank = Bank::new(read_items(&items()).unwrap(), vec![plan]).unwrap();
    let text = BLUEPRINT.replace("band = \"12 %\"", "band = \"90 %\"");
    let blueprint = Blueprint::read(&text).unwrap();
    let mut draw = Draw::new(&bank, &blueprint, "spring", secret(), &people(2), Used::new()).unwrap();
    let problem = draw.papers(&people(2), 1, 1, |_| ()).unwrap_err();
    assert_eq!(problem.line_column(&text).unwrap().0, 6, "{problem}");
    assert!(problem.what.contains("too few different machines"), "{problem}");
}

#[test]
fn impossible_blueprints_are_refused_at_the_row() {
    let bank = bank();
    for (from, to, line, what) in [
        ("skill = \"soft-foot\"", "skill = \"soft-feet\"", Some(6), "Did you mean \"soft-foot\"?"),
        ("item = \"angled\"", "item = \"angld\"", Some(9), "Did you mean \"angled\"?"),
        ("skill = \"soft-foot\"", "topic = \"heat\"", Some(6), "nothing of the topic"),
        ("marks = 2", "marks = 7", Some(15), "worth 2 marks"),
        ("skill = \"level\"", "skill = \"level\"\nsafety_only = true", Some(12), "none is a safety question"),
        ("safety_only = true\n", "", None, ""),
        (
            "skill = \"lock-out\"\ncount = 1\nsafety_only = true",
            "skill = \"level\"\ncount = 1",
            None,
            "No row makes sure",
        ),
        ("minutes", "families = [\"bensh\"]\nminutes", Some(2), "Did you mean \"bench\"?"),
        ("12 %", "0.01 %", Some(12), "mean difficulty"),
    ] {
        let text = BLUEPRINT.replacen(from, to, 1);
        let blueprint = Blueprint::read(&text).unwrap();
        let made = Draw::new(&bank, &blueprint, "spring", secret(), &people(1), Used::new());
        if what.is_empty() {
            assert!(made.is_ok(), "a row of safety questions only needs no word");
            continue;
        }
        let problems = made.unwrap_err();
        let found = problems[0].line_column(&text).map(|(line, _)| line);
        assert!(problems[0].to_string().contains(what), "{problems:?}");
        assert_eq!((found, problems.len()), (line, 1), "{to}: {problems:?}");
    }
}

#[test]
fn a_row_nothing_fits_says_why() {
    let text = FAMILY.replace("\"mount.level_run\" = { between = [\"1.5 m\", \"4 m\"] }\n", "");
    let plan = Plan::new(Family::read("short", &text).unwrap()).unwrap();
    let bank = Bank::new(read_items(&items()).unwrap(), vec![plan]).unwrap();
    let text = BLUEPRINT.replace("skill = \"level\"", "item = \"level-run\"");
    let blueprint = Blueprint::read(&text).unwrap();
    let problems = Draw::new(&bank, &blueprint, "e", secret(), &people(1), Used::new()).unwrap_err();
    assert_eq!(problems[0].line_column(&text).unwrap().0, 12);
    assert!(problems[0].to_string().contains("does not determine mount.level_run"), "{problems:?}");
}

#[test]
fn an_item_that_must_come_twice_is_said() {
    let bank = bank();
    let text = BLUEPRINT.replace("skill = \"soft-foot\"\ncount = 2", "skill = \"soft-foot\"\ncount = 5");
    let blueprint = Blueprint::read(&text).unwrap();
    let draw = Draw::new(&bank, &blueprint, "spring", secret(), &people(1), Used::new()).unwrap();
    assert!(draw.remarks()[0].contains("takes 5 from 3"), "{:?}", draw.remarks());
}

#[test]
fn a_row_that_asks_everybody_the_same_says_what_narrows_it() {
    let bank = bank();
    let narrow = |from: &str, to: &str| {
        let text = BLUEPRINT.replacen(from, to, 1);
        let blueprint = Blueprint::read(&text).unwrap();
        let mut draw = Draw::new(&bank, &blueprint, "spring", secret(), &people(1), Used::new()).unwrap();
        let said = |problem: &Problem| (problem.line_column(&text).unwrap().0, problem.to_string());
        draw.narrow().iter().map(said).collect::<Vec<_>>()
    };
    // Of an item that is named nothing is said.
    assert_eq!(narrow("x", "x"), []);
    let said = narrow("skill = \"level\"\ncount = 1", "skill = \"level\"\ncount = 1\nweight = 1");
    assert_eq!(said.len(), 1, "{said:?}");
    assert!(said[0].0 == 12 && said[0].1.contains("Only 1 item fits the row of skill \"level\""), "{said:?}");
    assert!(said[0].1.contains("Without `weight` there would be 2."), "{said:?}");
    let said = narrow("skill = \"soft-foot\"\ncount = 2", "skill = \"soft-foot\"\ncount = 3");
    assert!(said.len() == 1 && said[0].1.contains("Only 3 items fit") && said[0].1.contains("has no more"), "{said:?}");
}

#[test]
fn a_changed_bank_never_grades_an_old_paper() {
    let (bank, blueprint) = (bank(), Blueprint::read(BLUEPRINT).unwrap());
    let (exam, papers) = draw(&bank, &blueprint, 12, 1);
    let settings = exam.settings(&bank);
    for (record, paper) in exam.papers.iter().zip(&papers) {
        assert_eq!(exam.paper(record, &settings).unwrap().digest(), paper.digest());
    }
    let changed = |item: &str, family: &str| {
        let plan = |id: &str, text: &str| Plan::new(Family::read(id, text).unwrap()).unwrap();
        Bank::new(read_items(item).unwrap(), vec![plan("bench", family), plan("second", family)]).unwrap()
    };
    for (bank, what) in [
        (changed(&items(), &FAMILY.replace("\"900 mm\"", "\"950 mm\"")), "not the paper that was printed"),
        (changed(&items().replace("What is the twist?", "How large is the twist?"), FAMILY), "not the paper"),
        (changed(&items().replace("id = \"angled\"", "id = \"angular\""), FAMILY), "is gone"),
    ] {
        let settings = exam.settings(&bank);
        let said: Vec<String> = exam
            .papers
            .iter()
            .filter_map(|record| exam.paper(record, &settings).err())
            .map(|m| m.to_string())
            .collect();
        assert!(!said.is_empty() && said.iter().any(|said| said.contains(what)), "{what}: {said:?}");
    }
}

#[test]
fn damaged_records_are_refused() {
    let (bank, blueprint) = (bank(), Blueprint::read(BLUEPRINT).unwrap());
    let text = draw(&bank, &blueprint, 2, 1).0.write();
    let code = |text: &str| text.split("\"code\":\"").nth(1).unwrap()[..11].to_owned();
    let second = text.split("\"code\":\"").nth(2).unwrap()[..11].to_owned();
    for (text, what) in [
        (text.replace("\"format\": 1", "\"format\": 9"), "format 9"),
        (text[..text.len() / 2].to_owned(), "no sound exam record"),
        (text.replace(&second, &code(&text)), "stands twice"),
        (text.replacen("\"seed\":\"", "\"seed\":\"g", 1), "hexadecimal"),
        (text.replacen(&code(&text)[..2], "00", 1), "no sound"),
        (String::new(), "no sound"),
    ] {
        let problem = Exam::read(&text).unwrap_err();
        assert!(problem.to_string().contains(what), "{what}: {problem}");
    }
}
