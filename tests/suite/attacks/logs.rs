//! Attacks on the log of attempts with all of its keys: put back and written anew, proofs of other attempts, clocks, witnesses
//! that are one, and what is never logged.

use std::fs;
use std::path::{Path, PathBuf};

use baywitness::record::JobRecord;
use baywitness::transparency::{Attempt, Log, private_folder};
use serde_json::Value;
use time::macros::datetime;

use super::orders::{Workshop, found};
use super::rewrite;
use crate::audit::copy;
use crate::evidence::doors::run;
use crate::evidence::{fresh_key, sealed_anew};

fn path(text: &str) -> &Path {
    Path::new(text)
}

/// The log and what lies beside it, as they are now, somewhere else.
fn keep(shop: &Workshop, name: &str) {
    copy(&shop.log(), &shop.dir.path().join(name).join("log"));
    copy(&private_folder(&shop.log()), &shop.dir.path().join(name).join("private"));
}

fn put_back(shop: &Workshop, name: &str) {
    for (from, to) in [("log", shop.log()), ("private", private_folder(&shop.log()))] {
        fs::remove_dir_all(&to).unwrap();
        copy(&shop.dir.path().join(name).join(from), &to);
    }
}

/// The lines of an audit without a log: evidence by folder.
fn evidence(shop: &Workshop) -> Vec<(String, String)> {
    let out = shop.new_folder();
    run(&[&shop.archive(), path("--out"), &out], &["audit"], None);
    let line = |line: &str| {
        let line: Value = serde_json::from_str(line).unwrap();
        let name = Path::new(line["path"].as_str().unwrap()).file_name().unwrap().to_str().unwrap().to_owned();
        (name, line["evidence"].as_str().unwrap_or_default().to_owned())
    };
    fs::read_to_string(out.join("audit.jsonl")).unwrap().lines().map(line).collect()
}

/// Log and private folder go back to before the attempt that nobody wants; no witness saw it, no auditor kept anything.
#[test]
fn a_log_put_back_and_written_anew() {
    let shop = Workshop::new();
    keep(&shop, "empty");
    let (outside, good) = (shop.job("outside", 60), shop.job("good", 90));
    rewrite(&good.join("job.toml"), |text| text.replace("attempt = 1", "attempt = 2"));
    shop.verify(&outside);
    shop.seal(&good, "good");
    shop.seal(&shop.job("packed", 120), "packed.tar");
    let (_, said, findings) = shop.audit();
    assert_eq!(findings, found("attempt-missing", ""), "{said}");
    // Shorter than what the folder's proof was signed for; then as long, and another one.
    for (times, words) in [(1, "the log was truncated"), (2, "the log was forked"), (3, "the log was rewritten")] {
        put_back(&shop, "empty");
        (0..times).for_each(|_| shop.verify(&good));
        let (code, said, findings) = shop.audit();
        assert_eq!((code, findings), (2, found("log-broken", "")), "{said}");
        assert!(said.contains(words) && said.contains("good/attempt.tlog-proof"), "{words}: {said}");
    }
    fs::remove_dir_all(shop.archive().join("good")).unwrap();
    let (code, said, findings) = shop.audit();
    assert_eq!((code, findings), (2, found("log-broken", "")), "{said}");
    assert!(said.contains("packed.tar/attempt.tlog-proof"), "{said}");
    // Without a key that counts it may be the folder that is false.
    let out = shop.new_folder();
    let (code, said) = run(&[&shop.archive(), path("--out"), &out, path("--log"), &shop.log()], &["audit"], None);
    assert!(code == 2 && said.contains("proof-false"), "{code}: {said}");
}

