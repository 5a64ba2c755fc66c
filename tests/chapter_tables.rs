//! The tables printed in the chapter on bolts and keys say what the calculation looks up.

#![allow(clippy::unwrap_used, reason = "a test stops where it goes wrong")]

use std::path::Path;

use drivecourse_calc::fasten::grades::{Family, strength};
use drivecourse_calc::fasten::key_sizes::{self, Shape};
use drivecourse_calc::fasten::key_sizes_metric;
use drivecourse_calc::fasten::thread_sizes::by_designation;
use drivecourse_calc::units::{Length, area, length, pressure};

/// Cells of every row of a table, without its head.
fn rows() -> Vec<Vec<String>> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("book/fasteners.md");
    let text = std::fs::read_to_string(path).unwrap();
    let lines = text.lines().filter(|line| line.starts_with('|') && !line.contains("---"));
    lines.map(|line| line.trim_matches('|').split('|').map(|cell| cell.trim().to_owned()).collect()).collect()
}

/// A whole number, a decimal one with spaces between thousands, or one with a fraction.
fn number(text: &str) -> f64 {
    if let Some((whole, fraction)) = text.rsplit_once(' ').filter(|(_, last)| last.contains('/')) {
        return number(whole) + number(fraction);
    }
    if let Some((over, under)) = text.split_once('/') {
        return number(over) / number(under);
    }
    text.replace(' ', "").parse().unwrap()
}

/// The chapter prints three figures.
fn close(shown: f64, held: f64) {
    let mut half_step = 0.5;
    while half_step * 2e3 <= held {
        half_step *= 10.0;
    }
    while half_step * 2e2 > held {
        half_step /= 10.0;
    }
    assert!((shown - held).abs() <= half_step, "the chapter says {shown}, the calculation {held}");
}

#[test]
fn stress_areas() {
    let mut seen = 0;
    for row in rows() {
        for pair in row.chunks(2) {
            let Some(thread) = by_designation(&pair[0]) else { continue };
            let held = thread.stress_area().unwrap();
            match pair[1].strip_suffix(" in²") {
                Some(shown) => close(number(shown), held.get::<area::square_inch>()),
                None => close(number(pair[1].strip_suffix(" mm²").unwrap()), held.get::<area::square_millimeter>()),
            }
            seen += 1;
        }
    }
    assert_eq!(seen, 10);
}

#[test]
fn proof_stresses() {
    let mut seen = 0;
    for row in rows() {
        let (family, mark) = if let Some(mark) = row[0].strip_prefix("grade ") {
            (Family::Sae, mark)
        } else if let Some(mark) = row[0].strip_prefix("class ") {
            (Family::Iso, mark)
        } else {
            continue;
        };
        let size = match row[1].rsplit_once(' ') {
            Some((size, "in")) => Length::new::<length::inch>(number(size.strip_prefix("up to ").unwrap())),
            Some(("up to", size)) => Length::new::<length::millimeter>(number(&size[1..])),
            _ => Length::new::<length::millimeter>(20.0),
        };
        let held = strength(family, mark, size).unwrap().proof;
        match row[2].strip_suffix(" psi") {
            Some(shown) => close(number(shown), held.get::<pressure::psi>()),
            None => close(number(row[2].strip_suffix(" MPa").unwrap()), held.get::<pressure::megapascal>()),
        }
        seen += 1;
    }
    assert_eq!(seen, 6);
}

#[test]
fn keys_by_shaft() {
    let mut seen = 0;
    for row in rows() {
        let Some((low, high)) = row[0].strip_suffix(" mm").and_then(|range| range.split_once(" to ")) else { continue };
        let (width, height) = row[1].strip_suffix(" mm").unwrap().split_once(" × ").unwrap();
        // Just over the first figure, and the second itself.
        for shaft in [number(low) + 0.01, number(high)] {
            let held = key_sizes_metric::row_for(Length::new::<length::millimeter>(shaft)).unwrap().section();
            close(number(width), held.width.get::<length::millimeter>());
            close(number(height), held.height.get::<length::millimeter>());
        }
        let (low, high) = row[2].strip_suffix(" in").unwrap().split_once(" to ").unwrap();
        for shaft in [number(low) + 0.001, number(high)] {
            let held = key_sizes::section(Length::new::<length::inch>(shaft), Shape::Square).unwrap();
            close(number(row[3].strip_suffix(" in").unwrap()), held.width.get::<length::inch>());
            close(held.height.get::<length::inch>(), held.width.get::<length::inch>());
        }
        seen += 1;
    }
    assert_eq!(seen, 6);
}
