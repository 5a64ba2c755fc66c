//! What noise does to an ear in a day: dose, time-weighted average, time allowed.

use super::{Level, reference_durations};
use crate::error::{positive, within};
use crate::units::{Ratio, Time, ratio::ratio, time::hour};
use crate::{Error, Result, math};

/// A rule that trades level against time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rule {
    /// Level allowed for [`Rule::DAY_HOURS`] hours, dBA.
    pub criterion: f64,
    /// Decibels that halve the time.
    pub exchange: f64,
    /// Factor of the logarithm in the time-weighted average, as the document prints it; `exchange / lg 2` before rounding.
    pub average_factor: f64,
    /// Levels under this one do not count, dBA.
    pub threshold: f64,
}

impl Rule {
    /// Hours of the working day that the criterion refers to.
    pub const DAY_HOURS: f64 = 8.0;
}

/// The rule of US law for hearing conservation: 90 dBA for 8 h, 5 dB exchange, levels from 80 dBA counted.
///
/// # Source
/// OSHA, 29 CFR 1910.95 and its Appendix A.
pub const OSHA: Rule = Rule { criterion: 90.0, exchange: 5.0, average_factor: 16.61, threshold: 80.0 };

/// The recommended rule: 85 dBA for 8 h, 3 dB exchange (equal energy), levels from 80 dBA counted.
///
/// # Source
/// NIOSH, *Criteria for a Recommended Standard: Occupational Noise Exposure* (as quoted; threshold from memory).
pub const NIOSH: Rule = Rule { criterion: 85.0, exchange: 3.0, average_factor: 10.0, threshold: 80.0 };

/// Dose from which hearing conservation begins: 50 %, a time-weighted average of 85 dBA.
///
/// # Source
/// OSHA, 29 CFR 1910.95 (c)(1).
pub const ACTION_DOSE: f64 = 0.5;

/// One part of the day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spell {
    /// Level at the ear, without protection.
    pub level: Level,
    /// How long.
    pub duration: Time,
}

/// Where the reference durations come from: they differ in the printed place, and so do the doses.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Durations {
    /// By the formula, at any level.
    Formula,
    /// From OSHA's printed Table G-16A, at whole decibels.
    Table,
}

/// Time in which a level gives the whole of a day's dose.
///
/// # Formula
/// `T = 8 h / 2^((L − L_c)/q)`, L_c the criterion and q the exchange rate: OSHA 90 and 5, NIOSH 85 and 3.
///
/// # Source
/// OSHA, 29 CFR 1910.95 Appendix A; NIOSH, *Criteria for a Recommended Standard*.
///
/// # Errors
/// [`Error::OutOfRange`] for a level outside −100 to 250 dB or an exchange rate not greater than nought.
///
/// # Example
/// ```
/// use drivecourse_calc::{noise::{Level, exposure::{NIOSH, OSHA, reference_duration}}, units::time::hour};
/// approx::assert_abs_diff_eq!(reference_duration(&OSHA, Level::db(95.0))?.get::<hour>(), 4.0, epsilon = 1e-9);
/// approx::assert_abs_diff_eq!(reference_duration(&NIOSH, Level::db(88.0))?.get::<hour>(), 4.0, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn reference_duration(rule: &Rule, level: Level) -> Result<Time> {
    let q = positive("exchange rate", rule.exchange)?;
    let over = level.checked()? - rule.criterion;
    Ok(Time::new::<hour>(Rule::DAY_HOURS * math::pow(2.0, -over / q)))
}

/// Level whose reference duration is this: the inverse of [`reference_duration`].
///
/// # Formula
/// `L = L_c + q log₂(8 h / T)`
///
/// # Source
/// As [`reference_duration`].
///
/// # Errors
/// [`Error::OutOfRange`] unless the time and the exchange rate are greater than nought.
pub fn level_for(rule: &Rule, duration: Time) -> Result<Level> {
    let t = positive("duration", duration.get::<hour>())?;
    let q = positive("exchange rate", rule.exchange)?;
    Ok(Level::db(rule.criterion + q * math::ln(Rule::DAY_HOURS / t) / core::f64::consts::LN_2))
}

