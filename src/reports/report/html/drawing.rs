//! Where everything stood: plan and side view to scale, and the stand magnified.
//!
//! Both views share the direction and the scale of x, so what stands below
//! one another in them is the same place along the reference line.

use maud::{Markup, html};

use super::beside::side_view;
use super::checks::doubt;
use super::frame::Frame;
use super::loupe::loupes;
use super::plan::plan;
use super::scene::{Deviations, Scene, deviations};
use crate::record::JobRecord;
use crate::report::todo::{Trust, trust};
use crate::words::{Language, say};

/// The section.
pub(super) fn section(record: &JobRecord, language: Language) -> Markup {
    let scene = Scene::of(record);
    let all = deviations(record);
    let trust = trust(record);
    html! {
        section aria-labelledby="drawing" {
            h2 id="drawing" { (say!(language, "report-drawing")) }
            @if let Some(doubt) = doubt(trust, language).filter(|_| !scene.is_empty()) {
                p {
                    strong { (doubt) } " "
                    @if trust == Trust::None { (say!(language, "report-drawings-neither")) }
                    @else { (say!(language, "report-drawings-not-all")) }
                }
            }
            @if scene.is_empty() {
                p { (say!(language, "report-nothing-to-draw")) }
            } @else {
                (views(record, &scene, language))
            }
            @for group in &all { (magnified(group, &scene, all.len() > 1, language)) }
        }
    }
}

fn views(record: &JobRecord, scene: &Scene, language: Language) -> Markup {
    let frame = Frame::around(scene);
    html! {
        figure.views {
            h3 { (say!(language, "report-plan")) }
            (plan(record, scene, &frame, language))
            h3 style="margin-top:14px" { (say!(language, "report-side")) }
            (side_view(record, scene, &frame, language))
            figcaption {
                (say!(language, "report-drawing-caption"))
                @if !scene.nose_seen && scene.nose.is_some() { " " (say!(language, "report-nose-typed")) }
            }
        }
    }
}

fn magnified(group: &Deviations, scene: &Scene, several: bool, language: Language) -> Markup {
    let stand = scene.targets.iter().find(|s| Some(s.name) == group.target).or(scene.targets.first());
    let (wide, tall) = stand.map_or((600.0, 250.0), |s| (s.half_width, s.half_height));
    let name: Vec<&str> = group.target.into_iter().chain(group.step).collect();
    html! {
        div.magnified {
            h3 {
                @if several && !name.is_empty() { (say!(language, "report-magnified-of", name = name.join(", "))) }
                @else { (say!(language, "report-magnified")) }
            }
            p.lede { (say!(language, "report-magnified-lede")) }
            (loupes(group, wide, tall, language))
        }
    }
}
