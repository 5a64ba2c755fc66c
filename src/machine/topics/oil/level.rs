//! Oil level: cold against the marks, what warming does to it, and how much to add.

use drivecourse_calc::Error;
use drivecourse_calc::oil::expansion::{coefficient, expanded};
use drivecourse_calc::oil::level::{Stand, Sump, level_change};
use drivecourse_calc::units::{
    Area, Length, MassDensity, Ratio, Temperature, TemperatureCoefficient, TemperatureRise, Volume,
    temperature_interval, thermodynamic_temperature,
};

use crate::Source;
use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};
use crate::typed::{Choice, Typed};

pub(super) const VERDICTS: &[&str] = &["between the marks", "low", "overfull"];

const PRISM: Source = Derived("volume of an upright prism");

/// A millionth of a millimetre: a level nearer than this to a mark stands on it.
const ROUNDING: f64 = 1e-9;

/// The sump, its marks left out.
fn sump(area: Area, below_datum: Volume) -> Sump {
    Sump { area, below_datum, low_mark: Length::from_base(0.0), high_mark: Length::from_base(0.0) }
}

fn stand(level: Length, low: Length, high: Length) -> Result<Choice, Error> {
    // The area does not matter to where a level stands.
    let marks = Sump {
        area: Area::from_base(1.0),
        below_datum: Volume::from_base(0.0),
        low_mark: Length::from_base(low.base() - ROUNDING),
        high_mark: Length::from_base(high.base() + ROUNDING),
    };
    Ok(Choice(match marks.stand(level)? {
        Stand::Between => 0,
        Stand::Low => 1,
        Stand::High => 2,
    }))
}

fn growth(v: Volume, beta: TemperatureCoefficient, d: TemperatureRise) -> Result<Volume, Error> {
    Ok(expanded(v, beta, d)? - v)
}

/// The level that a hot level falls to when the oil has cooled.
fn cooled(
    hot: Length,
    area: Area,
    below: Volume,
    beta: TemperatureCoefficient,
    d: TemperatureRise,
) -> Result<Length, Error> {
    let oil = sump(area, below).volume(hot)?;
    sump(area, below).level(oil * (oil / expanded(oil, beta, d)?).value)
}

/// Degrees Fahrenheit taken for degrees Celsius, and the other way about.
fn too_many(d: TemperatureRise) -> TemperatureRise {
    d * 1.8
}

/// A housing temperature in °C mistaken for a rise.
fn c_as_rise(t: Temperature) -> TemperatureRise {
    TemperatureRise::new::<temperature_interval::kelvin>(super::plain(t))
}

/// The same in °F.
fn f_as_rise(t: Temperature) -> TemperatureRise {
    TemperatureRise::new::<temperature_interval::degree_fahrenheit>(
        t.get::<thermodynamic_temperature::degree_fahrenheit>(),
    )
}

