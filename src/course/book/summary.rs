//! The list of chapters: what in it is no entry that the book program reads.

use drivecourse_machine::{Problem, messages, told};

use crate::links;

messages! { pub(crate) SAYS {
    NO_ENTRY = "problem-summary-no-entry", "This line names a chapter and is no entry of the list.";
    NO_ENTRY_MEND = "problem-summary-no-entry-mend", "Write it so:\n{line}";
    UNREADABLE = "problem-summary-unreadable", "The list of chapters cannot be read here: {why}.";
    UNREADABLE_MEND = "problem-summary-unreadable-mend", "Let each line be a heading, such as # Reference, or an entry, such as - [Chain](chain.md).";
} }

/// What is wrong in `SUMMARY.md`; nothing where the book program can read all of it.
#[must_use]
pub fn summary_problems(text: &str) -> Vec<Problem> {
    let links = links::links(text, "SUMMARY.md");
    let mut problems = Vec::new();
    let mut start = 0;
    for line in text.split_inclusive('\n') {
        let (shown, span) = (line.trim(), start..start + line.trim_end().len());
        start += line.len();
        let is_linked = links.iter().any(|link| span.contains(&link.span.start));
        if is_linked || !shown.contains(".md") || shown.starts_with(['#', '<']) {
            continue;
        }
        // What is indented stands below the chapter before it.
        let indent = &line[..line.len() - line.trim_start().len()];
        let mend = told!(NO_ENTRY_MEND, "line" = format!("{indent}{}", entry(shown)));
        problems.push(Problem::at(span.start + indent.len()..span.end, told!(NO_ENTRY), mend));
    }
    if problems.is_empty()
        && let Err(error) = mdbook_summary::parse_summary(text)
    {
        problems.push(unreadable(&error.root_cause().to_string(), text));
    }
    problems
}

/// The line that a broken entry is meant to be.
fn entry(line: &str) -> String {
    let marks = |c: char| c.is_whitespace() || "-*+[](){}<>:".contains(c);
    let end = line.find(".md").map_or(line.len(), |at| at + ".md".len());
    let start = line[..end].rfind(marks).map_or(0, |at| at + 1);
    let (file, title) = (&line[start..end], line[..start].trim_matches(marks));
    // One that has no title is called by its file.
    let title = if title.is_empty() { file.trim_end_matches(".md") } else { title };
    format!("- [{title}]({file})")
}

/// What the book program says of the list, at the line that it names.
fn unreadable(said: &str, text: &str) -> Problem {
    let place = said.strip_prefix("failed to parse SUMMARY.md line ").and_then(|rest| rest.split_once(", column "));
    let named = place.and_then(|(line, rest)| Some((line.parse::<usize>().ok()?, rest.split_once(": ")?.1)));
    let mend = told!(UNREADABLE_MEND);
    let Some((number, why)) = named else { return Problem::whole(told!(UNREADABLE, "why" = said), mend) };
    let start = text.split_inclusive('\n').take(number.saturating_sub(1)).map(str::len).sum::<usize>();
    let line = text[start..].lines().next().unwrap_or_default();
    Problem::at(start..start + line.len(), told!(UNREADABLE, "why" = why), mend)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_broken_entry_is_told_at_its_line_with_the_line_that_is_meant() {
        for (broken, meant) in [
            ("- [Chain(chain.md)", "- [Chain](chain.md)"),
            ("- Chain(chain.md)", "- [Chain](chain.md)"),
            ("[Chain(chain.md)", "- [Chain](chain.md)"),
            ("- [Chain] chain.md", "- [Chain](chain.md)"),
            ("- [Chain] (more/chain.md)", "- [Chain](more/chain.md)"),
            ("  - chain.md", "  - [chain](chain.md)"),
            ("* Chain and sag: chain.md", "- [Chain and sag](chain.md)"),
        ] {
            let text =
                format!("# Summary\n\n- [Ours](ours.md)\n{broken}\n- [Heat](heat.md)\n\n# Rest\n\n- [S](s.md)\n");
            let problems = summary_problems(&text);
            assert_eq!(problems.len(), 1, "{broken}: {problems:?}");
            assert_eq!(problems[0].line_column(&text).unwrap().0, 4, "{broken}");
            assert_eq!(problems[0].mend.lines().last(), Some(meant), "{broken}");
        }
    }

    #[test]
    fn what_the_book_program_reads_is_sound_and_what_else_it_refuses_is_told() {
        let sound = "# Summary\n\n[Before](before.md)\n\n- [One](one.md)\n  - [Two](two.md)\n- [Later]()\n\n---\n\n[End](end.md)\n";
        assert_eq!(summary_problems(sound), []);
        assert_eq!(summary_problems(""), []);
        let twice = summary_problems("# Summary\n\n- [One](one.md)\n- [Two](one.md)\n");
        assert!(twice.len() == 1 && twice[0].what.contains("one.md"), "{twice:?}");
        let text = "# Summary\n\n- [One](one.md)\n- **later**\n";
        assert_eq!(summary_problems(text)[0].line_column(text).map(|(line, _)| line), Some(4));
    }
}
