//! Judgements about a small family, and the proofs behind them.

use std::collections::BTreeSet;

use drivecourse_machine::{Family, Plan, QuantityId, Registry, System};

use super::*;
use crate::item::{Ask, Item, read_items};
use crate::mark::{Verdict, mark};
use crate::predict::Cause;
use crate::setting::Setting;

const FAMILY: &str = r#"
name = "judging bench"
[fixed]
"mount.gap_limit" = "0.05 mm"
"mount.level_limit" = "0.5 mm/m"
[draw]
"mount.along" = { between = ["400 mm", "900 mm"] }
"mount.across" = { between = ["300 mm", "600 mm"] }
"mount.weight_along" = { between = ["150 mm", "250 mm"] }
"mount.weight_across" = { between = ["100 mm", "200 mm"] }
"mount.height_1" = { between = ["-0.008 mm", "0.008 mm"] }
"mount.height_2" = { between = ["-0.008 mm", "0.008 mm"] }
"mount.height_3" = { between = ["-0.008 mm", "0.008 mm"] }
"mount.height_4" = { between = ["-0.008 mm", "0.008 mm"] }
"mount.level" = { between = ["-0.4 mm/m", "0.4 mm/m"] }
"mount.level_run" = { between = ["1.5 m", "4 m"] }
[faults]
healthy = 0.4
pairs = 0.2
[[fault]]
id = "soft-foot"
name = "soft foot"
[fault.draw]
"mount.height_1" = { choose = ["-0.6 mm", "-0.3 mm", "0.3 mm", "0.6 mm"] }
[[fault]]
id = "out-of-level"
name = "base out of level"
[fault.draw]
"mount.level" = { choose = ["-2 mm/m", "-0.8 mm/m", "0.9 mm/m", "1.5 mm/m"] }
[[fault]]
id = "long-run"
name = "level laid along too far"
[fault.draw]
"mount.level_run" = { between = ["3 m", "4 m"] }
"#;

const ITEMS: &str = r#"
[[item]]
id = "which"
topic = "mount"
skill = "diagnosis"
title = "Which?"
text = "The {machine} was checked."
[[item.part]]
text = "What explains the readings?"
diagnose = ["mount.rise_1", "mount.rise_2", "mount.rise_3", "mount.rise_4", "mount.level"]
also = ["mount.gap_limit", "mount.level_limit", "mount.along"]
weigh = ["mount.worst_rise"]
among = ["soft-foot", "out-of-level"]

[[item]]
id = "call"
topic = "mount"
skill = "decision"
title = "What now?"
text = "The {machine} was checked."
[[item.part]]
text = "Accept, adjust or stop?"
from = ["mount.rise_1", "mount.rise_2", "mount.rise_3", "mount.rise_4", "mount.gap_limit", "mount.level", "mount.level_limit"]
decide = [
    { on = "mount.gap_verdict", when = "shim or machine it", call = "adjust", reason = "a foot hangs clear" },
    { on = "mount.level_verdict", when = "level it again", call = "stop", reason = "the base is out of level" },
]
marks = 2
[[item.part]]
text = "Why?"
reason = true
"#;

fn plan() -> Plan {
    Plan::new(Family::read("bench", FAMILY).unwrap()).unwrap()
}

fn items() -> Vec<Item> {
    read_items(ITEMS).unwrap()
}

fn find(name: &str) -> QuantityId {
    Registry::get().find(name).unwrap()
}

fn pick(body: &Body) -> (&[String], usize, &[String], Option<usize>) {
    match body {
        Body::Pick { shown, right, against, grave, .. } => (shown, *right, against, *grave),
        other => panic!("{other:?}"),
    }
}

