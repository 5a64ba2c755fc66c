use super::*;
use crate::units::{
    Velocity,
    time::{day, hour},
    velocity::millimeter_per_second,
};
use crate::vibrate::plain;
use approx::{assert_abs_diff_eq, assert_relative_eq};

fn mm_s(value: f64) -> Velocity {
    Velocity::new::<millimeter_per_second>(value)
}
fn days(value: f64) -> Time {
    Time::new::<day>(value)
}
fn weekly(values: &[f64]) -> Vec<Dated<Velocity>> {
    values.iter().enumerate().map(|(i, &v)| Dated { at: days(7.0 * i as f64), value: mm_s(v) }).collect()
}

/// NIST Statistical Reference Datasets, Norris (y, x): certified intercept and slope.
const NORRIS: [(f64, f64); 36] = [
    (0.1, 0.2),
    (338.8, 337.4),
    (118.1, 118.2),
    (888.0, 884.6),
    (9.2, 10.1),
    (228.1, 226.5),
    (668.5, 666.3),
    (998.5, 996.3),
    (449.1, 448.6),
    (778.9, 777.0),
    (559.2, 558.2),
    (0.3, 0.4),
    (0.1, 0.6),
    (778.1, 775.5),
    (668.8, 666.9),
    (339.3, 338.0),
    (448.9, 447.5),
    (10.8, 11.6),
    (557.7, 556.0),
    (228.3, 228.1),
    (998.0, 995.8),
    (888.8, 887.6),
    (119.6, 120.2),
    (0.3, 0.3),
    (0.6, 0.3),
    (557.6, 556.8),
    (339.3, 339.1),
    (888.0, 887.2),
    (998.5, 999.0),
    (778.9, 779.0),
    (10.2, 11.1),
    (117.6, 118.3),
    (228.9, 229.2),
    (668.4, 669.1),
    (449.2, 448.9),
    (0.2, 0.5),
];

#[test]
fn certified_line() {
    let readings = NORRIS.map(|(y, x)| Dated { at: Time::new::<second>(x), value: plain(y) });
    let trend = fit(&readings, Shape::Line).unwrap();
    assert_relative_eq!(trend.slope, 1.002_116_818_020_45, max_relative = 1e-12);
    let intercept = trend.at(Time::new::<second>(0.0));
    assert_relative_eq!(intercept.value, -0.262_323_073_774_029, max_relative = 1e-10);
}

#[test]
fn exact_data_are_met_exactly() {
    let line = fit(&weekly(&[1.0, 1.25, 1.5, 1.75]), Shape::Line).unwrap();
    assert_abs_diff_eq!(line.at(days(3.5)).get::<millimeter_per_second>(), 1.125, epsilon = 1e-12);
    // 2.75 mm/s is reached at day 49, four weeks after the last reading
    assert_abs_diff_eq!(line.time_to(mm_s(2.75), days(21.0)).unwrap().get::<day>(), 28.0, epsilon = 1e-9);
    assert_eq!(line.time_to(mm_s(1.2), days(21.0)).unwrap(), Time::default(), "there already");

    // doubles every fortnight: 0.5, 0.5√2, 1, ...
    let values: Vec<f64> = (0..6).map(|i| 0.5 * math::pow(2.0, f64::from(i) / 2.0)).collect();
    let growth = fit(&weekly(&values), Shape::Exponential).unwrap();
    assert_abs_diff_eq!(growth.doubling_time().unwrap().get::<day>(), 14.0, epsilon = 1e-9);
    assert_abs_diff_eq!(growth.time_to(mm_s(4.0), days(35.0)).unwrap().get::<day>(), 7.0, epsilon = 1e-9);
    // a line through the same readings is late
    let late = fit(&weekly(&values), Shape::Line).unwrap().time_to(mm_s(8.0), days(35.0)).unwrap();
    assert!(late > growth.time_to(mm_s(8.0), days(35.0)).unwrap());
}

#[test]
fn round_trip_to_the_limit() {
    let readings = weekly(&[1.1, 1.3, 1.2, 1.6, 1.7, 2.1]);
    for shape in [Shape::Line, Shape::Exponential] {
        let trend = fit(&readings, shape).unwrap();
        let now = readings[5].at;
        let left = trend.time_to(mm_s(4.5), now).unwrap();
        assert_relative_eq!(trend.at(now + left).value, 0.0045, max_relative = 1e-12);
        assert!(trend.is_rising());
    }
}

#[test]
fn the_clock_may_start_anywhere() {
    let shifted = |start: f64| {
        let readings: Vec<_> = [1.1, 1.3, 1.2, 1.6]
            .iter()
            .enumerate()
            .map(|(i, &v)| Dated { at: Time::new::<hour>(start + 8.0 * i as f64), value: mm_s(v) })
            .collect();
        fit(&readings, Shape::Line).unwrap().time_to(mm_s(2.8), readings[3].at).unwrap().value
    };
    assert_relative_eq!(shifted(0.0), shifted(100_000.0), max_relative = 1e-9);
}

#[test]
fn what_has_no_answer_is_refused() {
    let none = Err(Error::none("time to the limit"));
    let falling = fit(&weekly(&[2.0, 1.5, 1.2]), Shape::Line).unwrap();
    assert_eq!(falling.time_to(mm_s(4.5), days(14.0)), none);
    assert_eq!(fit(&weekly(&[1.5, 1.5]), Shape::Line).unwrap().time_to(mm_s(4.5), days(7.0)), none, "level");
    assert!(falling.doubling_time().is_err());
    let once = [Dated { at: days(1.0), value: mm_s(1.0) }; 3];
    assert_eq!(fit(&once, Shape::Line), Err(Error::none("trend")));
    assert!(matches!(fit(&once[..1], Shape::Line), Err(Error::OutOfRange { input: "readings", .. })));
    assert!(matches!(fit(&weekly(&[1.0, 0.0]), Shape::Exponential), Err(Error::OutOfRange { input: "reading", .. })));
    assert!(fit(&weekly(&[1.0, f64::NAN]), Shape::Line).is_err());
    let rising = fit(&weekly(&[1.0, 2.0]), Shape::Exponential).unwrap();
    assert!(rising.time_to(mm_s(-1.0), days(0.0)).is_err());
    assert!(rising.time_to(mm_s(4.0), Time::new::<second>(f64::NAN)).is_err());
}

#[test]
fn half_the_way_is_the_geometric_mean() {
    let part = |value| Ratio::new::<crate::units::ratio::ratio>(value);
    let half = on_the_way(mm_s(1.0), mm_s(4.0), part(0.5)).unwrap();
    assert_relative_eq!(half.get::<millimeter_per_second>(), 2.0, max_relative = 1e-12);
    assert_eq!(on_the_way(mm_s(1.0), mm_s(4.0), part(0.0)).unwrap(), mm_s(1.0));
    assert!(on_the_way(mm_s(0.0), mm_s(1.0), part(0.5)).is_err());
    assert!(on_the_way(mm_s(1.0), mm_s(2.0), part(f64::NAN)).is_err());
}
