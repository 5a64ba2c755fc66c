//! Chain: sprockets, chain length, sag, tension, take-up, wear, capacity.

use drivecourse_calc::Error;
use drivecourse_calc::chain::sizes::{self, ChainSize};
use drivecourse_calc::units::{Ratio, ratio};

use crate::instrument::Figures::{Places, Significant};
use crate::instrument::Instrument::{Protractor, Scale, Tape};
use crate::quantity::Quantity;
use crate::relation::Relation;
use crate::typed::Choice;
use crate::unit::Kind;

mod capacity;
mod geometry;
mod length;
mod sag;
mod take_up;
mod tension;
mod wear;
mod window;

/// Designations in the order of the calculation's own table.
const SIZES: [&str; sizes::ALL.len()] = {
    let mut names = [""; sizes::ALL.len()];
    let mut at = 0;
    while at < names.len() {
        names[at] = sizes::ALL[at].designation;
        at += 1;
    }
    names
};

/// What is called `written` elsewhere, as a choice of `chain.size` names it.
pub(crate) fn size_called(written: &str) -> Option<&'static str> {
    sizes::by_a_series(written).map(|size| size.designation)
}

/// The size that `written` names with a number of strands behind it, more than one, and that number.
pub(crate) fn size_and_strands(written: &str) -> Option<(&'static str, u32)> {
    sizes::with_strands(written).filter(|(_, strands)| *strands > 1).map(|(size, strands)| (size.designation, strands))
}

/// The size that `written` names as papers do, as a choice of `chain.size` names it.
pub(crate) fn size_on_papers(written: &str) -> Option<&'static str> {
    sizes::named(written).map(|size| size.designation)
}

/// What is said of a movement of the slack strand.
const WINDOW_VERDICTS: &[&str] = &["too tight", "within the window", "too slack"];

const fn count(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Count, name)
}

const fn length(id: &'static str, symbol: &'static str, name: &'static str, mm: u8, inch: u8) -> Quantity {
    Quantity::new(id, symbol, Kind::Length, name).shown("mm", Places(mm), "in", Places(inch))
}

const fn share(id: &'static str, symbol: &'static str, name: &'static str, places: u8) -> Quantity {
    Quantity::new(id, symbol, Kind::Ratio, name).shown("%", Places(places), "%", Places(places))
}

const fn number(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Ratio, name)
}

const fn force(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Force, name)
}

const fn power(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Power, name)
}

/// With fewer teeth a sprocket would be no wheel: common practice, no source.
const LEAST_TEETH: f64 = 6.0;

