//! `enter`: answers from paper typed in, each read back at once.
//!
//! Nothing of a key is shown: only how an answer was read. The response file is written whole after each answer, so
//! that stopping anywhere loses nothing, and the next run goes on at the first blank part.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result, bail};
use drivecourse_machine::messages;
use drivecourse_quiz::explain::part_letter;
use drivecourse_quiz::mark::{Answer, read};
use drivecourse_quiz::response::Template;
use drivecourse_quiz::{Body, Code, Exam, Paper, Part, Question, Responses, Written, letter};

use crate::terminal::{Talk, clean};
use crate::{bank, cli, files, papers, words};

messages! { pub(crate) SAYS {
    HELP = "enter-help", "Type each answer as it is written, with its unit.  - leave blank   < back   @3b go to 3 (b)   ? show the question\n!text take it as it stands   q stop.  An empty line keeps what is there. Everything is saved after each answer.";
    TAKEN_ONE = "enter-taken-one", "{count} answer taken down in {file}";
    TAKEN = "enter-taken", "{count} answers taken down in {file}";
    PAPER_CODE = "enter-paper-code", "Paper code:";
    NO_PAPER = "enter-no-paper", "There is no paper {code} in this exam.";
    WAS_MEANT = "enter-was-meant", "Was {code} meant?";
    PAPER_OF = "enter-paper-of", "Paper {code} of {name}: {answered} of {all} answers are there.";
    LAST_ANSWER = "enter-last-answer", "That was the last answer of paper {code}.";
    LEFT_BLANK = "enter-left-blank", "left blank";
    NO_PLACE = "enter-no-place", "There is no {place} on this paper; write @3b for 3 (b), say.";
    READ_AS = "enter-read-as", "read as {answer}";
    AS_IT_STANDS = "enter-as-it-stands", "taken as it stands, though it cannot be read: {why}";
    AGAIN = "enter-again", "Type it again, or !{answer} to take it as it stands.";
    ON_THE_WAY = "enter-on-the-way", "results on the way, with ; between:";
} }

messages! { pub(crate) ERRORS {
    WOULD_LOSE = "error-would-lose-rows", "{file} would lose rows if it were written again; mend it, or choose another file with --out:\n{notices}";
} }

/// What was typed for a question and part of a paper: answer, results on the way.
type Typed = BTreeMap<(usize, usize, usize), (String, String)>;

pub(crate) fn run(options: &cli::Enter, speech: &cli::Speech) -> Result<()> {
    let (exam, assets) = words::begin_exam(&options.module, speech, &options.exam)?;
    let bank = bank::load(&assets)?;
    let settings = exam.settings(&bank);
    let made: Result<Vec<Paper>, _> = exam.papers.iter().map(|record| exam.paper(record, &settings)).collect();
    let folder = if options.exam.is_file() { options.exam.parent().unwrap_or(Path::new("")) } else { &options.exam };
    let file = options.out.clone().unwrap_or_else(|| folder.join(papers::RESPONSES));
    let typed = earlier(&exam, &file)?;
    let mut desk = Desk { exam: &exam, papers: made?, file, typed, talk: Talk::new() };
    desk.talk.say(&format!("{}\n", HELP.text()))?;
    let count = desk.sit()?;
    let taken = if count == 1 { TAKEN_ONE } else { TAKEN };
    let taken = taken.say(&[("count", &count.to_string()), ("file", &desk.file.display().to_string())]);
    desk.talk.say(&format!("{taken}\n"))
}

/// What the response file holds already.
fn earlier(exam: &Exam, file: &Path) -> Result<Typed> {
    let mut typed = Typed::new();
    if !file.exists() {
        return Ok(typed);
    }
    let bytes = std::fs::read(file).with_context(|| files::cannot_read(file))?;
    let mut responses = Responses::new(exam);
    responses.add(&file.display().to_string(), &bytes);
    let lost: Vec<String> =
        responses.notices.iter().filter(|notice| notice.lost).map(|n| clean(&n.to_string())).collect();
    if !lost.is_empty() {
        bail!(WOULD_LOSE.say(&[("file", &file.display().to_string()), ("notices", &lost.join("\n"))]));
    }
    for (place, record) in exam.papers.iter().enumerate() {
        for (question, reference) in record.questions.iter().enumerate() {
            let answers = responses.answers(record.code, question, reference.parts);
            for (part, Written { answer, steps }) in answers.into_iter().enumerate() {
                if !answer.is_empty() || !steps.is_empty() {
                    typed.insert((place, question, part), (answer.to_owned(), steps.to_owned()));
                }
            }
        }
    }
    Ok(typed)
}

