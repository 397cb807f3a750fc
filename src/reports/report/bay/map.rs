//! The floor from above: heights as contour colours and numbers.

use maud::{DOCTYPE, Markup, PreEscaped, html};

use super::super::named::metres;
use super::words::{basis, limit_words, rise};
use crate::quantity::rounded;
use crate::record::BayRecord;
use crate::words::{Figure, Language, Value, say};

const WIDTH: f64 = 940.0;
const EDGE: f64 = 46.0;
const LEGEND: f64 = 64.0;
/// Side of a coloured cell, mm.
const CELL_MM: f64 = 100.0;
/// Colours from low to high; the numbers say the same.
const COLOURS: [&str; 9] =
    ["#2d5a87", "#5684ae", "#8db1cf", "#c3d8e6", "#f2f2ec", "#efd9b4", "#dcb072", "#b97f3a", "#8a5316"];

struct Frame {
    scale: f64,
    low: [f64; 2],
    high: [f64; 2],
}

impl Frame {
    fn new(bay: &BayRecord) -> Self {
        let mut low = [-600.0f64, -1100.0];
        let mut high = [bay.nose_mm.unwrap_or(0.0) + 300.0, 1100.0];
        for s in &bay.sheets {
            for i in 0..2 {
                low[i] = low[i].min(s.position_mm[i] - 350.0);
                high[i] = high[i].max(s.position_mm[i] + 350.0);
            }
        }
        Frame { scale: (WIDTH - 2.0 * EDGE) / (high[0] - low[0]), low, high }
    }

    fn at(&self, x: f64, y: f64) -> [f64; 2] {
        [EDGE + (x - self.low[0]) * self.scale, EDGE + (self.high[1] - y) * self.scale]
    }

    fn height(&self) -> f64 {
        2.0 * EDGE + (self.high[1] - self.low[1]) * self.scale + LEGEND
    }
}

fn n(value: f64) -> String {
    rounded(if value.is_finite() { value } else { 0.0 }, 1)
}

/// Step between two colours: 1, 2 or 5 times a power of ten, mm.
fn step_mm(bay: &BayRecord) -> f64 {
    let most = bay.sheets.iter().map(|s| s.height_mm.abs()).fold(0.5, f64::max);
    let wanted = most / 4.5;
    let power = 10f64.powf(wanted.log10().floor());
    power * [1.0, 2.0, 5.0, 10.0].into_iter().find(|s| s * power >= wanted).unwrap_or(10.0)
}

fn colour(height: f64, step: f64) -> &'static str {
    let band = (height / step + 0.5).floor().clamp(-4.0, 4.0) + 4.0;
    COLOURS[band as usize]
}

/// Height between the sheets: means weighted by the inverse square of the
/// distance (Shepard 1968); `None` far from every sheet.
fn between(bay: &BayRecord, x: f64, y: f64) -> Option<f64> {
    let (mut sum, mut weights, mut nearest) = (0.0, 0.0, f64::MAX);
    for s in &bay.sheets {
        let d = (x - s.position_mm[0]).hypot(y - s.position_mm[1]);
        nearest = nearest.min(d);
        let w = (d * d + 100.0).powi(-1);
        sum += w * s.height_mm;
        weights += w;
    }
    (nearest < 1200.0).then(|| sum / weights)
}

const STYLE: &str = ".paper{fill:#fff}.body{fill:none;stroke:#505c61;stroke-width:2}.sheet{fill:#fff;stroke:#172024;stroke-width:1.5}\
text{font:13px system-ui,'Noto Sans',sans-serif;fill:#172024}.value{font-weight:700;font-size:14px}.halo{paint-order:stroke;stroke:#fff;stroke-width:4px}\
.small{font-size:11.5px;fill:#505c61}";

/// The map as a file of its own.
pub fn bay_svg(bay: &BayRecord, language: Language) -> String {
    let frame = Frame::new(bay);
    html! {
        svg xmlns="http://www.w3.org/2000/svg" viewBox=(format!("0 0 {} {}", n(WIDTH), n(frame.height()))) role="img" {
            title { (say!(language, "bay-map")) }
            style { (PreEscaped(STYLE)) }
            rect.paper x="0" y="0" width=(n(WIDTH)) height=(n(frame.height())) {}
            (cells(bay, &frame))
            @if bay.against_wheels { (vehicle(bay, &frame, language)) }
            @for s in &bay.sheets {
                @let at = frame.at(s.position_mm[0], s.position_mm[1]);
                rect.sheet x=(n(at[0] - 6.0)) y=(n(at[1] - 6.0)) width="12" height="12" {}
                text.value.halo text-anchor="middle" x=(n(at[0])) y=(n(at[1] - 11.0)) { (signed(s.height_mm, language)) }
                text.small.halo text-anchor="middle" x=(n(at[0])) y=(n(at[1] + 20.0)) { (s.name) }
            }
            (legend(bay, &frame, language))
        }
    }
    .into_string()
}

