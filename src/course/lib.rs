//! The course: the book, its practice cards, worked solutions, figures and papers.
//!
//! * [`book`]: the book program embedded, with guards for the output folder
//! * [`expand`]: directives in a chapter turned into practice cards, worked examples and reference tables
//! * [`card`]: what cards and papers share: givens, workings, answers; papers filled from questions
//! * [`view`]: what a card says of a question, before any markup; [`trusted`]: markup made by our own code
//! * [`links`]: what chapters refer to, and whether it is there
//! * [`portray`]: the picture of a case, by name
//! * [`mod@reference`]: formulas, mistakes, sources and quantities, from the registry
//! * [`words`]: the files of words that a translator works on, in Fluent's format
//! * [`pages`]: the single-file pages: papers, keys, results
//! * `typeset`: the same papers and keys as PDF, with the feature `pdf`
//! * [`figures`]: line drawings of the drive, its feet, shaft, shims and warm-up, drawn from numbers
//!
//! Without the feature `book` only what the browser build needs is left: [`figures`], [`portray`] and [`view`].

#[cfg(feature = "book")]
pub mod book;
#[cfg(feature = "book")]
pub mod card;
#[cfg(feature = "book")]
pub mod expand;
pub mod figures;
#[cfg(feature = "book")]
pub mod links;
#[cfg(feature = "book")]
pub mod pages;
pub mod portray;
#[cfg(feature = "book")]
pub mod reference;
pub mod trusted;
#[cfg(feature = "pdf")]
pub mod typeset;
pub mod view;
#[cfg(feature = "book")]
pub mod words;

use drivecourse_machine::language::Message;

/// What this crate says on cards and in pictures, in the browser too.
pub fn messages() -> Vec<Message> {
    [view::SAYS.to_vec(), portray::messages(), figures::messages()].concat()
}

/// What this crate tells the author of a file, or whoever runs a command, of what cannot be used: none of it is said in
/// the browser.
#[cfg(not(wordless))]
pub fn author_messages() -> Vec<Message> {
    let pictures = [portray::PROBLEMS, figures::PROBLEMS, figures::INPUTS].concat();
    #[cfg(feature = "book")]
    let pages =
        [book::SAYS, book::SUMMARY_SAYS, expand::SAYS, links::SAYS, pages::SAYS, reference::PROBLEMS, words::SAYS]
            .concat();
    #[cfg(not(feature = "book"))]
    let pages = Vec::new();
    [pictures, pages].concat()
}
