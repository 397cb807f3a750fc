//! The conditions in which stated uncertainty must hold.

use baywitness::marker::USUAL_U_TURN_DEG;
use baywitness::setup::ReferenceLine;

use crate::sampled_bay::Bay;

pub(crate) struct Condition {
    pub(crate) name: &'static str,
    pub(crate) bay: fn() -> Bay,
    pub(crate) line: ReferenceLine,
}

const fn condition(name: &'static str, line: ReferenceLine, bay: fn() -> Bay) -> Condition {
    Condition { name, bay, line }
}

use ReferenceLine::{Centreline, RearAxleNormal, ThrustLine};

/// What is not named is as in [`Bay::default`]: two photos, plates on four
/// wheels, floor sheets, a Brown-Conrady lens.
pub(crate) const CONDITIONS: [Condition; 32] = [
    condition("two photos, four plates", Centreline, Bay::default),
    condition("four photos, four plates", Centreline, || Bay { four_photos: true, ..Bay::default() }),
    condition("two photos, two plates", RearAxleNormal, || Bay { front_plates: false, ..Bay::default() }),
    condition("two photos, two plates, thrust line", ThrustLine, || Bay { front_plates: false, ..Bay::default() }),
    condition("four photos, two plates, thrust line", ThrustLine, || Bay {
        front_plates: false,
        four_photos: true,
        ..Bay::default()
    }),
    condition("two photos, four plates, no sheets", Centreline, || Bay { floor_sheets: false, ..Bay::default() }),
    condition("two photos, two plates, no sheets", RearAxleNormal, || Bay {
        floor_sheets: false,
        front_plates: false,
        ..Bay::default()
    }),
    condition("four photos, four plates, no sheets", Centreline, || Bay {
        floor_sheets: false,
        four_photos: true,
        ..Bay::default()
    }),
    condition("Kannala-Brandt, two photos", Centreline, || Bay { kannala_brandt: true, ..Bay::default() }),
    condition("Kannala-Brandt, four photos, two plates", RearAxleNormal, || Bay {
        kannala_brandt: true,
        four_photos: true,
        front_plates: false,
        ..Bay::default()
    }),
    condition("layout 0.5 mm", Centreline, || Bay { u_layout_mm: 0.5, ..Bay::default() }),
    condition("sheets askew by 0.03 deg, nothing stated", Centreline, || Bay {
        u_turn_deg: USUAL_U_TURN_DEG,
        turn_deg: 0.03,
        ..Bay::default()
    }),
    condition("sheets askew by 0.1 deg, as stated", Centreline, || Bay {
        u_turn_deg: 0.1,
        turn_deg: 0.1,
        four_photos: true,
        ..Bay::default()
    }),
    condition("sheets askew by 0.3 deg, as stated", Centreline, || Bay {
        u_turn_deg: 0.3,
        turn_deg: 0.3,
        ..Bay::default()
    }),
    condition("a still hand", Centreline, || Bay { tremor_deg_per_s: Some(0.0), ..Bay::default() }),
    condition("a still hand, four photos", Centreline, || Bay {
        tremor_deg_per_s: Some(0.0),
        four_photos: true,
        ..Bay::default()
    }),
    condition("the hand turns by 0.25 deg/s", Centreline, || Bay { tremor_deg_per_s: Some(0.25), ..Bay::default() }),
    condition("the hand turns by 0.5 deg/s", Centreline, || Bay { tremor_deg_per_s: Some(0.5), ..Bay::default() }),
    condition("the hand turns by 1 deg/s, four photos", Centreline, || Bay {
        tremor_deg_per_s: Some(1.0),
        four_photos: true,
        ..Bay::default()
    }),
    condition("the hand turns by 3 deg/s", Centreline, || Bay { tremor_deg_per_s: Some(3.0), ..Bay::default() }),
    condition("the hand turns by 3 deg/s, four photos, two plates", ThrustLine, || Bay {
        tremor_deg_per_s: Some(3.0),
        four_photos: true,
        front_plates: false,
        ..Bay::default()
    }),
    condition("paper wider than high by 0.2 %", Centreline, || Bay { u_aspect: 2e-3, ..Bay::default() }),
    condition("scale 0.2 %", Centreline, || Bay { u_scale: 2e-3, ..Bay::default() }),
    condition("seating 0.5 mm, 0.1 deg", Centreline, || Bay {
        u_seating_mm: 0.5,
        u_seating_deg: 0.1,
        ..Bay::default()
    }),
    condition("seating, two plates, thrust line", ThrustLine, || Bay {
        u_seating_mm: 0.5,
        u_seating_deg: 0.1,
        front_plates: false,
        ..Bay::default()
    }),
    condition("focal 1 %, centre 15 px in each photo", Centreline, || Bay {
        u_focal: 0.01,
        u_centre_px: 15.0,
        ..Bay::default()
    }),
    condition("edge offset off by its own 0.1 px", Centreline, || Bay {
        u_edge_px: 0.1,
        u_edge_by_size_px: 0.02,
        edge_off_by_sigma: true,
        ..Bay::default()
    }),
    condition("one corner wrong by 1 to 2 px", Centreline, || Bay { wrong_corner: true, ..Bay::default() }),
    condition("blotchy prints, two photos", Centreline, || Bay { print_noise_mm: 0.05, ..Bay::default() }),
    condition("blotchy prints, four photos", Centreline, || Bay {
        print_noise_mm: 0.05,
        four_photos: true,
        ..Bay::default()
    }),
    condition("two markers on each carrier", Centreline, || Bay { most_markers: 2, ..Bay::default() }),
    // The variance is estimated from what few corners are left over: Student.
    condition("two plates, two markers each, noise twice the stated", RearAxleNormal, || Bay {
        most_markers: 2,
        front_plates: false,
        floor_sheets: false,
        noise_over_stated: 2.0,
        ..Bay::default()
    }),
];
