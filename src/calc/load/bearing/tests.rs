use super::BearingKind::{Ball, Roller};
use super::*;
use crate::units::{force::kilonewton, force::pound_force, length, time::hour};
use approx::{assert_abs_diff_eq, assert_relative_eq};

fn rpm(value: f64) -> AngularVelocity {
    AngularVelocity::new::<angular_velocity::revolution_per_minute>(value)
}
fn kn(value: f64) -> Force {
    Force::new::<kilonewton>(value)
}
fn metres(value: f64) -> Length {
    Length::new::<length::meter>(value)
}
fn hours(value: f64) -> Time {
    Time::new::<hour>(value)
}

#[test]
fn reactions_balance_forces_and_moments() {
    for (f, s, x) in [(4000.0, 0.2, 0.1), (815.0, 0.31, 0.0), (1.0, 5.0, 12.0)] {
        let r = reactions(newtons(f), metres(s), metres(x)).unwrap();
        assert_relative_eq!(r.near.value - r.far.value, f, max_relative = 1e-13);
        // moments about the near bearing, the far bearing and the load itself
        assert_abs_diff_eq!(f * x - r.far.value * s, 0.0, epsilon = 1e-12 * f);
        assert_abs_diff_eq!(f * (s + x) - r.near.value * s, 0.0, epsilon = 1e-12 * f);
        assert_abs_diff_eq!(r.near.value * x - r.far.value * (s + x), 0.0, epsilon = 1e-9 * f);
        let back = load_for_near_reaction(r.near, metres(s), metres(x)).unwrap();
        assert_relative_eq!(back.value, f, max_relative = 1e-14);
    }
    assert_eq!(reactions(newtons(815.0), metres(0.3), metres(0.0)).unwrap().far.value, 0.0);
}

#[test]
fn published_overhanging_beams() {
    // S. S. Bhavikatti, Strength of Materials (statics exact). The loads between the supports by hand, the overhang by us.
    let overhang = reactions(kn(20.0), metres(4.0), metres(1.0)).unwrap();
    let (near, far) = (overhang.near.get::<kilonewton>(), overhang.far.get::<kilonewton>());
    // Ex. 3.3.5, p. 105: 20 kN/m over the first 2 m (40 kN at 1 m) and 40 kN at 2 m: RA 45, RB 55 kN
    assert_relative_eq!((40.0 * 3.0 + 40.0 * 2.0) / 4.0 - far, 45.0, max_relative = 1e-12);
    assert_relative_eq!((40.0 * 1.0 + 40.0 * 2.0) / 4.0 + near, 55.0, max_relative = 1e-12);
    // Ex. 3.3.6, p. 107: a triangle of 60 kN with its centroid at 7/3 m: RA 20, RB 60 kN
    assert_relative_eq!(60.0 * (4.0 - 7.0 / 3.0) / 4.0 - far, 20.0, max_relative = 1e-12);
    assert_relative_eq!(60.0 * 7.0 / 3.0 / 4.0 + near, 60.0, max_relative = 1e-12);
}

#[test]
fn published_lives_in_revolutions() {
    let million = |c: Force, p: Force| l10_revolutions(c, p, Ball).unwrap().value * 1e-6;
    // a bearing catalogue, Rolling Bearings, calculation example 1, p. 92: 169 million
    assert_abs_diff_eq!(million(kn(55.3), kn(10.0)), 169.0, epsilon = 0.5);
    // U. C. Jindal, Machine Design, Ex. 18-2, p. 508: V = 1 gives 57.3, V = 1.2 gives 43.46 million
    let load = |v: f64| newtons(0.56 * v * 1250.0 + 1.2 * 625.0);
    assert_abs_diff_eq!(million(newtons(5590.0), load(1.0)), 57.3, epsilon = 0.05);
    assert_abs_diff_eq!(million(newtons(5590.0), load(1.2)), 43.46, epsilon = 0.005);
    // R. L. Mott, Machine Elements in Mechanical Design, chapter 14, exercise 3: C 3150 lb; 0.5 %
    let lb = Force::new::<pound_force>;
    assert_relative_eq!(million(lb(3150.0), lb(2200.0)), 2.94, max_relative = 5e-3);
    assert_relative_eq!(million(lb(3150.0), lb(4500.0)), 0.343, max_relative = 5e-3);
    // common practice, no source: C 16 kN, P 2 kN, 512 million, exact
    assert_eq!(l10_revolutions(kn(16.0), kn(2.0), Ball).unwrap().value, 512e6);
}

#[test]
fn published_life_in_hours() {
    // a bearing catalogue, Rolling Bearings, calculation example 1, p. 92: 940 h
    let life = l10_life(kn(55.3), kn(10.0), Ball, rpm(3000.0)).unwrap();
    assert_abs_diff_eq!(life.get::<hour>(), 940.0, epsilon = 5.0);
    // the trade form 10⁶ (C/P)ᵖ / (60 n)
    assert_relative_eq!(life.get::<hour>(), 1e6 * 5.53 * 5.53 * 5.53 / (60.0 * 3000.0), max_relative = 1e-12);
}

