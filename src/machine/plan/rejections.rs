//! Machines that are not kept: how often a family's limits reject one, and what is said when none is left.

use core::fmt;

use super::{Case, MOST_ATTEMPTS, Plan};
use crate::amount;
use crate::chance::{Stream, derive};
use crate::family::{Asked, Family, Limit, written};
use crate::messages;
use crate::problem::Problem;
use crate::registry::{QuantityId, Registry};

messages! { pub(crate) SAYS {
    CANNOT = "problem-draw-cannot", "No machine of the family \"{family}\" could be drawn in {attempts} attempts {wanted}. {why}";
    SOUND = "problem-draw-sound", "with nothing wrong";
    WITH_FAULT = "problem-draw-with-fault", "with the fault {fault}";
    WITH_FAULTS = "problem-draw-with-faults", "with the faults {faults}";
    BROKE = "problem-draw-broke", "{share} % of them broke the limit on {limit}.";
    NO_RESULT = "problem-draw-no-result", "In {share} % of them a calculation had no result: the draws reach outside what the formulas hold for.";
    BEYOND = "problem-draw-beyond", "{id}{notes}: {name} was {value} at the nearest, and {bound}";
    OF_FAMILY = "problem-draw-of-family", "of the family {family}";
    LEAST = "problem-draw-least", "the least allowed is {value}";
    LARGEST = "problem-draw-largest", "the largest allowed is {value}";
    OFTEN_LIMIT = "problem-draw-often-limit", "{count} times it was the limit on {limit}{with}";
    OFTEN_NO_RESULT = "problem-draw-often-no-result", "{count} times a calculation had no result{with}";
    OFTEN_WITH = "problem-draw-often-with", "{count} times with the fault \"{fault}\" ({name})";
    NARROW = "problem-draw-narrow", "Narrow the draws, or mend the values they start from.";
    WIDEN = "problem-draw-widen", "Widen the limit, or narrow the draws that break it.";
    MEND_VALUES = "problem-draw-mend-values", "Mend the values that break it.";
    OTHER_LIMIT = "problem-draw-other-limit", "Where your drive is right and the limit is not, take another one here, in place of that of {family}; change what it allows:\n{lines}";
    LEAVE_OUT = "problem-draw-leave-out", "Where your values are right, your drive has too much in reserve to have this fault, or cannot have it: leave it out, beside `like`:\n{line}\nElse mend the values that keep it from being drawn.";
} }

/// Why no machine of a family could be drawn.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct CannotDraw {
    /// The family.
    pub family: Box<str>,
    /// Which machine was wanted, as the end of a sentence: with nothing wrong, or with which faults.
    pub wanted: Box<str>,
    /// What most attempts failed on, as a sentence.
    pub because: Box<str>,
    /// The limit at fault, a place in the family's; `None` where calculations had no result.
    pub limit: Option<usize>,
    /// Where in the family's file, if one limit is at fault.
    pub span: Option<core::ops::Range<usize>>,
    /// What can be done about it.
    pub mend: Box<str>,
    /// The row of the family's pool that was drawn from, where it was one alone.
    pub row: Option<u16>,
    /// The one column of the family's table that is at fault, where it can be told.
    pub column: Option<QuantityId>,
    /// What was tried for: the seed and the faults.
    pub(super) tried: Box<(u64, Vec<usize>)>,
}

impl CannotDraw {
    /// The faults of the machine that was wanted, places in the family's.
    pub fn faults(&self) -> &[usize] {
        &self.tried.1
    }
}

impl fmt::Display for CannotDraw {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&told!(
            CANNOT,
            "family" = self.family,
            "attempts" = MOST_ATTEMPTS.to_string(),
            "wanted" = self.wanted,
            "why" = self.because,
        ))
    }
}

impl core::error::Error for CannotDraw {}

impl From<CannotDraw> for Problem {
    fn from(error: CannotDraw) -> Self {
        Self { span: error.span.clone(), what: error.to_string(), mend: error.mend.into() }
    }
}

