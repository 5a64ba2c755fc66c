//! Practice in the browser: the same cases, questions, marking and pictures, called with JSON and answering in JSON.
//!
//! * [`Bundle`]: the items, families and sentences of a course, packed when the course is built
//! * [`Desk`]: a bundle opened; answers one [`request`] after another
//!
//! Compiled to WebAssembly, three functions are exported: `alloc`, `free` and `run`. The page keeps every decision out
//! of its scripts: what a unit is, how an answer is read and what it earns is all decided here.

mod bundle;
mod desk;
#[cfg(target_arch = "wasm32")]
mod door;
pub mod request;

pub use bundle::Bundle;
pub use desk::Desk;

/// Digest of the source files this was built from, as the build script works it out.
pub const SOURCES: &str = "";
