//! `baywitness verify`.

use std::path::{Path, PathBuf};

use super::anchors::AnchorsOption;
use super::codes::UNREADABLE;
use super::follow_up::{Of, add};
use super::logged;
use super::output::{JsonTarget, colour, complain, language, note, say, shown, wish, write_file, write_json};
use super::pdf_signer;
use super::threads::pool;
use crate::evidence::Identity;
use crate::folder::{JobFolder, Models};
use crate::job::{self, Error};
use crate::record::JobRecord;
use crate::report::{self, TextOptions};
use crate::transparency::Log;
use crate::words::say;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(required = true, value_name = "JOB")]
    pub(super) jobs: Vec<PathBuf>,
    #[arg(long, value_name = "PHOTO", group = "added")]
    pub(super) moved: Vec<PathBuf>,
    #[arg(long, value_name = "PHOTO", conflicts_with = "moved", group = "added")]
    pub(super) more: Vec<PathBuf>,
    #[arg(long, value_name = "NAME", requires = "added")]
    pub(super) step: Option<String>,
    #[arg(long, value_name = "FILE|-")]
    pub(super) json: Option<JsonTarget>,
    #[arg(long, value_name = "DIR")]
    pub(super) report: Option<PathBuf>,
    #[arg(long, value_name = "FILE", requires = "report")]
    pub(super) sign_pdf: Option<PathBuf>,
    #[arg(long, value_name = "FILE", requires = "sign_pdf")]
    pub(super) certificate: Option<PathBuf>,
    #[arg(long)]
    pub(super) private: bool,
    #[arg(long, value_name = "DIR")]
    pub(super) log: Option<PathBuf>,
    #[command(flatten)]
    pub(super) anchors: AnchorsOption,
    #[cfg(feature = "sensor-pattern")]
    #[arg(long, value_name = "DIR")]
    pub(super) cameras: Option<PathBuf>,
    #[arg(long, value_name = "DIR")]
    pub(super) models: Option<PathBuf>,
    #[arg(long, value_name = "N", allow_negative_numbers = true)]
    pub(super) threads: Option<usize>,
}

