//! Reads a family from its file, with every mistake found in one pass.

use std::collections::BTreeSet;

use toml::Spanned;
use toml::Value as Toml;

use super::file::{File, LimitFile, Shares, Values};
use super::said::*;
use super::table::{FamilyProblem, machines};
use super::{Asked, Draw, Family, Fault, Lacks, Limit, OwnTable, Place, Stated};
use crate::amount::{self, Unstated};
use crate::problem::{NO_POSSIBILITY, NO_QUANTITY, Problem, did_you_mean, other_quantity, quoted};
use crate::quantity::Quantity;
use crate::registry::{QuantityId, Registry, nearest};
use crate::toml_file::read_toml;
use crate::topics;
use crate::unit::Kind;

impl Family {
    /// Reads the family `id` from TOML.
    ///
    /// # Errors
    /// Every [`Problem`] found, in one pass; one for a family that is like another ([`Self::read_beside`] reads those).
    pub fn read(id: &str, text: &str) -> Result<Self, Vec<Problem>> {
        Self::read_beside(id, text, &[])
    }

    /// Reads the family `id`, which may be like one of `others`.
    ///
    /// # Errors
    /// Every [`Problem`] found, in one pass.
    pub fn read_beside(id: &str, text: &str, others: &[&Self]) -> Result<Self, Vec<Problem>> {
        Self::read_whole(id, text, others, |_| None)
            .map_err(|problems| problems.into_iter().map(|found| found.problem).collect())
    }

