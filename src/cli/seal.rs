//! `baywitness seal`.

use std::io::IsTerminal;
use std::path::{Path, PathBuf};

use super::UNREADABLE;
use super::output::{complain, say, write_file};
use crate::evidence::{self, Answer, Key, NAMESPACE};
use crate::folder::Models;
use crate::job;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Job folder
    #[arg(value_name = "JOB")]
    job: PathBuf,
    /// The evidence folder to make; a name that ends in .tar makes one file of it
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
    /// Folder with setups/, rigs/ and cameras/ to look for names in
    #[arg(long, value_name = "DIR")]
    models: Option<PathBuf>,
}

/// Verifies the job and seals it with its result and report.
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
    let answer = arguments.timestamp.as_deref().map(read_answer).transpose()?;
    let (record, contents) = job::gather(&arguments.job, &job::Options { models }).map_err(|e| e.to_string())?;
    let answer = answer.as_ref().map(|(file, bytes)| Answer { file, bytes });
    let request = write_sealed(&arguments.out, |folder| {
        evidence::seal(folder, &contents, key.as_ref(), answer).map_err(|e| e.to_string())?;
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
    let out = arguments.out.display();
    let signed = if key.is_some() {
        format!("Signed for {NAMESPACE:?} over {}.", evidence::SIGNATURE.trim_end_matches(".sig"))
    } else {
        "Not signed: it shows changes by chance, not by intent. Seal with --key to sign.".to_owned()
    };
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
fn write_sealed<T>(out: &Path, make: impl Fn(&Path) -> Result<T, String>) -> Result<T, String> {
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
fn ask(key: &Path) -> Option<String> {
    if !std::io::stdin().is_terminal() {
        return None;
    }
    rpassword::prompt_password(format!("Passphrase of {}: ", key.display())).ok()
}
