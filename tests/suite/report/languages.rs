//! Reports in every language: whole, marked as what they are, and without a
//! word of the program's that stands outside the message files.

use baywitness::record::JobRecord;
use baywitness::report::{TextOptions, customer_html, html, series_html, text};
use baywitness::words::Language;

use super::{fixture, jobs, page};

/// What a reader reads of a page, besides its style.
fn read(written: &str) -> String {
    let page = page::Page::parse(written);
    assert!(page.complaints.is_empty(), "{:?}", page.complaints);
    let labels =
        page.elements.iter().flat_map(|e| &e.attributes).filter(|(key, _)| key == "aria-label" || key == "data-k");
    let labels: String = labels.map(|(_, value)| format!("{value}\n")).collect();
    let said = page.elements.iter().filter(|e| ["body", "title"].contains(&e.name.as_str()));
    said.map(|e| format!("{}\n", e.text)).collect::<String>() + &labels
}

fn all_doors(record: &JobRecord, language: Language) -> [String; 4] {
    let options = TextOptions { language, ..TextOptions::default() };
    let digest = "ab".repeat(64);
    [
        text(record, &options),
        read(&html(record, &[], language)),
        read(&customer_html(record, &digest, language)),
        read(&series_html("R-1", &[record], language)),
    ]
}

/// The pseudo-language has no plain vowel: a plain word is one that somebody typed or that the
/// record says, or it stands in the source.
#[test]
fn nothing_is_said_outside_the_message_files() {
    for (name, (record, _)) in jobs().into_iter().filter(|(name, _)| *name != "long-names") {
        let typed = serde_json::to_string(&record).unwrap().to_lowercase() + &"ab".repeat(64);
        for said in all_doors(&record, Language::Pseudo) {
            let words = said.split(|c: char| !c.is_alphabetic()).filter(|w| w.len() > 3);
            let own = words.filter(|w| w.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_uppercase()));
            let plain: Vec<&str> = own.filter(|w| !typed.contains(&w.to_lowercase())).collect();
            assert!(plain.is_empty(), "{name}: {plain:?}");
        }
    }
}

#[test]
fn every_language_is_named_and_none_shows_a_key() {
    let (record, pictures) = fixture::job(&fixture::WRONG, 2);
    let english = all_doors(&record, Language::English);
    for language in Language::ALL {
        let written = html(&record, &pictures, language);
        assert!(written.contains(&format!("<html lang=\"{}\">", language.tag())));
        for (said, reference) in all_doors(&record, language).iter().zip(&english) {
            for prefix in ["report-", "customer-"] {
                assert!(!said.contains(prefix), "{}: {said}", language.tag());
            }
            assert_eq!(said == reference, language == Language::English, "{}", language.tag());
            let unread = said.matches("técnico de habla").count() + said.matches("technicien francophone").count();
            assert_eq!(unread > 0, !language.is_proofread(), "{}", language.tag());
        }
    }
}

#[test]
fn decimals_and_dates_follow_the_language() {
    let (record, _) = fixture::job(&fixture::WRONG, 2);
    let [german, ..] =
        all_doors(&record, Language::German).map(|said| said.split_whitespace().collect::<Vec<_>>().join(" "));
    assert!(german.contains("1278,0 ± 1,8 mm") && german.contains("25.11.2026 10:30 +01:00"), "{german}");
    let [french, ..] = all_doors(&record, Language::French);
    assert!(french.contains("0,820° ± 0,042°"), "{french}");
}

#[test]
fn each_move_is_shown_by_a_sign() {
    let stance = fixture::Stance { up_mm: 30.0, ..fixture::WRONG };
    let (record, _) = fixture::job(&stance, 2);
    let page = page::Page::parse(&html(&record, &[], Language::German));
    let signs = page.named("svg").filter(|e| e.attribute("class") == Some("move"));
    assert_eq!(signs.count(), 5, "tilt, square, centre, distance, height");
}
