//! JPEG with 4:2:0 colour, as phones write it.

use jpeg_encoder::{ColorType, Encoder, SamplingFactor};

use super::exif::Record;
use super::tone::Picture;
use crate::words::{Value, phrase};

/// Compresses a picture; the words of a failure mostly come from the encoder.
pub(crate) fn compress(picture: &Picture, quality: u8, record: Option<&Record>) -> Result<Vec<u8>, Value> {
    let side = |n: usize| u16::try_from(n).map_err(|_| Value::from(phrase!("doors-stage-too-large", pixels = n)));
    let (width, height) = (side(picture.width)?, side(picture.height)?);
    let mut bytes = Vec::new();
    let mut encoder = Encoder::new(&mut bytes, quality.clamp(1, 100));
    encoder.set_sampling_factor(SamplingFactor::R_4_2_0);
    // Optimised tables would make the encoder write one scan per channel; phones write a single one.
    encoder.set_optimized_huffman_tables(false);
    if let Some(record) = record {
        encoder.add_exif_metadata(&record.tiff()).map_err(|e| Value::from(e.to_string()))?;
    }
    encoder
        .encode(picture.rgb.as_flattened(), width, height, ColorType::Rgb)
        .map_err(|e| Value::from(e.to_string()))?;
    Ok(bytes)
}

/// The picture at a smaller width, each pixel the mean of those that it covers.
pub(crate) fn smaller(picture: &Picture, width: usize) -> Picture {
    let height = (picture.height * width / picture.width.max(1)).max(1);
    let range = |k: usize, n: usize, side: usize| (k * side / n, ((k + 1) * side / n).clamp(1, side));
    let mean = |i: usize| {
        let ((u0, u1), (v0, v1)) = (range(i % width, width, picture.width), range(i / width, height, picture.height));
        let mut sum = [0_usize; 3];
        for v in v0..v1 {
            for pixel in &picture.rgb[v * picture.width + u0..v * picture.width + u1] {
                sum.iter_mut().zip(pixel).for_each(|(s, p)| *s += usize::from(*p));
            }
        }
        sum.map(|s| (s / ((u1 - u0) * (v1 - v0)).max(1)) as u8)
    };
    Picture { width, height, rgb: (0..width * height).map(mean).collect() }
}
