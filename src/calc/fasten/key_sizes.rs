//! Inch keys by shaft diameter.
//!
//! # Source
//! ANSI B17.1-1967 (R1998), key size versus shaft diameter, as printed in *Machinery's Handbook* (E. Oberg and others).
//! Square keys are preferred up to a 6½ in shaft, rectangular ones above.

use super::inches;
use super::key::Section;
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
    /// Width, and height of the square key.
    pub width: Length,
    /// Height of the rectangular key, `None` where there is none.
    pub flat_height: Option<Length>,
}

/// Every row, smallest shafts first.
pub static ALL: [Row; 16] = [
    row([0.3125, 0.4375], 0.093_75, None),
    row([0.4375, 0.5625], 0.125, Some(0.093_75)),
    row([0.5625, 0.875], 0.1875, Some(0.125)),
    row([0.875, 1.25], 0.25, Some(0.1875)),
    row([1.25, 1.375], 0.3125, Some(0.25)),
    row([1.375, 1.75], 0.375, Some(0.25)),
    row([1.75, 2.25], 0.5, Some(0.375)),
    row([2.25, 2.75], 0.625, Some(0.4375)),
    row([2.75, 3.25], 0.75, Some(0.5)),
    row([3.25, 3.75], 0.875, Some(0.625)),
    row([3.75, 4.5], 1.0, Some(0.75)),
    row([4.5, 5.5], 1.25, Some(0.875)),
    row([5.5, 6.5], 1.5, Some(1.0)),
    row([6.5, 7.5], 1.75, Some(1.5)),
    row([7.5, 9.0], 2.0, Some(1.5)),
    row([9.0, 11.0], 2.5, Some(1.75)),
];

/// Which of the two keys of a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shape {
    /// As high as wide.
    Square,
    /// Lower than wide.
    Rectangular,
}

/// The row for a shaft.
///
/// # Source
/// ANSI B17.1.
///
/// # Errors
/// [`Error::OutOfRange`] unless the shaft is over 5/16 in and at most 11 in.
pub fn row_for(shaft: Length) -> Result<&'static Row> {
    let d = within("shaft diameter", shaft.value, ALL[0].over.value, ALL[15].to.value + HAIR)?;
    // The ends belong to the row below; a hair of room keeps a size typed in another unit on its side.
    let found = ALL.iter().find(|row| d > row.over.value + HAIR && d <= row.to.value + HAIR);
    found.ok_or(Error::outside("shaft diameter", d, ALL[0].over.value, ALL[15].to.value))
}

/// Section of the key for a shaft.
///
/// # Source
/// ANSI B17.1.
///
/// # Errors
/// As [`row_for`], and [`Error::NoSolution`] where there is no rectangular key.
///
/// # Example
/// ```
/// use drivecourse_calc::{fasten::key_sizes::{Shape, section}, units::*};
/// let key = section(Length::new::<length::inch>(1.4375), Shape::Square)?;
/// approx::assert_abs_diff_eq!(key.width.get::<length::inch>(), 0.375, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn section(shaft: Length, shape: Shape) -> Result<Section> {
    let row = row_for(shaft)?;
    let height = match shape {
        Shape::Square => row.width,
        Shape::Rectangular => row.flat_height.ok_or(Error::none("rectangular key"))?,
    };
    Ok(Section { width: row.width, height })
}

/// Far less than any step of the table, far more than the last bit of a unit change: a nanometre.
const HAIR: f64 = 1e-9;

const fn row(shafts: [f64; 2], width: f64, flat_height: Option<f64>) -> Row {
    let flat_height = match flat_height {
        Some(height) => Some(inches(height)),
        None => None,
    };
    Row { over: inches(shafts[0]), to: inches(shafts[1]), width: inches(width), flat_height }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::length::{inch, millimeter};
    use approx::assert_relative_eq;

    fn width(shaft: f64) -> f64 {
        section(Length::new::<inch>(shaft), Shape::Square).unwrap().width.get::<inch>()
    }

    /// *Shigley's* Table 7-6 has the same steps: (shaft, key), the upper ends and just past them.
    #[test]
    fn published_steps() {
        for (to, key, next) in [
            (7.0 / 16.0, 3.0 / 32.0, 1.0 / 8.0),
            (9.0 / 16.0, 1.0 / 8.0, 3.0 / 16.0),
            (7.0 / 8.0, 3.0 / 16.0, 1.0 / 4.0),
            (1.25, 1.0 / 4.0, 5.0 / 16.0),
            (1.375, 5.0 / 16.0, 3.0 / 8.0),
            (1.75, 3.0 / 8.0, 1.0 / 2.0),
            (2.25, 1.0 / 2.0, 5.0 / 8.0),
            (2.75, 5.0 / 8.0, 3.0 / 4.0),
            (3.25, 3.0 / 4.0, 7.0 / 8.0),
        ] {
            assert_relative_eq!(width(to), key, max_relative = 1e-12);
            assert_relative_eq!(width(to + 0.001), next, max_relative = 1e-12);
            let metric = Length::new::<millimeter>(to * 25.4);
            assert_relative_eq!(section(metric, Shape::Square).unwrap().width.get::<inch>(), key, max_relative = 1e-12);
        }
    }

    #[test]
    fn rows_join_and_flat_keys_are_flat() {
        assert!(ALL.windows(2).all(|pair| pair[0].to == pair[1].over && pair[0].width < pair[1].width));
        for row in &ALL {
            assert!(row.flat_height.is_none_or(|height| height < row.width));
            // about a quarter of the shaft
            let share = row.width.value / row.to.value;
            assert!((0.18..=0.29).contains(&share), "{share}");
        }
    }

    #[test]
    fn shapes() {
        let shaft = Length::new::<inch>(2.0);
        let flat = section(shaft, Shape::Rectangular).unwrap();
        assert_relative_eq!(flat.height.get::<inch>(), 0.375, max_relative = 1e-12);
        let thin = section(Length::new::<inch>(0.4), Shape::Rectangular);
        assert_eq!(thin, Err(Error::none("rectangular key")));
    }

    #[test]
    fn outside_the_table_is_refused() {
        for shaft in [0.25, 5.0 / 16.0, 11.1, f64::NAN] {
            let none = row_for(Length::new::<inch>(shaft));
            assert!(matches!(none, Err(Error::OutOfRange { input: "shaft diameter", .. })), "{shaft}");
        }
    }
}
