//! `check`: everything wrong with a module, in one pass.

use std::collections::{BTreeMap, BTreeSet};
use std::io::Write as _;

use anyhow::{Result, bail};
use drivecourse_course::expand::{self, CourseData, Expander};
use drivecourse_course::links;
use drivecourse_course::portray::PICTURES;
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Plan, Problem, System, did_you_mean, did_you_mean_as, messages};
use drivecourse_quiz::explain::{cause_name, part_letter};
use drivecourse_quiz::paper::why;
use drivecourse_quiz::predict::Cause;
use drivecourse_quiz::{
    Bank, Blueprint, Draw, FileProblem, Item, Roster, Secret, Setting, Used, read_items, read_skills,
};

use crate::assets::Assets;
use crate::{bank, cli, course, files, words};

messages! { pub(crate) SAYS {
    READ_ONE = "check-read-one", "1 family, {items} items read";
    READ_MORE = "check-read-more", "{families} families, {items} items read";
    ONE_NOTE = "check-one-note", "1 note besides; --all lists them";
    MORE_NOTES = "check-more-notes", "{count} notes besides; --all lists them";
} }

messages! { pub(crate) ERRORS {
    ONE_PROBLEM = "error-check-one", "1 problem was found";
    MORE_PROBLEMS = "error-check-more", "{count} problems were found";
} }

messages! { pub(crate) PROBLEMS {
    NOT_TEXT = "check-not-text", "The file is not UTF-8 text.";
    NOT_TEXT_MEND = "check-not-text-mend", "Save it as UTF-8.";
    NO_FAMILY = "check-no-family", "The item {item} names a family that is not there: {name}.";
    NO_PICTURE = "check-no-picture", "There is no picture called {name}.";
    NO_FAULT = "check-no-fault", "No family has a fault called {name}.";
    NO_FAULT_MEND = "check-no-fault-mend", "`drivecourse look FAMILY` shows what may be wrong with its machines.";
    THERE_ARE = "check-there-are", "There are {names}.";
    ALL_FAMILIES = "check-all-families", "all families";
    NO_DIFFERENCE = "check-no-difference", "{item} ({part}): with most machines “{cause}” makes no difference, and with those it is not diagnosed, in {families}";
    NO_DIFFERENCE_IN = "check-no-difference-in", "With most machines “{cause}” makes no difference, and with those it is not diagnosed, in {count} parts of questions: {places}";
    ALIKE_IN = "check-alike-in", "With most machines “{one}” and “{other}” cannot be told apart in {count} parts of questions: {places}";
    PLACE = "check-place", "{item} ({part}) in {families}";
    ALIKE = "check-alike", "{item} ({part}): with most machines “{one}” and “{other}” cannot be told apart in {families}";
    IDLE_TURN = "check-idle-turn", "This wrong turn never gives an answer of its own: it comes to the right one, or needs what no family determines.";
    IDLE_TURN_MEND = "check-idle-turn-mend", "Mend its expression, or take it out.";
    NEVER_ASKED = "check-never-asked", "No family fits the item {item}: it is never asked. {reasons}.";
    NEVER_ASKED_MEND = "check-never-asked-mend", "Ask from quantities that a family determines, or let a family determine these.";
    DO_NOT_FIT = "check-do-not-fit", "The item {item} names families that do not fit it. {reasons}.";
    DO_NOT_FIT_MEND = "check-do-not-fit-mend", "Take them out of its families, or mend the family.";
    NO_TEMPLATE = "check-no-template", "A page template cannot be used: {error}";
} }

messages! { pub(crate) NOTICES {
    NO_SUCH_SKILL = "check-no-such-skill", "This names a skill that no item has: {skill}.";
} }

/// How a roster is read.
type ReadRoster = fn(&str) -> Result<Roster, Vec<Problem>>;

/// The endings of rosters' files, and how each is read.
const ROSTERS: [(&str, ReadRoster); 2] = [(".csv", Roster::read_csv), (".toml", Roster::read_toml)];

