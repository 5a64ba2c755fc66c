//! Control charts for readings taken one at a time: limits that the machine's own scatter sets.

use super::Measured;
use crate::error::{positive, within};
use crate::units::Ratio;
use crate::{Result, math};

#[cfg(any(doc, test))]
use crate::Error;

/// Mean moving range over the standard deviation, for ranges of two readings (d₂, to the digits the tables print).
///
/// # Source
/// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2 (as quoted); exactly 2/√π = 1.128 379.
pub const RANGE_OVER_DEVIATION: f64 = 1.128;

/// Upper limit of the moving-range chart over the mean moving range (D₄ for two readings).
///
/// # Source
/// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2 (as quoted).
pub const RANGE_LIMIT: f64 = 3.267;

/// How the factor of the mean moving range is rounded.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Factor {
    /// 2.66, as taught on the shop floor.
    Rounded,
    /// 3 / 1.128, as the handbook computes it.
    Handbook,
}

impl Factor {
    /// The number itself.
    pub const fn value(self) -> f64 {
        match self {
            Self::Rounded => 2.66,
            Self::Handbook => 3.0 / RANGE_OVER_DEVIATION,
        }
    }
}

/// An individuals chart and its moving-range chart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Chart<Q> {
    /// Mean of the readings.
    pub mean: Q,
    /// Mean of the moving ranges.
    pub mean_range: Q,
    /// Upper control limit of the readings.
    pub upper: Q,
    /// Lower control limit of the readings; below nought it says nothing of a quantity that cannot be negative.
    pub lower: Q,
    /// Upper control limit of the moving ranges; their lower limit is nought.
    pub range_upper: Q,
}

/// Control limits from settled readings taken one at a time.
///
/// # Formula
/// `x̄ ± 2.66 R̄`, R̄ the mean of the moving ranges `|xᵢ − xᵢ₋₁|`; ranges up to `3.267 R̄`.
///
/// # Source
/// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2 (as quoted).
///
/// # Errors
/// [`Error::OutOfRange`] for fewer than two readings or one that is not finite.
///
/// # Example
/// ```
/// use drivecourse_calc::{vibrate::control::{Factor, chart}, units::*};
/// let mm_s = Velocity::new::<velocity::millimeter_per_second>;
/// let chart = chart(&[1.2, 1.3, 1.1, 1.2].map(mm_s), Factor::Rounded)?;
/// approx::assert_abs_diff_eq!(chart.upper.get::<velocity::millimeter_per_second>(), 1.555, epsilon = 5e-4);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Traps: three times the standard deviation of *all* readings, which a drift widens; limits made from run-in readings.
pub fn chart<Q: Measured>(readings: &[Q], factor: Factor) -> Result<Chart<Q>> {
    let ranges = moving_ranges(readings)?;
    let (mean, range) = (mean(readings.iter().copied()), mean(ranges.iter().copied()));
    let reach = factor.value() * range;
    Ok(Chart {
        mean: Q::from_si(mean),
        mean_range: Q::from_si(range),
        upper: Q::from_si(mean + reach),
        lower: Q::from_si(mean - reach),
        range_upper: Q::from_si(RANGE_LIMIT * range),
    })
}

impl<Q: Measured> Chart<Q> {
    /// Standard deviation that the moving ranges show.
    ///
    /// # Formula
    /// `σ = R̄ / 1.128`
    ///
    /// # Source
    /// As [`RANGE_OVER_DEVIATION`].
    pub fn deviation(&self) -> Q {
        Q::from_si(self.mean_range.si() / RANGE_OVER_DEVIATION)
    }
}

/// Moving ranges: the size of every step between readings that follow each other.
///
/// # Formula
/// `Rᵢ = |xᵢ − xᵢ₋₁|`
///
/// # Source
/// As [`chart`].
///
/// # Errors
/// [`Error::OutOfRange`] for fewer than two readings or one that is not finite.
pub fn moving_ranges<Q: Measured>(readings: &[Q]) -> Result<Vec<Q>> {
    within("readings", readings.len() as f64, 2.0, f64::MAX)?;
    for reading in readings {
        within("reading", reading.si(), f64::MIN, f64::MAX)?;
    }
    Ok(readings.windows(2).map(|pair| Q::from_si((pair[1].si() - pair[0].si()).abs())).collect())
}

