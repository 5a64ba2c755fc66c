//! Broken files: what, where, how to mend, and nothing half-written.

use crate::exam::roster;
use crate::{Place, tree};

/// Breaks a file of a module, and expects each command to refuse it with these words, changing nothing.
fn broken(file: &str, from: &str, to: &str, says: &[&str]) {
    let place = Place::new();
    place.module("plant");
    place.write("roster.csv", roster());
    let file = format!("plant/scenarios/{file}");
    place.mend(&file, from, to);
    let before = tree(&place.path("."));
    for arguments in [
        &["papers", "--roster", "roster.csv", "--secret", "secret", "--out", "exam"][..],
        &["build", "--out", "course"],
        &["practise"],
        &["look"],
        &["check"],
    ] {
        let ran = place.run(&[arguments, &["--module", "plant"]].concat());
        assert_eq!(ran.code, 1, "{arguments:?}: {}{}", ran.out, ran.err);
        // What `check` finds is its result.
        let said = if arguments == ["check"] { ran.out } else { ran.err };
        for part in says {
            assert!(said.contains(part), "{arguments:?}: {part:?} is not in:\n{said}");
        }
        let (line, column) = said.lines().find_map(|line| place_in(line, &file)).unwrap_or_else(|| panic!("{said}"));
        let text = place.text(&file);
        let shown = text.lines().nth(line - 1).unwrap();
        assert!(said.contains(&format!("{line} | {shown}")), "the line is shown: {said}");
        let pointer = said.lines().find(|line| line.trim_start_matches([' ', '|']).starts_with('^')).unwrap();
        assert_eq!(pointer.find('^').unwrap() - pointer.find('|').unwrap(), column + 1, "{said}");
    }
    assert!(before == tree(&place.path(".")), "nothing was written");
}

/// Line and column of a report about `file`.
fn place_in(line: &str, file: &str) -> Option<(usize, usize)> {
    let mut parts = line.strip_prefix(file)?.strip_prefix(':')?.splitn(3, ':');
    Some((parts.next()?.parse().ok()?, parts.next()?.parse().ok()?))
}

#[test]
fn broken_families() {
    let family = "families/quarry-conveyor.toml";
    let limit = "\"heat.sump_limit\" = \"200 °F\"";
    broken(family, limit, "\"heat.sump_limit\" = \"200 mm\"", &["a length", "a temperature is wanted", "^^^"]);
    broken(family, limit, "\"heat.sump_limt\" = \"200 °F\"", &["heat.sump_limt", "heat.sump_limit"]);
    broken(family, limit, "\"heat.sump_limit\" = ", &["This is not valid here"]);
    broken(family, "[fixed]", "[fixd]", &["fixd", "fixed"]);
}

#[test]
fn broken_items() {
    let item = "items/heat.toml";
    broken(item, "ask = \"heat.rise\"", "ask = \"heat.ryse\"", &["heat.ryse", "heat.rise"]);
    broken(item, "topic = \"heat\"", "topic = \"haet\"", &["haet", "heat"]);
    broken(
        item,
        "skill = \"rise-and-limits\"",
        "skil = \"rise-and-limits\"",
        &["Nothing here is called \"skil\"", "Did you mean \"skill\"?"],
    );
    broken(item, "[[item]]", "[[item", &["This is not valid here"]);
    broken(item, "id = \"allowed-today\"", "id = \"rise-over-ambient\"", &["rise-over-ambient", "another"]);
}

#[test]
fn a_family_that_never_keeps_its_limits_is_named() {
    let place = Place::new();
    place.module("plant");
    let family = "plant/scenarios/families/mixer.toml";
    let text = place.text(family);
    place.write(
        family,
        format!("{text}\n[[limit]]\nquantity = \"heat.ambient\"\nat_least = \"90 °C\"\nbecause = \"no such day\"\n"),
    );
    place.write("roster.csv", roster());
    let at = format!("{family}:{}:12", text.lines().count() + 3);
    let says = ["No machine of the family \"mixer\" could be drawn", "no such day", "Widen the limit", &at];
    for command in [
        &["look"][..],
        &["practise", "--count", "1"],
        &["build"],
        &["papers", "--roster", "roster.csv", "--secret", "secret", "--out", "exam"],
    ] {
        place.run(&[command, &["--module", "plant"]].concat()).refused(&says);
    }
    let ran = place.run(&["check", "--module", "plant"]);
    assert!(ran.code == 1 && says.iter().all(|part| ran.out.contains(part)), "{}", ran.out);
}

