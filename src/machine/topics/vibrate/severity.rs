//! Severity zones by group and support.

use drivecourse_calc::Error;
use drivecourse_calc::units::{Length, Power, Ratio, Velocity, ratio};
use drivecourse_calc::vibrate::general_limits::small_machine;
use drivecourse_calc::vibrate::machine_limits::{self, Group, Support, group_by_power, group_by_shaft_height};
use drivecourse_calc::vibrate::zone::Limits;

use crate::relation::{Relation, relation};
use crate::source::Source;
use crate::typed::Choice;

const TABLE: Source = Source::published("ISO 10816-3:2009", "Table A.1 and A.2 (as transcribed)");
const WHERE: &str = "bearing housings; up to 15 kW the low ends of ISO 20816-1, Table C.1, whatever the support";
const SMALL: u16 = 2;

/// Which group a plate power falls in.
fn group(rated: Power) -> Choice {
    // The standard's groups begin above 15 kW.
    Choice(match group_by_power(rated) {
        Ok(Group::One) => 0,
        Ok(_) => 1,
        Err(_) => SMALL,
    })
}

/// Which group the height of an electric motor's shaft above its feet falls in.
fn motor_group(height: Length) -> Choice {
    Choice(match group_by_shaft_height(height) {
        Ok(Group::One) => 0,
        Ok(_) => 1,
        Err(_) => SMALL,
    })
}

pub(super) fn limits(group: Choice, support: Choice) -> Result<Limits<Velocity>, Error> {
    let support = if support.0 == 0 { Support::Rigid } else { Support::Flexible };
    match group.0 {
        0 => Ok(machine_limits::limits(Group::One, support).velocity()),
        1 => Ok(machine_limits::limits(Group::Two, support).velocity()),
        SMALL => Ok(small_machine()),
        _ => Err(Error::none("group")),
    }
}

/// The next group, round again after the last.
fn next(group: Choice) -> Choice {
    Choice((group.0 + 1) % 3)
}

/// The group before, the last before the first.
fn before(group: Choice) -> Choice {
    Choice((group.0 + 2) % 3)
}

fn other(support: Choice) -> Choice {
    Choice(1 - support.0.min(1))
}

fn zone(reading: Velocity, a_b: Velocity, b_c: Velocity, c_d: Velocity) -> Result<Choice, Error> {
    Ok(Choice(Limits::new(a_b, b_c, c_d)?.zone(reading)? as u16))
}

