//! The first start: how fast a three-phase induction motor turns, and how hard it works.
//!
//! * [`speed`]: synchronous speed, slip, speed at a load, and the load that a speed reading shows
//! * [`motor`]: power from volts, amps, power factor and efficiency, load share, current and its limits
//! * [`rotation`]: which way the shafts turn
//! * [`supply`]: mean of the three phases and how unequal they are
//!
//! Caution: electrical readings are for people qualified and authorised to take them, by the local code. Guards on,
//! people clear, before any start; the load is read with the guards closed.

pub mod motor;
pub mod rotation;
pub mod speed;
pub mod supply;

use crate::units::{Ratio, ratio};

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}
