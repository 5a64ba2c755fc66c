//! Reports from the records as pages.

use anyhow::Result;
use drivecourse_course::figures::{Bar, Bars, Figure, Run};
use drivecourse_course::pages::model::{Report, ReportSection, Trusted};
use drivecourse_course::words::ENGLISH;
use drivecourse_machine::language::{Message, code, slug, translated, with_decimal_mark};
use drivecourse_quiz::Verdict;
use drivecourse_quiz::explain::{said_again, skill_name};
use drivecourse_quiz::grade::ENOUGH;
use drivecourse_records::Date;
use drivecourse_records::report::{
    AnswerReport, CauseLine, ClassReport, DueReport, ItemLine, ItemsReport, PersonReport, Standing,
};

use crate::report_words::*;

/// Wrong turns listed in a report.
const MOST_CAUSES: usize = 12;
/// Papers from which on the reliability of an exam is told; of fewer it is mere chance (common practice, no source).
const FOR_ALPHA: usize = 10;
/// A probability below which the variants of an item are called unequal.
const UNEQUAL: f64 = 0.01;

fn percent(share: f64) -> String {
    format!("{:.0} %", share * 100.0)
}

fn or_dash(value: Option<String>) -> String {
    value.unwrap_or_else(|| "–".into())
}

/// A day, or that there is none.
fn day(date: Option<Date>) -> String {
    or_dash(date.map(Date::said))
}

/// A day as the records have it.
fn day_of(text: &str) -> String {
    Date::read(text).map_or_else(|_| text.to_owned(), Date::said)
}

fn figure(figure: Figure) -> Option<Trusted> {
    Some(Trusted::made_by_us(figure.svg))
}

fn headings(names: &[Message]) -> Vec<String> {
    names.iter().map(|name| name.text().to_owned()).collect()
}

/// The item's heading in the language spoken, which need not be that of its exam.
fn item_title(item: &str, recorded: &str) -> String {
    translated(&format!("item-{}", slug(item)), recorded, false).into_owned()
}

fn of(earned: u32, of: u32) -> String {
    OF.say(&[("earned", &earned.to_string()), ("of", &of.to_string())])
}

fn said(message: Message, place: &str, what: &impl ToString) -> String {
    message.say(&[(place, &what.to_string())])
}

fn enough() -> Option<(f64, String)> {
    Some((ENOUGH, said(ENOUGH_IS, "share", &percent(ENOUGH))))
}

fn bars(id: &str, title: &str, bars: Vec<Bar>) -> Result<Option<Trusted>> {
    if bars.is_empty() {
        return Ok(None);
    }
    Ok(figure(Bars { id: id.into(), title: title.into(), bars, enough: enough() }.draw()?))
}

