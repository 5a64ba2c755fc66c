//! Wear: how much longer the chain has grown, how much it may grow, and the slack that follows.
//!
//! Wear in the joints lengthens the pitch; the number of links stays. The whole of the growth in length
//! hangs as excess in the slack span, so one chain of reasoning leads from a rule laid along the
//! chain to the sag: [`elongation`] → [`worn_pitch`] → [`excess_in_span`] → sag. The sprockets keep
//! their pitch circles: that a worn chain rides a little higher on the teeth is left out.

use super::{metres, plain, positive_length, teeth};
use crate::error::within;
use crate::units::{Length, Ratio};
use crate::{Error, Result};

/// Elongation at which a chain on adjustable centres is replaced: 3 %, common practice.
pub const USUAL_LIMIT: f64 = 0.03;

/// Elongation at which a chain on fixed centres is replaced: 1.5 %, common practice.
pub const FIXED_CENTRES_LIMIT: f64 = 0.015;

/// Tooth count times elongation at which the chain climbs off a large sprocket: 200 %, common practice.
pub const LARGE_SPROCKET_LIMIT: f64 = 2.0;

/// Largest elongation that is believed to be a reading: a chain worn 20 % has long come off.
const MOST_ELONGATION: f64 = 0.2;

/// Smallest elongation that is believed: a new chain may measure a trifle short.
const LEAST_ELONGATION: f64 = -0.02;

/// Relative rounding within which a chain counts as just long enough.
const TAUT: f64 = 1e-12;

/// Elongation of a chain from a length measured over a number of pitches, pulled tight.
///
/// # Formula
/// ε = measured / (n p) − 1. From roller to roller n is one less than the rollers counted.
///
/// # Source
/// The definition.
///
/// # Errors
/// A length or pitch not above nought, no pitches, an elongation outside −2 % to 20 % (a miscount).
///
/// # Example
/// ```
/// use drivecourse_calc::{chain::wear::elongation, units::{Length, length::inch, ratio::percent}};
/// let wear = elongation(Length::new::<inch>(12.24), 24, Length::new::<inch>(0.5))?;
/// assert!((wear.get::<percent>() - 2.0).abs() < 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn elongation(measured: Length, pitches: u32, pitch: Length) -> Result<Ratio> {
    let nominal = nominal_length(pitches, pitch)?;
    Ok(plain(believable(positive_length("measured length", measured)? / nominal - 1.0)?))
}

/// Length that a number of pitches measures at an elongation, the inverse of [`elongation`].
///
/// # Formula
/// n p (1 + ε)
///
/// # Errors
/// As [`elongation`].
pub fn measured_length(elongation: Ratio, pitches: u32, pitch: Length) -> Result<Length> {
    Ok(metres(nominal_length(pitches, pitch)? * (1.0 + believable(elongation.value)?)))
}

/// Mean pitch of a worn chain.
///
/// # Formula
/// p (1 + ε)
///
/// # Errors
/// A pitch not above nought, an elongation out of range.
pub fn worn_pitch(pitch: Length, elongation: Ratio) -> Result<Length> {
    measured_length(elongation, 1, pitch)
}

/// Elongation at which the chain is to be replaced.
///
/// # Formula
/// The least of 3 %, 200 %/z of the larger sprocket (it takes over from 67 teeth), and 1.5 % on fixed centres.
///
/// # Source
/// Common practice, no source.
///
/// # Errors
/// A tooth count out of range.
pub fn wear_limit(z_large: u32, fixed_centres: bool) -> Result<Ratio> {
    let usual = if fixed_centres { FIXED_CENTRES_LIMIT } else { USUAL_LIMIT };
    Ok(plain(usual.min(LARGE_SPROCKET_LIMIT / teeth(z_large)?)))
}

/// Slack length in the slack span: the whole chain less the taut loop round the sprockets.
///
/// # Formula
/// e = links × worn pitch − loop length, the loop from [`loop_length`](super::length::loop_length) at nominal pitch.
///
/// # Source
/// Geometry: the other strand is straight under load, so one span holds all the slack.
///
/// # Errors
/// A pitch or loop not above nought; a chain shorter than the loop, which could not be fitted.
pub fn excess_in_span(links: u32, worn_pitch: Length, loop_length: Length) -> Result<Length> {
    let chain = f64::from(links) * positive_length("chain pitch", worn_pitch)?;
    let needed = positive_length("loop length", loop_length)?;
    let excess = chain - needed;
    if excess < -TAUT * needed {
        return Err(Error::outside("loop length", needed, 0.0, chain));
    }
    Ok(metres(excess.max(0.0)))
}

