//! `papers`: a different sealed paper for everyone on a roster, the keys, and a response file to fill in.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use anyhow::{Context, Result, anyhow, bail};
use drivecourse_course::card::{Sheet, ask_for_the_way, asks_for_more, key_model, paper_model};
use drivecourse_course::pages::Pages;
use drivecourse_course::pages::model::{Bundle, BundleSheet, Head, Leaf, Printout, Trusted};
use drivecourse_course::words::{ENGLISH, Words};
use drivecourse_machine::language::translated;
use drivecourse_machine::{Problem, messages};
use drivecourse_quiz::exam::Spoken;
use drivecourse_quiz::response::Template;
use drivecourse_quiz::{Bank, Blueprint, Draw, Exam, Paper, Person, Roster, Secret, Used};
use drivecourse_records::Store;
use sha2::{Digest, Sha256};

use crate::assets::{Assets, Files};
use crate::course::pages;
use crate::papers_alike::Numbers;
use crate::pdf::Press;
use crate::record::warn_of_shared_codes;
use crate::terminal::clean;
use crate::words_scenarios::{exam_id, shown};
use crate::{bank, cli, files, words, words_list};

messages! { pub(crate) SAYS {
    MADE = "papers-made", "{papers} papers of {questions} questions in {folder}";
    ON_SCREEN = "papers-on-screen", "the same to answer on a screen in {folder}";
    KEYS_IN = "papers-keys", "their keys in {keys}; keep them and {record} from the candidates";
    ANSWERS_INTO = "papers-answers", "answers go into {file}";
    UNSHOWN = "papers-unshown", "the fonts of the PDF lack {letters}; an empty square stands for each; the pages show them as the browser can";
    UNTRANSLATED = "papers-untranslated", "{count} of {all} texts on papers, keys and results are not translated; `drivecourse words --missing --language {tag}` lists them";
    TRANSLATED = "papers-translated", "all {all} texts on papers, keys and results are translated";
    OTHER_CODES = "papers-other-codes", "to have other codes, make these papers again with another --name";
    NEW_SECRET = "papers-new-secret", "made a new secret in {file}; keep it safe, no paper can be made again without it";
} }

messages! { pub(crate) ERRORS {
    HOLDS_EXAM = "error-holds-exam", "{folder} holds an exam already: there is {name} in it; choose another folder with --out, or move that one away";
    NO_PAPERS = "error-no-papers", "no papers can be drawn:\n{problems}";
    NOT_DRAWN = "error-paper-not-drawn", "the paper of {name} cannot be drawn";
    NOT_MADE = "error-not-made", "{file} is not made";
    NO_EXAM = "error-no-exam", "there is no file {name}, and no such name among the exams ({there})";
    NO_ROSTER = "error-no-roster", "there is no file {name}, and no such name among the rosters ({there})";
    UNUSABLE = "error-unusable", "{file} cannot be used:\n{problems}";
    CANNOT_USE = "error-cannot-use", "cannot use {file}";
    NO_RANDOM = "error-no-random-numbers", "the system gives no random numbers: {error}";
    NO_EXAM_FOLDER = "error-no-exam-folder", "{folder} is no exam folder: it has no {record}";
} }

