//! Published worked examples, run against the relation they check and through `solve`.
//!
//! The figures stand in `tests/reference/*.toml`, each with its source; a relation without one
//! fails the suite.

#![allow(clippy::unwrap_used, reason = "a test stops where it goes wrong")]

use std::collections::BTreeMap;
use std::path::Path as FilePath;

use drivecourse_machine::{Known, PathChoice, Quantity, Registry, Role, System, Unit, solve, working};
use serde::Deserialize;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    example: Vec<Example>,
}

/// One published figure.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Example {
    /// Short name, unique over all files.
    id: String,
    /// Author, title, place; or "common practice, no source"; or "from memory: ..."; or "derived: ..." with the
    /// independent derivation.
    source: String,
    /// Which relation it checks.
    relation: String,
    /// Inputs, as amounts with units; choices by label.
    given: BTreeMap<String, String>,
    /// The printed answer, as an amount; a choice by label.
    answer: String,
    /// How far off the printed figure's own rounding allows: `0.5 lbf`, or `0.05 %`.
    within: Option<String>,
    /// Why the tolerance is what it is, traps, remarks.
    #[serde(default)]
    #[allow(dead_code)]
    note: String,
}

fn amount(quantity: &Quantity, text: &str) -> f64 {
    if let Some(index) = quantity.choices.iter().position(|choice| *choice == text) {
        return index as f64;
    }
    let (number, unit) = text.split_once(' ').unwrap_or((text, ""));
    let number: f64 = number.parse().unwrap_or_else(|_| panic!("{}: {text:?} is no amount", quantity.id));
    let unit = if unit.is_empty() {
        Unit::find(quantity.kind, "")
    } else {
        Unit::named(unit).find(|unit| unit.kind == quantity.kind)
    };
    unit.unwrap_or_else(|| panic!("{}: no such unit in {text:?}", quantity.id)).to_base(number)
}

fn tolerance(quantity: &Quantity, text: &str, answer: f64) -> f64 {
    match text.strip_suffix('%') {
        Some(percent) => percent.trim().parse::<f64>().expect("a percentage") / 100.0 * answer.abs(),
        None => {
            let (number, unit) = text.split_once(' ').unwrap_or((text, ""));
            let number: f64 = number.parse().expect("a number");
            let unit = if unit.is_empty() {
                Unit::find(quantity.kind, "")
            } else {
                Unit::named(unit).find(|unit| unit.kind == quantity.kind)
            };
            number * unit.unwrap_or_else(|| panic!("{}: no such unit in {text:?}", quantity.id)).size()
        }
    }
}

fn examples() -> Vec<Example> {
    let folder = FilePath::new(env!("CARGO_MANIFEST_DIR")).join("tests/reference");
    let mut files: Vec<_> = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    files.retain(|path| path.extension().is_some_and(|extension| extension == "toml"));
    files.sort();
    files
        .iter()
        .flat_map(|path| {
            let text = std::fs::read_to_string(path).unwrap();
            toml::from_str::<File>(&text).unwrap_or_else(|error| panic!("{}: {error}", path.display())).example
        })
        .collect()
}

#[test]
fn every_published_figure_is_met_by_its_relation_and_by_solve() {
    let registry = Registry::get();
    let mut faults = Vec::new();
    let mut ids = std::collections::BTreeSet::new();
    let examples = examples();
    for example in &examples {
        assert!(ids.insert(&example.id), "{} stands twice", example.id);
        assert!(!example.source.is_empty(), "{}: no source", example.id);
        let linked = registry
            .relation(&example.relation)
            .unwrap_or_else(|| panic!("{}: no relation {}", example.id, example.relation));
        let mut values = vec![f64::NAN; registry.len()];
        let mut givens = Vec::new();
        for (name, text) in &example.given {
            let id = registry.find(name).unwrap_or_else(|| panic!("{}: no quantity {name}", example.id));
            let value = amount(id.get(), text);
            values[id.index()] = value;
            givens.push((id, value));
        }
        let gives = linked.gives.get();
        let answer = amount(gives, &example.answer);
        let within = example.within.as_ref().map_or(1e-9 * answer.abs(), |text| tolerance(gives, text, answer));
        match linked.eval(&values) {
            Ok(value) if (value - answer).abs() <= within * (1.0 + 1e-12) => {}
            other => faults.push(format!("{}: {other:?}, published {answer}, within {within}", example.id)),
        }
        let choice = PathChoice { by: vec![linked.id], ..PathChoice::default() };
        match solve::solve(&givens, linked.gives, &choice, System::Us) {
            Ok(solution) if (solution.value - answer).abs() <= within * (1.0 + 1e-12) => {}
            Ok(solution) => faults.push(format!("{}: solve gives {}, published {answer}", example.id, solution.value)),
            Err(_) if linked.relation.role == Role::Model => {}
            Err(error) => faults.push(format!("{}: solve: {error:?}", example.id)),
        }
        // What people are shown must say what the calculation does.
        for system in System::ALL {
            if let (Some(shown), Ok(value)) = (working::formula_value(linked, &values, system), linked.eval(&values))
                && (shown - value).abs() > 1e-3 * value.abs() + 1e-12
            {
                faults.push(format!(
                    "{}: the {system:?} formula shows {shown}, the calculation gives {value}",
                    example.id
                ));
            }
        }
    }
    assert!(faults.is_empty(), "{} of {} examples:\n{}", faults.len(), examples.len(), faults.join("\n"));
    println!("{} published figures met", examples.len());
}

#[test]
fn every_relation_has_an_outside_check() {
    let examples = examples();
    let bare: Vec<_> = (Registry::get().relations().iter())
        .map(|linked| linked.relation.id)
        .filter(|id| !examples.iter().any(|example| example.relation == *id))
        .collect();
    assert!(bare.is_empty(), "no outside check for:\n{}", bare.join("\n"));
}

#[test]
fn every_quantity_is_worked_with() {
    let registry = Registry::get();
    let idle: Vec<_> = (registry.quantities())
        .filter(|id| registry.giving(*id).is_empty())
        .filter(|id| !registry.relations().iter().any(|linked| linked.inputs().any(|input| input == *id)))
        .map(|id| id.get())
        .filter(|quantity| quantity.known != Known::Plate)
        .map(|quantity| quantity.id)
        .collect();
    assert!(idle.is_empty(), "nothing uses {idle:?}");
}
