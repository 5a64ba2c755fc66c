//! Blueprints: what every paper of an exam is made of.
//!
//! ```toml
//! title = "Commissioning a conveyor drive"
//! language = "en"                 # left out: the module's
//! minutes = 60
//! pass = "70 %"
//! units = "si"                    # or "us"; a person on the roster may ask for the other
//! band = "5 %"                    # how far a paper's difficulty may lie from the mean
//! families = ["quarry-head"]      # left out: every family
//! cautions = ["Isolate and lock out before you touch the drive."]   # left out: the usual ones
//! months = 12                     # how long a pass holds; left out: for ever
//!
//! [marking]                       # see `marking`; left out: right or wrong, units written
//!
//! [[row]]
//! topic = "mount"                 # or skill = "..." or item = "..."; a topic leaves what other rows name to them
//! count = 3
//! weight = 4                      # every question of the row is worth so many marks; left out: as its item says
//! difficulty = [3, 12]            # only questions of a difficulty between these
//!
//! [[row]]
//! skill = "lock-out"
//! count = 1                       # beside an item it may be left out
//! safety_only = true              # only questions which fail a paper that misses them
//! marks = 2                       # only questions whose item says two marks
//! ```
//!
//! A weight is shared out among a question's parts as the item's marks are, at least one each (largest remainders), so
//! that papers whose rows all have weights have equal totals.
//!
//! Every paper meets every row exactly, and at least one row must make sure of a safety question;
//! an exam of a trade part without any says `no_safety = true`.

#[cfg(not(wordless))]
mod doubts;
mod read;

use core::fmt;
use core::ops::Range;

use drivecourse_machine::amount::{self, Wanted};
use drivecourse_machine::{Kind, Problem, System, messages, read_toml, schema};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use toml::{Spanned, Value as Toml};

use crate::item::Item;
use crate::marking::{Marking, MarkingFile};
use crate::mend::{WRITE, WRITE_EITHER_SAY, WRITE_SAY_OR_OUT, quoted, units_called, write_say};
#[cfg(not(wordless))]
pub(crate) use doubts::SAYS as DOUBT_SAYS;
use read::Reader;
#[cfg(not(wordless))]
pub(crate) use read::SAYS as ROW_SAYS;

const MOST_ROWS: usize = 200;

/// What is printed above every paper whose blueprint names no cautions of its own.
pub fn usual_cautions() -> Vec<String> {
    CAUTIONS.iter().map(|caution| caution.text().to_owned()).collect()
}

messages! { pub(crate) CAUTIONS {
    ON_PAPER = "caution-on-paper", "The questions describe machines on paper. Do nothing on a machine from a paper alone.";
    LOCK_OUT = "caution-lock-out", "Before you touch a drive: isolate it, lock it out, and verify zero energy. A loaded chain or a load that can run back stores energy too.";
    GUARDS = "caution-guards", "No drive runs, not even for a moment, without its guards in place.";
    PROTECTION = "caution-protection", "Wear the protective equipment that the job and the site ask for.";
    CODES = "caution-codes", "The maker's manual, the site's rules and local codes go before anything written here; licensed work is for licensed people.";
} }

messages! { pub(crate) SAYS {
    TITLE = "problem-exam-title", "The title must be one line of text.";
    MINUTES = "problem-exam-minutes", "The time must lie between 1 and 1440 minutes.";
    MONTHS = "problem-exam-months", "A pass holds between 1 and 600 months.";
    NO_FAMILIES = "problem-exam-no-families", "No family is left to ask about.";
    NAME_FAMILY = "problem-exam-name-family", "Name one, or take the line out.";
    NO_CAUTIONS = "problem-exam-no-cautions", "A paper about machines must bear cautions.";
    WRITE_CAUTION = "problem-exam-write-caution", "Write at least one, or take the line out for the usual ones.";
    ROWS = "problem-exam-rows", "A blueprint has between 1 and {most} rows.";
    ADD_ROW = "problem-exam-add-row", "Add a {row} with a topic, a skill or an item, and a count.";
    BARE_SHARE = "problem-exam-bare-share", "Without a per cent sign {text} is {percent} %, and a share between 0 and {most} % is wanted.";
    NO_SHARE = "problem-exam-no-share", "{text} is no share between 0 and {most} %.";
    OF_TOPIC = "problem-exam-of-topic", "topic {name}";
    OF_SKILL = "problem-exam-of-skill", "skill {name}";
    OF_ITEM = "problem-exam-of-item", "item {name}";
} }

