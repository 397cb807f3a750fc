//! Feeds one JPEG scan to the decoder and watches how much of it is used.
//!
//! A decoder that runs out of data goes on with zeros and returns a picture;
//! the last part of it is made up. This source shows the picture data without
//! the end marker, then a few zeros, then an error: a decoder that needs more
//! than the zeros fails, and one that stops early is found by the place that
//! it reached.

use std::{cell::Cell, ops::Range, rc::Rc};

use zune_core::bytestream::{ZByteIoError, ZByteReaderTrait, ZSeekFrom};

/// Bytes that the decoder may take beyond the data: its bit buffer holds 8.
pub(super) const READ_AHEAD: usize = 8;

/// Zeros behind the data; more than the decoder's longest look ahead.
const PADDING: usize = 2 * READ_AHEAD;

/// A JPEG whose last scan is watched.
pub(super) struct Source<'a> {
    /// The file up to the end of the scan.
    bytes: &'a [u8],
    scan_start: usize,
    at: usize,
    reached: Rc<Cell<usize>>,
}

impl<'a> Source<'a> {
    /// `file` up to the end of `scan`, and where reading has come to.
    pub(super) fn new(file: &'a [u8], scan: &Range<usize>) -> (Self, Rc<Cell<usize>>) {
        let reached = Rc::new(Cell::new(0));
        let source = Source { bytes: &file[..scan.end], scan_start: scan.start, at: 0, reached: Rc::clone(&reached) };
        (source, reached)
    }

    fn exhausted(&self) -> bool {
        self.at > self.bytes.len() + PADDING
    }
}

impl ZByteReaderTrait for Source<'_> {
    #[inline(always)]
    fn read_byte_no_error(&mut self) -> u8 {
        let byte = self.bytes.get(self.at).copied().unwrap_or(0);
        self.at += 1;
        byte
    }

    #[inline(always)]
    fn read_exact_bytes(&mut self, buffer: &mut [u8]) -> Result<(), ZByteIoError> {
        let found = self.bytes.get(self.at..self.at + buffer.len());
        let found = found.ok_or(ZByteIoError::NotEnoughBytes(0, 0))?;
        // Within the scan the decoder takes four bytes at once, and single
        // ones where FF is among them; that saves it going back.
        if self.at >= self.scan_start && found.contains(&0xff) {
            return Err(ZByteIoError::NotEnoughBytes(0, 0));
        }
        buffer.copy_from_slice(found);
        self.at += buffer.len();
        self.reached.set(self.at);
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

    #[inline(always)]
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
        if self.exhausted() {
            return Err(ZByteIoError::Generic("picture data missing"));
        }
        self.reached.set(self.at);
        Ok(false)
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
