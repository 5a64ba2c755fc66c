//! The elementary functions that this module offers to those of calculations, so that a page loads one copy.

#![allow(unreachable_pub)] // Exported by name.
#![allow(unsafe_code)] // The names.

macro_rules! offer {
    ($($name:ident($($input:ident),+),)+) => {
        $(
            // The libraries of the compiler define functions of the bare names.
            #[unsafe(export_name = concat!("math_", stringify!($name)))]
            pub extern "C" fn $name($($input: f64),+) -> f64 {
                libm::$name($($input),+)
            }
        )+
    };
}

libm::shared!(offer);
