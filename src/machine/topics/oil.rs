//! Oil: grade, viscosity and viscosity index; level cold and hot; breather; oil life.

mod breather;
mod grade;
mod index;
mod level;
mod life;
mod viscosity;

use drivecourse_calc::oil::index::curve;
use drivecourse_calc::oil::viscosity::{Curve, Form};
use drivecourse_calc::units::{KinematicViscosity, Ratio, Temperature, thermodynamic_temperature};
use drivecourse_calc::{Error, math};

use crate::instrument::Figures::{Places, Significant};
use crate::instrument::Instrument::{PressureGauge, SightGlass};
use crate::quantity::Quantity;
use crate::relation::Relation;
use crate::unit::Kind;

/// A viscosity that is worked out.
const fn viscosity(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Viscosity, name)
}

/// A viscosity on a laboratory's report.
const fn reported(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    viscosity(id, symbol, name).shown("mm²/s", Significant(4), "cSt", Significant(4)).plate()
}

/// An end of the window in the maker's manual.
const fn window_end(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    viscosity(id, symbol, name).shown("mm²/s", Significant(2), "cSt", Significant(2)).plate()
}

/// A temperature in whole degrees.
const fn degrees(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Temperature, name).shown("°C", Places(0), "°F", Places(0))
}

/// A height on the scale of the sight glass.
const fn height(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Length, name).shown("mm", Places(0), "in", Places(2))
}

/// A whole sump of oil, or of air.
const fn sump(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Volume, name).shown("L", Significant(3), "US gal", Significant(3))
}

/// A can of oil.
const fn can(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Volume, name).shown("L", Significant(3), "US qt", Significant(3))
}

/// A pressure over that of the air outside.
const fn gauge(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Stress, name).shown("kPa", Significant(3), "psi", Significant(3))
}

/// A share in per cent.
const fn share(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Ratio, name).shown("%", Significant(3), "%", Significant(3))
}

/// A time in hours.
const fn hours(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Time, name).shown("h", Significant(3), "h", Significant(3))
}

