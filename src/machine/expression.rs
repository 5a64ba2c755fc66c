//! Expressions in quantities, as an author writes a wrong turn: `chain.sag * 2`.
//!
//! They are written in the language of [`formula`](crate::formula), with quantities under their full names:
//!
//! * a quantity without a unit is the quantity itself, so `load.overhung / 2` is a force. What is added must be of one
//!   kind, and the whole must be of the kind of what is asked;
//! * a quantity with a unit in square brackets is its bare number in that unit. Where bare numbers give the answer,
//!   its unit stands on the left: `[N] = 9.80665 * chain.mass[kg/m] * chain.span[m]`;
//! * of temperatures, differences can be reckoned with, and means: `(heat.housing + heat.ambient) / 2` is a temperature
//!   on every scale, because its parts add up to one. Where the answer is a temperature or a rise, any other sum or multiple
//!   is what a person comes to with the numbers on the scale before them: `heat.housing` given for a rise is 62 °C on a
//!   paper in °C and 144 °F on one in °F. In square brackets it would be right on one of the two papers only, and is refused;
//! * an angle counts as a kind of its own, and so a speed of rotation is no frequency: write its unit;
//! * for a choice, the expression is the wrong choice itself.

use core::ops::Range;

use crate::amount;
use crate::formula::{Formula, Node};
use crate::language::Message;
use crate::messages;
use crate::packed;
use crate::packed::{Packed, Reader as Unpacker};
use crate::problem::{NO_POSSIBILITY, NO_QUANTITY, Problem, other_quantity, quoted};
use crate::registry::{QuantityId, Registry};
use crate::unit::{Kind, System, Unit};

messages! { pub(crate) SAYS {
    UNREADABLE = "problem-expression-unreadable", "This expression cannot be read: {why}.";
    LEFT = "problem-expression-left", "Left of the sign of equality stands only the unit of the answer.";
    LEFT_MEND = "problem-expression-left-mend", "Write [mm] = ..., say, or no sign of equality at all.";
    NO_KIND = "problem-expression-no-kind", "of no known kind";
    NOT_BARE = "problem-expression-not-bare", "With a unit on the left, the right must be a bare number; it is {is}.";
    OTHER_KIND = "problem-expression-other-kind", "This must be {wanted}, as {name} is; it is {is}.";
    BRACKETS = "problem-expression-brackets", "Write the units of the quantities in square brackets, as in chain.sag[mm].";
    MEND_ALONE = "problem-expression-mend-alone", "Mend the expression, or write all units in square brackets and that of the answer on the left: [{unit}] = ...";
    MEND = "problem-expression-mend", "Mend the expression, or write all units in square brackets and that of the answer on the left: [{si}] = ... or [{us}] = ...";
    IS_CHOICE = "problem-expression-is-choice", "{name} is a choice; nothing can be worked out from it.";
    TAKE_OUT = "problem-expression-take-out", "Take it out.";
    NO_UNIT = "problem-expression-no-unit", "{unit} is no unit of {kind}.";
    OTHER_UNIT = "problem-expression-other-unit", "Write one that the quantity is measured in.";
    WRITE_UNITS = "problem-expression-write-units", "Write units in square brackets, as in chain.sag[mm], to reckon with bare numbers.";
    MULTIPLIED = "problem-expression-multiplied", "A temperature is multiplied; only a difference of temperatures can be, or temperatures of which a mean is taken.";
    ONE_SCALE = "problem-expression-one-scale", "A temperature is taken here as a bare number, which is another one on the other scale: the answer would be wrong on papers in °F, or in °C.";
    ONE_SCALE_MEND = "problem-expression-one-scale-mend", "Write it without units, such as {example}: then it is the number on the scale that the person reads.";
    DIFFERENT_KINDS = "problem-expression-different-kinds", "Things of different kinds are added or subtracted.";
    EXPONENT = "problem-expression-exponent", "An exponent must be a plain number.";
    POWER = "problem-expression-power", "Only a plain number can be raised to this power.";
    FUNCTION = "problem-expression-function", "{name} cannot be taken of this kind of thing.";
} }

/// An expression in quantities, read and checked for its dimension.
#[derive(Debug, Clone, PartialEq)]
pub struct Expression {
    gives: Gives,
    inputs: Vec<QuantityId>,
}

