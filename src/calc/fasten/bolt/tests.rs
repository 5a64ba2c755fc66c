use super::*;
use crate::fasten::grades::{Family, strength};
use crate::fasten::nut_factors::{DRY, LUBRICATED};
use crate::fasten::thread_sizes::by_designation;
use crate::units::angle::degree;
use crate::units::area::square_inch;
use crate::units::force::{kilonewton, pound_force};
use crate::units::length::inch;
use crate::units::pressure::pound_force_per_square_inch;
use crate::units::torque::{newton_meter, pound_force_foot, pound_force_inch};
use approx::{assert_abs_diff_eq, assert_relative_eq};

fn psi(value: f64) -> Pressure {
    Pressure::new::<pound_force_per_square_inch>(value)
}
fn lbf(value: f64) -> Force {
    Force::new::<pound_force>(value)
}
fn inches(value: f64) -> Length {
    Length::new::<inch>(value)
}
fn square_inches(value: f64) -> Area {
    Area::new::<square_inch>(value)
}

/// T. H. Wentzell, *Machine Design*, Examples 6.1 and 6.2, pp. 120-121: ¾-10, 0.334 in², 85 000 psi at 0.85, K 0.2:
/// 3619.73 lb·in; grip 5 in, E 30e6 psi, pitch 0.1 in: 0.01204 in, 43.35°.
#[test]
fn wentzell_examples() {
    let pull = preload(psi(85_000.0), square_inches(0.334), plain(0.85)).unwrap();
    let t = torque(pull, inches(0.75), plain(0.2)).unwrap();
    assert_abs_diff_eq!(t.get::<pound_force_inch>(), 3619.73, epsilon = 0.01);
    let long = stretch(pull, inches(5.0), square_inches(0.334), psi(30e6)).unwrap();
    assert_abs_diff_eq!(long.get::<inch>(), 0.012_04, epsilon = 5e-6);
    assert_abs_diff_eq!(turn(long, inches(0.1)).unwrap().get::<degree>(), 43.35, epsilon = 0.02);
}

/// *Shigley's*, 9th ed., Example 8-3, p. 439: ¾-16 grade 5, 25 kip, 0.373 in², 6 kip, kb 6.50 and km 13.8 Mlbf/in.
#[test]
fn shigley_example() {
    let kpsi = |p: Pressure| p.get::<pound_force_per_square_inch>() / 1e3;
    let (pull, area) = (lbf(25_000.0), square_inches(0.373));
    assert_abs_diff_eq!(kpsi(stress(pull, area).unwrap()), 67.02, epsilon = 0.02);
    // the bolt's share of the stiffness, printed as 0.320
    let c = plain(6.50 / (6.50 + 13.8));
    let loaded = stress(pull_under_load(pull, lbf(6000.0), c).unwrap(), area).unwrap();
    assert_abs_diff_eq!(kpsi(loaded), 72.17, epsilon = 0.02);
    let proof = strength(Family::Sae, "5", inches(0.75)).unwrap().proof;
    assert_abs_diff_eq!(1.0 - (loaded / proof).value, 0.15, epsilon = 0.005); // prints 15 %
    assert_abs_diff_eq!(1.0 - (stress(pull, area).unwrap() / proof).value, 0.21, epsilon = 0.005); // prints 21 %
    // parts b and c: 3750 lb·in with K 0.2; 3551 lb·in (from memory) from friction 0.15 and 0.15
    let t = torque(pull, inches(0.75), plain(0.2)).unwrap();
    assert_abs_diff_eq!(t.get::<pound_force_inch>(), 3750.0, epsilon = 0.01);
    let k = nut_factor(inches(0.75), inches(1.0 / 16.0), plain(0.15), plain(0.15)).unwrap();
    assert_abs_diff_eq!(torque(pull, inches(0.75), k).unwrap().get::<pound_force_inch>(), 3551.0, epsilon = 1.0);
}

/// R. L. Mott, *Machine Elements in Mechanical Design*, chapter 19, exercise: four grade 2 screws share 6000 lb.
#[test]
fn mott_exercise() {
    let each = lbf(6000.0) / 4.0;
    let proof = strength(Family::Sae, "2", inches(0.25)).unwrap().proof;
    let area = area_needed(each, proof).unwrap();
    assert_abs_diff_eq!(area.get::<square_inch>(), 0.0273, epsilon = 5e-5);
    let thread = by_designation("1/4-20").unwrap();
    assert!(thread.stress_area().unwrap() >= area);
    let t = torque(each, thread.diameter, plain(0.15)).unwrap();
    assert_abs_diff_eq!(t.get::<pound_force_inch>(), 56.25, epsilon = 0.01);
}