/// Dose of a day: 1 (100 %) is the most allowed.
///
/// # Formula
/// `D = Σ C_i / T_i`, C the time spent at a level and T its reference duration.
///
/// # Source
/// OSHA, 29 CFR 1910.95 Appendix A.
///
/// # Errors
/// [`Error::OutOfRange`] for a negative time or a level outside −100 to 250 dB; [`Error::NoSolution`] when the table is asked for a
/// level that it has not, or for another rule than [`OSHA`].
///
/// # Example
/// 4 h at 90 dBA, 2 h at 95, 2 h at 85: 112.5 %.
/// ```
/// use drivecourse_calc::{noise::{Level, exposure::*}, units::*};
/// let spell = |db, h| Spell { level: Level::db(db), duration: Time::new::<time::hour>(h) };
/// let day = [spell(90.0, 4.0), spell(95.0, 2.0), spell(85.0, 2.0)];
/// let dose = dose(&OSHA, &day, Durations::Formula)?;
/// approx::assert_abs_diff_eq!(dose.get::<ratio::percent>(), 112.5, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Traps: the mean of the levels; a level below the threshold counted.
pub fn dose(rule: &Rule, day: &[Spell], durations: Durations) -> Result<Ratio> {
    let mut total = 0.0;
    for spell in day {
        let c = within("duration", spell.duration.value, 0.0, f64::MAX)?;
        if spell.level.checked()? >= rule.threshold {
            let t = match durations {
                Durations::Formula => reference_duration(rule, spell.level)?,
                Durations::Table => tabulated(rule, spell.level)?,
            };
            total += c / t.value;
        }
    }
    Ok(Ratio::new::<ratio>(total))
}

/// What a day's dose asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// Under [`ACTION_DOSE`].
    BelowAction,
    /// From [`ACTION_DOSE`] up to the most allowed: hearing conservation.
    Action,
    /// Over the most allowed: the noise or the time must come down.
    Over,
}

/// Where a dose stands.
///
/// # Source
/// OSHA, 29 CFR 1910.95 (b) and (c)(1): half a dose begins the action, more than a whole one is too much.
///
/// # Errors
/// [`Error::OutOfRange`] for a negative dose or one that is not finite.
pub fn standing(dose: Ratio) -> Result<Standing> {
    let d = within("dose", dose.value, 0.0, f64::MAX)?;
    Ok(if d > 1.0 {
        Standing::Over
    } else if d >= ACTION_DOSE {
        Standing::Action
    } else {
        Standing::BelowAction
    })
}

/// Level that, held for 8 h, gives the dose.
///
/// # Formula
/// `TWA = 16.61 lg(D/100 %) + 90` (OSHA); `10 lg(D/100 %) + 85` (NIOSH).
///
/// # Source
/// As [`reference_duration`].
///
/// # Errors
/// [`Error::OutOfRange`] unless the dose is greater than nought.
///
/// # Example
/// ```
/// use drivecourse_calc::{noise::exposure::{OSHA, time_weighted_average}, units::*};
/// let twa = time_weighted_average(&OSHA, Ratio::new::<ratio::percent>(112.5))?;
/// approx::assert_abs_diff_eq!(twa.in_db(), 90.85, epsilon = 0.005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn time_weighted_average(rule: &Rule, dose: Ratio) -> Result<Level> {
    Ok(Level::db(rule.average_factor * math::log10(positive("dose", dose.value)?) + rule.criterion))
}

