//! The desk: a bundle opened, answering one request after another.

use drivecourse_course::portray::Portrait;
use drivecourse_course::view::{self, capital};
use drivecourse_machine::System;
use drivecourse_machine::messages;
use drivecourse_machine::packed::{Packed, Reader};
use drivecourse_quiz::explain::cause_name;
use drivecourse_quiz::marking::Marking;
use drivecourse_quiz::progress::counts;
use drivecourse_quiz::{Bank, Item, Question, Setting, mark, setting};

use crate::away;
use crate::bundle::{Chapter, open_bank};
use crate::request::{Card, Face, Marked, Reply, Request, Sheet, Spot};
use crate::{json, progress};

messages! { pub(crate) SAYS {
    NOT_UNDERSTOOD = "desk-not-understood", "This request is not understood.";
    NO_PART = "desk-no-part", "There is no such part.";
    NO_QUESTION = "desk-no-question", "There is no such question in this course.";
    NO_MACHINE_FITS = "desk-no-machine-fits", "No machine of this course fits this question.";
    NO_MACHINE = "desk-no-machine", "There is no such machine in this course.";
    NO_FIT = "desk-no-fit", "This question does not fit this machine.";
    OTHER_UNITS = "desk-other-units", "This question is not asked in these units.";
} }

/// Questions kept at hand: the cards of a page that are worked at.
const KEPT: usize = 16;

/// A bundle opened.
#[derive(Debug)]
pub struct Desk {
    bank: &'static Bank,
    chapters: Vec<Chapter>,
    /// Items made ready for families; `None` where they do not fit.
    ready: Vec<((usize, usize, System), Option<Setting<'static>>)>,
    kept: Vec<(Spot, Vec<Question>)>,
}

impl Desk {
    /// Opens the words and bank of a bundle. A page opens one for as long as it is there: its bank is never given back.
    ///
    /// # Errors
    /// A sentence where the bundle cannot be used.
    pub fn open(bundle: &str) -> Result<Self, String> {
        let (bank, chapters) = open_bank(bundle)?;
        let bank: &'static Bank = Box::leak(Box::new(bank));
        Ok(Self { bank, chapters, ready: Vec::new(), kept: Vec::new() })
    }

    /// Answers a request, a packed list of words (see [`Request`]), with a [`Reply`] in JSON.
    pub fn answer(&mut self, request: &str) -> String {
        let mut reply = match Reader::new(request).read().and_then(Request::read) {
            _ if !away::is_connected(away::RELATIONS) => Reply::Needs(vec![away::name(away::RELATIONS)]),
            Some(request) => self.reply(request).unwrap_or_else(Reply::Error),
            None => Reply::Error(NOT_UNDERSTOOD.text().into()),
        };
        let lacking: Vec<String> = away::lacking().map(away::name).collect();
        if !lacking.is_empty() {
            // Whatever was made without them is not what it should be.
            self.ready.clear();
            self.kept.clear();
            reply = Reply::Needs(lacking);
        }
        json::write(&reply)
    }

    fn reply(&mut self, request: Request) -> Result<Reply, String> {
        Ok(match request {
            Request::Put { mut spot, id } => {
                self.settle(&mut spot)?;
                Reply::Card(Box::new(self.card(spot, &id)?))
            }
            Request::Read { spot, system, part, text } => {
                let question = self.face(&spot, system)?;
                let part = question.parts.get(part).ok_or(NO_PART.text())?;
                match mark::read(part, question, &text, &Marking::default()) {
                    Ok(None) => Reply::Read(String::new()),
                    Ok(Some(answer)) => Reply::Read(mark::read_as(part, &answer)),
                    Err(error) => Reply::Refused(error.to_string()),
                }
            }
            Request::Progress { now, noted } => Reply::Skills(progress::of(self.bank, &self.chapters, &noted, now)),
            Request::Mark { spot, system, answers } => {
                let skill = self.bank.items[self.item(&spot)?].skill.clone();
                let answers: Vec<&str> = answers.iter().map(String::as_str).collect();
                let marks = mark::mark(self.face(&spot, system)?, &answers);
                let counts = counts(&marks);
                let marked = marks.into_iter().map(|mark| Marked {
                    verdict: mark.verdict,
                    earned: mark.earned,
                    of: mark.of,
                    read_as: mark.read_as,
                    says: mark.says,
                    causes: mark.causes.iter().map(cause_name).collect(),
                });
                Reply::Marks(Sheet { marks: marked.collect(), skill, counts })
            }
        })
    }

    fn item(&self, spot: &Spot) -> Result<usize, String> {
        self.bank.item_place(&spot.item).ok_or_else(|| NO_QUESTION.text().into())
    }

    /// Fills in a family that fits: the one named, if it does.
    fn settle(&mut self, spot: &mut Spot) -> Result<(), String> {
        let place = self.item(spot)?;
        let item = &self.bank.items[place];
        let own: Vec<usize> = match item.families.as_slice() {
            [] => (0..self.bank.plans.len()).collect(),
            names => names.iter().filter_map(|name| self.bank.plan_place(name)).collect(),
        };
        let named = self.bank.plan_place(&spot.family).filter(|named| own.contains(named));
        for plan in named.into_iter().chain(own) {
            if spot.units.systems().iter().all(|system| self.setting(place, plan, *system).is_some()) {
                spot.family.clone_from(&self.bank.plans[plan].family.id);
                return Ok(());
            }
        }
        Err(NO_MACHINE_FITS.text().into())
    }

