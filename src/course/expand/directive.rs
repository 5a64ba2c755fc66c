//! Finds directives in a chapter and reads their TOML.

use core::ops::Range;

use pulldown_cmark::{CodeBlockKind, Event, HeadingLevel, Options, Parser, Tag, TagEnd};
use serde::Deserialize;
use serde::de::value::Error as NoValue;
use serde::de::{DeserializeOwned, Deserializer, Error as _, Visitor};
use toml::Spanned;

use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Problem, System, quoted, told, toml_problem};

use super::{DIRECTIVES, INSIDE, INSIDE_MEND, MARKED, MARKED_MEND, UNCLOSED, UNCLOSED_MEND};

/// A directive as it stands in its chapter.
pub(super) struct Block {
    /// The whole fenced block, in bytes of the chapter.
    pub(super) span: Range<usize>,
    /// Where its TOML begins.
    inside: usize,
    /// Level of a heading that belongs under the heading before it.
    pub(super) level: u8,
    /// What it says.
    pub(super) body: Result<Body, Problem>,
}

/// What a directive says.
pub(super) enum Body {
    Practice(CardKeys),
    Worked(CardKeys),
    SelfCheck(CheckKeys),
    OneMachine(MachineKeys),
    Figure(FigureKeys),
    Formulas(TopicKeys),
    Mistakes(TopicKeys),
    Sources(TopicKeys),
    Quantities(QuantityKeys),
}

