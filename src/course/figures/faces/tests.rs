//! Every face, with hands and edges in awkward places.

use drivecourse_machine::System;
use drivecourse_machine::face::{DialHands, VibrationRange};

use super::super::{Figure, FigureError};
use super::*;

fn dial(system: System, shown: f64) -> DialFace {
    let (division, turn) = if system == System::Si { ("0.01 mm", "1 mm") } else { ("0.001 in", "0.1 in") };
    DialFace {
        id: "dial".into(),
        hands: DialHands::at(system, shown),
        division: division.into(),
        turn: turn.into(),
        reading: None,
    }
}

fn scale(edge: f64, inch: bool) -> ScaleFace {
    ScaleFace { id: "scale".into(), name: "sag of the slack strand".into(), edge, inch, reading: None }
}

fn glass(level: f64, inch: bool) -> SightGlassFace {
    let each = if inch { 0.79 } else { 1.0 };
    let marks = vec![("low mark 124 mm".into(), 124.0 * each), ("high mark 147 mm".into(), 147.0 * each)];
    SightGlassFace { id: "glass".into(), level, inch, marks, reading: None }
}

fn warm(degrees: f64, low: f64) -> ThermometerFace {
    ThermometerFace {
        id: "warm".into(),
        degrees,
        range: (low, low + 100.0),
        unit: "°C".into(),
        inner_range: (low * 1.8 + 32.0, low * 1.8 + 212.0),
        inner_unit: "°F".into(),
        reading: None,
    }
}

fn meter(shown: f64) -> VibrationFace {
    let range = VibrationRange::of(shown);
    VibrationFace {
        id: "meter".into(),
        share: shown / range.full,
        range,
        range_label: format!("0 to {} mm/s", range.full),
        reading: None,
    }
}

fn leaves(marks: &[&str]) -> FeelerFace {
    FeelerFace {
        id: "leaves".into(),
        leaves: marks.iter().map(|mark| (*mark).to_owned()).collect(),
        refused: "0.05 mm".into(),
        reading: None,
    }
}

/// Every face, for the tests that hold for all figures.
pub(in super::super) fn specimens() -> Vec<(&'static str, Result<Figure, FigureError>)> {
    let told = |words: &str| Some(words.to_owned());
    let fahrenheit = ThermometerFace {
        unit: "°F".into(),
        inner_range: (100.0 / 1.8 - 32.0 / 1.8, 200.0 / 1.8 - 32.0 / 1.8),
        inner_unit: "°C".into(),
        ..warm(149.0, 100.0)
    };
    vec![
        ("dial", dial(System::Si, 1.43).draw()),
        ("dial_out", dial(System::Si, -0.37).draw()),
        ("dial_inch", dial(System::Us, 0.017).draw()),
        ("dial_nought", dial(System::Us, 0.0).draw()),
        ("dial_told", DialFace { reading: told("0.43 mm"), ..dial(System::Si, 0.43) }.draw()),
        ("scale", scale(35.0, false).draw()),
        ("scale_far", scale(1069.0, false).draw()),
        ("scale_nought", scale(0.0, false).draw()),
        ("scale_inch", scale(75.0, true).draw()),
        ("scale_inch_low", scale(18.0, true).draw()),
        ("scale_told", ScaleFace { reading: told("17.5 mm"), ..scale(35.0, false) }.draw()),
        ("glass", glass(137.0, false).draw()),
        ("glass_low", glass(98.0, false).draw()),
        ("glass_high", glass(173.0, false).draw()),
        ("glass_inch", glass(109.0, true).draw()),
        ("glass_told", SightGlassFace { reading: told("137 mm"), ..glass(137.0, false) }.draw()),
        ("thermometer", warm(63.0, 0.0).draw()),
        ("thermometer_cold", warm(-20.0, -50.0).draw()),
        ("thermometer_hot", warm(141.0, 100.0).draw()),
        ("thermometer_us", fahrenheit.draw()),
        ("meter", meter(4.5).draw()),
        ("meter_threes", VibrationFace { reading: told("2.41 mm/s"), ..meter(2.41) }.draw()),
        ("leaves", leaves(&["0.30 mm", "0.15 mm", "0.05 mm"]).draw()),
        ("leaf_none", leaves(&[]).draw()),
        ("leaf", FeelerFace { reading: told("0.20 mm"), ..leaves(&["0.20 mm"]) }.draw()),
    ]
}

