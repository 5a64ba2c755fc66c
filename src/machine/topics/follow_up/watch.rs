//! A settled rise watched: baseline, control limits, weighted mean.

use drivecourse_calc::Error;
use drivecourse_calc::units::{Ratio, TemperatureRise, ratio};
use drivecourse_calc::vibrate::control::{
    Chart, Factor, RANGE_LIMIT, RANGE_OVER_DEVIATION, chart, moving_ranges, weighted_limits, weighted_means,
};

use crate::relation::{Relation, relation};
use crate::source::Source::{self, CommonPractice, Derived};
use crate::typed::Choice;

const CONTROL: Source = Source::published("NIST/SEMATECH e-Handbook of Statistical Methods", "6.3.2.2 (as quoted)");
const WEIGHTED: Source =
    Source::published("D. C. Montgomery, Introduction to Statistical Quality Control", "p. 428 (as quoted)");
const LOG: Source = Derived("this course's own scatter of a logged rise");

type Rise = TemperatureRise;

fn of(readings: [Rise; 4]) -> Result<Chart<Rise>, Error> {
    chart(&readings, Factor::Rounded)
}

/// The weighted mean after the later readings, from a start.
fn weighted(later: [Rise; 2], weight: Ratio, start: Rise) -> Result<Rise, Error> {
    let means = weighted_means(&later, weight, start)?;
    means.last().copied().ok_or(Error::none("weighted mean"))
}

/// The upper limit of the weighted mean with `deviation`, after `count` readings or after many.
fn upper(mean: Rise, deviation: Rise, weight: Ratio, width: Ratio, count: Option<u32>) -> Result<Rise, Error> {
    weighted_limits(mean, deviation, weight, width, count).map(|(_, upper)| upper)
}

fn one() -> Ratio {
    Ratio::new::<ratio::ratio>(1.0)
}

