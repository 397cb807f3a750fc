//! The program as tests start it.

use std::process::Command;

/// It, in English whatever the machine speaks.
pub(crate) fn program() -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_baywitness"));
    command.env("LC_ALL", "C").env_remove("LC_MESSAGES").env_remove("LANG");
    command
}
