//! Wear elongation, its limit, and the length it adds.

use drivecourse_calc::chain::wear;
use drivecourse_calc::units::{Length, Ratio};

use super::{first_if, plain};
use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};
use crate::typed::Choice;

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "chain.wear_length/worn": "Length that the worn chain measures",
        "chain.wear_length": Length = wear::measured_length(e, n, p),
        from { e: Ratio = "chain.wear", n: u32 = "chain.wear_pitches", p: Length = "chain.pitch" },
        formula ["M = n * p * (1 + e[])"],
        source Derived("the definition"),
        turns {},
    }
    .model(),
    relation! {
        "chain.wear/measured": "Wear elongation from a measured length",
        "chain.wear": Ratio = wear::elongation(m, n, p),
        from { m: Length = "chain.wear_length", n: u32 = "chain.wear_pitches", p: Length = "chain.pitch" },
        formula ["e[] = m / (n * p) - 1"],
        source Derived("the definition"),
        turns {
            "rollers short": wear::elongation(m, n.saturating_sub(1), p) => "You counted one pitch too few; the count given is already of pitches, not of rollers.";
            "rollers over": m / (p * (f64::from(n) + 1.0)) - plain(1.0) => "You counted the rollers as pitches, one too many; the pitches lie between the rollers.";
            "of the measured": plain(1.0) - p * f64::from(n) / m => "You took the growth as a share of the measured length; it is a share of the new length.";
            "not subtracted": m / (p * f64::from(n)) => "You gave the measured length as a share of the new one; the wear is only what is above 100 %.";
            "for each pitch": wear::elongation(m, n, p).map(|e| e / f64::from(n)) => "You divided the wear by the number of pitches; the share is the same for one pitch as for all.";
        },
    }
    .limits("chain pulled tight, length from pin to pin or from like edge to like edge of rollers")
    .inverse(),
    relation! {
        "chain.wear_limit/least": "Wear limit",
        "chain.wear_limit": Ratio = wear::wear_limit(z, fixed.0 == 1),
        from { z: u32 = "chain.teeth_large", fixed: Choice = "chain.fixed_centres" },
        formula [],
        source CommonPractice,
        turns {
            "always three": plain(wear::USUAL_LIMIT) => "You took 3 % whatever the drive; fixed centres allow 1.5 %, and from 67 teeth on the large sprocket it is 200/z %.";
            "fixed left out": wear::wear_limit(z, false) => "You left out that the centres are fixed; the slack cannot be taken up, so 1.5 % is the limit.";
            "fixed always": wear::wear_limit(z, true) => "You took the limit for fixed centres; these can be adjusted.";
            "teeth always": plain(wear::LARGE_SPROCKET_LIMIT / f64::from(z)) => "You took 200/z although it is above the usual limit; the least of the limits governs.";
            "small sprocket" with { z1: u32 = "chain.teeth_small" }: plain(wear::LARGE_SPROCKET_LIMIT / f64::from(z1)) => "You took the teeth of the small sprocket; the chain climbs off the large one first.";
        },
    }
    .method("The least of 3 %, of 200 % divided by the teeth of the large sprocket (it takes over from 67 teeth), and of 1.5 % on fixed centres."),
    relation! {
        "chain.wear_length_limit/limit": "Length at which the chain is replaced",
        "chain.wear_length_limit": Length = wear::measured_length(e, n, p),
        from { e: Ratio = "chain.wear_limit", n: u32 = "chain.wear_pitches", p: Length = "chain.pitch" },
        formula ["M = n * p * (1 + e[])"],
        source Derived("the definition"),
        turns {
            "rollers over": wear::measured_length(e, n.saturating_add(1), p) => "You counted the rollers as pitches, one too many; the pitches lie between the rollers.";
            "rollers short": wear::measured_length(e, n.saturating_sub(1), p) => "You counted one pitch too few; the count given is already of pitches.";
            "new length": p * f64::from(n) => "You gave the length of the new chain; the limit lets it grow.";
            "growth only": wear::measured_length(e, n, p).map(|m| m - p * f64::from(n)) => "You gave the growth only; the step wants the whole length that the scale shows.";
        },
    },
    relation! {
        "chain.wear_verdict/limit": "Verdict on the wear",
        "chain.wear_verdict": Choice = first_if(e < limit),
        from { e: Ratio = "chain.wear", limit: Ratio = "chain.wear_limit" },
        formula [],
        source CommonPractice,
        turns {
            "always three": first_if(e < plain(wear::USUAL_LIMIT)) => "You compared with 3 % whatever the drive; fixed centres and large sprockets allow less.";
            "fixed always": first_if(e < plain(wear::FIXED_CENTRES_LIMIT)) => "You compared with the limit for fixed centres; these can be adjusted.";
            "one pitch short" with { m: Length = "chain.wear_length", n: u32 = "chain.wear_pitches", p: Length = "chain.pitch" }: wear::elongation(m, n.saturating_sub(1), p).map(|e| first_if(e < limit)) => "You counted one pitch too few, which makes a good chain look worn out.";
            "one pitch over" with { m: Length = "chain.wear_length", n: u32 = "chain.wear_pitches", p: Length = "chain.pitch" }: first_if(m / (p * (f64::from(n) + 1.0)) - plain(1.0) < limit) => "You counted the rollers as pitches, which hides the wear.";
        },
    }
    .method("Replace the chain when its wear has reached the limit; look at the sprockets then, too."),
    relation! {
        "chain.wear_growth/links": "Growth of the whole chain by wear",
        "chain.wear_growth": Length = wear::worn_pitch(p, e).and_then(|worn| wear::excess_in_span(x, worn, p * f64::from(x))),
        from { e: Ratio = "chain.wear", x: u32 = "chain.links", p: Length = "chain.pitch" },
        formula ["g = x * p * e[]"],
        source Derived("every link grows by the same share, and all of it hangs in the slack strand"),
        turns {
            "measured part" with { n: u32 = "chain.wear_pitches" }: wear::worn_pitch(p, e).and_then(|worn| wear::excess_in_span(n, worn, p * f64::from(n))) => "You took only the pitches measured over; the whole chain has grown.";
            "one strand": wear::worn_pitch(p, e).and_then(|worn| wear::excess_in_span(x / 2, worn, p * f64::from(x / 2))) => "You took half the chain; the growth of both strands hangs in the slack one.";
            "one pitch": wear::worn_pitch(p, e).map(|worn| worn - p) => "You gave the growth of one pitch; multiply by the number of links.";
        },
    },
];
