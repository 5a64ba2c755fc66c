//! `new`: a small module of one's own that builds, makes papers and grades at once, and explains itself.

use std::collections::{BTreeMap, BTreeSet};

use anyhow::{Context, Result, bail};
use drivecourse_course::words::ENGLISH;
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Plan, System, language, messages, topics};
use drivecourse_quiz::schema::Sort;
use drivecourse_quiz::{Bank, Item};
use include_dir::{Dir, include_dir};

use crate::assets::{self, Assets, Files};
use crate::new_table::Table;
use crate::{bank, cli, files, words};

messages! { pub(crate) SAYS {
    MADE = "new-made", "{count} files in {folder}, about {topics}; begin with {file}";
    SPEAKS = "new-speaks", "language = {code} stands in {file}: whatever is done with this module speaks it. Its own texts are examples in English: title, names, questions, the chapter. Write them over in your language; the remarks in its files stay English.";
    OTHER_TOPICS = "new-other-topics", "Other topics, with --topic: {topics}";
} }

messages! { pub(crate) ERRORS {
    NOT_EMPTY = "error-new-not-empty", "{folder} is there already and not empty; nothing was changed; name a new folder";
    MODULE_THERE = "error-new-module-there", "{folder} holds a module already; nothing was changed; name a new folder. To add a topic to this one, add it to `topics` in {family}: `drivecourse check --module {folder}` then says what goes with it";
    NO_TOPIC = "error-no-topic", "there is no topic {topic}; there are:\n{topics}";
    NO_TOPIC_BUT = "error-no-topic-but", "there is no topic {topic}; {meant} there are:\n{topics}";
    STARTER_LACKS = "error-starter-lacks", "the starter has no {file}";
    STARTER_NO_TEXT = "error-starter-no-text", "{file} of the starter is no text";
} }

static STARTER: Dir = include_dir!("$CARGO_MANIFEST_DIR/scenarios/starter");

/// Topics of a module for which none is named.
const USUAL: [&str; 4] = ["mount", "chain", "load", "heat"];
/// The name of the family, and of the table of its machines.
pub(crate) const FAMILY: &str = "our-drive";
/// What the family calls its machines until an author gives them a name.
pub(crate) const EXAMPLE_NAME: &str = "storage conveyor drive";
/// Where the family says its example of an own limit stands.
pub(crate) const EXAMPLE_SOURCE: &str = "our maintenance standard, section 3";
/// The topic that asks about couplings, too.
const COUPLINGS: &str = "align";
/// What every exam and chapter leans on, whatever its topics.
pub(crate) const SAFE_WORK: &str = "safe-work";

pub(crate) fn run(options: &cli::New, speech: &cli::Speech) -> Result<()> {
    // The module itself begins in English, whatever is spoken: it is made before a language is taken on. What fails is tried
    // once more, to be told of in that language.
    let made = made(options);
    words::begin_built_in(speech)?;
    let made = made.or_else(|_| self::made(options))?;
    let folder = &options.folder;
    if folder.is_file() || std::fs::read_dir(folder).is_ok_and(|mut inside| inside.next().is_some()) {
        let shown = folder.display().to_string();
        let family = folder.join(format!("scenarios/families/{FAMILY}.toml"));
        if family.is_file() {
            bail!(MODULE_THERE.say(&[("folder", &shown), ("family", &family.display().to_string())]));
        }
        bail!(NOT_EMPTY.say(&[("folder", &shown)]));
    }
    let Made { files: mut made, topics } = made;
    let speaks = Some(language::code()).filter(|code| *code != ENGLISH);
    if let Some(manifest) = made.get_mut(assets::MANIFEST).filter(|_| speaks.is_some()) {
        *manifest = speaking(&String::from_utf8_lossy(manifest), language::code()).into_bytes();
    }
    files::fill(folder, assets::MANIFEST, |fresh| {
        made.iter().try_for_each(|(path, bytes)| files::write(&fresh.join(path), bytes))
    })?;
    let shown = folder.display();
    let (count, first) = (made.len().to_string(), folder.join("README.md").display().to_string());
    let words = [("count", &*count), ("folder", &shown.to_string()), ("topics", &topics.join(", ")), ("file", &first)];
    files::say(MADE.say(&words))?;
    if options.topic.is_empty() {
        let others = topics::ALL.iter().map(|topic| topic.id).filter(|id| !topics.iter().any(|topic| topic == id));
        files::say(OTHER_TOPICS.say(&[("topics", &others.collect::<Vec<_>>().join(", "))]))?;
    }
    if let Some(code) = speaks {
        let manifest = folder.join(assets::MANIFEST).display().to_string();
        files::say(SPEAKS.say(&[("code", &format!("{code:?}")), ("file", &manifest)]))?;
    }
    files::say(format!("\n  drivecourse check --module {shown}"))?;
    files::say(format!("  drivecourse serve --module {shown}"))?;
    let papers = "--exam first-check --roster first-group --secret secret --out exam";
    files::say(format!("  drivecourse papers --module {shown} {papers}"))
}

