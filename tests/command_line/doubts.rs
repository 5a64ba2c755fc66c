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
    // Steep, and judged by the window of a level drive, which the other family fixes.
    let says = "has chain.lie at \"steep or upright\", which makes chain.movement_low 2.000 %, chain.movement_high 3.000 % by \
                calculation; quarry-conveyor fixes chain.movement_low 4.000 %, chain.movement_high 6.000 %.";
    let one = told(&place, TABLE, |text| {
        with_cell(&with_every(text, "chain.lie", "level or nearly so"), "chain.lie", 2, "steep or upright")
    });
    assert!(one.contains("our-drive.csv:3:") && one.contains(&format!("SC-02 {says}")), "{one}");
    assert!(one.matches("by calculation").count() == 1, "{one}");
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

/// The table with `value` in the column `column` of the machine in `row`, counted from 1; the column is added where there is none.
fn with_cell(text: &str, column: &str, row: usize, value: &str) -> String {
    let mut rows: Vec<Vec<&str>> = text.lines().map(|line| line.split(',').collect()).collect();
    let place = rows[0].iter().position(|heading| heading.split(' ').next() == Some(column)).unwrap_or(rows[0].len());
    if place == rows[0].len() {
        rows.iter_mut().enumerate().for_each(|(line, cells)| cells.push(if line == 0 { column } else { "" }));
    }
    rows[row][place] = value;
    rows.iter().map(|cells| cells.join(",") + "\n").collect()
}

/// The table with a column more, the same in every row.
fn with_every(text: &str, column: &str, value: &str) -> String {
    let line = |(line, row): (usize, &str)| format!("{row},{}\n", if line == 0 { column } else { value });
    text.lines().enumerate().map(line).collect()
}

#[test]
fn values_of_a_table_that_hardly_go_together_are_told_in_their_cell() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain,load"]).done();
    let cell = |column: &str, value: &str| told(&place, TABLE, |text| with_cell(text, column, 2, value));
    // Each machine of a table: SC-02 has a span of 150 mm and its shaft end's middle at 85 mm.
    let swapped = told(&place, TABLE, |text| {
        with_cell(&with_cell(text, "load.bearing_span", 2, "85"), "load.shaft_middle", 2, "150")
    });
    assert!(
        swapped.contains("our-drive.csv:3:") && swapped.contains("SC-02: load.bearing_span is 85.00 mm"),
        "{swapped}"
    );
    let whole = cell("drive.stage_efficiency", "0.94");
    assert!(whole.contains("SC-02: drive.stage_efficiency is 0.9400 for each of 3 stages."), "{whole}");
    let good = cell("drive.stage_efficiency", "0.9933");
    assert!(good.contains("SC-02: drive.efficiency is 0.9800 with 3 gear stages"), "{good}");
    assert!(!cell("drive.stage_efficiency", "0.985").contains("SC-02"));
    // SC-01 needs 93.0 pitches or so: 94 links. A pair more is told, and no other machine has a number of its own.
    let links = |count: u32| {
        told(&place, TABLE, |text| {
            let alone: String = text.lines().take(2).map(|line| format!("{line}\n")).collect();
            with_cell(&alone, "chain.links", 1, &count.to_string())
        })
    };
    assert!(!links(94).contains("ask for"), "{}", links(94));
    for count in [92, 96] {
        let said = links(count);
        assert!(said.contains(&format!("SC-01: chain.links is {count}")) && said.contains("ask for 93."), "{said}");
    }
}

#[test]
fn rounded_centres_on_a_drawing_keep_the_links_on_it() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain,load", "--units", "us"]).done();
    let drawn = |text: &str| {
        let cells = [("size", "#80"), ("teeth_small", "17"), ("teeth_large", "34"), ("centres_planned", "36.15")];
        cells
            .iter()
            .fold(text.to_owned(), |text, (column, value)| with_cell(&text, &format!("chain.{column}"), 1, value))
    };
    let good = place.text(TABLE);
    place.write(TABLE, drawn(&good));
    let look = ["look", "our-drive", "--machine", "SC-01", "--module", "plant"];
    let shown = plain(&place.run(&look).done());
    let links = shown.lines().find(|line| line.contains("number of links in the chain")).unwrap();
    assert!(links.ends_with(" 98"), "{shown}");
    // The drawing's own number is not doubted.
    place.write(TABLE, good);
    let said = told(&place, TABLE, |text| {
        let alone: String = text.lines().take(2).map(|line| format!("{line}\n")).collect();
        with_cell(&drawn(&alone), "chain.links", 1, "98")
    });
    assert!(!said.contains("chain.links"), "{said}");
}

