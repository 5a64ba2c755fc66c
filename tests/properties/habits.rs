//! Apprentices with one habit each: what they do wrong is named in nearly all of their wrong answers.

use std::collections::BTreeSet;

use super::*;

/// Wrong answers of each topic.
const ANSWERS: usize = 1_000;
/// Least share of them in which the habit itself is named.
const NAMED: f64 = 0.97;

#[test]
fn a_habit_is_named_in_nearly_all_of_its_wrong_answers() {
    let bank = bank();
    let topics: BTreeSet<&str> = bank.items.iter().map(|item| item.topic.as_str()).collect();
    std::thread::scope(|scope| {
        for topic in topics {
            let bank = &bank;
            scope.spawn(move || {
                let systems = System::ALL.into_iter();
                let settings: Vec<_> =
                    systems.flat_map(|system| bank.settings(system, |item, _| item.topic == topic)).collect();
                let (mut answered, mut named) = (0, 0);
                for round in 0..400 {
                    for setting in &settings {
                        if answered < ANSWERS {
                            let (more, right) = answer_wrongly(&setting.question(round).unwrap(), round as usize);
                            answered += more;
                            named += right;
                        }
                    }
                }
                println!("{topic}: {named} of {answered} wrong answers named");
                // A topic of orders and statements alone has no calculation to go wrong.
                if answered > 0 {
                    assert!(named as f64 >= NAMED * answered as f64, "{topic}: {named} of {answered}");
                }
                assert!(answered >= ANSWERS || topic == "safety", "{topic}: only {answered} wrong answers");
            });
        }
    });
}

/// Answers each part of `question` with one habit, chosen by `number`: how many wrong answers, and in how many of them
/// that habit is what is named.
fn answer_wrongly(question: &Question, number: usize) -> (usize, usize) {
    let (mut answered, mut named) = (0, 0);
    for (index, part) in question.parts.iter().enumerate() {
        let Body::Quantity { asked, keys, predicted } = &part.body else { continue };
        let habits: Vec<_> = predicted
            .iter()
            .filter(|wrong| matches!(wrong.cause, Cause::Turn { .. } | Cause::Unconverted { .. }))
            .collect();
        if habits.is_empty() {
            continue;
        }
        let habit = habits[number % habits.len()];
        let choice = asked.get().kind == Kind::Choice;
        if choice && (habit.value == keys[0].value || amount::choice(asked.get(), habit.value).is_none()) {
            continue;
        }
        let mut answers = key_answers(question);
        answers[index] = written(*asked, habit.value, question.system, false);
        let texts: Vec<&str> = answers.iter().map(String::as_str).collect();
        let mark = &mark(question, &texts)[index];
        if mark.verdict == Verdict::Wrong {
            answered += 1;
            named += usize::from(mark.causes.contains(&habit.cause));
        }
    }
    (answered, named)
}