pub(super) const QUANTITIES: &[Quantity] = &[
    // What is fitted.
    Quantity::choice("chain.size", "", "number of the chain", &SIZES).plate(),
    length("chain.pitch", "p", "pitch of the chain", 3, 3).plate(),
    Quantity::new("chain.mass", "q", Kind::MassPerLength, "mass of the chain per length, all strands")
        .shown("kg/m", Places(2), "lb/ft", Places(2))
        .plate(),
    force("chain.breaking_load", "F_B", "least breaking load of the chain, all strands")
        .shown("kN", Places(1), "lbf", Places(0))
        .plate(),
    count("chain.teeth_small", "z_1", "number of teeth of the small sprocket").plate().ends(LEAST_TEETH, f64::INFINITY),
    count("chain.teeth_large", "z_2", "number of teeth of the large sprocket").plate().ends(LEAST_TEETH, f64::INFINITY),
    length("chain.centres_planned", "C_0", "centre distance on the drawing", 0, 2).plate(),
    Quantity::choice("chain.lie", "", "how the drive lies", window::LIES).plate(),
    Quantity::choice("chain.load_comes", "", "how the load comes", window::LOADS).plate(),
    Quantity::choice("chain.fixed_centres", "", "whether the centre distance is fixed", &["no", "yes"]).plate(),
    // Geometry.
    length("chain.pitch_dia_small", "D_1", "pitch diameter of the small sprocket", 2, 3),
    length("chain.pitch_dia_large", "D_2", "pitch diameter of the large sprocket", 2, 3),
    length("chain.outside_dia_small", "D_a", "outside diameter of the small sprocket", 1, 2),
    number("chain.ratio", "i_c", "speed ratio of the chain drive"),
    Quantity::new("chain.speed_small", "n_1", Kind::Speed, "speed of the small sprocket"),
    Quantity::new("chain.speed_large", "n_2", Kind::Speed, "speed of the large sprocket"),
    Quantity::new("chain.velocity", "v", Kind::Velocity, "speed of the chain"),
    share("chain.chordal", "c", "chordal variation on the small sprocket", 2),
    // Length and centres.
    number("chain.length_pitches", "L_p", "chain length in pitches at the centre distance on the drawing").shown(
        "",
        Places(2),
        "",
        Places(2),
    ),
    number("chain.length_exact", "L_x", "exact chain length in pitches at the centre distance on the drawing").shown(
        "",
        Places(2),
        "",
        Places(2),
    ),
    count("chain.links", "X", "number of links in the chain").plate(),
    length("chain.centres_taut", "C_t", "centre distance at which the new chain has no slack", 1, 2),
    length("chain.centres", "C", "centre distance as measured", 0, 2).read(Tape),
    number("chain.centres_pitches", "C_p", "centre distance in pitches"),
    length("chain.span", "L", "free span between the sprockets", 1, 2),
    Quantity::new("chain.tangent_angle", "α", Kind::Angle, "angle between a strand and the line of centres").shown(
        "°",
        Places(2),
        "°",
        Places(2),
    ),
    Quantity::new("chain.wrap_small", "θ_w", Kind::Angle, "wrap of the chain round the small sprocket").shown(
        "°",
        Places(1),
        "°",
        Places(1),
    ),
    Quantity::choice("chain.wrap_verdict", "", "verdict on the wrap", &["wrap large enough", "wrap too small"]),
    // Sag and movement.
    share("chain.set_sag", "f_0", "sag at which the chain was last set, as a share of the span", 1),
    share("chain.sag_share_wanted", "f_w", "sag wanted below the straightedge, as a share of the span", 1).plate(),
    length("chain.sag_wanted", "δ_w", "sag wanted below the straightedge", 1, 3).set_with(Scale),
    length("chain.sag_by_centres", "δ_C", "sag wanted where the share is taken of the centre distance", 1, 3)
        .set_with(Scale),
    length("chain.sag", "δ", "sag of the slack strand below the straightedge at mid-span", 1, 3).read(Scale),
    share("chain.sag_share", "f", "sag as a share of the span", 2),
    length("chain.sag_pressed", "δ_p", "depth of mid-span below the straightedge when pressed down by hand", 1, 3)
        .read(Scale),
    length("chain.movement", "m", "total movement of mid-span, pressed down and then pulled up", 1, 3).read(Scale),
    share("chain.movement_share", "f_m", "total movement of mid-span as a share of the span", 2),
    share("chain.movement_low", "f_1", "least total movement allowed, as a share of the span", 1).plate(),
    share("chain.movement_high", "f_2", "largest total movement allowed, as a share of the span", 1).plate(),
    length("chain.movement_least", "m_1", "least total movement of mid-span allowed", 1, 3).set_with(Scale),
    length("chain.movement_most", "m_2", "largest total movement of mid-span allowed", 1, 3).set_with(Scale),
    Quantity::choice("chain.sag_verdict", "", "verdict on the movement of the slack strand", WINDOW_VERDICTS),
    Quantity::choice(
        "chain.wanted_verdict",
        "",
        "verdict on the sag wanted, by the window for the movement",
        WINDOW_VERDICTS,
    ),
    share("chain.window_share", "f_x", "place of the movement in its window, from its lower to its upper end", 0),
    length("chain.excess", "e", "slack length of the chain (strand less straight span)", 3, 4),
    length("chain.excess_wanted", "e_w", "slack length at the sag wanted", 3, 4),
    // Pull of the slack strand.
    Quantity::new(
        "chain.incline",
        "β",
        Kind::Angle,
        "climb of the line of centres towards the large sprocket, above the horizontal",
    )
    .read(Protractor)
    .built(),
    Quantity::new("chain.strand_incline", "θ", Kind::Angle, "incline of the slack (lower) strand to the horizontal")
        .read(Protractor),
    force("chain.slack_tension", "H", "pull of the slack strand"),
    // Take-up.
    length("chain.take_up_move", "ΔC", "move of the shafts apart", 3, 4),
    length("chain.screw_lead", "l", "lead of the adjusting screw", 2, 4).plate().built(),
    Quantity::new("chain.screw_turns", "N", Kind::Turns, "turns of the adjusting screw").shown(
        "turns",
        Places(2),
        "turns",
        Places(2),
    ),
    Quantity::new("chain.turns_made", "N_1", Kind::Turns, "turns made at the adjusting screw, shafts apart")
        .shown("turns", Places(2), "turns", Places(2))
        .plate(),
    length("chain.move_made", "ΔC_1", "move made of the shafts apart", 3, 4),
    length("chain.excess_after", "e_1", "slack length after the move", 3, 4),
    length("chain.sag_after", "δ_1", "sag below the straightedge after the move", 1, 3).set_with(Scale),
    length("chain.take_up_left", "u", "take-up travel left", 1, 3).read(Scale),
    Quantity::choice(
        "chain.take_up_verdict",
        "",
        "verdict on the take-up",
        &["enough travel left", "not enough travel left"],
    ),
    // Wear.
    share("chain.wear", "ε", "wear elongation of the chain", 2),
    share("chain.wear_set", "ε_0", "wear elongation when the chain was last set", 2),
    count("chain.wear_pitches", "N_p", "number of pitches measured over").plate(),
    length("chain.wear_length", "M", "length measured over the pitches, chain pulled tight", 1, 3).read(Scale),
    share("chain.wear_limit", "ε_max", "wear elongation at which the chain is replaced", 2),
    length("chain.wear_length_limit", "M_max", "length over the pitches at which the chain is replaced", 1, 2),
    Quantity::choice("chain.wear_verdict", "", "verdict on the wear", &["within the limit", "replace the chain"]),
    length("chain.wear_growth", "ΔX", "growth of the whole chain by wear", 1, 2),
    // Capacity.
    force("chain.pull", "F", "pull in the working strand"),
    number("chain.service_factor", "K_s", "service factor").shown("", Places(2), "", Places(2)).plate().built(),
    count("chain.strands", "m_s", "number of strands").plate().ends(1.0, f64::INFINITY),
    number("chain.strand_factor", "K_1", "strand factor").shown("", Significant(2), "", Significant(2)).plate(),
    number("chain.tooth_factor", "K_2", "tooth factor").shown("", Places(2), "", Places(2)).plate(),
    power("chain.design_power", "P_d", "design power for one strand"),
    power("chain.rating_plates", "H_1", "power that the link plates of one strand bear"),
    power("chain.rating_rollers", "H_2", "power that the rollers and bushings of one strand bear"),
    power("chain.rating", "P_r", "power rating of one strand"),
    Quantity::choice("chain.rating_verdict", "", "verdict on the rating", &["large enough", "too small"]),
    number("chain.safety_factor", "S", "safety on the breaking load"),
    Quantity::choice(
        "chain.safety_verdict",
        "",
        "verdict on the safety of a chain with a press-fit link",
        &["safe enough", "not safe enough"],
    ),
    Quantity::choice(
        "chain.lubrication",
        "",
        "way of lubrication",
        &["by hand or drip", "oil bath or slinger disc", "oil stream"],
    ),
];

const BUDYNAS: &str = "R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design";
const BHANDARI: &str = "V. B. Bhandari, Design of Machine Elements";

/// The chain that a choice stands for.
fn chain(size: Choice) -> Result<&'static ChainSize, Error> {
    sizes::by_index(usize::from(size.0)).ok_or(Error::none("chain"))
}

/// The next larger chain of the same series.
fn next_chain(size: Choice) -> Result<&'static ChainSize, Error> {
    let next = chain(Choice(size.0.saturating_add(1)))?;
    if next.series == chain(size)?.series { Ok(next) } else { Err(Error::none("chain")) }
}

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

/// The first choice if `good`, the second if not.
fn first_if(good: bool) -> Choice {
    Choice(u16::from(!good))
}

pub(super) const RELATIONS: &[&[Relation]] = &[
    geometry::RELATIONS,
    length::RELATIONS,
    sag::RELATIONS,
    window::RELATIONS,
    tension::RELATIONS,
    take_up::RELATIONS,
    wear::RELATIONS,
    capacity::RELATIONS,
];

#[cfg(test)]
mod tests;