/// What attempts failed on.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Broken {
    /// For each limit, how many attempts broke it first, and the value that came nearest to it (NaN before one did).
    limits: Vec<(u32, f64)>,
    /// How many attempts a calculation had no result for.
    refused: u32,
}

impl Broken {
    pub(super) fn none(family: &Family) -> Self {
        Self { limits: vec![(0, f64::NAN); family.limits.len()], refused: 0 }
    }

    /// Counts an attempt that failed on the limit at this place, or on a calculation.
    pub(super) fn count(&mut self, family: &Family, limit: Option<usize>, values: &[f64]) {
        let Some(place) = limit else {
            self.refused += 1;
            return;
        };
        let limit = &family.limits[place];
        let (count, nearest) = &mut self.limits[place];
        *count += 1;
        *nearest = nearer(limit, *nearest, values[limit.quantity.index()]);
    }

    /// Counts what `other` counted as well.
    fn add(&mut self, family: &Family, other: &Self) {
        self.refused += other.refused;
        for ((limit, (count, nearest)), (more, value)) in family.limits.iter().zip(&mut self.limits).zip(&other.limits)
        {
            *count += more;
            *nearest = nearer(limit, *nearest, *value);
        }
    }

    /// The place of the limit that most attempts broke, the first of those alike, with how many did and what came nearest.
    fn worst(&self) -> Option<(usize, u32, f64)> {
        let most = (0..self.limits.len()).max_by_key(|place| (self.limits[*place].0, core::cmp::Reverse(*place)))?;
        let (count, nearest) = self.limits[most];
        (count >= self.refused.max(1)).then_some((most, count, nearest))
    }
}

/// How often machines of a family are drawn again, and why.
#[derive(Debug, Clone, PartialEq)]
pub struct Rejections {
    /// Machines kept.
    pub kept: u32,
    /// Machines of which no attempt was kept, each with why.
    pub undrawn: Vec<CannotDraw>,
    /// Attempts that broke a limit, or that a calculation refused.
    pub rejected: u32,
    /// What rejects most, as a sentence: how often, the limit, what came nearest to it, and the fault, if one mostly has to
    /// do with it.
    pub most: String,
    /// The limit that rejects most, a place in the family's; `None` where it is calculations without a result.
    pub worst: Option<usize>,
    /// Rows of the pool that are kept far more often than the others.
    pub favoured: Vec<Favoured>,
}

/// A row of the pool that is kept far more often than the others: more than twice its even share, and by more than chance
/// would have it.
#[derive(Debug, Clone, PartialEq)]
pub struct Favoured {
    /// Which.
    pub row: usize,
    /// Its share of the machines kept.
    pub share: f64,
    /// What rejects the others most, as [`Rejections::most`] says it.
    pub most: String,
    /// The limit that does, a place in the family's; `None` where it is calculations without a result.
    pub worst: Option<usize>,
}

impl Rejections {
    /// Machines rejected for each one kept.
    pub fn rate(&self) -> f64 {
        f64::from(self.rejected) / f64::from(self.kept.max(1))
    }
}

