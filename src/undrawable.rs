//! Machines of a family that can never be drawn: which sort or row of its table, and why.

use drivecourse_machine::chance::derive;
use drivecourse_machine::language::Message;
use drivecourse_machine::{
    CannotDraw, OwnTable, Plan, Problem, QuantityId, Registry, Strange, System, messages, quoted,
};
use drivecourse_quiz::{Bank, FileProblem};

use crate::assets::Assets;
use crate::own_family::{Own, from_to, text_of};
use crate::{bank, check_left_out};

messages! { pub(crate) SAYS {
    ROW = "check-row", "row {row} of its table";
    AS_NAMED = "check-as-named", "as {name}, {wanted}";
    LOOK_FIRST = "check-look-first", "Look first at the column {column}: it has {own} here, and {usual} on the machines of {family}. Is its unit right?";
    LOOK_FIRST_CELL = "check-look-first-cell", "Look first at {column} of {machine}: it is {own}, and the other machines here and those of {family} have {usual}.";
    STRANGE_CELL = "check-strange-cell", "{machine} has {column} at {own}, and the other machines here and those of {family} have {usual}.";
    STRANGE = "check-strange", "The column {column} has {own}, and the machines of {family} have {usual}.";
    STRANGE_MEND = "check-strange-mend", "If your machines are so, leave it. If not, mend the unit in its heading, or the values.";
    DRAWN_ANEW = "check-drawn-anew", "Your line on {ids} has no part in it: this fault draws it anew.";
    BEHIND = "check-behind", "With {values} as the machines of {family} have it, they could be drawn: mend it here.";
    ALL_IN_ONE = "check-all-in-one", "All that your drive cannot have stands in one line; take out of it what it can have.";
} }

/// Seeds with which a machine of one sort is tried for before it is said that none can be drawn.
const TRIES: u64 = 5;

/// Of each sort of machine that the family has, a sound one, one with each fault, and the one in each row of its table, why
/// none can be drawn where none can. What keeps sound machines from being drawn keeps the others too, and is all that is told.
pub(crate) fn sorts(plan: &Plan) -> Vec<CannotDraw> {
    if let Some(error) = sound(plan) {
        return vec![error];
    }
    let faults = (0..plan.family.faults.len()).filter_map(|fault| sort(plan, &[fault])).collect::<Vec<_>>();
    if faults.is_empty() { rows(plan) } else { faults }
}

/// Why no sound machine can be drawn, if none can and the family has any.
pub(crate) fn sound(plan: &Plan) -> Option<CannotDraw> {
    if plan.family.healthy > 0.0 || plan.family.faults.is_empty() { sort(plan, &[]) } else { None }
}

/// Of each row of a table of machines, why it can never be drawn: a machine of the plant that no apprentice would meet.
fn rows(plan: &Plan) -> Vec<CannotDraw> {
    let rows = plan.family.pool.iter().enumerate().filter(|_| plan.family.pool.len() > 1);
    let alone = |(place, row): (usize, &Vec<_>)| {
        let name = plan.family.machines.get(place);
        let mut family = plan.family.clone();
        (family.pool, family.machines) = (vec![row.clone()], name.cloned().into_iter().collect());
        let mut error = sound(&Plan::new(family).ok()?)?;
        let row = || ROW.say(&[("row", &(place + 1).to_string())]);
        error.wanted =
            AS_NAMED.say(&[("name", &name.map_or_else(row, Clone::clone)), ("wanted", &error.wanted)]).into();
        error.row = u16::try_from(place).ok();
        Some(error)
    };
    rows.filter_map(alone).collect()
}

/// Why a machine with these faults cannot be drawn, where none can.
pub(crate) fn sort(plan: &Plan, faults: &[usize]) -> Option<CannotDraw> {
    undrawn(plan, faults).map(|error| plan.explain(error))
}

fn undrawn(plan: &Plan, faults: &[usize]) -> Option<CannotDraw> {
    let mut last = None;
    for seed in 0..TRIES {
        match plan.draw_with(derive(0xc4ed, seed), Some(faults)) {
            Ok(_) => return None,
            Err(error) => last = Some(error),
        }
    }
    last
}

