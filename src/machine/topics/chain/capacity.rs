//! Pull, design power, rating, safety, lubrication.

use drivecourse_calc::chain::{capacity, sizes::Build, sprocket};
use drivecourse_calc::load::overhung;
use drivecourse_calc::units::{AngularVelocity, Force, Length, Power, Ratio, Torque, Velocity, length::inch};

use super::{BHANDARI, BUDYNAS, chain, first_if, plain};
use crate::relation::{Relation, relation};
use crate::source::Source::{self, CommonPractice, Derived};
use crate::typed::Choice;

/// Least safety on the breaking load with a press-fit link.
const LEAST_SAFETY: f64 = 6.0;

/// Position of a way of lubrication among the choices.
fn way(way: capacity::Lubrication) -> Choice {
    Choice(match way {
        capacity::Lubrication::ManualOrDrip => 0,
        capacity::Lubrication::Bath => 1,
        capacity::Lubrication::Stream => 2,
    })
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "chain.pull/power": "Pull in the working strand from power and speed",
        "chain.pull": Force = capacity::chain_pull(w, v),
        from { w: Power = "drive.output_power", v: Velocity = "chain.velocity" },
        formula ["F[N] = 1000 * w[kW] / v[m/s]", "F[lbf] = 33000 * w[hp] / v[ft/min]"],
        source Derived("power is force times speed"),
        turns {
            "motor power" with { m: Power = "drive.motor_power" }: capacity::chain_pull(m, v) => "You took the power on the motor's plate; the chain carries what comes out of the reducer.";
            "power in" with { m: Power = "drive.power" }: capacity::chain_pull(m, v) => "You took the power at the motor; the reducer's losses come off before the chain.";
            "motor speed" with { p: Length = "chain.pitch", z: u32 = "chain.teeth_small", n: AngularVelocity = "drive.motor_speed" }: sprocket::chain_velocity(p, z, n).and_then(|v| capacity::chain_pull(w, v)) => "You worked out the chain's speed from the motor's turns; the sprocket turns with the reducer's output shaft.";
            "service factor" with { k: Ratio = "chain.service_factor" }: capacity::chain_pull(w * k, v) => "You brought in the service factor; the step wants the pull itself.";
            "both strands": capacity::chain_pull(w / 2.0, v) => "You shared the pull between both strands; the working strand carries it all.";
        },
    },
    relation! {
        "chain.pull/torque": "Pull in the working strand from the torque",
        "chain.pull": Force = overhung::running_pull(t, d),
        from { t: Torque = "drive.output_torque", d: Length = "chain.pitch_dia_small" },
        formula ["F[N] = 2000 * t[N·m] / d[mm]", "F[lbf] = 2 * t[lbf·in] / d[in]"],
        source Derived("torque is force times radius"),
        turns {
            "diameter": overhung::running_pull(t, 2.0 * d) => "You divided the torque by the diameter; the pull acts at the radius.";
            "motor torque" with { m: Torque = "drive.motor_torque" }: overhung::running_pull(m, d) => "You took the motor's torque; the sprocket sits on the reducer's output shaft.";
            "large sprocket" with { d2: Length = "chain.pitch_dia_large" }: overhung::running_pull(t, d2) => "You took the large sprocket's diameter with the torque of the small one's shaft.";
            "outside" with { da: Length = "chain.outside_dia_small" }: overhung::running_pull(t, da) => "You took the outside diameter; the chain pulls on the pitch circle.";
            "radius twice": overhung::running_pull(t, d / 2.0) => "You divided by the radius and multiplied by two as well; do one or the other.";
        },
    }
    .limits("agrees with power and speed within 1 % from 13 teeth")
    .rank(1)
    .question(),
    relation! {
        "chain.strand_factor/table": "Strand factor from the table",
        "chain.strand_factor": Ratio = capacity::strand_factor(n),
        from { n: u32 = "chain.strands" },
        formula [],
        source Source::published(BUDYNAS, "Table 17-23"),
        turns {
            "strands": plain(f64::from(n)) => "You took the number of strands itself; they do not share the load evenly, so the factor is less.";
            "one": capacity::strand_factor(n).and(capacity::strand_factor(1)) => "You took the chain as a single strand; more strands carry more.";
            "one row on": capacity::strand_factor(n + 1) => "You read the table one row too far.";
        },
    }
    .lookup()
    .method("1 strand 1.0; 2 strands 1.7; 3 strands 2.5; 4 strands 3.3; 5 strands 3.9; 6 strands 4.6; 8 strands 6.0."),
    relation! {
        "chain.design_power/factors": "Design power for one strand",
        "chain.design_power": Power = capacity::design_power(w, ks, k1, k2),
        from {
            w: Power = "drive.output_power", ks: Ratio = "chain.service_factor", k1: Ratio = "chain.strand_factor",
            k2: Ratio = "chain.tooth_factor",
        },
        formula ["P = w * ks / (k1 * k2)"],
        source Source::published(BHANDARI, "ch. 14, Ex 14.2 and 14.3"),
        turns {
            "service divided": capacity::design_power(w / ks, plain(1.0), k1, k2) => "You divided by the service factor; shocks ask for a stronger chain, so multiply.";
            "no service": capacity::design_power(w, plain(1.0), k1, k2) => "You left the service factor out.";
            "strands multiplied": capacity::design_power(w, ks, plain(1.0) / k1, k2) => "You multiplied by the strand factor; more strands share the load, so divide.";
            "teeth multiplied": capacity::design_power(w, ks, k1, plain(1.0) / k2) => "You multiplied by the tooth factor; a larger sprocket lets the chain carry more, so divide.";
            "no teeth": capacity::design_power(w, ks, k1, plain(1.0)) => "You left the tooth factor out.";
            "no strands": capacity::design_power(w, ks, plain(1.0), k2) => "You left the strand factor out.";
            "motor power" with { m: Power = "drive.motor_power" }: capacity::design_power(m, ks, k1, k2) => "You took the power on the motor's plate; the step wants the power that the chain carries.";
            "strand count" with { n: u32 = "chain.strands" }: capacity::design_power(w, ks, plain(f64::from(n)), k2) => "You divided by the number of strands; they do not share the load evenly, so take the strand factor.";
        },
    }
    .limits("the tooth factor belongs to tables printed for 17 teeth; it is 1 with a rating for the true teeth"),
    relation! {
        "chain.rating_plates/formula": "Power that the link plates bear",
        "chain.rating_plates": Power = capacity::rating_link_plate(p, z, n, Build::Standard),
        from { p: Length = "chain.pitch", z: u32 = "chain.teeth_small", n: AngularVelocity = "chain.speed_small" },
        formula ["H[hp] = 0.004 * z^1.08 * n[r/min]^0.9 * p[in]^(3 - 0.07 * p[in])"],
        source Source::published(BUDYNAS, "Eq. 17-32 (number from memory); ratings of ANSI B29.1-1975"),
        turns {
            "large teeth" with { z2: u32 = "chain.teeth_large" }: capacity::rating_link_plate(p, z2, n, Build::Standard) => "You took the teeth of the large sprocket; the rating is for the small one.";
            "large speed" with { n2: AngularVelocity = "chain.speed_large" }: capacity::rating_link_plate(p, z, n2, Build::Standard) => "You took the speed of the large sprocket; the rating is for the small one.";
            "motor" with { m: AngularVelocity = "drive.motor_speed" }: capacity::rating_link_plate(p, z, m, Build::Standard) => "You took the motor's speed; the small sprocket turns with the reducer's output shaft.";
            "cube": capacity::rating_link_plate(p, z, n, Build::Standard).map(|h| h * drivecourse_calc::math::pow(p.get::<inch>(), 0.07 * p.get::<inch>())) => "You raised the pitch to the third power; the exponent is 3 less 0.07 times the pitch in inches.";
            "light": capacity::rating_link_plate(p, z, n, Build::Light) => "You took 0.0022, which belongs to the light half-inch chain; other chains have 0.004.";
        },
    }
    .limits("newer tables of the standard do not follow this formula; for the B series an estimate"),
    relation! {
        "chain.rating_rollers/formula": "Power that the rollers and bushings bear",
        "chain.rating_rollers": Power = chain(size).and_then(|chain| capacity::rating_roller_bushing(p, z, n, chain.build)),
        from {
            p: Length = "chain.pitch", z: u32 = "chain.teeth_small", n: AngularVelocity = "chain.speed_small",
            size: Choice = "chain.size",
        },
        formula [],
        source Source::published(BUDYNAS, "Eq. 17-33 (number from memory); ratings of ANSI B29.1-1975"),
        turns {
            "large teeth" with { z2: u32 = "chain.teeth_large" }: chain(size).and_then(|chain| capacity::rating_roller_bushing(p, z2, n, chain.build)) => "You took the teeth or the speed of the large sprocket; the rating is for the small one.";
            "motor" with { m: AngularVelocity = "drive.motor_speed" }: chain(size).and_then(|chain| capacity::rating_roller_bushing(p, z, m, chain.build)) => "You took the motor's speed; the small sprocket turns with the reducer's output shaft.";
            "rollerless": chain(size).and_then(|_| capacity::rating_roller_bushing(p, z, n, Build::Rollerless)) => "You took 29, which belongs to chain without rollers; roller chain has 17.";
            "roller": chain(size).and_then(|_| capacity::rating_roller_bushing(p, z, n, Build::Standard)) => "You took 17, which belongs to roller chain; chain 35 has no rollers and 29 instead.";
        },
    }
    .method("In horsepower: 1000 K z^1.5 p^0.8 / n^1.5 with p in inches and n in r/min; K is 17, and 29 for chain 35, which has no rollers. One horsepower is 0.7457 kW.")
    .limits("newer tables of the standard do not follow this formula; for the B series an estimate"),
    relation! {
        "chain.rating/lower": "Power rating of one strand",
        "chain.rating": Power = a.min(b),
        from { a: Power = "chain.rating_plates", b: Power = "chain.rating_rollers" },
        formula ["P = min(a, b)"],
        source Source::published(BUDYNAS, "roller chain, capacity is the lower of the two limits"),
        turns {
            "higher": a.max(b) => "You took the higher of the two limits; the weaker part decides.";
            "added": a + b => "You added the two limits; each holds on its own, and the lower decides.";
            "averaged": (a + b) / 2.0 => "You took the mean of the two limits; the lower decides.";
        },
    },
    relation! {
        "chain.rating_verdict/design": "Whether the chain is large enough",
        "chain.rating_verdict": Choice = first_if(r >= d),
        from { r: Power = "chain.rating", d: Power = "chain.design_power" },
        formula [],
        source Source::published(BHANDARI, "ch. 14"),
        turns {
            "no factors" with { w: Power = "drive.output_power" }: first_if(r >= w) => "You compared the rating with the plain power; compare it with the design power, factors and all.";
            "higher limit" with { a: Power = "chain.rating_plates", b: Power = "chain.rating_rollers" }: first_if(a.max(b) >= d) => "You took the higher of the two limits as the rating; the lower decides.";
            "backwards": first_if(r <= d) => "You read the comparison backwards; the rating must be at least the design power.";
        },
    }
    .method("The rating must be at least the design power."),
    relation! {
        "chain.safety_factor/breaking": "Safety on the breaking load",
        "chain.safety_factor": Ratio = capacity::safety_factor(b, f),
        from { b: Force = "chain.breaking_load", f: Force = "chain.pull" },
        formula ["S = b[N] / f[N]", "S = b[lbf] / f[lbf]"],
        source Source::published(BHANDARI, "ch. 14, Ex 14.7"),
        turns {
            "upside down": f / b => "You divided the pull by the breaking load; the safety is the breaking load over the pull.";
            "service factor" with { k: Ratio = "chain.service_factor" }: capacity::safety_factor(b, f * k) => "You brought in the service factor; the step wants the safety on the plain pull.";
            "slack pull" with { h: Force = "chain.slack_tension" }: capacity::safety_factor(b, h) => "You took the pull of the slack strand; the working strand carries the load.";
        },
    }
    .limits("at least 6 with press-fit links, 9 with a slip-fit or offset link"),
    relation! {
        "chain.safety_verdict/six": "Verdict on the safety",
        "chain.safety_verdict": Choice = first_if(s >= plain(LEAST_SAFETY)),
        from { s: Ratio = "chain.safety_factor" },
        formula [],
        source CommonPractice,
        turns {
            "nine": first_if(s >= plain(9.0)) => "You asked for 9, which belongs to a slip-fit or offset link; a press-fit link asks for 6.";
            "one": first_if(s >= plain(1.0)) => "You asked only that the chain does not break at once; chain in service asks for 6.";
        },
    }
    .method("With a press-fit link the safety must be at least 6."),
    relation! {
        "chain.lubrication/speed": "Way of lubrication from pitch and chain speed",
        "chain.lubrication": Choice = capacity::lubrication(p, v).map(way),
        from { p: Length = "chain.pitch", v: Velocity = "chain.velocity" },
        formula [],
        source CommonPractice,
        turns {
            "motor speed" with { z: u32 = "chain.teeth_small", n: AngularVelocity = "drive.motor_speed" }: sprocket::chain_velocity(p, z, n).and_then(|v| capacity::lubrication(p, v)).map(way) => "You worked out the chain's speed from the motor's turns; the sprocket turns with the reducer's output shaft.";
            "wrong row": capacity::lubrication(p / 2.0, v).map(way) => "You read the row of a smaller pitch; a larger pitch needs more oil at the same speed.";
            "wrong teeth" with { z2: u32 = "chain.teeth_large", n: AngularVelocity = "chain.speed_small" }: sprocket::chain_velocity(p, z2, n).and_then(|v| capacity::lubrication(p, v)).map(way) => "You worked out the chain's speed with the teeth of the large sprocket and the turns of the small one.";
        },
    }
    .lookup()
    .method("Look up the row of the pitch (or the next larger): up to the first speed by hand or drip, up to the second oil bath, above it an oil stream."),
];
