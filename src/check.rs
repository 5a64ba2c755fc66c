//! `check`: everything wrong with a module, in one pass.

use std::collections::{BTreeMap, BTreeSet};
use std::io::Write as _;

use anyhow::{Result, bail};
use drivecourse_course::expand::{CourseData, Expander};
use drivecourse_machine::chance::derive;
use drivecourse_machine::{MOST_ATTEMPTS, Plan, Problem, System};
use drivecourse_quiz::explain::{cause_name, part_letter};
use drivecourse_quiz::paper::why;
use drivecourse_quiz::{Bank, Blueprint, Draw, Item, Roster, Secret, Setting, Used, read_items};

use crate::assets::Assets;
use crate::{bank, cli, course, files};

/// Machines drawn from each family to see how many it rejects.
const MACHINES: u64 = 200;
/// Rejected machines for each one kept from which on a family is called wasteful.
const WASTEFUL: f64 = 20.0;

pub(crate) fn run(options: &cli::Check) -> Result<()> {
    let assets = Assets::load(options.module.module.as_deref())?;
    let (bank, broken) = bank::read(&assets);
    let mut check = Check { assets: &assets, found: Vec::new(), notes: Vec::new() };
    let sound = broken.is_empty();
    check.found.extend(broken.into_iter().map(|found| Found {
        place: place_of(&found.report, &found.file),
        file: found.file,
        what: found.problem.what,
        mend: found.problem.mend,
        report: found.report,
    }));
    // Where a family or item is broken, whatever needs it would be reported once more.
    if sound {
        check.families(&bank);
        check.items(&bank);
        check.chapters(&bank);
    }
    check.exams(sound.then_some(&bank));
    check.rosters();
    check.tell(options, &bank)
}

/// Line and column that stand after the file at the beginning of a report.
fn place_of(report: &str, file: &str) -> Option<(usize, usize)> {
    let mut parts = report.strip_prefix(file)?.strip_prefix(':')?.splitn(3, ':');
    Some((parts.next()?.parse().ok()?, parts.next()?.parse().ok()?))
}

/// Something wrong.
struct Found {
    file: String,
    /// Line and column.
    place: Option<(usize, usize)>,
    what: String,
    mend: String,
    report: String,
}

struct Check<'a> {
    assets: &'a Assets,
    found: Vec<Found>,
    /// What is no fault, and yet good to know.
    notes: Vec<String>,
}

