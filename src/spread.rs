//! `look --spread`: how each quantity of a family is spread, as small charts in the terminal and as a page.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use anyhow::Result;
use drivecourse_course::figures::Columns;
use drivecourse_course::pages::printed;
use drivecourse_course::view::capital;
use drivecourse_machine::chance::derive;
use drivecourse_machine::language::code;
use drivecourse_machine::topics::Topic;
use drivecourse_machine::{
    CannotDraw, Case, Kind, Plan, Quantity, QuantityId, Registry, System, amount, messages, topics,
};

use crate::assets::Assets;
use crate::{bank, cli, files, look, undrawable};

/// Columns of a chart.
const BINS: usize = 24;
/// Machines in a row of which none can be drawn, after which no more are tried.
const HOPELESS: u64 = 20;
/// Figures of a number beside a chart that the quantity's own figures would change.
const FIGURES: u8 = 4;
/// Heights of a column in the terminal, from nothing to full.
const BARS: [char; 9] = [' ', '▁', '▂', '▃', '▄', '▅', '▆', '▇', '█'];

messages! { pub(crate) SAYS {
    PAGE_IN = "spread-page-in", "the same as a page in {file}";
    ALWAYS = "spread-always", "always {value}";
    MACHINES = "spread-machines", "{family}: {machines} machines, {sound} of them sound, {rejected} rejected on the way";
    EACH_LINE = "spread-each-line", "Each line: least … most (a tenth, half, nine tenths of the machines stay below)";
    NOT_DRAWN = "spread-not-drawn", "{count} of {all} could not be drawn";
    TITLE = "spread-title", "{family}: {machines} machines";
    TABLE = "spread-table", "Machines of the table";
    EACH_NUMBER = "spread-each-number", "For each number: least … most, and in brackets what a tenth, half and nine tenths of the machines stay below.";
} }

pub(crate) fn run(options: &cli::Look, assets: &Assets, plan: &Plan, machines: u32) -> Result<()> {
    let system = bank::units(assets, options.units).unwrap_or_default();
    let only = look::only(options)?;
    // Some machines in a family may be impossible to draw; that is told as a rate, not as an end.
    let (mut cases, mut undrawn) = (Vec::new(), BTreeMap::new());
    for machine in 0..u64::from(machines) {
        match plan.draw(derive(options.seed, machine)) {
            Ok(case) => cases.push(case),
            Err(error) => {
                // Of a family that gives nothing, no more need be tried.
                if cases.is_empty() && machine + 1 >= HOPELESS {
                    break;
                }
                let alike = undrawn.entry((error.limit, error.wanted.clone())).or_insert((0, error));
                alike.0 += 1;
            }
        }
    }
    let undrawn = Undrawn::of(assets, plan, undrawn.into_values());
    let spreads: Vec<Spread> = Registry::get()
        .quantities()
        .filter(|id| plan.determines(*id) && only.is_none_or(|topic| id.get().topic() == topic))
        .filter_map(|id| Spread::of(id, &cases, system))
        .collect();
    let table = table(plan, &cases);
    if let Some(path) = &options.page {
        files::write(path, page(plan, cases.len(), &undrawn, &table, &spreads).as_bytes())?;
    }
    if options.json {
        let all: Vec<_> = spreads.iter().map(Spread::json).collect();
        let mut all = serde_json::json!({
            "family": plan.family.id,
            "machines": cases.len(),
            "not_drawn": undrawn.iter().map(Undrawn::json).collect::<Vec<_>>(),
            "quantities": all,
        });
        if !table.is_empty() {
            let row = |(name, count): &(&str, u32)| serde_json::json!({ "machine": name, "machines": count });
            all["table"] = table.iter().map(row).collect();
        }
        return files::say(serde_json::to_string_pretty(&all)?);
    }
    // What its author did not ask for is on the page, and shown by name.
    let (shown, others): (Vec<_>, Vec<_>) =
        spreads.into_iter().partition(|spread| look::is_shown(plan, only, spread.id.get().topic()));
    files::say(text(plan, &cases, &undrawn, &table, &shown).trim_end())?;
    if let Some(other) = others.first() {
        files::say(format!("\n{}", look::others(others.len(), other.id.get().topic())))?;
    }
    if let Some(path) = &options.page {
        files::say(format!("\n{}", PAGE_IN.say(&[("file", &path.display().to_string())])))?;
    }
    Ok(())
}

