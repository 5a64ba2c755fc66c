//! How families and items travel to the browser: quantities and relations by name, numbers bit for bit.
//!
//! Decimal text would come back a hair off, or not at all where a bound is infinite; the bits of a number never do.

use serde::de::Error;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use crate::registry::{QuantityId, Registry, RelationId};

/// A number as its bits: for `#[serde(with = "packed::bits")]`.
pub mod bits {
    use super::*;

    /// Writes the bits.
    ///
    /// # Errors
    /// The serializer's own.
    pub fn serialize<S: Serializer>(value: &f64, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_u64(value.to_bits())
    }

    /// Reads the bits.
    ///
    /// # Errors
    /// Where there is no whole number.
    pub fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<f64, D::Error> {
        u64::deserialize(from).map(f64::from_bits)
    }
}

/// A number as its bits, inside lists.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Bits(#[serde(with = "bits")] pub f64);

/// Numbers as their bits: for `#[serde(with = "packed::many")]`.
pub mod many {
    use super::*;

    /// Writes the bits of each.
    ///
    /// # Errors
    /// The serializer's own.
    pub fn serialize<S: Serializer>(values: &[f64], to: S) -> Result<S::Ok, S::Error> {
        to.collect_seq(values.iter().copied().map(Bits))
    }

    /// Reads the bits of each.
    ///
    /// # Errors
    /// Where there is no list of whole numbers.
    pub fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<Vec<f64>, D::Error> {
        Ok(Vec::<Bits>::deserialize(from)?.into_iter().map(|bits| bits.0).collect())
    }
}

/// Rows of quantities with their values: for `#[serde(with = "packed::rows")]`.
pub mod rows {
    use super::*;

    /// Writes names and bits.
    ///
    /// # Errors
    /// The serializer's own.
    pub fn serialize<S: Serializer>(rows: &[Vec<(QuantityId, f64)>], to: S) -> Result<S::Ok, S::Error> {
        to.collect_seq(rows.iter().map(|row| row.iter().map(|(id, value)| (*id, Bits(*value))).collect::<Vec<_>>()))
    }

    /// Reads names and bits.
    ///
    /// # Errors
    /// Where there is no list of lists of pairs.
    pub fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<Vec<Vec<(QuantityId, f64)>>, D::Error> {
        let rows = Vec::<Vec<(QuantityId, Bits)>>::deserialize(from)?;
        Ok(rows.into_iter().map(|row| row.into_iter().map(|(id, bits)| (id, bits.0)).collect()).collect())
    }
}

impl Serialize for QuantityId {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_str(self.get().id)
    }
}

impl<'de> Deserialize<'de> for QuantityId {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        let name = String::deserialize(from)?;
        Registry::get().find(&name).ok_or_else(|| D::Error::custom(name))
    }
}

impl Serialize for RelationId {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_str(self.get().relation.id)
    }
}

impl<'de> Deserialize<'de> for RelationId {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        let name = String::deserialize(from)?;
        Registry::get().relation(&name).map(|linked| linked.id).ok_or_else(|| D::Error::custom(name))
    }
}
