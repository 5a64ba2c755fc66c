//! Grading: what every paper of an exam earned, what went wrong, and how the items did.
//!
//! A paper passes with at least the blueprint's share of its marks and no safety question missed.
//! A safety question is missed as soon as one of its parts does not earn its marks, and any question
//! as soon as a machine that must stop is called fit to run in it. A paper of which
//! nothing was handed in is absent: not passed, and left out of the statistics.

mod export;
mod otherwise;
mod statistics;

pub use export::{candidates_csv, parts_csv};
pub use statistics::{Count, ItemStatistics, correlation, mean, ranked};

use std::collections::BTreeMap;

use drivecourse_machine::{Figures, amount, messages};
use serde::{Deserialize, Serialize};

use crate::blueprint::Blueprint;
use crate::code::Code;
use crate::exam::{Exam, Mismatch};
use crate::explain::{self, part_letter};
use crate::mark::{Mark, Verdict, mark_by};
use crate::marking::{Marking, Written};
use crate::paper::{Paper, Placed, Settings, in_parallel};
use crate::predict::Cause;
use crate::question::{Part, Question};
use crate::response::Responses;
use crate::roster::Person;
use statistics::Statistics;

/// Below this share of its marks a skill is named for practice.
pub const ENOUGH: f64 = 0.75;

/// Papers in the works at one time, for each thread.
const BATCH: usize = 32;

/// One part of a graded question.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct GradedPart {
    /// `a`, `b` ...
    pub part: char,
    /// The question in words.
    pub asked: String,
    /// As it was written.
    pub answer: String,
    /// Results on the way as they were written; empty where there are none.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub steps: String,
    /// How it turned out.
    pub verdict: Verdict,
    /// Marks earned.
    pub earned: u32,
    /// Marks to be had.
    pub of: u32,
    /// How it was understood.
    pub read_as: String,
    /// How else it may be meant, where that would be right and what was read is not; empty elsewhere.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub may_mean: String,
    /// The right answer.
    pub expected: String,
    /// How far off it may be; empty where it must be exact.
    pub tolerance: String,
    /// What went wrong, in a sentence or two.
    pub says: String,
    /// Names of the likely causes.
    pub causes: Vec<String>,
    /// What the likeliest cause says; empty where none is recognised.
    pub because: String,
}

/// A graded question.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct GradedQuestion {
    /// Its number on the paper.
    pub number: usize,
    /// The item.
    pub item: String,
    /// The family of its machine.
    pub family: String,
    /// As a heading.
    pub title: String,
    /// The topic.
    pub topic: String,
    /// The skill.
    pub skill: String,
    /// Whether missing it fails the paper.
    pub safety: bool,
    /// Marks earned.
    pub earned: u32,
    /// Marks to be had.
    pub of: u32,
    /// Its parts.
    pub parts: Vec<GradedPart>,
}

/// What a paper earned in one skill.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SkillMark {
    /// Which.
    pub skill: String,
    /// Marks earned.
    pub earned: u32,
    /// Marks to be had.
    pub of: u32,
}

/// A graded paper.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct GradedPaper {
    /// Whose it is.
    pub candidate: Person,
    /// Its code.
    pub code: Code,
    /// Which sitting.
    pub sitting: u32,
    /// Whether anything was handed in.
    pub present: bool,
    /// Marks earned.
    pub earned: u32,
    /// Marks to be had.
    pub of: u32,
    /// Earned marks as a share, 0 to 1.
    pub share: f64,
    /// Whether it passes.
    pub passed: bool,
    /// Numbers of the safety questions that were missed.
    pub safety_missed: Vec<usize>,
    /// The result in a sentence.
    pub says: String,
    /// By skill, in the order of their names.
    pub skills: Vec<SkillMark>,
    /// The questions.
    pub questions: Vec<GradedQuestion>,
}

/// A graded exam.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Graded {
    /// Short name of the exam.
    pub exam: String,
    /// As a heading.
    pub title: String,
    /// Share of the marks that passes.
    pub pass: f64,
    /// Every paper, in the order of the exam record.
    pub candidates: Vec<GradedPaper>,
    /// How the items did, in the order of their names.
    pub items: Vec<ItemStatistics>,
    /// What went wrong over all papers, most frequent first.
    pub causes: Vec<Count>,
}

