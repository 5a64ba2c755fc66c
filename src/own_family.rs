//! A family of an author's own beside the one that it is like: what its file and its table give and where, and which of its
//! values is behind what is found: the one that, put back to what it is in the other family, makes the finding go away.

use core::ops::Range;
use std::collections::VecDeque;

use drivecourse_machine::{Case, Draw, Family, OwnTable, Plan, Problem, QuantityId, System, amount, messages, quoted};
use drivecourse_quiz::Bank;
use drivecourse_quiz::response::decode;

use crate::assets::Assets;

messages! { pub(crate) SAYS {
    HERE = "check-here", "{id} is {value} here.";
    FROM_TO = "check-from-to", "{low} to {high}";
    TABLE_STARTS = "check-table-starts", "In your table it starts from {columns}.";
} }

/// Columns that are still told one by one.
const MOST_COLUMNS: usize = 8;

/// A file, its text, and a place in it in bytes.
pub(crate) type Place = (String, String, Option<Range<usize>>);

/// A family of the module, with the file that says what is its own.
pub(crate) struct Own<'a> {
    pub(crate) plan: &'a Plan,
    /// Its file: `scenarios/families/our-drive.toml`.
    pub(crate) path: String,
    pub(crate) text: String,
    /// The family that it is like.
    pub(crate) pattern: Option<&'a Plan>,
}

impl<'a> Own<'a> {
    /// The family of `plan`; the one that it is like is looked for in the module's `bank` first, then in the `standard` one.
    pub(crate) fn of(assets: &Assets, bank: &'a Bank, standard: &'a Bank, plan: &'a Plan) -> Self {
        let text = text_of(assets, &format!("{}.toml", plan.family.id));
        let like = Family::likeness(&text).map(|like| like.into_inner());
        let called = |plans: &'a [Plan]| plans.iter().find(|other| Some(&other.family.id) == like.as_ref());
        // One that takes the place of another of its name is like that, and not like itself.
        let beside = called(&bank.plans).filter(|other| other.family.id != plan.family.id);
        let pattern = beside.or_else(|| called(&standard.plans));
        Self { plan, path: format!("scenarios/families/{}.toml", plan.family.id), text, pattern }
    }

    /// Whether the family's own file fixes or draws it; a table of machines is another matter.
    pub(crate) fn names(&self, id: QuantityId) -> bool {
        let roots = &self.plan.family.roots;
        self.plan.family.place(id, None).is_some() && roots.iter().any(|(root, _)| *root == id)
    }

    /// Whether the family's own file or table gives it.
    pub(crate) fn gives(&self, id: QuantityId) -> bool {
        let in_table = |table: &OwnTable| table.columns.iter().any(|(column, _)| *column == id);
        self.names(id) || self.plan.family.table.as_ref().is_some_and(in_table)
    }

    /// The file that gives `id`, its text, and the place in it: of one machine the cell of its row, else the column's heading,
    /// or the line of the family's file.
    pub(crate) fn place(&self, assets: &Assets, id: QuantityId, machine: Option<&str>) -> Place {
        let Some(table) = self.plan.family.table.as_ref().filter(|_| !self.names(id)) else {
            return (self.path.clone(), self.text.clone(), self.span(id));
        };
        let row = machine.and_then(|machine| self.plan.family.machines.iter().position(|name| name == machine));
        let cells = row.map_or(Some(&table.columns), |row| table.cells.get(row));
        let cell = cells.and_then(|cells| cells.iter().find(|(column, _)| *column == id));
        self.in_table(assets, table, cell.map(|(_, span)| span.clone()))
    }

    /// As [`Self::place`], of the whole row of a machine; `None` where its family has no such row in a table of its own.
    pub(crate) fn row(&self, assets: &Assets, machine: &str) -> Option<Place> {
        let table = self.plan.family.table.as_ref()?;
        let row = self.plan.family.machines.iter().position(|name| name == machine)?;
        Some(self.in_table(assets, table, Some(table.rows.get(row)?.clone())))
    }

