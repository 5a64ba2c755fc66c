//! `new`: a module of one's own, whole for every topic, and broken in three hundred ways.

use std::collections::BTreeMap;

use serde_json::Value;

use crate::{Place, plain};

const TOPICS: [&str; 12] =
    ["mount", "oil", "drive", "chain", "load", "heat", "align", "fasten", "start", "vibrate", "noise", "follow"];

#[test]
fn a_module_of_each_topic_builds_makes_papers_and_grades() {
    let place = Place::new();
    for topic in TOPICS {
        let said = place.run(&["new", topic, "--topic", topic]).done();
        assert!(said.contains("drivecourse check --module"), "{said}");
        let checked = place.run(&["check", "--module", topic]).done();
        assert!(checked.lines().count() <= 2, "{topic}: nothing to be told of what the program makes: {checked}");
        let (course, exam) = (format!("{topic}-course"), format!("{topic}-exam"));
        let built = place.run(&["build", "--module", topic, "--out", &course]);
        assert_eq!(built.err, "", "{topic}: nothing to warn of");
        assert!(built.done().contains("chapters in"));
        let papers = ["papers", "--module", topic, "--roster", "first-group", "--secret", "secret", "--out", &exam];
        assert!(place.run(&papers).done().contains("3 papers"));
        let responses = format!("{exam}/responses.csv");
        let graded = place.run(&["grade", &exam, &responses, "--module", topic]).done();
        assert_eq!(graded.matches("Nothing was handed in.").count(), 3, "nothing was answered: {graded}");
    }
}

#[test]
fn a_module_shows_its_own_limits_with_their_source_and_its_machines_by_name() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "mount,temperature"]).done();
    assert!(place.text("plant/module.toml").contains("items = [\"mount\", \"heat\", \"safe-work\"]"));
    let look =
        place.run(&["look", "our-drive", "--seed", "7", "--module", "plant", "--paths", "--figures", "pictures"]);
    let look = plain(&look.done());
    assert!(look.contains("machine 7, drawn from SC-0"), "{look}");
    assert!(look.contains("largest gap allowed under a foot: 0.04 mm (our maintenance standard, section 3"), "{look}");
    assert!(look.contains("How it follows") && look.contains("pictures in pictures: drive-side"), "{look}");
    assert!(place.text("pictures/our-drive-7-drive-side.svg").starts_with("<svg"));
    place.run(&["build", "--module", "plant", "--out", "course"]).done();
    let formulas = place.text("course/formulas.html");
    assert!(formulas.contains("our maintenance standard, section 3"), "a formula shows what a family states");
    let spread = place.run(&["look", "our-drive", "--spread", "200", "--page", "spread.html", "--module", "plant"]);
    let spread = plain(&spread.done());
    assert!(spread.contains("mount.gap_limit") && spread.contains("always 0.04 mm"), "{spread}");
    // What the family is not for is counted, and shown by its topic.
    assert!(
        spread.contains(" quantities of other topics follow too; --topic") && !spread.contains("start."),
        "{spread}"
    );
    let start = ["look", "our-drive", "--spread", "200", "--topic", "start", "--module", "plant"];
    let start = plain(&place.run(&start).done());
    assert!(start.contains("1450 … 1760 r/min (14"), "plates keep their figures: {start}");
    let page = place.text("spread.html");
    assert!(page.contains("<svg") && page.trim_end().ends_with("</html>"));
    let json = place.run(&["look", "our-drive", "--spread", "50", "--json", "--module", "plant"]).done();
    let json: Value = serde_json::from_str(&json).unwrap();
    assert!(json["machines"].as_u64().unwrap() >= 49, "{json}");
    place.run(&["new", "plant"]).refused(&["plant holds a module already; nothing was changed"]);
    place.run(&["new", "other", "--topic", "chian"]).refused(&["did you mean \"chain\"?"]);
    place.run(&["new", "other", "--topic", "zzz"]).refused(&["no topic \"zzz\"", "\n  chain    Chain\n", "Warm-up"]);
    assert!(place.is_empty("other"));
}

