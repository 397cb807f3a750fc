//! Combining independent contributions to a standard uncertainty.

use super::Estimate;

/// The estimate of a value whose independent contributions are given as
/// (standard uncertainty in the value's unit, degrees of freedom): their root
/// sum of squares (GUM 5.1.2) and the effective degrees of freedom after
/// Welch and Satterthwaite (GUM G.4.1).
pub fn combine(value: f64, contributions: impl IntoIterator<Item = (f64, f64)>) -> Estimate {
    let (mut variance, mut per_freedom) = (0.0, 0.0);
    for (u, degrees_of_freedom) in contributions {
        variance += u * u;
        if degrees_of_freedom.is_finite() && degrees_of_freedom > 0.0 {
            per_freedom += u.powi(4) / degrees_of_freedom;
        }
    }
    let degrees_of_freedom = if per_freedom > 0.0 { variance * variance / per_freedom } else { f64::INFINITY };
    Estimate { value, standard_uncertainty: variance.sqrt(), degrees_of_freedom }
}

#[cfg(test)]
mod tests {
    use super::*;
    use nalgebra::{DMatrix, DVector};

    #[test]
    fn end_gauge_calibration_of_gum_h1() {
        // JCGM 100:2008, H.1: contributions in nm with their degrees of freedom.
        let d = combine(0.0, [(5.8, 24.0), (3.9, 5.0), (6.7, 8.0)]);
        assert!((d.standard_uncertainty - 9.7).abs() < 0.05 && (d.degrees_of_freedom - 25.6).abs() < 0.6, "{d:?}");
        let l = combine(50_000_838.0, [(25.0, 18.0), (9.7, 25.6), (2.9, 50.0), (16.6, 2.0)]);
        assert!((l.standard_uncertainty - 31.66).abs() < 0.05, "{l:?}");
        assert!((l.degrees_of_freedom - 16.75).abs() < 0.2, "{l:?}");
        // Published, rounded: 32 nm, 16; U99 = 2.92 * 32 = 93 nm.
        assert!((crate::num::student_quantile(0.995, 16.0) * 32.0 - 93.0).abs() < 1.0);
    }

    #[test]
    fn resistance_and_reactance_of_gum_h2() {
        // JCGM 100:2008, H.2: five simultaneous observations of V, I and phase.
        let rows = [
            (5.007, 19.663e-3, 1.0456),
            (4.994, 19.639e-3, 1.0438),
            (5.005, 19.640e-3, 1.0468),
            (4.990, 19.685e-3, 1.0428),
            (4.999, 19.678e-3, 1.0433),
        ];
        let data = DMatrix::from_fn(5, 3, |r, c| [rows[r].0, rows[r].1, rows[r].2][c]);
        let mean = data.row_mean();
        let centred = DMatrix::from_fn(5, 3, |r, c| data[(r, c)] - mean[c]);
        // Factor of the covariance of the means.
        let factor = centred.transpose() / f64::sqrt(5.0 * 4.0);
        let (v, i, phi) = (mean[0], mean[1], mean[2]);
        let z = v / i;
        let check = |value: f64, gradient: [f64; 3], published: (f64, f64)| {
            let spread = factor.tr_mul(&DVector::from_row_slice(&gradient));
            let e = combine(value, spread.iter().map(|s| (*s, f64::INFINITY)));
            assert!((e.value - published.0).abs() < 6e-4, "{} against {}", e.value, published.0);
            assert!((e.standard_uncertainty - published.1).abs() < 6e-4, "{e:?}");
        };
        let (s, c) = phi.sin_cos();
        check(z * c, [c / i, -z * c / i, -z * s], (127.732, 0.071));
        check(z * s, [s / i, -z * s / i, z * c], (219.847, 0.295));
        check(z, [1.0 / i, -z / i, 0.0], (254.260, 0.236));
    }
}
