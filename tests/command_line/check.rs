//! `check`.

use std::process::Command;

use serde_json::Value;

use crate::tables::uneven;
use crate::{PROGRAM, Place, plain};

#[test]
fn the_built_in_course_is_sound() {
    let place = Place::new();
    let said = place.run(&["check"]).done();
    assert!(said.contains(" families, ") && said.contains("--all lists them"), "{said}");
    let all = place.run(&["check", "--all"]).done();
    assert!(all.lines().count() > 20 && all.contains("is not diagnosed"), "{all}");
    assert!(all.contains("\nrise-over-ambient ") || all.starts_with("rise-over-ambient "), "{all}");
    let json: Value = serde_json::from_str(&place.run(&["check", "--json"]).done()).unwrap();
    assert_eq!(json["problems"].as_array().unwrap().len(), 0);
    assert!(!json["notes"].as_array().unwrap().is_empty());
}

#[test]
fn every_problem_is_found_in_one_pass() {
    let place = Place::new();
    place.module("plant");
    place.write("plant/book/SUMMARY.md", "# Summary\n\n- [One](one.md)\n");
    place.write(
        "plant/book/one.md",
        "# One\n\n```practice\nitem = \"rise-over-ambiant\"\n```\n\n```figure\nname = \"nosuch\"\n```\n",
    );
    place.write(
        "plant/scenarios/exams/second.toml",
        "title = \"x\"\nminutes = 10\npass = \"70 %\"\n\n[[row]]\nskill = \"nosuch\"\ncount = 1\n",
    );
    place.write("plant/scenarios/rosters/night.csv", "id,name\na1,Ada\na1,Bo\n");
    let never = "[[item]]\nid = \"never\"\ntopic = \"heat\"\nskill = \"x\"\ntitle = \"x\"\ntext = \"x\"\nfaults = [\"no-such-fault\"]\n\n\
                 [[item.part]]\ntext = \"x?\"\nask = \"heat.rise\"\nfrom = [\"heat.housing\", \"heat.ambient\"]\n";
    place.write("plant/scenarios/items/never.toml", never);
    let ran = place.run(&["check", "--module", "plant"]);
    for part in [
        "plant/book/one.md:4:8: There is no item called \"rise-over-ambiant\".",
        "Did you mean \"rise-over-ambient\"?",
        "plant/book/one.md:8:8: There is no picture called \"nosuch\".",
        "plant/scenarios/exams/second.toml:6:9:",
        "plant/scenarios/rosters/night.csv:3:1: The id \"a1\" stands twice.",
        "plant/scenarios/items/never.toml:2:6: No family fits the item \"never\": it is never asked.",
        "has none of the faults",
    ] {
        assert!(ran.out.contains(part), "{part:?} is not in:\n{}", ran.out);
    }
    assert!(ran.err.contains("problems were found"), "{}", ran.err);
    assert_eq!(ran.code, 1);
    let json: Value = serde_json::from_str(&place.run(&["check", "--module", "plant", "--json"]).out).unwrap();
    let problems = json["problems"].as_array().unwrap();
    let count: usize = ran.err.split_whitespace().nth(1).unwrap().parse().unwrap();
    assert_eq!(problems.len(), count);
    assert!(problems.iter().all(|problem| problem["file"].as_str().unwrap().starts_with("plant/")));
    let night = problems.iter().find(|problem| problem["file"] == "plant/scenarios/rosters/night.csv").unwrap();
    assert_eq!((&night["line"], &night["column"]), (&3.into(), &1.into()));
}

#[test]
fn a_bound_of_an_item_that_no_machine_keeps_is_told_with_its_values() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "heat"]).done();
    let item = "[[item]]\nid = \"never\"\ntopic = \"heat\"\nskill = \"x\"\ntitle = \"x\"\ntext = \"x\"\nfaults = [\"hot-running\"]\n\
                when = [{ quantity = \"heat.ambient\", at_least = \"70 °C\" }]\n\n\
                [[item.part]]\ntext = \"x?\"\nask = \"heat.rise\"\nfrom = [\"heat.housing\", \"heat.ambient\"]\n";
    place.write("plant/scenarios/items/never.toml", item);
    let ran = place.run(&["check", "--module", "plant"]);
    let out = plain(&ran.out);
    assert!(out.contains("no machine with the fault \"hot-running\" keeps the item's bounds; at the nearest"), "{out}");
    // 30 °C is the most that the family draws.
    assert!(out.contains("heat.ambient is 29.") && out.contains(", and at least 70.00 °C is allowed"), "{out}");
}

