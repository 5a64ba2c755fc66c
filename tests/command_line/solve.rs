//! `solve`: answers with steps, and what is said when there is none.

use serde_json::Value;

use crate::{Place, plain};

const OVERHUNG: [&str; 7] = [
    "solve",
    "load.overhung",
    "drive.output_torque=4500 in-lbf",
    "chain.pitch_dia_small=5.98 in",
    "load.connection_factor=1",
    "load.location_factor=1",
    "load.service_factor=1.25",
];

#[test]
fn the_example_of_the_help_works() {
    let place = Place::new();
    let help = place.run(&["solve", "--help"]).done();
    for argument in &OVERHUNG[1..] {
        let (name, value) = argument.split_once('=').unwrap_or((argument, ""));
        assert!(help.contains(name) && help.contains(value), "the help no longer shows {argument}");
    }
    // By hand: 2 x 4500 lbf·in x 1.25 / 5.98 in = 1881 lbf, asked in pounds and answered in pounds.
    let said = plain(&place.run(&OVERHUNG).done());
    assert!(said.trim_end().ends_with("= 1880 lbf"), "{said}");
    assert!(said.starts_with("Given\n") && said.contains("\n1. "), "{said}");
    let si = plain(&place.run(&[&OVERHUNG[..], &["--units", "si"]].concat()).done());
    assert!(si.trim_end().ends_with("= 8370 N"), "{si}");

    let json: Value = serde_json::from_str(&place.run(&[&OVERHUNG[..], &["--json"]].concat()).done()).unwrap();
    assert_eq!(json["asked"]["quantity"], "load.overhung");
    assert_eq!((&json["asked"]["unit"], &json["asked"]["shown"]), (&"lbf".into(), &"1880 lbf".into()));
    approx::assert_relative_eq!(json["asked"]["value"].as_f64().unwrap(), 9000.0 * 1.25 / 5.98, max_relative = 1e-9);
    approx::assert_relative_eq!(json["asked"]["si"].as_f64().unwrap(), 8368.0, max_relative = 1e-3);
    assert_eq!(json["given"].as_array().unwrap().len(), 5);
    for field in ["method", "formula", "numbers", "result", "source"] {
        assert!(!json["steps"][0][field].as_str().unwrap().is_empty(), "{field}");
    }
}

#[test]
fn published_figures_come_out() {
    let place = Place::new();
    let solve = |arguments: &[&str]| plain(&place.run(&[&["solve"], arguments].concat()).done());
    for (arguments, answer) in [
        // Pitch of 25.4 mm, 17 teeth: p / sin(180°/17) = 138.23 mm.
        (&["chain.pitch_dia_small", "chain.pitch=25.4 mm", "chain.teeth_small=17"][..], "138.23 mm"),
        (&["drive.output_speed", "drive.motor_speed=1750 rpm", "drive.ratio=25"], "70.00 r/min"),
        (&["sag_share", "chain.sag=7/16\"", "chain.span=43 3/4 in"], "1.00 %"),
        (&["heat.rise", "heat.housing=180 °F", "heat.ambient=80 °F"], "100 °F"),
        // Half a litre in words that nobody uses is refused elsewhere; a comma is a decimal point here.
        (&["chain.sag_share", "chain.sag=12,5 mm", "chain.span=1000 mm"], "1.25 %"),
    ] {
        let said = solve(arguments);
        assert!(said.trim_end().ends_with(&format!("= {answer}")), "{arguments:?}: {said}");
    }
}

