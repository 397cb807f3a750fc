//! One photo looked at the moment it arrives: what it shows, what it misses,
//! and what is wrong with it on its own.

use std::collections::BTreeMap;

use nalgebra::Vector2;
use rayon::prelude::*;
use time::format_description::well_known::Rfc3339;

use crate::folder::JobFolder;
use crate::job::asking::photo_facts;
use crate::job::opening::{Looked, Opened};
use crate::job::recording::finding;
use crate::marker::{Kit, Marker};
use crate::photo::Orientation;
use crate::pose::{self, Foreseen, Problem, Scene, adjust};
use crate::record::{FindingRecord, LookedCarrier, LookedMarker, PhotoLook};
use crate::verdict::findings::{Case, PhotoFacts, find};

/// Each photo of a job on its own, in the job's order.
pub(in crate::job) fn looks(opened: &Opened) -> Vec<PhotoLook> {
    (0..opened.photos.len()).into_par_iter().map(|j| look(opened, j)).collect()
}

fn look(opened: &Opened, j: usize) -> PhotoLook {
    let photo = &opened.photos[j];
    let orientation = photo.exif.orientation.unwrap_or(Orientation::UPRIGHT);
    let stored = [photo.width, photo.height];
    let upright = |corners: &[Vector2<f64>; 4]| corners.map(|c| orientation.upright([c.x, c.y], stored));
    let [width, height] = stored.map(|n| n as f64);
    let kit = &opened.folder.kit;
    let marker = |k: usize, id: u32, corners: &[Vector2<f64>; 4]| LookedMarker {
        id,
        carrier: kit.carriers[k].name.clone(),
        corners_px: upright(corners),
    };
    let seen: Vec<LookedMarker> = photo
        .sightings
        .markers
        .iter()
        .filter_map(|m| kit.marker(m.id).map(|(k, _)| marker(k, m.id, &m.corners_px)))
        .collect();
    let alone = Alone::of(opened, j);
    let missing =
        alone.iter().flat_map(Alone::missing).map(|f| marker(f.carrier, f.marker.id, &f.corners_px)).collect();
    // A stand that stood in several places is one carrier to whoever looks at a photo.
    let kit = opened.kit();
    let carriers = kit.carriers.iter().map(|c| LookedCarrier {
        name: c.name.clone(),
        role: c.role.name().to_owned(),
        seen: c.markers.iter().filter(|m| seen.iter().any(|s| s.id == m.id)).count(),
        of: c.markers.len(),
    });
    PhotoLook {
        format: "photo-look/1".into(),
        file: photo.name.clone(),
        sha256: photo.sha256.clone(),
        upright_px: if orientation.swaps_sides() { [height, width] } else { [width, height] },
        blur_px: photo.sightings.blur_px,
        taken: photo.exif.taken.and_then(|t| t.format(&Rfc3339).ok()),
        camera: opened.assignment.photos[j].as_ref().ok().map(|c| opened.assignment.cameras[*c].name.clone()),
        carriers: carriers.collect(),
        seen,
        missing,
        remarks: remarks(opened, j, alone.as_ref()),
    }
}

/// What the rules say of this photo beside the job's others, and of its light
/// where the photo alone places carriers.
fn remarks(opened: &Opened, j: usize, alone: Option<&Alone>) -> Vec<FindingRecord> {
    let photos: Vec<PhotoFacts> = opened
        .photos
        .iter()
        .zip(&opened.assignment.photos)
        .map(|(p, a)| photo_facts(p, a.as_ref().err().cloned()))
        .collect();
    let name = photos[j].file;
    let measured = BTreeMap::new();
    let case = |photos, scene, problem| {
        let JobFolder { kit, setup, job, .. } = &opened.folder;
        let found = find(&Case {
            kit,
            setup,
            job,
            unlisted: &[],
            photos,
            scene,
            problem,
            measurement: None,
            checks: &[],
            line: setup.reference_line,
            suspects: &[],
            readings: &[],
            measured: &measured,
            elsewhere: &[],
            sensitivity: &[],
            phases: &[],
            after_move: &[],
        });
        found.into_iter().filter(|f| f.photo.as_deref() == Some(name)).collect::<Vec<_>>()
    };
    let mut found = case(&photos, None, None);
    if let Some(alone) = alone {
        let by_light = case(&photos[j..=j], Some(&alone.scene), Some(&alone.problem));
        let new: Vec<_> = by_light.into_iter().filter(|f| f.code == "photo-badly-lit" && !found.contains(f)).collect();
        found.extend(new);
    }
    found.iter().map(finding).collect()
}

/// One photo adjusted alone: where what it shows stands, seen from its camera.
struct Alone<'a> {
    photo: &'a Looked,
    kit: &'a Kit,
    problem: Problem<'a>,
    scene: Scene,
}

impl<'a> Alone<'a> {
    /// `None` where the photo has no camera or shows too little.
    fn of(opened: &'a Opened, j: usize) -> Option<Self> {
        let camera = opened.assignment.photos[j].as_ref().ok()?;
        let mut view = opened.views[j].clone();
        view.camera = 0;
        let kit = &opened.folder.kit;
        let problem = Problem { kit, cameras: vec![&opened.assignment.cameras[*camera]], photos: vec![view] };
        let scene = adjust(&problem, &pose::Options::default()).ok()?;
        Some(Alone { photo: &opened.photos[j], kit, problem, scene })
    }

    /// Markers that should have been found and were not.
    fn missing(&self) -> Vec<Foreseen<'a>> {
        let found = |m: &Marker| self.photo.sightings.markers.iter().any(|s| s.id == m.id);
        let size_px = [self.photo.width as f64, self.photo.height as f64];
        self.scene.foreseen(self.kit, 0, size_px).into_iter().filter(|f| !found(f.marker)).collect()
    }
}
