//! Choosing a set-up sheet.

use maud::{Markup, html};

use super::frame::{notice, page as frame};
use crate::setup::Setup;
use crate::web::address::encoded;
use crate::web::folders::Shelved;
use crate::words::{Language, say};

/// So many of the lately used.
const LATELY: usize = 4;

/// The page; `recent` are names from the latest jobs, repeated.
pub(in crate::web) fn page(language: Language, shelved: &Shelved, q: &str, recent: &[String]) -> Markup {
    let asked: Vec<String> = q.to_lowercase().split_whitespace().map(str::to_owned).collect();
    let holds = |name: &str, sheet: &Setup| {
        let text = format!("{name} {} {}", sheet.title, sheet.source).to_lowercase();
        asked.iter().all(|w| text.contains(w.as_str()))
    };
    let found: Vec<&(String, Setup)> = shelved.sheets.iter().filter(|(n, s)| holds(n, s)).collect();
    let mut lately: Vec<&(String, Setup)> = Vec::new();
    for name in recent {
        if let Some(one) = found.iter().find(|(n, _)| n == name)
            && !lately.iter().any(|(n, _)| n == name)
        {
            lately.push(one);
        }
    }
    lately.truncate(LATELY);
    let body = html! {
        h1 { (say!(language, "page-choose-sheet")) }
        form.search method="get" action="/new" role="search" {
            label for="q" { (say!(language, "page-search-sheets")) }
            div.row {
                input #q name="q" type="search" value=(q) maxlength="120" autocomplete="off";
                button type="submit" { (say!(language, "page-search")) }
            }
        }
        @if !lately.is_empty() {
            h2 { (say!(language, "page-used-lately")) }
            (list(language, lately.iter().copied()))
        }
        @if found.is_empty() { (notice("plain", say!(language, "page-no-sheet"))) }
        @else {
            h2 { (say!(language, "page-every-sheet")) }
            (list(language, found.iter().copied().filter(|(n, _)| !lately.iter().any(|(l, _)| l == n))))
        }
    };
    let body = html! { (body) p { a.button href="/new-sheet" { (say!(language, "page-new-sheet")) } } };
    frame(language, &say!(language, "page-choose-sheet"), None, &body)
}

fn list<'a>(language: Language, sheets: impl Iterator<Item = &'a (String, Setup)>) -> Markup {
    html! {
        ul.jobs {
            @for (name, sheet) in sheets {
                li {
                    a.job href={ "/new/" (encoded(name)) } {
                        span.title { (sheet.title) }
                        span.more { (name) " · " (say!(language, "page-checks-n", count = sheet.checks.len())) }
                        span.more { (say!(language, "page-source-says")) " " (sheet.source) }
                    }
                }
            }
        }
    }
}
