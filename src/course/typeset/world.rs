//! Where the typesetting library finds its templates, fonts and data: in memory, and nowhere else.

use std::collections::BTreeMap;

use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};

use crate::pages::{PDF_UNWRITTEN, PageError};

/// The template that is read first.
const FIRST: &str = "sheets.typ";
/// The file with what is to be printed.
const DATA: &str = "data.json";
/// The families that papers are set in: text, formulas, paper codes.
const FAMILIES: [&str; 3] = ["Libertinus Serif", "New Computer Modern Math", "DejaVu Sans Mono"];

/// What is the same for every print: templates, fonts, the library's own functions.
#[derive(Debug)]
pub(super) struct Shelf {
    library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    fonts: Vec<Font>,
    first: FileId,
    data: FileId,
    templates: BTreeMap<String, Source>,
}

impl Shelf {
    pub(super) fn new(templates: &BTreeMap<String, String>) -> Result<Self, PageError> {
        if !templates.contains_key(FIRST) {
            return Err(PageError::say(PDF_UNWRITTEN.text(), &format!("there is no template {FIRST}")));
        }
        let mut sources = BTreeMap::new();
        for (name, text) in templates {
            let id = id(name)?;
            sources.insert(id.vpath().get_without_slash().to_owned(), Source::new(id, text.clone()));
        }
        let all = typst_assets::fonts().flat_map(|bytes| Font::iter(Bytes::new(bytes)));
        let fonts: Vec<Font> = all.filter(|font| FAMILIES.contains(&font.info().family.as_str())).collect();
        Ok(Self {
            library: LazyHash::new(Library::default()),
            book: LazyHash::new(FontBook::from_fonts(&fonts)),
            fonts,
            first: id(FIRST)?,
            data: id(DATA)?,
            templates: sources,
        })
    }

    pub(super) fn fonts(&self) -> &[Font] {
        &self.fonts
    }
}

/// The library's number for a file of that name.
fn id(name: &str) -> Result<FileId, PageError> {
    let path = VirtualPath::new(name).map_err(|e| PageError::say(PDF_UNWRITTEN.text(), &format!("{name}: {e}")))?;
    Ok(RootedPath::new(VirtualRoot::Project, path).intern())
}

/// One print: the shelf, and what is to be printed.
#[derive(Debug)]
pub(super) struct Desk<'a> {
    shelf: &'a Shelf,
    data: Bytes,
}

impl<'a> Desk<'a> {
    pub(super) fn new(shelf: &'a Shelf, data: Vec<u8>) -> Self {
        Self { shelf, data: Bytes::new(data) }
    }
}

/// No such file on the shelf.
fn not_there(id: FileId) -> FileError {
    FileError::NotFound(id.vpath().get_without_slash().into())
}

impl World for Desk<'_> {
    fn library(&self) -> &LazyHash<Library> {
        &self.shelf.library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &self.shelf.book
    }

    fn main(&self) -> FileId {
        self.shelf.first
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        let known = *id.root() == VirtualRoot::Project;
        let found = self.shelf.templates.get(id.vpath().get_without_slash()).filter(|_| known);
        found.cloned().ok_or_else(|| not_there(id))
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        if id == self.shelf.data { Ok(self.data.clone()) } else { Err(not_there(id)) }
    }

    fn font(&self, index: usize) -> Option<Font> {
        self.shelf.fonts.get(index).cloned()
    }

    /// There is no clock: a print is the same on any day.
    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}
