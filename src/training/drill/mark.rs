//! Marking: what was found, which way, how much, and what was not there.

use std::fs;
use std::path::Path;

use super::folder::{Hidden, SEALED, answers, read_drill, write};
use super::{draw, sealed};
use crate::record::{DrillAnswer, DrillMark, JobMark, MarkedAnswer};
use crate::training::{Error, cannot_read};
use crate::words::phrase;

/// A marked drill, and everything that the trainee has been marked for so far.
#[derive(Debug)]
pub struct Marked {
    /// This one.
    pub mark: DrillMark,
    /// All of the progress file, this one last.
    pub progress: Vec<DrillMark>,
}

/// Points for naming a mistake, for the way, for the size; a false alarm costs as much as a name.
const POINTS: [f64; 3] = [2.0, 1.0, 1.0];

/// Marks a drill's answers, gives the jobs their kit and truth back, and adds a
/// line to the progress file (JSON, one drill a line).
///
/// # Errors
/// No drill, answers that were changed since they were sealed, or the disk.
pub fn mark(folder: &Path, trainee: &str, day: &str, progress: &Path) -> Result<Marked, Error> {
    let drill = read_drill(folder)?;
    let path = folder.join(SEALED);
    let text = fs::read_to_string(&path).map_err(cannot_read(&path))?;
    let changed = || {
        let (path, drill) = (path.display().to_string(), super::folder::DRILL);
        Error::Said(phrase!("training-answers-changed", path = path, drill = drill))
    };
    let content = sealed::open(&text, &drill.answers_sha256).ok_or_else(changed)?;
    let hidden: Hidden = serde_json::from_slice(&content).map_err(|_| changed())?;
    let given = answers(folder)?;
    let jobs: Vec<JobMark> = drill.jobs.iter().map(|job| of_job(job, &hidden.answers, &given)).collect();
    let mut all = read_progress(progress)?;
    let number = drill.answers_sha256[..12].to_owned();
    let earlier = all.iter().filter(|m| m.drill == number && m.trainee == trainee).count();
    let mark = sum(DrillMark {
        format: "drill-mark/1".into(),
        drill: number,
        trainee: trainee.to_owned(),
        day: day.to_owned(),
        level: drill.level,
        earlier,
        findings: [0; 2],
        ways: [0; 2],
        sizes: [0; 2],
        false_alarms: 0,
        points: [0.0; 2],
        jobs,
    });
    for (name, text) in &hidden.files {
        write(&folder.join(name), text.as_bytes())?;
    }
    all.push(mark.clone());
    write_progress(progress, &all)?;
    Ok(Marked { mark, progress: all })
}

fn of_job(job: &str, hidden: &[DrillAnswer], given: &[DrillAnswer]) -> JobMark {
    let own = |list: &[DrillAnswer]| list.iter().filter(|a| a.job == job).cloned().collect::<Vec<_>>();
    let (truths, said) = (own(hidden), own(given));
    let mistakes: Vec<MarkedAnswer> = truths.iter().map(|truth| of_mistake(truth, &said)).collect();
    let there = |a: &DrillAnswer| truths.iter().any(|t| t.finding == a.finding);
    let right = truths.is_empty() && said.iter().any(|a| a.finding == "none");
    let wrong: Vec<DrillAnswer> =
        said.iter().filter(|a| !(there(a) || a.finding == "none" && truths.is_empty())).cloned().collect();
    let full: f64 = POINTS.iter().sum();
    let of = if truths.is_empty() { full } else { full * truths.len() as f64 };
    let won: f64 = if right { full } else { 0.0 }
        + mistakes
            .iter()
            .filter(|m| m.answer.is_some())
            .map(|m| POINTS[0] + if m.way_right { POINTS[1] } else { 0.0 } + if m.size_right { POINTS[2] } else { 0.0 })
            .sum::<f64>();
    let points = (won - POINTS[0] * wrong.len() as f64).max(0.0);
    JobMark { job: job.to_owned(), mistakes, wrong, answered: !said.is_empty(), points, of }
}

