//! stub
use crate::unit::{Kind, Unit};
pub struct Wanted {
    kind: Kind,
}
impl Wanted {
    pub fn of(kind: Kind) -> Self {
        Self { kind }
    }
}
pub struct Amount {
    pub base: f64,
}
pub fn read(text: &str, wanted: &Wanted) -> Result<Amount, String> {
    let text = text.replace('°', " °");
    let text = text.trim();
    let (number, unit) = text.split_once(' ').unwrap_or((text, ""));
    let number: f64 = number.parse().map_err(|_| format!("{text} no"))?;
    let unit = if unit.is_empty() {
        Unit::find(wanted.kind, "")
    } else {
        Unit::named(unit).find(|unit| unit.kind == wanted.kind)
    };
    Ok(Amount { base: unit.ok_or("no unit")?.to_base(number) })
}
