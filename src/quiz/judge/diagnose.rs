//! Which fault explains all the readings.
//!
//! A fault is held against the machine at hand in three steps:
//!
//! 1. Machines with that fault, and nothing else wrong, are drawn on the same plates: the same row of the family's pool,
//!    and the machine's own value of everything that is shown and that no fault of the family changes (ambient
//!    temperature, marks). All the rest is free, because the person who judges does not know it either.
//! 2. For each reading, [`MACHINES`] of them give the range that the fault can show. It is widened by
//!    [`WIDER`] of itself at either end, since a sample never meets the very ends, and by a whole step of the coarser
//!    instrument of the two systems, since both readings are rounded.
//! 3. A fault is ruled out when one reading lies outside its range, and that reading is what the person is told.
//!    Readings are judged one at a time: a fault that only a pattern of several would rule out counts as possible. So
//!    what is called impossible is so by a wide margin, and what is merely unlikely is never offered as wrong.
//!
//! The right answer is offered with answers that are ruled out, up to [`OTHERS`] of them. “Nothing is wrong” is always
//! offered: where it cannot be ruled out for a faulty machine, the fault does not show, and the question is not put.

use drivecourse_machine::chance::{Stream, derive};
use drivecourse_machine::{Case, Plan, QuantityId, Registry, System, amount};

use super::{Options, capital};
use crate::question::Question;
use crate::setting::Unsettled;

/// Machines drawn to see what a fault can show.
pub(crate) const MACHINES: u64 = 96;
/// Machines after which a fault that has shown every reading is looked at again.
const AT_A_TIME: u64 = 8;
/// Share of a range by which it is widened at either end.
const WIDER: f64 = 0.15;
/// Most wrong answers offered.
const OTHERS: usize = 4;

/// A diagnosis made ready for one family.
#[derive(Debug, Clone)]
pub(crate) struct Ready {
    /// What is shown and no fault changes.
    pub(crate) held: Vec<QuantityId>,
    /// Faults to choose from.
    pub(crate) faults: Vec<usize>,
}

impl Ready {
    /// `None` where the family has none of the faults.
    pub(crate) fn new(plan: &Plan, shown: impl Iterator<Item = QuantityId>, among: &[String]) -> Option<Self> {
        let named = |place: &usize| among.is_empty() || among.contains(&plan.family.faults[*place].id);
        let faults: Vec<usize> = (0..plan.family.faults.len()).filter(named).collect();
        (!faults.is_empty()).then(|| Self { held: shown.filter(|id| plan.holds(*id)).collect(), faults })
    }
}

/// The reading that speaks against a fault, and what the fault would show.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Against {
    pub(crate) reading: QuantityId,
    pub(crate) low: f64,
    pub(crate) high: f64,
}

/// What machines with a fault show of one reading.
#[derive(Debug, Clone, Copy)]
struct Range {
    reading: QuantityId,
    low: f64,
    high: f64,
    /// A step of the coarser instrument.
    step: f64,
}

impl Range {
    fn new(reading: QuantityId) -> Self {
        let half = |system: System| Registry::get().seeing(system)[reading.index()].half_step();
        let step = System::ALL.into_iter().map(half).fold(0.0, f64::max) * 2.0;
        Self { reading, low: f64::INFINITY, high: f64::NEG_INFINITY, step }
    }

    fn take(&mut self, value: f64) {
        self.low = self.low.min(value);
        self.high = self.high.max(value);
    }

    /// How far `value` lies outside, as a multiple of what is allowed for; nought inside.
    fn outside(&self, value: f64) -> f64 {
        let allowed = WIDER * (self.high - self.low) + self.step;
        let off = (self.low - value).max(value - self.high);
        // A plate's value without a step: only equal is inside.
        let allowed = if allowed > 0.0 { allowed } else { 1e-9 * value.abs() };
        if off > allowed { off / allowed.max(f64::MIN_POSITIVE) } else { 0.0 }
    }
}

