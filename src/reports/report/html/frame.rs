//! The scale that plan and side view share, and what both draw alike.

use maud::{Markup, html};

use super::scene::Scene;
use super::svg::points;
use crate::record::{CheckRecord, JobRecord};
use crate::report::figures::Measured;
use crate::report::label::Label;
use crate::words::{Language, say};

/// Width of both views, units: pixels on a desktop screen.
pub(super) const WIDTH: f64 = 1000.0;

const MARGIN: f64 = 26.0;

/// The part of the bay that is drawn, and its scale.
pub(super) struct Frame {
    pub(super) x: [f64; 2],
    pub(super) y: [f64; 2],
    z: f64,
    units_per_mm: f64,
}

impl Frame {
    pub(super) fn around(scene: &Scene) -> Frame {
        let half = scene.half_width() + 120.0;
        let (mut x, mut y, mut z) = ([-900.0_f64, 1500.0], [-half, half], 1500.0_f64);
        let stands = scene.targets.iter().map(|s| (s.aim, s.half_width + 150.0, s.half_height));
        let hubs = scene.hubs.iter().flatten().chain(&scene.nose).map(|&p| (p, 250.0, 0.0));
        let photos = scene.photos.iter().map(|&(_, p, _)| (p, 300.0, 120.0));
        for (p, wide, tall) in stands.chain(hubs).chain(photos) {
            x = [x[0].min(p[0] - 250.0), x[1].max(p[0] + 250.0)];
            y = [y[0].min(p[1] - wide), y[1].max(p[1] + wide)];
            z = z.max(p[2] + tall);
        }
        Frame { x, y, z: z + 100.0, units_per_mm: (WIDTH - 2.0 * MARGIN) / (x[1] - x[0]) }
    }

    pub(super) fn length(&self, mm: f64) -> f64 {
        mm * self.units_per_mm
    }

    pub(super) fn across(&self, x_mm: f64) -> f64 {
        MARGIN + self.length(x_mm - self.x[0])
    }

    /// From above: the vehicle's left is up.
    pub(super) fn above(&self, p: [f64; 3]) -> [f64; 2] {
        [self.across(p[0]), MARGIN + self.length(self.y[1] - p[1])]
    }

    /// From the vehicle's right: up is up.
    pub(super) fn beside(&self, p: [f64; 3]) -> [f64; 2] {
        [self.across(p[0]), MARGIN + self.length(self.z - p[2])]
    }
}

/// The drawing in words.
pub(super) fn spoken(record: &JobRecord, language: Language) -> String {
    let says = |check: &CheckRecord| {
        let label = Label::of_check(check, language);
        let m = Measured::of_check(check, label.quantity, language)?;
        Some(say!(language, "report-figure", name = label.trade, value = m.short()))
    };
    let all: Vec<String> = record.checks.iter().filter_map(says).collect();
    say!(language, "report-drawing-spoken", figures = all.join("; "))
}

/// A marker as a filled outline.
pub(super) fn marker_shape(corners: [[f64; 2]; 4]) -> Markup {
    html! { polygon.marker points=(points(&corners)) {} }
}