/// A maintenance table in use (common practice, no source), UNC, 75 % of proof, K 0.2: (grade, thread, clamp lbf, torque lbf·ft), within 0.5 %.
#[test]
fn published_torque_table() {
    for (grade, designation, clamp, foot_pounds) in [
        ("5", "1/4-20", 2027.0, 8.45),
        ("5", "3/8-16", 4941.0, 30.9),
        ("5", "1/2-13", 9046.0, 75.4),
        ("5", "5/8-11", 14_408.0, 150.0),
        ("5", "3/4-10", 21_293.0, 266.0),
        ("5", "7/8-9", 29_453.0, 430.0),
        ("8", "1/2-13", 12_771.0, 106.0),
        ("8", "5/8-11", 20_340.0, 212.0),
        ("8", "3/4-10", 30_060.0, 376.0),
        ("8", "1-8", 54_540.0, 909.0),
    ] {
        let thread = by_designation(designation).unwrap();
        let proof = strength(Family::Sae, grade, thread.diameter).unwrap().proof;
        let pull = preload(proof, thread.stress_area().unwrap(), REUSED_SHARE).unwrap();
        assert_relative_eq!(pull.get::<pound_force>(), clamp, max_relative = 0.005);
        let t = torque(pull, thread.diameter, DRY).unwrap();
        assert_relative_eq!(t.get::<pound_force_foot>(), foot_pounds, max_relative = 0.005);
    }
}

/// 1-8 grade 5 is 38 633 lbf and 644 lbf·ft by SAE J429's 85 kpsi; a circulating table has 33 633 and 561, a slip.
#[test]
fn one_inch_grade_5() {
    let proof = strength(Family::Sae, "5", inches(1.0)).unwrap().proof;
    let pull = preload(proof, square_inches(0.606), REUSED_SHARE).unwrap();
    assert_abs_diff_eq!(pull.get::<pound_force>(), 38_633.0, epsilon = 0.6);
    let t = torque(pull, inches(1.0), DRY).unwrap();
    assert_abs_diff_eq!(t.get::<pound_force_foot>(), 644.0, epsilon = 0.5);
}

/// ISO 898-1 proof loads, kN, to the printed figure (from memory).
#[test]
fn metric_proof_loads() {
    for (class, designation, kn, half_unit) in [
        ("8.8", "M10", 33.7, 0.05),
        ("8.8", "M12", 48.9, 0.05),
        ("8.8", "M16", 91.0, 0.05),
        ("8.8", "M20", 147.0, 0.5),
        ("10.9", "M10", 48.1, 0.05),
        ("10.9", "M12", 70.0, 0.05),
        ("10.9", "M16", 130.0, 0.5),
        ("10.9", "M20", 203.0, 0.5),
    ] {
        let thread = by_designation(designation).unwrap();
        let proof = strength(Family::Iso, class, thread.diameter).unwrap().proof;
        let load = preload(proof, thread.stress_area().unwrap(), plain(1.0)).unwrap();
        // the standard multiplies a rounded area: one part in a thousand more
        let room = half_unit + 1e-3 * kn;
        assert_abs_diff_eq!(load.get::<kilonewton>(), kn, epsilon = room);
    }
}

#[test]
fn oil_on_a_dry_torque_pulls_a_third_too_hard() {
    let thread = by_designation("M16").unwrap();
    let wanted = Force::new::<kilonewton>(68.0);
    let dry = torque(wanted, thread.diameter, DRY).unwrap();
    let got = preload_from_torque(dry, thread.diameter, LUBRICATED).unwrap();
    assert_relative_eq!((got / wanted).value, 4.0 / 3.0, max_relative = 1e-12);
    // by hand: 0.2 × 16 mm × 68 kN = 217.6 N·m
    assert_relative_eq!(dry.get::<newton_meter>(), 217.6, max_relative = 1e-12);
    let back = preload_from_torque(dry, thread.diameter, DRY).unwrap();
    assert_relative_eq!(back.value, wanted.value, max_relative = 1e-14);
}

/// A frictionless screw: all the work goes into the pull, T = F P / 2π.
#[test]
fn frictionless_factor_is_the_incline() {
    let k = nut_factor(inches(0.75), inches(0.1), plain(0.0), plain(0.0)).unwrap();
    assert_relative_eq!(k.value, 0.1 / (core::f64::consts::TAU * 0.75), max_relative = 1e-12);
}

#[test]
fn what_has_no_answer_is_refused() {
    let refused = |result: Result<Force>| match result {
        Err(Error::OutOfRange { input, .. }) => input,
        other => panic!("{other:?}"),
    };
    assert_eq!(refused(preload(psi(85_000.0), square_inches(0.3), plain(1.1))), "share of proof");
    assert_eq!(refused(preload(psi(f64::NAN), square_inches(0.3), plain(0.7))), "proof stress");
    let newton_metres = Torque::new::<newton_meter>;
    assert_eq!(refused(preload_from_torque(newton_metres(1.0), inches(0.5), plain(0.0))), "nut factor");
    assert_eq!(refused(pull_under_load(lbf(100.0), lbf(1000.0), plain(0.3))), "outside load");
    assert!(torque(lbf(0.0), inches(0.5), plain(0.2)).is_err() && turn(inches(0.0), inches(0.1)).is_err());
    assert!(area_needed(lbf(1.0), psi(0.0)).is_err());
    assert!(stretch(lbf(1.0), inches(1.0), square_inches(1.0), psi(0.0)).is_err());
    assert!(nut_factor(inches(0.5), inches(0.5), plain(0.1), plain(0.1)).is_err());
}
