//! How a stored picture is turned for people.

/// How the stored picture must be turned for people (EXIF tag 0x0112), 1 to 8;
/// 1 is upright.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Orientation(
    /// The tag's value, 1 to 8.
    pub u8,
);

impl Orientation {
    /// Stored upright.
    pub const UPRIGHT: Orientation = Orientation(1);

    /// From the tag's value; `None` outside 1 to 8.
    pub fn from_tag(value: u32) -> Option<Self> {
        u8::try_from(value).ok().filter(|v| (1..=8).contains(v)).map(Orientation)
    }

    /// Whether width and height change places.
    pub fn swaps_sides(self) -> bool {
        matches!(self.0, 5..=8)
    }

    /// Where a stored pixel position (u right, v down, pixel centres at whole
    /// numbers) lands in the upright picture; `stored` is the stored width and
    /// height. EXIF 2.32, table "Orientation": the tag names the side on which
    /// the stored first row and first column are seen.
    pub fn upright(self, [u, v]: [f64; 2], stored: [usize; 2]) -> [f64; 2] {
        let [right, bottom] = stored.map(|side| side as f64 - 1.0);
        match self.0 {
            2 => [right - u, v],
            3 => [right - u, bottom - v],
            4 => [u, bottom - v],
            5 => [v, u],
            6 => [bottom - v, u],
            7 => [bottom - v, right - u],
            8 => [v, right - u],
            _ => [u, v],
        }
    }
}
