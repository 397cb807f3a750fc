//! How many unknowns a photo has, and which stand where among them.

/// Unknowns of one photo: six of its pose, then focal factor, principal point
/// u and v, edge offset, how that grows for small markers, and how far the camera
/// turned about its x, y and z while rows were read.
pub(super) const PHOTO: usize = 14;
/// Those of them that have a prior.
pub(super) const NUISANCE: usize = 8;
/// The first of these, up to the turns, are alike in all photos of one station.
pub(super) const OF_STATION: usize = 5;
/// Where the turns begin among those with a prior.
pub(super) const TURN: usize = 5;
