//! Vibration: which frequencies to look for, how much is too much, and whether it grows.
//!
//! * [`orders`]: shaft, mesh and chain frequencies; [`hunting`]: tooth pairs that meet again; [`bearing`]: rolling bearings
//! * [`spectrum`]: the overall value of its lines, and the part a line belongs to
//! * [`amplitude`]: displacement, velocity and acceleration of a sine; peak, peak-to-peak, r.m.s.
//! * [`zone`]: the zones A to D; tables: [`machine_limits`] (over 15 kW), [`general_limits`] (smaller machines),
//!   [`gear_unit_limits`]
//! * [`alarm`]: baseline from settled readings, alarm and trip, significant change
//! * [`control`]: control limits, moving ranges, weighted means; [`trend`]: lines and exponentials, time left to a limit
//!
//! Caution: readings are taken with the guards on, from outside them, with no loose clothing and nothing near moving parts.

pub mod alarm;
pub mod amplitude;
pub mod bearing;
pub mod control;
pub mod gear_unit_limits;
pub mod general_limits;
pub mod hunting;
pub mod machine_limits;
pub mod orders;
pub mod spectrum;
pub mod trend;
pub mod zone;

use crate::units::{Acceleration, Frequency, Length, Ratio, TemperatureRise, Velocity, frequency::hertz, ratio};

mod sealed {
    pub trait Sealed {}
}

/// A quantity that is read again and again and judged by its size: displacement, velocity or acceleration, and also an elongation
/// or a rise over ambient, which are charted and trended in the same way.
pub trait Measured: sealed::Sealed + Copy + PartialOrd {
    /// Value in coherent SI units.
    fn si(self) -> f64;
    /// The quantity of that value in coherent SI units.
    fn from_si(value: f64) -> Self;
}

macro_rules! measured {
    ($($quantity:ty),*) => {$(
        impl sealed::Sealed for $quantity {}
        impl Measured for $quantity {
            fn si(self) -> f64 {
                self.value
            }
            fn from_si(value: f64) -> Self {
                Self { dimension: core::marker::PhantomData, units: core::marker::PhantomData, value }
            }
        }
    )*};
}
measured!(Length, Velocity, Acceleration, Ratio, TemperatureRise);

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

fn hz(value: f64) -> Frequency {
    Frequency::new::<hertz>(value)
}
