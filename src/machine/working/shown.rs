//! How finely the values of a worked solution are shown: as everywhere, and more finely where a line would else not give what
//! stands behind it.

use crate::amount;
use crate::formula::{Formula, unit_for};
use crate::instrument::Figures;
use crate::path::Path;
use crate::quantity::Known;
use crate::registry::{Linked, QuantityId};
use crate::unit::{Kind, System, Unit};

use super::input_of;

/// Most figures that a value is shown with beyond the usual ones.
const MOST: u8 = 2;

/// How far what a line's shown numbers give may lie from the result behind it, as a share of that. Nobody who works with
/// three figures notices less.
const UNNOTICED: f64 = 0.003;

/// The values of a path as they are shown.
pub(super) struct Shown<'a> {
    values: &'a [f64],
    system: System,
    /// For each quantity, how many figures more than usual.
    more: Vec<u8>,
}

impl<'a> Shown<'a> {
    /// The values of `path`. A line is looked at after those that use its result, which may want that more finely.
    pub(super) fn of(path: &Path, values: &'a [f64], system: System) -> Self {
        let mut shown = Self { values, system, more: vec![0; values.len()] };
        for step in path.steps.iter().rev() {
            let linked = step.get();
            let Some(formula) = linked.formula(system) else { continue };
            let before = shown.more.clone();
            let will_do = (0..=MOST).any(|more| {
                for id in linked.inputs() {
                    // What is read or printed has the figures that it has, unless it is worked out here.
                    let here = || path.steps.iter().any(|step| step.get().gives == id);
                    if id.get().kind != Kind::Choice && (id.get().known == Known::Worked || here()) {
                        shown.more[id.index()] = more.max(shown.more[id.index()]);
                    }
                }
                shown.gives(linked, formula)
            });
            if !will_do {
                shown.more = before;
            }
        }
        shown
    }

    /// A value with its unit, in the unit that it is usually shown in.
    pub(super) fn text(&self, id: QuantityId) -> String {
        let (quantity, base) = (id.get(), self.values[id.index()]);
        if quantity.kind == Kind::Choice {
            return amount::write(quantity, base, self.system);
        }
        let unit = quantity.unit(self.system);
        amount::with_unit(&amount::number(unit.from_base(base), self.figures(id)), unit)
    }

    /// How finely it is shown in its usual unit.
    fn figures(&self, id: QuantityId) -> Figures {
        let figures = id.get().display(self.system).figures;
        match self.more[id.index()] {
            0 => figures,
            more => figures.finer(more),
        }
    }

    /// The number in `unit` that is shown of an input.
    fn number(&self, id: QuantityId, unit: &Unit) -> f64 {
        let usual = unit == id.get().unit(self.system);
        let figures = if usual { self.figures(id) } else { super::CHANGED };
        figures.round(unit.from_base(self.values[id.index()]))
    }

    /// Whether the numbers shown of a line's inputs give its result as that is shown.
    fn gives(&self, linked: &Linked, formula: &Formula) -> bool {
        let number = formula.body.value(&|name, named| {
            let Some(id) = input_of(linked, name) else { return f64::NAN };
            self.number(id, unit_for(id.get().kind, named, id.get().unit(self.system)))
        });
        let gives = linked.gives;
        let usual = gives.get().unit(self.system);
        let given = unit_for(gives.get().kind, formula.unit.as_deref(), usual).to_base(number);
        let (given, is) = (usual.from_base(given), usual.from_base(self.values[gives.index()]));
        let figures = self.figures(gives);
        let apart = (figures.round(given) - figures.round(is)).abs();
        // A line that has no result with shown numbers is no worse with others.
        !apart.is_finite() || apart <= UNNOTICED * is.abs()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Registry;
    use crate::path::Choice;
    use crate::solve::solve;

    #[test]
    fn what_a_line_shows_gives_what_it_says() {
        let find = |name| Registry::get().find(name).unwrap();
        let (mut lines, mut finer) = (0, 0);
        for (second, third) in (42..56).flat_map(|second| (second + 1..second + 12).map(move |third| (second, third))) {
            let readings = [("heat.reading_1", 40), ("heat.reading_2", second), ("heat.reading_3", third)];
            let mut givens: Vec<_> =
                readings.iter().map(|(name, celsius)| (find(name), f64::from(*celsius) + 273.15)).collect();
            givens.extend([(find("heat.interval"), 1800.0), (find("heat.margin_wanted"), 1.0)]);
            for system in System::ALL {
                // As a person reads them.
                let seen = |&(id, base): &(QuantityId, f64)| (id, Registry::get().seeing(system)[id.index()].see(base));
                let givens: Vec<_> = givens.iter().map(seen).collect();
                let asked = find("heat.time_to_settle");
                let Ok(solution) = solve(&givens, asked, &Choice::default(), system) else { continue };
                let shown = Shown::of(&solution.path, &solution.values, system);
                let usual = Shown { values: &solution.values, system, more: vec![0; solution.values.len()] };
                for step in &solution.path.steps {
                    let linked = step.get();
                    let Some(formula) = linked.formula(system) else { continue };
                    lines += 1;
                    assert!(shown.gives(linked, formula), "{} of {readings:?} in {system:?}", linked.relation.id);
                    finer += usize::from(!usual.gives(linked, formula));
                }
                assert_eq!(shown.figures(asked), asked.get().display(system).figures, "an answer keeps its figures");
            }
        }
        assert!(lines > 200 && finer > lines / 20, "{finer} of {lines} would give something else");
    }
}
