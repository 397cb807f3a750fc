//! `baywitness completions` and `baywitness man`: what shells and `man` read, made
//! from the same definition of options that the program obeys.

use std::path::{Path, PathBuf};

use clap_complete::Shell;

use super::codes::UNREADABLE;
use super::output::{cannot_write, complain, make_folder, say, write_file};

/// Options of `completions` as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Completions {
    /// The shell
    #[arg(value_name = "SHELL")]
    shell: Shell,
}

/// Options of `man` as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Man {
    /// Folder for one page of the program and one of each command
    #[arg(long, value_name = "DIR")]
    out: PathBuf,
}

/// Prints what a shell needs to complete the program's options.
pub(super) fn completions(arguments: &Completions, mut command: clap::Command) -> u8 {
    let mut script = Vec::new();
    clap_complete::generate(arguments.shell, &mut command, "baywitness", &mut script);
    say(&String::from_utf8_lossy(&script), None);
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

fn pages(arguments: &Man, mut command: clap::Command) -> Result<(), String> {
    let folder = &arguments.out;
    make_folder(folder)?;
    command.build();
    let mut open = vec![command];
    while let Some(command) = open.pop() {
        open.extend(command.get_subcommands().filter(|c| c.get_name() != "help").cloned());
        let page = clap_mangen::Man::new(command);
        let name = page.get_filename();
        let mut text = Vec::new();
        page.render(&mut text).map_err(|e| cannot_write(Path::new(&name), &e))?;
        write_file(&folder.join(name), &text)?;
    }
    Ok(())
}
