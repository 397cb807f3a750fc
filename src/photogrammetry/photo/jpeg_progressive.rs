//! The luma of a progressive JPEG (ITU-T T.81, annex G), without holding all of its coefficients.
//!
//! Each scan is a stream of its own, and what it says of a block needs that block alone: so all scans are read side by
//! side, strip by strip, and no more than a strip's coefficients are there at any time. Scans of chroma alone are not read.
//! What is not usual, or does not fit, is `None` as in `jpeg_scan`: the decoder for all files says what it is.

use std::ops::{Range, RangeInclusive};
use std::rc::Rc;

use super::Luma;
use super::jpeg_codes::{Bits, Codes};
use super::jpeg_inverse::{BLOCKS, Coefficients, put};
use super::jpeg_structure::Structure;
use super::jpeg_tables::{Tables, ZIGZAG, luma_stands_alone};

type Block = [i16; 64];

/// Decodes what this decoder is for.
pub(super) fn luma(bytes: &[u8], structure: &Structure) -> Option<Luma> {
    if !luma_stands_alone(&structure.components) || !structure.progressive {
        return None;
    }
    let (mut tables, mut scans) = (Tables::default(), Vec::<Scan>::new());
    // By coefficient the last bit that has come.
    let mut known: [Option<u32>; 64] = [None; 64];
    let (mut at, mut runs) = (2, structure.runs.as_slice());
    for _ in 0..structure.scans {
        at = tables.next_scan(bytes, at)?;
        let (own, rest) = runs.split_at(runs_of_scan(bytes, runs));
        (own.first()?.start == at).then_some(())?;
        (runs, at) = (rest, own.last()?.end);
        if let Some(scan) = Scan::new(bytes, structure, &tables, own)? {
            // Each bit comes once, and in its turn (G.1.1.1.2).
            let (band, before) = scan.adds();
            known.get_mut(band)?.iter_mut().all(|last| last.replace(scan.shift) == before).then_some(())?;
            scans.push(scan);
        }
    }
    let (width, height) = (structure.width, structure.height);
    let [h, v] = structure.components.first()?.sampling.map(usize::from);
    let quantizer = tables.luma_quantizer()?;
    let grid = Grid { units: width.div_ceil(8 * h), blocks: width.div_ceil(8), sampling: [h, v] };
    let mut pixels = vec![0u8; width * height];
    let mut blocks: Vec<Block> = vec![[0; 64]; grid.row() * v];
    let mut group: Box<Coefficients> = Box::new([[0; BLOCKS]; 64]);
    for (n, strip) in pixels.chunks_mut(8 * v * width).enumerate() {
        blocks.fill([0; 64]);
        // Rows of blocks below the picture are there only where components are interleaved.
        let rows = (height.div_ceil(8) - n * v).min(v);
        for scan in &mut scans {
            scan.strip(&mut blocks, &grid, rows)?;
        }
        for (row, part) in strip.chunks_mut(8 * width).enumerate() {
            let own = &blocks[row * grid.row()..][..grid.blocks];
            for (eight, start) in own.chunks(BLOCKS).zip((0..).step_by(8 * BLOCKS)) {
                for (lane, block) in eight.iter().enumerate() {
                    for (place, quantizer) in ZIGZAG.iter().map(|z| usize::from(z & 63)).zip(quantizer) {
                        group[place][lane] = i32::from(block[place]).wrapping_mul(*quantizer);
                    }
                }
                put(&mut group, part, width, start);
            }
        }
    }
    scans.iter().all(Scan::is_used_up).then(|| Luma::new(width, height, pixels))?
}

/// How many of the runs, the first of which begins a scan, are that scan's: between them stand restart markers.
fn runs_of_scan(bytes: &[u8], runs: &[Range<usize>]) -> usize {
    let restarts = |pair: &[Range<usize>]| {
        let between = bytes.get(pair[0].end..pair[1].start).unwrap_or_default();
        matches!(between, [0xff, fill @ .., 0xd0..=0xd7] if fill.iter().all(|byte| *byte == 0xff))
    };
    runs.len().min(1 + runs.windows(2).take_while(|pair| restarts(pair)).count())
}

/// Where blocks of luma lie in a strip, one unit high.
struct Grid {
    /// Units along the strip.
    units: usize,
    /// Blocks along the picture, those alone that show something of it.
    blocks: usize,
    /// Luma blocks in a unit, along a row and a column.
    sampling: [usize; 2],
}

impl Grid {
    /// Blocks in a row of the strip.
    fn row(&self) -> usize {
        self.units * self.sampling[0]
    }
}

