//! Slips of a new author: each is told, where it stands, with its mend.

use crate::{Place, plain};

const FAMILY: &str = "scenarios/families/our-drive.toml";
const TABLE: &str = "scenarios/families/our-drive.csv";
const ITEMS: &str = "scenarios/items/our-items.toml";
const EXAM: &str = "scenarios/exams/first-check.toml";
const ROSTER: &str = "scenarios/rosters/first-group.csv";
const LIST: &str = "book/SUMMARY.md";

/// Makes slips in a new module, and expects `check` to end with `code` and to say these things.
fn told(slips: &[(&str, &str, &str)], code: i32, says: &[&str]) -> String {
    let place = Place::new();
    place.run(&["new", "plant"]).done();
    for (file, from, to) in slips {
        place.mend(&format!("plant/{file}"), from, to);
    }
    let ran = place.run(&["check", "--module", "plant"]);
    let out = plain(&ran.out);
    for part in says {
        assert!(out.contains(part), "{slips:?}: {part:?} is not in:\n{out}");
    }
    assert_eq!(ran.code, code, "{slips:?}: {out}{}", ran.err);
    out
}

#[test]
fn a_broken_line_of_the_list_of_chapters_is_told_by_check_and_build_alike() {
    for broken in ["- [Chain(chain.md)", "- Chain(chain.md)"] {
        let place = Place::new();
        place.run(&["new", "plant"]).done();
        place.mend("plant/book/SUMMARY.md", "- [Chain](chain.md)", broken);
        let says =
            ["plant/book/SUMMARY.md:6:1: This line names a chapter", "Write it so:", "\n       - [Chain](chain.md)"];
        let checked = place.run(&["check", "--module", "plant"]);
        assert_eq!(checked.code, 1, "{}", checked.out);
        let built = place.run(&["build", "--module", "plant", "--out", "course"]);
        assert_eq!(built.code, 1, "{}", built.err);
        for part in says {
            assert!(checked.out.contains(part), "{broken}: {part} {}", checked.out);
            assert!(built.err.contains(part), "{broken}: {part} {}", built.err);
        }
        assert!(!place.path("course").exists());
    }
}

#[test]
fn what_is_empty_or_open_is_refused_where_it_stands() {
    let name = ("name = \"storage conveyor drive\"", "name = \"\"");
    told(&[(FAMILY, name.0, name.1)], 1, &["our-drive.toml:8:8: This family has an empty name.", "name = \"storage"]);
    let fault = ("name = \"chain left far too slack\"", "name = \" \"");
    told(&[(FAMILY, fault.0, fault.1)], 1, &["This fault has an empty name."]);
    told(&[(TABLE, "\nSC-02,", "\n,")], 1, &["our-drive.csv:3:", "This machine has no name, and the others have one."]);
    let open = ("text = \"The {machine} has run", "text = \"The {machine has run");
    told(&[(ITEMS, open.0, open.1)], 1, &["A curly bracket is not closed: {machine", "Write {machine}."]);
    let fence = ("the side.\"\n```\n", "the side.\"\n");
    let says = ["our-drive.md:16:1: This figure block is not closed.", "three marks alone"];
    let out = told(&[("book/our-drive.md", fence.0, fence.1)], 1, &says);
    assert!(!out.contains("no value here"), "{out}");
}

#[test]
fn headings_in_brackets_and_items_twice_are_told_with_the_other_place() {
    let place = Place::new();
    place.run(&["new", "plant"]).done();
    let line = place.text(&format!("plant/{FAMILY}")).lines().position(|line| line == "[[limit]]").unwrap() + 1;
    let at = format!("our-drive.toml:{line}:1:");
    told(&[(FAMILY, "[[limit]]", "[limit]")], 1, &[&at, "with two brackets:\n       [[limit]]"]);
    let twice = "[[limit]]\nquantity = \"chain.wrap_small\"";
    let both = "[limit]\nquantity = \"heat.ambient\"\nat_most = \"50 °C\"\n[limit]\nquantity = \"chain.wrap_small\"";
    told(&[(FAMILY, twice, both)], 1, &["with two brackets:\n       [[limit]]"]);
    let id = ("id = \"our-rise\"", "id = \"our-twist\"");
    told(&[(ITEMS, id.0, id.1)], 1, &["two items called \"our-twist\"; the other one stands in line 7."]);
}

