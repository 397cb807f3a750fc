//! The form of a new job.

use maud::{Markup, html};

use super::frame::{self, Line, field, notice};
use crate::web::address::encoded;
use crate::web::app::App;
use crate::web::forms::Fields;
use crate::web::trouble::Trouble;
use crate::words::{Language, Value, say};

/// The page, with what was typed and what is wrong with it.
pub(in crate::web) fn page(
    language: Language,
    app: &App,
    sheet: &str,
    fields: &Fields,
    wrong: Option<&Value>,
) -> Result<Markup, Trouble> {
    let shelved = app.library.now();
    let setup = shelved.sheet(sheet).ok_or_else(|| Trouble::not_found("sheet"))?;
    let kits: Vec<&str> = shelved.kits_for(setup).collect();
    let last = app.shelf.latest(1, |e| e.job.is_ok()).pop().and_then(|e| e.job.ok());
    let same_sheet = app.shelf.latest(1, |e| e.job.as_ref().is_ok_and(|j| j.setup == sheet)).pop();
    let last_kit = same_sheet.and_then(|e| e.job.ok()).map(|j| j.kit);
    let typed = |name: &str| fields.get(name).unwrap_or_default().to_owned();
    // Who and where is the same as a moment ago, as a rule.
    let or_last = |name: &str, last: Option<String>| fields.get(name).map(str::to_owned).or(last).unwrap_or_default();
    let technician = or_last("technician", last.as_ref().and_then(|j| j.technician.clone()));
    let bay = or_last("bay", last.as_ref().and_then(|j| j.bay.clone()));
    let kit = or_last("kit", last_kit.or_else(|| kits.first().map(|k| (*k).to_owned())));
    let camera = or_last("camera", last.and_then(|j| j.camera));
    let line = |name, label: String, value: &str, hint| field(&Line { name, label, value, mode: "text", hint });
    let optional = || Some(say!(language, "page-optional"));
    let body = html! {
        h1 { (say!(language, "page-new-job")) }
        p.lede { (setup.title) " · " a href="/new" { (say!(language, "page-other-sheet")) } }
        @if let Some(wrong) = wrong { (notice("bad", frame::why(wrong, language))) }
        @if kits.is_empty() { (notice("bad", say!(language, "page-no-kit"))) } @else {
            form.stack method="post" action={ "/new/" (encoded(sheet)) } {
                (line("description", say!(language, "page-vehicle-description"), &typed("description"), None))
                (line("vin", say!(language, "page-vin"), &typed("vin"), optional()))
                (line("series", say!(language, "page-repair-order"), &typed("series"), optional()))
                div.pair {
                    (line("technician", say!(language, "page-technician"), &technician, optional()))
                    (line("bay", say!(language, "page-bay"), &bay, optional()))
                }
                div.field {
                    label for="f-kit" { (say!(language, "page-kit")) }
                    select #f-kit name="kit" { @for k in &kits { option value=(k) selected[*k == kit] { (k) } } }
                }
                div.field {
                    label for="f-camera" { (say!(language, "page-camera")) }
                    select #f-camera name="camera" {
                        option value="" { (say!(language, "page-camera-by-photo")) }
                        @for (name, _) in &shelved.cameras { option value=(name) selected[*name == camera] { (name) } }
                    }
                }
                button.go type="submit" { (say!(language, "page-start-job")) }
            }
        }
    };
    Ok(frame::page(language, &say!(language, "page-new-job"), None, &body))
}
