//! What `check` and `look` say of tables of machines.

use serde_json::Value;

use crate::{Place, plain};

/// A family of the author's own, like the one that `new` makes, with a table of two machines.
fn small(place: &Place, table: &str) {
    place.run(&["new", "plant", "--topic", "chain,heat"]).done();
    place.write("plant/scenarios/families/small.csv", table);
    let family = "name = \"small drive\"\nlike = \"our-drive\"\nmachines = \"small.csv\"\n";
    place.write("plant/scenarios/families/small.toml", family);
}

#[test]
fn what_a_table_lacks_is_told_once_and_mended_by_copying() {
    let place = Place::new();
    small(&place, "machine,chain.size,drive.motor_power [kW]\nK-1,120,7.5\nK-2,120,7.5\n");
    let ran = place.run(&["check", "--module", "plant"]);
    assert!(ran.code == 1 && ran.err.contains("1 problem was found"), "{}{}", ran.out, ran.err);
    assert!(ran.out.contains("plant/scenarios/families/small.toml:3:12: This table of machines takes"), "{}", ran.out);
    assert!(
        ran.out.contains("load.bearing_span [mm],") && ran.out.contains("machine SC-01 of our-drive"),
        "{}",
        ran.out
    );
    let from = ran.out.find("       [fixed]").unwrap();
    let copied = ran.out[from..].split("\n\n").next().unwrap();
    let family = place.text("plant/scenarios/families/small.toml");
    place.write("plant/scenarios/families/small.toml", format!("{family}{copied}\n"));
    place.run(&["check", "--module", "plant"]).done();
    assert!(place.run(&["look", "small", "--module", "plant"]).done().contains("drawn from K-"));
    place.run(&["build", "--module", "plant"]).done();
}

