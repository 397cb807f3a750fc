//! Pictures where a job's photos lie, also those that the job does not list.

use std::fs::File;
use std::io::Read;
use std::path::{Path, PathBuf};

/// The endings that the photos folder is searched for.
const PICTURE_ENDINGS: [&str; 4] = ["jpg", "jpeg", "png", "heic"];

/// Where a job's photos lie, with whatever else lies there.
pub const PHOTOS: &str = "photos";

/// By its ending; hidden files are what operating systems leave beside pictures.
pub fn is_picture(name: &Path) -> bool {
    let hidden = name.to_string_lossy().starts_with('.');
    let ending = name.extension().and_then(|e| e.to_str()).unwrap_or_default().to_lowercase();
    !hidden && PICTURE_ENDINGS.contains(&ending.as_str())
}

/// A photo that takes no part.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Unlisted {
    /// Relative to the job folder, with `/`.
    pub name: String,
    /// Where it lies.
    pub path: PathBuf,
}

/// What systems leave beside photos by themselves; folders of small pictures among it.
const LEFT_BY_SYSTEMS: [&str; 6] = [".ds_store", "thumbs.db", "desktop.ini", ".nomedia", "@eadir", ".thumbnails"];
/// What phones and editors keep about a photo beside it.
const SIDECARS: [&str; 2] = ["xmp", "aae"];
/// Folders in folders that are looked into.
const MOST_DEPTH: usize = 16;

/// Files below a job's `photos` that are none of those that it names, sorted. A picture has many endings, and what opens
/// as none may be renamed: whatever lies there counts, but for what systems leave by themselves. Of a file no more than
/// its head is read.
pub(super) fn unlisted(folder: &Path, named: &[&PathBuf]) -> Vec<Unlisted> {
    let mut found = Vec::new();
    let mut open = vec![(PHOTOS.to_owned(), 0)];
    while let Some((name, depth)) = open.pop() {
        for entry in std::fs::read_dir(folder.join(&name)).into_iter().flatten().flatten() {
            let (path, own) = (entry.path(), entry.file_name().to_string_lossy().into_owned());
            let name = format!("{name}/{own}");
            let Ok(kind) = entry.file_type() else { continue };
            if kind.is_dir() && depth < MOST_DEPTH && !LEFT_BY_SYSTEMS.contains(&own.to_lowercase().as_str()) {
                open.push((name, depth + 1));
            } else if path.is_file() && !is_left_by_a_system(&own, &path) {
                let real = path.canonicalize().ok().filter(|real| real.starts_with(folder) && !named.contains(&real));
                found.extend(real.map(|_| Unlisted { name, path }));
            }
        }
    }
    found.sort_by(|a, b| a.name.cmp(&b.name));
    found
}

/// By its name, and where it does not begin as a picture does: a name alone is soon given.
fn is_left_by_a_system(name: &str, path: &Path) -> bool {
    let name = name.to_lowercase();
    let sidecar = name.rsplit_once('.').is_some_and(|(_, ending)| SIDECARS.contains(&ending));
    // `._` is a Mac's file of a file's attributes, `.part` what a write that was cut off leaves.
    let hidden = name.starts_with("._") || name.starts_with('.') && name.ends_with(".part");
    (LEFT_BY_SYSTEMS.contains(&name.as_str()) || sidecar || hidden) && !begins_as_a_picture(path)
}

/// JPEG, PNG, HEIC and AVIF, WebP, TIFF with the raw formats made from it.
fn begins_as_a_picture(path: &Path) -> bool {
    let mut head = [0; 12];
    let read = File::open(path).and_then(|mut file| file.read(&mut head)).unwrap_or(0);
    let head = &head[..read];
    let starts: [&[u8]; 4] = [b"\xff\xd8\xff", b"\x89PNG", b"II*\0", b"MM\0*"];
    starts.iter().any(|start| head.starts_with(start))
        || head.get(4..8) == Some(b"ftyp")
        || head.starts_with(b"RIFF") && head.get(8..12) == Some(b"WEBP")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn whatever_lies_with_the_photos_is_named_but_what_systems_leave() {
        let dir = tempfile::tempdir().unwrap();
        let folder = dir.path().canonicalize().unwrap();
        let put = |name: &str, bytes: &[u8]| {
            let path = folder.join("photos").join(name);
            std::fs::create_dir_all(path.parent().unwrap()).unwrap();
            std::fs::write(path, bytes).unwrap();
        };
        let jpeg = b"\xff\xd8\xff\xe0 invented";
        let hidden =
            ["old/c.jpg", ".c.jpg", "c.jpe", "c.webp", "c.dng", "c.avif", "c.txt", "._c.jpg", "Thumbs.db", "c.xmp"];
        for name in hidden.iter().chain(&["a.jpg"]) {
            put(name, jpeg);
        }
        let left = [".DS_Store", "._a.jpg", "old/desktop.ini", "a.aae", "a.jpg.xmp", ".b.jpg.part", ".nomedia"];
        for name in left {
            put(name, b"\0\x05\x16\x07");
        }
        put("@eaDir/a.jpg/SMALL.jpg", jpeg);
        let listed = folder.join("photos/a.jpg");
        let found: Vec<String> = unlisted(&folder, &[&listed]).into_iter().map(|photo| photo.name).collect();
        let mut expected = hidden.map(|name| format!("photos/{name}"));
        expected.sort();
        assert_eq!(found, expected);
    }
}