/// Row of the printed table for a whole level.
fn tabulated(rule: &Rule, level: Level) -> Result<Time> {
    let found = (reference_durations::FIRST..)
        .zip(&reference_durations::HOURS)
        .find(|(row, _)| *rule == OSHA && f64::from(*row) == level.in_db())
        .and_then(|(row, _)| reference_durations::printed(row));
    found.ok_or(Error::none("row of the table"))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::noise::level::sum;
    use crate::units::ratio::percent;
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn day(spells: &[(f64, f64)]) -> Vec<Spell> {
        spells.iter().map(|&(db, h)| Spell { level: Level::db(db), duration: Time::new::<hour>(h) }).collect()
    }
    fn of(spells: &[(f64, f64)], durations: Durations) -> f64 {
        dose(&OSHA, &day(spells), durations).unwrap().get::<percent>()
    }

    /// Worked shifts in circulation on OSHA's Appendix A (common practice). Their doses are cut, not rounded, at the last place.
    #[test]
    fn published_doses() {
        use Durations::{Formula, Table};
        assert_abs_diff_eq!(of(&[(90.0, 4.0), (95.0, 2.0), (85.0, 2.0)], Formula), 112.5, epsilon = 1e-9);
        assert_abs_diff_eq!(of(&[(90.0, 4.0), (95.0, 2.0), (85.0, 2.0)], Table), 112.5, epsilon = 1e-9);
        assert_abs_diff_eq!(of(&[(92.0, 8.0)], Table), 131.0, epsilon = 0.5);
        assert_abs_diff_eq!(of(&[(92.0, 8.0)], Formula), 131.95, epsilon = 0.005); // computed
        let mixed = of(&[(99.0, 3.0), (87.0, 2.0), (85.0, 2.0), (84.0, 1.0)], Table);
        assert_abs_diff_eq!(mixed, 164.89, epsilon = 0.01);
        let other = of(&[(93.0, 3.0), (85.0, 2.0), (84.0, 2.0), (80.0, 1.0)], Table);
        assert_abs_diff_eq!(other, 83.09, epsilon = 0.01);
        // averages of these: 90.85; and 93.6 and 88.6, which are worked from rounded doses: 0.1 dB
        for (dose, printed, tolerance) in [(112.5, 90.85, 0.005), (mixed, 93.6, 0.1), (other, 88.6, 0.1)] {
            let twa = time_weighted_average(&OSHA, Ratio::new::<percent>(dose)).unwrap();
            assert_abs_diff_eq!(twa.in_db(), printed, epsilon = tolerance);
        }
    }

    #[test]
    fn published_durations() {
        let hours = |rule, db| reference_duration(rule, Level::db(db)).unwrap().get::<hour>();
        assert_relative_eq!(hours(&OSHA, 95.0), 4.0, max_relative = 1e-14);
        assert_abs_diff_eq!(hours(&OSHA, 83.0), 21.11, epsilon = 0.005); // copies print 21.1 and 21.2
        assert_relative_eq!(hours(&NIOSH, 85.0), 8.0, max_relative = 1e-14);
        assert_relative_eq!(hours(&NIOSH, 100.0), 0.25, max_relative = 1e-14);
    }

    #[test]
    fn the_action_level_is_half_a_dose() {
        // the printed factor 16.61 is rounded from 16.6096
        let average = time_weighted_average(&OSHA, Ratio::new::<ratio>(ACTION_DOSE)).unwrap();
        assert_abs_diff_eq!(average.in_db(), 85.0, epsilon = 1e-3);
        for rule in [OSHA, NIOSH] {
            let exact = rule.exchange / core::f64::consts::LOG10_2;
            assert_abs_diff_eq!(rule.average_factor, exact, epsilon = 0.05);
        }
    }

    #[test]
    fn round_trips_and_thresholds() {
        for rule in [OSHA, NIOSH] {
            for db in [80.0, 91.5, 104.0] {
                let t = reference_duration(&rule, Level::db(db)).unwrap();
                assert_abs_diff_eq!(level_for(&rule, t).unwrap().in_db(), db, epsilon = 1e-9);
                let spell = [Spell { level: Level::db(db), duration: t }];
                assert_relative_eq!(dose(&rule, &spell, Durations::Formula).unwrap().value, 1.0, max_relative = 1e-14);
            }
            // eight hours at the criterion are a whole dose, and its average is the criterion
            assert_eq!(time_weighted_average(&rule, Ratio::new::<ratio>(1.0)).unwrap().in_db(), rule.criterion);
        }
        assert_eq!(of(&[(79.9, 8.0)], Durations::Formula), 0.0);
        assert_eq!(of(&[], Durations::Formula), 0.0);
    }

    #[test]
    fn three_decibels_are_nearly_equal_energy() {
        // 3 dB is 10 lg 2 = 3.0103 rounded: energies of equal spells agree with the dose to a fifth of a decibel
        let spells = [(88.0, 2.0), (94.0, 2.0), (85.0, 2.0), (91.0, 2.0)];
        let twa = time_weighted_average(&NIOSH, dose(&NIOSH, &day(&spells), Durations::Formula).unwrap()).unwrap();
        let energy = sum(&spells.map(|(db, _)| Level::db(db))).unwrap().in_db() - 10.0 * math::log10(4.0);
        assert_abs_diff_eq!(twa.in_db(), energy, epsilon = 0.2);
    }

    #[test]
    fn nonsense_is_refused() {
        let none = Err(Error::none("row of the table"));
        assert_eq!(dose(&OSHA, &day(&[(92.5, 1.0)]), Durations::Table), none);
        assert_eq!(dose(&NIOSH, &day(&[(92.0, 1.0)]), Durations::Table), none);
        assert_eq!(dose(&OSHA, &day(&[(131.0, 1.0)]), Durations::Table), none);
        assert!(matches!(
            dose(&OSHA, &day(&[(92.0, -1.0)]), Durations::Formula),
            Err(Error::OutOfRange { input: "duration", .. })
        ));
        assert!(dose(&OSHA, &day(&[(f64::NAN, 1.0)]), Durations::Formula).is_err());
        assert!(time_weighted_average(&OSHA, Ratio::new::<ratio>(0.0)).is_err());
        assert!(level_for(&OSHA, Time::default()).is_err());
        assert!(reference_duration(&Rule { exchange: 0.0, ..OSHA }, Level::db(90.0)).is_err());
    }

    #[test]
    fn half_a_dose_begins_the_action() {
        let at = |value| standing(Ratio::new::<ratio>(value)).unwrap();
        let found = [0.0, 0.499, 0.5, 1.0, 1.001].map(at);
        assert_eq!(
            found,
            [Standing::BelowAction, Standing::BelowAction, Standing::Action, Standing::Action, Standing::Over]
        );
        assert!(standing(Ratio::new::<ratio>(f64::NAN)).is_err());
    }
}