    fn in_table(&self, assets: &Assets, table: &OwnTable, span: Option<Range<usize>>) -> Place {
        let text = text_of(assets, &table.file);
        let span = span.filter(|span| span.end <= text.len());
        (format!("scenarios/families/{}", table.file), text, span)
    }

    /// The family with `id` as it is in the one that it is like; `None` where that cannot be.
    pub(crate) fn with_usual(&self, id: QuantityId) -> Option<Plan> {
        self.with_all_usual(&[id])
    }

    /// As [`Self::with_usual`], of several at once, in the table of machines too.
    fn with_all_usual(&self, ids: &[QuantityId]) -> Option<Plan> {
        let mut family = self.plan.family.clone();
        for id in ids {
            let pattern = self.pattern.filter(|pattern| pattern.determines(*id) && !pattern.tabled(*id))?;
            family.pool.iter_mut().for_each(|row| row.retain(|(column, _)| column != id));
            family.roots.retain(|(root, _)| root != id);
            // Where there is no such root, it follows from others there.
            let usual = pattern.family.roots.iter().find(|(root, _)| root == id);
            family.roots.extend(usual.cloned());
        }
        family.roots.sort_by_key(|(root, _)| *root);
        Plan::new(family).ok()
    }

    /// The values among `those` of the family's own that are behind what is found in `of`, what is fewest calculations away
    /// first: one that mends it alone when it is as in the other family, else as many as it takes. None where that does not
    /// mend it.
    pub(crate) fn behind(
        &self,
        of: &[QuantityId],
        those: impl Fn(QuantityId) -> bool,
        mends: impl Fn(&Plan) -> bool,
    ) -> Vec<QuantityId> {
        let own = starts(self.plan, of).into_iter().filter(|id| those(*id) && self.with_usual(*id).is_some());
        let own: Vec<_> = own.collect();
        let mended = |ids: &[QuantityId]| self.with_all_usual(ids).is_some_and(|usual| mends(&usual));
        if let Some(one) = own.iter().find(|id| mended(&[**id])) {
            return vec![*one];
        }
        if own.len() < 2 || !mended(&own) {
            return Vec::new();
        }
        // Those that it takes: without any of them it is not mended.
        let mut needed = own.clone();
        for id in own.iter().rev() {
            let rest: Vec<_> = needed.iter().copied().filter(|other| other != id).collect();
            if mended(&rest) {
                needed = rest;
            }
        }
        needed
    }

    /// The one value that the family's file itself fixes or draws which is behind what is found in `verdicts`: one that a verdict
    /// is judged by before one that is further off. `mends` tells whether nothing is found in a family that has it otherwise.
    pub(crate) fn cause(&self, verdicts: &[QuantityId], mends: impl Fn(&Plan) -> bool) -> Option<QuantityId> {
        let direct: Vec<_> = verdicts.iter().flat_map(|id| inputs(self.plan, *id)).collect();
        let (near, far): (Vec<_>, Vec<_>) =
            starts(self.plan, verdicts).into_iter().filter(|id| self.names(*id)).partition(|id| direct.contains(id));
        for tier in [near, far] {
            let matter: Vec<_> =
                tier.into_iter().filter(|id| self.with_usual(*id).is_none_or(|usual| mends(&usual))).collect();
            match matter.as_slice() {
                [] => {}
                [one] => return Some(*one),
                _ => return None,
            }
        }
        None
    }

    /// What is found, at the line of the value behind it, which is said where it is fixed.
    pub(crate) fn problem(&self, cause: Option<QuantityId>, mut what: String, mend: String) -> Problem {
        if let Some((id, value)) = cause.and_then(|id| Some((id, self.fixed(id)?))) {
            what = format!("{what} {}", HERE.say(&[("id", id.get().id), ("value", &value)]));
        }
        Problem { span: cause.and_then(|id| self.span(id)), what, mend }
    }

    /// Where the family's file names a quantity, in bytes.
    pub(crate) fn span(&self, id: QuantityId) -> Option<Range<usize>> {
        self.plan.family.place(id, None).filter(|span| span.end <= self.text.len())
    }

