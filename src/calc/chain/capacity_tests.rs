//! Checks of the capacity formulas against printed examples and tables.

use super::super::sizes::by_designation;
use super::super::sprocket::chain_velocity;
use super::*;
use crate::units::length::{inch, millimeter};
use crate::units::power::kilowatt;
use crate::units::velocity::{foot_per_minute, meter_per_second};
use approx::{assert_abs_diff_eq, assert_relative_eq};

const POUND_FORCE: f64 = 4.448_221_615_260_5;

fn rpm(value: f64) -> AngularVelocity {
    AngularVelocity::new::<revolution_per_minute>(value)
}

fn kw(value: f64) -> Power {
    Power::new::<kilowatt>(value)
}

fn hp(power: Power) -> f64 {
    power.value / HORSEPOWER
}

/// V. B. Bhandari, *Design of Machine Elements*, Ex 14.2 and 14.3 (open companion notebooks).
#[test]
fn textbook_design_power() {
    let p = design_power(kw(30.0) * 0.90, plain(1.4), strand_factor(4).unwrap(), plain(1.0)).unwrap();
    assert_relative_eq!(p.get::<kilowatt>(), 11.454_545, max_relative = 1e-7);
    let p = design_power(kw(5.0), plain(1.3), strand_factor(1).unwrap(), plain(1.26)).unwrap();
    assert_relative_eq!(p.get::<kilowatt>(), 5.158_730, max_relative = 1e-7);
}

/// R. G. Budynas, J. K. Nisbett, *Shigley's*, Ex 17-5: 90 hp, Ks 1.3, design factor 1.5, printed 176 (exact 175.5);
/// then from that rounded 176 for two, three and four strands 104, 70.4 and 53.3.
#[test]
fn textbook_design_power_per_strand() {
    let of = |power: f64, service: f64, strands: u32| {
        let power = Power::new::<watt>(power * HORSEPOWER);
        hp(design_power(power, plain(service), strand_factor(strands).unwrap(), plain(1.0)).unwrap())
    };
    assert_abs_diff_eq!(of(90.0, 1.3 * 1.5, 1), 176.0, epsilon = 0.5 + 1e-9);
    for (strands, printed, half_digit) in [(2, 104.0, 0.5), (3, 70.4, 0.05), (4, 53.3, 0.05)] {
        assert_abs_diff_eq!(of(176.0, 1.0, strands), printed, epsilon = half_digit);
    }
}

/// V. B. Bhandari, Ex 14.7: 10B, 19 teeth, 1400 rev/min, 11.67 kW x 1.11: 1840.558878 N, safety 12.061554 on 22 200 N.
#[test]
fn textbook_pull_and_safety() {
    let v = chain_velocity(Length::new::<millimeter>(15.875), 19, rpm(1400.0)).unwrap();
    let pull = chain_pull(kw(11.67) * 1.11, v).unwrap();
    assert_relative_eq!(pull.value, 1_840.558_878, max_relative = 1e-8);
    let safety = safety_factor(by_designation("10B").unwrap().breaking_load, pull).unwrap();
    assert_relative_eq!(safety.value, 12.061_554, max_relative = 1e-6);
}

/// T. H. Wentzell, *Machine Design*, Ex 14.4: 5.31 hp at 900 ft/min, 194.62 lb (through torque with 63 000).
#[test]
fn textbook_pull_in_pounds() {
    let v = Velocity::new::<foot_per_minute>(900.0);
    let pull = chain_pull(Power::new::<watt>(5.31 * HORSEPOWER), v).unwrap();
    assert_relative_eq!(pull.value / POUND_FORCE, 194.62, max_relative = 0.002);
}

/// 17 teeth, one strand, horsepower; negative: limited by rollers and bushings. Computed from the formulas apart
/// from this crate; No. 40 at 1000 and No. 140 at 300 rev/min are also the entries of *Shigley's* Table 17-20.
const RATINGS: [(&str, [f64; 10]); 9] = [
    ("35", [0.16, 0.29, 0.54, 0.78, 1.01, 1.24, 1.46, 1.89, 2.31, 2.73]),
    ("40", [0.37, 0.69, 1.29, 1.85, 2.40, 2.93, 3.46, 4.48, 5.48, 6.45]),
    ("50", [0.72, 1.34, 2.50, 3.61, 4.67, 5.71, 6.73, 8.72, 10.65, 12.55]),
    ("60", [1.24, 2.31, 4.30, 6.20, 8.03, 9.81, 11.56, 14.98, 18.31, 21.58]),
    ("80", [2.88, 5.38, 10.04, 14.47, 18.74, 22.91, 26.99, 34.97, -37.68, -28.66]),
    ("100", [5.52, 10.31, 19.24, 27.71, 35.90, 43.88, 51.70, -62.95, -45.05, -34.27]),
    ("120", [9.33, 17.41, 32.48, 46.79, 60.62, 74.10, 87.31, -72.84, -52.12, -39.65]),
    ("140", [14.43, 26.93, 50.26, 72.39, 93.79, 114.65, -126.86, -82.40, -58.96, -44.85]),
    ("160", [20.94, 39.07, 72.92, 105.03, 136.06, 166.33, -141.16, -91.69, -65.61, -49.91]),
];