#[derive(Debug, Clone, PartialEq)]
enum Gives {
    /// Always this choice.
    Choice(f64),
    /// A value of this kind; from a bare number, if a unit is named. It holds so many readings of a thermometer more than it
    /// should, each counted from the nought of the person's own scale.
    Value { body: Node, kind: Kind, unit: Option<String>, readings: f64 },
}

packed!(Expression { gives, inputs });

impl Packed for Gives {
    fn pack(&self, out: &mut String) {
        match self {
            Self::Choice(choice) => (0_u8, *choice).pack(out),
            Self::Value { body, kind, unit, readings } => {
                (1_u8, *kind).pack(out);
                unit.pack(out);
                readings.pack(out);
                body.pack(out);
            }
        }
    }

    fn unpack(from: &mut Unpacker<'_>) -> Self {
        if u8::unpack(from) == 0 {
            return Self::Choice(f64::unpack(from));
        }
        let (kind, unit) = (Packed::unpack(from), Packed::unpack(from));
        let readings = f64::unpack(from);
        Self::Value { kind, unit, readings, body: Packed::unpack(from) }
    }
}

/// Exponents of length, mass, time, temperature, angle, current, sound level.
type Powers = [i8; 7];

const PLAIN: Powers = [0; 7];
const ANGLE: Powers = [0, 0, 0, 0, 1, 0, 0];
const TURN: usize = 4;

/// The dimension of a part, and how many thermometer readings it adds up to: one of a mean, none of a difference.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Dimension {
    powers: Powers,
    readings: f64,
}

impl Dimension {
    /// With so many readings, rid of the dust of thirds and tenths.
    fn with_readings(self, readings: f64) -> Self {
        Self { readings: (readings * 1e9).round() / 1e9, ..self }
    }
}

fn powers(kind: Kind) -> Powers {
    match kind {
        Kind::Count | Kind::Choice | Kind::Ratio | Kind::Slope | Kind::Turns => PLAIN,
        Kind::Length => [1, 0, 0, 0, 0, 0, 0],
        Kind::Angle => ANGLE,
        Kind::Mass => [0, 1, 0, 0, 0, 0, 0],
        Kind::MassPerLength => [-1, 1, 0, 0, 0, 0, 0],
        Kind::Force => [1, 1, -2, 0, 0, 0, 0],
        Kind::Torque => [2, 1, -2, 0, 0, 0, 0],
        Kind::Power => [2, 1, -3, 0, 0, 0, 0],
        Kind::Speed => [0, 0, -1, 0, 1, 0, 0],
        Kind::Velocity => [1, 0, -1, 0, 0, 0, 0],
        Kind::Stress => [-1, 1, -2, 0, 0, 0, 0],
        Kind::Temperature | Kind::TemperatureRise => [0, 0, 0, 1, 0, 0, 0],
        Kind::Time => [0, 0, 1, 0, 0, 0, 0],
        Kind::Conductance => [2, 1, -3, -1, 0, 0, 0],
        Kind::Viscosity => [2, 0, -1, 0, 0, 0, 0],
        Kind::Area => [2, 0, 0, 0, 0, 0, 0],
        Kind::Volume => [3, 0, 0, 0, 0, 0, 0],
        Kind::Density => [-3, 1, 0, 0, 0, 0, 0],
        Kind::Expansion => [0, 0, 0, -1, 0, 0, 0],
        Kind::Frequency => [0, 0, -1, 0, 0, 0, 0],
        Kind::Current => [0, 0, 0, 0, 0, 1, 0],
        Kind::Voltage => [2, 1, -3, 0, 0, -1, 0],
        Kind::Acceleration => [1, 0, -2, 0, 0, 0, 0],
        Kind::Level => [0, 0, 0, 0, 0, 0, 1],
    }
}

