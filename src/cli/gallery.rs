//! `baywitness gallery`.

use std::path::PathBuf;

use super::codes::UNREADABLE;
use super::output::{complain, language, note, say, write_file};
use crate::report::gallery_html;
use crate::training::{MISTAKES, show};
use crate::words::say;

/// What is typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(long, value_name = "DIR")]
    out: PathBuf,
    #[arg(value_name = "CODE")]
    codes: Vec<String>,
}

/// Runs the command: 0 done, 2 an unknown code or the disk.
pub(super) fn run(args: &Arguments) -> u8 {
    match write_gallery(args) {
        Ok(()) => 0,
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

fn write_gallery(args: &Arguments) -> Result<(), String> {
    let language = language();
    let all: Vec<&str> = MISTAKES.iter().map(|(code, _)| *code).collect();
    if let Some(code) = args.codes.iter().find(|c| !all.contains(&c.as_str())) {
        return Err(super::explain::unknown(code, language));
    }
    let wanted: Vec<&str> = if args.codes.is_empty() { all } else { args.codes.iter().map(String::as_str).collect() };
    let (right, entries) =
        show(&wanted, &args.out, language, &mut |code| note(&format!("{code}\n"))).map_err(|e| e.words(language))?;
    let page = args.out.join("gallery.html");
    write_file(&page, gallery_html(&right, &entries, language).as_bytes())?;
    say(&(say!(language, "training-gallery-page", page = page.display().to_string()) + "\n"), None);
    Ok(())
}
