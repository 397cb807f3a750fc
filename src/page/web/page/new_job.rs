//! The form of a new job.

use maud::{Markup, html};

use super::frame::{Line, field, notice, page as frame};
use crate::web::answer::encoded;
use crate::web::app::App;
use crate::web::forms::Fields;
use crate::web::trouble::Trouble;
use crate::web::words::Words;

/// The page, with what was typed and what is wrong with it.
pub(in crate::web) fn page(
    words: &Words,
    app: &App,
    sheet: &str,
    fields: &Fields,
    wrong: Option<&str>,
) -> Result<Markup, Trouble> {
    let shelved = app.library.now();
    let setup = shelved.sheet(sheet).ok_or_else(|| Trouble::not_found("this set-up sheet"))?;
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
    let line = |name, label, value: &str, hint| field(&Line { name, label, value, mode: "text", hint });
    let body = html! {
        h1 { (words.new_job) }
        p.lede { (setup.title) " · " a href="/new" { (words.other_sheet) } }
        @if let Some(wrong) = wrong { div lang="en" { (notice("bad", wrong)) } }
        @if kits.is_empty() { (notice("bad", words.no_kit)) } @else {
            form.stack method="post" action={ "/new/" (encoded(sheet)) } {
                (line("description", words.vehicle_description, &typed("description"), None))
                (line("vin", words.vin, &typed("vin"), Some(words.optional)))
                (line("series", words.repair_order, &typed("series"), Some(words.optional)))
                div.pair {
                    (line("technician", words.technician, &technician, Some(words.optional)))
                    (line("bay", words.bay, &bay, Some(words.optional)))
                }
                div.field {
                    label for="f-kit" { (words.kit) }
                    select #f-kit name="kit" { @for k in &kits { option value=(k) selected[*k == kit] { (k) } } }
                }
                div.field {
                    label for="f-camera" { (words.camera) }
                    select #f-camera name="camera" {
                        option value="" { (words.camera_by_photo) }
                        @for (name, _) in &shelved.cameras { option value=(name) selected[*name == camera] { (name) } }
                    }
                }
                button.go type="submit" { (words.start_job) }
            }
        }
    };
    Ok(frame(words, words.new_job, None, &body))
}
