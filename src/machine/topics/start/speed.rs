//! Synchronous speed, poles, slip, and the speed to expect at a load.

use drivecourse_calc::Error;
use drivecourse_calc::start_up::speed::{load_from_speed, poles, slip, speed_at_load, synchronous_speed};
use drivecourse_calc::units::{Frequency, frequency};

use super::{AngularVelocity, FACT_SHEET, Ratio, angular_velocity, left, plain};
use crate::relation::{Relation, relation};
use crate::source::Source::{Derived, FromMemory};

const SPEED: crate::Source =
    FromMemory("B. L. Theraja, A. K. Theraja, A Textbook of Electrical Technology, chapter 34, pp. 1255-1256");
const SLIP_METHOD: crate::Source = crate::Source::published(FACT_SHEET, "slip method (equation from memory)");

/// The slip goes with the load: as true of the machine as of the question.
const AT_LOAD: &str = "n = ns - x[] * (ns - nf)";

/// A speed's number in r/min as if it were a plain number.
fn as_number(speed: AngularVelocity) -> Ratio {
    plain(speed.get::<angular_velocity::revolution_per_minute>())
}

/// Full-load speed of a motor that runs at `running` under `share` of its load.
fn full_load_speed(
    synchronous: AngularVelocity,
    running: AngularVelocity,
    share: Ratio,
) -> Result<AngularVelocity, Error> {
    if share.value > 0.0 {
        Ok(synchronous - (synchronous - running) / share.value)
    } else {
        Err(Error::none("full-load speed"))
    }
}

