//! After the start: when to look again, when to change the oil, and the verdict on the whole machine.
//!
//! * [`schedule`]: expanding intervals, what is due next; table: [`check_ages`]
//! * [`oil_change`]: first and later changes, by running hours or calendar
//! * [`wear_in`]: how a new chain stretches in its first hours
//! * [`verdict`]: accept, adjust or stop, and who may sign
//!
//! Caution: a check with hands or tools (bolts, soft foot, chain) needs the drive isolated, locked out and verified dead, every
//! time; only looking, listening and remote readings are done while it runs, guards on.

pub mod check_ages;
pub mod oil_change;
pub mod schedule;
pub mod verdict;
pub mod wear_in;
