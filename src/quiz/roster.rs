//! Rosters: who sits a paper.
//!
//! TOML, `[[person]]` with `id`, `name`, and if wanted `group`, `units` (`"si"` or `"us"`) and `print` (`"large"`); or a
//! CSV table with the same headings in any order. Decisions, all tested:
//!
//! * white space in a name, line breaks too, becomes one plain space;
//! * other control characters, marks that turn the writing direction and invisible characters are
//!   refused: a name must look like what it is. Joiners inside words of other scripts are left alone;
//! * two people of one id or one name (capitals aside) are refused: a paper must find its person;
//! * columns of other headings are left alone, a missing column is empty, and a cell beyond the
//!   last heading is refused, for it mostly comes from a stray delimiter;
//! * `si`, `us` or `large` under an earlier heading than its own, in a row with no cell under that one, is refused: a
//!   delimiter was lost, and the units with it.

use core::ops::Range;
use std::collections::BTreeMap;

use drivecourse_machine::language::Message;
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Problem, System, messages, read_toml};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use toml::Spanned;

use crate::mend::{quoted, units_called};
use crate::response::table::{Row, Table};

const COLUMNS: &[&str] = &["id", "name", "group", "units", "print"];
const LONGEST: usize = 120;

messages! { pub(crate) SAYS {
    ADD_PERSON = "problem-roster-add-person", "Add a {person} with an id and a name.";
    ADD_ROW = "problem-roster-add-row", "Add a row for each person, with an id and a name.";
    UNCLOSED = "problem-roster-unclosed", "This quotation mark is never closed.";
    CLOSE = "problem-roster-close", "Close it, or double it inside a cell.";
    NO_COLUMN = "problem-roster-no-column", "The roster has no column {name}.";
    FIRST_ROW = "problem-roster-first-row", "Let the first row read {headings}.";
    COLUMN_MEANT = "problem-roster-column-meant", "Did you mean it by {near}?";
    HEADING_NEAR = "problem-roster-heading-near", "The column {written} is left alone: there is no such heading.";
    HEADING_MEANT = "problem-roster-heading-meant", "Did you mean {near}? A column of your own is left alone under any name.";
    TWO_COLUMNS = "problem-roster-two-columns", "The roster has two columns {name}.";
    COLUMN_OUT = "problem-roster-column-out", "Take one of them out.";
    OVERFLOW = "problem-roster-overflow", "This row has more cells than the headings.";
    QUOTE_CELL = "problem-roster-quote-cell", "Put quotation marks round a cell that contains the delimiter.";
    MISPLACED = "problem-roster-misplaced", "{written} stands under {heading}, and this row has no cell under {wanted}.";
    MISPLACED_MEND = "problem-roster-misplaced-mend", "A delimiter is missing before it. Leave a cell empty where there is nothing to say:\n{line}";
    BAD_ID = "problem-roster-bad-id", "{id} is no id: an id is made of letters, figures, hyphens, underscores and full stops.";
    AN_ID = "problem-roster-an-id", "Write a short id, such as a07 or day-03.";
    ID_TWICE = "problem-roster-id-twice", "The id {id} stands twice.";
    OTHER_ID = "problem-roster-other-id", "Give one of the two another id.";
    NO_NAME = "problem-roster-no-name", "{id} has no name.";
    A_NAME = "problem-roster-a-name", "Write the name that the paper shall bear.";
    NAME_TWICE = "problem-roster-name-twice", "Two people are called {name}: {one} and {other}.";
    TELL_APART = "problem-roster-tell-apart", "Add something that tells them apart, such as a second name or the shift.";
    NO_PRINT = "problem-roster-no-print", "{print} is no size of print.";
    PRINTS = "problem-roster-prints", "Write large, or nothing.";
    NAME_HIDDEN = "problem-roster-name-hidden", "This name has an invisible character in it ({character}).";
    GROUP_HIDDEN = "problem-roster-group-hidden", "This group has an invisible character in it ({character}).";
    TYPE_AGAIN = "problem-roster-type-again", "Type it again by hand.";
    NAME_LONG = "problem-roster-name-long", "This name is longer than {most} characters.";
    GROUP_LONG = "problem-roster-group-long", "This group is longer than {most} characters.";
    SHORTEN = "problem-roster-shorten", "Shorten it.";
    NOBODY = "problem-roster-nobody", "The roster names nobody.";
} }

