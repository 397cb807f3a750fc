//! From photos to a surveyed kit: the order of the work.

use nalgebra::{DMatrix, Vector3};

use super::advice::advice;
use super::apart::{Cluster, Shot, adjust_apart};
use super::datum::attach;
use super::halves;
use super::length::{Length, LengthCheck, apply};
use super::look::camera_of;
use super::shape::{Placed, joint_shape};
use super::surveyed::{CarrierSurvey, LeftOut, MarkerSurvey, Options, PhotoSurvey, Survey};
use super::{Error, SurveyPhoto};
use crate::camera::Profile;
use crate::geom::deg;
use crate::marker::{Kit, Layout, MOST_U_CENTRE_MM, MOST_U_TURN_DEG};
use crate::pose::BODY;
use crate::shown::further;
use crate::words::phrase;

/// Surveys a kit.
///
/// # Errors
/// A photo without camera, a length that can't be used, photos that show no
/// two markers of a carrier.
pub fn survey(kit: &Kit, cameras: &[Profile], photos: &[SurveyPhoto], options: &Options) -> Result<Survey, Error> {
    let used = used_cameras(cameras, photos, options)?;
    let shots: Vec<Shot> =
        photos.iter().zip(&used.of_photo).map(|(photo, camera)| Shot { photo, camera: *camera }).collect();
    let mut left_out = Vec::new();
    let ids = visible(kit, photos, &mut left_out);
    let (clusters, lengths) = clusters(kit, &ids, &used.cameras, &shots, options, &mut left_out)?;
    let placed = place(kit, &clusters, &mut left_out);
    if placed.is_empty() {
        let of = |l: &LeftOut| phrase!("fit-of", what = l.what.clone(), why = l.why.clone());
        let none = phrase!("fit-no-pair", photos = photos.len());
        return Err(Error::NotMeasured(further(none, left_out.iter().map(of).collect())));
    }
    let half = halves::compare(kit, &used.cameras, &shots, options, &clusters, &placed);
    let enlarge = half.as_ref().filter(|h| !h.agree()).map_or(1.0, |h| h.ratio);
    let joint = joint_shape(&clusters, &placed) * enlarge;
    let [u_found_mm, u_found_rad] = found_spread(kit, &placed, &joint);
    let full = with_frames(kit, &placed, &joint, u_found_mm, u_found_rad);
    let mut result = Survey {
        carriers: told(kit, &clusters, &placed, &joint, &full, photos),
        print_scale: print_scale(&clusters, &placed, &joint),
        kit: surveyed_kit(kit, &clusters, &placed, full),
        left_out,
        measured_scale: clusters.iter().any(|c| c.free_scale),
        lengths,
        u_stated_scale: kit.u_scale_relative,
        u_found_mm,
        photos: photo_surveys(photos, &clusters),
        noise_factor: clusters[0].variance.sqrt(),
        degrees_of_freedom: clusters.iter().map(|c| c.degrees_of_freedom).sum(),
        halves: half,
        advice: Vec::new(),
    };
    result.advice = advice(&result);
    Ok(result)
}

struct Used<'a> {
    cameras: Vec<&'a Profile>,
    of_photo: Vec<usize>,
}

fn used_cameras<'a>(cameras: &'a [Profile], photos: &[SurveyPhoto], options: &Options) -> Result<Used<'a>, Error> {
    let mut used = Used { cameras: Vec::new(), of_photo: Vec::new() };
    for photo in photos {
        let camera = camera_of(photo, options.camera_named, cameras)?;
        let at = used.cameras.iter().position(|c| std::ptr::eq(*c, camera)).unwrap_or_else(|| {
            used.cameras.push(camera);
            used.cameras.len() - 1
        });
        used.of_photo.push(at);
    }
    Ok(used)
}

