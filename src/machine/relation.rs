//! A relation: one quantity from others, with everything that is said about it, in one entry.

use drivecourse_calc::Error;

use crate::source::Source;
use crate::typed::Typed;
use crate::unit::Kind;

/// The inputs of a relation: the numbers of a case, and where in them each input stands.
#[derive(Debug, Clone, Copy)]
pub struct Given<'a> {
    /// Every quantity's value, NaN where unknown.
    pub values: &'a [f64],
    /// For each input, its place in `values`.
    pub at: &'a [u16],
}

impl Given<'_> {
    /// The `index`-th input, typed.
    #[inline]
    pub fn get<T: Typed>(&self, index: usize) -> T {
        T::from_base(self.values[usize::from(self.at[index])])
    }
}

/// Works out one number from the inputs.
pub type Eval = fn(&Given<'_>) -> Result<f64, Error>;

/// One input of a relation.
#[derive(Debug, Clone, Copy)]
pub struct Arg {
    /// Its name in the formula.
    pub name: &'static str,
    /// Which quantity it is.
    pub quantity: &'static str,
    /// The kind its type stands for; the registry's test holds it against the quantity's.
    pub kind: Kind,
}

/// The same step done the way people get it wrong.
#[derive(Debug, Clone, Copy)]
pub struct WrongTurn {
    /// Short name, unique within the relation.
    pub id: &'static str,
    /// Quantities it needs beyond the relation's own inputs, such as the wrong shaft's torque.
    pub extra: &'static [Arg],
    /// The wrong answer.
    pub eval: Eval,
    /// What went wrong, said to the person who did it.
    pub says: &'static str,
}

/// One quantity from others: calculation, formula, limits, source and wrong turns.
#[derive(Debug, Clone, Copy)]
pub struct Relation {
    /// Id of what it gives and a word for the method, joined by `/`.
    pub id: &'static str,
    /// What it does, as a heading.
    pub title: &'static str,
    /// Which quantity it gives.
    pub gives: &'static str,
    /// Kind its result's type stands for.
    pub kind: Kind,
    /// What it is worked out from.
    pub args: &'static [Arg],
    /// The calculation.
    pub eval: Eval,
    /// Formulas as people use them, in the language of [`crate::formula`]: one for both systems of
    /// units, or SI first and US customary second. Empty when it is a method and no formula.
    pub formula: &'static [&'static str],
    /// The method in words, or what to mind; may be empty.
    pub method: &'static str,
    /// Where it holds and what is allowed; may be empty.
    pub limits: &'static str,
    /// Where it comes from.
    pub source: Source,
    /// How it goes wrong.
    pub turns: &'static [WrongTurn],
    /// Lower is preferred where several relations give the same quantity.
    pub rank: u8,
    /// What it is used for.
    pub role: Role,
    /// Whether a table is looked up on the way.
    pub lookup: bool,
    /// Whether it runs against the usual direction (centres from a chain length).
    pub inverse: bool,
}

/// What a relation is used for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// To make cases and to ask and answer questions.
    Both,
    /// To make cases only: a link of the hidden machine that no one is asked to work out.
    Model,
    /// To ask and answer only, never to make a case: an inverse, or a second method.
    Question,
}

impl Relation {
    /// Preferred less than others that give the same quantity.
    #[must_use]
    pub const fn rank(mut self, rank: u8) -> Self {
        self.rank = rank;
        self
    }

    /// Makes cases only.
    #[must_use]
    pub const fn model(mut self) -> Self {
        self.role = Role::Model;
        self
    }

    /// Asks and answers only.
    #[must_use]
    pub const fn question(mut self) -> Self {
        self.role = Role::Question;
        self
    }

    /// Runs against the usual direction; asks and answers only.
    #[must_use]
    pub const fn inverse(mut self) -> Self {
        self.inverse = true;
        self.role = Role::Question;
        self
    }

    /// Needs a table.
    #[must_use]
    pub const fn lookup(mut self) -> Self {
        self.lookup = true;
        self
    }

    /// The method in words, or what to mind.
    #[must_use]
    pub const fn method(mut self, method: &'static str) -> Self {
        self.method = spoken(method);
        self
    }

    /// Where it holds and what is allowed.
    #[must_use]
    pub const fn limits(mut self, limits: &'static str) -> Self {
        self.limits = spoken(limits);
        self
    }

    /// The part of the id before the first dot: the topic in whose file it stands.
    pub fn topic(&self) -> &'static str {
        self.id.split('.').next().unwrap_or(self.id)
    }
}

/// A sentence of the registry: left out of a build that is handed its sentences later (see [`crate::words`]).
pub(crate) const fn spoken(text: &'static str) -> &'static str {
    if cfg!(wordless) { "" } else { text }
}

/// A source, with the same exception.
pub(crate) const fn named(source: Source) -> Source {
    if cfg!(wordless) { Source::CommonPractice } else { source }
}

/// Writes one [`Relation`]: see any file in `topics`.
///
/// The inputs are named and typed once; the calculation and every wrong turn are ordinary
/// expressions over those names, returning the typed result or a `Result` of it. A wrong turn may
/// ask for further quantities after `with`.
macro_rules! relation {
    (
        $id:literal: $title:literal,
        $gives:literal: $out:ty = $calc:expr,
        from $from:tt,
        formula [$($formula:literal),* $(,)?],
        source $source:expr,
        turns { $($turn:literal $(with $with:tt)? : $wrong:expr => $says:literal;)* } $(,)?
    ) => {
        $crate::relation::Relation {
            id: $id,
            title: $crate::relation::spoken($title),
            gives: $gives,
            kind: <$out as $crate::typed::Typed>::KIND,
            args: $crate::relation::args!($from),
            eval: $crate::relation::eval!($out, $from, [], $calc),
            formula: &[$($formula),*],
            method: "",
            limits: "",
            source: $crate::relation::named($source),
            turns: &[$($crate::relation::WrongTurn {
                id: $turn,
                extra: $crate::relation::args!($($with)?),
                eval: $crate::relation::eval!($out, $from, [$($with)?], $wrong),
                says: $crate::relation::spoken($says),
            }),*],
            rank: 0,
            role: $crate::relation::Role::Both,
            lookup: false,
            inverse: false,
        }
    };
}

/// The list of [`Arg`]s of a braced list of inputs; none for nothing.
macro_rules! args {
    () => { &[] };
    ({ $($name:ident: $type:ty = $quantity:literal),* $(,)? }) => {
        &[$($crate::relation::Arg {
            name: stringify!($name),
            quantity: $quantity,
            kind: <$type as $crate::typed::Typed>::KIND,
        }),*]
    };
}

/// An [`Eval`] that names its inputs, then works out `$calc`.
macro_rules! eval {
    ($out:ty, $from:tt, [], $calc:expr) => { $crate::relation::eval!($out, $from, [{}], $calc) };
    (
        $out:ty,
        { $($name:ident: $type:ty = $quantity:literal),* $(,)? },
        [{ $($xname:ident: $xtype:ty = $xquantity:literal),* $(,)? }],
        $calc:expr
    ) => {{
        #[allow(unused_variables, unused_mut, unused_assignments, non_snake_case)]
        fn eval(given: &$crate::relation::Given<'_>) -> Result<f64, drivecourse_calc::Error> {
            let mut index = 0;
            $(let $name: $type = given.get(index); index += 1;)*
            $(let $xname: $xtype = given.get(index); index += 1;)*
            $crate::typed::Answer::<$out>::number($calc)
        }
        eval
    }};
}
pub(crate) use {args, eval, relation};
