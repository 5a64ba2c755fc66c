//! Directives: fenced blocks in a chapter that become cards, worked examples, figures and tables.
//!
//! A directive is a fenced code block with one of these words after the fence and TOML inside:
//!
//! | word | keys | becomes |
//! |---|---|---|
//! | `practice` | `item`, `family`, `seed`, `units` | a practice card with hints and a folded solution |
//! | `worked` | `item`, `family`, `seed`, `units` | a worked example |
//! | `self-check` | `items`, `units` | a short quiz with the answers folded away at its end |
//! | `one-machine` | `family`, `faults`, `seed`, `items`, `units` | a practice card for each item, all about that one machine |
//! | `figure` | `name`, `family`, `fault`, `seed`, `caption`, `units` | a picture of one machine with everything labelled |
//! | `formulas` | `topic` or `relations` | formulas with units, limits and sources |
//! | `mistakes` | `topic` or `relations` | what people do wrong, step by step |
//! | `sources` | `topic`, `relations` or nothing | where everything comes from |
//! | `quantities` | `topic` | symbols, names, units and how each is known |
//!
//! Without `family` the first family that settles the item is taken; without `seed` the chapter's path and the block's
//! place in it choose one, so a book is the same each time it is built. `units` is `"si"` or `"us"`; without it both
//! are there, and the page's switch chooses.

mod directive;
mod own;
mod question;
mod whose;

#[cfg(test)]
mod tests;

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::sync::atomic::{AtomicUsize, Ordering};

use mdbook_core::book::Book;
use mdbook_core::errors::{Error as BookError, Result as BookResult};
use mdbook_preprocessor::{Preprocessor, PreprocessorContext};

use drivecourse_machine::chance::name_hash;
use drivecourse_machine::language::Message;
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Linked, Plan, Problem, Registry, did_you_mean, messages, quoted, told};
use drivecourse_quiz::Item;

use crate::book::Slots;
use crate::card::Cards;
use crate::pages::model::Trusted;
use crate::pages::{PageError, Pages};
use crate::portray::PICTURES;
use crate::reference;

use directive::{Body, FigureKeys, TopicKeys};
use own::own_note;
use question::Questions;
use whose::Said;

pub(crate) use own::SAYS as OWN_SAYS;

