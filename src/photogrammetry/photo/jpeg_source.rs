//! Feeds a JPEG to the decoder and watches how it uses the picture data.
//!
//! A decoder that runs out of data goes on with zeros and returns a picture
//! whose last part is made up; one that comes to a marker too late skips what
//! is left. This source hands out each run of picture data (up to a restart
//! marker or the end of a scan), then a few bytes of ones, then an error, and
//! shows the marker only to a decoder that looks for it. A code word of ones
//! alone stands for nothing (T.81, C.2), so a decoder that lacks data fails at
//! once; one that leaves data unread is seen, unless its bit buffer holds them.

use std::{cell::Cell, ops::Range, rc::Rc};

use zune_core::bytestream::{ZByteIoError, ZByteReaderTrait, ZSeekFrom};

use super::{error::Fault, jpeg_structure::Structure};
use crate::words::phrase;

/// Bytes, stuffed ones included, that the decoder may take beyond a run's end:
/// its bit buffer holds up to 63 bits, and a run may end in 7 padding bits.
const READ_AHEAD: usize = 16;

/// Stands behind the last run.
const NO_RUN: Range<usize> = usize::MAX..usize::MAX;

/// What was seen while a decoder read.
#[derive(Debug, Default)]
pub(super) struct Watch {
    /// A run had less data than the decoder needed.
    short: Cell<bool>,
    /// Bytes that a decoder left unread in a run.
    left: Cell<usize>,
    /// Runs that were left behind.
    done: Cell<usize>,
}

impl Watch {
    /// Whether all runs were used to their ends; `failed` is what the decoder said.
    pub(super) fn verdict(&self, runs: usize, failed: Option<Fault>) -> Result<(), Fault> {
        if self.short.get() {
            return Err(Fault::Damaged(phrase!("doors-fault-missing")));
        }
        if let Some(fault) = failed {
            return Err(fault);
        }
        if self.left.get() > 0 {
            return Err(Fault::Damaged(phrase!("doors-fault-left-over", bytes = self.left.get())));
        }
        let used = self.done.get() + 1;
        if used < runs {
            return Err(Fault::Damaged(phrase!("doors-fault-parts", used = used, count = runs)));
        }
        Ok(())
    }
}

/// A JPEG file with its runs of picture data.
pub(super) struct Source<'a> {
    bytes: &'a [u8],
    runs: &'a [Range<usize>],
    /// The run at or after the reading place.
    run: Range<usize>,
    at: usize,
    /// Bytes handed out beyond the run's end.
    beyond: usize,
    /// The run whose marker is shown as it comes, if there is one.
    open_run: Option<usize>,
    watch: Rc<Watch>,
}

impl<'a> Source<'a> {
    /// The file, and what will be seen of its reading. After the first scan of
    /// a progressive picture the decoder takes the marker only if it came upon
    /// it while reading data; there the source leaves the watching to it.
    pub(super) fn new(bytes: &'a [u8], structure: &'a Structure) -> (Self, Rc<Watch>) {
        let watch = Rc::new(Watch::default());
        let runs = &structure.runs[..];
        let run = runs.first().cloned().unwrap_or(NO_RUN);
        let open_run = structure.progressive.then_some(structure.first_scan_runs - 1);
        (Source { bytes, runs, run, at: 0, beyond: 0, open_run, watch: Rc::clone(&watch) }, watch)
    }

    /// Notes what a decoder that now looks for a marker leaves of the run, and
    /// goes on to the next run once the marker was read.
    fn leave_run(&mut self) {
        let rest = self.bytes.get(self.at..self.run.end).unwrap_or_default();
        // Some cameras fill up the last run with zeros.
        if self.watch.left.get() == 0 && rest.iter().any(|&byte| byte != 0) {
            self.watch.left.set(rest.len());
        }
        if self.at > self.run.end {
            let done = self.watch.done.get() + 1;
            self.watch.done.set(done);
            self.run = self.runs.get(done).cloned().unwrap_or(NO_RUN);
            self.beyond = 0;
        }
    }
}

impl ZByteReaderTrait for Source<'_> {
    #[inline(always)]
    fn read_byte_no_error(&mut self) -> u8 {
        if self.at >= self.run.end && self.open_run != Some(self.watch.done.get()) {
            self.beyond += 1;
            // FF and its stuffed zero in turn.
            return if self.beyond % 2 == 1 { 0xff } else { 0 };
        }
        let byte = self.bytes.get(self.at).copied().unwrap_or(0);
        self.at += 1;
        byte
    }

    #[inline(always)]
    fn read_exact_bytes(&mut self, buffer: &mut [u8]) -> Result<(), ZByteIoError> {
        let next = self.at.checked_add(buffer.len()).ok_or(ZByteIoError::NotEnoughBytes(0, 0))?;
        let found = self.bytes.get(self.at..next).ok_or(ZByteIoError::NotEnoughBytes(0, 0))?;
        if self.at >= self.run.start {
            if buffer.len() == 4 && self.at <= self.run.end {
                // Picture data are taken four bytes at once, or singly where FF
                // is among them: an error here saves the decoder going back.
                if next > self.run.end || found.iter().fold(false, |any, byte| any | (*byte == 0xff)) {
                    return Err(ZByteIoError::NotEnoughBytes(0, 0));
                }
            } else {
                self.leave_run();
            }
        }
        buffer.copy_from_slice(found);
        self.at = next;
        Ok(())
    }

    fn read_bytes(&mut self, buffer: &mut [u8]) -> Result<usize, ZByteIoError> {
        let count = self.peek_bytes(buffer)?;
        self.at += count;
        Ok(count)
    }

    fn peek_bytes(&mut self, buffer: &mut [u8]) -> Result<usize, ZByteIoError> {
        let rest = self.bytes.get(self.at..).unwrap_or_default();
        let count = rest.len().min(buffer.len());
        buffer[..count].copy_from_slice(&rest[..count]);
        Ok(count)
    }

    fn peek_exact_bytes(&mut self, buffer: &mut [u8]) -> Result<(), ZByteIoError> {
        let found = self.bytes.get(self.at..self.at.saturating_add(buffer.len()));
        buffer.copy_from_slice(found.ok_or(ZByteIoError::NotEnoughBytes(0, 0))?);
        Ok(())
    }

    fn z_seek(&mut self, to: ZSeekFrom) -> Result<u64, ZByteIoError> {
        let place = match to {
            ZSeekFrom::Start(place) => i64::try_from(place).ok(),
            ZSeekFrom::Current(step) => (self.at as i64).checked_add(step),
            ZSeekFrom::End(step) => (self.bytes.len() as i64).checked_add(step),
        };
        let place = place.and_then(|p| usize::try_from(p).ok()).ok_or(ZByteIoError::SeekError("out of the file"))?;
        self.at = place;
        Ok(place as u64)
    }

    #[inline(always)]
    fn is_eof(&mut self) -> Result<bool, ZByteIoError> {
        if self.beyond > READ_AHEAD {
            self.watch.short.set(true);
            return Err(ZByteIoError::Generic("picture data are missing"));
        }
        Ok(self.at >= self.bytes.len())
    }

    fn z_position(&mut self) -> Result<u64, ZByteIoError> {
        Ok(self.at as u64)
    }

    fn read_remaining(&mut self, sink: &mut Vec<u8>) -> Result<usize, ZByteIoError> {
        let rest = self.bytes.get(self.at..).unwrap_or_default();
        sink.extend_from_slice(rest);
        self.at += rest.len();
        Ok(rest.len())
    }
}
