//! How long oil lasts when it runs hot.

use drivecourse_calc::heat::rise::rise;
use drivecourse_calc::oil::life::{HALVING, hottest_for, life_share, oil_life};
use drivecourse_calc::units::{Ratio, Temperature, TemperatureRise, Time, ratio};

use crate::Source;
use crate::relation::{Relation, relation};

const RULE: Source = Source::published("J. Fitch, Practicing Oil Analysis (as quoted)", "ten-degree rule");

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

/// Half the life gone for each ten degrees, in proportion.
fn linear(over: TemperatureRise) -> Ratio {
    plain(1.0) - over / HALVING / 2.0
}

/// The base temperature with the distance to `t` scaled.
fn scaled(t: Temperature, base: Temperature, by: f64) -> Temperature {
    base + rise(t, base) * by
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "oil.life_share/ten degrees": "Share of the oil life left at running temperature",
        "oil.life_share": Ratio = life_share(t, b),
        from { t: Temperature = "heat.housing", b: Temperature = "oil.base_temperature" },
        formula [
            "f[] = 2^(-max(0, t[°C] - b[°C]) / 10)",
            "f[] = 2^(-max(0, t[°F] - b[°F]) / 18)",
        ],
        source RULE,
        turns {
            "in proportion": linear(rise(t, b)) => "You took half the life off for each 10 °C (18 °F) in proportion; each step halves what the one before left.";
            "halved once": plain(0.5) => "You halved the life once; it is halved for each 10 °C (18 °F) over the base.";
            "doubled": life_share(t, b).map(|f| plain(1.0) / f) => "You doubled where you should have halved; hotter oil lasts less.";
            "10 °F" in Us: life_share(scaled(t, b, 1.8), b) => "You halved for each 10 °F; the rule is 10 °C, which is 18 °F.";
            "18 °C" in Si: life_share(scaled(t, b, 1.0 / 1.8), b) => "You halved for each 18 °C; the rule is 10 °C, which is 18 °F.";
            "rise over ambient" with { a: Temperature = "heat.ambient" }: life_share(t, a) => "You counted from ambient; count from the temperature up to which the oil has its full life.";
            "what is lost": life_share(t, b).map(|f| plain(1.0) - f) => "You gave the share that is lost; the share that is left is asked.";
        },
    }
    .limits("halves for each 10 °C (18 °F) above the base; a rule of thumb, disputed for modern oils"),
    relation! {
        "oil.life/share": "Oil life at running temperature",
        "oil.life": Time = base * f,
        from { base: Time = "oil.base_life", f: Ratio = "oil.life_share" },
        formula ["t = base * f[]"],
        source RULE,
        turns {
            "divided": base / f => "You divided by the share; hotter oil lasts less.";
            "what is lost": base - base * f => "You gave the hours that are lost; the hours that are left are asked.";
            "full life": base => "You gave the full life; above the base temperature it is shorter.";
            "in proportion" with { t: Temperature = "heat.housing", b: Temperature = "oil.base_temperature" }: base * linear(rise(t, b)) => "You took half the life off for each 10 °C (18 °F) in proportion; each step halves what the one before left.";
            "10 °F" in Us with { t: Temperature = "heat.housing", b: Temperature = "oil.base_temperature" }: oil_life(base, scaled(t, b, 1.8), b) => "You halved for each 10 °F; the rule is 10 °C, which is 18 °F.";
        },
    }
    .limits("water, dirt and air shorten it further; an oil sample says more than the rule"),
    relation! {
        "oil.hottest/ten degrees": "Hottest oil temperature for a share of the life",
        "oil.hottest": Temperature = hottest_for(f, b),
        from { f: Ratio = "oil.share_wanted", b: Temperature = "oil.base_temperature" },
        formula [
            "t[°C] = b[°C] - 10 * ln(f[]) / ln(2)",
            "t[°F] = b[°F] - 18 * ln(f[]) / ln(2)",
        ],
        source RULE,
        turns {
            "in proportion": b + HALVING * 2.0 * (plain(1.0) - f) => "You shared the life out in proportion; it halves with each 10 °C (18 °F).";
            "downwards": scaled(hottest_for(f, b)?, b, -1.0) => "You went below the base; a shorter life allows a hotter oil.";
            "10 °F" in Us: scaled(hottest_for(f, b)?, b, 1.0 / 1.8) => "You halved for each 10 °F; the rule is 10 °C, which is 18 °F.";
            "ln 2 left out": scaled(hottest_for(f, b)?, b, core::f64::consts::LN_2) => "You left out the ln 2 below; the life halves with each step, and does not fall by e.";
            "common logarithm": scaled(hottest_for(f, b)?, b, core::f64::consts::LOG10_2) => "You used the logarithm to base 10 and did not divide by that of 2.";
        },
    }
    .limits("a rule of thumb; the housing's own limit goes before it"),
];
