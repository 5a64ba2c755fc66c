//! The standard roller chains that the course draws from.
//!
//! The order of [`ALL`] is stored in files by index: append, never reorder.
//!
//! # Source
//! **Inch series**: pitch, roller, inside width and least breaking load from ASME B29.1-2011 (as quoted on a reference
//! page); mass from R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, Table 17-19, given there as
//! weight in lbf/ft. Numbers 140 and 160: mass from memory. Other published weights differ by up to 5 %.
//!
//! **Metric B series**: pitch, roller, inside width and mass from a printed DIN 8187 / BS 228 table; breaking load of the
//! chain with one, two and three strands from memory of ISO 606:2004, except one strand of 10B (22.2 kN, V. B. Bhandari,
//! *Design of Machine Elements*, Ex 14.7).
//! Older editions give 16B, 20B and 24B far less (42.3, 64.5 and 97.9 kN). Makers' masses differ by 5 to 10 %.
//!
//! **Beyond 2 in of pitch** (40B and 48B, numbers 180 to 240) there is none: the chain speeds up to which each way of
//! lubrication serves ([`LUBRICATION_SPEEDS`](super::capacity::LUBRICATION_SPEEDS)) are not known here for such chains.

use crate::units::{Force, Length, LinearMassDensity};
use core::marker::PhantomData;

/// Family of standards that a chain belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Series {
    /// ASME B29.1, numbered in eighths of an inch of pitch (ISO 606 A series).
    Inch,
    /// ISO 606 B series (DIN 8187), numbered in sixteenths of an inch of pitch.
    MetricB,
}

/// How the chain is built, as far as its rating depends on it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Build {
    /// Bushings without rollers (No. 25 and 35).
    Rollerless,
    /// Light half-inch chain (No. 41).
    Light,
    /// Any other roller chain.
    Standard,
}

/// One strand of a standard chain.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct ChainSize {
    /// Number in its standard (`"60"`, `"12B"`).
    pub designation: &'static str,
    /// Family of standards.
    pub series: Series,
    /// Build, for the rating.
    pub build: Build,
    /// Pitch.
    pub pitch: Length,
    /// Greatest roller diameter; that of the bushing where there are no rollers.
    pub roller_diameter: Length,
    /// Width between the inner plates.
    pub inside_width: Length,
    /// Mass per length.
    pub mass: LinearMassDensity,
    /// Least breaking load.
    pub breaking_load: Force,
    /// Least breaking load of the chain with two and with three such strands.
    pub breaking_load_of_several: [Force; 2],
}

impl ChainSize {
    /// Least breaking load of the chain with so many `strands`; with more than three of them in proportion to three.
    ///
    /// In the B series several strands carry less than so many times one.
    pub fn breaking_load_of(&self, strands: u32) -> Force {
        let [two, three] = self.breaking_load_of_several;
        match strands {
            1 => self.breaking_load,
            2 => two,
            more => three * (f64::from(more) / 3.0),
        }
    }
}

/// Every chain, in the order that files refer to.
pub static ALL: [ChainSize; 18] = [
    metric("06B", [9.525, 6.35, 5.72], 0.41, [8.9, 16.9, 24.9]),
    metric("08B", [12.70, 8.51, 7.75], 0.70, [17.8, 31.1, 44.5]),
    metric("10B", [15.875, 10.16, 9.65], 0.91, [22.2, 44.5, 66.7]),
    metric("12B", [19.05, 12.07, 11.68], 1.18, [28.9, 57.8, 86.7]),
    metric("16B", [25.40, 15.88, 17.02], 2.68, [60.0, 106.0, 160.0]),
    metric("20B", [31.75, 19.05, 19.56], 3.50, [95.0, 170.0, 250.0]),
    metric("24B", [38.10, 25.40, 25.40], 6.80, [160.0, 280.0, 425.0]),
    inch("35", Build::Rollerless, [0.375, 0.200, 0.188], 0.21, 1760.0),
    inch("40", Build::Standard, [0.500, 0.312, 0.312], 0.42, 3125.0),
    inch("50", Build::Standard, [0.625, 0.400, 0.375], 0.69, 4880.0),
    inch("60", Build::Standard, [0.750, 0.469, 0.500], 1.00, 7030.0),
    inch("80", Build::Standard, [1.000, 0.625, 0.625], 1.71, 12_500.0),
    inch("100", Build::Standard, [1.250, 0.750, 0.750], 2.58, 19_530.0),
    inch("120", Build::Standard, [1.500, 0.875, 1.000], 3.87, 28_125.0),
    inch("140", Build::Standard, [1.750, 1.000, 1.000], 4.95, 38_280.0),
    inch("160", Build::Standard, [2.000, 1.125, 1.250], 6.61, 50_000.0),
    metric("28B", [44.45, 27.94, 30.99], 8.50, [200.0, 360.0, 530.0]),
    metric("32B", [50.80, 29.21, 30.99], 10.5, [250.0, 450.0, 670.0]),
];

