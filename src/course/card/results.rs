//! Result sheets filled from graded papers.

use std::collections::BTreeMap;

use drivecourse_machine::language::Message;
use drivecourse_machine::{messages, topics};
use drivecourse_quiz::Verdict;
use drivecourse_quiz::explain::skill_name;
use drivecourse_quiz::grade::{ENOUGH, Graded, GradedPaper, GradedPart};

use crate::pages::model::{CandidateResult, Fault, Head, PartResult, Practice, ResultRow, Results};

messages! { pub(crate) SAYS {
    OF = "result-of", "{earned} of {of}";
    TOTAL = "result-total", "{earned} of {of} ({share} %)";
    QUESTION = "result-question", "Question {number}: {title}";
    READ_AS = "result-read-as", "{answer} (read as {amount})";
    NOTHING = "result-nothing", "nothing handed in";
    PASSED = "result-passed", "passed";
    NOT_PASSED = "result-not-passed", "not passed";
    UNREAD = "result-unread", "Paper {code}, {candidate}, question {number}: “{answer}” could not be read. {says}";
    UNREAD_PART = "result-unread-part", "Paper {code}, {candidate}, question {number} ({part}): “{answer}” could not be read. {says}";
    OTHERWISE = "result-otherwise", "Paper {code}, {candidate}, question {number}: “{answer}” was read as {amount}, which is wrong; meant as {other} it would be right.";
    OTHERWISE_PART = "result-otherwise-part", "Paper {code}, {candidate}, question {number} ({part}): “{answer}” was read as {amount}, which is wrong; meant as {other} it would be right.";
    MISSED = "result-missed", "not passed: safety question missed";
} }

/// One candidate's result sheet.
#[must_use]
pub fn candidate_result(head: Head, paper: &GradedPaper) -> CandidateResult {
    let several = |parts: &[GradedPart]| parts.len() > 1;
    let parts = (paper.questions.iter())
        .flat_map(|question| question.parts.iter().map(move |part| (question, part)))
        .map(|(question, part)| PartResult {
            place: if several(&question.parts) {
                format!("{} ({})", question.number, part.part)
            } else {
                question.number.to_string()
            },
            asked: part.asked.clone(),
            answer: answer(part),
            expected: part.expected.clone(),
            marks: OF.say(&[("earned", &part.earned.to_string()), ("of", &part.of.to_string())]),
            diagnosis: if matches!(part.verdict, Verdict::Right | Verdict::Blank) {
                Vec::new()
            } else {
                vec![part.says.clone()]
            },
        })
        .collect();
    let missed = paper.questions.iter().filter(|question| paper.safety_missed.contains(&question.number));
    CandidateResult {
        head,
        earned: paper.earned.to_string(),
        marks: paper.of.to_string(),
        outcome: paper.says.clone(),
        parts,
        practice: to_practise(paper),
        cautions: missed
            .map(|question| QUESTION.say(&[("number", &question.number.to_string()), ("title", &question.title)]))
            .collect(),
    }
}

/// What was written, and how it was understood where that adds something.
fn answer(part: &GradedPart) -> String {
    let said = part.answer.trim();
    let plain = |text: &str| text.replace(['\u{a0}', '\u{202f}', ' '], "").to_lowercase();
    if part.read_as.is_empty() || plain(&part.read_as) == plain(said) {
        said.to_owned()
    } else {
        READ_AS.say(&[("answer", said), ("amount", &part.read_as)])
    }
}

/// Skills below [`ENOUGH`], weakest first.
fn to_practise(paper: &GradedPaper) -> Vec<String> {
    let share = |earned: u32, of: u32| f64::from(earned) / f64::from(of.max(1));
    let mut weak: Vec<_> = paper.skills.iter().filter(|skill| share(skill.earned, skill.of) < ENOUGH).collect();
    weak.sort_by(|a, b| share(a.earned, a.of).total_cmp(&share(b.earned, b.of)).then_with(|| a.skill.cmp(&b.skill)));
    weak.into_iter().map(|skill| skill_name(&skill.skill)).collect()
}

/// Every answer that could not be read: whose, where, what was written and why, in the order of the papers. A number with the
/// unit of another kind is one of them: what was meant is not known.
#[must_use]
pub fn unread(graded: &Graded) -> Vec<String> {
    let unread = |part: &GradedPart| matches!(part.verdict, Verdict::Unreadable | Verdict::WrongUnit);
    answers(graded, unread, UNREAD, UNREAD_PART)
}

