//! Surveyed carriers together: how their places vary with each other.

use nalgebra::DMatrix;

use super::apart::Cluster;
use super::datum::Attached;

/// A carrier in the cluster that has most of it.
pub(super) struct Placed {
    pub(super) carrier: usize,
    pub(super) cluster: usize,
    pub(super) attached: Attached,
}

/// Covariance of all placed markers (centre, rotation, relative size), frames
/// taken as the fits have them.
pub(super) fn joint_shape(clusters: &[Cluster], placed: &[Placed]) -> DMatrix<f64> {
    let rows: usize = placed.iter().map(|p| p.attached.to_places.nrows()).sum();
    let mut joint = DMatrix::zeros(rows, rows);
    let mut at = 0;
    for a in placed {
        let half = &a.attached.to_places * &clusters[a.cluster].covariance;
        let mut across = 0;
        for b in placed {
            let of_b = &b.attached.to_places;
            // Apart, carriers still share the printer's scale.
            let block = if a.cluster == b.cluster {
                &half * of_b.transpose()
            } else {
                let scale = |p: &Placed| &p.attached.to_places * &clusters[p.cluster].by_scale;
                scale(a) * scale(b).transpose()
            };
            joint.view_mut((at, across), (half.nrows(), of_b.nrows())).copy_from(&block);
            across += of_b.nrows();
        }
        at += half.nrows();
    }
    (&joint + joint.transpose()) * 0.5
}
