//! The three phases: their mean, and how unequal they are.

use drivecourse_calc::start_up::motor::current_for;
use drivecourse_calc::start_up::supply::{
    current_unbalance, currents_off_the_mean, is_off_the_plate, is_unbalanced, mean_current, mean_voltage,
    off_the_plate, voltage_unbalance,
};

use super::{ElectricCurrent, ElectricPotential, FACT_SHEET, Power, Ratio, left, plain};
use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived, FromMemory};
use crate::typed::Choice;

const MEAN: crate::Source = crate::Source::published(FACT_SHEET, "means of the three phases");
const UNBALANCE: crate::Source = FromMemory("NEMA MG 1, definition of voltage unbalance");
const OFF: crate::Source = Derived("three shares off a mean add up to nought");

/// The largest and the smallest of three.
fn ends(phases: [f64; 3]) -> (f64, f64) {
    (phases.iter().copied().fold(f64::MIN, f64::max), phases.iter().copied().fold(f64::MAX, f64::min))
}

/// Largest less smallest, over the mean.
fn whole_spread(phases: [f64; 3]) -> Ratio {
    let (high, low) = ends(phases);
    plain(3.0 * (high - low) / phases.iter().sum::<f64>())
}

/// Largest less smallest, over the largest.
fn of_the_largest(phases: [f64; 3]) -> Ratio {
    let (high, low) = ends(phases);
    plain((high - low) / high)
}

/// The mean of the three distances from the mean, over the mean.
fn mean_distance(phases: [f64; 3]) -> Ratio {
    let mean = phases.iter().sum::<f64>() / 3.0;
    plain(phases.iter().map(|phase| (phase - mean).abs()).sum::<f64>() / (3.0 * mean))
}

fn verdict(unbalance: Ratio) -> Choice {
    Choice(u16::from(is_unbalanced(unbalance)))
}

