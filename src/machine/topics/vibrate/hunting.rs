//! How often the same two teeth meet.

use drivecourse_calc::Error;
use drivecourse_calc::units::{AngularVelocity, Frequency};
use drivecourse_calc::vibrate::hunting::{
    assembly_phase_frequency, assembly_phases, hunting_tooth_frequency, turns_to_repeat,
};
use drivecourse_calc::vibrate::orders::shaft_frequency;

use crate::relation::{Relation, relation};
use crate::source::Source::{self, Derived};

const FOILES: Source = Source::published(
    "W. C. Foiles, Gear Frequencies Using the Euclidean Algorithm",
    "assembly phase and hunting tooth",
);
const MULTIPLE: Source = Derived("the least common multiple of the tooth counts, over each of them");

/// The mesh frequency over both tooth counts, whatever divides them.
fn over_both(mesh: Frequency, pinion: u32, gear: u32) -> Frequency {
    mesh / (f64::from(pinion) * f64::from(gear))
}

/// Turns until a tooth count has passed `phases` times.
fn shared(teeth: u32, phases: u32) -> Result<u32, Error> {
    teeth.checked_div(phases).ok_or(Error::none("turns"))
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "vibrate.phases/common divisor": "Assembly phases of the first gear pair",
        "vibrate.phases": u32 = assembly_phases(zp, zg),
        from { zp: u32 = "vibrate.pinion_teeth", zg: u32 = "vibrate.gear_teeth" },
        formula [],
        source FOILES,
        turns {
            "difference": zg.abs_diff(zp) => "You took the difference of the tooth counts; the largest number that divides both is asked.";
            "smaller divisor": assembly_phases(zp, zg).map(|n| if n % 2 == 0 { n / 2 } else { 1 }) => "You stopped at a smaller divisor; the largest number that divides both is asked.";
            "common multiple": turns_to_repeat(zp, zg).map(|(turns, _)| turns * zp) => "You gave the least common multiple; the greatest common divisor is asked.";
        },
    }
    .method("The largest number that divides both tooth counts. With 1 every tooth meets every other, and wear spreads evenly."),
    relation! {
        "vibrate.pinion_repeat/teeth": "Turns of the pinion until the same two teeth meet again",
        "vibrate.pinion_repeat": u32 = shared(zg, phases),
        from { zp: u32 = "vibrate.pinion_teeth", zg: u32 = "vibrate.gear_teeth", phases: u32 = "vibrate.phases" },
        formula ["n = zg / phases"],
        source MULTIPLE,
        turns {
            "turns of the gear": shared(zp, phases) => "You gave the turns of the gear; the pinion turns more often.";
            "divisor left out": zg => "You took the teeth of the gear as they are; a common divisor brings the teeth together sooner.";
            "both multiplied": zp * zg => "You multiplied the tooth counts; that many teeth pass, and the pinion has some on every turn.";
        },
    },
    relation! {
        "vibrate.gear_repeat/teeth": "Turns of the gear until the same two teeth meet again",
        "vibrate.gear_repeat": u32 = shared(zp, phases),
        from { zp: u32 = "vibrate.pinion_teeth", zg: u32 = "vibrate.gear_teeth", phases: u32 = "vibrate.phases" },
        formula ["n = zp / phases"],
        source MULTIPLE,
        turns {
            "turns of the pinion": shared(zg, phases) => "You gave the turns of the pinion; the gear turns less often.";
            "divisor left out": zp => "You took the teeth of the pinion as they are; a common divisor brings the teeth together sooner.";
        },
    },
    relation! {
        "vibrate.hunting/phases": "Hunting-tooth frequency of the first gear pair",
        "vibrate.hunting": Frequency = over_both(mesh, zp, zg) * f64::from(phases),
        from {
            mesh: Frequency = "vibrate.mesh", zp: u32 = "vibrate.pinion_teeth", zg: u32 = "vibrate.gear_teeth",
            phases: u32 = "vibrate.phases",
        },
        formula ["f[Hz] = mesh[Hz] * phases / (zp * zg)", "f[cpm] = mesh[cpm] * phases / (zp * zg)"],
        source FOILES,
        turns {
            "phases left out": over_both(mesh, zp, zg) => "You left the assembly phases out; a common divisor brings the same teeth together that many times sooner.";
            "phases times the pinion" with { n: AngularVelocity = "drive.motor_speed" }: shaft_frequency(n).map(|f| f * f64::from(phases)) => "You multiplied the pinion's turns by the common divisor; the same two teeth meet far less often.";
            "one gear's teeth": hunting_tooth_frequency(mesh, zp, 1) => "You divided by the pinion's teeth alone; that is how often the pinion turns.";
            "phase frequency": assembly_phase_frequency(mesh, zp, zg) => "You divided by the phases; that is the assembly-phase frequency.";
        },
    }
    .limits("a clatter at this rate points to one damaged tooth on each gear"),
    relation! {
        "vibrate.phase_frequency/phases": "Assembly-phase frequency of the first gear pair",
        "vibrate.phase_frequency": Frequency = mesh / f64::from(phases),
        from { mesh: Frequency = "vibrate.mesh", phases: u32 = "vibrate.phases" },
        formula ["f[Hz] = mesh[Hz] / phases", "f[cpm] = mesh[cpm] / phases"],
        source FOILES,
        turns {
            "multiplied": mesh * f64::from(phases) => "You multiplied by the phases; divide.";
            "hunting" with { zp: u32 = "vibrate.pinion_teeth", zg: u32 = "vibrate.gear_teeth" }: hunting_tooth_frequency(mesh, zp, zg) => "You gave the hunting-tooth frequency; divide the mesh frequency by the phases alone.";
        },
    }
    .limits("shows where a worn pair was put together in another phase than before; mark the teeth before you part them"),
];
