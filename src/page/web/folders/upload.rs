//! A file that a browser sends: written beside its place while it comes, with
//! its digest, its size and its pace watched.

use std::path::{Path, PathBuf};
use std::time::{Instant, SystemTime};

use axum::body::{Body, Bytes};
use axum::http::{HeaderMap, StatusCode};
use futures_util::{Stream, StreamExt};
use sha2::{Digest, Sha256};
use tokio::fs::File;
use tokio::io::AsyncWriteExt;
use tokio::time::timeout;

use crate::input::hex;
use crate::web::limits;
use crate::web::trouble::Trouble;
use crate::words::{Phrase, phrase};

/// How the hidden files of uploads begin.
const PART: &str = ".upload-";

/// What the sender says of the file.
pub(in crate::web) struct Announced {
    /// Made by the sender: the same upload sent again has the same.
    pub(in crate::web) id: String,
    /// SHA-256 in lower-case hex.
    pub(in crate::web) sha256: String,
}

/// A file that came whole and is on the disk under a hidden name; removed
/// unless it is moved away.
pub(in crate::web) struct Came {
    pub(in crate::web) path: PathBuf,
    pub(in crate::web) sha256: String,
}

impl Came {
    /// A file that is here already, copied under a hidden name.
    pub(in crate::web) fn copied(bytes: &[u8], folder: &Path) -> Result<Self, Trouble> {
        let sha256 = hex(&Sha256::digest(bytes));
        let came = Came { path: folder.join(format!("{PART}copy-{}.part", &sha256[..16])), sha256 };
        std::fs::write(&came.path, bytes).map_err(|e| Trouble::disk("file", &e))?;
        Ok(came)
    }
}

impl Drop for Came {
    fn drop(&mut self) {
        // Already moved to its place, as a rule.
        let _ = std::fs::remove_file(&self.path);
    }
}

impl Announced {
    /// From the request's head.
    pub(in crate::web) fn of(headers: &HeaderMap) -> Result<Self, Trouble> {
        let text = |name: &str| headers.get(name).and_then(|v| v.to_str().ok()).unwrap_or_default().to_owned();
        let wrong = |words: Phrase| Err(Trouble::new(StatusCode::BAD_REQUEST, "head", words));
        let (id, sha256) = (text("x-upload-id"), text("x-upload-sha256"));
        if !(8..=64).contains(&id.len()) || !id.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-') {
            return wrong(phrase!("page-trouble-upload-id"));
        }
        if sha256.len() != 64 || !sha256.bytes().all(|b| matches!(b, b'0'..=b'9' | b'a'..=b'f')) {
            return wrong(phrase!("page-trouble-upload-digest"));
        }
        Ok(Announced { id, sha256 })
    }
}

/// Takes a body into `folder`, at most `most` bytes.
pub(in crate::web) async fn take(body: Body, announced: &Announced, folder: &Path, most: u64) -> Result<Came, Trouble> {
    let came = take_any(body.into_data_stream(), &announced.id, folder, most).await?;
    if came.sha256 != announced.sha256 {
        let words = phrase!("page-trouble-damaged");
        return Err(Trouble::new(StatusCode::UNPROCESSABLE_ENTITY, "digest", words));
    }
    Ok(came)
}

/// Takes a stream of bytes of which nothing was announced, as forms of a page
/// without script send them.
pub(in crate::web) async fn take_any<E>(
    mut chunks: impl Stream<Item = Result<Bytes, E>> + Unpin,
    id: &str,
    folder: &Path,
    most: u64,
) -> Result<Came, Trouble> {
    remove_leftovers(folder);
    let mut random = [0; 8];
    getrandom::fill(&mut random).map_err(|_| Trouble::fault(phrase!("page-trouble-random")))?;
    let path = folder.join(format!("{PART}{id}-{}.part", hex(&random)));
    let mut came = Came { path, sha256: String::new() };
    let disk = |e: std::io::Error| Trouble::disk("file", &e);
    let mut file = File::create_new(&came.path).await.map_err(disk)?;
    let mut hasher = Sha256::new();
    let mut size = 0u64;
    let end = Instant::now() + limits::UPLOAD_TIME;
    while let Some(chunk) = next(&mut chunks, end).await? {
        size += chunk.len() as u64;
        if size > most {
            let words = phrase!("page-trouble-too-large", most = most / 1_000_000);
            return Err(Trouble::new(StatusCode::PAYLOAD_TOO_LARGE, "too-large", words));
        }
        hasher.update(&chunk);
        file.write_all(&chunk).await.map_err(disk)?;
    }
    came.sha256 = hex(&hasher.finalize());
    file.flush().await.map_err(disk)?;
    file.sync_all().await.map_err(disk)?;
    Ok(came)
}

async fn next<E>(
    chunks: &mut (impl Stream<Item = Result<Bytes, E>> + Unpin),
    end: Instant,
) -> Result<Option<Bytes>, Trouble> {
    let slow = || Trouble::new(StatusCode::REQUEST_TIMEOUT, "slow", phrase!("page-trouble-slow"));
    if Instant::now() > end {
        return Err(slow());
    }
    match timeout(limits::STILL, chunks.next()).await {
        Err(_) => Err(slow()),
        Ok(None) => Ok(None),
        Ok(Some(Ok(chunk))) => Ok(Some(chunk)),
        Ok(Some(Err(_))) => Err(Trouble::new(StatusCode::BAD_REQUEST, "cut", phrase!("page-trouble-cut"))),
    }
}

/// What a crash left behind, once no upload can still be writing it.
fn remove_leftovers(folder: &Path) {
    let Ok(entries) = std::fs::read_dir(folder) else { return };
    for entry in entries.flatten() {
        let old = || {
            let changed = entry.metadata().ok()?.modified().ok()?;
            Some(SystemTime::now().duration_since(changed).ok()? > 2 * limits::UPLOAD_TIME)
        };
        if entry.file_name().to_string_lossy().starts_with(PART) && old() == Some(true) {
            // Another request may just have removed it.
            let _ = std::fs::remove_file(entry.path());
        }
    }
}