fn other(choice: Choice) -> Choice {
    Choice(1 - choice.0.min(1))
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "start.voltage/mean": "Mean of the three line voltages",
        "start.voltage": ElectricPotential = mean_voltage([a, b, c]),
        from {
            a: ElectricPotential = "start.volts_1", b: ElectricPotential = "start.volts_2",
            c: ElectricPotential = "start.volts_3",
        },
        formula ["V = (a + b + c) / 3"],
        source MEAN,
        turns {
            "sum": a + b + c => "You added the three voltages and did not divide by three.";
            "phase voltage": mean_voltage([a, b, c]).map(|v| v / 3_f64.sqrt()) => "You went on to the phase voltage; the formulas here want the voltage between lines.";
        },
    }
    .limits("between lines, at the motor, by a person qualified and authorised to take electrical readings"),
    relation! {
        "start.voltage_off/plate": "Mean voltage off the plate",
        "start.voltage_off": Ratio = off_the_plate(v, vn),
        from { v: ElectricPotential = "start.voltage", vn: ElectricPotential = "start.plate_voltage" },
        formula ["e[] = v / vn - 1"],
        source Derived("definition of the share"),
        turns {
            "of the reading": plain(1.0 - (vn / v).value) => "You divided by the voltage read; the plate's voltage is the whole.";
            "ratio": v / vn => "You gave the voltage as a share of the plate's; what it is off by is that less 1.";
            "wrong sign": off_the_plate(v, vn).map(|e| -e) => "You turned the sign round; a supply under the plate voltage is off by a share below nought.";
            "one line" with { a: ElectricPotential = "start.volts_2" }: off_the_plate(a, vn) => "You took one voltage for the mean of the three.";
            "in volts": plain((v - vn).value / 100.0) => "You stopped at the difference in volts; divide it by the plate voltage.";
        },
    },
    relation! {
        "start.voltage_verdict/10 %": "Verdict on the mean voltage",
        "start.voltage_verdict": Choice = Choice(u16::from(is_off_the_plate(e))),
        from { e: Ratio = "start.voltage_off" },
        formula [],
        source FromMemory("NEMA MG 1: rated voltage plus or minus 10 %"),
        turns {
            "unbalance's limit": Choice(u16::from(is_unbalanced(if e.value < 0.0 { -e } else { e }))) => "You held it to the 1 % for the unbalance; the mean may be up to 10 % off the plate.";
            "turned round": other(Choice(u16::from(is_off_the_plate(e)))) => "You turned the comparison round; up to 10 % off is allowed, up or down.";
        },
    }
    .method("hold its size, up or down, against 10 %")
    .limits("10 %, with the frequency as on the plate; the maker may allow less"),
    relation! {
        "start.voltage_unbalance/largest off the mean": "Voltage unbalance",
        "start.voltage_unbalance": Ratio = voltage_unbalance([a, b, c]),
        from {
            a: ElectricPotential = "start.volts_1", b: ElectricPotential = "start.volts_2",
            c: ElectricPotential = "start.volts_3",
        },
        formula ["u[] = max(abs(a - (a + b + c) / 3), abs(b - (a + b + c) / 3), abs(c - (a + b + c) / 3)) / ((a + b + c) / 3)"],
        source UNBALANCE,
        turns {
            "whole spread": whole_spread([a.value, b.value, c.value]) => "You took largest less smallest; the unbalance is the largest distance from the mean.";
            "of the largest": of_the_largest([a.value, b.value, c.value]) => "You took largest less smallest over the largest; the unbalance is the largest distance from the mean, over the mean.";
            "mean distance": mean_distance([a.value, b.value, c.value]) => "You took the mean of the three distances; the largest one counts.";
            "in volts": voltage_unbalance([a, b, c]).and_then(|u| Ok(plain((mean_voltage([a, b, c])? * u).value))) => "You stopped at the distance in volts; divide it by the mean.";
            "in volts, per cent": voltage_unbalance([a, b, c]).and_then(|u| Ok(plain((mean_voltage([a, b, c])? * u).value / 100.0))) => "You stopped at the distance in volts; divide it by the mean.";
        },
    },
    relation! {
        "start.unbalance_verdict/limit": "Verdict on the voltage unbalance",
        "start.unbalance_verdict": Choice = verdict(u),
        from { u: Ratio = "start.voltage_unbalance" },
        formula [],
        source FromMemory("NEMA MG 1: above 1 % a motor must give less than its rated power"),
        turns {
            "share for per cent": verdict(u / 100.0) => "You read the share as a percentage; 0.02 is 2 %.";
            "current held to it" with { i: Ratio = "start.current_unbalance" }: verdict(i) => "You held the current unbalance to the limit for voltages; currents are several times as unequal.";
            "turned round": other(verdict(u)) => "You turned the comparison round; above 1 % the voltages are too unequal.";
        },
    }
    .method("hold the unbalance against 1 %")
    .limits("1 %"),
    relation! {
        "start.current/mean": "Mean of the three line currents",
        "start.current": ElectricCurrent = mean_current([a, b, c]),
        from {
            a: ElectricCurrent = "start.amps_1", b: ElectricCurrent = "start.amps_2",
            c: ElectricCurrent = "start.amps_3",
        },
        formula ["I = (a + b + c) / 3"],
        source MEAN,
        turns {
            "sum": a + b + c => "You added the three currents; each line carries its own, and the formulas want their mean.";
            "one line": a => "You took one line for all three; take the mean.";
        },
    }
    .limits("by a person qualified and authorised to take electrical readings")
    .question(),
    relation! {
        "start.current/power": "Current that the motor draws for a power at its shaft",
        "start.current": ElectricCurrent = current_for(p, v, pf, e),
        from {
            p: Power = "drive.power", v: ElectricPotential = "start.voltage", pf: Ratio = "start.power_factor",
            e: Ratio = "start.motor_efficiency",
        },
        formula [
            "I[A] = 1000 * p[kW] / (sqrt(3) * v[V] * pf[] * e[])",
            "I[A] = 745.7 * p[hp] / (sqrt(3) * v[V] * pf[] * e[])",
        ],
        source crate::Source::published(FACT_SHEET, "equation 1"),
        turns {
            "√3 left out": current_for(p, v, pf, e).map(|i| i * 3_f64.sqrt()) => "You left out √3; a three-phase motor shares its power over three lines.";
            "3 for √3": current_for(p, v, pf, e).map(|i| i / 3_f64.sqrt()) => "You divided by 3; with the voltage between lines the factor is √3.";
            "power factor left out": current_for(p, v, plain(1.0), e) => "You left out the power factor; the lines carry the magnetising current as well.";
            "efficiency left out": current_for(p, v, pf, plain(1.0)) => "You left out the motor's efficiency; the motor draws more than it gives.";
            "efficiency multiplied": current_for(p, v, pf, plain(1.0)).map(|i| i * e.value) => "You multiplied by the motor's efficiency; the motor draws more than it gives, so divide.";
            "plate power" with { pm: Power = "drive.motor_power" }: current_for(pm, v, pf, e) => "You used the power on the plate; the current follows the power the motor delivers now.";
        },
    }
    .rank(1),
    relation! {
        "start.amps_off_1/voltages": "Current of line 1 off the mean",
        "start.amps_off_1": Ratio = currents_off_the_mean([a, b, c], k).map(|off| off[0]),
        from {
            a: ElectricPotential = "start.volts_1", b: ElectricPotential = "start.volts_2",
            c: ElectricPotential = "start.volts_3", k: Ratio = "start.unbalance_factor",
        },
        formula ["e[] = k[] * ((a + c) / (2 * (a + b + c) / 3) - 1)"],
        source CommonPractice,
        turns {},
    }
    .model(),
    relation! {
        "start.amps_off_2/voltages": "Current of line 2 off the mean",
        "start.amps_off_2": Ratio = currents_off_the_mean([a, b, c], k).map(|off| off[1]),
        from {
            a: ElectricPotential = "start.volts_1", b: ElectricPotential = "start.volts_2",
            c: ElectricPotential = "start.volts_3", k: Ratio = "start.unbalance_factor",
        },
        formula ["e[] = k[] * ((a + b) / (2 * (a + b + c) / 3) - 1)"],
        source CommonPractice,
        turns {},
    }
    .model(),
    relation! {
        "start.amps_1/off the mean": "Current of line 1",
        "start.amps_1": ElectricCurrent = i + i * e,
        from { i: ElectricCurrent = "start.current", e: Ratio = "start.amps_off_1" },
        formula ["I = i * (1 + e[])"],
        source OFF,
        turns {},
    }
    .model(),
    relation! {
        "start.amps_2/off the mean": "Current of line 2",
        "start.amps_2": ElectricCurrent = i + i * e,
        from { i: ElectricCurrent = "start.current", e: Ratio = "start.amps_off_2" },
        formula ["I = i * (1 + e[])"],
        source OFF,
        turns {},
    }
    .model(),
    relation! {
        "start.amps_3/off the mean": "Current of line 3",
        "start.amps_3": ElectricCurrent = i * left(a + b),
        from {
            i: ElectricCurrent = "start.current", a: Ratio = "start.amps_off_1", b: Ratio = "start.amps_off_2",
        },
        formula ["I = i * (1 - a[] - b[])"],
        source OFF,
        turns {},
    }
    .model(),
    relation! {
        "start.current_unbalance/largest off the mean": "Current unbalance",
        "start.current_unbalance": Ratio = current_unbalance([a, b, c]),
        from {
            a: ElectricCurrent = "start.amps_1", b: ElectricCurrent = "start.amps_2",
            c: ElectricCurrent = "start.amps_3",
        },
        formula ["u[] = max(abs(a - (a + b + c) / 3), abs(b - (a + b + c) / 3), abs(c - (a + b + c) / 3)) / ((a + b + c) / 3)"],
        source UNBALANCE,
        turns {
            "whole spread": whole_spread([a.value, b.value, c.value]) => "You took largest less smallest; the unbalance is the largest distance from the mean.";
            "of the largest": of_the_largest([a.value, b.value, c.value]) => "You took largest less smallest over the largest; the unbalance is the largest distance from the mean, over the mean.";
            "mean distance": mean_distance([a.value, b.value, c.value]) => "You took the mean of the three distances; the largest one counts.";
        },
    }
    .limits("several times the voltage unbalance is usual"),
];
