//! What `check` finds in the verdicts on a module's own machines: one that goes against every sound machine, a fault that shows
//! in none.

use std::collections::{BTreeMap, BTreeSet};

use drivecourse_machine::chance::derive;
use drivecourse_machine::{Case, Kind, Plan, Problem, QuantityId, Registry, messages, quoted};
use drivecourse_quiz::Bank;

use crate::bank;
use crate::check::Check;
use crate::own_family::{Own, inputs};

messages! { pub(crate) SAYS {
    ALWAYS = "check-always", "Every sound machine of this family has {id} (“{name}”) at “{verdict}”; no sound machine of the program's own families has that.";
    OFTEN = "check-often", "Sound machines have {id} (“{name}”) at “{verdict}” more than now and then: {machines}; no sound machine of the program's own families has that.";
    OFTEN_OF = "check-often-of", "{machine} ({count} of {all})";
    ALWAYS_OF = "check-always-of", "Every sound machine after {machines} has {id} (“{name}”) at “{verdict}”; no sound machine of the program's own families has that.";
    LOOK_AT_STARTS = "check-look-at-starts", "If your drive is meant so, leave it. If not, look at what it follows from: {from}. That starts from {starts}.";
    LOOK_AT = "check-look-at", "If your drive is meant so, leave it. If not, look at what it follows from: {from}.";
    HIDDEN = "check-hidden", "The fault \"{fault}\" ({name}) shows in no verdict on a machine of this family; on machines of the program's own families it shows in {verdicts}.";
    HIDDEN_MEND = "check-hidden-mend", "Nobody can find it so. Look at the values that it is judged by, and mend the one that hides it: {from}. Only where your drive cannot have the fault, leave it out: without = [\"{fault}\"].";
    SHARED = "check-shared", "Of {all} sound machines of this family, {count} have {id} (“{of}”) at “{verdict}”, as those with the fault \"{fault}\" ({name}) have: nobody can find the fault by that.";
    SHARED_MEND = "check-shared-mend", "Mend the limit, or narrow what sound machines are drawn from, so that they keep it. It follows from: {from}. Or have sound machines that break it drawn again:\n{lines}";
} }

/// Sound machines drawn of each row of a table, or of a family without one, to see what is said of them.
const SOUND: u64 = 12;

/// One out of so many sound machines of a row with such a verdict is worth a word.
const OFTEN_OUT_OF: usize = 4;

