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
pub(in crate::web) struct Library {
    models: Models,
    read: Mutex<Option<(Instant, Arc<Shelved>)>>,
}

/// What can be named; a file that is wrong is left out and can be asked about
/// on the command line.
pub(in crate::web) struct Shelved {
    /// Set-up sheets by the name that jobs use.
    pub(in crate::web) sheets: Vec<(String, Setup)>,
    /// Marker kits.
    pub(in crate::web) kits: Vec<(String, Kit)>,
    /// Cameras.
    pub(in crate::web) cameras: Vec<(String, Profile)>,
}

impl Library {
    pub(in crate::web) fn new(models: Models) -> Self {
        Library { models, read: Mutex::new(None) }
    }

    /// Everything that can be named now.
    pub(in crate::web) fn now(&self) -> Arc<Shelved> {
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
    pub(in crate::web) fn forget(&self) {
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
    pub(in crate::web) fn sheet(&self, name: &str) -> Option<&Setup> {
        self.sheets.iter().find(|(n, _)| n == name).map(|(_, sheet)| sheet)
    }

    /// A kit by its name.
    pub(in crate::web) fn kit(&self, name: &str) -> Option<&Kit> {
        self.kits.iter().find(|(n, _)| n == name).map(|(_, kit)| kit)
    }

    /// The kits that bear what a sheet checks.
    pub(in crate::web) fn kits_for<'a>(&'a self, sheet: &'a Setup) -> impl Iterator<Item = &'a str> {
        self.kits.iter().filter(|(_, kit)| sheet.check_against(kit).is_ok()).map(|(name, _)| name.as_str())
    }
}

/// The models folder in the folder of jobs.
const MODELS: &str = "models";

/// The folder of models in a folder of jobs.
pub(in crate::web) fn folder(jobs: &Path) -> PathBuf {
    jobs.join(MODELS)
}
