//! The bridge between the flat numbers of a case and the typed functions of the calculation crate.

use drivecourse_calc::noise::level::Level;
use drivecourse_calc::{Error, units as u};

use crate::unit::Kind;

/// A type of the calculation crate that one number of a case stands for.
pub trait Typed: Sized {
    /// The kind that a quantity of this type must have.
    const KIND: Kind;
    /// From the coherent SI number.
    fn from_base(base: f64) -> Self;
    /// To the coherent SI number.
    fn base(self) -> f64;
}

macro_rules! typed {
    ($($type:ident => $kind:ident),* $(,)?) => {$(
        impl Typed for u::$type {
            const KIND: Kind = Kind::$kind;
            #[inline]
            fn from_base(base: f64) -> Self {
                Self { dimension: core::marker::PhantomData, units: core::marker::PhantomData, value: base }
            }
            #[inline]
            fn base(self) -> f64 {
                self.value
            }
        }
    )*};
}

typed! {
    Length => Length, Angle => Angle, Mass => Mass, LinearMassDensity => MassPerLength, Force => Force,
    Torque => Torque, Power => Power, AngularVelocity => Speed, Velocity => Velocity, Pressure => Stress,
    Temperature => Temperature, TemperatureRise => TemperatureRise, Time => Time, ThermalConductance => Conductance,
    Ratio => Ratio, KinematicViscosity => Viscosity, Area => Area, Volume => Volume, MassDensity => Density,
    TemperatureCoefficient => Expansion,
    Frequency => Frequency, ElectricCurrent => Current, ElectricPotential => Voltage, Acceleration => Acceleration,
}

impl Typed for u32 {
    const KIND: Kind = Kind::Count;
    #[inline]
    fn from_base(base: f64) -> Self {
        // Saturates: a count out of a sane range is refused by the calculation, not wrapped.
        base.round() as Self
    }
    #[inline]
    fn base(self) -> f64 {
        f64::from(self)
    }
}

/// Index of a [`Kind::Choice`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Choice(pub u16);

impl Typed for Choice {
    const KIND: Kind = Kind::Choice;
    #[inline]
    fn from_base(base: f64) -> Self {
        Self(base.round() as u16)
    }
    #[inline]
    fn base(self) -> f64 {
        f64::from(self.0)
    }
}

/// A rise over a run, told apart from other plain numbers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slope(pub u::Ratio);

impl Typed for Slope {
    const KIND: Kind = Kind::Slope;
    #[inline]
    fn from_base(base: f64) -> Self {
        Self(u::Ratio::from_base(base))
    }
    #[inline]
    fn base(self) -> f64 {
        self.0.base()
    }
}

impl Typed for Level {
    const KIND: Kind = Kind::Level;
    #[inline]
    fn from_base(base: f64) -> Self {
        Self::db(base)
    }
    #[inline]
    fn base(self) -> f64 {
        self.in_db()
    }
}

/// A number of turns or revolutions, told apart from other plain numbers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turns(pub u::Ratio);

impl Typed for Turns {
    const KIND: Kind = Kind::Turns;
    #[inline]
    fn from_base(base: f64) -> Self {
        Self(u::Ratio::from_base(base))
    }
    #[inline]
    fn base(self) -> f64 {
        self.0.base()
    }
}

/// What a calculation gives back: the value itself, or a result.
pub trait Answer<T> {
    /// As a number, with whatever may have gone wrong.
    ///
    /// # Errors
    /// The calculation's own.
    fn number(self) -> Result<f64, Error>;
}

impl<T: Typed> Answer<T> for T {
    #[inline]
    fn number(self) -> Result<f64, Error> {
        Ok(self.base())
    }
}

impl<T: Typed> Answer<T> for Result<T, Error> {
    #[inline]
    fn number(self) -> Result<f64, Error> {
        self.map(Typed::base)
    }
}
