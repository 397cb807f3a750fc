//! A set-up sheet explained: words and a page with its drawing.

use maud::{DOCTYPE, Markup, PreEscaped, html};

use super::drawing::plan_svg;
use super::page::STYLE;
use super::words::{least_words, name, noise, worth};
use crate::record::{PlanRecord, SetupCheckRecord};

/// The explanation for the terminal.
pub fn setup_text(sheet: &SetupCheckRecord) -> String {
    let mut text = format!("{}\n{}\n\nWhat it asks for:\n", sheet.title, sheet.source);
    let mut list = |head: &str, items: &[String]| {
        if !head.is_empty() && !items.is_empty() {
            text.push_str(&format!("\n{head}:\n"));
        }
        for item in items {
            text.push_str(&format!("  - {item}\n"));
        }
    };
    list("", &sheet.words);
    list("Neither checked nor waived", &sheet.not_checked);
    list("Contradictions", &sheet.contradictions);
    list("Questions", &sheet.questions);
    for kit in &sheet.kits {
        text.push_str(&format!("\nWith the kit {} ({}):\n", kit.kit, photos(kit)));
        if let Some(noise) = noise(kit) {
            text.push_str(&format!("  ({noise})\n"));
        }
        for (i, p) in kit.predicted.iter().enumerate() {
            let least = kit.least_photos.get(i).map_or(String::new(), |l| format!("; {}", least_words(p, l)));
            text.push_str(&format!("  {:<44} {}{least}\n", name(p), worth(p)));
        }
    }
    if sheet.kits.is_empty() {
        text.push_str("\nNo kit among the models has the targets that this sheet names.\n");
    }
    text
}

fn photos(kit: &PlanRecord) -> String {
    let each = if kit.steps.len() > 1 { " in each step" } else { "" };
    let all = kit.predicted.iter().all(|p| p.can_decide);
    let outcome = if all { "decide every check" } else { "do not decide every check" };
    format!("{} photos{each} {outcome}", kit.stations.len())
}

/// The explanation as one page.
pub fn setup_html(sheet: &SetupCheckRecord) -> String {
    html! {
        (DOCTYPE)
        html lang="en" {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { "Set-up sheet: " (sheet.title) }
                style { (PreEscaped(STYLE)) }
            }
            body {
                h1 { "Set-up sheet: " (sheet.title) }
                p.aside { (sheet.source) }
                @if let Some(kit) = sheet.kits.first() { figure { (PreEscaped(plan_svg(kit))) } }
                h2 { "What it asks for" }
                (list(&sheet.words))
                (part("Contradictions: the sheet cannot be met as it is", &sheet.contradictions))
                (part("Questions", &sheet.questions))
                (part("Neither checked nor waived", &sheet.not_checked))
                @for kit in &sheet.kits { (kit_table(kit)) }
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

fn kit_table(kit: &PlanRecord) -> Markup {
    html! {
        h2 { "With the kit " (kit.kit) }
        p { (photos(kit)) @if let Some(noise) = noise(kit) { "; " (noise) } "." }
        table {
            thead { tr { th { "Check" } th { "Expected, 95 %" } th { "Least photos" } } }
            tbody {
                @for (i, p) in kit.predicted.iter().enumerate() {
                    tr {
                        td { (name(p)) }
                        td.no[!p.can_decide] { (worth(p)) }
                        td { @if let Some(l) = kit.least_photos.get(i) { (least_words(p, l)) } }
                    }
                }
            }
        }
        @for a in &kit.advice { p.no { (a) } }
    }
}
