//! Infrared readings.

use drivecourse_calc::Error;
use drivecourse_calc::heat::infrared::{View, actual_emissivity, instrument_reading, true_temperature};
use drivecourse_calc::heat::rise::rise;
use drivecourse_calc::units::thermodynamic_temperature::{degree_celsius, degree_fahrenheit, kelvin};
use drivecourse_calc::units::{Ratio, Temperature, ratio};

use super::{c_as_rise, f_as_rise, zero_c, zero_f};
use crate::Source;
use crate::relation::{Relation, relation};

const GREY_BODY: Source = Source::FromMemory("Stefan-Boltzmann law with reflection of a grey, opaque surface");

fn view(set: Ratio, actual: Ratio, reflected: Temperature) -> View {
    View { set, actual, reflected }
}

/// Surroundings so cold that nothing mirrors in the surface.
fn dark() -> Temperature {
    Temperature::new::<kelvin>(1e-3)
}

/// The number of a Celsius reading mistaken for an absolute temperature.
fn c_as_absolute(reading: Temperature) -> Temperature {
    Temperature::new::<kelvin>(reading.get::<degree_celsius>())
}

/// And back again.
fn c_from_absolute(mistaken: Temperature) -> Temperature {
    Temperature::new::<degree_celsius>(mistaken.get::<kelvin>())
}

/// The number of a Fahrenheit reading mistaken for an absolute temperature.
fn f_as_absolute(reading: Temperature) -> Temperature {
    Temperature::new::<kelvin>(reading.get::<degree_fahrenheit>())
}

/// And back again.
fn f_from_absolute(mistaken: Temperature) -> Temperature {
    Temperature::new::<degree_fahrenheit>(mistaken.get::<kelvin>())
}

fn one() -> Ratio {
    Ratio::new::<ratio::ratio>(1.0)
}

type Correction = fn(&View, Temperature) -> Result<Temperature, Error>;

/// `correction` with Celsius numbers in the fourth power.
fn in_celsius(
    correction: Correction,
    set: Ratio,
    actual: Ratio,
    a: Temperature,
    t: Temperature,
) -> Result<Temperature, Error> {
    correction(&view(set, actual, c_as_absolute(a)), c_as_absolute(t)).map(c_from_absolute)
}

