//! The order of the whole job, from lock-out to recheck.

/// One step of the job.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Step {
    /// Shut down, isolate, lock and tag.
    LockOut,
    /// Relieve stored energy and verify that there is none.
    VerifyZeroEnergy,
    /// Check: soft foot, oil, alignment, sag, bolts.
    Check,
    /// Adjust what the check found.
    Adjust,
    /// Put every guard back on.
    GuardsOn,
    /// Clear tools and people.
    PeopleClear,
    /// Remove the locks and start.
    Start,
    /// Watch temperature, vibration, noise.
    Watch,
    /// Recheck after the run-in, locked out again.
    Recheck,
}

/// The steps in their order.
///
/// # Source
/// The steps up to verified zero energy: OSHA, 29 CFR 1910.147 (d); the rest common practice, no source.
pub const ORDER: [Step; 9] = [
    Step::LockOut,
    Step::VerifyZeroEnergy,
    Step::Check,
    Step::Adjust,
    Step::GuardsOn,
    Step::PeopleClear,
    Step::Start,
    Step::Watch,
    Step::Recheck,
];

/// What is wrong with an order of steps.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fault {
    /// It does not hold this step.
    Missing(Step),
    /// It holds this step more than once.
    Repeated(Step),
    /// The step at this place (counted from 1) comes after one that should follow it.
    TooLate {
        /// Place in the order.
        place: usize,
        /// The step.
        step: Step,
    },
}

impl Fault {
    /// Whether somebody can be hurt by it: hands in the drive before it is dead, or a start before guards and people.
    pub const fn is_dangerous(self) -> bool {
        match self {
            Self::Missing(step) | Self::Repeated(step) | Self::TooLate { step, .. } => {
                matches!(step, Step::LockOut | Step::VerifyZeroEnergy | Step::GuardsOn | Step::PeopleClear)
            }
        }
    }
}

/// The first fault of an order of steps, `None` when it is right.
///
/// # Source
/// As [`ORDER`].
///
/// # Example
/// ```
/// use drivecourse_calc::follow_up::job::{Fault, ORDER, Step, fault};
/// assert_eq!(fault(&ORDER), None);
/// let mut order = ORDER;
/// order.swap(4, 6); // started, then guarded
/// let found = fault(&order).unwrap();
/// assert!(found.is_dangerous());
/// ```
pub fn fault(order: &[Step]) -> Option<Fault> {
    for step in ORDER {
        match order.iter().filter(|&&given| given == step).count() {
            0 => return Some(Fault::Missing(step)),
            1 => {}
            _ => return Some(Fault::Repeated(step)),
        }
    }
    // Of several late steps the one that belongs earliest is named.
    let late = ORDER.iter().find_map(|&step| {
        let place = order.iter().position(|&given| given == step)?;
        order[..place].iter().any(|&before| before > step).then_some((place, step))
    });
    late.map(|(place, step)| Fault::TooLate { place: place + 1, step })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_right_order_passes() {
        assert_eq!(fault(&ORDER), None);
        for (i, &step) in ORDER.iter().enumerate().take(8) {
            let mut order = ORDER;
            order.swap(i, i + 1);
            assert_eq!(fault(&order), Some(Fault::TooLate { place: i + 2, step }));
        }
    }

    #[test]
    fn missing_and_repeated_steps() {
        assert_eq!(fault(&[]), Some(Fault::Missing(Step::LockOut)));
        assert_eq!(fault(&ORDER[..8]), Some(Fault::Missing(Step::Recheck)));
        let mut order = ORDER.to_vec();
        order.push(Step::Check);
        assert_eq!(fault(&order), Some(Fault::Repeated(Step::Check)));
    }

    #[test]
    fn some_faults_hurt() {
        assert!(Fault::Missing(Step::VerifyZeroEnergy).is_dangerous());
        assert!(Fault::TooLate { place: 7, step: Step::GuardsOn }.is_dangerous());
        assert!(!Fault::Missing(Step::Recheck).is_dangerous());
    }
}
