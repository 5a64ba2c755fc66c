//! Temperature of a gear unit: rise over ambient, warm-up and settling, heat balance, infrared readings.
//!
//! Everything here keeps a temperature and a temperature difference apart: 100 °F as a *rise* is 55.6 K, 100 °F as a
//! *reading* is 37.8 °C.

pub mod balance;
pub mod infrared;
pub mod rise;
pub mod warm_up;
