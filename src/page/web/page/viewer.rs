//! The camera in the page: its script fills it.

use maud::{Markup, html};

use crate::web::address::job_path;
use crate::web::view::View;
use crate::words::{Language, say};

/// The live picture with what is seen in it; hidden until it is opened.
pub(super) fn viewer(language: Language, view: &View) -> Markup {
    let named = view.job.camera.is_some();
    html! {
        dialog.viewer aria-label=(say!(language, "page-live-photo")) data-glance=(job_path(&view.name, "glance")) data-words=(said(language, named)) {
            div.scene {
                video playsinline muted {}
                svg.drawn aria-hidden="true" focusable="false" { g.casing {} g.ring {} path.horizon {} }
            }
            p.seen role="status" { (say!(language, "page-live-wait")) }
            p.level.hint {}
            p.taken role="status" {}
            div.deeds {
                button.go.camera type="button" data-take="" { (say!(language, "page-live-take")) }
                // Its script shows it once there are first photos.
                button.tripod type="button" data-tripod="" aria-describedby="tripod-why" hidden { (say!(language, "page-tripod-start")) }
                button type="button" data-shut="" { (say!(language, "page-live-close")) }
            }
            p.hint #tripod-why hidden { (say!(language, "page-tripod-why")) }
        }
        script src="/camera.js" defer {}
    }
}

/// The strings that its script shows; it fills in `{0}` and `{1}`.
fn said(language: Language, named: bool) -> String {
    serde_json::json!({
        "wait": say!(language, "page-live-wait"),
        "seen": say!(language, "page-live-seen", count = "{0}", names = "{1}"),
        "none": say!(language, "page-live-none"),
        "ties": say!(language, "page-live-ties"),
        "apart": say!(language, "page-live-apart"),
        "away": say!(language, "page-live-away"),
        "level": say!(language, "page-live-level", turned = "{0}", down = "{1}"),
        "refused": say!(language, "page-live-refused", why = "{0}"),
        "tripod": say!(language, "page-tripod-start"),
        "untripod": say!(language, "page-tripod-stop"),
        "says": say!(language, "page-tripod-says", said = "{0}"),
        "taken": say!(language, "page-live-taken", width = "{0}", height = "{1}"),
        "frame": say!(language, "page-live-frame"),
        "norecord": say!(language, "page-live-no-record"),
        "unnamed": if named { String::new() } else { say!(language, "page-live-unnamed") },
    })
    .to_string()
}
