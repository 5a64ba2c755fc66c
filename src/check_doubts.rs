//! What `check` doubts in values of an author's own: a machine may have them, and seldom does.

use drivecourse_machine::language::Message;
use drivecourse_machine::{Case, Problem, QuantityId, Registry, amount, messages};

use crate::check::Check;
use crate::check_causes::Own;

messages! { pub(crate) SAYS {
    ODD_LINKS = "check-odd-links", "{machine}: {value} links are an odd number, and such a chain closes with an offset link only, which is weaker.";
    STEEP_CALLED_LEVEL = "check-steep-called-level", "{machine}: chain.lie is \"{value}\", and the line of centres climbs at {with} (chain.incline).";
    LEVEL_CALLED_STEEP = "check-level-called-steep", "{machine}: chain.lie is \"{value}\", and the line of centres climbs at {with} only (chain.incline).";
    COUNT_AGAIN = "check-count-again", "Count them again; if it is so, leave it.";
    HOW_IT_LIES = "check-how-it-lies", "Mend the one that is wrong; the window of the slack strand's movement goes by how the drive lies. If it is so, leave it.";
} }

/// From this climb on (degrees) hardly anybody calls a drive level; common practice, no source.
const HARDLY_LEVEL: f64 = 60.0;
/// Up to this climb (degrees) hardly anybody calls a drive steep; common practice, no source.
const HARDLY_STEEP: f64 = 30.0;

/// A value that is doubted.
struct Doubt {
    /// Of which quantity.
    of: &'static str,
    /// Beside which other one; its own name where there is none.
    with: &'static str,
    /// Whether two values of them (SI; a choice by its place) are in doubt.
    when: fn(f64, f64) -> bool,
    says: Message,
    mend: Message,
}

const DOUBTS: &[Doubt] = &[
    Doubt {
        of: "chain.links",
        with: "chain.links",
        when: |links, _| links % 2.0 == 1.0,
        says: ODD_LINKS,
        mend: COUNT_AGAIN,
    },
    Doubt {
        of: "chain.lie",
        with: "chain.incline",
        when: |lie, climb| lie == 0.0 && climb.abs().to_degrees() > HARDLY_LEVEL,
        says: STEEP_CALLED_LEVEL,
        mend: HOW_IT_LIES,
    },
    Doubt {
        of: "chain.lie",
        with: "chain.incline",
        when: |lie, climb| lie == 1.0 && climb.abs().to_degrees() < HARDLY_STEEP,
        says: LEVEL_CALLED_STEEP,
        mend: HOW_IT_LIES,
    },
];

impl Check<'_> {
    /// Looks for doubtful values that a family's file or table gives, in the first sound machine of each of the `rows`.
    pub(crate) fn doubts(&mut self, own: &Own<'_>, rows: &[(String, Vec<Case>)]) {
        for doubt in DOUBTS {
            let find = |id| Registry::get().find(id);
            let (Some(of), Some(with)) = (find(doubt.of), find(doubt.with)) else { continue };
            // What the other family has is told of there. The one that the author wrote is where it is told.
            let Some(told_at) = [of, with].into_iter().find(|id| own.gives(*id)) else { continue };
            for (name, cases) in rows {
                let values = |case: &Case| Some((case.value(of)?, case.value(with)?));
                let met = cases.iter().filter_map(values).find(|(value, beside)| (doubt.when)(*value, *beside));
                let Some((value, beside)) = met else { continue };
                let written = |id: QuantityId, value| match id.get().choices.get(value as usize) {
                    Some(choice) => (*choice).to_owned(),
                    None => amount::write_exact(id.get(), value, own.plan.family.told_in),
                };
                let words =
                    [("machine", name.as_str()), ("value", &written(of, value)), ("with", &written(with, beside))];
                let (path, text, span) = own.place(self.assets, told_at, Some(name));
                let problem = Problem { span, what: doubt.says.say(&words), mend: doubt.mend.text().into() };
                self.notice(&path, &text, problem);
                // A value of the family's file is the same on all of them.
                if own.names(told_at) {
                    break;
                }
            }
        }
    }
}