#[test]
fn a_value_that_no_machine_can_have_is_told_where_it_stands() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain,heat"]).done();
    let (family, table) = ("plant/scenarios/families/our-drive.toml", "plant/scenarios/families/our-drive.csv");
    let (good, rows) = (place.text(family), place.text(table));
    let column = |name: &str| 1 + rows.lines().next().unwrap().find(name).unwrap();
    let centres = rows.lines().nth(2).unwrap().split(',').nth(8).unwrap().to_owned();
    let told = |file: &str, text: String, says: &[&str]| {
        place.write(file, text);
        let ran = place.run(&["check", "--module", "plant"]);
        let out = plain(&ran.out);
        for part in says {
            assert!(out.contains(part), "{part}: {out}");
        }
        place.write(family, &good);
        place.write(table, &rows);
        ran
    };
    // One machine of the table: the cell, the calculation, and what that starts from; its row, where no cell stands out.
    let row = rows.lines().nth(2).unwrap();
    let broken = rows.replace(row, &row.replace(&format!(",{centres},"), ",137,"));
    let cell = format!("our-drive.csv:3:{}: ", 2 + row.find(&format!(",{centres},")).unwrap());
    let says = [&*cell, "as SC-02, with nothing wrong", "Look first at chain.centres_planned of SC-02", "137.0 mm"];
    let ran = told(table, broken, &says);
    let out = plain(&ran.out);
    assert!(out.contains("chain.centres_planned is 137.0 mm, and the least possible is 334."), "{out}");
    let swapped = rows.replace(row, &row.replace(",21,34,", ",34,21,"));
    told(table, swapped, &["our-drive.csv:3:1: ", "as SC-02, with nothing wrong", "the limit on chain.ratio"]);
    // A wrong unit in a heading: the column, with what is usual, whether machines can be drawn or not.
    let at = format!("our-drive.csv:1:{}: ", column("chain.centres_planned"));
    let unit = |unit: &str| rows.replace("chain.centres_planned [mm]", &format!("chain.centres_planned [{unit}]"));
    let first = "Look first at the column chain.centres_planned";
    let ran = told(table, unit("mil"), &[&at, first, "Is its unit right?"]);
    assert!(ran.code == 1 && !ran.out.contains("without ="), "no fault is to blame: {}", ran.out);
    let ran = told(
        table,
        unit("in"),
        &[&at, "chain.centres_planned has 1295 in to", "chain.links", "mend the unit in its heading"],
    );
    assert!(ran.code == 0 && !ran.out.contains("without ="), "such a chain can be drawn: {}", ran.out);
    let span = rows.replace("load.bearing_span [mm]", "load.bearing_span [in]");
    let ran = told(table, span, &["The column load.bearing_span has 150.0 in to"]);
    assert_eq!(ran.code, 0, "a bearing span is no reason to refuse: {}", ran.out);
    // One machine's slip, beside those that are as usual.
    let ratio = rows.replace(",24.6,", ",2.46,");
    let ran = told(table, ratio, &["our-drive.csv:2:11: SC-01 has drive.ratio at 2.46", "and the other machines here"]);
    assert_eq!(ran.code, 0, "{}", ran.out);
    // The speed of the plate is held against the supply.
    told(table, rows.replace(",50,1450\n", ",50,1541\n"), &["the limit on start.slip", "start.plate_speed 1541 r/min"]);
    // A limit that no machine keeps: no fault is named, and what it follows from is.
    let far = good.replace("at_least = \"120°\"", "at_least = \"190°\"");
    let ran = told(family, far, &["with nothing wrong", "There it follows from chain.size"]);
    assert!(ran.err.contains("1 problem was found"), "{}", ran.err);
    // A sag wanted that does not hang inside the window is no problem, and is told.
    let sag = good.replace("[fixed]\n", "[fixed]\n\"chain.sag_share_wanted\" = \"1.5 %\"\n");
    let ran = told(family, sag, &["has chain.wanted_verdict", "at “too tight”"]);
    assert_eq!(ran.code, 0, "{}", ran.out);
    // One that no machine can keep is told at its line, though the limit is the other family's.
    let sag = good.replace("[fixed]\n", "[fixed]\n\"chain.sag_share_wanted\" = \"20 %\"\n");
    let ran = told(
        family,
        sag,
        &["the limit on chain.window_share", "there goes into it: chain.sag_share_wanted 20", "\"20 %\""],
    );
    assert!(ran.code == 1 && ran.err.contains("1 problem "), "{}{}", ran.out, ran.err);
    let cold = good.replace("[fixed]\n", "[fixed]\n\"heat.sump_limit\" = \"8 °C\"\n");
    told(
        family,
        cold,
        &[
            "\"heat.sump_limit\" = \"8 °C\"\n       | ^^^^^^^",
            "\n       Mend this value.",
            "heat.allowed_power/thermal limit",
            "heat.sump_limit 8.00 °C",
        ],
    );
    // What the other family fixes and the author's own value makes otherwise: a steep drive has half the window.
    let steep = good.replace("# \"chain.lie\" = \"level or nearly so\"", "\"chain.lie\" = \"steep or upright\" #");
    let window = ["follows as 2 % from chain.lie, chain.load_comes", "\n       \"chain.movement_low\" = \"2 %\""];
    let ran = told(family, steep, &window);
    assert!(ran.code == 1 && ran.out.contains("chain.movement_high"), "{}", ran.out);
    // A limit that a fault does not reach hides it.
    let limit = good.replace("value = \"0.04 mm\", source", "value = \"0.6 mm\", source");
    let limit = limit.replace("topics = [\"chain\", \"heat\"]", "topics = [\"chain\", \"heat\", \"mount\"]");
    let plan = "[fixed]\n\"mount.along\" = \"365 mm\"\n\"mount.across\" = \"300 mm\"\n\"mount.weight_along\" = \"160 mm\"\n\
                \"mount.weight_across\" = \"95 mm\"\n\"mount.foot_length\" = \"85 mm\"\n\"mount.foot_width\" = \"65 mm\"\n";
    let ran =
        told(family, limit.replace("[fixed]\n", plan), &["The fault \"soft-foot\" (soft foot) shows in no verdict"]);
    assert_eq!(ran.code, 0, "{}", ran.out);
    // Another topic: only its columns are asked for.
    let oil = good.replace("topics = [\"chain\", \"heat\"]", "topics = [\"chain\", \"heat\", \"oil\"]");
    told(family, oil, &["lacks 2 of its columns", "\n       mount.along [mm],mount.across [mm]\n"]);
    let none = good.replace("topics = [\"chain\", \"heat\"]", "topics = [\"chian\"]");
    told(family, none, &["There is no topic called \"chian\".", "Did you mean \"chain\"?"]);
    let chapter = good.replace("topics = [\"chain\", \"heat\"]", "topics = [\"temperature\"]");
    told(family, chapter, &["There is no topic called \"temperature\".", "Did you mean \"heat\"?"]);
    // One that needs no column more: nobody would be asked about it.
    let noise = good.replace("topics = [\"chain\", \"heat\"]", "topics = [\"chain\", \"heat\", \"noise\"]");
    let ran = told(
        family,
        noise,
        &["our-drive.toml:17:28: This family is for questions about \"noise\" too", "Add \"noise\" to the items"],
    );
    assert_eq!(ran.code, 0, "{}", ran.out);
}