#[test]
fn what_is_seldom_meant_is_a_notice() {
    let heading = ("id,name,group,units", "id,name,gruop,units");
    told(&[(ROSTER, heading.0, heading.1)], 0, &["first-group.csv:1:9:", "Did you mean \"group\"?"]);
    told(&[(EXAM, "pass = \"70 %\"", "pass = \"7 %\"")], 0, &["first-check.toml:5:8:", "Did you mean 70 %?"]);
    told(&[(EXAM, "minutes = 60", "minutes = 6")], 0, &["first-check.toml:4:11: 6 minutes for 9 questions"]);
    let row = "[[row]]\ntopic = \"heat\"\ncount = 2\nweight = 4\n";
    told(&[(EXAM, row, &format!("{row}\n{row}"))], 0, &["This row takes from the same questions", "count = 4"]);
    let list = ("- [Our drives](our-drive.md)\n", "");
    told(
        &[(LIST, list.0, list.1)],
        0,
        &["The chapter our-drive.md is not in this list", "- [Our drives](our-drive.md)"],
    );
    let topic = ("id = \"our-sag-to-set\"\ntopic = \"chain\"", "id = \"our-sag-to-set\"\ntopic = \"heat\"");
    told(
        &[(ITEMS, topic.0, topic.1)],
        0,
        &["is of the topic \"heat\", and nothing that it shows", "topic = \"chain\""],
    );
}

#[test]
fn values_are_told_where_the_author_wrote_them() {
    let fixed = |line: &str| format!("[fixed]\n{line}\n");
    let own = |lines: &str| (FAMILY, "[fixed]\n".to_owned(), fixed(lines));
    let check = |(file, from, to): (&str, String, String), code: i32, says: &[&str]| {
        told(&[(file, from.as_str(), to.as_str())], code, says)
    };
    let stated = |id: &str, value: &str| format!("\"{id}\" = {{ value = \"{value}\", source = \"our sheet\" }}");
    // A window upside down.
    let low = stated("chain.movement_low", "20 %");
    let out = check(own(&low), 1, &["chain.movement_low is 20.00 % here, above chain.movement_high", "Swap them"]);
    assert!(!out.contains("Every sound machine") && !out.contains("could be drawn"), "{out}");
    // Of another family's limit, where the value stands that is behind it.
    let at = ["our-drive.toml:", "\"drive.load_share\" = { between"];
    let share = (FAMILY, "\"65 %\", \"90 %\"".to_owned(), "\"120 %\", \"140 %\"".to_owned());
    let out = check(share, 1, &[&at[..], &["With drive.load_share as the machines"]].concat());
    assert!(!out.contains("our-drive.csv:"), "{out}");
    // Of a bound that real machines need not keep, where the value stands that is behind it, and once.
    let share = (FAMILY, "\"65 %\", \"90 %\"".to_owned(), "\"6.5 %\", \"9 %\"".to_owned());
    let out = check(share, 0, &[&at[..], &["bearings of such drives are chosen for this life"]].concat());
    assert!(!out.contains("our-drive.csv:") && out.matches("made-up machines").count() == 1, "{out}");
    let share = (FAMILY, "\"65 %\", \"90 %\"".to_owned(), "\"65 %\", \"900 %\"".to_owned());
    check(share, 0, &["machines are rejected for each one kept", "| \"drive.load_share\""]);
    // Where the program's chapters cannot be filled in, one problem at the value.
    let gap = (FAMILY, "0.04 mm".to_owned(), "0.0006 mm".to_owned());
    let out = check(gap, 1, &["What chapters ask or show does not go with mount.gap_limit", "book/mounting.md:"]);
    assert!(!out.contains("Name another family"), "{out}");
}

