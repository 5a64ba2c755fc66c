//! What holds for every figure, whatever it shows.

mod follow;
mod running;

use super::geometry::{Area, pt};
use super::*;
use quick_xml::events::Event;

fn some(words: &str) -> Option<String> {
    Some(words.to_owned())
}

pub(super) fn drive() -> DriveSide {
    DriveSide {
        nominal: false,
        id: "drive".into(),
        driver_teeth: 17,
        driven_teeth: 35,
        pitch: 25.4,
        centres: 812.8,
        incline: 0.0,
        sag: 33.0,
        turning: Turning::Clockwise,
        straightedge: true,
        name_strands: true,
        driver_label: some("17 teeth"),
        driven_label: some("35 teeth"),
        centres_label: some("centres 813 mm"),
        span_label: some("span 810 mm"),
        sag_label: some("sag 33 mm"),
        incline_label: None,
    }
}

fn plan() -> FootPlan {
    let foot =
        |carries, gap: Option<&str>, reading: &str| Foot { carries, gap: gap.map(Into::into), reading: some(reading) };
    FootPlan {
        id: "plan".into(),
        length: 400.0,
        width: 300.0,
        feet: [
            foot(true, None, "0.00 mm"),
            foot(true, None, "+0.12 mm"),
            foot(false, Some("0.31 mm"), "\u{2212}0.08 mm"),
            foot(true, None, "+0.11 mm"),
        ],
        weight: Some((170.0, 130.0)),
        diagonals: true,
        length_label: some("400 mm"),
        width_label: some("300 mm"),
    }
}

fn corners() -> FootCorners {
    FootCorners {
        id: "corners".into(),
        name: "foot 2".into(),
        length: 90.0,
        width: 70.0,
        gaps: [0.02, 0.25, 0.27, 0.04],
        gap_labels: ["0.02 mm", "0.25 mm", "0.27 mm", "0.04 mm"].map(some),
        length_label: some("90 mm"),
        width_label: some("70 mm"),
        side_view: true,
    }
}

fn shaft() -> ShaftLoad {
    ShaftLoad {
        nominal: false,
        id: "shaft".into(),
        bearings: 180.0,
        overhang: 95.0,
        load: -6400.0,
        near: 9777.8,
        far: -3377.8,
        bearings_label: some("180 mm"),
        overhang_label: some("95 mm"),
        load_label: some("load 6.40 kN"),
        near_label: some("near bearing 9.78 kN"),
        far_label: some("far bearing 3.38 kN"),
        moment_label: some("608 N m"),
        reactions: true,
        moment: true,
    }
}

fn warm() -> WarmUp {
    let heat = |minutes: f64| 22.0 + 41.0 * (1.0 - libm::exp(-minutes / 38.0));
    let reading = |time: f64| Reading { time, temperature: heat(time), label: Some(format!("{:.0} °C", heat(time))) };
    let level = |temperature, name: &str| Level { temperature, name: name.into() };
    WarmUp {
        id: "warm".into(),
        title: "Housing temperature after the start".into(),
        time_name: "Time, min".into(),
        time_steps: Steps::Sixty,
        temperature_name: "Temperature, °C".into(),
        curve: (0..=60).map(|i| (f64::from(i) * 3.0, heat(f64::from(i) * 3.0))).collect(),
        readings: [0.0, 30.0, 60.0, 90.0].map(reading).into(),
        ambient: Some(level(22.0, "surroundings 22 °C")),
        settled: Some(level(63.0, "settles at 63 °C")),
        limits: vec![level(78.0, "56 °C above surroundings"), level(93.0, "stop at 93 °C")],
    }
}

fn shims() -> ShimPack {
    let leaf = |thickness: f64| Leaf { thickness, label: Some(format!("{thickness:.2} mm")) };
    ShimPack {
        id: "shims".into(),
        gap: 0.87,
        leaves: [0.5, 0.25, 0.1].map(leaf).into(),
        gap_label: some("gap 0.87 mm"),
        pack_label: some("0.85 mm"),
    }
}

