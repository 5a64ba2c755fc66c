//! The course book: pages, practice cards, worked solutions and the figures in them.
//!
//! * [`figures`]: line drawings of the drive, its feet, shaft, shims and warm-up, drawn from numbers

pub mod figures;
