//! One job from folder to record.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};

use rayon::prelude::*;

use super::judge::judge;
use super::series;
use crate::folder::JobFolder;
use crate::job::error::Error;
use crate::job::opening::{Opened, Options};
use crate::job::photos::{PhotoMemory, looks};
use crate::record::{AttemptRecord, JobRecord, PhotoLook};
use crate::words::Phrase;

/// Verifies the job in a folder.
///
/// # Errors
/// An input that cannot be read or decoded; everything else is a verdict.
pub fn verify(path: &Path, options: &Options) -> Result<JobRecord, Error> {
    verify_and(path, options, |_, _| ()).map(|(record, ())| record)
}

/// The same for who also wants something of the opened job: `take` gets its
/// folder and each photo's SHA-256 in the job's order, so that files and photos
/// are opened and read once.
///
/// # Errors
/// As [`verify`].
pub fn verify_and<T>(
    path: &Path,
    options: &Options,
    take: impl FnOnce(&JobFolder, &[&str]) -> T,
) -> Result<(JobRecord, T), Error> {
    fenced(path, || {
        let opened = Opened::read(path, options)?;
        let digests: Vec<&str> = opened.photos.iter().map(|photo| photo.sha256.as_str()).collect();
        let taken = take(&opened.folder, &digests);
        Ok((judge(opened), taken))
    })
}

/// Work on one job. A fault of the program there is that job's error: it ends
/// neither the other jobs nor the page.
fn fenced<T>(path: &Path, work: impl FnOnce() -> Result<T, Error>) -> Result<T, Error> {
    catch_unwind(AssertUnwindSafe(work)).unwrap_or_else(|_| Err(Error::Fault(path.to_path_buf())))
}

/// The same for a page that verifies after every photo: what was found in known
/// bytes is remembered (they are read and hashed again), and what each photo
/// shows on its own is told before anything is adjusted.
///
/// # Errors
/// As [`verify`].
pub fn verify_watching(
    path: &Path,
    options: &Options,
    memory: &PhotoMemory,
    told: &mut dyn FnMut(Vec<PhotoLook>),
) -> Result<JobRecord, Error> {
    fenced(path, || {
        let opened = Opened::read_with(path, options, |photos| memory.look(photos))?;
        told(looks(&opened));
        Ok(judge(opened))
    })
}

/// What became of earlier attempts beside a job that was just verified: each
/// one's own verdict, and whether anything moved since. Attempts that can't be
/// read are left out; empty where none can be compared.
pub fn attempts_beside(
    own: &Path,
    record: &JobRecord,
    earlier: &[PathBuf],
    options: &Options,
    memory: &PhotoMemory,
) -> Vec<AttemptRecord> {
    let read = |path: &Path| Opened::read_with(path, options, |photos| memory.look(photos)).ok();
    let opened: Vec<Option<Opened>> =
        std::iter::once(own).chain(earlier.iter().map(PathBuf::as_path)).map(read).collect();
    let jobs: Vec<Option<&Opened>> = opened.iter().map(Option::as_ref).collect();
    let others = jobs[1..].par_iter().map(|job| Some(judge((*job)?.clone())));
    let others: Vec<Option<JobRecord>> = others.collect();
    let alone: Vec<Option<&JobRecord>> =
        std::iter::once(Some(record)).chain(others.iter().map(Option::as_ref)).collect();
    let attempts = series::attempts(&jobs, 0);
    if attempts.len() < 2 {
        return Vec::new();
    }
    let beside = series::standing_alike(&jobs, &attempts, 0);
    attempt_records(&jobs, &alone, &attempts, &beside)
}

/// Verifies several jobs. Attempts of one series in which nothing moved are
/// adjusted together, and each record lists the attempts.
///
/// # Errors
/// By job: an input that cannot be read or decoded.
pub fn verify_all<P: AsRef<Path> + Sync>(paths: &[P], options: &Options) -> Vec<Result<JobRecord, Error>> {
    let one = |path: &P| {
        let opened = Opened::read(path.as_ref(), options)?;
        let record = judge(opened.clone());
        Ok((opened, record))
    };
    let read: Vec<Result<(Opened, JobRecord), Error>> =
        paths.par_iter().map(|p| fenced(p.as_ref(), || one(p))).collect();
    let jobs: Vec<Option<&Opened>> = read.iter().map(|r| Some(&r.as_ref().ok()?.0)).collect();
    let alone: Vec<Option<&JobRecord>> = read.iter().map(|r| Some(&r.as_ref().ok()?.1)).collect();
    let with_others = |own: usize| fenced(paths[own].as_ref(), || Ok(in_series(&jobs, &alone, own)));
    let records: Vec<Result<Option<JobRecord>, Error>> = (0..jobs.len()).into_par_iter().map(with_others).collect();
    read.into_iter().zip(records).map(|(read, record)| Ok(record?.unwrap_or(read?.1))).collect()
}

/// The record of a job with further attempts; `None` where it has none, or could not be opened.
fn in_series(jobs: &[Option<&Opened>], alone: &[Option<&JobRecord>], own: usize) -> Option<JobRecord> {
    let attempts = series::attempts(jobs, own);
    if attempts.len() < 2 {
        return None;
    }
    let others = series::standing_alike(jobs, &attempts, own);
    let alike: Vec<&Opened> = others.iter().filter(|(_, why)| why.is_none()).filter_map(|(i, _)| jobs[*i]).collect();
    let mut record = if alike.is_empty() { alone[own]?.clone() } else { judge(series::joined(jobs[own]?, &alike)) };
    record.attempts = attempt_records(jobs, alone, &attempts, &others);
    Some(record)
}

/// The attempts in their order; `others` says of each but the own one why it stands apart.
fn attempt_records(
    jobs: &[Option<&Opened>],
    alone: &[Option<&JobRecord>],
    attempts: &[usize],
    others: &[(usize, Option<Phrase>)],
) -> Vec<AttemptRecord> {
    let one = |i: &usize| {
        let apart = others.iter().find(|(k, _)| k == i).map(|(_, why)| why);
        Some(series::attempt_record(jobs[*i]?, alone[*i]?, apart))
    };
    attempts.iter().filter_map(one).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_fault_in_one_job_is_that_jobs_error() {
        let names: Vec<&str> = Vec::new();
        let ended = fenced(Path::new("bay/7"), || Ok(names[usize::from(names.is_empty()) + 3]));
        let told = ended.unwrap_err().to_string();
        assert!(told.contains("bay/7"), "{told}");
        assert!(fenced(Path::new("bay/8"), || Ok(5)).is_ok_and(|n| n == 5));
    }
}
