//! Thermal growth, the cold target, and the change of shims that allows for it.

use drivecourse_calc::Error;
use drivecourse_calc::align::Line;
use drivecourse_calc::align::growth::{cold_target, growth};
use drivecourse_calc::heat::rise::{rise, surface};
use drivecourse_calc::units::{
    Length, Ratio, Temperature, TemperatureCoefficient, TemperatureRise, temperature_interval,
    thermodynamic_temperature,
};

use super::{TRIANGLES, line, way};
use crate::relation::{Relation, relation};
use crate::source::Source::{self, CommonPractice};
use crate::typed::{Choice, Slope};

const COEFFICIENT: Source = Source::Derived("definition of the expansion coefficient");

fn thirty_two() -> TemperatureRise {
    TemperatureRise::new::<temperature_interval::degree_fahrenheit>(32.0)
}

fn reading_c(t: Temperature) -> TemperatureRise {
    rise(t, Temperature::new::<thermodynamic_temperature::degree_celsius>(0.0))
}

fn reading_f(t: Temperature) -> TemperatureRise {
    rise(t, Temperature::new::<thermodynamic_temperature::degree_fahrenheit>(0.0))
}

/// Cold target at one place, both lines taken level there.
fn target(stationary: Length, movable: Length) -> Result<Length, Error> {
    let level = |offset| line(offset, Slope(Ratio::default()));
    cold_target(&level(stationary), &level(movable)).map(|target| target.offset)
}

/// Change that brings a shaft from where its move would put it in line to the target.
fn shims(moved: Length, target: Length) -> Length {
    let none = Length::default();
    Line { offset: target, ..Line::default() }.at(none) - Line { offset: -moved, ..Line::default() }.at(none)
}

macro_rules! grown {
    ($id:literal, $title:literal, $gives:literal, $alpha:literal, $other:literal, $height:literal, $wrong:literal, $warm:literal) => {
        relation! {
            $id: $title,
            $gives: Length = growth(h, a, rise(t, t0)),
            from {
                a: TemperatureCoefficient = $alpha, h: Length = $height, t: Temperature = $warm,
                t0: Temperature = "heat.ambient",
            },
            formula [
                "L[mm] = a[µm/(m·°C)] * h[mm] * (t[°C] - t0[°C]) / 1000000",
                "L[in] = a[µin/(in·°F)] * h[in] * (t[°F] - t0[°F]) / 1000000",
            ],
            source COEFFICIENT,
            turns {
                "°F with a coefficient per °C" in Us: growth(h, 1.8 * a, rise(t, t0)) => "You multiplied a rise in °F by a coefficient per °C; that comes out 1.8 times too large.";
                "°C with a coefficient per °F" in Si: growth(h, a / 1.8, rise(t, t0)) => "You multiplied a rise in °C by a coefficient per °F; that comes out 1.8 times too small.";
                "32 taken off" in Us: growth(h, a, rise(t, t0) - thirty_two()) => "You took 32 off a temperature difference; the 32 belongs to readings and falls out of a difference.";
                "32 added" in Us: growth(h, a, rise(t, t0) + thirty_two()) => "You added 32 to a temperature difference; the 32 belongs to readings and falls out of a difference.";
                "°C reading" in Si: growth(h, a, reading_c(t)) => "You used the warm temperature itself; growth goes with the rise over the temperature at which it was lined up.";
                "°F reading" in Us: growth(h, a, reading_f(t)) => "You used the warm temperature itself; growth goes with the rise over the temperature at which it was lined up.";
                "wrong height" with { o: Length = $wrong }: growth(o, a, rise(t, t0)) => "You used the height of the other machine; each grows over its own height from feet to shaft.";
                "wrong coefficient" with { o: TemperatureCoefficient = $other }: growth(h, o, rise(t, t0)) => "You used the coefficient of the other machine; each goes by its own material.";
                "halved": growth(h / 2.0, a, rise(t, t0)) => "You halved the height; the shaft rises by the growth of the whole height from the feet.";
            },
        }
        .limits("one temperature over the whole height from feet to shaft, read on the metal; lined up at ambient temperature")
    };
}

macro_rules! warm {
    ($id:literal, $title:literal, $gives:literal, $rise:literal) => {
        relation! {
            $id: $title,
            $gives: Temperature = surface(t0, d),
            from { t0: Temperature = "heat.ambient", d: TemperatureRise = $rise },
            formula ["T[°C] = t0[°C] + d[°C]", "T[°F] = t0[°F] + d[°F]"],
            source Source::Derived("definition of a rise"),
            turns {},
        }
        .model()
    };
}