impl Expression {
    /// Reads `text`, which stands for a wrong value of `asked`.
    ///
    /// # Errors
    /// A [`Problem`] with its place in `text`: what cannot be read, a name nobody knows, kinds that do not go together.
    pub fn read(text: &str, asked: QuantityId) -> Result<Self, Problem> {
        let quantity = asked.get();
        if quantity.kind == Kind::Choice {
            let found = amount::stated_choice(quantity, text.trim());
            return match found {
                Some(place) => Ok(Self { gives: Gives::Choice(place as f64), inputs: Vec::new() }),
                None => Err(Problem::at(
                    0..text.len(),
                    told!(NO_POSSIBILITY, "written" = quoted(text), "name" = quantity.id),
                    amount::choices_of(quantity, text),
                )),
            };
        }
        let formula = Formula::read(text).map_err(|error| {
            let at = text.char_indices().nth(error.at).map_or(text.len(), |(at, _)| at);
            Problem::at(at..at + 1, told!(UNREADABLE, "why" = error.what), "")
        })?;
        if let Some((left, _)) = text.split_once('=') {
            let name = left.split('[').next().unwrap_or_default();
            if !name.trim().chars().all(|c| c.is_alphanumeric() || matches!(c, '_' | '.')) {
                return Err(Problem::at(0..left.len(), told!(LEFT), told!(LEFT_MEND)));
            }
        }
        let mut inputs = Vec::new();
        for (name, unit) in formula.body.names() {
            let id = named(text, name)?;
            if let Some(unit) = unit {
                known_unit(text, unit, id.get().kind)?;
            }
            if !inputs.contains(&id) {
                inputs.push(id);
            }
        }
        let whole = dimension(&formula.body).map_err(|(what, mend)| Problem::at(0..text.len(), what, mend))?;
        let plain = Dimension { powers: PLAIN, readings: 0.0 };
        let mut wanted = Dimension { powers: powers(quantity.kind), readings: 0.0 };
        wanted.readings = f64::from(u8::from(quantity.kind == Kind::Temperature));
        let mut readings = 0.0;
        if let Some(unit) = &formula.unit {
            known_unit(text, unit, quantity.kind)?;
            if is_degrees(quantity.kind) && whole == plain && !on_every_scale(&formula.body, wanted.readings) {
                let example = inputs.first().map_or("", |id| id.get().id);
                return Err(Problem::at(0..text.len(), told!(ONE_SCALE), told!(ONE_SCALE_MEND, "example" = example)));
            }
            wanted = plain;
        } else if is_degrees(quantity.kind) && whole.powers == wanted.powers {
            readings = whole.readings - wanted.readings;
            wanted = whole;
        }
        if whole != wanted {
            let [si, us] = System::ALL.map(|system| quantity.unit(system).symbol);
            let is = match Kind::ALL.into_iter().find(|kind| powers(*kind) == whole.powers) {
                Some(kind) => kind.name().to_owned(),
                None => told!(NO_KIND),
            };
            let what = match formula.unit {
                Some(_) => told!(NOT_BARE, "is" = is),
                None => {
                    told!(OTHER_KIND, "wanted" = quantity.kind.name(), "name" = quantity.id, "is" = is)
                }
            };
            let mend = match si {
                "" => told!(BRACKETS),
                _ if si == us => told!(MEND_ALONE, "unit" = si),
                _ => told!(MEND, "si" = si, "us" = us),
            };
            return Err(Problem::at(0..text.len(), what, mend));
        }
        let gives = Gives::Value { body: formula.body, kind: quantity.kind, unit: formula.unit, readings };
        Ok(Self { gives, inputs })
    }

    /// The quantities it needs.
    pub fn inputs(&self) -> &[QuantityId] {
        &self.inputs
    }

    /// Its value (SI) from `values`, to a person who works in `system`; `None` where one that it needs is unknown, or where
    /// it has none.
    pub fn value(&self, values: &[f64], system: System) -> Option<f64> {
        let (body, kind, unit, readings) = match &self.gives {
            Gives::Choice(place) => return Some(*place),
            Gives::Value { body, kind, unit, readings } => (body, *kind, unit, *readings),
        };
        let number = body.value(&|name, unit| {
            let Some(id) = Registry::get().find(name) else { return f64::NAN };
            let (kind, base) = (id.get().kind, values[id.index()]);
            match unit.and_then(|unit| unit_of(unit, kind)) {
                Some(unit) => unit.from_base(base),
                None => base / radians(kind),
            }
        });
        let value = match unit.as_deref().and_then(|unit| unit_of(unit, kind)) {
            Some(unit) => unit.to_base(number),
            None => number * radians(kind) - readings * nought(system),
        };
        value.is_finite().then_some(value)
    }
}

/// Whether it is told in degrees of a thermometer.
fn is_degrees(kind: Kind) -> bool {
    matches!(kind, Kind::Temperature | Kind::TemperatureRise)
}

