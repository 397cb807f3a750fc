//! Files that are on the disk, whole, before anybody is told that they are kept.

use std::ffi::OsString;
use std::fs::{self, File, OpenOptions};
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

/// Writes a file that a person named. A link stays and what it leads to is written; what is
/// no regular file, such as a pipe or a device, is written into and never replaced. (Files
/// of the program's own folders are [`write_durably`]'s: a link there must not lead outside.)
///
/// # Errors
/// What the system says.
pub fn write_as_named(path: &Path, bytes: &[u8]) -> io::Result<()> {
    match fs::metadata(path) {
        Ok(there) if !there.is_file() => OpenOptions::new().write(true).open(path)?.write_all(bytes),
        _ => write_durably(&end_of_links(path)?, bytes),
    }
}

/// What a path leads to through links; what it leads to need not be there.
fn end_of_links(path: &Path) -> io::Result<PathBuf> {
    /// As many as Linux follows (`path_resolution(7)`).
    const MOST_LINKS: usize = 40;
    let mut end = path.to_path_buf();
    for _ in 0..MOST_LINKS {
        if !fs::symlink_metadata(&end).is_ok_and(|m| m.is_symlink()) {
            return Ok(end);
        }
        // A link's own text counts from the folder that it lies in.
        end = end.with_file_name("").join(fs::read_link(&end)?);
    }
    Err(io::Error::from(io::ErrorKind::InvalidInput))
}

/// The same as [`write_durably`] for a secret: from its first byte on only its owner may read it.
///
/// # Errors
/// What the system says.
pub fn write_private(path: &Path, bytes: &[u8]) -> io::Result<()> {
    let part = part_of(path)?;
    // One that a crash left has whatever rights it has.
    match fs::remove_file(&part) {
        Err(e) if e.kind() != io::ErrorKind::NotFound => return Err(e),
        _ => {}
    }
    let mut options = OpenOptions::new();
    options.write(true).create_new(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    let mut written = options.open(&part)?;
    written.write_all(bytes)?;
    written.sync_all()?;
    move_durably(&part, path)
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

    #[cfg(unix)]
    #[test]
    fn a_link_stays_and_what_it_leads_to_is_written() {
        let folder = tempfile::tempdir().unwrap();
        let [kept, link, way, new] =
            ["kept/job.json", "link.json", "way.json", "new.json"].map(|n| folder.path().join(n));
        fs::create_dir(folder.path().join("kept")).unwrap();
        fs::write(&kept, b"old").unwrap();
        std::os::unix::fs::symlink("kept/job.json", &link).unwrap();
        std::os::unix::fs::symlink("link.json", &way).unwrap();
        write_as_named(&way, b"result").unwrap();
        assert_eq!(fs::read(&kept).unwrap(), b"result");
        assert!([&link, &way].iter().all(|l| fs::symlink_metadata(l).unwrap().is_symlink()));
        // What a link leads to need not be there yet; links in a circle lead nowhere.
        let ahead = folder.path().join("ahead.json");
        std::os::unix::fs::symlink("new.json", &ahead).unwrap();
        write_as_named(&ahead, b"made").unwrap();
        assert_eq!(fs::read(&new).unwrap(), b"made");
        let circle = folder.path().join("circle");
        std::os::unix::fs::symlink("circle", &circle).unwrap();
        assert!(write_as_named(&circle, b"x").is_err());
        // The program's own files never follow one.
        write_durably(&link, b"own").unwrap();
        assert!(!fs::symlink_metadata(&link).unwrap().is_symlink() && fs::read(&kept).unwrap() == b"result");
        assert!(write_as_named(folder.path(), b"x").is_err());
    }
}
