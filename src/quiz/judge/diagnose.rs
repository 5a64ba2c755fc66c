//! Which fault explains all the readings.
//!
//! A fault is held against the machine at hand in three steps:
//!
//! 1. Machines with that fault, and nothing else wrong, are drawn on the same plates: the same row of the family's pool,
//!    and the machine's own value of everything that is shown and that no fault of the family changes (ambient
//!    temperature, marks). All the rest is free, because the person who judges does not know it either.
//! 2. For each reading, and for each number that is worked out from them, [`MACHINES`] of them show where the fault
//!    puts it. A value counts as possible when one of them comes as near to it as [`NEAR`] of what they spread over,
//!    and what the rounding of both machines' readings can make up in the coarser of the two systems of units. So a
//!    base out of level to either side is told from one that is level, though the one lies between the others.
//! 3. A fault is ruled out when one reading is not possible with it, and that reading is what the person is told.
//!    Each is judged on its own: a fault that only a pattern of several would rule out counts as possible, unless the
//!    author has a number weighed that shows the pattern (the largest of four rises). So what is called impossible is
//!    so by a wide margin, and what is merely unlikely is never offered as wrong.
//!
//! The right answer is offered with answers that are ruled out, up to [`OTHERS`] of them. “Nothing is wrong” is always
//! offered: where it cannot be ruled out for a faulty machine, the fault does not show, and the question is not put.

use drivecourse_machine::chance::{Stream, derive};
use drivecourse_machine::language::Message;
use drivecourse_machine::told;
use drivecourse_machine::{Case, Needs, Path, PathChoice, Plan, QuantityId, Registry, System, amount, messages};

use super::{Options, capital, odd};
use crate::question::Question;
use crate::setting::Unsettled;

/// Machines drawn to see what a fault can show.
pub(crate) const MACHINES: u64 = 64;
/// Machines after which a fault that has shown every reading is looked at again.
const AT_A_TIME: u64 = 8;
/// Share of what a fault's machines spread over that still counts as near to one of them: of 64 machines spread evenly,
/// none comes as near to a value at the very end about once in 850 times, and to one farther in hardly ever.
const NEAR: f64 = 0.1;
/// Most wrong answers offered.
const OTHERS: usize = 4;

/// A diagnosis made ready for one family.
#[derive(Debug, Clone)]
pub(crate) struct Ready {
    /// What is shown and no fault changes.
    pub(crate) held: Vec<QuantityId>,
    /// Faults to choose from.
    faults: Vec<usize>,
    /// The readings, and the ways to what is worked out from them: a way without steps is a reading.
    pub(crate) evidence: Vec<Path>,
    /// What it all waits for.
    pub(crate) needs: Needs,
}

impl Ready {
    /// # Errors
    /// [`Unsettled`] where the family has none of the faults, or does not determine what is to be weighed.
    pub(crate) fn new(
        plan: &Plan,
        part: usize,
        shown: &[QuantityId],
        (readings, weigh): (&[QuantityId], &[QuantityId]),
        among: &[String],
    ) -> Result<Self, Unsettled> {
        let named = |place: &usize| among.is_empty() || among.contains(&plan.family.faults[*place].id);
        let faults: Vec<usize> = (0..plan.family.faults.len()).filter(named).collect();
        if faults.is_empty() {
            return Err(Unsettled::NoFault);
        }
        let mut evidence: Vec<Path> =
            readings.iter().map(|reading| Path { steps: Vec::new(), asked: *reading }).collect();
        for id in weigh {
            if !plan.determines(*id) {
                return Err(Unsettled::NotDetermined(vec![*id]));
            }
            let way = Path::find(shown, *id, &PathChoice::default());
            evidence.push(way.map_err(|missing| Unsettled::NoPath { part, missing })?);
        }
        let held = shown.iter().copied().filter(|id| plan.holds(*id)).collect();
        let needs = plan.needs(evidence.iter().map(|path| path.asked));
        Ok(Self { held, faults, evidence, needs })
    }
}

