//! What people write, and what is made of it.

mod oracle;
mod table;

use super::*;
use crate::amount::{with_unit, write};
use crate::instrument::{Display, Instrument};
use crate::quantity::Quantity;
use crate::unit::{System, UNITS};
use table::READ;

#[test]
fn amounts_are_read_as_people_write_them() {
    assert!(READ.len() >= 120);
    for &(text, kind, symbol, number, figures) in READ {
        let amount = read(text, &Wanted::new(kind)).unwrap_or_else(|error| panic!("{text:?}: {error}"));
        assert_eq!((amount.unit.symbol, amount.written, amount.figures), (symbol, number, figures), "{text:?}");
        let base = Unit::find(kind, symbol).unwrap().to_base(number);
        approx::assert_relative_eq!(amount.base, base, max_relative = 1e-15);
    }
}

#[test]
fn the_table_of_decimal_marks_holds() {
    for (text, point, comma) in [
        ("11.5", Some(11.5), Some(11.5)),
        ("11,5", Some(11.5), Some(11.5)),
        ("0.125", Some(0.125), Some(0.125)),
        ("0,125", Some(0.125), Some(0.125)),
        ("1250.125", Some(1250.125), Some(1250.125)),
        ("1250,125", Some(1250.125), Some(1250.125)),
        ("1,250.5", Some(1250.5), Some(1250.5)),
        ("1.250,5", Some(1250.5), Some(1250.5)),
        ("1 250,125", Some(1250.125), Some(1250.125)),
        ("1'250.125", Some(1250.125), Some(1250.125)),
        ("1,250,000", Some(1.25e6), Some(1.25e6)),
        ("1.250.000", Some(1.25e6), Some(1.25e6)),
        ("1,250", Some(1250.0), Some(1.25)),
        ("1.250", Some(1.25), Some(1250.0)),
        ("1,25.5", None, None),
        ("1.2.3", None, None),
        ("0,125,000", None, None),
        ("1,250.5.5", None, None),
        ("1,,250", None, None),
        ("1 250.500,5", None, None),
        ("1 250,500.5", None, None),
    ] {
        let read = |mark| read(text, &Wanted::new(Kind::Ratio).with_mark(mark)).ok().map(|amount| amount.written);
        assert_eq!((read(DecimalMark::Point), read(DecimalMark::Comma)), (point, comma), "{text:?}");
    }
}

/// Text, kind, and what is said of it.
const REFUSED: &[(&str, Kind, &str)] = &[
    ("", Kind::Length, "Nothing is written here: write a number and its unit, such as 11 mm or 7/16 in."),
    (" \u{a0}\n", Kind::Count, "Nothing is written here: write a whole number, such as 19."),
    (
        "11 N",
        Kind::Length,
        "N is the unit of a force, but a length is wanted: write a number and its unit, such as 11 mm or 7/16 in.",
    ),
    (
        "12 ft 3 in",
        Kind::Force,
        "ft is the unit of a length, but a force is wanted: write a number and its unit, such as 5500 N or 1250 lbf.",
    ),
    (
        "19 teeth",
        Kind::Power,
        "This is a count, but a power is wanted: write a number and its unit, such as 7.5 kW or 10 hp.",
    ),
    (
        "50 kg",
        Kind::Force,
        "kg is the unit of a mass, but a force is wanted: write a number and its unit, such as 5500 N or 1250 lbf.",
    ),
    ("11", Kind::Length, "The unit is missing: write a number and its unit, such as 11 mm or 7/16 in."),
    (
        "75°",
        Kind::Temperature,
        "It is left open which degrees are meant: write a number and its unit, such as 75 °C or 167 °F.",
    ),
    (
        "37 degrees",
        Kind::TemperatureRise,
        "It is left open which degrees are meant: write a number and its unit, such as 35 °C or 63 °F.",
    ),
    (
        "mm 11",
        Kind::Length,
        "The unit mm stands before the number: write a number and its unit, such as 11 mm or 7/16 in.",
    ),
    (
        "lbs: 250",
        Kind::Force,
        "The unit lbf stands before the number: write a number and its unit, such as 5500 N or 1250 lbf.",
    ),
    (
        "10-12 mm",
        Kind::Length,
        "Give one value, not a range or a limit: write a number and its unit, such as 11 mm or 7/16 in.",
    ),
    (
        "eleven mm",
        Kind::Length,
        "“eleven mm” cannot be read as one number: write a number and its unit, such as 11 mm or 7/16 in.",
    ),
    (
        "nan",
        Kind::Ratio,
        "This number is too large or too small, or is no number at all: write a number or a percentage, such as 1.5 or 4 %.",
    ),
    (
        "1/0 in",
        Kind::Length,
        "A fraction cannot be over nought: write a number and its unit, such as 11 mm or 7/16 in.",
    ),
    (
        "3 4 mm",
        Kind::Length,
        "There is more than one number here: write only a number and its unit, such as 11 mm or 7/16 in.",
    ),
    (
        "11 m\u{200b}m",
        Kind::Length,
        "This holds a character that cannot be seen: type it again as a number and its unit, such as 11 mm or 7/16 in.",
    ),
    (
        "11 inhces",
        Kind::Length,
        "“inhces” is not a unit known here; if you mean in, write that: a number and its unit, such as 11 mm or 7/16 in.",
    ),
    (
        "11 furlongs",
        Kind::Length,
        "“furlongs” is not a unit known here: write a number and its unit, such as 11 mm or 7/16 in.",
    ),
    (
        "11 mm of sag",
        Kind::Length,
        "“mm of sag” is not a unit known here; if you mean mm, write that: a number and its unit, such as 11 mm or 7/16 in.",
    ),
];

