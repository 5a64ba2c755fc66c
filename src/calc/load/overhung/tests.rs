use super::*;
use crate::load::{bearing, torque};
use crate::units::{
    AngularVelocity, Power, angle::degree, angular_velocity, force::pound_force, length::inch, power,
    torque::pound_force_inch,
};
use approx::{assert_abs_diff_eq, assert_relative_eq};

fn lb_in(value: f64) -> Torque {
    Torque::new::<pound_force_inch>(value)
}
fn inches(value: f64) -> Length {
    Length::new::<inch>(value)
}
fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}
fn rating() -> Rating {
    Rating { load: newtons(5000.0), span: metres(0.2), at: metres(0.06) }
}

#[test]
fn published_overhung_loads() {
    let one = plain(1.0);
    // common practice, no source: 10 lb·in at a radius of 0.5 in is 20 lb; a gear then takes 1.2
    let pull = overhung_load(lb_in(10.0), inches(1.0), one, one, one).unwrap();
    assert_abs_diff_eq!(pull.get::<pound_force>(), 20.0, epsilon = 1e-5); // unit factors carry 7 digits
    let gear = overhung_load(lb_in(10.0), inches(1.0), plain(1.2), one, one).unwrap();
    assert_abs_diff_eq!(gear.get::<pound_force>(), 24.0, epsilon = 1e-5);
    // T. H. Wentzell, Machine Design, Ex. 17.1, p. 379: 180 lb·in, 40 teeth of pitch 10 (4 in), 90.00 lb
    assert_abs_diff_eq!(running_pull(lb_in(180.0), inches(4.0)).unwrap().get::<pound_force>(), 90.00, epsilon = 0.01);
    // Wentzell, Ex. 12.1, p. 254: 5 hp, 1725 rev/min, 2.5 in, 146.09 lb with the 63 000 form (0.05 %)
    let speed = AngularVelocity::new::<angular_velocity::revolution_per_minute>(1725.0);
    let t = torque::torque(Power::new::<power::horsepower>(5.0), speed).unwrap();
    assert_relative_eq!(running_pull(t, inches(2.5)).unwrap().get::<pound_force>(), 146.09, max_relative = 5e-4);
}

#[test]
fn the_126_000_form_is_the_same() {
    let (hp, rpm, d, k, lf, sf) = (7.5, 68.0, 9.5, 1.25, 1.1, 1.4);
    let speed = AngularVelocity::new::<angular_velocity::revolution_per_minute>(rpm);
    let t = torque::torque(Power::new::<power::horsepower>(hp), speed).unwrap();
    let load = overhung_load(t, inches(d), plain(k), plain(lf), plain(sf)).unwrap();
    let formula = 126_000.0 * hp * k * lf * sf / (rpm * d);
    assert_relative_eq!(load.get::<pound_force>(), formula, max_relative = 5e-4); // 126 000 is 2 × 63 000: 0.04 % low
}

#[test]
fn factor_lists_turn_where_they_say() {
    let chain = |list, teeth| connection_factor(list, DriveElement::Chain { teeth }).unwrap().high.value;
    let gear = |list, teeth| connection_factor(list, DriveElement::Gear { teeth }).unwrap().high.value;
    use FactorList::{A, B, C, D, E, Textbook};
    assert_eq!([12, 13, 19, 20].map(|z| chain(D, z)), [1.4, 1.25, 1.25, 1.0]);
    assert_eq!([12, 13, 19, 20].map(|z| chain(E, z)), [1.4, 1.3, 1.3, 1.0]);
    assert_eq!([16, 17].map(|z| gear(D, z)), [1.15, 1.0]);
    assert_eq!([16, 17].map(|z| gear(E, z)), [1.15, 1.0]);
    assert_eq!([A, B, C, Textbook].map(|list| chain(list, 11)), [1.0; 4]);
    assert_eq!([A, B, C].map(|list| gear(list, 11)), [1.25, 1.25, 1.0]);
    let belts = |element| {
        [A, C, D, E].map(|list| connection_factor(list, element).unwrap()).map(|f| (f.low.value, f.high.value))
    };
    assert_eq!(belts(DriveElement::ToothedBelt), [(1.25, 1.25), (1.5, 1.5), (2.0, 2.5), (1.3, 1.3)]);
    assert_eq!(belts(DriveElement::VBelt), [(1.5, 1.5), (2.5, 2.5), (1.75, 1.75), (1.5, 2.0)]);
    assert_eq!(belts(DriveElement::FlatBelt), [(2.5, 2.5), (3.5, 3.5), (2.5, 2.5), (2.0, 3.0)]);
    let missing = Err(Error::none("connection factor"));
    assert_eq!(connection_factor(B, DriveElement::ToothedBelt), missing);
    assert_eq!(connection_factor(Textbook, DriveElement::Gear { teeth: 20 }), missing);
    assert!(matches!(
        connection_factor(A, DriveElement::Chain { teeth: 0 }),
        Err(Error::OutOfRange { input: "teeth", .. })
    ));
}

