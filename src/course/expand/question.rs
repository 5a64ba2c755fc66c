//! Cards from items and families: settings made once, one machine shown in both systems of units.

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

use serde::Serialize;
use toml::Spanned;

use drivecourse_machine::chance::derive;
use drivecourse_machine::{Plan, Problem, QuantityId, System, quoted, told};
use drivecourse_quiz::paper::why;
use drivecourse_quiz::{CaseName, Chosen, Item, Question, Setting, Unsettled};

use super::directive::{CardKeys, CheckKeys, FigureKeys, MachineKeys};
use super::whose::Whose;
use super::{
    EMPTY_MACHINE, EMPTY_QUIZ, NAME_ITEM, NO_FIT, NO_FIT_MEND, NO_MACHINE, NONE_OF_THEM, NONE_OF_THEM_MEND,
    OTHER_FAMILY, OTHER_FAMILY_MEND, OTHER_MACHINE, SEEDS, Sort, Spot, UNDRAWN, page, unknown,
};
use crate::card::Cards;
use crate::figures::Figure;
use crate::pages::PageError;
use crate::pages::model::Trusted;
use crate::portray::{Portrait, PortrayError};
use crate::reference::own_values;
use crate::view::{capital, face_class, face_name, faces, story};

/// Seeds tried for a machine that a picture can be drawn of.
const MOST_MACHINES: u64 = 40;

type Ready<'a> = Rc<Result<Setting<'a>, Unsettled>>;

/// Items, families and what has been made ready of them.
pub(super) struct Questions<'a> {
    items: &'a [Item],
    plans: &'a [Plan],
    /// The families that are the module's own.
    own: &'a BTreeSet<String>,
    cards: Cards<'a>,
    ready: RefCell<BTreeMap<(usize, usize, System), Ready<'a>>>,
}

#[derive(Serialize)]
struct Card<'a> {
    id: &'a str,
    level: u8,
    item: &'a str,
    family: &'a str,
    seed: u64,
    /// The name of its case: its seed, and more where its machine was chosen for several cards.
    case: String,
    /// Whether its machine was: such a card is not asked with other numbers.
    chosen: bool,
    units: &'static str,
    title: &'a str,
    machine: String,
    /// Whose it is, where the chapter says so here.
    whose: Option<Whose>,
    /// What the module's own families have laid down of what is worked out here by the usual rule.
    against: Vec<String>,
    faces: Vec<Face>,
}

/// A card in one system of units.
#[derive(Serialize)]
struct Face {
    class: &'static str,
    system: &'static str,
    name: &'static str,
    story: Vec<String>,
    figure: Option<Trusted>,
    solved_figure: Option<Trusted>,
    givens: Trusted,
    parts: Vec<Trusted>,
    hints: Vec<Trusted>,
    solutions: Vec<Trusted>,
}

/// What a card shows besides the question.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Show {
    Practice,
    Worked,
    Check,
}

/// An item about one machine, in each system of units wanted.
struct Put<'a> {
    item: &'a Item,
    plan: &'a Plan,
    case: CaseName,
    questions: Vec<Question>,
}

impl<'a> Questions<'a> {
    pub(super) fn new(items: &'a [Item], plans: &'a [Plan], own: &'a BTreeSet<String>, cards: Cards<'a>) -> Self {
        Self { items, plans, own, cards, ready: RefCell::default() }
    }

    /// One card by the template `name`.
    pub(super) fn card(&self, name: &str, keys: &CardKeys, spot: &Spot<'_>) -> Result<Trusted, Problem> {
        let put = self.put(&keys.item, keys.family.as_ref(), keys.seed, keys.units, spot.seed)?;
        let show = if name == "card-worked.html" { Show::Worked } else { Show::Practice };
        let mut card = self.dress(&put, show, &spot.id, spot.level).map_err(|problem| at(problem, &keys.item))?;
        card.whose = self.whose(&put, spot);
        page(self.cards.fill(name, &card))
    }