fn half(a: Length, b: Length) -> Length {
    (a + b) / 2.0
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "oil.sump_area/housing": "Plan area of the sump",
        "oil.sump_area": Area = a * b * k,
        from { a: Length = "mount.along", b: Length = "mount.across", k: Ratio = "oil.free_share" },
        formula ["A[m²] = a[m] * b[m] * k[]", "A[in²] = a[in] * b[in] * k[]"],
        source Derived("definition of the share"),
        turns {},
    }
    .model(),
    relation! {
        "oil.cold_level/as filled": "Oil level as filled",
        "oil.cold_level": Length = low + (high - low) * k,
        from { low: Length = "oil.low_mark", high: Length = "oil.high_mark", k: Ratio = "oil.fill_level" },
        formula ["h = low + (high - low) * k[]"],
        source Derived("definition of the share"),
        turns {},
    }
    .model(),
    relation! {
        "oil.target_level/halfway": "Level halfway between the marks",
        "oil.target_level": Length = half(low, high),
        from { low: Length = "oil.low_mark", high: Length = "oil.high_mark" },
        formula ["h = (low + high) / 2"],
        source CommonPractice,
        turns {
            "high mark": high => "You filled to the high mark; leave room and aim halfway between the marks.";
            "other position" with { l: Length = "oil.other_low", h: Length = "oil.other_high" }: half(l, h) => "You used the marks of another mounting position; the same oil stands at another height there.";
            "half the distance": (high - low) / 2.0 => "You gave half the distance between the marks; add it to the low mark.";
            "low mark": low => "You stopped at the low mark; aim halfway between the marks.";
        },
    }
    .limits("cold, at standstill, unit level; the marks of this mounting position"),
    relation! {
        "oil.cold_volume/level": "Volume of oil from its level",
        "oil.cold_volume": Volume = sump(a, below).volume(h),
        from { a: Area = "oil.sump_area", h: Length = "oil.cold_level", below: Volume = "oil.below_datum" },
        formula ["V[L] = below[L] + a[m²] * h[mm]", "V[US gal] = below[US gal] + a[in²] * h[in] / 231"],
        source PRISM,
        turns {
            "below nought left out": a * h => "You left out the oil below nought of the scale; it is in the sump too.";
            "hot level" with { hot: Length = "oil.hot_level" }: sump(a, below).volume(hot) => "You used the hot level; cold oil and cold level belong together.";
            "taken off": a * h - below => "You took the oil below nought of the scale off; add it.";
            "high mark" with { high: Length = "oil.high_mark" }: sump(a, below).volume(high) => "You used the high mark; the volume goes with the level that is read.";
        },
    }
    .limits("straight walls between the marks; read at standstill after the oil has run down"),
    relation! {
        "oil.expansion/density": "Expansion of an oil from its density",
        "oil.expansion": TemperatureCoefficient = coefficient(rho),
        from { rho: MassDensity = "oil.density" },
        formula ["b[1/°C] = 0.6278 / rho[kg/m³]", "b[1/°F] = 0.0029107 / rho[lb/US gal]"],
        source Source::published("API MPMS chapter 11.1 / ASTM D1250-04 (as quoted on a reference page)", "lubricating-oil group"),
        turns {
            "per °F for per °C" in Si: coefficient(rho).map(|b| b / 1.8) => "You used the constant for degrees Fahrenheit with degrees Celsius; an expansion per °C is 1.8 times the one per °F.";
            "per °C for per °F" in Us: coefficient(rho).map(|b| b * 1.8) => "You used the constant for degrees Celsius with degrees Fahrenheit; an expansion per °F is the smaller one.";
        },
    }
    .limits("mineral lubricating oil; the rule of thumb is 0.0007 per °C (0.0004 per °F)"),
    relation! {
        "oil.growth/expansion": "Growth of the oil when it warms",
        "oil.growth": Volume = growth(v, b, d),
        from { v: Volume = "oil.cold_volume", b: TemperatureCoefficient = "oil.expansion", d: TemperatureRise = "heat.rise" },
        formula ["G[L] = v[L] * b[1/°C] * d[°C]", "G[US qt] = 4 * v[US gal] * b[1/°F] * d[°F]"],
        source Derived("definition of the expansion"),
        turns {
            "°F with per °C" in Us: growth(v, b, too_many(d)) => "You multiplied degrees Fahrenheit by an expansion per °C, or changed the rise twice; keep both in one scale.";
            "°C with per °F" in Si: growth(v, b, d / 1.8) => "You multiplied degrees Celsius by an expansion per °F; keep both in one scale.";
            "temperature for rise" in Si with { t: Temperature = "heat.housing" }: growth(v, b, c_as_rise(t)) => "You used the housing temperature; the oil grows with the rise since it was filled.";
            "temperature for rise, °F" in Us with { t: Temperature = "heat.housing" }: growth(v, b, f_as_rise(t)) => "You used the housing temperature; the oil grows with the rise since it was filled.";
            "whole volume": expanded(v, b, d) => "You gave the volume when hot; the growth is what came on top.";
            "scale only" with { below: Volume = "oil.below_datum" }: growth(v - below, b, d) => "You let only the oil above nought of the scale grow; all of it does.";
        },
    }
    .limits("from the temperature at which the level was read cold"),
    relation! {
        "oil.level_gain/area": "Rise of the level when the oil warms",
        "oil.level_gain": Length = level_change(g, a),
        from { g: Volume = "oil.growth", a: Area = "oil.sump_area" },
        formula ["D[mm] = g[L] / a[m²]", "D[in] = 57.75 * g[US qt] / a[in²]"],
        source PRISM,
        turns {
            "whole volume" with { v: Volume = "oil.cold_volume" }: level_change(v + g, a) => "You spread all the oil over the area; only the growth raises the level.";
            "two sides": level_change(g / 2.0, a) => "You halved the growth; all of it rises in the sump.";
        },
    }
    .limits("the housing grows too, about a twentieth as much; that is left out"),
    relation! {
        "oil.hot_level/risen": "Oil level when hot",
        "oil.hot_level": Length = h + g,
        from { h: Length = "oil.cold_level", g: Length = "oil.level_gain" },
        formula ["H = h + g"],
        source Derived("definition of the rise"),
        turns {
            "rise alone": g => "You gave the rise of the level; add the cold level.";
            "taken off": h - g => "You took the rise off; warm oil stands higher.";
            "from the high mark" with { high: Length = "oil.high_mark" }: high + g => "You counted from the high mark; count from the level that was read cold.";
            "from halfway" with { m: Length = "oil.target_level" }: m + g => "You counted from halfway between the marks; count from the level that was read cold.";
        },
    }
    .limits("at standstill, after the oil has run down"),
    relation! {
        "oil.cold_level/from hot": "Cold level behind a hot reading",
        "oil.cold_level": Length = cooled(hot, a, below, b, d),
        from {
            hot: Length = "oil.hot_level", a: Area = "oil.sump_area", below: Volume = "oil.below_datum",
            b: TemperatureCoefficient = "oil.expansion", d: TemperatureRise = "heat.rise",
        },
        formula [
            "H[mm] = ((below[L] + a[m²] * hot[mm]) / (1 + b[1/°C] * d[°C]) - below[L]) / a[m²]",
            "H[in] = 231 * ((below[US gal] + a[in²] * hot[in] / 231) / (1 + b[1/°F] * d[°F]) - below[US gal]) / a[in²]",
        ],
        source PRISM,
        turns {
            "hot level as read": hot => "You took the hot reading for the cold one; it falls as the oil cools.";
            "risen once more": sump(a, below).warmed(hot, b, d) => "You let the level rise; it falls as the oil cools.";
            "°F with per °C" in Us: cooled(hot, a, below, b, too_many(d)) => "You multiplied degrees Fahrenheit by an expansion per °C; keep both in one scale.";
            "temperature for rise" in Si with { t: Temperature = "heat.housing" }: cooled(hot, a, below, b, c_as_rise(t)) => "You used the housing temperature; the oil shrinks with the rise that it loses.";
            "temperature for rise, °F" in Us with { t: Temperature = "heat.housing" }: cooled(hot, a, below, b, f_as_rise(t)) => "You used the housing temperature; the oil shrinks with the rise that it loses.";
        },
    }
    .inverse(),
    relation! {
        "oil.level_verdict/marks": "Verdict on the oil level",
        "oil.level_verdict": Choice = stand(h, low, high),
        from { h: Length = "oil.cold_level", low: Length = "oil.low_mark", high: Length = "oil.high_mark" },
        formula [],
        source CommonPractice,
        turns {
            "other position" with { l: Length = "oil.other_low", u: Length = "oil.other_high" }: stand(h, l, u) => "You used the marks of another mounting position; the same oil stands at another height there.";
            "hot level" with { hot: Length = "oil.hot_level" }: stand(hot, low, high) => "You held the hot level against cold marks; warm oil stands higher than it will when cold.";
            "turned round": Choice([0, 2, 1][usize::from(stand(h, low, high)?.0).min(2)]) => "You mixed up the marks; below the low mark is low.";
        },
    }
    .method("Compare the cold level with both marks of this mounting position; on a mark counts as between them.")
    .limits("cold, at standstill, unit level, the marks of this mounting position"),
    relation! {
        "oil.to_add/area": "Oil to add",
        "oil.to_add": Volume = sump(a, Volume::from_base(0.0)).top_up(h, m),
        from { a: Area = "oil.sump_area", h: Length = "oil.cold_level", m: Length = "oil.target_level" },
        formula ["V[L] = a[m²] * (m[mm] - h[mm])", "V[US qt] = a[in²] * (m[in] - h[in]) / 57.75"],
        source PRISM,
        turns {
            "topped up hot" with { hot: Length = "oil.hot_level" }: a * (m - hot) => "You topped up by the hot level; when the oil has cooled it stands low again.";
            "to the high mark" with { high: Length = "oil.high_mark" }: a * (high - h) => "You filled to the high mark; aim halfway between the marks.";
            "to the low mark" with { low: Length = "oil.low_mark" }: a * (low - h) => "You filled to the low mark only; aim halfway between the marks.";
            "other position" with { l: Length = "oil.other_low", u: Length = "oil.other_high" }: a * (half(l, u) - h) => "You filled to the marks of another mounting position.";
            "whole height": a * m => "You gave all the oil up to that level; only what is missing is added.";
        },
    }
    .limits("level and target cold; the same oil as in the sump; wait and read again"),
    relation! {
        "oil.to_drain/area": "Oil to drain",
        "oil.to_drain": Volume = sump(a, Volume::from_base(0.0)).top_up(m, h),
        from { a: Area = "oil.sump_area", h: Length = "oil.cold_level", m: Length = "oil.target_level" },
        formula ["V[L] = a[m²] * (h[mm] - m[mm])", "V[US qt] = a[in²] * (h[in] - m[in]) / 57.75"],
        source PRISM,
        turns {
            "drained hot" with { hot: Length = "oil.hot_level" }: a * (hot - m) => "You drained by the hot level; when the oil has cooled it stands too low.";
            "to the high mark" with { high: Length = "oil.high_mark" }: a * (h - high) => "You drained to the high mark only; aim halfway between the marks.";
            "other position" with { l: Length = "oil.other_low", u: Length = "oil.other_high" }: a * (h - half(l, u)) => "You drained to the marks of another mounting position.";
            "whole height": a * h => "You gave all the oil up to the level; only what is too much comes out.";
        },
    }
    .limits("level and target cold; drain into a clean vessel, locked out"),
];