#[test]
fn the_end_of_a_name_means_the_nearest_step_before_what_is_asked() {
    let place = Place::new();
    let given = ["torque=4500 in-lbf", "pitch_dia_small=5.98 in", "connection_factor=1", "location_factor=1"];
    let solve = |arguments: &[&str]| place.run(&[&["solve", "load.overhung", "--json"], arguments].concat());
    // By hand: 2 x 4500 lbf·in x 1.25 / 5.98 in = 1881 lbf. The chain has a service factor too, farther away.
    let said: Value = serde_json::from_str(&solve(&[&given[..], &["service_factor=1.25"]].concat()).done()).unwrap();
    approx::assert_relative_eq!(said["asked"]["value"].as_f64().unwrap(), 9000.0 * 1.25 / 5.98, max_relative = 1e-9);
    let names: Vec<_> = said["given"].as_array().unwrap().iter().map(|row| row["quantity"].clone()).collect();
    assert!(
        names.contains(&"drive.output_torque".into()) && names.contains(&"load.service_factor".into()),
        "{names:?}"
    );
    solve(&["factor=1"]).refused(&[
        "\"factor\" may be",
        "load.connection_factor",
        "load.location_factor",
        "write it out",
    ]);
}

#[test]
fn what_is_missing_or_in_doubt_is_named() {
    let place = Place::new();
    let solve = |arguments: &[&str]| place.run(&[&["solve"], arguments].concat());
    solve(&[]).refused(&["which quantity", "solve --list"]);
    solve(&["load.overhung", "drive.output_torque=500 N·m"]).refused(&[
        "load.overhung does not follow",
        "by load.overhung/torque, give also",
        "chain.pitch_dia_small",
        "pitch diameter of the small sprocket",
        "load.service_factor",
    ]);
    solve(&["chain.sag_share", "chain.sag=11 mm", "chain.span=1000 mm", "chain.excess=5 mm"]).refused(&[
        "contradict each other",
        "chain.sag is given as",
        "chain.excess and chain.span make it",
        "+293.",
        "Leave the doubtful one out",
    ]);
    solve(&["load.overhng"]).refused(&["\"load.overhng\"", "did you mean load.overhung?"]);
    solve(&["load.overhung", "drive.output_torqe=5 N·m"]).refused(&["did you mean drive.output_torque?"]);
    solve(&["load.overhung", "drive.output_torque=5 mm"]).refused(&[
        "drive.output_torque",
        "a length",
        "a torque is wanted",
    ]);
    solve(&["load.overhung", "drive.output_torque=5"]).refused(&["drive.output_torque", "unit is missing", "N·m"]);
    solve(&["load.overhung", "drive.output_torque="]).refused(&["drive.output_torque", "Nothing is written"]);
    solve(&["load.overhung", "drive.output_torque=five"]).refused(&["five", "120 N·m"]);
    solve(&["load.overhung", "drive.output_torque"]).refused(&["name=value"]);
    solve(&["load.overhung", "load.overhung=5 N"]).refused(&["load.overhung is what you ask for", "leave it out"]);
    solve(&["chain.sag_share", "chain.sag=1 mm", "chain.sag=2 mm"]).refused(&["chain.sag is given twice"]);
    solve(&["load.overhung", "--by", "load.overhung/torqe"]).refused(&["no method", "load.overhung/torque"]);
    solve(&["load.overhung", "--by", "magic"]).refused(&["no method \"magic\"", "--list"]);
    solve(&["chain.sag_share", "chain.sag=1/0 in", "chain.span=1 m"]).refused(&["chain.sag"]);
    solve(&["chain.pitch_dia_small", "chain.pitch=25.4 mm", "chain.teeth_small=0"]).refused(&["no result", "= 0"]);
}

#[test]
fn the_list_names_quantities_and_methods() {
    let place = Place::new();
    let all = place.run(&["solve", "--list"]).done();
    assert!(all.lines().count() > 150);
    for word in ["load.overhung ", "by load.overhung/torque  from drive.output_torque", "one of: ", ", mm or in"] {
        assert!(all.contains(word), "{word}");
    }
    let some = place.run(&["solve", "--list", "SAG"]).done();
    assert!(some.lines().count() < 40 && some.contains("chain.sag_share"), "{some}");
    let power = place.run(&["solve", "--list", "drive.power"]).done();
    assert!(power.contains("drive.load_share  (makes machines; not asked, not solved)\n"), "{power}");
    assert!(power.contains("from drive.motor_torque, drive.motor_speed\n"), "what can be asked bears no mark: {power}");
    place.run(&["solve", "--list", "zzz"]).refused(&["\"zzz\"", "--list"]);
}
