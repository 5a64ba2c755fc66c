//! Baseline, alarm, change, control limits, and the days to a limit.

use drivecourse_calc::Error;
use drivecourse_calc::units::{Ratio, Time, Velocity};
use drivecourse_calc::vibrate::alarm::{SHARE, alarm, highest_trip, is_significant};
use drivecourse_calc::vibrate::control::{Chart, Factor, chart, moving_ranges};
use drivecourse_calc::vibrate::trend::{Dated, Shape, Trend, fit};
use drivecourse_calc::vibrate::zone::Limits;

use crate::relation::{Relation, relation};
use crate::source::Source::{self, CommonPractice, Derived};
use crate::typed::Choice;

const ALARM: Source = Source::published("ISO 10816-3", "clause 5.4 (as quoted)");
const CHANGE: Source = Source::published("ISO 10816-3", "clause 5.3 (as quoted)");
const CONTROL: Source = Source::published("NIST/SEMATECH e-Handbook of Statistical Methods", "6.3.2.2 (as quoted)");

/// Limits of which only the middle one is asked: the others stand at half and twice of it.
fn around(b_c: Velocity) -> Limits<Velocity> {
    Limits { a_b: b_c / 2.0, b_c, c_d: b_c * 2.0 }
}

fn set(baseline: Velocity, b_c: Velocity) -> Result<Velocity, Error> {
    alarm(baseline, &around(b_c))
}

fn trip(c_d: Velocity) -> Result<Velocity, Error> {
    highest_trip(&Limits { c_d, ..around(c_d / 2.0) })
}

fn changed(baseline: Velocity, now: Velocity, b_c: Velocity) -> Result<Choice, Error> {
    Ok(Choice(u16::from(is_significant(baseline, now, &around(b_c))?)))
}

fn of(readings: [Velocity; 4]) -> Result<Chart<Velocity>, Error> {
    chart(&readings, Factor::Rounded)
}

/// Whether a reading lies beyond limits that are known already.
fn beyond(now: Velocity, upper: Velocity, lower: Velocity) -> Choice {
    Choice(u16::from(now > upper || now < lower))
}

pub(super) const CALLS: &[&str] = &["below the alarm", "alarm, look for the cause", "trip, stop the drive"];

/// Where a reading stands between alarm and trip.
fn call(now: Velocity, alarm: Velocity, trip: Velocity) -> Choice {
    Choice(u16::from(now > alarm) + u16::from(now > alarm && now > trip))
}

/// Largest less smallest of four.
fn spread(readings: [Velocity; 4]) -> Velocity {
    let ends = |a: (Velocity, Velocity), v: &Velocity| (a.0.min(*v), a.1.max(*v));
    let (low, high) = readings.iter().fold((readings[0], readings[0]), ends);
    high - low
}

fn left<const N: usize>(
    readings: [(Time, Velocity); N],
    shape: Shape,
    limit: Velocity,
    now: Time,
) -> Result<Time, Error> {
    fit(&readings.map(|(at, value)| Dated { at, value }), shape)?.time_to(limit, now)
}

fn fit_line<const N: usize>(readings: [(Time, Velocity); N]) -> Result<Trend<Velocity>, Error> {
    fit(&readings.map(|(at, value)| Dated { at, value }), Shape::Line)
}

