//! Where the markers' numbers stand in a photo, so that none covers another.

use super::upright::Upright;
use crate::record::{MarkerRecord, PhotoRecord};
use crate::words::{Language, say};

/// Height of a number's box, thousandths of the picture's longer side: between
/// the sizes that the style sheet gives it on a desktop and on a phone.
const TEXT_HEIGHT: f64 = 17.0;

/// One number: the middle of its baseline on the upright picture.
pub(super) struct Name {
    pub(super) at: [f64; 2],
    pub(super) words: String,
}

/// All numbers of a photo.
pub(super) struct Names {
    pub(super) placed: Vec<Name>,
    /// Ids for which there was no room.
    pub(super) left_out: Vec<u32>,
}

/// Left, top, right, bottom.
type Box4 = [f64; 4];

/// Places the largest markers' numbers first: above, below, right or left.
pub(super) fn names(photo: &PhotoRecord, map: &Upright, language: Language) -> Names {
    let [width, height] = map.size();
    let tall = TEXT_HEIGHT * width.max(height) / 1000.0;
    let mut markers: Vec<(&MarkerRecord, Box4)> = photo
        .markers
        .iter()
        .map(|marker| (marker, bounds(marker.corners_px.map(|p| map.point(p)))))
        .filter(|(_, b)| b.iter().all(|v| v.is_finite()))
        .collect();
    markers.sort_by(|(_, a), (_, b)| area(b).total_cmp(&area(a)));
    let mut taken: Vec<Box4> = Vec::new();
    let mut names = Names { placed: Vec::new(), left_out: Vec::new() };
    for (marker, bounds) in markers {
        let words = words(marker, photo.unused_because.is_some(), language);
        let wide = words.chars().count() as f64 * tall * 0.62;
        let inside = |b: &Box4| b[0] >= 0.0 && b[1] >= 0.0 && b[2] <= width && b[3] <= height;
        let free = |b: &Box4| inside(b) && !taken.iter().any(|other| overlap(b, other));
        match places(&bounds, wide, tall).into_iter().find(free) {
            Some(place) => {
                taken.push(place);
                let at = [f64::midpoint(place[0], place[2]), place[3] - 0.22 * tall];
                names.placed.push(Name { at, words });
            }
            None => names.left_out.push(marker.id),
        }
    }
    names.left_out.sort_unstable();
    names
}

/// Where the whole photo was not used, that need not be said at each marker.
fn words(marker: &MarkerRecord, unused_photo: bool, language: Language) -> String {
    let number = marker.id.to_string();
    match (&marker.carrier, marker.used || unused_photo) {
        (None, _) => say!(language, "report-marker-unknown", number = number),
        (_, true) => number,
        (_, false) => say!(language, "report-marker-not-used", number = number),
    }
}

fn bounds(corners: [[f64; 2]; 4]) -> Box4 {
    let start = [f64::INFINITY, f64::INFINITY, f64::NEG_INFINITY, f64::NEG_INFINITY];
    corners.iter().fold(start, |b, p| [b[0].min(p[0]), b[1].min(p[1]), b[2].max(p[0]), b[3].max(p[1])])
}

fn area(b: &Box4) -> f64 {
    (b[2] - b[0]) * (b[3] - b[1])
}

fn places(b: &Box4, wide: f64, tall: f64) -> [Box4; 4] {
    let (x, y, gap) = (f64::midpoint(b[0], b[2]), f64::midpoint(b[1], b[3]), tall * 0.25);
    let row = |middle: f64, top: f64| [middle - wide / 2.0, top, middle + wide / 2.0, top + tall];
    [
        row(x, b[1] - gap - tall),
        row(x, b[3] + gap),
        row(b[2] + gap + wide / 2.0, y - tall / 2.0),
        row(b[0] - gap - wide / 2.0, y - tall / 2.0),
    ]
}

fn overlap(a: &Box4, b: &Box4) -> bool {
    a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3]
}

#[cfg(test)]
mod tests {
    use super::*;

    fn photo(markers: usize, apart: f64) -> PhotoRecord {
        let marker = |i: usize| {
            let (x, y, side) = (500.0 + apart * i as f64, 500.0, 40.0);
            serde_json::json!({"id": i, "carrier": "stand", "used": true, "residual_px": null,
                "corners_px": [[x, y], [x + side, y], [x + side, y + side], [x, y + side]]})
        };
        let markers: Vec<_> = (0..markers).map(marker).collect();
        serde_json::from_value(serde_json::json!({"file": "a.jpg", "camera": null, "width_px": 4000, "height_px": 3000,
            "orientation": 1, "rms_px": null, "focal_px": null, "edge_offset_px": 0.0, "markers": markers}))
        .unwrap()
    }

    fn named(markers: usize, apart: f64) -> Names {
        names(&photo(markers, apart), &Upright::new(4000, 3000, 1), Language::English)
    }

    #[test]
    fn numbers_with_room_stand_above_their_markers() {
        let names = named(5, 300.0);
        assert_eq!(names.placed.len(), 5);
        assert!(names.placed.iter().all(|name| name.at[1] < 500.0));
    }

    #[test]
    fn crowded_numbers_are_left_out_and_listed() {
        let names = named(12, 10.0);
        assert!(!names.left_out.is_empty());
        assert_eq!(names.placed.len() + names.left_out.len(), 12);
    }
}