pub(crate) fn run(options: &cli::Papers, speech: &cli::Speech) -> Result<()> {
    let ((), assets) = words::begin_with(&options.module, speech, |assets| {
        Ok(((), words::of_exam(&named_file(assets, "exams", &options.exam, ".toml")?.1)))
    })?;
    let bank = bank::load(&assets)?;
    let written = blueprint(&assets, &options.exam)?;
    let roster = roster(&assets, &options.roster)?;
    let folder = &options.out;
    for name in [RECORD, PAPERS, SCREENS, KEYS] {
        if folder.join(name).exists() {
            bail!(HOLDS_EXAM.say(&[("folder", &folder.display().to_string()), ("name", name)]));
        }
    }
    let mut used = Used::new();
    for earlier in &options.after {
        used.add(&read_record(earlier)?);
    }
    let press = if options.pdf { Some(Press::new(&assets, options.sheet)?) } else { None };
    let known = options.records.as_deref().map(Store::existing).transpose()?;
    let secret = secret(&options.secret)?;
    let made = Order {
        plant: options.plant.clone().unwrap_or_else(|| bank::plant(&assets)),
        exam: options.name.clone().unwrap_or_else(|| written.name.clone()),
        written,
        people: roster.people,
        sitting: options.sitting,
        date: options.date.clone(),
        print: Print { large: options.large_print, one_file: options.one_file },
        press,
        screen: options.screen,
        words: Arc::clone(&assets.words),
        spoken: words::spoken(&assets),
    }
    .make(&bank, &pages(&assets)?, &scenario_digest(&assets.scenarios), secret, used, folder)?;
    for remark in &made.remarks {
        eprintln!("drivecourse: {remark}");
    }
    if let Some(store) = &known {
        warn_of_shared_codes(store, &made.exam, OTHER_CODES.text())?;
    }
    let inside = |name: &str| folder.join(name).display().to_string();
    let (papers, questions) = (made.exam.papers.len().to_string(), made.exam.blueprint.questions().to_string());
    files::say(MADE.say(&[("papers", &papers), ("questions", &questions), ("folder", &inside(PAPERS))]))?;
    if options.screen {
        files::say(ON_SCREEN.say(&[("folder", &inside(SCREENS))]))?;
    }
    files::say(KEYS_IN.say(&[("keys", &inside(KEYS)), ("record", &inside(RECORD))]))?;
    files::say(ANSWERS_INTO.say(&[("file", &inside(RESPONSES))]))?;
    if let Some(lacking) = words_list::lacking(&assets, &made.shown)? {
        let said = if lacking.count == 0 { TRANSLATED } else { UNTRANSLATED };
        let (count, all) = (lacking.count.to_string(), lacking.all.to_string());
        files::say(said.say(&[("count", &count), ("all", &all), ("tag", assets.words.code())]))?;
    }
    Ok(())
}

/// The assessor's record of an exam.
pub(crate) const RECORD: &str = "exam.json";
/// The folder of the papers.
const PAPERS: &str = "papers";
/// The folder of the pages to answer on a screen.
const SCREENS: &str = "screen";
/// The folder of the keys.
const KEYS: &str = "keys";
/// The response file to fill in.
pub(crate) const RESPONSES: &str = "responses.csv";

/// A blueprint and the file it was read from.
pub(crate) struct Written {
    /// Short name: the file's, without its ending.
    pub(crate) name: String,
    pub(crate) blueprint: Blueprint,
    /// The file as a person knows it, and what it holds.
    file: String,
    text: String,
}

impl Written {
    /// Problems with drawing papers from it, each at its row.
    pub(crate) fn report(&self, problems: &[Problem]) -> String {
        problems.iter().map(|problem| problem.report(&self.file, &self.text)).collect::<Vec<_>>().join("\n")
    }
}

/// What papers are wanted.
pub(crate) struct Order {
    pub(crate) plant: String,
    pub(crate) exam: String,
    pub(crate) written: Written,
    pub(crate) people: Vec<Person>,
    pub(crate) sitting: u32,
    pub(crate) date: Option<String>,
    pub(crate) print: Print,
    /// Sets the same in type, where PDF is wanted too.
    pub(crate) press: Option<Press>,
    /// Whether pages to answer on a screen are wanted too.
    pub(crate) screen: bool,
    /// What papers say.
    pub(crate) words: Arc<Words>,
    /// What the record says of their language.
    pub(crate) spoken: Option<Spoken>,
}

/// How papers are printed.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Print {
    /// All large, not only those of people whose roster says so.
    pub(crate) large: bool,
    /// All in one file, and their keys in another.
    pub(crate) one_file: bool,
}

/// Papers and keys on their way into one file each; large print has a file of its own.
#[derive(Default)]
struct Stack {
    papers: Pile,
    large: Pile,
    keys: Pile,
    /// Characters met so far that the fonts of the PDF lack.
    unshown: BTreeSet<char>,
    /// Messages met so far of items, families, quantities and relations.
    shown: BTreeSet<String>,
}

