//! The photo was compressed before, and a carrier's markers were not with it: they may have been put in since.

use super::{Case, Explanation, Finding, PhotoFacts, Rule, Touches};
use crate::detect::{Coefficients, Share};
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "compression-differs", codes: &["compression-differs"], touches: Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("compression-differs", Level::Warn)];

/// A carrier's share of the earlier compression that the other markers show; honest ones have 1.
const LACKS: f64 = 0.35;
/// How well the share must be known: so many standard uncertainties between it and a half.
const SURE: f64 = 3.0;
/// Fewer markers of the carrier, and of the others, say nothing.
const LEAST_OWN: usize = 2;
const LEAST_OTHERS: usize = 4;

fn find(case: &Case) -> Vec<Finding> {
    case.photos.iter().flat_map(|photo| of_photo(case, photo)).collect()
}

fn of_photo(case: &Case, photo: &PhotoFacts) -> Vec<Finding> {
    // What is told of all is told first: most photos were compressed once, and nothing follows.
    if together(photo.coefficients.iter()).and_then(|all| all.earlier()).is_none() {
        return Vec::new();
    }
    (0..case.kit.carriers.len()).filter_map(|k| put_in(case, photo, k)).collect()
}

fn put_in(case: &Case, photo: &PhotoFacts, k: usize) -> Option<Finding> {
    let markers = photo.sightings.markers.iter().zip(photo.coefficients);
    let is_own = |id: u32| case.kit.marker(id).is_some_and(|(carrier, _)| carrier == k);
    let (own, others): (Vec<_>, Vec<_>) = markers.partition(|(marker, _)| is_own(marker.id));
    if own.len() < LEAST_OWN || others.len() < LEAST_OTHERS {
        return None;
    }
    let [own, others] = [own, others].map(|all| together(all.into_iter().map(|(_, c)| c)));
    let share = others?.earlier()?.share_of(&own?)?;
    if !lacks(share) {
        return None;
    }
    let share = figure(share.value.max(0.0), 2);
    let message = phrase!("findings-compression-differs", body = case.body_first(k), photo = photo.file, share = share);
    Some(
        Finding::new("compression-differs", Level::Warn, message)
            .in_photo(photo.file)
            .on_carrier(&case.kit.carriers[k].name),
    )
}

/// Whether markers with this share were put in after the earlier compression.
fn lacks(share: Share) -> bool {
    share.value < LACKS && share.value + SURE * share.u < 0.5
}

fn together<'a>(mut all: impl Iterator<Item = &'a Coefficients>) -> Option<Coefficients> {
    let first = all.next()?.clone();
    Some(all.fold(first, Coefficients::with))
}