#[test]
fn rating_table() {
    let speeds = [50.0, 100.0, 200.0, 300.0, 400.0, 500.0, 600.0, 800.0, 1000.0, 1200.0];
    for (designation, row) in RATINGS {
        let chain = by_designation(designation).unwrap();
        for (n, printed) in speeds.into_iter().zip(row) {
            let got = rating(chain.pitch, 17, rpm(n), chain.build).unwrap();
            assert_abs_diff_eq!(hp(got.power), f64::abs(printed), epsilon = 0.005_1);
            assert_eq!(got.governs == Governs::RollerBushing, printed < 0.0, "No. {designation} at {n}");
        }
    }
}

/// Printed metric ratings of A-series chains (V. B. Bhandari, table p. 550, 17 teeth) follow another edition of the
/// standard: the inch formula for the chain of the same pitch is 3 to 6 % from them where the link plates govern.
#[test]
fn printed_metric_ratings_are_of_the_same_size() {
    for (pitch, n, printed) in
        [(19.05, 1000.0, 14.32), (19.05, 900.0, 13.12), (12.7, 1400.0, 5.28), (12.7, 900.0, 3.61)]
    {
        let got = rating_link_plate(Length::new::<millimeter>(pitch), 17, rpm(n), Build::Standard).unwrap();
        assert_relative_eq!(got.get::<kilowatt>(), printed, max_relative = 0.06);
    }
}

#[test]
fn builds() {
    let half = Length::new::<inch>(0.5);
    let plate = |b| rating_link_plate(half, 17, rpm(500.0), b).unwrap();
    let roller = |b| rating_roller_bushing(half, 17, rpm(500.0), b).unwrap();
    assert_relative_eq!((plate(Build::Light) / plate(Build::Standard)).value, 0.55, max_relative = 1e-12);
    assert_relative_eq!((roller(Build::Light) / roller(Build::Standard)).value, 0.2, max_relative = 1e-12);
    assert_relative_eq!((roller(Build::Rollerless) / roller(Build::Standard)).value, 29.0 / 17.0, max_relative = 1e-12);
}

#[test]
fn strand_factors() {
    assert_relative_eq!(strand_factor(8).unwrap().value, 6.0);
    assert_eq!(strand_factor(7), Err(Error::none("strand factor")));
    assert!(strand_factor(0).is_err());
}

#[test]
fn lubrication_by_speed() {
    let way = |p: f64, v: f64| lubrication(Length::new::<inch>(p), Velocity::new::<foot_per_minute>(v)).unwrap();
    assert_eq!(way(0.5, 299.0), Lubrication::ManualOrDrip);
    assert_eq!(way(0.5, 301.0), Lubrication::Bath);
    assert_eq!(way(0.5, 2301.0), Lubrication::Stream);
    // between rows: the larger pitch's limits
    assert_eq!(way(1.1, 160.0), Lubrication::Bath);
    let metric = lubrication(Length::new::<millimeter>(12.7), Velocity::new::<meter_per_second>(1.52)).unwrap();
    assert_eq!(metric, Lubrication::ManualOrDrip);
    for (_, manual, bath) in LUBRICATION_SPEEDS {
        assert!(manual < bath);
    }
    assert!(lubrication(Length::new::<inch>(2.5), Velocity::new::<foot_per_minute>(10.0)).is_err());
}

#[test]
fn bad_input_is_refused() {
    let p = Length::new::<inch>(0.5);
    assert!(chain_pull(kw(1.0), Velocity::new::<meter_per_second>(0.0)).is_err());
    assert!(design_power(kw(-1.0), plain(1.0), plain(1.0), plain(1.0)).is_err());
    assert!(design_power(kw(1.0), plain(1.0), plain(0.0), plain(1.0)).is_err());
    assert!(rating(p, 17, rpm(0.0), Build::Standard).is_err());
    assert!(rating(p, 17, rpm(20_000.0), Build::Standard).is_err());
    assert!(safety_factor(Force::new::<newton>(1.0), Force::new::<newton>(0.0)).is_err());
}
