//! The words of a run: which language is spoken, and where its words are read from.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::sync::Arc;

use anyhow::{Result, anyhow, bail};
use drivecourse_course::words::{self as fluent, ENGLISH, Words};
use drivecourse_machine::language::{self, Language};
use drivecourse_machine::{Problem, messages};
use drivecourse_quiz::Exam;
use drivecourse_quiz::exam::Spoken;
use drivecourse_quiz::explain::{SkillName, name_skills};
use drivecourse_quiz::read_skills;
use serde::Deserialize;
use sha2::{Digest, Sha256};

use crate::assets::Assets;
use crate::{assets, cli, files, papers, words_scenarios as scenarios};

messages! { pub(crate) ERRORS {
    HAS_CHANGED = "error-language-changed", "the language has changed from {before} to {after}: end this run and begin another";
    NO_SUCH_LANGUAGE = "error-module-language", "There are no words for the language {code}.";
    LANGUAGES = "error-module-language-mend", "There are words for {codes}; English needs no line. For another one, put files theme/words/{code}/*.ftl into the module.";
    CANNOT_BE_USED = "error-words", "the words cannot be used:\n{problems}";
    /// Asked by the list of what is not translated.
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
pub(crate) fn load(folder: Option<&Path>, speech: &cli::Speech) -> Result<Assets> {
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
pub(crate) fn skills(assets: &Assets, native: bool) -> BTreeMap<String, SkillName> {
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
