//! The course, scenarios and theme built into the program, and a folder on disk that overrides them.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use anyhow::{Context, Result, bail};
use include_dir::{Dir, include_dir};

static BOOK: Dir = include_dir!("$CARGO_MANIFEST_DIR/book");
static SCENARIOS: Dir = include_dir!("$CARGO_MANIFEST_DIR/scenarios");
static THEME: Dir = include_dir!("$CARGO_MANIFEST_DIR/theme");

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
    /// The module's folder, as it was named, and which files came from it.
    module: PathBuf,
    own: BTreeSet<String>,
}

impl Assets {
    /// The built-in files, with those of `module` laid over them.
    ///
    /// A module's `scenarios/families` and `scenarios/items` take the place of the built-in ones as
    /// a whole, so that a plant's papers never mix in somebody else's machines; single chapters and
    /// theme files replace those of the same name.
    pub(crate) fn load(module: Option<&Path>) -> Result<Self> {
        let mut assets = Self {
            book: embedded(&BOOK),
            scenarios: embedded(&SCENARIOS),
            theme: embedded(&THEME),
            module: PathBuf::new(),
            own: BTreeSet::new(),
        };
        let Some(module) = module else { return Ok(assets) };
        if !module.is_dir() {
            bail!("there is no folder {}; name the folder of your module with --module", module.display());
        }
        if !["book", "scenarios", "theme"].iter().any(|name| module.join(name).is_dir()) {
            bail!(
                "{} is no module: it has none of the folders book, scenarios and theme; \
                 name the folder that holds them with --module",
                module.display()
            );
        }
        assets.module = module.to_path_buf();
        for (name, files) in
            [("book", &mut assets.book), ("scenarios", &mut assets.scenarios), ("theme", &mut assets.theme)]
        {
            let own = read_folder(&module.join(name))?;
            if name == "scenarios" {
                for part in ["families/", "items/", "exams/", "rosters/"] {
                    if own.keys().any(|path| path.starts_with(part)) {
                        files.retain(|path, _| !path.starts_with(part));
                    }
                }
            }
            assets.own.extend(own.keys().map(|path| format!("{name}/{path}")));
            files.extend(own);
        }
        Ok(assets)
    }

    /// A file such as `scenarios/items/chain.toml` as a person finds it: in the module's folder where it came from there.
    pub(crate) fn shown(&self, path: &str) -> String {
        if self.own.contains(path) { self.module.join(path).display().to_string() } else { path.to_owned() }
    }
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
        for entry in std::fs::read_dir(&next).with_context(|| format!("cannot list {}", next.display()))? {
            let path = entry.with_context(|| format!("cannot list {}", next.display()))?.path();
            let hidden = path.file_name().is_some_and(|name| name.to_string_lossy().starts_with('.'));
            if hidden {
                continue;
            }
            if path.is_dir() {
                open.push(path);
                continue;
            }
            let bytes = std::fs::read(&path).with_context(|| format!("cannot read {}", path.display()))?;
            let inside = path.strip_prefix(folder).unwrap_or(&path).to_string_lossy().replace('\\', "/");
            out.insert(inside, bytes);
        }
    }
    Ok(out)
}
