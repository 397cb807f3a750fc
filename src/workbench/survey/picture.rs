//! A carrier as it was found: where its markers sit and how far that is from
//! the kit file.

use maud::{Markup, html};
use nalgebra::{Point3, Unit, Vector3};

use super::surveyed::CarrierSurvey;
use crate::marker::{Carrier, Marker};
use crate::shown::signed;
use crate::words::{Figure, Language, say};

/// Longer side of a drawing.
const LONG: f64 = 560.0;
/// Room for arrows and numbers at the rim.
const RIM: f64 = 46.0;

/// The drawing's plane: seen against the markers' common outward direction.
struct View {
    right: Vector3<f64>,
    up: Vector3<f64>,
    towards: Vector3<f64>,
    least: [f64; 2],
    factor: f64,
    size: [f64; 2],
}

impl View {
    fn of(carrier: &Carrier) -> View {
        let towards: Vector3<f64> = carrier.markers.iter().map(Marker::normal).sum();
        let towards = Unit::try_new(towards, 1e-3).map_or_else(Vector3::x, Unit::into_inner);
        // Upright as it stands; lying sheets have forward up.
        let vertical = if towards.z.abs() > 0.9 { Vector3::x() } else { Vector3::z() };
        let right = vertical.cross(&towards).normalize();
        let up = towards.cross(&right);
        let corners: Vec<Point3<f64>> = carrier.markers.iter().flat_map(Marker::corners_mm).collect();
        let range = |axis: &Vector3<f64>| {
            let along = corners.iter().map(|c| c.coords.dot(axis));
            along.fold([f64::INFINITY, f64::NEG_INFINITY], |[a, b], v| [a.min(v), b.max(v)])
        };
        let (x, y) = (range(&right), range(&up));
        let [width, height] = [x[1] - x[0], y[1] - y[0]];
        let factor = LONG / width.max(height).max(1.0);
        let size = [width * factor + 2.0 * RIM, height * factor + 2.0 * RIM];
        View { right, up, towards, least: [x[0], y[0]], factor, size }
    }

    fn at(&self, point: &Vector3<f64>) -> [f64; 2] {
        let x = RIM + (point.dot(&self.right) - self.least[0]) * self.factor;
        let y = self.size[1] - RIM - (point.dot(&self.up) - self.least[1]) * self.factor;
        [x, y]
    }
}

fn n(value: f64) -> String {
    format!("{:.1}", if value.is_finite() { value } else { 0.0 })
}

/// The largest of 1, 2, 5 times a power of ten that is not above `limit`.
fn round_down(limit: f64) -> f64 {
    let power = 10f64.powf(limit.clamp(1e-6, 1e6).log10().floor());
    [5.0, 2.0, 1.0].into_iter().map(|lead| lead * power).find(|v| *v <= limit).unwrap_or(power)
}

/// The drawing of one carrier and how many times larger the arrows are than life.
pub(super) fn picture(carrier: &Carrier, survey: &CarrierSurvey, language: Language) -> (f64, Markup) {
    let view = View::of(carrier);
    let longest = survey.markers.iter().map(|m| m.moved_mm.norm()).fold(0.05, f64::max);
    let magnify = round_down(RIM / (longest * view.factor));
    let drawing = html! {
        svg viewBox=(format!("0 0 {:.0} {:.0}", view.size[0], view.size[1] + 24.0)) width=(n(view.size[0])) role="img"
            aria-label=(say!(language, "fit-survey-drawing", carrier = &survey.name)) {
            @for marker in &carrier.markers {
                (outline(&view, marker, survey.markers.iter().any(|m| m.id == marker.id)))
            }
            @for found in &survey.markers {
                @let from = view.at(&found.stated_mm);
                @let to = view.at(&(found.stated_mm + found.moved_mm * magnify));
                @let u = found.u_shape_mm.norm() / 3f64.sqrt() * 2.0 * magnify * view.factor;
                circle cx=(n(to[0])) cy=(n(to[1])) r=(n(u.max(1.0))) fill="#f1c27d" fill-opacity="0.5" stroke="#9a5b13" {}
                line x1=(n(from[0])) y1=(n(from[1])) x2=(n(to[0])) y2=(n(to[1])) stroke="#a3201d" stroke-width="2" {}
                circle cx=(n(from[0])) cy=(n(from[1])) r="2" fill="#1a1f24" {}
                text x=(n(from[0])) y=(n(from[1] + 20.0)) text-anchor="middle" {
                    (found.id) ": " (signed(found.moved_mm.dot(&view.towards), 2, language))
                }
            }
            @let bar = round_down(120.0 / (magnify * view.factor));
            @let y = view.size[1] + 8.0;
            line x1="10" y1=(n(y)) x2=(n(10.0 + bar * magnify * view.factor)) y2=(n(y)) stroke="#a3201d" stroke-width="2" {}
            text x=(n(18.0 + bar * magnify * view.factor)) y=(n(y + 4.0)) { (Figure::plain(bar).say(language)) " mm" }
        }
    };
    (magnify, drawing)
}

fn outline(view: &View, marker: &Marker, known: bool) -> Markup {
    let corners = marker.corners_mm().map(|c| view.at(&c.coords));
    let points: Vec<String> = corners.iter().map(|[x, y]| format!("{x:.1},{y:.1}")).collect();
    let top = [corners[0], corners[1]];
    html! {
        polygon points=(points.join(" ")) fill=(if known { "#eef2f4" } else { "#ffffff" }) stroke="#8b959d" {}
        // The upper edge of the code.
        line x1=(n(top[0][0])) y1=(n(top[0][1])) x2=(n(top[1][0])) y2=(n(top[1][1])) stroke="#45505a" stroke-width="2.5" {}
    }
}
