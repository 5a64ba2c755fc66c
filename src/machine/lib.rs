//! Quantities, relations and drive cases: one hidden machine, every reading following from it.
//!
//! * [`Quantity`], [`Unit`], [`Instrument`]: what can be known about a drive, and how it is read and shown
//! * [`Relation`]: one quantity from others, with formula, limits, source and wrong turns
//! * [`formula`]: formulas as people write them

pub mod amount;
pub mod formula;
mod instrument;
mod quantity;
pub mod relation;
mod source;
mod typed;
pub mod unit;

pub use instrument::{Display, Figures, Instrument, Step};
pub use quantity::{Known, Quantity};
pub use relation::{Arg, Given, Relation, Role, WrongTurn};
pub use source::Source;
pub use typed::{Answer, Choice, Slope, Turns, Typed};
pub use unit::{Kind, System, Unit};