#[test]
fn choices_and_ratios_are_read_as_papers_have_them() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain,load", "--units", "us"]).done();
    let good = place.text(TABLE);
    let look = || {
        let look = ["look", "our-drive", "--machine", "SC-01", "--module", "plant", "--units", "us"];
        plain(&place.run(&look).done())
    };
    let with = |cells: [&str; 3]| {
        let columns = ["chain.size", "load.bearing_kind", "drive.ratio"].into_iter().zip(cells);
        place.write(TABLE, columns.fold(good.clone(), |text, (column, value)| with_cell(&text, column, 1, value)));
        look()
    };
    let usual = with(["120", "ball bearing", "20:1"]);
    for cells in [["#120", "ball", "20 to 1"], ["ANSI 120", "Ball Bearing", "1 to 20"], ["120-1", "Ball", "20"]] {
        assert_eq!(with(cells), usual, "{cells:?}");
    }
    place.write(TABLE, with_cell(&good, "chain.size", 1, "ISO 16B-2"));
    let ran = place.run(&["check", "--module", "plant"]);
    assert!(ran.code == 1 && plain(&ran.out).contains("is 16B with the number of its strands"), "{}", ran.out);
    place.write(TABLE, with_cell(&good, "load.bearing_kind", 1, "bal"));
    let ran = place.run(&["check", "--module", "plant"]);
    assert!(ran.code == 1 && plain(&ran.out).contains("Choose one of: ball bearing, roller bearing."), "{}", ran.out);
}

#[test]
fn real_machines_need_not_be_usual_and_are_told_of() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain,load"]).done();
    let told_of = |said: &str| said.contains("SC-02: load.life (“rating life of the near bearing”) is");
    let long = told(&place, TABLE, |text| with_cell(text, "load.bearing_capacity", 2, "190"));
    assert!(told_of(&long) && long.contains("our-drive.csv:3:") && long.contains("have 80 000 h at most"), "{long}");
    assert!(!long.contains("SC-01:"), "{long}");
    // Of two machines, the one whose value is told is the one that is looked into.
    let two = told(&place, TABLE, |text| {
        with_cell(&with_cell(text, "load.bearing_capacity", 1, "900"), "load.bearing_capacity", 2, "190")
    });
    let value = |said: &str| said.split_once(" or more when").unwrap().0.rsplit_once(" is ").unwrap().1.to_owned();
    assert!(two.contains("SC-01, SC-02: load.life") && value(&two) == value(&long), "{two}");
    let causes = |said: &str| said.split_once("what it follows from: ").unwrap().1.lines().next().unwrap().to_owned();
    assert!(causes(&two).contains("load.bearing_capacity 190.0 kN") && causes(&two) == causes(&long), "{two}");
    let short = told(&place, TABLE, |text| with_cell(text, "load.bearing_capacity", 2, "40"));
    assert!(told_of(&short) && short.contains("have 20 000 h at least"), "{short}");
    // A bound of one's own says that it is meant so.
    let family = place.text(FAMILY);
    let own = "\n[[limit]]\nquantity = \"load.life\"\nat_most = \"2000000 h\"\nhealthy = true\n";
    place.write(FAMILY, format!("{family}{own}"));
    assert!(!told_of(&told(&place, TABLE, |text| with_cell(text, "load.bearing_capacity", 2, "190"))));
    // Made-up machines are kept usual in a family without a table.
    let alone = family.replace("machines = \"our-drive.csv\"", "").replacen(
        "[fixed]",
        "[fixed]\n\"load.bearing_capacity\" = \"900 kN\"",
        1,
    );
    place.write(FAMILY, alone);
    let ran = place.run(&["check", "--module", "plant"]);
    let out = plain(&ran.out);
    assert!(ran.code == 1 && out.contains("broke the limit on load.life") && out.contains("80 000 h"), "{out}");
}

#[test]
fn a_limit_that_some_sound_machines_break_is_told_with_both_mends() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "heat"]).done();
    let limit =
        |text: &str, value: &str| text.replacen("[draw]", &format!("\"heat.rise_limit\" = \"{value}\"\n[draw]"), 1);
    let said = told(&place, FAMILY, |text| limit(text, "40 °C"));
    assert!(said.contains("have heat.verdict") && said.contains("as those with the fault \"hot-running\""), "{said}");
    assert!(said.contains("heat.rise_limit is 40.00 °C here.") && !said.contains("without = ["), "{said}");
    // The lines that it gives do it.
    let lines: String = said
        .lines()
        .skip_while(|line| line.trim() != "[[limit]]")
        .take(4)
        .map(|line| format!("{}\n", line.trim()))
        .collect();
    assert!(lines.contains("quantity = \"heat.verdict\"\nat_most = \"acceptable\"\nhealthy = true\n"), "{said}");
    let mended = told(&place, FAMILY, |text| format!("{}\n{lines}", limit(text, "40 °C")));
    assert!(!mended.contains("hot-running") && !mended.contains("heat.verdict"), "{mended}");
    // One out of reach hides the fault in another way.
    let out_of_reach = told(&place, FAMILY, |text| limit(text, "90 °C"));
    assert!(out_of_reach.contains("\"hot-running\"") && out_of_reach.contains("shows in no verdict"), "{out_of_reach}");
}

