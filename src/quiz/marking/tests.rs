//! What near misses, figures, units and shown methods earn, by hand.

use super::*;
use crate::explain::part_letter;
use crate::mark::{Verdict, mark, mark_by};
use crate::paper::tests::bank;
use crate::predict::Cause;
use crate::question::Question;
use crate::setting::Setting;

/// A question of `item` with its parts worth `weight` together.
fn question(bank: &crate::Bank, item: &str, weight: u32) -> Question {
    let setting = Setting::new(bank.item(item).unwrap(), &bank.plans[0], System::Si).unwrap();
    let mut question = setting.question(11).unwrap();
    question.weigh(weight);
    question
}

fn written(question: &Question, part: usize, base: f64, figures: u8) -> String {
    let asked = question.parts[part].asked().unwrap().get();
    let unit = asked.unit(question.system);
    amount::with_unit(&amount::number(unit.from_base(base), Figures::Significant(figures)), unit)
}

fn marks(question: &Question, marking: &Marking, answer: &str, steps: &str) -> (Verdict, u32, String) {
    let mark = mark_by(question, &[Written { answer, steps }], marking).swap_remove(0);
    (mark.verdict, mark.earned, mark.says)
}

const PARTIAL: Marking =
    Marking { partial: Some(Partial { within: 2.0, earns: 0.5 }), figures: None, unit_may_miss: false, method: None };

#[test]
fn near_misses_earn_their_share_and_known_mistakes_nothing() {
    let bank = bank();
    let question = question(&bank, "angled", 10);
    let of = question.parts[0].marks;
    assert_eq!(of, 5);
    let key = question.parts[0].key().unwrap();
    for (off, verdict, earned) in [
        (0.0, Verdict::Right, 5),
        (0.99, Verdict::Right, 5),
        (1.01, Verdict::Partial, 2),
        (-1.99, Verdict::Partial, 2),
        (2.01, Verdict::Wrong, 0),
    ] {
        let answer = written(&question, 0, key.value + off * key.tolerance, 12);
        let found = marks(&question, &PARTIAL, &answer, "");
        assert_eq!((found.0, found.1), (verdict, earned), "{off}: {}", found.2);
        let plain = mark(&question, &[&answer]).swap_remove(0);
        assert_eq!(
            plain.earned,
            if verdict == Verdict::Right { 5 } else { 0 },
            "without the rule it is right or wrong"
        );
    }
    let crate::Body::Quantity { predicted, .. } = &question.parts[0].body else { panic!("a quantity is asked") };
    for wrong in predicted {
        let wide = Marking { partial: Some(Partial { within: 10.0, earns: 1.0 }), ..PARTIAL };
        let answer = written(&question, 0, wrong.value, 12);
        assert_eq!(marks(&question, &wide, &answer, "").1, 0, "{:?}", wrong.cause);
    }
    // One mark has no half.
    let small = Question { parts: vec![crate::Part { marks: 1, ..question.parts[0].clone() }], ..question.clone() };
    assert_eq!(marks(&small, &PARTIAL, &written(&small, 0, key.value + 1.5 * key.tolerance, 12), "").1, 0);
}

#[test]
fn what_is_right_and_rounded_to_two_figures_is_accused_of_nothing() {
    let bank = bank();
    let mut question = question(&bank, "angled", 10);
    let value = question.parts[0].key().unwrap().value;
    let accused = |question: &Question, figures: u8| {
        let answer = written(question, 0, value, figures);
        let answer = if figures == 2 { answer } else { written(question, 0, value * 1.02, figures) };
        let mark = mark(question, &[&answer]).swap_remove(0);
        (mark.verdict, !mark.causes.is_empty())
    };
    // A wrong turn that ends where rounding to two figures does, and so wide that it takes in two per cent more besides.
    let crate::Body::Quantity { predicted, .. } = &mut question.parts[0].body else { panic!("a quantity is asked") };
    let mut turn = predicted[0].clone();
    (turn.value, turn.tolerance) = (value, 0.05 * value.abs());
    *predicted = vec![turn];
    let coarse: f64 = written(&question, 0, value, 2).split('\u{a0}').next().unwrap().parse().unwrap();
    let unit = question.parts[0].asked().unwrap().get().unit(System::Si);
    assert!(
        (unit.to_base(coarse) - value).abs() > question.parts[0].key().unwrap().tolerance,
        "the machine of the test must not be right in two figures: {coarse}"
    );
    assert_eq!(accused(&question, 2), (Verdict::Wrong, false), "rounded");
    assert_eq!(accused(&question, 4), (Verdict::Wrong, true), "a wrong turn, given exactly");
}