pub(crate) fn person(report: &PersonReport) -> Result<Report> {
    let group = if report.group.is_empty() { String::new() } else { format!(", {}", report.group) };
    let days: Vec<(f64, String, f64)> = report
        .papers
        .iter()
        .filter_map(|paper| paper.sat.map(|sat| (sat.days() as f64, sat.said(), paper.share)))
        .collect();
    let trend = match days.is_empty() {
        true => None,
        false => {
            let pass = report.papers.iter().rev().find(|paper| paper.sat.is_some()).map(|paper| paper.pass);
            let enough = pass.map(|pass| (pass, said(PASSES, "share", &percent(pass))));
            figure(Run { id: "papers".into(), title: SHARE_ON_PAPERS.text().into(), days, enough }.draw()?)
        }
    };
    let papers = report.papers.iter().map(|paper| {
        let changed = if paper.changed == 0 {
            String::new()
        } else {
            format!(" {}", said(MARKS_CHANGED, "count", &paper.changed))
        };
        let revised = if paper.revision > 1 {
            format!(" {}", said(CORRECTED, "times", &(paper.revision - 1)))
        } else {
            String::new()
        };
        vec![
            day(paper.sat),
            paper.title.clone(),
            paper.code.clone(),
            if paper.sat.is_some() { percent(paper.share) } else { "–".into() },
            day(paper.until),
            format!("{}{changed}{revised}", paper.says),
        ]
    });
    let skills = report.skills.iter().map(|skill| Bar {
        name: skill_name(&skill.skill),
        share: skill.last,
        between: None,
        note: change(skill.trend),
    });
    let skill_rows =
        report.skills.iter().map(|skill| vec![skill_name(&skill.skill), percent(skill.last), change(skill.trend)]);
    let practise = report.to_practise().map(|skill| {
        let wrong = skill.causes.first().map_or_else(String::new, |cause| cause.says.clone());
        vec![skill_name(&skill.skill), percent(skill.last), percent(skill.all), wrong]
    });
    Ok(Report {
        title: format!("{} ({}{group})", report.name, report.person),
        foot: format!("{}, {}", report.name, report.as_of.said()),
        about: [as_of(report.as_of)].into_iter().chain(rests_on(&report.standings)).collect(),
        cautions: cautions(&report.standings),
        sections: vec![
            ReportSection {
                heading: MAY_DO.text().into(),
                headings: headings(&[EXAM, STANDING, ALONE, HOLDS_UNTIL, WHY]),
                rows: report.standings.iter().map(|standing| standing_row(standing, false)).collect(),
                ..ReportSection::default()
            },
            ReportSection {
                heading: PAPERS.text().into(),
                figure: trend,
                headings: headings(&[DAY, EXAM, PAPER, MARKS, HOLDS_UNTIL, RESULT]),
                rows: papers.collect(),
                ..ReportSection::default()
            },
            ReportSection {
                heading: SKILLS_AND_CHANGE.text().into(),
                figure: bars("skills", SHARE_OF_SKILLS.text(), skills.collect())?,
                headings: headings(&[SKILL, LATEST, CHANGE]),
                rows: skill_rows.collect(),
                ..ReportSection::default()
            },
            ReportSection {
                heading: PRACTISE_NEXT.text().into(),
                lines: if report.to_practise().next().is_none() {
                    vec![NOTHING_STANDS_OUT.text().into()]
                } else {
                    Vec::new()
                },
                headings: headings(&[SKILL, LATEST, OVER_ALL, WRONG_MOST]),
                rows: practise.collect(),
                ..ReportSection::default()
            },
        ],
    })
}

/// How a skill has changed since it was first asked.
fn change(trend: Option<f64>) -> String {
    let points = |trend: f64| said(POINTS, "points", &format!("{:+.0}", trend * 100.0 + 0.0));
    trend.map_or_else(|| FIRST_TIME.text().into(), points)
}

fn as_of(date: Date) -> String {
    said(AS_OF, "day", &date.said())
}

/// What a missed safety question means, for those who missed one.
fn cautions(standings: &[Standing]) -> Vec<String> {
    let missed = standings.iter().filter(|standing| !standing.safety_missed.is_empty());
    missed.map(|standing| format!("{}, {}: {}", standing.name, standing.title, standing.says)).collect()
}

/// Whether a person may work alone, and on how much that rests.
fn alone(standing: &Standing) -> String {
    if !standing.alone {
        return NOT_YET.text().to_owned();
    }
    let answers = match standing.answers {
        1 => ONE_ANSWER.text().to_owned(),
        count => said(ANSWERS, "count", &count.to_string()),
    };
    let says = if standing.papers == 1 { YES_ON_ONE } else { YES_ON };
    says.say(&[("papers", &standing.papers.to_string()), ("answers", &answers)])
}

/// What is said beside a “yes”, where there is one among `standings`.
fn rests_on(standings: &[Standing]) -> Option<String> {
    standings.iter().any(|standing| standing.alone).then(|| YES_RESTS_ON.text().to_owned())
}

