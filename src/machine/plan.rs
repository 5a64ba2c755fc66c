//! A family compiled into a flat plan, so that drawing a case costs little more than the arithmetic.

mod agree;
mod case;
#[cfg(not(wordless))]
mod nearest;
mod needs;
mod rejections;
mod roots;
mod still;

use core::ops::Range;
use std::sync::OnceLock;

use crate::chance::{Stream, derive};
use crate::family::{Draw, Family, fixed_line, heading};
use crate::messages;
use crate::problem::Problem;
use crate::registry::{QuantityId, Registry, RelationId};
use crate::relation::{Eval, Given, Role, work};

pub(crate) use agree::SAYS as AGREE_SAYS;
pub use agree::{Otherwise, fixed_otherwise, rounded_away};
pub use case::Case;
#[cfg(not(wordless))]
pub(crate) use nearest::SAYS as NEAREST_SAYS;
#[cfg(not(wordless))]
pub use nearest::{Nearest, Short};
pub use needs::Needs;
use rejections::Broken;
pub(crate) use rejections::SAYS as REJECTIONS_SAY;
pub use rejections::{CannotDraw, Favoured, Rejections};

messages! { pub(crate) SAYS {
    TWICE = "problem-plan-twice", "{name} stands both in the table of machines and under [fixed] or [draw].";
    TWICE_MEND = "problem-plan-twice-mend", "Take it out of one of them.";
    FAULT_ALONE = "problem-plan-fault-alone", "The fault \"{fault}\" changes {name}, which the family itself does not draw.";
    FAULT_ALONE_MEND = "problem-plan-fault-alone-mend", "Give {name} a healthy value under [fixed] or [draw].";
    SHARE = "problem-plan-share", "{name} is drawn as a share of {other}, which is no value to start from.";
    SHARE_MEND = "problem-plan-share-mend", "Fix or draw {other} itself, and not as a share.";
    UNDETERMINED = "problem-plan-undetermined", "Nothing in this family determines {name}.";
    UNDETERMINED_MEND = "problem-plan-undetermined-mend", "Take the limit out, or fix or draw what the quantity follows from.";
    LACKS_ONE = "problem-plan-lacks-one", "This table of machines takes the place of that of {family}, and lacks one of its columns.";
    LACKS = "problem-plan-lacks", "This table of machines takes the place of that of {family}, and lacks {count} of its columns.";
    LACKS_MEND = "problem-plan-lacks-mend", "Add them, each machine with its own values from plate, drawing or catalogue. Their headings:\n{headings}\nWhat is the same on all your machines may stand under [fixed] instead. As an example, to write your own values over, what {machine} has:\n[fixed]\n{lines}";
} }

/// How often a machine is drawn again before the family is called impossible.
pub const MOST_ATTEMPTS: u32 = 2_000;

/// A family ready to draw from.
#[derive(Debug, Clone)]
pub struct Plan {
    /// What it was made from.
    pub family: Family,
    /// Those that the family's limits wait for come first.
    steps: Vec<Step>,
    /// How many those are.
    guarded: usize,
    at: Vec<u16>,
    /// The topics that the family draws of, each with its run of roots and a stream of its own.
    topics: Vec<(&'static str, Range<usize>)>,
    /// Roots drawn as a share of another, and of which.
    shares: Vec<(QuantityId, QuantityId)>,
    total_weight: f64,
    /// Of each machine that has a name, what belongs to its build and the table does not say, as drawn for it once.
    built: Vec<Vec<(QuantityId, f64)>>,
    samples: OnceLock<Vec<Case>>,
}

/// Another machine, and the roots in which a drawn one is to agree with it.
#[derive(Debug, Clone, Copy)]
struct Like<'a> {
    values: &'a [f64],
    held: &'a [QuantityId],
}

#[derive(Debug, Clone, Copy)]
struct Step {
    eval: Eval,
    from: u32,
    to: u32,
    gives: u16,
    by: RelationId,
}

