//! `record`, `override`, `forget`: graded exams into the records, and what an assessor decides afterwards.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::time::{SystemTime, UNIX_EPOCH};

use anyhow::{Context, Result, bail, ensure};
use drivecourse_machine::messages;
use drivecourse_quiz::{Code, Exam, Graded};
use drivecourse_records::change::Place;
use drivecourse_records::{Date, Reason, Sitting, Store, Taken};
use sha2::{Digest, Sha256};

use crate::terminal::clean;
use crate::{cli, files, papers};

messages! { pub(crate) REFUSALS {
    NOT_RECORDED_ONE = "record-not-recorded-one", "1 paper was not recorded; the rest was, and of this one stands what was there before";
    NOT_RECORDED = "record-not-recorded", "{count} papers were not recorded; the rest was, and of these stands what was there before";
} }

/// Records all that can be; where answers were handed in that the records hold in no way, that is a failure, told when
/// everything else is in. What is there already, was corrected since, or was taken out on request is none: nothing is to
/// be done about it.
pub(crate) fn run(options: &cli::Record) -> Result<()> {
    let today = today();
    let correction = match (&options.correction, &options.by) {
        (Some(reason), Some(by)) => Some(Reason::new(reason, by)?),
        _ => None,
    };
    if options.results.is_some() && options.exams.len() > 1 {
        bail!("--results names the results of one exam; record the others by themselves");
    }
    // Everything is read and checked before anything is written.
    let mut read = Vec::new();
    for path in &options.exams {
        read.push((path, graded(path, options.results.as_deref())?));
    }
    let mut store = Store::open(&options.records)?;
    let mut not_recorded = 0;
    for (path, (exam, graded)) in read {
        warn_of_shared_codes(&store, &exam, "name it with --exam in override and report answer")?;
        let sitting = Sitting {
            correction: correction.clone(),
            renamed: options.renamed.clone(),
            ..sitting(&exam, options.on.unwrap_or(today), today)
        };
        let counts = take(&mut store, sitting, &graded, path)?;
        let count = |taken: Taken| counts.get(&taken).copied().unwrap_or(0);
        not_recorded += count(Taken::Changed);
        files::say(format!(
            "{}: {} recorded, {} corrected, {} there already, {} not taken, {} not handed in",
            path.display(),
            count(Taken::New),
            count(Taken::Corrected),
            count(Taken::Same),
            count(Taken::Changed) + count(Taken::Superseded) + count(Taken::Forgotten),
            count(Taken::Absent)
        ))?;
    }
    files::say(format!("in {}", options.records.display()))?;
    match not_recorded {
        0 => Ok(()),
        1 => bail!("{}", NOT_RECORDED_ONE.text()),
        count => bail!("{}", NOT_RECORDED.say(&[("count", &count.to_string())])),
    }
}

/// Says which exams in the records have papers with the codes of this one, and what to do about it.
pub(crate) fn warn_of_shared_codes(store: &Store, exam: &Exam, what_to_do: &str) -> Result<()> {
    let codes: Vec<String> = exam.papers.iter().map(|paper| paper.code.to_string()).collect();
    let mut by_exam: BTreeMap<(String, String), Vec<String>> = BTreeMap::new();
    for holder in store.holders(&digest(exam), codes.iter().map(String::as_str))? {
        by_exam.entry((holder.exam, holder.title)).or_default().push(holder.code);
    }
    for ((name, title), codes) in by_exam {
        eprintln!(
            "drivecourse: another exam in the records, {} ({}), has papers with these codes too: {}; {what_to_do}",
            clean(&title),
            clean(&name),
            codes.join(", ")
        );
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
    let at = || format!("nothing of {} was recorded", path.display());
    let mut import = store.import(sitting).with_context(at)?;
    for paper in &graded.candidates {
        let taken = import.paper(paper).with_context(at)?;
        let says = match taken {
            Taken::Changed => {
                "other answers or marks than recorded; they do not count. If they shall, repeat this with --correction \
                 REASON --by NAME"
            }
            Taken::Superseded => "answers from before a correction; the correction stands",
            Taken::Forgotten => "taken out on request, and stays out",
            Taken::New | Taken::Same | Taken::Corrected | Taken::Absent => continue,
        };
        eprintln!("drivecourse: paper {} of {}: {says}", paper.code, clean(&paper.candidate.name));
    }
    for code in import.left_behind() {
        eprintln!(
            "drivecourse: paper {code}: marks that an assessor had changed stay with the earlier answers; look at them again"
        );
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
        bail!("{} is not graded: there is no {}; run `drivecourse grade` first", path.display(), file.display());
    }
    let text = files::read_text(&file)?;
    let graded: Graded = serde_json::from_str(&text).map_err(|error| {
        anyhow::anyhow!("{}:{}: no sound results: {error}; grade again", file.display(), error.line())
    })?;
    ensure!(
        graded.exam == exam.id && graded.candidates.len() == exam.papers.len(),
        "{} holds the results of another exam; grade again",
        file.display()
    );
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
        ensure!(sound, "{}: paper {} does not agree with {}; grade again", file.display(), paper.code, path.display());
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
    let code = Code::read(code).with_context(|| format!("{:?} is no paper code", clean(code)))?;
    let letter = part.to_ascii_lowercase();
    ensure!(letter.is_ascii_lowercase(), "a part is named by its letter: a, b, c ...");
    Ok(Place {
        code: code.to_string(),
        question,
        part: usize::from(letter as u8 - b'a'),
        exam: exam.map(str::to_owned),
    })
}

pub(crate) fn change(options: &cli::Override) -> Result<()> {
    let place = place(&options.code, options.question, options.part, options.exam.as_deref())?;
    let reason = Reason::new(&options.reason, &options.by)?;
    let mut store = Store::existing(&options.records)?;
    let change = store.change_mark(&place, options.marks, &reason, options.on.unwrap_or_else(today))?;
    if change.stood {
        files::say(format!(
            "{place}: {} of {} already, for this reason; nothing was changed",
            options.marks, change.of
        ))?;
    } else {
        files::say(format!(
            "{place}: {} of {} now, {} before; the original stays on record",
            options.marks, change.of, change.was
        ))?;
    }
    Ok(())
}

pub(crate) fn forget(options: &cli::Forget) -> Result<()> {
    let mut store = Store::existing(&options.records)?;
    if !options.yes {
        let filter = drivecourse_records::Filter { person: Some(options.person.clone()), ..Default::default() };
        let papers = store.all_papers(&filter)?;
        let Some(paper) = papers.last() else { bail!("nobody in the records has the id {:?}", clean(&options.person)) };
        bail!(
            "this takes {} papers of {} ({}) out of the records for good, and keeps totals only; say --yes if that is meant",
            papers.len(),
            clean(&paper.name),
            clean(&options.person)
        );
    }
    let removed = store.forget(&options.person)?;
    files::say(format!(
        "taken out: {} papers, {} answers, {} changed marks; totals are kept",
        removed.papers, removed.answers, removed.changed
    ))?;
    files::say(
        "papers, keys, response files, results and copies of the records are not touched: remove those yourself",
    )?;
    Ok(())
}
