//! What was typed, before any work: the language that everything is said in, and
//! what is wrong, in that language.

use std::error::Error as _;
use std::fmt::Write as _;
use std::num::{ParseFloatError, ParseIntError};

use clap::error::{ContextKind, ContextValue, ErrorKind};

use super::help::usage;
use super::output::{self, language};
use crate::words::{Language, say};

/// The language that was typed, found before the rest is understood: what is wrong with it is said in that language.
pub(super) fn language_wished(typed: impl Iterator<Item = String>) -> Option<Language> {
    let mut typed = typed.take_while(|word| word != "--");
    while let Some(word) = typed.next() {
        if word == "--language" {
            return typed.next().and_then(|tag| Language::of_tag(&tag));
        }
        if let Some(tag) = word.strip_prefix("--language=") {
            return Language::of_tag(tag);
        }
    }
    None
}

/// A whole number within limits.
pub(super) fn whole<T: TryFrom<u16>, const FROM: u16, const TO: u16>(text: &str) -> Result<T, String> {
    let number = text.parse::<u16>().ok().filter(|n| (FROM..=TO).contains(n)).and_then(|n| T::try_from(n).ok());
    let (from, to) = (u32::from(FROM), u32::from(TO));
    number.ok_or_else(|| say!(language(), "help-not-whole-within", from = from, to = to))
}

/// Ends a run in which something was typed wrong, or that asked for help or the version; `with_texts` are the
/// commands with their texts.
pub(super) fn end(error: clap::Error, with_texts: impl FnOnce() -> clap::Command) -> u8 {
    let wants_help =
        matches!(error.kind(), ErrorKind::DisplayHelp | ErrorKind::DisplayHelpOnMissingArgumentOrSubcommand);
    let error = if wants_help {
        // Once more with the texts, which are not read before somebody wants them.
        with_texts().try_get_matches().err().unwrap_or(error)
    } else if error.kind() == ErrorKind::DisplayVersion {
        error
    } else {
        output::complain(&words(&error, language()));
        return super::codes::UNREADABLE;
    };
    // A closed pipe is the reader's choice.
    let _ = error.print();
    u8::try_from(error.exit_code()).unwrap_or(super::codes::UNREADABLE)
}

/// What is wrong, how it is typed and where more stands.
fn words(error: &clap::Error, language: Language) -> String {
    let mut text = what(error, language);
    let names = [ContextKind::SuggestedArg, ContextKind::SuggestedSubcommand, ContextKind::SuggestedValue];
    let names: Vec<String> = names.into_iter().flat_map(|kind| all(error, kind)).collect();
    if !names.is_empty() {
        let _ = write!(text, "\n{}", say!(language, "help-did-you-mean", names = names.join(", ")));
    }
    if let Some(typed) = all(error, ContextKind::Usage).first() {
        let usage = usage(typed, language);
        let of_command = |word: &&str| !word.starts_with(['<', '[', '-']);
        let command: Vec<&str> = usage.split_whitespace().take_while(of_command).collect();
        let _ = write!(text, "\n\n{} {usage}", say!(language, "help-usage"));
        let _ = write!(text, "\n{}", say!(language, "help-more", command = command.join(" ")));
    }
    text
}

/// What is wrong, in one sentence.
fn what(error: &clap::Error, language: Language) -> String {
    let list = |kind| all(error, kind).join(", ");
    let argument = list(ContextKind::InvalidArg);
    let value = list(ContextKind::InvalidValue);
    let actual = count(error, ContextKind::ActualNumValues);
    match error.kind() {
        ErrorKind::UnknownArgument => say!(language, "help-wrong-argument", argument = argument),
        ErrorKind::InvalidSubcommand => {
            say!(language, "help-wrong-command", command = list(ContextKind::InvalidSubcommand))
        }
        ErrorKind::InvalidValue | ErrorKind::NoEquals if value.is_empty() => {
            say!(language, "help-no-value", argument = argument)
        }
        ErrorKind::InvalidValue => {
            let known = list(ContextKind::ValidValue);
            say!(language, "help-wrong-choice", value = value, argument = argument, known = known)
        }
        ErrorKind::ValueValidation => {
            say!(language, "help-wrong-value", value = value, argument = argument, why = why(error, language))
        }
        ErrorKind::TooManyValues => say!(language, "help-too-many-values", argument = argument, value = value),
        ErrorKind::TooFewValues | ErrorKind::WrongNumberOfValues => {
            let wanted = count(error, ContextKind::MinValues).max(count(error, ContextKind::ExpectedNumValues));
            say!(language, "help-number-of-values", argument = argument, wanted = wanted, actual = actual)
        }
        ErrorKind::ArgumentConflict => {
            let others = list(ContextKind::PriorArg);
            if others == argument {
                say!(language, "help-twice", argument = argument)
            } else {
                say!(language, "help-conflict", argument = argument, others = others)
            }
        }
        ErrorKind::MissingRequiredArgument => say!(language, "help-missing", arguments = argument),
        ErrorKind::MissingSubcommand => {
            let command = list(ContextKind::InvalidSubcommand);
            say!(language, "help-missing-command", command = command, known = list(ContextKind::ValidSubcommand))
        }
        ErrorKind::InvalidUtf8 => say!(language, "help-no-text"),
        _ => say!(language, "help-wrong-otherwise", why = why(error, language)),
    }
}

