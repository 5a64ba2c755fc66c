//! Where a formula or a figure comes from.

use core::fmt;

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

impl fmt::Display for Source {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Published { document, place: "" } => f.write_str(document),
            Self::Published { document, place } => write!(f, "{document}, {place}"),
            Self::Derived(from) => write!(f, "derived: {from}"),
            Self::CommonPractice => f.write_str("common practice, no source"),
            Self::FromMemory(what) => write!(f, "from memory: {what}"),
        }
    }
}
