//! A drill on the disk: jobs without kit and truth, sealed answers, and a table
//! that the trainee fills.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use rand::TryRng;
use serde::{Deserialize, Serialize};

use super::draw::{self, LEVELS, Level};
use super::{measures, sealed};
use crate::input::did_you_mean;
use crate::record::DrillAnswer;
use crate::synth::InsidesSpec;
use crate::training::bay::{RIGHT, scene};
use crate::training::{Error, disk};

/// What is wanted.
#[derive(Debug, Clone, Copy)]
pub struct NewDrill {
    /// 1 to 5.
    pub level: u8,
    /// Jobs.
    pub count: usize,
    /// The same seed makes the same drill; none: another one each time.
    pub seed: Option<u64>,
}

/// What was made.
#[derive(Debug)]
pub struct Made {
    /// SHA-256 of the sealed answers.
    pub commitment: String,
    /// The level in words.
    pub words: &'static str,
}

/// `drill.toml`.
#[derive(Debug, Serialize, Deserialize)]
pub(super) struct DrillFile {
    pub(super) format: String,
    pub(super) level: u8,
    pub(super) jobs: Vec<String>,
    pub(super) answers_sha256: String,
}

/// What is under seal.
#[derive(Debug, Serialize, Deserialize)]
pub(super) struct Hidden {
    pub(super) seed: u64,
    pub(super) answers: Vec<DrillAnswer>,
    /// Files that a job gets back when it is marked: the kit and the truth.
    pub(super) files: BTreeMap<String, String>,
}

pub(super) const DRILL: &str = "drill.toml";
pub(super) const SEALED: &str = "answers.sealed";
const ANSWERS: &str = "answers.csv";
const MOST_JOBS: usize = 200;

/// Stages a drill into a new folder; `progress` is told each job.
///
/// # Errors
/// A level that does not exist, a folder that holds a drill already, or the disk.
pub fn make(wanted: &NewDrill, out: &Path, progress: &mut dyn FnMut(&str)) -> Result<Made, Error> {
    let level = LEVELS.iter().find(|l| l.number == wanted.level);
    let level: &Level = level
        .ok_or_else(|| Error::Answers(format!("there is no level {}: take 1 to {}", wanted.level, LEVELS.len())))?;
    if wanted.count == 0 || wanted.count > MOST_JOBS {
        return Err(Error::Answers(format!("{} jobs: take 1 to {MOST_JOBS}", wanted.count)));
    }
    if out.join(DRILL).exists() {
        return Err(Error::Answers(format!("{} holds a drill already: name another folder", out.display())));
    }
    let mut bytes = [0u8; 40];
    rand::rngs::SysRng
        .try_fill_bytes(&mut bytes)
        .map_err(|e| Error::Answers(format!("the system gives no random bytes: {e}")))?;
    let drawn = u64::from_le_bytes(std::array::from_fn(|i| bytes[i]));
    let seed = wanted.seed.unwrap_or(drawn);
    let mut hidden = Hidden { seed, answers: Vec::new(), files: BTreeMap::new() };
    let jobs: Vec<String> = (1..=wanted.count).map(|n| format!("DRILL-{n:02}")).collect();
    for (n, job) in jobs.iter().enumerate() {
        progress(job);
        hidden.answers.extend(stage(level, seed, n, job, &out.join(job), &mut hidden.files)?);
    }
    let content = serde_json::to_vec(&hidden).map_err(|e| Error::Answers(e.to_string()))?;
    let sealed = sealed::seal(&content, std::array::from_fn(|i| bytes[8 + i]));
    let file = DrillFile {
        format: "drill/1".into(),
        level: level.number,
        jobs: jobs.clone(),
        answers_sha256: sealed.commitment,
    };
    write(&out.join(SEALED), sealed.text.as_bytes())?;
    write(&out.join("HOW-TO.txt"), how_to(level).as_bytes())?;
    write_answers(out, &[])?;
    let text = toml::to_string(&file).map_err(|e| Error::Answers(e.to_string()))?;
    write(&out.join(DRILL), text.as_bytes())?;
    Ok(Made { commitment: file.answers_sha256, words: level.words })
}

/// One job: photos, the set-up sheet and the readings stay; the kit and the truth go under seal.
fn stage(
    level: &Level,
    seed: u64,
    number: usize,
    job: &str,
    folder: &Path,
    files: &mut BTreeMap<String, String>,
) -> Result<Vec<DrillAnswer>, Error> {
    let (error, answers) = draw::draw(level, seed, number, job);
    let mut scene = scene(RIGHT, "right.toml")?.with_seed(seed.wrapping_add(number as u64));
    scene.spec.stand.error = error;
    scene.spec.insides = InsidesSpec::preset(draw::phone(level, seed, number));
    scene.spec.job.insert("job".into(), job.into());
    let truth = scene.stage(folder, &mut |_| ())?;
    for name in ["kit.toml", "truth.json"] {
        let path = folder.join(name);
        let text = fs::read_to_string(&path).map_err(disk("read", &path))?;
        files.insert(format!("{job}/{name}"), text);
        fs::remove_file(&path).map_err(disk("remove", &path))?;
    }
    write(&folder.join("readings.txt"), measures::sheet(job, &truth.measured).as_bytes())?;
    Ok(answers)
}

