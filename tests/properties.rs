//! What must hold for every machine of every family, and for every question about it.
//!
//! `DRIVECOURSE_SEEDS` sets how many seeds a family is tried with (10 000 by default in a release
//! build, fewer in a debug build, where the arithmetic is many times slower).

#![allow(clippy::unwrap_used, reason = "a test stops where it goes wrong")]

mod built_in;
#[path = "properties/fineness.rs"]
mod fineness;
#[path = "properties/habits.rs"]
mod habits;
#[path = "properties/judgements.rs"]
mod judgements;
#[path = "properties/own_values.rs"]
mod own_values;
#[path = "properties/pairs.rs"]
mod pairs;
#[path = "properties/verdicts.rs"]
mod verdicts;

use std::collections::BTreeMap;
use std::sync::atomic::{AtomicUsize, Ordering};

use built_in::{bank, bank_with};
use drivecourse_machine::{Case, Kind, Known, Plan, QuantityId, Registry, Role, System, Working, amount, working};
use drivecourse_quiz::explain::cause_name;
use drivecourse_quiz::simulate::written;
use drivecourse_quiz::{
    Ask, Bank, Body, Call, Cause, Finding, Item, Judge, Predicted, Question, Setting, Verdict, mark,
};

fn seeds() -> u64 {
    let usual = if cfg!(debug_assertions) { 300 } else { 10_000 };
    std::env::var("DRIVECOURSE_SEEDS").ok().and_then(|text| text.parse().ok()).unwrap_or(usual)
}

/// Runs `check` for every family in a thread of its own.
fn for_every_family(check: impl Fn(&Bank, &Plan) + Sync) {
    let bank = bank();
    std::thread::scope(|scope| {
        for plan in &bank.plans {
            scope.spawn(|| check(&bank, plan));
        }
    });
}

fn find(name: &str) -> QuantityId {
    Registry::get().find(name).unwrap()
}

#[test]
fn every_reading_follows_from_the_hidden_machine() {
    for_every_family(|_, plan| {
        let registry = Registry::get();
        for seed in 0..seeds() {
            let case = plan.draw(seed).unwrap();
            for system in System::ALL {
                let seen = case.seen(system);
                for id in registry.quantities() {
                    let (seen, value) = (seen[id.index()], case.values[id.index()]);
                    if value.is_nan() || id.get().known == Known::Worked {
                        assert!(seen.is_nan(), "{}: {} is shown", plan.family.id, id.get().id);
                        continue;
                    }
                    let step = match id.get().known {
                        Known::Read(_) => registry.seeing(system)[id.index()].half_step(),
                        // A plate's figures are within half of its last one.
                        _ if id.get().kind == Kind::Choice => 0.0,
                        _ => {
                            let unit = id.get().unit(system);
                            0.5 * id.get().display(system).figures.step(unit.from_base(value)) * unit.size().abs()
                        }
                    };
                    let off = (seen - value).abs();
                    assert!(
                        off <= step * (1.0 + 1e-6) + 1e-12 * value.abs(),
                        "{} seed {seed}: {} is off by {off}",
                        plan.family.id,
                        id.get().id
                    );
                }
            }
            // Every relation that makes cases gives again, to the last bit, what the case holds.
            for linked in registry.relations().iter().filter(|linked| linked.relation.role != Role::Question) {
                let pooled = plan.family.pool.first().into_iter().flatten().map(|(id, _)| id);
                let drawn = plan.family.roots.iter().map(|(id, _)| id).chain(pooled).any(|id| *id == linked.gives);
                let ready = linked.inputs().all(|input| !case.values[input.index()].is_nan());
                if ready && !drawn && registry.giving(linked.gives).first() == Some(&linked.id) {
                    let again = linked.eval(&case.values).unwrap();
                    assert_eq!(again.to_bits(), case.values[linked.gives.index()].to_bits(), "{}", linked.relation.id);
                }
            }
        }
    });
}

#[test]
fn forces_and_moments_balance() {
    for_every_family(|_, plan| {
        let (total, near, far) = (find("load.total"), find("load.reaction_near"), find("load.reaction_far"));
        let (span, overhang) = (find("load.bearing_span"), find("load.sprocket_distance"));
        for seed in 0..seeds() {
            let case = plan.draw(seed).unwrap();
            let v = |id: QuantityId| case.values[id.index()];
            approx::assert_relative_eq!(v(near), v(total) + v(far), max_relative = 1e-12);
            approx::assert_relative_eq!(v(far) * v(span), v(total) * v(overhang), max_relative = 1e-12);
        }
    });
}

#[test]
fn formulas_as_shown_say_what_the_calculation_does() {
    for_every_family(|_, plan| {
        for seed in 0..seeds() / 20 {
            let case = plan.draw(seed).unwrap();
            for linked in Registry::get().relations() {
                if linked.inputs().any(|input| case.values[input.index()].is_nan()) {
                    continue;
                }
                let Ok(value) = linked.eval(&case.values) else { continue };
                let mut values = case.values.clone();
                values[linked.gives.index()] = value;
                for system in System::ALL {
                    if let Some(shown) = working::formula_value(linked, &values, system) {
                        // Printed constants such as 9 549 and 63 025 are rounded to four or five figures.
                        let off = (shown - value).abs() / value.abs().max(1e-9);
                        assert!(
                            off < 1e-3,
                            "{} in {system:?}, seed {seed}: shown {shown}, worked {value}",
                            linked.relation.id
                        );
                    }
                }
            }
        }
    });
}

