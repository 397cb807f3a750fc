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

    /// Columns of frequencies back to rows of numbers, times their count.
    pub(super) fn back(&mut self, values: &mut [Complex32]) {
        self.columns[1].process_with_scratch(values, &mut self.scratch);
        transpose(values, &mut self.other, self.height, self.width);
        values.copy_from_slice(&self.other);
        self.rows[1].process_with_scratch(values, &mut self.scratch);
    }
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
        plan.back(&mut values);
        assert!(values.iter().zip(&before).all(|(a, b)| (a / 240.0 - b).norm() < 1e-5));
    }
}