fn how_to(level: &Level) -> String {
    format!(
        "A drill of level {}: {} in each job. Everything is invented.\n\n\
         1. Each folder is a job: photos, the set-up sheet (setup.toml: what is wanted, and how near) and readings.txt.\n\
         2. Say for each job what is outside tolerance, which way to move it, and by how much: fill answers.csv, or\n   \
            baywitness drill answer DIR JOB FINDING WAY SIZE\n   \
            Several mistakes of one job are several lines; nothing wrong is the finding `none`.\n\
         3. baywitness drill mark DIR\n\n\
         Findings: {}\nWays: {}\nSizes: mm, or degrees for stand-turned, stand-tilted, stand-not-level.\n\n\
         The kit's file is kept under seal until the drill is marked; then each job can be verified.\n\
         The seal keeps answers from a glance and shows a change of them; it is no lock.\n",
        level.number,
        level.words,
        draw::codes().join(", "),
        draw::ways().join(", ")
    )
}

pub(super) fn write(path: &Path, bytes: &[u8]) -> Result<(), Error> {
    fs::write(path, bytes).map_err(disk("write", path))
}

pub(super) fn read_drill(folder: &Path) -> Result<DrillFile, Error> {
    let path = folder.join(DRILL);
    let text = fs::read_to_string(&path).map_err(disk("read", &path))?;
    let file: DrillFile = toml::from_str(&text)
        .map_err(|e| Error::Answers(format!("{}: {}; make the drill again", path.display(), e.message())))?;
    if file.format != "drill/1" {
        return Err(Error::Answers(format!("{}: format is {}, not drill/1", path.display(), file.format)));
    }
    Ok(file)
}

const COLUMNS: [&str; 4] = ["job", "finding", "way", "size"];

fn write_answers(folder: &Path, answers: &[DrillAnswer]) -> Result<(), Error> {
    let mut table = csv::Writer::from_writer(Vec::new());
    let failed = |e: &dyn std::fmt::Display| Error::Answers(format!("cannot write {ANSWERS}: {e}"));
    table.write_record(COLUMNS).map_err(|e| failed(&e))?;
    for a in answers {
        let size = a.size.map_or(String::new(), |s| s.to_string());
        table.write_record([&a.job, &a.finding, &a.way, &size]).map_err(|e| failed(&e))?;
    }
    let bytes = table.into_inner().map_err(|e| failed(&e))?;
    write(&folder.join(ANSWERS), &bytes)
}

/// What the trainee has answered so far.
///
/// # Errors
/// The table cannot be read, or a line names what is not there: line and remedy.
pub fn answers(folder: &Path) -> Result<Vec<DrillAnswer>, Error> {
    let drill = read_drill(folder)?;
    let path = folder.join(ANSWERS);
    let text = fs::read_to_string(&path).map_err(disk("read", &path))?;
    let mut table = csv::ReaderBuilder::new().flexible(true).trim(csv::Trim::All).from_reader(text.as_bytes());
    let mut list = Vec::new();
    for (i, row) in table.records().enumerate() {
        let place = format!("{}, line {}", path.display(), i + 2);
        let row = row.map_err(|e| Error::Answers(format!("{place}: {e}")))?;
        let field = |n: usize| row.get(n).unwrap_or_default();
        if row.iter().all(str::is_empty) {
            continue;
        }
        let answer = checked(&drill, field(0), field(1), field(2), field(3));
        list.push(answer.map_err(|why| Error::Answers(format!("{place}: {why}")))?);
    }
    Ok(list)
}

/// Adds an answer; one of the same finding of that job is replaced.
///
/// # Errors
/// A job, finding or way that the drill does not know, or the disk.
pub fn answer(folder: &Path, job: &str, finding: &str, way: &str, size: &str) -> Result<(), Error> {
    let drill = read_drill(folder)?;
    let new = checked(&drill, job, finding, way, size).map_err(Error::Answers)?;
    let mut list = answers(folder)?;
    let instead = |a: &DrillAnswer| {
        a.job == new.job && (a.finding == new.finding || a.finding == "none" || new.finding == "none")
    };
    list.retain(|a| !instead(a));
    list.push(new);
    write_answers(folder, &list)
}

fn checked(drill: &DrillFile, job: &str, finding: &str, way: &str, size: &str) -> Result<DrillAnswer, String> {
    let known = |what: &str, word: &str, all: &[&str]| {
        if all.contains(&word) {
            Ok(())
        } else {
            Err(format!("no {what} `{word}`; {}", did_you_mean(word, all.iter().copied())))
        }
    };
    let jobs: Vec<&str> = drill.jobs.iter().map(String::as_str).collect();
    known("job", job, &jobs)?;
    known("finding", finding, &draw::codes())?;
    if !way.is_empty() {
        known("way", way, &draw::ways())?;
    }
    let size = match size {
        "" => None,
        text => Some(
            text.parse::<f64>()
                .ok()
                .filter(|s| s.is_finite())
                .ok_or(format!("`{text}` is no size: a number of mm or degrees"))?,
        ),
    };
    Ok(DrillAnswer { job: job.into(), finding: finding.into(), way: way.into(), size: size.map(f64::abs) })
}