/// 60 Hz for 50 Hz and the other way about.
fn other_supply(supply: Frequency) -> Frequency {
    Frequency::new::<frequency::hertz>(50.0 + 60.0) - supply
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "start.poles/running speed": "Poles of a motor that runs just under its synchronous speed",
        "start.poles": u32 = poles(f, n),
        from { f: Frequency = "start.frequency", n: AngularVelocity = "drive.motor_speed" },
        formula [],
        source SPEED,
        turns {},
    }
    .method("the largest even number of poles whose synchronous speed is not below the running speed")
    .model(),
    relation! {
        "start.poles/plate speed": "Poles of the motor, from its plate speed",
        "start.poles": u32 = poles(f, n),
        from { f: Frequency = "start.frequency", n: AngularVelocity = "start.plate_speed" },
        formula [],
        source SPEED,
        turns {
            "pairs": poles(f, n).map(|p| p / 2) => "You gave the pairs of poles; every pair is two poles.";
            "next pair": poles(f, n).map(|p| p + 2) => "You took a synchronous speed below the plate speed; a motor runs just under its synchronous speed, never over it.";
        },
    }
    .method("divide 120 f by the plate speed and take the even number at or next below it"),
    relation! {
        "start.synchronous/poles": "Synchronous speed from supply frequency and poles",
        "start.synchronous": AngularVelocity = synchronous_speed(f, p),
        from { f: Frequency = "start.frequency", p: u32 = "start.poles" },
        formula ["n[r/min] = 120 * f[Hz] / p"],
        source SPEED,
        turns {
            "poles halved": synchronous_speed(f, p).map(|n| n * 2.0) => "You divided by the pairs of poles; with 120 in the formula, the whole number of poles belongs under it.";
            "60 for 120": synchronous_speed(f, p).map(|n| n / 2.0) => "You used 60 f over the poles; in one period of the supply the field moves on by a pair of poles, so it is 120 f.";
            "other supply": synchronous_speed(other_supply(f), p) => "You worked with the other supply frequency; take the one on the plate.";
            "poles left out": synchronous_speed(f, 2) => "You left the poles out; more poles make the field turn slower.";
        },
    }
    .limits("three-phase motor straight on the supply, no converter"),
    relation! {
        "start.plate_speed/running speed": "Full-load speed of a motor that runs at this speed under this load",
        "start.plate_speed": AngularVelocity = full_load_speed(ns, n, x),
        from {
            ns: AngularVelocity = "start.synchronous", n: AngularVelocity = "drive.motor_speed",
            x: Ratio = "drive.load_share",
        },
        formula ["n = ns - (ns - n) / x[]"],
        source SLIP_METHOD,
        turns {},
    }
    .model(),
    relation! {
        "drive.motor_speed/plate speed": "Speed of a motor of this plate under this load",
        "drive.motor_speed": AngularVelocity = speed_at_load(ns, nf, x),
        from {
            ns: AngularVelocity = "start.synchronous", nf: AngularVelocity = "start.plate_speed",
            x: Ratio = "drive.load_share",
        },
        formula [AT_LOAD],
        source SLIP_METHOD,
        turns {},
    }
    .model(),
    relation! {
        "start.slip/speeds": "Slip of the motor",
        "start.slip": Ratio = slip(ns, n),
        from { ns: AngularVelocity = "start.synchronous", n: AngularVelocity = "drive.motor_speed" },
        formula ["s[] = (ns - n) / ns"],
        source SPEED,
        turns {
            "slip as speed": as_number(ns - n) => "You gave the slip in r/min; slip is that difference as a share of the synchronous speed.";
            "slip as speed, per cent": as_number(ns - n) / 100.0 => "You gave the slip in r/min; slip is that difference as a share of the synchronous speed.";
            "speed share": n / ns => "You gave the speed as a share of the synchronous speed; slip is what is missing from the whole.";
            "plate speed" with { nf: AngularVelocity = "start.plate_speed" }: slip(ns, nf) => "You used the full-load speed of the plate; the slip now goes by the speed read now.";
        },
    }
    .limits("usually 1 to 5 % at full load; tachometer readings, since a small difference of two large numbers is wanted"),
    relation! {
        "start.speed_expected/load": "Speed to expect at the load",
        "start.speed_expected": AngularVelocity = speed_at_load(ns, nf, x),
        from {
            ns: AngularVelocity = "start.synchronous", nf: AngularVelocity = "start.plate_speed",
            x: Ratio = "drive.load_share",
        },
        formula [AT_LOAD],
        source SLIP_METHOD,
        turns {
            "speed scaled": ns * x.value => "You scaled the speed with the load; only the slip goes with the load.";
            "plate speed scaled": nf * x.value => "You scaled the plate speed with the load; only the slip goes with the load.";
            "added": ns + (ns - nf) * x.value => "You added the slip; a loaded motor runs under its synchronous speed.";
            "load left": speed_at_load(ns, nf, left(x)) => "You scaled the slip with the load that is left; it goes with the load in use.";
        },
    }
    .limits("up to 1.5 times full load"),
    relation! {
        "start.load_by_speed/slip": "Load of the motor from its speed",
        "start.load_by_speed": Ratio = load_from_speed(ns, nf, n),
        from {
            ns: AngularVelocity = "start.synchronous", nf: AngularVelocity = "start.plate_speed",
            n: AngularVelocity = "drive.motor_speed",
        },
        formula ["x[] = (ns - n) / (ns - nf)"],
        source SLIP_METHOD,
        turns {
            "speeds": nf / n => "You divided the speeds; they are nearly equal at any load, so compare the slips.";
            "speeds inverted": n / nf => "You divided the speeds; they are nearly equal at any load, so compare the slips.";
            "slip itself": slip(ns, n) => "You gave the slip; the load is the slip now over the slip at full load.";
            "inverted": load_from_speed(ns, nf, n).map(|x| plain(1.0) / x) => "You divided the full-load slip by the slip now; turn it over.";
            "load left": load_from_speed(ns, nf, n).map(left) => "You gave the load that is left; the slip shows the load in use.";
        },
    }
    .limits("an estimate: plate speeds are rounded, and the slip of a sound motor may be a tenth to a fifth off"),
];

/// Kept beside the relations so that their source stands once.
pub(super) const DEFINITION: crate::Source = Derived("definition of the share");
