//! Which pixels of a marker take part in its fit.

use std::ops::Range;

use multiversion::multiversion;
use nalgebra::{Matrix2, Matrix3, Vector2, Vector3};

use super::model::{Model, Pixel};
use super::pattern::{PADDED, cell_at};
use super::quad::area;
use super::shadow::Shadow;
use super::shared::Common;
use crate::photo::Luma;

/// Length of the edges of a code and its border, sides of the marker, times two.
const EDGES: f64 = 26.0;
/// Of the pixels away from edges one in so many takes part: they tell the light.
const FLAT: usize = 7;
/// Fewer show no marker.
const LEAST: usize = 60;

/// Takes some `most` pixels near edges, and a few flat ones for the light; `None` where there are hardly any.
pub(super) fn choose_pixels(model: &mut Model, photo: &Luma, common: &Common, most: f64) -> Option<()> {
    let corners = model.corners(&common.lens);
    let inverse = model.matrix().try_inverse()?;
    let sigma = model.sigma();
    let reach = 2.6 * sigma + 0.5;
    // About the share of pixels near edges; a lattice thins larger markers evenly.
    let area = area(&corners).abs();
    let share = |reach: f64| area * (reach * EDGES / area.sqrt()).min(1.0);
    let all = share(reach);
    let stride =
        if all < 1.5 * most { 1 } else { ((share((reach + 1.4 * sigma + 0.3) / 2.0) / most).round() as usize).max(2) };
    let shift = lattice_shift(stride);
    // Cells to a pixel, along x and y: the most of any corner.
    let scales =
        corners.map(|c| cells_by_pixels(model, &inverse, c)).map(|j| Vector2::new(j.row(0).norm(), j.row(1).norm()));
    let scale = scales[0].sup(&scales[1]).sup(&scales[2].sup(&scales[3]));
    // What lies beyond the margin must not shine through.
    let margin = scale.map(|s| (1.0 - 2.0 * sigma * s).clamp(0.35, 0.8));
    let near_edge = scale * reach;
    // Where grey levels run steeply there is most to learn: of thinned pixels more are taken there.
    let steep = scale * (1.4 * sigma + 0.3);
    let (us, vs) = extent(model.origin, &corners, photo);
    // Within a marker a lens bends lines by less than the reach: the bend is left out here.
    let step = (inverse.column(0) / model.unit).into_owned();
    let (reaches, mut group) = (Reaches { near: near_edge, steep, margin }, Group::NONE);
    let shadow = model.shadow;
    let mut pixels = std::mem::take(&mut model.pixels);
    pixels.clear();
    for v in vs {
        let row = photo.row(v);
        let start = inverse * Vector3::new(-model.origin.x, v as f64 - model.origin.y, model.unit) / model.unit;
        let (from, end) = inside(&start, &step, margin, &us);
        let first = from + (stride - (from + v * shift) % stride) % stride;
        let mut turn = first / stride + 3 * v;
        for some in (first..end).step_by(stride * GROUP) {
            look_at(&start, &step, (some, stride), &reaches, &mut group);
            for (i, u) in (some..end).step_by(stride).take(GROUP).enumerate() {
                let (is_flat, is_odd) = (turn.is_multiple_of(FLAT), turn % 2 == 1);
                turn += 1;
                if !group.inside[i] {
                    continue;
                }
                let others = model.pattern().others(group.cell[i]);
                let is_thinned = stride > 1 && is_odd && others & group.steep[i] == 0;
                if is_flat || !is_thinned && others & group.near[i] != 0 {
                    let grey = f32::from(row[u]);
                    let evened = |s: &Shadow| s.evened((group.x[i] - 4.0) / 4.0, (group.y[i] - 4.0) / 4.0, grey);
                    if let Some(grey) = shadow.as_ref().map_or(Some(grey), evened) {
                        pixels.push(Pixel { u: u as u16, v: v as u16, grey });
                    }
                }
            }
        }
    }
    model.pixels = pixels;
    (model.pixels.len() >= LEAST).then_some(())
}

/// Pixels that are looked at at once.
const GROUP: usize = 32;

/// How far from edges pixels take part, also where they are thinned, and from the border, cells.
struct Reaches {
    near: Vector2<f64>,
    steep: Vector2<f64>,
    margin: Vector2<f64>,
}

/// Where a group of pixels lies.
struct Group {
    /// Cell coordinates.
    x: [f64; GROUP],
    y: [f64; GROUP],
    /// Within border and margin.
    inside: [bool; GROUP],
    /// Padded index of the cell, row by row.
    cell: [u8; GROUP],
    /// Which of the cell's sides are within reach: left, right, up, down, lowest bit first.
    near: [u8; GROUP],
    steep: [u8; GROUP],
}

impl Group {
    const NONE: Group = Group {
        x: [0.0; GROUP],
        y: [0.0; GROUP],
        inside: [false; GROUP],
        cell: [0; GROUP],
        near: [0; GROUP],
        steep: [0; GROUP],
    };
}

