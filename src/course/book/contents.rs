//! The list of contents, written into every page so that it needs no script.

use std::path::Path;

use mdbook_core::book::{Book, BookItem};
use mdbook_core::utils::escape_html;

/// The list of contents as HTML: a list for each part, part titles as headings of `level`.
///
/// `root` leads from the page to the top folder; `here` is the page's chapter, marked as the current page.
pub(super) fn list(book: &Book, root: &str, here: Option<&Path>, level: u8) -> String {
    let mut html = String::new();
    let mut open = false;
    for item in &book.items {
        match item {
            BookItem::Chapter(_) => {
                if !open {
                    html.push_str("<ol class=\"contents-list\">\n");
                    open = true;
                }
                entry(&mut html, item, root, here);
            }
            BookItem::Separator | BookItem::PartTitle(_) => {
                if open {
                    html.push_str("</ol>\n");
                    open = false;
                }
                if let BookItem::PartTitle(title) = item {
                    html.push_str(&format!("<h{level} class=\"contents-part\">{}</h{level}>\n", escape_html(title)));
                }
            }
        }
    }
    if open {
        html.push_str("</ol>\n");
    }
    html
}

/// One chapter with the chapters below it.
fn entry(html: &mut String, item: &BookItem, root: &str, here: Option<&Path>) {
    let BookItem::Chapter(chapter) = item else { return };
    html.push_str("<li>");
    let number = chapter.number.as_ref().map(|n| format!("<span class=\"contents-number\">{n}</span> "));
    let name = format!("{}<span>{}</span>", number.unwrap_or_default(), escape_html(&chapter.name));
    match &chapter.path {
        Some(path) => {
            let address = address(path);
            let current = if here == Some(path.as_path()) { " aria-current=\"page\"" } else { "" };
            html.push_str(&format!("<a href=\"{root}{address}\"{current}>{name}</a>"));
        }
        None => html.push_str(&format!("<span class=\"contents-later\">{name}</span>")),
    }
    if chapter.sub_items.iter().any(|i| matches!(i, BookItem::Chapter(_))) {
        html.push_str("\n<ol>\n");
        for below in &chapter.sub_items {
            entry(html, below, root, here);
        }
        html.push_str("</ol>\n");
    }
    html.push_str("</li>\n");
}

/// The address of a chapter's page, from the top folder, safe inside an attribute.
pub(super) fn address(path: &Path) -> String {
    let path = path.with_extension("html").to_string_lossy().replace('\\', "/");
    let mut address = String::with_capacity(path.len());
    for byte in path.bytes() {
        match byte {
            b'a'..=b'z' | b'A'..=b'Z' | b'0'..=b'9' | b'-' | b'_' | b'.' | b'/' | b'~' => {
                address.push(char::from(byte))
            }
            other => address.push_str(&format!("%{other:02X}")),
        }
    }
    address
}
