//! Photos linked over the carriers that they share: a first pose of everything.

use nalgebra::{Point3, Vector3};

use super::resection::{Candidate, candidates, misfit, pairs};
use super::views::Problem;
use crate::cores;
use crate::geom::{self, Camera, Carrier, Plane, Pose, World};
use crate::marker::Role;

/// Where everything stands before the adjustment.
#[derive(Debug, Clone)]
pub(super) struct Start {
    /// Photos that hang together; `None`: linked to none of the others.
    pub(super) photos: Vec<Option<Pose<Camera, World>>>,
    /// Carriers seen by linked photos.
    pub(super) carriers: Vec<Option<Pose<World, Carrier>>>,
    /// For carriers that allow a second solution in every photo: that solution.
    pub(super) second: Vec<Option<Pose<World, Carrier>>>,
    /// Each carrier's less likely poses.
    pub(super) alternatives: Vec<Vec<Pose<World, Carrier>>>,
    /// Whether the world's x-y plane is the floor.
    pub(super) on_floor: bool,
}

/// Candidates of every carrier in every photo.
type Table = Vec<Vec<Vec<Candidate>>>;

/// Links as many photos as possible. `None` where no photo shows anything.
pub(super) fn link(problem: &Problem) -> Option<Start> {
    let table = table(problem);
    let mut seeds: Vec<usize> = (0..problem.photos.len()).filter(|j| table[*j].iter().any(|c| !c.is_empty())).collect();
    seeds.sort_by_key(|j| std::cmp::Reverse(problem.photos[*j].views.len()));
    let linkable = seeds.len();
    // The richest photo as a rule links all; else the start that links most wins.
    let mut linked: Option<Linker> = None;
    for seed in seeds.into_iter().take(MOST_SEEDS) {
        let trial = Linker::from_seed(problem, &table, seed);
        let count = |l: &Linker| l.photos.iter().flatten().count();
        if linked.as_ref().is_none_or(|l| count(&trial) > count(l)) {
            linked = Some(trial);
        }
        if linked.as_ref().is_some_and(|l| count(l) == linkable) {
            break;
        }
    }
    let linked = linked?;
    Some(linked.finish())
}

/// Links what hangs together with one photo.
pub(super) fn link_from(problem: &Problem, first: usize) -> Option<Start> {
    let table = table(problem);
    table.get(first)?.iter().any(|c| !c.is_empty()).then(|| Linker::from_seed(problem, &table, first).finish())
}

fn table(problem: &Problem) -> Table {
    let carriers = problem.kit.carriers.len();
    let cells: Vec<(usize, usize)> =
        (0..problem.photos.len()).flat_map(|j| (0..carriers).map(move |k| (j, k))).collect();
    let one = |(j, k): &(usize, usize)| {
        let photo = &problem.photos[*j];
        candidates(photo, *k, &problem.kit.carriers[*k], &problem.cameras[photo.camera].lens)
    };
    let mut found = cores::map(&cells, one).into_iter();
    problem.photos.iter().map(|_| found.by_ref().take(carriers).collect()).collect()
}

/// A start from known poses: photos and carriers that hang together with the
/// first known photo. `None` where none is known.
pub(super) fn near(
    problem: &Problem,
    photos: Vec<Option<Pose<Camera, World>>>,
    carriers: Vec<Option<Pose<World, Carrier>>>,
) -> Option<Start> {
    let shows = |j: usize| problem.photos[j].views.iter().map(|v| v.carrier).filter(|k| carriers[*k].is_some());
    let first = (0..photos.len()).find(|j| photos[*j].is_some() && shows(*j).next().is_some())?;
    let mut linked = vec![false; photos.len()];
    let mut seen = vec![false; carriers.len()];
    linked[first] = true;
    loop {
        for j in (0..photos.len()).filter(|j| linked[*j]) {
            shows(j).for_each(|k| seen[k] = true);
        }
        let more: Vec<usize> =
            (0..photos.len()).filter(|j| !linked[*j] && photos[*j].is_some() && shows(*j).any(|k| seen[k])).collect();
        if more.is_empty() {
            break;
        }
        more.into_iter().for_each(|j| linked[j] = true);
    }
    Some(Start {
        photos: photos.into_iter().zip(linked).map(|(p, l)| p.filter(|_| l)).collect(),
        second: vec![None; carriers.len()],
        alternatives: vec![Vec::new(); carriers.len()],
        carriers: carriers.into_iter().zip(seen).map(|(c, s)| c.filter(|_| s)).collect(),
        on_floor: false,
    })
}

/// Photos that are tried as the first one.
const MOST_SEEDS: usize = 6;
/// Photos over which a carrier's solutions compete.
const MOST_JUDGES: usize = 6;

struct Linker<'a> {
    problem: &'a Problem<'a>,
    table: &'a Table,
    photos: Vec<Option<Pose<Camera, World>>>,
    /// Up to four world poses of each carrier, best first.
    worlds: Vec<Vec<Pose<World, Carrier>>>,
}

