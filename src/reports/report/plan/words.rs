//! The plan in words.

use crate::quantity::{Quantity, rounded};
use crate::record::{LeastPhotos, PlanRecord, PlannedStation, PredictedCheck};

/// The plan for the terminal.
pub fn plan_text(plan: &PlanRecord) -> String {
    let mut text = format!("{}\nKit {}, camera {}\n\n", plan.title, plan.kit, plan.camera);
    if plan.stations.is_empty() {
        text.push_str("No place in this bay shows enough markers. See what to change below.\n");
    } else {
        let each = if plan.steps.len() > 1 {
            format!(", from each in every step ({})", plan.steps.join(", "))
        } else {
            String::new()
        };
        text.push_str(&format!("{} photos{each}:\n", plan.stations.len()));
        for (i, s) in plan.stations.iter().enumerate() {
            text.push_str(&format!("  {}. {}\n     shows {}\n", i + 1, place(plan, s), s.sees.join(", ")));
        }
    }
    text.push_str("\nWhat they will be worth (95 %):\n");
    if let Some(noise) = noise(plan) {
        text.push_str(&format!("  ({noise})\n"));
    }
    for (i, p) in plan.predicted.iter().enumerate() {
        text.push_str(&format!("  {:<34} {}", name(p), worth(p)));
        if let Some(least) = plan.least_photos.get(i) {
            text.push_str(&format!("; {}", least_words(p, least)));
        }
        text.push('\n');
    }
    if let Some(follow) = &plan.follow_up {
        text.push_str(&format!(
            "\nAfter each move of the stand one photo:\n  {}\n     shows {}\n",
            place(plan, &follow.station),
            follow.station.sees.join(", ")
        ));
        for p in &follow.predicted {
            text.push_str(&format!("  {:<34} {}\n", name(p), worth(p)));
        }
        text.push_str("  It measures; what is within after the last move takes as many photos as the sheet says.\n");
    }
    if !plan.advice.is_empty() {
        text.push_str("\nWhat to change:\n");
        for a in &plan.advice {
            text.push_str(&format!("  - {a}\n"));
        }
    }
    text
}

/// What corner noise is counted on, where it is not that of a plainly developed photo.
pub(super) fn noise(plan: &PlanRecord) -> Option<String> {
    let ratio = plan.noise_ratio.filter(|r| *r > 1.05)?;
    Some(format!(
        "corners {} times as noisy as in plainly developed photos, as this phone's own photos show",
        rounded(ratio, 1)
    ))
}

/// Where to stand, as somebody with a tape needs it.
pub(super) fn place(plan: &PlanRecord, station: &PlannedStation) -> String {
    let [x, y, z] = station.position_mm;
    let ahead = x - plan.bay.nose_mm;
    let along = if ahead >= 0.0 {
        format!("{} m in front of the nose", metres(ahead))
    } else {
        format!("{} m behind the nose", metres(-ahead))
    };
    let across = if y.abs() < 50.0 {
        "on the centreline".to_owned()
    } else {
        format!("{} m to the vehicle's {}", metres(y.abs()), if y > 0.0 { "left" } else { "right" })
    };
    format!("{along}, {across}, camera {} m high, {}", metres(z), towards(plan, station))
}

/// The carrier that the picture's middle is nearest to.
fn towards(plan: &PlanRecord, station: &PlannedStation) -> String {
    let [ex, ey, _] = station.position_mm;
    let [lx, ly, _] = station.look_at_mm;
    let (dx, dy) = (lx - ex, ly - ey);
    let length = dx.hypot(dy).max(1.0);
    // Where the line of sight is nearest to the vehicle's middle line at the front axle's place.
    let t = (plan.bay.wheelbase_mm - ex) / dx;
    if dx < -1.0 && t.is_finite() {
        let y = ey + t * dy;
        let side = match y.round() as i64 {
            -250..=250 => "the middle of the front axle".to_owned(),
            251..=1100 => "the left front wheel".to_owned(),
            -1100..=-251 => "the right front wheel".to_owned(),
            y => format!(
                "a point {} m to the {} of the front axle",
                metres(y.abs() as f64),
                if y > 0 { "left" } else { "right" }
            ),
        };
        return format!("looking at {side}");
    }
    let direction = crate::geom::deg((dy / length).atan2(dx / length));
    format!("looking {} deg off the driving direction", rounded(direction, 0))
}

/// Name of a check for people.
pub(super) fn name(p: &PredictedCheck) -> String {
    let mut words = Quantity::from_name(&p.quantity).map_or(p.quantity.clone(), |q| q.trade_name().to_owned());
    if let Some(from) = &p.from {
        words.push_str(&format!(" from the {}", from.replace('_', " ")));
    }
    for (what, value) in [("", &p.target), ("step ", &p.step)] {
        if let Some(value) = value {
            words.push_str(&format!(", {what}{value}"));
        }
    }
    words
}

/// What the photos will be worth for a check.
pub(super) fn worth(p: &PredictedCheck) -> String {
    if p.evidence == "reading" {
        return "decided by a reading, not by photos".into();
    }
    let Some(u) = p.expanded_uncertainty else { return "NOT DETERMINED by these photos".into() };
    let d = digits(u);
    let tolerance = rounded(p.tolerance, digits(p.tolerance).max(1));
    match p.proven_within {
        Some(room) => format!(
            "±{} {2} against ±{tolerance} {2}: proven up to {1} {2} off",
            rounded(u, d),
            rounded(room, d.min(2)),
            p.unit
        ),
        None => format!("±{} {} against ±{tolerance}: CANNOT BE PROVEN", rounded(u, d), p.unit),
    }
}

fn digits(u: f64) -> usize {
    (1.0 - u.max(1e-4).log10().floor()).clamp(0.0, 3.0) as usize
}

pub(super) fn least_words(p: &PredictedCheck, least: &LeastPhotos) -> String {
    match least.photos {
        _ if p.evidence == "reading" => "no photo".into(),
        Some(n) => format!("{n} photos are enough"),
        None => format!("not with {} photos", least.tried),
    }
}

pub(super) fn metres(mm: f64) -> String {
    rounded(mm / 1000.0, 2)
}
