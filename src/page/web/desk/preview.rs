//! Small upright copies of photos for the page, the latest kept in memory.

use std::collections::VecDeque;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::SystemTime;

use tokio::sync::Semaphore;

use crate::photo;
use crate::report::{PictureError, small_jpeg};
use crate::web::trouble::{Trouble, blocking};

/// The longer side, px: sharp on a phone held sideways.
const SIDE_PX: usize = 1000;
/// Copies that are kept, some 100 kB each.
const MOST: usize = 200;

/// The latest copies.
pub(in crate::web) struct Previews {
    kept: Mutex<VecDeque<(Of, Arc<Vec<u8>>)>>,
    /// One is made at a time: measuring comes first.
    place: Arc<Semaphore>,
}

/// Which state of which file.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Of(PathBuf, SystemTime, u64);

impl Default for Previews {
    fn default() -> Self {
        Previews { kept: Mutex::default(), place: Arc::new(Semaphore::new(1)) }
    }
}

impl Previews {
    /// The copy of a photo.
    pub(in crate::web) async fn of(&self, path: &Path) -> Result<Arc<Vec<u8>>, Trouble> {
        let gone = |_| Trouble::not_found("photo");
        let metadata = tokio::fs::metadata(path).await.map_err(gone)?;
        let of = Of(path.to_path_buf(), metadata.modified().map_err(gone)?, metadata.len());
        if let Some(known) = self.known(&of) {
            return Ok(known);
        }
        let _place = self.place.acquire().await.map_err(|_| Trouble::not_found("photo"))?;
        if let Some(known) = self.known(&of) {
            return Ok(known);
        }
        let path = path.to_path_buf();
        let made = blocking(move || {
            let bytes = photo::read_bytes(&path).map_err(|e| Trouble::typed(e.without_name()))?;
            let (jpeg, _) = small_jpeg(&bytes, "the photo", SIDE_PX).map_err(|e| match e {
                PictureError::Photo(e) => Trouble::typed(e.without_name()),
                other => Trouble::typed(other.phrase()),
            })?;
            Ok(Arc::new(jpeg))
        })
        .await?;
        let mut kept = self.kept.lock().unwrap_or_else(PoisonError::into_inner);
        kept.push_front((of, Arc::clone(&made)));
        kept.truncate(MOST);
        Ok(made)
    }

    fn known(&self, of: &Of) -> Option<Arc<Vec<u8>>> {
        let kept = self.kept.lock().unwrap_or_else(PoisonError::into_inner);
        kept.iter().find(|(known, _)| known == of).map(|(_, jpeg)| Arc::clone(jpeg))
    }
}
