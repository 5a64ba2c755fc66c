//! Kinds of quantity and the units they are written in.
//!
//! Inside the program every value is a plain number in the coherent SI unit of its kind (metre,
//! newton, radian per second, kelvin ...). This table is the only place where another unit's
//! name appears; the factors themselves come from `uom`.

mod spelling;

use drivecourse_calc::units as u;

/// What sort of quantity a number is: decides which units it may carry.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[non_exhaustive]
pub enum Kind {
    /// A whole number of things: teeth, links, leaves.
    Count,
    /// One of a short list of named possibilities; the value is its index.
    Choice,
    /// A plain number or a percentage.
    Ratio,
    /// A rise over a run, such as a level shows (mm/m).
    Slope,
    /// A number of turns or revolutions.
    Turns,
    /// Length.
    Length,
    /// Angle.
    Angle,
    /// Mass.
    Mass,
    /// Mass of a running length, as of chain.
    MassPerLength,
    /// Force.
    Force,
    /// Torque, or bending moment.
    Torque,
    /// Power.
    Power,
    /// Speed of rotation.
    Speed,
    /// Speed along a line.
    Velocity,
    /// Stress or pressure.
    Stress,
    /// A temperature as a thermometer shows it.
    Temperature,
    /// A difference between two temperatures.
    TemperatureRise,
    /// Time.
    Time,
    /// Heat flow for each degree of rise.
    Conductance,
    /// Kinematic viscosity.
    Viscosity,
    /// Area.
    Area,
    /// Volume.
    Volume,
    /// Mass of a volume.
    Density,
    /// Expansion, as a share for each degree.
    Expansion,
    /// Frequency.
    Frequency,
    /// Electric current.
    Current,
    /// Electric voltage.
    Voltage,
    /// Acceleration.
    Acceleration,
    /// Sound level.
    Level,
}

impl Kind {
    /// Every kind.
    pub const ALL: [Self; 29] = [
        Self::Count,
        Self::Choice,
        Self::Ratio,
        Self::Slope,
        Self::Turns,
        Self::Length,
        Self::Angle,
        Self::Mass,
        Self::MassPerLength,
        Self::Force,
        Self::Torque,
        Self::Power,
        Self::Speed,
        Self::Velocity,
        Self::Stress,
        Self::Temperature,
        Self::TemperatureRise,
        Self::Time,
        Self::Conductance,
        Self::Viscosity,
        Self::Area,
        Self::Volume,
        Self::Density,
        Self::Expansion,
        Self::Frequency,
        Self::Current,
        Self::Voltage,
        Self::Acceleration,
        Self::Level,
    ];

    /// The name a person would use: `"a length"`.
    pub fn name(self) -> &'static str {
        match self {
            Self::Count => "a count",
            Self::Choice => "a choice",
            Self::Ratio => "a plain number or percentage",
            Self::Slope => "a slope",
            Self::Turns => "a number of turns",
            Self::Length => "a length",
            Self::Angle => "an angle",
            Self::Mass => "a mass",
            Self::MassPerLength => "a mass per length",
            Self::Force => "a force",
            Self::Torque => "a torque",
            Self::Power => "a power",
            Self::Speed => "a speed of rotation",
            Self::Velocity => "a speed along a line",
            Self::Stress => "a stress or pressure",
            Self::Temperature => "a temperature",
            Self::TemperatureRise => "a temperature difference",
            Self::Time => "a time",
            Self::Conductance => "a heat flow per degree",
            Self::Viscosity => "a viscosity",
            Self::Area => "an area",
            Self::Volume => "a volume",
            Self::Density => "a density",
            Self::Expansion => "an expansion per degree",
            Self::Frequency => "a frequency",
            Self::Current => "a current",
            Self::Voltage => "a voltage",
            Self::Acceleration => "an acceleration",
            Self::Level => "a sound level",
        }
    }
}

/// The two sets of units in which everything can be shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default, serde::Serialize, serde::Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "lowercase")]
pub enum System {
    /// The International System of Units.
    #[default]
    Si,
    /// US customary units.
    Us,
}

impl System {
    /// Both, SI first.
    pub const ALL: [Self; 2] = [Self::Si, Self::Us];

    /// `"si"` or `"us"`, as files and web addresses write it.
    pub fn code(self) -> &'static str {
        match self {
            Self::Si => "si",
            Self::Us => "us",
        }
    }
}

/// One unit: how it is written, what it measures, and how it converts to the SI unit of its kind.
#[derive(Debug, Clone, Copy)]
pub struct Unit {
    /// As we print it; empty for plain numbers and counts.
    pub symbol: &'static str,
    /// What it measures.
    pub kind: Kind,
    /// Other ways people write it; compared without regard to case, spaces, dots and hyphens.
    pub aliases: &'static [&'static str],
    base: fn(f64) -> f64,
    back: fn(f64) -> f64,
}

