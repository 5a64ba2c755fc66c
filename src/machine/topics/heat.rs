//! Warm-up temperature: rise over ambient, warm-up and settling, heat balance, infrared readings.

mod balance;
mod infrared;
mod judge;
mod settling;
mod warm_up;

use drivecourse_calc::heat::rise::rise;
use drivecourse_calc::units::{Temperature, TemperatureRise, temperature_interval, thermodynamic_temperature};

use crate::instrument::Figures::{Places, Significant};
use crate::instrument::Instrument::{FineThermometer, Thermometer};
use crate::quantity::Quantity;
use crate::relation::Relation;
use crate::source::Source::{self, Derived};
use crate::unit::Kind;

const DIFFERENCE: Source = Derived("definition of a temperature difference");
const FIRST_ORDER: Source = Derived("first-order heating of one mass, Newton's law of cooling");

/// A temperature that is worked out, or printed on a plate in whole degrees.
const fn degrees(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Temperature, name).shown("°C", Places(0), "°F", Places(0))
}

/// A temperature difference in whole degrees.
const fn difference(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::TemperatureRise, name).shown("°C", Places(0), "°F", Places(0))
}

/// A time in whole minutes.
const fn minutes(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Time, name).shown("min", Places(0), "min", Places(0))
}

/// A flow of heat.
const fn heat(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Power, name).shown("W", Significant(3), "Btu/h", Significant(3))
}

/// An emissivity.
const fn emissivity(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Ratio, name).shown("", Places(2), "", Places(2))
}

/// A share in per cent.
const fn share(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Ratio, name).shown("%", Places(0), "%", Places(0))
}

pub(super) const QUANTITIES: &[Quantity] = &[
    // Rise over ambient and the limits.
    degrees("heat.ambient", "T_a", "ambient temperature").read(Thermometer),
    degrees("heat.housing", "T", "settled housing temperature").read(Thermometer),
    difference("heat.rise", "ΔT", "rise of the housing over ambient"),
    difference("heat.rise_limit", "ΔT_max", "largest rise over ambient accepted").plate(),
    degrees("heat.sump_limit", "T_max", "highest housing temperature accepted on any day").plate(),
    degrees("heat.allowed", "T_all", "highest temperature allowed at this ambient"),
    difference("heat.allowed_rise", "ΔT_all", "largest rise allowed at this ambient"),
    Quantity::choice("heat.verdict", "", "verdict on the settled temperature", judge::VERDICTS),
    // Heat balance.
    heat("heat.gear_loss", "Q_g", "heat made by the gears"),
    Quantity::new("heat.friction", "μ", Kind::Ratio, "friction coefficient of the bearing nearest the chain")
        .shown("", Places(4), "", Places(4))
        .plate(),
    heat("heat.bearing_loss", "Q_b", "heat made by the bearing nearest the chain"),
    heat("heat.loss", "Q", "heat made by the whole unit"),
    difference("heat.design_rise", "ΔT_n", "settled rise at full motor power").plate(),
    Quantity::new("heat.conductance", "G", Kind::Conductance, "heat given off for each degree of rise"),
    difference("heat.settled_rise", "ΔT_s", "rise at which the unit settles").shown("°C", Places(1), "°F", Places(1)),
    degrees("heat.settled", "T_s", "temperature at which the unit settles").shown("°C", Places(1), "°F", Places(1)),
    Quantity::new("heat.efficiency_seen", "η_Q", Kind::Ratio, "efficiency that explains the rise"),
    Quantity::new("heat.allowed_power", "P_th", Kind::Power, "greatest power without getting too hot"),
    degrees("heat.other_ambient", "T_a2", "ambient temperature of the other case").plate(),
    share("heat.other_share", "s", "load of the other case as a share of the present load").plate(),
    share("heat.fixed_share", "f", "share of the heat that does not depend on load").plate().built(),
    degrees("heat.expected", "T_e", "housing temperature to expect in the other case"),
    // Warm-up.
    minutes("heat.time_constant", "τ", "time constant of the warm-up").plate().built(),
    difference("heat.peak_height", "A", "height of the run-in peak"),
    minutes("heat.peak_time", "t_p", "time of the run-in peak"),
    minutes("heat.asked_time", "t", "time since the cold start").plate(),
    degrees("heat.warm", "T_t", "temperature of a run-in unit after that time"),
    degrees("heat.peak_reading", "T_p", "highest reading of the warm-up").read(Thermometer),
    Quantity::choice("heat.peak_verdict", "", "verdict on the highest reading", judge::PEAK_VERDICTS),
    // Three readings.
    minutes("heat.first_time", "t_1", "time of reading 1 after the start").plate(),
    minutes("heat.interval", "Δt", "time between readings").plate(),
    minutes("heat.time_2", "t_2", "time of reading 2 after the start"),
    minutes("heat.time_3", "t_3", "time of reading 3 after the start"),
    degrees("heat.reading_1", "T_1", "temperature reading 1").read(FineThermometer),
    degrees("heat.reading_2", "T_2", "temperature reading 2").read(FineThermometer),
    degrees("heat.reading_3", "T_3", "temperature reading 3").read(FineThermometer),
    degrees("heat.settled_foretold", "T_f", "settled temperature foretold"),
    difference("heat.rise_foretold", "ΔT_f", "settled rise foretold"),
    minutes("heat.time_constant_foretold", "τ_f", "time constant found from the readings"),
    Quantity::choice("heat.settling", "", "what the three readings say", settling::SETTLING),
    difference("heat.margin_wanted", "m", "distance from the settled temperature that counts as settled").plate(),
    minutes("heat.time_to_settle", "t_s", "time from reading 3 until the unit has settled"),
    minutes("heat.warm_up_time", "t_w", "time from a cold start until the unit has settled"),
    // Infrared.
    emissivity("heat.emissivity_set", "ε_set", "emissivity set on the instrument").plate(),
    emissivity("heat.emissivity", "ε", "emissivity of the surface").plate().built().ends(0.0, 1.0),
    degrees("heat.infrared", "T_ir", "infrared reading of the housing").read(Thermometer),
    degrees("heat.infrared_true", "T_c", "housing temperature behind the infrared reading"),
    emissivity("heat.emissivity_found", "ε_c", "emissivity found with a contact thermometer"),
];

pub(super) const RELATIONS: &[&[Relation]] =
    &[judge::RELATIONS, balance::RELATIONS, warm_up::RELATIONS, settling::RELATIONS, infrared::RELATIONS];

/// Nought of the Celsius scale.
fn zero_c() -> Temperature {
    Temperature::new::<thermodynamic_temperature::degree_celsius>(0.0)
}

/// Nought of the Fahrenheit scale.
fn zero_f() -> Temperature {
    Temperature::new::<thermodynamic_temperature::degree_fahrenheit>(0.0)
}

/// A Celsius reading mistaken for a rise.
fn c_as_rise(reading: Temperature) -> TemperatureRise {
    rise(reading, zero_c())
}

/// A Fahrenheit reading mistaken for a rise.
fn f_as_rise(reading: Temperature) -> TemperatureRise {
    rise(reading, zero_f())
}

/// The 32 of the Fahrenheit scale, wrongly added to or taken from a difference.
fn thirty_two() -> TemperatureRise {
    TemperatureRise::new::<temperature_interval::degree_fahrenheit>(32.0)
}
