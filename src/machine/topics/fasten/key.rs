//! Keys: size by shaft, force, stress, length, and what governs it.

use drivecourse_calc::Error;
use drivecourse_calc::fasten::key::{self as calc, Section};
use drivecourse_calc::fasten::{key_sizes, key_sizes_metric};
use drivecourse_calc::units::{Force, Length, Pressure, Ratio, Torque, ratio};

use crate::relation::{Relation, relation};
use crate::source::Source;
use crate::source::Source::{CommonPractice, Derived};
use crate::typed::Choice;

const SIZES: Source = Source::published("DIN 6885-1 / ISO 773; ANSI B17.1", "key size by shaft diameter");
const MOTT: Source = Source::published("R. L. Mott, Machine Elements in Mechanical Design", "pp. 499-500");
const WENTZELL_15: Source = Source::published("T. H. Wentzell, Machine Design", "Example 15.1, p. 332");
const FITS: Source = Derived("a key fills its keyway but for its slack");
const WEAKEST: &str = "working length, without the round ends; the weakest of key, shaft and hub";

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

fn section(series: Choice, shaft: Length) -> Result<Section, Error> {
    match series.0 {
        0 => Ok(key_sizes_metric::row_for(shaft)?.section()),
        1 => key_sizes::section(shaft, key_sizes::Shape::Square),
        other => Err(Error::outside("key series", f64::from(other), 0.0, 1.0)),
    }
}

/// The section of the row below (`-1`) or above (`1`).
fn next_row(series: Choice, shaft: Length, step: isize) -> Result<Section, Error> {
    const NONE: Error = Error::none("key");
    let moved = |at: Option<usize>| at.and_then(|at| at.checked_add_signed(step)).ok_or(NONE);
    if series.0 == 0 {
        let own = key_sizes_metric::row_for(shaft)?;
        let at = moved(key_sizes_metric::ALL.iter().position(|row| row == own))?;
        return key_sizes_metric::ALL.get(at).map(key_sizes_metric::Row::section).ok_or(NONE);
    }
    let own = key_sizes::row_for(shaft)?;
    let at = moved(key_sizes::ALL.iter().position(|row| row == own))?;
    let row = key_sizes::ALL.get(at).ok_or(NONE)?;
    Ok(Section { width: row.width, height: row.width })
}

fn rectangular(series: Choice, shaft: Length) -> Result<Section, Error> {
    if series.0 == 1 {
        key_sizes::section(shaft, key_sizes::Shape::Rectangular)
    } else {
        Err(Error::none("rectangular key"))
    }
}

/// The key as long as its share of the longest one.
fn filled(shaft: Length, fill: Ratio) -> Result<Length, Error> {
    calc::longest(shaft).map(|longest| longest * fill)
}

fn governs(shear: Length, bearing: Length) -> Choice {
    Choice(u16::from(bearing >= shear))
}

fn verdict(length: Length, needed: Length) -> Choice {
    // A nanometre short is rounding in the last digits.
    Choice(u16::from(length.value < needed.value - 1e-9))
}

