//! `baywitness seal`.

use std::io::IsTerminal;
use std::path::{Path, PathBuf};

use super::UNREADABLE;
use super::output::{complain, say};
use crate::evidence::{self, Key, NAMESPACE};
use crate::folder::Models;
use crate::job;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Job folder
    #[arg(value_name = "JOB")]
    job: PathBuf,
    /// The evidence folder to make
    #[arg(long, value_name = "DIR")]
    out: PathBuf,
    /// Sign with this key of ssh-keygen (ed25519); a .pub file names one that the agent holds
    #[arg(long, value_name = "FILE")]
    key: Option<PathBuf>,
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
    let (record, contents) = job::gather(&arguments.job, &job::Options { models }).map_err(|e| e.to_string())?;
    evidence::seal(&arguments.out, &contents, key.as_ref()).map_err(|e| e.to_string())?;
    let out = arguments.out.display();
    let signed = if key.is_some() {
        format!("Signed for {NAMESPACE:?} over {}.", evidence::SIGNATURE.trim_end_matches(".sig"))
    } else {
        "Not signed: it shows changes by chance, not by intent. Seal with --key to sign.".to_owned()
    };
    Ok(format!(
        "Sealed job {}, {}, in {out}: {} files.\n{signed}\nCheck it any time: baywitness check {out}\n",
        record.job,
        record.verdict.words(),
        contents.payload.len()
    ))
}

/// Asks for a key's passphrase, where somebody sits at a terminal.
fn ask(key: &Path) -> Option<String> {
    if !std::io::stdin().is_terminal() {
        return None;
    }
    rpassword::prompt_password(format!("Passphrase of {}: ", key.display())).ok()
}
