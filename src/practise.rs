//! `practise`: in the terminal, on a keyboard or from a pipe.

use anyhow::{Error, Result, bail};
use drivecourse_course::portray::Portrait;
use drivecourse_machine::chance::{Stream, derive};
use drivecourse_machine::{amount, messages};
use drivecourse_quiz::explain::{not_right, part_letter, skill_name};
use drivecourse_quiz::{Ask, Bank, Body, Mark, Part, Question, Setting, Verdict, hint, letter, mark};

use crate::assets::Assets;
use crate::solve::working_text;
use crate::terminal::Talk;
use crate::{bank, cli, words};

messages! { pub(crate) SAYS {
    CAUTION = "practise-caution", "These are numbers to practise with. On a real drive: isolate and lock out, verify zero energy,\nguards and protective equipment, and your site's rules and authorised people come first.";
    HELP = "practise-help", "Write an answer with its unit, or:  ? hint   = steps   - next   q stop";
    OF = "practise-of", "{number} of {all}: {title}";
    NO_HINT = "practise-no-hint", "There is no further hint; = shows the steps.";
    TODAY = "practise-today", "Today";
    NOTHING = "practise-nothing", "nothing was answered";
    COUNTS = "practise-counts", "{right} right, {wrong} wrong, {shown} shown, {passed} passed over";
    YOUR_ANSWER = "practise-your-answer", "your answer to {part}";
    LETTERS = "practise-letters", "Write the letters in the right order.";
    ANSWER_IS = "practise-answer-is", "The answer is {answer}.";
    READ_AS = "practise-read-as", "read as {answer}.";
} }

messages! { pub(crate) ERRORS {
    NO_QUESTION = "error-no-question", "the item {item} has no question about {family}: {reason}";
    NO_TOPIC = "error-no-practice-topic", "there is no topic {topic}{hint}";
    NOTHING_FITS = "error-nothing-fits", "no item fits all of that; leave out --topic, --item or --family";
} }

pub(crate) fn run(options: &cli::Practise, speech: &cli::Speech) -> Result<()> {
    let assets = words::begin(&options.module, speech)?;
    let bank = bank::load(&assets)?;
    let settings = choose(&assets, &bank, options)?;
    let mut session = Session { talk: Talk::new(), tally: Vec::new() };
    session.say(&format!("{}\n\n{}\n", CAUTION.text(), HELP.text()))?;
    let mut stream = Stream::new(options.seed, "practise");
    for number in 0..options.count {
        let setting = &settings[stream.below(settings.len())];
        let question = match setting.question(derive(options.seed, u64::from(number))) {
            Ok(question) => question,
            Err(reason) => {
                let (item, family) = (format!("{:?}", setting.item.id), format!("{:?}", setting.plan.family.id));
                bail!(NO_QUESTION.say(&[("item", &item), ("family", &family), ("reason", &format!("{reason:?}"))]))
            }
        };
        let (number, all) = ((number + 1).to_string(), options.count.to_string());
        let heading = OF.say(&[("number", &number), ("all", &all), ("title", &setting.item.title)]);
        let machine = question.machine_says().map_or_else(String::new, |says| says + "\n");
        session.say(&format!("\n{heading}\n{machine}{}\n", question.text))?;
        session.say(&picture(setting, &question))?;
        if !session.question(setting, &question)? {
            break;
        }
    }
    session.summary()
}

fn choose<'a>(assets: &Assets, bank: &'a Bank, options: &cli::Practise) -> Result<Vec<Setting<'a>>> {
    if let Some(family) = &options.family {
        bank::plan(assets, bank, family)?;
    }
    let topics: Vec<&str> = drivecourse_machine::topics::ALL.iter().map(|topic| topic.id).collect();
    if let Some(topic) = &options.topic
        && !topics.contains(&topic.as_str())
    {
        bail!(NO_TOPIC.say(&[("topic", &format!("{topic:?}")), ("hint", &hint(topic, topics.iter().copied()))]));
    }
    if let Some(item) = &options.item {
        bank.item(item).map_err(Error::msg)?;
    }
    let settings = bank.settings(bank::units(assets, options.units).unwrap_or_default(), |item, plan| {
        options.topic.as_ref().is_none_or(|topic| topic == &item.topic)
            && options.item.as_ref().is_none_or(|id| id == &item.id)
            && options.family.as_ref().is_none_or(|family| family == &plan.family.id)
    });
    if settings.is_empty() {
        bail!(NOTHING_FITS.text());
    }
    Ok(settings)
}

struct Session {
    talk: Talk,
    tally: Vec<(String, Outcome)>,
}

/// How a part came out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Outcome {
    Right,
    Wrong,
    /// The steps were asked for.
    Shown,
    /// Left for the next one.
    Passed,
}

impl Session {
    fn say(&mut self, text: &str) -> Result<()> {
        self.talk.say(text)
    }

