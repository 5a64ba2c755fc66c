//! Reads the quantities, values and limits of a family's file.

use toml::Spanned;
use toml::Value as Toml;

use super::file::{LimitFile, Values};
use super::said::*;
use super::written::written;
use super::{Asked, Draw, Limit, Place, Stated};
use crate::amount::{self, Unstated};
use crate::instrument::Figures;
use crate::problem::{NO_POSSIBILITY, NO_QUANTITY, Problem, other_quantity, quoted};
use crate::quantity::Quantity;
use crate::registry::{QuantityId, Registry};
use crate::unit::{Kind, System, Unit};

/// The quantities in a table that is there only because their names stand without quotation marks: `chain.size = "80"`.
pub(super) fn parted<'v>(name: &str, value: &'v Toml) -> impl Iterator<Item = (QuantityId, &'v Toml)> {
    let registry = Registry::get();
    let inside = value.as_table().filter(|_| registry.find(name).is_none()).into_iter().flatten();
    inside.filter_map(move |(key, value)| Some((registry.find(&format!("{name}.{key}"))?, value)))
}

/// Whether `value` is one of the choices of a quantity, and only its quotation marks are missing.
fn is_unquoted(id: QuantityId, value: &Toml) -> bool {
    let text = if value.is_str() { String::new() } else { value.to_string() };
    id.get().kind == Kind::Choice && id.get().choices.contains(&text.as_str())
}

/// A line to copy that gives the quantity this value.
fn copied(id: QuantityId, value: &Toml) -> String {
    let value = if is_unquoted(id, value) { quoted(&value.to_string()) } else { value.to_string() };
    format!("\"{}\" = {value}", id.get().id)
}

/// Reads quantities, what they are drawn from, values and limits, and keeps what is wrong with them.
#[derive(Default)]
pub(super) struct Reader {
    pub(super) problems: Vec<Problem>,
    /// Fixed values met that name their source.
    pub(super) stated: Vec<Stated>,
    /// Where quantities are named, and the fault that is read now.
    pub(super) places: Vec<Place>,
    pub(super) fault: Option<String>,
}

impl Reader {
    pub(super) fn say(&mut self, span: core::ops::Range<usize>, what: impl Into<String>, mend: impl Into<String>) {
        self.problems.push(Problem::at(span, what, mend));
    }

    fn quantity(&mut self, name: &Spanned<String>) -> Option<QuantityId> {
        let registry = Registry::get();
        let found = registry.find(name.get_ref());
        if found.is_none() {
            let mend = other_quantity(registry.suggestion(name.get_ref()));
            self.say(name.span(), told!(NO_QUANTITY, "name" = quoted(name.get_ref())), mend);
        }
        found
    }

    pub(super) fn draws(&mut self, values: &Values, fixed: bool) -> Vec<(QuantityId, Draw)> {
        let mut out = Vec::new();
        for (name, value) in values {
            if self.dotted(name, value.get_ref()) {
                continue;
            }
            let Some(id) = self.quantity(name) else { continue };
            self.places.push(Place { quantity: id, fault: self.fault.clone(), span: name.span() });
            if let Some(draw) = self.draw(id, value, fixed) {
                out.push((id, draw));
            }
        }
        out.sort_by_key(|(id, _)| *id);
        out
    }

    /// Whether the name of a quantity stands here without quotation marks, so that its point begins a table; says so.
    fn dotted(&mut self, name: &Spanned<String>, value: &Toml) -> bool {
        let lines: Vec<_> = parted(name.get_ref(), value).map(|(id, value)| copied(id, value)).collect();
        if !lines.is_empty() {
            let what = told!(DOTTED, "name" = name.get_ref());
            self.say(name.span(), what, told!(WRITE_SO, "lines" = lines.join("\n")));
        }
        !lines.is_empty()
    }

