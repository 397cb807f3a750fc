//! One photo with what was found in it, and whether to take it again.

use std::path::Path;

use maud::{Markup, html};

use super::bodies::body_name;
use super::frame::told;
use crate::folder::PhotoEntry;
use crate::record::{FindingRecord, Level, LookedMarker, PhotoLook};
use crate::web::address::{encoded, job_path};
use crate::web::desk::Outcome;
use crate::web::folders::is_after;
use crate::web::view::View;
use crate::words::{Language, say};

/// A listed photo, number `i` from 0; `page` is where its deeds lead back to.
pub(super) fn card(language: Language, view: &View, i: usize, entry: &PhotoEntry, page: &str) -> Markup {
    let look = view.look(&entry.file);
    let remarks = remarks(view, &entry.file, look);
    let poor = remarks.iter().any(|f| f.level != Level::Note) || look.is_some_and(|l| !l.ties_the_stand());
    let title = say!(language, "page-photo-n", n = i + 1);
    html! {
        li.photo.poor[poor] id={ "photo-" (i) } {
            h3 {
                (title)
                @if is_after(entry) { " · " (say!(language, "page-after-photo-tag")) }
                @if let Some(step) = &entry.step { " · " (step) }
            }
            (picture(language, view, entry, look, &title))
            div.said {
                @match look {
                    None if view.standing.working => p.judged.wait { (say!(language, "page-looking")) },
                    None if unreadable(view, &entry.file) => p.judged.bad { span aria-hidden="true" { "↻ " } (say!(language, "page-retake-photo")) },
                    None => {},
                    Some(_) if poor => p.judged.bad { span aria-hidden="true" { "↻ " } (say!(language, "page-retake-photo")) },
                    Some(_) => p.judged.good { span aria-hidden="true" { "✓ " } (say!(language, "page-good-photo")) },
                }
                @if let Some(look) = look { (shown(language, view, look)) }
                @for f in &remarks { p.remark { (told(f.message_phrase.as_ref(), &f.message, language)) } }
                @if !view.closed { (aside_form(language, view, &entry.file, page)) }
            }
        }
    }
}

/// What is wrong with this photo: by itself, and beside the others once they
/// are adjusted; each once.
fn remarks(view: &View, file: &str, look: Option<&PhotoLook>) -> Vec<FindingRecord> {
    let mut all: Vec<FindingRecord> = look.map(|l| l.remarks.clone()).unwrap_or_default();
    let of_record = view.record().into_iter().flat_map(|r| &r.findings);
    for f in of_record.filter(|f| f.photo.as_deref() == Some(file)) {
        if all.iter().all(|known| known.code != f.code) {
            all.push(f.clone());
        }
    }
    all.sort_by_key(|f| f.level);
    all
}

/// Whether this photo is why the job can't be measured.
fn unreadable(view: &View, file: &str) -> bool {
    matches!(&view.standing.outcome, Some(Outcome::Failed(why)) if why.say(Language::English).contains(file))
}

fn shown(language: Language, view: &View, look: &PhotoLook) -> Markup {
    let names: Vec<String> = {
        let some = look.carriers.iter().filter(|c| c.seen > 0);
        some.map(|c| format!("{} ({})", body_name(language, view, &c.name), c.seen)).collect()
    };
    let missing: Vec<String> = look.missing.iter().map(|m| m.id.to_string()).collect();
    html! {
        @if !look.ties_the_stand() { p.remark { (say!(language, "page-no-target")) } }
        p { (say!(language, "page-photo-shows", count = look.seen.len(), names = names)) }
        @if !missing.is_empty() { p { (say!(language, "page-photo-lacks", count = missing.len(), ids = missing)) } }
    }
}

fn picture(language: Language, view: &View, entry: &PhotoEntry, look: Option<&PhotoLook>, title: &str) -> Markup {
    let source = format!("{}?file={}", job_path(&view.name, "picture"), encoded(&entry.file));
    let [width, height] = look.map_or([4.0, 3.0], |l| l.upright_px);
    let described = look.map_or_else(
        || title.to_owned(),
        |l| say!(language, "page-photo-described", photo = title, count = l.seen.len()),
    );
    html! {
        div.picture {
            img src=(source) alt=(described) loading="lazy" decoding="async" width=(width) height=(height);
            @if let Some(look) = look { (drawn(look)) }
        }
    }
}

/// Markers over the picture: found ones ringed, missing ones dashed and crossed
/// out with their number.
fn drawn(look: &PhotoLook) -> Markup {
    let [width, height] = look.upright_px;
    let unit = width.max(height) / 1000.0;
    html! {
        svg.drawn viewBox={ "0 0 " (width) " " (height) } aria-hidden="true" focusable="false" preserveAspectRatio="none" {
            @for class in ["casing", "ring"] { g class=(class) stroke-width=(unit * if class == "casing" { 9.0 } else { 4.0 }) {
                @for m in &look.seen { path d=(outline(m, false)) {} }
            } }
            @for class in ["casing", "lost"] { g class=(class) stroke-width=(unit * if class == "casing" { 10.0 } else { 5.0 }) stroke-dasharray=(14.0 * unit) {
                @for m in &look.missing { path d=(outline(m, true)) {} }
            } }
            @for m in &look.missing {
                @let [u, v] = m.corners_px[0];
                text.number x=(u) y=(v - 10.0 * unit) font-size=(44.0 * unit) stroke-width=(9.0 * unit) { (m.id) }
            }
        }
    }
}

fn outline(marker: &LookedMarker, crossed: bool) -> String {
    let [a, b, c, d] = marker.corners_px.map(|[u, v]| format!("{u:.1} {v:.1}"));
    let cross = if crossed { format!("M{a}L{c}M{b}L{d}") } else { String::new() };
    format!("M{a}L{b}L{c}L{d}Z{cross}")
}

fn aside_form(language: Language, view: &View, file: &str, page: &str) -> Markup {
    html! {
        form.inline method="post" action=(job_path(&view.name, "aside")) {
            input type="hidden" name="file" value=(file);
            input type="hidden" name="page" value=(page);
            button type="submit" { (say!(language, "page-set-aside")) span.gone { (say!(language, "page-colon")) " " (name_of(file)) } }
        }
    }
}

/// The photos that were set aside.
pub(super) fn aside_list(language: Language, view: &View) -> Markup {
    if view.aside.is_empty() {
        return html! {};
    }
    html! {
        details.aside {
            summary { (say!(language, "page-aside-photos")) " (" (view.aside.len()) ")" }
            ul.photos {
                @for name in &view.aside {
                    li.photo {
                        div.picture {
                            img src={ (job_path(&view.name, "picture")) "?file=" (encoded(&format!("aside/{name}"))) } alt=(name) loading="lazy" width="4" height="3";
                        }
                        @if !view.closed {
                            form.inline method="post" action=(job_path(&view.name, "back")) {
                                input type="hidden" name="file" value=(name);
                                button type="submit" { (say!(language, "page-bring-back")) span.gone { (say!(language, "page-colon")) " " (name) } }
                            }
                        }
                    }
                }
            }
        }
    }
}

fn name_of(file: &str) -> String {
    Path::new(file).file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default()
}