#[test]
fn figures_cost_a_mark_but_never_the_last() {
    let rule = Marking { figures: Some(Quoted { least: 3, most: 5, costs: 2 }), ..Marking::default() };
    let force = drivecourse_machine::Registry::get().find("load.overhung").unwrap();
    let read = |text: &str| amount::read(text, &Wanted::new(Kind::Force)).unwrap();
    for (text, earned) in [
        ("1230 N", 4),
        ("1230.4 N", 4),
        // Closing noughts count or not, in the answer's favour.
        ("1200 N", 4),
        ("1230000 N", 4),
        ("1200.00 N", 2),
        ("12 N", 2),
        ("1234567 N", 2),
        ("1.23 kN", 4),
        ("1.2 kN", 2),
    ] {
        assert_eq!(rule.quoted(force, &read(text), System::Si, 4), earned, "{text}");
    }
    assert_eq!(rule.quoted(force, &read("12 N"), System::Si, 1), 1);
    assert_eq!(rule.quoted(force, &read("12 N"), System::Si, 0), 0);
    assert_eq!(rule.for_safety().quoted(force, &read("12 N"), System::Si, 4), 4);
    // What an instrument shows in fixed steps is exempt.
    let gap = drivecourse_machine::Registry::get().find("mount.gap").unwrap();
    let read = amount::read("0.5 mm", &Wanted::new(Kind::Length)).unwrap();
    assert!(!matches!(gap.get().display(System::Si).figures, Figures::Significant(_)));
    assert_eq!(rule.quoted(gap, &read, System::Si, 4), 4);
}

#[test]
fn a_number_alone_is_read_in_the_printed_unit_where_that_is_allowed() {
    let bank = bank();
    let question = question(&bank, "angled", 4);
    let part = &question.parts[0];
    let number = amount::number(
        part.asked().unwrap().get().unit(System::Si).from_base(part.key().unwrap().value),
        Figures::Significant(6),
    );
    assert_eq!(marks(&question, &Marking::default(), &number, "").0, Verdict::Unreadable);
    let may = Marking { unit_may_miss: true, ..Marking::default() };
    assert_eq!(marks(&question, &may, &number, "").0, Verdict::Right);
}

#[test]
fn results_on_the_way_earn_their_share_when_the_answer_is_wrong() {
    let bank = bank();
    let rule = Marking { method: Some(0.5), ..Marking::default() };
    let mut tried = 0;
    for item in &bank.items {
        let setting = Setting::new(item, &bank.plans[0], System::Si);
        let Ok(mut question) = setting.and_then(|setting| setting.question(5)) else { continue };
        question.parts.iter_mut().for_each(|part| part.marks = 8);
        for (place, part) in question.parts.iter().enumerate() {
            let Some(key) = part.key().filter(|key| key.path.steps.len() > 1) else { continue };
            let alone = Question { parts: vec![part.clone()], ..question.clone() };
            let on_the_way: Vec<String> = key.path.steps[..key.path.steps.len() - 1]
                .iter()
                .map(|step| {
                    let gives = step.get().gives;
                    format!("x = {}", amount::write(gives.get(), key.values[gives.index()], System::Si))
                })
                .collect();
            let wrong = if key.path.asked.get().kind == Kind::Choice {
                continue;
            } else {
                written(&alone, 0, key.value * 7.3, 4)
            };
            let all = marks(&alone, &rule, &wrong, &on_the_way.join("; "));
            assert_eq!((all.0, all.1), (Verdict::Partial, 4), "{} ({}): {}", item.id, part_letter(place), all.2);
            assert_eq!(marks(&alone, &Marking::default(), &wrong, &on_the_way.join("; ")).1, 0);
            assert_eq!(marks(&alone, &rule, &wrong, "").1, 0);
            assert_eq!(marks(&alone, &rule, &wrong, "0 mm; rubbish; =; 12").1, 0);
            let none = marks(&alone, &rule, "", &on_the_way.join("; "));
            assert_eq!((none.0, none.1), (Verdict::Blank, 0), "without an answer there is nothing to mark");
            tried += 1;
        }
    }
    assert!(tried > 0, "some part takes more than one step");
}

