//! The page in every language: chosen by the visitor, else by the browser; no
//! text of the page is outside the message files.

use baywitness::words::Language;

use super::bay::{BAY, begin};
use super::client::Server;

fn in_language(jobs: &std::path::Path, tag: &str) -> Server {
    let mut server = BAY.serve(jobs);
    server.cookie = format!("baywitness-language={tag}");
    server
}

/// What a reader of the markup sees or hears: text between tags and texts of attributes.
fn texts(page: &str) -> Vec<String> {
    let mut all = Vec::new();
    let body = &page[page.find("<title>").unwrap()..];
    for part in body.split('<').skip(1) {
        let (tag, text) = part.split_once('>').unwrap();
        all.push(text.to_owned());
        for name in [" aria-label=\"", " alt=\"", " title=\""] {
            if let Some((_, value)) = tag.split_once(name) {
                all.push(value.split('"').next().unwrap().to_owned());
            }
        }
    }
    all.into_iter().map(|t| t.trim().to_owned()).filter(|t| t.chars().any(char::is_alphabetic)).collect()
}

/// Takes what the pseudo-language says (in brackets) out of a text.
fn outside_brackets(text: &str) -> String {
    let (mut depth, mut left) = (0, String::new());
    for c in text.chars() {
        match c {
            '⟦' => depth += 1,
            '⟧' => depth -= 1,
            c if depth == 0 => left.push(c),
            _ => {}
        }
    }
    left
}

/// Without what is no letter at either end.
fn bare(text: &str) -> &str {
    text.trim_matches(|c: char| !c.is_alphabetic())
}

/// Plain letters on a page in the pseudo-language are a text outside the message files.
#[test]
fn every_text_of_the_page_is_a_message() {
    let jobs = tempfile::tempdir().unwrap();
    let server = in_language(jobs.path(), "en-XA");
    // The languages by their own names, the notes in their own language, the program's name, units.
    let mut own: Vec<String> = Language::ALL.map(|l| l.own_name().to_owned()).to_vec();
    own.extend([Language::Pseudo.own_name().to_owned(), "baywitness".to_owned(), "mm".to_owned()]);
    own.extend([Language::Spanish, Language::French].map(|l| baywitness::words::say!(l, "page-not-proofread")));
    for path in ["/", "/?q=nothing-like-it", "/new-sheet", "/devices", "/pair", "/nothing-is-here"] {
        let page = server.get(path).text();
        assert!(page.contains("<html lang=\"en-XA\">"), "{page}");
        for text in texts(&page) {
            let left = outside_brackets(&text);
            let left = bare(&left);
            assert!(left.is_empty() || own.iter().any(|o| bare(o) == left), "{path}: {text}");
        }
    }
}

#[test]
fn each_language_is_offered_and_the_unread_ones_say_so_in_themselves() {
    let jobs = tempfile::tempdir().unwrap();
    for language in Language::ALL {
        let server = in_language(jobs.path(), language.tag());
        let page = server.get("/").text();
        assert!(page.contains(&format!("<html lang=\"{}\">", language.tag())), "{page}");
        for other in Language::ALL {
            assert!(page.contains(&format!("href=\"/language/{}\"", other.tag())) && page.contains(other.own_name()));
        }
        for note in ["Todavía no revisado por un técnico.", "Pas encore relu par un technicien."] {
            assert!(page.contains(note), "{page}");
        }
        // At the choice; in an unread language also at the foot.
        let foot = &page[page.find("<footer>").unwrap()..];
        assert_eq!(foot.contains("técnico.") || foot.contains("technicien."), !language.is_proofread(), "{foot}");
    }
    let server = BAY.serve(jobs.path());
    let french = server.request("GET", "/", &[("Accept-Language", "pl,fr-CH;q=0.9,de;q=0.5")], &[]).text();
    assert!(french.contains("<html lang=\"fr\">") && french.contains("Nouveau dossier"), "{french}");
}

#[test]
fn what_is_wrong_is_said_in_the_language_and_numbers_have_its_decimal_sign() {
    let jobs = tempfile::tempdir().unwrap();
    for (language, wrong, sign) in [
        (Language::English, "is not a number: type digits, such as 1502.5", "1500.5"),
        (Language::German, "ist keine Zahl: Ziffern eingeben, etwa 1502,5", "1500,5"),
        (Language::Spanish, "no es un número: escribir cifras, por ejemplo 1502,5", "1500,5"),
        (Language::French, "n&#39;est pas un nombre", "1500,5"),
    ] {
        let server = in_language(jobs.path(), language.tag());
        let name = begin(&server, &[]);
        let to = format!("/jobs/{name}/prepare");
        let refused = server.form(&to, &[("reading:0", "twelve"), ("instrument:0", "laser")]);
        assert!(refused.status == 422 && refused.text().replace("'", "&#39;").contains(wrong), "{}", refused.text());
        assert_eq!(server.form(&to, &[("reading:0", "1500,5"), ("instrument:0", "laser")]).status, 303);
        let page = server.get(&to).text();
        assert!(page.contains(&format!("value=\"{sign}\"")), "{page}");
        // The file is everybody's, in whichever language it was typed.
        let file = std::fs::read_to_string(jobs.path().join(&name).join("job.toml")).unwrap();
        assert!(file.contains("1500.5"), "{file}");
        // What the script is told is in the language too.
        let sent = server.upload(&format!("/jobs/{name}/files?kind=other&name=x"), b"x");
        assert_eq!(sent.status, 201, "{}", sent.text());
        let elsewhere = server.upload("/jobs/no-such-job/photos", b"x");
        let said = baywitness::words::say!(language, "page-trouble-not-here", what = "job");
        assert_eq!(elsewhere.json()["message"], said.as_str());
    }
}
