//! The photos and what they prove.

use maud::{Markup, html};

use super::card::section as card_section;
use super::job_head::{self, Step};
use super::photo_card::{aside_list, card};
use super::viewer::viewer;
use super::{stations, verdict};
use crate::web::answer::job_path;
use crate::web::view::View;
use crate::web::words::Words;

/// The page.
pub(in crate::web) fn page(words: &Words, view: &View) -> Markup {
    let body = html! {
        @if !view.closed { (senders(words, view, "before")) }
        // Where to stand comes first while there is no photo.
        @if view.photos.is_empty() { (stations::section(words, view)) (live(words, view)) }
        @else { (live(words, view)) (stations::section(words, view)) }
        @if !view.closed { (card_section(words, view)) }
    };
    job_head::page(words, view, Step::Photos, &body)
}

/// What the script draws anew when something happens.
pub(in crate::web) fn live(words: &Words, view: &View) -> Markup {
    html! {
        div #live data-part="photos" data-working=[view.standing.working.then_some("yes")] {
            (verdict::card(words, view))
            section aria-labelledby="photos" {
                h2 #photos { (words.photos) }
                @if view.photos.is_empty() { p { (words.no_photos) } }
                @else {
                    p.key aria-hidden="true" { span.k-seen {} " " (words.seen_key) " " span.k-gone {} " " (words.missing_key) }
                    ul.photos { @for (i, entry) in view.photos.iter().enumerate() { (card(words, view, i, entry, "photos")) } }
                }
                (aside_list(words, view))
            }
        }
    }
}

/// What sends photos; the script fills in the rest.
pub(super) fn senders(words: &Words, view: &View, phase: &str) -> Markup {
    let steps = view.named.as_ref().map(|n| n.setup.steps.as_slice()).unwrap_or_default();
    html! {
        section.senders aria-label=(words.take_photo) data-send={ (job_path(&view.name, "photos")) "?phase=" (phase) } {
            noscript { (without_script(words, view, phase, steps)) }
            @if !steps.is_empty() {
                div.field {
                    label for="step" { (words.position) }
                    select #step data-step="" { @for step in steps { option value=(step) { (step) } } }
                }
            }
            div.deeds.scripted hidden {
                label.button.go.camera for={ "take-" (phase) } { (words.take_photo) }
                input.gone #{ "take-" (phase) } type="file" accept="image/*" capture="environment" data-photos="";
                // Where the browser has a camera for pages, its script shows this one.
                button.camera type="button" data-camera="" hidden { (words.live_photo) }
                label.button for={ "choose-" (phase) } { (words.choose_photos) span.drop { " " (words.drop_here) } }
                input.gone #{ "choose-" (phase) } type="file" accept="image/*,.heic" multiple data-photos="";
            }
            p.here aria-hidden="true" {}
            (viewer(words, view))
        }
    }
}

/// A form that sends photos from a page without script: nothing waits in the
/// phone there while the network is gone.
fn without_script(words: &Words, view: &View, phase: &str, steps: &[String]) -> Markup {
    html! {
        p.notice.warn { (words.needs_script) }
        form.stack method="post" enctype="multipart/form-data" action=(job_path(&view.name, "sent")) {
            input type="hidden" name="phase" value=(phase);
            input type="hidden" name="page" value=(if phase == "after" { "finish" } else { "photos" });
            @if !steps.is_empty() {
                div.field {
                    label for={ "plain-step-" (phase) } { (words.position) }
                    select #{ "plain-step-" (phase) } name="step" { @for step in steps { option value=(step) { (step) } } }
                }
            }
            div.field {
                label for={ "plain-" (phase) } { (words.choose_photos) }
                input #{ "plain-" (phase) } type="file" name="photo" accept="image/*,.heic" multiple;
            }
            button.go type="submit" { (words.send_photos) }
        }
    }
}
