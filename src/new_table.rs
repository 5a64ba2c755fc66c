//! The table of machines that `new` makes: its columns, those that matter for the module's topics first, and what the family
//! that is varied fixes.

use anyhow::Result;
use drivecourse_machine::topics::DRIVE;
use drivecourse_machine::{Draw, Family, Figures, Kind, Plan, QuantityId, Registry, System, cell, fixed_line, heading};

use crate::new::FAMILY;
use crate::sold_sizes::HORSEPOWER;

/// Machines in the table, at most.
const MACHINES: usize = 6;
/// Machines on which it is tried what a column does.
const TRIED: usize = 3;
/// The topic whose columns speak of feet by their numbers.
const FEET: &str = "mount";
/// How the name of a limit ends.
const LIMIT: &str = "_limit";
/// A column that moves what is asked by no more than this share of it hardly matters.
const LITTLE: f64 = 0.05;

/// What a machine has in its row.
type Row = Vec<(QuantityId, f64)>;

/// A table for a variation of a family.
pub(crate) struct Table {
    pool: Vec<Row>,
    /// Columns that matter for the topics; one of another topic with a quantity that follows from it.
    needed: Vec<(QuantityId, Option<QuantityId>)>,
    /// Columns that hardly do.
    minor: Vec<QuantityId>,
    /// What belongs to a machine's build and has no column.
    built: Vec<QuantityId>,
    /// What the other family fixes of the topics.
    fixed: Vec<(QuantityId, f64)>,
    /// Limits of the topics that a rule gives, each with its value on the first machine.
    by_rule: Vec<(QuantityId, f64)>,
    system: System,
}

/// Where columns are found that stand on no plate or order, in a few words.
const FOUND: &[(&str, &str)] = &[
    ("drive.stage_efficiency", "data sheet; usual: 0.97 to 0.985 for each stage, from memory"),
    ("drive.stages", "data sheet"),
    ("mount.along", "dimension sheet of the reducer: holes of its feet"),
    ("mount.across", "dimension sheet of the reducer: holes of its feet"),
    ("mount.weight_along", "dimension sheet of the reducer; without it, near the middle of the feet"),
    ("mount.weight_across", "dimension sheet of the reducer; without it, near the middle of the feet"),
    ("mount.foot_length", "measure the reducer's foot"),
    ("mount.foot_width", "measure the reducer's foot"),
    (
        "align.motor_height",
        "number of the frame size: 132 mm of a 132 M; of a NEMA frame its first two figures over 4, in inches: 5.25 of a 213T, \
         from memory",
    ),
    ("load.connection_factor", "reducer's catalogue, at the overhung loads; usual of chains: 1 to 1.4, from memory"),
    (
        "load.bearing_span",
        "maker's sectional drawing. Where you have none, ask the maker; until then keep what stands there, and answers on \
         bearing loads are of that",
    ),
    (
        "load.shaft_middle",
        "from the near bearing, not from the shoulder: maker's sectional drawing; without it as the distance between bearings",
    ),
    ("load.rating_middle", "data sheet or catalogue of the reducer"),
    ("load.bearing_kind", "maker's list of bearings"),
    ("load.bearing_capacity", "maker's list of bearings, then the catalogue of bearings"),
    ("load.shaft_diameter", "dimension sheet of the reducer: its output shaft"),
];

/// How far a motor may lie from the size that is sold instead of it, as a share.
const SAME_MOTOR: f64 = 0.03;

/// `base` (SI) as a plate in the units of `system` has it: a table of the program's is in metric sizes, and a length of 365 mm is
/// no 14.3701 in on any drawing.
fn plate(id: QuantityId, base: f64, system: System) -> f64 {
    let unit = id.get().unit(system);
    if system == System::Si || unit == id.get().unit(System::Si) {
        return base;
    }
    let value = unit.from_base(base);
    let sold = |size: &&f64| unit.symbol == "hp" && (value - **size).abs() <= SAME_MOTOR * **size;
    unit.to_base(HORSEPOWER.iter().find(sold).copied().unwrap_or_else(|| Figures::Significant(3).round(value)))
}

