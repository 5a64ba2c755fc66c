//! What `check` doubts in values of an author's own: a machine may have them, and seldom does.

use drivecourse_machine::language::Message;
use drivecourse_machine::{Case, Limit, Plan, Problem, QuantityId, Registry, messages};

use crate::check::Check;
use crate::check_verdicts;
use crate::own_family::Own;

messages! { pub(crate) SAYS {
    ODD_LINKS = "check-odd-links", "{machine}: {value} links are an odd number, and such a chain closes with an offset link only, which is weaker.";
    STEEP_CALLED_LEVEL = "check-steep-called-level", "{machine}: chain.lie is {value}, and the line of centres climbs at {with} (chain.incline).";
    LEVEL_CALLED_STEEP = "check-level-called-steep", "{machine}: chain.lie is {value}, and the line of centres climbs at {with} only (chain.incline).";
    SWAPPED = "check-swapped", "{machine}: {low} is {value}, above {high}, which is {with}.";
    SWAPPED_OF_ALL = "check-swapped-of-all", "{low} is {value} here, above {high}, which is {with}.";
    SWAP = "check-swap", "Swap them, or mend the one that is wrong.";
    FAR = "check-far", "{id} is {own} here, and the machines of {family} have {usual}.";
    FAR_MEND = "check-far-mend", "If your drive is so, leave it. If not, mend its value or its unit.";
    UNUSUAL_ABOVE = "check-unusual-above", "{machines}: {id} (“{name}”) is {value} or more when nothing is wrong; made-up machines of {family} have {bound} at most ({because}).";
    UNUSUAL_BELOW = "check-unusual-below", "{machines}: {id} (“{name}”) is {value} or less when nothing is wrong; made-up machines of {family} have {bound} at least ({because}).";
    UNUSUAL_MEND = "check-unusual-mend", "If your machines are so, leave it, or write a [[limit]] of your own on it. If not, look at what it follows from: {from}.";
    SPAN_SWAPPED = "check-span-swapped", "{machine}: load.bearing_span is {value}, and the middle of the shaft end is {with} from the near bearing (load.shaft_middle).";
    SPAN_MEND = "check-span-mend", "The bearings inside are mostly further apart than the shaft end's middle is from the near one: are the two swapped? If your reducer is so, leave it.";
    STAGES_TOO_GOOD = "check-stages-too-good", "{machine}: drive.efficiency is {value} with {with} gear stages (drive.stages): better than such gears are.";
    STAGE_OF_WHOLE = "check-stage-of-whole", "{machine}: drive.stage_efficiency is {value} for each of {with} stages.";
    STAGES_MEND = "check-stages-mend", "A gear stage loses about 1 to 3 %. Mend the number of stages or the efficiency. If it is so, leave it.";
    STAGE_MEND = "check-stage-mend", "A gear stage loses about 1 to 3 %, and each loses its part. Is this the efficiency of the whole reducer? 0.94 of three stages is 0.98 of each. If it is so, leave it.";
    LINKS_APART = "check-links-apart", "{machine}: chain.links is {value}, and the centres on the drawing (chain.centres_planned) ask for {with} pitches.";
    LINKS_MEND = "check-links-mend", "Count the links again, or mend the centres or the teeth. The number of links goes first: the machine stands as far apart as they let it.";
    COUNT_AGAIN = "check-count-again", "Count them again; if it is so, leave it.";
    HOW_IT_LIES = "check-how-it-lies", "Mend the one that is wrong; the window of the slack strand's movement goes by how the drive lies. If it is so, leave it.";
} }

/// From this climb on (degrees) hardly anybody calls a drive level; common practice, no source.
const HARDLY_LEVEL: f64 = 60.0;
/// Up to this climb (degrees) hardly anybody calls a drive steep; common practice, no source.
const HARDLY_STEEP: f64 = 30.0;

/// A gear stage hardly ever loses less than 1 %; common practice, no source.
const HARDLY_BETTER: f64 = 0.99;
/// A gear stage hardly ever passes on less than this; common practice, no source.
const HARDLY_WORSE: f64 = 0.955;
/// How far in pitches a chain may be shorter than the centres on the drawing ask for, whose figures are rounded, and so much
/// longer than the next pair of links: common practice, no source.
const ROUNDED: f64 = 0.25;

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
    Doubt {
        of: "load.bearing_span",
        with: "load.shaft_middle",
        when: |span, middle| span < middle,
        says: SPAN_SWAPPED,
        mend: SPAN_MEND,
    },
    Doubt {
        of: "drive.efficiency",
        with: "drive.stages",
        when: |efficiency, stages| efficiency > HARDLY_BETTER.powf(stages),
        says: STAGES_TOO_GOOD,
        mend: STAGES_MEND,
    },
    Doubt {
        of: "drive.stage_efficiency",
        with: "drive.stages",
        when: |efficiency, stages| stages > 1.0 && efficiency < HARDLY_WORSE,
        says: STAGE_OF_WHOLE,
        mend: STAGE_MEND,
    },
    Doubt {
        of: "chain.links",
        with: "chain.length_exact",
        when: |links, exact| links < exact - ROUNDED || links > exact + 2.0 + ROUNDED,
        says: LINKS_APART,
        mend: LINKS_MEND,
    },
];

