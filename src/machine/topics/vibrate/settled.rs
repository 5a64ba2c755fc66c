//! The hidden machine: the lines of the settled drive, what has grown since, and the readings on the way.
//!
//! A sound drive runs the more quietly the smaller it is (`vibrate.size`). How strongly a fault shakes a drive is in no handbook. The
//! factors here are the course's own and only make a fault visible where practice looks for it: soft foot and loose bolts at the
//! motor's speed, misalignment at twice that, a loose bushing at the output shaft's, a worn chain where its rollers seat, load at the
//! gear mesh. What a fault adds goes by the limit and not by the size, so that it shows on a small drive as well.

use drivecourse_calc::Error;
use drivecourse_calc::units::{Length, Power, Ratio, Time, Velocity, ratio};
use drivecourse_calc::vibrate::general_limits::size_share;
use drivecourse_calc::vibrate::spectrum::overall;
use drivecourse_calc::vibrate::trend::on_the_way;

use crate::relation::{Relation, relation};
use crate::source::Source::{self, CommonPractice, Derived, FromMemory};
use crate::typed::Slope;

const SHARE: Source = Derived("definition of the share");
const WAY: Source = Derived("growth by equal shares in equal times");
/// A foot gap as large as its limit raises the line at the motor's speed by this share.
const GAP_RAISES: f64 = 0.15;
/// An offset or an angle as large as its limit raises the line at twice the motor's speed by this share.
const OFFSET_RAISES: f64 = 1.0;
/// Base bolts that have lost twice the torque allowed raise the lines at once and twice the motor's speed by this share.
const BOLTS_RAISE: f64 = 4.0;
/// Bushing screws that have lost twice the torque allowed raise the line at the output shaft's frequency by this share.
const BUSHING_RAISES: f64 = 20.0;
/// A chain worn by this share runs twice as rough.
const WEAR_DOUBLES: f64 = 0.02;

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

/// `share` of `limit` for a drive of this `size`, raised by `by` for each time that `cause` holds its own limit.
fn raised(limit: Velocity, share: Ratio, size: Ratio, cause: Ratio, by: f64) -> Velocity {
    limit * share.value * (size.value + by * cause.value)
}

/// `settled`, raised by `by` times `share` of `limit` for each time that the `lost` torque is over the `most` allowed by as much again;
/// up to that nothing shows.
fn loosened(settled: Velocity, limit: Velocity, share: Ratio, lost: Ratio, most: Ratio, by: f64) -> Velocity {
    settled + limit * share.value * by * ((lost / most).value - 1.0).max(0.0)
}

/// The offset and the angle between two shafts, each over its limit: the larger of both counts.
fn out_of_line(offset: [Length; 2], most: Length, angle: [Slope; 2], steepest: Slope) -> Ratio {
    let size = |parts: [f64; 2]| (parts[0] * parts[0] + parts[1] * parts[1]).sqrt();
    let offset = size(offset.map(|part| part.value)) / most.value;
    plain(offset.max(size(angle.map(|part| part.0.value)) / steepest.0.value))
}

fn on_day(settled: Velocity, now: Velocity, day: Time, last: Time) -> Result<Velocity, Error> {
    on_the_way(settled, now, plain((day / last).value))
}

macro_rules! loosened {
    (
        $line:literal, $title:literal, $quantity:literal from $settled:literal with $share:literal by $lost:literal,
        $by:expr, $formula:literal
    ) => {
        relation! {
            $line: $title,
            $quantity: Velocity = loosened(v, limit, c, lost, most, $by),
            from {
                v: Velocity = $settled, limit: Velocity = "vibrate.limit_bc", c: Ratio = $share, lost: Ratio = $lost,
                most: Ratio = "fasten.loss_limit",
            },
            formula [$formula],
            source CommonPractice,
            turns {},
        }
        .model()
    };
}

macro_rules! share_of_limit {
    ($line:literal, $title:literal, $quantity:literal, $share:literal) => {
        relation! {
            $line: $title,
            $quantity: Velocity = raised(limit, c, k, plain(0.0), 0.0),
            from { limit: Velocity = "vibrate.limit_bc", c: Ratio = $share, k: Ratio = "vibrate.size" },
            formula ["v = limit * c[] * k[]"],
            source SHARE,
            turns {},
        }
        .model()
    };
}

