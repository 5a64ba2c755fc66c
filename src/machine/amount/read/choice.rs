//! Choices by label, letter or number, and orders of lettered items.

use super::ReadError;
use super::text::{clean, clip};
use crate::messages;
use crate::quantity::Quantity;
use crate::topics::{size_and_strands, size_called, size_on_papers};
use crate::unit::Kind;

/// The letter that stands before the choice or item at `index`: A for the first.
pub fn letter(index: usize) -> char {
    u8::try_from(index).ok().filter(|index| *index < 26).map_or('?', |index| char::from(b'A' + index))
}

/// Which of `choices` is meant by `text`, counted from nought.
///
/// The first of these that fits: the label, regardless of case, spaces and hyphens; its letter
/// (`b`, `B)`), as every list of choices is shown with letters; its number counted from one
/// (`2`, `2.`), or, if labels hold figures themselves, the label that holds that number
/// (`2` is `foot 2`); the beginning of one label only. Brackets, quotation marks, exclamation marks and the like round
/// any of them do not matter (`"b"`, `Stop!`); a question mark does, for it says that somebody is in doubt.
///
/// A word from the middle or the end of one label is not enough, though no other label holds it: `stop` in `run on to the
/// next planned stop` and `guard` in `take off the guard` may be meant for the opposite of their labels.
///
/// # Errors
/// [`ReadError::Ambiguous`] names the choices that fit alike, [`ReadError::NoSuchChoice`] all of them.
///
/// # Example
/// ```
/// use drivecourse_machine::amount::read_choice;
/// assert_eq!(read_choice("Foot-2", &["foot 1", "foot 2"]), Ok(1));
/// ```
pub fn read_choice(text: &str, choices: &[&str]) -> Result<usize, ReadError> {
    let text = clean(text, Kind::Choice)?;
    let one_of = |fits: &dyn Fn(usize) -> bool| -> Option<Result<usize, ReadError>> {
        let found: Vec<usize> = (0..choices.len()).filter(|index| fits(*index)).collect();
        match found[..] {
            [] => None,
            [one] => Some(Ok(one)),
            _ => Some(Err(ReadError::Ambiguous {
                written: clip(&text),
                candidates: found.iter().map(|index| choices[*index].to_owned()).collect(),
            })),
        }
    };
    let bare = unmarked(&text);
    if plain(bare).next().is_some() {
        if let Some(found) = one_of(&|index| plain(unmarked(choices[index])).eq(plain(bare))) {
            return found;
        }
        if let Some(index) = index_of_letter(&text, choices.len()) {
            return Ok(index);
        }
        if let Some(number) = number_alone(&text) {
            let numbered = choices.iter().any(|label| label.contains(|c: char| c.is_ascii_digit()));
            let found = match numbered {
                true => one_of(&|index| numbers(choices[index]).any(|own| own == number)),
                false => number.checked_sub(1).filter(|index| *index < choices.len()).map(Ok),
            };
            if let Some(found) = found {
                return found;
            }
        } else if let Some(found) = one_of(&|index| begins(choices[index], bare)) {
            return found;
        }
    }
    let choices = choices.iter().map(|label| (*label).to_owned()).collect();
    Err(ReadError::NoSuchChoice { written: clip(&text), choices })
}

/// Which of the choices of `quantity` a file states, counted from nought.
///
/// The first of these that fits: the choice itself; the same whatever its capitals; whole words that one choice only begins
/// with (`ball` for `ball bearing`); the size of a chain as papers have it (`#120`, `ANSI 120`, `ISO 16B`, `120-1`). Letters and
/// numbers of a list are none: a file shows no list.
///
/// # Example
/// ```
/// use drivecourse_machine::{Registry, amount::stated_choice};
/// let kind = Registry::get().find("load.bearing_kind").unwrap().get();
/// assert_eq!(stated_choice(kind, "Ball"), Some(0));
/// assert_eq!(stated_choice(kind, "b"), None);
/// ```
pub fn stated_choice(quantity: &Quantity, text: &str) -> Option<usize> {
    let choices = quantity.choices;
    if let Some(found) = choices.iter().position(|choice| *choice == text) {
        return Some(found);
    }
    let words = |text: &str| text.split_whitespace().map(str::to_lowercase).collect::<Vec<_>>();
    let written = words(text);
    let one_of = |fits: &dyn Fn(&[String]) -> bool| {
        let mut found = (0..choices.len()).filter(|index| !written.is_empty() && fits(&words(choices[*index])));
        found.next().filter(|_| found.next().is_none())
    };
    one_of(&|choice| choice == written).or_else(|| one_of(&|choice| choice.starts_with(&written))).or_else(|| {
        let size = (quantity.id == "chain.size").then(|| size_on_papers(text)).flatten()?;
        choices.iter().position(|choice| *choice == size)
    })
}