/// The settings of a module in `manifest`, above their first table, with the language that is spoken.
fn speaking(manifest: &str, code: &str) -> String {
    let line = format!(
        "language = {code:?}               # of everything people read, and of your own texts: those here are English, write them over\n"
    );
    let lines = manifest.split_inclusive('\n');
    lines.flat_map(|known| [known, if known.starts_with("units = ") { &line } else { "" }]).collect()
}

/// The program's chapters: for each topic the one that practises it most, as path and title.
pub(crate) fn chapters(assets: &Assets, bank: &Bank) -> BTreeMap<String, (String, String)> {
    let mut most: BTreeMap<String, (usize, String, String)> = BTreeMap::new();
    for (path, bytes) in assets.book.iter().filter(|(path, _)| path.ends_with(".md") && !path.contains('/')) {
        let text = String::from_utf8_lossy(bytes);
        let mut counts: BTreeMap<&str, usize> = BTreeMap::new();
        let named = |item: &str| text.contains(&format!("item = \"{item}\""));
        bank.items.iter().filter(|item| named(&item.id)).for_each(|item| *counts.entry(&item.topic).or_default() += 1);
        let title = text.lines().find_map(|line| line.strip_prefix("# ")).unwrap_or(path);
        // A chapter belongs to the topic that it practises most, and a topic to its fullest chapter.
        let Some((topic, count)) = counts.into_iter().max_by_key(|(_, count)| *count) else { continue };
        let best = most.get(topic).map_or(0, |best| best.0);
        if count > best {
            most.insert(topic.to_owned(), (count, path.clone(), title.to_owned()));
        }
    }
    most.into_iter().map(|(topic, (_, path, title))| (topic, (path, title))).collect()
}

/// The topics named, by their names or by those of their chapters, in the order of the course.
fn chosen(words: &[String], chapters: &BTreeMap<String, (String, String)>) -> Result<Vec<&'static str>> {
    let words: Vec<&str> = if words.is_empty() { USUAL.to_vec() } else { words.iter().map(String::as_str).collect() };
    let mut wanted = Vec::new();
    for word in words.iter().map(|word| word.trim()) {
        let file = word.to_lowercase().replace(' ', "-");
        let of_chapter = chapters.iter().find(|(_, (path, _))| path.strip_suffix(".md") == Some(&file));
        let topic = of_chapter.map_or(word, |(topic, _)| topic);
        if !topics::ALL.iter().any(|known| known.id == topic) {
            bail!(no_topic(word));
        }
        wanted.push(topic);
    }
    Ok(topics::ALL.iter().map(|topic| topic.id).filter(|id| wanted.contains(id)).collect())
}

/// That there is no such topic, with id and title of every one that there is.
pub(crate) fn no_topic(word: &str) -> String {
    let lines = topics::ALL.iter().map(|topic| format!("  {:<8} {}", topic.id, topic.heading()));
    let list = lines.collect::<Vec<_>>().join("\n");
    let (named, near) = (format!("{word:?}"), nearest(word, topics::ALL.iter().map(|topic| topic.id)));
    match near.map(|near| words::MEANT.say(&[("name", &format!("{near:?}"))])) {
        Some(meant) => NO_TOPIC_BUT.say(&[("topic", &named), ("meant", &meant), ("topics", &list)]),
        None => NO_TOPIC.say(&[("topic", &named), ("topics", &list)]),
    }
}

/// A module, made.
struct Made {
    files: Files,
    topics: Vec<String>,
}

/// The module that is asked for.
fn made(options: &cli::New) -> Result<Made> {
    let assets = Assets::load(None)?;
    let bank = bank::load(&assets)?;
    let chapters = chapters(&assets, &bank);
    let topics = chosen(&options.topic, &chapters)?;
    let plan = bank.plan(&options.like).map_err(anyhow::Error::msg)?;
    let files = module(&topics, &chapters, &bank, plan, options.units.into())?;
    Ok(Made { files, topics: topics.into_iter().map(str::to_owned).collect() })
}

