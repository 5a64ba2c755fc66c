//! Reports from the records as pages.

use anyhow::Result;
use drivecourse_course::figures::{Bar, Bars, Figure, Run};
use drivecourse_course::pages::model::{Report, ReportSection, Trusted};
use drivecourse_quiz::grade::ENOUGH;
use drivecourse_records::Date;
use drivecourse_records::report::{
    AnswerReport, CauseLine, ClassReport, DueReport, ItemLine, ItemsReport, PersonReport, Standing, State,
};

/// Wrong turns listed in a report.
const MOST_CAUSES: usize = 12;
/// A probability below which the variants of an item are called unequal.
const UNEQUAL: f64 = 0.01;

fn percent(share: f64) -> String {
    format!("{:.0} %", share * 100.0)
}

fn or_dash<T: ToString>(value: Option<T>) -> String {
    value.map_or_else(|| "–".into(), |value| value.to_string())
}

fn figure(figure: Figure) -> Option<Trusted> {
    Some(Trusted::made_by_us(figure.svg))
}

fn headings(names: &[&str]) -> Vec<String> {
    names.iter().map(|name| (*name).to_owned()).collect()
}

fn words(skill: &str) -> String {
    skill.replace('-', " ")
}

fn enough() -> Option<(f64, String)> {
    Some((ENOUGH, format!("enough: {}", percent(ENOUGH))))
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
        .filter_map(|paper| paper.sat.map(|sat| (sat.days() as f64, sat.to_string(), paper.share)))
        .collect();
    let trend = match days.is_empty() {
        true => None,
        false => {
            let pass = report.papers.iter().rev().find(|paper| paper.sat.is_some()).map(|paper| paper.pass);
            let enough = pass.map(|pass| (pass, format!("passes: {}", percent(pass))));
            figure(Run { id: "papers".into(), title: "Share of the marks on each paper".into(), days, enough }.draw()?)
        }
    };
    let papers = report.papers.iter().map(|paper| {
        let changed = if paper.changed == 0 { String::new() } else { format!(" {} marks changed.", paper.changed) };
        let revised =
            if paper.revision > 1 { format!(" Corrected {} times.", paper.revision - 1) } else { String::new() };
        vec![
            or_dash(paper.sat),
            paper.title.clone(),
            paper.code.clone(),
            if paper.sat.is_some() { percent(paper.share) } else { "–".into() },
            or_dash(paper.until),
            format!("{}{changed}{revised}", paper.says),
        ]
    });
    let skills = report.skills.iter().map(|skill| Bar {
        name: words(&skill.skill),
        share: skill.last,
        between: None,
        note: change(skill.trend),
    });
    let skill_rows =
        report.skills.iter().map(|skill| vec![words(&skill.skill), percent(skill.last), change(skill.trend)]);
    let practise = report.to_practise().map(|skill| {
        let wrong = skill.causes.first().map_or_else(String::new, |cause| cause.says.clone());
        vec![words(&skill.skill), percent(skill.last), percent(skill.all), wrong]
    });
    Ok(Report {
        title: format!("{} ({}{group})", report.name, report.person),
        foot: format!("{}, {}", report.name, report.as_of),
        about: vec![format!("As of {}.", report.as_of)],
        cautions: cautions(&report.standings),
        sections: vec![
            ReportSection {
                heading: "What this person may do".into(),
                headings: headings(&["Exam", "Standing", "Alone", "Holds until", "Why"]),
                rows: report.standings.iter().map(|standing| standing_row(standing, false)).collect(),
                ..ReportSection::default()
            },
            ReportSection {
                heading: "Papers".into(),
                figure: trend,
                headings: headings(&["Day", "Exam", "Paper", "Marks", "Holds until", "Result"]),
                rows: papers.collect(),
                ..ReportSection::default()
            },
            ReportSection {
                heading: "Skills on the latest day, and the change since the first".into(),
                figure: bars("skills", "Share of the marks of each skill", skills.collect())?,
                headings: headings(&["Skill", "Latest", "Change"]),
                rows: skill_rows.collect(),
                ..ReportSection::default()
            },
            ReportSection {
                heading: "Practise next, most needed first".into(),
                lines: if report.to_practise().next().is_none() {
                    vec!["Nothing stands out.".into()]
                } else {
                    Vec::new()
                },
                headings: headings(&["Skill", "Latest", "Over all papers", "What went wrong most often"]),
                rows: practise.collect(),
                ..ReportSection::default()
            },
        ],
    })
}

/// How a skill has changed since it was first asked.
fn change(trend: Option<f64>) -> String {
    trend.map_or_else(|| "first time".into(), |trend| format!("{:+.0} points", trend * 100.0 + 0.0))
}

/// What a missed safety question means, for those who missed one.
fn cautions(standings: &[Standing]) -> Vec<String> {
    let missed = standings
        .iter()
        .filter(|standing| standing.state == State::NotPassed && standing.says.contains("Safety question"));
    missed.map(|standing| format!("{}, {}: {}", standing.name, standing.title, standing.says)).collect()
}

