//! Parts of items, as they are written.

use drivecourse_machine::language::Message;
use drivecourse_machine::{Face, Known, QuantityId, messages, schema};
use schemars::JsonSchema;
use serde::Deserialize;
use toml::Spanned;

use super::read::Reader;
use super::wrong::WrongFile;
use super::{Ask, PartSpec};
use crate::judge::{Call, Finding, Judge};
use crate::mend::{quoted, write_say};

/// One part of an item: it asks in exactly one way.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct PartFile {
    /// The question, with {machine} and {name.of-a-quantity} filled in.
    #[schemars(with = "String")]
    text: Spanned<String>,
    /// The quantity asked for.
    #[schemars(with = "Option<schema::QuantityName>")]
    pub(super) ask: Option<Spanned<String>>,
    /// What is given and needed.
    #[serde(default)]
    #[schemars(with = "Vec<schema::QuantityName>")]
    pub(super) from: Vec<Spanned<String>>,
    /// What is shown besides, though not needed.
    #[serde(default)]
    #[schemars(with = "Vec<schema::QuantityName>")]
    also: Vec<Spanned<String>>,
    /// Methods that the question names; left out, every accepted method is right.
    #[serde(default)]
    #[schemars(with = "Vec<schema::RelationName>")]
    pub(super) by: Vec<Spanned<String>>,
    /// Wrong turns of your own, besides those that the program knows.
    #[serde(default)]
    wrong: Vec<WrongFile>,
    /// A reading off the face of its instrument.
    #[schemars(with = "Option<schema::QuantityName>")]
    read: Option<Spanned<String>>,
    /// Steps in their right order: they are shown shuffled.
    #[schemars(with = "Option<Vec<String>>", length(min = 3, max = 12))]
    order: Option<Spanned<Vec<Spanned<String>>>>,
    /// Statements of which one is right.
    #[schemars(with = "Option<Vec<String>>", length(min = 2))]
    pick: Option<Spanned<Vec<Spanned<String>>>>,
    /// Number of the right statement, counted from 1.
    #[schemars(with = "Option<usize>", range(min = 1))]
    right: Option<Spanned<usize>>,
    /// Readings from which a fault is told.
    #[schemars(with = "Option<Vec<schema::QuantityName>>")]
    diagnose: Option<Spanned<Vec<Spanned<String>>>>,
    /// Worked out from what is shown, and weighed in the diagnosis too.
    #[serde(default)]
    #[schemars(with = "Vec<schema::QuantityName>")]
    weigh: Vec<Spanned<String>>,
    /// Faults to choose from.
    #[serde(default)]
    among: Vec<String>,
    /// Numbers of which one is wrong.
    #[schemars(with = "Option<Vec<schema::QuantityName>>")]
    odd: Option<Spanned<Vec<Spanned<String>>>>,
    /// Findings that call for more than acceptance.
    #[schemars(with = "Option<Vec<FindingFile>>")]
    decide: Option<Spanned<Vec<FindingFile>>>,
    /// Asks what decides it, after a decision.
    #[schemars(with = "Option<bool>")]
    reason: Option<Spanned<bool>>,
    /// Why the answer is right: shown afterwards.
    #[serde(default)]
    because: String,
    /// Marks for a right answer; 1 if left out.
    #[schemars(with = "Option<u32>", range(min = 1, max = 20))]
    marks: Option<Spanned<u32>>,
    /// Hints, one at a time, before those that the program gives.
    #[serde(default)]
    hints: Vec<String>,
}

/// A finding, and what it calls for.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct FindingFile {
    /// The verdict.
    #[schemars(with = "schema::QuantityName")]
    on: Spanned<String>,
    /// What it comes to.
    #[schemars(with = "String")]
    when: Spanned<String>,
    /// What is done then: adjust or stop.
    #[schemars(with = "String", extend("enum" = ["adjust", "stop"]))]
    call: Spanned<String>,
    /// Why, as a sentence without a full stop.
    reason: String,
}