pub(crate) fn run(options: &cli::Check, speech: &cli::Speech) -> Result<()> {
    let assets = if options.json {
        words::begin_unsaid(&options.module, speech)?
    } else {
        words::begin(&options.module, speech)?
    };
    let (bank, broken) = bank::read(&assets);
    let mut check = Check { assets: &assets, found: Vec::new(), notices: Vec::new(), notes: Vec::new() };
    let sound = broken.is_empty();
    check.found.extend(broken.into_iter().map(Found::from));
    check.families(&bank);
    // Where a family is broken, the items that need it would be reported once more; where an item is, the chapters too.
    let families_are_sound = check.found.iter().all(|found| !found.file.contains("scenarios/families/"));
    if families_are_sound {
        // The skills of items that could not be read are not known.
        let items_are_read = check.found.iter().all(|found| !found.file.contains("scenarios/items/"));
        check.items(&bank);
        let against = check.verdicts(&bank);
        check.hidden_faults(&bank, &against);
        if items_are_read {
            check.skills(&bank);
        }
    }
    check.chapters(&bank, sound);
    check.references();
    check.exams(sound.then_some(&bank));
    check.rosters();
    check.once();
    check.tell(options, &bank)
}

/// Line and column that stand after the file at the beginning of a report.
fn place_of(report: &str, file: &str) -> Option<(usize, usize)> {
    let mut parts = report.strip_prefix(file)?.strip_prefix(':')?.splitn(3, ':');
    Some((parts.next()?.parse().ok()?, parts.next()?.parse().ok()?))
}

/// Something wrong, or good to know.
pub(crate) struct Found {
    pub(crate) file: String,
    /// Line and column.
    place: Option<(usize, usize)>,
    what: String,
    mend: String,
    report: String,
    /// Of a note on wrong turns: which, and where.
    about: Option<About>,
}

/// What a note says of wrong turns of a part.
#[derive(Clone)]
struct About {
    /// One that makes no difference, or two that cannot be told apart.
    turns: Vec<String>,
    /// The part: `our-rise (a) in all families`.
    place: String,
    /// Whether the item is the module's own.
    own: bool,
}

impl From<FileProblem> for Found {
    fn from(found: FileProblem) -> Self {
        Self {
            place: place_of(&found.report, &found.file),
            file: found.file,
            what: found.problem.what,
            mend: found.problem.mend,
            report: found.report,
            about: None,
        }
    }
}

impl Found {
    /// Whether both are told of one place.
    pub(crate) fn is_at(&self, other: &Self) -> bool {
        self.file == other.file && self.place == other.place
    }

    fn json(&self) -> serde_json::Value {
        serde_json::json!({
            "file": self.file,
            "line": self.place.map(|place| place.0),
            "column": self.place.map(|place| place.1),
            "what": self.what,
            "mend": self.mend,
        })
    }
}

/// A module on the way through, and what was found.
pub(crate) struct Check<'a> {
    pub(crate) assets: &'a Assets,
    pub(crate) found: Vec<Found>,
    /// What may be meant so, and would be a fault if not: always told.
    pub(crate) notices: Vec<Found>,
    /// What is no fault, and yet good to know.
    notes: Vec<Found>,
}