fn standing_row(standing: &Standing, named: bool) -> Vec<String> {
    let mut row = if named { vec![standing.name.clone(), standing.group.clone()] } else { Vec::new() };
    row.extend([
        standing.title.clone(),
        standing.state.says().to_owned(),
        if standing.alone { "yes" } else { "not yet" }.to_owned(),
        or_dash(standing.until),
        standing.says.clone(),
    ]);
    row
}

fn cause_section(causes: &[CauseLine]) -> ReportSection {
    ReportSection {
        heading: "What went wrong, most often first".into(),
        lines: if causes.is_empty() { vec!["Nothing that matches a known wrong turn.".into()] } else { Vec::new() },
        headings: headings(&["What was done", "Times", "People"]),
        rows: (causes.iter().take(MOST_CAUSES))
            .map(|cause| vec![cause.says.clone(), cause.times.to_string(), cause.people.to_string()])
            .collect(),
        ..ReportSection::default()
    }
}

pub(crate) fn class(report: &ClassReport) -> Result<Report> {
    let names = ["Name", "Group", "Exam", "Standing", "Alone", "Holds until", "Why"];
    let part = |heading: &str, alone: bool| ReportSection {
        heading: heading.into(),
        lines: match report.standings.iter().any(|standing| standing.alone == alone) {
            true => Vec::new(),
            false => vec!["Nobody.".into()],
        },
        headings: headings(&names),
        rows: (report.standings.iter())
            .filter(|standing| standing.alone == alone)
            .map(|standing| standing_row(standing, true))
            .collect(),
        ..ReportSection::default()
    };
    let skills = report.skills.iter().map(|skill| Bar {
        name: words(&skill.skill),
        share: skill.share,
        between: None,
        note: format!("{} of {} marks", skill.earned, skill.of),
    });
    let skill_rows = report
        .skills
        .iter()
        .map(|skill| vec![words(&skill.skill), percent(skill.share), format!("{} of {}", skill.earned, skill.of)]);
    let totals = report.totals.iter().map(|total| {
        let mean = if total.of == 0 { "–".into() } else { percent(total.earned as f64 / total.of as f64) };
        let counts = [total.papers, total.handed_in, total.passed, total.removed].map(|count| count.to_string());
        [vec![total.title.clone()], counts.to_vec(), vec![mean]].concat()
    });
    Ok(Report {
        title: report.group.as_ref().map_or_else(|| "Class".to_owned(), |group| format!("Class: {group}")),
        foot: format!("Class, {}", report.as_of),
        about: vec![
            format!("As of {}.", report.as_of),
            "The latest paper of each exam decides. Nobody works alone on a drive without the site's own permission."
                .into(),
        ],
        cautions: cautions(&report.standings),
        sections: vec![
            part("Must not work alone yet", false),
            part("Ready", true),
            ReportSection {
                heading: "Skills, weakest first".into(),
                figure: bars("skills", "Share of the marks of each skill", skills.collect())?,
                headings: headings(&["Skill", "Share", "Marks"]),
                rows: skill_rows.collect(),
                ..ReportSection::default()
            },
            cause_section(&report.causes),
            ReportSection {
                heading: "Totals".into(),
                lines: vec!["People whose data was taken out on request are counted here, and nowhere by name.".into()],
                headings: headings(&["Exam", "Papers", "Handed in", "Passed", "Of these removed", "Mean"]),
                rows: totals.collect(),
                ..ReportSection::default()
            },
        ],
    })
}

pub(crate) fn due(report: &DueReport) -> Report {
    Report {
        title: "Due for a new paper".into(),
        foot: format!("Due, {}", report.as_of),
        about: vec![format!("Lapsed on {}, or lapsing within {} months of it.", report.as_of, report.within)],
        cautions: Vec::new(),
        sections: vec![ReportSection {
            heading: "The earliest first".into(),
            lines: if report.due.is_empty() { vec!["Nobody.".into()] } else { Vec::new() },
            headings: headings(&["Name", "Group", "Exam", "Standing", "Alone", "Holds until", "Why"]),
            rows: report.due.iter().map(|standing| standing_row(standing, true)).collect(),
            ..ReportSection::default()
        }],
    }
}

fn two_places(value: Option<f64>) -> String {
    or_dash(value.map(|value| format!("{:.2}", value + 0.0).replace('-', "\u{2212}")))
}

fn equally_hard(item: &ItemLine) -> String {
    match item.alike {
        None => "nothing to compare".into(),
        Some(alike) => {
            let verdict = if alike.probability < UNEQUAL { "unequal" } else { "no difference shown" };
            let rough = if alike.rough { ", few answers" } else { "" };
            format!("{verdict} (p = {:.2}{rough})", alike.probability)
        }
    }
}

