//! `baywitness seal`.

use std::io::IsTerminal;
use std::path::{Path, PathBuf};

use super::UNREADABLE;
use super::logged;
use super::output::{complain, note, say, wish, write_file};
use crate::custody;
use crate::evidence::{self, Answer, Bytes, Contents, Key, NAMESPACE};
use crate::folder::Models;
use crate::job;
use crate::record::JobRecord;
use crate::report;
use crate::transparency::PROOF_FILE;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Job folder; several of one repair order (`series`) get an evidence folder each, with an index
    #[arg(required = true, value_name = "JOB")]
    jobs: Vec<PathBuf>,
    /// The evidence folder to make; a name that ends in .tar makes one file of it; for several jobs the folder that holds theirs
    #[arg(long, value_name = "DIR")]
    out: PathBuf,
    /// Sign with this key of ssh-keygen (ed25519); a .pub file names one that the agent holds
    #[arg(long, value_name = "FILE")]
    key: Option<PathBuf>,
    /// Put in this answer of a timestamp authority (RFC 3161), given for a request of the same job and key
    #[arg(long, value_name = "FILE")]
    timestamp: Option<PathBuf>,
    /// Also write the request to send to a timestamp authority
    #[arg(long, value_name = "FILE")]
    timestamp_request: Option<PathBuf>,
    /// Add each job to this log of attempts, and seal the proof of it (made by `baywitness log new DIR --origin NAME`)
    #[arg(long, value_name = "DIR")]
    log: Option<PathBuf>,
    /// Folder with setups/, kits/ and cameras/ to look for names in
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
    let models = Models::standard(arguments.models.as_deref()).map_err(|e| e.to_string())?;
    let key = arguments.key.as_deref().map(|path| Key::open(path, &ask)).transpose().map_err(|e| e.to_string())?;
    let options = job::Options { models };
    let gathered = arguments.jobs.iter().map(|path| custody::gather(path, &options, wish()).map_err(|e| e.to_string()));
    let mut gathered: Vec<(JobRecord, Contents)> = gathered.collect::<Result<_, _>>()?;
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
    for ((_, contents), proof) in gathered.iter_mut().zip(added.proofs().map_err(|e| e.to_string())?) {
        contents.payload.insert(PROOF_FILE.to_owned(), Bytes::Here(proof.to_text().into_bytes()));
    }
    Ok(())
}

fn signed(key: Option<&Key>, over: &str) -> String {
    if key.is_some() {
        format!("Signed for {NAMESPACE:?} over {}.", over.trim_end_matches(".sig"))
    } else {
        "Not signed: it shows changes by chance, not by intent. Seal with --key to sign.".to_owned()
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
        return Err("several jobs become folders, each with a timestamp of its own: seal them into a folder without \
                    --timestamp, then `baywitness stamp` each, or seal them one by one"
            .to_owned());
    }
    let records: Vec<&JobRecord> = gathered.iter().map(|(record, _)| record).collect();
    let series = match report::by_series(&records).as_slice() {
        [(series, of_it)] if of_it.len() == records.len() => (*series).to_owned(),
        _ => {
            return Err("jobs are sealed together only where all state the same repair order (`series` in job.toml): \
                        state it, or seal them one by one"
                .to_owned());
        }
    };
    let page = report::series_html(&series, &records, wish().for_job(records.iter().find_map(|r| r.context.language)));
    let listed: Vec<String> = gathered
        .iter()
        .map(|(record, _)| format!("  {}/{}  {}\n", out.display(), report::stem(record), record.verdict.words()))
        .collect();
    let jobs: Vec<(String, Contents)> =
        gathered.into_iter().map(|(record, contents)| (report::stem(&record), contents)).collect();
    evidence::seal_several(out, &jobs, &[("repair-order.html", page.into_bytes())], key).map_err(|e| e.to_string())?;
    Ok(format!(
        "Sealed {} jobs of repair order {series}, each in an evidence folder of its own:\n{}{}\nThe index {} binds them. \
         Check each folder any time: baywitness check FOLDER\n",
        jobs.len(),
        listed.concat(),
        signed(key, evidence::INDEX_SIGNATURE),
        out.join(evidence::INDEX).display()
    ))
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
        evidence::seal(folder, contents, key, answer).map_err(|e| e.to_string())?;
        arguments
            .timestamp_request
            .as_ref()
            .map(|_| evidence::stamp_request(folder))
            .transpose()
            .map_err(|e| e.to_string())
    })?;
    if let (Some(path), Some(request)) = (&arguments.timestamp_request, request) {
        write_file(path, &request)?;
    }
    let (out, signed) = (arguments.out.display(), signed(key, evidence::SIGNATURE));
    let asked = arguments.timestamp_request.as_ref().map_or(String::new(), |path| {
        format!("Send {} to a timestamp authority, then: baywitness stamp {out} --answer FILE\n", path.display())
    });
    Ok(format!(
        "Sealed job {}, {}, in {out}: {} files.\n{signed}\n{asked}Check it any time: baywitness check {out}\n",
        record.job,
        record.verdict.words(),
        contents.payload.len()
    ))
}

/// Makes the folder, or a folder that becomes one file.
pub(super) fn write_sealed<T>(out: &Path, make: impl Fn(&Path) -> Result<T, String>) -> Result<T, String> {
    if !evidence::is_one_file(out) {
        return make(out);
    }
    let name = out.file_stem().and_then(|n| n.to_str()).ok_or_else(|| format!("{} is no name", out.display()))?;
    let beside = out.parent().filter(|p| !p.as_os_str().is_empty()).unwrap_or(Path::new("."));
    let room = tempfile::Builder::new().prefix(".sealing-").tempdir_in(beside);
    let room = room.map_err(|e| format!("cannot make a folder in {}: {e}", beside.display()))?;
    let folder = room.path().join(name);
    let made = make(&folder)?;
    evidence::pack(&folder, name, out).map_err(|e| e.to_string())?;
    Ok(made)
}

/// An answer's name and bytes.
pub(super) fn read_answer(path: &Path) -> Result<(String, Vec<u8>), String> {
    let bytes = std::fs::read(path).map_err(|e| format!("cannot read the timestamp {}: {e}", path.display()))?;
    Ok((path.display().to_string(), bytes))
}

/// Asks for a key's passphrase, where somebody sits at a terminal.
pub(super) fn ask(key: &Path) -> Option<String> {
    if !std::io::stdin().is_terminal() {
        return None;
    }
    rpassword::prompt_password(format!("Passphrase of {}: ", key.display())).ok()
}