#[test]
fn broken_exams_and_rosters() {
    let place = Place::new();
    place.write("roster.csv", roster());
    let papers = |exam: &str, roster: &str| {
        let ran = place.run(&["papers", "--exam", exam, "--roster", roster, "--secret", "secret", "--out", "exam"]);
        assert!(place.is_empty("exam") && !place.path("exam").exists(), "nothing was written");
        ran
    };
    let head = "title = \"x\"\nminutes = 60\npass = \"70 %\"\n";
    let exams: [(&str, &str, &[&str]); 7] = [
        ("[[row]]\ntopic = \"chian\"\ncount = 2\n", "5:9", &["\"chian\"", "Did you mean \"chain\"?", "^^^^^^^"]),
        (
            "[[row]]\nskill = \"nosuch\"\ncount = 2\n\n[[row]]\ntopic = \"chain\"\nsafety_only = true\ncount = 1\n",
            "5:9",
            &["nosuch", "drivecourse check --all"],
        ),
        ("[[row]]\ntopic = \"chain\"\ncount = 0\n", "6:9", &["^"]),
        ("[[row]]\ntopic = \"chain\"\ncount = 2\nfamilies = [\"mixr\"]\n", "exam.toml", &["mixr"]),
        ("[[row]]\ntopic = \"chain\"\ncount = 2\n", "exam.toml: No row makes sure", &["no_safety = true"]),
        ("[[row]\n", "exam.toml:4:", &["This is not valid here"]),
        ("", "exam.toml", &["row"]),
    ];
    for (rows, at, says) in exams {
        place.write("exam.toml", format!("{head}{rows}"));
        papers("exam.toml", "roster.csv").refused(&[&[at], says].concat());
    }
    place.write("exam.toml", format!("{}[[row]]\ntopic = \"chain\"\ncount = 2\n", head.replace("70 %", "170 %")));
    papers("exam.toml", "roster.csv").refused(&["exam.toml:3:8", "170 %"]);

    let rosters: [(&str, &str, &[&str]); 8] = [
        ("id,name\na1,Ada\nA1,Bo\n", "r.csv:3:1", &["The id \"A1\" stands twice", "| A1,Bo", "^^^^^", "another id"]),
        ("id,name\na1,Ada\na2,ada\n", "r.csv:3:1", &["Two people are called", "tells them apart"]),
        ("id,name\na/1,Ada\n", "r.csv:2:1", &["\"a/1\" is no id", "such as a07"]),
        ("id,name,units\na1,Ada,metric\n", "r.csv:2:1", &["\"metric\"", "Write si or us"]),
        ("id,nam\na1,Ada\n", "r.csv", &["no column \"name\"", "\"nam\""]),
        ("id,name\n", "r.csv", &["names nobody"]),
        ("id,name\na1,\"Ada\n", "r.csv:2:4", &["never closed"]),
        ("id,name\na1,A\u{202e}da\n", "r.csv:2:1", &["U+202E", "Type it again"]),
    ];
    for (text, at, says) in rosters {
        place.write("r.csv", text);
        let ran = papers("first-check", "r.csv");
        assert!(!ran.err.contains('\u{202e}'), "the terminal is not turned round");
        ran.refused(&[&[at], says].concat());
    }
    place.write("r.toml", "[[person]]\nid = \"a1\"\nname = \"Ada\"\nshift = \"day\"\n");
    papers("first-check", "r.toml").refused(&["r.toml:4:1", "Nothing here is called \"shift\""]);
}

#[test]
fn files_that_are_not_utf8() {
    let place = Place::new();
    place.module("plant");
    place.write("roster.csv", roster());
    place.write("latin.csv", b"id,name\na1,Ad\xe9le\n");
    place.write("latin.toml", b"title = \"x\"\nminutes = 60\n# \xe9\n");
    let papers = ["papers", "--secret", "secret", "--out", "exam"];
    place.run(&[&papers[..], &["--roster", "latin.csv"]].concat()).refused(&["latin.csv:2:", "UTF-8"]);
    let exam = ["--roster", "roster.csv", "--exam", "latin.toml"];
    place.run(&[&papers[..], &exam].concat()).refused(&["latin.toml:3:", "UTF-8"]);
    for file in ["families/mixer.toml", "items/heat.toml", "rosters/tarn-ridge.csv", "exams/first-check.toml"] {
        let file = format!("plant/scenarios/{file}");
        let sound = place.text(&file);
        place.write(&file, [sound.as_bytes(), b"# \xff\n"].concat());
        let ran = place.run(&["check", "--module", "plant"]);
        assert!(ran.code == 1 && ran.out.contains(&file) && ran.out.contains("UTF-8"), "{}{}", ran.out, ran.err);
        place.write(&file, sound);
    }
    place.run(&["check", "--module", "plant"]).done();
    assert!(place.is_empty("exam") && !place.path("secret").exists());
}