/// What goes into one file: as a page, and in type where PDF is wanted.
#[derive(Default)]
struct Pile {
    sheets: Vec<BundleSheet>,
    leaves: Vec<Leaf>,
}

/// What was made.
pub(crate) struct Made {
    pub(crate) exam: Exam,
    pub(crate) remarks: Vec<String>,
    /// The messages of the items, families, quantities and relations on the papers.
    pub(crate) shown: BTreeSet<String>,
}

impl Order {
    /// Draws the papers and writes the exam folder, whole or not at all.
    pub(crate) fn make(
        self,
        bank: &Bank,
        pages: &Pages,
        scenario: &str,
        secret: Secret,
        used: Used,
        folder: &Path,
    ) -> Result<Made> {
        let blueprint = &self.written.blueprint;
        let mut exam = Exam::new(&self.exam, scenario, &secret, blueprint.clone())
            .spoken(self.spoken.clone())
            .headed(&self.plant, self.date.clone());
        let told = |problems: Vec<Problem>| anyhow!(NO_PAPERS.say(&[("problems", &self.written.report(&problems))]));
        let mut draw = Draw::new(bank, blueprint, &self.exam, secret, &self.people, used).map_err(told)?;
        let mut remarks = draw.remarks();
        let mut shown = BTreeSet::new();
        files::fill(folder, RECORD, |folder| {
            let mut template = Template::new(blueprint.marking.asks_steps());
            let mut outcome = Ok(());
            let (mut stack, mut numbers) = (Stack::default(), Numbers::default());
            draw.papers(&self.people, self.sitting, threads(), |paper| {
                if outcome.is_ok() {
                    outcome = self.write(&paper, pages, folder, &mut stack);
                }
                template.add(&paper);
                numbers.add(&paper);
                exam.push(&paper);
            })
            .map_err(|problem| told(vec![problem]))?;
            outcome?;
            remarks.extend(numbers.alike());
            shown = std::mem::take(&mut stack.shown);
            let unshown = self.write_stack(stack, pages, folder)?;
            if !unshown.is_empty() {
                let which: Vec<String> =
                    unshown.iter().map(|c| format!("{} (U+{:04X})", clean(&c.to_string()), u32::from(*c))).collect();
                remarks.push(UNSHOWN.say(&[("letters", &which.join(", "))]));
            }
            files::write(&folder.join(RESPONSES), template.finish().as_bytes())?;
            files::write(&folder.join(RECORD), exam.write().as_bytes())
        })?;
        Ok(Made { exam, remarks, shown })
    }

