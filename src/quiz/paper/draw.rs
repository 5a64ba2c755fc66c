//! Papers for the people of a roster.

use std::collections::{BTreeMap, BTreeSet};

use drivecourse_machine::chance::Stream;
use drivecourse_machine::{Problem, System, messages};

use super::settings::{Settings, why};
use super::supply::{Candidate, Supply, families, fitting, is_safe, out_of_reach, supply, unknown};
use super::{Paper, Placed};
use crate::bank::Bank;
use crate::blueprint::{Blueprint, Pick, Row};
use crate::code::Code;
use crate::exam::Exam;
use crate::mend::quoted;
use crate::question::Question;
use crate::roster::Person;
use crate::seal::{PaperSeed, Secret};

/// Other machines tried for a question before its family is called too small.
const MOST_AGAIN: u64 = 1_000;
/// Papers in the works at one time, for each thread.
const BATCH: usize = 32;

messages! { pub(crate) SAYS {
    NO_SAFETY = "problem-draw-no-safety", "No row makes sure that every paper has a safety question.";
    ADD_SAFETY = "problem-draw-add-safety", "Add a row with safety_only = true, or write no_safety = true if the exam has none by design.";
    UNEQUAL = "problem-draw-unequal", "The row of {pick} takes questions of {least} to {most} marks, so that not all papers have one total; give the row a weight.";
    TWICE = "problem-draw-twice", "The row of {pick} takes {count} from {from}: an item comes more than once, about other machines.";
    NARROW_ONE = "problem-row-narrow-one", "Only 1 item fits the row of {pick}: everybody is asked the same, if about other machines.";
    NARROW = "problem-row-narrow", "Only {from} items fit the row of {pick}, which takes {count}: everybody is asked the same, if about other machines.";
    WITHOUT = "problem-row-without", "Without `{key}` there would be {count}.";
    NO_MORE = "problem-row-no-more", "The bank has no more of it for the families of this exam: add items, or let the row take a topic.";
    NOT_READY = "problem-draw-not-ready", "Nothing was made ready in the units of {person}.";
    NO_QUESTION = "problem-draw-no-question", "No question of {item} about {family} could be drawn: {because}.";
    WIDEN = "problem-paper-widen", "Widen the family's draws or the item's bounds.";
    UNREADY = "problem-draw-unready", "they were not made ready";
    TOO_FEW = "problem-draw-too-few", "The family {family} has too few different machines for {item}: no two papers may share one.";
    DRAW_MORE = "problem-draw-draw-more", "Let the family draw more of its quantities, or allow the row other families.";
} }

/// Seeds, machines and codes that must not come again.
#[derive(Debug, Clone, Default)]
pub struct Used {
    seeds: BTreeSet<u64>,
    cases: BTreeSet<u64>,
    codes: BTreeSet<Code>,
}

impl Used {
    /// Nothing yet.
    pub fn new() -> Self {
        Self::default()
    }

    /// Adds all that `exam` has used, so that a resit never repeats a case.
    pub fn add(&mut self, exam: &Exam) {
        for record in &exam.papers {
            self.codes.insert(record.code);
            for reference in &record.questions {
                self.seeds.insert(reference.seed);
                self.cases.insert(reference.case);
            }
        }
    }
}

/// An exam ready to draw papers from.
#[derive(Debug)]
pub struct Draw<'a> {
    exam: String,
    secret: Secret,
    blueprint: &'a Blueprint,
    settings: Settings<'a>,
    supplies: BTreeMap<System, Supply>,
    used: Used,
}

impl<'a> Draw<'a> {
    /// Makes every item that the blueprint may ask ready, in the units of the blueprint and of `people`.
    ///
    /// # Errors
    /// Every [`Problem`] found, in one pass, each at the row at fault: a name the bank does not
    /// know, a row nothing fits (and why), a difficulty band out of reach, no safety question.
    pub fn new(
        bank: &'a Bank,
        blueprint: &'a Blueprint,
        exam: &str,
        secret: Secret,
        people: &[Person],
        used: Used,
    ) -> Result<Self, Vec<Problem>> {
        let mut problems = Vec::new();
        let plans = families(bank, blueprint, &mut problems);
        for row in &blueprint.rows {
            problems.extend(unknown(bank, row));
        }
        if !blueprint.no_safety && !blueprint.rows.iter().any(|row| is_safe(bank, blueprint, row)) {
            problems.push(Problem::whole(NO_SAFETY.text(), ADD_SAFETY.text()));
        }
        if !problems.is_empty() {
            return Err(problems);
        }
        let mut systems: BTreeSet<System> = people.iter().filter_map(|person| person.units).collect();
        systems.insert(blueprint.units);
        let mut settings = Settings::new(bank);
        let mut supplies = BTreeMap::new();
        for system in systems {
            let found = supply(&mut settings, blueprint, &plans, system, &mut problems);
            supplies.extend(found.map(|supply| (system, supply)));
        }
        if !problems.is_empty() {
            return Err(problems);
        }
        Ok(Self { exam: exam.to_owned(), secret, blueprint, settings, supplies, used })
    }

