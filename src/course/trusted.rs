//! Markup that goes into a page as it is.

use serde::Serialize;

/// HTML made by our own code (a drawing, a formula), which goes into the page as it is.
///
/// Never make one from anything a person typed or a file said.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(transparent)]
pub struct Trusted(String);

impl Trusted {
    /// Vouches that `html` was made by our own code.
    pub fn made_by_us(html: impl Into<String>) -> Self {
        Self(html.into())
    }

    /// The HTML.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
}
