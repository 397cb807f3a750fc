//! Choosing a set-up sheet.

use maud::{Markup, html};

use super::frame::{notice, page as frame};
use crate::setup::Setup;
use crate::web::answer::encoded;
use crate::web::library::Shelved;
use crate::web::words::{Words, fill};

/// So many of the lately used.
const LATELY: usize = 4;

/// The page; `recent` are names from the latest jobs, repeated.
pub(in crate::web) fn page(words: &Words, shelved: &Shelved, q: &str, recent: &[String]) -> Markup {
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
        h1 { (words.choose_sheet) }
        form.search method="get" action="/new" role="search" {
            label for="q" { (words.search_sheets) }
            div.row {
                input #q name="q" type="search" value=(q) maxlength="120" autocomplete="off";
                button type="submit" { (words.search) }
            }
        }
        @if !lately.is_empty() {
            h2 { (words.used_lately) }
            (list(words, lately.iter().copied()))
        }
        @if found.is_empty() { (notice("plain", words.no_sheet)) }
        @else {
            h2 { (words.every_sheet) }
            (list(words, found.iter().copied().filter(|(n, _)| !lately.iter().any(|(l, _)| l == n))))
        }
    };
    let body = html! { (body) p { a.button href="/new-sheet" { (words.new_sheet) } } };
    frame(words, words.choose_sheet, None, &body)
}

fn list<'a>(words: &Words, sheets: impl Iterator<Item = &'a (String, Setup)>) -> Markup {
    html! {
        ul.jobs {
            @for (name, sheet) in sheets {
                li {
                    a.job href={ "/new/" (encoded(name)) } {
                        span.title { (sheet.title) }
                        span.more { (name) " · " (fill(words.checks_n, &[&sheet.checks.len().to_string()])) }
                        span.more { (words.source_says) " " (sheet.source) }
                    }
                }
            }
        }
    }
}
