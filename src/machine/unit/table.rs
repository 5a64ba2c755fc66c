//! Every unit the program reads and prints.

use drivecourse_calc::units as u;

use super::{Kind, Unit};

macro_rules! unit {
    ($symbol:literal, $kind:ident, $type:ident, $module:ident :: $unit:ident, [$($alias:literal),*]) => {
        Unit {
            symbol: $symbol,
            kind: Kind::$kind,
            aliases: &[$($alias),*],
            base: |value| u::$type::new::<u::$module::$unit>(value).value,
            back: |base| { let mut q = u::$type::new::<u::$module::$unit>(0.0); q.value = base; q.get::<u::$module::$unit>() },
        }
    };
    ($symbol:literal, $kind:ident, $factor:expr, [$($alias:literal),*]) => {
        Unit {
            symbol: $symbol,
            kind: Kind::$kind,
            aliases: &[$($alias),*],
            base: |value| value * $factor,
            back: |base| base / $factor,
        }
    };
}

/// International table British thermal unit in joules (NIST SP 811, B.8).
const BTU: f64 = 1_055.055_852_62;

/// Pound in kilograms, exact by definition (NIST SP 811, B.8).
const POUND: f64 = 0.453_592_37;

/// US gallon, 231 in³, in cubic metres, exact by definition (NIST SP 811, B.8).
const US_GALLON: f64 = 3.785_411_784e-3;

