//! A stream of JSON taken apart into its objects, whether it is one object,
//! an array of them, or one a line; a batch at a time, so that a file of any
//! size needs the memory of one batch.

use std::io::Read;
use std::ops::Range;

use crate::words::{Value, phrase};

/// Whole objects, and where each of them lies in the bytes.
#[derive(Debug, Default)]
pub(super) struct Batch {
    pub(super) bytes: Vec<u8>,
    pub(super) objects: Vec<Range<usize>>,
}

/// The batches of a stream.
pub(super) struct Objects<R> {
    source: R,
    /// Begun but not ended in the last batch.
    rest: Vec<u8>,
    ended: bool,
    batch_bytes: usize,
}

/// Why a stream cannot be taken apart.
#[derive(Debug)]
pub(super) enum SplitError {
    Read(std::io::Error),
    Strange(char),
    CutOff,
}

impl SplitError {
    /// What is wrong, to stand behind the file's name.
    pub(super) fn words(&self) -> Value {
        match self {
            SplitError::Read(e) => e.to_string().into(),
            SplitError::Strange(found) => phrase!("trends-not-json", found = found.to_string()).into(),
            SplitError::CutOff => phrase!("trends-cut-off").into(),
        }
    }
}

impl From<std::io::Error> for SplitError {
    fn from(e: std::io::Error) -> Self {
        SplitError::Read(e)
    }
}

impl<R: Read> Objects<R> {
    pub(super) fn new(source: R) -> Self {
        Self::with_batches(source, 8 << 20)
    }

    fn with_batches(source: R, batch_bytes: usize) -> Self {
        Objects { source, rest: Vec::new(), ended: false, batch_bytes }
    }

    /// The next whole objects; `None` at the end.
    pub(super) fn next_batch(&mut self) -> Result<Option<Batch>, SplitError> {
        let mut batch = Batch { bytes: std::mem::take(&mut self.rest), objects: Vec::new() };
        let mut scan = Scan::default();
        while !self.ended {
            let before = batch.bytes.len();
            let wanted = self.batch_bytes as u64;
            let read = (&mut self.source).take(wanted).read_to_end(&mut batch.bytes)?;
            self.ended = read < self.batch_bytes;
            // A byte order mark may stand before everything.
            if scan.at == 0 && before == 0 && batch.bytes.starts_with(b"\xef\xbb\xbf") {
                scan.at = 3;
            }
            scan.run(&batch.bytes, &mut batch.objects)?;
            if !batch.objects.is_empty() {
                break;
            }
        }
        if scan.at < batch.bytes.len() {
            scan.run(&batch.bytes, &mut batch.objects)?;
        }
        match scan.open {
            Some(_) if self.ended => {
                if batch.objects.is_empty() {
                    return Err(SplitError::CutOff);
                }
                // What is whole comes first; the error is told at the next call.
                self.rest = batch.bytes[scan.open.unwrap_or(0)..].to_vec();
            }
            Some(start) => self.rest = batch.bytes[start..].to_vec(),
            None => {}
        }
        Ok((!batch.objects.is_empty()).then_some(batch))
    }
}

/// How far the bytes were looked at.
#[derive(Default)]
struct Scan {
    at: usize,
    depth: u32,
    in_string: bool,
    open: Option<usize>,
}

impl Scan {
    fn run(&mut self, bytes: &[u8], objects: &mut Vec<Range<usize>>) -> Result<(), SplitError> {
        while self.at < bytes.len() {
            if self.in_string {
                let Some(step) = memchr::memchr2(b'"', b'\\', &bytes[self.at..]) else {
                    self.at = bytes.len();
                    break;
                };
                self.at += step;
                if bytes[self.at] == b'\\' {
                    if self.at + 1 >= bytes.len() {
                        break;
                    }
                    self.at += 2;
                } else {
                    self.in_string = false;
                    self.at += 1;
                }
                continue;
            }
            let byte = bytes[self.at];
            match (byte, self.open) {
                (b'{', None) => (self.open, self.depth) = (Some(self.at), 1),
                (b' ' | b'\t' | b'\r' | b'\n' | b',' | b'[' | b']', None) => {}
                (_, None) => return Err(SplitError::Strange(char::from(byte))),
                (b'"', Some(_)) => self.in_string = true,
                (b'{' | b'[', Some(_)) => self.depth += 1,
                (b'}' | b']', Some(start)) => {
                    self.depth -= 1;
                    if self.depth == 0 {
                        objects.push(start..self.at + 1);
                        self.open = None;
                    }
                }
                (_, Some(_)) => {}
            }
            self.at += 1;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn all(text: &str, batch: usize) -> Result<Vec<String>, SplitError> {
        let mut objects = Objects::with_batches(text.as_bytes(), batch);
        let mut found = Vec::new();
        while let Some(batch) = objects.next_batch()? {
            found.extend(batch.objects.iter().map(|r| String::from_utf8(batch.bytes[r.clone()].to_vec()).unwrap()));
        }
        Ok(found)
    }

    #[test]
    fn arrays_lines_and_single_objects_come_apart_alike_in_batches_of_any_size() {
        let parts = [r#"{"a":"}]\"{","b":[1,{"c":2}]}"#, r#"{"a":"\\"}"#, "{}"];
        for text in [format!("[{}]", parts.join(",\n")), parts.join("\n"), parts.join(" ") + "\n\n"] {
            for batch in [1, 2, 3, 7, 16, 1000] {
                assert_eq!(all(&text, batch).unwrap(), parts, "batches of {batch}: {text}");
            }
        }
        assert_eq!(all("[]", 8).unwrap(), Vec::<String>::new());
    }

    #[test]
    fn what_is_no_json_or_cut_off_is_told() {
        assert!(matches!(all("hello", 100), Err(SplitError::Strange('h'))));
        assert!(matches!(all("{\"a\": 1", 100), Err(SplitError::CutOff)));
        assert!(matches!(all("{} {\"a\": 1", 3), Err(SplitError::CutOff)));
    }
}