/// Exponentially weighted moving average after each reading: it sees a small lasting shift sooner than single readings do.
///
/// # Formula
/// `zᵢ = λ xᵢ + (1 − λ) zᵢ₋₁`, `z₀` the mean of the settled readings.
///
/// # Source
/// D. C. Montgomery, *Introduction to Statistical Quality Control*, p. 428 (as quoted).
///
/// # Errors
/// [`Error::OutOfRange`] unless the weight λ is in (0, 1] and every value finite.
pub fn weighted_means<Q: Measured>(readings: &[Q], weight: Ratio, start: Q) -> Result<Vec<Q>> {
    let lambda = usable_weight(weight)?;
    let mut z = within("start", start.si(), f64::MIN, f64::MAX)?;
    readings
        .iter()
        .map(|reading| {
            z = lambda * within("reading", reading.si(), f64::MIN, f64::MAX)? + (1.0 - lambda) * z;
            Ok(Q::from_si(z))
        })
        .collect()
}

/// Lower and upper limit of the weighted mean after `count` readings (`None`: after many).
///
/// # Formula
/// `z₀ ± L σ √(λ/(2 − λ) · (1 − (1 − λ)^(2i)))`; the last factor is 1 after many readings.
///
/// # Source
/// As [`weighted_means`].
///
/// # Errors
/// [`Error::OutOfRange`] unless the weight is in (0, 1], deviation and width are greater than nought, the mean finite and the
/// count at least 1.
///
/// # Example
/// Mean 10, σ 1, λ 0.10, L 2.7, after many readings: 10 ± 0.6194.
/// ```
/// use drivecourse_calc::{vibrate::control::weighted_limits, units::*};
/// let plain = Ratio::new::<ratio::ratio>;
/// let (_, upper) = weighted_limits(plain(10.0), plain(1.0), plain(0.10), plain(2.7), None)?;
/// approx::assert_abs_diff_eq!(upper.value, 10.6194, epsilon = 5e-5);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn weighted_limits<Q: Measured>(
    mean: Q,
    deviation: Q,
    weight: Ratio,
    width: Ratio,
    count: Option<u32>,
) -> Result<(Q, Q)> {
    let lambda = usable_weight(weight)?;
    let centre = within("mean", mean.si(), f64::MIN, f64::MAX)?;
    let sigma = positive("standard deviation", deviation.si())?;
    let l = positive("width of the limits", width.value)?;
    let reached = match count {
        None => 1.0,
        Some(i) => {
            let i = within("readings", f64::from(i), 1.0, f64::MAX)?;
            1.0 - math::pow(1.0 - lambda, 2.0 * i)
        }
    };
    let reach = l * sigma * (lambda / (2.0 - lambda) * reached).sqrt();
    Ok((Q::from_si(centre - reach), Q::from_si(centre + reach)))
}

fn usable_weight(weight: Ratio) -> Result<f64> {
    within("weight", weight.value, f64::MIN_POSITIVE, 1.0)
}

