//! `look`: one drive case whole.

use std::collections::BTreeSet;
use std::io::Write as _;
use std::path::Path;

use anyhow::{Context as _, Result, anyhow, bail};
use drivecourse_course::portray::{PICTURES, Portrait};
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{
    Case, Kind, Known, MOST_ATTEMPTS, Nearest, Plan, QuantityId, Registry, System, amount, messages, topics,
};
use drivecourse_quiz::Bank;

use crate::assets::Assets;
use crate::new::no_topic;
use crate::{bank, cli, files, spread, undrawable, words};

messages! { pub(crate) SAYS {
    PICTURES_IN = "look-pictures-in", "{count} pictures in {folder}: {names}";
    HOW_IT_FOLLOWS = "look-how-it-follows", "How it follows";
    MACHINE = "look-machine", "{family}, machine {seed}";
    AFTER = "look-after", "drawn from {name}";
    NOTHING_WRONG = "look-nothing-wrong", "Nothing is wrong with it.";
    WRONG = "look-wrong", "Wrong with it: {faults}.";
    SEEN = "look-seen", "seen";
    TRUE = "look-true", "true";
    PLANTS_OWN = "look-plants-own", "The plant's own";
    OF_PROGRAM = "look-of-program", "Of the program, to compare with:";
    REUSED = "look-reused", "Of the program, taken over in module.toml:";
    NEAREST = "look-nearest", "Not one of {tried} machines could be kept. Number {attempt} of them came nearest. What is wrong with it:";
    TOO_LITTLE = "look-too-little", "{id} ({name}) is {value}, {by} below the least allowed, {bound}";
    TOO_MUCH = "look-too-much", "{id} ({name}) is {value}, {by} above the largest allowed, {bound}";
    UNDER = "look-under", "{id} ({name}) is {value}, and the least allowed is {bound}";
    OVER = "look-over", "{id} ({name}) is {value}, and the largest allowed is {bound}";
    NO_RESULT = "look-no-result", "{relation} ({id}) has no result: {why}";
    OTHERS = "look-others", "{count} quantities of other topics follow too; --topic shows those of one, such as {topic}";
    MAY_BE_WRONG = "look-may-be-wrong", "What may be wrong with one (--fault and the id asks for it; --fault none for nothing)";
} }

messages! { pub(crate) ERRORS {
    NO_FAULT = "error-no-fault", "{family} has no fault called {fault}; {mend}";
    NO_MACHINE = "error-look-no-machine", "the table of {family} has no machine {name}; {mend}";
    NO_NAMES = "error-look-no-names", "its machines have no names; --seed shows one by its number";
    MACHINES_ARE = "error-look-machines-are", "there are {names}";
    MACHINE_NOT_DRAWN = "error-look-machine-not-drawn", "none of {tried} machines drawn was {name}; `drivecourse check` tells what keeps it from being drawn";
    LISTS_FAULTS = "error-look-lists-faults", "`drivecourse look {family}` lists those it may have";
} }

