//! How hard a question is, by what it asks for. How hard one judgement is rests on its statements: see `judge.rs`.

use drivecourse_machine::{Path, PathChoice, System};

use crate::item::{Ask, Item, PartSpec};

/// Difficulty of choosing among statements.
pub(crate) const PICK_DIFFICULTY: f64 = 1.0;

/// Difficulty of putting steps in order.
pub(crate) fn order_difficulty(steps: &[String]) -> f64 {
    0.5 * steps.len() as f64
}

/// Difficulty of working a way out: its steps, and besides them half a point for each change of unit and one for each
/// table or inverse step.
pub(crate) fn path_difficulty(path: &Path, system: System) -> f64 {
    let mut sum = 0.0;
    for step in &path.steps {
        let linked = step.get();
        sum += 1.0;
        sum += f64::from(u8::from(linked.relation.lookup)) + f64::from(u8::from(linked.relation.inverse));
        sum += 0.5 * linked.conversions(system).len() as f64;
    }
    sum.max(0.5)
}

/// How hard an item is whatever the machine, as far as its own givens determine its answers: for putting items in order.
pub fn difficulty_of(item: &Item) -> Option<f64> {
    let part = |part: &PartSpec| match &part.ask {
        Ask::Quantity { asked, from, by, .. } => {
            let choice = PathChoice { by: by.clone(), ..PathChoice::default() };
            Path::find(from, *asked, &choice).ok().map(|path| path_difficulty(&path, System::Si))
        }
        Ask::Order { steps, .. } => Some(order_difficulty(steps)),
        Ask::Pick { .. } | Ask::Read(_) => Some(PICK_DIFFICULTY),
        // How many statements are offered depends on the machine; what there is to look at does not.
        Ask::Judge(judge) => Some(1.0 + 0.5 * judge.shown().count() as f64),
    };
    item.parts.iter().map(part).sum()
}