/// One element of the JSON output.
#[derive(serde::Serialize)]
#[serde(untagged)]
enum Element {
    Record(Box<JobRecord>),
    Failed { format: &'static str, path: String, message: String },
}

impl Element {
    fn record(&self) -> Option<&JobRecord> {
        match self {
            Element::Record(record) => Some(record),
            Element::Failed { .. } => None,
        }
    }
}

/// Verifies all jobs; the exit code is the worst job's.
pub(super) fn run(arguments: Arguments) -> u8 {
    match prepare(&arguments) {
        Ok((options, pool, ready)) => pool.install(|| verify_all(&arguments, &options, &ready)),
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

/// What was opened before any work.
struct Ready {
    log: Option<Log>,
    pdf_signer: Option<Identity>,
}

fn prepare(arguments: &Arguments) -> Result<(job::Options, rayon::ThreadPool, Ready), String> {
    let models = Models::standard(arguments.models.as_deref()).map_err(|e| e.say(language()))?;
    each_once(&arguments.jobs)?;
    let new = [(&arguments.moved, Of::Move), (&arguments.more, Of::SamePlace)];
    for (files, of) in new.into_iter().filter(|(files, _)| !files.is_empty()) {
        let [job] = arguments.jobs.as_slice() else {
            return Err(say!(language(), "verify-one-job"));
        };
        add(job, files, of, arguments.step.as_deref(), &models)?;
    }
    if let Some(target) = &arguments.json {
        target.check()?;
        not_over_inputs(target, &arguments.jobs, &models)?;
    }
    let log = arguments.log.as_deref().map(logged::open).transpose()?;
    let pdf_signer = pdf_signer::open(arguments.sign_pdf.as_deref(), arguments.certificate.as_deref())?;
    Ok((
        job::Options { models, credentials: arguments.anchors.source()? },
        pool(arguments.threads)?,
        Ready { log, pdf_signer },
    ))
}

/// A job that is named twice would be its own second attempt, with its photos used again.
fn each_once(jobs: &[PathBuf]) -> Result<(), String> {
    let mut known: Vec<(PathBuf, &Path)> = Vec::new();
    for job in jobs {
        let Ok(real) = job.canonicalize() else { continue };
        if let Some((_, first)) = known.iter().find(|(earlier, _)| *earlier == real) {
            return Err(say!(language(), "cli-job-twice", job = shown(first), again = shown(job)));
        }
        known.push((real, job));
    }
    Ok(())
}

/// Refuses a result's file that is a file of one of the jobs, such as an attachment.
fn not_over_inputs(target: &JsonTarget, jobs: &[PathBuf], models: &Models) -> Result<(), String> {
    let JsonTarget::File(path) = target else { return Ok(()) };
    // What is not there yet is nobody's file.
    let Ok(real) = path.canonicalize() else { return Ok(()) };
    for job in jobs {
        let Ok(folder) = JobFolder::open(job, models) else { continue };
        let inputs = folder.inputs.iter().filter_map(|f| f.path.as_ref());
        let attached = folder.attachments.iter().map(|f| &f.path);
        if inputs.chain(attached).any(|own| own.canonicalize().is_ok_and(|own| own == real)) {
            return Err(say!(language(), "cli-not-over-an-input", path = shown(path), job = shown(job)));
        }
    }
    Ok(())
}

fn verify_all(arguments: &Arguments, options: &job::Options, ready: &Ready) -> u8 {
    let results: Vec<Result<JobRecord, Error>> = job::verify_all(&arguments.jobs, options);
    // Nobody sees a verdict that could still be left out.
    if let Some(log) = &ready.log
        && let Err(message) = log_all(log, &results)
    {
        complain(&message);
        return UNREADABLE;
    }
    #[cfg(feature = "sensor-pattern")]
    let known = match arguments.cameras.as_deref().map(super::origin::Cameras::read).transpose() {
        Ok(known) => known,
        Err(message) => {
            complain(&message);
            return UNREADABLE;
        }
    };
    let mut code = 0;
    let mut elements = Vec::new();
    for (path, result) in arguments.jobs.iter().zip(results) {
        let reveal = |mut record: JobRecord| job::reveal_private(path, &mut record).map(|()| record);
        let result = if arguments.private { result.and_then(reveal) } else { result };
        match result {
            Ok(record) => {
                code = worse(code, record.verdict.exit_code());
                present(arguments, path, &record, ready.pdf_signer.as_ref()).unwrap_or_else(|message| {
                    complain(&message);
                    code = UNREADABLE;
                });
                #[cfg(feature = "sensor-pattern")]
                if let Some(known) = &known
                    && let Err(message) = say_cameras(arguments, known, path, &record)
                {
                    complain(&message);
                    code = UNREADABLE;
                }
                elements.push(Element::Record(Box::new(record)));
            }
            Err(e) => {
                complain(&e.say(language()));
                code = UNREADABLE;
                elements.push(Element::Failed {
                    format: "error/1",
                    path: path.display().to_string(),
                    message: e.to_string(),
                });
            }
        }
    }
    let records: Vec<&JobRecord> = elements.iter().filter_map(Element::record).collect();
    if let Err(message) = present_series(arguments, &records) {
        complain(&message);
        code = UNREADABLE;
    }
    if let Some(target) = &arguments.json {
        let written = match elements.as_slice() {
            [one] => write_json(target, one),
            all => write_json(target, &all),
        };
        if let Err(message) = written {
            complain(&message);
            return UNREADABLE;
        }
    }
    code
}

/// Which camera took the job's photos.
#[cfg(feature = "sensor-pattern")]
fn say_cameras(
    arguments: &Arguments,
    known: &super::origin::Cameras,
    path: &Path,
    record: &JobRecord,
) -> Result<(), String> {
    let told = known.of_job(path, record)?;
    say(&format!("\n{}", super::origin::words(&told, language())), arguments.json.as_ref());
    Ok(())
}

/// Adds what could be measured to the log, in one go.
fn log_all(log: &Log, results: &[Result<JobRecord, Error>]) -> Result<(), String> {
    let records: Vec<&JobRecord> = results.iter().filter_map(|r| r.as_ref().ok()).collect();
    let (_, words) = logged::add(log, &records, "verify")?;
    note(&words);
    if records.len() < results.len() {
        let missing = logged::jobs(results.len() - records.len());
        note(&format!("{}\n", say!(language(), "verify-not-logged", jobs = missing)));
    }
    Ok(())
}

/// Words on the terminal, and the report where it was asked for.
fn present(arguments: &Arguments, path: &Path, record: &JobRecord, signer: Option<&Identity>) -> Result<(), String> {
    let json = arguments.json.as_ref();
    let options = TextOptions { colour: colour(json), language: language(), ..TextOptions::default() };
    say(&report::text(record, &options), json);
    let Some(folder) = &arguments.report else { return Ok(()) };
    say(&write_report(folder, path, record, signer)?, json);
    Ok(())
}

/// Writes a job's report in all its forms; says where it is.
pub(super) fn write_report(
    folder: &Path,
    job: &Path,
    record: &JobRecord,
    signer: Option<&Identity>,
) -> Result<String, String> {
    make(folder)?;
    let pictures = report::pictures(job, record).map_err(|e| e.phrase().say(language()))?;
    let result = record.to_json().map_err(|e| say!(language(), "verify-no-json", why = e.to_string()))?;
    let stem = report::stem(record);
    let spoken = wish().for_job(record.context.language);
    let html = folder.join(format!("{stem}.html"));
    write_file(&html, report::html(record, &pictures, spoken).as_bytes())?;
    write_file(&folder.join(format!("{stem}.json")), &result)?;
    let pdf = folder.join(format!("{stem}.pdf"));
    let lacking = if signer.is_none() { pdf_signer::set_aside(&pdf)? } else { None };
    let note = lacking.as_ref().map(|lacking| lacking.say(spoken));
    let written = report::pdf_saying(record, &pictures, &result, spoken, note.as_deref());
    write_file(&pdf, &pdf_signer::sign(written.map_err(|e| e.phrase().say(language()))?, signer, spoken)?)?;
    let customer = customers(folder)?.join(format!("{stem}.html"));
    write_file(&customer, report::customer_html(record, &report::digest(&result), spoken).as_bytes())?;
    let [html, pdf, customer] = [html, pdf, customer].map(|file| file.display().to_string());
    let report = say!(language(), "verify-report");
    let indent = " ".repeat(report.chars().count());
    let for_the_customer = say!(language(), "verify-for-the-customer", file = customer);
    let lacking = lacking.map_or(String::new(), |lacking| format!("{indent} {}\n", lacking.say(language())));
    Ok(format!("{report} {html}\n{indent} {pdf}\n{lacking}{for_the_customer}\n"))
}

/// A page for each repair order of which several jobs were verified.
fn present_series(arguments: &Arguments, records: &[&JobRecord]) -> Result<(), String> {
    let Some(folder) = &arguments.report else { return Ok(()) };
    for (series, of_it) in report::by_series(records) {
        let spoken = wish().for_job(of_it.iter().find_map(|r| r.context.language));
        let file = customers(folder)?.join(format!("repair-order-{}.html", report::file_stem(series)));
        write_file(&file, report::series_html(series, &of_it, spoken).as_bytes())?;
        let line = say!(language(), "verify-repair-order", series = series, file = file.display().to_string());
        say(&format!("{line}\n"), arguments.json.as_ref());
    }
    Ok(())
}

/// Pages for the customer lie apart, so that nobody takes one for the report.
fn customers(folder: &Path) -> Result<PathBuf, String> {
    let folder = folder.join("for-the-customer");
    make(&folder)?;
    Ok(folder)
}

fn make(folder: &Path) -> Result<(), String> {
    let named = folder.display().to_string();
    std::fs::create_dir_all(folder)
        .map_err(|e| say!(language(), "verify-no-folder", folder = named, why = e.to_string()))
}

/// The worst wins: unreadable, retake, outside, not proven, within.
pub(super) fn worse(a: u8, b: u8) -> u8 {
    let rank = |code: u8| [2, 4, 1, 3, 0].iter().position(|c| *c == code).unwrap_or(0);
    if rank(a) <= rank(b) { a } else { b }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_worst_code_wins() {
        assert_eq!(worse(0, 3), 3);
        assert_eq!(worse(3, 1), 1);
        assert_eq!(worse(1, 4), 4);
        assert_eq!(worse(4, 2), 2);
        assert_eq!(worse(2, 0), 2);
    }
}
