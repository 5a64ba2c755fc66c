//! The progress page: where a person stands with every skill, and a small chart of each.

use core::fmt::Write as _;

use drivecourse_machine::{messages, topics};
use drivecourse_quiz::explain::skill_name;
use drivecourse_quiz::progress::{Answered, SITS, Standing, Turn};
use drivecourse_quiz::{Bank, Item};
use serde::Serialize;

use drivecourse_course::view::capital;

use crate::bundle::Chapter;

/// Answers drawn in a chart, at most.
const DRAWN: usize = 20;
/// Answers of one skill that count; older ones have faded.
const MOST: usize = 400;

/// An answer and the skill it belongs to.
#[derive(Debug, Clone, PartialEq)]
pub struct Noted {
    /// Which skill.
    pub skill: String,
    /// The answer.
    pub answered: Answered,
}

/// Where a person stands with one skill, in words.
#[derive(Debug, Serialize)]
pub struct SkillRow {
    /// Its id.
    pub skill: String,
    /// Its name.
    pub name: String,
    /// The question to begin with.
    pub item: String,
    /// How many answers count.
    pub answers: u32,
    /// How sure it is that it sits, as a percentage.
    pub sure: u32,
    /// The same in words.
    pub says: &'static str,
    /// When it should come back, in words.
    pub due: String,
    /// The chart, as SVG; empty before the first answer.
    pub chart: String,
}

/// The skills of a chapter, in its order.
#[derive(Debug, Serialize)]
pub struct Group {
    /// Title of the chapter; that of the topic where no chapter asks about it.
    pub title: String,
    /// How many of them sit.
    pub sits: u32,
    /// Its skills.
    pub skills: Vec<SkillRow>,
}

/// What is best practised next.
#[derive(Debug, Serialize)]
pub struct Next {
    /// Name of the skill.
    pub name: String,
    /// The question to begin with.
    pub item: String,
    /// Why it is next.
    pub turn: &'static str,
}

/// Where a person stands with every skill of the course, chapter by chapter.
#[derive(Debug, Serialize)]
pub struct Progress {
    /// What is best practised next; nothing in a course that asks nothing.
    pub next: Option<Next>,
    /// The chapters that practise anything, in the order of the course.
    pub groups: Vec<Group>,
}

/// Every skill of the course.
pub(crate) fn of(bank: &Bank, chapters: &[Chapter], noted: &[Noted], now: f64) -> Progress {
    let mut next: Option<((Turn, u32), Next)> = None;
    let mut groups: Vec<Group> = Vec::new();
    for (title, items) in placed(bank, chapters) {
        let mut group = Group { title, sits: 0, skills: Vec::new() };
        for item in items {
            // In the order they were given, as the page keeps them.
            let answers: Vec<Answered> =
                noted.iter().filter(|noted| noted.skill == item.skill).map(|noted| noted.answered).collect();
            let answers = &answers[answers.len().saturating_sub(MOST)..];
            let standing = Standing::of(answers, now);
            let turn = standing.turn(now);
            let sure = if answers.is_empty() { 0 } else { (standing.sure * 100.0) as u32 };
            let name = capital(&skill_name(&item.skill));
            // Within one turn the least sure first, and new ones in the order of the course.
            let rank = (turn, if turn == Turn::New { 0 } else { sure });
            if next.as_ref().is_none_or(|(least, _)| rank < *least) {
                next = Some((rank, Next { name: name.clone(), item: item.id.clone(), turn: turn_says(turn) }));
            }
            group.sits += u32::from(sits(&standing));
            group.skills.push(SkillRow {
                skill: item.skill.clone(),
                name,
                item: item.id.clone(),
                answers: answers.len() as u32,
                sure,
                says: says(&standing),
                due: standing.due.map_or_else(String::new, |due| waits(due - now)),
                chart: chart(answers),
            });
        }
        groups.push(group);
    }
    Progress { next: next.map(|(_, next)| next), groups }
}

/// The first item of every skill, by the chapter it belongs to: the first that asks about the skill, else the one that
/// asks most about its topic, else the topic itself.
fn placed<'a>(bank: &'a Bank, chapters: &[Chapter]) -> Vec<(String, Vec<&'a Item>)> {
    let asked: Vec<Vec<&Item>> = (chapters.iter())
        .map(|chapter| chapter.items.iter().filter_map(|id| Some(&bank.items[bank.item_place(id)?])).collect())
        .collect();
    let topics: Vec<_> = topics::titles().collect();
    let mut out: Vec<(String, Vec<&Item>)> =
        chapters.iter().map(|chapter| (chapter.title.clone(), Vec::new())).collect();
    out.extend(topics.iter().map(|(_, title)| ((*title).to_owned(), Vec::new())));
    // As the chapters come to them, then those that none comes to.
    for item in asked.iter().flatten().copied().chain(&bank.items) {
        if out.iter().any(|(_, items)| items.iter().any(|other| other.skill == item.skill)) {
            continue;
        }
        let of_skill = asked.iter().position(|items| items.iter().any(|other| other.skill == item.skill));
        let place = of_skill.unwrap_or_else(|| {
            let (mut place, mut most) = (None, 0);
            for (chapter, items) in asked.iter().enumerate() {
                let share = items.iter().filter(|other| other.topic == item.topic).count();
                if share > most {
                    (place, most) = (Some(chapter), share);
                }
            }
            place.unwrap_or(chapters.len() + topics.iter().position(|(id, _)| *id == item.topic).unwrap_or(0))
        });
        // The question to begin with is the bank's first of the skill, wherever it stands.
        out[place].1.extend(bank.items.iter().find(|first| first.skill == item.skill));
    }
    out.retain(|(_, items)| !items.is_empty());
    out
}