impl Unit {
    /// `value` of this unit, in the SI unit of its kind.
    pub fn to_base(&self, value: f64) -> f64 {
        (self.base)(value)
    }

    /// `base` (SI unit of the kind) in this unit.
    pub fn from_base(&self, base: f64) -> f64 {
        (self.back)(base)
    }

    /// The size of one step of this unit in the SI unit, leaving any zero offset out.
    pub fn size(&self) -> f64 {
        (self.base)(1.0) - (self.base)(0.0)
    }

    /// Whether a number printed in this unit is followed by nothing at all.
    pub fn is_bare(&self) -> bool {
        self.symbol.is_empty()
    }

    /// The unit printed as `symbol`, if there is one for `kind`.
    pub fn find(kind: Kind, symbol: &str) -> Option<&'static Self> {
        UNITS.iter().find(|unit| unit.kind == kind && unit.symbol == symbol)
    }

    /// Every unit that `text` may mean, of whatever kind, in table order.
    ///
    /// Case, spaces, dots, hyphens and a plural `s` are forgiven; no spelling means two units of
    /// one kind.
    pub fn named(text: &str) -> impl Iterator<Item = &'static Self> {
        spelling::meanings(text)
    }

    /// The unit of `kind` that `text` may be a slip of the finger for.
    pub fn nearest(kind: Kind, text: &str) -> Option<&'static Self> {
        spelling::nearest(text, kind)
    }
}

impl PartialEq for Unit {
    fn eq(&self, other: &Self) -> bool {
        self.symbol == other.symbol && self.kind == other.kind
    }
}

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
    unit!("mm/m", Slope, 1e-3, ["mm per m", "mm/metre", "mm/meter", "mm per metre", "mm per meter"]),
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
        ["kg per m", "kg/metre", "kg/meter", "kg per metre"]
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
    unit!("mm/s", Velocity, Velocity, velocity::millimeter_per_second, ["mm/sec", "mm per s", "mm per second"]),
    unit!("in/s", Velocity, Velocity, velocity::inch_per_second, ["ips", "in/sec", "in per s", "inches per second"]),
    unit!("MPa", Stress, Pressure, pressure::megapascal, ["N/mm²", "N/mm^2", "megapascal"]),
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
        ["C", "C°", "deg C", "degrees C", "celsius", "degrees celsius", "degree celsius", "centigrade"]
    ),
    unit!(
        "°F",
        Temperature,
        Temperature,
        thermodynamic_temperature::degree_fahrenheit,
        ["F", "F°", "deg F", "degrees F", "fahrenheit", "degrees fahrenheit", "degree fahrenheit"]
    ),
    unit!("K", Temperature, Temperature, thermodynamic_temperature::kelvin, ["kelvin"]),
    unit!(
        "°C",
        TemperatureRise,
        TemperatureRise,
        temperature_interval::degree_celsius,
        ["C", "C°", "deg C", "degrees C", "celsius", "degrees celsius", "degree celsius", "centigrade"]
    ),
    unit!("K", TemperatureRise, TemperatureRise, temperature_interval::kelvin, ["kelvin"]),
    unit!(
        "°F",
        TemperatureRise,
        TemperatureRise,
        temperature_interval::degree_fahrenheit,
        ["F", "F°", "deg F", "degrees F", "fahrenheit", "degrees fahrenheit", "degree fahrenheit"]
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
        ["W/°C", "W/C", "W per K", "W per °C"]
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
    unit!("mm²/s", Viscosity, 1e-6, ["mm^2/s", "square mm per second", "mm²/sec"]),
    unit!("cSt", Viscosity, 1e-6, ["centistoke"]),
    unit!("m²", Area, Area, area::square_meter, ["m^2", "sq m", "square metre", "square meter"]),
    unit!("cm²", Area, Area, area::square_centimeter, ["cm^2", "sq cm", "square centimetre", "square centimeter"]),
    unit!("mm²", Area, Area, area::square_millimeter, ["mm^2", "sq mm", "square millimetre", "square millimeter"]),
    unit!("in²", Area, Area, area::square_inch, ["in^2", "sq in", "square inch", "square inches"]),
    unit!("ft²", Area, Area, area::square_foot, ["ft^2", "sq ft", "square foot", "square feet"]),
    unit!("L", Volume, Volume, volume::liter, ["litre", "liter", "ltr", "dm³", "dm^3", "dm3"]),
    unit!("mL", Volume, Volume, volume::milliliter, ["millilitre", "milliliter", "cm³", "cm^3", "cm3", "cc"]),
    unit!("US gal", Volume, US_GALLON, ["gal", "gallon", "US gallon"]),
    unit!("US qt", Volume, US_GALLON / 4.0, ["qt", "quart", "US quart"]),
    unit!("in³", Volume, US_GALLON / 231.0, ["in^3", "in3", "cu in", "cubic inch", "cubic inches"]),
    unit!("kg/m³", Density, MassDensity, mass_density::kilogram_per_cubic_meter, ["kg/m^3", "kg/m3"]),
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
    unit!("Hz", Frequency, Frequency, frequency::hertz, ["hertz", "cycles per second", "cps"]),
    unit!("cpm", Frequency, Frequency, frequency::cycle_per_minute, ["c/min", "cycles per minute", "cycles/min"]),
    unit!("A", Current, ElectricCurrent, electric_current::ampere, ["amp", "ampere"]),
    unit!("V", Voltage, ElectricPotential, electric_potential::volt, ["volt"]),
    unit!(
        "m/s²",
        Acceleration,
        Acceleration,
        acceleration::meter_per_second_squared,
        ["m/s^2", "metres per second squared", "meters per second squared"]
    ),
    unit!("g", Acceleration, Acceleration, acceleration::standard_gravity, ["gn", "g force"]),
    unit!("dB", Level, 1.0, ["dB(A)", "dBA", "decibel"]),
];

