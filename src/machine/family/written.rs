//! Values as they are written in a family's file and in a table of machines.

use crate::instrument::Figures;
use crate::registry::QuantityId;
use crate::unit::{Kind, System};

/// The heading of the column of `quantity` in a table of machines, with the unit that [`cell`] writes in:
/// `drive.motor_power [kW]`.
pub fn heading(quantity: QuantityId, system: System) -> String {
    match quantity.get().unit(system).symbol {
        "" => quantity.get().id.to_owned(),
        unit => format!("{} [{unit}]", quantity.get().id),
    }
}

/// `base` (SI) of `quantity` in a cell under its [`heading`]: `7.5`, `ball bearing`.
pub fn cell(quantity: QuantityId, base: f64, system: System) -> String {
    let of = quantity.get();
    if of.kind == Kind::Choice {
        // Files hold the English labels, whatever is spoken.
        return of.choices.get(base as usize).copied().unwrap_or_default().to_owned();
    }
    // Six figures write the plate's own number without the noise of a change of units.
    Figures::Significant(6).round(of.unit(system).from_base(base)).to_string()
}

/// `base` (SI) of `quantity` with its unit, as a family's file has it: `7.5 kW`.
pub(crate) fn written(quantity: QuantityId, base: f64, system: System) -> String {
    let value = cell(quantity, base, system);
    match quantity.get().unit(system).symbol {
        "" => value,
        unit => format!("{value} {unit}"),
    }
}

/// `base` (SI) of `quantity` as a line under `[fixed]`: `"drive.motor_power" = "7.5 kW"`.
pub fn fixed_line(quantity: QuantityId, base: f64, system: System) -> String {
    format!("\"{}\" = \"{}\"", quantity.get().id, written(quantity, base, system))
}