#[test]
fn what_makers_write_is_read_and_what_cannot_be_is_told_first() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "align,heat,load"]).done();
    let (family, table) = ("plant/scenarios/families/our-drive.toml", "plant/scenarios/families/our-drive.csv");
    let (good, rows) = (place.text(family), place.text(table));
    let row = rows.lines().nth(1).unwrap();
    let with = |ratio: &str, shaft: &str| {
        let row_with = row.replacen(",24.6,", &format!(",{ratio},"), 1).replace(",65,", &format!(",{shaft},"));
        assert!(row_with.contains(ratio) && row_with.contains(shaft), "{row_with}");
        rows.replace(row, &row_with)
    };
    place.write(table, with("1/24.6", "Ø65 k6"));
    place.run(&["check", "--module", "plant"]).done();
    // No machine could be drawn with it; the ratio is told, and no limit is handed out to be raised.
    place.write(table, with("0.0407", "65"));
    let ran = place.run(&["check", "--module", "plant"]);
    let out = plain(&ran.out);
    assert!(ran.code == 1 && out.starts_with("plant/scenarios/families/our-drive.csv:2:"), "{out}");
    assert!(out.contains("drive.ratio (“ratio of the reducer”) is never below 1, and this is 0.0407."), "{out}");
    assert!(out.contains("write 24.57.") || out.contains("write 24.5"), "{out}");
    assert!(!out.contains("heat.settled_rise") && !out.contains("[[limit]]"), "{out}");
    place.write(table, &rows);
    // A stricter or wider limit on the shafts: the faults and the sound machines follow it.
    for limit in ["0,5 mm/m", "0.03°", "0.5°"] {
        place.write(family, good.replace("[fixed]\n", &format!("[fixed]\n\"align.twist_limit\" = \"{limit}\"\n")));
        place.run(&["check", "--module", "plant"]).done();
    }
    // Where a fault draws anew what the author's line draws, that is said.
    let limit = "[fixed]\n\"align.twist_limit\" = { value = \"0.25°\", source = \"ours\" }\n";
    let drawn = "[draw]\n\"align.twist\" = { between = [\"-0.01°\", \"0.01°\"] }\n";
    let fault = "\n[[fault]]\nid = \"bent\"\nname = \"bent\"\n[fault.draw]\n\"align.twist\" = \"0.1°\"\n\
        [[fault.limit]]\nquantity = \"align.sprocket_verdict\"\nat_least = \"turn the shafts parallel first\"\n";
    let text = good.replace("[fixed]\n", limit).replace("[draw]\n", drawn) + fault;
    place.write(family, text);
    let ran = place.run(&["check", "--module", "plant"]);
    let out = plain(&ran.out);
    assert!(ran.code == 1 && out.contains("Your line on align.twist has no part in it: this fault draws"), "{out}");
}

