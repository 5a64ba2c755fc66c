//! The course, scenarios and theme built into the program, and a folder on disk that overrides them.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::sync::Arc;

use anyhow::{Context, Result, bail};
use drivecourse_course::words::{ENGLISH, Words};
use drivecourse_machine::Family;
use drivecourse_machine::language::MARKS;
use drivecourse_machine::messages;
use include_dir::{Dir, include_dir};

use crate::{files, words};

static BOOK: Dir = include_dir!("$CARGO_MANIFEST_DIR/book");
static SCENARIOS: Dir = include_dir!("$CARGO_MANIFEST_DIR/scenarios");
static THEME: Dir = include_dir!("$CARGO_MANIFEST_DIR/theme");

messages! { pub(crate) ERRORS {
    NO_FOLDER = "error-no-module-folder", "there is no folder {folder}; name the folder of your module with --module";
    NO_MODULE = "error-no-module", "{folder} is no module: it has none of the folders book, scenarios and theme; name the folder that holds them with --module";
} }

/// Files by their path inside a folder, with forward slashes.
pub(crate) type Files = BTreeMap<String, Vec<u8>>;

/// Everything a course is made of.
#[derive(Debug, Clone)]
pub(crate) struct Assets {
    /// Chapters and their pictures.
    pub(crate) book: Files,
    /// Families, items, exams, rosters.
    pub(crate) scenarios: Files,
    /// Page templates, styles, scripts.
    pub(crate) theme: Files,
    /// Families and items of the program that the module's own take the place of: what it may still name.
    pub(crate) standard: Files,
    /// What everything is said in.
    pub(crate) words: Arc<Words>,
    /// The module's own settings, if it has any.
    pub(crate) manifest: Option<Vec<u8>>,
    /// The module's folder, as it was named, and which files came from it.
    module: PathBuf,
    own: BTreeSet<String>,
    /// Chapters in other languages, by the tag of the language.
    translated: BTreeMap<String, Files>,
    /// Chapters that stand in for others, by the path of the other.
    instead: BTreeMap<String, String>,
    /// The program's chapters that the module's own list leaves out.
    left_out: BTreeSet<String>,
}

/// The file of a module's own settings.
pub(crate) const MANIFEST: &str = "module.toml";

impl Assets {
    /// The built-in files, with those of `module` laid over them.
    ///
    /// A module's `scenarios/families` and `scenarios/items` take the place of the built-in ones as
    /// a whole, so that a plant's papers never mix in somebody else's machines; `module.toml` takes single ones over.
    /// Single chapters and theme files replace those of the same name, and `SUMMARY.md` says which chapters there are.
    ///
    /// Its words are English.
    pub(crate) fn load(module: Option<&Path>) -> Result<Self> {
        let mut assets = Self::files(module)?;
        assets.words = words::read(&assets, ENGLISH, false)?;
        Ok(assets)
    }

    fn files(module: Option<&Path>) -> Result<Self> {
        let mut assets = Self {
            book: embedded(&BOOK),
            scenarios: embedded(&SCENARIOS),
            theme: embedded(&THEME),
            standard: Files::new(),
            words: Arc::default(),
            manifest: None,
            module: PathBuf::new(),
            own: BTreeSet::new(),
            translated: BTreeMap::new(),
            instead: BTreeMap::new(),
            left_out: BTreeSet::new(),
        };
        let Some(module) = module else {
            assets.set_languages_apart();
            return Ok(assets);
        };
        if !module.is_dir() {
            bail!(NO_FOLDER.say(&[("folder", &module.display().to_string())]));
        }
        let settings = module.join(MANIFEST);
        if !["book", "scenarios", "theme"].iter().any(|name| module.join(name).is_dir()) && !settings.is_file() {
            bail!(NO_MODULE.say(&[("folder", &module.display().to_string())]));
        }
        assets.module = module.to_path_buf();
        if settings.is_file() {
            let bytes = std::fs::read(&settings).with_context(|| files::cannot_read(&settings))?;
            assets.manifest = Some(bytes);
            assets.own.insert(MANIFEST.to_owned());
        }
        for (name, files) in
            [("book", &mut assets.book), ("scenarios", &mut assets.scenarios), ("theme", &mut assets.theme)]
        {
            let own = read_folder(&module.join(name))?;
            if name == "scenarios" {
                for part in ["families/", "items/", "exams/", "rosters/"] {
                    if own.keys().any(|path| path.starts_with(part)) {
                        let (standard, kept) =
                            std::mem::take(files).into_iter().partition(|(path, _)| path.starts_with(part));
                        *files = kept;
                        let standard: Files = standard;
                        assets.standard.extend(standard);
                    }
                }
            }
            assets.own.extend(own.keys().map(|path| format!("{name}/{path}")));
            files.extend(own);
        }
        assets.set_languages_apart();
        assets.drop_chapters();
        if assets.leans_on_standard() {
            // What papers rest on stands in their scenario's digest.
            let drawn = |path: &str| path.starts_with("families/") || path.starts_with("items/");
            let standard = assets.standard.iter().filter(|(path, _)| drawn(path));
            let standard: Files = standard.map(|(path, bytes)| (format!("{path}@standard"), bytes.clone())).collect();
            assets.scenarios.extend(standard);
        }
        Ok(assets)
    }

    /// Takes the chapters of other languages (`book/de/chain.md`) out of the book.
    fn set_languages_apart(&mut self) {
        let tags: BTreeSet<String> = (self.theme.keys())
            .filter_map(|path| Some(path.strip_prefix("words/")?.split_once('/')?.0.to_owned()))
            .collect();
        for tag in tags {
            let inside = format!("{tag}/");
            let (apart, kept) =
                std::mem::take(&mut self.book).into_iter().partition(|(path, _)| path.starts_with(&inside));
            self.book = kept;
            let apart: Files = apart;
            self.translated
                .insert(tag, apart.into_iter().map(|(path, bytes)| (path[inside.len()..].to_owned(), bytes)).collect());
        }
    }

