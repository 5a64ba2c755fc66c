//! Reference tables generated from the registry: formulas, common mistakes, sources, quantities.

use std::collections::BTreeMap;

use serde::Serialize;

use drivecourse_machine::formula::symbol_mathml;
use drivecourse_machine::registry::nearest;
use drivecourse_machine::topics::{self, Topic};
use drivecourse_machine::working::formula_mathml;
use drivecourse_machine::{
    Draw, Kind, Linked, Plan, Quantity, QuantityId, Registry, Role, Source, System, Unit, amount, did_you_mean,
    messages, told,
};

use crate::card::Cards;
use crate::pages::PageError;
use crate::pages::model::Trusted;
use crate::view::{capital, how_known, source_line, symbol};

messages! { pub(crate) SAYS {
    PUBLISHED = "reference-published", "Published";
    DERIVED = "reference-derived", "Derived";
    COMMON_PRACTICE = "reference-common-practice", "Common practice, no source";
    FROM_MEMORY = "reference-from-memory", "From memory";
    ONE_OF_A_LIST = "reference-one-of-a-list", "one of a list";
    NUMBER = "reference-number", "number";
    NO_UNIT = "reference-no-unit", "no unit";
    OR = "reference-or", "or";
} }

messages! { pub(crate) PROBLEMS {
    TOPICS_ARE = "problem-chapter-topics-are", "The topics are {names}.";
} }

/// The topic called `id`.
///
/// # Errors
/// A sentence with the nearest name, or all names.
pub fn topic(id: &str) -> Result<&'static Topic, String> {
    topics::ALL.iter().find(|topic| topic.id == id).ok_or_else(|| {
        let names = topics::ALL.iter().map(|topic| topic.id);
        nearest(id, names.clone())
            .map_or_else(|| told!(TOPICS_ARE, "names" = names.collect::<Vec<_>>().join(", ")), did_you_mean)
    })
}

/// The relation called `id`.
///
/// # Errors
/// A sentence with the nearest name; empty when nothing is alike.
pub fn relation(id: &str) -> Result<&'static Linked, String> {
    let registry = Registry::get();
    registry.relation(id).ok_or_else(|| {
        nearest(id, registry.relations().iter().map(|linked| linked.relation.id)).map_or_else(String::new, did_you_mean)
    })
}

/// Every relation of `topic`, in order.
pub fn relations_of(topic: &Topic) -> Vec<&'static Linked> {
    Registry::get().relations().iter().filter(|linked| linked.relation.topic() == topic.id).collect()
}

#[derive(Serialize)]
struct Rows<T> {
    rows: Vec<T>,
}

#[derive(Serialize)]
struct FormulaRow {
    title: &'static str,
    same: bool,
    formula: Option<Trusted>,
    faces: Vec<FormulaFace>,
    method: &'static str,
    r#where: Vec<Name>,
    limits: String,
    /// Values of the families' own that enter it, with their sources.
    own: Vec<String>,
    source: String,
}

#[derive(Serialize)]
struct FormulaFace {
    class: &'static str,
    formula: Trusted,
}

#[derive(Serialize)]
struct Name {
    symbol: Trusted,
    name: &'static str,
    si: &'static str,
    us: &'static str,
}

/// A table of formulas, with units, limits and sources, and what the families of `plans` state for themselves; links
/// of the hidden machine are left out.
///
/// # Errors
/// When the template has a fault.
pub fn formulas(cards: &Cards<'_>, relations: &[&'static Linked], plans: &[Plan]) -> Result<Trusted, PageError> {
    let rows = (relations.iter()).filter(|linked| linked.relation.role != Role::Model).map(|linked| FormulaRow {
        own: own_values(plans, |id| linked.inputs().any(|input| input == id)),
        ..formula_row(linked)
    });
    cards.fill("reference-formulas.html", &Rows { rows: rows.collect() })
}

fn formula_row(linked: &'static Linked) -> FormulaRow {
    let [si, us] = System::ALL.map(|system| formula_mathml(linked, system));
    let same = si == us;
    let faces = if same { Vec::new() } else { vec![("units-us", us), ("units-si", si.clone())] };
    FormulaRow {
        title: linked.relation.title,
        same,
        formula: si.filter(|_| same).map(Trusted::made_by_us),
        faces: (faces.into_iter())
            .filter_map(|(class, html)| html.map(|html| FormulaFace { class, formula: Trusted::made_by_us(html) }))
            .collect(),
        method: linked.relation.method,
        r#where: names(linked),
        limits: capital(linked.relation.limits),
        own: Vec::new(),
        source: source_line(linked.relation.source),
    }
}

