//! `baywitness seal`.

use std::io::IsTerminal;
use std::path::{Path, PathBuf};

use super::anchors::AnchorsOption;
use super::answer::read_answer;
use super::codes::UNREADABLE;
use super::logged;
use super::output::{complain, language, note, say, shown, wish, write_named};
use super::pdf_signer;
use crate::custody;
use crate::evidence::{self, Answer, Bytes, Contents, Key, NAMESPACE};
use crate::folder::Models;
use crate::job;
use crate::record::JobRecord;
use crate::report;
use crate::transparency::PROOF_FILE;
use crate::words::say;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(required = true, value_name = "JOB")]
    jobs: Vec<PathBuf>,
    #[arg(long, value_name = "DIR")]
    out: PathBuf,
    #[arg(long, value_name = "FILE")]
    key: Option<PathBuf>,
    #[arg(long, value_name = "FILE", conflicts_with = "timestamp")]
    sign_pdf: Option<PathBuf>,
    #[arg(long, value_name = "FILE", requires = "sign_pdf")]
    certificate: Option<PathBuf>,
    #[arg(long, value_name = "FILE")]
    timestamp: Option<PathBuf>,
    #[arg(long, value_name = "FILE")]
    timestamp_request: Option<PathBuf>,
    #[arg(long, value_name = "DIR")]
    log: Option<PathBuf>,
    #[command(flatten)]
    anchors: AnchorsOption,
    #[arg(long, value_name = "DIR")]
    models: Option<PathBuf>,
}

