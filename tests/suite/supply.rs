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

/// Everything that the program is built from, without asking the network. What
/// only other systems need is not there where nothing but this program was built:
/// then what this system needs is looked at.
fn metadata() -> Value {
    let ask = |more: &[&str]| {
        Command::new(env!("CARGO"))
            .args(["metadata", "--format-version", "1", "--locked", "--offline"])
            // Where the program is built with it, what it needs is on this machine.
            .args(if cfg!(feature = "parquet") { &["--features", "parquet"][..] } else { &[] })
            .args(if cfg!(feature = "credentials") { &["--features", "credentials"][..] } else { &[] })
            .args(if cfg!(feature = "sensor-pattern") { &["--features", "sensor-pattern"][..] } else { &[] })
            .args(more)
            .current_dir(root())
            .output()
            .unwrap()
    };
    let mut out = ask(&[]);
    if !out.status.success() {
        eprintln!("skipped: packages of other systems, which are not on this machine (`cargo fetch` gets them)");
        out = ask(&["--filter-platform", &host()]);
    }
    assert!(out.status.success(), "{}", String::from_utf8_lossy(&out.stderr));
    serde_json::from_slice(&out.stdout).unwrap()
}

/// This system's name, as the compiler has it.
fn host() -> String {
    let compiler = std::env::var_os("RUSTC").unwrap_or_else(|| "rustc".into());
    let said = String::from_utf8(Command::new(compiler).arg("-vV").output().unwrap().stdout).unwrap();
    said.lines().find_map(|line| line.strip_prefix("host: ")).unwrap().to_owned()
}

/// Packages that go into the program: all but what only tests need.
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

fn manifest(member: &Path) -> toml::Value {
    toml::from_str(&fs::read_to_string(member.join("Cargo.toml")).unwrap()).unwrap()
}

/// The folders of all members, the program's own first.
fn members() -> Vec<PathBuf> {
    let listed = manifest(root())["workspace"]["members"].clone();
    let below = listed.as_array().unwrap().iter().map(|m| root().join(m.as_str().unwrap()));
    std::iter::once(root().to_path_buf()).chain(below).collect()
}

#[test]
fn every_dependency_is_used() {
    let text = |folders: &[PathBuf]| {
        let mut text = String::new();
        folders.iter().filter(|f| f.is_dir()).for_each(|f| sources(f, &mut text));
        text
    };
    // A crate whose library has another name than its package.
    let library = |name: &str| match name {
        "kamadak-exif" => "exif".to_owned(),
        "rustls-webpki" => "webpki".to_owned(),
        name => name.replace('-', "_"),
    };
    for member in members() {
        let manifest = manifest(&member);
        let own = if member == root() {
            vec![root().join("src/cli"), root().join("src/training")]
        } else {
            vec![member.clone()]
        };
        let with_tests = [own.clone(), vec![root().join("tests"), root().join("benches")]].concat();
        for (kind, folders) in [("dependencies", own), ("dev-dependencies", with_tests)] {
            // The program's root file names members.
            let text = text(&folders) + &fs::read_to_string(member.join("src/lib.rs")).unwrap_or_default();
            for name in manifest.get(kind).and_then(toml::Value::as_table).into_iter().flat_map(toml::Table::keys) {
                let used = ["::", "!", " as "].iter().any(|end| text.contains(&(library(name) + end)));
                assert!(used, "{name} is a dependency of {} and is not used", member.display());
            }
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
    assert_eq!(manifest(root())["workspace"]["lints"]["rust"]["unsafe_code"].as_str(), Some("deny"));
    for member in members() {
        assert_eq!(manifest(&member)["lints"]["workspace"].as_bool(), Some(true), "{}", member.display());
    }
}

/// `deny.toml` and this test promise the same licences.
#[test]
fn the_tool_s_list_of_licences_is_this_one() {
    let file: toml::Value = toml::from_str(&fs::read_to_string(root().join("deny.toml")).unwrap()).unwrap();
    let listed: BTreeSet<&str> =
        file["licenses"]["allow"].as_array().unwrap().iter().map(|l| l.as_str().unwrap()).collect();
    assert_eq!(listed, BTreeSet::from(FITTING));
}
