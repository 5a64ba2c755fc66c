//! Questions about drive cases: items, answers, marking and diagnosis.
//!
//! * [`Bank`]: the families and items of a module, read and checked together
//! * [`item`]: what is asked, from what, in which words
//! * [`question`]: an item put about one machine, with its key and the wrong answers it foresees
//! * [`mark()`]: what a written answer earns, what went wrong, carried errors
//! * [`simulate`]: apprentices with habits, for the demonstration and the tests

mod bank;
pub mod explain;
pub mod item;
pub mod mark;
pub mod predict;
pub mod question;
pub mod simulate;
pub mod tolerance;

pub use bank::{Bank, FileProblem, hint};
pub use item::{Ask, Item, PartSpec, When, read_items};
pub use mark::{Mark, Verdict, mark};
pub use predict::{Cause, Predicted};
pub use question::{Body, Key, Part, Question, Setting, Unsettled};

pub use drivecourse_machine::amount::letter;
