//! Accept, adjust or stop, and what decides it.

use drivecourse_machine::told;
use drivecourse_machine::{Path, amount, messages};

use super::{Call, Finding, Options, capital};
use crate::question::Question;
use crate::setting::Unsettled;

/// What the findings come to on one machine.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Decision<'a> {
    findings: &'a [Finding],
    /// What each finding's verdict is.
    verdicts: Vec<usize>,
}

/// Works every verdict out from what is shown.
///
/// # Errors
/// [`Unsettled::NoMachine`] where a step has no result, and where the readings round a verdict to the other side of its
/// limit: what is shown would then call for something else than the machine does.
pub(crate) fn decide<'a>(
    findings: &'a [Finding],
    paths: &[Path],
    question: &Question,
) -> Result<Decision<'a>, Unsettled> {
    let mut verdicts = Vec::with_capacity(findings.len());
    for (finding, path) in findings.iter().zip(paths) {
        let mut shown: Vec<f64> = vec![f64::NAN; question.case.values.len()];
        let mut hidden = question.case.values.clone();
        for id in path.uses() {
            shown[id.index()] = question.shown(id);
        }
        let refused = |(_, error)| Unsettled::NoMachine(told!("{}: {error}", finding.on.get().id));
        let verdict = path.run(&mut shown).map_err(refused)?;
        if path.run(&mut hidden).map_err(refused)? != verdict {
            return Err(Unsettled::NoMachine(told!("{}", AT_LIMIT.say(&[("quantity", finding.on.get().id)]))));
        }
        verdicts.push(verdict as usize);
    }
    Ok(Decision { findings, verdicts })
}

messages! { pub(crate) AUTHOR_SAYS {
    AT_LIMIT = "problem-decide-at-limit", "{quantity} lies at its limit";
    ALIKE = "problem-decide-alike", "two findings decide it alike";
} }

messages! { pub(crate) SAYS {
    ALL_WELL = "decide-all-well", "Every value shown keeps its limit";
    ACCEPT = "decide-accept", "Accept: it may run as it is";
    ADJUST = "decide-adjust", "Adjust: it is put right before it is accepted";
    STOP = "decide-stop", "Stop: it must not run until the cause is found and put right";
    NO_NEED = "decide-no-need", "{reason}; nothing calls for that.";
    DANGER = "decide-danger", "{reason}. It must not run: people would stand beside a machine that may fail.";
    NOT_SO = "decide-not-so", "{reason}. It may not stay so.";
    NO_WAITING = "decide-no-waiting", "{reason}. That cannot wait: it must not run meanwhile.";
    NO_STOP = "decide-no-stop", "{reason}. That is put right; nothing shown calls for stopping it.";
    ONLY_ADJUST = "decide-only-adjust", "That is true, and it calls only for adjusting. {reason}.";
    VERDICT_IS = "decide-verdict-is", "The {quantity} is “{verdict}”.";
} }

impl Decision<'_> {
    /// Findings that hold, with their places.
    fn holding(&self) -> impl Iterator<Item = &Finding> {
        self.findings.iter().zip(&self.verdicts).filter(|(finding, verdict)| finding.when == **verdict).map(|(f, _)| f)
    }

    /// The gravest call.
    pub(crate) fn call(&self) -> Call {
        self.holding().map(|finding| finding.call).max().unwrap_or(Call::Accept)
    }

    /// The reasons for the gravest call.
    fn reason(&self) -> String {
        let call = self.call();
        let reasons: Vec<_> =
            self.holding().filter(|finding| finding.call == call).map(|finding| finding.reason.as_str()).collect();
        if reasons.is_empty() { ALL_WELL.text().to_owned() } else { reasons.join("; ") }
    }

    /// The three calls.
    pub(crate) fn calls(&self) -> Options {
        let (right, reason) = (self.call(), self.reason());
        let shown = Call::ALL.map(|call| {
            match call {
                Call::Accept => ACCEPT,
                Call::Adjust => ADJUST,
                Call::Stop => STOP,
            }
            .text()
            .to_owned()
        });
        let against = Call::ALL.map(|call| match (call, right) {
            _ if call == right => String::new(),
            (_, Call::Accept) => NO_NEED.say(&[("reason", ALL_WELL.text())]),
            (Call::Accept, Call::Stop) => DANGER.say(&[("reason", &reason)]),
            (Call::Accept, _) => NOT_SO.say(&[("reason", &reason)]),
            (_, Call::Stop) => NO_WAITING.say(&[("reason", &reason)]),
            _ => NO_STOP.say(&[("reason", &reason)]),
        });
        Options {
            shown: shown.into(),
            right: Call::ALL.iter().position(|call| *call == right).unwrap_or(0),
            against: against.into(),
            because: format!("{reason}."),
        }
    }

    /// The reasons to choose from.
    ///
    /// # Errors
    /// [`Unsettled::NoMachine`] where two findings decide it alike.
    pub(crate) fn reasons(&self) -> Result<Options, Unsettled> {
        let right = self.call();
        let mut options =
            Options { shown: Vec::new(), right: 0, against: Vec::new(), because: format!("{}.", self.reason()) };
        let mut deciding = 0;
        for (finding, verdict) in self.findings.iter().zip(&self.verdicts) {
            let holds = finding.when == *verdict;
            options.shown.push(capital(&finding.reason));
            options.against.push(if holds && finding.call == right {
                options.right = options.shown.len() - 1;
                deciding += 1;
                String::new()
            } else if holds {
                ONLY_ADJUST.say(&[("reason", &capital(&self.reason()))])
            } else {
                let says = amount::choice(finding.on.get(), *verdict as f64).unwrap_or("?");
                VERDICT_IS.say(&[("quantity", finding.on.get().name), ("verdict", says)])
            });
        }
        options.shown.push(ALL_WELL.text().to_owned());
        options.against.push(if right == Call::Accept { String::new() } else { format!("{}.", self.reason()) });
        if right == Call::Accept {
            options.right = options.shown.len() - 1;
        } else if deciding != 1 {
            return Err(Unsettled::NoMachine(told!("{}", ALIKE.text())));
        }
        Ok(options)
    }
}
