//! The words of the registry, apart from its calculations.
//!
//! Names, symbols, formulas, titles, sources and what is said of wrong turns make up a good part of the program. The
//! browser build is made without them (`--cfg wordless`) and is handed them by the page, from the course it belongs to:
//! the same words, kept in one place.

use crate::instrument::{Display, Figures, Instrument};
use crate::language::{self, Language, Message};
use crate::packed;
use crate::packed::{Packed, Reader};
use crate::quantity::{Known, Quantity};
use crate::registry::Registry;
use crate::relation::{Arg, Role};
use crate::source::Source;
use crate::unit::{Kind, System};

/// Every quantity, and what is said about every relation, in the order of the registry.
#[derive(Debug, Clone)]
#[cfg_attr(not(wordless), allow(dead_code))] // Only a build without words has to learn them.
pub struct Words {
    language: Language,
    quantities: Vec<Quantity>,
    relations: Vec<Said>,
}

/// What is said about one relation.
#[derive(Debug, Clone)]
#[cfg_attr(not(wordless), allow(dead_code))]
struct Said {
    id: &'static str,
    title: &'static str,
    gives: &'static str,
    kind: Kind,
    args: Vec<Arg>,
    formula: Vec<&'static str>,
    method: &'static str,
    limits: &'static str,
    source: Source,
    turns: Vec<Turn>,
    rank: u8,
    role: Role,
    lookup: bool,
    inverse: bool,
}

/// What is said about one wrong turn.
#[derive(Debug, Clone)]
#[cfg_attr(not(wordless), allow(dead_code))]
struct Turn {
    id: &'static str,
    extra: Vec<Arg>,
    only: Option<System>,
    says: &'static str,
}

packed!(Words { language, quantities, relations });
packed!(Said { id, title, gives, kind, args, formula, method, limits, source, turns, rank, role, lookup, inverse });
packed!(Turn { id, extra, only, says });
packed!(Arg { name, quantity, kind });
packed!(Display { unit, figures });

impl Words {
    /// The registry's, `messages`, and `more` texts by their ids, in the language spoken.
    pub fn of_registry(
        messages: impl IntoIterator<Item = Message>,
        more: impl IntoIterator<Item = (String, String)>,
    ) -> Self {
        let registry = Registry::get();
        Self {
            language: Language::of_messages(messages, more),
            quantities: registry.quantities().map(|id| *id.get()).collect(),
            relations: registry.relations().iter().map(|linked| Said::of(linked.relation)).collect(),
        }
    }
}

impl Said {
    fn of(relation: &crate::relation::Whole) -> Self {
        let turn = |turn: &crate::relation::WrongTurn| Turn {
            id: turn.id,
            extra: turn.extra.to_vec(),
            only: turn.only,
            says: turn.says,
        };
        Self {
            id: relation.id,
            title: relation.title,
            gives: relation.gives,
            kind: relation.kind,
            args: relation.args.to_vec(),
            formula: relation.formula.to_vec(),
            method: relation.method,
            limits: relation.limits,
            source: relation.source,
            turns: relation.turns.iter().map(turn).collect(),
            rank: relation.rank,
            role: relation.role,
            lookup: relation.lookup,
            inverse: relation.inverse,
        }
    }
}

/// Added to how a quantity is known, of one that belongs to the build of a machine.
const BUILT: u8 = 3;

/// Added to it, of one that is set with an instrument, which follows.
const SET: u8 = 6;

impl Packed for Quantity {
    fn pack(&self, out: &mut String) {
        (self.id, (self.symbol, self.name)).pack(out);
        (self.kind, (self.si, self.us)).pack(out);
        let of = |is: bool, sort: u8| if is { sort } else { 0 };
        let built = of(self.built, BUILT) + of(self.set_with.is_some(), SET);
        match self.known {
            Known::Worked => built.pack(out),
            Known::Plate => (1 + built).pack(out),
            Known::Read(instrument) => (2 + built, instrument as u64).pack(out),
        }
        if let Some(instrument) = self.set_with {
            (instrument as u64).pack(out);
        }
        // The browser compares with no file: it needs the labels only.
        self.labels.to_vec().pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        let (id, (symbol, name)) = Packed::unpack(from);
        let (kind, (si, us)) = Packed::unpack(from);
        let known = u8::unpack(from);
        let (is_set, known) = (known >= SET, known % SET);
        let built = known >= BUILT;
        let known = match known % BUILT {
            0 => Known::Worked,
            1 => Known::Plate,
            _ => Known::Read(from.choose(&INSTRUMENTS)),
        };
        let set_with = is_set.then(|| from.choose(&INSTRUMENTS));
        let labels: &[&str] = Vec::unpack(from).leak();
        Self {
            id,
            symbol,
            kind,
            name,
            si,
            us,
            known,
            set_with,
            built,
            choices: labels,
            labels,
            #[cfg(not(wordless))]
            ends: crate::quantity::ANY,
        }
    }
}

impl Packed for Kind {
    fn pack(&self, out: &mut String) {
        (*self as u8).pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        from.choose(&Kind::ALL)
    }
}

impl Packed for System {
    fn pack(&self, out: &mut String) {
        (*self as u8).pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        from.choose(&Self::ALL)
    }
}

impl Packed for Role {
    fn pack(&self, out: &mut String) {
        (*self as u8).pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        from.choose(&[Self::Both, Self::Model, Self::Question])
    }
}