/// What speaks against a fault: a place in the evidence, and what the fault would show next to it, below and above.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Against {
    pub(crate) evidence: usize,
    /// The greatest value below and the least above; where there is none on one side, the ends of the range.
    pub(crate) low: f64,
    pub(crate) high: f64,
    /// Whether the value lies between them.
    pub(crate) between: bool,
}

/// What machines with a fault show of one thing.
#[derive(Debug, Clone)]
struct Shows {
    at: usize,
    values: Vec<f64>,
    /// What rounding may make up between two machines.
    step: f64,
}

impl Shows {
    fn new(path: &Path, case: &Case) -> Self {
        let rounding = |system: System| {
            if path.steps.is_empty() {
                return Registry::get().seeing(system)[path.asked.index()].half_step();
            }
            odd::rounding(path, &case.values, &case.values, system)
        };
        let step = System::ALL.into_iter().map(rounding).fold(0.0, f64::max) * 2.0;
        Self { at: path.asked.index(), values: Vec::new(), step }
    }

    fn ends(&self) -> (f64, f64) {
        self.values
            .iter()
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| (low.min(*value), high.max(*value)))
    }

    /// How far a machine lies from all of them, as a multiple of what is allowed for; nought where it is near.
    fn off(&self, case: &Case) -> f64 {
        let value = case.values[self.at];
        let (low, high) = self.ends();
        let allowed = (NEAR * (high - low) + self.step).max(1e-9 * value.abs());
        let off = self.values.iter().map(|other| (other - value).abs()).fold(f64::INFINITY, f64::min);
        if off > allowed { off / allowed.max(f64::MIN_POSITIVE) } else { 0.0 }
    }

    fn against(&self, evidence: usize, case: &Case) -> Against {
        let value = case.values[self.at];
        let (low, high) = self.ends();
        let between = low < value && value < high;
        if !between {
            return Against { evidence, low, high, between };
        }
        let below = self.values.iter().copied().filter(|other| *other <= value).fold(low, f64::max);
        let above = self.values.iter().copied().filter(|other| *other >= value).fold(high, f64::min);
        Against { evidence, low: below, high: above, between }
    }
}

/// What of `case` machines with `faults` do not show, the clearest first; nothing where they may show all of it, or where
/// there is no such machine to hold against it.
pub(crate) fn against(plan: &Plan, ready: &Ready, case: &Case, faults: &[usize]) -> Vec<Against> {
    let mut shows: Vec<Shows> = ready.evidence.iter().map(|path| Shows::new(path, case)).collect();
    for machine in 0..MACHINES {
        let Ok(other) = plan.draw_like(case, &ready.held, faults, &ready.needs, derive(0x0061_6761_696e_7374, machine))
        else {
            return Vec::new();
        };
        shows.iter_mut().for_each(|shows| shows.values.push(other.values[shows.at]));
        // Once all of it is possible it stays so, and there is nothing more to look for.
        if machine % AT_A_TIME == AT_A_TIME - 1 && shows.iter().all(|shows| shows.off(case) == 0.0) {
            return Vec::new();
        }
    }
    let off = shows.iter().enumerate().map(|(place, shows)| (shows.off(case), place));
    let mut off: Vec<(f64, usize)> = off.filter(|(off, _)| *off > 0.0).collect();
    off.sort_by(|a, b| b.0.total_cmp(&a.0));
    off.into_iter().map(|(_, place)| shows[place].against(place, case)).collect()
}

/// The sentence against a fault.
fn says(ready: &Ready, question: &Question, with: &str, against: Against) -> String {
    let path = &ready.evidence[against.evidence];
    let quantity = path.asked.get();
    let seeing = Registry::get().seeing(question.system)[path.asked.index()];
    // As the instrument would show it; what is worked out, as it is usually written.
    let write = |value: f64| {
        let seen = seeing.see(value);
        amount::write(quantity, if seen.is_nan() { value } else { seen }, question.system)
    };
    let (low, high) = (write(against.low), write(against.high));
    let would = match against.between {
        true => OUTSIDE,
        false if low == high => EXACTLY,
        false => INSIDE,
    };
    let would = would.say(&[("with", with), ("quantity", quantity.name), ("low", &low), ("high", &high)]);
    let mut shown: Vec<f64> = vec![f64::NAN; question.case.values.len()];
    for id in path.uses() {
        shown[id.index()] = question.shown(id);
    }
    let here = match path.run(&mut shown) {
        Ok(value) if !path.steps.is_empty() => COMES_TO.say(&[("value", &write(value))]),
        _ => IT_IS.say(&[("value", &write(question.case.values[path.asked.index()]))]),
    };
    format!("{would}; {here}.")
}

