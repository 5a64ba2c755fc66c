//! What was typed: the arguments of a run, or help, or what is wrong with them, in the language of the run.
//!
//! English help and errors are clap's own, save for numbers that are none. In another language help is shown by clap from
//! the texts of `help.rs`, and errors are said here, from what clap tells of them.

use std::ffi::OsString;
use std::num::{IntErrorKind, ParseIntError};
use std::path::PathBuf;
use std::process::ExitCode;

use clap::error::{ContextKind, ContextValue, ErrorKind};
use clap::{Command, Error, Parser};
use drivecourse_machine::messages;

use crate::cli::{Arguments, Module, Speech};
use crate::{help, words};

messages! { pub(crate) ERRORS {
    ERROR = "usage-error", "error:";
    TIP = "usage-tip", "tip:";
    SEE_HELP = "usage-see-help", "For more information, try '--help'.";
    UNKNOWN_ARGUMENT = "usage-unknown-argument", "unexpected argument '{argument}' found";
    UNKNOWN_COMMAND = "usage-unknown-command", "unrecognized subcommand '{command}'";
    MISSING = "usage-missing", "the following required arguments were not provided:";
    MISSING_COMMAND = "usage-missing-command", "'{command}' requires a subcommand but one was not provided";
    NO_VALUE = "usage-no-value", "a value is required for '{argument}' but none was supplied";
    BAD_VALUE = "usage-bad-value", "invalid value '{value}' for '{argument}'";
    BAD_VALUE_FOR = "usage-bad-value-because", "invalid value '{value}' for '{argument}': {because}";
    TOO_MANY = "usage-too-many", "unexpected value '{value}' for '{argument}' found; no more were expected";
    TOO_FEW = "usage-too-few", "{least} values required by '{argument}'; only {given} were provided";
    WRONG_NUMBER = "usage-wrong-number", "{wanted} values required for '{argument}' but {given} were provided";
    TWICE = "usage-twice", "the argument '{argument}' cannot be used multiple times";
    NOT_WITH = "usage-not-with", "the argument '{argument}' cannot be used with '{other}'";
    NOT_WITH_THESE = "usage-not-with-these", "the argument '{argument}' cannot be used with:";
    NOT_UTF8 = "usage-not-utf-8", "invalid UTF-8 was detected in one or more arguments";
    NEEDS_EQUALS = "usage-needs-equals", "equal sign is needed when assigning values to '{argument}'";
    OTHER = "usage-other", "the arguments cannot be used";
    // Why a value is none.
    NO_NUMBER = "usage-no-number", "that is no whole number, such as 3";
    NO_DIGITS = "usage-no-digits", "no number is written";
    TOO_LARGE = "usage-too-large", "the number is too large or too small";
    SEED = "usage-seed", "a seed is a whole number from 0 to {most}; the same seed draws the same numbers again";
    OUT_OF_RANGE = "usage-out-of-range", "{value} is not in {least}..={most}";
    NO_CHARACTER = "usage-no-character", "one character is wanted";
    // Tips.
    LIKE_ARGUMENT = "usage-like-argument", "a similar argument exists: '{name}'";
    LIKE_COMMAND = "usage-like-command", "a similar subcommand exists: '{name}'";
    LIKE_VALUE = "usage-like-value", "a similar value exists: '{name}'";
    AS_VALUE = "usage-as-value", "to pass '{name}' as a value, use '-- {name}'";
    TOPICS_APART = "usage-topics-apart", "topics stand in one piece: --topic \"{topics}\"";
    IN_COMMAND = "usage-in-command", "'{name}' exists";
} }

/// The arguments; or what was to be said instead of them is said, and this is the code to end with.
pub(crate) fn read(arguments: impl IntoIterator<Item = OsString>) -> Result<Arguments, ExitCode> {
    let mut arguments: Vec<OsString> = arguments.into_iter().collect();
    let mut error = match Arguments::try_parse_from(&arguments) {
        Ok(read) => return Ok(read),
        Err(error) => error,
    };
    let (speech, module, rest) = foretold(&arguments);
    // The command `help` takes the names of commands and nothing else, so the language is taken out for it.
    if rest.iter().skip(1).take(2).any(|word| word == "help")
        && let Err(other) = Arguments::try_parse_from(&rest)
        && other.kind() == ErrorKind::DisplayHelp
    {
        (error, arguments) = (other, rest);
    }
    let code = ExitCode::from(u8::try_from(error.exit_code()).unwrap_or(2));
    let spoken =
        words::foreseen(Module::new(module).folder().as_deref(), &speech).filter(|words| words::take_on(words).is_ok());
    // What the number reader says is meant for programmers.
    let of_a_number = std::error::Error::source(&error).is_some_and(|source| source.is::<ParseIntError>());
    // Nothing more can be said where the terminal has gone away.
    let apart = topics_apart(&error, &arguments);
    let _ = match spoken {
        None if !of_a_number => {
            if let Some(topics) = apart {
                let tip = TOPICS_APART.say(&[("topics", &topics)]);
                error.insert(ContextKind::Suggested, ContextValue::StyledStrs(vec![tip.into()]));
            }
            error.print()
        }
        _ => tell(&error, &arguments, apart),
    };
    Err(code)
}