pub(crate) fn items(report: &ItemsReport, as_of: Date) -> Result<Report> {
    let mut hardest: Vec<&ItemLine> = report.items.iter().collect();
    hardest.sort_by(|a, b| a.facility.total_cmp(&b.facility).then_with(|| a.item.cmp(&b.item)));
    let chart = hardest.iter().take(15).map(|item| Bar {
        name: item.title.clone(),
        share: item.full as f64 / item.asked.max(1) as f64,
        between: item.interval,
        note: format!("{} of {}", item.full, item.asked),
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
            let between = variant
                .interval
                .map_or_else(String::new, |(low, high)| format!("{} to {}", percent(low), percent(high)));
            vec![item.item.clone(), variant.family.clone(), variant.asked.to_string(), percent(variant.share), between]
        })
    });
    let exams = report.exams.iter().map(|exam| {
        vec![
            exam.title.clone(),
            exam.papers.to_string(),
            exam.questions.to_string(),
            percent(exam.mean),
            two_places(exam.alpha),
            two_places(exam.kr20),
        ]
    });
    let causes: Vec<CauseLine> = match report.items.as_slice() {
        [item] => item.causes.clone(),
        _ => Vec::new(),
    };
    let mut sections = vec![
        ReportSection {
            heading: "Hardest items: share of answers that earned all marks, with its 95 % interval".into(),
            figure: bars("items", "Share that earned all marks", chart.collect())?,
            ..ReportSection::default()
        },
        ReportSection {
            heading: "Items, hardest first".into(),
            lines: vec![
                "Marks: share of the marks that was earned. Discrimination: correlation with the rest of the paper, the item \
                 itself left out; near or below nought, look at the item. Variants: whether machines of different families \
                 make it equally hard (chi-square)."
                    .into(),
            ],
            headings: headings(&[
                "Item",
                "Asked",
                "Marks",
                "Discrimination",
                "Blank",
                "Unread",
                "Variants",
                "Most common wrong turn",
            ]),
            rows: rows.collect(),
            ..ReportSection::default()
        },
        ReportSection {
            heading: "Variants: share that earned all marks".into(),
            headings: headings(&["Item", "Family", "Asked", "All marks", "95 % interval"]),
            rows: variants.collect(),
            ..ReportSection::default()
        },
        ReportSection {
            heading: "Reliability".into(),
            lines: vec![
                "Alpha of the shares of marks, and KR-20 of all marks or not, each place of the paper as an item; every \
                 variance with the number of papers as divisor."
                    .into(),
            ],
            headings: headings(&["Exam", "Papers", "Questions", "Mean", "Alpha", "KR-20"]),
            rows: exams.collect(),
            ..ReportSection::default()
        },
    ];
    if !causes.is_empty() {
        sections.insert(2, cause_section(&causes));
    }
    Ok(Report {
        title: "Items".into(),
        foot: format!("Items, {as_of}"),
        about: vec![format!("As of {as_of}.")],
        cautions: Vec::new(),
        sections,
    })
}

pub(crate) fn answer(report: &AnswerReport) -> Report {
    let mut sections = Vec::new();
    for revision in &report.revisions {
        let heading = if revision.revision == 1 {
            format!("As handed in on {}", revision.sat)
        } else {
            format!(
                "Correction {}, recorded {} by {}: {}",
                revision.revision - 1,
                revision.recorded,
                revision.by,
                revision.reason
            )
        };
        let or_none = |text: &str| if text.is_empty() { "nothing".to_owned() } else { text.to_owned() };
        let row = |name: &str, what: String| vec![name.to_owned(), what];
        let mut rows = vec![row("Written", or_none(&revision.written))];
        if !revision.steps.is_empty() {
            rows.push(row("Results on the way", revision.steps.clone()));
        }
        rows.extend([
            row("Read as", or_none(&revision.read_as)),
            row("Expected", revision.expected.clone()),
            row(
                "Accepted",
                if revision.tolerance.is_empty() { "exactly that".into() } else { revision.tolerance.clone() },
            ),
            row("Mark", format!("{} of {} ({})", revision.earned, revision.of, revision.verdict)),
            row("Why", revision.says.clone()),
        ]);
        rows.extend(revision.cause.iter().map(|cause| row("Recognised as", cause.clone())));
        rows.extend(revision.changes.iter().map(|change| {
            row(
                "Changed",
                format!(
                    "to {} of {} by {} on {}: {}",
                    change.earned, revision.of, change.by, change.made, change.reason
                ),
            )
        }));
        sections.push(ReportSection {
            heading,
            headings: headings(&["What", "How"]),
            rows,
            ..ReportSection::default()
        });
    }
    let safety = if report.safety { " It is about safety: missing it fails the paper." } else { "" };
    Report {
        title: format!("Question {} ({}) of paper {}", report.question, report.part, report.code),
        foot: format!("Paper {}, question {} ({})", report.code, report.question, report.part),
        about: vec![
            format!("{}, {}.", report.name, report.exam),
            format!("{}: {}{safety}", report.title, report.asked),
            format!("It counts {} of {} now.", report.counts, report.of),
        ],
        cautions: Vec::new(),
        sections,
    }
}
