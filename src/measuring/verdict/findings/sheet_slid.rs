//! A floor sheet lies elsewhere since the stand was moved, and was left out for it.

use super::something_moved::{LEAST_MM, names};
use super::{Case, Finding, Open, Rule, Touches};
use crate::marker::Role;
use crate::quantity::rounded;
use crate::verdict::Level;

pub(super) const RULE: Rule = Rule {
    codes: &["vehicle-moved-between-photos"],
    title: "A floor sheet slid while the stand was moved",
    rationale: "Who moves a stand steps on sheets. Photos from before and after the move are tied by sheets and plates: \
                if one has gone, nobody knows what else has.",
    method: "A sheet none of whose corners was used in the photos after a move: its slide in the floor (two \
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
    let moved = |j: &usize| case.after_move.get(*j).is_some_and(|n| *n > 0);
    let photos: Vec<usize> = (0..case.after_move.len()).filter(moved).collect();
    let one = |k: usize| {
        // Each photo alone first: a sheet may have been kicked at the last move only.
        let showing: Vec<usize> = photos.iter().copied().filter(|j| problem.photos[*j].shows(k)).collect();
        showing.iter().find_map(|j| {
            let slide = scene.slide(problem, k, &[*j])?;
            let kept = slide.rest_px <= REST_PX.max(REST_SHARE * slide.misfit_px);
            (kept && slide.corner_mm >= LEAST_MM).then_some((k, *j, slide))
        })
    };
    case.rig
        .with_role(Role::Floor)
        .filter_map(one)
        .map(|(k, j, slide)| {
            let name = &case.rig.carriers[k].name;
            let message = format!(
                "{name} lies elsewhere in {} than in the photos before the stand was moved, by about {} mm and {} deg: it was kicked, or the vehicle moved. Lay it down, chock the wheels and take two photos again, of all of it.",
                names(case, &[j]),
                rounded(slide.mm, 0),
                rounded(slide.degrees, 1)
            );
            let open = vec![Open::Apart { carriers: vec![k], photos: vec![j] }];
            Finding::new("vehicle-moved-between-photos", Level::Stop, message)
                .on_carrier(name)
                .in_photo(case.photos[j].file)
                .leaving(open)
        })
        .collect()
}