impl Body {
    /// Whether it becomes text that people look things up in, so that the search must know it.
    pub(super) fn is_looked_up(&self) -> bool {
        matches!(self, Self::Formulas(_) | Self::Mistakes(_) | Self::Sources(_) | Self::Quantities(_))
    }
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct CardKeys {
    pub(super) item: Spanned<String>,
    pub(super) family: Option<Spanned<String>>,
    pub(super) seed: Option<u64>,
    pub(super) units: Option<System>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct CheckKeys {
    pub(super) items: Spanned<Vec<Spanned<String>>>,
    pub(super) units: Option<System>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct MachineKeys {
    pub(super) family: Spanned<String>,
    /// Faults the machine has; none for a healthy one; left out, the family's seed decides.
    pub(super) faults: Option<Vec<Spanned<String>>>,
    pub(super) seed: u64,
    pub(super) items: Spanned<Vec<Spanned<String>>>,
    pub(super) units: Option<System>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct FigureKeys {
    pub(super) name: Spanned<String>,
    pub(super) family: Option<Spanned<String>>,
    pub(super) fault: Option<Spanned<String>>,
    pub(super) seed: Option<u64>,
    #[serde(default)]
    pub(super) caption: String,
    pub(super) units: Option<System>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct TopicKeys {
    pub(super) topic: Option<Spanned<String>>,
    #[serde(default)]
    pub(super) relations: Vec<Spanned<String>>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct QuantityKeys {
    pub(super) topic: Spanned<String>,
}

impl Block {
    /// `problem`, whose place counts from the start of the TOML, placed in the chapter: at the whole block if it has none.
    pub(super) fn placed(&self, mut problem: Problem) -> Problem {
        problem.span = Some(match problem.span {
            Some(span) => span.start + self.inside..span.end + self.inside,
            None => self.span.clone(),
        });
        problem
    }
}

/// Every directive of a chapter, in order.
pub(super) fn find(text: &str) -> Vec<Block> {
    // The same extensions that change where a block begins and ends in the book program.
    let options =
        Options::ENABLE_TABLES | Options::ENABLE_FOOTNOTES | Options::ENABLE_GFM | Options::ENABLE_DEFINITION_LIST;
    let mut blocks = Vec::new();
    let (mut heading, mut depth) = (1_u8, 0_u32);
    let mut open: Option<(String, Range<usize>, Option<Range<usize>>)> = None;
    for (event, range) in Parser::new_ext(text, options).into_offset_iter() {
        match event {
            Event::Start(Tag::Heading { level, .. }) => heading = number(level),
            Event::Start(Tag::CodeBlock(CodeBlockKind::Fenced(info))) => {
                let word = info.split([' ', ',', '\t']).next().unwrap_or_default();
                open = Some((word.to_owned(), range, None));
            }
            Event::Text(_) => {
                if let Some((_, _, inside)) = &mut open {
                    *inside = Some(inside.as_ref().map_or(range.clone(), |inside| inside.start..range.end));
                }
            }
            Event::End(TagEnd::CodeBlock) => {
                let Some((word, span, inside)) = open.take() else { continue };
                let inside = inside.unwrap_or(span.end..span.end);
                if DIRECTIVES.contains(&word.as_str()) {
                    let body = if is_open(&text[span.clone()]) {
                        Err(Problem::whole(told!(UNCLOSED, "word" = word), told!(UNCLOSED_MEND)))
                    } else if depth > 0 {
                        Err(Problem::whole(told!(INSIDE, "word" = word), told!(INSIDE_MEND)))
                    } else {
                        read(&word, &text[inside.clone()])
                    };
                    blocks.push(Block { span, inside: inside.start, level: (heading + 1).min(6), body });
                } else if let Some(near) = nearest(&word, DIRECTIVES.into_iter()) {
                    let problem = Problem::whole(
                        told!(MARKED, "word" = quoted(&word)),
                        told!(MARKED_MEND, "name" = quoted(near)),
                    );
                    blocks.push(Block { span, inside: inside.start, level: 1, body: Err(problem) });
                }
            }
            Event::Start(
                Tag::List(_) | Tag::Item | Tag::BlockQuote(_) | Tag::FootnoteDefinition(_) | Tag::DefinitionList,
            ) => depth += 1,
            Event::End(
                TagEnd::List(_)
                | TagEnd::Item
                | TagEnd::BlockQuote(_)
                | TagEnd::FootnoteDefinition
                | TagEnd::DefinitionList,
            ) => depth = depth.saturating_sub(1),
            _ => {}
        }
    }
    blocks
}

/// Whether a fenced block, its fences with it, has no end of its own: another one begins in it, or it goes on to the end of
/// the chapter.
fn is_open(block: &str) -> bool {
    let mut lines = block.lines();
    let fence = lines.next().unwrap_or_default().trim_start();
    let mark = fence.chars().next().unwrap_or('`');
    let marks = |line: &str| line.trim_start_matches(['>', ' ']).chars().take_while(|c| *c == mark).count();
    let least = marks(fence);
    let rest: Vec<&str> = lines.collect();
    let ends = rest.last().is_some_and(|last| marks(last) >= least && last.trim().ends_with(mark));
    !ends || rest[..rest.len() - 1].iter().any(|line| marks(line) >= least)
}

fn number(level: HeadingLevel) -> u8 {
    match level {
        HeadingLevel::H1 => 1,
        HeadingLevel::H2 => 2,
        HeadingLevel::H3 => 3,
        HeadingLevel::H4 => 4,
        HeadingLevel::H5 => 5,
        HeadingLevel::H6 => 6,
    }
}

fn read(word: &str, toml: &str) -> Result<Body, Problem> {
    Ok(match word {
        "practice" => Body::Practice(keys(toml)?),
        "worked" => Body::Worked(keys(toml)?),
        "self-check" => Body::SelfCheck(keys(toml)?),
        "one-machine" => Body::OneMachine(keys(toml)?),
        "figure" => Body::Figure(keys(toml)?),
        "formulas" => Body::Formulas(keys(toml)?),
        "mistakes" => Body::Mistakes(keys(toml)?),
        "sources" => Body::Sources(keys(toml)?),
        _ => Body::Quantities(keys(toml)?),
    })
}

/// The keys that a directive can have: those of the type that it is read into, so that no list can differ from it.
pub(super) fn keys_of(word: &str) -> &'static [&'static str] {
    match word {
        "practice" | "worked" => fields::<CardKeys>(),
        "self-check" => fields::<CheckKeys>(),
        "one-machine" => fields::<MachineKeys>(),
        "figure" => fields::<FigureKeys>(),
        "formulas" | "mistakes" | "sources" => fields::<TopicKeys>(),
        "quantities" => fields::<QuantityKeys>(),
        _ => &[],
    }
}

/// The names of the fields of a type: it says them when it asks to be read.
fn fields<T: DeserializeOwned>() -> &'static [&'static str] {
    struct Asked<'a>(&'a mut &'static [&'static str]);
    impl<'de> Deserializer<'de> for Asked<'_> {
        type Error = NoValue;

        fn deserialize_any<V: Visitor<'de>>(self, _: V) -> Result<V::Value, NoValue> {
            Err(NoValue::custom("only the fields were asked for"))
        }

        fn deserialize_struct<V: Visitor<'de>>(
            self,
            _: &'static str,
            fields: &'static [&'static str],
            visitor: V,
        ) -> Result<V::Value, NoValue> {
            *self.0 = fields;
            self.deserialize_any(visitor)
        }

        serde::forward_to_deserialize_any! {
            bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string bytes byte_buf option unit unit_struct
            newtype_struct seq tuple tuple_struct map enum identifier ignored_any
        }
    }
    let mut found: &'static [&'static str] = &[];
    // It has nothing to read, and says so; its fields are said before.
    let _ = T::deserialize(Asked(&mut found));
    found
}

fn keys<T: DeserializeOwned>(toml: &str) -> Result<T, Problem> {
    toml::from_str(toml).map_err(|error| {
        let mut problem = toml_problem::<T>(&error, toml);
        // A key that is missing is at no place inside: the block as a whole lacks it.
        problem.span = problem.span.filter(|_| !error.message().starts_with("missing"));
        problem
    })
}
