//! JPEG straight to luma: chroma blocks are passed over, never transformed.

use zune_core::{
    bytestream::{ZByteReaderTrait, ZCursor},
    colorspace::ColorSpace,
    options::DecoderOptions,
};
use zune_jpeg::{JpegDecoder, errors::DecodeErrors};

use super::{
    Luma,
    error::{Fault, as_it_came},
    jpeg_progressive, jpeg_scan,
    jpeg_source::Source,
    jpeg_structure::{Structure, structure},
    size::check_size,
};
use crate::words::phrase;

/// Decodes the luma of a JPEG.
pub(super) fn luma(bytes: &[u8]) -> Result<Luma, Fault> {
    let (structure, route) = examine(bytes)?;
    if let Some(luma) = (route == Route::Luma).then(|| quick(bytes, &structure)).flatten() {
        return Ok(luma);
    }
    let pixels = match route {
        Route::Luma => samples(bytes, &structure, ColorSpace::Luma)?,
        Route::YCbCr => every_third(samples(bytes, &structure, ColorSpace::YCbCr)?),
        Route::Rgb => {
            let rgb = samples(bytes, &structure, ColorSpace::RGB)?;
            rgb.chunks_exact(3).map(|p| luma_of([p[0], p[1], p[2]])).collect()
        }
    };
    Luma::new(structure.width, structure.height, pixels)
        .ok_or_else(|| Fault::Damaged(phrase!("doors-fault-size-changed")))
}

/// The luma of what cameras write; `None` where this takes the decoder for all files.
fn quick(bytes: &[u8], structure: &Structure) -> Option<Luma> {
    let decode = if structure.progressive { jpeg_progressive::luma } else { jpeg_scan::luma };
    decode(bytes, structure)
}

/// Decodes the colours of a JPEG: width, height, and red, green, blue in turn.
pub(super) fn rgb(bytes: &[u8]) -> Result<([usize; 2], Vec<u8>), Fault> {
    let (structure, _) = examine(bytes)?;
    Ok(([structure.width, structure.height], samples(bytes, &structure, ColorSpace::RGB)?))
}

/// What the file holds and how to decode it.
fn examine(bytes: &[u8]) -> Result<(Structure, Route), Fault> {
    let structure = structure(bytes)?;
    check_size(structure.width, structure.height)?;
    let mut decoder = decoder(ZCursor::new(&bytes[..structure.end]), ColorSpace::Luma);
    decoder.decode_headers().map_err(fault)?;
    let sampling: Vec<_> = structure.components.iter().map(|c| c.sampling).collect();
    let route = route(&sampling, decoder.input_colorspace())?;
    let subsampled = sampling.iter().any(|factors| *factors != [1, 1]);
    if structure.scans > 1 && !structure.progressive && subsampled && route == Route::Luma {
        // The decoder (zune-jpeg 0.5.15) silently gives a wrong picture, whatever is asked for.
        return Err(Fault::Unsupported(phrase!("doors-variant-scans")));
    }
    Ok((structure, route))
}

/// Decodes to `out`. A picture in one scan, as cameras write it, and a
/// progressive one are watched to their last bytes; what is missing between
/// the scans of a sequential one the decoder finds itself.
fn samples(bytes: &[u8], structure: &Structure, out: ColorSpace) -> Result<Vec<u8>, Fault> {
    let mut pixels = vec![0; structure.width * structure.height * out.num_components()];
    let bytes = &bytes[..structure.end];
    if structure.scans > 1 && !structure.progressive {
        decoder(ZCursor::new(bytes), out).decode_into(&mut pixels).map_err(fault)?;
        return Ok(pixels);
    }
    let (source, watch) = Source::new(bytes, structure);
    let failed = decoder(source, out).decode_into(&mut pixels).map_err(fault).err();
    watch.verdict(structure.runs.len(), failed)?;
    Ok(pixels)
}

/// What to decode for the luma of a JPEG.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Route {
    /// The first component alone.
    Luma,
    /// All components; the first is the luma.
    YCbCr,
    /// All components, turned into red, green, blue.
    Rgb,
}

