//! Verdicts: a sound machine is left alone, a faulty one is not.

use super::*;

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
        let needs = plan.needs(VERDICTS.iter().chain(&[("fasten.gap_verdict", "")]).map(|(name, _)| find(name)));
        let verdict = |case: &Case, name: &str| {
            let id = find(name);
            amount::choice(id.get(), case.values[id.index()]).unwrap().to_owned()
        };
        for seed in 0..seeds() {
            let healthy = plan.draw_needed(seed, Some(&[]), &needs).unwrap();
            for (name, good) in VERDICTS {
                assert_eq!(verdict(&healthy, name), good, "{} seed {seed}: {name}", plan.family.id);
            }
            for (fault, name) in TURNS {
                let place = plan.family.faults.iter().position(|other| other.id == fault).unwrap();
                let faulty = plan.draw_needed(seed, Some(&[place]), &needs).unwrap();
                assert_ne!(verdict(&faulty, name), good(name), "{} seed {seed}: {fault}", plan.family.id);
            }
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
        let needs = plan.needs(AT_WORST.iter().map(|(name, _)| find(name)));
        for seed in 0..seeds() {
            let sound = plan.draw_needed(seed, Some(&[]), &needs).unwrap();
            for (quantity, worst) in AT_WORST {
                assert!(!is_worse(&sound, quantity, worst), "{} seed {seed}: {quantity}", plan.family.id);
            }
            for (fault, shown) in SHOWN_BY {
                let place = plan.family.faults.iter().position(|other| other.id == fault).unwrap();
                let case = plan.draw_needed(seed, Some(&[place]), &needs).unwrap();
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
