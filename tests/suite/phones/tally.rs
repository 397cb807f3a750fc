//! What a pipeline's jobs add up to.

use std::collections::BTreeMap;

use baywitness::synth::Preset;

use super::job::{Job, QUANTITIES};
use crate::detect_support::Score;

/// All jobs of a pipeline.
#[derive(Default)]
pub(super) struct Tally {
    corners: Score,
    jobs: Vec<Job>,
}

impl Tally {
    pub(super) fn of(jobs: impl Iterator<Item = Job>) -> Self {
        let mut tally = Tally { corners: Score::default(), jobs: jobs.collect() };
        for job in &tally.jobs {
            tally.corners.join(&job.corners);
        }
        tally
    }

    pub(super) fn wrongly_within(&self) -> usize {
        self.jobs.iter().map(|j| j.wrongly_within).sum()
    }

    pub(super) fn found_share(&self) -> f64 {
        self.corners.found as f64 / self.corners.shown.max(1) as f64
    }

    /// Findings of level stop or void by code, and in how many jobs.
    fn serious(&self) -> String {
        let mut by_code: BTreeMap<&str, usize> = BTreeMap::new();
        for code in self.jobs.iter().flat_map(|j| &j.serious) {
            *by_code.entry(code).or_default() += 1;
        }
        let all: Vec<String> = by_code.iter().map(|(code, n)| format!("{code} {n}")).collect();
        if all.is_empty() { "none".to_owned() } else { all.join(", ") }
    }

    fn quantity(&self, index: usize) -> (usize, usize, f64) {
        let all: Vec<(f64, bool)> = self.jobs.iter().filter_map(|j| j.errors[index]).collect();
        let rms = (all.iter().map(|(z, _)| z * z).sum::<f64>() / all.len().max(1) as f64).sqrt();
        (all.iter().filter(|(_, holds)| *holds).count(), all.len(), rms)
    }

    fn median_u95(&self) -> f64 {
        let mut all: Vec<f64> = self.jobs.iter().filter_map(|j| j.u95_distance_mm).collect();
        all.sort_by(f64::total_cmp);
        all.get(all.len() / 2).copied().unwrap_or(f64::NAN)
    }

    /// Checks of all jobs that are within, outside and not proven.
    fn checks(&self) -> String {
        [0, 1, 2].map(|i| self.jobs.iter().map(|j| j.checks[i]).sum::<usize>().to_string()).join(", ")
    }
}

/// The pipelines as a table.
pub(super) fn table(tallies: &[(Preset, Tally)]) -> String {
    let mut text = String::from(
        "| pipeline | markers found | strays | corner RMS px | corner error / u | outward px | U95 distance mm | stop or void | \
         checks within, outside, not_proven | wrongly within |\n|---|---|---|---|---|---|---|---|---|---|\n",
    );
    for (preset, t) in tallies {
        let stopped = t.jobs.iter().filter(|j| !j.serious.is_empty()).count();
        text += &format!(
            "| {} | {} of {} | {} | {:.4} | {:.2} | {:+.4} | {:.2} | {stopped} of {} | {} | {} |\n",
            preset.name(),
            t.corners.found,
            t.corners.shown,
            t.jobs.iter().map(|j| j.strays).sum::<usize>(),
            t.corners.rms(),
            t.corners.normalized(),
            t.corners.outward(),
            t.median_u95(),
            t.jobs.len(),
            t.checks(),
            t.wrongly_within(),
        );
    }
    for (preset, t) in tallies {
        text += &format!("\n{}: stop or void {}", preset.name(), t.serious());
    }
    text += &format!(
        "\n\n95 % intervals that hold, and RMS(error / u):\n\n| pipeline | {} | all |\n",
        QUANTITIES.join(" | ")
    );
    text += &format!("|---{}|\n", "|---".repeat(QUANTITIES.len() + 1));
    for (preset, t) in tallies {
        let each: Vec<_> = (0..QUANTITIES.len()).map(|q| t.quantity(q)).collect();
        let cells: Vec<String> = each.iter().map(|(held, n, rms)| format!("{held} of {n}, {rms:.2}")).collect();
        let held: usize = each.iter().map(|e| e.0).sum();
        let n: usize = each.iter().map(|e| e.1).sum();
        let square: f64 = each.iter().map(|e| e.2 * e.2 * e.1 as f64).sum();
        let rms = (square / n.max(1) as f64).sqrt();
        text += &format!("| {} | {} | {held} of {n}, {rms:.2} |\n", preset.name(), cells.join(" | "));
    }
    text
}
