//! Chain length, links, centre distances, free span, wrap.

use core::f64::consts::TAU;

use drivecourse_calc::Error;
use drivecourse_calc::chain::length::{self, LEAST_WRAP, OVER_LET_GO};
use drivecourse_calc::chain::{sag, take_up, wear};
use drivecourse_calc::units::{Angle, Length, Ratio, angle::degree};

use super::{BHANDARI, first_if, plain};
use crate::relation::{Relation, relation};
use crate::source::Source::{self, CommonPractice, Derived};
use crate::typed::Choice;

const TANGENTS: Source = Derived("common tangents of two circles");
const THREE_TERM: Source = Source::published(BHANDARI, "ch. 14");

/// The centre distance at which the chain was last set: worn to `wear_then` by then, and hanging to `share` of the span.
fn as_set(
    taut: Length,
    share: Ratio,
    wear_then: Ratio,
    links: u32,
    pitch: Length,
    d1: Length,
    d2: Length,
) -> Result<Length, Error> {
    let span = length::free_span(taut, d1, d2)?;
    let slack = sag::excess_gravity(sag::sag_of_span(share, span)?, span)?;
    let grown = wear::excess_in_span(links, wear::worn_pitch(pitch, wear_then)?, pitch * f64::from(links))?;
    Ok(taut + take_up::move_for_excess_change(grown - slack, taut, d1, d2)?)
}

/// Length in pitches with the third term left out.
fn two_terms(c: Length, p: Length, z1: u32, z2: u32) -> Ratio {
    2.0 * c / p + plain(f64::from(z1 + z2) / 2.0)
}

/// The third term multiplied by `factor`.
fn third_term_times(factor: f64, c: Length, p: Length, z1: u32, z2: u32) -> Result<Ratio, Error> {
    let two = two_terms(c, p, z1, z2);
    Ok(two + factor * (length::length_in_pitches(c, p, z1, z2)? - two))
}