fn zone_of(reading: Velocity, limits: Limits<Velocity>) -> Result<Choice, Error> {
    zone(reading, limits.a_b, limits.b_c, limits.c_d)
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "vibrate.group/plate power": "Group of the machine",
        "vibrate.group": Choice = group(p),
        from { p: Power = "drive.motor_power" },
        formula [],
        source TABLE,
        turns {
            "one too large": before(group(p)) => "You took the wrong group; go by the power on the plate: over 300 kW, over 15 kW, or up to 15 kW.";
            "one too small": next(group(p)) => "You took the wrong group; go by the power on the plate: over 300 kW, over 15 kW, or up to 15 kW.";
        },
    }
    .method("up to 15 kW, over that up to 300 kW, or over 300 kW on the plate"),
    relation! {
        "vibrate.motor_group/shaft height": "Group of the electric motor by itself",
        "vibrate.motor_group": Choice = motor_group(h),
        from { h: Length = "align.motor_height" },
        formula [],
        source TABLE,
        turns {
            "one too large": before(motor_group(h)) => "You took the wrong group; an electric motor goes by the height of its shaft above its feet: 315 mm and over, 160 mm and over, or under 160 mm.";
            "one too small": next(motor_group(h)) => "You took the wrong group; an electric motor goes by the height of its shaft above its feet: 315 mm and over, 160 mm and over, or under 160 mm.";
            "by the power" with { p: Power = "drive.motor_power" }: group(p) => "You went by the power, as for the driven machine; an electric motor goes by the height of its shaft.";
        },
    }
    .method("315 mm (12.4 in) and over: group 1. 160 mm (6.3 in) and over: group 2. Under that the table has no row.")
    .limits("an electric motor looked at alone; where the groups of motor and machine differ, each is judged by its own")
    .question(),
    relation! {
        "vibrate.limit_ab/table": "Limit between zones A and B",
        "vibrate.limit_ab": Velocity = limits(g, s).map(|l| l.a_b),
        from { g: Choice = "vibrate.group", s: Choice = "vibrate.support" },
        formula [],
        source TABLE,
        turns {
            "wrong group": limits(next(g), s).map(|l| l.a_b) => "You read the row of another group.";
            "wrong group, other": limits(before(g), s).map(|l| l.a_b) => "You read the row of another group.";
            "wrong support": limits(g, other(s)).map(|l| l.a_b) => "You read the row of the other support.";
            "next limit": limits(g, s).map(|l| l.b_c) => "You read the limit between B and C.";
        },
    }
    .method("the table's row for group and support")
    .limits(WHERE)
    .lookup(),
    relation! {
        "vibrate.limit_bc/table": "Limit between zones B and C",
        "vibrate.limit_bc": Velocity = limits(g, s).map(|l| l.b_c),
        from { g: Choice = "vibrate.group", s: Choice = "vibrate.support" },
        formula [],
        source TABLE,
        turns {
            "wrong group": limits(next(g), s).map(|l| l.b_c) => "You read the row of another group.";
            "wrong group, other": limits(before(g), s).map(|l| l.b_c) => "You read the row of another group.";
            "wrong support": limits(g, other(s)).map(|l| l.b_c) => "You read the row of the other support.";
            "limit before": limits(g, s).map(|l| l.a_b) => "You read the limit between A and B.";
            "next limit": limits(g, s).map(|l| l.c_d) => "You read the limit between C and D.";
        },
    }
    .method("the table's row for group and support")
    .limits(WHERE)
    .lookup(),
    relation! {
        "vibrate.limit_cd/table": "Limit between zones C and D",
        "vibrate.limit_cd": Velocity = limits(g, s).map(|l| l.c_d),
        from { g: Choice = "vibrate.group", s: Choice = "vibrate.support" },
        formula [],
        source TABLE,
        turns {
            "wrong group": limits(next(g), s).map(|l| l.c_d) => "You read the row of another group.";
            "wrong group, other": limits(before(g), s).map(|l| l.c_d) => "You read the row of another group.";
            "wrong support": limits(g, other(s)).map(|l| l.c_d) => "You read the row of the other support.";
            "limit before": limits(g, s).map(|l| l.b_c) => "You read the limit between B and C.";
        },
    }
    .method("the table's row for group and support")
    .limits(WHERE)
    .lookup(),
    relation! {
        "vibrate.limit_share/limit": "Share of the limit between zones B and C in use",
        "vibrate.limit_share": Ratio = v / bc,
        from { v: Velocity = "vibrate.velocity", bc: Velocity = "vibrate.limit_bc" },
        formula ["x[] = v / bc"],
        source Source::Derived("definition of the share"),
        turns {
            "turned over": bc / v => "You divided the limit by the reading; the share is the reading over the limit.";
            "what is left": Ratio::new::<ratio::ratio>(1.0) - v / bc => "You gave what is left up to the limit.";
            "limit A to B" with { ab: Velocity = "vibrate.limit_ab" }: v / ab => "You used the limit between A and B.";
            "limit C to D" with { cd: Velocity = "vibrate.limit_cd" }: v / cd => "You used the limit between C and D.";
            "peak for r.m.s.": v * core::f64::consts::SQRT_2 / bc => "You turned the r.m.s. reading into a peak; the limits are r.m.s.";
        },
    },
    relation! {
        "vibrate.zone/limits": "Severity zone of the reading",
        "vibrate.zone": Choice = zone(v, ab, bc, cd),
        from {
            v: Velocity = "vibrate.velocity", ab: Velocity = "vibrate.limit_ab", bc: Velocity = "vibrate.limit_bc",
            cd: Velocity = "vibrate.limit_cd",
        },
        formula [],
        source Source::published("ISO 10816-3:2009", "zones (as transcribed); a reading on a limit counts to the better zone"),
        turns {
            "wrong group" with { g: Choice = "vibrate.group", s: Choice = "vibrate.support" }: zone_of(v, limits(next(g), s)?) => "You used the limits of another group.";
            "wrong group, other" with { g: Choice = "vibrate.group", s: Choice = "vibrate.support" }: zone_of(v, limits(before(g), s)?) => "You used the limits of another group.";
            "wrong support" with { g: Choice = "vibrate.group", s: Choice = "vibrate.support" }: zone_of(v, limits(g, other(s))?) => "You used the limits of the other support.";
            "peak for r.m.s.": zone(v * core::f64::consts::SQRT_2, ab, bc, cd) => "You turned the r.m.s. reading into a peak; the limits are r.m.s.";
            "taken for a peak": zone(v / core::f64::consts::SQRT_2, ab, bc, cd) => "You divided the reading by √2; it is r.m.s. already, like the limits.";
            "mm/s against in/s": Choice(3) => "You held mm/s against limits in in/s.";
            "in/s against mm/s": Choice(0) => "You held in/s against limits in mm/s.";
        },
    }
    .method("A up to the first limit, B up to the second, C up to the third, D above")
    .limits("r.m.s., the largest reading of all places and directions"),
];
