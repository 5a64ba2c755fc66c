//! The functions of the practice module, and the few small ones that it does not offer.

#![allow(unsafe_code)] // Only the declarations below; see there.
#![allow(missing_docs)] // As in `libm`.

pub use libm::{floor, lgamma, rint, scalbn};

macro_rules! take {
    ($($name:ident($($input:ident),+),)+) => {
        // SAFETY: the practice module exports each under this name, with these inputs (`shared!` makes both lists),
        // and the page refuses to start a module whose imports are of another kind. Numbers only pass.
        #[link(wasm_import_module = "practice")]
        unsafe extern "C" {
            $(
                // Libraries of the compiler define functions of the bare names.
                #[link_name = concat!("math_", stringify!($name))]
                pub safe fn $name($($input: f64),+) -> f64;
            )+
        }
    };
}

crate::shared!(take);