/// Machines that could not be drawn, all wanted alike and at the same limit.
struct Undrawn {
    count: u32,
    /// What was wanted, and what stood in the way.
    why: String,
    /// Where the limit stands, as `file:line`; the file alone where none is at fault.
    place: String,
}

impl Undrawn {
    /// Each sort of them, the most frequent first.
    fn of(assets: &Assets, plan: &Plan, sorts: impl Iterator<Item = (u32, CannotDraw)>) -> Vec<Self> {
        let mut all: Vec<Self> = sorts
            .map(|(count, error)| {
                let why = format!("{}: {}", error.wanted, error.because.trim_end_matches('.'));
                let found = undrawable::tell(assets, plan, error);
                let place = found.report.strip_prefix(&format!("{}:", found.file));
                let line = place.and_then(|rest| rest.split(':').next()).filter(|line| line.parse::<usize>().is_ok());
                let place = line.map_or_else(|| found.file.clone(), |line| format!("{}:{line}", found.file));
                Self { count, why, place }
            })
            .collect();
        all.sort_by_key(|undrawn| core::cmp::Reverse(undrawn.count));
        all
    }

    fn text(&self) -> String {
        format!("{} {} ({})", self.count, self.why, self.place)
    }

    fn json(&self) -> serde_json::Value {
        serde_json::json!({ "machines": self.count, "why": self.why, "at": self.place })
    }
}

/// How many machines could not be drawn, as a sentence's beginning; `None` where all could.
fn not_drawn(undrawn: &[Undrawn], drawn: usize) -> Option<String> {
    let count: u32 = undrawn.iter().map(|undrawn| undrawn.count).sum();
    let all = (drawn + count as usize).to_string();
    (count > 0).then(|| NOT_DRAWN.say(&[("count", &count.to_string()), ("all", &all)]))
}

/// How one quantity is spread over the machines.
struct Spread {
    id: QuantityId,
    system: System,
    unit: &'static str,
    shape: Shape,
}

enum Shape {
    /// The same on every machine.
    Always(String),
    /// Numbers: how many fall into each column, and what a tenth, half and nine tenths of them stay below.
    Numbers { counts: Vec<u32>, least: f64, tenth: f64, middle: f64, ninth: f64, most: f64 },
    /// Choices, each with how many machines have it.
    Choices(Vec<(String, u32)>),
}

impl Spread {
    /// `None` where no machine has a value.
    fn of(id: QuantityId, cases: &[Case], system: System) -> Option<Self> {
        let quantity = id.get();
        let unit = quantity.unit(system);
        let values = cases.iter().map(|case| case.values[id.index()]).filter(|value| value.is_finite());
        if quantity.kind == Kind::Choice {
            let mut counts: Vec<(String, u32)> =
                quantity.labels.iter().map(|choice| ((*choice).to_owned(), 0)).collect();
            for value in values {
                if let Some(count) = counts.get_mut(value as usize) {
                    count.1 += 1;
                }
            }
            counts.retain(|(_, count)| *count > 0);
            let shape = match counts.as_slice() {
                [] => return None,
                [(only, _)] => Shape::Always(only.clone()),
                _ => Shape::Choices(counts),
            };
            return Some(Self { id, system, unit: "", shape });
        }
        let mut values: Vec<f64> = values.map(|value| unit.from_base(value)).collect();
        // What is left of nothing after a calculation is nothing.
        let dust = 1e-12 * values.iter().fold(0.0_f64, |most, value| most.max(value.abs()));
        values.iter_mut().filter(|value| value.abs() < dust).for_each(|value| *value = 0.0);
        values.sort_by(f64::total_cmp);
        let (least, most) = (*values.first()?, *values.last()?);
        if most - least <= 1e-9 * most.abs().max(least.abs()) {
            let [always] = numbers(quantity, [least], system);
            return Some(Self { id, system, unit: unit.symbol, shape: Shape::Always(always) });
        }
        let share = |part: f64| values[((values.len() - 1) as f64 * part).round() as usize];
        let mut counts = vec![0; BINS];
        for value in &values {
            let column = ((value - least) / (most - least) * BINS as f64) as usize;
            counts[column.min(BINS - 1)] += 1;
        }
        let (tenth, middle, ninth) = (share(0.1), share(0.5), share(0.9));
        Some(Self {
            id,
            system,
            unit: unit.symbol,
            shape: Shape::Numbers { counts, least, tenth, middle, ninth, most },
        })
    }

