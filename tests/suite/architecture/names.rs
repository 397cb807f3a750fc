//! What the files of a crate define, what they call by another name, and what they mention.

use std::collections::{BTreeMap, BTreeSet};

use super::tokens::{Token, tokens};

/// Where a name leads: `use` and its path, by the name that it has here.
pub(crate) struct Alias {
    path: Vec<String>,
    /// Handed on (`pub use`): a line of a table of contents, no use of what it names.
    handed_on: bool,
}

/// One file as a module.
#[derive(Default)]
pub(crate) struct Module {
    children: BTreeSet<String>,
    items: BTreeSet<String>,
    aliases: BTreeMap<String, Alias>,
    globs: Vec<Vec<String>>,
    mentions: BTreeSet<Vec<String>>,
}

impl Module {
    /// Whether the file defines an item of this name.
    pub(crate) fn defines(&self, item: &str) -> bool {
        self.items.contains(item)
    }
}

/// The files of one crate by their module's path; the crate's root is the empty path.
pub(crate) type Crate = BTreeMap<Vec<String>, Module>;

/// Reads one file.
pub(crate) fn module(text: &str) -> Module {
    let tokens = tokens(text);
    let mut found = Module::default();
    let (mut at, mut depth, mut public) = (0, 0_i32, false);
    while at < tokens.len() {
        match tokens[at] {
            Token::Mark('#') if is_test_only(&tokens[at..]) => {
                at = past_item(&tokens, at);
                continue;
            }
            Token::Mark('{') => depth += 1,
            Token::Mark('}') => depth -= 1,
            Token::Word("pub") => {
                public = true;
                at = past_visibility(&tokens, at);
                continue;
            }
            Token::Word("use") => {
                let end = (at..tokens.len()).find(|i| tokens[*i] == Token::Mark(';')).unwrap_or(tokens.len());
                take_use(&tokens[at + 1..end], &mut Vec::new(), public, &mut found);
                (at, public) = (end, false);
            }
            Token::Word("mod") => {
                if let (Some(Token::Word(name)), Some(Token::Mark(';'))) = (tokens.get(at + 1), tokens.get(at + 2)) {
                    found.children.insert((*name).to_owned());
                }
                at += 1;
                public = false;
            }
            Token::Word(word) => {
                if depth == 0 && defines(word) {
                    found.items.extend(defined(&tokens[at + 1..]));
                }
                let (path, end) = path_at(&tokens, at);
                let is_own = at > 0 && matches!(tokens[at - 1], Token::Path | Token::Mark('.'));
                if !is_own {
                    found.mentions.insert(path);
                }
                (at, public) = (end, public && !defines(word));
                continue;
            }
            _ => {}
        }
        at += 1;
    }
    found
}

fn defines(word: &str) -> bool {
    matches!(word, "fn" | "struct" | "enum" | "trait" | "type" | "const" | "static" | "macro_rules" | "union")
}

/// The name behind `fn`, `struct` and so on; none for `const fn`, whose name `fn` brings.
fn defined(after: &[Token]) -> Option<String> {
    after
        .iter()
        .find_map(|t| match t {
            Token::Word(name) => Some(*name),
            _ => None,
        })
        .filter(|name| !matches!(*name, "fn" | "unsafe" | "async" | "extern"))
        .map(ToOwned::to_owned)
}

fn is_test_only(tokens: &[Token]) -> bool {
    let words: [Token; 6] = [
        Token::Mark('#'),
        Token::Mark('['),
        Token::Word("cfg"),
        Token::Mark('('),
        Token::Word("test"),
        Token::Mark(')'),
    ];
    tokens.starts_with(&words)
}

/// Past the item that an attribute stands before: to its `;` or past its braces.
fn past_item(tokens: &[Token], from: usize) -> usize {
    let is_use = tokens[from..].iter().take(12).any(|t| *t == Token::Word("use"));
    let mut depth = 0;
    for (at, token) in tokens.iter().enumerate().skip(from) {
        match token {
            Token::Mark('{') => depth += 1,
            Token::Mark('}') => {
                depth -= 1;
                if depth == 0 && !is_use {
                    return at + 1;
                }
            }
            Token::Mark(';') if depth == 0 => return at + 1,
            _ => {}
        }
    }
    tokens.len()
}

fn past_visibility(tokens: &[Token], at: usize) -> usize {
    if tokens.get(at + 1) != Some(&Token::Mark('(')) {
        return at + 1;
    }
    // `pub (A, B)` is a field of a tuple, `pub(crate)` a visibility.
    let inside = matches!(tokens.get(at + 2), Some(Token::Word("crate" | "super" | "in" | "self")));
    let end = (at..tokens.len()).find(|i| tokens[*i] == Token::Mark(')'));
    if inside { end.map_or(tokens.len(), |end| end + 1) } else { at + 1 }
}

