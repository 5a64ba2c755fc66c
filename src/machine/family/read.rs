//! Reads a family from its file, with every mistake found in one pass.

use toml::Spanned;
use toml::Value as Toml;

use super::file::{File, LimitFile, Shares, Values};
use super::table::{FamilyProblem, machines};
use super::{Asked, Draw, Family, Fault, Lacks, Limit, Place, Stated};
use crate::amount::{self, Wanted};
use crate::problem::Problem;
use crate::registry::{QuantityId, Registry, nearest};
use crate::toml_file::read_toml;
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
                reader.say(
                    key.span(),
                    format!("{} is both fixed and drawn.", key.get_ref()),
                    "Take it out of [fixed] or out of [draw].",
                );
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
        if let Some(first) = pool.first() {
            let wanted: Vec<_> = first.iter().map(|(id, _)| *id).collect();
            for (row, written) in pool.iter().zip(&file.pool) {
                let has: Vec<_> = row.iter().map(|(id, _)| *id).collect();
                if has != wanted {
                    let span = written.keys().next().map(Spanned::span);
                    reader.problems.push(Problem {
                        span,
                        what: "This [[pool]] row does not name the same quantities as the first one.".into(),
                        mend: "Give every row of the table of machines the same quantities.".into(),
                    });
                }
            }
        }
        let mut names = Vec::new();
        if let Some(name) = &file.machines {
            match table(name.get_ref()) {
                _ if !pool.is_empty() => reader.say(
                    name.span(),
                    "The table of machines stands both in a file of its own and here, under [[pool]].",
                    "Take one of them out.",
                ),
                None => reader.say(
                    name.span(),
                    format!("There is no table {:?} beside this file.", name.get_ref()),
                    "Put it there, as CSV in UTF-8, or mend its name.",
                ),
                Some(text) => {
                    let mut beside = Reader::default();
                    (names, pool) = machines(&text, &mut beside);
                    let name = Some(name.get_ref().clone());
                    in_table.extend(
                        beside.problems.into_iter().map(|problem| FamilyProblem { table: name.clone(), problem }),
                    );
                }
            }
        }
        let mut limits: Vec<_> = file.limit.iter().filter_map(|limit| reader.limit(limit, None)).collect();
        let mut faults: Vec<Fault> = Vec::new();
        for fault in &file.fault {
            if faults.iter().any(|other| &other.id == fault.id.get_ref()) {
                reader.say(
                    fault.id.span(),
                    format!("There are two faults called {:?}.", fault.id.get_ref()),
                    "Give one of them another id.",
                );
            }
            if !(fault.weight > 0.0 && fault.weight.is_finite()) {
                reader.say(
                    fault.id.span(),
                    "This fault's weight is not a positive number.",
                    "Write weight = 1, or leave it out.",
                );
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
                    let names = others.iter().map(|other| other.id.as_str()).filter(|other| *other != id);
                    let mend = nearest(like.get_ref(), names).map_or_else(
                        || "Name a family whose file lies beside this one, or mend that one first.".to_owned(),
                        |near| format!("Did you mean {near:?}?"),
                    );
                    reader.say(
                        like.span(),
                        format!("There is no sound family {:?} for this one to be like.", like.get_ref()),
                        mend,
                    );
                }
                other.zip(Some(like.span()))
            }
        };
        if let (None, Some(first)) = (&file.like, file.without.first()) {
            reader.say(first.span(), "There is no other family to leave a fault out of.", "Name it with `like`.");
        }
        let usual = other
            .as_ref()
            .map_or_else(Shares::default, |(other, _)| Shares { healthy: other.healthy, pairs: other.pairs });
        let shares = file.faults.unwrap_or(usual);
        let share = |value: f64| (0.0..=1.0).contains(&value);
        if !share(shares.healthy) || !share(shares.pairs) {
            reader.problems.push(Problem {
                span: text.find("[faults]").map(|at| at..at + "[faults]".len()),
                what: "The shares under [faults] must lie between 0 and 1.".into(),
                mend: "Write healthy = 0.4, say, for four machines in ten.".into(),
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
        };
        if let Some((other, place)) = other {
            let without: Vec<_> = file.without.iter().map(|id| (id.get_ref().clone(), id.span())).collect();
            let row = file.pool.first().and_then(|row| row.keys().map(Spanned::span).min_by_key(|span| span.start));
            let table = file.machines.as_ref().map(Spanned::span).or(row).unwrap_or_default();
            reader.problems.extend(family.take_over(other, &without, &place, table));
        }
        in_table.extend(reader.problems.into_iter().map(own));
        if in_table.is_empty() { Ok(family) } else { Err(in_table) }
    }
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
            let mend = match registry.suggestion(name.get_ref()) {
                Some(near) => format!("Did you mean {near:?}?"),
                None => "`drivecourse solve --list` names every quantity.".into(),
            };
            self.say(name.span(), format!("There is no quantity called {:?}.", name.get_ref()), mend);
        }
        found
    }

    fn draws(&mut self, values: &Values, fixed: bool) -> Vec<(QuantityId, Draw)> {
        let mut out = Vec::new();
        for (name, value) in values {
            let Some(id) = self.quantity(name) else { continue };
            self.places.push(Place { quantity: id, fault: self.fault.clone(), span: name.span() });
            if let Some(draw) = self.draw(id, value, fixed) {
                out.push((id, draw));
            }
        }
        out.sort_by_key(|(id, _)| *id);
        out
    }

    fn draw(&mut self, id: QuantityId, value: &Spanned<Toml>, fixed: bool) -> Option<Draw> {
        let span = value.span();
        let table = match value.get_ref() {
            Toml::Table(table) if !fixed => table,
            Toml::Table(table) => return self.stated(id, table, &span),
            plain => return self.value(id, plain, &span).map(Draw::Fixed),
        };
        let list = |this: &mut Self, key: &str| -> Option<Vec<f64>> {
            let Some(Toml::Array(items)) = table.get(key) else {
                this.say(span.clone(), format!("`{key}` wants a list."), format!("Write {key} = [\"...\", \"...\"]."));
                return None;
            };
            items.iter().map(|item| this.value(id, item, &span)).collect()
        };
        let mut keys: Vec<&str> = table.keys().map(String::as_str).collect();
        keys.sort_unstable();
        match keys.as_slice() {
            ["between"] => match list(self, "between")?.as_slice() {
                [low, high] if low <= high => Some(Draw::Between(*low, *high)),
                [_, _] => {
                    self.say(
                        span,
                        "The first value of `between` is larger than the second.",
                        "Write the smaller one first.",
                    );
                    None
                }
                _ => {
                    self.say(span, "`between` wants two values.", "Write between = [\"least\", \"most\"].");
                    None
                }
            },
            ["choose"] => {
                let choices = list(self, "choose")?;
                if choices.is_empty() {
                    self.say(span, "There is nothing to choose from.", "Put at least one value in the list.");
                    return None;
                }
                Some(Draw::Choose(choices))
            }
            ["about", "spread"] => {
                let middle = self.value(id, &table["about"], &span)?;
                // A spread of temperatures is a difference; of anything else, a value of the same kind.
                let spread = if id.get().kind == Kind::Temperature {
                    self.amount(Kind::TemperatureRise, None, &table["spread"], &span)?
                } else {
                    self.value(id, &table["spread"], &span)?
                };
                Some(Draw::About { middle, spread: spread.abs() })
            }
            ["between", "of"] => self.share(id, table, &span),
            _ => {
                self.say(
                    span,
                    format!(
                        "A draw with {} is not known.",
                        if keys.is_empty() { "nothing in it".into() } else { keys.join(" and ") }
                    ),
                    "Use { between = [least, most] }, { choose = [...] }, { about = middle, spread = deviation } or { of = quantity, between = [least, most] }.",
                );
                None
            }
        }
    }

    /// A fixed value of the plant's own, with its source.
    fn stated(&mut self, id: QuantityId, table: &toml::Table, span: &core::ops::Range<usize>) -> Option<Draw> {
        let text = |key: &str| table.get(key).and_then(Toml::as_str).unwrap_or_default().trim().to_owned();
        let known = table.keys().all(|key| matches!(key.as_str(), "value" | "source" | "because"));
        let (Some(value), true, false) = (table.get("value"), known, text("source").is_empty()) else {
            self.say(
                span.clone(),
                "A fixed value is a value, or a value with its source.",
                "Write \"...\", or { value = \"...\", source = \"...\", because = \"...\" }; `because` may be left out.",
            );
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
            self.say(
                span.clone(),
                format!("{} cannot be a share of {name}.", id.get().id),
                "A share needs two quantities of one kind that can be multiplied, such as two lengths.",
            );
            return None;
        }
        let ends: Vec<f64> = (table["between"].as_array().into_iter().flatten())
            .map(|end| self.amount(Kind::Ratio, None, end, span))
            .collect::<Option<_>>()?;
        match ends.as_slice() {
            &[low, high] if low <= high => Some(Draw::Share { of, low, high }),
            _ => {
                self.say(
                    span.clone(),
                    "`between` wants two shares, the smaller first.",
                    "Write [\"90 %\", \"105 %\"].",
                );
                None
            }
        }
    }

    pub(super) fn value(&mut self, id: QuantityId, value: &Toml, span: &core::ops::Range<usize>) -> Option<f64> {
        let quantity = id.get();
        if quantity.kind == Kind::Choice {
            let text = value.as_str().unwrap_or_default();
            let found = quantity.choices.iter().position(|choice| *choice == text);
            if found.is_none() {
                self.say(
                    span.clone(),
                    format!("{value} is none of the possibilities of {}.", quantity.id),
                    amount::choices_of(quantity, text),
                );
            }
            return found.map(|index| index as f64);
        }
        self.amount(quantity.kind, Some(quantity.id), value, span)
    }

    fn amount(&mut self, kind: Kind, name: Option<&str>, value: &Toml, span: &core::ops::Range<usize>) -> Option<f64> {
        let text = match value {
            Toml::String(text) => text.clone(),
            Toml::Integer(number) => number.to_string(),
            Toml::Float(number) => number.to_string(),
            other => other.to_string(),
        };
        match amount::read(&text, &Wanted::new(kind)) {
            Ok(read) => Some(read.base),
            Err(error) => {
                let of = name.map_or_else(String::new, |name| format!(" as {name}"));
                self.say(
                    span.clone(),
                    format!("{text:?} cannot be read{of}: {error}"),
                    format!("It takes {}.", kind.name()),
                );
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
        let at_least = bound(&limit.at_least, f64::NEG_INFINITY)?;
        let at_most = bound(&limit.at_most, f64::INFINITY)?;
        if at_least > at_most {
            self.say(
                limit.quantity.span(),
                "No value is at least the one and at most the other.",
                "Swap at_least and at_most.",
            );
        }
        let asked = match fault {
            Some(fault) if !limit.healthy => Asked::Fault(fault),
            Some(_) => {
                self.say(
                    limit.quantity.span(),
                    "A limit of a fault cannot be asked of healthy machines.",
                    "Take out healthy = true, or move the limit out of the fault.",
                );
                return None;
            }
            None if limit.healthy => Asked::Healthy,
            None => Asked::Always,
        };
        if limit.at_least.is_none() && limit.at_most.is_none() {
            self.say(limit.quantity.span(), "This limit bounds nothing.", "Give it at_least, at_most, or both.");
        }
        let (because, source, span) = (limit.because.clone(), limit.source.clone(), limit.quantity.span());
        Some(Limit { quantity: id, at_least, at_most, because, source, asked, span, of: String::new() })
    }
}
