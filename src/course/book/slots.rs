//! Finished HTML that the book program need not read.
//!
//! Cards and pictures make up most of a course and need nothing that the book program does to a chapter's words. They are
//! kept back from the chapters and put into the finished pages: a build is shorter, and numbers of practice stay out of the
//! search.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};

use crate::trusted::Trusted;

/// HTML kept back, each piece by its name; clones share what they hold.
#[derive(Debug, Clone, Default)]
pub struct Slots(Arc<Mutex<BTreeMap<String, Arc<Trusted>>>>);

impl Slots {
    /// How a place in a page begins that waits for HTML; its name and [`Self::END`] follow.
    pub(super) const START: &str = "<div data-kept=\"";
    /// How it ends.
    pub(super) const END: &str = "\"></div>";

    /// Keeps `html` under `name`, which must be unique in the book; returns what holds its place.
    pub(crate) fn keep(&self, name: &str, html: Trusted) -> String {
        self.0.lock().unwrap_or_else(PoisonError::into_inner).insert(name.to_owned(), Arc::new(html));
        format!("{}{name}{}", Self::START, Self::END)
    }

    /// What is kept under `name`.
    pub(super) fn get(&self, name: &str) -> Option<Arc<Trusted>> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner).get(name).cloned()
    }
}
