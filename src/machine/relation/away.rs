//! Calculations that are away, in modules of their own: the browser fetches those that a page needs, and connects them.

use std::sync::OnceLock;
use std::sync::atomic::{AtomicU32, Ordering::Relaxed};

use drivecourse_calc::Error;

use super::{Given, MOST_INPUTS};

/// The one calculation that a module offers: which of its list, and the inputs; NaN stands for no result.
#[rustfmt::skip]
pub type Calculation =
    extern "C" fn(u32, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64) -> f64;

/// The place of the relations that make machines; what else a topic has stands in the place after its own among the topics.
pub const RELATIONS: usize = 0;
const PLACES: usize = 32;

static CONNECTED: [OnceLock<Calculation>; PLACES] = [const { OnceLock::new() }; PLACES];
static LACKING: AtomicU32 = AtomicU32::new(0);

/// Which calculation: the place of its module, and its own in the module's list.
#[derive(Debug, Clone, Copy)]
pub struct Eval {
    pub(crate) module: u8,
    pub(crate) which: u16,
}

/// Connects the module of `place`; the first one connected stays.
pub fn connect(place: usize, calculation: Calculation) {
    if let Some(connected) = CONNECTED.get(place) {
        let _ = connected.set(calculation);
    }
}

/// Whether the module of `place` is connected.
pub fn is_connected(place: usize) -> bool {
    CONNECTED.get(place).is_some_and(|connected| connected.get().is_some())
}

/// The places of the modules that were asked since the last call and were not connected: what was worked out without them
/// is worth nothing.
pub fn lacking() -> impl Iterator<Item = usize> {
    let lacking = LACKING.swap(0, Relaxed);
    (0..PLACES).filter(move |place| lacking >> place & 1 == 1)
}

/// What `eval` makes of `given`.
///
/// # Errors
/// Where there is no result.
pub fn work(eval: Eval, given: &Given<'_>) -> Result<f64, Error> {
    let module = usize::from(eval.module);
    let Some(work) = CONNECTED.get(module).and_then(OnceLock::get) else {
        LACKING.fetch_or(1 << module, Relaxed);
        return Err(Error::NoSolution);
    };
    let mut inputs = [f64::NAN; MOST_INPUTS];
    for (input, place) in inputs.iter_mut().zip(given.at) {
        *input = given.values.get(usize::from(*place)).copied().unwrap_or(f64::NAN);
    }
    let [a, b, c, d, e, f, g, h, i, j, k, l, m, n, o, p] = inputs;
    let value = work(eval.which.into(), a, b, c, d, e, f, g, h, i, j, k, l, m, n, o, p);
    if value.is_nan() { Err(Error::NoSolution) } else { Ok(value) }
}
