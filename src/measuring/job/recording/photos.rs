//! A photo as the record keeps it: what was seen in it and how well it fits.

use time::format_description::well_known::Rfc3339;

use super::outline::outlines;
use super::parts::Parts;
use crate::geom::Pose;
use crate::job::plan::ratio_by_photo;
use crate::pose::SolvedPhoto;
use crate::record::{MarkerRecord, PhotoRecord};
use crate::verdict::findings::PhotoProblem;
use crate::words::Language;

pub(in crate::job) fn photos(parts: &Parts) -> Vec<PhotoRecord> {
    // Photos of other attempts are in those attempts' records.
    (0..parts.folder.photos.len()).map(|j| photo(parts, j)).collect()
}

fn photo(parts: &Parts, j: usize) -> PhotoRecord {
    let looked = &parts.photos[j];
    let solved = parts.scene.and_then(|s| s.photos[j].as_ref());
    let camera = parts.assignment.photos[j].as_ref();
    let station = parts.measurement.and_then(|m| m.photos[j].as_ref());
    PhotoRecord {
        file: looked.name.clone(),
        step: parts.folder.photos[j].step.map(|s| parts.folder.setup.steps[s].clone()),
        phase: parts.folder.photos[j].phase.map(|p| p.name().to_owned()),
        camera: camera.ok().map(|c| parts.assignment.cameras[*c].name.clone()),
        unused_because: camera.err().map(|p| p.phrase().say(Language::English)),
        unused_because_phrase: camera.err().map(PhotoProblem::phrase),
        width_px: looked.width as u32,
        height_px: looked.height as u32,
        orientation: looked.exif.orientation.map_or(1, |o| o.0),
        taken: looked.exif.taken.and_then(|t| t.format(&Rfc3339).ok()),
        credentials: looked.credentials.clone(),
        private: looked.exif.private.iter().map(|&kind| kind.to_owned()).collect(),
        private_values: Vec::new(),
        rendered: looked.traces.rendered.iter().map(|mark| mark.name().to_owned()).collect(),
        rms_px: solved.map(|s| s.rms_px),
        focal_px: solved.map(|s| s.lens.focal_px),
        centre_px: solved.map(|s| s.lens.centre_px),
        edge_offset_px: looked.sightings.edge_offset_px + solved.map_or(0.0, |s| s.edge_offset_px),
        blur_px: looked.sightings.blur_px,
        noise_ratio: parts.scene.and_then(|s| ratio_by_photo(parts.problem, s, j)),
        turn_ratio: solved.and_then(|s| s.turn_ratio),
        gain_spread: looked.sightings.gain_spread,
        position_mm: station.map(|p| p.origin_mm().into()),
        direction: station.map(|p: &Pose<_, _>| p.direction(&nalgebra::Vector3::z()).into()),
        outlines: match (parts.scene, solved) {
            (Some(scene), Some(solved)) => outlines(&parts.folder.kit, scene, solved),
            _ => Vec::new(),
        },
        markers: markers(parts, j, solved),
    }
}

fn markers(parts: &Parts, j: usize, solved: Option<&SolvedPhoto>) -> Vec<MarkerRecord> {
    let views = &parts.problem.photos[j].views;
    parts.photos[j]
        .sightings
        .markers
        .iter()
        .map(|m| {
            let at = views.iter().position(|v| v.id == m.id);
            let view = at.map(|i| &views[i]);
            let result = at.and_then(|i| solved?.views.get(i));
            let offset = result.map_or(0.0, |r| r.edge_offset_px);
            let outward = view.map(|v| v.outward());
            let used = result.map_or([false; 4], |r| r.used);
            let squares: Vec<f64> = result
                .map(|r| (0..4).filter(|i| used[*i]).map(|i| r.residual_px[i].norm_squared()).collect())
                .unwrap_or_default();
            let count = 2 * squares.len();
            MarkerRecord {
                id: m.id,
                carrier: parts.folder.kit.marker(m.id).map(|(k, _)| parts.folder.kit.carriers[k].name.clone()),
                corners_px: std::array::from_fn(|i| {
                    let shift = outward.as_ref().map_or_else(nalgebra::Vector2::zeros, |o| o[i] * offset);
                    (m.corners_px[i] - shift).into()
                }),
                residual_px: (count > 0).then(|| (squares.iter().sum::<f64>() / count as f64).sqrt()),
                residuals_px: result.map(|r| r.residual_px.map(Into::into)),
                used: count > 0,
                corners_used: used,
            }
        })
        .collect()
}
