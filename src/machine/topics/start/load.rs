//! Power that the motor draws and gives, and how hard it works.

use drivecourse_calc::load::torque::output_power;
use drivecourse_calc::start_up::motor::{
    Supply, current_at_load, full_load_current_ratio, input_power, load_by_proportion, load_from_current, load_share,
};
use drivecourse_calc::units::electric_current::ampere;

use super::speed::DEFINITION;
use super::{ElectricCurrent, ElectricPotential, FACT_SHEET, Power, Ratio, left, plain};
use crate::relation::{Relation, relation};
use crate::source::Source::FromMemory;
use crate::typed::Choice;

const POWER: crate::Source = crate::Source::published(FACT_SHEET, "equation 1");
const PHASORS: crate::Source = FromMemory("phasor sum of magnetising and load current, the losses at no load left out");

fn drawn(
    voltage: ElectricPotential,
    current: ElectricCurrent,
    power_factor: Ratio,
) -> Result<Power, drivecourse_calc::Error> {
    input_power(&Supply { voltage, current, power_factor })
}

/// Full-load current of a motor that draws `current` at `share` of its load, `idle` its no-load current over it.
fn full_load(current: ElectricCurrent, share: Ratio, idle: Ratio) -> Result<ElectricCurrent, drivecourse_calc::Error> {
    let one = ElectricCurrent::new::<ampere>(1.0);
    Ok(current / (current_at_load(share, one, one * idle)? / one))
}