fn sits(standing: &Standing) -> bool {
    standing.due.is_some() && standing.sure >= SITS
}

messages! { pub(crate) SAYS {
    NOT_TRIED = "progress-not-tried", "not tried yet";
    SITS_WELL = "progress-sits", "sits";
    NEARLY = "progress-nearly", "nearly there";
    NEEDS_PRACTICE = "progress-needs-practice", "needs practice";
    DUE = "progress-due", "due again";
    UNSURE = "progress-unsure", "not sure yet";
    NEW = "progress-new", "new";
    RESTS = "progress-rests", "rests";
    NOW = "progress-now", "now";
    WITHIN_A_DAY = "progress-within-a-day", "within a day";
    TOMORROW = "progress-tomorrow", "tomorrow";
    IN_DAYS = "progress-in-days", "in {days} days";
} }

fn says(standing: &Standing) -> &'static str {
    match standing.due {
        None => NOT_TRIED,
        Some(_) if sits(standing) => SITS_WELL,
        Some(_) if standing.sure >= 0.4 => NEARLY,
        Some(_) => NEEDS_PRACTICE,
    }
    .text()
}

fn turn_says(turn: Turn) -> &'static str {
    match turn {
        Turn::Due => DUE,
        Turn::Unsure => UNSURE,
        Turn::New => NEW,
        Turn::Later => RESTS,
    }
    .text()
}

fn waits(days: f64) -> String {
    let hours = (days * 24.0) as i32;
    match hours {
        ..=0 => NOW.text().into(),
        1..=23 => WITHIN_A_DAY.text().into(),
        24..=47 => TOMORROW.text().into(),
        _ => IN_DAYS.say(&[("days", &(hours / 24).to_string())]),
    }
}

/// How sure it was after each of the last answers: a line, with a full dot for a right answer and an open one for a wrong.
fn chart(answers: &[Answered]) -> String {
    const WIDTH: i32 = 220;
    const HEIGHT: i32 = 56;
    const EDGE: i32 = 6;
    if answers.is_empty() {
        return String::new();
    }
    let first = answers.len().saturating_sub(DRAWN);
    let height = |sure: f64| EDGE + ((1.0 - sure) * f64::from(HEIGHT - 2 * EDGE)) as i32;
    let points: Vec<(i32, i32, bool)> = (first..answers.len())
        .map(|last| {
            let sure = Standing::of(&answers[..=last], answers[last].at).sure;
            (
                EDGE + 4 + (last - first) as i32 * (WIDTH - 2 * EDGE - 8) / (DRAWN as i32 - 1),
                height(sure),
                answers[last].right,
            )
        })
        .collect();
    let mut out =
        String::from("<svg class=\"chart\" viewBox=\"0 0 220 56\" width=\"220\" height=\"56\" aria-hidden=\"true\">");
    let sits = height(SITS);
    // Writing to a string cannot fail.
    let _ = write!(out, "<path class=\"chart-sits\" d=\"M0 {sits}H{WIDTH}\"/><path class=\"chart-line\" d=\"");
    for (place, (x, y, _)) in points.iter().enumerate() {
        let _ = write!(out, "{}{x} {y}", if place == 0 { 'M' } else { 'L' });
    }
    out.push_str("\"/>");
    for (x, y, right) in points {
        let class = if right { "chart-right" } else { "chart-wrong" };
        let _ = write!(out, "<circle class=\"{class}\" cx=\"{x}\" cy=\"{y}\" r=\"4\"/>");
    }
    out.push_str("</svg>");
    out
}

/// Reads noted answers, four words each: skill, minutes since 1970, right and hinted as 1 or 0.
pub(crate) fn read(words: &[String]) -> Option<Vec<Noted>> {
    let yes = |word: &str| match word {
        "1" => Some(true),
        "0" => Some(false),
        _ => None,
    };
    let chunks = words.chunks(4);
    chunks
        .map(|chunk| {
            let [skill, at, right, hinted] = chunk else { return None };
            Some(Noted {
                skill: skill.clone(),
                answered: Answered { at: days(at)?, right: yes(right)?, hinted: yes(hinted)? },
            })
        })
        .collect()
}

/// Minutes as days.
pub(crate) fn days(minutes: &str) -> Option<f64> {
    minutes.parse::<u32>().ok().map(|minutes| f64::from(minutes) / 1440.0)
}
