//! An entry of the browser build: the calculations alone (see [`crate::words`]).

use super::{Eval, Role};
use crate::unit::Kind;

/// The calculations of one entry.
#[derive(Debug, Clone, Copy)]
pub struct Relation {
    pub(crate) kind: Kind,
    pub(crate) eval: Eval,
    pub(crate) turns: &'static [Eval],
    pub(crate) rank: u8,
    pub(crate) role: Role,
    pub(crate) lookup: bool,
    pub(crate) inverse: bool,
}

impl Relation {
    uses!();

    /// Its words come later.
    #[must_use]
    pub(crate) const fn method(self, _: &'static str) -> Self {
        self
    }

    /// Its words come later.
    #[must_use]
    pub(crate) const fn limits(self, _: &'static str) -> Self {
        self
    }
}
