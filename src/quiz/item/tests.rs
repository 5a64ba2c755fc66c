use super::*;

const GOOD: &str = r#"
[[item]]
id = "twist"
topic = "mount"
skill = "soft-foot"
title = "Twist of a base"
text = "The {machine} stands on four pads."
[[item.part]]
text = "What is the twist?"
ask = "mount.twist"
from = ["mount.height_1", "mount.height_2", "mount.height_3", "mount.height_4"]
[[item.part]]
text = "In which order?"
order = ["lock out", "try the start", "measure"]
"#;

#[test]
fn a_good_file_is_read() {
    let items = read_items(GOOD).unwrap();
    assert_eq!(items[0].parts.len(), 2);
    assert_eq!(items[0].parts[0].marks, 1);
}

#[test]
fn problems_name_their_place() {
    for (from, to, line, what) in [
        ("mount.twist\"", "mount.twits\"", 10, "no quantity"),
        ("{machine}", "{engine}", 7, "stands for nothing"),
        ("topic = \"mount\"", "topic = \"mound\"", 4, "no topic"),
        ("id = \"twist\"", "id = \"twist twice\"", 3, "letters"),
        ("order = [\"lock out\", ", "order = [", 14, "between 3 and 12"),
        ("\"try the start\", ", "\n  \"try the start\",\n  \" Lock  Out\",\n  ", 16, "the same as step 1"),
        (
            "order = [\"lock out\", \"try the start\", \"measure\"]",
            "pick = [\n\"no\",\n\"yes\",\n\"Yes \"]\nright = 1",
            17,
            "the same as statement 2",
        ),
        ("order = ", "hint = ", 14, "Nothing here is called"),
        (
            "[[item.part]]",
            "when = [{ quantity = \"chain.sag_share\", at_most = 1.5 }]\n[[item.part]]",
            8,
            "The unit is missing: this is a share in %.",
        ),
    ] {
        let text = GOOD.replacen(from, to, 1);
        let problems = read_items(&text).unwrap_err();
        assert_eq!(problems[0].line_column(&text).map(|(line, _)| line), Some(line), "{from} -> {to}: {problems:?}");
        assert!(problems[0].what.contains(what), "{problems:?}");
    }
}

#[test]
fn fill_replaces_what_it_knows() {
    assert_eq!(fill("{a} and {b} {", &mut |name| (name == "a").then(|| "1".into())), "1 and {b} {");
}
