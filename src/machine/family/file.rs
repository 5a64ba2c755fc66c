//! A family as it is written in its file: the types that read it, and from which its schema is made.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::Deserialize;
use toml::Spanned;
use toml::Value as Toml;

use crate::schema;

/// A drive family: what is fixed on a kind of drive, what varies, what may be wrong with it.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[schemars(title = "Drive family")]
pub(crate) struct File {
    /// The machine as a heading; questions call it so.
    #[schemars(with = "String")]
    pub(super) name: Spanned<String>,
    /// A sentence or two about the machine.
    #[serde(default)]
    pub(super) about: String,
    /// Another family that this one is a variation of: only what is different is said here.
    #[schemars(with = "Option<String>")]
    pub(super) like: Option<Spanned<String>>,
    /// Topics that this family is for: of the other family only what these need is taken over, and only their columns are
    /// wanted in the table of machines. All of it where no topic is named.
    #[serde(default)]
    #[schemars(with = "Vec<String>")]
    pub(super) topics: Vec<Spanned<String>>,
    /// Faults of the other family that this one cannot have.
    #[serde(default)]
    #[schemars(with = "Vec<String>")]
    pub(super) without: Vec<Spanned<String>>,
    /// A CSV table of real machines beside this file: one row is drawn.
    #[schemars(with = "Option<String>")]
    pub(super) machines: Option<Spanned<String>>,
    /// Whether the machines of its table are made up: then they keep the bounds of the other family that only keep made-up
    /// machines usual. Those of a table are real ones unless this says otherwise.
    #[serde(default)]
    pub(super) made_up: bool,
    /// What every machine of the family has.
    #[serde(default)]
    #[schemars(with = "schema::FixedValues")]
    pub(super) fixed: Values,
    /// What differs from machine to machine.
    #[serde(default)]
    #[schemars(with = "schema::DrawnValues")]
    pub(super) draw: Values,
    /// A table of machines written here, row by row: values that belong together. One row is drawn.
    #[serde(default)]
    #[schemars(with = "Vec<schema::Values>")]
    pub(super) pool: Vec<Values>,
    /// Bounds: a machine beyond one is drawn again.
    #[serde(default)]
    pub(super) limit: Vec<LimitFile>,
    /// How often machines have faults.
    pub(super) faults: Option<Shares>,
    /// What may be wrong with a machine.
    #[serde(default)]
    pub(super) fault: Vec<FaultFile>,
}

pub(super) type Values = BTreeMap<Spanned<String>, Spanned<Toml>>;

/// A bound that machines keep.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct LimitFile {
    /// The quantity that is bounded.
    #[schemars(with = "schema::QuantityName")]
    pub(super) quantity: Spanned<String>,
    /// Least value allowed.
    #[schemars(with = "Option<schema::PlainValue>")]
    pub(super) at_least: Option<Spanned<Toml>>,
    /// Largest value allowed.
    #[schemars(with = "Option<schema::PlainValue>")]
    pub(super) at_most: Option<Spanned<Toml>>,
    /// Why, as a clause.
    #[serde(default)]
    pub(super) because: String,
    /// Where the bound comes from: a standard of the plant, say.
    #[serde(default)]
    pub(super) source: String,
    /// Asked only of machines with nothing wrong.
    #[serde(default)]
    pub(super) healthy: bool,
    /// Only keeps made-up machines usual. Real ones are as they are: a family that is like this one and has a table of
    /// machines of its own does not take this bound over, unless it says `made_up`.
    #[serde(default)]
    pub(super) usual: bool,
}

/// Something that may be wrong with a machine.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct FaultFile {
    /// Short name: items call the fault so.
    #[schemars(with = "String")]
    pub(super) id: Spanned<String>,
    /// As a person says it.
    #[schemars(with = "String")]
    pub(super) name: Spanned<String>,
    /// How often it is drawn, against the others.
    #[serde(default = "one")]
    #[schemars(extend("exclusiveMinimum" = 0))]
    pub(super) weight: f64,
    /// What it changes.
    #[serde(default)]
    #[schemars(with = "schema::DrawnValues")]
    pub(super) draw: Values,
    /// Bounds asked only of machines with this fault.
    #[serde(default)]
    pub(super) limit: Vec<LimitFile>,
}

fn one() -> f64 {
    1.0
}

/// How often machines have faults.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct Shares {
    /// Share of machines with nothing wrong.
    #[serde(default = "default_healthy")]
    #[schemars(range(min = 0.0, max = 1.0))]
    pub(super) healthy: f64,
    /// Share of the faulty ones with two faults.
    #[serde(default)]
    #[schemars(range(min = 0.0, max = 1.0))]
    pub(super) pairs: f64,
}

fn default_healthy() -> f64 {
    0.4
}

impl Default for Shares {
    fn default() -> Self {
        Self { healthy: default_healthy(), pairs: 0.0 }
    }
}
