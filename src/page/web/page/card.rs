//! The job's one-time card, for a second screen.

use maud::{Markup, html};

use super::frame::page as frame;
use crate::web::address::job_path;
use crate::web::draw::code;
use crate::web::view::View;
use crate::words::{Language, say};

/// The page that shows the card.
pub(in crate::web) fn page(language: Language, view: &View) -> Markup {
    let body = html! {
        h1 { (say!(language, "page-card-title")) }
        p { (say!(language, "page-card-code", code = ids(view))) }
        div.cardcode {
            @for id in &view.job.card {
                figure { (code::marker(*id, &say!(language, "page-card-marker", id = id.to_string()))) figcaption { (id) } }
            }
        }
        p { a.button href=(job_path(&view.name, "photos")) { (say!(language, "page-back-to-photos")) } }
    };
    frame(language, &say!(language, "page-card-title"), None, &body)
}

/// The part of the photos' page: the job's code, or the offer of one.
pub(super) fn section(language: Language, view: &View) -> Markup {
    html! {
        section aria-labelledby="card" {
            h2 #card { (say!(language, "page-card-title")) }
            p.hint { (say!(language, "page-card-why")) }
            @if view.job.card.is_empty() {
                form.inline method="post" action=(job_path(&view.name, "card")) { button type="submit" { (say!(language, "page-card-make")) } }
            } @else {
                p { (say!(language, "page-card-code", code = ids(view))) }
                p { a.button href=(job_path(&view.name, "card")) { (say!(language, "page-card-show")) } }
            }
        }
    }
}

fn ids(view: &View) -> String {
    view.job.card.iter().map(u32::to_string).collect::<Vec<_>>().join(" · ")
}
