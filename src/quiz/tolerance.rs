//! How far off an answer may be and still be right.
//!
//! Three things are allowed for, all carried through the path to the answer:
//!
//! 1. **The instruments.** A reading stands for any value within half a step of it: a rectangular
//!    distribution, with a standard uncertainty of the half step over √3 (JCGM 100:2008, 4.3.7). The
//!    readings' contributions add as the root of the sum of squares (JCGM 100:2008, 5.1.2). Together
//!    they count for at most 2 % of the answer: everyone works from the same printed readings, so
//!    this only excuses an answer that is not quoted finer than its readings deserve.
//! 2. **Rounding on the way.** Every result between, in this part or an earlier one, may be rounded
//!    to three figures, and a value changed to another unit to four; these add up plainly, since a person may round them all one way.
//! 3. **Rounding at the end.** Half a step in the third figure of the answer, or in its last printed
//!    place where that is coarser. What is read with an instrument, or set with one on the machine, is right
//!    to half its step. What is worked out is not wanted more finely in inches or degrees Fahrenheit than it is printed in SI: the
//!    machine is the same, and places behind the point of an inch are soon finer than any rule.
//!
//! Nothing is carried through a table: what is looked up is looked up for the value as it stands.
//! Counts and choices must be exact.

use drivecourse_machine::{Figures, Kind, Known, Path, QuantityId, Registry, System};

/// Largest share of an answer that its readings may excuse.
const MOST_FROM_READINGS: f64 = 0.02;

/// The tolerance (SI) on the result of `path`, whose every value stands in `values`; `carried` are
/// the inputs that a person worked out in an earlier part, and may take on rounded.
pub fn of(path: &Path, values: &[f64], carried: &[(QuantityId, usize)], system: System) -> f64 {
    let asked = path.asked.get();
    if matches!(asked.kind, Kind::Choice | Kind::Count) {
        return 0.0;
    }
    let seeing = Registry::get().seeing(system);
    let answer = values[path.asked.index()];
    let mut scratch = values.to_vec();
    let mut squares = 0.0;
    let mut plain = 0.0;
    for id in path.uses() {
        let half_step = seeing[id.index()].half_step();
        let converted =
            path.steps.iter().any(|step| step.get().conversions(system).iter().any(|change| change.quantity == id));
        let unit = seeing[id.index()].unit();
        let whole = matches!(id.get().kind, Kind::Choice | Kind::Count);
        let rounding = if carried.iter().any(|(other, _)| *other == id) && !whole {
            third_figure(id.index(), values[id.index()], system)
        } else if converted && id.get().kind != Kind::Temperature {
            0.5 * Figures::Significant(4).step(unit.from_base(values[id.index()])) * unit.size().abs()
        } else {
            0.0
        };
        if half_step > 0.0 {
            let effect = effect(path, values, &mut scratch, id.index(), 0, half_step, answer) / 3.0_f64.sqrt();
            squares += effect * effect;
        }
        if rounding > 0.0 {
            plain += effect(path, values, &mut scratch, id.index(), 0, rounding, answer);
        }
    }
    for (index, step) in path.steps.iter().enumerate() {
        let gives = step.get().gives;
        if gives == path.asked || matches!(gives.get().kind, Kind::Choice | Kind::Count) {
            continue;
        }
        let rounding = third_figure(gives.index(), values[gives.index()], system);
        plain += effect(path, values, &mut scratch, gives.index(), index + 1, rounding, answer);
    }
    plain += last_figure(path.asked.index(), answer, system);
    let unit = seeing[path.asked.index()].unit();
    let most = MOST_FROM_READINGS * (unit.from_base(answer) * unit.size()).abs();
    squares.sqrt().min(most) + plain
}

/// Half a step in the third figure of a value.
fn third_figure(index: usize, base: f64, system: System) -> f64 {
    let unit = Registry::get().seeing(system)[index].unit();
    0.5 * Figures::Significant(3).step(unit.from_base(base)) * unit.size().abs()
}

/// Half a step in the third figure of a value (SI) of the quantity at `index`, or in its last printed place or on its
/// instrument where that is coarser; of what is worked out, also in its last printed place in SI.
pub(crate) fn last_figure(index: usize, base: f64, system: System) -> f64 {
    let seeing = &Registry::get().seeing(system)[index];
    let own = third_figure(index, base, system).max(printed(index, base, system)).max(seeing.half_step());
    let own = own.max(seeing.set_half_step());
    let read = matches!(seeing.quantity().known, Known::Read(_));
    if read { own } else { own.max(printed(index, base, System::Si)) }
}

/// Half a step in the last figure in which `system` shows a value (SI) of the quantity at `index`.
fn printed(index: usize, base: f64, system: System) -> f64 {
    let seeing = &Registry::get().seeing(system)[index];
    let (unit, figures) = (seeing.unit(), seeing.quantity().display(system).figures);
    let step = match figures {
        // More than three figures are never asked for.
        Figures::Significant(shown) if shown > 3 => 0.0,
        figures => figures.step(unit.from_base(base)),
    };
    0.5 * step * unit.size().abs()
}

/// How far the answer moves when the value at `index` moves by `by`, from step `from` on: the
/// larger of up and down, and nothing where the calculation has no result there.
pub(crate) fn effect(
    path: &Path,
    values: &[f64],
    scratch: &mut [f64],
    index: usize,
    from: usize,
    by: f64,
    answer: f64,
) -> f64 {
    let mut most: f64 = 0.0;
    for signed in [by, -by] {
        scratch[index] += signed;
        let mut ok = true;
        for step in &path.steps[from..] {
            let linked = step.get();
            if linked.relation.lookup {
                continue;
            }
            match linked.eval(scratch) {
                Ok(value) => scratch[linked.gives.index()] = value,
                Err(_) => ok = false,
            }
        }
        let moved = (scratch[path.asked.index()] - answer).abs();
        if ok && moved.is_finite() {
            most = most.max(moved);
        }
        // `scratch` holds `values` again for the next use.
        scratch[index] = values[index];
        for step in &path.steps[from..] {
            let gives = step.get().gives.index();
            scratch[gives] = values[gives];
        }
    }
    most
}
