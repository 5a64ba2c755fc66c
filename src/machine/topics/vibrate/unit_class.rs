//! Severity of a gear unit by its own class, which the maker or the contract names.

use drivecourse_calc::Error;
use drivecourse_calc::units::{Frequency, Velocity, frequency::hertz, velocity::millimeter_per_second};
use drivecourse_calc::vibrate::gear_unit_limits::{
    Class, Subclass, VELOCITY_RATINGS, acceptance_limit, displacement_share, ratings, velocity_limits, velocity_share,
};
use drivecourse_calc::vibrate::zone::Limits;

use crate::relation::{Relation, relation};
use crate::source::Source;
use crate::typed::Choice;

pub(super) const CLASSES: &[&str] = &["class I", "class II", "class III", "class IV"];
pub(super) const SUBCLASSES: &[&str] = &["a", "b, low power", "b, high power"];

const RATING: Source = Source::published("ISO 20816-9:2020", "Table 5 (as transcribed by others)");
const LIMITS: Source = Source::published("ISO 20816-9:2020", "Table 3 (as transcribed by others)");
const LINE: Source = Source::published("ISO 20816-9:2020", "Figure A.2 (as transcribed by others)");
const ACCEPTANCE: Source = Source::published("ISO 20816-9:2020", "clause 8.3 (as transcribed by others)");

fn mm_s(value: f64) -> Velocity {
    Velocity::new::<millimeter_per_second>(value)
}

/// The rating of a class and subclass, counted as [`CLASSES`] and [`SUBCLASSES`].
fn rated(class: Choice, subclass: Choice) -> Velocity {
    let class = [Class::I, Class::II, Class::III, Class::IV][usize::from(class.0.min(3))];
    let subclass = [Subclass::A, Subclass::BLowPower, Subclass::BHighPower][usize::from(subclass.0.min(2))];
    mm_s(ratings(class, subclass).velocity_rating)
}

/// The boundaries of a rating that may have been rounded on its way through a display.
fn limits(rating: Velocity) -> Result<Limits<Velocity>, Error> {
    let given = rating.get::<millimeter_per_second>();
    let near = VELOCITY_RATINGS.iter().find(|known| (given - **known).abs() < 0.02 * **known);
    velocity_limits(*near.ok_or(Error::none("rating"))?)
}

fn zone(reading: Velocity, rating: Velocity) -> Result<Choice, Error> {
    Ok(Choice(limits(rating)?.zone(reading)? as u16))
}

/// The share without its power.
fn straight(frequency: Frequency) -> f64 {
    let f = frequency.get::<hertz>();
    (f / 45.0).min(1590.0 / f).min(1.0)
}