#[test]
fn a_value_far_from_the_other_familys_is_told_where_no_fault_shows_it() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "heat"]).done();
    let family = format!("plant/{FAMILY}");
    place.mend(&family, "topics = [", "without = [\"hot-running\"]\ntopics = [");
    place.mend(&family, "[fixed]\n", "[fixed]\n\"heat.rise_limit\" = \"560 °C\"\n");
    let out = plain(&place.run(&["check", "--module", "plant"]).done());
    assert!(
        out.contains("heat.rise_limit is 560.0 °C here, and the machines of quarry-conveyor have 55.56 °C."),
        "{out}"
    );
}

#[test]
fn a_climb_downwards_is_told_in_the_table() {
    let place = Place::new();
    place.run(&["new", "plant"]).done();
    let table = format!("plant/{TABLE}");
    let with = |line: &str| match line.split_once(',') {
        Some(("machine", _)) => format!("{line},chain.incline [°]"),
        Some(("SC-03", _)) => format!("{line},-25"),
        _ => format!("{line},10"),
    };
    let text = place.text(&table).lines().map(with).collect::<Vec<_>>().join("\n");
    place.write(&table, text);
    let ran = place.run(&["check", "--module", "plant"]);
    let out = plain(&ran.out);
    assert!(ran.code == 1 && ran.err.contains("1 problem was found"), "{out}{}", ran.err);
    let row = place.text(&table).lines().nth(3).unwrap().to_owned();
    assert!(out.contains(&format!("our-drive.csv:4:{}: ", row.chars().count() - 2)), "{out}");
    assert!(out.contains("does not go with chain.incline") && out.contains("book/chain.md:"), "{out}");
    assert!(!out.lines().any(|line| line.starts_with("book/chain.md:")), "{out}");
}

#[test]
fn faults_that_cannot_be_drawn_are_left_out_in_one_line() {
    let place = Place::new();
    place.run(&["new", "plant"]).done();
    // Ratings that no overload reaches.
    let table = format!("plant/{TABLE}");
    let heading = |line: &str, name: &str| line.split(',').position(|cell| cell.starts_with(name));
    let text = place.text(&table);
    let rating = heading(text.lines().next().unwrap(), "load.rating_middle").unwrap();
    let raised = |line: &str| {
        let mut cells: Vec<String> = line.split(',').map(str::to_owned).collect();
        cells[rating] = format!("{}0", cells[rating]);
        cells.join(",")
    };
    let rows: Vec<String> =
        text.lines().enumerate().map(|(place, line)| if place == 0 { line.to_owned() } else { raised(line) }).collect();
    place.write(&table, rows.join("\n"));
    let says = |without: &str| {
        let ran = place.run(&["check", "--module", "plant"]);
        let out = plain(&ran.out);
        assert_eq!(ran.code, 1, "{out}");
        assert!(out.contains(without) && out.contains("stands in one line"), "{out}");
        assert!(out.lines().all(|line| line.chars().filter(|c| *c == '^').count() < 60), "{out}");
        assert!(out.contains("our-drive.csv:1:") && !out.contains("our-drive.csv:1:1:"), "{out}");
    };
    says("\n       without = [\"overload\", \"sprocket-too-far-out\"]\n");
    let like = "like = \"quarry-conveyor\"\n";
    place.mend(&format!("plant/{FAMILY}"), like, &format!("{like}without = [\"soft-foot\"]\n"));
    says("\n       without = [\"soft-foot\", \"overload\", \"sprocket-too-far-out\"]\n");
}

#[test]
fn a_language_without_words_is_told_at_its_line() {
    let place = Place::new();
    place.run(&["new", "plant"]).done();
    place.mend("plant/module.toml", "units = \"si\"", "language = \"ger\"\nunits = \"si\"");
    let ran = place.run(&["check", "--module", "plant"]);
    ran.refused(&["plant/module.toml:6:12: There are no words for the language \"ger\".", "There are words for de;"]);
}