/// What the families of `plans` state for themselves of the `wanted` quantities, told once where several state the same:
/// `Our drive: gap allowed 0.04 mm (standard M-12)`.
pub(crate) fn own_values<'p>(
    plans: impl IntoIterator<Item = &'p Plan>,
    wanted: impl Fn(QuantityId) -> bool,
) -> Vec<String> {
    let mut out: Vec<(Vec<&str>, String)> = Vec::new();
    for family in plans.into_iter().map(|plan| &plan.family) {
        let mut own: Vec<_> = family.stated.iter().filter(|stated| wanted(stated.quantity)).collect();
        // The least before the most.
        own.sort_by_key(|stated| stated.quantity);
        for stated in own {
            let quantity = stated.quantity.get();
            let value = family.roots.iter().find_map(|(id, draw)| match draw {
                Draw::Fixed(value) if *id == stated.quantity => Some(*value),
                _ => None,
            });
            let mut values = System::ALL.map(|system| value.map(|value| truly(quantity, value, system))).to_vec();
            values.dedup();
            let values: Vec<String> = values.into_iter().flatten().collect();
            let text = format!("{} {} ({})", quantity.name, values.join(&format!(" {} ", OR.text())), stated.text());
            match out.iter_mut().find(|(_, other)| *other == text) {
                Some((names, _)) => names.push(&family.name),
                None => out.push((vec![&family.name], text)),
            }
        }
    }
    out.into_iter().map(|(names, text)| capital(&format!("{}: {text}", names.join(", ")))).collect()
}

/// `base` (SI) of `quantity` as people see it in `system`, and to four figures where that would be another value: a limit of
/// 0.0015 in is 0.0381 mm, and 0.04 mm lie above it.
fn truly(quantity: &Quantity, base: f64, system: System) -> String {
    let there = quantity.unit(system).from_base(base);
    let shown = quantity.display(system).figures.round(there);
    let is_same = quantity.kind == Kind::Choice || (shown - there).abs() <= 1e-9 * there.abs();
    if is_same { amount::write(quantity, base, system) } else { amount::write_exact(quantity, base, system) }
}

/// What the letters of a formula stand for and in which units their numbers enter: the result first.
fn names(linked: &'static Linked) -> Vec<Name> {
    let (Some(si), Some(us)) = (linked.formula(System::Si), linked.formula(System::Us)) else { return Vec::new() };
    let named = |kind: Kind, bracket: Option<&str>, usual: &'static Unit| {
        bracket.and_then(|symbol| Unit::find(kind, symbol)).unwrap_or(usual).said()
    };
    let row = |quantity: &'static drivecourse_machine::Quantity, in_si: Option<&str>, in_us: Option<&str>| Name {
        symbol: Trusted::made_by_us(format!("<math>{}</math>", symbol_mathml(quantity.symbol))),
        name: quantity.name,
        si: named(quantity.kind, in_si, quantity.unit(System::Si)),
        us: named(quantity.kind, in_us, quantity.unit(System::Us)),
    };
    let mut out = Vec::new();
    let gives = linked.gives.get();
    if !gives.symbol.is_empty() {
        out.push(row(gives, si.unit.as_deref(), us.unit.as_deref()));
    }
    let (si, us) = (si.names_of_body(), us.names_of_body());
    let unit_in = |names: &[(&str, Option<&'static str>)], wanted: &str| {
        names.iter().find(|(name, _)| *name == wanted).map(|(_, unit)| *unit)
    };
    for (arg, input) in linked.relation.args.iter().zip(linked.inputs()) {
        if let (Some(si), Some(us)) = (unit_in(&si, arg.name), unit_in(&us, arg.name)) {
            out.push(row(input.get(), si, us));
        }
    }
    out
}

#[derive(Serialize)]
struct MistakeRow {
    title: &'static str,
    says: Vec<&'static str>,
}