#[test]
fn refusals_say_what_to_write_instead() {
    for &(text, kind, said) in REFUSED {
        assert_eq!(read(text, &Wanted::new(kind)).unwrap_err().to_string(), said, "{text:?}");
    }
}

#[test]
fn refusals_are_told_apart() {
    let wanted = Kind::Length;
    let not_a_number = |what: &str| ReadError::NotANumber { what: what.into(), wanted };
    let cases = [
        (
            ReadError::Range { wanted },
            [
                "10 - 12 mm",
                "10–12 mm",
                "10 to 12 mm",
                "10 mm to 12 mm",
                "10..12 mm",
                "10 … 12 mm",
                "10mm-12mm",
                "11 ± 1 mm",
                "11 mm +/- 1",
                "between 10 and 12 mm",
                "from 10 to 12 mm",
                "< 11 mm",
                "≤11 mm",
                "at least 11 mm",
                "max 11 mm",
                "11 mm max",
                "11 mm min",
                "11 mm or less",
                "1/4-3/8 in",
                "10 ft - 12 ft",
                "1 - 3/16 in",
            ]
            .as_slice(),
        ),
        (
            ReadError::SeveralNumbers { wanted },
            &[
                "11 mm 12 mm",
                "11 and 12 mm",
                "11; 12",
                "11 mm (0.43 in)",
                "12 34 mm",
                "1.5 3/16 in",
                "12 ft 15 in",
                "1.5 ft 3 in",
                "3 × 4 mm",
                "11 mm 3 in",
                "3 in 2 ft",
                "1, 250 mm",
                "7/16 / 2 in",
            ],
        ),
        (
            ReadError::NotFinite { wanted },
            &[
                "inf",
                "-inf mm",
                "NaN mm",
                "Infinity",
                "∞",
                "1e999 mm",
                "1e-999 mm",
                "1e99999999999 mm",
                "1/99999999999999999999 in",
                "1.7e308 × 10^5 mm",
            ],
        ),
        (ReadError::DivisionByZero { wanted }, &["0/0 in", "1 3/0 in", "7/0\"", "1-1/00 in"]),
        (
            ReadError::ControlCharacters { wanted },
            &["11\u{0}mm", "11\nmm", "\u{202e}11 mm", "11\u{7f}mm", "\u{1b}[31m11 mm"],
        ),
        (
            ReadError::TooLong { wanted },
            &[&"1".repeat(201), &"⅜".repeat(201), &" ".repeat(10_000), &"9".repeat(10_000)],
        ),
        (ReadError::UnitMissing { wanted }, &["11", "7/16", "11.5.", "1,250", "~3"]),
    ];
    for (error, texts) in cases {
        for text in texts {
            assert_eq!(read(text, &Wanted::new(wanted)).unwrap_err(), error, "{text:?}");
        }
    }
    for text in ["mm", "...", "-", "+-5 mm", "abc", "1.5/2 in", "3-19/16 in", "11 $", "1.2.3 mm", "٣ mm", "$5", "5²"]
    {
        let error = read(text, &Wanted::new(wanted)).unwrap_err();
        let plain = matches!(error, ReadError::NotANumber { .. } | ReadError::Range { .. });
        assert!(plain, "{text:?}: {error:?}");
    }
    assert_eq!(
        read("x".repeat(50).as_str(), &Wanted::new(wanted)).unwrap_err(),
        not_a_number(&format!("{} …", "x".repeat(40)))
    );
    assert_eq!(
        read("foot 2", &Wanted::new(Kind::Choice)).unwrap_err().to_string(),
        "“foot 2” is not one of the choices: write the letter of one of them."
    );
}

