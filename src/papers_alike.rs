//! Whether the papers of one exam have the same right answers where they have the same item, and why.

use std::collections::BTreeMap;

use drivecourse_course::view::capital;
use drivecourse_machine::language::Message;
use drivecourse_machine::{Kind, Plan, QuantityId, messages};
use drivecourse_quiz::paper::Placed;
use drivecourse_quiz::{Body, Paper, Part};

messages! { pub(crate) SAYS {
    ALIKE = "papers-alike", "{count} of the {all} papers that ask {item} have the same numbers there as another one ({codes}). Nothing needs doing unless these sit within sight of each other: {people}. Part them, or make the numbers differ. {why}. What helps: {help}";
    ALIKE_TABLE = "papers-alike-table", "from the table of {family} come {quantities}";
    ALIKE_FIXED = "papers-alike-fixed", "{family} fixes {quantities}";
    ALIKE_FOLLOWS = "papers-alike-follows", "from such values alone follow {quantities}";
    ALIKE_VARIES = "papers-alike-varies", "of what it is asked from, only {quantities} can differ between two cases of one machine, and not by enough";
    ALIKE_NONE_VARIES = "papers-alike-none-varies", "nothing that it is asked from differs between two cases of one machine";
    ALIKE_HELP_STILL = "papers-alike-help-still", "let one of these that does differ from case to case vary under [draw], in place of its fixed value or its column, ask from a reading that differs from case to case, or ask items of other skills";
    ALIKE_HELP_VARIES = "papers-alike-help-varies", "let these vary more widely under [draw], ask from a reading that differs more, or ask items of other skills";
} }

/// The right answers on the papers, to see whether those of an item differ from paper to paper.
#[derive(Default)]
pub(crate) struct Numbers<'a> {
    /// By the item.
    papers: BTreeMap<String, Alike<'a>>,
}

/// Whose paper it is.
struct Whose {
    code: String,
    /// The candidate's name.
    name: String,
}

/// What the papers have of one item.
#[derive(Default)]
struct Alike<'a> {
    /// The papers, by the answers in figures, to the last bit.
    codes: BTreeMap<Vec<u64>, Vec<Whose>>,
    /// What its questions are asked from, in order.
    from: Vec<QuantityId>,
    /// The families of machines that they are about, in order.
    plans: Vec<&'a Plan>,
}

impl<'a> Numbers<'a> {
    pub(crate) fn add(&mut self, paper: &Paper<'a>) {
        for Placed { item, plan, question, .. } in
            paper.questions.iter().filter(|placed| !placed.plan.family.pool.is_empty())
        {
            // Verdicts are few, and without a table a machine is drawn afresh.
            let number = |part: &Part| match &part.body {
                Body::Quantity { asked, keys, .. } if asked.get().kind != Kind::Choice => {
                    keys.first().map(|key| key.value.to_bits())
                }
                _ => None,
            };
            let numbers: Vec<u64> = question.parts.iter().filter_map(number).collect();
            if numbers.is_empty() {
                continue;
            }
            let alike = self.papers.entry(item.id.clone()).or_default();
            let whose = Whose { code: paper.code.to_string(), name: paper.candidate.name.clone() };
            alike.codes.entry(numbers).or_default().push(whose);
            for (id, _) in question.parts.iter().filter(|part| number(part).is_some()).flat_map(|part| &part.givens) {
                if !alike.from.contains(id) {
                    alike.from.push(*id);
                }
            }
            if !alike.plans.iter().any(|known| known.family.id == plan.family.id) {
                alike.plans.push(plan);
            }
        }
    }

    /// A remark on each item of which half the papers or more have the numbers of another one: a few alike by chance, as
    /// where teeth are counted, are no reason to change anything.
    pub(crate) fn alike(&self) -> Vec<String> {
        /// Codes named at most, and as many people.
        const MOST: usize = 6;
        let mut out = Vec::new();
        for (item, papers) in &self.papers {
            let all: usize = papers.codes.values().map(Vec::len).sum();
            let groups = || papers.codes.values().filter(|whose| whose.len() > 1);
            let alike: Vec<&str> = groups().flatten().map(|whose| whose.code.as_str()).collect();
            if !alike.is_empty() && 2 * alike.len() >= all {
                let more = if alike.len() > MOST { " ..." } else { "" };
                let codes = alike[..alike.len().min(MOST)].join(", ") + more;
                let mut left = MOST;
                let together = |whose: &Vec<Whose>| {
                    let named: Vec<_> = whose.iter().take(left).map(|whose| whose.name.as_str()).collect();
                    left -= named.len();
                    // One alone is like nobody named.
                    (named.len() > 1).then(|| named.join(", "))
                };
                let people = groups().filter_map(together).collect::<Vec<_>>().join("; ") + more;
                let (count, all) = (alike.len().to_string(), all.to_string());
                let (why, help) = papers.why();
                out.push(ALIKE.say(&[
                    ("count", &count),
                    ("all", &all),
                    ("item", item),
                    ("codes", &codes),
                    ("people", &people),
                    ("why", &why),
                    ("help", help.text()),
                ]));
            }
        }
        out
    }
}

impl Alike<'_> {
    /// What stands still from case to case of one machine and what does not, and what helps. More machines do not: a plant
    /// has those that it has.
    fn why(&self) -> (String, Message) {
        let names = |ids: &[QuantityId]| ids.iter().map(|id| id.get().id).collect::<Vec<_>>().join(", ");
        let mut why: Vec<String> = Vec::new();
        let mut varies: Vec<QuantityId> = Vec::new();
        for plan in &self.plans {
            let still = plan.still();
            let (mut tabled, mut fixed, mut follows) = (Vec::new(), Vec::new(), Vec::new());
            for id in &self.from {
                match () {
                    () if plan.tabled(*id) => tabled.push(*id),
                    () if plan.fixes(*id) => fixed.push(*id),
                    () if still[id.index()] => follows.push(*id),
                    () if varies.contains(id) => {}
                    () => varies.push(*id),
                }
            }
            for (says, ids) in [(ALIKE_TABLE, tabled), (ALIKE_FIXED, fixed), (ALIKE_FOLLOWS, follows)] {
                if !ids.is_empty() {
                    why.push(says.say(&[("family", &plan.family.id), ("quantities", &names(&ids))]));
                }
            }
        }
        let help = if why.is_empty() { ALIKE_HELP_VARIES } else { ALIKE_HELP_STILL };
        why.insert(
            0,
            match varies.is_empty() {
                true => ALIKE_NONE_VARIES.text().into(),
                false => ALIKE_VARIES.say(&[("quantities", &names(&varies))]),
            },
        );
        (capital(&why.join("; ")), help)
    }
}