#[test]
fn a_machine_of_the_table_is_told_by_its_name() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain"]).done();
    let table = "plant/scenarios/families/our-drive.csv";
    // One machine alone, so that every question is about it.
    let rows = place.text(table);
    let one: Vec<&str> = rows.lines().take(2).collect();
    place.write(table, one.join("\n").replace("SC-01", "BC-11") + "\n");
    let practise = ["practise", "--item", "our-sag-to-set", "--count", "1", "--module", "plant"];
    assert!(place.run(&practise).done().contains("\nMachine BC-11.\nThe sheet of the storage conveyor drive"));
    let papers = |out: &'static str| {
        let arguments = ["papers", "--module", "plant", "--roster", "first-group", "--secret", "secret", "--out", out];
        place.run(&arguments).done();
        crate::tree(&place.path(out).join("papers"))
    };
    let made = papers("exam");
    for (path, bytes) in made.iter().filter(|(path, _)| path.extension().is_some_and(|ending| ending == "html")) {
        let text = String::from_utf8_lossy(bytes);
        // Each question about a machine of the table says which.
        assert!(text.contains("<p>Machine BC-11.</p>"), "{}: {text}", path.display());
        assert!(!text.contains("chain-far-too-slack") && !text.contains("left far too slack"), "{}", path.display());
    }
    assert_eq!(made, papers("again"), "the same papers byte for byte");
    place.run(&["grade", "exam", "exam/responses.csv", "--module", "plant"]).done();
    place.run(&["build", "--module", "plant", "--out", "course"]).done();
    let page = place.text("course/our-drive.html");
    assert!(page.contains("<p>Machine BC-11.</p>"), "{page}");
    // A family without a table has no name to tell.
    assert!(!place.run(&["practise", "--count", "1", "--item", "sag-to-set"]).done().contains("\nMachine "));
    place.write(table, rows);
    let spread = plain(&place.run(&["look", "our-drive", "--spread", "120", "--module", "plant"]).done());
    let shares: Vec<u32> = (spread.lines())
        .filter(|line| line.starts_with("  SC-0"))
        .map(|line| line.trim_end_matches(" %").rsplit(' ').next().unwrap().parse().unwrap())
        .collect();
    assert!(shares.len() == 6 && shares.iter().all(|share| (5..40).contains(share)), "{spread}");
    assert!((95..=105).contains(&shares.iter().sum::<u32>()), "{spread}");
    let json = ["look", "our-drive", "--spread", "120", "--page", "spread.html", "--json", "--module", "plant"];
    let json: Value = serde_json::from_str(&place.run(&json).done()).unwrap();
    let counts: Vec<u64> =
        json["table"].as_array().unwrap().iter().map(|row| row["machines"].as_u64().unwrap()).collect();
    assert_eq!(counts.iter().sum::<u64>(), json["machines"].as_u64().unwrap(), "{json}");
    assert!(place.text("spread.html").contains("<th scope=\"row\">SC-06</th>"));
}

/// A module in which all machines but SC-01 seldom keep a limit, with a row that has one item and the same wrong turn in two
/// items.
pub(crate) fn uneven(place: &Place) {
    place.run(&["new", "plant", "--topic", "chain,temperature"]).done();
    let table = place.text("plant/scenarios/families/our-drive.csv");
    let heavier = |row: &str| {
        let (name, rest) = row.split_once(',').unwrap();
        let (power, rest) = rest.split_once(',').unwrap();
        let power = if matches!(name, "machine" | "SC-01") { power } else { "11" };
        format!("{name},{power},{rest}\n")
    };
    let mut rows: String = table.lines().filter(|row| !row.starts_with("SC-06")).map(heavier).collect();
    let fifth = rows.lines().find(|row| row.starts_with("SC-05")).unwrap().replace("SC-05", "SC-06");
    rows.push_str(&format!("{fifth}\n"));
    place.write("plant/scenarios/families/our-drive.csv", rows);
    let family = place.text("plant/scenarios/families/our-drive.toml");
    let limit = "\n[[limit]]\nquantity = \"drive.power\"\nat_most = \"7.3 kW\"\nbecause = \"the feeder takes no more\"\nhealthy = true\n";
    place.write("plant/scenarios/families/our-drive.toml", format!("{family}{limit}"));
    let pull = |id: &str| {
        format!(
            "[[item]]\nid = \"{id}\"\ntopic = \"chain\"\nskill = \"x\"\ntitle = \"x\"\ntext = \"x\"\n[[item.part]]\ntext = \"x?\"\n\
             ask = \"chain.slack_tension\"\nfrom = [\"chain.mass\", \"chain.span\", \"chain.sag\", \"chain.strand_incline\"]\n\
             wrong = [{{ gives = \"chain.slack_tension * 8\", says = \"The eighth.\" }}]\n\n"
        )
    };
    place.write("plant/scenarios/items/pulls.toml", pull("pull-one") + &pull("pull-two"));
    let exam = "title = \"x\"\nminutes = 10\npass = \"70 %\"\nno_safety = true\n\n[[row]]\nskill = \"chain-take-up\"\ncount = 1\nweight = 1\n\n\
                [[row]]\nskill = \"chain-take-up\"\ncount = 1\nweight = 9\n\n[[row]]\nitem = \"pull-one\"\n";
    place.write("plant/scenarios/exams/second.toml", exam);
}

