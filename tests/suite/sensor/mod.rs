//! Which camera took a photo, by its sensor's pattern (feature `sensor-pattern`): real photos of one phone and of
//! strangers, rendered ones of sensors that are known, and how often chance is taken for a pattern.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "tests stop and tell")]

mod chance;
mod doors;
mod real;
mod rendered;
mod shares;
mod speed;

use baywitness::pattern::{Digest, Error, Estimate, Grey};
use baywitness::photo::Luma;

fn grey(luma: &Luma) -> Grey<'_> {
    Grey { width: luma.width(), height: luma.height(), pixels: luma.pixels() }
}

/// The pattern of one camera's photos.
fn pattern(camera: &str, photos: &[Luma]) -> Result<Digest, Error> {
    let mut estimate = Estimate::default();
    for (i, photo) in photos.iter().enumerate() {
        estimate.add(&grey(photo), &format!("{i}.jpg"))?;
    }
    estimate.digest(camera, |look| {
        photos.iter().for_each(|photo| look(&grey(photo)));
        Ok(())
    })
}

/// A part of a picture.
fn cut(luma: &Luma, [left, top]: [usize; 2], [width, height]: [usize; 2]) -> Luma {
    let rows = (top..top + height).flat_map(|v| luma.row(v)[left..left + width].iter().copied());
    Luma::new(width, height, rows.collect()).unwrap()
}

/// Turned clockwise by a quarter.
fn quarter(luma: &Luma) -> Luma {
    let (width, height) = (luma.height(), luma.width());
    let at = |i: usize| luma.at(i / width, width - 1 - i % width);
    Luma::new(width, height, (0..width * height).map(at).collect()).unwrap()
}

/// Sorted: lowest, middle, highest.
fn spread(energies: &mut [f64]) -> [f64; 3] {
    energies.sort_by(f64::total_cmp);
    [energies[0], energies[energies.len() / 2], energies[energies.len() - 1]]
}
