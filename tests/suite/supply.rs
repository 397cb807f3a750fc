//! What the program is built from: licences that fit its own, one source, and
//! nothing that is named but not used.

#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "test support: a panic is the message")]

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::Value;

/// Licences that fit a program under Apache-2.0, also where it is handed on as one file.
const FITTING: [&str; 13] = [
    "Apache-2.0",
    "MIT",
    "MIT-0",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "ISC",
    "IJG",
    "Zlib",
    "0BSD",
    "BSL-1.0",
    "CC0-1.0",
    "Unlicense",
    "Unicode-3.0",
];

/// Packages that need an older major version of something beside the newer one;
/// a line goes when its reason does.
const SEVERAL_VERSIONS_AT_MOST: usize = 40;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

fn metadata() -> Value {
    let out = Command::new(env!("CARGO"))
        .args(["metadata", "--format-version", "1", "--locked", "--offline"])
        // Where the program is built with it, what it needs is on this machine.
        .args(if cfg!(feature = "parquet") { &["--features", "parquet"][..] } else { &[] })
        .current_dir(root())
        .output()
        .unwrap();
    assert!(out.status.success(), "{}", String::from_utf8_lossy(&out.stderr));
    serde_json::from_slice(&out.stdout).unwrap()
}

/// Packages that go into the program on any system: all but what only tests need.
fn packages(metadata: &Value) -> Vec<&Value> {
    let node = |id: &str| metadata["resolve"]["nodes"].as_array().unwrap().iter().find(|n| n["id"] == id).unwrap();
    let (mut seen, mut open) = (BTreeSet::new(), vec![metadata["resolve"]["root"].as_str().unwrap()]);
    while let Some(id) = open.pop() {
        if !seen.insert(id) {
            continue;
        }
        for dep in node(id)["deps"].as_array().unwrap() {
            let kinds = dep["dep_kinds"].as_array().unwrap();
            if kinds.iter().any(|kind| kind["kind"] != "dev") {
                open.push(dep["pkg"].as_str().unwrap());
            }
        }
    }
    metadata["packages"].as_array().unwrap().iter().filter(|p| seen.contains(p["id"].as_str().unwrap())).collect()
}

#[test]
fn licences_fit_and_all_comes_from_one_registry() {
    let metadata = metadata();
    let packages = packages(&metadata);
    assert!(packages.len() > 50);
    let mut wrong = Vec::new();
    for package in &packages {
        let name = format!("{} {}", package["name"].as_str().unwrap(), package["version"].as_str().unwrap());
        let licence = package["license"].as_str().unwrap_or("");
        let fits = spdx::Expression::parse_mode(licence, spdx::ParseMode::LAX).is_ok_and(|expression| {
            expression.evaluate(|one| one.license.id().is_some_and(|id| FITTING.contains(&id.name)))
        });
        if !fits {
            wrong.push(format!("{name}: licence {licence:?}"));
        }
        let source = package["source"].as_str().unwrap_or("here");
        if source != "here" && !source.starts_with("registry+") {
            wrong.push(format!("{name}: from {source}"));
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn few_packages_come_in_several_versions() {
    let metadata = metadata();
    let mut versions: BTreeMap<&str, BTreeSet<&str>> = BTreeMap::new();
    for package in packages(&metadata) {
        versions.entry(package["name"].as_str().unwrap()).or_default().insert(package["version"].as_str().unwrap());
    }
    let several: Vec<_> = versions.iter().filter(|(_, v)| v.len() > 1).collect();
    assert!(several.len() <= SEVERAL_VERSIONS_AT_MOST, "{} packages: {several:#?}", several.len());
}

fn sources(folder: &Path, text: &mut String) {
    for path in fs::read_dir(folder).unwrap().map(|e| e.unwrap().path()) {
        if path.is_dir() {
            sources(&path, text);
        } else if path.extension().is_some_and(|e| e == "rs") {
            text.push_str(&fs::read_to_string(path).unwrap());
        }
    }
}

#[test]
fn every_dependency_is_used() {
    let manifest: toml::Value = toml::from_str(&fs::read_to_string(root().join("Cargo.toml")).unwrap()).unwrap();
    let text = |folders: &[&str]| {
        let mut text = String::new();
        folders.iter().map(|f| root().join(f)).filter(|f: &PathBuf| f.is_dir()).for_each(|f| sources(&f, &mut text));
        text
    };
    // A crate whose library has another name than its package.
    let library = |name: &str| match name {
        "kamadak-exif" => "exif".to_owned(),
        "rustls-webpki" => "webpki".to_owned(),
        name => name.replace('-', "_"),
    };
    for (kind, folders) in [("dependencies", &["src"][..]), ("dev-dependencies", &["src", "tests", "benches"])] {
        let text = text(folders);
        for name in manifest[kind].as_table().unwrap().keys() {
            let library = library(name);
            assert!(text.contains(&format!("{library}::")), "{name} is a dependency and is not used");
        }
    }
}

/// The compiler is told to refuse it (`unsafe_code` in Cargo.toml), and nothing lifts that.
#[test]
fn own_code_has_no_unsafe_block() {
    let mut text = String::new();
    sources(&root().join("src"), &mut text);
    let words = ["unsafe {", "unsafe fn", "unsafe impl", "unsafe extern"];
    assert_eq!(words.iter().map(|w| text.matches(w).count()).sum::<usize>(), 0);
    assert!(!text.contains("unsafe_code"), "a lint is lifted");
    let manifest: toml::Value = toml::from_str(&fs::read_to_string(root().join("Cargo.toml")).unwrap()).unwrap();
    assert_eq!(manifest["lints"]["rust"]["unsafe_code"].as_str(), Some("deny"));
}

/// `deny.toml` and this test promise the same licences.
#[test]
fn the_tool_s_list_of_licences_is_this_one() {
    let file: toml::Value = toml::from_str(&fs::read_to_string(root().join("deny.toml")).unwrap()).unwrap();
    let listed: BTreeSet<&str> =
        file["licenses"]["allow"].as_array().unwrap().iter().map(|l| l.as_str().unwrap()).collect();
    assert_eq!(listed, BTreeSet::from(FITTING));
}