pub(super) const QUANTITIES: &[Quantity] = &[
    // Grade and viscosity.
    Quantity::choice("oil.plate_grade", "", "oil grade on the unit's plate", grade::GRADES).plate().built(),
    Quantity::new("oil.fill_share", "k", Kind::Ratio, "viscosity of the fill as a share of its plate grade"),
    Quantity::new("oil.index", "VI", Kind::Ratio, "viscosity index on the data sheet")
        .shown("", Places(0), "", Places(0))
        .plate(),
    reported("oil.sample_40", "ν_40", "viscosity of the sample at 40 °C (104 °F)"),
    reported("oil.sample_100", "ν_100", "viscosity of the sample at 100 °C (212 °F)"),
    viscosity("oil.running", "ν_T", "viscosity at running temperature"),
    viscosity("oil.grade_running", "ν_G", "viscosity of the plate's grade at running temperature"),
    share("oil.least_share", "k_min", "least viscosity wanted, as a share of the plate's grade"),
    share("oil.most_share", "k_max", "greatest viscosity wanted, as a share of the plate's grade"),
    window_end("oil.wanted_least", "ν_min", "least viscosity wanted at running temperature"),
    window_end("oil.wanted_most", "ν_max", "greatest viscosity wanted at running temperature"),
    Quantity::choice("oil.window_verdict", "", "verdict on the viscosity at running temperature", viscosity::WINDOW),
    degrees("oil.thin_at", "T_thin", "temperature at which the oil has thinned to the least viscosity"),
    viscosity("oil.band_least", "ν_a", "least viscosity of the grade at 40 °C (104 °F)").shown(
        "mm²/s",
        Significant(4),
        "cSt",
        Significant(4),
    ),
    viscosity("oil.band_most", "ν_b", "greatest viscosity of the grade at 40 °C (104 °F)").shown(
        "mm²/s",
        Significant(4),
        "cSt",
        Significant(4),
    ),
    Quantity::choice("oil.sample_grade", "", "grade of the sample", grade::SAMPLE_GRADES),
    Quantity::choice("oil.grade_verdict", "", "verdict on the oil that was filled", grade::VERDICTS),
    Quantity::choice("oil.chosen_grade", "", "thinnest grade that serves", grade::GRADES),
    viscosity("oil.reference_l", "L", "viscosity at 40 °C (104 °F) of the reference oil with index 0").shown(
        "mm²/s",
        Significant(4),
        "cSt",
        Significant(4),
    ),
    viscosity("oil.reference_h", "H", "viscosity at 40 °C (104 °F) of the reference oil with index 100").shown(
        "mm²/s",
        Significant(4),
        "cSt",
        Significant(4),
    ),
    Quantity::new("oil.sample_index", "VI_s", Kind::Ratio, "viscosity index of the sample").shown(
        "",
        Places(0),
        "",
        Places(0),
    ),
    // Level.
    Quantity::new("oil.free_share", "k_A", Kind::Ratio, "share of the rectangle between the feet that the oil covers"),
    Quantity::new("oil.sump_area", "A", Kind::Area, "free plan area of the sump").plate(),
    sump("oil.below_datum", "V_0", "oil below nought of the sight glass scale").plate().built(),
    height("oil.low_mark", "h_low", "low mark for the present mounting position").plate().built(),
    height("oil.high_mark", "h_high", "high mark for the present mounting position").plate().built(),
    height("oil.other_low", "h_low2", "low mark for the other mounting position").plate().built(),
    height("oil.other_high", "h_high2", "high mark for the other mounting position").plate().built(),
    height("oil.target_level", "h_m", "level halfway between the marks"),
    share("oil.fill_level", "k_h", "level as filled, as a share of the way from the low to the high mark"),
    height("oil.cold_level", "h_c", "oil level, cold").read(SightGlass),
    sump("oil.cold_volume", "V_c", "volume of oil, cold"),
    Quantity::new("oil.density", "ρ", Kind::Density, "density of the oil at 15 °C (60 °F)").plate(),
    Quantity::new("oil.expansion", "β", Kind::Expansion, "expansion of the oil for each degree"),
    can("oil.growth", "ΔV", "growth of the oil from cold to running temperature"),
    height("oil.level_gain", "Δh", "rise of the level from cold to running temperature").shown(
        "mm",
        Significant(3),
        "in",
        Significant(3),
    ),
    height("oil.hot_level", "h_h", "oil level soon after stopping, hot").read(SightGlass),
    Quantity::choice("oil.level_verdict", "", "verdict on the oil level", level::VERDICTS),
    can("oil.to_add", "V_add", "oil to add"),
    can("oil.to_drain", "V_out", "oil to drain"),
    // Breather.
    Quantity::choice("oil.breather", "", "state of the breather", breather::STATES),
    gauge("oil.atmosphere", "p_a", "absolute pressure of the air outside").plate(),
    gauge("oil.air_gauge", "p_1", "gauge pressure behind a blocked breather, the air alone counted"),
    height("oil.cover_height", "h_t", "height of the inside of the cover on the sight glass scale").plate().built(),
    sump("oil.air_space", "V_a", "air space over the cold oil"),
    gauge("oil.sealed_gauge", "p_2", "gauge pressure behind a blocked breather, air and oil counted"),
    gauge("oil.gauge", "p", "gauge pressure in the housing at running temperature").read(PressureGauge),
    gauge("oil.gauge_limit", "p_max", "greatest gauge pressure that an open breather leaves").plate(),
    Quantity::choice("oil.breather_verdict", "", "verdict on the breather", breather::STATES),
    // Life.
    degrees("oil.base_temperature", "T_b", "temperature up to which the oil has its full life").plate(),
    hours("oil.base_life", "t_b", "oil life at or below that temperature").plate(),
    share("oil.life_share", "f", "share of the oil life that is left at running temperature"),
    hours("oil.life", "t_o", "oil life at running temperature"),
    share("oil.share_wanted", "f_w", "share of the full oil life that is wanted").plate(),
    degrees("oil.hottest", "T_w", "hottest oil temperature that leaves the share wanted"),
];