impl Plan {
    /// What the machines of `seeds` are rejected for before one is kept.
    pub fn rejections(&self, seeds: impl Iterator<Item = u64>) -> Rejections {
        let mut all = Broken::none(&self.family);
        // For each fault, and at the end for sound machines, how often each limit was broken.
        let mut by_fault = vec![all.clone(); self.family.faults.len() + 1];
        // For each row of the pool, how many machines are kept, and how often each limit was broken.
        let mut by_row = vec![(0_u32, all.clone()); self.family.pool.len()];
        let (mut kept, mut undrawn) = (0, Vec::new());
        for seed in seeds {
            let faults = self.pick_faults(&mut Stream::new(seed, "faults"));
            let mut broken = Broken::none(&self.family);
            let mut case = Case { seed, rejected: 0, faults, values: vec![f64::NAN; Registry::get().len()] };
            let drawn = self.try_for(&mut case, None, None, |seed, limit, values| {
                broken.count(&self.family, limit, values);
                if !by_row.is_empty() {
                    by_row[self.row(seed)].1.count(&self.family, limit, values);
                }
            });
            if drawn && !by_row.is_empty() {
                by_row[self.row(derive(seed, u64::from(case.rejected)))].0 += 1;
            }
            all.add(&self.family, &broken);
            let sound = [self.family.faults.len()];
            let kinds = if case.faults.is_empty() { &sound[..] } else { &case.faults };
            kinds.iter().for_each(|kind| by_fault[*kind].add(&self.family, &broken));
            if drawn {
                kept += 1;
            } else {
                undrawn.push(self.cannot(&broken, seed, case.faults));
            }
        }
        let rejected = all.limits.iter().map(|(count, _)| count).sum::<u32>() + all.refused;
        let worst = all.worst();
        let count_of = |broken: &Broken| worst.map_or(broken.refused, |(place, ..)| broken.limits[place].0);
        let mostly =
            (self.family.faults.iter().zip(&by_fault)).find(|(_, broken)| count_of(broken) * 2 > count_of(&all));
        let with = mostly.map_or_else(String::new, |(fault, broken)| {
            let count = count_of(broken).to_string();
            format!(", {}", told!(OFTEN_WITH, "count" = count, "fault" = fault.id, "name" = fault.name))
        });
        let most = self.often(&all, &with);
        let favoured = self.favoured(&by_row);
        Rejections { kept, undrawn, rejected, most, worst: worst.map(|(place, ..)| place), favoured }
    }

    /// What `broken` failed on most and how often, `with` behind it.
    fn often(&self, broken: &Broken, with: &str) -> String {
        match broken.worst() {
            Some((place, count, nearest)) => {
                let limit = self.beyond(place, nearest);
                told!(OFTEN_LIMIT, "count" = count.to_string(), "limit" = limit, "with" = with)
            }
            None => told!(OFTEN_NO_RESULT, "count" = broken.refused.to_string(), "with" = with),
        }
    }

    /// The rows kept far more often than the others: of each row, how many machines were kept, and what was not.
    fn favoured(&self, by_row: &[(u32, Broken)]) -> Vec<Favoured> {
        /// Standard deviations of an even draw that chance does not bridge.
        const DEVIATIONS: f64 = 4.0;
        let kept: f64 = by_row.iter().map(|(kept, _)| f64::from(*kept)).sum();
        let even = 1.0 / by_row.len().max(1) as f64;
        let chance = (kept * even * (1.0 - even)).sqrt();
        let often = |kept_of: f64| kept_of > 2.0 * even * kept && kept_of - even * kept >= DEVIATIONS * chance;
        let rows = by_row.iter().enumerate().filter(|(_, (kept, _))| often(f64::from(*kept)));
        rows.map(|(row, (kept_of, _))| {
            let mut others = Broken::none(&self.family);
            let beside = by_row.iter().enumerate().filter(|(other, _)| *other != row);
            beside.for_each(|(_, (_, broken))| others.add(&self.family, broken));
            Favoured {
                row,
                share: f64::from(*kept_of) / kept,
                most: self.often(&others, ""),
                worst: others.worst().map(|(place, ..)| place),
            }
        })
        .collect()
    }

