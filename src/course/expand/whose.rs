//! Whose the machine of an example is: said once in a chapter, so that nobody takes its numbers for those of a drive.

use std::cell::RefCell;
use std::collections::BTreeSet;

use drivecourse_machine::Plan;
use serde::Serialize;

/// Whose a machine is that a card is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub(super) enum Whose {
    /// Nobody's: it is made up.
    MadeUp,
    /// Of a module's table of real machines.
    Plant,
    /// The program's, made up, in a module that has families of its own.
    Program,
}

impl Whose {
    /// Of a machine of `plan`, where the families called `own` are the module's.
    pub(super) fn of(plan: &Plan, own: &BTreeSet<String>) -> Self {
        match own.contains(&plan.family.id) {
            true if plan.family.machines.is_empty() => Self::MadeUp,
            true => Self::Plant,
            false if own.is_empty() => Self::MadeUp,
            false => Self::Program,
        }
    }
}

/// What a chapter has said of its machines so far.
#[derive(Debug, Default)]
pub(super) struct Said(RefCell<BTreeSet<Whose>>);

impl Said {
    /// `whose`, the first time that it comes.
    pub(super) fn first(&self, whose: Whose) -> Option<Whose> {
        self.0.borrow_mut().insert(whose).then_some(whose)
    }
}
