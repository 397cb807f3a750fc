//! Marking: what was found, which way, how much, and what was not there.

use std::fs::{self, File, OpenOptions};
use std::path::Path;

use super::folder::{DRILL, DrillFile, Hidden, SEALED, answers, read_drill, write};
use super::{draw, giving_back, sealed};
use crate::record::{DrillAnswer, DrillMark, JobMark, MarkedAnswer};
use crate::training::{Error, cannot_read, cannot_write};
use crate::words::phrase;

/// A marked drill, and everything that the trainee has been marked for so far.
#[derive(Debug)]
pub struct Marked {
    /// This one.
    pub mark: DrillMark,
    /// All of the progress file, this one last.
    pub progress: Vec<DrillMark>,
    /// Whether the level was sealed with the answers; earlier builds did not.
    pub level_sealed: bool,
    /// Held until what is made of the progress is written too: who marks at the same time waits.
    pub lock: File,
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
    let changed = || Error::Said(phrase!("training-answers-changed", path = path.display().to_string(), drill = DRILL));
    let content = sealed::open(&text, &drill.answers_sha256).ok_or_else(changed)?;
    let hidden: Hidden = serde_json::from_slice(&content).map_err(|_| changed())?;
    as_sealed(&drill, &hidden, folder)?;
    let given_back = giving_back::places(folder, &drill.jobs, &hidden.files)?;
    let given = answers(folder)?;
    let jobs: Vec<JobMark> = drill.jobs.iter().map(|job| of_job(job, &hidden.answers, &given)).collect();
    let lock = locked(progress)?;
    let mut all = read_progress(progress)?;
    let number = drill.answers_sha256[..12].to_owned();
    let mut mark = sum(DrillMark {
        format: "drill-mark/1".into(),
        drill: number,
        trainee: trainee.to_owned(),
        day: day.to_owned(),
        level: drill.level,
        seed: Some(hidden.seed),
        earlier: 0,
        findings: [0; 2],
        ways: [0; 2],
        sizes: [0; 2],
        false_alarms: 0,
        points: [0.0; 2],
        jobs,
    });
    mark.earlier = known(&mark, &all);
    giving_back::give_back(&given_back)?;
    all.push(mark.clone());
    write_progress(progress, &all)?;
    Ok(Marked { mark, progress: all, level_sealed: hidden.level.is_some(), lock })
}

/// Whether level and jobs are those that were drawn: nobody wins points of a level that is not the drill's, or for the
/// jobs alone that were easy. Before they were sealed, the files that each job gets back told the jobs.
fn as_sealed(drill: &DrillFile, hidden: &Hidden, folder: &Path) -> Result<(), Error> {
    let jobs = match &hidden.jobs {
        Some(jobs) => jobs.clone(),
        None if hidden.files.is_empty() => drill.jobs.clone(),
        None => giving_back::jobs_of(&hidden.files),
    };
    if drill.jobs == jobs && hidden.level.is_none_or(|level| level == drill.level) {
        return Ok(());
    }
    Err(phrase!("training-drill-changed", path = folder.join(DRILL).display().to_string()).into())
}

/// Nobody else reads or writes the progress while this is held; the system lets go of it however the program ends.
fn locked(progress: &Path) -> Result<File, Error> {
    let name = progress.file_name().unwrap_or_default().to_string_lossy();
    let path = progress.with_file_name(format!(".{name}.lock"));
    let file = OpenOptions::new().create(true).append(true).open(&path).map_err(cannot_write(&path))?;
    file.lock().map_err(cannot_write(&path))?;
    Ok(file)
}

fn of_job(job: &str, hidden: &[DrillAnswer], given: &[DrillAnswer]) -> JobMark {
    let own = |list: &[DrillAnswer]| list.iter().filter(|a| a.job == job).cloned().collect::<Vec<_>>();
    let (truths, said) = (own(hidden), own(given));
    let mistakes: Vec<MarkedAnswer> = truths.iter().map(|truth| of_mistake(truth, &said)).collect();
    let there = |a: &DrillAnswer| truths.iter().any(|t| t.finding == a.finding);
    let right = truths.is_empty() && said.iter().any(|a| a.finding == "none");
    // Who says that nothing is wrong raises no alarm: a mistake that is there was missed, no more.
    let wrong: Vec<DrillAnswer> = said.iter().filter(|a| !there(a) && a.finding != "none").cloned().collect();
    let [points, of] = points(&mistakes, &wrong, right);
    JobMark { job: job.to_owned(), mistakes, wrong, answered: !said.is_empty(), points, of }
}

