//! Job folders: what is found where, and what a job may not reach.

#![allow(
    clippy::unwrap_used,
    clippy::print_stdout,
    reason = "a test may stop where its own helper fails, and say that it skips"
)]

use std::path::{Path, PathBuf};

use baywitness::folder::{JobFolder, Models};

/// Independent job folders with known truth, kept outside the project.
fn shared_jobs() -> Option<Vec<PathBuf>> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../shared/photos/bay/jobs");
    let Ok(entries) = std::fs::read_dir(&folder) else {
        println!("skipped: {} is absent", folder.display());
        return None;
    };
    let jobs = entries.filter_map(|e| Some(e.ok()?.path())).filter(|p| p.join("job.toml").exists());
    Some(jobs.collect())
}

#[test]
fn independent_job_folders_open() {
    let Some(jobs) = shared_jobs() else { return };
    assert!(!jobs.is_empty());
    for job in jobs {
        let opened = JobFolder::open(&job, &Models::embedded()).unwrap();
        assert!(opened.photos.len() >= 2, "{}", job.display());
        assert_eq!(opened.inputs.len(), 4);
        assert!(opened.candidates.is_empty());
    }
}
