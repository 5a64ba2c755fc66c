//! The value of a formula.

use super::Node;

impl Node {
    /// The value, with `lookup` giving each input's number in the unit asked for.
    ///
    /// Not a number where an input is unknown or a function has no value.
    pub fn value(&self, lookup: &dyn Fn(&str, Option<&str>) -> f64) -> f64 {
        match self {
            Self::Number(value, _) => *value,
            Self::Name(name, unit) => lookup(name, unit.as_deref()),
            Self::Minus(inner) => -inner.value(lookup),
            Self::Join(op, a, b) => {
                let (a, b) = (a.value(lookup), b.value(lookup));
                match op {
                    '+' => a + b,
                    '-' => a - b,
                    '*' => a * b,
                    '/' => a / b,
                    _ => libm::pow(a, b),
                }
            }
            Self::Call(function, args) => call(function, &args.iter().map(|a| a.value(lookup)).collect::<Vec<_>>()),
        }
    }
}

fn call(function: &str, args: &[f64]) -> f64 {
    const DEGREE: f64 = core::f64::consts::PI / 180.0;
    let x = args[0];
    match function {
        "sqrt" => x.sqrt(),
        "abs" => x.abs(),
        "exp" => libm::exp(x),
        "ln" => libm::log(x),
        "log10" => libm::log10(x),
        "ceil" => x.ceil(),
        "min" => args.iter().copied().fold(f64::INFINITY, f64::min),
        "max" => args.iter().copied().fold(f64::NEG_INFINITY, f64::max),
        "sin" => libm::sin(x * DEGREE),
        "cos" => libm::cos(x * DEGREE),
        "tan" => libm::tan(x * DEGREE),
        "cot" => 1.0 / libm::tan(x * DEGREE),
        "asin" => libm::asin(x) / DEGREE,
        "acos" => libm::acos(x) / DEGREE,
        _ => libm::atan(x) / DEGREE,
    }
}
