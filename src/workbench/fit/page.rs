//! The fit as one HTML page: how far off a point may appear, residuals, coverage.

use maud::{DOCTYPE, Markup, html};
use nalgebra::Vector2;

use super::coverage::CELLS;
use super::field::{FieldPoint, GRID};
use super::fitted::CameraFit;
use super::words::parameter_rows;
use crate::shown::{fixed, signed};
use crate::words::{Figure, Language, say};

/// Longer side of a drawing.
const LONG: f64 = 640.0;

/// The page of a fit: one file, no script, nothing fetched.
pub fn page(fit: &CameraFit, language: Language) -> String {
    let title = say!(language, "fit-title", name = &fit.profile.name);
    let page = html! {
        (DOCTYPE)
        html lang=(language.tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { (title) }
                style { (STYLE) }
            }
            body {
                h1 { (title) }
                (verdict(fit, language))
                (parameters(fit, language))
                (circles(fit, language))
                (residual_field(fit, language))
                (coverage(fit, language))
                (halves(fit, language))
                (photos(fit, language))
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

fn verdict(fit: &CameraFit, language: Language) -> Markup {
    let is = fit.fit_for_use();
    html! {
        div class=(if is { "yes" } else { "no" }) {
            p { strong { (say!(language, "fit-verdict", answer = if is { "yes" } else { "no" })) } }
            ul {
                @for a in &fit.advice {
                    li { @if a.forbids { strong { (say!(language, "fit-forbids")) } " " } (a.said.say(language)) }
                }
            }
        }
    }
}

fn parameters(fit: &CameraFit, language: Language) -> Markup {
    let per_photo = &fit.profile.per_photo;
    html! {
        h2 { (say!(language, "fit-lens-title")) }
        p {
            (say!(
                language,
                "fit-lens",
                model = fit.profile.lens.model.name(),
                rms = Figure::fixed(fit.rms_px, 3),
                factor = Figure::fixed(fit.noise_factor, 2),
            ))
        }
        table {
            tr {
                th { (say!(language, "fit-column-parameter")) } th { (say!(language, "fit-column-value")) }
                th { (say!(language, "fit-column-u")) }
            }
            @for [name, value, u] in parameter_rows(fit, language) {
                tr { td { (name) } td class="n" { (value) } td class="n" { (u) } }
            }
        }
        p {
            (say!(
                language,
                "fit-lens-varies",
                focal = Figure::fixed(100.0 * per_photo.u_focal_relative, 3),
                centre = Figure::fixed(per_photo.u_centre_px, 2),
                turn = Figure::fixed(fit.turn_deg, 3),
            ))
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

fn circles(fit: &CameraFit, language: Language) -> Markup {
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
        text x=(n(2.0 * scale_mm * per_mm + 10.0)) y=(n(sheet.height + scale_mm * per_mm + 12.0)) { (say!(language, "fit-circles-size", size = mm(scale_mm))) }
    };
    html! {
        h2 { (say!(language, "fit-circles-title")) }
        figure {
            (sheet.draw(&say!(language, "fit-circles-drawing"), 2.0 * scale_mm * per_mm + 16.0, &drawn))
            figcaption {
                (say!(
                    language,
                    "fit-circles-caption",
                    distance = Figure::plain(STAND_AT_MM / 1000.0),
                    best = mm(best),
                    worst = mm(worst),
                ))
            }
        }
    }
}

/// Millimetres with two significant digits or two places, whichever is fewer.
fn mm(value: f64) -> Figure {
    Figure::fixed(value, if value < 1.0 { 2 } else { 1 })
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

fn residual_field(fit: &CameraFit, language: Language) -> Markup {
    const MOST: usize = 4000;
    let sheet = Sheet::new(fit);
    let stride = fit.residuals_px.len().div_ceil(MOST).max(1);
    let few: Vec<_> = fit.residuals_px.iter().copied().step_by(stride).collect();
    let (magnify, drawn) = arrows(&sheet, &few, 30.0);
    html! {
        h2 { (say!(language, "fit-residuals-title")) }
        figure {
            (sheet.draw(&say!(language, "fit-residuals-drawing"), 0.0, &drawn))
            figcaption {
                (say!(language, "fit-residuals-caption", count = few.len(), factor = Figure::plain(magnify)))
            }
        }
    }
}

fn coverage(fit: &CameraFit, language: Language) -> Markup {
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
        h2 { (say!(language, "fit-coverage-title")) }
        figure {
            (sheet.draw(&say!(language, "fit-coverage-drawing"), 0.0, &cells))
            figcaption {
                (say!(
                    language,
                    "fit-coverage-caption",
                    share = Figure::fixed(100.0 * fit.coverage.share(), 1),
                    tilt = Figure::fixed(fit.coverage.tilt_deg, 1),
                    turn = Figure::fixed(fit.coverage.turn_deg, 1),
                ))
            }
        }
    }
}

fn halves(fit: &CameraFit, language: Language) -> Markup {
    let words = fit.halves.as_ref().map_or_else(
        || say!(language, "fit-halves-few"),
        |halves| {
            say!(
                language,
                "fit-halves-page",
                most = Figure::fixed(halves.largest_px, 2),
                shape = Figure::fixed(halves.shape_px, 2),
                ratio = Figure::fixed(halves.ratio.sqrt(), 2),
                limit = Figure::fixed(halves.limit.sqrt(), 2),
                agree = if halves.agree() { "yes" } else { "no" },
            )
        },
    );
    html! { h2 { (say!(language, "fit-halves-title")) } p { (words) } }
}

fn photos(fit: &CameraFit, language: Language) -> Markup {
    let heads = [
        say!(language, "fit-column-photo"),
        say!(language, "fit-column-corners"),
        say!(language, "fit-column-rms"),
        say!(language, "fit-column-focal"),
        say!(language, "fit-column-centre"),
    ];
    html! {
        h2 { (say!(language, "fit-photos-title")) }
        table {
            tr { @for head in heads { th { (head) } } }
            @for p in &fit.photos {
                tr {
                    td { (p.file) }
                    td class="n" { (say!(language, "fit-corners", found = p.points[0], count = p.points[1])) }
                    td class="n" { (fixed(p.rms_px, 3, language)) }
                    td class="n" { (signed(100.0 * p.focal_relative, 3, language)) " %" }
                    td class="n" { (signed(p.centre_px[0], 1, language)) " / " (signed(p.centre_px[1], 1, language)) }
                }
            }
        }
        @if !fit.rejected.is_empty() {
            h3 { (say!(language, "fit-left-out-title")) }
            ul { @for r in &fit.rejected { li { (r.file) ": " (r.why.say(language)) } } }
        }
    }
}
