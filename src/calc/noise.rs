//! Noise: levels in decibels, and what an ear may take in a day.
//!
//! * [`level`]: sums and means of levels; [`background`]: the noise of the place taken out
//! * [`exposure`]: dose, time-weighted average and time allowed; tables: [`reference_durations`], [`permissible_durations`]
//!
//! Caution: ear protection first, readings afterwards. Local law sets the limits; those here are examples.

pub mod background;
pub mod exposure;
pub mod level;
pub mod permissible_durations;
pub mod reference_durations;

pub use level::Level;
