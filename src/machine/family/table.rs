//! A table of real machines, one row each, that a family draws from.
//!
//! ```csv
//! machine,chain.size,drive.motor_power [kW],chain.centres_planned [mm]
//! BC-104,80,7.5,1020
//! BC-107,80,10 hp,1016
//! ```
//!
//! The first row names quantities, each with the unit of its column in square brackets where it has one; a cell may
//! bring its own unit. The column `machine` names the row, if there is one, and no two rows alike. A column whose heading
//! begins with `#` is the author's own note and passed over. Commas, semicolons and tabs part cells; a number with a decimal
//! comma stands in quotation marks where commas do.

mod cells;
mod commas;

use core::ops::Range;

use super::reader::Reader;
use super::written::heading;
use crate::amount::{self, AND, OR, list};
use crate::messages;
use crate::problem::{NO_POSSIBILITY, NO_QUANTITY, Problem, other_quantity, quoted};
use crate::registry::{QuantityId, Registry, nearest};
use crate::unit::{System, Unit};

messages! { pub(crate) SAYS {
    OPEN = "problem-table-open", "This quotation mark is never closed.";
    OPEN_MEND = "problem-table-open-mend", "Close it, or double it inside a cell.";
    EMPTY = "problem-table-empty", "The table is empty.";
    EMPTY_MEND = "problem-table-empty-mend", "Let its first row name quantities, such as chain.size or drive.motor_power [kW].";
    NO_HEADINGS = "problem-table-no-headings", "The headings are missing: the first line of a table names what stands in each column.";
    NO_HEADINGS_MEND = "problem-table-no-headings-mend", "Put a line such as this one before it, with one heading for each column:\n{line}";
    TWO_COLUMNS = "problem-table-two-columns", "There are two columns of this name.";
    TWO_COLUMNS_MEND = "problem-table-two-columns-mend", "Take one of them out.";
    CELLS = "problem-table-cells", "This row has {cells} cells under {headings} headings.";
    ONE_CELL = "problem-table-one-cell", "This row has one cell under {headings} headings.";
    CELLS_MEND = "problem-table-cells-mend", "Give every machine one cell under each heading; put a cell that holds the delimiter in quotation marks.";
    COMMA = "problem-table-comma", "This row has {cells} cells under {headings} headings; perhaps the comma in {written} is a decimal comma.";
    COMMA_MEND = "problem-table-comma-mend", "Write {number}, or {quoted} with its quotation marks, or part all cells by semicolons. If it is none, take out the cell too many.";
    COMMA_THREE_MEND = "problem-table-comma-three-mend", "Write {number}, without a comma. If it is none, take out the cell too many.";
    STRANDS_MEND = "problem-table-strands-mend", "{called} Write {size} here, and {strands} in a column chain.strands.";
    TWO_MACHINES = "problem-table-two-machines", "There are two machines called {name}; the other one stands in line {line}.";
    TWO_MACHINES_MEND = "problem-table-two-machines-mend", "Give one of them another name, or take it out.";
    NAMELESS = "problem-table-nameless", "This machine has no name, and the others have one.";
    NAMELESS_MEND = "problem-table-nameless-mend", "Write its name, or take the row out. Where no machine has a name, take out the column machine.";
    NO_MACHINE = "problem-table-no-machine", "The table has no machine in it.";
    NO_MACHINE_MEND = "problem-table-no-machine-mend", "Add a row for each machine.";
    NOTE_MEND = "problem-table-note-mend", "{mend} Take a column of anything else out, or begin its heading with # to keep it as a note.";
    NO_UNIT = "problem-table-no-unit", "{unit} is no unit of {name}, which is {kind}.";
    NO_UNIT_BARE = "problem-table-no-unit-bare", "Take the bracket out of the heading.";
    NO_UNIT_MEND = "problem-table-no-unit-mend", "Write [{si}] or [{us}], say.";
    NO_UNIT_ALONE = "problem-table-no-unit-alone", "Write [{unit}], say.";
    LACKS = "problem-table-lacks", "This machine has no {name}.";
    LACKS_MEND = "problem-table-lacks-mend", "Fill the cell in, with what is usual where nobody knows it; or take the column out, and what needs it is not asked; or the machine.";
} }

/// A problem in a family's file, or in the table beside it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FamilyProblem {
    /// The table it is in; `None` for the family's own file.
    pub table: Option<String>,
    /// What and where.
    pub problem: Problem,
}