    fn draw(&mut self, id: QuantityId, value: &Spanned<Toml>, fixed: bool) -> Option<Draw> {
        let span = value.span();
        let table = match value.get_ref() {
            Toml::Table(table) if !fixed => table,
            Toml::Table(table) => return self.stated(id, table, &span),
            plain if is_unquoted(id, plain) => {
                let lines = copied(id, plain);
                self.say(span, told!(NOT_QUOTED, "name" = id.get().id), told!(WRITE_SO, "lines" = lines));
                return None;
            }
            plain => return self.own(id, plain, &span).map(Draw::Fixed),
        };
        let list = |this: &mut Self, key: &str| -> Option<Vec<f64>> {
            let Some(Toml::Array(items)) = table.get(key) else {
                this.say(span.clone(), told!(LIST, "key" = key), told!(LIST_MEND, "key" = key));
                return None;
            };
            // All of them, so that one that cannot be read hides no other.
            let read: Vec<_> = items.iter().map(|item| this.own(id, item, &span)).collect();
            read.into_iter().collect()
        };
        let mut keys: Vec<&str> = table.keys().map(String::as_str).collect();
        keys.sort_unstable();
        match keys.as_slice() {
            ["between"] => match list(self, "between")?.as_slice() {
                [low, high] if low <= high => Some(Draw::Between(*low, *high)),
                [_, _] => {
                    self.say(span, told!(ORDER), told!(ORDER_MEND));
                    None
                }
                _ => {
                    self.say(span, told!(TWO_VALUES), told!(TWO_VALUES_MEND));
                    None
                }
            },
            ["choose"] => {
                let choices = list(self, "choose")?;
                if choices.is_empty() {
                    self.say(span, told!(NO_CHOICE), told!(NO_CHOICE_MEND));
                    return None;
                }
                Some(Draw::Choose(choices))
            }
            ["about", "spread"] => {
                let middle = self.own(id, &table["about"], &span);
                // A spread of temperatures is a difference; of anything else, a value of the same kind.
                let spread = if id.get().kind == Kind::Temperature {
                    self.amount(Kind::TemperatureRise, None, &table["spread"], &span)
                } else {
                    self.value(id, &table["spread"], &span)
                };
                Some(Draw::About { middle: middle?, spread: spread?.abs() })
            }
            ["between" | "choose", "of"] => self.share(id, table, &span),
            _ => {
                let what = match keys.is_empty() {
                    true => told!(EMPTY_DRAW),
                    false => told!(NO_DRAW, "keys" = keys.join(&format!(" {} ", amount::AND.text()))),
                };
                let stated = keys.contains(&"value");
                self.say(span, what, if stated { told!(STATED_IN_DRAW) } else { told!(NO_DRAW_MEND) });
                None
            }
        }
    }

    /// A fixed value of the plant's own, with its source.
    fn stated(&mut self, id: QuantityId, table: &toml::Table, span: &core::ops::Range<usize>) -> Option<Draw> {
        let text = |key: &str| table.get(key).and_then(Toml::as_str).unwrap_or_default().trim().to_owned();
        let known = table.keys().all(|key| matches!(key.as_str(), "value" | "source" | "because"));
        let (Some(value), true, false) = (table.get("value"), known, text("source").is_empty()) else {
            self.say(span.clone(), told!(STATED), told!(STATED_MEND));
            return None;
        };
        let value = self.own(id, value, span)?;
        self.stated.push(Stated { quantity: id, source: text("source"), because: text("because") });
        Some(Draw::Fixed(value))
    }

    /// Shares of another quantity of the same kind.
    fn share(&mut self, id: QuantityId, table: &toml::Table, span: &core::ops::Range<usize>) -> Option<Draw> {
        let name = table["of"].as_str().unwrap_or_default();
        let of = self.quantity(&Spanned::new(span.clone(), name.to_owned()))?;
        let kind = id.get().kind;
        if of.get().kind != kind || matches!(kind, Kind::Choice | Kind::Count | Kind::Temperature) {
            self.say(span.clone(), told!(NO_SHARE, "name" = id.get().id, "other" = name), told!(NO_SHARE_MEND));
            return None;
        }
        let choose = table.get("choose");
        let listed = choose.or_else(|| table.get("between")).and_then(Toml::as_array);
        let shares: Vec<_> =
            listed.into_iter().flatten().map(|share| self.amount(Kind::Ratio, None, share, span)).collect();
        let shares = shares.into_iter().collect::<Option<Vec<f64>>>()?;
        match shares.as_slice() {
            [_, ..] if choose.is_some() => Some(Draw::ShareAmong { of, shares }),
            &[low, high] if low <= high => Some(Draw::Share { of, low, high }),
            _ => {
                let [what, mend] =
                    if choose.is_some() { [NO_CHOICE, NO_CHOICE_MEND] } else { [TWO_SHARES, TWO_SHARES_MEND] };
                self.say(span.clone(), told!(what), told!(mend));
                None
            }
        }
    }

    /// A value that machines are to have: one that a quantity can have by what it is.
    fn own(&mut self, id: QuantityId, value: &Toml, span: &core::ops::Range<usize>) -> Option<f64> {
        let base = self.value(id, value, span)?;
        self.possible(id, base, span)
    }

    /// The value of a cell of a table, in the unit of its column where it has none of its own.
    pub(super) fn cell(
        &mut self,
        id: QuantityId,
        text: &str,
        unit: Option<&'static Unit>,
        span: &core::ops::Range<usize>,
    ) -> Option<f64> {
        let base = self.value_in(id, &Toml::String(text.to_owned()), unit, span)?;
        self.possible(id, base, span)
    }