macro_rules! cold {
    ($id:literal, $title:literal, $gives:literal, $own:literal, $swapped:literal) => {
        relation! {
            $id: $title,
            $gives: Length = target(g, d),
            from { g: Length = "align.growth_reducer", d: Length = $own },
            formula ["k = g - d"],
            source TRIANGLES,
            turns {
                "wrong sign": target(d, g) => "You set it the wrong way; the machine that grows more is set low when cold.";
                "own growth only": target(Length::default(), d) => "You allowed for the motor's growth only; the reducer grows too, and the difference counts.";
                "reducer's growth only": target(g, Length::default()) => "You allowed for the reducer's growth only; the motor grows too, and the difference counts.";
                "added": target(g, -d) => "You added the two growths; both shafts rise, so their difference counts.";
                "other end" with { o: Length = $swapped }: target(g, o) => "You used the growth at the other pair of feet; front and rear each have their own.";
            },
        }
        .limits("positive: the motor's shaft is set high when cold; the reducer grows alike at both ends")
    };
}

macro_rules! change {
    ($id:literal, $title:literal, $gives:literal, $moved:literal, $target:literal, $swapped:literal) => {
        relation! {
            $id: $title,
            $gives: Length = shims(u, k),
            from { u: Length = $moved, k: Length = $target },
            formula ["h = u + k"],
            source TRIANGLES,
            turns {
                "growth left out": shims(u, Length::default()) => "You brought the shafts in line cold; they grow apart when warm, so go on to the cold target.";
                "growth the wrong way": shims(u, -k) => "You took the cold target off; a shaft that is to stand high when cold needs more under its feet.";
                "target alone": shims(Length::default(), k) => "You allowed for growth only; the shaft must first be brought from where it stands.";
                "wrong sign": shims(-u, k) => "You turned the sign of the move; a shaft that stands high comes down.";
                "other feet" with { o: Length = $swapped }: shims(o, k) => "You used the move of the other pair of feet; front and rear each have their own.";
            },
        }
        .limits("positive: add shims; both feet of the pair alike, soft foot put right first")
    };
}

macro_rules! shim_way {
    ($id:literal, $title:literal, $gives:literal, $change:literal, $cold:literal) => {
        relation! {
            $id: $title,
            $gives: Choice = way(h, least),
            from { h: Length = $change, least: Length = "align.shim_least" },
            formula [],
            source CommonPractice,
            turns {
                "wrong way": way(-h, least) => "You went the wrong way; a positive change raises the feet, so shims are added.";
                "growth left out" with { u: Length = $cold }: way(u, least) => "You left growth out; the feet go to the cold target, not to where the shafts are in line cold.";
            },
        }
        .method("A change no larger than the thinnest one worth making is left. Otherwise positive adds shims, negative takes them out.")
        .limits("few thick leaves rather than many thin ones")
    };
}

pub(super) const RELATIONS: &[Relation] = &[
    warm!(
        "align.front_warm/rise",
        "Temperature of the motor at its front feet",
        "align.front_warm",
        "align.front_rise"
    ),
    warm!("align.rear_warm/rise", "Temperature of the motor at its rear feet", "align.rear_warm", "align.rear_rise"),
    grown!(
        "align.growth_front/warm",
        "Growth of the motor at its front feet",
        "align.growth_front",
        "align.motor_expansion",
        "align.reducer_expansion",
        "align.motor_height",
        "align.reducer_height",
        "align.front_warm"
    ),
    grown!(
        "align.growth_rear/warm",
        "Growth of the motor at its rear feet",
        "align.growth_rear",
        "align.motor_expansion",
        "align.reducer_expansion",
        "align.motor_height",
        "align.reducer_height",
        "align.rear_warm"
    ),
    grown!(
        "align.growth_reducer/housing",
        "Growth of the reducer's shaft",
        "align.growth_reducer",
        "align.reducer_expansion",
        "align.motor_expansion",
        "align.reducer_height",
        "align.motor_height",
        "heat.housing"
    ),
    cold!(
        "align.target_front/growth",
        "Cold target over the front feet",
        "align.target_front",
        "align.growth_front",
        "align.growth_rear"
    ),
    cold!(
        "align.target_rear/growth",
        "Cold target over the rear feet",
        "align.target_rear",
        "align.growth_rear",
        "align.growth_front"
    ),
    change!(
        "align.shim_front/cold target",
        "Change of shims under the front feet",
        "align.shim_front",
        "align.move_front_v",
        "align.target_front",
        "align.move_rear_v"
    ),
    change!(
        "align.shim_rear/cold target",
        "Change of shims under the rear feet",
        "align.shim_rear",
        "align.move_rear_v",
        "align.target_rear",
        "align.move_front_v"
    ),
    shim_way!(
        "align.way_front_v/sign",
        "What to do with the shims under the front feet",
        "align.way_front_v",
        "align.shim_front",
        "align.move_front_v"
    ),
    shim_way!(
        "align.way_rear_v/sign",
        "What to do with the shims under the rear feet",
        "align.way_rear_v",
        "align.shim_rear",
        "align.move_rear_v"
    ),
];
