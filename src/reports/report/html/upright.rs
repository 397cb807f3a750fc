//! From the stored pixel grid to the picture as people see it.

use crate::photo::Orientation;

/// Turns stored pixels the way EXIF Orientation says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Upright {
    stored: [usize; 2],
    orientation: Orientation,
}

impl Upright {
    /// For a stored picture of that size; an unknown orientation counts as upright.
    pub(super) fn new(stored_width: u32, stored_height: u32, orientation: u8) -> Upright {
        let stored = [stored_width, stored_height].map(|side| side.max(1) as usize);
        Upright { stored, orientation: Orientation(orientation) }
    }

    /// Size of the upright picture, in stored pixels.
    pub(super) fn size(&self) -> [f64; 2] {
        let [width, height] = self.stored.map(|side| side as f64);
        if self.orientation.swaps_sides() { [height, width] } else { [width, height] }
    }

    /// A point of the stored grid (centre of the top-left pixel at (0, 0)) in
    /// the upright picture, whose top-left corner is at (0, 0).
    pub(super) fn point(&self, stored: [f64; 2]) -> [f64; 2] {
        self.orientation.upright(stored, self.stored).map(|at| at + 0.5)
    }

    /// A difference of two stored points, turned likewise.
    pub(super) fn vector(&self, stored: [f64; 2]) -> [f64; 2] {
        let (origin, tip) = (self.point([0.0, 0.0]), self.point(stored));
        [tip[0] - origin[0], tip[1] - origin[1]]
    }
}

#[cfg(test)]
#[allow(clippy::float_cmp, reason = "halves and integers are exact")]
mod tests {
    use super::Upright;

    /// Where the tag's definition puts the stored top-left pixel: row 0 and
    /// column 0 are these sides of the upright picture (Exif 2.32, 4.6.4 A).
    #[test]
    fn the_first_pixel_lands_where_exif_says() {
        let (w, h) = (40.0, 30.0);
        let first = |orientation| Upright::new(40, 30, orientation).point([0.0, 0.0]);
        assert_eq!(first(1), [0.5, 0.5]);
        assert_eq!(first(2), [w - 0.5, 0.5]);
        assert_eq!(first(3), [w - 0.5, h - 0.5]);
        assert_eq!(first(4), [0.5, h - 0.5]);
        assert_eq!(first(5), [0.5, 0.5]);
        assert_eq!(first(6), [h - 0.5, 0.5]);
        assert_eq!(first(7), [h - 0.5, w - 0.5]);
        assert_eq!(first(8), [0.5, w - 0.5]);
    }

    /// `image` turns whole pictures by the same tag: every pixel must land
    /// where this map puts it.
    #[test]
    fn pixels_land_where_the_image_library_puts_them() {
        let stored = image::GrayImage::from_fn(5, 3, |x, y| image::Luma([(10 * y + x) as u8]));
        for orientation in 1..=8 {
            let mut turned = image::DynamicImage::ImageLuma8(stored.clone());
            turned.apply_orientation(image::metadata::Orientation::from_exif(orientation).unwrap());
            let turned = turned.into_luma8();
            let map = Upright::new(5, 3, orientation);
            assert_eq!(map.size(), [f64::from(turned.width()), f64::from(turned.height())]);
            for (x, y, pixel) in stored.enumerate_pixels() {
                let [u, v] = map.point([f64::from(x), f64::from(y)]);
                assert_eq!(turned.get_pixel(u as u32, v as u32), pixel, "orientation {orientation}");
            }
        }
    }

    #[test]
    fn vectors_turn_with_the_picture() {
        assert_eq!(Upright::new(40, 30, 6).vector([1.0, 0.0]), [0.0, 1.0]);
        assert_eq!(Upright::new(40, 30, 1).vector([1.0, -2.0]), [1.0, -2.0]);
    }
}
