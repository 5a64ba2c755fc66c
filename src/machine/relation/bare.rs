//! An entry of the browser build: calculations alone (see [`crate::words`] and [`super::away`]).

/// A calculation; NaN stands for no result.
#[rustfmt::skip]
pub type Bare = fn(f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64) -> f64;

/// The calculation of one entry, or its wrong turns.
#[derive(Debug, Clone, Copy)]
pub struct Relation {
    pub(crate) calculations: &'static [Bare],
    pub(crate) inverse: bool,
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
said! { rank(u8) model() question() inverse() lookup() method(&'static str) limits(&'static str) }