/// The chain with this number, `None` when it is not in the table.
pub fn by_designation(designation: &str) -> Option<&'static ChainSize> {
    ALL.iter().find(|size| size.designation == designation)
}

/// What may stand before a chain's number on papers: a standard, and its own number.
const BEFORE: [&str; 13] =
    ["ANSI", "ASME", "ANSI/ASME", "ASME/ANSI", "B29.1", "ISO", "606", "DIN", "8187", "8188", "BS", "No", "Nr"];

/// What parts the strands from a chain's number.
const HYPHENS: [char; 4] = ['-', '‑', '–', '−'];

/// `name` without what stands before the number.
fn bare(name: &str) -> &str {
    let mut rest = name.trim();
    loop {
        let behind = rest.strip_prefix('#').or_else(|| {
            let (word, behind) = rest.split_once(char::is_whitespace)?;
            let word = word.trim_end_matches(['.', ',', ':']);
            BEFORE.iter().any(|known| word.eq_ignore_ascii_case(known)).then_some(behind)
        });
        match behind {
            Some(behind) => rest = behind.trim_start(),
            None => return rest,
        }
    }
}

/// `name` without the 1 behind it that says one strand.
fn of_one_strand(name: &str) -> &str {
    name.rsplit_once(HYPHENS).filter(|(_, strands)| strands.trim() == "1").map_or(name, |(size, _)| size.trim_end())
}

fn by_bare(name: &str) -> Option<&'static ChainSize> {
    ALL.iter().find(|size| size.designation.eq_ignore_ascii_case(name))
}

/// The chain that papers give this name, as a chain of one strand: `"#120"`, `"ANSI 120"`, `"120-1"`, `"ISO 606 16B"`,
/// `"16b-1"`; `None` for any other name, such as that of another series or with more strands.
///
/// ```
/// use drivecourse_calc::chain::sizes::named;
/// assert_eq!(named("ANSI 120").map(|size| size.designation), Some("120"));
/// assert_eq!(named("16B-2"), None);
/// ```
pub fn named(name: &str) -> Option<&'static ChainSize> {
    by_bare(of_one_strand(bare(name)))
}

/// The chain of the inch series that ISO 606 calls by this name of its A series (`"16A"` is number 80); `None` for any
/// other name.
///
/// # Source
/// ISO 606:2015, Table 1, from memory: its figures are sixteenths of an inch of pitch, those of ASME B29.1 eighths with
/// a nought behind for a chain with rollers.
pub fn by_a_series(name: &str) -> Option<&'static ChainSize> {
    by_bare_a_series(of_one_strand(bare(name)))
}

fn by_bare_a_series(name: &str) -> Option<&'static ChainSize> {
    let figures = name.strip_suffix(['A', 'a']).filter(|figures| figures.len() == 2)?;
    let sixteenths: u32 = figures.bytes().all(|byte| byte.is_ascii_digit()).then(|| figures.parse().ok())??;
    let number = (sixteenths * 5).to_string();
    by_designation(&number).filter(|size| size.series == Series::Inch && size.build == Build::Standard)
}

/// The chain that this name stands for with the number of strands behind a hyphen, and that number (`"24B-2"` is number
/// 24B with two strands, `"16A-2"` number 80); `None` for any other name.
///
/// # Source
/// ISO 606:2015, clause on designation, from memory.
pub fn with_strands(name: &str) -> Option<(&'static ChainSize, u32)> {
    let (size, strands) = bare(name).rsplit_once(HYPHENS)?;
    let strands = Some(strands.trim()).filter(|figures| matches!(figures.as_bytes(), [b'1'..=b'9']))?;
    let size = size.trim();
    Some((by_bare(size).or_else(|| by_bare_a_series(size))?, strands.parse().ok()?))
}

/// The chain at this place of [`ALL`], `None` past the end.
pub fn by_index(index: usize) -> Option<&'static ChainSize> {
    ALL.get(index)
}

/// Pitch, roller and width in mm; mass in kg/m; breaking load in kN with one, two and three strands.
const fn metric(designation: &'static str, mm: [f64; 3], kg_per_m: f64, kn: [f64; 3]) -> ChainSize {
    let [one, two, three] = kn;
    size(designation, Series::MetricB, Build::Standard, mm, 1e-3, kg_per_m, [1e3 * one, 1e3 * two, 1e3 * three])
}