impl Check<'_> {
    /// A problem in `path`, such as `scenarios/items/chain.toml`, which holds `text`.
    fn say(&mut self, path: &str, text: &str, problem: Problem) {
        let file = self.assets.shown(path);
        let report = problem.report(&file, text);
        let place = problem.line_column(text);
        self.found.push(Found { file, place, what: problem.what, mend: problem.mend, report });
    }

    /// The files below `folder` with this ending, as text.
    fn texts(&mut self, folder: &str, ending: &str) -> Vec<(String, String)> {
        let (files, inside) = match folder {
            "book" => (&self.assets.book, ""),
            _ => (&self.assets.scenarios, folder),
        };
        let root = if folder == "book" { "book" } else { "scenarios" };
        let mut out = Vec::new();
        for (path, bytes) in files.iter().filter(|(path, _)| path.starts_with(inside) && path.ends_with(ending)) {
            let path = format!("{root}/{path}");
            match files::text(&self.assets.shown(&path), bytes.clone()) {
                Ok(text) => out.push((path, text)),
                Err(error) => self.found.push(Found {
                    file: self.assets.shown(&path),
                    place: None,
                    what: "The file is not UTF-8 text.".into(),
                    mend: "Save it as UTF-8.".into(),
                    report: error.to_string(),
                }),
            }
        }
        out
    }

    /// Draws machines from every family.
    fn families(&mut self, bank: &Bank) {
        for plan in &bank.plans {
            // One machine could be drawn; now and then one cannot, and that is a question of rate.
            let draws = (0..MACHINES).map(|machine| plan.draw(derive(0xc4ec, machine)));
            let rejected: u64 = draws.map(|case| u64::from(case.map_or(MOST_ATTEMPTS, |case| case.rejected))).sum();
            let rate = rejected as f64 / MACHINES as f64;
            if rate > WASTEFUL {
                self.notes.push(format!(
                    "{}: {rate:.0} machines are rejected for each one kept; narrow the draws that break a limit.",
                    self.assets.shown(&format!("scenarios/families/{}.toml", plan.family.id))
                ));
            }
        }
    }

    /// Puts every item about every family, in both sets of units.
    fn items(&mut self, bank: &Bank) {
        for (path, text) in self.texts("items/", ".toml") {
            // The bank was read from the same text without a problem.
            for item in read_items(&text).unwrap_or_default() {
                self.item(bank, &path, &text, &item);
            }
        }
    }

    fn item(&mut self, bank: &Bank, path: &str, text: &str, item: &Item) {
        for family in item.families.iter().filter(|name| bank.plan(name).is_err()) {
            let says = bank.plan(family).err().unwrap_or_default();
            let what = format!("The item {:?} names a family that is not there: {says}.", item.id);
            self.say(path, text, Problem::at(item.span.clone(), what, "Mend its families."));
        }
        let named = |plan: &&Plan| item.families.is_empty() || item.families.contains(&plan.family.id);
        let plans: Vec<&Plan> = bank.plans.iter().filter(named).collect();
        let (mut reasons, mut fits) = (BTreeMap::new(), BTreeSet::new());
        let mut dropped: BTreeMap<(usize, String), Vec<String>> = BTreeMap::new();
        let mut settled = 0;
        for plan in &plans {
            for system in System::ALL {
                let made = Setting::new(item, plan, system).and_then(|setting| {
                    setting.question(0)?;
                    Ok(setting)
                });
                match made {
                    Ok(setting) => {
                        fits.insert(&plan.family.id);
                        settled += 1;
                        for (part, causes) in setting.harmless().dropped.iter().enumerate() {
                            for cause in causes {
                                let at = format!("{} ({})", plan.family.id, system.code());
                                dropped.entry((part, cause_name(cause))).or_default().push(at);
                            }
                        }
                    }
                    Err(error) => {
                        reasons.entry(&plan.family.id).or_insert_with(|| why(&error));
                    }
                }
            }
        }
        let file = self.assets.shown(path);
        self.notes.extend(dropped.into_iter().map(|((part, cause), places)| {
            let places = if places.len() == settled { "all families".to_owned() } else { places.join(", ") };
            let part = part_letter(part);
            format!("{file}: {} ({part}): “{cause}” makes no difference, so it is not diagnosed, in {places}", item.id)
        }));
        let span = || item.span.clone();
        let list = |reasons: &BTreeMap<&String, String>| {
            reasons.iter().map(|(family, reason)| format!("{family}: {reason}")).collect::<Vec<_>>().join("; ")
        };
        if fits.is_empty() {
            let what = format!("No family fits the item {:?}: it is never asked. {}.", item.id, list(&reasons));
            let mend = "Ask from quantities that a family determines, or let a family determine these.";
            self.say(path, text, Problem::at(span(), what, mend));
        } else if !item.families.is_empty() && !reasons.is_empty() {
            let what = format!("The item {:?} names families that do not fit it. {}.", item.id, list(&reasons));
            self.say(path, text, Problem::at(span(), what, "Take them out of its families, or mend the family."));
        }
    }

    /// Expands every block of every chapter.
    fn chapters(&mut self, bank: &Bank) {
        let pages = match course::pages(self.assets) {
            Ok(pages) => pages,
            Err(error) => {
                let what = format!("A page template cannot be used: {error:#}");
                self.say("theme/pages", "", Problem::whole(what, ""));
                return;
            }
        };
        let expander = Expander::new(CourseData { items: bank.items.clone(), plans: bank.plans.clone(), pages });
        for (path, text) in self.texts("book", ".md") {
            let name = path.strip_prefix("book/").unwrap_or(&path);
            if let Err(problems) = expander.chapter(name, &text) {
                problems.into_iter().for_each(|problem| self.say(&path, &text, problem));
            }
        }
    }

    /// Reads every exam and makes ready what it asks, in both sets of units.
    fn exams(&mut self, bank: Option<&Bank>) {
        for (path, text) in self.texts("exams/", ".toml") {
            let blueprint = match Blueprint::read(&text) {
                Ok(blueprint) => blueprint,
                Err(problems) => {
                    problems.into_iter().for_each(|problem| self.say(&path, &text, problem));
                    continue;
                }
            };
            let Some(bank) = bank else { continue };
            for system in System::ALL {
                let mut exam = blueprint.clone();
                exam.units = system;
                // No paper is drawn: any secret will do.
                match Draw::new(bank, &exam, "check", Secret::new([0; 32]), &[], Used::new()) {
                    Ok(draw) => {
                        let file = self.assets.shown(&path);
                        self.notes.extend(draw.remarks().iter().map(|remark| format!("{file}: {remark}")));
                    }
                    Err(problems) => problems.into_iter().for_each(|problem| self.say(&path, &text, problem)),
                }
            }
        }
        let mut seen = BTreeSet::new();
        self.found.retain(|found| seen.insert(found.report.clone()));
        let mut seen = BTreeSet::new();
        self.notes.retain(|note| seen.insert(note.clone()));
    }

    fn rosters(&mut self) {
        for (ending, read) in
            [(".csv", Roster::read_csv as fn(&str) -> Result<Roster, Vec<Problem>>), (".toml", Roster::read_toml)]
        {
            for (path, text) in self.texts("rosters/", ending) {
                if let Err(problems) = read(&text) {
                    problems.into_iter().for_each(|problem| self.say(&path, &text, problem));
                }
            }
        }
    }

    fn tell(&self, options: &cli::Check, bank: &Bank) -> Result<()> {
        let mut out = std::io::stdout().lock();
        let sum = self.found.len();
        if options.json {
            let problems: Vec<_> = (self.found.iter())
                .map(|found| {
                    serde_json::json!({
                        "file": found.file,
                        "line": found.place.map(|place| place.0),
                        "column": found.place.map(|place| place.1),
                        "what": found.what,
                        "mend": found.mend,
                    })
                })
                .collect();
            let all = serde_json::json!({ "problems": problems, "notes": self.notes });
            writeln!(out, "{}", serde_json::to_string_pretty(&all)?)?;
        } else {
            for found in &self.found {
                writeln!(out, "{}\n", found.report)?;
            }
            if options.all {
                self.notes.iter().try_for_each(|note| writeln!(out, "{note}"))?;
            }
            writeln!(out, "{} families, {} items read", bank.plans.len(), bank.items.len())?;
            if !self.notes.is_empty() && !options.all {
                writeln!(out, "{} notes besides; --all lists them", self.notes.len())?;
            }
        }
        match sum {
            0 => Ok(()),
            1 => bail!("1 problem was found"),
            _ => bail!("{sum} problems were found"),
        }
    }
}