#[test]
fn modules_that_are_none() {
    let place = Place::new();
    std::fs::create_dir(place.path("empty")).unwrap();
    for command in [&["check"][..], &["build"], &["look"], &["practise"]] {
        place.run(&[command, &["--module", "gone"]].concat()).refused(&["no folder gone", "--module"]);
        let says = ["empty is no module", "book, scenarios and theme"];
        place.run(&[command, &["--module", "empty"]].concat()).refused(&says);
    }
    assert!(place.is_empty("."));
}

/// A full disk: a small file system in memory, where this user may make one.
#[cfg(target_os = "linux")]
#[test]
fn a_full_disk_leaves_nothing_half_written() {
    use std::process::Command;
    let place = Place::new();
    place.write("roster.csv", roster());
    std::fs::create_dir(place.path("disk")).unwrap();
    // In a space of its own for mounts, so that nothing outside this test sees it.
    let run = |arguments: &str| {
        let script = format!(
            "mount -t tmpfs -o size=256k none disk || exit 99; '{}' {arguments}; echo code $?; find disk -type f",
            crate::PROGRAM
        );
        let output =
            Command::new("unshare").args(["-m", "-r", "sh", "-c", &script]).current_dir(place.path(".")).output();
        output.ok().filter(|output| output.status.code() != Some(99) && output.status.code() != Some(1))
    };
    for arguments in [
        "papers --roster roster.csv --secret secret --out disk/exam",
        "build --out disk/course",
        "demo --out disk/demo",
    ] {
        let Some(output) = run(arguments) else {
            println!("skipped: this user may not make a small file system");
            return;
        };
        let (out, err) = (String::from_utf8(output.stdout).unwrap(), String::from_utf8(output.stderr).unwrap());
        assert_eq!(out, "code 1\n", "{arguments}: {err}");
        assert!(err.contains("o space left") && err.contains("disk/"), "{arguments}: {err}");
    }
}

/// What `check` finds in a module with a family, a table of machines and a roster of this text, in English and German.
fn found(family: &str, table: &str, roster: &str) -> [String; 2] {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain,heat"]).done();
    let head = "name = \"small drive\"\nlike = \"our-drive\"\nmachines = \"small.csv\"\n";
    place.write("plant/scenarios/families/small.toml", format!("{head}{family}"));
    // The machines of the family that it is like, with a column more or another cell.
    let machines = place.text("plant/scenarios/families/our-drive.csv");
    place.write("plant/scenarios/families/small.csv", if table.is_empty() { &machines } else { table });
    place.write("plant/scenarios/rosters/night.csv", roster);
    ["en", "de"].map(|language| {
        let ran = place.run(&["check", "--module", "plant", "--language", language]);
        assert_eq!(ran.code, 1, "{}{}", ran.out, ran.err);
        ran.out
    })
}

const ROSTER: &str = "id,name,group,units\nP01,Ada Lund,day,si\n";