macro_rules! scattered {
    ($reading:literal, $title:literal, $quantity:literal, $scatter:literal) => {
        relation! {
            $reading: $title,
            $quantity: Velocity = v * (1.0 + e.value),
            from { v: Velocity = "vibrate.settled", e: Ratio = $scatter },
            formula ["v = v * (1 + e[])"],
            source SHARE,
            turns {},
        }
        .model()
    };
}

macro_rules! dated {
    ($reading:literal, $title:literal, $quantity:literal, $day:literal) => {
        relation! {
            $reading: $title,
            $quantity: Velocity = on_day(v, now, t, last),
            from {
                v: Velocity = "vibrate.settled", now: Velocity = "vibrate.velocity", t: Time = $day,
                last: Time = "vibrate.day_3",
            },
            formula ["v = v * (now / v)^(t / last)"],
            source WAY,
            turns {},
        }
        .model()
    };
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "vibrate.size/power": "Level of a sound drive over that of the largest of its size class",
        "vibrate.size": Ratio = size_share(p),
        from { p: Power = "drive.motor_power" },
        formula [],
        source FromMemory("ISO 10816-1: the limits of its size classes, up to 15 kW, up to 75 kW and above, rise 1.6-fold from one to the next; that a level follows the power within a class is common practice"),
        turns {},
    }
    .method("1.6-fold for each five-fold power: from 15 kW down, above that from 75 kW down; beyond 75 kW no more.")
    .model(),
    relation! {
        "vibrate.settled_motor/soft foot": "Settled line at the motor's shaft frequency",
        "vibrate.settled_motor": Velocity = raised(limit, c, k, g / most, GAP_RAISES),
        from {
            limit: Velocity = "vibrate.limit_bc", c: Ratio = "vibrate.share_motor", k: Ratio = "vibrate.size",
            g: Length = "mount.gap", most: Length = "mount.gap_limit",
        },
        formula ["v = limit * c[] * (k[] + 0.15 * g / most)"],
        source CommonPractice,
        turns {},
    }
    .model(),
    relation! {
        "vibrate.settled_double/alignment": "Settled line at twice the motor's shaft frequency",
        "vibrate.settled_double": Velocity = raised(limit, c, k, out_of_line([v, h], most, [av, ah], steepest), OFFSET_RAISES),
        from {
            limit: Velocity = "vibrate.limit_bc", c: Ratio = "vibrate.share_double", k: Ratio = "vibrate.size",
            v: Length = "align.offset_v", h: Length = "align.offset_h", most: Length = "align.offset_limit",
            av: Slope = "align.angle_v", ah: Slope = "align.angle_h", steepest: Slope = "align.angle_limit",
        },
        formula ["v = limit * c[] * (k[] + max(sqrt(v^2 + h^2) / most, sqrt(av^2 + ah^2) / steepest))"],
        source CommonPractice,
        turns {},
    }
    .model(),
    share_of_limit!(
        "vibrate.settled_output/share",
        "Settled line at the output shaft's frequency",
        "vibrate.settled_output",
        "vibrate.share_output"
    ),
    relation! {
        "vibrate.line_chain/wear": "Line at the frequency at which rollers seat",
        "vibrate.line_chain": Velocity = raised(limit, c, k, w, 1.0 / WEAR_DOUBLES),
        from {
            limit: Velocity = "vibrate.limit_bc", c: Ratio = "vibrate.share_chain", k: Ratio = "vibrate.size",
            w: Ratio = "chain.wear",
        },
        formula ["v = limit * c[] * (k[] + w[] / 0.02)"],
        source CommonPractice,
        turns {},
    }
    .model(),
    relation! {
        "vibrate.settled_mesh/load": "Settled line at the mesh frequency",
        "vibrate.settled_mesh": Velocity = limit * (c * x * k).value,
        from {
            limit: Velocity = "vibrate.limit_bc", c: Ratio = "vibrate.share_mesh", x: Ratio = "drive.load_share",
            k: Ratio = "vibrate.size",
        },
        formula ["v = limit * c[] * x[] * k[]"],
        source CommonPractice,
        turns {},
    }
    .model(),
    share_of_limit!(
        "vibrate.settled_bearing/share",
        "Settled line at the bearing's outer-ring frequency",
        "vibrate.settled_bearing",
        "vibrate.share_bearing"
    ),
    share_of_limit!(
        "vibrate.rest/share",
        "Everything between the lines",
        "vibrate.rest",
        "vibrate.share_rest"
    ),
    relation! {
        "vibrate.settled/lines": "Vibration velocity when the drive had settled",
        "vibrate.settled": Velocity = overall(&[m, d, o, c, z, b, x]),
        from {
            m: Velocity = "vibrate.settled_motor", d: Velocity = "vibrate.settled_double",
            o: Velocity = "vibrate.settled_output", c: Velocity = "vibrate.line_chain",
            z: Velocity = "vibrate.settled_mesh", b: Velocity = "vibrate.settled_bearing", x: Velocity = "vibrate.rest",
        },
        formula ["v = sqrt(m^2 + d^2 + o^2 + c^2 + z^2 + b^2 + x^2)"],
        source Derived("mean square of a sum of sines of different frequencies"),
        turns {},
    }
    .model(),
    loosened!(
        "vibrate.line_motor/base bolts",
        "Line at the motor's shaft frequency now",
        "vibrate.line_motor" from "vibrate.settled_motor" with "vibrate.share_motor" by "fasten.bolt_lost",
        BOLTS_RAISE,
        "v = v + limit * c[] * 4 * max(lost[] / most[] - 1, 0)"
    ),
    loosened!(
        "vibrate.line_double/base bolts",
        "Line at twice the motor's shaft frequency now",
        "vibrate.line_double" from "vibrate.settled_double" with "vibrate.share_double" by "fasten.bolt_lost",
        BOLTS_RAISE,
        "v = v + limit * c[] * 4 * max(lost[] / most[] - 1, 0)"
    ),
    loosened!(
        "vibrate.line_output/bushing",
        "Line at the output shaft's frequency now",
        "vibrate.line_output" from "vibrate.settled_output" with "vibrate.share_output" by "fasten.torque_lost",
        BUSHING_RAISES,
        "v = v + limit * c[] * 20 * max(lost[] / most[] - 1, 0)"
    ),
    relation! {
        "vibrate.line_mesh/grown": "Line at the mesh frequency now",
        "vibrate.line_mesh": Velocity = v + limit * ((c * x).value * (q.value - 1.0)),
        from {
            v: Velocity = "vibrate.settled_mesh", limit: Velocity = "vibrate.limit_bc", c: Ratio = "vibrate.share_mesh",
            x: Ratio = "drive.load_share", q: Ratio = "vibrate.grown_mesh",
        },
        formula ["v = v + limit * c[] * x[] * (q[] - 1)"],
        source CommonPractice,
        turns {},
    }
    .model(),
    relation! {
        "vibrate.line_bearing/grown": "Line at the bearing's outer-ring frequency now",
        "vibrate.line_bearing": Velocity = v + limit * (c.value * (q.value - 1.0)),
        from {
            v: Velocity = "vibrate.settled_bearing", limit: Velocity = "vibrate.limit_bc",
            c: Ratio = "vibrate.share_bearing", q: Ratio = "vibrate.grown_bearing",
        },
        formula ["v = v + limit * c[] * (q[] - 1)"],
        source CommonPractice,
        turns {},
    }
    .model(),
    relation! {
        "vibrate.first/run-in": "Vibration velocity at the first start",
        "vibrate.first": Velocity = v * (1.0 + q.value),
        from { v: Velocity = "vibrate.settled", q: Ratio = "vibrate.run_in" },
        formula ["v = v * (1 + q[])"],
        source SHARE,
        turns {},
    }
    .model(),
    scattered!(
        "vibrate.reading_1/scatter",
        "First settled reading",
        "vibrate.reading_1",
        "vibrate.scatter_1"
    ),
    scattered!(
        "vibrate.reading_2/scatter",
        "Second settled reading",
        "vibrate.reading_2",
        "vibrate.scatter_2"
    ),
    scattered!(
        "vibrate.reading_3/scatter",
        "Third settled reading",
        "vibrate.reading_3",
        "vibrate.scatter_3"
    ),
    scattered!(
        "vibrate.reading_4/scatter",
        "Fourth settled reading",
        "vibrate.reading_4",
        "vibrate.scatter_4"
    ),
    dated!(
        "vibrate.trend_1/growth",
        "First trend reading",
        "vibrate.trend_1",
        "vibrate.day_1"
    ),
    dated!(
        "vibrate.trend_2/growth",
        "Second trend reading",
        "vibrate.trend_2",
        "vibrate.day_2"
    ),
    relation! {
        "vibrate.trend_3/now": "Third trend reading, that of now",
        "vibrate.trend_3": Velocity = now,
        from { now: Velocity = "vibrate.velocity" },
        formula ["v = now"],
        source WAY,
        turns {},
    }
    .model(),
];
