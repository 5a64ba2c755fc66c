//! The language of everything that people read, chosen once for a whole run of the program.
//!
//! Words stand where they belong: what is said of a relation beside its calculation, a sentence beside the code that
//! says it. Each has the id of a message, under which a translation is looked up; English needs none. Whoever begins a
//! run in another language hands its texts over with [`speak`] before anything is said; texts that are not among them
//! stay English, and can be marked as such ([`MARKS`]), so that a page shows what is still to be translated.
//!
//! A text may hold places to fill in: `{unit}`. Numbers are written and read with the language's decimal mark.

use std::borrow::Cow;
use std::sync::OnceLock;

use crate::amount::DecimalMark;
use crate::packed;
use crate::packed::{Packed, Reader};
use crate::topics;

/// Stand before and after a text that has no translation, where that is asked for.
pub const MARKS: [char; 2] = ['⟦', '⟧'];

/// Something that the program says, with the id under which its translation is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Message {
    /// Letters, figures and hyphens.
    #[cfg(not(wordless))]
    pub id: &'static str,
    /// In English.
    #[cfg(not(wordless))]
    pub english: &'static str,
    /// In the browser build, which is handed every text, a digest of the id is enough.
    #[cfg(wordless)]
    digest: u32,
}

/// FNV-1a, 32 bits, of a message's id.
#[cfg_attr(not(wordless), allow(dead_code))]
const fn digest(id: &str) -> u32 {
    let (bytes, mut digest, mut at) = (id.as_bytes(), 0x811c_9dc5_u32, 0);
    while at < bytes.len() {
        digest = (digest ^ bytes[at] as u32).wrapping_mul(0x0100_0193);
        at += 1;
    }
    digest
}

impl Message {
    /// A message; see [`messages!`](crate::messages).
    #[cfg(not(wordless))]
    pub const fn new(id: &'static str, english: &'static str) -> Self {
        Self { id, english }
    }

    /// A message, of which only the id's digest is kept.
    #[cfg(wordless)]
    pub const fn new(id: &'static str, _: &'static str) -> Self {
        Self { digest: digest(id) }
    }

    /// As it stands, without anything filled in: what the course has handed over.
    #[cfg(wordless)]
    pub fn text(&self) -> &'static str {
        let Some(language) = SPOKEN.get() else { return "" };
        let found = language.texts.iter().find(|(id, _)| digest(id) == self.digest);
        found.map_or("", |(_, text)| text)
    }

    /// As it stands, without anything filled in.
    #[cfg(not(wordless))]
    pub fn text(&self) -> &'static str {
        text(self.id, self.english)
    }

    /// With every `{name}` of `words` filled in.
    pub fn say(&self, words: &[(&str, &str)]) -> String {
        fill(self.text(), words)
    }
}