/// An exam: what every one of its papers is made of.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[schemars(title = "Exam")]
pub(crate) struct File {
    /// As a heading.
    #[schemars(with = "String")]
    title: Spanned<String>,
    /// The language of its papers, such as "de"; the module's, if left out.
    #[allow(dead_code)] // Read before anything is said, from the bare file.
    language: Option<String>,
    /// Time allowed.
    #[schemars(with = "u32", range(min = 1, max = 1440))]
    minutes: Spanned<u32>,
    /// Share of the marks that passes, such as "70 %".
    #[schemars(with = "schema::PlainValue")]
    pass: Spanned<Toml>,
    /// Units of every paper whose person asks for no others.
    #[schemars(with = "Option<System>")]
    units: Option<Spanned<String>>,
    /// How far a paper's difficulty may lie from the mean, such as "10 %".
    #[schemars(with = "Option<schema::PlainValue>")]
    band: Option<Spanned<Toml>>,
    /// Families that the questions are about; all, if left out.
    #[schemars(with = "Option<Vec<String>>", length(min = 1))]
    families: Option<Spanned<Vec<Spanned<String>>>>,
    /// Printed above the questions; the usual cautions, if left out.
    #[schemars(with = "Option<Vec<String>>", length(min = 1))]
    cautions: Option<Spanned<Vec<String>>>,
    /// Says that papers do without a safety question by design.
    #[serde(default)]
    no_safety: bool,
    /// Months after which a pass lapses; never, if left out.
    #[schemars(with = "Option<u32>", range(min = 1, max = 600))]
    months: Option<Spanned<u32>>,
    /// How answers are marked; as usual, if left out.
    marking: Option<MarkingFile>,
    /// So many questions of a sort.
    #[serde(default)]
    #[schemars(length(min = 1, max = 200))]
    row: Vec<RowFile>,
}

/// So many questions of one topic, of one skill, or of one item.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[schemars(extend("anyOf" = [{ "required": ["item"] }, { "required": ["count"] }]))]
struct RowFile {
    /// Of this topic.
    #[schemars(with = "Option<schema::TopicName>")]
    topic: Option<Spanned<String>>,
    /// Or of this skill: the items' own word.
    #[schemars(with = "Option<String>")]
    skill: Option<Spanned<String>>,
    /// Or this item.
    #[schemars(with = "Option<String>")]
    item: Option<Spanned<String>>,
    /// How many; one, if left out beside an item.
    #[schemars(with = "Option<u32>", range(min = 1, max = 200))]
    count: Option<Spanned<u32>>,
    /// Only items worth so many marks.
    #[schemars(with = "Option<u32>", range(min = 1))]
    marks: Option<Spanned<u32>>,
    /// Marks that each of its questions counts for, whatever its own.
    #[schemars(with = "Option<u32>", range(min = 1))]
    weight: Option<Spanned<u32>>,
    /// Only questions whose difficulty lies between these two.
    #[schemars(with = "Option<(f64, f64)>")]
    difficulty: Option<Spanned<(f64, f64)>>,
    /// Only items that fail a paper which misses them.
    #[serde(default)]
    safety_only: bool,
}

/// Which items a row takes from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Pick {
    /// Those of a topic.
    Topic(String),
    /// Those of a skill.
    Skill(String),
    /// This one.
    Item(String),
}

impl fmt::Display for Pick {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (says, name) = match self {
            Self::Topic(name) => (OF_TOPIC, name),
            Self::Skill(name) => (OF_SKILL, name),
            Self::Item(name) => (OF_ITEM, name),
        };
        f.write_str(&says.say(&[("name", &quoted(name))]))
    }
}

