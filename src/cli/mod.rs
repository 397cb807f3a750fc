//! The command-line doors, a file for each command. What is typed becomes one
//! ready value of options before any work starts; no geometry here.

mod anchors;
mod answer;
mod audit;
mod audit_words;
mod bay;
mod camera;
mod certificate;
mod check;
mod check_copy;
mod check_pdf;
mod codes;
mod complete;
mod dates;
mod detect;
mod drill;
mod due;
mod explain;
mod follow_up;
mod gallery;
mod gauge;
mod help;
mod log;
mod log_check;
mod logged;
mod new;
mod next_step;
#[cfg(feature = "sensor-pattern")]
mod origin;
#[cfg(feature = "sensor-pattern")]
mod origin_audit;
mod output;
mod pdf_signer;
mod phases;
mod plan;
mod recheck;
mod redact;
mod schema;
mod seal;
mod seating;
mod serve;
mod setup;
mod sheet;
mod stage;
mod stamp;
mod survey;
mod threads;
mod trends;
mod tripod;
mod typed;
mod unpacked;
mod verify;
mod watch;
mod who_stamped;

use std::process::ExitCode;

use clap::{CommandFactory, FromArgMatches, Parser, Subcommand};

pub use phases::{PHASES, Phase};

use crate::words::{Language, say};

/// What may be typed. What people read of it are messages (`words/*/help.ftl`), by the names of commands and fields.
#[derive(Debug, Parser)]
#[command(name = "baywitness", version, max_term_width = 80)]
struct Arguments {
    #[arg(long, short, global = true)]
    quiet: bool,
    #[arg(long, global = true, value_name = "TAG", value_parser = output::language_of)]
    language: Option<Language>,
    #[command(subcommand)]
    command: Command,
}

#[derive(Debug, Subcommand)]
enum Command {
    New(new::Arguments),
    Verify(verify::Arguments),
    Watch(watch::Arguments),
    Detect(detect::Arguments),
    Camera(camera::Arguments),
    Survey(survey::Arguments),
    Seating(seating::Arguments),
    Recheck(recheck::Arguments),
    Gauge(gauge::Arguments),
    Sheet(sheet::Arguments),
    Seal(seal::Arguments),
    Certificate(certificate::Arguments),
    Stamp(stamp::Arguments),
    Redact(redact::Arguments),
    Check(check::Arguments),
    Explain(explain::Arguments),
    Audit(audit::Arguments),
    Log(log::Arguments),
    Trends(trends::Arguments),
    Plan(plan::Arguments),
    Due(due::Arguments),
    Setup(setup::Arguments),
    Bay(bay::Arguments),
    Serve(serve::Arguments),
    Gallery(gallery::Arguments),
    Drill(drill::Arguments),
    Stage(stage::Arguments),
    Schema(schema::Arguments),
    Completions(complete::Completions),
    Man(complete::Man),
}

/// What is obeyed: commands and options without a text.
fn definition() -> clap::Command {
    Arguments::command()
}

/// The commands and their options with their texts in the reader's language, for what is made of them or checked against them.
pub fn command() -> clap::Command {
    help::filled(definition(), output::language())
}

/// Runs the program.
pub fn run() -> ExitCode {
    let typed = std::env::args_os().skip(1).map(|word| word.to_string_lossy().into_owned());
    output::set_language(typed::language_wished(typed));
    if std::env::args_os().len() == 1
        && let Some(code) = next_step::run()
    {
        return ExitCode::from(code);
    }
    let typed = definition().try_get_matches().and_then(|typed| Arguments::from_arg_matches(&typed));
    let arguments = match typed {
        Ok(arguments) => arguments,
        Err(error) => return ExitCode::from(typed::end(error, command)),
    };
    output::set_quiet(arguments.quiet);
    let code = match arguments.command {
        Command::New(a) => new::run(&a),
        Command::Verify(a) => verify::run(a),
        Command::Watch(a) => watch::run(&a),
        Command::Detect(a) => detect::run(&a),
        Command::Camera(a) => camera::run(&a),
        Command::Survey(a) => survey::run(&a),
        Command::Seating(a) => seating::run(&a),
        Command::Recheck(a) => recheck::run(&a),
        Command::Gauge(a) => gauge::run(&a),
        Command::Sheet(a) => sheet::run(&a),
        Command::Seal(a) => seal::run(&a),
        Command::Redact(a) => redact::run(&a),
        Command::Certificate(a) => certificate::run(&a),
        Command::Stamp(a) => stamp::run(&a),
        Command::Check(a) => check::run(&a),
        Command::Explain(a) => explain::run(&a),
        Command::Audit(a) => audit::run(&a),
        Command::Due(a) => due::run(&a),
        Command::Log(a) => log::run(&a),
        Command::Trends(a) => trends::run(&a),
        Command::Plan(a) => plan::run(&a),
        Command::Setup(a) => setup::run(&a),
        Command::Bay(a) => bay::run(&a),
        Command::Serve(a) => serve::run(a),
        Command::Gallery(a) => gallery::run(&a),
        Command::Drill(a) => drill::run(&a),
        Command::Stage(a) => stage::run(&a),
        Command::Schema(a) => schema::run(&a),
        Command::Completions(a) => complete::completions(&a, help::texts(definition(), output::language())),
        Command::Man(a) => complete::man(&a, command()),
    };
    for words in crate::input::older_names_met() {
        output::note(&(say!(output::language(), "cli-note", words = words) + "\n"));
    }
    ExitCode::from(code)
}