/// The seed that `text` is.
///
/// # Errors
/// A sentence that says what a seed is.
pub(crate) fn seed(text: &str) -> Result<u64, String> {
    text.parse().map_err(|_| SEED.say(&[("most", &u64::MAX.to_string())]))
}

/// The topics of `new` as they stand in one piece, where blanks between them have parted them.
fn topics_apart(error: &Error, arguments: &[OsString]) -> Option<String> {
    let loose = told(error, ContextKind::InvalidArg).join(" ");
    if error.kind() != ErrorKind::UnknownArgument || loose.is_empty() || loose.starts_with('-') {
        return None;
    }
    let words: Vec<_> = arguments.iter().map(|word| word.to_string_lossy()).collect();
    let new = words.iter().position(|word| word == "new")?;
    let at = new + words[new..].iter().position(|word| word == "--topic" || word.starts_with("--topic="))?;
    let first = words[at].strip_prefix("--topic=");
    let rest = words[at + 1..].iter().take_while(|word| !word.starts_with('-')).map(AsRef::as_ref);
    let mut all: Vec<&str> = first.into_iter().chain(rest).collect();
    let is_among = all.contains(&&*loose);
    // Where no folder stands before them, the last word is the folder.
    if at == new + 1 {
        all.pop();
    }
    (all.len() > 1 && is_among).then(|| all.join(" ").replace(", ", ","))
}

/// What can be told of the language before the arguments are understood: what is asked for, the folder of the module, and
/// the arguments without the former.
fn foretold(arguments: &[OsString]) -> (Speech, Option<PathBuf>, Vec<OsString>) {
    let (mut speech, mut module, mut rest) = (Speech::default(), None, Vec::new());
    let mut left = arguments.iter().cloned();
    while let Some(word) = left.next() {
        let text = word.to_string_lossy().into_owned();
        match text.split_once('=').map_or((&*text, None), |(name, value)| (name, Some(value))) {
            ("--", None) => {
                rest.push(word);
                rest.extend(left.by_ref());
            }
            ("--language", Some(value)) => speech.language = Some(value.to_owned()),
            ("--language", None) => speech.language = left.next().map(|tag| tag.to_string_lossy().into_owned()),
            ("--mark-untranslated", None) => speech.mark_untranslated = true,
            ("--module", value) => {
                rest.push(word.clone());
                module = match value {
                    Some(folder) => Some(folder.into()),
                    None => left.next().inspect(|folder| rest.push(folder.clone())).map(PathBuf::from),
                };
            }
            _ => rest.push(word),
        }
    }
    (speech, module, rest)
}

/// Says in the language spoken what `error` says of the arguments.
fn tell(error: &Error, arguments: &[OsString], apart: Option<String>) -> std::io::Result<()> {
    use std::io::Write as _;
    let mut command = help::command();
    // Asked the same of the commands in the language, clap gives the same answer with their texts.
    let error = match command.try_get_matches_from_mut(arguments) {
        Err(said) if said.kind() == error.kind() => said,
        _ => return error.print(),
    };
    let text = match error.kind() {
        ErrorKind::DisplayVersion => error.render().ansi().to_string(),
        ErrorKind::DisplayHelp | ErrorKind::DisplayHelpOnMissingArgumentOrSubcommand => {
            help::with_usage(&error.render().ansi().to_string())
        }
        _ => refusal(&error, &command, apart),
    };
    // As clap prints: colours where they can be seen.
    if error.use_stderr() {
        anstream::stderr().write_all(text.as_bytes())
    } else {
        anstream::stdout().write_all(text.as_bytes())
    }
}

/// What is wrong with the arguments, what may be meant, how they are used.
fn refusal(error: &Error, command: &Command, apart: Option<String>) -> String {
    let styles = command.get_styles();
    let (red, green) = (styles.get_error(), styles.get_valid());
    let mut out = format!("{red}{}{red:#} {}\n", ERROR.text(), wrong(error));
    let mut tips = tips(error);
    tips.extend(apart.map(|topics| TOPICS_APART.say(&[("topics", &topics)])));
    if !tips.is_empty() {
        out.push('\n');
        tips.iter().for_each(|tip| out.push_str(&format!("  {green}{}{green:#} {tip}\n", TIP.text())));
    }
    if let Some(ContextValue::StyledStr(usage)) = error.get(ContextKind::Usage) {
        let usage = usage.ansi().to_string().replacen("Usage:", help::USAGE.text(), 1);
        out.push_str(&format!("\n{}\n", help::with_usage(&usage)));
    }
    out.push_str(&format!("\n{}\n", SEE_HELP.text()));
    out
}

