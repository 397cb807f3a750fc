//! The kit taken apart: every marker a body of its own.

use nalgebra::{DMatrix, DVector, Vector3};
use rayon::prelude::*;

use super::Error;
use crate::camera::Profile;
use crate::geom::{self, Pose, World};
use crate::marker::{Carrier, Kit, Marker, Role};
use crate::pose::{self, BODY, PhotoView, Problem, Scene, SolvedPhoto, adjust, adjust_from, adjust_near};

/// How a marker's own size differs from what the printer does to all, 1 sigma
/// (common practice, no source).
const U_OWN_SIZE: f64 = 3e-4;
/// 1 sigma of the common factor of all sizes where lengths say what it is.
pub(super) const U_FREE_SCALE: f64 = 0.03;

/// A photo with its camera's index.
#[derive(Debug, Clone, Copy)]
pub(super) struct Shot<'a> {
    pub(super) photo: &'a super::SurveyPhoto,
    pub(super) camera: usize,
}

/// Markers that hang together, in one frame.
#[derive(Debug, Clone)]
pub(super) struct Cluster {
    pub(super) ids: Vec<u32>,
    pub(super) world_from_marker: Vec<Pose<World, geom::Marker>>,
    /// Found size over stated size minus one.
    pub(super) stretch: Vec<f64>,
    /// [`BODY`] rows for each marker: step in the marker's own frame, relative size.
    pub(super) covariance: DMatrix<f64>,
    /// How they move with the common factor that the kit file states for all
    /// sizes, for one of its standard uncertainties; zero with lengths.
    pub(super) by_scale: DVector<f64>,
    /// By shot; `None`: not linked.
    pub(super) photos: Vec<Option<SolvedPhoto>>,
    /// Markers for which two poses fit equally well.
    pub(super) ambiguous: Vec<u32>,
    /// A-posteriori variance of unit weight, and its degrees of freedom.
    pub(super) variance: f64,
    pub(super) degrees_of_freedom: f64,
    /// Whether the common scale was left to measured lengths.
    pub(super) free_scale: bool,
}

impl Cluster {
    pub(super) fn index(&self, id: u32) -> Option<usize> {
        self.ids.iter().position(|i| *i == id)
    }
}

/// First poses of photos, by shot, and markers, by id asked for.
#[derive(Debug, Clone)]
pub(super) struct Near {
    pub(super) photos: Vec<Option<Pose<geom::Camera, World>>>,
    pub(super) markers: Vec<Option<Pose<World, geom::Carrier>>>,
}

/// Adjusts the markers with these ids. `free_scale`: sizes say nothing of the
/// common scale.
pub(super) fn adjust_apart(
    kit: &Kit,
    ids: &[u32],
    cameras: &[&Profile],
    shots: &[Shot],
    free_scale: bool,
    near: Option<Near>,
) -> Result<Cluster, Error> {
    let bodies: Vec<Carrier> = ids.iter().filter_map(|id| kit.marker(*id).map(|(_, m)| body(m))).collect();
    let loose = Kit {
        name: kit.name.clone(),
        u_layout_mm: 0.0,
        u_turn_deg: 0.0,
        u_scale_relative: if free_scale { U_FREE_SCALE } else { kit.u_scale_relative },
        u_aspect_relative: kit.u_aspect_relative,
        serial: None,
        survey_due: None,
        carriers: bodies,
        layout: None,
    };
    let photos = shots.iter().map(|s| PhotoView::from_sightings(&loose, s.camera, &s.photo.sightings)).collect();
    let problem = Problem { kit: &loose, cameras: cameras.to_vec(), photos };
    let options = pose::Options { one_floor: false, drop_corners: true };
    let found = match near {
        None => from_best_start(&problem, &options),
        // Where leaving corners out tears a few photos apart, all of them take part.
        Some(near) => adjust_near(&problem, near.photos.clone(), near.markers.clone(), &options)
            .or_else(|_| {
                let all = pose::Options { drop_corners: false, ..options };
                adjust_near(&problem, near.photos, near.markers, &all)
            })
            .map(|scene| (scene, Vec::new())),
    };
    let (scene, unsettled) = found.map_err(|e| Error::NotMeasured(e.phrase()))?;
    let found = scene.bodies();
    let known = |k: &usize| scene.knows(*k) && !unsettled.contains(k);
    let kept: Vec<usize> = (0..loose.carriers.len()).filter(known).collect();
    let rows: Vec<usize> = kept.iter().flat_map(|k| (0..BODY).map(move |i| BODY * k + i)).collect();
    let open = |k: &usize| scene.carriers[*k].is_some() && (scene.ambiguous[*k] || unsettled.contains(k));
    let ambiguous = (0..loose.carriers.len()).filter(open);
    Ok(Cluster {
        ids: kept.iter().map(|k| loose.carriers[*k].markers[0].id).collect(),
        world_from_marker: kept
            .iter()
            .filter_map(|k| scene.carriers[*k].map(|p| Pose::from_isometry(*p.isometry())))
            .collect(),
        stretch: kept.iter().map(|k| found.stretch[*k]).collect(),
        covariance: DMatrix::from_fn(rows.len(), rows.len(), |i, j| found.covariance[(rows[i], rows[j])]),
        by_scale: DVector::from_fn(rows.len(), |i, _| if free_scale { 0.0 } else { found.by_scale[rows[i]] }),
        ambiguous: ambiguous.map(|k| loose.carriers[k].markers[0].id).collect(),
        photos: scene.photos,
        variance: scene.variance,
        degrees_of_freedom: scene.degrees_of_freedom,
        free_scale,
    })
}

