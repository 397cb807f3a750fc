//! The camera in the page: its script fills it.

use maud::{Markup, html};

use crate::web::answer::job_path;
use crate::web::view::View;
use crate::web::words::Words;

/// The live picture with what is seen in it; hidden until it is opened.
pub(super) fn viewer(words: &Words, view: &View) -> Markup {
    let named = view.job.camera.is_some();
    html! {
        dialog.viewer aria-label=(words.live_photo) data-glance=(job_path(&view.name, "glance")) data-words=(said(words, named)) {
            div.scene {
                video playsinline muted {}
                svg.drawn aria-hidden="true" focusable="false" { g.casing {} g.ring {} path.horizon {} }
            }
            p.seen role="status" { (words.live_wait) }
            p.level.hint {}
            p.taken role="status" {}
            div.deeds {
                button.go.camera type="button" data-take="" { (words.live_take) }
                button type="button" data-shut="" { (words.live_close) }
            }
        }
        script src="/camera.js" defer {}
    }
}

/// The strings that its script shows.
fn said(words: &Words, named: bool) -> String {
    serde_json::json!({
        "wait": words.live_wait, "seen": words.live_seen, "none": words.live_none, "ties": words.live_ties,
        "apart": words.live_apart, "away": words.live_away, "level": words.live_level, "refused": words.live_refused,
        "taken": words.live_taken, "frame": words.live_frame, "norecord": words.live_no_record,
        "unnamed": if named { "" } else { words.live_unnamed },
    })
    .to_string()
}
