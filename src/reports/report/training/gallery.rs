//! The gallery: each finding with the same bay without and with the mistake.

use maud::{Markup, html};

use super::super::figures::{Measured, wanted};
use super::super::html::symbol;
use super::super::label::Label;
use crate::record::{CheckRecord, GalleryEntry, JobRecord, Level};
use crate::verdict::findings::explanation;

const STYLE: &str = ".pair{display:grid;grid-template-columns:1fr 1fr;gap:14px;margin:12px 0}.pair img{width:100%;height:auto;display:block;border:1px solid var(--rule)}\
nav ul{columns:3 240px;list-style:none;padding:0;margin:10px 0}nav li{padding:3px 0}a{color:var(--accent)}.what{display:grid;grid-template-columns:150px 1fr;gap:4px 18px;margin:10px 0}\
.what dt{color:var(--muted)}.what dd{margin:0;max-width:75ch}h2 small{color:var(--muted);font-weight:400;font-size:.85rem}\
@media screen and (max-width:700px){.pair,.what{grid-template-columns:1fr}}";

/// Columns of the figures, which a phone shows before each of them.
const WITHOUT: &str = "Without the mistake";
const WITH: &str = "With it";

/// The page; `right` is the bay without a mistake.
pub fn gallery_html(right: &JobRecord, entries: &[GalleryEntry]) -> String {
    let body = html! {
        h1 { "Gallery of mistakes" }
        p.lede {
            "Each finding of a report, shown in an invented bay: one mistake at a time, the same photo without it and with it, and what the figures say. \
             Everything here is rendered and measured by the program itself."
        }
        nav aria-label="Findings" { ul { @for e in entries { li { a href=(format!("#{}", e.code)) { (title(&e.code)) } } } } }
        main { @for e in entries { (entry(right, e)) } }
        footer {
            p { "The vehicle maker's service information and local rules govern. The gallery teaches what findings look like; it replaces no procedure. The work is for trained people, and lasers and lifted vehicles need their own precautions." }
        }
    };
    super::page("Gallery of mistakes", STYLE, &body)
}

fn title(code: &str) -> String {
    explanation(code).map_or_else(|| code.to_owned(), |e| e.title.to_owned())
}

fn weight(level: Level) -> &'static str {
    match level {
        Level::Void => "the measurement can't be trusted",
        Level::Stop => "nothing is called within tolerance",
        Level::Warn => "worth a look",
        Level::Note => "worth knowing",
    }
}

fn entry(right: &JobRecord, e: &GalleryEntry) -> Markup {
    let known = explanation(&e.code);
    html! {
        section id=(e.code) {
            h2 { (title(&e.code)) " " small { (e.code) @if let Some(k) = known { ": " (weight(k.level)) } } }
            p { b { "In this bay: " } (e.done) }
            @for [without, with] in &e.pictures {
                div.pair {
                    figure { img src=(without) alt=(format!("{}: without the mistake", title(&e.code))) loading="lazy"; figcaption { "As it should be" } }
                    figure { img src=(with) alt=(format!("{}: with the mistake", title(&e.code))) loading="lazy"; figcaption { "With the mistake" } }
                }
            }
            @if let Some(k) = known {
                dl.what {
                    dt { "What it says" } dd { (k.meaning) }
                    dt { "How it comes about" } dd { (k.cause) }
                    dt { "How to see it" } dd { (k.look) }
                    dt { "How to mend it" } dd { (k.remedy) }
                }
            }
            h3 { "How it shows in the figures" }
            p { (symbol::tag(right.verdict, crate::words::Language::English)) " becomes " (symbol::tag(e.record.verdict, crate::words::Language::English)) }
            @for f in e.record.findings.iter().filter(|f| f.code == e.code || e.companions.contains(&f.code)) {
                p { b { (f.code) ": " } (f.message) }
            }
            @if !e.companions.is_empty() { p.aside { "It comes together with " (e.companions.join(", ")) "." } }
            (figures(right, e))
            p { a href=(e.report) { "The whole report of this job" } }
        }
    }
}

/// A check of one record that is the same check in the other.
fn same<'a>(record: &'a JobRecord, check: &CheckRecord) -> Option<&'a CheckRecord> {
    record.checks.iter().find(|c| (&c.quantity, &c.from) == (&check.quantity, &check.from))
}

fn figures(right: &JobRecord, e: &GalleryEntry) -> Markup {
    let shown = |c: &CheckRecord| {
        let label = Label::of_check(c, crate::words::Language::English);
        Measured::of_check(c, label.quantity, crate::words::Language::English)
            .map_or("not determined".to_owned(), |m| m.short())
    };
    html! {
        table.stack {
            thead { tr { @for h in ["Check", "Required", WITHOUT, WITH, "Verdict"] { th scope="col" { (h) } } } }
            tbody { @for c in &e.record.checks {
                @let label = Label::of_check(c, crate::words::Language::English);
                tr {
                    th scope="row" { (label.full()) }
                    td data-k="Required" { (wanted(c, label.quantity, crate::words::Language::English)) }
                    td.num data-k=(WITHOUT) { (same(right, c).map_or("not checked".to_owned(), shown)) }
                    td.num data-k=(WITH) { (shown(c)) }
                    td { (symbol::tag(c.verdict, crate::words::Language::English)) }
                }
            } }
        }
        @let rms = |r: &JobRecord| r.photos.iter().map(|p| p.rms_px.map_or("not used".to_owned(), |v| crate::quantity::rounded(v, 2))).collect::<Vec<_>>().join(", ");
        p.aside { "How well the photos fit together (root mean square, px): " (rms(right)) " without, " (rms(&e.record)) " with it." }
    }
}
