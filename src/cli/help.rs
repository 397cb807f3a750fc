//! The program's help in the reader's language: the definition of options is
//! filled in from room `help` of the message files, and only when help is shown,
//! printed or written. What is obeyed has no texts.

use clap::Command;
use clap::builder::{Resettable, StyledStr};

use super::phases;
use crate::words::{Language, Phrase, say};

/// The definition with its texts, as help, the manual and `docs/commands.md` show it.
pub(super) fn filled(command: Command, language: Language) -> Command {
    let mut command = texts(command, language);
    // The parser adds its own options, and each command its name in full.
    command.build();
    phases::grouped(shown(command, language), language)
}

/// The definition with its texts alone, as completions want it.
pub(super) fn texts(command: Command, language: Language) -> Command {
    with_texts(command, &mut Vec::new(), language)
}

fn with_texts(command: Command, path: &mut Vec<String>, language: Language) -> Command {
    let own = if path.is_empty() { "help-baywitness".to_owned() } else { key(path) };
    let attribute = |name: &str| Phrase::new(format!("{own}.{name}")).known(language);
    let about = Phrase::new(own.clone()).say(language);
    let long = attribute("about-more").map(|more| format!("{about}\n\n{more}"));
    let codes = attribute("exit-codes");
    let command = command.about(about).long_about(text(long)).after_help(text(codes));
    let command = command.mut_args(|argument| {
        let mut help = of_argument(path, argument.get_id().as_str(), language);
        let defaults: Vec<_> = argument.get_default_values().iter().map(|v| v.to_string_lossy().into_owned()).collect();
        if let Some(value) = defaults.first().filter(|value| !value.is_empty()) {
            help = say!(language, "help-with-default", help = help, value = value);
        }
        argument.help(help).long_help(Resettable::Reset).hide_default_value(true)
    });
    command.mut_subcommands(|below| {
        path.push(below.get_name().to_owned());
        let below = with_texts(below, path, language);
        path.pop();
        below
    })
}

fn text(text: Option<String>) -> Resettable<StyledStr> {
    text.map_or(Resettable::Reset, |text| Resettable::Value(text.into()))
}

fn key(path: &[String]) -> String {
    format!("help-{}", path.join("-"))
}

/// Of the command itself, else of one above it, else what all have alike.
fn of_argument(path: &[String], id: &str, language: Language) -> String {
    let own = (1..=path.len()).rev().map(|n| key(&path[..n]));
    let mut keys = own.chain(["help-shared".to_owned()]).map(|key| format!("{key}.{id}"));
    keys.find_map(|key| Phrase::new(key).known(language)).unwrap_or_else(|| id.to_owned())
}

/// With headings, usage and the parser's own options in the language.
fn shown(command: Command, language: Language) -> Command {
    let mut command = command.mut_args(|argument| match argument.get_id().as_str() {
        id @ ("help" | "version") => {
            let help = of_argument(&[], id, language);
            argument.help(help).long_help(Resettable::Reset)
        }
        // The text names them.
        _ => argument.hide_possible_values(true),
    });
    let usage = usage(&command.render_usage().to_string(), language);
    let command = command.override_usage(usage).mut_subcommands(|below| {
        if below.get_name() == "help" { below.about(say!(language, "help-help")) } else { shown(below, language) }
    });
    let template = template(&command, language);
    command.help_template(template)
}

/// The parser's usage without its heading and with its words in the language.
pub(super) fn usage(of_parser: &str, language: Language) -> String {
    of_parser
        .trim_start_matches("Usage: ")
        .replace("[OPTIONS]", &say!(language, "help-usage-options"))
        .replace("COMMAND", &say!(language, "help-usage-command"))
}