fn beyond(found: bool) -> Choice {
    Choice(u16::from(found))
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "follow.rise_1/log": "First settled rise in the log",
        "follow.rise_1": TemperatureRise = r * x.value,
        from { r: TemperatureRise = "heat.settled_rise", x: Ratio = "follow.scatter_1" },
        formula ["r = r * x[]"],
        source LOG,
        turns {},
    }
    .model(),
    relation! {
        "follow.rise_2/log": "Second settled rise in the log",
        "follow.rise_2": TemperatureRise = r * x.value,
        from { r: TemperatureRise = "heat.settled_rise", x: Ratio = "follow.scatter_2" },
        formula ["r = r * x[]"],
        source LOG,
        turns {},
    }
    .model(),
    relation! {
        "follow.rise_3/log": "Third settled rise in the log",
        "follow.rise_3": TemperatureRise = r * x.value,
        from { r: TemperatureRise = "heat.settled_rise", x: Ratio = "follow.scatter_3" },
        formula ["r = r * x[]"],
        source LOG,
        turns {},
    }
    .model(),
    relation! {
        "follow.rise_4/log": "Fourth settled rise in the log",
        "follow.rise_4": TemperatureRise = r * x.value,
        from { r: TemperatureRise = "heat.settled_rise", x: Ratio = "follow.scatter_4" },
        formula ["r = r * x[]"],
        source LOG,
        turns {},
    }
    .model(),
    relation! {
        "follow.rise_5/log": "First later rise in the log",
        "follow.rise_5": TemperatureRise = r * x.value,
        from { r: TemperatureRise = "heat.settled_rise", x: Ratio = "follow.scatter_5" },
        formula ["r = r * x[]"],
        source LOG,
        turns {},
    }
    .model(),
    relation! {
        "follow.rise_6/log": "Second later rise in the log",
        "follow.rise_6": TemperatureRise = r * x.value,
        from { r: TemperatureRise = "heat.settled_rise", x: Ratio = "follow.scatter_6" },
        formula ["r = r * x[]"],
        source LOG,
        turns {},
    }
    .model(),
    relation! {
        "follow.rise_mean/settled mean": "Baseline of the rise",
        "follow.rise_mean": TemperatureRise = of([a, b, c, d]).map(|chart| chart.mean),
        from {
            a: TemperatureRise = "follow.rise_1", b: TemperatureRise = "follow.rise_2",
            c: TemperatureRise = "follow.rise_3", d: TemperatureRise = "follow.rise_4",
        },
        formula ["r = (a + b + c + d) / 4"],
        source CommonPractice,
        turns {
            "sum": a + b + c + d => "You added the readings and did not divide by their number.";
            "later readings in it" with { e: TemperatureRise = "follow.rise_5", f: TemperatureRise = "follow.rise_6" }: (a + b + c + d + e + f) / 6.0 => "You took the later readings into the baseline; they are what is held against it.";
            "latest" with { f: TemperatureRise = "follow.rise_6" }: f => "You took the latest reading; the baseline is what it is compared with.";
        },
    }
    .limits("settled readings, after run-in, at like load and speed"),
    relation! {
        "follow.rise_range/moving ranges": "Mean moving range of the settled rises",
        "follow.rise_range": TemperatureRise = of([a, b, c, d]).map(|chart| chart.mean_range),
        from {
            a: TemperatureRise = "follow.rise_1", b: TemperatureRise = "follow.rise_2",
            c: TemperatureRise = "follow.rise_3", d: TemperatureRise = "follow.rise_4",
        },
        formula ["R = (abs(b - a) + abs(c - b) + abs(d - c)) / 3"],
        source CONTROL,
        turns {
            "divided by readings": moving_ranges(&[a, b, c, d]).map(|r| r.into_iter().sum::<Rise>() / 4.0) => "You divided by the number of readings; there is one step less than there are readings.";
            "signs kept": (d - a) / 3.0 => "You kept the signs, so that ups and downs cancelled; a range is a size.";
            "sum": moving_ranges(&[a, b, c, d]).map(|r| r.into_iter().sum::<Rise>()) => "You added the ranges and did not divide by their number.";
        },
    },
    relation! {
        "follow.rise_upper/moving range": "Upper control limit of the rise",
        "follow.rise_upper": TemperatureRise = mean + range * Factor::Rounded.value(),
        from { mean: TemperatureRise = "follow.rise_mean", range: TemperatureRise = "follow.rise_range" },
        formula ["U = mean + 2.66 * range"],
        source CONTROL,
        turns {
            "3 for 2.66": mean + range * 3.0 => "You multiplied the mean range by 3; three standard deviations are 2.66 mean ranges.";
            "3.267": mean + range * RANGE_LIMIT => "You used 3.267, which limits the ranges; the readings take 2.66.";
            "factor left out": mean + range => "You left out the 2.66.";
            "lower": mean - range * Factor::Rounded.value() => "You gave the lower limit.";
            "reach alone": range * Factor::Rounded.value() => "You gave the distance from the mean; the limit stands that far above it.";
        },
    }
    .limits("a few readings give a first guess; make the limits anew when more are in"),
    relation! {
        "follow.rise_lower/moving range": "Lower control limit of the rise",
        "follow.rise_lower": TemperatureRise = mean - range * Factor::Rounded.value(),
        from { mean: TemperatureRise = "follow.rise_mean", range: TemperatureRise = "follow.rise_range" },
        formula ["L = mean - 2.66 * range"],
        source CONTROL,
        turns {
            "3 for 2.66": mean - range * 3.0 => "You multiplied the mean range by 3; three standard deviations are 2.66 mean ranges.";
            "factor left out": mean - range => "You left out the 2.66.";
            "upper": mean + range * Factor::Rounded.value() => "You gave the upper limit.";
        },
    },
    relation! {
        "follow.rise_verdict/limits": "Verdict on the latest rise",
        "follow.rise_verdict": Choice = beyond(now > upper || now < lower),
        from {
            now: TemperatureRise = "follow.rise_6", upper: TemperatureRise = "follow.rise_upper",
            lower: TemperatureRise = "follow.rise_lower",
        },
        formula [],
        source Source::published("NIST/SEMATECH e-Handbook of Statistical Methods", "6.3.1 (as quoted)"),
        turns {
            "rise limit" with { limit: TemperatureRise = "heat.rise_limit" }: beyond(now > limit) => "You held it against the rise limit; a rise can be far inside it and still say that this machine has changed.";
            "mean as limit" with { mean: TemperatureRise = "follow.rise_mean" }: beyond(now > mean) => "You held it against the mean; half of all readings lie above it.";
            "fall ignored": beyond(now > upper) => "You let a fall pass; below the lower limit is a signal too.";
            "first later reading" with { before: TemperatureRise = "follow.rise_5" }: beyond(before > upper || before < lower) => "You judged the reading before; the latest one is asked.";
        },
    }
    .method("A rise strictly beyond a limit, up or down, signals; one on the limit does not."),
    relation! {
        "follow.weighted/two readings": "Weighted mean after two later readings",
        "follow.weighted": TemperatureRise = weighted([e, f], w, mean),
        from {
            mean: TemperatureRise = "follow.rise_mean", e: TemperatureRise = "follow.rise_5",
            f: TemperatureRise = "follow.rise_6", w: Ratio = "follow.weight",
        },
        formula ["z = w[] * f + (1 - w[]) * (w[] * e + (1 - w[]) * mean)"],
        source WEIGHTED,
        turns {
            "weights swapped": weighted([e, f], one() - w, mean) => "You gave the weight to the old mean and the rest to the new reading; it is the other way round.";
            "latest alone": weighted([f, f], one(), mean) => "You gave the latest reading; it counts with its weight only.";
            "readings swapped": weighted([f, e], w, mean) => "You took the two readings in the wrong order; the newest counts most.";
            "started at the first": weighted([e, f], w, e) => "You started from the first later reading; the mean of the settled readings is the start.";
            "first step only": weighted([mean, e], w, mean) => "You stopped after the first of the two readings.";
            "baseline left out": f * w.value + e * (w.value * (1.0 - w.value)) => "You left the baseline out; what the readings do not weigh, it does.";
        },
    }
    .method("One reading at a time: new mean = weight × reading + (1 − weight) × mean before; the first mean before is the baseline."),
    relation! {
        "follow.weighted_upper/many readings": "Upper limit of the weighted mean",
        "follow.weighted_upper": TemperatureRise = upper(mean, range / RANGE_OVER_DEVIATION, w, k, None),
        from {
            mean: TemperatureRise = "follow.rise_mean", range: TemperatureRise = "follow.rise_range",
            w: Ratio = "follow.weight", k: Ratio = "follow.width",
        },
        formula ["U = mean + k[] * range / 1.128 * sqrt(w[] / (2 - w[]))"],
        source WEIGHTED,
        turns {
            "range for deviation": upper(mean, range, w, k, None) => "You used the mean range as it is; the standard deviation is the mean range over 1.128.";
            "limit of single readings": mean + range * Factor::Rounded.value() => "You gave the limit of single readings; a weighted mean scatters less, so its limits are narrower.";
            "root left out": mean + range / RANGE_OVER_DEVIATION * (k.value * w.value / (2.0 - w.value)) => "You forgot the root.";
            "weight's part left out": mean + range / RANGE_OVER_DEVIATION * k.value => "You left out the root with the weight, by which a mean scatters less than a reading.";
            "after one reading": upper(mean, range / RANGE_OVER_DEVIATION, w, k, Some(1)) => "You gave the limit after one reading; the one after many is asked.";
        },
    }
    .limits("after many readings; in the first few it is narrower still"),
    relation! {
        "follow.weighted_verdict/upper limit": "Verdict on the weighted mean",
        "follow.weighted_verdict": Choice = beyond(z > limit),
        from { z: TemperatureRise = "follow.weighted", limit: TemperatureRise = "follow.weighted_upper" },
        formula [],
        source WEIGHTED,
        turns {
            "limit of single readings" with { u: TemperatureRise = "follow.rise_upper" }: beyond(z > u) => "You held the mean against the limit of single readings; its own limit is narrower.";
            "single reading" with { now: TemperatureRise = "follow.rise_6" }: beyond(now > limit) => "You held the single reading against the limit of the weighted mean.";
        },
    }
    .method("Above its limit the weighted mean signals a small lasting shift that single readings do not show yet."),
];