    /// Reads the family `id`, which may be like one of `others`, the first of that id, and may draw from a table of
    /// machines that `table` knows by its name.
    ///
    /// # Errors
    /// Every problem found, in one pass, each in the family's file or in the table.
    pub fn read_whole(
        id: &str,
        text: &str,
        others: &[&Self],
        table: impl Fn(&str) -> Option<String>,
    ) -> Result<Self, Vec<FamilyProblem>> {
        let own = |problem| FamilyProblem { table: None, problem };
        let file: File = read_toml(text).map_err(|problems| problems.into_iter().map(own).collect::<Vec<_>>())?;
        let mut in_table = Vec::new();
        let mut reader = Reader::default();
        let mut roots = reader.draws(&file.fixed, true);
        for (quantity, draw) in reader.draws(&file.draw, false) {
            if let Some(key) = file.draw.keys().find(|key| Registry::get().find(key.get_ref()) == Some(quantity))
                && roots.iter().any(|(other, _)| *other == quantity)
            {
                reader.say(key.span(), told!(BOTH, "name" = key.get_ref()), told!(BOTH_MEND));
            }
            roots.push((quantity, draw));
        }
        let mut pool = Vec::new();
        for row in &file.pool {
            let values = reader.draws(row, true);
            pool.push(
                values
                    .into_iter()
                    .filter_map(|(id, draw)| if let Draw::Fixed(value) = draw { Some((id, value)) } else { None })
                    .collect::<Vec<_>>(),
            );
        }
        // Names, and not values: one that cannot be read is a problem of its own.
        if let Some(first) = file.pool.first() {
            let named = |row: &Values| {
                let names = row.iter().flat_map(|(key, value)| {
                    let parted = parted(key.get_ref(), value.get_ref()).map(|(id, _)| id.get().id.to_owned());
                    let parted: Vec<_> = parted.collect();
                    if parted.is_empty() { vec![key.get_ref().clone()] } else { parted }
                });
                names.collect::<BTreeSet<_>>()
            };
            for row in file.pool.iter().filter(|row| named(row) != named(first)) {
                reader.problems.push(Problem {
                    span: row.keys().next().map(Spanned::span),
                    what: told!(POOL_ROW),
                    mend: told!(POOL_ROW_MEND),
                });
            }
        }
        let (mut names, mut own_table) = (Vec::new(), None);
        if let Some(name) = &file.machines {
            match table(name.get_ref()) {
                _ if !pool.is_empty() => reader.say(name.span(), told!(TWO_TABLES), told!(TWO_TABLES_MEND)),
                None => reader.say(name.span(), told!(NO_TABLE, "name" = quoted(name.get_ref())), told!(NO_TABLE_MEND)),
                Some(text) => {
                    let mut beside = Reader::default();
                    let like = file.like.as_ref().and_then(|like| others.iter().find(|it| it.id == *like.get_ref()));
                    let usual = like.and_then(|like| like.pool.first()).into_iter().flatten();
                    let usual: Vec<_> = usual.map(|(id, _)| *id).collect();
                    let read = machines(&text, &usual, &mut beside);
                    (names, pool) = (read.names, read.pool);
                    let file = name.get_ref();
                    let in_file = |problem| FamilyProblem { table: Some(file.clone()), problem };
                    in_table.extend(beside.problems.into_iter().map(in_file));
                    own_table = Some(OwnTable {
                        file: file.clone(),
                        headings: read.headings,
                        columns: read.columns,
                        rows: read.rows,
                        cells: read.cells,
                        strange: Vec::new(),
                    });
                }
            }
        }
        let mut limits: Vec<_> = file.limit.iter().filter_map(|limit| reader.limit(limit, None)).collect();
        let mut faults: Vec<Fault> = Vec::new();
        for fault in &file.fault {
            if faults.iter().any(|other| &other.id == fault.id.get_ref()) {
                reader.say(
                    fault.id.span(),
                    told!(TWO_FAULTS, "name" = quoted(fault.id.get_ref())),
                    told!(TWO_FAULTS_MEND),
                );
            }
            if !(fault.weight > 0.0 && fault.weight.is_finite()) {
                reader.say(fault.id.span(), told!(WEIGHT), told!(WEIGHT_MEND));
            }
            reader.fault = Some(fault.id.get_ref().clone());
            let draws = reader.draws(&fault.draw, false);
            limits.extend(fault.limit.iter().filter_map(|limit| reader.limit(limit, Some(faults.len()))));
            faults.push(Fault {
                id: fault.id.get_ref().clone(),
                name: fault.name.clone(),
                weight: fault.weight,
                draws,
            });
        }
        let other = match &file.like {
            None => None,
            Some(like) => {
                let other = others.iter().find(|other| other.id == *like.get_ref()).copied();
                if other.is_none() {
                    // One of the program's may have this family's own name: this one may be like it.
                    let mut names: Vec<_> = others.iter().map(|other| other.id.as_str()).collect();
                    names.sort_unstable();
                    names.dedup();
                    let mend = match nearest(like.get_ref(), names.iter().copied()) {
                        Some(near) => did_you_mean(near),
                        None if names.is_empty() => told!(NO_LIKE_AT_ALL),
                        None => told!(NO_LIKE_MEND, "names" = names.join(", ")),
                    };
                    reader.say(like.span(), told!(NO_LIKE, "name" = quoted(like.get_ref())), mend);
                }
                other.zip(Some(like.span()))
            }
        };
        if let (None, Some(first)) = (&file.like, file.without.first()) {
            reader.say(first.span(), told!(WITHOUT), told!(WITHOUT_MEND));
        }
        if let (None, Some(first)) = (&file.like, file.topics.first()) {
            reader.say(first.span(), told!(TOPICS), told!(WITHOUT_MEND));
        }
        let known = || topics::ALL.iter().map(|topic| topic.id);
        for topic in file.topics.iter().filter(|topic| !known().any(|id| id == topic.get_ref())) {
            let all = || told!(TOPICS_ARE, "names" = known().collect::<Vec<_>>().join(", "));
            let mend = nearest(topic.get_ref(), known()).map_or_else(all, did_you_mean);
            reader.say(topic.span(), told!(NO_TOPIC, "name" = quoted(topic.get_ref())), mend);
        }
        let usual = other
            .as_ref()
            .map_or_else(Shares::default, |(other, _)| Shares { healthy: other.healthy, pairs: other.pairs });
        let shares = file.faults.unwrap_or(usual);
        let share = |value: f64| (0.0..=1.0).contains(&value);
        if !share(shares.healthy) || !share(shares.pairs) {
            reader.problems.push(Problem {
                span: text.find("[faults]").map(|at| at..at + "[faults]".len()),
                what: told!(SHARES),
                mend: told!(SHARES_MEND),
            });
        }
        roots.sort_by_key(|(id, _)| *id);
        let Shares { healthy, pairs } = shares;
        let mut family = Self {
            id: id.to_owned(),
            name: file.name,
            about: file.about,
            roots,
            pool,
            machines: names,
            stated: core::mem::take(&mut reader.stated).into(),
            limits,
            faults,
            healthy,
            pairs,
            places: core::mem::take(&mut reader.places),
            lacks: Lacks::default(),
            table: own_table,
        };
        if let Some((other, place)) = other {
            let without: Vec<_> = file.without.iter().map(|id| (id.get_ref().clone(), id.span())).collect();
            let row = file.pool.first().and_then(|row| row.keys().map(Spanned::span).min_by_key(|span| span.start));
            let table = file.machines.as_ref().map(Spanned::span).or(row).unwrap_or_default();
            let topics: Vec<_> = file.topics.iter().map(|topic| topic.get_ref().as_str()).collect();
            let named = |id| family.limits.iter().any(|limit| limit.quantity == id);
            let reduced = (!topics.is_empty()).then(|| other.only(&topics, named));
            let other = reduced.as_ref().unwrap_or(other);
            reader.problems.extend(family.take_over(other, &without, &place, table));
        }
        in_table.extend(reader.problems.into_iter().map(own));
        if in_table.is_empty() { Ok(family) } else { Err(in_table) }
    }
}

