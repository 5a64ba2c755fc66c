//! Zone boundaries for machines above 15 kW, by group and support.
//!
//! # Source
//! ISO 10816-3:2009, Tables A.1 and A.2 (as transcribed by others), for groups 1 and 2; groups 3 and 4, which only its 1998
//! edition has, from memory. ISO 20816-3:2022 has taken its place. r.m.s. values, measured on the bearing housings in the band
//! 10 to 1000 Hz, or from 2 Hz for a speed under 600 rev/min (from memory).
//!
//! A drive of up to 15 kW is outside it: see [`general_limits`](super::general_limits).

use super::zone::Limits;
use crate::Result;
use crate::error::within;
use crate::units::{Length, Power, Velocity, length::micrometer, velocity::millimeter_per_second};

#[cfg(any(doc, test))]
use crate::Error;

/// Kind and size of the machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Group {
    /// Over 300 kW up to 50 MW; motors with a shaft height of 315 mm and more.
    One,
    /// Over 15 kW up to 300 kW; motors with a shaft height of 160 to under 315 mm.
    Two,
    /// Pumps with a separate driver, over 15 kW (1998 edition only).
    Three,
    /// Pumps with the driver built in, over 15 kW (1998 edition only).
    Four,
}

/// How machine and base stand together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Support {
    /// Lowest natural frequency of machine and support at least a quarter above the main exciting frequency (from memory).
    Rigid,
    /// Any other.
    Flexible,
}

/// One row of the tables.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Group of the machine.
    pub group: Group,
    /// Its support.
    pub support: Support,
    /// Displacement boundaries, micrometres r.m.s.
    displacement_um: [f64; 3],
    /// Velocity boundaries, mm/s r.m.s.
    velocity_mm_s: [f64; 3],
    /// Whether the row is from memory only.
    pub from_memory: bool,
}

impl Row {
    /// Boundaries of the r.m.s. displacement.
    pub fn displacement(&self) -> Limits<Length> {
        let [a_b, b_c, c_d] = self.displacement_um.map(Length::new::<micrometer>);
        Limits { a_b, b_c, c_d }
    }

    /// Boundaries of the r.m.s. velocity.
    pub fn velocity(&self) -> Limits<Velocity> {
        let [a_b, b_c, c_d] = self.velocity_mm_s.map(Velocity::new::<millimeter_per_second>);
        Limits { a_b, b_c, c_d }
    }
}

/// Every row.
pub static TABLE: [Row; 8] = [
    row(Group::One, Support::Rigid, [29.0, 57.0, 90.0], [2.3, 4.5, 7.1]),
    row(Group::One, Support::Flexible, [45.0, 90.0, 140.0], [3.5, 7.1, 11.0]),
    row(Group::Two, Support::Rigid, [22.0, 45.0, 71.0], [1.4, 2.8, 4.5]),
    row(Group::Two, Support::Flexible, [37.0, 71.0, 113.0], [2.3, 4.5, 7.1]),
    row(Group::Three, Support::Rigid, [18.0, 36.0, 56.0], [2.3, 4.5, 7.1]),
    row(Group::Three, Support::Flexible, [28.0, 56.0, 90.0], [3.5, 7.1, 11.0]),
    row(Group::Four, Support::Rigid, [11.0, 22.0, 36.0], [1.4, 2.8, 4.5]),
    row(Group::Four, Support::Flexible, [18.0, 36.0, 56.0], [2.3, 4.5, 7.1]),
];

const fn row(group: Group, support: Support, displacement_um: [f64; 3], velocity_mm_s: [f64; 3]) -> Row {
    let from_memory = matches!(group, Group::Three | Group::Four);
    Row { group, support, displacement_um, velocity_mm_s, from_memory }
}

/// The row for a group and support.
///
/// # Example
/// ```
/// use drivecourse_calc::{vibrate::machine_limits::{Group, Support, limits}, units::*};
/// let limits = limits(Group::Two, Support::Rigid).velocity();
/// approx::assert_abs_diff_eq!(limits.b_c.get::<velocity::millimeter_per_second>(), 2.8, epsilon = 1e-12);
/// ```
///
/// Trap: group 2 *flexible* (2.3, 4.5, 7.1) is often printed as group 2 rigid.
pub fn limits(group: Group, support: Support) -> &'static Row {
    let rigid = 2 * match group {
        Group::One => 0,
        Group::Two => 1,
        Group::Three => 2,
        Group::Four => 3,
    };
    &TABLE[rigid + usize::from(support == Support::Flexible)]
}

/// Group of a machine that is no pump, by rated power.
///
/// # Source
/// ISO 10816-3:2009.
///
/// # Errors
/// [`Error::OutOfRange`] unless the power is above 15 kW and at most 50 MW: a smaller drive belongs to
/// [`general_limits`](super::general_limits).
pub fn group_by_power(rated: Power) -> Result<Group> {
    let p = within("rated power", rated.value, 15_000_f64.next_up(), 50e6)?;
    Ok(if p > 300e3 { Group::One } else { Group::Two })
}

