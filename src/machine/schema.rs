//! JSON Schema of what authors write, for editors: made from the types that read it, and from the registry.

use std::borrow::Cow;

use schemars::generate::SchemaSettings;
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde_json::{Map, Value, json};

use crate::family::FamilyFile;
use crate::quantity::Quantity;
use crate::registry::Registry;
use crate::topics;
use crate::unit::Kind;

/// The schema of a family's file.
pub fn family() -> Value {
    of::<FamilyFile>()
}

/// The schema of a file that is read as `T`, in the draft that editors know best.
pub fn of<T: JsonSchema>() -> Value {
    SchemaSettings::draft07().into_generator().into_root_schema_for::<T>().to_value()
}

macro_rules! named {
    ($($(#[$doc:meta])* $name:ident = $schema:expr;)*) => {$(
        $(#[$doc])*
        #[derive(Debug)]
        pub struct $name;

        impl JsonSchema for $name {
            fn schema_name() -> Cow<'static, str> {
                stringify!($name).into()
            }

            fn json_schema(generator: &mut SchemaGenerator) -> Schema {
                let make: fn(&mut SchemaGenerator) -> Schema = $schema;
                make(generator)
            }
        }
    )*};
}

named! {
    /// The name of a quantity.
    QuantityName = |_| {
        let names: Vec<_> = Registry::get().quantities().map(|id| id.get().id).collect();
        json_schema!({ "type": "string", "enum": names })
    };
    /// The name of a relation: a method.
    RelationName = |_| {
        let names: Vec<_> = Registry::get().relations().iter().map(|linked| linked.relation.id).collect();
        json_schema!({ "type": "string", "enum": names })
    };
    /// The name of a topic.
    TopicName = |_| {
        let names: Vec<_> = topics::ALL.iter().map(|topic| topic.id).collect();
        json_schema!({ "type": "string", "enum": names })
    };
    /// A value with its unit, or a plain number.
    PlainValue = |_| json_schema!({ "type": ["string", "number"] });
    /// How a value is drawn.
    DrawnValue = |generator| {
        let value = generator.subschema_for::<PlainValue>();
        let pair = json!({ "type": "array", "items": value, "minItems": 2, "maxItems": 2 });
        let list = json!({ "type": "array", "items": value, "minItems": 1 });
        json_schema!({ "anyOf": [
            value,
            one("Evenly between two values", &[("between", pair.clone())]),
            one("Evenly among these", &[("choose", list.clone())]),
            one("About a value, normally distributed, cut off at three spreads",
                &[("about", json!(value)), ("spread", json!(value))]),
            one("A share of another quantity of the same machine",
                &[("of", json!(generator.subschema_for::<QuantityName>())), ("between", pair)]),
            one("One of these shares of another quantity of the same machine",
                &[("of", json!(generator.subschema_for::<QuantityName>())), ("choose", list)]),
        ] })
    };
    /// Quantities with their values.
    Values = |_| values(value);
    /// Quantities with their values, each with the source it may have.
    FixedValues = |_| values(|quantity| {
        let text = json!({ "type": "string", "minLength": 1 });
        let stated = json!({
            "description": "A value of the plant's own, with where it stands",
            "type": "object",
            "properties": { "value": value(quantity), "source": text, "because": text },
            "required": ["value", "source"],
            "additionalProperties": false,
        });
        json!({ "anyOf": [value(quantity), stated] })
    });
    /// Quantities with how they are drawn.
    DrawnValues = |generator| {
        let drawn = generator.subschema_for::<DrawnValue>();
        values(|quantity| match quantity.kind {
            Kind::Choice => json!({ "anyOf": [
                value(quantity),
                one("Evenly among these", &[("choose", json!({ "type": "array", "items": value(quantity), "minItems": 1 }))]),
            ] }),
            _ => json!({ "allOf": [drawn] }),
        })
    };
}

/// An object with exactly these properties.
fn one(description: &str, properties: &[(&str, Value)]) -> Value {
    let names: Vec<_> = properties.iter().map(|(name, _)| *name).collect();
    let properties: Map<_, _> = properties.iter().map(|(name, schema)| ((*name).to_owned(), schema.clone())).collect();
    json!({
        "description": description,
        "type": "object",
        "properties": properties,
        "required": names,
        "additionalProperties": false,
    })
}

/// A table in which each quantity may stand, with `schema` for what it is given.
fn values(schema: impl Fn(&Quantity) -> Value) -> Schema {
    let properties: Map<_, _> = (Registry::get().quantities())
        .map(|id| {
            let quantity = id.get();
            let mut schema = schema(quantity);
            if let Value::Object(schema) = &mut schema {
                let text = format!("{}: {}", quantity.name, quantity.kind.name());
                schema.insert("description".into(), Value::String(text));
            }
            (quantity.id.to_owned(), schema)
        })
        .collect();
    json_schema!({ "type": "object", "properties": properties, "additionalProperties": false })
}

/// What a quantity's value looks like: one of its choices, text with a unit, or a number where it has none.
fn value(quantity: &Quantity) -> Value {
    match quantity.kind {
        Kind::Choice => json!({ "enum": quantity.choices }),
        Kind::Ratio if quantity.is_percent() => json!({ "type": "string" }),
        Kind::Count | Kind::Ratio | Kind::Turns => json!({ "type": ["string", "number"] }),
        _ => json!({ "type": "string" }),
    }
}