fn straightedge() -> Straightedge {
    Straightedge {
        id: "edge".into(),
        gaps: [0.0, 0.0, 3.2, 4.1],
        gap_labels: ["0.00 mm", "0.00 mm", "3.20 mm", "4.10 mm"].map(some),
        reference_label: some("282.5 mm"),
        other_label: some("205.0 mm"),
        centres_label: some("1312 mm"),
        offset_label: some("3.65 mm"),
        twist_label: some("0.25°"),
    }
}

fn sweep(name: &str, readings: [&str; 4]) -> Sweep {
    Sweep { name: name.into(), readings: readings.map(some) }
}

fn dials() -> Dials {
    Dials {
        id: "dials".into(),
        sweeps: vec![
            sweep("Reducer hub, rim", ["0", "+0.32 mm", "\u{2212}0.18 mm", "\u{2212}0.50 mm"]),
            sweep("Reducer hub, face", ["0", "+0.06 mm", "+0.21 mm", "+0.15 mm"]),
            sweep("Motor hub, rim", ["0", "\u{2212}0.44 mm", "+0.12 mm", "+0.56 mm"]),
        ],
        face: true,
        reverse: true,
        circle_label: some("112 mm"),
        apart_label: some("140 mm"),
        front_label: some("196 mm"),
        rear_label: some("402 mm"),
        trial_label: some("\u{2212}0.12 mm"),
    }
}

fn bolts() -> BoltPattern {
    BoltPattern {
        id: "bolts".into(),
        bolts: 8,
        order: vec![1, 5, 3, 7, 2, 6, 4, 8],
        bolts_label: some("8"),
        place_label: some("3"),
        bolt_label: some("3"),
    }
}

fn key() -> KeySection {
    KeySection {
        id: "key".into(),
        shaft: 70.0,
        width: 20.0,
        height: 12.0,
        shaft_label: some("70 mm"),
        width_label: some("key 19.70 mm"),
        keyway_label: some("keyway 20.02 mm"),
        height_label: some("12.0 mm"),
        length_label: some("85 mm"),
    }
}

type Drawn = Result<Figure, FigureError>;

