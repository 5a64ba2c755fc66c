//! Nut factors K of `T = K D F`: published lists disagree, so each is kept under its own name.
//!
//! A plant may set its own; say which was used. K lumps all friction together and scatters by a quarter either way.

/// One entry of a list.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct NutFactor {
    /// State of thread and bearing face, plain words.
    pub condition: &'static str,
    /// K.
    pub k: f64,
}

/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, Table 8-15.
pub static SHIGLEY: [NutFactor; 4] = [
    entry("not plated, black finish", 0.30),
    entry("zinc plated", 0.20),
    entry("lubricated", 0.18),
    entry("cadmium plated", 0.16),
];

/// Two values for quick sums: common practice, no source (also R. L. Mott, *Machine Elements in Mechanical Design*).
pub static QUICK: [NutFactor; 2] = [entry("dry", DRY), entry("lubricated", LUBRICATED)];

/// More finishes. Common practice, no source.
pub static FINISHES: [NutFactor; 3] = [entry("plain", 0.20), entry("hot-dip galvanised", 0.25), entry("waxed", 0.10)];

/// K of a dry bolt for quick sums. Common practice, no source.
pub const DRY: f64 = 0.20;

/// K of a lubricated bolt for quick sums. Common practice, no source.
pub const LUBRICATED: f64 = 0.15;

const fn entry(condition: &'static str, k: f64) -> NutFactor {
    NutFactor { condition, k }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn factors_are_plausible_and_oil_lowers_them() {
        for entry in SHIGLEY.iter().chain(&QUICK).chain(&FINISHES) {
            assert!((0.08..=0.35).contains(&entry.k), "{}", entry.condition);
        }
        assert!(SHIGLEY[2].k < SHIGLEY[0].k && QUICK[1].k < QUICK[0].k);
    }
}