fn standing_row(standing: &Standing, named: bool) -> Vec<String> {
    let mut row = if named { vec![standing.name.clone(), standing.group.clone()] } else { Vec::new() };
    row.extend([
        standing.title.clone(),
        standing.state.says().text().to_owned(),
        alone(standing),
        day(standing.until),
        standing.says.clone(),
    ]);
    row
}

fn cause_section(causes: &[CauseLine]) -> ReportSection {
    ReportSection {
        heading: WENT_WRONG.text().into(),
        lines: if causes.is_empty() { vec![NO_KNOWN_TURN.text().into()] } else { Vec::new() },
        headings: headings(&[DONE, TIMES, PEOPLE]),
        rows: (causes.iter().take(MOST_CAUSES))
            .map(|cause| vec![cause.says.clone(), cause.times.to_string(), cause.people.to_string()])
            .collect(),
        ..ReportSection::default()
    }
}

pub(crate) fn class(report: &ClassReport) -> Result<Report> {
    let names = [NAME, GROUP, EXAM, STANDING, ALONE, HOLDS_UNTIL, WHY];
    let part = |heading: Message, alone: bool| ReportSection {
        heading: heading.text().into(),
        lines: match report.standings.iter().any(|standing| standing.alone == alone) {
            true => Vec::new(),
            false => vec![NOBODY.text().into()],
        },
        headings: headings(&names),
        rows: (report.standings.iter())
            .filter(|standing| standing.alone == alone)
            .map(|standing| standing_row(standing, true))
            .collect(),
        ..ReportSection::default()
    };
    let skills = report.skills.iter().map(|skill| Bar {
        name: skill_name(&skill.skill),
        share: skill.share,
        between: None,
        note: OF_MARKS.say(&[("earned", &skill.earned.to_string()), ("of", &skill.of.to_string())]),
    });
    let skill_rows = report
        .skills
        .iter()
        .map(|skill| vec![skill_name(&skill.skill), percent(skill.share), of(skill.earned, skill.of)]);
    let totals = report.totals.iter().map(|total| {
        let mean = if total.of == 0 { "–".into() } else { percent(total.earned as f64 / total.of as f64) };
        let counts = [total.papers, total.handed_in, total.passed, total.removed].map(|count| count.to_string());
        [vec![total.title.clone()], counts.to_vec(), vec![mean]].concat()
    });
    Ok(Report {
        title: report.group.as_ref().map_or_else(|| CLASS.text().to_owned(), |group| said(CLASS_OF, "group", group)),
        foot: format!("{}, {}", CLASS.text(), report.as_of.said()),
        about: ([as_of(report.as_of), LATEST_DECIDES.text().into()].into_iter())
            .chain(rests_on(&report.standings))
            .collect(),
        cautions: cautions(&report.standings),
        sections: vec![
            part(NOT_ALONE, false),
            part(READY, true),
            ReportSection {
                heading: SKILLS_WEAKEST.text().into(),
                figure: bars("skills", SHARE_OF_SKILLS.text(), skills.collect())?,
                headings: headings(&[SKILL, SHARE, MARKS]),
                rows: skill_rows.collect(),
                ..ReportSection::default()
            },
            cause_section(&report.causes),
            ReportSection {
                heading: TOTALS.text().into(),
                lines: vec![REMOVED_COUNT.text().into(), OF_ALL_MARKS_ARE.text().into()],
                headings: headings(&[EXAM, PAPERS, HANDED_IN, PASSED, REMOVED, OF_ALL_MARKS]),
                rows: totals.collect(),
                ..ReportSection::default()
            },
        ],
    })
}

