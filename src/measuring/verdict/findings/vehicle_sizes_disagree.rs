//! Sizes of the vehicle that were typed are others than the photos show.
//!
//! A plate that sits off its hub by the same in all photos, or a nose mark ahead of the nose, is no misfit of the photos:
//! only what is known of the vehicle contradicts it.

use super::plate_not_seated::OF_TARGET_AND_FLOOR;
use super::plate_off_hub::{front_track, may_differ_mm};
use super::{Case, Explanation, Finding, Rule, Touches, plates_swapped};
use crate::marker::Role;
use crate::num::ONE_SIDED_95;
use crate::quantity::Quantity;
use crate::setup::ReferenceLine;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::{Figure, phrase};

pub(super) const CODE: &str = "vehicle-sizes-disagree";

pub(super) const RULE: Rule = Rule { name: CODE, codes: &[CODE], touches: Touches::AllBut(OF_TARGET_AND_FLOOR), find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of(CODE, Level::Stop)];

/// Four standard uncertainties of both together: chance below 1e-4.
const SIGMAS: f64 = 4.0;
/// By so much vehicles of one kind differ, and a vehicle's own two sides, mm (common practice, no source).
const LEAST_MM: f64 = 5.0;
/// Of the size itself: by more than that it is typed wrong rather than seated wrong (common practice, no source).
const SLIP: f64 = 0.1;

/// Of what lies ahead or behind, nothing hangs on it: target against sheets, and what is across the centreline.
const ACROSS: &[Quantity] =
    &[Quantity::Height, Quantity::Pitch, Quantity::Roll, Quantity::Yaw, Quantity::LateralOffset];
/// Where the nose mark's own height may be another, its distance below the aim point is too.
const OF_FLOOR: &[Quantity] = &[Quantity::Height, Quantity::Pitch, Quantity::Roll];

/// A size as typed and as the photos show it, mm.
struct Compared {
    size: &'static str,
    typed: f64,
    measured: f64,
    /// Of their difference.
    u: f64,
}

impl Compared {
    /// From here on they contradict each other.
    fn threshold(&self) -> f64 {
        (SIGMAS * self.u).max(LEAST_MM)
    }

    /// No plate sits so far off its hub: a key was hit twice or not at all, or it was typed in metres or inches.
    fn is_a_slip(&self) -> bool {
        (self.measured - self.typed).abs() > SLIP * self.measured
    }

    /// The size that is found with probability .95.
    fn detectable(&self) -> f64 {
        self.threshold() + ONE_SIDED_95 * self.u
    }
}

fn find(case: &Case) -> Vec<Finding> {
    let contradicted: Vec<Compared> =
        compared(case).into_iter().filter(|c| (c.measured - c.typed).abs() > c.threshold()).collect();
    // Plates on the wrong wheels are another finding's.
    if contradicted.is_empty() || !(plates_swapped::RULE.find)(case).is_empty() {
        return Vec::new();
    }
    contradicted.iter().map(|c| finding(case, c)).collect()
}

fn finding(case: &Case, c: &Compared) -> Finding {
    // As typed: 2.64 and not 3.
    let (measured, typed) = (figure(c.measured, 0), Figure::plain(c.typed));
    let message = match c.is_a_slip() {
        true => phrase!("findings-size-mistyped", size = c.size, measured = measured, typed = typed),
        false => phrase!("findings-size-disagrees", size = c.size, measured = measured, typed = typed),
    };
    // Which of them is wrong nothing tells, and so not what the figures would be.
    let finding = Finding::new(CODE, Level::Stop, message);
    match c.size {
        "nose" => {
            let name = nose(case).map_or("", |k| case.kit.carriers[k].name.as_str());
            finding.on_carrier(name).touching(Touches::AllBut(if across_stays(case) { ACROSS } else { OF_FLOOR }))
        }
        "wheelbase" if across_stays(case) => finding.touching(Touches::AllBut(ACROSS)),
        _ => finding,
    }
}

/// Whether all is measured against the line through both axles' middles, which nothing that lies farther ahead or
/// behind turns.
fn across_stays(case: &Case) -> bool {
    let centreline = |line| line == ReferenceLine::Centreline;
    let lines = case.checks.iter().map(|c| c.line).chain([case.line]);
    lines.into_iter().all(centreline) && case.measured(Quantity::Wheelbase).is_some()
}

/// Every size that was typed and is seen.
fn compared(case: &Case) -> Vec<Compared> {
    let typed = &case.job.vehicle;
    let of = |quantity| case.measured(quantity).map(|e| (e.value, e.standard_uncertainty));
    let all = [
        ("wheelbase", typed.wheelbase_mm, typed.u_wheelbase_mm, of(Quantity::Wheelbase)),
        ("nose", typed.nose_from_rear_axle_mm, typed.u_nose_from_rear_axle_mm, nose_from_rear_axle(case)),
        ("rear_track", typed.rear_track_mm, typed.u_rear_track_mm, of(Quantity::RearTrack)),
        ("front_track", typed.front_track_mm, typed.u_front_track_mm, front_track(case)),
    ];
    let one = |(size, typed, u_typed, seen): (&'static str, Option<f64>, f64, Option<(f64, f64)>)| {
        let (typed, (measured, u)) = (typed?, seen?);
        Some(Compared { size, typed, measured, u: u.hypot(u_typed) })
    };
    all.into_iter().filter_map(one).collect()
}

/// The nose mark that is measured from.
fn nose(case: &Case) -> Option<usize> {
    let measurement = case.measurement?;
    case.kit.with_role(Role::Nose).find(|k| measurement.carriers[*k].is_some())
}

/// How far it sits ahead of the rear axle, and its standard uncertainty, mm.
fn nose_from_rear_axle(case: &Case) -> Option<(f64, f64)> {
    let pose = case.measurement?.carriers[nose(case)?].as_ref()?;
    Some((pose.vehicle_from_carrier.origin_mm().x, pose.u_position_mm[0]))
}

/// What a plate must be off its hub by, in all photos alike, to be found with probability .95; `None` where nothing that
/// is typed would contradict it.
pub(super) fn plate_off_hub_mm(case: &Case) -> Option<f64> {
    let all = compared(case);
    let of = |size: &str| all.iter().find(|c| c.size == size).map(Compared::detectable);
    // One plate of an axle takes its middle along by half.
    let ahead = 2.0 * of("wheelbase")?;
    let aside = of("rear_track").zip(of("front_track")).map(|(rear, front)| rear.max(front));
    Some(ahead.max(aside.or_else(|| may_differ_mm(case))?))
}

/// The nose mark that is seen, and what it must be off by to be found with probability .95; `None` where nothing is typed.
pub(super) fn nose_off_mm<'a>(case: &Case<'a>) -> Option<(&'a str, Option<f64>)> {
    let name = case.kit.carriers[nose(case)?].name.as_str();
    Some((name, compared(case).iter().find(|c| c.size == "nose").map(Compared::detectable)))
}
