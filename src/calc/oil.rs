//! Oil: how thick it is, which grade it belongs to, how high it stands, and how long it lasts.
//!
//! * [`viscosity`]: kinematic viscosity at any temperature from two readings (ASTM D341)
//! * [`index`]: viscosity index (ASTM D2270); [`index_table`] holds its coefficients
//! * [`grade`]: the ISO 3448 grades; [`agma`]: the older AGMA lubricant numbers
//! * [`choice`]: a grade for the viscosity wanted at running temperature
//! * [`expansion`]: volume with temperature; [`level`]: what that does to the level between the marks
//! * [`breather`]: pressure behind a blocked vent
//! * [`life`]: the ten-degree rule
//!
//! Caution: stop, isolate, lock out and verify zero energy before a plug or breather is opened; hot oil scalds, and a
//! sealed housing may hold pressure.

pub mod agma;
pub mod breather;
pub mod choice;
pub mod expansion;
pub mod grade;
pub mod index;
pub mod index_table;
pub mod level;
pub mod life;
pub mod viscosity;

use crate::units::{
    KinematicViscosity, Temperature, kinematic_viscosity::square_meter_per_second, thermodynamic_temperature::kelvin,
};

/// Square millimetres in a square metre: viscosities are tabulated in mm²/s.
const SQUARE_MM: f64 = 1e6;

/// A viscosity as its number in mm²/s, freed of the last bits that a change of unit leaves behind.
///
/// Twelve significant digits are kept, so that 242 mm²/s typed in any unit is 242 and not a hair above the limit.
fn square_mm(viscosity: KinematicViscosity) -> f64 {
    let value = viscosity.value * SQUARE_MM;
    if value <= 0.0 || !value.is_finite() {
        return value;
    }
    let scale = crate::math::pow(10.0, 11.0 - crate::math::log10(value).floor());
    (value * scale).round() / scale
}

/// A viscosity from its number in mm²/s.
fn viscosity_of(square_mm: f64) -> KinematicViscosity {
    KinematicViscosity::new::<square_meter_per_second>(square_mm / SQUARE_MM)
}

fn kelvins(value: f64) -> Temperature {
    Temperature::new::<kelvin>(value)
}

/// Ice point of the Celsius scale, K (exact by definition).
const ICE_POINT: f64 = 273.15;

/// 40 °C, the temperature that grades and the viscosity index refer to.
fn forty_celsius() -> Temperature {
    kelvins(ICE_POINT + 40.0)
}

/// 100 °C, the other temperature of the viscosity index.
fn hundred_celsius() -> Temperature {
    kelvins(ICE_POINT + 100.0)
}
