//! One sine: displacement, velocity and acceleration, by peak, peak to peak and r.m.s.

use drivecourse_calc::Error;
use drivecourse_calc::units::{Acceleration, Frequency, Length, Velocity};
use drivecourse_calc::vibrate::Measured;
use drivecourse_calc::vibrate::amplitude::{
    Amplitude, Detector, acceleration_from_displacement, acceleration_from_velocity, displacement_from_acceleration,
    displacement_from_velocity, velocity_from_acceleration, velocity_from_displacement,
};

use crate::relation::{Relation, relation};
use crate::source::Source::Derived;

const SINE: crate::Source = Derived("derivative of a sine");
const MEAN_SQUARE: crate::Source = Derived("mean square of a sine");
const LIMITS: &str = "a single sine";

/// `amplitude` as peak.
fn peak<Q: Measured>(amplitude: Amplitude<Q>) -> Result<Q, Error> {
    Ok(amplitude.by(Detector::Peak)?.value)
}

fn peak_velocity(peak_to_peak: Length, frequency: Frequency) -> Result<Velocity, Error> {
    peak(velocity_from_displacement(Amplitude::peak_to_peak(peak_to_peak), frequency)?)
}

fn swing(velocity: Velocity, frequency: Frequency) -> Result<Length, Error> {
    let displacement = displacement_from_velocity(Amplitude::peak(velocity), frequency)?;
    Ok(displacement.by(Detector::PeakToPeak)?.value)
}

fn swing_back(acceleration: Acceleration, frequency: Frequency) -> Result<Length, Error> {
    let displacement = displacement_from_acceleration(Amplitude::peak(acceleration), frequency)?;
    Ok(displacement.by(Detector::PeakToPeak)?.value)
}

fn peak_acceleration(velocity: Velocity, frequency: Frequency) -> Result<Acceleration, Error> {
    peak(acceleration_from_velocity(Amplitude::peak(velocity), frequency)?)
}

fn velocity_back(acceleration: Acceleration, frequency: Frequency) -> Result<Velocity, Error> {
    peak(velocity_from_acceleration(Amplitude::peak(acceleration), frequency)?)
}

fn rms(velocity: Velocity) -> Result<Velocity, Error> {
    Ok(Amplitude::peak(velocity).by(Detector::Rms)?.value)
}

