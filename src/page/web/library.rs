//! Set-up sheets, marker kits and cameras that a job can name.

use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, Instant};

use crate::camera::Profile;
use crate::folder::{Kind, Models};
use crate::marker::{Kit, KitFile};
use crate::setup::Setup;

/// Changed files are seen after this.
const FRESH: Duration = Duration::from_secs(3);

/// The models by name, read again once in a while.
pub(super) struct Library {
    models: Models,
    read: Mutex<Option<(Instant, Arc<Shelved>)>>,
}

/// What can be named; a file that is wrong is left out and can be asked about
/// on the command line.
pub(super) struct Shelved {
    /// Set-up sheets by the name that jobs use.
    pub(super) sheets: Vec<(String, Setup)>,
    /// Marker kits.
    pub(super) kits: Vec<(String, Kit)>,
    /// Cameras.
    pub(super) cameras: Vec<(String, Profile)>,
}

impl Library {
    pub(super) fn new(models: Models) -> Self {
        Library { models, read: Mutex::new(None) }
    }

    /// Everything that can be named now.
    pub(super) fn now(&self) -> Arc<Shelved> {
        let mut read = self.read.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some((at, shelved)) = read.as_ref()
            && at.elapsed() < FRESH
        {
            return Arc::clone(shelved);
        }
        let shelved = Arc::new(self.shelved());
        *read = Some((Instant::now(), Arc::clone(&shelved)));
        shelved
    }

    /// Reads everything again the next time.
    pub(super) fn forget(&self) {
        *self.read.lock().unwrap_or_else(PoisonError::into_inner) = None;
    }

    fn shelved(&self) -> Shelved {
        Shelved {
            sheets: self.each(Kind::Setup, |text, name| Setup::from_toml(text, name).ok()),
            kits: self.each(Kind::Kit, |text, name| KitFile::from_toml(text, name).ok().map(|f| f.kit)),
            cameras: self.each(Kind::Camera, |text, name| Profile::from_toml(text, name).ok()),
        }
    }

    fn each<T>(&self, kind: Kind, read: impl Fn(&str, &str) -> Option<T>) -> Vec<(String, T)> {
        let one = |name: String| {
            let source = self.models.open(&[kind], &name).ok()?;
            let item = read(source.text().ok()?, source.name())?;
            Some((name, item))
        };
        self.models.names(kind).into_iter().filter_map(one).collect()
    }
}

impl Shelved {
    /// A sheet by its name.
    pub(super) fn sheet(&self, name: &str) -> Option<&Setup> {
        self.sheets.iter().find(|(n, _)| n == name).map(|(_, sheet)| sheet)
    }

    /// A kit by its name.
    pub(super) fn kit(&self, name: &str) -> Option<&Kit> {
        self.kits.iter().find(|(n, _)| n == name).map(|(_, kit)| kit)
    }

    /// The kits that bear what a sheet checks.
    pub(super) fn kits_for<'a>(&'a self, sheet: &'a Setup) -> impl Iterator<Item = &'a str> {
        self.kits.iter().filter(|(_, kit)| sheet.check_against(kit).is_ok()).map(|(name, _)| name.as_str())
    }
}

/// The models folder in the folder of jobs.
const MODELS: &str = "models";

/// The folder of models in a folder of jobs.
pub(super) fn folder(jobs: &Path) -> PathBuf {
    jobs.join(MODELS)
}
