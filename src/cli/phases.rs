//! The commands by phases of the work: one table that the help and
//! `docs/commands.md` are made from.

use std::fmt::Write;

use crate::words::{Language, Phrase, say};

/// Commands that serve one phase of the work.
#[derive(Debug, Clone, Copy)]
pub struct Phase {
    key: &'static str,
    /// Its commands, in the order in which they are mostly needed.
    pub commands: &'static [&'static str],
}

impl Phase {
    /// Its name.
    pub fn name(&self, language: Language) -> String {
        Phrase::new(self.key).say(language)
    }

    /// When it is, or who does it.
    pub fn when(&self, language: Language) -> String {
        Phrase::new(format!("{}.when", self.key)).say(language)
    }
}

/// Every command stands in exactly one phase.
pub const PHASES: [Phase; 6] = [
    Phase {
        key: "help-phase-prepare",
        commands: &["sheet", "camera", "survey", "seating", "gauge", "recheck", "setup", "plan", "bay"],
    },
    Phase { key: "help-phase-measure", commands: &["new", "verify", "watch", "serve", "explain"] },
    Phase { key: "help-phase-prove", commands: &["seal", "stamp", "check", "redact"] },
    Phase { key: "help-phase-oversee", commands: &["audit", "log", "trends", "due"] },
    Phase { key: "help-phase-train", commands: &["gallery", "drill", "stage"] },
    Phase { key: "help-phase-tools", commands: &["detect", "schema", "completions", "man"] },
];

/// The three to begin with, as they are typed.
const START: [(&str, &str); 3] = [
    ("sheet bay-a4 --out kit.pdf", "help-start.sheet"),
    ("new JOB --setup NAME", "help-start.new"),
    ("verify JOB --report DIR", "help-start.verify"),
];

/// The command with help that lists its subcommands by phase.
pub(super) fn grouped(command: clap::Command, language: Language) -> clap::Command {
    let styles = command.get_styles();
    let (head, name) = (*styles.get_header(), *styles.get_literal());
    let usage = say!(language, "help-usage");
    let mut text = format!("{{about-with-newline}}\n{head}{usage}{head:#} {{usage}}\n");
    let start = say!(language, "help-start");
    let _ = writeln!(text, "\n{head}{start}{head:#}");
    for (line, what) in START {
        let what = Phrase::new(what).say(language);
        let _ = writeln!(text, "  {name}{line:26}{name:#}  {what}");
    }
    for phase in PHASES {
        let _ = writeln!(text, "\n{head}{}:{head:#} {}", phase.name(language), phase.when(language));
        for sub in phase.commands.iter().filter_map(|c| command.find_subcommand(c)) {
            let about = sub.get_about().map(ToString::to_string).unwrap_or_default();
            let _ = writeln!(text, "  {name}{:11}{name:#}  {about}", sub.get_name());
        }
    }
    let word = say!(language, "help-usage-command");
    let each = say!(language, "help-each", command = format!("baywitness {word} --help"));
    let options = say!(language, "help-options");
    let _ = write!(text, "\n{head}{options}{head:#}\n{{options}}\n\n{each}\n");
    command.help_template(text)
}

#[cfg(test)]
mod tests {
    use super::PHASES;

    #[test]
    fn every_command_stands_in_exactly_one_phase() {
        let known = super::super::definition();
        let mut known: Vec<&str> = known.get_subcommands().map(clap::Command::get_name).collect();
        let mut listed: Vec<&str> = PHASES.iter().flat_map(|p| p.commands).copied().collect();
        known.sort_unstable();
        listed.sort_unstable();
        assert_eq!(listed, known);
    }
}
