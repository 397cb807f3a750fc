//! Sampled jobs of one to five moves.

use baywitness::geom::rad;
use baywitness::job::Doubles;
use baywitness::marker::{Kit, Role};
use nalgebra::{Vector3, Vector6};

use crate::sampled_bay::{At, Bay, Flaw, Noise, Sample, flawed};

/// A job whose stand was moved, with what is true of it.
pub(crate) struct Moved {
    /// Its kit is the working kit: the stand where it stands now, then where it stood.
    pub(crate) sample: Sample,
    /// The stand's bodies by position, the last one first.
    pub(crate) doubles: Doubles,
    /// Index of the stand in the kit.
    pub(crate) stand: usize,
    /// Where it really stood, the first position first.
    pub(crate) places: Vec<At>,
}

/// What happens between moves: where a carrier is from a move on.
pub(crate) type Meanwhile<'a> = &'a (dyn Fn(u32, &str, At) -> At + Sync);

/// A job's plan: how its stand goes and from where it is photographed.
#[derive(Debug, Clone)]
pub(crate) struct Course {
    /// By move: the stand's step since the first position, its own axes, mm and rad.
    pub(crate) steps: Vec<Vector6<f64>>,
    /// By further photo: after which move, and from where.
    pub(crate) photos: Vec<(u32, Vector3<f64>)>,
}

impl Course {
    /// `moves` moves, one photo after each but `last` after the last.
    pub(crate) fn draw(moves: u32, last: usize, seed: u64) -> Self {
        let mut noise = Noise::new(seed ^ 0x60_7e5);
        let mut at = Vector6::zeros();
        let (mut steps, mut photos) = (Vec::new(), Vec::new());
        for n in 1..=moves {
            // Smaller from move to move, as a stand is brought to its place.
            let size = 1.0 / f64::from(n);
            let (mm, turn) = (noise.vector(15.0 * size), noise.vector(rad(0.5) * size));
            at += Vector6::new(mm.x, mm.y, mm.z, turn.x, turn.y, turn.z);
            steps.push(at);
            for _ in 0..if n == moves { last } else { 1 } {
                let side = if noise.uniform() < 0.5 { -1.0 } else { 1.0 };
                let across = side * (1400.0 + 1100.0 * noise.uniform());
                photos.push((n, Vector3::new(6900.0 + 1300.0 * noise.uniform(), across, 1550.0)));
            }
        }
        Course { steps, photos }
    }
}

/// Draws a job: the first photos as in `bay`, then those of the course.
pub(crate) fn draw(bay: &Bay, course: &Course, seed: u64, meanwhile: Meanwhile) -> Moved {
    let first = crate::sampled_bay::stations(bay).len();
    let from = |i: usize| course.photos[if bay.tripod { 0 } else { i }].1;
    let bay = Bay { further: (0..course.photos.len()).map(from).collect(), ..bay.clone() };
    let after = |photo: usize| photo.checked_sub(first).map_or(0, |i| course.photos[i].0);
    let step = |n: u32| n.checked_sub(1).map_or_else(Vector6::zeros, |i| course.steps[i as usize]);
    let place = |photo: usize, name: &str, pose: At| {
        let n = after(photo);
        if name == "stand" { pose.moved(&step(n)) } else { meanwhile(n, name, pose) }
    };
    let mut sample = flawed(&bay, seed, &Flaw { place: &place, ..Flaw::default() });
    let moves = course.steps.len() as u32;
    let (doubles, stand) = positions(&sample.kit, moves);
    for (photo, view) in sample.photos.iter_mut().enumerate() {
        doubles.assign(view, Some(doubles.state((moves - after(photo)) as usize, 0)));
    }
    sample.after_move = (0..sample.photos.len()).map(after).collect();
    let body = sample.bodies[stand];
    sample.kit = doubles.kit.clone();
    Moved { doubles, stand, places: (0..=moves).map(|n| body.moved(&step(n))).collect(), sample }
}

fn positions(kit: &Kit, moves: u32) -> (Doubles, usize) {
    let numbers: Vec<u32> = (0..=moves).rev().collect();
    (Doubles::of_positions(kit, &[], &numbers), kit.with_role(Role::Target).next().unwrap())
}

impl Moved {
    /// The stand's body after so many moves.
    pub(crate) fn body(&self, after: usize) -> usize {
        let position = self.places.len() - 1 - after;
        self.doubles.body(self.stand, self.doubles.state(position, 0))
    }
}
