//! `baywitness detect`.

use std::path::PathBuf;

use rayon::prelude::*;
use serde::Serialize;

use super::UNREADABLE;
use super::output::{JsonTarget, complain, say, write_json};
use crate::detect::{Sighting, Sightings, find_markers};
use crate::marker::Dictionary;
use crate::photo;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Photos (JPEG or PNG)
    #[arg(required = true, value_name = "PHOTO")]
    photos: Vec<PathBuf>,
    /// Write what was found as JSON to a file, or to standard output with `-`
    #[arg(long, value_name = "FILE|-")]
    json: Option<JsonTarget>,
    /// Number of threads (default: one for each core)
    #[arg(long, value_name = "N")]
    threads: Option<usize>,
}

/// What was found in one photo, as the formats page has it.
#[derive(Debug, Serialize)]
struct Found {
    file: String,
    width_px: usize,
    height_px: usize,
    edge_offset_px: f64,
    u_edge_offset_px: f64,
    blur_px: f64,
    markers: Vec<Marker>,
}

#[derive(Debug, Serialize)]
struct Marker {
    id: u32,
    family: &'static str,
    hamming: u32,
    corners_px: [[f64; 2]; 4],
    corner_valid: [bool; 4],
    covariance_px2: [[f64; 8]; 8],
    u_corner_px: f64,
    contrast: f64,
    side_px: f64,
    blur_px: f64,
}

/// An element for a photo that could not be read.
#[derive(Debug, Serialize)]
#[serde(untagged)]
enum Element {
    Found(Found),
    Failed { format: &'static str, path: String, message: String },
}

/// Finds the markers of all photos; exit code 0, or 2 where a photo cannot be read.
pub(super) fn run(arguments: &Arguments) -> u8 {
    let threads = arguments.threads.unwrap_or(0);
    match rayon::ThreadPoolBuilder::new().num_threads(threads).build() {
        Ok(pool) => report(arguments, pool.install(|| arguments.photos.par_iter().map(look).collect())),
        Err(e) => {
            complain(&format!("cannot start {threads} threads: {e}"));
            UNREADABLE
        }
    }
}

fn look(path: &PathBuf) -> Element {
    let file = path.display().to_string();
    match photo::read(path) {
        Ok(photo) => {
            let sightings = find_markers(&photo.luma, Dictionary::tag36h11());
            Element::Found(found(file, &photo.luma, &sightings))
        }
        Err(e) => Element::Failed { format: "error/1", path: file, message: e.to_string() },
    }
}

fn found(file: String, luma: &photo::Luma, sightings: &Sightings) -> Found {
    Found {
        file,
        width_px: luma.width(),
        height_px: luma.height(),
        edge_offset_px: sightings.edge_offset_px,
        u_edge_offset_px: sightings.u_edge_offset_px,
        blur_px: sightings.blur_px,
        markers: sightings.markers.iter().map(marker).collect(),
    }
}

fn marker(sighting: &Sighting) -> Marker {
    Marker {
        id: sighting.id,
        family: Dictionary::tag36h11().name(),
        hamming: sighting.hamming,
        corners_px: sighting.corners_px.map(|c| [c.x, c.y]),
        corner_valid: sighting.corner_valid,
        covariance_px2: std::array::from_fn(|i| std::array::from_fn(|j| sighting.covariance_px2[(i, j)])),
        u_corner_px: sighting.u_corner_px(),
        contrast: sighting.contrast,
        side_px: sighting.side_px(),
        blur_px: sighting.blur_px,
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
fn words(found: &Found) -> String {
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
