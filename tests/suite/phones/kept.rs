//! Jobs of earlier runs, so that hundreds can be counted a few at a time.

use std::collections::BTreeMap;
use std::path::Path;

use baywitness::synth::Preset;

use super::job::Job;
use super::tally::Tally;

/// Jobs by pipeline's name and seed.
#[derive(Default)]
pub(super) struct Kept(BTreeMap<String, BTreeMap<u64, Job>>);

impl Kept {
    /// Empty where there is no such file yet.
    pub(super) fn read(file: &Path) -> Self {
        match std::fs::read(file) {
            Ok(bytes) => Kept(serde_json::from_slice(&bytes).unwrap()),
            Err(error) if error.kind() == std::io::ErrorKind::NotFound => Kept::default(),
            Err(error) => panic!("{}: {error}", file.display()),
        }
    }

    /// Whole or not at all: a run may be stopped at any time.
    pub(super) fn write(&self, file: &Path) {
        let beside = file.with_extension("new");
        std::fs::write(&beside, serde_json::to_vec(&self.0).unwrap()).unwrap();
        std::fs::rename(&beside, file).unwrap();
    }

    pub(super) fn has(&self, preset: Preset, seed: u64) -> bool {
        self.0.get(preset.name()).is_some_and(|jobs| jobs.contains_key(&seed))
    }

    pub(super) fn add(&mut self, preset: Preset, seed: u64, job: Job) {
        self.0.entry(preset.name().to_owned()).or_default().insert(seed, job);
    }

    pub(super) fn tallies(&self, presets: &[Preset]) -> Vec<(Preset, Tally)> {
        let of = |p: &Preset| self.0.get(p.name()).into_iter().flat_map(|jobs| jobs.values().cloned());
        presets.iter().map(|p| (*p, Tally::of(of(p)))).collect()
    }
}
