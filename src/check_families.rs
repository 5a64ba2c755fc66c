//! What `check` finds in families: machines that cannot be drawn or seldom are, columns that a table lacks, verdicts that go
//! against every sound machine.

use std::collections::{BTreeMap, BTreeSet};

use drivecourse_machine::chance::derive;
use drivecourse_machine::{Case, Kind, Plan, Problem, QuantityId, Registry, heading, messages};
use drivecourse_quiz::Bank;

use crate::check::{Check, Found};
use crate::{bank, undrawable};

messages! { pub(crate) SAYS {
    LACKS_COLUMN = "check-lacks-column", "The table of machines has no column {columns}; what would need it is not asked of this family.";
    LACKS_COLUMNS = "check-lacks-columns", "The table of machines has no column {columns}; what would need them is not asked of this family.";
    LACKS_COLUMN_MEND = "check-lacks-column-mend", "Add what you know of your machines.";
    WASTEFUL_FAMILY = "check-wasteful", "{rate} machines are rejected for each one kept; {most}.";
    WASTEFUL_UNDRAWN = "check-wasteful-undrawn", "{rate} machines are rejected for each one kept; {most}. {count} of {all} machines could not be drawn at all.";
    WASTEFUL_MEND = "check-wasteful-mend", "Narrow the draws that break it, or widen the limit.";
    FAVOURED = "check-favoured", "{share} % of the machines kept are {machine}; an even share of the table would be {even} %. What rejects the others most: {most}.";
    FAVOURED_MEND = "check-favoured-mend", "Mend the values of the others that break it, or widen the limit; `drivecourse look {family} --spread 300` shows the shares.";
    ALWAYS = "check-always", "Every sound machine of this family has {id} (“{name}”) at “{verdict}”; no sound machine of the program's own families has that.";
    ALWAYS_OF = "check-always-of", "Every sound machine after {machines} has {id} (“{name}”) at “{verdict}”; no sound machine of the program's own families has that.";
    LOOK_AT = "check-look-at", "If your drive is meant so, leave it. If not, look at what it follows from: {from}.";
} }

/// Machines drawn from each family to see how many it rejects.
const MACHINES: u64 = 200;
/// Rejected machines for each one kept from which on a family is called wasteful.
const WASTEFUL: f64 = 5.0;
/// Sound machines drawn of each row of a table, or of a family without one, to see what is said of them.
const SOUND: u64 = 12;