#[cfg(test)]
mod tests {
    use super::*;

    fn base(kind: Kind, symbol: &str, value: f64) -> f64 {
        Unit::find(kind, symbol).unwrap().to_base(value)
    }

    /// NIST SP 811 (2008), appendix B.8, conversion factors.
    #[test]
    fn factors_agree_with_published_ones() {
        for (kind, symbol, factor) in [
            (Kind::Length, "in", 2.54e-2),
            (Kind::Length, "ft", 3.048e-1),
            (Kind::Length, "mil", 2.54e-5),
            (Kind::Force, "lbf", 4.448_222),
            (Kind::Torque, "lbf·in", 1.129_848e-1),
            (Kind::Torque, "lbf·ft", 1.355_818),
            (Kind::Power, "hp", 7.456_999e2),
            (Kind::Power, "Btu/h", 2.930_711e-1),
            (Kind::Stress, "psi", 6.894_757e3),
            (Kind::Stress, "ksi", 6.894_757e6),
            (Kind::Velocity, "ft/min", 5.08e-3),
            (Kind::MassPerLength, "lb/ft", 1.488_164),
            (Kind::Speed, "r/min", 1.047_198e-1),
            (Kind::TemperatureRise, "°F", 5.0 / 9.0),
            (Kind::Conductance, "Btu/(h·°F)", 2.930_711e-1 * 1.8),
            (Kind::Viscosity, "cSt", 1e-6),
            (Kind::Volume, "US gal", 3.785_412e-3),
            (Kind::Volume, "US qt", 9.463_529e-4),
            (Kind::Volume, "in³", 1.638_706e-5),
            (Kind::Area, "in²", 6.4516e-4),
            (Kind::Density, "lb/US gal", 1.198_264e2),
            (Kind::Expansion, "1/°F", 1.8),
        ] {
            approx::assert_relative_eq!(base(kind, symbol, 1.0), factor, max_relative = 5e-7);
        }
        approx::assert_relative_eq!(base(Kind::Temperature, "°F", 200.0), 273.15 + 93.333_333, max_relative = 1e-7);
    }

    #[test]
    fn every_unit_goes_there_and_back() {
        for unit in UNITS {
            let back = unit.from_base(unit.to_base(12.5));
            approx::assert_relative_eq!(back, 12.5, max_relative = 1e-12);
        }
    }

    #[test]
    fn people_write_units_in_many_ways() {
        for (text, kind, symbol) in [
            ("in-lbf", Kind::Torque, "lbf·in"),
            ("ft·lb", Kind::Torque, "lbf·ft"),
            ("Nm", Kind::Torque, "N·m"),
            ("RPM", Kind::Speed, "r/min"),
            ("inches", Kind::Length, "in"),
            ("deg C", Kind::Temperature, "°C"),
            ("lbs", Kind::Force, "lbf"),
            ("Hours", Kind::Time, "h"),
        ] {
            let found = Unit::named(text).find(|unit| unit.kind == kind).map(|unit| unit.symbol);
            assert_eq!(found, Some(symbol), "{text}");
        }
        assert_eq!(Unit::named("furlong").count(), 0);
    }
}