/// Nought of the thermometer scale of `system`, in kelvin.
fn nought(system: System) -> f64 {
    let symbol = match system {
        System::Si => "°C",
        System::Us => "°F",
    };
    unit_of(symbol, Kind::Temperature).map_or(f64::NAN, |unit| unit.to_base(0.0))
}

/// Whether `node`, a bare number, holds so many `readings` of a thermometer that it is one answer whatever the scale.
fn on_every_scale(node: &Node, readings: f64) -> bool {
    dimension_of(node, true).is_ok_and(|whole| whole.readings == readings)
}

/// Formulas reckon angles in degrees: what a value of `kind` in radians must be divided by.
fn radians(kind: Kind) -> f64 {
    if powers(kind)[TURN] == 1 { core::f64::consts::PI / 180.0 } else { 1.0 }
}

fn unit_of(name: &str, kind: Kind) -> Option<&'static Unit> {
    Unit::named(name).find(|unit| unit.kind == kind)
}

/// Where `part` stands in `text`.
fn place(text: &str, part: &str) -> Range<usize> {
    text.find(part).map_or(0..text.len(), |at| at..at + part.len())
}

fn named(text: &str, name: &str) -> Result<QuantityId, Problem> {
    let registry = Registry::get();
    let say = |what, mend| Problem::at(place(text, name), what, mend);
    let Some(id) = registry.find(name) else {
        let mend = other_quantity(registry.suggestion(name));
        return Err(say(told!(NO_QUANTITY, "name" = quoted(name)), mend));
    };
    if id.get().kind == Kind::Choice {
        return Err(say(told!(IS_CHOICE, "name" = name), told!(TAKE_OUT)));
    }
    Ok(id)
}

fn known_unit(text: &str, unit: &str, kind: Kind) -> Result<(), Problem> {
    if unit_of(unit, kind).is_some() {
        return Ok(());
    }
    let what = told!(NO_UNIT, "unit" = quoted(unit), "kind" = kind.name());
    Err(Problem::at(place(text, &format!("[{unit}]")), what, told!(OTHER_UNIT)))
}

/// What does not go together, and how to mend it.
type Clash = (String, String);

/// What `node`, of this dimension, comes to where it is a plain number that rests on no quantity, and not nought.
fn constant(node: &Node, part: Dimension) -> Option<f64> {
    let is_plain = part.powers == PLAIN && node.names().is_empty();
    is_plain.then(|| node.value(&|_, _| f64::NAN)).filter(|value| value.is_finite() && *value != 0.0)
}

fn dimension(node: &Node) -> Result<Dimension, Clash> {
    dimension_of(node, false)
}

