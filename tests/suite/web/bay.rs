//! A rendered bay whose sheet, kit and camera the page finds by name.

use std::path::{Path, PathBuf};
use std::sync::LazyLock;

use tempfile::TempDir;

use super::client::Server;
use crate::staged;

/// The sheet's name in the models folder.
pub(crate) const SHEET: &str = "test-sheet";

/// A staged job and a models folder made of its files.
pub(crate) struct Bay {
    folder: TempDir,
}

/// A right stand; rendered once for all tests.
pub(crate) static BAY: LazyLock<Bay> = LazyLock::new(|| Bay::of(0.4));

/// The sample's camera at full size, megapixels.
const SAMPLE_MP: f64 = 11.06;

impl Bay {
    fn of(scale: f64) -> Bay {
        let folder = tempfile::tempdir().unwrap();
        staged::scene(scale).stage(&folder.path().join("job"), &mut |_| ()).unwrap();
        for (kind, file, name) in [
            ("setups", "setup.toml", SHEET),
            ("kits", "kit.toml", "test-kit"),
            ("cameras", "camera.toml", "test-camera"),
        ] {
            let to = folder.path().join("models").join(kind);
            std::fs::create_dir_all(&to).unwrap();
            std::fs::copy(folder.path().join("job").join(file), to.join(format!("{name}.toml"))).unwrap();
        }
        Bay { folder }
    }

    pub(crate) fn of_megapixels(megapixels: f64) -> Bay {
        Bay::of((megapixels / SAMPLE_MP).sqrt())
    }

    pub(crate) fn models(&self) -> PathBuf {
        self.folder.path().join("models")
    }

    pub(crate) fn job(&self) -> PathBuf {
        self.folder.path().join("job")
    }

    pub(crate) fn photo(&self, name: &str) -> Vec<u8> {
        std::fs::read(self.job().join("photos").join(name)).unwrap()
    }

    pub(crate) fn serve(&self, jobs: &Path) -> Server {
        Server::start(jobs, Some(&self.models()))
    }
}

/// Begins a job on the page; its folder's name.
pub(crate) fn begin(server: &Server, fields: &[(&str, &str)]) -> String {
    let mut all = vec![("kit", "test-kit"), ("camera", "test-camera"), ("description", "invented")];
    all.extend(fields);
    let answer = server.form(&format!("/new/{SHEET}"), &all);
    assert_eq!(answer.status, 303, "{}", answer.text());
    let to = answer.header("location").unwrap().to_owned();
    to.split('/').nth(2).unwrap().to_owned()
}

/// The same picture in another file: a comment (ITU-T T.81, B.2.4.5) behind the first marker.
pub(crate) fn with_comment(jpeg: &[u8], comment: &str) -> Vec<u8> {
    let length = u16::try_from(comment.len() + 2).unwrap().to_be_bytes();
    [&jpeg[..2], &[0xff, 0xfe], &length, comment.as_bytes(), &jpeg[2..]].concat()
}