fn specimens() -> Vec<(&'static str, Drawn)> {
    let flat_drive = DriveSide { driven_teeth: 17, centres: 80.0 * 25.4, sag: 60.0, ..drive() };
    let steep = DriveSide { incline: 90.0, incline_label: some("90°"), ..drive() };
    let lower = DriveSide { turning: Turning::Anticlockwise, ..drive() };
    let slope = DriveSide { incline: 45.0, incline_label: some("45°"), ..drive() };
    let slope_lower = DriveSide { turning: Turning::Anticlockwise, incline: 30.0, ..drive() };
    let huge = DriveSide { driven_teeth: 120, centres: 1800.0, sag: 4.0, ..drive() };
    let coarse =
        DriveSide { driver_teeth: 11, driven_teeth: 13, pitch: 38.1, centres: 500.0, incline: 60.0, ..drive() };
    let slack_none = DriveSide { sag: 0.0, sag_label: None, span_label: None, ..drive() };
    let thick =
        ShimPack { gap: 0.2, pack_label: some("0.85 mm (too thick)"), gap_label: some("gap 0.20 mm"), ..shims() };
    let thin_leaf = |thickness: f64| Leaf { thickness, label: Some(format!("{thickness:.2} mm")) };
    let thin = ShimPack {
        gap: 1.6,
        leaves: [1.0, 0.05, 0.05, 0.05, 0.4].map(thin_leaf).into(),
        gap_label: some("gap 1.60 mm"),
        pack_label: some("1.55 mm"),
        ..shims()
    };
    let imperial = WarmUp {
        time_name: "Time, h".into(),
        time_steps: Steps::Decimal,
        temperature_name: "Temperature, °F".into(),
        settled: None,
        readings: [(0.0, 70.0), (0.5, 113.0), (1.0, 131.0), (1.5, 139.0)]
            .map(|(time, temperature)| Reading { time, temperature, label: Some(format!("{temperature} °F")) })
            .into(),
        curve: vec![],
        ambient: Some(Level { temperature: 70.0, name: "surroundings 70 °F".into() }),
        limits: vec![Level { temperature: 170.0, name: "100 °F above surroundings".into() }],
        ..warm()
    };
    let mut specimens = vec![
        ("drive", drive().draw()),
        ("drive_long", flat_drive.draw()),
        ("drive_upright", steep.draw()),
        ("drive_lower", lower.draw()),
        ("drive_slope", slope.draw()),
        ("drive_slope_lower", slope_lower.draw()),
        ("drive_huge", huge.draw()),
        ("drive_taut", slack_none.draw()),
        ("drive_coarse", coarse.draw()),
        ("plan", plan().draw()),
        ("plan_long", FootPlan { length: 900.0, weight: None, diagonals: false, ..plan() }.draw()),
        ("corners", corners().draw()),
        ("corners_across", FootCorners { length: 40.0, width: 90.0, gaps: [0.0, 0.02, 0.2, 0.18], ..corners() }.draw()),
        ("shaft", shaft().draw()),
        ("shaft_up", ShaftLoad { load: 3000.0, near: -4000.0, far: 1000.0, overhang: 60.0, ..shaft() }.draw()),
        ("shaft_short", ShaftLoad { overhang: 12.0, reactions: false, moment: false, ..shaft() }.draw()),
        ("warm", warm().draw()),
        ("warm_us", imperial.draw()),
        ("shims", shims().draw()),
        ("shims_thick", thick.draw()),
        ("shims_thin", thin.draw()),
        ("edge", straightedge().draw()),
        ("edge_flat", Straightedge { gaps: [0.0; 4], ..straightedge() }.draw()),
        (
            "edge_us",
            Straightedge {
                gaps: [0.0, 0.125, 0.098, 0.0],
                gap_labels: ["0.000 in", "0.125 in", "0.098 in", "0.000 in"].map(some),
                ..straightedge()
            }
            .draw(),
        ),
        ("dials", dials().draw()),
        ("dials_one", Dials { sweeps: dials().sweeps[..1].into(), face: false, reverse: false, ..dials() }.draw()),
        (
            "dials_two",
            Dials { sweeps: dials().sweeps[..2].into(), reverse: false, apart_label: None, ..dials() }.draw(),
        ),
        ("bolts", bolts().draw()),
        ("bolts_plain", BoltPattern { order: vec![], bolts: 12, bolt_label: None, ..bolts() }.draw()),
        ("bolts_many", BoltPattern { bolts: 16, order: (1..=16).collect(), ..bolts() }.draw()),
        ("bolts_few", BoltPattern { bolts: 4, order: vec![1, 3, 2, 4], ..bolts() }.draw()),
        ("key", key().draw()),
        ("key_square", KeySection { height: 20.0, keyway_label: None, length_label: None, ..key() }.draw()),
        (
            "key_asked",
            KeySection { width_label: some("?"), height_label: some("?"), keyway_label: None, ..key() }.draw(),
        ),
    ];
    specimens.extend(follow::specimens());
    specimens.extend(running::specimens());
    specimens.extend(faces::tests::specimens());
    specimens
}

/// The sheet, and the place each line of words takes on it by the kit's own (generous) measure.
fn sheet(svg: &str) -> (Area, Vec<Area>) {
    let (mut view, mut labels) = (Area::about(pt(0.0, 0.0), 0.0, 0.0), Vec::new());
    let (mut at, mut side) = (None, String::new());
    let mut reader = quick_xml::Reader::from_str(svg);
    loop {
        match reader.read_event().unwrap() {
            Event::Start(tag) | Event::Empty(tag) => {
                assert!(tag.attributes().all(|attribute| attribute.is_ok()), "bad attribute in {tag:?}");
                let value = |name: &str| {
                    String::from_utf8(tag.try_get_attribute(name).unwrap().unwrap().value.into_owned()).unwrap()
                };
                match tag.name().as_ref() {
                    b"svg" => {
                        let part: Vec<f64> = value("viewBox").split(' ').map(|part| part.parse().unwrap()).collect();
                        view = Area { low: pt(part[0], part[1]), high: pt(part[0] + part[2], part[1] + part[3]) };
                    }
                    b"text" => {
                        at = Some(pt(value("x").parse().unwrap(), value("y").parse().unwrap()));
                        side = value("text-anchor");
                    }
                    _ => {}
                }
            }
            Event::Text(words) => {
                if let Some(at) = at {
                    let wide = label::width(&words.decode().unwrap());
                    let left = match side.as_str() {
                        "start" => 0.0,
                        "middle" => -0.5 * wide,
                        _ => -wide,
                    };
                    let low = at + pt(left, -0.75 * label::SIZE);
                    labels.push(Area { low, high: low + pt(wide, 0.95 * label::SIZE) });
                }
            }
            Event::End(_) => at = None,
            Event::Eof => break,
            _ => {}
        }
    }
    (view, labels)
}

