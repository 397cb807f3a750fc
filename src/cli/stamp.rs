//! `baywitness stamp`.

use std::path::PathBuf;

use super::UNREADABLE;
use super::output::{complain, say, write_file};
use super::seal::read_answer;
use crate::evidence;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Evidence folder
    #[arg(value_name = "DIR")]
    folder: PathBuf,
    /// Write the request (RFC 3161) to send to a timestamp authority
    #[arg(long, value_name = "FILE", required_unless_present = "answer")]
    request: Option<PathBuf>,
    /// Put the authority's answer into the folder
    #[arg(long, value_name = "FILE", conflicts_with = "request")]
    answer: Option<PathBuf>,
}

/// Asks for the folder's next timestamp, or takes one in.
pub(super) fn run(arguments: &Arguments) -> u8 {
    match stamp(arguments) {
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

fn stamp(arguments: &Arguments) -> Result<String, String> {
    let folder = &arguments.folder;
    if !evidence::is_evidence(folder) {
        return Err(format!("{} is no evidence folder: name one that `baywitness seal` made", folder.display()));
    }
    if let Some(path) = &arguments.request {
        write_file(path, &evidence::stamp_request(folder).map_err(|e| e.to_string())?)?;
        return Ok(format!(
            "Wrote {}. Send it to a timestamp authority, then: baywitness stamp {} --answer FILE\n",
            path.display(),
            folder.display()
        ));
    }
    let path = arguments.answer.as_ref().ok_or("name the answer with --answer")?;
    let (file, bytes) = read_answer(path)?;
    let token = evidence::stamp(folder, &bytes, &file).map_err(|e| e.to_string())?;
    Ok(format!(
        "Stamped {}: {} says {}. Stamp it again before {}, when the authority's certificate ends.\n",
        folder.display(),
        token.authority(),
        token.when(),
        token.ends().date()
    ))
}
