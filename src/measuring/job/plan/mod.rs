//! What `verify` will state, before anyone takes a photo, and where to stand.

mod advice;
mod bay;
mod follow_up;
mod next;
mod noise;
mod plainly;
mod predict;
mod search;
mod setup_check;
mod sight;

use nalgebra::Point3;

use crate::marker::Role;
use crate::pose::Presumed;
use crate::record::{LeastPhotos, PlanBay, PlanBody, PlanRecord, PlannedFollowUp, PlannedStation, PredictedCheck};
use crate::setup::Check;
use crate::verdict::figure;
use crate::words::{Language, Phrase, phrase};

pub(super) use next::{Standing, next_station};
pub(super) use noise::ratio_by_photo;
pub(super) use plainly::developed_plainly;
pub use predict::Wanted;
use predict::{Predicted, Predictor, Shot, line_words, nearest_limit, room};
pub use search::Reach;
use search::{Found, MOST_PHOTOS, Search};
pub use setup_check::setup_check;

/// What is asked of a plan.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PlanOptions {
    /// So many photos; else the fewest that decide every check.
    pub photos: Option<usize>,
    /// Camera positions, vehicle frame, mm; else they are searched.
    pub from_mm: Vec<[f64; 3]>,
    /// Where a person can stand.
    pub reach: Reach,
    /// Corner noise of the phone's earlier photos in units of what is expected of plain ones
    /// ([`crate::record::PhotoRecord::noise_ratio`]); else what the camera's fit found counts.
    pub noise_ratio: Option<f64>,
    /// How far the hand turned while earlier photos' rows were read, in units of what the camera file states
    /// ([`crate::record::PhotoRecord::turn_ratio`]); else it is taken to be steady.
    pub turn_ratio: Option<f64>,
    /// Whether to say as well from where one photo is worth most after a move of the stand.
    pub after_move: bool,
}

/// Predicts the photos from given stations, or searches for stations.
pub fn plan(wanted: Wanted, options: &PlanOptions) -> PlanRecord {
    let noise = options.noise_ratio.unwrap_or_else(|| noise::ratio_by_fit(wanted.camera));
    let presumed = Presumed { turn_ratio: options.turn_ratio.unwrap_or(0.0), ..Presumed::default() };
    let predictor = Predictor::new(wanted, noise, presumed);
    let searched = options.from_mm.is_empty();
    let mut search = (searched || options.after_move).then(|| Search::new(&predictor, &options.reach));
    let found = match &mut search {
        Some(search) if searched => search.run(options.photos.unwrap_or(MOST_PHOTOS).max(2), options.photos.is_some()),
        _ => vec![given(&predictor, &options.from_mm)],
    };
    let places = search.as_ref().filter(|_| options.after_move).map(Search::middling).unwrap_or_default();
    let before = found.last().map(|f| f.shots.as_slice()).unwrap_or_default();
    let follow_up = follow_up::best(&predictor, before, &places).map(|f| PlannedFollowUp {
        station: station(&predictor, f.shot),
        predicted: wanted.setup.checks.iter().zip(&f.predicted).map(|(c, p)| check_record(&predictor, c, p)).collect(),
    });
    PlanRecord { follow_up, ..record(&predictor, &found, options) }
}

fn given(predictor: &Predictor, from_mm: &[[f64; 3]]) -> Found {
    let sight = predictor.sight();
    let eyes = from_mm.iter().map(|p| Point3::from(*p));
    let shots: Vec<Shot> = eyes
        .map(|eye| {
            let ahead = Point3::new(predictor.bay.sizes.nose, 0.0, 600.0);
            let blind = || predictor.shot(&sight, sight::Station { eye, look_at: ahead });
            predictor.best_shot(&sight, eye).unwrap_or_else(blind)
        })
        .collect();
    let predicted = predictor.predict(&shots.iter().collect::<Vec<_>>());
    Found { shots, predicted }
}

fn record(predictor: &Predictor, found: &[Found], options: &PlanOptions) -> PlanRecord {
    let setup = predictor.wanted.setup;
    let best = found.last();
    let shots = best.map(|f| f.shots.as_slice()).unwrap_or_default();
    let none =
        || setup.checks.iter().map(|_| Predicted { answer: None, can_decide: false, ratio: f64::INFINITY }).collect();
    let predicted = best.map_or_else(none, |f| f.predicted.clone());
    let searched = options.from_mm.is_empty();
    let advice = advice::advice(predictor, &predicted);
    PlanRecord {
        format: "plan/1".into(),
        setup: setup.name.clone(),
        source: setup.source.clone(),
        title: setup.title.clone(),
        kit: predictor.wanted.kit.name.clone(),
        camera: predictor.wanted.camera.name.clone(),
        steps: setup.steps.clone(),
        stations: shots.iter().map(|s| station(predictor, s)).collect(),
        noise_ratio: Some(predictor.noise),
        turn_ratio: options.turn_ratio,
        advice: advice.iter().map(|p| p.say(Language::English)).collect(),
        advice_phrases: advice,
        least_photos: if searched { least_photos(setup, found) } else { Vec::new() },
        predicted: setup.checks.iter().zip(&predicted).map(|(c, p)| check_record(predictor, c, p)).collect(),
        follow_up: None,
        bay: bay(predictor, &options.reach),
    }
}