fn doubling<const N: usize>(readings: [(Time, Velocity); N]) -> Result<Time, Error> {
    fit(&readings.map(|(at, value)| Dated { at, value }), Shape::Exponential)?.doubling_time()
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "vibrate.baseline/settled mean": "Baseline from settled readings",
        "vibrate.baseline": Velocity = of([a, b, c, d]).map(|chart| chart.mean),
        from {
            a: Velocity = "vibrate.reading_1", b: Velocity = "vibrate.reading_2", c: Velocity = "vibrate.reading_3",
            d: Velocity = "vibrate.reading_4",
        },
        formula ["v = (a + b + c + d) / 4"],
        source CommonPractice,
        turns {
            "first start" with { first: Velocity = "vibrate.first" }: first => "You took the reading at the first start; the baseline is made when the machine has run in and settled.";
            "run-in and all" with { first: Velocity = "vibrate.first" }: (a + b + c + d + first) / 5.0 => "You took the reading at the first start into the mean; the baseline is made when the machine has run in and settled.";
            "sum": a + b + c + d => "You added the readings and did not divide by their number.";
        },
    }
    .limits("after run-in, at steady speed, load and temperature"),
    relation! {
        "vibrate.run_in_fall/baseline": "Fall of the vibration while the machine ran in",
        "vibrate.run_in_fall": Ratio = (first - base) / first,
        from { first: Velocity = "vibrate.first", base: Velocity = "vibrate.baseline" },
        formula ["r[] = (first - base) / first"],
        source Derived("definition of the share"),
        turns {
            "of the baseline": (first - base) / base => "You divided by the baseline; the fall is a share of what it fell from.";
            "what is left": base / first => "You gave what is left; the fall is what went away.";
        },
    }
    .limits("some fall is usual; a rise is none"),
    relation! {
        "vibrate.alarm/baseline": "Alarm setting",
        "vibrate.alarm": Velocity = set(base, bc),
        from { base: Velocity = "vibrate.baseline", bc: Velocity = "vibrate.limit_bc" },
        formula ["v = min(base + 0.25 * bc, 1.25 * bc)"],
        source ALARM,
        turns {
            "start-up reading" with { first: Velocity = "vibrate.first" }: set(first, bc) => "You set the alarm from the reading at the first start; it is set from the settled baseline.";
            "quarter of the baseline": base * (1.0 + SHARE) => "You added a quarter of the baseline; a quarter of the limit between B and C is added.";
            "limit A to B" with { ab: Velocity = "vibrate.limit_ab" }: set(base, ab) => "You used the limit between A and B; the alarm takes a quarter of the limit between B and C.";
            "limit C to D" with { cd: Velocity = "vibrate.limit_cd" }: set(base, cd) => "You used the limit between C and D; the alarm takes a quarter of the limit between B and C.";
            "baseline left out": bc * SHARE => "You left the baseline out; the alarm stands a quarter of the limit above it.";
            "whole limit": base + bc => "You added the whole limit; a quarter of it is added.";
            "limit itself": bc => "You took the limit itself; the alarm stands above this machine's own baseline.";
            "2.5 times": base * 2.5 => "You multiplied the baseline by 2.5; no standard has that.";
        },
    }
    .limits("at most 1.25 times the limit between B and C"),
    relation! {
        "vibrate.trip/limit": "Highest trip setting",
        "vibrate.trip": Velocity = trip(cd),
        from { cd: Velocity = "vibrate.limit_cd" },
        formula ["v = 1.25 * cd"],
        source ALARM,
        turns {
            "limit B to C" with { bc: Velocity = "vibrate.limit_bc" }: trip(bc) => "You used the limit between B and C; the trip goes by the limit between C and D.";
            "quarter": cd * SHARE => "You took a quarter of the limit; the trip may stand a quarter above it.";
            "limit itself": cd => "You took the limit itself; the trip may stand up to a quarter above it.";
        },
    },
    relation! {
        "vibrate.alarm_verdict/settings": "Verdict against alarm and trip",
        "vibrate.alarm_verdict": Choice = call(now, al, tr),
        from { now: Velocity = "vibrate.velocity", al: Velocity = "vibrate.alarm", tr: Velocity = "vibrate.trip" },
        formula [],
        source CommonPractice,
        turns {
            "limit for alarm" with { bc: Velocity = "vibrate.limit_bc" }: call(now, bc, tr) => "You used the limit between B and C for the alarm; the alarm is set from this machine's own baseline.";
            "limit for trip" with { bc: Velocity = "vibrate.limit_bc" }: call(now, al, bc) => "You used the limit between B and C for the trip; the trip goes by the limit between C and D.";
            "alarm taken for trip": call(now, al, al) => "You stopped the drive at the alarm; the alarm asks for the cause, and the trip stops.";
        },
    }
    .method("up to the alarm nothing, above it look for the cause, above the trip stop"),
    relation! {
        "vibrate.change_verdict/quarter of the limit": "Verdict on the change from the baseline",
        "vibrate.change_verdict": Choice = changed(base, now, bc),
        from {
            base: Velocity = "vibrate.baseline", now: Velocity = "vibrate.velocity", bc: Velocity = "vibrate.limit_bc",
        },
        formula [],
        source CHANGE,
        turns {
            "start-up reading" with { first: Velocity = "vibrate.first" }: changed(first, now, bc) => "You compared with the reading at the first start; compare with the settled baseline.";
            "quarter of the baseline": changed(base, now, base) => "You took a quarter of the baseline; a quarter of the limit between B and C counts.";
            "fall ignored": changed(base, now.max(base), bc) => "You let a fall pass; a large fall is as significant as a rise.";
            "whole limit": changed(base, now, bc * 4.0) => "You held the change against the whole limit; a quarter of it counts.";
            "reading against limit": Choice(u16::from(now > bc)) => "You held the reading against the limit; the change from the baseline counts here.";
        },
    }
    .method("the size of reading less baseline, held against a quarter of the limit between B and C; up and down count alike"),
    relation! {
        "vibrate.mean_range/moving ranges": "Mean moving range of the settled readings",
        "vibrate.mean_range": Velocity = of([a, b, c, d]).map(|chart| chart.mean_range),
        from {
            a: Velocity = "vibrate.reading_1", b: Velocity = "vibrate.reading_2", c: Velocity = "vibrate.reading_3",
            d: Velocity = "vibrate.reading_4",
        },
        formula ["R = (abs(b - a) + abs(c - b) + abs(d - c)) / 3"],
        source CONTROL,
        turns {
            "divided by readings": moving_ranges(&[a, b, c, d]).map(|r| r.into_iter().sum::<Velocity>() / 4.0) => "You divided by the number of readings; there is one step less than there are readings.";
            "signs kept": (d - a) / 3.0 => "You kept the signs, so that ups and downs cancelled; a range is a size.";
            "whole spread": spread([a, b, c, d]) => "You took largest less smallest; the moving range goes from each reading to the next.";
            "sum": moving_ranges(&[a, b, c, d]).map(|r| r.into_iter().sum::<Velocity>()) => "You added the ranges and did not divide by their number.";
        },
    },
    relation! {
        "vibrate.control_upper/moving range": "Upper control limit",
        "vibrate.control_upper": Velocity = base + range * Factor::Rounded.value(),
        from { base: Velocity = "vibrate.baseline", range: Velocity = "vibrate.mean_range" },
        formula ["U = base + 2.66 * range"],
        source CONTROL,
        turns {
            "3 for 2.66": base + range * 3.0 => "You multiplied the mean range by 3; three standard deviations are 2.66 mean ranges.";
            "3.267": base + range * 3.267 => "You used 3.267, which limits the ranges; the readings take 2.66.";
            "range limit": range * 3.267 => "You gave the limit of the moving ranges; the limit of the readings is asked.";
            "factor left out": base + range => "You left out the 2.66.";
            "first start" with { first: Velocity = "vibrate.first" }: first + range * Factor::Rounded.value() => "You started from the reading at the first start; the limits stand about the settled mean.";
        },
    }
    .limits("a few readings give a first guess; make the limits anew when more are in"),
    relation! {
        "vibrate.control_lower/moving range": "Lower control limit",
        "vibrate.control_lower": Velocity = base - range * Factor::Rounded.value(),
        from { base: Velocity = "vibrate.baseline", range: Velocity = "vibrate.mean_range" },
        formula ["L = base - 2.66 * range"],
        source CONTROL,
        turns {
            "3 for 2.66": base - range * 3.0 => "You multiplied the mean range by 3; three standard deviations are 2.66 mean ranges.";
            "3.267": base - range * 3.267 => "You used 3.267, which limits the ranges; the readings take 2.66.";
            "factor left out": base - range => "You left out the 2.66.";
            "upper": base + range * Factor::Rounded.value() => "You gave the upper limit.";
        },
    }
    .limits("below nought it says nothing"),
    relation! {
        "vibrate.control_verdict/limits": "Verdict against the control limits",
        "vibrate.control_verdict": Choice = beyond(now, upper, lower),
        from {
            now: Velocity = "vibrate.velocity", upper: Velocity = "vibrate.control_upper",
            lower: Velocity = "vibrate.control_lower",
        },
        formula [],
        source Source::published("NIST/SEMATECH e-Handbook of Statistical Methods", "6.3.1 (as quoted)"),
        turns {
            "severity limit" with { bc: Velocity = "vibrate.limit_bc" }: Choice(u16::from(now > bc)) => "You used the severity limit; a reading can be far inside it and still signal a change of this machine.";
            "fall ignored": Choice(u16::from(now > upper)) => "You let a fall pass; below the lower limit is a signal too.";
            "mean as limit" with { base: Velocity = "vibrate.baseline" }: Choice(u16::from(now > base)) => "You held the reading against the mean; half of all readings lie above it.";
        },
    }
    .method("a reading strictly beyond a limit signals; one on the limit does not"),
    relation! {
        "vibrate.days_left/line": "Days to the limit by a straight line",
        "vibrate.days_left": Time = left([(t1, y1), (t2, y2), (t3, y3)], Shape::Line, limit, t3),
        from {
            t1: Time = "vibrate.day_1", t2: Time = "vibrate.day_2", t3: Time = "vibrate.day_3",
            y1: Velocity = "vibrate.trend_1", y2: Velocity = "vibrate.trend_2", y3: Velocity = "vibrate.trend_3",
            limit: Velocity = "vibrate.limit_bc",
        },
        formula [],
        source Derived("least squares"),
        turns {
            "from the first": left([(t1, y1), (t2, y2), (t3, y3)], Shape::Line, limit, t1) => "You counted from the first reading; what is left counts from the last.";
            "from nought": left([(t1, y1), (t2, y2), (t3, y3)], Shape::Line, limit, t1 * 0.0) => "You counted from day nought; what is left counts from the last reading.";
            "last two": left([(t2, y2), (t3, y3)], Shape::Line, limit, t3) => "You drew the line through the last two readings; all three count.";
            "limit over slope": left([(t1, y1), (t2, y2), (t3, y3)], Shape::Line, y3 + limit, t3) => "You divided the whole limit by the growth a day; only what is left up to the limit counts.";
            "limit C to D" with { cd: Velocity = "vibrate.limit_cd" }: left([(t1, y1), (t2, y2), (t3, y3)], Shape::Line, cd, t3) => "You went on to the limit between C and D; plan for the limit between B and C.";
            "exponential": left([(t1, y1), (t2, y2), (t3, y3)], Shape::Exponential, limit, t3) => "You let it grow by equal shares; the straight line was asked.";
        },
    }
    .method("fit a straight line by least squares, see when it meets the limit, and take the last reading's day off")
    .limits("readings that rise, after run-in; the further it reaches beyond them, the less it is worth")
    .question(),
    relation! {
        "vibrate.days_left_growing/exponential": "Days to the limit by exponential growth",
        "vibrate.days_left_growing": Time = left([(t1, y1), (t2, y2), (t3, y3)], Shape::Exponential, limit, t3),
        from {
            t1: Time = "vibrate.day_1", t2: Time = "vibrate.day_2", t3: Time = "vibrate.day_3",
            y1: Velocity = "vibrate.trend_1", y2: Velocity = "vibrate.trend_2", y3: Velocity = "vibrate.trend_3",
            limit: Velocity = "vibrate.limit_bc",
        },
        formula [],
        source Derived("least squares through the logarithms"),
        turns {
            "straight line": left([(t1, y1), (t2, y2), (t3, y3)], Shape::Line, limit, t3) => "You drew a straight line; a defect that spreads grows by equal shares and is there sooner.";
            "from the first": left([(t1, y1), (t2, y2), (t3, y3)], Shape::Exponential, limit, t1) => "You counted from the first reading; what is left counts from the last.";
            "from nought": left([(t1, y1), (t2, y2), (t3, y3)], Shape::Exponential, limit, t1 * 0.0) => "You counted from day nought; what is left counts from the last reading.";
            "limit C to D" with { cd: Velocity = "vibrate.limit_cd" }: left([(t1, y1), (t2, y2), (t3, y3)], Shape::Exponential, cd, t3) => "You went on to the limit between C and D; plan for the limit between B and C.";
        },
    }
    .method("fit a straight line to the logarithms of the readings, see when it meets the limit's, and take the last reading's day off")
    .limits("readings that rise, after run-in; usual as a defect spreads")
    .question(),
    relation! {
        "vibrate.doubling/exponential": "Time in which the readings double",
        "vibrate.doubling": Time = doubling([(t1, y1), (t2, y2), (t3, y3)]),
        from {
            t1: Time = "vibrate.day_1", t2: Time = "vibrate.day_2", t3: Time = "vibrate.day_3",
            y1: Velocity = "vibrate.trend_1", y2: Velocity = "vibrate.trend_2", y3: Velocity = "vibrate.trend_3",
        },
        formula [],
        source Derived("least squares through the logarithms"),
        turns {
            "straight line": fit_line([(t1, y1), (t2, y2), (t3, y3)])?.time_to(y1 * 2.0, t1) => "You drew a straight line to twice the first reading; growth by equal shares doubles again and again in the same time.";
            "last two": doubling([(t2, y2), (t3, y3)]) => "You went by the last two readings; all three count.";
            "first two": doubling([(t1, y1), (t2, y2)]) => "You went by the first two readings; all three count.";
            "e-fold": doubling([(t1, y1), (t2, y2), (t3, y3)]).map(|t| t / core::f64::consts::LN_2) => "You left out ln 2; one over the growth is the time to become 2.718 times as large.";
            "tenfold": doubling([(t1, y1), (t2, y2), (t3, y3)]).map(|t| t * core::f64::consts::LOG2_10) => "You gave the time to become ten times as large.";
            "halved": doubling([(t1, y1), (t2, y2), (t3, y3)]).map(|t| t / 2.0) => "You gave half of it, the time to become 1.41 times as large.";
            "to the limit" with { limit: Velocity = "vibrate.limit_bc" }: left([(t1, y1), (t2, y2), (t3, y3)], Shape::Exponential, limit, t3) => "You gave the time up to the limit; the time in which the readings double is asked.";
        },
    }
    .method("fit a straight line to the natural logarithms of the readings; 0.693 over its rise for each day is the number of days")
    .limits("readings that rise, after run-in; half of it is a fair time to the next reading (common practice)")
    .question(),
];
