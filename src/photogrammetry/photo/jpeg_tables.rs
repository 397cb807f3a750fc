//! The tables of a JPEG file as they stand when a scan begins (ITU-T T.81, B.2.4), and the scan's header.

use std::rc::Rc;

use super::jpeg_codes::{Codes, Kind};
use super::jpeg_structure::Component;

/// From a coefficient's place in the file to that in the block (T.81 figure A.6).
pub(super) const ZIGZAG: [u8; 64] = [
    0, 1, 8, 16, 9, 2, 3, 10, 17, 24, 32, 25, 18, 11, 4, 5, 12, 19, 26, 33, 40, 48, 41, 34, 27, 20, 13, 6, 7, 14, 21,
    28, 35, 42, 49, 56, 57, 50, 43, 36, 29, 22, 15, 23, 30, 37, 44, 51, 58, 59, 52, 45, 38, 31, 39, 46, 53, 60, 61, 54,
    47, 55, 62, 63,
];

/// Tables as the segments before the picture data define them, by their number.
#[derive(Default)]
pub(super) struct Tables {
    /// In the file's order.
    quantizers: [Option<[i32; 64]>; 4],
    dc: [Option<Rc<Codes>>; 4],
    ac: [Option<Rc<Codes>>; 4],
    pub(super) restart_interval: usize,
    /// Numbers of the frame's tables of quantizers.
    quantizer_of: Vec<usize>,
    /// Blocks are made up by several scans.
    progressive: bool,
    /// The header of the scan.
    pub(super) scan: Vec<u8>,
}

/// Whether the first component has a luma's place: no other is finer, and its units are those that decoders agree on.
pub(super) fn luma_stands_alone(components: &[Component]) -> bool {
    match components {
        [one] => one.sampling == [1, 1],
        [luma, rest @ ..] => {
            matches!(luma.sampling, [1, 1] | [2, 1] | [2, 2])
                && rest.len() <= 2
                && rest.iter().all(|c| c.sampling == [1, 1])
        }
        [] => false,
    }
}

impl Tables {
    /// Walks the segments from `at` up to the next picture data: where those begin. `None` where something is unusual.
    pub(super) fn next_scan(&mut self, bytes: &[u8], mut at: usize) -> Option<usize> {
        loop {
            let &[0xff, marker, high, low] = bytes.get(at..at + 4)? else { return None };
            let end = at + 2 + usize::from(u16::from_be_bytes([high, low]));
            let segment = bytes.get(at + 4..end)?;
            match marker {
                // The other quantizers would be those of what has been decoded already.
                0xdb if self.scan.is_empty() => self.add_quantizers(segment)?,
                0xc4 => self.add_codes(segment)?,
                0xc0..=0xc2 => {
                    self.progressive = marker == 0xc2;
                    self.quantizer_of = segment.get(6..)?.chunks_exact(3).map(|c| usize::from(c[2])).collect();
                }
                0xdd => self.restart_interval = usize::from(u16::from_be_bytes(*segment.first_chunk()?)),
                0xda => {
                    self.scan = segment.to_vec();
                    return Some(end);
                }
                0xdb | 0xc3..=0xcf | 0xff => return None,
                _ => {}
            }
            at = end;
        }
    }

    /// In the file's order.
    pub(super) fn luma_quantizer(&self) -> Option<&[i32; 64]> {
        self.quantizers.get(*self.quantizer_of.first()?)?.as_ref()
    }

    /// The codes of means that a component of the scan names.
    pub(super) fn dc(&self, selector: u8) -> Option<&Rc<Codes>> {
        self.dc.get(usize::from(selector >> 4))?.as_ref()
    }

    /// Those of its other coefficients.
    pub(super) fn ac(&self, selector: u8) -> Option<&Rc<Codes>> {
        self.ac.get(usize::from(selector & 15))?.as_ref()
    }

    /// B.2.4.1, tables of eight bits.
    fn add_quantizers(&mut self, mut segment: &[u8]) -> Option<()> {
        while let [number, rest @ ..] = segment {
            let table: &[u8; 64] = rest.first_chunk()?;
            *self.quantizers.get_mut(usize::from(*number))? = Some(table.map(i32::from));
            segment = &rest[64..];
        }
        Some(())
    }

    /// B.2.4.2.
    fn add_codes(&mut self, mut segment: &[u8]) -> Option<()> {
        while let [head, rest @ ..] = segment {
            let (counts, rest) = rest.split_first_chunk::<16>()?;
            let count = counts.iter().map(|n| usize::from(*n)).sum();
            let (symbols, rest) = rest.split_at_checked(count)?;
            let (tables, kind) = match (head >> 4, self.progressive) {
                (0, _) => (&mut self.dc, Kind::Dc),
                (1, false) => (&mut self.ac, Kind::Ac),
                (1, true) => (&mut self.ac, Kind::AcByScans),
                _ => return None,
            };
            *tables.get_mut(usize::from(head & 15))? = Some(Rc::new(Codes::new(counts, symbols, kind)?));
            segment = rest;
        }
        Some(())
    }
}