#[test]
fn a_fixed_unit_lets_the_number_stand_alone() {
    let mm = Wanted::in_unit(Unit::find(Kind::Length, "mm").unwrap());
    let bare = read("11.1", &mm).unwrap();
    assert_eq!((bare.unit.symbol, bare.unit_given, bare.understood()), ("mm", false, "read as 11.1\u{a0}mm".into()));
    let given = read("7/16 in", &mm).unwrap();
    assert_eq!((given.unit.symbol, given.unit_given, given.understood()), ("in", true, "read as 7/16\u{a0}in".into()));
    let degrees = Wanted::in_unit(Unit::find(Kind::Temperature, "°F").unwrap());
    assert_eq!(read("75°", &degrees).unwrap().unit.symbol, "°F");
    let percent = Wanted::in_unit(Unit::find(Kind::Ratio, "%").unwrap());
    approx::assert_relative_eq!(read("4", &percent).unwrap().base, 0.04, max_relative = 1e-15);
    let astray = Wanted { kind: Kind::Force, ..mm };
    assert_eq!(read("11", &astray), Err(ReadError::UnitMissing { wanted: Kind::Force }));
}

#[test]
fn degrees_are_on_the_scale_of_the_question() {
    for kind in [Kind::Temperature, Kind::TemperatureRise] {
        for symbol in ["°C", "°F"] {
            let wanted = Wanted::new(kind).on_scale_of(Unit::find(kind, symbol).unwrap());
            for text in ["37 degrees", "37°", "37 deg", "37 degree."] {
                let amount = read(text, &wanted).unwrap();
                let read_as = format!("read as 37\u{a0}{symbol}");
                assert_eq!((amount.unit_given, amount.understood()), (true, read_as), "{text}");
            }
            for text in ["37 degrees C", "37 degree Celsius", "37 deg. C", "37 °C", "37C"] {
                assert_eq!(read(text, &wanted).unwrap().unit.symbol, "°C", "{text}");
            }
            assert_eq!(read("37", &wanted), Err(ReadError::UnitMissing { wanted: kind }), "no degrees were written");
        }
        let kelvin = Wanted::new(kind).on_scale_of(Unit::find(kind, "K").unwrap());
        assert_eq!(
            read("37 degrees", &kelvin),
            Err(ReadError::WhichDegrees { wanted: kind }),
            "kelvins are no degrees"
        );
    }
    let angle = Wanted::new(Kind::Angle).on_scale_of(Unit::find(Kind::Angle, "°").unwrap());
    assert_eq!(read("37 degrees", &angle).unwrap().unit.symbol, "°");
    // The scale of another kind says nothing.
    let celsius = Unit::find(Kind::Temperature, "°C").unwrap();
    let rise = Wanted::new(Kind::TemperatureRise).on_scale_of(celsius);
    assert_eq!(read("37 degrees", &rise), Err(ReadError::WhichDegrees { wanted: Kind::TemperatureRise }));
}

#[test]
fn units_may_be_written_out() {
    for (text, kind, symbol) in [
        ("83 minutes", Kind::Time, "min"),
        ("1 minute", Kind::Time, "min"),
        ("5 millimetres", Kind::Length, "mm"),
        ("5 millimeters per second", Kind::Velocity, "mm/s"),
        ("0.4 millimetres per metre", Kind::Slope, "mm/m"),
        ("12 square millimetres per second", Kind::Viscosity, "mm²/s"),
        ("40 newtons per square millimetre", Kind::Stress, "MPa"),
        ("81 degree F", Kind::Temperature, "°F"),
    ] {
        assert_eq!(read(text, &Wanted::new(kind)).unwrap().unit.symbol, symbol, "{text}");
    }
}