    fn json(&self) -> serde_json::Value {
        let shape = match &self.shape {
            Shape::Always(value) => serde_json::json!({ "always": value }),
            Shape::Numbers { counts, least, tenth, middle, ninth, most } => serde_json::json!({
                "least": least, "tenth": tenth, "middle": middle, "nine_tenths": ninth, "most": most, "counts": counts,
            }),
            Shape::Choices(counts) => serde_json::json!({
                "choices": counts.iter().cloned().collect::<std::collections::BTreeMap<_, _>>(),
            }),
        };
        serde_json::json!({ "quantity": self.id.get().id, "unit": self.unit, "spread": shape })
    }

    /// What stands beside the chart.
    fn words(&self, machines: usize) -> String {
        match &self.shape {
            Shape::Always(value) => ALWAYS.say(&[("value", &with_unit(value, self.unit))]),
            Shape::Numbers { least, tenth, middle, ninth, most, .. } => {
                let values = [*least, *tenth, *middle, *ninth, *most];
                let [least, tenth, middle, ninth, most] = numbers(self.id.get(), values, self.system);
                format!("{least} … {} ({tenth} … {middle} … {ninth})", with_unit(&most, self.unit))
            }
            Shape::Choices(counts) => {
                let mut counts = counts.clone();
                counts.sort_by_key(|(_, count)| core::cmp::Reverse(*count));
                let words: Vec<_> =
                    counts.iter().map(|(choice, count)| format!("{choice} {}", percent(*count, machines))).collect();
                words.join(", ")
            }
        }
    }
}

/// `values`, in the unit that `quantity` is shown in, as text: in the quantity's own figures where they say all of each, as
/// of most that stands on a plate; else as they truly are, to [`FIGURES`].
fn numbers<const N: usize>(quantity: &Quantity, values: [f64; N], system: System) -> [String; N] {
    let own = quantity.display(system).figures;
    let whole = values.iter().all(|value| (own.round(*value) - value).abs() <= 1e-9 * value.abs());
    values.map(|value| match whole {
        true => amount::number(value, own),
        false => amount::exact(quantity, value, system, FIGURES),
    })
}

fn with_unit(value: &str, unit: &str) -> String {
    if unit.is_empty() { value.to_owned() } else { format!("{value} {unit}") }
}

/// A row of columns, the fullest one as high as the line.
fn bars(counts: &[u32]) -> String {
    let most = counts.iter().copied().max().unwrap_or(1).max(1);
    counts.iter().map(|count| BARS[(*count as usize * (BARS.len() - 1)).div_ceil(most as usize)]).collect()
}

/// Each row of a table of machines, by its name, and how many of `cases` come from it; nothing without a table.
fn table<'p>(plan: &'p Plan, cases: &[Case]) -> Vec<(&'p str, u32)> {
    let mut counts: BTreeMap<&str, u32> = BTreeMap::new();
    cases.iter().filter_map(|case| plan.machine_name(case)).for_each(|name| *counts.entry(name).or_default() += 1);
    let rows = plan.family.machines.iter();
    rows.map(|name| (name.as_str(), counts.get(name.as_str()).copied().unwrap_or(0))).collect()
}

