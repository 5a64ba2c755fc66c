//! The rows of a blueprint, read.

use core::ops::Range;

use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Problem, did_you_mean, messages, topics};
use toml::Spanned;

use super::{Pick, Row, RowFile};
use crate::mend::{NO_TOPIC, TOPICS, WRITE_OR_OUT, quoted, write_say};

messages! { pub(crate) SAYS {
    ONE_THING = "problem-row-one-thing", "A row takes from exactly one thing.";
    THINGS = "problem-row-things", "Give it one of `topic`, `skill` and `item`.";
    COUNT = "problem-row-count", "A row takes between 1 and {most} questions.";
    WRITE_COUNT = "problem-row-write-count", "Write {example}, say, or take the row out.";
    NO_COUNT = "problem-row-no-count", "This row does not say how many questions it takes.";
    NO_MARKS = "problem-row-no-marks", "A question earns at least one mark.";
    WEIGHT = "problem-row-weight", "A question is worth between 1 and 100 marks.";
    DIFFICULTY = "problem-row-difficulty", "These are no bounds of difficulty.";
} }

const MOST_COUNT: u32 = 200;

pub(super) struct Reader {
    pub(super) problems: Vec<Problem>,
}

impl Reader {
    pub(super) fn say(&mut self, span: Range<usize>, what: impl Into<String>, mend: impl Into<String>) {
        self.problems.push(Problem::at(span, what, mend));
    }

    pub(super) fn row(&mut self, row: RowFile) -> Option<Row> {
        let names = [row.topic.as_ref(), row.skill.as_ref(), row.item.as_ref()];
        let named: Vec<_> = names.iter().flatten().collect();
        if named.len() != 1 {
            let span = named.get(1).map(|name| name.span()).or(row.count.as_ref().map(Spanned::span));
            let (what, mend) = (ONE_THING.text(), THINGS.text());
            self.problems.push(Problem { span, what: what.into(), mend: mend.into() });
            return None;
        }
        let span = named[0].span();
        if let Some(topic) = &row.topic
            && !topics::ALL.iter().any(|known| known.id == topic.get_ref())
        {
            let ids = || topics::ALL.iter().map(|topic| topic.id);
            let mend = nearest(topic.get_ref(), ids())
                .map_or_else(|| TOPICS.say(&[("names", &ids().collect::<Vec<_>>().join(", "))]), did_you_mean);
            self.say(span.clone(), NO_TOPIC.say(&[("name", &quoted(topic.get_ref()))]), mend);
        }
        let count = match row.count {
            Some(count) => {
                if !(1..=MOST_COUNT).contains(count.get_ref()) {
                    self.say(
                        count.span(),
                        COUNT.say(&[("most", &MOST_COUNT.to_string())]),
                        WRITE_COUNT.say(&[("example", "count = 2")]),
                    );
                }
                count.into_inner()
            }
            // An item that is named is asked once.
            None if row.item.is_some() => 1,
            None => {
                self.say(span.clone(), NO_COUNT.text(), write_say("count = 2"));
                return None;
            }
        };
        if let Some(marks) = &row.marks
            && *marks.get_ref() == 0
        {
            self.say(marks.span(), NO_MARKS.text(), WRITE_OR_OUT.say(&[("example", "marks = 2")]));
        }
        if let Some(weight) = &row.weight
            && !(1..=100).contains(weight.get_ref())
        {
            self.say(weight.span(), WEIGHT.text(), WRITE_OR_OUT.say(&[("example", "weight = 4")]));
        }
        if let Some(difficulty) = &row.difficulty {
            let (least, most) = *difficulty.get_ref();
            if !(least >= 0.0 && least < most && most.is_finite()) {
                self.say(difficulty.span(), DIFFICULTY.text(), write_say("difficulty = [3, 12]"));
            }
        }
        let pick = match (row.topic, row.skill, row.item) {
            (Some(name), ..) => Pick::Topic(name.into_inner()),
            (_, Some(name), _) => Pick::Skill(name.into_inner()),
            (.., name) => Pick::Item(name?.into_inner()),
        };
        Some(Row {
            pick,
            count,
            marks: row.marks.map(Spanned::into_inner),
            weight: row.weight.map(Spanned::into_inner),
            difficulty: row.difficulty.map(Spanned::into_inner),
            safety_only: row.safety_only,
            span,
        })
    }
}