messages! { pub(crate) SAYS {
    CALLED_HERE = "problem-file-called-here", "{written} is called {name} here.";
    CHOOSE = "problem-file-choose", "Choose one of: {choices}.";
    STRANDS = "problem-file-strands", "{written} is {size} with the number of its strands behind it, which chain.strands takes.";
    STRANDS_MEND = "problem-file-strands-mend", "{called} Write it so:\n{lines}";
} }

/// Says what `written` is called among the choices of `quantity`, if it is another standard's name of one of them.
pub fn called_here(quantity: &Quantity, written: &str) -> Option<String> {
    let written = written.trim();
    if let Some((size, _)) = strands_behind(quantity, written) {
        return Some(told!(STRANDS, "written" = written, "size" = size));
    }
    let name = (quantity.id == "chain.size").then(|| size_called(written)).flatten()?;
    Some(told!(CALLED_HERE, "written" = written, "name" = name))
}

/// The choice of `quantity` that `written` names, where it is the size of a chain with the number of strands behind it, and
/// that number: `24B-2`.
pub fn strands_behind(quantity: &Quantity, written: &str) -> Option<(&'static str, u32)> {
    (quantity.id == "chain.size").then(|| size_and_strands(written)).flatten()
}

/// What to write instead of `written`, which is none of the choices of `quantity`.
pub fn choices_of(quantity: &Quantity, written: &str) -> String {
    let called = called_here(quantity, written);
    if let (Some((size, strands)), Some(called)) = (strands_behind(quantity, written), &called) {
        let lines = format!("\"{}\" = \"{size}\"\n\"chain.strands\" = \"{strands}\"", quantity.id);
        return told!(STRANDS_MEND, "called" = called, "lines" = lines);
    }
    let called = called.map_or_else(String::new, |called| format!("{called} "));
    format!("{called}{}", told!(CHOOSE, "choices" = quantity.choices.join(", ")))
}

/// Small letters and figures only.
fn plain(text: &str) -> impl Iterator<Item = char> {
    let kept = text.chars().filter(|c| !matches!(c, ' ' | '\u{a0}' | '\u{202f}' | '-' | '_' | '.' | '"' | '\''));
    kept.flat_map(char::to_lowercase)
}

/// Whether `label` begins as `text` does, both made plain.
fn begins(label: &str, text: &str) -> bool {
    let mut label = plain(label);
    plain(text).all(|c| label.next() == Some(c))
}

/// `text` without the marks that may stand round a choice. A point before a figure is part of a number.
fn unmarked(text: &str) -> &str {
    const ROUND: [char; 10] = ['(', ')', '[', ']', '"', '\'', '!', ',', ';', ' '];
    text.trim_start_matches(ROUND).trim_end_matches(|c| ROUND.contains(&c) || matches!(c, '.' | ':'))
}

fn index_of_letter(text: &str, count: usize) -> Option<usize> {
    match unmarked(text).as_bytes() {
        [one] if one.is_ascii_alphabetic() => {
            let index = usize::from(one.to_ascii_uppercase() - b'A');
            (index < count).then_some(index)
        }
        _ => None,
    }
}

fn number_alone(text: &str) -> Option<usize> {
    let text = unmarked(text);
    let text = unmarked(text.strip_prefix('#').unwrap_or(text));
    text.bytes().all(|byte| byte.is_ascii_digit()).then(|| text.parse().ok()).flatten()
}

/// The whole numbers in `label`.
fn numbers(label: &str) -> impl Iterator<Item = usize> {
    label.split(|c: char| !c.is_ascii_digit()).filter_map(|figures| figures.parse().ok())
}

