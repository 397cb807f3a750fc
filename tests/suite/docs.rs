//! What README and docs say can be done: every link leads somewhere, every
//! command is one that the program knows, the schemas are those of the types, the
//! page of commands is the program's help and every key that a reader knows is in
//! the page of formats.

#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "test support: a panic is the message")]

use std::fs;
use std::path::{Path, PathBuf};

use baywitness::words::Language;
use baywitness::{cli, record};

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

fn markdown_below(folder: &Path, found: &mut Vec<PathBuf>) {
    for path in fs::read_dir(folder).unwrap().map(|e| e.unwrap().path()) {
        if path.is_dir() {
            markdown_below(&path, found);
        } else if path.extension().is_some_and(|e| e == "md") {
            found.push(path);
        }
    }
}

/// README, DEVELOPERS, CHANGELOG and everything in docs and samples, with its text.
fn pages() -> Vec<(PathBuf, String)> {
    let mut found: Vec<PathBuf> = ["README.md", "DEVELOPERS.md", "CHANGELOG.md"].map(|n| root().join(n)).into();
    for folder in ["docs", "samples", "models"] {
        markdown_below(&root().join(folder), &mut found);
    }
    found.into_iter().map(|path| (path.clone(), fs::read_to_string(path).unwrap())).collect()
}

/// The id that a heading has where Markdown is shown.
fn anchor(heading: &str) -> String {
    let plain = heading.trim_start_matches('#').trim().to_lowercase();
    plain
        .chars()
        .filter(|c| c.is_alphanumeric() || "-_ ".contains(*c))
        .map(|c| if c == ' ' { '-' } else { c })
        .collect()
}

fn has_anchor(text: &str, wanted: &str) -> bool {
    text.lines().filter(|l| l.starts_with('#')).any(|l| anchor(l) == wanted)
}

