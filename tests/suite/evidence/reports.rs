//! The signature of the report within a sealed folder, in an audit of many, and where a report is made anew.

use std::fs;
use std::path::{Path, PathBuf};

use baywitness::evidence::SignedPdf;
use serde_json::{Value, json};

use super::doors::{run, small_job};
use super::pades::{own, report};
use super::{files, fresh_key, sealed_anew};

fn path(text: &str) -> &Path {
    Path::new(text)
}

struct Archive {
    dir: tempfile::TempDir,
    signers: PathBuf,
    certificate: PathBuf,
}

/// Three sealed jobs by one key: their reports signed, signed and then changed by a bit, not signed.
fn archive() -> Archive {
    let dir = tempfile::tempdir().unwrap();
    let root = dir.path();
    let (job, key, pdf_key) = (small_job(&root.join("in")), fresh_key(root, ""), own(root, "Invented"));
    fs::create_dir(root.join("all")).unwrap();
    let sealed = |name: &str, more: &[&Path]| {
        let out = root.join("all").join(name);
        let (code, said) = run(&[&[&job, path("--out"), &out, path("--key"), &key], more].concat(), &["seal"], None);
        assert_eq!(code, 0, "{said}");
        out
    };
    let signed = sealed("signed", &[path("--sign-pdf"), &pdf_key]);
    sealed("plain", &[]);
    // Sealed anew by the workshop itself, its report changed: every digest and the seal's signature fit.
    sealed_anew(&signed, &root.join("all/changed"), Some(&key), |all| {
        let pdf = all.get_mut("report.pdf").unwrap();
        let at = pdf.len() / 3;
        pdf[at] ^= 1;
    });
    let signers = root.join("signers");
    let public = fs::read_to_string(key.with_extension("pub")).unwrap();
    fs::write(&signers, format!("shop@invented.example {public}")).unwrap();
    Archive { certificate: pdf_key.with_extension("crt"), signers, dir }
}

impl Archive {
    fn check(&self, name: &str, certificates: bool) -> (i32, String) {
        let folder = self.dir.path().join("all").join(name);
        let mut arguments = vec![folder.as_path(), path("--signers"), &self.signers];
        if certificates {
            arguments.extend([path("--certificates"), self.certificate.as_path()]);
        }
        run(&arguments, &["check"], None)
    }

    /// By folder: verdict's exit code, the report's signature, the whole line.
    fn audit(&self, out: &str, more: &[&Path]) -> Vec<(String, Value, Value)> {
        let (all, out) = (self.dir.path().join("all"), self.dir.path().join(out));
        let arguments = [&[&all, path("--out"), &out, path("--signers"), &self.signers], more].concat();
        let (code, said) = run(&arguments, &["audit"], None);
        assert_eq!(code, 2, "{said}");
        let text = fs::read_to_string(out.join("audit.jsonl")).unwrap();
        let one = |line: &str| {
            let line: Value = serde_json::from_str(line).unwrap();
            let name = line["path"].as_str().unwrap().rsplit('/').next().unwrap().to_owned();
            (name, line["report"].clone(), line)
        };
        text.lines().map(one).collect()
    }
}

#[test]
fn a_sealed_folder_s_report_says_who_signed_it_and_whether_it_was_changed() {
    let archive = archive();
    let (code, said) = archive.check("signed", true);
    assert!(code == 0 && said.contains("report's signature") && said.contains("whose certificate was given"), "{said}");
    let (code, said) = archive.check("signed", false);
    assert!(code == 0 && said.contains("by CN=Invented") && said.contains("--certificates"), "{said}");
    let (code, said) = archive.check("plain", true);
    assert!(code == 0 && said.contains("bears no signature"), "{said}");
    // The seal holds; what it holds is not the report that was signed.
    let (code, said) = archive.check("changed", true);
    let line = said.lines().find(|l| l.contains("report's signature")).unwrap();
    assert!(code == 1 && line.starts_with("failed"), "{said}");
    assert!(said.lines().filter(|l| l.starts_with("failed")).count() == 1, "{said}");
    an_audit_says_the_same(&archive);
}

fn an_audit_says_the_same(archive: &Archive) {
    let certificates = [path("--certificates"), &archive.certificate];
    let told = archive.audit("audited", &certificates);
    let of = |name: &str| told.iter().find(|(n, ..)| n == name).unwrap().clone();
    assert_eq!(of("signed").1, json!({ "state": "holds", "signer": "CN=Invented", "listed": true }));
    assert_eq!(of("plain").1, json!({ "state": "none" }));
    let (_, report, line) = of("changed");
    assert_eq!(
        (report, &line["exit"], &line["evidence"]),
        (json!({ "state": "broken" }), &json!(2), &json!("altered"))
    );
    let out = archive.dir.path().join("audited");
    let mut table = csv::Reader::from_path(out.join("audit.csv")).unwrap();
    let column = table.headers().unwrap().iter().position(|h| h == "report_signature").unwrap();
    let mut cells: Vec<String> = table.records().map(|r| r.unwrap()[column].to_owned()).collect();
    cells.sort();
    assert_eq!(cells, ["broken", "holds by CN=Invented, listed", "none"]);
    let page = fs::read_to_string(out.join("report.html")).unwrap();
    for words in ["report signed by CN=Invented, whose certificate was given", "report not signed"] {
        assert!(page.contains(words), "{words}");
    }
    // Other certificates, another judgement: nothing is kept from before.
    let told = archive.audit("audited", &[]);
    let signed = told.iter().find(|(n, ..)| n == "signed").unwrap();
    assert_eq!(signed.1, json!({ "state": "holds", "signer": "CN=Invented" }));
}

#[test]
fn a_watched_job_s_reports_are_signed_or_say_why_not() {
    let dir = tempfile::tempdir().unwrap();
    let job = small_job(&dir.path().join("in"));
    let (key, out) = (own(dir.path(), "Invented"), dir.path().join("out"));
    let watch = |more: &[&Path]| {
        let jobs = dir.path().join("in");
        run(&[&[&jobs, path("--report"), &out], more].concat(), &["watch", "--once"], None)
    };
    let (code, said) = watch(&[path("--sign-pdf"), &key]);
    assert_eq!(code, 4, "{said}");
    let pdf = files(&out).into_iter().find(|f| f.extension().is_some_and(|e| e == "pdf")).unwrap();
    let signed = fs::read(&pdf).unwrap();
    assert!(SignedPdf::read(signed.clone()).unwrap().check().is_ok());
    // Without the key: said on the terminal and in the file, however often; the signed one is not lost.
    for _ in 0..2 {
        let (_, said) = watch(&[]);
        assert!(said.contains("not signed") && said.contains("CN=Invented") && said.contains(".signed.pdf"), "{said}");
        assert!(SignedPdf::read(fs::read(&pdf).unwrap()).is_err());
        assert_eq!(fs::read(pdf.with_extension("signed.pdf")).unwrap(), signed);
        if let Ok(text) = std::process::Command::new("pdftotext").arg(&pdf).arg("-").output() {
            let text = String::from_utf8_lossy(&text.stdout).replace('\n', " ");
            assert!(text.contains("This report is not signed"), "{text}");
        }
    }
    // With it again there is nothing to say.
    let (_, said) = watch(&[path("--sign-pdf"), &key]);
    assert!(!said.contains("not signed"), "{said}");
    // A report that never was signed is what it was.
    let plain = report(&job, &dir.path().join("plain"), &[]);
    assert!(!String::from_utf8_lossy(&fs::read(plain).unwrap()).contains("signed.pdf"));
}