#[test]
fn a_family_of_which_a_sort_of_machine_cannot_be_drawn_is_not_sound() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain,heat"]).done();
    let family = "plant/scenarios/families/our-drive.toml";
    let good = place.text(family);
    let sound =
        "\n[[limit]]\nquantity = \"heat.ambient\"\nat_least = \"60 °C\"\nbecause = \"no such day\"\nhealthy = true\n";
    let fault = good.replace("at_least = \"too slack\"", "at_most = \"too tight\"");
    for (text, says) in [
        (
            format!("{good}{sound}"),
            ["with nothing wrong", "heat.ambient (no such day)", "the least allowed is 60", ": 60"],
        ),
        (
            fault.clone(),
            [
                "with the fault \"chain-far-too-slack\" (chain left far",
                "chain.sag_verdict",
                "the largest allowed is too tight",
                "",
            ],
        ),
    ] {
        place.write(family, text);
        let ran = place.run(&["check", "--module", "plant"]);
        let out = plain(&ran.out);
        assert!(ran.code == 1 && says[..3].iter().all(|part| out.contains(part)), "{out}");
        let spread = plain(&place.run(&["look", "our-drive", "--spread", "60", "--module", "plant"]).done());
        let drawn: u32 = spread.split(": ").nth(1).unwrap().split(' ').next().unwrap().parse().unwrap();
        assert!(spread.contains(&format!("{} of 60 could not be drawn:", 60 - drawn)), "{spread}");
        assert!(spread.contains(says[0]) && spread.contains(&format!("({family}:")), "{spread}");
        let ran = place.run(&["look", "our-drive", "--spread", "60", "--json", "--module", "plant"]).done();
        let json: Value = serde_json::from_str(&ran).unwrap();
        assert!(json["not_drawn"][0]["why"].as_str().unwrap().starts_with(says[0]), "{json}");
    }
    let asked = ["look", "our-drive", "--fault", "chain-far-too-slack", "--module", "plant"];
    place.write(family, &fault);
    let ran = place.run(&asked);
    let told = plain(&ran.out);
    let breaks = "  chain.sag_verdict (verdict on the movement of the slack strand) is too slack, and the largest allowed is too tight";
    assert!(told.starts_with("Not one of 2000 machines could be kept.") && told.contains(breaks), "{told}");
    ran.refused(&[family, "largest allowed", "chain-far-too-slack"]);
    place.write(family, &good);
    let said = place.run(&asked).done();
    assert!(
        said.contains("Wrong with it: chain left far too slack.") && said.contains("\n  chain-far-too-slack "),
        "{said}"
    );
    place.run(&["look", "our-drive", "--fault", "chain-far-too-slak", "--module", "plant"]).refused(&["did you mean"]);
}

#[test]
fn problems_follow_the_lines_of_a_file_and_blocks_are_read_beside_broken_families() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain"]).done();
    let chapter = "# Extra\n\nSee [it](nowhere.md) and [heat](temperature.md).\n\n```figure\nname = \"nosuch\"\n```\n\n[There](gone.md)\n\n\
                   ```formulas\ntopics = \"chain\"\n```\n";
    place.write("plant/book/extra.md", chapter);
    let lines = |out: &str| -> Vec<u32> {
        let starts = out.lines().filter_map(|line| line.strip_prefix("plant/book/extra.md:"));
        starts.map(|rest| rest.split(':').next().unwrap().parse().unwrap()).collect()
    };
    let ran = place.run(&["check", "--module", "plant"]);
    assert_eq!(lines(&ran.out), [3, 3, 6, 9, 12], "{}", ran.out);
    assert!(
        ran.out.contains("The book has no file temperature.md: SUMMARY.md does not list this chapter"),
        "{}",
        ran.out
    );
    assert!(ran.out.contains("- [Title](temperature.md)"), "{}", ran.out);
    place.mend("plant/scenarios/families/our-drive.toml", "chain.wrap_small", "chain.wrap_smal");
    let ran = place.run(&["check", "--module", "plant"]);
    assert!(ran.out.contains("chain.wrap_smal"), "{}", ran.out);
    assert_eq!(
        lines(&ran.out),
        [3, 3, 9, 12],
        "what a block says is read, what it names is not looked up: {}",
        ran.out
    );
}

#[test]
fn the_module_of_this_folder_is_used_and_said() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain"]).done();
    let run = |arguments: &[&str]| {
        let mut command = Command::new(PROGRAM);
        let output = command.args(arguments).current_dir(place.path("plant")).output().unwrap();
        (String::from_utf8(output.stdout).unwrap(), String::from_utf8(output.stderr).unwrap())
    };
    for arguments in [
        &["check"][..],
        &["look"],
        &["build", "--out", "../course"],
        &["practise", "--count", "1"],
        &["words", "--only", "our-"],
    ] {
        let here = run(arguments);
        let named = run(&[arguments, &["--module", "."]].concat());
        assert_eq!(here.0, named.0, "{arguments:?}");
        let (first, rest) = here.1.split_once('\n').unwrap();
        assert!(first.starts_with("drivecourse: this folder holds module.toml") && rest == named.1, "{}", here.1);
        assert!(!named.1.contains("this folder holds"), "{}", named.1);
    }
    let families = run(&["look"]).0;
    assert!(families.starts_with("our-drive            storage conveyor drive\n\nOf the program"), "{families}");
    assert_eq!(run(&["solve", "--list", "chain.span"]).1, "", "what needs no module says nothing");
}

