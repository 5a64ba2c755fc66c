//! Checks of chain length, centre distance, span and wrap.
//!
//! The worked examples given here to Bhandari come from open notebooks without a title page; the book is
//! recognised by its chapter title and page numbers.

use super::*;
use crate::units::angle::degree;
use crate::units::length::{inch, meter, millimeter};
use approx::{assert_abs_diff_eq, assert_relative_eq};

fn mm(value: f64) -> Length {
    Length::new::<millimeter>(value)
}

/// V. B. Bhandari, *Design of Machine Elements*, Ex 14.3 (open companion notebook).
#[test]
fn textbook_links_and_centres() {
    let (p, z1, z2) = (mm(12.7), 21, 63);
    let length = length_in_pitches(mm(500.0), p, z1, z2).unwrap();
    assert_abs_diff_eq!(length.value, 121.875_097, epsilon = 1e-5);
    assert_eq!(even_links(length).unwrap(), 122);
    let c = centres_for_links(122, p, z1, z2).unwrap();
    assert_abs_diff_eq!(c.get::<millimeter>(), 500.804_717, epsilon = 1e-5);
    // exact geometry, computed apart from this crate: 500.787
    let exact = centres_for_links_exact(122, p, z1, z2).unwrap();
    assert_abs_diff_eq!(exact.get::<millimeter>(), 500.787, epsilon = 0.000_51);
}

/// The same, Ex 14.6: the book rounds 132.704369 down to 132.
#[test]
fn textbook_centres_for_a_shorter_chain() {
    let (p, z1, z2) = (mm(19.05), 21, 80);
    let length = length_in_pitches(40.0 * p, p, z1, z2).unwrap();
    assert_abs_diff_eq!(length.value, 132.704_369, epsilon = 1e-5);
    assert_eq!(even_links(length).unwrap(), 134);
    let c = centres_for_links(132, p, z1, z2).unwrap();
    assert_abs_diff_eq!(c.get::<millimeter>(), 755.098_993, epsilon = 1e-5);
    let exact = centres_for_links_exact(132, p, z1, z2).unwrap();
    assert_abs_diff_eq!(exact.get::<millimeter>(), 754.995, epsilon = 0.000_51);
}

/// A design text quoted in a journal: 20/63 teeth, C = 36 p gives 114.8; 114 pitches give C = 35.6 p.
#[test]
fn published_pair() {
    let p = Length::new::<meter>(1.0);
    assert_abs_diff_eq!(length_in_pitches(36.0 * p, p, 20, 63).unwrap().value, 114.8, epsilon = 0.05);
    assert_abs_diff_eq!(centres_for_links(114, p, 20, 63).unwrap().value, 35.6, epsilon = 0.05);
    // exact tangent geometry, computed apart: 114.805 and 35.590
    assert_abs_diff_eq!(length_exact(36.0 * p, p, 20, 63).unwrap().value, 114.805, epsilon = 0.000_51);
    assert_abs_diff_eq!(centres_for_links_exact(114, p, 20, 63).unwrap().value, 35.590, epsilon = 0.000_51);
}

/// How far the three-term formula is from exact geometry, computed apart from this crate.
#[test]
fn three_terms_against_exact() {
    let p = mm(12.7);
    for (z1, z2, c, off) in [(21, 63, 39.4, 0.003), (21, 80, 40.0, 0.010), (25, 96, 30.0, 0.053)] {
        let rule = length_in_pitches(c * p, p, z1, z2).unwrap().value;
        let exact = length_exact(c * p, p, z1, z2).unwrap().value;
        assert_abs_diff_eq!((exact - rule).abs(), off, epsilon = 0.000_51);
    }
}

/// Arcs and tangents added up from points, with the pitch circles walked in fine steps.
#[test]
fn exact_length_by_walking_the_loop() {
    use crate::math::{cos, sin};
    let (p, z1, z2, c) = (mm(15.875), 17, 57, 0.62);
    let (r1, r2) = (pitch_diameter(p, z1).unwrap().value / 2.0, pitch_diameter(p, z2).unwrap().value / 2.0);
    // tangent points found by search: the upper line touching both circles has normal (−sin α, cos α)
    let alpha = crate::math::root("angle", 0.0, 1.5, |a| c * sin(a) - (r2 - r1)).unwrap();
    let (x1, y1) = (-r1 * sin(alpha), r1 * cos(alpha));
    let (x2, y2) = (c - r2 * sin(alpha), r2 * cos(alpha));
    let tangent = ((x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1)).sqrt();
    let teeth_on_1 = f64::from(z1) * (PI - 2.0 * alpha) / TAU;
    let teeth_on_2 = f64::from(z2) * (PI + 2.0 * alpha) / TAU;
    let walked = 2.0 * tangent / p.value + teeth_on_1 + teeth_on_2;
    let exact = length_exact(Length::new::<meter>(c), p, z1, z2).unwrap().value;
    assert_relative_eq!(exact, walked, max_relative = 1e-12);
    let span = free_span(Length::new::<meter>(c), 2.0 * metres(r1), 2.0 * metres(r2)).unwrap();
    assert_relative_eq!(span.value, tangent, max_relative = 1e-12);
}