/// Verifies the jobs and seals them with their results and reports.
pub(super) fn run(arguments: &Arguments) -> u8 {
    match seal(arguments) {
        Ok(words) => {
            say(&words, None);
            0
        }
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

fn seal(arguments: &Arguments) -> Result<String, String> {
    let models = Models::standard(arguments.models.as_deref()).map_err(|e| e.say(language()))?;
    let key = arguments
        .key
        .as_deref()
        .map(|path| Key::open(path, &ask))
        .transpose()
        .map_err(|e| e.phrase().say(language()))?;
    let pdf_signer = pdf_signer::open(arguments.sign_pdf.as_deref(), arguments.certificate.as_deref())?;
    let options = job::Options { models, credentials: arguments.anchors.source()? };
    let gathered = arguments
        .jobs
        .iter()
        .map(|path| custody::gather(path, &options, wish()).map_err(|e| e.phrase().say(language())));
    let mut gathered: Vec<(JobRecord, Contents)> = gathered.collect::<Result<_, _>>()?;
    if let Some(identity) = &pdf_signer {
        for one in &mut gathered {
            custody::sign_report(one, identity, wish(), time::OffsetDateTime::now_utc())
                .map_err(|e| e.phrase().say(language()))?;
        }
    }
    if let Some(folder) = &arguments.log {
        log_all(folder, &mut gathered)?;
    }
    match gathered.as_slice() {
        [(record, contents)] => seal_one(arguments, record, contents, key.as_ref()),
        _ => seal_several(arguments, gathered, key.as_ref()),
    }
}

/// Adds the jobs to the log, and to each one's contents the proof that it is there.
fn log_all(folder: &Path, gathered: &mut [(JobRecord, Contents)]) -> Result<(), String> {
    let records: Vec<&JobRecord> = gathered.iter().map(|(record, _)| record).collect();
    let (added, words) = logged::add(&logged::open(folder)?, &records, "seal")?;
    note(&words);
    for ((_, contents), proof) in gathered.iter_mut().zip(added.proofs().map_err(|e| e.phrase().say(language()))?) {
        contents.payload.insert(PROOF_FILE.to_owned(), Bytes::Here(proof.to_text().into_bytes()));
    }
    Ok(())
}

fn verdict(record: &JobRecord) -> String {
    say!(language(), "cli-verdict", verdict = record.verdict.name())
}

fn signed(key: Option<&Key>, over: &str) -> String {
    if key.is_some() {
        say!(language(), "cli-sealed-signed", namespace = NAMESPACE, file = over.trim_end_matches(".sig"))
    } else {
        say!(language(), "cli-sealed-unsigned")
    }
}

/// Each job's folder and the page of the repair order.
fn seal_several(
    arguments: &Arguments,
    gathered: Vec<(JobRecord, Contents)>,
    key: Option<&Key>,
) -> Result<String, String> {
    let out = &arguments.out;
    if arguments.timestamp.is_some() || arguments.timestamp_request.is_some() || evidence::is_one_file(out) {
        return Err(say!(language(), "cli-seal-several-folders"));
    }
    let records: Vec<&JobRecord> = gathered.iter().map(|(record, _)| record).collect();
    let series = match report::by_series(&records).as_slice() {
        [(series, of_it)] if of_it.len() == records.len() => (*series).to_owned(),
        _ => {
            return Err(say!(language(), "cli-seal-no-series"));
        }
    };
    let page = report::series_html(&series, &records, wish().for_job(records.iter().find_map(|r| r.context.language)));
    let listed: Vec<String> = gathered
        .iter()
        .map(|(record, _)| format!("  {}/{}  {}\n", out.display(), report::stem(record), verdict(record)))
        .collect();
    let jobs: Vec<(String, Contents)> =
        gathered.into_iter().map(|(record, contents)| (report::stem(&record), contents)).collect();
    evidence::seal_several(out, &jobs, &[(custody::ORDER_PAGE, page.into_bytes())], key)
        .map_err(|e| e.phrase().say(language()))?;
    let sealed = say!(language(), "cli-sealed-several", count = jobs.len(), order = series);
    let index = say!(language(), "cli-sealed-index", file = shown(&out.join(evidence::INDEX)));
    Ok(format!("{sealed}\n{}{}\n{index}\n", listed.concat(), signed(key, evidence::INDEX_SIGNATURE)))
}

fn seal_one(
    arguments: &Arguments,
    record: &JobRecord,
    contents: &Contents,
    key: Option<&Key>,
) -> Result<String, String> {
    let answer = arguments.timestamp.as_deref().map(read_answer).transpose()?;
    let answer = answer.as_ref().map(|(file, bytes)| Answer { file, bytes });
    let request = write_sealed(&arguments.out, |folder| {
        evidence::seal(folder, contents, key, answer).map_err(|e| e.phrase().say(language()))?;
        arguments
            .timestamp_request
            .as_ref()
            .map(|_| evidence::stamp_request(folder))
            .transpose()
            .map_err(|e| e.phrase().say(language()))
    })?;
    if let (Some(path), Some(request)) = (&arguments.timestamp_request, request) {
        write_named(path, &request)?;
    }
    let (language, out) = (language(), shown(&arguments.out));
    let (job, files) = (record.job.as_str(), contents.payload.len());
    let mut lines = vec![
        say!(language, "cli-sealed-one", job = job, verdict = verdict(record), folder = &out, files = files),
        signed(key, evidence::SIGNATURE),
    ];
    if let Some(path) = &arguments.timestamp_request {
        lines.push(say!(language, "cli-sealed-send", file = shown(path), folder = &out));
    }
    lines.push(say!(language, "cli-sealed-check", folder = out));
    Ok(lines.join("\n") + "\n")
}

/// Makes the folder, or a folder that becomes one file.
pub(super) fn write_sealed<T>(out: &Path, make: impl Fn(&Path) -> Result<T, String>) -> Result<T, String> {
    if !evidence::is_one_file(out) {
        return make(out);
    }
    let name = out
        .file_stem()
        .and_then(|n| n.to_str())
        .ok_or_else(|| say!(language(), "cli-seal-no-name", path = shown(out)))?;
    let beside = out.parent().filter(|p| !p.as_os_str().is_empty()).unwrap_or(Path::new("."));
    let room = tempfile::Builder::new().prefix(".sealing-").tempdir_in(beside);
    let room =
        room.map_err(|e| say!(language(), "cli-cannot-make-folder", path = shown(beside), why = e.to_string()))?;
    let folder = room.path().join(name);
    let made = make(&folder)?;
    evidence::pack(&folder, name, out).map_err(|e| e.phrase().say(language()))?;
    Ok(made)
}

/// Asks for a key's passphrase, where somebody sits at a terminal.
pub(super) fn ask(key: &Path) -> Option<String> {
    if !std::io::stdin().is_terminal() {
        return None;
    }
    rpassword::prompt_password(say!(language(), "cli-passphrase", key = shown(key)) + " ").ok()
}
