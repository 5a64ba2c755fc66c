//! Which number of a sheet is wrong.
//!
//! One number of the sheet gets a slip of reading or writing. It counts as the odd one out only where the relations of
//! the registry prove it: without it, whatever can be worked out from the others agrees with what stands there; and
//! without any one of the others, something still disagrees by more than twice what the instruments and the rounding of
//! every number on the way can make up, all of them taken the same way. What is worked out stands on the sheet as its other
//! numbers give it, so that the one that is wrong is the only one that does not add up.

use drivecourse_machine::chance::Stream;
use drivecourse_machine::language::Message;
use drivecourse_machine::told;
use drivecourse_machine::{
    Face, Figures, Known, Path, PathChoice, QuantityId, Registry, System, Unit, amount, messages,
};

use super::{Options, capital};
use crate::question::rounded;
use crate::setting::Unsettled;
use crate::tolerance;

/// Ways to one number that are followed.
const MOST_PATHS: usize = 3;
/// A disagreement counts from this many times the greatest honest one on.
const CLEARLY: f64 = 2.0;
/// Share of sheets whose slip shows at a glance, where there is a choice.
const PLAIN_FIRST: f64 = 0.25;

/// How the numbers of a sheet follow from each other.
#[derive(Debug, Clone)]
pub(crate) struct Sheet {
    ids: Vec<QuantityId>,
    /// Ways to each number from all the others.
    whole: Vec<Path>,
    /// For each number: ways among the others, it being left out.
    without: Vec<Vec<Path>>,
    /// Ways to the numbers that are worked out from others of the sheet, in the order in which a person comes to them.
    worked: Vec<Path>,
}

impl Sheet {
    pub(crate) fn new(ids: &[QuantityId], also: &[QuantityId]) -> Self {
        let ways = |left_out: Option<QuantityId>| {
            let rest: Vec<QuantityId> = ids.iter().copied().filter(|id| Some(*id) != left_out).collect();
            let to = |asked: &QuantityId| {
                let given: Vec<_> = rest.iter().chain(also).copied().filter(|id| id != asked).collect();
                Path::find_all(&given, *asked, &PathChoice::default(), MOST_PATHS).unwrap_or_default()
            };
            rest.iter().flat_map(to).collect::<Vec<_>>()
        };
        let without = ids.iter().map(|id| ways(Some(*id))).collect();
        Self { ids: ids.to_vec(), whole: ways(None), without, worked: worked(ids, also) }
    }

    /// Puts what is worked out from other numbers of the sheet as these give it: whoever works a line out again comes to
    /// what stands there. A machine's own values, each rounded for itself, would have 14 °C and a rise of 36 °C make 51 °C.
    fn fill_in(&self, values: &mut [f64], system: System) {
        for path in &self.worked {
            let mut scratch = values.to_vec();
            // What has no result from what is shown stands as the machine has it.
            if path.run(&mut scratch).is_ok() {
                let at = path.asked.index();
                values[at] = rounded(path.asked, scratch[at], system);
            }
        }
    }

    /// Proves that `odd` alone does not belong: for every number, what still disagrees without it (`None` for `odd`).
    fn proof(&self, values: &[f64], odd: usize, system: System) -> Option<Vec<Option<Clash>>> {
        let agrees =
            |paths: &[Path]| !paths.is_empty() && paths.iter().all(|path| off(path, values, system) <= Some(1.0));
        if !self.without.get(odd).is_some_and(|paths| agrees(paths)) {
            return None;
        }
        let mut clashes = Vec::with_capacity(self.ids.len());
        for (place, paths) in self.without.iter().enumerate() {
            if place == odd {
                clashes.push(None);
            } else {
                clashes.push(Some(clash(paths, values, system)?));
            }
        }
        Some(clashes)
    }
}

/// Ways to those of `ids` that are worked out, each from what is read or printed, from `also` and from what comes before it.
fn worked(ids: &[QuantityId], also: &[QuantityId]) -> Vec<Path> {
    let (mut open, mut known): (Vec<_>, Vec<_>) = ids.iter().copied().partition(|id| id.get().known == Known::Worked);
    known.extend(also);
    let mut worked = Vec::new();
    while !open.is_empty() {
        let way = |id: &QuantityId| Path::find(&known, *id, &PathChoice::default()).ok();
        let found = open.iter().enumerate().find_map(|(place, id)| Some((place, way(id)?)));
        // What nothing before it gives is where the working begins.
        let place = found.as_ref().map_or(0, |(place, _)| *place);
        known.push(open.remove(place));
        worked.extend(found.map(|(_, path)| path));
    }
    worked
}

