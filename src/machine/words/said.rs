//! The registry's words under the ids of their messages: as a list to translate, and in the language spoken.

use crate::language::{slug, text};
use crate::quantity::Quantity;
use crate::relation::{Whole as Relation, WrongTurn};
use crate::source::Source;
use crate::topics;

/// A text of the registry: the id of its message, what it says in English, and what it is, for a translator.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Text {
    /// `message` or `message.attribute`.
    pub id: String,
    /// In English.
    pub english: &'static str,
    /// What a translator should know of it; may be empty.
    pub about: String,
}

/// Every text of the registry, topic by topic.
pub fn texts() -> Vec<Text> {
    let mut out = Vec::new();
    let mut tell = |id: String, english: &'static str, about: String| {
        if !english.is_empty() {
            out.push(Text { id, english, about });
        }
    };
    for topic in topics::ALL {
        tell(topics::title_id(topic.id), topic.title, "A topic.".into());
        for quantity in topic.quantities {
            let id = quantity_id(quantity);
            tell(id.clone(), quantity.name, format!("Symbol {}.", quantity.symbol).replace("Symbol .", ""));
            for (place, choice) in quantity.choices.iter().enumerate() {
                tell(choice_id(&id, place), choice, String::new());
            }
        }
    }
    for relation in topics::relations() {
        let id = relation_id(relation.id);
        tell(id.clone(), relation.title, format!("Gives {}.", relation.gives));
        tell(format!("{id}.method"), relation.method, String::new());
        tell(format!("{id}.limits"), relation.limits, String::new());
        for (part, words) in source_parts(&id, relation.source) {
            tell(part, words, String::new());
        }
        for turn in relation.turns {
            tell(turn_id(&id, turn), turn.says, String::new());
        }
    }
    out
}

fn quantity_id(quantity: &Quantity) -> String {
    format!("quantity-{}", slug(quantity.id))
}

fn choice_id(quantity: &str, place: usize) -> String {
    format!("{quantity}.choice-{}", place + 1)
}

fn relation_id(relation: &str) -> String {
    format!("relation-{}", slug(relation))
}

fn turn_id(relation: &str, turn: &WrongTurn) -> String {
    format!("{relation}.turn-{}", slug(turn.id))
}

/// The words of a source that can be said in another language: all but the title of a document.
fn source_parts(relation: &str, source: Source) -> Vec<(String, &'static str)> {
    match source {
        Source::Published { place, .. } => vec![(format!("{relation}.place"), place)],
        Source::Derived(words) | Source::FromMemory(words) => vec![(format!("{relation}.source"), words)],
        Source::CommonPractice => Vec::new(),
    }
}

/// `quantity` in the language spoken. The registry is made once and stays, and so does this.
pub(super) fn quantity(quantity: &'static Quantity) -> &'static Quantity {
    let id = quantity_id(quantity);
    let labels = quantity.choices.iter().enumerate().map(|(place, choice)| text(&choice_id(&id, place), choice));
    let labels: Vec<&'static str> = labels.collect();
    Box::leak(Box::new(Quantity { name: text(&id, quantity.name), labels: labels.leak(), ..*quantity }))
}

/// `relation` in the language spoken; it stays as long as the registry.
pub(super) fn relation(relation: &'static Relation) -> &'static Relation {
    let id = relation_id(relation.id);
    let turn = |turn: &WrongTurn| WrongTurn { says: text(&turn_id(&id, turn), turn.says), ..*turn };
    let turns: Vec<WrongTurn> = relation.turns.iter().map(turn).collect();
    let part = |name: &str, english| text(&format!("{id}.{name}"), english);
    Box::leak(Box::new(Relation {
        title: text(&id, relation.title),
        method: part("method", relation.method),
        limits: part("limits", relation.limits),
        source: match relation.source {
            Source::Published { document, place } => Source::Published { document, place: part("place", place) },
            Source::Derived(words) => Source::Derived(part("source", words)),
            Source::FromMemory(words) => Source::FromMemory(part("source", words)),
            Source::CommonPractice => Source::CommonPractice,
        },
        turns: turns.leak(),
        ..*relation
    }))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_text_has_an_id_of_its_own() {
        let mut ids: Vec<String> = texts().into_iter().map(|text| text.id).collect();
        let count = ids.len();
        assert!(count > 1000);
        ids.sort();
        ids.dedup();
        assert_eq!(ids.len(), count);
        let sound = |id: &str| id.split('.').all(|part| part.starts_with(|c: char| c.is_ascii_lowercase()));
        assert!(ids.iter().all(|id| sound(id)));
    }
}