#[test]
fn a_plant_with_plates_in_inches_has_its_module_in_inches() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain,mounting,temperature", "--units", "us"]).done();
    let (file, table) = ("plant/scenarios/families/our-drive.toml", "plant/scenarios/families/our-drive.csv");
    let (family, rows) = (place.text(file), place.text(table));
    assert!(
        rows.starts_with("machine,drive.motor_power [hp],") && rows.contains("chain.centres_planned [in]"),
        "{rows}"
    );
    // 7.5 kW are 10.06 hp of 550 ft·lbf/s, and sold as 10 hp; 365 mm are 14.37 in.
    assert!(rows.contains("\nSC-01,10,24.6,0.98,3,14.4,"), "{rows}");
    for part in ["\"inch leaves\"", "\"1.5 thou\"", "[\"54 °F\", \"86 °F\"]", "\n# \"heat.sump_limit\" = \"200 °F\" "]
    {
        assert!(family.contains(part), "{part}: {family}");
    }
    for file in ["module.toml", "scenarios/exams/first-check.toml", "scenarios/families/our-drive.toml", "README.md"] {
        let text = place.text(&format!("plant/{file}"));
        assert!(!text.contains('@'), "every place is filled in: {text}");
    }
    // Every limit of the other family may be taken over as it stands.
    let taken: String = family
        .lines()
        .map(|line| match line.strip_prefix("# \"").filter(|rest| rest.contains("\" = \"")) {
            Some(rest) => format!("\"{rest}\n"),
            None => format!("{line}\n"),
        })
        .collect();
    assert!(taken.matches("\n\"heat.").count() >= 4, "{taken}");
    place.write(file, &taken);
    place.run(&["check", "--module", "plant"]).done();
    place.write(file, &family);
    // What the module names is shown, unless a command is told otherwise.
    let look = |more: &[&str]| {
        let look = ["look", "our-drive", "--topic", "drive", "--module", "plant", "--machine", "SC-04"];
        plain(&place.run(&[&look[..], more].concat()).done())
    };
    assert!(look(&[]).contains(", drawn from SC-04") && look(&[]).contains("15.0 hp"), "{}", look(&[]));
    assert!(look(&["--units", "si"]).contains("11.2 kW"), "{}", look(&["--units", "si"]));
    let look = ["look", "our-drive", "--module", "plant", "--machine", "SC-44"];
    place.run(&look).refused(&["no machine \"SC-44\"; there are SC-01, SC-02"]);
    place.run(&["look", "mixer", "--machine", "SC-04"]).refused(&["no machine \"SC-04\"; its machines have no names"]);
    let exam = ["papers", "--module", "plant", "--roster", "first-group", "--secret", "secret", "--out", "exam"];
    place.run(&exam).done();
    // So is the author told of what is wrong: the cell's own unit.
    place.write(table, rows.replacen("SC-01,10,", "SC-01,1,", 1));
    let said = plain(&place.run(&["check", "--module", "plant"]).out);
    assert!(said.contains("SC-01 has drive.motor_power at 1.000 hp, and the other machines"), "{said}");
    place.write(table, &rows);
    place.mend("plant/module.toml", "units = \"us\"", "units = \"inch\"");
    let ran = place.run(&["check", "--module", "plant"]);
    assert!(ran.code == 1 && ran.out.contains("plant/module.toml:6:9: \"inch\" is no set of units."), "{}", ran.out);
}

#[test]
fn limits_that_come_by_a_rule_are_offered_too() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain"]).done();
    let file = "plant/scenarios/families/our-drive.toml";
    let family = place.text(file);
    let (_, by_rule) = family.split_once("# These limits come by a rule").unwrap();
    let line = by_rule.lines().find(|line| line.starts_with("# \"chain.wear_limit\" = ")).unwrap();
    assert!(line.ends_with(", by rule"), "{line}");
    // What only puts another limit otherwise is none to take over.
    assert!(!family.contains("# \"chain.wear_length_limit\""), "{family}");
    // It is the first machine's, and goes before the rule once it is taken over.
    let value = line.split('"').nth(3).unwrap().to_owned();
    let limit = |machine: &str| {
        let look = ["look", "our-drive", "--machine", machine, "--module", "plant"];
        let shown = plain(&place.run(&look).done());
        shown.lines().find(|line| line.contains("wear elongation at which the chain is replaced")).map(str::to_owned)
    };
    let before = limit("SC-01").unwrap_or_else(|| panic!("{value}"));
    assert!(before.contains(value.trim_end_matches(" %")), "{before} {value}");
    let own = "\"chain.wear_limit\" = { value = \"1.25 %\", source = \"ES-114\", because = \"our sprockets\" }";
    place.write(file, family.replacen(line, own, 1));
    place.run(&["check", "--module", "plant"]).done();
    assert!(limit("SC-02").unwrap().contains("1.25"), "{:?}", limit("SC-02"));
}

