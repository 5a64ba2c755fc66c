//! Every unit against an independent general-purpose calculator.

use super::super::{Wanted, read};
use crate::unit::{Kind, UNITS};

/// The SI unit of a kind as the calculator spells it; `None` where it has no such kind.
fn si(kind: Kind) -> Option<&'static str> {
    Some(match kind {
        Kind::Slope => "metre/metre",
        Kind::Length => "metre",
        Kind::Angle => "radian",
        Kind::Mass => "kilogram",
        Kind::MassPerLength => "kilogram/metre",
        Kind::Force => "newton",
        Kind::Torque => "newton metre",
        Kind::Power => "watt",
        Kind::Speed => "radian/second",
        Kind::Velocity => "metre/second",
        Kind::Stress => "pascal",
        Kind::Temperature | Kind::TemperatureRise => "kelvin",
        Kind::Time => "second",
        Kind::Conductance => "watt/kelvin",
        Kind::Viscosity => "metre^2/second",
        Kind::Area => "metre^2",
        Kind::Volume => "metre^3",
        Kind::Density => "kilogram/metre^3",
        Kind::Expansion => "kelvin^-1",
        Kind::Frequency => "hertz",
        Kind::Current => "ampere",
        Kind::Voltage => "volt",
        Kind::Acceleration => "metre/second^2",
        Kind::Count | Kind::Choice | Kind::Ratio | Kind::Turns | Kind::Level => return None,
    })
}

/// The unit as the calculator spells it, where it spells it otherwise.
fn spelled(kind: Kind, symbol: &'static str) -> &'static str {
    match symbol {
        "mm/m" => "millimetre/metre",
        "in/ft" => "inch/foot",
        "mil/in" => "0.001 inch/inch",
        "m" => "metre",
        "µm" => "micrometre",
        "in" => "inch",
        "ft" => "foot",
        "mil" => "0.001 inch",
        "°" => "degree",
        "lb/ft" => "lb/foot",
        "N·m" => "newton metre",
        "kN·m" => "kilonewton metre",
        "lbf·in" => "lbf inch",
        "lbf·ft" => "lbf foot",
        "hp" => "horsepower",
        "Btu/h" => "BTU/hour",
        "r/min" => "2 pi radian/minute",
        "1/s" if kind == Kind::Speed => "2 pi radian/second",
        "m/min" => "metre/minute",
        "ft/min" => "foot/minute",
        "in/s" => "inch/second",
        "ksi" => "1000 psi",
        "min" => "minute",
        "h" => "hour",
        "s" => "second",
        "d" => "day",
        "cpm" => "1/minute",
        "A" => "ampere",
        "V" => "volt",
        "m/s²" => "metre/second^2",
        "g" if kind == Kind::Acceleration => "9.80665 metre/second^2",
        // A difference of one degree Fahrenheit is 5/9 K (NIST SP 811, B.8).
        "Btu/(h·°F)" => "1.8 BTU/(hour kelvin)",
        "mm²/s" | "cSt" => "millimetre^2/second",
        "m²" => "metre^2",
        "cm²" => "centimetre^2",
        "mm²" => "millimetre^2",
        "in²" => "inch^2",
        "ft²" => "foot^2",
        "L" => "litre",
        "mL" => "centimetre^3",
        "US gal" => "231 inch^3",
        "US qt" => "57.75 inch^3",
        "in³" => "inch^3",
        "kg/m³" => "kilogram/metre^3",
        "g/cm³" => "gram/centimetre^3",
        "lb/US gal" => "lb/(231 inch^3)",
        "1/°C" => "kelvin^-1",
        "1/°F" => "1.8 kelvin^-1",
        "µm/(m·°C)" => "0.000001/kelvin",
        "µin/(in·°F)" => "0.0000018/kelvin",
        "°C" if kind == Kind::TemperatureRise => "kelvin",
        "°F" if kind == Kind::TemperatureRise => "(5/9) kelvin",
        other => other,
    }
}

#[test]
fn units_agree_with_an_independent_calculator() {
    let mut calculator = fend_core::Context::new();
    let mut compared = 0;
    for unit in UNITS {
        let Some(si) = si(unit.kind) else { continue };
        for number in ["12.5", "-0.375"] {
            let ours = read(&format!("{number} {}", unit.symbol), &Wanted::new(unit.kind)).unwrap().base;
            let spelled = spelled(unit.kind, unit.symbol);
            let question = match unit.kind {
                Kind::Temperature => format!("{number} {spelled} to {si} to 12 sf"),
                _ => format!("{number} * ({spelled}) to {si} to 12 sf"),
            };
            let said =
                fend_core::evaluate(&question, &mut calculator).unwrap_or_else(|error| panic!("{question}: {error}"));
            let said = said.get_main_result().replace("approx. ", "");
            let theirs: f64 = said.split(' ').next().unwrap().parse().unwrap_or_else(|_| panic!("{question}: {said}"));
            // Pound, horsepower, Btu and what is made of them hold the seven figures that NIST SP 811
            // (2008) prints in appendix B.8; all others are exact, and the calculator prints a dozen.
            let seven = ["lb", "psi", "ksi", "hp", "Btu"].iter().any(|name| unit.symbol.contains(name));
            let allowed = if seven { 5e-7 } else { 1e-11 };
            assert!((ours - theirs).abs() <= allowed * theirs.abs(), "{question}: {said}, ours {ours}");
            compared += 1;
        }
    }
    assert_eq!(compared, 2 * UNITS.iter().filter(|unit| si(unit.kind).is_some()).count());
    assert!(compared > 90);
}