impl Graded {
    /// All of it as JSON.
    pub fn json(&self) -> String {
        // Strings, numbers and lists: nothing in it that JSON cannot hold.
        let mut out = serde_json::to_string_pretty(self).unwrap_or_default();
        out.push('\n');
        out
    }
}

/// Grades every paper of `exam`: makes each again, checks that it is the one that was printed, and
/// marks the answers; on `threads` threads, with the same result however many there are.
///
/// # Errors
/// A [`Mismatch`] for each paper that cannot be made again as it was printed; then nothing is graded.
pub fn grade(exam: &Exam, settings: &Settings, responses: &Responses, threads: usize) -> Result<Graded, Vec<Mismatch>> {
    let mut candidates = Vec::with_capacity(exam.papers.len());
    let mut statistics = Statistics::default();
    grade_each(exam, settings, responses, threads, |paper| {
        statistics.add(&paper);
        candidates.push(paper);
    })?;
    let (items, causes) = statistics.finish();
    let (title, pass) = (exam.blueprint.title.clone(), exam.blueprint.pass);
    Ok(Graded { exam: exam.id.clone(), title, pass, candidates, items, causes })
}

/// [`grade()`], paper by paper in the order of the exam record: no more than a few dozen are held at a time.
///
/// # Errors
/// A [`Mismatch`] for each paper that cannot be made again; what was handed out before then must not stand.
pub fn grade_each(
    exam: &Exam,
    settings: &Settings,
    responses: &Responses,
    threads: usize,
    mut take: impl FnMut(GradedPaper),
) -> Result<(), Vec<Mismatch>> {
    let mut mismatches = Vec::new();
    let threads = threads.max(1);
    for batch in exam.papers.chunks(BATCH * threads) {
        let graded = in_parallel(batch, threads, |record| {
            exam.paper(record, settings).map(|paper| grade_paper(&paper, &exam.blueprint, responses))
        });
        for paper in graded {
            match paper {
                Ok(paper) => take(paper),
                Err(mismatch) => mismatches.push(mismatch),
            }
        }
    }
    if mismatches.is_empty() { Ok(()) } else { Err(mismatches) }
}

/// Grades one paper as its blueprint says.
pub fn grade_paper(paper: &Paper, blueprint: &Blueprint, responses: &Responses) -> GradedPaper {
    let pass = blueprint.pass;
    let mut questions = Vec::with_capacity(paper.questions.len());
    let mut skills: BTreeMap<&str, (u32, u32)> = BTreeMap::new();
    for (place, placed) in paper.questions.iter().enumerate() {
        let answers = responses.answers(paper.code, place, placed.question.parts.len());
        let question = grade_question(place + 1, placed, &answers, &blueprint.marking);
        let skill = skills.entry(&placed.item.skill).or_default();
        *skill = (skill.0 + question.earned, skill.1 + question.of);
        questions.push(question);
    }
    let missed = |question: &&GradedQuestion| question.safety && question.earned < question.of;
    let safety_missed: Vec<usize> = questions.iter().filter(missed).map(|question| question.number).collect();
    let earned = questions.iter().map(|question| question.earned).sum();
    let of = questions.iter().map(|question| question.of).sum();
    let present = responses.has(paper.code);
    let Outcome { share, passed, says } = outcome(present, earned, of, pass, &safety_missed);
    GradedPaper {
        candidate: paper.candidate.clone(),
        code: paper.code,
        sitting: paper.sitting,
        present,
        earned,
        of,
        share,
        passed,
        says,
        safety_missed,
        skills: skills
            .into_iter()
            .map(|(skill, (earned, of))| SkillMark { skill: skill.to_owned(), earned, of })
            .collect(),
        questions,
    }
}

/// How a paper came out.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// Earned marks as a share, 0 to 1.
    pub share: f64,
    /// Whether it passes.
    pub passed: bool,
    /// The result in a sentence.
    pub says: String,
}

/// How a paper came out that earned `earned` of `of` marks where the share `pass` passes and the safety
/// questions of the numbers `missed` were missed; `present` where anything was handed in.
pub fn outcome(present: bool, earned: u32, of: u32, pass: f64, missed: &[usize]) -> Outcome {
    let share = if of == 0 { 0.0 } else { f64::from(earned) / f64::from(of) };
    // A hair for shares such as 0.7 that no binary number hits.
    let enough = share >= pass - 1e-9;
    let says = says(present, enough, pass, (earned, of, share), missed);
    Outcome { share, passed: present && enough && missed.is_empty(), says }
}

