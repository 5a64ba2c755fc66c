//! The course: the book, its practice cards, worked solutions, figures and papers.
//!
//! * [`book`]: the book program embedded, with guards for the output folder
//! * [`pages`]: the single-file pages: papers, keys, results
//! * [`figures`]: line drawings of the drive, its feet, shaft, shims and warm-up, drawn from numbers

pub mod book;
pub mod figures;
pub mod pages;