#[test]
fn what_may_be_meant_so_is_told_of_rows_and_machines() {
    let place = Place::new();
    uneven(&place);
    let said = plain(&place.run(&["check", "--module", "plant"]).done());
    for part in [
        "plant/scenarios/exams/second.toml:7:9: Only 1 item fits the row of skill \"chain-take-up\"",
        "Without `weight` there would be 4.",
        "% of the machines kept are SC-01; an even share of the table would be 17 %.",
        "times it was the limit on drive.power (the feeder takes no more)",
    ] {
        assert!(said.contains(part), "{part}: {said}");
    }
    assert_eq!(said.matches("everybody is asked the same").count(), 1, "one wide row, one item named: {said}");
    let german = plain(&place.run(&["check", "--module", "plant", "--language", "de"]).done());
    assert!(
        german.contains("passt nur 1 Aufgabe") && german.contains("% der Maschinen, die bleiben, sind SC-01"),
        "{german}"
    );
    // One person cannot be asked the same as another.
    place.write("plant/scenarios/rosters/first-group.csv", "id,name\np1,Wren Aldous\n");
    let said = plain(&place.run(&["check", "--module", "plant"]).done());
    assert!(!said.contains("everybody is asked"), "{said}");
    // No row is favoured where all are heavy: then it is the family that rejects many.
    let table = place.text("plant/scenarios/families/our-drive.csv").replace("SC-01,7.5,", "SC-01,11,");
    place.write("plant/scenarios/families/our-drive.csv", table);
    let said = plain(&place.run(&["check", "--module", "plant"]).done());
    assert!(
        !said.contains("of the machines kept are") && said.contains("machines are rejected for each one kept"),
        "{said}"
    );
}

/// A module on chain, mounting and temperature with a family like `like`, and what `check` says when `slips` are made in its
/// family's file (`.toml`) or in its table (`.csv`); each must be no more than a notice.
fn told_of_slips(like: &str, slips: &[(&str, &str, &str, &[&str])]) {
    let place = Place::new();
    place.run(&["new", "plant", "--like", like, "--topic", "chain,mounting,temperature"]).done();
    let sound = place.run(&["check", "--module", "plant"]).done().to_owned();
    assert!(!sound.contains("scenarios/families"), "nothing is told of the family as it is made: {sound}");
    for (ending, from, to, says) in slips {
        let file = format!("plant/scenarios/families/our-drive.{ending}");
        let good = place.text(&file);
        assert!(good.contains(from), "{from}: {good}");
        place.write(&file, good.replacen(from, to, 1));
        let ran = place.run(&["check", "--module", "plant"]);
        let out = plain(&ran.out);
        assert_eq!(ran.code, 0, "{out}{}", ran.err);
        for part in *says {
            assert!(out.contains(part), "{part}: {out}");
        }
        place.write(&file, good);
    }
}