/// A family of which no machine can be drawn is looked at through the machine that came nearest.
#[test]
fn the_machine_that_came_nearest_is_shown_with_what_it_breaks() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain,heat"]).done();
    let family = "plant/scenarios/families/our-drive.toml";
    let good = place.text(family);
    let limits = "\n[[limit]]\nquantity = \"heat.ambient\"\nat_least = \"31 °C\"\nbecause = \"no such day\"\n\
                  [[limit]]\nquantity = \"drive.load_share\"\nat_most = \"95 %\"\n";
    place.write(family, format!("{good}{limits}"));
    let asked = ["look", "our-drive", "--fault", "none", "--seed", "3", "--module", "plant"];
    let ran = place.run(&asked);
    let told = plain(&ran.out);
    // The draws end at 30 °C: of 2000 one comes within a tenth of it. The other limit is kept, and not told of.
    let line = told.lines().find(|line| line.starts_with("  heat.ambient")).unwrap_or_else(|| panic!("{told}"));
    assert!(line.contains("is 29.9") || line.contains("is 30"), "{line}");
    assert!(line.contains(" below the least allowed, 31.00 °C (no such day)"), "{line}");
    let by: f64 = line.split(", ").nth(1).unwrap().split(' ').next().unwrap().parse().unwrap();
    assert!((1.0..1.1).contains(&by), "{line}");
    assert!(!told.split("\n\n").next().unwrap().contains("drive.load_share"), "{told}");
    assert!(
        told.contains("drawn from SC-0") && told.contains("Nothing is wrong with it.") && told.contains("\nChain\n"),
        "{told}"
    );
    ran.refused(&["No machine of the family \"our-drive\"", "Widen the limit"]);
    let ran = place.run(&[&asked[..], &["--json"]].concat());
    let json: Value = serde_json::from_str(&ran.out).unwrap();
    assert_eq!((&json["kept"], &json["breaks"][0]["at_least"]), (&false.into(), &31.0.into()), "{json}");
    assert_eq!((ran.code, json["breaks"].as_array().unwrap().len()), (1, 1), "{json}");
    assert_eq!(place.run(&asked).out, place.run(&asked).out, "the same each time");
}

#[test]
fn a_verdict_against_every_sound_machine_is_told_and_is_no_problem() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain,heat"]).done();
    let (family, table) = ("plant/scenarios/families/our-drive.toml", "plant/scenarios/families/our-drive.csv");
    let sound = place.run(&["check", "--module", "plant"]).done();
    assert!(!sound.contains("sound machine"), "{sound}");
    let good = place.text(family);
    // A chain that is too small for the motor, on one machine alone.
    let rows = place.text(table);
    let size = rows.lines().next().unwrap().split(',').position(|cell| cell == "chain.size").unwrap();
    let smaller = |(line, row): (usize, &str)| {
        let mut cells: Vec<&str> = row.split(',').collect();
        if line == 2 {
            cells[size] = "100";
        }
        cells.join(",")
    };
    place.write(table, rows.lines().enumerate().map(smaller).collect::<Vec<_>>().join("\n") + "\n");
    let said = plain(&place.run(&["check", "--module", "plant"]).done());
    assert!(said.contains("Every sound machine after SC-02 has chain.rating_verdict"), "{said}");
    assert!(said.contains("“too small”") && said.contains("look at what it follows from: chain."), "{said}");
    let json: Value = serde_json::from_str(&place.run(&["check", "--module", "plant", "--json"]).done()).unwrap();
    assert!(json["notes"][0]["what"].as_str().unwrap().contains("SC-02"), "{json}");
    place.write(table, rows);
    // A limit that no housing keeps.
    place.write(family, good.replace("[draw]", "\"heat.sump_limit\" = \"25 °C\"\n[draw]"));
    let said = plain(&place.run(&["check", "--module", "plant"]).done());
    assert!(said.contains("Every sound machine of this family has heat.verdict"), "{said}");
    place.write(family, good);
    assert_eq!(place.run(&["check", "--module", "plant"]).done(), sound);
}