pub(super) const RELATIONS: &[&[Relation]] =
    &[viscosity::RELATIONS, grade::RELATIONS, index::RELATIONS, level::RELATIONS, breather::RELATIONS, life::RELATIONS];

fn celsius(value: f64) -> Temperature {
    Temperature::new::<thermodynamic_temperature::degree_celsius>(value)
}

/// Degrees Celsius taken for kelvin.
fn c_as_kelvin(t: Temperature) -> Temperature {
    kelvins(t.get::<thermodynamic_temperature::degree_celsius>())
}

/// Degrees Fahrenheit taken for an absolute temperature.
fn f_as_absolute(t: Temperature) -> Temperature {
    kelvins(t.get::<thermodynamic_temperature::degree_fahrenheit>())
}

fn kelvins(value: f64) -> Temperature {
    Temperature::new::<thermodynamic_temperature::kelvin>(value)
}

/// The two temperatures at which a sample is measured.
const SAMPLED: [f64; 2] = [40.0, 100.0];

/// The curve of an oil through its viscosities at 40 and 100 °C.
fn oil_curve(at_40: KinematicViscosity, at_100: KinematicViscosity) -> Result<Curve, Error> {
    let [cold, hot] = SAMPLED.map(celsius);
    Curve::through((cold, at_40), (hot, at_100), Form::Short)
}

/// The viscosity at 100 °C of the same oil.
fn at_100(at_40: KinematicViscosity, index: Ratio) -> Result<KinematicViscosity, Error> {
    curve(at_40, index)?.at(celsius(100.0))
}

/// How far `t` is on the way from 40 to 100 °C, on a scale that `scale` makes of a temperature.
fn way(t: Temperature, scale: fn(Temperature) -> f64) -> f64 {
    let [from, to] = SAMPLED.map(|t| scale(celsius(t)));
    (scale(t) - from) / (to - from)
}

/// Plain degrees.
fn plain(t: Temperature) -> f64 {
    t.get::<thermodynamic_temperature::degree_celsius>()
}

/// The logarithm of the kelvins, as it should be.
fn log_kelvin(t: Temperature) -> f64 {
    math::ln(t.get::<thermodynamic_temperature::kelvin>())
}

/// The logarithm of degrees Celsius, mistaken for kelvin; NaN at nought and below.
fn log_celsius(t: Temperature) -> f64 {
    math::ln(t.get::<thermodynamic_temperature::degree_celsius>())
}

/// The logarithm of degrees Fahrenheit, mistaken for an absolute temperature; NaN at nought and below.
fn log_fahrenheit(t: Temperature) -> f64 {
    math::ln(t.get::<thermodynamic_temperature::degree_fahrenheit>())
}

/// The temperature whose true place on the chart is where `t` lands on a wrong scale.
fn misplaced(t: Temperature, scale: fn(Temperature) -> f64) -> Result<Temperature, Error> {
    let [from, to] = SAMPLED.map(|t| log_kelvin(celsius(t)));
    let place = way(t, scale);
    if place.is_finite() {
        Ok(kelvins(math::exp(from + place * (to - from))))
    } else {
        Err(Error::none("logarithm of the temperature"))
    }
}

/// A straight line between the two viscosities, over plain degrees.
fn straight(at_40: KinematicViscosity, at_100: KinematicViscosity, t: Temperature) -> KinematicViscosity {
    at_40 + (at_100 - at_40) * way(t, plain)
}

/// A straight line with one logarithm instead of two.
fn one_log(at_40: KinematicViscosity, at_100: KinematicViscosity, t: Temperature) -> KinematicViscosity {
    at_40 * math::pow((at_100 / at_40).value, way(t, log_kelvin))
}