#[test]
fn a_module_names_its_plant_and_one_unit_for_all() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain", "--units", "us"]).done();
    let papers = |out: &str, more: &[&str]| {
        let papers = ["papers", "--module", "plant", "--roster", "first-group", "--secret", "secret", "--out", out];
        place.run(&[&papers[..], more].concat()).done();
        let files = std::fs::read_dir(place.path(&format!("{out}/papers"))).unwrap();
        let texts: Vec<_> = files.map(|file| std::fs::read_to_string(file.unwrap().path()).unwrap()).collect();
        assert_eq!(texts.len(), 3);
        texts
    };
    let none = papers("none", &[]);
    assert!(none.iter().all(|paper| !paper.contains("North shed")));
    // Whoever writes over the names of the roster gives nobody other units.
    let roster = place.text("plant/scenarios/rosters/first-group.csv");
    assert!(roster.starts_with("id,name,group,units\n") && roster.lines().skip(1).all(|line| line.ends_with(',')));
    assert!(!none.iter().any(|paper| paper.contains(" mm<")), "a paper in US units");
    place.mend("plant/module.toml", "plant = \"\"", "plant = \"North shed\"");
    assert!(papers("own", &[]).iter().all(|paper| paper.contains("<bdi>North shed</bdi>")));
    let other = papers("other", &["--plant", "South yard"]);
    assert!(other.iter().all(|paper| paper.contains("<bdi>South yard</bdi>") && !paper.contains("North shed")));
    // Results have the plant of their papers, and papers without one that of the module.
    for (exam, plant) in [("own", "North shed"), ("other", "South yard"), ("none", "North shed")] {
        place.run(&["grade", exam, &format!("{exam}/responses.csv"), "--module", "plant"]).done();
        let results = crate::tree(&place.path(exam).join("results"));
        let pages = results.values().filter(|bytes| String::from_utf8_lossy(bytes).contains(plant)).count();
        assert!(pages > 0, "{exam}: {plant}");
    }
}

#[test]
fn columns_that_hardly_matter_for_the_topics_stand_at_the_end_and_say_so() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "mount"]).done();
    let family = place.text("plant/scenarios/families/our-drive.toml");
    let (needed, minor) = family.split_once("# These hardly change what your topics ask").unwrap();
    assert!(needed.contains("#   mount.along [mm]") && minor.contains("#   chain.teeth_large"), "{family}");
    // A gap under a foot has nothing to do with the chain: another chain, the same answer.
    let answer = || {
        let practise = ["practise", "--module", "plant", "--item", "our-twist", "--count", "1"];
        plain(&place.run_with(&practise, b"?\n?\n?\n=\n").done())
    };
    let before = answer();
    let table = "plant/scenarios/families/our-drive.csv";
    let rows = place.text(table);
    assert!(
        rows.lines()
            .next()
            .unwrap()
            .ends_with(",chain.size,chain.teeth_small,chain.teeth_large,chain.centres_planned [mm]")
    );
    place.write(table, rows.replace(",120,", ",140,"));
    assert!(before.contains("The answer is") && before == answer(), "{before}\n{}", answer());
    // For a chain, all of them matter.
    place.run(&["new", "other", "--topic", "chain"]).done();
    assert!(!place.text("other/scenarios/families/our-drive.toml").contains("hardly change"));
}

#[test]
fn a_module_made_in_german_speaks_german_from_then_on() {
    let place = Place::new();
    let said = place.run(&["new", "werk", "--topic", "heat", "--language", "de"]).done();
    assert!(said.contains("language = \"de\" steht in werk/module.toml") && said.contains("auf Englisch"), "{said}");
    assert!(place.text("werk/module.toml").lines().any(|line| line.starts_with("language = \"de\" ")));
    let checked = place.run(&["check", "--module", "werk"]).done();
    assert!(checked.contains("1 Familie"), "{checked}");
    // In English there is no such line and nothing is said of it.
    let english = place.run(&["new", "plant", "--topic", "heat"]).done();
    assert!(!english.contains("language") && !place.text("plant/module.toml").contains("\nlanguage"), "{english}");
}