pub(crate) fn run(options: &cli::Look, speech: &cli::Speech) -> Result<()> {
    let assets = words::begin(&options.module, speech)?;
    let Some(family) = &options.family else {
        return files::say(list(&assets, bank::load(&assets)?).trim_end());
    };
    // A family of which no machine can be drawn is the one to look at.
    let all = bank::for_chapters(&assets, bank::load_undrawn(&assets)?);
    let place = all.plan_place(family).ok_or_else(|| bank::no_family(&assets, &all, family))?;
    let plan = &all.plans[place];
    let mut out = std::io::stdout().lock();
    if let Some(machines) = options.spread {
        drop(out);
        return spread::run(options, &assets, plan, machines);
    }
    let system = bank::units(&assets, options.units).unwrap_or_default();
    let only = only(options)?;
    let faults = wanted(plan, &options.fault)?;
    let seed = match &options.machine {
        Some(name) => seed_of(plan, name, options.seed, faults.as_deref())?,
        None => options.seed,
    };
    let case = match plan.draw_with(seed, faults.as_deref()) {
        Ok(case) => case,
        Err(error) => {
            let nearest = plan.nearest(seed, faults.as_deref());
            if options.json {
                writeln!(out, "{}", serde_json::to_string_pretty(&nearest_json(plan, &nearest, system, only))?)?;
            } else {
                write!(out, "{}\n{}", shortfalls(plan, &nearest, system), text(plan, &nearest.case, system, only))?;
            }
            return Err(anyhow!(undrawable::tell(&assets, plan, error).report));
        }
    };
    let figures = match &options.figures {
        Some(folder) => figures(plan, &case, system, folder)?,
        None => Vec::new(),
    };
    if options.json {
        writeln!(out, "{}", serde_json::to_string_pretty(&json(plan, &case, system, only))?)?;
        return Ok(());
    }
    write!(out, "{}", text(plan, &case, system, only))?;
    if options.paths {
        write!(out, "{}", paths(plan, &case, system, only))?;
    }
    write!(out, "{}", possible_faults(plan))?;
    if let Some(folder) = &options.figures {
        let (count, folder) = (figures.len().to_string(), folder.display().to_string());
        let words = [("count", count.as_str()), ("folder", &folder), ("names", &figures.join(", "))];
        writeln!(out, "\n{}", PICTURES_IN.say(&words))?;
    }
    Ok(())
}

/// Every family, one a line; in a module, under whose it is.
fn list(assets: &Assets, bank: Bank) -> String {
    use std::fmt::Write as _;
    let reused: BTreeSet<String> = bank.plans.iter().map(|plan| plan.family.id.clone()).collect();
    let all = bank::for_chapters(assets, bank);
    let own = |plan: &Plan| !assets.is_module() || bank::is_own(assets, &plan.family.id);
    let asked = |plan: &Plan| reused.contains(&plan.family.id);
    let (mut out, mut groups) =
        (String::new(), [(None, Vec::new()), (Some(REUSED), Vec::new()), (Some(OF_PROGRAM), Vec::new())]);
    for plan in &all.plans {
        let group = if own(plan) {
            0
        } else if asked(plan) {
            1
        } else {
            2
        };
        groups[group].1.push(plan);
    }
    for (heading, plans) in groups.into_iter().filter(|(_, plans)| !plans.is_empty()) {
        if let Some(heading) = heading {
            let _ = writeln!(out, "{}{}", if out.is_empty() { "" } else { "\n" }, heading.text());
        }
        for plan in plans {
            let _ = writeln!(out, "{:<20} {}", plan.family.id, plan.family.name);
        }
    }
    out
}

/// What keeps the machine that came nearest from being kept, a line each.
fn shortfalls(plan: &Plan, nearest: &Nearest, system: System) -> String {
    use std::fmt::Write as _;
    let (tried, attempt) = (MOST_ATTEMPTS.to_string(), (nearest.case.rejected + 1).to_string());
    let mut out = format!("{}\n", NEAREST.say(&[("tried", &tried), ("attempt", &attempt)]));
    for short in &nearest.breaks {
        let limit = &plan.family.limits[short.limit];
        let (quantity, value) = (limit.quantity.get(), nearest.case.values[limit.quantity.index()]);
        let too_little = value < limit.at_least;
        let bound = if too_little { limit.at_least } else { limit.at_most };
        let unit = quantity.unit(system);
        let by = (unit.from_base(value) - unit.from_base(bound)).abs();
        let by = amount::with_unit(&amount::exact(quantity, by, system, 4), unit);
        let says = match (quantity.kind == Kind::Choice, too_little) {
            (false, true) => TOO_LITTLE,
            (false, false) => TOO_MUCH,
            (true, true) => UNDER,
            (true, false) => OVER,
        };
        let (value, bound) =
            (amount::write_exact(quantity, value, system), amount::write_exact(quantity, bound, system));
        let words = [("id", quantity.id), ("name", quantity.name), ("value", &value), ("by", &by), ("bound", &bound)];
        let reason = limit.reason();
        let reason = if reason.is_empty() { reason } else { format!(" ({reason})") };
        let _ = writeln!(out, "  {}{reason}", says.say(&words));
    }
    if let Some((relation, why)) = &nearest.refused {
        let relation = relation.get().relation;
        let _ =
            writeln!(out, "  {}", NO_RESULT.say(&[("relation", relation.title), ("id", relation.id), ("why", why)]));
    }
    out
}

