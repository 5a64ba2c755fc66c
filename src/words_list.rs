//! `words`: the list of everything that a translator works on, and how much of what papers say has no translation.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;

use anyhow::{Result, bail};
use drivecourse_course::card;
use drivecourse_course::words::{self as fluent, ENGLISH};
use drivecourse_machine::language::{self, Message};
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{messages, words as registry};
use drivecourse_quiz::explain::{name_skills, skill_as_written, skill_id};

use crate::assets::Assets;
use crate::words::{self, foreseen, load, read, skills, take_on};
use crate::words_scenarios::Native;
use crate::{
    assets, bank, check, check_chapters, check_doubts, check_families, check_follows, check_found, check_items,
    check_never, check_turns, check_verdicts, cli, course, demo, enter, files, grade, help, look, manual, new,
    own_family, papers, papers_alike, pdf, practise, record, report_words, schema, serve, sold_sizes, solve, spread,
    undrawable, usage, words_scenarios as scenarios,
};

messages! { pub(crate) SAYS {
    // What the groups of the list hold.
    ANSWERS = "words-answers", "how an answer is read, and what is said of it";
    BROWSER = "words-browser", "practice and progress in the browser";
    PICTURES = "words-pictures", "cards and pictures";
    PAPERS = "words-papers", "papers, keys, results, reference tables";
    REPORTS = "words-reports", "reports from the records";
    COMMANDS = "words-commands", "what commands say in the terminal";
    HELP = "words-help", "help texts, by command and argument";
    CANNOT = "words-errors", "what commands cannot do, and how to mend it";
    PROBLEMS = "words-problems", "what cannot be used in a file, and how to mend it";
    SKILLS = "words-skills", "what items practise";
    REGISTRY = "words-registry", "quantities, relations, their sources and wrong turns";
    FAMILIES = "words-families", "machines and what may be wrong with them";
    ITEMS = "words-items", "questions";
    EXAMS = "words-exams", "titles of exams";
    NOT_TRANSLATED = "words-not-translated", "{count} of {all} texts are not translated.";
} }

messages! { pub(crate) ERRORS {
    NO_SUCH_TEXT = "error-no-such-text", "no text has {word} in its id; {mend}";
    LISTS_ALL = "error-words-lists-all", "`drivecourse words` lists them all";
} }

/// One text that can be translated.
pub(crate) struct Entry {
    /// `message` or `message.attribute`.
    pub(crate) id: String,
    /// In English.
    pub(crate) english: String,
    /// What a translator should know of it.
    pub(crate) about: String,
}

impl Entry {
    pub(crate) fn new(id: impl Into<String>, english: impl Into<String>) -> Self {
        Self { id: id.into(), english: english.into(), about: String::new() }
    }
}

/// What is listed together, under a heading.
struct Group {
    name: &'static str,
    heading: Message,
    entries: Vec<Entry>,
}

pub(crate) fn run(options: &cli::Words, speech: &cli::Speech) -> Result<()> {
    // What is listed is English, so it is gathered before any language is taken on; only the remarks on it are in that.
    let folder = options.module.folder();
    let assets = load(folder.as_deref(), speech)?;
    options.module.announce();
    name_skills(skills(&assets, true));
    let known = match speech.language.as_deref().filter(|code| *code != ENGLISH) {
        Some(code) => Some(read(&assets, code, false)?),
        None => None,
    };
    let (groups, interface) = (groups(&assets)?, interface(&assets)?);
    if let Some(words) = known.clone().or_else(|| foreseen(folder.as_deref(), speech)) {
        take_on(&words)?;
    }
    if known.is_none() && options.missing {
        bail!(words::WHICH_LANGUAGE.text());
    }
    let translated = |id: &str| known.as_ref().is_some_and(|words| words.places().contains_key(id));
    let mut out = String::new();
    if let Some(word) = &options.only {
        let of_interface = read(&assets, ENGLISH, false)?;
        let ids = (groups.iter().flat_map(|group| &group.entries).map(|entry| entry.id.as_str()))
            .chain(of_interface.places().keys().map(String::as_str));
        is_there(word, ids)?;
    }
    if !options.missing {
        let word = options.only.as_deref();
        out.extend(interface.iter().filter_map(|(path, text)| {
            let text = word.map_or_else(|| text.clone(), |word| with_ids(text, word));
            (!text.is_empty()).then(|| format!("\n# theme/{path}\n\n{text}"))
        }));
    }
    let (mut all, mut missing) = (0, 0);
    for group in groups {
        let wanted = |entry: &&Entry| options.only.as_ref().is_none_or(|word| entry.id.contains(word.as_str()));
        let entries: Vec<&Entry> = group.entries.iter().filter(wanted).collect();
        all += entries.len();
        let shown: Vec<&Entry> =
            entries.into_iter().filter(|entry| !options.missing || !translated(&entry.id)).collect();
        missing += shown.len();
        if !shown.is_empty() {
            let _ = write!(out, "\n### {}: {}\n", group.name, group.heading.text());
            write_entries(&mut out, &shown);
        }
    }
    if options.missing {
        let (count, all) = (missing.to_string(), all.to_string());
        let _ = write!(out, "\n# {}\n", NOT_TRANSLATED.say(&[("count", &count), ("all", &all)]));
    }
    match &options.out {
        Some(file) => files::write(file, out.trim_start().as_bytes()),
        None => files::say(out.trim()),
    }
}

