//! The photos and what they prove.

use maud::{Markup, html};

use super::card::section as card_section;
use super::frame::notice;
use super::job_head::{self, Step};
use super::photo_card::{aside_list, card};
use super::viewer::viewer;
use super::{stations, verdict};
use crate::web::address::job_path;
use crate::web::view::View;
use crate::words::{Language, say};

/// The page.
pub(in crate::web) fn page(language: Language, view: &View) -> Markup {
    let body = html! {
        @if !view.closed { (senders(language, view, "before")) }
        // Where to stand comes first while there is no photo.
        @if view.photos.is_empty() { (stations::section(language, view)) (live(language, view)) }
        @else { (live(language, view)) (stations::section(language, view)) }
        @if !view.closed { (card_section(language, view)) }
    };
    job_head::page(language, view, Step::Photos, &body)
}

/// What the script draws anew when something happens.
pub(in crate::web) fn live(language: Language, view: &View) -> Markup {
    html! {
        div #live data-part="photos" data-working=[view.standing.working.then_some("yes")] {
            (verdict::card(language, view))
            @if let Some(said) = &view.standing.tripod {
                (notice("plain", say!(language, "page-tripod-says", said = said.clone())))
            }
            section aria-labelledby="photos" {
                h2 #photos { (say!(language, "page-photos")) }
                @if view.photos.is_empty() { p { (say!(language, "page-no-photos")) } }
                @else {
                    p.key aria-hidden="true" { span.k-seen {} " " (say!(language, "page-seen-key")) " " span.k-gone {} " " (say!(language, "page-missing-key")) }
                    ul.photos { @for (i, entry) in view.photos.iter().enumerate() { (card(language, view, i, entry, "photos")) } }
                }
                (aside_list(language, view))
            }
        }
    }
}

/// What sends photos; the script fills in the rest.
pub(super) fn senders(language: Language, view: &View, phase: &str) -> Markup {
    let steps = view.named.as_ref().map(|n| n.setup.steps.as_slice()).unwrap_or_default();
    html! {
        section.senders aria-label=(say!(language, "page-take-photo")) data-send={ (job_path(&view.name, "photos")) "?phase=" (phase) } {
            noscript { (without_script(language, view, phase, steps)) }
            @if !steps.is_empty() {
                div.field {
                    label for="step" { (say!(language, "page-position")) }
                    select #step data-step="" { @for step in steps { option value=(step) { (step) } } }
                }
            }
            div.deeds.scripted hidden {
                label.button.go.camera for={ "take-" (phase) } { (say!(language, "page-take-photo")) }
                input.gone #{ "take-" (phase) } type="file" accept="image/*" capture="environment" data-photos="";
                // Where the browser has a camera for pages, its script shows this one.
                button.camera type="button" data-camera="" hidden { (say!(language, "page-live-photo")) }
                label.button for={ "choose-" (phase) } { (say!(language, "page-choose-photos")) span.drop { span.gone { ", " } (say!(language, "page-drop-here")) } }
                input.gone #{ "choose-" (phase) } type="file" accept="image/*,.heic" multiple data-photos="";
            }
            p.here aria-hidden="true" {}
            (viewer(language, view))
        }
    }
}

/// A form that sends photos from a page without script: nothing waits in the
/// phone there while the network is gone.
fn without_script(language: Language, view: &View, phase: &str, steps: &[String]) -> Markup {
    html! {
        p.notice.warn { (say!(language, "page-needs-script")) }
        form.stack method="post" enctype="multipart/form-data" action=(job_path(&view.name, "sent")) {
            input type="hidden" name="phase" value=(phase);
            input type="hidden" name="page" value=(if phase == "after" { "finish" } else { "photos" });
            @if !steps.is_empty() {
                div.field {
                    label for={ "plain-step-" (phase) } { (say!(language, "page-position")) }
                    select #{ "plain-step-" (phase) } name="step" { @for step in steps { option value=(step) { (step) } } }
                }
            }
            div.field {
                label for={ "plain-" (phase) } { (say!(language, "page-choose-photos")) }
                input #{ "plain-" (phase) } type="file" name="photo" accept="image/*,.heic" multiple;
            }
            button.go type="submit" { (say!(language, "page-send-photos")) }
        }
    }
}
