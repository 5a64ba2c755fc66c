//! The course: the book, its practice cards, worked solutions, figures and papers.
//!
//! * [`book`]: the book program embedded, with guards for the output folder
//! * [`expand`]: directives in a chapter turned into practice cards, worked examples and reference tables
//! * [`card`]: what cards and papers share: givens, workings, answers; papers filled from questions
//! * [`links`]: what chapters refer to, and whether it is there
//! * [`portray`]: the picture of a case, by name
//! * [`mod@reference`]: formulas, mistakes, sources and quantities, from the registry
//! * [`pages`]: the single-file pages: papers, keys, results
//! * [`figures`]: line drawings of the drive, its feet, shaft, shims and warm-up, drawn from numbers

pub mod book;
pub mod card;
pub mod expand;
pub mod figures;
pub mod links;
pub mod pages;
pub mod portray;
pub mod reference;
