//! `baywitness explain CODE`.

use std::fmt::Write;

use super::codes::UNREADABLE;
use super::output::{complain, language, say};
use crate::verdict::Level;
use crate::verdict::findings::{Explanation, explanation, explanations};
use crate::words::{Language, say};

/// What is typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(value_name = "CODE")]
    codes: Vec<String>,
}

const WIDTH: usize = 80;

/// Runs the command: 0 done, 2 an unknown code.
pub(super) fn run(arguments: &Arguments) -> u8 {
    let language = language();
    if arguments.codes.is_empty() {
        say(&list(language), None);
        return 0;
    }
    let mut exit = 0;
    for (i, code) in arguments.codes.iter().enumerate() {
        let gap = if i > 0 { "\n" } else { "" };
        match (explanation(code), exit_code(code, language)) {
            (Some(e), _) => say(&format!("{gap}{}", page(e, language)), None),
            (None, Some(words)) => {
                let title = say!(language, "explain-exit-code", code = code);
                say(&format!("{gap}{title}\n{}\n", textwrap::fill(&words, WIDTH)), None);
            }
            (None, None) => {
                complain(&unknown(code, language));
                exit = UNREADABLE;
            }
        }
    }
    exit
}

/// What a command's exit code means.
fn exit_code(code: &str, language: Language) -> Option<String> {
    Some(match code {
        "0" => say!(language, "explain-exit-0"),
        "1" => say!(language, "explain-exit-1"),
        "2" => say!(language, "explain-exit-2"),
        "3" => say!(language, "explain-exit-3"),
        "4" => say!(language, "explain-exit-4"),
        _ => return None,
    })
}

fn list(language: Language) -> String {
    let widest = explanations().map(|e| e.code.len()).max().unwrap_or(0);
    let level = |e: &Explanation| say!(language, "explain-level", level = name(e.level));
    let widest_level = explanations().map(|e| level(e).chars().count()).max().unwrap_or(0);
    let mut text = String::new();
    for e in explanations() {
        let _ = writeln!(text, "{:widest$}  {:widest_level$}  {}", e.code, level(e), e.title(language));
    }
    text
}

fn page(e: &Explanation, language: Language) -> String {
    let weight = say!(language, "explain-weight", level = name(e.level));
    let mut text = format!("{} ({})\n{weight}\n", e.title(language), e.code);
    let mut parts = vec![
        (say!(language, "explain-meaning"), e.meaning(language)),
        (say!(language, "explain-cause"), e.cause(language)),
        (say!(language, "explain-look"), e.look(language)),
        (say!(language, "explain-remedy"), e.remedy(language)),
    ];
    for rule in e.rules() {
        parts.push((say!(language, "explain-rationale"), rule.rationale(language)));
        parts.push((say!(language, "explain-method"), rule.method(language)));
    }
    let widest = parts.iter().map(|(name, _)| name.chars().count()).max().unwrap_or(0) + 1;
    let below = " ".repeat(widest);
    for (name, words) in parts {
        let lead = format!("{name:widest$}");
        let options = textwrap::Options::new(WIDTH).initial_indent(&lead).subsequent_indent(&below);
        text.push_str(&textwrap::fill(&words, options));
        text.push('\n');
    }
    text.push_str(&textwrap::fill(&say!(language, "explain-gallery", code = e.code), WIDTH));
    text.push('\n');
    text
}

/// As the messages select by it.
fn name(level: Level) -> &'static str {
    match level {
        Level::Void => "void",
        Level::Stop => "stop",
        Level::Warn => "warn",
        Level::Note => "note",
    }
}

pub(super) fn unknown(code: &str, language: Language) -> String {
    let near = explanations().map(|e| (strsim::damerau_levenshtein(e.code, code), e.code)).min();
    match near {
        Some((distance, near)) if distance <= 4 => say!(language, "explain-did-you-mean", code = code, near = near),
        _ => say!(language, "explain-unknown", code = code),
    }
}
