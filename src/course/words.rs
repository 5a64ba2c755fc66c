//! The files of words: every text for people in a language, in the format of Project Fluent (syntax 1.0).
//!
//! The words of pages stand in these files in English too, and templates ask for them by id ([`Words::say`]). What
//! stands beside its calculation in the code (names, titles, sentences) has its English there; its translation is in the
//! same files, and [`Words::texts`] hands it out for [`drivecourse_machine::language`].

use std::collections::{BTreeMap, BTreeSet};
use std::fmt;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use unic_langid::LanguageIdentifier;

use drivecourse_machine::amount::DecimalMark;
use drivecourse_machine::language::MARKS;
use drivecourse_machine::{messages, quoted, told};

messages! { pub(crate) SAYS {
    // Words that cannot be used are told of in English, or in the language that was spoken before.
    WORDS_OF = "problem-words-of", "words of {code}";
    NO_TAG = "problem-words-no-tag", "{code} is no tag of a language; write one such as \"de\" or \"pt-BR\".";
    NO_WORDS = "problem-words-no-words", "there are no words for {language}: put files theme/words/{code}/*.ftl into a module, or choose another language.";
    UNUSABLE = "problem-words-unusable", "the message {id} cannot be used: {why}.";
    NO_MESSAGE = "problem-words-no-message", "this is no message of Fluent: {why}; see projectfluent.org for how one is written.";
    TWICE = "problem-words-twice", "the message {id} stands twice; take one of them out.";
} }

/// The language that every word is there in.
pub const ENGLISH: &str = "en";

/// Files of words by their names.
pub type Files = BTreeMap<String, String>;

/// The words of one language, over those of English.
pub struct Words {
    code: String,
    own: Source,
    english: Option<Source>,
    marked: bool,
}

/// What one language's files hold.
struct Source {
    bundle: FluentBundle<FluentResource>,
    /// Every text by its id, `message` or `message.attribute`, with the places to fill in.
    places: BTreeMap<String, Places>,
}

/// The places to fill in of one text, and whether it is plain: without a choice among variants.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Places {
    /// Names of what is filled in.
    pub names: BTreeSet<String>,
    /// Whether there are no variants to choose among, so that code can say it.
    pub plain: bool,
    /// The layer of files that it stands in, counted from 0.
    layer: usize,
}

impl Default for Words {
    /// No words at all: every id stands for itself.
    fn default() -> Self {
        let bundle = FluentBundle::new_concurrent(Vec::new());
        Self { code: ENGLISH.to_owned(), own: Source { bundle, places: BTreeMap::new() }, english: None, marked: false }
    }
}

impl fmt::Debug for Words {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Words").field("code", &self.code).field("texts", &self.own.places.len()).finish_non_exhaustive()
    }
}

/// Something wrong in a file of words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WordsError {
    /// The file's name.
    pub file: String,
    /// The line, counted from 1; none where the file is not to blame.
    pub line: Option<usize>,
    /// What and how to mend it.
    pub says: String,
}

impl fmt::Display for WordsError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.line {
            Some(line) => write!(f, "{}:{line}: {}", self.file, self.says),
            None => write!(f, "{}: {}", self.file, self.says),
        }
    }
}

impl std::error::Error for WordsError {}

impl Words {
    /// The words of the language `code` (a tag of BCP 47) from `own`, over those of `english`; `marked` puts marks round
    /// every English text that stands in for one that is missing. Both come in layers: a message of a later one takes
    /// the place of one of the same name before.
    ///
    /// # Errors
    /// Every problem in the files.
    pub fn read(code: &str, own: &[&Files], english: &[&Files], marked: bool) -> Result<Self, Vec<WordsError>> {
        if code == ENGLISH {
            return Ok(Self { code: code.to_owned(), own: Source::read(code, english)?, english: None, marked: false });
        }
        let (own, english) = (Source::read(code, own)?, Source::read(ENGLISH, english)?);
        Ok(Self { code: code.to_owned(), own, english: Some(english), marked })
    }

    /// Forgets the `messages` of the first layer, with their attributes; those of later ones stay.
    pub fn drop_first(&mut self, messages: &BTreeSet<String>) {
        let named = |id: &str| messages.contains(id.split('.').next().unwrap_or(id));
        self.own.places.retain(|id, places| places.layer > 0 || !named(id));
    }

    /// The language's tag.
    pub fn code(&self) -> &str {
        &self.code
    }

    /// Whether marks stand round what is not translated.
    pub fn are_marked(&self) -> bool {
        self.marked
    }

    /// The mark that parts decimals: what the message `decimal-mark` says.
    pub fn decimal_mark(&self) -> DecimalMark {
        match self.own.format("decimal-mark", &[]).as_deref() {
            Some(",") => DecimalMark::Comma,
            _ => DecimalMark::Point,
        }
    }

