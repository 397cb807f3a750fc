//! Straight sides to sub-pixel accuracy: where grey values rise fastest along the sides' normals.

use nalgebra::Vector2;

use super::pyramid::Level;
use super::quad::{Quad, intersection};

/// Step of the search along a normal, px.
const STEP: f64 = 0.5;
/// Reach of the search to either side, px.
pub(super) const REACH: f64 = 2.5;
/// Least rise of an edge, grey levels per px.
const LEAST_RISE: f64 = 3.0;
/// Most places along a normal.
const MOST: usize = 64;

/// Moves the sides of a quadrilateral (coordinates of the level) onto the edges beside them:
/// dark inside, light outside, at most `reach` px away. `None` where a side has no such edge.
pub(super) fn sharpen(level: &Level<'_>, quad: &Quad, reach: f64) -> Option<Quad> {
    let mut lines = [(Vector2::zeros(), Vector2::zeros()); 4];
    for (i, line) in lines.iter_mut().enumerate() {
        *line = side(level, quad[i], quad[(i + 1) % 4], reach)?;
    }
    let meet = |i: usize, j: usize| intersection(lines[i].0, lines[i].1, lines[j].0, lines[j].1);
    Some([meet(3, 0)?, meet(0, 1)?, meet(1, 2)?, meet(2, 3)?])
}

/// The line (point, direction) of the edge beside the side from `a` to `b` of a clockwise quadrilateral.
fn side(level: &Level<'_>, a: Vector2<f64>, b: Vector2<f64>, reach: f64) -> Option<(Vector2<f64>, Vector2<f64>)> {
    let along = b - a;
    let length = along.norm();
    let outward = Vector2::new(along.y, -along.x) / length;
    let count = (length as usize).clamp(8, 12);
    let mut points = Vec::with_capacity(count);
    let mut greys = [0.0; MOST];
    for k in 0..count {
        let t = 0.06 + 0.88 * (k as f64 + 0.5) / count as f64;
        if let Some((offset, rise)) = steepest(level, a + along * t, outward, reach, &mut greys) {
            points.push((t * length, offset, rise));
        } else if (k + 1 - points.len()) * 2 > count {
            return None;
        }
    }
    if points.len() * 2 < count {
        return None;
    }
    let (mut level_, mut slope) = median_line(&points);
    for gate in [1.0, 0.6] {
        let near: Vec<_> = points.iter().filter(|p| (p.1 - level_ - slope * p.0).abs() < gate).copied().collect();
        if near.len() < 4 {
            break;
        }
        (level_, slope) = weighted_line(&near);
    }
    let direction = along / length;
    Some((a + outward * level_, direction + outward * slope))
}

/// Offset along the normal of the steepest rise and the rise itself (grey levels per px).
fn steepest(
    level: &Level<'_>,
    at: Vector2<f64>,
    outward: Vector2<f64>,
    reach: f64,
    grey: &mut [f64; MOST],
) -> Option<(f64, f64)> {
    let half = ((reach / STEP) as usize + 1).min(MOST / 2 - 1);
    let n = 2 * half + 1;
    let offset = |i: usize| (i as f64 - half as f64) * STEP;
    level.sample_line(at + outward * offset(0), outward * STEP, &mut grey[..n]);
    let grey = &grey[..n];
    let mut rises = [0.0; MOST];
    for (rise, three) in rises[1..].iter_mut().zip(grey.windows(3)) {
        *rise = (three[2] - three[0]) / (2.0 * STEP);
    }
    let rise = |i: usize| rises[i];
    // A peak, where there is one: the flank of a stronger edge beyond the reach is none.
    let is_peak = |i: &usize| rise(*i) >= LEAST_RISE && rise(*i) >= rise(i - 1) && rise(*i) >= rise(i + 1);
    let steeper = |a: &usize, b: &usize| rise(*a).total_cmp(&rise(*b));
    let best = (2..n - 2).filter(is_peak).max_by(steeper).or_else(|| (1..n - 1).max_by(steeper))?;
    if rise(best) < LEAST_RISE {
        return None;
    }
    let shift = if best > 1 && best < n - 2 {
        let (l, m, r) = (rise(best - 1), rise(best), rise(best + 1));
        let curve = l - 2.0 * m + r;
        if curve < -1e-9 { ((l - r) / (2.0 * curve)).clamp(-0.5, 0.5) } else { 0.0 }
    } else {
        0.0
    };
    Some((offset(best) + shift * STEP, rise(best)))
}

/// A robust start: median of offsets in either half.
fn median_line(points: &[(f64, f64, f64)]) -> (f64, f64) {
    let half = points.len() / 2;
    let median = |part: &[(f64, f64, f64)]| {
        let mut t: Vec<f64> = part.iter().map(|p| p.0).collect();
        let mut o: Vec<f64> = part.iter().map(|p| p.1).collect();
        t.sort_by(f64::total_cmp);
        o.sort_by(f64::total_cmp);
        (t[t.len() / 2], o[o.len() / 2])
    };
    let ((t0, o0), (t1, o1)) = (median(&points[..half]), median(&points[half..]));
    let slope = if t1 - t0 > 1.0 { (o1 - o0) / (t1 - t0) } else { 0.0 };
    (o0 - slope * t0, slope)
}

/// Least squares weighted with the rise, which is as the offsets' inverse standard deviation.
fn weighted_line(points: &[(f64, f64, f64)]) -> (f64, f64) {
    let (mut w, mut wt, mut wo, mut wtt, mut wto) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for (t, o, rise) in points {
        let weight = rise * rise;
        w += weight;
        wt += weight * t;
        wo += weight * o;
        wtt += weight * t * t;
        wto += weight * t * o;
    }
    let det = w * wtt - wt * wt;
    if det <= 1e-12 * w * wtt {
        return (wo / w, 0.0);
    }
    ((wtt * wo - wt * wto) / det, (w * wto - wt * wo) / det)
}

#[cfg(test)]
mod tests {
    use super::super::pyramid::pyramid;
    use super::*;
    use crate::photo::Luma;

    #[test]
    fn finds_blurred_sides_to_a_tenth_of_a_pixel() {
        let truth: Quad = [(14.3, 12.8), (47.2, 18.1), (43.6, 50.4), (11.1, 44.9)].map(|(u, v)| Vector2::new(u, v));
        let inside = |p: Vector2<f64>| {
            (0..4).all(|i| super::super::quad::cross(truth[(i + 1) % 4] - truth[i], p - truth[i]) > 0.0)
        };
        let grey = |u: usize, v: usize| {
            let mut sum = 0.0;
            for i in -20..20 {
                for j in -20..20 {
                    let d = Vector2::new(f64::from(i) + 0.5, f64::from(j) + 0.5) / 10.0;
                    let weight =
                        (-d.norm_squared() / (2.0 * 0.6 * 0.6)).exp() / (2.0 * std::f64::consts::PI * 0.36 * 100.0);
                    sum += weight * if inside(Vector2::new(u as f64, v as f64) + d) { 40.0 } else { 200.0 };
                }
            }
            sum as u8
        };
        let photo = Luma::new(64, 64, (0..64 * 64).map(|i| grey(i % 64, i / 64)).collect()).unwrap();
        let start = truth.map(|c| Vector2::new(c.x.round() + 0.8, c.y.round() - 0.7));
        let level = &pyramid(&photo)[0];
        let quad = sharpen(level, &sharpen(level, &start, REACH).unwrap(), REACH).unwrap();
        for (c, t) in quad.iter().zip(&truth) {
            assert!((c - t).norm() < 0.1, "{c} {t}");
        }
    }
}
