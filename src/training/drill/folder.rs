//! A drill on the disk: jobs without kit and truth, sealed answers, and a table
//! that the trainee fills.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use rand::TryRng;
use serde::{Deserialize, Serialize};

use super::draw::{self, LEVELS, Level};
use super::{measures, sealed};
use crate::folder::write_durably;
use crate::input::nearest;
use crate::record::DrillAnswer;
use crate::synth::InsidesSpec;
use crate::training::bay::{RIGHT, scene};
use crate::training::{Error, cannot_read, cannot_write};
use crate::words::{Language, Phrase, Value, phrase, say};

/// What is wanted.
#[derive(Debug, Clone, Copy)]
pub struct NewDrill {
    /// 1 to 5.
    pub level: u8,
    /// Jobs.
    pub count: usize,
    /// The same seed makes the same drill; none: another one each time.
    pub seed: Option<u64>,
    /// Of what the trainee reads.
    pub language: Language,
}

/// What was made.
#[derive(Debug)]
pub struct Made {
    /// SHA-256 of the sealed answers.
    pub commitment: String,
    /// The level in words.
    pub words: Phrase,
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
    /// What `drill.toml` says too, where nothing binds it. Drills of earlier builds have neither here.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) level: Option<u8>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) jobs: Option<Vec<String>>,
    pub(super) answers: Vec<DrillAnswer>,
    /// Files that a job gets back when it is marked: the kit and the truth.
    pub(super) files: BTreeMap<String, String>,
}

pub(super) const DRILL: &str = "drill.toml";
pub(super) const SEALED: &str = "answers.sealed";
const ANSWERS: &str = "answers.csv";
/// A job's files that lie under seal until it is marked.
pub(super) const GIVEN_BACK: [&str; 2] = ["kit.toml", "truth.json"];
const MOST_JOBS: usize = 200;

/// Stages a drill into a new folder; `progress` is told each job.
///
/// # Errors
/// A level that does not exist, a folder that holds a drill already, or the disk.
pub fn make(wanted: &NewDrill, out: &Path, progress: &mut dyn FnMut(&str)) -> Result<Made, Error> {
    let level = LEVELS.iter().find(|l| l.number == wanted.level);
    let level: &Level =
        level.ok_or_else(|| phrase!("training-no-level", level = u32::from(wanted.level), last = LEVELS.len()))?;
    if wanted.count == 0 || wanted.count > MOST_JOBS {
        return Err(phrase!("training-so-many-jobs", count = wanted.count, most = MOST_JOBS).into());
    }
    if out.join(DRILL).exists() {
        return Err(phrase!("training-drill-is-there", folder = out.display().to_string()).into());
    }
    let mut bytes = [0u8; 40];
    rand::rngs::SysRng
        .try_fill_bytes(&mut bytes)
        .map_err(|e| phrase!("training-no-random-bytes", why = e.to_string()))?;
    let drawn = u64::from_le_bytes(std::array::from_fn(|i| bytes[i]));
    let seed = wanted.seed.unwrap_or(drawn);
    let jobs: Vec<String> = (1..=wanted.count).map(|n| format!("DRILL-{n:02}")).collect();
    let (level_sealed, jobs_sealed) = (Some(level.number), Some(jobs.clone()));
    let mut hidden =
        Hidden { seed, level: level_sealed, jobs: jobs_sealed, answers: Vec::new(), files: BTreeMap::new() };
    for (n, job) in jobs.iter().enumerate() {
        progress(job);
        hidden.answers.extend(stage(level, seed, n, job, wanted.language, &out.join(job), &mut hidden.files)?);
    }
    let content =
        serde_json::to_vec(&hidden).map_err(|e| phrase!("training-cannot-write", path = DRILL, why = e.to_string()))?;
    let sealed = sealed::seal(&content, std::array::from_fn(|i| bytes[8 + i]));
    let file = DrillFile {
        format: "drill/1".into(),
        level: level.number,
        jobs: jobs.clone(),
        answers_sha256: sealed.commitment,
    };
    write(&out.join(SEALED), sealed.text.as_bytes())?;
    write(&out.join("HOW-TO.txt"), how_to(level, wanted.language).as_bytes())?;
    write_answers(out, &[])?;
    let text =
        toml::to_string(&file).map_err(|e| phrase!("training-cannot-write", path = DRILL, why = e.to_string()))?;
    write(&out.join(DRILL), text.as_bytes())?;
    Ok(Made { commitment: file.answers_sha256, words: level.words() })
}

/// One job: photos, the set-up sheet and the readings stay; the kit and the truth go under seal.
fn stage(
    level: &Level,
    seed: u64,
    number: usize,
    job: &str,
    language: Language,
    folder: &Path,
    files: &mut BTreeMap<String, String>,
) -> Result<Vec<DrillAnswer>, Error> {
    let (error, answers) = draw::draw(level, seed, number, job);
    let mut scene = scene(RIGHT, "right.toml")?.with_seed(seed.wrapping_add(number as u64));
    scene.spec.stand.error = error;
    scene.spec.insides = InsidesSpec::preset(draw::phone(level, seed, number));
    scene.spec.job.insert("job".into(), job.into());
    let truth = scene.stage(folder, &mut |_| ())?;
    for name in GIVEN_BACK {
        let path = folder.join(name);
        let text = fs::read_to_string(&path).map_err(cannot_read(&path))?;
        files.insert(format!("{job}/{name}"), text);
        fs::remove_file(&path).map_err(cannot_write(&path))?;
    }
    write(&folder.join("readings.txt"), measures::sheet(job, &truth.measured, language).as_bytes())?;
    Ok(answers)
}

