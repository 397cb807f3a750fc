//! What an adjustment would say if everything stood where it is thought to
//! stand: the covariance before anyone takes a photo.

use super::link::Start;
use super::scene::Scene;
use super::views::Problem;
use super::work::{Options, Work};
use crate::geom::{Camera, Carrier, Pose, World};

/// What is presumed of photos that nobody has taken yet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Presumed {
    /// The a-posteriori variance of unit weight.
    pub variance: f64,
    /// How far the hand turns about each axis while rows are read, in units of what the camera file states
    /// ([`super::SolvedPhoto::turn_ratio`]).
    pub turn_ratio: f64,
}

impl Default for Presumed {
    /// Corners as noisy as is stated, and a hand that does not turn.
    fn default() -> Self {
        Presumed { variance: 1.0, turn_ratio: 0.0 }
    }
}

/// The scene of a problem whose poses are given, linearised there: no search
/// and no iteration. Where the corners lie does not matter, only how well each
/// is known. With `on_floor` the floor sheets must lie in the world's x-y plane.
///
/// `None` where the equations leave something undetermined.
pub fn expect(
    problem: &Problem,
    photos: &[Option<Pose<Camera, World>>],
    carriers: &[Option<Pose<World, Carrier>>],
    on_floor: bool,
    presumed: &Presumed,
) -> Option<Scene> {
    let start = Start {
        photos: photos.to_vec(),
        carriers: carriers.to_vec(),
        second: vec![None; carriers.len()],
        alternatives: vec![Vec::new(); carriers.len()],
        on_floor,
    };
    let mut work = Work::new(problem, &start, &Options::default());
    work.refine_unknowns();
    // Taken as known instead of estimated.
    work.variance = presumed.variance.max(1.0);
    work.weigh_tremor(Some(presumed.turn_ratio))?;
    let linear = work.linearized()?;
    work.redundancy = work.redundancy_of(&linear);
    work.scene_of(linear, vec![false; carriers.len()])
}
