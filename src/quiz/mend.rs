//! What several files say of what is wrong in them, and how it is mended.

use core::ops::Range;

pub(crate) use drivecourse_machine::quoted;
use drivecourse_machine::{Problem, System, messages};

messages! { pub(crate) SAYS {
    WRITE = "problem-mend-write", "Write {example}.";
    WRITE_SAY = "problem-mend-write-say", "Write {example}, say.";
    WRITE_EITHER = "problem-mend-write-either", "Write {one} or {other}.";
    WRITE_EITHER_SAY = "problem-mend-write-either-say", "Write {one} or {other}, say.";
    WRITE_OR_OUT = "problem-mend-write-or-out", "Write {example}, or take it out.";
    WRITE_SAY_OR_OUT = "problem-mend-write-say-or-out", "Write {example}, say, or take it out.";
    OTHER_ID = "problem-mend-other-id", "Give one of them another id.";
    SOUND_COPY = "problem-mend-sound-copy", "Use a sound copy.";
    NO_UNITS = "problem-no-units", "{units} is no set of units.";
    NO_TOPIC = "problem-no-topic", "There is no topic called {name}.";
    TOPICS = "problem-topics", "The topics are {names}.";
    NO_FAMILY = "problem-no-family", "There is no family called {name}.";
    TWO_ITEMS = "problem-two-items", "There are two items called {name}.";
} }

/// `Write count = 2, say.`
pub(crate) fn write_say(example: &str) -> String {
    WRITE_SAY.say(&[("example", example)])
}

/// The set of units that `text` at `span` names: `si` or `us`, in whatever letters.
///
/// # Errors
/// That it names none.
pub(crate) fn units_called(text: &str, span: Range<usize>) -> Result<System, Problem> {
    System::ALL.into_iter().find(|system| text.trim().eq_ignore_ascii_case(system.code())).ok_or_else(|| {
        let [one, other] = System::ALL.map(System::code);
        let either = WRITE_EITHER.say(&[("one", one), ("other", other)]);
        Problem::at(span, NO_UNITS.say(&[("units", &quoted(text))]), either)
    })
}