/// Every file of a module about `topics`.
fn module(
    topics: &[&str],
    chapters: &BTreeMap<String, (String, String)>,
    bank: &Bank,
    plan: &Plan,
    system: System,
) -> Result<Files> {
    let own: Vec<&str> = topics.iter().copied().filter(|topic| starter(&item_file(topic)).is_ok()).collect();
    let list = |names: &mut dyn Iterator<Item = &str>| names.map(|name| format!("{name:?}")).collect::<Vec<_>>();
    let rows: Vec<_> =
        topics.iter().map(|topic| format!("[[row]]\ntopic = {topic:?}\ncount = 2\nweight = 4\n")).collect();
    let listed: Vec<_> = (topics.iter())
        .filter_map(|topic| chapters.get(*topic))
        .map(|(path, title)| format!("- [{title}]({path})"))
        .collect();
    let mut items = starter("scenarios/items/head.toml")?;
    for topic in &own {
        items.push_str(&starter(&item_file(topic))?);
    }
    items.push_str(&starter("scenarios/items/any.toml")?.replace("@TOPIC@", topics.first().unwrap_or(&"mount")));
    let read = drivecourse_quiz::read_items(&items).unwrap_or_default();
    let skills = skills(topics, bank.items.iter().chain(&read));
    let skill = skills.first().and_then(|(_, skills)| skills.first()).copied().unwrap_or(SAFE_WORK);
    let practice: Vec<_> = read.iter().map(|item| format!("```practice\nitem = {:?}\n```", item.id)).collect();
    let quoted = |topics: &[&str]| list(&mut topics.iter().copied()).join(", ");
    let fill = |path: &str| -> Result<String> {
        Ok(in_units(&starter(path)?, system)
            .replace("@UNITS@", system.code())
            .replace("@ITEMS@", &list(&mut topics.iter().copied().chain([SAFE_WORK])).join(", "))
            .replace("@LIKE@", &plan.family.id)
            .replace("@NAME@", EXAMPLE_NAME)
            .replace("@SOURCE@", EXAMPLE_SOURCE)
            .replace("@TOPICS@", &quoted(topics))
            .replace("@ROWS@", &rows.join("\n"))
            .replace("@SKILL@", skill)
            .replace("@SKILLS@", &skill_lines(&skills))
            .replace("@CHAPTERS@", &listed.join("\n"))
            .replace("@PRACTICE@", &practice.join("\n\n")))
    };
    let mut made = Files::new();
    for path in [
        assets::MANIFEST,
        "README.md",
        "book/SUMMARY.md",
        "book/our-drive.md",
        "scenarios/exams/first-check.toml",
        "scenarios/rosters/first-group.csv",
    ] {
        made.insert(path.to_owned(), fill(path)?.into_bytes());
    }
    made.insert("scenarios/items/our-items.toml".into(), items.into_bytes());
    let path = "scenarios/families/our-drive.toml";
    let family = fill(path)?;
    let table = Table::new(&family, plan, topics, system)?;
    let family = family.replace("# @COLUMNS@", &table.columns()).replace("# @FIXED@", &table.fixed());
    made.insert(path.into(), family.into_bytes());
    made.insert(format!("scenarios/families/{FAMILY}.csv"), table.machines().into_bytes());
    for sort in Sort::ALL {
        made.insert(format!("schemas/{}.json", sort.name()), crate::schema::text(sort)?.into_bytes());
    }
    Ok(made)
}

/// Of each of the `topics`, the skills of its `items` in the order of their names, safe work apart.
fn skills<'i>(topics: &[&'i str], items: impl Iterator<Item = &'i Item>) -> Vec<(&'i str, Vec<&'i str>)> {
    let mut of_topics: BTreeMap<&str, BTreeSet<&str>> = BTreeMap::new();
    for item in items.filter(|item| item.skill != SAFE_WORK) {
        of_topics.entry(&item.topic).or_default().insert(&item.skill);
    }
    let of = |topic: &&'i str| Some((*topic, of_topics.get(topic)?.iter().copied().collect()));
    topics.iter().filter_map(of).collect()
}

/// The remark that lists them, a line a topic.
fn skill_lines(skills: &[(&str, Vec<&str>)]) -> String {
    let mut lines: Vec<_> =
        skills.iter().map(|(topic, skills)| format!("#   {topic:<8} {}", skills.join(", "))).collect();
    if skills.iter().any(|(topic, _)| *topic == COUPLINGS) {
        lines.push(format!(
            "# Of {COUPLINGS}, moving-the-motor, reverse-dials, rim-and-face and thermal-growth are about the coupling of a motor on\n\
             # feet. A motor flanged on its reducer has none: there, rows of other skills stand in place of topic = {COUPLINGS:?}."
        ));
    }
    lines.join("\n")
}

/// `text` with each amount that it has in both sets of units, as in `@0.04 mm|1.5 thou@`, in those of `system`.
fn in_units(text: &str, system: System) -> String {
    let mut out = String::new();
    for (place, part) in text.split('@').enumerate() {
        match part.split_once('|').filter(|_| place % 2 == 1) {
            Some((si, us)) => out.push_str(if system == System::Si { si } else { us }),
            // A place to be filled in otherwise keeps its marks.
            None if place % 2 == 1 => out.push_str(&format!("@{part}@")),
            None => out.push_str(part),
        }
    }
    out
}

fn item_file(topic: &str) -> String {
    format!("scenarios/items/{topic}.toml")
}

fn starter(path: &str) -> Result<String> {
    let file = STARTER.get_file(path).with_context(|| STARTER_LACKS.say(&[("file", path)]))?;
    Ok(file.contents_utf8().with_context(|| STARTER_NO_TEXT.say(&[("file", path)]))?.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_starter_points_at_its_schemas() {
        for (path, depth) in [
            ("module.toml", ""),
            ("scenarios/families/our-drive.toml", "../../"),
            ("scenarios/items/head.toml", "../../"),
        ] {
            let text = starter(path).unwrap();
            assert!(text.starts_with(&format!("#:schema {depth}schemas/")), "{path}");
        }
    }
}
