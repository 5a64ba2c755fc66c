//! What a reading is taken with: its smallest step in each system of units.

use crate::messages;
use crate::unit::System;

/// How finely a value is shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Figures {
    /// This many decimal places.
    Places(u8),
    /// This many significant figures.
    Significant(u8),
    /// Whole numbers and a fraction with this denominator, in lowest terms (`1 3/16`).
    Fraction(u16),
}

/// A unit and how finely a value is shown in it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Display {
    /// Symbol of the unit, as in [`crate::unit::UNITS`].
    pub unit: &'static str,
    /// How finely.
    pub figures: Figures,
}

/// An instrument on the shop floor: its smallest step and how its readings are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[non_exhaustive]
pub enum Instrument {
    /// Steel scale held to a straightedge: 0.5 mm, or 1/64 in.
    Scale,
    /// Tape measure: 1 mm, or 1/16 in.
    Tape,
    /// Vernier or digital caliper: 0.02 mm, or 0.001 in.
    Caliper,
    /// Feeler gauge leaves: 0.05 mm, or 0.002 in.
    Feeler,
    /// Dial indicator: 0.01 mm, or 0.001 in.
    Dial,
    /// Precision level: 0.02 mm/m, or 0.0005 in/ft.
    Level,
    /// Contact or infrared thermometer: 1 °C, or 1 °F.
    Thermometer,
    /// Contact probe with a display in tenths: 0.1 °C, or 0.1 °F.
    FineThermometer,
    /// Watch: one minute.
    Watch,
    /// Tachometer: 1 r/min.
    Tachometer,
    /// Protractor or inclinometer: 1°.
    Protractor,
    /// Power meter in the motor's supply: 0.1 kW, or 0.1 hp.
    PowerMeter,
    /// Scale beside a sight glass, or a dipstick: 1 mm, or 1/32 in.
    SightGlass,
    /// Low-pressure gauge: 0.5 kPa, or 0.1 psi.
    PressureGauge,
    /// Voltmeter: 1 V.
    Voltmeter,
    /// Clamp ammeter: 0.1 A.
    Ammeter,
    /// Vibration meter, velocity: 0.01 mm/s, or 0.001 in/s.
    VibrationMeter,
    /// Vibration meter, displacement: 1 µm, or 0.1 mil.
    DisplacementMeter,
    /// Sound level meter: 0.1 dB.
    SoundMeter,
    /// Vibration analyser, frequency of a line: 0.02 Hz, or 1 cpm.
    Analyser,
}

/// Step of an instrument in one system: the unit it is marked in, the step, and how it is written.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step {
    /// Unit the instrument is marked in.
    pub unit: &'static str,
    /// Smallest step, in that unit.
    pub step: f64,
    /// How a reading is written.
    pub figures: Figures,
}

