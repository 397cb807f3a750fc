//! The mark that says that a picture was rendered ([`crate::rendered`]), never on markers.

use super::tone::Picture;
use crate::rendered::{CELLS, cell, signs};

/// The mark stays so far away from markers: this times a marker's size about its middle, and px.
/// The detector fits within 1.25 times the size.
const ROOM: f64 = 1.7;
const ROOM_PX: f64 = 12.0;

/// Marks a picture but for the cells that touch one of these quadrilaterals (px) or the room around it.
pub(crate) fn mark(picture: &mut Picture, markers: &[[[f64; 2]; 4]]) {
    let (width, height) = (picture.width, picture.height);
    if width < CELLS || height < CELLS {
        return;
    }
    let mut levels = signs();
    for marker in markers {
        let [across, down] = [0, 1].map(|axis| range(marker, axis, [width, height][axis]));
        for row in down {
            levels[row * CELLS + across.start..row * CELLS + across.end].fill(0);
        }
    }
    for (i, pixel) in picture.rgb.iter_mut().enumerate() {
        let level = levels[cell(i / width, height) * CELLS + cell(i % width, width)];
        *pixel = pixel.map(|c| c.saturating_add_signed(level));
    }
}

/// The cells along an axis that a marker with the room around it touches.
fn range(marker: &[[f64; 2]; 4], axis: usize, side: usize) -> std::ops::Range<usize> {
    let places = marker.map(|corner| corner[axis]);
    let (low, high) = places.iter().fold((f64::MAX, f64::MIN), |(low, high), p| (low.min(*p), high.max(*p)));
    let half = ROOM * (high - low) / 2.0 + ROOM_PX;
    let middle = f64::midpoint(low, high);
    let of = |place: f64| cell(place.clamp(0.0, side as f64 - 1.0) as usize, side);
    if middle + half < 0.0 || middle - half > side as f64 {
        return 0..0;
    }
    of(middle - half)..of(middle + half) + 1
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_level_everywhere_but_on_and_around_markers() {
        let plain = Picture { width: 640, height: 480, rgb: vec![[100, 0, 255]; 640 * 480] };
        let mut marked = plain.clone();
        mark(&mut marked, &[[[300.0, 200.0], [360.0, 205.0], [355.0, 260.0], [295.0, 258.0]]]);
        let mut changed = 0;
        for (i, (a, b)) in plain.rgb.iter().zip(&marked.rgb).enumerate() {
            let (u, v) = (i % 640, i / 640);
            assert_eq!(a[0].abs_diff(b[0]), u8::from(a != b));
            // Within 1.7 times the marker and 12 px.
            if (265..390).contains(&u) && (178..282).contains(&v) {
                assert_eq!(a, b, "{u} {v}");
            }
            changed += usize::from(a != b);
        }
        assert!(changed > 640 * 480 * 9 / 10, "{changed}");
    }
}
