//! The words of a run: which language is spoken, and `words`, the list of everything that a translator works on.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::path::Path;
use std::sync::Arc;

use anyhow::{Result, anyhow, bail};
use drivecourse_course::card;
use drivecourse_course::words::{self as fluent, ENGLISH, Words};
use drivecourse_machine::language::{self, Language, Message};
use drivecourse_machine::{Problem, messages, words as registry};
use drivecourse_quiz::Exam;
use drivecourse_quiz::exam::Spoken;
use drivecourse_quiz::explain::{SkillName, name_skills, skill_as_written, skill_id};
use drivecourse_quiz::read_skills;
use serde::Deserialize;
use sha2::{Digest, Sha256};

use crate::assets::Assets;
use crate::{
    assets, bank, check, check_causes, check_chapters, check_doubts, check_families, check_follows, check_found,
    check_items, check_never, check_verdicts, cli, course, demo, enter, files, grade, help, look, manual, new, papers,
    papers_alike, pdf, practise, record, report_words, schema, serve, solve, spread, undrawable, usage,
    words_scenarios as scenarios,
};

pub(crate) use crate::words_scenarios::{Native, translate};

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
    HAS_CHANGED = "error-language-changed", "the language has changed from {before} to {after}: end this run and begin another";
    NO_SUCH_LANGUAGE = "error-module-language", "There are no words for the language {code}.";
    LANGUAGES = "error-module-language-mend", "There are words for {codes}; English needs no line. For another one, put files theme/words/{code}/*.ftl into the module.";
    CANNOT_BE_USED = "error-words", "the words cannot be used:\n{problems}";
    WHICH_LANGUAGE = "error-which-language", "say which language: --missing --language de";
    /// After a name that is not there.
    MEANT = "error-did-you-mean", "did you mean {name}?";
} }

/// The files of a module with the language that is spoken: the one asked for, else the module's.
///
/// # Errors
/// When the files cannot be read, there are no such words, or they cannot be used.
pub(crate) fn begin(options: &cli::Module, speech: &cli::Speech) -> Result<Assets> {
    Ok(begin_with(options, speech, |_| Ok(((), None)))?.1)
}

/// As [`begin`], in the language of the exam recorded at `path` where none is asked for.
pub(crate) fn begin_exam(options: &cli::Module, speech: &cli::Speech, path: &Path) -> Result<(Exam, Assets)> {
    begin_with(options, speech, |_| {
        let exam = papers::read_record(path)?;
        let tag = exam.language.as_ref().map(|language| language.tag.clone());
        Ok((exam, tag))
    })
}

/// As [`begin`], where `first` is read to know the language; it goes before the module's.
pub(crate) fn begin_with<T>(
    options: &cli::Module,
    speech: &cli::Speech,
    first: impl Fn(&Assets) -> Result<(T, Option<String>)>,
) -> Result<(T, Assets)> {
    let begun = begin_in(options.folder().as_deref(), speech, first);
    options.announce();
    begun
}

/// As [`begin`], of the program's own files alone; a module in this folder says no more than the language.
pub(crate) fn begin_built_in(speech: &cli::Speech) -> Result<Assets> {
    Ok(begin_built_in_with(speech, || Ok(((), None)))?.1)
}

/// As [`begin_built_in`], where `first` is read to know the language. One that the program has no words for is English
/// where nobody asked for it: what is read here needs no words.
pub(crate) fn begin_built_in_with<T>(
    speech: &cli::Speech,
    first: impl Fn() -> Result<(T, Option<String>)>,
) -> Result<(T, Assets)> {
    let folder = cli::Module::new(None).folder();
    let (known, exam) = match first() {
        Err(_) if speaks(folder.as_deref(), speech) => first()?,
        read => read?,
    };
    if speech.language.is_some() {
        return Ok((known, begin_in(None, speech, |_| Ok(((), None)))?.1));
    }
    let mut assets = Assets::load(None)?;
    name_skills(skills(&assets, false));
    if let Some(words) = foreseen(folder.as_deref(), &cli::Speech { language: exam, ..speech.clone() }) {
        take_on(&words)?;
        assets.speak(words, false);
    }
    Ok((known, assets))
}

/// As [`begin`], but what the code says stays English: for programs that read it.
pub(crate) fn begin_unsaid(options: &cli::Module, speech: &cli::Speech) -> Result<Assets> {
    let mut assets = load(options.folder().as_deref(), speech)?;
    options.announce();
    let wanted = speech.language.clone().or_else(|| of_module(&assets));
    let code = wanted.unwrap_or_else(|| ENGLISH.to_owned());
    if speech.language.is_none() {
        has_words(&assets, &code)?;
    }
    let (words, native) = (read(&assets, &code, speech.mark_untranslated)?, is_native(&assets, &code));
    assets.speak(words, native);
    Ok(assets)
}

