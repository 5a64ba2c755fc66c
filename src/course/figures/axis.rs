//! Scales with round numbers on them.

use drivecourse_machine::language::with_decimal_mark;

/// Which numbers count as round on a scale.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Steps {
    /// 1, 2, 5, 10, 20 ...
    #[default]
    Decimal,
    /// Minutes or seconds: 1, 2, 5, 10, 15, 30, 60, 120 ...
    Sixty,
}

/// A scale from `low` to `high`, both of them marks, with marks `step` apart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Axis {
    pub(super) low: f64,
    pub(super) high: f64,
    pub(super) step: f64,
    /// Digits after the decimal point that the step needs.
    pub(super) decimals: usize,
}

impl Axis {
    /// The finest round scale that holds `low..=high` with at most `most` steps between.
    pub(super) fn covering(low: f64, high: f64, most: u32, steps: Steps) -> Self {
        let spread = high - low;
        // A single value, or values that differ by less than their own last digits, still need a scale.
        let spread = if spread > 1e-9 * (1.0 + low.abs().max(high.abs())) { spread } else { low.abs().max(1.0) };
        for (step, decimals) in ladder(steps) {
            let (first, last) = ((low / step + 1e-9).floor(), (high / step - 1e-9).ceil());
            let last = last.max(first + 1.0);
            if step * f64::from(most) >= spread * 0.999 && last - first <= f64::from(most) {
                return Self { low: first * step, high: last * step, step, decimals };
            }
        }
        Self { low, high: low + spread, step: spread, decimals: 0 }
    }

    /// The marks from low to high, each with its number.
    pub(super) fn marks(&self) -> Vec<(f64, String)> {
        let (first, count) = ((self.low / self.step).round(), ((self.high - self.low) / self.step).round());
        let mut marks = Vec::new();
        let mut i = 0.0;
        while i <= count && i < 50.0 {
            let value = (first + i) * self.step;
            // Adding nought turns minus nought into nought.
            let written = format!("{:.*}", self.decimals, value + 0.0).replace('-', "\u{2212}");
            marks.push((value, with_decimal_mark(written)));
            i += 1.0;
        }
        marks
    }

    /// Where `value` lies, from 0 at the low end to 1 at the high end.
    pub(super) fn place(&self, value: f64) -> f64 {
        (value - self.low) / (self.high - self.low)
    }
}

/// Round steps in rising order with the decimals each needs.
fn ladder(steps: Steps) -> Vec<(f64, usize)> {
    let mut rungs = Vec::new();
    // Dividing by a whole power of ten gives the nearest number to 0.01; multiplying by 0.1 twice does not.
    let mut divisor = 1_000_000_f64;
    for decimals in (1..=6).rev() {
        rungs.extend([1.0, 2.0, 5.0].map(|step| (step / divisor, decimals)));
        divisor /= 10.0;
    }
    if steps == Steps::Sixty {
        rungs.extend([1.0, 2.0, 5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 240.0, 480.0, 720.0].map(|step| (step, 0)));
    }
    let mut decade = if steps == Steps::Sixty { 1440.0 } else { 1.0 };
    while decade < 1e12 {
        rungs.extend([1.0, 2.0, 5.0].map(|step| (step * decade, 0)));
        decade *= 10.0;
    }
    rungs
}

#[cfg(test)]
mod tests {
    use super::*;

    fn labels(axis: Axis) -> Vec<String> {
        axis.marks().into_iter().map(|(_, label)| label).collect()
    }

    #[test]
    fn marks_are_round_and_cover() {
        assert_eq!(
            labels(Axis::covering(18.0, 71.0, 8, Steps::Decimal)),
            ["10", "20", "30", "40", "50", "60", "70", "80"]
        );
        assert_eq!(
            labels(Axis::covering(0.0, 118.0, 8, Steps::Sixty)),
            ["0", "15", "30", "45", "60", "75", "90", "105", "120"]
        );
        assert_eq!(labels(Axis::covering(-0.1, 0.2, 4, Steps::Decimal)), ["−0.1", "0.0", "0.1", "0.2"]);
        assert_eq!(labels(Axis::covering(0.001, 0.009, 5, Steps::Decimal)).len(), 6);
    }

    #[test]
    fn odd_ranges_still_give_a_scale() {
        for (low, high) in [(5.0, 5.0), (0.0, 0.0), (-3.0, -3.0), (1e8, 1e8 + 1.0), (-1e9, 1e9), (0.0, 1e-12)] {
            let axis = Axis::covering(low, high, 6, Steps::Decimal);
            assert!(axis.low <= low && axis.high >= high, "{axis:?}");
            assert!((2..=7).contains(&axis.marks().len()), "{axis:?}");
        }
    }
}