/// The column that names the machine.
const NAME: &str = "machine";

/// Headings for whoever has none.
const EXAMPLE: [&str; 3] = [NAME, "chain.size", "drive.motor_power [kW]"];

/// What the heading of a column of notes begins with.
const NOTE: char = '#';

/// A cell and where it stands.
#[derive(Debug, Clone, PartialEq)]
struct Cell {
    text: String,
    span: Range<usize>,
}

/// The machines of a table: their names, their values and their places, after the place of the headings.
#[derive(Debug, Default)]
pub(super) struct Machines {
    pub(super) names: Vec<String>,
    pub(super) pool: Vec<Vec<(QuantityId, f64)>>,
    pub(super) headings: Range<usize>,
    pub(super) columns: Vec<(QuantityId, Range<usize>)>,
    pub(super) rows: Vec<Range<usize>>,
    pub(super) cells: Vec<Vec<(QuantityId, Range<usize>)>>,
    pub(super) systems: Vec<(QuantityId, System)>,
}

#[derive(Debug, Clone, PartialEq)]
enum Column {
    Name,
    /// The author's own, or one whose heading cannot be used: its cells are passed over.
    Note,
    Value(QuantityId, Option<String>),
}

/// Reads the machines in `text`; every problem goes to `reader`. `usual` are the columns that a table of the family may be
/// expected to have.
pub(super) fn machines(text: &str, usual: &[QuantityId], reader: &mut Reader) -> Machines {
    let (rows, open) = cells::rows(text);
    let mut rows = rows.into_iter();
    open.into_iter().for_each(|at| reader.say(at..at + 1, told!(OPEN), told!(OPEN_MEND)));
    let Some(headings) = rows.next() else {
        reader.problems.push(Problem::whole(told!(EMPTY), told!(EMPTY_MEND)));
        return Machines::default();
    };
    let whole =
        |row: &[Cell]| row.first().map_or(0, |cell| cell.span.start)..row.last().map_or(0, |cell| cell.span.end);
    if !headings.iter().any(|heading| may_be_heading(&heading.text)) {
        let mark = char::from(cells::delimiter(text)).to_string();
        let usual = usual.iter().map(|id| heading(*id, System::default()));
        let usual: Vec<_> = core::iter::once(NAME.to_owned()).chain(usual).collect();
        // Of a family that is like none with a table, any heading may do.
        let usual = if usual.len() > 1 { usual } else { EXAMPLE.map(str::to_owned).to_vec() };
        reader.say(whole(&headings), told!(NO_HEADINGS), told!(NO_HEADINGS_MEND, "line" = usual.join(&mark)));
        return Machines::default();
    }
    // What is wrong with one heading or cell hides nothing that is wrong elsewhere.
    let mut columns: Vec<_> = headings.iter().map(|heading| column(heading, reader).unwrap_or(Column::Note)).collect();
    for (place, heading) in headings.iter().enumerate() {
        let name = |cell: &Cell| cell.text.split('[').next().unwrap_or("").trim().to_lowercase();
        let note = heading.text.starts_with(NOTE);
        if !note && headings[..place].iter().any(|other| name(other) == name(heading)) {
            reader.say(heading.span.clone(), told!(TWO_COLUMNS), told!(TWO_COLUMNS_MEND));
            columns[place] = Column::Note;
        }
    }
    let mut out = Machines { headings: whole(&headings), ..Machines::default() };
    let mut named: Vec<&Cell> = Vec::new();
    let place = |(column, cell): (&Column, &Cell)| match column {
        Column::Value(id, _) => Some((*id, cell.span.clone())),
        Column::Name | Column::Note => None,
    };
    let rows: Vec<_> = rows.collect();
    let mut usual = None;
    for row in &rows {
        if row.len() != columns.len() {
            let usual = usual.get_or_insert_with(|| commas::usual(&rows, &columns));
            let parted = commas::parted(row, &columns, usual, text);
            if !parted.is_empty() {
                say_parted(row, columns.len(), &parted, reader);
                continue;
            }
            reader.say(
                whole(row),
                match row.len() {
                    1 => told!(ONE_CELL, "headings" = columns.len().to_string()),
                    cells => told!(CELLS, "cells" = cells.to_string(), "headings" = columns.len().to_string()),
                },
                told!(CELLS_MEND),
            );
            continue;
        }
        let mut values = Vec::new();
        let mut name = (out.pool.len() + 1).to_string();
        for (cell, column) in row.iter().zip(&columns) {
            match column {
                // What begins with a mark that is never closed has been told of.
                _ if open.is_some_and(|at| cell.span.contains(&at)) => {}
                // Where none has a name, each is called by its place.
                Column::Name if cell.text.is_empty() && none_is_named(&rows, &columns) => {}
                Column::Name if cell.text.is_empty() => {
                    // An empty cell has no width to point at.
                    reader.say(whole(row), told!(NAMELESS), told!(NAMELESS_MEND));
                }
                Column::Name => {
                    name.clone_from(&cell.text);
                    let same = |other: &&&Cell| other.text.to_lowercase() == name.to_lowercase();
                    match named.iter().find(same) {
                        Some(first) => {
                            let line = (text[..first.span.start].matches('\n').count() + 1).to_string();
                            reader.say(
                                cell.span.clone(),
                                told!(TWO_MACHINES, "name" = quoted(&name), "line" = line),
                                told!(TWO_MACHINES_MEND),
                            );
                        }
                        None => named.push(cell),
                    }
                }
                Column::Note => {}
                Column::Value(id, unit) => values.extend(value(cell, *id, unit.as_deref(), reader).map(|it| (*id, it))),
            }
        }
        values.sort_by_key(|(id, _)| *id);
        out.names.push(name);
        out.pool.push(values);
        out.rows.push(whole(row));
        out.cells.push(columns.iter().zip(row).filter_map(place).collect());
    }
    out.columns = columns.iter().zip(&headings).filter_map(place).collect();
    out.systems = columns.iter().filter_map(system).collect();
    if rows.is_empty() {
        reader.problems.push(Problem::whole(told!(NO_MACHINE), told!(NO_MACHINE_MEND)));
    }
    out
}

