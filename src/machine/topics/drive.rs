//! The drive train: motor, reducer, and the torque on the output shaft.

use core::f64::consts::TAU;

use drivecourse_calc::load::torque as calc;
use drivecourse_calc::units::{AngularVelocity, Power, Ratio, Torque, ratio};
use drivecourse_calc::{Error, math};

use crate::instrument::Figures::{Places, Significant};
use crate::instrument::Instrument::{PowerMeter, Tachometer};
use crate::quantity::Quantity;
use crate::relation::{Relation, relation};
use crate::source::Source::{Derived, FromMemory};
use crate::unit::Kind;

const POWER: crate::Source = FromMemory(
    "R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design: T = 63 025 hp / n; 9 549 = 60 000 / 2π",
);
const REDUCTION: crate::Source =
    crate::Source::published("T. H. Wentzell, Machine Design", "Examples 11.1 and 11.4, pp. 217 and 236");
const EFFICIENCY: crate::Source = Derived("definition of efficiency");

pub(super) const QUANTITIES: &[Quantity] = &[
    Quantity::new("drive.motor_power", "P_m", Kind::Power, "power on the motor's plate")
        .shown("kW", Significant(3), "hp", Significant(3))
        .plate()
        .ends(0.0, f64::INFINITY),
    Quantity::new("drive.load_share", "u_m", Kind::Ratio, "share of the motor's plate power in use"),
    Quantity::new("drive.power", "P", Kind::Power, "power the motor delivers").read(PowerMeter),
    Quantity::new("drive.motor_speed", "n_m", Kind::Speed, "speed of the motor").read(Tachometer),
    Quantity::new("drive.ratio", "i", Kind::Ratio, "ratio of the reducer")
        .shown("", Places(2), "", Places(2))
        .plate()
        .ends(1.0, f64::INFINITY),
    Quantity::new("drive.stage_efficiency", "η_1", Kind::Ratio, "efficiency of one gear stage")
        .shown("", Places(3), "", Places(3))
        .plate()
        .ends(0.0, 1.0),
    Quantity::new("drive.stages", "k", Kind::Count, "number of gear stages").plate().ends(1.0, f64::INFINITY),
    Quantity::new("drive.efficiency", "η", Kind::Ratio, "efficiency of the reducer").ends(0.0, 1.0),
    Quantity::new("drive.motor_torque", "T_m", Kind::Torque, "torque of the motor"),
    Quantity::new("drive.output_speed", "n_o", Kind::Speed, "speed of the output shaft"),
    Quantity::new("drive.output_torque", "T_o", Kind::Torque, "torque on the output shaft"),
    Quantity::new("drive.output_power", "P_o", Kind::Power, "power that leaves the reducer"),
];

/// Efficiency of `stages` gear stages one behind the other: each passes on its share of what the one before left.
fn train(stage: Ratio, stages: u32) -> Result<Ratio, Error> {
    let count = f64::from(stages);
    if !(1.0..=20.0).contains(&count) {
        return Err(Error::outside("number of stages", count, 1.0, 20.0));
    }
    Ok(plain(math::pow(stage.value, count)))
}

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

pub(super) const RELATIONS: &[&[Relation]] = &[OWN];