/// One row: so many questions of a sort.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Row {
    /// Of which sort.
    pub pick: Pick,
    /// How many.
    pub count: u32,
    /// Only items worth so many marks.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub marks: Option<u32>,
    /// What each question is worth, if not what its item says.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub weight: Option<u32>,
    /// Only questions of a difficulty between these.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub difficulty: Option<(f64, f64)>,
    /// Only items that fail a paper which misses them.
    #[serde(default)]
    pub safety_only: bool,
    /// Where the row's name stands in the file, in bytes.
    #[serde(skip)]
    pub span: Range<usize>,
}

impl Row {
    /// Whether the row may take `item`, whatever the other rows of its exam are; [`Blueprint::takes`] knows them.
    pub fn takes(&self, item: &Item) -> bool {
        let picked = match &self.pick {
            Pick::Topic(name) => item.topic == *name,
            Pick::Skill(name) => item.skill == *name,
            Pick::Item(name) => item.id == *name,
        };
        picked && (item.safety || !self.safety_only) && self.marks.is_none_or(|wanted| wanted == item.marks())
    }
}

/// What every paper of an exam is made of.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Blueprint {
    /// As a heading.
    pub title: String,
    /// Time allowed.
    pub minutes: u32,
    /// Share of the marks that passes, 0 to 1.
    pub pass: f64,
    /// Units of every paper whose person asks for no others.
    pub units: System,
    /// Printed above the questions.
    pub cautions: Vec<String>,
    /// How far a paper's difficulty may lie from the mean, as a share of it.
    pub band: f64,
    /// Whether papers may do without a safety question.
    #[serde(default)]
    pub no_safety: bool,
    /// For how many months a pass holds; `None` for ever.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub months: Option<u32>,
    /// How papers are marked.
    #[serde(default)]
    pub marking: Marking,
    /// Families the questions are about; `None` for all.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub families: Option<Vec<String>>,
    /// What is asked.
    pub rows: Vec<Row>,
    /// Where the families' names stand in the file, in bytes.
    #[serde(skip)]
    pub family_spans: Vec<Range<usize>>,
}

impl Blueprint {
    /// Whether `row`, one of this exam's, may take `item`. A topic leaves to the other rows what they name, as a skill or by
    /// itself: where a row asks for safe work, another on mounting is not to ask for it too.
    pub fn takes(&self, row: &Row, item: &Item) -> bool {
        let is_named = |other: &Row| match &other.pick {
            Pick::Topic(_) => false,
            Pick::Skill(name) => item.skill == *name,
            Pick::Item(name) => item.id == *name,
        };
        row.takes(item) && !(matches!(row.pick, Pick::Topic(_)) && self.rows.iter().any(is_named))
    }

