//! What practice cards, worked examples, self-checks and papers share: givens, workings, answers.
//!
//! Everything goes through the templates below `theme/pages`, which escape all text; only formulas and drawings, which
//! our own code makes, go in as they are.

mod again;
mod paper;
mod results;

use serde::Serialize;

use drivecourse_machine::Working;
use drivecourse_machine::language::Message;
use drivecourse_quiz::{Item, Part, Question};

use crate::figures::Figure;
use crate::pages::{PageError, Pages};
use crate::trusted::Trusted;
use crate::view;

pub use paper::{Sheet, ask_for_the_way, asks_for_more, key_model, paper_model};
pub use results::{candidate_result, class_results, otherwise, unread};

/// Fills the templates of cards.
#[derive(Debug, Clone, Copy)]
pub struct Cards<'a> {
    pages: &'a Pages,
}

impl<'a> Cards<'a> {
    /// Cards from these templates.
    #[must_use]
    pub fn new(pages: &'a Pages) -> Self {
        Self { pages }
    }

    /// Fills the template `name` and closes the gaps in it: a blank line would end an HTML block in Markdown.
    ///
    /// # Errors
    /// As [`Pages::render`].
    pub fn fill(&self, name: &str, data: &impl Serialize) -> Result<Trusted, PageError> {
        let html = self.pages.render(name, data)?;
        let lines: Vec<&str> = html.lines().map(str::trim).filter(|line| !line.is_empty()).collect();
        Ok(Trusted::made_by_us(lines.join("\n")))
    }

    /// What the learner can see and measure: for one part, or for the whole question.
    ///
    /// # Errors
    /// When the template has a fault.
    pub fn givens_table(&self, question: &Question, part: Option<&Part>) -> Result<Trusted, PageError> {
        self.fill("card-givens.html", &Rows { rows: view::given_rows(question, part) })
    }

    /// A working, step by step: symbols, numbers, result, source.
    ///
    /// # Errors
    /// When the template has a fault.
    pub fn working_html(&self, working: &Working) -> Result<Trusted, PageError> {
        self.fill("card-working.html", &Rows { rows: view::line_rows(working) })
    }

    /// What is asked in part `index`, without its answer.
    ///
    /// # Errors
    /// When the template has a fault.
    pub fn part_html(&self, question: &Question, index: usize) -> Result<Trusted, PageError> {
        self.fill("card-part.html", &view::part_row(question, index))
    }

    /// The hints to part `index`: the author's, then the steps, then the formulas.
    ///
    /// # Errors
    /// When the template has a fault.
    pub fn hints_html(&self, item: &Item, question: &Question, index: usize) -> Result<Trusted, PageError> {
        self.fill("card-hints.html", &Rows { rows: view::hint_rows(item, question, index) })
    }

    /// The answer to part `index` with its working and, for `practice`, what is accepted and which wrong answers to expect.
    ///
    /// # Errors
    /// When the template has a fault.
    pub fn solution_html(&self, question: &Question, index: usize, practice: bool) -> Result<Trusted, PageError> {
        #[derive(Serialize)]
        struct Solved {
            #[serde(flatten)]
            row: view::SolutionRow,
            working: Option<Trusted>,
        }
        let mut row = view::solution_row(question, index, practice);
        let rows = std::mem::take(&mut row.lines);
        let working = if rows.is_empty() { None } else { Some(self.fill("card-working.html", &Rows { rows })?) };
        self.fill("card-solution.html", &Solved { row, working })
    }

    /// A drawing in its frame, with a caption if there is one.
    ///
    /// # Errors
    /// When the template has a fault.
    pub fn figure_html(&self, figure: &Figure, caption: &str) -> Result<Trusted, PageError> {
        #[derive(Serialize)]
        struct Drawn<'a> {
            svg: Trusted,
            caption: &'a str,
        }
        self.fill("card-figure.html", &Drawn { svg: Trusted::made_by_us(figure.svg.clone()), caption })
    }
}

/// What papers, keys and results say besides their templates.
#[must_use]
pub fn messages() -> Vec<Message> {
    [paper::SAYS, again::SAYS, results::SAYS, crate::reference::SAYS, crate::expand::OWN_SAYS].concat()
}

#[derive(Debug, Serialize)]
struct Rows<T> {
    rows: Vec<T>,
}
