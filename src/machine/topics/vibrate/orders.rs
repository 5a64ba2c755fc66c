//! Frequencies of shafts, gear meshes and chains.

use drivecourse_calc::Error;
use drivecourse_calc::units::{AngularVelocity, Frequency};
use drivecourse_calc::vibrate::orders::{Stage, chain_loop_frequency, mesh_frequency, shaft_frequency, through};

use crate::relation::{Relation, relation};
use crate::source::Source::Derived;

const TURNS: crate::Source = Derived("turns in a second, times what passes in a turn");
const MESH: crate::Source =
    crate::Source::published("W. C. Foiles, Gear Frequencies Using the Euclidean Algorithm", "mesh frequency");

/// Speed of the gear that a pinion drives.
fn driven(speed: AngularVelocity, driver: u32, driven: u32) -> Result<AngularVelocity, Error> {
    let run = through(speed, &[Stage { driver, driven }])?;
    run.last().map(|stage| stage.driven_speed).ok_or(Error::none("stage"))
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "vibrate.motor_frequency/speed": "Shaft frequency of the motor",
        "vibrate.motor_frequency": Frequency = shaft_frequency(n),
        from { n: AngularVelocity = "drive.motor_speed" },
        formula ["f[Hz] = n[r/min] / 60", "f[cpm] = n[r/min]"],
        source TURNS,
        turns {
            "output shaft" with { no: AngularVelocity = "drive.output_speed" }: shaft_frequency(no) => "You used the output shaft's speed; the motor's shaft frequency needs the motor's own.";
            "rad/s": shaft_frequency(n).map(|f| f * core::f64::consts::TAU) => "You gave radians a second; a frequency counts whole turns, so divide by 2π.";
            "supply" with { f: Frequency = "start.frequency" }: f => "You gave the supply frequency; the shaft turns at its own, which the poles and the slip make lower.";
        },
    },
    relation! {
        "vibrate.output_frequency/speed": "Shaft frequency of the output shaft",
        "vibrate.output_frequency": Frequency = shaft_frequency(n),
        from { n: AngularVelocity = "drive.output_speed" },
        formula ["f[Hz] = n[r/min] / 60", "f[cpm] = n[r/min]"],
        source TURNS,
        turns {
            "motor" with { nm: AngularVelocity = "drive.motor_speed" }: shaft_frequency(nm) => "You used the motor's speed; the output shaft turns slower by the reducer's ratio.";
            "rad/s": shaft_frequency(n).map(|f| f * core::f64::consts::TAU) => "You gave radians a second; a frequency counts whole turns, so divide by 2π.";
        },
    },
    relation! {
        "vibrate.mesh/pinion": "Mesh frequency from the pinion",
        "vibrate.mesh": Frequency = mesh_frequency(n, z),
        from { n: AngularVelocity = "drive.motor_speed", z: u32 = "vibrate.pinion_teeth" },
        formula ["f[Hz] = z * n[r/min] / 60", "f[cpm] = z * n[r/min]"],
        source MESH,
        turns {
            "teeth of the wrong gear" with { zg: u32 = "vibrate.gear_teeth" }: mesh_frequency(n, zg) => "You took the teeth of the driven gear with the pinion's speed; teeth and speed belong to one and the same gear.";
            "output speed" with { no: AngularVelocity = "drive.output_speed" }: mesh_frequency(no, z) => "You used the output shaft's speed; the pinion turns with the motor.";
            "teeth of both" with { zg: u32 = "vibrate.gear_teeth" }: mesh_frequency(n, z.saturating_add(zg)) => "You added the teeth of both gears; one pair of teeth meets at a time.";
            "divided by teeth": shaft_frequency(n).map(|f| f / f64::from(z)) => "You divided by the teeth; every tooth meets once a turn, so multiply.";
            "sprocket" with { zs: u32 = "chain.teeth_small" }: mesh_frequency(n, zs) => "You took the teeth of the sprocket; the mesh is between the gears in the reducer.";
        },
    }
    .limits("motor and input shaft on one coupling"),
    relation! {
        "vibrate.gear_speed/teeth": "Speed of the gear that the pinion drives",
        "vibrate.gear_speed": AngularVelocity = driven(n, zp, zg),
        from {
            n: AngularVelocity = "drive.motor_speed", zp: u32 = "vibrate.pinion_teeth", zg: u32 = "vibrate.gear_teeth",
        },
        formula ["n_g = n * zp / zg"],
        source MESH,
        turns {
            "turned over": driven(n, zg, zp) => "You turned the teeth over; the larger gear turns slower.";
            "output shaft" with { no: AngularVelocity = "drive.output_speed" }: no => "You gave the output shaft's speed; the gear of the first stage turns faster where more stages follow.";
        },
    },
    relation! {
        "vibrate.mesh/gear": "Mesh frequency from the driven gear",
        "vibrate.mesh": Frequency = mesh_frequency(n, z),
        from { n: AngularVelocity = "vibrate.gear_speed", z: u32 = "vibrate.gear_teeth" },
        formula ["f[Hz] = z * n[r/min] / 60", "f[cpm] = z * n[r/min]"],
        source MESH,
        turns {
            "teeth of the wrong gear" with { zp: u32 = "vibrate.pinion_teeth" }: mesh_frequency(n, zp) => "You took the teeth of the pinion with the gear's speed; teeth and speed belong to one and the same gear.";
            "pinion speed" with { nm: AngularVelocity = "drive.motor_speed" }: mesh_frequency(nm, z) => "You took the pinion's speed with the teeth of the gear; teeth and speed belong to one and the same gear.";
        },
    }
    .question()
    .rank(1),
    relation! {
        "vibrate.chain_pass/small sprocket": "Frequency at which rollers seat on the small sprocket",
        "vibrate.chain_pass": Frequency = mesh_frequency(n, z),
        from { n: AngularVelocity = "drive.output_speed", z: u32 = "chain.teeth_small" },
        formula ["f[Hz] = z * n[r/min] / 60", "f[cpm] = z * n[r/min]"],
        source TURNS,
        turns {
            "large sprocket" with { z2: u32 = "chain.teeth_large" }: mesh_frequency(n, z2) => "You took the teeth of the large sprocket with the small one's speed; teeth and speed belong to one and the same sprocket.";
            "motor speed" with { nm: AngularVelocity = "drive.motor_speed" }: mesh_frequency(nm, z) => "You used the motor's speed; the small sprocket sits on the output shaft.";
            "shaft only": shaft_frequency(n) => "You gave the shaft frequency; a roller seats for every tooth of a turn.";
            "pinion" with { zp: u32 = "vibrate.pinion_teeth" }: mesh_frequency(n, zp) => "You took the teeth of a gear in the reducer; the chain runs on the sprocket.";
        },
    },
    relation! {
        "vibrate.chain_loop/links": "Frequency at which one link comes round",
        "vibrate.chain_loop": Frequency = chain_loop_frequency(n, z, links),
        from { n: AngularVelocity = "drive.output_speed", z: u32 = "chain.teeth_small", links: u32 = "chain.links" },
        formula ["f[Hz] = z * n[r/min] / (60 * links)", "f[cpm] = z * n[r/min] / links"],
        source TURNS,
        turns {
            "links left out": mesh_frequency(n, z) => "You left the links out; that is the rate at which rollers seat, and one link comes round once in all the links.";
            "large sprocket" with { z2: u32 = "chain.teeth_large" }: chain_loop_frequency(n, z2, links) => "You took the teeth of the large sprocket with the small one's speed; teeth and speed belong to one and the same sprocket.";
            "motor speed" with { nm: AngularVelocity = "drive.motor_speed" }: chain_loop_frequency(nm, z, links) => "You used the motor's speed; the small sprocket sits on the output shaft.";
            "shaft over links": chain_loop_frequency(n, 1, links) => "You divided the shaft frequency by the links; in a turn the chain moves on by as many links as the sprocket has teeth.";
            "turned over": shaft_frequency(n).map(|f| f * f64::from(links) / f64::from(z)) => "You turned the teeth and the links over; the chain comes round slower than the sprocket.";
        },
    }
    .limits("a stiff link or a damaged roller shows there"),
];
