//! Answers that are wrong as they were read, and right as they may be meant.
//!
//! Two of a person's habits give a number another meaning, and nothing on the sheet tells it: a point between thousands
//! where it parts decimals here (`129.000 h`, or a comma the other way round), and a share written without its % sign
//! (`3` for 3 %). Such an answer keeps its mark: an assessor is told of it and settles it. What would be wrong either
//! way is not told.

use drivecourse_machine::amount::{self, Amount, Wanted};
use drivecourse_machine::{Kind, Quantity, Unit};

use crate::mark::{Answer, is_right, read};
use crate::marking::{Marking, Written};
use crate::question::{Body, Question};

/// How the answer to part `index` of `question` may be meant, where it would be right: `129 000 h`. Nothing where no such
/// reading is right, or where it cannot be read at all. Only asked of answers that are not right as they were read.
pub(super) fn may_mean(question: &Question, index: usize, answers: &[Written], marking: &Marking) -> Option<String> {
    let part = &question.parts[index];
    let Body::Quantity { asked, .. } = &part.body else { return None };
    let quantity = asked.get();
    if quantity.kind == Kind::Choice {
        return None;
    }
    let text = answers.get(index)?.answer;
    let wanted = marking.wanted(*asked, question.system);
    let readings = readings(text, &wanted, quantity);
    if readings.is_empty() {
        return None;
    }
    // What the person worked on from.
    let own: Vec<Option<f64>> = (question.parts.iter().zip(answers).take(index))
        .map(|(part, written)| match read(part, question, written.answer, marking) {
            Ok(Some(Answer::Value { base, .. })) => Some(base),
            _ => None,
        })
        .collect();
    readings.iter().find(|amount| is_right(question, part, amount.base, &own)).map(Amount::as_read)
}

/// The other readings of `text`, likeliest first: the other decimal mark, the share with its sign or without it, both.
fn readings(text: &str, wanted: &Wanted, quantity: &Quantity) -> Vec<Amount> {
    let Ok(as_read) = amount::read(text, wanted) else { return Vec::new() };
    let mut out: Vec<Amount> = amount::with_other_mark(text, wanted, &as_read).into_iter().collect();
    // `1 : 50` is a share as it stands.
    if !as_read.unit_given && quantity.is_percent() && !text.contains(':') {
        let other = if as_read.unit.symbol == "%" { "" } else { "%" };
        let unit = Unit::find(Kind::Ratio, other);
        let in_other =
            |amount: &Amount| unit.map(|unit| Amount { base: unit.to_base(amount.written), unit, ..*amount });
        let with_unit: Vec<Amount> = std::iter::once(&as_read).chain(&out).filter_map(in_other).collect();
        out.extend(with_unit);
    }
    out
}

#[cfg(test)]
mod tests {
    use drivecourse_machine::System;
    use drivecourse_machine::amount::DecimalMark;

    use super::*;
    use crate::Setting;
    use crate::built_in;
    use crate::mark::{Verdict, mark};

    /// What the first of `answers` that is not right may mean, as an assessor is told it.
    fn told(question: &Question, index: usize, answer: &str) -> Option<String> {
        let written: Vec<String> = (0..question.parts.len())
            .map(|at| if at == index { answer.to_owned() } else { question.parts[at].right_answer(question.system) })
            .collect();
        let texts: Vec<&str> = written.iter().map(String::as_str).collect();
        if matches!(mark(question, &texts)[index].verdict, Verdict::Right | Verdict::Carried) {
            return None;
        }
        let written: Vec<Written> = texts.iter().map(|answer| Written { answer, steps: "" }).collect();
        may_mean(question, index, &written, &Marking::default())
    }

    /// `whole` with `mark` between its last three figures and those before.
    fn grouped(whole: i64, mark: char) -> String {
        format!("{}{mark}{:03}", whole / 1000, whole % 1000)
    }

