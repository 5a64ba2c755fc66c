//! The registry: every quantity and relation of the trade, linked into one graph.

use std::collections::BTreeMap;
use std::sync::OnceLock;

use crate::formula::Formula;
use crate::instrument::Figures;
use crate::quantity::{Known, Quantity};
use crate::relation::{Given, Role, Whole as Relation, WrongTurn, work};
use crate::unit::{Kind, System, Unit};
use crate::words;

/// Place of a quantity in the registry and in the values of every case.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct QuantityId(pub(crate) u16);

impl QuantityId {
    /// As an index into a case's values.
    pub fn index(self) -> usize {
        usize::from(self.0)
    }

    /// What it is.
    pub fn get(self) -> &'static Quantity {
        Registry::get().quantities[self.index()]
    }
}

/// Place of a relation in the registry.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct RelationId(pub(crate) u16);

impl RelationId {
    /// What it is, linked to its quantities.
    pub fn get(self) -> &'static Linked {
        &Registry::get().relations[usize::from(self.0)]
    }
}

/// A relation whose inputs and output have found their places.
#[derive(Debug)]
pub struct Linked {
    /// Its own place.
    pub id: RelationId,
    /// The entry as written in its topic.
    pub relation: &'static Relation,
    /// What it gives.
    pub gives: QuantityId,
    /// Places of its inputs in a case's values.
    pub at: Vec<u16>,
    /// For each wrong turn, the places of the inputs and of what it needs besides.
    pub turns_at: Vec<Vec<u16>>,
    /// Its formula in each system, SI first; `None` for a method without one.
    formulas: [Option<Formula>; 2],
    conversions: [Vec<Conversion>; 2],
}

/// A value whose unit must be changed before it enters a formula.
#[derive(Debug, Clone, Copy)]
pub struct Conversion {
    /// Which value.
    pub quantity: QuantityId,
    /// The unit it is shown in.
    pub shown: &'static Unit,
    /// The unit the formula wants.
    pub wanted: &'static Unit,
}

impl Linked {
    /// The result from `values`.
    ///
    /// # Errors
    /// The calculation's own.
    #[inline]
    pub fn eval(&self, values: &[f64]) -> Result<f64, drivecourse_calc::Error> {
        work(self.relation.eval, &Given { values, at: &self.at })
    }

    /// What the `turn`-th wrong turn gives, if everything it needs is known and it gives a number.
    pub fn eval_turn(&self, turn: usize, values: &[f64]) -> Option<f64> {
        let at = &self.turns_at[turn];
        if at.iter().any(|&at| values[usize::from(at)].is_nan()) {
            return None;
        }
        work(self.relation.turns[turn].eval, &Given { values, at }).ok().filter(|value| value.is_finite())
    }

    /// Its inputs.
    pub fn inputs(&self) -> impl Iterator<Item = QuantityId> + '_ {
        self.at.iter().map(|&at| QuantityId(at))
    }

    /// Its formula in `system`.
    pub fn formula(&self, system: System) -> Option<&Formula> {
        self.formulas[system as usize].as_ref()
    }

    /// The inputs whose unit must be changed before they enter its formula in `system`.
    pub fn conversions(&self, system: System) -> &[Conversion] {
        &self.conversions[system as usize]
    }

    /// Its wrong turns.
    pub fn turns(&self) -> &'static [WrongTurn] {
        self.relation.turns
    }
}

/// How a quantity is seen in one system of units, worked out once.
#[derive(Debug, Clone, Copy)]
pub struct Seeing {
    quantity: &'static Quantity,
    unit: &'static Unit,
    rounding: Rounding,
    half_step: f64,
    set_half_step: f64,
}

#[derive(Debug, Clone, Copy)]
enum Rounding {
    Hidden,
    Exact,
    Step(f64),
    Figures(Figures),
}

impl Seeing {
    fn new(quantity: &'static Quantity, system: System) -> Self {
        let display = quantity.display(system);
        let rounding = match quantity.known {
            Known::Worked => Rounding::Hidden,
            _ if quantity.kind == Kind::Choice => Rounding::Exact,
            Known::Plate => Rounding::Figures(display.figures),
            Known::Read(instrument) => Rounding::Step(instrument.step(system).step),
        };
        let unit = quantity.unit(system);
        let half = |step: f64| 0.5 * step * unit.size().abs();
        let half_step = match rounding {
            Rounding::Step(step) => half(step),
            _ => 0.0,
        };
        let set_half_step = quantity.set_with.map_or(0.0, |instrument| half(instrument.step(system).step));
        Self { quantity, unit, rounding, half_step, set_half_step }
    }

