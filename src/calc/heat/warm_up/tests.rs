use super::*;
use crate::units::{temperature_interval::degree_fahrenheit, thermodynamic_temperature::degree_celsius, time::minute};
use approx::{assert_abs_diff_eq, assert_relative_eq};

fn celsius(value: f64) -> Temperature {
    Temperature::new::<degree_celsius>(value)
}
fn minutes(value: f64) -> Time {
    Time::new::<minute>(value)
}
fn unit(run_in: Option<(f64, f64)>) -> WarmUp {
    WarmUp {
        ambient: celsius(20.0),
        settled_rise: kelvins(60.0),
        time_constant: minutes(60.0),
        run_in: run_in.map(|(height, at)| RunIn { height: kelvins(height), at: minutes(at) }),
    }
}
fn readings(unit: &WarmUp, start: f64, step: f64) -> [Temperature; 3] {
    [0.0, 1.0, 2.0].map(|i| unit.at(minutes(start + i * step)).unwrap())
}

/// One classical Runge-Kutta step a time, from nought to `end`.
fn integrate<const N: usize>(mut y: [f64; N], end: f64, steps: u32, slope: impl Fn([f64; N]) -> [f64; N]) -> [f64; N] {
    let h = end / f64::from(steps);
    let moved = |y: [f64; N], k: [f64; N], by: f64| core::array::from_fn(|i| y[i] + by * k[i]);
    for _ in 0..steps {
        let k1 = slope(y);
        let k2 = slope(moved(y, k1, 0.5 * h));
        let k3 = slope(moved(y, k2, 0.5 * h));
        let k4 = slope(moved(y, k3, h));
        y = core::array::from_fn(|i| y[i] + h / 6.0 * (k1[i] + 2.0 * k2[i] + 2.0 * k3[i] + k4[i]));
    }
    y
}

#[test]
fn warm_up_solves_its_differential_equation() {
    // independent: dT/dt = (T∞ − T)/τ by numeric integration
    for t in [5.0, 30.0, 60.0, 240.0] {
        let [got] = integrate([20.0], t, 2000, |[temp]| [(80.0 - temp) / 60.0]);
        assert_abs_diff_eq!(unit(None).at(minutes(t)).unwrap().get::<degree_celsius>(), got, epsilon = 1e-9);
    }
}

#[test]
fn run_in_term_solves_its_differential_equation() {
    // independent: two equal lags in a row, p″ + 2p′/τₚ + p/τₚ² = 0 with p(0) = 0, p′(0) = A e/τₚ
    let (height, at) = (12.0, 40.0);
    for t in [10.0, 40.0, 90.0, 300.0] {
        let [p, _] = integrate([0.0, height * E / at], t, 4000, |[p, v]| [v, -2.0 * v / at - p / (at * at)]);
        let with = unit(Some((height, at))).at(minutes(t)).unwrap();
        assert_abs_diff_eq!(rise(with, unit(None).at(minutes(t)).unwrap()).value, p, epsilon = 1e-8);
    }
}

#[test]
fn run_in_falls_back_to_the_same_settled_temperature() {
    let new = unit(Some((25.0, 40.0)));
    let late = new.at(minutes(1500.0)).unwrap();
    assert_abs_diff_eq!(late.value, new.settled().value, epsilon = 1e-6);
    assert_eq!(new.at(minutes(0.0)).unwrap(), new.ambient);
    // largest extra rise is the height, at its time
    let extra = |t: f64| rise(new.at(minutes(t)).unwrap(), unit(None).at(minutes(t)).unwrap()).value;
    assert_abs_diff_eq!(extra(40.0), 25.0, epsilon = 1e-9);
    assert!(extra(39.0) < 25.0 && extra(41.0) < 25.0);
}

#[test]
fn early_peak_is_where_a_walk_along_the_curve_turns() {
    // run-in faster than, as slow as, and slower than the warm-up
    for (height, at) in [(45.0, 20.0), (25.0, 60.0), (8.0, 90.0)] {
        let new = unit(Some((height, at)));
        let peak = new.early_peak().unwrap();
        let temperature = |i: u32| new.at(minutes(f64::from(i) * 0.01)).unwrap().value;
        let turn = (0..200_000).find(|&i| temperature(i + 1) < temperature(i)).unwrap();
        assert_abs_diff_eq!(peak.time.get::<minute>(), f64::from(turn) * 0.01, epsilon = 0.02);
        assert_abs_diff_eq!(peak.temperature.value, temperature(turn), epsilon = 1e-6);
    }
    let none = Err(Error::none("run-in peak"));
    assert_eq!(unit(None).early_peak(), none);
    assert_eq!(unit(Some((0.0, 20.0))).early_peak(), none);
    assert_eq!(unit(Some((2.0, 20.0))).early_peak(), none); // too weak: the curve climbs on
}

#[test]
fn three_readings_give_the_curve_back() {
    for (start, step) in [(0.0, 30.0), (15.0, 10.0), (60.0, 45.0)] {
        let r = readings(&unit(None), start, step);
        assert_abs_diff_eq!(settled_from_three(r).unwrap().get::<degree_celsius>(), 80.0, epsilon = 1e-9);
        let tau = time_constant_from_three(r, minutes(step)).unwrap();
        assert_relative_eq!(tau.get::<minute>(), 60.0, max_relative = 1e-10);
        // the textbook form of the same formula, in kelvins
        let [a, b, c] = r.map(|t| t.value);
        let textbook = (b * b - a * c) / (2.0 * b - a - c);
        assert_relative_eq!(settled_from_three(r).unwrap().value, textbook, max_relative = 1e-10);
    }
    // cooling works too
    let cooling = [95.0, 61.0, 20.0 + 41.0 * 41.0 / 75.0].map(celsius);
    assert_abs_diff_eq!(settled_from_three(cooling).unwrap().get::<degree_celsius>(), 20.0, epsilon = 1e-9);
}

