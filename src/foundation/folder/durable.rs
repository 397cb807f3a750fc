//! Files that are on the disk, whole, before anybody is told that they are kept.

use std::ffi::OsString;
use std::fs::{self, File};
use std::io::{self, Write};
use std::path::{Path, PathBuf};

/// Writes a file so that after a power cut it is there with these bytes, or as
/// it was before. Its folder must exist.
///
/// # Errors
/// What the system says; nothing is left but, after a crash, a hidden `.part` file.
pub fn write_durably(path: &Path, bytes: &[u8]) -> io::Result<()> {
    let part = part_of(path)?;
    let written = File::create(&part).and_then(|mut file| {
        file.write_all(bytes)?;
        file.sync_all()
    });
    let moved = written.and_then(|()| move_durably(&part, path));
    if moved.is_err() {
        // Of no use any more, and hidden if it can't be removed.
        let _ = fs::remove_file(&part);
    }
    moved
}

/// Moves a file that was synced to its name, and the name to the disk.
///
/// # Errors
/// What the system says.
pub fn move_durably(from: &Path, to: &Path) -> io::Result<()> {
    fs::rename(from, to)?;
    sync_folder(to.parent().unwrap_or(Path::new(".")))
}

/// Makes a folder that does not exist yet, with its name on the disk.
///
/// # Errors
/// It exists, or what the system says.
pub fn make_folder_durably(path: &Path) -> io::Result<()> {
    fs::create_dir(path)?;
    sync_folder(path.parent().unwrap_or(Path::new(".")))
}

/// New names of a folder reach the disk.
///
/// # Errors
/// What the system says.
pub fn sync_folder(folder: &Path) -> io::Result<()> {
    if cfg!(unix) {
        let here = if folder.as_os_str().is_empty() { Path::new(".") } else { folder };
        File::open(here)?.sync_all()?;
    }
    Ok(())
}

/// The hidden file beside `path` that its bytes are written to first.
fn part_of(path: &Path) -> io::Result<PathBuf> {
    let name = path.file_name().ok_or_else(|| io::Error::from(io::ErrorKind::InvalidInput))?;
    let mut hidden = OsString::from(".");
    hidden.push(name);
    hidden.push(".part");
    Ok(path.with_file_name(hidden))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_is_replaced_whole_and_nothing_is_left_beside_it() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("job.toml");
        write_durably(&path, b"one").unwrap();
        write_durably(&path, b"two").unwrap();
        assert_eq!(fs::read(&path).unwrap(), b"two");
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1);
        assert!(write_durably(&folder.path().join("none/job.toml"), b"x").is_err());
        make_folder_durably(&folder.path().join("a")).unwrap();
        assert_eq!(make_folder_durably(&folder.path().join("a")).unwrap_err().kind(), io::ErrorKind::AlreadyExists);
    }
}