/// What people do wrong, step by step.
///
/// # Errors
/// When the template has a fault.
pub fn mistakes(cards: &Cards<'_>, relations: &[&'static Linked]) -> Result<Trusted, PageError> {
    let rows = (relations.iter())
        .filter(|linked| !linked.turns().is_empty())
        .map(|linked| MistakeRow {
            title: linked.relation.title,
            says: linked.turns().iter().map(|turn| turn.says).collect(),
        })
        .collect();
    cards.fill("reference-mistakes.html", &Rows { rows })
}

#[derive(Serialize)]
struct SourceGroup {
    name: &'static str,
    lines: Vec<SourceLine>,
}

#[derive(Serialize)]
struct SourceLine {
    source: String,
    uses: String,
}

/// Where the relations come from: published, derived, common practice, from memory.
///
/// # Errors
/// When the template has a fault.
pub fn sources(cards: &Cards<'_>, relations: &[&'static Linked]) -> Result<Trusted, PageError> {
    let mut groups: [BTreeMap<String, Vec<&str>>; 4] = Default::default();
    for linked in relations {
        let (group, line) = match linked.relation.source {
            published @ Source::Published { .. } => (0, published.to_string()),
            Source::Derived(from) => (1, capital(from)),
            Source::CommonPractice => (2, String::new()),
            Source::FromMemory(what) => (3, capital(what)),
        };
        let titles = groups[group].entry(line).or_default();
        if !titles.contains(&linked.relation.title) {
            titles.push(linked.relation.title);
        }
    }
    let rows = ([PUBLISHED, DERIVED, COMMON_PRACTICE, FROM_MEMORY].into_iter().zip(groups))
        .filter(|(_, lines)| !lines.is_empty())
        .map(|(name, lines)| SourceGroup {
            name: name.text(),
            lines: lines.into_iter().flat_map(source_lines).collect(),
        })
        .collect();
    cards.fill("reference-sources.html", &Rows { rows })
}

/// A source with what it is used for; what has no source to name gets a line for each use.
fn source_lines((source, titles): (String, Vec<&str>)) -> Vec<SourceLine> {
    if source.is_empty() {
        return titles.into_iter().map(|title| SourceLine { source: title.to_owned(), uses: String::new() }).collect();
    }
    vec![SourceLine { source, uses: titles.join("; ") }]
}

#[derive(Serialize)]
struct QuantityRow {
    symbol: Option<Trusted>,
    name: String,
    si: String,
    us: String,
    how: String,
}

/// The quantities of a topic: symbol, name, unit in both systems, and how each is come by.
///
/// # Errors
/// When the template has a fault.
pub fn quantities(cards: &Cards<'_>, topic: &Topic) -> Result<Trusted, PageError> {
    let rows = Registry::get()
        .quantities()
        .filter(|id| id.get().topic() == topic.id)
        .map(|id| {
            let quantity = id.get();
            let unit = |system| match quantity.kind {
                Kind::Choice => ONE_OF_A_LIST.text().to_owned(),
                Kind::Count => NUMBER.text().to_owned(),
                _ if quantity.unit(system).is_bare() => NO_UNIT.text().to_owned(),
                _ => quantity.unit(system).said().to_owned(),
            };
            QuantityRow {
                symbol: symbol(id),
                name: capital(quantity.name),
                si: unit(System::Si),
                us: unit(System::Us),
                how: capital(how_known(quantity.known)),
            }
        })
        .collect();
    cards.fill("reference-quantities.html", &Rows { rows })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_limit_stands_in_the_other_unit_as_it_truly_is() {
        let said = |id: &str, base: f64| {
            let quantity = Registry::get().find(id).unwrap().get();
            System::ALL.map(|system| truly(quantity, base, system).replace('\u{a0}', " "))
        };
        // 0.04 mm lie above it.
        assert_eq!(said("mount.gap_limit", 0.0015 * 0.0254), ["0.0381 mm", "0.0015 in"]);
        assert_eq!(said("mount.gap_limit", 0.04e-3), ["0.04 mm", "0.001575 in"]);
        let sump = (170.0 + 459.67) / 1.8;
        assert_eq!(said("heat.sump_limit", sump), ["76.67 °C", "170 °F"]);
        assert_eq!(said("heat.sump_limit", 273.15 + 90.0), ["90 °C", "194 °F"]);
        assert_eq!(said("chain.wear_limit", 0.015)[0], said("chain.wear_limit", 0.015)[1]);
    }
}