#[test]
fn a_value_that_follows_otherwise_from_the_others_is_told() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain,mounting,temperature"]).done();
    let (family, table) = ("plant/scenarios/families/our-drive.toml", "plant/scenarios/families/our-drive.csv");
    let (good, rows) = (place.text(family), place.text(table));
    let line = 1 + good.lines().position(|line| line == "[fixed]").unwrap() + 1;
    let check = || plain(&place.run(&["check", "--module", "plant"]).done().to_owned());
    // Under [fixed], with a source or without: what was meant is asked.
    for value in ["\"2 %\"", "{ value = \"2 %\", source = \"plant standard\" }"] {
        place.write(family, good.replacen("[fixed]\n", &format!("[fixed]\n\"chain.sag_share\" = {value}\n"), 1));
        let out = check();
        assert!(out.contains(&format!("our-drive.toml:{line}:1: chain.sag_share is 2.000 % here, and ")), "{out}");
        assert!(out.contains("by calculation (chain.sag_share/span: from chain.sag, chain.span)"), "{out}");
        assert!(out.contains("Did you mean \"chain.sag_share_wanted\"?"), "{out}");
    }
    place.write(family, &good);
    // In a column of the table, of one machine alone: its cell, and what the calculation starts from.
    let rows: Vec<_> = rows.lines().collect();
    let check_links = |machines: &[(usize, u32)]| {
        let row = |(row, links): &(usize, u32)| format!("{},{links}\n", rows[*row]);
        let text = format!("{},chain.links\n{}", rows[0], machines.iter().map(row).collect::<String>());
        place.write(table, text);
        check()
    };
    let worked = [1, 2].map(|row| {
        let out = check_links(&[(row, 140)]);
        let at = format!("our-drive.csv:2:{}: SC-0{row} has chain.links at 140, and ", 2 + rows[row].chars().count());
        let (_, rest) = out.split_once(&at).unwrap_or_else(|| panic!("{at}: {out}"));
        assert!(rest.contains("In your table it starts from chain.centres_planned, chain.teeth_small"), "{out}");
        let (links, rest) = rest.split_once(' ').unwrap();
        assert!(rest.starts_with("by calculation (chain.links/even: from chain.length_pitches)."), "{out}");
        links.parse::<u32>().unwrap()
    });
    // The chain that is worked out is nothing to be told, and of one a pair of links longer no more than that; one machine
    // of two is.
    assert!(worked.iter().all(|links| *links > 40 && *links < 120), "{worked:?}");
    let out = check_links(&[(1, worked[0]), (2, worked[1])]);
    assert!(!out.contains("scenarios/families"), "{out}");
    let out = check_links(&[(1, worked[0]), (2, worked[1] + 2)]);
    let longer = format!("SC-02: chain.links is {}, and the centres on the drawing", worked[1] + 2);
    assert!(out.contains(&longer) && !out.contains("by calculation"), "{out}");
    let out = check_links(&[(1, worked[0]), (2, 140)]);
    assert!(out.contains("SC-02 has chain.links at 140") && !out.contains("SC-01"), "{out}");
    // Where all are otherwise, it is the column.
    let out = check_links(&[(1, 138), (2, 140)]);
    let at = format!("our-drive.csv:1:{}: chain.links is 138 to 140 here, and ", 2 + rows[0].chars().count());
    assert!(out.contains(&at), "{at}: {out}");
}

#[test]
fn a_limit_that_keeps_a_verdict_from_coming_is_told_where_it_stands() {
    told_of_slips(
        "quarry-conveyor",
        &[
            // Degrees of the wrong scale: nothing is ever too hot.
            (
                "toml",
                "[fixed]\n",
                "[fixed]\n\"heat.sump_limit\" = \"185 °C\"\n",
                &[
                    ":1: On no machine of this family is heat.verdict (“verdict on the settled temperature”) at “stop and find",
                    "of those of quarry-conveyor ",
                    "It is judged by heat.sump_limit, 185.0 °C here.",
                    "mend its value or its unit.",
                ],
            ),
            // Everything is: the limit is named at both verdicts.
            (
                "toml",
                "[fixed]\n",
                "[fixed]\n\"heat.sump_limit\" = \"85 °F\"\n",
                &[
                    ":1: Every sound machine of this family has heat.verdict",
                    ":1: Every sound machine of this family has heat.peak_verdict",
                    "has that. heat.sump_limit is 29.44 °C here.\n",
                ],
            ),
            // A fault that nobody can find is told once.
            (
                "toml",
                "value = \"0.04 mm\", source",
                "value = \"2 in\", source",
                &[
                    ":1: The fault \"soft-foot\" (soft foot) shows in no verdict",
                    "(“verdict on the gap”). mount.gap_limit is 50.80 mm here.\n",
                    "mend the one that hides it: mount.gap, mount.gap_limit. Only where",
                ],
            ),
        ],
    );
}

#[test]
fn a_verdict_on_one_machine_leads_to_its_columns() {
    told_of_slips(
        "bucket-lift",
        &[(
            "csv",
            "SC-01,3,",
            "SC-01,4,",
            &[
                "Sound machines have chain.rating_verdict (“verdict on the rating”) at “too small” more than now and then: SC-01 (",
                "In your table it starts from chain.teeth_small, chain.size, drive.motor_power",
            ],
        )],
    );
}
