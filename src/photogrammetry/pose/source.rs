//! What an uncertainty comes from.

/// Where a part of the uncertainty comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Source {
    /// Noise of the corners in the pictures, and of their places in the print as far as photos agree about it.
    Image,
    /// How well a camera (by index) is calibrated.
    Calibration(usize),
    /// Focal length of one photo.
    Focal(usize),
    /// Principal point of one photo.
    Centre(usize),
    /// Edge offset of one photo.
    Edge(usize),
    /// How the camera turned while one photo's rows were read.
    Turn(usize),
    /// Where markers sit on their carriers, and how they are turned there.
    Layout,
    /// Sizes of the printed markers.
    Scale,
}
