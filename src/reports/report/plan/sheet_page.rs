//! A set-up sheet explained: words and a page with its drawing.

use maud::{DOCTYPE, Markup, PreEscaped, html};

use super::drawing::figure;
use super::page::STYLE;
use super::words::{advice, least_words, name, noise, worth};
use crate::quantity::Quantity;
use crate::record::{PlanRecord, SetupCheckRecord, told};
use crate::words::{Language, Phrase, say};

/// The explanation for the terminal.
pub fn setup_text(sheet: &SetupCheckRecord, language: Language) -> String {
    let mut text = format!("{}\n{}\n", sheet.title, sheet.source);
    let mut list = |head: String, items: &[String]| {
        if !items.is_empty() {
            text.push_str(&format!("\n{head}:\n"));
        }
        for item in items {
            text.push_str(&format!("  - {item}\n"));
        }
    };
    list(say!(language, "plan-sheet-asks"), &all_told(&sheet.words_phrases, &sheet.words, language));
    list(say!(language, "plan-sheet-open"), &not_checked(sheet, language));
    list(
        say!(language, "plan-sheet-contradictions"),
        &all_told(&sheet.contradictions_phrases, &sheet.contradictions, language),
    );
    list(say!(language, "plan-sheet-questions"), &all_told(&sheet.questions_phrases, &sheet.questions, language));
    for kit in &sheet.kits {
        text.push_str(&format!(
            "\n{}\n  {}\n",
            say!(language, "plan-sheet-kit", kit = &kit.kit),
            photos(kit, language)
        ));
        if let Some(noise) = noise(kit) {
            text.push_str(&format!("  {}\n", noise.say(language)));
        }
        for (i, p) in kit.predicted.iter().enumerate() {
            let least = kit.least_photos.get(i).map_or(String::new(), |l| format!("; {}", least_words(p, l, language)));
            text.push_str(&format!("  {:<44} {}{least}\n", name(p, language), worth(p, language)));
        }
    }
    if sheet.kits.is_empty() {
        text.push_str(&format!("\n{}\n", say!(language, "plan-sheet-no-kit")));
    }
    text
}

/// Sentences of the record in a language.
fn all_told(phrases: &[Phrase], sentences: &[String], language: Language) -> Vec<String> {
    sentences.iter().enumerate().map(|(i, s)| told(phrases.get(i), s, language)).collect()
}

/// What the record names by the quantities' English words.
fn not_checked(sheet: &SetupCheckRecord, language: Language) -> Vec<String> {
    let one = |words: &String| {
        let known = Quantity::ALL.iter().find(|q| q.trade_name() == *words);
        known.map_or_else(|| words.clone(), |q| q.phrase().say(language))
    };
    sheet.not_checked.iter().map(one).collect()
}

fn photos(kit: &PlanRecord, language: Language) -> String {
    let decided = if kit.predicted.iter().all(|p| p.can_decide) { "all" } else { "some" };
    let each = if kit.steps.len() > 1 { "step" } else { "once" };
    say!(language, "plan-sheet-photos", count = kit.stations.len(), each = each, decided = decided)
}

/// The explanation as one page.
pub fn setup_html(sheet: &SetupCheckRecord, language: Language) -> String {
    let title = say!(language, "plan-sheet-title", sheet = &sheet.title);
    html! {
        (DOCTYPE)
        html lang=(language.tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { (title) }
                style { (PreEscaped(STYLE)) }
            }
            body {
                main {
                    h1 { (title) }
                    p.aside { (sheet.source) }
                    @if let Some(kit) = sheet.kits.first() { (figure(kit, language)) }
                    h2 { (say!(language, "plan-sheet-asks")) }
                    (list(&all_told(&sheet.words_phrases, &sheet.words, language)))
                    (part(&say!(language, "plan-sheet-contradictions-title"), &all_told(&sheet.contradictions_phrases, &sheet.contradictions, language)))
                    (part(&say!(language, "plan-sheet-questions"), &all_told(&sheet.questions_phrases, &sheet.questions, language)))
                    (part(&say!(language, "plan-sheet-open"), &not_checked(sheet, language)))
                    @for kit in &sheet.kits { (kit_table(kit, language)) }
                }
            }
        }
    }
    .into_string()
}

fn list(items: &[String]) -> Markup {
    html! { ul { @for item in items { li { (item) } } } }
}

fn part(head: &str, items: &[String]) -> Markup {
    html! { @if !items.is_empty() { h2 { (head) } (list(items)) } }
}

fn kit_table(kit: &PlanRecord, language: Language) -> Markup {
    html! {
        h2 { (say!(language, "plan-sheet-kit", kit = &kit.kit)) }
        p { (photos(kit, language)) @if let Some(noise) = noise(kit) { " " (noise.say(language)) } }
        table {
            thead { tr {
                th scope="col" { (say!(language, "plan-column-check")) }
                th scope="col" { (say!(language, "plan-column-expected")) }
                th scope="col" { (say!(language, "plan-column-least")) }
            } }
            tbody {
                @for (i, p) in kit.predicted.iter().enumerate() {
                    tr {
                        th scope="row" { (name(p, language)) }
                        td.no[!p.can_decide] data-k=(say!(language, "plan-column-expected")) { (worth(p, language)) }
                        td data-k=(say!(language, "plan-column-least")) { @if let Some(l) = kit.least_photos.get(i) { (least_words(p, l, language)) } }
                    }
                }
            }
        }
        @for a in advice(kit, language) { p.no { (a) } }
    }
}
