//! `solve`: any quantity from givens, with the steps.

use std::fmt::Write as _;
use std::io::Write as _;

use anyhow::{Result, anyhow, bail};
use drivecourse_machine::amount::{self, Wanted};
use drivecourse_machine::language::{Message, with_decimal_mark};
use drivecourse_machine::messages;
use drivecourse_machine::solve::{Disagreement, Solution, Unsolved, contradictions, solve};
use drivecourse_machine::{Kind, PathChoice, QuantityId, Registry, RelationId, Role, System, Working};

use crate::{cli, words};

/// How far givens may differ from one another before they contradict: the rounding people write with.
const AGREE: f64 = 0.01;

messages! { pub(crate) SAYS {
    GIVEN = "solve-given", "Given";
    NOT_NEEDED = "solve-not-needed", "(not needed)";
    ONE_OF = "solve-one-of", "one of: {choices}";
    OR = "solve-or", "{one} or {other}";
    BY_FROM = "solve-by-from", "by {method}  from {quantities}";
    MAKES_ONLY = "solve-makes-only", "(makes machines; not asked, not solved)";
} }

messages! { pub(crate) ERRORS {
    WHICH = "error-which-quantity", "say which quantity you want, such as load.overhung; `drivecourse solve --list` names them all";
    IS_ASKED = "error-given-is-asked", "{quantity} is what you ask for; leave it out of what is given, and it is worked out from the rest";
    GIVEN_TWICE = "error-given-twice", "{quantity} is given twice";
    CONTRADICT = "error-givens-contradict", "the givens contradict each other:\n{which}";
    NAMES_ALL = "error-solve-names-all", "`drivecourse solve --list` names them all";
    NO_QUANTITY = "error-no-quantity", "there is no quantity {name}; {hint}";
    AMBIGUOUS = "error-ambiguous", "{name} may be {names}: write it out";
    NO_METHOD = "error-no-method", "there is no method {method}; `drivecourse solve --list WORD` names the methods of each quantity";
    NO_METHOD_BUT = "error-no-method-but", "there is no method {method}; {meant}; `drivecourse solve --list WORD` names the methods of each quantity";
    NOT_A_GIVEN = "error-not-a-given", "{text} is not a given; write it as name=value, such as chain.sag=\"11 mm\"";
    NO_CHOICE = "error-no-choice", "{written} is none of its choices: {choices}.{called}";
    CANNOT_BE_READ = "error-given-cannot-be-read", "what is given for {quantity} cannot be read. {error}";
    DOES_NOT_FOLLOW = "error-does-not-follow", "{quantity} does not follow from what is given.";
    NO_WAY_TO_IT = "error-no-way-to-it", "{quantity} does not follow from what is given. No method gives it: it is read or stated, not worked out.";
    GIVE_ALSO = "error-give-also", "by {method}, give also:";
    NO_RESULT = "error-no-result", "the step “{step}” has no result: {error}.";
    HOLDS_FOR = "error-holds-for", "It holds for: {limits}";
    AND = "error-and", "{one} and {other}";
    DISAGREES = "error-givens-disagree", "{quantity} is given as {given}, but {from} make it {worked}{off}";
    LEAVE_OUT = "error-leave-out", "Leave the doubtful one out, or correct it.";
    NO_SUCH_WORD = "error-no-quantity-with", "no quantity has {word} in its name; `drivecourse solve --list` names them all";
} }

pub(crate) fn run(options: &cli::Solve, speech: &cli::Speech) -> Result<()> {
    words::begin_built_in(speech)?;
    if let Some(word) = &options.list {
        return list(word);
    }
    let Some(wanted) = &options.quantity else {
        bail!(WHICH.text());
    };
    let asked = quantity(wanted)?;
    let near = nearness(asked);
    let mut givens = Vec::new();
    let (mut us, mut with_units) = (0, 0);
    for text in &options.givens {
        let (id, value, is_us) = given(text, &near)?;
        if id == asked {
            bail!(IS_ASKED.say(&[("quantity", id.get().id)]));
        }
        if givens.iter().any(|(other, _)| *other == id) {
            bail!(GIVEN_TWICE.say(&[("quantity", id.get().id)]));
        }
        us += u32::from(is_us);
        // A factor says nothing of the units a person works in.
        with_units += u32::from(id.get().unit(System::Si) != id.get().unit(System::Us));
        givens.push((id, value));
    }
    // Answer in the units the question was put in, unless told otherwise.
    let guess = if us * 2 > with_units { System::Us } else { System::Si };
    let system = options.units.map_or(guess, System::from);
    let by = options.by.iter().map(|id| method(id)).collect::<Result<Vec<_>>>()?;
    let choice = PathChoice { by, ..PathChoice::default() };
    let disagreements = contradictions(&givens, AGREE, system);
    if !disagreements.is_empty() {
        bail!(CONTRADICT.say(&[("which", &disagree(&disagreements, system))]));
    }
    let solution = solve(&givens, asked, &choice, system).map_err(|error| unsolved(&error, &givens, system))?;
    let mut out = std::io::stdout().lock();
    if options.json {
        writeln!(out, "{}", serde_json::to_string_pretty(&json(&solution, &givens, system))?)?;
    } else {
        out.write_all(text(&solution, &givens, system).as_bytes())?;
    }
    Ok(())
}

