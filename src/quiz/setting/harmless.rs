//! Wrong turns that make no difference in a family: machines are not drawn again because of them.

use std::collections::BTreeMap;

use crate::predict::Cause;
use crate::question::{Body, Part, Question};

/// Wrong turns that do not count against a machine, because no machine of the family would do better.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Harmless {
    /// For each part, those that stay inside the tolerance over the whole family: no wrong turns here.
    pub dropped: Vec<Vec<Cause>>,
    /// For each part, pairs whose answers cannot be told apart over the whole family.
    pub alike: Vec<Vec<(Cause, Cause)>>,
}

impl Harmless {
    /// Of what `questions` foresee, each of `parts` parts, asked about machines of one family.
    pub(super) fn over(parts: usize, questions: &[Question]) -> Self {
        let mut counts = vec![Counts::default(); parts];
        for question in questions {
            question.parts.iter().zip(&mut counts).for_each(|(part, counts)| counts.add(part));
        }
        let mut harmless = Self::default();
        for counts in counts {
            let (dropped, alike) = counts.mostly();
            harmless.dropped.push(dropped);
            harmless.alike.push(alike);
        }
        harmless
    }
}

/// How often each wrong turn lay inside the tolerance, and each pair was alike, of how many times.
#[derive(Debug, Clone, Default)]
struct Counts {
    causes: Vec<Cause>,
    inside: Vec<(u32, u32)>,
    /// Of the causes at these two places.
    alike: BTreeMap<(usize, usize), (u32, u32)>,
}

impl Counts {
    fn add(&mut self, part: &Part) {
        fn note(tally: &mut (u32, u32), hit: bool) {
            tally.0 += u32::from(hit);
            tally.1 += 1;
        }
        let Body::Quantity { keys, predicted, .. } = &part.body else { return };
        let places: Vec<usize> = predicted.iter().map(|wrong| self.place(&wrong.cause)).collect();
        for (index, wrong) in predicted.iter().enumerate() {
            note(&mut self.inside[places[index]], wrong.is_inside(keys));
            for (other, place) in predicted[..index].iter().zip(&places) {
                note(self.alike.entry((*place, places[index])).or_default(), other.is_like(wrong));
            }
        }
    }

    fn place(&mut self, cause: &Cause) -> usize {
        self.causes.iter().position(|known| known == cause).unwrap_or_else(|| {
            self.causes.push(cause.clone());
            self.inside.push((0, 0));
            self.causes.len() - 1
        })
    }

    /// What was so in four machines of five: what is left then is found in a few draws.
    fn mostly(self) -> (Vec<Cause>, Vec<(Cause, Cause)>) {
        let mostly = |(times, of): (u32, u32)| times * 5 > of * 4;
        let cause = |place: usize| self.causes[place].clone();
        let inside = (0..self.causes.len()).filter(|place| mostly(self.inside[*place])).map(cause).collect();
        let alike = self.alike.iter().filter(|(_, tally)| mostly(**tally));
        (inside, alike.map(|((one, two), _)| (cause(*one), cause(*two))).collect())
    }
}
