//! All rules and what they find together.

use super::{
    Case, Finding, Rule, camera_mismatch, card, carrier_not_seen, compression_differs, credentials_lacking,
    floor_not_level, focal_contradicts, marker_displaced, marker_duplicated, markers_without_noise, noise_repeated,
    not_checked, other_day, other_kit, phases_differ, photo_badly_lit, photo_blurred, photo_edited,
    photo_light_changed, photo_rendered, photo_resized, photo_reused, photo_zoomed, photos_not_listed,
    photos_too_alike, plate_not_seated, plate_off_hub, plates_swapped, prerequisites, print_not_flat,
    print_scale_wrong, reading_disagrees, sheet_slid, something_moved, stand_misplaced, steering_not_straight,
    times_out_of_order, vehicle_sizes_disagree, weak_geometry, wrong_datum_suspected,
};
use crate::quantity::Quantity;
use crate::verdict::ladder::Level;

/// All rules.
pub const RULES: &[&Rule] = &[
    &stand_misplaced::RULE,
    &something_moved::RULE,
    &sheet_slid::RULE,
    &phases_differ::RULE,
    &plates_swapped::RULE,
    &plate_not_seated::RULE,
    &plate_off_hub::RULE,
    &vehicle_sizes_disagree::RULE,
    &print_scale_wrong::RULE,
    &print_not_flat::RULE,
    &marker_displaced::RULE,
    &camera_mismatch::RULE,
    &photo_zoomed::RULE,
    &photo_resized::RULE,
    &photo_reused::RULE,
    &photo_blurred::RULE,
    &photo_badly_lit::RULE,
    &photo_light_changed::RULE,
    &photos_too_alike::RULE,
    &floor_not_level::RULE,
    &carrier_not_seen::RULE,
    &steering_not_straight::RULE,
    &wrong_datum_suspected::RULE,
    &reading_disagrees::RULE,
    &marker_duplicated::RULE,
    &weak_geometry::RULE,
    &times_out_of_order::RULE,
    &other_day::RULE,
    &photo_edited::RULE,
    &photo_rendered::RULE,
    &noise_repeated::RULE,
    &markers_without_noise::RULE,
    &compression_differs::RULE,
    &focal_contradicts::RULE,
    &other_kit::RULE,
    &card::RULE,
    &prerequisites::RULE,
    &photos_not_listed::RULE,
    &credentials_lacking::RULE,
    &not_checked::RULE,
];

/// Runs all rules; the worst findings come first, else in the rules' order.
pub fn find(case: &Case) -> Vec<Finding> {
    let of_rule = |rule: &&Rule| {
        let touching = |f: Finding| Finding { touches: f.touches.or(Some(rule.touches)), ..f };
        (rule.find)(case).into_iter().map(touching).collect::<Vec<_>>()
    };
    let mut all: Vec<Finding> = Vec::new();
    for finding in RULES.iter().flat_map(of_rule) {
        // One reading typed twenty times is one finding.
        if !all.contains(&finding) {
            all.push(finding);
        }
    }
    if all.iter().any(marker_displaced::is_explained_by) {
        all.retain(|f| f.code != marker_displaced::CODE);
    }
    // Where the figures can't be trusted nobody guesses from them, and nobody is told to move by them.
    if all.iter().any(|f| f.level == Level::Void) {
        all.retain(|f| f.level <= Level::Stop || !BY_FIGURES.contains(&f.code));
    }
    // What spoils every figure may be why they contradict what was typed.
    if all.iter().any(|f| f.code != vehicle_sizes_disagree::CODE && f.spoils(Quantity::Height)) {
        all.retain(|f| f.code != vehicle_sizes_disagree::CODE);
    }
    if all.iter().any(Finding::spoils_any) {
        // A reading's own mistake is guessed from the photos, which no reading spoils.
        let readings = all.iter().filter(|f| f.spoils_any()).all(|f| f.code == reading_disagrees::RULE.name);
        let of_reading = |f: &Finding| readings && f.message.key == wrong_datum_suspected::OF_READING;
        all.retain(|f| f.level <= Level::Stop || f.code != GUESS || of_reading(f));
    }
    if all.iter().any(Finding::holds_moves) {
        all.retain(|f| f.level <= Level::Stop || !stand_misplaced::RULE.codes.contains(&f.code));
    }
    all.sort_by_key(|f| f.level);
    all
}

/// A guess at what a far-off figure could come from.
const GUESS: &str = "wrong-datum-suspected";

/// What follows from the figures alone, besides a misplaced stand.
const BY_FIGURES: [&str; 5] =
    [GUESS, "reading-disagrees", "weak-geometry", "steering-not-straight", "photos-too-alike"];

/// The stand's misplacements by checks that are outside.
pub(in crate::verdict) fn misplaced(case: &Case) -> Vec<Finding> {
    let touches = Some(stand_misplaced::RULE.touches);
    (stand_misplaced::RULE.find)(case).into_iter().map(|f| Finding { touches, ..f }).collect()
}