    /// Reads a blueprint from TOML. Whether the bank has what its rows ask for is seen when
    /// [`Draw::new`](crate::Draw::new) settles it.
    ///
    /// # Errors
    /// Every [`Problem`] found, in one pass.
    pub fn read(text: &str) -> Result<Self, Vec<Problem>> {
        let file: File = read_toml(text)?;
        let mut reader = Reader { problems: Vec::new() };
        if file.title.get_ref().trim().is_empty() || file.title.get_ref().chars().any(char::is_control) {
            reader.say(file.title.span(), TITLE.text(), WRITE.say(&[("example", "title = \"...\"")]));
        }
        if !(1..=1440).contains(file.minutes.get_ref()) {
            reader.say(file.minutes.span(), MINUTES.text(), write_say("minutes = 60"));
        }
        let pass = share(&mut reader.problems, &file.pass, "pass", 1.0);
        let band = file.band.as_ref().map_or(0.05, |band| share(&mut reader.problems, band, "band", 1.0));
        let marking = file.marking.map_or_else(Marking::default, |marking| marking.read(&mut reader.problems));
        if let Some(months) = &file.months
            && !(1..=600).contains(months.get_ref())
        {
            reader.say(months.span(), MONTHS.text(), WRITE_SAY_OR_OUT.say(&[("example", "months = 12")]));
        }
        let units = file.units.map_or(System::default(), |units| match units_called(units.get_ref(), units.span()) {
            Ok(units) => units,
            Err(problem) => {
                reader.problems.push(problem);
                System::default()
            }
        });
        if let Some(families) = &file.families
            && families.get_ref().is_empty()
        {
            reader.say(families.span(), NO_FAMILIES.text(), NAME_FAMILY.text());
        }
        if let Some(cautions) = &file.cautions
            && cautions.get_ref().iter().all(|caution| caution.trim().is_empty())
        {
            reader.say(cautions.span(), NO_CAUTIONS.text(), WRITE_CAUTION.text());
        }
        if file.row.is_empty() || file.row.len() > MOST_ROWS {
            reader.problems.push(Problem::whole(
                ROWS.say(&[("most", &MOST_ROWS.to_string())]),
                ADD_ROW.say(&[("row", "[[row]]")]),
            ));
        }
        let rows = file.row.into_iter().filter_map(|row| reader.row(row)).collect();
        let families: Vec<_> = file.families.map_or_else(Vec::new, Spanned::into_inner);
        let blueprint = Self {
            title: file.title.into_inner(),
            minutes: file.minutes.into_inner(),
            pass,
            units,
            cautions: file.cautions.map_or_else(usual_cautions, Spanned::into_inner),
            band,
            no_safety: file.no_safety,
            months: file.months.map(Spanned::into_inner),
            marking,
            family_spans: families.iter().map(Spanned::span).collect(),
            families: Some(families.into_iter().map(Spanned::into_inner).collect::<Vec<_>>())
                .filter(|families| !families.is_empty()),
            rows,
        };
        if reader.problems.is_empty() { Ok(blueprint) } else { Err(reader.problems) }
    }

    /// The row of each place on a paper.
    pub fn places(&self) -> Vec<&Row> {
        self.rows.iter().flat_map(|row| core::iter::repeat_n(row, row.count as usize)).collect()
    }

    /// How papers are marked, as it stands on every one of them; where a part asks for `more` than three figures, nothing is
    /// said of three.
    pub fn policy(&self, more: bool) -> Vec<String> {
        self.marking.policy(!self.no_safety, more)
    }

    /// How many questions a paper has.
    pub fn questions(&self) -> usize {
        self.rows.iter().map(|row| row.count as usize).sum()
    }
}