fn of_mistake(truth: &DrillAnswer, said: &[DrillAnswer]) -> MarkedAnswer {
    let answer = said.iter().find(|a| a.finding == truth.finding).cloned();
    let size = truth.size.unwrap_or(0.0);
    let room = draw::room(&truth.finding, size);
    MarkedAnswer {
        way_right: answer.as_ref().is_some_and(|a| a.way == truth.way),
        size_right: answer.as_ref().and_then(|a| a.size).is_some_and(|s| (s - size).abs() <= room),
        truth: truth.clone(),
        answer,
        size_room: room,
    }
}

fn sum(mut mark: DrillMark) -> DrillMark {
    for job in &mark.jobs {
        let named: Vec<&MarkedAnswer> = job.mistakes.iter().filter(|m| m.answer.is_some()).collect();
        mark.findings[0] += named.len();
        mark.findings[1] += job.mistakes.len();
        mark.ways[0] += named.iter().filter(|m| m.way_right).count();
        mark.ways[1] += named.len();
        mark.sizes[0] += named.iter().filter(|m| m.size_right).count();
        mark.sizes[1] += named.len();
        mark.false_alarms += job.wrong.len();
        mark.points[0] += job.points;
        mark.points[1] += job.of;
    }
    mark
}

fn read_progress(path: &Path) -> Result<Vec<DrillMark>, Error> {
    let text = match fs::read_to_string(path) {
        Ok(text) => text,
        Err(e) if e.kind() == std::io::ErrorKind::NotFound => return Ok(Vec::new()),
        Err(e) => return Err(cannot_read(path)(e)),
    };
    let lines = text.lines().enumerate().filter(|(_, line)| !line.trim().is_empty());
    lines
        .map(|(i, line)| {
            serde_json::from_str(line).map_err(|e| {
                let (path, line) = (path.display().to_string(), i + 1);
                phrase!("training-progress-unreadable", path = path, line = line, why = e.to_string()).into()
            })
        })
        .collect()
}

fn write_progress(path: &Path, all: &[DrillMark]) -> Result<(), Error> {
    let failed =
        |e: serde_json::Error| phrase!("training-cannot-write", path = path.display().to_string(), why = e.to_string());
    let mut text = String::new();
    for mark in all {
        text.push_str(&serde_json::to_string(mark).map_err(failed)?);
        text.push('\n');
    }
    write(path, text.as_bytes())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said(finding: &str, way: &str, size: f64) -> DrillAnswer {
        DrillAnswer { job: "D".into(), finding: finding.into(), way: way.into(), size: Some(size) }
    }

    #[test]
    fn finding_way_and_size_are_marked_apart() {
        let truth = [said("stand-turned", "left-end-away", 1.2), said("stand-too-near", "away", 30.0)];
        let full =
            of_job("D", &truth, &[said("stand-turned", "left-end-away", 1.0), said("stand-too-near", "away", 33.0)]);
        assert!((full.points - full.of).abs() < 1e-12 && (full.of - 8.0).abs() < 1e-12);
        let half = of_job(
            "D",
            &truth,
            &[said("stand-turned", "left-end-towards", 3.0), said("stand-tilted", "top-away", 1.0)],
        );
        // Named, wrong way, wrong size: 2; a false alarm: -2.
        assert!(half.points.abs() < 1e-12 && half.wrong.len() == 1);
        assert!(of_job("D", &truth, &[]).points.abs() < 1e-12);
    }

    #[test]
    fn nothing_wrong_has_to_be_said() {
        let none = DrillAnswer { size: None, ..said("none", "", 0.0) };
        let mark = of_job("D", &[], std::slice::from_ref(&none));
        assert!((mark.points - mark.of).abs() < 1e-12 && mark.wrong.is_empty());
        assert!(of_job("D", &[], &[]).points.abs() < 1e-12);
        assert_eq!(of_job("D", &[said("stand-turned", "left-end-away", 1.0)], &[none]).wrong.len(), 1);
    }
}
