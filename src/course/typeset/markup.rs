//! What our own code hands to pages as markup, drawings in SVG and formulas in MathML, turned into data for the templates.

use quick_xml::Reader;
use quick_xml::escape::{resolve_predefined_entity, unescape};
use quick_xml::events::Event;
use serde_json::{Value, json};

use crate::figures::{LETTER, PAPER_STYLE};
use crate::pages::{PDF_UNWRITTEN, PageError};

/// An element, or text between elements.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Node {
    /// Its name and what is inside.
    Element(String, Vec<Node>),
    /// Words.
    Text(String),
}

/// Replaces, wherever they stand in `data`, the drawing of a question and the formulas of a step by what the templates need
/// of them.
///
/// # Errors
/// When markup is not what our own code makes.
pub(super) fn unfold(data: &mut Value) -> Result<(), PageError> {
    match data {
        Value::Array(inside) => inside.iter_mut().try_for_each(unfold),
        Value::Object(inside) => inside.iter_mut().try_for_each(|(name, value)| {
            match (name.as_str(), value.as_str()) {
                ("figure", Some(html)) => *value = figure(html)?,
                ("symbols" | "numbers", Some(html)) => *value = formula(html)?,
                _ => unfold(value)?,
            }
            Ok(())
        }),
        _ => Ok(()),
    }
}

fn wrong(what: &str) -> PageError {
    PageError::say(PDF_UNWRITTEN.text(), what)
}

/// The `svg` element with the style of paper, its words, and its width in letters of the text beside it.
fn figure(html: &str) -> Result<Value, PageError> {
    let inside = html.find("<svg").zip(html.rfind("</svg>")).map(|(from, to)| &html[from..to + "</svg>".len()]);
    let svg = inside.ok_or_else(|| wrong("a figure without a drawing"))?;
    let head = svg.split_once('>').map_or(svg, |(head, _)| head);
    let width = head.split_once("viewBox=\"").and_then(|(_, rest)| {
        rest.split('"').next()?.split_whitespace().nth(2)?.parse::<f64>().ok().filter(|width| *width > 0.0)
    });
    let width = width.ok_or_else(|| wrong("a drawing without a width"))?;
    let words: Vec<String> = ["title", "desc"].iter().filter_map(|name| words_of(svg, name)).collect();
    if words.is_empty() {
        return Err(wrong("a drawing without words"));
    }
    let styled = svg.replacen('>', &format!("><style>{PAPER_STYLE}</style>"), 1);
    Ok(json!({ "svg": styled, "says": words.join(". "), "ems": width / LETTER }))
}

/// The text of the first element of that name.
fn words_of(svg: &str, name: &str) -> Option<String> {
    let (_, rest) = svg.split_once(&format!("<{name}"))?;
    let (_, rest) = rest.split_once('>')?;
    let (text, _) = rest.split_once(&format!("</{name}>"))?;
    unescape(text).ok().map(|text| text.trim().trim_end_matches('.').to_owned()).filter(|text| !text.is_empty())
}

/// A line of formulas and words: each formula with what a screen reader says for it.
fn formula(html: &str) -> Result<Value, PageError> {
    let nodes = nodes(html).map_err(|e| wrong(&format!("a formula cannot be read: {e}")))?;
    Ok(nodes
        .iter()
        .map(|node| match node {
            Node::Element(name, inside) if name == "math" => {
                json!({ "t": "math", "says": spoken_all(inside), "in": inside.iter().map(data).collect::<Value>() })
            }
            other => data(other),
        })
        .collect())
}

fn data(node: &Node) -> Value {
    match node {
        Node::Text(text) => json!({ "t": "text", "s": text }),
        Node::Element(name, inside) => match inside.as_slice() {
            [Node::Text(text)] => json!({ "t": name, "s": text }),
            inside => json!({ "t": name, "in": inside.iter().map(data).collect::<Value>() }),
        },
    }
}

fn spoken_all(nodes: &[Node]) -> String {
    nodes.iter().map(spoken).collect()
}

/// A formula in one line of text.
pub(super) fn spoken(node: &Node) -> String {
    let (name, inside) = match node {
        Node::Text(text) => return text.clone(),
        Node::Element(name, inside) => (name.as_str(), inside.as_slice()),
    };
    let bracketed = |node: &Node| {
        let text = spoken(node);
        if text.chars().all(char::is_alphanumeric) { text } else { format!("({text})") }
    };
    match (name, inside) {
        ("mfrac", [over, under]) => format!("{} / {}", bracketed(over), bracketed(under)),
        ("msup", [base, power]) => format!("{}^{}", bracketed(base), bracketed(power)),
        ("msub", [base, below]) => format!("{}_{}", spoken(base), spoken(below)),
        ("msqrt", inside) => format!("√({})", spoken_all(inside)),
        ("mo", [Node::Text(sign)]) if matches!(sign.as_str(), "=" | "+" | "−" | "×" | ",") => format!(" {sign} "),
        _ => spoken_all(inside),
    }
}

/// The elements and words of a piece of markup.
pub(super) fn nodes(html: &str) -> Result<Vec<Node>, quick_xml::Error> {
    let mut reader = Reader::from_str(html);
    let mut open: Vec<(String, Vec<Node>)> = vec![(String::new(), Vec::new())];
    loop {
        let text = match reader.read_event()? {
            Event::Eof => break,
            Event::Start(start) => {
                open.push((String::from_utf8_lossy(start.name().as_ref()).into_owned(), Vec::new()));
                continue;
            }
            // The reader has checked that it closes the element that is open.
            Event::End(_) => {
                if let Some((name, inside)) = open.pop() {
                    add(&mut open, Node::Element(name, inside));
                }
                continue;
            }
            Event::Empty(empty) => {
                add(&mut open, Node::Element(String::from_utf8_lossy(empty.name().as_ref()).into_owned(), Vec::new()));
                continue;
            }
            Event::Text(text) => text.decode()?.into_owned(),
            Event::GeneralRef(reference) => {
                let name = reference.decode()?.into_owned();
                match reference.resolve_char_ref()? {
                    Some(c) => c.to_string(),
                    None => resolve_predefined_entity(&name).unwrap_or_default().to_owned(),
                }
            }
            _ => continue,
        };
        add(&mut open, Node::Text(text));
    }
    Ok(open.swap_remove(0).1)
}

/// Adds a node to what is open; words that follow words are one.
fn add(open: &mut [(String, Vec<Node>)], node: Node) {
    let Some((_, inside)) = open.last_mut() else { return };
    match (inside.last_mut(), node) {
        (Some(Node::Text(before)), Node::Text(text)) => before.push_str(&text),
        (_, node) => inside.push(node),
    }
}
