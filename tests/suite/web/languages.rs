//! The page in every language: chosen by the visitor, else by the browser; no
//! text of the page is outside the message files.

use std::collections::BTreeSet;
use std::path::Path;

use baywitness::words::Language;

use super::bay::{BAY, SHEET, begin};
use super::client::Server;
use crate::pseudo::{data_words, outside_brackets, said_past, texts};

fn in_language(jobs: &Path, tag: &str) -> Server {
    let mut server = BAY.serve(jobs);
    server.cookie = format!("baywitness-language={tag}");
    server
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

/// The same of a job's pages, from its start to its verdict: what remains is data of the sheet, the kit and the job.
#[test]
fn every_text_of_a_job_s_pages_is_a_message_or_data() {
    let jobs = tempfile::tempdir().unwrap();
    let server = in_language(jobs.path(), "en-XA");
    let name = begin(&server, &[("technician", "T1"), ("series", "INVENTED-R1")]);
    // The languages by their own names, and the notes of the unread ones.
    let mut own: Vec<String> = Language::ALL.map(|l| l.own_name().to_owned()).to_vec();
    own.extend([Language::Spanish, Language::French].map(|l| baywitness::words::say!(l, "page-not-proofread")));
    own.extend([Language::Pseudo.own_name().to_owned(), name.clone(), "invented".to_owned()]);
    let own: Vec<&str> = own.iter().map(String::as_str).collect();
    let mut data = data_words(&BAY.job(), &own);
    data.extend(data_words(&BAY.models(), &[]));
    // The sheets that are built in are offered too.
    data.extend(data_words(&Path::new(env!("CARGO_MANIFEST_DIR")).join("models"), &[]));
    let look = |pages: &[String], data: &BTreeSet<String>| {
        for path in pages {
            let page = server.get(path).text();
            assert!(page.contains("<html lang=\"en-XA\">"), "{page}");
            let mut past = said_past(&page, data);
            // Who changed what is told by the lines of the job's file.
            past.retain(|text| !text.starts_with("+ ") && !text.starts_with("- "));
            assert!(past.is_empty(), "{path}: {past:#?}");
        }
    };
    let of_job = ["prepare", "photos", "finish"].map(|page| format!("/jobs/{name}/{page}"));
    look(&["/new".to_owned(), format!("/new/{SHEET}"), "/".to_owned()], &data);
    look(&of_job, &data);
    for photo in ["a.jpg", "b.jpg"] {
        server.upload(&format!("/jobs/{name}/photos"), &BAY.photo(photo));
    }
    server.verdict(&name);
    // The photos' names bear their digests.
    data.extend(data_words(&jobs.path().join(&name), &[]));
    look(&of_job, &data);
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
        (Language::French, "n’est pas un nombre", "1500,5"),
    ] {
        let server = in_language(jobs.path(), language.tag());
        let name = begin(&server, &[]);
        let to = format!("/jobs/{name}/prepare");
        let refused = server.form(&to, &[("reading:0", "twelve"), ("instrument:0", "laser")]);
        assert!(refused.status == 422 && refused.text().replace("'", "&#39;").contains(wrong), "{}", refused.text());
        assert_eq!(server.form(&to, &[("reading:0", "1500,5"), ("instrument:0", "laser")]).status, 303);
        let page = server.get(&to).text();
        assert!(page.contains(&format!("value=\"{sign}\"")), "{page}");
        // French sets a no-break space before a colon, in the page's title too.
        let title = page.split("<title>").nth(1).and_then(|rest| rest.split("</title>").next()).unwrap();
        assert!(title.contains(": "), "{title}");
        assert_eq!(title.contains("\u{a0}: "), language == Language::French, "{title}");
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
