//! Drive families: what is fixed on a kind of drive, what varies, what may be wrong with it.
//!
//! A family is a TOML file:
//!
//! ```toml
//! name = "Quarry conveyor, head drive"
//! about = "A head drive that moves crushed stone."
//!
//! [fixed]
//! "mount.shim_stock" = "metric leaves"
//! # A value of the plant's own, such as a stricter limit, with where it stands: it is shown beside the value.
//! "mount.gap_limit" = { value = "0.04 mm", source = "site standard M-12, section 3", because = "..." }
//!
//! [draw]
//! "heat.ambient" = { between = ["8 °C", "32 °C"] }
//! "chain.teeth_small" = { choose = ["17", "19", "21"] }
//! "mount.height_1" = { about = "0 mm", spread = "0.02 mm" }
//! "load.sprocket_distance" = { of = "load.shaft_middle", between = ["90 %", "105 %"] }
//! "align.twist" = { of = "align.twist_limit", choose = ["-80 %", "70 %"] }  # follows the limit that a plant has
//!
//! [[pool]]                       # a row of the table of machines: values that belong together; one row is drawn
//! "chain.size" = "60"
//! "drive.motor_power" = "7.5 kW"
//! # or machines = "plant.csv", above the tables: a table of real machines beside the family's file
//!
//! [[limit]]                      # a machine beyond it is drawn again
//! quantity = "chain.wrap_small"
//! at_least = "120°"
//! because = "less wrap lets the chain climb the teeth"
//! # source = "site standard M-12" # where the bound comes from, if it comes from somewhere
//! # healthy = true              # asked only of machines with nothing wrong
//! # usual = true                # only keeps made-up machines usual: real ones, in the table of a family like this, need not keep it
//!
//! [faults]
//! healthy = 0.4                  # share of machines with nothing wrong
//! pairs = 0.1                    # share of the faulty ones with two faults
//!
//! [[fault]]
//! id = "tight-chain"
//! name = "chain set too tight"
//! [fault.draw]
//! "chain.set_sag" = { between = ["0.6 %", "1.2 %"] }
//! [[fault.limit]]                # asked only of machines with this fault
//! quantity = "chain.sag_verdict"
//! at_most = "too tight"
//! ```
//!
//! Values are read as [`stated`](crate::amount::stated) has it: a share that is shown in % bears its sign.
//!
//! A family may be written as a variation of another, and then says only what is different:
//!
//! ```toml
//! name = "Bark conveyor, head drive"
//! like = "quarry-conveyor"
//! without = ["oil-over-full"]   # faults of the other one that this one cannot have
//! # made_up = true              # the machines of its own table are no real ones: they keep what is usual
//! ```
//!
//! `topics = ["chain", "heat"]` beside `like` takes over only what questions about these topics need of the other one: so
//! many columns fewer has the table of machines.
//!
//! The other one may itself be like a third, and so on; a circle is an error. A fault that is written again takes the other's
//! place in the list, so that a seed picks the fault of the same name in both.

mod file;
mod like;
mod only;
mod read;
mod reader;
mod said;
mod strange;
mod table;
mod written;

use std::sync::Arc;

use crate::packed;
use crate::packed::{Packed, Reader};
use crate::registry::QuantityId;
use crate::unit::System;

pub(crate) use file::File as FamilyFile;
pub(crate) use like::SAYS as LIKE_SAYS;
pub(crate) use said::SAYS as READ_SAYS;
pub use strange::Strange;
pub use table::FamilyProblem;
pub(crate) use table::SAYS as TABLE_SAYS;
pub(crate) use written::written;
pub use written::{cell, fixed_line, heading};

/// How a root quantity gets its value (SI).
#[derive(Debug, Clone, PartialEq)]
pub enum Draw {
    /// Always this.
    Fixed(f64),
    /// Evenly between two values; counts include both ends.
    Between(f64, f64),
    /// Evenly among these.
    Choose(Vec<f64>),
    /// Normally about a value, cut off at three spreads.
    About {
        /// The middle.
        middle: f64,
        /// One standard deviation.
        spread: f64,
    },
    /// Evenly between two shares of another quantity of the same machine.
    Share {
        /// The other quantity.
        of: QuantityId,
        /// Least share.
        low: f64,
        /// Largest share.
        high: f64,
    },
    /// One of some shares of another quantity of the same machine, each as likely as the next.
    ShareAmong {
        /// The other quantity.
        of: QuantityId,
        /// The shares.
        shares: Vec<f64>,
    },
}

/// Which machines a limit is asked of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Asked {
    /// Every one.
    Always,
    /// Those with nothing wrong.
    Healthy,
    /// Those with this fault: a place in the family's faults.
    Fault(usize),
}

impl Asked {
    /// The same with the fault's new place, by `place`; `None` where the fault is gone.
    fn moved(self, place: impl Fn(usize) -> Option<usize>) -> Option<Self> {
        match self {
            Self::Fault(fault) => place(fault).map(Self::Fault),
            other => Some(other),
        }
    }
}

