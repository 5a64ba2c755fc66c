//! The typed quantities that the calculations speak (SI inside), gathered from `uom`.
//!
//! A temperature ([`Temperature`]) and a temperature difference ([`TemperatureRise`]) are two
//! types: a rise can be added to a temperature, two temperatures cannot be added.
//!
//! ```compile_fail
//! use drivecourse_calc::units::Temperature;
//! fn sum(a: Temperature, b: Temperature) -> Temperature { a + b }
//! ```

pub use uom::si::f64::{
    Acceleration, Angle, AngularVelocity, Area, Energy, Force, Length, LinearMassDensity, Mass, Power, Pressure, Ratio,
    TemperatureInterval as TemperatureRise, ThermalConductance, ThermodynamicTemperature as Temperature, Time, Torque,
    Velocity, Volume,
};
pub use uom::si::{
    acceleration, angle, angular_velocity, area, energy, force, length, linear_mass_density, mass, power, pressure,
    ratio, temperature_interval, thermal_conductance, thermodynamic_temperature, time, torque, velocity, volume,
};

pub use uom::si::f64::{KinematicViscosity, MassDensity, TemperatureCoefficient};
pub use uom::si::{kinematic_viscosity, mass_density, temperature_coefficient};

pub use uom::si::f64::{ElectricCurrent, ElectricPotential, Frequency};
pub use uom::si::{electric_current, electric_potential, frequency};