/// Whether no row has anything in the column of names.
fn none_is_named(rows: &[Vec<Cell>], columns: &[Column]) -> bool {
    let place = columns.iter().position(|column| *column == Column::Name);
    rows.iter().all(|row| place.and_then(|place| row.get(place)).is_none_or(|cell| cell.text.is_empty()))
}

/// The set of units that a column is written in, where only one has its unit.
fn system(column: &Column) -> Option<(QuantityId, System)> {
    let Column::Value(id, Some(unit)) = column else { return None };
    let has = |system: &&System| Unit::named(unit).any(|named| named == id.get().unit(**system));
    match System::ALL.iter().filter(has).collect::<Vec<_>>().as_slice() {
        [one] => Some((*id, **one)),
        _ => None,
    }
}

/// Says which cells of a row are numbers with a decimal comma.
fn say_parted(row: &[Cell], columns: usize, parted: &[commas::Parted], reader: &mut Reader) {
    let [Some(first), Some(last)] = [parted.first(), parted.last()] else { return };
    let sure = parted.len() == row.len() - columns;
    let joined = |names: Vec<String>| list(&names, if sure { AND } else { OR });
    let written = joined(parted.iter().map(|pair| pair.written.clone()).collect());
    let number = joined(parted.iter().map(|pair| list(&pair.meant, OR)).collect());
    let mend = match parted.iter().all(|pair| pair.meant.len() == 1) {
        true => {
            let quoted = joined(parted.iter().map(|pair| quoted(&pair.written)).collect());
            told!(COMMA_MEND, "number" = number, "quoted" = quoted)
        }
        // In quotation marks it would not be told what is meant either.
        false => told!(COMMA_THREE_MEND, "number" = number),
    };
    let (cells, headings) = (row.len().to_string(), columns.to_string());
    let what = told!(COMMA, "cells" = cells, "headings" = headings, "written" = written);
    reader.say(first.span.start..last.span.end, what, mend);
}

/// Whether this is a heading or could be meant for one, and is not the cell of a machine.
fn may_be_heading(text: &str) -> bool {
    let name = text.split('[').next().unwrap_or("").trim();
    let registry = Registry::get();
    let names = || registry.quantities().map(|id| id.get().id).chain([NAME]);
    let known = text.starts_with(NOTE) || name.eq_ignore_ascii_case(NAME) || registry.find(name).is_some();
    known || name.contains(|c: char| c.is_alphabetic()) && nearest(name, names()).is_some()
}