#[test]
fn the_fault_that_is_there_is_the_only_one_left() {
    let (plan, items) = (plan(), items());
    let settings = System::ALL.map(|system| Setting::new(&items[0], &plan, system).unwrap());
    let (mut orders, mut found) = (BTreeSet::new(), BTreeSet::new());
    for seed in 0..60 {
        let question = settings[0].question(seed).unwrap();
        let (shown, right, against, grave) = pick(&question.parts[0].body);
        let wanted = match question.case.faults[..] {
            [] => "Nothing is wrong",
            [0] => "Soft foot",
            [1] => "Base out of level",
            ref other => panic!("{other:?}"),
        };
        assert_eq!(shown[right], wanted, "seed {seed}");
        assert_eq!((shown.len(), grave), (3, None));
        assert!(against.iter().enumerate().all(|(place, says)| says.is_empty() == (place == right)));
        orders.insert(shown.to_vec());
        found.insert(wanted);
        // Both systems of units offer the same, in the same order.
        let other = settings[1].question(seed).unwrap();
        assert_eq!(pick(&other.parts[0].body).0, shown);
        for (place, says) in against.iter().enumerate().filter(|(_, says)| !says.is_empty()) {
            let letter = crate::letter(place).to_string();
            let mark = &mark(&question, &[&letter])[0];
            assert_eq!((mark.verdict, mark.earned), (Verdict::Wrong, 0));
            assert!(mark.says.contains(says.as_str()) && says.contains("here it "), "{}", mark.says);
        }
    }
    assert_eq!((orders.len(), found.len()), (6, 3));
}

#[test]
fn what_is_ruled_out_is_never_met_again() {
    let (plan, items) = (plan(), items());
    let Ask::Judge(judge) = &items[0].parts[0].ask else { panic!() };
    let Ready::Diagnose(ready) = ready(judge, &plan, 0).unwrap() else { panic!() };
    assert_eq!(ready.held, [find("mount.gap_limit"), find("mount.level_limit"), find("mount.along")]);
    let weighed: Vec<QuantityId> = judge.shown().take(5).chain([find("mount.worst_rise")]).collect();
    for seed in 0..40 {
        let case = plan.draw(seed).unwrap();
        for faults in [&[][..], &[0], &[1]] {
            let against = diagnose::against(&plan, &ready, &case, faults);
            // A machine speaks against none of its own faults.
            assert!(case.faults != faults || against.is_empty(), "seed {seed}: {against:?}");
            if against.is_empty() {
                continue;
            }
            for again in 0..300 {
                let other = plan.draw_like(&case, &ready.held, faults, &ready.needs, derive_other(again)).unwrap();
                assert_eq!(other.value(find("mount.along")), case.value(find("mount.along")));
                for (id, system) in
                    against.iter().flat_map(|against| System::ALL.map(|system| (weighed[against.evidence], system)))
                {
                    // The largest rise is the largest of four readings of a dial, and rounds as they do.
                    let seeing = Registry::get().seeing(system)
                        [if id.get().id == "mount.worst_rise" { find("mount.rise_1").index() } else { id.index() }];
                    let [here, there] = [&case, &other].map(|case| seeing.see(case.values[id.index()]));
                    assert_ne!(here, there, "seed {seed}, {faults:?}: {}", id.get().id);
                }
            }
        }
    }
}

/// Seeds other than those the judgement itself uses.
fn derive_other(number: u64) -> u64 {
    drivecourse_machine::chance::derive(0xfeed, number)
}