const TAU: f64 = core::f64::consts::TAU;
/// Thousandths of an inch taken for thousandths of a millimetre.
const MIL_OVER_MICRON: f64 = 25.4;

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "vibrate.velocity_peak/displacement": "Peak velocity from the displacement",
        "vibrate.velocity_peak": Velocity = peak_velocity(d, f),
        from { d: Length = "vibrate.displacement", f: Frequency = "vibrate.tone" },
        formula ["v[mm/s] = 3.14159 * f[Hz] * d[µm] / 1000", "v[in/s] = 52.36 * f[cpm] * d[mil] / 1000000"],
        source SINE,
        turns {
            "peak to peak as peak": peak_velocity(d, f).map(|v| v * 2.0) => "You used the whole swing; the peak velocity goes with half of it.";
            "halved twice": peak_velocity(d, f).map(|v| v / 2.0) => "You halved the swing twice.";
            "2π left out": peak_velocity(d, f).map(|v| v / TAU) => "You left out the 2π; a sine of frequency f changes at 2π f.";
            "r.m.s.": peak_velocity(d, f).and_then(rms) => "You went on to r.m.s.; the peak is asked.";
            "mil for micrometre" in Si: peak_velocity(d * MIL_OVER_MICRON, f) => "You read micrometres as mils; a mil is a thousandth of an inch, 25.4 µm.";
            "micrometre for mil" in Us: peak_velocity(d / MIL_OVER_MICRON, f) => "You read mils as micrometres; a mil is a thousandth of an inch, 25.4 µm.";
        },
    }
    .limits(LIMITS),
    relation! {
        "vibrate.velocity_rms/peak": "R.m.s. velocity from the peak",
        "vibrate.velocity_rms": Velocity = rms(v),
        from { v: Velocity = "vibrate.velocity_peak" },
        formula ["v = v / sqrt(2)"],
        source MEAN_SQUARE,
        turns {
            "multiplied": v * core::f64::consts::SQRT_2 => "You multiplied by √2; the r.m.s. value is smaller than the peak.";
            "peak itself": v => "You gave the peak for the r.m.s. value; divide by √2.";
            "halved": v / 2.0 => "You halved the peak; for a sine divide by √2.";
            "peak to peak": rms(v).map(|v| v / 2.0) => "You took the value for peak to peak and divided by 2√2; it is a peak already.";
            "average": v * (2.0 / core::f64::consts::PI) => "You used 0.637, the mean of a half wave; the r.m.s. value is 0.707 of the peak.";
        },
    }
    .limits(LIMITS),
    relation! {
        "vibrate.velocity_peak/r.m.s.": "Peak velocity from the r.m.s. value",
        "vibrate.velocity_peak": Velocity = peak(Amplitude::rms(v)),
        from { v: Velocity = "vibrate.velocity_rms" },
        formula ["v = v * sqrt(2)"],
        source MEAN_SQUARE,
        turns {
            "r.m.s. doubled": v * 2.0 => "You doubled the r.m.s. value; 2 leads from peak to peak-to-peak, and √2 from r.m.s. to peak.";
            "divided": rms(v) => "You divided by √2; the peak is larger than the r.m.s. value.";
            "peak to peak": peak(Amplitude::rms(v)).map(|v| v * 2.0) => "You went on to peak-to-peak; the peak is asked.";
        },
    }
    .limits(LIMITS)
    .inverse()
    .rank(1),
    relation! {
        "vibrate.displacement/velocity": "Displacement from the peak velocity",
        "vibrate.displacement": Length = swing(v, f),
        from { v: Velocity = "vibrate.velocity_peak", f: Frequency = "vibrate.tone" },
        formula ["d[µm] = 1000 * v[mm/s] / (3.14159 * f[Hz])", "d[mil] = 19099 * v[in/s] / f[cpm]"],
        source SINE,
        turns {
            "peak": swing(v, f).map(|d| d / 2.0) => "You stopped at the peak; displacement is given peak to peak, twice that.";
            "2π left out": swing(v, f).map(|d| d * TAU) => "You left out the 2π; a sine of frequency f changes at 2π f.";
            "r.m.s. doubled": rms(v).and_then(|v| swing(v, f)) => "You doubled an r.m.s. value for peak to peak; from r.m.s. the factor is 2√2.";
            "mil for micrometre" in Si: swing(v, f).map(|d| d / MIL_OVER_MICRON) => "You mixed mils and micrometres; a mil is a thousandth of an inch, 25.4 µm.";
            "micrometre for mil" in Us: swing(v, f).map(|d| d * MIL_OVER_MICRON) => "You mixed mils and micrometres; a mil is a thousandth of an inch, 25.4 µm.";
        },
    }
    .limits(LIMITS)
    .inverse(),
    relation! {
        "vibrate.acceleration/velocity": "Peak acceleration from the peak velocity",
        "vibrate.acceleration": Acceleration = peak_acceleration(v, f),
        from { v: Velocity = "vibrate.velocity_peak", f: Frequency = "vibrate.tone" },
        formula ["a[m/s²] = 6.28319 * f[Hz] * v[mm/s] / 1000", "a[g] = 0.27123 * v[in/s] * f[cpm] / 1000"],
        source SINE,
        turns {
            "2π left out": peak_acceleration(v, f).map(|a| a / TAU) => "You left out the 2π; a sine of frequency f changes at 2π f.";
            "divided": velocity_back(Acceleration::from_si(v.si()), f).map(|a| Acceleration::from_si(a.si())) => "You divided by 2π f; from velocity to acceleration you multiply.";
            "squared": peak_acceleration(v, f).and_then(|a| peak_acceleration(Velocity::from_si(a.si()), f)) => "You used the frequency squared; that leads from displacement to acceleration.";
            "r.m.s.": rms(v).and_then(|v| peak_acceleration(v, f)) => "You used the r.m.s. velocity; the peak acceleration goes with the peak velocity.";
        },
    }
    .limits(LIMITS),
    relation! {
        "vibrate.acceleration/displacement": "Peak acceleration from the displacement",
        "vibrate.acceleration": Acceleration = peak(acceleration_from_displacement(Amplitude::peak_to_peak(d), f)?),
        from { d: Length = "vibrate.displacement", f: Frequency = "vibrate.tone" },
        formula ["a[m/s²] = 19.7392 * f[Hz]^2 * d[µm] / 1000000", "a[g] = 14.202 * d[mil] * f[cpm]^2 / 1000000000"],
        source SINE,
        turns {
            "not squared": peak_velocity(d, f).map(|v| Acceleration::from_si(v.si() * TAU)) => "You did not square the frequency.";
            "peak to peak as peak": peak(acceleration_from_displacement(Amplitude::peak(d), f)?) => "You used the whole swing; the peak acceleration goes with half of it.";
            "2π not squared": peak(acceleration_from_displacement(Amplitude::peak_to_peak(d), f)?).map(|a| a / TAU) => "You squared the frequency and not the 2π.";
        },
    }
    .limits(LIMITS)
    .question()
    .rank(1),
    relation! {
        "vibrate.displacement/acceleration": "Displacement from the peak acceleration",
        "vibrate.displacement": Length = swing_back(a, f),
        from { a: Acceleration = "vibrate.acceleration", f: Frequency = "vibrate.tone" },
        formula ["d[µm] = 50660.6 * a[m/s²] / f[Hz]^2", "d[mil] = 70415900 * a[g] / f[cpm]^2"],
        source SINE,
        turns {
            "peak": swing_back(a, f).map(|d| d / 2.0) => "You stopped at the peak; displacement is given peak to peak, twice that.";
            "not squared": velocity_back(a, f).map(|v| Length::from_si(2.0 * v.si() / TAU)) => "You did not square the frequency; it takes two steps from acceleration to displacement.";
            "2π not squared": swing_back(a, f).map(|d| d * TAU) => "You squared the frequency and not the 2π.";
            "2π left out": swing_back(a, f).map(|d| d * (TAU * TAU)) => "You left out the 2π; a sine of frequency f changes at 2π f.";
            "g taken for m/s²" in Us: swing_back(a, f).map(|d| d / 9.80665) => "You used the number of g as m/s²; one g is 9.807 m/s².";
            "r.m.s. doubled": swing_back(a, f).map(|d| d / core::f64::consts::SQRT_2) => "You went by way of r.m.s. and doubled that; from r.m.s. to peak to peak the factor is 2√2.";
            "mil for micrometre" in Si: swing_back(a, f).map(|d| d / MIL_OVER_MICRON) => "You mixed mils and micrometres; a mil is a thousandth of an inch, 25.4 µm.";
            "micrometre for mil" in Us: swing_back(a, f).map(|d| d * MIL_OVER_MICRON) => "You mixed mils and micrometres; a mil is a thousandth of an inch, 25.4 µm.";
        },
    }
    .limits(LIMITS)
    .inverse()
    .rank(1),
    relation! {
        "vibrate.velocity_peak/acceleration": "Peak velocity from the peak acceleration",
        "vibrate.velocity_peak": Velocity = velocity_back(a, f),
        from { a: Acceleration = "vibrate.acceleration", f: Frequency = "vibrate.tone" },
        formula ["v[mm/s] = 1000 * a[m/s²] / (6.28319 * f[Hz])", "v[in/s] = 3686.9 * a[g] / f[cpm]"],
        source SINE,
        turns {
            "2π left out": velocity_back(a, f).map(|v| v * TAU) => "You left out the 2π; a sine of frequency f changes at 2π f.";
            "g taken for m/s²" in Us: velocity_back(a, f).map(|v| v / 9.80665) => "You used the number of g as m/s²; one g is 9.807 m/s².";
            "r.m.s.": velocity_back(a, f).and_then(rms) => "You went on to r.m.s.; the peak is asked.";
        },
    }
    .limits(LIMITS)
    .inverse()
    .rank(2),
];