/// The machine that came nearest, with what it breaks.
fn nearest_json(plan: &Plan, nearest: &Nearest, system: System, only: Option<&str>) -> serde_json::Value {
    let mut out = json(plan, &nearest.case, system, only);
    let breaks = nearest.breaks.iter().map(|short| {
        let limit = &plan.family.limits[short.limit];
        let (quantity, value) = (limit.quantity.get(), nearest.case.values[limit.quantity.index()]);
        let unit = quantity.unit(system);
        let bound = |bound: f64| bound.is_finite().then(|| unit.from_base(bound));
        serde_json::json!({
            "quantity": quantity.id,
            "unit": unit.symbol,
            "value": unit.from_base(value),
            "at_least": bound(limit.at_least),
            "at_most": bound(limit.at_most),
            "because": limit.reason(),
        })
    });
    out["kept"] = false.into();
    out["breaks"] = breaks.collect();
    out["no_result"] = nearest.refused.as_ref().map(|(relation, _)| relation.get().relation.id).into();
    out
}

/// Whether quantities of `topic` are shown: of the one that is asked for, else of those that the family is for. A family that
/// names no topics is for all of them.
pub(crate) fn is_shown(plan: &Plan, only: Option<&str>, topic: &str) -> bool {
    let named = &plan.family.topics;
    match only {
        Some(only) => only == topic,
        None => named.is_empty() || topic == topics::DRIVE || named.iter().any(|(named, _)| named == topic),
    }
}

/// That so many quantities are left out, with the topic of one of them; nothing where none is.
pub(crate) fn others(count: usize, topic: &str) -> String {
    OTHERS.say(&[("count", &count.to_string()), ("topic", topic)])
}

/// The only topic whose quantities are shown, if one is named.
pub(crate) fn only(options: &cli::Look) -> Result<Option<&str>> {
    let Some(topic) = options.topic.as_deref() else { return Ok(None) };
    if !topics::ALL.iter().any(|known| known.id == topic) {
        bail!(no_topic(topic));
    }
    Ok(Some(topic))
}

/// The first seed from `first` on whose machine is the one called `name` in the table.
fn seed_of(plan: &Plan, name: &str, first: u64, faults: Option<&[usize]>) -> Result<u64> {
    /// Seeds tried; a machine that none of them gives cannot be drawn, or as good as never.
    const TRIED: u64 = 2_000;
    let named = || plan.family.machines.iter().map(String::as_str);
    if !named().any(|machine| machine == name) {
        // Numbers of machines are too like one another to guess which is meant.
        let mend = match named().next() {
            Some(_) => MACHINES_ARE.say(&[("names", &named().collect::<Vec<_>>().join(", "))]),
            None => NO_NAMES.text().to_owned(),
        };
        let words = [("family", plan.family.id.as_str()), ("name", &format!("{name:?}")), ("mend", &mend)];
        bail!(NO_MACHINE.say(&words));
    }
    let drawn = |seed: &u64| plan.draw_with(*seed, faults).is_ok_and(|case| plan.machine_name(&case) == Some(name));
    (0..TRIED)
        .map(|more| first.wrapping_add(more))
        .find(drawn)
        .with_context(|| MACHINE_NOT_DRAWN.say(&[("name", &format!("{name:?}")), ("tried", &TRIED.to_string())]))
}

