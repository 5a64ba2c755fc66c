//! Machines of a family that can never be drawn: which sort or row of its table, and why.

use drivecourse_machine::chance::derive;
use drivecourse_machine::{CannotDraw, OwnTable, Plan, Problem, Strange, System, amount, messages};
use drivecourse_quiz::FileProblem;
use drivecourse_quiz::response::decode;

use crate::assets::Assets;

messages! { pub(crate) SAYS {
    ROW = "check-row", "row {row} of its table";
    AS_NAMED = "check-as-named", "as {name}, {wanted}";
    LOOK_FIRST = "check-look-first", "Look first at the column {column}: it has {own} here, and {usual} on the machines of {family}. Is its unit right?";
    STRANGE = "check-strange", "The column {column} has {own}, and the machines of {family} have {usual}.";
    STRANGE_MEND = "check-strange-mend", "If your machines are so, leave it. If not, mend the unit in its heading, or the values.";
    FROM_TO = "check-from-to", "{low} to {high}";
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
        error.row = u32::try_from(place).ok();
        Some(error)
    };
    rows.filter_map(alone).collect()
}

/// Why a machine with these faults cannot be drawn, where none can.
fn sort(plan: &Plan, faults: &[usize]) -> Option<CannotDraw> {
    let mut last = None;
    for seed in 0..TRIES {
        match plan.draw_with(derive(0xc4ed, seed), Some(faults)) {
            Ok(_) => return None,
            Err(error) => last = Some(error),
        }
    }
    last.map(|error| plan.explain(error))
}

/// That no machine could be drawn, and why: at a column of the family's table that is far from what is usual; else at the row
/// of a machine that is meant; else at the limit in the family's file; else, where no limit of its own is at fault but the
/// values are, at the headings of the table.
pub(crate) fn tell(assets: &Assets, plan: &Plan, error: CannotDraw) -> FileProblem {
    let table = plan.family.table.as_ref();
    let strange = table.and_then(|table| table.strange.first());
    let of_another = match error.limit {
        Some(limit) => !plan.family.limits[limit].of.is_empty(),
        None => error.span.is_none(),
    };
    let in_table = table.and_then(|table| match (strange, error.row) {
        (Some(strange), _) => table.heading(strange.quantity),
        (None, Some(row)) => table.rows.get(row as usize).cloned(),
        (None, None) => of_another.then(|| table.headings.clone()),
    });
    let mut problem = Problem::from(error);
    if let Some(strange) = strange {
        let [column, own, usual, family] = words(strange);
        let first = LOOK_FIRST.say(&[("column", &column), ("own", &own), ("usual", &usual), ("family", &family)]);
        problem.mend = format!("{first} {}", problem.mend);
    }
    match (table, in_table) {
        (Some(table), Some(span)) => in_file(assets, &table.file, Problem { span: Some(span), ..problem }),
        _ => in_file(assets, &format!("{}.toml", plan.family.id), problem),
    }
}

/// That a column of a table is far from what is usual.
pub(crate) fn far(assets: &Assets, table: &OwnTable, strange: &Strange) -> FileProblem {
    let [column, own, usual, family] = words(strange);
    let what = STRANGE.say(&[("column", &column), ("own", &own), ("usual", &usual), ("family", &family)]);
    let (span, mend) = (table.heading(strange.quantity), STRANGE_MEND.text().to_owned());
    in_file(assets, &table.file, Problem { span, what, mend })
}

/// Its heading, its values, the usual ones, and whose these are.
fn words(strange: &Strange) -> [String; 4] {
    let ends = |(low, high): (f64, f64)| {
        let write = |value: f64| amount::write_exact(strange.quantity.get(), value, System::Si);
        if low == high {
            return write(low);
        }
        FROM_TO.say(&[("low", &write(low)), ("high", &write(high))])
    };
    [strange.quantity.get().id.to_owned(), ends(strange.own), ends(strange.usual), strange.of.clone()]
}

/// A problem in a file beside the families, at its line.
fn in_file(assets: &Assets, name: &str, mut problem: Problem) -> FileProblem {
    let path = format!("families/{name}");
    let text = assets.scenarios.get(&path).map_or_else(String::new, |bytes| decode(bytes).0);
    let file = assets.shown(&format!("scenarios/{path}"));
    // A family of the program that is reused does not lie in the module.
    problem.span = problem.span.filter(|span| span.end <= text.len());
    FileProblem { report: problem.report(&file, &text), file, problem }
}
