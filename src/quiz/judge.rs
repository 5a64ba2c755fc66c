//! Judgement: which fault explains the readings, which number on a sheet is wrong, accept, adjust or stop.
//!
//! No answer stands in a list. Each is found out from the machine that was drawn, and a question is put only where the
//! readings shown leave exactly one of the offered answers standing; else another machine is drawn.
//!
//! * `diagnose`: a fault is ruled out by a reading that no machine with that fault, on these plates, would show
//! * `odd`: a number is the odd one out when the others agree by the registry's relations, and only without it
//! * `decide`: the gravest of some verdicts, each worked out from what is shown

pub(crate) mod decide;
pub(crate) mod diagnose;
pub(crate) mod odd;
#[cfg(test)]
mod tests;

use drivecourse_machine::chance::Stream;
use drivecourse_machine::packed;
use drivecourse_machine::packed::{Packed, Reader};
use drivecourse_machine::told;
use drivecourse_machine::{NoPath, Path, PathChoice, Plan, QuantityId, messages};

use crate::question::{Body, Question};
use crate::setting::Unsettled;

messages! { pub(crate) AUTHOR_SAYS {
    UNREADY = "problem-judge-unready", "the part was not made ready";
} }

/// What is judged, and from what.
#[derive(Debug, Clone, PartialEq)]
pub enum Judge {
    /// Which fault, or none, gives all the readings.
    Diagnose {
        /// Readings to tell the faults by.
        readings: Vec<QuantityId>,
        /// What is worked out from them to tell the faults by, and not shown.
        weigh: Vec<QuantityId>,
        /// Shown besides.
        also: Vec<QuantityId>,
        /// Faults to choose from; empty for all of the family's.
        among: Vec<String>,
        /// What the author adds to the explanation.
        because: String,
    },
    /// Which number of a sheet does not belong to the others.
    Odd {
        /// The numbers, one of which is falsified.
        sheet: Vec<QuantityId>,
        /// Shown besides, and right.
        also: Vec<QuantityId>,
        /// What the author adds to the explanation.
        because: String,
    },
    /// Accept, adjust or stop.
    Decide {
        /// What is shown.
        from: Vec<QuantityId>,
        /// Shown besides.
        also: Vec<QuantityId>,
        /// What calls for adjusting or stopping; whatever is not named is accepted.
        findings: Vec<Finding>,
        /// What the author adds to the explanation.
        because: String,
    },
    /// What decides the decision in the part before.
    Reason {
        /// What the author adds to the explanation.
        because: String,
    },
}

impl Judge {
    /// Everything it shows, readings first.
    pub fn shown(&self) -> impl Iterator<Item = QuantityId> + '_ {
        let (first, also) = self.shown_and_also();
        first.iter().chain(also).copied()
    }

    /// The readings that it is judged by, and what else is shown.
    pub(crate) fn shown_and_also(&self) -> (&[QuantityId], &[QuantityId]) {
        match self {
            Self::Diagnose { readings, also, .. } => (readings, also),
            Self::Odd { sheet, also, .. } => (sheet, also),
            Self::Decide { from, also, .. } => (from, also),
            Self::Reason { .. } => (&[], &[]),
        }
    }
}

/// What is done about a machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Call {
    /// It may run as it is.
    Accept,
    /// It must be put right.
    Adjust,
    /// It must not run.
    Stop,
}

impl Call {
    /// From the lightest to the gravest.
    pub const ALL: [Self; 3] = [Self::Accept, Self::Adjust, Self::Stop];

    /// As items write it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Accept => "accept",
            Self::Adjust => "adjust",
            Self::Stop => "stop",
        }
    }

    /// The call that items write as `word`.
    pub fn from_word(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|call| call.word() == word)
    }
}

/// A verdict that calls for something.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    /// The verdict.
    pub on: QuantityId,
    /// Which of its choices.
    pub when: usize,
    /// What that calls for.
    pub call: Call,
    /// Why, as a sentence without its full stop.
    pub reason: String,
}

packed!(Finding { on, when, call, reason });

impl Packed for Call {
    fn pack(&self, out: &mut String) {
        (*self as u8).pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        from.choose(&Self::ALL)
    }
}

impl Packed for Judge {
    fn pack(&self, out: &mut String) {
        let because = match self {
            Self::Diagnose { readings, weigh, also, among, because } => {
                (0_u8, (readings.clone(), (weigh.clone(), (also.clone(), among.clone())))).pack(out);
                because
            }
            Self::Odd { sheet, also, because } => {
                (1_u8, (sheet.clone(), also.clone())).pack(out);
                because
            }
            Self::Decide { from, also, findings, because } => {
                (2_u8, (from.clone(), (also.clone(), findings.clone()))).pack(out);
                because
            }
            Self::Reason { because } => {
                3_u8.pack(out);
                because
            }
        };
        because.pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        match u8::unpack(from) {
            0 => {
                let ((readings, weigh), ((also, among), because)) = Packed::unpack(from);
                Self::Diagnose { readings, weigh, also, among, because }
            }
            1 => {
                let ((sheet, also), because) = Packed::unpack(from);
                Self::Odd { sheet, also, because }
            }
            2 => {
                let ((from, also), (findings, because)) = Packed::unpack(from);
                Self::Decide { from, also, findings, because }
            }
            _ => Self::Reason { because: Packed::unpack(from) },
        }
    }
}