impl Plan {
    /// Compiles `family`: orders the relations so that each finds its inputs ready.
    ///
    /// # Errors
    /// A [`Problem`] where a quantity is drawn that the family's other quantities already
    /// determine otherwise, or a limit is on a quantity that nothing determines.
    pub fn new(family: Family) -> Result<Self, Vec<Problem>> {
        let registry = Registry::get();
        let mut known = vec![false; registry.len()];
        let drawn = family.roots.iter().map(|(id, _)| *id);
        let pooled = family.pool.first().into_iter().flatten().map(|(id, _)| *id);
        let mut problems = Vec::new();
        for id in drawn.chain(pooled) {
            if known[id.index()] {
                problems.push(placed(family.place(id, None), told!(TWICE, "name" = id.get().id), told!(TWICE_MEND)));
            }
            known[id.index()] = true;
        }
        // What the family would know if its own table had the columns that it lacks: each problem that comes of their
        // being gone is the same one.
        let mut whole = known.clone();
        family.lacks().for_each(|id| whole[id.index()] = true);
        let mut rests_on_lacking = false;
        let mut is_lacking = |id: QuantityId, whole: &[bool]| {
            rests_on_lacking |= whole[id.index()];
            whole[id.index()]
        };
        for fault in &family.faults {
            for (id, _) in &fault.draws {
                if !known[id.index()] && !is_lacking(*id, &whole) {
                    problems.push(placed(
                        family.place(*id, Some(&fault.id)),
                        told!(FAULT_ALONE, "fault" = fault.id, "name" = id.get().id),
                        told!(FAULT_ALONE_MEND, "name" = id.get().id),
                    ));
                }
            }
        }
        let shares: Vec<_> = family.draws().filter_map(share).collect();
        for (id, of) in &shares {
            let is_share = shares.iter().any(|(share, _)| share == of);
            if is_share || !known[of.index()] && !is_lacking(*of, &whole) {
                let fault = family.faults.iter().map(|fault| family.place(*id, Some(&fault.id)));
                problems.push(placed(
                    family.place(*id, None).or_else(|| fault.flatten().next()),
                    told!(SHARE, "name" = id.get().id, "other" = of.get().id),
                    told!(SHARE_MEND, "other" = of.get().id),
                ));
            }
        }
        let (steps, at) = steps_from(&mut known);
        if family.lacks().next().is_some() {
            steps_from(&mut whole);
        }
        for limit in &family.limits {
            if !known[limit.quantity.index()] && !is_lacking(limit.quantity, &whole) {
                problems.push(Problem::at(
                    limit.span.clone(),
                    told!(UNDETERMINED, "name" = limit.quantity.get().id),
                    told!(UNDETERMINED_MEND),
                ));
            }
        }
        if cfg!(not(wordless)) {
            if rests_on_lacking {
                problems.push(lacking(&family, &known));
            }
            problems.extend(agree::disagreements(&family));
        }
        if !problems.is_empty() {
            return Err(problems);
        }
        let limited = family.limits.iter().map(|limit| limit.quantity);
        let (guards, _) = needs::waited_for(&steps, &at, limited);
        let guarded = guards.iter().filter(|guard| **guard).count();
        // A stable order: each step still finds its inputs ready, as what a guard waits for is a guard itself.
        let mut placed: Vec<_> = steps.into_iter().zip(guards).collect();
        placed.sort_by_key(|(_, guard)| !guard);
        let steps = placed.into_iter().map(|(step, _)| step).collect();
        let mut topics: Vec<(&'static str, Range<usize>)> = Vec::new();
        for (place, (id, _)) in family.roots.iter().enumerate() {
            match topics.last_mut() {
                Some((topic, roots)) if *topic == id.get().topic() => roots.end = place + 1,
                _ => topics.push((id.get().topic(), place..place + 1)),
            }
        }
        let shares = family.roots.iter().filter_map(share).collect();
        let total_weight = family.faults.iter().map(|fault| fault.weight).sum();
        let built = family.machines.iter().map(|name| roots::build_of(&family, name)).collect();
        Ok(Self { family, steps, guarded, at, topics, shares, total_weight, built, samples: OnceLock::new() })
    }

    /// How many relations a case runs through.
    pub fn len(&self) -> usize {
        self.steps.len()
    }

    /// Whether nothing follows from the family's roots.
    pub fn is_empty(&self) -> bool {
        self.steps.is_empty()
    }

    /// The relations a case runs through, in order.
    pub fn steps(&self) -> impl Iterator<Item = RelationId> + '_ {
        self.steps.iter().map(|step| step.by)
    }