impl Check<'_> {
    /// A problem in `path`, such as `scenarios/items/chain.toml`, which holds `text`.
    fn say(&mut self, path: &str, text: &str, problem: Problem) {
        let found = self.placed(path, text, problem);
        self.found.push(found);
    }

    /// What is no fault in `path`, and yet good to know.
    pub(crate) fn note(&mut self, path: &str, text: &str, problem: Problem) {
        let found = self.placed(path, text, problem);
        self.notes.push(found);
    }

    /// What may be meant so in `path`, and would be a fault if not.
    pub(crate) fn notice(&mut self, path: &str, text: &str, problem: Problem) {
        let found = self.placed(path, text, problem);
        self.notices.push(found);
    }

    pub(crate) fn placed(&self, path: &str, text: &str, problem: Problem) -> Found {
        let file = self.assets.shown(path);
        let report = problem.report(&file, text);
        Found { file, place: problem.line_column(text), what: problem.what, mend: problem.mend, report, about: None }
    }

    /// Says nothing twice: what holds in both sets of units is met once in each. What is said of a file follows its lines.
    fn once(&mut self) {
        for list in [&mut self.found, &mut self.notices, &mut self.notes] {
            let mut files: Vec<String> = Vec::new();
            for found in list.iter() {
                if !files.contains(&found.file) {
                    files.push(found.file.clone());
                }
            }
            list.sort_by_key(|found| (files.iter().position(|file| *file == found.file), found.place));
            let mut seen = BTreeSet::new();
            list.retain(|found| seen.insert(found.report.clone()));
        }
        // A chapter that shows a machine which cannot be drawn says again what is said of its family.
        let of_families = self.found.iter().filter(|found| found.file.contains("scenarios/families/"));
        let told: Vec<String> = of_families.map(|found| found.what.clone()).collect();
        let again = |found: &Found| told.iter().any(|what| what.starts_with(&found.what));
        self.found.retain(|found| found.file.contains("scenarios/families/") || !again(found));
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
                    what: NOT_TEXT.text().into(),
                    mend: NOT_TEXT_MEND.text().into(),
                    report: error.to_string(),
                    about: None,
                }),
            }
        }
        out
    }

    /// Names of skills that no item has. A skill without a name is called by its word, and that is no fault.
    fn skills(&mut self, bank: &Bank) {
        let all = bank::for_chapters(self.assets, bank.clone());
        for (path, text) in self.texts("items/", ".toml").into_iter().filter(|(path, _)| self.assets.is_own(path)) {
            for (skill, name) in read_skills(&text) {
                let known = || all.items.iter().map(|item| item.skill.as_str());
                if known().any(|known| known == skill) {
                    continue;
                }
                let mend = nearest(&skill, known()).map_or_else(String::new, did_you_mean_as);
                let problem = Problem::at(name.span(), NO_SUCH_SKILL.say(&[("skill", &skill)]), mend);
                self.say(&path, &text, problem);
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
        let unknown = item.families.iter().filter(|name| bank.plan_place(name).is_none());
        for family in unknown.clone() {
            let what = NO_FAMILY.say(&[("item", &format!("{:?}", item.id)), ("name", &format!("{family:?}"))]);
            let mend = bank::other_family(self.assets, bank, family);
            self.say(path, text, Problem::at(item.place(family), what, mend));
        }
        if let Some(figure) = &item.figure
            && let Err(mend) = picture(figure)
        {
            let what = NO_PICTURE.say(&[("name", &format!("{figure:?}"))]);
            self.say(path, text, Problem::at(item.place(figure), what, mend));
        }
        let faults = || bank.plans.iter().flat_map(|plan| &plan.family.faults).map(|fault| fault.id.as_str());
        for fault in item.faults.iter().filter(|name| *name != "none" && !faults().any(|known| known == *name)) {
            let mend = nearest(fault, faults()).map_or_else(|| NO_FAULT_MEND.text().to_owned(), did_you_mean);
            let what = NO_FAULT.say(&[("name", &format!("{fault:?}"))]);
            self.say(path, text, Problem::at(item.place(fault), what, mend));
        }
        let named = |plan: &&Plan| item.families.is_empty() || item.families.contains(&plan.family.id);
        let plans: Vec<&Plan> = bank.plans.iter().filter(named).collect();
        let (mut reasons, mut fits) = (BTreeMap::new(), BTreeSet::new());
        let mut dropped: BTreeMap<(usize, String), Vec<String>> = BTreeMap::new();
        let mut alike: BTreeMap<(usize, String, String), Vec<String>> = BTreeMap::new();
        let mut useful: BTreeSet<(usize, String)> = BTreeSet::new();
        let mut settled = 0;
        for plan in &plans {
            for system in System::ALL {
                let made = Setting::new(item, plan, system).and_then(|setting| {
                    let question = setting.question(0)?;
                    Ok((setting, question))
                });
                match made {
                    Ok((setting, question)) => {
                        fits.insert(&plan.family.id);
                        settled += 1;
                        useful.extend(own_turns(&question));
                        for (part, causes) in setting.harmless().dropped.iter().enumerate() {
                            for cause in causes {
                                let at = format!("{} ({})", plan.family.id, system.code());
                                dropped.entry((part, cause_name(cause))).or_default().push(at);
                            }
                        }
                        for (part, pairs) in setting.harmless().alike.iter().enumerate() {
                            for (one, two) in pairs {
                                let at = format!("{} ({})", plan.family.id, system.code());
                                alike.entry((part, cause_name(one), cause_name(two))).or_default().push(at);
                            }
                        }
                    }
                    Err(error) => {
                        reasons.entry(&plan.family.id).or_insert_with(|| why(&error));
                    }
                }
            }
        }
        let places = |places: Vec<String>| {
            if places.len() == settled { ALL_FAMILIES.text().to_owned() } else { places.join(", ") }
        };
        let told = |part: usize, turns: Vec<String>, at: Vec<String>| {
            let (part, at) = (part_letter(part).to_string(), places(at));
            let words = [("item", &*item.id), ("part", &part), ("families", &at)];
            let what = match turns.as_slice() {
                [one, other] => ALIKE.say(&[&words[..], &[("one", one), ("other", other)]].concat()),
                causes => NO_DIFFERENCE.say(&[&words[..], &[("cause", &causes.concat())]].concat()),
            };
            (what, About { turns, place: PLACE.say(&words), own: self.assets.is_own(path) })
        };
        let dropped = dropped.into_iter().map(|((part, cause), at)| told(part, vec![cause], at));
        let alike = alike.into_iter().map(|((part, one, two), at)| told(part, vec![one, two], at));
        for (what, about) in dropped.chain(alike).collect::<Vec<_>>() {
            let note = self.placed(path, text, Problem::at(item.span.clone(), what, ""));
            self.notes.push(Found { about: Some(about), ..note });
        }
        for (index, part) in item.parts.iter().enumerate().filter(|_| settled > 0) {
            for turn in part.wrong.iter().filter(|turn| !useful.contains(&(index, turn.says.clone()))) {
                self.say(path, text, Problem::at(turn.span.clone(), IDLE_TURN.text(), IDLE_TURN_MEND.text()));
            }
        }
        let span = || item.span.clone();
        let list = |reasons: &BTreeMap<&String, String>| {
            reasons.iter().map(|(family, reason)| format!("{family}: {reason}")).collect::<Vec<_>>().join("; ")
        };
        // Of one that is only for families that are not there, that has been said.
        if fits.is_empty() && unknown.count() < item.families.len().max(1) {
            let what = NEVER_ASKED.say(&[("item", &format!("{:?}", item.id)), ("reasons", &list(&reasons))]);
            let mend = NEVER_ASKED_MEND.text();
            // The program's own items are there to be taken or left.
            if !self.assets.is_module() || self.assets.is_own(path) {
                self.say(path, text, Problem::at(span(), what, mend));
            } else {
                self.note(path, text, Problem::at(span(), what, mend));
            }
        } else if !item.families.is_empty() && !reasons.is_empty() {
            let what = DO_NOT_FIT.say(&[("item", &format!("{:?}", item.id)), ("reasons", &list(&reasons))]);
            self.say(path, text, Problem::at(span(), what, DO_NOT_FIT_MEND.text()));
        }
    }

    /// Expands every block of every chapter; where the scenarios are not `sound`, only reads them.
    fn chapters(&mut self, bank: &Bank, sound: bool) {
        if !sound {
            for (path, text) in self.texts("book", ".md") {
                expand::unreadable(&text).into_iter().for_each(|problem| self.say(&path, &text, problem));
            }
            return;
        }
        let pages = match course::pages(self.assets) {
            Ok(pages) => pages,
            Err(error) => {
                let what = NO_TEMPLATE.say(&[("error", &format!("{error:#}"))]);
                self.say("theme/pages", "", Problem::whole(what, ""));
                return;
            }
        };
        let all = bank::for_chapters(self.assets, bank.clone());
        let expander = Expander::new(CourseData { items: all.items, plans: all.plans, pages });
        for (path, text) in self.texts("book", ".md") {
            let name = path.strip_prefix("book/").unwrap_or(&path);
            if let Err(problems) = expander.chapter(name, &text) {
                problems.into_iter().for_each(|problem| self.say(&path, &text, problem));
            }
        }
    }

    /// Follows the links and pictures of every chapter, and looks for its cautions.
    fn references(&mut self) {
        let assets = self.assets;
        let names: Vec<&str> = assets.book.keys().map(String::as_str).collect();
        let file = |path: &str| {
            let bytes = assets.book.get(path)?;
            let is_chapter = path.ends_with(".md");
            Some(if is_chapter { String::from_utf8_lossy(bytes).into_owned() } else { String::new() })
        };
        for (path, text) in self.texts("book", ".md") {
            let name = path.strip_prefix("book/").unwrap_or(&path);
            // Links to chapters that a module leaves out are taken out of the program's own.
            let standard = !assets.is_own(&path) && assets.is_own("book/SUMMARY.md");
            for problem in links::problems(&text, name, file, assets.left_out(), &names, standard) {
                self.say(&path, &text, problem);
            }
        }
    }

    /// Reads every exam and makes ready what it asks, in both sets of units.
    fn exams(&mut self, bank: Option<&Bank>) {
        let alone = self.alone();
        for (path, text) in self.texts("exams/", ".toml") {
            let own = !self.assets.is_module() || self.assets.is_own(&path);
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
                    Ok(mut draw) => {
                        for remark in draw.remarks() {
                            self.note(&path, &text, Problem::whole(remark, ""));
                        }
                        for narrow in if own && !alone { draw.narrow() } else { Vec::new() } {
                            self.notice(&path, &text, narrow);
                        }
                    }
                    Err(problems) => {
                        for mut problem in problems {
                            // What the program has besides is known here only.
                            let names = exam.families.iter().flatten().zip(&exam.family_spans);
                            let mut unknown = names.filter(|(name, _)| bank.plan_place(name).is_none());
                            if let Some((name, _)) = unknown.find(|(_, span)| problem.span.as_ref() == Some(span)) {
                                problem.mend = bank::other_family(self.assets, bank, name);
                            }
                            self.say(&path, &text, problem);
                        }
                    }
                }
            }
        }
    }

    /// Whether the module's exams are for one person: it has rosters, and nobody beside anybody on them.
    fn alone(&mut self) -> bool {
        let mut sizes = Vec::new();
        for (ending, read) in ROSTERS {
            let rosters = self.texts("rosters/", ending).into_iter().filter(|(path, _)| self.assets.is_own(path));
            sizes.extend(rosters.filter_map(|(_, text)| Some(read(&text).ok()?.people.len())));
        }
        !sizes.is_empty() && sizes.iter().all(|size| *size < 2)
    }

    fn rosters(&mut self) {
        for (ending, read) in ROSTERS {
            for (path, text) in self.texts("rosters/", ending) {
                if let Err(problems) = read(&text) {
                    problems.into_iter().for_each(|problem| self.say(&path, &text, problem));
                }
            }
        }
    }

    /// The notes as people read them: those on the same wrong turns are one, and what is said of own items comes first, in a
    /// note as among them.
    fn grouped(&self) -> Vec<String> {
        let mut notes: Vec<(bool, Vec<&Found>)> = Vec::new();
        let mut of_turns: BTreeMap<Vec<String>, usize> = BTreeMap::new();
        for note in &self.notes {
            let own = note.about.as_ref().is_some_and(|about| about.own);
            // A pair is the same one whichever of the two comes first.
            let known = note.about.as_ref().map(|about| {
                let mut turns = about.turns.clone();
                turns.sort_unstable();
                *of_turns.entry(turns).or_insert(notes.len())
            });
            match known.and_then(|place| notes.get_mut(place)) {
                Some((any_own, alike)) => {
                    *any_own |= own;
                    alike.push(note);
                }
                None => notes.push((own, vec![note])),
            }
        }
        notes.sort_by_key(|(own, _)| !own);
        let told = |alike: &mut Vec<&Found>| {
            alike.sort_by_key(|note| note.about.as_ref().is_some_and(|about| !about.own));
            let first = alike[0];
            let Some(About { turns, .. }) = first.about.as_ref().filter(|_| alike.len() > 1) else {
                return first.report.clone();
            };
            let places: Vec<&str> = alike.iter().filter_map(|note| Some(note.about.as_ref()?.place.as_str())).collect();
            let (count, places) = (alike.len().to_string(), places.join("; "));
            let words = [("count", count.as_str()), ("places", &places)];
            let what = match turns.as_slice() {
                [one, other] => ALIKE_IN.say(&[&words[..], &[("one", one), ("other", other)]].concat()),
                causes => NO_DIFFERENCE_IN.say(&[&words[..], &[("cause", &causes.concat())]].concat()),
            };
            // What is said of one part alone is said of all.
            first.report.replacen(&first.what, &what, 1)
        };
        notes.iter_mut().map(|(_, alike)| told(alike)).collect()
    }

    fn tell(&self, options: &cli::Check, bank: &Bank) -> Result<()> {
        let mut out = std::io::stdout().lock();
        let sum = self.found.len();
        if options.json {
            let list = |found: &[Found]| found.iter().map(Found::json).collect::<Vec<_>>();
            let notices = self.notices.iter().chain(&self.notes).map(Found::json).collect::<Vec<_>>();
            let all = serde_json::json!({ "problems": list(&self.found), "notes": notices });
            writeln!(out, "{}", serde_json::to_string_pretty(&all)?)?;
        } else {
            let notes = self.grouped();
            for found in &self.found {
                writeln!(out, "{}\n", found.report)?;
            }
            self.notices.iter().try_for_each(|notice| writeln!(out, "{}\n", notice.report))?;
            if options.all {
                for item in &bank.items {
                    writeln!(out, "{:<28} {:<8} {:<24} {}", item.id, item.topic, item.skill, item.title)?;
                }
                writeln!(out)?;
                notes.iter().try_for_each(|note| writeln!(out, "{note}"))?;
            }
            let read = if bank.plans.len() == 1 { READ_ONE } else { READ_MORE };
            let (families, items) = (bank.plans.len().to_string(), bank.items.len().to_string());
            writeln!(out, "{}", read.say(&[("families", &families), ("items", &items)]))?;
            if !notes.is_empty() && !options.all {
                let besides = if notes.len() == 1 { ONE_NOTE } else { MORE_NOTES };
                writeln!(out, "{}", besides.say(&[("count", &notes.len().to_string())]))?;
            }
        }
        match sum {
            0 => Ok(()),
            1 => bail!(ONE_PROBLEM.text()),
            _ => bail!(MORE_PROBLEMS.say(&[("count", &sum.to_string())])),
        }
    }
}

/// Whether there is such a picture; if not, how to mend its name. The part behind a space says which reading it shows.
fn picture(name: &str) -> Result<(), String> {
    let name = name.split(' ').next().unwrap_or_default();
    if PICTURES.contains(&name) {
        return Ok(());
    }
    Err(match nearest(name, PICTURES.into_iter()) {
        Some(near) => did_you_mean(near),
        None => THERE_ARE.say(&[("names", &PICTURES.join(", "))]),
    })
}

/// The author's own wrong turns that `question` foresees, by part and by what they say.
fn own_turns(question: &drivecourse_quiz::Question) -> Vec<(usize, String)> {
    let mut out = Vec::new();
    for (index, part) in question.parts.iter().enumerate() {
        if let drivecourse_quiz::Body::Quantity { predicted, .. } = &part.body {
            for wrong in predicted {
                if let Cause::Own { says } = &wrong.cause {
                    out.push((index, says.clone()));
                }
            }
        }
    }
    out
}