    /// A short quiz on several items.
    pub(super) fn self_check(&self, keys: &CheckKeys, spot: &Spot<'_>) -> Result<Trusted, Problem> {
        #[derive(Serialize)]
        struct Check<'a> {
            id: &'a str,
            level: u8,
            cards: Vec<Card<'a>>,
        }
        if keys.items.get_ref().is_empty() {
            return Err(Problem::at(keys.items.span(), told!(EMPTY_QUIZ), told!(NAME_ITEM)));
        }
        let names: Vec<String> =
            (1..=keys.items.get_ref().len()).map(|number| format!("{}-{number}", spot.id)).collect();
        let mut puts = Vec::new();
        for (place, item) in keys.items.get_ref().iter().enumerate() {
            let seed = derive(spot.seed, place as u64) % SEEDS;
            puts.push(self.put(item, None, None, keys.units, seed)?);
        }
        let mut cards = Vec::new();
        for ((put, id), item) in puts.iter().zip(&names).zip(keys.items.get_ref()) {
            cards.push(self.dress(put, Show::Check, id, spot.level).map_err(|problem| at(problem, item))?);
        }
        page(self.cards.fill("card-check.html", &Check { id: &spot.id, level: spot.level, cards }))
    }

    /// A practice card for each item, all about one machine.
    pub(super) fn one_machine(&self, keys: &MachineKeys, spot: &Spot<'_>) -> Result<Trusted, Problem> {
        if keys.items.get_ref().is_empty() {
            return Err(Problem::at(keys.items.span(), told!(EMPTY_MACHINE), told!(NAME_ITEM)));
        }
        let place = self.plan(&keys.family)?;
        let plan = &self.plans[place];
        let wanted = keys.faults.as_ref().map(|wanted| {
            let mut places: Vec<usize> = Vec::new();
            for fault in wanted {
                places.extend(faults(plan, Some(fault))?.unwrap_or_default());
            }
            places.sort_unstable();
            Ok::<_, Problem>(places)
        });
        let wanted = wanted.transpose()?.map(|places: Vec<usize>| {
            places.iter().map(|place| plan.family.faults[*place].id.clone()).collect::<Vec<_>>()
        });
        let mut html = String::new();
        for (number, name) in keys.items.get_ref().iter().enumerate() {
            let chosen = Chosen { place: number as u64, faults: wanted.clone() };
            let case = CaseName { seed: keys.seed, chosen: Some(chosen) };
            let ready = self.settle(self.item(name)?, place, keys.units);
            let questions = ready.and_then(|ready| {
                let settings: Result<Vec<_>, _> = ready.iter().map(|ready| ready.as_ref().as_ref()).collect();
                case.questions(&settings.map_err(Clone::clone)?)
            });
            let mend = || told!(OTHER_MACHINE);
            let questions = questions.map_err(|error| at(Problem { mend: mend(), ..unsettled(plan, &error) }, name))?;
            let put = Put { item: &self.items[self.item(name)?], plan, case, questions };
            let id = format!("{}-{}", spot.id, number + 1);
            let mut card = self.dress(&put, Show::Practice, &id, spot.level).map_err(|problem| at(problem, name))?;
            card.whose = self.whose(&put, spot);
            html.push_str(page(self.cards.fill("card.html", &card))?.as_str());
            html.push_str("\n\n");
        }
        Ok(Trusted::made_by_us(html))
    }

    /// A picture of one machine with everything labelled.
    pub(super) fn picture(&self, keys: &FigureKeys, spot: &Spot<'_>) -> Result<Trusted, Problem> {
        #[derive(Serialize)]
        struct Picture {
            faces: Vec<PictureFace>,
        }
        #[derive(Serialize)]
        struct PictureFace {
            class: &'static str,
            name: &'static str,
            figure: Trusted,
            table: Vec<(String, String)>,
        }
        let plans: Vec<&Plan> = match &keys.family {
            Some(family) => vec![&self.plans[self.plan(family)?]],
            None => self.plans.iter().collect(),
        };
        let wanted = systems(keys.units);
        let draw = |plan: &Plan, seed: u64| -> Result<Vec<(System, Figure)>, Problem> {
            let faults = faults(plan, keys.fault.as_ref())?;
            let case = plan.draw_with(seed, faults.as_deref());
            let case = case.map_err(|error| Problem::whole(error.to_string(), ""))?;
            let one = |system: &System| {
                let portrait = Portrait::of_case(&format!("{}-{}", spot.id, system.code()), &case, *system);
                let figure = portrait.draw(keys.name.get_ref()).map_err(|error| undrawn(&error))?;
                Ok((*system, figure))
            };
            wanted.iter().map(one).collect()
        };
        // A machine with nothing to draw (a foot without a gap) is passed over, unless the author chose it.
        let seeds: Vec<u64> = match keys.seed {
            Some(seed) => vec![seed],
            None => (0..MOST_MACHINES)
                .map(|again| if again == 0 { spot.seed } else { derive(spot.seed, again) % SEEDS })
                .collect(),
        };
        // The first family that has what the picture needs; if none has, the first one's problem is told.
        let mut first = None;
        for plan in plans {
            let mut drawn = draw(plan, seeds[0]);
            for seed in &seeds[1..] {
                if drawn.is_ok() {
                    break;
                }
                drawn = draw(plan, *seed);
            }
            match drawn {
                Ok(drawn) => {
                    let both = drawn.len() > 1;
                    let face = |(system, figure): (System, Figure)| {
                        let caption = if keys.caption.is_empty() { &figure.title } else { &keys.caption };
                        Ok(PictureFace {
                            class: face_class(system, both),
                            name: face_name(system, both),
                            figure: self.cards.figure_html(&figure, caption)?,
                            table: figure.table,
                        })
                    };
                    let faces: Result<_, PageError> = drawn.into_iter().map(face).collect();
                    return page(faces.and_then(|faces| self.cards.fill("card-picture.html", &Picture { faces })));
                }
                Err(problem) => first = first.or(Some(problem)),
            }
        }
        Err(at(first.unwrap_or_else(|| Problem::whole(told!(NO_MACHINE), "")), &keys.name))
    }

    /// Puts the item called `item` about one machine.
    fn put(
        &self,
        item: &Spanned<String>,
        family: Option<&Spanned<String>>,
        seed: Option<u64>,
        units: Option<System>,
        usual_seed: u64,
    ) -> Result<Put<'a>, Problem> {
        let place = self.item(item)?;
        let (plan, ready) = match family {
            Some(family) => {
                let plan = self.plan(family)?;
                let allowed = &self.items[place].families;
                if !allowed.is_empty() && !allowed.contains(family.get_ref()) {
                    return Err(Problem::at(
                        family.span(),
                        told!(OTHER_FAMILY, "item" = quoted(item.get_ref()), "family" = quoted(family.get_ref())),
                        told!(OTHER_FAMILY_MEND, "families" = allowed.join(", ")),
                    ));
                }
                let ready = self.settle(place, plan, units);
                (plan, ready.map_err(|error| at(unsettled(&self.plans[plan], &error), family))?)
            }
            None => self.first_settled(place, units).map_err(|problem| at(problem, item))?,
        };
        let case = CaseName::own(seed.unwrap_or(usual_seed));
        let settings: Result<Vec<_>, Unsettled> =
            ready.iter().map(|ready| ready.as_ref().as_ref().map_err(Clone::clone)).collect();
        let questions = settings
            .and_then(|settings| case.questions(&settings))
            .map_err(|error| at(unsettled(&self.plans[plan], &error), item))?;
        Ok(Put { item: &self.items[place], plan: &self.plans[plan], case, questions })
    }

    fn item(&self, item: &Spanned<String>) -> Result<usize, Problem> {
        (self.items.iter().position(|known| known.id == *item.get_ref()))
            .ok_or_else(|| unknown(item, Sort::Item, self.items.iter().map(|item| item.id.as_str())))
    }

    fn plan(&self, family: &Spanned<String>) -> Result<usize, Problem> {
        (self.plans.iter().position(|plan| plan.family.id == *family.get_ref()))
            .ok_or_else(|| unknown(family, Sort::Family, self.plans.iter().map(|plan| plan.family.id.as_str())))
    }

    /// The first family, in the item's own order or the course's, that settles the item.
    fn first_settled(&self, item: usize, units: Option<System>) -> Result<(usize, Vec<Ready<'a>>), Problem> {
        let wanted = &self.items[item].families;
        let plans: Vec<usize> = if wanted.is_empty() {
            (0..self.plans.len()).collect()
        } else {
            wanted.iter().filter_map(|name| self.plans.iter().position(|plan| plan.family.id == *name)).collect()
        };
        let mut first = None;
        for plan in plans {
            match self.settle(item, plan, units) {
                Ok(ready) => return Ok((plan, ready)),
                Err(error) => first = first.or(Some(unsettled(&self.plans[plan], &error))),
            }
        }
        Err(first.unwrap_or_else(|| Problem::whole(told!(NONE_OF_THEM), told!(NONE_OF_THEM_MEND))))
    }

    /// The item made ready for a family in each system of units wanted.
    fn settle(&self, item: usize, plan: usize, units: Option<System>) -> Result<Vec<Ready<'a>>, Unsettled> {
        let mut out: Vec<Ready<'a>> = Vec::new();
        for system in systems(units) {
            let mut ready = self.ready.borrow_mut();
            let made = ready.entry((item, plan, *system)).or_insert_with(|| {
                Rc::new(match out.first().map(AsRef::as_ref) {
                    Some(Ok(other)) => Ok(other.in_system(*system)),
                    _ => Setting::new(&self.items[item], &self.plans[plan], *system),
                })
            });
            if let Err(error) = made.as_ref() {
                return Err(error.clone());
            }
            out.push(Rc::clone(made));
        }
        Ok(out)
    }

    /// Whose the machine of a card is, where that is said at `spot`; nothing where the card has no number of it.
    fn whose(&self, put: &Put<'_>, spot: &Spot<'_>) -> Option<Whose> {
        let mut parts = put.questions.iter().flat_map(|question| &question.parts);
        let has_numbers = parts.any(|part| !part.givens.is_empty() || part.asked().is_some());
        spot.said.filter(|_| has_numbers)?.first(Whose::of(put.plan, self.own))
    }

    /// What the module's own families state of the quantities that a card about another machine asks for or works out: the rule
    /// that is practised here is not the plant's.
    fn against(&self, put: &Put<'_>) -> Vec<String> {
        if self.own.contains(&put.plan.family.id) {
            return Vec::new();
        }
        let parts = put.questions.iter().flat_map(|question| &question.parts);
        let keys = parts.filter_map(|part| part.key());
        let worked: BTreeSet<QuantityId> =
            keys.flat_map(|key| key.path.steps.iter().map(|step| step.get().gives)).collect();
        own_values(self.plans.iter().filter(|plan| self.own.contains(&plan.family.id)), |id| worked.contains(&id))
    }

    fn dress<'c>(&self, put: &'c Put<'a>, show: Show, id: &'c str, level: u8) -> Result<Card<'c>, Problem> {
        let shown = faces(&put.questions);
        let faces = shown
            .iter()
            .map(|question| self.face(put.item, question, show, id, shown.len() > 1))
            .collect::<Result<_, _>>()?;
        Ok(Card {
            id,
            level,
            item: &put.item.id,
            family: &put.plan.family.id,
            seed: put.case.seed,
            case: put.case.to_string(),
            chosen: put.case.chosen.is_some(),
            units: if let [only] = put.questions.as_slice() { only.system.code() } else { "both" },
            title: &put.item.title,
            machine: capital(&put.plan.family.name),
            whose: None,
            against: self.against(put),
            faces,
        })
    }

    fn face(&self, item: &Item, question: &Question, show: Show, id: &str, both: bool) -> Result<Face, Problem> {
        let code = question.system.code();
        let draw = |portrait: Portrait| -> Result<Option<Trusted>, Problem> {
            let Some(name) = &item.figure else { return Ok(None) };
            let figure = portrait.draw(name).map_err(|error| undrawn(&error))?;
            page(self.cards.figure_html(&figure, "")).map(Some)
        };
        let figure = match show {
            Show::Worked => None,
            _ => draw(Portrait::of_question(&format!("{id}-{code}"), question))?,
        };
        let solved_figure = match show {
            Show::Check => None,
            _ => draw(Portrait::of_solution(&format!("{id}-{code}-solved"), question))?,
        };
        let parts = 0..question.parts.len();
        let each = |html: &dyn Fn(usize) -> Result<Trusted, PageError>| {
            page(parts.clone().map(html).collect::<Result<Vec<_>, _>>())
        };
        Ok(Face {
            class: face_class(question.system, both),
            system: code,
            name: face_name(question.system, both),
            story: story(question),
            figure,
            solved_figure,
            givens: page(self.cards.givens_table(question, None))?,
            parts: each(&|index| self.cards.part_html(question, index))?,
            hints: if show == Show::Practice {
                each(&|index| self.cards.hints_html(item, question, index))?
            } else {
                Vec::new()
            },
            solutions: each(&|index| self.cards.solution_html(question, index, show == Show::Practice))?,
        })
    }
}

