//! What `check` finds in the values of an author's own that a calculation makes otherwise of the others: one machine would be
//! asked about with two values of the same thing.

use core::ops::Range;
use std::collections::BTreeMap;

use drivecourse_machine::{
    Case, Draw, Kind, Known, Linked, Otherwise, Problem, QuantityId, Registry, Role, System, did_you_mean,
    fixed_otherwise, messages, rounded_away,
};

use crate::check::Check;
use crate::own_family::Own;

messages! { pub(crate) SAYS {
    FOLLOWS = "check-follows", "{id} is {own} here, and {worked} by calculation ({relation}: from {from}).";
    FOLLOWS_OF = "check-follows-of", "{machine} has {id} at {own}, and {worked} by calculation ({relation}: from {from}).";
    INHERITED = "check-inherited", "{machine} has {input} at {value}, which makes {worked} by calculation; {family} fixes {own}.";
    INHERITED_MEND = "check-inherited-mend", "Give it values of its own for {ids}: as columns of the table, where machines differ, or under [fixed]. Or let a family of its own hold the machines that are so.";
    FOLLOWS_MEND = "check-follows-mend", "Leave out what follows from the others, or mend one of them.";
} }

/// What a machine has of a quantity, and what is worked out of it.
type Both = (f64, f64);

impl Check<'_> {
    /// Looks for values that the family's file or table gives and that follow otherwise from the rest, on some sound machines of
    /// each of the `rows` of its table.
    pub(crate) fn follows(&mut self, own: &Own<'_>, rows: &[(String, Vec<Case>)]) {
        let family = &own.plan.family;
        let columns = family.table.iter().flat_map(|table| &table.columns).map(|(id, _)| *id);
        let named = family.roots.iter().map(|(id, _)| *id).filter(|id| own.names(*id));
        let still = own.plan.still();
        for id in named.chain(columns).filter(|id| id.get().kind != Kind::Choice) {
            let Some(by) = giving(own, id, rows) else { continue };
            // A plant may have a limit of its own in place of a rule's; what a machine's other values make it is no limit.
            let stated = family.stated.iter().any(|stated| stated.quantity == id);
            if stated && by.inputs().all(|input| still[input.index()]) {
                continue;
            }
            let both = |case: &Case| Some((case.value(id)?, by.eval(&case.values).ok()?));
            let all: Vec<(&String, Vec<Both>)> =
                rows.iter().map(|(name, cases)| (name, cases.iter().filter_map(both).collect())).collect();
            let apart = |both: &[Both]| both.iter().any(|(own, worked)| are_apart(id, *own, *worked));
            // A fault may move what it follows from, and not the value; one that changes the value itself is another matter.
            let unchanged = |case: &&Case| {
                case.faults.iter().all(|fault| family.faults[*fault].draws.iter().all(|(drawn, _)| *drawn != id))
            };
            let samples = own.plan.samples().iter().filter(|_| own.names(id)).filter(unchanged);
            let faulty: Vec<Both> = samples.filter_map(both).collect();
            let told: Vec<_> = all.iter().filter(|(_, both)| apart(both)).collect();
            if told.is_empty() && !apart(&faulty) {
                continue;
            }
            if own.names(id) || (told.len() == all.len() && all.len() > 1) {
                let whole: Vec<_> = all.iter().flat_map(|(_, both)| both).chain(&faulty).copied().collect();
                let (path, text, span) = own.place(self.assets, id, None);
                self.notice(&path, &text, tell(own, id, by, None, &whole, span));
                continue;
            }
            for (name, both) in told {
                let named = family.machines.contains(name).then_some(name.as_str());
                let (path, text, span) = own.place(self.assets, id, Some(name));
                self.notice(&path, &text, tell(own, id, by, named, both, span));
            }
        }
    }

    /// Looks for what the family that theirs is like fixes, and that a value of an author's own makes otherwise: a steep drive
    /// judged by the window of a level one. Told at that value, of each machine that has it so.
    pub(crate) fn inherited(&mut self, own: &Own<'_>, rows: &[(String, Vec<Case>)]) {
        // Of each value of an author's own, what it makes otherwise by itself and with what else is fixed or in the table.
        let mut made: BTreeMap<QuantityId, Vec<Otherwise>> = BTreeMap::new();
        for found in fixed_otherwise(&own.plan.family) {
            let is_told = made.values().flatten().any(|told| told.id == found.id);
            if found.id.get().kind == Kind::Choice || own.gives(found.id) || is_told {
                continue;
            }
            if let Some(input) = found.by.inputs().find(|input| own.gives(*input)) {
                made.entry(input).or_default().push(found);
            }
        }
        for (input, made) in made {
            for (name, cases) in rows {
                // A family without a table is its own only machine.
                let place = own.plan.family.machines.iter().position(|machine| machine == name).unwrap_or_default();
                let otherwise = made.iter().filter_map(|Otherwise { id, fixed, worked, .. }| {
                    let worked = *worked.get(place)?;
                    are_apart(*id, *fixed, worked).then_some((*id, *fixed, worked))
                });
                let otherwise: Vec<_> = otherwise.collect();
                let Some(case) = cases.first().filter(|_| !otherwise.is_empty()) else { continue };
                let list = |texts: Vec<String>| texts.join(", ");
                let what = INHERITED.say(&[
                    ("machine", name.as_str()),
                    ("input", input.get().id),
                    ("value", &own.written(input, case.values[input.index()])),
                    ("worked", &list(otherwise.iter().map(|(id, _, worked)| own.named(*id, *worked)).collect())),
                    ("family", own.pattern.map_or("", |pattern| pattern.family.id.as_str())),
                    ("own", &list(otherwise.iter().map(|(id, fixed, _)| own.named(*id, *fixed)).collect())),
                ]);
                let ids = list(otherwise.iter().map(|(id, ..)| id.get().id.to_owned()).collect());
                let (path, text, span) = own.place(self.assets, input, Some(name));
                self.notice(&path, &text, Problem { span, what, mend: INHERITED_MEND.say(&[("ids", &ids)]) });
                // A value of the family's file is the same on all of them.
                if own.names(input) {
                    break;
                }
            }
        }
    }
}