    /// Writes one candidate's paper and the key to it, or lays them on the stack.
    fn write(&self, paper: &Paper, pages: &Pages, folder: &Path, stack: &mut Stack) -> Result<()> {
        let head = Head {
            plant: self.plant.clone(),
            exam: self.written.blueprint.title.clone(),
            candidate: paper.candidate.name.clone(),
            code: paper.code.to_string(),
            date: self.date.clone(),
        };
        let sheets: Vec<_> = paper
            .questions
            .iter()
            .map(|placed| Sheet { item: placed.item, question: &placed.question, family: &placed.plan.family.name })
            .collect();
        paper.questions.iter().for_each(|placed| stack.shown.extend(shown(placed)));
        let time = Some(self.words.say("paper-minutes", &[("minutes", &self.written.blueprint.minutes.to_string())]));
        let policy = self.written.blueprint.policy(asks_for_more(&sheets));
        let mut sheet = paper_model(head.clone(), &sheets, time, self.written.blueprint.cautions.clone(), policy)
            .with_context(|| NOT_DRAWN.say(&[("name", &paper.candidate.name)]))?;
        if self.written.blueprint.marking.asks_steps() {
            ask_for_the_way(&mut sheet, &sheets);
        }
        sheet.large = self.print.large || paper.candidate.large_print;
        let key = key_model(head.clone(), &sheets, format!("drivecourse {}", env!("CARGO_PKG_VERSION")));
        let name = format!("{}-{}", paper.candidate.id, paper.code);
        if self.screen {
            files::write(
                &folder.join(SCREENS).join(format!("{name}.html")),
                pages.render("screen.html", &sheet)?.as_bytes(),
            )?;
        }
        if self.print.one_file {
            let lay = |body: String| BundleSheet {
                exam: head.exam.clone(),
                candidate: head.candidate.clone(),
                code: head.code.clone(),
                // Rendered by our own template, which escapes what came from people.
                body: Trusted::made_by_us(body),
            };
            let body = lay(pages.render("paper-body.html", &sheet)?);
            let pile = if sheet.large { &mut stack.large } else { &mut stack.papers };
            pile.sheets.push(body);
            stack.keys.sheets.push(lay(pages.render("key-body.html", &key)?));
            if self.press.is_some() {
                pile.leaves.push(Leaf::Paper(sheet));
                stack.keys.leaves.push(Leaf::Key(key));
            }
            return Ok(());
        }
        files::write(
            &folder.join(PAPERS).join(format!("{name}.html")),
            pages.render("paper.html", &sheet)?.as_bytes(),
        )?;
        files::write(&folder.join(KEYS).join(format!("{name}-key.html")), pages.render("key.html", &key)?.as_bytes())?;
        if self.press.is_some() {
            let words = [("exam", &*head.exam), ("code", &head.code), ("candidate", &head.candidate)];
            let title = self.words.say("paper-title", &words);
            let paper = Printout { title, large: sheet.large, sheets: vec![Leaf::Paper(sheet)] };
            self.typeset(&paper, &folder.join(PAPERS).join(format!("{name}.pdf")), &mut stack.unshown)?;
            let title = self.words.say("key-title", &words);
            let key = Printout { title, large: false, sheets: vec![Leaf::Key(key)] };
            self.typeset(&key, &folder.join(KEYS).join(format!("{name}-key.pdf")), &mut stack.unshown)?;
        }
        Ok(())
    }

    /// Writes a PDF where one is wanted, and adds the characters that its fonts lack to `unshown`.
    fn typeset(&self, printout: &Printout, file: &Path, unshown: &mut BTreeSet<char>) -> Result<()> {
        let Some(press) = &self.press else { return Ok(()) };
        let (pdf, missing) =
            press.print(printout).with_context(|| NOT_MADE.say(&[("file", &file.display().to_string())]))?;
        unshown.extend(missing);
        files::write(file, &pdf)
    }

    /// Writes what was laid on the stack; returns the characters that a PDF cannot show.
    fn write_stack(&self, stack: Stack, pages: &Pages, folder: &Path) -> Result<BTreeSet<char>> {
        let title = &self.written.blueprint.title;
        let mut unshown = stack.unshown;
        for (what, inside, name, large, pile) in [
            ("bundle-papers", PAPERS, "papers", false, stack.papers),
            ("bundle-large", PAPERS, "papers-large-print", true, stack.large),
            ("bundle-keys", KEYS, "keys", false, stack.keys),
        ] {
            let Pile { sheets, leaves } = pile;
            let (title, path) = (self.words.say(what, &[("exam", title)]), folder.join(inside));
            if !leaves.is_empty() {
                let printout = Printout { title: title.clone(), large, sheets: leaves };
                self.typeset(&printout, &path.join(format!("{name}.pdf")), &mut unshown)?;
            }
            if !sheets.is_empty() {
                let bundle = Bundle { title, large, several: true, sheets };
                let page = pages.render("bundle.html", &bundle)?;
                files::write(&path.join(format!("{name}.html")), page.as_bytes())?;
            }
        }
        Ok(unshown)
    }
}

/// Threads to work with.
pub(crate) fn threads() -> usize {
    std::thread::available_parallelism().map_or(1, usize::from)
}

/// SHA-256 over the families and items, in order of path.
pub(crate) fn scenario_digest(scenarios: &Files) -> String {
    let mut hash = Sha256::new();
    for (path, bytes) in
        scenarios.iter().filter(|(path, _)| path.starts_with("families/") || path.starts_with("items/"))
    {
        hash.update((path.len() as u64).to_le_bytes());
        hash.update(path);
        hash.update((bytes.len() as u64).to_le_bytes());
        hash.update(bytes);
    }
    hash.finalize().iter().map(|byte| format!("{byte:02x}")).collect()
}

