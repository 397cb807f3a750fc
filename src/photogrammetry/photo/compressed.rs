//! Pictures that the program makes, as JPEG.

use image::RgbImage;
use jpeg_encoder::{ColorType, Encoder};

/// A picture as JPEG of a quality from 1 to 100.
///
/// The encoder is generic over where it writes to and so compiled where it is called: here, where loops over pixels
/// are optimised.
///
/// # Errors
/// What the encoder says: a side that JPEG does not hold (none, or more than 65535 px).
pub fn compressed(picture: &RgbImage, quality: u8) -> Result<Vec<u8>, String> {
    let side = |px: u32| u16::try_from(px).map_err(|e| e.to_string());
    let (width, height) = (side(picture.width())?, side(picture.height())?);
    let mut bytes = Vec::new();
    Encoder::new(&mut bytes, quality)
        .encode(picture.as_raw(), width, height, ColorType::Rgb)
        .map_err(|e| e.to_string())?;
    Ok(bytes)
}
