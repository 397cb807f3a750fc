//! Same inputs, same bytes: whatever the number of threads, run after run.

#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "test support: a panic is the message")]

use std::path::PathBuf;
use std::process::Command;

#[test]
fn a_record_is_the_same_on_any_number_of_threads() {
    let job: PathBuf = [env!("CARGO_MANIFEST_DIR"), "samples", "good"].iter().collect();
    let run = |threads: &str| {
        let output = Command::new(env!("CARGO_BIN_EXE_baywitness"))
            .args(["verify", "--json", "-", "--threads", threads])
            .arg(&job)
            .output()
            .unwrap();
        assert_eq!(output.status.code(), Some(0));
        String::from_utf8(output.stdout).unwrap()
    };
    let first = run("1");
    for threads in ["1", "2", "8"] {
        assert!(run(threads) == first, "{threads} threads give other bytes");
    }
}
