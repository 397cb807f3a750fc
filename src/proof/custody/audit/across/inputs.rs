//! A kit, a set-up sheet or a camera file that one job has otherwise than those before and after it.
//!
//! A kit is surveyed again, a sheet has a new issue, a camera is fitted anew: from then on all jobs have the new file.
//! Few jobs in a row with another file under that name, and the same one before and after them, are a lead: somebody may have
//! changed it for them. A kit's serial number belongs to its name; two kits without one that take turns look so too.

use std::collections::HashMap;
use std::hash::RandomState;

use time::OffsetDateTime;
use time::format_description::well_known::Rfc3339;

use super::numbers::hashed;
use crate::record::JobRecord;
use crate::words::{Phrase, phrase};

/// So many jobs in a row, at most.
const FEW: usize = 3;

/// The files that are compared.
const ROLES: [&str; 3] = ["kit", "setup", "camera"];

/// A job with a file of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Odd {
    /// The job before it, and it.
    pub(super) jobs: [usize; 2],
    role: &'static str,
}

impl Odd {
    pub(super) fn message(&self) -> Phrase {
        phrase!("evidence-file-unlike-neighbours", role = self.role)
    }
}

/// One job's file: when, which line, and a number of its bytes.
type Use = (i64, u32, u64);

/// All files of an archive by role and name.
#[derive(Default)]
pub(super) struct Index {
    uses: HashMap<(usize, u64), Vec<Use>>,
}

impl Index {
    /// `numbers` gives texts their numbers.
    pub(super) fn add(&mut self, job: usize, record: &JobRecord, numbers: &RandomState) {
        let taken = record.context.taken.as_deref().and_then(|t| OffsetDateTime::parse(t, &Rfc3339).ok());
        let Some(taken) = taken else { return };
        for (role, name) in ROLES.iter().enumerate() {
            let mut inputs = record.inputs.iter().filter(|i| i.role == *name);
            let (Some(input), None) = (inputs.next(), inputs.next()) else { continue };
            let name = match role {
                0 => hashed(numbers, &(&record.context.kit, record.context.kit_upkeep.as_ref().map(|u| &u.serial))),
                1 => hashed(numbers, &record.context.setup),
                _ => hashed(numbers, &record.photos.iter().find_map(|p| p.camera.as_ref())),
            };
            let digest = hashed(numbers, &input.sha256);
            self.uses.entry((role, name)).or_default().push((taken.unix_timestamp(), job as u32, digest));
        }
    }

    /// The jobs whose file is another one than that of the jobs on both sides.
    pub(super) fn odd(self) -> Vec<Odd> {
        let mut found: Vec<Odd> = Vec::new();
        for ((role, _), mut uses) in self.uses {
            uses.sort_unstable();
            found.extend(odd_ones(&uses).map(|jobs| Odd { jobs, role: ROLES[role] }));
        }
        found.sort_unstable_by_key(|odd| (odd.jobs[1], odd.role));
        found
    }
}

/// Lines of jobs in runs of few that lie between others with one and the same file, each with that of the job before the run.
fn odd_ones(uses: &[Use]) -> impl Iterator<Item = [usize; 2]> {
    let runs: Vec<&[Use]> = uses.chunk_by(|a, b| a.2 == b.2).collect();
    let between: Vec<[usize; 2]> = runs
        .windows(3)
        .filter(|w| w[0][0].2 == w[2][0].2 && w[1].len() <= FEW && w[1].len() < w[0].len().max(w[2].len()))
        .flat_map(|w| w[1].iter().map(|(_, job, _)| [w[0][w[0].len() - 1].1 as usize, *job as usize]))
        .collect();
    between.into_iter()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn found(files: &str) -> Vec<usize> {
        let uses: Vec<Use> = files.bytes().enumerate().map(|(n, file)| (n as i64, n as u32, file.into())).collect();
        odd_ones(&uses).map(|jobs| jobs[1]).collect()
    }

    #[test]
    fn few_between_many_are_odd_and_a_new_issue_is_not() {
        assert_eq!(found("aaaabaaa"), [4]);
        assert_eq!(found("aabbaa"), [] as [usize; 0], "as many as before and after: which of them is odd?");
        assert_eq!(found("aaaabbaaaacaa"), [4, 5, 10]);
        assert!(found("aaaabbbbbb").is_empty() && found("b").is_empty() && found("ab").is_empty());
        assert!(found("aaaaabbbbaaaaa").is_empty());
    }
}