#[test]
fn a_fault_left_out_without_need_is_a_note() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "heat"]).done();
    let all = || plain(&place.run(&["check", "--module", "plant", "--all"]).done());
    let good = place.text(FAMILY);
    let without = good.replacen("\nmachines = ", "\nwithout = [\"hot-running\"]\nmachines = ", 1);
    let left_out = "The fault \"hot-running\" (housing gives off its heat poorly) is left out here";
    assert!(!all().contains("is left out here"));
    place.write(FAMILY, &without);
    assert!(all().contains(left_out), "{}", all());
    assert!(!place.run(&["check", "--module", "plant"]).done().contains("left out"), "a note only");
    // With a limit that hides it, it is left out with reason.
    place.write(FAMILY, without.replacen("[draw]", "\"heat.rise_limit\" = \"90 °C\"\n[draw]", 1));
    assert!(!all().contains(left_out), "{}", all());
}

#[test]
fn a_wrong_turn_on_what_nobody_is_shown_is_told() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "heat"]).done();
    let items = "plant/scenarios/items/our-items.toml";
    let with = |expression: &str| {
        let turn = format!("wrong = [\n    {{ gives = \"{expression}\", says = \"So.\" }},\n");
        told(&place, items, |text| text.replacen("wrong = [\n", &turn, 1))
    };
    let said = with("heat.rise * drive.stages");
    assert!(said.contains("This wrong turn needs drive.stages, which the question neither shows"), "{said}");
    assert!(said.contains("heat.housing, heat.ambient; or show it, in the part: also = [\"drive.stages\"]"), "{said}");
    // What is asked, and what follows from what is shown, is no secret.
    assert!(!with("heat.rise * 2").contains("This wrong turn needs"));
    assert!(!with("heat.housing - heat.ambient / 2").contains("This wrong turn needs"));
}

#[test]
fn questions_about_machines_of_the_program_are_a_note_of_their_chapter() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "heat"]).done();
    let all = plain(&place.run(&["check", "--module", "plant", "--all"]).done());
    let note =
        all.lines().find(|line| line.starts_with("book/temperature.md: Machines of the program stand in")).unwrap();
    assert!(note.contains("why-is-it-hot (our-drive: the family does not determine oil.cold_level"), "{note}");
    // What the plant's own machines answer is not among it, nor is a chapter that is not in the course.
    assert!(!note.contains("rise-over-ambient") && !all.contains("book/oil.md"), "{all}");
    // A family of the program that exams ask about too is the module's.
    let manifest = place.text("plant/module.toml");
    place.write("plant/module.toml", manifest.replace("# families = [\"mixer\"]", "families = [\"quarry-conveyor\"]"));
    let all = plain(&place.run(&["check", "--module", "plant", "--all"]).done());
    assert!(!all.contains("stand in for yours"), "{all}");
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

#[test]
fn a_heading_in_the_other_unit_of_power_is_doubted() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain"]).done();
    let powers = |unit: &'static str, powers: &'static [&'static str]| {
        move |text: &str| {
            let mut out = String::new();
            for (row, line) in
                text.replacen("drive.motor_power [kW]", &format!("drive.motor_power [{unit}]"), 1).lines().enumerate()
            {
                let mut cells: Vec<&str> = line.split(',').collect();
                if row > 0 {
                    cells[1] = powers[(row - 1) % powers.len()];
                }
                out.push_str(&(cells.join(",") + "\n"));
            }
            out
        }
    };
    assert!(place.text(TABLE).starts_with("machine,drive.motor_power [kW],"), "{}", place.text(TABLE));
    let said = told(&place, TABLE, powers("hp", &["7.5", "11", "15", "18.5"]));
    assert!(
        said.contains("our-drive.csv:1:9: The column drive.motor_power is headed in hp, and every value"),
        "{said}"
    );
    assert!(
        said.contains("none is sold with 11 hp, 18.5 hp.") && said.contains("write \"drive.motor_power [kW]\""),
        "{said}"
    );
    let said = told(&place, TABLE, powers("kW", &["7.5", "10", "15", "20"]));
    assert!(
        said.contains("none is sold with 10 kW, 20 kW.") && said.contains("write \"drive.motor_power [hp]\""),
        "{said}"
    );
    for (unit, mixed) in
        [("kW", &["7.5", "10", "11"][..]), ("hp", &["10", "11"]), ("kW", &["7.5", "15"]), ("kW", &["10 hp", "15 hp"])]
    {
        let said = told(&place, TABLE, powers(unit, mixed));
        assert!(!said.contains("motors are sold"), "{unit} {mixed:?}: {said}");
    }
}