impl Packed for Figures {
    fn pack(&self, out: &mut String) {
        match self {
            Self::Places(places) => (0_u8, u16::from(*places)),
            Self::Significant(figures) => (1, u16::from(*figures)),
            Self::Fraction(parts) => (2, *parts),
        }
        .pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        let (sort, number) = <(u8, u16)>::unpack(from);
        match sort {
            0 => Self::Places(number as u8),
            1 => Self::Significant(number as u8),
            _ => Self::Fraction(number),
        }
    }
}

impl Packed for Source {
    fn pack(&self, out: &mut String) {
        let (sort, first, second) = match *self {
            Self::Published { document, place } => (0_u8, document, place),
            Self::Derived(from) => (1, from, ""),
            Self::CommonPractice => (2, "", ""),
            Self::FromMemory(what) => (3, what, ""),
        };
        (sort, (first, second)).pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        let (sort, (first, second)) = <(u8, (&'static str, &'static str))>::unpack(from);
        match sort {
            0 => Self::Published { document: first, place: second },
            1 => Self::Derived(first),
            2 => Self::CommonPractice,
            _ => Self::FromMemory(first),
        }
    }
}

/// Every instrument, in the order of its number.
const INSTRUMENTS: [Instrument; 20] = {
    use Instrument::*;
    [
        Scale,
        Tape,
        Caliper,
        Feeler,
        Dial,
        Level,
        Thermometer,
        FineThermometer,
        Watch,
        Tachometer,
        Protractor,
        PowerMeter,
        SightGlass,
        PressureGauge,
        Voltmeter,
        Ammeter,
        VibrationMeter,
        DisplacementMeter,
        SoundMeter,
        Analyser,
    ]
};

#[cfg(not(wordless))]
mod said;
#[cfg(not(wordless))]
pub use said::{Text, texts};

#[cfg(not(wordless))]
mod place {
    use super::*;
    use crate::relation::Relation;
    use crate::topics;

    /// Does nothing: the words are part of the program.
    pub fn learn(_: Words) {}

    pub(crate) fn quantities() -> Vec<&'static Quantity> {
        let all = topics::ALL.iter().flat_map(|topic| topic.quantities);
        if language::code() == "en" { all.collect() } else { all.map(said::quantity).collect() }
    }

    pub(crate) fn relations() -> Vec<&'static Relation> {
        let all = topics::relations();
        if language::code() == "en" { all } else { all.into_iter().map(said::relation).collect() }
    }
}

#[cfg(wordless)]
mod place {
    use std::sync::OnceLock;

    use super::*;
    use crate::relation::{Eval, Whole, WrongTurn, away};
    use crate::topics;

    static WORDS: OnceLock<Words> = OnceLock::new();

    /// Takes on the words; to be called before anything else is asked of the registry.
    pub fn learn(words: Words) {
        // Those learnt first stay.
        let _ = language::speak(words.language.clone());
        let _ = WORDS.set(words);
    }

    pub(crate) fn quantities() -> Vec<&'static Quantity> {
        WORDS.get().map_or_else(Vec::new, |words| words.quantities.iter().collect())
    }

    /// The registry is made once and stays, and so do these.
    pub(crate) fn relations() -> Vec<&'static Whole> {
        let Some(words) = WORDS.get() else { return Vec::new() };
        // How many calculations of each module are named already, as `topics::away` lists them.
        let mut named: Vec<u16> = vec![0; topics::titles().count() + 1];
        let mut name = |module: usize| {
            let eval = Eval { module: module as u8, which: named[module] };
            named[module] += 1;
            eval
        };
        let whole = |said: &'static Said| -> &'static Whole {
            let topic = said.id.split('.').next().unwrap_or_default();
            // A topic that is not there has no module: its calculations are lacking for ever.
            let topic = topics::titles().position(|(id, _)| id == topic).unwrap_or_default() + 1;
            let eval = name(if said.role == Role::Question { topic } else { away::RELATIONS });
            let mut turn = |turn: &'static Turn| WrongTurn {
                id: turn.id,
                extra: &turn.extra,
                only: turn.only,
                eval: name(topic),
                says: turn.says,
            };
            Box::leak(Box::new(Whole {
                id: said.id,
                title: said.title,
                gives: said.gives,
                kind: said.kind,
                args: &said.args,
                eval,
                formula: &said.formula,
                method: said.method,
                limits: said.limits,
                source: said.source,
                turns: said.turns.iter().map(&mut turn).collect::<Vec<_>>().leak(),
                rank: said.rank,
                role: said.role,
                lookup: said.lookup,
                inverse: said.inverse,
            }))
        };
        words.relations.iter().map(whole).collect()
    }
}

pub use place::learn;
pub(crate) use place::{quantities, relations};

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_registry_can_be_told_again_from_its_words() {
        let mut words = Words::of_registry(language::messages(), []);
        // What no file is read for needs no ends.
        words.quantities.iter_mut().for_each(|quantity| quantity.ends = crate::quantity::ANY);
        let mut text = String::new();
        words.pack(&mut text);
        let mut reader = Reader::new(&text);
        let again: Words = reader.read().unwrap();
        assert!(reader.is_done());
        assert_eq!(format!("{words:?}"), format!("{again:?}"));
        assert!(Kind::ALL.iter().enumerate().all(|(place, kind)| *kind as usize == place));
        assert!(INSTRUMENTS.iter().enumerate().all(|(place, instrument)| *instrument as usize == place));
    }
}
