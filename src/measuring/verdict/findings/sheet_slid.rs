//! A floor sheet lies elsewhere since the stand was moved, and was left out for it.

use super::something_moved::LEAST_MM;
use super::{Case, Finding, Open, Rule, Touches};
use crate::marker::Role;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["vehicle-moved-between-photos"],
    title: "A floor sheet slid while the stand was moved",
    rationale: "Who moves a stand steps on sheets. Photos from before and after the move are tied by sheets and plates: \
                if one has gone, nobody knows what else has.",
    method: "A sheet none of whose corners was used in a photo, but in photos between other moves of the stand: its slide in the floor (two \
             coordinates, one turn) is fitted to them. It is a kick where a corner went farther than 2.5 mm and what is \
             left is below .2 px or a seventh of the misfit; a shadow or a boot does not keep the print's shape. Sheets \
             that were used are seen by the search for what moved between photos.",
    touches: Touches::Everything,
    find,
};

/// What a slide leaves of the corners' misfit: noise, or this share of it.
const REST_PX: f64 = 0.2;
const REST_SHARE: f64 = 1.0 / 7.0;

fn find(case: &Case) -> Vec<Finding> {
    let (Some(scene), Some(problem)) = (case.scene, case.problem) else { return Vec::new() };
    if case.after_move.is_empty() {
        return Vec::new();
    }
    let one = |k: usize| {
        let used = |j: usize| {
            let Some(solved) = &scene.photos[j] else { return false };
            let mut views = problem.photos[j].views.iter().zip(&solved.views);
            views.any(|(view, s)| view.carrier == k && s.used.contains(&true))
        };
        let showing: Vec<usize> = (0..case.after_move.len()).filter(|j| problem.photos[*j].shows(k)).collect();
        // Where most photos show it is taken for its place: it may be that of after the kick, or of before.
        let elsewhere = |j: usize| showing.iter().any(|i| case.after_move[*i] != case.after_move[j] && used(*i));
        showing.iter().copied().filter(|j| elsewhere(*j)).find_map(|j| {
            let slide = scene.slide(problem, k, &[j])?;
            let kept = slide.rest_px <= REST_PX.max(REST_SHARE * slide.misfit_px);
            (kept && slide.corner_mm >= LEAST_MM).then_some((k, j, slide))
        })
    };
    case.kit
        .with_role(Role::Floor)
        .filter_map(one)
        .map(|(k, j, slide)| {
            let name = &case.kit.carriers[k].name;
            let message = phrase!(
                "findings-sheet-slid",
                body = case.body_first(k),
                photo = case.photos[j].file,
                mm = figure(slide.mm, 0),
                degrees = figure(slide.degrees, 1)
            );
            let open = vec![Open::Apart { carriers: vec![k], photos: vec![j] }];
            Finding::new("vehicle-moved-between-photos", Level::Stop, message)
                .on_carrier(name)
                .in_photo(case.photos[j].file)
                .leaving(open)
        })
        .collect()
}
