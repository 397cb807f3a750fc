//! Each finding has a scene, and the scene shows exactly that finding.

use std::collections::BTreeSet;
use std::path::Path;

use baywitness::folder::Models;
use baywitness::job::{Options, verify};
use baywitness::record::{JobRecord, Verdict};
use baywitness::training::{COMPANIONS, MISTAKES, stage_mistake};
use baywitness::verdict::findings::RULES;
use rayon::prelude::*;

fn codes(record: &JobRecord) -> BTreeSet<&str> {
    record.findings.iter().map(|f| f.code.as_str()).collect()
}

fn staged(code: &str, folder: &Path) -> JobRecord {
    stage_mistake(code, folder).unwrap();
    verify(folder, &Options::new(Models::embedded())).unwrap()
}

#[test]
fn every_code_of_the_rules_has_a_scene_file() {
    let rules: BTreeSet<&str> = RULES.iter().flat_map(|r| r.codes.iter().copied()).collect();
    let scenes: BTreeSet<&str> = MISTAKES.iter().map(|(code, _)| *code).collect();
    assert_eq!(rules, scenes);
    for (code, text) in MISTAKES {
        assert!(text.starts_with("# "), "{code}: its first line says what was done");
    }
}

/// What a scene must raise: its code, and what cannot but come along.
fn wanted(code: &str) -> BTreeSet<&str> {
    let with = COMPANIONS.iter().find(|(c, _)| *c == code).map_or(&[][..], |(_, with)| with);
    with.iter().copied().chain([code]).collect()
}

fn check(code: &str) -> Option<String> {
    let folder = tempfile::tempdir().unwrap();
    let record = staged(code, folder.path());
    crate::told::assert_record_is_told(&record);
    if codes(&record) == wanted(code) {
        return None;
    }
    let said: Vec<String> = record.findings.iter().map(|f| format!("  {}: {}", f.code, f.message)).collect();
    Some(format!("{code} ({}) raises {:?}\n{}", record.verdict.name(), codes(&record), said.join("\n")))
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_turned_stand_is_told_and_the_right_bay_is_within() {
    let folder = tempfile::tempdir().unwrap();
    let record = staged("right", folder.path());
    assert_eq!((record.verdict, codes(&record)), (Verdict::Within, BTreeSet::new()));
    assert_eq!(check("stand-turned"), None);
}

#[test]
#[ignore = "a minute and a half: cargo test --test suite training:: -- --ignored"]
fn each_scene_raises_exactly_its_finding() {
    let wrong: Vec<String> = MISTAKES.par_iter().filter_map(|(code, _)| check(code)).collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
