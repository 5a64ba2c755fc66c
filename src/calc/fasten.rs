//! Fasteners, keys and bushings: what holds the machine down and the hub on.
//!
//! * [`thread`]: tensile stress areas, inch and metric; [`thread_sizes`]: the threads themselves
//! * [`grades`]: SAE J429 grades and ISO 898-1 property classes
//! * [`bolt`]: preload, torque, stretch, turn, share of an outside load; [`nut_factors`]: named lists of K
//! * [`order`]: tightening order, crosswise and in stages
//! * [`key`]: stress and length; [`key_sizes`]: ANSI B17.1; [`key_sizes_metric`]: DIN 6885 / ISO 773
//! * [`bushing`]: taper bushings
//!
//! Caution: isolate, lock out and verify zero energy before a base bolt, coupling guard or bushing is touched; support
//! what may drop or roll.

pub mod bolt;
pub mod bushing;
pub mod grades;
pub mod key;
pub mod key_sizes;
pub mod key_sizes_metric;
pub mod nut_factors;
pub mod order;
pub mod thread;
pub mod thread_sizes;

use crate::units::{Force, Length, Pressure, Ratio, Torque, force, length, pressure, ratio, torque};
use core::marker::PhantomData;

fn metres(value: f64) -> Length {
    Length::new::<length::meter>(value)
}

fn newtons(value: f64) -> Force {
    Force::new::<force::newton>(value)
}

fn newton_metres(value: f64) -> Torque {
    Torque::new::<torque::newton_meter>(value)
}

fn pascals(value: f64) -> Pressure {
    Pressure::new::<pressure::pascal>(value)
}

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

/// A plain number as a ratio, for constants.
const fn ratio_of(value: f64) -> Ratio {
    Ratio { dimension: PhantomData, units: PhantomData, value }
}

/// An inch in metres.
const INCH: f64 = 0.025_4;

/// A length from its value in inches, for constants (`new` of the units crate is not `const`).
const fn inches(value: f64) -> Length {
    Length { dimension: PhantomData, units: PhantomData, value: value * INCH }
}

/// A length from its value in millimetres, for constants.
const fn millimetres(value: f64) -> Length {
    Length { dimension: PhantomData, units: PhantomData, value: value * 1e-3 }
}
