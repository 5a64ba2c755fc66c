//! `record`, `override`, `forget`: graded exams into the records, and what an assessor decides afterwards.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::time::{SystemTime, UNIX_EPOCH};

use anyhow::{Context, Result, bail};
use drivecourse_machine::messages;
use drivecourse_quiz::explain::part_letter;
use drivecourse_quiz::{Code, Exam, Graded};
use drivecourse_records::change::Place;
use drivecourse_records::{Date, Filter, Reason, Sitting, Store, Taken};
use sha2::{Digest, Sha256};

use crate::terminal::clean;
use crate::{cli, files, papers, words};

messages! { pub(crate) SAYS {
    RECORDED = "record-counts", "{exam}: {new} recorded, {corrected} corrected, {same} there already, {left} not taken, {absent} not handed in";
    RECORDS_IN = "record-in", "in {file}";
    SHARED_CODES = "record-shared-codes", "another exam in the records, {title} ({name}), has papers with these codes too: {codes}; {mend}";
    NAME_IT = "record-name-exam", "name it with --exam in override and report answer";
    OTHER_ANSWERS = "record-other-answers", "paper {code} of {name}: other answers or marks than recorded; they do not count. If they shall, repeat this with --correction REASON --by NAME";
    BEFORE_CORRECTION = "record-before-correction", "paper {code} of {name}: answers from before a correction; the correction stands";
    STAYS_OUT = "record-stays-out", "paper {code} of {name}: taken out on request, and stays out";
    LEFT_BEHIND = "record-left-behind", "paper {code}: marks that an assessor had changed stay with the earlier answers; look at them again";
    PLACE = "override-place", "question {question} ({part}) of paper {code}";
    MARK_STOOD = "override-stood", "{place}: {marks} of {of} already, for this reason; nothing was changed";
    MARK_CHANGED = "override-changed", "{place}: {marks} of {of} now, {was} before; the original stays on record";
    TAKEN_OUT = "forget-taken-out", "taken out: {papers} papers, {answers} answers, {changed} changed marks; totals are kept";
    REMOVE_YOURSELF = "forget-remove-yourself", "papers, keys, response files, results and copies of the records are not touched: remove those yourself";
} }

messages! { pub(crate) ERRORS {
    RESULTS_OF_ONE = "error-results-of-one", "--results names the results of one exam; record the others by themselves";
    NOTHING_RECORDED = "error-nothing-recorded", "nothing of {exam} was recorded";
    NOT_GRADED = "error-exam-not-graded", "{exam} is not graded: there is no {file}; run `drivecourse grade` first";
    NO_SOUND_RESULTS = "error-no-sound-results", "{file}:{line}: no sound results: {error}; grade again";
    OF_ANOTHER_EXAM = "error-of-another-exam", "{file} holds the results of another exam; grade again";
    DOES_NOT_AGREE = "error-does-not-agree", "{file}: paper {code} does not agree with {exam}; grade again";
    NO_CODE = "error-no-paper-code", "{code} is no paper code";
    NO_LETTER = "error-no-letter", "a part is named by its letter: a, b, c ...";
    NOBODY = "error-nobody", "nobody in the records has the id {id}";
    SAY_YES = "error-forget-say-yes", "this takes {name} ({id}) out of the records for good, with all papers ({count}), and keeps totals only; say --yes if that is meant";
} }

messages! { pub(crate) REFUSALS {
    NOT_RECORDED_ONE = "record-not-recorded-one", "1 paper was not recorded; the rest was, and of this one stands what was there before";
    NOT_RECORDED = "record-not-recorded", "{count} papers were not recorded; the rest was, and of these stands what was there before";
} }

/// Records all that can be; where answers were handed in that the records hold in no way, that is a failure, told when
/// everything else is in. What is there already, was corrected since, or was taken out on request is none: nothing is to
/// be done about it.
pub(crate) fn run(options: &cli::Record, speech: &cli::Speech) -> Result<()> {
    let today = today();
    // Everything is read and checked before anything is written.
    let ((correction, read), _) = words::begin_built_in_with(speech, || asked(options))?;
    let mut store = Store::open(&options.records)?;
    let mut not_recorded = 0;
    for (path, (exam, graded)) in read {
        warn_of_shared_codes(&store, &exam, NAME_IT.text())?;
        let sitting = Sitting {
            correction: correction.clone(),
            renamed: options.renamed.clone(),
            ..sitting(&exam, options.on.unwrap_or(today), today)
        };
        let counts = take(&mut store, sitting, &graded, path)?;
        let count = |taken: &[Taken]| taken.iter().filter_map(|taken| counts.get(taken)).sum::<usize>();
        not_recorded += count(&[Taken::Changed]);
        let count = |taken: &[Taken]| count(taken).to_string();
        files::say(RECORDED.say(&[
            ("exam", &path.display().to_string()),
            ("new", &count(&[Taken::New])),
            ("corrected", &count(&[Taken::Corrected])),
            ("same", &count(&[Taken::Same])),
            ("left", &count(&[Taken::Changed, Taken::Superseded, Taken::Forgotten])),
            ("absent", &count(&[Taken::Absent])),
        ]))?;
    }
    files::say(RECORDS_IN.say(&[("file", &options.records.display().to_string())]))?;
    match not_recorded {
        0 => Ok(()),
        1 => bail!(NOT_RECORDED_ONE.text()),
        count => bail!(NOT_RECORDED.say(&[("count", &count.to_string())])),
    }
}