/// That `id` is otherwise than worked out: of one machine, or of all.
fn tell(
    own: &Own<'_>,
    id: QuantityId,
    by: &Linked,
    machine: Option<&str>,
    both: &[Both],
    span: Option<Range<usize>>,
) -> Problem {
    let from: Vec<_> = by.inputs().map(|input| input.get().id).collect();
    let what = if machine.is_some() { FOLLOWS_OF } else { FOLLOWS }.say(&[
        ("machine", machine.unwrap_or_default()),
        ("id", id.get().id),
        ("own", &own.ends(id, both.iter().map(|(own, _)| *own))),
        ("worked", &own.ends(id, both.iter().map(|(_, worked)| *worked))),
        ("relation", by.relation.id),
        ("from", &from.join(", ")),
    ]);
    let mut mend = FOLLOWS_MEND.text().to_owned();
    // What the other family starts from here may be what was meant.
    let longer = format!("{}_", id.get().id);
    let mut roots = own.plan.family.roots.iter().map(|(root, _)| *root);
    if let Some(meant) = roots.find(|root| root.get().id.starts_with(&longer) && !own.names(*root)) {
        mend = format!("{mend} {}", did_you_mean(meant.get().id));
    } else {
        // What is worked out may itself start from the table.
        let columns = by.inputs().filter(|_| machine.is_some()).find_map(|input| own.columns(input));
        columns.into_iter().for_each(|columns| mend = format!("{mend} {columns}"));
    }
    Problem { span, what, mend }
}

/// The first calculation that gives `id` from what the family has without it.
fn giving(own: &Own<'_>, id: QuantityId, rows: &[(String, Vec<Case>)]) -> Option<&'static Linked> {
    let case = rows.iter().flat_map(|(_, cases)| cases).next()?;
    // What follows from it says nothing against it.
    let mut rests = vec![false; Registry::get().len()];
    rests[id.index()] = true;
    for (root, draw) in &own.plan.family.roots {
        rests[root.index()] |= matches!(draw, Draw::Share { of, .. } | Draw::ShareAmong { of, .. } if *of == id);
    }
    for step in own.plan.steps().map(|step| step.get()) {
        rests[step.gives.index()] |= step.inputs().any(|input| rests[input.index()]);
    }
    // What a model machine is given as if its makers had chosen it so, a real one has by its plate or catalogue.
    let chosen = |by: &Linked| by.relation.role == Role::Model && id.get().known == Known::Plate;
    let fits = |by: &&Linked| {
        by.relation.role != Role::Question
            && !chosen(by)
            && by.inputs().all(|input| case.value(input).is_some() && !rests[input.index()])
    };
    Registry::get().giving(id).iter().map(|by| by.get()).find(fits)
}

/// Whether two values of a quantity are further apart than rounding and reading make them.
fn are_apart(id: QuantityId, own: f64, worked: f64) -> bool {
    let read = System::ALL.map(|system| 2.0 * Registry::get().seeing(system)[id.index()].half_step());
    let apart = (own - worked).abs();
    apart.is_finite() && apart > rounded_away(id, own, worked) && apart > read[0].max(read[1])
}
