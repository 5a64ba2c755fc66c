//! Overhung load, where on the shaft it is allowed, bearing reactions and life, and shaft stress.

mod bearing;
mod duty;
mod place;
mod pull;
mod shaft;

use crate::instrument::Figures::{Fraction, Places, Significant};
use crate::instrument::Instrument::Scale;
use crate::quantity::Quantity;
use crate::relation::Relation;
use crate::unit::Kind;

const fn factor(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Ratio, name).shown("", Places(2), "", Places(2)).plate()
}

const fn drawn(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Length, name).shown("mm", Places(0), "in", Places(2)).plate()
}

const fn share(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Ratio, name).shown("%", Places(0), "%", Places(0)).plate()
}

pub(super) const QUANTITIES: &[Quantity] = &[
    factor("load.connection_factor", "K_c", "connection factor"),
    factor("load.location_factor", "K_l", "location factor"),
    factor("load.service_factor", "K_a", "service factor of the shaft load"),
    Quantity::new("load.overhung", "F_o", Kind::Force, "overhung load of the running chain"),
    Quantity::new("load.total", "F_t", Kind::Force, "whole load on the shaft end"),
    drawn("load.bearing_span", "s_b", "distance between the two bearings of the output shaft"),
    drawn("load.shaft_middle", "x_c", "distance from the near bearing to the middle of the shaft end"),
    Quantity::new(
        "load.sprocket_distance",
        "x",
        Kind::Length,
        "distance from the near bearing to the sprocket's centre plane",
    )
    .read(Scale),
    Quantity::new("load.rating_share", "j", Kind::Ratio, "overhung load as a share of the rating"),
    Quantity::new("load.rating_middle", "F_c", Kind::Force, "overhung load rating at the middle of the shaft end")
        .plate(),
    Quantity::new("load.allowable", "F_x", Kind::Force, "load allowed at the sprocket's place"),
    Quantity::new("load.margin", "N_F", Kind::Ratio, "load allowed over whole load"),
    Quantity::choice(
        "load.verdict",
        "",
        "verdict on the load at the shaft end",
        &["accept", "move the sprocket in", "stop: overloaded"],
    ),
    Quantity::new(
        "load.farthest",
        "x_max",
        Kind::Length,
        "farthest place from the near bearing where the load is allowed",
    ),
    Quantity::new("load.slack_allowed", "H_max", Kind::Force, "slack strand tension the shaft end would still bear"),
    Quantity::new(
        "load.smallest_sprocket",
        "D_min",
        Kind::Length,
        "smallest pitch diameter allowed at the sprocket's place",
    ),
    Quantity::new("load.reaction_near", "R_n", Kind::Force, "reaction of the near bearing"),
    Quantity::new("load.reaction_far", "R_f", Kind::Force, "reaction of the far bearing"),
    Quantity::choice("load.bearing_kind", "", "kind of the near bearing", &["ball bearing", "roller bearing"]).plate(),
    Quantity::new("load.life_exponent", "p_L", Kind::Ratio, "life exponent").shown(
        "",
        Significant(4),
        "",
        Significant(4),
    ),
    Quantity::new("load.design_life", "L_d", Kind::Time, "life wanted of the near bearing")
        .shown("h", Significant(3), "h", Significant(3))
        .plate(),
    Quantity::new("load.bearing_capacity", "C_r", Kind::Force, "dynamic capacity of the near bearing")
        .shown("kN", Significant(3), "lbf", Significant(3))
        .plate(),
    Quantity::new("load.life_turns", "L_10", Kind::Turns, "rating life of the near bearing in revolutions").shown(
        "Mrev",
        Significant(3),
        "Mrev",
        Significant(3),
    ),
    Quantity::new("load.life", "L_h", Kind::Time, "rating life of the near bearing").shown(
        "h",
        Significant(3),
        "h",
        Significant(3),
    ),
    Quantity::new("load.life_share", "q_L", Kind::Ratio, "share of the bearing life the slack strand leaves"),
    Quantity::new("load.moment", "M_b", Kind::Torque, "bending moment of the shaft at the near bearing"),
    Quantity::new("load.design_stress", "σ_d", Kind::Stress, "stress the shaft was chosen for"),
    Quantity::new("load.shaft_diameter", "d", Kind::Length, "diameter of the shaft")
        .shown("mm", Places(0), "in", Fraction(16))
        .plate(),
    Quantity::new("load.bending_stress", "σ", Kind::Stress, "bending stress of the shaft at the near bearing"),
    Quantity::new("load.torsion_stress", "τ", Kind::Stress, "torsion stress of the shaft"),
    Quantity::new("load.equivalent_stress", "σ_v", Kind::Stress, "equivalent stress of bending and torsion"),
    Quantity::new("load.max_shear", "τ_max", Kind::Stress, "greatest shear stress of bending and torsion"),
    Quantity::new("load.resultant", "R", Kind::Force, "pull of both strands together, the angle between them taken in"),
    Quantity::new(
        "load.load_for_life",
        "P_d",
        Kind::Force,
        "load under which the near bearing reaches the life wanted",
    ),
    share("load.light_time", "q_l", "share of its running time in which the drive runs light"),
    share("load.light_share", "k_l", "load of the near bearing while the drive runs light, as a share of that now"),
    Quantity::new("load.mean_load", "P_m", Kind::Force, "steady load that wears the near bearing out as fast"),
];

pub(super) const RELATIONS: &[&[Relation]] =
    &[pull::RELATIONS, place::RELATIONS, bearing::RELATIONS, duty::RELATIONS, shaft::RELATIONS];
