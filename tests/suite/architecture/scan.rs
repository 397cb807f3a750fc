//! What a source file imports, read from its text.

use std::path::Path;

/// The members of the workspace below src/, lowest first: each holds some rooms.
pub(crate) const MEMBERS: [&str; 9] =
    ["foundation", "photogrammetry", "measuring", "renderer", "workbench", "reports", "proof", "sensor", "page"];

/// One file below src/, without comments and without its test module.
pub(crate) struct Source {
    member: Option<&'static str>,
    /// Relative to its crate's root.
    path: String,
    code: String,
    lines: usize,
}

impl Source {
    /// `path` is relative to src/.
    pub(crate) fn new(path: &Path, text: &str) -> Self {
        let path = path.to_str().unwrap().replace('\\', "/");
        let member = MEMBERS.into_iter().find(|m| path.starts_with(&format!("{m}/")));
        let path = member.map_or(path.as_str(), |m| &path[m.len() + 1..]).to_owned();
        let end = text.find("#[cfg(test)]\nmod tests {").unwrap_or(text.len());
        let text = if path.ends_with("/tests.rs") { "" } else { &text[..end] };
        let code = text.lines().map(|line| line.split("//").next().unwrap_or_default()).collect::<Vec<_>>().join("\n");
        Source { member, path, code, lines: text.lines().count() }
    }

    /// Below src/.
    pub(crate) fn path(&self) -> String {
        self.member.map_or(self.path.clone(), |member| format!("{member}/{}", self.path))
    }

    /// Whether it is its crate's root file.
    fn is_root(&self) -> bool {
        matches!(self.path.as_str(), "lib.rs" | "main.rs")
    }

    /// Whether it names another member, which only a crate's root file does: what
    /// a crate is made of stands there in one place, and moving a room touches one line.
    pub(crate) fn reaches_past_its_root(&self) -> bool {
        !self.is_root() && MEMBERS.iter().any(|member| self.code.contains(&format!("baywitness_{member}")))
    }

    /// Lines without the test module.
    pub(crate) fn lines(&self) -> usize {
        self.lines
    }

    /// Folder and file names.
    pub(crate) fn path_words(&self) -> impl Iterator<Item = &str> {
        self.path.trim_end_matches(".rs").split('/')
    }

    /// The room that the file belongs to; none for the crate's root files.
    pub(crate) fn room(&self) -> Option<&str> {
        self.path_words().next().filter(|word| !matches!(*word, "lib" | "main"))
    }

    /// Rooms that the file names, each once per mention.
    pub(crate) fn imports(&self) -> Vec<&str> {
        let root = "crate::";
        let above = "super::".repeat(self.depth());
        let mut found = Vec::new();
        for (start, _) in self.code.match_indices(root) {
            // `pub(in crate::room)` is no import.
            if !self.code[..start].ends_with("(in ") {
                found.extend(first_names(&self.code[start + root.len()..]));
            }
        }
        for (start, _) in self.code.match_indices(&above) {
            if !self.code[..start].ends_with("super::") && !self.code[start + above.len()..].starts_with("super::") {
                found.extend(first_names(&self.code[start + above.len()..]));
            }
        }
        found.retain(|name| name.starts_with(|c: char| c.is_ascii_lowercase()) && *name != "self");
        found
    }

    /// How many `super::` lead from the file's module to the crate's root.
    fn depth(&self) -> usize {
        let words = self.path_words().count();
        if self.path.ends_with("mod.rs") { words - 1 } else { words }
    }

    pub(crate) fn prints(&self) -> bool {
        ["println!", "print!(", "dbg!("].iter().any(|call| self.code.contains(call))
    }

    pub(crate) fn touches_disk(&self) -> bool {
        self.code.contains("std::fs")
            || self.code.match_indices("use std::{").any(|(start, opening)| {
                let brace = start + opening.len() - 1;
                first_names(&self.code[brace..]).contains(&"fs")
            })
    }
}

/// The first name of a path, or of each path of a group in braces.
fn first_names(text: &str) -> Vec<&str> {
    let Some(group) = text.strip_prefix('{') else { return vec![name(text)] };
    let (mut depth, mut names, mut start) = (0, Vec::new(), 0);
    for (i, c) in group.char_indices() {
        match c {
            '{' => depth += 1,
            '}' if depth == 0 => {
                names.push(name(&group[start..i]));
                break;
            }
            '}' => depth -= 1,
            ',' if depth == 0 => {
                names.push(name(&group[start..i]));
                start = i + 1;
            }
            _ => {}
        }
    }
    names.retain(|name| !name.is_empty());
    names
}

fn name(text: &str) -> &str {
    let text = text.trim_start();
    &text[..text.find(|c: char| !c.is_alphanumeric() && c != '_').unwrap_or(text.len())]
}
