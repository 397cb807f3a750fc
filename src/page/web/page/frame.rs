//! What every page has around it.

use maud::{DOCTYPE, Markup, html};

use crate::web::words::Words;

/// The style sheet with the report's colours.
pub(in crate::web) fn style() -> String {
    format!("{}\n{}", crate::report::colours_css(), include_str!("../assets/page.css"))
}

/// A whole page. `live` is the address of the job's events for the script.
pub(super) fn page(words: &Words, title: &str, job: Option<&str>, body: &Markup) -> Markup {
    html! {
        (DOCTYPE)
        html lang=(words.language) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="color-scheme" content="light dark";
                title { (title) " · " (words.program) }
                link rel="stylesheet" href="/page.css";
                link rel="icon" href="/icon.svg" type="image/svg+xml";
                script src="/page.js" defer {}
            }
            body data-job=[job] data-words=(script_words(words)) {
                a.skip href="#content" { (words.skip) }
                header.bar {
                    a.home href="/" { (mark()) span { (words.all_jobs) } }
                    a.tongue href={ "/language/" (words.other_language) } lang=(words.other_language) hreflang=(words.other_language) {
                        (words.other_language_name)
                    }
                }
                div.queue #queue role="region" aria-label=(words.waiting_here) hidden {}
                p.told #told role="status" aria-live="polite" {}
                p.notice.warn #cut role="status" hidden {}
                main #content tabindex="-1" { (body) }
                footer { p { (words.cautions) } }
            }
        }
    }
}

/// Our sign: a plate seen by two eyes.
fn mark() -> Markup {
    html! {
        svg.mark viewBox="0 0 40 28" aria-hidden="true" focusable="false" {
            path d="M4 24 20 5 36 24" {}
            path.plate d="M11 5H29" {}
            circle cx="4" cy="24" r="3" {}
            circle cx="36" cy="24" r="3" {}
        }
    }
}

/// The strings that the script shows.
fn script_words(words: &Words) -> String {
    serde_json::json!({
        "queued": words.js_queued, "sending": words.js_sending, "kept": words.js_kept, "already": words.js_already,
        "aside": words.js_aside, "refused": words.js_refused, "again": words.js_again, "discard": words.js_discard,
        "ready": words.js_ready, "nostore": words.js_no_store, "other": words.js_other_certificate, "offline": words.js_offline,
    })
    .to_string()
}

/// A message at the head of a page.
pub(super) fn notice(class: &str, text: &str) -> Markup {
    html! { p class={ "notice " (class) } role=[(class == "bad").then_some("alert")] { (text) } }
}

/// What the network may read is said where it may.
pub(super) fn open_network(words: &Words, open: bool) -> Markup {
    html! { @if open { (notice("warn", words.open_network)) } }
}

/// Something typed in a line.
pub(super) struct Line<'a> {
    pub(super) name: &'a str,
    pub(super) label: &'a str,
    pub(super) value: &'a str,
    /// `text` or `decimal`.
    pub(super) mode: &'a str,
    pub(super) hint: Option<&'a str>,
}

/// A labelled field.
pub(super) fn field(line: &Line) -> Markup {
    let hint = line.hint.map(|_| format!("hint-{}", line.name));
    html! {
        div.field {
            label for={ "f-" (line.name) } { (line.label) }
            input #{ "f-" (line.name) } name=(line.name) value=(line.value) inputmode=(line.mode) maxlength="120"
                autocomplete="off" spellcheck="false" aria-describedby=[hint.as_deref()];
            @if let Some(words) = line.hint { p.hint id=[hint.as_deref()] { (words) } }
        }
    }
}

/// A time by the bay's clock.
pub(super) fn moment(at: std::time::SystemTime, offset: time::UtcOffset) -> String {
    let at = time::OffsetDateTime::from(at).to_offset(offset);
    let shape = time::macros::format_description!("[year]-[month]-[day] [hour]:[minute]");
    at.format(shape).unwrap_or_default()
}