impl Table {
    /// The table for the family in `text`, which varies that of `plan` for `topics`, in the units of `system`.
    ///
    /// # Errors
    /// What is wrong with the family.
    pub(crate) fn new(text: &str, plan: &Plan, topics: &[&str], system: System) -> Result<Self> {
        let alone = text.replace(&format!("machines = \"{FAMILY}.csv\"\n"), "");
        let told = |problems: Vec<drivecourse_machine::Problem>| {
            anyhow::Error::msg(problems.iter().map(ToString::to_string).collect::<Vec<_>>().join("\n"))
        };
        let family = Family::read_beside(FAMILY, &alone, &[&plan.family]).map_err(told)?;
        let columns: Vec<QuantityId> = family.pool.first().into_iter().flatten().map(|(id, _)| *id).collect();
        let of = |id: &QuantityId| topics.contains(&id.get().topic());
        let (mut needed, mut minor) = (Vec::new(), Vec::new());
        for id in columns {
            match of(&id) || id.get().topic() == DRIVE {
                true => needed.push((id, None)),
                false => match moved(&family, id, topics) {
                    Some(moved) => needed.push((id, Some(moved))),
                    None => minor.push(id),
                },
            }
        }
        let fixed = plan
            .family
            .roots
            .iter()
            .filter(|(id, _)| of(id) && !text.contains(&format!("\"{}\" =", id.get().id)))
            .filter_map(|(id, draw)| match draw {
                Draw::Fixed(value) => Some((*id, *value)),
                _ => None,
            });
        let fixed = fixed.collect();
        let drawn = |(id, draw): &&(QuantityId, Draw)| id.get().built && of(id) && !matches!(draw, Draw::Fixed(_));
        let built = family.roots.iter().filter(drawn).map(|(id, _)| *id).collect();
        let by_rule = by_rule(&family, |id| of(&id));
        Ok(Self { pool: family.pool, needed, minor, built, fixed, by_rule, system })
    }

    /// What the columns are, a remark each, and which of them need no care.
    pub(crate) fn columns(&self) -> String {
        let heading = |id: &QuantityId| heading(*id, self.system);
        let widest =
            self.all().chain(self.built.iter().copied()).map(|id| heading(&id).chars().count()).max().unwrap_or(0);
        let line = |id: &QuantityId| {
            let choices = match id.get().kind {
                Kind::Choice if id.get().choices.len() <= 4 => format!(": {}", id.get().choices.join(", ")),
                _ => String::new(),
            };
            let found = FOUND.iter().find(|(of, _)| *of == id.get().id);
            let found = found.map_or_else(String::new, |(_, found)| format!(" ({found})"));
            format!("#   {:<widest$}  {}{choices}{found}", heading(id), id.get().name)
        };
        let needed = |(id, moved): &(QuantityId, Option<QuantityId>)| match moved {
            // What stands on the motor's plate needs no reason; a column of another topic does.
            Some(moved) if id.get().topic() != "start" => format!("{}, for {}", line(id), moved.get().id),
            _ => line(id),
        };
        let mut lines: Vec<_> = self.needed.iter().map(needed).collect();
        if self.all().any(|id| id.get().topic() == FEET) {
            let counted =
                "# Feet are counted clockwise, seen from above, 1 to 2 along the shaft. Which corner is 1, you say.";
            lines.push(counted.into());
        }
        if !self.minor.is_empty() {
            lines.push(
                "# These hardly change what your topics ask; what stands in the table will do, in your rows too:"
                    .into(),
            );
            lines.extend(self.minor.iter().map(line));
        }
        if !self.built.is_empty() {
            lines.push(
                "# What else belongs to a machine is drawn once for its name. Where you know it, add a column:".into(),
            );
            lines.extend(self.built.iter().map(line));
        }
        lines.join("\n")
    }

    /// The columns, in the table's order.
    fn all(&self) -> impl Iterator<Item = QuantityId> + '_ {
        self.needed.iter().map(|(id, _)| *id).chain(self.minor.iter().copied())
    }

    /// The machines, each under an invented number.
    pub(crate) fn machines(&self) -> String {
        let columns: Vec<_> = self.all().collect();
        let headings = columns.iter().map(|id| heading(*id, self.system));
        let mut out = core::iter::once("machine".to_owned()).chain(headings).collect::<Vec<_>>().join(",") + "\n";
        for (place, row) in self.pool.iter().take(MACHINES).enumerate() {
            let value = |id: &QuantityId| row.iter().find(|(column, _)| column == id).map(|(_, value)| *value);
            let value = |id: &QuantityId| value(id).map(|base| plate(*id, base, self.system));
            let cells = columns.iter().map(|id| value(id).map_or_else(String::new, |it| cell(*id, it, self.system)));
            let name = format!("SC-{:02}", place + 1);
            out.push_str(&(core::iter::once(name).chain(cells).collect::<Vec<_>>().join(",") + "\n"));
        }
        out
    }

    /// What the other family fixes of the topics, each as a line that can be taken over, with what it is.
    pub(crate) fn fixed(&self) -> String {
        let short = |id: QuantityId, base: f64| {
            let unit = id.get().unit(self.system);
            let value = Figures::Significant(4).round(unit.from_base(base)).to_string().parse().unwrap_or(f64::NAN);
            if id.get().kind == Kind::Choice { base } else { unit.to_base(value) }
        };
        let line = |(id, base): &(QuantityId, f64)| (fixed_line(*id, short(*id, *base), self.system), *id);
        let fixed: Vec<_> = self.fixed.iter().map(line).collect();
        let by_rule: Vec<_> = self.by_rule.iter().map(line).collect();
        let widest = fixed.iter().chain(&by_rule).map(|(line, _)| line.chars().count()).max().unwrap_or(0);
        let written = |(line, id): &(String, QuantityId)| format!("# {line:<widest$}  # {}", id.get().name);
        let mut lines: Vec<String> = fixed.iter().map(written).collect();
        if !by_rule.is_empty() {
            lines.push("# These limits come by a rule; what stands here is the first machine's. Your own holds for all of them:".into());
            lines.extend(by_rule.iter().map(|line| written(line) + ", by rule"));
        }
        lines.join("\n")
    }
}

