//! Fourier transforms of rectangles, by `rustfft`.

use std::sync::Arc;

use rustfft::num_complex::Complex32;
use rustfft::{Fft, FftDirection, FftPlanner};

/// A transform of rectangles of one size. What comes out lies column after
/// column, and goes in so for the way back.
pub(super) struct Rectangle {
    pub(super) width: usize,
    pub(super) height: usize,
    rows: [Arc<dyn Fft<f32>>; 2],
    columns: [Arc<dyn Fft<f32>>; 2],
    scratch: Vec<Complex32>,
    other: Vec<Complex32>,
}

impl Rectangle {
    pub(super) fn new(width: usize, height: usize) -> Self {
        let mut planner = FftPlanner::new();
        let ways = [FftDirection::Forward, FftDirection::Inverse];
        let rows = ways.map(|way| planner.plan_fft(width, way));
        let columns = ways.map(|way| planner.plan_fft(height, way));
        let room = rows.iter().chain(&columns).map(|f| f.get_inplace_scratch_len()).max().unwrap_or(0);
        let none = Complex32::new(0.0, 0.0);
        Rectangle { width, height, rows, columns, scratch: vec![none; room], other: vec![none; width * height] }
    }

    /// Rows of numbers to columns of frequencies, in place.
    pub(super) fn forward(&mut self, values: &mut [Complex32]) {
        self.rows[0].process_with_scratch(values, &mut self.scratch);
        transpose(values, &mut self.other, self.width, self.height);
        values.copy_from_slice(&self.other);
        self.columns[0].process_with_scratch(values, &mut self.scratch);
    }

    /// Columns of frequencies back to rows of real numbers, times their count: of columns the first half and one, the others
    /// being their mirror. Two rows are transformed as one, the second as its imaginary part.
    #[must_use]
    pub(super) fn back(&mut self, half: &mut [Complex32]) -> Vec<f32> {
        let (width, height) = (self.width, self.height);
        self.columns[1].process_with_scratch(half, &mut self.scratch);
        let pairs = height.div_ceil(2);
        let i = Complex32::new(0.0, 1.0);
        for top in (0..pairs).step_by(TILE) {
            for left in (0..=width / 2).step_by(TILE) {
                for pair in top..(top + TILE).min(pairs) {
                    for u in left..(left + TILE).min(width / 2 + 1) {
                        let first = half[u * height + 2 * pair];
                        let second = if 2 * pair + 1 < height { half[u * height + 2 * pair + 1] } else { first * 0.0 };
                        self.other[pair * width + u] = first + i * second;
                        if u > 0 && 2 * u != width {
                            self.other[pair * width + width - u] = first.conj() + i * second.conj();
                        }
                    }
                }
            }
        }
        let rows = &mut self.other[..pairs * width];
        self.rows[1].process_with_scratch(rows, &mut self.scratch);
        let mut values = Vec::with_capacity(width * 2 * pairs);
        for pair in rows.chunks_exact(width) {
            values.extend(pair.iter().map(|z| z.re));
            values.extend(pair.iter().map(|z| z.im));
        }
        values.truncate(width * height);
        values
    }
}

/// The least length that is not below `n` and that transforms are fast at: a power of two, three quarters or five eighths of one.
pub(super) fn fast_length(n: usize) -> usize {
    let power = n.next_power_of_two().max(8);
    [5, 6, 8].into_iter().map(|eighths| power / 8 * eighths).find(|length| *length >= n).unwrap_or(power)
}

/// Side of the squares in which it is done, so that both sides stay in the processor's cache.
const TILE: usize = 16;

/// Rows of `width` become columns.
fn transpose(from: &[Complex32], to: &mut [Complex32], width: usize, height: usize) {
    for top in (0..height).step_by(TILE) {
        for left in (0..width).step_by(TILE) {
            for v in top..(top + TILE).min(height) {
                for u in left..(left + TILE).min(width) {
                    to[u * height + v] = from[v * width + u];
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_wave_is_one_frequency_and_comes_back() {
        let (width, height) = (24, 10);
        let wave = |i: usize| {
            let turn = 3.0 * (i % width) as f32 / width as f32 + 2.0 * (i / width) as f32 / height as f32;
            Complex32::cis(std::f32::consts::TAU * turn)
        };
        let before: Vec<Complex32> = (0..width * height).map(wave).collect();
        let mut values = before.clone();
        let mut plan = Rectangle::new(width, height);
        plan.forward(&mut values);
        for (i, z) in values.iter().enumerate() {
            // Column 3, row 2, counted down the columns.
            let wanted = if i == 3 * height + 2 { (width * height) as f32 } else { 0.0 };
            assert!((z - Complex32::new(wanted, 0.0)).norm() < 1e-3, "{i}: {z}");
        }
    }

    #[test]
    fn real_numbers_come_back() {
        for (width, height) in [(24, 10), (9, 7), (8, 1)] {
            let before: Vec<f32> = (0..width * height).map(|i| ((i * i * 7 + i) % 23) as f32 - 11.0).collect();
            let mut values: Vec<Complex32> = before.iter().map(|x| Complex32::new(*x, 0.0)).collect();
            let mut plan = Rectangle::new(width, height);
            plan.forward(&mut values);
            let back = plan.back(&mut values[..(width / 2 + 1) * height]);
            let count = (width * height) as f32;
            assert!(back.iter().zip(&before).all(|(a, b)| (a / count - b).abs() < 1e-4), "{width} {height}");
        }
    }

    #[test]
    fn fast_lengths_are_the_least() {
        let found = [1, 8, 9, 2500, 3024, 3072, 3073, 4032, 4097].map(fast_length);
        assert_eq!(found, [5, 8, 10, 2560, 3072, 3072, 4096, 4096, 5120]);
    }
}
