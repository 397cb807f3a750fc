//! A carrier's prints do not show their pattern where a flat one would.

use super::{Case, Explanation, Finding, Rule, Touches};
use crate::num::median;
use crate::verdict::words::figure;
use crate::verdict::{Level, Verdict};
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "print-not-flat", codes: &["print-not-flat"], touches: Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("print-not-flat", Level::Warn)];

/// From here on it is worth a word, share of a marker's side: 0.08 mm of one of 130 mm. Sheets taped to a wall show
/// 0.0004 to 0.001 of it.
const LEAST_SHARE: f64 = 0.0006;

fn find(case: &Case) -> Vec<Finding> {
    let not_proven = case.checks.iter().any(|c| c.verdict == Verdict::NotProven);
    let level = if not_proven { Level::Warn } else { Level::Note };
    (0..case.kit.carriers.len()).filter_map(|k| on_carrier(case, k, level)).collect()
}

/// Where half of what the photos show of a carrier is off its place.
fn on_carrier(case: &Case, k: usize, level: Level) -> Option<Finding> {
    let markers = case.photos.iter().flat_map(|photo| &photo.sightings.markers);
    let own = markers.filter_map(|seen| {
        let (_, marker) = case.kit.marker(seen.id).filter(|(carrier, _)| *carrier == k)?;
        let share = seen.warp_px.unwrap_or(0.0) / seen.side_px().max(1.0);
        Some((share, share * marker.size_mm[0].max(marker.size_mm[1])))
    });
    let (shares, sizes): (Vec<f64>, Vec<f64>) = own.unzip();
    median(shares).filter(|share| *share >= LEAST_SHARE)?;
    let size = figure(median(sizes)?, 2);
    let message = phrase!("findings-not-flat", body = case.body_first(k), size = size);
    Some(Finding::new("print-not-flat", level, message).on_carrier(&case.kit.carriers[k].name))
}