    /// `value` of `id` as the family's author reads it.
    pub(crate) fn written(&self, id: QuantityId, value: f64) -> String {
        from_to(id, (value, value), self.plan.family.told_in)
    }

    /// As [`Self::written`], of several values: from the lowest to the highest.
    pub(crate) fn ends(&self, id: QuantityId, values: impl IntoIterator<Item = f64>) -> String {
        let ends = values
            .into_iter()
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| (low.min(value), high.max(value)));
        from_to(id, ends, self.plan.family.told_in)
    }

    /// A quantity with its value, as the family's author reads it: `chain.rating 7.205 kW`.
    pub(crate) fn named(&self, id: QuantityId, value: f64) -> String {
        format!("{} {}", id.get().id, self.written(id, value))
    }

    /// What the family works `id` out from, each with its value on the machine of `case`.
    pub(crate) fn inputs_on(&self, case: &Case, id: QuantityId) -> String {
        let inputs = inputs(self.plan, id).into_iter();
        inputs.map(|id| self.named(id, case.values[id.index()])).collect::<Vec<_>>().join(", ")
    }

    /// Whether `of` starts from `root`, among others.
    pub(crate) fn starts_from(&self, of: QuantityId, root: QuantityId) -> bool {
        starts(self.plan, &[of]).contains(&root)
    }

    /// What the family fixes a quantity to, as a person reads it.
    pub(crate) fn fixed(&self, id: QuantityId) -> Option<String> {
        self.plan.family.roots.iter().find_map(|(root, draw)| match draw {
            Draw::Fixed(value) if *root == id => Some(self.written(id, *value)),
            _ => None,
        })
    }

    /// The columns of the family's own table that `id` starts from, the nearest first.
    pub(crate) fn nearest_columns(&self, id: QuantityId) -> Vec<QuantityId> {
        let Some(table) = &self.plan.family.table else { return Vec::new() };
        let in_table = |id: &QuantityId| table.columns.iter().any(|(column, _)| column == id);
        starts(self.plan, &[id]).into_iter().filter(in_table).collect()
    }

    /// As [`Self::nearest_columns`], as a sentence.
    pub(crate) fn columns(&self, id: QuantityId) -> Option<String> {
        let columns: Vec<_> = self.nearest_columns(id).iter().take(MOST_COLUMNS).map(|id| id.get().id).collect();
        (!columns.is_empty()).then(|| TABLE_STARTS.say(&[("columns", &columns.join(", "))]))
    }
}

/// From the lowest to the highest of some values of `id`, as a person writes them; one value where they are the same.
pub(crate) fn from_to(id: QuantityId, (low, high): (f64, f64), system: System) -> String {
    let [low, high] = [low, high].map(|value| match id.get().choices.get(value as usize) {
        Some(choice) => quoted(choice),
        None => amount::write_exact(id.get(), value, system),
    });
    if low == high { low } else { FROM_TO.say(&[("low", &low), ("high", &high)]) }
}

/// The text of a file beside the families, as its places count it.
pub(crate) fn text_of(assets: &Assets, name: &str) -> String {
    assets.scenarios.get(&format!("families/{name}")).map_or_else(String::new, |bytes| decode(bytes).0)
}

/// What the family works `id` out from; nothing where it is drawn, fixed or in a table.
pub(crate) fn inputs(plan: &Plan, id: QuantityId) -> Vec<QuantityId> {
    let step = plan.steps().map(|step| step.get()).find(|linked| linked.gives == id);
    step.iter().flat_map(|linked| linked.inputs()).collect()
}

/// What is drawn, fixed or in a table and these follow from: what is fewest calculations away goes first.
fn starts(plan: &Plan, of: &[QuantityId]) -> Vec<QuantityId> {
    let (mut met, mut starts) = (of.to_vec(), Vec::new());
    let mut waiting = VecDeque::from(met.clone());
    while let Some(id) = waiting.pop_front() {
        let from = inputs(plan, id);
        if from.is_empty() {
            starts.push(id);
        }
        for input in from {
            if !met.contains(&input) {
                met.push(input);
                waiting.push_back(input);
            }
        }
    }
    starts
}
