//! Sag, pressed sag, movement, and the slack length behind them.

use drivecourse_calc::Error;
use drivecourse_calc::chain::{catenary, length, sag, wear};
use drivecourse_calc::units::{Length, Ratio};

use crate::relation::{Relation, relation};
use crate::source::Source::{self, CommonPractice, Derived};
use crate::typed::Choice;

const PARABOLA: Source = Derived("first term of the arc length of a flat parabola");
const TRIANGLE: Source = Derived("Pythagoras on the two halves of the strand, first term");
const SAME_SLACK: Source = Derived("the same slack length, hanging and pressed");

/// Too tight, within the window, too slack.
fn verdict(movement: Ratio, low: Ratio, high: Ratio) -> Choice {
    Choice(if movement < low {
        0
    } else if movement <= high {
        1
    } else {
        2
    })
}

/// Slack length of the worn chain at the centres it runs at.
fn as_found(links: u32, worn: Ratio, c: Length, p: Length, z1: u32, z2: u32) -> Result<Length, Error> {
    wear::excess_in_span(links, wear::worn_pitch(p, worn)?, length::loop_length(c, p, z1, z2)?)
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "chain.excess/loop": "Slack length of the worn chain at its centres",
        "chain.excess": Length = as_found(x, e, c, p, z1, z2),
        from {
            x: u32 = "chain.links", e: Ratio = "chain.wear", c: Length = "chain.centres", p: Length = "chain.pitch",
            z1: u32 = "chain.teeth_small", z2: u32 = "chain.teeth_large",
        },
        formula [],
        source Derived("length of the worn chain less the taut loop round the sprockets"),
        turns {},
    }
    .method("The worn chain less the taut loop at the centres: all the slack lies in one strand.")
    .model(),
    relation! {
        "chain.sag_wanted/span": "Sag wanted from the share of the span",
        "chain.sag_wanted": Length = sag::sag_of_span(f, l),
        from { f: Ratio = "chain.sag_share_wanted", l: Length = "chain.span" },
        formula ["s = f[] * l"],
        source CommonPractice,
        turns {
            "of centres" with { c: Length = "chain.centres" }: sag::sag_of_centres(f, c) => "You took the percentage of the centre distance; the step wants it of the free span.";
            "of half the span": sag::sag_of_span(f, l / 2.0) => "You took the percentage of half the span; the sag is measured at mid-span, but the percentage is of the whole span.";
            "of the chain" with { x: u32 = "chain.links", p: Length = "chain.pitch" }: sag::sag_of_span(f, p * f64::from(x)) => "You took the percentage of the whole chain's length; the step wants it of the free span.";
            "as movement": sag::sag_of_span(f, l).and_then(sag::movement_from_sag) => "You worked out the total movement of mid-span; the step wants the sag below the straightedge.";
            "from movement": sag::sag_of_span(f, l).and_then(sag::sag_from_movement) => "You took the percentage as total movement; here it is the sag below the straightedge.";
        },
    }
    .limits("near-horizontal drives move 4 to 6 % of the span in all when pulled up and down, which hangs as about 2 % of sag; half of it where the load shocks or reverses, or the drive stands upright"),
    relation! {
        "chain.sag/excess": "Sag from the slack length",
        "chain.sag": Length = sag::sag_from_excess_gravity(e, l),
        from { e: Length = "chain.excess", l: Length = "chain.span" },
        formula ["s = sqrt(3 * e * l / 8)"],
        source PARABOLA,
        turns {
            "pressed": sag::sag_pressed_from_excess(e, l) => "You used the formula for a strand pressed to two straight halves; this one hangs in a curve.";
            "upside down": sag::sag_from_excess_gravity(e, l).map(|s| s * 8.0 / 3.0) => "You turned the three eighths upside down.";
            "slack itself": e => "You took the slack length as the sag; a little slack makes a far deeper sag.";
            "half the slack": sag::sag_from_excess_gravity(e / 2.0, l) => "You shared the slack between both strands; the working strand is straight, so it all hangs in one.";
        },
    }
    .limits("sag up to about 5 % of the span: within 0.5 %"),
    relation! {
        "chain.sag/movement": "Hanging sag from the total movement",
        "chain.sag": Length = sag::sag_from_movement(m),
        from { m: Length = "chain.movement" },
        formula ["s = sqrt(3) / 4 * m"],
        source SAME_SLACK,
        turns {
            "half": sag::pressed_from_movement(m) => "You halved the movement; that is the pressed depth, and a freely hanging strand is 1.155 times less deep.";
            "whole": m => "You took the total movement as the sag; it goes both ways from the straight line and is pressed by hand.";
            "not halved": sag::sag_from_pressed(m) => "You took the total movement as the pressed depth; it goes both ways, so halve it first.";
            "wrong way": sag::pressed_from_movement(m).and_then(sag::pressed_from_sag) => "You multiplied by 1.155; the hanging sag is less than the pressed depth, so divide.";
        },
    }
    .inverse(),
    relation! {
        "chain.sag_share/span": "Sag as a share of the span",
        "chain.sag_share": Ratio = sag::sag_share(s, l),
        from { s: Length = "chain.sag", l: Length = "chain.span" },
        formula ["f[] = s / l"],
        source Derived("the definition"),
        turns {
            "of centres" with { c: Length = "chain.centres" }: sag::sag_share(s, c) => "You took the share of the centre distance; the step wants it of the free span.";
            "of half the span": sag::sag_share(s, l / 2.0) => "You took the share of half the span; it is of the whole span.";
            "movement" with { m: Length = "chain.movement" }: sag::sag_share(m, l) => "You took the total movement; the step wants the sag below the straightedge.";
        },
    },
    relation! {
        "chain.sag_pressed/excess": "Pressed depth from the slack length",
        "chain.sag_pressed": Length = sag::sag_pressed_from_excess(e, l),
        from { e: Length = "chain.excess", l: Length = "chain.span" },
        formula ["s = sqrt(e * l / 2)"],
        source TRIANGLE,
        turns {
            "hanging": sag::sag_from_excess_gravity(e, l) => "You used the formula for a hanging strand; pressed to two straight halves it goes deeper.";
            "slack itself": e => "You took the slack length as the depth; a little slack lets the strand go far deeper.";
            "not halved": sag::sag_pressed_from_excess(2.0 * e, l) => "You left out the half under the root.";
        },
    },
    relation! {
        "chain.sag_pressed/sag": "Pressed depth from the hanging sag",
        "chain.sag_pressed": Length = sag::pressed_from_sag(s),
        from { s: Length = "chain.sag" },
        formula ["p = 2 / sqrt(3) * s"],
        source SAME_SLACK,
        turns {
            "divided": sag::sag_from_pressed(s) => "You divided by 1.155; a strand pressed straight goes deeper than one that hangs.";
            "same": s => "You took the hanging sag; pressing the strand to two straight halves takes it 1.155 times as deep.";
            "doubled": sag::movement_from_pressed(s) => "You doubled the sag; the pressed depth is one way only.";
        },
    }
    .question(),
    relation! {
        "chain.sag_pressed/movement": "Pressed depth from the total movement",
        "chain.sag_pressed": Length = sag::pressed_from_movement(m),
        from { m: Length = "chain.movement" },
        formula ["p = m / 2"],
        source Derived("the strand moves as far above the straight line as below it"),
        turns {
            "whole": m => "You took the whole movement; it goes both ways from the straight line, so halve it.";
            "hanging": sag::sag_from_movement(m) => "You worked out the hanging sag; the step wants the depth when pressed by hand.";
        },
    }
    .inverse(),
    relation! {
        "chain.movement/pressed": "Total movement from the pressed depth",
        "chain.movement": Length = sag::movement_from_pressed(p),
        from { p: Length = "chain.sag_pressed" },
        formula ["m = 2 * p"],
        source Derived("the strand moves as far above the straight line as below it"),
        turns {
            "one side": p => "You took one side only; the total movement goes from pressed down to pulled up.";
            "from sag": sag::movement_from_sag(p) => "You multiplied by 2.31, which belongs to the hanging sag; the pressed depth is simply doubled.";
        },
    },
    relation! {
        "chain.movement/sag": "Total movement from the hanging sag",
        "chain.movement": Length = sag::movement_from_sag(s),
        from { s: Length = "chain.sag" },
        formula ["m = 4 / sqrt(3) * s"],
        source SAME_SLACK,
        turns {
            "doubled": sag::movement_from_pressed(s) => "You doubled the hanging sag; a hand presses the strand 1.155 times as deep before it is straight.";
            "same": s => "You took the hanging sag as the movement; the movement is pressed down and then pulled up, 2.31 times the sag.";
            "one side": sag::pressed_from_sag(s) => "You took one side only; the total movement goes both ways.";
        },
    }
    .question(),
    relation! {
        "chain.movement_share/span": "Total movement as a share of the span",
        "chain.movement_share": Ratio = sag::sag_share(m, l),
        from { m: Length = "chain.movement", l: Length = "chain.span" },
        formula ["f[] = m / l"],
        source Derived("the definition"),
        turns {
            "of centres" with { c: Length = "chain.centres" }: sag::sag_share(m, c) => "You took the share of the centre distance; the step wants it of the free span.";
            "half movement": sag::pressed_from_movement(m).and_then(|p| sag::sag_share(p, l)) => "You took half the movement; the window is for the total, both ways.";
            "doubled": sag::sag_share(2.0 * m, l) => "You doubled the movement or halved the span; the movement is already the total, and the share is of the whole span.";
            "hanging sag" with { s: Length = "chain.sag" }: sag::sag_share(s, l) => "You took the hanging sag; the step wants the total movement of mid-span.";
        },
    },
    relation! {
        "chain.window_share/window": "Place of the movement in its window",
        "chain.window_share": Ratio = (f - low) / (high - low).value,
        from {
            f: Ratio = "chain.movement_share", low: Ratio = "chain.movement_low", high: Ratio = "chain.movement_high",
        },
        formula [],
        source Derived("0 % at the least movement allowed, 100 % at the largest"),
        turns {},
    }
    .method("How far the movement lies above the least allowed, as a share of the width of the window.")
    .model(),
    relation! {
        "chain.sag_verdict/window": "Verdict on the movement",
        "chain.sag_verdict": Choice = verdict(f, low, high),
        from {
            f: Ratio = "chain.movement_share", low: Ratio = "chain.movement_low", high: Ratio = "chain.movement_high",
        },
        formula [],
        source CommonPractice,
        turns {
            "half movement": verdict(f / 2.0, low, high) => "You compared half the movement with the window; the window is for the total, both ways.";
            "doubled": verdict(2.0 * f, low, high) => "You doubled the movement; it is already the total, both ways.";
            "hanging sag" with { s: Length = "chain.sag", l: Length = "chain.span" }: sag::sag_share(s, l).map(|f| verdict(f, low, high)) => "You compared the hanging sag with the window; the window is for the total movement of mid-span.";
            "tight for slack": Choice(2 - verdict(f, low, high).0) => "You mixed up tight and slack; a movement above the window is too slack.";
        },
    }
    .method("Compare the total movement with the window: below it the chain is too tight, above it too slack.")
    .limits("4 to 6 % of the span near level; 2 to 3 % where the load shocks or reverses, or the drive stands upright"),
    relation! {
        "chain.wanted_verdict/window": "Verdict on the sag wanted",
        "chain.wanted_verdict": Choice = verdict(f / sag::SAG_OVER_MOVEMENT, low, high),
        from {
            f: Ratio = "chain.sag_share_wanted", low: Ratio = "chain.movement_low", high: Ratio = "chain.movement_high",
        },
        formula [],
        source CommonPractice,
        turns {
            "sag for movement": verdict(f, low, high) => "You compared the sag itself with the window; the window is for the total movement, 2.31 times the sag.";
            "one way": verdict(f / sag::SAG_OVER_MOVEMENT / 2.0, low, high) => "You compared the movement to one side with the window; the window is for the total, both ways.";
            "tight for slack": Choice(2 - verdict(f / sag::SAG_OVER_MOVEMENT, low, high).0) => "You mixed up tight and slack; a movement above the window is too slack.";
        },
    }
    .method("A chain set to the sag wanted moves 2.31 times that in all. Below the window it is set too tight, above it too slack.")
    .limits("a sheet's sag and its window for the movement have to agree"),
    relation! {
        "chain.excess/sag": "Slack length from the sag",
        "chain.excess": Length = sag::excess_gravity(s, l),
        from { s: Length = "chain.sag", l: Length = "chain.span" },
        formula ["e = 8 * s^2 / (3 * l)"],
        source PARABOLA,
        turns {
            "pressed": sag::excess_pressed(s, l) => "You used the formula for a strand pressed to two straight halves; this one hangs in a curve.";
            "no eight": sag::excess_gravity(s, l).map(|e| e / 8.0) => "You forgot the 8 in the slack formula.";
            "no three": sag::excess_gravity(s, l).map(|e| 3.0 * e) => "You forgot the 3 under the line.";
            "upside down": sag::excess_gravity(s, l).map(|e| e * 9.0 / 64.0) => "You turned the eight thirds upside down.";
            "sag itself": s => "You took the sag as the slack length; the slack is far smaller, 8δ²/(3L).";
            "movement" with { m: Length = "chain.movement" }: sag::excess_gravity(m, l) => "You put the total movement where the hanging sag belongs.";
        },
    }
    .limits("sag up to about 5 % of the span: within 0.5 %")
    .inverse(),
    relation! {
        "chain.excess/catenary": "Slack length from the sag, exact curve",
        "chain.excess": Length = catenary::excess_from_sag(s, l),
        from { s: Length = "chain.sag", l: Length = "chain.span" },
        formula [],
        source Derived("arc length of the catenary s = c sinh(x/c)"),
        turns {
            "pressed": sag::excess_pressed(s, l) => "You used the formula for a strand pressed to two straight halves; this one hangs in a curve.";
        },
    }
    .method("Find u from sinh²(u/2)/u = δ/L by trial; the slack is L (sinh u/u − 1).")
    .rank(1)
    .inverse(),
    relation! {
        "chain.excess/pressed": "Slack length from the pressed depth",
        "chain.excess": Length = sag::excess_pressed(p, l),
        from { p: Length = "chain.sag_pressed", l: Length = "chain.span" },
        formula ["e = 2 * p^2 / l"],
        source TRIANGLE,
        turns {
            "hanging": sag::excess_gravity(p, l) => "You used the formula for a hanging strand; this one is pressed to two straight halves.";
            "whole movement" with { m: Length = "chain.movement" }: sag::excess_pressed(m, l) => "You put the total movement in; the depth counts from the straight line, half of it.";
            "no two": sag::excess_pressed(p, l).map(|e| e / 2.0) => "You left out the 2, which counts the slack of one half of the strand; both halves are pressed.";
        },
    }
    .inverse(),
    relation! {
        "chain.excess_wanted/sag": "Slack length at the sag wanted",
        "chain.excess_wanted": Length = sag::excess_gravity(s, l),
        from { s: Length = "chain.sag_wanted", l: Length = "chain.span" },
        formula ["e = 8 * s^2 / (3 * l)"],
        source PARABOLA,
        turns {
            "linear" with { e: Length = "chain.excess", found: Length = "chain.sag" }: e * (s / found) => "You scaled the slack in step with the sag; the slack goes with the square of the sag.";
            "pressed": sag::excess_pressed(s, l) => "You used the formula for a strand pressed to two straight halves; this one hangs in a curve.";
            "no eight": sag::excess_gravity(s, l).map(|e| e / 8.0) => "You forgot the 8 in the slack formula.";
            "no three": sag::excess_gravity(s, l).map(|e| 3.0 * e) => "You forgot the 3 under the line.";
            "sag itself": s => "You took the sag as the slack length; the slack is far smaller, 8δ²/(3L).";
        },
    }
    .limits("sag up to about 5 % of the span: within 0.5 %"),
];
