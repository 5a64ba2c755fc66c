//! How `check` tells what it found: each thing once, in the order of the files' lines, notes on the same wrong turns as one.

use std::collections::{BTreeMap, BTreeSet};
use std::io::Write as _;

use anyhow::{Result, bail};
use drivecourse_machine::{messages, quoted};
use drivecourse_quiz::{Bank, FileProblem};

use crate::check::Check;
use crate::cli;

messages! { pub(crate) SAYS {
    READ_ONE = "check-read-one", "1 family, {items} items read";
    READ_MORE = "check-read-more", "{families} families, {items} items read";
    ONE_NOTE = "check-one-note", "1 note besides, which is no fault; --all lists it";
    MORE_NOTES = "check-more-notes", "{count} notes besides, which are no faults; --all lists them";
    NO_DIFFERENCE_IN = "check-no-difference-in", "With most machines “{cause}” makes no difference, and with those it is not diagnosed, in {count} parts of questions: {places}";
    ALIKE_OWN_IN = "check-alike-own-in", "With most machines these {alike} wrong turns come to one answer, in {count} parts of questions: {places}:";
    ALIKE_IN = "check-alike-in", "With most machines “{one}” and “{other}” cannot be told apart in {count} parts of questions: {places}";
} }

messages! { pub(crate) ERRORS {
    ONE_PROBLEM = "error-check-one", "1 problem was found";
    MORE_PROBLEMS = "error-check-more", "{count} problems were found";
} }

/// Line and column that stand after the file at the beginning of a report.
fn place_of(report: &str, file: &str) -> Option<(usize, usize)> {
    let mut parts = report.strip_prefix(file)?.strip_prefix(':')?.splitn(3, ':');
    Some((parts.next()?.parse().ok()?, parts.next()?.parse().ok()?))
}

/// Something wrong, or good to know.
pub(crate) struct Found {
    pub(crate) file: String,
    /// Line and column.
    pub(crate) place: Option<(usize, usize)>,
    pub(crate) what: String,
    pub(crate) mend: String,
    pub(crate) report: String,
    /// Of a note on wrong turns: which, and where.
    pub(crate) about: Option<About>,
}

/// What a note says of wrong turns of a part.
#[derive(Clone)]
pub(crate) struct About {
    /// One that makes no difference, or two that cannot be told apart.
    pub(crate) turns: Vec<String>,
    /// The part: `our-rise (a) in all families`.
    pub(crate) place: String,
    /// Whether the item is the module's own.
    pub(crate) own: bool,
    /// What people are told of each, a line each, where an author reads it rather than their names.
    pub(crate) lines: Vec<String>,
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

impl Check<'_> {
    /// Says nothing twice: what holds in both sets of units is met once in each. What is said of a file follows its lines.
    pub(crate) fn once(&mut self) {
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
        // A chapter that shows a machine which cannot be drawn, and an exam that asks about it, say again what is said of its
        // family: that of this family no machine could be drawn.
        let of_families = self.found.iter().filter(|found| found.file.contains("scenarios/families/"));
        let told: Vec<String> = of_families.map(|found| found.what.clone()).collect();
        let beginning = |what: &String| {
            let id = what.split('"').nth(1)?;
            let end = what.find(&quoted(id))? + quoted(id).len();
            Some(what[..end].to_owned())
        };
        let of_none: Vec<String> = told.iter().filter_map(beginning).chain(self.swapped.iter().cloned()).collect();
        let again = |found: &Found| {
            told.iter().any(|what| what.starts_with(&found.what))
                || of_none.iter().any(|none| found.what.contains(none) || found.mend.contains(none))
        };
        self.found.retain(|found| found.file.contains("scenarios/families/") || !again(found));
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
            let Some(About { turns, lines, .. }) = first.about.as_ref().filter(|_| alike.len() > 1) else {
                return first.report.clone();
            };
            let places: Vec<&str> = alike.iter().filter_map(|note| Some(note.about.as_ref()?.place.as_str())).collect();
            let (count, places) = (alike.len().to_string(), places.join("; "));
            let words = [("count", count.as_str()), ("places", &places)];
            let what = match turns.as_slice() {
                _ if !lines.is_empty() => {
                    let alike = lines.len().to_string();
                    format!("{}\n{}", ALIKE_OWN_IN.say(&[&words[..], &[("alike", &alike)]].concat()), lines.join("\n"))
                }
                [one, other] => ALIKE_IN.say(&[&words[..], &[("one", one), ("other", other)]].concat()),
                causes => NO_DIFFERENCE_IN.say(&[&words[..], &[("cause", &causes.concat())]].concat()),
            };
            // What is said of one part alone is said of all.
            first.report.replacen(&first.what, &what, 1)
        };
        notes.iter_mut().map(|(_, alike)| told(alike)).collect()
    }

    pub(crate) fn tell(&self, options: &cli::Check, bank: &Bank) -> Result<()> {
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
