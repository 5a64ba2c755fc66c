//! Bolts, keys and taper bushings: what holds the machine down and the hub on.

mod bolt;
mod bushing;
mod key;
mod lookup;
mod tighten;

use crate::instrument::Figures::{Places, Significant};
use crate::instrument::Instrument::{Caliper, Feeler};
use crate::quantity::Quantity;
use crate::relation::Relation;
use crate::unit::Kind;

const LUBRICATION: &[&str] = &["dry", "lubricated"];

const fn share(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Ratio, name).shown("", Places(2), "", Places(2))
}

const fn percent(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Ratio, name).shown("%", Places(0), "%", Places(0))
}

const fn pull(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Force, name).shown("kN", Significant(3), "lbf", Significant(3))
}

const fn wrench(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Torque, name).shown("N·m", Significant(3), "lbf·ft", Significant(3))
}

const fn stress(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Stress, name)
}

const fn length(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Length, name)
}

const fn drawn(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    length(id, symbol, name).shown("mm", Places(0), "in", Places(2)).plate()
}

const fn section(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    length(id, symbol, name).shown("mm", Places(1), "in", Places(3))
}

const fn fine(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    length(id, symbol, name).shown("mm", Places(2), "in", Places(3))
}

pub(super) const QUANTITIES: &[Quantity] = &[
    Quantity::choice("fasten.thread", "", "thread of the bolt", &lookup::THREADS).plate(),
    Quantity::choice("fasten.grade", "", "grade or property class marked on the bolt's head", lookup::GRADES).plate(),
    Quantity::choice("fasten.lubrication", "", "state of the bolt's thread and bearing face", LUBRICATION).plate(),
    length("fasten.bolt_dia", "d_b", "nominal diameter of the bolt"),
    length("fasten.pitch", "P", "pitch of the bolt's thread"),
    Quantity::new("fasten.stress_area", "A_t", Kind::Area, "tensile stress area of the bolt").shown(
        "mm²",
        Significant(3),
        "in²",
        Places(4),
    ),
    stress("fasten.proof", "S_p", "proof stress of the bolt"),
    share("fasten.nut_factor", "K", "nut factor"),
    share("fasten.proof_share", "f_p", "share of the proof load aimed at").plate(),
    pull("fasten.preload", "F_i", "preload of the bolt"),
    wrench("fasten.torque", "T_b", "tightening torque of the bolt"),
    Quantity::choice("fasten.card_lubrication", "", "state of the bolts the torque card was written for", LUBRICATION)
        .plate(),
    wrench("fasten.card_torque", "T_c", "torque on the torque card").plate(),
    pull("fasten.card_pull", "F_c", "pull the card's torque gives in the bolt"),
    stress("fasten.card_stress", "σ_c", "stress the card's torque gives in the bolt"),
    percent("fasten.proof_used", "u_p", "share of the proof stress that the card's torque uses"),
    percent("fasten.proof_least", "u_min", "least share of the proof stress allowed").plate(),
    percent("fasten.proof_most", "u_max", "greatest share of the proof stress allowed").plate(),
    Quantity::choice(
        "fasten.bolt_verdict",
        "",
        "verdict on the tightened bolt",
        &["within the limits", "too loose: tighten it again", "too tight: fit a new bolt"],
    ),
    percent("fasten.bolt_lost", "s_b", "share of the base bolt's torque lost since it was set"),
    wrench("fasten.bolt_found", "T_bf", "torque found in the base bolt at the check").plate(),
    percent("fasten.loss_limit", "s_max", "largest loss of torque allowed").plate(),
    Quantity::choice("fasten.base_verdict", "", "verdict on the base bolt at the check", tighten::HELD),
    drawn("fasten.grip", "L_g", "grip of the bolt").built(),
    stress("fasten.elasticity", "E", "modulus of elasticity of the bolt").plate(),
    length("fasten.stretch", "δ_b", "stretch of the bolt").shown("mm", Significant(3), "in", Significant(3)),
    Quantity::new("fasten.turn", "θ_b", Kind::Angle, "turn of the nut past snug").shown(
        "°",
        Significant(3),
        "°",
        Significant(3),
    ),
    pull("fasten.outside_load", "P_o", "outside pull on one bolt").plate(),
    share("fasten.joint_share", "C_j", "share of an outside pull that reaches the bolt").plate(),
    pull("fasten.bolt_pull", "F_b", "pull in the bolt under the outside load"),
    Quantity::new("fasten.area_needed", "A_n", Kind::Area, "stress area that the outside pull needs").shown(
        "mm²",
        Significant(3),
        "in²",
        Places(4),
    ),
    Quantity::new("fasten.bolts", "n_b", Kind::Count, "number of bolts in the circle")
        .plate()
        .built()
        .ends(1.0, f64::INFINITY),
    Quantity::new("fasten.turn_place", "k", Kind::Count, "place in the tightening order").plate(),
    Quantity::new("fasten.bolt_at_place", "j_k", Kind::Count, "number of the bolt tightened at that place"),
    percent("fasten.stage_share", "f_s", "share of the full torque in this round").plate(),
    wrench("fasten.stage_torque", "T_s", "torque of this round"),
    Quantity::choice("fasten.key_series", "", "series of the key", &["metric key", "inch square key"]).plate(),
    section("fasten.key_width", "W_k", "width of the key"),
    section("fasten.key_height", "H_k", "height of the key"),
    share("fasten.key_fill", "r_k", "length of the key as a share of the longest worth fitting"),
    length("fasten.key_longest", "L_max", "longest key worth fitting").shown("mm", Places(0), "in", Places(2)),
    drawn("fasten.key_length", "L_k", "working length of the key"),
    pull("fasten.key_force", "F_k", "force on the key"),
    stress("fasten.key_shear", "τ_k", "shear stress in the key"),
    stress("fasten.key_bearing", "σ_k", "bearing stress between key and keyway"),
    stress("fasten.key_yield", "S_y", "yield strength of the weakest of key, shaft and hub").plate().built(),
    stress("fasten.key_shear_strength", "S_s", "strength of the key in shear"),
    Quantity::new("fasten.key_factor", "N_k", Kind::Ratio, "factor of safety of the key")
        .shown("", Significant(2), "", Significant(2))
        .plate(),
    length("fasten.key_length_shear", "L_s", "key length that shear needs"),
    length("fasten.key_length_bearing", "L_b", "key length that bearing needs"),
    length("fasten.key_length_needed", "L_n", "key length needed"),
    Quantity::choice("fasten.key_governs", "", "stress that sets the key's length", &["shear", "bearing"]),
    Quantity::choice("fasten.key_verdict", "", "verdict on the key's length", &["long enough", "too short"]),
    fine("fasten.key_slack", "c_k", "slack of the key in its keyway, negative where the key is too wide"),
    fine("fasten.keyway", "W_h", "width of the hub's keyway as measured").read(Caliper),
    fine("fasten.key_found", "W_f", "width of the key as measured").read(Caliper),
    fine("fasten.slack_limit", "c_max", "largest slack of the key allowed").plate(),
    Quantity::choice(
        "fasten.key_fit",
        "",
        "verdict on the key's fit",
        &["it fits", "too loose: fit a new key", "too wide: fit the right key"],
    ),
    Quantity::new("fasten.taper", "k_t", Kind::Ratio, "taper of the bushing on its diameter")
        .shown("", Places(4), "", Places(4))
        .plate()
        .built(),
    length("fasten.clearance", "c_b", "clearance of the loose bushing on the shaft")
        .shown("mm", Places(3), "in", Places(4))
        .plate(),
    fine("fasten.loose_gap", "g_0", "gap between flange and hub before drawing up").read(Caliper),
    fine("fasten.draw", "x_b", "draw of the bushing until it grips"),
    fine("fasten.gap_left", "g_b", "gap left between flange and hub").read(Feeler),
    fine("fasten.gap_least", "g_min", "least gap that must stay between flange and hub").plate(),
    Quantity::choice(
        "fasten.gap_verdict",
        "",
        "verdict on the bushing's gap",
        &["the taper grips", "stop: the flange carries the screws"],
    ),
    Quantity::new("fasten.screws", "n_s", Kind::Count, "number of screws of the bushing")
        .plate()
        .built()
        .ends(1.0, f64::INFINITY),
    length("fasten.screw_dia", "d_s", "nominal diameter of a bushing screw").plate(),
    wrench("fasten.screw_torque", "T_n", "torque of a bushing screw").plate(),
    pull("fasten.screw_pull", "F_s", "pull of all bushing screws together"),
    percent("fasten.torque_lost", "s_t", "share of the screw torque lost in the first run"),
    wrench("fasten.torque_found", "T_f", "screw torque found after the first run").plate(),
    Quantity::choice("fasten.screw_verdict", "", "verdict on the bushing's screws after the first run", tighten::HELD),
    fine("fasten.flange_uneven", "u_g", "difference between widest and narrowest gap round the bushing's flange"),
    fine("fasten.flange_gap_widest", "g_w", "widest gap round the bushing's flange").read(Feeler),
    fine("fasten.flange_gap_narrowest", "g_n", "narrowest gap round the bushing's flange").read(Feeler),
    drawn("fasten.flange_dia", "D_f", "diameter of the bushing's flange").built(),
    fine("fasten.rim_wobble", "w_r", "face runout at the sprocket's pitch circle"),
];

pub(super) const RELATIONS: &[&[Relation]] =
    &[lookup::RELATIONS, bolt::RELATIONS, tighten::RELATIONS, key::RELATIONS, bushing::RELATIONS];
