//! The PDF report as poppler and qpdf read it: programs that know nothing of
//! how it was made. Where they are missing the checks say so and are skipped.

use std::path::Path;
use std::process::Command;

use baywitness::report::{digest, html, pdf};
use baywitness::words::Language;

use super::{Job, fixture, jobs, page, poisoned};

fn write(job: &Job) -> (Vec<u8>, String) {
    let json = job.0.to_json().unwrap();
    (pdf(&job.0, &job.1, &json, Language::English).unwrap(), digest(&json))
}

/// What a program prints, complaints included; `None` where it is not installed.
fn said(program: &str, arguments: &[&str], file: &Path) -> Option<String> {
    let output = match Command::new(program).args(arguments).arg(file).args(after(program)).output() {
        Ok(output) => output,
        Err(_) => {
            eprintln!("skipped: {program} is not installed");
            return None;
        }
    };
    Some([output.stdout, output.stderr].map(|b| String::from_utf8_lossy(&b).into_owned()).concat())
}

fn after(program: &str) -> &'static [&'static str] {
    if program == "pdftotext" { &["-"] } else { &[] }
}

fn kept(dir: &Path, name: &str, bytes: &[u8]) -> std::path::PathBuf {
    if let Some(dir) = std::env::var_os("BAYWITNESS_REPORT_DIR") {
        std::fs::create_dir_all(&dir).unwrap();
        std::fs::write(Path::new(&dir).join(format!("{name}.pdf")), bytes).unwrap();
    }
    let path = dir.join(format!("{name}.pdf"));
    std::fs::write(&path, bytes).unwrap();
    path
}

#[test]
fn poppler_and_qpdf_have_nothing_to_complain_about() {
    let dir = tempfile::tempdir().unwrap();
    for (name, job) in jobs() {
        let (bytes, digest) = write(&job);
        let path = kept(dir.path(), name, &bytes);
        if let Some(info) = said("pdfinfo", &[], &path) {
            assert!(!info.contains("Error") && !info.contains("Warning"), "{name}: {info}");
            assert!(info.contains("Tagged:          yes") && info.contains("(A4)"), "{name}: {info}");
            assert!(info.contains("Title:           Where the target stood"), "{name}: {info}");
        }
        if let Some(fonts) = said("pdffonts", &[], &path) {
            let lines: Vec<&str> = fonts.lines().skip(2).collect();
            assert!(!lines.is_empty() && lines.iter().all(|l| l.contains("yes yes yes")), "{name}: {fonts}");
        }
        if let Some(check) = said("qpdf", &["--check"], &path) {
            assert!(check.contains("No syntax or stream encoding errors found"), "{name}: {check}");
        }
        if let Some(text) = said("pdftotext", &[], &path) {
            let pages = text.matches('\u{c}').count();
            assert!(!text.contains("Syntax"), "{name}");
            for number in 1..=pages {
                assert!(text.contains(&format!("page {number} of {pages}")), "{name}: {number} of {pages}");
            }
            let joined: String = text.split_whitespace().collect();
            assert!(joined.matches(&digest[..64]).count() >= pages, "{name}: the digest stands on every page");
            assert!(text.contains("For the customer"), "{name}");
        }
    }
}

/// Every word of the HTML report's own elements is in the PDF.
#[test]
fn the_pdf_says_what_the_page_says() {
    let dir = tempfile::tempdir().unwrap();
    for (name, job) in jobs().into_iter().filter(|(name, _)| *name != "long-names") {
        let path = kept(dir.path(), name, &write(&job).0);
        let Some(text) = said("pdftotext", &[], &path) else { return };
        let bare = |text: &str| text.chars().filter(|c| c.is_alphanumeric()).collect::<String>();
        let all = bare(&text);
        let page = page::Page::parse(&html(&job.0, &job.1, Language::English));
        let mut compared = 0;
        for element in
            page.elements.iter().filter(|e| ["h1", "h2", "h3", "dt", "dd", "summary"].contains(&e.name.as_str()))
        {
            // A line's or a page's end may part any text: its words are looked for.
            for word in element.text.split_whitespace().map(bare).filter(|w| w.len() < 30) {
                assert!(all.contains(&word), "{name}: {word} of {}", element.text);
                compared += 1;
            }
        }
        assert!(compared > 20, "{name}: {compared} words");
    }
}

#[test]
fn the_same_job_gives_the_same_bytes() {
    let job = fixture::job(&fixture::WRONG, 2);
    assert_eq!(write(&job), write(&fixture::job(&fixture::WRONG, 2)));
}

/// Text of any script, of no script and of none at all: no record makes it fail.
#[test]
fn no_text_breaks_it() {
    let dir = tempfile::tempdir().unwrap();
    let (record, pictures) = fixture::two_targets();
    for (i, poison) in [
        "<script>&amp;</title>",
        "'\\\n\0\u{1b}[2J\u{202e}",
        "مركز المعايرة العربي",
        "北京校准中心 \u{1f697}\u{fe0f}\u{200d}",
        "\u{e000}\u{10fffd}\u{feff}\u{ffff}\u{fdd0}\u{ad}\u{301}\u{2028}",
        "Zażółć gęślą jaźń Größenmaß ŁÓDŹ Жигули Ωμέγα",
        &"w".repeat(400),
        &"word ".repeat(100),
    ]
    .iter()
    .enumerate()
    {
        let job = (poisoned(&record, poison), pictures.clone());
        let path = kept(dir.path(), &format!("poison-{i}"), &write(&job).0);
        if let Some(check) = said("qpdf", &["--check"], &path) {
            assert!(check.contains("No syntax or stream encoding errors found"), "{poison:.40}: {check}");
        }
    }
    let job = (poisoned(&record, " 北京"), pictures.clone());
    let path = kept(dir.path(), "foreign", &write(&job).0);
    if let Some(text) = said("pdftotext", &[], &path) {
        assert!(text.contains("2 different characters of this record have no shape"), "it is said");
        assert!(text.contains("北京"), "copied text has the true characters");
    }
}

#[test]
fn odd_numbers_and_missing_pictures_are_drawn() {
    for odd in [f64::NAN, f64::INFINITY, -1e300, 1e-300] {
        let (mut record, _) = fixture::job(&fixture::GOOD, 2);
        for check in &mut record.checks {
            check.value = Some(odd);
            check.expanded_uncertainty = Some(odd);
            check.lower = Some(odd);
        }
        record.carriers[0].position_mm = [odd; 3];
        record.photos[0].markers[0].corners_px = [[odd; 2]; 4];
        record.photos[1].position_mm = Some([odd; 3]);
        assert!(pdf(&record, &[], b"{}", Language::English).unwrap().starts_with(b"%PDF-1.7"));
    }
}
