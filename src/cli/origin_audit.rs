//! Which cameras took an archive's photos: `cameras.jsonl` in the audit's folder, gone on with where it was left.

use std::collections::BTreeMap;
use std::io::Write;
use std::path::{Path, PathBuf};
use std::sync::Mutex;

use rayon::prelude::*;
use serde_json::{Value, json};

use super::origin::{ANOTHER, CANT_TELL, Cameras, THIS};
use super::output::{cannot_read, cannot_write, language};
use super::unpacked;
use crate::custody::audit::{Audit, Judged, Ledger, LedgerError};
use crate::custody::find_sealed_job;
use crate::evidence::{is_evidence, is_one_file};
use crate::words::{Language, say};

const FILE: &str = "cameras.jsonl";
const FORMAT: &str = "sensor/1";

/// Looks at the photos of every job that was judged, writes a line for each, and says what they add up to.
pub(super) fn audit(folder: &Path, ledger: &Ledger, audit: &Audit, out: &Path) -> Result<String, String> {
    let cameras = Cameras::read(folder)?;
    let (file, patterns) = (out.join(FILE), cameras.digest());
    let before = kept(&file, &patterns)?;
    // A line is on the disk as soon as it is there: a run that is broken off goes on from it.
    let open = std::fs::OpenOptions::new().create(true).append(true).open(&file);
    let growing = Mutex::new(open.map_err(|e| cannot_write(&file, &e))?);
    let line = |judged: Result<Judged, LedgerError>| -> Result<Value, String> {
        let judged = &judged.map_err(|e| e.phrase().say(language()))?;
        if let Some(line) = before.get(&judged.digest) {
            let mut line = line.clone();
            line["path"] = json!(judged.path);
            return Ok(line);
        }
        let line = looked_at(&cameras, &patterns, ledger, judged);
        let mut file = growing.lock().unwrap_or_else(std::sync::PoisonError::into_inner);
        file.write_all(format!("{line}\n").as_bytes()).map_err(|e| cannot_write(&out.join(FILE), &e))?;
        Ok(line)
    };
    let judged: Vec<_> = audit.lines.iter().map_err(|e| e.phrase().say(language()))?.collect();
    let lines: Vec<Value> = judged.into_par_iter().map(line).collect::<Result<_, _>>()?;
    let text: String = lines.iter().map(|line| format!("{line}\n")).collect();
    super::output::write_file(&file, text.as_bytes())?;
    Ok(summary(&lines, &file, language()))
}

/// The lines of an earlier run with the same patterns, by their job's digest; one that was cut off is not one.
fn kept(file: &Path, patterns: &str) -> Result<BTreeMap<String, Value>, String> {
    let text = match std::fs::read(file) {
        Ok(bytes) => String::from_utf8_lossy(&bytes).into_owned(),
        Err(e) if e.kind() == std::io::ErrorKind::NotFound => String::new(),
        Err(e) => return Err(cannot_read(file, &e)),
    };
    let lines = text.lines().filter_map(|line| serde_json::from_str::<Value>(line).ok());
    let same = lines.filter(|line| line["format"] == FORMAT && line["patterns"] == patterns);
    Ok(same.filter_map(|line| Some((line["digest"].as_str()?.to_owned(), line))).collect())
}

fn looked_at(cameras: &Cameras, patterns: &str, ledger: &Ledger, judged: &Judged) -> Value {
    let head = |key: &str, value: Value| json!({ "format": FORMAT, "path": judged.path, "digest": judged.digest, "patterns": patterns, key: value });
    let of_job = || -> Result<Value, String> {
        let record = ledger.outcome(judged).map_err(|e| e.phrase().say(Language::English))??;
        let named = PathBuf::from(&judged.path);
        let told = if is_evidence(&named) || (named.is_file() && is_one_file(&named)) {
            let opened = unpacked::open(&named).map_err(String::from)?;
            let payload = opened.folder.join("data");
            let job = find_sealed_job(&payload).map(|job| payload.join(job)).unwrap_or(payload);
            cameras.of_job(&job, &record)
        } else {
            cameras.of_job(&named, &record)
        };
        serde_json::to_value(told?).map_err(|e| e.to_string())
    };
    match of_job() {
        Ok(photos) => head("photos", photos),
        Err(message) => head("message", json!(message)),
    }
}

/// How many photos are said to be what, and each that another camera took.
fn summary(lines: &[Value], file: &Path, language: Language) -> String {
    let photos = || lines.iter().flat_map(|l| l["photos"].as_array().into_iter().flatten().map(move |p| (l, p)));
    let count = |says: &str| photos().filter(|(_, p)| p["says"] == says).count();
    let counts =
        say!(language, "pattern-counts", this = count(THIS), another = count(ANOTHER), cant = count(CANT_TELL));
    let mut text = format!("{}\n  {counts}\n", say!(language, "pattern-title"));
    for (line, photo) in photos().filter(|(_, p)| p["says"] == ANOTHER) {
        let words = serde_json::from_value::<crate::words::Phrase>(photo["message_phrase"].clone());
        let words = words.map_or_else(|_| photo["message"].to_string(), |phrase| phrase.say(language));
        text.push_str(&format!("  {}: {words}\n", line["path"].as_str().unwrap_or_default()));
    }
    format!("{text}  {}\n", say!(language, "pattern-all", file = file.display().to_string()))
}
