//! Catches what the book program would log, so that the caller decides what to print.

use std::fmt::{self, Write};
use std::sync::{Arc, Mutex, PoisonError};

use tracing::field::{Field, Visit};
use tracing::span::{Attributes, Id, Record};
use tracing::subscriber::{Interest, Subscriber, with_default};
use tracing::{Event, Level, Metadata};

/// Runs `work` and returns its result with every warning and error logged meanwhile on this thread.
pub(super) fn gather<T>(work: impl FnOnce() -> T) -> (T, Vec<String>) {
    let list = Arc::new(Mutex::new(Vec::new()));
    let result = with_default(Catcher(Arc::clone(&list)), work);
    let lines = std::mem::take(&mut *list.lock().unwrap_or_else(PoisonError::into_inner));
    (result, lines)
}

struct Catcher(Arc<Mutex<Vec<String>>>);

impl Subscriber for Catcher {
    fn register_callsite(&self, _: &'static Metadata<'static>) -> Interest {
        // Asked each time, because another thread may be building with a list of its own.
        Interest::sometimes()
    }

    fn enabled(&self, metadata: &Metadata<'_>) -> bool {
        *metadata.level() <= Level::WARN
    }

    fn event(&self, event: &Event<'_>) {
        let mut message = Message(String::new());
        event.record(&mut message);
        self.0.lock().unwrap_or_else(PoisonError::into_inner).push(message.0);
    }

    fn new_span(&self, _: &Attributes<'_>) -> Id {
        Id::from_u64(1)
    }

    fn record(&self, _: &Id, _: &Record<'_>) {}

    fn record_follows_from(&self, _: &Id, _: &Id) {}

    fn enter(&self, _: &Id) {}

    fn exit(&self, _: &Id) {}
}

struct Message(String);

impl Visit for Message {
    fn record_debug(&mut self, field: &Field, value: &dyn fmt::Debug) {
        if field.name() == "message" {
            // Writing to a string does not fail.
            let _ = write!(self.0, "{value:?}");
        }
    }
}