fn signed(mm: f64, language: Language) -> String {
    let text = Figure::fixed(mm, 1).say(language);
    if mm > 0.0 && rounded(mm, 1) != "0.0" { format!("+{text}") } else { text }
}

fn cells(bay: &BayRecord, frame: &Frame) -> Markup {
    let step = step_mm(bay);
    let count = |i: usize| ((frame.high[i] - frame.low[i]) / CELL_MM).ceil().min(300.0) as usize;
    let side = n(CELL_MM * frame.scale + 0.3);
    html! {
        @for i in 0..count(0) {
            @for j in 0..count(1) {
                @let (x, y) = (frame.low[0] + i as f64 * CELL_MM, frame.low[1] + (j as f64 + 1.0) * CELL_MM);
                @if let Some(height) = between(bay, x + CELL_MM / 2.0, y - CELL_MM / 2.0) {
                    @let at = frame.at(x, y);
                    rect x=(n(at[0])) y=(n(at[1])) width=(side) height=(side) fill=(colour(height, step)) {}
                }
            }
        }
    }
}

fn vehicle(bay: &BayRecord, frame: &Frame, language: Language) -> Markup {
    let nose = bay.nose_mm.unwrap_or(3490.0);
    let (a, b) = (frame.at(-560.0, 880.0), frame.at(nose, -880.0));
    html! {
        rect.body x=(n(a[0])) y=(n(a[1])) width=(n(b[0] - a[0])) height=(n(b[1] - a[1])) rx="26" {}
        text.halo x=(n(a[0] + 14.0)) y=(n(f64::midpoint(a[1], b[1]))) { (say!(language, "plan-vehicle", heading = "right")) }
    }
}

fn legend(bay: &BayRecord, frame: &Frame, language: Language) -> Markup {
    let (step, top) = (step_mm(bay), frame.height() - LEGEND + 8.0);
    html! {
        @for (i, c) in COLOURS.iter().enumerate() {
            @let x = EDGE + i as f64 * 78.0;
            rect x=(n(x)) y=(n(top)) width="78" height="18" fill=(c) stroke="#505c61" {}
            text.small text-anchor="middle" x=(n(x + 39.0)) y=(n(top + 34.0)) { (signed((i as f64 - 4.0) * step, language)) " mm" }
        }
    }
}

/// The bay check as one page.
pub fn bay_html(bay: &BayRecord, language: Language) -> String {
    let figure = |value: f64, places: u8| Figure::fixed(value, places).say(language);
    html! {
        (DOCTYPE)
        html lang=(language.tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { (say!(language, "bay-title")) }
                style { (PreEscaped(PAGE)) }
            }
            body {
                h1 { (say!(language, "bay-title")) }
                p.aside { (basis(bay, language)) }
                ul { @for l in &bay.limits { li { (limit_words(l, language)) } } }
                p { (rise(bay.slope_deg, language)) }
                figure { (PreEscaped(bay_svg(bay, language))) }
                table {
                    thead { tr {
                        th { (say!(language, "bay-column-sheet")) } th { (say!(language, "bay-column-ahead")) }
                        th { (say!(language, "bay-column-left")) } th { (say!(language, "bay-column-height")) }
                        th { (say!(language, "bay-column-off-plane")) } th { (say!(language, "bay-column-rise")) }
                    } }
                    tbody { @for s in &bay.sheets { tr {
                        @let (h, u) = crate::quantity::with_uncertainty(s.height_mm, s.expanded_uncertainty_mm);
                        td { (s.name) }
                        td { (metres(s.position_mm[0]).say(language)) " m" }
                        td { (metres(s.position_mm[1]).say(language)) " m" }
                        td { (Value::digits(&h).say(language)) " ±" (Value::digits(&u).say(language)) " mm" }
                        td { (figure(s.off_plane_mm, 1)) " mm" }
                        td { (figure(s.rise_deg[0], 2)) "° / " (figure(s.rise_deg[1], 2)) "°" }
                    } } }
                }
                p.aside { (say!(language, "bay-foot")) }
            }
        }
    }
    .into_string()
}

const PAGE: &str = "body{font:16px/1.45 system-ui,'Noto Sans',sans-serif;color:#172024;background:#fff;max-width:1000px;\
margin:1.5rem auto;padding:0 1rem}h1{font-size:1.35rem}table{border-collapse:collapse;width:100%}td,th{padding:.3rem .8rem .3rem 0;\
text-align:left;border-bottom:1px solid #c6cecd}.aside{color:#505c61;font-size:.92rem}figure{margin:1rem 0}svg{max-width:100%;height:auto;display:block}";