/// A number that the others contradict.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Clash {
    asked: QuantityId,
    comes_to: f64,
}

/// What the ways contradict most clearly, if anything.
fn clash(paths: &[Path], values: &[f64], system: System) -> Option<Clash> {
    let far = paths.iter().filter_map(|path| Some((off(path, values, system)?, path)));
    let (_, path) = far.filter(|(off, _)| *off > CLEARLY).max_by(|a, b| a.0.total_cmp(&b.0))?;
    let mut worked = values.to_vec();
    Some(Clash { asked: path.asked, comes_to: path.run(&mut worked).ok()? })
}

/// How far what the path gives lies from what is written, as a multiple of the greatest honest difference; `None` where
/// the path has no result.
fn off(path: &Path, values: &[f64], system: System) -> Option<f64> {
    let written = values[path.asked.index()];
    let mut worked = values.to_vec();
    let comes_to = path.run(&mut worked).ok()?;
    let honest = rounding(path, values, &worked, system) + half_step(path.asked, values, system) + 1e-9 * written.abs();
    Some((comes_to - written).abs() / honest)
}

/// How far the end of a path may be off because every number it uses is rounded, all of them the same way; `worked`
/// holds the results on the way.
pub(super) fn rounding(path: &Path, values: &[f64], worked: &[f64], system: System) -> f64 {
    let mut scratch = worked.to_vec();
    let comes_to = worked[path.asked.index()];
    let effect = |id: &QuantityId| {
        tolerance::effect(path, worked, &mut scratch, id.index(), 0, half_step(*id, values, system), comes_to)
    };
    path.uses().iter().map(effect).sum()
}

/// How far a number may lie from the truth by rounding: half a step of its instrument, or of its last figure.
fn half_step(id: QuantityId, values: &[f64], system: System) -> f64 {
    let seeing = Registry::get().seeing(system)[id.index()];
    if seeing.half_step() > 0.0 || !id.get().choices.is_empty() {
        return seeing.half_step();
    }
    let unit = seeing.unit();
    0.5 * id.get().display(system).figures.step(unit.from_base(values[id.index()])) * unit.size().abs()
}

/// A way to write a number down wrong.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Slip {
    /// What is written, in the unit shown.
    pub(crate) written: f64,
    /// Whether the number is so far out that it shows at a glance.
    pub(crate) plain: bool,
    /// What went wrong, as the end of a sentence.
    pub(crate) how: String,
}

/// Wrong ways to write `base` of `id` down, each with a number other than the right one.
pub(crate) fn slips(id: QuantityId, base: f64, system: System) -> Vec<Slip> {
    let quantity = id.get();
    let (unit, figures) = (quantity.unit(system), quantity.display(system).figures);
    let right = figures.round(unit.from_base(base));
    let mut out = Vec::new();
    for swapped in swapped(right, figures) {
        out.push(Slip { written: swapped, plain: false, how: SWAPPED.text().into() });
    }
    if !matches!(figures, Figures::Fraction(_)) {
        for (written, way) in [(right * 10.0, POINT_RIGHT), (figures.round(right / 10.0), POINT_LEFT)] {
            out.push(Slip { written, plain: true, how: way.text().into() });
        }
    }
    let other: &Unit = quantity.unit(match system {
        System::Si => System::Us,
        System::Us => System::Si,
    });
    if other != unit {
        let written = figures.round(other.from_base(base));
        let how = OTHER_UNIT.say(&[("other", other.symbol), ("unit", unit.symbol)]);
        out.push(Slip { written, plain: true, how });
    }
    if let Known::Read(instrument) = quantity.known
        && let Some(face) = Face::of(instrument)
    {
        let misread = face.misreadings(system, right).into_iter();
        out.extend(misread.map(|misread| Slip {
            written: misread.value,
            plain: false,
            how: MISREAD.say(&[("instrument", instrument.name()), ("how", misread.slip.name())]),
        }));
    }
    out.retain(|slip| slip.written != right && slip.written.is_finite() && (slip.written != 0.0 || right == 0.0));
    out
}

