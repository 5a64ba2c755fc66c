//! Keeps a number and its unit on one line: "10 kW" written in a chapter gets the space that does not break, which the
//! program's own amounts have already.

use drivecourse_machine::amount::SPACE;
use drivecourse_machine::unit::UNITS;

/// Elements whose text stands as it was typed.
const AS_TYPED: &[&str] = &["code", "pre", "samp", "kbd", "svg", "script", "style", "textarea"];

/// `html` with every plain space between a figure and the symbol of a unit made one that does not break.
pub(super) fn tie(html: &str) -> String {
    let mut out = String::with_capacity(html.len());
    let mut rest = html;
    while let Some((text, tag)) = rest.split_once('<') {
        tie_text(text, &mut out);
        let typed = AS_TYPED.iter().find(|name| {
            tag.strip_prefix(**name)
                .is_some_and(|after| after.starts_with(|c: char| c == '>' || c.is_ascii_whitespace()))
        });
        let end = match typed {
            Some(name) => tag.find(&format!("</{name}>")),
            None => tag.find('>'),
        };
        let end = end.unwrap_or(tag.len());
        out.push('<');
        out.push_str(&tag[..end]);
        rest = &tag[end..];
    }
    tie_text(rest, &mut out);
    out
}

/// As [`tie`], of text alone.
fn tie_text(text: &str, out: &mut String) {
    let mut rest = text;
    while let Some((before, after)) = rest.split_once(' ') {
        out.push_str(before);
        let is_amount = before.ends_with(|c: char| c.is_numeric()) && begins_with_unit(after);
        out.push(if is_amount { SPACE } else { ' ' });
        rest = after;
    }
    out.push_str(rest);
}

/// Whether the first word of `text` is the symbol of a unit; "in" counts, which does no harm where it is no unit.
fn begins_with_unit(text: &str) -> bool {
    UNITS.iter().any(|unit| {
        let after = if unit.symbol.is_empty() { None } else { text.strip_prefix(unit.symbol) };
        after.is_some_and(|after| !after.starts_with(|c: char| c.is_alphanumeric() || c == '²' || c == '³'))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_and_units_stay_together() {
        assert_eq!(tie("<p>10 kW at 5 °C (41 °F), ½ in</p>"), "<p>10\u{a0}kW at 5\u{a0}°C (41\u{a0}°F), ½\u{a0}in</p>");
        assert_eq!(tie("3 mm² and 3 minutes of 2 links"), "3\u{a0}mm² and 3 minutes of 2 links");
        assert_eq!(tie("the 3 <b>mm</b> of mm"), "the 3 <b>mm</b> of mm");
    }

    #[test]
    fn what_is_typed_stays() {
        for html in [
            "<code>10 kW</code>",
            "<pre class=\"a\">10 kW <b>10 kW</b></pre>",
            "<a title=\"10 kW\" href=\"10 kW\">b</a>",
            "10 kW".trim_end_matches("kW"),
            "a < b",
            "<",
        ] {
            assert_eq!(tie(html), html);
        }
        assert_eq!(tie("<code>5 mm</code> 5 mm"), "<code>5 mm</code> 5\u{a0}mm");
    }
}