#[test]
fn location_factor_grows_beyond_the_middle() {
    let end = metres(0.08);
    for (at, factor) in [(0.0, 1.0), (0.02, 1.0), (0.04, 1.0), (0.06, 1.5), (0.08, 2.0)] {
        assert_relative_eq!(location_factor(metres(at), end).unwrap().value, factor, max_relative = 1e-15);
    }
    assert!(location_factor(metres(-0.01), end).is_err() && location_factor(end, metres(0.0)).is_err());
}

#[test]
fn moved_load_keeps_the_near_bearing_as_it_was() {
    let r = rating();
    let before = bearing::reactions(r.load, r.span, r.at).unwrap().near;
    for x in [0.0, 0.03, 0.06, 0.1, 0.5] {
        let load = allowable_load(&r, metres(x)).unwrap();
        let after = bearing::reactions(load, r.span, metres(x)).unwrap().near;
        assert_relative_eq!(after.value, before.value, max_relative = 1e-14);
        assert_abs_diff_eq!(farthest_location(&r, load).unwrap().value, x, epsilon = 1e-14);
    }
    assert_relative_eq!(allowable_load(&r, r.at).unwrap().value, r.load.value, max_relative = 1e-15);
    let too_much = farthest_location(&r, newtons(6501.0)); // 6500 N is allowed over the bearing itself
    assert_eq!(too_much, Err(Error::none("sprocket location")));
}

#[test]
fn smallest_sprocket_carries_just_the_allowed_load() {
    let (t, f, k, lf, sf) = (lb_in(4076.0), newtons(3000.0), plain(1.25), plain(1.2), plain(1.4));
    let d = smallest_pitch_diameter(t, f, k, lf, sf).unwrap();
    assert_relative_eq!(overhung_load(t, d, k, lf, sf).unwrap().value, f.value, max_relative = 1e-14);
}

#[test]
fn slack_tension_agrees_with_the_strands() {
    let (pull, h) = (newtons(3000.0), newtons(900.0));
    let tight = newtons(3900.0);
    let total = with_slack_tension(pull, h).unwrap();
    let half_turn = strand_resultant(tight, h, Angle::new::<degree>(180.0)).unwrap();
    assert_relative_eq!(total.value, half_turn.value, max_relative = 1e-15);
    // independent: sum the two strands as vectors, each leaving at half of (180° − wrap) from the line of centres
    for wrap in [120.0_f64, 150.0, 170.0, 200.0] {
        let lean = Angle::new::<degree>(0.5 * (180.0 - wrap));
        let (x, y) = ((tight + h).value * math::cos(lean.value), (tight - h).value * math::sin(lean.value));
        let sum = (x * x + y * y).sqrt();
        let got = strand_resultant(tight, h, Angle::new::<degree>(wrap)).unwrap().value;
        assert_relative_eq!(got, sum, max_relative = 1e-13);
    }
    // the parallel shortcut is within 0.6 % at a wrap of 165°
    let bent = strand_resultant(tight, h, Angle::new::<degree>(165.0)).unwrap();
    assert_relative_eq!(bent.value, total.value, max_relative = 6e-3);
}

#[test]
fn what_has_no_answer_is_refused() {
    let (t, d, one) = (lb_in(100.0), inches(5.0), plain(1.0));
    let without = overhung_load(t, d, plain(0.0), one, one);
    assert!(matches!(without, Err(Error::OutOfRange { input: "connection factor", .. })));
    assert!(overhung_load(t, inches(0.0), one, one, one).is_err());
    assert!(overhung_load(t, d, one, plain(f64::NAN), one).is_err());
    assert!(with_slack_tension(newtons(1.0), newtons(-1.0)).is_err());
    assert!(strand_resultant(newtons(1.0), newtons(1.0), Angle::new::<degree>(361.0)).is_err());
    assert!(allowable_load(&Rating { span: metres(0.0), ..rating() }, metres(0.1)).is_err());
    assert!(allowable_load(&rating(), metres(-0.1)).is_err());
    assert!(farthest_location(&rating(), newtons(0.0)).is_err());
    assert!(smallest_pitch_diameter(t, newtons(0.0), one, one, one).is_err());
}
