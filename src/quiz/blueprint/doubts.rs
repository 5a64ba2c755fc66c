//! What is doubtful in an exam's file: it may be meant so, and seldom is.

use drivecourse_machine::{Problem, line_number, messages, read_toml};

use super::{Blueprint, File, Row};

messages! { pub(crate) SAYS {
    PASS_LOW = "problem-exam-pass-low", "Whoever has {pass} % of the marks passes this exam.";
    PASS_MEANT = "problem-exam-pass-meant", "Did you mean {meant} %? If it is meant so, leave it.";
    PASS_LOW_MEND = "problem-exam-pass-low-mend", "If it is meant so, leave it; 70 % is usual.";
    HURRY = "problem-exam-hurry", "{minutes} minutes for {questions} questions are less than one minute for each.";
    HURRY_MEND = "problem-exam-hurry-mend", "Give more time, or ask less. If it is meant so, leave it.";
    ROW_TWICE = "problem-exam-row-twice", "This row takes from the same questions as the one in line {line}.";
    ROW_TWICE_MEND = "problem-exam-row-twice-mend", "Take one of them out and write count = {count} in the other, or mend the one that is wrong.";
} }

/// A pass mark below this share is seldom meant; common practice, no source.
const LOW: f64 = 0.5;

impl Blueprint {
    /// What is doubtful in the exam of the file `text`; nothing where it cannot be read, which [`Self::read`] tells of.
    pub fn doubts(text: &str) -> Vec<Problem> {
        let (Ok(blueprint), Ok(file)) = (Self::read(text), read_toml::<File>(text)) else { return Vec::new() };
        let mut doubts = Vec::new();
        if blueprint.pass < LOW {
            let percent = |share: f64| ((share * 1e4).round() / 100.0).to_string();
            let meant = blueprint.pass * 10.0;
            let mend = match meant {
                // A nought was lost.
                LOW..=1.0 => PASS_MEANT.say(&[("meant", &percent(meant))]),
                _ => PASS_LOW_MEND.text().to_owned(),
            };
            let what = PASS_LOW.say(&[("pass", &percent(blueprint.pass))]);
            doubts.push(Problem::at(file.pass.span(), what, mend));
        }
        let questions = blueprint.questions();
        if (blueprint.minutes as usize) < questions {
            let words = [("minutes", blueprint.minutes.to_string()), ("questions", questions.to_string())];
            let what = HURRY.say(&words.each_ref().map(|(name, word)| (*name, word.as_str())));
            doubts.push(Problem::at(file.minutes.span(), what, HURRY_MEND.text()));
        }
        let apart = |row: &Row| Row { count: 0, span: 0..0, ..row.clone() };
        for (place, row) in blueprint.rows.iter().enumerate() {
            let Some(first) = blueprint.rows[..place].iter().find(|first| apart(first) == apart(row)) else { continue };
            let line = line_number(text, first.span.start);
            let mend = ROW_TWICE_MEND.say(&[("count", &(first.count + row.count).to_string())]);
            doubts.push(Problem::at(row.span.clone(), ROW_TWICE.say(&[("line", &line.to_string())]), mend));
        }
        doubts
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_seldom_meant_is_doubted_at_its_line() {
        let exam = |minutes: u32, pass: &str, last: &str| {
            format!(
                "title = \"x\"\nminutes = {minutes}\npass = \"{pass}\"\n[[row]]\ntopic = \"heat\"\ncount = 3\n\
                 [[row]]\nitem = \"lock\"\n{last}"
            )
        };
        let told = |text: &str| {
            let doubts = Blueprint::doubts(text);
            doubts.iter().map(|doubt| (doubt.line_column(text).unwrap().0, doubt.mend.clone())).collect::<Vec<_>>()
        };
        assert_eq!(told(&exam(60, "70 %", "")), []);
        assert_eq!(told(&exam(4, "50 %", "[[row]]\ntopic = \"chain\"\ncount = 0\n")), [], "what cannot be read");
        let slip = told(&exam(60, "7 %", ""));
        assert!(slip.len() == 1 && slip[0].0 == 3 && slip[0].1.contains("70 %"), "{slip:?}");
        assert!(told(&exam(60, "35 %", ""))[0].1.contains("70 % is usual"));
        assert_eq!(told(&exam(3, "70 %", ""))[0].0, 2);
        // With another weight it is another row.
        assert_eq!(told(&exam(60, "70 %", "[[row]]\ntopic = \"heat\"\ncount = 2\nweight = 2\n")), []);
        let twice = told(&exam(60, "70 %", "[[row]]\ntopic = \"heat\"\ncount = 2\n"));
        assert!(twice.len() == 1 && twice[0].0 == 10 && twice[0].1.contains("count = 5"), "{twice:?}");
    }
}
