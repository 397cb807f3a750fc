//! What somebody does to a picture to make it show something else.

use super::tone::Picture;

/// The picture with everything within these quadrilaterals (px) taken from another one of the same size.
pub(crate) fn put_in(mut picture: Picture, from: &Picture, markers: impl Iterator<Item = [[f64; 2]; 4]>) -> Picture {
    let (width, height) = (picture.width, picture.height);
    for corners in markers {
        let side = |i: usize, u: f64, v: f64| {
            let ([a, b], [c, d]) = (corners[i], corners[(i + 1) % 4]);
            (c - a) * (v - b) - (d - b) * (u - a)
        };
        let range = |axis: usize, most: usize| {
            let places = corners.map(|c| c[axis].clamp(0.0, most as f64 - 1.0));
            let low = places.iter().copied().fold(f64::MAX, f64::min);
            low as usize..places.iter().copied().fold(0.0, f64::max).ceil() as usize
        };
        for v in range(1, height) {
            for u in range(0, width) {
                let sides: [f64; 4] = std::array::from_fn(|i| side(i, u as f64, v as f64));
                if sides.iter().all(|s| *s >= 0.0) || sides.iter().all(|s| *s <= 0.0) {
                    picture.rgb[v * width + u] = from.rgb[v * width + u];
                }
            }
        }
    }
    picture
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_is_within_is_another_picture() {
        let plain = |level: u8| Picture { width: 40, height: 30, rgb: vec![[level; 3]; 1200] };
        let corners = [[10.0, 5.0], [25.0, 5.0], [25.0, 15.0], [10.0, 15.0]];
        let forged = put_in(plain(10), &plain(200), [corners, corners.map(|[u, v]| [u + 400.0, v])].into_iter());
        let taken = forged.rgb.iter().filter(|p| p[0] == 200).count();
        assert!((15 * 10..=16 * 11).contains(&taken), "{taken}");
        assert_eq!((forged.rgb[10 * 40 + 18][0], forged.rgb[10 * 40 + 30][0]), (200, 10));
    }
}