/// The whole number at or above `length`, odd or even; what is let go above it is let go here too.
fn whole(length: Ratio) -> u32 {
    (length.value - OVER_LET_GO).ceil() as u32
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "chain.length_pitches/three_term": "Chain length in pitches by the three-term formula",
        "chain.length_pitches": Ratio = length::length_in_pitches(c, p, z1, z2),
        from {
            c: Length = "chain.centres_planned", p: Length = "chain.pitch",
            z1: u32 = "chain.teeth_small", z2: u32 = "chain.teeth_large",
        },
        formula ["Lp = 2 * c / p + (z1 + z2) / 2 + ((z2 - z1) / (2 * pi))^2 * p / c"],
        source THREE_TERM,
        turns {
            "two terms": two_terms(c, p, z1, z2) => "You left out the third term; with unequal sprockets the strands slope and wrap further round the large one.";
            "centres once": length::length_in_pitches(c, p, z1, z2).map(|l| l - c / p) => "You took the centre distance once; the chain runs there and back, so it counts twice.";
            "all teeth": length::length_in_pitches(c, p, z1, z2).map(|l| l + plain(f64::from(z1 + z2) / 2.0)) => "You added all the teeth; the chain lies on about half of each sprocket.";
            "not divided by two pi": third_term_times(TAU * TAU, c, p, z1, z2) => "You left out the division by 2π in the third term; divide the difference of the teeth by 2π before squaring.";
            "divided by pi": third_term_times(4.0, c, p, z1, z2) => "You divided by π in the third term; it is 2π.";
            "third term upside down": third_term_times((c / p * (c / p)).value, c, p, z1, z2) => "You multiplied the third term by the centres in pitches; it is divided by them.";
        },
    }
    .limits("differs from the exact length by less than 0.06 pitch at usual ratios; centres 30 to 50 pitches, 80 at most"),
    relation! {
        "chain.length_exact/tangents": "Chain length in pitches by arcs and tangents",
        "chain.length_exact": Ratio = length::length_exact(c, p, z1, z2),
        from {
            c: Length = "chain.centres_planned", p: Length = "chain.pitch",
            z1: u32 = "chain.teeth_small", z2: u32 = "chain.teeth_large",
        },
        formula ["L = 2 * c / p * cos(asin(p / (2 * c) * (1 / sin(180 / z2) - 1 / sin(180 / z1)))) + (z1 + z2) / 2 + (z2 - z1) / 180 * asin(p / (2 * c) * (1 / sin(180 / z2) - 1 / sin(180 / z1)))"],
        source TANGENTS,
        turns {
            "two terms": two_terms(c, p, z1, z2) => "You took both strands level and half of each sprocket; with unequal sprockets the strands slope and wrap further round the large one.";
            "centres once": length::length_exact(c, p, z1, z2).map(|l| l - c / p) => "You counted one strand; the chain runs there and back.";
            "all teeth": length::length_exact(c, p, z1, z2).map(|l| l + plain(f64::from(z1 + z2) / 2.0)) => "You added all the teeth; the chain lies on about half of each sprocket.";
        },
    }
    .method("The strand's angle to the line of centres is asin((D2 − D1)/(2C)); the tangents are C times its cosine, the arcs are counted in teeth."),
    relation! {
        "chain.links/even": "Number of links to fit",
        "chain.links": u32 = length::even_links(l),
        from { l: Ratio = "chain.length_pitches" },
        formula ["X = 2 * ceil((l - 0.05) / 2)"],
        source Source::published(super::BUDYNAS, "roller chain"),
        turns {
            "odd": whole(l) => "You rounded up to the next whole number; an odd one needs a weak offset link, so go on to the next even number.";
            "down": length::even_links(l).map(|n| n.saturating_sub(2)) => "You rounded down; the chain would be too short to close at these centres.";
            "nearest": (l.value.round()) as u32 => "You rounded to the nearest whole number; round up, and to an even number. Only 0.05 pitch over is let go.";
            "one pair more": length::even_links(l).map(|n| n + 2) => "You went one pair of links too far; take the first even number at or above the length. At most 0.05 pitch over an even number is let go.";
        },
    }
    .method("Round up to the next even number: an odd one needs an offset link, which is weaker. A few hundredths of a pitch over an even number, at most 0.05, are let go: centres are rounded, and the take-up gives the rest.")
    .limits("the 0.05 pitch is common practice, no source"),
    relation! {
        "chain.links/exact": "Number of links to fit, from the exact length",
        "chain.links": u32 = length::even_links(l),
        from { l: Ratio = "chain.length_exact" },
        formula ["X = 2 * ceil((l - 0.05) / 2)"],
        source Source::published(super::BUDYNAS, "roller chain"),
        turns {
            "odd": whole(l) => "You rounded up to the next whole number; an odd one needs a weak offset link, so go on to the next even number.";
            "down": length::even_links(l).map(|n| n.saturating_sub(2)) => "You rounded down; the chain would be too short to close at these centres.";
            "nearest": (l.value.round()) as u32 => "You rounded to the nearest whole number; round up, and to an even number. Only 0.05 pitch over is let go.";
        },
    }
    .method("Round up to the next even number: an odd one needs an offset link, which is weaker. A few hundredths of a pitch over an even number, at most 0.05, are let go: centres are rounded, and the take-up gives the rest.")
    .limits("the 0.05 pitch is common practice, no source")
    .rank(1)
    .question(),
    relation! {
        "chain.centres_taut/exact": "Centre distance for a whole number of links, exact",
        "chain.centres_taut": Length = length::centres_for_links_exact(x, p, z1, z2),
        from {
            x: u32 = "chain.links", p: Length = "chain.pitch",
            z1: u32 = "chain.teeth_small", z2: u32 = "chain.teeth_large",
        },
        formula [],
        source TANGENTS,
        turns {
            "equal sprockets": p * ((f64::from(x) - f64::from(z1 + z2) / 2.0) / 2.0) => "You worked as if the sprockets were equal; unequal ones take chain length away from the centres.";
            "not halved": length::centres_for_links_exact(x, p, z1, z2).map(|c| 2.0 * c) => "You did not halve; the chain runs there and back between the centres.";
            "all teeth": length::centres_for_links_exact(x.saturating_sub((z1 + z2) / 2), p, z1, z2) => "You took off all the teeth; the chain lies on about half of each sprocket.";
            "odd pair": length::centres_for_links_exact(x.saturating_sub(1), p, z1, z2) => "You counted one link too few.";
        },
    }
    .method("Change the centre distance until the exact length in pitches is the number of links.")
    .rank(1)
    .backwards(),
    relation! {
        "chain.centres_taut/three_term": "Centre distance for a whole number of links, three-term formula",
        "chain.centres_taut": Length = length::centres_for_links(x, p, z1, z2),
        from {
            x: u32 = "chain.links", p: Length = "chain.pitch",
            z1: u32 = "chain.teeth_small", z2: u32 = "chain.teeth_large",
        },
        formula ["C = p / 4 * (x - (z1 + z2) / 2 + sqrt((x - (z1 + z2) / 2)^2 - 8 * ((z2 - z1) / (2 * pi))^2))"],
        source THREE_TERM,
        turns {
            "equal sprockets": p * ((f64::from(x) - f64::from(z1 + z2) / 2.0) / 2.0) => "You worked as if the sprockets were equal; unequal ones take chain length away from the centres.";
            "two for four": length::centres_for_links(x, p, z1, z2).map(|c| 2.0 * c) => "You divided by two; the inverse formula has the pitch over four.";
            "all teeth": length::centres_for_links(x.saturating_sub((z1 + z2) / 2), p, z1, z2) => "You took off all the teeth; the chain lies on about half of each sprocket.";
            "not divided by two pi": length::centres_for_links(x, p, z1, z2).map(|_| {
                let a = f64::from(x) - f64::from(z1 + z2) / 2.0;
                let k = f64::from(z2) - f64::from(z1);
                p * ((a + (a * a - 8.0 * k * k).sqrt()) / 4.0)
            }) => "You left out the division by 2π under the root; divide the difference of the teeth by 2π before squaring.";
        },
    }
    .limits("differs from the exact centre distance by about 0.03 pitch at most at usual ratios")
    .inverse(),
    relation! {
        "chain.centres/set": "Centre distance at which the chain was last set",
        "chain.centres": Length = as_set(c, f, e, x, p, d1, d2),
        from {
            c: Length = "chain.centres_taut", f: Ratio = "chain.set_sag", e: Ratio = "chain.wear_set",
            x: u32 = "chain.links", p: Length = "chain.pitch", d1: Length = "chain.pitch_dia_small",
            d2: Length = "chain.pitch_dia_large",
        },
        formula [],
        source Derived("the sag set, its slack length, the wear by then, and the move of the shafts that goes with them"),
        turns {},
    }
    .method("Move the shafts from the centres at which the new chain is taut until the chain, worn as it then was, hangs to the sag set.")
    .model(),
    relation! {
        "chain.centres_pitches/quotient": "Centre distance in pitches",
        "chain.centres_pitches": Ratio = c / p,
        from { c: Length = "chain.centres", p: Length = "chain.pitch" },
        formula ["C = c / p"],
        source Derived("the definition"),
        turns {
            "span in pairs": c / p / 2.0 => "You counted pairs of links; divide by one pitch.";
            "teeth added" with { z1: u32 = "chain.teeth_small", z2: u32 = "chain.teeth_large" }: two_terms(c, p, z1, z2) => "You worked out the length of the whole chain; only the centre distance is wanted, in pitches.";
        },
    }
    .limits("30 to 50 usual, 80 at most without an idler"),
    relation! {
        "chain.span/tangent": "Free span between the sprockets",
        "chain.span": Length = length::free_span(c, d1, d2),
        from {
            c: Length = "chain.centres", d1: Length = "chain.pitch_dia_small", d2: Length = "chain.pitch_dia_large",
        },
        formula ["L = sqrt(c^2 - ((d2 - d1) / 2)^2)"],
        source TANGENTS,
        turns {
            "diameters": length::free_span(c, d1, d1 + 2.0 * (d2 - d1)) => "You took the difference of the diameters; the triangle has the difference of the radii as its short side.";
            "plus": 2.0 * c - length::free_span(c, d1, d2).unwrap_or(c) => "You added the squares; the centre distance is the long side of the triangle, so the span is shorter.";
            "gap": c - (d1 + d2) / 2.0 => "You took the gap between the sprockets; the span runs from tangent point to tangent point.";
            "both strands": length::free_span(c, d1, d2).map(|l| 2.0 * l) => "You took both strands; the free span is one of them.";
        },
    },
    relation! {
        "chain.tangent_angle/sine": "Angle between a strand and the line of centres",
        "chain.tangent_angle": Angle = length::tangent_angle(c, d1, d2),
        from {
            c: Length = "chain.centres", d1: Length = "chain.pitch_dia_small", d2: Length = "chain.pitch_dia_large",
        },
        formula ["a = asin(abs(d2 - d1) / (2 * c))"],
        source TANGENTS,
        turns {
            "diameters": length::tangent_angle(c, d1, d1 + 2.0 * (d2 - d1)) => "You took the difference of the diameters over the centres; it is the difference of the radii.";
            "doubled": length::tangent_angle(c, d1, d2).map(|a| 2.0 * a) => "You gave the angle between the two strands; the step wants one strand against the line of centres.";
        },
    },
    relation! {
        "chain.wrap_small/sine": "Wrap round the small sprocket",
        "chain.wrap_small": Angle = length::wrap_small(c, d1, d2),
        from {
            c: Length = "chain.centres", d1: Length = "chain.pitch_dia_small", d2: Length = "chain.pitch_dia_large",
        },
        formula ["w = 180 - 2 * asin((d2 - d1) / (2 * c))"],
        source TANGENTS,
        turns {
            "large": length::wrap_large(c, d1, d2) => "You added; that is the wrap round the large sprocket. The small one has less than half a turn.";
            "once": length::wrap_small(c, d1, d2).map(|w| (w + Angle::new::<degree>(180.0)) / 2.0) => "You took the strand's angle off once; it shortens the wrap at both ends.";
            "diameters": length::wrap_small(c, d1, d1 + 2.0 * (d2 - d1)) => "You took the difference of the diameters over the centres; it is the difference of the radii, over twice the centres with diameters.";
            "angle only": length::tangent_angle(c, d1, d2).map(|a| 2.0 * a) => "You gave the angle between the strands; the wrap is what it leaves of 180°.";
        },
    }
    .limits("at least 120°"),
    relation! {
        "chain.wrap_verdict/limit": "Verdict on the wrap",
        "chain.wrap_verdict": Choice = first_if(w.get::<degree>() >= LEAST_WRAP),
        from { w: Angle = "chain.wrap_small" },
        formula [],
        source CommonPractice,
        turns {
            "half a turn": first_if(w.get::<degree>() >= 180.0) => "You asked for half a turn; 120° on the small sprocket is enough.";
        },
    }
    .method("The wrap round the small sprocket must be at least 120°."),
];
