//! Manifests: the digest of each file (RFC 8493, 2.1.3 and 2.2.1).

use std::collections::BTreeMap;
use std::fmt::Write;

use super::bag_path::BagPath;
use crate::words::{Phrase, phrase};

/// Length of a SHA-512 digest in hexadecimal.
const DIGITS: usize = 128;

/// Files by path with their SHA-512, lower-case hexadecimal.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Manifest {
    /// By path, in rising order.
    pub entries: BTreeMap<BagPath, String>,
}

impl Manifest {
    /// The file's text: a line for each entry, in rising order of paths.
    pub fn text(&self) -> String {
        let mut text = String::new();
        for (path, digest) in &self.entries {
            // The percent sign is the only one of the encoded characters that a BagPath can hold.
            let _ = writeln!(text, "{digest}  {}", path.as_str().replace('%', "%25"));
        }
        text
    }

    /// Reads a manifest as [`Manifest::text`] writes it, and no other spelling:
    /// another order or another blank would be a change that nobody signed.
    ///
    /// # Errors
    /// The line and what is wrong with it.
    pub fn read(text: &str) -> Result<Self, (usize, Phrase)> {
        let mut entries = BTreeMap::new();
        for (i, line) in text.lines().enumerate() {
            let wrong = |why: Phrase| (i + 1, why);
            let digest =
                line.get(..DIGITS).filter(|d| d.bytes().all(|b| b.is_ascii_digit() || (b'a'..=b'f').contains(&b)));
            let path = line.get(DIGITS..).and_then(|rest| rest.strip_prefix("  "));
            let (Some(digest), Some(path)) = (digest, path) else {
                return Err(wrong(phrase!("evidence-manifest-line")));
            };
            let path = decoded(path);
            let path = BagPath::new(&path)
                .map_err(|e| wrong(phrase!("evidence-manifest-path", path = &path, problem = e.phrase())))?;
            if let Some(_first) = entries.insert(path.clone(), digest.to_owned()) {
                return Err(wrong(phrase!("evidence-manifest-twice", path = path.as_str())));
            }
        }
        let manifest = Manifest { entries };
        if manifest.text() != text {
            return Err((0, phrase!("evidence-manifest-order")));
        }
        Ok(manifest)
    }

    /// The digest of a file.
    pub fn digest(&self, path: &BagPath) -> Option<&str> {
        self.entries.get(path).map(String::as_str)
    }
}

fn decoded(path: &str) -> String {
    path.replace("%0D", "\r").replace("%0d", "\r").replace("%0A", "\n").replace("%0a", "\n").replace("%25", "%")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sample() -> Manifest {
        let entry = |path: &str, digit: &str| (BagPath::new(path).unwrap(), digit.repeat(DIGITS));
        Manifest { entries: [entry("data/a.txt", "0"), entry("data/50%25 x.jpg", "f")].into() }
    }

    #[test]
    fn what_is_written_is_read() {
        let manifest = sample();
        assert!(manifest.text().contains("data/50%2525 x.jpg"));
        assert_eq!(Manifest::read(&manifest.text()), Ok(manifest));
    }

    #[test]
    fn another_spelling_is_refused() {
        let text = sample().text();
        let lines: Vec<&str> = text.lines().collect();
        for changed in [
            format!("{}\n{}\n", lines[1], lines[0]),
            format!("{text}{}\n", lines[0]),
            text.replace('f', "F"),
            text.replace("  data/a", " data/a"),
            text.replace("  data/a", "  data/../a"),
            text.trim_end().to_owned(),
            text.replace('\n', "\r\n"),
            format!("{text}\n"),
        ] {
            assert!(Manifest::read(&changed).is_err(), "{changed}");
        }
    }
}
