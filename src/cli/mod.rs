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
mod follow_up;
mod gallery;
mod gauge;
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
mod unpacked;
mod verify;
mod watch;

use std::process::ExitCode;

use clap::{CommandFactory, FromArgMatches, Parser, Subcommand};

pub use phases::{PHASES, Phase};

use crate::words::{Language, say};

/// Proves from ordinary photos where a calibration target stood, with an uncertainty for every figure
#[derive(Debug, Parser)]
#[command(name = "baywitness", version, max_term_width = 100)]
struct Arguments {
    /// Print errors only: the exit code and the files that were asked for say the rest
    #[arg(long, short, global = true)]
    quiet: bool,
    /// Language of everything that people read: en, de, es or fr (default: that of the environment); files for programs have none
    #[arg(long, global = true, value_name = "TAG", value_parser = output::language_of)]
    language: Option<Language>,
    #[command(subcommand)]
    command: Command,
}

#[derive(Debug, Subcommand)]
enum Command {
    /// Make a job folder to fill
    ///
    /// job.toml holds everything that a job may say, what is not known yet as comments; photos go into photos/.
    New(new::Arguments),
    /// Measure a job's photos and decide on the checks of its set-up sheet
    ///
    /// The report is a page (HTML), the same as PDF, the result as JSON, and a page for the customer. Attempts of one
    /// repair order (`series` in job.toml) that are given together are compared, and listed on one more page.
    /// After a correction one photo is enough: `verify --moved c.jpg JOB` takes it into the job and measures it with the first.
    #[command(after_help = JOB_CODES)]
    Verify(verify::Arguments),
    /// Verify every job below a folder as its photos arrive
    ///
    /// With --tripod: takes the photos of one job's camera, which stands on a tripod while the stand's screws are turned.
    /// After each standstill in a new place it says the verdict and the one thing to do first.
    #[command(after_help = JOB_CODES)]
    Watch(watch::Arguments),
    /// Find the markers of photos, with the uncertainty of every corner
    Detect(detect::Arguments),
    /// Fit a camera to photos of a board
    Camera(camera::Arguments),
    /// Find where the markers of a kit really sit on their carriers
    ///
    /// Scale comes from lengths measured on the kit; what is found is written with its covariance.
    #[command(after_help = FIT_CODES)]
    Survey(survey::Arguments),
    /// Measure how repeatably a wheel plate seats
    ///
    /// The plate is clamped on again and again while the stand stays where it is; half a turn of the wheel adds the
    /// plate's run-out.
    #[command(after_help = FIT_CODES)]
    Seating(seating::Arguments),
    /// Check a fixed reference against its first survey
    ///
    /// Each check adds a line to a log, and control charts show all of them.
    #[command(after_help = "Exit code: 0 in order, 2 unreadable, 3 something moved or could not be measured")]
    Recheck(recheck::Arguments),
    /// Divide the spread of readings into gauge, people and parts
    Gauge(gauge::Arguments),
    /// Print a marker kit or a camera board as PDF at true size
    ///
    /// Rulers on every sheet show what the printer really did, drawings how to build each marker holder.
    Sheet(sheet::Arguments),
    /// Seal a job with its result and report in an evidence folder
    ///
    /// The folder is a BagIt bag with SHA-512 digests, signed with --key as `ssh-keygen -Y sign -n baywitness-evidence`
    /// does. Jobs of one repair order are sealed side by side, each in a folder that can be checked and handed on
    /// alone; index-sha512.txt binds them.
    Seal(seal::Arguments),
    /// Timestamp an evidence folder
    ///
    /// Writes the request for a timestamp authority (RFC 3161), and puts its answer into the folder.
    Stamp(stamp::Arguments),
    /// Copy an evidence folder with its photos masked but for the markers
    ///
    /// The copy still checks against the sealed digests; reports and attachments are left out.
    Redact(redact::Arguments),
    /// Check an evidence folder and measure its photos again
    ///
    /// Looks at every byte, the signature and the timestamps, and compares the result with what the photos say now.
    #[command(
        after_help = "Exit code: 0 intact and signed by a listed signer, 1 altered, 2 unreadable, 3 intact but unsigned \
                            or signer unknown"
    )]
    Check(check::Arguments),
    /// Say what a code of a report or an exit code means
    ///
    /// For a finding: its meaning, where it comes from, how to see it in the bay, and what to do.
    Explain(explain::Arguments),
    /// Judge an archive of job and evidence folders
    ///
    /// Uses every core and goes on where it was after any interruption. Writes a page, a table (CSV), a line for each
    /// job and each result whole; a build with the feature `parquet` also audit.parquet. Evidence as one file (.tar)
    /// is taken too.
    #[command(after_help = JOB_CODES)]
    Audit(audit::Arguments),
    /// Keep and check the append-only log of attempts
    ///
    /// `verify --log`, `seal --log` and `serve --log` add every verdict to it, so that no attempt can be dropped, put in
    /// later or changed without being seen. The folder is a tiled transparency log (C2SP tlog-tiles) that any file server
    /// publishes as it is; what must stay private lies beside it, in DIR.private.
    Log(log::Arguments),
    /// Say which mistakes happen, where and since when
    ///
    /// Reads what `audit` or `verify --json` wrote. Compares first attempts and tells people, bays, sheets and kits
    /// apart, as far as the archive allows; names only what stands out beyond chance.
    Trends(trends::Arguments),
    /// Say where to stand and what the photos will be worth
    ///
    /// Tells how many photos it takes at least, and what to change where no photos could decide.
    #[command(after_help = "Exit code: 0 every check can be decided, 2 unreadable, 3 one cannot")]
    Plan(plan::Arguments),
    /// List jobs whose time of keeping has passed, and timestamps to renew
    ///
    /// Nothing is deleted.
    Due(due::Arguments),
    /// Explain and examine a set-up sheet
    Setup(setup::Arguments),
    /// Measure how level and flat a bay's floor is
    ///
    /// Floor sheets all over the bay are measured against the plane of the wheels: slope, unevenness, free length.
    #[command(after_help = "Exit code: 0 within every limit, 1 outside one, 2 unreadable, 3 one not proven")]
    Bay(bay::Arguments),
    /// Serve the technician's page, which phones in the bay open
    ///
    /// Photos are judged as they arrive; then come the verdict, which way to move what, further attempts, and closing
    /// into an evidence folder.
    Serve(serve::Arguments),
    /// Show each mistake in an invented bay, with cause and remedy
    ///
    /// Photos and figures without and with the mistake.
    Gallery(gallery::Arguments),
    /// Practise on invented jobs with hidden mistakes
    Drill(drill::Arguments),
    /// Render an invented bay: a job folder and what is true of it
    Stage(stage::Arguments),
    /// Print the JSON schema of what the program writes
    Schema(schema::Arguments),
    /// Print what a shell needs to complete these commands
    Completions(complete::Completions),
    /// Write the pages of the manual
    Man(complete::Man),
}