/// `correction` with Fahrenheit numbers in the fourth power.
fn in_fahrenheit(
    correction: Correction,
    set: Ratio,
    actual: Ratio,
    a: Temperature,
    t: Temperature,
) -> Result<Temperature, Error> {
    correction(&view(set, actual, f_as_absolute(a)), f_as_absolute(t)).map(f_from_absolute)
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "heat.infrared/emissivity": "What the infrared instrument shows",
        "heat.infrared": Temperature = instrument_reading(&view(set, e, a), t),
        from {
            t: Temperature = "heat.housing", a: Temperature = "heat.ambient", set: Ratio = "heat.emissivity_set",
            e: Ratio = "heat.emissivity",
        },
        formula [
            "T[°C] = ((e * (t[°C] + 273.15)^4 + (set - e) * (a[°C] + 273.15)^4) / set)^0.25 - 273.15",
            "T[°F] = ((e * (t[°F] + 459.67)^4 + (set - e) * (a[°F] + 459.67)^4) / set)^0.25 - 459.67",
        ],
        source GREY_BODY,
        turns {
            "housing itself": t => "You gave the housing temperature; with the wrong emissivity set the instrument shows another.";
            "swapped": instrument_reading(&view(e, set, a), t) => "You swapped the two emissivities; a shiny surface under a high setting reads too low.";
            "no reflection": instrument_reading(&view(set, e, dark()), t) => "You left out what mirrors in the surface; the room shines back and raises the reading.";
            "Celsius" in Si: in_celsius(instrument_reading, set, e, a, t) => "You raised degrees Celsius to the fourth power; the temperatures must be absolute, so add 273.15 first.";
            "Fahrenheit" in Us: in_fahrenheit(instrument_reading, set, e, a, t) => "You raised degrees Fahrenheit to the fourth power; the temperatures must be absolute, so add 459.67 first.";
            "first power": a + rise(t, a) * (e / set) => "You scaled the rise by the emissivities; radiation goes with the fourth power of the absolute temperature.";
            "times emissivity" in Si: zero_c() + c_as_rise(t) * e => "You multiplied the reading by the emissivity; radiation goes with the fourth power of the absolute temperature.";
            "times emissivity, °F" in Us: zero_f() + f_as_rise(t) * e => "You multiplied the reading by the emissivity; radiation goes with the fourth power of the absolute temperature.";
        },
    }
    .limits("grey, opaque surface, all wavelengths, ambient mirrored in it; an instrument that sees one band differs somewhat"),
    relation! {
        "heat.infrared_true/emissivity": "Housing temperature behind the infrared reading",
        "heat.infrared_true": Temperature = true_temperature(&view(set, e, a), r),
        from {
            r: Temperature = "heat.infrared", a: Temperature = "heat.ambient", set: Ratio = "heat.emissivity_set",
            e: Ratio = "heat.emissivity",
        },
        formula [
            "T[°C] = ((set * (r[°C] + 273.15)^4 - (set - e) * (a[°C] + 273.15)^4) / e)^0.25 - 273.15",
            "T[°F] = ((set * (r[°F] + 459.67)^4 - (set - e) * (a[°F] + 459.67)^4) / e)^0.25 - 459.67",
        ],
        source GREY_BODY,
        turns {
            "reading itself": r => "You took the infrared reading as it stands; it must be corrected for the emissivity of the surface.";
            "swapped": true_temperature(&view(e, set, a), r) => "You swapped the two emissivities; a shiny surface is hotter than it looks.";
            "no reflection": true_temperature(&view(set, e, dark()), r) => "You left out what mirrors in the surface; part of what the instrument sees comes from the room.";
            "Celsius" in Si: in_celsius(true_temperature, set, e, a, r) => "You raised degrees Celsius to the fourth power; the temperatures must be absolute, so add 273.15 first.";
            "Fahrenheit" in Us: in_fahrenheit(true_temperature, set, e, a, r) => "You raised degrees Fahrenheit to the fourth power; the temperatures must be absolute, so add 459.67 first.";
            "first power": a + rise(r, a) * (set / e) => "You scaled the rise by the emissivities; radiation goes with the fourth power of the absolute temperature.";
            "divided by emissivity" in Si: zero_c() + c_as_rise(r) / e => "You divided the reading by the emissivity; radiation goes with the fourth power of the absolute temperature.";
            "divided by emissivity, °F" in Us: zero_f() + f_as_rise(r) / e => "You divided the reading by the emissivity; radiation goes with the fourth power of the absolute temperature.";
        },
    }
    .limits("grey, opaque surface, all wavelengths, ambient mirrored in it; better to read on matt paint or tape")
    .question(),
    relation! {
        "heat.emissivity_found/contact thermometer": "Emissivity from a contact thermometer",
        "heat.emissivity_found": Ratio = actual_emissivity(set, a, r, t),
        from {
            set: Ratio = "heat.emissivity_set", a: Temperature = "heat.ambient", r: Temperature = "heat.infrared",
            t: Temperature = "heat.housing",
        },
        formula [
            "e = set * ((r[°C] + 273.15)^4 - (a[°C] + 273.15)^4) / ((t[°C] + 273.15)^4 - (a[°C] + 273.15)^4)",
            "e = set * ((r[°F] + 459.67)^4 - (a[°F] + 459.67)^4) / ((t[°F] + 459.67)^4 - (a[°F] + 459.67)^4)",
        ],
        source GREY_BODY,
        turns {
            "no reflection": actual_emissivity(set, dark(), r, t) => "You left out what mirrors in the surface; take the ambient's fourth power off above and below.";
            "Celsius" in Si: actual_emissivity(set, c_as_absolute(a), c_as_absolute(r), c_as_absolute(t)) => "You raised degrees Celsius to the fourth power; the temperatures must be absolute, so add 273.15 first.";
            "Fahrenheit" in Us: actual_emissivity(set, f_as_absolute(a), f_as_absolute(r), f_as_absolute(t)) => "You raised degrees Fahrenheit to the fourth power; the temperatures must be absolute, so add 459.67 first.";
            "setting left out": actual_emissivity(one(), a, r, t) => "You left the instrument's setting out; the ratio is a share of the emissivity that is set.";
            "first power": set * (rise(r, a) / rise(t, a)) => "You used the ratio of the rises; radiation goes with the fourth power of the absolute temperature.";
            "ratio of readings" in Si: set * (c_as_rise(r) / c_as_rise(t)) => "You used the ratio of the two readings; the fourth powers of the absolute temperatures belong here, less the ambient's.";
            "ratio of readings, °F" in Us: set * (f_as_rise(r) / f_as_rise(t)) => "You used the ratio of the two readings; the fourth powers of the absolute temperatures belong here, less the ambient's.";
        },
    }
    .limits("surface clearly warmer than the room")
    .question(),
];
