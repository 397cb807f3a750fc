//! The luma of a JPEG as cameras write it: sequential, eight bits, one scan. Of the other components codes are passed over.
//!
//! Only what is whole and usual is decoded here: for everything else, and wherever something does not fit, the answer is
//! `None`, and the decoder for all files (zune-jpeg) says what it is. Where this one has pixels they are that one's, to the bit.

use super::Luma;
use super::jpeg_codes::{Bits, Codes, END};
use super::jpeg_inverse::{BLOCKS, Coefficients, put};
use super::jpeg_structure::Structure;
use super::jpeg_tables::{Tables, ZIGZAG, luma_stands_alone};

/// Decodes what this decoder is for.
pub(super) fn luma(bytes: &[u8], structure: &Structure) -> Option<Luma> {
    let components = &structure.components;
    if !luma_stands_alone(components) || structure.progressive || structure.scans != 1 {
        return None;
    }
    let mut tables = Tables::default();
    tables.next_scan(bytes, 2)?;
    let [count, listed @ .., 0, 63, 0] = tables.scan.as_slice() else { return None };
    let (listed, []) = listed.as_chunks::<2>() else { return None };
    if usize::from(*count) != components.len() || !listed.iter().map(|c| c[0]).eq(components.iter().map(|c| c.id)) {
        return None;
    }
    let codes = |[_, selector]: &[u8; 2]| Some((&**tables.dc(*selector)?, &**tables.ac(*selector)?));
    let scan = Scan {
        quantizer: tables.luma_quantizer()?,
        luma: codes(listed.first()?)?,
        rest: listed[1..].iter().map(codes).collect::<Option<_>>()?,
        sampling: components.first()?.sampling.map(usize::from),
    };
    scan.decode(bytes, structure, tables.restart_interval)
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