/// The proof of another attempt, and what is none, in a folder that is sealed anew.
#[test]
fn a_false_proof_in_an_archive() {
    let shop = Workshop::new();
    let (one, two) = (shop.seal(&shop.job("one", 60), "one"), shop.seal(&shop.job("two", 90), "two"));
    let altered = |name: &str| evidence(&shop).iter().filter(|(n, _)| n == name).all(|(_, e)| e == "altered");
    assert!(!altered("one") && !altered("two"));
    // Honest, and the log went on since the first of them.
    let (code, said, findings) = shop.audit();
    assert!(code == 4 && findings.is_empty() && said.contains("every attempt is in the archive"), "{code}: {said}");
    let other = fs::read(two.join("data/attempt.tlog-proof")).unwrap();
    let whole = shop.dir.path().join("whole");
    fs::rename(&one, &whole).unwrap();
    for proof in [other, b"hello".to_vec(), vec![b'\n'; 9]] {
        sealed_anew(&whole, &one, None, |files| {
            files.insert("attempt.tlog-proof".to_owned(), proof);
        });
        let (code, said) = run(&[&one, path("--log-keys"), &shop.keys], &["check"], None);
        assert_eq!(code, 1, "{said}");
        assert!(altered("one") && !altered("two"));
        let (code, said, findings) = shop.audit();
        assert!(code == 2 && findings == found("attempt-missing", ""), "{code}: {said}");
        fs::remove_dir_all(&one).unwrap();
    }
    // Its checkpoint signed by nobody: only who knows the log's key sees that.
    sealed_anew(&whole, &one, None, |files| {
        let proof = String::from_utf8(files["attempt.tlog-proof"].clone()).unwrap();
        let (text, _) = proof.rsplit_once("\u{2014} ").unwrap();
        let signed = fs::read_to_string(two.join("data/attempt.tlog-proof")).unwrap();
        let another = signed.lines().last().unwrap();
        files.insert("attempt.tlog-proof".to_owned(), format!("{text}{another}\n").into_bytes());
    });
    let (code, said) = run(&[&one, path("--log-keys"), &shop.keys], &["check"], None);
    assert!(code == 1 && said.contains("false signature"), "{code}: {said}");
    let (code, said, findings) = shop.audit();
    assert_eq!((code, findings), (2, found("proof-false", "one")), "{said}");
}

/// A calibration that is still to come when it is logged and witnessed.
fn calibrated(job: &Path, at: &str) {
    rewrite(&job.join("job.toml"), |text| format!("{text}\n[calibration]\nat = {at}\nresult = \"successful\"\n"));
}

#[test]
fn a_job_logged_before_it_was_done() {
    let shop = Workshop::new();
    let (honest, early) = (shop.job("honest", 60), shop.job("early", 90));
    calibrated(&honest, "2026-02-03T10:47:30+01:00");
    calibrated(&early, "2099-02-03T10:47:30+01:00");
    let (honest, early) = (shop.seal(&honest, "honest"), shop.seal(&early, "early"));
    let check = |folder: &Path| run(&[folder, path("--log-keys"), &shop.keys], &["check"], None);
    let (code, said) = check(&honest);
    assert_eq!(code, 3, "{said}");
    let (code, said) = check(&early);
    assert!(code == 1 && said.contains("before the calibration was run at 2099-02-03T10:47:30"), "{code}: {said}");
    let (_, said, json) = shop.audit_with(&[]);
    assert_eq!(shop.listed(&json["findings"]), found("logged-before-taken", "early"), "{said}");
    // What was logged long after is no lie.
    assert_eq!(shop.listed(&json["notes"]), found("logged-late", "honest"), "{said}");
    assert!(said.contains("1 job was logged more than a day late"), "{said}");
}

/// The log's clock says what it should; the witness's does not.
#[test]
fn a_job_cosigned_before_it_was_done() {
    let shop = Workshop::new();
    let job = shop.job("early", 90);
    calibrated(&job, "2099-02-03T10:47:30+01:00");
    let json = shop.dir.path().join("result.json");
    run(&[&job, path("--json"), &json], &["verify"], None);
    let record: JobRecord = serde_json::from_slice(&fs::read(json).unwrap()).unwrap();
    let log = Log::open(&shop.log()).unwrap();
    let at = datetime!(2099-02-03 12:00 UTC);
    log.append(&[Attempt::of(&record, b"{}", "verify", at, log.order_salt())]).unwrap();
    copy(job.parent().unwrap(), &shop.archive().join("early"));
    assert_eq!(shop.audit().2, []);
    witnessed(&shop, &fresh_key(shop.dir.path(), ""), "one.example/1");
    let (_, said, findings) = shop.audit();
    assert!(findings.contains(&found("logged-before-taken", "early/J 1")[0]), "{said}");
    assert!(said.contains("entry 0 was seen by one.example/1 at"), "{said}");
}

