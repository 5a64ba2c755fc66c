//! `report`: what the records say, as text, a page to print, CSV and JSON.

use std::io::Write as _;
use std::path::{Path, PathBuf};

use anyhow::Result;
use drivecourse_course::pages::Pages;
use drivecourse_course::pages::model::Report;
use drivecourse_records::report::ItemFilter;
use drivecourse_records::{Date, Filter, Store};
use serde::Serialize;

use crate::assets::Assets;
use crate::cli::{self, Only, ReportOf, Reporting, Speech};
use crate::course::pages;
use crate::record::{place, today};
use crate::report_words::{CAUTION, MORE_LATER, NONE_ASKED, NONE_HANDED_IN, NONE_OF_THESE, ONE_LATER, WRITTEN_TO};
use crate::terminal::clean;
use crate::{files, words};
use crate::{report_pages as make, report_tables as tables};

pub(crate) fn run(options: &cli::Report, speech: &Speech) -> Result<()> {
    match &options.of {
        ReportOf::Person { id, common } => {
            // What cannot be found out yet is told when the records are opened for good.
            let of = Store::existing(&common.records).and_then(|store| store.id_of(id)).ok();
            let (store, assets) =
                open(common, speech, &Filter { person: of.or_else(|| Some(id.clone())), ..Filter::default() }, None)?;
            let id = &store.id_of(id)?;
            let report = store.person(id, day(common), common.within)?;
            tell(
                common,
                &assets,
                &format!("person-{id}"),
                make::person(&report)?,
                &tables::person_csv(&report),
                &report,
            )
        }
        ReportOf::Class { only, common } => {
            let (store, assets) = open(common, speech, &filter(only), None)?;
            let report = store.class(&filter(only), day(common), common.within)?;
            let mut page = make::class(&report)?;
            if report.standings.is_empty() && report.totals.is_empty() {
                page.about.push(nothing_yet(&store, Filter { until: Some(day(common)), ..filter(only) })?);
                page.sections.clear();
            }
            tell(common, &assets, "class", page, &tables::standings_csv(&report.standings), &report)
        }
        ReportOf::Items { item, family, only, common } => {
            let which = ItemFilter { item: item.clone(), family: family.clone() };
            let filter = Filter { until: Some(day(common)), ..filter(only) };
            let (store, assets) = open(common, speech, &filter, None)?;
            let report = store.items(&filter, &which)?;
            let mut page = make::items(&report, day(common))?;
            if report.exams.is_empty() {
                page.about.push(nothing_yet(&store, filter)?);
                page.sections.clear();
            } else if report.items.is_empty() {
                page.about.push(NONE_ASKED.text().into());
                page.sections.clear();
            }
            tell(common, &assets, "items", page, &tables::items_csv(&report), &report)
        }
        ReportOf::Due { only, common } => {
            let (store, assets) = open(common, speech, &filter(only), None)?;
            let report = store.due(&filter(only), day(common), common.within)?;
            tell(common, &assets, "due", make::due(&report), &tables::standings_csv(&report.due), &report)
        }
        ReportOf::Answer { code, question, part, exam, common } => {
            let place = place(code, *question, *part, exam.as_deref())?;
            let (store, assets) = open(common, speech, &Filter::default(), Some(&place.code))?;
            let report = store.answer(&place)?;
            let name = format!("answer-{}-{question}{part}", place.code);
            tell(common, &assets, &name, make::answer(&report), &tables::answer_csv(&report), &report)
        }
    }
}

/// The records, and the program's files in the language of the report: the one asked for, else that of every exam of the
/// papers it looks at.
fn open(common: &Reporting, speech: &Speech, of: &Filter, code: Option<&str>) -> Result<(Store, Assets)> {
    words::begin_with(&common.module, speech, |_| {
        let store = Store::existing(&common.records)?;
        let language = store.language(of, code)?;
        Ok((store, language))
    })
}

fn day(common: &Reporting) -> Date {
    common.as_of.unwrap_or_else(today)
}

fn filter(only: &Only) -> Filter {
    Filter { group: only.group.clone(), exam: only.exam.clone(), ..Filter::default() }
}

