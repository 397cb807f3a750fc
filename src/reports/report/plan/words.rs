//! The plan in words.

use super::super::figures::amount;
use super::super::named::{Named, metres};
use crate::quantity::rounded;
use crate::record::{LeastPhotos, PlanRecord, PlannedStation, PredictedCheck, told};
use crate::words::{Figure, Language, Phrase, Value, phrase, say};

/// The plan for the terminal.
pub fn plan_text(plan: &PlanRecord, language: Language) -> String {
    let with = say!(language, "plan-with", kit = &plan.kit, camera = &plan.camera);
    let mut text = format!("{}\n{with}\n\n", plan.title);
    if plan.stations.is_empty() {
        text.push_str(&say!(language, "plan-no-station"));
        text.push('\n');
    } else {
        text.push_str(&photos_line(plan).say(language));
        text.push('\n');
        for (i, s) in plan.stations.iter().enumerate() {
            text.push_str(&format!("  {}. {}\n     {}\n", i + 1, place(plan, s, language), shows(s, language)));
        }
    }
    text.push_str(&format!("\n{}\n", say!(language, "plan-worth-head")));
    if let Some(noise) = noise(plan) {
        text.push_str(&format!("  {}\n", noise.say(language)));
    }
    for (i, p) in plan.predicted.iter().enumerate() {
        text.push_str(&format!("  {:<34} {}", name(p, language), worth(p, language)));
        if let Some(least) = plan.least_photos.get(i) {
            text.push_str(&format!("; {}", least_words(p, least, language)));
        }
        text.push('\n');
    }
    follow_up(plan, language, &mut text);
    if !plan.advice.is_empty() {
        text.push_str(&format!("\n{}\n", say!(language, "plan-change-head")));
        for a in advice(plan, language) {
            text.push_str(&format!("  - {a}\n"));
        }
    }
    text
}

/// What to change.
pub(super) fn advice(plan: &PlanRecord, language: Language) -> Vec<String> {
    let one = |(i, words): (usize, &String)| told(plan.advice_phrases.get(i), words, language);
    plan.advice.iter().enumerate().map(one).collect()
}

fn follow_up(plan: &PlanRecord, language: Language, text: &mut String) {
    let Some(follow) = &plan.follow_up else { return };
    text.push_str(&format!(
        "\n{}\n  {}\n     {}\n",
        say!(language, "plan-follow-up"),
        place(plan, &follow.station, language),
        shows(&follow.station, language)
    ));
    for p in &follow.predicted {
        text.push_str(&format!("  {:<34} {}\n", name(p, language), worth(p, language)));
    }
    text.push_str(&format!("  {}\n", say!(language, "plan-follow-up-note")));
}

fn photos_line(plan: &PlanRecord) -> Phrase {
    let count = plan.stations.len();
    if plan.steps.len() > 1 {
        phrase!("plan-photos-each-step", count = count, steps = plan.steps.join(", "))
    } else {
        phrase!("plan-photos", count = count)
    }
}

fn shows(station: &PlannedStation, language: Language) -> String {
    say!(language, "plan-shows", bodies = station.sees.join(", "))
}

/// What corner noise is counted on, where it is not that of a plainly developed photo.
pub(super) fn noise(plan: &PlanRecord) -> Option<Phrase> {
    let ratio = plan.noise_ratio.filter(|r| *r > 1.05)?;
    Some(phrase!("plan-noise", ratio = Figure::fixed(ratio, 1)))
}

/// Where to stand, as somebody with a tape needs it.
pub(super) fn place(plan: &PlanRecord, station: &PlannedStation, language: Language) -> String {
    let [x, y, z] = station.position_mm;
    let ahead = x - plan.bay.nose_mm;
    let across = match () {
        () if y.abs() < 50.0 => "centre",
        () if y > 0.0 => "left",
        () => "right",
    };
    let Towards { what, aside_mm, turn_deg } = towards(plan, station);
    say!(
        language,
        "plan-place",
        along = if ahead >= 0.0 { "front" } else { "behind" },
        ahead = metres(ahead.abs()),
        across = across,
        beside = metres(y.abs()),
        height = metres(z),
        towards = what,
        aside = metres(aside_mm),
        turn = Figure::fixed(turn_deg, 0),
    )
}

/// What the picture's middle is nearest to.
struct Towards {
    what: &'static str,
    /// Beside the front axle's middle.
    aside_mm: f64,
    /// Off the driving direction.
    turn_deg: f64,
}

fn towards(plan: &PlanRecord, station: &PlannedStation) -> Towards {
    let [ex, ey, _] = station.position_mm;
    let [lx, ly, _] = station.look_at_mm;
    let (dx, dy) = (lx - ex, ly - ey);
    let length = dx.hypot(dy).max(1.0);
    let turn_deg = crate::geom::deg((dy / length).atan2(dx / length));
    // Where the line of sight is nearest to the vehicle's middle line at the front axle's place.
    let t = (plan.bay.wheelbase_mm - ex) / dx;
    if dx >= -1.0 || !t.is_finite() {
        return Towards { what: "off", aside_mm: 0.0, turn_deg };
    }
    let y = ey + t * dy;
    let what = match y.round() as i64 {
        -250..=250 => "middle",
        251..=1100 => "left-wheel",
        -1100..=-251 => "right-wheel",
        y if y > 0 => "left-of",
        _ => "right-of",
    };
    Towards { what, aside_mm: y.abs(), turn_deg }
}

/// Name of a check for people.
pub(super) fn name(p: &PredictedCheck, language: Language) -> String {
    let named =
        Named { quantity: &p.quantity, from: p.from.as_deref(), target: p.target.as_deref(), step: p.step.as_deref() };
    named.full().say(language)
}

/// What the photos will be worth for a check.
pub(super) fn worth(p: &PredictedCheck, language: Language) -> String {
    if p.evidence == "reading" {
        return say!(language, "plan-worth-reading");
    }
    let Some(u) = p.expanded_uncertainty else { return say!(language, "plan-worth-none") };
    let d = places(u);
    let shown = |value: f64, places| amount(Value::digits(&rounded(value, places)), &p.unit);
    let tolerance = shown(p.tolerance, places(p.tolerance).max(1));
    match p.proven_within {
        Some(room) => {
            say!(language, "plan-worth", u = shown(u, d), tolerance = tolerance, room = shown(room, d.min(2)))
        }
        None => say!(language, "plan-worth-unprovable", u = shown(u, d), tolerance = tolerance),
    }
}

fn places(u: f64) -> usize {
    (1.0 - u.max(1e-4).log10().floor()).clamp(0.0, 3.0) as usize
}

pub(super) fn least_words(p: &PredictedCheck, least: &LeastPhotos, language: Language) -> String {
    match least.photos {
        _ if p.evidence == "reading" => say!(language, "plan-least-none"),
        Some(n) => say!(language, "plan-least", count = n),
        None => say!(language, "plan-least-not", count = least.tried),
    }
}