/// The quantity asked for by its name, or by its last part where only one has it.
fn quantity(name: &str) -> Result<QuantityId> {
    let registry = Registry::get();
    if let Some(id) = registry.find(name) {
        return Ok(id);
    }
    let ends: Vec<QuantityId> =
        (registry.quantities()).filter(|id| id.get().id.split('.').next_back() == Some(name)).collect();
    match ends.as_slice() {
        [id] => Ok(*id),
        [] => {
            let hint = registry
                .suggestion(name)
                .map_or_else(|| NAMES_ALL.text().to_owned(), |near| words::MEANT.say(&[("name", near)]));
            bail!(NO_QUANTITY.say(&[("name", &format!("{name:?}")), ("hint", &hint)]))
        }
        many => Err(ambiguous(name, many)),
    }
}

/// The names in a row, each joined to those before it by `joint`, which has a place for either.
fn listed(names: &[&str], joint: Message) -> String {
    let mut names = names.iter().map(|name| (*name).to_owned());
    let first = names.next().unwrap_or_default();
    names.fold(first, |one, other| joint.say(&[("one", &one), ("other", &other)]))
}

fn ambiguous(name: &str, may_be: &[QuantityId]) -> anyhow::Error {
    let names: Vec<_> = may_be.iter().map(|id| id.get().id).collect();
    let names = listed(&names, OR);
    anyhow!(AMBIGUOUS.say(&[("name", &format!("{name:?}")), ("names", &names)]))
}

/// How many steps each quantity is before `asked`; nothing where no relation leads from it there.
fn nearness(asked: QuantityId) -> Vec<Option<u32>> {
    let registry = Registry::get();
    let mut near = vec![None; registry.len()];
    near[asked.index()] = Some(0);
    for steps in 1.. {
        let reached = |id: QuantityId| near[id.index()] == Some(steps - 1);
        let inputs =
            registry.relations().iter().filter(|linked| reached(linked.gives)).flat_map(|linked| linked.inputs());
        let new: Vec<QuantityId> = inputs.filter(|id| near[id.index()].is_none()).collect();
        if new.is_empty() {
            break;
        }
        new.iter().for_each(|id| near[id.index()] = Some(steps));
    }
    near
}

/// A given quantity by its name, or by the end of it: of several that end so, the one fewest steps before what is asked.
fn given_quantity(name: &str, near: &[Option<u32>]) -> Result<QuantityId> {
    let registry = Registry::get();
    if let Some(id) = registry.find(name) {
        return Ok(id);
    }
    let last = |id: QuantityId| id.get().id.split('.').next_back().unwrap_or_default();
    let whole = |id: &QuantityId| last(*id) == name;
    let word = |id: &QuantityId| last(*id).strip_suffix(name).is_some_and(|rest| rest.ends_with('_'));
    let nearest = |fits: &dyn Fn(&QuantityId) -> bool| -> Vec<QuantityId> {
        let known = || registry.quantities().filter(|id| near[id.index()].is_some() && fits(id));
        let least = known().map(|id| near[id.index()]).min();
        known().filter(|id| Some(near[id.index()]) == least).collect()
    };
    let mut found = nearest(&whole);
    if found.is_empty() && !name.is_empty() {
        found = nearest(&word);
    }
    match found.as_slice() {
        [id] => Ok(*id),
        [] => quantity(name),
        many => Err(ambiguous(name, many)),
    }
}

