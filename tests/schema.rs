//! The schemas that editors are given: what the program reads they accept, what it refuses for its shape they refuse.

#![allow(clippy::unwrap_used)]

use std::path::Path;
use std::process::Command;

use serde_json::Value;

fn run(arguments: &[&str]) -> String {
    let output = Command::new(env!("CARGO_BIN_EXE_drivecourse")).args(arguments).output().unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap()
}

fn validator(sort: &str) -> jsonschema::Validator {
    let schema: Value = serde_json::from_str(&run(&["schema", sort])).unwrap();
    jsonschema::validator_for(&schema).unwrap_or_else(|error| panic!("{sort}: {error}"))
}

fn json(toml: &str) -> Value {
    toml::from_str(toml).unwrap()
}

#[track_caller]
fn accepts(validator: &jsonschema::Validator, name: &str, text: &str) {
    let value = json(text);
    let errors: Vec<_> =
        validator.iter_errors(&value).map(|error| format!("{} at {}", error, error.instance_path)).collect();
    assert!(errors.is_empty(), "{name}: {errors:?}");
}

#[test]
fn every_built_in_and_new_file_is_accepted() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let place = tempfile::tempdir().unwrap();
    let plant = place.path().join("plant");
    run(&["new", plant.to_str().unwrap(), "--topic", "mount,chain,load,heat"]);
    for (sort, folder) in [("family", "families"), ("item", "items"), ("exam", "exams")] {
        let validator = validator(sort);
        let mut read = 0;
        for base in [root, plant.as_path()] {
            for entry in std::fs::read_dir(base.join("scenarios").join(folder)).unwrap() {
                let path = entry.unwrap().path();
                if path.extension().is_some_and(|ending| ending == "toml") {
                    accepts(&validator, &path.display().to_string(), &std::fs::read_to_string(&path).unwrap());
                    read += 1;
                }
            }
        }
        assert!(read >= 2, "{sort}");
        let beside = std::fs::read_to_string(plant.join(format!("schemas/{sort}.json"))).unwrap();
        assert_eq!(beside.trim_end(), run(&["schema", sort]).trim_end(), "the module carries the same schema");
    }
    accepts(&validator("module"), "module.toml", &std::fs::read_to_string(plant.join("module.toml")).unwrap());
    accepts(&validator("roster"), "roster", "[[person]]\nid = \"a1\"\nname = \"Ada\"\nunits = \"us\"\n");
}

#[test]
fn what_the_program_refuses_for_its_shape_is_refused() {
    let family = "name = \"x\"\n[fixed]\n\"mount.gap_limit\" = \"0.05 mm\"\n";
    let item = "[[item]]\nid = \"a\"\ntopic = \"mount\"\nskill = \"s\"\ntitle = \"t\"\ntext = \"t\"\n[[item.part]]\ntext = \"t\"\nask = \"mount.twist\"\n";
    let exam = "title = \"x\"\nminutes = 60\npass = \"70 %\"\n[[row]]\ntopic = \"mount\"\ncount = 2\n";
    accepts(&validator("exam"), "an item once", &exam.replace("topic = \"mount\"\ncount = 2\n", "item = \"a\"\n"));
    let roster = "[[person]]\nid = \"a1\"\nname = \"Ada\"\n";
    let module = "title = \"x\"\n[reuse]\nitems = [\"chain\"]\n";
    for (sort, good, changes) in [
        (
            "family",
            family,
            &[
                ("name = \"x\"\n", ""),
                ("name", "nmae"),
                ("\"x\"", "5"),
                ("gap_limit", "gap_limits"),
                ("\"0.05 mm\"", "true"),
                ("\"0.05 mm\"", "{ value = \"0.04 mm\" }"),
                ("[fixed]", "[fixt]"),
                (
                    "[fixed]\n\"mount.gap_limit\" = \"0.05 mm\"",
                    "[draw]\n\"mount.level\" = { betwen = [\"1 mm/m\", \"2 mm/m\"] }",
                ),
                ("[fixed]\n\"mount.gap_limit\" = \"0.05 mm\"", "[draw]\n\"mount.level\" = { between = [\"1 mm/m\"] }"),
                ("[fixed]\n\"mount.gap_limit\" = \"0.05 mm\"", "[fixed]\n\"mount.shim_stock\" = \"paper\""),
                ("[fixed]\n\"mount.gap_limit\" = \"0.05 mm\"", "[faults]\nhealthy = 1.5"),
                (
                    "[fixed]\n\"mount.gap_limit\" = \"0.05 mm\"",
                    "[[limit]]\nquantity = \"chain.sagg\"\nat_most = \"1 mm\"",
                ),
            ][..],
        ),
        (
            "item",
            item,
            &[
                ("id = \"a\"", "id = \"a b\""),
                ("topic = \"mount\"", "topic = \"mound\""),
                ("skill = \"s\"\n", ""),
                ("mount.twist", "mount.twits"),
                ("ask =", "asks ="),
                ("ask = \"mount.twist\"", "order = [\"a\", \"b\"]"),
                ("ask = \"mount.twist\"", "ask = \"mount.twist\"\nmarks = 0"),
                ("ask = \"mount.twist\"", "ask = \"mount.twist\"\nwrong = [{ gives = \"mount.twist\" }]"),
            ],
        ),
        (
            "exam",
            exam,
            &[
                ("minutes = 60", "minutes = 0"),
                ("minutes = 60", "minutes = \"60\""),
                ("title = \"x\"\n", ""),
                ("topic = \"mount\"", "topic = \"mound\""),
                ("count = 2", "count = 0"),
                ("count = 2\n", ""),
                ("pass", "pas"),
                ("[[row]]", "units = \"metric\"\n[[row]]"),
            ],
        ),
        ("roster", roster, &[("id = \"a1\"", "id = \"a 1\""), ("name = \"Ada\"\n", ""), ("[[person]]", "[[persons]]")]),
        ("module", module, &[("title", "titel"), ("\"chain\"", "5"), ("[reuse]", "[use]")]),
    ] {
        let validator = validator(sort);
        accepts(&validator, sort, good);
        for (from, to) in changes {
            assert!(good.contains(from), "{sort}: {from}");
            let broken = good.replacen(from, to, 1);
            assert!(!validator.is_valid(&json(&broken)), "{sort} accepts {broken}");
        }
    }
}