messages! { pub(crate) SAYS {
    ONE_WAY = "problem-part-one-way", "A part asks in exactly one way.";
    /// The ways of asking, as the keys that say so.
    WAYS = "problem-part-ways", "Give it one of `ask`, `read`, `order`, `pick`, `diagnose`, `odd`, `decide` and `reason`.";
    MARKS = "problem-part-marks", "A part earns between 1 and 20 marks.";
    WRONG_ALONE = "problem-part-wrong-alone", "Wrong turns belong to a part with `ask`.";
    WRONG_OUT = "problem-part-wrong-out", "Take `wrong` out of this part.";
    STEPS = "problem-part-steps", "An ordering needs between 3 and 12 steps.";
    ADD_STEPS = "problem-part-add-steps", "Add or join steps.";
    RIGHT = "problem-part-right", "`right` must be the number of the right statement, counted from 1.";
    WRITE_RIGHT = "problem-part-write-right", "Write right = 1 to {count}.";
    SAME_STEP = "problem-part-same-step", "This step reads the same as step {number}, so nobody can tell them apart.";
    STEP_OUT = "problem-part-step-out", "Take one step out, or say in both what is different.";
    SAME_STATEMENT = "problem-part-same-statement", "This statement reads the same as statement {number}, so nobody can tell them apart.";
    STATEMENT_OUT = "problem-part-statement-out", "Take one statement out, or say in both what is different.";
    GIVEN_AWAY = "problem-part-given-away", "The part asks for what it gives away.";
    FROM_OUT = "problem-part-from-out", "Take the asked quantity out of `from`.";
    NO_FACE = "problem-part-no-face", "{quantity} is not read off a face that can be drawn.";
    FACES = "problem-part-faces", "Name something that is read with one of these: {instruments}.";
    NO_READING = "problem-part-no-reading", "{quantity} is no reading in numbers.";
    READINGS = "problem-part-readings", "A fault is told from readings and plates; leave verdicts to the learner.";
    ONE_READING = "problem-part-one-reading", "One reading alone explains nothing.";
    TWO_READINGS = "problem-part-two-readings", "Show at least two readings.";
    NO_NUMBER = "problem-part-no-number", "{quantity} is no number, so no slip of the pen is in it.";
    TO_ALSO = "problem-part-to-also", "Move it to `also`.";
    FEW_NUMBERS = "problem-part-few-numbers", "An odd one out is found among at least three numbers, in an item of one part.";
    ADD_NUMBERS = "problem-part-add-numbers", "Add numbers that follow from the others, or make it an item of its own.";
    NO_FINDING = "problem-part-no-finding", "Nothing here decides anything.";
    ADD_FINDING = "problem-part-add-finding", "Add at least one finding.";
    NO_DECISION = "problem-part-no-decision", "A reason belongs to the decision in the part before.";
    MOVE_REASON = "problem-part-move-reason", "Write reason = true in the part that follows one with `decide`.";
    NEVER_SO = "problem-part-never-so", "{quantity} never is {word}.";
    TAKE_VERDICT = "problem-part-take-verdict", "Take a verdict.";
    MAY_BE = "problem-part-may-be", "It may be {choices}.";
    NO_CALL = "problem-part-no-call", "{word} is no call.";
    CALLS = "problem-part-calls", "Write adjust or stop; whatever is not named is accepted.";
} }

