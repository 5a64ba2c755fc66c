//! `demo`.

use crate::{Place, tree};

#[test]
fn it_does_the_job_the_same_each_time() {
    let place = Place::new();
    let said = place.run(&["demo"]).done();
    assert!(said.lines().count() < 20, "{said}");
    let named: Vec<_> = said.split_whitespace().filter(|word| word.starts_with("drivecourse-demo/")).collect();
    assert!(named.len() >= 6, "{said}");
    for path in named {
        assert!(place.path(path).exists(), "{path} is not there");
    }
    let first = tree(&place.path("drivecourse-demo"));
    assert!(first.len() > 40);
    place.run(&["demo", "--out", "again"]).done();
    assert!(first == tree(&place.path("again")), "the same bytes in another folder");
    place.write("drivecourse-demo/exam/papers/stale.html", "stale");
    place.write("drivecourse-demo/course/index.html", "stale");
    place.run(&["demo"]).done();
    assert!(first == tree(&place.path("drivecourse-demo")), "an earlier demonstration is replaced");
}

#[test]
fn foreign_folders_are_left_alone() {
    let place = Place::new();
    place.write("mine/notes.txt", "keep");
    place.write("other/exam/exam.json", "keep");
    place.write("file", "keep");
    let before = tree(&place.path("."));
    for folder in ["mine", "other", ".", "file", "file/inside"] {
        place.run(&["demo", "--out", folder]).refused(&[folder, "--out"]);
    }
    assert!(before == tree(&place.path(".")));
    std::fs::create_dir(place.path("empty")).unwrap();
    assert!(place.run(&["demo", "--out", "empty"]).done().contains("empty/course/index.html"));
}
