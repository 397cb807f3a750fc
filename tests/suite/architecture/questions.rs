//! The questions of DEVELOPERS.md have true answers: each file is there and
//! defines what is named beside it.

use std::{fs, path::Path};

use super::names;

/// What stands in backquotes.
fn quoted(cell: &str) -> Vec<&str> {
    cell.split('`').skip(1).step_by(2).collect()
}

#[test]
fn the_files_that_developers_are_sent_to_define_what_is_named() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let text = fs::read_to_string(root.join("DEVELOPERS.md")).unwrap();
    let table = text.split("## Where things stand").nth(1).and_then(|t| t.split("\n## ").next()).unwrap();
    let rows: Vec<Vec<&str>> = table
        .lines()
        .map(|line| line.trim_matches('|').split('|').map(str::trim).collect::<Vec<_>>())
        .filter(|row| row.len() == 3 && row[0].ends_with('?'))
        .collect();
    assert!(rows.len() >= 10, "{} questions", rows.len());
    for row in rows {
        let (files, items) = (quoted(row[1]), quoted(row[2]));
        assert!(!files.is_empty() && !items.is_empty(), "{row:?}");
        for file in files {
            let path = root.join("src").join(file);
            let source = fs::read_to_string(&path).unwrap_or_else(|e| panic!("{}: {file}: {e}", row[0]));
            let module = names::module(&source);
            for item in &items {
                assert!(module.defines(item), "{}: {file} defines no {item}", row[0]);
            }
        }
    }
}