/// What a heading stands for.
fn column(heading: &Cell, reader: &mut Reader) -> Option<Column> {
    if heading.text.starts_with(NOTE) {
        return Some(Column::Note);
    }
    let (name, unit) = match heading.text.split_once('[') {
        Some((name, unit)) => (name.trim(), Some(unit.trim_end().trim_end_matches(']').trim())),
        None => (heading.text.as_str(), None),
    };
    if name.eq_ignore_ascii_case(NAME) {
        return Some(Column::Name);
    }
    let registry = Registry::get();
    let Some(id) = registry.find(name) else {
        let near = nearest(name, [NAME].into_iter()).or_else(|| registry.suggestion(name));
        let mend = told!(NOTE_MEND, "mend" = other_quantity(near));
        reader.say(heading.span.clone(), told!(NO_QUANTITY, "name" = quoted(name)), mend);
        return None;
    };
    let quantity = id.get();
    if let Some(unit) = unit
        && !Unit::named(unit).any(|known| known.kind == quantity.kind)
    {
        let [si, us] = System::ALL.map(|system| quantity.unit(system).symbol);
        let mend = match si {
            "" => told!(NO_UNIT_BARE),
            _ if si == us => told!(NO_UNIT_ALONE, "unit" = si),
            _ => told!(NO_UNIT_MEND, "si" = si, "us" = us),
        };
        reader.say(
            heading.span.clone(),
            told!(NO_UNIT, "unit" = quoted(unit), "name" = name, "kind" = quantity.kind.name()),
            mend,
        );
        return None;
    }
    Some(Column::Value(id, unit.map(str::to_owned)))
}

fn value(cell: &Cell, id: QuantityId, unit: Option<&str>, reader: &mut Reader) -> Option<f64> {
    if cell.text.is_empty() {
        reader.say(cell.span.clone(), told!(LACKS, "name" = id.get().id), told!(LACKS_MEND));
        return None;
    }
    if let (Some((size, strands)), Some(called)) =
        (amount::strands_behind(id.get(), &cell.text), amount::called_here(id.get(), &cell.text))
    {
        reader.say(
            cell.span.clone(),
            told!(NO_POSSIBILITY, "written" = quoted(&cell.text), "name" = id.get().id),
            told!(STRANDS_MEND, "called" = called, "size" = size, "strands" = strands.to_string()),
        );
        return None;
    }
    // A bare number is in the unit of its column.
    let unit = unit.and_then(|unit| Unit::named(unit).find(|unit| unit.kind == id.get().kind));
    reader.cell(id, &cell.text, unit, &cell.span)
}

#[cfg(test)]
mod tests {
    use super::super::Family;

    const FAMILY: &str = "name = \"Plant\"\nmachines = \"plant.csv\"\n";

    /// Line, column and words of a problem.
    type Told = (Option<usize>, Option<usize>, String);

    fn read(table: &str) -> Result<Family, Vec<Told>> {
        let tables = |name: &str| (name == "plant.csv").then(|| table.to_owned());
        Family::read_whole("plant", FAMILY, &[], tables).map_err(|problems| {
            let told = problems.into_iter().map(|found| {
                assert_eq!(found.table.as_deref(), Some("plant.csv"));
                let place = found.problem.line_column(table);
                (place.map(|place| place.0), place.map(|place| place.1), found.problem.to_string())
            });
            told.collect()
        })
    }

    #[test]
    fn rows_become_the_pool() {
        for table in [
            "machine,chain.size,drive.motor_power [kW]\nBC 1,80,7.5\n\"BC, 2\",08B,10 hp\n",
            "\u{feff}machine;chain.size;drive.motor_power [kW]\r\n\r\nBC 1;80;7,5\r\nBC, 2;08B;10 hp\r\n;;\r\n",
        ] {
            let family = read(table).unwrap();
            assert_eq!(family.machines, ["BC 1", "BC, 2"]);
            let power = crate::Registry::get().find("drive.motor_power").unwrap();
            let powers: Vec<f64> =
                family.pool.iter().map(|row| row.iter().find(|(id, _)| *id == power).unwrap().1).collect();
            assert!((powers[0] - 7500.0).abs() < 1e-9 && (powers[1] - 7456.998).abs() < 0.01, "{powers:?}");
        }
    }

    #[test]
    fn notes_are_passed_over_and_a_name_is_had_by_all_rows_or_none() {
        let family = read("#,chain.size,machine,# order [kW],#\nyard,80,K-1,,x\n,60,K-2,A 17,\n").unwrap();
        assert_eq!(family.machines, ["K-1", "K-2"]);
        assert!(family.pool.iter().all(|row| row.len() == 1), "{:?}", family.pool);
        let problems = read("chain.size,machine\n80,K-1\n60,\n").unwrap_err();
        assert!(problems[0].0 == Some(3) && problems[0].2.contains("has no name"), "{problems:?}");
        assert_eq!(read("chain.size\n80\n60\n").unwrap().machines, ["1", "2"]);
    }