    /// The mean difficulty of papers in `system`, and how far from it a paper may lie; `None` for
    /// units that no paper uses.
    pub fn difficulty(&self, system: System) -> Option<(f64, f64)> {
        self.supplies.get(&system).map(|supply| (supply.pools.target, supply.pools.band))
    }

    /// What the assessor should know though nothing is wrong: rows that must ask an item twice, rows that leave the
    /// papers' totals unequal.
    pub fn remarks(&self) -> Vec<String> {
        let supply = &self.supplies[&self.blueprint.units];
        let rows = || self.blueprint.rows.iter().enumerate();
        let unequal = rows().filter(|(_, row)| row.weight.is_none()).filter_map(|(place, row)| {
            let items = supply.pools.from(place).iter().map(|candidate| supply.candidates[*candidate].item);
            let marks: BTreeSet<u32> = items.map(|item| self.settings.bank.items[item].marks()).collect();
            let (least, most) = (marks.first()?, marks.last()?);
            (least < most).then(|| {
                let (least, most) = (least.to_string(), most.to_string());
                UNEQUAL.say(&[("pick", &row.pick.to_string()), ("least", &least), ("most", &most)])
            })
        });
        let twice = rows().filter_map(|(place, row)| {
            let (count, from) = supply.pools.supply(place);
            (from < count).then(|| {
                let (count, from) = (count.to_string(), from.to_string());
                TWICE.say(&[("pick", &row.pick.to_string()), ("count", &count), ("from", &from)])
            })
        });
        twice.chain(unequal).collect()
    }

    /// Rows of a topic or a skill that take every item they have, so that all papers ask the same there: a [`Problem`] at
    /// each, with how many items fit it and what narrows it. No fault where that is meant.
    pub fn narrow(&mut self) -> Vec<Problem> {
        let (blueprint, system) = (self.blueprint, self.blueprint.units);
        let plans = families(self.settings.bank, blueprint, &mut Vec::new());
        let mut out = Vec::new();
        for (place, row) in blueprint.rows.iter().enumerate() {
            let (count, from) = self.supplies[&system].pools.supply(place);
            if from > count || matches!(row.pick, Pick::Item(_)) {
                continue;
            }
            let keys = [
                ("weight", row.weight.is_some(), Row { weight: None, ..row.clone() }),
                ("marks", row.marks.is_some(), Row { marks: None, ..row.clone() }),
                ("difficulty", row.difficulty.is_some(), Row { difficulty: None, ..row.clone() }),
                ("safety_only", row.safety_only, Row { safety_only: false, ..row.clone() }),
            ];
            let mut mend: Vec<String> = Vec::new();
            for (key, _, wider) in keys.iter().filter(|(_, is_set, _)| *is_set) {
                let would = fitting(&mut self.settings, (blueprint, wider), &plans, system);
                if would > from {
                    mend.push(WITHOUT.say(&[("key", *key), ("count", &would.to_string())]));
                }
            }
            if mend.is_empty() {
                mend.push(NO_MORE.text().into());
            }
            let (pick, from, count) = (row.pick.to_string(), from.to_string(), count.to_string());
            let says = if from == "1" { NARROW_ONE } else { NARROW };
            let what = says.say(&[("pick", &pick), ("from", &from), ("count", &count)]);
            out.push(Problem::at(row.span.clone(), what, mend.join(" ")));
        }
        out
    }