/// The interface's words as they stand in their files, by the path of each.
fn interface(assets: &Assets) -> Result<Vec<(&str, String)>> {
    let files = assets.theme.iter().filter(|(path, _)| path.starts_with("words/en/"));
    files.map(|(path, bytes)| Ok((path.as_str(), files::text(path, bytes.clone())?))).collect()
}

/// The messages of a Fluent file whose ids hold `word`, with the lines that belong to each.
fn with_ids(text: &str, word: &str) -> String {
    let (mut out, mut wanted) = (String::new(), false);
    for line in text.lines() {
        // What belongs to a message is indented under it.
        if !line.starts_with(' ') {
            wanted = !line.starts_with('#') && line.split_once(" =").is_some_and(|(id, _)| id.contains(word));
        }
        if wanted {
            out.push_str(&format!("{line}\n"));
        }
    }
    out
}

/// Says which of `ids` is meant by `word`, where none of them holds it.
fn is_there<'a>(word: &str, ids: impl Iterator<Item = &'a str> + Clone) -> Result<()> {
    if ids.clone().any(|id| id.contains(word)) {
        return Ok(());
    }
    // A word of one part may be a slip for one part of an id, and so on.
    let parted = |c: char| matches!(c, '-' | '.');
    let count = word.split(parted).count();
    let parts = ids.clone().flat_map(|id| {
        let starts = std::iter::once(0).chain(id.match_indices(parted).map(|(at, _)| at + 1));
        starts.filter_map(move |start| {
            let end = id[start..].match_indices(parted).nth(count - 1).map_or(id.len(), |(at, _)| start + at);
            (id[start..end].split(parted).count() == count).then(|| &id[start..end])
        })
    });
    let near = nearest(word, ids.chain(parts));
    let mend = match near {
        Some(near) => words::MEANT.say(&[("name", &format!("{near:?}"))]),
        None => LISTS_ALL.text().to_owned(),
    };
    bail!(NO_SUCH_TEXT.say(&[("word", &format!("{word:?}")), ("mend", &mend)]))
}

/// Messages in the order of the list, attributes under their message.
fn write_entries(out: &mut String, entries: &[&Entry]) {
    let mut open = String::new();
    for entry in entries {
        let (message, attribute) = entry.id.split_once('.').map_or((entry.id.as_str(), None), |(m, a)| (m, Some(a)));
        if message != open {
            out.push('\n');
            if !entry.about.is_empty() {
                let _ = writeln!(out, "# {}", entry.about);
            }
            // A message of which only an attribute is listed has no value of its own.
            if attribute.is_some() {
                let _ = writeln!(out, "{message} =");
            }
            message.clone_into(&mut open);
        }
        let id = attribute.map_or_else(|| message.to_owned(), |attribute| format!(".{attribute}"));
        let _ = writeln!(out, "{}", fluent::written(&id, &entry.english));
    }
}

