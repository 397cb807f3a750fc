//! What a file is by how it begins, whatever its name is.

use std::fs::File;
use std::io::Read;
use std::path::Path;

use memchr::memmem;

/// As much of a file as is looked at.
const HEAD: u64 = 1 << 14;
/// How archives begin that are not looked into: zip, gzip, xz, bzip2, zstd, 7z, rar.
const PACKED: [&[u8]; 7] = [
    b"PK\x03\x04",
    b"\x1f\x8b\x08",
    b"\xfd7zXZ\x00",
    b"BZh",
    b"\x28\xb5\x2f\xfd",
    b"7z\xbc\xaf\x27\x1c",
    b"Rar!\x1a\x07",
];
/// Documents of offices are zip files whose first member is one of these, at this place.
const DOCUMENTS: [&[u8]; 2] = [b"[Content_Types].xml", b"mimetype"];
const FIRST_MEMBER: usize = 30;
/// Where a tar file says what it is.
const USTAR: usize = 257;

/// The first bytes; nothing where they cannot be read.
pub(super) fn head(path: &Path) -> Vec<u8> {
    let mut head = Vec::new();
    let read = File::open(path).and_then(|file| file.take(HEAD).read_to_end(&mut head));
    read.map_or(Vec::new(), |_| head)
}

/// Whether it begins as an archive does.
pub(super) fn is_archive(head: &[u8]) -> bool {
    let is_document =
        |zip: &[u8]| DOCUMENTS.iter().any(|name| zip.get(FIRST_MEMBER..).is_some_and(|m| m.starts_with(name)));
    let is_packed = PACKED.iter().any(|start| head.starts_with(start));
    let is_tar = head.get(USTAR..).is_some_and(|rest| rest.starts_with(b"ustar"));
    is_tar || is_packed && !(head.starts_with(b"PK") && is_document(head))
}

/// Whether it is a text with a line that says that it is a job file.
pub(super) fn is_job_file(head: &[u8]) -> bool {
    // Most files say so nowhere.
    memmem::find(head, b"job/").is_some()
        && head.split(|byte| *byte == b'\n').any(|line| {
            let says = String::from_utf8_lossy(line);
            let says = says.trim_start_matches('\u{feff}').trim_start().trim_start_matches(['"', '\'']);
            let value =
                says.strip_prefix("format").and_then(|rest| rest.split_once('=')).map(|(_, value)| value.trim());
            value.is_some_and(|value| value.trim_start_matches(['"', '\'']).starts_with("job/"))
        })
        // TOML writes one text in many ways; what is written in an odd one is read as TOML.
        || memchr::memchr(b'\\', head).is_some() && says_so_with_escapes(head)
}

/// The same, where characters are written by their numbers (TOML 1.0.0, "String": four digits after `\u`, eight after `\U`).
fn says_so_with_escapes(head: &[u8]) -> bool {
    let text = String::from_utf8_lossy(head);
    text.lines().filter(|line| line.contains('\\') && line.contains('=')).any(|line| {
        let bare: String =
            plain(line).chars().filter(|c| !c.is_whitespace() && !matches!(c, '"' | '\'' | '\u{feff}')).collect();
        bare.starts_with("format=job/")
    })
}

/// A line with each escaped character in its place.
fn plain(line: &str) -> String {
    let mut parts = line.split('\\');
    let mut plain = parts.next().unwrap_or_default().to_owned();
    for part in parts {
        let digits = match part.chars().next() {
            Some('u') => 4,
            Some('U') => 8,
            _ => 0,
        };
        let escaped = part.get(1..=digits).filter(|_| digits > 0);
        let number = escaped.and_then(|hex| u32::from_str_radix(hex, 16).ok()).and_then(char::from_u32);
        plain.extend(number);
        plain.push_str(number.map_or(part, |_| &part[digits + 1..]));
    }
    plain
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn files_are_known_by_how_they_begin() {
        let mut tar = vec![b'x'; USTAR];
        tar.extend_from_slice(b"ustar  \0");
        for archive in [&tar[..], b"PK\x03\x04rest", b"\x1f\x8b\x08\x00", b"7z\xbc\xaf\x27\x1c"] {
            assert!(is_archive(archive));
        }
        let document = [&b"PK\x03\x04"[..], &[0; 26], b"mimetypeapplication/x"].concat();
        for other in [&document[..], b"", b"PK", b"%PDF-1.7", b"\xff\xd8\xff\xe1", b"ustar"] {
            assert!(!is_archive(other));
        }
    }

    #[test]
    fn job_files_say_so_in_a_line() {
        for job in [
            "format = \"job/1\"\n",
            "# a\n  format='job/1'",
            "\u{feff}\"format\" = \"job/1\"\r\njob = \"x\"",
            "format = \"\\u006aob/1\"\njob = \"x\"\n[[photo]]\nfile = 3",
            "\"form\\U00000061t\" = 'job/1'",
        ] {
            assert!(is_job_file(job.as_bytes()), "{job}");
        }
        for other in ["format = \"kit/1\"\n", "note = \"format = job/1\"", "job/1", "", "formats = 3 # job/"] {
            assert!(!is_job_file(other.as_bytes()), "{other}");
        }
    }
}
