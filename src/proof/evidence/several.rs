//! Evidence folders of one repair order, side by side below one folder, with
//! an index that binds them.
//!
//! Each job keeps an evidence folder of its own: it can be checked, handed on
//! and measured again alone, and a job that comes later leaves the others as
//! they are. The index lists the tag manifest of each, as `sha512sum -c` reads
//! it, and is signed like they are.

use std::fs;
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha512};

use crate::input::hex;

use super::bag_path::BagPath;
use super::key::Key;
use super::manifest::Manifest;
use super::seal::{Contents, SealError, seal, sync_folder, write_file};
use super::{INDEX, INDEX_SIGNATURE, TAG_MANIFEST};

/// Seals each job of `jobs` (name of its folder, contents) below `out`, with
/// `pages` (name, bytes) and the signed index beside them. It appears under
/// its name only when it is whole.
///
/// # Errors
/// Nothing is left under the name.
pub fn seal_several(
    out: &Path,
    jobs: &[(String, Contents)],
    pages: &[(&str, Vec<u8>)],
    key: Option<&Key>,
) -> Result<(), SealError> {
    if fs::symlink_metadata(out).is_ok() {
        return Err(SealError::Exists(out.to_path_buf()));
    }
    let mut name = out.as_os_str().to_owned();
    name.push(format!(".part-{}", std::process::id()));
    let part = PathBuf::from(name);
    let written = write_all(&part, jobs, pages, key).and_then(|()| {
        fs::rename(&part, out).map_err(|source| SealError::Io { doing: "rename", path: out.to_path_buf(), source })
    });
    if written.is_err() {
        // What could not be finished is of no use; if it can't be removed either, the name says what it is.
        let _ = fs::remove_dir_all(&part);
    }
    written?;
    sync_folder(out.parent().filter(|p| !p.as_os_str().is_empty()).unwrap_or(Path::new(".")))
}

fn write_all(
    folder: &Path,
    jobs: &[(String, Contents)],
    pages: &[(&str, Vec<u8>)],
    key: Option<&Key>,
) -> Result<(), SealError> {
    let io = |doing: &'static str, path: &Path| {
        let path = path.to_path_buf();
        move |source| SealError::Io { doing, path, source }
    };
    fs::create_dir_all(folder).map_err(io("make", folder))?;
    let mut index = Manifest::default();
    let mut enter = |name: String, digest: String| {
        let path = BagPath::new(&name).map_err(|problem| SealError::Path { path: name.clone(), problem })?;
        match index.entries.insert(path, digest) {
            Some(_) => Err(SealError::Alike(name.clone(), name)),
            None => Ok(()),
        }
    };
    for (name, contents) in jobs {
        let sealed = folder.join(name);
        seal(&sealed, contents, key, None)?;
        let manifest = sealed.join(TAG_MANIFEST);
        let bytes = fs::read(&manifest).map_err(io("read", &manifest))?;
        enter(format!("{name}/{TAG_MANIFEST}"), hex(&Sha512::digest(&bytes)))?;
    }
    for (name, bytes) in pages {
        enter((*name).to_owned(), write_file(&folder.join(name), bytes)?)?;
    }
    let text = index.text();
    write_file(&folder.join(INDEX), text.as_bytes())?;
    if let Some(key) = key {
        write_file(&folder.join(INDEX_SIGNATURE), key.sign(text.as_bytes())?.pem().as_bytes())?;
    }
    sync_folder(folder)
}
