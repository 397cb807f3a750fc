//! JPEG with 4:2:0 colour, as phones write it.

use jpeg_encoder::{ColorType, Encoder, SamplingFactor};

use super::exif::Record;
use super::tone::Picture;

/// Compresses a picture; the message of a failure comes from the encoder.
pub(crate) fn compress(picture: &Picture, quality: u8, record: Option<&Record>) -> Result<Vec<u8>, String> {
    let side = |n: usize| u16::try_from(n).map_err(|_| format!("{n} pixels are more than a JPEG can hold"));
    let (width, height) = (side(picture.width)?, side(picture.height)?);
    let mut bytes = Vec::new();
    let mut encoder = Encoder::new(&mut bytes, quality.clamp(1, 100));
    encoder.set_sampling_factor(SamplingFactor::R_4_2_0);
    // Optimised tables would make the encoder write one scan per channel; phones write a single one.
    encoder.set_optimized_huffman_tables(false);
    if let Some(record) = record {
        encoder.add_exif_metadata(&record.tiff()).map_err(|e| e.to_string())?;
    }
    encoder.encode(picture.rgb.as_flattened(), width, height, ColorType::Rgb).map_err(|e| e.to_string())?;
    Ok(bytes)
}