/// What a judged job ends with.
const JOB_CODES: &str = "Exit code: 0 within tolerance, 1 outside, 2 unreadable, 3 not proven, 4 photos to be taken again; of \
                         several jobs the worst of 2, 4, 1, 3, 0";

/// What bench work ends with.
const FIT_CODES: &str = "Exit code: 0 done, 2 unreadable, 3 not fit for use, or too little to say";

/// Wrong usage, or an input that can't be read.
const UNREADABLE: u8 = 2;

/// The commands and their options, for what is made of them or checked against them.
pub fn command() -> clap::Command {
    phases::grouped(Arguments::command())
}

/// Runs the program.
pub fn run() -> ExitCode {
    if std::env::args_os().len() == 1 {
        output::set_language(None);
    }
    if std::env::args_os().len() == 1
        && let Some(code) = next_step::run()
    {
        return ExitCode::from(code);
    }
    let typed = command().get_matches();
    let arguments = Arguments::from_arg_matches(&typed).unwrap_or_else(|e| e.format(&mut command()).exit());
    output::set_quiet(arguments.quiet);
    output::set_language(arguments.language);
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
        Command::Completions(a) => complete::completions(&a, command()),
        Command::Man(a) => complete::man(&a, command()),
    };
    for words in crate::input::older_names_met() {
        output::note(&(say!(output::language(), "cli-note", words = words) + "\n"));
    }
    ExitCode::from(code)
}

/// A date as typed: year-month-day.
fn date(text: &str) -> Result<time::Date, String> {
    let shape = time::macros::format_description!("[year]-[month]-[day]");
    time::Date::parse(text, shape).map_err(|_| say!(output::language(), "cli-no-date", text = text))
}