/// Pitch, roller and width in inches; weight in lbf/ft; breaking load in lbf, so many times that with several strands.
const fn inch(designation: &'static str, build: Build, inches: [f64; 3], lb_per_ft: f64, lbf: f64) -> ChainSize {
    const POUND: f64 = 0.453_592_37;
    const FOOT: f64 = 0.304_8;
    let newtons = lbf * POUND * crate::math::STANDARD_GRAVITY;
    size(
        designation,
        Series::Inch,
        build,
        inches,
        FOOT / 12.0,
        lb_per_ft * POUND / FOOT,
        [newtons, 2.0 * newtons, 3.0 * newtons],
    )
}

/// The typed row: `dimensions` times `unit` in metres, the rest in SI units.
const fn size(
    designation: &'static str,
    series: Series,
    build: Build,
    dimensions: [f64; 3],
    unit: f64,
    kg_per_m: f64,
    newtons: [f64; 3],
) -> ChainSize {
    let [pitch, roller, width] = dimensions;
    let [one, two, three] = newtons;
    ChainSize {
        designation,
        series,
        build,
        pitch: metres(pitch * unit),
        roller_diameter: metres(roller * unit),
        inside_width: metres(width * unit),
        mass: LinearMassDensity { dimension: PhantomData, units: PhantomData, value: kg_per_m },
        breaking_load: force(one),
        breaking_load_of_several: [force(two), force(three)],
    }
}

/// The library's own constructor cannot run at compile time.
const fn force(value: f64) -> Force {
    Force { dimension: PhantomData, units: PhantomData, value }
}

