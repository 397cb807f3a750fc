//! Pages for whoever learns: the gallery of mistakes, and a trainee's progress.

mod gallery;
mod progress;

use maud::{DOCTYPE, Markup, PreEscaped, html};

pub use gallery::gallery_html;
pub use progress::{drill_text, progress_html};

use super::clean::clean;
use super::html::{STYLE, palette};
use crate::verdict::findings::explanation;
use crate::words::{Language, say};

/// A finding's name for people; a drill's "none" has one too.
fn title(code: &str, language: Language) -> String {
    match explanation(code) {
        Some(e) => e.title(language),
        None if code == "none" => say!(language, "training-nothing-wrong"),
        None => code.to_owned(),
    }
}

/// A whole page in the reports' style.
fn page(title: &str, style: &str, body: &Markup, language: Language) -> String {
    let markup = html! {
        (DOCTYPE)
        html lang=(language.tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="color-scheme" content="light dark";
                title { (title) }
                style { (PreEscaped(palette::css())) (PreEscaped(STYLE)) (PreEscaped(style)) }
            }
            body { (body) }
        }
    };
    markup.into_string().chars().filter(|c| *c == '\n' || clean(c.encode_utf8(&mut [0; 4])).starts_with(*c)).collect()
}
