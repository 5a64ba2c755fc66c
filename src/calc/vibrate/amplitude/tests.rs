use super::*;
use crate::units::{
    acceleration::standard_gravity,
    frequency::{cycle_per_minute, hertz},
    length::{inch, micrometer, mil},
    velocity::{inch_per_second, millimeter_per_second},
};
use approx::{assert_abs_diff_eq, assert_relative_eq};

fn hz(value: f64) -> Frequency {
    Frequency::new::<hertz>(value)
}
fn cpm(value: f64) -> Frequency {
    Frequency::new::<cycle_per_minute>(value)
}
fn mils(value: f64) -> Amplitude<Length> {
    Amplitude::peak_to_peak(Length::new::<mil>(value))
}
fn inches_a_second(value: f64) -> Amplitude<Velocity> {
    Amplitude::peak(Velocity::new::<inch_per_second>(value))
}
fn g(value: f64) -> Amplitude<Acceleration> {
    Amplitude::peak(Acceleration::new::<standard_gravity>(value))
}
fn mils_of(a: Amplitude<Length>) -> f64 {
    a.by(Detector::PeakToPeak).unwrap().value.get::<mil>()
}
fn ips_of(a: Amplitude<Velocity>) -> f64 {
    a.by(Detector::Peak).unwrap().value.get::<inch_per_second>()
}
fn g_of(a: Amplitude<Acceleration>) -> f64 {
    a.by(Detector::Peak).unwrap().value.get::<standard_gravity>()
}

/// Constants in circulation (common practice): D in mil peak-to-peak, V in in/s peak, A in g peak, CPM; tolerance half of
/// their last digit. "3.87e3 A/CPM" for the velocity is a misprint of 3.687e3 and is left out.
#[test]
fn published_constants_by_the_minute() {
    let one = cpm(1.0);
    assert_relative_eq!(
        mils_of(displacement_from_velocity(inches_a_second(1.0), one).unwrap()),
        19.10e3,
        epsilon = 5.0
    );
    assert_relative_eq!(mils_of(displacement_from_acceleration(g(1.0), one).unwrap()), 70.4e6, epsilon = 0.05e6);
    let v = ips_of(velocity_from_displacement(mils(1.0), one).unwrap());
    assert_abs_diff_eq!(v, 52.36e-6, epsilon = 0.005e-6);
    let a = g_of(acceleration_from_displacement(mils(1.0), one).unwrap());
    assert_abs_diff_eq!(a, 14.2e-9, epsilon = 0.05e-9);
    let a = g_of(acceleration_from_velocity(inches_a_second(1.0), one).unwrap());
    assert_abs_diff_eq!(a, 0.27e-3, epsilon = 0.005e-3);
    // the right constant in place of the misprint (386.09 · 60 / 2π, computed)
    assert_relative_eq!(ips_of(velocity_from_acceleration(g(1.0), one).unwrap()), 3686.9, epsilon = 0.05);
}

/// Constants in circulation (common practice), by the Hz: zero-to-peak inches, in/s and g; and from g r.m.s.
#[test]
fn published_constants_by_the_hertz() {
    let one = hz(1.0);
    let peak_inches = |a: Amplitude<Length>| a.by(Detector::Peak).unwrap().value.get::<inch>();
    let inches = Amplitude::peak(Length::new::<inch>(1.0));
    for (value, printed, half) in [
        (peak_inches(displacement_from_velocity(inches_a_second(1.0), one).unwrap()), 0.159, 0.0005),
        (100.0 * ips_of(velocity_from_displacement(inches, one).unwrap()), 628.0, 0.5), // printed 6.28
        (ips_of(velocity_from_acceleration(g(1.0), one).unwrap()), 61.4, 0.05),
        (peak_inches(displacement_from_acceleration(g(1.0), one).unwrap()), 9.78, 0.005),
        (g_of(acceleration_from_displacement(inches, one).unwrap()), 0.102, 0.0005),
        (g_of(acceleration_from_velocity(inches_a_second(1.0), one).unwrap()), 0.0163, 0.00005),
        (mils_of(displacement_from_velocity(inches_a_second(1.0), one).unwrap()), 318.31, 0.005),
        (ips_of(velocity_from_displacement(mils(1.0), one).unwrap()), 3.14e-3, 0.005e-3),
    ] {
        assert_abs_diff_eq!(value, printed, epsilon = half);
    }
    // printed 86.901 and 27 661.40, made with a free fall rounded to 386.09 in/s²: 2 in 100 000
    let rms = Amplitude::rms(Acceleration::new::<standard_gravity>(1.0));
    assert_relative_eq!(ips_of(velocity_from_acceleration(rms, one).unwrap()), 86.901, max_relative = 2e-5);
    assert_relative_eq!(mils_of(displacement_from_acceleration(rms, one).unwrap()), 27_661.40, max_relative = 2e-5);
    // the source leaves out the square of the frequency there; at 2 Hz it is a quarter
    let two = mils_of(displacement_from_acceleration(rms, hz(2.0)).unwrap());
    assert_relative_eq!(two, 27_661.40 / 4.0, max_relative = 2e-5);
}