/// Every unit the program reads and prints.
pub static UNITS: &[Unit] = &[
    unit!(
        "",
        Count,
        1.0,
        ["teeth", "tooth", "T", "links", "pitches", "pitch", "leaves", "leaf", "shims", "pcs", "pieces"]
    ),
    unit!("", Choice, 1.0, []),
    unit!("", Ratio, 1.0, ["x", "times"]),
    unit!("%", Ratio, Ratio, ratio::percent, ["percent", "per cent", "pct"]),
    unit!(
        "mm/m",
        Slope,
        1e-3,
        [
            "mm per m",
            "mm/metre",
            "mm/meter",
            "mm per metre",
            "mm per meter",
            "millimetre per metre",
            "millimetres per metre",
            "millimeter per meter",
            "millimeters per meter"
        ]
    ),
    unit!("in/ft", Slope, 1.0 / 12.0, ["in per ft", "inch/foot", "inch per foot", "inches per foot", "\"/ft"]),
    unit!("mil/in", Slope, 1e-3, ["thou/in", "mil per in", "thou per inch"]),
    unit!("turns", Turns, 1.0, ["turn", "rev", "revs", "revolutions"]),
    unit!("Mrev", Turns, 1e6, ["million revolutions", "million rev", "10^6 rev", "million turns"]),
    unit!("mm", Length, Length, length::millimeter, ["millimetre", "millimeter"]),
    unit!("cm", Length, Length, length::centimeter, ["centimetre", "centimeter"]),
    unit!("m", Length, Length, length::meter, ["metre", "meter"]),
    unit!("µm", Length, Length, length::micrometer, ["um", "μm", "micron", "micrometre", "micrometer"]),
    unit!("in", Length, Length, length::inch, ["inch", "inches", "ins", "\"", "″", "”", "''"]),
    unit!("ft", Length, Length, length::foot, ["foot", "feet", "'", "′", "’"]),
    unit!(
        "mil",
        Length,
        Length,
        length::mil,
        ["thou", "thousandth", "thousandth of an inch", "thousandths of an inch"]
    ),
    unit!("°", Angle, Angle, angle::degree, ["deg", "degree", "degrees"]),
    unit!("rad", Angle, Angle, angle::radian, ["radian"]),
    unit!("kg", Mass, Mass, mass::kilogram, ["kgs", "kilogram", "kilogramme", "kilo"]),
    unit!("g", Mass, Mass, mass::gram, ["gram", "gramme"]),
    unit!("lb", Mass, Mass, mass::pound, ["lbs", "lbm", "pound"]),
    unit!(
        "kg/m",
        MassPerLength,
        LinearMassDensity,
        linear_mass_density::kilogram_per_meter,
        [
            "kg per m",
            "kg/metre",
            "kg/meter",
            "kg per metre",
            "kg per meter",
            "kilogram per metre",
            "kilograms per metre",
            "kilogram per meter",
            "kilograms per meter"
        ]
    ),
    unit!(
        "lb/ft",
        MassPerLength,
        LinearMassDensity,
        linear_mass_density::pound_per_foot,
        ["lb per ft", "lbs/ft", "lbm/ft", "lbf/ft", "pounds per foot"]
    ),
    unit!("N", Force, Force, force::newton, ["newton"]),
    unit!("kN", Force, Force, force::kilonewton, ["kilonewton"]),
    unit!("lbf", Force, Force, force::pound_force, ["lb", "lbs", "pound", "pound force", "pounds force", "lbs force"]),
    unit!("N·m", Torque, Torque, torque::newton_meter, ["Nm", "newton metre", "newton meter"]),
    unit!("kN·m", Torque, Torque, torque::kilonewton_meter, ["kNm"]),
    unit!(
        "lbf·in",
        Torque,
        Torque,
        torque::pound_force_inch,
        ["in lbf", "lb in", "in lb", "lbs in", "lb inch", "inch lb", "inch pound", "pound inch", "pound inches"]
    ),
    unit!(
        "lbf·ft",
        Torque,
        Torque,
        torque::pound_force_foot,
        ["ft lbf", "lb ft", "ft lb", "lbs ft", "foot lb", "foot pound", "pound foot", "pound feet"]
    ),
    unit!("kW", Power, Power, power::kilowatt, ["kilowatt"]),
    unit!("W", Power, Power, power::watt, ["watt"]),
    unit!("hp", Power, Power, power::horsepower, ["horsepower"]),
    unit!("Btu/h", Power, BTU / 3600.0, ["btu/hr", "btuh", "btu per hour"]),
    unit!(
        "r/min",
        Speed,
        AngularVelocity,
        angular_velocity::revolution_per_minute,
        [
            "rpm",
            "rev/min",
            "revs/min",
            "rev per min",
            "rev per minute",
            "revs per minute",
            "revolutions per minute",
            "turns per minute",
            "1/min",
            "U/min",
            "/min",
            "min-1",
            "min^-1",
            "min⁻¹"
        ]
    ),
    unit!(
        "rad/s",
        Speed,
        AngularVelocity,
        angular_velocity::radian_per_second,
        ["radian per second", "rad per s", "rad/sec"]
    ),
    // Turns a second, as ISO 80000-3 has rotational frequency; angles a second are written in radians.
    unit!(
        "1/s",
        Speed,
        core::f64::consts::TAU,
        ["/s", "s-1", "s^-1", "s⁻¹", "turns per second", "revolutions per second"]
    ),
    unit!(
        "m/s",
        Velocity,
        Velocity,
        velocity::meter_per_second,
        ["metre per second", "meter per second", "metres per second", "meters per second", "m per s", "m/sec"]
    ),
    unit!(
        "m/min",
        Velocity,
        1.0 / 60.0,
        ["metre per minute", "meter per minute", "metres per minute", "meters per minute", "m per min"]
    ),
    unit!("ft/min", Velocity, Velocity, velocity::foot_per_minute, ["fpm", "feet per minute", "ft per min"]),
    unit!(
        "mm/s",
        Velocity,
        Velocity,
        velocity::millimeter_per_second,
        [
            "mm/sec",
            "mm per s",
            "mm per second",
            "millimetre per second",
            "millimetres per second",
            "millimeter per second",
            "millimeters per second"
        ]
    ),
    unit!(
        "in/s",
        Velocity,
        Velocity,
        velocity::inch_per_second,
        ["ips", "in/sec", "in per s", "inch per second", "inches per second"]
    ),
    unit!(
        "MPa",
        Stress,
        Pressure,
        pressure::megapascal,
        [
            "N/mm²",
            "N/mm^2",
            "megapascal",
            "newton per square millimetre",
            "newtons per square millimetre",
            "newton per square millimeter",
            "newtons per square millimeter"
        ]
    ),
    unit!("kPa", Stress, Pressure, pressure::kilopascal, ["kilopascal"]),
    unit!("bar", Stress, Pressure, pressure::bar, []),
    unit!(
        "psi",
        Stress,
        Pressure,
        pressure::psi,
        ["lbf/in²", "lbf/in^2", "lb/in²", "lb/in^2", "pounds per square inch"]
    ),
    unit!("ksi", Stress, Pressure, pressure::kip_per_square_inch, ["kpsi"]),
    unit!(
        "°C",
        Temperature,
        Temperature,
        thermodynamic_temperature::degree_celsius,
        ["C", "C°", "deg C", "degree C", "degrees C", "celsius", "degrees celsius", "degree celsius", "centigrade"]
    ),
    unit!(
        "°F",
        Temperature,
        Temperature,
        thermodynamic_temperature::degree_fahrenheit,
        ["F", "F°", "deg F", "degree F", "degrees F", "fahrenheit", "degrees fahrenheit", "degree fahrenheit"]
    ),
    unit!("K", Temperature, Temperature, thermodynamic_temperature::kelvin, ["kelvin"]),
    unit!(
        "°C",
        TemperatureRise,
        TemperatureRise,
        temperature_interval::degree_celsius,
        ["C", "C°", "deg C", "degree C", "degrees C", "celsius", "degrees celsius", "degree celsius", "centigrade"]
    ),
    unit!("K", TemperatureRise, TemperatureRise, temperature_interval::kelvin, ["kelvin"]),
    unit!(
        "°F",
        TemperatureRise,
        TemperatureRise,
        temperature_interval::degree_fahrenheit,
        ["F", "F°", "deg F", "degree F", "degrees F", "fahrenheit", "degrees fahrenheit", "degree fahrenheit"]
    ),
    unit!("min", Time, Time, time::minute, ["m", "minute"]),
    unit!("h", Time, Time, time::hour, ["hr", "hrs", "hour"]),
    unit!("s", Time, Time, time::second, ["sec", "second"]),
    unit!("d", Time, Time, time::day, ["day"]),
    unit!(
        "W/K",
        Conductance,
        ThermalConductance,
        thermal_conductance::watt_per_kelvin,
        ["W/°C", "W/C", "W per K", "W per °C", "watt per kelvin", "watts per kelvin"]
    ),
    unit!(
        "Btu/(h·°F)",
        Conductance,
        BTU * 1.8 / 3600.0,
        [
            "Btu/h°F",
            "btu/h/°f",
            "btu/hr°f",
            "btu/hr f",
            "btu/hr/f",
            "btu/hr/°f",
            "btu/(hr °f)",
            "btu/(hr F)",
            "btu/(h F)",
            "btu/(h R)"
        ]
    ),
    unit!(
        "mm²/s",
        Viscosity,
        1e-6,
        [
            "mm^2/s",
            "square mm per second",
            "mm²/sec",
            "square millimetre per second",
            "square millimetres per second",
            "square millimeter per second",
            "square millimeters per second"
        ]
    ),
    unit!("cSt", Viscosity, 1e-6, ["centistoke"]),
    unit!("m²", Area, Area, area::square_meter, ["m^2", "sq m", "square metre", "square meter"]),
    unit!("cm²", Area, Area, area::square_centimeter, ["cm^2", "sq cm", "square centimetre", "square centimeter"]),
    unit!("mm²", Area, Area, area::square_millimeter, ["mm^2", "sq mm", "square millimetre", "square millimeter"]),
    unit!("in²", Area, Area, area::square_inch, ["in^2", "sq in", "square inch", "square inches"]),
    unit!("ft²", Area, Area, area::square_foot, ["ft^2", "sq ft", "square foot", "square feet"]),
    unit!("L", Volume, Volume, volume::liter, ["litre", "liter", "ltr", "dm³", "dm^3", "dm3"]),
    unit!(
        "mL",
        Volume,
        Volume,
        volume::milliliter,
        ["millilitre", "milliliter", "cm³", "cm^3", "cm3", "cc", "cubic centimetre", "cubic centimeter"]
    ),
    unit!("US gal", Volume, US_GALLON, ["gal", "gallon", "US gallon"]),
    unit!("US qt", Volume, US_GALLON / 4.0, ["qt", "quart", "US quart"]),
    unit!("in³", Volume, US_GALLON / 231.0, ["in^3", "in3", "cu in", "cubic inch", "cubic inches"]),
    unit!(
        "kg/m³",
        Density,
        MassDensity,
        mass_density::kilogram_per_cubic_meter,
        [
            "kg/m^3",
            "kg/m3",
            "kilogram per cubic metre",
            "kilograms per cubic metre",
            "kilogram per cubic meter",
            "kilograms per cubic meter"
        ]
    ),
    unit!("g/cm³", Density, MassDensity, mass_density::gram_per_cubic_centimeter, ["g/cm^3", "g/cm3", "kg/L", "g/mL"]),
    unit!("lb/US gal", Density, POUND / US_GALLON, ["lb/gal", "lb per gal", "lb per gallon", "lb/gallon"]),
    unit!("1/°C", Expansion, 1.0, ["/°C", "per °C", "1/C", "/C", "per C", "1/K", "/K", "per K", "per kelvin"]),
    unit!("1/°F", Expansion, 1.8, ["/°F", "per °F", "1/F", "/F", "per F"]),
    unit!(
        "µm/(m·°C)",
        Expansion,
        1e-6,
        [
            "µm/(m K)",
            "µm/m/°C",
            "µm/m/K",
            "um/m/°C",
            "um/m/K",
            "μm/m/°C",
            "μm/m/K",
            "ppm/°C",
            "ppm/K",
            "10^-6/°C",
            "10^-6/K"
        ]
    ),
    unit!(
        "µin/(in·°F)",
        Expansion,
        1.8e-6,
        ["µin/in/°F", "uin/in/°F", "uin/(in °F)", "μin/in/°F", "ppm/°F", "10^-6/°F"]
    ),
    unit!(
        "Hz",
        Frequency,
        Frequency,
        frequency::hertz,
        ["hertz", "cycles per second", "cps", "1/s", "/s", "s-1", "s^-1", "s⁻¹"]
    ),
    unit!(
        "cpm",
        Frequency,
        Frequency,
        frequency::cycle_per_minute,
        ["c/min", "cycle per minute", "cycles per minute", "cycles/min", "1/min", "/min", "min-1", "min^-1", "min⁻¹"]
    ),
    unit!("A", Current, ElectricCurrent, electric_current::ampere, ["amp", "ampere"]),
    unit!("V", Voltage, ElectricPotential, electric_potential::volt, ["volt"]),
    unit!(
        "m/s²",
        Acceleration,
        Acceleration,
        acceleration::meter_per_second_squared,
        [
            "m/s^2",
            "metre per second squared",
            "metres per second squared",
            "meter per second squared",
            "meters per second squared"
        ]
    ),
    unit!("g", Acceleration, Acceleration, acceleration::standard_gravity, ["gn", "g force"]),
    unit!("dB", Level, 1.0, ["dB(A)", "dBA", "decibel"]),
];