impl Reader<'_> {
    pub(super) fn part(&mut self, part: PartFile, before: &[PartSpec]) -> Option<PartSpec> {
        self.placeholders(&part.text);
        let ways = [
            part.ask.is_some(),
            part.read.is_some(),
            part.order.is_some(),
            part.pick.is_some(),
            part.diagnose.is_some(),
            part.odd.is_some(),
            part.decide.is_some(),
            part.reason.is_some(),
        ];
        if ways.iter().filter(|way| **way).count() != 1 {
            self.say(part.text.span(), ONE_WAY.text(), WAYS.text());
            return None;
        }
        let marks = match part.marks {
            Some(ref marks) if *marks.get_ref() == 0 || *marks.get_ref() > 20 => {
                self.say(marks.span(), MARKS.text(), write_say("marks = 2"));
                1
            }
            Some(ref marks) => *marks.get_ref(),
            None => 1,
        };
        let (text, hints) = (part.text.get_ref().clone(), part.hints.clone());
        let mut wrong = Vec::new();
        if part.ask.is_none()
            && let Some(turn) = part.wrong.first()
        {
            self.say(turn.says.span(), WRONG_ALONE.text(), WRONG_OUT.text());
        }
        let ask = if part.ask.is_some() {
            let ask = self.quantity_part(&part)?;
            wrong = self.wrong_turns(&part.wrong, &ask);
            ask
        } else if let Some(name) = &part.read {
            self.read_part(name)?
        } else if let Some(order) = part.order {
            if order.get_ref().len() < 3 || order.get_ref().len() > 12 {
                self.say(order.span(), STEPS.text(), ADD_STEPS.text());
                return None;
            }
            let steps = self.told_apart(order.into_inner(), (SAME_STEP, STEP_OUT))?;
            Ask::Order { steps, because: part.because }
        } else if let Some(pick) = part.pick {
            let count = pick.get_ref().len();
            let right = part.right.as_ref().map_or(0, |right| *right.get_ref());
            if count < 2 || right == 0 || right > count {
                let span = part.right.map_or(pick.span(), |right| right.span());
                self.say(span, RIGHT.text(), WRITE_RIGHT.say(&[("count", &count.max(2).to_string())]));
                return None;
            }
            let options = self.told_apart(pick.into_inner(), (SAME_STATEMENT, STATEMENT_OUT))?;
            Ask::Pick { options, right: right - 1, because: part.because }
        } else {
            Ask::Judge(self.judge_part(part, before)?)
        };
        Some(PartSpec { text, ask, marks, hints, wrong: wrong.into() })
    }

    /// The texts of a list of which no two may read alike: of two that do, one would be marked wrong.
    fn told_apart(&mut self, list: Vec<Spanned<String>>, (same, mend): (Message, Message)) -> Option<Vec<String>> {
        let plain = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase();
        let mut seen: Vec<String> = Vec::new();
        let before = self.problems.len();
        for text in &list {
            let text_plain = plain(text.get_ref());
            if let Some(first) = seen.iter().position(|other| *other == text_plain) {
                self.say(text.span(), same.say(&[("number", &(first + 1).to_string())]), mend.text());
            }
            seen.push(text_plain);
        }
        (self.problems.len() == before).then(|| list.into_iter().map(Spanned::into_inner).collect())
    }

    fn quantities(&mut self, names: &[Spanned<String>]) -> Option<Vec<QuantityId>> {
        let before = self.problems.len();
        let found = names.iter().filter_map(|name| self.quantity(name)).collect();
        (self.problems.len() == before).then_some(found)
    }

    fn quantity_part(&mut self, part: &PartFile) -> Option<Ask> {
        let before = self.problems.len();
        let name = part.ask.as_ref()?;
        let quantity = self.quantity(name);
        let from: Vec<_> = part.from.iter().filter_map(|name| self.quantity(name)).collect();
        let also: Vec<_> = part.also.iter().filter_map(|name| self.quantity(name)).collect();
        let by: Vec<_> = part.by.iter().filter_map(|name| self.relation(name)).collect();
        if self.problems.len() > before {
            return None;
        }
        let quantity = quantity?;
        if from.contains(&quantity) {
            self.say(name.span(), GIVEN_AWAY.text(), FROM_OUT.text());
        }
        Some(Ask::Quantity { asked: quantity, from, also, by })
    }

    fn read_part(&mut self, name: &Spanned<String>) -> Option<Ask> {
        let quantity = self.quantity(name)?;
        match quantity.get().known {
            Known::Read(instrument) if Face::of(instrument).is_some() => Some(Ask::Read(quantity)),
            _ => {
                let faces: Vec<_> = Face::ALL.into_iter().map(|face| face.instrument().name()).collect();
                self.say(
                    name.span(),
                    NO_FACE.say(&[("quantity", name.get_ref())]),
                    FACES.say(&[("instruments", &faces.join(", "))]),
                );
                None
            }
        }
    }

    fn judge_part(&mut self, part: PartFile, before: &[PartSpec]) -> Option<Judge> {
        let also = self.quantities(&part.also);
        if let Some(names) = part.diagnose {
            let readings = self.quantities(names.get_ref())?;
            if let Some(place) =
                readings.iter().position(|id| !id.get().choices.is_empty() || id.get().known == Known::Worked)
            {
                let name = &names.get_ref()[place];
                self.say(name.span(), NO_READING.say(&[("quantity", name.get_ref())]), READINGS.text());
                return None;
            }
            if readings.len() < 2 {
                self.say(names.span(), ONE_READING.text(), TWO_READINGS.text());
                return None;
            }
            let weigh = self.quantities(&part.weigh)?;
            return Some(Judge::Diagnose { readings, weigh, also: also?, among: part.among, because: part.because });
        }
        if let Some(names) = part.odd {
            let sheet = self.quantities(names.get_ref())?;
            if let Some(place) = sheet.iter().position(|id| !id.get().choices.is_empty()) {
                let name = &names.get_ref()[place];
                self.say(name.span(), NO_NUMBER.say(&[("quantity", name.get_ref())]), TO_ALSO.text());
                return None;
            }
            if sheet.len() < 3 || !before.is_empty() {
                self.say(names.span(), FEW_NUMBERS.text(), ADD_NUMBERS.text());
                return None;
            }
            return Some(Judge::Odd { sheet, also: also?, because: part.because });
        }
        if let Some(findings) = part.decide {
            if findings.get_ref().is_empty() {
                self.say(findings.span(), NO_FINDING.text(), ADD_FINDING.text());
                return None;
            }
            let from = self.quantities(&part.from);
            let read: Vec<_> = findings.get_ref().iter().map(|finding| self.finding(finding)).collect();
            let findings = read.into_iter().collect::<Option<Vec<Finding>>>()?;
            return Some(Judge::Decide { from: from?, also: also?, findings, because: part.because });
        }
        let span = part.reason.as_ref()?.span();
        match before.last().map(|before| &before.ask) {
            Some(Ask::Judge(Judge::Decide { .. })) if part.reason.is_some_and(|reason| reason.into_inner()) => {
                Some(Judge::Reason { because: part.because })
            }
            _ => {
                self.say(span, NO_DECISION.text(), MOVE_REASON.text());
                None
            }
        }
    }

    fn finding(&mut self, file: &FindingFile) -> Option<Finding> {
        let on = self.quantity(&file.on)?;
        let when = on.get().choices.iter().position(|choice| choice == file.when.get_ref());
        let Some(when) = when else {
            let choices = on.get().choices;
            let mend = match choices {
                [] => TAKE_VERDICT.text().to_owned(),
                _ => MAY_BE.say(&[("choices", &choices.join(", "))]),
            };
            let words = [("quantity", on.get().id), ("word", &quoted(file.when.get_ref()))];
            self.say(file.when.span(), NEVER_SO.say(&words), mend);
            return None;
        };
        let Some(call) = Call::from_word(file.call.get_ref()).filter(|call| *call != Call::Accept) else {
            self.say(file.call.span(), NO_CALL.say(&[("word", &quoted(file.call.get_ref()))]), CALLS.text());
            return None;
        };
        Some(Finding { on, when, call, reason: file.reason.clone() })
    }
}