fn accepted(reading: Velocity, most: Velocity) -> Choice {
    // A hair of room: a reading on the limit is on it in either system of units.
    Choice(u16::from(reading > most * (1.0 + 1e-9)))
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "vibrate.unit_rating/table": "Velocity rating of the gear unit",
        "vibrate.unit_rating": Velocity = rated(class, subclass),
        from { class: Choice = "vibrate.unit_class", subclass: Choice = "vibrate.unit_subclass" },
        formula [],
        source RATING,
        turns {
            "class above": rated(Choice(class.0 + 1), subclass) => "You read the row of the next class up.";
            "class below": rated(Choice(class.0.saturating_sub(1)), subclass) => "You read the row of the class below.";
            "low power": rated(class, Choice(1)) => "You read the row of subclass b, low power.";
            "high power": rated(class, Choice(2)) => "You read the row of subclass b, high power.";
        },
    }
    .method("From the table by class and subclass. Subclasses a and b, low power: I 3.15, II 5, III 8 mm/s (0.124, 0.197, 0.315 in/s), IV 20 mm/s (0.787 in/s) for a and 12.5 mm/s (0.492 in/s) for b, low power. Subclass b, high power: 5, 8, 12.5, 20 mm/s (0.197, 0.315, 0.492, 0.787 in/s).")
    .limits("the class is named by the maker or in the contract; it is not guessed from the power")
    .lookup(),
    relation! {
        "vibrate.unit_ab/rating": "Limit between zones A and B of the gear unit",
        "vibrate.unit_ab": Velocity = limits(r).map(|l| l.a_b),
        from { r: Velocity = "vibrate.unit_rating" },
        formula [],
        source LIMITS,
        turns {
            "rating itself": r => "You gave the rating itself, which is the limit between B and C.";
            "step up": limits(r).map(|l| l.c_d) => "You went one step up the scale; A ends one step below the rating.";
            "half": r / 2.0 => "You halved the rating; the steps of the scale are a factor of about 1.6 apart.";
        },
    }
    .method("One step below the rating on the scale 2, 3.15, 5, 8, 12.5, 20, 31.5 mm/s (0.079, 0.124, 0.197, 0.315, 0.492, 0.787, 1.240 in/s).")
    .lookup(),
    relation! {
        "vibrate.unit_cd/rating": "Limit between zones C and D of the gear unit",
        "vibrate.unit_cd": Velocity = limits(r).map(|l| l.c_d),
        from { r: Velocity = "vibrate.unit_rating" },
        formula [],
        source LIMITS,
        turns {
            "rating itself": r => "You gave the rating itself, which is the limit between B and C.";
            "step down": limits(r).map(|l| l.a_b) => "You went one step down the scale; C ends one step above the rating.";
            "double": r * 2.0 => "You doubled the rating; the steps of the scale are a factor of about 1.6 apart.";
        },
    }
    .method("One step above the rating on the scale 2, 3.15, 5, 8, 12.5, 20, 31.5 mm/s (0.079, 0.124, 0.197, 0.315, 0.492, 0.787, 1.240 in/s).")
    .lookup(),
    relation! {
        "vibrate.unit_zone/rating": "Severity zone of the gear unit",
        "vibrate.unit_zone": Choice = zone(v, r),
        from { v: Velocity = "vibrate.velocity", r: Velocity = "vibrate.unit_rating" },
        formula [],
        source LIMITS,
        turns {
            "rating for A": Choice(if v <= r { 0 } else { zone(v, r)?.0 }) => "You called everything up to the rating zone A; the rating is where B ends, and A ends one step below.";
            "peak for r.m.s.": zone(v * core::f64::consts::SQRT_2, r) => "You turned the r.m.s. reading into a peak; the limits are r.m.s.";
            "taken for a peak": zone(v / core::f64::consts::SQRT_2, r) => "You divided the reading by √2; it is r.m.s. already, like the limits.";
            "machine's zones" with { z: Choice = "vibrate.zone" }: z => "You used the limits of machines in general; this unit has a class of its own.";
        },
    }
    .method("B ends at the rating, A one step below it and C one step above, on the scale 2, 3.15, 5, 8, 12.5, 20, 31.5 mm/s.")
    .lookup(),
    relation! {
        "vibrate.unit_acceptance/limit": "Largest reading with which the gear unit is accepted",
        "vibrate.unit_acceptance": Velocity = acceptance_limit(&Limits { a_b: ab, b_c: ab, c_d: ab }),
        from { ab: Velocity = "vibrate.unit_ab" },
        formula ["v = 1.25 * ab"],
        source ACCEPTANCE,
        turns {
            "limit itself": ab => "You gave the limit between A and B; a quarter more is normally accepted.";
            "from the rating" with { r: Velocity = "vibrate.unit_rating" }: r * 1.25 => "You took a quarter more than the rating; it is a quarter more than the limit between A and B.";
        },
    }
    .limits("on the test stand or as agreed; zone A is the aim"),
    relation! {
        "vibrate.unit_verdict/acceptance": "Verdict on accepting the gear unit",
        "vibrate.unit_verdict": Choice = accepted(v, most),
        from { v: Velocity = "vibrate.velocity", most: Velocity = "vibrate.unit_acceptance" },
        formula [],
        source ACCEPTANCE,
        turns {
            "rating as limit" with { r: Velocity = "vibrate.unit_rating" }: accepted(v, r) => "You held it against the rating, up to which a running unit may go on; a new one must do better.";
            "zone A only" with { ab: Velocity = "vibrate.unit_ab" }: accepted(v, ab) => "You asked for zone A; a quarter more is normally accepted.";
        },
    }
    .method("Accepted up to 1.25 times the limit between zones A and B."),
    relation! {
        "vibrate.unit_line_limit/frequency": "Largest velocity allowed the gear unit at one frequency",
        "vibrate.unit_line_limit": Velocity = rating * velocity_share(f)?,
        from { rating: Velocity = "vibrate.unit_rating", f: Frequency = "vibrate.tone" },
        formula ["v = rating * min(f[Hz] / 45, 1590 / f[Hz], 1)^0.7"],
        source LINE,
        turns {
            "rating itself": rating => "You took the rating as it stands; below 45 Hz and above 1590 Hz less is allowed.";
            "straight": rating * straight(f) => "You left out the power of 0.7 and let the limit fall in step with the frequency.";
            "upside down": rating / velocity_share(f)? => "You divided by the share; outside the middle range less is allowed, not more.";
            "displacement's curve": rating * displacement_share(f)? => "You used the curve for displacement; velocity falls off below 45 Hz and above 1590 Hz.";
        },
    }
    .limits("r.m.s., one line of the spectrum of the housing; the overall value is held against the rating"),
];
