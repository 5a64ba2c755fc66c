//! `check`.

use std::process::Command;

use serde_json::Value;

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
    let item = "[[item]]\nid = \"never\"\ntopic = \"heat\"\nskill = \"x\"\ntitle = \"x\"\ntext = \"x\"\nfaults = [\"low-oil\"]\n\
                when = [{ quantity = \"heat.ambient\", at_least = \"70 °C\" }]\n\n\
                [[item.part]]\ntext = \"x?\"\nask = \"heat.rise\"\nfrom = [\"heat.housing\", \"heat.ambient\"]\n";
    place.write("plant/scenarios/items/never.toml", item);
    let ran = place.run(&["check", "--module", "plant"]);
    let out = plain(&ran.out);
    assert!(out.contains("no machine with the fault \"low-oil\" keeps the item's bounds; at the nearest"), "{out}");
    // 30 °C is the most that the family draws.
    assert!(out.contains("heat.ambient is 29.") && out.contains(", and at least 70.00 °C is allowed"), "{out}");
}

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
        ran.out.contains("load.bearing_capacity [kN],") && ran.out.contains("machine SC-01 of our-drive"),
        "{}",
        ran.out
    );
    let from = ran.out.find("       [fixed]").unwrap();
    let copied = ran.out[from..].split("\n\n").next().unwrap();
    let family = place.text("plant/scenarios/families/small.toml");
    place.write("plant/scenarios/families/small.toml", format!("{family}{copied}\n"));
    place.run(&["check", "--module", "plant"]).done();
    assert!(place.run(&["look", "small", "--module", "plant"]).done().contains("after K-"));
    place.run(&["build", "--module", "plant"]).done();
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
    place.run(&asked).refused(&[family, "largest allowed", "chain-far-too-slack"]);
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
    assert_eq!(run(&["look"]).0, "our-drive            storage conveyor drive\n");
    assert_eq!(run(&["solve", "--list", "chain.span"]).1, "", "what needs no module says nothing");
}
