//! How families, items and the registry's sentences travel to the browser: as one text of numbers and counted strings.
//!
//! Decimal text would bring numbers back a hair off, or not at all where a bound is infinite; their bits never do.

use std::sync::Arc;

use crate::registry::{QuantityId, RelationId};

/// What travels packed.
pub trait Packed: Sized {
    /// Adds itself to `out`.
    fn pack(&self, out: &mut String);
    /// Reads itself back. A text of another version brings something else, which the reader then knows
    /// ([`Reader::kept`]): to ask at every number whether there is one would be half of what a browser loads for this.
    fn unpack(from: &mut Reader<'_>) -> Self;
}

/// A packed text, read from its beginning.
#[derive(Debug, Clone)]
pub struct Reader<'a> {
    rest: &'a str,
    /// Something was not as it should be; noughts and empty texts are read from then on.
    lost: bool,
}

impl<'a> Reader<'a> {
    /// At the beginning of `text`.
    #[must_use]
    pub fn new(text: &'a str) -> Self {
        Self { rest: text, lost: false }
    }

    /// Whether all of it was read, and was as it should be.
    #[must_use]
    pub fn is_done(&self) -> bool {
        self.rest.is_empty() && !self.lost
    }

    /// `value`, if all that was read so far was as it should be.
    pub fn kept<T>(&self, value: T) -> Option<T> {
        (!self.lost).then_some(value)
    }

    /// Reads a `T`; nothing where the text is of another version.
    pub fn read<T: Packed>(&mut self) -> Option<T> {
        let value = T::unpack(self);
        self.kept(value)
    }

    fn lose<T: Default>(&mut self) -> T {
        (self.lost, self.rest) = (true, "");
        T::default()
    }

    fn number(&mut self) -> u64 {
        let Some((figures, rest)) = self.rest.split_once(' ') else { return self.lose() };
        match u64::from_str_radix(figures, 16) {
            Ok(number) => {
                self.rest = rest;
                number
            }
            Err(_) => self.lose(),
        }
    }

    fn text(&mut self) -> &'a str {
        let length = self.number() as usize;
        let Some((text, rest)) = self.rest.split_at_checked(length) else { return self.lose() };
        self.rest = rest;
        text
    }

    /// The one of `all` in the place that is read; the first where there is none.
    pub fn choose<T: Copy>(&mut self, all: &[T]) -> T {
        let place = self.number() as usize;
        match all.get(place) {
            Some(found) => *found,
            None => {
                self.lose::<()>();
                all[0]
            }
        }
    }
}

impl Packed for u64 {
    fn pack(&self, out: &mut String) {
        out.push_str(&format!("{self:x} "));
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        from.number()
    }
}

macro_rules! whole {
    ($($type:ty),*) => {$(
        impl Packed for $type {
            fn pack(&self, out: &mut String) {
                (*self as u64).pack(out);
            }

            fn unpack(from: &mut Reader<'_>) -> Self {
                from.number().try_into().unwrap_or_else(|_| from.lose())
            }
        }
    )*};
}
whole!(u8, u16, u32, usize);

impl Packed for f64 {
    fn pack(&self, out: &mut String) {
        self.to_bits().pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        Self::from_bits(from.number())
    }
}

impl Packed for bool {
    fn pack(&self, out: &mut String) {
        u64::from(*self).pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        from.number() != 0
    }
}

impl Packed for String {
    fn pack(&self, out: &mut String) {
        self.len().pack(out);
        out.push_str(self);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        from.text().to_owned()
    }
}

/// Words of the registry, which stays as long as the program runs, and so do they.
impl Packed for &'static str {
    fn pack(&self, out: &mut String) {
        self.len().pack(out);
        out.push_str(self);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        Box::leak(from.text().into())
    }
}

impl<T: Packed> Packed for Vec<T> {
    fn pack(&self, out: &mut String) {
        self.len().pack(out);
        self.iter().for_each(|item| item.pack(out));
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        let length = from.number();
        let mut out = Self::new();
        for _ in 0..length {
            out.push(T::unpack(from));
            if from.lost {
                break;
            }
        }
        out
    }
}

impl<T: Packed> Packed for Arc<[T]> {
    fn pack(&self, out: &mut String) {
        self.len().pack(out);
        self.iter().for_each(|item| item.pack(out));
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        Vec::unpack(from).into()
    }
}

impl<T: Packed> Packed for Option<T> {
    fn pack(&self, out: &mut String) {
        self.is_some().pack(out);
        self.iter().for_each(|item| item.pack(out));
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        if bool::unpack(from) { Some(T::unpack(from)) } else { None }
    }
}

impl<A: Packed, B: Packed> Packed for (A, B) {
    fn pack(&self, out: &mut String) {
        self.0.pack(out);
        self.1.pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        (A::unpack(from), B::unpack(from))
    }
}

impl Packed for QuantityId {
    fn pack(&self, out: &mut String) {
        self.0.pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        Self(u16::unpack(from))
    }
}

impl Packed for RelationId {
    fn pack(&self, out: &mut String) {
        self.0.pack(out);
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        Self(u16::unpack(from))
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

            fn unpack(from: &mut $crate::packed::Reader<'_>) -> Self {
                Self {
                    $($field: $crate::packed::Packed::unpack(from),)*
                    $($($left: Default::default(),)*)?
                }
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
        assert_eq!(reader.read::<Vec<(Option<String>, f64)>>(), Some(value));
        assert!(reader.is_done());
        for cut in (0..text.len()).filter(|cut| text.is_char_boundary(*cut)) {
            assert_eq!(Reader::new(&text[..cut]).read::<Vec<(Option<String>, f64)>>(), None, "{cut}");
        }
    }
}