/// Why there is nothing to report on items by the day of `filter`: what there is later, if anything.
fn nothing_yet(store: &Store, filter: Filter) -> Result<String> {
    let some_only = filter.group.is_some() || filter.exam.is_some();
    let later = store.all_papers(&Filter { until: None, ..filter })?;
    let days: Vec<Date> = later.iter().filter_map(|paper| paper.sat).collect();
    Ok(match (days.iter().min(), days.len()) {
        (None, _) if some_only => NONE_OF_THESE.text().into(),
        (None, _) => NONE_HANDED_IN.text().into(),
        (Some(first), 1) => ONE_LATER.say(&[("day", &first.to_string())]),
        (Some(first), count) => MORE_LATER.say(&[("count", &count.to_string()), ("day", &first.to_string())]),
    })
}

/// Prints the report, and writes it where that was asked for.
fn tell(common: &Reporting, assets: &Assets, name: &str, page: Report, csv: &str, data: &impl Serialize) -> Result<()> {
    let json = serde_json::to_string_pretty(data)? + "\n";
    if let Some(out) = &common.out {
        let pages = pages(assets)?;
        let written = write(&pages, out, name, &page, csv, &json)?;
        eprintln!("drivecourse: {}", WRITTEN_TO.say(&[("file", &written.display().to_string())]));
    }
    let mut stdout = std::io::stdout().lock();
    let text = if common.json { json } else { text(&page) };
    Ok(stdout.write_all(text.as_bytes())?)
}

/// The report as page, CSV and JSON in the folder `out`; where the page is.
fn write(pages: &Pages, out: &Path, name: &str, page: &Report, csv: &str, json: &str) -> Result<PathBuf> {
    let html = pages.render("report.html", page)?;
    // Ids of people are plain; a name that came from elsewhere must not lead out of the folder.
    let name: String =
        name.chars().map(|c| if c.is_ascii_alphanumeric() || "-_.".contains(c) { c } else { '-' }).collect();
    for (ending, text) in [("html", html.as_str()), ("csv", csv), ("json", json)] {
        files::write(&out.join(format!("{name}.{ending}")), text.as_bytes())?;
    }
    Ok(out.join(format!("{name}.html")))
}

/// The reports on the class and on the items of everything in `store`, on `day`, in the folder `out`.
pub(crate) fn write_all(store: &Store, pages: &Pages, day: Date, out: &Path) -> Result<()> {
    /// Months ahead in which a lapse counts as soon.
    const WITHIN: u32 = 2;
    let class = store.class(&Filter::default(), day, WITHIN)?;
    let json = serde_json::to_string_pretty(&class)? + "\n";
    write(pages, out, "class", &make::class(&class)?, &tables::standings_csv(&class.standings), &json)?;
    let items = store.items(&Filter { until: Some(day), ..Filter::default() }, &ItemFilter::default())?;
    let json = serde_json::to_string_pretty(&items)? + "\n";
    write(pages, out, "items", &make::items(&items, day)?, &tables::items_csv(&items), &json)?;
    Ok(())
}

/// The page as plain text.
fn text(page: &Report) -> String {
    let mut out = format!("{}\n", clean(&page.title));
    page.about.iter().for_each(|line| out.push_str(&format!("{}\n", clean(line))));
    if !page.cautions.is_empty() {
        out.push_str(&format!("\n{}\n", CAUTION.text()));
        page.cautions.iter().for_each(|line| out.push_str(&format!("  {}\n", clean(line))));
    }
    // A chart alone says nothing in plain text.
    for section in page.sections.iter().filter(|section| !section.lines.is_empty() || !section.rows.is_empty()) {
        out.push_str(&format!("\n{}\n", clean(&section.heading)));
        section.lines.iter().for_each(|line| out.push_str(&format!("  {}\n", clean(line))));
        if !section.rows.is_empty() {
            table(&mut out, &section.headings, &section.rows);
        }
    }
    out
}

/// Columns side by side; the last one, which may be long, is left as long as it is.
fn table(out: &mut String, headings: &[String], rows: &[Vec<String>]) {
    let lines: Vec<Vec<String>> = std::iter::once(headings)
        .chain(rows.iter().map(Vec::as_slice))
        .map(|row| row.iter().map(|cell| clean(cell)).collect())
        .collect();
    let columns = headings.len();
    let width = |column: usize| {
        lines.iter().filter_map(|line| line.get(column)).map(|cell| cell.chars().count()).max().unwrap_or(0)
    };
    let widths: Vec<usize> = (0..columns).map(width).collect();
    for line in &lines {
        out.push(' ');
        for (column, cell) in line.iter().enumerate() {
            let pad = if column + 1 == columns { 0 } else { widths[column].saturating_sub(cell.chars().count()) };
            out.push_str(&format!(" {cell}{} ", " ".repeat(pad)));
        }
        out.truncate(out.trim_end().len());
        out.push('\n');
    }
}
