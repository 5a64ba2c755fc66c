//! How families, items and the registry's sentences travel to the browser: as one text of numbers and counted strings.
//!
//! Decimal text would bring numbers back a hair off, or not at all where a bound is infinite; their bits never do.

use std::sync::Arc;

use crate::registry::{QuantityId, RelationId};

/// What travels packed.
pub trait Packed: Sized {
    /// Adds itself to `out`.
    fn pack(&self, out: &mut String);
    /// Reads itself back; nothing where the text is of another version.
    fn unpack(from: &mut Reader<'_>) -> Option<Self>;
}

/// A packed text, read from its beginning.
#[derive(Debug, Clone)]
pub struct Reader<'a> {
    rest: &'a str,
}

impl<'a> Reader<'a> {
    /// At the beginning of `text`.
    #[must_use]
    pub fn new(text: &'a str) -> Self {
        Self { rest: text }
    }

    /// Whether all of it was read.
    #[must_use]
    pub fn is_done(&self) -> bool {
        self.rest.is_empty()
    }

    fn number(&mut self) -> Option<u64> {
        let (figures, rest) = self.rest.split_once(' ')?;
        self.rest = rest;
        let mut out = 0_u64;
        for figure in figures.chars() {
            out = out.checked_mul(16)?.checked_add(u64::from(figure.to_digit(16)?))?;
        }
        Some(out)
    }

    fn text(&mut self) -> Option<&'a str> {
        let length = usize::try_from(self.number()?).ok()?;
        let (text, rest) = self.rest.split_at_checked(length)?;
        self.rest = rest;
        Some(text)
    }
}

impl Packed for u64 {
    fn pack(&self, out: &mut String) {
        out.push_str(&format!("{self:x} "));
    }

    fn unpack(from: &mut Reader<'_>) -> Option<Self> {
        from.number()
    }
}

macro_rules! whole {
    ($($type:ty),*) => {$(
        impl Packed for $type {
            fn pack(&self, out: &mut String) {
                (*self as u64).pack(out);
            }

            fn unpack(from: &mut Reader<'_>) -> Option<Self> {
                from.number()?.try_into().ok()
            }
        }
    )*};
}
whole!(u8, u16, u32, usize);

impl Packed for f64 {
    fn pack(&self, out: &mut String) {
        self.to_bits().pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Option<Self> {
        from.number().map(Self::from_bits)
    }
}

impl Packed for bool {
    fn pack(&self, out: &mut String) {
        u64::from(*self).pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Option<Self> {
        from.number().map(|number| number != 0)
    }
}

impl Packed for String {
    fn pack(&self, out: &mut String) {
        self.len().pack(out);
        out.push_str(self);
    }

    fn unpack(from: &mut Reader<'_>) -> Option<Self> {
        from.text().map(str::to_owned)
    }
}

/// Words of the registry, which stays as long as the program runs, and so do they.
impl Packed for &'static str {
    fn pack(&self, out: &mut String) {
        self.len().pack(out);
        out.push_str(self);
    }

    fn unpack(from: &mut Reader<'_>) -> Option<Self> {
        Some(Box::leak(from.text()?.into()))
    }
}

impl<T: Packed> Packed for Vec<T> {
    fn pack(&self, out: &mut String) {
        self.len().pack(out);
        self.iter().for_each(|item| item.pack(out));
    }

    fn unpack(from: &mut Reader<'_>) -> Option<Self> {
        let length = from.number()?;
        (0..length).map(|_| T::unpack(from)).collect()
    }
}

impl<T: Packed> Packed for Arc<[T]> {
    fn pack(&self, out: &mut String) {
        self.len().pack(out);
        self.iter().for_each(|item| item.pack(out));
    }

    fn unpack(from: &mut Reader<'_>) -> Option<Self> {
        Vec::unpack(from).map(Into::into)
    }
}

impl<T: Packed> Packed for Option<T> {
    fn pack(&self, out: &mut String) {
        self.is_some().pack(out);
        self.iter().for_each(|item| item.pack(out));
    }

    fn unpack(from: &mut Reader<'_>) -> Option<Self> {
        Some(if bool::unpack(from)? { Some(T::unpack(from)?) } else { None })
    }
}

impl<A: Packed, B: Packed> Packed for (A, B) {
    fn pack(&self, out: &mut String) {
        self.0.pack(out);
        self.1.pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Option<Self> {
        Some((A::unpack(from)?, B::unpack(from)?))
    }
}

impl Packed for QuantityId {
    fn pack(&self, out: &mut String) {
        self.0.pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Option<Self> {
        u16::unpack(from).map(Self)
    }
}

impl Packed for RelationId {
    fn pack(&self, out: &mut String) {
        self.0.pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Option<Self> {
        u16::unpack(from).map(Self)
    }
}

/// Implements [`Packed`] for a struct, field by field; those after `without` keep their default.
#[macro_export]
macro_rules! packed {
    ($type:ty { $($field:ident),* $(,)? } $(without $($left:ident),*)?) => {
        impl $crate::packed::Packed for $type {
            fn pack(&self, out: &mut String) {
                $($crate::packed::Packed::pack(&self.$field, out);)*
            }

            fn unpack(from: &mut $crate::packed::Reader<'_>) -> Option<Self> {
                Some(Self {
                    $($field: $crate::packed::Packed::unpack(from)?,)*
                    $($($left: Default::default(),)*)?
                })
            }
        }
    };
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_packed_comes_back() {
        let value = vec![(Some("Öl, 5 µm".to_owned()), f64::NEG_INFINITY), (None, 0.1 + 0.2)];
        let mut text = String::new();
        value.pack(&mut text);
        let mut reader = Reader::new(&text);
        assert_eq!(Vec::<(Option<String>, f64)>::unpack(&mut reader), Some(value));
        assert!(reader.is_done());
        for cut in (0..text.len()).filter(|cut| text.is_char_boundary(*cut)) {
            assert_eq!(Vec::<(Option<String>, f64)>::unpack(&mut Reader::new(&text[..cut])), None, "{cut}");
        }
    }
}