fn over(value: f64, limit: f64) -> Choice {
    Choice(u16::from(value > limit))
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "start.input_power/readings": "Electrical power that the motor draws",
        "start.input_power": Power = drawn(v, i, pf),
        from {
            v: ElectricPotential = "start.voltage", i: ElectricCurrent = "start.current",
            pf: Ratio = "start.power_factor",
        },
        formula ["P[kW] = sqrt(3) * v[V] * i[A] * pf[] / 1000"],
        source POWER,
        turns {
            "√3 left out": drawn(v, i, pf).map(|p| p / 3_f64.sqrt()) => "You left out √3; with the voltage between lines a three-phase motor draws √3 V I cos φ.";
            "3 for √3": drawn(v, i, pf).map(|p| p * 3_f64.sqrt()) => "You multiplied by 3; that goes with the phase voltage, and with the voltage between lines the factor is √3.";
            "2 for √3": drawn(v, i, pf).map(|p| p * 2.0 / 3_f64.sqrt()) => "You multiplied by 2; the factor of a three-phase supply is √3.";
            "power factor left out": drawn(v, i, plain(1.0)) => "You left out the power factor; volts times amps is the apparent power.";
            "power factor divided": drawn(v, i, plain(1.0)).map(|p| p / pf.value) => "You divided by the power factor; the power drawn is smaller than volts times amps, so multiply.";
            "plate current" with { full: ElectricCurrent = "start.full_load_current" }: drawn(v, full, pf) => "You used the current on the plate; the power drawn now goes by the current read now.";
            "efficiency as well" with { e: Ratio = "start.motor_efficiency" }: output_power(drawn(v, i, pf)?, e) => "You took the motor's losses off; they are part of what it draws.";
        },
    }
    .limits("mean of the three lines; read by a person qualified and authorised to do so"),
    relation! {
        "start.shaft_power/efficiency": "Power at the motor's shaft from the power drawn",
        "start.shaft_power": Power = output_power(p, e),
        from { p: Power = "start.input_power", e: Ratio = "start.motor_efficiency" },
        formula ["P[kW] = p[kW] * e[]", "P[hp] = p[kW] * e[] / 0.7457"],
        source POWER,
        turns {
            "efficiency left out": p => "You left out the motor's efficiency; a part of what it draws becomes heat in the motor.";
            "efficiency divided": p / e => "You divided by the efficiency; the shaft gives less than the motor draws.";
            "lost part": p * left(e).value => "You gave the power that is lost in the motor; what reaches the shaft is the power drawn times the efficiency.";
            "reducer for motor" with { r: Ratio = "drive.efficiency" }: output_power(p, r) => "You used the reducer's efficiency; between the supply and the motor's shaft stands the motor's own.";
            "reducer as well" with { r: Ratio = "drive.efficiency" }: output_power(p, e * r) => "You took the reducer's losses off as well; they come after the motor's shaft.";
        },
    }
    .limits("efficiency at this load; above half load it is close to that on the plate"),
    relation! {
        "start.load_share/shaft power": "Load of the motor from the power at its shaft",
        "start.load_share": Ratio = load_share(p, pm),
        from { p: Power = "start.shaft_power", pm: Power = "drive.motor_power" },
        formula ["x[] = p / pm"],
        source crate::Source::published(FACT_SHEET, "equations 2 and 3"),
        turns {
            "input over plate" with { p1: Power = "start.input_power" }: load_share(p1, pm) => "You divided the power drawn by the plate power; the plate states what the shaft gives.";
            "inverted": pm / p => "You divided the plate power by the shaft power; the load is the shaft power over the plate power.";
            "load left": load_share(p, pm).map(left) => "You gave the load that is left; what is asked is the load in use.";
            "shaft over input" with { p1: Power = "start.input_power" }: p / p1 => "You divided by the power drawn, which gives the efficiency; the load is a share of the plate power.";
        },
    }
    .limits("steadily above 1 the motor is overloaded"),
    relation! {
        "start.full_load_current/load": "Full-load current of a motor that draws this current under this load",
        "start.full_load_current": ElectricCurrent = full_load(i, x, k),
        from {
            i: ElectricCurrent = "start.current", x: Ratio = "drive.load_share", k: Ratio = "start.no_load_share",
        },
        formula ["I = i / sqrt(k[]^2 + x[]^2 * (1 - k[]^2))"],
        source PHASORS,
        turns {},
    }
    .model(),
    relation! {
        "start.no_load_current/share": "No-load current of the motor",
        "start.no_load_current": ElectricCurrent = i * k,
        from { i: ElectricCurrent = "start.full_load_current", k: Ratio = "start.no_load_share" },
        formula ["I = i * k[]"],
        source DEFINITION,
        turns {},
    }
    .model(),
    relation! {
        "start.current_ratio/plate": "Current over the full-load current of the plate",
        "start.current_ratio": Ratio = full_load_current_ratio(i, full),
        from { i: ElectricCurrent = "start.current", full: ElectricCurrent = "start.full_load_current" },
        formula ["r[] = i / full"],
        source DEFINITION,
        turns {
            "inverted": full / i => "You divided the plate current by the current read; turn it over.";
            "left over": full_load_current_ratio(i, full).map(left) => "You gave what is left up to the plate current; what is asked is the current in use.";
            "over no-load" with { idle: ElectricCurrent = "start.no_load_current" }: i / idle => "You divided by the no-load current; the ratio goes by the full-load current of the plate.";
            "three lines": (i * 3.0) / full => "You added the three lines up; the plate states the current of one line.";
        },
    }
    .limits("above 1 the motor is overloaded; under half load it says little about the load"),
    relation! {
        "start.load_by_current/no-load current taken out": "Load of the motor from its current",
        "start.load_by_current": Ratio = load_from_current(i, full, idle),
        from {
            i: ElectricCurrent = "start.current", full: ElectricCurrent = "start.full_load_current",
            idle: ElectricCurrent = "start.no_load_current",
        },
        formula ["x[] = sqrt((i^2 - idle^2) / (full^2 - idle^2))"],
        source PHASORS,
        turns {
            "in proportion": full_load_current_ratio(i, full) => "You took the current as the load; the magnetising current flows at any load and has to come out.";
            "straight difference": plain(((i - idle) / (full - idle)).value) => "You took the no-load current off straight; the two currents add as the sides of a right-angled triangle.";
            "root left out": load_from_current(i, full, idle).map(|x| x * x) => "You left the square root out; the squares give the square of the load.";
            "load left": load_from_current(i, full, idle).map(left) => "You gave the load that is left; what is asked is the load in use.";
        },
    }
    .limits("trusted from about half load up"),
    relation! {
        "start.load_proportion/current and voltage": "Load of the motor in proportion to its current and voltage",
        "start.load_proportion": Ratio = load_by_proportion(i, full, v, plate),
        from {
            i: ElectricCurrent = "start.current", full: ElectricCurrent = "start.full_load_current",
            v: ElectricPotential = "start.voltage", plate: ElectricPotential = "start.plate_voltage",
        },
        formula ["x[] = i / full * (v / plate)"],
        source FromMemory("US Department of Energy, fact sheet Determining Electric Motor Load and Efficiency, line-current method"),
        turns {
            "voltage left out": full_load_current_ratio(i, full) => "You left the voltage out; at a low voltage the same load draws more current.";
            "voltage upside down": load_by_proportion(i, full, plate, v) => "You turned the voltages over; power is volts times amps, so the voltage read goes on top.";
            "current upside down": load_by_proportion(full, i, v, plate) => "You divided the plate current by the current read; turn it over.";
            "no-load current taken out" with { idle: ElectricCurrent = "start.no_load_current" }: load_from_current(i, full, idle) => "You took the no-load current out; this rule of thumb takes the current as it is, and so overstates a small load.";
            "over no-load" with { idle: ElectricCurrent = "start.no_load_current" }: load_by_proportion(i, idle, v, plate) => "You divided by the no-load current; the rule goes by the full-load current of the plate.";
            "load left": load_by_proportion(i, full, v, plate).map(left) => "You gave the load that is left; what is asked is the load in use.";
        },
    }
    .limits("a rule of thumb: near full load it is close, and the lighter the load the more it overstates it, for the no-load current flows all the time"),
    relation! {
        "start.current_verdict/plate": "Verdict on the motor's current",
        "start.current_verdict": Choice = over(i.value, full.value),
        from { i: ElectricCurrent = "start.current", full: ElectricCurrent = "start.full_load_current" },
        formula [],
        source crate::Source::CommonPractice,
        turns {
            "power drawn against plate" with { p1: Power = "start.input_power", pm: Power = "drive.motor_power" }: over(p1.value, pm.value) => "You held the power drawn against the plate power; the plate states what the shaft gives, so hold the current against the plate current.";
            "sum of lines": over(i.value * 3.0, full.value) => "You held the sum of the three lines against the plate; the plate states the current of one line.";
            "turned round": over(full.value, i.value) => "You turned the comparison round; more than the plate current is an overload.";
        },
    }
    .method("hold the mean of the three lines against the full-load current of the plate")
    .limits("without a service factor on the plate"),
];
