//! The log of attempts: nothing that was acknowledged is lost, and nothing in it
//! is changed, dropped or put in later unseen.

#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "test support: a panic is the message")]
#![allow(clippy::print_stdout, reason = "a child tells its parent what was acknowledged")]

mod doors;
mod folder;
mod killed;

use baywitness::transparency::{Attempt, Log, LogFolder};
use serde_json::json;

/// An invented attempt; `name` stands where the job's commitment would.
pub(crate) fn attempt(name: &str, at: &str) -> Attempt {
    let entry = format!(
        r#"{{"format":"attempt/1","at":"{at}","by":"verify","verdict":"within","order":"o","photos":["p-{name}"],"job":{},"setup":"s","result":"r"}}"#,
        json!(name)
    );
    Attempt::read(entry.as_bytes()).unwrap()
}

/// So many of them, a minute apart.
pub(crate) fn attempts(from: usize, to: usize) -> Vec<Attempt> {
    let at = |n: usize| format!("2026-05-{:02}T{:02}:{:02}:00Z", 1 + n / 1440 % 28, n / 60 % 24, n % 60);
    (from..to).map(|n| attempt(&n.to_string(), &at(n))).collect()
}

/// The names of all entries, every hash checked.
pub(crate) fn names(log: &LogFolder) -> Vec<String> {
    let mut names = Vec::new();
    log.each_entry(|n, entry| {
        assert_eq!(n as usize, names.len());
        names.push(Attempt::read(&entry).unwrap().files.job);
    })
    .unwrap();
    names
}

fn log(dir: &std::path::Path) -> (Log, std::path::PathBuf) {
    let folder = dir.join("log");
    (Log::create(&folder, "shop.example/attempts").unwrap(), folder)
}
