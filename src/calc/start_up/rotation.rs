//! Which way the shafts turn, all of them seen from one and the same side.

use crate::Result;
use crate::error::within;

#[cfg(any(doc, test))]
use crate::Error;

/// Most gear stages accepted.
pub const MOST_STAGES: u32 = 20;

/// Which way a shaft turns.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Way {
    /// With the clock.
    Clockwise,
    /// Against the clock.
    Anticlockwise,
}

impl Way {
    /// The other way round.
    #[must_use]
    pub const fn reversed(self) -> Self {
        match self {
            Self::Clockwise => Self::Anticlockwise,
            Self::Anticlockwise => Self::Clockwise,
        }
    }
}

/// Which way the shaft at one end of a gear train turns when that at the other end turns `way`.
///
/// # Formula
/// every pair of outside-toothed gears turns it round: an even number of stages leaves it as it is.
///
/// # Source
/// Derived: two gears that roll on one another turn opposite ways. Parallel shafts only; both are seen from the same side.
///
/// # Errors
/// [`Error::OutOfRange`] unless there are 1 to [`MOST_STAGES`] stages.
///
/// # Example
/// ```
/// use drivecourse_calc::start_up::rotation::{Way, through};
/// assert_eq!(through(Way::Clockwise, 3)?, Way::Anticlockwise);
/// assert_eq!(through(Way::Clockwise, 2)?, Way::Clockwise);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: the motor looked at from its fan, and the output shaft from its free end on the other side.
pub fn through(way: Way, stages: u32) -> Result<Way> {
    within("number of stages", f64::from(stages), 1.0, f64::from(MOST_STAGES))?;
    Ok(if stages.is_multiple_of(2) { way } else { way.reversed() })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn there_and_back_is_the_same_way() {
        for stages in 1..=5 {
            for way in [Way::Clockwise, Way::Anticlockwise] {
                assert_eq!(through(through(way, stages).unwrap(), stages).unwrap(), way);
            }
        }
        assert!(matches!(through(Way::Clockwise, 0), Err(Error::OutOfRange { .. })));
    }
}
