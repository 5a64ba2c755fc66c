//! What a plant has laid down for itself, told in every chapter that speaks of what is usual.

use std::collections::BTreeSet;

use pulldown_cmark::{Event, HeadingLevel, Parser, Tag};

use drivecourse_machine::{Plan, messages};
use drivecourse_quiz::Item;

use super::directive::{Block, Body};
use crate::reference::own_values;

messages! { pub(crate) SAYS {
    OWN_VALUES = "chapter-own-values", "At your plant these values are laid down. They go before the usual ones that this chapter names:";
} }

/// A note with the values that the families of `plans` state for themselves, of the topics that the `blocks` of a chapter are
/// about, and where in its `text` it belongs: after the cautions, before the work begins. Nothing where there are none.
pub(super) fn own_note(text: &str, blocks: &[Block], items: &[Item], plans: &[Plan]) -> Option<(usize, String)> {
    let topics: BTreeSet<&str> =
        blocks.iter().filter_map(|block| block.body.as_ref().ok()).flat_map(|body| topics(body, items)).collect();
    let values = own_values(plans, |id| topics.contains(id.get().topic()));
    if values.is_empty() {
        return None;
    }
    let heading = Parser::new(text).into_offset_iter().find_map(|(event, span)| {
        matches!(event, Event::Start(Tag::Heading { level: HeadingLevel::H2, .. })).then_some(span.start)
    });
    let place = heading.or_else(|| blocks.first().map(|block| block.span.start))?;
    let lines: String = values.iter().map(|value| format!("> - {}.\n", escaped(value))).collect();
    Some((place, format!("> [!NOTE]\n> {}\n>\n{lines}\n", OWN_VALUES.text())))
}

/// The topics that a block is about.
fn topics<'a>(body: &'a Body, items: &'a [Item]) -> Vec<&'a str> {
    let of = |name: &str| items.iter().find(|item| item.id == name).map(|item| item.topic.as_str());
    match body {
        Body::Practice(keys) | Body::Worked(keys) => of(keys.item.get_ref()).into_iter().collect(),
        Body::SelfCheck(keys) => keys.items.get_ref().iter().filter_map(|item| of(item.get_ref())).collect(),
        Body::OneMachine(keys) => keys.items.get_ref().iter().filter_map(|item| of(item.get_ref())).collect(),
        Body::Formulas(keys) | Body::Mistakes(keys) => {
            keys.topic.iter().map(|topic| topic.get_ref().as_str()).collect()
        }
        Body::Quantities(keys) => vec![keys.topic.get_ref().as_str()],
        Body::Figure(_) | Body::Sources(_) => Vec::new(),
    }
}

/// `text` as it stands, whatever marks an author's name or source holds.
fn escaped(text: &str) -> String {
    text.chars().flat_map(|c| c.is_ascii_punctuation().then_some('\\').into_iter().chain([c])).collect()
}
