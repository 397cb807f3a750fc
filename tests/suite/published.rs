//! Published figures that the distributions and a plain propagation of
//! uncertainty must give back. Each table names its document.

use baywitness::{
    num::{normal_cdf, normal_quantile, student_cdf, student_quantile},
    quantity::Estimate,
};
use rand::rngs::ChaCha8Rng;
use rand::{RngExt, SeedableRng};

/// JCGM 100:2008 (GUM), table G.2: t_p(nu) for p = 68.27 %, 90 %, 95 %, 95.45 %, 99 %, 99.73 %.
const TABLE_G2: [(f64, [f64; 6]); 12] = [
    (1.0, [1.84, 6.31, 12.71, 13.97, 63.66, 235.80]),
    (2.0, [1.32, 2.92, 4.30, 4.53, 9.92, 19.21]),
    (3.0, [1.20, 2.35, 3.18, 3.31, 5.84, 9.22]),
    (4.0, [1.14, 2.13, 2.78, 2.87, 4.60, 6.62]),
    (5.0, [1.11, 2.02, 2.57, 2.65, 4.03, 5.51]),
    (6.0, [1.09, 1.94, 2.45, 2.52, 3.71, 4.90]),
    (8.0, [1.07, 1.86, 2.31, 2.37, 3.36, 4.28]),
    (10.0, [1.05, 1.81, 2.23, 2.28, 3.17, 3.96]),
    (16.0, [1.03, 1.75, 2.12, 2.17, 2.92, 3.54]),
    (20.0, [1.03, 1.72, 2.09, 2.13, 2.85, 3.42]),
    (50.0, [1.01, 1.68, 2.01, 2.05, 2.68, 3.16]),
    (f64::INFINITY, [1.000, 1.645, 1.960, 2.000, 2.576, 3.000]),
];

#[test]
fn student_quantiles_are_those_of_gum_table_g2() {
    const LEVELS: [f64; 6] = [0.6827, 0.90, 0.95, 0.9545, 0.99, 0.9973];
    for (nu, row) in TABLE_G2 {
        for (level, printed) in LEVELS.into_iter().zip(row) {
            let ours = student_quantile(0.5 + level / 2.0, nu);
            // The table gives the levels to four and the factors to two or three digits; at one degree of freedom
            // the level's own rounding moves the last factor by more.
            let tolerance = if printed > 100.0 { 0.1 } else { 0.006 };
            assert!((ours - printed).abs() < tolerance, "nu {nu}, {level}: {ours} for {printed}");
            assert!((student_cdf(ours, nu) - 0.5 - level / 2.0).abs() < 1e-9);
        }
    }
}

#[test]
fn coverage_factor_is_that_of_gum_h1() {
    // JCGM 100:2008, H.1.6: t_99(16) = 2.92.
    assert!((student_quantile(0.995, 16.0) - 2.92).abs() < 0.005);
    let estimate = Estimate { value: 0.0, standard_uncertainty: 32.0, degrees_of_freedom: 16.0 };
    assert!((estimate.expanded_uncertainty() - 2.12 * 32.0).abs() < 0.1);
}

#[test]
fn conformance_figures_are_those_of_jcgm_106() {
    // JCGM 106:2012, 7.3.3 and table 1 use Phi; Phi(1.40) = 0.9192, Phi^-1(0.95) = 1.645.
    assert!((normal_cdf(1.40) - 0.9192).abs() < 5e-5);
    assert!((normal_quantile(0.95) - 1.645).abs() < 5e-4);
    assert!((normal_cdf(normal_quantile(0.025)) - 0.025).abs() < 1e-9);
    // Two-sided tolerance +-T, 95 % conformance: the widest accepted |y| is T - g u. Factors computed (not printed
    // in the document) by SciPy 1.17 brentq on its normal distribution.
    for (half_tolerance, guard) in [(1.97, 1.869), (2.0, 1.796), (2.5, 1.649), (3.0, 1.645), (6.0, 1.645)] {
        let conformance = |y: f64| normal_cdf(half_tolerance - y) - normal_cdf(-half_tolerance - y);
        let (mut inside, mut outside) = (0.0, half_tolerance);
        for _ in 0..60 {
            let middle = f64::midpoint(inside, outside);
            if conformance(middle) >= 0.95 { inside = middle } else { outside = middle }
        }
        assert!((half_tolerance - inside - guard).abs() < 2e-3, "T/u {half_tolerance}: {}", half_tolerance - inside);
    }
    // No value can pass where T / u is below 1.960.
    assert!(normal_cdf(1.9599) - normal_cdf(-1.9599) < 0.95 && normal_cdf(1.9601) - normal_cdf(-1.9601) > 0.95);
}

/// Mean and standard deviation, and the shortest symmetric 95 % limits.
fn sampled(count: usize, mut draw: impl FnMut(&mut ChaCha8Rng) -> f64) -> (f64, f64, [f64; 2]) {
    let mut random = ChaCha8Rng::seed_from_u64(101);
    let mut values: Vec<f64> = (0..count).map(|_| draw(&mut random)).collect();
    values.sort_by(f64::total_cmp);
    let mean = values.iter().sum::<f64>() / count as f64;
    let variance = values.iter().map(|v| (v - mean).powi(2)).sum::<f64>() / (count as f64 - 1.0);
    (mean, variance.sqrt(), [values[count / 40], values[count - count / 40]])
}

