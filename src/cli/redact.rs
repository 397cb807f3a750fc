//! `baywitness redact`.

use std::path::PathBuf;

use super::codes::UNREADABLE;
use super::output::{complain, language, say, shown};
use super::seal::write_sealed;
use super::unpacked;
use crate::custody::{self, Area};
use crate::evidence;
use crate::words::say;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(value_name = "DIR")]
    folder: PathBuf,
    #[arg(long, value_name = "DIR")]
    out: PathBuf,
    #[arg(long, value_name = "L,T,R,B", value_parser = area)]
    show: Vec<Area>,
}

fn area(text: &str) -> Result<Area, String> {
    let parts: Vec<f64> = text.split(',').filter_map(|part| part.trim().parse().ok()).collect();
    match <[f64; 4]>::try_from(parts) {
        Ok([l, t, r, b]) if l < r && t < b && [l, t, r, b].iter().all(|v| (0.0..=100.0).contains(v)) => {
            Ok([l, t, r, b].map(|v| v / 100.0))
        }
        _ => Err(say!(language(), "cli-no-area", text = text)),
    }
}

fn redact(arguments: &Arguments) -> Result<(), String> {
    let opened = unpacked::open(&arguments.folder)?;
    let contents = custody::redact(&opened.folder, &arguments.show).map_err(|e| {
        // Whoever named one file knows nothing of where it was unpacked.
        e.phrase()
            .say(language())
            .replace(&opened.folder.display().to_string(), &arguments.folder.display().to_string())
    })?;
    write_sealed(&arguments.out, |out| {
        evidence::seal(out, &contents, None, None).map_err(|e| e.phrase().say(language()))
    })
}

/// Makes the copy; exit code 0 done, 2 the folder is not intact or cannot be read.
pub(super) fn run(arguments: &Arguments) -> u8 {
    let out = shown(&arguments.out);
    match redact(arguments) {
        Ok(()) => {
            let made = say!(language(), "cli-redacted", folder = &out);
            say(&format!("{made}\n{}\n", say!(language(), "cli-redacted-check", folder = out)), None);
            0
        }
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}
