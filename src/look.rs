//! `look`: one drive case whole.

use std::io::Write as _;
use std::path::Path;

use anyhow::Result;
use drivecourse_course::portray::{PICTURES, Portrait};
use drivecourse_machine::{Case, Known, Plan, QuantityId, Registry, System, amount, messages, topics};

use crate::{bank, cli, files, spread, words};

messages! { pub(crate) SAYS {
    PICTURES_IN = "look-pictures-in", "{count} pictures in {folder}: {names}";
    HOW_IT_FOLLOWS = "look-how-it-follows", "How it follows";
    MACHINE = "look-machine", "{family}, machine {seed}";
    AFTER = "look-after", "after {name}";
    NOTHING_WRONG = "look-nothing-wrong", "Nothing is wrong with it.";
    WRONG = "look-wrong", "Wrong with it: {faults}.";
    SEEN = "look-seen", "seen";
    TRUE = "look-true", "true";
    PLANTS_OWN = "look-plants-own", "The plant's own";
} }

pub(crate) fn run(options: &cli::Look) -> Result<()> {
    let assets = words::begin(&options.module, None)?;
    let bank = bank::load(&assets)?;
    let mut out = std::io::stdout().lock();
    let Some(family) = &options.family else {
        for plan in &bank.plans {
            writeln!(out, "{:<20} {}", plan.family.id, plan.family.name)?;
        }
        return Ok(());
    };
    let plan = bank.plan(family).map_err(anyhow::Error::msg)?;
    if let Some(machines) = options.spread {
        drop(out);
        return spread::run(options, plan, machines);
    }
    let system = System::from(options.units);
    let case = plan.draw(options.seed)?;
    let figures = match &options.figures {
        Some(folder) => figures(plan, &case, system, folder)?,
        None => Vec::new(),
    };
    if options.json {
        writeln!(out, "{}", serde_json::to_string_pretty(&json(plan, &case, system))?)?;
        return Ok(());
    }
    write!(out, "{}", text(plan, &case, system))?;
    if options.paths {
        write!(out, "{}", paths(plan, &case, system))?;
    }
    if let Some(folder) = &options.figures {
        let (count, folder) = (figures.len().to_string(), folder.display().to_string());
        let words = [("count", count.as_str()), ("folder", &folder), ("names", &figures.join(", "))];
        writeln!(out, "\n{}", PICTURES_IN.say(&words))?;
    }
    Ok(())
}

/// Draws every picture that the machine determines into `folder`; their names.
fn figures(plan: &Plan, case: &Case, system: System, folder: &Path) -> Result<Vec<&'static str>> {
    let mut drawn = Vec::new();
    for name in PICTURES {
        // A picture of what the family does not determine, or of a reading out of a face's reach, is left out.
        if let Ok(figure) = Portrait::of_case(name, case, system).draw(name) {
            let file = format!("{}-{}-{name}.svg", plan.family.id, case.seed);
            files::write(&folder.join(file), figure.standalone().as_bytes())?;
            drawn.push(name);
        }
    }
    Ok(drawn)
}

/// How each quantity that is no value to start from follows from those before it.
fn paths(plan: &Plan, case: &Case, system: System) -> String {
    use std::fmt::Write as _;
    let mut out = format!("\n{}\n", HOW_IT_FOLLOWS.text());
    for step in plan.steps() {
        let linked = step.get();
        let inputs: Vec<_> = linked.inputs().map(|id| id.get().id).collect();
        let _ = writeln!(
            out,
            "  {:<30} {:>20}  {} ({})",
            linked.gives.get().id,
            amount::write(linked.gives.get(), case.values[linked.gives.index()], system),
            linked.relation.title,
            inputs.join(", ")
        );
    }
    out
}

fn faults<'a>(plan: &'a Plan, case: &'a Case) -> impl Iterator<Item = &'a str> {
    case.faults.iter().map(|place| plan.family.faults[*place].name.as_str())
}

fn known(plan: &Plan, topic: &str) -> Vec<QuantityId> {
    Registry::get().quantities().filter(|id| id.get().topic() == topic && plan.determines(*id)).collect()
}

fn text(plan: &Plan, case: &Case, system: System) -> String {
    use std::fmt::Write as _;
    let mut out = String::new();
    let wrong: Vec<_> = faults(plan, case).collect();
    let tag = plan.machine_name(case).map_or_else(String::new, |name| format!(", {}", AFTER.say(&[("name", name)])));
    let machine = MACHINE.say(&[("family", &plan.family.name), ("seed", &case.seed.to_string())]);
    let _ = writeln!(out, "{machine}{tag}");
    let _ = writeln!(
        out,
        "{}",
        if wrong.is_empty() { NOTHING_WRONG.text().to_owned() } else { WRONG.say(&[("faults", &wrong.join("; "))]) }
    );
    let seen = case.seen(system);
    for topic in topics::ALL {
        let known = known(plan, topic.id);
        if known.is_empty() {
            continue;
        }
        let _ = writeln!(out, "\n{}\n{:<52} {:>20}  {:>20}", topic.heading(), "", SEEN.text(), TRUE.text());
        for id in known {
            let quantity = id.get();
            let show = |value: f64| if value.is_nan() { String::new() } else { amount::write(quantity, value, system) };
            let exact = if quantity.known == Known::Worked || quantity.known == Known::Plate {
                show(case.values[id.index()])
            } else {
                // One figure finer than the instrument, so that its rounding shows.
                let unit = quantity.unit(system);
                let value = unit.from_base(case.values[id.index()]);
                amount::with_unit(&amount::number(value, drivecourse_machine::Figures::Significant(4)), unit)
            };
            let _ = writeln!(out, "  {:<50} {:>20}  {:>20}", clip(quantity.name, 50), show(seen[id.index()]), exact);
        }
    }
    if !plan.family.stated.is_empty() {
        let _ = writeln!(out, "\n{}", PLANTS_OWN.text());
        for stated in plan.family.stated.iter() {
            let quantity = stated.quantity.get();
            let value = amount::write(quantity, case.values[stated.quantity.index()], system);
            let _ = writeln!(out, "  {}: {value} ({})", quantity.name, stated.text());
        }
    }
    out
}

fn clip(text: &str, most: usize) -> String {
    if text.chars().count() <= most { text.to_owned() } else { text.chars().take(most - 1).chain(['…']).collect() }
}

fn json(plan: &Plan, case: &Case, system: System) -> serde_json::Value {
    let seen = case.seen(system);
    let quantities: Vec<_> = (Registry::get().quantities())
        .filter(|id| plan.determines(*id))
        .map(|id| {
            let quantity = id.get();
            let unit = quantity.unit(system);
            let number =
                |value: f64| if value.is_nan() { serde_json::Value::Null } else { unit.from_base(value).into() };
            serde_json::json!({
                "quantity": quantity.id,
                "name": quantity.name,
                "unit": unit.symbol,
                "seen": number(seen[id.index()]),
                "true": number(case.values[id.index()]),
                "by": plan.steps().find(|step| step.get().gives == id).map(|step| step.get().relation.id),
                "choice": amount::choice(quantity, case.values[id.index()]),
            })
        })
        .collect();
    serde_json::json!({
        "family": plan.family.id,
        "after": plan.machine_name(case),
        "seed": case.seed,
        "units": system.code(),
        "machines_rejected": case.rejected,
        "faults": case.faults.iter().map(|place| &plan.family.faults[*place].id).collect::<Vec<_>>(),
        "quantities": quantities,
    })
}
