//! `baywitness drill`.

use std::path::{Path, PathBuf};

use super::codes::UNREADABLE;
use super::output::{cannot_write, complain, language, note, tell, write_file};
use crate::folder::write_durably;
use crate::record::DrillAnswer;
use crate::report::{drill_text, progress_html};
use crate::training::drill::{NewDrill, answer, make, mark};
use crate::words::{Figure, say};

/// What is typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[command(subcommand)]
    what: What,
}

#[derive(Debug, clap::Subcommand)]
enum What {
    New {
        #[arg(long, value_name = "N", value_parser = super::typed::whole::<u8, 0, 99>)]
        level: u8,
        #[arg(long, value_name = "K", default_value_t = 5)]
        count: usize,
        #[arg(long, value_name = "DIR")]
        out: PathBuf,
        #[arg(long, value_name = "S")]
        seed: Option<u64>,
    },
    Answer {
        dir: PathBuf,
        job: String,
        finding: String,
        #[arg(default_value = "")]
        way: String,
        #[arg(default_value = "", allow_negative_numbers = true)]
        size: String,
    },
    Mark {
        dir: PathBuf,
        #[arg(long, value_name = "NAME", default_value = "trainee")]
        trainee: String,
        #[arg(long, value_name = "FILE")]
        progress: Option<PathBuf>,
        #[arg(long, value_name = "DATE", value_parser = super::dates::date)]
        day: Option<time::Date>,
    },
}

/// Runs the command: 0 done, 2 unreadable or wrong.
pub(super) fn run(args: &Arguments) -> u8 {
    let done = match &args.what {
        What::New { level, count, out, seed } => {
            new(&NewDrill { level: *level, count: *count, seed: *seed, language: language() }, out)
        }
        What::Answer { dir, job, finding, way, size } => {
            let kept = answer(dir, job, finding, way, size).map_err(|e| e.words(language()));
            kept.map(|kept| tell(&(answered(&kept) + "\n"), None))
        }
        What::Mark { dir, trainee, progress, day } => mark_drill(dir, trainee, progress.as_deref(), *day),
    };
    match done {
        Ok(()) => 0,
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

/// What was kept, as it will be marked.
fn answered(kept: &DrillAnswer) -> String {
    let size = kept.size.map(|size| Figure::plain(size).say(language())).unwrap_or_default();
    let parts = [kept.finding.as_str(), kept.way.as_str(), size.as_str()];
    let parts: Vec<&str> = parts.into_iter().filter(|part| !part.is_empty()).collect();
    say!(language(), "training-answered", job = &kept.job, answer = parts.join(", "))
}

fn new(wanted: &NewDrill, out: &Path) -> Result<(), String> {
    let language = wanted.language;
    let rendering = |job: &str| say!(language, "training-rendering", job = job) + "\n";
    let made = make(wanted, out, &mut |job| note(&rendering(job))).map_err(|e| e.words(language))?;
    let folder = out.display().to_string();
    let told = say!(language, "training-made", folder = folder, jobs = wanted.count, words = made.words);
    let sealed = say!(language, "training-sealed", digest = made.commitment);
    tell(&format!("{told}\n{sealed}\n"), None);
    Ok(())
}

fn mark_drill(dir: &Path, trainee: &str, progress: Option<&Path>, day: Option<time::Date>) -> Result<(), String> {
    let language = language();
    let lost = |e: std::io::Error| {
        say!(language, "training-cannot-find", path = dir.display().to_string(), why = e.to_string())
    };
    let whole = std::path::absolute(dir).map_err(lost)?;
    let beside = whole.parent().unwrap_or(&whole).join("drills.jsonl");
    // A link that was named is followed; one that lies beside somebody else's folder leads nowhere.
    let at =
        progress.map_or_else(|| beside.clone(), |named| named.canonicalize().unwrap_or_else(|_| named.to_path_buf()));
    let day = day.unwrap_or_else(|| time::OffsetDateTime::now_utc().date());
    let marked = mark(dir, trainee, &day.to_string(), &at).map_err(|e| e.words(language))?;
    tell(&drill_text(&marked.mark, language), None);
    if !marked.level_sealed {
        tell(&(say!(language, "training-level-unsealed", level = u32::from(marked.mark.level)) + "\n"), None);
    }
    let page = progress.unwrap_or(&beside).with_extension("html");
    let html = progress_html(&marked.progress, language);
    if progress.is_some() {
        write_file(&page, html.as_bytes())?;
    } else {
        write_durably(&page, html.as_bytes()).map_err(|e| cannot_write(&page, &e))?;
    }
    drop(marked.lock);
    tell(&(say!(language, "training-progress-page", page = page.display().to_string()) + "\n"), None);
    Ok(())
}
