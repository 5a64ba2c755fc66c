//! A quotation mark without its fellow: the TOML reader takes what follows for something else, and stumbles more than once.

use core::ops::Range;

use toml::de::DeTable;

use super::line_at;

/// Where a quotation mark is lacking, and the line with it.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Lacking {
    /// The line without it, in bytes.
    pub line: Range<usize>,
    /// Where the mark belongs.
    pub at: usize,
    /// The line as it is meant.
    pub meant: String,
}

/// The quotation mark that the line at `at` lacks, where its marks are odd and one more leaves nothing wrong in it.
pub(super) fn lacking(text: &str, at: usize) -> Option<Lacking> {
    let (from, line) = line_at(text, at)?;
    let marks = line.replace("\\\"", "").matches('"').count();
    // Three of them stand round text of several lines.
    if marks % 2 == 0 || line.contains("\"\"\"") {
        return None;
    }
    let sound = |place: &usize| {
        let with = format!("{}\"{}", &text[..from + place], &text[from + place..]);
        let end = from + line.len() + 1;
        let within = |fault: &toml::de::Error| fault.span().is_none_or(|span| (from..=end).contains(&span.start));
        !DeTable::parse_recoverable(&with).1.iter().any(within)
    };
    let place = places(line).into_iter().find(sound)?;
    let meant = format!("{}\"{}", &line[..place], &line[place..]);
    Some(Lacking { line: from..from + line.len(), at: from + place, meant: meant.trim().to_owned() })
}

/// Where in `line` a mark may belong, the likeliest first: where something ends, then where something begins.
fn places(line: &str) -> Vec<usize> {
    let end = line.trim_end().len();
    let remark = line.find(" #").map(|place| line[..place].trim_end().len());
    let closing =
        [", ", ",", " }", "}", "]"].into_iter().flat_map(|mark| line.match_indices(mark)).map(|(place, _)| place);
    let opening = ["= ", "=", "[", ", ", "{ "]
        .into_iter()
        .flat_map(|mark| line.match_indices(mark).map(move |(place, _)| place + mark.len()));
    closing.chain(remark).chain([end]).chain(opening).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_mark_belongs_where_nothing_stays_wrong() {
        for (line, meant) in [
            ("topics = [\"mount, \"chain\"]", "topics = [\"mount\", \"chain\"]"),
            ("topics = [\"mount\", \"chain]", "topics = [\"mount\", \"chain\"]"),
            ("topics = [\"mount\", chain\"]", "topics = [\"mount\", \"chain\"]"),
            ("x = { between = [\"12 °C, \"30 °C\"] }", "x = { between = [\"12 °C\", \"30 °C\"] }"),
            ("x = { value = \"1 mm, source = \"s\" }", "x = { value = \"1 mm\", source = \"s\" }"),
            ("name = \"drive", "name = \"drive\""),
            ("name = \"drive # ours", "name = \"drive\" # ours"),
            ("name = drive\"", "name = \"drive\""),
        ] {
            let text = format!("a = 1\n{line}\nb = 2\n");
            let lacking = lacking(&text, text.find(line).unwrap() + 9).unwrap_or_else(|| panic!("{line}"));
            assert_eq!((lacking.meant.as_str(), &text[lacking.line]), (meant, line));
        }
    }

    #[test]
    fn nothing_lacks_where_marks_are_even_or_one_more_does_not_help() {
        for line in ["name = drive", "name = \"a \"b\" c\"", "name = \"\"\"", "= \"", "\" = [ \\"] {
            assert_eq!(lacking(&format!("{line}\n"), 0), None, "{line}");
        }
    }
}
