//! The fit as one HTML page: residuals, coverage, uncertainty of the projection.

use maud::{DOCTYPE, Markup, html};

use super::camera_fit::CameraFit;
use super::coverage::CELLS;
use super::field::GRID;
use super::words::parameter_rows;

/// Longer side of a drawing.
const LONG: f64 = 640.0;

/// The page of a fit: one file, no script, nothing fetched.
pub fn page(fit: &CameraFit) -> String {
    let page = html! {
        (DOCTYPE)
        html lang="en" {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { "Camera fit: " (fit.profile.name) }
                style { (STYLE) }
            }
            body {
                h1 { "Camera fit: " (fit.profile.name) }
                (verdict(fit))
                (parameters(fit))
                (uncertainty_map(fit))
                (residual_field(fit))
                (coverage(fit))
                (halves(fit))
                (photos(fit))
            }
        }
    };
    page.into_string()
}

const STYLE: &str = "body{font:16px/1.45 sans-serif;color:#1a1f24;background:#fff;max-width:62rem;margin:2rem auto;\
padding:0 1rem}table{border-collapse:collapse;margin:.5rem 0}td,th{padding:.2rem .8rem .2rem 0;text-align:left;\
border-bottom:1px solid #d5dade}td.n{text-align:right;font-variant-numeric:tabular-nums}svg{max-width:100%;height:auto;\
display:block}figure{margin:1rem 0 2rem}figcaption{color:#45505a}.no{border-left:6px solid #a3201d;padding-left:.8rem}\
.yes{border-left:6px solid #1d6b3a;padding-left:.8rem}text{font:13px sans-serif;fill:#1a1f24}";

fn verdict(fit: &CameraFit) -> Markup {
    html! {
        div class=(if fit.fit_for_use() { "yes" } else { "no" }) {
            p { strong { @if fit.fit_for_use() { "Fit for use" } @else { "Not fit for use" } } }
            ul { @for a in &fit.advice { li { @if a.forbids { strong { "Forbids use: " } } (a.text) } } }
        }
    }
}

fn parameters(fit: &CameraFit) -> Markup {
    html! {
        h2 { "Lens" }
        p {
            (fit.profile.lens.model.name()) ", RMS " (format!("{:.3}", fit.rms_px)) " px per coordinate, corner noise "
            (format!("{:.2}", fit.noise_factor)) " times what the detector states."
        }
        table {
            tr { th { "Parameter" } th { "Value" } th { "Standard uncertainty" } }
            @for [name, value, u] in parameter_rows(fit) {
                tr { td { (name) } td class="n" { (value) } td class="n" { (u) } }
            }
        }
        p {
            "From photo to photo (1 sigma) the focal length varies by "
            (format!("{:.3}", 100.0 * fit.profile.per_photo.u_focal_relative)) " % and the centre by "
            (format!("{:.2}", fit.profile.per_photo.u_centre_px)) " px."
        }
    }
}

/// The frame's drawing: its size and the factor from picture to drawing.
struct Sheet {
    width: f64,
    height: f64,
    factor: f64,
}

impl Sheet {
    fn new(fit: &CameraFit) -> Self {
        let [w, h] = fit.profile.image_size_px.map(f64::from);
        let factor = LONG / w.max(h);
        Sheet { width: w * factor, height: h * factor, factor }
    }

    fn at(&self, pixel: [f64; 2]) -> [f64; 2] {
        pixel.map(|c| (c + 0.5) * self.factor)
    }

    fn draw(&self, title: &str, inside: &Markup) -> Markup {
        let view = format!("-1 -1 {:.0} {:.0}", self.width + 2.0, self.height + 40.0);
        html! {
            svg viewBox=(view) width=(n(self.width)) role="img" aria-label=(title) {
                (inside)
                rect x="0" y="0" width=(n(self.width)) height=(n(self.height)) fill="none" stroke="#45505a" {}
            }
        }
    }
}

fn n(value: f64) -> String {
    format!("{:.1}", if value.is_finite() { value } else { 0.0 })
}

/// Steps of the map's scale, px.
const LEVELS: [f64; 8] = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0];
/// From sure to unsure; the lightness falls evenly, so that it reads without colour.
const SHADES: [&str; 9] =
    ["#f4f7d4", "#d9ebb8", "#b2dbaa", "#84c7a8", "#57aea9", "#3b8fa3", "#316f97", "#2d4f82", "#2a2f5f"];

fn shade(u_px: Option<f64>) -> &'static str {
    match u_px {
        None => "#ffffff",
        Some(u) => SHADES[LEVELS.iter().filter(|level| u > **level).count()],
    }
}

fn uncertainty_map(fit: &CameraFit) -> Markup {
    let sheet = Sheet::new(fit);
    let (w, h) = (sheet.width / (GRID[0] - 1) as f64, sheet.height / (GRID[1] - 1) as f64);
    let cells = html! {
        svg x="0" y="0" width=(n(sheet.width)) height=(n(sheet.height)) {
            @for point in &fit.field {
                @let [x, y] = sheet.at(point.pixel);
                rect x=(n(x - w / 2.0)) y=(n(y - h / 2.0)) width=(n(w + 0.5)) height=(n(h + 0.5)) fill=(shade(point.u_px)) {}
            }
        }
        @for (i, colour) in SHADES.iter().enumerate() {
            @let x = 62.0 * i as f64;
            rect x=(n(x)) y=(n(sheet.height + 8.0)) width="60" height="10" fill=(*colour) stroke="#8b959d" {}
            @if let Some(level) = LEVELS.get(i) {
                text x=(n(x + 61.0)) y=(n(sheet.height + 33.0)) text-anchor="middle" { (level) }
            }
        }
        text x=(n(62.0 * 9.0 + 6.0)) y=(n(sheet.height + 33.0)) { "px" }
    };
    html! {
        h2 { "How well the projection is known" }
        figure {
            (sheet.draw("Map of the projection's standard uncertainty over the frame", &cells))
            figcaption {
                "Standard uncertainty of the projection, px, in its worse direction, over the picture as stored; a turn of \
                 the camera is taken out. White: the lens shows no ray there."
            }
        }
    }
}