messages! { pub(crate) SAYS {
    // Names of something that is not there.
    NO_PICTURE = "problem-chapter-no-picture", "There is no picture called {name}.";
    NO_ITEM = "problem-chapter-no-item", "There is no item called {name}.";
    NO_FAMILY = "problem-chapter-no-family", "There is no family called {name}.";
    NO_FAULT = "problem-chapter-no-fault", "There is no fault called {name}.";
    NO_PICTURES = "problem-chapter-no-pictures", "The course has no picture at all.";
    NO_ITEMS = "problem-chapter-no-items", "The course has no item at all.";
    NO_FAMILIES = "problem-chapter-no-families", "The course has no family at all.";
    NO_FAULTS = "problem-chapter-no-faults", "The course has no fault at all.";
    THERE_ARE = "problem-chapter-there-are", "There are {names}.";
    NO_TOPIC = "problem-chapter-no-topic", "There is no topic called {name}.";
    NO_RELATION = "problem-chapter-no-relation", "There is no relation called {name}.";
    EMPTY_TOPIC = "problem-chapter-empty-topic", "The topic {name} has no relation yet.";
    EMPTY_TOPIC_MEND = "problem-chapter-empty-topic-mend", "Leave the block out, or name another topic.";
    ABOUT_NOTHING = "problem-chapter-about-nothing", "This block does not say what it is about.";
    ABOUT_NOTHING_MEND = "problem-chapter-about-nothing-mend", "Write topic = \"mount\", say, or relations = [\"mount.twist/diagonals\"].";
    UNWRITTEN = "problem-chapter-unwritten", "This block cannot be written: {why}.";
    INSIDE = "problem-chapter-inside", "This {word} block stands inside a list, a quotation or a note.";
    INSIDE_MEND = "problem-chapter-inside-mend", "Begin its fence at the left margin, with an empty line before it.";
    UNCLOSED = "problem-chapter-unclosed", "This {word} block is not closed.";
    UNCLOSED_MEND = "problem-chapter-unclosed-mend", "Put a line with its three marks alone, as it begins, after its last line.";
    MARKED = "problem-chapter-marked", "A block cannot be marked {word}.";
    MARKED_MEND = "problem-chapter-marked-mend", "Did you mean {name}? A block of plain text is marked \"text\".";
    EMPTY_QUIZ = "problem-chapter-empty-quiz", "This quiz asks nothing.";
    EMPTY_MACHINE = "problem-chapter-empty-machine", "Nothing is asked about this machine.";
    NAME_ITEM = "problem-chapter-name-item", "Name at least one item.";
    OTHER_MACHINE = "problem-chapter-other-machine", "Take another seed or fault for the machine, or leave the item out.";
    NO_MACHINE = "problem-chapter-no-machine", "The course has no family to draw a machine of.";
    OTHER_FAMILY = "problem-chapter-other-family", "The item {item} is not for the family {family}.";
    OTHER_FAMILY_MEND = "problem-chapter-other-family-mend", "It is for {families}.";
    NONE_OF_THEM = "problem-chapter-none-of-them", "The course has none of the families this item is for.";
    NONE_OF_THEM_MEND = "problem-chapter-none-of-them-mend", "Add one, or change the item's `families`.";
    UNDRAWN = "problem-chapter-undrawn", "The picture cannot be drawn: {why}.";
    NO_FIT = "problem-chapter-no-fit", "The item does not fit the family {family}: {why}.";
    NO_FIT_MEND = "problem-chapter-no-fit-mend", "Name another family, or change the item or the family.";
} }

/// The words that make a fenced block a directive.
pub const DIRECTIVES: [&str; 9] =
    ["practice", "worked", "self-check", "one-machine", "figure", "formulas", "mistakes", "sources", "quantities"];

/// Seeds chosen for a block have at most six figures, so that a person can say them.
const SEEDS: u64 = 1_000_000;

/// What chapters may refer to.
#[derive(Debug)]
pub struct CourseData {
    /// Every item.
    pub items: Vec<Item>,
    /// Every family; the first that settles an item is its usual one.
    pub plans: Vec<Plan>,
    /// The templates below `theme/pages`.
    pub pages: Pages,
}

/// Turns directives into HTML, chapter by chapter; a preprocessor for [`crate::book::build`].
#[derive(Debug)]
pub struct Expander {
    data: CourseData,
    own: BTreeSet<String>,
    slots: Option<Slots>,
}

impl Expander {
    /// An expander for a course with these items, families and templates.
    #[must_use]
    pub fn new(data: CourseData) -> Self {
        Self { data, own: BTreeSet::new(), slots: None }
    }

    /// Of a module that has the families called `own` itself: chapters say of their examples whether the machine is one of
    /// these.
    #[must_use]
    pub fn of_module(self, own: BTreeSet<String>) -> Self {
        Self { own, ..self }
    }

    /// Keeps cards and pictures back from the chapters: they are for [`crate::book::Options::slots`].
    #[must_use]
    pub fn keeping(self, slots: &Slots) -> Self {
        Self { slots: Some(slots.clone()), ..self }
    }

