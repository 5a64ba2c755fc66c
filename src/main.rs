//! `drivecourse`: cases, course, papers and grading for people who commission geared, chain-driven machines.

// Results go through `files::say`: a reader that closes early must not make the program panic.
#![warn(clippy::print_stdout)]

mod assets;
mod author;
mod bank;
mod check;
mod cli;
mod course;
mod demo;
mod enter;
mod files;
mod grade;
mod look;
mod manual;
mod new;
mod papers;
mod pdf;
mod practise;
mod record;
mod report;
mod report_pages;
mod report_tables;
mod report_words;
mod schema;
mod serve;
mod solve;
mod spread;
mod terminal;
mod words;
mod words_scenarios;

use std::process::ExitCode;

use clap::Parser;

/// Everything went as asked.
const DONE: u8 = 0;
/// The request was understood but cannot be met: a problem in a file, an answer that does not exist.
const FAILED: u8 = 1;

fn main() -> ExitCode {
    // clap itself prints help and usage errors, the latter with exit code 2.
    let arguments = cli::Arguments::parse();
    if let Some(module) = arguments.command.module() {
        module.announce();
    }
    let outcome = match arguments.command {
        cli::Command::Demo(options) => demo::run(&options),
        cli::Command::Build(options) => course::run(&options),
        cli::Command::Serve(options) => serve::run(&options),
        cli::Command::Papers(options) => papers::run(&options),
        cli::Command::Grade(options) => grade::run(&options),
        cli::Command::Enter(options) => enter::run(&options),
        cli::Command::Record(options) => record::run(&options),
        cli::Command::Report(options) => report::run(&options),
        cli::Command::Override(options) => record::change(&options),
        cli::Command::Forget(options) => record::forget(&options),
        cli::Command::Look(options) => look::run(&options),
        cli::Command::Practise(options) => practise::run(&options),
        cli::Command::Solve(options) => solve::run(&options),
        cli::Command::New(options) => new::run(&options),
        cli::Command::Check(options) => check::run(&options),
        cli::Command::Schema(options) => schema::run(&options),
        cli::Command::Words(options) => words::run(&options),
        cli::Command::Manual(options) => manual::run(&options),
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