const OWN: &[Relation] = &[
    relation! {
        "drive.power/share": "Power from the share of the plate power in use",
        "drive.power": Power = pm * u,
        from { pm: Power = "drive.motor_power", u: Ratio = "drive.load_share" },
        formula ["P = u * pm"],
        source Derived("definition of the share"),
        turns {},
    }
    .model(),
    relation! {
        "drive.load_share/meter": "Share of the motor's plate power in use, from the power meter",
        "drive.load_share": Ratio = p / pm,
        from { p: Power = "drive.power", pm: Power = "drive.motor_power" },
        formula ["u = p / pm"],
        source Derived("definition of the share"),
        turns {
            "inverted": pm / p => "You divided the plate power by the measured power; the share is the measured power over the plate power.";
            "left over": plain(1.0 - (p / pm).value) => "You gave what the motor has left; the share asked for is what is in use.";
            "output power" with { e: Ratio = "drive.efficiency" }: p * e / pm => "You took the power after the reducer; the motor's share uses the power the motor itself delivers.";
        },
    }
    .question()
    .limits("steadily above 1 the motor is overloaded"),
    relation! {
        "drive.efficiency/stages": "Efficiency of the reducer from its stages",
        "drive.efficiency": Ratio = train(e1, k),
        from { e1: Ratio = "drive.stage_efficiency", k: u32 = "drive.stages" },
        formula ["e = e1^k"],
        source EFFICIENCY,
        turns {
            "one stage": e1 => "You took one stage's efficiency for the whole reducer; every stage takes its loss, so raise it to the number of stages.";
            "multiplied": e1 * f64::from(k) => "You multiplied the stage's efficiency by the number of stages; multiply it by itself, once for each stage.";
            "divided": e1 / f64::from(k) => "You divided the stage's efficiency by the number of stages; multiply it by itself, once for each stage.";
            "losses": train(e1, k).map(|e| plain(1.0 - e.value)) => "You gave the part that is lost; the efficiency is the part that comes through.";
            "root": plain(math::pow(e1.value, 1.0 / f64::from(k))) => "You took a root of the stage's efficiency, so the reducer came out better than its stages; raise it to the number of stages.";
        },
    }
    .limits("equal stages; churning of the oil left out"),
    relation! {
        "drive.motor_torque/power": "Torque of the motor from its power and speed",
        "drive.motor_torque": Torque = calc::torque(p, nm),
        from { p: Power = "drive.power", nm: AngularVelocity = "drive.motor_speed" },
        formula ["T[N·m] = 9549 * p[kW] / nm[r/min]", "T[lbf·in] = 63025 * p[hp] / nm[r/min]"],
        source POWER,
        turns {
            "plate power" with { pm: Power = "drive.motor_power" }: calc::torque(pm, nm) => "You used the power on the plate; this step wants the power the motor delivers, read at the power meter.";
            "output speed" with { no: AngularVelocity = "drive.output_speed" }: calc::torque(p, no) => "You used the output shaft's speed; the motor's torque needs the motor's own speed.";
            "output power" with { po: Power = "drive.output_power" }: calc::torque(po, nm) => "You took the reducer's losses off; they come after the motor, so the motor's torque knows nothing of them.";
            "revolutions": calc::torque(p, nm).map(|t| t * TAU) => "You divided by revolutions and left out the 2π; torque is power over speed in radians per second.";
        },
    },
    relation! {
        "drive.output_speed/ratio": "Speed of the output shaft from the reducer's ratio",
        "drive.output_speed": AngularVelocity = calc::output_speed(nm, i),
        from { nm: AngularVelocity = "drive.motor_speed", i: Ratio = "drive.ratio" },
        formula ["n = nm / i"],
        source REDUCTION,
        turns {
            "multiplied": nm * i.value => "You multiplied by the ratio; a reducer divides the speed by it.";
            "not reduced": nm => "You gave the motor's speed; the output shaft turns slower by the ratio.";
            "efficiency" with { e: Ratio = "drive.efficiency" }: calc::output_speed(nm, i).map(|n| n * e.value) => "You took the efficiency off the speed; losses take torque away, never speed.";
            "ratio squared": calc::output_speed(nm, i * i) => "You divided by the ratio twice; the plate's ratio already covers the whole reducer.";
        },
    },
    relation! {
        "drive.output_power/efficiency": "Power that leaves the reducer",
        "drive.output_power": Power = calc::output_power(p, e),
        from { p: Power = "drive.power", e: Ratio = "drive.efficiency" },
        formula ["P = p * e"],
        source EFFICIENCY,
        turns {
            "divided": p / e => "You divided by the efficiency; less power leaves the reducer than enters it.";
            "no loss": p => "You left the efficiency out; the reducer turns a part of the power into heat.";
            "lost part": p * (1.0 - e.value) => "You gave the power that is lost; what leaves is the power times the efficiency.";
            "plate power" with { pm: Power = "drive.motor_power" }: calc::output_power(pm, e) => "You used the power on the plate; this step wants the power the motor delivers, read at the power meter.";
            "one stage" with { e1: Ratio = "drive.stage_efficiency" }: calc::output_power(p, e1) => "You took off the loss of one stage only; every stage takes its own.";
        },
    },
    relation! {
        "drive.output_torque/power": "Torque on the output shaft from power, efficiency and its speed",
        "drive.output_torque": Torque = calc::torque(calc::output_power(p, e)?, no),
        from { p: Power = "drive.power", e: Ratio = "drive.efficiency", no: AngularVelocity = "drive.output_speed" },
        formula ["T[N·m] = 9549 * p[kW] * e / no[r/min]", "T[lbf·in] = 63025 * p[hp] * e / no[r/min]"],
        source POWER,
        turns {
            "motor speed" with { nm: AngularVelocity = "drive.motor_speed" }: calc::torque(calc::output_power(p, e)?, nm) => "You used the motor's speed; torque on the output shaft needs the output shaft's speed.";
            "efficiency left out": calc::torque(p, no) => "You left the efficiency out; the reducer's losses take torque away.";
            "efficiency divided": calc::torque(p / e, no) => "You divided by the efficiency; the losses make the output torque smaller, so multiply.";
            "efficiency twice": calc::torque(calc::output_power(p, e * e)?, no) => "You took the efficiency off twice; it belongs in once.";
            "one stage" with { e1: Ratio = "drive.stage_efficiency" }: calc::torque(calc::output_power(p, e1)?, no) => "You took off the loss of one stage only; use the efficiency of the whole reducer.";
            "plate power" with { pm: Power = "drive.motor_power" }: calc::torque(calc::output_power(pm, e)?, no) => "You used the power on the plate; this step wants the power the motor delivers, read at the power meter.";
            "ratio again" with { i: Ratio = "drive.ratio" }: calc::torque(calc::output_power(p, e)?, no).map(|t| t * i.value) => "You multiplied by the ratio as well; the output speed already holds it.";
            "revolutions": calc::torque(calc::output_power(p, e)?, no).map(|t| t * TAU) => "You divided by revolutions and left out the 2π; torque is power over speed in radians per second.";
        },
    },
    relation! {
        "drive.output_torque/reducer": "Torque on the output shaft from the motor's torque, ratio and efficiency",
        "drive.output_torque": Torque = calc::output_torque(tm, i, e),
        from { tm: Torque = "drive.motor_torque", i: Ratio = "drive.ratio", e: Ratio = "drive.efficiency" },
        formula ["T = tm * i * e"],
        source REDUCTION,
        turns {
            "not multiplied": tm => "You kept the motor's torque; the reducer multiplies it by the ratio, less the losses.";
            "ratio divided": calc::output_torque(tm, plain(1.0) / i, e) => "You divided by the ratio; a reducer makes the speed smaller and the torque greater.";
            "efficiency left out": calc::output_torque(tm, i, plain(1.0)) => "You left the efficiency out; the reducer's losses take torque away.";
            "efficiency divided": tm * (i / e).value => "You divided by the efficiency; the losses make the output torque smaller, so multiply.";
            "one stage" with { e1: Ratio = "drive.stage_efficiency" }: calc::output_torque(tm, i, e1) => "You took off the loss of one stage only; use the efficiency of the whole reducer.";
            "stages for ratio" with { k: u32 = "drive.stages" }: calc::output_torque(tm, plain(f64::from(k)), e) => "You multiplied by the number of stages; the torque grows with the ratio.";
        },
    }
    .question()
    .rank(1),
    relation! {
        "drive.output_power/torque": "Power that leaves the reducer, from torque and speed of its output shaft",
        "drive.output_power": Power = calc::power(to, no),
        from { to: Torque = "drive.output_torque", no: AngularVelocity = "drive.output_speed" },
        formula ["P[kW] = to[N·m] * no[r/min] / 9549", "P[hp] = to[lbf·in] * no[r/min] / 63025"],
        source POWER,
        turns {
            "motor speed" with { nm: AngularVelocity = "drive.motor_speed" }: calc::power(to, nm) => "You used the motor's speed; the power of the output shaft is its own torque times its own speed.";
            "motor torque" with { tm: Torque = "drive.motor_torque" }: calc::power(tm, no) => "You used the motor's torque; the power of the output shaft is its own torque times its own speed.";
            "efficiency again" with { e: Ratio = "drive.efficiency" }: calc::power(to, no).map(|p| p * e) => "You took the efficiency off again; the output torque already has the losses taken off.";
            "revolutions": calc::power(to, no).map(|p| p / TAU) => "You multiplied by revolutions and left out the 2π; power is torque times speed in radians per second.";
        },
    }
    .question()
    .rank(1),
    relation! {
        "drive.efficiency/powers": "Efficiency of the reducer from the power in and out",
        "drive.efficiency": Ratio = po / p,
        from { po: Power = "drive.output_power", p: Power = "drive.power" },
        formula ["e = po / p"],
        source EFFICIENCY,
        turns {
            "inverted": p / po => "You divided what goes in by what comes out; the efficiency is output over input and never above 1.";
            "lost part": plain(1.0 - (po / p).value) => "You gave the part that is lost; the efficiency is the part that comes through.";
            "plate power" with { pm: Power = "drive.motor_power" }: po / pm => "You divided by the power on the plate; the reducer takes in what the motor really delivers.";
        },
    }
    .inverse()
    .rank(1),
    relation! {
        "drive.ratio/speeds": "Ratio of the reducer from both speeds",
        "drive.ratio": Ratio = nm / no,
        from { nm: AngularVelocity = "drive.motor_speed", no: AngularVelocity = "drive.output_speed" },
        formula ["i = nm / no"],
        source REDUCTION,
        turns {
            "inverted": no / nm => "You divided the output speed by the motor's; a reducer's ratio is input speed over output speed, above 1.";
        },
    }
    .inverse(),
    relation! {
        "drive.power/torque": "Power the motor delivers, from its torque and speed",
        "drive.power": Power = calc::power(tm, nm),
        from { tm: Torque = "drive.motor_torque", nm: AngularVelocity = "drive.motor_speed" },
        formula ["P[kW] = tm[N·m] * nm[r/min] / 9549", "P[hp] = tm[lbf·in] * nm[r/min] / 63025"],
        source POWER,
        turns {
            "output speed" with { no: AngularVelocity = "drive.output_speed" }: calc::power(tm, no) => "You used the output shaft's speed; the motor's power is its own torque times its own speed.";
            "output torque" with { to: Torque = "drive.output_torque" }: calc::power(to, nm) => "You used the output shaft's torque; the motor's power is its own torque times its own speed.";
            "efficiency" with { e: Ratio = "drive.efficiency" }: calc::power(tm, nm).map(|p| p * e) => "You took the reducer's losses off; they come after the motor.";
            "revolutions": calc::power(tm, nm).map(|p| p / TAU) => "You multiplied by revolutions and left out the 2π; power is torque times speed in radians per second.";
        },
    }
    .inverse()
    .rank(1),
    relation! {
        "drive.motor_torque/reducer": "Motor torque that a torque on the output shaft asks for",
        "drive.motor_torque": Torque = calc::input_torque(to, i, e),
        from { to: Torque = "drive.output_torque", i: Ratio = "drive.ratio", e: Ratio = "drive.efficiency" },
        formula ["T = to / (i * e)"],
        source REDUCTION,
        turns {
            "multiplied": to * (i * e).value => "You multiplied by the ratio; going back to the motor the torque is divided by it.";
            "efficiency left out": calc::input_torque(to, i, plain(1.0)) => "You left the efficiency out; the motor must bring the reducer's losses as well.";
            "efficiency multiplied": to * (e / i).value => "You multiplied by the efficiency; the motor must bring the losses on top, so divide.";
        },
    }
    .inverse()
    .rank(1),
];