    /// Puts every part; `false` when the person stops.
    fn question(&mut self, setting: &Setting, question: &Question) -> Result<bool> {
        let mut answers: Vec<String> = Vec::new();
        for (index, part) in question.parts.iter().enumerate() {
            self.say(&ask(question, part, index))?;
            let hints = hints(setting, part, index);
            let mut hint = 0;
            loop {
                let Some(text) = self.talk.line("> ")? else { return Ok(false) };
                match text.as_str() {
                    "q" => return Ok(false),
                    "?" => {
                        let shown = hints.get(hint).map_or(NO_HINT.text(), String::as_str);
                        self.say(&format!("  {shown}\n"))?;
                        hint += 1;
                    }
                    "=" => {
                        self.say(&steps(question, part))?;
                        self.count(setting, Outcome::Shown);
                        answers.push(String::new());
                        break;
                    }
                    "-" => {
                        self.count(setting, Outcome::Passed);
                        answers.push(String::new());
                        break;
                    }
                    "" => {}
                    _ => {
                        answers.push(text);
                        let texts: Vec<&str> = answers.iter().map(String::as_str).collect();
                        let mark = mark(question, &texts).swap_remove(index);
                        self.say(&verdict(&mark))?;
                        match mark.verdict {
                            Verdict::Right | Verdict::Carried => {
                                self.count(setting, Outcome::Right);
                                break;
                            }
                            Verdict::Wrong | Verdict::Partial => self.count(setting, Outcome::Wrong),
                            // Not readable, or no answer: nothing is counted, try again.
                            Verdict::WrongUnit | Verdict::Unreadable | Verdict::Blank => {}
                        }
                        answers.pop();
                    }
                }
            }
        }
        Ok(true)
    }

    fn count(&mut self, setting: &Setting, outcome: Outcome) {
        self.tally.push((setting.item.skill.clone(), outcome));
    }

    fn summary(&mut self) -> Result<()> {
        let mut skills: Vec<&str> = self.tally.iter().map(|(skill, _)| skill.as_str()).collect();
        skills.sort_unstable();
        skills.dedup();
        let mut text = format!("\n{}\n", TODAY.text());
        if skills.is_empty() {
            text.push_str(&format!("  {}\n", NOTHING.text()));
        }
        let width = skills.iter().map(|skill| skill_name(skill).chars().count()).max().unwrap_or(0).max(24);
        for skill in &skills {
            let count = |outcome| self.tally.iter().filter(|(other, came)| other == skill && *came == outcome).count();
            let words = [
                ("right", Outcome::Right),
                ("wrong", Outcome::Wrong),
                ("shown", Outcome::Shown),
                ("passed", Outcome::Passed),
            ]
            .map(|(place, outcome)| (place, count(outcome).to_string()));
            let words = words.each_ref().map(|(place, count)| (*place, count.as_str()));
            let skill = skill_name(skill);
            text.push_str(&format!("  {skill:<width$} {}\n", COUNTS.say(&words)));
        }
        self.say(&text)
    }
}

/// What the picture shows, in words, where something is to be read off it; else nothing.
fn picture(setting: &Setting, question: &Question) -> String {
    let reads = setting.item.parts.iter().any(|part| matches!(part.ask, Ask::Read(_)));
    let Some(name) = setting.item.figure.as_deref().filter(|_| reads) else { return String::new() };
    let drawn = Portrait::of_question("face", question).draw(name);
    drawn.map_or_else(|_| String::new(), |figure| format!("{}\n", figure.description))
}

fn ask(question: &Question, part: &Part, index: usize) -> String {
    let mut out = String::new();
    for (id, value) in &part.givens {
        out.push_str(&format!("  {}: {}\n", id.get().name, amount::write(id.get(), *value, question.system)));
    }
    for (id, earlier) in &part.carried {
        out.push_str(&format!(
            "  {}: {}\n",
            id.get().name,
            YOUR_ANSWER.say(&[("part", &format!("({})", part_letter(*earlier)))])
        ));
    }
    if question.parts.len() > 1 {
        out.push_str(&format!("({}) ", part_letter(index)));
    }
    out.push_str(&part.text);
    out.push('\n');
    for (place, option) in part.options().iter().enumerate() {
        out.push_str(&format!("  {}  {option}\n", letter(place)));
    }
    if matches!(part.body, Body::Order { .. }) {
        out.push_str(&format!("  {}\n", LETTERS.text()));
    }
    out
}

/// The item's own hints, then one for each step on the way.
fn hints(setting: &Setting, part: &Part, index: usize) -> Vec<String> {
    let mut hints = setting.item.parts[index].hints.clone();
    if let Some(key) = part.key() {
        hints.extend(key.path.steps.iter().map(|step| {
            let relation = step.get().relation;
            if relation.method.is_empty() {
                format!("{}.", relation.title)
            } else {
                format!("{}: {}", relation.title, relation.method)
            }
        }));
    }
    hints
}

fn steps(question: &Question, part: &Part) -> String {
    let steps = match (&part.body, part.key()) {
        (_, Some(key)) => working_text(&question.working(key)),
        (Body::Order { because, .. } | Body::Pick { because, .. }, None) => format!("  {because}\n"),
        _ => String::new(),
    };
    format!("{steps}\n  {}\n\n", ANSWER_IS.say(&[("answer", &part.right_answer(question.system))]))
}

fn verdict(mark: &Mark) -> String {
    let read =
        if mark.read_as.is_empty() { String::new() } else { format!("{} ", READ_AS.say(&[("answer", &mark.read_as)])) };
    // A wrong turn that is known says by itself that something is wrong.
    let plainly = mark.verdict == Verdict::Wrong && mark.causes.is_empty() && mark.says != not_right();
    let wrong = if plainly { format!("{} ", not_right()) } else { String::new() };
    format!("  {read}{wrong}{}\n", mark.says)
}
