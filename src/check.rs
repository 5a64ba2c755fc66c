//! `check`: everything wrong with a module, in one pass.

use anyhow::Result;
use drivecourse_course::book;
use drivecourse_course::links;
use drivecourse_machine::{Problem, System, messages};
use drivecourse_quiz::{Bank, Blueprint, Draw, Roster, Secret, Used};

use crate::assets::Assets;
use crate::check_found::Found;
use crate::{bank, cli, files, words};

messages! { pub(crate) PROBLEMS {
    UNLISTED = "check-unlisted", "The chapter {file} is not in this list, so it is not in the course.";
    UNLISTED_MEND = "check-unlisted-mend", "Add a line such as this one, or take the file out:\n- [{title}]({file})";
    NOT_TEXT = "check-not-text", "The file is not UTF-8 text.";
    NOT_TEXT_MEND = "check-not-text-mend", "Save it as UTF-8.";
    THERE_ARE = "check-there-are", "There are {names}.";
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
    let mut check =
        Check { assets: &assets, found: Vec::new(), notices: Vec::new(), notes: Vec::new(), swapped: Vec::new() };
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
    check.chapters(&bank, sound, families_are_sound);
    check.list();
    check.references();
    check.exams(sound.then_some(&bank));
    check.rosters();
    check.once();
    check.tell(options, &bank)
}

/// A module on the way through, and what was found.
pub(crate) struct Check<'a> {
    pub(crate) assets: &'a Assets,
    pub(crate) found: Vec<Found>,
    /// What may be meant so, and would be a fault if not: always told.
    pub(crate) notices: Vec<Found>,
    /// What is no fault, and yet good to know.
    pub(crate) notes: Vec<Found>,
    /// Families of which no machine can be drawn because the ends of a window are swapped, which is told instead.
    pub(crate) swapped: Vec<String>,
}

impl Check<'_> {
    /// A problem in `path`, such as `scenarios/items/chain.toml`, which holds `text`.
    pub(crate) fn say(&mut self, path: &str, text: &str, problem: Problem) {
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

    /// The files below `folder` with this ending, as text.
    pub(crate) fn texts(&mut self, folder: &str, ending: &str) -> Vec<(String, String)> {
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

    /// Reads the list of chapters, and looks for chapters of the module's own that it lacks.
    fn list(&mut self) {
        const LIST: &str = "book/SUMMARY.md";
        let texts = self.texts("book", ".md");
        let Some((_, list)) = texts.iter().find(|(path, _)| path == LIST) else { return };
        let problems = book::summary_problems(list);
        let is_sound = problems.is_empty();
        problems.into_iter().for_each(|problem| self.say(LIST, list, problem));
        let listed = links::links(list, "SUMMARY.md");
        for (path, text) in texts.iter().filter(|(path, _)| is_sound && path != LIST && self.assets.is_own(path)) {
            let file = path.strip_prefix("book/").unwrap_or(path);
            if listed.iter().any(|link| link.path == file) {
                continue;
            }
            let heading = text.lines().find_map(|line| line.strip_prefix("# "));
            let title = heading.map_or_else(|| file.trim_end_matches(".md"), str::trim);
            let mend = UNLISTED_MEND.say(&[("title", title), ("file", file)]);
            self.notice(LIST, list, Problem::whole(UNLISTED.say(&[("file", file)]), mend));
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
            for doubt in if own { Blueprint::doubts(&text) } else { Vec::new() } {
                self.notice(&path, &text, doubt);
            }
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
                } else if ending == ".csv" {
                    Roster::doubts(&text).into_iter().for_each(|doubt| self.notice(&path, &text, doubt));
                }
            }
        }
    }
}
