//! At which age of the drive each check falls due.
//!
//! # Source
//! Common practice, no source: intervals that grow from hours to days to weeks. The maker's instructions and the plant's own
//! experience come first.

/// What is looked at again.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Check {
    /// Housing temperature over ambient.
    Temperature,
    /// Vibration at the bearings.
    Vibration,
    /// Noise.
    Noise,
    /// Torque of base bolts and bushing screws.
    Bolts,
    /// Soft foot and alignment.
    SoftFoot,
    /// Chain sag and wear.
    ChainTension,
    /// Oil level, leaks and breather.
    OilLevel,
}

impl Check {
    /// Every check.
    pub const ALL: [Self; 7] = [
        Self::Temperature,
        Self::Vibration,
        Self::Noise,
        Self::Bolts,
        Self::SoftFoot,
        Self::ChainTension,
        Self::OilLevel,
    ];

    /// Whether the drive must be isolated, locked out and verified dead for it.
    pub const fn needs_lock_out(self) -> bool {
        match self {
            Self::Temperature | Self::Vibration | Self::Noise => false,
            Self::Bolts | Self::SoftFoot | Self::ChainTension | Self::OilLevel => true,
        }
    }

    /// Ages at which the check is due, in hours since the start; afterwards its last interval repeats.
    pub const fn ages_in_hours(self) -> &'static [f64] {
        match self {
            Self::Temperature | Self::Vibration | Self::Noise => &WATCHED,
            Self::Bolts => &BOLTS,
            Self::SoftFoot => &SOFT_FOOT,
            Self::ChainTension => &CHAIN,
            Self::OilLevel => &OIL,
        }
    }
}

const DAY: f64 = 24.0;
const WEEK: f64 = 7.0 * DAY;

/// Readings taken while it runs.
const WATCHED: [f64; 10] = [1.0, 2.0, 4.0, 8.0, DAY, 3.0 * DAY, WEEK, 2.0 * WEEK, 4.0 * WEEK, 8.0 * WEEK];

/// Bolts settle in the first shift and the first week.
const BOLTS: [f64; 5] = [8.0, 3.0 * DAY, WEEK, 4.0 * WEEK, 12.0 * WEEK];

/// The base settles more slowly.
const SOFT_FOOT: [f64; 4] = [3.0 * DAY, 2.0 * WEEK, 8.0 * WEEK, 26.0 * WEEK];

/// A new chain stretches most in its first day.
const CHAIN: [f64; 7] = [8.0, DAY, 3.0 * DAY, WEEK, 2.0 * WEEK, 4.0 * WEEK, 8.0 * WEEK];

/// Oil level, read stopped.
const OIL: [f64; 6] = [8.0, DAY, 3.0 * DAY, WEEK, 2.0 * WEEK, 4.0 * WEEK];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn intervals_never_shrink() {
        for check in Check::ALL {
            let ages = check.ages_in_hours();
            assert!(ages.len() >= 2 && ages[0] > 0.0, "{check:?}");
            let mut last = 0.0;
            for pair in ages.windows(2) {
                let step = pair[1] - pair[0];
                assert!(step > 0.0 && step >= last, "{check:?} at {} h", pair[1]);
                last = step;
            }
        }
    }

    #[test]
    fn hands_need_a_lock() {
        assert!(Check::ALL.iter().filter(|check| check.needs_lock_out()).count() == 4);
        assert!(!Check::Temperature.needs_lock_out() && Check::ChainTension.needs_lock_out());
    }
}
