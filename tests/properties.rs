//! What must hold for every machine of every family, and for every question about it.
//!
//! `DRIVECOURSE_SEEDS` sets how many seeds a family is tried with (10 000 by default in a release
//! build, fewer in a debug build, where the arithmetic is many times slower).

#![allow(clippy::unwrap_used, reason = "a test stops where it goes wrong")]

use std::collections::BTreeMap;
use std::path::Path;

use drivecourse_machine::{Case, Kind, Known, Plan, QuantityId, Registry, Role, System, Working, amount, working};
use drivecourse_quiz::explain::cause_name;
use drivecourse_quiz::simulate::written;
use drivecourse_quiz::{Ask, Bank, Body, Call, Finding, Item, Judge, Question, Setting, Verdict, mark};

fn seeds() -> u64 {
    let usual = if cfg!(debug_assertions) { 300 } else { 10_000 };
    std::env::var("DRIVECOURSE_SEEDS").ok().and_then(|text| text.parse().ok()).unwrap_or(usual)
}

fn bank() -> Bank {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios");
    let mut files = BTreeMap::new();
    for folder in ["families", "items"] {
        for entry in std::fs::read_dir(root.join(folder)).unwrap() {
            let path = entry.unwrap().path();
            let name = format!("{folder}/{}", path.file_name().unwrap().to_string_lossy());
            files.insert(name, std::fs::read(&path).unwrap());
        }
    }
    let (bank, problems) = Bank::read(files.iter().map(|(path, bytes)| (path.as_str(), bytes.as_slice())));
    assert!(problems.is_empty(), "{}", problems.iter().map(|p| p.report.as_str()).collect::<Vec<_>>().join("\n"));
    assert!(bank.plans.len() >= 3 && bank.items.len() >= 40, "the scenarios are all there");
    bank
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
                let drawn = plan.family.roots.iter().any(|(id, _)| *id == linked.gives);
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

/// Every verdict on alignment, bolts, keys and bushings, with the word for nothing to do.
const VERDICTS: [(&str, &str); 12] = [
    ("align.sprocket_verdict", "within the limits"),
    ("align.verdict_v", "within the limits"),
    ("align.verdict_h", "within the limits"),
    ("align.way_front_v", "leave them"),
    ("align.way_rear_v", "leave them"),
    ("align.way_front_h", "leave them"),
    ("align.way_rear_h", "leave them"),
    ("fasten.bolt_verdict", "within the limits"),
    ("fasten.base_verdict", "tight enough"),
    ("fasten.screw_verdict", "tight enough"),
    ("fasten.key_verdict", "long enough"),
    ("fasten.key_fit", "it fits"),
];

/// Each fault of the two topics, with a verdict that it turns.
const TURNS: [(&str, &str); 11] = [
    ("sprocket-offset", "align.sprocket_verdict"),
    ("sprocket-twisted", "align.sprocket_verdict"),
    ("shafts-not-parallel", "align.sprocket_verdict"),
    ("motor-offset", "align.verdict_v"),
    ("motor-angled", "align.verdict_h"),
    ("motor-out-of-line", "align.verdict_v"),
    ("loose-base-bolts", "fasten.base_verdict"),
    ("dry-torque", "fasten.bolt_verdict"),
    ("loose-bushing", "fasten.gap_verdict"),
    ("short-key", "fasten.key_verdict"),
    ("wrong-key", "fasten.key_fit"),
];

#[test]
fn a_healthy_machine_is_left_alone_and_a_faulty_one_is_not() {
    for_every_family(|_, plan| {
        let good =
            |name: &str| VERDICTS.iter().find(|(other, _)| *other == name).map_or("the taper grips", |(_, good)| good);
        let verdict = |case: &Case, name: &str| {
            let id = find(name);
            amount::choice(id.get(), case.values[id.index()]).unwrap().to_owned()
        };
        for seed in 0..seeds() / 20 {
            let healthy = plan.draw_with(seed, Some(&[])).unwrap();
            for (name, good) in VERDICTS {
                assert_eq!(verdict(&healthy, name), good, "{} seed {seed}: {name}", plan.family.id);
            }
            for (fault, name) in TURNS {
                let place = plan.family.faults.iter().position(|other| other.id == fault).unwrap();
                let faulty = plan.draw_with(seed, Some(&[place])).unwrap();
                assert_ne!(verdict(&faulty, name), good(name), "{} seed {seed}: {fault}", plan.family.id);
            }
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

/// Verdicts on supply, start and vibration: the worst that a machine with nothing wrong may get.
const AT_WORST: [(&str, &str); 9] = [
    ("start.unbalance_verdict", "within the limit"),
    ("start.voltage_verdict", "within 10 %"),
    ("start.current_verdict", "within the plate"),
    ("start.rotation_verdict", "right way round"),
    ("start.ready_verdict", "may be started"),
    ("vibrate.zone", "B"),
    ("vibrate.change_verdict", "not significant"),
    ("vibrate.alarm_verdict", "below the alarm"),
    ("vibrate.control_verdict", "in control"),
];

/// Faults, and a verdict of [`AT_WORST`] that each of them makes worse; or none, for what only looks like a fault.
const SHOWN_BY: [(&str, Option<&str>); 10] = [
    ("run-in-peak", None),
    ("overload", Some("start.current_verdict")),
    ("low-oil", Some("start.ready_verdict")),
    ("weak-phase", Some("start.unbalance_verdict")),
    ("low-voltage", Some("start.voltage_verdict")),
    ("wrong-rotation", Some("start.rotation_verdict")),
    ("missing-guard", Some("start.ready_verdict")),
    ("worn-bearing", Some("vibrate.change_verdict")),
    ("damaged-teeth", Some("vibrate.change_verdict")),
    ("loose-base-bolts", Some("vibrate.alarm_verdict")),
];

fn is_worse(case: &Case, quantity: &str, worst: &str) -> bool {
    let id = find(quantity);
    let place = id.get().choices.iter().position(|choice| *choice == worst).unwrap();
    case.values[id.index()] > place as f64
}

#[test]
fn a_sound_drive_passes_every_verdict_and_each_fault_fails_one() {
    for_every_family(|_, plan| {
        for seed in 0..seeds() / 20 {
            let sound = plan.draw_with(seed, Some(&[])).unwrap();
            for (quantity, worst) in AT_WORST {
                assert!(!is_worse(&sound, quantity, worst), "{} seed {seed}: {quantity}", plan.family.id);
            }
            for (fault, shown) in SHOWN_BY {
                let place = plan.family.faults.iter().position(|other| other.id == fault).unwrap();
                let case = plan.draw_with(seed, Some(&[place])).unwrap();
                let mut worse = AT_WORST.iter().filter(|(quantity, worst)| is_worse(&case, quantity, worst));
                match shown {
                    Some(shown) => assert!(worse.any(|(quantity, _)| *quantity == shown), "{fault} seed {seed}"),
                    None => assert!(worse.next().is_none(), "{fault} seed {seed} fails a verdict"),
                }
            }
        }
    });
}

#[test]
fn any_two_faults_that_may_come_together_can() {
    for_every_family(|_, plan| {
        let faults = &plan.family.faults;
        for (one, first) in faults.iter().enumerate() {
            for (two, second) in faults.iter().enumerate().skip(one + 1) {
                if first.clashes(second) {
                    continue;
                }
                for seed in 0..5 {
                    let drawn = plan.draw_with(seed, Some(&[one, two]));
                    let why = || format!("{}: {} with {}", plan.family.id, first.id, second.id);
                    assert!(drawn.is_ok(), "{}: {}", why(), drawn.unwrap_err());
                }
            }
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
                assert_eq!(mark.verdict, Verdict::Wrong, "{} {:?}: {mark:?}", setting.item.id, answers[index]);
                // Another wrong turn with the same answer may be named first; this one is named too
                // unless its answer, rounded to four figures, lies nearer to another's.
                let named = mark.causes.contains(&wrong.cause);
                let rival = predicted.iter().any(|other| other.cause != wrong.cause && other.is_like(wrong));
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

/// What the items on decisions look for.
fn findings(item: &Item) -> impl Iterator<Item = &Finding> {
    item.parts.iter().flat_map(|part| match &part.ask {
        Ask::Judge(Judge::Decide { findings, .. }) => &findings[..],
        _ => &[],
    })
}

/// Settings of the items that ask for a judgement of this kind.
fn judging<'b>(bank: &'b Bank, plan: &Plan, kind: fn(&Judge) -> bool) -> Vec<Setting<'b>> {
    let asks = |item: &Item| item.parts.iter().any(|part| matches!(&part.ask, Ask::Judge(judge) if kind(judge)));
    let both = System::ALL.into_iter();
    let settings: Vec<_> = both
        .flat_map(|system| bank.settings(system, |item, other| asks(item) && other.family.id == plan.family.id))
        .collect();
    assert!(settings.len() >= 6, "{} has only {}", plan.family.id, settings.len());
    settings
}

/// The statements of the first part, the right one's place, and what speaks against each.
fn statements(question: &Question) -> (&[String], usize, &[String]) {
    match &question.parts[0].body {
        Body::Pick { shown, right, against, .. } => {
            assert!(against.iter().enumerate().all(|(place, says)| says.is_empty() == (place == *right)));
            let different: std::collections::BTreeSet<&String> = shown.iter().collect();
            assert_eq!(different.len(), shown.len(), "{shown:?}");
            (shown, *right, against)
        }
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_sound_machine_is_never_called_faulty_and_one_that_must_stop_never_acceptable() {
    for_every_family(|bank, plan| {
        let all: Vec<&Finding> = bank.items.iter().flat_map(findings).collect();
        let holds = |case: &Case, finding: &Finding| case.values[finding.on.index()] == finding.when as f64;
        for seed in 0..seeds() {
            let sound = plan.draw_with(seed, Some(&[])).unwrap();
            for finding in &all {
                assert!(!holds(&sound, finding), "{} seed {seed}: {}", plan.family.id, finding.reason);
            }
        }
        let settings = judging(bank, plan, |judge| matches!(judge, Judge::Decide { .. }));
        let (mut stopped, mut places) = (0, [0; 3]);
        for seed in 0..seeds() {
            let setting = &settings[seed as usize % settings.len()];
            let question = setting.question(seed).unwrap();
            let (shown, right, _) = statements(&question);
            let call =
                findings(setting.item).filter(|finding| holds(&question.case, finding)).map(|finding| finding.call);
            let word = match call.max() {
                None => "Accept",
                Some(Call::Stop) => "Stop",
                Some(_) => "Adjust",
            };
            assert!(shown[right].starts_with(word), "{} seed {seed}: {}", setting.item.id, shown[right]);
            assert!(word == "Accept" || !question.case.faults.is_empty(), "a sound machine is called faulty");
            places[right] += 1;
            if word == "Stop" {
                stopped += 1;
                let accept = shown.iter().position(|option| option.starts_with("Accept")).unwrap();
                let letter = drivecourse_quiz::letter(accept).to_string();
                let mark = &mark(&question, &[&letter])[0];
                assert_eq!(cause_name(&mark.causes[0]), "stop called accept");
                assert_eq!(mark.earned, 0);
            }
        }
        assert!(stopped as u64 > seeds() / 20, "{stopped} of {} must stop", seeds());
        assert!(places.iter().all(|count| *count as u64 > seeds() / 5), "{places:?}: the order varies with the seed");
    });
}

#[test]
fn a_diagnosis_leaves_the_fault_that_is_there() {
    for_every_family(|bank, plan| {
        let settings = judging(bank, plan, |judge| matches!(judge, Judge::Diagnose { .. }));
        let mut places = [0; 5];
        for seed in 0..seeds() / 10 {
            let setting = &settings[seed as usize % settings.len()];
            let question = setting.question(seed).unwrap();
            let (shown, right, against) = statements(&question);
            let wanted = match question.case.faults[..] {
                [] => "nothing is wrong".to_owned(),
                [fault] => plan.family.faults[fault].name.to_lowercase(),
                _ => panic!("two faults"),
            };
            assert_eq!(shown[right].to_lowercase(), wanted, "{} seed {seed}", setting.item.id);
            assert!((3..=5).contains(&shown.len()) && shown.iter().any(|option| option == "Nothing is wrong"));
            assert!(against.iter().all(|says| says.is_empty() || says.contains("; here it")), "{against:?}");
            places[right] += 1;
        }
        assert!(places[..3].iter().all(|count| *count > 0), "{places:?}");
    });
}

#[test]
fn the_odd_one_out_is_the_number_that_was_changed() {
    for_every_family(|bank, plan| {
        let settings = judging(bank, plan, |judge| matches!(judge, Judge::Odd { .. }));
        for seed in 0..seeds() / 20 {
            let setting = &settings[seed as usize % settings.len()];
            let question = setting.question(seed).unwrap();
            let (shown, right, _) = statements(&question);
            let part = &question.parts[0];
            let changed: Vec<_> = part.givens.iter().filter(|(id, value)| question.shown(*id) != *value).collect();
            let [(id, value)] = changed[..] else { panic!("{} seed {seed}: {changed:?}", setting.item.id) };
            let written = amount::write(id.get(), *value, question.system);
            assert!(shown[right].to_lowercase().starts_with(&id.get().name.to_lowercase()), "{}", shown[right]);
            assert!(shown[right].ends_with(&written), "{} {written}", shown[right]);
        }
    });
}
