//! Reports from the records as tables for spreadsheets.

use drivecourse_quiz::response::Writer;
use drivecourse_records::Date;
use drivecourse_records::report::{AnswerReport, ItemsReport, PersonReport, Standing};

fn number(value: Option<f64>) -> String {
    value.map_or_else(String::new, |value| format!("{value:.4}"))
}

fn date(value: Option<Date>) -> String {
    value.map_or_else(String::new, |value| value.to_string())
}

fn yes(value: bool) -> String {
    if value { "yes" } else { "no" }.to_owned()
}

pub(crate) fn standings_csv(standings: &[Standing]) -> String {
    let names = [
        "person", "name", "group", "exam", "state", "alone", "papers", "answers", "sat", "until", "paper", "share",
        "says",
    ];
    let mut out = Writer::new(&names);
    for standing in standings {
        out.row(&[
            standing.person.clone(),
            standing.name.clone(),
            standing.group.clone(),
            standing.exam.clone(),
            standing.state.says().english.to_owned(),
            yes(standing.alone),
            standing.papers.to_string(),
            standing.answers.to_string(),
            date(standing.sat),
            date(standing.until),
            standing.code.clone(),
            number(Some(standing.share)),
            standing.says.clone(),
        ]);
    }
    out.finish()
}

pub(crate) fn person_csv(report: &PersonReport) -> String {
    let mut out = Writer::new(&["person", "name", "skill", "day", "share", "latest", "practise"]);
    for skill in &report.skills {
        for (day, share) in &skill.days {
            let latest = skill.days.last().is_some_and(|last| last.0 == *day);
            out.row(&[
                report.person.clone(),
                report.name.clone(),
                skill.skill.clone(),
                day.to_string(),
                number(Some(*share)),
                yes(latest),
                yes(latest && skill.practise),
            ]);
        }
    }
    out.finish()
}

pub(crate) fn items_csv(report: &ItemsReport) -> String {
    let mut out = Writer::new(&[
        "item",
        "family",
        "skill",
        "safety",
        "asked",
        "full",
        "facility",
        "discrimination",
        "blank",
        "unread",
        "carried",
        "variants_p",
        "cause",
        "cause_times",
    ]);
    for item in &report.items {
        let cause = item.causes.first();
        out.row(&[
            item.item.clone(),
            String::new(),
            item.skill.clone(),
            yes(item.safety),
            item.asked.to_string(),
            item.full.to_string(),
            number(Some(item.facility)),
            number(item.discrimination),
            item.blank.to_string(),
            item.unread.to_string(),
            item.carried.to_string(),
            number(item.alike.map(|alike| alike.probability)),
            cause.map_or_else(String::new, |cause| cause.name.clone()),
            cause.map_or_else(String::new, |cause| cause.times.to_string()),
        ]);
        for variant in &item.variants {
            let mut row = vec![item.item.clone(), variant.family.clone(), item.skill.clone(), yes(item.safety)];
            row.extend([variant.asked.to_string(), variant.full.to_string(), number(Some(variant.share))]);
            row.resize(14, String::new());
            out.row(&row);
        }
    }
    out.finish()
}

pub(crate) fn answer_csv(report: &AnswerReport) -> String {
    let mut out = Writer::new(&[
        "paper",
        "question",
        "part",
        "revision",
        "written",
        "read_as",
        "expected",
        "tolerance",
        "verdict",
        "earned",
        "of",
        "says",
        "reason",
        "by",
    ]);
    for revision in &report.revisions {
        let place = [report.code.clone(), report.question.to_string(), report.part.to_string()];
        let row = |verdict: &str, earned: u32, says: &str, reason: &str, by: &str| {
            let mut row = place.to_vec();
            row.extend([
                revision.revision.to_string(),
                revision.written.clone(),
                revision.read_as.clone(),
                revision.expected.clone(),
                revision.tolerance.clone(),
                verdict.to_owned(),
                earned.to_string(),
                revision.of.to_string(),
                says.to_owned(),
                reason.to_owned(),
                by.to_owned(),
            ]);
            row
        };
        out.row(&row(&revision.verdict, revision.earned, &revision.says, &revision.reason, &revision.by));
        for change in &revision.changes {
            out.row(&row("changed", change.earned, "", &change.reason, &change.by));
        }
    }
    out.finish()
}
