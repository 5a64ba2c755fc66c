//! Heat made, heat given off, and what load and ambient do to the temperature.

use drivecourse_calc::Error;
use drivecourse_calc::heat::balance::{
    conductance, efficiency_from_rise, heat_given_off, loss, rise_at_load, steady_rise, thermal_limit,
};
use drivecourse_calc::heat::rise::surface;
use drivecourse_calc::load::bearing::friction_power;
use drivecourse_calc::load::torque::output_power;
use drivecourse_calc::units::{
    AngularVelocity, Force, Length, Power, Ratio, Temperature, TemperatureRise, ThermalConductance, angular_velocity,
    power, ratio,
};

use super::{DIFFERENCE, c_as_rise, f_as_rise, thirty_two, zero_c, zero_f};
use crate::Source;
use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};

const ENERGY: Source = Derived("conservation of energy");
const COOLING: Source = Derived("Newton's law of cooling at steady state");

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

/// The settled rise when the present load becomes `share` of itself.
fn rise_at_share(known: TemperatureRise, share: Ratio, fixed: Ratio) -> Result<TemperatureRise, Error> {
    let present = Power::new::<power::kilowatt>(1.0);
    rise_at_load(known, present, present * share, fixed)
}

/// The thermal limit with what the bearing makes already taken from the rise.
fn limit(g: ThermalConductance, allowed: TemperatureRise, bearing: Power, efficiency: Ratio) -> Result<Power, Error> {
    thermal_limit(g, allowed - steady_rise(bearing, g)?, efficiency)
}

/// What is lost of a power, mistaken for what is kept, and the other way about.
fn swapped(efficiency: Ratio) -> Ratio {
    plain(1.0) - efficiency
}

/// Revolutions per minute taken for radians per second.
fn minutes_as_radians(speed: AngularVelocity) -> AngularVelocity {
    AngularVelocity::new::<angular_velocity::radian_per_second>(speed.get::<angular_velocity::revolution_per_minute>())
}