/// Every answer that is wrong as it was read and would be right as it may be meant: whose, where, what was written, how it was
/// read and how else it may be meant, in the order of the papers.
#[must_use]
pub fn otherwise(graded: &Graded) -> Vec<String> {
    answers(graded, |part| !part.may_mean.is_empty(), OTHERWISE, OTHERWISE_PART)
}

/// A line for each answer that is `among` those wanted; `in_part` says it of a question with several parts.
fn answers(graded: &Graded, among: fn(&GradedPart) -> bool, alone: Message, in_part: Message) -> Vec<String> {
    let mut out = Vec::new();
    for paper in &graded.candidates {
        for question in &paper.questions {
            for part in question.parts.iter().filter(|part| among(part)) {
                let words = [
                    ("code", &*paper.code.to_string()),
                    ("candidate", &paper.candidate.name),
                    ("number", &question.number.to_string()),
                    ("part", &part.part.to_string()),
                    ("answer", part.answer.trim()),
                    ("says", &part.says),
                    ("amount", &part.read_as),
                    ("other", &part.may_mean),
                ];
                out.push(if question.parts.len() > 1 { in_part } else { alone }.say(&words));
            }
        }
    }
    out
}

/// The summary of a class: marks by topic, what went wrong and how often, who should practise what.
#[must_use]
pub fn class_results(plant: &str, date: Option<String>, graded: &Graded, remarks: Vec<String>) -> Results {
    let asked: Vec<_> = (topics::ALL.iter())
        .filter(|topic| {
            graded.candidates.iter().any(|paper| paper.questions.iter().any(|question| question.topic == topic.id))
        })
        .collect();
    let row = |paper: &GradedPaper| ResultRow {
        name: paper.candidate.name.clone(),
        code: paper.code.to_string(),
        marks: (asked.iter())
            .map(|topic| {
                let of_topic = || paper.questions.iter().filter(|question| question.topic == topic.id);
                format!("{}/{}", of_topic().map(|q| q.earned).sum::<u32>(), of_topic().map(|q| q.of).sum::<u32>())
            })
            .collect(),
        total: TOTAL.say(&[
            ("earned", &paper.earned.to_string()),
            ("of", &paper.of.to_string()),
            ("share", &format!("{:.0}", paper.share * 100.0)),
        ]),
        outcome: outcome(paper),
    };
    Results {
        plant: plant.to_owned(),
        exam: graded.title.clone(),
        date,
        columns: asked.iter().map(|topic| topic.heading().to_owned()).collect(),
        candidates: graded.candidates.iter().map(row).collect(),
        faults: faults(graded),
        practice: (graded.candidates.iter())
            .filter(|paper| paper.present)
            .map(|paper| Practice { candidate: paper.candidate.name.clone(), topics: to_practise(paper) })
            .filter(|practice| !practice.topics.is_empty())
            .collect(),
        remarks: [remarks, unread(graded), otherwise(graded)].concat(),
    }
}

fn outcome(paper: &GradedPaper) -> String {
    match (paper.present, paper.passed, paper.safety_missed.is_empty()) {
        (false, ..) => NOTHING,
        (_, true, _) => PASSED,
        (_, _, false) => MISSED,
        _ => NOT_PASSED,
    }
    .text()
    .into()
}

/// What went wrong, most frequent first, with who did it and in which questions.
fn faults(graded: &Graded) -> Vec<Fault> {
    let mut found: BTreeMap<&str, (Vec<&str>, Vec<String>)> = BTreeMap::new();
    for paper in &graded.candidates {
        for question in &paper.questions {
            for part in question.parts.iter().filter(|part| !part.because.is_empty()) {
                let (titles, who) = found.entry(&part.because).or_default();
                if !titles.contains(&question.title.as_str()) {
                    titles.push(&question.title);
                }
                if !who.contains(&paper.candidate.name) {
                    who.push(paper.candidate.name.clone());
                }
            }
        }
    }
    let mut faults: Vec<Fault> = (found.into_iter())
        .map(|(because, (titles, candidates))| Fault {
            sentence: because.to_owned(),
            place: titles.join("; "),
            candidates,
        })
        .collect();
    faults.sort_by(|a, b| {
        b.candidates.len().cmp(&a.candidates.len()).then_with(|| (&a.place, &a.sentence).cmp(&(&b.place, &b.sentence)))
    });
    faults
}
