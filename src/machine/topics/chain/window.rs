//! The window of the movement, and the sag by the centre distance: what a fitter holds the readings against.

use drivecourse_calc::Error;
use drivecourse_calc::chain::sag::{self, Lie};
use drivecourse_calc::units::{Length, Ratio};

use crate::relation::{Relation, relation};
use crate::source::Source::CommonPractice;
use crate::typed::Choice;

pub(super) const LIES: &[&str] = &["level or nearly so", "steep or upright"];
pub(super) const LOADS: &[&str] = &["steady", "shocks or reverses"];

const WINDOW: &str = "of the free span; the maker's manual comes first";

/// Least and most, as shares of the span.
fn window(lie: Choice, load: Choice) -> (Ratio, Ratio) {
    sag::movement_window(if lie.0 == 0 { Lie::NearLevel } else { Lie::Upright }, load.0 != 0)
}

fn level() -> (Ratio, Ratio) {
    sag::movement_window(Lie::NearLevel, false)
}

fn of(share: Ratio, length: Length) -> Result<Length, Error> {
    sag::sag_of_span(share, length)
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "chain.movement_low/lie": "Least movement from how the drive lies and how its load comes",
        "chain.movement_low": Ratio = window(lie, load).0,
        from { lie: Choice = "chain.lie", load: Choice = "chain.load_comes" },
        formula [],
        source CommonPractice,
        turns {
            "other window": level().0 * 1.5 - window(lie, load).0 => "You took the window of the other kind of drive; 4 to 6 % is for a level drive with a steady load, 2 to 3 % for every other.";
            "halved twice": window(lie, load).0 / 2.0 => "You halved once for the lie and once for the shocks; either of them halves the window, and both do no more.";
            "most": window(lie, load).1 => "You gave the upper end of the window.";
            "as sag": sag::SAG_OVER_MOVEMENT * window(lie, load).0 => "You turned the movement into a hanging sag; the window is of the movement itself.";
        },
    }
    .method("Level or nearly so, and a steady load: 4 %. Steep or upright, or a load that shocks or reverses, or both: 2 %.")
    .limits(WINDOW)
    .lookup()
    .question(),
    relation! {
        "chain.movement_high/lie": "Largest movement from how the drive lies and how its load comes",
        "chain.movement_high": Ratio = window(lie, load).1,
        from { lie: Choice = "chain.lie", load: Choice = "chain.load_comes" },
        formula [],
        source CommonPractice,
        turns {
            "other window": level().1 * 1.5 - window(lie, load).1 => "You took the window of the other kind of drive; 4 to 6 % is for a level drive with a steady load, 2 to 3 % for every other.";
            "halved twice": window(lie, load).1 / 2.0 => "You halved once for the lie and once for the shocks; either of them halves the window, and both do no more.";
            "least": window(lie, load).0 => "You gave the lower end of the window.";
            "as sag": sag::SAG_OVER_MOVEMENT * window(lie, load).1 => "You turned the movement into a hanging sag; the window is of the movement itself.";
        },
    }
    .method("Level or nearly so, and a steady load: 6 %. Steep or upright, or a load that shocks or reverses, or both: 3 %.")
    .limits(WINDOW)
    .lookup()
    .question(),
    relation! {
        "chain.movement_least/span": "Least movement on the scale from its share of the span",
        "chain.movement_least": Length = of(f, l),
        from { f: Ratio = "chain.movement_low", l: Length = "chain.span" },
        formula ["m = f[] * l"],
        source CommonPractice,
        turns {
            "of centres" with { c: Length = "chain.centres" }: of(f, c) => "You took the share of the centre distance; the window is a share of the free span.";
            "halved": of(f, l / 2.0) => "You halved it, as a reading to one side or the share of half a span; the window is for the whole movement, both ways, as a share of the whole span.";
            "most" with { most: Ratio = "chain.movement_high" }: of(most, l) => "You gave the upper end of the window.";
            "hanging sag": of(f, l).and_then(sag::sag_from_movement) => "You worked out the hanging sag; the step wants the total movement of mid-span.";
            "taken for sag": of(f, l).and_then(sag::movement_from_sag) => "You took the share as a hanging sag and made the movement of it; it is the movement's own share.";
        },
    }
    .limits(WINDOW),
    relation! {
        "chain.movement_most/span": "Largest movement on the scale from its share of the span",
        "chain.movement_most": Length = of(f, l),
        from { f: Ratio = "chain.movement_high", l: Length = "chain.span" },
        formula ["m = f[] * l"],
        source CommonPractice,
        turns {
            "of centres" with { c: Length = "chain.centres" }: of(f, c) => "You took the share of the centre distance; the window is a share of the free span.";
            "halved": of(f, l / 2.0) => "You halved it, as a reading to one side or the share of half a span; the window is for the whole movement, both ways, as a share of the whole span.";
            "least" with { least: Ratio = "chain.movement_low" }: of(least, l) => "You gave the lower end of the window.";
            "hanging sag": of(f, l).and_then(sag::sag_from_movement) => "You worked out the hanging sag; the step wants the total movement of mid-span.";
            "taken for sag": of(f, l).and_then(sag::movement_from_sag) => "You took the share as a hanging sag and made the movement of it; it is the movement's own share.";
        },
    }
    .limits(WINDOW),
    relation! {
        "chain.sag_by_centres/centres": "Sag wanted from the share of the centre distance",
        "chain.sag_by_centres": Length = sag::sag_of_centres(f, c),
        from { f: Ratio = "chain.sag_share_wanted", c: Length = "chain.centres" },
        formula ["s = f[] * c"],
        source CommonPractice,
        turns {
            "of half the centres": sag::sag_of_centres(f, c / 2.0) => "You took the percentage of half the centre distance; the sag is measured in the middle, but the percentage is of the whole distance.";
            "of the chain" with { x: u32 = "chain.links", p: Length = "chain.pitch" }: sag::sag_of_centres(f, p * f64::from(x)) => "You took the percentage of the whole chain's length; this rule takes the centre distance.";
            "as movement": sag::sag_of_centres(f, c).and_then(sag::movement_from_sag) => "You worked out the total movement of mid-span; the step wants the sag below the straightedge.";
            "from movement": sag::sag_of_centres(f, c).and_then(sag::sag_from_movement) => "You took the percentage as total movement; here it is the sag below the straightedge.";
        },
    }
    .limits("longer than by the free span, by a per cent or so on usual drives: say which length a sheet means"),
];