/// The quantities in a table that is there only because their names stand without quotation marks: `chain.size = "80"`.
fn parted<'v>(name: &str, value: &'v Toml) -> impl Iterator<Item = (QuantityId, &'v Toml)> {
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

#[derive(Default)]
pub(super) struct Reader {
    pub(super) problems: Vec<Problem>,
    /// Fixed values met that name their source.
    stated: Vec<Stated>,
    /// Where quantities are named, and the fault that is read now.
    places: Vec<Place>,
    fault: Option<String>,
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

    fn draws(&mut self, values: &Values, fixed: bool) -> Vec<(QuantityId, Draw)> {
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
            plain => return self.value(id, plain, &span).map(Draw::Fixed),
        };
        let list = |this: &mut Self, key: &str| -> Option<Vec<f64>> {
            let Some(Toml::Array(items)) = table.get(key) else {
                this.say(span.clone(), told!(LIST, "key" = key), told!(LIST_MEND, "key" = key));
                return None;
            };
            // All of them, so that one that cannot be read hides no other.
            let read: Vec<_> = items.iter().map(|item| this.value(id, item, &span)).collect();
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
                let middle = self.value(id, &table["about"], &span);
                // A spread of temperatures is a difference; of anything else, a value of the same kind.
                let spread = if id.get().kind == Kind::Temperature {
                    self.amount(Kind::TemperatureRise, None, &table["spread"], &span)
                } else {
                    self.value(id, &table["spread"], &span)
                };
                Some(Draw::About { middle: middle?, spread: spread?.abs() })
            }
            ["between", "of"] => self.share(id, table, &span),
            _ => {
                let what = match keys.is_empty() {
                    true => told!(EMPTY_DRAW),
                    false => told!(NO_DRAW, "keys" = keys.join(&format!(" {} ", amount::AND.text()))),
                };
                self.say(span, what, told!(NO_DRAW_MEND));
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
        let value = self.value(id, value, span)?;
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
        let ends: Vec<_> = (table["between"].as_array().into_iter().flatten())
            .map(|end| self.amount(Kind::Ratio, None, end, span))
            .collect();
        let ends = ends.into_iter().collect::<Option<Vec<f64>>>()?;
        match ends.as_slice() {
            &[low, high] if low <= high => Some(Draw::Share { of, low, high }),
            _ => {
                self.say(span.clone(), told!(TWO_SHARES), told!(TWO_SHARES_MEND));
                None
            }
        }
    }

    pub(super) fn value(&mut self, id: QuantityId, value: &Toml, span: &core::ops::Range<usize>) -> Option<f64> {
        let quantity = id.get();
        if quantity.kind == Kind::Choice {
            if is_unquoted(id, value) {
                let text = quoted(&value.to_string());
                self.say(span.clone(), told!(NOT_QUOTED, "name" = quantity.id), told!(WRITE_SO, "lines" = text));
                return None;
            }
            let text = value.as_str().unwrap_or_default();
            let found = quantity.choices.iter().position(|choice| *choice == text);
            if found.is_none() {
                self.say(
                    span.clone(),
                    told!(NO_POSSIBILITY, "written" = value.to_string(), "name" = quantity.id),
                    amount::choices_of(quantity, text),
                );
            }
            return found.map(|index| index as f64);
        }
        self.amount(quantity.kind, Some(quantity), value, span)
    }

    fn amount(
        &mut self,
        kind: Kind,
        of: Option<&Quantity>,
        value: &Toml,
        span: &core::ops::Range<usize>,
    ) -> Option<f64> {
        let text = match value {
            Toml::String(text) => text.clone(),
            Toml::Integer(number) => number.to_string(),
            Toml::Float(number) => number.to_string(),
            other => other.to_string(),
        };
        match amount::stated(&text, kind, of) {
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

    fn limit(&mut self, limit: &LimitFile, fault: Option<usize>) -> Option<Limit> {
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
        Some(Limit { quantity: id, at_least, at_most, because, source, asked, span, of: String::new() })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn told(text: &str) -> Vec<String> {
        let problems = Family::read("test", text).unwrap_err();
        problems.iter().map(ToString::to_string).collect()
    }

    #[test]
    fn what_lacks_its_quotation_marks_is_shown_with_them() {
        for (written, line) in [
            ("[fixed]\n\"chain.size\" = 80", "\n\"chain.size\" = \"80\""),
            (
                "[fixed]\nchain.size = 80\nchain.teeth_small = 19",
                "\n\"chain.size\" = \"80\"\n\"chain.teeth_small\" = 19",
            ),
            ("[[pool]]\nchain.size = \"80\"", "\n\"chain.size\" = \"80\""),
            ("[draw]\n\"chain.size\" = { choose = [\"80\", 60] }", "Write it so:\n\"60\""),
            ("[fixed]\n\"drive.motor_power\" = 7.5 kW", "\n\"drive.motor_power\" = \"7.5 kW\""),
            ("[fixed]\n\"chain.size\" = 08B", "\n\"chain.size\" = \"08B\""),
        ] {
            let told = told(&format!("name = \"Test\"\n{written}\n"));
            assert_eq!(told.len(), 1, "{written}: {told:?}");
            assert!(told[0].ends_with(line), "{written}: {told:?}");
        }
        assert!(told("name = \"Test\"\n[fixed]\n\"chain.size\" = 81\n")[0].contains("81 is none of the possibilities"));
    }

    #[test]
    fn one_value_that_cannot_be_read_hides_no_other() {
        for (written, count) in [
            ("[draw]\n\"chain.size\" = { choose = [\"81\", \"60\", \"82\"] }", 2),
            ("[draw]\n\"heat.ambient\" = { between = [\"cold\", \"warm\"] }", 2),
            ("[draw]\n\"heat.ambient\" = { about = \"cold\", spread = \"some\" }", 2),
            ("[[limit]]\nquantity = \"heat.ambient\"\nat_least = \"cold\"\nat_most = \"warm\"", 2),
            // A row of which one value cannot be read names the same quantities as the others all the same.
            ("[[pool]]\n\"chain.size\" = \"80\"\n[[pool]]\n\"chain.size\" = \"81\"", 1),
            ("[[pool]]\n\"chain.size\" = \"80\"\n[[pool]]\nchain.size = \"60\"", 1),
        ] {
            let told = told(&format!("name = \"Test\"\n{written}\n"));
            assert_eq!(told.len(), count, "{written}: {told:?}");
        }
    }
}
