//! Rim readings: bar sag, what they come to across each plane, the offset.

use drivecourse_calc::Error;
use drivecourse_calc::align::dials::{Clock, bar_sag};
use drivecourse_calc::align::rim_face::position;
use drivecourse_calc::units::{Length, length::meter};

use super::{CIRCLE, LOCKED, SEEN, set_up};
use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};

const HANGS: crate::source::Source =
    Derived("a hanging dial is pushed in by the sag at the top and drops away by it at the bottom");
const BLOCH: crate::source::Source =
    crate::source::Source::published("H. P. Bloch, F. K. Geitner, handbook (title not seen)", "p. 186");

/// Reading across the vertical of a dial set to nought at the top.
fn vertical(bottom: Length, sag: Length) -> Result<Length, Error> {
    Clock { bottom, ..Clock::default() }.without_sag(sag).map(|read| read.vertical())
}

fn horizontal(right: Length, left: Length) -> Length {
    Clock { right, left, ..Clock::default() }.horizontal()
}

/// Offset from a rim reading on the stationary hub; the face dial's circle does not matter to it.
fn standing(rim: Length) -> Result<Length, Error> {
    position(rim, Length::default(), &set_up(Length::new::<meter>(1.0))).map(|line| line.offset)
}

macro_rules! free_of_sag {
    ($id:literal, $title:literal, $gives:literal, $bottom:literal) => {
        relation! {
            $id: $title,
            $gives: Length = vertical(b, s),
            from { b: Length = $bottom, s: Length = "align.sag" },
            formula ["R = b + 2 * s"],
            source BLOCH,
            turns {
                "sag taken off": Ok(2.0 * b - vertical(b, s)?) => "You took the sag off; the bar drops away at the bottom and reads too low there, so add it.";
                "sag once": Ok((b + vertical(b, s)?) / 2.0) => "You added the sag once; it pushes in at the top and drops away at the bottom, so it counts twice.";
                "sag four times": vertical(b, 2.0 * s) => "You doubled the trial's reading; that reading is twice the sag already.";
                "sag left out": vertical(b, Length::default()) => "You left the bar's sag out; the dial reads twice the sag too low at the bottom.";
                "halved": Ok(vertical(b, s)? / 2.0) => "You halved the reading here; this step wants the whole reading, and the halving comes with the offset.";
            },
        }
        .limits("dial set to nought at 12 o'clock")
    };
}

macro_rules! across {
    ($id:literal, $title:literal, $gives:literal, $right:literal, $left:literal) => {
        relation! {
            $id: $title,
            $gives: Length = horizontal(r, l),
            from { r: Length = $right, l: Length = $left },
            formula ["R = l - r"],
            source CommonPractice,
            turns {
                "wrong sign": horizontal(l, r) => "You took 3 o'clock less 9 o'clock; it is 9 less 3.";
                "added": horizontal(-r, l) => "You added the two side readings; their difference shows the horizontal, their sum the vertical.";
                "one side": horizontal(Length::default(), l) => "You took one side only; the dial was set to nought at the top, not at 3 o'clock.";
                "sag added" with { s: Length = "align.sag" }: vertical(horizontal(r, l), s) => "You corrected the horizontal for sag; both sides sag alike, so it falls out of their difference.";
                "halved": horizontal(r, l) / 2.0 => "You halved the reading here; this step wants the whole reading, and the halving comes with the offset.";
            },
        }
        .limits(SEEN)
    };
}

macro_rules! rim_offset {
    ($id:literal, $title:literal, $gives:literal, $reading:literal) => {
        relation! {
            $id: $title,
            $gives: Length = standing(r),
            from { r: Length = $reading },
            formula ["y = r / 2"],
            source CIRCLE,
            turns {
                "not halved": Ok(2.0 * standing(r)?) => "You took the whole reading for the offset; the dial sweeps the offset twice, once on each side, so halve it.";
                "wrong sign": standing(-r) => "You turned the sign; read on the stationary hub, a positive reading means the movable shaft is high or towards 3 o'clock.";
                "quartered": Ok(standing(r)? / 2.0) => "You halved twice; half of the whole reading is the offset.";
                "not halved and turned": Ok(2.0 * standing(-r)?) => "You turned the sign and did not halve the reading; the offset is half the reading, with the reading's own sign.";
            },
        }
        .question()
        .limits(SEEN)
    };
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "align.sag/trial": "Sag of the bar from its trial on a stiff pipe",
        "align.sag": Length = bar_sag(b),
        from { b: Length = "align.trial" },
        formula ["s = -b / 2"],
        source HANGS,
        turns {
            "not halved": Ok(2.0 * bar_sag(b)?) => "You took the whole trial reading for the sag; from top to bottom the dial drops away by twice the sag.";
            "wrong sign": bar_sag(b).map(|sag| -sag) => "You kept the minus sign; the trial reads negative because the bar hangs down, and the sag is how far.";
            "whole reading": b => "You gave the trial's reading; the sag is half of it, counted positive.";
            "quartered": Ok(bar_sag(b)? / 2.0) => "You halved twice; half of the trial's reading is the sag.";
        },
    }
    .method("Clamp the bar to a stiff straight pipe as it will be on the shaft, set the dial to nought at the top, turn the pipe over and read.")
    .limits("the same bar, dial and span as on the machine"),
    free_of_sag!("align.rim_v/sag", "Rim reading across the vertical, free of sag", "align.rim_v", "align.rim_bottom"),
    across!("align.rim_h/sides", "Rim reading across the horizontal", "align.rim_h", "align.rim_right", "align.rim_left"),
    free_of_sag!("align.own_v/sag", "Movable hub's rim reading across the vertical, free of sag", "align.own_v", "align.own_bottom"),
    across!("align.own_h/sides", "Movable hub's rim reading across the horizontal", "align.own_h", "align.own_right", "align.own_left"),
    relation! {
        "align.rim_left/closure": "Rim reading at 9 o'clock from the other three",
        "align.rim_left": Length = Clock { right: r, bottom: b, ..Clock::default() }.closure(),
        from { r: Length = "align.rim_right", b: Length = "align.rim_bottom" },
        formula ["l = b - r"],
        source CIRCLE,
        turns {
            "mirrored": r => "You took the other side's reading; the two sides together come to the bottom reading, they need not be alike.";
            "wrong sign": -r => "You turned the other side's sign; the two sides together come to the bottom reading.";
            "added": Clock { right: -r, bottom: b, ..Clock::default() }.closure() => "You added the readings; top and bottom together equal the two sides together.";
            "half the bottom": b / 2.0 => "You took half the bottom reading; that holds only where the shafts are in line sideways.";
        },
    }
    .question()
    .method(LOCKED)
    .limits("holds with and without sag; if a read fourth value misses it by more than a division or two, read again"),
    rim_offset!("align.offset_v/rim", "Vertical offset from the rim reading", "align.offset_v", "align.rim_v"),
    rim_offset!("align.offset_h/rim", "Horizontal offset from the rim reading", "align.offset_h", "align.rim_h"),
];
