//! One threshold for a part of a photo.

/// The grey level that parts dark from light best: most variance between the two (N. Otsu, "A
/// threshold selection method from gray-level histograms", IEEE Trans. SMC 9, 1979).
pub(super) fn threshold<'a>(rows: impl Iterator<Item = &'a [u8]>) -> u8 {
    let mut counts = [0u32; 256];
    rows.flatten().for_each(|p| counts[usize::from(*p)] += 1);
    let all: f64 = counts.iter().map(|n| f64::from(*n)).sum();
    let total: f64 = counts.iter().enumerate().map(|(grey, n)| grey as f64 * f64::from(*n)).sum();
    let (mut best, mut most) = (128, 0.0);
    let (mut n, mut sum) = (0.0, 0.0);
    for (grey, count) in counts.iter().enumerate().filter(|(_, count)| **count > 0) {
        n += f64::from(*count);
        sum += f64::from(*count) * grey as f64;
        let apart = sum / n - (total - sum) / (all - n);
        let between = n * (all - n) * apart * apart;
        if between > most {
            (best, most) = (grey + 1, between);
        }
    }
    best.min(255) as u8
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_threshold_parts_two_greys() {
        let row: Vec<u8> = (0..100).map(|i| if i % 3 == 0 { 40 + i % 5 } else { 180 - i % 7 }).collect();
        assert!((45..=174).contains(&threshold(std::iter::once(row.as_slice()))));
    }
}