    /// Every chapter, path and text, expanded on as many threads as the machine has; in the order given.
    fn all(&self, chapters: &[(String, String)]) -> Vec<Result<String, Vec<Problem>>> {
        let threads = std::thread::available_parallelism().map_or(1, usize::from).min(chapters.len().max(1));
        // The longest first, so that no thread is left alone with one at the end.
        let mut order: Vec<usize> = (0..chapters.len()).collect();
        order.sort_by_key(|place| core::cmp::Reverse(chapters[*place].1.matches("\n```").count()));
        let next = AtomicUsize::new(0);
        let work = || {
            // A workshop for each thread: what was made ready for one card serves the next.
            let workshop = Workshop::new(self, self.slots.as_ref());
            let mut done = Vec::new();
            loop {
                let Some(place) = order.get(next.fetch_add(1, Ordering::Relaxed)) else { return done };
                let (path, text) = &chapters[*place];
                done.push((*place, workshop.chapter(path, text)));
            }
        };
        let done: BTreeMap<usize, _> = std::thread::scope(|scope| {
            let others: Vec<_> = (1..threads).map(|_| scope.spawn(work)).collect();
            let mut done = work();
            for other in others {
                // A panic in a thread is our fault and goes on as one.
                done.extend(other.join().unwrap_or_else(|panic| std::panic::resume_unwind(panic)));
            }
            done.into_iter().collect()
        });
        done.into_values().collect()
    }

    /// The chapter at `path` with every directive replaced by HTML.
    ///
    /// # Errors
    /// Every [`Problem`] in the chapter, each with its place in `text`.
    pub fn chapter(&self, path: &str, text: &str) -> Result<String, Vec<Problem>> {
        Workshop::new(self, None).chapter(path, text)
    }
}

impl Preprocessor for Expander {
    fn name(&self) -> &str {
        "drivecourse"
    }

    fn run(&self, _: &PreprocessorContext, mut book: Book) -> BookResult<Book> {
        let mut chapters = Vec::new();
        book.for_each_chapter_mut(|chapter| {
            let path = chapter.path.as_deref().unwrap_or(Path::new("")).to_string_lossy().replace('\\', "/");
            chapters.push((path, std::mem::take(&mut chapter.content)));
        });
        let mut expanded = self.all(&chapters).into_iter();
        let mut reports = Vec::new();
        for (outcome, (path, text)) in expanded.as_slice().iter().zip(&chapters) {
            if let Err(problems) = outcome {
                reports.extend(problems.iter().map(|problem| problem.report(path, text)));
            }
        }
        book.for_each_chapter_mut(|chapter| {
            if let Some(Ok(content)) = expanded.next() {
                chapter.content = content;
            }
        });
        if reports.is_empty() { Ok(book) } else { Err(BookError::msg(format!("\n{}", reports.join("\n")))) }
    }
}

/// The items that the cards of the chapter `text` ask about, in order.
#[must_use]
pub fn asked(text: &str) -> Vec<String> {
    let items = |body| match body {
        Body::Practice(keys) => vec![keys.item],
        Body::SelfCheck(keys) => keys.items.into_inner(),
        Body::OneMachine(keys) => keys.items.into_inner(),
        _ => Vec::new(),
    };
    let blocks = directive::find(text).into_iter().filter_map(|block| block.body.ok());
    blocks.flat_map(items).map(toml::Spanned::into_inner).collect()
}

/// The items that cards and worked questions of the chapter `text` put about whichever family settles them first, in order.
#[must_use]
pub fn of_any_family(text: &str) -> Vec<String> {
    let items = |body| match body {
        Body::Practice(keys) | Body::Worked(keys) if keys.family.is_none() => vec![keys.item.into_inner()],
        Body::SelfCheck(keys) => keys.items.into_inner().into_iter().map(toml::Spanned::into_inner).collect(),
        _ => Vec::new(),
    };
    directive::find(text).into_iter().filter_map(|block| block.body.ok()).flat_map(items).collect()
}

/// What is wrong with the blocks of the chapter `text` as they are written, whatever the course has: a block that is
/// misspelt, at a wrong place, or has keys that it cannot have.
#[must_use]
pub fn unreadable(text: &str) -> Vec<Problem> {
    let blocks = directive::find(text).into_iter();
    blocks.filter_map(|block| block.body.as_ref().err().cloned().map(|problem| block.placed(problem))).collect()
}

/// The keys of the directive `word`, one of [`DIRECTIVES`], in the order of its type.
#[must_use]
pub fn keys(word: &str) -> &'static [&'static str] {
    directive::keys_of(word)
}