fn normal(random: &mut ChaCha8Rng) -> f64 {
    normal_quantile(random.random_range(1e-16..1.0))
}

#[test]
fn sampled_distributions_are_those_of_jcgm_101() {
    const COUNT: usize = 200_000;
    // JCGM 101:2008, 9.2.2: four standard normal inputs: u = 2.00, 95 % interval +-3.92.
    let (mean, u, [low, high]) = sampled(COUNT, |r| (0..4).map(|_| normal(r)).sum());
    assert!(mean.abs() < 0.02 && (u - 2.0).abs() < 0.01, "{mean} {u}");
    assert!((low + 3.92).abs() < 0.04 && (high - 3.92).abs() < 0.04, "{low} {high}");
    // 9.2.3: four rectangular inputs of unit standard deviation: u = 2.00, +-3.88.
    let half = 3.0_f64.sqrt();
    let (_, u, [low, high]) = sampled(COUNT, |r| (0..4).map(|_| r.random_range(-half..half)).sum());
    assert!((u - 2.0).abs() < 0.01 && (low + 3.88).abs() < 0.04 && (high - 3.88).abs() < 0.04, "{u} {low} {high}");
    // 9.4, table 6: sum of squares at x1 = 0, 0.010, 0.050 with u = 0.005 each and no correlation.
    for (x1, mean_wanted, u_wanted) in [(0.0, 50e-6, 50.0e-6), (0.010, 150e-6, 111.8e-6), (0.050, 2550e-6, 502.5e-6)] {
        let (mean, u, _) = sampled(COUNT, |r| (x1 + 0.005 * normal(r)).powi(2) + (0.005 * normal(r)).powi(2));
        assert!((mean - mean_wanted).abs() < 0.02 * mean_wanted, "{x1}: mean {mean}");
        assert!((u - u_wanted).abs() < 0.02 * u_wanted, "{x1}: u {u}");
    }
}

/// A trapezium whose half width is itself only known to +-`d` (JCGM 101:2008, 6.4.3).
fn curvilinear_trapezium(random: &mut ChaCha8Rng, half_width: f64, d: f64) -> f64 {
    let half_width = half_width + d * random.random_range(-1.0..1.0);
    half_width * random.random_range(-1.0..1.0)
}

/// JCGM 101:2008, 9.5: the gauge block of GUM H.1, with the laws of table 10, by sampling:
/// 838 nm, u = 36 nm, shortest 99 % interval [745, 932] nm; by the law of propagation
/// of uncertainty [745, 931] nm.
#[test]
fn the_gauge_block_is_that_of_jcgm_101() {
    const COUNT: usize = 100_000;
    const NOMINAL_NM: f64 = 5e7;
    let mut random = ChaCha8Rng::seed_from_u64(95);
    let r = &mut random;
    let scaled_t = |r: &mut ChaCha8Rng, scale: f64, nu: f64| scale * student_quantile(r.random_range(1e-12..1.0), nu);
    let mut lengths: Vec<f64> = (0..COUNT)
        .map(|_| {
            let standard = 50_000_623.0 + scaled_t(r, 25.0, 18.0);
            let difference = 215.0 + scaled_t(r, 6.0, 24.0) + scaled_t(r, 4.0, 5.0) + scaled_t(r, 7.0, 8.0);
            let expansion = r.random_range(9.5e-6..13.5e-6);
            let expansion_difference = curvilinear_trapezium(r, 1e-6, 1e-7);
            let phase: f64 = r.random_range(0.0..std::f64::consts::TAU);
            let temperature = -0.1 + 0.2 * normal(r) + 0.5 * phase.sin();
            let temperature_difference = curvilinear_trapezium(r, 0.05, 0.025);
            let warm = standard * (1.0 + expansion * (temperature - temperature_difference)) + difference;
            warm / (1.0 + (expansion + expansion_difference) * temperature) - NOMINAL_NM
        })
        .collect();
    lengths.sort_by(f64::total_cmp);
    let mean = lengths.iter().sum::<f64>() / COUNT as f64;
    let u = (lengths.iter().map(|l| (l - mean).powi(2)).sum::<f64>() / (COUNT as f64 - 1.0)).sqrt();
    assert!((mean - 838.0).abs() < 0.7 && (u - 36.0).abs() < 0.7, "{mean} {u}");
    // The shortest interval wanders more than its ends' own noise (0.6 nm each): the density is flat there.
    let inside = COUNT * 99 / 100;
    let shortest = (0..COUNT - inside)
        .min_by(|a, b| (lengths[a + inside] - lengths[*a]).total_cmp(&(lengths[b + inside] - lengths[*b])))
        .unwrap();
    let [low, high] = [lengths[shortest], lengths[shortest + inside]];
    assert!((low - 745.0).abs() < 3.0 && (high - 932.0).abs() < 3.0, "[{low}, {high}]");
    assert!((high - low - 187.0).abs() < 2.0, "[{low}, {high}]");
    // GUM H.1.6 as 9.5 prints it: 2.92 standard uncertainties of 32 nm at 16 degrees of freedom.
    let half = 32.0 * student_quantile(0.995, 16.0);
    assert!((838.0 - half - 745.0).abs() < 0.6 && (838.0 + half - 931.0).abs() < 0.6, "{half}");
}