/// A share as people write it: `"70 %"`, `0.7`.
pub(crate) fn share(problems: &mut Vec<Problem>, value: &Spanned<Toml>, name: &str, most: f64) -> f64 {
    let text = match value.get_ref() {
        Toml::String(text) => text.clone(),
        other => other.to_string(),
    };
    let read = amount::read(&text, &Wanted::new(Kind::Ratio)).map(|read| read.base);
    // 70 % is 0.7, not 0.7000000000000001.
    let read = read.map(|share| (share * 1e12).round() / 1e12);
    match read {
        Ok(share) if share > 0.0 && share <= most => share,
        read => {
            // 70 is a slip for 70 %, in all likelihood.
            let bare = read.ok().filter(|bare| *bare > 1.0 && *bare <= 100.0 && !text.contains('%'));
            let percent = match bare {
                Some(bare) => bare,
                _ if name == "pass" => 70.0,
                _ if name == "band" => 5.0,
                _ => 50.0,
            };
            problems.push(Problem::at(
                value.span(),
                if bare.is_some() { BARE_SHARE } else { NO_SHARE }.say(&[
                    ("text", &quoted(&text)),
                    ("percent", &format!("{:.0}", 100.0 * percent)),
                    ("most", &format!("{:.0}", most * 100.0)),
                ]),
                WRITE_EITHER_SAY.say(&[
                    ("one", &format!("{name} = \"{percent} %\"")),
                    ("other", &format!("{name} = {}", percent / 100.0)),
                ]),
            ));
            most
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const GOOD: &str = r#"title = "Mounting"
minutes = 45
pass = "70 %"
band = 0.08
families = ["bench"]
[[row]]
topic = "mount"
count = 3
[[row]]
item = "lock-out"
count = 1
safety_only = true
marks = 2
"#;

    #[test]
    fn a_good_blueprint_is_read() {
        let blueprint = Blueprint::read(GOOD).unwrap();
        assert_eq!((blueprint.minutes, blueprint.pass, blueprint.band), (45, 0.7, 0.08));
        assert_eq!(blueprint.questions(), 4);
        assert_eq!(blueprint.units, System::Si);
        assert_eq!(blueprint.cautions.len(), usual_cautions().len());
        assert_eq!(blueprint.rows[1].pick, Pick::Item("lock-out".into()));
        assert_eq!(&GOOD[blueprint.rows[0].span.clone()], "\"mount\"");
        assert_eq!(&GOOD[blueprint.family_spans[0].clone()], "\"bench\"");
        let json = serde_json::to_string(&blueprint).unwrap();
        let again: Blueprint = serde_json::from_str(&json).unwrap();
        assert_eq!(serde_json::to_string(&again).unwrap(), json);
    }

    #[test]
    fn problems_name_their_place() {
        for (from, to, line, what) in [
            ("\"Mounting\"", "\" \"", 1, "one line"),
            ("minutes = 45", "minutes = 0", 2, "1440"),
            ("\"70 %\"", "\"170 %\"", 3, "no share"),
            ("\"70 %\"", "true", 3, "pass = \"70 %\" or pass = 0.7, say"),
            ("\"70 %\"", "55", 3, "pass = \"55 %\" or pass = 0.55, say"),
            ("\"70 %\"", "\"62.5\"", 3, "pass = \"62.5 %\" or pass = 0.625, say"),
            ("0.08", "0", 4, "band = \"5 %\" or band = 0.05, say"),
            ("0.08", "8", 4, "band = \"8 %\" or band = 0.08, say"),
            ("[\"bench\"]", "[]", 5, "No family"),
            ("band", "cautions = [\"\"]\nband", 4, "cautions"),
            ("band", "units = \"metric\"\nband", 4, "set of units"),
            ("topic = \"mount\"", "topic = \"mound\"", 7, "no topic"),
            ("topic = \"mount\"", "topic = \"mount\"\nskill = \"x\"", 8, "exactly one"),
            ("topic = \"mount\"\n", "", 7, "exactly one"),
            ("count = 3\n", "", 7, "how many questions"),
            ("count = 3", "count = 0", 8, "between 1"),
            ("count = 3", "count = -3", 8, "whole number"),
            ("marks = 2", "marks = 0", 13, "at least one mark"),
            ("safety_only", "safety", 12, "Nothing here is called"),
            ("marks = 2", "weight = 0", 13, "between 1 and 100"),
            ("marks = 2", "difficulty = [5, 2]", 13, "bounds of difficulty"),
            ("band", "months = 0\nband", 4, "months"),
            ("[[row]]", "marking.unit = \"shall\"\n[[row]]", 6, "units"),
            ("[[row]]", "marking.method = \"0 %\"\n[[row]]", 6, "no share"),
            ("[[row]]", "marking.partial = { within = 0.5, earns = 0.5 }\n[[row]]", 6, "near miss"),
            ("[[row]]", "marking.figures = { least = 4, most = 3 }\n[[row]]", 6, "figures"),
        ] {
            let text = GOOD.replacen(from, to, 1);
            let problems = Blueprint::read(&text).unwrap_err();
            let found = (problems[0].line_column(&text).map(|(line, _)| line), problems.len());
            assert_eq!(found, (Some(line), 1), "{from} -> {to}: {problems:?}");
            assert!(problems[0].to_string().contains(what), "{problems:?}");
        }
        let once = GOOD.replace("count = 1\n", "");
        assert_eq!(Blueprint::read(&once).unwrap().rows[1].count, 1, "an item that is named is asked once");
        let text = GOOD.replace("minutes = 45", "minutes = 0").replace("count = 1", "count = 0");
        assert_eq!(Blueprint::read(&text).unwrap_err().len(), 2, "all problems in one pass");
    }
}
