//! A rigid four-footed frame on an uneven base.

use super::{Foot, ROUNDING, finite};
use crate::Result;
use crate::error::{positive, within};
use crate::units::{Length, Ratio};

/// A share of the weight below this is rounding: the weight's line then lies on the diagonal.
const ON_DIAGONAL: f64 = 1e-12;

/// Twist of the four seats as a length: positive when the diagonal One-Three stands high, negative when Two-Four does.
///
/// A height is positive where the pad stands high or the foot is long. Heights that make one tilted plane have no twist.
///
/// # Formula
/// `t = (e1 + e3) - (e2 + e4)`, where `e1..e4` are the heights at the feet.
///
/// # Source
/// Geometry: corners of a plane over a rectangle satisfy `e1 + e3 = e2 + e4`.
pub fn twist(heights: [Length; 4]) -> Length {
    let [e1, e2, e3, e4] = heights;
    (e1 + e3) - (e2 + e4)
}

/// Gap that a twist shows at the one loose foot, as a length not below nought.
///
/// The whole gap opens at one foot; it is neither halved nor shared between the two feet of the low diagonal.
///
/// # Formula
/// `g = |t|`, where `t` is the [`twist`].
///
/// # Source
/// Geometry, see [`seat`].
pub fn gap(twist: Length) -> Length {
    twist.abs()
}

/// Gap left, as a length not below nought, after a shim has gone under a foot of the low diagonal.
///
/// A shim thicker than the gap turns the twist over: the excess opens at the other diagonal.
///
/// # Formula
/// `g' = |g - s|`, where `g` is the gap found and `s` the thickness of the shim.
///
/// # Source
/// Geometry: the shim adds `s` to one height of the low diagonal, so the twist changes by `s` towards nought.
pub fn gap_left(gap: Length, shim: Length) -> Length {
    (gap - shim).abs()
}

/// How a rigid four-footed frame sits on its base, by [`seat`].
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Seat {
    /// The foot that hangs clear; none when the seats lie in one plane (within a nanometre).
    pub loose: Option<Foot>,
    /// The gap under the loose foot; nought when none is loose.
    pub gap: Length,
    /// The foot that takes over the gap when the frame is rocked: the opposite of the loose one.
    pub opens_when_rocked: Option<Foot>,
    /// Whether the weight's line lies on the high diagonal, so that the frame rocks at a touch.
    pub balanced: bool,
    /// Share of the weight on each foot, in the order of the feet; together one.
    pub share: [Ratio; 4],
}

impl Seat {}