impl Check<'_> {
    /// Draws machines from every family: of each sort that it has, and at random.
    pub(crate) fn families(&mut self, bank: &Bank) {
        for plan in &bank.plans {
            let path = format!("scenarios/families/{}.toml", plan.family.id);
            // From this one not even the first machine could be drawn, and that is said.
            if self.found.iter().any(|found| found.file == self.assets.shown(&path)) {
                continue;
            }
            let undrawable = undrawable::sorts(plan);
            if !undrawable.is_empty() {
                let told = undrawable.into_iter().map(|error| Found::from(bank::cannot_draw(self.assets, plan, error)));
                self.found.extend(told);
                continue;
            }
            let text = self.assets.scenarios.get(&path["scenarios/".len()..]);
            let text = text.map_or("".into(), |bytes| String::from_utf8_lossy(bytes)).into_owned();
            let lacks: Vec<_> = plan.family.lacks().filter(|id| !plan.determines(*id)).map(heading).collect();
            if !lacks.is_empty() {
                let what = if lacks.len() == 1 { LACKS_COLUMN } else { LACKS_COLUMNS };
                let what = what.say(&[("columns", &lacks.join(", "))]);
                self.note(&path, &text, Problem::whole(what, LACKS_COLUMN_MEND.text()));
            }
            // Now and then a machine cannot be drawn, one with two faults, say: that is a question of rate.
            let rejections = plan.rejections((0..MACHINES).map(|machine| derive(0xc4ec, machine)));
            let own = bank::is_own(self.assets, &plan.family.id);
            let span_of = |worst: Option<usize>| {
                let span = worst.map(|place| plan.family.limits[place].span.clone());
                span.filter(|span| span.end <= text.len())
            };
            for favoured in rejections.favoured.iter().filter(|_| own) {
                let percent = |share: f64| format!("{:.0}", share * 100.0);
                let machine = plan.family.machines.get(favoured.row).cloned();
                let machine = machine.unwrap_or_else(|| (favoured.row + 1).to_string());
                let what = FAVOURED.say(&[
                    ("share", &percent(favoured.share)),
                    ("machine", &machine),
                    ("even", &percent(1.0 / plan.family.pool.len() as f64)),
                    ("most", &favoured.most),
                ]);
                let mend = FAVOURED_MEND.say(&[("family", &plan.family.id)]);
                self.notice(&path, &text, Problem { span: span_of(favoured.worst), what, mend });
            }
            if rejections.rate() <= WASTEFUL {
                continue;
            }
            let span = span_of(rejections.worst);
            let (rate, most) = (format!("{:.0}", rejections.rate()), rejections.most.to_string());
            let what = if rejections.undrawn.is_empty() { WASTEFUL_FAMILY } else { WASTEFUL_UNDRAWN };
            let (count, all) = (rejections.undrawn.len().to_string(), MACHINES.to_string());
            let what = what.say(&[("rate", &rate), ("most", &most), ("count", &count), ("all", &all)]);
            let problem = Problem { span, what, mend: WASTEFUL_MEND.text().into() };
            // What an author can mend is always told; the program's own families are there to be taken or left.
            if own { self.notice(&path, &text, problem) } else { self.note(&path, &text, problem) }
        }
    }

    /// Looks for verdicts that go against every sound machine of a family of the module, or of a row of its table: a chain
    /// too small for its motor, a limit that no housing keeps. What a sound machine may be is taken from the program's own.
    pub(crate) fn verdicts(&mut self, bank: &Bank) {
        let own: Vec<&Plan> = bank.plans.iter().filter(|plan| bank::is_own(self.assets, &plan.family.id)).collect();
        if own.is_empty() {
            return;
        }
        let verdicts = Registry::get().quantities().filter(|id| id.get().id.ends_with("verdict"));
        let verdicts: Vec<QuantityId> = verdicts.filter(|id| id.get().kind == Kind::Choice).collect();
        let standard = bank::standard(self.assets);
        let mut usual: BTreeSet<(QuantityId, usize)> = BTreeSet::new();
        for case in standard.plans.iter().flat_map(sound) {
            usual.extend(verdicts.iter().filter_map(|id| Some((*id, case.value(*id)? as usize))));
        }
        // A verdict that no family of the program comes to cannot be held against them.
        let known = |id: &QuantityId| usual.iter().any(|(known, _)| known == id);
        for plan in own {
            let rows = rows(plan);
            let mut against: BTreeMap<(QuantityId, usize), Vec<String>> = BTreeMap::new();
            for (name, cases) in &rows {
                for id in verdicts.iter().filter(|id| known(id)) {
                    let mut values = cases.iter().map(|case| case.value(*id).map(|value| value as usize));
                    let Some(Some(first)) = values.next() else { continue };
                    if !usual.contains(&(*id, first)) && values.all(|value| value == Some(first)) {
                        against.entry((*id, first)).or_default().push(name.clone());
                    }
                }
            }
            let path = format!("scenarios/families/{}.toml", plan.family.id);
            for ((id, verdict), names) in against {
                let quantity = id.get();
                let steps = plan.steps().map(|step| step.get()).find(|linked| linked.gives == id);
                let from: Vec<_> =
                    steps.iter().flat_map(|linked| linked.inputs()).map(|input| input.get().id).collect();
                let says = if names.len() == rows.len() { ALWAYS } else { ALWAYS_OF };
                let what = says.say(&[
                    ("id", quantity.id),
                    ("name", quantity.name),
                    ("verdict", quantity.labels.get(verdict).copied().unwrap_or("?")),
                    ("machines", &names.join(", ")),
                ]);
                let mend = LOOK_AT.say(&[("from", &from.join(", "))]);
                let notice = self.placed(&path, "", Problem::whole(what, mend));
                self.notices.push(notice);
            }
        }
    }
}

/// Some machines of `plan` with nothing wrong, always the same ones; none of a family that has no such machine.
fn sound(plan: &Plan) -> Vec<Case> {
    let has = plan.family.healthy > 0.0 || plan.family.faults.is_empty();
    let seeds = (0..SOUND).filter(|_| has).map(|seed| derive(0xc4ee, seed));
    seeds.map_while(|seed| plan.draw_with(seed, Some(&[])).ok()).collect()
}

/// The rows of a table of machines, each by its name with some sound machines of it; the family as a whole without one.
fn rows(plan: &Plan) -> Vec<(String, Vec<Case>)> {
    if plan.family.machines.is_empty() {
        return vec![(plan.family.id.clone(), sound(plan))];
    }
    let alone = |(name, row): (&String, &Vec<_>)| {
        let mut family = plan.family.clone();
        (family.pool, family.machines) = (vec![row.clone()], vec![name.clone()]);
        Some((name.clone(), sound(&Plan::new(family).ok()?)))
    };
    plan.family.machines.iter().zip(&plan.family.pool).filter_map(alone).collect()
}