/// Where machines with several faults cannot be drawn, the one line that leaves them all out, with those that the family's
/// file `text` leaves out already: a file may have one such line only.
pub(crate) fn join(plan: &Plan, text: &str, errors: &mut [CannotDraw]) {
    let line = |ids: &[&str]| {
        let ids: Vec<_> = ids.iter().map(|id| quoted(id)).collect();
        format!("without = [{}]", ids.join(", "))
    };
    let already = check_left_out::named(text);
    let fault = |error: &CannotDraw| match error.faults() {
        [fault] => Some(plan.family.faults[*fault].id.as_str()),
        _ => None,
    };
    let told: Vec<&str> =
        errors.iter().filter_map(|error| fault(error).filter(|id| error.mend.contains(&line(&[id])))).collect();
    let all: Vec<&str> = already.iter().map(|id| id.get_ref().as_str()).chain(told.iter().copied()).collect();
    if told.is_empty() || all.len() < 2 {
        return;
    }
    for error in errors {
        if let Some(id) = fault(error).filter(|id| told.contains(id)) {
            let mend = error.mend.replace(&line(&[id]), &line(&all));
            error.mend = format!("{mend}\n{}", ALL_IN_ONE.text()).into();
        }
    }
}

/// The values of the family's own file that keep this machine from being drawn, though the limit or the calculation that says
/// so is another family's.
fn behind(own: &Own<'_>, error: &CannotDraw) -> Vec<QuantityId> {
    let of: Vec<_> = match error.limit.map(|limit| &own.plan.family.limits[limit]) {
        Some(limit) if limit.of.is_empty() => return Vec::new(),
        Some(limit) => vec![limit.quantity],
        // What was refused is known.
        None if error.span.is_some() => return Vec::new(),
        None => Registry::get().quantities().filter(|id| own.plan.determines(*id)).collect(),
    };
    own.behind(&of, |id| own.names(id), |usual| undrawn(usual, error.faults()).is_none())
}

/// As [`tell_of`], where the program's families alone are known beside this one.
pub(crate) fn tell(assets: &Assets, plan: &Plan, error: CannotDraw) -> FileProblem {
    let (none, standard) = (Bank::default(), bank::standard(assets));
    tell_of(assets, &Own::of(assets, &none, &standard, plan), error)
}