#[test]
fn equal_sprockets() {
    let p = mm(25.4);
    let d = pitch_diameter(p, 30).unwrap();
    for length in [length_in_pitches(40.0 * p, p, 30, 30), length_exact(40.0 * p, p, 30, 30)] {
        assert_relative_eq!(length.unwrap().value, 110.0, max_relative = 1e-14);
    }
    assert_relative_eq!(wrap_small(40.0 * p, d, d).unwrap().get::<degree>(), 180.0);
    assert_relative_eq!(free_span(40.0 * p, d, d).unwrap().value, (40.0 * p).value);
}

#[test]
fn centres_and_length_are_inverse() {
    let p = mm(15.875);
    for (z1, z2) in [(17, 17), (17, 34), (34, 17), (19, 95), (25, 150)] {
        // 25 and 150 teeth touch below 158 links
        for links in (160..400).step_by(10) {
            let wanted = f64::from(links);
            let c = centres_for_links(links, p, z1, z2).unwrap();
            assert_relative_eq!(length_in_pitches(c, p, z1, z2).unwrap().value, wanted, max_relative = 1e-12);
            let c = centres_for_links_exact(links, p, z1, z2).unwrap();
            assert_relative_eq!(length_exact(c, p, z1, z2).unwrap().value, wanted, max_relative = 1e-12);
        }
    }
}

/// Centres on a drawing are rounded: 17 and 34 teeth of 1 in with 98 links stand at 36.1487 in (computed apart from
/// this crate), which a drawing gives as 36.15.
#[test]
fn rounded_centres_keep_their_links() {
    let p = Length::new::<inch>(1.0);
    let length = length_exact(Length::new::<inch>(36.15), p, 17, 34).unwrap();
    assert_abs_diff_eq!(length.value, 98.0026, epsilon = 0.000_051);
    assert_eq!(even_links(length).unwrap(), 98);
    let taut = centres_for_links_exact(98, p, 17, 34).unwrap();
    assert_abs_diff_eq!(taut.get::<inch>(), 36.15, epsilon = 0.005);
}

#[test]
fn even_numbers() {
    let even = |x: f64| even_links(plain(x)).unwrap();
    assert_eq!([even(121.875), even(122.0), even(122.002), even(122.05), even(122.051)], [122, 122, 122, 122, 124]);
    assert_eq!([even(121.0), even(121.999_999_999_9), even(0.3), even(0.03)], [122, 122, 2, 2]);
    // Whatever even number it is: 0.05 is no number of the machine's.
    for links in (2..400).step_by(2) {
        let written = |hundredths: u32| format!("{links}.{hundredths:02}").parse().unwrap();
        assert_eq!([even(written(0)), even(written(5)), even(written(6))], [links, links, links + 2]);
    }
    assert!(even_links(plain(0.0)).is_err() && even_links(plain(f64::NAN)).is_err());
    assert!(even_links(plain(1e9)).is_err());
}

/// Belt analogue, T. H. Wentzell, *Machine Design*, Ex 14.2: D 4 and 6 in, C 19.12 in, contact 174.01°.
#[test]
fn textbook_wrap() {
    let (c, d1, d2) = (Length::new::<inch>(19.12), Length::new::<inch>(4.0), Length::new::<inch>(6.0));
    let small = wrap_small(c, d1, d2).unwrap();
    assert_abs_diff_eq!(small.get::<degree>(), 174.01, epsilon = 0.01);
    assert_relative_eq!((small + wrap_large(c, d2, d1).unwrap()).get::<degree>(), 360.0, max_relative = 1e-14);
}

#[test]
fn inclines() {
    let deg = Angle::new::<degree>;
    assert_relative_eq!(strand_incline(deg(30.0), deg(5.0), Strand::Upper).get::<degree>(), 35.0);
    assert_relative_eq!(strand_incline(deg(30.0), deg(5.0), Strand::Lower).get::<degree>(), 25.0);
}

#[test]
fn impossible_drives_are_refused() {
    let p = mm(12.7);
    assert!(length_exact(mm(100.0), p, 21, 63).is_err());
    assert!(length_in_pitches(mm(f64::NAN), p, 21, 63).is_err());
    for links in [0, 10, 60] {
        assert_eq!(centres_for_links(links, p, 21, 63), Err(too_short()));
        assert_eq!(centres_for_links_exact(links, p, 21, 63), Err(too_short()));
    }
    assert!(free_span(mm(10.0), mm(50.0), mm(60.0)).is_err());
}