impl Instrument {
    /// Its name, as the trade says it.
    pub fn name(self) -> &'static str {
        match self {
            Self::Scale => SCALE,
            Self::Tape => TAPE,
            Self::Caliper => CALIPER,
            Self::Feeler => FEELER,
            Self::Dial => DIAL,
            Self::Level => LEVEL,
            Self::Thermometer => THERMOMETER,
            Self::FineThermometer => FINE_THERMOMETER,
            Self::Watch => WATCH,
            Self::Tachometer => TACHOMETER,
            Self::Protractor => PROTRACTOR,
            Self::PowerMeter => POWER_METER,
            Self::SightGlass => SIGHT_GLASS,
            Self::PressureGauge => PRESSURE_GAUGE,
            Self::Voltmeter => VOLTMETER,
            Self::Ammeter => AMMETER,
            Self::VibrationMeter | Self::DisplacementMeter => VIBRATION_METER,
            Self::SoundMeter => SOUND_METER,
            Self::Analyser => ANALYSER,
        }
        .text()
    }

    /// Its step in `system` (usual shop instruments; common practice, no source).
    pub fn step(self, system: System) -> Step {
        use Figures::{Fraction, Places};
        let (unit, step, figures) = match (self, system) {
            (Self::Scale, System::Si) => ("mm", 0.5, Places(1)),
            (Self::Scale, System::Us) => ("in", 1.0 / 64.0, Fraction(64)),
            (Self::Tape, System::Si) => ("mm", 1.0, Places(0)),
            (Self::Tape, System::Us) => ("in", 1.0 / 16.0, Fraction(16)),
            (Self::Caliper, System::Si) => ("mm", 0.02, Places(2)),
            (Self::Caliper, System::Us) => ("in", 0.001, Places(3)),
            (Self::Feeler, System::Si) => ("mm", 0.05, Places(2)),
            (Self::Feeler, System::Us) => ("in", 0.002, Places(3)),
            (Self::Dial, System::Si) => ("mm", 0.01, Places(2)),
            (Self::Dial, System::Us) => ("in", 0.001, Places(3)),
            (Self::Level, System::Si) => ("mm/m", 0.02, Places(2)),
            (Self::Level, System::Us) => ("in/ft", 0.0005, Places(4)),
            (Self::Thermometer, System::Si) => ("°C", 1.0, Places(0)),
            (Self::Thermometer, System::Us) => ("°F", 1.0, Places(0)),
            (Self::FineThermometer, System::Si) => ("°C", 0.1, Places(1)),
            (Self::FineThermometer, System::Us) => ("°F", 0.1, Places(1)),
            (Self::Watch, _) => ("min", 1.0, Places(0)),
            (Self::Tachometer, _) => ("r/min", 1.0, Places(0)),
            (Self::Protractor, _) => ("°", 1.0, Places(0)),
            (Self::PowerMeter, System::Si) => ("kW", 0.1, Places(1)),
            (Self::PowerMeter, System::Us) => ("hp", 0.1, Places(1)),
            (Self::SightGlass, System::Si) => ("mm", 1.0, Places(0)),
            (Self::SightGlass, System::Us) => ("in", 1.0 / 32.0, Fraction(32)),
            (Self::PressureGauge, System::Si) => ("kPa", 0.5, Places(1)),
            (Self::PressureGauge, System::Us) => ("psi", 0.1, Places(1)),
            (Self::Voltmeter, _) => ("V", 1.0, Places(0)),
            (Self::Ammeter, _) => ("A", 0.1, Places(1)),
            (Self::VibrationMeter, System::Si) => ("mm/s", 0.01, Places(2)),
            (Self::VibrationMeter, System::Us) => ("in/s", 0.001, Places(3)),
            (Self::DisplacementMeter, System::Si) => ("µm", 1.0, Places(0)),
            (Self::DisplacementMeter, System::Us) => ("mil", 0.1, Places(1)),
            (Self::SoundMeter, _) => ("dB", 0.1, Places(1)),
            (Self::Analyser, System::Si) => ("Hz", 0.02, Places(2)),
            (Self::Analyser, System::Us) => ("cpm", 1.0, Places(0)),
        };
        Step { unit, step, figures }
    }
}

messages! { pub(crate) NAMES {
    SCALE = "instrument-scale", "steel scale";
    TAPE = "instrument-tape", "tape measure";
    CALIPER = "instrument-caliper", "caliper";
    FEELER = "instrument-feeler", "feeler gauge";
    DIAL = "instrument-dial", "dial indicator";
    LEVEL = "instrument-level", "precision level";
    THERMOMETER = "instrument-thermometer", "thermometer";
    FINE_THERMOMETER = "instrument-fine-thermometer", "thermometer in tenths";
    WATCH = "instrument-watch", "watch";
    TACHOMETER = "instrument-tachometer", "tachometer";
    PROTRACTOR = "instrument-protractor", "protractor";
    POWER_METER = "instrument-power-meter", "power meter";
    SIGHT_GLASS = "instrument-sight-glass", "sight glass";
    PRESSURE_GAUGE = "instrument-pressure-gauge", "pressure gauge";
    VOLTMETER = "instrument-voltmeter", "voltmeter";
    AMMETER = "instrument-ammeter", "clamp ammeter";
    VIBRATION_METER = "instrument-vibration-meter", "vibration meter";
    SOUND_METER = "instrument-sound-meter", "sound level meter";
    ANALYSER = "instrument-analyser", "vibration analyser";
} }
