//! Replies as JSON: a writer for what replies are made of, small enough for the browser.

use core::fmt;

use serde::ser::{self, Impossible, Serialize, SerializeSeq, SerializeStruct};

/// `value` as JSON text.
pub(crate) fn write(value: &impl Serialize) -> String {
    let mut out = Writer(String::new());
    // Replies hold only what this writer knows; the test below would find anything else.
    if value.serialize(&mut out).is_err() {
        return "{\"error\":\"This reply cannot be written.\"}".into();
    }
    out.0
}

struct Writer(String);

/// Something that no reply is made of.
#[derive(Debug)]
struct Unknown;

impl fmt::Display for Unknown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("not part of any reply")
    }
}

impl core::error::Error for Unknown {}

impl ser::Error for Unknown {
    fn custom<T: fmt::Display>(_: T) -> Self {
        Self
    }
}

impl Writer {
    #[inline(never)]
    fn text(&mut self, text: &str) {
        self.0.push('"');
        for c in text.chars() {
            match c {
                '"' | '\\' => {
                    self.0.push('\\');
                    self.0.push(c);
                }
                '\n' => self.0.push_str("\\n"),
                c if c < ' ' => self.0.push(' '),
                c => self.0.push(c),
            }
        }
        self.0.push('"');
    }

    #[inline(never)]
    fn whole(&mut self, number: u64) {
        if number > 9 {
            self.whole(number / 10);
        }
        self.0.push(char::from(b'0' + (number % 10) as u8));
    }

    /// A comma, unless something was just opened.
    #[inline(never)]
    fn next(&mut self) {
        if !self.0.ends_with(['[', '{', ':']) {
            self.0.push(',');
        }
    }

    #[inline(never)]
    fn key(&mut self, key: &str) {
        self.next();
        self.text(key);
        self.0.push(':');
    }

    fn close(&mut self, mark: char) -> Result<(), Unknown> {
        self.0.push(mark);
        Ok(())
    }
}

macro_rules! unknown {
    ($($name:ident($($type:ty),*)),* $(,)?) => {
        $(fn $name(self, $(_: $type),*) -> Result<(), Unknown> { Err(Unknown) })*
    };
}

macro_rules! whole {
    ($($name:ident($type:ty)),*) => {
        $(fn $name(self, value: $type) -> Result<(), Unknown> { self.whole(u64::from(value)); Ok(()) })*
    };
}

impl ser::Serializer for &mut Writer {
    type Ok = ();
    type Error = Unknown;
    type SerializeSeq = Self;
    type SerializeTuple = Impossible<(), Unknown>;
    type SerializeTupleStruct = Impossible<(), Unknown>;
    type SerializeTupleVariant = Impossible<(), Unknown>;
    type SerializeMap = Impossible<(), Unknown>;
    type SerializeStruct = Self;
    type SerializeStructVariant = Impossible<(), Unknown>;

    whole!(serialize_u8(u8), serialize_u16(u16), serialize_u32(u32), serialize_u64(u64));
    unknown!(
        serialize_i8(i8),
        serialize_i16(i16),
        serialize_i32(i32),
        serialize_i64(i64),
        serialize_f32(f32),
        serialize_f64(f64),
        serialize_bytes(&[u8]),
        serialize_unit_struct(&'static str),
    );

    fn serialize_bool(self, value: bool) -> Result<(), Unknown> {
        self.0.push_str(if value { "true" } else { "false" });
        Ok(())
    }

    fn serialize_char(self, value: char) -> Result<(), Unknown> {
        self.text(value.encode_utf8(&mut [0; 4]));
        Ok(())
    }

    fn serialize_str(self, value: &str) -> Result<(), Unknown> {
        self.text(value);
        Ok(())
    }

    fn serialize_none(self) -> Result<(), Unknown> {
        self.serialize_unit()
    }

    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> Result<(), Unknown> {
        value.serialize(self)
    }

    fn serialize_unit(self) -> Result<(), Unknown> {
        self.0.push_str("null");
        Ok(())
    }

    fn serialize_unit_variant(self, _: &'static str, _: u32, variant: &'static str) -> Result<(), Unknown> {
        self.text(variant);
        Ok(())
    }

    fn serialize_newtype_struct<T: Serialize + ?Sized>(self, _: &'static str, value: &T) -> Result<(), Unknown> {
        value.serialize(self)
    }

    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        value: &T,
    ) -> Result<(), Unknown> {
        self.0.push('{');
        self.key(variant);
        value.serialize(&mut *self)?;
        self.close('}')
    }

    fn serialize_seq(self, _: Option<usize>) -> Result<Self, Unknown> {
        self.0.push('[');
        Ok(self)
    }

    fn serialize_tuple(self, _: usize) -> Result<Self::SerializeTuple, Unknown> {
        Err(Unknown)
    }

    fn serialize_tuple_struct(self, _: &'static str, _: usize) -> Result<Self::SerializeTupleStruct, Unknown> {
        Err(Unknown)
    }

    fn serialize_tuple_variant(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        _: usize,
    ) -> Result<Self::SerializeTupleVariant, Unknown> {
        Err(Unknown)
    }

    fn serialize_map(self, _: Option<usize>) -> Result<Self::SerializeMap, Unknown> {
        Err(Unknown)
    }

    fn serialize_struct(self, _: &'static str, _: usize) -> Result<Self, Unknown> {
        self.0.push('{');
        Ok(self)
    }

    fn serialize_struct_variant(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        _: usize,
    ) -> Result<Self::SerializeStructVariant, Unknown> {
        Err(Unknown)
    }
}

impl SerializeSeq for &mut Writer {
    type Ok = ();
    type Error = Unknown;

    fn serialize_element<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Unknown> {
        self.next();
        value.serialize(&mut **self)
    }

    fn end(self) -> Result<(), Unknown> {
        self.close(']')
    }
}

impl SerializeStruct for &mut Writer {
    type Ok = ();
    type Error = Unknown;

    fn serialize_field<T: Serialize + ?Sized>(&mut self, key: &'static str, value: &T) -> Result<(), Unknown> {
        self.key(key);
        value.serialize(&mut **self)
    }

    fn end(self) -> Result<(), Unknown> {
        self.close('}')
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_comes_through() {
        let text = "a \"b\" \\ c\nd µ \u{a0}";
        let back: String = serde_json::from_str(&write(&text)).unwrap();
        assert_eq!(back, text);
        assert_eq!(write(&vec![Some(120_u32), None]), "[120,null]");
        assert!(write(&1.5_f64).contains("error"));
    }
}
