//! Practice in the browser: the same cases, questions, marking and pictures, called with text and answering in JSON.
//!
//! * [`Bundle`]: the items, families and sentences of a course, packed when the course is built
//! * [`Desk`]: a bundle opened; answers one [`request`] after another
//! * [`Easel`]: draws the pictures that the desk describes; a module of its own (feature `pictures`), loaded when needed
//!
//! Compiled to WebAssembly, each is a module that exports `alloc`, `free` and `run`. The calculations themselves stand in
//! modules of their own (feature `calculations`), so that a page loads those it needs: what drawing a machine takes in one,
//! and what else each topic has, wrong turns above all, in another. The page keeps every decision out of its
//! scripts: what a unit is, how an answer is read and what it earns is all decided here.

use drivecourse_machine::language::Message;

#[cfg(all(wordless, feature = "calculations"))]
mod abacus;
pub mod away;
mod bundle;
mod desk;
#[cfg(all(wordless, not(feature = "calculations")))]
mod door;
mod easel;
mod json;
#[cfg(all(wordless, target_family = "wasm"))]
mod pieces;
pub mod progress;
pub mod request;
#[cfg(all(wordless, not(any(feature = "calculations", feature = "pictures"))))]
mod shared;

pub use bundle::{Bundle, Chapter};
pub use desk::Desk;
pub use easel::Easel;

/// Digest of the source files this was built from: a module with another one is stale.
pub const SOURCES: &str = env!("DRIVECOURSE_SOURCES");

/// What the desk and the progress page say of themselves.
pub fn messages() -> Vec<Message> {
    [desk::SAYS, progress::SAYS].concat()
}

/// The same as a number.
#[cfg_attr(not(feature = "calculations"), allow(dead_code))]
pub const DIGEST: u64 = match u64::from_str_radix(SOURCES, 16) {
    Ok(digest) => digest,
    Err(_) => panic!("the build script writes a number"),
};
