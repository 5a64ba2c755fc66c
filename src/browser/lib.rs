//! Practice in the browser: the same cases, questions, marking and pictures, called with text and answering in JSON.
//!
//! * [`Bundle`]: the items, families and sentences of a course, packed when the course is built
//! * [`Desk`]: a bundle opened; answers one [`request`] after another
//! * [`Easel`]: draws the pictures that the desk describes; a module of its own (feature `pictures`), loaded when needed
//!
//! Compiled to WebAssembly, three functions are exported: `alloc`, `free` and `run`. The page keeps every decision out
//! of its scripts: what a unit is, how an answer is read and what it earns is all decided here.

use drivecourse_machine::language::Message;

mod bundle;
mod desk;
#[cfg(target_arch = "wasm32")]
mod door;
mod easel;
mod json;
pub mod progress;
pub mod request;

pub use bundle::Bundle;
pub use desk::Desk;
pub use easel::Easel;

/// Digest of the source files this was built from: a module with another one is stale.
pub const SOURCES: &str = env!("DRIVECOURSE_SOURCES");

/// What the desk and the progress page say of themselves.
pub fn messages() -> Vec<Message> {
    [desk::SAYS, progress::SAYS].concat()
}