/// The library's own constructor cannot run at compile time.
const fn metres(value: f64) -> Length {
    Length { dimension: PhantomData, units: PhantomData, value }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::math::STANDARD_GRAVITY;
    use crate::units::force::{kilonewton, pound_force};
    use crate::units::length::{inch, millimeter};
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    #[test]
    fn the_a_series_names_the_inch_chains() {
        let named = ["08A", "10A", "12A", "16A", "20A", "24A", "28A", "32a"].map(|name| by_a_series(name).unwrap());
        assert_eq!(named.map(|size| size.designation), ["40", "50", "60", "80", "100", "120", "140", "160"]);
        // The figures are the pitch in sixteenths of an inch.
        assert_relative_eq!(by_a_series("28A").unwrap().pitch.get::<inch>(), 28.0 / 16.0, max_relative = 1e-12);
        for other in ["16B", "16", "A", "07A", "8A", "+8A", "36A", "-1A", "éA", ""] {
            assert!(by_a_series(other).is_none(), "{other}");
        }
    }

    #[test]
    fn a_hyphen_parts_the_size_from_its_strands() {
        for (name, size, strands) in
            [("24B-2", "24B", 2), ("100-2", "100", 2), (" 16b – 3 ", "16B", 3), ("16A-2", "80", 2), ("06B-1", "06B", 1)]
        {
            let found = with_strands(name).map(|(found, strands)| (found.designation, strands));
            assert_eq!(found, Some((size, strands)), "{name}");
        }
        for other in ["24B", "24B-", "24B-0", "24B-x", "24B-12", "25B-2", "-2", "24B 2", "24B-2-1"] {
            assert!(with_strands(other).is_none(), "{other}");
        }
    }

    /// Files hold these places: this list may grow at its end only.
    #[test]
    fn order_is_kept() {
        let names: Vec<_> = ALL.iter().map(|size| size.designation).collect();
        let kept =
            ["06B", "08B", "10B", "12B", "16B", "20B", "24B", "35", "40", "50", "60", "80", "100", "120", "140", "160"];
        let added = ["28B", "32B"];
        assert_eq!(names, [&kept[..], &added].concat());
        for (i, size) in ALL.iter().enumerate() {
            assert_eq!(by_index(i).unwrap(), by_designation(size.designation).unwrap());
        }
        assert!(by_index(18).is_none() && by_designation("61").is_none());
    }

    /// Twice and three times in the inch series; less than that, and never less than with one strand fewer, in the B series.
    #[test]
    fn several_strands_carry_less_than_so_many_times_one_in_the_b_series() {
        for size in &ALL {
            let [one, two, three, four] =
                [1, 2, 3, 4].map(|strands| size.breaking_load_of(strands).get::<kilonewton>());
            assert!(one < two && two < three && two <= 2.005 * one && three <= 3.005 * one, "{size:?}");
            if size.series == Series::Inch {
                assert_relative_eq!(three, 3.0 * one, max_relative = 1e-12);
            }
            assert_relative_eq!(four, three / 3.0 * 4.0, max_relative = 1e-12);
        }
        // ISO 606:2004, from memory.
        let of = |name: &str, strands| by_designation(name).unwrap().breaking_load_of(strands).get::<kilonewton>();
        assert_relative_eq!(of("20B", 2), 170.0, max_relative = 1e-12);
        assert_relative_eq!(of("16B", 3), 160.0, max_relative = 1e-12);
    }

    /// The number tells the pitch: eighths of an inch before the last digit, sixteenths before the B.
    #[test]
    fn numbers_tell_the_pitch() {
        for size in &ALL {
            let eighths = match size.series {
                Series::Inch => size.designation[..size.designation.len() - 1].parse::<f64>().unwrap(),
                Series::MetricB => size.designation.trim_end_matches('B').parse::<f64>().unwrap() / 2.0,
            };
            assert_relative_eq!(size.pitch.get::<inch>(), eighths / 8.0, max_relative = 1e-12);
        }
    }

    /// ASME B29.1: least breaking load 12 500 p² lbf, p in inches (printed values are rounded).
    #[test]
    fn inch_breaking_loads_follow_the_rule() {
        for size in ALL.iter().filter(|size| size.series == Series::Inch) {
            let p = size.pitch.get::<inch>();
            assert_relative_eq!(size.breaking_load.get::<pound_force>(), 12_500.0 * p * p, max_relative = 2e-3);
        }
    }

    /// *Shigley's* Table 17-19 prints the same rows in SI: weight in N/m, breaking load in N, sizes in mm.
    #[test]
    fn inch_rows_agree_with_the_printed_si_columns() {
        let printed = [
            ("35", 3.06, 7830.0, 5.08),
            ("40", 6.13, 13_920.0, 7.92),
            ("50", 10.1, 21_700.0, 10.16),
            ("60", 14.6, 31_300.0, 11.91),
            ("80", 25.0, 55_600.0, 15.87),
            ("100", 37.7, 86_700.0, 19.05),
            ("120", 56.5, 124_500.0, 22.22),
        ];
        for (designation, weight, load, roller) in printed {
            let size = by_designation(designation).unwrap();
            assert_relative_eq!(size.mass.value * STANDARD_GRAVITY, weight, max_relative = 0.005);
            assert_relative_eq!(size.breaking_load.value, load, max_relative = 0.006);
            assert_abs_diff_eq!(size.roller_diameter.get::<millimeter>(), roller, epsilon = 0.01);
        }
    }

    /// Another list of average weights in circulation, lb/ft: within the 5 % by which sources differ.
    #[test]
    fn inch_masses_agree_with_a_second_list() {
        let list = [0.21, 0.41, 0.68, 1.00, 1.69, 2.49, 3.67, 4.93, 6.43];
        let rows: Vec<_> = ALL.iter().filter(|size| size.series == Series::Inch).collect();
        assert_eq!(rows.len(), list.len());
        for (size, weight) in rows.into_iter().zip(list) {
            assert_relative_eq!(size.mass.value, weight * 0.453_592_37 / 0.304_8, max_relative = 0.055);
        }
    }

    /// A machine is drawn with its way of lubrication: there is none in the list that the speeds do not reach.
    #[test]
    fn every_size_has_its_way_of_lubrication() {
        let slow = crate::units::Velocity::new::<crate::units::velocity::meter_per_second>(0.2);
        for size in &ALL {
            assert!(super::super::capacity::lubrication(size.pitch, slow).is_ok(), "{}", size.designation);
        }
    }

    #[test]
    fn rows_are_sound() {
        for size in &ALL {
            assert!(size.roller_diameter < size.pitch && size.inside_width < size.pitch, "{}", size.designation);
            assert!(size.mass.value > 0.0);
        }
        assert_relative_eq!(by_designation("24B").unwrap().breaking_load.get::<kilonewton>(), 160.0);
        for series in [Series::Inch, Series::MetricB] {
            let rows: Vec<_> = ALL.iter().filter(|size| size.series == series).collect();
            assert!(rows.windows(2).all(|w| w[0].pitch < w[1].pitch && w[0].mass < w[1].mass));
            assert!(rows.windows(2).all(|w| w[0].breaking_load < w[1].breaking_load));
            assert!(rows.windows(2).all(|w| w[0].roller_diameter < w[1].roller_diameter));
        }
    }
}
