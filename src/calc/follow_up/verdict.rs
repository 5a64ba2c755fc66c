//! The verdict on the whole machine, and who may sign it.

use crate::vibrate::zone::Zone;
use crate::{Error, Result};

/// What follows from a check, or from all of them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// It may run as it is.
    Accept,
    /// It must be put right; until then it runs only as far as whoever is responsible allows.
    Adjust,
    /// It must not run.
    Stop,
}

/// One check and what came of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Finding {
    /// Verdict of the check.
    pub verdict: Verdict,
    /// Whether people depend on it: guards, lock-out, loose bolts, a bushing or key that may let go.
    pub safety_critical: bool,
    /// Whether it is still open: not made, or its remedy not yet made and checked.
    pub open: bool,
}

impl Finding {
    /// Verdict that the finding gives the machine.
    ///
    /// # Formula
    /// Open and safety-critical: stop. Open otherwise: its own verdict, but at least adjust. Closed: its own verdict.
    ///
    /// # Source
    /// Common practice, no source.
    pub fn counts_as(&self) -> Verdict {
        match (self.open, self.safety_critical) {
            (true, true) => Verdict::Stop,
            (true, false) => self.verdict.max(Verdict::Adjust),
            (false, _) => self.verdict,
        }
    }
}

/// Verdict on the whole machine: the worst of all findings.
///
/// # Formula
/// `max` over [`Finding::counts_as`], with accept < adjust < stop.
///
/// # Source
/// Common practice, no source.
///
/// # Errors
/// [`Error::NoSolution`] without any finding: an unchecked machine is not accepted.
///
/// # Example
/// ```
/// use drivecourse_calc::follow_up::verdict::{Finding, Verdict, whole_machine};
/// let good = Finding { verdict: Verdict::Accept, safety_critical: false, open: false };
/// let slack_chain = Finding { verdict: Verdict::Adjust, ..good };
/// let no_guard = Finding { safety_critical: true, open: true, ..good };
/// assert_eq!(whole_machine(&[good, slack_chain])?, Verdict::Adjust);
/// assert_eq!(whole_machine(&[good, slack_chain, no_guard])?, Verdict::Stop);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: the majority of good checks outvoting one bad one.
pub fn whole_machine(findings: &[Finding]) -> Result<Verdict> {
    findings.iter().map(Finding::counts_as).max().ok_or(Error::none("verdict"))
}

/// Verdict that a zone of vibration severity gives.
///
/// # Formula
/// A, B: accept; C: adjust; D: stop.
///
/// # Source
/// ISO 20816-1, meaning of the zones (from memory).
pub fn of_zone(zone: Zone) -> Verdict {
    match zone {
        Zone::A | Zone::B => Verdict::Accept,
        Zone::C => Verdict::Adjust,
        Zone::D => Verdict::Stop,
    }
}

/// Who puts the name under the verdict.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Signatory {
    /// Trained and found competent for this work.
    pub competent: bool,
    /// Authorised by the plant to release machines.
    pub authorised: bool,
    /// Holds the licence, where local law asks for one.
    pub licensed: bool,
}

/// Why a machine cannot be signed off.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hindrance {
    /// A safety-critical finding is open.
    SafetyOpen,
    /// The verdict on the machine is not accept.
    NotAccepted(Verdict),
    /// Nothing was checked.
    NothingChecked,
    /// The person is not competent for this work: an apprentice signs with a supervisor.
    NotCompetent,
    /// The person is not authorised by the plant.
    NotAuthorised,
    /// Local law asks for a licence that the person has not.
    NotLicensed,
}

