//! The spectrum of a machine, and its reading on the bar of severity zones.

use drivecourse_machine::Registry;

use super::{Board, PortrayError};
use crate::figures::{Figure, Spectrum, Stem, ZoneBar};
use drivecourse_machine::language::Message;
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    MOTOR = "vibrate-line-motor", "motor";
    MOTOR_ROW = "vibrate-line-motor-row", "Motor shaft, once a turn";
    TWICE = "vibrate-line-twice", "2 × motor";
    TWICE_ROW = "vibrate-line-twice-row", "Motor shaft, twice a turn";
    OUTPUT = "vibrate-line-output", "output shaft";
    OUTPUT_ROW = "vibrate-line-output-row", "Output shaft, once a turn";
    CHAIN = "vibrate-line-chain", "chain";
    CHAIN_ROW = "vibrate-line-chain-row", "Chain, rollers seating";
    MESH = "vibrate-line-mesh", "gear mesh";
    MESH_ROW = "vibrate-line-mesh-row", "Gear mesh of the first stage";
    BEARING = "vibrate-line-bearing", "bearing";
    BEARING_ROW = "vibrate-line-bearing-row", "Outer ring of the output shaft's bearing";
    STRONGEST = "vibrate-line-strongest", "Strongest line";
    SPECTRUM = "vibrate-line-spectrum", "Spectrum of the vibration";
    FREQUENCY = "vibrate-line-frequency", "Frequency, {unit}";
    VELOCITY = "vibrate-line-velocity", "Velocity, {unit} r.m.s.";
    ZONES = "vibrate-line-zones", "Reading and severity zones";
} }

/// The lines: short name, name in the table, frequency (and how many times it), amplitude.
const LINES: [(Message, Message, &str, f64, &str); 6] = [
    (MOTOR, MOTOR_ROW, "vibrate.motor_frequency", 1.0, "vibrate.line_motor"),
    (TWICE, TWICE_ROW, "vibrate.motor_frequency", 2.0, "vibrate.line_double"),
    (OUTPUT, OUTPUT_ROW, "vibrate.output_frequency", 1.0, "vibrate.line_output"),
    (CHAIN, CHAIN_ROW, "vibrate.chain_pass", 1.0, "vibrate.line_chain"),
    (MESH, MESH_ROW, "vibrate.mesh", 1.0, "vibrate.line_mesh"),
    (BEARING, BEARING_ROW, "vibrate.outer", 1.0, "vibrate.line_bearing"),
];
/// Limits in equal steps, where a bar to scale would tell them.
const NOMINAL_LIMITS: [f64; 3] = [1.0, 2.0, 3.0];
const LIMITS: [&str; 3] = ["vibrate.limit_ab", "vibrate.limit_bc", "vibrate.limit_cd"];

pub(super) fn spectrum(board: &Board<'_>) -> Result<Figure, PortrayError> {
    let unit = |quantity: &'static str| {
        let found = Registry::get().find(quantity).map(|id| id.get().unit(board.system()));
        found.ok_or(PortrayError::Missing { picture: board.picture, quantity })
    };
    let (hertz, speed) = (unit("vibrate.peak_frequency")?, unit("vibrate.velocity")?);
    let slip = board.value("vibrate.bearing_slip").unwrap_or(0.0);
    let mut stems = Vec::new();
    for (name, row, frequency, times, line) in LINES {
        // A place on the scale would tell a frequency that is asked.
        if board.asks(frequency) {
            continue;
        }
        let slipped = if frequency == "vibrate.outer" { 1.0 - slip } else { 1.0 };
        let place = board.need(frequency)? * times * slipped;
        stems.push(Stem {
            frequency: hertz.from_base(place),
            height: speed.from_base(board.need(line)?),
            name: board.solved().then(|| name.text().to_owned()),
            row: row_of(board, row.text(), frequency, times, line),
        });
    }
    let tallest = stems.iter_mut().max_by(|a, b| a.height.total_cmp(&b.height));
    if let (false, Some(stem)) = (board.solved(), tallest) {
        // In a question only the strongest line is told, by its frequency.
        let Some(words) = board.label("vibrate.peak_frequency") else {
            return Err(PortrayError::NothingShown { picture: board.picture, quantity: "vibrate.peak_frequency" });
        };
        stem.row = Some((STRONGEST.text().into(), words.clone()));
        stem.name = Some(words);
    }
    board.finish(
        Spectrum {
            id: board.id(),
            title: SPECTRUM.text().into(),
            frequency_name: FREQUENCY.say(&[("unit", hertz.symbol)]),
            height_name: VELOCITY.say(&[("unit", speed.symbol)]),
            stems,
        }
        .draw(),
    )
}

/// What is told of a line: its frequency and its height.
fn row_of(board: &Board<'_>, name: &str, frequency: &str, times: f64, line: &str) -> Option<(String, String)> {
    if !board.solved() {
        return None;
    }
    let frequency = board.label(frequency).map(|words| if times == 2.0 { format!("2 × {words}") } else { words });
    let told: Vec<String> = frequency.into_iter().chain(board.label(line)).collect();
    (!told.is_empty()).then(|| (name.to_owned(), told.join(", ")))
}

pub(super) fn zones(board: &Board<'_>) -> Result<Figure, PortrayError> {
    let hidden = LIMITS.iter().any(|limit| board.asks(limit));
    let mut limits = NOMINAL_LIMITS;
    if !hidden {
        for (limit, quantity) in limits.iter_mut().zip(LIMITS) {
            *limit = board.need(quantity)?;
        }
    }
    // Pointed out on the bar, a reading would tell its zone.
    let asked = hidden || board.asks("vibrate.zone") || board.asks("vibrate.velocity");
    let reading = if asked { None } else { board.value("vibrate.velocity") };
    board.finish(
        ZoneBar {
            id: board.id(),
            title: ZONES.text().into(),
            limits,
            limit_labels: LIMITS.map(|limit| board.label(limit)),
            reading,
            reading_label: board.label("vibrate.velocity"),
        }
        .draw(),
    )
}