#[test]
fn topics_that_came_apart_and_a_folder_that_is_there_are_told() {
    let place = Place::new();
    let tip = "tip: topics stand in one piece: --topic \"mounting,alignment,overhung load\"";
    for words in [
        &["new", "plant", "--topic", "mounting,alignment,overhung", "load"][..],
        &["new", "plant", "--topic=mounting,", "alignment,overhung", "load"],
        &["new", "--topic", "mounting,", "alignment,overhung", "load", "plant"],
    ] {
        place.run(words).misused(tip);
    }
    assert!(!place.run(&["new", "plant", "too", "--topic", "mount"]).err.contains("one piece"));
    let german = place.run(&["new", "plant", "--topic", "mounting,overhung", "load", "--language", "de"]);
    assert!(german.err.contains("Themen stehen in einem Stück"), "{}", german.err);
    let made = place.run(&["new", "plant", "--topic", "mounting,alignment,Overhung load"]).done();
    assert!(made.contains("about mount, align, load;"), "{made}");
    place.run(&["new", "plant"]).refused(&["add it to `topics` in plant/scenarios/families/our-drive.toml"]);
    // What the exam can ask for and where the table's columns are found stands in the files.
    let exam = place.text("plant/scenarios/exams/first-check.toml");
    assert!(
        exam.contains("\n#   load     bearing-life, ") && exam.contains("flanged on its reducer has none"),
        "{exam}"
    );
    assert!(!exam.contains('@'), "{exam}");
    let row = "\n[[row]]\nskill = \"straightedge\"\ncount = 1\n";
    place.write("plant/scenarios/exams/first-check.toml", format!("{exam}{row}"));
    place.run(&["check", "--module", "plant"]).done();
    let family = place.text("plant/scenarios/families/our-drive.toml");
    assert!(family.contains("(from the near bearing, not from the shoulder: "), "{family}");
    assert!(family.contains("(data sheet; usual: 0.97 to 0.985 for each stage, from memory)"), "{family}");
}

#[test]
fn a_wrong_turn_of_ones_own_is_recognised() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "heat"]).done();
    let practise = |answers: &str| {
        let arguments = ["practise", "--module", "plant", "--item", "our-rise", "--count", "1", "--seed", "3"];
        plain(&place.run_with(&arguments, answers.as_bytes()).done())
    };
    let shown = practise("q\n");
    let housing = shown.lines().find_map(|line| line.trim().strip_prefix("settled housing temperature: "));
    let said = practise(&format!("{}\nq\n", housing.unwrap_or_else(|| panic!("{shown}"))));
    assert!(said.contains("That is the temperature of the housing itself, not its rise."), "{said}");
    assert!(!said.contains("Or else"), "the program's words for the same are not told besides: {said}");
}

