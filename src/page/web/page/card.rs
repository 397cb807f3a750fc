//! The job's one-time card, for a second screen.

use maud::{Markup, html};

use super::frame::page as frame;
use crate::web::answer::job_path;
use crate::web::draw::code;
use crate::web::view::View;
use crate::web::words::{Words, fill};

/// The page that shows the card.
pub(in crate::web) fn page(words: &Words, view: &View) -> Markup {
    let body = html! {
        h1 { (words.card_title) }
        p { (fill(words.card_code, &[&ids(view)])) }
        div.cardcode {
            @for id in &view.job.card {
                figure { (code::marker(*id, &fill(words.card_marker, &[&id.to_string()]))) figcaption { (id) } }
            }
        }
        p { a.button href=(job_path(&view.name, "photos")) { (words.back_to_photos) } }
    };
    frame(words, words.card_title, None, &body)
}

/// The part of the photos' page: the job's code, or the offer of one.
pub(super) fn section(words: &Words, view: &View) -> Markup {
    html! {
        section aria-labelledby="card" {
            h2 #card { (words.card_title) }
            p.hint { (words.card_why) }
            @if view.job.card.is_empty() {
                form.inline method="post" action=(job_path(&view.name, "card")) { button type="submit" { (words.card_make) } }
            } @else {
                p { (fill(words.card_code, &[&ids(view)])) }
                p { a.button href=(job_path(&view.name, "card")) { (words.card_show) } }
            }
        }
    }
}

fn ids(view: &View) -> String {
    view.job.card.iter().map(u32::to_string).collect::<Vec<_>>().join(" · ")
}
