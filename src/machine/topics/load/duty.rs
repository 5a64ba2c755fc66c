//! Load and life the other way about: the load for a life, and the steady load that a changing one amounts to.

use drivecourse_calc::Error;
use drivecourse_calc::load::bearing::{self as calc, Duty, Exponent};
use drivecourse_calc::units::{AngularVelocity, Force, Ratio, Time, angular_velocity::radian_per_second};

use super::bearing::{ISO_281, other, plain};
use crate::relation::{Relation, relation};
use crate::source::Source;

const JINDAL: Source = Source::published("U. C. Jindal, Machine Design", "Example 18-9, p. 512");

/// Steady load of `full` and, for the part `light` of the time, the part `share` of it, at one speed.
fn mean(full: Force, light: Ratio, share: Ratio, exponent: impl Into<Exponent>) -> Result<Force, Error> {
    // The speed is the same in both parts and falls out.
    let speed = AngularVelocity::new::<radian_per_second>(1.0);
    let parts =
        [Duty { load: full, speed, share: plain(1.0 - light.value) }, Duty { load: full * share, speed, share: light }];
    Ok(calc::mean_duty(&parts, exponent)?.load)
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "load.load_for_life/capacity": "Load under which the near bearing reaches the life wanted",
        "load.load_for_life": Force = calc::load_for_life(c, l, Exponent::new(p)?, n),
        from {
            c: Force = "load.bearing_capacity", l: Time = "load.design_life", p: Ratio = "load.life_exponent",
            n: AngularVelocity = "drive.output_speed",
        },
        formula [
            "P[N] = c[N] / (60 * n[r/min] * l[h] / 1000000)^(1 / p)",
            "P[lbf] = c[lbf] / (60 * n[r/min] * l[h] / 1000000)^(1 / p)",
        ],
        source ISO_281,
        turns {
            "minutes for hours": calc::load_for_life(c, l / 60.0, Exponent::new(p)?, n) => "You multiplied hours by revolutions a minute; 60 minutes make the hour.";
            "motor speed" with { nm: AngularVelocity = "drive.motor_speed" }: calc::load_for_life(c, l, Exponent::new(p)?, nm) => "You used the motor's speed; the bearing turns with the output shaft.";
            "exponent of the other kind": calc::load_for_life(c, l, other(p), n) => "You used the root of the other kind of bearing; it is the third for balls and the 10/3-th for rollers.";
            "no root": calc::load_for_life(c, l, Exponent::new(plain(1.0))?, n) => "You left the root out; life goes with the load raised to the exponent, so the load goes with the root of the life.";
            "square root": calc::load_for_life(c, l, Exponent::new(plain(2.0))?, n) => "You took the square root; the exponent is 3 for balls and 10/3 for rollers.";
            "multiplied": calc::capacity_for_life(c, l, Exponent::new(p)?, n) => "You multiplied by the root; a longer life allows less load, so divide.";
            "load now" with { r: Force = "load.reaction_near" }: r => "You gave the load the bearing has now; the one that the life wanted allows is asked.";
        },
    }
    .limits("nine of ten bearings last at least so long; up to about half the capacity, clean oil of the right grade"),
    relation! {
        "load.mean_load/duty": "Steady load that wears the bearing out as fast as load and light running do",
        "load.mean_load": Force = mean(r, q, k, Exponent::new(p)?),
        from {
            r: Force = "load.reaction_near", q: Ratio = "load.light_time", k: Ratio = "load.light_share",
            p: Ratio = "load.life_exponent",
        },
        formula ["P = r * (1 - q[] + q[] * k[]^p)^(1 / p)"],
        source JINDAL,
        turns {
            "plain mean": mean(r, q, k, Exponent::new(plain(1.0))?) => "You took the plain mean by time; wear goes with the load raised to the exponent, so the heavy part counts far more.";
            "root mean square": mean(r, q, k, Exponent::new(plain(2.0))?) => "You took the root of the mean square; the exponent is 3 for balls and 10/3 for rollers.";
            "exponent of the other kind": mean(r, q, k, other(p)) => "You used the exponent of the other kind of bearing; it is 3 for balls and 10/3 for rollers.";
            "times swapped": mean(r, plain(1.0 - q.value), k, Exponent::new(p)?) => "You gave the light part of the time to the heavy load, and the heavy part to the light one.";
            "time left out": mean(r, plain(0.5), k, Exponent::new(p)?) => "You gave both loads the same time; each counts by its share.";
            "light part left out": mean(r, q, plain(1e-9), Exponent::new(p)?) => "You left the light running out; it wears a little as well.";
            "root left out": mean(r, q, k, Exponent::new(p)?).map(|m| r * calc_power(m / r, p)) => "You left the root out; the powers add up to a power of the load.";
            "full load": r => "You gave the load now; for a part of the time the drive runs light.";
        },
    }
    .limits("the same speed in both parts; the life under this load counts all hours together"),
];

fn calc_power(base: Ratio, exponent: Ratio) -> f64 {
    drivecourse_calc::math::pow(base.value, exponent.value)
}