/// Markers that at least two photos show; the others with the reason.
fn visible(kit: &Kit, photos: &[SurveyPhoto], left_out: &mut Vec<LeftOut>) -> Vec<u32> {
    let mut ids = Vec::new();
    for carrier in &kit.carriers {
        let with = |least: usize, most: usize| {
            let seen = carrier.markers.iter().map(|m| m.id);
            seen.filter(|id| (least..=most).contains(&seen_in(photos, *id))).collect::<Vec<u32>>()
        };
        ids.extend(with(2, usize::MAX));
        for (count, seen) in [(0, "none"), (1, "one")] {
            let names: Vec<String> = with(count, count).iter().map(u32::to_string).collect();
            if !names.is_empty() {
                left_out.push(LeftOut {
                    what: phrase!("fit-survey-markers-on", markers = names.join(", "), carrier = &carrier.name),
                    why: phrase!("fit-survey-unseen", seen = seen),
                });
            }
        }
    }
    ids
}

fn seen_in(photos: &[SurveyPhoto], id: u32) -> usize {
    photos.iter().filter(|p| p.sightings.markers.iter().filter(|m| m.id == id).count() == 1).count()
}

/// Adjusts what hangs together, group after group, with the lengths of each.
fn clusters(
    kit: &Kit,
    ids: &[u32],
    cameras: &[&Profile],
    shots: &[Shot],
    options: &Options,
    left_out: &mut Vec<LeftOut>,
) -> Result<(Vec<Cluster>, Vec<LengthCheck>), Error> {
    let mut waiting: Vec<Vec<u32>> = vec![ids.to_vec()];
    if options.apart {
        let of = |c: &crate::marker::Carrier| c.markers.iter().map(|m| m.id).filter(|id| ids.contains(id)).collect();
        waiting = kit.carriers.iter().map(of).collect();
    }
    let mut clusters = Vec::new();
    let mut checks = Vec::new();
    while let Some(group) = waiting.pop() {
        if group.len() < 2 {
            continue;
        }
        let inside: Vec<Length> = options.lengths.iter().filter(|l| l.within(&group)).cloned().collect();
        let mut cluster = adjust_apart(kit, &group, cameras, shots, !inside.is_empty(), None)?;
        let of_cluster: Vec<Length> = inside.iter().filter(|l| l.within(&cluster.ids)).cloned().collect();
        if of_cluster.is_empty() && cluster.free_scale {
            cluster = adjust_apart(kit, &group, cameras, shots, false, None)?;
        }
        checks.extend(apply(kit, &mut cluster, &of_cluster)?);
        for id in &cluster.ambiguous {
            left_out.push(LeftOut {
                what: phrase!("fit-survey-marker", marker = id.to_string()),
                why: phrase!("fit-survey-ambiguous"),
            });
        }
        let done = |id: &u32| cluster.ids.contains(id) || cluster.ambiguous.contains(id);
        let rest: Vec<u32> = group.iter().copied().filter(|id| !done(id)).collect();
        if rest.len() < group.len() {
            waiting.push(rest);
        }
        clusters.push(cluster);
    }
    if let Some(unused) = options.lengths.iter().find(|l| !checks.iter().any(|c| c.length == **l)) {
        let why = phrase!("fit-no-length-unseen");
        return Err(Error::Length { length: unused.to_string(), why });
    }
    Ok((clusters, checks))
}

fn place(kit: &Kit, clusters: &[Cluster], left_out: &mut Vec<LeftOut>) -> Vec<Placed> {
    let mut placed = Vec::new();
    for (k, carrier) in kit.carriers.iter().enumerate() {
        let inside = |c: &Cluster| carrier.markers.iter().filter(|m| c.index(m.id).is_some()).count();
        let Some(cluster) = (0..clusters.len()).max_by_key(|c| inside(&clusters[*c])) else { continue };
        if let Some(attached) = attach(carrier, &clusters[cluster]) {
            placed.push(Placed { carrier: k, cluster, attached });
        } else {
            let why =
                if carrier.markers.len() == 1 { phrase!("fit-survey-one-marker") } else { phrase!("fit-survey-apart") };
            left_out.push(LeftOut { what: phrase!("fit-survey-holder", name = &carrier.name), why });
        }
    }
    placed
}

