//! What an uncertainty comes from.

use super::unknowns::NUISANCE;

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

impl Source {
    /// What the unknowns of one photo that have a prior come from, in their order.
    pub(super) fn of_photo(j: usize) -> [Source; NUISANCE] {
        let (centre, edge, turn) = (Source::Centre(j), Source::Edge(j), Source::Turn(j));
        [Source::Focal(j), centre, centre, edge, edge, turn, turn, turn]
    }
}
