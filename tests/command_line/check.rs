//! `check`.

use serde_json::Value;

use crate::Place;

#[test]
fn the_built_in_course_is_sound() {
    let place = Place::new();
    let said = place.run(&["check"]).done();
    assert!(said.contains(" families, ") && said.contains("--all lists them"), "{said}");
    let all = place.run(&["check", "--all"]).done();
    assert!(all.lines().count() > 20 && all.contains("is not diagnosed"), "{all}");
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