/// Group of an electric motor, by the height of its shaft above its feet.
///
/// # Source
/// ISO 10816-3:2009.
///
/// # Errors
/// [`Error::OutOfRange`] for a shaft height below 160 mm or over 2 m.
pub fn group_by_shaft_height(height: Length) -> Result<Group> {
    // a height of 160 mm typed in inches must not fall off by its last bit
    let h = within("shaft height", height.value, 0.160 - 1e-9, 2.0)?;
    Ok(if h >= 0.315 - 1e-9 { Group::One } else { Group::Two })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{Frequency, frequency::hertz, length::millimeter, power::kilowatt};
    use crate::vibrate::amplitude::{Amplitude, velocity_from_displacement};
    use crate::vibrate::general_limits::LADDER_MM_S;
    use crate::vibrate::zone::Zone;
    use approx::assert_abs_diff_eq;

    fn um(value: f64) -> Length {
        Length::new::<micrometer>(value)
    }
    fn mm_s(value: f64) -> Velocity {
        Velocity::new::<millimeter_per_second>(value)
    }

    /// ISO 10816-3:2009, Tables A.1 and A.2, as transcribed; groups 3 and 4 of the 1998 edition from memory.
    #[test]
    fn every_printed_boundary() {
        use {Group::*, Support::*};
        for (group, support, d, v) in [
            (One, Rigid, [29.0, 57.0, 90.0], [2.3, 4.5, 7.1]),
            (One, Flexible, [45.0, 90.0, 140.0], [3.5, 7.1, 11.0]),
            (Two, Rigid, [22.0, 45.0, 71.0], [1.4, 2.8, 4.5]),
            (Two, Flexible, [37.0, 71.0, 113.0], [2.3, 4.5, 7.1]),
            (Three, Rigid, [18.0, 36.0, 56.0], [2.3, 4.5, 7.1]),
            (Three, Flexible, [28.0, 56.0, 90.0], [3.5, 7.1, 11.0]),
            (Four, Rigid, [11.0, 22.0, 36.0], [1.4, 2.8, 4.5]),
            (Four, Flexible, [18.0, 36.0, 56.0], [2.3, 4.5, 7.1]),
        ] {
            let row = limits(group, support);
            assert_eq!((row.group, row.support), (group, support));
            assert_eq!(row.from_memory, matches!(group, Three | Four));
            let (dl, vl) = (row.displacement(), row.velocity());
            for (i, zone) in [Zone::A, Zone::B, Zone::C].into_iter().enumerate() {
                let next = [Zone::B, Zone::C, Zone::D][i];
                assert_eq!(dl.zone(um(d[i])), Ok(zone));
                assert_eq!(dl.zone(um(d[i] + 0.1)), Ok(next));
                assert_eq!(vl.zone(mm_s(v[i])), Ok(zone));
                assert_eq!(vl.zone(mm_s(v[i] + 0.01)), Ok(next));
            }
        }
    }

    /// The boundaries of both quantities describe one motion: near 12.5 Hz in group 1, near 10 Hz in group 2.
    #[test]
    fn displacement_and_velocity_agree() {
        for (group, f) in [(Group::One, 12.5), (Group::Two, 10.0)] {
            for support in [Support::Rigid, Support::Flexible] {
                let row = limits(group, support);
                for (d, v) in [
                    (row.displacement().a_b, row.velocity().a_b),
                    (row.displacement().b_c, row.velocity().b_c),
                    (row.displacement().c_d, row.velocity().c_d),
                ] {
                    let same = velocity_from_displacement(Amplitude::rms(d), Frequency::new::<hertz>(f)).unwrap();
                    // printed to two digits: some 3 %
                    approx::assert_relative_eq!(same.value.value, v.value, max_relative = 0.03);
                }
            }
        }
    }

    #[test]
    fn groups() {
        let kw = |value: f64| group_by_power(Power::new::<kilowatt>(value));
        assert_eq!((kw(15.1), kw(300.0), kw(301.0)), (Ok(Group::Two), Ok(Group::Two), Ok(Group::One)));
        assert!(matches!(kw(15.0), Err(Error::OutOfRange { input: "rated power", .. })), "starts above 15 kW");
        assert!(kw(60_000.0).is_err());
        let high = |value: f64| group_by_shaft_height(Length::new::<millimeter>(value));
        assert_eq!((high(160.0), high(280.0), high(315.0)), (Ok(Group::Two), Ok(Group::Two), Ok(Group::One)));
        assert!(high(132.0).is_err());
    }

    #[test]
    fn broad_ladder_is_not_this_table() {
        // the ladder of ISO 20816-1 has no 2.3, 3.5 or 11.0: the two tables must not be mixed
        for value in [2.3, 3.5, 11.0] {
            assert!(LADDER_MM_S.iter().all(|rung| (rung - value).abs() > 0.05));
        }
        assert_abs_diff_eq!(limits(Group::Two, Support::Rigid).velocity().c_d.value, 0.0045, epsilon = 1e-15);
    }
}