/// Which feet of a rigid frame carry, which one hangs clear and by how much, and the share of the weight on each.
///
/// `heights` are positive where a pad stands high or a foot is long; `weight_x` and `weight_y` say where the weight's
/// line meets the plan, along and across from foot One. Holds for a frame that does not bend, with no bolt tightened,
/// and heights that are small against the plan.
///
/// # Formula
/// Twist `t` by [`twist`]. Both feet of the high diagonal touch; so does the foot of the low diagonal on whose side
/// the weight's line falls, and the last one hangs clear by `|t|`. Rocked over the high diagonal, the gap moves to
/// its opposite. Moments about the three touching feet give the shares: with `p` and `q` the distances of the weight
/// from the touching foot of the low diagonal, as parts of the length and the width,
/// * that foot: `1 - p - q`; its neighbour along the length: `p`; its neighbour across the width: `q`.
///
/// Two conventions, where statics alone does not decide:
/// * weight on the high diagonal: the low diagonal's lower-numbered foot is taken to touch (with no weight on it);
/// * no twist: a fourth support makes the shares indeterminate; each foot is given `(1 - p)(1 - q)`, with `p` and `q`
///   measured from that foot (the lever rule along the length, then across the width). They balance and are never
///   below nought.
///
/// # Source
/// Statics of a rigid body.
///
/// # Errors
/// [`crate::Error::OutOfRange`] when the plan has no length or width, the weight's line falls outside the plan, or a
/// height is not finite.
///
/// # Example
/// Pad four stands 0.40 mm low; the weight lies to the side of foot two, so foot four hangs clear by the whole 0.40 mm.
/// ```
/// use drivecourse_calc::mount::{Foot, seat};
/// use drivecourse_calc::units::{Length, length::millimeter};
///
/// let heights = [0.0, 0.0, 0.0, -0.40].map(Length::new::<millimeter>);
/// let [along, across, x, y] = [400.0, 300.0, 250.0, 120.0].map(Length::new::<millimeter>);
/// let seat = seat(heights, along, across, x, y)?;
/// assert_eq!(seat.loose, Some(Foot::Four));
/// assert_eq!(seat.opens_when_rocked, Some(Foot::Two));
/// assert!((seat.gap.get::<millimeter>() - 0.40).abs() < 1e-9);
/// for (share, expected) in seat.share.iter().zip([0.375, 0.225, 0.400, 0.0]) {
///     assert!((share.value - expected).abs() < 1e-12);
/// }
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn seat(heights: [Length; 4], along: Length, across: Length, weight_x: Length, weight_y: Length) -> Result<Seat> {
    for height in heights {
        finite("pad height", height)?;
    }
    positive("length between feet", along.value)?;
    positive("width between feet", across.value)?;
    within("weight along the base", weight_x.value, 0.0, along.value)?;
    within("weight across the base", weight_y.value, 0.0, across.value)?;
    let (u, v) = ((weight_x / along).value, (weight_y / across).value);
    // Distances of the weight from a foot, as parts of the length and the width.
    let from = |foot: Foot| {
        let (x, y) = foot.corner();
        ((u - x).abs(), (v - y).abs())
    };

    let twist = twist(heights);
    let mut share = [Ratio::default(); 4];
    if twist.abs() <= ROUNDING {
        for foot in Foot::ALL {
            let (p, q) = from(foot);
            share[foot.index()].value = (1.0 - p) * (1.0 - q);
        }
        return Ok(Seat { loose: None, gap: Length::default(), opens_when_rocked: None, balanced: false, share });
    }

    let first = if twist.value > 0.0 { Foot::Two } else { Foot::One };
    // Positive when the weight's line falls on the side of `first`, nought on the high diagonal.
    let side = |foot: Foot| {
        let (p, q) = from(foot);
        1.0 - p - q
    };
    let balanced = side(first).abs() <= ON_DIAGONAL;
    let touching = if balanced || side(first) > 0.0 { first } else { first.opposite() };
    let (p, q) = from(touching);
    share[touching.index()].value = side(touching).max(0.0);
    share[touching.neighbour_along().index()].value = p;
    share[touching.neighbour_along().opposite().index()].value = q;
    let loose = touching.opposite();
    Ok(Seat { loose: Some(loose), gap: gap(twist), opens_when_rocked: Some(touching), balanced, share })
}

/// Dial rise as a length at one foot when its bolt alone is loosened and the other three stay tight.
///
/// Holds for a frame stiff against its bolts' reach that tight bolts had drawn down onto all four pads.
///
/// # Formula
/// Three tight bolts hold three feet on their pads; the rigid frame then stands at the loosened foot at the height of
/// the plane through the other three, which is above that foot's own pad by
/// * `-t` for feet One and Three, `t` for feet Two and Four, with `t` the [`twist`].
///
/// Above nought, that is the rise; below nought the pad is in the way, and the foot stays where it is. So each foot of
/// the low diagonal rises by `|t|` and each foot of the high diagonal by nothing: two feet read, yet one shim of `|t|`
/// under one of them is the cure.
///
/// # Source
/// Geometry of a plane through three points.
///
/// # Example
/// ```
/// use drivecourse_calc::mount::{Foot, rise_on_loosening};
/// use drivecourse_calc::units::{Length, length::millimeter};
///
/// let heights = [0.0, 0.0, 0.0, -0.25].map(Length::new::<millimeter>);
/// let rises = Foot::ALL.map(|foot| rise_on_loosening(heights, foot).get::<millimeter>());
/// for (rise, expected) in rises.iter().zip([0.0, 0.25, 0.0, 0.25]) {
///     assert!((rise - expected).abs() < 1e-9);
/// }
/// ```
pub fn rise_on_loosening(heights: [Length; 4], foot: Foot) -> Length {
    let above_pad = match foot {
        Foot::One | Foot::Three => -twist(heights),
        Foot::Two | Foot::Four => twist(heights),
    };
    // Not `max`: of 0 and -0 it may give either, and the bits must not depend on the platform.
    if above_pad > Length::default() { above_pad } else { Length::default() }
}

/// Largest of the four dial rises, as a length: each foot is judged by its own rise, never by their sum.
///
/// # Formula
/// `max(r1, r2, r3, r4)`, where `r1..r4` are the rises read foot by foot.
///
/// # Source
/// Common practice, no source.
pub fn worst_rise(rises: [Length; 4]) -> Length {
    let [first, rest @ ..] = rises;
    rest.into_iter().fold(first, Length::max)
}

#[cfg(test)]
mod tests {
    use super::super::tests::{Numbers, solve3};
    use super::*;
    use crate::Error;
    use crate::units::length::{meter, millimeter};

