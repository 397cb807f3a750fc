//! Reading an input file as a whole, with a limit, and digests.

use std::fs::File;
use std::io::{ErrorKind, Read};
use std::path::Path;

use sha2::{Digest, Sha256};

use super::error::{Error, Place};
use crate::words::phrase;

/// No input file is larger: a kit with every marker of the family and the
/// covariance of a camera take a fraction of it.
pub const MAX_INPUT_BYTES: u64 = 4 * 1024 * 1024;

/// An input file's bytes under the name that messages use.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SourceFile {
    name: String,
    bytes: Vec<u8>,
}

impl SourceFile {
    /// Bytes that are already in memory.
    pub fn new(name: impl Into<String>, bytes: Vec<u8>) -> Self {
        SourceFile { name: name.into(), bytes }
    }

    /// Reads a file of at most [`MAX_INPUT_BYTES`] bytes.
    ///
    /// # Errors
    /// Missing, not a regular file, not permitted, too large or failing media.
    pub fn read(path: &Path) -> Result<Self, Error> {
        Self::read_up_to(path, MAX_INPUT_BYTES)
    }

    /// Reads a file of at most `limit` bytes.
    ///
    /// # Errors
    /// As [`SourceFile::read`].
    pub fn read_up_to(path: &Path, limit: u64) -> Result<Self, Error> {
        let name = path.display().to_string();
        let file = open_regular(path)?;
        let mut bytes = Vec::new();
        // The limit holds for what is read, whatever the file system says of its size.
        file.take(limit + 1).read_to_end(&mut bytes).map_err(|e| io_error(&name, &e))?;
        if bytes.len() as u64 > limit {
            return Err(Error::new(
                name,
                phrase!("doors-too-large", most = limit / (1024 * 1024)),
                phrase!("doors-too-large-remedy"),
            ));
        }
        Ok(SourceFile { name, bytes })
    }

    /// The name that messages use.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// The bytes as stored.
    pub fn bytes(&self) -> &[u8] {
        &self.bytes
    }

    /// SHA-256 of the bytes, in lower-case hexadecimal.
    pub fn sha256(&self) -> String {
        hex(&Sha256::digest(&self.bytes))
    }

    /// The bytes as text, without a byte order mark.
    ///
    /// # Errors
    /// Not UTF-8: names the line.
    pub fn text(&self) -> Result<&str, Error> {
        let bytes = self.bytes.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(&self.bytes);
        // Plain letters in UTF-16 are valid UTF-8 with a NUL beside each; no text has one.
        let text = match bytes.iter().position(|byte| *byte == 0) {
            Some(at) => Err(at),
            None => std::str::from_utf8(bytes).map_err(|e| e.valid_up_to()),
        };
        text.map_err(|at| {
            let good = String::from_utf8_lossy(&bytes[..at]);
            Error::new(&self.name, phrase!("doors-no-utf8"), phrase!("doors-no-utf8-remedy"))
                .at(Some(Place::of_offset(&good, good.len())))
        })
    }
}

/// SHA-256 of a file of any size, in lower-case hexadecimal.
///
/// # Errors
/// Missing, not a regular file, not permitted or failing media.
pub fn digest_of_file(path: &Path) -> Result<String, Error> {
    let name = path.display().to_string();
    let mut file = open_regular(path)?;
    let mut hasher = Sha256::new();
    let mut buffer = vec![0_u8; 64 * 1024];
    loop {
        match file.read(&mut buffer) {
            Ok(0) => return Ok(hex(&hasher.finalize())),
            Ok(n) => hasher.update(&buffer[..n]),
            Err(e) if e.kind() == ErrorKind::Interrupted => {}
            Err(e) => return Err(io_error(&name, &e)),
        }
    }
}

/// Opens a regular file only: a pipe or a device could block for ever.
fn open_regular(path: &Path) -> Result<File, Error> {
    let name = path.display().to_string();
    let metadata = std::fs::metadata(path).map_err(|e| io_error(&name, &e))?;
    if metadata.is_dir() {
        return Err(Error::new(name, phrase!("doors-is-folder"), phrase!("doors-is-folder-remedy")));
    }
    if !metadata.is_file() {
        return Err(Error::new(name, phrase!("doors-not-regular"), phrase!("doors-not-regular-remedy")));
    }
    File::open(path).map_err(|e| io_error(&name, &e))
}

fn io_error(name: &str, e: &std::io::Error) -> Error {
    match e.kind() {
        ErrorKind::NotFound | ErrorKind::NotADirectory => {
            Error::new(name, phrase!("doors-not-there"), phrase!("doors-not-there-remedy"))
        }
        ErrorKind::PermissionDenied => Error::new(name, phrase!("doors-forbidden"), phrase!("doors-forbidden-remedy")),
        _ => Error::new(name, phrase!("doors-unreadable", why = e.to_string()), phrase!("doors-unreadable-remedy")),
    }
}

/// Bytes in hexadecimal, as digests are written.
pub fn hex(digest: &[u8]) -> String {
    digest.iter().map(|b| format!("{b:02x}")).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Language;

    #[test]
    fn digest_is_the_published_one() {
        // FIPS 180-4 example: the message "abc".
        let abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
        assert_eq!(SourceFile::new("x", b"abc".to_vec()).sha256(), abc);
        let dir = tempfile::tempdir().unwrap();
        let path = dir.path().join("abc");
        std::fs::write(&path, "abc").unwrap();
        assert_eq!(digest_of_file(&path).unwrap(), abc);
    }

    #[test]
    fn files_that_cannot_be_read_say_why() {
        let dir = tempfile::tempdir().unwrap();
        let missing = SourceFile::read(&dir.path().join("kit.toml")).unwrap_err();
        assert!(missing.to_string().contains("kit.toml: does not exist; "), "{missing}");
        let folder = SourceFile::read(dir.path()).unwrap_err();
        assert_eq!(folder.problem().say(Language::English), "is a folder, not a file");
        let big = dir.path().join("big.toml");
        std::fs::write(&big, vec![b' '; 2000]).unwrap();
        assert!(SourceFile::read_up_to(&big, 2000).is_ok());
        assert!(
            SourceFile::read_up_to(&big, 1999).unwrap_err().problem().say(Language::English).starts_with("is larger")
        );
        if Path::new("/dev/zero").exists() {
            assert_eq!(
                SourceFile::read(Path::new("/dev/zero")).unwrap_err().problem().say(Language::English),
                "is not a regular file"
            );
        }
    }

    #[test]
    fn text_must_be_utf8() {
        let wrong = SourceFile::new("setup.toml", b"a = 1\nb = \"\xFF\"\n".to_vec());
        assert_eq!(wrong.text().unwrap_err().place(), Some(Place { line: 2, column: 6 }));
        let marked = SourceFile::new("setup.toml", b"\xEF\xBB\xBFa = 1".to_vec());
        assert_eq!(marked.text().unwrap(), "a = 1");
    }
}
