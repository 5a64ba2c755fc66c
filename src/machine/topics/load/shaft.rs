//! Bending moment and stresses of the shaft.

use drivecourse_calc::load::shaft as calc;
use drivecourse_calc::units::{Force, Length, Pressure, Torque, pressure};

use crate::relation::{Relation, relation};
use crate::source::Source::{Derived, FromMemory};

const SHIGLEY: crate::Source =
    FromMemory("R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design; beam theory");
const DISTORTION: crate::Source =
    FromMemory("R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, distortion-energy theory");

/// `√(a σ² + b τ²)`: the shape that every slip in combining two stresses takes.
fn root_of_squares(a: f64, sigma: Pressure, b: f64, tau: Pressure) -> Pressure {
    let (sigma, tau) = (sigma.value, tau.value);
    Pressure::new::<pressure::pascal>((a * sigma * sigma + b * tau * tau).sqrt())
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "load.moment/overhang": "Bending moment of the shaft at the near bearing",
        "load.moment": Torque = calc::bending_moment(f, x),
        from { f: Force = "load.total", x: Length = "load.sprocket_distance" },
        formula ["M[N·m] = f[N] * x[mm] / 1000", "M[lbf·in] = f[lbf] * x[in]"],
        source Derived("statics of an overhanging beam"),
        turns {
            "span" with { s: Length = "load.bearing_span" }: calc::bending_moment(f, s) => "You took the bearing span as the arm; the load's arm reaches from the near bearing to the sprocket.";
            "from the far bearing" with { s: Length = "load.bearing_span" }: calc::bending_moment(f, s + x) => "You took the arm from the far bearing; the moment is greatest at the near bearing, and the arm starts there.";
            "middle" with { c: Length = "load.shaft_middle" }: calc::bending_moment(f, c) => "You used the middle of the shaft end; use the distance to the sprocket's centre plane.";
            "reaction" with { r: Force = "load.reaction_near" }: calc::bending_moment(r, x) => "You used the near bearing's reaction; the moment there is the load at the sprocket times its arm.";
            "slack tension left out" with { o: Force = "load.overhung" }: calc::bending_moment(o, x) => "You used the running load only; the tension of the slack strand pulls on the shaft too.";
            "pitch radius" with { d: Length = "chain.pitch_dia_small" }: calc::bending_moment(f, d / 2.0) => "You took the sprocket's radius as the arm; that arm twists the shaft, the arm along the shaft bends it.";
            "between the bearings" with { s: Length = "load.bearing_span" }: calc::bending_moment_between(f, s, x) => "You treated the load as standing between the bearings; it hangs outside them.";
        },
    },
    relation! {
        "load.shaft_diameter/design": "Diameter of the shaft from the stress it was chosen for",
        "load.shaft_diameter": Length = calc::smallest_diameter(calc::bending_moment(f, c)?, t, sd),
        from {
            f: Force = "load.overhung", c: Length = "load.shaft_middle", t: Torque = "drive.output_torque",
            sd: Pressure = "load.design_stress",
        },
        formula [
            "d[mm] = (32000 * sqrt((f[N] * c[m])^2 + 0.75 * t[N·m]^2) / (3.14159 * sd[MPa]))^(1 / 3)",
            "d[in] = (32 * sqrt((f[lbf] * c[in])^2 + 0.75 * t[lbf·in]^2) / (3.14159 * sd[psi]))^(1 / 3)",
        ],
        source DISTORTION,
        turns {},
    }
    .model(),
    relation! {
        "load.bending_stress/round": "Bending stress of the shaft at the near bearing",
        "load.bending_stress": Pressure = calc::bending_stress(m, d),
        from { m: Torque = "load.moment", d: Length = "load.shaft_diameter" },
        formula [
            "σ[MPa] = 32000 * m[N·m] / (3.1416 * d[mm]^3)",
            "σ[psi] = 32 * m[lbf·in] / (3.1416 * d[in]^3)",
        ],
        source SHIGLEY,
        turns {
            "torsion's 16": calc::torsion_stress(m, d) => "You used 16 as for torsion; a round shaft in bending takes 32.";
            "radius for diameter": calc::bending_stress(m, d / 2.0) => "You put the radius to the third power; the 32 goes with the diameter.";
            "64": calc::bending_stress(m * 2.0, d) => "You used 64 from the second moment of area with the diameter as the distance to the surface; half the diameter makes it 32.";
            "torque" with { t: Torque = "drive.output_torque" }: calc::bending_stress(t, d) => "You used the torque; the bending moment is the load times its arm along the shaft.";
        },
    }
    .limits("nominal: a keyway, a shoulder and the fretting under a fitted hub come on top (stress concentration), so this number alone does not say that a shaft is sound; the overhung load that the maker permits decides; compare with an endurance limit, since a turning shaft bends to and fro"),
    relation! {
        "load.torsion_stress/round": "Torsion stress of the shaft",
        "load.torsion_stress": Pressure = calc::torsion_stress(t, d),
        from { t: Torque = "drive.output_torque", d: Length = "load.shaft_diameter" },
        formula [
            "τ[MPa] = 16000 * t[N·m] / (3.1416 * d[mm]^3)",
            "τ[psi] = 16 * t[lbf·in] / (3.1416 * d[in]^3)",
        ],
        source SHIGLEY,
        turns {
            "bending's 32": calc::bending_stress(t, d) => "You used 32 as for bending; a round shaft in torsion takes 16.";
            "radius for diameter": calc::torsion_stress(t, d / 2.0) => "You put the radius to the third power; the 16 goes with the diameter.";
            "motor torque" with { tm: Torque = "drive.motor_torque" }: calc::torsion_stress(tm, d) => "You used the motor's torque; this shaft carries the output torque, greater by the ratio.";
            "bending moment" with { m: Torque = "load.moment" }: calc::torsion_stress(m, d) => "You used the bending moment; the torque twists the shaft.";
        },
    }
    .limits("nominal: keyways multiply it"),
    relation! {
        "load.equivalent_stress/energy": "Equivalent stress of bending and torsion after von Mises",
        "load.equivalent_stress": Pressure = calc::equivalent_stress(s, t),
        from { s: Pressure = "load.bending_stress", t: Pressure = "load.torsion_stress" },
        formula ["σ = sqrt(s^2 + 3 * t^2)"],
        source DISTORTION,
        turns {
            "added": s + t => "You added the two stresses; they act in different directions and combine as the root of their squares.";
            "without the 3": root_of_squares(1.0, s, 1.0, t) => "You left out the 3 before the square of the torsion stress.";
            "3 on bending": root_of_squares(3.0, s, 1.0, t) => "You put the 3 on the bending stress; it belongs to the torsion stress.";
            "3 squared": root_of_squares(1.0, s, 9.0, t) => "You squared the 3 as well; only the torsion stress is squared.";
            "4 for 3": root_of_squares(1.0, s, 4.0, t) => "You used 4 as for the greatest shear stress doubled; the equivalent stress after von Mises takes 3.";
            "greatest shear": calc::maximum_shear_stress(s, t) => "You gave the greatest shear stress; the equivalent stress is held against a tensile limit and takes the whole bending stress.";
            "greatest normal": calc::maximum_normal_stress(s, t) => "You gave the greatest normal stress; the equivalent stress after von Mises is asked.";
            "bending alone": s => "You left the torsion out; the shaft is bent and twisted at once.";
        },
    }
    .limits("compare with a tensile limit"),
    relation! {
        "load.max_shear/circle": "Greatest shear stress of bending and torsion",
        "load.max_shear": Pressure = calc::maximum_shear_stress(s, t),
        from { s: Pressure = "load.bending_stress", t: Pressure = "load.torsion_stress" },
        formula ["τ = sqrt((s / 2)^2 + t^2)"],
        source Derived("Mohr's circle"),
        turns {
            "not halved": root_of_squares(1.0, s, 1.0, t) => "You did not halve the bending stress; only half of it acts as shear.";
            "halved after squaring": root_of_squares(0.5, s, 1.0, t) => "You halved the square of the bending stress; halve the stress first, then square it.";
            "added": s / 2.0 + t => "You added half the bending stress and the torsion stress; they combine as the root of their squares.";
            "torsion alone": t => "You left the bending out; half of the bending stress acts as shear.";
            "greatest normal": calc::maximum_normal_stress(s, t) => "You added half the bending stress again and got the greatest normal stress; the shear is the root alone.";
            "von Mises": calc::equivalent_stress(s, t) => "You gave the equivalent stress after von Mises; the greatest shear stress is asked.";
            "both halved": root_of_squares(0.25, s, 0.25, t) => "You halved the torsion stress as well; only the bending stress is halved.";
        },
    }
    .limits("compare with a shear limit"),
];