#[test]
fn a_fault_that_does_not_show_is_not_asked_about() {
    let plan = plan();
    let text = ITEMS
        .replace(r#"among = ["soft-foot", "out-of-level"]"#, "")
        .replace("skill = \"diagnosis\"", "skill = \"diagnosis\"\nfaults = [\"long-run\"]");
    let items = read_items(&text).unwrap();
    let refused = Setting::new(&items[0], &plan, System::Si).unwrap_err();
    assert_eq!(refused, Unsettled::NoMachine("the fault does not show in the readings".into()));
    let none = read_items(
        &text
            .replace("skill = \"diagnosis\"", "skill = \"diagnosis\"\n")
            .replace("also = [\"mount.gap_limit\"", "among = [\"nothing-like-it\"]\nalso = [\"mount.gap_limit\""),
    )
    .unwrap();
    assert_eq!(Setting::new(&none[0], &plan, System::Si).unwrap_err(), Unsettled::NoFault);
}

#[test]
fn the_gravest_finding_decides_and_stop_called_accept_is_dangerous() {
    let (plan, items) = (plan(), items());
    let setting = Setting::new(&items[1], &plan, System::Us).unwrap();
    let (mut calls, mut both) = (BTreeSet::new(), 0);
    for seed in 0..150 {
        let question = setting.question(seed).unwrap();
        let faults = &question.case.faults;
        let (call, why) = match (faults.contains(&0), faults.contains(&1)) {
            (_, true) => ("Stop", "The base is out of level"),
            (true, false) => ("Adjust", "A foot hangs clear"),
            (false, false) => ("Accept", "Every value shown keeps its limit"),
        };
        let (shown, right, against, grave) = pick(&question.parts[0].body);
        assert!(shown[right].starts_with(call), "seed {seed}: {} and not {call}", shown[right]);
        let accept = shown.iter().position(|option| option.starts_with("Accept")).unwrap();
        assert_eq!(grave, (call == "Stop").then_some(accept));
        assert!(against.iter().enumerate().all(|(place, says)| says.is_empty() == (place == right)));
        let (reasons, because, other, _) = pick(&question.parts[1].body);
        assert_eq!(reasons[because], why, "seed {seed}");
        if faults.contains(&0) && faults.contains(&1) {
            both += 1;
            let lesser = reasons.iter().position(|reason| reason == "A foot hangs clear").unwrap();
            assert!(other[lesser].starts_with("That is true, and it calls only for adjusting."), "{}", other[lesser]);
        }
        calls.insert(call);
        let letters = [accept, because].map(|place| crate::letter(place).to_string());
        let marks = mark(&question, &letters.each_ref().map(String::as_str));
        assert_eq!(marks[0].causes.contains(&Cause::StopAccepted), call == "Stop");
        assert_eq!(marks[0].earned, if call == "Accept" { 2 } else { 0 });
        assert_eq!(marks[1].verdict, Verdict::Right, "the reason is marked on its own");
    }
    assert_eq!(calls.len(), 3);
    assert!(both > 0, "two findings at once were met");
}

/// Hanging, pressed and total movement, in millimetres.
fn sheet(values: [f64; 3]) -> (odd::Sheet, Vec<(QuantityId, f64)>) {
    let ids = ["chain.sag", "chain.sag_pressed", "chain.movement"].map(find);
    let givens = ids.iter().zip(values).map(|(id, value)| (*id, value * 1e-3)).collect();
    (odd::Sheet::new(&ids, &[]), givens)
}

#[test]
fn the_odd_one_out_is_proven() {
    let right = [16.0, 18.5, 37.0];
    let mut seen = BTreeSet::new();
    for seed in 0..80 {
        let (sheet, givens) = sheet(right);
        let (written, options) =
            odd::options(&sheet, givens.clone(), System::Si, &mut Stream::new(seed, "test")).unwrap();
        let changed: Vec<usize> = (0..3).filter(|place| written[*place].1 != givens[*place].1).collect();
        assert_eq!(changed, [options.right], "one number is falsified, and it is the right answer");
        let ratio = written[options.right].1 / givens[options.right].1;
        assert!(!(0.9..1.1).contains(&ratio), "a slip of {ratio} proves nothing");
        assert!(options.against.iter().enumerate().all(|(place, says)| says.is_empty() == (place == options.right)));
        assert!(options.because.contains("It should read"), "{}", options.because);
        seen.insert((options.right, (ratio * 1e6) as i64));
    }
    assert!(seen.len() > 6, "slips vary: {seen:?}");
}

#[test]
fn a_sheet_that_disagrees_as_it_stands_is_refused() {
    for values in [[16.0, 24.0, 37.0], [16.0, 18.5, 18.5]] {
        let (sheet, givens) = sheet(values);
        assert!(odd::options(&sheet, givens, System::Si, &mut Stream::new(1, "test")).is_err());
    }
    // Numbers that have nothing to do with each other prove nothing.
    let ids = ["chain.sag", "oil.cold_level", "heat.housing"].map(find);
    let givens = ids.iter().map(|id| (*id, 0.1)).collect();
    let lone = odd::Sheet::new(&ids, &[]);
    assert!(odd::options(&lone, givens, System::Si, &mut Stream::new(1, "test")).is_err());
}

#[test]
fn slips_of_the_pen_are_those_people_make() {
    let slips = odd::slips(find("chain.sag"), 0.0175, System::Si);
    let by =
        |how: &str| slips.iter().filter(|slip| slip.how.contains(how)).map(|slip| slip.written).collect::<Vec<_>>();
    assert_eq!(by("changed places"), [71.5, 15.7]);
    assert_eq!(by("too far right"), [175.0]);
    assert_eq!(by("too far left"), [1.8]);
    assert_eq!(by("in another unit (in) than the one written (mm)"), [0.7]);
    assert_eq!(by("half division dropped"), [17.0]);
    assert!(odd::slips(find("chain.sag"), 0.0254, System::Us).iter().all(|slip| slip.written != 1.0));
    // Equal figures change nothing, and no number begins with a nought that did not.
    let again = odd::slips(find("chain.sag"), 0.0500, System::Si);
    assert!(again.iter().all(|slip| !slip.how.contains("changed places")), "{again:?}");
}

#[test]
fn items_say_where_they_are_wrong() {
    let cases = [
        (r#"diagnose = ["mount.rise_1", "#, r#"diagnose = ["mount.twist", "#, "mount.twist is no reading in numbers."),
        (r#"diagnose = ["mount.rise_1", "#, r#"diagnose = ["mount.ris", "#, "There is no quantity called"),
        (r#"when = "level it again""#, r#"when = "crooked""#, "mount.level_verdict never is \"crooked\"."),
        (r#"call = "stop""#, r#"call = "panic""#, "\"panic\" is no call."),
        (r#"call = "stop""#, r#"call = "accept""#, "\"accept\" is no call."),
        ("reason = true", "reason = false", "A reason belongs to the decision in the part before."),
        ("reason = true", "reason = true\nread = \"mount.rise_1\"", "A part asks in exactly one way."),
        ("reason = true", "read = \"mount.gap_limit\"", "mount.gap_limit is not read off a face"),
        ("reason = true", "odd = [\"mount.gap\", \"mount.rise_1\", \"mount.rise_2\"]", "An odd one out is found among"),
    ];
    for (from, to, says) in cases {
        let text = ITEMS.replacen(from, to, 1);
        assert_ne!(text, ITEMS, "{from}");
        let problems = read_items(&text).unwrap_err();
        assert!(problems[0].what.starts_with(says), "{to}: {problems:?}");
        assert!(problems[0].span.is_some() && !problems[0].mend.is_empty(), "{problems:?}");
    }
}

/// A verdict that is asked as a quantity: the same holds of it, and of those alone that call for stopping.
#[test]
fn stop_called_all_well_is_dangerous_in_a_verdict_too() {
    let bank = crate::built_in::bank();
    let (mut stopped, mut others) = (BTreeSet::new(), 0);
    for setting in bank.settings(System::Si, |item, _| item.parts.len() == 1) {
        let Ask::Quantity { asked, .. } = setting.item.parts[0].ask else { continue };
        for seed in 0..if asked.get().choices.is_empty() { 0 } else { 12 } {
            let Ok(question) = setting.question(seed) else { continue };
            let right = question.parts[0].key().unwrap().value;
            let well = mark(&question, &[asked.get().choices[0]]).remove(0);
            let is_stop = asked.get().choices[right as usize].contains("stop");
            assert_eq!(well.causes.contains(&Cause::StopAccepted), is_stop, "{} {seed}", setting.item.id);
            assert_eq!(well.says.contains("must stop"), is_stop, "{}", well.says);
            if is_stop { _ = stopped.insert(asked.get().id) } else { others += 1 }
        }
    }
    assert!(stopped.len() >= 3 && others > 500, "{stopped:?} {others}");
}

/// A reader who works a line of the sheet out again comes to what stands there: nothing but the slip is wrong.
#[test]
fn what_is_worked_out_on_a_sheet_follows_from_what_stands_there() {
    let bank = crate::built_in::bank();
    let item = bank.items.iter().find(|item| item.id == "heat-sheet-odd").unwrap();
    let [ambient, housing, rise] = ["heat.ambient", "heat.housing", "heat.rise"].map(find);
    let (mut settings, mut rises) = (0, 0);
    for plan in &bank.plans {
        for system in System::ALL {
            let Ok(setting) = Setting::new(item, plan, system) else { continue };
            settings += 1;
            for seed in 0..20 {
                let question = setting.question(seed).unwrap();
                let (shown, right, ..) = pick(&question.parts[0].body);
                if [housing, rise].iter().any(|id| shown[right].starts_with(&capital(id.get().name))) {
                    continue;
                }
                let value = |id| question.parts[0].givens.iter().find(|(given, _)| *given == id).unwrap().1;
                let off = value(housing) - value(ambient) - value(rise);
                assert!(off.abs() < 1e-9, "{} {system:?} {seed}: {off}", plan.family.id);
                rises += 1;
            }
        }
    }
    assert!(settings > 4 && rises > 5 * settings, "{rises} of {settings} settings");
}