    #[test]
    fn problems_name_row_and_column() {
        for (table, line, column, what) in [
            ("machine,chain.sise\na,80\n", 1, 9, "Did you mean \"chain.size\"?"),
            ("machine,chain.sise\na,80\n", 1, 9, "begin its heading with #"),
            ("machine,place in the yard\na,80\n", 1, 9, "begin its heading with #"),
            ("machine,chain.size\nK-1,80\nK-2,80\nk-1,60\n", 4, 1, "called \"k-1\"; the other one stands in line 2"),
            ("machine,chain.size\na,16A\n", 2, 3, "16A is called 80 here"),
            ("machine,drive.motor_power [kN]\na,80\n", 1, 9, "is no unit of"),
            ("machine,chain.size\na,80\nb,81\n", 3, 3, "none of the possibilities"),
            ("machine,drive.motor_power [kW]\na,7.5\nb, much\n", 3, 4, "cannot be read"),
            ("machine,chain.size\na,80,3\n", 2, 1, "3 cells under 2 headings."),
            ("machine,chain.size\na,24B-2\n", 2, 3, "Write 24B here, and 2 in a column chain.strands."),
            ("machine,chain.size\na,16A-2\n", 2, 3, "16A-2 is 80 with the number of its strands behind it"),
            ("machine,chain.sag_share_wanted\na,2 %\nb,1.5\n", 3, 3, "Write \"1.5 %\", or \"150 %\""),
            ("machine,chain.centres_planned [mm]\na,\"1,350\"\n", 2, 3, "Write \"1350 mm\" or \"1.35 mm\"."),
            ("machine,chain.size,drive.ratio\na,80,\n", 2, 6, "has no drive.ratio"),
            ("machine,chain.size\na,\"80\n", 2, 3, "never closed"),
            (
                "machine,drive.ratio\na,1/25\nb,0.04\n",
                3,
                3,
                "is never below 1, and this is 0.04. It is the speed in over",
            ),
            ("machine,drive.ratio\na,\"1:31,5\"\nb,0.04\n", 3, 3, "the speed out: write 25."),
            ("machine,drive.stage_efficiency\na,97\n", 2, 3, "is never above 1, and this is 97. Write 97 % if that"),
            ("machine,chain.teeth_small\na,3\n", 2, 3, "is never below 6, and this is 3. Mend the value."),
            ("machine,load.shaft_diameter [mm]\na,Ø50 k6\nb,Ø50 x 100\n", 3, 3, "\"Ø50 x 100\" cannot be read as"),
            ("chain.size,chain.size\n80,80\n", 1, 12, "two columns"),
        ] {
            let problems = read(table).unwrap_err();
            assert_eq!((problems[0].0, problems[0].1), (Some(line), Some(column)), "{table}: {problems:?}");
            assert!(problems[0].2.contains(what), "{problems:?}");
        }
        for table in ["", "machine,chain.size\n"] {
            assert_eq!(read(table).unwrap_err().len(), 1);
        }
    }

