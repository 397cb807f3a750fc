//! The commands by phases of the work: one table that the help and
//! `docs/commands.md` are made from.

use std::fmt::Write;

/// Commands that serve one phase of the work.
#[derive(Debug, Clone, Copy)]
pub struct Phase {
    /// Its name.
    pub name: &'static str,
    /// When it is, or who does it.
    pub when: &'static str,
    /// Its commands, in the order in which they are mostly needed.
    pub commands: &'static [&'static str],
}

/// Every command stands in exactly one phase.
pub const PHASES: [Phase; 6] = [
    Phase {
        name: "Prepare",
        when: "kit, camera, set-up sheet and bay, once and when something has changed",
        commands: &["sheet", "camera", "survey", "seating", "gauge", "recheck", "setup", "plan", "bay"],
    },
    Phase { name: "Measure", when: "each job", commands: &["new", "verify", "watch", "serve", "explain"] },
    Phase {
        name: "Prove",
        when: "evidence to hand on and to check",
        commands: &["seal", "certificate", "stamp", "check", "redact"],
    },
    Phase { name: "Oversee", when: "many jobs", commands: &["audit", "log", "trends", "due"] },
    Phase { name: "Train", when: "invented bays", commands: &["gallery", "drill", "stage"] },
    Phase {
        name: "Tools",
        when: "for other programs and the shell",
        commands: &["detect", "schema", "completions", "man"],
    },
];

/// The three to begin with, as they are typed.
const START: [(&str, &str); 3] = [
    ("sheet bay-a4 --out kit.pdf", "a marker kit to print, cut and glue"),
    ("new JOB --setup NAME", "a job folder; photos go into JOB/photos"),
    ("verify JOB --report DIR", "the verdict, and a report to hand on"),
];

/// The command with help that lists its subcommands by phase.
pub(super) fn grouped(command: clap::Command) -> clap::Command {
    let styles = command.get_styles();
    let (head, name) = (*styles.get_header(), *styles.get_literal());
    let mut text = format!("{{about-with-newline}}\n{{usage-heading}} {{usage}}\n\n{head}Start with:{head:#}\n");
    for (line, what) in START {
        let _ = writeln!(text, "  {name}{line:26}{name:#}  {what}");
    }
    for phase in PHASES {
        let _ = writeln!(text, "\n{head}{}:{head:#} {}", phase.name, phase.when);
        for sub in phase.commands.iter().filter_map(|c| command.find_subcommand(c)) {
            let about = sub.get_about().map(ToString::to_string).unwrap_or_default();
            let _ = writeln!(text, "  {name}{:11}{name:#}  {about}", sub.get_name());
        }
    }
    let _ = write!(
        text,
        "\n{head}Options:{head:#}\n{{options}}\n\nEach command has its own help: {name}baywitness COMMAND --help{name:#}\n"
    );
    command.help_template(text)
}

#[cfg(test)]
mod tests {
    use super::PHASES;

    #[test]
    fn every_command_stands_in_exactly_one_phase() {
        let known = super::super::command();
        let mut known: Vec<&str> = known.get_subcommands().map(clap::Command::get_name).collect();
        let mut listed: Vec<&str> = PHASES.iter().flat_map(|p| p.commands).copied().collect();
        known.sort_unstable();
        listed.sort_unstable();
        assert_eq!(listed, known);
    }
}
