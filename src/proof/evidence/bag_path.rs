//! Paths in an evidence folder: relative, plain, the same on every system.

use std::fmt;

use crate::input::turns_writing;
use crate::words::{Language, Phrase, phrase};

/// A path that is safe to create and to read below any folder: components
/// joined by `/`, none of which has a meaning of its own anywhere.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct BagPath(String);

/// Why a text is no path of an evidence folder.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum PathProblem {
    /// Nothing, or an empty component.
    Empty,
    /// Starts at a root or a drive.
    Absolute,
    /// `.` or `..`.
    Relative,
    /// Characters that file systems or manifests cannot hold.
    Character,
    /// A name that some systems keep for devices, or that they change.
    Special,
    /// Longer than systems store.
    TooLong,
}

impl PathProblem {
    /// For any language.
    pub fn phrase(self) -> Phrase {
        let problem = match self {
            PathProblem::Empty => "empty",
            PathProblem::Absolute => "absolute",
            PathProblem::Relative => "relative",
            PathProblem::Character => "character",
            PathProblem::Special => "special",
            PathProblem::TooLong => "long",
        };
        phrase!("evidence-path", problem = problem)
    }
}

/// Names that Windows keeps for devices, whatever their ending.
const DEVICES: [&str; 6] = ["con", "prn", "aux", "nul", "conin$", "conout$"];
const MOST_BYTES: usize = 1000;
const MOST_PART_BYTES: usize = 255;

impl BagPath {
    /// Checks a text.
    ///
    /// # Errors
    /// What makes it unsafe.
    pub fn new(text: &str) -> Result<Self, PathProblem> {
        let bytes = text.as_bytes();
        if text.starts_with(['/', '~']) || bytes.get(1) == Some(&b':') {
            return Err(PathProblem::Absolute);
        }
        if bytes.len() > MOST_BYTES {
            return Err(PathProblem::TooLong);
        }
        for part in text.split('/') {
            check_part(part)?;
        }
        Ok(BagPath(text.to_owned()))
    }

    /// The text.
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// What two paths have in common that some systems cannot tell apart.
    pub fn folded(&self) -> String {
        self.0.to_lowercase()
    }
}

impl fmt::Display for BagPath {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

fn check_part(part: &str) -> Result<(), PathProblem> {
    if part.is_empty() {
        return Err(PathProblem::Empty);
    }
    if part == "." || part == ".." {
        return Err(PathProblem::Relative);
    }
    let bad = |c: char| c.is_control() || turns_writing(c) || r#"\<>:"|?*"#.contains(c);
    if part.chars().any(bad) {
        return Err(PathProblem::Character);
    }
    if part.len() > MOST_PART_BYTES {
        return Err(PathProblem::TooLong);
    }
    let stem = part.split('.').next().unwrap_or_default().trim_end().to_lowercase();
    let port = (stem.starts_with("com") || stem.starts_with("lpt"))
        && stem.chars().count() == 4
        && stem.ends_with(|c: char| c.is_ascii_digit() || "¹²³".contains(c));
    if port || DEVICES.contains(&stem.as_str()) || part.ends_with(['.', ' ']) || part.starts_with(' ') {
        return Err(PathProblem::Special);
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_plain_paths_pass() {
        for good in ["data/result.json", "data/job/photos/Halle 2 (öl).jpg", "bagit.txt", "a/.hidden", "data/100%.jpg"]
        {
            assert!(BagPath::new(good).is_ok(), "{good}");
        }
        for (bad, why) in [
            ("", PathProblem::Empty),
            ("a//b", PathProblem::Empty),
            ("a/", PathProblem::Empty),
            ("/etc/passwd", PathProblem::Absolute),
            ("~/x", PathProblem::Absolute),
            ("C:/x", PathProblem::Absolute),
            ("../x", PathProblem::Relative),
            ("a/../../b", PathProblem::Relative),
            ("./a", PathProblem::Relative),
            ("a\\b", PathProblem::Character),
            ("data/b\u{202e}gpj.a", PathProblem::Character),
            ("a\nb", PathProblem::Character),
            ("a\0b", PathProblem::Character),
            ("xy:stream", PathProblem::Character),
            ("data/NUL", PathProblem::Special),
            ("data/con.txt", PathProblem::Special),
            ("data/COM1.jpg", PathProblem::Special),
            ("data/a.", PathProblem::Special),
            ("data/a ", PathProblem::Special),
        ] {
            assert_eq!(BagPath::new(bad), Err(why), "{bad:?}");
        }
        assert_eq!(BagPath::new(&"a/".repeat(600)), Err(PathProblem::TooLong));
    }
}
