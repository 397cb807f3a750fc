//! Smooth displacements of a marker's picture: products of Legendre polynomials of degree two to four along rows
//! and columns.

use multiversion::multiversion;
use nalgebra::SVector;

use super::lanes::{BATCH, Lane};

/// Products of polynomials along one of a photo's axes.
const PRODUCTS: usize = 12;
/// Those along both.
pub(super) const TERMS: usize = 2 * PRODUCTS;
/// Which of them are of degree two.
pub(super) const DEGREE_TWO: [usize; 6] = [0, 1, 2, PRODUCTS, PRODUCTS + 1, PRODUCTS + 2];
/// Square of what each term of one px displaces along its axis, mean over the marker: the mean square of a polynomial of degree
/// n is 1 / (2 n + 1).
pub(super) const MEAN_SQUARES: [f64; TERMS] = {
    let mut all = [0.0; TERMS];
    let (mut at, mut degree) = (0, 2);
    while degree <= 4 {
        let mut down = 0;
        while down <= degree {
            all[at] = 1.0 / ((2 * (degree - down) + 1) * (2 * down + 1)) as f64;
            all[PRODUCTS + at] = all[at];
            (at, down) = (at + 1, down + 1);
        }
        degree += 1;
    }
    all
};

/// A number for each term.
pub(super) type Terms = SVector<f64, TERMS>;

/// Whether a term is of degree two.
pub(super) fn is_of_degree_two(term: usize) -> bool {
    DEGREE_TWO.contains(&term)
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