#[test]
fn published_aitken_values() {
    // an encyclopaedia's tables (from memory, recomputed); they alternate, so only the bare formula takes them
    let aitken = |a: f64, b: f64, c: f64| c + aitken_remainder(b - a, c - b);
    assert_abs_diff_eq!(aitken(1.0, 1.5, 1.416_666_7), 1.428_571_4, epsilon = 2e-7);
    assert_abs_diff_eq!(aitken(1.5, 1.416_666_7, 1.414_215_7), 1.414_141_4, epsilon = 2e-7);
    assert_abs_diff_eq!(aitken(1.0, 0.666_666_67, 0.866_666_67), 0.791_666_67, epsilon = 1e-8);
}

#[test]
fn readings_that_do_not_settle_are_refused() {
    let none = Err(Error::NotSettling);
    for bad in [
        [20.0, 30.0, 40.0],     // equal steps
        [20.0, 30.0, 45.0],     // growing steps
        [20.0, 40.0, 35.0],     // turned back (a run-in peak)
        [40.0, 40.0, 40.0],     // no step at all
        [30.0, 40.0, 40.0],     // no second step
        [20.0, f64::NAN, 40.0], // not a reading
    ] {
        assert_eq!(settled_from_three(bad.map(celsius)), none);
        assert_eq!(time_constant_from_three(bad.map(celsius), minutes(30.0)).map(|t| t.value), Err(Error::NotSettling));
    }
}

#[test]
fn published_cooling() {
    let (fahrenheit, kelvin) = (TemperatureRise::new::<degree_fahrenheit>, kelvins);
    // D. G. Zill, differential equations (the cooling cake): 300 to 200 °F in 3 min at 70 °F: 0.190 18 per minute, 5 decimals
    let tau = time_constant(fahrenheit(230.0), fahrenheit(130.0), minutes(3.0)).unwrap();
    assert_abs_diff_eq!(1.0 / tau.get::<minute>(), 0.190_18, epsilon = 5e-6);
    // the same cake to within 5, 1 and 0.5 °F of 70 °F (recomputed: 20.13, 28.59, 32.2 min; the book says about 30)
    for (margin, expected, tolerance) in [(5.0, 20.13, 0.005), (1.0, 28.59, 0.006), (0.5, 32.2, 0.05)] {
        let wait = time_to_within(fahrenheit(230.0), fahrenheit(margin), tau).unwrap();
        assert_abs_diff_eq!(wait.get::<minute>(), expected, epsilon = tolerance);
    }
    // textbook exercise: 95 to 61 °C in 30 min at 20 °C: 0.02 per minute, 2 decimals
    let tau = time_constant(kelvin(75.0), kelvin(41.0), minutes(30.0)).unwrap();
    assert_abs_diff_eq!(1.0 / tau.get::<minute>(), 0.02, epsilon = 0.005);
    // textbook exercise: 80 to 40 °C at 20 °C, rate 0.1: 10 ln 3 min
    let wait = time_to_within(kelvin(60.0), kelvin(20.0), minutes(10.0)).unwrap();
    assert_abs_diff_eq!(wait.get::<minute>(), 10.986, epsilon = 0.0005);
}

#[test]
fn waiting_as_long_as_told_arrives_at_the_margin() {
    let (unit, start) = (unit(None), 45.0);
    let gap = rise(unit.settled(), unit.at(minutes(start)).unwrap());
    let wait = time_to_within(gap, kelvins(1.0), unit.time_constant).unwrap();
    let then = unit.at(minutes(start) + wait).unwrap();
    assert_abs_diff_eq!(rise(unit.settled(), then).value, 1.0, epsilon = 1e-9);
    assert_eq!(time_to_within(kelvins(-0.5), kelvins(1.0), minutes(60.0)).unwrap().value, 0.0);
    assert_eq!(
        time_to_within(kelvins(-8.0), kelvins(1.0), minutes(60.0)),
        time_to_within(kelvins(8.0), kelvins(1.0), minutes(60.0))
    );
}

#[test]
fn settled_means_flat_and_not_rising() {
    // UL 1004-1 (2012), clause 32.2
    for (r, settled) in [
        ([70.0, 72.0, 72.0], true),
        ([70.0, 72.1, 72.0], false), // more than 2 K
        ([70.0, 70.5, 71.0], false), // small, yet rising
        ([72.0, 71.0, 70.0], true),  // falling back
        ([72.0, 73.5, 71.0], false), // swings more than 2 K
        ([71.0, 71.0, 71.0], true),
        ([71.0, f64::NAN, 71.0], false),
    ] {
        assert_eq!(is_settled(r.map(celsius)), settled, "{r:?}");
    }
}

#[test]
fn what_has_no_answer_is_refused() {
    assert!(matches!(unit(None).at(minutes(-1.0)), Err(Error::OutOfRange { input: "time", .. })));
    assert!(WarmUp { time_constant: minutes(0.0), ..unit(None) }.at(minutes(1.0)).is_err());
    assert!(unit(Some((-1.0, 20.0))).at(minutes(1.0)).is_err());
    assert!(unit(Some((1.0, 0.0))).early_peak().is_err());
    assert!(WarmUp { settled_rise: kelvins(0.0), ..unit(Some((9.0, 20.0))) }.early_peak().is_err());
    assert!(time_to_within(kelvins(5.0), kelvins(0.0), minutes(1.0)).is_err());
    assert!(time_constant(kelvins(5.0), kelvins(4.0), minutes(0.0)).is_err());
}