#[test]
fn a_count_may_be_in_words_and_other_numbers_may_not() {
    let count = Wanted::new(Kind::Count).as_spoken();
    for (text, value) in [("twelve", 12.0), ("Nineteen teeth", 19.0), ("zero", 0.0), ("about seven", 7.0), ("12", 12.0)]
    {
        assert_eq!(read(text, &count).unwrap().base, value, "{text}");
    }
    for text in ["twelve mm", "minus one"] {
        assert!(read(text, &count).is_err(), "{text}");
    }
    let said = read("twelve mm", &Wanted::new(Kind::Length).as_spoken()).unwrap_err().to_string();
    let wanted =
        "“twelve mm” has its number in words: write it in figures, as a number and its unit, such as 11 mm or 7/16 in.";
    assert_eq!(said, wanted);
    assert_eq!(read("1 hour and 30 minutes", &Wanted::new(Kind::Time).as_spoken()).unwrap().base, 5400.0);
    // Files say the same in every language: nothing in words.
    assert!(read("twelve", &Wanted::new(Kind::Count)).is_err());
}

#[test]
fn what_was_understood_keeps_the_form_written() {
    for (text, kind, said) in [
        ("11,10 millimetres", Kind::Length, "read as 11.10\u{a0}mm"),
        ("1-3/16 inch", Kind::Length, "read as 1 3/16\u{a0}in"),
        ("12' 3-1/2\"", Kind::Length, "read as 147 1/2\u{a0}in"),
        ("1.2e3 newtons", Kind::Force, "read as 1200\u{a0}N"),
        ("12,345 N", Kind::Force, "read as 12\u{202f}345\u{a0}N"),
        ("-5 C", Kind::Temperature, "read as −5\u{a0}°C"),
        ("15:1", Kind::Ratio, "read as 15"),
        ("30 deg", Kind::Angle, "read as 30°"),
    ] {
        assert_eq!(read(text, &Wanted::new(kind)).unwrap().understood(), said);
    }
}

#[test]
fn steps_are_those_written() {
    for (text, kind, step) in [
        ("11.10 mm", Kind::Length, 1e-5),
        ("1-3/16 in", Kind::Length, 0.0254 / 16.0),
        ("1.2e3 N", Kind::Force, 100.0),
        ("75 °F", Kind::Temperature, 5.0 / 9.0),
        ("1 h 30 min", Kind::Time, 60.0),
    ] {
        approx::assert_relative_eq!(read(text, &Wanted::new(kind)).unwrap().step(), step, max_relative = 1e-9);
    }
}

/// Numerical Recipes' quick generator (Press et al., section 7.1): the same on every machine.
struct Lcg(u64);

impl Lcg {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        self.0 >> 33
    }

    fn unit(&mut self) -> f64 {
        self.next() as f64 / (1_u64 << 31) as f64
    }
}

#[test]
fn what_is_written_is_read_back_within_half_a_step() {
    use Instrument::*;
    let mut random = Lcg(1);
    let forms = [
        Figures::Places(0),
        Figures::Places(3),
        Figures::Significant(3),
        Figures::Significant(6),
        Figures::Fraction(64),
    ];
    let mut quantities: Vec<Quantity> = Vec::new();
    for unit in UNITS.iter().filter(|unit| unit.kind != Kind::Choice) {
        let usual = Quantity::new("test.value", "x", unit.kind, "value");
        quantities.push(usual);
        quantities.extend(forms.map(|form| usual.shown(unit.symbol, form, unit.symbol, form)));
    }
    for (kind, instruments) in [
        (Kind::Length, [Scale, Tape, Caliper, Feeler, Dial].as_slice()),
        (Kind::Slope, &[Level]),
        (Kind::Temperature, &[Thermometer, FineThermometer]),
        (Kind::Time, &[Watch]),
        (Kind::Speed, &[Tachometer]),
        (Kind::Angle, &[Protractor]),
    ] {
        quantities.extend(instruments.iter().map(|i| Quantity::new("test.value", "x", kind, "value").read(*i)));
    }
    for quantity in &quantities {
        for system in System::ALL {
            let unit = quantity.unit(system);
            let Display { figures, .. } = quantity.display(system);
            for _ in 0..40 {
                let sign = if random.next().is_multiple_of(4) { -1.0 } else { 1.0 };
                let value =
                    sign * crate::quantity::ten_to((random.next() % 10) as i32 - 3) * (1.0 + 9.0 * random.unit());
                let base = unit.to_base(value);
                let text = write(quantity, base, system);
                let amount = read(&text, &Wanted::new(unit.kind)).unwrap_or_else(|error| panic!("{text:?}: {error}"));
                assert_eq!(amount.unit.symbol, unit.symbol, "{text:?}");
                let half = 0.5 * figures.step(value) * (1.0 + 1e-6) + 1e-12 * value.abs();
                let off = (amount.written - value).abs();
                assert!(off <= half, "{text:?} is {} for {value}", amount.written);
                // Groups are set in decimals only, and a whole number of inches is written without them.
                let plain = |text: &str| text.replace('\u{202f}', "");
                assert_eq!(plain(&amount.understood()), plain(&format!("read as {text}")));
            }
        }
    }
    for unit in UNITS.iter().filter(|unit| !matches!(unit.kind, Kind::Choice)) {
        let amount = read(&with_unit("12.5", unit), &Wanted::new(unit.kind)).unwrap();
        assert_eq!((amount.unit, amount.written), (unit, 12.5));
    }
}