#[test]
fn a_module_looks_at_the_families_of_the_program_and_says_whose_they_are() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain,heat"]).done();
    let look = |arguments: &[&str]| place.run(&[&["look"], arguments, &["--module", "plant"]].concat());
    let said = look(&[]).done();
    let (own, program) = said.split_once("\nOf the program, to compare with:\n").unwrap();
    assert!(own.starts_with("our-drive ") && own.lines().count() == 1, "{said}");
    assert!(program.contains("quarry-conveyor ") && program.contains("\nsettling-rake "), "{said}");
    assert_eq!(
        look(&["quarry-conveyor", "--seed", "7"]).done(),
        place.run(&["look", "quarry-conveyor", "--seed", "7"]).done()
    );
    assert!(look(&["mixer", "--spread", "20"]).done().contains("20 machines"));
    look(&["quarry-conveyer"]).refused(&["did you mean \"quarry-conveyor\", a family of the program?"]);
    look(&["our-driv"]).refused(&["did you mean \"our-drive\"?"]);
    look(&["zzzzzz"]).refused(&["the module has our-drive; the program has ash-lift, bucket-lift,"]);
    // To be asked about, it is taken over; looking and asking are told apart.
    let practise = ["practise", "--family", "mixer", "--count", "1", "--module", "plant"];
    place.run(&practise).refused(&["\"mixer\" is a family of the program", "[reuse] families = [\"mixer\"]"]);
    place.mend("plant/module.toml", "# families = [\"mixer\"]", "families = [\"mixer\"]");
    assert!(place.run(&practise).done().contains("1 of 1"));
    assert!(look(&[]).done().contains("\nOf the program, taken over in module.toml:\nmixer "));
}

#[test]
fn a_skill_is_called_by_its_name_where_it_has_one() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain"]).done();
    let today = |arguments: &[&str]| {
        let all = [&["practise", "--count", "1"], arguments].concat();
        place.run_with(&all, b"-\n-\n-\n-\n").done()
    };
    let own = ["--item", "our-guard-rule", "--module", "plant"];
    assert!(today(&own).contains("\n  rules of our site "), "{}", today(&own));
    // The program's own skills have names, in German their translations.
    let sag = ["--item", "sag-to-set"];
    assert!(today(&sag).contains("\n  sag of the chain "), "{}", today(&sag));
    assert!(today(&["--item", "sag-to-set", "--language", "de"]).contains("Kettendurchhang"));
    // A module's word for it goes before the program's; without a name it is the word itself, and nobody asks for more.
    let items = "plant/scenarios/items/our-items.toml";
    place.mend(items, "site-rules = \"rules of our site\"", "chain-sag = \"how our chains hang\"");
    place.run(&["check", "--module", "plant"]).done();
    assert!(today(&own).contains("\n  site rules "), "{}", today(&own));
    assert!(today(&["--item", "our-sag-to-set", "--module", "plant"]).contains("\n  how our chains hang "));
    place.mend(items, "chain-sag = \"how", "chain-sagg = \"how");
    let ran = place.run(&["check", "--module", "plant"]);
    assert!(ran.code == 1 && ran.out.contains("a skill that no item has: chain-sagg."), "{}", ran.out);
    assert!(ran.out.contains("Did you mean chain-sag?"), "{}", ran.out);
}

#[test]
fn notes_on_one_pair_of_wrong_turns_are_one_with_own_items_first() {
    let place = Place::new();
    uneven(&place);
    let all = place.run(&["check", "--module", "plant", "--all"]).done();
    let of_others = |line: &str| line.contains("cannot be told apart");
    let of_own = |line: &str| line.contains("wrong turns come to one answer");
    let notes: Vec<&str> = all.lines().filter(|line| of_others(line) || of_own(line)).collect();
    // In words for people, and what to do: nothing.
    let pair = "\n- The eighth.\n- You forgot the 8 under the line.";
    let pairs: Vec<_> = all.split("\n").filter(|line| of_own(line) && line.contains("pull-one")).collect();
    assert!(pairs.len() == 1 && all.contains(pair) && all.contains("There is nothing to do: "), "{all}");
    assert!(
        pairs[0].contains("these 2 wrong turns come to one answer, in 2 parts of questions: pull-one (a) in all families; pull-two (a) in all families:"),
        "{}", pairs[0]
    );
    assert!(of_own(notes[0]) && !all.contains("own: "), "{notes:?}");
    let said = place.run(&["check", "--module", "plant"]).done();
    let others = all.matches("is not diagnosed").count() + all.matches("stand in for yours").count();
    assert!(said.contains(&format!("{} notes besides", notes.len() + others)), "{said}");
    let json: Value = serde_json::from_str(&place.run(&["check", "--module", "plant", "--json"]).done()).unwrap();
    let entries = json["notes"].as_array().unwrap().iter();
    let of_pair = entries.filter(|note| note["what"].as_str().unwrap().contains(pair)).count();
    assert_eq!(of_pair, 2, "one for each item");
}
