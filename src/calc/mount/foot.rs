//! The four feet and their places on the plan.

use crate::Result;
use crate::error::within;
use crate::units::Length;

/// One foot of four, numbered clockwise seen from above; One and Three, Two and Four face each other.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Foot {
    /// The corner the plan is measured from.
    One,
    /// The corner at the far end of the length.
    Two,
    /// The corner at the far end of both length and width.
    Three,
    /// The corner at the far end of the width.
    Four,
}

impl Foot {
    /// The four feet in the order of their numbers, which is the order of every array of four in this module.
    pub const ALL: [Self; 4] = [Self::One, Self::Two, Self::Three, Self::Four];

    /// The foot's number, 1 to 4.
    pub const fn number(self) -> u8 {
        self as u8 + 1
    }

    /// The foot of a number.
    ///
    /// # Errors
    /// [`crate::Error::OutOfRange`] when the number is not 1 to 4.
    pub fn from_number(number: u8) -> Result<Self> {
        within("foot number", f64::from(number), 1.0, 4.0)?;
        Ok(Self::ALL[usize::from(number - 1)])
    }

    /// The other foot of the same diagonal.
    pub const fn opposite(self) -> Self {
        match self {
            Self::One => Self::Three,
            Self::Two => Self::Four,
            Self::Three => Self::One,
            Self::Four => Self::Two,
        }
    }

    /// The foot's place in an array of four, 0 to 3.
    pub const fn index(self) -> usize {
        self as usize
    }

    /// Where the foot stands on a plan of the given length and width: along and across from foot One.
    pub fn position(self, along: Length, across: Length) -> (Length, Length) {
        let (x, y) = self.corner();
        (along * x, across * y)
    }

    /// The foot's corner on a plan one by one.
    pub(super) const fn corner(self) -> (f64, f64) {
        match self {
            Self::One => (0.0, 0.0),
            Self::Two => (1.0, 0.0),
            Self::Three => (1.0, 1.0),
            Self::Four => (0.0, 1.0),
        }
    }

    /// The foot at the other end of the same long side.
    pub(super) const fn neighbour_along(self) -> Self {
        match self {
            Self::One => Self::Two,
            Self::Two => Self::One,
            Self::Three => Self::Four,
            Self::Four => Self::Three,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Error;

    #[test]
    fn feet_have_numbers_and_opposites() {
        for (index, foot) in Foot::ALL.into_iter().enumerate() {
            assert_eq!(foot.index(), index);
            assert_eq!(Foot::from_number(foot.number()), Ok(foot));
            assert_eq!(foot.opposite().opposite(), foot);
            let ((x, y), (far_x, far_y)) = (foot.corner(), foot.opposite().corner());
            assert_eq!((x + far_x, y + far_y), (1.0, 1.0), "a diagonal runs through the middle");
            assert_eq!(foot.neighbour_along().corner().1, y, "same long side");
        }
        assert!(matches!(Foot::from_number(0), Err(Error::OutOfRange { input: "foot number", .. })));
        assert!(Foot::from_number(5).is_err());
    }
}
