//! A carrier's prints do not show their pattern where a flat one would.

use super::{Case, Explanation, Finding, Rule, Touches};
use crate::num::median;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "print-not-flat", codes: &["print-not-flat"], touches: Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("print-not-flat", Level::Warn)];

/// From here on it is worth a word, share of a marker's side: 0.13 mm of one of 130 mm. Sheets taped to a wall show
/// 0.0002 to 0.0015 of it; flat ones, rendered by night, up to 0.0007.
const LEAST_SHARE: f64 = 0.001;

fn find(case: &Case) -> Vec<Finding> {
    let level = case.level_of_lost_precision();
    let bent: Vec<(usize, f64)> =
        (0..case.kit.carriers.len()).filter_map(|k| Some((k, off_its_place(case, k)?))).collect();
    let worst = bent.iter().map(|(_, size)| *size).fold(0.0, f64::max);
    let size = figure(worst, 2);
    match bent[..] {
        [] => Vec::new(),
        [(k, _)] => {
            let message = phrase!("findings-not-flat", body = case.body_first(k), size = size);
            vec![Finding::new("print-not-flat", level, message).on_carrier(&case.kit.carriers[k].name)]
        }
        _ => {
            let message = phrase!("findings-prints-not-flat", count = bent.len(), size = size);
            vec![Finding::new("print-not-flat", level, message)]
        }
    }
}

/// How far a carrier's prints are off, mm, where half of what the photos show of it is off by enough for a word.
fn off_its_place(case: &Case, k: usize) -> Option<f64> {
    let markers = case.photos.iter().flat_map(|photo| &photo.sightings.markers);
    let own = markers.filter_map(|seen| {
        let (_, marker) = case.kit.marker(seen.id).filter(|(carrier, _)| *carrier == k)?;
        let share = seen.warp_px.unwrap_or(0.0) / seen.side_px().max(1.0);
        Some((share, share * marker.size_mm[0].max(marker.size_mm[1])))
    });
    let (shares, sizes): (Vec<f64>, Vec<f64>) = own.unzip();
    median(shares).filter(|share| *share >= LEAST_SHARE)?;
    median(sizes)
}
