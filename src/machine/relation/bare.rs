//! An entry of the browser build: calculations alone (see [`crate::words`] and [`super::away`]).

/// A calculation; NaN stands for no result.
#[rustfmt::skip]
pub type Bare = fn(f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64) -> f64;

/// The calculation that has no result.
pub const NOTHING: Bare = |_, _, _, _, _, _, _, _, _, _, _, _, _, _, _, _| f64::NAN;

/// The calculation of one entry, and its wrong turns.
#[derive(Debug, Clone, Copy)]
pub struct Relation {
    own: &'static [Bare],
    turns: &'static [Bare],
    /// Whether no machine is made with it.
    asks_only: bool,
}

impl Relation {
    pub(crate) const fn new(own: &'static [Bare], turns: &'static [Bare]) -> Self {
        Self { own, turns, asks_only: false }
    }

    /// Asks and answers only.
    #[must_use]
    pub(crate) const fn question(mut self) -> Self {
        self.asks_only = true;
        self
    }

    /// Runs against the usual direction; asks and answers only.
    #[must_use]
    pub(crate) const fn inverse(self) -> Self {
        self.question()
    }

    /// What of it stands in the module of its topic, or in that of the relations.
    pub(crate) const fn of_module(&self, topic: bool) -> [&'static [Bare]; 2] {
        let own = if self.asks_only == topic { self.own } else { &[] };
        [own, if topic { self.turns } else { &[] }]
    }
}

/// What an entry says travels with the words.
macro_rules! said {
    ($($name:ident($($value:ty)?))*) => {
        impl Relation {
            $(
                #[must_use]
                pub(crate) const fn $name(self $(, _: $value)?) -> Self {
                    self
                }
            )*
        }
    };
}
said! { rank(u8) model() backwards() lookup() method(&'static str) limits(&'static str) }
