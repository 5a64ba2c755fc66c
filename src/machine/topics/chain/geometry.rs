//! The chain's table values, sprocket diameters, speeds, chordal variation.

use core::f64::consts::PI;

use drivecourse_calc::chain::sprocket;
use drivecourse_calc::math;
use drivecourse_calc::units::{AngularVelocity, Force, Length, LinearMassDensity, Ratio, Velocity};

use super::{BUDYNAS, chain, next_chain, plain};
use crate::relation::{Relation, relation};
use crate::source::Source::{self, Derived};
use crate::typed::{Choice, Typed};

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "chain.pitch/table": "Pitch from the chain's number",
        "chain.pitch": Length = chain(size).map(|chain| chain.pitch),
        from { size: Choice = "chain.size" },
        formula [],
        source Source::published("ASME B29.1-2011, DIN 8187", "table of dimensions (inch and B series)"),
        turns {
            "roller": chain(size).map(|chain| chain.roller_diameter) => "You took the roller's diameter; the pitch is the distance from pin to pin.";
            "width": chain(size).map(|chain| chain.inside_width) => "You took the width between the inner plates; the pitch is the distance from pin to pin.";
            "doubled": chain(size).map(|chain| 2.0 * chain.pitch) => "You counted two pitches as one; the pitch runs from one pin to the very next, not from one outer link to the next.";
        },
    }
    .lookup()
    .method("The figures before the last are eighths of an inch (60: 6/8 in); before a B they are sixteenths (12B: 12/16 in)."),
    relation! {
        "chain.mass/table": "Mass of the chain per length from its number",
        "chain.mass": LinearMassDensity = chain(size).map(|chain| chain.mass * f64::from(n)),
        from { size: Choice = "chain.size", n: u32 = "chain.strands" },
        formula [],
        source Source::published(
            "R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design; DIN 8187",
            "Table 17-19 (inch series); table of dimensions (B series)",
        ),
        turns {
            "row below": next_chain(size).map(|chain| chain.mass * f64::from(n)) => "You read the row of the next larger chain.";
            "one strand": chain(size).map(|chain| chain.mass) => "You took the mass of one strand; each strand of the chain weighs as much.";
        },
    }
    .lookup()
    .method("Look the chain's number up in the table of chains; each strand weighs as much again.")
    .limits("lists differ by up to 5 % in the inch series and 10 % in the B series, and give chains of several strands a little less or more than so many times one; 140 and 160 from memory"),
    relation! {
        "chain.breaking_load/table": "Least breaking load from the chain's number",
        "chain.breaking_load": Force = chain(size).map(|chain| chain.breaking_load_of(n)),
        from { size: Choice = "chain.size", n: u32 = "chain.strands" },
        formula [],
        source Source::published("ASME B29.1-2011", "least ultimate tensile strength"),
        turns {
            "row below": next_chain(size).map(|chain| chain.breaking_load_of(n)) => "You read the row of the next larger chain.";
            "one strand": chain(size).map(|chain| chain.breaking_load) => "You took one strand; the chain has more, and breaks at more.";
        },
    }
    .lookup()
    .method("Look the chain's number and its strands up in the table of chains. In the inch series each strand counts in full; in the B series two or three carry less than so many times one.")
    .limits("B series from memory of ISO 606:2004; four strands and more in proportion to three"),
    relation! {
        "chain.pitch_dia_small/sine": "Pitch diameter of the small sprocket",
        "chain.pitch_dia_small": Length = sprocket::pitch_diameter(p, z),
        from { p: Length = "chain.pitch", z: u32 = "chain.teeth_small" },
        formula ["D = p / sin(180 / z)"],
        source Source::published("ASME B29.1", "sprocket pitch diameter"),
        turns {
            "radius": sprocket::pitch_diameter(p, z).map(|d| d / 2.0) => "You gave the radius; the step wants the diameter.";
            "outside": sprocket::outside_diameter(p, z) => "You worked out the outside diameter over the tooth tips; the pitch circle runs through the pin centres.";
            "whole turn": p / math::sin(2.0 * PI / f64::from(z)) => "You divided 360° by the teeth; the formula wants half a tooth's angle, 180°/z.";
            "no pi": p * f64::from(z) => "You multiplied pitch by teeth, which goes once round the sprocket; the diameter is less by a factor of about π.";
            "large" with { z2: u32 = "chain.teeth_large" }: sprocket::pitch_diameter(p, z2) => "You took the teeth of the large sprocket; this is the small one.";
        },
    },
    relation! {
        "chain.pitch_dia_large/sine": "Pitch diameter of the large sprocket",
        "chain.pitch_dia_large": Length = sprocket::pitch_diameter(p, z),
        from { p: Length = "chain.pitch", z: u32 = "chain.teeth_large" },
        formula ["D = p / sin(180 / z)"],
        source Source::published("ASME B29.1", "sprocket pitch diameter"),
        turns {
            "radius": sprocket::pitch_diameter(p, z).map(|d| d / 2.0) => "You gave the radius; the step wants the diameter.";
            "whole turn": p / math::sin(2.0 * PI / f64::from(z)) => "You divided 360° by the teeth; the formula wants half a tooth's angle, 180°/z.";
            "no pi": p * f64::from(z) => "You multiplied pitch by teeth, which goes once round the sprocket; the diameter is less by a factor of about π.";
            "small" with { z1: u32 = "chain.teeth_small" }: sprocket::pitch_diameter(p, z1) => "You took the teeth of the small sprocket; this is the large one.";
        },
    },
    relation! {
        "chain.outside_dia_small/cotangent": "Outside diameter of the small sprocket",
        "chain.outside_dia_small": Length = sprocket::outside_diameter(p, z),
        from { p: Length = "chain.pitch", z: u32 = "chain.teeth_small" },
        formula ["D = p * (0.6 + cot(180 / z))"],
        source Source::published("ASME B29.1", "approximate outside diameter"),
        turns {
            "pitch circle": sprocket::pitch_diameter(p, z) => "You worked out the pitch diameter; the teeth stand out above the pitch circle.";
            "no 0.6": sprocket::outside_diameter(p, z).map(|d| d - 0.6 * p) => "You left out the 0.6; the teeth stand out above the chord by that share of the pitch.";
            "radius": sprocket::outside_diameter(p, z).map(|d| d / 2.0) => "You gave the radius; the step wants the diameter.";
        },
    }
    .limits("turned sprocket, approximate"),
    relation! {
        "chain.ratio/teeth": "Speed ratio from the teeth",
        "chain.ratio": Ratio = sprocket::ratio(z1, z2),
        from { z1: u32 = "chain.teeth_small", z2: u32 = "chain.teeth_large" },
        formula ["i = z2 / z1"],
        source Derived("each tooth takes one pitch on either sprocket"),
        turns {
            "inverted": sprocket::ratio(z2, z1) => "You turned the ratio upside down; the small sprocket drives, so the ratio is large teeth over small.";
            "difference": plain(f64::from(z2) - f64::from(z1)) => "You took the difference of the tooth counts; the ratio is the one divided by the other.";
        },
    },
    relation! {
        "chain.speed_small/shaft": "Speed of the small sprocket",
        "chain.speed_small": AngularVelocity = n,
        from { n: AngularVelocity = "drive.output_speed" },
        formula ["n1 = n"],
        source Derived("the small sprocket sits on the reducer's output shaft"),
        turns {
            "motor" with { m: AngularVelocity = "drive.motor_speed" }: m => "You took the motor's speed; the small sprocket sits on the reducer's output shaft and turns with it.";
            "large sprocket" with { z1: u32 = "chain.teeth_small", z2: u32 = "chain.teeth_large" }: sprocket::driven_speed(n, z1, z2) => "You brought in the chain ratio; it only changes the speed of the large sprocket.";
        },
    }
    .method("The small sprocket is keyed to the reducer's output shaft, so the two turn together."),
    relation! {
        "chain.speed_large/teeth": "Speed of the large sprocket",
        "chain.speed_large": AngularVelocity = sprocket::driven_speed(n, z1, z2),
        from {
            n: AngularVelocity = "chain.speed_small", z1: u32 = "chain.teeth_small", z2: u32 = "chain.teeth_large",
        },
        formula ["n2 = n * z1 / z2"],
        source Derived("each tooth takes one pitch on either sprocket"),
        turns {
            "inverted": sprocket::driven_speed(n, z2, z1) => "You turned the ratio upside down; the larger sprocket turns slower.";
            "motor" with { m: AngularVelocity = "drive.motor_speed" }: sprocket::driven_speed(m, z1, z2) => "You started from the motor's speed; the reducer comes between the motor and the chain.";
            "no ratio": n => "You left the ratio out; the chain carries its speed from one sprocket to the other, not its turns.";
        },
    },
    relation! {
        "chain.velocity/teeth": "Speed of the chain from teeth, pitch and turns",
        "chain.velocity": Velocity = sprocket::chain_velocity(p, z, n),
        from { p: Length = "chain.pitch", z: u32 = "chain.teeth_small", n: AngularVelocity = "chain.speed_small" },
        formula ["v[m/s] = z * p[mm] * n[r/min] / 60000", "v[ft/min] = z * p[in] * n[r/min] / 12"],
        source Derived("one pitch passes for each tooth"),
        turns {
            "wrong teeth" with { z2: u32 = "chain.teeth_large" }: sprocket::chain_velocity(p, z2, n) => "You took the teeth of the large sprocket with the speed of the small one; teeth and speed must belong to the same sprocket.";
            "wrong speed" with { n2: AngularVelocity = "chain.speed_large" }: sprocket::chain_velocity(p, z, n2) => "You took the speed of the large sprocket with the teeth of the small one; teeth and speed must belong to the same sprocket.";
            "motor" with { m: AngularVelocity = "drive.motor_speed" }: sprocket::chain_velocity(p, z, m) => "You took the motor's speed; the small sprocket turns with the reducer's output shaft.";
            "pi": sprocket::chain_velocity(p, z, n).map(|v| PI * v) => "You multiplied by π as well; teeth times pitch is already once round the sprocket.";
        },
    },
    relation! {
        "chain.velocity/pitch_circle": "Speed of the chain from the pitch circle",
        "chain.velocity": Velocity = Velocity::from_base((d * n.value / 2.0).value),
        from { d: Length = "chain.pitch_dia_small", n: AngularVelocity = "chain.speed_small" },
        formula ["v[m/s] = pi * d[mm] * n[r/min] / 60000", "v[ft/min] = pi * d[in] * n[r/min] / 12"],
        source Derived("speed of a point on the pitch circle"),
        turns {
            "radius": Velocity::from_base((d * n.value / 4.0).value) => "You took the radius; once round the pitch circle is π times the diameter.";
            "no pi": Velocity::from_base((d * n.value / (2.0 * PI)).value) => "You left out π; each turn moves the chain by π times the diameter.";
            "large" with { d2: Length = "chain.pitch_dia_large" }: Velocity::from_base((d2 * n.value / 2.0).value) => "You took the diameter of the large sprocket with the speed of the small one; both must belong to the same sprocket.";
            "motor" with { m: AngularVelocity = "drive.motor_speed" }: Velocity::from_base((d * m.value / 2.0).value) => "You took the motor's speed; the small sprocket turns with the reducer's output shaft.";
        },
    }
    .limits("the chain lies on the sprocket as a polygon: up to 1 % more than teeth times pitch from 13 teeth")
    .rank(1)
    .question(),
    relation! {
        "chain.chordal/radius": "Chordal variation as the drop of the radius",
        "chain.chordal": Ratio = sprocket::chordal_variation_radius(z),
        from { z: u32 = "chain.teeth_small" },
        formula ["c[] = 1 - cos(180 / z)"],
        source Derived("a polygon in its circle"),
        turns {
            "whole turn": plain(1.0 - math::cos(2.0 * PI / f64::from(z))) => "You divided 360° by the teeth; the formula wants half a tooth's angle, 180°/z.";
            "large" with { z2: u32 = "chain.teeth_large" }: sprocket::chordal_variation_radius(z2) => "You took the teeth of the large sprocket; the small one makes the chain run unevenly.";
            "cosine": sprocket::chordal_variation_radius(z).map(|c| plain(1.0) - c) => "You gave the cosine itself; the variation is what it lacks to one.";
        },
    },
    relation! {
        "chain.chordal/range": "Chordal variation as the range of the chain speed over its mean",
        "chain.chordal": Ratio = sprocket::chordal_variation_range(z),
        from { z: u32 = "chain.teeth_small" },
        formula ["c[] = pi / z * (1 / sin(180 / z) - cot(180 / z))"],
        source Source::published(BUDYNAS, "Eq. 17-31 (number from memory)"),
        turns {
            "large" with { z2: u32 = "chain.teeth_large" }: sprocket::chordal_variation_range(z2) => "You took the teeth of the large sprocket; the small one makes the chain run unevenly.";
        },
    }
    .limits("a second definition, a few parts in a hundred above the drop of the radius")
    .rank(1)
    .question(),
];
