//! What a camera on a tripod does to the whole picture from photo to photo.

use nalgebra::{Matrix6, Vector6};
use statrs::distribution::{ChiSquared, ContinuousCDF};

use super::body::{Body, COMMON};

/// How large each may be, px at the edge of the picture, 1 sigma: the stabiliser and a nudge shift it, the
/// focus scales it (some thousandths), a tripod's head gives way. Wide, since it only has to hold what bodies that
/// stay do not tell by themselves.
const U_COMMON_PX: [f64; COMMON] = [30.0, 30.0, 10.0, 20.0, 10.0, 10.0];

/// What the whole picture did by some bodies.
#[derive(Debug, Clone)]
pub(super) struct Common {
    went: Vector6<f64>,
    covariance: Matrix6<f64>,
    /// The chance that bodies which stay disagree so much about it.
    pub(super) chance: f64,
}

impl Common {
    /// Fits it to bodies that are taken to stay.
    pub(super) fn of(bodies: &[&Body]) -> Self {
        let prior = Matrix6::from_diagonal(&Vector6::from(U_COMMON_PX.map(|u| u.powi(-2))));
        let (mut normal, mut right) = (prior, Vector6::zeros());
        let weights: Vec<Matrix6<f64>> = bodies.iter().map(|b| inverse(&b.covariance)).collect();
        for (body, weight) in bodies.iter().zip(&weights) {
            normal += body.by_common.transpose() * weight * body.by_common;
            right += body.by_common.transpose() * weight * body.went;
        }
        let covariance = inverse(&normal);
        let went = covariance * right;
        let misfit = |(body, weight): (&&Body, &Matrix6<f64>)| {
            let left = body.went - body.by_common * went;
            left.dot(&(weight * left))
        };
        let statistic: f64 = bodies.iter().zip(&weights).map(misfit).sum();
        // Each body tells six things, and six are fitted.
        let freedom = COMMON * bodies.len().saturating_sub(1);
        let chance = if freedom == 0 { 1.0 } else { chance(statistic, freedom) };
        Common { went, covariance, chance }
    }

    /// The chance that a body which stays goes as this one went (Wald).
    pub(super) fn chance_of(&self, body: &Body) -> f64 {
        let left = body.went - body.by_common * self.went;
        let covariance = body.covariance + body.by_common * self.covariance * body.by_common.transpose();
        chance(left.dot(&(inverse(&covariance) * left)), COMMON)
    }
}

fn chance(statistic: f64, freedom: usize) -> f64 {
    ChiSquared::new(freedom as f64).map_or(1.0, |d| d.sf(statistic))
}

/// Of a covariance or a normal matrix; one that is not positive definite weighs nothing.
fn inverse(matrix: &Matrix6<f64>) -> Matrix6<f64> {
    matrix.cholesky().map_or_else(Matrix6::zeros, |root| root.inverse())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Chi-square with six degrees of freedom: sf(12.592) = 0.05 (published tables).
    #[test]
    fn a_body_is_judged_by_those_that_stay() {
        let still = |went: [f64; 6]| Body {
            carrier: 0,
            went: Vector6::from(went),
            covariance: Matrix6::identity() * 1e-4,
            by_common: Matrix6::identity(),
        };
        // A shift of 3 px that all share is no move.
        let shift = [3.0, 0.0, 0.0, 0.0, 0.0, 0.0];
        let (a, b) = (still(shift), still(shift));
        let common = Common::of(&[&a, &b]);
        assert!((common.went.x - 3.0).abs() < 1e-5 && common.chance > 0.99);
        // Half the variance comes from the two: u = 0.01 sqrt(1.5) px.
        let off = 0.01 * 1.5_f64.sqrt() * 12.592_f64.sqrt();
        let moved = still([3.0 + off, 0.0, 0.0, 0.0, 0.0, 0.0]);
        assert!((common.chance_of(&moved) - 0.05).abs() < 1e-3, "{}", common.chance_of(&moved));
        // Two that disagree by as much as that are found to: u of their difference is 0.01 sqrt(2).
        let other = still([3.0 + 0.01 * 2.0_f64.sqrt() * 12.592_f64.sqrt(), 0.0, 0.0, 0.0, 0.0, 0.0]);
        assert!((Common::of(&[&a, &other]).chance - 0.05).abs() < 1e-3);
    }
}