    /// The text `id` with `words` filled in; the id itself, marked, where no language has it.
    pub fn say(&self, id: &str, words: &[(&str, &str)]) -> String {
        if let Some(text) = self.own.format(id, words) {
            return text;
        }
        match self.english.as_ref().and_then(|english| english.format(id, words)) {
            Some(text) if !self.marked => text,
            text => format!("{}{}{}", MARKS[0], text.as_deref().unwrap_or(id), MARKS[1]),
        }
    }

    /// The texts whose ids begin with `prefix`, each in the language or in English: for a script.
    pub fn beginning(&self, prefix: &str) -> BTreeMap<String, String> {
        let sources = [Some(&self.own), self.english.as_ref()];
        let ids: BTreeSet<&String> = sources.into_iter().flatten().flat_map(|source| source.places.keys()).collect();
        let found = ids.into_iter().filter(|id| id.starts_with(prefix));
        found.map(|id| (id.clone(), self.say(id, &self.standing(id)))).collect()
    }

    /// Every text of the language's own files that is plain, by its id, with `{name}` where something is filled in.
    pub fn texts(&self) -> BTreeMap<String, String> {
        let plain = self.own.places.iter().filter(|(_, places)| places.plain);
        plain.filter_map(|(id, _)| Some((id.clone(), self.own.format(id, &self.standing(id))?))).collect()
    }

    /// The places to fill in of every text of the language's own files.
    pub fn places(&self) -> &BTreeMap<String, Places> {
        &self.own.places
    }

    /// `{name}` for each place of `id`.
    fn standing(&self, id: &str) -> Vec<(&str, &str)> {
        let known = self.own.places.get(id).or_else(|| self.english.as_ref()?.places.get(id));
        let names = known.into_iter().flat_map(|places| &places.names);
        // The braces are put round the name by `format`, which knows a name that stands for itself.
        names.map(|name| (name.as_str(), STANDS)).collect()
    }
}

/// Stands for the place itself.
const STANDS: &str = "\u{1}";

impl Source {
    fn read(code: &str, layers: &[&Files]) -> Result<Self, Vec<WordsError>> {
        let whole = |says: String| WordsError { file: told!(WORDS_OF, "code" = code), line: None, says };
        let tag: LanguageIdentifier = code.parse().map_err(|_| vec![whole(told!(NO_TAG, "code" = quoted(code)))])?;
        if layers.iter().all(|files| files.is_empty()) {
            return Err(vec![whole(told!(NO_WORDS, "language" = quoted(code), "code" = code))]);
        }
        let mut bundle = FluentBundle::new_concurrent(vec![tag]);
        // The marks that keep right-to-left words apart would stand in every number and name.
        bundle.set_use_isolating(false);
        let (mut places, mut problems) = (BTreeMap::new(), Vec::new());
        for (layer, files) in layers.iter().enumerate() {
            add(&mut bundle, &mut places, (layer, files), &mut problems);
        }
        let source = Self { bundle, places };
        for id in source.places.keys() {
            if let Err(says) = source.sound(id) {
                problems.push(whole(says));
            }
        }
        if problems.is_empty() { Ok(source) } else { Err(problems) }
    }

    /// Whether what `id` refers to is there.
    fn sound(&self, id: &str) -> Result<(), String> {
        let Some(pattern) = self.pattern(id) else { return Ok(()) };
        let mut args = FluentArgs::new();
        if let Some(places) = self.places.get(id) {
            places.names.iter().for_each(|name| args.set(name.as_str(), ""));
        }
        let mut errors = Vec::new();
        self.bundle.format_pattern(pattern, Some(&args), &mut errors);
        errors.first().map_or(Ok(()), |error| Err(told!(UNUSABLE, "id" = id, "why" = error.to_string())))
    }

    fn pattern(&self, id: &str) -> Option<&Pattern<&str>> {
        let (message, attribute) = id.split_once('.').map_or((id, None), |(message, part)| (message, Some(part)));
        let message = self.bundle.get_message(message)?;
        match attribute {
            None => message.value(),
            Some(part) => message.get_attribute(part).map(|attribute| attribute.value()),
        }
    }

    fn format(&self, id: &str, words: &[(&str, &str)]) -> Option<String> {
        let pattern = self.pattern(id)?;
        let mut args = FluentArgs::new();
        for (name, word) in words {
            args.set(*name, value(name, word));
        }
        // What refers to nothing was told of when the files were read.
        Some(self.bundle.format_pattern(pattern, Some(&args), &mut Vec::new()).into_owned())
    }
}