struct Desk<'a> {
    exam: &'a Exam,
    papers: Vec<Paper<'a>>,
    file: PathBuf,
    typed: Typed,
    talk: Talk,
}

/// What a line says about where to go on.
enum Go {
    On,
    Back,
    Stay,
    To(usize),
    Stop,
    End,
}

impl Desk<'_> {
    /// Paper after paper; how many answers were taken down.
    fn sit(&mut self) -> Result<usize> {
        let mut count = 0;
        let mut last = None;
        loop {
            let Some(text) = self.talk.line(&format!("\n{} ", PAPER_CODE.text()))? else { return Ok(count) };
            if text.is_empty() || text == "q" {
                return Ok(count);
            }
            if let ("<", Some(place)) = (text.as_str(), last) {
                if !self.paper(place, true, &mut count)? {
                    return Ok(count);
                }
                continue;
            }
            let codes = || self.exam.papers.iter().map(|record| record.code);
            let found = Code::read(&text);
            let place = found.as_ref().ok().and_then(|code| codes().position(|other| other == *code));
            match (place, found) {
                (Some(place), _) => {
                    last = Some(place);
                    if !self.paper(place, false, &mut count)? {
                        return Ok(count);
                    }
                }
                (None, Ok(code)) => {
                    self.talk.say(&format!("  {}\n", NO_PAPER.say(&[("code", &code.to_string())])))?;
                }
                (None, Err(error)) => {
                    let meant = Code::meant(&text, codes());
                    let meant = meant
                        .map_or_else(String::new, |code| format!(" {}", WAS_MEANT.say(&[("code", &code.to_string())])));
                    self.talk.say(&format!("  {error}{meant}\n"))?;
                }
            }
        }
    }

    /// One paper, from its first blank part or, where it was the last one and is not done after all, from its last
    /// part; `false` at the end of the input.
    fn paper(&mut self, paper: usize, again: bool, count: &mut usize) -> Result<bool> {
        let places: Vec<(usize, usize)> = (self.papers[paper].questions.iter().enumerate())
            .flat_map(|(question, placed)| (0..placed.question.parts.len()).map(move |part| (question, part)))
            .collect();
        let blank = |typed: &Typed| places.iter().position(|(q, p)| !typed.contains_key(&(paper, *q, *p)));
        let answered = places.iter().filter(|(q, p)| self.typed.contains_key(&(paper, *q, *p))).count();
        let mut at = if again { places.len().saturating_sub(1) } else { blank(&self.typed).unwrap_or(0) };
        let name = clean(&self.papers[paper].candidate.name);
        let (code, all) = (self.papers[paper].code.to_string(), places.len().to_string());
        let words = [("code", code.as_str()), ("name", &name), ("answered", &answered.to_string()), ("all", &all)];
        self.talk.say(&format!("  {}\n", PAPER_OF.say(&words)))?;
        while let Some((question, part)) = places.get(at) {
            match self.part(paper, *question, *part, &places, count)? {
                Go::On => at += 1,
                Go::Back => at = at.saturating_sub(1),
                Go::Stay => {}
                Go::To(place) => at = place,
                Go::Stop => return Ok(true),
                Go::End => return Ok(false),
            }
        }
        self.talk.say(&format!("  {}\n", LAST_ANSWER.say(&[("code", &code)])))?;
        Ok(true)
    }

    fn part(
        &mut self,
        paper: usize,
        question: usize,
        part: usize,
        places: &[(usize, usize)],
        count: &mut usize,
    ) -> Result<Go> {
        let key = (paper, question, part);
        let there = self.typed.get(&key).map_or_else(String::new, |typed| format!(" [{}]", clean(&typed.0)));
        let Some(text) = self.talk.line(&format!("{} ({}){there}: ", question + 1, part_letter(part)))? else {
            return Ok(Go::End);
        };
        match text.as_str() {
            "" => return Ok(Go::On),
            "<" => return Ok(Go::Back),
            "q" => return Ok(Go::Stop),
            "?" => {
                let shown = asked(&self.papers[paper].questions[question].question, part);
                self.talk.say(&shown)?;
                return Ok(Go::Stay);
            }
            "-" => {
                if self.typed.remove(&key).is_some() {
                    self.save()?;
                }
                self.talk.say(&format!("  {}\n", LEFT_BLANK.text()))?;
                return Ok(Go::On);
            }
            _ => {}
        }
        if let Some(name) = text.strip_prefix('@') {
            let place = places.iter().position(|(q, p)| is_place(name, *q, *p));
            if place.is_none() {
                let place = format!("{:?}", clean(name));
                self.talk.say(&format!("  {}\n", NO_PLACE.say(&[("place", &place)])))?;
            }
            return Ok(place.map_or(Go::Stay, Go::To));
        }
        let (answer, as_it_stands) = match text.strip_prefix('!') {
            Some(rest) => (rest.trim().to_owned(), true),
            None => (text, false),
        };
        let marking = self.exam.blueprint.marking;
        let asking = &self.papers[paper].questions[question].question;
        let says = match read(&asking.parts[part], asking, &answer, &marking) {
            Ok(Some(read)) => READ_AS.say(&[("answer", &shown(&asking.parts[part], &read))]),
            Ok(None) => return Ok(Go::Stay),
            Err(error) if as_it_stands => AS_IT_STANDS.say(&[("why", &error.to_string())]),
            Err(error) => {
                let again = AGAIN.say(&[("answer", &clean(&answer))]);
                self.talk.say(&format!("  {}\n  {again}\n", clean(&error.to_string())))?;
                return Ok(Go::Stay);
            }
        };
        let several = asking.parts[part].key().is_some_and(|key| key.path.steps.len() > 1);
        self.talk.say(&format!("  {}\n", clean(&says)))?;
        let mut steps = self.typed.get(&key).map_or_else(String::new, |typed| typed.1.clone());
        if marking.asks_steps() && several {
            match self.talk.line(&format!("  {} ", ON_THE_WAY.text()))? {
                Some(text) if text == "-" => steps.clear(),
                Some(text) if !text.is_empty() => steps = text,
                _ => {}
            }
        }
        self.typed.insert(key, (answer, steps));
        *count += 1;
        self.save()?;
        Ok(Go::On)
    }

    /// Writes the response file whole.
    fn save(&self) -> Result<()> {
        let mut template = Template::new(self.exam.blueprint.marking.asks_steps());
        for (place, paper) in self.papers.iter().enumerate() {
            template.add_answered(paper, |question, part| match self.typed.get(&(place, question, part)) {
                Some((answer, steps)) => Written { answer, steps },
                None => Written::default(),
            });
        }
        files::write(&self.file, template.finish().as_bytes())
    }
}

