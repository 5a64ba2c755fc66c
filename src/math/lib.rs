//! The elementary functions, which the other crates call by the name `libm`: it is that library, with the same bits on
//! every platform.
//!
//! A page in the browser loads several modules, and each would bring its own copy of the functions that its calculations
//! take. So the practice module offers its own ([`shared!`]), and a module of calculations (feature `shared`) takes those.

/// Goes through the functions that modules share: hands `$apply` each one's name and the names of its inputs.
#[macro_export]
macro_rules! shared {
    ($apply:ident) => {
        $apply! {
            acos(x), asin(x), asinh(x), atan(x), atan2(y, x), cos(x), cosh(x), exp(x), expm1(x), log(x), log10(x),
            pow(x, y), sin(x), sinh(x), tan(x),
        }
    };
}

#[cfg(not(all(wordless, feature = "shared")))]
pub use libm::*;

#[cfg(all(wordless, feature = "shared"))]
mod taken;
#[cfg(all(wordless, feature = "shared"))]
pub use taken::*;