#[test]
fn nothing_that_is_typed_causes_a_panic() {
    const PIECES: [&str; 44] = [
        "1", "0", "9", "12", "250", ",", ".", " ", "'", "\"", "-", "/", "e", "E", "×", "x", "10", "^", "³", "⁻", "⅜",
        "½", "in", "ft", "mm", "lbf", "°", "C", "%", ":", "to", "approx", "~", "+", "−", "⁄", "₆", "１", "\u{a0}",
        "\u{301}", "字", "🙂", "\0", "nan",
    ];
    let kinds: Vec<Kind> = UNITS.iter().map(|unit| unit.kind).collect();
    let mut random = Lcg(7);
    let mut good = 0;
    for round in 0..40_000 {
        let mut text = String::new();
        for _ in 0..random.next() % 12 {
            match round % 3 {
                0 => text.push_str(PIECES[random.next() as usize % PIECES.len()]),
                1 => text.extend(char::from_u32(random.next() as u32 % 0x11_0000)),
                _ => text.push_str(&String::from_utf8_lossy(&[random.next() as u8, random.next() as u8])),
            }
        }
        let kind = kinds[random.next() as usize % kinds.len()];
        for mark in [DecimalMark::Point, DecimalMark::Comma] {
            match read(&text, &Wanted::new(kind).with_mark(mark)) {
                Ok(amount) => {
                    good += 1;
                    assert!(
                        amount.base.is_finite() && amount.figures > 0 && !amount.understood().is_empty(),
                        "{text:?}"
                    );
                }
                Err(error) => {
                    let said = error.to_string();
                    assert!(said.ends_with('.') && said.chars().count() < 300, "{said}");
                }
            }
        }
        let _ = (read_choice(&text, &["foot 1", "foot 2", "left"]), read_order(&text, 4));
    }
    assert!(good > 50, "{good}");
}

#[test]
fn an_answer_may_begin_with_its_name() {
    for (text, kind, base) in [
        ("F₀ = 1.25 kN", Kind::Force, 1250.0),
        ("F=1.25kN", Kind::Force, 1250.0),
        ("H = 633 N", Kind::Force, 633.0),
        ("sag: 11 mm", Kind::Length, 0.011),
        ("D1 ≈ 152 mm", Kind::Length, 0.152),
        ("ratio = 15:1", Kind::Ratio, 15.0),
        ("Δt = 35 °C", Kind::TemperatureRise, 35.0),
        ("v = -0.5 mm", Kind::Length, -0.0005),
    ] {
        let wanted = Wanted::new(kind);
        approx::assert_relative_eq!(read(text, &wanted.as_spoken()).unwrap().base, base, max_relative = 1e-12);
        assert!(read(text, &wanted).is_err(), "{text}: a file names a quantity once");
    }
    let refused = |text: &str, kind| read(text, &Wanted::new(kind).as_spoken()).unwrap_err();
    assert!(matches!(refused("max = 5 mm", Kind::Length), ReadError::Range { .. }));
    assert!(matches!(refused("lbs: 250", Kind::Force), ReadError::UnitFirst { .. }));
    for text in ["F = 2 × 4500 N = 9000 N", "F 2 = 4500 N = 9 kN", "F ="] {
        refused(text, Kind::Force);
    }
}
