//! `look` and `build`.

use serde_json::Value;

use crate::{Place, plain, tree};

#[test]
fn look_shows_what_is_seen_and_what_is_true() {
    let place = Place::new();
    let families = place.run(&["look"]).done();
    let names: Vec<_> = families.lines().map(|line| line.split_whitespace().next().unwrap()).collect();
    assert!(names.len() >= 3, "{families}");
    for name in &names {
        let said = place.run(&["look", name]).done();
        assert!(said.contains(", machine 1\n") && said.contains("seen"), "{said}");
        assert!(said.contains("Nothing is wrong with it.") || said.contains("Wrong with it: "), "{said}");
        let json = |seed: &str, units: &str| -> Value {
            serde_json::from_str(&place.run(&["look", name, "--seed", seed, "--units", units, "--json"]).done())
                .unwrap()
        };
        let (si, us) = (json("5", "si"), json("5", "us"));
        assert_eq!(si, json("5", "si"));
        assert_ne!(si["quantities"], json("6", "si")["quantities"]);
        assert_eq!((&si["family"], &si["seed"], &us["units"]), (&(*name).into(), &5.into(), &"us".into()));
        // One machine in both: a metre is 39.37 in.
        let span = |json: &Value| {
            let all = json["quantities"].as_array().unwrap();
            all.iter().find(|quantity| quantity["quantity"] == "chain.span").unwrap()["true"].as_f64().unwrap()
        };
        approx::assert_relative_eq!(span(&si) / span(&us), 25.4, max_relative = 1e-9);
    }
    place.run(&["look", "mixr"]).refused(&["no family \"mixr\"", "did you mean \"mixer\"?"]);
}

#[test]
fn look_shows_one_topic_and_no_dust() {
    let place = Place::new();
    let chain = plain(&place.run(&["look", "mixer", "--topic", "chain", "--paths"]).done());
    assert!(chain.contains("\nChain\n") && !chain.contains("\nWarm-up temperature\n"), "{chain}");
    assert!(!chain.contains("heat.rise "), "{chain}");
    assert!(chain.contains("\nWhat may be wrong with one") && chain.contains("\n  tight-chain "), "{chain}");
    place.run(&["look", "mixer", "--topic", "chian"]).refused(&["did you mean \"chain\"?"]);
    let spread = plain(&place.run(&["look", "quarry-conveyor", "--spread", "300", "--topic", "align"]).done());
    assert!(spread.contains("align.gap_4 ") && !spread.contains("mount.gap"), "{spread}");
    assert!(!spread.contains("0.00000"), "the dust of a calculation is swept off: {spread}");
    let json = place.run(&["look", "quarry-conveyor", "--spread", "300", "--topic", "align", "--json"]).done();
    assert!(!json.contains("e-1"), "{json}");
}

#[test]
fn build_makes_a_course_and_replaces_only_its_own() {
    let place = Place::new();
    let said = place.run(&["build"]).done();
    assert!(said.contains("chapters in course; open course/index.html"), "{said}");
    let first = tree(&place.path("course"));
    assert!(plain(&place.text("course/index.html")).contains("<html"));
    place.write("course/stale.html", "stale");
    place.run(&["build"]).done();
    assert!(first == tree(&place.path("course")));

    place.write("mine/notes.txt", "keep");
    place.write("file", "keep");
    place.write("module/book/notes.txt", "keep");
    place.write("module/scenarios/notes.txt", "keep");
    let before = tree(&place.path("."));
    let build = |out: &str, says: &[&str]| place.run(&["build", "--module", "module", "--out", out]).refused(says);
    build("mine", &["mine holds files", "choose an empty or a new folder"]);
    build(".", &["the current folder"]);
    build("module", &["module contains", "module/book", "choose a folder of its own"]);
    build("module/book", &["is the source folder module/book"]);
    build("module/book/out", &["lies inside the source folder module/book"]);
    build("module/scenarios/out", &["lies inside the source folder module/scenarios"]);
    build("file", &["file cannot be an output folder"]);
    build("file/out", &["file/out cannot be an output folder"]);
    assert!(before == tree(&place.path(".")));
}

#[cfg(unix)]
#[test]
fn a_folder_that_cannot_be_written_is_named() {
    use std::os::unix::fs::PermissionsExt;
    let place = Place::new();
    let closed = place.path("closed");
    std::fs::create_dir(&closed).unwrap();
    std::fs::set_permissions(&closed, std::fs::Permissions::from_mode(0o555)).unwrap();
    if std::fs::write(closed.join("probe"), "").is_ok() {
        println!("skipped: this user may write anywhere");
        return;
    }
    place.write("roster.csv", crate::exam::roster());
    for arguments in [
        &["build", "--out", "closed/course"][..],
        &["demo", "--out", "closed/demo"],
        &["papers", "--roster", "roster.csv", "--secret", "secret", "--out", "closed/exam"],
    ] {
        place.run(arguments).refused(&["closed", "ermission denied"]);
    }
    assert!(place.is_empty("closed"));
}