/// Declares messages and the list of them all: `pub(crate) ALL { /// Why. BLANK = "explain-blank", "Nothing."; }`.
#[macro_export]
macro_rules! messages {
    ($vis:vis $all:ident { $($(#[$about:meta])* $name:ident = $id:literal, $english:literal;)* }) => {
        $($(#[$about])* $vis const $name: $crate::language::Message = $crate::language::Message::new($id, $english);)*
        /// All of them.
        #[cfg_attr(wordless, allow(dead_code))]
        $vis const $all: &[$crate::language::Message] = &[$($name),*];
    };
}

/// A language and its texts.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Language {
    code: String,
    decimal: DecimalMark,
    /// Ids and texts, in the order of the ids.
    texts: Vec<(String, String)>,
    /// Whether a text that is missing is marked.
    marked: bool,
}

packed!(Language { code, decimal, texts, marked });

impl Packed for DecimalMark {
    fn pack(&self, out: &mut String) {
        (*self == Self::Comma).pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        if bool::unpack(from) { Self::Comma } else { Self::Point }
    }
}

impl Language {
    /// The language `code` (a tag of BCP 47) with these texts by their ids; `marked` marks what is missing.
    pub fn new(
        code: &str,
        decimal: DecimalMark,
        texts: impl IntoIterator<Item = (String, String)>,
        marked: bool,
    ) -> Self {
        let mut texts: Vec<_> = texts.into_iter().collect();
        texts.sort();
        Self { code: code.to_owned(), decimal, texts, marked }
    }

    fn find(&self, id: &str) -> Option<&str> {
        let place = self.texts.binary_search_by(|(known, _)| known.as_str().cmp(id)).ok()?;
        Some(&self.texts[place].1)
    }

    /// The language spoken, with the headings of the topics, the text of each of `messages`, and `more` texts by their
    /// ids: what a page hands to its browser build.
    pub fn of_messages(
        messages: impl IntoIterator<Item = Message>,
        more: impl IntoIterator<Item = (String, String)>,
    ) -> Self {
        #[cfg(not(wordless))]
        let id = |message: &Message| message.id.to_owned();
        // The browser build hands nothing on.
        #[cfg(wordless)]
        let id = |_: &Message| String::new();
        let texts = messages.into_iter().map(|message| (id(&message), message.text().to_owned()));
        let headings = topics::titles().map(|(id, title)| (topics::title_id(id), title.to_owned()));
        Self::new(code(), decimal_mark(), texts.chain(headings).chain(more), false)
    }
}

static SPOKEN: OnceLock<Language> = OnceLock::new();

/// What this crate says, beside the words of the registry.
pub fn messages() -> Vec<Message> {
    use crate::{amount, face, instrument, source, unit};
    let read = [amount::SAYS, unit::NAMES, unit::SAID, unit::spoken::SAYS].concat();
    [&read, face::slip::NAMES, face::slip::SAYS, instrument::NAMES, source::SAYS].concat()
}

/// What this crate tells the author of a file, or whoever runs a command, of what cannot be used: none of it is said in
/// the browser.
#[cfg(not(wordless))]
pub fn author_messages() -> Vec<Message> {
    use crate::{amount, expression, family, formula, plan, problem, toml_file};
    [
        problem::SAYS,
        toml_file::SAYS,
        amount::CHOICE_SAYS,
        amount::FILE_SAYS,
        formula::SAYS,
        expression::SAYS,
        family::READ_SAYS,
        family::TABLE_SAYS,
        family::LIKE_SAYS,
        plan::SAYS,
        plan::AGREE_SAYS,
        plan::REJECTIONS_SAY,
        #[cfg(not(wordless))]
        plan::NEAREST_SAYS,
    ]
    .concat()
}

/// Takes on a language for the rest of the run; to be called before anything is said.
///
/// # Errors
/// The language given back, where one has been taken on before.
pub fn speak(language: Language) -> Result<(), Language> {
    SPOKEN.set(language)
}

/// The language's tag: `en` where nothing else was taken on.
pub fn code() -> &'static str {
    SPOKEN.get().map_or("en", |language| &language.code)
}

/// The mark that parts decimals in what is written and read.
pub fn decimal_mark() -> DecimalMark {
    SPOKEN.get().map_or(DecimalMark::Point, |language| language.decimal)
}

/// The text of the message `id`, which is `english` where it is not translated.
pub fn text(id: &str, english: &'static str) -> &'static str {
    let Some(language) = SPOKEN.get() else { return english };
    match language.find(id) {
        Some(text) => text,
        // A mark is asked for by translators only: the little that is leaked is nothing to them.
        None if language.marked && !english.is_empty() => Box::leak(marked(english).into()),
        None => english,
    }
}

/// As [`text`], for words that came from a file: translated where there is a translation, marked as missing only
/// where `expected` says that there should be one.
pub fn translated<'a>(id: &str, words: &'a str, expected: bool) -> Cow<'a, str> {
    match SPOKEN.get() {
        Some(language) if !words.is_empty() => match language.find(id) {
            Some(text) => text.into(),
            None if language.marked && expected => marked(words).into(),
            None => words.into(),
        },
        _ => words.into(),
    }
}

fn marked(words: &str) -> String {
    format!("{}{words}{}", MARKS[0], MARKS[1])
}

/// `text` with every `{name}` of `words` filled in; other brackets stay.
pub fn fill(text: &str, words: &[(&str, &str)]) -> String {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    while let Some((before, after)) = rest.split_once('{') {
        out.push_str(before);
        let named = after.split_once('}');
        match named.and_then(|(name, tail)| Some((words.iter().find(|(known, _)| *known == name)?.1, tail))) {
            Some((word, tail)) => {
                out.push_str(word);
                rest = tail;
            }
            None => {
                out.push('{');
                rest = after;
            }
        }
    }
    out.push_str(rest);
    out
}

/// A name of the registry as a part of a message's id: small letters, figures and single hyphens.
pub fn slug(name: &str) -> String {
    let mut out = String::with_capacity(name.len());
    for c in name.chars() {
        if c.is_ascii_alphanumeric() {
            out.push(c.to_ascii_lowercase());
        } else if !out.ends_with('-') {
            out.push('-');
        }
    }
    out.trim_matches('-').to_owned()
}

/// `text` with the point of a number written as the language writes it.
pub fn with_decimal_mark(text: String) -> String {
    match decimal_mark() {
        DecimalMark::Point => text,
        DecimalMark::Comma => text.replace('.', ","),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_named_places_are_filled() {
        assert_eq!(fill("{a} of {b} and {c", &[("a", "1"), ("b", "{a}")]), "1 of {a} and {c");
        assert_eq!(fill("no place", &[("a", "1")]), "no place");
    }

    #[test]
    fn digests_tell_the_messages_apart() {
        // Published test vectors of FNV-1a (draft-eastlake-fnv), 32 bits.
        assert_eq!((digest(""), digest("a"), digest("foobar")), (0x811c_9dc5, 0xe40c_292c, 0xbf9c_f968));
        let mut digests: Vec<u32> = messages().iter().map(|message| digest(message.id)).collect();
        let count = digests.len();
        digests.sort_unstable();
        digests.dedup();
        assert_eq!(digests.len(), count);
    }

    #[test]
    fn names_become_parts_of_ids() {
        assert_eq!(slug("heat.rise/over ambient"), "heat-rise-over-ambient");
        assert_eq!(slug("2π left out, °F"), "2-left-out-f");
    }

    #[test]
    fn a_language_finds_its_texts() {
        let texts = [("b", "zwei"), ("a", "eins")].map(|(id, text)| (id.to_owned(), text.to_owned()));
        let language = Language::new("de", DecimalMark::Comma, texts, false);
        assert_eq!((language.find("a"), language.find("b"), language.find("c")), (Some("eins"), Some("zwei"), None));
        let mut text = String::new();
        language.pack(&mut text);
        assert_eq!(Reader::new(&text).read(), Some(language));
    }
}