    fn mm(values: [f64; 4]) -> [Length; 4] {
        values.map(Length::new::<millimeter>)
    }

    fn metres(value: f64) -> Length {
        Length::new::<meter>(value)
    }

    /// A frame and base drawn at random: pad heights, plan, weight's line.
    struct Drawn {
        heights: [Length; 4],
        plan: [Length; 2],
        weight: [Length; 2],
    }

    impl Drawn {
        fn new(numbers: &mut Numbers) -> Self {
            let plan = [0, 1].map(|_| metres(numbers.between(0.1, 3.0)));
            Self {
                heights: [0; 4].map(|_| metres(numbers.between(-0.002, 0.002))),
                plan,
                weight: plan.map(|side| side * numbers.unit()),
            }
        }

        fn seat(&self) -> Seat {
            seat(self.heights, self.plan[0], self.plan[1], self.weight[0], self.weight[1]).unwrap()
        }

        /// Position of a foot in metres.
        fn at(&self, foot: Foot) -> [f64; 2] {
            let (x, y) = foot.position(self.plan[0], self.plan[1]);
            [x.value, y.value]
        }

        /// Height above its own pad of a frame that stands on the other three, by solving for their plane.
        fn clear(&self, foot: Foot) -> f64 {
            let others: Vec<Foot> = Foot::ALL.into_iter().filter(|other| *other != foot).collect();
            let rows = core::array::from_fn(|i| [1.0, self.at(others[i])[0], self.at(others[i])[1]]);
            let plane = solve3(rows, core::array::from_fn(|i| self.heights[others[i].index()].value));
            plane[0] + plane[1] * self.at(foot)[0] + plane[2] * self.at(foot)[1] - self.heights[foot.index()].value
        }

        /// Loads on the other three feet that hold a unit weight in balance, by solving the three equations of statics.
        fn loads(&self, foot: Foot) -> [f64; 4] {
            let others: Vec<Foot> = Foot::ALL.into_iter().filter(|other| *other != foot).collect();
            let rows = [[1.0; 3], [0, 1, 2].map(|i| self.at(others[i])[0]), [0, 1, 2].map(|i| self.at(others[i])[1])];
            let found = solve3(rows, [1.0, self.weight[0].value, self.weight[1].value]);
            let mut loads = [0.0; 4];
            for (other, load) in others.into_iter().zip(found) {
                loads[other.index()] = load;
            }
            loads
        }
    }

    /// Of the four ways to stand on three feet, exactly one is possible: no pad stuck through the frame, no foot pulling.
    #[test]
    fn seat_agrees_with_trying_every_three_feet() {
        let mut numbers = Numbers(1);
        for _ in 0..5000 {
            let drawn = Drawn::new(&mut numbers);
            let possible: Vec<Foot> = Foot::ALL
                .into_iter()
                .filter(|foot| drawn.clear(*foot) > 0.0 && drawn.loads(*foot).iter().all(|load| *load >= 0.0))
                .collect();
            let seat = drawn.seat();
            assert_eq!(possible, [seat.loose.unwrap()]);
            approx::assert_abs_diff_eq!(seat.gap.value, drawn.clear(possible[0]), epsilon = 1e-15);
            assert_eq!(seat.opens_when_rocked, Some(possible[0].opposite()));
            assert!(drawn.clear(possible[0].opposite()) > 0.0, "rocked, the opposite foot can hang clear");
            assert!(!seat.balanced);
            for (share, load) in seat.share.iter().zip(drawn.loads(possible[0])) {
                approx::assert_abs_diff_eq!(share.value, load, epsilon = 1e-12);
            }
        }
    }

    #[test]
    fn shares_balance_on_any_base() {
        let mut numbers = Numbers(2);
        for round in 0..4000 {
            let mut drawn = Drawn::new(&mut numbers);
            if round % 2 == 0 {
                // A tilted but flat base.
                drawn.heights[3] = drawn.heights[0] + drawn.heights[2] - drawn.heights[1];
            }
            let seat = drawn.seat();
            assert_eq!(seat.loose.is_none(), round % 2 == 0);
            assert!(seat.share.iter().all(|share| (0.0..=1.0).contains(&share.value)));
            let sum = |arm: &dyn Fn(Foot) -> f64| -> f64 {
                Foot::ALL.into_iter().map(|foot| seat.share[foot.index()].value * arm(foot)).sum()
            };
            approx::assert_relative_eq!(sum(&|_| 1.0), 1.0, max_relative = 1e-12);
            approx::assert_abs_diff_eq!(sum(&|foot| drawn.at(foot)[0]), drawn.weight[0].value, epsilon = 1e-12);
            approx::assert_abs_diff_eq!(sum(&|foot| drawn.at(foot)[1]), drawn.weight[1].value, epsilon = 1e-12);
        }
    }