impl<'a> Linker<'a> {
    fn from_seed(problem: &'a Problem<'a>, table: &'a Table, seed: usize) -> Self {
        let mut linker = Linker {
            problem,
            table,
            photos: vec![None; problem.photos.len()],
            worlds: vec![Vec::new(); problem.kit.carriers.len()],
        };
        linker.photos[seed] = Some(Pose::identity());
        linker.place_carriers(seed);
        while let Some((photo, pose)) = linker.next_photo() {
            linker.photos[photo] = Some(pose);
            linker.place_carriers(photo);
        }
        linker
    }

    /// The unlinked photo that shares most corners with the linked ones, and its best pose.
    fn next_photo(&self) -> Option<(usize, Pose<Camera, World>)> {
        let shared = |j: usize| -> usize {
            let views = &self.problem.photos[j].views;
            views.iter().filter(|v| !self.worlds[v.carrier].is_empty()).count()
        };
        let mut order: Vec<usize> =
            (0..self.photos.len()).filter(|j| self.photos[*j].is_none() && shared(*j) > 0).collect();
        order.sort_by_key(|j| std::cmp::Reverse(shared(*j)));
        order.into_iter().find_map(|j| Some((j, self.photo_pose(j)?)))
    }

    /// The pose of a photo that explains all shared carriers best: each pair of
    /// solutions proposes one, the other carriers vote.
    fn photo_pose(&self, j: usize) -> Option<Pose<Camera, World>> {
        let mut best: Option<(f64, Pose<Camera, World>)> = None;
        for (k, worlds) in self.worlds.iter().enumerate() {
            for candidate in &self.table[j][k] {
                for world_from_carrier in worlds {
                    let camera_from_world = candidate.camera_from_carrier * world_from_carrier.inverse();
                    let misfit = self.photo_misfit(j, &camera_from_world);
                    if best.as_ref().is_none_or(|b| misfit < b.0) {
                        best = Some((misfit, camera_from_world));
                    }
                }
            }
        }
        best.map(|b| b.1)
    }

    /// How badly the known carriers fit a photo at a pose. Wide: chained poses
    /// of far carriers are off by many pixels before the adjustment.
    fn photo_misfit(&self, j: usize, camera_from_world: &Pose<Camera, World>) -> f64 {
        const WIDE_PX: f64 = 60.0;
        let photo = &self.problem.photos[j];
        let lens = &self.problem.cameras[photo.camera].lens;
        self.worlds
            .iter()
            .enumerate()
            .filter(|(k, worlds)| !worlds.is_empty() && photo.shows(*k))
            .map(|(k, worlds)| {
                let pairs = pairs(photo, k, &self.problem.kit.carriers[k]);
                let behind = pairs.len() as f64 * WIDE_PX * WIDE_PX;
                worlds
                    .iter()
                    .map(|w| misfit(&(*camera_from_world * *w), &pairs, lens, WIDE_PX).unwrap_or(behind))
                    .fold(behind, f64::min)
            })
            .sum()
    }

    /// World poses of every carrier that the newly linked photo shows: its
    /// solutions compete with the earlier ones over the linked photos.
    fn place_carriers(&mut self, new: usize) {
        let Some(camera_from_world) = self.photos[new] else { return };
        for k in 0..self.worlds.len() {
            if self.table[new][k].is_empty() {
                continue;
            }
            let mut all = self.worlds[k].clone();
            for candidate in &self.table[new][k] {
                let world = camera_from_world.inverse() * candidate.camera_from_carrier;
                if !all.iter().any(|w| w.rotation().angle_to(&world.rotation()) < 0.02) {
                    all.push(world);
                }
            }
            let mut found: Vec<_> = all.into_iter().map(|w| (self.carrier_misfit(k, &w), w)).collect();
            found.sort_by(|a, b| a.0.total_cmp(&b.0));
            found.truncate(4);
            self.worlds[k] = found.into_iter().map(|f| f.1).collect();
        }
    }

    fn carrier_misfit(&self, k: usize, world: &Pose<World, Carrier>) -> f64 {
        const WIDE_PX: f64 = 20.0;
        self.photos
            .iter()
            .enumerate()
            .filter(|(j, pose)| pose.is_some() && self.problem.photos[*j].shows(k))
            .take(MOST_JUDGES)
            .filter_map(|(j, pose)| {
                let photo = &self.problem.photos[j];
                let pairs = pairs(photo, k, &self.problem.kit.carriers[k]);
                let behind = pairs.len() as f64 * WIDE_PX * WIDE_PX;
                let lens = &self.problem.cameras[photo.camera].lens;
                pose.map(|c| misfit(&(c * *world), &pairs, lens, WIDE_PX).unwrap_or(behind))
            })
            .sum()
    }

    /// Whether no photo alone decides between a carrier's two solutions.
    fn open(&self, k: usize) -> bool {
        const UNDECIDED_PX2: f64 = 2.0;
        let shows = |j: usize| self.photos[j].is_some() && self.problem.photos[j].shows(k);
        (0..self.photos.len()).filter(|j| shows(*j)).all(|j| match self.table[j][k].as_slice() {
            [first, second, ..] => second.misfit_px2 - first.misfit_px2 < UNDECIDED_PX2,
            _ => false,
        })
    }

