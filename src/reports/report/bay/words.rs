//! The bay check in words.

use crate::quantity::{rounded, with_uncertainty};
use crate::record::{BayLimit, BayRecord};

/// The bay check for the terminal.
pub fn bay_text(bay: &BayRecord) -> String {
    let mut text =
        format!("Floor of the bay, {} sheets, {} photos\n{}\n\n", bay.sheets.len(), bay.photos.len(), basis(bay));
    for l in &bay.limits {
        text.push_str(&format!("  {}\n", limit_words(l)));
    }
    text.push_str(&format!(
        "  The floor {} and {}.\n",
        rise(bay.slope_deg[0], "front"),
        rise(bay.slope_deg[1], "left")
    ));
    if let Some(twist) = bay.wheel_twist_mm.filter(|_| bay.against_wheels) {
        text.push_str(&format!("  The four wheel centres are twisted by {} mm.\n", rounded(twist.abs(), 1)));
    }
    text.push_str("\n  sheet            before rear axle   to the left   height, mm        off the plane, mm\n");
    for s in &bay.sheets {
        let (height, u) = with_uncertainty(s.height_mm, s.expanded_uncertainty_mm);
        text.push_str(&format!(
            "  {:<16} {:>12} m {:>13} m   {:<18} {}\n",
            s.name,
            rounded(s.position_mm[0] / 1000.0, 2),
            rounded(s.position_mm[1] / 1000.0, 2),
            format!("{height} ±{u}"),
            rounded(s.off_plane_mm, 1)
        ));
    }
    text
}

/// What heights refer to.
pub(super) fn basis(bay: &BayRecord) -> String {
    match (bay.against_wheels, bay.hub_height_typed) {
        (true, true) => "Heights over the plane on which the wheels stand (hub height as typed). Photos know no plumb line: whether that plane is level takes a spirit level.".into(),
        (true, false) => "Heights over a plane parallel to the wheel centres; zero is the floor nearest to the rear wheels. Photos know no plumb line: whether that plane is level takes a spirit level.".into(),
        (false, _) => "No wheel plates were seen: heights over the sheets' own best plane, and no slope against the vehicle.".into(),
    }
}

pub(super) fn limit_words(l: &BayLimit) -> String {
    let (value, u) = with_uncertainty(l.value, l.expanded_uncertainty);
    let against = match (l.limit, l.at_most) {
        (Some(limit), true) => format!(", at most {limit} {} required", l.unit),
        (Some(limit), false) => format!(", at least {limit} {} required", l.unit),
        (None, _) => ", no limit in the set-up sheet".into(),
    };
    let verdict = l.verdict.map_or(String::new(), |v| format!(": {}", v.words()));
    format!("{}: {value} ±{u} {}{against}{verdict}", l.what, l.unit)
}

pub(super) fn rise(deg: f64, where_to: &str) -> String {
    if deg.abs() < 0.005 {
        return format!("does not rise to the {where_to}");
    }
    let word = if deg > 0.0 { "rises" } else { "falls" };
    format!(
        "{word} by {} deg ({} mm/m) to the {where_to}",
        rounded(deg.abs(), 2),
        rounded(1000.0 * crate::geom::rad(deg.abs()).tan(), 1)
    )
}
