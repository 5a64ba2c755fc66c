//! Pure calculations for geared, chain-driven machines: one file a trade topic.
//!
//! Every public function takes and returns typed quantities (crate `uom`, SI inside),
//! has no side effect, asks neither clock nor chance, and gives the same bits on every
//! platform: all transcendental functions come from [`math`], a thin face of `libm`.
//!
//! * [`mount`]: soft foot, angled feet, shim packs, levelness
//! * [`oil`]: viscosity, grade, viscosity index, expansion, level, breather, oil life
//! * [`align`]: sprocket faces, rim and face, reverse indicators, thermal growth
//! * [`chain`]: sprockets, length, sag, tension, take-up, wear, capacity
//! * [`load`]: torque, overhung load, bearing reactions, life, shaft stress
//! * [`fasten`]: bolts, preload and torque, tightening order, keys, taper bushings
//! * [`heat`]: rise over ambient, warm-up, settling, heat balance, infrared readings
//! * [`start_up`]: motor speed, slip, power, load and current at the first start
//! * [`vibrate`]: frequencies to look for, amplitudes, severity, alarms, control charts and trends
//! * [`noise`]: levels added, averaged and freed of background; what an ear may take in a day
//! * [`follow_up`]: when to look again, oil changes, the verdict on the whole machine and who may sign it
//!
//! A value outside a function's stated range gives an [`Error`] that names the input,
//! the value and the range; nothing panics.

pub mod align;
pub mod chain;
mod error;
pub mod fasten;
pub mod follow_up;
pub mod heat;
pub mod load;
pub mod math;
pub mod mount;
pub mod noise;
pub mod oil;
pub mod start_up;
pub mod units;
pub mod vibrate;

pub use error::{Error, Result};
