//! Metric parallel keys by shaft diameter.
//!
//! # Source
//! DIN 6885-1 / ISO 773 (as printed on two reference pages, which agree where they overlap): width, height, depth in
//! shaft and hub, up to a 230 mm shaft. Larger ones were not seen, so they are refused.

use super::key::Section;
use super::millimetres;
use crate::error::within;
use crate::units::Length;
use crate::{Error, Result};

/// The key for one range of shafts: over `over`, up to and with `to`.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Row {
    /// Shafts are larger than this.
    pub over: Length,
    /// Largest shaft of the row.
    pub to: Length,
    /// Width b.
    pub width: Length,
    /// Height h.
    pub height: Length,
    /// Depth of the keyway in the shaft, t₁.
    pub shaft_depth: Length,
    /// Depth of the keyway in the hub, t₂.
    pub hub_depth: Length,
}

impl Row {
    /// Section of the key.
    pub fn section(&self) -> Section {
        Section { width: self.width, height: self.height }
    }
}

/// Every row, smallest shafts first.
pub static ALL: [Row; 20] = [
    row([6.0, 8.0], [2.0, 2.0], [1.2, 1.0]),
    row([8.0, 10.0], [3.0, 3.0], [1.8, 1.4]),
    row([10.0, 12.0], [4.0, 4.0], [2.5, 1.8]),
    row([12.0, 17.0], [5.0, 5.0], [3.0, 2.3]),
    row([17.0, 22.0], [6.0, 6.0], [3.5, 2.8]),
    row([22.0, 30.0], [8.0, 7.0], [4.0, 3.3]),
    row([30.0, 38.0], [10.0, 8.0], [5.0, 3.3]),
    row([38.0, 44.0], [12.0, 8.0], [5.0, 3.3]),
    row([44.0, 50.0], [14.0, 9.0], [5.5, 3.8]),
    row([50.0, 58.0], [16.0, 10.0], [6.0, 4.3]),
    row([58.0, 65.0], [18.0, 11.0], [7.0, 4.4]),
    row([65.0, 75.0], [20.0, 12.0], [7.5, 4.9]),
    row([75.0, 85.0], [22.0, 14.0], [9.0, 5.4]),
    row([85.0, 95.0], [25.0, 14.0], [9.0, 5.4]),
    row([95.0, 110.0], [28.0, 16.0], [10.0, 6.4]),
    row([110.0, 130.0], [32.0, 18.0], [11.0, 7.4]),
    row([130.0, 150.0], [36.0, 20.0], [12.0, 8.4]),
    row([150.0, 170.0], [40.0, 22.0], [13.0, 9.4]),
    row([170.0, 200.0], [45.0, 25.0], [15.0, 10.4]),
    row([200.0, 230.0], [50.0, 28.0], [17.0, 11.4]),
];

/// The row for a shaft.
///
/// # Source
/// DIN 6885-1 / ISO 773.
///
/// # Errors
/// [`Error::OutOfRange`] unless the shaft is over 6 mm and at most 230 mm.
///
/// # Example
/// A 40 mm shaft takes a key 12 × 8 mm:
/// ```
/// use drivecourse_calc::{fasten::key_sizes_metric::row_for, units::*};
/// let row = row_for(Length::new::<length::millimeter>(40.0))?;
/// approx::assert_abs_diff_eq!(row.width.get::<length::millimeter>(), 12.0, epsilon = 1e-9);
/// approx::assert_abs_diff_eq!(row.height.get::<length::millimeter>(), 8.0, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn row_for(shaft: Length) -> Result<&'static Row> {
    /// A nanometre: keeps a size typed in another unit on its side of a step.
    const HAIR: f64 = 1e-9;
    let (min, max) = (ALL[0].over.value, ALL[19].to.value);
    let d = within("shaft diameter", shaft.value, min, max + HAIR)?;
    let found = ALL.iter().find(|row| d > row.over.value + HAIR && d <= row.to.value + HAIR);
    found.ok_or(Error::outside("shaft diameter", d, min, max))
}

/// Shafts, section (b, h) and depths (t₁, t₂), mm.
const fn row(shafts: [f64; 2], section: [f64; 2], depths: [f64; 2]) -> Row {
    Row {
        over: millimetres(shafts[0]),
        to: millimetres(shafts[1]),
        width: millimetres(section[0]),
        height: millimetres(section[1]),
        shaft_depth: millimetres(depths[0]),
        hub_depth: millimetres(depths[1]),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::length::{inch, millimeter};
    use approx::assert_abs_diff_eq;

    fn mm(value: f64) -> Length {
        Length::new::<millimeter>(value)
    }

    #[test]
    fn rows_join() {
        assert!(ALL.windows(2).all(|pair| pair[0].to == pair[1].over && pair[0].width < pair[1].width));
    }

    /// The two keyways together are a little deeper than the key is high: the key never touches the hub's ground.
    #[test]
    fn every_key_has_room_on_top() {
        for row in &ALL {
            let room = (row.shaft_depth + row.hub_depth - row.height).get::<millimeter>();
            assert!((0.1..=0.5).contains(&(room + 1e-9)), "{room}");
            assert!(row.shaft_depth > row.hub_depth && row.height <= row.width);
            let share = row.width.value / row.to.value;
            assert!((0.20..=0.35).contains(&share), "{share}");
        }
    }

    #[test]
    fn steps_belong_to_the_row_below() {
        for (shaft, width) in [(38.0, 10.0), (38.1, 12.0), (44.0, 12.0), (50.0, 14.0), (50.1, 16.0), (230.0, 50.0)] {
            assert_abs_diff_eq!(row_for(mm(shaft)).unwrap().section().width.get::<millimeter>(), width, epsilon = 1e-9);
        }
        // 1½ in is 38.1 mm
        assert_eq!(row_for(Length::new::<inch>(1.5)), row_for(mm(38.1)));
    }

    #[test]
    fn outside_the_table_is_refused() {
        for shaft in [5.0, 6.0, 231.0, f64::NAN] {
            assert!(matches!(row_for(mm(shaft)), Err(Error::OutOfRange { input: "shaft diameter", .. })), "{shaft}");
        }
    }
}
