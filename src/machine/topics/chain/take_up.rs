//! Moving the shafts to bring the sag to what is wanted.

use drivecourse_calc::chain::{sag, take_up};
use drivecourse_calc::units::{Angle, Length, angle::revolution};

use super::{first_if, plain};
use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};
use crate::typed::{Choice, Turns};

fn turns(angle: Angle) -> Turns {
    Turns(plain(angle.get::<revolution>()))
}

fn angle(turns: Turns) -> Angle {
    Angle::new::<revolution>(turns.0.value)
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "chain.take_up_move/excess": "Move of the shafts to the sag wanted",
        "chain.take_up_move": Length = take_up::move_for_excess_change(e - w, c, d1, d2),
        from {
            e: Length = "chain.excess", w: Length = "chain.excess_wanted", c: Length = "chain.centres",
            d1: Length = "chain.pitch_dia_small", d2: Length = "chain.pitch_dia_large",
        },
        formula ["m = (e - w) / (2 * cos(asin((d2 - d1) / (2 * c))))"],
        source Derived("both strands grow by the move times the cosine of their angle to the line of centres"),
        turns {
            "sag difference" with { s: Length = "chain.sag", sw: Length = "chain.sag_wanted" }: s - sw => "You moved the shafts by the difference of the sags; a small move changes the sag many times over, so go through the slack lengths.";
            "half the sag difference" with { s: Length = "chain.sag", sw: Length = "chain.sag_wanted" }: (s - sw) / 2.0 => "You moved the shafts by half the difference of the sags; go through the slack lengths, not the sags.";
            "whole slack": take_up::move_for_excess_change(e - w, c, d1, d2).map(|m| 2.0 * m) => "You moved by the whole difference of the slack; each move takes slack from both strands, so half is enough.";
            "all of it": take_up::move_for_excess_change(e, c, d1, d2) => "You took all the slack out; leave the slack that the wanted sag needs.";
            "other way": take_up::move_for_excess_change(w - e, c, d1, d2) => "You moved the wrong way; apart takes slack out, together puts it in.";
            "wanted only": take_up::move_for_excess_change(w, c, d1, d2) => "You moved by half the slack wanted; it is the difference from the slack found that counts.";
        },
    }
    .method("Apart counts positive, together negative. With nearly equal sprockets the move is half the change of the slack.")
    .limits("the other strand straight, so that all the slack lies in one; keep the shafts parallel and turn all screws alike"),
    relation! {
        "chain.screw_turns/lead": "Turns of the adjusting screw",
        "chain.screw_turns": Turns = take_up::screw_turns(m, l).map(turns),
        from { m: Length = "chain.take_up_move", l: Length = "chain.screw_lead" },
        formula ["N = m / l"],
        source Derived("one turn moves the nut by one lead"),
        turns {
            "upside down": take_up::screw_turns(l, m).map(turns) => "You divided the lead by the move; the turns are the move divided by the lead.";
            "doubled": take_up::screw_turns(2.0 * m, l).map(turns) => "You doubled the turns; the shaft moves by the whole travel of the screw.";
            "halved": take_up::screw_turns(m / 2.0, l).map(turns) => "You halved the turns; the move of the shafts already allows for the two strands.";
            "sag difference" with { s: Length = "chain.sag", sw: Length = "chain.sag_wanted" }: take_up::screw_turns(s - sw, l).map(turns) => "You turned the screw by the difference of the sags; it is the move of the shafts that counts.";
        },
    },
    relation! {
        "chain.move_made/lead": "Move made by turning the screw",
        "chain.move_made": Length = take_up::move_from_turns(angle(n), l),
        from { n: Turns = "chain.turns_made", l: Length = "chain.screw_lead" },
        formula ["m = n * l"],
        source Derived("one turn moves the nut by one lead"),
        turns {
            "divided": l / n.0.value => "You divided the lead by the turns; each turn moves the shaft by one lead.";
            "halved": take_up::move_from_turns(angle(n), l / 2.0) => "You halved the move; the shaft moves by the whole travel of the screw.";
            "doubled": take_up::move_from_turns(angle(n), 2.0 * l) => "You doubled the move; the shaft moves by the travel of the screw, the slack by about twice that.";
        },
    }
    .limits("all screws turned alike"),
    relation! {
        "chain.excess_after/move": "Slack length after the move",
        "chain.excess_after": Length = take_up::excess_after_move(e, m, c, d1, d2),
        from {
            e: Length = "chain.excess", m: Length = "chain.move_made", c: Length = "chain.centres",
            d1: Length = "chain.pitch_dia_small", d2: Length = "chain.pitch_dia_large",
        },
        formula ["e1 = e - 2 * m * cos(asin((d2 - d1) / (2 * c)))"],
        source Derived("both strands grow by the move times the cosine of their angle to the line of centres"),
        turns {
            "one strand": take_up::excess_after_move(e, m / 2.0, c, d1, d2) => "You took the move off once; both strands grow, so the slack loses about twice the move.";
            "added": take_up::excess_after_move(e, -m, c, d1, d2) => "You added; moving the shafts apart takes slack out.";
            "taken only": take_up::excess_taken(m, c, d1, d2) => "You gave the slack taken out; the step wants what is left.";
            "not moved": e => "You left the move out; the slack after it is wanted.";
        },
    }
    .limits("the other strand straight, so that all the slack lies in one"),
    relation! {
        "chain.sag_after/excess": "Sag after the move",
        "chain.sag_after": Length = sag::sag_from_excess_gravity(e, l),
        from { e: Length = "chain.excess_after", l: Length = "chain.span" },
        formula ["s = sqrt(3 * e * l / 8)"],
        source Derived("first term of the arc length of a flat parabola"),
        turns {
            "linear" with { before: Length = "chain.excess", found: Length = "chain.sag" }: found * (e / before) => "You scaled the sag in step with the slack; the sag goes with its square root.";
            "move taken off" with { found: Length = "chain.sag", m: Length = "chain.move_made" }: found - m => "You took the move off the sag; go through the slack length, for a small move changes the sag many times over.";
            "pressed": sag::sag_pressed_from_excess(e, l) => "You used the formula for a strand pressed to two straight halves; this one hangs in a curve.";
            "before" with { before: Length = "chain.excess" }: sag::sag_from_excess_gravity(before, l) => "You used the slack before the move.";
        },
    }
    .limits("sag up to about 5 % of the span: within 0.5 %; the span hardly changes with the move"),
    relation! {
        "chain.take_up_verdict/travel": "Whether the take-up reaches",
        "chain.take_up_verdict": Choice = first_if(m <= left),
        from { m: Length = "chain.take_up_move", left: Length = "chain.take_up_left" },
        formula [],
        source CommonPractice,
        turns {
            "sag difference" with { s: Length = "chain.sag", sw: Length = "chain.sag_wanted" }: first_if(s - sw <= left) => "You compared the difference of the sags with the travel left; it is the move of the shafts that counts.";
            "whole slack": first_if(2.0 * m <= left) => "You compared the whole change of slack with the travel left; the shafts move by about half of it.";
            "backwards": first_if(m > left) => "You read the comparison backwards; the travel left must be at least the move.";
        },
    }
    .method("The travel left must be at least the move. If it is not, two links come out, or a worn chain is replaced.")
    .limits("take-up travel of at least two pitches in all"),
];
