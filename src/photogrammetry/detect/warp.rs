//! A print that is not flat, or whose edges are not quite where they should be.
//!
//! Paper curls and lies in waves, a printer's feed wavers: what a marker shows is off what a homography makes of
//! it, by .05 px in photos of sheets taped to a wall, and smoothly, so that neighbouring edges agree and no block of
//! residuals averages it out. So each marker's picture may be displaced along rows and columns by products of Legendre polynomials
//! of degree two to four, as unknowns with one prior, whose spread the residuals of degree three and four tell. They
//! are taken out of the normal equations (Schur complement). Corners stay those of the homography, of the flat square that
//! fits best: of degree two much looks as perspective does, which makes them as uncertain as they are.

use multiversion::multiversion;
use nalgebra::SVector;

use super::lanes::{BATCH, Lane};

/// Products of polynomials along one of a photo's axes.
pub(super) const PRODUCTS: usize = 12;
/// Unknowns of a marker.
pub(super) const TERMS: usize = 2 * PRODUCTS;
/// Of the products those of degree two, which perspective hides.
pub(super) const DEGREE_TWO: usize = 3;
pub(super) type Terms = SVector<f64, TERMS>;

/// How a marker is warped.
#[derive(Debug, Clone, Copy)]
pub(super) struct Warp {
    /// Standard deviation of each term, px.
    pub(super) spread: f64,
    pub(super) found: Terms,
}

impl Warp {
    /// How far it carries the print, root mean square along either axis of the photo, px.
    pub(super) fn rms_px(&self) -> f64 {
        // The mean square of each Legendre polynomial of degree n, -1 to 1, is 1 / (2 n + 1).
        let products = (2..=4).flat_map(|degree| (0..=degree).map(move |down| (degree - down, down)));
        let squares: Vec<f64> = products.map(|(x, y)| 1.0 / f64::from((2 * x + 1) * (2 * y + 1))).collect();
        let sum: f64 = self.found.iter().zip(squares.iter().cycle()).map(|(f, square)| f * f * square).sum();
        (sum / 2.0).sqrt()
    }
}

/// What each term, one px large, does to grey levels at a batch's pixels: from what a way of one px along either axis
/// does, and the pattern coordinates, -1 to 1.
#[multiversion(targets("x86_64+avx2"))]
pub(super) fn displace(along: &[Lane; 2], [x, y]: [&Lane; 2], terms: &mut [Lane; TERMS]) {
    let (px, py) = (legendre(x), legendre(y));
    let products = (2..=4).flat_map(|degree| (0..=degree).map(move |down| (degree - down, down)));
    for (i, (across, down)) in products.enumerate() {
        for (axis, along) in along.iter().enumerate() {
            for k in 0..BATCH {
                terms[axis * PRODUCTS + i][k] = along[k] * px[across][k] * py[down][k];
            }
        }
    }
}

/// Legendre polynomials of degree 0 to 4.
#[inline(always)]
fn legendre(x: &Lane) -> [Lane; 5] {
    let mut p = [[1.0; BATCH]; 5];
    for k in 0..BATCH {
        let x = x[k];
        let square = x * x;
        p[1][k] = x;
        p[2][k] = 1.5 * square - 0.5;
        p[3][k] = (2.5 * square - 1.5) * x;
        p[4][k] = (4.375 * square - 3.75) * square + 0.375;
    }
    p
}