    /// Whether the family determines `quantity`.
    pub fn determines(&self, quantity: QuantityId) -> bool {
        self.family.roots.iter().any(|(id, _)| *id == quantity)
            || self.family.pool.first().is_some_and(|row| row.iter().any(|(id, _)| *id == quantity))
            || self.steps.iter().any(|step| step.gives == quantity.0)
    }

    /// The machine of `seed`: the same on every platform.
    ///
    /// # Errors
    /// [`CannotDraw`] when [`MOST_ATTEMPTS`] machines in a row broke a limit.
    pub fn draw(&self, seed: u64) -> Result<Case, CannotDraw> {
        self.draw_with(seed, None)
    }

    /// Machines that stand for the family where it is looked at as a whole, always the same ones; drawn at first need.
    pub fn samples(&self) -> &[Case] {
        const SAMPLES: u64 = 64;
        self.samples.get_or_init(|| {
            let seeds = (0..SAMPLES).map(|sample| derive(0x5e77_1e5e_77ee, sample));
            // A family that cannot be drawn fails here once, not for every sample.
            seeds.map_while(|seed| self.draw(seed).ok()).collect()
        })
    }

    /// The machine of `seed` with exactly these faults (none for a healthy machine).
    ///
    /// # Errors
    /// As [`Plan::draw`].
    pub fn draw_with(&self, seed: u64, faults: Option<&[usize]>) -> Result<Case, CannotDraw> {
        self.draw_from(seed, self.faults_of(seed, faults), None, None)
    }

    /// The machine of `seed`, worked out only as far as the family's limits and `needs` go: what is refused there is
    /// cheap. [`Plan::complete`] makes it the machine that [`Plan::draw_with`] gives.
    ///
    /// # Errors
    /// As [`Plan::draw`].
    pub fn draw_needed(&self, seed: u64, faults: Option<&[usize]>, needs: &Needs) -> Result<Case, CannotDraw> {
        self.draw_from(seed, self.faults_of(seed, faults), None, Some(needs))
    }

    /// Works out `needs` of a machine whose roots were drawn for them; whether every calculation has a result.
    #[must_use]
    pub fn work_out(&self, case: &mut Case, needs: &Needs) -> bool {
        self.run_rest(Some(needs), &mut case.values).is_ok()
    }

    /// Works out everything of a machine drawn for less; whether every calculation has a result. Where one has none,
    /// [`Plan::draw_with`] passes this machine over.
    #[must_use]
    pub fn complete(&self, case: &mut Case) -> bool {
        self.attempt(derive(case.seed, u64::from(case.rejected)), None, None, case).is_ok()
    }

    /// Faults stay the same from attempt to attempt: those that break more limits do not get rarer.
    fn faults_of(&self, seed: u64, faults: Option<&[usize]>) -> Vec<usize> {
        faults.map_or_else(|| self.pick_faults(&mut Stream::new(seed, "faults")), <[usize]>::to_vec)
    }

    /// The machine of `seed` with exactly these faults that has the plates of `case`: the same row of its table, and the
    /// same values of the roots `held`, whatever else is drawn. Of what the limits do not ask for, only `needs` is worked
    /// out.
    ///
    /// # Errors
    /// As [`Plan::draw`].
    pub fn draw_like(
        &self,
        case: &Case,
        held: &[QuantityId],
        faults: &[usize],
        needs: &Needs,
        seed: u64,
    ) -> Result<Case, CannotDraw> {
        self.draw_from(seed, faults.to_vec(), Some(Like { values: &case.values, held }), Some(needs))
    }

    /// Whether `quantity` is a value to start from that no fault of the family changes.
    pub fn holds(&self, quantity: QuantityId) -> bool {
        self.family.roots.iter().any(|(id, _)| *id == quantity) && !self.redrawn(quantity)
    }