/// The ends of the names of what bounds the same thing below and above.
const ENDS: [(&str, &str); 2] = [("low", "high"), ("least", "most")];

/// Every pair of quantities that bound the same thing below and above.
fn windows() -> Vec<(QuantityId, QuantityId)> {
    let other = |low: QuantityId| {
        let (topic, name) = low.get().id.split_once('.')?;
        ENDS.iter().find_map(|(below, above)| {
            let parts = name.split('_').map(|part| if part == *below { above } else { part });
            let high = Registry::get().find(&format!("{topic}.{}", parts.collect::<Vec<_>>().join("_")))?;
            (high != low && high.get().kind == low.get().kind).then_some((low, high))
        })
    };
    Registry::get().quantities().filter_map(other).collect()
}

impl Check<'_> {
    /// Looks for windows whose lower end lies above the upper one, where the family's file or table gives one of them: on the
    /// first sound machine of each of the `rows`. Whether there is one.
    pub(crate) fn swapped(&mut self, own: &Own<'_>, rows: &[(String, Vec<Case>)]) -> bool {
        let before = self.found.len();
        for (low, high) in windows() {
            let Some(told_at) = [low, high].into_iter().find(|id| own.gives(*id)) else { continue };
            let both = |(name, cases): &(String, Vec<Case>)| {
                let case = cases.first()?;
                Some((name.clone(), case.value(low)?, case.value(high)?))
            };
            for (name, below, above) in rows.iter().filter_map(both).filter(|(_, below, above)| below > above) {
                let of_all = own.names(told_at);
                let what = if of_all { SWAPPED_OF_ALL } else { SWAPPED }.say(&[
                    ("machine", name.as_str()),
                    ("low", low.get().id),
                    ("value", &own.written(low, below)),
                    ("high", high.get().id),
                    ("with", &own.written(high, above)),
                ]);
                let (path, text, span) = own.place(self.assets, told_at, Some(&name));
                self.say(&path, &text, Problem { span, what, mend: SWAP.text().into() });
                // A value of the family's file is the same on all of them.
                if of_all {
                    break;
                }
            }
        }
        self.found.len() > before
    }

    /// Looks for values of the family's file that are far from those of the family that it is like; not where something is told
    /// already.
    pub(crate) fn far(&mut self, own: &Own<'_>) {
        let Some(pattern) = own.pattern else { return };
        for strange in own.plan.family.strange_beside(&pattern.family) {
            let ends = |(low, high)| own.ends(strange.quantity, [low, high]);
            let what = FAR.say(&[
                ("id", strange.quantity.get().id),
                ("own", &ends(strange.own)),
                ("family", &strange.of),
                ("usual", &ends(strange.usual)),
            ]);
            let problem = Problem { span: own.span(strange.quantity), what, mend: FAR_MEND.text().into() };
            let found = self.placed(&own.path, &own.text, problem);
            if !self.found.iter().chain(&self.notices).any(|told| told.is_at(&found)) {
                self.notices.push(found);
            }
        }
    }

    /// Looks for doubtful values that a family's file or table gives, in the first sound machine of each of the `rows`.
    pub(crate) fn doubts(&mut self, own: &Own<'_>, rows: &[(String, Vec<Case>)]) {
        for doubt in DOUBTS {
            let find = |id| Registry::get().find(id);
            let (Some(of), Some(with)) = (find(doubt.of), find(doubt.with)) else { continue };
            // What the other family has is told of there. The one that the author wrote is where it is told.
            let Some(told_at) = [of, with].into_iter().find(|id| own.gives(*id)) else { continue };
            let first = |(name, cases): &'_ (String, Vec<Case>)| {
                let values = |case: &Case| Some((case.value(of)?, case.value(with)?));
                let met = cases.iter().filter_map(values).find(|(value, beside)| (doubt.when)(*value, *beside))?;
                Some((name.clone(), met))
            };
            let mut met: Vec<(String, (f64, f64))> = rows.iter().filter_map(first).collect();
            // A value of the family's file is the same on all machines; what all have in common is told once of their column.
            let is_common = met.len() > 1 && (own.names(told_at) || met.len() == rows.len());
            if own.names(told_at) {
                met.truncate(1);
            }
            for met in met.chunks(if is_common { met.len() } else { 1 }) {
                let machines = met.iter().map(|(name, _)| name.as_str()).collect::<Vec<_>>().join(", ");
                let value = own.ends(of, met.iter().map(|(_, (value, _))| *value));
                let beside = own.ends(with, met.iter().map(|(_, (_, beside))| *beside));
                let words = [("machine", machines.as_str()), ("value", &value), ("with", &beside)];
                let row = met.first().map(|(name, _)| name.as_str()).filter(|_| !is_common);
                let (path, text, span) = own.place(self.assets, told_at, row);
                let problem = Problem { span, what: doubt.says.say(&words), mend: doubt.mend.text().into() };
                let found = self.placed(&path, &text, problem);
                // That it follows otherwise from the others says more.
                if !self.notices.iter().any(|told| told.is_at(&found)) {
                    self.notices.push(found);
                }
            }
        }
    }

    /// Looks for rows of a family's own table of which every sound machine lies beyond a bound that only keeps made-up machines
    /// usual; all rows beyond one bound are told together, at the value of the family's file that is behind it if there is one.
    pub(crate) fn unusual(&mut self, own: &Own<'_>, rows: &[(String, Vec<Case>)]) {
        for limit in &own.plan.family.unbound {
            for is_above in [true, false] {
                let met = beyond(limit, is_above, rows);
                let Some((first, _)) = met.first() else { continue };
                let Some(problem) = unusual_said(own, limit, is_above, &met) else { continue };
                let mends = |usual: &Plan| beyond(limit, is_above, &check_verdicts::rows(usual)).is_empty();
                let cause = own.cause(&[limit.quantity], mends);
                let found = if cause.is_some() {
                    self.placed(&own.path, &own.text, own.problem(cause, problem.what, problem.mend))
                } else {
                    let column = own.nearest_columns(limit.quantity).first().copied();
                    let whole = column.filter(|_| met.len() == rows.len() && rows.len() > 1);
                    let place = whole.map(|column| own.place(self.assets, column, None));
                    match place.or_else(|| own.row(self.assets, first)) {
                        Some((path, text, span)) => self.placed(&path, &text, Problem { span, ..problem }),
                        None => self.placed(&own.path, &own.text, problem),
                    }
                };
                // One value may carry machines beyond several bounds: once is enough.
                if cause.is_none() || !self.notices.iter().any(|told| told.is_at(&found)) {
                    self.notices.push(found);
                }
            }
        }
    }
}