messages! { pub(crate) SAYS {
    OUTSIDE = "diagnose-outside", "{with} the {quantity} would be at most about {low} or at least about {high}";
    EXACTLY = "diagnose-exactly", "{with} the {quantity} would be {low}";
    INSIDE = "diagnose-inside", "{with} the {quantity} would lie about {low} to {high}";
    COMES_TO = "diagnose-comes-to", "here it comes to {value}";
    IT_IS = "diagnose-it-is", "here it is {value}";
    NOTHING_WRONG = "diagnose-nothing-wrong", "Nothing is wrong";
    ALL_SOUND = "diagnose-all-sound", "Every reading lies where a sound machine's would.";
    WITH_NOTHING = "diagnose-with-nothing", "With nothing wrong";
    WITH_FAULT = "diagnose-with-fault", "With this fault alone ({fault})";
    ONLY_ONE = "diagnose-only-one", "Of these only “{fault}” gives every reading shown. {says}";
} }

messages! { pub(crate) AUTHOR_SAYS {
    OTHER_FAULT = "problem-diagnose-other-fault", "the machine has a fault that is not asked about";
    TWO_FAULTS = "problem-diagnose-two-faults", "the machine has two faults";
    UNSEEN = "problem-diagnose-unseen", "the fault does not show in the readings";
    FEW_RULED_OUT = "problem-diagnose-few-ruled-out", "too few faults can be ruled out by the readings";
} }

/// The answers to choose from.
///
/// # Errors
/// [`Unsettled::NoMachine`] where the machine has two faults, one that is not asked about, or one that does not show.
pub(crate) fn options(
    plan: &Plan,
    ready: &Ready,
    question: &Question,
    stream: &mut Stream,
) -> Result<Options, Unsettled> {
    let refused = |why: Message| Err(Unsettled::NoMachine(told!("{}", why.text())));
    let case = &question.case;
    let truth = match case.faults[..] {
        [] => None,
        [fault] if ready.faults.contains(&fault) => Some(fault),
        [_] => return refused(OTHER_FAULT),
        _ => return refused(TWO_FAULTS),
    };
    let name = |fault: Option<usize>| {
        fault.map_or_else(|| NOTHING_WRONG.text().to_owned(), |fault| capital(&plan.family.faults[fault].name))
    };
    let sound = if truth.is_some() { against(plan, ready, case, &[]) } else { Vec::new() };
    let mut options =
        Options { shown: vec![name(truth)], right: 0, against: vec![String::new()], because: String::new() };
    options.because = match truth {
        None => ALL_SOUND.text().to_owned(),
        Some(fault) => {
            let Some(first) = sound.first() else { return refused(UNSEEN) };
            let says = says(ready, question, WITH_NOTHING.text(), *first);
            options.shown.push(name(None));
            options.against.push(says.clone());
            ONLY_ONE.say(&[("fault", &plan.family.faults[fault].name), ("says", &says)])
        }
    };
    let mut others: Vec<usize> = ready.faults.iter().copied().filter(|fault| Some(*fault) != truth).collect();
    stream.shuffle(&mut others);
    for fault in others {
        if options.shown.len() > OTHERS {
            break;
        }
        let found = against(plan, ready, case, &[fault]);
        // A reading that tells the fault itself says more than one that tells that something else is wrong.
        let own = found.iter().find(|against| !sound.iter().any(|other| other.evidence == against.evidence));
        if let Some(against) = own.or(found.first()) {
            let with = WITH_FAULT.say(&[("fault", &plan.family.faults[fault].name)]);
            options.shown.push(name(Some(fault)));
            options.against.push(says(ready, question, &with, *against));
        }
    }
    if options.shown.len() < 3 {
        return refused(FEW_RULED_OUT);
    }
    Ok(options)
}
