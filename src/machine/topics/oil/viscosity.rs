//! Viscosity at running temperature: from two readings, and from a grade and its index.

use drivecourse_calc::Error;
use drivecourse_calc::oil::choice::viscosity_at;
use drivecourse_calc::oil::grade::Grade;
use drivecourse_calc::units::{KinematicViscosity, Ratio, Temperature};

use super::grade::graded;
use super::{at_100, celsius, log_celsius, log_fahrenheit, log_kelvin, misplaced, oil_curve, one_log, straight};
use crate::Source;
use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};
use crate::typed::{Choice, Typed};

pub(super) const WINDOW: &[&str] = &["inside the window", "too thin", "too thick"];

const D341: Source = Source::published("ASTM D341 (as quoted on a reference page)", "short form after Walther");

/// A value that misses a limit by less than this share of it meets it: the rest is rounding in the last digits.
const ROUNDING: f64 = 1e-9;

fn window(v: KinematicViscosity, least: KinematicViscosity, most: KinematicViscosity) -> Choice {
    let v = v.base();
    Choice(if v < least.base() * (1.0 - ROUNDING) {
        1
    } else if v > most.base() * (1.0 + ROUNDING) {
        2
    } else {
        0
    })
}

/// A grade's middle and what it has thinned to at 100 °C.
fn ends(grade: &Grade, index: Ratio) -> Result<(KinematicViscosity, KinematicViscosity), Error> {
    Ok((grade.middle(), at_100(grade.middle(), index)?))
}

/// Where a straight line over plain degrees reaches a viscosity.
fn straight_to(a: KinematicViscosity, b: KinematicViscosity, v: KinematicViscosity) -> Temperature {
    let [from, to] = super::SAMPLED;
    celsius(from + (to - from) * ((a - v) / (a - b)).value)
}

