//! The book and the tests are in step: every row names a test that exists and is
//! one, every attack of this folder has its row, and what a row calls slow is.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// A row of one of the book's tables.
struct Row {
    attack: String,
    test: String,
    slow: bool,
    /// Stands below the heading that says what nothing finds.
    unseen: bool,
}

fn rows() -> Vec<Row> {
    let text = fs::read_to_string(root().join("docs/attacks.md")).unwrap();
    let (mut rows, mut unseen) = (Vec::new(), false);
    for line in text.lines() {
        if line.starts_with("## ") {
            unseen = line.contains("nothing here finds");
        }
        let cells: Vec<&str> = line.trim_matches('|').split('|').map(str::trim).collect();
        let Some(test) = cells.last().filter(|c| cells.len() > 3 && c.starts_with('`')) else { continue };
        let slow = test.ends_with("(slow)");
        let test = test.trim_end_matches("(slow)").trim().trim_matches('`').to_owned();
        assert!(cells.iter().all(|c| !c.is_empty()), "a cell is empty: {line}");
        rows.push(Row { attack: cells[0].to_owned(), test, slow, unseen });
    }
    rows
}

/// The file of a test's module, and the test's name; `crate:` leads to a crate's own tests.
fn place(test: &str) -> (Option<PathBuf>, &str) {
    let (module, name) = test.rsplit_once("::").unwrap();
    let below = match module.strip_prefix("crate::") {
        Some(_) => root().join("src"),
        None => root().join("tests/suite"),
    };
    let way = module.trim_start_matches("crate::").replace("::", "/");
    let files = [below.join(format!("{way}.rs")), below.join(&way).join("mod.rs")];
    (files.into_iter().find(|f| f.is_file()), name)
}

/// Whether a file has the test, and whether it is left out of the default run.
fn find(file: &Path, name: &str) -> Option<bool> {
    let text = fs::read_to_string(file).unwrap();
    let before = text.split(&format!("fn {name}(")).next().filter(|b| b.len() < text.len())?;
    let attributes: Vec<&str> =
        before.lines().rev().skip_while(|l| l.trim().is_empty()).take_while(|l| l.trim().starts_with("#[")).collect();
    attributes.iter().any(|a| a.trim() == "#[test]").then(|| attributes.iter().any(|a| a.contains("ignore")))
}

#[test]
fn every_row_names_its_test() {
    let rows = rows();
    let mut wrong = Vec::new();
    for row in &rows {
        let (file, name) = place(&row.test);
        match file.and_then(|file| find(&file, name)) {
            None => wrong.push(format!("{}: there is no test {}", row.attack, row.test)),
            Some(slow) if slow != row.slow => wrong.push(format!("{}: is {} slow?", row.attack, row.test)),
            Some(_) => {}
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert!(rows.len() >= 25, "{} attacks", rows.len());
    assert!(rows.iter().filter(|r| r.unseen).count() >= 5, "the book says what it cannot find");
    let attacks: BTreeSet<&str> = rows.iter().map(|r| r.attack.as_str()).collect();
    assert_eq!(attacks.len(), rows.len(), "an attack stands there twice");
}

#[test]
fn every_attack_of_this_folder_is_in_the_book() {
    let rows = rows();
    let mut tried = 0;
    for module in [
        "photos", "files", "evidence", "archive", "rules", "copies", "folders", "logs", "orders", "signed", "stamps",
        "owner", "endless",
    ] {
        let file = root().join(format!("tests/suite/attacks/{module}.rs"));
        let text = fs::read_to_string(file).unwrap();
        for part in text.split("#[test]").skip(1) {
            let name = part.split("fn ").nth(1).unwrap().split('(').next().unwrap();
            let test = format!("attacks::{module}::{name}");
            assert!(rows.iter().any(|r| r.test == test), "docs/attacks.md has no row of {test}");
            // A test that shows that nothing finds an attack stands below that heading, and no other does.
            let body = part.split("\n}\n").next().unwrap();
            let unseen = body.contains("unseen(");
            let row = rows.iter().find(|r| r.test == test).unwrap();
            assert!(!unseen || row.unseen, "{test} shows that nothing finds it: its row says otherwise");
            tried += 1;
        }
    }
    assert!(tried >= 25, "{tried} attacks are run here");
}
