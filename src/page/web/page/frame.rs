//! What every page has around it.

use maud::{DOCTYPE, Markup, Render, html};

use crate::record;
use crate::words::{Language, Phrase, Value, kept_together, phrase, say};

/// The program's name, in every language.
const PROGRAM: &str = "baywitness";

/// The style sheet with the report's colours.
pub(in crate::web) fn style() -> String {
    format!("{}\n{}", crate::report::colours_css(), include_str!("../assets/page.css"))
}

/// A whole page. `live` is the address of the job's events for the script.
pub(super) fn page(language: Language, title: &str, job: Option<&str>, body: &Markup) -> Markup {
    html! {
        (DOCTYPE)
        html lang=(language.tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="color-scheme" content="light dark";
                title { (title) " · " (PROGRAM) }
                link rel="stylesheet" href="/page.css";
                link rel="icon" href="/icon.svg" type="image/svg+xml";
                script src="/page.js" defer {}
            }
            body data-job=[job] data-words=(script_words(language)) {
                a.skip href="#content" { (say!(language, "page-skip")) }
                header.bar {
                    a.home href="/" { (mark()) span { (say!(language, "page-all-jobs")) } }
                    (tongues(language))
                }
                div.queue #queue role="region" aria-label=(say!(language, "page-waiting-here")) hidden {}
                p.told #told role="status" aria-live="polite" {}
                p.notice.warn #cut role="status" hidden {}
                main #content tabindex="-1" { (body) }
                footer {
                    p { (say!(language, "page-cautions")) }
                    @if !language.is_proofread() { p { (say!(language, "page-not-proofread")) } }
                }
            }
        }
    }
}

/// The languages by their own names; who has read one is said in it.
fn tongues(language: Language) -> Markup {
    html! {
        details.tongues {
            summary.tongue { (language.own_name()) }
            ul aria-label=(say!(language, "page-languages")) {
                @for one in Language::ALL {
                    li {
                        a href={ "/language/" (one.tag()) } lang=(one.tag()) hreflang=(one.tag()) aria-current=[(one == language).then_some("true")] {
                            (one.own_name())
                            @if !one.is_proofread() { small { (say!(one, "page-not-proofread")) } }
                        }
                    }
                }
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

/// The strings that the script shows; it fills in `{0}` and `{1}`.
fn script_words(language: Language) -> String {
    serde_json::json!({
        "queued": say!(language, "page-js-queued", count = "{0}"),
        "sending": say!(language, "page-js-sending", name = "{0}"),
        "kept": say!(language, "page-js-kept", name = "{0}"),
        "already": say!(language, "page-js-already", name = "{0}"),
        "aside": say!(language, "page-js-aside", name = "{0}"),
        "refused": say!(language, "page-js-refused", name = "{0}", why = "{1}"),
        "again": say!(language, "page-js-again"),
        "discard": say!(language, "page-js-discard"),
        "ready": say!(language, "page-js-ready"),
        "nostore": say!(language, "page-js-no-store"),
        "other": say!(language, "page-js-other-certificate"),
        "offline": say!(language, "page-js-offline"),
    })
    .to_string()
}

/// A record's text in the page's language; marked as English where the record has no phrase for it.
pub(super) fn told(phrase: Option<&Phrase>, sentence: &str, language: Language) -> Markup {
    let foreign = phrase.is_none() && language != Language::English;
    html! { span lang=[foreign.then_some("en")] { (kept_together(&record::told(phrase, sentence, language))) } }
}

/// What another room says of why something is not done: its phrase, else its English words.
pub(super) fn why(value: &Value, language: Language) -> Markup {
    let foreign = matches!(value, Value::Text(_)) && language != Language::English;
    html! { span lang=[foreign.then_some("en")] { (value.say(language)) } }
}

/// A unit's symbol beside a number.
pub(super) fn unit(symbol: &str, language: Language) -> String {
    say!(language, "page-unit", unit = symbol)
}

/// A message at the head of a page.
pub(super) fn notice(class: &str, text: impl Render) -> Markup {
    html! { p class={ "notice " (class) } role=[(class == "bad").then_some("alert")] { (text) } }
}

/// What the network may read is said where it may.
pub(super) fn open_network(language: Language, open: bool) -> Markup {
    html! { @if open { (notice("warn", say!(language, "page-open-network"))) } }
}

/// Something typed in a line.
pub(super) struct Line<'a> {
    pub(super) name: &'a str,
    pub(super) label: String,
    pub(super) value: &'a str,
    /// `text` or `decimal`.
    pub(super) mode: &'a str,
    pub(super) hint: Option<String>,
}

/// A labelled field.
pub(super) fn field(line: &Line) -> Markup {
    let hint = line.hint.as_ref().map(|_| format!("hint-{}", line.name));
    html! {
        div.field {
            label for={ "f-" (line.name) } { (line.label) }
            input #{ "f-" (line.name) } name=(line.name) value=(line.value) inputmode=(line.mode) maxlength="120"
                autocomplete="off" spellcheck="false" aria-describedby=[hint.as_deref()];
            @if let Some(text) = &line.hint { p.hint id=[hint.as_deref()] { (text) } }
        }
    }
}

/// A time by the bay's clock, which needs no offset there.
pub(super) fn moment(at: std::time::SystemTime, offset: time::UtcOffset) -> Value {
    let at = time::OffsetDateTime::from(at).to_offset(offset);
    let clock = time::macros::format_description!("[hour]:[minute]");
    let (day, clock) = (Value::moment(at.date().to_string()), at.format(clock).unwrap_or_default());
    phrase!("page-moment", day = day, clock = clock).into()
}
