//! `practise`, from a pipe and on a terminal.

use crate::{Place, plain};

const RISE: [&str; 5] = ["practise", "--item", "rise-over-ambient", "--count", "1"];

/// The right answer to the one question of [`RISE`], from its own steps.
fn answer(place: &Place) -> String {
    let said = plain(&place.run_with(&RISE, b"=\n").done());
    let answer = said.split_once("The answer is ").unwrap().1;
    answer.split_once(".\n").unwrap().0.to_owned()
}

fn session(place: &Place, input: &str) -> String {
    plain(&place.run_with(&RISE, input.as_bytes()).done())
}

#[test]
fn it_starts_with_safety_and_ends_with_a_summary() {
    let place = Place::new();
    let said = session(&place, "");
    assert!(said.contains("isolate and lock out") && said.contains("? hint"), "{said}");
    assert!(said.contains("1 of 1: Rise over ambient") && said.ends_with("nothing was answered\n"), "{said}");
    assert_eq!(session(&place, "q\n36 °C\n").matches("\n> ").count(), 1, "q stops");
}

#[test]
fn answers_are_judged_and_counted() {
    let place = Place::new();
    let answer = answer(&place);
    let degrees: f64 = answer.split_once(' ').unwrap().0.parse().unwrap();
    let said = session(&place, &format!("{} °C\n12 mm\n{degrees}\nabc\n\n?\n{answer}\n", degrees + 50.0));
    for part in [
        "Not right",
        "mm is the unit of a length",
        "The unit is missing",
        "“abc” cannot be read",
        "Which of the readings",
        "Right.\n",
        "  temperature rise and its limits 1 right, 1 wrong, 0 shown, 0 passed over",
    ] {
        assert!(said.contains(part), "{part:?}: {said}");
    }
    let near = |input: &str, says: &str| {
        let said = session(&place, input);
        assert!(said.contains(says), "{says:?}: {said}");
    };
    near("=\n", "0 right, 0 wrong, 1 shown, 0 passed over");
    near("-\n", "0 right, 0 wrong, 0 shown, 1 passed over");
    near("?\n?\n?\n?\n?\n", "There is no further hint");
    assert!(!session(&place, "-\n").contains("The answer is"), "- goes on, = shows");
    // The same rise in the other units is as right.
    near(&format!("{} °F\n", degrees * 1.8), "1 right, 0 wrong");
}

#[test]
fn a_session_comes_again_and_another_seed_is_another() {
    let place = Place::new();
    let run = |seed: &str, units: &str| {
        plain(
            &place.run_with(&["practise", "--seed", seed, "--units", units, "--count", "6"], &b"=\n".repeat(40)).done(),
        )
    };
    assert_eq!(run("7", "us"), run("7", "us"));
    assert_ne!(run("7", "us"), run("8", "us"));
    assert!(run("7", "si").contains("\n6 of 6: "));
}

#[test]
fn whatever_is_typed_it_goes_on() {
    let place = Place::new();
    let mut long = vec![b'7'; 10_000];
    long.push(b'\n');
    let odd: [&[u8]; 9] = [
        b"\x01\x02\x1b[2J\n",
        b"\xff\xfe\x80\n",
        &long,
        "\u{202e}36 °C\n".as_bytes(),
        "１２ °C\n".as_bytes(),
        b"\0\0\0\n",
        b"1e400 \xc2\xb0C\n",
        b"=1+1\n",
        b"\r\n\r\n",
    ];
    let ran = place.run_with(&RISE, &[&odd.concat(), answer(&place).as_bytes(), b"\n"].concat());
    assert!(!ran.out.contains(['\x1b', '\0', '\x01', '\u{202e}']), "nothing of it reaches the terminal");
    let said = plain(&ran.done());
    assert!(said.contains("Right.\n") && said.contains(" 1 right,"), "{said}");
    assert!(said.lines().all(|line| line.chars().count() < 500));
}

#[test]
fn unknown_names_are_answered_with_what_there_is() {
    let place = Place::new();
    place.run(&["practise", "--topic", "chian"]).refused(&["no topic \"chian\"", "chain"]);
    place.run(&["practise", "--item", "rise-over-ambiant"]).refused(&["did you mean \"rise-over-ambient\"?"]);
    let ran = place.run(&["practise", "--item", "zz"]);
    assert!(ran.err.len() < 600, "a list that can be read: {}", ran.err);
    ran.refused(&["no item \"zz\"", "more"]);
    place.run(&["practise", "--family", "mixr"]).refused(&["did you mean \"mixer\"?"]);
    let nothing = ["practise", "--topic", "chain", "--item", "rise-over-ambient"];
    place.run(&nothing).refused(&["no item fits", "leave out"]);
}

/// On a keyboard the answer is not written a second time.
#[cfg(target_os = "linux")]
#[test]
fn on_a_terminal_nothing_is_echoed_twice() {
    use std::io::Write as _;
    use std::process::{Command, Stdio};
    let place = Place::new();
    let command = format!("'{}' {}", crate::PROGRAM, RISE.join(" "));
    let child = Command::new("script")
        .args(["-qec", &command, "/dev/null"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn();
    let Ok(mut child) = child else {
        println!("skipped: there is no `script` here to make a terminal with");
        return;
    };
    let answer = answer(&place);
    child.stdin.take().unwrap().write_all(format!("{answer}\n").as_bytes()).unwrap();
    let output = child.wait_with_output().unwrap();
    let said = plain(&String::from_utf8(output.stdout).unwrap());
    assert!(output.status.success() && said.contains("Right."), "{said}");
    // At most the terminal's own echo of what was typed.
    let typed = said.lines().filter(|line| line.trim_end().trim_start_matches("> ") == answer).count();
    assert!(typed <= 1, "{said}");
}