/// One candidate.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Person {
    /// Short and unique: letters, figures, `-`, `_`, `.`.
    pub id: String,
    /// As it is printed.
    pub name: String,
    /// Shift or class, if any.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub group: Option<String>,
    /// Units of the person's paper, if other than the blueprint's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub units: Option<System>,
    /// Whether the person's paper is printed large.
    #[serde(default, skip_serializing_if = "core::ops::Not::not")]
    pub large_print: bool,
}

/// Everyone who sits a paper, in the order of the file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Roster {
    /// The candidates.
    pub people: Vec<Person>,
}

/// A roster: who sits a paper.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[schemars(title = "Roster")]
pub(crate) struct File {
    /// The candidates.
    #[serde(default)]
    person: Vec<PersonFile>,
}

/// One candidate.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct PersonFile {
    /// Short and unique: letters, figures, hyphen, underscore, point.
    #[schemars(with = "String", regex(pattern = "^[A-Za-z0-9._-]+$"))]
    id: Spanned<String>,
    /// As it is printed.
    #[schemars(with = "String")]
    name: Spanned<String>,
    /// Shift or class, if any.
    #[schemars(with = "Option<String>")]
    group: Option<Spanned<String>>,
    /// Units of the person's paper, if other than the exam's.
    #[schemars(with = "Option<System>")]
    units: Option<Spanned<String>>,
    /// How the person's paper is printed, if not as usual: "large".
    #[schemars(with = "Option<String>")]
    print: Option<Spanned<String>>,
}

type Written = (String, Range<usize>);

impl Roster {
    /// Reads a TOML roster.
    ///
    /// # Errors
    /// Every [`Problem`] found, in one pass.
    pub fn read_toml(text: &str) -> Result<Self, Vec<Problem>> {
        let file: File = read_toml(text)?;
        let mut reader = Reader::default();
        let open = |field: Spanned<String>| {
            let span = field.span();
            (field.into_inner(), span)
        };
        for person in file.person {
            reader.person(
                open(person.id),
                open(person.name),
                person.group.map(open),
                person.units.map(open),
                person.print.map(open),
            );
        }
        reader.finish(ADD_PERSON.say(&[("person", "[[person]]")]))
    }

    /// What is doubtful in the CSV roster `text`: headings that are nearly known ones, whose columns are left alone.
    pub fn doubts(text: &str) -> Vec<Problem> {
        let table = Table::read(text, COLUMNS);
        let first = text.find(|c: char| !c.is_whitespace() && c != '\u{feff}').unwrap_or(0);
        let line = text[first..].lines().next().unwrap_or_default();
        let free: Vec<&str> = COLUMNS.iter().copied().filter(|name| table.column(name).is_none()).collect();
        let doubt = |heading: &String| {
            let near = nearest(heading, free.iter().copied()).filter(|_| !COLUMNS.contains(&heading.as_str()))?;
            // Headings are kept in lower case.
            let at = line.to_lowercase().find(heading.as_str()).filter(|_| line.is_ascii());
            let span = at.map_or(first..first + line.len(), |at| first + at..first + at + heading.len());
            let what = HEADING_NEAR.say(&[("written", &quoted(heading))]);
            Some(Problem::at(span, what, HEADING_MEANT.say(&[("near", &quoted(near))])))
        };
        table.headings.iter().filter_map(doubt).collect()
    }