/// The order of `items` lettered items that `text` states: indices from nought, as written.
///
/// Letters or numbers counted from one, parted by spaces, commas, `>`, `→`, `;` or `-`, or run
/// together (`BDAC`, and `2413` up to nine items). `<` is refused: it turns the order round for
/// one reader and not for the next.
///
/// # Errors
/// Every item must stand once: the error names the one that is unknown, twice there or left out.
///
/// # Example
/// ```
/// use drivecourse_machine::amount::read_order;
/// assert_eq!(read_order("b > d > a > c", 4), Ok(vec![1, 3, 0, 2]));
/// assert_eq!(read_order("B D A", 4).unwrap_err().to_string(), "The order leaves out C: write every letter once.");
/// ```
pub fn read_order(text: &str, items: usize) -> Result<Vec<usize>, ReadError> {
    let text = clean(text, Kind::Choice)?;
    let parted = |c: char| matches!(c, ' ' | ',' | '>' | '→' | ';' | '-' | '=' | '|' | '/');
    let mut words: Vec<&str> = text.split(parted).filter(|word| !word.is_empty()).collect();
    let unknown = |word: &str| ReadError::NoSuchItem { written: clip(word), items };
    if let [one] = words[..] {
        let all = |test: fn(&u8) -> bool| one.bytes().all(|byte| test(&byte));
        if all(u8::is_ascii_alphabetic) || (all(u8::is_ascii_digit) && items <= 9) {
            words = (0..one.len()).map(|at| &one[at..=at]).collect();
        }
    }
    let mut order = Vec::with_capacity(items);
    let mut by_number = None;
    for word in words {
        let number = number_alone(word);
        // Letters and numbers mixed are a slip of some sort.
        if *by_number.get_or_insert(number.is_some()) != number.is_some() {
            return Err(unknown(word));
        }
        let index = number.map_or_else(|| index_of_letter(word, items), |number| number.checked_sub(1));
        let index = index.filter(|index| *index < items).ok_or_else(|| unknown(word))?;
        if order.contains(&index) {
            return Err(ReadError::ItemTwice { item: letter(index) });
        }
        order.push(index);
    }
    let missing: Vec<char> = (0..items).filter(|index| !order.contains(index)).map(letter).collect();
    if missing.is_empty() { Ok(order) } else { Err(ReadError::ItemsMissing { missing }) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn choices_are_read_by_label_letter_number_or_beginning() {
        const FEET: &[&str] = &["foot 1", "foot 2", "foot 3", "foot 4"];
        const STATES: &[&str] = &["accept", "correct and recheck", "stop and report"];
        const SIDES: &[&str] = &["input side", "input end", "output side"];
        for (text, choices, index) in [
            ("foot 2", FEET, 1),
            ("Foot-2", FEET, 1),
            ("FOOT2.", FEET, 1),
            ("2", FEET, 1),
            ("2.", FEET, 1),
            ("b", FEET, 1),
            ("B)", FEET, 1),
            ("(b)", FEET, 1),
            ("Ｂ", FEET, 1),
            ("accept", STATES, 0),
            ("  Correct  and Recheck ", STATES, 1),
            ("corr", STATES, 1),
            ("C", STATES, 2),
            ("s", STATES, 2),
            ("3", STATES, 2),
            ("#3", STATES, 2),
            ("out", SIDES, 2),
            ("input e", SIDES, 1),
            ("2", &["2 shims", "1 shim", "no shim"], 0),
            ("10", &["10", "1"], 0),
            ("STOP!!", STATES, 2),
            ("Stop.", STATES, 2),
            ("\"stop\"", STATES, 2),
            ("„Stop“!", STATES, 2),
            ("(stop and report).", STATES, 2),
            ("[b]", STATES, 1),
            ("'B',", STATES, 1),
            ("(3)!", STATES, 2),
            ("(#3)", STATES, 2),
            ("\"foot 2\"", FEET, 1),
            ("tight (over 5 %)", &["slack", "tight (over 5 %)", "tight (over 5 %) and hot"], 1),
        ] {
            assert_eq!(read_choice(text, choices), Ok(index), "{text:?}");
        }
        for (text, choices, said) in [
            ("input", SIDES, "“input” may mean input side or input end: write the whole of the one you mean."),
            ("foot", FEET, "“foot” may mean foot 1, foot 2, foot 3 or foot 4: write the whole of the one you mean."),
            ("5", FEET, "“5” is not one of the choices: write A, B, C or D."),
            ("0", STATES, "“0” is not one of the choices: write A, B or C."),
            ("4", STATES, "“4” is not one of the choices: write A, B or C."),
            ("-", SIDES, "“-” is not one of the choices: write A, B or C."),
            ("()", SIDES, "“()” is not one of the choices: write A, B or C."),
            ("!", SIDES, "“!” is not one of the choices: write A, B or C."),
            // In doubt: an assessor decides.
            ("stop?", STATES, "“stop?” is not one of the choices: write A, B or C."),
            ("b?", STATES, "“b?” is not one of the choices: write A, B or C."),
            (".2", STATES, "“.2” is not one of the choices: write A, B or C."),
            // A word from within a label may be meant for its opposite.
            ("stop", &["run on to the next planned stop", "report"], "“stop” is not one of the choices: write A or B."),
            ("tight", &["not tight", "slack"], "“tight” is not one of the choices: write A or B."),
            ("foot 9", &["x"; 9], "“foot 9” is not one of the choices: write the letter of one of them."),
            (
                "1",
                &["foot 1, shim 2", "foot 2, shim 1"],
                "“1” may mean foot 1, shim 2 or foot 2, shim 1: write the whole of the one you mean.",
            ),
            ("", FEET, "Nothing is written here: write the letter, such as B."),
        ] {
            assert_eq!(read_choice(text, choices).unwrap_err().to_string(), said);
        }
    }

    #[test]
    fn files_state_choices_by_name_beginning_or_as_papers_do() {
        let of = |id: &str| crate::Registry::get().find(id).unwrap().get();
        let choice = |id: &str, text: &str| stated_choice(of(id), text).map(|index| of(id).choices[index]);
        for (id, text, found) in [
            ("load.bearing_kind", "ball bearing", "ball bearing"),
            ("load.bearing_kind", "Ball  Bearing", "ball bearing"),
            ("load.bearing_kind", "roller", "roller bearing"),
            ("chain.lie", "level", "level or nearly so"),
            ("chain.size", "120", "120"),
            ("chain.size", "#120", "120"),
            ("chain.size", "# 120-1", "120"),
            ("chain.size", "ANSI 120", "120"),
            ("chain.size", "ansi No. 80", "80"),
            ("chain.size", "ASME B29.1 No. 100", "100"),
            ("chain.size", "ISO 16B", "16B"),
            ("chain.size", "16b-1", "16B"),
            ("chain.size", "DIN 8187 16B–1", "16B"),
            ("chain.size", "ISO 606: 16B", "16B"),
        ] {
            assert_eq!(choice(id, text), Some(found), "{text}");
        }
        for (id, text) in [
            ("load.bearing_kind", "b"),
            ("load.bearing_kind", "bal"),
            ("load.bearing_kind", "bearing"),
            ("load.bearing_kind", "1"),
            ("load.bearing_kind", ""),
            ("load.bearing_kind", "ball bearing or so"),
            ("chain.sag_verdict", "too"),
            ("chain.size", "16B-2"),
            ("chain.size", "#120-2"),
            ("chain.size", "16A"),
            ("chain.size", "16A-1"),
            ("chain.size", "ANSI"),
            ("chain.size", "ANSI 121"),
            ("chain.size", "1"),
            ("chain.size", "120H"),
        ] {
            assert_eq!(choice(id, text), None, "{text}");
        }
        // What is refused is told of by its name here, whatever stands before it.
        let called = |text: &str| called_here(of("chain.size"), text).unwrap();
        assert_eq!(called("ISO 16A-1"), "ISO 16A-1 is called 80 here.");
        assert!(called("ISO 16B-2").contains("is 16B with the number of its strands"), "{}", called("ISO 16B-2"));
        assert!(called("#120-3").contains("is 120 with the number of its strands"));
    }

    #[test]
    fn orders_hold_every_item_once() {
        for text in [
            "B D A C",
            "2,4,1,3",
            "b>d>a>c",
            "BDAC",
            "2413",
            "B, D, A, C.",
            "b → d → a → c",
            "2 4 1 3",
            "B) D) A) C)",
            "(B) (D) (A) (C)",
            "b-d-a-c",
        ] {
            assert_eq!(read_order(text, 4), Ok(vec![1, 3, 0, 2]), "{text:?}");
        }
        for (text, said) in [
            ("B D A", "The order leaves out C: write every letter once."),
            ("B", "The order leaves out A, C and D: write every letter once."),
            ("B D A B", "B stands twice in the order: write every letter once."),
            ("B D A E", "“E” is none of the 4 items: write the letters in order, such as D C B A."),
            ("2 4 1 0", "“0” is none of the 4 items: write the letters in order, such as D C B A."),
            ("2 D 1 3", "“D” is none of the 4 items: write the letters in order, such as D C B A."),
            ("b<d<a<c", "“b<d<a<c” is none of the 4 items: write the letters in order, such as D C B A."),
            ("", "Nothing is written here: write the letter, such as B."),
        ] {
            assert_eq!(read_order(text, 4).unwrap_err().to_string(), said);
        }
        assert_eq!(read_order("12 11 10 9 8 7 6 5 4 3 2 1", 12).unwrap(), (0..12).rev().collect::<Vec<_>>());
    }
}
