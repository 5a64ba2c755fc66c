//! What `check` doubts, what is left over from the example, and words of a module's own in another language.

use crate::{Place, plain};

const FAMILY: &str = "plant/scenarios/families/our-drive.toml";
const TABLE: &str = "plant/scenarios/families/our-drive.csv";

/// What `check` says of the module with one file changed.
fn told(place: &Place, file: &str, change: impl Fn(&str) -> String) -> String {
    let good = place.text(file);
    let changed = change(&good);
    assert_ne!(changed, good, "the mutation has taken hold");
    place.write(file, changed);
    let said = plain(&place.run(&["check", "--module", "plant"]).done());
    place.write(file, good);
    said
}

#[test]
fn what_may_be_right_and_seldom_is_so_is_told_where_it_stands() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain"]).done();
    let steep = |text: &str, climb: &str, lie: &str| {
        let mut fixed = format!("[fixed]\n\"chain.incline\" = \"{climb}\"\n\"chain.lie\" = \"{lie}\"\n");
        // What goes with it.
        if lie.starts_with("steep") {
            fixed.push_str("\"chain.movement_low\" = \"2 %\"\n\"chain.movement_high\" = \"3 %\"\n");
            fixed.push_str("\"chain.sag_share_wanted\" = \"1.1 %\"\n");
        }
        text.replacen("[fixed]\n", &fixed, 1)
    };
    let line = |text: &str, what: &str| 1 + text.lines().position(|line| line.contains(what)).unwrap();
    let family = place.text(FAMILY);
    let at = format!("our-drive.toml:{}:", line(&family, "[fixed]") + 2);
    let said = told(&place, FAMILY, |text| steep(text, "75°", "level or nearly so"));
    assert!(said.contains(&at) && said.contains("the line of centres climbs at 75.00°"), "{said}");
    let said = told(&place, FAMILY, |text| steep(text, "10°", "steep or upright"));
    assert!(said.contains(&at) && said.contains("climbs at 10.00° only"), "{said}");
    for (climb, lie) in [("45°", "steep or upright"), ("45°", "level or nearly so")] {
        let said = told(&place, FAMILY, |text| steep(text, climb, lie));
        assert!(!said.contains("climbs"), "{said}");
    }
    // A machine of the table, in its own cell.
    let look = place.run(&["look", "our-drive", "--machine", "SC-01", "--module", "plant"]).done();
    let links = look.lines().find(|line| line.contains("number of links in the chain")).unwrap();
    let even: u32 = links.split_whitespace().last().unwrap().parse().unwrap();
    let alone = |links: u32| {
        move |text: &str| {
            let mut rows = text.lines();
            let (head, row) = (rows.next().unwrap(), rows.next().unwrap());
            format!("{head},chain.links\n{row},{links}\n")
        }
    };
    let said = told(&place, TABLE, alone(even - 1));
    let odd = format!("SC-01: {} links are an odd number", even - 1);
    assert!(said.contains("our-drive.csv:2:") && said.contains(&odd), "{said}");
    assert!(!told(&place, TABLE, alone(even)).contains("odd number"));
}

#[test]
fn the_source_of_the_example_is_told_once_the_family_is_an_authors_own() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "mount"]).done();
    assert!(!place.run(&["check", "--module", "plant"]).done().contains("source of the example"));
    let named = |text: &str| text.replacen("storage conveyor drive", "bark conveyor drive", 1);
    let said = told(&place, FAMILY, named);
    assert!(said.contains("mount.gap_limit still has the source of the example"), "{said}");
    let own = told(&place, FAMILY, |text| named(text).replacen("our maintenance standard, section 3", "BM-2", 1));
    assert!(!own.contains("source of the example"), "{own}");
}

#[test]
fn the_programs_translation_does_not_stand_for_an_authors_own_words() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "heat"]).done();
    let exam = "plant/scenarios/exams/first-check.toml";
    let title = |place: &Place, out: &str| {
        let of = ["--exam", "first-check", "--roster", "first-group", "--secret", "secret", "--language", "de"];
        place.run(&[&["papers", "--module", "plant", "--out", out][..], &of].concat()).done();
        place.text(&format!("{out}/exam.json"))
    };
    // The exam of `new` has the name of the program's and another title.
    let said = title(&place, "one");
    assert!(said.contains("First check of a drive") && !said.contains("Erste Prüfung"), "{said}");
    // The program's own title is said in German; and so is an author's, by a translation of the author's own.
    let text = place.text(exam).replacen("First check of a drive", "First check of a chain drive", 1);
    place.write(exam, text);
    assert!(title(&place, "two").contains("Erste Prüfung eines Kettentriebs"));
    place.write(exam, place.text(exam).replacen("First check of a chain drive", "First look", 1));
    place.write("plant/theme/words/de/own.ftl", "exam-first-check = Erster Blick\n");
    assert!(title(&place, "three").contains("Erster Blick"));
    let missing = |place: &Place| place.run(&["words", "--module", "plant", "--language", "de", "--missing"]).done();
    assert!(!missing(&place).contains("exam-first-check"));
    std::fs::remove_dir_all(place.path("plant/theme")).unwrap();
    assert!(missing(&place).contains("exam-first-check = First look"));
}
