//! `baywitness schema`.

use super::codes::UNREADABLE;
use super::output::{complain, language, say};
use crate::record;
use crate::words::say;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(value_name = "FORMAT")]
    format: Option<String>,
}

/// Prints the JSON schema of a format.
pub(super) fn run(arguments: &Arguments) -> u8 {
    let Some(format) = &arguments.format else {
        let names: String = record::schemas().map(|name| format!("{name}\n")).collect();
        say(&names, None);
        return 0;
    };
    match record::schema(format) {
        Some(text) => {
            say(&text, None);
            0
        }
        None => {
            let names: Vec<&str> = record::schemas().collect();
            complain(&say!(language(), "cli-no-schema", format = format, known = names.join(", ")));
            UNREADABLE
        }
    }
}
