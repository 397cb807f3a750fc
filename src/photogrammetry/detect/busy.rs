//! Where in a photo grey levels change in both directions: small markers do, straight edges do not.

use super::pyramid::{Level, TILE};

/// Side of a tile on the next coarser level, px.
const HALF: usize = TILE / 2;
/// Least sum of squared grey differences across the direction of least change, over 3x3 tiles.
const LEAST: f32 = 4000.0;
/// The same as a share of that along the direction of most change.
const LEAST_SHARE: f32 = 0.03;

/// Sums over a tile of products of grey differences along u and v: uu, uv, vv (the structure tensor; W. Foerstner
/// and E. Guelch, "A fast operator for detection and precise location of distinct points", ISPRS 1987).
type Tensor = [f32; 3];

/// Sets the contrast of those tiles of a level to 0 around which grey levels change in one direction only.
/// `half` is the next coarser level; contrasts are rows of so many `columns`.
pub(super) fn idle_straight(contrasts: &mut [u8], columns: usize, half: &Level<'_>) {
    let rows = contrasts.len() / columns;
    let none = || vec![[0f32; 3]; columns];
    let mut three = [none(), none(), tensors(half, contrasts, columns, 0)];
    for r in 0..rows {
        three.rotate_left(1);
        three[2] = if r + 1 < rows { tensors(half, contrasts, columns, r + 1) } else { none() };
        for c in 0..columns {
            let contrast = &mut contrasts[r * columns + c];
            let around = c.saturating_sub(1)..(c + 2).min(columns);
            let sum = |k: usize| three.iter().flat_map(|row| &row[around.clone()]).map(|t| t[k]).sum();
            if *contrast > 0 && !is_busy(std::array::from_fn(sum)) {
                *contrast = 0;
            }
        }
    }
}

/// Whether the tensor's smaller eigenvalue is large.
fn is_busy([uu, uv, vv]: Tensor) -> bool {
    let (middle, apart) = ((uu + vv) / 2.0, (((uu - vv) / 2.0).powi(2) + uv * uv).sqrt());
    let (least, most) = (middle - apart, middle + apart);
    least >= LEAST && least >= LEAST_SHARE * most
}

/// Tensors of a row of tiles; of tiles without contrast none.
fn tensors(half: &Level<'_>, contrasts: &[u8], columns: usize, r: usize) -> Vec<Tensor> {
    let rows = r * HALF + 1..(r * HALF + HALF + 1).min(half.height.saturating_sub(1));
    let contrasts = &contrasts[r * columns..(r + 1) * columns];
    let tensor = |(c, contrast): (usize, &u8)| {
        let first = c * HALF;
        if *contrast == 0 || first + HALF + 2 > half.width {
            return [0.0; 3];
        }
        let (mut uu, mut uv, mut vv) = (0i32, 0i32, 0i32);
        for v in rows.clone() {
            let [up, row, down] = [v - 1, v, v + 1].map(|v| &half.row(v)[first..first + HALF + 2]);
            for k in 1..=HALF {
                let across = i32::from(row[k + 1]) - i32::from(row[k - 1]);
                let along = i32::from(down[k]) - i32::from(up[k]);
                uu += across * across;
                uv += across * along;
                vv += along * along;
            }
        }
        [uu as f32, uv as f32, vv as f32]
    };
    contrasts.iter().enumerate().map(tensor).collect()
}

#[cfg(test)]
mod tests {
    use super::super::pyramid::{active_tiles, pyramid};
    use super::*;
    use crate::photo::Luma;

    /// A checkered patch of 3 px cells beside a slanting edge of something large.
    #[test]
    fn straight_edges_are_idle_and_small_patterns_are_not() {
        let grey = |u: usize, v: usize| match (u, v) {
            (32..56, 32..56) => 40 + 120 * ((u / 3 + v / 3) % 2) as u8,
            _ => (200.0 - 170.0 * (u as f64 - 120.0 - v as f64 / 8.0).clamp(0.0, 1.0)) as u8,
        };
        let photo = Luma::new(256, 128, (0..256 * 128).map(|i| grey(i % 256, i / 256)).collect()).unwrap();
        let levels = pyramid(&photo);
        let mut tiles = active_tiles(&levels[0], 32);
        let edge = |tiles: &[u8]| (3..13).filter(|r| (15..24).any(|c| tiles[r * 32 + c] > 0)).count();
        assert_eq!(edge(&tiles), 10);
        idle_straight(&mut tiles, 32, &levels[1]);
        assert_eq!(edge(&tiles), 0);
        assert!((4..7).all(|r| (4..7).all(|c| tiles[r * 32 + c] > 0)));
    }
}
