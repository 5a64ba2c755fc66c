//! Wrong turns of an author's own: what a wrong answer comes to, in known quantities, and what it says.

use drivecourse_machine::{Expression, Path, PathChoice, QuantityId, messages, schema};
use schemars::JsonSchema;
use serde::Deserialize;
use toml::Spanned;

use super::Ask;
use super::read::Reader;

/// A wrong turn of your own.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct WrongFile {
    /// The step that goes wrong, a quantity on the way; what is asked, if left out.
    #[schemars(with = "Option<schema::QuantityName>")]
    at: Option<Spanned<String>>,
    /// What it comes to: an expression in quantities, such as "chain.sag * 2".
    #[schemars(with = "String")]
    gives: Spanned<String>,
    /// What is said to the person: a sentence.
    #[schemars(with = "String")]
    pub(super) says: Spanned<String>,
}

/// A wrong turn of an author's own.
#[derive(Debug, Clone, PartialEq)]
pub struct OwnTurn {
    /// The step that goes wrong, by the quantity that it gives.
    pub at: QuantityId,
    /// What it comes to.
    pub gives: Expression,
    /// What it says about the person.
    pub says: String,
    /// Where it stands in its file, in bytes.
    pub span: core::ops::Range<usize>,
}

messages! { pub(crate) SAYS {
    NO_STEP = "problem-wrong-no-step", "{step} is no step on the way to {asked}.";
    STEPS = "problem-wrong-steps", "The steps are {steps}.";
    NO_WORDS = "problem-wrong-no-words", "A wrong turn without words helps nobody.";
    ADD_WORDS = "problem-wrong-add-words", "Say what went wrong.";
} }

drivecourse_machine::packed!(OwnTurn { at, gives, says } without span);

impl Reader<'_> {
    /// The wrong turns of a part that asks for a quantity.
    pub(super) fn wrong_turns(&mut self, files: &[WrongFile], ask: &Ask) -> Vec<OwnTurn> {
        let Ask::Quantity { asked, from, by, .. } = ask else { return Vec::new() };
        let path = Path::find(from, *asked, &PathChoice { by: by.clone(), ..PathChoice::default() });
        let mut out: Vec<OwnTurn> = Vec::new();
        for file in files {
            let at = match &file.at {
                None => *asked,
                Some(name) => {
                    let Some(at) = self.quantity(name) else { continue };
                    if let Ok(path) = &path
                        && !path.steps.iter().any(|step| step.get().gives == at)
                    {
                        let steps: Vec<_> = path.steps.iter().map(|step| step.get().gives.get().id).collect();
                        self.say(
                            name.span(),
                            NO_STEP.say(&[("step", at.get().id), ("asked", asked.get().id)]),
                            STEPS.say(&[("steps", &steps.join(", "))]),
                        );
                        continue;
                    }
                    at
                }
            };
            if file.says.get_ref().trim().is_empty() {
                self.say(file.says.span(), NO_WORDS.text(), ADD_WORDS.text());
            }
            match Expression::read(file.gives.get_ref(), at) {
                Ok(gives) => {
                    out.push(OwnTurn { at, gives, says: file.says.get_ref().clone(), span: file.gives.span() });
                }
                Err(mut problem) => {
                    // The text begins behind its quotation mark.
                    let start = file.gives.span().start + 1;
                    problem.span = problem.span.map(|span| span.start + start..span.end + start);
                    self.problems.push(problem);
                }
            }
        }
        out
    }
}