/// Every way in which a line is broken so that it cannot be right.
fn mutations(file: &str, line: &str) -> Vec<String> {
    let text = line.trim_start();
    let mut out = Vec::new();
    if text.is_empty() || text.starts_with('#') {
        return out;
    }
    let replaced = |from: &str, to: &str| line.replacen(from, to, 1);
    if file.ends_with(".toml") {
        if let Some((key, _)) = text.split_once(" = ").filter(|(key, _)| !key.contains(['{', ' '])) {
            let misspelt = match key.strip_suffix('"') {
                Some(quoted) => format!("{quoted}q\""),
                None => format!("{key}q"),
            };
            out.push(replaced(key, &misspelt));
            out.push(replaced(" = ", " "));
            out.push(replaced(" = ", " = = "));
            let names =
                ["ask", "quantity", "topic", "like", "machines", "figure", "skill", "items", "from", "at_least"];
            // A skill of an item is the author's own word; an exam's must be one that items have.
            let free = key == "skill" && file.contains("items") || key == "at_least" && !line.contains("too slack");
            if names.contains(&key) && !free {
                out.push(replaced("\",", "q\",").replacen("\"]", "q\"]", 1));
                out.push(match line.split_once('#').map_or(line, |(written, _)| written).rfind('"') {
                    Some(at) => format!("{}q{}", &line[..at], &line[at..]),
                    None => String::new(),
                });
            }
            for unit in [" %\"", " mm\"", " °C\"", "°\""] {
                out.push(replaced(unit, " parsecs\""));
            }
            if matches!(key, "marks" | "count" | "minutes" | "right") {
                out.push(format!("{key} = 0"));
                out.push(format!("{key} = \"three\""));
            }
        }
        if let Some(at) = line.split('#').next().unwrap().rfind('"') {
            out.push(format!("{}{}", &line[..at], &line[at + 1..]));
        }
        if text.starts_with('[') {
            out.push(replaced("]", "q]"));
            out.push(replaced("]", ""));
        }
        out.push(replaced("gives = \"", "gives = \"qq + "));
        out.push(replaced("{machine}", "{engine}"));
    } else if file.ends_with(".csv") {
        // A roster may have columns of other headings.
        if !text.starts_with("id") {
            out.push(format!("{line},more"));
        }
        out.push(format!("\"{line}"));
        if !text.starts_with("machine") && file.contains("our-drive") {
            // The third cell is a length.
            let cells: Vec<&str> = line.split(',').collect();
            out.push(line.replacen(&format!(",{},", cells[2]), ",long,", 1));
            out.push(line.replacen(&format!(",{},", cells[2]), ",,", 1));
        } else if text.starts_with("machine") {
            out.push(replaced("[mm]", "[s]"));
            out.push(replaced("chain.size", "chain.sise"));
        } else if !text.starts_with("id") {
            out.push(replaced(",", ""));
            out.push(replaced("P0", "P 0"));
        }
    } else {
        out.push(replaced("item = \"", "item = \"q"));
        out.push(replaced("item =", "itme ="));
        out.push(replaced("family = \"", "family = \"q"));
        out.push(replaced("name = \"", "name = \"q"));
        out.push(replaced("```practice", "```practise"));
        out.push(replaced("```figure", "```figur"));
        out.push(replaced("seed = 7", "seed = seven"));
        out.push(replaced("Write here", "[Write](nowhere.md) here"));
    }
    out.retain(|mutated| mutated != line && !mutated.is_empty());
    out
}

#[test]
fn three_hundred_broken_modules_are_refused_at_the_broken_line() {
    const FILES: [&str; 7] = [
        "module.toml",
        "book/our-drive.md",
        "scenarios/families/our-drive.toml",
        "scenarios/families/our-drive.csv",
        "scenarios/items/our-items.toml",
        "scenarios/exams/first-check.toml",
        "scenarios/rosters/first-group.csv",
    ];
    let place = Place::new();
    place.run(&["new", "plant"]).done();
    let mut all = Vec::new();
    for file in FILES {
        let text = place.text(&format!("plant/{file}"));
        for (number, line) in text.lines().enumerate() {
            all.extend(mutations(file, line).into_iter().map(|mutated| (file, number, mutated)));
        }
    }
    assert!(all.len() >= 300, "{} mutations", all.len());
    let step = all.len() as f64 / 300.0;
    let mut met: BTreeMap<&str, usize> = BTreeMap::new();
    let mut missed = Vec::new();
    for (file, number, mutated) in (0..300).map(|place| &all[(place as f64 * step) as usize]) {
        let path = format!("plant/{file}");
        let good = place.text(&path);
        let lines: Vec<&str> =
            good.lines().enumerate().map(|(at, line)| if at == *number { mutated } else { line }).collect();
        place.write(&path, lines.join("\n") + "\n");
        let ran = place.run(&["check", "--json", "--module", "plant"]);
        place.write(&path, good);
        let json: Value = serde_json::from_str(&ran.out).unwrap_or_else(|error| panic!("{error}: {}", ran.err));
        let near = |problem: &Value| {
            let line = problem["line"].as_u64().unwrap_or(0) as i64;
            problem["file"] == path.as_str() && (line - (*number as i64 + 1)).abs() <= 1
        };
        if ran.code != 1 || !json["problems"].as_array().unwrap().iter().any(near) {
            missed.push(format!("{path}:{}: {mutated}\n{}", number + 1, json["problems"]));
        }
        *met.entry(file).or_default() += 1;
    }
    assert!(missed.is_empty(), "{} of 300 were missed:\n{}", missed.len(), missed.join("\n\n"));
    assert_eq!(met.len(), FILES.len(), "every file was broken: {met:?}");
}
