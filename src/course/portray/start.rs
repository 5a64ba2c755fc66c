//! Power from the supply to the output shaft.

use super::{Board, PortrayError};
use crate::figures::{Figure, PowerChain};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    FACTOR = "power-chain-label-factor", "power factor\u{a0}{value}";
    EFFICIENCY = "power-chain-label-efficiency", "efficiency\u{a0}{value}";
} }

/// The powers in the order in which they pass, with nominal shares where a band to scale would tell what is asked.
const POWERS: [(&str, f64); 3] = [("start.input_power", 1.0), ("start.shaft_power", 0.88), ("drive.output_power", 0.8)];
/// What is said of the supply, as far as it is told.
const SUPPLY: [&str; 3] = ["start.voltage", "start.current", "start.power_factor"];

pub(super) fn power_chain(board: &Board<'_>) -> Result<Figure, PortrayError> {
    let hidden = POWERS.iter().any(|(power, _)| board.asks(power)) || board.asks("start.motor_efficiency");
    let mut powers = [0.0; 3];
    for (power, (quantity, nominal)) in powers.iter_mut().zip(POWERS) {
        *power = if hidden { nominal } else { board.need(quantity)? };
    }
    // Readings are rounded, so the power worked out at the motor's shaft may end a hair above what the meter gives.
    powers[2] = powers[2].min(powers[1]);
    let supply: Vec<String> = SUPPLY
        .iter()
        .filter_map(|quantity| {
            let words = board.label(quantity)?;
            Some(if *quantity == "start.power_factor" { FACTOR.say(&[("value", &words)]) } else { words })
        })
        .collect();
    let efficiency = |quantity| board.label(quantity).map(|words| EFFICIENCY.say(&[("value", &words)]));
    board.finish(
        PowerChain {
            id: board.id(),
            powers,
            power_labels: POWERS.map(|(quantity, _)| board.label(quantity)),
            supply_label: (!supply.is_empty()).then(|| supply.join(", ")),
            motor_label: efficiency("start.motor_efficiency"),
            reducer_label: efficiency("drive.efficiency"),
        }
        .draw(),
    )
}