/// Everything that is said besides the interface's words: by the code, the registry, the families and the items.
fn groups(files: &Assets) -> Result<Vec<Group>> {
    let said = |messages: Vec<Message>| -> Vec<Entry> {
        messages.into_iter().map(|message| Entry::new(message.id, message.english)).collect()
    };
    let answers = [language::messages(), drivecourse_quiz::messages()].concat();
    let papers = [drivecourse_quiz::paper_messages(), card::messages()].concat();
    let commands = [
        course::SAYS,
        papers::SAYS,
        papers_alike::SAYS,
        grade::SAYS,
        enter::SAYS,
        demo::SAYS,
        bank::SAYS,
        check_families::SAYS,
        check_verdicts::SAYS,
        own_family::SAYS,
        check_doubts::SAYS,
        check_follows::SAYS,
        check_never::SAYS,
        undrawable::SAYS,
        sold_sizes::SAYS,
        record::REFUSALS,
        look::SAYS,
        spread::SAYS,
        solve::SAYS,
        practise::SAYS,
        cli::SAYS,
        record::SAYS,
        new::SAYS,
        check_found::SAYS,
        serve::SAYS,
        schema::SAYS,
        SAYS,
        manual::SAYS,
    ]
    .concat();
    let errors = [
        usage::ERRORS,
        files::ERRORS,
        assets::ERRORS,
        bank::ERRORS,
        papers::ERRORS,
        pdf::ERRORS,
        grade::ERRORS,
        enter::ERRORS,
        record::ERRORS,
        demo::ERRORS,
        look::ERRORS,
        practise::ERRORS,
        solve::ERRORS,
        new::ERRORS,
        check_found::ERRORS,
        check::PROBLEMS,
        check_chapters::SAYS,
        check_items::SAYS,
        check_turns::SAYS,
        serve::ERRORS,
        schema::ERRORS,
        words::ERRORS,
        ERRORS,
    ]
    .concat();
    let problems = [
        language::author_messages(),
        drivecourse_quiz::author_messages(),
        drivecourse_course::author_messages(),
        drivecourse_records::author_messages(),
    ]
    .concat();
    let exams = scenarios::of_exams(files)?;
    let registry = registry::texts().into_iter();
    let registry = registry.map(|text| Entry { id: text.id, english: text.english.to_owned(), about: text.about });
    let bank = bank::for_chapters(files, bank::load(files)?);
    let mut skills: BTreeMap<String, String> = BTreeMap::new();
    for item in &bank.items {
        skills.insert(skill_id(&item.skill), skill_as_written(&item.skill));
    }
    let skills = skills.into_iter().map(|(id, name)| Entry::new(id, name)).collect();
    let group = |name, heading, entries| Group { name, heading, entries };
    Ok(vec![
        group("answers", ANSWERS, said(answers)),
        group("browser", BROWSER, said(drivecourse_browser::messages())),
        group("pictures", PICTURES, said(drivecourse_course::messages())),
        group("papers", PAPERS, said(papers)),
        group("reports", REPORTS, said([report_words::SAYS, &drivecourse_records::messages()].concat())),
        group("commands", COMMANDS, said(commands)),
        group("help", HELP, help::entries()),
        group("errors", CANNOT, said(errors)),
        group("problems", PROBLEMS, said(problems)),
        group("skills", SKILLS, skills),
        group("registry", REGISTRY, registry.collect()),
        group("families", FAMILIES, scenarios::of_families(&bank)),
        group("items", ITEMS, scenarios::of_items(&bank)),
        group("exams", EXAMS, exams),
    ])
}

/// How many texts of papers, keys and results have no translation.
pub(crate) struct Lacking {
    pub(crate) count: usize,
    /// Of how many.
    pub(crate) all: usize,
}

/// What is lacking of the messages `met` (of items, families, quantities, relations) and of whatever else papers, keys and
/// results say; nothing where English is spoken.
pub(crate) fn lacking(assets: &Assets, met: &BTreeSet<String>) -> Result<Option<Lacking>> {
    /// Begin the messages of templates of pages that no exam has.
    const ELSEWHERE: [&str; 5] = ["course-", "frame-", "script-", "card-", "reference-"];
    let tag = assets.words.code();
    if tag == ENGLISH {
        return Ok(None);
    }
    let mut ids: BTreeSet<String> = read(assets, ENGLISH, false)?.places().keys().cloned().collect();
    ids.retain(|id| !ELSEWHERE.iter().any(|start| id.starts_with(start)));
    let native = Native::of(assets, tag);
    let mut translated = 0;
    for Group { name, entries, .. } in groups(assets)? {
        for entry in entries {
            let message = entry.id.split('.').next().unwrap_or_default();
            // Hints and limits stand on practice cards only, and what a family is about nowhere but in lists.
            let shown = met.contains(message)
                && !(entry.id.contains("-hint-") || entry.id.ends_with(".limits") || entry.id.ends_with(".about"));
            if shown || matches!(name, "answers" | "pictures" | "papers") {
                ids.insert(entry.id);
            }
        }
    }
    for id in &ids {
        translated += usize::from(assets.words.places().contains_key(id) || native.has_message(id));
    }
    Ok(Some(Lacking { count: ids.len() - translated, all: ids.len() }))
}
