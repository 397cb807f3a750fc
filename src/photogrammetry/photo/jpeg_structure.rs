//! The segments of a JPEG file (ITU-T T.81, annex B), without decoding.
//!
//! Decoders fill up what a short file leaves open; this walk finds out first
//! whether the file holds all its segments, up to the end-of-image marker.

use std::ops::Range;

use memchr::memchr;

use super::error::Fault;
use crate::words::phrase;

/// What the segments say.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Structure {
    pub(super) width: usize,
    pub(super) height: usize,
    pub(super) components: Vec<Component>,
    pub(super) progressive: bool,
    /// Runs of entropy-coded data, each up to a restart marker or the end of a scan.
    pub(super) runs: Vec<Range<usize>>,
    /// How many of them the first scan has.
    pub(super) first_scan_runs: usize,
    /// The place behind the end-of-image marker.
    pub(super) end: usize,
    /// Number of scans.
    pub(super) scans: usize,
}

/// One colour component of the frame.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Component {
    pub(super) id: u8,
    /// Sampling factors, horizontal and vertical.
    pub(super) sampling: [u8; 2],
}

impl Structure {
    /// Coded units in a scan (A.2): of one component its blocks of 8 x 8, of
    /// several the blocks that belong together.
    fn units(&self, scan_header: &[u8]) -> usize {
        let largest = |axis: usize| self.components.iter().map(|c| usize::from(c.sampling[axis])).max().unwrap_or(1);
        let [h_max, v_max] = [largest(0), largest(1)];
        let one = (scan_header.first() == Some(&1))
            .then(|| self.components.iter().find(|c| Some(&c.id) == scan_header.get(1)))
            .flatten();
        let [h, v] = one.map_or([1, 1], |c| c.sampling.map(usize::from));
        (self.width * h).div_ceil(8 * h_max) * (self.height * v).div_ceil(8 * v_max)
    }
}

const SOI: u8 = 0xd8;
const EOI: u8 = 0xd9;
const SOS: u8 = 0xda;
const DRI: u8 = 0xdd;

/// Walks a file from its start to its first end-of-image marker; what follows
/// (a second picture, a film clip) is not looked at.
pub(super) fn structure(bytes: &[u8]) -> Result<Structure, Fault> {
    let mut walk = Walk { bytes, at: 2 };
    let mut found = Structure {
        width: 0,
        height: 0,
        components: Vec::new(),
        progressive: false,
        runs: Vec::new(),
        first_scan_runs: 0,
        end: 0,
        scans: 0,
    };
    let mut restart_interval = 0;
    loop {
        let marker = walk.marker()?;
        match marker {
            EOI => break,
            SOI | 0x01 | 0xd0..=0xd7 => {
                return Err(Fault::Damaged(phrase!(
                    "doors-fault-marker",
                    marker = format!("{marker:02X}"),
                    at = walk.at
                )));
            }
            _ => {}
        }
        let segment = walk.segment(marker)?;
        match marker {
            0xc0..=0xcf if !matches!(marker, 0xc4 | 0xc8 | 0xcc) => frame(&mut found, marker, segment)?,
            DRI => restart_interval = segment.get(..2).map_or(0, |b| usize::from(u16::from_be_bytes([b[0], b[1]]))),
            SOS => {
                if found.components.is_empty() {
                    return Err(Fault::Damaged(phrase!("doors-fault-early")));
                }
                let runs_before = found.runs.len();
                walk.entropy_data(restart_interval, &mut found.runs)?;
                let restarts = found.runs.len() - runs_before - 1;
                let wanted = found.units(segment).saturating_sub(1).checked_div(restart_interval).unwrap_or(0);
                if restarts != wanted {
                    return Err(Fault::Damaged(phrase!("doors-fault-restarts", found = restarts, wanted = wanted)));
                }
                found.scans += 1;
                if found.scans == 1 {
                    found.first_scan_runs = found.runs.len();
                }
            }
            _ => {}
        }
    }
    found.end = walk.at;
    if found.scans == 0 {
        return Err(Fault::Damaged(phrase!("doors-fault-no-data")));
    }
    Ok(found)
}

