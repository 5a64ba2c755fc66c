//! Quantities, relations and drive cases: one hidden machine, every reading following from it.
//!
//! * [`Quantity`], [`Unit`], [`Instrument`]: what can be known about a drive, and how it is read and shown
//! * [`Relation`]: one quantity from others, with formula, limits, source and wrong turns
//! * [`formula`]: formulas as people write them
//! * [`Registry`]: all of them, linked into one graph; [`Path`]: from what is given to what is asked
//! * [`Family`]: what is fixed and what varies on a kind of drive; [`Plan`]: a family ready to draw a [`Case`] from
//! * [`Working`]: the path as a person would write it down; [`solve`]: any quantity from givens

// The browser build leaves the words of the topics out, and with them what only they use.
#![cfg_attr(wordless, allow(dead_code, unused_imports, unused_macros, missing_docs))]

/// `format!` for what an author is told of what they wrote: nothing in the browser build, where no author reads it and
/// every sentence would be loaded by every reader. A message of `messages!` is said with what is filled in:
/// `told!(NO_SUCH, "name" = name)`.
#[macro_export]
macro_rules! told {
    ($message:path $(, $place:literal = $word:expr)* $(,)?) => {
        if cfg!(wordless) { ::std::string::String::new() } else { $message.say(&[$(($place, $word.as_ref())),*]) }
    };
    ($($words:tt)*) => {
        if cfg!(wordless) { ::std::string::String::new() } else { ::std::format!($($words)*) }
    };
}

pub mod amount;
pub mod chance;
pub mod decimal;
mod expression;
pub mod face;
mod family;
pub mod formula;
mod instrument;
pub mod language;
pub mod packed;
mod path;
mod plan;
mod problem;
mod quantity;
pub mod registry;
pub mod relation;
pub mod schema;
pub mod solve;
mod source;
mod toml_file;
pub mod topics;
mod typed;
pub mod unit;
pub mod words;
pub mod working;

pub use expression::Expression;
pub use face::{Face, Misreading, Slip};
pub use family::{
    Asked, Draw, Family, FamilyProblem, Fault, Limit, OwnTable, Stated, Strange, cell, fixed_line, heading,
};
pub use instrument::{Display, Figures, Instrument, Step};
pub use path::{Choice as PathChoice, NoPath, Path};
pub use plan::{
    CannotDraw, Case, Favoured, MOST_ATTEMPTS, Needs, Otherwise, Plan, Rejections, fixed_otherwise, rounded_away,
};
#[cfg(not(wordless))]
pub use plan::{Nearest, Short};
pub use problem::{Problem, did_you_mean, did_you_mean_as, line_number, quoted, refusal};
pub use quantity::{Known, Quantity};
pub use registry::{Conversion, Linked, QuantityId, Registry, RelationId};
pub use relation::{Arg, Given, Role, Whole as Relation, WrongTurn};
pub use source::Source;
pub use toml_file::{read_toml, toml_problem};
pub use typed::{Answer, Choice, Slope, Turns, Typed};
pub use unit::{Kind, System, Unit};
pub use working::{Line, Working};