pub(crate) fn due(report: &DueReport) -> Report {
    Report {
        title: DUE_FOR_PAPER.text().into(),
        foot: format!("{}, {}", DUE.text(), report.as_of.said()),
        about: ([LAPSED_OR_LAPSING.say(&[("day", &report.as_of.said()), ("months", &report.within.to_string())])]
            .into_iter())
        .chain(rests_on(&report.due))
        .collect(),
        cautions: Vec::new(),
        sections: vec![ReportSection {
            heading: EARLIEST.text().into(),
            lines: if report.due.is_empty() { vec![NOBODY.text().into()] } else { Vec::new() },
            headings: headings(&[NAME, GROUP, EXAM, STANDING, ALONE, HOLDS_UNTIL, WHY]),
            rows: report.due.iter().map(|standing| standing_row(standing, true)).collect(),
            ..ReportSection::default()
        }],
    }
}

fn two_places(value: Option<f64>) -> String {
    or_dash(value.map(|value| with_decimal_mark(format!("{:.2}", value + 0.0).replace('-', "\u{2212}"))))
}

fn equally_hard(item: &ItemLine) -> String {
    match item.alike {
        None => NOTHING_TO_COMPARE.text().into(),
        Some(alike) => {
            let verdict = if alike.probability < UNEQUAL { UNEQUALLY_HARD } else { NO_DIFFERENCE };
            let rough = if alike.rough { format!(", {}", FEW_ANSWERS.text()) } else { String::new() };
            format!("{} (p = {}{rough})", verdict.text(), with_decimal_mark(format!("{:.2}", alike.probability)))
        }
    }
}

pub(crate) fn items(report: &ItemsReport, date: Date) -> Result<Report> {
    let mut hardest: Vec<&ItemLine> = report.items.iter().collect();
    hardest.sort_by(|a, b| a.facility.total_cmp(&b.facility).then_with(|| a.item.cmp(&b.item)));
    let chart = hardest.iter().take(15).map(|item| Bar {
        name: item_title(&item.item, &item.title),
        share: item.full as f64 / item.asked.max(1) as f64,
        between: item.interval,
        note: OF.say(&[("earned", &item.full.to_string()), ("of", &item.asked.to_string())]),
    });
    let rows = hardest.iter().map(|item| {
        vec![
            item.item.clone(),
            item.asked.to_string(),
            percent(item.facility),
            two_places(item.discrimination),
            item.blank.to_string(),
            item.unread.to_string(),
            equally_hard(item),
            item.causes.first().map_or_else(String::new, |cause| format!("{} × {}", cause.times, cause.says)),
        ]
    });
    let variants = report.items.iter().filter(|item| item.variants.len() > 1).flat_map(|item| {
        item.variants.iter().map(|variant| {
            let between = variant.interval.map_or_else(String::new, |(low, high)| {
                FROM_TO.say(&[("low", &percent(low)), ("high", &percent(high))])
            });
            vec![item.item.clone(), variant.family.clone(), variant.asked.to_string(), percent(variant.share), between]
        })
    });
    let exams = report.exams.iter().map(|exam| {
        vec![
            exam.title.clone(),
            exam.papers.to_string(),
            exam.questions.to_string(),
            percent(exam.mean),
            two_places(exam.alpha.filter(|_| exam.papers >= FOR_ALPHA)),
            two_places(exam.kr20.filter(|_| exam.papers >= FOR_ALPHA)),
        ]
    });
    let causes: Vec<CauseLine> = match report.items.as_slice() {
        [item] => item.causes.clone(),
        _ => Vec::new(),
    };
    let mut sections = vec![
        ReportSection {
            heading: HARDEST_SHARE.text().into(),
            figure: bars("items", SHARE_OF_ALL_MARKS.text(), chart.collect())?,
            ..ReportSection::default()
        },
        ReportSection {
            heading: HARDEST_FIRST.text().into(),
            lines: vec![COLUMNS_ARE.text().into()],
            headings: headings(&[ITEM, ASKED, MARKS, DISCRIMINATION, BLANK, UNREAD, VARIANTS, COMMON_TURN]),
            rows: rows.collect(),
            ..ReportSection::default()
        },
        ReportSection {
            heading: VARIANTS_SHARE.text().into(),
            headings: headings(&[ITEM, FAMILY, ASKED, ALL_MARKS, INTERVAL]),
            rows: variants.collect(),
            ..ReportSection::default()
        },
        ReportSection {
            heading: RELIABILITY.text().into(),
            lines: vec![ALPHA_IS.text().into(), MEAN_PAPER_IS.text().into()],
            headings: headings(&[EXAM, PAPERS, QUESTIONS, MEAN_PAPER, ALPHA, KR20]),
            rows: exams.collect(),
            ..ReportSection::default()
        },
    ];
    if !causes.is_empty() {
        sections.insert(2, cause_section(&causes));
    }
    Ok(Report {
        title: ITEMS.text().into(),
        foot: format!("{}, {}", ITEMS.text(), date.said()),
        about: vec![as_of(date)],
        cautions: Vec::new(),
        sections,
    })
}