/// The limits, of those quantities that are `wanted`, that `family` works out by a rule of what stands still on a machine, each
/// with its value on the first one; not what only puts another limit otherwise.
fn by_rule(family: &Family, wanted: impl Fn(QuantityId) -> bool) -> Vec<(QuantityId, f64)> {
    let is_limit = |id: QuantityId| id.get().id.ends_with(LIMIT);
    let mut alone = family.clone();
    alone.limits.clear();
    alone.pool.truncate(1);
    alone.machines.truncate(1);
    let Ok(plan) = Plan::new(alone) else { return Vec::new() };
    let Ok(case) = plan.draw_with(1, Some(&[])) else { return Vec::new() };
    let still = plan.still();
    let given = plan.steps().map(|step| step.get());
    let limits = given.filter(|linked| {
        let mut inputs = linked.inputs();
        is_limit(linked.gives) && wanted(linked.gives) && inputs.all(|input| still[input.index()] && !is_limit(input))
    });
    let mut limits: Vec<_> = limits.filter_map(|linked| Some((linked.gives, case.value(linked.gives)?))).collect();
    limits.sort_by_key(|(id, _)| *id);
    limits
}

/// The first quantity of `topics` that comes out otherwise where machines of `family` have another value in the column `id`,
/// one that another machine has.
fn moved(family: &Family, id: QuantityId, topics: &[&str]) -> Option<QuantityId> {
    let of = |row: &Row| row.iter().find(|(column, _)| *column == id).map(|(_, value)| *value);
    let asked: Vec<_> = Registry::get()
        .quantities()
        .filter(|id| topics.contains(&id.get().topic()) || id.get().topic() == DRIVE)
        .collect();
    let drawn = |row: Row| {
        let mut alone = family.clone();
        // A limit would have another machine drawn in place of one that breaks it.
        alone.limits.clear();
        (alone.pool, alone.machines) = (vec![row], Vec::new());
        let case = Plan::new(alone).ok()?.draw_with(1, Some(&[])).ok()?;
        Some(asked.iter().map(|id| case.values[id.index()]).collect::<Vec<_>>())
    };
    let others: Vec<f64> = family.pool.iter().filter_map(of).collect();
    let lowest = others.iter().copied().fold(f64::INFINITY, f64::min);
    let highest = others.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    family.pool.iter().take(TRIED).find_map(|row| {
        let usual = drawn(row.clone());
        [lowest, highest].into_iter().find_map(|other| {
            let changed =
                row.iter().map(|(column, value)| (*column, if *column == id { other } else { *value })).collect();
            match (&usual, drawn(changed)) {
                (Some(usual), Some(changed)) => {
                    let mut pairs = usual.iter().zip(&changed).zip(&asked);
                    pairs.find(|((one, two), id)| is_apart(**id, **one, **two)).map(|(_, id)| *id)
                }
                // What ends in no machine at all matters for everything.
                _ => Some(id),
            }
        })
    })
}

/// Whether two values of a quantity differ by more than hardly matters.
fn is_apart(id: QuantityId, one: f64, two: f64) -> bool {
    match id.get().kind {
        Kind::Choice => one != two && !(one.is_nan() && two.is_nan()),
        _ => (one - two).abs() > LITTLE * one.abs().max(two.abs()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_said_of_columns_is_said_of_quantities() {
        for (id, _) in FOUND {
            assert!(Registry::get().find(id).is_some(), "{id}");
        }
    }
}