/// The number with two neighbouring figures changed over, each way that gives another number.
fn swapped(value: f64, figures: Figures) -> Vec<f64> {
    let Figures::Places(places) = figures else { return Vec::new() };
    let text = format!("{:.*}", usize::from(places), value.abs());
    let places: Vec<usize> = text.char_indices().filter(|(_, c)| c.is_ascii_digit()).map(|(at, _)| at).collect();
    let mut out = Vec::new();
    for pair in places.windows(2) {
        let mut bytes = text.clone().into_bytes();
        bytes.swap(pair[0], pair[1]);
        // Nobody writes 05 for 50.
        let first_nought = bytes[0] == b'0' && text.as_bytes()[0] != b'0';
        let number = String::from_utf8(bytes).ok().and_then(|text| drivecourse_machine::decimal::value(&text, 0));
        out.extend(
            number.filter(|number| *number != value.abs() && !first_nought).map(|number| number.copysign(value)),
        );
    }
    out
}

messages! { pub(crate) AUTHOR_SAYS {
    AT_ODDS = "problem-odd-at-odds", "the numbers differ by more than their rounding as they stand";
    NO_PROOF = "problem-odd-no-proof", "no slip in these numbers can be proven";
} }

/// What is shown, one number of it falsified, and the numbers to choose from.
///
/// # Errors
/// [`Unsettled::NoMachine`] where the sheet does not agree as it stands, or no slip in it can be proven.
pub(crate) fn options(
    sheet: &Sheet,
    mut givens: Vec<(QuantityId, f64)>,
    system: System,
    stream: &mut Stream,
) -> Result<(Vec<(QuantityId, f64)>, Options), Unsettled> {
    let refused = |why: Message| Err(Unsettled::NoMachine(told!("{}", why.text())));
    let mut values = vec![f64::NAN; Registry::get().len()];
    givens.iter().for_each(|(id, value)| values[id.index()] = *value);
    sheet.fill_in(&mut values, system);
    givens.iter_mut().for_each(|(id, value)| *value = values[id.index()]);
    if sheet.whole.iter().any(|path| off(path, &values, system) > Some(1.0)) {
        return refused(AT_ODDS);
    }
    let mut places: Vec<usize> = (0..sheet.ids.len()).collect();
    stream.shuffle(&mut places);
    for place in places {
        let id = sheet.ids[place];
        let right = values[id.index()];
        let mut ways = slips(id, right, system);
        stream.shuffle(&mut ways);
        // Mostly one that has to be looked for.
        let plain_first = stream.unit() < PLAIN_FIRST;
        ways.sort_by_key(|slip| slip.plain != plain_first);
        for slip in ways {
            let written = id.get().unit(system).to_base(slip.written);
            values[id.index()] = written;
            if let Some(clashes) = sheet.proof(&values, place, system) {
                givens.iter_mut().filter(|(other, _)| *other == id).for_each(|(_, value)| *value = written);
                return Ok((givens, told(sheet, &values, place, right, &slip, &clashes, system)));
            }
        }
        values[id.index()] = right;
    }
    refused(NO_PROOF)
}

fn told(
    sheet: &Sheet,
    values: &[f64],
    odd: usize,
    right: f64,
    slip: &Slip,
    clashes: &[Option<Clash>],
    system: System,
) -> Options {
    let write = |id: QuantityId, value: f64| amount::write(id.get(), value, system);
    let shown = sheet.ids.iter().map(|id| format!("{}: {}", capital(id.get().name), write(*id, values[id.index()])));
    let against = sheet.ids.iter().zip(clashes).map(|(id, clash)| {
        clash.map_or_else(String::new, |clash| {
            CLASH.say(&[
                ("quantity", id.get().name),
                ("other", clash.asked.get().name),
                ("comes", &write(clash.asked, clash.comes_to)),
                ("written", &write(clash.asked, values[clash.asked.index()])),
            ])
        })
    });
    let id = sheet.ids[odd];
    Options {
        shown: shown.collect(),
        right: odd,
        against: against.collect(),
        because: AGREES.say(&[("quantity", id.get().name), ("right", &write(id, right)), ("how", &slip.how)]),
    }
}

messages! { pub(crate) SAYS {
    SWAPPED = "odd-swapped", "two figures changed places";
    POINT_RIGHT = "odd-point-right", "the decimal point stands one place too far right";
    POINT_LEFT = "odd-point-left", "the decimal point stands one place too far left";
    OTHER_UNIT = "odd-other-unit", "the number is in another unit ({other}) than the one written ({unit})";
    MISREAD = "odd-misread", "the {instrument} was misread ({how})";
    CLASH = "odd-clash", "Leave out the {quantity}, and the rest still disagrees: the {other} comes to {comes} from the others, and {written} is written.";
    AGREES = "odd-agrees", "Without the {quantity} everything else agrees. It should read {right}: {how}.";
} }
