//! Text of a chapter as a page prints it ([`printed()`]): "10 kW" gets the space that does not break, which the program's own
//! amounts have already, and "the motor's plate" its apostrophe.

use crate::pages::printed;

/// Elements whose text stands as it was typed.
const AS_TYPED: &[&str] = &["code", "pre", "samp", "kbd", "svg", "script", "style", "textarea"];

/// `html` with its text, but no tag and nothing that is shown as it was typed, as it is printed.
pub(super) fn tie(html: &str) -> String {
    let mut out = String::with_capacity(html.len());
    let mut rest = html;
    while let Some((text, tag)) = rest.split_once('<') {
        out.push_str(&printed(text));
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
    out.push_str(&printed(rest));
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_and_units_stay_together() {
        assert_eq!(tie("<p>10 kW on the drive's plate</p>"), "<p>10\u{a0}kW on the drive’s plate</p>");
        assert_eq!(tie("the 3 <b>mm</b> of mm"), "the 3 <b>mm</b> of mm");
    }

    #[test]
    fn what_is_typed_stays() {
        for html in [
            "<code>10 kW</code>",
            "<code>the drive's</code>",
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
