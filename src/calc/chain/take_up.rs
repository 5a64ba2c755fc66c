//! Take-up: what moving one shaft along the line of centres does to the slack.
//!
//! With the driver holding still and the other strand drawn straight, all the slack lies in one span.

use super::length::tangent_angle;
use super::{metres, not_negative, positive_length, radians};
use crate::Result;
use crate::error::within;
use crate::math::cos;
use crate::units::{Angle, Length};
use core::f64::consts::TAU;

/// Slack length that a move takes out; negative when the shafts come closer.
///
/// Exact for small moves: a move of two pitches at 40 pitches misses by less than a hundredth of a pitch.
///
/// # Formula
/// Δe = 2 ΔC cos α, where α = asin((R₂−R₁)/C): both strands grow by ΔC cos α, the wraps hardly change.
///
/// # Source
/// Derivative of the exact loop length (geometry).
///
/// # Errors
/// A move that is no number; diameters and centre distance as [`free_span`](super::length::free_span).
pub fn excess_taken(apart: Length, centres: Length, d1: Length, d2: Length) -> Result<Length> {
    let dc = within("move", apart.value, -f64::MAX, f64::MAX)?;
    Ok(metres(dc * taken_per_move(centres, d1, d2)?))
}

/// Slack length left after moving the shafts `apart` (negative: together).
///
/// # Formula
/// e₂ = e₁ − 2 ΔC cos α
///
/// # Errors
/// As [`excess_taken`]; a negative excess; a move beyond the one that makes the chain taut.
pub fn excess_after_move(excess: Length, apart: Length, centres: Length, d1: Length, d2: Length) -> Result<Length> {
    let e = not_negative("excess", excess.value)?;
    let rate = taken_per_move(centres, d1, d2)?;
    let dc = within("move", apart.value, -f64::MAX, e / rate)?;
    // at the very limit rounding may leave less than nothing
    Ok(metres((e - dc * rate).max(0.0)))
}

/// Move of the shafts apart that takes `change` out of the slack length (negative: together, slack added).
///
/// # Formula
/// ΔC = Δe / (2 cos α)
///
/// # Errors
/// As [`excess_taken`].
pub fn move_for_excess_change(change: Length, centres: Length, d1: Length, d2: Length) -> Result<Length> {
    let de = within("excess", change.value, -f64::MAX, f64::MAX)?;
    Ok(metres(de / taken_per_move(centres, d1, d2)?))
}

/// Turn of the adjusting screw that makes a move.
///
/// # Formula
/// turns = ΔC / lead, given as an angle (one turn is 360°).
///
/// # Errors
/// A move that is no number, a lead not above nought.
pub fn screw_turns(apart: Length, lead: Length) -> Result<Angle> {
    let dc = within("move", apart.value, -f64::MAX, f64::MAX)?;
    Ok(radians(TAU * dc / positive_length("screw lead", lead)?))
}

/// Move made by a turn of the adjusting screw, the inverse of [`screw_turns`].
///
/// # Formula
/// ΔC = turns × lead
///
/// # Errors
/// An angle that is no number, a lead not above nought.
pub fn move_from_turns(turns: Angle, lead: Length) -> Result<Length> {
    let angle = within("screw turn", turns.value, -f64::MAX, f64::MAX)?;
    Ok(metres(angle / TAU * positive_length("screw lead", lead)?))
}

/// 2 cos α, slack length for each length of move.
fn taken_per_move(centres: Length, d1: Length, d2: Length) -> Result<f64> {
    Ok(2.0 * cos(tangent_angle(centres, d1, d2)?.value))
}

#[cfg(test)]
mod tests {
    use super::super::length::{free_span, loop_length};
    use super::super::sag::{excess_gravity, sag_from_excess_gravity};
    use super::super::sprocket::pitch_diameter;
    use super::*;
    use crate::units::angle::revolution;
    use crate::units::length::{inch, millimeter};
    use approx::assert_relative_eq;

    fn mm(value: f64) -> Length {
        Length::new::<millimeter>(value)
    }

    /// Against the exact loop length before and after the move.
    #[test]
    fn take_up_is_the_growth_of_the_loop() {
        let p = mm(15.875);
        for (z1, z2, c) in [(17, 17, 600.0), (17, 57, 640.0), (21, 80, 700.0)] {
            let (d1, d2) = (pitch_diameter(p, z1).unwrap(), pitch_diameter(p, z2).unwrap());
            let small = mm(0.1);
            let grown = loop_length(mm(c) + small, p, z1, z2).unwrap() - loop_length(mm(c), p, z1, z2).unwrap();
            let taken = excess_taken(small, mm(c), d1, d2).unwrap();
            // arcs are counted in teeth, the wheel is not quite round: a few parts in ten thousand
            assert_relative_eq!(taken.value, grown.value, max_relative = 1e-3);
            // a whole take-up travel of two pitches still holds to a hundredth of a pitch
            let far = 2.0 * p;
            let grown = loop_length(mm(c) + far, p, z1, z2).unwrap() - loop_length(mm(c), p, z1, z2).unwrap();
            assert!((excess_taken(far, mm(c), d1, d2).unwrap() - grown).abs() < 0.01 * p);
        }
    }

    #[test]
    fn from_one_sag_to_another() {
        let p = mm(19.05);
        let (c, d1, d2) = (mm(760.0), pitch_diameter(p, 19).unwrap(), pitch_diameter(p, 57).unwrap());
        let span = free_span(c, d1, d2).unwrap();
        let now = excess_gravity(mm(45.0), span).unwrap();
        let wanted = excess_gravity(mm(30.0), span).unwrap();
        let apart = move_for_excess_change(now - wanted, c, d1, d2).unwrap();
        let after = excess_after_move(now, apart, c, d1, d2).unwrap();
        let sag = sag_from_excess_gravity(after, span).unwrap();
        assert_relative_eq!(sag.get::<millimeter>(), 30.0, max_relative = 1e-12);
        // moving by the sag difference itself would be far too much
        assert!(apart < mm(5.0));
    }

    #[test]
    fn screw() {
        let turns = screw_turns(mm(4.5), mm(1.5)).unwrap();
        assert_relative_eq!(turns.get::<revolution>(), 3.0, max_relative = 1e-14);
        assert_relative_eq!(move_from_turns(turns, mm(1.5)).unwrap().value, 0.0045, max_relative = 1e-14);
        // 13 threads an inch, a quarter inch
        let turns = screw_turns(Length::new::<inch>(0.25), Length::new::<inch>(1.0) / 13.0).unwrap();
        assert_relative_eq!(turns.get::<revolution>(), 3.25, max_relative = 1e-14);
    }

    #[test]
    fn past_taut_is_refused() {
        let (c, d) = (mm(600.0), mm(100.0));
        assert!(excess_after_move(mm(4.0), mm(2.1), c, d, d).is_err());
        assert_eq!(excess_after_move(mm(4.0), mm(2.0), c, d, d), Ok(mm(0.0)));
        assert_relative_eq!(excess_after_move(mm(4.0), mm(-1.0), c, d, d).unwrap().get::<millimeter>(), 6.0);
        assert!(screw_turns(mm(1.0), mm(0.0)).is_err() && excess_taken(mm(f64::NAN), c, d, d).is_err());
    }
}
