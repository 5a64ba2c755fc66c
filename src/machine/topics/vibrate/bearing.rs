//! Frequencies of the output shaft's bearing.

use drivecourse_calc::Error;
use drivecourse_calc::units::{Angle, AngularVelocity, Frequency, Length, Ratio, ratio};
use drivecourse_calc::vibrate::bearing::{Geometry, Orders, orders, quick_orders};
use drivecourse_calc::vibrate::orders::shaft_frequency;

use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};

const ROLLING: crate::Source = Derived("rolling without slip of the elements on both rings, outer ring at rest");
const QUICK: &str = "good to about 20 %, to know where to look; the bearing's own dimensions decide";
const SLIP: &str = "real bearings run 1 to 3 % off for slip; look 3 % to either side";

fn of(elements: u32, element_diameter: Length, pitch_diameter: Length, contact_angle: Angle) -> Result<Orders, Error> {
    orders(&Geometry { elements, element_diameter, pitch_diameter, contact_angle })
}

/// So many events for each turn of the shaft.
fn times(order: Ratio, speed: AngularVelocity) -> Result<Frequency, Error> {
    Ok(shaft_frequency(speed)? * order.value)
}

/// So many events for each element of the bearing and each turn of the shaft.
fn each(elements: u32, share: f64, speed: AngularVelocity) -> Result<Frequency, Error> {
    times(plain(f64::from(elements) * share), speed)
}

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

