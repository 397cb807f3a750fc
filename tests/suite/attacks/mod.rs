//! The attack book, run: who would cheat how, and what finds it. Each row of
//! `docs/attacks.md` names the test that carries the attack out, here or beside
//! what defends against it; a row that says that nothing finds an attack names a
//! test that shows so, and fails on the day when something does.

#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "test support: a panic is the message")]

mod archive;
mod book;
mod copies;
mod credentials_claimed;
mod endless;
mod evidence;
mod files;
mod folders;
mod issuer;
mod logs;
mod orders;
mod owner;
mod pasted;
mod photos;
mod rules;
mod signed;
mod stamps;
mod workshop;

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;

use baywitness::folder::Models;
use baywitness::job::{Options, PhotoMemory, verify_watching};
use baywitness::record::{JobRecord, Verdict};

use crate::evidence::doors::rewrite;

/// Photos that nobody touched are looked at once for all attacks.
static MEMORY: LazyLock<PhotoMemory> = LazyLock::new(|| PhotoMemory::new(64));

fn sample(name: &str) -> PathBuf {
    [env!("CARGO_MANIFEST_DIR"), "samples", name].iter().collect()
}

fn judged(job: &Path) -> JobRecord {
    verify_watching(job, &Options::new(Models::embedded()), &MEMORY, &mut |_| ()).unwrap()
}

/// A sample job after an attack on its folder.
fn attacked(name: &str, attack: impl FnOnce(&Path)) -> JobRecord {
    let dir = tempfile::tempdir().unwrap();
    let job = dir.path().join("job");
    crate::staged::copy(&sample(name), &job, true);
    attack(&job);
    judged(&job)
}

fn codes(record: &JobRecord) -> BTreeSet<&str> {
    record.findings.iter().map(|f| f.code.as_str()).collect()
}

/// The attack is named, and it does not end as "within".
fn stopped(record: &JobRecord, code: &str) {
    assert!(codes(record).contains(code), "{:?}", codes(record));
    assert_ne!(record.verdict, Verdict::Within, "{:?}", codes(record));
}

/// The attack is named beside a verdict that may be "within".
fn named(record: &JobRecord, code: &str) {
    assert!(codes(record).contains(code), "{:?}", codes(record));
}

/// Nothing in the job tells of the attack.
fn unseen(record: &JobRecord) {
    assert_eq!((record.verdict, codes(record)), (Verdict::Within, BTreeSet::new()));
}