#[test]
fn every_figure_is_well_formed_and_plain_numbers() {
    for (name, figure) in specimens() {
        let figure = figure.unwrap_or_else(|error| panic!("{name}: {error}"));
        let (view, labels) = sheet(&figure.svg);
        assert!(!figure.svg.contains("NaN") && !figure.svg.contains("inf") && !figure.svg.contains('\n'), "{name}");
        assert!(view.width() <= 530.0, "{name} is {} wide: letters too small on a phone", view.width());
        assert!(view.height() <= 560.0, "{name} is {} high", view.height());
        for (i, label) in labels.iter().enumerate() {
            assert_eq!(view.joined(*label), view, "{name}: label {i} leaves the sheet");
            for (j, other) in labels.iter().enumerate().skip(i + 1) {
                assert!(!label.overlaps(*other), "{name}: labels {i} and {j} overlap");
            }
        }
        assert!(!figure.table.is_empty() && figure.description.ends_with('.'), "{name}");
        assert!(sheet(&figure.standalone()).1.len() == sheet(&figure.svg).1.len());
    }
}

#[test]
fn every_figure_is_the_same_bytes_twice() {
    assert_eq!(specimens(), specimens());
}

#[test]
fn shown_values_are_in_the_drawing_and_the_table() {
    let figure = shaft().draw().unwrap();
    assert_eq!(figure.table.len(), 6);
    for (name, value) in &figure.table {
        assert!(figure.svg.contains(&format!(">{value}</text>")), "{name}: {value}");
    }
    let hidden = ShaftLoad { near_label: None, reactions: false, ..shaft() }.draw().unwrap();
    assert!(!hidden.svg.contains("9.78") && !hidden.svg.contains("3.38"));
    assert!(!hidden.table.iter().any(|(name, _)| name.contains("reaction")));
}

#[test]
fn values_that_are_not_told_are_nowhere() {
    let edge = Straightedge { offset_label: None, twist_label: some("?"), ..straightedge() }.draw().unwrap();
    assert!(!edge.svg.contains("3.65") && edge.svg.contains("Twist: ?"));
    let mut swept = dials();
    swept.sweeps[0].readings[3] = some("?");
    let swept = swept.draw().unwrap();
    assert!(
        !swept.svg.contains("0.50 mm") && swept.table.contains(&("Reducer hub, rim, 9 o'clock".into(), "?".into()))
    );
    let plain = BoltPattern { order: vec![], bolt_label: some("?"), ..bolts() }.draw().unwrap();
    assert!(plain.svg.contains("Place 3 in the order: bolt ?") && !plain.svg.contains("1st"));
    let key = KeySection { width_label: None, ..key() }.draw().unwrap();
    assert!(!key.svg.contains("19.70") && key.svg.contains("keyway 20.02 mm"));
}

