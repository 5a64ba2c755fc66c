//! The four zones of vibration severity.

use super::Measured;
use crate::Result;
use crate::error::{positive, within};

#[cfg(any(doc, test))]
use crate::Error;

/// How severe a vibration is.
///
/// # Source
/// ISO 20816-1, zones (meaning from memory).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Zone {
    /// Usual for a newly commissioned machine.
    A,
    /// Acceptable for long-term running.
    B,
    /// Not satisfactory for long-term running: run for a limited time until it can be put right.
    C,
    /// Severe enough to damage the machine.
    D,
}

/// The boundaries between the zones, for one quantity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits<Q> {
    /// Between A and B.
    pub a_b: Q,
    /// Between B and C.
    pub b_c: Q,
    /// Between C and D.
    pub c_d: Q,
}

impl<Q: Measured> Limits<Q> {
    /// Boundaries that rise.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] unless `0 < A/B < B/C < C/D`.
    pub fn new(a_b: Q, b_c: Q, c_d: Q) -> Result<Self> {
        let first = positive("A/B limit", a_b.si())?;
        let second = within("B/C limit", b_c.si(), first.next_up(), f64::MAX)?;
        within("C/D limit", c_d.si(), second.next_up(), f64::MAX)?;
        Ok(Self { a_b, b_c, c_d })
    }

    /// Zone of a reading; one just on a boundary belongs to the better zone.
    ///
    /// # Source
    /// ISO 20816-1. The standards leave a reading on the boundary open (from memory): this project's choice.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for a reading that is negative or not finite.
    pub fn zone(&self, reading: Q) -> Result<Zone> {
        let value = within("reading", reading.si(), 0.0, f64::MAX)?;
        // a printed limit in another unit may differ in its last bits
        let up_to = |limit: Q| value <= limit.si() * (1.0 + 1e-12);
        Ok(match () {
            () if up_to(self.a_b) => Zone::A,
            () if up_to(self.b_c) => Zone::B,
            () if up_to(self.c_d) => Zone::C,
            () => Zone::D,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{Velocity, velocity::millimeter_per_second};

    fn mm_s(value: f64) -> Velocity {
        Velocity::new::<millimeter_per_second>(value)
    }

    #[test]
    fn a_boundary_belongs_to_the_better_zone() {
        let limits = Limits::new(mm_s(1.4), mm_s(2.8), mm_s(4.5)).unwrap();
        for (reading, zone) in [
            (0.0, Zone::A),
            (1.4, Zone::A),
            (1.401, Zone::B),
            (2.8, Zone::B),
            (2.81, Zone::C),
            (4.5, Zone::C),
            (4.51, Zone::D),
        ] {
            assert_eq!(limits.zone(mm_s(reading)), Ok(zone), "{reading} mm/s");
        }
        assert!(Zone::A < Zone::B && Zone::C < Zone::D);
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(matches!(
            Limits::new(mm_s(2.0), mm_s(2.0), mm_s(3.0)),
            Err(Error::OutOfRange { input: "B/C limit", .. })
        ));
        assert!(Limits::new(mm_s(0.0), mm_s(2.0), mm_s(3.0)).is_err());
        let limits = Limits::new(mm_s(1.4), mm_s(2.8), mm_s(4.5)).unwrap();
        assert!(limits.zone(mm_s(-1.0)).is_err() && limits.zone(mm_s(f64::NAN)).is_err());
    }
}