/// A graded exam in its folder.
type Read<'a> = (&'a PathBuf, (Exam, Graded));
/// What is to be recorded: why other marks shall count, if they shall, and the exams.
type Asked<'a> = (Option<Reason>, Vec<Read<'a>>);

/// What is to be recorded, read and checked, and the language of the exams if they have one in common.
fn asked(options: &cli::Record) -> Result<(Asked<'_>, Option<String>)> {
    let correction = match (&options.correction, &options.by) {
        (Some(reason), Some(by)) => Some(Reason::new(reason, by)?),
        _ => None,
    };
    if options.results.is_some() && options.exams.len() > 1 {
        bail!(RESULTS_OF_ONE.text());
    }
    let mut read = Vec::new();
    for path in &options.exams {
        read.push((path, graded(path, options.results.as_deref())?));
    }
    let tag = |(_, (exam, _)): &Read| exam.language.as_ref().map(|language| language.tag.clone());
    let language = read.first().and_then(tag).filter(|first| read.iter().all(|exam| tag(exam).as_ref() == Some(first)));
    Ok(((correction, read), language))
}

/// Says which exams in the records have papers with the codes of this one, and what to do about it.
pub(crate) fn warn_of_shared_codes(store: &Store, exam: &Exam, what_to_do: &str) -> Result<()> {
    let codes: Vec<String> = exam.papers.iter().map(|paper| paper.code.to_string()).collect();
    let mut by_exam: BTreeMap<(String, String), Vec<String>> = BTreeMap::new();
    for holder in store.holders(&digest(exam), codes.iter().map(String::as_str))? {
        by_exam.entry((holder.exam, holder.title)).or_default().push(holder.code);
    }
    for ((name, title), codes) in by_exam {
        let (title, name, codes) = (clean(&title), clean(&name), codes.join(", "));
        let words = [("title", &*title), ("name", &name), ("codes", &codes), ("mend", what_to_do)];
        eprintln!("drivecourse: {}", SHARED_CODES.say(&words));
    }
    Ok(())
}

/// What is kept of `exam`, sat and recorded on these days.
pub(crate) fn sitting(exam: &Exam, sat: Date, recorded: Date) -> Sitting {
    Sitting {
        digest: digest(exam),
        exam: exam.id.clone(),
        title: exam.blueprint.title.clone(),
        pass: exam.blueprint.pass,
        months: exam.blueprint.months,
        language: exam.language.as_ref().map(|language| language.tag.clone()),
        sat,
        recorded,
        correction: None,
        renamed: Vec::new(),
    }
}

/// One exam in one transaction; how many papers were taken in which way.
pub(crate) fn take(
    store: &mut Store,
    sitting: Sitting,
    graded: &Graded,
    path: &Path,
) -> Result<BTreeMap<Taken, usize>> {
    let at = || NOTHING_RECORDED.say(&[("exam", &path.display().to_string())]);
    let mut import = store.import(sitting).with_context(at)?;
    for paper in &graded.candidates {
        let taken = import.paper(paper).with_context(at)?;
        let says = match taken {
            Taken::Changed => OTHER_ANSWERS,
            Taken::Superseded => BEFORE_CORRECTION,
            Taken::Forgotten => STAYS_OUT,
            Taken::New | Taken::Same | Taken::Corrected | Taken::Absent => continue,
        };
        let (code, name) = (paper.code.to_string(), clean(&paper.candidate.name));
        eprintln!("drivecourse: {}", says.say(&[("code", &code), ("name", &name)]));
    }
    for code in import.left_behind() {
        eprintln!("drivecourse: {}", LEFT_BEHIND.say(&[("code", &code.to_string())]));
    }
    import.finish().with_context(at)
}