/// A bound that the machines of a family keep.
#[derive(Debug, Clone, PartialEq)]
pub struct Limit {
    /// Which quantity.
    pub quantity: QuantityId,
    /// Least value allowed (SI).
    pub at_least: f64,
    /// Largest value allowed (SI).
    pub at_most: f64,
    /// Why, as a clause.
    pub because: String,
    /// Where it comes from; empty where nobody says.
    pub source: String,
    /// Which machines keep it.
    pub asked: Asked,
    /// Whether it only keeps made-up machines usual, and real ones need not keep it.
    pub usual: bool,
    /// Where it stands in the family's file, in bytes.
    pub span: core::ops::Range<usize>,
    /// The family that it was taken over from; empty where it is this one's own.
    pub of: String,
}

impl Limit {
    /// Whether it is asked of a machine with these faults (places in the family's).
    pub(crate) fn is_asked(&self, faults: &[usize]) -> bool {
        match self.asked {
            Asked::Always => true,
            Asked::Healthy => faults.is_empty(),
            Asked::Fault(fault) => faults.contains(&fault),
        }
    }

    /// How far `value` lies beyond it (SI, never less than nothing); NaN stays NaN.
    pub(crate) fn beyond(&self, value: f64) -> f64 {
        if value.is_nan() { value } else { (self.at_least - value).max(value - self.at_most).max(0.0) }
    }
    /// Why, and where it comes from, as a clause; empty where nobody says.
    pub fn reason(&self) -> String {
        [&self.because, &self.source]
            .into_iter()
            .filter(|text| !text.is_empty())
            .cloned()
            .collect::<Vec<_>>()
            .join("; ")
    }
}

/// A fixed value of the plant's own, with where it stands: it goes before the common one and is shown with its source.
#[derive(Debug, Clone, PartialEq)]
pub struct Stated {
    /// Of which quantity.
    pub quantity: QuantityId,
    /// The plant's standard, drawing or order that says so.
    pub source: String,
    /// Why, as a clause; may be empty.
    pub because: String,
}

impl Stated {
    /// Source and reason in one line.
    pub fn text(&self) -> String {
        if self.because.is_empty() { self.source.clone() } else { format!("{}: {}", self.source, self.because) }
    }
}

/// Something that may be wrong with a machine of the family.
#[derive(Debug, Clone, PartialEq)]
pub struct Fault {
    /// Short name.
    pub id: String,
    /// As a person says it.
    pub name: String,
    /// How often it is drawn, against the others.
    pub weight: f64,
    /// What it changes.
    pub draws: Vec<(QuantityId, Draw)>,
}

impl Fault {
    /// Whether both change the same quantity, so that one would hide the other.
    pub fn clashes(&self, other: &Self) -> bool {
        self.draws.iter().any(|(id, _)| other.draws.iter().any(|(also, _)| also == id))
    }
}

/// A drive family, read and checked.
#[derive(Debug, Clone, PartialEq)]
pub struct Family {
    /// File name without ending: how items and papers call it.
    pub id: String,
    /// As a heading.
    pub name: String,
    /// A sentence or two about the machine.
    pub about: String,
    /// What is drawn or fixed, in the order of the quantities.
    pub roots: Vec<(QuantityId, Draw)>,
    /// Rows of values that belong together.
    pub pool: Vec<Vec<(QuantityId, f64)>>,
    /// Names of the rows, where they come from a table of machines; else empty.
    pub machines: Vec<String>,
    /// Fixed values with a source of their own.
    pub stated: Arc<[Stated]>,
    /// Bounds.
    pub limits: Vec<Limit>,
    /// Bounds of the family that this one is like which only keep made-up machines usual, and which the real ones of its
    /// own table need not keep.
    pub unbound: Vec<Limit>,
    /// What may be wrong.
    pub faults: Vec<Fault>,
    /// Share of machines with nothing wrong.
    pub healthy: f64,
    /// Share of the faulty ones with two faults.
    pub pairs: f64,
    /// Where the family's own file names what is fixed or drawn, and what each fault changes, in bytes.
    pub(crate) places: Vec<Place>,
    /// What the table of the family that this one is like has, and its own has not.
    pub(crate) lacks: Lacks,
    /// Its own table of machines, where it has one.
    pub table: Option<OwnTable>,
    /// The topics that its file names, each with its place in bytes; none where it is for all.
    pub topics: Vec<(String, core::ops::Range<usize>)>,
    /// The units in which its author is told of its values: those of most columns of its own table.
    pub told_in: System,
}

