//! Questions about drive cases: items, answers, marking and diagnosis.
//!
//! * [`item`]: what is asked, from what, in which words
//! * [`question`]: an item put about one machine, with its key and the wrong answers it foresees
//! * [`mark()`]: what a written answer earns, what went wrong, carried errors
//! * [`simulate`]: apprentices with habits, for the demonstration and the tests

pub mod explain;
pub mod item;
pub mod mark;
pub mod predict;
pub mod question;
pub mod simulate;
pub mod tolerance;

pub use item::{Ask, Item, PartSpec, When, read_items};
pub use mark::{Mark, Verdict, mark};
pub use predict::{Cause, Predicted};
pub use question::{Body, Key, Part, Question, Setting, Unsettled};

pub use drivecourse_machine::amount::letter;