/// The exam in a folder and what `grade` made of it; both must be of one piece.
fn graded(path: &Path, results: Option<&Path>) -> Result<(Exam, Graded)> {
    let exam = papers::read_record(path)?;
    let folder = if path.is_file() { path.parent().unwrap_or(Path::new("")) } else { path };
    let results: PathBuf = results.map_or_else(|| folder.join("results"), Path::to_path_buf);
    let file = if results.is_file() { results } else { results.join("results.json") };
    if !file.is_file() {
        bail!(NOT_GRADED.say(&[("exam", &path.display().to_string()), ("file", &file.display().to_string())]));
    }
    let text = files::read_text(&file)?;
    let shown = file.display().to_string();
    let graded: Graded = serde_json::from_str(&text).map_err(|error| {
        let (line, error) = (error.line().to_string(), error.to_string());
        anyhow::anyhow!(NO_SOUND_RESULTS.say(&[("file", &shown), ("line", &line), ("error", &error)]))
    })?;
    if graded.exam != exam.id || graded.candidates.len() != exam.papers.len() {
        bail!(OF_ANOTHER_EXAM.say(&[("file", &shown)]));
    }
    for (paper, record) in graded.candidates.iter().zip(&exam.papers) {
        let parts = || paper.questions.iter().flat_map(|question| &question.parts);
        let sound = paper.code == record.code
            && paper.candidate == record.candidate
            && paper.of == record.marks
            && paper.questions.len() == record.questions.len()
            && paper.questions.iter().zip(&record.questions).all(|(q, r)| q.item == r.item && q.parts.len() == r.parts)
            && parts().all(|part| part.earned <= part.of)
            && parts().map(|part| part.earned).sum::<u32>() == paper.earned
            && parts().map(|part| part.of).sum::<u32>() == paper.of;
        if !sound {
            let (code, exam) = (paper.code.to_string(), path.display().to_string());
            bail!(DOES_NOT_AGREE.say(&[("file", &shown), ("code", &code), ("exam", &exam)]));
        }
    }
    Ok((exam, graded))
}

/// SHA-256 of the exam record, without what is only printed at the head of its papers: made again with another date they are
/// the same exam.
pub(crate) fn digest(exam: &Exam) -> String {
    Sha256::digest(exam.clone().headed("", None).write()).iter().map(|byte| format!("{byte:02x}")).collect()
}

/// Today in universal time; the one place where the records meet the clock.
pub(crate) fn today() -> Date {
    let seconds = SystemTime::now().duration_since(UNIX_EPOCH).map_or(0, |time| time.as_secs());
    Date::from_days((seconds / 86_400) as i64)
}

/// The place that a person names by paper code, question and part letter.
pub(crate) fn place(code: &str, question: usize, part: char, exam: Option<&str>) -> Result<Place> {
    let code = Code::read(code).with_context(|| NO_CODE.say(&[("code", &format!("{:?}", clean(code)))]))?;
    let letter = part.to_ascii_lowercase();
    if !letter.is_ascii_lowercase() {
        bail!(NO_LETTER.text());
    }
    Ok(Place {
        code: code.to_string(),
        question,
        part: usize::from(letter as u8 - b'a'),
        exam: exam.map(str::to_owned),
    })
}

pub(crate) fn change(options: &cli::Override, speech: &cli::Speech) -> Result<()> {
    let asked = || {
        let place = place(&options.code, options.question, options.part, options.exam.as_deref())?;
        let reason = Reason::new(&options.reason, &options.by)?;
        let store = Store::existing(&options.records)?;
        let language = store.language(&Filter::default(), Some(&place.code))?;
        Ok(((place, reason, store), language))
    };
    let ((place, reason, mut store), _) = words::begin_built_in_with(speech, asked)?;
    let change = store.change_mark(&place, options.marks, &reason, options.on.unwrap_or_else(today))?;
    let says = if change.stood { MARK_STOOD } else { MARK_CHANGED };
    let [marks, of, was] = [options.marks, change.of, change.was].map(|marks| marks.to_string());
    let (question, part) = (place.question.to_string(), part_letter(place.part).to_string());
    let place = PLACE.say(&[("question", &question), ("part", &part), ("code", &place.code)]);
    files::say(says.say(&[("place", &place), ("marks", &marks), ("of", &of), ("was", &was)]))
}

pub(crate) fn forget(options: &cli::Forget, speech: &cli::Speech) -> Result<()> {
    let filter = Filter { person: Some(options.person.clone()), ..Filter::default() };
    let (mut store, _) = words::begin_built_in_with(speech, || {
        let store = Store::existing(&options.records)?;
        let language = store.language(&filter, None)?;
        Ok((store, language))
    })?;
    if !options.yes {
        let papers = store.all_papers(&filter)?;
        let id = clean(&options.person);
        let Some(paper) = papers.last() else { bail!(NOBODY.say(&[("id", &format!("{id:?}"))])) };
        let count = papers.len().to_string();
        bail!(SAY_YES.say(&[("count", &count), ("name", &clean(&paper.name)), ("id", &id)]));
    }
    let removed = store.forget(&options.person)?;
    let [papers, answers, changed] = [removed.papers, removed.answers, removed.changed].map(|count| count.to_string());
    files::say(TAKEN_OUT.say(&[("papers", &papers), ("answers", &answers), ("changed", &changed)]))?;
    files::say(REMOVE_YOURSELF.text())
}
