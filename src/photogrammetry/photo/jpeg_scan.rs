//! The luma of a JPEG as cameras write it: sequential, eight bits, one scan. Of the other components codes are passed over.
//!
//! Only what is whole and usual is decoded here: for everything else, and wherever something does not fit, the answer is
//! `None`, and the decoder for all files (zune-jpeg) says what it is. Where this one has pixels they are that one's, to the bit.

use super::Luma;
use super::jpeg_codes::{Bits, Codes, END};
use super::jpeg_inverse::{BLOCKS, Coefficients, pixels};
use super::jpeg_structure::Structure;

/// From a coefficient's place in the file to that in the block (T.81 figure A.6).
const ZIGZAG: [u8; 64] = [
    0, 1, 8, 16, 9, 2, 3, 10, 17, 24, 32, 25, 18, 11, 4, 5, 12, 19, 26, 33, 40, 48, 41, 34, 27, 20, 13, 6, 7, 14, 21,
    28, 35, 42, 49, 56, 57, 50, 43, 36, 29, 22, 15, 23, 30, 37, 44, 51, 58, 59, 52, 45, 38, 31, 39, 46, 53, 60, 61, 54,
    47, 55, 62, 63,
];

/// Tables as the segments before the picture data define them, by their number.
#[derive(Default)]
struct Tables {
    /// In the file's order.
    quantizers: [Option<[i32; 64]>; 4],
    dc: [Option<Codes>; 4],
    ac: [Option<Codes>; 4],
    restart_interval: usize,
    /// Numbers of the frame's tables of quantizers.
    quantizer_of: Vec<usize>,
    /// The header of the scan.
    scan: Vec<u8>,
}

/// Decodes what this decoder is for.
pub(super) fn luma(bytes: &[u8], structure: &Structure) -> Option<Luma> {
    let components = &structure.components;
    let usual = match components.as_slice() {
        [one] => one.sampling == [1, 1],
        [luma, rest @ ..] => {
            matches!(luma.sampling, [1, 1] | [2, 1] | [2, 2]) && rest.iter().all(|c| c.sampling == [1, 1])
        }
        [] => false,
    };
    if !usual || structure.progressive || structure.scans != 1 || components.len() > 3 {
        return None;
    }
    let tables = tables(bytes)?;
    let [count, listed @ .., 0, 63, 0] = tables.scan.as_slice() else { return None };
    let (listed, []) = listed.as_chunks::<2>() else { return None };
    if usize::from(*count) != components.len() || !listed.iter().map(|c| c[0]).eq(components.iter().map(|c| c.id)) {
        return None;
    }
    let codes = |[_, number]: &[u8; 2]| {
        Some((tables.dc.get(usize::from(number >> 4))?.as_ref()?, tables.ac.get(usize::from(number & 15))?.as_ref()?))
    };
    let scan = Scan {
        quantizer: tables.quantizers.get(*tables.quantizer_of.first()?)?.as_ref()?,
        luma: codes(listed.first()?)?,
        rest: listed[1..].iter().map(codes).collect::<Option<_>>()?,
        sampling: components.first()?.sampling.map(usize::from),
    };
    scan.decode(bytes, structure, tables.restart_interval)
}

/// Walks the segments before the picture data.
fn tables(bytes: &[u8]) -> Option<Tables> {
    let mut tables = Tables::default();
    let mut at = 2;
    loop {
        let &[0xff, marker, high, low] = bytes.get(at..at + 4)? else { return None };
        let end = at + 2 + usize::from(u16::from_be_bytes([high, low]));
        let segment = bytes.get(at + 4..end)?;
        match marker {
            0xdb => quantizers(&mut tables, segment)?,
            0xc4 => codes(&mut tables, segment)?,
            0xc0 | 0xc1 => {
                tables.quantizer_of = segment.get(6..)?.chunks_exact(3).map(|c| usize::from(c[2])).collect();
            }
            0xdd => tables.restart_interval = usize::from(u16::from_be_bytes(*segment.first_chunk()?)),
            0xda => {
                tables.scan = segment.to_vec();
                return Some(tables);
            }
            0xc2..=0xcf => return None,
            _ => {}
        }
        at = end;
    }
}

/// B.2.4.1, tables of eight bits.
fn quantizers(tables: &mut Tables, mut segment: &[u8]) -> Option<()> {
    while let [number, rest @ ..] = segment {
        let table: &[u8; 64] = rest.first_chunk()?;
        *tables.quantizers.get_mut(usize::from(*number))? = Some(table.map(i32::from));
        segment = &rest[64..];
    }
    Some(())
}