    fn draw_from(
        &self,
        seed: u64,
        faults: Vec<usize>,
        like: Option<Like<'_>>,
        needs: Option<&Needs>,
    ) -> Result<Case, CannotDraw> {
        let mut case = Case { seed, rejected: 0, faults, values: vec![f64::NAN; Registry::get().len()] };
        let mut broken = Broken::none(&self.family);
        if self.try_for(&mut case, like, needs, |_, limit, values| broken.count(&self.family, limit, values)) {
            Ok(case)
        } else {
            Err(self.cannot(&broken, seed, case.faults))
        }
    }

    /// Draws until the case's machine keeps every limit; `refuse` is told the seed of each attempt that does not, the place
    /// of the limit it failed on, and its values.
    fn try_for(
        &self,
        case: &mut Case,
        like: Option<Like<'_>>,
        needs: Option<&Needs>,
        mut refuse: impl FnMut(u64, Option<usize>, &[f64]),
    ) -> bool {
        for attempt in 0..MOST_ATTEMPTS {
            let seed = derive(case.seed, u64::from(attempt));
            match self.attempt(seed, like, needs, case) {
                Ok(()) => {
                    case.rejected = attempt;
                    return true;
                }
                Err(limit) => refuse(seed, limit, &case.values),
            }
        }
        false
    }

    /// The name of the machine whose row of the table the case comes from, where the table names its machines.
    pub fn machine_name(&self, case: &Case) -> Option<&str> {
        if self.family.machines.is_empty() {
            return None;
        }
        // What a fault of the case draws again is no longer the row's.
        let faults = || case.faults.iter().map(|fault| &self.family.faults[*fault]);
        let redrawn = |id: QuantityId| faults().any(|fault| fault.draws.iter().any(|(drawn, _)| *drawn == id));
        let fits =
            |row: &[(QuantityId, f64)]| row.iter().all(|(id, value)| case.values[id.index()] == *value || redrawn(*id));
        // Rows with the same values are told apart by what the seed drew; a machine like another one has the other's row.
        let drawn = self.row(derive(case.seed, u64::from(case.rejected)));
        let pool = &self.family.pool;
        let row =
            if pool.get(drawn).is_some_and(|row| fits(row)) { drawn } else { pool.iter().position(|row| fits(row))? };
        self.family.machines.get(row).map(String::as_str)
    }

    /// Fills `case` with one attempt; the place of the limit it broke, or `None` where a
    /// calculation refused, if it is no good. Beyond the limits only `needs` are worked out, or everything.
    fn attempt(
        &self,
        seed: u64,
        like: Option<Like<'_>>,
        needs: Option<&Needs>,
        case: &mut Case,
    ) -> Result<(), Option<usize>> {
        self.draw_roots(seed, like, needs, case);
        let values = &mut case.values;
        self.steps[..self.guarded].iter().try_for_each(|step| self.run(step, values))?;
        for (index, limit) in self.family.limits.iter().enumerate() {
            let value = values[limit.quantity.index()];
            if limit.is_asked(&case.faults) && !(value >= limit.at_least && value <= limit.at_most) {
                return Err(Some(index));
            }
        }
        self.run_rest(needs, values)
    }

    /// What the limits do not wait for.
    fn run_rest(&self, needs: Option<&Needs>, values: &mut [f64]) -> Result<(), Option<usize>> {
        match needs {
            None => self.steps[self.guarded..].iter().try_for_each(|step| self.run(step, values)),
            Some(needs) => needs.steps.iter().try_for_each(|step| self.run(&self.steps[usize::from(*step)], values)),
        }
    }

    fn run(&self, step: &Step, values: &mut [f64]) -> Result<(), Option<usize>> {
        let at = &self.at[step.from as usize..step.to as usize];
        values[usize::from(step.gives)] = work(step.eval, &Given { values, at }).map_err(|_| None)?;
        Ok(())
    }