impl Check<'_> {
    /// Looks for verdicts that go against every sound machine of a family of the module, or of a row of its table: a chain
    /// too small for its motor, a limit that no housing keeps. What a sound machine may be is taken from the program's own.
    /// Gives those found, each with its family.
    pub(crate) fn verdicts(&mut self, bank: &Bank) -> BTreeSet<(String, QuantityId)> {
        let mut told = BTreeSet::new();
        let own: Vec<&Plan> = bank.plans.iter().filter(|plan| bank::is_own(self.assets, &plan.family.id)).collect();
        if own.is_empty() {
            return told;
        }
        let verdicts = verdicts();
        let standard = bank::standard(self.assets);
        let mut usual: BTreeSet<(QuantityId, usize)> = BTreeSet::new();
        for case in standard.plans.iter().flat_map(sound) {
            usual.extend(verdicts.iter().filter_map(|id| Some((*id, case.value(*id)? as usize))));
        }
        for plan in own {
            let rows = rows(plan);
            let own = Own::of(self.assets, bank, &standard, plan);
            self.follows(&own, &rows);
            self.doubts(&own, &rows);
            self.inherited(&own, &rows);
            self.unusual(&own, &rows);
            self.left_out(&own);
            // Whatever is judged by such a window follows from that.
            if self.swapped(&own, &rows) {
                told.extend(verdicts.iter().map(|id| (plan.family.id.clone(), *id)));
                continue;
            }
            for met in unheard(&rows, &verdicts, &usual) {
                self.verdict(&own, &rows, &met);
                if met.always {
                    told.insert((plan.family.id.clone(), met.id));
                }
            }
        }
        told
    }

    /// Tells of a verdict that sound machines of a family come to and none of the program's own does.
    fn verdict(&mut self, own: &Own<'_>, rows: &[(String, Vec<Case>)], met: &Unheard<'_>) {
        let Unheard { id, verdict, ref names, always } = *met;
        let quantity = id.get();
        let from = inputs(own.plan, id);
        let says = match (always, names.len() == rows.len()) {
            (true, true) => ALWAYS,
            (true, false) => ALWAYS_OF,
            (false, _) => OFTEN,
        };
        let what = says.say(&[
            ("id", quantity.id),
            ("name", quantity.name),
            ("verdict", quantity.labels.get(verdict).copied().unwrap_or("?")),
            ("machines", &names.iter().map(|(_, said)| said.as_str()).collect::<Vec<_>>().join(", ")),
        ]);
        let starts = own.plan.starts(&[id]);
        let starts: Vec<_> = starts.iter().filter(|id| !from.contains(id)).map(|id| id.get().id).collect();
        let says = if starts.is_empty() { LOOK_AT } else { LOOK_AT_STARTS };
        // With the numbers of a machine that has it: how far it is from right is half of the mend.
        let met = |case: &&Case| case.value(id) == Some(verdict as f64);
        let met = rows.iter().find_map(|(name, cases)| Some((name, cases.iter().find(met)?)));
        let valued = met.map(|(name, case)| {
            let values = own.inputs_on(case, id);
            if names.len() == rows.len() && always { values } else { format!("{values} ({name})") }
        });
        let mut mend = says.say(&[("from", &valued.unwrap_or_default()), ("starts", &starts.join(", "))]);
        let has = |rows: &[(String, Vec<Case>)]| {
            let cases = rows.iter().flat_map(|(_, cases)| cases);
            cases.filter(|case| case.value(id) == Some(verdict as f64)).count()
        };
        let cause = own.cause(&[id], |usual| has(&self::rows(usual)) * 2 < has(rows));
        if cause.is_none() && starts.is_empty() {
            own.columns(id).into_iter().for_each(|columns| mend = format!("{mend} {columns}"));
        }
        let problem = own.problem(cause, what, mend);
        // Of some machines of a table nothing is wrong with what all have in common, unless that is found to be behind it.
        let row = names.first().filter(|_| cause.is_none() && names.len() < rows.len());
        match row.and_then(|(name, _)| own.row(self.assets, name)) {
            Some((path, text, span)) => self.notice(&path, &text, Problem { span, ..problem }),
            None => self.notice(&own.path, &own.text, problem),
        }
    }

    /// Looks for faults of a family of the module that show in no verdict, and do on machines of the program's family that has
    /// them: a limit of the plant's own that is out of their reach. A verdict that goes against every sound machine of the family
    /// hides them too, and is told of already. Looks then for verdicts that a limit puts out of reach without hiding a fault.
    pub(crate) fn hidden_faults(&mut self, bank: &Bank, against: &BTreeSet<(String, QuantityId)>) {
        let verdicts = verdicts();
        let standard = bank::standard(self.assets);
        for plan in bank.plans.iter().filter(|plan| bank::is_own(self.assets, &plan.family.id)) {
            let mut told = Vec::new();
            for (place, fault) in plan.family.faults.iter().enumerate() {
                let usual = standard.plans.iter().find_map(|other| {
                    let place = other.family.faults.iter().position(|known| known == fault)?;
                    Some((other, shown_by(other, place, &verdicts)))
                });
                let Some((usual, shown)) = usual else { continue };
                // Of those that this family does not come to, nothing can be said.
                let shown: BTreeSet<_> = shown.into_iter().filter(|id| plan.determines(*id)).collect();
                let is_told = shown.iter().any(|id| against.contains(&(plan.family.id.clone(), *id)));
                if !shown.is_empty() && !is_told && shown_by(plan, place, &verdicts).is_empty() {
                    told.push((place, fault, usual, shown));
                }
            }
            let own = Own::of(self.assets, bank, &standard, plan);
            let mut said: BTreeSet<_> =
                against.iter().filter(|(family, _)| *family == plan.family.id).map(|(_, id)| *id).collect();
            for (place, fault, usual, shown) in told {
                said.extend(&shown);
                let mends = |usual: &Plan| !shown_by(usual, place, &verdicts).is_empty();
                if let Some((id, problem)) = shown.iter().find_map(|id| Some((*id, shared(&own, place, usual, *id)?))) {
                    let problem = own.problem(own.cause(&[id], mends), problem.what, problem.mend);
                    self.notice(&own.path, &own.text, problem);
                    continue;
                }
                let names = shown.iter().map(|id| format!("{} (“{}”)", id.get().id, id.get().name)).collect::<Vec<_>>();
                let from: BTreeSet<_> = shown.iter().flat_map(|id| inputs(plan, *id)).map(|id| id.get().id).collect();
                let what = HIDDEN.say(&[("fault", &fault.id), ("name", &fault.name), ("verdicts", &names.join(", "))]);
                let from = from.into_iter().collect::<Vec<_>>().join(", ");
                let mend = HIDDEN_MEND.say(&[("from", &from), ("fault", &fault.id)]);
                let shown: Vec<_> = shown.into_iter().collect();
                let cause = own.cause(&shown, mends);
                self.notice(&own.path, &own.text, own.problem(cause, what, mend));
            }
            self.never(&own, &standard, &said);
            self.far(&own);
        }
    }
}

