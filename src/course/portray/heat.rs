//! Temperature against time.

use drivecourse_calc::heat::warm_up::{RunIn, WarmUp as Curve};
use drivecourse_calc::units::{Temperature, TemperatureRise, Time};
use drivecourse_machine::language::Message;
use drivecourse_machine::{Kind, Registry, Typed, Unit, messages};

use super::{Board, PortrayError};
use crate::figures::{Figure, Level, Reading, Steps, WarmUp};

messages! { pub(super) SAYS {
    TITLE = "warm-up-title", "Warm-up after a cold start";
    TIME = "warm-up-time", "Time after the start, {unit}";
    TEMPERATURE = "warm-up-temperature", "Temperature, {unit}";
    AMBIENT = "warm-up-ambient", "ambient {value}";
    SETTLES = "warm-up-settles", "settles at {value}";
    LIMIT = "warm-up-limit", "limit {value}";
} }

const READINGS: [(&str, &str); 3] =
    [("heat.first_time", "heat.reading_1"), ("heat.time_2", "heat.reading_2"), ("heat.time_3", "heat.reading_3")];
/// How far past its time constant a warm-up is drawn: by then it is as good as flat.
const CONSTANTS: f64 = 4.0;
/// Points of a drawn curve.
const POINTS: u32 = 96;

pub(super) fn warm_up(board: &Board<'_>) -> Result<Figure, PortrayError> {
    let unit = |kind: Kind, quantity| {
        let found = Registry::get().find(quantity).map(|id| id.get().unit(board.system()));
        found.filter(|unit| unit.kind == kind).ok_or(PortrayError::Missing { picture: board.picture, quantity })
    };
    let degrees = unit(Kind::Temperature, "heat.ambient")?;
    let minutes = unit(Kind::Time, "heat.interval")?;

    let mut readings = Vec::new();
    for (time, reading) in READINGS {
        if board.tells(reading)
            && let (Some(time), Some(temperature)) = (board.value(time), board.value(reading))
        {
            readings.push(Reading {
                time: minutes.from_base(time),
                temperature: degrees.from_base(temperature),
                label: board.label(reading),
            });
        }
    }
    let curve = if board.solved() { curve(board, degrees, minutes)? } else { Vec::new() };
    if curve.is_empty() && readings.is_empty() {
        // Where the machine has readings, it is the question that does not show them.
        board.need("heat.reading_1")?;
        return Err(PortrayError::NothingShown { picture: board.picture, quantity: "heat.reading_1" });
    }
    let level = |quantity, named: Message| {
        let temperature = degrees.from_base(board.value(quantity)?);
        let words = board.label(quantity).filter(|_| board.tells(quantity))?;
        Some(Level { temperature, name: named.say(&[("value", &words)]) })
    };
    board.finish(
        WarmUp {
            id: board.id(),
            title: TITLE.text().into(),
            time_name: TIME.say(&[("unit", minutes.symbol)]),
            time_steps: Steps::Sixty,
            temperature_name: TEMPERATURE.say(&[("unit", degrees.symbol)]),
            curve,
            readings,
            ambient: level("heat.ambient", AMBIENT),
            settled: level("heat.settled_foretold", SETTLES).or_else(|| level("heat.settled", SETTLES)),
            limits: level("heat.sump_limit", LIMIT).into_iter().collect(),
        }
        .draw(),
    )
}

/// The true curve of the unit; empty where the machine does not determine it.
fn curve(board: &Board<'_>, degrees: &Unit, minutes: &Unit) -> Result<Vec<(f64, f64)>, PortrayError> {
    let (Some(ambient), Some(rise), Some(constant)) =
        (board.value("heat.ambient"), board.value("heat.settled_rise"), board.value("heat.time_constant"))
    else {
        return Ok(Vec::new());
    };
    let run_in = board.value("heat.peak_height").zip(board.value("heat.peak_time")).filter(|(height, _)| *height > 0.0);
    let curve = Curve {
        ambient: Temperature::from_base(ambient),
        settled_rise: TemperatureRise::from_base(rise),
        time_constant: Time::from_base(constant),
        run_in: run_in
            .map(|(height, at)| RunIn { height: TemperatureRise::from_base(height), at: Time::from_base(at) }),
    };
    let last = READINGS.iter().filter_map(|(time, _)| board.value(time)).fold(CONSTANTS * constant, f64::max);
    (0..=POINTS)
        .map(|point| {
            let time = last * f64::from(point) / f64::from(POINTS);
            let temperature = board.calculated(curve.at(Time::from_base(time)))?;
            Ok((minutes.from_base(time), degrees.from_base(temperature.base())))
        })
        .collect()
}