#[test]
fn values_with_two_meanings_are_refused_in_files() {
    for (family, at, english, german) in [
        (
            "[fixed]\n\"chain.sag_share_wanted\" = { value = \"1.5\", source = \"s\" }\n",
            "small.toml:5:28",
            "The unit is missing: this is a share in %.\n|Write \"1.5 %\", or \"150 %\" for 1.5 of the whole.",
            "Die Einheit fehlt: Das ist ein Anteil in %.\n|Schreiben Sie \"1.5 %\", oder \"150 %\" für 1.5 des Ganzen.",
        ),
        (
            "[[limit]]\nquantity = \"chain.movement_share\"\nat_most = \"4.05\"\n",
            "small.toml:6:11",
            "Write \"4.05 %\", or \"405 %\"",
            "Schreiben Sie \"4.05 %\", oder \"405 %\"",
        ),
        (
            "[draw]\n\"chain.set_sag\" = { between = [0.65, \"90 %\"] }\n",
            "small.toml:5:19",
            "Write \"0.65 %\", or \"65 %\" for 0.65 of the whole.",
            "Schreiben Sie \"0.65 %\", oder \"65 %\"",
        ),
        (
            "[fixed]\n\"heat.ambient\" = \"1,200 °C\"\n",
            "small.toml:5:18",
            "Its comma may part thousands or decimals.\n|Write \"1200 °C\" or \"1.2 °C\".",
            "Das Komma kann Tausender oder Dezimalstellen abtrennen.\n|Schreiben Sie \"1200 °C\" oder \"1.2 °C\".",
        ),
        (
            "[fixed]\n\"chain.size\" = \"24B-2\"\n",
            "small.toml:5:16",
            "24B-2 is 24B with the number of its strands behind it, which chain.strands takes. Write it so:\n|\n       \"chain.size\" = \"24B\"\n       \"chain.strands\" = \"2\"\n",
            "24B-2 ist 24B mit der Zahl der Stränge dahinter; sie gehört zu chain.strands. Schreiben Sie es so:\n|\n       \"chain.size\" = \"24B\"\n       \"chain.strands\" = \"2\"\n",
        ),
    ] {
        let said = found(family, "", ROSTER);
        for (said, parts) in said.iter().zip([english, german]) {
            let family = format!("plant/scenarios/families/{at}: ");
            assert!(said.contains(&family), "{said}");
            assert!(parts.split('|').all(|part| said.contains(part)), "{parts:?} is not in:\n{said}");
        }
        assert!(!said[0].contains("06B, 08B"), "no list of every size: {}", said[0]);
    }
    // What needs no unit, and what is settled, stays as it was.
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain,heat"]).done();
    place.mend(
        "plant/scenarios/families/our-drive.toml",
        "\"heat.ambient\" = { between = [\"12 °C\", \"30 °C\"] }",
        "\"heat.ambient\" = { between = [\"12,5 °C\", \"30,25 °C\"] }",
    );
    place.run(&["check", "--module", "plant"]).done();
}

#[test]
fn cells_of_a_table_with_two_meanings_are_refused() {
    let two = "machine,chain.size,chain.strands,chain.sag_share_wanted,chain.centres_planned [mm],chain.teeth_small\n";
    for (row, at, english, german) in [
        ("K-1,120,1,1.5,1250,19", "2:11", "Write \"1.5 %\", or \"150 %\"", "Schreiben Sie \"1.5 %\", oder \"150 %\""),
        ("K-1,120,1,2 %,\"1,350\",19", "2:15", "Write \"1350 mm\" or \"1.35 mm\".", "\"1350 mm\" oder \"1.35 mm\""),
        (
            "K-1,24B-2,1,2 %,1250,19",
            "2:5",
            "Write 24B here, and 2 in a column chain.strands.",
            "Schreiben Sie hier 24B, und 2 in eine Spalte chain.strands.",
        ),
        (
            "K-1,120,1,2 %,1250,4,19",
            "2:15",
            "7 cells under 6 headings; perhaps the comma in 1250,4 is a decimal comma.|^^^^^^\n|Write 1250.4, or \"1250,4\" with its quotation marks, or part all cells by semicolons.",
            "vielleicht ist das Komma in 1250,4 ein Dezimalkomma.|Schreiben Sie 1250.4, oder \"1250,4\" mit den Anführungszeichen",
        ),
        (
            "K-1,120,1,2 %,1,350,19",
            "2:15",
            "the comma in 1,350 is|Write 1350 or 1.350, without a comma.",
            "Schreiben Sie 1350 oder 1.350, ohne Komma.",
        ),
        ("K-1,120,1,2 %,1250,19,", "2:1", "7 cells under 6 headings.\n", "7 Zellen unter 6 Überschriften.\n"),
    ] {
        let said = found("", &format!("{two}{row}\n"), ROSTER);
        for (said, parts) in said.iter().zip([english, german]) {
            let table = format!("plant/scenarios/families/small.csv:{at}: ");
            assert!(said.contains(&table), "{row}: {said}");
            assert!(parts.split('|').all(|part| said.contains(part)), "{parts:?} is not in:\n{said}");
        }
    }
}

#[test]
fn a_lost_comma_of_a_roster_is_pointed_at() {
    let [english, german] = found("", "", "id,name,group,units\nP03,Bo Alm,day,si\nP04,Ada Lund night shift,si\n");
    for part in [
        "plant/scenarios/rosters/night.csv:3:26: \"si\" stands under \"group\", and this row has no cell under \"units\".",
        "A delimiter is missing before it.",
        "       P04,Ada Lund night shift,,si\n",
    ] {
        assert!(english.contains(part), "{part:?} is not in:\n{english}");
    }
    assert!(german.contains("steht unter \"group\", und diese Zeile hat keine Zelle unter \"units\"."), "{german}");
}