/// A judgement made ready for one family.
#[derive(Debug, Clone)]
pub(crate) enum Ready {
    /// Nothing to prepare.
    Plain,
    /// What no fault changes, and the faults to choose from.
    Diagnose(diagnose::Ready),
    /// How the numbers follow from each other.
    Odd(odd::Sheet),
    /// The way to each finding's verdict.
    Decide(Vec<Path>),
}

impl Ready {
    /// The ways to what is weighed or decided by.
    pub(crate) fn paths(&self) -> &[Path] {
        match self {
            Self::Plain | Self::Odd(_) => &[],
            Self::Diagnose(ready) => &ready.evidence,
            Self::Decide(paths) => paths,
        }
    }
}

/// Makes `judge`, part `part` of an item, ready for the machines of `plan`.
pub(crate) fn ready(judge: &Judge, plan: &Plan, part: usize) -> Result<Ready, Unsettled> {
    match judge {
        Judge::Diagnose { readings, weigh, among, .. } => {
            let shown: Vec<_> = judge.shown().collect();
            diagnose::Ready::new(plan, part, &shown, (readings, weigh), among).map(Ready::Diagnose)
        }
        Judge::Odd { sheet, also, .. } => Ok(Ready::Odd(odd::Sheet::new(sheet, also))),
        Judge::Decide { from, also, findings, .. } => {
            let given: Vec<_> = from.iter().chain(also).copied().collect();
            let way = |finding: &Finding| Path::find(&given, finding.on, &PathChoice::default());
            let paths = findings.iter().map(way).collect::<Result<_, NoPath>>();
            paths.map(Ready::Decide).map_err(|missing| Unsettled::NoPath { part, missing })
        }
        Judge::Reason { .. } => Ok(Ready::Plain),
    }
}

/// A judgement put about one machine.
pub(crate) struct Put {
    /// What is shown for it, one number falsified if that is asked.
    pub(crate) givens: Vec<(QuantityId, f64)>,
    /// The statements.
    pub(crate) body: Body,
    /// How hard it is to find.
    pub(crate) difficulty: f64,
}

/// Puts `judge` about the machine of `question`; `before` is the decision in the part before.
///
/// # Errors
/// [`Unsettled::NoMachine`] where this machine leaves more than one answer standing, or none.
pub(crate) fn put(
    plan: &Plan,
    (judge, ready): (&Judge, &Ready),
    before: Option<(&Judge, &Ready)>,
    question: &Question,
    bits: u64,
) -> Result<Put, Unsettled> {
    let mut stream = Stream::new(bits, "judgement");
    let givens: Vec<_> = judge.shown().map(|id| (id, question.shown(id))).collect();
    match (judge, ready, before) {
        (Judge::Diagnose { readings, because, .. }, Ready::Diagnose(ready), _) => {
            let options = diagnose::options(plan, ready, question, &mut stream)?;
            let difficulty = 1.0 + 0.5 * readings.len() as f64;
            Ok(Put { givens, body: options.body(because, None, &mut stream), difficulty })
        }
        (Judge::Odd { because, .. }, Ready::Odd(sheet), _) => {
            let (givens, options) = odd::options(sheet, givens, question.system, &mut stream)?;
            let difficulty = 1.0 + 0.5 * options.shown.len() as f64;
            Ok(Put { givens, body: options.body(because, None, &mut stream), difficulty })
        }
        (Judge::Decide { findings, because, .. }, Ready::Decide(paths), _) => {
            let decision = decide::decide(findings, paths, question)?;
            let difficulty = 1.0 + paths.iter().map(|path| 0.5 * path.steps.len() as f64).sum::<f64>();
            // The first option is to accept.
            let grave = (decision.call() == Call::Stop).then_some(0);
            Ok(Put { givens, body: decision.calls().body(because, grave, &mut stream), difficulty })
        }
        (Judge::Reason { because }, _, Some((Judge::Decide { findings, .. }, Ready::Decide(paths)))) => {
            let options = decide::decide(findings, paths, question)?.reasons()?;
            Ok(Put { givens, body: options.body(because, None, &mut stream), difficulty: 1.0 })
        }
        _ => Err(Unsettled::NoMachine(told!("{}", UNREADY.text()))),
    }
}

/// Statements to choose from, in no order yet.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Options {
    /// The statements.
    pub(crate) shown: Vec<String>,
    /// Place of the right one.
    pub(crate) right: usize,
    /// For each, what speaks against it; empty for the right one.
    pub(crate) against: Vec<String>,
    /// Why the right one is right.
    pub(crate) because: String,
}

impl Options {
    /// Shuffled, with what the author adds; `grave` is the one that would put people in danger.
    fn body(self, added: &str, grave: Option<usize>, stream: &mut Stream) -> Body {
        let mut places: Vec<usize> = (0..self.shown.len()).collect();
        stream.shuffle(&mut places);
        let now = |old: usize| places.iter().position(|place| *place == old);
        let because = if added.is_empty() { self.because } else { format!("{} {added}", self.because) };
        Body::Pick {
            right: now(self.right).unwrap_or(self.right),
            grave: grave.and_then(now),
            shown: places.iter().map(|place| self.shown[*place].clone()).collect(),
            against: places.iter().map(|place| self.against[*place].clone()).collect(),
            because,
        }
    }
}

/// `text` with a capital at its beginning.
fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| first.to_uppercase().chain(chars).collect())
}
