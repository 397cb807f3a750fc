//! `baywitness explain CODE`.

use std::fmt::Write;

use super::UNREADABLE;
use super::output::{complain, say};
use crate::verdict::Level;
use crate::verdict::findings::{Explanation, explanation, explanations};

/// What is typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Codes as they stand in a report, or exit codes; left out: all codes in one line each
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
        let gap = if i > 0 { "\n" } else { "" };
        match (explanation(code), exit_code(code)) {
            (Some(e), _) => say(&format!("{gap}{}", page(e)), None),
            (None, Some(words)) => say(&format!("{gap}Exit code {code}\n{}\n", textwrap::fill(words, WIDTH)), None),
            (None, None) => {
                complain(&unknown(code));
                exit = UNREADABLE;
            }
        }
    }
    exit
}

/// What a command's exit code means.
const EXIT_CODES: [(&str, &str); 5] = [
    (
        "0",
        "verify, audit: every job is within tolerance. check: intact and signed by a listed signer. plan: every check can be \
         decided. Other commands: done.",
    ),
    (
        "1",
        "verify, audit: a job is outside tolerance, and none is worse. check: altered, or wrongly signed. bay: outside a limit.",
    ),
    (
        "2",
        "Wrong usage, or an input that cannot be read: a missing or broken file, a photo that was cut off. The message names \
         file, place and remedy.",
    ),
    (
        "3",
        "verify, audit: a job is not proven, and none is worse: the photos decide neither way. check: intact, but unsigned or by \
         a signer who is not listed. plan: a check cannot be decided. camera fit, survey, recheck, bay: not fit for use, or not \
         proven.",
    ),
    (
        "4",
        "verify, audit: a job cannot be measured from its photos, and must be photographed again; the report says why.",
    ),
];

fn exit_code(code: &str) -> Option<&'static str> {
    EXIT_CODES.iter().find(|(number, _)| *number == code).map(|(_, words)| *words)
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
    text.push_str(&format!(
        "Gallery `baywitness gallery {} --out DIR` shows it: photos, figures, without and with it.\n",
        e.code
    ));
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

pub(super) fn unknown(code: &str) -> String {
    let near = explanations().map(|e| (strsim::damerau_levenshtein(e.code, code), e.code)).min();
    match near {
        Some((distance, near)) if distance <= 4 => format!("no finding has the code {code}; did you mean {near}?"),
        _ => format!("no finding has the code {code}: `baywitness explain` lists all"),
    }
}