fn station(predictor: &Predictor, shot: &Shot) -> PlannedStation {
    let names = predictor.sees(shot).into_iter().map(|k| predictor.steps.kit.carriers[k].name.clone());
    PlannedStation {
        position_mm: shot.station.eye.coords.into(),
        look_at_mm: shot.station.look_at.coords.into(),
        sees: names.collect(),
        markers: shot.views.iter().map(|v| v.views.len()).max().unwrap_or(0),
    }
}

fn check_record(predictor: &Predictor, check: &Check, p: &Predicted) -> PredictedCheck {
    let estimate = p.answer.as_ref().map(|a| a.estimate);
    let by_reading = check.is_decided_by_reading(predictor.wanted.kit);
    PredictedCheck {
        quantity: check.quantity.name().into(),
        from: check.from.as_ref().map(|f| f.name().to_owned()),
        target: check.target.clone(),
        step: check.step.clone(),
        reference_line: line_words(predictor.wanted.setup, check),
        unit: check.quantity.unit().symbol().into(),
        evidence: if by_reading { "reading" } else { "photos" }.into(),
        tolerance: nearest_limit(check).unwrap_or(0.0),
        standard_uncertainty: estimate.map(|e| e.standard_uncertainty),
        expanded_uncertainty: estimate.map(|e| e.expanded_uncertainty()),
        proven_within: estimate.and_then(|e| room(predictor.wanted.setup, check, &e)),
        can_decide: p.can_decide,
    }
}

/// Where a target is wanted, for the drawing.
fn target_words(at: &nalgebra::Vector3<f64>, sizes: &bay::Sizes) -> Phrase {
    let side = match at.y.round() as i64 {
        0 => "middle",
        1.. => "left",
        _ => "right",
    };
    let (ahead, aside, up) = (figure(at.x - sizes.nose, 0), figure(at.y.abs(), 0), figure(at.z, 0));
    phrase!("advice-plan-target", side = side, ahead = ahead, aside = aside, up = up)
}

/// The fewest photos for each check, as far as the search went.
fn least_photos(setup: &crate::setup::Setup, found: &[Found]) -> Vec<LeastPhotos> {
    let of = |i: usize| found.iter().find(|f| f.predicted[i].can_decide).map(|f| f.shots.len());
    let tried = found.last().map_or(0, |f| f.shots.len());
    let one = |(i, c): (usize, &Check)| LeastPhotos {
        quantity: c.quantity.name().into(),
        from: c.from.as_ref().map(|f| f.name().to_owned()),
        target: c.target.clone(),
        step: c.step.clone(),
        photos: of(i),
        tried,
    };
    setup.checks.iter().enumerate().map(one).collect()
}

/// What the drawing needs.
fn bay(predictor: &Predictor, reach: &Reach) -> PlanBay {
    let sizes = &predictor.bay.sizes;
    let kit = &predictor.steps.kit;
    let body = |k: usize| {
        let pose = predictor.bay.carriers[k]?;
        let corners = kit.carriers[k].markers.iter().flat_map(crate::marker::Marker::corners_mm);
        let half = corners.map(|c| c.y.abs()).fold(0.0f64, f64::max);
        let (o, x) = (pose.origin_mm(), pose.direction(&nalgebra::Vector3::x()));
        let label = (kit.carriers[k].role == Role::Target).then(|| target_words(&o, sizes));
        Some(PlanBody {
            name: kit.carriers[k].name.clone(),
            role: kit.carriers[k].role.name().into(),
            position_mm: o.into(),
            heading_deg: crate::geom::deg(x.y.atan2(x.x)),
            label: label.as_ref().map_or_else(String::new, |p| p.say(Language::English)),
            label_phrase: label,
            half_width_mm: if kit.carriers[k].role == Role::Target { half } else { 0.0 },
        })
    };
    PlanBay {
        width_mm: reach.width_mm,
        ahead_mm: reach.ahead_mm,
        posts_mm: reach.posts_mm.clone(),
        nose_mm: sizes.nose,
        tail_mm: -sizes.overhang,
        half_width_mm: sizes.half_width,
        wheelbase_mm: sizes.wheelbase,
        bodies: (0..kit.carriers.len()).filter_map(body).collect(),
    }
}
