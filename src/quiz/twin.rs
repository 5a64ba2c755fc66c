//! One machine asked about in several systems of units at once, as a course page shows it.

use drivecourse_machine::Case;
use drivecourse_machine::chance::derive;
use drivecourse_machine::messages;
use drivecourse_machine::told;

use crate::question::Question;
use crate::setting::{NOT_DRAWN, Setting, Unsettled};

messages! { pub(crate) SAYS {
    NO_RESULT = "problem-machine-calculation", "a calculation has no result";
} }

/// How many machines are tried for discriminating numbers before the least bad one is taken.
const MOST_TRIES: u64 = 60;
/// Tries in which every wrong turn counts, harmless over the family or not.
const PLAIN_TRIES: u64 = 4;
/// Tries after which two wrong turns with the same answer are put up with.
const PAIR_TRIES: u64 = 12;

/// The questions of `seed`, one for each of `settings`, all about the same machine.
///
/// The settings are one item and family in different systems of units. Numbers in which a wrong turn would land inside
/// the tolerance in any of them are drawn again in all. For a single setting this is [`Setting::question`].
///
/// # Errors
/// As [`Setting::question`].
pub fn twins(settings: &[&Setting<'_>], seed: u64) -> Result<Vec<Question>, Unsettled> {
    let mut best: Option<(u32, Vec<Question>)> = None;
    let mut last = None;
    for attempt in 0..MOST_TRIES {
        let machine = derive(seed, attempt);
        // The settings differ in their units alone: one machine serves them all.
        let Some(first) = settings.first() else { return Ok(Vec::new()) };
        let drawn = first.machine(machine).and_then(|case| {
            settings.iter().map(|setting| setting.ask(case.clone(), machine, seed)).collect::<Result<Vec<_>, _>>()
        });
        let mut questions = match drawn {
            Ok(questions) => questions,
            Err(error) => {
                last = Some(error);
                continue;
            }
        };
        // Most items soon meet a machine that is clear as it stands; only when none of the first few
        // is, it is worth finding out which wrong turns are harmless over the whole family.
        let clear = questions.iter().all(|question| question.blurred(None) == (0, 0));
        if !clear && attempt < PLAIN_TRIES {
            continue;
        }
        let (inside, pairs) = match clear {
            true => (0, 0),
            false => (questions.iter().zip(settings))
                .map(|(question, setting)| question.blurred(Some(setting.harmless())))
                .fold((0, 0), |(inside, pairs), (more, likewise)| (inside + more, pairs + likewise)),
        };
        let good = inside == 0 && (pairs == 0 || attempt >= PAIR_TRIES);
        let penalty = inside * 100 + pairs;
        let better = best.as_ref().is_none_or(|(least, _)| penalty < *least);
        // Only a machine that may be kept is worked out whole.
        if (good || better) && !complete(settings, &mut questions) {
            last = Some(Unsettled::NoMachine(told!("{}", NO_RESULT.text())));
            continue;
        }
        if good {
            return Ok(finish(settings, questions));
        }
        if better {
            best = Some((penalty, questions));
        }
    }
    match best {
        Some((_, questions)) => Ok(finish(settings, questions)),
        None => Err(last.unwrap_or_else(|| Unsettled::NoMachine(told!("{}", NOT_DRAWN.text())))),
    }
}

/// Questions about one given machine, one for each of `settings`: several items can then follow one machine from
/// reading to reading. `seed` names the questions and shuffles what is chosen from.
///
/// # Errors
/// [`Unsettled::NoMachine`] where the machine does not keep an item's bounds or faults, or a step has no result for it.
pub fn about(settings: &[&Setting<'_>], case: &Case, seed: u64) -> Result<Vec<Question>, Unsettled> {
    for setting in settings {
        setting.suits(case)?;
    }
    let questions = settings.iter().map(|setting| setting.ask(case.clone(), seed, seed)).collect::<Result<_, _>>()?;
    Ok(finish(settings, questions))
}

fn complete(settings: &[&Setting<'_>], questions: &mut [Question]) -> bool {
    settings.iter().zip(questions).all(|(setting, question)| setting.complete(question))
}

/// The numbers are chosen: what still lies inside the tolerance is no wrong turn in this question.
fn finish(settings: &[&Setting<'_>], mut questions: Vec<Question>) -> Vec<Question> {
    questions.iter_mut().for_each(Question::drop_idle);
    settings.iter().zip(questions).map(|(setting, question)| setting.put_in_words(question)).collect()
}