#[test]
fn words_say_where_the_hand_stands_and_not_what_it_reads() {
    let figure = dial(System::Si, 1.43).draw().unwrap();
    assert!(
        figure
            .description
            .contains("3 divisions past 40 on the outer row, 7 divisions past \u{2212}50 on the inner row")
    );
    assert!(figure.description.contains("between 1 and 2"), "{}", figure.description);
    let figure = dial(System::Si, -0.37).draw().unwrap();
    assert!(
        figure
            .description
            .contains("3 divisions past 60 on the outer row, 7 divisions past \u{2212}30 on the inner row")
    );
    assert!(figure.description.contains("between 0 and \u{2212}1"), "{}", figure.description);
    let figure = scale(75.0, true).draw().unwrap();
    assert!(
        figure.description.ends_with("The edge stands 3 divisions past the 8 after 1 in."),
        "{}",
        figure.description
    );
    let figure = scale(35.0, false).draw().unwrap();
    assert!(figure.description.ends_with("The edge stands 15 divisions past 10."), "{}", figure.description);
    assert!(glass(137.0, false).draw().unwrap().description.contains("stands 7 divisions past 130;"));
    assert!(
        warm(63.0, 0.0).draw().unwrap().description.ends_with("The hand stands 3 divisions past 60 on the outer row.")
    );
    let figure = meter(4.5).draw().unwrap();
    assert!(figure.description.contains("2 and a half divisions past 4 on the upper row"), "{}", figure.description);
    for (shown, figure) in [
        ("1.43", dial(System::Si, 1.43).draw()),
        ("17.5", scale(35.0, false).draw()),
        ("137", glass(137.0, false).draw()),
        ("63", warm(63.0, 0.0).draw()),
        ("4.5", meter(4.5).draw()),
        ("0.50", leaves(&["0.30 mm", "0.15 mm", "0.05 mm"]).draw()),
    ] {
        let figure = figure.unwrap();
        let words = figure.table.iter().map(|(name, value)| format!("{name} {value} ")).collect::<String>();
        for text in [&figure.svg[..figure.svg.find("</desc>").unwrap()], &figure.description, &words] {
            assert!(
                !text.split([' ', ';', ',', '>']).any(|word| word.trim_end_matches('.') == shown),
                "{shown} is told: {text}"
            );
        }
    }
}

#[test]
fn a_told_reading_is_in_the_picture_and_the_table() {
    let figure = DialFace { reading: Some("0.43 mm".into()), ..dial(System::Si, 0.43) }.draw().unwrap();
    assert!(figure.svg.contains("reading 0.43 mm"));
    assert_eq!(figure.table.last().unwrap(), &("Reading".to_owned(), "0.43 mm".to_owned()));
}

#[test]
fn what_no_face_can_show_is_refused() {
    for value in [f64::NAN, f64::INFINITY, -1.0, 1e300] {
        assert!(scale(value, false).draw().is_err());
        assert!(glass(value, true).draw().is_err());
        assert!(warm(value, 0.0).draw().is_err());
        assert!(VibrationFace { share: value, ..meter(1.0) }.draw().is_err());
        assert!(
            DialFace { hands: DialHands { out: false, turns: 0, divisions: value }, ..dial(System::Si, 0.0) }
                .draw()
                .is_err()
        );
    }
    assert!(dial(System::Si, 4.2).draw().is_err(), "more turns than the small hand counts");
    let closed = leaves(&[]).draw().unwrap();
    assert!(closed.description.contains("Not even the thinnest leaf goes in; one of 0.05 mm does not."));
    assert!(leaves(&["0.05 mm"; 11]).draw().is_err());
    assert!(SightGlassFace { marks: vec![("mark".into(), f64::NAN)], ..glass(20.0, false) }.draw().is_err());
}

#[test]
fn hands_and_edges_stand_where_the_value_says() {
    // Half a turn of the long hand points straight down, a quarter to the right.
    let tip = |svg: &str| {
        let hand = svg.rsplit_once(r#"<polygon points=""#).unwrap().1;
        let (x, y) = hand.split_once(' ').unwrap().0.split_once(',').unwrap();
        (x.parse::<f64>().unwrap(), y.parse::<f64>().unwrap())
    };
    assert_eq!(tip(&dial(System::Si, 0.25).draw().unwrap().svg), (169.0, 0.0));
    assert_eq!(tip(&dial(System::Si, -0.25).draw().unwrap().svg), (-169.0, 0.0));
    assert_eq!(tip(&dial(System::Si, 1.5).draw().unwrap().svg), (0.0, 169.0));
    assert_eq!(tip(&warm(50.0, 0.0).draw().unwrap().svg), (0.0, -169.0));
    assert_eq!(tip(&meter(5.0).draw().unwrap().svg), (0.0, -211.0));
}
