//! Pages that are single files: papers, keys and results, filled into templates.
//!
//! Every string that reaches a page is escaped unless its type is [`model::Trusted`].

pub mod model;
mod printed;

#[cfg(test)]
mod tests;

use std::collections::BTreeMap;
use std::fmt;
use std::io::{self, Write};
use std::sync::Arc;

use serde::Serialize;
use tera::{Context, Kwargs, State, Tera};

use drivecourse_machine::{messages, told};

pub use printed::printed;

use crate::words::Words;

messages! { pub(crate) SAYS {
    UNREADABLE = "problem-page-unreadable", "the page templates cannot be read";
    UNWRITTEN = "problem-page-unwritten", "the page {name} cannot be written";
    PDF_UNWRITTEN = "problem-page-pdf-unwritten", "the PDF cannot be written";
} }

/// The name by which templates include the theme's file `path`: those of its pages, and the colours of the course.
#[must_use]
pub fn template_name(path: &str) -> Option<&str> {
    path.strip_prefix("pages/").or_else(|| path.strip_prefix("css/").filter(|name| *name == "variables.css"))
}

/// Templates ready to be filled.
#[derive(Debug)]
pub struct Pages {
    tera: Tera,
}

impl Pages {
    /// Reads the templates, each under the name another template includes it by; they ask `words` for every text:
    /// `{{ word(id="paper-question", number=q.number) }}`.
    ///
    /// # Errors
    /// When a template has a fault or includes one that is not there; the message shows the place.
    pub fn new(templates: &BTreeMap<String, String>, words: &Arc<Words>) -> Result<Self, PageError> {
        let mut tera = Tera::new();
        let (said, spoken) = (Arc::clone(words), Arc::clone(words));
        tera.register_function("word", move |kwargs: Kwargs, _: &State| word(&said, &kwargs));
        tera.register_function("language", move |_: Kwargs, _: &State| spoken.code().to_owned());
        tera.autoescape_on(["html"]);
        tera.set_escape_fn(escape);
        tera.register_filter("as_typed", as_typed);
        tera.register_filter("css_text", css_text);
        tera.register_filter("js_text", js_text);
        tera.add_raw_templates(templates.iter().map(|(name, text)| (name.clone(), text.as_str())))
            .map_err(|e| PageError::new(UNREADABLE.text(), &e))?;
        Ok(Self { tera })
    }

    /// Fills the template `name` with `data`.
    ///
    /// # Errors
    /// When there is no such template, or it asks for something `data` does not have.
    pub fn render(&self, name: &str, data: &impl Serialize) -> Result<String, PageError> {
        let about = told!(UNWRITTEN, "name" = name);
        let context = Context::from_serialize(data).map_err(|e| PageError::new(&about, &e))?;
        self.tera.render(name, &context).map_err(|e| PageError::new(&about, &e))
    }
}

/// The text `id` with whatever else is named filled in.
fn word(words: &Words, kwargs: &Kwargs) -> tera::TeraResult<String> {
    let id = kwargs.must_get::<&str>("id")?;
    let named = kwargs.iter().map(|(name, value)| (name.to_string(), value.to_string()));
    let named: Vec<(String, String)> = named.filter(|(name, _)| name != "id").collect();
    let named: Vec<(&str, &str)> = named.iter().map(|(name, value)| (name.as_str(), value.as_str())).collect();
    Ok(words.say(id, &named))
}

/// Why a page could not be written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PageError(String);

impl PageError {
    pub(crate) fn new(about: &str, error: &dyn std::error::Error) -> Self {
        let mut message = format!("{about}: {error}");
        let mut cause = error.source();
        while let Some(error) = cause {
            message.push_str(&format!(": {error}"));
            cause = error.source();
        }
        Self(message)
    }

    #[cfg(feature = "pdf")]
    pub(crate) fn say(about: &str, reason: &str) -> Self {
        Self(format!("{about}: {reason}"))
    }
}

impl fmt::Display for PageError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl std::error::Error for PageError {}

/// Whether a character could turn the text around it, or is not text at all.
pub(crate) fn is_unruly(c: char) -> bool {
    matches!(c, '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}') || (c.is_control() && !matches!(c, '\n' | '\t'))
}

/// Escapes for HTML text and quoted attributes, as it is [`printed()`].
fn escape(text: &str, out: &mut dyn Write) -> io::Result<()> {
    escape_typed(&printed(text), out)
}

/// Escapes an attribute that is read by a program: each letter stays as it is.
fn as_typed(text: &str, _: Kwargs, _: &State) -> tera::TeraResult<String> {
    let mut out = Vec::with_capacity(text.len());
    escape_typed(text, &mut out)?;
    Ok(String::from_utf8_lossy(&out).into_owned())
}

/// Escapes for HTML text and quoted attributes, and leaves out marks that reverse the text after them.
fn escape_typed(text: &str, out: &mut dyn Write) -> io::Result<()> {
    for c in text.chars().filter(|c| !is_unruly(*c)) {
        match c {
            '&' => out.write_all(b"&amp;")?,
            '<' => out.write_all(b"&lt;")?,
            '>' => out.write_all(b"&gt;")?,
            '"' => out.write_all(b"&quot;")?,
            '\'' => out.write_all(b"&#39;")?,
            other => out.write_all(other.encode_utf8(&mut [0; 4]).as_bytes())?,
        }
    }
    Ok(())
}

/// Escapes for a string or a template literal of a script; what is to be filled in (`${...}`) stays.
fn js_text(text: &str, _: Kwargs, _: &State) -> String {
    text.replace('\\', "\\\\").replace('`', "\\`").replace('"', "\\\"").replace("</", "<\\/")
}

/// Escapes for a quoted string in a style sheet; the result has no character that HTML or CSS could mistake.
fn css_text(text: &str, _: Kwargs, _: &State) -> String {
    let mut safe = String::new();
    for c in text.chars().filter(|c| !is_unruly(*c)) {
        if c.is_alphanumeric() || matches!(c, ' ' | '.' | ',' | '-' | ':' | '(' | ')') {
            safe.push(c);
        } else {
            safe.push_str(&format!("\\{:x} ", u32::from(c)));
        }
    }
    safe
}