fn template(command: &Command, language: Language) -> String {
    let head = *command.get_styles().get_header();
    let heading = |text: String| format!("{head}{text}{head:#}");
    let mut text = format!("{{about-with-newline}}\n{} {{usage}}", heading(say!(language, "help-usage")));
    let mut part = |heading: String, tag: &str| text += &format!("\n\n{heading}\n{{{tag}}}");
    if command.get_positionals().next().is_some() {
        part(heading(say!(language, "help-arguments")), "positionals");
    }
    if command.has_subcommands() {
        part(heading(say!(language, "help-commands")), "subcommands");
    }
    part(heading(say!(language, "help-options")), "options");
    text + "{after-help}"
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;
    use crate::words::sources;

    /// Keys of room `help` (`key` or `key.attribute`) that commands and arguments have or may inherit.
    fn wanted(command: &Command, path: &mut Vec<String>, all: &mut BTreeSet<String>, lacking: &mut Vec<String>) {
        let own = if path.is_empty() { "help-baywitness".to_owned() } else { key(path) };
        let known = |key: &str| Phrase::new(key).known(Language::English).is_some();
        if !known(&own) {
            lacking.push(own.clone());
        }
        all.extend([own.clone(), format!("{own}.about-more"), format!("{own}.exit-codes")]);
        for argument in command.get_arguments() {
            let id = argument.get_id().as_str();
            let above = (1..=path.len()).rev().map(|n| key(&path[..n])).chain(["help-shared".to_owned()]);
            match above.map(|key| format!("{key}.{id}")).find(|key| known(key)) {
                Some(key) => drop(all.insert(key)),
                None => lacking.push(format!("{own}.{id}")),
            }
        }
        for below in command.get_subcommands() {
            path.push(below.get_name().to_owned());
            wanted(below, path, all, lacking);
            path.pop();
        }
    }

    /// Every command and argument has a text, and no text is of something that is no more.
    #[test]
    fn the_help_s_messages_are_those_of_the_commands() {
        let (mut all, mut lacking) = (BTreeSet::new(), Vec::new());
        wanted(&super::super::definition(), &mut Vec::new(), &mut all, &mut lacking);
        assert!(lacking.is_empty(), "no text: {lacking:?}");
        let others = ["help-shared.help", "help-shared.version", "help-shared.evidence"];
        // Options of the feature `sensor-pattern`.
        let others = [&others[..], &["help-shared.cameras", "help-camera-fit.pattern"]].concat();
        let (_, file) = sources(Language::English).find(|(room, _)| *room == "help").unwrap();
        let mut key = String::new();
        let mut surplus = Vec::new();
        for line in file.lines() {
            let Some((name, _)) = line.split_once('=') else { continue };
            let attribute = name.trim_start().strip_prefix('.');
            if attribute.is_none() {
                name.trim().clone_into(&mut key);
            }
            let whole = attribute.map_or(key.clone(), |a| format!("{key}.{}", a.trim()));
            // Headings and errors are said by their own names, which `tests/suite/words` looks for.
            let of_a_command = attribute.is_some() || super::super::definition().find_subcommand(&key[5..]).is_some();
            let by_name = key.starts_with("help-phase-") || key == "help-start";
            if of_a_command && !by_name && !all.contains(&whole) && !others.contains(&whole.as_str()) {
                surplus.push(whole);
            }
        }
        assert!(surplus.is_empty(), "of no command: {surplus:?}");
        assert!(all.len() > 150, "{} texts", all.len());
    }

    /// The words that an argument takes stand in its text, in every language.
    #[test]
    fn the_texts_name_the_words_that_are_taken() {
        let mut tried = 0;
        for language in Language::ALL {
            let mut open = vec![filled(super::super::definition(), language)];
            while let Some(command) = open.pop() {
                let own = command.get_subcommands().filter(|c| c.get_name() != "help");
                open.extend(own.cloned());
                for argument in command.get_arguments().filter(|a| a.get_action().takes_values()) {
                    let help = argument.get_help().map(ToString::to_string).unwrap_or_default();
                    for value in argument.get_possible_values() {
                        tried += 1;
                        assert!(help.contains(value.get_name()), "{}: {help}", value.get_name());
                    }
                }
            }
        }
        assert!(tried > 40, "{tried} words");
    }

    /// Nothing of the parser's own English is left in another language's help.
    #[test]
    fn the_help_is_in_the_language() {
        for (language, words) in
            [(Language::German, "Aufruf:"), (Language::Spanish, "Uso:"), (Language::French, "Utilisation")]
        {
            let mut whole = filled(super::super::definition(), language);
            let mut pages = whole.render_long_help().to_string();
            assert!(pages.contains(words), "{pages}");
            for name in ["verify", "camera", "plan"] {
                pages += &whole.find_subcommand_mut(name).unwrap().render_long_help().to_string();
            }
            for english in ["Usage", "[OPTIONS]", "COMMAND]", "Arguments:", "Print", "default"] {
                let same_word = language == Language::French && english == "[OPTIONS]";
                assert!(same_word || !pages.contains(english), "{english}: {pages}");
            }
        }
    }
}
