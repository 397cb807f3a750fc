//! `baywitness stamp`.

use std::path::PathBuf;

use super::UNREADABLE;
use super::output::{complain, say, write_file};
use super::seal::read_answer;
use super::unpacked;
use crate::evidence;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Evidence folder, also as one file
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
    let named = arguments.folder.display();
    let opened = unpacked::open(&arguments.folder)?;
    let folder = &opened.folder;
    if !evidence::is_evidence(folder) {
        return Err(format!("{} is no evidence folder: name one that `baywitness seal` made", named));
    }
    if let Some(path) = &arguments.request {
        write_file(path, &evidence::stamp_request(folder).map_err(|e| e.to_string())?)?;
        return Ok(format!(
            "Wrote {}. Send it to a timestamp authority, then: baywitness stamp {named} --answer FILE\n",
            path.display()
        ));
    }
    let path = arguments.answer.as_ref().ok_or("name the answer with --answer")?;
    let (file, bytes) = read_answer(path)?;
    let token = evidence::stamp(folder, &bytes, &file).map_err(|e| e.to_string())?;
    if opened.was_one_file {
        evidence::repack(folder, &arguments.folder).map_err(|e| e.to_string())?;
    }
    Ok(format!(
        "Stamped {named}: {} says {}. Stamp it again before {}, when the authority's certificate ends.\n",
        token.authority(),
        token.when(),
        token.ends().date()
    ))
}
