//! Whether bodies stood the same in two states of one bay.

use nalgebra::{DMatrix, DVector, Matrix3, Vector3};
use statrs::distribution::{ChiSquared, ContinuousCDF};

use super::doubles::Doubles;
use crate::geom::deg;
use crate::marker::{Carrier, Role};
use crate::pose::{Options, Problem, adjust};
use crate::verdict::findings::Moved;

/// One body's difference between the two states, in its own axes.
struct Difference {
    role: Role,
    name: String,
    /// Position mm, rotation rad.
    step: DVector<f64>,
    /// The step's covariance is the product with its transpose.
    factor: DMatrix<f64>,
    /// From own axes to the world's.
    axes: Matrix3<f64>,
    position_mm: Vector3<f64>,
}

/// The moves of stands and vehicle from state 0 to state 1, in one adjustment
/// that joins the states by everything that `changes` does not name. `states`
/// has 0, 1 or nothing for each photo of the problem. `None` where the two can't be joined.
pub fn compare(problem: &Problem, states: &[Option<usize>], changes: impl Fn(&Carrier) -> bool) -> Option<Vec<Moved>> {
    let doubles = Doubles::new(problem.kit, &["first", "second"], changes);
    let mut photos = problem.photos.clone();
    for (photo, state) in photos.iter_mut().zip(states) {
        doubles.assign(photo, *state);
    }
    let scene =
        adjust(&Problem { kit: &doubles.kit, cameras: problem.cameras.clone(), photos }, &Options::default()).ok()?;
    let mut differences = Vec::new();
    for (k, carrier) in problem.kit.carriers.iter().enumerate().filter(|(k, _)| doubles.states(*k) == 2) {
        let (a, b) = (doubles.body(k, 0), doubles.body(k, 1));
        let (Some(before), Some(after)) = (scene.carriers[a], scene.carriers[b]) else { continue };
        if !scene.knows(a) || !scene.knows(b) {
            continue;
        }
        differences.push(Difference {
            role: carrier.role,
            name: carrier.name.clone(),
            step: DVector::from_column_slice(before.step_to(&after).as_slice()),
            factor: scene.factor.rows(6 * b, 6) - scene.factor.rows(6 * a, 6),
            axes: before.matrix(),
            position_mm: before.origin_mm(),
        });
    }
    let (vehicle, others): (Vec<_>, Vec<_>) = differences.into_iter().partition(|d| d.role.is_on_vehicle());
    let mut moves: Vec<Moved> = others.iter().filter(|d| d.role == Role::Target).map(of_stand).collect();
    moves.extend(of_vehicle(&vehicle));
    Some(moves)
}

fn of_stand(d: &Difference) -> Moved {
    Moved {
        is_stand: true,
        name: d.name.clone(),
        mm: d.step.rows(0, 3).norm(),
        degrees: deg(d.step.rows(3, 3).norm()),
        u_mm: widest(&d.factor.rows(0, 3).into_owned()),
        u_degrees: deg(widest(&d.factor.rows(3, 3).into_owned())),
        chance: chance(&d.step, &d.factor),
    }
}

/// The vehicle's move from its hub datums: mean shift and turn about the
/// vertical. A plate's own turn about its axle is no move of the vehicle.
fn of_vehicle(bodies: &[Difference]) -> Option<Moved> {
    let n = bodies.len();
    let columns = bodies.first()?.factor.ncols();
    let (mut steps, mut factor) = (DVector::zeros(3 * n), DMatrix::zeros(3 * n, columns));
    for (i, d) in bodies.iter().enumerate() {
        steps.rows_mut(3 * i, 3).copy_from(&(d.axes * d.step.rows(0, 3)));
        factor.view_mut((3 * i, 0), (3, columns)).copy_from(&(d.axes * d.factor.rows(0, 3)));
    }
    let mean = |of: &dyn Fn(usize) -> Vector3<f64>| (0..n).map(of).sum::<Vector3<f64>>() / n as f64;
    let shift = |i: usize| Vector3::new(steps[3 * i], steps[3 * i + 1], steps[3 * i + 2]);
    let (middle, moved) = (mean(&|i| bodies[i].position_mm), mean(&shift));
    // Sensitivity of shift and turn to each hub's step.
    let arms: f64 = bodies.iter().map(|b| (b.position_mm - middle).xy().norm_squared()).sum();
    let mut to_shift = DMatrix::zeros(3, 3 * n);
    let mut to_turn = DMatrix::zeros(1, 3 * n);
    for (i, b) in bodies.iter().enumerate() {
        to_shift.view_mut((0, 3 * i), (3, 3)).copy_from(&(Matrix3::identity() / n as f64));
        let arm = b.position_mm - middle;
        to_turn[(0, 3 * i)] = -arm.y / arms.max(1.0);
        to_turn[(0, 3 * i + 1)] = arm.x / arms.max(1.0);
    }
    Some(Moved {
        is_stand: false,
        name: "vehicle".into(),
        mm: moved.norm(),
        degrees: deg((&to_turn * &steps)[0].abs()),
        u_mm: widest(&(to_shift * &factor)),
        u_degrees: deg((to_turn * &factor).norm()),
        chance: chance(&steps, &factor),
    })
}

/// Standard uncertainty along the worst direction.
fn widest(factor: &DMatrix<f64>) -> f64 {
    (factor * factor.transpose()).symmetric_eigenvalues().max().max(0.0).sqrt()
}

/// Wald test: the chance of such a step where the truth is none.
fn chance(step: &DVector<f64>, factor: &DMatrix<f64>) -> f64 {
    let n = step.len();
    let u: Vec<f64> = (0..n).map(|i| factor.row(i).norm().max(1e-9)).collect();
    let scaled = DMatrix::from_fn(n, factor.ncols(), |r, c| factor[(r, c)] / u[r]);
    let right = DVector::from_fn(n, |i, _| step[i] / u[i]);
    // Directions that share one source are nearly dependent: keep it invertible.
    let covariance = &scaled * scaled.transpose() + DMatrix::identity(n, n) * 1e-6;
    let Some(root) = covariance.cholesky() else { return 1.0 };
    let statistic = right.dot(&root.solve(&right));
    ChiSquared::new(n as f64).map_or(1.0, |d| d.sf(statistic))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn chance_of_a_step_of_known_uncertainty() {
        // Chi-square with three degrees of freedom: sf(12.838) = 0.005 (published tables).
        let factor = DMatrix::from_diagonal(&DVector::from_vec(vec![2.0, 0.1, 1.0]));
        let step = DVector::from_vec(vec![2.0 * 12.838_f64.sqrt(), 0.0, 0.0]);
        assert!((chance(&step, &factor) - 0.005).abs() < 1e-4);
        assert!((widest(&factor) - 2.0).abs() < 1e-12);
    }
}