/// Cosigns under a name whose key then counts.
fn witnessed(shop: &Workshop, key: &Path, name: &str) {
    let arguments = [&shop.log(), path("--key"), key, path("--name"), path(name), path("--keys"), &shop.keys];
    let (code, said) = run(&arguments, &["log", "witness"], None);
    assert_eq!(code, 0, "{said}");
    let line = said.lines().find(|line| line.starts_with(&format!("{name}+"))).unwrap();
    fs::write(&shop.keys, format!("{}\n{line}\n", fs::read_to_string(&shop.keys).unwrap())).unwrap();
}

/// One key by two names, and the log's own key by a third.
#[test]
fn one_key_as_several_witnesses() {
    let shop = Workshop::new();
    let own: PathBuf = private_folder(&shop.log()).join("key");
    let arguments = [&shop.log(), path("--key"), &own, path("--name"), path("x.example/1"), path("--keys"), &shop.keys];
    let (code, said) = run(&arguments, &["log", "witness"], None);
    assert!(code == 2 && said.contains("cannot vouch for itself"), "{code}: {said}");
    shop.seal(&shop.job("good", 90), "good");
    let (one, other) = (shop.dir.path().join("one"), shop.dir.path().join("other"));
    for home in [&one, &other] {
        fs::create_dir(home).unwrap();
    }
    let (one, other) = (fresh_key(&one, ""), fresh_key(&other, ""));
    for (key, name) in [(&one, "b.example/1"), (&one, "a.example/1")] {
        witnessed(&shop, key, name);
    }
    let (_, said, json) = shop.audit_with(&[]);
    assert_eq!(json["witnesses"], serde_json::json!(["b.example/1"]), "{said}");
    assert!(said.contains("cosigned by b.example/1\n"), "{said}");
    witnessed(&shop, &other, "c.example/1");
    assert_eq!(shop.audit_with(&[]).2["witnesses"], serde_json::json!(["b.example/1", "c.example/1"]));
}

/// Neither sealed nor logged: nothing but its own folder knows of it.
#[test]
fn a_job_that_is_neither_sealed_nor_logged() {
    let shop = Workshop::new();
    let job = shop.job("plain", 60);
    copy(job.parent().unwrap(), &shop.archive().join("1"));
    let (code, said, json) = shop.audit_with(&[]);
    assert_eq!((code, shop.listed(&json["findings"])), (4, Vec::new()), "{said}");
    assert_eq!(shop.listed(&json["notes"]), found("unlogged", "1/J 1"), "{said}");
    assert!(said.contains("1 job is neither sealed nor in any entry"), "{said}");
    shop.verify(&job);
    let (_, said, json) = shop.audit_with(&[]);
    assert!(json["notes"] == serde_json::json!([]) && !said.contains("neither sealed"), "{said}");
}

/// A log's name and a folder's that show another line than they are.
#[test]
fn a_name_of_a_log_or_folder_that_turns_the_writing() {
    let shop = Workshop::new();
    let turned = "shop\u{202e}elpmaxe";
    let arguments = [&shop.dir.path().join("new"), path("--origin"), path(turned)];
    let (code, said) = run(&arguments, &["log", "new"], None);
    assert!(code == 2 && said.contains("\\u{202e}") && !said.contains('\u{202e}'), "{code}: {said}");
    let out = shop.dir.path().join("sealed");
    assert_eq!(run(&[&shop.job("good", 90), path("--out"), &out], &["seal"], None).0, 0);
    fs::rename(&out, shop.archive().join(turned)).unwrap();
    fs::create_dir(shop.archive().join("x\u{202e}y")).unwrap();
    fs::write(shop.archive().join("x\u{202e}y/Job.toml"), "format = \"job/1\"\n").unwrap();
    let page_in = shop.new_folder();
    let arguments = [shop.archive(), "--out".into(), page_in.clone(), "--log".into(), shop.log()];
    let arguments: Vec<&Path> = arguments.iter().map(PathBuf::as_path).collect();
    let (code, said) = run(&arguments, &["audit"], None);
    assert!(code == 2 && said.contains("not-logged") && said.contains("Job.toml"), "{code}: {said}");
    assert!(said.contains("shop\\u{202e}elpmaxe") && said.contains("x\\u{202e}y"), "{said}");
    let page = fs::read_to_string(page_in.join("report.html")).unwrap();
    assert!(page.contains("shop\\u{202e}elpmaxe") && !page.contains('\u{202e}'), "{page}");
    assert!(!said.contains('\u{202e}'), "{said}");
}
