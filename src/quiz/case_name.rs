//! What a question's case is called, so that it can be found again.
//!
//! `412` is the case that an item draws for itself from this seed. `412:3:soft-foot,tight-chain` is about the machine of
//! seed 412 with these two faults, which several questions are about, and the fourth question about it; `412:3` leaves the
//! faults to the family, and `412:3:` is a healthy machine.

use core::fmt;

use drivecourse_machine::chance::derive;
use drivecourse_machine::told;

use crate::question::Question;
use crate::setting::{Setting, Unsettled};
use crate::twin::{about, twins};

/// The name of a question's case.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CaseName {
    /// The seed of its machine.
    pub seed: u64,
    /// How the machine was chosen, where it is not the item's own.
    pub chosen: Option<Chosen>,
}

/// A machine that is chosen for several questions, and which of them this is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Chosen {
    /// Which question about the machine, counted from 0.
    pub place: u64,
    /// The machine's faults; left out, its seed decides.
    pub faults: Option<Vec<String>>,
}

impl CaseName {
    /// The case an item draws for itself.
    #[must_use]
    pub fn own(seed: u64) -> Self {
        Self { seed, chosen: None }
    }

    /// Reads a name; nothing where it is none.
    #[must_use]
    pub fn read(word: &str) -> Option<Self> {
        let mut words = word.splitn(3, ':');
        let seed = words.next()?.parse().ok()?;
        let Some(place) = words.next() else { return Some(Self::own(seed)) };
        let faults = words.next().map(|faults| match faults {
            "" => Vec::new(),
            faults => faults.split(',').map(str::to_owned).collect(),
        });
        Some(Self { seed, chosen: Some(Chosen { place: place.parse().ok()?, faults }) })
    }

    /// The questions of this case, one for each of `settings`: one item and family in different systems of units.
    ///
    /// # Errors
    /// [`Unsettled`]: as [`twins`] and [`about`], or where the family has not got such a fault.
    pub fn questions(&self, settings: &[&Setting<'_>]) -> Result<Vec<Question>, Unsettled> {
        let (Some(chosen), Some(first)) = (&self.chosen, settings.first()) else { return twins(settings, self.seed) };
        let known = &first.plan.family.faults;
        let place = |name: &String| known.iter().position(|fault| fault.id == *name).ok_or(Unsettled::NoFault);
        let faults = chosen.faults.as_ref().map(|faults| faults.iter().map(place).collect::<Result<Vec<_>, _>>());
        let faults = faults.transpose()?.map(|mut faults| {
            faults.sort_unstable();
            faults.dedup();
            faults
        });
        let case = first.plan.draw_with(self.seed, faults.as_deref());
        let case = case.map_err(|error| Unsettled::NoMachine(told!("{error}")))?;
        about(settings, &case, derive(self.seed, chosen.place))
    }
}

impl fmt::Display for CaseName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.seed)?;
        let Some(Chosen { place, faults }) = &self.chosen else { return Ok(()) };
        write!(f, ":{place}")?;
        let Some(faults) = faults else { return Ok(()) };
        f.write_str(":")?;
        for (place, fault) in faults.iter().enumerate() {
            f.write_str(if place == 0 { "" } else { "," })?;
            f.write_str(fault)?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_is_read_as_it_was_written() {
        for name in ["412", "7:0", "7:12:", "7:3:soft-foot", "18446744073709551615:3:soft-foot,tight-chain"] {
            assert_eq!(CaseName::read(name).unwrap().to_string(), name);
        }
        for odd in ["", "-7", "7:", "7:x", ":3", "7:3.5:soft-foot", " 7", "0x7"] {
            assert_eq!(CaseName::read(odd), None, "{odd:?}");
        }
        let healthy = CaseName { seed: 7, chosen: Some(Chosen { place: 12, faults: Some(Vec::new()) }) };
        assert_eq!(CaseName::read("7:12:"), Some(healthy));
    }
}
