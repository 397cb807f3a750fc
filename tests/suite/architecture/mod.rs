//! The house rules: which room may see which, and how large a file may be.
//!
//! Data flows one way, photo -> sightings -> poses -> geometry -> verdict ->
//! record -> report, so a room imports only rooms on lower floors. What a rule
//! is for stands beside it; a new room gets its floor here. Between the members of
//! the workspace Cargo itself keeps the order: a member sees what its Cargo.toml names.

#![allow(clippy::unwrap_used, reason = "a test may stop where its own helper fails")]

mod names;
mod questions;
mod rings;
mod scan;
mod tokens;

use std::{
    fs,
    path::{Path, PathBuf},
};

use scan::Source;

/// Each room's floor.
const FLOORS: [(&str, u8); 34] = [
    ("words", 0),
    ("geom", 0),
    ("num", 0),
    ("quantity", 0),
    ("rendered", 0),
    ("input", 0),
    ("typeface", 0),
    ("shown", 1),
    ("camera", 1),
    ("marker", 1),
    ("setup", 1),
    ("folder", 1),
    ("cores", 0),
    ("photo", 2),
    ("pattern", 3),
    ("detect", 3),
    ("credentials", 3),
    ("pose", 4),
    ("measure", 5),
    ("verdict", 6),
    ("record", 7),
    ("evidence", 8),
    ("transparency", 8),
    ("report", 8),
    ("sheet", 8),
    ("fit", 8),
    ("survey", 8),
    ("synth", 8),
    ("job", 8),
    ("custody", 9),
    ("trends", 9),
    ("training", 9),
    ("cli", 10),
    ("web", 10),
];

/// Imports on one floor, each with its reason.
const SIDEWAYS: [(&str, &str, &str); 9] = [
    ("input", "words", "what is wrong with a file is said in the reader's language"),
    ("num", "words", "what keeps a gauge study from being made is said in the reader's language"),
    ("typeface", "words", "that a built-in font is damaged is said in the reader's language"),
    ("quantity", "num", "an estimate's interval needs the Student distribution"),
    ("folder", "camera", "the job folder reads the files that it names"),
    ("folder", "marker", "the job folder reads the files that it names"),
    ("folder", "setup", "the job folder reads the files that it names"),
    ("cli", "web", "a command opens the page's door"),
    ("setup", "marker", "a sheet's carriers are looked up in the kit"),
];

/// Rooms that a room may not see although they are below, and why.
fn forbidden(room: &str) -> (&'static [&'static str], &'static str) {
    match room {
        "synth" => (&["detect", "pose", "measure", "verdict", "photo"], "the renderer may not import what it tests"),
        "fit" | "survey" => (&["measure", "verdict"], "bench tools stop at poses"),
        "evidence" | "transparency" | "report" | "sheet" | "cli" | "web" => {
            (&["detect", "pose", "measure"], "records are the waist: what comes after reads only them")
        }
        _ => (&[], ""),
    }
}

/// Rooms of pure mathematics: values in, values out.
const NO_DISK: [&str; 7] = ["geom", "num", "quantity", "detect", "pose", "measure", "verdict"];

/// Names that say nothing about what is inside.
const EMPTY_NAMES: [&str; 6] = ["util", "utils", "common", "helpers", "helper", "manager"];

const MOST_LINES: usize = 500;

fn floor(room: &str) -> Option<u8> {
    FLOORS.iter().find(|(name, _)| *name == room).map(|(_, floor)| *floor)
}

/// Why `from` may not import `to`; `None` where it may.
fn objection(from: &str, to: &str) -> Option<String> {
    if from == to {
        return None;
    }
    let (Some(above), Some(below)) = (floor(from), floor(to)) else {
        return Some(format!("{from} -> {to}: give both a floor in tests/architecture"));
    };
    let (never, why) = forbidden(from);
    if never.contains(&to) {
        return Some(format!("{from} -> {to}: {why}"));
    }
    let listed = SIDEWAYS.iter().any(|(a, b, _)| (*a, *b) == (from, to));
    (below >= above && !listed).then(|| format!("{from} (floor {above}) -> {to} (floor {below}): imports go down only"))
}

/// Everything that is wrong with one file.
fn objections(source: &Source) -> Vec<String> {
    let mut found = Vec::new();
    for word in source.path_words() {
        if EMPTY_NAMES.contains(&word) {
            found.push(format!("the name {word} says nothing"));
        }
    }
    if source.lines() > MOST_LINES {
        found.push(format!("{} lines without tests, more than {MOST_LINES}", source.lines()));
    }
    if source.reaches_past_its_root() {
        found.push("another member is named outside the crate's root file".to_owned());
    }
    let Some(room) = source.room() else { return found };
    if floor(room).is_none() {
        found.push(format!("room {room} has no floor in tests/architecture"));
    }
    // The words are one room that is a crate: what it imports are its own files.
    if room != "words" {
        found.extend(source.imports().iter().filter_map(|to| objection(room, to)));
    }
    if NO_DISK.contains(&room) && source.touches_disk() {
        found.push(format!("{room} touches the disk"));
    }
    if room != "cli" && source.prints() {
        found.push(format!("{room} prints: only the doors do"));
    }
    found
}

fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            sources(&path, found);
        } else if path.extension().is_some_and(|e| e == "rs") {
            found.push(path);
        }
    }
}

#[test]
fn every_file_keeps_the_house_rules() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut paths = Vec::new();
    sources(&root, &mut paths);
    assert!(paths.len() > 50, "{} files", paths.len());
    let mut wrong = Vec::new();
    let mut imports = 0;
    for path in paths {
        let text = fs::read_to_string(&path).unwrap();
        let source = Source::new(path.strip_prefix(&root).unwrap(), &text);
        imports += source.imports().len();
        wrong.extend(objections(&source).into_iter().map(|what| format!("src/{}: {what}", source.path())));
    }
    assert!(imports > 100, "the scanner sees {imports} imports");
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

fn complaints(path: &str, text: &str) -> Vec<String> {
    objections(&Source::new(Path::new(path), text))
}

#[test]
fn imports_upwards_sideways_and_past_the_waist_are_seen() {
    for (path, text) in [
        ("geom/pose.rs", "use crate::camera::Lens;"),
        ("camera/lens.rs", "use crate::marker::Kit;"),
        ("camera/lens.rs", "use crate::{geom::Pose, photo::{Luma, Exif}};"),
        ("report/text.rs", "fn f() -> crate::measure::Measurement { todo }"),
        ("report/html/mod.rs", "use crate::{\n    quantity::Estimate,\n    pose::Scene,\n};"),
        ("synth/mod.rs", "use crate::photo::Luma;"),
        ("fit/solve.rs", "use crate::measure;"),
        ("detect/edge.rs", "use super::super::pose::Scene;"),
        ("report/html/page.rs", "use super::super::super::detect::Sighting;"),
        ("attic/mod.rs", "use crate::geom::Pose;"),
        ("verdict/check.rs", "pub(in crate::verdict) use crate::record::Verdict;"),
    ] {
        assert!(!complaints(path, text).is_empty(), "{path}: {text}");
    }
}

#[test]
fn allowed_imports_pass() {
    for (path, text) in [
        ("report/text.rs", "use crate::{quantity::{Estimate, rounded}, record::JobRecord};"),
        ("folder/job_folder.rs", "use crate::camera::Profile; use crate::setup::Sheet;"),
        ("job/verify.rs", "use crate::{detect, pose, measure, verdict, photo, record};"),
        ("fit/solve.rs", "use crate::pose::adjust; use crate::detect::detect;"),
        (
            "detect/edge.rs",
            "use super::pyramid; // crate::pose::Scene\n/// [`crate::measure`]\nuse crate::marker::Code;",
        ),
        ("report/html/page.rs", "use super::super::label::label;"),
        ("synth/mod.rs", "use crate::geom::Pose;\n#[cfg(test)]\nmod tests { use crate::detect::detect; }"),
    ] {
        assert_eq!(complaints(path, text), Vec::<String>::new(), "{path}: {text}");
    }
}

#[test]
fn size_names_printing_and_disk_are_seen() {
    assert_eq!(complaints("geom/long.rs", &"let a = 1;\n".repeat(501)).len(), 1);
    let tested = "let a = 1;\n".repeat(499) + "#[cfg(test)]\nmod tests {\n" + &"let a = 1;\n".repeat(300) + "}\n";
    assert_eq!(complaints("geom/long.rs", &tested).len(), 0);
    assert_eq!(complaints("geom/util.rs", "").len(), 1);
    assert_eq!(complaints("foundation/geom/util.rs", "").len(), 1);
    assert_eq!(complaints("measuring/detect/edge.rs", "use baywitness_foundation::geom::Pose;").len(), 1);
    assert_eq!(complaints("measuring/lib.rs", "use baywitness_foundation::geom;").len(), 0);
    assert_eq!(complaints("measuring/detect/edge.rs", "use crate::pose::Scene;").len(), 1);
    assert_eq!(complaints("pose/helpers/mod.rs", "").len(), 1);
    assert_eq!(complaints("pose/adjust.rs", "fn f() { println!(\"{}\", 1); }").len(), 1);
    assert_eq!(complaints("cli/verify.rs", "fn f() { eprintln!(\"{}\", 1); }").len(), 0);
    assert_eq!(complaints("pose/adjust.rs", "use std::fs::File;").len(), 1);
    assert_eq!(complaints("pose/adjust.rs", "use std::{fmt, fs};").len(), 1);
    assert_eq!(complaints("photo/read.rs", "use std::fs::File;").len(), 0);
}
