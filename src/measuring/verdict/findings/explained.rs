//! Every code's words, and the rules that may give it.

use super::{
    Explanation, RULES, Rule, camera_mismatch, card, carrier_not_seen, compression_differs, credentials_lacking,
    floor_not_level, focal_contradicts, marker_displaced, marker_duplicated, markers_without_noise, noise_repeated,
    not_checked, other_day, other_kit, photo_badly_lit, photo_blurred, photo_edited, photo_light_changed,
    photo_rendered, photo_resized, photo_reused, photo_zoomed, photos_too_alike, plate_not_seated, plates_swapped,
    prerequisites, print_not_flat, print_scale_wrong, reading_disagrees, something_moved, stand_misplaced,
    steering_not_straight, times_out_of_order, vehicle_sizes_disagree, weak_geometry, wrong_datum_suspected,
};

/// Every finding's codes.
const ALL: &[&[Explanation]] = &[
    stand_misplaced::EXPLAIN,
    something_moved::EXPLAIN,
    plate_not_seated::EXPLAIN,
    vehicle_sizes_disagree::EXPLAIN,
    plates_swapped::EXPLAIN,
    print_scale_wrong::EXPLAIN,
    print_not_flat::EXPLAIN,
    marker_displaced::EXPLAIN,
    marker_duplicated::EXPLAIN,
    camera_mismatch::EXPLAIN,
    photo_zoomed::EXPLAIN,
    photo_resized::EXPLAIN,
    photo_blurred::EXPLAIN,
    photo_badly_lit::EXPLAIN,
    photo_light_changed::EXPLAIN,
    photo_reused::EXPLAIN,
    photos_too_alike::EXPLAIN,
    carrier_not_seen::EXPLAIN,
    floor_not_level::EXPLAIN,
    steering_not_straight::EXPLAIN,
    weak_geometry::EXPLAIN,
    wrong_datum_suspected::EXPLAIN,
    reading_disagrees::EXPLAIN,
    times_out_of_order::EXPLAIN,
    other_day::EXPLAIN,
    photo_edited::EXPLAIN,
    photo_rendered::EXPLAIN,
    noise_repeated::EXPLAIN,
    markers_without_noise::EXPLAIN,
    compression_differs::EXPLAIN,
    focal_contradicts::EXPLAIN,
    other_kit::EXPLAIN,
    card::EXPLAIN,
    prerequisites::EXPLAIN,
    credentials_lacking::EXPLAIN,
    not_checked::EXPLAIN,
];

/// All explanations, in the order of the reports.
pub fn explanations() -> impl Iterator<Item = &'static Explanation> {
    ALL.iter().flat_map(|of_one| of_one.iter())
}

/// The words for one code.
pub fn explanation(code: &str) -> Option<&'static Explanation> {
    explanations().find(|e| e.code == code)
}

impl Explanation {
    /// The rules that may give it, in their order.
    pub fn rules(&self) -> impl Iterator<Item = &'static Rule> {
        RULES.iter().copied().filter(|rule| rule.codes.contains(&self.code))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_code_of_a_rule_is_explained_once() {
        for rule in RULES {
            for code in rule.codes {
                let count = explanations().filter(|e| e.code == *code).count();
                assert_eq!(count, 1, "{code}");
            }
        }
        for e in explanations() {
            assert!(RULES.iter().any(|r| r.codes.contains(&e.code)), "{} has no rule", e.code);
        }
    }
}
