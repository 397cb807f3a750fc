//! JPEG straight to luma: chroma blocks are passed over, never transformed.

use zune_core::{bytestream::ZCursor, colorspace::ColorSpace, options::DecoderOptions};
use zune_jpeg::{JpegDecoder, errors::DecodeErrors};

use super::{Luma, error::Fault, jpeg_structure, read::check_size};

/// Decodes the luma of a JPEG.
pub(super) fn luma(bytes: &[u8]) -> Result<Luma, Fault> {
    let structure = jpeg_structure::structure(bytes)?;
    let (width, height) = (structure.width, structure.height);
    let count = check_size(width, height)?;
    let mut decoder = decoder(&bytes[..structure.last_scan.end + 2], ColorSpace::Luma);
    decoder.decode_headers().map_err(fault)?;
    let pixels = match decoder.input_colorspace() {
        Some(ColorSpace::YCbCr | ColorSpace::Luma) if has_luma_path(&structure.sampling) => {
            let mut pixels = vec![0; count];
            decoder.decode_into(&mut pixels).map_err(fault)?;
            pixels
        }
        Some(ColorSpace::YCbCr) => {
            every_third(colours(&bytes[..structure.last_scan.end + 2], count, ColorSpace::YCbCr)?)
        }
        _ => {
            let rgb = colours(&bytes[..structure.last_scan.end + 2], count, ColorSpace::RGB)?;
            rgb.chunks_exact(3).map(|p| luma_of([p[0], p[1], p[2]])).collect()
        }
    };
    Luma::new(width, height, pixels).ok_or_else(|| Fault::Damaged("its size changed while it was decoded".into()))
}

/// Whether the decoder's luma-only path is right for these sampling factors:
/// with chroma halved in height alone it returns a wrong picture (zune-jpeg
/// 0.5.15), so anything but the usual three goes through all components.
fn has_luma_path(sampling: &[[u8; 2]]) -> bool {
    match sampling {
        [_] => true,
        [luma, chroma @ ..] => {
            matches!(luma, [1, 1] | [2, 1] | [2, 2]) && chroma.iter().all(|factors| *factors == [1, 1])
        }
        [] => false,
    }
}

fn every_third(mut samples: Vec<u8>) -> Vec<u8> {
    let count = samples.len() / 3;
    for i in 0..count {
        samples[i] = samples[3 * i];
    }
    samples.truncate(count);
    samples
}

/// Decodes the colours of a JPEG: width, height, and red, green, blue in turn.
pub(super) fn rgb(bytes: &[u8]) -> Result<([usize; 2], Vec<u8>), Fault> {
    let structure = jpeg_structure::structure(bytes)?;
    let count = check_size(structure.width, structure.height)?;
    let pixels = colours(&bytes[..structure.last_scan.end + 2], count, ColorSpace::RGB)?;
    Ok(([structure.width, structure.height], pixels))
}

fn colours(bytes: &[u8], count: usize, out: ColorSpace) -> Result<Vec<u8>, Fault> {
    let mut pixels = vec![0; 3 * count];
    decoder(bytes, out).decode_into(&mut pixels).map_err(fault)?;
    Ok(pixels)
}

/// Luma of display-referred red, green, blue with ITU-R BT.601 weights, which
/// JPEG files use (ITU-T T.871) and so does a JPEG's own luma.
pub(super) fn luma_of([r, g, b]: [u8; 3]) -> u8 {
    let (r, g, b) = (u32::from(r), u32::from(g), u32::from(b));
    ((19595 * r + 38470 * g + 7471 * b + 32768) >> 16) as u8
}

fn decoder(bytes: &[u8], out: ColorSpace) -> JpegDecoder<ZCursor<&[u8]>> {
    let options = DecoderOptions::default()
        .set_strict_mode(true)
        .set_max_width(usize::from(u16::MAX))
        .set_max_height(usize::from(u16::MAX))
        .jpeg_set_out_colorspace(out);
    JpegDecoder::new_with_options(ZCursor::new(bytes), options)
}

fn fault(error: DecodeErrors) -> Fault {
    match error {
        DecodeErrors::Unsupported(what) => Fault::Unsupported(format!("a JPEG of an unusual kind ({what:?})")),
        other => Fault::Damaged(format!("{other:?}").trim().replace('\n', " ")),
    }
}