/// The route that the decoder (zune-jpeg 0.5.15) takes rightly for these
/// sampling factors. Others come back as a wrong picture, so they are refused:
/// halved in height alone on the luma-only path, quartered in height on any.
fn route(sampling: &[[u8; 2]], colours: Option<ColorSpace>) -> Result<Route, Fault> {
    let subsampled = |rest: &[[u8; 2]]| rest.iter().all(|factors| *factors == [1, 1]);
    match (colours, sampling) {
        (Some(ColorSpace::Luma), [_]) => Ok(Route::Luma),
        (Some(ColorSpace::YCbCr), [[1, 1] | [2, 1] | [2, 2], chroma @ ..]) if subsampled(chroma) => Ok(Route::Luma),
        (Some(ColorSpace::YCbCr), [[1, 2] | [4, 1], chroma @ ..]) if subsampled(chroma) => Ok(Route::YCbCr),
        (Some(ColorSpace::RGB | ColorSpace::CMYK | ColorSpace::YCCK), all) if subsampled(all) => Ok(Route::Rgb),
        (Some(ColorSpace::YCCK), [[2, 2], [1, 1], [1, 1], [2, 2]]) => Ok(Route::Rgb),
        _ => {
            let what = format!("{colours:?} {sampling:?}");
            Err(Fault::Unsupported(phrase!("doors-variant-components", what = what)))
        }
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

/// Luma of display-referred red, green, blue with ITU-R BT.601 weights, which
/// JPEG files use (ITU-T T.871) and so does a JPEG's own luma.
pub(super) fn luma_of([r, g, b]: [u8; 3]) -> u8 {
    let (r, g, b) = (u32::from(r), u32::from(g), u32::from(b));
    ((19595 * r + 38470 * g + 7471 * b + 32768) >> 16) as u8
}

fn decoder<T: ZByteReaderTrait>(source: T, out: ColorSpace) -> JpegDecoder<T> {
    let options = DecoderOptions::default()
        .set_strict_mode(true)
        .set_max_width(usize::from(u16::MAX))
        .set_max_height(usize::from(u16::MAX))
        .jpeg_set_out_colorspace(out);
    JpegDecoder::new_with_options(source, options)
}

fn fault(error: DecodeErrors) -> Fault {
    match error {
        DecodeErrors::Unsupported(what) => {
            Fault::Unsupported(phrase!("doors-variant-unusual", what = format!("{what:?}")))
        }
        other => Fault::Damaged(as_it_came(format!("{other:?}").trim().replace('\n', " "))),
    }
}

/// By the quick decoder and by the one for all files.
#[cfg(test)]
pub(super) fn decoded_both_ways(bytes: &[u8]) -> (Option<Luma>, Result<Vec<u8>, Fault>) {
    match examine(bytes) {
        Ok((structure, route)) => {
            (quick(bytes, &structure).filter(|_| route == Route::Luma), samples(bytes, &structure, ColorSpace::Luma))
        }
        Err(fault) => (None, Err(fault)),
    }
}

#[cfg(test)]
mod tests {
    use jpeg_encoder::SamplingFactor;

    use super::*;

    /// A made-up picture of edges, slopes and noise as a file.
    fn file(width: u16, height: u16, quality: u8, sampling: SamplingFactor, restart: Option<u16>) -> Vec<u8> {
        coded(width, height, quality, sampling, restart, false)
    }

    fn coded(
        width: u16,
        height: u16,
        quality: u8,
        sampling: SamplingFactor,
        restart: Option<u16>,
        progressive: bool,
    ) -> Vec<u8> {
        let mut state = u32::from(width) * 7 + u32::from(quality);
        let rgb: Vec<u8> = (0..usize::from(width) * usize::from(height) * 3)
            .map(|i| {
                let (u, v) = (i / 3 % usize::from(width), i / 3 / usize::from(width));
                state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
                let edge = if (u / 13 + v / 17) % 3 == 0 { 130 } else { 20 + u % 90 };
                (edge + (state >> 27) as usize + 40 * (i % 3)).min(255) as u8
            })
            .collect();
        let mut bytes = Vec::new();
        let mut encoder = jpeg_encoder::Encoder::new(&mut bytes, quality);
        encoder.set_sampling_factor(sampling);
        encoder.set_progressive(progressive);
        restart.iter().for_each(|interval| encoder.set_restart_interval(*interval));
        encoder.encode(&rgb, width, height, jpeg_encoder::ColorType::Rgb).unwrap();
        bytes
    }

    /// Outside of the project: zune-jpeg decodes the same files.
    #[test]
    fn both_decoders_have_the_same_pixels() {
        use SamplingFactor::{R_4_2_0, R_4_2_2, R_4_4_4};
        let mut count = 0;
        for (width, height) in [(1, 1), (7, 9), (16, 16), (65, 33), (128, 47), (203, 150)] {
            for (sampling, quality) in [(R_4_2_0, 20), (R_4_2_0, 93), (R_4_2_2, 75), (R_4_4_4, 50), (R_4_4_4, 100)] {
                for (restart, progressive) in
                    [(None, false), (Some(1), false), (Some(5), false), (None, true), (Some(1), true), (Some(5), true)]
                {
                    let bytes = coded(width, height, quality, sampling, restart, progressive);
                    let (own, other) = decoded_both_ways(&bytes);
                    let what = format!("{width} {height} {sampling:?} {restart:?} {progressive}");
                    assert!(own.expect(&what).pixels() == other.unwrap(), "{what}");
                    count += 1;
                }
            }
        }
        assert_eq!(count, 180);
    }

    /// A byte of the picture data is another one: what the quick decoder still takes, the other takes too, and alike.
    #[test]
    fn damaged_files_are_no_other_pictures() {
        let whole = file(90, 60, 85, SamplingFactor::R_4_2_0, Some(3));
        let (first, mut taken) = (examine(&whole).unwrap().0.runs[0].start, 0);
        for at in first..whole.len() - 2 {
            for other in [0x5a, 0xff, 1] {
                let mut bytes = whole.clone();
                bytes[at] ^= other;
                if let (Some(own), others) = decoded_both_ways(&bytes) {
                    assert!(others.is_ok_and(|others| own.pixels() == others), "byte {at}");
                    taken += 1;
                }
            }
        }
        assert!(taken > 100, "{taken}");
        // Tables and headers: no fault.
        for at in 0..first {
            for other in [0, 1, 16, 0x7f, 0xff] {
                let mut bytes = whole.clone();
                bytes[at] = other;
                let _ = luma(&bytes);
            }
        }
    }

    #[test]
    fn a_scan_for_each_component_is_never_a_wrong_picture() {
        // Optimised tables make this encoder write the components one after the other.
        let grey: Vec<u8> = (0..64 * 48 * 3).map(|i| ((i / 3) % 251) as u8).collect();
        let mut bytes = Vec::new();
        let mut encoder = jpeg_encoder::Encoder::new(&mut bytes, 90);
        encoder.set_sampling_factor(jpeg_encoder::SamplingFactor::R_4_2_0);
        encoder.set_optimized_huffman_tables(true);
        encoder.encode(&grey, 64, 48, jpeg_encoder::ColorType::Rgb).unwrap();
        assert!(matches!(luma(&bytes), Err(Fault::Unsupported(_))));
    }
}