/// Those of the `rows` of which every sound machine lies beyond the bound of `limit`: above it, or below.
fn beyond<'r>(limit: &Limit, is_above: bool, rows: &'r [(String, Vec<Case>)]) -> Vec<&'r (String, Vec<Case>)> {
    let is_beyond = |value: f64| if is_above { value > limit.at_most } else { value < limit.at_least };
    let all = |(_, cases): &&(String, Vec<Case>)| {
        let mut values = cases.iter().filter_map(|case| case.value(limit.quantity)).peekable();
        values.peek().is_some() && values.all(is_beyond)
    };
    rows.iter().filter(all).collect()
}

/// That the machines `met` lie beyond `limit`, with the value nearest to it, and what it follows from on the machine that has
/// it; nothing where there is none.
fn unusual_said(own: &Own<'_>, limit: &Limit, is_above: bool, met: &[&(String, Vec<Case>)]) -> Option<Problem> {
    let cases = met.iter().flat_map(|(_, cases)| cases);
    let valued = cases.filter_map(|case| Some((case.value(limit.quantity)?, case)));
    let off = |value: f64| if is_above { value } else { -value };
    // All of them are at least so far off.
    let (nearest, case) = valued.min_by(|(one, _), (other, _)| off(*one).total_cmp(&off(*other)))?;
    let machines = met.iter().map(|(name, _)| name.as_str()).collect::<Vec<_>>().join(", ");
    let (says, bound) = if is_above { (UNUSUAL_ABOVE, limit.at_most) } else { (UNUSUAL_BELOW, limit.at_least) };
    let what = says.say(&[
        ("machines", &machines),
        ("id", limit.quantity.get().id),
        ("name", limit.quantity.get().name),
        ("value", &own.written(limit.quantity, nearest)),
        ("family", &limit.of),
        ("bound", &own.written(limit.quantity, bound)),
        ("because", &limit.reason()),
    ]);
    Some(Problem::whole(what, UNUSUAL_MEND.say(&[("from", &own.inputs_on(case, limit.quantity))])))
}