/// Mean of values of which there is at least one.
fn mean<Q: Measured>(values: impl ExactSizeIterator<Item = Q>) -> f64 {
    let count = values.len() as f64;
    values.map(Measured::si).sum::<f64>() / count
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::vibrate::plain;
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    /// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2 (as quoted), printed to four places.
    #[test]
    fn published_individuals_chart() {
        let readings = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1].map(plain);
        let ranges = moving_ranges(&readings).unwrap();
        for (range, printed) in ranges.iter().zip([2.0, 2.3, 1.4, 3.5, 3.4, 1.4, 0.2, 1.2, 1.5]) {
            assert_abs_diff_eq!(range.value, printed, epsilon = 1e-9);
        }
        let found = chart(&readings, Factor::Handbook).unwrap();
        for (value, printed) in [
            (found.mean, 50.81),
            (found.mean_range, 1.8778),
            (found.upper, 55.8041),
            (found.lower, 45.8159),
            (found.range_upper, 6.1347), // D₄ times the mean range, computed
        ] {
            assert_abs_diff_eq!(value.value, printed, epsilon = 5.1e-5);
        }
        // with the rounded factor (computed)
        let rounded = chart(&readings, Factor::Rounded).unwrap();
        assert_abs_diff_eq!(rounded.upper.value, 55.804_89, epsilon = 5e-6);
        assert_abs_diff_eq!(rounded.lower.value, 45.815_11, epsilon = 5e-6);
    }

    #[test]
    fn factors_agree_to_their_printed_place() {
        assert_abs_diff_eq!(Factor::Handbook.value(), Factor::Rounded.value(), epsilon = 0.0005);
        let exact = 2.0 / core::f64::consts::PI.sqrt();
        assert_abs_diff_eq!(exact, RANGE_OVER_DEVIATION, epsilon = 0.0005);
    }

    #[test]
    fn the_deviation_is_the_mean_range_over_its_factor() {
        let found = chart(&[1.0, 2.0, 1.0, 2.0].map(plain), Factor::Rounded).unwrap();
        assert_relative_eq!(found.deviation().value, 1.0 / 1.128);
    }

    /// D. C. Montgomery, *Introduction to Statistical Quality Control*, p. 428 (as quoted): mean 10, σ 1, λ 0.10, L 2.7.
    #[test]
    fn published_weighted_means() {
        let readings = [
            9.45, 7.99, 9.29, 11.66, 12.16, 10.18, 8.04, 11.46, 9.20, 10.34, 9.03, 11.47, 10.51, 9.40, 10.08, 9.37,
            10.62, 10.31, 8.52, 10.84, 10.90, 9.33, 12.29, 11.50, 10.60, 11.08, 10.38, 11.62, 11.31, 10.52,
        ]
        .map(plain);
        let means = weighted_means(&readings, plain(0.10), plain(10.0)).unwrap();
        assert_abs_diff_eq!(means[0].value, 9.945, epsilon = 5e-4);
        let (lower, upper) = weighted_limits(plain(10.0), plain(1.0), plain(0.10), plain(2.7), None).unwrap();
        assert_abs_diff_eq!(upper.value - 10.0, 0.6194, epsilon = 5e-4);
        assert_abs_diff_eq!(10.0 - lower.value, 0.6194, epsilon = 5e-4);
        // single readings stay inside ±3σ, the weighted mean shows the shift of the last ten
        assert!(readings.iter().all(|reading| (reading.value - 10.0).abs() < 3.0));
        let first = means.iter().position(|mean| *mean > upper);
        assert_eq!(first, Some(28), "the ninth reading after the shift");
    }

    #[test]
    fn weighted_limits_open_towards_their_steady_width() {
        let at = |i| weighted_limits(plain(0.0), plain(1.0), plain(0.2), plain(3.0), i).unwrap().1.value;
        assert_relative_eq!(at(Some(1)), 3.0 * 0.2, max_relative = 1e-14);
        assert!(at(Some(1)) < at(Some(2)) && at(Some(2)) < at(None));
        assert_relative_eq!(at(Some(200)), at(None), max_relative = 1e-12);
        // with all weight on the last reading it is a chart of single readings
        let alone = weighted_means(&[1.0, 5.0, 2.0].map(plain), plain(1.0), plain(9.0)).unwrap();
        assert_eq!(alone, [1.0, 5.0, 2.0].map(plain));
        assert_relative_eq!(
            weighted_limits(plain(0.0), plain(1.0), plain(1.0), plain(3.0), None).unwrap().1.value,
            3.0
        );
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(matches!(chart(&[plain(1.0)], Factor::Rounded), Err(Error::OutOfRange { input: "readings", .. })));
        assert!(moving_ranges(&[plain(1.0), plain(f64::NAN)]).is_err());
        assert!(weighted_means(&[plain(1.0)], plain(0.0), plain(1.0)).is_err());
        assert!(weighted_means(&[plain(f64::INFINITY)], plain(0.1), plain(1.0)).is_err());
        assert!(weighted_limits(plain(1.0), plain(0.0), plain(0.1), plain(3.0), None).is_err());
        assert!(weighted_limits(plain(1.0), plain(1.0), plain(0.1), plain(3.0), Some(0)).is_err());
    }
}