fn method(id: &str) -> Result<RelationId> {
    let registry = Registry::get();
    if let Some(linked) = registry.relation(id) {
        return Ok(linked.id);
    }
    let near = drivecourse_machine::registry::nearest(id, registry.relations().iter().map(|linked| linked.relation.id));
    let named = format!("{id:?}");
    match near.map(|near| words::MEANT.say(&[("name", near)])) {
        Some(meant) => bail!(NO_METHOD_BUT.say(&[("method", &named), ("meant", &meant)])),
        None => bail!(NO_METHOD.say(&[("method", &named)])),
    }
}

/// One given, and whether it was written in a US customary unit.
fn given(text: &str, near: &[Option<u32>]) -> Result<(QuantityId, f64, bool)> {
    let (name, value) =
        text.split_once('=').ok_or_else(|| anyhow!(NOT_A_GIVEN.say(&[("text", &format!("{text:?}"))])))?;
    let id = given_quantity(name.trim(), near)?;
    let quantity = id.get();
    if quantity.kind == Kind::Choice {
        // No letters are shown here: the choices themselves are what can be written.
        let place = amount::read_choice(value, quantity.labels).map_err(|error| match error {
            amount::ReadError::NoSuchChoice { written, choices } => {
                let called =
                    amount::called_here(quantity, &written).map_or_else(String::new, |called| format!(" {called}"));
                let (written, choices) = (format!("{written:?}"), choices.join(", "));
                unread(id, &NO_CHOICE.say(&[("written", &written), ("choices", &choices), ("called", &called)]))
            }
            other => unread(id, &other),
        })?;
        return Ok((id, place as f64, false));
    }
    let read = amount::read(value, &Wanted::new(quantity.kind)).map_err(|error| unread(id, &error))?;
    let is_us = read.unit_given && read.unit == quantity.unit(System::Us) && read.unit != quantity.unit(System::Si)
        || ["in", "ft", "mil", "lb", "lbf", "lb/ft", "lbf·in", "lbf·ft", "hp", "psi", "ksi", "°F", "ft/min", "in/ft"]
            .contains(&read.unit.symbol);
    Ok((id, read.base, is_us))
}

fn unread(id: QuantityId, error: &dyn std::fmt::Display) -> anyhow::Error {
    anyhow!(CANNOT_BE_READ.say(&[("quantity", id.get().id), ("error", &error.to_string())]))
}

fn shown(id: QuantityId, value: f64, system: System) -> String {
    amount::write(id.get(), value, system)
}

fn text(solution: &Solution, givens: &[(QuantityId, f64)], system: System) -> String {
    let mut out = String::new();
    let used = solution.path.uses();
    let _ = writeln!(out, "{}", GIVEN.text());
    for (id, value) in givens {
        let idle = if used.contains(id) { String::new() } else { format!("   {}", NOT_NEEDED.text()) };
        let _ = writeln!(out, "  {} = {}{idle}", id.get().name, shown(*id, *value, system));
    }
    out.push_str(&working_text(&solution.working));
    let asked = solution.asked.get();
    let _ = writeln!(out, "\n{} = {}", capital(asked.name), shown(solution.asked, solution.value, system));
    out
}

/// The steps as plain text: also used by `practise`.
pub(crate) fn working_text(working: &Working) -> String {
    let mut out = String::new();
    for (index, line) in working.lines.iter().enumerate() {
        let _ = writeln!(out, "\n{}. {}", index + 1, line.title);
        if line.symbols.is_empty() {
            let _ = writeln!(out, "   {}", line.method);
            for (name, _, value) in &line.inputs {
                let _ = writeln!(out, "   {name}: {value}");
            }
        } else {
            let _ = writeln!(out, "   {}\n   {}", line.symbols, line.numbers);
        }
        let _ = writeln!(out, "   {}", line.result);
        for own in &line.own {
            let _ = writeln!(out, "   {own}");
        }
        let _ = writeln!(out, "   [{}]", line.source_said());
    }
    out
}

fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| first.to_uppercase().chain(chars).collect())
}

