//! The gallery: each finding with the same bay without and with the mistake.

use maud::{Markup, html};

use super::super::figures::{Measured, wanted};
use super::super::html::symbol;
use super::super::label::Label;
use crate::record::{CheckRecord, GalleryEntry, JobRecord, Level, told};
use crate::verdict::findings::explanation;
use crate::words::{Figure, Language, Value, say};

const STYLE: &str = ".pair{display:grid;grid-template-columns:1fr 1fr;gap:14px;margin:12px 0}.pair img{width:100%;height:auto;display:block;border:1px solid var(--rule)}\
nav ul{columns:3 240px;list-style:none;padding:0;margin:10px 0}nav li{padding:3px 0}a{color:var(--accent)}.what{display:grid;grid-template-columns:150px 1fr;gap:4px 18px;margin:10px 0}\
.what dt{color:var(--muted)}.what dd{margin:0;max-width:75ch}h2 small{color:var(--muted);font-weight:400;font-size:.85rem}\
@media screen and (max-width:700px){.pair,.what{grid-template-columns:1fr}}";

/// The page; `right` is the bay without a mistake.
pub fn gallery_html(right: &JobRecord, entries: &[GalleryEntry], language: Language) -> String {
    let title = say!(language, "training-gallery");
    let body = html! {
        h1 { (title) }
        p.lede { (say!(language, "training-gallery-lede")) }
        nav aria-label=(say!(language, "training-findings")) {
            ul { @for e in entries { li { a href=(format!("#{}", e.code)) { (super::title(&e.code, language)) } } } }
        }
        main { @for e in entries { (entry(right, e, language)) } }
        footer { p { (say!(language, "training-gallery-caution")) } }
    };
    super::page(&title, STYLE, &body, language)
}

fn weight(level: Level, language: Language) -> String {
    match level {
        Level::Void => say!(language, "training-void"),
        Level::Stop => say!(language, "training-stop"),
        Level::Warn => say!(language, "training-warn"),
        Level::Note => say!(language, "training-note"),
    }
}

fn entry(right: &JobRecord, e: &GalleryEntry, language: Language) -> Markup {
    let known = explanation(&e.code);
    let title = super::title(&e.code, language);
    html! {
        section id=(e.code) {
            h2 { (title) " " small { (e.code) @if let Some(k) = known { ": " (weight(k.level, language)) } } }
            @if let Some(k) = known { p { b { (say!(language, "training-in-this-bay")) " " } (k.scene(language)) } }
            @for [without, with] in &e.pictures {
                div.pair {
                    figure {
                        img src=(without) alt=(say!(language, "training-alt-without", title = &title)) loading="lazy";
                        figcaption { (say!(language, "training-as-it-should-be")) }
                    }
                    figure {
                        img src=(with) alt=(say!(language, "training-alt-with", title = &title)) loading="lazy";
                        figcaption { (say!(language, "training-with-the-mistake")) }
                    }
                }
            }
            @if let Some(k) = known {
                dl.what {
                    dt { (say!(language, "training-what-it-says")) } dd { (k.meaning(language)) }
                    dt { (say!(language, "training-how-it-comes-about")) } dd { (k.cause(language)) }
                    dt { (say!(language, "training-how-to-see-it")) } dd { (k.look(language)) }
                    dt { (say!(language, "training-how-to-mend-it")) } dd { (k.remedy(language)) }
                }
            }
            h3 { (say!(language, "training-in-the-figures")) }
            p { (symbol::tag(right.verdict, language)) " → " (symbol::tag(e.record.verdict, language)) }
            @for f in e.record.findings.iter().filter(|f| f.code == e.code || e.companions.contains(&f.code)) {
                p { b { (f.code) ": " } (told(f.message_phrase.as_ref(), &f.message, language)) }
            }
            @if !e.companions.is_empty() {
                p.aside { (say!(language, "training-companions", codes = Value::from(e.companions.clone()))) }
            }
            (figures(right, e, language))
            p { a href=(e.report) { (say!(language, "training-whole-report")) } }
        }
    }
}

/// A check of one record that is the same check in the other.
fn same<'a>(record: &'a JobRecord, check: &CheckRecord) -> Option<&'a CheckRecord> {
    record.checks.iter().find(|c| (&c.quantity, &c.from) == (&check.quantity, &check.from))
}

fn figures(right: &JobRecord, e: &GalleryEntry, language: Language) -> Markup {
    let shown = |c: &CheckRecord| {
        let label = Label::of_check(c, language);
        Measured::of_check(c, label.quantity, language)
            .map_or_else(|| say!(language, "training-not-determined"), |m| m.short())
    };
    // Columns of the figures, which a phone shows in front of each of them.
    let columns = [
        say!(language, "training-check"),
        say!(language, "training-required"),
        say!(language, "training-without"),
        say!(language, "training-with"),
        say!(language, "training-verdict"),
    ];
    html! {
        table.stack {
            thead { tr { @for h in &columns { th scope="col" { (h) } } } }
            tbody { @for c in &e.record.checks {
                @let label = Label::of_check(c, language);
                tr {
                    th scope="row" { (label.full()) }
                    td data-k=(columns[1]) { (wanted(c, label.quantity, language)) }
                    td.num data-k=(columns[2]) { (same(right, c).map_or_else(|| say!(language, "training-not-checked"), shown)) }
                    td.num data-k=(columns[3]) { (shown(c)) }
                    td { (symbol::tag(c.verdict, language)) }
                }
            } }
        }
        p.aside { (say!(language, "training-misfit", without = misfits(right, language), with = misfits(&e.record, language))) }
    }
}

/// Root mean square of each photo, px.
fn misfits(record: &JobRecord, language: Language) -> String {
    let of = |rms: Option<f64>| match rms {
        Some(v) => Figure::fixed(v, 2).say(language),
        None => say!(language, "training-not-used"),
    };
    // Decimals may have commas.
    record.photos.iter().map(|p| of(p.rms_px)).collect::<Vec<_>>().join("; ")
}
