//! Simulated apprentices: people with one habit each, for the demonstration and for the tests.

use drivecourse_machine::amount::{self, with_unit};
use drivecourse_machine::chance::Stream;
use drivecourse_machine::{Figures, Kind, QuantityId, Registry, System, Unit};

use crate::letter;
use crate::predict::{self, Cause};
use crate::question::{Body, Key, Part, Question, keys};

/// What a simulated apprentice does with every question.
#[derive(Debug, Clone, PartialEq)]
pub enum Habit {
    /// Works every step with all digits and writes four figures.
    Careful,
    /// Rounds every result on the way to three figures.
    RoundsOnTheWay,
    /// Takes this wrong turn wherever it comes up: relation id and turn id.
    WrongTurn(&'static str, &'static str),
    /// Takes some wrong turn, drawn anew for each part, with this probability.
    Careless(f64),
    /// Never changes a unit before putting a value into a formula.
    NeverConverts,
    /// Works in the other system's units and writes the number under this one's.
    OtherUnits,
    /// Gets the decimal point wrong by one place with this probability.
    LosesThePoint(f64),
    /// Leaves a part blank with this probability.
    RunsOutOfTime(f64),
}

/// What an apprentice with `habit` writes for the parts of `question`, carrying own results on.
pub fn answers(question: &Question, habit: &Habit, stream: &mut Stream) -> Vec<String> {
    let mut own: Vec<Option<f64>> = Vec::new();
    let mut out = Vec::new();
    for part in &question.parts {
        let (text, value) = answer(question, part, habit, stream, &own);
        own.push(value);
        out.push(text);
    }
    out
}

fn answer(
    question: &Question,
    part: &Part,
    habit: &Habit,
    stream: &mut Stream,
    own: &[Option<f64>],
) -> (String, Option<f64>) {
    // Drawn for every part, used or not, so that a habit's share never shifts the later parts.
    let (luck, choice) = (stream.unit(), stream.unit());
    if matches!(habit, Habit::RunsOutOfTime(share) if luck < *share) {
        return (String::new(), None);
    }
    match &part.body {
        Body::Quantity { asked, .. } => quantity(question, part, *asked, habit, luck, choice, own),
        Body::Order { right, .. } => {
            let mut places = right.clone();
            if matches!(habit, Habit::Careless(share) if luck < *share) {
                let at = (choice * (places.len() - 1) as f64) as usize;
                places.swap(at, at + 1);
            }
            (places.iter().map(|place| letter(*place).to_string()).collect::<Vec<_>>().join(" "), None)
        }
        Body::Pick { shown, right, .. } => {
            let wrong = matches!(habit, Habit::Careless(share) if luck < *share);
            let place =
                if wrong { (right + 1 + (choice * (shown.len() - 1) as f64) as usize) % shown.len() } else { *right };
            (letter(place).to_string(), None)
        }
    }
}

fn quantity(
    question: &Question,
    part: &Part,
    asked: QuantityId,
    habit: &Habit,
    luck: f64,
    choice: f64,
    own: &[Option<f64>],
) -> (String, Option<f64>) {
    let Some(key) = own_key(question, part, own) else { return (String::new(), None) };
    let foreseen = match &part.body {
        // A reading is misread as the question foresees it.
        Body::Quantity { predicted, .. } if key.path.steps.is_empty() => predicted.clone(),
        _ => predict::wrong_turns(&key, &part.own, &question.case.values, &question.within_reach, question.system),
    };
    let taken =
        |wanted: &dyn Fn(&Cause) -> bool| foreseen.iter().find(|wrong| wanted(&wrong.cause)).map(|wrong| wrong.value);
    let value = match habit {
        Habit::WrongTurn(relation, id) => taken(&|cause| {
            matches!(cause, Cause::Turn { relation: r, turn }
                if r.get().relation.id == *relation && r.get().turns()[*turn].id == *id)
        }),
        Habit::NeverConverts => taken(&|cause| matches!(cause, Cause::Unconverted { .. })),
        Habit::Careless(share) if luck < *share && !foreseen.is_empty() => {
            foreseen.get((choice * foreseen.len() as f64) as usize).map(|wrong| wrong.value)
        }
        Habit::LosesThePoint(share) if luck < *share && !whole(asked) => {
            Some(if choice < 0.5 { key.value * 10.0 } else { key.value / 10.0 })
        }
        Habit::RoundsOnTheWay => rounded_run(&key, question.system),
        _ => None,
    }
    .unwrap_or(key.value);
    (written(asked, value, question.system, matches!(habit, Habit::OtherUnits)), Some(value))
}

fn whole(asked: QuantityId) -> bool {
    matches!(asked.get().kind, Kind::Choice | Kind::Count)
}

/// The key from the apprentice's own earlier answers.
fn own_key(question: &Question, part: &Part, own: &[Option<f64>]) -> Option<Key> {
    let key = part.key()?;
    let mut values = key.values.clone();
    for (id, earlier) in &part.carried {
        values[id.index()] = own[*earlier]?;
    }
    keys(std::slice::from_ref(&key.path), &values, &part.carried, question.system).ok()?.into_iter().next()
}

fn rounded_run(key: &Key, system: System) -> Option<f64> {
    let mut values = key.values.clone();
    for step in &key.path.steps {
        let linked = step.get();
        let value = linked.eval(&values).ok()?;
        let unit = Registry::get().seeing(system)[linked.gives.index()].unit();
        values[linked.gives.index()] = if whole(linked.gives) {
            value
        } else {
            unit.to_base(Figures::Significant(3).round(unit.from_base(value)))
        };
    }
    Some(values[key.path.asked.index()])
}

/// `value` as a person would write it: four figures and the unit.
pub fn written(asked: QuantityId, value: f64, system: System, other_units: bool) -> String {
    let quantity = asked.get();
    if quantity.kind == Kind::Choice {
        return amount::choice(quantity, value).unwrap_or("?").to_owned();
    }
    let seeing = Registry::get().seeing(system)[asked.index()];
    let unit: &Unit = seeing.unit();
    let number_in: &Unit = match system {
        _ if !other_units => unit,
        System::Si => quantity.unit(System::Us),
        System::Us => quantity.unit(System::Si),
    };
    let figures = if quantity.kind == Kind::Count { Figures::Places(0) } else { Figures::Significant(4) };
    let number = number_in.from_base(value);
    // A small temperature still needs its tenths, and hundredths where it is worked out to them.
    let figures = match (quantity.kind, quantity.display(system).figures) {
        (Kind::Temperature | Kind::TemperatureRise, Figures::Places(places)) => Figures::Places(places.max(1)),
        (Kind::Temperature | Kind::TemperatureRise, _) => Figures::Places(1),
        _ => figures,
    };
    with_unit(&amount::number(number, figures), unit)
}
