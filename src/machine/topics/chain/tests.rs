//! A few machines drawn whole: one truth, and wrong turns that really go wrong.

use crate::registry::{Linked, Registry};
use crate::relation::Role;
use crate::unit::{Kind, System, Unit};
use crate::working;

/// What a case draws: quantity, unit, and its value on each machine. The drive's own quantities stand for the reducer.
const ROOTS: [(&str, &str, [f64; 5]); 28] = [
    ("chain.size", "", [10.0, 3.0, 7.0, 12.0, 5.0]),
    ("chain.teeth_small", "", [19.0, 17.0, 21.0, 25.0, 19.0]),
    ("chain.teeth_large", "", [57.0, 38.0, 21.0, 70.0, 76.0]),
    ("chain.centres_planned", "mm", [760.0, 640.0, 352.0, 1160.0, 1250.0]),
    ("chain.fixed_centres", "", [0.0, 0.0, 1.0, 0.0, 0.0]),
    ("chain.set_sag", "%", [2.0, 0.6, 2.0, 3.0, 1.8]),
    ("chain.wear_set", "%", [0.0, 0.0, 1.6, 2.1, 2.72]),
    ("chain.wear", "%", [0.02, 0.0, 1.7, 2.12, 2.75]),
    ("chain.sag_share_wanted", "%", [2.0, 2.0, 1.0, 2.0, 1.2]),
    ("chain.movement_low", "%", [4.0, 4.0, 2.0, 4.0, 4.0]),
    ("chain.movement_high", "%", [6.0, 6.0, 3.0, 6.0, 6.0]),
    ("chain.lie", "", [0.0, 0.0, 1.0, 0.0, 0.0]),
    ("chain.load_comes", "", [0.0, 0.0, 1.0, 0.0, 0.0]),
    ("chain.incline", "°", [0.0, 30.0, 45.0, 15.0, 60.0]),
    ("chain.screw_lead", "mm", [2.0, 2.5, 1.5, 2.0, 2.0]),
    ("chain.take_up_left", "mm", [9.0, 25.0, 2.0, 1.5, 14.0]),
    ("chain.wear_pitches", "", [20.0, 24.0, 32.0, 24.0, 12.0]),
    ("chain.service_factor", "", [1.3, 1.25, 1.4, 1.5, 1.2]),
    ("chain.strands", "", [1.0, 1.0, 1.0, 2.0, 3.0]),
    ("chain.tooth_factor", "", [1.12, 1.25, 1.26, 1.5, 1.12]),
    ("drive.motor_power", "kW", [2.2, 1.5, 1.1, 55.0, 7.5]),
    ("drive.power", "kW", [1.75, 1.3, 0.9, 46.0, 6.5]),
    ("drive.output_power", "kW", [1.6, 1.2, 0.8, 42.5, 6.0]),
    ("drive.motor_speed", "r/min", [1755.0, 1455.0, 1755.0, 1180.0, 1465.0]),
    ("drive.output_speed", "r/min", [88.0, 58.0, 140.0, 800.0, 100.0]),
    ("drive.output_torque", "N·m", [173.6, 197.6, 54.57, 507.3, 573.0]),
    ("drive.motor_torque", "N·m", [9.52, 8.53, 4.9, 372.0, 42.4]),
    ("chain.turns_made", "turns", [0.15, -0.2, 0.4, 0.6, 0.3]),
];

fn chain_relations() -> impl Iterator<Item = &'static Linked> {
    Registry::get().relations().iter().filter(|linked| linked.relation.topic() == "chain")
}

/// The truth of one machine, worked out from its roots by every relation that makes cases.
fn truth(machine: usize) -> Vec<f64> {
    let registry = Registry::get();
    let mut values = vec![f64::NAN; registry.len()];
    for (name, unit, drawn) in ROOTS {
        let id = registry.find(name).unwrap();
        values[id.index()] = Unit::find(id.get().kind, unit).unwrap().to_base(drawn[machine]);
    }
    let mut left: Vec<_> = chain_relations().filter(|linked| linked.relation.role != Role::Question).collect();
    while !left.is_empty() {
        let before = left.len();
        left.retain(|linked| {
            if linked.inputs().any(|input| values[input.index()].is_nan()) {
                return true;
            }
            let place = linked.gives.index();
            assert!(values[place].is_nan(), "{}: a second source of the truth", linked.relation.id);
            values[place] = linked.eval(&values).unwrap_or_else(|error| panic!("{}: {error}", linked.relation.id));
            false
        });
        let stuck: Vec<_> = left.iter().map(|linked| linked.relation.id).collect();
        assert!(left.len() < before, "a cycle or a missing root: {stuck:?}");
    }
    values
}

fn is_number(linked: &Linked) -> bool {
    !matches!(linked.relation.kind, Kind::Choice | Kind::Count)
}

#[test]
fn second_methods_and_inverses_agree_with_the_truth() {
    for machine in 0..5 {
        let values = truth(machine);
        for linked in chain_relations().filter(|linked| linked.relation.role == Role::Question && is_number(linked)) {
            let (worked, truth) = (linked.eval(&values).unwrap(), values[linked.gives.index()]);
            assert!(
                (worked - truth).abs() <= 0.015 * truth.abs() + 1e-9,
                "machine {machine}: {} gives {worked}, the truth is {truth}",
                linked.relation.id
            );
        }
    }
}

#[test]
fn wrong_turns_go_wrong_and_each_its_own_way() {
    let machines: Vec<_> = (0..5).map(truth).collect();
    let mut faults = Vec::new();
    for linked in chain_relations() {
        let right: Vec<_> = machines.iter().map(|values| linked.eval(values).unwrap()).collect();
        let wrong: Vec<Vec<_>> = (0..linked.turns().len())
            .map(|turn| machines.iter().map(|values| linked.eval_turn(turn, values)).collect())
            .collect();
        let apart = |a: f64, b: f64| (a - b).abs() > 0.01 * b.abs().max(a.abs());
        for (turn, given) in linked.turns().iter().zip(&wrong) {
            let misses = given.iter().zip(&right).any(|(wrong, right)| wrong.is_some_and(|wrong| apart(wrong, *right)));
            if !misses {
                faults.push(format!("{}: {} never goes wrong", linked.relation.id, turn.id));
            }
        }
        if !is_number(linked) {
            continue;
        }
        for (a, first) in wrong.iter().enumerate() {
            for (b, second) in wrong.iter().enumerate().skip(a + 1) {
                let differ = first.iter().zip(second).any(|(a, b)| match (a, b) {
                    (Some(a), Some(b)) => apart(*a, *b),
                    (None, None) => false,
                    _ => true,
                });
                if !differ {
                    let turns = linked.turns();
                    faults.push(format!("{}: {} and {} are one", linked.relation.id, turns[a].id, turns[b].id));
                }
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

#[test]
fn formulas_say_what_the_calculation_does() {
    let mut shown = 0;
    for machine in 0..5 {
        let values = truth(machine);
        for linked in chain_relations() {
            for system in System::ALL {
                let Some(by_formula) = working::formula_value(linked, &values, system) else { continue };
                let value = linked.eval(&values).unwrap();
                assert!(
                    (by_formula - value).abs() <= 1e-6 * value.abs() + 1e-9,
                    "machine {machine}: {} shows {by_formula} in {system:?}, gives {value}",
                    linked.relation.id
                );
                shown += 1;
            }
        }
    }
    assert!(shown > 300, "only {shown} formulas were looked at");
}
