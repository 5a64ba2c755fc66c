//! Names of units written out in the language spoken: `Minuten`, `Grad Celsius`.
//!
//! English names stand among the spellings of the [table](super::UNITS), which files are read by as well; those of
//! another language are understood in answers only. Each message lists the forms of a name, with commas between.

use std::sync::OnceLock;

use super::spelling::{Spelling, found, spelling};
use super::{Kind, UNITS, Unit};
use crate::language::{self, Message};
use crate::messages;

messages! { pub(crate) SAYS {
    TEETH = "unit-words-count", "tooth, teeth, link, links, leaf, leaves, shim, shims, piece, pieces";
    PERCENT = "unit-words-percent", "percent, per cent";
    MM_PER_M = "unit-words-mm-per-m", "millimetre per metre, millimetres per metre";
    TURNS = "unit-words-turns", "turn, turns, revolution, revolutions";
    MM = "unit-words-mm", "millimetre, millimetres";
    CM = "unit-words-cm", "centimetre, centimetres";
    M = "unit-words-m", "metre, metres";
    MICROMETRE = "unit-words-micrometre", "micrometre, micrometres, micron, microns";
    INCH = "unit-words-in", "inch, inches";
    FOOT = "unit-words-ft", "foot, feet";
    MIL = "unit-words-mil", "thousandth of an inch, thousandths of an inch";
    DEGREE = "unit-words-degree", "degree, degrees";
    KG = "unit-words-kg", "kilogram, kilograms";
    G = "unit-words-g", "gram, grams";
    KG_PER_M = "unit-words-kg-per-m", "kilogram per metre, kilograms per metre";
    N = "unit-words-n", "newton, newtons";
    KN = "unit-words-kn", "kilonewton, kilonewtons";
    NM = "unit-words-nm", "newton metre, newton metres";
    KW = "unit-words-kw", "kilowatt, kilowatts";
    W = "unit-words-w", "watt, watts";
    RPM = "unit-words-rpm", "revolutions per minute, turns per minute";
    M_PER_S = "unit-words-m-per-s", "metre per second, metres per second";
    M_PER_MIN = "unit-words-m-per-min", "metre per minute, metres per minute";
    MM_PER_S = "unit-words-mm-per-s", "millimetre per second, millimetres per second";
    IN_PER_S = "unit-words-in-per-s", "inch per second, inches per second";
    MPA = "unit-words-mpa", "megapascal, megapascals, newton per square millimetre, newtons per square millimetre";
    KPA = "unit-words-kpa", "kilopascal, kilopascals";
    CELSIUS = "unit-words-celsius", "degree C, degrees C, degree Celsius, degrees Celsius, Celsius";
    FAHRENHEIT = "unit-words-fahrenheit", "degree F, degrees F, degree Fahrenheit, degrees Fahrenheit, Fahrenheit";
    KELVIN = "unit-words-kelvin", "kelvin, kelvins";
    MINUTE = "unit-words-min", "minute, minutes";
    HOUR = "unit-words-h", "hour, hours";
    SECOND = "unit-words-s", "second, seconds";
    DAY = "unit-words-d", "day, days";
    W_PER_K = "unit-words-w-per-k", "watt per kelvin, watts per kelvin";
    MM2_PER_S = "unit-words-mm2-per-s", "square millimetre per second, square millimetres per second";
    M2 = "unit-words-m2", "square metre, square metres";
    CM2 = "unit-words-cm2", "square centimetre, square centimetres";
    MM2 = "unit-words-mm2", "square millimetre, square millimetres";
    IN2 = "unit-words-in2", "square inch, square inches";
    LITRE = "unit-words-litre", "litre, litres";
    ML = "unit-words-ml", "millilitre, millilitres, cubic centimetre, cubic centimetres";
    KG_PER_M3 = "unit-words-kg-per-m3", "kilogram per cubic metre, kilograms per cubic metre";
    HZ = "unit-words-hz", "hertz, cycles per second";
    CPM = "unit-words-cpm", "cycle per minute, cycles per minute";
    AMPERE = "unit-words-a", "ampere, amperes";
    VOLT = "unit-words-v", "volt, volts";
    M_PER_S2 = "unit-words-m-per-s2", "metre per second squared, metres per second squared";
    DECIBEL = "unit-words-db", "decibel, decibels";
} }