#[test]
fn odd_input_is_refused_or_drawn_but_never_panics() {
    let odd = [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 0.0, -0.0, -1.0, 1e-300, 1e300, 1e-6, 1e6];
    let mut refused = 0;
    for value in odd {
        let mut drawn: Vec<Drawn> = Vec::new();
        for part in 0..4 {
            let mut d = drive();
            *[&mut d.pitch, &mut d.centres, &mut d.incline, &mut d.sag][part] = value;
            drawn.push(d.draw());
            let mut c = corners();
            c.gaps[part] = value;
            drawn.push(c.draw());
        }
        drawn.push(FootPlan { length: value, ..plan() }.draw());
        drawn.push(FootPlan { width: value, ..plan() }.draw());
        drawn.push(FootPlan { weight: Some((value, value)), ..plan() }.draw());
        drawn.push(FootCorners { length: value, ..corners() }.draw());
        for part in 0..5 {
            let mut s = shaft();
            *[&mut s.bearings, &mut s.overhang, &mut s.load, &mut s.near, &mut s.far][part] = value;
            drawn.push(s.draw());
        }
        drawn.push(WarmUp { curve: vec![(0.0, 1.0), (value, value)], ..warm() }.draw());
        drawn.push(WarmUp { curve: vec![(value, value)], readings: vec![], limits: vec![], ..warm() }.draw());
        drawn.push(ShimPack { gap: value, ..shims() }.draw());
        drawn.push(ShimPack { leaves: vec![Leaf { thickness: value, label: None }], ..shims() }.draw());
        for part in 0..4 {
            let mut e = straightedge();
            e.gaps[part] = value;
            drawn.push(e.draw());
        }
        drawn.push(KeySection { shaft: value, ..key() }.draw());
        drawn.push(KeySection { width: value, ..key() }.draw());
        drawn.push(KeySection { height: value, ..key() }.draw());
        drawn.extend(follow::odd(value));
        drawn.extend(running::odd(value));
        for figure in drawn {
            match figure {
                Ok(figure) => {
                    assert!(!figure.svg.contains("NaN") && !figure.svg.contains("inf"));
                    sheet(&figure.svg);
                }
                Err(error) => {
                    assert!(error.to_string().starts_with("cannot draw"));
                    refused += 1;
                }
            }
        }
    }
    assert!(refused > 40, "{refused}");
    assert!(DriveSide { driver_teeth: 0, ..drive() }.draw().is_err());
    assert!(Dials { sweeps: vec![], ..dials() }.draw().is_err());
    assert!(BoltPattern { bolts: 2, order: vec![], ..bolts() }.draw().is_err());
    assert!(BoltPattern { order: vec![9], ..bolts() }.draw().is_err());
    assert!(WarmUp { curve: vec![], readings: vec![], ..warm() }.draw().is_err());
}

#[test]
fn labels_are_escaped() {
    let figure = DriveSide { id: "a\"b c".into(), sag_label: some("<b>5 & 6</b>"), ..drive() }.draw().unwrap();
    assert!(figure.svg.contains("&lt;b&gt;5 &amp; 6&lt;/b&gt;") && figure.svg.contains(r#"id="fig-a-b-c-title""#));
    sheet(&figure.svg);
}

#[test]
fn magnification_is_round_and_enough() {
    assert_eq!(magnification(3.0, 14.0), 5.0);
    assert_eq!(magnification(0.1, 14.0), 200.0);
    assert_eq!(magnification(20.0, 14.0), 1.0);
    assert_eq!(magnification(0.0, 14.0), 1.0);
}

/// The texts that stand after `before` in the sources below `folder`, up to the quotation mark.
fn named_in(folder: &std::path::Path, before: &[&str], out: &mut std::collections::BTreeSet<String>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            named_in(&path, before, out);
        } else if !path.ends_with("tests.rs") {
            let text = std::fs::read_to_string(&path).unwrap();
            let names = before.iter().flat_map(|before| text.split(before).skip(1));
            out.extend(names.filter_map(|rest| Some(rest.split_once('"')?.0.to_owned())));
        }
    }
}

#[test]
fn every_input_that_can_be_wrong_has_a_name_to_translate() {
    let mut named = std::collections::BTreeSet::new();
    let here = std::path::Path::new(env!("CARGO_MANIFEST_DIR"));
    for folder in ["figures", "portray"] {
        named_in(&here.join(folder), &["within(\"", "positive(\"", "input: \""], &mut named);
    }
    assert!(named.len() > 40, "{named:?}");
    for name in &named {
        assert!(INPUTS.iter().any(|input| input.english == name), "{name} is not among the inputs");
    }
}