/// Looks where pixels of a row lie, from a column on, so many columns apart.
#[multiversion(targets("x86_64+avx2"))]
fn look_at(
    start: &Vector3<f64>,
    step: &Vector3<f64>,
    (from, stride): (usize, usize),
    reaches: &Reaches,
    group: &mut Group,
) {
    let (start, step): ([f64; 3], [f64; 3]) = ((*start).into(), (*step).into());
    let ([near_x, near_y], [steep_x, steep_y]): ([f64; 2], [f64; 2]) = (reaches.near.into(), reaches.steep.into());
    let [margin_x, margin_y]: [f64; 2] = reaches.margin.into();
    let (from, stride) = (from as f64, stride as f64);
    for i in 0..GROUP {
        let u = from + i as u32 as f64 * stride;
        let w = 4.0 / (start[2] + step[2] * u);
        let (x, y) = ((start[0] + step[0] * u) * w + 4.0, (start[1] + step[1] * u) * w + 4.0);
        let ((column, left), (row, up)) = (cell_at(x), cell_at(y));
        let sides = |x: f64, y: f64| {
            u8::from(left < x) | u8::from(1.0 - left < x) << 1 | u8::from(up < y) << 2 | u8::from(1.0 - up < y) << 3
        };
        let beyond = |c: f64, margin: f64| (c < -margin) | (c > 8.0 + margin);
        group.x[i] = x;
        group.y[i] = y;
        group.inside[i] = !(beyond(x, margin_x) | beyond(y, margin_y));
        group.cell[i] = (row * PADDED as f64 + column) as i32 as u8;
        group.near[i] = sides(near_x, near_y);
        group.steep[i] = sides(steep_x, steep_y);
    }
}

/// The columns of a row within which a marker with its margin (cells) lies, or a little more.
fn inside(start: &Vector3<f64>, step: &Vector3<f64>, margin: Vector2<f64>, us: &Range<usize>) -> (usize, usize) {
    let (mut low, mut high) = (us.start as f64, us.end as f64);
    // A place lies behind the camera only where the homography is none of a marker's: then all are looked at.
    if start.z + step.z * low <= 0.0 || start.z + step.z * high <= 0.0 {
        return (us.start, us.end);
    }
    let mut keep = |at: f64, by: f64| {
        // Where at + by u is not negative, and one column more for rounding.
        if by > 0.0 {
            low = low.max(-at / by - 1.0);
        } else if by < 0.0 {
            high = high.min(-at / by + 2.0);
        } else if at < 0.0 {
            high = low;
        }
    };
    for (axis, margin) in [(0, margin.x), (1, margin.y)] {
        let most = 1.0 + margin / 4.0;
        keep(most * start.z + start[axis], most * step.z + step[axis]);
        keep(most * start.z - start[axis], most * step.z - step[axis]);
    }
    ((low as usize).max(us.start), (high.max(0.0) as usize).min(us.end))
}

/// Columns and rows of a photo around a marker and its margin.
fn extent(origin: Vector2<f64>, corners: &[Vector2<f64>; 4], photo: &Luma) -> (Range<usize>, Range<usize>) {
    let grown = corners.map(|c| c + (c - origin) * 0.25);
    let low = grown[0].inf(&grown[1]).inf(&grown[2].inf(&grown[3]));
    let high = grown[0].sup(&grown[1]).sup(&grown[2].sup(&grown[3]));
    let inside = |x: f64, most: usize| x.clamp(0.0, most as f64 - 1.0) as usize;
    let range = |low: f64, high: f64, most: usize| inside(low, most)..inside(high + 1.0, most) + 1;
    (range(low.x, high.x, photo.width()), range(low.y, high.y, photo.height()))
}

/// d cell coordinates / d pixel coordinates at a place: rows x, y; columns u, v.
fn cells_by_pixels(model: &Model, inverse: &Matrix3<f64>, place: Vector2<f64>) -> Matrix2<f64> {
    let n = (place - model.origin) / model.unit;
    let p = inverse * Vector3::new(n.x, n.y, 1.0);
    let (x, y, s) = (p.x / p.z, p.y / p.z, 4.0 / (p.z * model.unit));
    Matrix2::from_fn(|i, k| s * (inverse[(i, k)] - [x, y][i] * inverse[(2, k)]))
}

/// Shift of the lattice of thinned pixels from row to row: near the golden section of the stride,
/// and without a common divisor, so that every column has its turn.
fn lattice_shift(stride: usize) -> usize {
    let common = |mut a: usize, mut b: usize| {
        while b > 0 {
            (a, b) = (b, a % b);
        }
        a
    };
    let wanted = (0.382 * stride as f64).round() as usize;
    (wanted..wanted + stride).find(|s| common(*s, stride) == 1).unwrap_or(1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn thinned_pixels_lie_in_every_column() {
        for stride in 1..60 {
            let shift = lattice_shift(stride);
            let columns: std::collections::BTreeSet<_> = (0..stride).map(|v| v * shift % stride).collect();
            assert_eq!(columns.len(), stride, "{stride}: {shift}");
        }
    }
}
