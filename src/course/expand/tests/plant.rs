//! What a chapter says of a plant's own machines and values.

use std::collections::BTreeSet;

use drivecourse_machine::{Draw, Registry, Stated};

use super::{FAMILY, ITEMS, block, data, with};
use crate::expand::Expander;

#[test]
fn a_chapter_says_once_whose_its_machines_are() {
    let block = |word: &str, seed: u32| format!("```{word}\nitem = \"soft-foot-gap\"\nseed = {seed}\n```\n\n");
    let text = ["# Feet\n\n", &block("practice", 3), &block("worked", 4), &block("worked", 5)].concat();
    let of_module = |own: &[&str], machines: &[&str]| {
        let mut data = data();
        data.plans[0].family.machines = machines.iter().map(|name| (*name).to_owned()).collect();
        let own = own.iter().map(|id| (*id).to_owned()).collect();
        Expander::new(data).of_module(own).chapter("mount/feet.md", &text).unwrap()
    };
    for (own, machines, says) in [
        (&[][..], &[][..], "This machine is made up. At"),
        (&["grain-elevator"], &[], "This machine is made up. At"),
        (&["grain-elevator"], &["K-1"], "This is one of the plant's machines"),
        (&["other"], &[], "This machine is made up and none of the plant's"),
    ] {
        let html = of_module(own, machines).replace('’', "'");
        assert_eq!(html.matches("class=\"card-whose\"").count(), 1, "{html}");
        let (before, after) = html.split_once("class=\"card-whose\">").unwrap();
        assert!(after.starts_with(says), "{own:?}: {after}");
        // In the first worked example, above its fold, and not in the card before it.
        let worked = before.rfind("<section class=\"worked\"").unwrap();
        assert!(before.matches("class=\"worked\"").count() == 1 && !before[worked..].contains("<details"), "{before}");
    }
    let alone = Expander::new(data()).chapter("mount/feet.md", &block("practice", 3)).unwrap();
    assert_eq!(alone.matches("class=\"card-whose\"").count(), 1, "where nothing is worked, the first card says it");
}

/// The small course in a module whose own family states some values, with marks in its source.
fn with_own_values(stated: &[(&str, f64)]) -> Expander {
    let mut data = with(&[ITEMS], &[("grain-elevator", FAMILY), ("plant", FAMILY)]);
    let family = &mut data.plans[1].family;
    let mut own = Vec::new();
    for (id, value) in stated {
        let quantity = Registry::get().find(id).unwrap();
        family.roots.retain(|(root, _)| *root != quantity);
        family.roots.push((quantity, Draw::Fixed(*value)));
        own.push(Stated { quantity, source: "M_12 <b>*3*</b>".into(), because: String::new() });
    }
    family.stated = own.into();
    Expander::new(data).of_module(BTreeSet::from(["plant".to_owned()]))
}

#[test]
fn what_a_plant_has_laid_down_stands_before_the_work_of_a_chapter() {
    let chapter = |stated: &[(&str, f64)], text: &str| with_own_values(stated).chapter("mount/feet.md", text).unwrap();
    let card = block("practice", "item = \"soft-foot-gap\"\nfamily = \"grain-elevator\"");
    let text = format!("# Feet\n\nSome words.\n\n## Work\n\n{card}");
    let told = chapter(&[("mount.level_limit", 3e-4), ("mount.gap_limit", 3e-5)], &text);
    let (before, after) = told.split_once("> [!NOTE]\n").unwrap();
    assert!(before.ends_with("Some words.\n\n") && after.contains("\n\n## Work"), "{told}");
    let note = after.split("\n\n").next().unwrap();
    let lines: Vec<&str> = note.lines().filter(|line| line.starts_with("> - ")).collect();
    assert!(lines.len() == 2 && lines[0].contains("0\\.03\u{a0}mm") && lines[1].contains("mm\\/m"), "{note}");
    // The author's marks are words.
    assert!(note.contains("M\\_12 \\<b\\>\\*3\\*\\<\\/b\\>"), "{note}");
    // Of another topic, of no topic, and where nothing is laid down, nothing is said.
    for text in ["# Feet\n\n## Work\n", "# Feet\n\n## Chain\n\n```quantities\ntopic = \"chain\"\n```\n"] {
        assert!(!chapter(&[("mount.gap_limit", 3e-5)], text).contains("[!NOTE]"), "{text}");
    }
    assert!(!chapter(&[], &text).contains("[!NOTE]"));
}

#[test]
fn a_card_that_works_out_what_is_usual_says_what_is_laid_down() {
    let card = |family: &str, stated: &[(&str, f64)]| {
        let card = block("practice", &format!("item = \"soft-foot-gap\"\nfamily = \"{family}\"\nseed = 4"));
        with_own_values(stated).chapter("a.md", &card).unwrap()
    };
    let says = "Asked here is what is usual.";
    assert!(card("grain-elevator", &[("mount.gap", 3e-4)]).contains(says));
    // A limit that is shown to the reader is not worked out; and the plant's own machines have it themselves.
    assert!(!card("grain-elevator", &[("mount.gap_limit", 3e-5)]).contains(says));
    assert!(!card("plant", &[]).contains(says));
}
