//! Two halves of the photos, surveyed apart: shapes must agree within what
//! both state.

use nalgebra::{DMatrix, DVector, Vector3};
use statrs::distribution::{ContinuousCDF, FisherSnedecor};

use super::apart::{Cluster, Near, Shot, adjust_apart};
use super::datum::attach;
use super::length::{Length, apply};
use super::shape::{Placed, joint_shape};
use super::surveyed::{Halves, Options};
use crate::camera::Profile;
use crate::geom::Pose;
use crate::marker::Kit;
use crate::pose::BODY;

/// Fewer photos in a half determine nothing that could contradict.
const LEAST: usize = 3;

/// `None` with too few photos, or where a half does not determine the shape.
pub(super) fn compare(
    kit: &Kit,
    cameras: &[&Profile],
    shots: &[Shot],
    options: &Options,
    clusters: &[Cluster],
    placed: &[Placed],
) -> Option<Halves> {
    let mut all = Comparison::default();
    let mut counts = [0; 2];
    for (c, cluster) in clusters.iter().enumerate() {
        let solved = shots.iter().zip(&cluster.photos);
        let taking: Vec<_> = solved.filter_map(|(s, p)| Some((*s, p.as_ref()?.camera_from_world))).collect();
        if taking.len() < 2 * LEAST {
            continue;
        }
        let carriers: Vec<usize> = placed.iter().filter(|p| p.cluster == c).map(|p| p.carrier).collect();
        let half = |which: usize| {
            // From the whole's poses: halves ask how far noise moves the
            // solution, not whether half of the photos would find it.
            let (part, poses): (Vec<Shot>, Vec<_>) = taking.iter().copied().skip(which).step_by(2).unzip();
            let markers = cluster.world_from_marker.iter().map(|p| Some(Pose::from_isometry(*p.isometry())));
            let near = Near { photos: poses.into_iter().map(Some).collect(), markers: markers.collect() };
            let mut own = adjust_apart(kit, &cluster.ids, cameras, &part, cluster.free_scale, Some(near)).ok()?;
            // All photos know the noise better than a half.
            let noisier = (cluster.variance / own.variance).max(1.0);
            own.covariance *= noisier;
            let inside: Vec<Length> = options.lengths.iter().filter(|l| l.within(&own.ids)).cloned().collect();
            if inside.is_empty() && own.free_scale {
                return None;
            }
            apply(kit, &mut own, &inside).ok()?;
            Some((part.len(), own))
        };
        let (Some((a, first)), Some((b, second))) = (half(0), half(1)) else { continue };
        counts[0] += a;
        counts[1] += b;
        for carrier in carriers {
            all.add(kit, carrier, &first, &second);
        }
    }
    all.finish(counts)
}

#[derive(Default)]
struct Comparison {
    squares: f64,
    rank: usize,
    moved: Vec<(f64, u32)>,
    degrees: f64,
}

impl Comparison {
    fn add(&mut self, kit: &Kit, carrier: usize, first: &Cluster, second: &Cluster) {
        let stated = &kit.carriers[carrier];
        // The same markers on both sides, or the frames would differ.
        let mut common = stated.clone();
        common.markers.retain(|m| first.index(m.id).is_some() && second.index(m.id).is_some());
        let (Some(a), Some(b)) = (attach(&common, first), attach(&common, second)) else { return };
        let n = common.markers.len();
        let mut difference = DVector::zeros(6 * n);
        for k in 0..n {
            let (p, q) = (&a.carrier_from_marker[k], &b.carrier_from_marker[k]);
            let moved: Vector3<f64> = q.origin_mm() - p.origin_mm();
            let turned = (q.rotation() * p.rotation().inverse()).scaled_axis();
            difference.rows_mut(6 * k, 3).copy_from(&moved);
            difference.rows_mut(6 * k + 3, 3).copy_from(&turned);
            self.moved.push((moved.norm(), common.markers[k].id));
        }
        let covariance = |attached, cluster: &Cluster| {
            let placed = [Placed { carrier, cluster: 0, attached }];
            joint_shape(std::slice::from_ref(cluster), &placed)
        };
        let sum = covariance(a, first) + covariance(b, second);
        let row = |i: usize| BODY * (i / 6) + i % 6;
        let sum = DMatrix::from_fn(6 * n, 6 * n, |i, j| sum[(row(i), row(j))]);
        let (squares, rank) = squared_over(&difference, &sum);
        self.squares += squares;
        self.rank += rank;
        self.degrees = first.degrees_of_freedom + second.degrees_of_freedom;
    }

    fn finish(self, photos: [usize; 2]) -> Option<Halves> {
        let largest_mm = self.moved.iter().copied().max_by(|a, b| a.0.total_cmp(&b.0))?;
        let squares: f64 = self.moved.iter().map(|(m, _)| m * m).sum();
        let quantile = FisherSnedecor::new(self.rank as f64, self.degrees.clamp(1.0, 1e4)).ok()?.inverse_cdf(0.95);
        Some(Halves {
            photos,
            markers: self.moved.len(),
            ratio: self.squares / self.rank as f64,
            limit: quantile,
            rms_mm: (squares / (3.0 * self.moved.len() as f64)).sqrt(),
            largest_mm,
        })
    }
}

/// `d' C^+ d` and the rank of `C`, whose units differ and which is singular
/// for motions of the whole.
fn squared_over(d: &DVector<f64>, covariance: &DMatrix<f64>) -> (f64, usize) {
    let sigma: Vec<f64> = covariance.diagonal().iter().map(|v| v.max(1e-20).sqrt()).collect();
    let n = d.len();
    let unit = DMatrix::from_fn(n, n, |i, j| covariance[(i, j)] / (sigma[i] * sigma[j]));
    let scaled = DVector::from_fn(n, |i, _| d[i] / sigma[i]);
    let eigen = unit.symmetric_eigen();
    let least = 1e-6 * eigen.eigenvalues.max();
    let mut found = (0.0, 0);
    for (value, vector) in eigen.eigenvalues.iter().zip(eigen.eigenvectors.column_iter()) {
        if *value > least {
            found.0 += vector.dot(&scaled).powi(2) / value;
            found.1 += 1;
        }
    }
    found
}