    /// Draws a paper for each of `people`, in order, and hands each to `take`; on `threads` threads,
    /// with the same papers however many there are. No more than a few dozen papers are held at a time.
    ///
    /// # Errors
    /// A [`Problem`]: a family without enough different machines. Papers already handed out stand.
    pub fn papers(
        &mut self,
        people: &[Person],
        sitting: u32,
        threads: usize,
        mut take: impl FnMut(Paper<'a>),
    ) -> Result<(), Problem> {
        let threads = threads.max(1);
        for batch in people.chunks(BATCH * threads) {
            let drafts = super::in_parallel(batch, threads, |person| self.draft(person, sitting));
            for (person, draft) in batch.iter().zip(drafts) {
                take(self.finish(person, draft?, sitting)?);
            }
        }
        Ok(())
    }

    fn seed(&self, person: &Person, sitting: u32) -> PaperSeed {
        self.secret.paper_seed(&self.exam, &person.id, sitting)
    }

    fn system(&self, person: &Person) -> System {
        person.units.unwrap_or(self.blueprint.units)
    }

    /// The questions of a paper, not yet compared with those of others.
    fn draft(&self, person: &Person, sitting: u32) -> Result<Vec<Placed<'a>>, Problem> {
        let seed = self.seed(person, sitting);
        let system = self.system(person);
        let supply = self
            .supplies
            .get(&system)
            .ok_or_else(|| Problem::whole(NOT_READY.say(&[("person", &quoted(&person.id))]), ""))?;
        let mut stream = Stream::new(seed.number("items", 0), "paper");
        let picked =
            supply.pools.pick(&mut stream).map_err(|nearest| out_of_reach(self.blueprint, &supply.pools, nearest))?;
        let mut out = Vec::with_capacity(picked.len());
        for (place, candidate) in picked.iter().enumerate() {
            let Candidate { item, plans } = &supply.candidates[*candidate];
            let plan = plans[stream.below(plans.len())];
            out.push(self.question(&seed, place, 0, (*item, plan, system))?.1);
        }
        Ok(out)
    }

    /// The question of the `again`-th number or the next one that gives a machine.
    fn question(
        &self,
        seed: &PaperSeed,
        place: usize,
        again: u64,
        (item, plan, system): (usize, usize, System),
    ) -> Result<(u64, Placed<'a>), Problem> {
        let bank = self.settings.bank;
        let ready = self.settings.get(item, plan, system);
        let mut last = None;
        for again in again..again + 20 {
            let number = seed.number("question", (place as u64) << 32 | again);
            match ready.map(|ready| ready.setting.question(number)) {
                Some(Ok(question)) => {
                    let (item, plan) = (&bank.items[item], &bank.plans[plan]);
                    return Ok((again, Placed::new(item, plan, question, self.weight(place))));
                }
                Some(Err(error)) => last = Some(why(&error)),
                None => break,
            }
        }
        let because = last.unwrap_or_else(|| UNREADY.text().into());
        let (item, family) = (&bank.items[item].id, &bank.plans[plan].family.id);
        Err(Problem::whole(
            NO_QUESTION.say(&[("item", &quoted(item)), ("family", &quoted(family)), ("because", &because)]),
            WIDEN.text(),
        ))
    }

    /// Draws again what an earlier paper already has, and gives the paper its code.
    fn finish(&mut self, person: &Person, mut placed: Vec<Placed<'a>>, sitting: u32) -> Result<Paper<'a>, Problem> {
        let seed = self.seed(person, sitting);
        let system = self.system(person);
        for (place, question) in placed.iter_mut().enumerate() {
            let mut again = 0;
            while self.is_used(question) {
                if again >= MOST_AGAIN {
                    return Err(self.too_few(place, question));
                }
                let bank = self.settings.bank;
                let (item, plan) = (bank.item_place(&question.item.id), bank.plan_place(&question.plan.family.id));
                let at = (item.unwrap_or_default(), plan.unwrap_or_default(), system);
                (again, *question) = self.question(&seed, place, again + 1, at)?;
            }
            self.used.seeds.insert(question.question.seed);
            self.used.cases.insert(question.case());
        }
        let mut code = Code::new(seed.number("code", 0));
        for again in 1.. {
            if self.used.codes.insert(code) {
                break;
            }
            code = Code::new(seed.number("code", again));
        }
        Ok(Paper::new(person.clone(), code, sitting, system, placed))
    }

    fn is_used(&self, placed: &Placed) -> bool {
        let Question { seed, .. } = placed.question;
        self.used.seeds.contains(&seed) || self.used.cases.contains(&placed.case())
    }

    /// What the question at `place` is worth, where the blueprint says so.
    fn weight(&self, place: usize) -> Option<u32> {
        self.blueprint.places().get(place)?.weight
    }

    fn row_span(&self, place: usize) -> core::ops::Range<usize> {
        self.blueprint.places().get(place).map_or(0..0, |row| row.span.clone())
    }

    fn too_few(&self, place: usize, placed: &Placed) -> Problem {
        Problem::at(
            self.row_span(place),
            TOO_FEW.say(&[("family", &quoted(&placed.plan.family.id)), ("item", &quoted(&placed.item.id))]),
            DRAW_MORE.text(),
        )
    }
}