/// Where the table of machines of a family stands, for whoever tells of one of them.
#[derive(Debug, Clone, PartialEq)]
pub struct OwnTable {
    /// The file, as the family names it.
    pub file: String,
    /// Its line of headings, in bytes.
    pub headings: core::ops::Range<usize>,
    /// Its columns, each with its heading, in bytes.
    pub columns: Vec<(QuantityId, core::ops::Range<usize>)>,
    /// Each row of the pool, in bytes.
    pub rows: Vec<core::ops::Range<usize>>,
    /// The cells of each row, in bytes.
    pub cells: Vec<Vec<(QuantityId, core::ops::Range<usize>)>>,
    /// Of the columns whose headings have a unit that only one set of units has, which that is.
    pub systems: Vec<(QuantityId, System)>,
    /// Values far from what is usual in the family that this one is like.
    pub strange: Vec<Strange>,
}

impl OwnTable {
    /// The units that the column of `quantity` is written in; where its heading leaves that open, those of most columns.
    pub fn system(&self, quantity: QuantityId) -> System {
        let own = self.systems.iter().find(|(id, _)| *id == quantity).map(|(_, system)| *system);
        own.unwrap_or_else(|| self.most())
    }

    /// The units that most columns are written in.
    fn most(&self) -> System {
        let us = self.systems.iter().filter(|(_, system)| *system == System::Us).count();
        if 2 * us > self.systems.len() { System::Us } else { System::Si }
    }

    /// Where a strange value stands, or the heading of a strange column, in bytes.
    pub fn place(&self, strange: &Strange) -> Option<core::ops::Range<usize>> {
        let cells = strange.row.map_or(Some(&self.columns), |row| self.cells.get(row))?;
        cells.iter().find(|(id, _)| *id == strange.quantity).map(|(_, span)| span.clone())
    }
}

/// Columns that a family's own table of machines has not, and that of the family it is like has.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Lacks {
    /// The other family.
    pub(crate) of: String,
    /// Whose values they are, as a person says it: a machine of the other table.
    pub(crate) whose: String,
    /// What that one has in these columns (SI): it shows how they are written, and is nobody else's.
    pub(crate) columns: Vec<(QuantityId, f64)>,
    /// Where the family's own file names its table, in bytes.
    pub(crate) span: core::ops::Range<usize>,
}

/// Where a quantity is named: by the family, or by the fault at that place.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Place {
    quantity: QuantityId,
    fault: Option<String>,
    span: core::ops::Range<usize>,
}

impl Family {
    /// The columns that the table of the family this one is like has, and this one's own has not, and neither fixes nor
    /// draws; none without a table of its own.
    pub fn lacks(&self) -> impl Iterator<Item = QuantityId> + '_ {
        self.lacks.columns.iter().map(|(id, _)| *id)
    }

    /// Every draw, the faults' too.
    pub(crate) fn draws(&self) -> impl Iterator<Item = &(QuantityId, Draw)> {
        self.roots.iter().chain(self.faults.iter().flat_map(|fault| &fault.draws))
    }

    /// Where the file names `quantity`, by itself or for the fault of this id; `None` where another file does.
    pub fn place(&self, quantity: QuantityId, fault: Option<&str>) -> Option<core::ops::Range<usize>> {
        let named = |place: &&Place| place.quantity == quantity && place.fault.as_deref() == fault;
        self.places.iter().find(named).map(|place| place.span.clone())
    }
}

packed!(Family { id, name, about, roots, pool, machines, stated, limits, faults, healthy, pairs } without unbound, places, lacks, table, topics, told_in);
packed!(Stated { quantity, source, because });
packed!(Fault { id, name, weight, draws });
packed!(Limit { quantity, at_least, at_most, because, source, asked } without usual, span, of);

impl Packed for Draw {
    fn pack(&self, out: &mut String) {
        match self {
            Self::Fixed(value) => (0_u8, *value).pack(out),
            Self::Between(low, high) => (1_u8, (*low, *high)).pack(out),
            Self::Choose(choices) => (2_u8, choices.clone()).pack(out),
            Self::About { middle, spread } => (3_u8, (*middle, *spread)).pack(out),
            Self::Share { of, low, high } => (4_u8, (*of, (*low, *high))).pack(out),
            Self::ShareAmong { of, shares } => (5_u8, (*of, shares.clone())).pack(out),
        }
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        match u8::unpack(from) {
            0 => Self::Fixed(f64::unpack(from)),
            1 => Self::Between(f64::unpack(from), f64::unpack(from)),
            2 => Self::Choose(Vec::unpack(from)),
            3 => Self::About { middle: f64::unpack(from), spread: f64::unpack(from) },
            4 => Self::Share { of: Packed::unpack(from), low: f64::unpack(from), high: f64::unpack(from) },
            _ => Self::ShareAmong { of: Packed::unpack(from), shares: Vec::unpack(from) },
        }
    }
}

impl Packed for Asked {
    fn pack(&self, out: &mut String) {
        match self {
            Self::Always => 0,
            Self::Healthy => 1,
            Self::Fault(place) => 2 + place,
        }
        .pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        match usize::unpack(from) {
            0 => Self::Always,
            1 => Self::Healthy,
            place => Self::Fault(place - 2),
        }
    }
}
