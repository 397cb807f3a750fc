//! An adjustment of board photos: what it knows at any moment, and how well it fits.

use super::seen::BoardPhoto;
use super::state::{Spread, State};
use super::target::Target;

/// One adjustment at work.
#[derive(Debug, Clone)]
pub(super) struct Adjustment<'a> {
    pub(super) target: &'a Target,
    pub(super) photos: Vec<&'a BoardPhoto>,
    pub(super) state: State,
    pub(super) spread: Spread,
    /// Noise found over noise stated by the detector.
    pub(super) noise: f64,
    /// Weight of every element, 0 to 1.
    pub(super) weights: Vec<Vec<f64>>,
    /// What the lens's bend within a marker leaves of its precision, 0 to 1.
    pub(super) trust: Vec<Vec<f64>>,
    /// Lens parameters that are not adjusted.
    pub(super) held: [bool; 9],
    /// The board is taken as printed and flat: a first approach needs no more,
    /// and is many times faster.
    pub(super) rigid_board: bool,
}

/// How well an adjustment fits.
#[derive(Debug, Clone, Copy)]
pub(super) struct Misfit {
    /// Weighted sum of squared whitened residuals, noise factor taken out.
    pub(super) sum: f64,
    /// Coordinates that count.
    pub(super) rows: f64,
}
