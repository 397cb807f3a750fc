//! `baywitness detect`.

use std::path::{Path, PathBuf};

use rayon::prelude::*;
use serde::Serialize;

use super::UNREADABLE;
use super::output::{JsonTarget, complain, say, write_json};
use super::threads::pool;
use crate::job::{PhotoMarkers, photo_markers};

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Photos (JPEG, PNG or HEIC)
    #[arg(required = true, value_name = "PHOTO")]
    photos: Vec<PathBuf>,
    /// Write what was found as JSON to a file, or to standard output with `-`
    #[arg(long, value_name = "FILE|-")]
    json: Option<JsonTarget>,
    /// Number of threads (default: one for each core)
    #[arg(long, value_name = "N")]
    threads: Option<usize>,
}

/// An element for a photo that could not be read.
#[derive(Debug, Serialize)]
#[serde(untagged)]
enum Element {
    Found(PhotoMarkers),
    Failed { format: &'static str, path: String, message: String },
}

/// Finds the markers of all photos; exit code 0, or 2 where a photo cannot be read.
pub(super) fn run(arguments: &Arguments) -> u8 {
    match pool(arguments.threads) {
        Ok(pool) => report(arguments, pool.install(|| arguments.photos.par_iter().map(look).collect())),
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

fn look(path: impl AsRef<Path>) -> Element {
    let path = path.as_ref();
    match photo_markers(path) {
        Ok(found) => Element::Found(found),
        Err(e) => Element::Failed { format: "error/1", path: path.display().to_string(), message: e.to_string() },
    }
}

fn report(arguments: &Arguments, elements: Vec<Element>) -> u8 {
    let mut code = 0;
    for element in &elements {
        match element {
            Element::Found(found) => say(&words(found), arguments.json.as_ref()),
            Element::Failed { message, .. } => {
                complain(message);
                code = UNREADABLE;
            }
        }
    }
    let written = arguments.json.as_ref().map_or(Ok(()), |target| write_json(target, &elements));
    if let Err(message) = written {
        complain(&message);
        code = UNREADABLE;
    }
    code
}

/// A line for the photo and one for each marker.
fn words(found: &PhotoMarkers) -> String {
    let mut text = format!(
        "{}: {} markers, blur {:.2} px, edge offset {:+.2} px (corrected)\n",
        found.file,
        found.markers.len(),
        found.blur_px,
        found.edge_offset_px
    );
    for m in &found.markers {
        let corners: Vec<_> = m.corners_px.iter().map(|[u, v]| format!("({u:.2}, {v:.2})")).collect();
        let covered = if m.corner_valid.contains(&false) { ", a corner is covered" } else { "" };
        text += &format!(
            "  {:>3}  {:.0} px, corners {} +-{:.3} px{covered}\n",
            m.id,
            m.side_px,
            corners.join(" "),
            m.u_corner_px
        );
    }
    text
}