fn says(present: bool, enough: bool, pass: f64, (earned, of, share): (u32, u32, f64), missed: &[usize]) -> String {
    if !present {
        return NOTHING.text().into();
    }
    let percent = |share: f64, figures| amount::number(share * 100.0, figures);
    let marks = MARKS.say(&[
        ("earned", &earned.to_string()),
        ("of", &of.to_string()),
        ("share", &percent(share, Figures::Places(1))),
    ]);
    let needed = NEEDED.say(&[("share", &format!("{:.0}", pass * 100.0))]);
    let numbers: Vec<String> = missed.iter().map(usize::to_string).collect();
    let words = [("marks", marks.as_str()), ("needed", needed.as_str()), ("numbers", &numbers.join(", "))];
    match (enough, missed) {
        (true, []) => PASSED,
        (false, []) => NOT_PASSED,
        (true, [_]) => MISSED_ONE,
        (true, _) => MISSED,
        (false, [_]) => MISSED_ONE_AND_SHORT,
        (false, _) => MISSED_AND_SHORT,
    }
    .say(&words)
}

messages! { pub(crate) SAYS {
    NOTHING = "outcome-nothing", "Nothing was handed in.";
    MARKS = "outcome-marks", "{earned} of {of} marks, {share} %";
    NEEDED = "outcome-needed", "{share} % are needed";
    PASSED = "outcome-passed", "Passed: {marks}; {needed}.";
    NOT_PASSED = "outcome-not-passed", "Not passed: {marks}; {needed}.";
    MISSED_ONE = "outcome-missed-one", "Not passed: Safety question {numbers} missed; this alone decides, whatever the score. {marks}; {needed}.";
    MISSED = "outcome-missed", "Not passed: Safety questions {numbers} missed; this alone decides, whatever the score. {marks}; {needed}.";
    MISSED_ONE_AND_SHORT = "outcome-missed-one-and-short", "Not passed: Safety question {numbers} missed; the marks do not suffice either. {marks}; {needed}.";
    MISSED_AND_SHORT = "outcome-missed-and-short", "Not passed: Safety questions {numbers} missed; the marks do not suffice either. {marks}; {needed}.";
} }

fn grade_question(number: usize, placed: &Placed, answers: &[Written], marking: &Marking) -> GradedQuestion {
    let question = &placed.question;
    let marking = if placed.item.safety { marking.for_safety() } else { *marking };
    let marks = mark_by(question, answers, &marking);
    let danger = marks.iter().any(|mark| mark.causes.contains(&Cause::StopAccepted));
    let parts = (question.parts.iter().zip(marks).zip(answers).enumerate())
        .map(|(index, ((part, mark), answer))| {
            let doubtful = matches!(mark.verdict, Verdict::Wrong | Verdict::Partial);
            let may_mean = doubtful.then(|| otherwise::may_mean(question, index, answers, &marking)).flatten();
            GradedPart { may_mean: may_mean.unwrap_or_default(), ..grade_part(index, question, part, mark, *answer) }
        })
        .collect::<Vec<_>>();
    GradedQuestion {
        number,
        item: placed.item.id.clone(),
        family: placed.plan.family.id.clone(),
        title: placed.item.title.clone(),
        topic: placed.item.topic.clone(),
        skill: placed.item.skill.clone(),
        safety: placed.item.safety || danger,
        earned: parts.iter().map(|part| part.earned).sum(),
        of: parts.iter().map(|part| part.of).sum(),
        parts,
    }
}

fn grade_part(index: usize, question: &Question, part: &Part, mark: Mark, written: Written) -> GradedPart {
    GradedPart {
        part: part_letter(index),
        asked: part.text.clone(),
        answer: written.answer.to_owned(),
        steps: written.steps.to_owned(),
        verdict: mark.verdict,
        earned: mark.earned,
        of: mark.of,
        read_as: mark.read_as,
        may_mean: String::new(),
        expected: part.right_answer(question.system),
        tolerance: explain::tolerance(question, part),
        says: mark.says,
        causes: mark.causes.iter().map(explain::cause_name).collect(),
        because: mark.causes.first().map_or_else(String::new, explain::sentence),
    }
}

#[cfg(test)]
mod tests;