    /// `base` (SI) as a person gets to see it: on the instrument's nearest step, or with the
    /// plate's figures; NaN for what can only be worked out.
    pub fn see(&self, base: f64) -> f64 {
        match self.rounding {
            Rounding::Hidden => f64::NAN,
            Rounding::Exact => base,
            Rounding::Step(step) => self.unit.to_base((self.unit.from_base(base) / step).round() * step),
            Rounding::Figures(figures) => self.unit.to_base(figures.round(self.unit.from_base(base))),
        }
    }

    /// The unit it is shown in.
    pub fn unit(&self) -> &'static Unit {
        self.unit
    }

    /// What it is.
    pub fn quantity(&self) -> &'static Quantity {
        self.quantity
    }

    /// Half of the step of the instrument that it is set or checked with, in the SI unit: nought for all else.
    pub fn set_half_step(&self) -> f64 {
        self.set_half_step
    }

    /// Half of the instrument's step, in the SI unit: nought for what is not read with one.
    pub fn half_step(&self) -> f64 {
        self.half_step
    }
}

/// Every quantity and relation.
#[derive(Debug)]
pub struct Registry {
    quantities: Vec<&'static Quantity>,
    seeing: [Vec<Seeing>; 2],
    relations: Vec<Linked>,
    by_name: BTreeMap<&'static str, QuantityId>,
    giving: Vec<Vec<RelationId>>,
}

impl Registry {
    /// The one registry. Made at first use; a fault in it is ours, found by its test, and panics.
    pub fn get() -> &'static Self {
        static REGISTRY: OnceLock<Registry> = OnceLock::new();
        REGISTRY.get_or_init(Self::link)
    }

    fn link() -> Self {
        let quantities = words::quantities();
        let mut by_name = BTreeMap::new();
        for (index, quantity) in quantities.iter().enumerate() {
            let id = QuantityId(u16::try_from(index).expect("far fewer than 65 536 quantities"));
            assert!(by_name.insert(quantity.id, id).is_none(), "{} stands twice in the registry", quantity.id);
        }
        let place = |name: &'static str, kind, relation: &'static str| {
            let id = *by_name.get(name).unwrap_or_else(|| panic!("{relation}: no quantity {name}"));
            assert_eq!(quantities[id.index()].kind, kind, "{relation}: {name} has another kind");
            id.0
        };
        let mut relations = Vec::new();
        for relation in words::relations() {
            let id = RelationId(u16::try_from(relations.len()).expect("far fewer than 65 536 relations"));
            let at: Vec<u16> = relation.args.iter().map(|arg| place(arg.quantity, arg.kind, relation.id)).collect();
            let turns_at = (relation.turns.iter())
                .map(|turn| {
                    let extra = turn.extra.iter().map(|arg| place(arg.quantity, arg.kind, relation.id));
                    at.iter().copied().chain(extra).collect()
                })
                .collect();
            let read = |text: &&str| {
                Formula::read(text).unwrap_or_else(|error| panic!("{}: formula {text:?}: {error}", relation.id))
            };
            let si = relation.formula.first().map(read);
            let us = relation.formula.get(1).or(relation.formula.first()).map(read);
            let gives = QuantityId(place(relation.gives, relation.kind, relation.id));
            let formulas = [si, us];
            let conversions = System::ALL.map(|system| {
                let names = formulas[system as usize].as_ref().map(Formula::names_of_body).unwrap_or_default();
                names.into_iter().filter_map(|named| conversion(relation, &at, &quantities, named, system)).collect()
            });
            relations.push(Linked { id, relation, gives, at, turns_at, formulas, conversions });
        }
        let mut giving = vec![Vec::new(); quantities.len()];
        for linked in &relations {
            giving[linked.gives.index()].push(linked.id);
        }
        for list in &mut giving {
            list.sort_by_key(|id| (relations[usize::from(id.0)].relation.rank, *id));
        }
        let seeing =
            System::ALL.map(|system| quantities.iter().map(|quantity| Seeing::new(quantity, system)).collect());
        Self { quantities, seeing, relations, by_name, giving }
    }

    /// How every quantity is seen in `system`.
    pub fn seeing(&self, system: System) -> &[Seeing] {
        &self.seeing[system as usize]
    }

    /// How many quantities there are: the length of every case's values.
    pub fn len(&self) -> usize {
        self.quantities.len()
    }

    /// Whether there is nothing in it (never).
    pub fn is_empty(&self) -> bool {
        self.quantities.is_empty()
    }

    /// The quantity called `name`.
    pub fn find(&self, name: &str) -> Option<QuantityId> {
        self.by_name.get(name).copied()
    }

    /// The relation called `id`.
    pub fn relation(&self, id: &str) -> Option<&Linked> {
        self.relations.iter().find(|linked| linked.relation.id == id)
    }

    /// Every quantity, in the order of the topics.
    pub fn quantities(&self) -> impl Iterator<Item = QuantityId> + '_ {
        (0..self.quantities.len()).map(|index| QuantityId(index as u16))
    }

    /// Every relation, in the order of the topics.
    pub fn relations(&self) -> &[Linked] {
        &self.relations
    }

    /// The relations that give `quantity`, preferred first.
    pub fn giving(&self, quantity: QuantityId) -> &[RelationId] {
        &self.giving[quantity.index()]
    }

    /// The known quantity that may be meant by `name`: mistyped by a letter or two; called by other words of its name and of
    /// what it is, as `heat.housing_limit`; else the name most like it, if any is alike at all.
    pub fn suggestion(&self, name: &str) -> Option<&'static str> {
        /// More letters than this are no slip of the finger.
        const SLIP: usize = 2;
        let near = nearest(name, self.by_name.keys().copied());
        near.filter(|near| edits(name, near) <= SLIP).or_else(|| self.worded(name)).or(near)
    }

    /// The quantity of this topic in whose id and name all words of `name` stand, most of them in the id.
    fn worded(&self, name: &str) -> Option<&'static str> {
        let topic = name.split_once('.')?.0;
        let wanted: Vec<&str> = name.split(['.', '_']).collect();
        let in_id = |quantity: &Quantity, word: &str| quantity.id.split(['.', '_']).any(|own| own == word);
        let in_name = |quantity: &Quantity, word: &str| quantity.name.split_whitespace().any(|own| own == word);
        (self.quantities.iter())
            .filter(|it| it.topic() == topic && wanted.iter().all(|word| in_id(it, word) || in_name(it, word)))
            .min_by_key(|it| (wanted.iter().filter(|word| !in_id(it, word)).count(), it.id.len()))
            .map(|quantity| quantity.id)
    }
}