fn unsolved(error: &Unsolved, givens: &[(QuantityId, f64)], system: System) -> anyhow::Error {
    match error {
        Unsolved::Missing(missing) => {
            let said = if missing.missing.is_empty() { NO_WAY_TO_IT } else { DOES_NOT_FOLLOW };
            let mut out = said.say(&[("quantity", missing.asked.get().id)]);
            for (relation, lacking) in missing.missing.iter().take(4) {
                let _ = write!(out, "\n  {}", GIVE_ALSO.say(&[("method", relation.get().relation.id)]));
                for id in lacking {
                    let _ = write!(out, "\n      {:<28} {}", id.get().id, id.get().name);
                }
            }
            anyhow!(out)
        }
        Unsolved::Failed(relation, error) => {
            let linked = relation.get();
            let words = [("step", linked.relation.title), ("error", &error.to_string())];
            let mut out = NO_RESULT.say(&words);
            for id in linked.inputs() {
                if let Some((_, value)) = givens.iter().find(|(given, _)| *given == id) {
                    let _ = write!(out, "\n  {} = {}", id.get().name, shown(id, *value, system));
                }
            }
            if !linked.relation.limits.is_empty() {
                let _ = write!(out, "\n  {}", HOLDS_FOR.say(&[("limits", linked.relation.limits)]));
            }
            anyhow!(out)
        }
    }
}

fn disagree(disagreements: &[Disagreement], system: System) -> String {
    let mut out = String::new();
    for d in disagreements {
        let off = if d.given == 0.0 {
            String::new()
        } else {
            with_decimal_mark(format!(", {:+.1} %", (d.worked / d.given - 1.0) * 100.0))
        };
        let from: Vec<_> = d.from.iter().map(|id| id.get().id).collect();
        let words = [
            ("quantity", d.quantity.get().id),
            ("given", &shown(d.quantity, d.given, system)),
            ("from", &listed(&from, AND)),
            ("worked", &shown(d.quantity, d.worked, system)),
            ("off", &off),
        ];
        let _ = writeln!(out, "  {}", DISAGREES.say(&words));
    }
    let _ = write!(out, "  {}", LEAVE_OUT.text());
    out
}

fn json(solution: &Solution, givens: &[(QuantityId, f64)], system: System) -> serde_json::Value {
    let value = |id: QuantityId, base: f64| {
        let unit = id.get().unit(system);
        serde_json::json!({
            "quantity": id.get().id,
            "name": id.get().name,
            "value": if id.get().kind == Kind::Choice { amount::choice(id.get(), base).into() } else { serde_json::json!(unit.from_base(base)) },
            "unit": unit.symbol,
            "si": base,
            "shown": shown(id, base, system).replace(['\u{a0}', '\u{202f}'], " "),
        })
    };
    let clean = |text: &str| text.replace(['\u{a0}', '\u{202f}'], " ");
    serde_json::json!({
        "asked": value(solution.asked, solution.value),
        "units": system.code(),
        "given": givens.iter().map(|(id, base)| value(*id, *base)).collect::<Vec<_>>(),
        "steps": solution.working.lines.iter().map(|line| serde_json::json!({
            "method": line.relation,
            "title": line.title,
            "formula": line.symbols,
            "numbers": clean(&line.numbers),
            "result": clean(&line.result),
            "limits": line.limits,
            "source": line.source.to_string(),
        })).collect::<Vec<_>>(),
    })
}

fn list(word: &str) -> Result<()> {
    let registry = Registry::get();
    let mut out = std::io::stdout().lock();
    let word = word.to_lowercase();
    let mut any = false;
    for id in registry.quantities() {
        let quantity = id.get();
        let hit = quantity.id.to_lowercase().contains(&word) || quantity.name.to_lowercase().contains(&word);
        if !hit {
            continue;
        }
        any = true;
        let (si, us) = (quantity.unit(System::Si).symbol, quantity.unit(System::Us).symbol);
        let units = if si == us { si.to_owned() } else { OR.say(&[("one", si), ("other", us)]) };
        writeln!(
            out,
            "{:<28} {}{}",
            quantity.id,
            quantity.name,
            if units.is_empty() { String::new() } else { format!(", {units}") }
        )?;
        if !quantity.labels.is_empty() {
            writeln!(out, "{:<28}   {}", "", ONE_OF.say(&[("choices", &quantity.labels.join(", "))]))?;
        }
        for method in registry.giving(id) {
            let relation = method.get().relation;
            let from: Vec<_> = relation.args.iter().map(|arg| arg.quantity).collect();
            let words = [("method", relation.id), ("quantities", &from.join(", "))];
            let only = if relation.role == Role::Model { format!("  {}", MAKES_ONLY.text()) } else { String::new() };
            writeln!(out, "{:<28}   {}{only}", "", BY_FROM.say(&words))?;
        }
    }
    if !any {
        bail!(NO_SUCH_WORD.say(&[("word", &format!("{word:?}"))]));
    }
    Ok(())
}
