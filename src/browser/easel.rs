//! The easel: draws the pictures that the desk describes.

use drivecourse_course::portray::Portrait;
use drivecourse_machine::packed::Reader;

use crate::bundle::learn_words;

/// Draws pictures.
#[derive(Debug)]
pub struct Easel(());

impl Easel {
    /// Opens the words of a bundle.
    ///
    /// # Errors
    /// A sentence where they cannot be used.
    pub fn open(words: &str) -> Result<Self, String> {
        learn_words(words).map(|()| Self(()))
    }

    /// Draws a picture from its name and portrait, as the desk packed them: SVG, or nothing where there is none to draw.
    pub fn answer(&mut self, request: &str) -> String {
        let mut from = Reader::new(request);
        let Some((name, portrait)) = from.read::<(String, Portrait)>() else { return String::new() };
        // A machine that a picture cannot show is asked about without one.
        portrait.draw(&name).map_or_else(|_| String::new(), |figure| figure.svg)
    }
}