/// The faults asked for, as places in the family's; `None` where the seed decides.
fn wanted(plan: &Plan, named: &[String]) -> Result<Option<Vec<usize>>> {
    if named.is_empty() {
        return Ok(None);
    }
    let mut places = BTreeSet::new();
    for name in named.iter().filter(|name| *name != "none") {
        let known = || plan.family.faults.iter().map(|fault| fault.id.as_str());
        let Some(place) = known().position(|id| id == name) else {
            let mend = nearest(name, known()).map_or_else(
                || LISTS_FAULTS.say(&[("family", &plan.family.id)]),
                |near| words::MEANT.say(&[("name", &format!("{near:?}"))]),
            );
            let named = format!("{name:?}");
            bail!(NO_FAULT.say(&[("family", &plan.family.id), ("fault", &named), ("mend", &mend)]));
        };
        places.insert(place);
    }
    Ok(Some(places.into_iter().collect()))
}

/// What may be wrong with a machine of the family, each with the id that asks for it.
fn possible_faults(plan: &Plan) -> String {
    use std::fmt::Write as _;
    let mut out = String::new();
    if plan.family.faults.is_empty() {
        return out;
    }
    let _ = writeln!(out, "\n{}", MAY_BE_WRONG.text());
    for fault in &plan.family.faults {
        let _ = writeln!(out, "  {:<26} {}", fault.id, fault.name);
    }
    out
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
fn paths(plan: &Plan, case: &Case, system: System, only: Option<&str>) -> String {
    use std::fmt::Write as _;
    let mut out = format!("\n{}\n", HOW_IT_FOLLOWS.text());
    for step in plan.steps() {
        let linked = step.get();
        if only.is_some_and(|topic| linked.gives.get().topic() != topic) {
            continue;
        }
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

/// Signs of a name that stands in one line with its values.
const NAME: usize = 50;

fn text(plan: &Plan, case: &Case, system: System, only: Option<&str>) -> String {
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
    let (mut left_out, mut other) = (0, None);
    for topic in topics::ALL {
        let known = known(plan, topic.id);
        if known.is_empty() || only.is_some_and(|only| only != topic.id) {
            continue;
        }
        if !is_shown(plan, only, topic.id) {
            left_out += known.len();
            other.get_or_insert(topic.id);
            continue;
        }
        let _ = writeln!(out, "\n{}\n{:<52} {:>20}  {:>20}", topic.heading(), "", SEEN.text(), TRUE.text());
        for id in known {
            let quantity = id.get();
            let show = |value: f64| if value.is_nan() { String::new() } else { amount::write(quantity, value, system) };
            let value = case.values[id.index()];
            // What is read, and what would be shown as nothing, is told more finely: so the rounding shows.
            let is_shown = quantity.known == Known::Worked && !is_nought(&show(value));
            let exact = if is_shown || quantity.known == Known::Plate {
                show(value)
            } else {
                amount::write_exact(quantity, value, system)
            };
            // A long name has a line of its own.
            let name = if quantity.name.chars().count() > NAME {
                let _ = writeln!(out, "  {}", quantity.name);
                ""
            } else {
                quantity.name
            };
            let _ = writeln!(out, "  {name:<NAME$} {:>20}  {:>20}", show(seen[id.index()]), exact);
        }
    }
    if let Some(topic) = other {
        let _ = writeln!(out, "\n{}", others(left_out, topic));
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

/// Whether a number is written with no other figure than noughts.
fn is_nought(text: &str) -> bool {
    let mut figures = text.chars().filter(char::is_ascii_digit).peekable();
    figures.peek().is_some() && figures.all(|figure| figure == '0')
}

fn json(plan: &Plan, case: &Case, system: System, only: Option<&str>) -> serde_json::Value {
    let seen = case.seen(system);
    let quantities: Vec<_> = (Registry::get().quantities())
        .filter(|id| plan.determines(*id) && only.is_none_or(|topic| id.get().topic() == topic))
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
        "possible_faults": (plan.family.faults.iter())
            .map(|fault| serde_json::json!({ "id": fault.id, "name": fault.name }))
            .collect::<Vec<_>>(),
        "quantities": quantities,
    })
}
