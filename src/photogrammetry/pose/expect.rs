//! What an adjustment would say if everything stood where it is thought to
//! stand: the covariance before anyone takes a photo.

use super::link::Start;
use super::scene::Scene;
use super::views::Problem;
use super::work::{Options, Work};
use crate::geom::{Camera, Carrier, Pose, World};

/// The scene of a problem whose poses are given, linearised there: no search
/// and no iteration. Where the corners lie does not matter, only how well each
/// is known: the a-posteriori `variance` of unit weight is presumed (1 before
/// anyone takes a photo), and a hand that does not turn while it takes one. With `on_floor` the floor sheets must
/// lie in the world's x-y plane.
///
/// `None` where the equations leave something undetermined.
pub fn expect(
    problem: &Problem,
    photos: &[Option<Pose<Camera, World>>],
    carriers: &[Option<Pose<World, Carrier>>],
    on_floor: bool,
    variance: f64,
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
    work.variance = variance.max(1.0);
    // No turn was found yet: what a steady hand's photos would state.
    work.weigh_tremor()?;
    let linear = work.linearized()?;
    work.redundancy = work.redundancy_of(&linear);
    work.scene_of(linear, vec![false; carriers.len()])
}
