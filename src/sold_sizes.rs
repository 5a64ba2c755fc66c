//! A column of motors' powers whose numbers are all sizes that motors are sold in by the other unit: its heading is doubted.

use drivecourse_machine::{
    Kind, Known, OwnTable, Plan, Problem, QuantityId, System, amount, language, messages, quoted,
};
use drivecourse_quiz::FileProblem;

use crate::assets::Assets;
use crate::undrawable::in_file;

messages! { pub(crate) SAYS {
    OTHER_UNIT = "check-sold-sizes", "The column {column} is headed in {unit}, and every value in it is a size that motors are sold in by {other}; none is sold with {values}.";
    OTHER_UNIT_MEND = "check-sold-sizes-mend", "If the plates say {other}, write {heading} in its place. If your motors are so, leave it.";
} }

/// Rated outputs in kW that motors are commonly sold with: the usual ones of IEC 60072-1. From memory.
const KILOWATTS: &[f64] = &[
    0.06, 0.09, 0.12, 0.18, 0.25, 0.37, 0.55, 0.75, 1.1, 1.5, 2.2, 3.0, 3.7, 4.0, 5.5, 7.5, 9.2, 11.0, 15.0, 18.5,
    22.0, 30.0, 37.0, 45.0, 55.0, 75.0, 90.0, 110.0, 132.0, 160.0, 200.0, 250.0, 315.0,
];

/// Rated outputs in hp that motors are commonly sold with in North America. From memory.
pub(crate) const HORSEPOWER: &[f64] = &[
    0.25, 0.5, 0.75, 1.0, 1.5, 2.0, 3.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 60.0, 75.0, 100.0, 125.0,
    150.0, 200.0, 250.0, 300.0,
];

fn series(system: System) -> &'static [f64] {
    match system {
        System::Si => KILOWATTS,
        System::Us => HORSEPOWER,
    }
}

/// Those of `values` that motors are not sold with in the unit of `headed`, where the other unit has all of them; none where
/// one value is in neither series or in that of the heading alone, or where all are in both.
fn odd(values: &[f64], headed: System) -> Vec<f64> {
    let has = |system: System, value: f64| series(system).iter().any(|size| (size - value).abs() <= 1e-6 * size);
    if !values.iter().all(|value| has(other(headed), *value)) {
        return Vec::new();
    }
    let mut odd: Vec<f64> = values.iter().copied().filter(|value| !has(headed, *value)).collect();
    odd.sort_by(f64::total_cmp);
    odd.dedup();
    odd
}

fn other(system: System) -> System {
    match system {
        System::Si => System::Us,
        System::Us => System::Si,
    }
}

/// The doubt about each column of powers in the table of `plan` whose heading has a unit.
pub(crate) fn doubts(assets: &Assets, plan: &Plan, table: &OwnTable) -> Vec<FileProblem> {
    let powers = table.systems.iter().filter(|(id, _)| id.get().kind == Kind::Power && id.get().known == Known::Plate);
    powers.filter_map(|(id, headed)| doubt(assets, plan, table, *id, *headed)).collect()
}

fn doubt(assets: &Assets, plan: &Plan, table: &OwnTable, id: QuantityId, headed: System) -> Option<FileProblem> {
    let (unit, meant) = (id.get().unit(headed), id.get().unit(other(headed)));
    let rows = plan.family.pool.iter().flatten().filter(|(of, _)| *of == id);
    // As they are written, without the dust of the change to watts.
    let values: Vec<f64> = rows.map(|(_, value)| (unit.from_base(*value) * 1e6).round() / 1e6).collect();
    let odd = odd(&values, headed);
    if odd.is_empty() {
        return None;
    }
    let written = |value: &f64| amount::with_unit(&language::with_decimal_mark(value.to_string()), unit);
    let what = OTHER_UNIT.say(&[
        ("column", id.get().id),
        ("unit", unit.symbol),
        ("other", meant.symbol),
        ("values", &odd.iter().map(written).collect::<Vec<_>>().join(", ")),
    ]);
    let heading = quoted(&format!("{} [{}]", id.get().id, meant.symbol));
    let mend = OTHER_UNIT_MEND.say(&[("other", meant.symbol), ("heading", &heading)]);
    let span = table.columns.iter().find(|(of, _)| *of == id).map(|(_, span)| span.clone());
    Some(in_file(assets, &table.file, Problem { span, what, mend }))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sizes_of_the_other_unit_alone_are_odd() {
        for (values, headed, found) in [
            (&[7.5, 11.0, 18.5, 11.0][..], System::Us, &[11.0, 18.5][..]),
            (&[7.5, 10.0, 20.0], System::Si, &[10.0, 20.0]),
            // Each is sold by both, or one by the unit of the heading alone, or one by neither.
            (&[1.5, 7.5, 15.0, 30.0], System::Us, &[]),
            (&[1.5, 7.5, 15.0, 30.0], System::Si, &[]),
            (&[10.0, 11.0], System::Us, &[]),
            (&[10.0, 11.0], System::Si, &[]),
            (&[11.0, 8.3], System::Us, &[]),
            (&[7.5, 11.0, 18.5], System::Si, &[]),
            (&[7.5, 10.0, 20.0], System::Us, &[]),
        ] {
            assert_eq!(odd(values, headed), found, "{values:?} in the units of {}", headed.code());
        }
    }
}