#[test]
fn a_weight_is_shared_out_whole() {
    let bank = bank();
    for weight in 3..40 {
        let question = question(&bank, "twist-gap", weight);
        assert_eq!(question.marks(), weight);
        assert!(question.parts.iter().all(|part| part.marks > 0));
        assert!(question.parts[0].marks >= question.parts[1].marks, "the larger part keeps more");
    }
    let marks = |weight| question(&bank, "twist-gap", weight).parts.iter().map(|part| part.marks).collect::<Vec<_>>();
    // 2, 1, 1 by hand: 8 leaves 5 to share as 2.5, 1.25, 1.25.
    assert_eq!((marks(4), marks(8)), (vec![2, 1, 1], vec![4, 2, 2]));
}

#[test]
fn the_policy_says_what_the_rules_are_and_no_more() {
    let full = Marking {
        partial: Some(Partial { within: 2.0, earns: 0.5 }),
        figures: Some(Quoted { least: 2, most: 5, costs: 1 }),
        unit_may_miss: true,
        method: Some(0.4),
    };
    let says = full.policy(true, false).join("\n");
    for part in
        ["2 times as far off earns 50 %", "2 to 5 significant figures", "without a unit", "up to 40 %", "safety"]
    {
        assert!(says.contains(part), "{part}: {says}");
    }
    let plain = Marking::default().policy(false, false).join("\n");
    for part in ["times as far", "significant", "without a unit", "steps", "safety"] {
        assert!(!plain.contains(part), "{part}: {plain}");
    }
    // Of three figures nothing is said where a part asks for more, or the rule does.
    let three = |marking: Marking, more| marking.policy(false, more).join("\n").contains("Three figures are enough");
    assert!(three(Marking::default(), false) && three(full, false));
    let rule = Marking { figures: Some(Quoted { least: 4, most: 5, costs: 1 }), ..Marking::default() };
    assert!(!three(Marking::default(), true) && !three(rule, false));
}

/// A wrong turn of the author's own that is one of the registry in other words is told alone: on the key, to a number, to one
/// carried on from the person's own, and to a choice.
#[test]
fn what_the_author_says_is_not_said_again_in_other_words() {
    let own = "wrong = [{ at = \"mount.gap\", gives = \"mount.gap * 2\", says = \"Both feet.\" }]";
    let carried = "ask = \"mount.gap\"\nfrom = [\"mount.twist\"]";
    let text = crate::paper::tests::items().replace(carried, &format!("{carried}\n{own}"));
    let verdict = "ask = \"mount.gap_verdict\"\nfrom = [\"mount.twist\", \"mount.gap_limit\"]";
    let item = format!(
        "[[item]]\nid = \"judged\"\ntopic = \"mount\"\nskill = \"soft-foot\"\ntitle = \"x\"\ntext = \"x\"\n[[item.part]]\n\
         text = \"What about it?\"\n{verdict}\n{own}\n"
    );
    let items = crate::item::read_items(&format!("{text}\n{item}")).unwrap();
    let bank = crate::Bank::new(items, bank().plans).unwrap();
    let is_turn = |cause: &Cause| crate::explain::sentence(cause).starts_with("You added the gaps of both feet");
    for system in System::ALL {
        for seed in 0..40 {
            let setting = Setting::new(bank.item("twist-gap").unwrap(), &bank.plans[0], system).unwrap();
            let question = setting.question(seed).unwrap();
            let crate::Body::Quantity { predicted, .. } = &question.parts[1].body else {
                panic!("a quantity is asked")
            };
            let told: Vec<_> = predicted.iter().filter(|wrong| wrong.is_own() || is_turn(&wrong.cause)).collect();
            assert!(told.len() == 1 && told[0].is_own(), "{told:?}");
            let twice = written(&question, 1, told[0].value, 12);
            let says = mark(&question, &["", &twice]).swap_remove(1).says;
            assert_eq!(says, "Both feet.");
            // From a twist of the person's own.
            let (twist, gap) = (question.parts[0].key().unwrap(), question.parts[1].key().unwrap());
            let first = written(&question, 0, twist.value * 1.5, 12);
            let then = written(&question, 1, gap.value * 3.0, 12);
            let says = mark(&question, &[&first, &then]).swap_remove(1).says;
            assert!(says.starts_with("Both feet.") && !says.contains("added the gaps"), "{says}");

            let setting = Setting::new(bank.item("judged").unwrap(), &bank.plans[0], system).unwrap();
            let crate::Body::Quantity { predicted, .. } = &setting.question(seed).unwrap().parts[0].body else {
                panic!("a quantity is asked")
            };
            assert!(!predicted.iter().any(|wrong| is_turn(&wrong.cause)), "{predicted:?}");
        }
    }
}