/// What stands in the way of signing the machine off, `None` when it may be signed. The gravest is named.
///
/// # Source
/// Common practice, no source. Local law and the plant's own rules say who is competent, authorised and licensed.
///
/// # Example
/// ```
/// use drivecourse_calc::follow_up::verdict::{Finding, Hindrance, Signatory, Verdict, hindrance};
/// let good = Finding { verdict: Verdict::Accept, safety_critical: true, open: false };
/// let master = Signatory { competent: true, authorised: true, licensed: true };
/// assert_eq!(hindrance(&[good], &master, true), None);
/// let open = Finding { open: true, ..good };
/// assert_eq!(hindrance(&[good, open], &master, true), Some(Hindrance::SafetyOpen));
/// ```
pub fn hindrance(findings: &[Finding], signatory: &Signatory, licence_needed: bool) -> Option<Hindrance> {
    if findings.iter().any(|finding| finding.open && finding.safety_critical) {
        return Some(Hindrance::SafetyOpen);
    }
    match whole_machine(findings) {
        Err(_) => Some(Hindrance::NothingChecked),
        Ok(verdict) if verdict != Verdict::Accept => Some(Hindrance::NotAccepted(verdict)),
        Ok(_) if !signatory.competent => Some(Hindrance::NotCompetent),
        Ok(_) if !signatory.authorised => Some(Hindrance::NotAuthorised),
        Ok(_) if licence_needed && !signatory.licensed => Some(Hindrance::NotLicensed),
        Ok(_) => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const VERDICTS: [Verdict; 3] = [Verdict::Accept, Verdict::Adjust, Verdict::Stop];
    const GOOD: Finding = Finding { verdict: Verdict::Accept, safety_critical: false, open: false };
    const MASTER: Signatory = Signatory { competent: true, authorised: true, licensed: false };

    #[test]
    fn the_worst_governs_in_any_order() {
        for a in VERDICTS {
            for b in VERDICTS {
                let pair = [Finding { verdict: a, ..GOOD }, Finding { verdict: b, ..GOOD }];
                assert_eq!(whole_machine(&pair), Ok(if a > b { a } else { b }));
                let many = [[GOOD; 20].as_slice(), &pair].concat();
                assert_eq!(whole_machine(&many), whole_machine(&pair), "good checks do not outvote");
            }
        }
        assert_eq!(whole_machine(&[]), Err(Error::none("verdict")));
    }

    #[test]
    fn what_is_open_counts_for_more() {
        for verdict in VERDICTS {
            let open = Finding { verdict, open: true, ..GOOD };
            assert!(open.counts_as() >= Verdict::Adjust && open.counts_as() >= verdict);
            assert_eq!(Finding { safety_critical: true, ..open }.counts_as(), Verdict::Stop);
            assert_eq!(Finding { safety_critical: true, verdict, ..GOOD }.counts_as(), verdict);
        }
    }

    #[test]
    fn who_may_sign() {
        assert_eq!(hindrance(&[GOOD], &MASTER, false), None);
        assert_eq!(hindrance(&[GOOD], &MASTER, true), Some(Hindrance::NotLicensed));
        let apprentice = Signatory { competent: false, ..MASTER };
        assert_eq!(hindrance(&[GOOD], &apprentice, false), Some(Hindrance::NotCompetent));
        let visitor = Signatory { authorised: false, ..MASTER };
        assert_eq!(hindrance(&[GOOD], &visitor, false), Some(Hindrance::NotAuthorised));
        assert_eq!(hindrance(&[], &MASTER, false), Some(Hindrance::NothingChecked));
        let slack = Finding { verdict: Verdict::Adjust, ..GOOD };
        assert_eq!(hindrance(&[GOOD, slack], &MASTER, false), Some(Hindrance::NotAccepted(Verdict::Adjust)));
        // an open guard comes before every other hindrance
        let guard = Finding { safety_critical: true, open: true, ..GOOD };
        assert_eq!(hindrance(&[guard, slack], &apprentice, true), Some(Hindrance::SafetyOpen));
    }

    #[test]
    fn zones() {
        assert_eq!([Zone::A, Zone::B, Zone::C, Zone::D].map(of_zone)[1..], VERDICTS);
    }
}
