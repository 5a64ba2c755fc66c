//! The picture of a case, by name: values of the registry handed to [`crate::figures`].
//!
//! In a question a picture shows what the learner is given. What is asked stands there as `?`, whatever else is not
//! given has no label, and a length that would show the answer to scale is drawn at a nominal value. In a worked
//! solution everything given and worked out is labelled, in a picture of a machine everything there is.
//!
//! An instrument's face shows the reading that is asked for, without saying it. Where a machine has several readings of
//! one kind, the picture's name says which: `dial mount.rise_2`.

mod align;
mod chain;
mod fasten;
mod follow;
mod heat;
mod instruments;
mod load;
mod mount;
mod start;
mod vibrate;

#[cfg(test)]
mod tests;

use core::fmt;

use drivecourse_machine::language::Message;
use drivecourse_machine::packed;
use drivecourse_machine::packed::{Packed, Reader};
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Case, Face, Known, QuantityId, Registry, System, amount, messages, quoted, refusal, told};
use drivecourse_quiz::{Part, Question};

use crate::figures::{Figure, FigureError};
pub(crate) use instruments::how_read;

/// What pictures say that are made of the registry's values.
pub(crate) fn messages() -> Vec<Message> {
    let drive = [align::SAYS, chain::SAYS, fasten::SAYS, follow::SAYS, heat::SAYS, instruments::SAYS];
    [drive.concat(), [mount::SAYS, start::SAYS, vibrate::SAYS].concat()].concat()
}

/// The pictures an item or a chapter may name.
pub const PICTURES: [&str; 21] = [
    "drive-side",
    "foot-plan",
    "foot-corners",
    "shim-pack",
    "shaft-load",
    "warm-up",
    "straightedge",
    "dials",
    "bolt-pattern",
    "key-section",
    "baseline-chart",
    "follow-up-calendar",
    "power-chain",
    "spectrum",
    "vibration-zones",
    "dial",
    "scale",
    "feeler",
    "sight-glass",
    "thermometer",
    "vibration-meter",
];

/// What a picture is drawn from.
#[derive(Debug, Clone)]
pub struct Portrait {
    id: String,
    system: System,
    values: Vec<f64>,
    /// Read off a face, first of all.
    read: Vec<QuantityId>,
    view: View,
}

/// What of it may be told.
#[derive(Debug, Clone)]
enum View {
    /// Everything.
    Machine,
    /// What is given or worked out: the places whose values are known.
    Solution(Vec<bool>),
    /// What is shown; what is asked stands as `?`.
    Question { shown: Vec<QuantityId>, asked: Vec<QuantityId> },
}

/// Why a picture cannot be drawn.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum PortrayError {
    /// There is no picture of that name.
    UnknownPicture(String),
    /// The machine does not say how large something in the picture is.
    Missing {
        /// The picture.
        picture: &'static str,
        /// What is missing, by its id in the registry.
        quantity: &'static str,
    },
    /// The picture would be empty, because the question shows nothing that it draws.
    NothingShown {
        /// The picture.
        picture: &'static str,
        /// What it could show, by its id in the registry.
        quantity: &'static str,
    },
    /// The quantity named with a face is not read off it.
    NotOnFace {
        /// The picture.
        picture: &'static str,
        /// The quantity as written.
        quantity: String,
    },
    /// Nothing that the face could show is asked or told.
    NoReading {
        /// The picture.
        picture: &'static str,
    },
    /// A value lies outside what can be drawn.
    Figure {
        /// The picture.
        picture: &'static str,
        /// What is wrong.
        cause: FigureError,
    },
    /// A calculation behind the picture refused.
    Calculation {
        /// The picture.
        picture: &'static str,
        /// What it said.
        cause: drivecourse_calc::Error,
    },
}

messages! { pub(crate) PROBLEMS {
    NO_PICTURE = "problem-picture-no-picture", "there is no picture called {name}; there are {names}";
    NO_PICTURE_NEAR = "problem-picture-no-picture-near", "there is no picture called {name}; did you mean {near}?";
    MISSING = "problem-picture-missing", "the picture {picture} needs {quantity}, which this machine does not determine";
    NOTHING_SHOWN = "problem-picture-nothing-shown", "the picture {picture} would be empty: show {quantity} in the question, or leave the picture out";
    NOT_ON_FACE = "problem-picture-not-on-face", "{quantity} is not read off the face {picture}";
    NO_READING = "problem-picture-no-reading", "the face {picture} has no reading to show";
    CAUSE = "problem-picture-cause", "the picture {picture}: {why}";
} }