/// How far the kit file's places were off, 1 sigma, the survey's own noise
/// taken out: centres per coordinate, mm, and rotations, rad. With few markers
/// not below what the file states.
fn found_spread(kit: &Kit, placed: &[Placed], shape: &DMatrix<f64>) -> [f64; 2] {
    const FEW: f64 = 12.0;
    /// Nobody glues better than this, mm and rad.
    const LEAST: [f64; 2] = [0.02, 2e-4];
    let (mut squares, mut count, mut frames, mut at) = ([0.0; 2], 0.0, 0.0, 0);
    for p in placed {
        for moved in &p.attached.moved {
            for part in 0..2 {
                let noise: f64 = (3 * part..3 * part + 3).map(|i| shape[(at + i, at + i)]).sum();
                squares[part] += moved[part].norm_squared() - noise;
            }
            count += 3.0;
            at += BODY;
        }
        frames += 6.0;
    }
    let degrees: f64 = f64::max(count - frames, 1.0);
    let centre = (squares[0].max(0.0) / degrees).sqrt().max(LEAST[0]);
    let centre = if degrees < FEW { centre.max(kit.u_layout_mm) } else { centre };
    [centre, (squares[1].max(0.0) / f64::max(count, 1.0)).sqrt().max(LEAST[1])]
}

fn with_frames(kit: &Kit, placed: &[Placed], shape: &DMatrix<f64>, u_mm: f64, u_rad: f64) -> DMatrix<f64> {
    let mut full = shape.clone();
    let mut at = 0;
    for p in placed {
        let frame = p.attached.of_frame(&kit.carriers[p.carrier], kit.layout.as_ref(), u_mm, u_rad);
        let n = frame.nrows();
        let mut own = full.view_mut((at, at), (n, n));
        own += frame;
        at += n;
    }
    full
}

/// Mean relative size of all placed markers and its standard uncertainty.
fn print_scale(clusters: &[Cluster], placed: &[Placed], joint: &DMatrix<f64>) -> [f64; 2] {
    let sizes: Vec<usize> = (0..joint.nrows() / BODY).map(|k| BODY * k + BODY - 1).collect();
    let n = sizes.len().max(1) as f64;
    let variance: f64 = sizes.iter().flat_map(|i| sizes.iter().map(|j| joint[(*i, *j)])).sum::<f64>() / (n * n);
    let all = placed.iter().flat_map(|p| stretches(clusters, p));
    [all.sum::<f64>() / n, variance.max(0.0).sqrt()]
}

/// The relative sizes of a placed carrier's markers.
fn stretches(clusters: &[Cluster], p: &Placed) -> Vec<f64> {
    let cluster = &clusters[p.cluster];
    let size_of = |row: usize| p.attached.to_places.row(BODY * row + BODY - 1);
    (0..p.attached.markers.len())
        .map(|k| {
            let row = size_of(k);
            (0..cluster.ids.len()).map(|at| row[BODY * at + BODY - 1] * cluster.stretch[at]).sum()
        })
        .collect()
}