/// A verdict that sound machines come to and none of the program's own does.
struct Unheard<'r> {
    id: QuantityId,
    verdict: usize,
    /// The machines by their names, and as they are told of.
    names: Vec<(&'r str, String)>,
    /// Whether every sound machine of these is so, rather than some.
    always: bool,
}

/// The verdicts on the sound machines of `rows` that are none of the `usual` ones: first those on every machine of a row.
fn unheard<'r>(
    rows: &'r [(String, Vec<Case>)],
    verdicts: &[QuantityId],
    usual: &BTreeSet<(QuantityId, usize)>,
) -> Vec<Unheard<'r>> {
    // A verdict that no family of the program comes to cannot be held against them.
    let known = |id: &QuantityId| usual.iter().any(|(known, _)| known == id);
    let mut against: BTreeMap<(QuantityId, usize), Vec<(&str, String)>> = BTreeMap::new();
    let mut often = against.clone();
    for (name, cases) in rows {
        for id in verdicts.iter().filter(|id| known(id)) {
            let values = cases.iter().filter_map(|case| case.value(*id).map(|value| value as usize));
            let mut counts: BTreeMap<usize, usize> = BTreeMap::new();
            values.filter(|value| !usual.contains(&(*id, *value))).for_each(|value| {
                *counts.entry(value).or_default() += 1;
            });
            for (value, count) in counts {
                if count == cases.len() {
                    against.entry((*id, value)).or_default().push((name, name.clone()));
                } else if count * OFTEN_OUT_OF >= cases.len() {
                    let (count, all) = (count.to_string(), cases.len().to_string());
                    let of = OFTEN_OF.say(&[("machine", name), ("count", &count), ("all", &all)]);
                    often.entry((*id, value)).or_default().push((name, of));
                }
            }
        }
    }
    let told = |always: bool| {
        move |((id, verdict), names): ((QuantityId, usize), Vec<(&'r str, String)>)| Unheard {
            id,
            verdict,
            names,
            always,
        }
    };
    against.into_iter().map(told(true)).chain(often.into_iter().map(told(false))).collect()
}

/// Every verdict that the program knows.
pub(crate) fn verdicts() -> Vec<QuantityId> {
    let named = Registry::get().quantities().filter(|id| id.get().id.ends_with("verdict"));
    named.filter(|id| id.get().kind == Kind::Choice).collect()
}

/// The verdicts in which most machines with this fault differ from every sound one.
pub(crate) fn shown_by(plan: &Plan, fault: usize, verdicts: &[QuantityId]) -> BTreeSet<QuantityId> {
    let sound = sound(plan);
    let faulty = faulty(plan, fault);
    let differs = |case: &Case, id: QuantityId| {
        case.value(id).is_some_and(|value| sound.iter().all(|sound| sound.value(id) != Some(value)))
    };
    let shows = |id: &QuantityId| faulty.iter().filter(|case| differs(case, *id)).count() * 2 > faulty.len();
    verdicts.iter().copied().filter(shows).collect()
}

