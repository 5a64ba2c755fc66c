/// What a calculation returns.
pub type Result<T> = core::result::Result<T, Error>;

#[cfg(not(wordless))]
mod told {
    use core::fmt;

    /// Why a calculation has no answer. It carries the facts; the faces of the program find the words.
    #[derive(Debug, Clone, Copy, PartialEq)]
    #[non_exhaustive]
    pub enum Error {
        /// An input lies outside the range the formula holds for.
        OutOfRange {
            /// Which input, by its plain name (`"sag"`).
            input: &'static str,
            /// Its value in coherent SI units (metre, newton, watt, radian per second, kelvin ...).
            value: f64,
            /// Smallest value allowed, same unit.
            min: f64,
            /// Largest value allowed, same unit.
            max: f64,
        },
        /// The readings do not approach a settled value, so none can be foretold.
        NotSettling,
        /// No pack of leaves, chain length or root meets the request within its limits.
        NoSolution {
            /// What was sought (`"shim pack"`).
            sought: &'static str,
        },
    }

    impl fmt::Display for Error {
        fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
            match self {
                Self::OutOfRange { input, value, min, max } => {
                    write!(f, "{input} is {value}, outside {min} to {max} (SI units)")
                }
                Self::NotSettling => f.write_str("the readings are not settling yet"),
                Self::NoSolution { sought } => write!(f, "no {sought} meets the request"),
            }
        }
    }

    impl core::error::Error for Error {}

    impl Error {
        /// No `sought` meets the request.
        pub const fn none(sought: &'static str) -> Self {
            Self::NoSolution { sought }
        }

        /// `value` of `input` lies outside `min` to `max`.
        pub const fn outside(input: &'static str, value: f64, min: f64, max: f64) -> Self {
            Self::OutOfRange { input, value, min, max }
        }
    }
}

#[cfg(wordless)]
mod told {
    use core::fmt;

    /// Why a calculation has no answer, without the facts: the browser build, which shows none of them, is far smaller.
    #[derive(Debug, Clone, Copy, PartialEq)]
    pub enum Error {
        /// An input lies outside the range the formula holds for.
        OutOfRange,
        /// The readings do not approach a settled value.
        NotSettling,
        /// Nothing meets the request.
        NoSolution,
    }

    impl Error {
        /// Nothing meets the request.
        pub const fn none(_: &'static str) -> Self {
            Self::NoSolution
        }

        /// An input lies outside its range.
        pub const fn outside(_: &'static str, _: f64, _: f64, _: f64) -> Self {
            Self::OutOfRange
        }
    }

    impl fmt::Display for Error {
        fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
            f.write_str("outside what the formula holds for")
        }
    }

    impl core::error::Error for Error {}
}

pub use told::Error;

/// Gives `value` back when it lies in `min..=max`, an [`Error::OutOfRange`] otherwise (NaN included).
#[cfg_attr(wordless, inline(never))]
pub(crate) fn within(input: &'static str, value: f64, min: f64, max: f64) -> Result<f64> {
    if value >= min && value <= max { Ok(value) } else { Err(Error::outside(input, value, min, max)) }
}

/// [`within`] for a value that must be greater than nought and finite.
pub(crate) fn positive(input: &'static str, value: f64) -> Result<f64> {
    within(input, value, f64::MIN_POSITIVE, f64::MAX)
}