    /// Reads a CSV roster: comma, semicolon or tab; see [`decode`](crate::response::decode) for its bytes.
    ///
    /// # Errors
    /// Every [`Problem`] found, in one pass, each at its row.
    pub fn read_csv(text: &str) -> Result<Self, Vec<Problem>> {
        let table = Table::read(text, COLUMNS);
        let mut reader = Reader::default();
        if let Some((_, at)) = table.unclosed {
            reader.say(at..at + 1, UNCLOSED.text(), CLOSE.text());
        }
        let first = text.find(|c: char| !c.is_whitespace() && c != '\u{feff}').unwrap_or(0);
        let headings = first..first + text[first..].lines().next().map_or(0, str::len);
        for wanted in ["id", "name"] {
            if table.column(wanted).is_none() {
                let near = nearest(wanted, table.headings.iter().map(String::as_str));
                let mend = near.map_or_else(
                    || FIRST_ROW.say(&[("headings", "id,name,group,units")]),
                    |near| COLUMN_MEANT.say(&[("near", &quoted(near))]),
                );
                reader.say(headings.clone(), NO_COLUMN.say(&[("name", &quoted(wanted))]), mend);
            }
        }
        for (place, heading) in table.headings.iter().enumerate() {
            if COLUMNS.contains(&heading.as_str()) && table.headings[..place].contains(heading) {
                reader.say(headings.clone(), TWO_COLUMNS.say(&[("name", &quoted(heading))]), COLUMN_OUT.text());
            }
        }
        if !reader.problems.is_empty() {
            return Err(reader.problems);
        }
        let columns: Vec<_> = COLUMNS.iter().map(|name| table.column(name)).collect();
        for row in &table.rows {
            let line = text[row.at..].lines().next().map_or(0, str::len);
            let span = row.at..row.at + line;
            if row.overflows(table.headings.len()) {
                reader.say(span.clone(), OVERFLOW.text(), QUOTE_CELL.text());
                continue;
            }
            let misplaced = misplaced(&table, row);
            if let Some((place, wanted)) = misplaced {
                let at = table.span(text, row, place);
                let (before, rest) = text[span.start..].split_at(at.start - span.start);
                let marks = char::from(table.delimiter).to_string().repeat(wanted - place);
                let rest = rest.lines().next().unwrap_or_default();
                let [heading, wanted] = [place, wanted].map(|place| quoted(&table.headings[place]));
                let written = quoted(&row.cells[place]);
                reader.say(
                    at,
                    MISPLACED.say(&[("written", &written), ("heading", &heading), ("wanted", &wanted)]),
                    MISPLACED_MEND.say(&[("line", &format!("{before}{marks}{rest}"))]),
                );
            }
            let misplaced = misplaced.map(|(place, _)| place);
            let cell = |place: usize| (row.cell(columns[place]).to_owned(), span.clone());
            let some = |place: usize| {
                let told = columns[place].is_some() && columns[place] == misplaced;
                Some(cell(place)).filter(|(text, _)| !text.is_empty() && !told)
            };
            reader.person(cell(0), cell(1), some(2), some(3), some(4));
        }
        reader.finish(ADD_ROW.text())
    }
}

/// The cell of a row too short for its headings that holds what belongs under a later one, for which the row has no cell,
/// and the place of that one: a delimiter was lost.
fn misplaced(table: &Table, row: &Row) -> Option<(usize, usize)> {
    let units = System::ALL.map(System::code);
    let belongs = [("units", &units[..]), ("print", &["large"][..])];
    ["group", "units"].into_iter().find_map(|heading| {
        let place = table.column(heading)?;
        let cell = row.cell(Some(place));
        belongs.iter().find_map(|(name, words)| {
            let wanted = table.column(name).filter(|wanted| *wanted > place && *wanted >= row.cells.len())?;
            words.iter().any(|word| cell.eq_ignore_ascii_case(word)).then_some((place, wanted))
        })
    })
}

#[derive(Default)]
struct Reader {
    people: Vec<Person>,
    problems: Vec<Problem>,
    ids: BTreeMap<String, ()>,
    names: BTreeMap<String, String>,
}

impl Reader {
    fn say(&mut self, span: Range<usize>, what: impl Into<String>, mend: impl Into<String>) {
        self.problems.push(Problem::at(span, what, mend));
    }

    fn person(
        &mut self,
        id: Written,
        name: Written,
        group: Option<Written>,
        units: Option<Written>,
        print: Option<Written>,
    ) {
        let id = (id.0.trim().to_owned(), id.1);
        let sound = |c: char| c.is_ascii_alphanumeric() || matches!(c, '-' | '_' | '.');
        if id.0.is_empty() || id.0.len() > 64 || !id.0.chars().all(sound) || id.0.starts_with(['.', '-']) {
            self.say(id.1.clone(), BAD_ID.say(&[("id", &quoted(&id.0))]), AN_ID.text());
        } else if self.ids.insert(id.0.to_lowercase(), ()).is_some() {
            self.say(id.1.clone(), ID_TWICE.say(&[("id", &quoted(&id.0))]), OTHER_ID.text());
        }
        let name = (self.clean(&name, (NAME_HIDDEN, NAME_LONG)), name.1);
        if name.0.is_empty() {
            self.say(name.1.clone(), NO_NAME.say(&[("id", &quoted(&id.0))]), A_NAME.text());
        } else if let Some(other) = self.names.insert(name.0.to_lowercase(), id.0.clone()) {
            let [called, one, other] = [&name.0, &other, &id.0].map(|text| quoted(text));
            let what = NAME_TWICE.say(&[("name", &called), ("one", &one), ("other", &other)]);
            self.say(name.1, what, TELL_APART.text());
        }
        let group = group.map(|group| self.clean(&group, (GROUP_HIDDEN, GROUP_LONG))).filter(|group| !group.is_empty());
        let units = units.filter(|(text, _)| !text.trim().is_empty());
        let units = units.and_then(|(text, span)| match units_called(&text, span) {
            Ok(units) => Some(units),
            Err(problem) => {
                self.problems.push(problem);
                None
            }
        });
        let large_print = print.is_some_and(|(text, span)| {
            let known = ["large", "usual", ""].into_iter().find(|known| text.trim().eq_ignore_ascii_case(known));
            if known.is_none() {
                self.say(span, NO_PRINT.say(&[("print", &quoted(&text))]), PRINTS.text());
            }
            known == Some("large")
        });
        self.people.push(Person { id: id.0, name: name.0, group, units, large_print });
    }

