//! The message files: every language whole, nothing used that is not there,
//! nothing there that is not used, no variable missing.
//!
//! The grammar is Project Fluent's; its own parser reads the files here.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use baywitness::words::{Language, sources};
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser;

/// Variables of each message and attribute (`key`, `key.attribute`).
pub(crate) type Messages = BTreeMap<String, BTreeSet<String>>;

pub(crate) fn messages(language: Language) -> Messages {
    let mut all = Messages::new();
    for (file, text) in sources(language) {
        let resource = parser::parse(text)
            .unwrap_or_else(|(_, errors)| panic!("{}/{file}.ftl is no Fluent: {errors:?}", language.tag()));
        for entry in &resource.body {
            let Entry::Message(message) = entry else { continue };
            let own = message.value.iter().map(|v| (message.id.name.to_owned(), v));
            let attributes =
                message.attributes.iter().map(|a| (format!("{}.{}", message.id.name, a.id.name), &a.value));
            for (key, pattern) in own.chain(attributes) {
                let mut variables = BTreeSet::new();
                of_pattern(pattern, &mut variables);
                let twice = all.insert(key.clone(), variables).is_some();
                assert!(!twice, "{}/{file}.ftl: {key} is there twice", language.tag());
            }
        }
    }
    all
}

fn of_pattern(pattern: &Pattern<&str>, variables: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            of_expression(expression, variables);
        }
    }
}

fn of_expression(expression: &Expression<&str>, variables: &mut BTreeSet<String>) {
    match expression {
        Expression::Select { selector, variants } => {
            of_inline(selector, variables);
            variants.iter().for_each(|v| of_pattern(&v.value, variables));
        }
        Expression::Inline(inline) => of_inline(inline, variables),
    }
}

fn of_inline(inline: &InlineExpression<&str>, variables: &mut BTreeSet<String>) {
    match inline {
        InlineExpression::VariableReference { id } => {
            variables.insert(id.name.to_owned());
        }
        InlineExpression::Placeable { expression } => of_expression(expression, variables),
        _ => {}
    }
}

#[test]
fn every_language_says_all_that_english_says() {
    let english = messages(Language::English);
    for language in Language::ALL {
        let own = messages(language);
        let (own_keys, keys): (BTreeSet<_>, BTreeSet<_>) = (own.keys().collect(), english.keys().collect());
        let lacking: Vec<_> = keys.difference(&own_keys).collect();
        let surplus: Vec<_> = own_keys.difference(&keys).collect();
        assert!(lacking.is_empty() && surplus.is_empty(), "{}: lacks {lacking:?}; has {surplus:?}", language.tag());
        for (key, variables) in &own {
            assert_eq!(variables, &english[key], "{}: {key} has other variables than English", language.tag());
        }
    }
}

/// Where a source file says a phrase: its key and the names of its values.
struct Said {
    place: String,
    key: String,
    values: BTreeSet<String>,
}

fn sources_below(folder: &Path, files: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            sources_below(&path, files);
        } else if path.extension().is_some_and(|e| e == "rs") {
            files.push(path);
        }
    }
}

/// Every `say!(` and `phrase!(` of the program, besides those of the words' own crate.
fn said() -> Vec<Said> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut files = Vec::new();
    sources_below(&root, &mut files);
    files.retain(|path| !path.starts_with(root.join("words")));
    let mut all = Vec::new();
    for path in files.into_iter().filter(|path| !path.starts_with(root.join("words"))) {
        let text = fs::read_to_string(&path).unwrap();
        for (name, skipped) in [("phrase!(", 0), ("say!(", 1)] {
            for (at, _) in text.match_indices(name) {
                let line = text[text[..at].rfind('\n').map_or(0, |n| n + 1)..at].trim_start();
                let own_word = at == 0 || !text[..at].ends_with(|c: char| c.is_alphanumeric() || c == '_');
                if line.starts_with("//") || !own_word {
                    continue;
                }
                let arguments = arguments(&text[at + name.len()..]);
                let place = format!("{}:{}", path.display(), text[..at].lines().count());
                let Some(key) = arguments.get(skipped).and_then(|a| a.strip_prefix('"')?.strip_suffix('"')) else {
                    continue; // the macros' own definitions
                };
                let name_of = |a: &String| a.split_once('=').map(|(name, _)| name.trim().to_owned());
                let values = arguments[skipped + 1..].iter().filter_map(name_of).collect();
                all.push(Said { place, key: key.to_owned(), values });
            }
        }
    }
    all
}

