//! A relation: one quantity from others, with everything that is said about it, in one entry.

use drivecourse_calc::Error;

use crate::typed::Typed;
use crate::unit::{Kind, System};

#[cfg(wordless)]
pub mod away;
#[cfg(wordless)]
mod bare;
mod whole;

#[cfg(wordless)]
pub use bare::{Bare, NOTHING, Relation};
#[cfg(not(wordless))]
pub use whole::Relation;
/// An entry with its words, in either build.
pub use whole::Relation as Whole;

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
        T::from_base(self.number(index))
    }

    #[inline]
    fn number(&self, index: usize) -> f64 {
        // Every input has its place; this says so without a panic, so that an input that is not used costs nothing.
        let place = self.at.get(index).copied().unwrap_or(u16::MAX);
        self.values.get(usize::from(place)).copied().unwrap_or(f64::NAN)
    }
}

/// Most inputs of one calculation, those that a wrong turn needs besides included: in the browser each is handed over
/// as a number of its own.
pub const MOST_INPUTS: usize = 16;

/// Works out one number from the inputs.
#[cfg(not(wordless))]
pub type Eval = fn(&Given<'_>) -> Result<f64, Error>;
#[cfg(wordless)]
pub use away::Eval;

/// What `eval` makes of `given`.
///
/// # Errors
/// The calculation's own.
#[cfg(not(wordless))]
#[inline]
pub fn work(eval: Eval, given: &Given<'_>) -> Result<f64, Error> {
    eval(given)
}
#[cfg(wordless)]
pub use away::work;

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
    /// The set of units of the papers it belongs to, where it takes numbers as they stand there: °F for a rise, or mils.
    pub only: Option<System>,
    /// The wrong answer.
    pub eval: Eval,
    /// What went wrong, said to the person who did it.
    pub says: &'static str,
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

/// Writes one [`Relation`]: see any file in `topics`.
///
/// The inputs are named and typed once; the calculation and every wrong turn are ordinary
/// expressions over those names, returning the typed result or a `Result` of it. A wrong turn may
/// ask for further quantities after `with`; after `in` stands the [`System`] that it belongs to, where it takes numbers
/// as they stand on papers in its units only, such as °F.
#[cfg(not(wordless))]
macro_rules! relation {
    (
        $id:literal: $title:literal,
        $gives:literal: $out:ty = $calc:expr,
        from $from:tt,
        formula [$($formula:expr),* $(,)?],
        source $source:expr,
        turns { $($turn:literal $(in $only:ident)? $(with $with:tt)? : $wrong:expr => $says:literal;)* } $(,)?
    ) => {
        $crate::relation::Relation {
            id: $id,
            title: $title,
            gives: $gives,
            kind: <$out as $crate::typed::Typed>::KIND,
            args: $crate::relation::args!($from),
            eval: $crate::relation::eval!($out, $from, [], $calc),
            formula: &[$($formula),*],
            method: "",
            limits: "",
            source: $source,
            turns: &[$($crate::relation::WrongTurn {
                id: $turn,
                extra: $crate::relation::args!($($with)?),
                only: $crate::relation::only!($($only)?),
                eval: $crate::relation::eval!($out, $from, [$($with)?], $wrong),
                says: $says,
            }),*],
            rank: 0,
            role: $crate::relation::Role::Both,
            lookup: false,
            inverse: false,
        }
    };
}

/// The same entry without its words: calculations alone.
#[cfg(wordless)]
macro_rules! relation {
    (
        $id:literal: $title:literal,
        $gives:literal: $out:ty = $calc:expr,
        from $from:tt,
        formula [$($formula:expr),* $(,)?],
        source $source:expr,
        turns { $($turn:literal $(in $only:ident)? $(with $with:tt)? : $wrong:expr => $says:literal;)* } $(,)?
    ) => {
        $crate::relation::Relation::new(
            &[$crate::relation::eval!($out, $from, [], $calc)],
            &[$($crate::relation::eval!($out, $from, [$($with)?], $wrong)),*],
        )
    };
}

/// The system that a wrong turn belongs to; none for nothing.
#[cfg(not(wordless))]
macro_rules! only {
    () => {
        None
    };
    ($system:ident) => {
        Some($crate::unit::System::$system)
    };
}

/// The list of [`Arg`]s of a braced list of inputs; none for nothing.
#[cfg(not(wordless))]
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
#[cfg(not(wordless))]
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

/// A calculation of the browser build that names its inputs, then works out `$calc`; NaN stands for no result.
#[cfg(wordless)]
macro_rules! eval {
    ($out:ty, $from:tt, [], $calc:expr) => { $crate::relation::eval!($out, $from, [{}], $calc) };
    (
        $out:ty,
        { $($name:ident: $type:ty = $quantity:literal),* $(,)? },
        [{ $($xname:ident: $xtype:ty = $xquantity:literal),* $(,)? }],
        $calc:expr
    ) => {{
        #[inline(always)]
        #[allow(unused_variables, unused_mut, unused_assignments, non_snake_case)]
        fn result(given: [f64; $crate::relation::MOST_INPUTS]) -> Result<f64, drivecourse_calc::Error> {
            let mut index = 0;
            $(let $name = <$type as $crate::typed::Typed>::from_base(given[index]); index += 1;)*
            $(let $xname = <$xtype as $crate::typed::Typed>::from_base(given[index]); index += 1;)*
            $crate::typed::Answer::<$out>::number($calc)
        }
        // Numbers handed over one by one cost a third of what numbers fetched from a list do.
        #[allow(clippy::too_many_arguments)]
        fn eval(
            a: f64, b: f64, c: f64, d: f64, e: f64, f: f64, g: f64, h: f64,
            i: f64, j: f64, k: f64, l: f64, m: f64, n: f64, o: f64, p: f64,
        ) -> f64 {
            result([a, b, c, d, e, f, g, h, i, j, k, l, m, n, o, p]).unwrap_or(f64::NAN)
        }
        eval
    }};
}
#[cfg(not(wordless))]
pub(crate) use {args, only};
pub(crate) use {eval, relation};