impl fmt::Display for PortrayError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&match self {
            Self::UnknownPicture(name) => match nearest(name, PICTURES.into_iter()) {
                Some(near) => told!(NO_PICTURE_NEAR, "name" = quoted(name), "near" = quoted(near)),
                None => told!(NO_PICTURE, "name" = quoted(name), "names" = PICTURES.join(", ")),
            },
            Self::Missing { picture, quantity } => told!(MISSING, "picture" = picture, "quantity" = quantity),
            Self::NothingShown { picture, quantity } => {
                told!(NOTHING_SHOWN, "picture" = picture, "quantity" = quantity)
            }
            Self::NotOnFace { picture, quantity } => {
                told!(NOT_ON_FACE, "quantity" = quoted(quantity), "picture" = picture)
            }
            Self::NoReading { picture } => told!(NO_READING, "picture" = picture),
            Self::Figure { picture, cause } => told!(CAUSE, "picture" = picture, "why" = cause.to_string()),
            Self::Calculation { picture, cause } => told!(CAUSE, "picture" = picture, "why" = refusal(cause)),
        })
    }
}

impl core::error::Error for PortrayError {}

impl Portrait {
    /// What the learner is shown with `question`; `id` must be unique in the page.
    #[must_use]
    pub fn of_question(id: &str, question: &Question) -> Self {
        let shown = question.parts.iter().flat_map(|part| part.givens.iter().map(|(id, _)| *id)).collect();
        let asked = question.parts.iter().filter_map(|part| part.asked()).collect();
        let mut portrait = Self::of_case(id, &question.case, question.system);
        portrait.view = View::Question { shown, asked };
        portrait.read = readings(question);
        portrait.show_givens(question);
        portrait
    }

    /// What the solution of `question` works out, and what it is given.
    #[must_use]
    pub fn of_solution(id: &str, question: &Question) -> Self {
        let mut portrait = Self::of_case(id, &question.case, question.system);
        for key in question.parts.iter().filter_map(|part| part.key()) {
            for (value, worked) in portrait.values.iter_mut().zip(&key.values) {
                if !worked.is_nan() {
                    *value = *worked;
                }
            }
        }
        portrait.show_givens(question);
        let mut known = vec![false; portrait.values.len()];
        for key in question.parts.iter().filter_map(|part| part.key()) {
            known.iter_mut().zip(&key.values).for_each(|(known, value)| *known |= !value.is_nan());
        }
        for (id, _) in question.parts.iter().flat_map(|part| &part.givens) {
            known[id.index()] = true;
        }
        portrait.view = View::Solution(known);
        portrait.read = readings(question);
        portrait
    }

    /// Everything about `case`, readings as they are read in `system`.
    #[must_use]
    pub fn of_case(id: &str, case: &Case, system: System) -> Self {
        let seen = case.seen(system);
        let values =
            seen.iter().zip(&case.values).map(|(seen, held)| if seen.is_nan() { *held } else { *seen }).collect();
        Self { id: id.to_owned(), system, values, read: Vec::new(), view: View::Machine }
    }

    fn show_givens(&mut self, question: &Question) {
        for (id, value) in question.parts.iter().flat_map(|part| &part.givens) {
            self.values[id.index()] = *value;
        }
    }

    /// Draws the picture called `name`; a face's name may be followed by the quantity to show on it.
    ///
    /// # Errors
    /// [`PortrayError`]: no such picture, or something in it is unknown or cannot be drawn.
    pub fn draw(&self, name: &str) -> Result<Figure, PortrayError> {
        let (name, of) = name.split_once(' ').map_or((name, None), |(name, of)| (name, Some(of.trim())));
        let picture = PICTURES.into_iter().find(|picture| *picture == name);
        let board = Board { picture: picture.unwrap_or_default(), portrait: self };
        match picture {
            Some("drive-side") => chain::drive_side(&board),
            Some("foot-plan") => mount::foot_plan(&board),
            Some("foot-corners") => mount::foot_corners(&board),
            Some("shim-pack") => mount::shim_pack(&board),
            Some("shaft-load") => load::shaft_load(&board),
            Some("warm-up") => heat::warm_up(&board),
            Some("straightedge") => align::straightedge(&board),
            Some("dials") => align::dials(&board),
            Some("bolt-pattern") => fasten::bolt_pattern(&board),
            Some("key-section") => fasten::key_section(&board),
            Some("baseline-chart") => follow::baseline_chart(&board),
            Some("follow-up-calendar") => follow::calendar(&board),
            Some("power-chain") => start::power_chain(&board),
            Some("spectrum") => vibrate::spectrum(&board),
            Some("vibration-zones") => vibrate::zones(&board),
            Some(name) => match Face::from_picture(name) {
                Some(face) => instruments::face(&board, face, board.on_face(face, of)?),
                None => Err(PortrayError::UnknownPicture(name.to_owned())),
            },
            None => Err(PortrayError::UnknownPicture(name.to_owned())),
        }
    }
}

