//! A carrier's markers lack the noise that the rest of the photo has: they may have been put in.

use super::{Case, Explanation, Finding, PhotoFacts, Rule, Touches};
use crate::detect::Grain;
use crate::num::median;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "markers-without-noise", codes: &["markers-without-noise"], touches: Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("markers-without-noise", Level::Warn)];

/// A carrier's noise against that of the photo's other markers, the median of its own.
const SMOOTH: f64 = 0.4;
/// Fewer markers of the carrier, and of the others, say nothing.
const LEAST_OWN: usize = 2;
const LEAST_OTHERS: usize = 4;
/// Where the others have less noise than this, grey levels, none can be missed.
const LEAST_NOISE: f64 = 0.3;

fn find(case: &Case) -> Vec<Finding> {
    let carriers = case.kit.carriers.len();
    let each = case.photos.iter().flat_map(|photo| (0..carriers).map(move |k| (photo, k)));
    each.filter_map(|(photo, k)| smooth(case, photo, k)).collect()
}

fn smooth(case: &Case, photo: &PhotoFacts, k: usize) -> Option<Finding> {
    let (mut own, mut others): (Vec<&Grain>, Vec<&Grain>) = (Vec::new(), Vec::new());
    for (marker, grain) in photo.sightings.markers.iter().zip(photo.grain) {
        let Some(grain) = grain else { continue };
        let is_own = case.kit.marker(marker.id).is_some_and(|(carrier, _)| carrier == k);
        if is_own { own.push(grain) } else { others.push(grain) }
    }
    let colours: [fn(&Grain) -> Option<f64>; 2] = [|g| g.white, |g| g.black];
    let usual = colours.map(|noise| {
        let all: Vec<f64> = others.iter().filter_map(|g| noise(g)).collect();
        if all.len() < LEAST_OTHERS { None } else { median(all).filter(|m| *m >= LEAST_NOISE) }
    });
    // Of white and black what has more of its noise: put in is the marker, not one colour of it.
    let share = |grain: &&Grain| {
        let of = |c: usize| Some(colours[c](grain)? / usual[c]?);
        [of(0), of(1)].into_iter().flatten().reduce(f64::max)
    };
    let shares: Vec<f64> = own.iter().filter_map(share).collect();
    let share = median(shares.iter().copied()).filter(|s| shares.len() >= LEAST_OWN && *s < SMOOTH)?;
    let share = figure(share, 2);
    let message = phrase!("findings-without-noise", body = case.body_first(k), photo = photo.file, share = share);
    Some(
        Finding::new("markers-without-noise", Level::Warn, message)
            .in_photo(photo.file)
            .on_carrier(&case.kit.carriers[k].name),
    )
}