    /// What most attempts at a machine with these faults failed on.
    pub(super) fn cannot(&self, broken: &Broken, seed: u64, faults: Vec<usize>) -> CannotDraw {
        if cfg!(wordless) {
            return CannotDraw::default();
        }
        let share = |count: u32| format!("{:.0}", f64::from(count) / f64::from(MOST_ATTEMPTS) * 100.0);
        let worst = broken.worst();
        let (because, limit, span) = match worst {
            Some((place, count, nearest)) => (
                told!(BROKE, "share" = share(count), "limit" = self.beyond(place, nearest)),
                Some(place),
                Some(self.family.limits[place].span.clone()),
            ),
            None => (told!(NO_RESULT, "share" = share(broken.refused)), None, None),
        };
        let named: Vec<_> = (faults.iter())
            .map(|fault| &self.family.faults[*fault])
            .map(|fault| format!("\"{}\" ({})", fault.id, fault.name))
            .collect();
        let wanted = match named.as_slice() {
            [] => told!(SOUND),
            [one] => told!(WITH_FAULT, "fault" = one),
            more => told!(WITH_FAULTS, "faults" = more.join(&format!(" {} ", amount::AND.text()))),
        };
        let mend = self.mend(limit.map(|place| &self.family.limits[place]), &faults);
        let family = self.family.id.as_str().into();
        let (wanted, because, mend) = (wanted.into(), because.into(), mend.into());
        CannotDraw {
            family,
            wanted,
            because,
            limit,
            span,
            mend,
            row: None,
            column: None,
            tried: Box::new((seed, faults)),
        }
    }

    /// What can be done where machines with these faults break `limit`, with lines to copy.
    fn mend(&self, limit: Option<&Limit>, faults: &[usize]) -> String {
        let Some(limit) = limit else { return told!(NARROW) };
        let leave_out = match faults {
            [fault] if !limit.of.is_empty() => Some(format!("without = [\"{}\"]", self.family.faults[*fault].id)),
            _ => None,
        };
        // Sound machines have been drawn with the same values: they are more likely right than not.
        let mut out = match (&leave_out, limit.of.is_empty()) {
            (Some(line), _) => told!(LEAVE_OUT, "line" = line),
            (None, true) => told!(WIDEN),
            (None, false) => told!(MEND_VALUES),
        };
        if !limit.of.is_empty() && !matches!(limit.asked, Asked::Fault(_)) {
            let bound = |name: &str, value: f64| match value.is_finite() {
                true => format!("\n{name} = \"{}\"", written(limit.quantity, value, self.family.told_in)),
                false => String::new(),
            };
            let lines = format!(
                "[[limit]]\nquantity = \"{}\"{}{}{}",
                limit.quantity.get().id,
                bound("at_least", limit.at_least),
                bound("at_most", limit.at_most),
                if limit.asked == Asked::Healthy { "\nhealthy = true" } else { "" }
            );
            out += &format!(" {}", told!(OTHER_LIMIT, "family" = limit.of, "lines" = lines));
        }
        out
    }

    /// The limit at this place, why there is one, and what came nearest to it: `chain.wrap_small (of quarry-conveyor; less
    /// wrap lets the chain climb the teeth): at the nearest it was 113.2°, and the least allowed is 120°`.
    pub(super) fn beyond(&self, place: usize, nearest: f64) -> String {
        let limit = &self.family.limits[place];
        let from = if limit.of.is_empty() { String::new() } else { told!(OF_FAMILY, "family" = limit.of) };
        let notes: Vec<_> = [from, limit.reason()].into_iter().filter(|note| !note.is_empty()).collect();
        let notes = if notes.is_empty() { String::new() } else { format!(" ({})", notes.join("; ")) };
        let quantity = limit.quantity.get();
        let bound = if nearest < limit.at_least {
            told!(LEAST, "value" = amount::write_exact(quantity, limit.at_least, self.family.told_in))
        } else {
            told!(LARGEST, "value" = amount::write_exact(quantity, limit.at_most, self.family.told_in))
        };
        let value = amount::write_exact(quantity, nearest, self.family.told_in);
        told!(BEYOND, "id" = quantity.id, "notes" = notes, "name" = quantity.name, "value" = value, "bound" = bound,)
    }
}

/// Which of two values beyond `limit` is nearer to it; the other one where one is not known.
fn nearer(limit: &Limit, one: f64, two: f64) -> f64 {
    let beyond = |value: f64| (limit.at_least - value).max(value - limit.at_most);
    if one.is_nan() || beyond(two) < beyond(one) { two } else { one }
}
