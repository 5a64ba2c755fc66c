//! Help in another language: the commands as clap knows them, with every text exchanged for its translation.
//!
//! In English the help texts are the comments in `cli.rs` and the files beside it, and clap shows them as they are. Each
//! has an id made of where it stands: `help-papers` is what the command `papers` is for, `help-papers-roster` its option
//! `--roster`. Options that several commands have in common are named after their struct (`help-module-module`), or after the
//! command above that has them all (`help-report-records`).

use std::collections::{BTreeMap, BTreeSet};
use std::ffi::OsStr;

use clap::builder::StyledStr;
use clap::{Arg, ArgAction, Command, CommandFactory};
use drivecourse_machine::language::{slug, translated};
use drivecourse_machine::messages;

use crate::cli::Arguments;
use crate::words_list::Entry;

messages! { pub(crate) SAYS {
    USAGE = "help-frame-usage", "Usage:";
    /// Stands in a line of usage for all that is not needed.
    ANY_OPTIONS = "help-frame-any-options", "[OPTIONS]";
    A_COMMAND = "help-frame-a-command", "COMMAND";
    COMMANDS = "help-frame-commands", "Commands";
    ARGUMENTS = "help-frame-arguments", "Arguments";
    OPTIONS = "help-frame-options", "Options";
    DEFAULT = "help-frame-default", "[default: {value}]";
    POSSIBLE = "help-frame-possible", "[possible values: {values}]";
    POSSIBLE_VALUES = "help-frame-possible-values", "Possible values:";
    PRINT_HELP = "help-frame-help", "Print help";
    PRINT_HELP_MORE = "help-frame-help-more", "Print help (see more with '--help')";
    PRINT_HELP_LESS = "help-frame-help-less", "Print help (see a summary with '-h')";
    PRINT_VERSION = "help-frame-version", "Print version";
    HELP_OF = "help-frame-help-of", "Print this message or the help of the given subcommand(s)";
} }

/// What clap writes into a line of usage for options.
const CLAPS_OPTIONS: &str = "[OPTIONS]";

/// Every help text in English, under its id, in the order of the commands.
pub(crate) fn entries() -> Vec<Entry> {
    let mut found: Vec<Entry> = SAYS.iter().map(|message| Entry::new(message.id, message.english)).collect();
    exchange(Arguments::command(), &mut |id, english| {
        if !found.iter().any(|entry| entry.id == id) {
            found.push(Entry::new(id, english));
        }
        english.to_owned()
    });
    // What stands for a value stands in the help of many.
    found.sort_by_key(|entry| entry.id.starts_with("help-value-"));
    found
}

/// The commands with every text in the language spoken.
pub(crate) fn command() -> Command {
    let mut command = exchange(Arguments::command(), &mut |id, english| translated(&id, english, true).into_owned());
    // Now clap adds what is its own: the flags for help and version, and the command `help`.
    command.build();
    frame(command)
}

/// A text of clap's in which nothing but a line of usage is left to be exchanged.
pub(crate) fn with_usage(text: &str) -> String {
    // clap indents empty lines too.
    let lines: Vec<&str> = text.split('\n').map(str::trim_end).collect();
    lines.join("\n").replace(CLAPS_OPTIONS, ANY_OPTIONS.text())
}

/// `command` and all below it with every text of ours exchanged for what `say` makes of its id and English.
fn exchange(command: Command, say: &mut dyn FnMut(String, &str) -> String) -> Command {
    let mut times: BTreeMap<String, usize> = BTreeMap::new();
    count(&command, &mut times);
    let shared = times.into_iter().filter(|(_, times)| *times > 1).map(|(struct_, _)| struct_).collect();
    exchange_in(command, "help", &shared, &BTreeMap::new(), say)
}

/// How many commands take their arguments from each struct: clap keeps a group of the struct's name.
fn count(command: &Command, times: &mut BTreeMap<String, usize>) {
    command.get_groups().for_each(|group| *times.entry(group.get_id().to_string()).or_default() += 1);
    command.get_subcommands().for_each(|inner| count(inner, times));
}

/// As [`exchange`], of a command at `path`; `above` are arguments that bear the name of the command above.
fn exchange_in(
    mut command: Command,
    path: &str,
    shared: &BTreeSet<String>,
    above: &BTreeMap<String, String>,
    say: &mut dyn FnMut(String, &str) -> String,
) -> Command {
    let own = if path == "help" { "help-program" } else { path };
    // The whole description begins with the short one, where there are both.
    if let Some(text) = command.get_about().map(plain) {
        command = command.about(say(own.to_owned(), &text));
    }
    if let Some(text) = command.get_long_about().map(plain) {
        command = command.long_about(say(format!("{own}.long"), &text));
    }
    if let Some(text) = command.get_after_help().map(plain) {
        command = command.after_help(say(format!("{own}.after"), &text));
    }
    let mut of = above.clone();
    for group in command.get_groups().filter(|group| shared.contains(group.get_id().as_str())) {
        let name = format!("help-{}", slug(group.get_id().as_str()));
        of.extend(group.get_args().map(|arg| (arg.to_string(), name.clone())));
    }
    let common: BTreeMap<String, String> = in_common(&command).map(|arg| (arg, path.to_owned())).collect();
    command
        .mut_args(|arg| {
            let before = of.get(arg.get_id().as_str()).map_or(path, String::as_str);
            let id = format!("{before}-{}", slug(arg.get_id().as_str()));
            exchange_arg(arg, &id, say)
        })
        .mut_subcommands(|inner| {
            let path = format!("{path}-{}", inner.get_name());
            exchange_in(inner, &path, shared, &common, say)
        })
}