/// As [`begin_with`], of the module in `folder`.
fn begin_in<T>(
    folder: Option<&Path>,
    speech: &cli::Speech,
    first: impl Fn(&Assets) -> Result<(T, Option<String>)>,
) -> Result<(T, Assets)> {
    let mut assets = load(folder, speech)?;
    let (known, exam) = match first(&assets) {
        Err(_) if speaks(folder, speech) => first(&assets)?,
        read => read?,
    };
    let wanted = speech.language.clone().or(exam).or_else(|| of_module(&assets));
    let code = wanted.unwrap_or_else(|| ENGLISH.to_owned());
    if speech.language.is_none() {
        has_words(&assets, &code)?;
    }
    let words = read(&assets, &code, speech.mark_untranslated)?;
    let native = is_native(&assets, &code);
    name_skills(skills(&assets, native));
    take_on(&words)?;
    assets.speak(words, native);
    Ok((known, assets))
}

/// The files of the module in `folder`.
fn load(folder: Option<&Path>, speech: &cli::Speech) -> Result<Assets> {
    match Assets::load(folder) {
        Err(_) if speaks(folder, speech) => Assets::load(folder),
        loaded => loaded,
    }
}

/// Takes on the language foreseen, where something has failed before the language was known: what failed is then tried
/// once more, to be told of it in that language. Whether there is one other than English.
fn speaks(folder: Option<&Path>, speech: &cli::Speech) -> bool {
    foreseen(folder, speech).is_some_and(|words| take_on(&words).is_ok())
}

/// The words of the language that a run will most likely speak: the one asked for, else the module's; `None` for English
/// and where there are no such words.
pub(crate) fn foreseen(folder: Option<&Path>, speech: &cli::Speech) -> Option<Arc<Words>> {
    if folder.is_none() && speech.language.is_none() {
        return None;
    }
    let own = folder.and_then(|folder| Assets::load(Some(folder)).ok());
    let assets = own.map_or_else(|| Assets::load(None), Ok).ok()?;
    let code = speech.language.clone().or_else(|| of_module(&assets)).filter(|code| code != ENGLISH)?;
    read(&assets, &code, speech.mark_untranslated).ok()
}

/// Speaks the language of `words` from now on.
///
/// # Errors
/// Where another one is spoken already.
pub(crate) fn take_on(words: &Words) -> Result<()> {
    let code = words.code();
    if code != ENGLISH {
        let spoken = Language::new(code, words.decimal_mark(), words.texts(), words.are_marked());
        if language::speak(spoken).is_err() && language::code() != code {
            bail!(HAS_CHANGED.say(&[("before", language::code()), ("after", code)]));
        }
    }
    Ok(())
}

/// What skills are called: as the program's items say, and before that as the module's own do.
fn skills(assets: &Assets, native: bool) -> BTreeMap<String, SkillName> {
    let mut out = BTreeMap::new();
    let is_own = |path: &str| assets.is_own(&format!("scenarios/{path}"));
    let of_items = |(path, _): &(&String, &Vec<u8>)| path.starts_with("items/") && path.ends_with(".toml");
    let (own, program): (Vec<_>, Vec<_>) = assets.scenarios.iter().filter(of_items).partition(|(path, _)| is_own(path));
    let files = assets.standard.iter().filter(of_items).chain(program).map(|file| (file, false));
    for ((_, bytes), own) in files.chain(own.into_iter().map(|file| (file, true))) {
        for (skill, name) in read_skills(&String::from_utf8_lossy(bytes)) {
            out.insert(skill, SkillName { name: name.into_inner(), native: own && native });
        }
    }
    out
}

/// Whether there are words for the language `code`; where `module.toml` names it and there are none, it is told at its line.
fn has_words(assets: &Assets, code: &str) -> Result<()> {
    let codes: BTreeSet<&str> =
        assets.theme.keys().filter_map(|path| Some(path.strip_prefix("words/")?.split_once('/')?.0)).collect();
    if codes.contains(code) || of_module(assets).as_deref() != Some(code) {
        return Ok(());
    }
    let text = String::from_utf8_lossy(assets.manifest.as_deref().unwrap_or_default());
    let span = toml::from_str::<SpannedLanguage>(&text).ok().and_then(|named| Some(named.language?.span()));
    let codes = codes.into_iter().filter(|code| *code != ENGLISH).collect::<Vec<_>>().join(", ");
    let what = NO_SUCH_LANGUAGE.say(&[("code", &format!("{code:?}"))]);
    let problem = Problem { span, what, mend: LANGUAGES.say(&[("codes", &codes), ("code", code)]) };
    bail!(problem.report(&assets.shown(assets::MANIFEST), &text))
}