/// The change of unit that an input named in a formula needs, if it needs one.
fn conversion(
    relation: &Relation,
    at: &[u16],
    quantities: &[&'static Quantity],
    (name, wanted): (&str, Option<&str>),
    system: System,
) -> Option<Conversion> {
    let place = at[relation.args.iter().position(|arg| arg.name == name)?];
    let quantity = quantities[usize::from(place)];
    let (shown, wanted) = (quantity.unit(system), Unit::find(quantity.kind, wanted?)?);
    (shown != wanted && quantity.kind != Kind::Choice).then_some(Conversion {
        quantity: QuantityId(place),
        shown,
        wanted,
    })
}

/// The candidate most like `word` (Jaro-Winkler is overkill here: edits, at most a third of the length).
pub fn nearest<'a>(word: &str, candidates: impl Iterator<Item = &'a str>) -> Option<&'a str> {
    if word.len() > 200 {
        return None;
    }
    let allowed = (word.chars().count() / 3).max(1);
    candidates
        .map(|candidate| (edits(word, candidate), candidate))
        .filter(|(edits, candidate)| {
            *edits <= allowed || candidate.split('.').next_back() == Some(word) || candidate.eq_ignore_ascii_case(word)
        })
        .min()
        .map(|(_, candidate)| candidate)
}

/// Levenshtein distance, two neighbours that have changed places counted as one edit.
fn edits(a: &str, b: &str) -> usize {
    let (a, b): (Vec<char>, Vec<char>) = (a.chars().collect(), b.chars().collect());
    let mut rows: [Vec<usize>; 3] = [(0..=b.len()).collect(), Vec::new(), (0..=b.len()).collect()];
    for i in 1..=a.len() {
        rows.rotate_left(1);
        let mut row = vec![i];
        for j in 1..=b.len() {
            let changed = rows[1][j - 1] + usize::from(a[i - 1] != b[j - 1]);
            let mut least = changed.min(row[j - 1] + 1).min(rows[1][j] + 1);
            if i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1] {
                least = least.min(rows[0][j - 2] + 1);
            }
            row.push(least);
        }
        rows[2] = row;
    }
    rows[2][b.len()]
}