    /// Says everything in the language of `words` from now on: its chapters take the place of those of the same name; one
    /// of the program's that has none says so. Where the author's own are `native`, they need no translation.
    pub(crate) fn speak(&mut self, words: Arc<Words>, native: bool) {
        let tag = words.code().to_owned();
        let english = tag.split('-').next() == Some(ENGLISH);
        let chapters = self.translated.get(&tag).cloned().unwrap_or_default();
        let note = words.say("frame-not-translated", &[]);
        for (path, bytes) in &mut self.book {
            let (plain, other) = (format!("book/{path}"), format!("book/{tag}/{path}"));
            // What a module's author wrote goes before a translation of what it replaces.
            let own = self.own.contains(&plain) && !self.own.contains(&other);
            match chapters.get(path) {
                Some(chapter) if !own => {
                    bytes.clone_from(chapter);
                    self.instead.insert(plain, other);
                }
                _ if (own && native) || english || !path.ends_with(".md") || path == "SUMMARY.md" => {}
                _ => {
                    let chapter = String::from_utf8_lossy(bytes);
                    let chapter = if words.are_marked() { with_marks(&chapter) } else { chapter.into_owned() };
                    *bytes = if own { chapter } else { with_note(&chapter, &note) }.into_bytes();
                }
            }
        }
        self.words = words;
    }

    /// Whether items or families of the program may be asked about beside the module's own.
    fn leans_on_standard(&self) -> bool {
        let families = self.scenarios.iter().filter(|(path, _)| path.starts_with("families/"));
        let mut texts = families.map(|(_, bytes)| String::from_utf8_lossy(bytes));
        self.manifest.is_some() || texts.any(|text| Family::likeness(&text).is_some())
    }

    /// Takes out the program's chapters that the module's own list leaves out.
    fn drop_chapters(&mut self) {
        if !self.own.contains("book/SUMMARY.md") {
            return;
        }
        let list = self.book.get("SUMMARY.md").map_or_else(String::new, |bytes| String::from_utf8_lossy(bytes).into());
        let (own, left_out) = (&self.own, &mut self.left_out);
        self.book.retain(|path, _| {
            let listed =
                path == "SUMMARY.md" || list.contains(&format!("({path})")) || list.contains(&format!("(./{path})"));
            let kept = !path.ends_with(".md") || listed || own.contains(&format!("book/{path}"));
            if !kept {
                left_out.insert(path.clone());
            }
            kept
        });
    }

    /// The program's chapters that the module's own list leaves out.
    pub(crate) fn left_out(&self) -> &BTreeSet<String> {
        &self.left_out
    }

    /// Whether a module lies over the built-in files.
    pub(crate) fn is_module(&self) -> bool {
        !self.module.as_os_str().is_empty()
    }

    /// Whether `path`, such as `book/chain.md`, came from the module.
    pub(crate) fn is_own(&self, path: &str) -> bool {
        self.own.contains(path)
    }

    /// A file such as `scenarios/items/chain.toml` as a person finds it: in the module's folder where it came from there.
    pub(crate) fn shown(&self, path: &str) -> String {
        let path = self.instead.get(path).map_or(path, String::as_str);
        if self.own.contains(path) { self.module.join(path).display().to_string() } else { path.to_owned() }
    }
}

/// `chapter` with `note` under its heading.
fn with_note(chapter: &str, note: &str) -> String {
    let (heading, rest) = chapter.split_once('\n').unwrap_or((chapter, ""));
    format!("{heading}\n\n> [!NOTE]\n> {note}\n{rest}")
}

/// `chapter` with its heading marked as not translated.
fn with_marks(chapter: &str) -> String {
    let (heading, rest) = chapter.split_once('\n').unwrap_or((chapter, ""));
    let words = heading.trim_start_matches('#').trim();
    let signs = &heading[..heading.len() - heading.trim_start_matches('#').len()];
    format!("{signs} {}{words}{}\n{rest}", MARKS[0], MARKS[1])
}

fn embedded(dir: &Dir) -> Files {
    fn add(dir: &Dir, out: &mut Files) {
        for file in dir.files() {
            let path = file.path().to_string_lossy().replace('\\', "/");
            out.insert(path, file.contents().to_vec());
        }
        dir.dirs().for_each(|inner| add(inner, out));
    }
    let mut out = Files::new();
    add(dir, &mut out);
    out
}

/// Every file below `folder`; nothing where there is no such folder.
pub(crate) fn read_folder(folder: &Path) -> Result<Files> {
    let mut out = Files::new();
    let mut open = vec![folder.to_path_buf()];
    while let Some(next) = open.pop() {
        if !next.is_dir() {
            continue;
        }
        for entry in std::fs::read_dir(&next).with_context(|| files::cannot_list(&next))? {
            let path = entry.with_context(|| files::cannot_list(&next))?.path();
            let hidden = path.file_name().is_some_and(|name| name.to_string_lossy().starts_with('.'));
            if hidden {
                continue;
            }
            if path.is_dir() {
                open.push(path);
                continue;
            }
            let bytes = std::fs::read(&path).with_context(|| files::cannot_read(&path))?;
            let inside = path.strip_prefix(folder).unwrap_or(&path).to_string_lossy().replace('\\', "/");
            out.insert(inside, bytes);
        }
    }
    Ok(out)
}