/// An angle of nought: the contact angle left out.
fn straight(angle: Angle) -> Angle {
    angle * 0.0
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "vibrate.order_cage/geometry": "Cage order of the bearing",
        "vibrate.order_cage": Ratio = of(3, d, pitch, a).map(|o| o.cage),
        from { d: Length = "vibrate.element_dia", pitch: Length = "vibrate.bearing_pitch_dia", a: Angle = "vibrate.contact_angle" },
        formula ["o = (1 - d / pitch * cos(a[°])) / 2"],
        source ROLLING,
        turns {
            "plus for minus": of(3, d, pitch, a).map(|o| plain(1.0 - o.cage.value)) => "You added the ratio of the diameters; with the outer ring at rest the cage runs slower than half the shaft.";
            "not halved": of(3, d, pitch, a).map(|o| o.cage * 2.0) => "You did not halve; the cage runs at somewhat less than half the shaft's speed.";
            "radius": of(3, d / 2.0, pitch, a).map(|o| o.cage) => "You used half the element's diameter with the whole pitch diameter; both are diameters.";
        },
    },
    relation! {
        "vibrate.order_outer/geometry": "Outer-ring order of the bearing",
        "vibrate.order_outer": Ratio = of(n, d, pitch, a).map(|o| o.outer),
        from {
            n: u32 = "vibrate.elements", d: Length = "vibrate.element_dia", pitch: Length = "vibrate.bearing_pitch_dia",
            a: Angle = "vibrate.contact_angle",
        },
        formula ["o = n / 2 * (1 - d / pitch * cos(a[°]))"],
        source ROLLING,
        turns {
            "inner ring": of(n, d, pitch, a).map(|o| o.inner) => "You used plus, which is the inner ring; the outer ring takes minus.";
            "angle left out": of(n, d, pitch, straight(a)).map(|o| o.outer) => "You left out the contact angle; its cosine belongs to the ratio of the diameters.";
            "not halved": of(n, d, pitch, a).map(|o| o.outer * 2.0) => "You did not halve the number of elements.";
            "cage": of(n, d, pitch, a).map(|o| o.cage) => "You left out the number of elements; each of them passes the spot once in a turn of the cage.";
            "radius": of(n, d / 2.0, pitch, a).map(|o| o.outer) => "You used half the element's diameter with the whole pitch diameter; both are diameters.";
        },
    },
    relation! {
        "vibrate.order_inner/geometry": "Inner-ring order of the bearing",
        "vibrate.order_inner": Ratio = of(n, d, pitch, a).map(|o| o.inner),
        from {
            n: u32 = "vibrate.elements", d: Length = "vibrate.element_dia", pitch: Length = "vibrate.bearing_pitch_dia",
            a: Angle = "vibrate.contact_angle",
        },
        formula ["o = n / 2 * (1 + d / pitch * cos(a[°]))"],
        source ROLLING,
        turns {
            "outer ring": of(n, d, pitch, a).map(|o| o.outer) => "You used minus, which is the outer ring; the inner ring turns against the cage and takes plus.";
            "angle left out": of(n, d, pitch, straight(a)).map(|o| o.inner) => "You left out the contact angle; its cosine belongs to the ratio of the diameters.";
            "not halved": of(n, d, pitch, a).map(|o| o.inner * 2.0) => "You did not halve the number of elements.";
            "elements left out": of(n, d, pitch, a).map(|o| plain(1.0 - o.cage.value)) => "You left out the number of elements; each of them passes the spot.";
        },
    },
    relation! {
        "vibrate.order_spin/geometry": "Spin order of the rolling elements",
        "vibrate.order_spin": Ratio = of(3, d, pitch, a).map(|o| o.spin),
        from { d: Length = "vibrate.element_dia", pitch: Length = "vibrate.bearing_pitch_dia", a: Angle = "vibrate.contact_angle" },
        formula ["o = pitch / (2 * d) * (1 - (d / pitch * cos(a[°]))^2)"],
        source ROLLING,
        turns {
            "both rings": of(3, d, pitch, a).map(|o| o.element) => "You counted both rings; a spot on an element strikes twice in a turn, and the spin is the single turn.";
            "not squared": of(3, d, pitch, a).map(|o| plain(o.cage.value * (pitch / d).value)) => "You did not square the ratio of the diameters.";
            "not halved": of(3, d, pitch, a).map(|o| o.spin * 4.0) => "You multiplied by 2 where the formula divides by it.";
            "bracket left out": plain((pitch / d).value / 2.0) => "You left out the bracket; the element rolls on both rings and spins a little slower.";
        },
    },
    relation! {
        "vibrate.cage/order": "Cage frequency",
        "vibrate.cage": Frequency = times(o, n),
        from { o: Ratio = "vibrate.order_cage", n: AngularVelocity = "drive.output_speed" },
        formula ["f[Hz] = o * n[r/min] / 60", "f[cpm] = o * n[r/min]"],
        source ROLLING,
        turns {
            "motor speed" with { nm: AngularVelocity = "drive.motor_speed" }: times(o, nm) => "You used the motor's speed; the bearing sits on the output shaft.";
            "divided": shaft_frequency(n).map(|f| f / o.value) => "You divided by the order; the order says how often it happens in a turn, so multiply.";
        },
    }
    .limits(SLIP),
    relation! {
        "vibrate.outer/order": "Outer-ring frequency",
        "vibrate.outer": Frequency = times(o, n),
        from { o: Ratio = "vibrate.order_outer", n: AngularVelocity = "drive.output_speed" },
        formula ["f[Hz] = o * n[r/min] / 60", "f[cpm] = o * n[r/min]"],
        source ROLLING,
        turns {
            "motor speed" with { nm: AngularVelocity = "drive.motor_speed" }: times(o, nm) => "You used the motor's speed; the bearing sits on the output shaft.";
            "inner ring" with { i: Ratio = "vibrate.order_inner" }: times(i, n) => "You used the order of the inner ring.";
            "every element" with { z: u32 = "vibrate.elements" }: times(plain(f64::from(z)), n) => "You multiplied by all the elements; the cage runs slower than half the shaft, so fewer of them pass in a turn.";
        },
    }
    .limits(SLIP),
    relation! {
        "vibrate.inner/order": "Inner-ring frequency",
        "vibrate.inner": Frequency = times(o, n),
        from { o: Ratio = "vibrate.order_inner", n: AngularVelocity = "drive.output_speed" },
        formula ["f[Hz] = o * n[r/min] / 60", "f[cpm] = o * n[r/min]"],
        source ROLLING,
        turns {
            "motor speed" with { nm: AngularVelocity = "drive.motor_speed" }: times(o, nm) => "You used the motor's speed; the bearing sits on the output shaft.";
            "outer ring" with { i: Ratio = "vibrate.order_outer" }: times(i, n) => "You used the order of the outer ring.";
            "every element" with { z: u32 = "vibrate.elements" }: times(plain(f64::from(z)), n) => "You multiplied by all the elements; the cage runs along with the shaft, so fewer of them pass in a turn.";
        },
    }
    .limits(SLIP),
    relation! {
        "vibrate.spin/order": "Spin frequency of the rolling elements",
        "vibrate.spin": Frequency = times(o, n),
        from { o: Ratio = "vibrate.order_spin", n: AngularVelocity = "drive.output_speed" },
        formula ["f[Hz] = o * n[r/min] / 60", "f[cpm] = o * n[r/min]"],
        source ROLLING,
        turns {
            "motor speed" with { nm: AngularVelocity = "drive.motor_speed" }: times(o, nm) => "You used the motor's speed; the bearing sits on the output shaft.";
            "both rings": times(o * 2.0, n) => "You counted both rings; that is what a spot on an element strikes, and the spin is half of it.";
        },
    }
    .limits(SLIP),
    relation! {
        "vibrate.outer_quick/elements": "Outer-ring frequency estimated from the number of elements",
        "vibrate.outer_quick": Frequency = times(quick_orders(z)?.outer, n),
        from { z: u32 = "vibrate.elements", n: AngularVelocity = "drive.output_speed" },
        formula ["f[Hz] = 0.4 * z * n[r/min] / 60", "f[cpm] = 0.4 * z * n[r/min]"],
        source CommonPractice,
        turns {
            "inner ring": times(quick_orders(z)?.inner, n) => "You took 0.6, which is for the inner ring; fewer than half the elements pass a spot of the outer one.";
            "every element": each(z, 1.0, n) => "You multiplied by all the elements; the cage runs slower than half the shaft, so fewer of them pass in a turn.";
            "half the elements": each(z, 0.5, n) => "You took half the elements; the cage runs a little slower than half the shaft, so 0.4 of them is nearer.";
            "cage": times(quick_orders(z)?.cage, n) => "You left out the number of elements; each of them passes the spot once in a turn of the cage.";
            "motor speed" with { nm: AngularVelocity = "drive.motor_speed" }: times(quick_orders(z)?.outer, nm) => "You used the motor's speed; the bearing sits on the output shaft.";
        },
    }
    .limits(QUICK),
    relation! {
        "vibrate.inner_quick/elements": "Inner-ring frequency estimated from the number of elements",
        "vibrate.inner_quick": Frequency = times(quick_orders(z)?.inner, n),
        from { z: u32 = "vibrate.elements", n: AngularVelocity = "drive.output_speed" },
        formula ["f[Hz] = 0.6 * z * n[r/min] / 60", "f[cpm] = 0.6 * z * n[r/min]"],
        source CommonPractice,
        turns {
            "outer ring": times(quick_orders(z)?.outer, n) => "You took 0.4, which is for the outer ring; the inner ring turns against the cage, so more than half the elements pass.";
            "every element": each(z, 1.0, n) => "You multiplied by all the elements; the cage runs along with the shaft, so fewer of them pass in a turn.";
            "half the elements": each(z, 0.5, n) => "You took half the elements; the inner ring turns a little faster than twice the cage, so 0.6 of them is nearer.";
            "elements left out": times(plain(0.6), n) => "You left out the number of elements; each of them passes the spot.";
            "motor speed" with { nm: AngularVelocity = "drive.motor_speed" }: times(quick_orders(z)?.inner, nm) => "You used the motor's speed; the bearing sits on the output shaft.";
        },
    }
    .limits(QUICK),
];
