//! Markers do not lie to each other on their carrier as the kit file has them.

use std::collections::BTreeMap;

use nalgebra::Vector2;
use statrs::distribution::{ChiSquared, ContinuousCDF};

use super::{Case, Explanation, Finding, Rule, Touches};
use crate::marker::Role;
use crate::pose::{Extra, View};
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const CODE: &str = "marker-displaced";

pub(super) const RULE: Rule = Rule { name: CODE, codes: &[CODE], touches: Touches::Everything, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of(CODE, Level::Stop)];

/// A marker that was left out is seen elsewhere as a whole, not struck by a shadow or a cable, where its corners are
/// off alike: by that share of how far, and farther than this, px.
const ALIKE: f64 = 0.3;
const LEAST_PX: f64 = 0.5;

/// Findings that say what else makes places give way: then nothing more is said of places.
const ELSE: [&str; 8] = [
    "stand-moved-between-photos",
    "vehicle-moved-between-photos",
    "plate-not-seated",
    "plates-swapped",
    "print-scale-wrong",
    "camera-mismatch",
    "photo-zoomed",
    "floor-not-level",
];
/// Places that fit the kit give way like that by chance less often.
const CHANCE: f64 = 1e-6;

/// Whether a finding says what else it is, and stops as much.
pub(super) fn is_explained_by(finding: &Finding) -> bool {
    let stops = finding.level <= Level::Stop && finding.touches == Some(Touches::Everything);
    stops && ELSE.contains(&finding.code)
}

fn find(case: &Case) -> Vec<Finding> {
    let mut all = left_out(case);
    for (carrier, id, mm) in given_way(case) {
        all.entry(carrier).or_default().insert(id, mm);
    }
    for carrier in (0..case.kit.carriers.len()).filter(|k| is_strained(case, *k)) {
        all.entry(carrier).or_default();
    }
    all.into_iter().map(|(carrier, markers)| finding(case, carrier, &markers)).collect()
}

/// Whether the places of a carrier's markers, all together, gave way more than the kit allows.
fn is_strained(case: &Case, carrier: usize) -> bool {
    let Some(scene) = case.scene else { return false };
    let (sum, count) = scene.layout_strain(carrier);
    let chance = |n: usize| ChiSquared::new(n as f64).map_or(1.0, |d| d.sf(sum));
    case.kit.carriers[carrier].markers.len() > 1 && count > 0 && chance(count) < CHANCE
}

fn finding(case: &Case, carrier: usize, markers: &BTreeMap<u32, f64>) -> Finding {
    let ids: Vec<String> = markers.keys().map(u32::to_string).collect();
    let farthest = markers.values().fold(0.0, |a: f64, b| a.max(*b));
    let message = if ids.is_empty() {
        phrase!("findings-holder-deformed", body = case.body(carrier))
    } else {
        phrase!(
            "findings-marker-displaced",
            markers = ids.join(", "),
            body = case.body(carrier),
            mm = figure(farthest, 1)
        )
    };
    // Which of them are where they belong nothing tells, so that nothing is outside either.
    let name = &case.kit.carriers[carrier].name;
    Finding::new(CODE, Level::Stop, case.with_rivals(message)).on_carrier(name)
}

/// Markers whose place gave way to fit the photos: carrier, code, mm. Where something else explains the photos better, it
/// is named instead.
fn given_way(case: &Case) -> Vec<(usize, u32, f64)> {
    let one_marker = |e: &Extra| matches!(e, Extra::Displaced { .. } | Extra::MarkerOff { .. });
    if case.culprit(one_marker).is_none() {
        return Vec::new();
    }
    let of = |extra: &Extra, mm: f64| match extra {
        Extra::Displaced { carrier, id } => Some((*carrier, *id, mm)),
        _ => None,
    };
    case.suspects.iter().filter_map(|s| of(&s.extra, s.test.estimate.norm())).collect()
}

/// Markers that were left out though all of their corners are off alike, in all photos that show them, or two and more of a
/// carrier in one photo: by carrier, code and mm.
fn left_out(case: &Case) -> BTreeMap<usize, BTreeMap<u32, f64>> {
    let mut all: BTreeMap<usize, BTreeMap<u32, f64>> = BTreeMap::new();
    let by_photo = seen_elsewhere(case);
    for (carrier, body) in case.kit.carriers.iter().enumerate() {
        // A sheet on the floor is a body of its own, which may be kicked: another finding's.
        let placed = case.scene.is_some_and(|s| s.carriers[carrier].is_some());
        if body.role == Role::Floor || body.markers.len() < 2 || !placed {
            continue;
        }
        let of_body = || by_photo.iter().map(|photo| photo.iter().filter(move |((k, _), _)| *k == carrier));
        let mut add = |id: u32, mm: f64| {
            let farthest = all.entry(carrier).or_default().entry(id).or_default();
            *farthest = farthest.max(mm);
        };
        for photo in of_body() {
            let off: Vec<(u32, f64)> = photo.filter_map(|((_, id), off)| Some((*id, (*off)?))).collect();
            if off.len() > 1 {
                off.into_iter().for_each(|(id, mm)| add(id, mm));
            }
        }
        for id in body.markers.iter().map(|m| m.id) {
            let seen = of_body().flatten().filter(|((_, other), _)| *other == id).map(|(_, off)| *off);
            let off: Option<Vec<f64>> = seen.collect();
            off.into_iter().flatten().for_each(|mm| add(id, mm));
        }
    }
    all
}

/// A marker's carrier and code, and how far it is seen elsewhere, mm; `None` where it took part, or its corners are not off
/// alike.
type Seen = ((usize, u32), Option<f64>);

/// All markers of each photo that took part.
fn seen_elsewhere(case: &Case) -> Vec<Vec<Seen>> {
    let (Some(scene), Some(problem)) = (case.scene, case.problem) else { return Vec::new() };
    let taking = scene.photos.iter().zip(&problem.photos).filter_map(|(solved, photo)| Some((solved.as_ref()?, photo)));
    let by_photo = taking.map(|(solved, photo)| {
        let views = solved.views.iter().zip(&photo.views);
        let off = views.map(|(seen, view)| {
            let part = seen.used.contains(&true);
            ((view.carrier, view.id), if part { None } else { elsewhere_mm(case, view, &seen.residual_px) })
        });
        off.collect()
    });
    by_photo.collect()
}

/// How far a marker is seen from its place across the line of sight, mm; `None` where its corners are not off alike.
fn elsewhere_mm(case: &Case, view: &View, off_px: &[Vector2<f64>; 4]) -> Option<f64> {
    let mean = off_px.iter().sum::<Vector2<f64>>() / 4.0;
    let unlike = off_px.iter().map(|r| (r - mean).norm()).fold(0.0, f64::max);
    if mean.norm() < LEAST_PX || unlike > ALIKE * mean.norm() {
        return None;
    }
    let marker = &case.kit.carriers[view.carrier].markers[view.marker];
    let side_mm = marker.size_mm[0].max(marker.size_mm[1]);
    Some(mean.norm() * side_mm / view.side_px().max(1.0))
}