/// The largest of 1, 2, 5 times a power of ten that is not above `limit`.
fn round_down(limit: f64) -> f64 {
    let power = 10f64.powf(limit.clamp(1e-6, 1e6).log10().floor());
    let lead = limit / power;
    power
        * if lead >= 5.0 {
            5.0
        } else if lead >= 2.0 {
            2.0
        } else {
            1.0
        }
}

/// Arrows magnified so that the 99 % longest is about `length` long.
fn arrows(sheet: &Sheet, all: &[([f64; 2], [f64; 2])], length: f64) -> (f64, Markup) {
    let mut sizes: Vec<f64> = all.iter().map(|(_, m)| m[0].hypot(m[1])).collect();
    sizes.sort_by(f64::total_cmp);
    let long = sizes.get(sizes.len() * 99 / 100).copied().unwrap_or(1.0).max(1e-6);
    let magnify = round_down(length / (long * sheet.factor));
    let drawn = html! {
        @for (at, move_px) in all {
            @let [x, y] = sheet.at(*at);
            @let end = [0, 1].map(|i| [x, y][i] + move_px[i] * magnify * sheet.factor);
            line x1=(n(x)) y1=(n(y)) x2=(n(end[0])) y2=(n(end[1])) stroke="#316f97" stroke-width="1" {}
            circle cx=(n(x)) cy=(n(y)) r="0.9" fill="#1a1f24" {}
        }
    };
    (magnify, drawn)
}

fn residual_field(fit: &CameraFit) -> Markup {
    const MOST: usize = 4000;
    let sheet = Sheet::new(fit);
    let stride = fit.residuals_px.len().div_ceil(MOST).max(1);
    let few: Vec<_> = fit.residuals_px.iter().copied().step_by(stride).collect();
    let (magnify, drawn) = arrows(&sheet, &few, 30.0);
    html! {
        h2 { "Residuals" }
        figure {
            (sheet.draw("Residuals over the frame", &drawn))
            figcaption {
                "Found minus predicted for " (few.len()) " corners of all photos, lines " (magnify)
                " times their true length. Neighbours that point the same way in many photos would be an error of the \
                 lens model."
            }
        }
    }
}

fn coverage(fit: &CameraFit) -> Markup {
    let sheet = Sheet::new(fit);
    let (w, h) = (sheet.width / CELLS[0] as f64, sheet.height / CELLS[1] as f64);
    let cells = html! {
        @for (i, count) in fit.coverage.counts.iter().enumerate() {
            @let (x, y) = ((i % CELLS[0]) as f64 * w, (i / CELLS[0]) as f64 * h);
            rect x=(n(x)) y=(n(y)) width=(n(w)) height=(n(h)) stroke="#8b959d"
                fill=(if *count == 0 { "#ffffff" } else if *count < 8 { "#d9ebb8" } else { "#84c7a8" }) {}
            text x=(n(x + w / 2.0)) y=(n(y + h / 2.0 + 4.0)) text-anchor="middle" { (count) }
        }
    };
    html! {
        h2 { "Where the board was seen" }
        figure {
            (sheet.draw("Number of corners in each part of the frame", &cells))
            figcaption {
                "Corners of all photos in each part of the picture as stored: " (n(100.0 * fit.coverage.share()))
                " % of the frame. The board was tilted by up to " (n(fit.coverage.tilt_deg)) " deg and turned by up to "
                (n(fit.coverage.turn_deg)) " deg between photos."
            }
        }
    }
}

fn halves(fit: &CameraFit) -> Markup {
    let Some(halves) = &fit.halves else {
        return html! { h2 { "Two halves of the photos" } p { "Too few photos to compare two halves." } };
    };
    let sheet = Sheet::new(fit);
    let (magnify, drawn) = arrows(&sheet, &halves.moves_px, 25.0);
    html! {
        h2 { "Two halves of the photos" }
        figure {
            (sheet.draw("Difference of projection between two halves of the photos", &drawn))
            figcaption {
                "Every second photo against the others: difference of the projection, lines " (magnify)
                " times their true length, " (format!("{:.2}", halves.largest_px)) " px at most, " (format!("{:.2}", halves.shape_px)) " px besides focal length and centre. Over its stated \
                 uncertainty the difference is " (format!("{:.2}", halves.ratio.sqrt())) " (up to "
                (format!("{:.2}", halves.limit.sqrt())) " is chance): "
                @if halves.agree() { "the halves agree." } @else { "the halves disagree." }
            }
        }
    }
}

fn photos(fit: &CameraFit) -> Markup {
    html! {
        h2 { "Photos" }
        table {
            tr { th { "Photo" } th { "Corners" } th { "RMS px" } th { "Focal length" } th { "Centre px" } }
            @for p in &fit.photos {
                tr {
                    td { (p.file) }
                    td class="n" { (p.points[0]) " of " (p.points[1]) }
                    td class="n" { (format!("{:.3}", p.rms_px)) }
                    td class="n" { (format!("{:+.3} %", 100.0 * p.focal_relative)) }
                    td class="n" { (format!("{:+.1}, {:+.1}", p.centre_px[0], p.centre_px[1])) }
                }
            }
        }
        @if !fit.rejected.is_empty() {
            h3 { "Left out" }
            ul { @for r in &fit.rejected { li { (r.file) ": " (r.why) } } }
        }
    }
}
