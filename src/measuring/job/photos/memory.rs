//! Photos that were looked at, so that a page which judges a job after every
//! photo looks at each once.

use std::collections::{HashMap, VecDeque};
use std::path::Path;
use std::sync::{Arc, Mutex, PoisonError};

use rayon::prelude::*;

use crate::folder::PhotoFile;
use crate::job::error::Error;
use crate::job::opening::{Looked, look_into};
use crate::job::tripod::Frame;
use crate::marker::Kit;
use crate::photo;

/// What was found in photos, by the digest of their bytes. A photo's bytes are
/// read and hashed every time, so an altered file is looked at again.
#[derive(Debug)]
pub struct PhotoMemory {
    most: usize,
    kept: Mutex<Kept>,
}

#[derive(Debug, Default)]
struct Kept {
    by_digest: HashMap<String, Arc<Looked>>,
    /// Oldest first.
    order: VecDeque<String>,
}

impl PhotoMemory {
    /// Keeps at most so many photos, the latest; some 100 kB each.
    pub fn new(most: usize) -> Self {
        PhotoMemory { most: most.max(1), kept: Mutex::default() }
    }

    /// Looks at one photo, so that a job finds it known.
    ///
    /// # Errors
    /// It cannot be read or decoded.
    pub fn examine(&self, path: &Path) -> Result<(), Error> {
        let file = PhotoFile { name: String::new(), path: path.to_path_buf(), step: None, phase: None, after_move: 0 };
        self.look_at(&file).map(|_| ())
    }

    /// What a photo of a tripod shows of the kit, and its SHA-256.
    ///
    /// # Errors
    /// It cannot be read or decoded.
    pub fn frame(&self, path: &Path, kit: &Kit) -> Result<(Frame, String), Error> {
        let file = PhotoFile { name: String::new(), path: path.to_path_buf(), step: None, phase: None, after_move: 0 };
        let looked = self.look_at(&file)?;
        Ok((Frame::new(kit, [looked.width, looked.height], &looked.sightings), looked.sha256))
    }

    /// Looks at photos, in parallel; the first unreadable one (in the job's order) is the error.
    pub(in crate::job) fn look(&self, photos: &[PhotoFile]) -> Result<Vec<Looked>, Error> {
        let all: Vec<Result<Looked, Error>> = photos.par_iter().map(|p| self.look_at(p)).collect();
        all.into_iter().collect()
    }

    fn look_at(&self, file: &PhotoFile) -> Result<Looked, Error> {
        let bytes = photo::read_bytes(&file.path)?;
        let digest = photo::sha256(&bytes);
        if let Some(known) = self.known(&digest) {
            return Ok(Looked { name: file.name.clone(), ..known.as_ref().clone() });
        }
        let looked = look_into(&bytes, file)?;
        self.keep(digest, Arc::new(looked.clone()));
        Ok(looked)
    }

    fn known(&self, digest: &str) -> Option<Arc<Looked>> {
        self.kept.lock().unwrap_or_else(PoisonError::into_inner).by_digest.get(digest).cloned()
    }

    fn keep(&self, digest: String, looked: Arc<Looked>) {
        let mut kept = self.kept.lock().unwrap_or_else(PoisonError::into_inner);
        if kept.by_digest.insert(digest.clone(), looked).is_none() {
            kept.order.push_back(digest);
        }
        while kept.order.len() > self.most {
            if let Some(oldest) = kept.order.pop_front() {
                kept.by_digest.remove(&oldest);
            }
        }
    }
}