pub(crate) fn answer(report: &AnswerReport) -> Report {
    let mut sections = Vec::new();
    for revision in &report.revisions {
        let heading = if revision.revision == 1 {
            said(AS_HANDED_IN, "day", &day_of(&revision.sat))
        } else {
            CORRECTION.say(&[
                ("number", &(revision.revision - 1).to_string()),
                ("day", &day_of(&revision.recorded)),
                ("by", &revision.by),
                ("reason", &revision.reason),
            ])
        };
        let or_none = |text: &str| if text.is_empty() { NOTHING.text().to_owned() } else { text.to_owned() };
        let row = |name: Message, what: String| vec![name.text().to_owned(), what];
        let mut rows = vec![row(WRITTEN, or_none(&revision.written))];
        if !revision.steps.is_empty() {
            rows.push(row(ON_THE_WAY, revision.steps.clone()));
        }
        rows.extend([
            row(READ_AS, or_none(&revision.read_as)),
            row(EXPECTED, revision.expected.clone()),
            row(
                ACCEPTED,
                if revision.tolerance.is_empty() { EXACTLY_THAT.text().into() } else { revision.tolerance.clone() },
            ),
            row(MARK, format!("{} ({})", of(revision.earned, revision.of), verdict(&revision.verdict))),
            row(WHY, said_again(&revision.says).to_owned()),
        ]);
        // The short name is that of tables, which is English; why the mark says the same in words.
        let cause = revision.cause.iter().filter(|_| code() == ENGLISH);
        rows.extend(cause.map(|cause| row(RECOGNISED, cause.clone())));
        rows.extend(revision.changes.iter().map(|change| {
            row(
                CHANGED,
                CHANGED_TO.say(&[
                    ("earned", &change.earned.to_string()),
                    ("of", &revision.of.to_string()),
                    ("by", &change.by),
                    ("day", &day_of(&change.made)),
                    ("reason", &change.reason),
                ]),
            )
        }));
        sections.push(ReportSection { heading, headings: headings(&[WHAT, HOW]), rows, ..ReportSection::default() });
    }
    let safety = if report.safety { format!(" {}", ABOUT_SAFETY.text()) } else { String::new() };
    let place =
        [("code", report.code.as_str()), ("number", &report.question.to_string()), ("part", &report.part.to_string())];
    Report {
        title: QUESTION_OF.say(&place),
        foot: PAPER_QUESTION.say(&place),
        about: vec![
            format!("{}, {}.", report.name, report.exam),
            format!("{}: {}{safety}", report.title, report.asked),
            COUNTS_NOW.say(&[("earned", &report.counts.to_string()), ("of", &report.of.to_string())]),
        ],
        cautions: Vec::new(),
        sections,
    }
}

/// A verdict in words; tables have its name.
fn verdict(name: &str) -> String {
    use serde::de::{Deserialize, IntoDeserializer, value};
    let known: Result<Verdict, value::Error> = Verdict::deserialize(name.into_deserializer());
    known.map_or_else(|_| name.to_owned(), |verdict| of_verdict(verdict).text().into())
}