/// Adds a layer of files; what stands twice in it is told of, what stood before it is replaced.
fn add(
    bundle: &mut FluentBundle<FluentResource>,
    places: &mut BTreeMap<String, Places>,
    (number, files): (usize, &Files),
    problems: &mut Vec<WordsError>,
) {
    let mut layer: BTreeSet<String> = BTreeSet::new();
    for (file, text) in files {
        let line = |at: usize| Some(1 + text.as_bytes()[..at.min(text.len())].iter().filter(|b| **b == b'\n').count());
        let problem = |line, says: String| WordsError { file: file.clone(), line, says };
        let resource = FluentResource::try_new(text.clone()).unwrap_or_else(|(resource, errors)| {
            let told = |error: fluent_syntax::parser::ParserError| {
                problem(line(error.pos.start), told!(NO_MESSAGE, "why" = error.to_string()))
            };
            problems.extend(errors.into_iter().map(told));
            resource
        });
        for entry in resource.entries() {
            let Entry::Message(message) = entry else { continue };
            let id = message.id.name;
            if !layer.insert(id.to_owned()) {
                let at = text.rfind(&format!("\n{id} ")).map_or(0, |at| at + 1);
                problems.push(problem(line(at), told!(TWICE, "id" = id)));
            }
            // The later message rules whole, without the attributes of the earlier one.
            let parts = format!("{id}.");
            places.retain(|known, _| known != id && !known.starts_with(&parts));
            if let Some(value) = &message.value {
                places.insert(id.to_owned(), Places::of(value, number));
            }
            for attribute in &message.attributes {
                places.insert(format!("{id}.{}", attribute.id.name), Places::of(&attribute.value, number));
            }
        }
        bundle.add_resource_overriding(resource);
    }
}

/// A word as Fluent takes it: a whole number as a number, so that a plural can be chosen by it.
fn value<'a>(name: &str, word: &'a str) -> FluentValue<'a> {
    if word == STANDS {
        return FluentValue::from(format!("{{{name}}}"));
    }
    match word.parse::<u32>() {
        Ok(number) if number.to_string() == word => FluentValue::from(number),
        _ => FluentValue::from(word),
    }
}

impl Places {
    fn of(pattern: &Pattern<&str>, layer: usize) -> Self {
        let mut places = Self { names: BTreeSet::new(), plain: true, layer };
        places.look(pattern);
        places
    }

    fn look(&mut self, pattern: &Pattern<&str>) {
        for element in &pattern.elements {
            let PatternElement::Placeable { expression } = element else { continue };
            match expression {
                Expression::Inline(inline) => self.look_inline(inline),
                Expression::Select { selector, variants } => {
                    self.plain = false;
                    self.look_inline(selector);
                    variants.iter().for_each(|variant| self.look(&variant.value));
                }
            }
        }
    }

    fn look_inline(&mut self, inline: &InlineExpression<&str>) {
        match inline {
            InlineExpression::VariableReference { id } => {
                self.names.insert(id.name.to_owned());
            }
            InlineExpression::Placeable { expression } => match expression.as_ref() {
                Expression::Inline(inner) => self.look_inline(inner),
                Expression::Select { .. } => self.plain = false,
            },
            InlineExpression::FunctionReference { arguments, .. } => {
                arguments.positional.iter().for_each(|inner| self.look_inline(inner));
            }
            _ => {}
        }
    }
}

/// A message as Fluent writes it: `id = text`, or an attribute `    .id = text`; `{name}` becomes a place to fill in.
pub fn written(id: &str, text: &str) -> String {
    let mut out = String::new();
    let mut rest = text;
    // A closing bracket that closes no place must be told apart from one that does.
    let plain = |text: &str| text.replace('}', "{\"}\"}");
    while let Some((before, after)) = rest.split_once('{') {
        out.push_str(&plain(before));
        match after.split_once('}').filter(|(name, _)| is_name(name)) {
            Some((name, tail)) => {
                out.push_str(&format!("{{ ${} }}", name.replace('.', "-")));
                rest = tail;
            }
            None => {
                out.push_str("{\"{\"}");
                rest = after;
            }
        }
    }
    out.push_str(&plain(rest));
    // A line that begins so would be read as an attribute, a variant or a selector's end.
    let mut lines = out.split('\n').enumerate().map(|(place, line)| {
        let line = match line.chars().next() {
            Some(first @ ('[' | '*' | '.' | ' ')) => format!("{{\"{first}\"}}{}", &line[1..]),
            _ => line.to_owned(),
        };
        if place == 0 || line.is_empty() { line } else { format!("    {line}") }
    });
    let first = lines.next().unwrap_or_default();
    let more: Vec<String> = lines.collect();
    let indent = if id.starts_with('.') { "    " } else { "" };
    if more.is_empty() {
        format!("{indent}{id} = {first}")
    } else {
        format!("{indent}{id} =\n    {first}\n{}", more.join("\n"))
    }
}

fn is_name(name: &str) -> bool {
    name.starts_with(|c: char| c.is_ascii_alphabetic())
        && name.chars().all(|c| c.is_ascii_alphanumeric() || matches!(c, '-' | '_' | '.'))
}

#[cfg(test)]
pub(crate) mod tests;
