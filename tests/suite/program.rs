//! The program as tests start it.

use std::path::Path;
use std::process::{Command, Output};

/// It, in English whatever the machine speaks.
pub(crate) fn program() -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_baywitness"));
    command.env("LC_ALL", "C").env_remove("LC_MESSAGES").env_remove("LANG");
    command
}

/// What it does in a folder, with the models that it carries.
pub(crate) fn run(folder: &Path, arguments: &[&str]) -> Output {
    let mut command = program();
    command.args(arguments).current_dir(folder).env_remove("BAYWITNESS_MODELS").output().unwrap()
}

/// All that it said, in one line.
pub(crate) fn told(output: &Output) -> String {
    let text = [&output.stdout[..], &output.stderr[..]].concat();
    String::from_utf8_lossy(&text).split_whitespace().collect::<Vec<_>>().join(" ")
}