/// A share of all machines, as a percentage.
fn percent(count: u32, all: usize) -> String {
    format!("{:.0} %", f64::from(count) / all.max(1) as f64 * 100.0)
}

fn text(plan: &Plan, cases: &[Case], undrawn: &[Undrawn], table: &[(&str, u32)], spreads: &[Spread]) -> String {
    let mut out = String::new();
    let sound = cases.iter().filter(|case| case.faults.is_empty()).count();
    let rejected: u32 = cases.iter().map(|case| case.rejected).sum();
    let (machines, sound, rejected) = (cases.len().to_string(), sound.to_string(), rejected.to_string());
    let words =
        [("family", plan.family.name.as_str()), ("machines", &machines), ("sound", &sound), ("rejected", &rejected)];
    let _ = writeln!(out, "{}", MACHINES.say(&words));
    if let Some(sum) = not_drawn(undrawn, cases.len()) {
        let _ = writeln!(out, "{sum}:");
        for undrawn in undrawn {
            let _ = writeln!(out, "  {}", undrawn.text());
        }
    }
    if !table.is_empty() {
        let _ = writeln!(out, "\n{}", TABLE.text());
        for (name, count) in table {
            let _ = writeln!(out, "  {name:<26} {:>5}", percent(*count, cases.len()));
        }
        out.push('\n');
    }
    let _ = writeln!(out, "{}", EACH_LINE.text());
    for topic in topics::ALL {
        let mut of_topic = spreads.iter().filter(|spread| spread.id.get().topic() == topic.id).peekable();
        if of_topic.peek().is_none() {
            continue;
        }
        let _ = writeln!(out, "\n{}", topic.heading());
        for spread in of_topic {
            let chart = match &spread.shape {
                Shape::Numbers { counts, .. } => bars(counts),
                _ => String::new(),
            };
            let _ = writeln!(out, "  {:<26} {chart:<BINS$}  {}", spread.id.get().id, spread.words(cases.len()));
        }
    }
    out
}

