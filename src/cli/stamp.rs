//! `baywitness stamp`.

use std::path::PathBuf;

use super::answer::read_answer;
use super::codes::UNREADABLE;
use super::output::{complain, language, say, shown, write_named};
use super::pdf_signer;
use super::unpacked;
use crate::evidence;
use crate::words::{Value, say};

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(value_name = "DIR")]
    folder: PathBuf,
    #[arg(long, value_name = "FILE", required_unless_present = "answer")]
    request: Option<PathBuf>,
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
    let named = shown(&arguments.folder);
    if evidence::is_pdf(&arguments.folder) {
        return match (&arguments.request, &arguments.answer) {
            (Some(request), _) => pdf_signer::request_stamp(&arguments.folder, request),
            (None, Some(answer)) => pdf_signer::stamp(&arguments.folder, answer),
            (None, None) => Err(say!(language(), "cli-stamp-no-answer")),
        };
    }
    let opened = unpacked::open(&arguments.folder)?;
    let folder = &opened.folder;
    if !evidence::is_evidence(folder) {
        return Err(say!(language(), "cli-no-evidence", folder = named));
    }
    if let Some(path) = &arguments.request {
        write_named(path, &evidence::stamp_request(folder).map_err(|e| e.phrase().say(language()))?)?;
        return Ok(say!(language(), "cli-stamp-request", file = shown(path), folder = named) + "\n");
    }
    let path = arguments.answer.as_ref().ok_or_else(|| say!(language(), "cli-stamp-no-answer"))?;
    let (file, bytes) = read_answer(path)?;
    let token = evidence::stamp(folder, &bytes, &file).map_err(|e| e.phrase().say(language()))?;
    if opened.was_one_file {
        evidence::repack(folder, &arguments.folder).map_err(|e| e.phrase().say(language()))?;
    }
    let (authority, when, ends) = (token.authority(), token.when(), Value::moment(token.ends().date().to_string()));
    Ok(say!(language(), "cli-stamped", folder = named, authority = authority, when = when, ends = ends) + "\n")
}