/// Photos that are tried as the first one: from another one a marker may be linked by the other one of its two poses.
const MOST_STARTS: usize = 6;
/// Solutions that are less than this times as likely as the best one (twice the
/// logarithm: one in two thousand) are none.
const RIVAL: f64 = 15.0;
/// A corner's misfit, squared, in units of its variance, from which on it may be left out: one in 100,000 good ones
/// (chi squared with two degrees of freedom).
const LEFT_OUT: f64 = 23.0;
/// A marker that is turned by more than this against the others is another solution, rad.
const TURNED: f64 = 0.02;

/// The best adjustment of several starts, with the carriers for which another start found a place that is as likely. However
/// well the first one fits: how well it should, nobody knows who does not know how flat the prints are.
fn from_best_start(problem: &Problem, options: &pose::Options) -> Result<(Scene, Vec<usize>), pose::Error> {
    let first = adjust(problem, options);
    let stride = problem.photos.len().div_ceil(MOST_STARTS).max(1);
    let starts: Vec<usize> = (0..problem.photos.len()).step_by(stride).collect();
    let others: Vec<Scene> =
        starts.into_par_iter().filter_map(|start| adjust_from(problem, start, options).ok()).collect();
    let linked = |s: &Scene| s.photos.iter().flatten().count();
    let mut best = first;
    for scene in &others {
        let better = best
            .as_ref()
            .map_or(true, |b| linked(scene) > linked(b) || linked(scene) == linked(b) && less_likely(b, scene) > 0.0);
        if better {
            best = Ok(scene.clone());
        }
    }
    let best = best?;
    let rivals = others.iter().filter(|s| linked(s) == linked(&best) && less_likely(s, &best) < RIVAL);
    let mut unsettled: Vec<usize> = rivals.flat_map(|rival| turned(&best, rival)).collect();
    unsettled.sort_unstable();
    unsettled.dedup();
    Ok((best, unsettled))
}

/// Twice the logarithm of how many times less likely a solution is than another: the noise is the photos' own, so what
/// decides is the ratio of misfits, in which a corner that was left out counts as what it was left out for at
/// least (Torr and Zisserman 2000: a truncated quadratic); else a wrong solution would win by leaving out what speaks against it.
fn less_likely(s: &Scene, than: &Scene) -> f64 {
    let used = |s: &Scene| s.photos.iter().flatten().flat_map(|p| &p.views).flat_map(|v| v.used).filter(|u| *u).count();
    let most = used(s).max(used(than));
    let misfit = |s: &Scene| s.variance * (s.degrees_of_freedom + LEFT_OUT * (most - used(s)) as f64);
    s.degrees_of_freedom.max(than.degrees_of_freedom).max(1.0) * (misfit(s) / misfit(than)).ln()
}

/// Carriers that two solutions place differently against the largest group
/// that both place alike.
fn turned(a: &Scene, b: &Scene) -> Vec<usize> {
    let both: Vec<_> = (0..a.carriers.len()).filter_map(|k| Some((k, a.carriers[k]?, b.carriers[k]?))).collect();
    let alike = |of: usize, with: usize| {
        let way =
            |p: &Pose<World, geom::Carrier>, q: &Pose<World, geom::Carrier>| p.rotation().inverse() * q.rotation();
        let ((_, p, q), (_, r, s)) = (&both[of], &both[with]);
        way(p, r).angle_to(&way(q, s)) < TURNED
    };
    let group = |of: usize| (0..both.len()).filter(|with| alike(of, *with)).count();
    let Some(middle) = (0..both.len()).max_by_key(|of| group(*of)) else { return Vec::new() };
    (0..both.len()).filter(|with| !alike(middle, *with)).map(|with| both[with].0).collect()
}

/// A marker as a carrier of its own: its centre the origin, right x, up y.
fn body(marker: &Marker) -> Carrier {
    let own = Marker {
        centre_mm: Vector3::zeros(),
        right: Vector3::x(),
        up: Vector3::y(),
        u_centre_mm: None,
        u_turn_deg: None,
        u_size_mm: Some(marker.u_size_mm.unwrap_or(U_OWN_SIZE * marker.size_mm[0])),
        ..marker.clone()
    };
    Carrier {
        name: format!("marker {}", marker.id),
        role: Role::Target,
        u_seating_mm: 0.0,
        u_seating_deg: [0.0; 3],
        on_centreline: false,
        markers: vec![own],
    }
}
