//! The spectrum: its lines together, and which part the strongest of them belongs to.

use drivecourse_calc::Error;
use drivecourse_calc::units::{Frequency, Length, Ratio, Velocity, ratio};
use drivecourse_calc::vibrate::amplitude::{Amplitude, Detector, displacement_from_velocity};
use drivecourse_calc::vibrate::bearing::WATCHED_BAND;
use drivecourse_calc::vibrate::spectrum::{belongs_to, overall};

use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};
use crate::typed::Choice;

/// In the order in which [`parts`] puts their frequencies; what belongs to none of them stands last.
pub(super) const PARTS: &[&str] = &[
    "motor shaft, once a turn",
    "motor shaft, twice a turn",
    "output shaft, once a turn",
    "chain, rollers seating on the small sprocket",
    "gear mesh of the first stage",
    "outer ring of the output shaft's bearing",
    "none of these",
];
const NONE: Choice = Choice(6);

const MEAN_SQUARE: crate::Source = Derived("mean square of a sum of sines of different frequencies");

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

/// What the parts make, in the order of [`PARTS`].
fn parts(motor: Frequency, output: Frequency, chain: Frequency, mesh: Frequency, outer: Frequency) -> [Frequency; 6] {
    [motor, motor * 2.0, output, chain, mesh, outer]
}

fn part(line: Frequency, parts: &[Frequency]) -> Result<Choice, Error> {
    Ok(belongs_to(line, parts, WATCHED_BAND)?.map_or(NONE, |place| Choice(place as u16)))
}

/// Frequency of the largest of `lines`; a rolling bearing stands a little under what its geometry gives.
fn strongest(lines: [Velocity; 6], parts: [Frequency; 6], slip: Ratio) -> Frequency {
    let mut found = (lines[0], parts[0]);
    let slipped = parts[5] * (plain(1.0) - slip).value;
    for (line, frequency) in lines.into_iter().zip(parts.into_iter().take(5).chain([slipped])) {
        if line > found.0 {
            found = (line, frequency);
        }
    }
    found.1
}

fn swing(line: Velocity, frequency: Frequency) -> Result<Length, Error> {
    Ok(displacement_from_velocity(Amplitude::rms(line), frequency)?.by(Detector::PeakToPeak)?.value)
}