/// Where a straight line with one logarithm instead of two reaches a viscosity.
fn one_log_to(a: KinematicViscosity, b: KinematicViscosity, v: KinematicViscosity) -> Temperature {
    use drivecourse_calc::math::{exp, ln};
    let [from, to] = super::SAMPLED.map(|t| log_kelvin(celsius(t)));
    let place = ln((a / v).value) / ln((a / b).value);
    super::kelvins(exp(from + (to - from) * place))
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "oil.sample_40/fill": "Viscosity of the fill at 40 °C",
        "oil.sample_40": KinematicViscosity = graded(plate).map(|grade| grade.middle() * k.base()),
        from { plate: Choice = "oil.plate_grade", k: Ratio = "oil.fill_share" },
        formula [],
        source Derived("definition of the share"),
        turns {},
    }
    .method("The middle of the plate's grade, times the share by which the fill is thicker or thinner.")
    .model(),
    relation! {
        "oil.wanted_least/window": "Least viscosity wanted",
        "oil.wanted_least": KinematicViscosity = graded(plate).map(|grade| grade.middle() * k.base()),
        from { plate: Choice = "oil.plate_grade", k: Ratio = "oil.least_share" },
        formula [],
        source Derived("definition of the share"),
        turns {},
    }
    .method("The middle of the plate's grade, times the share to which the maker lets it thin.")
    .model(),
    relation! {
        "oil.wanted_most/window": "Greatest viscosity wanted",
        "oil.wanted_most": KinematicViscosity = graded(plate).map(|grade| grade.middle() * k.base()),
        from { plate: Choice = "oil.plate_grade", k: Ratio = "oil.most_share" },
        formula [],
        source Derived("definition of the share"),
        turns {},
    }
    .method("The middle of the plate's grade, times the share to which the maker lets it thicken.")
    .model(),
    relation! {
        "oil.sample_100/index": "Viscosity of the fill at 100 °C",
        "oil.sample_100": KinematicViscosity = at_100(v, vi),
        from { v: KinematicViscosity = "oil.sample_40", vi: Ratio = "oil.index" },
        formula [],
        source Source::published("ASTM D2270", "sections 5 and 6, worked backwards"),
        turns {},
    }
    .method("The viscosity at 100 °C that gives the index of the data sheet, found by halving.")
    .model(),
    relation! {
        "oil.running/two readings": "Viscosity at running temperature from two readings",
        "oil.running": KinematicViscosity = oil_curve(v40, v100)?.at(t),
        from {
            v40: KinematicViscosity = "oil.sample_40", v100: KinematicViscosity = "oil.sample_100",
            t: Temperature = "heat.housing",
        },
        formula [
            "v[mm²/s] = 10^(10^(log10(log10(v40[mm²/s] + 0.7)) + (log10(log10(v100[mm²/s] + 0.7)) - log10(log10(v40[mm²/s] + 0.7))) * log10(t[K] / 313.15) / log10(373.15 / 313.15))) - 0.7",
            "v[cSt] = 10^(10^(log10(log10(v40[cSt] + 0.7)) + (log10(log10(v100[cSt] + 0.7)) - log10(log10(v40[cSt] + 0.7))) * log10(t[K] / 313.15) / log10(373.15 / 313.15))) - 0.7",
        ],
        source D341,
        turns {
            "straight line": straight(v40, v100, t) => "You drew a straight line between the two viscosities; oil thins steeply at first, and only log log of the viscosity over log of the kelvins is straight.";
            "Celsius for kelvin": oil_curve(v40, v100)?.at(misplaced(t, log_celsius)?) => "You took the logarithm of degrees Celsius; add 273.15 first, the chart is in kelvin.";
            "Fahrenheit for absolute" in Us: oil_curve(v40, v100)?.at(misplaced(t, log_fahrenheit)?) => "You took the logarithm of degrees Fahrenheit; change to kelvin first (or add 459.67).";
            "one logarithm": one_log(v40, v100, t) => "You took the logarithm of the viscosity once; it is taken twice.";
            "ambient" with { a: Temperature = "heat.ambient" }: oil_curve(v40, v100)?.at(a) => "You used the ambient temperature; the oil runs as warm as the housing.";
            "reading at 40 °C": v40 => "You gave the viscosity at 40 °C (104 °F); the oil runs hotter than that and is thinner.";
            "reading at 100 °C": v100 => "You gave the viscosity at 100 °C (212 °F); the oil does not run that hot.";
        },
    }
    .limits("between and near the two readings, 2 mm²/s and more; the housing's temperature stands for the oil's"),
    relation! {
        "oil.grade_running/grade and index": "Viscosity of the plate's grade at running temperature",
        "oil.grade_running": KinematicViscosity = graded(g).and_then(|grade| viscosity_at(grade, vi, t)),
        from { g: Choice = "oil.plate_grade", vi: Ratio = "oil.index", t: Temperature = "heat.housing" },
        formula [],
        source Source::published("ISO 3448, ASTM D2270 and ASTM D341 (as quoted on a reference page)", "middle of the grade, index, line"),
        turns {
            "grade's own number": graded(g).map(Grade::middle) => "You gave the grade's own number; it holds at 40 °C (104 °F), and the oil runs hotter.";
            "straight line": graded(g).and_then(|grade| ends(grade, vi)).map(|(a, b)| straight(a, b, t)) => "You went in a straight line from 40 to 100 °C (104 to 212 °F); oil thins steeply at first.";
            "Celsius for kelvin": graded(g).and_then(|grade| viscosity_at(grade, vi, misplaced(t, log_celsius)?)) => "You took the logarithm of degrees Celsius; add 273.15 first, the chart is in kelvin.";
            "ambient" with { a: Temperature = "heat.ambient" }: graded(g).and_then(|grade| viscosity_at(grade, vi, a)) => "You used the ambient temperature; the oil runs as warm as the housing.";
            "viscosity at 100 °C": graded(g).and_then(|grade| ends(grade, vi)).map(|(_, b)| b) => "You gave the viscosity at 100 °C (212 °F); the oil does not run that hot.";
            "index 0": graded(g).and_then(|grade| viscosity_at(grade, vi * 0.0, t)) => "You used the steepest oil there is, index 0; take the line of the index on the data sheet.";
        },
    }
    .method("On the viscosity chart: through the grade's number at 40 °C (104 °F) draw the line of the oil's index, and read it at the running temperature.")
    .limits("middle of the grade; the oil of one drum may lie 10 % either side")
    .lookup(),
    relation! {
        "oil.window_verdict/window": "Verdict on the viscosity at running temperature",
        "oil.window_verdict": Choice = window(v, least, most),
        from {
            v: KinematicViscosity = "oil.running", least: KinematicViscosity = "oil.wanted_least",
            most: KinematicViscosity = "oil.wanted_most",
        },
        formula [],
        source CommonPractice,
        turns {
            "at 40 °C" with { v40: KinematicViscosity = "oil.sample_40" }: window(v40, least, most) => "You held the viscosity at 40 °C (104 °F) against the window; the window is meant for the running temperature.";
            "at 100 °C" with { v100: KinematicViscosity = "oil.sample_100" }: window(v100, least, most) => "You held the viscosity at 100 °C (212 °F) against the window; the window is meant for the running temperature.";
            "turned round": Choice([0, 2, 1][usize::from(window(v, least, most).0).min(2)]) => "You mixed up thin and thick; a small viscosity is a thin oil.";
        },
    }
    .method("Hold the viscosity at running temperature against both ends of the window; right on an end is inside.")
    .limits("the window of the maker's manual"),
    relation! {
        "oil.thin_at/two readings": "Temperature at which the oil is just thick enough",
        "oil.thin_at": Temperature = oil_curve(v40, v100)?.temperature(v),
        from {
            v40: KinematicViscosity = "oil.sample_40", v100: KinematicViscosity = "oil.sample_100",
            v: KinematicViscosity = "oil.wanted_least",
        },
        formula [
            "t[K] = 313.15 * (373.15 / 313.15)^((log10(log10(v40[mm²/s] + 0.7)) - log10(log10(v[mm²/s] + 0.7))) / (log10(log10(v40[mm²/s] + 0.7)) - log10(log10(v100[mm²/s] + 0.7))))",
            "t[K] = 313.15 * (373.15 / 313.15)^((log10(log10(v40[cSt] + 0.7)) - log10(log10(v[cSt] + 0.7))) / (log10(log10(v40[cSt] + 0.7)) - log10(log10(v100[cSt] + 0.7))))",
        ],
        source D341,
        turns {
            "straight line": straight_to(v40, v100, v) => "You drew a straight line between the two viscosities; only log log of the viscosity over log of the kelvins is straight.";
            "one logarithm": one_log_to(v40, v100, v) => "You took the logarithm of the viscosity once; it is taken twice.";
            "kelvin" : super::celsius(oil_curve(v40, v100)?.temperature(v)?.value) => "You gave kelvin as degrees; take 273.15 off to get degrees Celsius.";
            "greatest viscosity" with { most: KinematicViscosity = "oil.wanted_most" }: oil_curve(v40, v100)?.temperature(most) => "You used the greatest viscosity; the oil gets too thin at the least one.";
            "now running" with { t: Temperature = "heat.housing" }: t => "You gave the temperature at which it runs now; the question is how hot it may get.";
        },
    }
    .limits("near the two readings; what lies far outside them is a guess"),
];

#[cfg(test)]
mod tests {
    use super::*;
    use drivecourse_calc::units::kinematic_viscosity::centistokes;

    /// A line over degrees Celsius meets the true one at both readings and leaves it between them.
    #[test]
    fn the_wrong_chart_differs_between_the_readings() {
        let cst = KinematicViscosity::new::<centistokes>;
        let oil = oil_curve(cst(220.0), cst(18.7)).unwrap();
        for t in [40.0, 100.0] {
            let wrong = oil.at(misplaced(celsius(t), log_celsius).unwrap()).unwrap();
            approx::assert_relative_eq!(wrong.value, oil.at(celsius(t)).unwrap().value, max_relative = 1e-9);
        }
        let wrong = oil.at(misplaced(celsius(65.0), log_celsius).unwrap()).unwrap();
        assert!(wrong.value < 0.85 * oil.at(celsius(65.0)).unwrap().value);
        assert!(misplaced(celsius(-5.0), log_celsius).is_err());
    }
}