/// The faults a picture's machine must have: `None` leaves them to the family, `"none"` asks for a healthy one.
fn faults(plan: &Plan, wanted: Option<&Spanned<String>>) -> Result<Option<Vec<usize>>, Problem> {
    let Some(wanted) = wanted else { return Ok(None) };
    if wanted.get_ref() == "none" {
        return Ok(Some(Vec::new()));
    }
    let known = plan.family.faults.iter();
    match known.clone().position(|fault| fault.id == *wanted.get_ref()) {
        Some(place) => Ok(Some(vec![place])),
        None => Err(unknown(wanted, Sort::Fault, known.map(|fault| fault.id.as_str()))),
    }
}

fn systems(units: Option<System>) -> &'static [System] {
    match units {
        None => &System::ALL,
        Some(System::Si) => &[System::Si],
        Some(System::Us) => &[System::Us],
    }
}

/// `problem` at the place of `written`, unless it has a place.
fn at(mut problem: Problem, written: &Spanned<String>) -> Problem {
    problem.span.get_or_insert(written.span());
    problem
}

fn undrawn(error: &PortrayError) -> Problem {
    Problem::whole(told!(UNDRAWN, "why" = error.to_string()), "")
}

/// Why an item cannot be put about a family, and what to do about it.
fn unsettled(plan: &Plan, error: &Unsettled) -> Problem {
    Problem::whole(told!(NO_FIT, "family" = quoted(&plan.family.id), "why" = why(error)), told!(NO_FIT_MEND))
}
