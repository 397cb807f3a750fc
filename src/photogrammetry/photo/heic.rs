//! HEIC (ISO/IEC 23008-12 with HEVC pictures), as phones store photos unless
//! they are told to write JPEG. Luma comes on the coded grid, unturned.

use heifer::{
    heifer_hevc_dec::{
        decoder::{DecodeOptions, decode_picture},
        recon::Frame,
    },
    heifer_isobmff::{
        HeifFile, ItemId,
        boxes::{ColorInfo, Property},
    },
};
use rayon::prelude::*;

use super::{
    Luma, Orientation,
    error::{Fault, as_it_came},
    limits::MAX_PIXELS,
    size::check_size,
};
use crate::words::phrase;

/// Decodes the luma of a HEIC picture: one coded picture or a grid of tiles.
pub(super) fn luma(bytes: &[u8]) -> Result<Luma, Fault> {
    let file = open(bytes)?;
    let id = file.primary_id;
    let kind = file.item(id).map_err(fault)?.item_type.0;
    let ([width, height], pixels) = match &kind {
        b"hvc1" => tile(&file, id)?,
        b"grid" => grid(&file, id)?,
        other => {
            let what = String::from_utf8_lossy(other).into_owned();
            return Err(Fault::Unsupported(phrase!("doors-variant-heic-by", what = what)));
        }
    };
    Luma::new(width, height, pixels).ok_or_else(|| Fault::Damaged(phrase!("doors-fault-size-changed")))
}

/// Decodes the colours, upright: width, height, red, green, blue in turn.
pub(super) fn rgb(bytes: &[u8]) -> Result<([usize; 2], Vec<u8>), Fault> {
    open(bytes)?;
    let options = heifer::Options { max_threads: 0, max_pixels: MAX_PIXELS as u64 };
    let picture = heifer::decode_rgba8(bytes, &options).map_err(fault)?;
    Ok(([picture.width as usize, picture.height as usize], picture.into_rgb8()))
}

/// How the container turns the picture: it, not the EXIF record, counts in a
/// HEIC file (ISO/IEC 23008-12, 6.5.10 and 6.5.12: rotation, then mirror).
pub(super) fn orientation(bytes: &[u8]) -> Option<Orientation> {
    let file = HeifFile::parse(bytes).ok()?;
    let (mut quarters, mut mirror) = (0, None);
    for property in file.item_properties(file.primary_id).ok()? {
        match *property {
            Property::Rotation(anticlockwise) => quarters = anticlockwise & 3,
            Property::Mirror(top_bottom) => mirror = Some(top_bottom),
            _ => {}
        }
    }
    let [plain, left_right, top_bottom] = [[1, 2, 4], [8, 7, 5], [3, 4, 2], [6, 5, 7]][usize::from(quarters)];
    Some(Orientation(match mirror {
        None => plain,
        Some(false) => left_right,
        Some(true) => top_bottom,
    }))
}

/// The container, after a look at its size and its boxes.
fn open(bytes: &[u8]) -> Result<HeifFile<'_>, Fault> {
    check_boxes(bytes)?;
    let file = HeifFile::parse(bytes).map_err(fault)?;
    let stated = file.image_size(file.primary_id).map_err(fault)?;
    let (width, height) = stated.ok_or_else(|| Fault::Damaged(phrase!("doors-fault-no-size")))?;
    check_size(width as usize, height as usize)?;
    Ok(file)
}

/// One coded picture's luma, cut to the size that the file states.
fn tile(file: &HeifFile, id: ItemId) -> Result<([usize; 2], Vec<u8>), Fault> {
    let options = DecodeOptions { max_pixels: MAX_PIXELS as u64, ..DecodeOptions::default() };
    let frame = decode_picture(&file.hevc_bitstream(id).map_err(fault)?, options).map_err(fault)?;
    let coded = [frame.widths[0], frame.heights[0]].map(|side| side as usize);
    let stated = file.image_size(id).map_err(fault)?.map_or(coded, |(width, height)| [width as usize, height as usize]);
    if stated[0] > coded[0] || stated[1] > coded[1] {
        let shown = |[width, height]: [usize; 2]| format!("{width} x {height}");
        return Err(Fault::Damaged(phrase!("doors-fault-heic-pixels", coded = shown(coded), stated = shown(stated))));
    }
    let level = levels(&frame, full_range(file, id)?);
    let rows = frame.planes[0].chunks_exact(coded[0]).take(stated[1]);
    Ok((stated, rows.flat_map(|row| row[..stated[0]].iter().map(|&sample| level(sample))).collect()))
}

