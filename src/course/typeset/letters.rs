//! Which characters the built-in fonts can show, and what stands for the others.

use std::collections::BTreeSet;

use serde_json::Value;
use typst::text::Font;

use crate::pages::is_unruly;

/// Stands for a character that the fonts do not have.
const SQUARE: char = '\u{25A1}';

/// The characters that every face of the text family has.
#[derive(Debug)]
pub(super) struct Letters(BTreeSet<u32>);

impl Letters {
    /// Those that all faces of the first font's family have: a name may stand in any of them.
    pub(super) fn of(fonts: &[Font]) -> Self {
        let family = fonts.first().map(|font| font.info().family.as_str());
        let mut faces = fonts.iter().map(|font| font.info()).filter(|info| Some(info.family.as_str()) == family);
        let mut shared: BTreeSet<u32> = faces.next().map(|info| info.coverage.iter().collect()).unwrap_or_default();
        for info in faces {
            shared.retain(|c| info.coverage.contains(*c));
        }
        Self(shared)
    }

    /// Mends every string in `data`, and returns the characters that became squares.
    pub(super) fn fit(&self, data: &mut Value) -> BTreeSet<char> {
        let mut missing = BTreeSet::new();
        self.fit_into(data, &mut missing);
        missing
    }

    fn fit_into(&self, data: &mut Value, missing: &mut BTreeSet<char>) {
        match data {
            Value::String(text) => *text = self.shown(text, missing),
            Value::Array(inside) => inside.iter_mut().for_each(|value| self.fit_into(value, missing)),
            Value::Object(inside) => inside.values_mut().for_each(|value| self.fit_into(value, missing)),
            _ => {}
        }
    }

    fn shown(&self, text: &str, missing: &mut BTreeSet<char>) -> String {
        let mut shown = String::with_capacity(text.len());
        for c in text.chars().filter(|c| !is_unruly(*c) && !has_no_shape(*c)) {
            if matches!(c, '\n' | '\t') || self.0.contains(&u32::from(c)) {
                shown.push(c);
            } else {
                missing.insert(c);
                shown.push(SQUARE);
            }
        }
        shown
    }
}

/// Characters that only say how others are to be shown or joined: what they say is lost with a square, and without one
/// they mean nothing on paper.
fn has_no_shape(c: char) -> bool {
    matches!(c, '\u{AD}' | '\u{61C}' | '\u{200B}'..='\u{200F}' | '\u{2060}'..='\u{206F}' | '\u{FE00}'..='\u{FE0F}' | '\u{FEFF}' | '\u{E0000}'..='\u{E0FFF}')
}