/// Why a value is not taken: the reader's own words, or what the standard library's mean.
fn why(error: &clap::Error, language: Language) -> String {
    match error.source() {
        Some(source) if source.is::<ParseIntError>() => say!(language, "help-not-whole"),
        Some(source) if source.is::<ParseFloatError>() => say!(language, "help-not-number"),
        Some(source) if source.is::<std::net::AddrParseError>() => say!(language, "help-not-address"),
        Some(source) => source.to_string(),
        None => error.kind().to_string(),
    }
}

fn count(error: &clap::Error, kind: ContextKind) -> u64 {
    match error.get(kind) {
        Some(ContextValue::Number(n)) => u64::try_from(*n).unwrap_or(0),
        _ => 0,
    }
}

/// What the parser says of one thing, as plain text.
fn all(error: &clap::Error, kind: ContextKind) -> Vec<String> {
    match error.get(kind) {
        Some(ContextValue::String(text)) => vec![text.clone()],
        Some(ContextValue::Strings(texts)) => texts.clone(),
        Some(ContextValue::StyledStr(text)) => vec![text.to_string()],
        Some(ContextValue::StyledStrs(texts)) => texts.iter().map(ToString::to_string).collect(),
        _ => Vec::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn wrong(typed: &[&str], language: Language) -> String {
        let typed = std::iter::once("baywitness").chain(typed.iter().copied());
        words(&super::super::definition().try_get_matches_from(typed).unwrap_err(), language)
    }

    #[test]
    fn the_language_is_found_before_the_rest_is_understood() {
        let found = |typed: &str| language_wished(typed.split(' ').map(str::to_owned));
        assert_eq!(found("verify --languag x --language de"), Some(Language::German));
        assert_eq!(found("--language=fr verify"), Some(Language::French));
        assert_eq!(found("verify -- --language=fr"), None);
        assert_eq!(found("--language pl"), None);
    }

    #[test]
    fn what_is_wrong_is_said_in_the_language() {
        for (typed, german, names) in [
            (&["verify", "--jsn", "x", "J"][..], "unbekannte Angabe", "--json"),
            (&["verfy"], "gibt es nicht", "verify"),
            (&["gauge", "x", "--method", "guess"], "eines von range, anova wählen", "guess"),
            (&["verify"], "es fehlt noch", "<JOB>..."),
            (&["verify", "x", "--threads", "many"], "eine ganze Zahl", "--threads"),
            // Why is said in the language of the run, not of the test.
            (&["plan", "--kit", "x", "--setup", "y", "--photos", "40"], "„40“ gilt nicht für", "--photos"),
            (&["serve", "--listen", "here"], "127.0.0.1:8425", "--listen"),
            (&["verify", "x", "--report", "a", "--report", "b"], "nur einmal", "--report"),
            (&["verify", "x", "--moved", "a", "--more", "b"], "zusammen mit", "--more"),
            (&["verify", "x", "--report"], "braucht einen Wert", "--report"),
        ] {
            let said = wrong(typed, Language::German);
            assert!(said.contains(german) && said.contains(names), "{typed:?}: {said}");
            for english in ["argument", "value", "Usage", "[OPTIONS]", "invalid", "required"] {
                assert!(!said.contains(english), "{typed:?}: {said}");
            }
        }
        let said = wrong(&["verify"], Language::English);
        assert!(
            said.starts_with("still missing: <JOB>...") && said.contains("More: baywitness verify --help"),
            "{said}"
        );
    }
}