/// A grid's tiles, put side by side (ISO/IEC 23008-12, 6.6.2.3).
fn grid(file: &HeifFile, id: ItemId) -> Result<([usize; 2], Vec<u8>), Fault> {
    let grid = file.grid(id).map_err(fault)?;
    let [width, height] = [grid.output_width as usize, grid.output_height as usize];
    let mut pixels = vec![0; check_size(width, height)?];
    let [rows, columns] = [grid.rows, grid.columns].map(usize::from);
    let ids = file.referenced_items(id, b"dimg");
    if ids.len() != rows * columns {
        return Err(Fault::Damaged(phrase!("doors-fault-tiles", found = ids.len(), rows = rows, columns = columns)));
    }
    let (mut top, mut covered) = (0, 0);
    for row in ids.chunks(columns) {
        let tiles: Vec<_> = row.par_iter().map(|&id| tile(file, id)).collect::<Result<_, _>>()?;
        let (mut left, mut tall) = (0, 0);
        for ([tile_width, tile_height], samples) in &tiles {
            let wide = (*tile_width).min(width.saturating_sub(left));
            for (v, line) in samples.chunks_exact(*tile_width).enumerate().take(height.saturating_sub(top)) {
                let start = (top + v) * width + left;
                pixels[start..start + wide].copy_from_slice(&line[..wide]);
                covered += wide;
            }
            left += tile_width;
            tall = *tile_height;
        }
        top += tall;
    }
    if covered != pixels.len() {
        return Err(Fault::Damaged(phrase!("doors-fault-uncovered")));
    }
    Ok(([width, height], pixels))
}

/// Whether the file itself says that luma uses all levels; it counts before
/// what the coded picture says.
fn full_range(file: &HeifFile, id: ItemId) -> Result<Option<bool>, Fault> {
    Ok(file.item_properties(id).map_err(fault)?.find_map(|property| match property {
        Property::Color(ColorInfo::Nclx { full_range, .. }) => Some(*full_range),
        _ => None,
    }))
}

/// Coded samples to eight bits; the limited range is 16 to 235 (ITU-R BT.709).
fn levels(frame: &Frame, full_range: Option<bool>) -> impl Fn(u16) -> u8 + use<> {
    let depth = frame.bit_depth[0].clamp(8, 16);
    let most = f32::from(u16::MAX >> (16 - depth));
    let unit = f32::from(1_u16 << (depth - 8));
    let (black, white) = if full_range.unwrap_or(frame.full_range) { (0.0, most) } else { (16.0 * unit, 235.0 * unit) };
    move |sample| ((f32::from(sample) - black) * (255.0 / (white - black))).round().clamp(0.0, 255.0) as u8
}

/// Whether the file holds its outermost boxes whole (ISO/IEC 14496-12, 4.2):
/// the decoder looks only at those bytes that the picture needs.
fn check_boxes(bytes: &[u8]) -> Result<(), Fault> {
    let mut at = 0;
    while at < bytes.len() {
        let number = |from: usize, count: usize| -> Option<u64> {
            Some(bytes.get(from..from + count)?.iter().fold(0, |n, &byte| n << 8 | u64::from(byte)))
        };
        let size = match number(at, 4) {
            // The last box reaches to the end of the file.
            Some(0) => return Ok(()),
            Some(1) => number(at + 8, 8),
            size => size,
        };
        let end = size.filter(|&size| size >= 8).and_then(|size| at.checked_add(usize::try_from(size).ok()?));
        at = end
            .filter(|&end| end <= bytes.len())
            .ok_or_else(|| Fault::CutOff(phrase!("doors-fault-heic-box", end = bytes.len(), at = at)))?;
    }
    Ok(())
}

fn fault(error: impl Into<heifer::Error>) -> Fault {
    match error.into() {
        heifer::Error::Container(heifer::heifer_isobmff::Error::UnexpectedEof) => {
            Fault::CutOff(phrase!("doors-fault-heic-early"))
        }
        heifer::Error::Unsupported(what) => {
            Fault::Unsupported(phrase!("doors-variant-heic-with", what = what.to_string()))
        }
        other => Fault::Damaged(as_it_came(other.to_string())),
    }
}