#[test]
fn the_same_seed_gives_the_same_machine_and_another_seed_another() {
    for_every_family(|_, plan| {
        let mut seen = std::collections::BTreeSet::new();
        for seed in 0..seeds() / 10 {
            let (one, two) = (plan.draw(seed).unwrap(), plan.draw(seed).unwrap());
            let bits = |case: &Case| case.values.iter().map(|value| value.to_bits()).collect::<Vec<_>>();
            assert_eq!(bits(&one), bits(&two));
            assert_eq!(one.faults, two.faults);
            assert!(seen.insert(bits(&one)), "seed {seed} repeats a machine");
        }
    });
}

/// Seeds are shared out over all items that the family settles, in both systems of units.
fn for_every_question(check: impl Fn(&Setting, &Question) + Sync) {
    for_every_family(|bank, plan| {
        let settings: Vec<_> = System::ALL
            .into_iter()
            .flat_map(|system| bank.settings(system, |_, other| other.family.id == plan.family.id))
            .collect();
        assert!(settings.len() >= 60, "{} has only {} settings", plan.family.id, settings.len());
        for seed in 0..seeds() {
            let setting = &settings[seed as usize % settings.len()];
            let question = setting
                .question(seed)
                .unwrap_or_else(|error| panic!("{} on {}: {error:?}", setting.item.id, plan.family.id));
            check(setting, &question);
        }
    });
}

fn key_answers(question: &Question) -> Vec<String> {
    (question.parts.iter())
        .map(|part| match &part.body {
            Body::Quantity { asked, keys, .. } => written(*asked, keys[0].value, question.system, false),
            _ => part.right_answer(question.system).split(':').next().unwrap_or_default().to_owned(),
        })
        .collect()
}

#[test]
fn the_key_earns_full_marks_and_the_working_ends_in_it() {
    for_every_question(|setting, question| {
        let answers = key_answers(question);
        let texts: Vec<&str> = answers.iter().map(String::as_str).collect();
        for (index, mark) in mark(question, &texts).iter().enumerate() {
            assert_eq!(
                mark.verdict,
                Verdict::Right,
                "{} ({}) seed {}: {:?} {mark:?}",
                setting.item.id,
                question.family,
                question.seed,
                answers[index]
            );
            assert_eq!(mark.earned, mark.of);
        }
        for part in &question.parts {
            if let Body::Quantity { asked, keys, .. } = &part.body {
                for key in keys {
                    let Some(last) = Working::write(&key.path, &key.values, question.system).lines.pop() else {
                        continue;
                    };
                    let right = amount::write(asked.get(), key.value, question.system);
                    assert!(
                        last.result.ends_with(&right),
                        "{}: {} does not end in {right}",
                        setting.item.id,
                        last.result
                    );
                }
            }
        }
    });
}

#[test]
fn no_wrong_turn_earns_the_mark_and_each_is_named() {
    let (tried, carried) = (AtomicUsize::new(0), AtomicUsize::new(0));
    for_every_question(|setting, question| {
        for (index, part) in question.parts.iter().enumerate() {
            let Body::Quantity { asked, keys, predicted } = &part.body else { continue };
            for wrong in predicted {
                let choice = asked.get().kind == Kind::Choice;
                assert!(
                    choice || !wrong.is_inside(keys),
                    "{} ({}) seed {}: {} gives {} against {} ± {}",
                    setting.item.id,
                    question.family,
                    question.seed,
                    cause_name(&wrong.cause),
                    wrong.value,
                    keys[0].value,
                    keys[0].tolerance
                );
                if choice && wrong.value == keys[0].value {
                    continue;
                }
                let mut answers = key_answers(question);
                answers[index] = written(*asked, wrong.value, question.system, false);
                let texts: Vec<&str> = answers.iter().map(String::as_str).collect();
                let mark = &mark(question, &texts)[index];
                if choice && amount::choice(asked.get(), wrong.value).is_none() {
                    continue;
                }
                tried.fetch_add(1, Ordering::Relaxed);
                // On the edge of a verdict what the earlier parts were rounded to may lie on the other side, and whoever
                // goes on from there is not charged for it.
                if choice && mark.verdict == Verdict::Carried {
                    carried.fetch_add(1, Ordering::Relaxed);
                    continue;
                }
                assert_eq!(mark.verdict, Verdict::Wrong, "{} {:?}: {mark:?}", setting.item.id, answers[index]);
                // Another wrong turn with the same answer may be named first; this one is named too
                // unless its answer, rounded to four figures, lies nearer to another's.
                let named = mark.causes.contains(&wrong.cause);
                let read = amount::read(&answers[index], &amount::Wanted::new(asked.get().kind));
                let off = |other: &Predicted| read.as_ref().map_or(f64::MAX, |read| (other.value - read.base).abs());
                let rival = predicted
                    .iter()
                    .any(|other| other.cause != wrong.cause && (other.is_like(wrong) || off(other) < off(wrong)));
                assert!(
                    named || rival,
                    "{} ({}) seed {}: {:?} is not named {}: {mark:?}",
                    setting.item.id,
                    question.family,
                    question.seed,
                    answers[index],
                    cause_name(&wrong.cause)
                );
            }
        }
    });
    let (tried, carried) = (tried.into_inner(), carried.into_inner());
    assert!(carried * 1000 < tried, "{carried} of {tried} wrong turns lay on an edge");
}

#[test]
fn the_same_question_seed_gives_the_same_question() {
    for_every_family(|bank, plan| {
        let settings = bank.settings(System::Us, |_, other| other.family.id == plan.family.id);
        for (index, setting) in settings.iter().enumerate() {
            let seed = index as u64;
            let (one, two) = (setting.question(seed).unwrap(), setting.question(seed).unwrap());
            assert_eq!(format!("{one:?}"), format!("{two:?}"));
        }
    });
}
