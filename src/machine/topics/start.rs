//! Start-up: how fast the motor turns, and how hard it works.

mod first;
mod load;
mod speed;
mod supply;

use drivecourse_calc::units::{
    AngularVelocity, ElectricCurrent, ElectricPotential, Power, Ratio, angular_velocity, ratio,
};

use crate::instrument::Figures::{Places, Significant};
use crate::instrument::Instrument::{Ammeter, Voltmeter};
use crate::quantity::Quantity;
use crate::relation::Relation;
use crate::unit::Kind;

const fn volts(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Voltage, name).read(Voltmeter)
}

const fn amps(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Current, name).read(Ammeter)
}

const fn percent(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Ratio, name).shown("%", Significant(3), "%", Significant(3))
}

pub(super) const QUANTITIES: &[Quantity] = &[
    Quantity::new("start.frequency", "f", Kind::Frequency, "frequency of the supply")
        .shown("Hz", Places(0), "Hz", Places(0))
        .plate(),
    Quantity::new("start.poles", "p", Kind::Count, "number of poles of the motor"),
    Quantity::new("start.synchronous", "n_s", Kind::Speed, "synchronous speed of the motor"),
    Quantity::new("start.plate_speed", "n_f", Kind::Speed, "full-load speed on the motor's plate")
        .shown("r/min", Places(0), "r/min", Places(0))
        .plate(),
    percent("start.slip", "s", "slip of the motor"),
    Quantity::new("start.speed_expected", "n_x", Kind::Speed, "speed of the motor expected at its load"),
    // Supply.
    volts("start.volts_1", "V_1", "voltage between lines 1 and 2"),
    volts("start.volts_2", "V_2", "voltage between lines 2 and 3"),
    volts("start.volts_3", "V_3", "voltage between lines 3 and 1"),
    Quantity::new("start.voltage", "V", Kind::Voltage, "mean of the three line voltages"),
    Quantity::new("start.plate_voltage", "V_n", Kind::Voltage, "voltage on the motor's plate")
        .shown("V", Places(0), "V", Places(0))
        .plate(),
    percent("start.voltage_off", "e_V", "mean voltage off the plate, as a share of the plate voltage"),
    Quantity::choice("start.voltage_verdict", "", "verdict on the mean voltage", &["within 10 %", "too far off"]),
    percent("start.voltage_unbalance", "u_V", "voltage unbalance"),
    Quantity::choice(
        "start.unbalance_verdict",
        "",
        "verdict on the voltage unbalance",
        &["within the limit", "too unequal"],
    ),
    Quantity::new("start.unbalance_factor", "k_u", Kind::Ratio, "how many times as unequal the currents are"),
    percent("start.amps_off_1", "e_1", "current of line 1 off the mean, as a share of it"),
    percent("start.amps_off_2", "e_2", "current of line 2 off the mean, as a share of it"),
    amps("start.amps_1", "I_1", "current of line 1"),
    amps("start.amps_2", "I_2", "current of line 2"),
    amps("start.amps_3", "I_3", "current of line 3"),
    Quantity::new("start.current", "I", Kind::Current, "mean of the three line currents"),
    percent("start.current_unbalance", "u_I", "current unbalance"),
    // Load.
    Quantity::new("start.power_factor", "cosφ", Kind::Ratio, "power factor of the motor at its load")
        .shown("", Places(2), "", Places(2))
        .plate()
        .ends(0.0, 1.0),
    Quantity::new("start.motor_efficiency", "η_m", Kind::Ratio, "efficiency of the motor")
        .shown("%", Places(1), "%", Places(1))
        .plate()
        .built()
        .ends(0.0, 1.0),
    Quantity::new("start.input_power", "P_1", Kind::Power, "electrical power that the motor draws").shown(
        "kW",
        Significant(3),
        "kW",
        Significant(3),
    ),
    Quantity::new("start.shaft_power", "P_s", Kind::Power, "power at the motor's shaft, from the electrical readings"),
    percent("start.load_share", "x", "load of the motor, from the electrical readings"),
    percent("start.load_by_speed", "x_n", "load of the motor, from its speed"),
    Quantity::new("start.no_load_share", "k_0", Kind::Ratio, "no-load current over full-load current").built(),
    Quantity::new("start.no_load_current", "I_0", Kind::Current, "no-load current of the motor").plate(),
    Quantity::new("start.full_load_current", "I_f", Kind::Current, "full-load current on the motor's plate").plate(),
    percent("start.load_by_current", "x_I", "load of the motor, from its current"),
    percent("start.load_proportion", "x_p", "load of the motor, in proportion to its current and voltage"),
    percent("start.current_ratio", "r_I", "current over full-load current"),
    Quantity::choice(
        "start.current_verdict",
        "",
        "verdict on the motor's current",
        &["within the plate", "overloaded"],
    ),
    // First start.
    Quantity::choice("start.wanted_way", "", "way the output shaft must turn", first::WAYS).plate().built(),
    Quantity::choice("start.motor_way", "", "way the motor must turn", first::WAYS),
    Quantity::choice("start.phases", "", "order of the supply lines", first::PHASES),
    Quantity::choice("start.bumped_way", "", "way the motor turned at the bump", first::WAYS).plate(),
    Quantity::choice("start.rotation_verdict", "", "verdict on the rotation", first::ROTATION),
    Quantity::choice("start.guards", "", "state of the guards", first::GUARDS).plate(),
    Quantity::choice("start.ready_verdict", "", "verdict on the first start under load", first::READY),
];

const FACT_SHEET: &str = "US Department of Energy, fact sheet Determining Electric Motor Load and Efficiency";

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

/// What is left of the whole.
fn left(share: Ratio) -> Ratio {
    plain(1.0) - share
}

pub(super) const RELATIONS: &[&[Relation]] = &[speed::RELATIONS, supply::RELATIONS, load::RELATIONS, first::RELATIONS];