    /// No fault, one, or two that do not change the same quantity.
    fn pick_faults(&self, stream: &mut Stream) -> Vec<usize> {
        // All four numbers are always drawn, so that a share changed in the file does not shift the others.
        let (healthy, pair) = (stream.unit(), stream.unit());
        let picks = [stream.unit(), stream.unit()];
        let mut faults = Vec::new();
        if self.family.faults.is_empty() || healthy < self.family.healthy {
            return faults;
        }
        for pick in &picks[..if pair < self.family.pairs { 2 } else { 1 }] {
            let mut rest = pick * self.total_weight;
            let found = self.family.faults.iter().position(|fault| {
                rest -= fault.weight;
                rest < 0.0
            });
            let fault = found.unwrap_or(self.family.faults.len() - 1);
            let beside =
                |other: &usize| *other != fault && !self.family.faults[*other].clashes(&self.family.faults[fault]);
            if faults.iter().all(beside) {
                faults.push(fault);
            }
        }
        faults.sort_unstable();
        faults
    }
}

/// The relations that follow from what is `known`, in order, and the places of their inputs; what they give is then known.
/// What follows from the `known` quantities, and from which at once, each after those that it builds on; all are known then.
pub(crate) fn follow(known: &mut [bool]) -> Vec<(QuantityId, Vec<QuantityId>)> {
    let (steps, at) = steps_from(known);
    let from = |step: &Step| at[step.from as usize..step.to as usize].iter().map(|input| QuantityId(*input)).collect();
    steps.iter().map(|step| (QuantityId(step.gives), from(step))).collect()
}

fn steps_from(known: &mut [bool]) -> (Vec<Step>, Vec<u16>) {
    let (mut steps, mut at) = (Vec::new(), Vec::new());
    // The preferred relation whose inputs are ready goes next, until none is left.
    let relations = Registry::get().relations().iter();
    let mut order: Vec<_> = relations.filter(|linked| linked.relation.role != Role::Question).collect();
    order.sort_by_key(|linked| (linked.relation.rank, linked.id));
    while let Some(next) = (order.iter())
        .position(|linked| !known[linked.gives.index()] && linked.at.iter().all(|&input| known[usize::from(input)]))
    {
        let linked = order.remove(next);
        known[linked.gives.index()] = true;
        let from = at.len() as u32;
        at.extend_from_slice(&linked.at);
        steps.push(Step {
            eval: linked.relation.eval,
            from,
            to: at.len() as u32,
            gives: linked.gives.0,
            by: linked.id,
        });
    }
    (steps, at)
}

/// All that the family's own table lacks, once, with what can be copied to mend it.
fn lacking(family: &Family, known: &[bool]) -> Problem {
    let drawn = |id: QuantityId| family.faults.iter().flat_map(|fault| &fault.draws).any(|(drawn, _)| *drawn == id);
    // What follows from the family's own values need not stand in a table.
    let columns = family.lacks.columns.iter().filter(|(id, _)| !known[id.index()] || drawn(*id));
    let columns: Vec<_> = columns.copied().collect();
    let headings: Vec<_> = columns.iter().map(|(id, _)| heading(*id, family.told_in)).collect();
    let lines: Vec<_> = columns.iter().map(|(id, value)| fixed_line(*id, *value, family.told_in)).collect();
    Problem::at(
        family.lacks.span.clone(),
        match columns.len() {
            1 => told!(LACKS_ONE, "family" = family.lacks.of),
            count => told!(LACKS, "family" = family.lacks.of, "count" = count.to_string()),
        },
        told!(LACKS_MEND, "headings" = headings.join(","), "machine" = family.lacks.whose, "lines" = lines.join("\n"),),
    )
}

/// A root that is drawn as a share, and of which.
fn share((id, draw): &(QuantityId, Draw)) -> Option<(QuantityId, QuantityId)> {
    if let Draw::Share { of, .. } | Draw::ShareAmong { of, .. } = draw { Some((*id, *of)) } else { None }
}

/// A problem at `span`, or of the file as a whole where another file is at fault.
fn placed(span: Option<Range<usize>>, what: impl Into<String>, mend: impl Into<String>) -> Problem {
    Problem { span, what: what.into(), mend: mend.into() }
}

#[cfg(test)]
mod tests;