fn believable(elongation: f64) -> Result<f64> {
    within("elongation", elongation, LEAST_ELONGATION, MOST_ELONGATION)
}

/// n p in metres.
fn nominal_length(pitches: u32, pitch: Length) -> Result<f64> {
    Ok(within("pitches measured", f64::from(pitches), 1.0, f64::MAX)? * positive_length("chain pitch", pitch)?)
}

#[cfg(test)]
mod tests {
    use super::super::length::{centres_for_links_exact, free_span, loop_length};
    use super::super::sag::{excess_gravity, sag_from_excess_gravity};
    use super::super::sprocket::pitch_diameter;
    use super::super::take_up::move_for_excess_change;
    use super::*;
    use crate::units::length::millimeter;
    use crate::units::ratio::percent;
    use approx::assert_relative_eq;

    fn mm(value: f64) -> Length {
        Length::new::<millimeter>(value)
    }

    /// 200/z crosses 3 % at 66.7 teeth: published rules say "67 teeth" and "more than 66".
    #[test]
    fn limits_round_about_67_teeth() {
        let limit = |z, fixed| wear_limit(z, fixed).unwrap().get::<percent>();
        assert_relative_eq!(limit(17, false), 3.0, max_relative = 1e-14);
        assert_relative_eq!(limit(66, false), 3.0, max_relative = 1e-14);
        assert_relative_eq!(limit(67, false), 200.0 / 67.0, max_relative = 1e-14);
        assert_relative_eq!(limit(68, false), 200.0 / 68.0, max_relative = 1e-14);
        assert_relative_eq!(limit(66, true), 1.5, max_relative = 1e-14);
        assert_relative_eq!(limit(133, true), 1.5, max_relative = 1e-14);
        assert_relative_eq!(limit(150, true), 200.0 / 150.0, max_relative = 1e-14);
        assert!(wear_limit(0, false).is_err());
    }

    #[test]
    fn measured_and_elongation_are_inverse() {
        for e in [-0.001, 0.0, 0.007, 0.03] {
            let l = measured_length(plain(e), 24, mm(19.05)).unwrap();
            assert!((elongation(l, 24, mm(19.05)).unwrap().value - e).abs() < 1e-15);
        }
        assert_relative_eq!(worn_pitch(mm(12.7), plain(0.02)).unwrap().get::<millimeter>(), 12.954);
    }

    /// 24 rollers span 23 pitches: counting rollers as pitches hides more than 4 % of wear.
    #[test]
    fn counting_rollers_is_off_by_one_pitch() {
        let l = measured_length(plain(0.02), 24, mm(12.7)).unwrap();
        assert!(elongation(l, 25, mm(12.7)).is_err(), "a chain 2 % short is a miscount");
        assert_relative_eq!(elongation(l, 23, mm(12.7)).unwrap().value, 1.02 * 24.0 / 23.0 - 1.0, max_relative = 1e-12);
    }

    /// New and taut, then worn: the slack is the growth of the whole chain, and the take-up takes it out again.
    #[test]
    fn wear_slack_sag_and_take_up_are_one_story() {
        let (p, z1, z2, links) = (mm(15.875), 19, 57, 124);
        let (d1, d2) = (pitch_diameter(p, z1).unwrap(), pitch_diameter(p, z2).unwrap());
        let c = centres_for_links_exact(links, p, z1, z2).unwrap();
        let needed = loop_length(c, p, z1, z2).unwrap();
        assert!(excess_in_span(links, p, needed).unwrap().value < 1e-12);

        let worn = worn_pitch(p, plain(0.01)).unwrap();
        let excess = excess_in_span(links, worn, needed).unwrap();
        assert_relative_eq!(excess.value, 0.01 * 124.0 * p.value, max_relative = 1e-10);
        let span = free_span(c, d1, d2).unwrap();
        let sag = sag_from_excess_gravity(excess, span).unwrap();
        assert_relative_eq!(excess_gravity(sag, span).unwrap().value, excess.value, max_relative = 1e-12);

        // with the shafts moved by the rule, the exact loop is the worn chain to two thousandths of a pitch
        let apart = move_for_excess_change(excess, c, d1, d2).unwrap();
        let moved = loop_length(c + apart, p, z1, z2).unwrap();
        assert!((moved - f64::from(links) * worn).abs() < 0.002 * p);
    }

    #[test]
    fn bad_input_is_refused() {
        assert!(elongation(mm(300.0), 0, mm(12.7)).is_err());
        assert!(elongation(mm(300.0), 12, mm(12.7)).is_err());
        assert!(measured_length(plain(f64::NAN), 12, mm(12.7)).is_err());
        assert!(excess_in_span(100, mm(12.7), mm(1271.0)).is_err());
    }
}
