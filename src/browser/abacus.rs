//! A module of calculations alone: those that machines are made with, or what else one topic has.
//!
//! The page connects it to the practice module, which calls [`work`] from then on; only numbers pass between them.

#![allow(unreachable_pub)] // Exported by name.
#![allow(unsafe_code)] // Names that the page calls; each use says why it is sound.

use drivecourse_machine::relation::{Bare, away};
use drivecourse_machine::topics::{self, away::calculations, away::count};

/// The topic that these are of; what machines are made with where it is not set.
const TOPIC: Option<&str> = option_env!("DRIVECOURSE_TOPIC");

static CALCULATIONS: [Bare; count(TOPIC)] = calculations(TOPIC);

/// Where the practice module expects it.
// The page calls it by name; there is no other function of this name.
#[unsafe(no_mangle)]
pub extern "C" fn place() -> u32 {
    let topic = TOPIC.and_then(|topic| topics::titles().position(|(id, _)| id == topic));
    topic.map_or(away::RELATIONS, |topic| topic + 1) as u32
}

/// Digest of the source files it was built from.
// The page calls it by name; there is no other function of this name.
#[unsafe(no_mangle)]
pub extern "C" fn sources() -> u64 {
    crate::DIGEST
}

/// The result of one of its calculations; NaN where there is none.
// The page calls it by name; there is no other function of this name.
#[unsafe(no_mangle)]
#[rustfmt::skip]
#[allow(clippy::too_many_arguments)] // An `away::Calculation`, whose inputs pass one by one.
pub extern "C" fn work(
    which: u32, a: f64, b: f64, c: f64, d: f64, e: f64, f: f64, g: f64, h: f64,
    i: f64, j: f64, k: f64, l: f64, m: f64, n: f64, o: f64, p: f64,
) -> f64 {
    CALCULATIONS.get(which as usize).map_or(f64::NAN, |work| work(a, b, c, d, e, f, g, h, i, j, k, l, m, n, o, p))
}