/// B.2.4.2.
fn codes(tables: &mut Tables, mut segment: &[u8]) -> Option<()> {
    while let [head, rest @ ..] = segment {
        let (counts, rest) = rest.split_first_chunk::<16>()?;
        let count = counts.iter().map(|n| usize::from(*n)).sum();
        let (symbols, rest) = rest.split_at_checked(count)?;
        let kind = match head >> 4 {
            0 => &mut tables.dc,
            1 => &mut tables.ac,
            _ => return None,
        };
        *kind.get_mut(usize::from(head & 15))? = Some(Codes::new(counts, symbols, head >> 4 == 0)?);
        segment = rest;
    }
    Some(())
}

/// All that the picture data are read with.
struct Scan<'a> {
    quantizer: &'a [i32; 64],
    /// DC and AC.
    luma: (&'a Codes, &'a Codes),
    rest: Vec<(&'a Codes, &'a Codes)>,
    /// Luma blocks in a unit, along a row and a column.
    sampling: [usize; 2],
}

impl Scan<'_> {
    fn decode(&self, bytes: &[u8], structure: &Structure, restart_interval: usize) -> Option<Luma> {
        let (width, height, [h, v]) = (structure.width, structure.height, self.sampling);
        let columns = width.div_ceil(8 * h);
        let mut pixels = vec![0u8; width * height];
        let mut runs = structure.runs.iter();
        let mut bits = Bits::new(bytes.get(runs.next()?.clone())?);
        let (mut before, mut units_left) = (0, restart_interval);
        // Eight blocks beside each other, in each row of the units' blocks.
        let mut groups: [Box<Coefficients>; 2] = std::array::from_fn(|_| Box::new([[0; BLOCKS]; 64]));
        for strip in pixels.chunks_mut(8 * v * width) {
            let (mut lane, mut start) = (0, 0);
            for column in 0..columns {
                if restart_interval > 0 && units_left == 0 {
                    if !bits.is_used_up() {
                        return None;
                    }
                    bits = Bits::new(bytes.get(runs.next()?.clone())?);
                    (before, units_left) = (0, restart_interval);
                }
                units_left = units_left.wrapping_sub(1);
                for group in groups.iter_mut().take(v) {
                    for k in 0..h {
                        self.block(&mut bits, &mut before, group, lane + k)?;
                    }
                }
                for codes in &self.rest {
                    walk(&mut bits, *codes, |_, _| {})?;
                }
                lane += h;
                if lane == BLOCKS || column + 1 == columns {
                    for (k, group) in groups.iter_mut().take(v).enumerate() {
                        // Below the picture there is nowhere to put them.
                        put(group, strip.get_mut(8 * width * k..).unwrap_or_default(), width, start);
                    }
                    (lane, start) = (0, start + 8 * BLOCKS);
                }
            }
        }
        (bits.is_used_up() && runs.next().is_none()).then_some(())?;
        Luma::new(width, height, pixels)
    }

    /// Reads a block of luma; `before` is the mean of the one before.
    #[inline(always)]
    fn block(&self, bits: &mut Bits<'_>, before: &mut i32, group: &mut Coefficients, lane: usize) -> Option<()> {
        let lane = lane % BLOCKS;
        let difference = walk(bits, self.luma, |k, value| {
            group[usize::from(ZIGZAG[k] & 63)][lane] = value.wrapping_mul(self.quantizer[k]);
        })?;
        *before = before.wrapping_add(difference);
        group[0][lane] = before.wrapping_mul(self.quantizer[0]);
        Some(())
    }
}

/// Reads a block: shows the places that are not zero with their values, and returns the first one's.
#[inline(always)]
fn walk(place: &mut Bits<'_>, (dc, ac): (&Codes, &Codes), mut show: impl FnMut(usize, i32)) -> Option<i32> {
    let mut bits = *place;
    bits.fill();
    let first = dc.next(&mut bits)?.value;
    let mut k = 0usize;
    loop {
        bits.fill();
        // So many bits hold two codes with their numbers.
        for _ in 0..2 {
            let step = ac.next(&mut bits)?;
            k = k.wrapping_add(step.on);
            if k <= 63 {
                show(k, step.value);
            }
            if k >= 63 {
                *place = bits;
                return (k == 63 || k >= END).then_some(first);
            }
        }
    }
}

/// Writes eight blocks to their place in rows of the picture, as far as they lie within it.
fn put(group: &mut Coefficients, part: &mut [u8], width: usize, start: usize) {
    let mut rows = [[0; BLOCKS]; 8];
    pixels(group, &mut rows);
    for (line, words) in part.chunks_exact_mut(width).zip(&rows) {
        let (whole, rest) = line[start.min(width)..].as_chunks_mut::<8>();
        for (place, word) in whole.iter_mut().zip(words) {
            *place = word.to_le_bytes();
        }
        if let Some(word) = words.get(whole.len()) {
            rest.copy_from_slice(&word.to_le_bytes()[..rest.len()]);
        }
    }
}