/// One pass over a book: what was made ready for one card serves the next.
struct Workshop<'a> {
    cards: Cards<'a>,
    questions: Questions<'a>,
    items: &'a [Item],
    plans: &'a [Plan],
    slots: Option<&'a Slots>,
}

impl<'a> Workshop<'a> {
    fn new(expander: &'a Expander, slots: Option<&'a Slots>) -> Self {
        let Expander { data, own, .. } = expander;
        let cards = Cards::new(&data.pages);
        let questions = Questions::new(&data.items, &data.plans, own, cards);
        Self { cards, questions, items: &data.items, plans: &data.plans, slots }
    }

    fn chapter(&self, path: &str, text: &str) -> Result<String, Vec<Problem>> {
        let mut out = String::with_capacity(text.len());
        let mut problems = Vec::new();
        let mut done = 0;
        let said = Said::default();
        let blocks = directive::find(text);
        let mut note = own_note(text, &blocks, self.items, self.plans);
        // A worked example is what is leant on most: where there is one, nothing is said before it.
        let worked = blocks.iter().position(|block| matches!(block.body, Ok(Body::Worked(_)))).unwrap_or(0);
        for (place, block) in blocks.into_iter().enumerate() {
            if let Some((at, note)) = note.take_if(|(at, _)| *at <= block.span.start) {
                out.push_str(&text[done..at]);
                out.push_str(&note);
                done = at;
            }
            let spot = Spot {
                id: format!("{}-{}", slug(path), place + 1),
                seed: name_hash(&format!("{path}#{}", place + 1)) % SEEDS,
                level: block.level,
                said: (place >= worked).then_some(&said),
            };
            match block.body.as_ref().map_err(Clone::clone).and_then(|body| self.expand(body, &spot)) {
                Ok(html) => {
                    out.push_str(&text[done..block.span.start]);
                    match self.slots {
                        Some(slots) if !block.body.as_ref().is_ok_and(Body::is_looked_up) => {
                            out.push_str(&slots.keep(&spot.id, html));
                        }
                        _ => out.push_str(html.as_str()),
                    }
                    out.push_str("\n\n");
                    done = block.span.end;
                }
                Err(problem) => problems.push(block.placed(problem)),
            }
        }
        if let Some((at, note)) = note.filter(|(at, _)| *at >= done) {
            out.push_str(&text[done..at]);
            out.push_str(&note);
            done = at;
        }
        out.push_str(&text[done..]);
        if problems.is_empty() { Ok(out) } else { Err(problems) }
    }

    /// The HTML of one directive; a problem's place counts from the start of its TOML.
    fn expand(&self, body: &Body, spot: &Spot<'_>) -> Result<Trusted, Problem> {
        match body {
            Body::Practice(keys) => self.questions.card("card.html", keys, spot),
            Body::Worked(keys) => self.questions.card("card-worked.html", keys, spot),
            Body::SelfCheck(keys) => self.questions.self_check(keys, spot),
            Body::OneMachine(keys) => self.questions.one_machine(keys, spot),
            Body::Figure(keys) => self.figure(keys, spot),
            Body::Formulas(keys) => page(reference::formulas(&self.cards, &relations(keys, true)?, self.plans)),
            Body::Mistakes(keys) => page(reference::mistakes(&self.cards, &relations(keys, true)?)),
            Body::Sources(keys) => page(reference::sources(&self.cards, &relations(keys, false)?)),
            Body::Quantities(keys) => {
                let topic = reference::topic(keys.topic.get_ref()).map_err(|mend| no_topic(&keys.topic, mend))?;
                page(reference::quantities(&self.cards, topic))
            }
        }
    }

    fn figure(&self, keys: &FigureKeys, spot: &Spot<'_>) -> Result<Trusted, Problem> {
        let name = keys.name.get_ref();
        if !PICTURES.contains(&name.as_str()) {
            return Err(unknown(&keys.name, Sort::Picture, PICTURES.into_iter()));
        }
        self.questions.picture(keys, spot)
    }
}