    /// Over every built-in item, several machines of each: a right answer with a point between its thousands, with a
    /// comma before three decimals, or without its % sign is told with what is right; what is wrong either way never is.
    #[test]
    fn right_answers_written_the_other_way_are_told_and_no_others() {
        let bank = built_in::bank();
        let (mut points, mut commas, mut shares, mut asked) = (0, 0, 0, 0);
        for system in System::ALL {
            for item in &bank.items {
                let settings = bank.plans.iter().filter_map(|plan| Setting::new(item, plan, system).ok());
                let questions = settings.take(2).flat_map(|setting| {
                    (1..=3).filter_map(move |seed| setting.question(seed).ok()).collect::<Vec<_>>()
                });
                for question in questions.collect::<Vec<_>>() {
                    for index in 0..question.parts.len() {
                        let Some(key) = question.parts[index].key() else { continue };
                        let (id, value) = (key.path.asked, key.value);
                        if id.get().kind == Kind::Choice {
                            continue;
                        }
                        asked += 1;
                        let unit = id.get().unit(system);
                        let shown = unit.from_base(value);
                        let off = |number: f64| (unit.to_base(number) - value).abs();
                        let spaced = |number: &str| format!("{number} {}", unit.symbol);
                        let plain =
                            |told: Option<String>| told.map(|told| told.replace(['\u{a0}', '\u{202f}', ' '], ""));
                        let whole = shown.round() as i64;
                        if (1000..1_000_000).contains(&whole) && off(whole as f64) <= key.tolerance {
                            let answer = spaced(&grouped(whole, '.'));
                            // Where the tolerance is so wide that it is right as it stands, nothing is in doubt.
                            if off(whole as f64 / 1000.0) > key.tolerance {
                                let wanted = format!("{whole}{}", unit.symbol).replace(' ', "");
                                assert_eq!(
                                    plain(told(&question, index, &answer)).as_deref(),
                                    Some(&*wanted),
                                    "{answer}"
                                );
                                // Half of it again is no right answer, however it is read.
                                let wrong = spaced(&grouped(whole + whole / 2, '.'));
                                if off((whole + whole / 2) as f64) > 2.0 * key.tolerance {
                                    assert_eq!(told(&question, index, &wrong), None, "{wrong} for {shown}");
                                }
                                points += 1;
                            }
                        }
                        let thousandths = (shown * 1000.0).round() as i64;
                        let near = off(thousandths as f64 / 1000.0) <= key.tolerance;
                        if (1000..1_000_000).contains(&thousandths) && near && off(thousandths as f64) > key.tolerance {
                            let answer = spaced(&grouped(thousandths, ','));
                            let wanted = spaced(&grouped(thousandths, '.')).replace(' ', "");
                            assert_eq!(plain(told(&question, index, &answer)).as_deref(), Some(&*wanted), "{answer}");
                            commas += 1;
                        }
                        if id.get().is_percent() && shown.abs() > 0.01 && off(shown * 100.0) > key.tolerance {
                            let bare = amount::write(id.get(), value, system).replace(['%', '\u{a0}', ' '], "");
                            let answer = plain(told(&question, index, &bare));
                            if amount::read(&format!("{bare} %"), &Wanted::new(Kind::Ratio))
                                .is_ok_and(|read| (read.base - value).abs() <= key.tolerance)
                            {
                                assert_eq!(answer.as_deref(), Some(&*format!("{bare}%")), "{bare}");
                                assert_eq!(told(&question, index, &format!("{bare} %")), None, "right as it stands");
                                shares += 1;
                            }
                        }
                    }
                }
            }
        }
        assert!(
            points > 50 && commas > 50 && shares > 5,
            "{points} points, {commas} commas, {shares} shares of {asked}"
        );
    }

    #[test]
    fn every_other_reading_is_one_of_two_habits() {
        let share = Quantity::new("test.share", "s", Kind::Ratio, "share").shown(
            "%",
            drivecourse_machine::Figures::Places(1),
            "%",
            drivecourse_machine::Figures::Places(1),
        );
        let point = Wanted::new(Kind::Ratio);
        let comma = point.with_mark(DecimalMark::Comma);
        for (text, wanted, others) in [
            ("3", point, &[0.03][..]),
            ("3 %", point, &[]),
            ("1 : 50", point, &[]),
            ("1.250 %", point, &[12.5]),
            ("1.250", point, &[1250.0, 0.0125, 12.5]),
            ("1,250", point, &[1.25, 12.5, 0.0125]),
            ("1,250 %", comma, &[12.5]),
            // A group never begins with nought.
            ("0.125 %", comma, &[]),
            ("much", point, &[]),
        ] {
            let found: Vec<f64> = readings(text, &wanted, &share).iter().map(|amount| amount.base).collect();
            assert_eq!(found.len(), others.len(), "{text}: {found:?}");
            for (found, other) in found.iter().zip(others) {
                assert!((found - other).abs() < 1e-9, "{text}: {found} for {other}");
            }
        }
    }
}
