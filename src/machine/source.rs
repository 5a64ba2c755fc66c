//! Where a formula or a figure comes from.

use core::fmt;

use crate::messages;

/// Where a formula, limit or table comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Source {
    /// A published document, and the place in it.
    Published {
        /// Author and title, or the standard's number.
        document: &'static str,
        /// Section, table, equation or page.
        place: &'static str,
    },
    /// Follows from geometry, mechanics or the definitions by itself.
    Derived(&'static str),
    /// Usual in the trade; no document stands behind it.
    CommonPractice,
    /// Recalled, with no copy at hand; what it was recalled from.
    FromMemory(&'static str),
}

impl Source {
    /// A published document and the place in it.
    pub const fn published(document: &'static str, place: &'static str) -> Self {
        Self::Published { document, place }
    }
}

messages! { pub(crate) SAYS {
    DERIVED = "source-derived", "derived: {what}";
    COMMON_PRACTICE = "source-common-practice", "common practice, no source";
    /// Before an input that a plant states for itself.
    OWN_VALUE = "source-own-value", "{quantity} {value}, the plant's own: {source}";
    /// The source of a calculation, after inputs that are the plant's own.
    OF_THE_REST = "source-of-the-rest", "the calculation itself: {source}";
    FROM_MEMORY = "source-from-memory", "from memory: {what}";
} }

impl fmt::Display for Source {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Published { document, place: "" } => f.write_str(document),
            Self::Published { document, place } => write!(f, "{document}, {place}"),
            Self::Derived(from) => f.write_str(&DERIVED.say(&[("what", from)])),
            Self::CommonPractice => f.write_str(COMMON_PRACTICE.text()),
            Self::FromMemory(what) => f.write_str(&FROM_MEMORY.say(&[("what", what)])),
        }
    }
}
