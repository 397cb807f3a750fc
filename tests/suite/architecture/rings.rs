//! No ring of files: within a crate, files that refer to each other in a circle
//! cannot be understood one after the other.
//!
//! A file refers to another where it names an item (function, type, trait, constant
//! or macro) that is defined there: by `use`, by a path, or by a name that reaches
//! it through any number of re-exports. What a file hands on (`pub use`) and does not
//! mention itself is a line of a table of contents and no reference, nor is `mod`.
//! Calls of methods are not followed: a method belongs to its type.

use std::{
    collections::{BTreeMap, BTreeSet},
    fs,
    path::Path,
};

use super::{
    names::{self, Crate},
    scan::MEMBERS,
    sources,
};

type Name = Vec<String>;

/// Rooms whose files still do so, each until its turn comes.
const OPEN: [&str; 2] = ["detect", "photo"];

/// A crate's files: `(path below its root, text)`.
fn read<'a>(files: impl IntoIterator<Item = (&'a str, &'a str)>) -> Crate {
    files.into_iter().map(|(path, text)| (module_of(path), names::module(text))).collect()
}

/// The module that a file is.
fn module_of(path: &str) -> Name {
    let words = path.trim_end_matches(".rs").split('/');
    words.filter(|word| !matches!(*word, "mod" | "lib" | "main")).map(ToOwned::to_owned).collect()
}

/// Each ring: the room of its first file, and its files with what ties them.
fn rings(files: &Crate) -> Vec<(String, String)> {
    let arrows: BTreeMap<&Name, BTreeMap<Name, BTreeSet<String>>> =
        files.keys().map(|file| (file, names::references(files, file))).collect();
    let reached: BTreeMap<&Name, BTreeSet<&Name>> = files.keys().map(|file| (file, reach(&arrows, file))).collect();
    let mut told = BTreeSet::new();
    let mut found = Vec::new();
    for file in files.keys().filter(|file| reached[file].contains(file)) {
        if told.contains(file) {
            continue;
        }
        let ring: BTreeSet<&Name> =
            reached[file].iter().copied().filter(|other| reached[other].contains(file)).collect();
        let mut lines = vec![format!("a ring of {} files:", ring.len())];
        for from in &ring {
            for (to, items) in arrows[from].iter().filter(|(to, _)| ring.contains(to)) {
                let items = items.iter().map(String::as_str).collect::<Vec<_>>().join(", ");
                lines.push(format!("  {} -> {}: {items}", from.join("::"), to.join("::")));
            }
        }
        told.extend(ring);
        found.push((file.first().cloned().unwrap_or_default(), lines.join("\n")));
    }
    found
}

/// All files that a file leads to.
fn reach<'a>(arrows: &'a BTreeMap<&Name, BTreeMap<Name, BTreeSet<String>>>, from: &Name) -> BTreeSet<&'a Name> {
    let mut found = BTreeSet::new();
    let mut open: Vec<&Name> = arrows[from].keys().collect();
    while let Some(file) = open.pop() {
        if found.insert(file) {
            open.extend(arrows[file].keys());
        }
    }
    found
}

#[test]
fn no_files_of_a_crate_refer_to_each_other_in_a_ring() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut paths = Vec::new();
    sources(&root, &mut paths);
    let mut crates: BTreeMap<&str, Vec<(String, String)>> = BTreeMap::new();
    for path in paths {
        let below = path.strip_prefix(&root).unwrap().to_str().unwrap().replace('\\', "/");
        let member = MEMBERS.into_iter().chain(["words"]).find(|m| below.starts_with(&format!("{m}/")));
        let inside = member.map_or(below.as_str(), |m| &below[m.len() + 1..]).to_owned();
        // Files of tests alone.
        if !inside.ends_with("tests.rs") && inside != "main.rs" {
            crates.entry(member.unwrap_or("")).or_default().push((inside, fs::read_to_string(&path).unwrap()));
        }
    }
    let mut found = Vec::new();
    let mut arrows = 0;
    for (member, files) in &crates {
        let files = read(files.iter().map(|(path, text)| (path.as_str(), text.as_str())));
        arrows += files.keys().map(|file| names::references(&files, file).len()).sum::<usize>();
        let rings = rings(&files).into_iter().filter(|(room, _)| !OPEN.contains(&room.as_str()));
        found.extend(rings.map(|(_, ring)| format!("{member}: {ring}")));
    }
    assert!(arrows > 1000, "{arrows} references between files seen");
    assert!(found.is_empty(), "\n{}", found.join("\n"));
}

#[test]
fn a_ring_is_seen_through_re_exports_and_a_table_of_contents_is_none() {
    let ring = |files: &[(&str, &str)]| rings(&read(files.iter().copied())).len();
    let root = ("lib.rs", "pub mod a;");
    let table = ("a/mod.rs", "mod b;\nmod c;\npub use b::f;\npub use c::{G, h as other};");
    let c = ("a/c.rs", "pub struct G;\npub fn h() {}");
    assert_eq!(ring(&[root, table, ("a/b.rs", "use super::G;\npub fn f(g: G) {}"), c]), 0);
    for (b, c) in [
        ("use super::G;\npub fn f(g: G) {}", "pub struct G;\npub fn h() { super::f(G) }"),
        ("pub fn f() { crate::a::other() }", "pub fn h() { use super::b; b::f() }"),
        ("pub const f: u8 = 1;\nimpl super::c::G {}", "use super::{b::{f}};\npub struct G([u8; f]);"),
        ("use super::*;\npub fn f() { other() }", "pub fn h() { crate::a::f() }"),
    ] {
        assert_eq!(ring(&[root, table, ("a/b.rs", b), ("a/c.rs", c)]), 1, "{b} | {c}");
    }
    // What a parent uses itself it may not lend to its children.
    let parent = ("a/mod.rs", "mod b;\npub use b::f;\npub struct G;\npub fn g() { f(G) }");
    assert_eq!(ring(&[root, parent, ("a/b.rs", "use super::G;\npub fn f(g: G) {}")]), 1);
    assert_eq!(
        ring(&[root, parent, ("a/b.rs", "pub fn f() {} // super::G\n/* super::G */ const S: &str = \"super::G\";")]),
        0
    );
    let tested = "pub fn f() {}\n#[cfg(test)]\nuse super::G;\n#[cfg(test)]\nmod tests {\n    use super::super::G;\n}";
    assert_eq!(ring(&[root, parent, ("a/b.rs", tested)]), 0);
}