/// What a scan adds to a block.
enum Pass {
    /// The means, with those of other components in the same units: codes, or none where means are there and get another bit.
    Means { codes: Option<Rc<Codes>>, others: Vec<Option<Rc<Codes>>> },
    /// Coefficients of a band; whether those that are there get another bit.
    Band { codes: Rc<Codes>, from: usize, to: usize, more: bool },
}

/// One scan, as far as it has been read.
struct Scan<'a> {
    pass: Pass,
    /// The place of the bit that is the last one of this scan.
    shift: u32,
    bytes: &'a [u8],
    runs: std::slice::Iter<'a, Range<usize>>,
    bits: Bits<'a>,
    restart_interval: usize,
    units_left: usize,
    /// The mean of the block before.
    before: i32,
    /// Blocks of which this scan has nothing more to say.
    ended: u32,
}

impl<'a> Scan<'a> {
    /// The scan whose header was read last; no scan where luma takes no part in it. The outer `None`: not usual.
    fn new(bytes: &'a [u8], structure: &Structure, tables: &Tables, runs: &'a [Range<usize>]) -> Option<Option<Self>> {
        let [count, listed @ .., from, to, bits] = tables.scan.as_slice() else { return None };
        let (listed, []) = listed.as_chunks::<2>() else { return None };
        let (from, to, high, low) = (usize::from(*from), usize::from(*to), bits >> 4, bits & 15);
        if usize::from(*count) != listed.len() || from > to || to > 63 || low > 13 || high > 0 && high != low + 1 {
            return None;
        }
        let components = &structure.components;
        let interleaved = listed.len() > 1;
        if interleaved && !listed.iter().map(|c| c[0]).eq(components.iter().map(|c| c.id)) {
            return None;
        }
        let luma = listed.first()?;
        if luma[0] != components.first()?.id {
            return Some(None);
        }
        let more = high > 0;
        let dc = |[_, selector]: &[u8; 2]| if more { Some(None) } else { tables.dc(*selector).cloned().map(Some) };
        let pass = match (from, to) {
            (0, 0) => Pass::Means { codes: dc(luma)?, others: listed[1..].iter().map(dc).collect::<Option<_>>()? },
            (0, _) => return None,
            _ if interleaved => return None,
            _ => Pass::Band { codes: tables.ac(luma[1])?.clone(), from, to, more },
        };
        let mut runs = runs.iter();
        let first = Bits::new(bytes.get(runs.next()?.clone())?);
        let restart_interval = tables.restart_interval;
        Some(Some(Scan {
            pass,
            shift: u32::from(low),
            bytes,
            runs,
            bits: first,
            restart_interval,
            units_left: restart_interval,
            before: 0,
            ended: 0,
        }))
    }

    /// Of which coefficients it is, and the bit that must have come before its own.
    fn adds(&self) -> (RangeInclusive<usize>, Option<u32>) {
        let (band, more) = match &self.pass {
            Pass::Means { codes, .. } => (0..=0, codes.is_none()),
            Pass::Band { from, to, more, .. } => (*from..=*to, *more),
        };
        (band, more.then_some(self.shift + 1))
    }

    /// Before each unit: where a restart marker stands, what is known of the units before is forgotten.
    fn unit(&mut self) -> Option<()> {
        if self.restart_interval > 0 {
            if self.units_left == 0 {
                self.is_at_end().then_some(())?;
                self.bits = Bits::new(self.bytes.get(self.runs.next()?.clone())?);
                (self.before, self.units_left) = (0, self.restart_interval);
            }
            self.units_left -= 1;
        }
        Some(())
    }

    fn is_at_end(&self) -> bool {
        self.bits.is_used_up() && self.ended == 0
    }

    /// Whether all of the scan was read, and nothing more.
    fn is_used_up(&self) -> bool {
        self.is_at_end() && self.runs.len() == 0
    }

    /// Adds what the scan has for a strip of which so many rows of blocks show something of the picture.
    fn strip(&mut self, blocks: &mut [Block], grid: &Grid, rows: usize) -> Option<()> {
        if matches!(&self.pass, Pass::Means { others, .. } if !others.is_empty()) {
            return self.units(blocks, grid);
        }
        for row in blocks.chunks_mut(grid.row()).take(rows) {
            for block in &mut row[..grid.blocks] {
                self.unit()?;
                match &self.pass {
                    Pass::Means { codes, .. } => {
                        mean(&mut self.bits, codes.as_deref(), &mut self.before, self.shift, block)?
                    }
                    Pass::Band { codes, from, to, more } => {
                        let band = Band { codes, from: *from, to: *to, shift: self.shift };
                        if *more {
                            band.more(&mut self.bits, &mut self.ended, block)?;
                        } else {
                            band.first(&mut self.bits, &mut self.ended, block)?;
                        }
                    }
                }
            }
        }
        Some(())
    }