/// Waveform factors of a sine as printed (common practice), to three places.
#[test]
fn published_waveform_factors() {
    let unit = |a: Amplitude<Velocity>, by| a.by(by).unwrap().value.value;
    let one = Velocity::from_si(1.0);
    for (value, printed) in [
        (unit(Amplitude::peak(one), Detector::Rms), 0.707),
        (unit(Amplitude::peak_to_peak(one), Detector::Rms), 0.354),
        (unit(Amplitude::rms(one), Detector::Peak), 1.414),
        (unit(Amplitude::rms(one), Detector::PeakToPeak), 2.828),
    ] {
        assert_abs_diff_eq!(value, printed, epsilon = 0.0005);
    }
    assert_relative_eq!(Acceleration::new::<standard_gravity>(1.0).value, 9.806_65);
    assert_relative_eq!(Length::new::<mil>(1.0).get::<micrometer>(), 25.4, max_relative = 1e-14);
}

/// Computed from the constants above: 2 mil at 1800 and 1 mil at 3600 rev/min have one velocity, and twice the acceleration.
#[test]
fn computed_cases() {
    for (swing, speed, acceleration) in [(2.0, 1800.0, 0.092_03), (1.0, 3600.0, 0.184_05)] {
        let v = velocity_from_displacement(mils(swing), cpm(speed)).unwrap();
        assert_abs_diff_eq!(ips_of(v), 0.188_50, epsilon = 5e-6);
        let metric = |by| v.by(by).unwrap().value.get::<millimeter_per_second>();
        assert_abs_diff_eq!(metric(Detector::Peak), 4.7878, epsilon = 5e-5);
        assert_abs_diff_eq!(metric(Detector::Rms), 3.3855, epsilon = 5e-5);
        let a = g_of(acceleration_from_displacement(mils(swing), cpm(speed)).unwrap());
        assert_abs_diff_eq!(a, acceleration, epsilon = 6e-6);
    }
}

#[test]
fn round_trips() {
    let f = hz(29.17);
    for detector in [Detector::Peak, Detector::PeakToPeak, Detector::Rms] {
        let d = Amplitude { value: Length::new::<micrometer>(37.0), detector };
        let v = velocity_from_displacement(d, f).unwrap();
        let a = acceleration_from_velocity(v, f).unwrap();
        assert_eq!(a.detector, detector);
        let back = displacement_from_acceleration(a, f).unwrap();
        assert_relative_eq!(back.value.value, d.value.value, max_relative = 1e-14);
        for by in [Detector::Peak, Detector::PeakToPeak, Detector::Rms] {
            let there = d.by(by).unwrap().by(detector).unwrap();
            assert_relative_eq!(there.value.value, d.value.value, max_relative = 1e-14);
        }
        // the detector and the quantity can be changed in either order
        let one = displacement_from_velocity(v.by(Detector::Rms).unwrap(), f).unwrap();
        assert_relative_eq!(one.value.value, d.by(Detector::Rms).unwrap().value.value, max_relative = 1e-14);
    }
}

#[test]
fn nonsense_is_refused() {
    assert!(matches!(mils(-1.0).by(Detector::Rms), Err(Error::OutOfRange { input: "amplitude", .. })));
    assert!(matches!(
        velocity_from_displacement(mils(1.0), hz(0.0)),
        Err(Error::OutOfRange { input: "frequency", .. })
    ));
    assert!(acceleration_from_velocity(inches_a_second(f64::NAN), hz(1.0)).is_err());
}
