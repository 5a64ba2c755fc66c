//! An entry with everything that is said about it.

use super::{Arg, Eval, Role, WrongTurn};
use crate::source::Source;
use crate::unit::Kind;

/// One quantity from others: calculation, formula, limits, source and wrong turns.
#[derive(Debug, Clone, Copy)]
pub struct Relation {
    /// Id of what it gives and a word for the method, joined by `/`.
    pub id: &'static str,
    /// What it does, as a heading.
    pub title: &'static str,
    /// Which quantity it gives.
    pub gives: &'static str,
    /// Kind its result's type stands for.
    pub kind: Kind,
    /// What it is worked out from.
    pub args: &'static [Arg],
    /// The calculation.
    pub eval: Eval,
    /// Formulas as people use them, in the language of [`crate::formula`]: one for both systems of
    /// units, or SI first and US customary second. Empty when it is a method and no formula.
    pub formula: &'static [&'static str],
    /// The method in words, or what to mind; may be empty.
    pub method: &'static str,
    /// Where it holds and what is allowed; may be empty.
    pub limits: &'static str,
    /// Where it comes from.
    pub source: Source,
    /// How it goes wrong.
    pub turns: &'static [WrongTurn],
    /// Lower is preferred where several relations give the same quantity.
    pub rank: u8,
    /// What it is used for.
    pub role: Role,
    /// Whether a table is looked up on the way.
    pub lookup: bool,
    /// Whether it runs against the usual direction (centres from a chain length).
    pub inverse: bool,
}

impl Relation {
    /// Preferred less than others that give the same quantity.
    #[must_use]
    pub const fn rank(mut self, rank: u8) -> Self {
        self.rank = rank;
        self
    }

    /// Makes cases only.
    #[must_use]
    pub const fn model(mut self) -> Self {
        self.role = Role::Model;
        self
    }

    /// Asks and answers only.
    #[must_use]
    pub const fn question(mut self) -> Self {
        self.role = Role::Question;
        self
    }

    /// Runs against the usual direction; makes cases all the same.
    #[must_use]
    pub const fn backwards(mut self) -> Self {
        self.inverse = true;
        self
    }

    /// Runs against the usual direction; asks and answers only.
    #[must_use]
    pub const fn inverse(self) -> Self {
        self.backwards().question()
    }

    /// Needs a table.
    #[must_use]
    pub const fn lookup(mut self) -> Self {
        self.lookup = true;
        self
    }

    /// The method in words, or what to mind.
    #[must_use]
    pub const fn method(mut self, method: &'static str) -> Self {
        self.method = method;
        self
    }

    /// Where it holds and what is allowed.
    #[must_use]
    pub const fn limits(mut self, limits: &'static str) -> Self {
        self.limits = limits;
        self
    }

    /// The part of the id before the first dot: the topic in whose file it stands.
    pub fn topic(&self) -> &'static str {
        self.id.split('.').next().unwrap_or(self.id)
    }
}