/// The units that each message names, by their symbols; of one kind where a symbol has several meanings.
const NAMED: &[(Message, &str, Option<Kind>)] = &[
    (TEETH, "", Some(Kind::Count)),
    (PERCENT, "%", None),
    (MM_PER_M, "mm/m", None),
    (TURNS, "turns", None),
    (MM, "mm", None),
    (CM, "cm", None),
    (M, "m", None),
    (MICROMETRE, "µm", None),
    (INCH, "in", None),
    (FOOT, "ft", None),
    (MIL, "mil", None),
    (DEGREE, "°", None),
    (KG, "kg", None),
    (G, "g", Some(Kind::Mass)),
    (KG_PER_M, "kg/m", None),
    (N, "N", None),
    (KN, "kN", None),
    (NM, "N·m", None),
    (KW, "kW", None),
    (W, "W", None),
    (RPM, "r/min", None),
    (M_PER_S, "m/s", None),
    (M_PER_MIN, "m/min", None),
    (MM_PER_S, "mm/s", None),
    (IN_PER_S, "in/s", None),
    (MPA, "MPa", None),
    (KPA, "kPa", None),
    (CELSIUS, "°C", None),
    (FAHRENHEIT, "°F", None),
    (KELVIN, "K", None),
    (MINUTE, "min", None),
    (HOUR, "h", None),
    (SECOND, "s", None),
    (DAY, "d", None),
    (W_PER_K, "W/K", None),
    (MM2_PER_S, "mm²/s", None),
    (M2, "m²", None),
    (CM2, "cm²", None),
    (MM2, "mm²", None),
    (IN2, "in²", None),
    (LITRE, "L", None),
    (ML, "mL", None),
    (KG_PER_M3, "kg/m³", None),
    (HZ, "Hz", None),
    (CPM, "cpm", None),
    (AMPERE, "A", None),
    (VOLT, "V", None),
    (M_PER_S2, "m/s²", None),
    (DECIBEL, "dB", None),
];

/// Every spelling of `names` with its unit, by spelling and then in table order.
fn spellings<'n>(names: impl Fn(Message) -> &'n str) -> Vec<Spelling> {
    let mut out: Vec<Spelling> = Vec::new();
    for (message, symbol, kind) in NAMED {
        for name in names(*message).split(',') {
            let units = UNITS.iter().filter(|unit| unit.symbol == *symbol && kind.is_none_or(|kind| kind == unit.kind));
            out.extend(units.filter_map(|unit| spelling(name, unit)));
        }
    }
    out.sort_by(|a, b| a.0.cmp(&b.0));
    out
}

/// The units that `text` may mean in the language spoken, beside what [`Unit::named`] knows.
pub(super) fn meanings(text: &str) -> impl Iterator<Item = &'static Unit> {
    static INDEX: OnceLock<Vec<Spelling>> = OnceLock::new();
    // English needs no list; another language is spoken to the end of the run, so that its list may be kept.
    let index: &'static [Spelling] = match language::code() {
        "en" => &[],
        _ => INDEX.get_or_init(|| spellings(|message| message.text())),
    };
    found(index, text)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_message_names_a_unit() {
        assert_eq!(SAYS.len(), NAMED.len());
        for ((message, symbol, kind), listed) in NAMED.iter().zip(SAYS) {
            assert_eq!(message, listed, "in the order of the list");
            let is_named = |unit: &&Unit| unit.symbol == *symbol && kind.is_none_or(|kind| kind == unit.kind);
            let units: Vec<_> = UNITS.iter().filter(is_named).collect();
            assert!(!units.is_empty(), "{symbol}");
            // What the message says in English is what every text is read by.
            for name in message.english.split(',') {
                for unit in &units {
                    assert!(Unit::named(name).any(|found| found == *unit), "{name:?} is no {symbol}");
                }
            }
        }
    }

    #[test]
    fn names_of_another_language_are_found() {
        let german = |message: Message| match message {
            MINUTE => "Minute, Minuten",
            CELSIUS => "Grad C, Grad Celsius",
            DEGREE => "Grad",
            _ => "",
        };
        let index = spellings(german);
        let found = |text: &str| found(&index, text).map(|unit| (unit.symbol, unit.kind)).collect::<Vec<_>>();
        assert_eq!(found("minuten"), [("min", Kind::Time)]);
        assert_eq!(found("Grad  C."), [("°C", Kind::Temperature), ("°C", Kind::TemperatureRise)]);
        assert_eq!(found("Grad"), [("°", Kind::Angle)]);
        assert_eq!((found(""), found("Min")), (vec![], vec![]));
        // Nothing but English is spoken in tests.
        assert_eq!(meanings("Minuten").next(), None);
    }
}