/// Points won and points that could be won; `right`: rightly said that nothing is wrong.
fn points(mistakes: &[MarkedAnswer], wrong: &[DrillAnswer], right: bool) -> [f64; 2] {
    let full: f64 = POINTS.iter().sum();
    let of = if mistakes.is_empty() { full } else { full * mistakes.len() as f64 };
    let won: f64 = if right { full } else { 0.0 }
        + mistakes
            .iter()
            .filter(|m| m.answer.is_some())
            .map(|m| POINTS[0] + if m.way_right { POINTS[1] } else { 0.0 } + if m.size_right { POINTS[2] } else { 0.0 })
            .sum::<f64>();
    [(won - POINTS[0] * wrong.len() as f64).max(0.0), of]
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

/// How many of these marks are of this trainee and this drill, or of one of its seed and level, which has its jobs.
fn known(mark: &DrillMark, before: &[DrillMark]) -> usize {
    let same = |m: &DrillMark| m.seed.is_some() && (m.seed, m.level) == (mark.seed, mark.level);
    before.iter().filter(|m| m.trainee == mark.trainee && (m.drill == mark.drill || same(m))).count()
}

/// Whether a line's figures are those that the program makes of the answers in it.
fn follows(mark: &DrillMark) -> bool {
    let bare =
        DrillMark { findings: [0; 2], ways: [0; 2], sizes: [0; 2], false_alarms: 0, points: [0.0; 2], ..mark.clone() };
    sum(bare) == *mark && mark.jobs.iter().all(job_follows)
}

fn job_follows(mark: &JobMark) -> bool {
    let won = |right: bool| {
        let [won, of] = points(&mark.mistakes, &mark.wrong, right);
        (won - mark.points).abs() < 1e-9 && (of - mark.of).abs() < 1e-9
    };
    let none_wrong = mark.mistakes.is_empty() && mark.answered;
    mark.mistakes.iter().all(mistake_follows) && (won(false) || none_wrong && won(true))
}

fn mistake_follows(mark: &MarkedAnswer) -> bool {
    let Some(answer) = &mark.answer else { return !mark.way_right && !mark.size_right };
    let over = answer.size.map(|size| (size - mark.truth.size.unwrap_or(0.0)).abs() - mark.size_room);
    // A number that was written and read again may be another one in its last digit.
    let near = over.is_some_and(|over| over <= 0.0);
    let size = mark.size_right == near || over.is_some_and(|over| over.abs() < 1e-9);
    answer.finding == mark.truth.finding && mark.way_right == (answer.way == mark.truth.way) && size
}

/// The marks so far. What the answers were known for is counted again; figures that do not follow are nobody's marks.
fn read_progress(path: &Path) -> Result<Vec<DrillMark>, Error> {
    let text = match fs::read_to_string(path) {
        Ok(text) => text,
        Err(e) if e.kind() == std::io::ErrorKind::NotFound => return Ok(Vec::new()),
        Err(e) => return Err(cannot_read(path)(e)),
    };
    let mut all: Vec<DrillMark> = Vec::new();
    for (i, line) in text.lines().enumerate().filter(|(_, line)| !line.trim().is_empty()) {
        let (path, number) = (path.display().to_string(), i + 1);
        let mut mark: DrillMark = match serde_json::from_str(line) {
            Ok(mark) => mark,
            Err(e) => {
                let why = e.to_string();
                return Err(phrase!("training-progress-unreadable", path = path, line = number, why = why).into());
            }
        };
        if !follows(&mark) {
            return Err(phrase!("training-progress-edited", path = path, line = number).into());
        }
        mark.earlier = mark.earlier.max(known(&mark, &all));
        all.push(mark);
    }
    Ok(all)
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
        // A mistake that is there was missed, which is no false alarm.
        let missed = of_job("D", &[said("stand-turned", "left-end-away", 1.0)], &[none]);
        assert!(missed.wrong.is_empty() && missed.answered && missed.points.abs() < 1e-12);
    }

    /// A drill of one job with one mistake, and its right answer.
    fn drill(room: &Path, name: &str, seed: u64, level: u8) -> std::path::PathBuf {
        let folder = room.join(name);
        fs::create_dir_all(&folder).unwrap();
        let truth = said("stand-turned", "left-end-away", 1.2);
        let truth = DrillAnswer { job: "DRILL-01".into(), ..truth };
        let (files, jobs) = (std::collections::BTreeMap::new(), Some(vec!["DRILL-01".to_owned()]));
        sealed_drill(&folder, name, level, &Hidden { seed, level: Some(level), jobs, answers: vec![truth], files });
        folder
    }

    fn sealed_drill(folder: &Path, name: &str, level: u8, hidden: &Hidden) {
        let salt = std::array::from_fn(|i| name.as_bytes()[i % name.len()]);
        let seal = sealed::seal(&serde_json::to_vec(hidden).unwrap(), salt);
        fs::write(folder.join(SEALED), &seal.text).unwrap();
        let file = format!(
            "format = \"drill/1\"\nlevel = {level}\njobs = [\"DRILL-01\"]\nanswers_sha256 = \"{}\"\n",
            seal.commitment
        );
        fs::write(folder.join(DRILL), file).unwrap();
        fs::write(folder.join("answers.csv"), "job,finding,way,size\nDRILL-01,stand-turned,left-end-away,1.2\n")
            .unwrap();
    }

    /// A drill whose seal says what it gives back, and what level and jobs it has.
    fn handed(room: &Path, name: &str, files: &[&str], sealed: Option<(u8, &[&str])>) -> std::path::PathBuf {
        let folder = drill(room, name, 7, 1);
        let truth = DrillAnswer { job: "DRILL-01".into(), ..said("stand-turned", "left-end-away", 1.2) };
        let (level, jobs) = sealed.unzip();
        let hidden = Hidden {
            seed: 7,
            level,
            jobs: jobs.map(|jobs| jobs.iter().map(|&job| job.to_owned()).collect()),
            answers: vec![truth],
            files: files.iter().map(|&name| (name.to_owned(), "written".to_owned())).collect(),
        };
        sealed_drill(&folder, name, 1, &hidden);
        fs::create_dir_all(folder.join("DRILL-01")).unwrap();
        folder
    }

    /// Whoever hands over a drill folder says what its seal holds, and so what marking would write.
    #[test]
    fn marking_writes_the_jobs_own_kit_and_truth_and_nothing_else() {
        let room = tempfile::tempdir().unwrap();
        let progress = room.path().join("drills.jsonl");
        let outside = room.path().join("outside");
        let absolute = outside.display().to_string();
        let own = "DRILL-01/kit.toml";
        for (n, name) in [
            absolute.as_str(),
            "../outside",
            "DRILL-01/../../outside",
            "DRILL-01/job.toml",
            "DRILL-01/kit.toml/more",
            "DRILL-02/kit.toml",
            "drill.toml",
            "../kit.toml",
        ]
        .into_iter()
        .enumerate()
        {
            let folder = handed(room.path(), &format!("d{n}"), &[own, name], Some((1, &["DRILL-01"])));
            let said = mark(&folder, "A", "2026-05-04", &progress).unwrap_err().to_string();
            assert!(said.contains("nothing is marked"), "{name}: {said}");
            assert!(
                !outside.exists() && !folder.join(own).exists() && !progress.exists(),
                "{name}: nothing is written"
            );
        }
        let honest = handed(room.path(), "honest", &[own, "DRILL-01/truth.json"], Some((1, &["DRILL-01"])));
        let marked = mark(&honest, "A", "2026-05-04", &progress).unwrap();
        assert!(marked.level_sealed && fs::read_to_string(honest.join(own)).unwrap() == "written");
        drop(marked);
        // What was given back may be marked again.
        assert_eq!(mark(&honest, "A", "2026-05-04", &progress).unwrap().mark.earlier, 1);
    }

    #[cfg(unix)]
    #[test]
    fn marking_writes_through_no_link() {
        use std::os::unix::fs::symlink;
        let room = tempfile::tempdir().unwrap();
        let progress = room.path().join("drills.jsonl");
        let victim = room.path().join("victim");
        fs::create_dir(&victim).unwrap();
        fs::write(victim.join("kit.toml"), "kept").unwrap();
        let own = "DRILL-01/kit.toml";
        let file = handed(room.path(), "file", &[own], Some((1, &["DRILL-01"])));
        symlink(victim.join("kit.toml"), file.join(own)).unwrap();
        let whole = handed(room.path(), "whole", &[own], Some((1, &["DRILL-01"])));
        fs::remove_dir(whole.join("DRILL-01")).unwrap();
        symlink(&victim, whole.join("DRILL-01")).unwrap();
        for folder in [file, whole] {
            let said = mark(&folder, "A", "2026-05-04", &progress).unwrap_err().to_string();
            assert!(said.contains("is a link"), "{said}");
        }
        // The progress file itself is replaced, not what a link of its name leads to.
        let lines = victim.join("lines");
        fs::write(&lines, "").unwrap();
        symlink(&lines, &progress).unwrap();
        mark(&drill(room.path(), "plain", 7, 1), "A", "2026-05-04", &progress).unwrap();
        assert_eq!(fs::read_to_string(&lines).unwrap(), "");
        assert_eq!(fs::read_to_string(victim.join("kit.toml")).unwrap(), "kept");
    }

    /// `drill.toml` is a text that any editor changes.
    #[test]
    fn level_and_jobs_are_those_that_were_sealed() {
        let room = tempfile::tempdir().unwrap();
        let progress = room.path().join("drills.jsonl");
        let kits = ["DRILL-01/kit.toml", "DRILL-02/kit.toml"];
        let two: &[&str] = &["DRILL-01", "DRILL-02"];
        for (name, sealed) in [("new", Some((1, two))), ("old", None)] {
            let folder = handed(room.path(), name, &kits, sealed);
            fs::create_dir_all(folder.join("DRILL-02")).unwrap();
            let file = folder.join(DRILL);
            let one = fs::read_to_string(&file).unwrap();
            let whole = one.replace("[\"DRILL-01\"]", "[\"DRILL-01\", \"DRILL-02\"]");
            let thrice = one.replace("[\"DRILL-01\"]", "[\"DRILL-01\", \"DRILL-01\", \"DRILL-01\"]");
            let higher = whole.replace("level = 1", "level = 5");
            let changed = [one, thrice].into_iter().chain(sealed.map(|_| higher.clone()));
            for text in changed {
                fs::write(&file, &text).unwrap();
                let said = mark(&folder, "A", "2026-05-04", &progress).unwrap_err().to_string();
                assert!(said.contains("sealed"), "{name}: {text}: {said}");
            }
            fs::write(&file, &whole).unwrap();
            let marked = mark(&folder, "A", "2026-05-04", &progress).unwrap();
            assert_eq!((marked.level_sealed, marked.mark.jobs.len()), (sealed.is_some(), 2));
        }
    }

    #[test]
    fn marks_given_at_once_are_all_kept() {
        let room = tempfile::tempdir().unwrap();
        let progress = room.path().join("drills.jsonl");
        let folders: Vec<_> = (0..8).map(|n| drill(room.path(), &format!("d{n}"), n, 1)).collect();
        std::thread::scope(|scope| {
            for folder in &folders {
                scope.spawn(|| mark(folder, "A", "2026-05-04", &progress).unwrap());
            }
        });
        assert_eq!(read_progress(&progress).unwrap().len(), 8);
    }

    #[test]
    fn a_drill_of_the_same_seed_and_level_was_known() {
        let room = tempfile::tempdir().unwrap();
        let progress = room.path().join("drills.jsonl");
        let earlier = |name: &str, seed: u64, level: u8, trainee: &str| {
            let folder = drill(room.path(), name, seed, level);
            mark(&folder, trainee, "2026-05-04", &progress).unwrap().mark.earlier
        };
        assert_eq!(earlier("first", 7, 1, "A"), 0);
        assert_eq!(earlier("again", 7, 1, "A"), 1);
        // Other jobs, and somebody else's first time.
        assert_eq!(earlier("other seed", 8, 1, "A"), 0);
        assert_eq!(earlier("other level", 7, 2, "A"), 0);
        assert_eq!(earlier("first", 7, 1, "B"), 0);
        // Lines from before seeds were kept are read, and know a drill by its number.
        let text = fs::read_to_string(&progress).unwrap();
        let old = text.replace("\"seed\":7,", "").replace("\"seed\":8,", "");
        assert_ne!(text, old);
        fs::write(&progress, old).unwrap();
        assert_eq!(earlier("first", 7, 1, "A"), 1);
        assert_eq!(earlier("new", 7, 1, "A"), 1, "the line before has its seed again");
    }

    #[test]
    fn progress_that_was_written_by_hand_is_no_progress() {
        let room = tempfile::tempdir().unwrap();
        let progress = room.path().join("drills.jsonl");
        let folder = drill(room.path(), "first", 7, 1);
        for _ in 0..2 {
            mark(&folder, "A", "2026-05-04", &progress).unwrap();
        }
        let text = fs::read_to_string(&progress).unwrap();
        for (from, to) in [
            ("\"points\":[4.0,4.0]", "\"points\":[400.0,4.0]"),
            ("\"points\":4.0,\"of\":4.0", "\"points\":400.0,\"of\":4.0"),
            ("\"findings\":[1,1]", "\"findings\":[2,1]"),
            ("\"way_right\":true", "\"way_right\":false"),
        ] {
            let edited = text.replacen(from, to, 1);
            assert_ne!(edited, text, "{from}");
            fs::write(&progress, &edited).unwrap();
            let said = mark(&folder, "A", "2026-05-05", &progress).unwrap_err().to_string();
            assert!(said.contains("line 1") && said.contains("not what the program"), "{from}: {said}");
            assert_eq!(fs::read_to_string(&progress).unwrap(), edited, "nothing is written over it");
        }
        // What is said to have been the first time is counted again.
        fs::write(&progress, text.replace("\"earlier\":1", "\"earlier\":0")).unwrap();
        let marked = mark(&folder, "A", "2026-05-05", &progress).unwrap();
        assert_eq!(marked.progress.iter().map(|m| m.earlier).collect::<Vec<_>>(), [0, 1, 2]);
    }
}
