//! Runs a Python script beside this file: JSON in, JSON out.

use std::{
    env,
    io::Write,
    path::PathBuf,
    process::{Command, Stdio},
};

use serde_json::Value;

fn python() -> String {
    env::var("BAYWITNESS_PYTHON").unwrap_or_else(|_| "python3".into())
}

fn has(module: &str) -> bool {
    let import = format!("import {module}");
    let run = Command::new(python()).args(["-c", &import]).stdout(Stdio::null()).stderr(Stdio::null()).status();
    run.is_ok_and(|status| status.success())
}

/// The answer of `script` to `input`; `None`, with a message, where the
/// interpreter lacks one of `modules` and the check may be skipped.
pub(crate) fn answer(script: &str, modules: &[&str], input: &Value) -> Option<Value> {
    if let Some(missing) = modules.iter().find(|module| !has(module)) {
        let required = env::var("BAYWITNESS_REFERENCE").is_ok_and(|v| v == "required");
        assert!(!required, "{} has no {missing}", python());
        println!("skipped: {} has no {missing}", python());
        return None;
    }
    let path: PathBuf = [env!("CARGO_MANIFEST_DIR"), "tests", "suite", "reference", script].iter().collect();
    let mut child = Command::new(python()).arg(path).stdin(Stdio::piped()).stdout(Stdio::piped()).spawn().unwrap();
    child.stdin.take().unwrap().write_all(input.to_string().as_bytes()).unwrap();
    let output = child.wait_with_output().unwrap();
    assert!(output.status.success(), "{script} failed");
    Some(serde_json::from_slice(&output.stdout).unwrap())
}
