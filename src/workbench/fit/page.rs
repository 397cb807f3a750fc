//! The fit as one HTML page: how far off a point may appear, residuals, coverage.

use maud::{DOCTYPE, Markup, html};
use nalgebra::Vector2;

use super::camera_fit::CameraFit;
use super::coverage::CELLS;
use super::field::{FieldPoint, GRID};
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
                (circles(fit))
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
            (format!("{:.2}", fit.profile.per_photo.u_centre_px)) " px. While rows were read the camera turned by "
            (format!("{:.3}", fit.turn_deg)) " deg about each axis (1 sigma)."
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

    /// `below` is room for a scale under the frame.
    fn draw(&self, title: &str, below: f64, inside: &Markup) -> Markup {
        let view = format!("-1 -1 {:.0} {:.0}", self.width + 2.0, self.height + 2.0 + below);
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

/// How far from the phone a stand stands when it is photographed, mm (common practice, no source).
const STAND_AT_MM: f64 = 3000.0;
/// Half the width of a 95 % interval in standard uncertainties.
const COVERAGE_FACTOR: f64 = 1.96;
/// Every so many positions of the field get a circle.
const EVERY: usize = 4;

/// How far beside its place a point at the stand's distance may appear (95 %), mm; `None` where the lens shows no ray.
fn off_mm(fit: &CameraFit, point: &FieldPoint) -> Option<f64> {
    let ray = |x: f64, y: f64| fit.profile.lens.ray(&Vector2::new(point.pixel[0] + x, point.pixel[1] + y));
    let straight = ray(0.0, 0.0)?;
    // The angle of one pixel, in the direction in which it is wider.
    let a_pixel = [ray(0.5, 0.0)?, ray(0.0, 0.5)?].map(|r| 2.0 * straight.angle(&r)).into_iter().fold(0.0, f64::max);
    Some(COVERAGE_FACTOR * point.u_px? * a_pixel * STAND_AT_MM)
}

fn circles(fit: &CameraFit) -> Markup {
    let sheet = Sheet::new(fit);
    // As far from the edges on either side: columns 2, 6, ... 22 of 25 and rows 3, 7, 11, 15 of 19.
    let drawn_at = |i: usize| (i % GRID[0]) % EVERY == EVERY / 2 && (i / GRID[0]) % EVERY == EVERY - 1;
    let all: Vec<Option<f64>> = fit.field.iter().map(|point| off_mm(fit, point)).collect();
    let places: Vec<([f64; 2], Option<f64>)> =
        (0..all.len()).filter(|i| drawn_at(*i)).map(|i| (sheet.at(fit.field[i].pixel), all[i])).collect();
    let largest = places.iter().filter_map(|p| p.1).fold(1e-9, f64::max);
    let (best, worst) = all.iter().flatten().fold((f64::MAX, 0.0), |(a, b), x| (x.min(a), x.max(b)));
    // The largest circle nearly touches its neighbours.
    let per_mm = 0.45 * sheet.width * EVERY as f64 / (GRID[0] - 1) as f64 / largest;
    let scale_mm = round_down(largest);
    let drawn = html! {
        @for ([x, y], off) in &places {
            @match off {
                Some(off) => circle cx=(n(*x)) cy=(n(*y)) r=(n((off * per_mm).max(0.6))) fill="none" stroke="#45505a" {},
                None => text x=(n(*x)) y=(n(y + 4.0)) text-anchor="middle" { "-" },
            }
        }
        circle cx=(n(scale_mm * per_mm + 1.0)) cy=(n(sheet.height + scale_mm * per_mm + 8.0)) r=(n(scale_mm * per_mm)) fill="none" stroke="#45505a" {}
        text x=(n(2.0 * scale_mm * per_mm + 10.0)) y=(n(sheet.height + scale_mm * per_mm + 12.0)) { "the size of " (mm(scale_mm)) " mm" }
    };
    html! {
        h2 { "How far off a point may appear" }
        figure {
            (sheet.draw("Circles over the frame: how far off a point may appear", 2.0 * scale_mm * per_mm + 16.0, &drawn))
            figcaption {
                "A point " (STAND_AT_MM / 1000.0) " m from the camera appears at most this far beside its place (95 %) because the lens is not \
                 known better: " (mm(best)) " mm where it is known best, " (mm(worst)) " mm at the worst place of the frame. A turn of the whole camera is taken out, since each photo \
                 finds its own. A dash: the lens shows nothing there."
            }
        }
    }
}

/// Millimetres with two significant digits or two places, whichever is fewer.
fn mm(value: f64) -> String {
    if value < 1.0 { format!("{value:.2}") } else { format!("{value:.1}") }
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
            (sheet.draw("Residuals over the frame", 0.0, &drawn))
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
            (sheet.draw("Number of corners in each part of the frame", 0.0, &cells))
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
    html! {
        h2 { "Two halves of the photos" }
        p {
            "Every second photo against the others: the two lenses project a point at most "
            (format!("{:.2}", halves.largest_px)) " px apart (" (format!("{:.2}", halves.shape_px))
            " px besides focal length and centre), which is " (format!("{:.2}", halves.ratio.sqrt()))
            " times what is stated, where up to " (format!("{:.2}", halves.limit.sqrt())) " is chance: "
            @if halves.agree() { "they agree." } @else { "they disagree." }
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