fn how_to(level: &Level, language: Language) -> String {
    let number = usize::from(level.number);
    let command = "baywitness drill answer DIR JOB FINDING WAY SIZE";
    let paragraphs = [
        say!(language, "training-how-to-head", level = number, words = level.words()),
        format!("1. {}", say!(language, "training-how-to-folders")),
        format!("2. {}\n   {command}", say!(language, "training-how-to-answer")),
        format!("   {}", say!(language, "training-how-to-several")),
        "3. baywitness drill mark DIR".to_owned(),
        format!("\n{}", say!(language, "training-how-to-findings", codes = draw::codes())),
        say!(language, "training-how-to-ways", ways = draw::ways()),
        say!(language, "training-how-to-sizes"),
        format!("\n{}", say!(language, "training-how-to-seal")),
    ];
    paragraphs.map(|p| p + "\n").concat()
}

/// Whole or not at all; never through a link, since a drill folder may come from somebody else.
pub(super) fn write(path: &Path, bytes: &[u8]) -> Result<(), Error> {
    write_durably(path, bytes).map_err(cannot_write(path))
}

pub(super) fn read_drill(folder: &Path) -> Result<DrillFile, Error> {
    let path = folder.join(DRILL);
    let text = fs::read_to_string(&path).map_err(cannot_read(&path))?;
    let file: DrillFile = toml::from_str(&text)
        .map_err(|e| phrase!("training-drill-unreadable", path = path.display().to_string(), why = e.message()))?;
    if file.format != "drill/1" {
        return Err(phrase!("training-drill-format", path = path.display().to_string(), format = file.format).into());
    }
    Ok(file)
}

const COLUMNS: [&str; 4] = ["job", "finding", "way", "size"];

fn write_answers(folder: &Path, answers: &[DrillAnswer]) -> Result<(), Error> {
    let mut table = csv::Writer::from_writer(Vec::new());
    let failed = |e: &dyn std::fmt::Display| phrase!("training-cannot-write", path = ANSWERS, why = e.to_string());
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
    let text = fs::read_to_string(&path).map_err(cannot_read(&path))?;
    let text = text.strip_prefix('\u{feff}').unwrap_or(&text);
    // Spreadsheets of lands with a decimal comma separate by semicolons.
    let semicolons = text.lines().next().is_some_and(|head| head.contains(';'));
    let mut table = csv::ReaderBuilder::new();
    table.flexible(true).trim(csv::Trim::All).delimiter(if semicolons { b';' } else { b',' });
    let mut table = table.from_reader(text.as_bytes());
    let mut list = Vec::new();
    for (i, row) in table.records().enumerate() {
        let at = |why: Value| phrase!("training-at-line", path = path.display().to_string(), line = i + 2, why = why);
        let row = row.map_err(|e| at(e.to_string().into()))?;
        let field = |n: usize| row.get(n).unwrap_or_default();
        if row.iter().all(str::is_empty) {
            continue;
        }
        if row.iter().skip(COLUMNS.len()).any(|cell| !cell.is_empty()) {
            let cells = phrase!("training-answer-cells", found = row.len(), most = COLUMNS.len());
            return Err(at(cells.into()).into());
        }
        let size = if semicolons { field(3).replacen(',', ".", 1) } else { field(3).to_owned() };
        let answer = checked(&drill, field(0), field(1), field(2), &size);
        list.push(answer.map_err(|why| at(why.into()))?);
    }
    Ok(list)
}

/// Adds an answer and gives it as it was kept; one of the same finding of that job is replaced.
///
/// # Errors
/// A job, finding or way that the drill does not know, or the disk.
pub fn answer(folder: &Path, job: &str, finding: &str, way: &str, size: &str) -> Result<DrillAnswer, Error> {
    let drill = read_drill(folder)?;
    let new = checked(&drill, job, finding, way, size)?;
    let mut list = answers(folder)?;
    let instead = |a: &DrillAnswer| {
        a.job == new.job && (a.finding == new.finding || a.finding == "none" || new.finding == "none")
    };
    list.retain(|a| !instead(a));
    list.push(new.clone());
    write_answers(folder, &list)?;
    Ok(new)
}

fn checked(drill: &DrillFile, job: &str, finding: &str, way: &str, size: &str) -> Result<DrillAnswer, Phrase> {
    let known = |what: &str, word: &str, all: &[&str]| {
        if all.contains(&word) {
            return Ok(());
        }
        Err(match nearest(word, all.iter().copied()) {
            Some(near) => phrase!("training-unknown-near", what = what, word = word, near = near),
            None => phrase!("training-unknown", what = what, word = word, all = all.to_vec()),
        })
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
                .ok_or_else(|| phrase!("training-no-size", word = text))?,
        ),
    };
    Ok(DrillAnswer { job: job.into(), finding: finding.into(), way: way.into(), size: size.map(f64::abs) })
}
