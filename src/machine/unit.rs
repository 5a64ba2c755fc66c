//! Kinds of quantity and the units they are written in.
//!
//! Inside the program every value is a plain number in the coherent SI unit of its kind (metre,
//! newton, radian per second, kelvin ...). The [table](UNITS) is the only place where another unit's
//! name appears; the factors themselves come from `uom`.

mod spelling;
pub(crate) mod spoken;
mod table;

pub use table::UNITS;

use crate::messages;

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
        // In the order of the kinds, which a test holds it to.
        NAMES[self as usize].text()
    }
}

messages! { pub(crate) NAMES {
    COUNT = "kind-count", "a count";
    CHOICE = "kind-choice", "a choice";
    RATIO = "kind-ratio", "a plain number or percentage";
    SLOPE = "kind-slope", "a slope";
    TURNS = "kind-turns", "a number of turns";
    LENGTH = "kind-length", "a length";
    ANGLE = "kind-angle", "an angle";
    MASS = "kind-mass", "a mass";
    MASS_PER_LENGTH = "kind-mass-per-length", "a mass per length";
    FORCE = "kind-force", "a force";
    TORQUE = "kind-torque", "a torque";
    POWER = "kind-power", "a power";
    SPEED = "kind-speed", "a speed of rotation";
    VELOCITY = "kind-velocity", "a speed along a line";
    STRESS = "kind-stress", "a stress or pressure";
    TEMPERATURE = "kind-temperature", "a temperature";
    TEMPERATURE_RISE = "kind-temperature-rise", "a temperature difference";
    TIME = "kind-time", "a time";
    CONDUCTANCE = "kind-conductance", "a heat flow per degree";
    VISCOSITY = "kind-viscosity", "a viscosity";
    AREA = "kind-area", "an area";
    VOLUME = "kind-volume", "a volume";
    DENSITY = "kind-density", "a density";
    EXPANSION = "kind-expansion", "an expansion per degree";
    FREQUENCY = "kind-frequency", "a frequency";
    CURRENT = "kind-current", "a current";
    VOLTAGE = "kind-voltage", "a voltage";
    ACCELERATION = "kind-acceleration", "an acceleration";
    LEVEL = "kind-level", "a sound level";
} }

messages! { pub(crate) SAID {
    TURNS_SAID = "unit-turns", "turns";
} }

/// The two sets of units in which everything can be shown.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Default,
    serde::Serialize,
    serde::Deserialize,
    schemars::JsonSchema,
)]
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

    /// The unit as people read it: its symbol, or where that is a word, the word of the language spoken.
    pub fn said(&self) -> &'static str {
        if self.kind == Kind::Turns && self.symbol == "turns" { TURNS_SAID.text() } else { self.symbol }
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

    /// Every unit whose name, written out in the language spoken, is `text`: `Minuten`, `Grad Celsius`. In English there is
    /// none that [`Unit::named`] does not know.
    pub fn spoken(text: &str) -> impl Iterator<Item = &'static Self> {
        spoken::meanings(text)
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_stand_in_the_order_of_the_kinds() {
        assert_eq!(NAMES.len(), Kind::ALL.len());
        assert_eq!((Kind::Count.name(), Kind::Level.name()), ("a count", "a sound level"));
        assert_eq!(
            (Kind::MassPerLength.name(), Kind::TemperatureRise.name()),
            ("a mass per length", "a temperature difference")
        );
    }

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
