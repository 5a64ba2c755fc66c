//! Questions about drive cases: items, answers, marking and diagnosis.

pub mod item;
pub mod predict;
pub mod question;
pub mod tolerance;

pub use item::{Ask, Item, PartSpec, When, read_items};
pub use predict::{Cause, Predicted};
pub use question::{Body, Key, Part, Question, Setting, Unsettled, letter};
