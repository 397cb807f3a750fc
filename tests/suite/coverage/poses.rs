//! Poses of carriers against the stand, all six axes at once.

use baywitness::geom::{Carrier, Pose};
use baywitness::pose::Scene;
use nalgebra::{Matrix3, Matrix6, Vector6};

use crate::sampled_bay::{Bay, Sample};

/// A pose's error and its stated covariance, mm and rad in the carrier's axes.
pub(crate) type Step = (Vector6<f64>, Matrix6<f64>);

/// The carriers that are looked at.
pub(crate) fn others(bay: &Bay) -> [&'static str; 2] {
    ["rear-left", if bay.front_plates { "front-right" } else { "rear-right" }]
}

pub(crate) fn steps(bay: &Bay, job: &Sample, scene: &Scene) -> Vec<Step> {
    let stand = job.carrier("stand");
    let one = |name: &str| {
        let other = job.carrier(name);
        let (found, mut covariance) = relative(scene, stand, other);
        // How it seats comes on top of where it was seen.
        let carrier = &job.kit.carriers[other];
        for axis in 0..3 {
            covariance[(axis, axis)] += carrier.u_seating_mm.powi(2);
            covariance[(3 + axis, 3 + axis)] += carrier.u_seating_deg[axis].to_radians().powi(2);
        }
        ((job.bodies[stand].inverse() * job.bodies[other]).step_to(&found), covariance)
    };
    others(bay).map(one).to_vec()
}

/// How a step before a pose acts after it: the adjoint of its inverse, (translation, rotation).
fn after(pose: &Pose<Carrier, Carrier>) -> Matrix6<f64> {
    let inverse = pose.inverse();
    let (r, t): (Matrix3<f64>, _) = (inverse.matrix(), inverse.origin_mm());
    let mut adjoint = Matrix6::zeros();
    adjoint.fixed_view_mut::<3, 3>(0, 0).copy_from(&r);
    adjoint.fixed_view_mut::<3, 3>(0, 3).copy_from(&(t.cross_matrix() * r));
    adjoint.fixed_view_mut::<3, 3>(3, 3).copy_from(&r);
    adjoint
}

/// The pose of carrier `b` in carrier `a` and the covariance of its step.
fn relative(scene: &Scene, a: usize, b: usize) -> (Pose<Carrier, Carrier>, Matrix6<f64>) {
    let pose = scene.carriers[a].unwrap().inverse() * scene.carriers[b].unwrap();
    let of = |k: usize| scene.factor.rows(6 * k, 6).into_owned();
    let factor = of(b) - after(&pose) * of(a);
    let covariance = &factor * factor.transpose();
    (pose, covariance.fixed_view::<6, 6>(0, 0).into_owned())
}