/// That sound machines of `plan` break the limit of the verdict `id` as those with this `fault` do, which so shows no more; `usual`
/// is a family in which none does. `None` where it is otherwise: a limit out of reach hides a fault too.
fn shared(own: &Own<'_>, fault: usize, usual: &Plan, id: QuantityId) -> Option<Problem> {
    let plan = own.plan;
    let value = |case: &Case| case.value(id).map(|value| value as usize);
    let kept: BTreeSet<usize> = sound(usual).iter().filter_map(value).collect();
    let cases = sound(plan);
    let mut met: BTreeMap<usize, usize> = BTreeMap::new();
    let against =
        faulty(plan, fault).iter().filter_map(value).filter(|value| !kept.contains(value)).collect::<Vec<_>>();
    against.iter().for_each(|value| *met.entry(*value).or_default() += 1);
    let (verdict, _) = met.into_iter().max_by_key(|(_, count)| *count)?;
    let breaks: Vec<&Case> = cases.iter().filter(|case| value(case) == Some(verdict)).collect();
    let quantity = id.get();
    let (fault, first) = (&plan.family.faults[fault], breaks.first()?);
    let what = SHARED.say(&[
        ("all", &cases.len().to_string()),
        ("count", &breaks.len().to_string()),
        ("id", quantity.id),
        ("of", quantity.name),
        ("verdict", quantity.labels.get(verdict)?),
        ("fault", &fault.id),
        ("name", &fault.name),
    ]);
    // A bound has no holes: what lies between two verdicts of sound machines is one of theirs.
    let (low, high) = (*kept.first()?, *kept.last()?);
    let bound = |name: &str, place: usize, is_end: bool| match is_end {
        true => String::new(),
        false => format!("\n{name} = {}", quoted(quantity.choices[place])),
    };
    let lines = format!(
        "[[limit]]\nquantity = {}{}{}\nhealthy = true",
        quoted(quantity.id),
        bound("at_least", low, low == 0),
        bound("at_most", high, high + 1 == quantity.choices.len()),
    );
    Some(Problem::whole(what, SHARED_MEND.say(&[("from", &own.inputs_on(first, id)), ("lines", &lines)])))
}

/// Some machines of `plan` with this fault, always the same ones.
fn faulty(plan: &Plan, fault: usize) -> Vec<Case> {
    let seeds = (0..SOUND).map(|seed| derive(0xc4ef, seed));
    seeds.map_while(|seed| plan.draw_with(seed, Some(&[fault])).ok()).collect()
}

/// Some machines of `plan` with nothing wrong, always the same ones; none of a family that has no such machine.
fn sound(plan: &Plan) -> Vec<Case> {
    let has = plan.family.healthy > 0.0 || plan.family.faults.is_empty();
    let seeds = (0..SOUND).filter(|_| has).map(|seed| derive(0xc4ee, seed));
    seeds.map_while(|seed| plan.draw_with(seed, Some(&[])).ok()).collect()
}

/// Each machine of the family's table by its name, with the family as it were if it had that one alone.
pub(crate) fn each_alone(plan: &Plan) -> impl Iterator<Item = (&str, Plan)> {
    let alone = |(name, row): (&'_ String, &Vec<_>)| {
        let mut family = plan.family.clone();
        (family.pool, family.machines) = (vec![row.clone()], vec![name.clone()]);
        Plan::new(family).ok()
    };
    let machines = plan.family.machines.iter().zip(&plan.family.pool);
    machines.filter_map(move |machine| Some((machine.0.as_str(), alone(machine)?)))
}

/// The rows of a table of machines, each by its name with some sound machines of it; the family as a whole without one.
pub(crate) fn rows(plan: &Plan) -> Vec<(String, Vec<Case>)> {
    if plan.family.machines.is_empty() {
        return vec![(plan.family.id.clone(), sound(plan))];
    }
    each_alone(plan).map(|(name, alone)| (name.to_owned(), sound(&alone))).collect()
}
