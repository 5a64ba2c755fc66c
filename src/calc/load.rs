//! Torque, overhung load, bearing reactions and life, and shaft stress: what the chain does to the shaft end.
//!
//! The chain of reasoning, each step a module: the motor's power gives a [`torque`], the torque over the sprocket's
//! radius gives a pull and an [`overhung`] load, the overhung load gives the [`bearing`] reactions and lives,
//! and its moment gives the stress in the [`shaft`].

pub mod bearing;
pub mod overhung;
pub mod shaft;
pub mod torque;
