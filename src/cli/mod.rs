//! The command-line doors, a file for each command. What is typed becomes one
//! ready value of options before any work starts; no geometry here.

mod audit;
mod bay;
mod camera;
mod check;
mod complete;
mod detect;
mod drill;
mod due;
mod explain;
mod gallery;
mod gauge;
mod new;
mod output;
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
mod unpacked;
mod verify;
mod watch;

use std::process::ExitCode;

use clap::{CommandFactory, Parser, Subcommand};

/// Proves from ordinary photos where a calibration target stood.
#[derive(Debug, Parser)]
#[command(name = "baywitness", version, about, max_term_width = 100)]
struct Arguments {
    /// Print errors only: the exit code and the files that were asked for say the rest
    #[arg(long, short, global = true)]
    quiet: bool,
    #[command(subcommand)]
    command: Command,
}

#[derive(Debug, Subcommand)]
enum Command {
    /// Make a job folder to fill
    New(new::Arguments),
    /// Measure a job's photos and decide on the checks of its set-up sheet
    Verify(verify::Arguments),
    /// Verify every job below a folder as its photos arrive
    Watch(watch::Arguments),
    /// Find the markers of photos, with the uncertainty of every corner
    Detect(detect::Arguments),
    /// Fit a camera to photos of a board
    Camera(camera::Arguments),
    /// Find where the markers of a rig really sit on their carriers
    Survey(survey::Arguments),
    /// Measure how repeatably a wheel plate seats, from repeated clamping
    Seating(seating::Arguments),
    /// Check a fixed reference against its first survey, with control charts
    Recheck(recheck::Arguments),
    /// Divide the spread of readings into gauge, people and parts
    Gauge(gauge::Arguments),
    /// Print a marker kit or a camera board as PDF at true size
    Sheet(sheet::Arguments),
    /// Seal a job with its result and report in an evidence folder
    Seal(seal::Arguments),
    /// Ask a timestamp authority about an evidence folder, and keep its answer
    Stamp(stamp::Arguments),
    /// Copy an evidence folder with its photos masked but for the markers
    Redact(redact::Arguments),
    /// Check an evidence folder: every byte, the signature, and the result against the photos
    Check(check::Arguments),
    /// Say what a finding's code means, where it comes from and what to do
    Explain(explain::Arguments),
    /// Judge an archive of job and evidence folders
    Audit(audit::Arguments),
    /// Say which mistakes happen, where and since when, over an archive of results
    Trends(trends::Arguments),
    /// Say what photos will be worth before anyone takes them, and where to stand
    Plan(plan::Arguments),
    /// List what of an archive is due: time of keeping passed, timestamps to renew
    Due(due::Arguments),
    /// Explain and examine a set-up sheet
    Setup(setup::Arguments),
    /// Measure how level and flat a bay's floor is
    Bay(bay::Arguments),
    /// Serve the technician's page, which phones in the bay open
    Serve(serve::Arguments),
    /// Show each mistake in an invented bay: photos, figures, cause and remedy
    Gallery(gallery::Arguments),
    /// Practise on invented jobs with hidden mistakes
    Drill(drill::Arguments),
    /// Render an invented bay: a complete job folder and what is true of it
    Stage(stage::Arguments),
    /// Print the JSON schema of what the program writes
    Schema(schema::Arguments),
    /// Print what a shell needs to complete these commands
    Completions(complete::Completions),
    /// Write the pages of the manual
    Man(complete::Man),
}

/// Wrong usage, or an input that can't be read.
const UNREADABLE: u8 = 2;

/// The commands and their options, for what is made of them or checked against them.
pub fn command() -> clap::Command {
    Arguments::command()
}

/// Runs the program.
pub fn run() -> ExitCode {
    let arguments = Arguments::parse();
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
        Command::Stamp(a) => stamp::run(&a),
        Command::Check(a) => check::run(&a),
        Command::Explain(a) => explain::run(&a),
        Command::Audit(a) => audit::run(&a),
        Command::Due(a) => due::run(&a),
        Command::Trends(a) => trends::run(&a),
        Command::Plan(a) => plan::run(&a),
        Command::Setup(a) => setup::run(&a),
        Command::Bay(a) => bay::run(&a),
        Command::Serve(a) => serve::run(a),
        Command::Gallery(a) => gallery::run(&a),
        Command::Drill(a) => drill::run(&a),
        Command::Stage(a) => stage::run(&a),
        Command::Schema(a) => schema::run(&a),
        Command::Completions(a) => complete::completions(&a, command()),
        Command::Man(a) => complete::man(&a, command()),
    };
    ExitCode::from(code)
}

/// A date as typed: year-month-day.
fn date(text: &str) -> Result<time::Date, String> {
    let shape = time::macros::format_description!("[year]-[month]-[day]");
    time::Date::parse(text, shape).map_err(|_| format!("\"{text}\" is no date: write it as 2027-05-01"))
}