/// The same; with `bare`, readings of a thermometer count as such where they stand as bare numbers too.
fn dimension_of(node: &Node, bare: bool) -> Result<Dimension, Clash> {
    let plain = Dimension { powers: PLAIN, readings: 0.0 };
    let clash = |what: Message| Err((told!(what), told!(WRITE_UNITS)));
    // A thermometer's nought is a matter of its scale: only differences can be multiplied.
    let scaled = |part: Dimension| if part.readings == 0.0 { Ok(part) } else { clash(MULTIPLIED) };
    Ok(match node {
        Node::Number(..) => plain,
        Node::Name(_, Some(_)) if !bare => plain,
        Node::Name(name, unit) => {
            let kind = Registry::get().find(name).map_or(Kind::Ratio, |id| id.get().kind);
            let powers = if unit.is_some() { PLAIN } else { powers(kind) };
            Dimension { powers, readings: f64::from(u8::from(kind == Kind::Temperature)) }
        }
        Node::Minus(inner) => {
            let inner = dimension_of(inner, bare)?;
            inner.with_readings(0.0 - inner.readings)
        }
        Node::Join(sign @ ('+' | '-'), a, b) => {
            let (a, b) = (dimension_of(a, bare)?, dimension_of(b, bare)?);
            if a.powers != b.powers {
                return clash(DIFFERENT_KINDS);
            }
            let readings = if *sign == '+' { a.readings + b.readings } else { a.readings - b.readings };
            a.with_readings(readings)
        }
        Node::Join('^', base, exponent) => {
            let base = scaled(dimension_of(base, bare)?)?;
            if dimension_of(exponent, bare)? != plain {
                return clash(EXPONENT);
            }
            let whole = exponent.value(&|_, _| f64::NAN);
            if base == plain {
                plain
            } else if whole.fract() == 0.0 && whole.abs() <= 6.0 {
                Dimension { powers: base.powers.map(|power| power.saturating_mul(whole as i8)), readings: 0.0 }
            } else {
                return clash(POWER);
            }
        }
        Node::Join(sign, a, b) => {
            let of = (dimension_of(a, bare)?, dimension_of(b, bare)?);
            // The readings of a mean: so much of each.
            let mean = match sign {
                _ if of.0.readings == 0.0 && of.1.readings == 0.0 => None,
                '/' => constant(b, of.1).map(|divisor| of.0.with_readings(of.0.readings / divisor)),
                _ if of.0.readings == 0.0 => constant(a, of.0).map(|factor| of.1.with_readings(of.1.readings * factor)),
                _ => constant(b, of.1).map(|factor| of.0.with_readings(of.0.readings * factor)),
            };
            if let Some(mean) = mean {
                return Ok(mean);
            }
            let (a, b) = (scaled(of.0)?, scaled(of.1)?);
            let sign = if *sign == '/' { -1 } else { 1 };
            let mut powers = a.powers;
            powers.iter_mut().zip(b.powers).for_each(|(power, other)| *power = power.saturating_add(sign * other));
            Dimension { powers, readings: 0.0 }
        }
        Node::Call(name, args) => {
            let args: Vec<_> = args.iter().map(|arg| dimension_of(arg, bare)).collect::<Result<_, _>>()?;
            let first = args.first().copied().unwrap_or(plain);
            let all_plain = args.iter().all(|arg| *arg == plain);
            match *name {
                "min" | "max" if args.iter().all(|arg| *arg == first) => first,
                "abs" => scaled(first)?,
                "sqrt" if first.powers.iter().all(|power| power % 2 == 0) => {
                    Dimension { powers: scaled(first)?.powers.map(|power| power / 2), readings: 0.0 }
                }
                "sin" | "cos" | "tan" | "cot" if first.powers == ANGLE || all_plain => plain,
                "asin" | "acos" | "atan" if all_plain => Dimension { powers: ANGLE, readings: 0.0 },
                "exp" | "ln" | "log10" | "ceil" if all_plain => plain,
                _ => return Err((told!(FUNCTION, "name" = name), told!(WRITE_UNITS))),
            }
        }
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn id(name: &str) -> QuantityId {
        Registry::get().find(name).unwrap()
    }

    fn value(text: &str, asked: &str, known: &[(&str, f64)]) -> Option<f64> {
        let mut values = vec![f64::NAN; Registry::get().len()];
        known.iter().for_each(|(name, value)| values[id(name).index()] = *value);
        Expression::read(text, id(asked)).unwrap().value(&values, System::Si)
    }

    #[test]
    fn quantities_are_reckoned_with() {
        let sag = [("chain.sag", 0.02), ("chain.span", 1.0), ("chain.mass", 2.0), ("chain.incline", 0.5)];
        assert_eq!(value("chain.sag * 2", "chain.sag", &sag), Some(0.04));
        assert_eq!(value("[mm] = chain.sag[mm] / 2", "chain.sag", &sag), Some(0.01));
        let pull = value("[N] = 9.80665 * chain.mass[kg/m] * chain.span[m]", "chain.slack_tension", &sag).unwrap();
        assert!((pull - 19.6133).abs() < 1e-9, "{pull}");
        let level = value("chain.sag * cos(chain.incline)", "chain.sag", &sag).unwrap();
        assert!((level - 0.02 * libm::cos(0.5)).abs() < 1e-12, "{level}");
        assert_eq!(value("chain.incline * 2", "chain.incline", &sag), Some(1.0));
        assert_eq!(value("chain.sag", "chain.span", &[]), None, "nothing is known");
        assert_eq!(value("too tight", "chain.sag_verdict", &[]), Some(0.0));
        let warm = [("heat.housing", 333.15), ("heat.ambient", 293.15)];
        assert_eq!(value("heat.housing - heat.ambient", "heat.rise", &warm), Some(40.0));
        // Means and other sums whose parts add up to one are the same temperature on every scale.
        for (text, kelvin) in [
            ("(heat.housing + heat.ambient) / 2", 313.15),
            ("0.5 * (heat.housing + heat.ambient)", 313.15),
            ("heat.housing / 2 + heat.ambient / 2", 313.15),
            ("heat.housing * 0.3 + 0.7 * heat.ambient", 305.15),
            ("(2 * heat.housing + heat.ambient) / 3", 319.816_666_666_666_7),
            ("2 * heat.housing - heat.ambient", 373.15),
            ("heat.ambient + (heat.housing - heat.ambient) / 2", 313.15),
            ("max((heat.housing + heat.ambient) / 2, heat.ambient)", 313.15),
            ("[°C] = (heat.housing[°C] + heat.ambient[°C]) / 2", 313.15),
            ("[°F] = (heat.housing[°F] + heat.ambient[°F]) / 2", 313.15),
        ] {
            let mean = value(text, "heat.housing", &warm).unwrap();
            assert!((mean - kelvin).abs() < 1e-9, "{text}: {mean}");
        }
    }

    /// A reading taken for a rise, or a multiple of one, is what the thermometer shows: another temperature on each scale.
    #[test]
    fn a_reading_taken_as_a_number_goes_by_the_persons_own_scale() {
        let mut values = vec![f64::NAN; Registry::get().len()];
        for (name, fahrenheit) in [("heat.housing", 144.0), ("heat.ambient", 68.0)] {
            values[id(name).index()] = (fahrenheit + 459.67) / 1.8;
        }
        values[id("heat.rise").index()] = 76.0 / 1.8;
        let cases = [
            ("heat.housing", "heat.rise", 62.222, 144.0),
            ("heat.housing + heat.ambient", "heat.rise", 82.222, 212.0),
            ("(heat.housing + heat.ambient) / 2", "heat.rise", 41.111, 106.0),
            ("heat.housing - heat.ambient", "heat.rise", 42.222, 76.0),
            ("heat.housing * 2", "heat.housing", 124.444, 288.0),
            ("heat.rise", "heat.housing", 42.222, 76.0),
            ("-heat.housing", "heat.housing", -62.222, -144.0),
            ("[°C] = heat.rise[°C] * 2", "heat.rise", 84.444, 152.0),
        ];
        for (text, asked, celsius, fahrenheit) in cases {
            let expression = Expression::read(text, id(asked)).unwrap();
            for (system, wanted) in [(System::Si, celsius), (System::Us, fahrenheit)] {
                let found = id(asked).get().unit(system).from_base(expression.value(&values, system).unwrap());
                assert!((found - wanted).abs() < 1e-3, "{text} for {asked}: {found}, not {wanted}");
            }
        }
    }

    #[test]
    fn what_does_not_go_together_is_refused_at_its_place() {
        for (text, asked, at, what) in [
            ("chain.sag + chain.mass", "chain.sag", 0, "different kinds"),
            ("chain.sag * chain.span", "chain.sag", 0, "it is an area"),
            ("chain.sagg * 2", "chain.sag", 0, "Did you mean \"chain.sag\"?"),
            ("2 * chain.sag[kg]", "chain.sag", 13, "no unit of a length"),
            ("chain.sag * (2", "chain.sag", 14, "not closed"),
            ("2 * chain.size", "chain.sag", 4, "is a choice"),
            ("middling", "chain.sag_verdict", 0, "none of the possibilities"),
            ("[mm] = chain.sag", "chain.sag", 0, "bare number"),
            ("2 + [mm] = chain.sag[mm]", "chain.sag", 0, "only the unit"),
            ("chain.sag[mm]", "chain.sag", 0, "must be a length"),
            ("heat.housing * chain.sag[mm]", "heat.housing", 0, "only a difference"),
            ("2 / heat.housing", "heat.housing", 0, "only a difference"),
            ("heat.housing / 0", "heat.housing", 0, "only a difference"),
            ("[°C] = heat.housing[°C]", "heat.rise", 0, "on the other scale"),
            ("[°F] = heat.housing[°F] - 32", "heat.rise", 0, "on the other scale"),
            ("[°C] = heat.housing[°C] * 2", "heat.housing", 0, "on the other scale"),
            ("[°C] = heat.rise[°C]", "heat.housing", 0, "on the other scale"),
            ("heat.conductance * heat.housing", "heat.loss", 0, "only a difference"),
            ("ln(chain.sag)", "chain.sag", 0, "cannot be taken"),
            ("", "chain.sag", 0, "stops too early"),
        ] {
            let problem = Expression::read(text, id(asked)).unwrap_err();
            assert_eq!(problem.span.as_ref().map(|span| span.start), Some(at), "{text}: {problem}");
            assert!(problem.to_string().contains(what), "{text}: {problem}");
        }
    }
}