/// Where a directive stands.
struct Spot<'a> {
    /// Begins every id in its HTML; unique in the book.
    id: String,
    /// The seed it has by its place.
    seed: u64,
    /// Level of a heading that belongs here.
    level: u8,
    /// What its chapter has said of its machines; none where it is too early for that.
    said: Option<&'a Said>,
}

/// The relations that a table is about, at least one where `wanted`.
fn relations(keys: &TopicKeys, wanted: bool) -> Result<Vec<&'static Linked>, Problem> {
    let mut found = Vec::new();
    if let Some(topic) = &keys.topic {
        let known = reference::topic(topic.get_ref()).map_err(|mend| no_topic(topic, mend))?;
        found.extend(reference::relations_of(known));
        if found.is_empty() {
            return Err(Problem::at(
                topic.span(),
                told!(EMPTY_TOPIC, "name" = quoted(topic.get_ref())),
                told!(EMPTY_TOPIC_MEND),
            ));
        }
    }
    for name in &keys.relations {
        let known = reference::relation(name.get_ref())
            .map_err(|mend| Problem::at(name.span(), told!(NO_RELATION, "name" = quoted(name.get_ref())), mend))?;
        if !found.iter().any(|linked| linked.id == known.id) {
            found.push(known);
        }
    }
    if found.is_empty() && wanted {
        return Err(Problem::whole(told!(ABOUT_NOTHING), told!(ABOUT_NOTHING_MEND)));
    }
    if found.is_empty() {
        found.extend(Registry::get().relations());
    }
    Ok(found)
}

fn no_topic(topic: &toml::Spanned<String>, mend: String) -> Problem {
    Problem::at(topic.span(), told!(NO_TOPIC, "name" = quoted(topic.get_ref())), mend)
}

/// What a block names.
#[derive(Clone, Copy)]
enum Sort {
    Picture,
    Item,
    Family,
    Fault,
}

impl Sort {
    /// What is said where there is none of the name written, and where there is none at all.
    fn says(self) -> (Message, Message) {
        match self {
            Self::Picture => (NO_PICTURE, NO_PICTURES),
            Self::Item => (NO_ITEM, NO_ITEMS),
            Self::Family => (NO_FAMILY, NO_FAMILIES),
            Self::Fault => (NO_FAULT, NO_FAULTS),
        }
    }
}

/// Nothing of this `sort` has the name written; the nearest one that does, or all of them, mend it.
fn unknown<'n>(written: &toml::Spanned<String>, sort: Sort, names: impl Iterator<Item = &'n str> + Clone) -> Problem {
    let (none_called, none) = sort.says();
    let mend = match nearest(written.get_ref(), names.clone()) {
        Some(near) => did_you_mean(near),
        None => {
            let all: Vec<&str> = names.collect();
            if all.is_empty() { told!(none) } else { told!(THERE_ARE, "names" = all.join(", ")) }
        }
    };
    Problem::at(written.span(), told!(none_called, "name" = quoted(written.get_ref())), mend)
}

/// A fault in a template is ours, but it is said where it showed.
fn page<T>(html: Result<T, PageError>) -> Result<T, Problem> {
    html.map_err(|error| Problem::whole(told!(UNWRITTEN, "why" = error.to_string()), ""))
}

/// A chapter's path as the beginning of an id.
fn slug(path: &str) -> String {
    let path = path.strip_suffix(".md").unwrap_or(path);
    let mut slug: String =
        path.chars().map(|c| if c.is_ascii_alphanumeric() { c.to_ascii_lowercase() } else { '-' }).collect();
    // Two paths that look alike without their accents must not share ids.
    if !path.chars().all(|c| c.is_ascii_alphanumeric() || matches!(c, '-' | '/')) {
        slug.push_str(&format!("-{:x}", name_hash(path) % 0xffff));
    }
    format!("d-{slug}")
}