    #[test]
    fn a_centred_weight_rocks_on_the_high_diagonal() {
        let side = metres(0.3);
        let middle = metres(0.15);
        let seat_on = |heights| seat(mm(heights), side, side, middle, middle).unwrap();
        let high_13 = seat_on([0.2, 0.0, 0.2, 0.0]);
        assert_eq!(
            (high_13.loose, high_13.opens_when_rocked, high_13.balanced),
            (Some(Foot::Four), Some(Foot::Two), true)
        );
        assert_eq!(high_13.share.map(|share| share.value), [0.5, 0.0, 0.5, 0.0]);
        let high_24 = seat_on([0.0, 0.2, 0.0, 0.0]);
        assert_eq!((high_24.loose, high_24.balanced), (Some(Foot::Three), true));
        assert_eq!(high_24.share.map(|share| share.value), [0.0, 0.5, 0.0, 0.5]);
        let flat = seat_on([0.1, 0.3, 0.3, 0.1]);
        assert_eq!((flat.loose, flat.gap, flat.balanced), (None, Length::default(), false));
        assert_eq!(flat.share.map(|share| share.value), [0.25; 4]);
    }

    #[test]
    fn weight_outside_the_plan_is_refused() {
        let heights = mm([0.0; 4]);
        let try_at = |x, y| seat(heights, metres(0.4), metres(0.3), metres(x), metres(y));
        assert!(try_at(0.4, 0.3).is_ok() && try_at(0.0, 0.0).is_ok());
        for (x, y) in [(0.401, 0.1), (-0.001, 0.1), (f64::NAN, 0.1)] {
            assert!(matches!(try_at(x, y), Err(Error::OutOfRange { input: "weight along the base", .. })));
        }
        assert!(matches!(try_at(0.1, 0.301), Err(Error::OutOfRange { input: "weight across the base", .. })));
        assert!(seat(heights, metres(0.0), metres(0.3), metres(0.0), metres(0.1)).is_err());
        assert!(seat(heights, metres(0.4), metres(-0.3), metres(0.0), metres(0.1)).is_err());
        let mut broken = heights;
        broken[2] = metres(f64::NAN);
        assert!(seat(broken, metres(0.4), metres(0.3), metres(0.1), metres(0.1)).is_err());
    }

    #[test]
    fn rise_agrees_with_the_plane_of_the_other_three() {
        let mut numbers = Numbers(3);
        for _ in 0..5000 {
            let drawn = Drawn::new(&mut numbers);
            let rises = Foot::ALL.map(|foot| rise_on_loosening(drawn.heights, foot));
            for foot in Foot::ALL {
                approx::assert_abs_diff_eq!(rises[foot.index()].value, drawn.clear(foot).max(0.0), epsilon = 1e-15);
            }
            let seat = drawn.seat();
            assert_eq!(worst_rise(rises), seat.gap);
            assert_eq!(rises.iter().filter(|rise| rise.value > 0.0).count(), 2);
        }
    }

    #[test]
    fn a_shim_under_the_loose_foot_closes_the_gap() {
        let mut numbers = Numbers(4);
        for _ in 0..2000 {
            let mut drawn = Drawn::new(&mut numbers);
            let before = drawn.seat();
            let shim = before.gap * numbers.between(0.0, 2.0);
            drawn.heights[before.loose.unwrap().index()] += shim;
            let left = gap_left(before.gap, shim);
            approx::assert_abs_diff_eq!(drawn.seat().gap.value, left.value, epsilon = 1.1e-9);
            approx::assert_abs_diff_eq!(gap(twist(drawn.heights)).value, left.value, epsilon = 1e-15);
        }
    }

    #[test]
    fn lifting_or_tilting_the_whole_base_changes_nothing() {
        let mut numbers = Numbers(5);
        for _ in 0..2000 {
            let mut drawn = Drawn::new(&mut numbers);
            let before = drawn.seat();
            let [lift, tilt_x, tilt_y] = [0; 3].map(|_| numbers.between(-0.003, 0.003));
            for foot in Foot::ALL {
                let [x, y] = drawn.at(foot);
                drawn.heights[foot.index()] += metres(lift + tilt_x * x + tilt_y * y);
            }
            let after = drawn.seat();
            assert_eq!((after.loose, after.share), (before.loose, before.share));
            approx::assert_abs_diff_eq!(after.gap.value, before.gap.value, epsilon = 1e-14);
        }
    }
}
