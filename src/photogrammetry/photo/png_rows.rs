//! PNG to luma, a row at a time, so that a picture of 16 bits and four
//! channels needs no more memory than its luma.

use std::io::Cursor;

use png::{ColorType, Decoder, DecodingError, InterlaceInfo, Limits, Transformations, expand_interlaced_row};

use super::error::{Fault, as_it_came};
use super::{Luma, jpeg::luma_of, size::check_size};
use crate::words::phrase;

/// Memory that the decoder may use besides the rows; colour profiles and
/// texts count.
const DECODER_BYTES: usize = 64 << 20;

/// Decodes the luma of a PNG; transparency is dropped, 16 bits keep the upper 8.
pub(super) fn luma(bytes: &[u8]) -> Result<Luma, Fault> {
    let mut decoder = Decoder::new_with_limits(Cursor::new(bytes), Limits { bytes: DECODER_BYTES });
    decoder.set_transformations(Transformations::EXPAND | Transformations::STRIP_16);
    decoder.set_ignore_text_chunk(true);
    let header = decoder.read_header_info().map_err(fault)?;
    let [width, height] = [header.width as usize, header.height as usize];
    let count = check_size(width, height)?;
    let mut reader = decoder.read_info().map_err(fault)?;
    let channels = reader.output_color_type().0;
    let mut pixels = vec![0; count];
    let mut line = Vec::with_capacity(width);
    let mut next = 0;
    while let Some(row) = reader.next_interlaced_row().map_err(fault)? {
        line.clear();
        extend_with_luma(&mut line, row.data(), channels);
        match row.interlace() {
            InterlaceInfo::Null(_) => {
                let place = pixels.get_mut(next..next + width).ok_or_else(wrong_rows)?;
                place.copy_from_slice(line.get(..width).ok_or_else(wrong_rows)?);
                next += width;
            }
            InterlaceInfo::Adam7(place) => expand_interlaced_row(&mut pixels, width, &line, place, 8),
        }
    }
    reader.finish().map_err(fault)?;
    Luma::new(width, height, pixels).ok_or_else(|| Fault::Damaged(phrase!("doors-fault-size-changed")))
}

/// Appends one row's luma; transparency is passed over.
fn extend_with_luma(line: &mut Vec<u8>, row: &[u8], colours: ColorType) {
    match colours {
        ColorType::GrayscaleAlpha => line.extend(row.chunks_exact(2).map(|p| p[0])),
        ColorType::Rgb => line.extend(row.chunks_exact(3).map(|p| luma_of([p[0], p[1], p[2]]))),
        ColorType::Rgba => line.extend(row.chunks_exact(4).map(|p| luma_of([p[0], p[1], p[2]]))),
        ColorType::Grayscale | ColorType::Indexed => line.extend_from_slice(row),
    }
}

fn wrong_rows() -> Fault {
    Fault::Damaged(phrase!("doors-fault-rows"))
}

fn fault(error: DecodingError) -> Fault {
    match error {
        DecodingError::IoError(_) => Fault::CutOff(as_it_came(error.to_string())),
        DecodingError::LimitsExceeded => Fault::Unsupported(phrase!("doors-variant-png-extra")),
        other => Fault::Damaged(as_it_came(other.to_string())),
    }
}
