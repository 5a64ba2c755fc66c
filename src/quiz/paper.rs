//! Papers: a sealed, balanced set of questions for each candidate.
//!
//! * [`Settings`]: the items and families that fit together, made ready once
//! * [`Draw`]: papers for the people of a roster, one after another, so that memory stays flat
//! * [`Paper`]: what one candidate gets, and its digest

mod draw;
mod pick;
mod settings;
mod supply;

pub use draw::{Draw, Used};
pub use settings::{Ready, Settings, why};

use std::sync::atomic::{AtomicUsize, Ordering};

use drivecourse_machine::chance::derive;
#[cfg(not(wordless))]
use drivecourse_machine::language::Message;
use drivecourse_machine::{Plan, System, amount};
use sha2::{Digest, Sha256};

use crate::code::Code;
use crate::item::Item;
use crate::question::{Body, Part, Question};
use crate::roster::Person;
use crate::seal::hex;

/// What is told whoever draws papers.
#[cfg(not(wordless))]
pub(crate) fn author_messages() -> Vec<Message> {
    [draw::SAYS, settings::SAYS, supply::SAYS].concat()
}

/// A question in its place on a paper.
#[derive(Debug, Clone)]
pub struct Placed<'a> {
    /// What is asked.
    pub item: &'a Item,
    /// About which family of machines.
    pub plan: &'a Plan,
    /// The question; its seed gives it again.
    pub question: Question,
    /// What it is worth, where that is not what its item says.
    pub weight: Option<u32>,
}

impl<'a> Placed<'a> {
    pub(crate) fn new(item: &'a Item, plan: &'a Plan, mut question: Question, weight: Option<u32>) -> Self {
        if let Some(weight) = weight {
            question.weigh(weight);
        }
        Self { item, plan, question, weight }
    }

    /// A number for the hidden machine: two questions with the same are about the same machine.
    pub fn case(&self) -> u64 {
        let bits = |value: &f64| if value.is_nan() { u64::MAX } else { value.to_bits() };
        self.question.case.values.iter().fold(0, |hash, value| derive(hash, bits(value)))
    }
}

/// What one candidate gets.
#[derive(Debug, Clone)]
pub struct Paper<'a> {
    /// Whose it is.
    pub candidate: Person,
    /// Its code, printed on every page.
    pub code: Code,
    /// Which sitting, counted from 1; a resit is a later one.
    pub sitting: u32,
    /// In which units.
    pub system: System,
    /// The questions, in the order of the blueprint's rows.
    pub questions: Vec<Placed<'a>>,
    /// Steps, unit changes, tables and inverse steps of all questions.
    pub difficulty: f64,
    /// Marks that can be earned.
    pub marks: u32,
}

impl<'a> Paper<'a> {
    pub(crate) fn new(candidate: Person, code: Code, sitting: u32, system: System, questions: Vec<Placed<'a>>) -> Self {
        let difficulty = questions.iter().map(|placed| placed.question.difficulty()).sum();
        let marks = questions.iter().map(|placed| placed.question.marks()).sum();
        Self { candidate, code, sitting, system, questions, difficulty, marks }
    }

    /// SHA-256 over all that the paper shows and its key, in hexadecimal figures: the same bytes on
    /// every platform, another as soon as a number, a tolerance or a word differs.
    pub fn digest(&self) -> String {
        let mut out = Canonical(Sha256::new());
        out.text("drivecourse paper 1");
        out.text(&self.candidate.id);
        out.text(&self.candidate.name);
        out.text(&self.code.to_string());
        out.number(u64::from(self.sitting));
        out.text(self.system.code());
        out.number(self.questions.len() as u64);
        for placed in &self.questions {
            out.text(&placed.item.id);
            out.text(&placed.plan.family.id);
            out.text(&placed.item.title);
            out.text(placed.item.figure.as_deref().unwrap_or(""));
            out.number(u64::from(placed.item.safety));
            out.text(&placed.question.text);
            out.number(placed.question.parts.len() as u64);
            for part in &placed.question.parts {
                out.part(part, self.system);
            }
        }
        hex(&out.0.finalize())
    }
}

/// Fields in a fixed order, each text with its length before it.
struct Canonical(Sha256);

impl Canonical {
    fn number(&mut self, number: u64) {
        self.0.update(number.to_be_bytes());
    }

    fn text(&mut self, text: &str) {
        self.number(text.len() as u64);
        self.0.update(text);
    }

    fn texts(&mut self, texts: &[String]) {
        self.number(texts.len() as u64);
        texts.iter().for_each(|text| self.text(text));
    }

    fn part(&mut self, part: &Part, system: System) {
        self.text(&part.text);
        self.number(u64::from(part.marks));
        self.number(part.givens.len() as u64);
        for (id, value) in &part.givens {
            self.text(id.get().id);
            self.text(&amount::write(id.get(), *value, system));
            self.number(value.to_bits());
        }
        self.number(part.carried.len() as u64);
        for (id, earlier) in &part.carried {
            self.text(id.get().id);
            self.number(*earlier as u64);
        }
        match &part.body {
            Body::Quantity { asked, keys, .. } => {
                self.text("quantity");
                self.text(asked.get().id);
                self.number(keys.len() as u64);
                for key in keys {
                    self.number(key.value.to_bits());
                    self.number(key.tolerance.to_bits());
                }
            }
            Body::Order { shown, right, .. } => {
                self.text("order");
                self.texts(shown);
                right.iter().for_each(|place| self.number(*place as u64));
            }
            Body::Pick { shown, right, .. } => {
                self.text("pick");
                self.texts(shown);
                self.number(*right as u64);
            }
        }
    }
}

/// `work` on each of `items`, on `threads` threads, the results in the order of the items.
pub(crate) fn in_parallel<T: Sync, R: Send>(items: &[T], threads: usize, work: impl Fn(&T) -> R + Sync) -> Vec<R> {
    let next = AtomicUsize::new(0);
    // Each takes the next item that no one has: some papers take ten times as long as others.
    let take = || {
        let mut done = Vec::new();
        loop {
            let place = next.fetch_add(1, Ordering::Relaxed);
            let Some(item) = items.get(place) else { return done };
            done.push((place, work(item)));
        }
    };
    let mut done = std::thread::scope(|scope| {
        let others: Vec<_> = (1..threads.min(items.len())).map(|_| scope.spawn(take)).collect();
        let mut done = take();
        for other in others {
            match other.join() {
                Ok(results) => done.extend(results),
                Err(panic) => std::panic::resume_unwind(panic),
            }
        }
        done
    });
    done.sort_by_key(|(place, _)| *place);
    done.into_iter().map(|(_, result)| result).collect()
}

#[cfg(test)]
pub(crate) mod tests;
