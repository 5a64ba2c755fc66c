//! The worked solution: a path as a person would write it down.

mod shown;

use crate::amount;
use crate::family::Stated;
use crate::formula::{Formula, symbol_mathml, symbol_text, unit_for};
use crate::instrument::Figures;
use crate::path::Path;
use crate::registry::{Linked, QuantityId, Registry};
use crate::source::{OF_THE_REST, OWN_VALUE, Source};
use crate::unit::{System, Unit};
use shown::Shown;

/// A worked solution: one line for each step.
#[derive(Debug, Clone, PartialEq)]
pub struct Working {
    /// The steps, in order.
    pub lines: Vec<Line>,
}

/// One step of a worked solution, in plain text and in markup.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// Which relation.
    pub relation: &'static str,
    /// What the step does.
    pub title: &'static str,
    /// The method in words; empty where the formula says it all.
    pub method: &'static str,
    /// `H = w × L² / (8 × δ)`; empty for a method without formula.
    pub symbols: String,
    /// The same as presentation MathML, a whole `math` element.
    pub symbols_mathml: String,
    /// The same with numbers and units.
    pub numbers: String,
    /// The result with its symbol and unit: `H = 505 N`.
    pub result: String,
    /// The inputs: name, symbol, and value as shown or worked out before.
    pub inputs: Vec<(&'static str, String, String)>,
    /// Where it comes from.
    pub source: Source,
    /// Where it holds and what is allowed; may be empty.
    pub limits: &'static str,
    /// Inputs that are the plant's own, each with its source.
    pub own: Vec<String>,
}

impl Working {
    /// Writes out `path`, whose results are already in `values`.
    pub fn write(path: &Path, values: &[f64], system: System) -> Self {
        let shown = Shown::of(path, values, system);
        Self { lines: path.steps.iter().map(|step| Line::write(step.get(), values, system, &shown)).collect() }
    }

    /// With what a plant states itself named beside each step that uses it: `own` says what it states of a quantity, if the
    /// value that was used (SI) is the one that it states.
    #[must_use]
    pub fn with<'s>(mut self, used: &[f64], own: impl Fn(QuantityId, f64) -> Option<&'s Stated>) -> Self {
        for line in &mut self.lines {
            let Some(linked) = Registry::get().relation(line.relation) else { continue };
            for (input, (name, _, value)) in linked.inputs().zip(&line.inputs) {
                if let Some(stated) = own(input, used[input.index()]) {
                    let words = [("quantity", *name), ("value", value), ("source", &stated.text())];
                    line.own.push(OWN_VALUE.say(&words));
                }
            }
        }
        self
    }
}

impl Line {
    /// The source as a person reads it: after inputs that are the plant's own, it is said to be that of the calculation.
    pub fn source_said(&self) -> String {
        let source = self.source.to_string();
        if self.own.is_empty() { source } else { OF_THE_REST.say(&[("source", &source)]) }
    }

    fn write(linked: &Linked, values: &[f64], system: System, shown: &Shown<'_>) -> Self {
        let relation = linked.relation;
        let gives = linked.gives.get();
        let result_symbol = if gives.symbol.is_empty() { gives.name.to_owned() } else { symbol_text(gives.symbol) };
        let result = format!("{result_symbol} = {}", shown.text(linked.gives));
        let inputs = (linked.inputs())
            .map(|input| {
                let quantity = input.get();
                (quantity.name, symbol_text(quantity.symbol), shown.text(input))
            })
            .collect();
        let (symbols, symbols_mathml, numbers) = match linked.formula(system) {
            None => Default::default(),
            Some(formula) => (
                format!("{result_symbol} = {}", symbols(linked, formula)),
                formula_mathml(linked, system).unwrap_or_default(),
                format!("{result_symbol} = {}", numbers(linked, formula, values, system, shown)),
            ),
        };
        Self {
            relation: relation.id,
            title: relation.title,
            method: relation.method,
            symbols,
            symbols_mathml,
            numbers,
            result,
            inputs,
            source: relation.source,
            limits: relation.limits,
            own: Vec::new(),
        }
    }
}

fn input_of(linked: &Linked, name: &str) -> Option<QuantityId> {
    let index = linked.relation.args.iter().position(|arg| arg.name == name)?;
    linked.inputs().nth(index)
}

fn symbols(linked: &Linked, formula: &Formula) -> String {
    formula
        .body
        .text(&|name, _| input_of(linked, name).map_or_else(|| name.to_owned(), |id| symbol_text(id.get().symbol)))
}

/// Signs of a formula from which on it is set smaller on paper, where it cannot scroll sideways.
const LONG: usize = 60;

/// A relation's formula with its left-hand side as a `math` element, if it has one in `system`; a long one has the class
/// `long`.
pub fn formula_mathml(linked: &Linked, system: System) -> Option<String> {
    let formula = linked.formula(system)?;
    let gives = linked.gives.get();
    let left =
        if gives.symbol.is_empty() { format!("<mtext>{}</mtext>", gives.name) } else { symbol_mathml(gives.symbol) };
    let right = formula.body.mathml(&|name, _| {
        input_of(linked, name).map_or_else(|| format!("<mi>{name}</mi>"), |id| symbol_mathml(id.get().symbol))
    });
    let class = if signs(&left) + signs(&right) < LONG { "" } else { " class=\"long\"" };
    Some(format!("<math display=\"block\"{class}><mrow>{left}<mo>=</mo>{right}</mrow></math>"))
}

/// How many signs a person sees of `markup`.
fn signs(markup: &str) -> usize {
    markup.split('<').map(|bit| bit.split_once('>').map_or(bit, |(_, seen)| seen).chars().count()).sum()
}

fn numbers(linked: &Linked, formula: &Formula, values: &[f64], system: System, shown: &Shown<'_>) -> String {
    let right = formula.body.text(&|name, named| {
        let Some(id) = input_of(linked, name) else { return name.to_owned() };
        let quantity = id.get();
        let usual = quantity.unit(system);
        let unit = unit_for(quantity.kind, named, usual);
        let base = values[id.index()];
        let text = if unit == usual { shown.text(id).replace(amount::SPACE, " ") } else { in_unit(base, unit) };
        // In brackets, so that a sign before or after a negative value is not lost.
        if text.starts_with('−') { format!("({text})") } else { text }
    });
    let gives = linked.gives.get();
    let unit = unit_for(gives.kind, formula.unit.as_deref(), gives.unit(system));
    let base = values[linked.gives.index()];
    if unit == gives.unit(system) { right } else { format!("{right} = {}", in_unit(base, unit)) }
}

/// Of a value changed to another unit: enough that rounding on the way never shows in a three-figure answer.
const CHANGED: Figures = Figures::Significant(4);

/// `base` in `unit`, that is not the one it is usually shown in.
fn in_unit(base: f64, unit: &Unit) -> String {
    amount::with_unit(&amount::number(unit.from_base(base), CHANGED), unit).replace(amount::SPACE, " ")
}

/// What the formula as people see it gives, with full digits: the check that it says what the
/// calculation does.
pub fn formula_value(linked: &Linked, values: &[f64], system: System) -> Option<f64> {
    let formula = linked.formula(system)?;
    let number = formula.body.value(&|name, named| {
        let Some(id) = input_of(linked, name) else { return f64::NAN };
        let quantity = id.get();
        unit_for(quantity.kind, named, quantity.unit(system)).from_base(values[id.index()])
    });
    let gives = linked.gives.get();
    Some(unit_for(gives.kind, formula.unit.as_deref(), gives.unit(system)).to_base(number))
}