/// A page of its own, with a chart for each quantity: no script, no file beside it.
fn page(plan: &Plan, machines: usize, undrawn: &[Undrawn], table: &[(&str, u32)], spreads: &[Spread]) -> String {
    let (language, about) = (code(), escape(EACH_NUMBER.text()));
    let title = capital(&TITLE.say(&[("family", &plan.family.name), ("machines", &machines.to_string())]));
    let title = escape(&title);
    let mut out = format!(
        "<!doctype html>\n<html lang=\"{language}\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>{title}</title>\n\
         <style>\nbody{{font:16px/1.5 system-ui,sans-serif;max-width:60rem;margin:2rem auto;padding:0 1rem;\
         color:#111;background:#fff}}\ntable{{border-collapse:collapse;width:100%;table-layout:fixed}}\n\
         th{{width:38%}}td:nth-child(2){{width:13rem}}\n\
         th,td{{text-align:left;padding:.3rem .6rem .3rem 0;border-bottom:1px solid #bbb;vertical-align:middle;\
         font-weight:normal}}\nsvg{{width:12rem;display:block}}\n\
         h2{{break-after:avoid}}tr{{break-inside:avoid}}a{{color:inherit}}\
         nav ul{{display:flex;flex-wrap:wrap;gap:0 1.2rem;list-style:none;padding:0}}\
         nav a{{display:inline-flex;align-items:center;min-height:44px}}\
         @page{{margin:14mm}}@media print{{nav{{display:none}}body{{margin:0;padding:0;max-width:none;font-size:14px}}th{{width:34%}}td:nth-child(2){{width:11rem}}svg{{width:10rem}}}}\
         @media (prefers-color-scheme:dark){{body{{color:#eee;background:#15171a}}}}\n\
         @media (max-width:40rem){{th,td{{display:block;border:0;padding:.1rem 0}}th,td:nth-child(2){{width:auto}}tr{{display:block;\
         border-bottom:1px solid #bbb}}}}\n</style>\n</head>\n<body>\n<main>\n<h1>{title}</h1>\n\
         <p>{about}</p>\n"
    );

    if let Some(sum) = not_drawn(undrawn, machines) {
        let _ = writeln!(out, "<p>{sum}:</p>\n<ul>");
        for undrawn in undrawn {
            let _ = writeln!(out, "<li>{}</li>", escape(&undrawn.text()));
        }
        out.push_str("</ul>\n");
    }
    if !table.is_empty() {
        let _ = writeln!(out, "<h2>{}</h2>\n<table>", escape(TABLE.text()));
        for (name, count) in table {
            let share = percent(*count, machines);
            let _ = writeln!(out, "<tr><th scope=\"row\">{}</th><td></td><td>{share}</td></tr>", escape(name));
        }
        out.push_str("</table>\n");
    }
    let of = |topic: &Topic| spreads.iter().filter(|spread| spread.id.get().topic() == topic.id).collect::<Vec<_>>();
    let all: Vec<_> = topics::ALL.iter().map(|topic| (topic, of(topic))).filter(|(_, of)| !of.is_empty()).collect();
    let _ = writeln!(out, "<nav aria-label=\"{title}\">\n<ul>");
    for (topic, _) in &all {
        let _ = writeln!(out, "<li><a href=\"#{}\">{}</a></li>", topic.id, escape(topic.heading()));
    }
    out.push_str("</ul>\n</nav>\n");
    for (topic, of_topic) in all {
        let _ = writeln!(out, "<h2 id=\"{}\">{}</h2>\n<table>", topic.id, escape(topic.heading()));
        for spread in of_topic {
            let quantity = spread.id.get();
            let words = spread.words(machines);
            let chart = match &spread.shape {
                Shape::Numbers { counts, .. } => chart(spread.id, counts, &words),
                Shape::Choices(counts) => {
                    // In the order of the words beside them.
                    let mut counts: Vec<_> = counts.iter().map(|(_, count)| *count).collect();
                    counts.sort_by_key(|count| core::cmp::Reverse(*count));
                    chart(spread.id, &counts, &words)
                }
                Shape::Always(_) => String::new(),
            };
            // Least and most on one line, what lies between on the next.
            let beside = match &spread.shape {
                Shape::Numbers { .. } => escape(&words).replacen(" (", "<br>(", 1),
                _ => escape(&words),
            };
            let _ = writeln!(
                out,
                "<tr><th scope=\"row\">{}<br><small>{}</small></th><td>{chart}</td><td>{}</td></tr>",
                escape(quantity.name),
                quantity.id,
                beside
            );
        }
        out.push_str("</table>\n");
    }
    out.push_str("</main>\n</body>\n</html>\n");
    out
}

/// The columns of a quantity, small enough to stand beside its words.
fn chart(id: QuantityId, counts: &[u32], words: &str) -> String {
    let columns = Columns {
        id: id.get().id.into(),
        title: id.get().name.into(),
        description: words.into(),
        counts: counts.to_vec(),
    };
    columns.draw().map(|figure| figure.svg).unwrap_or_default()
}

fn escape(text: &str) -> String {
    printed(text).replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_fullest_column_is_full_and_an_empty_one_empty() {
        assert_eq!(bars(&[0, 1, 4, 8]), " ▁▄█");
        assert_eq!(bars(&[]), "");
        let id = Registry::get().find("chain.sag").expect("a quantity of the trade");
        let drawn = chart(id, &[1, 0, 2], "a < b");
        assert!(drawn.contains("a &lt; b") && drawn.matches("<polygon").count() == 2, "{drawn}");
    }
}
