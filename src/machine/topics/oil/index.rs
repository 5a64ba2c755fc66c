//! Viscosity index of a sample.

use drivecourse_calc::Error;
use drivecourse_calc::oil::index::{procedure_a, procedure_b, reference_oils};
use drivecourse_calc::units::{KinematicViscosity, Ratio};

use crate::Source;
use crate::relation::{Relation, relation};

const TABLE: Source = Source::published("ASTM D2270", "sections 5.1.2 and 6.1.2, table X2.1");

/// The procedure that applies: B from an index of 100 up.
fn index(
    u: KinematicViscosity,
    y: KinematicViscosity,
    l: KinematicViscosity,
    h: KinematicViscosity,
) -> Result<Ratio, Error> {
    if u >= h { procedure_a(u, l, h) } else { procedure_b(u, y, h) }
}

/// The procedure that does not apply.
fn other(
    u: KinematicViscosity,
    y: KinematicViscosity,
    l: KinematicViscosity,
    h: KinematicViscosity,
) -> Result<Ratio, Error> {
    if u >= h { procedure_b(u, y, h) } else { procedure_a(u, l, h) }
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "oil.reference_l/table": "Viscosity of the reference oil with index 0",
        "oil.reference_l": KinematicViscosity = reference_oils(y).map(|(l, _)| l),
        from { y: KinematicViscosity = "oil.sample_100" },
        formula [],
        source TABLE,
        turns {
            "H for L": reference_oils(y).map(|(_, h)| h) => "You took H, of the oil with index 100; L belongs to index 0 and is the larger.";
            "looked up at 40 °C" with { u: KinematicViscosity = "oil.sample_40" }: reference_oils(u).map(|(l, _)| l) => "You looked up the viscosity at 40 °C (104 °F); the table goes by the one at 100 °C (212 °F).";
        },
    }
    .method("From the table of ASTM D2270 at the oil's viscosity at 100 °C (212 °F), or the quadratics that stand for it.")
    .limits("2 mm²/s and more at 100 °C (212 °F)")
    .lookup(),
    relation! {
        "oil.reference_h/table": "Viscosity of the reference oil with index 100",
        "oil.reference_h": KinematicViscosity = reference_oils(y).map(|(_, h)| h),
        from { y: KinematicViscosity = "oil.sample_100" },
        formula [],
        source TABLE,
        turns {
            "L for H": reference_oils(y).map(|(l, _)| l) => "You took L, of the oil with index 0; H belongs to index 100 and is the smaller.";
            "looked up at 40 °C" with { u: KinematicViscosity = "oil.sample_40" }: reference_oils(u).map(|(_, h)| h) => "You looked up the viscosity at 40 °C (104 °F); the table goes by the one at 100 °C (212 °F).";
        },
    }
    .method("From the table of ASTM D2270 at the oil's viscosity at 100 °C (212 °F), or the quadratics that stand for it.")
    .limits("2 mm²/s and more at 100 °C (212 °F)")
    .lookup(),
    relation! {
        "oil.sample_index/ASTM D2270": "Viscosity index of a sample",
        "oil.sample_index": Ratio = index(u, y, l, h),
        from {
            u: KinematicViscosity = "oil.sample_40", y: KinematicViscosity = "oil.sample_100",
            l: KinematicViscosity = "oil.reference_l", h: KinematicViscosity = "oil.reference_h",
        },
        formula [],
        source Source::published("ASTM D2270", "sections 5.1.3 and 6.1.3"),
        turns {
            "wrong procedure": other(u, y, l, h) => "You used the other procedure; A holds where the oil is thicker at 40 °C (104 °F) than H, B where it is thinner.";
            "L and H swapped": index(u, y, h, l) => "You swapped L and H; L is the larger.";
            "part not missing": procedure_a(u, l, h).map(|share| Ratio::new::<drivecourse_calc::units::ratio::ratio>(100.0) - share) => "You gave the part that is missing to 100; the index counts from L down.";
            "divided by L": procedure_a(u, l, l * 1e-9) => "You divided by L alone; L less H belongs below.";
        },
    }
    .method("U, Y: viscosity at 40 and 100 °C (104 and 212 °F). U at least H: 100 × (L − U) / (L − H), procedure A. U below H: N = (log H − log U) / log Y, then (10^N − 1) / 0.00715 + 100, procedure B.")
    .limits("2 mm²/s and more at 100 °C (212 °F); reported as a whole number"),
];
