//! Papers and keys as PDF, where the program was built with it (feature `pdf`).

use anyhow::Result;
use drivecourse_course::pages::model::Printout;
use drivecourse_machine::messages;

use crate::assets::Assets;
use crate::cli::SheetSize;

#[cfg(feature = "pdf")]
pub(crate) use with::Press;
#[cfg(not(feature = "pdf"))]
pub(crate) use without::Press;

messages! { pub(crate) ERRORS {
    WITHOUT_PDF = "error-without-pdf", "this program was built without PDF; build it with `cargo run --release --features pdf -- papers ...` (minutes, once), or leave --pdf out and print the pages from a browser";
} }

#[cfg(feature = "pdf")]
mod with {
    use std::collections::BTreeMap;

    use drivecourse_course::typeset::{self, Typesetter};

    use super::{Assets, Printout, Result, SheetSize};
    use crate::files;

    /// Sets papers and keys in type.
    pub(crate) struct Press(Typesetter);

    impl Press {
        /// A press with the print templates of the theme.
        pub(crate) fn new(assets: &Assets, size: SheetSize) -> Result<Self> {
            let mut templates = BTreeMap::new();
            for (path, bytes) in &assets.theme {
                if let Some(name) = path.strip_prefix("print/") {
                    let text = files::text(&assets.shown(&format!("theme/{path}")), bytes.clone())?;
                    templates.insert(name.to_owned(), text);
                }
            }
            let size = match size {
                SheetSize::A4 => typeset::SheetSize::A4,
                SheetSize::Letter => typeset::SheetSize::Letter,
            };
            Ok(Self(Typesetter::new(&templates, size, &assets.words)?))
        }

        /// The file, and the characters that its fonts do not have.
        pub(crate) fn print(&self, printout: &Printout) -> Result<(Vec<u8>, Vec<char>)> {
            let printed = self.0.print(printout)?;
            Ok((printed.pdf, printed.missing))
        }
    }
}

#[cfg(not(feature = "pdf"))]
mod without {
    use super::{Assets, Printout, Result, SheetSize};

    /// There is none.
    pub(crate) enum Press {}

    impl Press {
        /// Says how to get one.
        pub(crate) fn new(_: &Assets, _: SheetSize) -> Result<Self> {
            anyhow::bail!(super::WITHOUT_PDF.text())
        }

        pub(crate) fn print(&self, _: &Printout) -> Result<(Vec<u8>, Vec<char>)> {
            match *self {}
        }
    }
}