    fn clean(&mut self, (text, span): &Written, (unseen, long): (Message, Message)) -> String {
        let clean = text.split_whitespace().collect::<Vec<_>>().join(" ");
        if let Some(hidden) = hidden(&clean) {
            self.say(
                span.clone(),
                unseen.say(&[("character", &format!("U+{:04X}", u32::from(hidden)))]),
                TYPE_AGAIN.text(),
            );
        }
        if clean.chars().count() > LONGEST {
            self.say(span.clone(), long.say(&[("most", &LONGEST.to_string())]), SHORTEN.text());
        }
        clean
    }

    fn finish(mut self, add: impl Into<String>) -> Result<Roster, Vec<Problem>> {
        if self.people.is_empty() && self.problems.is_empty() {
            self.problems.push(Problem::whole(NOBODY.text(), add));
        }
        if self.problems.is_empty() { Ok(Roster { people: self.people }) } else { Err(self.problems) }
    }
}

/// The first character that cannot be seen: control characters, marks of direction, zero-width
/// characters, tags, private and unassigned ends. Joiners between two letters outside ASCII are part of some scripts.
fn hidden(text: &str) -> Option<char> {
    let chars: Vec<char> = text.chars().collect();
    let letter = |place: Option<&char>| place.is_some_and(|c| c.is_alphabetic() && !c.is_ascii());
    chars.iter().enumerate().find_map(|(place, c)| {
        let bad = match c {
            '\u{200c}' | '\u{200d}' => !(place > 0 && letter(chars.get(place - 1)) && letter(chars.get(place + 1))),
            '\u{ad}' | '\u{61c}' | '\u{180e}' | '\u{115f}' | '\u{1160}' | '\u{3164}' | '\u{ffa0}' | '\u{feff}' => true,
            '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2060}'..='\u{206f}' => true,
            '\u{fff0}'..='\u{ffff}' | '\u{e000}'..='\u{f8ff}' | '\u{e0000}'..='\u{10ffff}' => true,
            c => c.is_control(),
        };
        bad.then_some(*c)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn lines(text: &str, problems: &[Problem]) -> Vec<usize> {
        problems.iter().map(|problem| problem.line_column(text).map_or(0, |(line, _)| line)).collect()
    }

    #[test]
    fn toml_and_csv_say_the_same() {
        let toml = "[[person]]\nid = \"a1\"\nname = \"Ada  Ölund\"\ngroup = \"day\"\nunits = \"us\"\n\
                    [[person]]\nid = \"a2\"\nname = \"Bo =Lund\"\n";
        let roster = Roster::read_toml(toml).unwrap();
        assert_eq!(roster.people[0].name, "Ada Ölund");
        assert_eq!(roster.people[0].units, Some(System::Us));
        for csv in [
            "id,name,group,units\na1,Ada Ölund,day,US\na2,Bo =Lund,,\n",
            "\u{feff}Name;ID;Units;note;Group\r\n\"Ada\nÖlund\";a1;us;x;day\r\n;;;;\r\nBo =Lund;a2\r\n",
            "id\tname\tunits\tgroup\na1\tAda\u{a0}Ölund\tus\tday\na2\tBo =Lund\t\t\t\t\n",
        ] {
            assert_eq!(Roster::read_csv(csv).unwrap(), roster, "{csv:?}");
        }
    }

    #[test]
    fn every_problem_is_found_at_its_line() {
        let csv = "id,name,group,units\na1,Ada,,\nA1,Bo,,\na3,ADA,,\na/4,Cy,,\na5,\"\",,\na6,Di,,metric\na7,Ed,,,x\n";
        let sizes = Roster::read_csv("id,name,print\na1,Ada,Large\na2,Bo,\n").unwrap();
        assert_eq!(sizes.people.iter().map(|person| person.large_print).collect::<Vec<_>>(), [true, false]);
        assert!(Roster::read_csv("id,name,print\na1,Ada,huge\n").unwrap_err()[0].to_string().contains("size of print"));
        let problems = Roster::read_csv(csv).unwrap_err();
        assert_eq!(lines(csv, &problems), [3, 4, 5, 6, 7, 8], "{problems:#?}");
        let toml = "[[person]]\nid = \"a1\"\nname = \"Ada\"\n[[person]]\nid = \"a1\"\nname = \"ada\"\n";
        assert_eq!(lines(toml, &Roster::read_toml(toml).unwrap_err()), [5, 6]);
        for (csv, what) in [
            ("", "no column"),
            ("id,nam\na,b\n", "nam"),
            ("id,name,id\na,b,c\n", "two columns"),
            ("id,name\n", "nobody"),
            ("id,name\na,\"b\nc,d\n", "never closed"),
        ] {
            let problems = Roster::read_csv(csv).unwrap_err();
            assert!(problems.iter().any(|problem| problem.to_string().contains(what)), "{csv:?}: {problems:?}");
        }
    }

    #[test]
    fn a_heading_that_is_nearly_a_known_one_is_doubted() {
        let text = "id,name,gruop,unit\na1,Ada,day,us\n";
        assert!(Roster::read_csv(text).is_ok());
        let doubts = Roster::doubts(text);
        assert_eq!(doubts.iter().map(|doubt| doubt.span.clone().unwrap().start).collect::<Vec<_>>(), [8, 14]);
        assert!(doubts[0].mend.contains("\"group\"") && doubts[1].mend.contains("\"units\""), "{doubts:?}");
        for sound in ["id,name,group,units,print", "id;name;note;badge", "Name,ID,shift"] {
            assert_eq!(Roster::doubts(&format!("{sound}\n")), [], "{sound}");
        }
    }

    #[test]
    fn what_stands_under_an_earlier_heading_is_pointed_at() {
        for (headings, row, word, heading, wanted, line) in [
            ("id,name,group,units", "P04,Ada night shift,si", "si", "group", "units", "P04,Ada night shift,,si"),
            ("id,name,group,units,print", "a1,\"Ada, B\", US", "US", "group", "units", "a1,\"Ada, B\", ,US"),
            ("id;name;group;units;print", "a1;Ada;large", "large", "group", "print", "a1;Ada;;;large"),
            ("id,name,group,units,print", "a1,Ada,day,Large", "Large", "units", "print", "a1,Ada,day,,Large"),
            ("id,name,units,print", "a1,Ada,large", "large", "units", "print", "a1,Ada,,large"),
        ] {
            let csv = format!("{headings}\na0{}\n{row}\r\n", headings.chars().nth(2).unwrap().to_string() + "Bo");
            let problems = Roster::read_csv(&csv).unwrap_err();
            let at = csv.rfind(word).unwrap();
            assert_eq!(problems.len(), 1, "{row}: {problems:?}");
            assert_eq!(problems[0].span, Some(at..at + word.len()), "{row}");
            let what = format!("\"{word}\" stands under \"{heading}\", and this row has no cell under \"{wanted}\".");
            assert_eq!(problems[0].what, what);
            assert_eq!(problems[0].mend.lines().last(), Some(line), "{row}");
        }
        for row in ["a1,Ada,si,", "a1,Ada,us,si", "a1,Ada", "a1,Ada,site", "a1,si"] {
            assert!(Roster::read_csv(&format!("id,name,group,units\n{row}\n")).is_ok(), "{row}");
        }
        // With no heading for it, it is a group like any other.
        assert!(Roster::read_csv("id,name,group,note\na1,Ada,si\n").is_ok());
    }

    #[test]
    fn hostile_names_are_refused_and_odd_ones_kept() {
        for name in
            ["a\u{202e}dA", "Ada\u{7}", "A\u{200b}da", "\u{feff}Ada", "A\u{200d}da", "\u{e0041}", &"x".repeat(121)]
        {
            let csv = format!("id,name\na1,{name}\n");
            assert!(Roster::read_csv(&csv).is_err(), "{name:?}");
        }
        for name in ["=cmd()", "O'Neil, \"Bob\" <b>&amp;", "-", "محمد", "نمی\u{200c}خواهم", "李雷", "'@x", "Zoë"]
        {
            let quoted = name.replace('"', "\"\"");
            let roster = Roster::read_csv(&format!("id,name\na1,\"{quoted}\"\n")).unwrap();
            // Our own guard comes off; everything else stays.
            assert_eq!(
                roster.people[0].name,
                name.strip_prefix("'@").map_or(name.to_owned(), |rest| format!("@{rest}"))
            );
        }
    }
}