#[test]
fn published_capacities() {
    // Shigley, Ex. 11-1 (from memory): 400 lbf, 5000 h, 1725 rev/min: 3211 lbf
    let c = capacity_for_life(Force::new::<pound_force>(400.0), hours(5000.0), Ball, rpm(1725.0)).unwrap();
    assert_abs_diff_eq!(c.get::<pound_force>(), 3211.0, epsilon = 1.0);
    // Mott, chapter 14 (problem 12-40): 10 000 h at 480 rev/min, to 1 N
    for (p, printed) in [(6351.0, 41_941.0), (5122.0, 33_825.0)] {
        let c = capacity_for_life(newtons(p), hours(10_000.0), Ball, rpm(480.0)).unwrap();
        assert_abs_diff_eq!(c.value, printed, epsilon = 1.0);
    }
    // solutions to Shigley, 8th edition, problem 11-3: rollers, 10.279 kN, 1440 million revolutions: 91.1 kN
    let c = capacity_for_life(kn(10.279), hours(1440e6 / 60.0 / 1000.0), Roller, rpm(1000.0)).unwrap();
    assert_abs_diff_eq!(c.get::<kilonewton>(), 91.1, epsilon = 0.1);
}

#[test]
fn published_duty_cycle() {
    // Jindal, Ex. 18-9, p. 512: C 34 219 N for 10 000 h, to 1 N
    let parts = [(3.0, 1440.0, 0.25), (4.0, 1080.0, 0.5), (5.0, 720.0, 0.25)].map(|(p, n, t)| Duty {
        load: kn(p),
        speed: rpm(n),
        share: plain(t),
    });
    let mean = mean_duty(&parts, Ball).unwrap();
    assert_relative_eq!(mean.speed.value, rpm(1080.0).value, max_relative = 1e-14);
    let c = capacity_for_life(mean.load, hours(10_000.0), Ball, mean.speed).unwrap();
    assert_abs_diff_eq!(c.value, 34_219.0, epsilon = 1.0);
    // independent: the shares of the life used up by each part sum to one
    for kind in [Ball, Roller] {
        let (c, mean) = (kn(34.0), mean_duty(&parts, kind).unwrap());
        let life = l10_life(c, mean.load, kind, mean.speed).unwrap();
        let used: f64 =
            parts.iter().map(|d| (life * d.share / l10_life(c, d.load, kind, d.speed).unwrap()).value).sum();
        assert_relative_eq!(used, 1.0, max_relative = 1e-12);
    }
    assert!(matches!(mean_duty(&[], Ball), Err(Error::OutOfRange { input: "load", .. })));
    assert!(mean_duty(&[Duty { share: plain(0.0), ..parts[0] }], Ball).is_err());
}

#[test]
fn doubled_load_divides_the_life() {
    // algebra: 2³ = 8 and 2^(10/3) = 10.079 (to the printed place)
    assert_eq!(life_ratio(kn(1.0), kn(2.0), Ball).unwrap().value, 1.0 / 8.0);
    let roller = life_ratio(kn(1.0), kn(2.0), Roller).unwrap().value;
    assert_abs_diff_eq!(1.0 / roller, 10.079, epsilon = 0.0005);
    for kind in [Ball, Roller] {
        let life = |p| l10_life(kn(30.0), kn(p), kind, rpm(70.0)).unwrap();
        let factor = life_ratio(kn(4.0), kn(5.5), kind).unwrap();
        assert_relative_eq!((life(5.5) / life(4.0)).value, factor.value, max_relative = 1e-13);
    }
}

#[test]
fn round_trips() {
    for kind in [Ball, Roller] {
        let (c, p, n) = (kn(61.0), kn(7.3), rpm(68.0));
        let life = l10_life(c, p, kind, n).unwrap();
        assert_relative_eq!(load_for_life(c, life, kind, n).unwrap().value, p.value, max_relative = 1e-13);
        assert_relative_eq!(capacity_for_life(p, life, kind, n).unwrap().value, c.value, max_relative = 1e-13);
    }
}

#[test]
fn published_friction_power() {
    // Jindal, Ex. 18-1, p. 507: 53.08 W, to 0.01 W
    let power = friction_power(plain(0.0011), kn(16.0), metres(0.040), rpm(1440.0)).unwrap();
    assert_abs_diff_eq!(power.value, 53.08, epsilon = 0.01);
}

#[test]
fn what_has_no_answer_is_refused() {
    assert!(matches!(l10_revolutions(kn(1.0), kn(0.0), Ball), Err(Error::OutOfRange { input: "load", .. })));
    assert!(reactions(kn(1.0), metres(0.0), metres(0.1)).is_err());
    assert!(reactions(kn(1.0), metres(0.1), metres(-0.1)).is_err());
    assert!(load_for_near_reaction(kn(-1.0), metres(0.1), metres(0.1)).is_err());
    assert!(l10_life(kn(1.0), kn(1.0), Ball, rpm(0.0)).is_err());
    assert!(load_for_life(kn(1.0), hours(0.0), Ball, rpm(1.0)).is_err());
    assert!(capacity_for_life(kn(f64::NAN), hours(1.0), Ball, rpm(1.0)).is_err());
    assert!(life_ratio(kn(0.0), kn(1.0), Roller).is_err());
    assert!(friction_power(plain(-0.1), kn(1.0), metres(0.1), rpm(1.0)).is_err());
}
