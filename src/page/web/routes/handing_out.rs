//! The evidence folder of a closed job as one file to take along.

use std::path::PathBuf;

use axum::body::{Body, Bytes};
use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_LENGTH, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};
use futures_util::stream;
use tempfile::TempDir;
use tokio::fs::File;
use tokio::io::AsyncReadExt;

use super::answer::trouble_page;
use super::request::Shared;
use crate::evidence;
use crate::web::language::Visitor;
use crate::web::trouble::{Trouble, blocking};

/// Bytes that are sent at a time.
const PIECE: usize = 256 * 1024;

/// The packed file; its room is removed when it was sent.
struct Packed {
    _room: TempDir,
    file: File,
}

/// `evidence.tar`, the same bytes each time; `check` takes it as it is.
pub(in crate::web) async fn evidence(State(app): Shared, visitor: Visitor, Path(name): Path<String>) -> Response {
    let sealed = app.shelf.path(&name).map(|_| app.shelf.sealed_path(&name)).filter(|_| app.shelf.is_closed(&name));
    let Some(sealed) = sealed else { return trouble_page(visitor, &Trouble::not_found("evidence")) };
    let plain: String =
        name.chars().map(|c| if c.is_ascii_alphanumeric() || "-_.".contains(c) { c } else { '_' }).collect();
    let inside = plain.clone();
    let packed = blocking(move || pack(&sealed, &inside)).await;
    let opened = match packed {
        Ok((room, path)) => open(room, path).await,
        Err(trouble) => Err(trouble),
    };
    match opened {
        Ok((packed, length)) => {
            let headers = [
                (CONTENT_TYPE, "application/x-tar".to_owned()),
                (CONTENT_DISPOSITION, format!("attachment; filename=\"{plain}-evidence.tar\"")),
                (CONTENT_LENGTH, length.to_string()),
            ];
            (StatusCode::OK, headers, Body::from_stream(pieces(packed))).into_response()
        }
        Err(trouble) => trouble_page(visitor, &trouble),
    }
}

fn pack(sealed: &std::path::Path, name: &str) -> Result<(TempDir, PathBuf), Trouble> {
    let disk = |e: std::io::Error| Trouble::disk("file", &e);
    let beside = sealed.parent().ok_or_else(|| Trouble::not_found("evidence"))?;
    let room = tempfile::Builder::new().prefix(".handing-out-").tempdir_in(beside).map_err(disk)?;
    let path = room.path().join("evidence.tar");
    evidence::pack(sealed, name, &path).map_err(|e| Trouble::typed(e.phrase()))?;
    Ok((room, path))
}

async fn open(room: TempDir, path: PathBuf) -> Result<(Packed, u64), Trouble> {
    let disk = |e: std::io::Error| Trouble::disk("read", &e);
    let file = File::open(&path).await.map_err(disk)?;
    let length = file.metadata().await.map_err(disk)?.len();
    Ok((Packed { _room: room, file }, length))
}

fn pieces(packed: Packed) -> impl futures_util::Stream<Item = std::io::Result<Bytes>> {
    stream::try_unfold(packed, |mut packed| async move {
        let mut piece = vec![0; PIECE];
        let read = packed.file.read(&mut piece).await?;
        piece.truncate(read);
        Ok((read > 0).then(|| (Bytes::from(piece), packed)))
    })
}