/// That no machine could be drawn, and why: at a column of the family's table that is far from what is usual; else at the row
/// of a machine that is meant; else at the limit in the family's file, or at the value there that is behind it; else, where no
/// limit of its own is at fault but the values are, at the headings of the table.
pub(crate) fn tell_of(assets: &Assets, own: &Own<'_>, mut error: CannotDraw) -> FileProblem {
    let plan = own.plan;
    let table = plan.family.table.as_ref();
    // Of one machine, what is strange in its own row; a column is strange in all.
    let strange = table.and_then(|table| {
        let here = |strange: &&Strange| match (strange.row, error.row) {
            (Some(row), Some(wanted)) => u16::try_from(row) == Ok(wanted),
            (Some(_), None) => table.rows.len() == 1,
            (None, _) => true,
        };
        table.strange.iter().find(here)
    });
    let behind = if strange.is_none() && error.row.is_none() { behind(own, &error) } else { Vec::new() };
    if let (Some(first), Some(pattern)) = (behind.first(), own.pattern) {
        let value = |id: &QuantityId| own.fixed(*id).map_or_else(String::new, |value| format!(" ({value})"));
        let values: Vec<_> = behind.iter().map(|id| format!("{}{}", id.get().id, value(id))).collect();
        let values = values.join(", ");
        error.mend =
            format!("{} {}", BEHIND.say(&[("values", &values), ("family", &pattern.family.id)]), error.mend).into();
        error.span = own.span(*first);
    }
    // Whoever wrote a draw looks for what is wrong there first.
    let limited = error.limit.map(|limit| plan.family.limits[limit].quantity);
    let anew = error.faults().iter().flat_map(|fault| &plan.family.faults[*fault].draws).map(|(id, _)| *id);
    let anew = anew.filter(|id| own.names(*id) && limited.is_some_and(|limited| own.starts_from(limited, *id)));
    let anew: Vec<_> = anew.map(|id| id.get().id).collect();
    if !anew.is_empty() {
        error.mend = format!("{} {}", DRAWN_ANEW.say(&[("ids", &anew.join(", "))]), error.mend).into();
    }
    // A limit of another family says nothing of this one's file, unless a value of that goes into what breaks it.
    let of_another = match error.limit.map(|limit| &plan.family.limits[limit]) {
        Some(limit) => !limit.of.is_empty() && error.span.as_ref().is_none_or(|span| *span == limit.span),
        None => error.span.is_none(),
    };
    // Of several columns that may be at fault, the nearest is pointed at and all are told.
    let limit = error.limit.map(|limit| plan.family.limits[limit].quantity).filter(|_| error.column.is_none());
    let nearest = limit.map_or_else(Vec::new, |limit| own.nearest_columns(limit));
    if let Some(limit) = limit.filter(|_| strange.is_none() && error.row.is_none() && of_another) {
        own.columns(limit).into_iter().for_each(|columns| error.mend = format!("{columns} {}", error.mend).into());
    }
    let in_table = table.and_then(|table| match (strange, error.row) {
        (Some(strange), _) => table.place(strange),
        (None, Some(row)) => {
            let cell = |column| table.cells.get(row as usize)?.iter().find(|(id, _)| *id == column);
            let cell = error.column.and_then(cell).map(|(_, span)| span.clone());
            cell.or_else(|| table.rows.get(row as usize).cloned())
        }
        (None, None) => of_another.then(|| {
            let heading =
                table.columns.iter().find(|(id, _)| Some(*id) == error.column.or_else(|| nearest.first().copied()));
            heading.map_or_else(|| table.headings.clone(), |(_, span)| span.clone())
        }),
    });
    let mut problem = Problem::from(error);
    if let Some(strange) = strange {
        let system = table.map_or(System::Si, |table| table.system(strange.quantity));
        problem.mend = format!("{} {}", say(plan, strange, system, [LOOK_FIRST, LOOK_FIRST_CELL]), problem.mend);
    }
    match (table, in_table) {
        (Some(table), Some(span)) => in_file(assets, &table.file, Problem { span: Some(span), ..problem }),
        _ => in_file(assets, &format!("{}.toml", plan.family.id), problem),
    }
}

/// That a column of a table, or a value in it, is far from what is usual.
pub(crate) fn far(assets: &Assets, plan: &Plan, table: &OwnTable, strange: &Strange) -> FileProblem {
    let what = say(plan, strange, table.system(strange.quantity), [STRANGE, STRANGE_CELL]);
    in_file(assets, &table.file, Problem { span: table.place(strange), what, mend: STRANGE_MEND.text().to_owned() })
}

/// What is strange, as it is said of a column or of a cell.
fn say(plan: &Plan, strange: &Strange, system: System, [column, cell]: [Message; 2]) -> String {
    let machine = strange.row.and_then(|row| plan.family.machines.get(row)).cloned().unwrap_or_default();
    let [own, usual] = [strange.own, strange.usual].map(|ends| from_to(strange.quantity, ends, system));
    let said = if strange.row.is_some() { cell } else { column };
    said.say(&[
        ("machine", &machine),
        ("column", strange.quantity.get().id),
        ("own", &own),
        ("usual", &usual),
        ("family", &strange.of),
    ])
}

/// A problem in a file beside the families, at its line.
pub(crate) fn in_file(assets: &Assets, name: &str, mut problem: Problem) -> FileProblem {
    let text = text_of(assets, name);
    let file = assets.shown(&format!("scenarios/families/{name}"));
    // A family of the program that is reused does not lie in the module.
    problem.span = problem.span.filter(|span| span.end <= text.len());
    FileProblem { report: problem.report(&file, &text), file, problem }
}
