//! Nut factors K of `T = K D F`: published lists disagree, so each is kept under its own name.
//!
//! A plant may set its own; say which was used. K lumps all friction together and scatters by a quarter either way.

use super::ratio_of;
use crate::units::Ratio;

/// One entry of a list.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct NutFactor {
    /// State of thread and bearing face, plain words.
    pub condition: &'static str,
    /// K.
    pub k: Ratio,
}

/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, Table 8-15.
pub static SHIGLEY: [NutFactor; 4] = [
    entry("not plated, black finish", ratio_of(0.30)),
    entry("zinc plated", ratio_of(0.20)),
    entry("lubricated", ratio_of(0.18)),
    entry("cadmium plated", ratio_of(0.16)),
];

/// Two values for quick sums: common practice, no source (also R. L. Mott, *Machine Elements in Mechanical Design*).
pub static QUICK: [NutFactor; 2] = [entry("dry", DRY), entry("lubricated", LUBRICATED)];

/// More finishes. Common practice, no source.
pub static FINISHES: [NutFactor; 3] =
    [entry("plain", ratio_of(0.20)), entry("hot-dip galvanised", ratio_of(0.25)), entry("waxed", ratio_of(0.10))];

/// K of a dry bolt for quick sums. Common practice, no source.
pub const DRY: Ratio = ratio_of(0.20);

/// K of a lubricated bolt for quick sums. Common practice, no source.
pub const LUBRICATED: Ratio = ratio_of(0.15);

const fn entry(condition: &'static str, k: Ratio) -> NutFactor {
    NutFactor { condition, k }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn factors_are_plausible_and_oil_lowers_them() {
        for entry in SHIGLEY.iter().chain(&QUICK).chain(&FINISHES) {
            assert!((0.08..=0.35).contains(&entry.k.value), "{}", entry.condition);
        }
        assert!(SHIGLEY[2].k < SHIGLEY[0].k && QUICK[1].k < QUICK[0].k);
    }
}
