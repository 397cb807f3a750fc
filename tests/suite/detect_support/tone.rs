//! Local tone mapping of a rendered photo: a base of the light's logarithm, on a grid of cells and smooth between
//! them, is compressed, the rest is raised (after F. Durand and J. Dorsey, SIGGRAPH 2002; without their edge
//! stopping, which markers' cells hardly need).

use baywitness::photo::Luma;

/// Cells of the base, px; compression of the base and growth of the rest; the display's power; where the brightest
/// hundredth goes.
const CELL: usize = 8;
const COMPRESSION: f64 = 0.55;
const DETAIL: f64 = 1.25;
const POWER: f64 = 0.6;
const BRIGHT: f64 = 0.85;

/// The photo with its grey levels taken for light.
pub(crate) fn tone_mapped(photo: &Luma) -> Luma {
    let (width, height) = (photo.width(), photo.height());
    let log = |u: usize, v: usize| (f64::from(photo.at(u, v)) / 255.0 + 4e-3).ln();
    let (columns, rows) = (width / CELL, height / CELL);
    let cell = |i: usize, j: usize| {
        let sum: f64 = (0..CELL * CELL).map(|k| log(i * CELL + k % CELL, j * CELL + k / CELL)).sum();
        sum / (CELL * CELL) as f64
    };
    let cells: Vec<f64> = (0..columns * rows).map(|k| cell(k % columns, k / columns)).collect();
    let place = |p: usize, count: usize| {
        let at = ((p as f64 + 0.5) / CELL as f64 - 0.5).clamp(0.0, count as f64 - 1.001);
        (at as usize, at.fract())
    };
    let base = |u: usize, v: usize| {
        let ((i, a), (j, b)) = (place(u, columns), place(v, rows));
        let row = |j: usize| cells[j * columns + i] * (1.0 - a) + cells[j * columns + i + 1] * a;
        row(j) * (1.0 - b) + row(j + 1) * b
    };
    let mapped = |k: usize| {
        let (u, v) = (k % width, k / width);
        let base = base(u, v);
        (POWER * (base * (1.0 - COMPRESSION) + (log(u, v) - base) * DETAIL)).exp()
    };
    let mapped: Vec<f64> = (0..width * height).map(mapped).collect();
    let mut sorted = mapped.clone();
    sorted.sort_by(f64::total_cmp);
    let scale = 255.0 * BRIGHT / sorted[sorted.len() * 99 / 100];
    let pixels = mapped.iter().map(|m| (m * scale).round().clamp(0.0, 255.0) as u8).collect();
    Luma::new(width, height, pixels).unwrap()
}