    /// The means of all components, unit by unit.
    fn units(&mut self, blocks: &mut [Block], grid: &Grid) -> Option<()> {
        let [h, v] = grid.sampling;
        for unit in 0..grid.units {
            self.unit()?;
            let Pass::Means { codes, others } = &self.pass else { return None };
            for place in (0..v).flat_map(|row| (0..h).map(move |k| row * grid.row() + unit * h + k)) {
                mean(&mut self.bits, codes.as_deref(), &mut self.before, self.shift, &mut blocks[place])?;
            }
            for codes in others {
                mean(&mut self.bits, codes.as_deref(), &mut 0, 0, &mut [0; 64])?;
            }
        }
        Some(())
    }
}

/// A block's mean: at first its difference from the one before, then a bit more of it (G.1.2.1).
#[inline(always)]
fn mean(bits: &mut Bits<'_>, codes: Option<&Codes>, before: &mut i32, shift: u32, block: &mut Block) -> Option<()> {
    if let Some(codes) = codes {
        bits.fill();
        *before = before.wrapping_add(codes.next(bits)?.value);
        block[0] = before.wrapping_shl(shift) as i16;
    } else if bits.bit() {
        block[0] |= 1 << shift;
    }
    Some(())
}

/// A band of coefficients.
struct Band<'a> {
    codes: &'a Codes,
    from: usize,
    to: usize,
    shift: u32,
}