#[test]
fn every_link_leads_somewhere() {
    let (mut wrong, mut tried) = (Vec::new(), 0);
    for (page, text) in pages() {
        for rest in text.split("](").skip(1) {
            let target = rest.split(')').next().unwrap();
            if target.contains("://") {
                continue;
            }
            tried += 1;
            let (file, part) = target.split_once('#').unwrap_or((target, ""));
            let path = if file.is_empty() { page.clone() } else { page.parent().unwrap().join(file) };
            let there = path.exists()
                && (part.is_empty() || fs::read_to_string(&path).is_ok_and(|text| has_anchor(&text, part)));
            if !there {
                wrong.push(format!("{}: {target}", page.display()));
            }
        }
    }
    assert!(tried > 20, "{tried} links");
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// Command lines of `console` blocks, and commands in running text with what follows the program's name.
fn commands(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    let mut inside = false;
    for line in text.lines() {
        if let Some(kind) = line.trim_start().strip_prefix("```") {
            inside = !inside && kind.starts_with("console");
        } else if let Some(command) = line.trim_start().strip_prefix("$ ").filter(|_| inside) {
            found.push(command.split("    #").next().unwrap().trim().to_owned());
        }
    }
    // In running text a command may go over the end of a line.
    let flowing = text.split_whitespace().collect::<Vec<_>>().join(" ");
    let quoted = flowing.split('`').skip(1).step_by(2).filter(|q| q.starts_with("baywitness "));
    found.extend(quoted.map(str::to_owned));
    found
}

/// What is written for a value, as one that its option takes.
fn filled_in(argument: &str) -> String {
    match argument.trim_end_matches("...").trim_end_matches('…') {
        "N" => "2".to_owned(),
        "SHELL" => "bash".to_owned(),
        "ADDR:PORT" => "127.0.0.1:1".to_owned(),
        "X,Y,Z" => "1,2,3".to_owned(),
        plain => plain.to_owned(),
    }
}

/// The program's arguments where a command is one of this program.
fn arguments(command: &str) -> Option<Vec<String>> {
    let own = command
        .strip_prefix("baywitness ")
        .or_else(|| command.strip_prefix("cargo run -- "))
        .or_else(|| command.strip_prefix("sudo baywitness "))?;
    Some(own.split_whitespace().map(filled_in).collect())
}

#[test]
fn every_command_is_one_that_the_program_knows() {
    let (mut wrong, mut tried) = (Vec::new(), 0);
    for (page, text) in pages() {
        // Its options are there in a build that was asked for them.
        if page.ends_with("sensor-pattern.md") && !cfg!(feature = "sensor-pattern") {
            continue;
        }
        for command in commands(&text) {
            let Some(arguments) = arguments(&command) else { continue };
            tried += 1;
            let typed = std::iter::once("baywitness".to_owned()).chain(arguments);
            if let Err(e) = cli::command().try_get_matches_from(typed) {
                // Help and version end the parser as well.
                if e.use_stderr() {
                    wrong.push(format!("{}: {command}: {e}", page.display()));
                }
            }
        }
    }
    assert!(tried > 25, "{tried} commands");
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// A command with a wrong option is found: the check can fail.
#[test]
fn a_wrong_command_would_be_found() {
    let found =
        commands("```console\n$ baywitness sheet bay-a4 --nothing x    # a note\n```\nand `baywitness\ncheck DIR`.");
    assert_eq!(found, ["baywitness sheet bay-a4 --nothing x", "baywitness check DIR"]);
    let parse = |c: &str| {
        let typed = std::iter::once("baywitness".to_owned()).chain(arguments(c).unwrap());
        cli::command().try_get_matches_from(typed).is_ok()
    };
    assert!(!parse(&found[0]) && parse(&found[1]));
}

/// What the README begins with, and every command that writes a file in a moment, in a folder of its own.
#[test]
fn commands_that_take_a_moment_do_what_is_said() {
    let room = tempfile::tempdir().unwrap();
    let quick = ["sheet ", "explain ", "schema ", "completions ", "man ", "setup check "];
    let mut done = 0;
    for (page, text) in pages() {
        for command in commands(&text) {
            let Some(arguments) = arguments(&command) else { continue };
            let line = arguments.join(" ");
            // A word in capitals stands for something.
            let stands_for = |a: &String| a.len() > 1 && a.chars().all(|c| c.is_ascii_uppercase() || c == '-');
            if !quick.iter().any(|q| line.starts_with(q)) || arguments.iter().any(stands_for) {
                continue;
            }
            let out = crate::program::program()
                .args(&arguments)
                .current_dir(&room)
                .env_remove("BAYWITNESS_MODELS")
                .output()
                .unwrap();
            let said = String::from_utf8_lossy(&out.stderr);
            assert!(out.status.success(), "{}: {command}: {said}", page.display());
            if let Some(at) = arguments.iter().position(|a| a == "--out") {
                assert!(room.path().join(&arguments[at + 1]).exists(), "{command} wrote nothing");
            }
            done += 1;
        }
    }
    assert!(done >= 5, "{done} commands");
}

/// A file of docs is what was made; `BAYWITNESS_WRITE_SCHEMAS=1` writes it anew.
fn kept_is(path: &Path, made: &str) {
    if std::env::var_os("BAYWITNESS_WRITE_SCHEMAS").is_some() {
        fs::write(path, made).unwrap();
    }
    let kept = fs::read_to_string(path).unwrap_or_default();
    assert!(kept == made, "{} is not what is made now: BAYWITNESS_WRITE_SCHEMAS=1 writes it anew", path.display());
}

#[test]
fn the_schemas_beside_the_page_are_those_of_the_types() {
    let folder = root().join("docs/formats");
    for format in record::schemas() {
        let path = folder.join(format!("{}.schema.json", format.replace('/', "-")));
        let made = record::schema(format).unwrap();
        kept_is(&path, &made);
    }
    assert_eq!(record::schema("nothing/1"), None);
}

/// Text in lines as docs have them.
fn filled(text: &str, indent: &str) -> String {
    let options = textwrap::Options::new(118)
        .subsequent_indent(indent)
        .break_words(false)
        .word_splitter(textwrap::WordSplitter::NoHyphenation)
        .word_separator(textwrap::WordSeparator::AsciiSpace);
    text.split("\n\n").map(|part| textwrap::fill(part, &options) + "\n").collect::<Vec<_>>().join("\n")
}

/// What one argument is; its text says the words that it takes and its default.
fn argument_line(argument: &clap::Arg) -> String {
    let text = format!("- `{argument}`: {}", argument.get_help().map(ToString::to_string).unwrap_or_default());
    filled(&text, "  ")
}

/// A command with what it takes, then its own commands.
fn command_section(command: &clap::Command, name: &str, heading: &str) -> String {
    let about = command.get_long_about().or(command.get_about()).unwrap().to_string();
    let about = match about.split_once("\n\n") {
        Some((first, more)) => format!("{first}.\n\n{more}"),
        None => format!("{about}."),
    };
    let mut text = format!("\n{heading} {name}\n{}", filled(&about, ""));
    let own: Vec<&clap::Command> = command.get_subcommands().filter(|c| c.get_name() != "help").collect();
    if own.is_empty() {
        let usage = command.clone().render_usage().to_string();
        text += &format!("```text\n{}\n```\n", usage.trim_start_matches("Usage: "));
        let general = ["help", "version", "quiet"];
        let arguments = command.get_arguments().filter(|a| !general.contains(&a.get_id().as_str()));
        text.extend(arguments.map(argument_line));
    }
    if let Some(codes) = command.get_after_help() {
        text += &format!("\n{}", filled(&format!("{codes}."), ""));
    }
    let below = own.iter().map(|c| command_section(c, &format!("{name} {}", c.get_name()), "####"));
    text.extend(below);
    text
}

const COMMANDS_HEAD: &str = "# Commands

This page is the program's own help (`baywitness --help`, `baywitness verify --help`, ...); a test keeps them equal.

Every command ends with exit code 0 where it did what was asked and with 2 where something was typed wrong or cannot be
read; what else it may end with stands at the command ([all of them](formats/README.md#exit-codes)). `--quiet` holds back
words for people: the exit code, errors and the files that were asked for stay. `NO_COLOR` is heeded.

A job is a folder with `job.toml`, `photos/` and the files that it names ([formats](formats/README.md)). `baywitness`
alone, where jobs lie, says what could be done next with each.
";

/// `docs/commands.md`, from the options that the program obeys.
fn page_of_commands() -> String {
    let program = cli::command();
    let mut text = COMMANDS_HEAD.to_owned();
    for phase in cli::PHASES {
        let when = phase.when(Language::English);
        let (first, rest) = when.split_at(1);
        text += &format!("\n## {}\n{}{rest}.\n", phase.name(Language::English), first.to_uppercase());
        for name in phase.commands {
            text += &command_section(program.find_subcommand(name).unwrap(), name, "###");
        }
    }
    text
}

#[test]
fn the_page_of_commands_is_the_help() {
    let page = page_of_commands();
    for command in cli::command().get_subcommands().filter(|c| c.get_name() != "help") {
        assert!(has_anchor(&page, command.get_name()), "{} is not in the page", command.get_name());
    }
    kept_is(&root().join("docs/commands.md"), &page);
}

/// What there is to print for the kit that the README names, and how long it is.
#[test]
fn the_readme_counts_right_and_stays_short() {
    let readme = fs::read_to_string(root().join("README.md")).unwrap();
    let kit = fs::read_to_string(root().join("models/kits/bay-a4.toml")).unwrap();
    let sheets = kit.lines().filter(|l| l.starts_with("id = ")).count();
    assert!(readme.contains(&format!("{sheets} sheets of A4")), "{sheets} sheets");
    assert!(readme.lines().count() <= 80, "{} lines", readme.lines().count());
    assert_eq!(readme.matches("![").count(), 2);
}

/// What the README shows of the first command's words is what that prints (`...`: left out).
#[test]
fn the_readme_shows_what_is_printed() {
    let readme = fs::read_to_string(root().join("README.md")).unwrap();
    let shown = readme.split("```text\n").nth(1).unwrap().split("```").next().unwrap();
    let first = commands(&readme).into_iter().next().unwrap();
    let out = crate::program::program()
        .args(&arguments(&first).unwrap()[..2])
        .current_dir(root())
        .env_remove("BAYWITNESS_MODELS")
        .output()
        .unwrap();
    let said = String::from_utf8(out.stdout).unwrap();
    for part in shown.split("...\n") {
        assert!(!part.is_empty() && said.contains(part), "not printed:\n{part}\nbut:\n{said}");
    }
}

/// The readers say which keys they take: `allow(&[...])` in their sources.
#[test]
fn every_key_that_a_reader_takes_is_in_the_page_of_formats() {
    let page = fs::read_to_string(root().join("docs/formats/README.md")).unwrap();
    let (mut missing, mut tried) = (Vec::new(), 0);
    for file in [
        "folder/file.rs",
        "setup/file.rs",
        "setup/check_file.rs",
        "camera/file.rs",
        "marker/board_file.rs",
        "marker/kit_file.rs",
    ] {
        let source = fs::read_to_string(root().join("src/foundation").join(file)).unwrap();
        for list in source.split("allow(&[").skip(1) {
            for key in list.split(']').next().unwrap().split('"').skip(1).step_by(2) {
                tried += 1;
                if !page.contains(&format!("`{key}`"))
                    && !page.contains(&format!("{key}]"))
                    && !page.contains(&format!("`{key} ="))
                {
                    missing.push(format!("{file}: {key}"));
                }
            }
        }
    }
    assert!(tried > 80, "{tried} keys");
    assert!(missing.is_empty(), "{missing:#?}");
}

/// Squareness and centring as `plan` says them, for a kit whose wheel plates seat so.
fn planned(kit: &str, seats: Option<(f64, f64)>, photos: &str) -> [String; 2] {
    let text = fs::read_to_string(root().join(format!("models/kits/{kit}.toml"))).unwrap();
    let text: String = text
        .lines()
        .flat_map(|line| {
            let wheel = line.starts_with("role = ") && line.ends_with("wheel\"");
            let seat = seats.filter(|_| wheel);
            let seat = seat.map(|(mm, deg)| format!("u_seating_mm = {mm}\nu_seating_deg = [{deg}, {deg}, {deg}]\n"));
            [Some(format!("{line}\n")), seat].into_iter().flatten()
        })
        .collect();
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("kit.toml");
    fs::write(&file, text).unwrap();
    let out = crate::program::program()
        .args(["plan", "--setup", "radar-plate", "--photos", photos, "--kit"])
        .arg(&file)
        .env_remove("BAYWITNESS_MODELS")
        .output()
        .unwrap();
    let said = String::from_utf8(out.stdout).unwrap();
    ["squareness", "centring"].map(|name| {
        let line = said.lines().find(|l| l.trim_start().starts_with(name)).unwrap();
        line.split('±').nth(1).unwrap().split(" against").next().unwrap().to_owned()
    })
}

/// The table of kits and clamps is what `plan` says, and so is what is said of four photos.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn kits_and_clamps_bring_what_the_page_says() {
    let page = fs::read_to_string(root().join("docs/technician.md")).unwrap();
    let better = Some((0.2, 0.05));
    for kit in ["bay-a4", "bay-a3", "demo-bay"] {
        let ([yaw, aside], [better_yaw, better_aside]) = (planned(kit, None, "2"), planned(kit, better, "2"));
        let row = format!("| `{kit}` | {yaw} | {aside} | {better_yaw} | {better_aside} |");
        assert!(page.contains(&row), "not in docs/technician.md: {row}");
    }
    let [yaw, aside] = planned("demo-bay", better, "4");
    assert!(page.contains(&format!("four photos: {yaw}, {aside})")), "{yaw}, {aside}");
}

/// `cargo test --test suite FILTER` in a page selects a test: a file or folder of the suite, and a function in it.
#[test]
fn every_test_that_a_page_names_is_there() {
    let mut sources = Vec::new();
    let mut folders = vec![root().join("tests/suite")];
    while let Some(folder) = folders.pop() {
        for path in fs::read_dir(folder).unwrap().map(|e| e.unwrap().path()) {
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|e| e == "rs") {
                sources.push(path);
            }
        }
    }
    let tests: Vec<String> = sources
        .iter()
        .flat_map(|path| {
            let place = path.strip_prefix(root().join("tests/suite")).unwrap().with_extension("");
            let parts = place.iter().map(|p| p.to_str().unwrap()).filter(|p| *p != "mod");
            let module = parts.collect::<Vec<_>>().join("::");
            let text = fs::read_to_string(path).unwrap();
            let names: Vec<String> = text
                .split("fn ")
                .skip(1)
                .map(|rest| rest.chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect())
                .collect();
            names.into_iter().map(move |name| format!("{module}::{name}")).collect::<Vec<_>>()
        })
        .collect();
    let (mut tried, mut nothing) = (0, Vec::new());
    for (page, text) in pages() {
        for rest in text.split("--test suite ").skip(1) {
            let filter: String = rest.chars().take_while(|c| c.is_alphanumeric() || "_:".contains(*c)).collect();
            // NAME stands for any.
            if filter.chars().any(char::is_lowercase) {
                tried += 1;
                if !tests.iter().any(|t| t.contains(&filter)) {
                    nothing.push(format!("{}: {filter}", page.display()));
                }
            }
        }
    }
    assert!(tried > 20 && nothing.is_empty(), "{tried} tried, none selected by {nothing:#?}");
}
