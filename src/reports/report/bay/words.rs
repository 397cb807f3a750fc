//! The bay check in words.

use super::super::named::{metres, unit};
use crate::quantity::with_uncertainty;
use crate::record::{BayLimit, BayRecord, told};
use crate::words::{Figure, Language, Value, phrase, say};

/// The bay check for the terminal.
pub fn bay_text(bay: &BayRecord, language: Language) -> String {
    let head = say!(language, "bay-head", sheets = bay.sheets.len(), photos = bay.photos.len());
    let mut text = format!("{head}\n{}\n\n", basis(bay, language));
    for l in &bay.limits {
        text.push_str(&format!("  {}\n", limit_words(l, language)));
    }
    text.push_str(&format!("  {}\n", rise(bay.slope_deg, language)));
    if let Some(twist) = bay.wheel_twist_mm.filter(|_| bay.against_wheels) {
        text.push_str(&format!("  {}\n", say!(language, "bay-twist", twist = Figure::fixed(twist.abs(), 1))));
    }
    let heads = [
        say!(language, "bay-column-sheet"),
        say!(language, "bay-column-ahead"),
        say!(language, "bay-column-left"),
        say!(language, "bay-column-height-mm"),
        say!(language, "bay-column-off-plane-mm"),
    ];
    let rows = bay.sheets.iter().map(|s| {
        let (height, u) = with_uncertainty(s.height_mm, s.expanded_uncertainty_mm);
        [
            s.name.clone(),
            format!("{} m", metres(s.position_mm[0]).say(language)),
            format!("{} m", metres(s.position_mm[1]).say(language)),
            format!("{} ±{}", Value::digits(&height).say(language), Value::digits(&u).say(language)),
            Figure::fixed(s.off_plane_mm, 1).say(language),
        ]
    });
    text.push('\n');
    text.push_str(&table(heads, rows.collect()));
    text
}

/// Columns as wide as their widest cell; figures stand right.
fn table(heads: [String; 5], rows: Vec<[String; 5]>) -> String {
    let rows: Vec<[String; 5]> = std::iter::once(heads).chain(rows).collect();
    let width = |column: usize| rows.iter().map(|r| r[column].chars().count()).max().unwrap_or(0);
    let widths = [0, 1, 2, 3, 4].map(width);
    let mut text = String::new();
    for row in &rows {
        let mut line = format!("  {:<1$}", row[0], widths[0]);
        for column in 1..5 {
            line.push_str(&format!("   {:>1$}", row[column], widths[column]));
        }
        text.push_str(line.trim_end());
        text.push('\n');
    }
    text
}

/// What heights refer to.
pub(super) fn basis(bay: &BayRecord, language: Language) -> String {
    match (bay.against_wheels, bay.hub_height_typed) {
        (true, true) => say!(language, "bay-basis-typed"),
        (true, false) => say!(language, "bay-basis-wheels"),
        (false, _) => say!(language, "bay-basis-sheets"),
    }
}

/// A figure with its limit and verdict.
pub(super) fn limit_words(l: &BayLimit, language: Language) -> String {
    let (value, u) = with_uncertainty(l.value, l.expanded_uncertainty);
    let bound = match (l.limit, l.at_most) {
        (Some(_), true) => "most",
        (Some(_), false) => "least",
        (None, _) => "none",
    };
    let figure = phrase!(
        "bay-limit",
        what = told(l.what_phrase.as_ref(), &l.what, language),
        value = Value::digits(&value),
        u = Value::digits(&u),
        unit = unit(&l.unit),
        bound = bound,
        limit = Figure::plain(l.limit.unwrap_or(0.0)),
    );
    match l.verdict {
        Some(verdict) => {
            say!(language, "bay-limit-verdict", figure = figure, verdict = verdict.phrase())
        }
        None => figure.say(language),
    }
}

/// Which way the floor rises: to the front and to the left.
pub(super) fn rise(slope_deg: [f64; 2], language: Language) -> String {
    let way = |deg: f64| match () {
        () if deg.abs() < 0.005 => "flat",
        () if deg > 0.0 => "up",
        () => "down",
    };
    let per_metre = |deg: f64| Figure::fixed(1000.0 * crate::geom::rad(deg.abs()).tan(), 1);
    let [front, left] = slope_deg;
    say!(
        language,
        "bay-rise",
        front = way(front),
        front_deg = Figure::fixed(front.abs(), 2),
        front_mm = per_metre(front),
        left = way(left),
        left_deg = Figure::fixed(left.abs(), 2),
        left_mm = per_metre(left),
    )
}
