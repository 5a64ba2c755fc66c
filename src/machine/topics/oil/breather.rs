//! The breather: what a blocked one does to the pressure, and how it shows.

use drivecourse_calc::Error;
use drivecourse_calc::oil::breather::{gauge_rise, gauge_rise_with_oil, sealed_pressure};
use drivecourse_calc::oil::level::Sump;
use drivecourse_calc::units::{Area, Length, Pressure, Temperature, Volume};

use super::{c_as_kelvin, f_as_absolute};
use crate::Source;
use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};
use crate::typed::{Choice, Typed};

pub(super) const STATES: &[&str] = &["open", "blocked"];

const BLOCKED: Choice = Choice(1);

const GAS: Source = Derived("perfect-gas law, absolute pressures and temperatures");

fn judged(p: Pressure, limit: Pressure) -> Choice {
    // A hair of room: a reading on the limit is on it in either system of units.
    Choice(u16::from(p.base() > limit.base() * (1.0 + 1e-9)))
}

/// Volume between two heights of the sump.
fn between(area: Area, low: Length, high: Length) -> Result<Volume, Error> {
    let nought = Length::from_base(0.0);
    Sump { area, below_datum: Volume::from_base(0.0), low_mark: nought, high_mark: nought }.top_up(low, high)
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "oil.air_gauge/air alone": "Gauge pressure behind a blocked breather, air alone",
        "oil.air_gauge": Pressure = gauge_rise(p, a, t),
        from { p: Pressure = "oil.atmosphere", a: Temperature = "heat.ambient", t: Temperature = "heat.housing" },
        formula [
            "P[kPa] = p[kPa] * (t[K] / a[K] - 1)",
            "P[psi] = p[psi] * ((t[°F] + 459.67) / (a[°F] + 459.67) - 1)",
        ],
        source GAS,
        turns {
            "Celsius" in Si: gauge_rise(p, c_as_kelvin(a), c_as_kelvin(t)) => "You divided degrees Celsius; a gas goes by absolute temperature, so add 273.15 first.";
            "Fahrenheit" in Us: gauge_rise(p, f_as_absolute(a), f_as_absolute(t)) => "You divided degrees Fahrenheit; a gas goes by absolute temperature, so add 459.67 first.";
            "absolute pressure": sealed_pressure(p, a, t) => "You gave the absolute pressure; a gauge shows what is above the air outside, so take that off.";
            "gauge pressure at the start": p * 0.0 => "You started from nought on the gauge; the law wants absolute pressures, and the air was shut in at that of the air outside.";
            "over the hot temperature": -gauge_rise(p, t, a)? => "You divided by the hot temperature; the air was shut in at the cold one.";
            "share of the rise" in Us: gauge_rise(p, a, t).map(|g| g * 1.8) => "You added 273 to degrees Fahrenheit, or mixed the scales; keep rise and absolute temperature in one scale.";
        },
    }
    .limits("air shut in cold and warmed at a steady volume; the oil's own growth comes on top"),
    relation! {
        "oil.air_space/cover": "Air space over the cold oil",
        "oil.air_space": Volume = between(a, h, top),
        from { a: Area = "oil.sump_area", h: Length = "oil.cold_level", top: Length = "oil.cover_height" },
        formula ["V[L] = a[m²] * (top[mm] - h[mm])", "V[US gal] = a[in²] * (top[in] - h[in]) / 231"],
        source Derived("volume of an upright prism"),
        turns {
            "whole height": a * top => "You took the whole height for air; the oil fills it up to its level.";
            "oil for air": a * h => "You gave the oil above nought of the scale; the air is above the level.";
            "hot level" with { hot: Length = "oil.hot_level" }: a * (top - hot) => "You used the hot level; the air was shut in over cold oil.";
        },
    }
    .limits("straight walls, what the gears take up left out of the area"),
    relation! {
        "oil.sealed_gauge/air and oil": "Gauge pressure behind a blocked breather, air and oil",
        "oil.sealed_gauge": Pressure = gauge_rise_with_oil(p, a, t, v, g),
        from {
            p: Pressure = "oil.atmosphere", a: Temperature = "heat.ambient", t: Temperature = "heat.housing",
            v: Volume = "oil.air_space", g: Volume = "oil.growth",
        },
        formula [
            "P[kPa] = p[kPa] * (t[K] / a[K] * v[L] / (v[L] - g[L]) - 1)",
            "P[psi] = p[psi] * ((t[°F] + 459.67) / (a[°F] + 459.67) * v[US gal] / (v[US gal] - g[US gal]) - 1)",
        ],
        source GAS,
        turns {
            "air alone": gauge_rise(p, a, t) => "You let the oil keep its volume; it grows as well and squeezes the air.";
            "air stretched": gauge_rise_with_oil(p, a, t, v, -g) => "You let the air space grow by the oil's growth; it shrinks by it.";
            "oil for air" with { oil: Volume = "oil.cold_volume" }: gauge_rise_with_oil(p, a, t, oil, g) => "You put the oil's volume where the air space belongs.";
            "Celsius" in Si: gauge_rise_with_oil(p, c_as_kelvin(a), c_as_kelvin(t), v, g) => "You divided degrees Celsius; a gas goes by absolute temperature, so add 273.15 first.";
            "Fahrenheit" in Us: gauge_rise_with_oil(p, f_as_absolute(a), f_as_absolute(t), v, g) => "You divided degrees Fahrenheit; a gas goes by absolute temperature, so add 459.67 first.";
            "absolute pressure": gauge_rise_with_oil(p, a, t, v, g).map(|gauge| gauge + p) => "You gave the absolute pressure; a gauge shows what is above the air outside.";
        },
    }
    .limits("shut in cold; a seal that lets go keeps it lower"),
    relation! {
        "oil.gauge/breather": "Gauge pressure in the housing",
        "oil.gauge": Pressure = if state == BLOCKED { sealed } else { sealed * 0.0 },
        from { state: Choice = "oil.breather", sealed: Pressure = "oil.sealed_gauge" },
        formula [],
        source Derived("an open breather lets the pressures inside and outside become equal"),
        turns {},
    }
    .method("Nought while the breather is open, the sealed pressure when it is blocked.")
    .model(),
    relation! {
        "oil.breather_verdict/gauge": "Verdict on the breather",
        "oil.breather_verdict": Choice = judged(p, limit),
        from { p: Pressure = "oil.gauge", limit: Pressure = "oil.gauge_limit" },
        formula [],
        source CommonPractice,
        turns {
            "absolute pressure" with { out: Pressure = "oil.atmosphere" }: judged(p + out, limit) => "You judged the absolute pressure; the gauge already leaves out that of the air outside.";
            "as foretold" with { sealed: Pressure = "oil.sealed_gauge" }: judged(sealed, limit) => "You judged the pressure that a blocked breather would give; the gauge says what is there.";
            "below the sealed pressure" with { sealed: Pressure = "oil.sealed_gauge" }: judged(p, sealed) => "You let anything up to the full sealed pressure pass; an open breather leaves hardly any pressure at all.";
        },
    }
    .method("Compare the gauge with the greatest pressure that an open breather leaves; right on it counts as open.")
    .limits("at running temperature; a gauge fitted while the unit was cold and locked out"),
];
