//! Content credentials that a sealed result claims: a workshop with its own key and a program of its own says that a
//! camera signed photos which nobody signed.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use baywitness::credentials::{Credentials, Source};
use baywitness::custody::gather;
use baywitness::evidence::{Key, seal};
use baywitness::folder::Models;
use baywitness::job::Options;
use baywitness::photo;
use baywitness::record::Verdict;
use baywitness::words::{Language, Wish};
use serde_json::{Value, json};

use super::workshop::Workshop;
use super::{rewrite, sample};
use crate::evidence::doors::run;

const PHOTOS: [&str; 2] = ["photos/a.jpg", "photos/b.jpg"];

/// The good sample, whose sheet requires content credentials, or not; its photos carry a manifest store, or not.
fn job(shop: &Workshop, required: bool, carrying: bool) -> PathBuf {
    let job = shop.at("job");
    crate::staged::copy(&sample("good"), &job, true);
    if required {
        let asked = "evidence = { credentials = \"required\" }\nreference_line";
        rewrite(&job.join("setup.toml"), |sheet| sheet.replacen("reference_line", asked, 1));
    }
    for name in PHOTOS.iter().filter(|_| carrying) {
        let bytes = fs::read(job.join(name)).unwrap();
        fs::write(job.join(name), with_store(&bytes)).unwrap();
    }
    job
}

/// A JPEG with a JUMBF box behind its first marker (ISO/IEC 18477-3), which holds nothing.
fn with_store(jpeg: &[u8]) -> Vec<u8> {
    let body = [&b"JP\0\x01\0\0\0\x01\0\0\0\x26jumb"[..], &[0; 30]].concat();
    let length = u16::try_from(body.len() + 2).unwrap().to_be_bytes();
    [&jpeg[..2], &[0xff, 0xeb], &length, &body, &jpeg[2..]].concat()
}

/// Sealed as by a program that finds both photos signed by a camera that is trusted.
fn sealed_as_trusted(shop: &Workshop, job: &Path) -> PathBuf {
    let trusted: Credentials =
        serde_json::from_value(json!({ "state": "trusted", "signer": "Invented Camera Works" })).unwrap();
    let digest = |name: &&str| photo::sha256(&fs::read(job.join(name)).unwrap());
    let known: BTreeMap<String, Credentials> = PHOTOS.iter().map(|name| (digest(name), trusted.clone())).collect();
    let options = Options { credentials: Source::Recorded(Arc::new(known)), ..Options::new(Models::embedded()) };
    let wish = Wish { typed: None, otherwise: Language::English };
    let (record, contents) = gather(job, &options, wish).unwrap();
    assert_eq!(record.verdict, Verdict::Within, "{}", record.reason);
    let (archive, key) = (shop.at("archive"), Key::open(&shop.key, &|_| None).unwrap());
    fs::create_dir_all(&archive).unwrap();
    let folder = archive.join("sealed");
    seal(&folder, &contents, Some(&key), None).unwrap();
    folder
}

/// Exit code of an audit, and the line of the one folder in it.
fn audited(shop: &Workshop) -> (i32, Value) {
    let (archive, out) = (shop.at("archive"), shop.at("audit"));
    let (code, said) = run(&[&archive, Path::new("--out"), &out, Path::new("--signers"), &shop.list], &["audit"], None);
    let text = fs::read_to_string(out.join("audit.jsonl")).unwrap_or_else(|e| panic!("{e}: {said}"));
    (code, serde_json::from_str(text.lines().next().unwrap()).unwrap())
}

#[test]
fn credentials_of_photos_that_carry_none() {
    let shop = Workshop::new();
    let folder = sealed_as_trusted(&shop, &job(&shop, true, false));
    let (code, said) = shop.check(&folder);
    assert!(code == 1 && said.contains("content credentials of photos/a.jpg: recorded"), "{code}: {said}");
    let (code, line) = audited(&shop);
    assert_eq!((code, &line["evidence"], &line["verdict"]), (2, &"altered".into(), &Value::Null), "{line}");
}

/// A box without a manifest is put into the photos. A program that validates them finds them broken; one that cannot
/// calls nothing altered, which an honest folder would be too, and confirms nothing that the sheet requires.
#[test]
fn credentials_in_a_box_that_holds_none() {
    let shop = Workshop::new();
    let folder = sealed_as_trusted(&shop, &job(&shop, true, true));
    let (code, said) = shop.check(&folder);
    if baywitness::credentials::BUILT_IN {
        assert_eq!(code, 1, "{said}");
        return;
    }
    assert!(code == 3 && said.contains("verdict is not confirmed"), "{code}: {said}");
    let again = said.lines().find(|line| line.contains("measured again")).unwrap();
    assert!(again.starts_with("not checkable") && again.contains("confirmed is not proven"), "{again}");
    let (code, line) = audited(&shop);
    let found = (code, &line["evidence"], &line["verdict"]);
    assert_eq!(found, (3, &"intact and signed".into(), &"not_proven".into()), "{line}");
    let table = fs::read_to_string(shop.at("audit").join("audit.csv")).unwrap();
    assert!(!table.contains("trusted 2"), "{table}");
}

/// The honest variant: sealed by a program that reads them, of a sheet that asks for none.
#[test]
fn credentials_that_nobody_requires_change_no_verdict() {
    let shop = Workshop::new();
    let folder = sealed_as_trusted(&shop, &job(&shop, false, true));
    if baywitness::credentials::BUILT_IN {
        return;
    }
    let (code, said) = shop.check(&folder);
    assert_eq!(code, 0, "{said}");
    let (code, line) = audited(&shop);
    let found = (code, &line["evidence"], &line["verdict"]);
    assert_eq!(found, (0, &"intact and signed".into(), &"within".into()), "{line}");
}