fn told(
    kit: &Kit,
    clusters: &[Cluster],
    placed: &[Placed],
    shape: &DMatrix<f64>,
    full: &DMatrix<f64>,
    photos: &[SurveyPhoto],
) -> Vec<CarrierSurvey> {
    let mut at = 0;
    let mut all = Vec::new();
    for p in placed {
        let carrier = &kit.carriers[p.carrier];
        let stretch = stretches(clusters, p);
        let u_stated_mm = p.attached.u_stated_mm(carrier, kit.layout.as_ref(), kit.u_layout_mm);
        let mut markers = Vec::new();
        for (k, m) in p.attached.markers.iter().enumerate() {
            let sigma = |c: &DMatrix<f64>, i: usize| c[(at + i, at + i)].max(0.0).sqrt();
            let three = |c: &DMatrix<f64>, i: usize| Vector3::from_fn(|axis, _| sigma(c, i + axis));
            let marker = &carrier.markers[*m];
            markers.push(MarkerSurvey {
                id: marker.id,
                photos: seen_in(photos, marker.id),
                stated_mm: marker.centre_mm,
                moved_mm: p.attached.moved[k][0],
                u_shape_mm: three(shape, 0),
                u_stated_mm: u_stated_mm[k],
                u_centre_mm: three(full, 0),
                turned_rad: p.attached.moved[k][1],
                u_turned_rad: three(full, 3),
                stretch: [stretch[k], sigma(full, 6)],
            });
            at += BODY;
        }
        all.push(CarrierSurvey { name: carrier.name.clone(), carrier: p.carrier, markers });
    }
    all
}

/// The kit with everything in its place; what was not surveyed gets the mean print scale.
fn surveyed_kit(kit: &Kit, clusters: &[Cluster], placed: &[Placed], full: DMatrix<f64>) -> Kit {
    let mut next = kit.clone();
    let [scale, u_scale] = print_scale(clusters, placed, &full);
    let known: Vec<u32> =
        placed.iter().flat_map(|p| p.attached.markers.iter().map(|m| kit.carriers[p.carrier].markers[*m].id)).collect();
    for marker in next.carriers.iter_mut().flat_map(|c| &mut c.markers).filter(|m| !known.contains(&m.id)) {
        marker.size_mm = marker.size_mm.map(|s| s * (1.0 + scale));
    }
    let mut at = 0;
    for p in placed {
        let stretch = stretches(clusters, p);
        for (k, m) in p.attached.markers.iter().enumerate() {
            let marker = &mut next.carriers[p.carrier].markers[*m];
            let place = &p.attached.carrier_from_marker[k];
            marker.centre_mm = place.origin_mm();
            marker.right = place.direction(&Vector3::x());
            marker.up = place.direction(&Vector3::y());
            marker.size_mm = marker.size_mm.map(|s| s * (1.0 + stretch[k]));
            let sigma = |i: usize| full[(at + i, at + i)].max(0.0).sqrt();
            // The layout holds the full figures; a kit file states no more than this.
            marker.u_centre_mm = Some([0, 1, 2].map(|i| sigma(i).min(MOST_U_CENTRE_MM)));
            marker.u_turn_deg = Some([3, 4, 5].map(|i| deg(sigma(i)).min(MOST_U_TURN_DEG)));
            marker.u_size_mm = Some(sigma(6) * marker.size_mm[0]);
            at += BODY;
        }
    }
    next.u_scale_relative = u_scale;
    let n = known.len();
    let row = |i: usize| BODY * (i / 6) + i % 6;
    let covariance = DMatrix::from_fn(6 * n, 6 * n, |i, j| full[(row(i), row(j))]);
    next.layout = Some(Layout { ids: known, covariance, with_sizes: Some(full) });
    next
}

fn photo_surveys(photos: &[SurveyPhoto], clusters: &[Cluster]) -> Vec<PhotoSurvey> {
    let one = |(j, photo): (usize, &SurveyPhoto)| {
        let solved: Vec<_> = clusters.iter().filter_map(|c| c.photos[j].as_ref()).collect();
        let markers = solved.iter().map(|s| s.views.len()).sum::<usize>();
        let squares: f64 = solved.iter().map(|s| s.rms_px * s.rms_px * s.views.len() as f64).sum();
        let rms_px = (markers > 0).then(|| (squares / markers as f64).sqrt());
        PhotoSurvey { file: photo.file.clone(), markers, rms_px }
    };
    photos.iter().enumerate().map(one).collect()
}