/// Whether `relation` may stand on the path of a question.
pub(crate) fn askable(relation: &Relation) -> bool {
    relation.role != Role::Model
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::relation::MOST_INPUTS;
    use crate::topics;

    #[test]
    fn the_registry_is_sound() {
        let registry = Registry::get();
        let mut seen = std::collections::BTreeSet::new();
        for quantity in registry.quantities.iter() {
            for system in System::ALL {
                let symbol = quantity.display(system).unit;
                assert!(Unit::find(quantity.kind, symbol).is_some(), "{}: {symbol}", quantity.id);
            }
            assert!(topics::ALL.iter().any(|topic| topic.id == quantity.topic()), "{}", quantity.id);
        }
        for linked in registry.relations() {
            let relation = linked.relation;
            assert!(seen.insert(relation.id), "{} stands twice", relation.id);
            let (gives, method) = relation.id.split_once('/').unwrap_or_else(|| panic!("{}: no method", relation.id));
            assert_eq!(gives, relation.gives, "{}", relation.id);
            assert!(!method.is_empty() && !relation.title.ends_with('.'), "{}", relation.id);
            assert!(!relation.formula.is_empty() || !relation.method.is_empty(), "{}: nothing to show", relation.id);
            let inputs = linked.turns_at.iter().map(Vec::len).max().unwrap_or(0).max(linked.at.len());
            assert!(inputs <= MOST_INPUTS, "{}: {inputs} inputs", relation.id);
            let mut turns = std::collections::BTreeSet::new();
            for turn in relation.turns {
                assert!(turns.insert(turn.id), "{}: {} stands twice", relation.id, turn.id);
                assert!(turn.says.ends_with('.'), "{}: {} is no sentence", relation.id, turn.id);
                // One mistake in the units of either set is told in the same words.
                let scales: Vec<_> =
                    relation.turns.iter().filter(|other| other.says == turn.says).map(|other| other.only).collect();
                let on_both = scales.len() == 2 && System::ALL.iter().all(|system| scales.contains(&Some(*system)));
                let said_once = scales.len() == 1 || scales.iter().all(Option::is_none);
                assert!(said_once || on_both, "{}: {} on which papers?", relation.id, turn.id);
            }
            for formula in relation.formula {
                let read = Formula::read(formula).unwrap();
                for (name, unit) in read.body.names() {
                    let arg = relation.args.iter().find(|arg| arg.name == name);
                    let arg = arg.unwrap_or_else(|| panic!("{}: {name} is no input", relation.id));
                    if let Some(unit) = unit {
                        assert!(Unit::find(arg.kind, unit).is_some(), "{}: {name} in {unit}", relation.id);
                    }
                }
                if let Some(unit) = &read.unit {
                    assert!(Unit::find(relation.kind, unit).is_some(), "{}: result in {unit}", relation.id);
                }
            }
        }
    }

    #[test]
    fn readings_fall_on_the_instruments_steps() {
        let registry = Registry::get();
        let height = registry.find("mount.height_1").unwrap();
        let seen = |system: System, base| registry.seeing(system)[height.index()].see(base);
        approx::assert_relative_eq!(seen(System::Si, 0.123_4e-3), 0.12e-3, max_relative = 1e-12);
        approx::assert_relative_eq!(seen(System::Us, 0.123_4e-3), 0.005 * 0.0254, max_relative = 1e-12);
        approx::assert_relative_eq!(
            registry.seeing(System::Si)[height.index()].half_step(),
            5e-6,
            max_relative = 1e-12
        );
        let twist = registry.find("mount.twist").unwrap();
        assert!(registry.seeing(System::Si)[twist.index()].see(1.0).is_nan());
    }

    #[test]
    fn near_misses_are_suggested() {
        let names = ["chain.sag", "chain.span", "load.overhung"];
        assert_eq!(nearest("chain.sagg", names.into_iter()), Some("chain.sag"));
        assert_eq!(nearest("overhung", names.into_iter()), Some("load.overhung"));
        assert_eq!(nearest("zebra", names.into_iter()), None);
        let suggestion = |name| Registry::get().suggestion(name);
        assert_eq!(suggestion("chain.saag"), Some("chain.sag"));
        // By the words of what it is, where the letters lead to another one.
        assert_eq!(suggestion("heat.housing_limit"), Some("heat.sump_limit"));
        assert_eq!(suggestion("mount.foot_limit"), Some("mount.gap_limit"));
        assert_eq!(suggestion("chain.share_wanted"), Some("chain.sag_share_wanted"));
    }
}