    fn finish(self) -> Start {
        let floor = floor_plane(self.problem, &self.worlds, &self.photos);
        // The floor becomes the x-y plane, the first sheet its origin.
        let new_from_old: Pose<World, World> = floor.as_ref().map_or_else(Pose::identity, |(plane, origin)| {
            let up = plane.normal.into_inner();
            let x = plane.along(&Vector3::x());
            let x = if x.norm() > 1e-3 { x } else { plane.along(&Vector3::y()) }.normalize();
            let old_from_new: Pose<World, World> = Pose::from_matrix(
                nalgebra::Matrix3::from_columns(&[x, up.cross(&x), up]),
                plane.foot_of(origin).coords,
            );
            old_from_new.inverse()
        });
        let carriers = self
            .worlds
            .iter()
            .enumerate()
            .map(|(k, worlds)| {
                let pose = new_from_old * *worlds.first()?;
                let flat = floor.is_some() && self.problem.kit.carriers[k].role == Role::Floor;
                Some(if flat { laid_flat(&pose) } else { pose })
            })
            .collect();
        let second = (0..self.worlds.len())
            .map(|k| self.worlds[k].get(1).filter(|_| self.open(k)).map(|w| new_from_old * *w))
            .collect();
        let alternatives =
            self.worlds.iter().map(|worlds| worlds.iter().skip(1).map(|w| new_from_old * *w).collect()).collect();
        let old_from_new = new_from_old.inverse();
        let photos = self.photos.iter().map(|p| p.map(|p| p * old_from_new)).collect();
        Start { photos, carriers, second, alternatives, on_floor: floor.is_some() }
    }
}

/// The floor from its sheets: through their centres where three or more are
/// spread out, else normal to the sheet solution that the others (and the
/// cameras above it) agree with. With a point on it.
fn floor_plane(
    problem: &Problem,
    worlds: &[Vec<Pose<World, Carrier>>],
    photos: &[Option<Pose<Camera, World>>],
) -> Option<(Plane, Point3<f64>)> {
    let sheets: Vec<usize> = problem.kit.with_role(Role::Floor).filter(|k| !worlds[*k].is_empty()).collect();
    let origin = Point3::from(worlds[*sheets.first()?][0].origin_mm());
    let centres: Vec<Point3<f64>> = sheets.iter().map(|k| Point3::from(worlds[*k][0].origin_mm())).collect();
    let normals = sheets.iter().flat_map(|k| worlds[*k].iter().map(|w| w.direction(&Vector3::z())));
    let mean = centres.iter().fold(Vector3::zeros(), |s, c| s + c.coords) / centres.len() as f64;
    let cameras: Vec<Vector3<f64>> = photos.iter().flatten().map(|p| p.inverse().origin_mm()).collect();
    let spread_normal = (centres.len() >= 3).then(|| normal_of_points(&centres, &mean)).flatten();
    let normal = spread_normal.unwrap_or_else(|| {
        // Each solution is a proposal; agreement in angle and coplanarity decides.
        let cost = |n: &Vector3<f64>| -> f64 {
            let angles: f64 = sheets
                .iter()
                .map(|k| worlds[*k].iter().map(|w| w.direction(&Vector3::z()).angle(n)).fold(9.0, f64::min))
                .sum();
            let heights: f64 = centres.iter().map(|c| ((c.coords - mean).dot(n) / 300.0).abs()).sum();
            angles + heights
        };
        normals.min_by(|a, b| cost(a).total_cmp(&cost(b))).unwrap_or_else(Vector3::z)
    });
    let above: f64 = cameras.iter().map(|c| (c - mean).dot(&normal)).sum();
    let normal = if above < 0.0 { -normal } else { normal };
    Some((Plane::through(&Point3::from(mean), &normal), origin))
}

/// Normal of the best plane through points; `None` where they lie on a line.
fn normal_of_points(points: &[Point3<f64>], mean: &Vector3<f64>) -> Option<Vector3<f64>> {
    let scatter = points.iter().fold(nalgebra::Matrix3::zeros(), |s, p| {
        let d = p.coords - mean;
        s + d * d.transpose()
    });
    let eigen = scatter.symmetric_eigen();
    let mut order = [0, 1, 2];
    order.sort_by(|a, b| eigen.eigenvalues[*a].total_cmp(&eigen.eigenvalues[*b]));
    let middle = eigen.eigenvalues[order[1]].max(0.0).sqrt();
    (middle > 150.0).then(|| eigen.eigenvectors.column(order[0]).into_owned())
}

/// The nearest pose on the floor with z up.
fn laid_flat(pose: &Pose<World, Carrier>) -> Pose<World, Carrier> {
    let x = pose.direction(&Vector3::x());
    let heading = x.y.atan2(x.x);
    let t = pose.origin_mm();
    let turn = geom::Attitude { yaw_deg: geom::deg(heading), ..Default::default() }.rotation();
    Pose::new(turn, Vector3::new(t.x, t.y, 0.0))
}