/// What clap tells of `kind`, one by one.
fn told(error: &Error, kind: ContextKind) -> Vec<String> {
    match error.get(kind) {
        None | Some(ContextValue::None) => Vec::new(),
        Some(ContextValue::Strings(all)) => all.clone(),
        Some(ContextValue::StyledStrs(all)) => all.iter().map(ToString::to_string).collect(),
        Some(one) => vec![one.to_string()],
    }
}

fn wrong(error: &Error) -> String {
    let one = |kind| told(error, kind).join(", ");
    let (argument, value, command) =
        (one(ContextKind::InvalidArg), one(ContextKind::InvalidValue), one(ContextKind::InvalidSubcommand));
    let given = one(ContextKind::ActualNumValues);
    let words = [("argument", &*argument), ("value", &*value), ("command", &*command), ("given", &*given)];
    let list = |says: String, names: Vec<String>| {
        names.iter().fold(says, |out, name| format!("{out}\n  {}", help::with_usage(name)))
    };
    match error.kind() {
        ErrorKind::UnknownArgument => UNKNOWN_ARGUMENT.say(&words),
        ErrorKind::InvalidSubcommand => UNKNOWN_COMMAND.say(&words),
        ErrorKind::MissingRequiredArgument => list(MISSING.say(&words), told(error, ContextKind::InvalidArg)),
        ErrorKind::MissingSubcommand => MISSING_COMMAND.say(&words),
        ErrorKind::InvalidValue => {
            let says = if value.is_empty() { NO_VALUE.say(&words) } else { BAD_VALUE.say(&words) };
            match one(ContextKind::ValidValue) {
                possible if possible.is_empty() => says,
                possible => format!("{says}\n  {}", help::POSSIBLE.say(&[("values", &possible)])),
            }
        }
        ErrorKind::ValueValidation => match because(error) {
            Some(because) => BAD_VALUE_FOR.say(&[words[0], words[1], ("because", &because)]),
            None => BAD_VALUE.say(&words),
        },
        ErrorKind::TooManyValues => TOO_MANY.say(&words),
        ErrorKind::TooFewValues => TOO_FEW.say(&[words[0], words[3], ("least", &one(ContextKind::MinValues))]),
        ErrorKind::WrongNumberOfValues => {
            WRONG_NUMBER.say(&[words[0], words[3], ("wanted", &one(ContextKind::ExpectedNumValues))])
        }
        ErrorKind::ArgumentConflict => match told(error, ContextKind::PriorArg).as_slice() {
            [other] if *other == argument => TWICE.say(&words),
            [other] => NOT_WITH.say(&[words[0], ("other", other)]),
            others => list(NOT_WITH_THESE.say(&words), others.to_vec()),
        },
        ErrorKind::NoEquals => NEEDS_EQUALS.say(&words),
        ErrorKind::InvalidUtf8 => NOT_UTF8.say(&words),
        _ => OTHER.say(&words),
    }
}

/// Why a value is none, as whoever read it says.
fn because(error: &Error) -> Option<String> {
    let source = std::error::Error::source(error)?;
    if let Some(number) = source.downcast_ref::<ParseIntError>() {
        return Some(match number.kind() {
            IntErrorKind::Empty => NO_DIGITS.text().to_owned(),
            IntErrorKind::PosOverflow | IntErrorKind::NegOverflow => TOO_LARGE.text().to_owned(),
            _ => NO_NUMBER.text().to_owned(),
        });
    }
    if source.is::<std::char::ParseCharError>() {
        return Some(NO_CHARACTER.text().to_owned());
    }
    let says = source.to_string();
    // clap's sentence about a number that is out of its range, which it gives as text alone.
    let range = says.split_once(" is not in ").and_then(|(value, range)| Some((value, range.split_once("..=")?)));
    Some(match range {
        Some((value, (least, most))) => OUT_OF_RANGE.say(&[("value", value), ("least", least), ("most", most)]),
        None => says,
    })
}

/// What may be meant.
fn tips(error: &Error) -> Vec<String> {
    let mut out = Vec::new();
    for (kind, says) in [
        (ContextKind::SuggestedArg, LIKE_ARGUMENT),
        (ContextKind::SuggestedSubcommand, LIKE_COMMAND),
        (ContextKind::SuggestedValue, LIKE_VALUE),
    ] {
        out.extend(told(error, kind).iter().map(|name| says.say(&[("name", name)])));
    }
    // What else clap has to say is a sentence of its own; two of them are known.
    for sentence in told(error, ContextKind::Suggested) {
        let argument = told(error, ContextKind::InvalidArg).join(" ");
        if let Some(name) = sentence.strip_prefix('\'').and_then(|rest| rest.strip_suffix("' exists")) {
            out.push(IN_COMMAND.say(&[("name", name)]));
        } else if sentence.contains(&format!("-- {argument}")) && !argument.is_empty() {
            out.push(AS_VALUE.say(&[("name", &argument)]));
        }
    }
    out
}
