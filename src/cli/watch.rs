//! `baywitness watch DIR`: verifies every job below a folder as soon as its photos
//! have arrived, and again whenever they change.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::time::{Duration, SystemTime};

use super::anchors::AnchorsOption;
use super::codes::UNREADABLE;
use super::output::{complain, language, note};
use super::pdf_signer;
use super::tripod;
use super::verify::{self, worse};
use crate::custody::audit;
use crate::words::say;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(value_name = "DIR")]
    folder: PathBuf,
    #[arg(long, value_name = "DIR")]
    tripod: Option<PathBuf>,
    #[arg(long, value_name = "NAME", requires = "tripod")]
    step: Option<String>,
    #[arg(long, value_name = "DIR")]
    report: Option<PathBuf>,
    #[arg(long, value_name = "FILE", requires = "report")]
    sign_pdf: Option<PathBuf>,
    #[arg(long, value_name = "FILE", requires = "sign_pdf")]
    certificate: Option<PathBuf>,
    #[arg(long, value_name = "DIR")]
    log: Option<PathBuf>,
    #[command(flatten)]
    anchors: AnchorsOption,
    #[arg(long, value_name = "DIR")]
    models: Option<PathBuf>,
    #[arg(long, value_name = "S", default_value_t = 1.0, value_parser = seconds)]
    every: f64,
    #[arg(long, value_name = "N")]
    threads: Option<usize>,
    #[arg(long)]
    once: bool,
}

fn seconds(text: &str) -> Result<f64, String> {
    let fits = |s: &f64| (0.05..=3600.0).contains(s);
    text.parse().ok().filter(fits).ok_or_else(|| say!(language(), "verify-watch-every", text = text))
}

/// Names, sizes and times of a job's files.
type State = Vec<(PathBuf, u64, Option<SystemTime>)>;

/// Watches until it is interrupted.
pub(super) fn run(arguments: &Arguments) -> u8 {
    watch(arguments).unwrap_or_else(|message| {
        complain(&message);
        UNREADABLE
    })
}

fn watch(arguments: &Arguments) -> Result<u8, String> {
    if !arguments.folder.is_dir() {
        return Err(say!(language(), "verify-watch-no-folder", folder = named(&arguments.folder)));
    }
    if let Some(photos) = &arguments.tripod {
        return tripod::run(&tripod::Watched {
            job: &arguments.folder,
            photos,
            step: arguments.step.as_deref(),
            report: arguments.report.as_deref(),
            pdf_signer: pdf_signer::open(arguments.sign_pdf.as_deref(), arguments.certificate.as_deref())?,
            log: arguments.log.as_deref(),
            models: arguments.models.as_deref(),
            credentials: arguments.anchors.source()?,
            threads: arguments.threads,
            every: Duration::from_secs_f64(arguments.every),
            once: arguments.once,
        });
    }
    if !arguments.once {
        note(&format!("{}\n", say!(language(), "verify-watching", folder = named(&arguments.folder))));
    }
    let (mut seen, mut judged) = (BTreeMap::<PathBuf, State>::new(), BTreeMap::<PathBuf, State>::new());
    let mut code = 0;
    loop {
        for job in jobs(&arguments.folder) {
            let now = state(&job);
            // A photo that is still being copied changes until the next look.
            let still = arguments.once || seen.get(&job) == Some(&now);
            if still && judged.get(&job) != Some(&now) && !now.is_empty() {
                code = worse(code, verify_again(arguments, &job));
                judged.insert(job.clone(), now.clone());
            }
            seen.insert(job, now);
        }
        if arguments.once {
            return Ok(code);
        }
        std::thread::sleep(Duration::from_secs_f64(arguments.every));
    }
}

fn named(path: &Path) -> String {
    path.display().to_string()
}

fn verify_again(arguments: &Arguments, job: &Path) -> u8 {
    verify::run(verify::Arguments {
        moved: Vec::new(),
        more: Vec::new(),
        step: None,
        log: arguments.log.clone(),
        jobs: vec![job.to_path_buf()],
        json: None,
        private: false,
        sign_pdf: arguments.sign_pdf.clone(),
        certificate: arguments.certificate.clone(),
        report: arguments.report.clone(),
        anchors: arguments.anchors.clone(),
        #[cfg(feature = "sensor-pattern")]
        cameras: None,
        models: arguments.models.clone(),
        threads: arguments.threads,
    })
}

fn jobs(folder: &Path) -> Vec<PathBuf> {
    let found = audit::find(&[folder.to_path_buf()], &mut |path, why| {
        // What only looks like a job is for an audit to say, once.
        if let audit::Unread::System(e) = why {
            let why = e.to_string();
            complain(&say!(language(), "verify-unreadable-folder", folder = named(path), why = why));
        }
    });
    found.into_iter().filter(|f| f.sort == audit::Sort::Job).map(|f| f.path).collect()
}

/// The job's own files and its photos; empty while there is no photo.
fn state(job: &Path) -> State {
    let photos = entries(&job.join("photos"));
    if photos.is_empty() { photos } else { [entries(job), photos].concat() }
}

fn entries(folder: &Path) -> State {
    let files = std::fs::read_dir(folder).into_iter().flatten().flatten();
    let mut all: State = files
        .filter_map(|entry| {
            let meta = entry.metadata().ok().filter(|m| m.is_file())?;
            Some((entry.path(), meta.len(), meta.modified().ok()))
        })
        .collect();
    all.sort();
    all
}