fn largest(lines: [Velocity; 7]) -> Velocity {
    lines.into_iter().fold(lines[0], |most, line| if line > most { line } else { most })
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "vibrate.velocity/lines": "Overall value from the lines of the spectrum",
        "vibrate.velocity": Velocity = overall(&[m, d, o, c, z, b, x]),
        from {
            m: Velocity = "vibrate.line_motor", d: Velocity = "vibrate.line_double", o: Velocity = "vibrate.line_output",
            c: Velocity = "vibrate.line_chain", z: Velocity = "vibrate.line_mesh", b: Velocity = "vibrate.line_bearing",
            x: Velocity = "vibrate.rest",
        },
        formula ["v = sqrt(m^2 + d^2 + o^2 + c^2 + z^2 + b^2 + x^2)"],
        source MEAN_SQUARE,
        turns {
            "lines added": m + d + o + c + z + b + x => "You added the lines; they do not peak together, so their squares add.";
            "largest line": largest([m, d, o, c, z, b, x]) => "You took the largest line for the whole; the others count as well.";
            "root left out": overall(&[m, d, o, c, z, b, x]).map(|v| v * (v / Velocity::new::<drivecourse_calc::units::velocity::millimeter_per_second>(1.0)).value) => "You left out the square root of the sum of squares.";
            "rest left out": overall(&[m, d, o, c, z, b]) => "You left out what lies between the lines; it is part of the whole.";
            "root mean of the lines": overall(&[m, d, o, c, z, b, x]).map(|v| v / 7_f64.sqrt()) => "You divided the sum of squares by the number of lines; they are there all at once, so their squares add.";
        },
    }
    .limits("lines r.m.s., in the band of the overall reading"),
    relation! {
        "vibrate.peak_frequency/strongest": "Frequency of the strongest line",
        "vibrate.peak_frequency": Frequency = strongest([m, d, o, c, z, b], parts(fm, fo, fr, fz, fb), s),
        from {
            m: Velocity = "vibrate.line_motor", d: Velocity = "vibrate.line_double", o: Velocity = "vibrate.line_output",
            c: Velocity = "vibrate.line_chain", z: Velocity = "vibrate.line_mesh", b: Velocity = "vibrate.line_bearing",
            fm: Frequency = "vibrate.motor_frequency", fo: Frequency = "vibrate.output_frequency",
            fr: Frequency = "vibrate.chain_pass", fz: Frequency = "vibrate.mesh", fb: Frequency = "vibrate.outer",
            s: Ratio = "vibrate.bearing_slip",
        },
        formula [],
        source Derived("the largest of the lines"),
        turns {},
    }
    .method("the largest line; the bearing's stands a little under its outer-ring frequency, for slip")
    .model(),
    relation! {
        "vibrate.peak_part/nearest": "Where the strongest line comes from",
        "vibrate.peak_part": Choice = part(f, &parts(fm, fo, fr, fz, fb)),
        from {
            f: Frequency = "vibrate.peak_frequency", fm: Frequency = "vibrate.motor_frequency",
            fo: Frequency = "vibrate.output_frequency", fr: Frequency = "vibrate.chain_pass",
            fz: Frequency = "vibrate.mesh", fb: Frequency = "vibrate.outer",
        },
        formula [],
        source CommonPractice,
        turns {
            "once for twice": part(f / 2.0, &parts(fm, fo, fr, fz, fb)) => "You halved the frequency; a line at twice a turn says something else than one at once a turn.";
            "twice for once": part(f * 2.0, &parts(fm, fo, fr, fz, fb)) => "You doubled the frequency; a line at once a turn says something else than one at twice.";
            "hertz as cycles a minute" in Si: part(f / 60.0, &parts(fm, fo, fr, fz, fb)) => "You mixed hertz and cycles a minute; 1 Hz is 60 cpm.";
            "cycles a minute as hertz" in Us: part(f * 60.0, &parts(fm, fo, fr, fz, fb)) => "You mixed hertz and cycles a minute; 1 Hz is 60 cpm.";
            "slip not allowed for": belongs_to(f, &parts(fm, fo, fr, fz, fb), plain(0.003)).map(|at| at.map_or(NONE, |place| Choice(place as u16))) => "You wanted an exact hit; a rolling bearing slips, so look up to 3 % to either side.";
            "inner ring" with { fi: Frequency = "vibrate.inner" }: part(f, &parts(fm, fo, fr, fz, fi)) => "You used the inner-ring frequency for the outer ring's.";
            "teeth of the gear" with { n: drivecourse_calc::units::AngularVelocity = "vibrate.gear_speed", z: u32 = "vibrate.pinion_teeth" }: drivecourse_calc::vibrate::orders::mesh_frequency(n, z).and_then(|wrong| part(f, &parts(fm, fo, fr, wrong, fb))) => "You took the pinion's teeth with the gear's speed; teeth and speed belong to one and the same gear.";
        },
    }
    .method("the part whose frequency is nearest to the line's, if it is within 3 %")
    .limits("shafts and meshes stand within 1 %; a rolling bearing up to 3 % off for slip"),
    relation! {
        "vibrate.tone/motor shaft": "The one vibration looked at: the motor's shaft frequency",
        "vibrate.tone": Frequency = f,
        from { f: Frequency = "vibrate.motor_frequency" },
        formula ["f = f"],
        source Derived("the line at the motor's shaft frequency is looked at alone"),
        turns {},
    }
    .model(),
    relation! {
        "vibrate.displacement/line": "Displacement of the one vibration looked at",
        "vibrate.displacement": Length = swing(v, f),
        from { v: Velocity = "vibrate.line_motor", f: Frequency = "vibrate.tone" },
        formula ["d[µm] = 1000 * sqrt(2) * v[mm/s] / (3.14159 * f[Hz])", "d[mil] = 19099 * sqrt(2) * v[in/s] / f[cpm]"],
        source Derived("derivative of a sine"),
        turns {},
    }
    .model(),
];
