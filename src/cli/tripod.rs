//! `baywitness watch JOB --tripod FOLDER`: takes the photos of a camera on a
//! tripod into a job while somebody turns the stand's screws.

use std::collections::HashMap;
use std::path::{Path, PathBuf};
use std::time::{Duration, SystemTime};

use super::follow_up::step_of;
use super::logged;
use super::output::{complain, language, note, say, shown};
use super::threads::pool;
use super::verify::write_report;
use crate::credentials::Source;
use crate::evidence::Identity;
use crate::folder::{
    JobFolder, KeptNewest, Models, NewPhoto, is_known, is_picture, keep_newest, kept_last, known_digits, sweep,
    write_durably,
};
use crate::input::digest_of_file;
use crate::job::{self, PhotoMemory, Tripod, verify_watching};
use crate::marker::Kit;
use crate::record::{JobRecord, Verdict, told};
use crate::transparency::Log;
use crate::words::{Language, Phrase, phrase, say};

/// What to watch, ready to begin.
pub(super) struct Watched<'a> {
    pub(super) job: &'a Path,
    /// The camera's folder; nothing in it is changed.
    pub(super) photos: &'a Path,
    /// The step that the photos show.
    pub(super) step: Option<&'a str>,
    pub(super) report: Option<&'a Path>,
    /// Who signs its PDF.
    pub(super) pdf_signer: Option<Identity>,
    pub(super) log: Option<&'a Path>,
    pub(super) models: Option<&'a Path>,
    pub(super) credentials: Source,
    pub(super) threads: Option<usize>,
    pub(super) every: Duration,
    /// Takes what lies there and ends.
    pub(super) once: bool,
}

/// Photos whose markers are remembered: a job's, and a few of the folder's.
const REMEMBERED: usize = 200;

/// A picture in the camera's folder.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
struct Picture {
    changed: Option<SystemTime>,
    path: PathBuf,
    bytes: u64,
}

/// Watches until it is interrupted; the exit code is that of the last verdict.
pub(super) fn run(watched: &Watched) -> Result<u8, String> {
    if !watched.photos.is_dir() {
        return Err(say!(language(), "cli-tripod-no-folder", folder = shown(watched.photos)));
    }
    let models = Models::standard(watched.models).map_err(|e| e.say(language()))?;
    let options = job::Options { models, credentials: watched.credentials.clone() };
    let folder = JobFolder::open(watched.job, &options.models).map_err(|e| e.say(language()))?;
    step_of(&folder.setup, watched.step)?;
    let first = folder.photos.iter().filter(|p| p.after_move == 0).count();
    if first < 2 {
        return Err(say!(language(), "cli-tripod-too-few", job = shown(watched.job), count = first));
    }
    let log = watched.log.map(logged::open).transpose()?;
    let pool = pool(watched.threads)?;
    pool.install(|| {
        let mut bench = Bench::new(watched, options, folder.kit, log)?;
        bench.watch()
    })
}

struct Bench<'a> {
    watched: &'a Watched<'a>,
    options: job::Options,
    kit: Kit,
    log: Option<Log>,
    memory: PhotoMemory,
    tripod: Tripod,
    /// Sizes and times of the pictures at the last look.
    before: HashMap<PathBuf, Picture>,
    /// Pictures that were taken in, as they were.
    done: HashMap<PathBuf, Picture>,
    /// The last verdict that was shown.
    shown: Option<Verdict>,
}

impl<'a> Bench<'a> {
    fn new(watched: &'a Watched<'a>, options: job::Options, kit: Kit, log: Option<Log>) -> Result<Self, String> {
        let memory = PhotoMemory::new(REMEMBERED);
        let mut bench = Bench {
            watched,
            options,
            kit,
            log,
            memory,
            tripod: Tripod::default(),
            before: HashMap::new(),
            done: HashMap::new(),
            shown: None,
        };
        bench.resume()?;
        Ok(bench)
    }

    /// Goes on behind the newest picture that the job has; of a job that has none yet only pictures are taken that
    /// still come, unless what lies there is all there will be.
    fn resume(&mut self) -> Result<(), String> {
        let known = known_digits(self.watched.job);
        let there = pictures(self.watched.photos);
        let is_here = |p: &Picture| digest_of_file(&p.path).is_ok_and(|sha256| is_known(&known, &sha256));
        let newest = if known.is_empty() { None } else { there.iter().rposition(is_here) };
        let skip = match newest {
            Some(at) => at + 1,
            None if self.watched.once => 0,
            None => there.len(),
        };
        if newest.is_none() && skip > 0 {
            let folder = shown(self.watched.photos);
            note(&format!("{}\n", say!(language(), "cli-tripod-left-out", count = skip, folder = folder)));
        }
        self.done.extend(there[..skip].iter().map(|p| (p.path.clone(), p.clone())));
        sweep(self.watched.job).map_err(|e| e.say(language()))?;
        if let Some(kept) = kept_last(self.watched.job, self.watched.step).map_err(|e| e.say(language()))? {
            let (frame, _) = self.memory.frame(&kept, &self.kit).map_err(|e| e.say(language()))?;
            self.tripod = Tripod::resumed(frame);
        }
        Ok(())
    }

    fn watch(&mut self) -> Result<u8, String> {
        let Watched { job, photos, once, every, .. } = self.watched;
        if !once {
            let line = say!(language(), "cli-tripod-watching", folder = shown(photos), job = shown(job));
            note(&format!("{line}\n"));
        }
        loop {
            let mut news = News::Nothing;
            for picture in self.ready() {
                news = news.max(self.take(&picture));
                self.done.insert(picture.path.clone(), picture);
            }
            if *once {
                return Ok(self.verify(News::Place));
            }
            if news > News::Nothing {
                self.verify(news);
            }
            std::thread::sleep(*every);
        }
    }