/// A blueprint by the name of a built-in or module exam, or from a file.
pub(crate) fn blueprint(assets: &Assets, name: &str) -> Result<Written> {
    let (shown, text) = named_file(assets, "exams", name, ".toml")?;
    let short = Path::new(name).file_stem().map_or_else(|| name.to_owned(), |stem| stem.to_string_lossy().into_owned());
    let mut blueprint = Blueprint::read(&text).map_err(|problems| report(&shown, &text, &problems))?;
    let own = name != short || assets.is_own(&format!("scenarios/exams/{short}.toml"));
    let written_in = words::of_exam(&text).unwrap_or_else(|| ENGLISH.to_owned());
    let tag = assets.words.code();
    let native = words::is_same(&written_in, tag) || (own && words::is_native(assets, tag));
    blueprint.title = translated(&exam_id(&short), &blueprint.title, !native).into_owned();
    Ok(Written { name: short, blueprint, file: shown, text })
}

/// A roster by the name of one in the module, or from a file, in TOML or CSV.
pub(crate) fn roster(assets: &Assets, name: &str) -> Result<Roster> {
    let (shown, text) = named_file(assets, "rosters", name, ".csv")?;
    let read = if shown.ends_with(".toml") { Roster::read_toml(&text) } else { Roster::read_csv(&text) };
    read.map_err(|problems| report(&shown, &text, &problems))
}

fn named_file(assets: &Assets, folder: &str, name: &str, ending: &str) -> Result<(String, String)> {
    let path = Path::new(name);
    if path.is_file() {
        return Ok((name.to_owned(), files::read_text(path)?));
    }
    for inside in [format!("{folder}/{name}"), format!("{folder}/{name}{ending}"), format!("{folder}/{name}.toml")] {
        if let Some(bytes) = assets.scenarios.get(&inside) {
            let shown = assets.shown(&format!("scenarios/{inside}"));
            let text = files::text(&shown, bytes.clone())?;
            return Ok((shown, text));
        }
    }
    let there: Vec<_> = assets.scenarios.keys().filter_map(|path| path.strip_prefix(&format!("{folder}/"))).collect();
    let said = if folder == "exams" { NO_EXAM } else { NO_ROSTER };
    bail!(said.say(&[("name", name), ("there", &there.join(", "))]))
}

fn report(file: &str, text: &str, problems: &[Problem]) -> anyhow::Error {
    let lines: Vec<_> = problems.iter().map(|problem| problem.report(file, text)).collect();
    anyhow!(UNUSABLE.say(&[("file", file), ("problems", &lines.join("\n"))]))
}

/// The assessor's secret, made at first use.
pub(crate) fn secret(path: &Path) -> Result<Secret> {
    if path.exists() {
        let text = files::read_text(path)?;
        return Secret::read(&text).with_context(|| CANNOT_USE.say(&[("file", &path.display().to_string())]));
    }
    let secret = new_secret()?;
    files::write_private(path, secret.write().as_bytes())?;
    eprintln!("drivecourse: {}", NEW_SECRET.say(&[("file", &path.display().to_string())]));
    Ok(secret)
}

/// A secret from the system's random source.
pub(crate) fn new_secret() -> Result<Secret> {
    let mut bytes = [0; 32];
    getrandom::fill(&mut bytes).map_err(|error| anyhow!(NO_RANDOM.say(&[("error", &error.to_string())])))?;
    Ok(Secret::new(bytes))
}

/// The record in an exam folder, or the file itself.
pub(crate) fn read_record(path: &Path) -> Result<Exam> {
    let file: PathBuf = if path.is_dir() { path.join(RECORD) } else { path.to_path_buf() };
    if !file.exists() {
        bail!(NO_EXAM_FOLDER.say(&[("folder", &path.display().to_string()), ("record", RECORD)]));
    }
    let text = files::read_text(&file)?;
    Exam::read(&text).map_err(|problem| anyhow!("{}", problem.report(&file.display().to_string(), &text)))
}