    #[test]
    fn a_decimal_comma_that_parts_cells_is_pointed_at() {
        let headings = "machine,chain.size,drive.motor_power [kW],chain.centres_planned [mm],chain.teeth_small\n";
        let sound = "K-2,60,11,1250,21\n";
        for (row, column, width, says) in [
            ("K-1,80,7,5,1020,19", 8, 3, &["6 cells under 5", "comma in 7,5 is", "Write 7.5, or \"7,5\" with its"][..]),
            ("K-1,80,11,1231,4,19", 11, 6, &["comma in 1231,4 is"]),
            ("K-1,80,7,5 kW,1020,19", 8, 6, &["Write 7.5 kW, or"]),
            ("K-1,80,7,5,1020,5,19", 8, 10, &["7 cells under 5", "in 7,5 and 1020,5 is", "7.5 and 1020.5"]),
            ("K-1,80,11,1,350,19", 11, 5, &["in 1,350 is", "Write 1350 or 1.350, without a comma."]),
            // One more cell that is wrong hides nothing.
            ("K-1,81,7,5,1020,19", 8, 3, &["in 7,5 is"]),
            // Either may be meant: 7.5 kW and 31 mm are as strange as 7 kW and 5.31 mm.
            ("K-1,80,7,5,31,19", 8, 6, &["in 7,5 or 5,31 is", "Write 7.5 or 5.31"]),
        ] {
            let table = format!("{headings}{row}\n{sound}");
            let problems = Family::read_whole("plant", FAMILY, &[], |_| Some(table.clone())).unwrap_err();
            let problem = &problems[0].problem;
            let span = problem.span.clone().unwrap();
            assert_eq!((problem.line_column(&table), span.len()), (Some((2, column)), width), "{row}: {problems:?}");
            let told = problem.to_string();
            assert!(says.iter().all(|part| told.contains(part)), "{row}: {told}");
        }
        for row in ["K-1,80,7.5,1020,19,", "K-1,80,7, 5,1020,19", "K-1,80,\"7\",5,1020,19", "K-1,80,7.5,1020,19,3,4,5"]
        {
            let told = &read(&format!("{headings}{row}\n{sound}")).unwrap_err()[0];
            assert!(told.1 == Some(1) && told.2.contains(" cells under 5 headings. "), "{row}: {told:?}");
        }
        let semicolons = format!("{headings}{sound}").replace(',', ";");
        let told = &read(&format!("{semicolons}K-1;80;7;5;1020;19\n")).unwrap_err()[0];
        assert!(told.2.contains("6 cells under 5 headings. "), "{told:?}");
    }

    #[test]
    fn a_unit_that_ends_in_a_figure_is_no_bare_number() {
        let table = "machine,drive.motor_speed [r/min]\na,1450\nb,24.2 s^-1\nc,1450 min-1\nd,\"30,5\"\n";
        let family = read(table).unwrap();
        let turns = |row: usize| family.pool[row][0].1 * 60.0 / core::f64::consts::TAU;
        for (row, value) in [1450.0, 1452.0, 1450.0, 30.5].into_iter().enumerate() {
            approx::assert_relative_eq!(turns(row), value, max_relative = 1e-12);
        }
    }

    #[test]
    fn a_table_without_headings_is_told_so_once() {
        for table in ["a,80,7.5\nb,60,3\n", "\nBC-104;80;7,5\nBC-105;60;4\n", "80\n60\n"] {
            let problems = read(table).unwrap_err();
            assert_eq!(problems.len(), 1, "{problems:?}");
            let first = if table.starts_with('\n') { 2 } else { 1 };
            assert_eq!((problems[0].0, problems[0].1), (Some(first), Some(1)));
            assert!(problems[0].2.contains("headings are missing"), "{problems:?}");
            let mark = if table.contains(';') { ";" } else { "," };
            assert!(problems[0].2.ends_with(&["\nmachine", "chain.size", "drive.motor_power [kW]"].join(mark)));
        }
        // A family that is like one with machines has their columns.
        let old = "name = \"Old\"\n[[pool]]\n\"chain.size\" = \"80\"\n\"drive.ratio\" = 20\n";
        let old = Family::read("old", old).unwrap();
        let new = format!("like = \"old\"\n{FAMILY}");
        let problems = Family::read_whole("new", &new, &[&old], |_| Some("a,20,80\n".to_owned())).unwrap_err();
        assert_eq!(problems.len(), 1, "{problems:?}");
        assert!(problems[0].problem.mend.ends_with("\nmachine,drive.ratio,chain.size"), "{problems:?}");
    }

    #[test]
    fn no_problem_hides_another() {
        for (table, places) in [
            // A name that nobody knows, a unit that does not fit, a column twice, and what is wrong in their rows.
            (
                "machine,chain.sise,drive.motor_power [kN],drive.ratio,drive.ratio\nK-1,80,3,much,5\nk-1,80,3,,5\n",
                &[(1, 9), (1, 20), (1, 55), (2, 10), (3, 1), (3, 10)][..],
            ),
            ("machine,chain.size,drive.ratio\na,81,much\nb,80\nc,,12\n", &[(2, 3), (2, 6), (3, 1), (4, 3)]),
            // A mark that is never closed spoils its own line.
            ("machine,chain.size,drive.ratio\na,\"80,much\nb,81,12\n", &[(2, 3), (2, 7), (3, 3)]),
        ] {
            let mut found: Vec<_> =
                read(table).unwrap_err().iter().map(|told| (told.0.unwrap(), told.1.unwrap())).collect();
            found.sort_unstable();
            assert_eq!(found, places, "{table}: {:?}", read(table));
        }
    }
}