    /// Pictures that are new and whole, in the order in which they came: what still grows holds up those behind it.
    fn ready(&mut self) -> Vec<Picture> {
        let now = pictures(self.watched.photos);
        let is_new = |p: &&Picture| self.done.get(&p.path) != Some(*p);
        let is_whole = |p: &&Picture| self.watched.once || self.before.get(&p.path) == Some(*p);
        let ready = now.iter().filter(is_new).take_while(is_whole).cloned().collect();
        self.before = now.into_iter().map(|p| (p.path.clone(), p)).collect();
        ready
    }

    /// Looks at a picture and keeps it where it shows the stand at rest.
    fn take(&mut self, picture: &Picture) -> News {
        let name = picture.path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        let (frame, sha256) = match self.memory.frame(&picture.path, &self.kit) {
            Ok(found) => found,
            Err(e) => {
                tell(&name, phrase!("moves-tripod-skipped", why = e.phrase()));
                return News::Nothing;
            }
        };
        let seen = self.tripod.next(frame, &self.kit);
        let Some(stands) = seen.stands() else {
            tell(&name, seen.phrase(&self.kit));
            return News::Nothing;
        };
        let ending = picture.path.extension().and_then(|e| e.to_str()).unwrap_or("jpg").to_lowercase();
        // What a logged verdict rests on stays, and each verdict of a watch with a log is logged.
        let older_stays = self.log.is_some();
        let photo = NewPhoto { sha256: &sha256, ending: &ending, step: self.watched.step, stands, older_stays };
        let bring = |to: &Path| std::fs::read(&picture.path).and_then(|bytes| write_durably(to, &bytes));
        match keep_newest(self.watched.job, &photo, bring) {
            Ok(kept) => {
                let seen = seen.phrase(&self.kit);
                tell(&name, phrase!("cli-tripod-kept", seen = seen, kept = kept.phrase()));
                match kept {
                    KeptNewest::First(_) => News::Place,
                    KeptNewest::Instead(_) => News::Photo,
                    KeptNewest::OlderStays(_) | KeptNewest::Already(_) => News::Nothing,
                }
            }
            Err(e) => {
                complain(&e.say(language()));
                News::Nothing
            }
        }
    }

    /// Measures the job again, and shows what there is to do where that is news; gives the exit code.
    fn verify(&mut self, news: News) -> u8 {
        let measured = verify_watching(self.watched.job, &self.options, &self.memory, &mut |_| ());
        let shown = measured.map_err(|e| e.say(language())).and_then(|record| {
            if news == News::Place || self.shown != Some(record.verdict) {
                self.show(&record)?;
            }
            Ok(record.verdict.exit_code())
        });
        shown.unwrap_or_else(|message| {
            complain(&message);
            super::codes::UNREADABLE
        })
    }

    fn show(&mut self, record: &JobRecord) -> Result<(), String> {
        // Nobody sees a verdict that could still be left out.
        if let Some(log) = &self.log {
            let (_, words) = logged::add(log, &[record], "verify")?;
            note(&words);
        }
        self.shown = Some(record.verdict);
        say(&in_brief(record, language()), None);
        let Some(folder) = self.watched.report else { return Ok(()) };
        say(&write_report(folder, self.watched.job, record, self.watched.pdf_signer.as_ref())?, None);
        Ok(())
    }
}

/// What a look at the folder brought.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum News {
    Nothing,
    /// A newer photo of the same place.
    Photo,
    /// The stand stands elsewhere.
    Place,
}

/// One line about one of the camera's photos.
fn tell(photo: &str, what: Phrase) {
    say(&format!("{}\n", say!(language(), "cli-tripod-line", photo = photo, what = what)), None);
}

/// The verdict of where the stand stands now, and the one thing to do first.
fn in_brief(record: &JobRecord, language: Language) -> String {
    let after = record.positions.last().map_or(0, |p| p.after_move);
    let verdict = phrase!("cli-verdict", verdict = record.verdict.name());
    let reason = told(record.reason_phrase.as_ref(), &record.reason, language);
    let line = say!(language, "cli-tripod-verdict", move = after, verdict = verdict, reason = reason);
    let mut text = format!("  {line}\n");
    if let Some(first) = &record.first {
        let lead = say!(language, "cli-tripod-do-first");
        let indent = " ".repeat(lead.chars().count());
        text.push_str(&format!("  {lead} {}\n", told(first.words_phrase.as_ref(), &first.words, language)));
        let screw = first.screw.as_ref().map(|s| told(first.screw_phrase.as_ref(), s, language));
        let last = first.last_move.as_ref().map(|l| told(first.last_move_phrase.as_ref(), l, language));
        screw.iter().chain(&last).for_each(|line| text.push_str(&format!("  {indent} {line}\n")));
    }
    text
}

/// The pictures of a folder by the time at which they were written, then by name. Other files, hidden ones and
/// folders are none of the camera's photos.
fn pictures(folder: &Path) -> Vec<Picture> {
    let files = std::fs::read_dir(folder).into_iter().flatten().flatten();
    let mut all: Vec<Picture> = files
        .filter(|entry| is_picture(Path::new(&entry.file_name())))
        .filter_map(|entry| {
            let meta = entry.metadata().ok().filter(|m| m.is_file())?;
            Some(Picture { changed: meta.modified().ok(), path: entry.path(), bytes: meta.len() })
        })
        .collect();
    all.sort();
    all
}
