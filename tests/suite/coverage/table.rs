//! The figures of a condition against their limits.

use nalgebra::{Matrix3, Matrix6, Vector3, Vector6};

use super::conditions::Condition;
use super::draws::{Draw, QUANTITIES};
use super::poses::{Step, others};

/// Samples for which the limits are made; fewer widen them by their own noise.
const MADE_FOR: f64 = 2500.0;
/// Share of intervals that hold, off .95.
const MOST_OFF: f64 = 0.02;
/// Standard deviations, as a share.
const MOST_SD: f64 = 0.10;
/// Eigenvalues of the normalised covariance, as a share.
const MOST_EIGENVALUE: f64 = 0.20;
/// Angle between the stated and the sampled main axis of a position, deg.
const MOST_ANGLE_DEG: f64 = 18.0;
/// The main axis is defined where its variance is so much larger than the next.
const DEFINED: f64 = std::f64::consts::SQRT_2;
/// An error of so many standard uncertainties is no chance in 50,000 jobs of
/// six quantities (normal: 4e-8 each).
pub(crate) const GROSS: f64 = 5.5;

pub(crate) fn head() {
    let quantities = QUANTITIES.map(|q| format!("{:>14}", q.name())).concat();
    println!("coverage, sd of error/u (Student's sd taken off){quantities}");
}

/// Prints a condition's row and tells which figures break their limits.
pub(crate) fn judge(condition: &Condition, draws: &[Draw]) -> Vec<String> {
    let n = draws.len() as f64;
    let slack = (MADE_FOR / n).sqrt().max(1.0);
    let mut wrong = Vec::new();
    let mut row = String::new();
    for (i, quantity) in QUANTITIES.iter().enumerate() {
        let held = draws.iter().filter(|d| d.quantities[i].held).count() as f64 / n;
        let sd = (draws.iter().map(|d| normalised(d, i).powi(2)).sum::<f64>() / n).sqrt();
        row.push_str(&format!("  {held:.3} {sd:.3} "));
        if (held - 0.95).abs() > MOST_OFF * slack {
            wrong.push(format!("{} holds {held:.3}", quantity.name()));
        }
        if (sd - 1.0).abs() > MOST_SD * slack {
            wrong.push(format!("{} has {sd:.3} of its standard deviation", quantity.name()));
        }
    }
    println!("{:48}{row}", condition.name);
    let stated =
        (0..QUANTITIES.len()).map(|i| format!("{:>14.4}", draws.iter().map(|d| d.quantities[i].u).sum::<f64>() / n));
    println!("  {:46}{}", "mean stated u, mm or deg", stated.collect::<String>());
    // One job in thousands that is wholly wrong hides in a share of intervals.
    for (seed, draw) in draws.iter().enumerate() {
        let errors: Vec<f64> = (0..QUANTITIES.len()).map(|i| normalised(draw, i)).collect();
        if errors.iter().any(|error| error.abs() > GROSS) {
            wrong.push(format!("seed {} is off by {errors:.1?} u", 1000 + seed));
        }
    }
    for (i, carrier) in others(&(condition.bay)()).iter().enumerate() {
        let steps: Vec<&Step> = draws.iter().map(|d| &d.steps[i]).collect();
        wrong.extend(of_pose(carrier, &steps, slack, student_sd(draws)));
    }
    wrong.into_iter().map(|w| format!("{}: {w}", condition.name)).collect()
}

/// Error over standard uncertainty, less what Student's distribution is wider than a normal one.
fn normalised(draw: &Draw, i: usize) -> f64 {
    let q = draw.quantities[i];
    q.error_over_u / sd_of_student(q.degrees_of_freedom)
}

fn sd_of_student(freedom: f64) -> f64 {
    if freedom.is_finite() && freedom > 2.5 { (freedom / (freedom - 2.0)).sqrt() } else { 1.0 }
}

/// Of the image's degrees of freedom: poses follow them at most.
fn student_sd(draws: &[Draw]) -> f64 {
    draws.iter().map(|d| sd_of_student(d.degrees_of_freedom)).sum::<f64>() / draws.len() as f64
}

/// The main axis of a position's covariance, where there is one: the line of sight, mostly.
fn main_axis(covariance: &Matrix3<f64>) -> Option<Vector3<f64>> {
    let eigen = covariance.symmetric_eigen();
    let mut order = [0, 1, 2];
    order.sort_by(|i, j| eigen.eigenvalues[*j].total_cmp(&eigen.eigenvalues[*i]));
    (eigen.eigenvalues[order[0]] > DEFINED * eigen.eigenvalues[order[1]])
        .then(|| eigen.eigenvectors.column(order[0]).into_owned())
}

fn of_pose(carrier: &str, steps: &[&Step], slack: f64, student: f64) -> Vec<String> {
    let n = steps.len() as f64;
    let (mut squares, mut whitened) = (Vector6::zeros(), Matrix6::zeros());
    let (mut sampled, mut stated) = (Matrix3::zeros(), Matrix3::zeros());
    for (step, covariance) in steps {
        let sigma = covariance.diagonal().map(f64::sqrt);
        let z = step.component_div(&sigma);
        squares += z.component_mul(&z) / n;
        let mm = step.fixed_rows::<3>(0);
        sampled += mm * mm.transpose() / n;
        stated += covariance.fixed_view::<3, 3>(0, 0) / n;
        let white = covariance.cholesky().unwrap().l().solve_lower_triangular(step).unwrap();
        whitened += white * white.transpose() / n;
    }
    let sd = squares.map(f64::sqrt);
    let mut eigenvalues: Vec<f64> = whitened.symmetric_eigenvalues().iter().copied().collect();
    eigenvalues.sort_by(f64::total_cmp);
    let axes = main_axis(&stated).zip(main_axis(&sampled));
    let angle = axes.map(|(a, b)| a.dot(&b).abs().min(1.0).acos().to_degrees());
    let words = angle.map_or("no main axis".to_owned(), |a| format!("main axes {a:.1} deg apart"));
    println!(
        "  {carrier:12} sd {:.2} to {:.2}, eigenvalues {:.2} to {:.2}, {words}",
        sd.min(),
        sd.max(),
        eigenvalues[0],
        eigenvalues[5]
    );
    let mut wrong = Vec::new();
    let outside = |x: f64, most: f64, student: f64| x < 1.0 - most * slack || x > student * (1.0 + most * slack);
    if sd.iter().any(|s| outside(*s, MOST_SD, student)) {
        wrong.push(format!("{carrier}: standard deviations {:.3?} of the stated", sd.as_slice()));
    }
    if eigenvalues.iter().any(|e| outside(*e, MOST_EIGENVALUE, student * student)) {
        wrong.push(format!("{carrier}: eigenvalues {eigenvalues:.3?} of the stated"));
    }
    if let Some(angle) = angle.filter(|a| *a > MOST_ANGLE_DEG * slack) {
        wrong.push(format!("{carrier}: main axes {angle:.0} deg apart"));
    }
    wrong
}
