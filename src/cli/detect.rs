//! `baywitness detect`.

use std::path::{Path, PathBuf};

use rayon::prelude::*;
use serde::Serialize;

use super::codes::UNREADABLE;
use super::output::{JsonTarget, complain, language, say, write_json};
use super::threads::pool;
use crate::job::{PhotoMarkers, photo_markers};
use crate::words::{Figure, say};

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(required = true, value_name = "PHOTO")]
    photos: Vec<PathBuf>,
    #[arg(long, value_name = "FILE|-")]
    json: Option<JsonTarget>,
    #[arg(long, value_name = "N", allow_negative_numbers = true)]
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
    let language = language();
    let mut text = say!(
        language,
        "cli-detect-photo",
        photo = &found.file,
        count = found.markers.len(),
        blur = Figure::fixed(found.blur_px, 2),
        offset = Figure::fixed(found.edge_offset_px, 2)
    ) + "\n";
    for m in &found.markers {
        let corner =
            |[u, v]: &[f64; 2]| say!(language, "cli-detect-corner", u = Figure::fixed(*u, 2), v = Figure::fixed(*v, 2));
        let corners: Vec<String> = m.corners_px.iter().map(corner).collect();
        let words = say!(
            language,
            "cli-detect-marker",
            side = Figure::fixed(m.side_px, 0),
            corners = corners.join(" "),
            u = Figure::fixed(m.u_corner_px, 3),
            covered = if m.corner_valid.contains(&false) { "yes" } else { "no" }
        );
        text += &format!("  {:>3}  {words}\n", m.id);
    }
    text
}