impl Band<'_> {
    /// The first of a band's scans (G.1.2.2).
    #[inline(always)]
    fn first(&self, bits: &mut Bits<'_>, ended: &mut u32, block: &mut Block) -> Option<()> {
        if *ended > 0 {
            *ended -= 1;
            return Some(());
        }
        let mut k = self.from - 1;
        while k < self.to {
            bits.fill();
            let step = self.codes.next(bits)?;
            if let Some(blocks) = step.end_run() {
                *ended = blocks - 1;
                return Some(());
            }
            k += step.on;
            if k > self.to {
                return None;
            }
            block[usize::from(ZIGZAG[k] & 63)] = step.value.wrapping_shl(self.shift) as i16;
        }
        Some(())
    }

    /// A bit more of all that is not zero, and what only now is not (G.1.2.3).
    fn more(&self, bits: &mut Bits<'_>, ended: &mut u32, block: &mut Block) -> Option<()> {
        let mut k = self.from;
        while *ended == 0 && k <= self.to {
            bits.fill();
            let step = self.codes.next(bits)?;
            if let Some(blocks) = step.end_run() {
                *ended = blocks;
                break;
            }
            if step.value.abs() > 1 {
                return None;
            }
            // Zeros that stay zero, before the one that this step is for.
            let mut zeros = step.on - 1;
            loop {
                let place = ZIGZAG.get(k).filter(|_| k <= self.to)?;
                let value = &mut block[usize::from(place & 63)];
                k += 1;
                if *value != 0 {
                    self.one_more(bits, value);
                } else if zeros == 0 {
                    *value = (step.value << self.shift) as i16;
                    break;
                } else {
                    zeros -= 1;
                }
            }
        }
        if *ended > 0 {
            for place in &ZIGZAG[k..=self.to] {
                let value = &mut block[usize::from(place & 63)];
                if *value != 0 {
                    self.one_more(bits, value);
                }
            }
            *ended -= 1;
        }
        Some(())
    }

    #[inline(always)]
    fn one_more(&self, bits: &mut Bits<'_>, value: &mut i16) {
        if bits.bit() {
            let bit = 1i16 << self.shift;
            if *value & bit == 0 {
                *value = value.wrapping_add(if *value > 0 { bit } else { -bit });
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::jpeg::decoded_both_ways;

    /// 27 x 21 px, chroma halved, as libjpeg-turbo 3 (Pillow 13) writes them: means and bands in several scans, each with
    /// bits that come later; the second with a restart marker after every second unit.
    const PLAIN: &str = concat!(
        "ffd8ffe000104a46494600010100000100010000ffdb004300140e0f120f0d14121012171514181e32211e1c1c1e3d2c2e243249404c",
        "4b47404645505a736250556d5645466488656d777b8182814e608d978c7d96737e817cffdb0043011517171e1a1e3b21213b7c534653",
        "7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7cffc20011",
        "080015001b03012200021101031101ffc4001800000203000000000000000000000000000003010204ffc40016010101010000000000",
        "0000000000000000000102ffda000c0301000210031000000194468d66a935a22a0ad401ffc4001a1000020301010000000000000000",
        "00000001020003113221ffda0008010100010502b482aa3db4cc6806cd0a814b40ea053dd9dd31baffc4001411010000000000000000",
        "0000000000000020ffda0008010301013f011fffc40014110100000000000000000000000000000020ffda0008010201013f011fffc4",
        "001c1000020202030000000000000000000000000121311011128191ffda0008010100063f02b13d408a7e10717641a76758633fffc4",
        "001d10000301000105000000000000000000000001112131417181a1c1ffda0008010100013f218848f7a31da1ae453c34fb16d500f7",
        "894b2e92f0b53609cc898f0e41cbe0f99edb3fffda000c03010002000300000010da7fbeffc400161101010100000000000000000000",
        "000000001101ffda0008010301013f105463ffc40017110003010000000000000000000000000000011031ffda0008010201013f10af",
        "0fffc4001f10010002020202030000000000000000000100112131415171a1b1c1d1ffda0008010100013f10009ba8ba669b61c70672",
        "dc5c9a5dedd4082e8c22665e817baa850900d1db759d7243301b66be6545c819526e3d1cfd8992fb782602eff70da7a8ee7fffd9",
    );
    const RESTARTS: &str = concat!(
        "ffd8ffe000104a46494600010100000100010000ffdb004300140e0f120f0d14121012171514181e32211e1c1c1e3d2c2e243249404c",
        "4b47404645505a736250556d5645466488656d777b8182814e608d978c7d96737e817cffdb0043011517171e1a1e3b21213b7c534653",
        "7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7c7cffc20011",
        "080015001b03012200021101031101ffc4001800000301010000000000000000000000000002040301ffc40016010101010000000000",
        "0000000000000000020001ffdd00040002ffda000c03010002100310000001ee0b4a0b3b595fffd04506769832ffc4001a1001000203",
        "01000000000000000000000001000203113212ffda0008010100010502ca8d6a3bffd0caee7967ffd1059bf34fffd22ada1703ffd3c3",
        "d64eff00ffd4c32dd7ffc40014110100000000000000000000000000000010ffda0008010301013f013fffd03fffc400141101000000",
        "00000000000000000000000010ffda0008010201013f013fffd03fffc4001a1001010003010100000000000000000000000111213112",
        "81ffda0008010100063f02d54affd09871ffd1d3cdebffd2d315ffd3f8afffd4aaffc4001c1000030101000301000000000000000000",
        "0001112131105191a1ffda0008010100013f214083df6648e5ec3fffd056a4fa578df0ffd17b0a56b64bc3ffd2e42c1199a9467fffd3",
        "e8fc37ffd43fde7fffda000c03010002000300000010ff007fffd0f1dfffc40018110101000300000000000000000000000000011121",
        "41ffda0008010301013f1065ffd0e24dbfffc40017110100030000000000000000000000000000011031ffda0008010201013f10afff",
        "d04e3fffc4001f100100020202020300000000000000000001001121314181517161a1b1ffda0008010100013f101248bd16e1e25a6c",
        "42ea01ddcfffd04b04e08d6a02150963ca7fffd1161685b90c772bab0617bb4cf73fffd22aab53486fdc232182ae931e27ffd3cfe41a",
        "ec9827251f53ffd4c91eb7dc4a83cff67fffd9",
    );

    fn bytes(hex: &str) -> Vec<u8> {
        (0..hex.len() / 2).map(|i| u8::from_str_radix(&hex[2 * i..2 * i + 2], 16).unwrap()).collect()
    }

    #[test]
    fn bits_that_come_later_make_the_same_pixels() {
        for hex in [PLAIN, RESTARTS] {
            let (own, other) = decoded_both_ways(&bytes(hex));
            assert!(own.is_some_and(|own| own.pixels() == other.unwrap()));
        }
    }

    /// A byte of the picture data is another one: no fault, and where the other decoder has a picture it is the same. A
    /// scan of chroma is read by that one alone.
    #[test]
    fn damaged_scans_are_no_other_pictures() {
        let mut taken = 0;
        for hex in [PLAIN, RESTARTS] {
            let whole = bytes(hex);
            for at in 2..whole.len() {
                for other in [0x5a, 0xff, 1, 0x10] {
                    let mut damaged = whole.clone();
                    damaged[at] ^= other;
                    if let (Some(own), Ok(other)) = decoded_both_ways(&damaged) {
                        assert!(own.pixels() == other, "byte {at}");
                        taken += 1;
                    }
                }
            }
        }
        assert!(taken > 100, "{taken}");
    }
}
