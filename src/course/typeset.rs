//! Papers and keys as PDF: the same models that the page templates are filled with, set by a typesetting library.
//!
//! The templates are `theme/print/*.typ`; `sheets.typ` is read first. All words reach them as one JSON file, so that nothing a
//! person or a file said is ever read as a template's source. The fonts are built in, and there is no clock: the same models
//! give the same bytes everywhere. The PDF is tagged and held to PDF/UA-1 (ISO 14289-1), which means that the library refuses
//! to write one with an untitled document, a picture without words, or a letter that its fonts do not have.

mod letters;
mod markup;
mod world;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use serde::Serialize;
use typst::diag::SourceDiagnostic;
use typst::foundations::Smart;
use typst::{World, WorldExt, comemo};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

use crate::pages::model::{Leaf, Printout};
use crate::pages::{PDF_UNWRITTEN, PageError};
use crate::words::Words;
use letters::Letters;
use world::{Desk, Shelf};

/// The size of a sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub enum SheetSize {
    /// ISO 216: 210 mm by 297 mm.
    #[serde(rename = "a4")]
    A4,
    /// ANSI/ASME Y14.1 size A: 8.5 in by 11 in.
    #[serde(rename = "us-letter")]
    Letter,
}

/// A typesetter with its templates and fonts.
#[derive(Debug)]
pub struct Typesetter {
    words: Arc<Words>,
    shelf: Shelf,
    letters: Letters,
    size: SheetSize,
}

/// A PDF and what could not be shown in it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Printed {
    /// The file.
    pub pdf: Vec<u8>,
    /// Characters that the fonts do not have, in order; each stands as an empty square.
    pub missing: Vec<char>,
}

/// What the templates find in their JSON file.
#[derive(Serialize)]
struct Job<'a> {
    #[serde(flatten)]
    printout: &'a Printout,
    size: SheetSize,
    /// Language and country, as in `de` and `AT`; either may be empty.
    language: &'a str,
    region: &'a str,
    /// What the templates say, by the ids of its messages, with `{name}` where something is filled in.
    words: BTreeMap<String, String>,
    /// What is said of each number of marks: which words it takes is a matter of the language.
    counted: BTreeMap<&'a str, String>,
}

/// Begin the ids of the messages that the templates may ask for.
const SAID: [&str; 5] = ["key-", "paper-", "print-", "sheet-", "table-"];

impl Typesetter {
    /// A typesetter for sheets of one size that speaks `words`; `templates` by name, as in `sheets.typ`.
    ///
    /// # Errors
    /// When there is no template `sheets.typ`.
    pub fn new(templates: &BTreeMap<String, String>, size: SheetSize, words: &Arc<Words>) -> Result<Self, PageError> {
        let shelf = Shelf::new(templates)?;
        let letters = Letters::of(shelf.fonts());
        Ok(Self { words: Arc::clone(words), shelf, letters, size })
    }

    /// Sets papers or keys one after another, each numbered from page 1.
    ///
    /// # Errors
    /// When a template has a fault or asks for something the models do not have; the message shows the place.
    pub fn print(&self, printout: &Printout) -> Result<Printed, PageError> {
        let mut tag = self.words.code().split('-');
        let language = tag.next().unwrap_or_default();
        // A country has two letters (ISO 3166-1); a script, which may stand before it, has four.
        let region = tag.find(|part| part.len() == 2).unwrap_or_default();
        let words = SAID.iter().flat_map(|start| self.words.beginning(start)).collect();
        let counted = marks(printout).into_iter().map(|count| (count, self.words.say("marks", &[("count", count)])));
        let job = Job { printout, size: self.size, language, region, words, counted: counted.collect() };
        let mut data = serde_json::to_value(&job).map_err(|e| PageError::new(PDF_UNWRITTEN.text(), &e))?;
        let missing = self.letters.fit(&mut data);
        markup::unfold(&mut data)?;
        let desk =
            Desk::new(&self.shelf, serde_json::to_vec(&data).map_err(|e| PageError::new(PDF_UNWRITTEN.text(), &e))?);
        let document = typst::compile::<PagedDocument>(&desk).output.map_err(|faults| told(&desk, &faults))?;
        let standards =
            PdfStandards::new(&[PdfStandard::Ua_1]).map_err(|e| PageError::say(PDF_UNWRITTEN.text(), e.message()))?;
        let options = PdfOptions {
            creator: Smart::Custom(Some(format!("drivecourse {}", env!("CARGO_PKG_VERSION")))),
            standards,
            ..PdfOptions::default()
        };
        let pdf = typst_pdf::pdf(&document, &options).map_err(|faults| told(&desk, &faults))?;
        // What the library remembers of one paper is no use to the next, and grows.
        comemo::evict(0);
        Ok(Printed { pdf, missing: missing.into_iter().collect() })
    }
}

/// The numbers of marks that single parts have.
fn marks(printout: &Printout) -> BTreeSet<&str> {
    let mut out = BTreeSet::new();
    for leaf in &printout.sheets {
        match leaf {
            Leaf::Paper(paper) => {
                out.extend(paper.questions.iter().flat_map(|q| &q.parts).map(|part| part.marks.as_str()));
            }
            Leaf::Key(key) => out.extend(key.questions.iter().flat_map(|q| &q.parts).map(|part| part.marks.as_str())),
        }
    }
    out
}

/// The first fault, with the template and line it is in.
fn told(desk: &Desk<'_>, faults: &[SourceDiagnostic]) -> PageError {
    let Some(fault) = faults.first() else { return PageError::say(PDF_UNWRITTEN.text(), "no reason was given") };
    let mut message = String::new();
    if let Some(id) = fault.span.id() {
        message.push_str(&format!("theme/print{}", id.vpath().get_with_slash()));
        let line = desk.range(fault.span).and_then(|range| desk.source(id).ok()?.lines().byte_to_line(range.start));
        if let Some(line) = line {
            message.push_str(&format!(":{}", line + 1));
        }
        message.push_str(": ");
    }
    message.push_str(&fault.message);
    for hint in &fault.hints {
        message.push_str(&format!("; {}", hint.v));
    }
    PageError::say(PDF_UNWRITTEN.text(), &message)
}