/// Refuses a share of nought, which cannot be turned over.
fn turned_over(share: Ratio) -> Result<Ratio, Error> {
    if share.value > 0.0 { Ok(plain(1.0) / share) } else { Err(Error::none("share")) }
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "heat.gear_loss/lost share": "Heat made by the gears",
        "heat.gear_loss": Power = loss(p, e),
        from { p: Power = "drive.power", e: Ratio = "drive.efficiency" },
        formula ["Q[W] = 1000 * p[kW] * (1 - e[])", "Q[Btu/h] = 2544.4 * p[hp] * (1 - e[])"],
        source ENERGY,
        turns {
            "efficiency itself": output_power(p, e) => "You multiplied by the efficiency; that gives the power that comes out, and the heat is the rest, 1 − η.";
            "output power": loss(output_power(p, e)?, e) => "You took the lost share of the output power; the share is of the power that goes in.";
            "divided by efficiency": p / e - p => "You took the power as output and worked back to the input; here the power is what goes in.";
            "motor plate" with { m: Power = "drive.motor_power" }: loss(m, e) => "You used the motor's plate power; the heat comes from the power the drive really takes.";
            "all of it": p => "You took the whole power for heat; only the lost share, 1 − η, becomes heat.";
        },
    }
    .limits("power that goes into the unit; efficiency of all stages together"),
    relation! {
        "heat.bearing_loss/friction": "Heat made by the bearing nearest the chain",
        "heat.bearing_loss": Power = friction_power(mu, force, d, n),
        from {
            mu: Ratio = "heat.friction", force: Force = "load.reaction_near", d: Length = "load.shaft_diameter",
            n: AngularVelocity = "drive.output_speed",
        },
        formula [
            "Q[W] = mu[] * force[N] * d[m] / 2 * n[rad/s]",
            "Q[Btu/h] = 2544.4 * mu[] * force[lbf] * d[in] / 2 * n[r/min] / 63025",
        ],
        source Source::published("U. C. Jindal, Machine Design", "Example 18-1, p. 507"),
        turns {
            "diameter for radius": friction_power(mu, force, d * 2.0, n) => "You used the diameter where the radius belongs; the friction acts at half the diameter.";
            "quarter diameter": friction_power(mu, force, d / 2.0, n) => "You halved the diameter twice; the friction acts at half the diameter.";
            "r/min as rad/s": friction_power(mu, force, d, minutes_as_radians(n)) => "You used r/min where rad/s belong; divide r/min by 9.549.";
            "2π left out": friction_power(mu, force, d, n / core::f64::consts::TAU) => "You used turns a second without the 2π; the rubbing speed is radius times 2π times turns a second.";
        },
    }
    .limits("rolling bearing with ordinary grease or oil; the shaft diameter stands for the bore"),
    relation! {
        "heat.loss/sum": "Heat made by the whole unit",
        "heat.loss": Power = gears + bearing,
        from { gears: Power = "heat.gear_loss", bearing: Power = "heat.bearing_loss" },
        formula ["Q = gears + bearing"],
        source ENERGY,
        turns {
            "bearing only": bearing => "You left the gears out; they make most of the heat.";
            "input power" with { p: Power = "drive.power" }: p => "You took the whole input power for heat; most of it goes out through the shaft.";
        },
    },
    relation! {
        "heat.loss/from the rise": "Heat given off at a settled rise",
        "heat.loss": Power = heat_given_off(g, d),
        from { g: ThermalConductance = "heat.conductance", d: TemperatureRise = "heat.rise" },
        formula ["Q = g * d"],
        source COOLING,
        turns {
            "Celsius reading" in Si with { t: Temperature = "heat.housing" }: heat_given_off(g, c_as_rise(t)) => "You used the housing temperature; heat flows by the rise over ambient.";
            "Fahrenheit reading" in Us with { t: Temperature = "heat.housing" }: heat_given_off(g, f_as_rise(t)) => "You used the housing temperature; heat flows by the rise over ambient.";
            "32 added" in Us: heat_given_off(g, d + thirty_two()) => "You added 32 to a difference; the 32 belongs to readings only.";
            "32 taken off" in Us: heat_given_off(g, d - thirty_two()) => "You took 32 off a difference, as if it were a reading.";
        },
    }
    .limits("once the temperature has settled")
    .question(),
    relation! {
        "heat.conductance/full power": "Heat given off for each degree, from the full-power figures",
        "heat.conductance": ThermalConductance = conductance(loss(p, e)?, d),
        from {
            p: Power = "drive.motor_power", e: Ratio = "drive.efficiency", d: TemperatureRise = "heat.design_rise",
        },
        formula ["G[W/K] = 1000 * p[kW] * (1 - e[]) / d[K]", "G[Btu/(h·°F)] = 2544.4 * p[hp] * (1 - e[]) / d[°F]"],
        source COOLING,
        turns {
            "efficiency itself": conductance(loss(p, swapped(e))?, d) => "You used the efficiency; the heat is the lost share, 1 − η.";
            "all of it": conductance(p, d) => "You divided the whole power by the rise; only the lost share becomes heat.";
        },
    }
    .model(),
    relation! {
        "heat.conductance/measured": "Heat given off for each degree, from a settled rise",
        "heat.conductance": ThermalConductance = conductance(q, d),
        from { q: Power = "heat.loss", d: TemperatureRise = "heat.rise" },
        formula ["G = q / d"],
        source COOLING,
        turns {
            "Celsius reading" in Si with { t: Temperature = "heat.housing" }: conductance(q, c_as_rise(t)) => "You divided by the housing temperature; heat flows by the rise over ambient.";
            "Fahrenheit reading" in Us with { t: Temperature = "heat.housing" }: conductance(q, f_as_rise(t)) => "You divided by the housing temperature; heat flows by the rise over ambient.";
            "input power" with { p: Power = "drive.power" }: conductance(p, d) => "You divided the input power by the rise; only the heat flows through the housing.";
            "32 added" in Us: conductance(q, d + thirty_two()) => "You added 32 to a difference; the 32 belongs to readings only.";
            "32 taken off" in Us: conductance(q, d - thirty_two()) => "You took 32 off a difference, as if it were a reading.";
        },
    }
    .limits("once the temperature has settled; dirt on the housing, a cover or a missing fan lowers it")
    .question(),
    relation! {
        "heat.settled_rise/heat balance": "Rise at which the unit gives off what it makes",
        "heat.settled_rise": TemperatureRise = steady_rise(q, g),
        from { q: Power = "heat.loss", g: ThermalConductance = "heat.conductance" },
        formula ["D = q / g"],
        source COOLING,
        turns {
            "input power" with { p: Power = "drive.power" }: steady_rise(p, g) => "You divided the input power; only the lost share heats the housing.";
            "output power" with { p: Power = "drive.power", e: Ratio = "drive.efficiency" }: steady_rise(output_power(p, e)?, g) => "You divided the output power; the heat is what does not come out.";
            "32 added" in Us: steady_rise(q, g).map(|d| d + thirty_two()) => "You added 32 to a difference; the 32 belongs to readings only.";
            "32 taken off" in Us: steady_rise(q, g).map(|d| d - thirty_two()) => "You took 32 off a difference, as if it were a reading.";
            "ambient added" in Si with { a: Temperature = "heat.ambient" }: c_as_rise(surface(a, steady_rise(q, g)?)) => "You added the ambient; that gives the temperature, and the rise is asked.";
            "ambient added in °F" in Us with { a: Temperature = "heat.ambient" }: f_as_rise(surface(a, steady_rise(q, g)?)) => "You added the ambient; that gives the temperature, and the rise is asked.";
        },
    }
    .limits("steady load, clean housing, free air"),
    relation! {
        "heat.settled/ambient and rise": "Temperature at which the unit settles",
        "heat.settled": Temperature = surface(a, d),
        from { a: Temperature = "heat.ambient", d: TemperatureRise = "heat.settled_rise" },
        formula ["T = a + d"],
        source DIFFERENCE,
        turns {
            "ambient left out" in Si: zero_c() + d => "You gave the rise as a temperature; add the ambient.";
            "ambient left out, °F" in Us: zero_f() + d => "You gave the rise as a temperature; add the ambient.";
            "32 added" in Us: surface(a, d + thirty_two()) => "You added 32 as well; the ambient already carries the zero of the scale.";
            "taken off": surface(a, -d) => "You took the rise off the ambient; a unit that makes heat is warmer than the room.";
        },
    },
    relation! {
        "heat.housing/settled": "Settled temperature shows on the housing",
        "heat.housing": Temperature = t,
        from { t: Temperature = "heat.settled" },
        formula ["T = t"],
        source Derived("definition of the settled temperature"),
        turns {},
    }
    .model(),
    relation! {
        "heat.efficiency_seen/from the rise": "Efficiency that explains the rise",
        "heat.efficiency_seen": Ratio = efficiency_from_rise(p, g, d),
        from {
            p: Power = "drive.power", g: ThermalConductance = "heat.conductance", d: TemperatureRise = "heat.rise",
        },
        formula ["e = 1 - g[W/K] * d[K] / (1000 * p[kW])", "e = 1 - g[Btu/(h·°F)] * d[°F] / (2544.4 * p[hp])"],
        source ENERGY,
        turns {
            "lost share": efficiency_from_rise(p, g, d).map(swapped) => "You gave the lost share; the efficiency is one less that share.";
            "Celsius reading" in Si with { t: Temperature = "heat.housing" }: efficiency_from_rise(p, g, c_as_rise(t)) => "You used the housing temperature; heat flows by the rise over ambient.";
            "Fahrenheit reading" in Us with { t: Temperature = "heat.housing" }: efficiency_from_rise(p, g, f_as_rise(t)) => "You used the housing temperature; heat flows by the rise over ambient.";
        },
    }
    .limits("settled rise; every loss of the unit is in it, bearings and seals too"),
    relation! {
        "heat.allowed_power/thermal limit": "Greatest power without getting too hot",
        "heat.allowed_power": Power = limit(g, d, bearing, e),
        from {
            g: ThermalConductance = "heat.conductance", d: TemperatureRise = "heat.allowed_rise",
            bearing: Power = "heat.bearing_loss", e: Ratio = "drive.efficiency",
        },
        formula [
            "P[kW] = (g[W/K] * d[K] - bearing[W]) / (1000 * (1 - e[]))",
            "P[hp] = (g[Btu/(h·°F)] * d[°F] - bearing[Btu/h]) / (2544.4 * (1 - e[]))",
        ],
        source ENERGY,
        turns {
            "efficiency itself": limit(g, d, bearing, swapped(e)) => "You divided by the efficiency; the heat is the lost share, 1 − η, of the power.";
            "loss only": heat_given_off(g, d) => "You stopped at the heat the housing gives off; divide it by the lost share, 1 − η, to get the power.";
            "output power": output_power(limit(g, d, bearing, e)?, e) => "You went on to the output power; the limit is asked for the power that goes in.";
            "ambient left out" in Si with { t: Temperature = "heat.allowed" }: limit(g, c_as_rise(t), bearing, e) => "You used the allowed temperature itself; take the ambient off, since heat flows by the rise.";
            "ambient left out, °F" in Us with { t: Temperature = "heat.allowed" }: limit(g, f_as_rise(t), bearing, e) => "You used the allowed temperature itself; take the ambient off, since heat flows by the rise.";
            "present rise" with { now: TemperatureRise = "heat.rise" }: limit(g, now, bearing, e) => "You used the rise it has now; the limit goes by the rise it is allowed.";
            "32 taken off" in Us: limit(g, d - thirty_two(), bearing, e) => "You took 32 off a difference, as if it were a reading.";
        },
    }
    .limits("steady load; on a hot day the allowed rise is smaller, and the limit with it"),
    relation! {
        "heat.expected/other load and ambient": "Housing temperature at another load and ambient",
        "heat.expected": Temperature = surface(a2, rise_at_share(d, s, f)?),
        from {
            a2: Temperature = "heat.other_ambient", d: TemperatureRise = "heat.rise", s: Ratio = "heat.other_share",
            f: Ratio = "heat.fixed_share",
        },
        formula ["T = a2 + d * (f[] + (1 - f[]) * s[])"],
        source CommonPractice,
        turns {
            "old ambient" with { a: Temperature = "heat.ambient" }: surface(a, rise_at_share(d, s, f)?) => "You kept the present ambient; the rise is added to the ambient of the other case.";
            "rise not scaled": surface(a2, d) => "You kept the rise as it is; with another load there is another heat to give off.";
            "fixed share left out": surface(a2, rise_at_share(d, s, plain(0.0))?) => "You let the whole rise go with the load; the oil's churning makes its share of the heat at any load.";
            "fixed share dropped": surface(a2, rise_at_share(d, s * (plain(1.0) - f), plain(0.0))?) => "You scaled the part that goes with load and dropped the fixed part; both make heat.";
            "share upside down": surface(a2, rise_at_share(d, turned_over(s)?, f)?) => "You used the share upside down; less load makes less rise.";
            "temperature scaled" in Si with { t: Temperature = "heat.housing" }: zero_c() + rise_at_share(c_as_rise(t), s, f)? => "You scaled the temperature; only the rise over ambient goes with the load.";
            "temperature scaled, °F" in Us with { t: Temperature = "heat.housing" }: zero_f() + rise_at_share(f_as_rise(t), s, f)? => "You scaled the temperature; only the rise over ambient goes with the load.";
            "ambient left out" in Si: zero_c() + rise_at_share(d, s, f)? => "You gave the rise as a temperature; add the ambient of the other case.";
            "ambient left out, °F" in Us: zero_f() + rise_at_share(d, s, f)? => "You gave the rise as a temperature; add the ambient of the other case.";
            "rise on the old housing" with { t: Temperature = "heat.housing" }: t + rise_at_share(d, s, f)? => "You added the new rise to the present housing temperature; it starts from the ambient of the other case.";
        },
    }
    .limits("same speed, same oil, same air over the housing"),
];
