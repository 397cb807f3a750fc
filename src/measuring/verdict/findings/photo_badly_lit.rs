//! Light that hides markers: glare, burnt-out white, darkness.

use nalgebra::Vector2;

use super::{Case, Explanation, Finding, PhotoFacts, Rule};
use crate::marker::{Marker, Role};
use crate::num::median;
use crate::verdict::Level;
use crate::words::{Phrase, phrase};

pub(super) const RULE: Rule = Rule {
    codes: &["photo-badly-lit"],
    title: "Badly lit",
    rationale: "A reflection swallows black, burnt-out white spills over its edges, darkness is noise: edges move or are lost.",
    method: "Glare: a marker that the solved poses put into the picture, facing the camera and large enough, was not \
             found or lost corners, while a neighbour on the same face was found and the stand cannot cover it, and more than .45 of its area is at full scale (print alone reaches .4). Burnt out: more than \
             a third of the area of half of the markers is at full scale. Dark: half of the markers have a contrast below 0.12; \
             or no marker was found and less than a hundredth of the picture is brighter than 48 of 255 levels. \
             All exact on the picture; a marker that somebody stands before is not glare.",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "photo-badly-lit",
    level: Level::Warn,
    title: "Badly lit",
    meaning: "Light spoils a photo: a lamp glares in a marker, white is burnt out, or it is too dark.",
    cause: "A lamp or the sun shines on a glossy print at the angle of the camera, the phone's flash was on, or the bay is dark.",
    look: "Enlarge the marker: white spots where black should be, or grey on grey.",
    remedy: "Take a step aside so that the reflection leaves the marker, switch the flash off, use matt paper and even light, and take it again.",
}];

/// Share of a marker's area at full scale.
const GLARE: f64 = 0.45;
const BURNT: f64 = 0.34;
/// White minus black, display levels / 255.
const DARK: f64 = 0.12;

fn find(case: &Case) -> Vec<Finding> {
    let seen = case.photos.iter().enumerate().filter(|(_, p)| !p.sightings.markers.is_empty());
    let found = seen.filter_map(|(j, p)| glare(case, j, p).or_else(|| burnt_out(p)).or_else(|| dark(p)));
    found.chain(case.photos.iter().filter_map(dark_without_markers)).collect()
}

fn finding(photo: &PhotoFacts, message: Phrase) -> Finding {
    Finding::new("photo-badly-lit", Level::Warn, message).in_photo(photo.file)
}

fn glare(case: &Case, j: usize, photo: &PhotoFacts) -> Option<Finding> {
    let light = photo.light?;
    let hit: Vec<String> = expected(case, j)
        .into_iter()
        .filter(|(marker, corners)| {
            !whole(photo, marker.id) && !behind_stand(case, j, marker, corners) && has_neighbour(case, photo, marker)
        })
        .filter(|(_, corners)| light.full_scale_share(corners).is_some_and(|share| share > GLARE))
        .map(|(marker, _)| marker.id.to_string())
        .collect();
    if hit.is_empty() {
        return None;
    }
    let (count, markers) = (hit.len(), hit.join(", "));
    Some(finding(photo, phrase!("findings-glare", count = count, markers = markers, photo = photo.file)))
}

/// Whether the stand, which stands between camera and vehicle, may cover a place.
fn behind_stand(case: &Case, j: usize, marker: &Marker, corners: &[Vector2<f64>; 4]) -> bool {
    let Some(k) = case.kit.with_role(Role::Target).next() else { return false };
    if case.kit.marker(marker.id).is_some_and(|(own, _)| own == k) {
        return false;
    }
    let stand = case.problem.map_or(&[][..], |p| &p.photos[j].views);
    let seen: Vec<&Vector2<f64>> = stand.iter().filter(|v| v.carrier == k).flat_map(|v| &v.corners_px).collect();
    let range = |axis: usize| {
        let (low, high) = seen.iter().fold((f64::MAX, f64::MIN), |(a, b), p| (a.min(p[axis]), b.max(p[axis])));
        // The panel is larger than what its markers span.
        let room = 0.25 * (high - low);
        (low - room)..(high + room)
    };
    let (across, down) = (range(0), range(1));
    corners.iter().any(|c| across.contains(&c.x) && down.contains(&c.y))
}

/// Whether the photo shows another marker of the same face within three of its
/// sizes: then this one is not simply covered with everything around it.
fn has_neighbour(case: &Case, photo: &PhotoFacts, marker: &Marker) -> bool {
    let Some((k, _)) = case.kit.marker(marker.id) else { return false };
    case.kit.carriers[k].markers.iter().any(|m| {
        m.id != marker.id
            && m.normal().dot(&marker.normal()) > 0.99
            && (m.centre_mm - marker.centre_mm).norm() < 3.0 * marker.size_mm[0]
            && whole(photo, m.id)
    })
}

fn whole(photo: &PhotoFacts, id: u32) -> bool {
    photo.sightings.markers.iter().any(|m| m.id == id && m.corner_valid.iter().all(|v| *v))
}

/// The markers that the solved poses put into a photo.
fn expected<'a>(case: &Case<'a>, j: usize) -> Vec<(&'a Marker, [Vector2<f64>; 4])> {
    let Some(scene) = case.scene else { return Vec::new() };
    let foreseen = scene.foreseen(case.kit, j, case.photos[j].size_px.map(|n| n as f64));
    foreseen.into_iter().map(|f| (f.marker, f.corners_px)).collect()
}

fn burnt_out(photo: &PhotoFacts) -> Option<Finding> {
    let light = photo.light?;
    let share = median(photo.sightings.markers.iter().filter_map(|m| light.full_scale_share(&m.corners_px)))?;
    (share > BURNT).then(|| finding(photo, phrase!("findings-burnt-out", photo = photo.file)))
}

fn dark(photo: &PhotoFacts) -> Option<Finding> {
    let contrast = median(photo.sightings.markers.iter().map(|m| m.contrast))?;
    (contrast < DARK).then(|| finding(photo, phrase!("findings-dark", photo = photo.file)))
}

/// So dark that no marker was found.
fn dark_without_markers(photo: &PhotoFacts) -> Option<Finding> {
    photo.clearness.filter(|c| photo.sightings.markers.is_empty() && c.is_dark())?;
    Some(finding(photo, phrase!("findings-dark-no-marker", photo = photo.file)))
}