/// The reading of `case` that machines with `faults` do not show; `None` where they may show all of them, or where
/// there is no such machine to hold against it.
pub(crate) fn against(
    plan: &Plan,
    case: &Case,
    held: &[QuantityId],
    readings: &[QuantityId],
    faults: &[usize],
) -> Option<Against> {
    let mut ranges: Vec<Range> = readings.iter().map(|reading| Range::new(*reading)).collect();
    let worst = |ranges: &[Range]| {
        let off = ranges.iter().map(|range| (range.outside(case.values[range.reading.index()]), *range));
        off.filter(|(off, _)| *off > 0.0).max_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, range)| range)
    };
    for machine in 0..MACHINES {
        let other = plan.draw_like(case, held, faults, derive(0x0061_6761_696e_7374, machine)).ok()?;
        ranges.iter_mut().for_each(|range| range.take(other.values[range.reading.index()]));
        if machine % AT_A_TIME == AT_A_TIME - 1 {
            // Ranges only grow: what is possible now stays possible.
            worst(&ranges)?;
        }
    }
    worst(&ranges).map(|range| Against { reading: range.reading, low: range.low, high: range.high })
}

/// The answers to choose from.
///
/// # Errors
/// [`Unsettled::NoMachine`] where the machine has two faults, one that is not asked about, or one that does not show.
pub(crate) fn options(
    plan: &Plan,
    ready: &Ready,
    readings: &[QuantityId],
    question: &Question,
    stream: &mut Stream,
) -> Result<Options, Unsettled> {
    let refused = |why: &str| Err(Unsettled::NoMachine(why.to_owned()));
    let case = &question.case;
    let truth = match case.faults[..] {
        [] => None,
        [fault] if ready.faults.contains(&fault) => Some(fault),
        [_] => return refused("the machine has a fault that is not asked about"),
        _ => return refused("the machine has two faults"),
    };
    let name = |fault: Option<usize>| {
        fault.map_or_else(|| "Nothing is wrong".to_owned(), |fault| capital(&plan.family.faults[fault].name))
    };
    let says = |fault: Option<usize>, against: Against| {
        let quantity = against.reading.get();
        // As the instrument would show it.
        let seeing = Registry::get().seeing(question.system)[against.reading.index()];
        let write = |value| amount::write(quantity, seeing.see(value), question.system);
        let (low, high, here) = (write(against.low), write(against.high), write(case.values[against.reading.index()]));
        let would = if low == high { format!("would be {low}") } else { format!("would lie about {low} to {high}") };
        let with = fault.map_or_else(
            || "With nothing wrong".to_owned(),
            |fault| format!("With this fault alone ({})", plan.family.faults[fault].name),
        );
        format!("{with} the {} {would}; it is {here}.", quantity.name)
    };
    let ruled_out = |fault: Option<usize>| {
        let faults: Vec<usize> = fault.into_iter().collect();
        against(plan, case, &ready.held, readings, &faults).map(|found| says(fault, found))
    };
    let mut options =
        Options { shown: vec![name(truth)], right: 0, against: vec![String::new()], because: String::new() };
    options.because = match truth {
        None => "Every reading lies where a sound machine's would.".to_owned(),
        Some(fault) => {
            let Some(sound) = ruled_out(None) else { return refused("the fault does not show in the readings") };
            options.shown.push(name(None));
            options.against.push(sound.clone());
            format!("Of these only “{}” gives every reading shown. {sound}", plan.family.faults[fault].name)
        }
    };
    let mut others: Vec<usize> = ready.faults.iter().copied().filter(|fault| Some(*fault) != truth).collect();
    stream.shuffle(&mut others);
    for fault in others {
        if options.shown.len() > OTHERS {
            break;
        }
        if let Some(says) = ruled_out(Some(fault)) {
            options.shown.push(name(Some(fault)));
            options.against.push(says);
        }
    }
    if options.shown.len() < 3 {
        return refused("too few faults can be ruled out by the readings");
    }
    Ok(options)
}
