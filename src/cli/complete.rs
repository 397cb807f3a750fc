//! `baywitness completions` and `baywitness man`: what shells and `man` read, made
//! from the same definition of options that the program obeys.

use std::path::{Path, PathBuf};

use clap_complete::Shell;

use super::codes::UNREADABLE;
use super::output::{self, cannot_write, complain, language, make_folder, write_file};
use crate::words::{Language, say};

/// Options of `completions` as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Completions {
    #[arg(value_name = "SHELL")]
    shell: Shell,
}

/// Options of `man` as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Man {
    #[arg(long, value_name = "DIR")]
    out: PathBuf,
}

/// Prints what a shell needs to complete the program's options.
pub(super) fn completions(arguments: &Completions, mut command: clap::Command) -> u8 {
    let mut script = Vec::new();
    clap_complete::generate(arguments.shell, &mut command, "baywitness", &mut script);
    output::say(&String::from_utf8_lossy(&script), None);
    0
}

/// Writes the manual's pages.
pub(super) fn man(arguments: &Man, command: clap::Command) -> u8 {
    match pages(arguments, command) {
        Ok(()) => 0,
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

fn pages(arguments: &Man, command: clap::Command) -> Result<(), String> {
    let folder = &arguments.out;
    make_folder(folder)?;
    let mut open = vec![command];
    while let Some(command) = open.pop() {
        open.extend(command.get_subcommands().filter(|c| c.get_name() != "help").cloned());
        let page = clap_mangen::Man::new(command);
        let name = page.get_filename();
        let mut text = Vec::new();
        page.render(&mut text).map_err(|e| cannot_write(Path::new(&name), &e))?;
        write_file(&folder.join(name), headed(&String::from_utf8_lossy(&text), language()).as_bytes())?;
    }
    Ok(())
}

/// A page with its headings in the language.
fn headed(page: &str, language: Language) -> String {
    let heading = |english: &str| match english {
        "NAME" => Some(say!(language, "help-man-name")),
        "SYNOPSIS" => Some(say!(language, "help-man-synopsis")),
        "DESCRIPTION" => Some(say!(language, "help-man-description")),
        "OPTIONS" => Some(say!(language, "help-man-options")),
        "SUBCOMMANDS" => Some(say!(language, "help-man-commands")),
        "EXTRA" => Some(say!(language, "help-man-codes")),
        "VERSION" => Some(say!(language, "help-man-version")),
        _ => None,
    };
    let line = |line: &str| match line.strip_prefix(".SH ").and_then(heading) {
        Some(heading) => format!(".SH \"{heading}\"\n"),
        None => format!("{line}\n"),
    };
    page.lines().map(line).collect()
}