/// `3b`, `3 (b)`, and `3` for its first part.
fn is_place(name: &str, question: usize, part: usize) -> bool {
    let plain: String = name.chars().filter(char::is_ascii_alphanumeric).collect::<String>().to_ascii_lowercase();
    let letter = part_letter(part);
    plain == format!("{}{letter}", question + 1) || (part == 0 && plain == (question + 1).to_string())
}

/// How an answer was read, in words that can be held against the paper.
fn shown(part: &Part, answer: &Answer) -> String {
    match (answer, &part.body) {
        (Answer::Value { read_as, .. }, _) => read_as.clone(),
        (Answer::Order(places), _) => {
            places.iter().map(|place| letter(*place).to_string()).collect::<Vec<_>>().join(" ")
        }
        (Answer::Pick(place), Body::Pick { shown, .. }) => format!("{}: {}", letter(*place), shown[*place]),
        (Answer::Pick(place), _) => letter(*place).to_string(),
    }
}

/// The question as the paper has it; nothing of its key.
fn asked(question: &Question, index: usize) -> String {
    let part = &question.parts[index];
    let mut out = format!("  {}\n", clean(&part.text));
    for (place, option) in part.options().iter().enumerate() {
        out.push_str(&format!("    {}  {}\n", letter(place), clean(option)));
    }
    out
}