/// Start of frame: B.2.2.
fn frame(found: &mut Structure, marker: u8, segment: &[u8]) -> Result<(), Fault> {
    let unsupported = match marker {
        0xc0..=0xc2 => None,
        0xc3 => Some("lossless"),
        0xc5..=0xc7 => Some("hierarchical"),
        _ => Some("arithmetic"),
    };
    if let Some(kind) = unsupported {
        return Err(Fault::Unsupported(phrase!("doors-variant-jpeg", kind = kind)));
    }
    let too_short = || Fault::Damaged(phrase!("doors-fault-short-header"));
    let &[precision, h1, h0, w1, w0, components, ref rest @ ..] = segment else { return Err(too_short()) };
    if rest.len() != 3 * usize::from(components) || components == 0 {
        return Err(too_short());
    }
    if !found.components.is_empty() {
        return Err(Fault::Damaged(phrase!("doors-fault-two-headers")));
    }
    if precision != 8 {
        return Err(Fault::Unsupported(phrase!("doors-variant-bits", bits = u32::from(precision))));
    }
    found.width = usize::from(u16::from_be_bytes([w1, w0]));
    found.progressive = marker == 0xc2;
    found.height = usize::from(u16::from_be_bytes([h1, h0]));
    found.components = rest.chunks_exact(3).map(|c| Component { id: c[0], sampling: [c[1] >> 4, c[1] & 15] }).collect();
    if found.components.iter().any(|c| c.sampling.contains(&0)) {
        return Err(Fault::Damaged(phrase!("doors-fault-sampling")));
    }
    Ok(())
}

struct Walk<'a> {
    bytes: &'a [u8],
    at: usize,
}

impl<'a> Walk<'a> {
    /// The next marker's code; fill bytes FF may precede it (B.1.1.2).
    fn marker(&mut self) -> Result<u8, Fault> {
        if self.byte()? != 0xff {
            return Err(Fault::Damaged(phrase!("doors-fault-no-marker", at = self.at - 1)));
        }
        loop {
            match self.byte()? {
                0xff => {}
                0 => return Err(Fault::Damaged(phrase!("doors-fault-no-marker", at = self.at - 2))),
                code => return Ok(code),
            }
        }
    }

    /// The body of a segment, whose first two bytes are its length.
    fn segment(&mut self, marker: u8) -> Result<&'a [u8], Fault> {
        let length = usize::from(u16::from_be_bytes([self.byte()?, self.byte()?]));
        let Some(length) = length.checked_sub(2) else {
            return Err(Fault::Damaged(phrase!(
                "doors-fault-no-length",
                marker = format!("{marker:02X}"),
                at = self.at
            )));
        };
        let segment = self.bytes.get(self.at..self.at + length).ok_or_else(|| self.cut_off())?;
        self.at += length;
        Ok(segment)
    }

    /// Passes a scan's entropy-coded data and notes its runs; restart markers
    /// must be 0 to 7 in turn (B.2.1, E.1.4).
    fn entropy_data(&mut self, restart_interval: usize, runs: &mut Vec<Range<usize>>) -> Result<(), Fault> {
        let mut restarts = 0;
        let mut start = self.at;
        loop {
            let rest = &self.bytes[self.at.min(self.bytes.len())..];
            self.at += memchr(0xff, rest).ok_or_else(|| self.cut_off())?;
            if self.bytes.get(self.at + 1) == Some(&0) {
                self.at += 2;
                continue;
            }
            runs.push(start..self.at);
            let fill = self.bytes[self.at..].iter().take_while(|&&b| b == 0xff).count() - 1;
            self.at += fill;
            match self.bytes.get(self.at + 1) {
                None => return Err(self.cut_off()),
                Some(&code @ 0xd0..=0xd7) => {
                    if restart_interval == 0 || usize::from(code & 7) != restarts % 8 {
                        return Err(Fault::Damaged(phrase!("doors-fault-turn", at = self.at)));
                    }
                    restarts += 1;
                    self.at += 2;
                    start = self.at;
                }
                Some(0) => return Err(Fault::Damaged(phrase!("doors-fault-no-marker", at = self.at))),
                Some(_) => return Ok(()),
            }
        }
    }

    fn byte(&mut self) -> Result<u8, Fault> {
        let byte = *self.bytes.get(self.at).ok_or_else(|| self.cut_off())?;
        self.at += 1;
        Ok(byte)
    }

    fn cut_off(&self) -> Fault {
        Fault::CutOff(phrase!("doors-fault-jpeg-end", at = self.bytes.len()))
    }
}