/// The arguments that all commands below `command` have, with the same text.
fn in_common(command: &Command) -> impl Iterator<Item = String> {
    let mut times: BTreeMap<(String, String), usize> = BTreeMap::new();
    for arg in command.get_subcommands().flat_map(Command::get_arguments) {
        let text = arg.get_help().map(plain).unwrap_or_default();
        *times.entry((arg.get_id().to_string(), text)).or_default() += 1;
    }
    let all = command.get_subcommands().count();
    times.into_iter().filter(move |(_, times)| *times == all && all > 1).map(|((arg, _), _)| arg)
}

fn exchange_arg(mut arg: Arg, id: &str, say: &mut dyn FnMut(String, &str) -> String) -> Arg {
    if let Some(text) = arg.get_help().map(plain) {
        arg = arg.help(say(id.to_owned(), &text));
    }
    if let Some(text) = arg.get_long_help().map(plain) {
        arg = arg.long_help(say(format!("{id}.long"), &text));
    }
    if !arg.get_action().takes_values() {
        return arg;
    }
    if let Some(names) = arg.get_value_names() {
        let names: Vec<String> = names.iter().map(|name| say(format!("help-value-{}", slug(name)), name)).collect();
        arg = arg.value_names(names);
    }
    // Choices that mean something of their own have a word on each.
    let choices: Vec<(String, String)> = (arg.get_possible_values().iter())
        .filter_map(|choice| Some((choice.get_name().to_owned(), plain(choice.get_help()?))))
        .map(|(name, about)| {
            let about = say(format!("help-choice-{}-{}", slug(arg.get_id().as_str()), slug(&name)), &about);
            (name, about)
        })
        .collect();
    with_choices(arg, &choices)
}

/// `arg` with its default and choices written into its help, since what clap adds itself is English.
fn with_choices(arg: Arg, choices: &[(String, String)]) -> Arg {
    let help = arg.get_help().map(plain).unwrap_or_default();
    let shown = |value: &OsStr| {
        let value = value.to_string_lossy();
        if value.is_empty() { "\"\"".to_owned() } else { value.into_owned() }
    };
    let default: Vec<String> = arg.get_default_values().iter().map(|value| shown(value)).collect();
    let default = default.join(" ");
    let default = if default.is_empty() { String::new() } else { DEFAULT.say(&[("value", &default)]) };
    let names: Vec<&str> = choices.iter().map(|(name, _)| name.as_str()).collect();
    let possible = if names.is_empty() { String::new() } else { POSSIBLE.say(&[("values", &names.join(", "))]) };
    let short = [help.as_str(), &default, &possible].into_iter().filter(|part| !part.is_empty());
    let short = short.collect::<Vec<_>>().join(" ");
    let mut arg = arg.hide_default_value(true).hide_possible_values(true);
    if !choices.is_empty() {
        let lines: Vec<String> = choices.iter().map(|(name, about)| format!("- {name}: {about}")).collect();
        let list = format!("{}\n{}", POSSIBLE_VALUES.text(), lines.join("\n"));
        let long = [help, list, default].into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>();
        arg = arg.long_help(long.join("\n\n"));
    }
    if short.is_empty() { arg } else { arg.help(short) }
}

/// Exchanges what clap says itself in `command`, which is built, and all below it.
fn frame(command: Command) -> Command {
    let header = command.get_styles().get_header().to_owned();
    let template = format!(
        "{{before-help}}{{about-with-newline}}\n{header}{}{header:#} {{usage}}\n\n{{all-args}}{{after-help}}",
        USAGE.text()
    );
    let is_help = command.get_name() == "help";
    let command = command
        .help_template(template)
        .subcommand_help_heading(COMMANDS.text())
        .subcommand_value_name(A_COMMAND.text())
        .mut_args(|arg| {
            let heading = if arg.is_positional() { ARGUMENTS } else { OPTIONS };
            let arg = arg.help_heading(heading.text());
            match arg.get_action() {
                ArgAction::Help => {
                    let more = arg.get_long_help().is_some();
                    let said = arg.help(if more { PRINT_HELP_MORE } else { PRINT_HELP }.text());
                    if more { said.long_help(PRINT_HELP_LESS.text()) } else { said }
                }
                ArgAction::Version => arg.help(PRINT_VERSION.text()),
                _ => arg,
            }
        })
        .mut_subcommands(frame);
    if is_help { command.about(HELP_OF.text()) } else { command }
}

fn plain(text: &StyledStr) -> String {
    text.to_string()
}
