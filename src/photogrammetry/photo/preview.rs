//! Small upright copies of photos, for people.

use std::io::Cursor;

use image::{DynamicImage, ImageDecoder, RgbImage, imageops};

use super::error::{Fault, as_it_came};
#[cfg(feature = "heic")]
use super::heic;
use super::{Error, Kind, Orientation, jpeg, read, size};
use crate::words::phrase;

/// A small upright copy of a photo and how its pixels lie in it.
#[derive(Debug, Clone, PartialEq)]
pub struct Preview {
    /// The picture, upright, 8 bits each of red, green, blue.
    pub picture: RgbImage,
    /// Width and height of the stored photo, px.
    pub stored_px: [usize; 2],
    /// How the stored photo is turned.
    pub orientation: Orientation,
}

impl Preview {
    /// Where a position on the photo's stored grid lies in the picture, both
    /// with pixel centres at whole numbers.
    pub fn from_stored(&self, stored_px: [f64; 2]) -> [f64; 2] {
        let [x, y] = self.orientation.upright(stored_px, self.stored_px);
        let [width, height] = self.upright_size_px();
        let (sx, sy) = (f64::from(self.picture.width()) / width, f64::from(self.picture.height()) / height);
        [(x + 0.5) * sx - 0.5, (y + 0.5) * sy - 0.5]
    }

    /// Pixels of the picture per pixel of the photo.
    pub fn scale(&self) -> f64 {
        f64::from(self.picture.width()) / self.upright_size_px()[0]
    }

    fn upright_size_px(&self) -> [f64; 2] {
        let [width, height] = self.stored_px.map(|side| side as f64);
        if self.orientation.swaps_sides() { [height, width] } else { [width, height] }
    }
}

/// An upright copy whose longer side has at most `max_side_px`; never larger
/// than the photo.
///
/// # Errors
/// As [`super::decode`].
pub fn preview(bytes: &[u8], name: &str, max_side_px: usize) -> Result<Preview, Error> {
    let kind = read::recognise(bytes, name)?;
    let full = match kind {
        Kind::Jpeg => jpeg::rgb(bytes).and_then(picture),
        Kind::Png => png_picture(bytes),
        #[cfg(feature = "heic")]
        Kind::Heic => heic::rgb(bytes).and_then(picture),
        #[cfg(not(feature = "heic"))]
        Kind::Heic => Err(Fault::Unsupported(phrase!("doors-variant-heic"))),
    }
    .map_err(|fault| fault.of(name))?;
    let orientation = read::exif(bytes, kind).orientation.unwrap_or(Orientation::UPRIGHT);
    let mut stored_px = [full.width() as usize, full.height() as usize];
    let mut small = DynamicImage::ImageRgb8(reduced(full, max_side_px.max(1)));
    if kind == Kind::Heic {
        // It comes upright from its decoder.
        if orientation.swaps_sides() {
            stored_px.reverse();
        }
    } else if let Some(turn) = image::metadata::Orientation::from_exif(orientation.0) {
        small.apply_orientation(turn);
    }
    Ok(Preview { picture: small.into_rgb8(), stored_px, orientation })
}

fn picture(([width, height], pixels): ([usize; 2], Vec<u8>)) -> Result<RgbImage, Fault> {
    RgbImage::from_raw(width as u32, height as u32, pixels)
        .ok_or_else(|| Fault::Damaged(phrase!("doors-fault-size-changed")))
}

fn png_picture(bytes: &[u8]) -> Result<RgbImage, Fault> {
    let damaged = |e: image::ImageError| Fault::Damaged(as_it_came(e.to_string()));
    let decoder = image::codecs::png::PngDecoder::new(Cursor::new(bytes)).map_err(damaged)?;
    let (width, height) = decoder.dimensions();
    size::check_size(width as usize, height as usize)?;
    Ok(DynamicImage::from_decoder(decoder).map_err(damaged)?.into_rgb8())
}

fn reduced(full: RgbImage, max_side_px: usize) -> RgbImage {
    let longer = full.width().max(full.height()) as usize;
    if longer <= max_side_px {
        return full;
    }
    let side = |px: u32| ((px as usize * max_side_px + longer / 2) / longer).max(1) as u32;
    imageops::thumbnail(&full, side(full.width()), side(full.height()))
}
