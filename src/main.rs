//! `drivecourse`: cases, course, papers and grading for people who commission geared, chain-driven machines.

// Results go through `files::say`: a reader that closes early must not make the program panic.
#![warn(clippy::print_stdout)]

mod assets;
mod bank;
mod check;
mod check_chapters;
mod check_doubts;
mod check_families;
mod check_follows;
mod check_found;
mod check_items;
mod check_left_out;
mod check_never;
mod check_turns;
mod check_verdicts;
mod cli;
mod cli_authors;
mod cli_courses;
mod cli_exams;
mod cli_machines;
mod cli_records;
mod course;
mod demo;
mod enter;
mod files;
mod grade;
mod help;
mod look;
mod manual;
mod new;
mod new_table;
mod own_family;
mod papers;
mod papers_alike;
mod pdf;
mod practise;
mod record;
mod report;
mod report_pages;
mod report_tables;
mod report_words;
mod schema;
mod serve;
mod sold_sizes;
mod solve;
mod spread;
mod terminal;
mod undrawable;
mod usage;
mod words;
mod words_list;
mod words_scenarios;

use std::process::ExitCode;

/// Everything went as asked.
const DONE: u8 = 0;
/// The request was understood but cannot be met: a problem in a file, an answer that does not exist.
const FAILED: u8 = 1;

fn main() -> ExitCode {
    let arguments = match usage::read(std::env::args_os()) {
        Ok(arguments) => arguments,
        Err(code) => return code,
    };
    let speech = &arguments.speech;
    let outcome = match arguments.command {
        cli::Command::Demo(options) => demo::run(&options, speech),
        cli::Command::Build(options) => course::run(&options, speech),
        cli::Command::Serve(options) => serve::run(&options, speech),
        cli::Command::Papers(options) => papers::run(&options, speech),
        cli::Command::Grade(options) => grade::run(&options, speech),
        cli::Command::Enter(options) => enter::run(&options, speech),
        cli::Command::Record(options) => record::run(&options, speech),
        cli::Command::Report(options) => report::run(&options, speech),
        cli::Command::Override(options) => record::change(&options, speech),
        cli::Command::Forget(options) => record::forget(&options, speech),
        cli::Command::Look(options) => look::run(&options, speech),
        cli::Command::Practise(options) => practise::run(&options, speech),
        cli::Command::Solve(options) => solve::run(&options, speech),
        cli::Command::New(options) => new::run(&options, speech),
        cli::Command::Check(options) => check::run(&options, speech),
        cli::Command::Schema(options) => schema::run(&options, speech),
        cli::Command::Words(options) => words_list::run(&options, speech),
        cli::Command::Manual(options) => manual::run(&options, speech),
    };
    match outcome {
        Ok(()) => ExitCode::from(DONE),
        // A reader that closes early (`| head`) is no failure.
        Err(error) if files::is_broken_pipe(&error) => ExitCode::from(DONE),
        Err(error) => {
            eprintln!("drivecourse: {error:#}");
            ExitCode::from(FAILED)
        }
    }
}