    /// `base` (SI), if the quantity can have it by what it is; says so where not.
    fn possible(&mut self, id: QuantityId, base: f64, span: &core::ops::Range<usize>) -> Option<f64> {
        let quantity = id.get();
        let (least, most) = quantity.reach();
        if (least..=most).contains(&base) {
            return Some(base);
        }
        let written = |value: f64| written(id, value, System::Si);
        let (says, end) = if base < least { (NEVER_BELOW, least) } else { (NEVER_ABOVE, most) };
        let (own, end) = (written(base), written(end));
        let what = told!(says, "id" = quantity.id, "name" = quantity.name, "value" = own, "end" = end);
        let mend = if quantity.is_either_way_up() && base > 0.0 {
            told!(RATIO_MEND, "value" = written(1.0 / base))
        } else if base > most && most == 1.0 && base <= 100.0 {
            told!(IN_PERCENT_MEND, "value" = Figures::Significant(6).round(base).to_string())
        } else {
            told!(NEVER_MEND)
        };
        self.say(span.clone(), what, mend);
        None
    }

    fn value(&mut self, id: QuantityId, value: &Toml, span: &core::ops::Range<usize>) -> Option<f64> {
        self.value_in(id, value, None, span)
    }

    fn value_in(
        &mut self,
        id: QuantityId,
        value: &Toml,
        unit: Option<&'static Unit>,
        span: &core::ops::Range<usize>,
    ) -> Option<f64> {
        let quantity = id.get();
        if quantity.kind == Kind::Choice {
            if is_unquoted(id, value) {
                let text = quoted(&value.to_string());
                self.say(span.clone(), told!(NOT_QUOTED, "name" = quantity.id), told!(WRITE_SO, "lines" = text));
                return None;
            }
            let text = value.as_str().unwrap_or_default();
            let found = amount::stated_choice(quantity, text);
            if found.is_none() {
                self.say(
                    span.clone(),
                    told!(NO_POSSIBILITY, "written" = value.to_string(), "name" = quantity.id),
                    amount::choices_of(quantity, text),
                );
            }
            return found.map(|index| index as f64);
        }
        self.amount_in(quantity.kind, Some(quantity), value, unit, span)
    }

    fn amount(
        &mut self,
        kind: Kind,
        of: Option<&Quantity>,
        value: &Toml,
        span: &core::ops::Range<usize>,
    ) -> Option<f64> {
        self.amount_in(kind, of, value, None, span)
    }

    fn amount_in(
        &mut self,
        kind: Kind,
        of: Option<&Quantity>,
        value: &Toml,
        unit: Option<&'static Unit>,
        span: &core::ops::Range<usize>,
    ) -> Option<f64> {
        let text = match value {
            Toml::String(text) => text.clone(),
            Toml::Integer(number) => number.to_string(),
            Toml::Float(number) => number.to_string(),
            other => other.to_string(),
        };
        match amount::stated_in(&text, kind, of, unit) {
            Ok(base) => Some(base),
            Err(Unstated { why, mend }) => {
                let written = quoted(&text);
                let what = match of {
                    Some(of) => told!(UNREADABLE_AS, "written" = written, "name" = of.id, "why" = why),
                    None => told!(UNREADABLE, "written" = written, "why" = why),
                };
                self.say(span.clone(), what, mend.unwrap_or_else(|| told!(TAKES, "kind" = kind.name())));
                None
            }
        }
    }

    pub(super) fn limit(&mut self, limit: &LimitFile, fault: Option<usize>) -> Option<Limit> {
        let id = self.quantity(&limit.quantity)?;
        let mut bound = |value: &Option<Spanned<Toml>>, open: f64| match value {
            Some(value) => self.value(id, value.get_ref(), &value.span()),
            None => Some(open),
        };
        let at_least = bound(&limit.at_least, f64::NEG_INFINITY);
        let at_most = bound(&limit.at_most, f64::INFINITY);
        let (at_least, at_most) = (at_least?, at_most?);
        if at_least > at_most {
            self.say(limit.quantity.span(), told!(NO_BETWEEN), told!(NO_BETWEEN_MEND));
        }
        let asked = match fault {
            Some(fault) if !limit.healthy => Asked::Fault(fault),
            Some(_) => {
                self.say(limit.quantity.span(), told!(HEALTHY), told!(HEALTHY_MEND));
                return None;
            }
            None if limit.healthy => Asked::Healthy,
            None => Asked::Always,
        };
        if limit.at_least.is_none() && limit.at_most.is_none() {
            self.say(limit.quantity.span(), told!(NO_BOUND), told!(NO_BOUND_MEND));
        }
        let (because, source, span) = (limit.because.clone(), limit.source.clone(), limit.quantity.span());
        let usual = limit.usual;
        Some(Limit { quantity: id, at_least, at_most, because, source, asked, usual, span, of: String::new() })
    }
}