/// The path that begins at a word, and where it ends.
fn path_at(tokens: &[Token], from: usize) -> (Vec<String>, usize) {
    let (mut path, mut at) = (Vec::new(), from);
    while let Some(Token::Word(word)) = tokens.get(at) {
        path.push((*word).to_owned());
        at += 1;
        if !(tokens.get(at) == Some(&Token::Path) && matches!(tokens.get(at + 1), Some(Token::Word(_)))) {
            break;
        }
        at += 1;
    }
    (path, at)
}

/// One tree of a `use`.
fn take_use(tokens: &[Token], before: &mut Vec<String>, handed_on: bool, into: &mut Module) {
    let depth = before.len();
    let mut at = 0;
    let mut alias = None;
    while let Some(token) = tokens.get(at) {
        match token {
            Token::Word("as") => {
                if let Some(Token::Word(name)) = tokens.get(at + 1) {
                    alias = Some((*name).to_owned());
                }
                at += 1;
            }
            Token::Word(word) => before.push((*word).to_owned()),
            Token::Mark('*') => {
                into.globs.push(before.clone());
                before.truncate(depth);
                return;
            }
            Token::Mark('{') => {
                for branch in branches(&tokens[at + 1..]) {
                    take_use(branch, before, handed_on, into);
                }
                before.truncate(depth);
                return;
            }
            _ => {}
        }
        at += 1;
    }
    if before.len() > depth || alias.is_some() {
        if before.last().is_some_and(|word| word == "self") && before.len() > 1 {
            before.pop();
        }
        let name = alias.or_else(|| before.last().cloned()).unwrap_or_default();
        into.aliases.insert(name, Alias { path: before.clone(), handed_on });
    }
    before.truncate(depth);
}

/// The branches of a group, up to its closing brace.
fn branches<'a, 'b>(tokens: &'b [Token<'a>]) -> Vec<&'b [Token<'a>]> {
    let (mut found, mut start, mut depth) = (Vec::new(), 0, 0);
    for (at, token) in tokens.iter().enumerate() {
        match token {
            Token::Mark('{') => depth += 1,
            Token::Mark('}') if depth == 0 => {
                found.push(&tokens[start..at]);
                break;
            }
            Token::Mark('}') => depth -= 1,
            Token::Mark(',') if depth == 0 => {
                found.push(&tokens[start..at]);
                start = at + 1;
            }
            _ => {}
        }
    }
    found
}

/// The files (by module) that the file of `here` refers to, each with the names that it takes.
pub(crate) fn references(files: &Crate, here: &[String]) -> BTreeMap<Vec<String>, BTreeSet<String>> {
    let module = &files[here];
    let used = module.aliases.values().filter(|alias| !alias.handed_on).map(|alias| &alias.path);
    let mut found: BTreeMap<Vec<String>, BTreeSet<String>> = BTreeMap::new();
    for path in module.mentions.iter().chain(used) {
        if let Some((file, item)) = definition(files, here, path, 0)
            && file != here
        {
            found.entry(file).or_default().insert(item);
        }
    }
    found
}

/// The module whose file defines what a path names, seen from a module, and the item's name.
fn definition(files: &Crate, from: &[String], path: &[String], turns: u8) -> Option<(Vec<String>, String)> {
    let (first, rest) = path.split_first()?;
    // A ring of re-exports would not compile; this only keeps a mistake from hanging.
    if turns > 20 {
        return None;
    }
    match first.as_str() {
        "crate" => definition_in(files, &[], rest, turns),
        "self" => definition_in(files, from, rest, turns),
        "super" => {
            let above = &from[..from.len().checked_sub(1)?];
            let on = if rest.first().is_some_and(|word| word == "super") { definition } else { definition_in };
            on(files, above, rest, turns)
        }
        _ => definition_in(files, from, path, turns),
    }
}

/// The same for a path whose first name stands in the module itself.
fn definition_in(files: &Crate, inside: &[String], path: &[String], turns: u8) -> Option<(Vec<String>, String)> {
    let (first, rest) = path.split_first()?;
    let module = files.get(inside)?;
    if module.children.contains(first) && !rest.is_empty() {
        let child: Vec<String> = inside.iter().chain([first]).cloned().collect();
        return definition_in(files, &child, rest, turns + 1);
    }
    if module.items.contains(first) {
        return Some((inside.to_vec(), first.clone()));
    }
    if let Some(alias) = module.aliases.get(first) {
        let on: Vec<String> = alias.path.iter().chain(rest).cloned().collect();
        // A name from outside the crate, such as `std::fmt`, leads to itself.
        return (on != path).then(|| definition(files, inside, &on, turns + 1)).flatten();
    }
    module.globs.iter().find_map(|glob| {
        let on: Vec<String> = glob.iter().chain(path).cloned().collect();
        definition(files, inside, &on, turns + 1)
    })
}