/// The arguments of a call up to its closing bracket, split at its own commas.
fn arguments(text: &str) -> Vec<String> {
    let (mut all, mut current, mut depth, mut chars) = (Vec::new(), String::new(), 0, text.chars().peekable());
    while let Some(c) = chars.next() {
        match c {
            '"' => {
                current.push(c);
                while let Some(c) = chars.next() {
                    current.push(c);
                    match c {
                        '\\' => current.extend(chars.next()),
                        '"' => break,
                        _ => {}
                    }
                }
                continue;
            }
            // A character, or else a lifetime's tick.
            '\'' => {
                let mut ahead = chars.clone();
                let escaped = ahead.next() == Some('\\');
                let length = if escaped { 3 } else { 2 };
                current.push(c);
                if chars.clone().nth(length - 1) == Some('\'') {
                    current.extend(chars.by_ref().take(length));
                }
                continue;
            }
            '(' | '[' | '{' => depth += 1,
            ')' | ']' | '}' if depth > 0 => depth -= 1,
            ')' | ']' | '}' => break,
            ',' if depth == 0 => {
                all.push(std::mem::take(&mut current).trim().to_owned());
                continue;
            }
            _ => {}
        }
        current.push(c);
    }
    if !current.trim().is_empty() {
        all.push(current.trim().to_owned());
    }
    all
}

#[test]
fn what_the_program_says_is_in_the_message_files() {
    let english = messages(Language::English);
    let mut wrong = Vec::new();
    for said in said() {
        match english.get(&said.key) {
            None => wrong.push(format!("{}: no message is called {}", said.place, said.key)),
            Some(variables) if *variables != said.values => {
                wrong.push(format!("{}: {} wants {variables:?}, gets {:?}", said.place, said.key, said.values));
            }
            Some(_) => {}
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Keys that are put together from codes: `explain`'s texts of a finding.
fn is_of_a_code(key: &str) -> bool {
    key.starts_with("finding-") && key.contains('.')
}

/// Keys of the commands' help, which are made from the names of commands and arguments (`cli::help` finds one too many).
fn is_of_a_command(key: &str) -> bool {
    fn below(command: &clap::Command, path: &str, key: &str) -> bool {
        path == key || command.get_subcommands().any(|c| below(c, &format!("{path}-{}", c.get_name()), key))
    }
    let others = ["help-baywitness", "help-job-codes", "help-fit-codes"];
    key.starts_with("help-")
        && (key.contains('.')
            || key.starts_with("help-phase-")
            || others.contains(&key)
            || below(&baywitness::cli::command(), "help", key))
}

#[test]
fn every_message_is_said_somewhere() {
    let said: BTreeSet<String> = said().into_iter().map(|s| s.key).collect();
    let own = ["list-and"];
    let unused: Vec<String> = messages(Language::English)
        .into_keys()
        .filter(|key| {
            !said.contains(key) && !is_of_a_code(key) && !is_of_a_command(key) && !own.contains(&key.as_str())
        })
        .collect();
    assert!(unused.is_empty(), "nobody says {unused:?}");
}

/// French puts a space that does not break in front of `; : ! ? %` and within
/// « », and writes its apostrophe bent (Lexique des règles typographiques en usage
/// à l'Imprimerie nationale, from memory).
#[test]
fn french_signs_stay_with_their_words() {
    for (file, text) in sources(Language::French) {
        for (at, line) in text.lines().enumerate().filter(|(_, line)| !line.starts_with('#')) {
            let chars: Vec<char> = line.chars().collect();
            let wrong = chars.windows(3).any(|w| {
                let [before, sign, after] = [w[0], w[1], w[2]];
                let loose = before == ' ' && ";:!?%".contains(sign) && (after.is_whitespace() || after == ')');
                let open = sign == ' ' && (before == '«' || after == '»');
                let straight = before.is_alphabetic() && sign == '\'' && (after.is_alphabetic() || after == '{');
                loose || open || straight
            });
            let ends = [" ;", " :", " !", " ?", " %"].iter().any(|end| line.ends_with(end));
            assert!(!wrong && !ends, "fr/{file}.ftl, line {}: {line}", at + 1);
        }
    }
}
