//! `baywitness explain CODE`.

use std::fmt::Write;

use super::UNREADABLE;
use super::output::{complain, say};
use crate::verdict::Level;
use crate::verdict::findings::{Explanation, explanation, explanations};

/// What is typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Codes as they stand in a report; left out: all codes in one line each
    #[arg(value_name = "CODE")]
    codes: Vec<String>,
}

const WIDTH: usize = 80;

/// Runs the command: 0 done, 2 an unknown code.
pub(super) fn run(arguments: &Arguments) -> u8 {
    if arguments.codes.is_empty() {
        say(&list(), None);
        return 0;
    }
    let mut exit = 0;
    for (i, code) in arguments.codes.iter().enumerate() {
        match explanation(code) {
            Some(e) => say(&format!("{}{}", if i > 0 { "\n" } else { "" }, page(e)), None),
            None => {
                complain(&unknown(code));
                exit = UNREADABLE;
            }
        }
    }
    exit
}

fn list() -> String {
    let widest = explanations().map(|e| e.code.len()).max().unwrap_or(0);
    let mut text = String::new();
    for e in explanations() {
        let _ = writeln!(text, "{:widest$}  {:4}  {}", e.code, word(e.level), e.title);
    }
    text
}

fn page(e: &Explanation) -> String {
    let mut text = format!("{} ({})\n{}\n", e.title, e.code, weight(e.level));
    let parts = [("Meaning", e.meaning), ("Cause", e.cause), ("Look", e.look), ("Do", e.remedy)];
    for (name, words) in parts {
        let lead = format!("{name:8}");
        let options = textwrap::Options::new(WIDTH).initial_indent(&lead).subsequent_indent("        ");
        text.push_str(&textwrap::fill(words, options));
        text.push('\n');
    }
    text
}

fn word(level: Level) -> &'static str {
    match level {
        Level::Void => "void",
        Level::Stop => "stop",
        Level::Warn => "warn",
        Level::Note => "note",
    }
}

fn weight(level: Level) -> &'static str {
    match level {
        Level::Void => "void: the measurement can't be trusted, the photos are taken again",
        Level::Stop => "stop: nothing is called within tolerance",
        Level::Warn => "warn: worth a look",
        Level::Note => "note: worth knowing",
    }
}

fn unknown(code: &str) -> String {
    let near = explanations().map(|e| (strsim::damerau_levenshtein(e.code, code), e.code)).min();
    match near {
        Some((distance, near)) if distance <= 4 => format!("no finding has the code {code}; did you mean {near}?"),
        _ => format!("no finding has the code {code}: `baywitness explain` lists all"),
    }
}