    fn setting(&mut self, item: usize, plan: usize, system: System) -> Option<&Setting<'static>> {
        let key = (item, plan, system);
        let place = self.ready.iter().position(|(other, _)| *other == key).unwrap_or_else(|| {
            // All but what depends on the units is made once.
            let other = self.ready.iter().find(|((other, at, _), _)| (*other, *at) == (item, plan));
            let made = match other {
                Some((_, made)) => made.as_ref().map(|made| made.in_system(system)),
                None => Setting::new(&self.bank.items[item], &self.bank.plans[plan], system).ok(),
            };
            self.ready.push((key, made));
            self.ready.len() - 1
        });
        self.ready[place].1.as_ref()
    }

    /// The questions of `spot`, one for each system, drawn once and kept.
    fn questions(&mut self, spot: &Spot) -> Result<&[Question], String> {
        if let Some(place) = self.kept.iter().position(|(kept, _)| kept == spot) {
            return Ok(&self.kept[place].1);
        }
        let item = self.item(spot)?;
        let plan = self.bank.plan_place(&spot.family).ok_or(NO_MACHINE.text())?;
        for system in spot.units.systems() {
            self.setting(item, plan, *system).ok_or(NO_FIT.text())?;
        }
        let ready = |system: &System| self.ready.iter().find(|(key, _)| *key == (item, plan, *system))?.1.as_ref();
        let settings: Vec<&Setting<'_>> = spot.units.systems().iter().filter_map(ready).collect();
        let questions = spot.case.questions(&settings).map_err(|_| NO_MACHINE_FITS.text().to_owned())?;
        if self.kept.len() == KEPT {
            self.kept.remove(0);
        }
        self.kept.push((spot.clone(), questions));
        // Something was pushed just now.
        Ok(self.kept.last().map_or(&[], |(_, questions)| questions))
    }

    fn face(&mut self, spot: &Spot, system: System) -> Result<&Question, String> {
        let questions = view::faces(self.questions(spot)?);
        let found = questions.iter().find(|question| question.system == system);
        found.ok_or_else(|| OTHER_UNITS.text().into())
    }

    fn card(&mut self, spot: Spot, id: &str) -> Result<Card, String> {
        let bank = self.bank;
        let item = &bank.items[self.item(&spot)?];
        let plan = &bank.plans[bank.plan_place(&spot.family).ok_or(NO_MACHINE.text())?];
        let shown = view::faces(self.questions(&spot)?);
        let faces = shown.iter().map(|question| face(item, question, id, shown.len() > 1)).collect();
        let (easier, harder) = beside(bank, item);
        Ok(Card {
            skill: item.skill.clone(),
            title: item.title.clone(),
            machine: capital(&plan.family.name),
            number: spot.case.seed.to_string(),
            easier,
            harder,
            faces,
            spot,
        })
    }
}

/// The items of the same skill next below and next above `item` in difficulty; those as hard stand in the course's order.
fn beside(bank: &Bank, item: &Item) -> (String, String) {
    let ranked = || {
        let skilled = bank.items.iter().enumerate().filter(|(_, other)| other.skill == item.skill);
        skilled.filter_map(|(place, other)| Some(((setting::difficulty_of(other)?, place), other)))
    };
    let Some((own, _)) = ranked().find(|(_, other)| other.id == item.id) else { return Default::default() };
    let (mut easier, mut harder): (Option<(_, &Item)>, Option<(_, &Item)>) = (None, None);
    for (rank, other) in ranked() {
        if rank < own && easier.is_none_or(|(best, _)| rank > best) {
            easier = Some((rank, other));
        }
        if rank > own && harder.is_none_or(|(best, _)| rank < best) {
            harder = Some((rank, other));
        }
    }
    let id = |found: Option<(_, &Item)>| found.map_or_else(String::new, |(_, item)| item.id.clone());
    (id(easier), id(harder))
}

fn face(item: &Item, question: &Question, id: &str, both: bool) -> Face {
    let code = question.system.code();
    let figure = |portrait: Portrait| {
        let mut out = String::new();
        item.figure.iter().for_each(|name| (name.clone(), portrait.clone()).pack(&mut out));
        out
    };
    let parts = 0..question.parts.len();
    Face {
        system: code,
        class: view::face_class(question.system, both),
        name: view::face_name(question.system, both),
        story: view::story(question),
        figure: figure(Portrait::of_question(&format!("{id}-{code}"), question)),
        solved_figure: figure(Portrait::of_solution(&format!("{id}-{code}-solved"), question)),
        givens: view::given_rows(question, None),
        parts: parts.clone().map(|index| view::part_row(question, index)).collect(),
        hints: parts.clone().map(|index| view::hint_rows(item, question, index)).collect(),
        solutions: parts.map(|index| view::solution_row(question, index, true)).collect(),
    }
}