/// The language of `module.toml`, with its place.
#[derive(Deserialize)]
struct SpannedLanguage {
    language: Option<toml::Spanned<String>>,
}

/// The language that `module.toml` names; whatever else is wrong in it is told of when it is read.
fn of_module(assets: &Assets) -> Option<String> {
    #[derive(Deserialize)]
    struct Named {
        language: Option<String>,
    }
    let text = std::str::from_utf8(assets.manifest.as_deref()?).ok()?;
    toml::from_str::<Named>(text).ok()?.language
}

/// Whether two tags name the same language, whatever the country: `de` and `de-AT`.
pub(crate) fn is_same(one: &str, other: &str) -> bool {
    one.split('-').next() == other.split('-').next()
}

/// Whether what a module's author wrote is in the language `code`: what the module says it speaks, else English.
pub(crate) fn is_native(assets: &Assets, code: &str) -> bool {
    is_same(of_module(assets).as_deref().unwrap_or(ENGLISH), code)
}

/// What an exam record says of the language spoken: nothing of English.
pub(crate) fn spoken(assets: &Assets) -> Option<Spoken> {
    let tag = assets.words.code().to_owned();
    if tag == ENGLISH {
        return None;
    }
    let mut hash = Sha256::new();
    let inside = [format!("words/{ENGLISH}/"), format!("words/{tag}/")];
    for (path, bytes) in assets.theme.iter().filter(|(path, _)| inside.iter().any(|inside| path.starts_with(inside))) {
        hash.update((path.len() as u64).to_le_bytes());
        hash.update(path);
        hash.update((bytes.len() as u64).to_le_bytes());
        hash.update(bytes);
    }
    let words = hash.finalize().iter().map(|byte| format!("{byte:02x}")).collect();
    Some(Spoken { tag, words })
}

/// The language that an exam names in its file.
pub(crate) fn of_exam(text: &str) -> Option<String> {
    #[derive(Deserialize)]
    struct Named {
        language: Option<String>,
    }
    toml::from_str::<Named>(text).ok()?.language
}

/// The words of `code` among the theme's files.
pub(crate) fn read(assets: &Assets, code: &str, marked: bool) -> Result<Arc<Words>> {
    // The program's files first, a module's over them.
    let of = |code: &str| -> Result<[fluent::Files; 2]> {
        let inside = format!("words/{code}/");
        let mut layers = [fluent::Files::new(), fluent::Files::new()];
        for (path, bytes) in assets.theme.iter().filter(|(path, _)| path.starts_with(&inside) && path.ends_with(".ftl"))
        {
            let path = format!("theme/{path}");
            let shown = assets.shown(&path);
            layers[usize::from(assets.is_own(&path))].insert(shown.clone(), files::text(&shown, bytes.clone())?);
        }
        Ok(layers)
    };
    let ([built_in, own], [english, own_english]) = (of(code)?, of(ENGLISH)?);
    let read = Words::read(code, &[&built_in, &own], &[&english, &own_english], marked);
    let mut words = read.map_err(|problems| {
        let lines: Vec<String> = problems.iter().map(ToString::to_string).collect();
        anyhow!(CANNOT_BE_USED.say(&[("problems", &lines.join("\n"))]))
    })?;
    if assets.is_module() && code != ENGLISH {
        words.drop_first(&scenarios::reworded(assets)?);
    }
    Ok(Arc::new(words))
}

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
        bail!(WHICH_LANGUAGE.text());
    }
    let translated = |id: &str| known.as_ref().is_some_and(|words| words.places().contains_key(id));
    let mut out = String::new();
    if !options.missing && options.only.is_none() {
        out.push_str(&interface);
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

/// The interface's words as they stand in their files.
fn interface(assets: &Assets) -> Result<String> {
    let mut out = String::new();
    for (path, bytes) in assets.theme.iter().filter(|(path, _)| path.starts_with("words/en/")) {
        let _ = write!(out, "\n# theme/{path}\n\n{}", files::text(path, bytes.clone())?);
    }
    Ok(out)
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
        check_causes::SAYS,
        check_doubts::SAYS,
        check_follows::SAYS,
        check_never::SAYS,
        undrawable::SAYS,
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
        serve::ERRORS,
        schema::ERRORS,
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