/// A key off by the last digits is on its limit.
fn fit(slack: Length, limit: Length) -> Choice {
    const ROUNDING: f64 = 1e-9;
    if slack.value < -ROUNDING { Choice(2) } else { Choice(u16::from(slack.value > limit.value + ROUNDING)) }
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "fasten.key_width/shaft": "Width of the key from the shaft",
        "fasten.key_width": Length = section(series, d).map(|key| key.width),
        from { series: Choice = "fasten.key_series", d: Length = "load.shaft_diameter" },
        formula [],
        source SIZES,
        turns {
            "row above": next_row(series, d, 1).map(|key| key.width) => "You took the row of the next larger shafts; a shaft at the upper end of a row still belongs to it.";
            "row below": next_row(series, d, -1).map(|key| key.width) => "You took the row of the next smaller shafts; each row begins over its first diameter.";
            "radius": section(series, d / 2.0).map(|key| key.width) => "You entered the table with the radius; it goes by the shaft's diameter.";
            "height": section(series, d).map(|key| key.height) => "You gave the key's height; the width goes across the keyway.";
        },
    }
    .lookup()
    .method("Look up the row whose range holds the shaft's diameter: over its first figure, up to and with its second.")
    .limits("metric keys: shafts over 6 up to 230 mm; inch square keys: over 5/16 up to 6 1/2 in preferred"),
    relation! {
        "fasten.key_height/shaft": "Height of the key from the shaft",
        "fasten.key_height": Length = section(series, d).map(|key| key.height),
        from { series: Choice = "fasten.key_series", d: Length = "load.shaft_diameter" },
        formula [],
        source SIZES,
        turns {
            "row above": next_row(series, d, 1).map(|key| key.height) => "You took the row of the next larger shafts; a shaft at the upper end of a row still belongs to it.";
            "row below": next_row(series, d, -1).map(|key| key.height) => "You took the row of the next smaller shafts; each row begins over its first diameter.";
            "radius": section(series, d / 2.0).map(|key| key.height) => "You entered the table with the radius; it goes by the shaft's diameter.";
            "width": section(series, d).map(|key| key.width) => "You gave the key's width; larger metric keys are lower than wide.";
            "half in the shaft": section(series, d).map(|key| key.height / 2.0) => "You gave the part that stands out of the shaft; the height is the whole key's.";
            "rectangular key": rectangular(series, d).map(|key| key.height) => "You took the rectangular key's height; the key is square.";
        },
    }
    .lookup()
    .method("Look up the row whose range holds the shaft's diameter. A square key is as high as wide."),
    relation! {
        "fasten.key_longest/shaft": "Longest key worth fitting",
        "fasten.key_longest": Length = calc::longest(d),
        from { d: Length = "load.shaft_diameter" },
        formula ["L = 1.5 * d"],
        source Source::published("R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design", "chapter 7"),
        turns {
            "radius": calc::longest(d / 2.0) => "You used the radius; the rule goes by the shaft's diameter.";
            "diameter itself": d => "You gave the shaft's diameter; the key may be one and a half times as long.";
            "divided": d / 1.5 => "You divided by one and a half; multiply by it.";
        },
    }
    .limits("a longer key does not share the load along its length; the hub's length may allow less"),
    relation! {
        "fasten.key_length/fill": "Length of the key fitted",
        "fasten.key_length": Length = filled(d, r),
        from { d: Length = "load.shaft_diameter", r: Ratio = "fasten.key_fill" },
        formula [],
        source CommonPractice,
        turns {},
    }
    .method("The share of the longest key that the hub leaves room for.")
    .model(),
    relation! {
        "fasten.key_force/torque": "Force on the key at the shaft's surface",
        "fasten.key_force": Force = calc::force(t, d),
        from { t: Torque = "drive.output_torque", d: Length = "load.shaft_diameter" },
        formula ["F[N] = 2 * t[N·m] / d[m]", "F[lbf] = 2 * t[lbf·in] / d[in]"],
        source Derived("statics: torque over the shaft's radius"),
        turns {
            "diameter for radius": calc::force(t, d * 2.0) => "You divided the torque by the diameter; its lever is the radius, so the force is twice that.";
            "radius for diameter": calc::force(t, d / 2.0) => "You put the radius where the formula wants the diameter; the 2 in it has halved the diameter already.";
            "motor torque" with { m: Torque = "drive.motor_torque" }: calc::force(m, d) => "You used the motor's torque; the key sits on the output shaft and carries its torque.";
            "sprocket" with { p: Length = "chain.pitch_dia_small" }: calc::force(t, p) => "You used the sprocket's pitch diameter; the key carries the force at the shaft's surface.";
        },
    },
    relation! {
        "fasten.key_shear/torque": "Shear stress in the key",
        "fasten.key_shear": Pressure = calc::shear_stress(t, d, w, l),
        from {
            t: Torque = "drive.output_torque", d: Length = "load.shaft_diameter", w: Length = "fasten.key_width",
            l: Length = "fasten.key_length",
        },
        formula ["τ[MPa] = 2000 * t[N·m] / (d[mm] * w[mm] * l[mm])", "τ[psi] = 2 * t[lbf·in] / (d[in] * w[in] * l[in])"],
        source MOTT,
        turns {
            "diameter for radius": calc::shear_stress(t, d * 2.0, w, l) => "You divided the torque by the diameter; its lever is the radius, so the stress is twice that.";
            "radius for diameter": calc::shear_stress(t, d / 2.0, w, l) => "You put the radius where the formula wants the diameter; the 2 in it has halved the diameter already.";
            "cross-section" with { h: Length = "fasten.key_height" }: calc::shear_stress(t, d, w, h) => "You used width times height; the key is sheared along its length, so use width times length.";
            "motor torque" with { m: Torque = "drive.motor_torque" }: calc::shear_stress(m, d, w, l) => "You used the motor's torque; the key sits on the output shaft and carries its torque.";
        },
    }
    .limits(WEAKEST),
    relation! {
        "fasten.key_bearing/torque": "Bearing stress between key and keyway",
        "fasten.key_bearing": Pressure = calc::bearing_stress(t, d, h, l),
        from {
            t: Torque = "drive.output_torque", d: Length = "load.shaft_diameter", h: Length = "fasten.key_height",
            l: Length = "fasten.key_length",
        },
        formula ["σ[MPa] = 4000 * t[N·m] / (d[mm] * h[mm] * l[mm])", "σ[psi] = 4 * t[lbf·in] / (d[in] * h[in] * l[in])"],
        source MOTT,
        turns {
            "whole height": calc::bearing_stress(t, d, h * 2.0, l) => "You used the key's whole height; only half of it bears in the shaft and half in the hub.";
            "radius for diameter": calc::bearing_stress(t, d / 2.0, h, l) => "You put the radius where the formula wants the diameter; the 4 in it has halved the diameter already.";
            "cross-section" with { w: Length = "fasten.key_width" }: calc::bearing_stress(t, d, h, w) => "You used width and height; the key bears along its length, over half its height.";
            "motor torque" with { m: Torque = "drive.motor_torque" }: calc::bearing_stress(m, d, h, l) => "You used the motor's torque; the key sits on the output shaft and carries its torque.";
        },
    }
    .limits("half the height taken in the shaft and half in the hub; working length, without the round ends"),
    relation! {
        "fasten.key_shear_strength/half": "Strength of the key in shear",
        "fasten.key_shear_strength": Pressure = s / 2.0,
        from { s: Pressure = "fasten.key_yield" },
        formula ["S = 0.5 * s"],
        source WENTZELL_15,
        turns {
            "tension strength": s => "You used the yield strength in tension; steel gives in shear at half of it.";
            "doubled": s * 2.0 => "You doubled the yield strength; steel gives in shear at half of it.";
        },
    }
    .limits("greatest-shear rule; the energy rule allows 0.577"),
    relation! {
        "fasten.key_length_shear/strength": "Key length that shear needs",
        "fasten.key_length_shear": Length = calc::length_for_shear(t, d, w, s, n),
        from {
            t: Torque = "drive.output_torque", n: Ratio = "fasten.key_factor", d: Length = "load.shaft_diameter",
            w: Length = "fasten.key_width", s: Pressure = "fasten.key_shear_strength",
        },
        formula [
            "L[mm] = 2000 * t[N·m] * n / (d[mm] * w[mm] * s[MPa])",
            "L[in] = 2 * t[lbf·in] * n / (d[in] * w[in] * s[psi])",
        ],
        source WENTZELL_15,
        turns {
            "factor left out": calc::length_for_shear(t, d, w, s, plain(1.0)) => "You left the factor of safety out; it makes the key longer.";
            "factor divided": calc::length_for_shear(t, d, w, s, plain(1.0)).map(|length| length / n) => "You divided by the factor of safety; it makes the key longer, so multiply.";
            "diameter for radius": calc::length_for_shear(t, d * 2.0, w, s, n) => "You divided the torque by the diameter; its lever is the radius, so the key is twice as long.";
            "radius for diameter": calc::length_for_shear(t, d / 2.0, w, s, n) => "You put the radius where the formula wants the diameter; the 2 in it has halved the diameter already.";
            "motor torque" with { m: Torque = "drive.motor_torque" }: calc::length_for_shear(m, d, w, s, n) => "You used the motor's torque; the key sits on the output shaft and carries its torque.";
        },
    }
    .limits(WEAKEST),
    relation! {
        "fasten.key_length_bearing/strength": "Key length that bearing needs",
        "fasten.key_length_bearing": Length = calc::length_for_bearing(t, d, h, s, n),
        from {
            t: Torque = "drive.output_torque", n: Ratio = "fasten.key_factor", d: Length = "load.shaft_diameter",
            h: Length = "fasten.key_height", s: Pressure = "fasten.key_yield",
        },
        formula [
            "L[mm] = 4000 * t[N·m] * n / (d[mm] * h[mm] * s[MPa])",
            "L[in] = 4 * t[lbf·in] * n / (d[in] * h[in] * s[psi])",
        ],
        source WENTZELL_15,
        turns {
            "whole height": calc::length_for_bearing(t, d, h * 2.0, s, n) => "You used the key's whole height; only half of it bears in the shaft and half in the hub.";
            "factor left out": calc::length_for_bearing(t, d, h, s, plain(1.0)) => "You left the factor of safety out; it makes the key longer.";
            "factor divided": calc::length_for_bearing(t, d, h, s, plain(1.0)).map(|length| length / n) => "You divided by the factor of safety; it makes the key longer, so multiply.";
            "shear strength" with { q: Pressure = "fasten.key_shear_strength" }: calc::length_for_bearing(t, d, h, q, n) => "You used the strength in shear; the keyway's side is pressed, so use the yield strength.";
            "motor torque" with { m: Torque = "drive.motor_torque" }: calc::length_for_bearing(m, d, h, s, n) => "You used the motor's torque; the key sits on the output shaft and carries its torque.";
        },
    }
    .limits(WEAKEST),
    relation! {
        "fasten.key_length_needed/greater": "Key length needed",
        "fasten.key_length_needed": Length = a.max(b),
        from { a: Length = "fasten.key_length_shear", b: Length = "fasten.key_length_bearing" },
        formula ["L = max(a, b)"],
        source Derived("both stresses must stay within their strength"),
        turns {
            "smaller": a.min(b) => "You took the shorter of the two lengths; the key must bear both, so take the longer.";
            "added": a + b => "You added the two lengths; the same length of key serves for both, so take the longer.";
            "mean": (a + b) / 2.0 => "You took the mean of the two lengths; the key must bear both, so take the longer.";
        },
    },
    relation! {
        "fasten.key_governs/greater": "Stress that sets the key's length",
        "fasten.key_governs": Choice = governs(a, b),
        from { a: Length = "fasten.key_length_shear", b: Length = "fasten.key_length_bearing" },
        formula [],
        source Derived("both stresses must stay within their strength"),
        turns {
            "shorter length": governs(b, a) => "You named the stress with the shorter length; the one that needs the longer key governs.";
            "always shear": Choice(0) => "You took shear for granted; compare the length that bearing needs.";
        },
    }
    .method("The stress that needs the longer key governs; when both need the same, it is called bearing."),
    relation! {
        "fasten.key_verdict/length": "Verdict on the key's length",
        "fasten.key_verdict": Choice = verdict(l, needed),
        from { l: Length = "fasten.key_length", needed: Length = "fasten.key_length_needed" },
        formula [],
        source Derived("both stresses must stay within their strength"),
        turns {
            "shear alone" with { a: Length = "fasten.key_length_shear" }: verdict(l, a) => "You judged by shear alone; bearing needs a longer key.";
            "bearing alone" with { b: Length = "fasten.key_length_bearing" }: verdict(l, b) => "You judged by bearing alone; shear needs a longer key.";
            "longest key" with { longest: Length = "fasten.key_longest" }: verdict(longest, needed) => "You judged the longest key worth fitting; the key fitted is shorter.";
            "factor left out" with { n: Ratio = "fasten.key_factor" }: verdict(l, needed / n) => "You left the factor of safety out of the length needed.";
        },
    }
    .method("Compare the working length fitted with the length needed; just as long is long enough."),
    relation! {
        "fasten.keyway/key": "Width of the hub's keyway as measured",
        "fasten.keyway": Length = w,
        from { w: Length = "fasten.key_width" },
        formula ["W = w"],
        source FITS,
        turns {},
    }
    .model()
    .limits("keyway cut to the width in the table"),
    relation! {
        "fasten.key_found/slack": "Width of the key as measured",
        "fasten.key_found": Length = w - s,
        from { w: Length = "fasten.keyway", s: Length = "fasten.key_slack" },
        formula ["W = w - s"],
        source FITS,
        turns {},
    }
    .model(),
    relation! {
        "fasten.key_slack/measured": "Slack of the key in its keyway",
        "fasten.key_slack": Length = w - f,
        from { w: Length = "fasten.keyway", f: Length = "fasten.key_found" },
        formula ["s = w - f"],
        source FITS,
        turns {
            "turned round": f - w => "You took the keyway off the key; slack is what the keyway has more, so it is the keyway less the key.";
            "one side": (w - f) / 2.0 => "You halved the slack for the two sides; a key lies against one side, and all the slack is at the other.";
            "height" with { h: Length = "fasten.key_height" }: w - h => "You took the key's height off; the key's width lies across the keyway.";
        },
    }
    .question()
    .limits("measured at both ends of the key; the narrower counts"),
    relation! {
        "fasten.key_fit/limit": "Verdict on the key's fit",
        "fasten.key_fit": Choice = fit(s, limit),
        from { s: Length = "fasten.key_slack", limit: Length = "fasten.slack_limit" },
        formula [],
        source CommonPractice,
        turns {
            "turned round": fit(-s, limit) => "You turned the sign; positive slack means that the key is narrower than its keyway.";
            "wide passes": if s.value < 0.0 { Choice(0) } else { fit(s, limit) } => "You let a key pass that is wider than its keyway; driven in, it bursts the hub or throws it off centre.";
            "loose passes": if s.value > 0.0 { Choice(0) } else { fit(s, limit) } => "You let a loose key pass; it rocks at every start and hammers its keyway wide.";
        },
    }
    .method("Slack below nought: too wide. Slack above the limit: too loose. From nought up to the limit it fits.")
    .limits("the limit is the course's own; the drawing's tolerances go before it"),
];