packed!(Portrait { id, system, values, view, read });

impl Packed for View {
    fn pack(&self, out: &mut String) {
        match self {
            Self::Machine => 0_u8.pack(out),
            Self::Solution(known) => (1_u8, known.clone()).pack(out),
            Self::Question { shown, asked } => (2_u8, (shown.clone(), asked.clone())).pack(out),
        }
    }

    fn unpack(from: &mut Reader<'_>) -> Self {
        match u8::unpack(from) {
            0 => Self::Machine,
            1 => Self::Solution(Vec::unpack(from)),
            _ => Self::Question { shown: Vec::unpack(from), asked: Vec::unpack(from) },
        }
    }
}

/// What a question has read off a face.
fn readings(question: &Question) -> Vec<QuantityId> {
    let read = |part: &Part| part.key().is_some_and(|key| key.path.steps.is_empty());
    question.parts.iter().filter(|part| read(part)).filter_map(Part::asked).collect()
}

/// One picture on the way: looks values and labels up by their ids.
struct Board<'a> {
    picture: &'static str,
    portrait: &'a Portrait,
}

impl Board<'_> {
    fn id(&self) -> String {
        self.portrait.id.clone()
    }

    fn system(&self) -> System {
        self.portrait.system
    }

    fn solved(&self) -> bool {
        !matches!(self.portrait.view, View::Question { .. })
    }

    /// Whether the picture is of a machine and of no question.
    fn whole(&self) -> bool {
        matches!(self.portrait.view, View::Machine)
    }

    /// The value (SI) of `quantity`, where the machine has one.
    fn value(&self, quantity: &str) -> Option<f64> {
        let id = Registry::get().find(quantity)?;
        Some(self.portrait.values[id.index()]).filter(|value| !value.is_nan())
    }

    /// The quantity to show on `face`: the one called `of`, else the first that is asked or told.
    fn on_face(&self, face: Face, of: Option<&str>) -> Result<QuantityId, PortrayError> {
        let fits = |id: &QuantityId| matches!(id.get().known, Known::Read(read) if Face::of(read) == Some(face));
        if let Some(of) = of {
            let found = Registry::get().find(of).filter(fits);
            return found.ok_or_else(|| PortrayError::NotOnFace { picture: self.picture, quantity: of.to_owned() });
        }
        let told = |id: &QuantityId| self.asks(id.get().id) || self.tells(id.get().id);
        let mut readings = self.portrait.read.iter().copied().chain(Registry::get().quantities().filter(told));
        readings.find(fits).ok_or(PortrayError::NoReading { picture: self.picture })
    }

    fn need(&self, quantity: &'static str) -> Result<f64, PortrayError> {
        self.value(quantity).ok_or(PortrayError::Missing { picture: self.picture, quantity })
    }

    /// Whether the learner is told `quantity`.
    fn tells(&self, quantity: &str) -> bool {
        let Some(id) = Registry::get().find(quantity) else { return false };
        match &self.portrait.view {
            View::Machine => self.value(quantity).is_some(),
            View::Solution(known) => known[id.index()] && self.value(quantity).is_some(),
            View::Question { shown, .. } => shown.contains(&id),
        }
    }

    /// Whether the learner has to find `quantity`.
    fn asks(&self, quantity: &str) -> bool {
        let Some(id) = Registry::get().find(quantity) else { return false };
        match &self.portrait.view {
            View::Machine | View::Solution(_) => false,
            View::Question { shown, asked } => asked.contains(&id) && !shown.contains(&id),
        }
    }

    /// The value to draw: `nominal` where a drawing to scale would tell what is asked.
    fn drawn(&self, quantity: &'static str, nominal: f64) -> Result<f64, PortrayError> {
        if self.asks(quantity) { Ok(nominal) } else { self.need(quantity) }
    }

    /// The value written out, `?` where it is asked, nothing where it is not told.
    fn label(&self, quantity: &str) -> Option<String> {
        if self.tells(quantity) {
            let id = Registry::get().find(quantity)?;
            return Some(amount::write(id.get(), self.value(quantity)?, self.system()));
        }
        self.asks(quantity).then(|| "?".to_owned())
    }

    fn finish(&self, drawing: Result<Figure, FigureError>) -> Result<Figure, PortrayError> {
        drawing.map_err(|cause| PortrayError::Figure { picture: self.picture, cause })
    }

    fn calculated<T>(&self, result: Result<T, drivecourse_calc::Error>) -> Result<T, PortrayError> {
        result.map_err(|cause| PortrayError::Calculation { picture: self.picture, cause })
    }
}
