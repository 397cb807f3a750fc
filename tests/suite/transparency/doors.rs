//! The commands: what an auditor is told.

use std::fs;
use std::path::{Path, PathBuf};

use baywitness::transparency::{Log, private_folder};

use super::attempt;
use super::folder::copy;
use crate::evidence::doors::{run, small_job};
use crate::evidence::fresh_key;

/// A job of repair order R-7 with photos of its own.
fn job(dir: &Path, number: u32, shade: u8) -> PathBuf {
    let job = small_job(&dir.join(format!("in-{number}")));
    let text = fs::read_to_string(job.join("job.toml")).unwrap();
    let words = format!("job = \"J {number}\"\nseries = \"R-7\"\nattempt = {number}");
    fs::write(job.join("job.toml"), text.replace("job = \"J 1\"", &words)).unwrap();
    for name in ["a.png", "b.png"] {
        let grey = image::Luma([shade + u8::from(name == "b.png")]);
        image::GrayImage::from_pixel(320, 240, grey).save(job.join("photos").join(name)).unwrap();
    }
    job
}

fn path(text: &str) -> &Path {
    Path::new(text)
}

struct Shop {
    dir: tempfile::TempDir,
    log: PathBuf,
    keys: PathBuf,
}

fn shop() -> Shop {
    let dir = tempfile::tempdir().unwrap();
    let (log, keys) = (dir.path().join("log"), dir.path().join("keys"));
    let (code, said) = run(&[&log, path("--origin"), path("shop.example/attempts")], &["log", "new"], None);
    assert_eq!(code, 0, "{said}");
    let key = said.lines().find(|l| l.starts_with("shop.example/attempts+")).unwrap();
    fs::write(&keys, format!("# invented\n{key}\n")).unwrap();
    Shop { dir, log, keys }
}

impl Shop {
    fn audit(&self, archive: &Path, out: &str) -> (i32, String, Vec<String>) {
        let out = self.dir.path().join(out);
        let arguments = [archive, path("--out"), &out, path("--log"), &self.log, path("--log-keys"), &self.keys];
        let (code, said) = run(&arguments, &["audit"], None);
        let json: serde_json::Value = serde_json::from_slice(&fs::read(out.join("log.json")).unwrap()).unwrap();
        let found = json["findings"].as_array().unwrap();
        (code, said, found.iter().map(|f| f["code"].as_str().unwrap().to_owned()).collect())
    }
}

#[test]
fn dropped_attempts_and_jobs_that_were_not_logged_are_named() {
    let shop = shop();
    let (first, second, third) =
        (job(shop.dir.path(), 1, 60), job(shop.dir.path(), 2, 90), job(shop.dir.path(), 3, 120));
    let archive = shop.dir.path().join("archive");
    fs::create_dir(&archive).unwrap();
    let (code, said) = run(&[&first, &second, path("--log"), &shop.log], &["verify"], None);
    assert!(code == 4 && said.contains("Logged as entries 0 to 1"), "{code}: {said}");
    let sealed = archive.join("second");
    let (code, said) = run(&[&second, path("--out"), &sealed, path("--log"), &shop.log], &["seal"], None);
    assert!(code == 0 && said.contains("Logged as entry 2 of shop.example/attempts"), "{said}");
    // The folder alone shows that it was logged, to who knows the log's key.
    let (code, said) = run(&[&sealed, path("--log-keys"), &shop.keys, path("--log"), &shop.log], &["check"], None);
    assert!(code == 3 && said.contains("entry 2 of shop.example/attempts, logged at"), "{code}: {said}");
    assert!(said.contains("which the log still begins with"), "{said}");
    let (_, said) = run(&[&sealed], &["check"], None);
    assert!(said.contains("not checkable   log") && said.contains("--log-keys"), "{said}");
    // The first attempt went, and nothing says so but the log.
    let (code, said, found) = shop.audit(&archive, "out");
    assert_eq!((code, found), (4, vec!["attempt-missing".to_owned()]), "{said}");
    assert!(said.contains("attempt 1 of repair order R-7: none of its 2 photos is in the archive"), "{said}");
    assert!(said.contains("signed by a key that counts"), "{said}");
    // A third one is sealed past the log.
    assert_eq!(run(&[&third, path("--out"), &archive.join("third")], &["seal"], None).0, 0);
    let (_, said) = run(&[&archive.join("third"), path("--log-keys"), &shop.keys], &["check"], None);
    assert!(said.contains("holds no proof that its attempt was logged"), "{said}");
    let (_, said, found) = shop.audit(&archive, "out");
    assert_eq!(found, ["attempt-missing", "not-logged"], "{said}");
    assert!(said.contains("third is sealed, and the log has no entry of it"), "{said}");
    assert!(said.contains("begins with every checkpoint that was kept"), "{said}");
    // The page and the table say the same, an attempt without a folder too.
    let out = shop.dir.path().join("out");
    let page = fs::read_to_string(out.join("report.html")).unwrap();
    assert!(page.contains("id=\"log\"") && page.contains("none of its 2 photos is in the archive"), "{page}");
    assert_eq!(page.matches("third is sealed, and the log has no entry of it").count(), 2, "{page}");
    let mut table = csv::Reader::from_path(out.join("audit.csv")).unwrap();
    let column = table.headers().unwrap().iter().position(|h| h == "log").unwrap();
    let rows: Vec<csv::StringRecord> = table.records().map(Result::unwrap).collect();
    let of = |code: &str| rows.iter().find(|row| &row[column] == code).unwrap_or_else(|| panic!("no {code}: {rows:?}"));
    assert!(of("not-logged")[0].ends_with("third") && of("attempt-missing")[0].is_empty());
    // With the first one put back, and the third logged late, it is whole.
    fs::rename(&first, archive.join("first")).unwrap();
    let rest = shop.dir.path().join("in-1");
    for file in ["kit.toml", "setup.toml", "camera.toml"] {
        fs::copy(rest.join(file), archive.join(file)).unwrap();
    }
    run(&[&third, path("--log"), &shop.log], &["verify"], None);
    let (_, said, found) = shop.audit(&archive, "out");
    assert!(found.is_empty() && said.contains("every attempt is in the archive"), "{said}");
}

#[test]
fn a_proof_of_another_attempt_is_refused() {
    let shop = shop();
    let (first, second) = (job(shop.dir.path(), 1, 60), job(shop.dir.path(), 2, 90));
    let out = |n: &str| shop.dir.path().join(n);
    for (job, name) in [(&first, "a"), (&second, "b")] {
        assert_eq!(run(&[job, path("--out"), &out(name), path("--log"), &shop.log], &["seal"], None).0, 0);
    }
    use baywitness::evidence::{Bytes, Contents, seal};
    let mut contents = Contents::default();
    let payload = out("a").join("data");
    for file in crate::evidence::files(&payload) {
        let name = file.strip_prefix(&payload).unwrap().to_str().unwrap().to_owned();
        let from = if name.ends_with(".tlog-proof") { out("b").join("data").join(&name) } else { file };
        contents.payload.insert(name, Bytes::File { path: from, sha256: None });
    }
    seal(&out("forged"), &contents, None, None).unwrap();
    let (code, said) = run(&[&out("forged"), path("--log-keys"), &shop.keys], &["check"], None);
    assert!(code == 1 && said.contains("is of another attempt: photos, job.toml"), "{code}: {said}");
}

#[test]
fn entries_out_of_time_and_repeated_ones_are_named() {
    let shop = shop();
    let sealed = shop.dir.path().join("sealed");
    let own = Log::open(&shop.log).unwrap();
    let day = |n: u32| attempt(&format!("d{n}"), &format!("2026-05-{n:02}T08:00:00Z"));
    own.append(&(1..=9).map(day).collect::<Vec<_>>()).unwrap();
    // Put in later with an earlier date; and an old entry once more.
    own.append(&[attempt("late", "2026-05-03T10:00:00Z"), day(10), day(4)]).unwrap();
    let witness = fresh_key(shop.dir.path(), "");
    let cosign = |name: &str| {
        let arguments = [&shop.log, path("--key"), &witness, path("--name"), path(name), path("--keys"), &shop.keys];
        run(&arguments, &["log", "witness"], None)
    };
    let (code, said) = cosign("witness.example/1");
    assert!(code == 0 && said.contains("seen for the first time"), "{said}");
    let key = said.lines().find(|l| l.starts_with("witness.example/1+")).unwrap();
    fs::write(&shop.keys, fs::read_to_string(&shop.keys).unwrap() + key + "\n").unwrap();
    // In line with its neighbours, but the witness had seen the log without it.
    own.append(&[attempt("after", "2026-05-11T08:00:00Z")]).unwrap();
    let job = job(shop.dir.path(), 1, 60);
    assert_eq!(run(&[&job, path("--out"), &sealed, path("--log"), &shop.log], &["seal"], None).0, 0);
    let (code, said, found) = shop.audit(&sealed, "out");
    let count = |code: &str| found.iter().filter(|c| *c == code).count();
    assert_eq!(code, 4, "{said}");
    assert_eq!(count("time-out-of-order"), 2, "{said}");
    assert_eq!((count("entry-repeated"), count("time-against-witness"), count("attempt-missing")), (1, 1, 1), "{said}");
    assert!(said.contains("entry 9 says 2026-05-03T10:00:00Z") && said.contains("entry 11 repeats entry 3"), "{said}");
    assert!(said.contains("entry 12 says 2026-05-11T08:00:00Z, yet it was added after witness.example/1"), "{said}");
    let (code, said) = run(&[&shop.log, path("--keys"), &shop.keys], &["log", "check"], None);
    assert!(code == 3 && said.contains("2 entries have times") && said.contains("witness.example/1 saw 12"), "{said}");
    let (code, said) = cosign("witness.example/1");
    assert!(code == 0 && said.contains("continue the 12 seen before"), "{said}");
}

/// Photos that were set aside, and typed values that were changed until the verdict fitted.
#[test]
fn photos_set_aside_and_verdicts_made_to_fit_are_named() {
    use baywitness::record::{JobRecord, Verdict};
    use baywitness::transparency::Attempt;
    let shop = shop();
    let job = job(shop.dir.path(), 1, 60);
    let json = shop.dir.path().join("result.json");
    run(&[&job, path("--json"), &json], &["verify"], None);
    let now: JobRecord = serde_json::from_slice(&fs::read(&json).unwrap()).unwrap();
    let (mut otherwise, mut more) = (now.clone(), now.clone());
    otherwise.verdict = Verdict::Outside;
    otherwise.inputs.iter_mut().filter(|i| i.role == "job").for_each(|i| i.sha256 = "0".repeat(64));
    let mut aside = now.inputs.iter().find(|i| i.role == "photo").unwrap().clone();
    aside.sha256 = "1".repeat(64);
    more.inputs.push(aside);
    let log = Log::open(&shop.log).unwrap();
    let at = time::macros::datetime!(2026-05-01 08:00 UTC);
    let of = |record: &JobRecord| Attempt::of(record, b"{}", "serve", at, log.order_salt());
    log.append(&[of(&otherwise), of(&more)]).unwrap();
    let sealed = shop.dir.path().join("sealed");
    assert_eq!(run(&[&job, path("--out"), &sealed, path("--log"), &shop.log], &["seal"], None).0, 0);
    let (_, said, found) = shop.audit(&sealed, "out");
    assert_eq!(found, ["photos-missing", "verdict-restated"], "{said}");
    assert!(said.contains("attempt 1 of repair order R-7: 1 of its 3 photos are in no job"), "{said}");
    assert!(
        said.contains("judged otherwise: entry 0 at 2026-05-01T08:00:00Z: outside with another job.toml"),
        "{said}"
    );
}

/// The record of a job as `verify` writes it.
fn record(shop: &Shop, job: &Path) -> baywitness::record::JobRecord {
    let json = shop.dir.path().join("result.json");
    run(&[job, path("--json"), &json], &["verify"], None);
    serde_json::from_slice(&fs::read(&json).unwrap()).unwrap()
}

/// Logs that the stand of a record's photos was outside.
fn log_outside(shop: &Shop, mut record: baywitness::record::JobRecord) {
    record.verdict = baywitness::record::Verdict::Outside;
    let log = Log::open(&shop.log).unwrap();
    let at = time::macros::datetime!(2026-05-01 08:00 UTC);
    log.append(&[baywitness::transparency::Attempt::of(&record, b"{}", "verify", at, log.order_salt())]).unwrap();
}

fn add_photo(job: &Path, name: &str, grey: u8) {
    image::GrayImage::from_pixel(320, 240, image::Luma([grey])).save(job.join("photos").join(name)).unwrap();
}

/// Photos that were judged outside serve a job that says otherwise, with one more that shows nothing beside them.
#[test]
fn a_verdict_restated_beside_a_photo_that_was_added_is_named() {
    let shop = shop();
    let job = job(shop.dir.path(), 1, 60);
    let now = record(&shop, &job);
    add_photo(&job, "z.png", 200);
    log_outside(&shop, now);
    let archive = shop.dir.path().join("archive");
    let seal = |job: &Path, name: &str| {
        let out = archive.join(name);
        assert_eq!(run(&[job, path("--out"), &out, path("--log"), &shop.log], &["seal"], None).0, 0);
    };
    fs::create_dir(&archive).unwrap();
    seal(&job, "sealed");
    let (code, said, found) = shop.audit(&archive, "out");
    assert_eq!((code, found), (4, vec!["verdict-restated".to_owned()]), "{said}");
    assert!(said.contains("entry 0 at 2026-05-01T08:00:00Z: outside with other photos beside these"), "{said}");
    fs::remove_file(job.join("photos/a.png")).unwrap();
    seal(&job, "another");
    let (_, said, found) = shop.audit(&archive, "out");
    assert_eq!(found, ["verdict-restated", "verdict-restated"], "{said}");
}

/// The photos of an attempt are all there, in jobs of which each has one: the attempt is not.
#[test]
fn an_attempt_scattered_over_jobs_is_named() {
    let shop = shop();
    let whole = job(shop.dir.path(), 1, 60);
    assert_eq!(run(&[&whole, path("--log"), &shop.log], &["verify"], None).0, 4);
    let archive = shop.dir.path().join("archive");
    for name in ["a.png", "b.png"] {
        let home = archive.join(name);
        copy(whole.parent().unwrap(), &home);
        fs::remove_file(home.join("J 1/photos").join(name)).unwrap();
    }
    let (code, said, found) = shop.audit(&archive, "out");
    assert_eq!((code, found), (4, vec!["attempt-missing".to_owned()]), "{said}");
    assert!(said.contains("attempt 1 of repair order R-7: its 2 photos lie scattered"), "{said}");
    copy(whole.parent().unwrap(), &archive.join("whole"));
    assert_eq!(shop.audit(&archive, "out").2, Vec::<String>::new());
}

/// More photos are honest work.
#[test]
fn photos_that_were_added_to_an_open_job_are_no_restating() {
    let shop = shop();
    let job = job(shop.dir.path(), 1, 60);
    let archive = shop.dir.path().join("archive");
    fs::create_dir(&archive).unwrap();
    assert_eq!(run(&[&job, path("--log"), &shop.log], &["verify"], None).0, 4);
    add_photo(&job, "c.png", 200);
    let sealed = archive.join("sealed");
    assert_eq!(run(&[&job, path("--out"), &sealed, path("--log"), &shop.log], &["seal"], None).0, 0);
    let (_, said, found) = shop.audit(&archive, "out");
    assert!(found.is_empty() && said.contains("every attempt is in the archive"), "{said}");
}

/// Repair order and number typed after the first verdict, a vehicle corrected, a job of another order beside it.
#[test]
fn what_was_typed_before_it_was_sealed_makes_no_other_attempt() {
    let shop = shop();
    let job = job(shop.dir.path(), 1, 60);
    let archive = shop.dir.path().join("archive");
    fs::create_dir(&archive).unwrap();
    let file = job.join("job.toml");
    let typed = fs::read_to_string(&file).unwrap();
    let bare = typed.replace("series = \"R-7\"\nattempt = 1\n", "");
    assert_ne!(bare, typed);
    for text in [&bare, &typed] {
        fs::write(&file, text).unwrap();
        assert_eq!(run(&[&job, path("--log"), &shop.log], &["verify"], None).0, 4);
    }
    for (name, text) in [
        ("sealed", format!("{typed}[vehicle]\ndescription = \"invented\"\n")),
        ("other", typed.replace("R-7", "R-8").replace("J 1", "J 2")),
    ] {
        fs::write(&file, text).unwrap();
        let out = archive.join(name);
        assert_eq!(run(&[&job, path("--out"), &out, path("--log"), &shop.log], &["seal"], None).0, 0);
        let (_, said, found) = shop.audit(&archive, "out");
        assert!(found.is_empty() && said.contains("every attempt is in the archive"), "{said}");
    }
}

/// A secret of another log, and one that was replaced halfway: who filed everything as it was is accused of nothing.
#[test]
fn a_secret_that_is_not_the_logs_accuses_nobody() {
    let shop = shop();
    let archive = shop.dir.path().join("archive");
    let log = |number: u32| {
        let job = job(shop.dir.path(), number, 60 + 30 * number as u8);
        assert_eq!(run(&[&job, path("--log"), &shop.log], &["verify"], None).0, 4);
        copy(job.parent().unwrap(), &archive.join(number.to_string()));
    };
    (1..=2).for_each(log);
    assert_eq!(shop.audit(&archive, "own").2, Vec::<String>::new());
    let other = shop.dir.path().join("other-salt");
    fs::write(&other, "ab".repeat(32)).unwrap();
    let out = shop.dir.path().join("with-other");
    let arguments = [
        &archive,
        path("--out"),
        &out,
        path("--log"),
        &shop.log,
        path("--log-keys"),
        &shop.keys,
        path("--log-orders"),
        &other,
    ];
    let (code, said) = run(&arguments, &["audit"], None);
    assert!(code == 4 && said.contains("it is not the log's secret"), "{code}: {said}");
    assert!(!said.contains("attempt-refiled") && said.contains("orders-unknown"), "{said}");
    // The machine that writes the log got another secret; what was logged before has the old one.
    fs::copy(&other, private_folder(&shop.log).join("order-salt")).unwrap();
    log(3);
    let (_, said, found) = shop.audit(&archive, "halfway");
    assert!(found.is_empty() && said.contains("every attempt is in the archive"), "{said}");
}

/// One job verified twice within a second; the same entry once more among others is another matter.
#[test]
fn what_is_logged_twice_in_a_second_is_no_repetition() {
    let shop = shop();
    let own = Log::open(&shop.log).unwrap();
    let [one, two] = ["2026-05-01T08:00:00Z", "2026-05-01T09:00:00Z"].map(|at| attempt("x", at));
    own.append(&[one.clone(), one.clone()]).unwrap();
    own.append(std::slice::from_ref(&one)).unwrap();
    let job = job(shop.dir.path(), 1, 60);
    let repeated = |out: &str| shop.audit(&job, out).2.iter().filter(|code| *code == "entry-repeated").count();
    assert_eq!(repeated("a"), 0);
    own.append(&[two, one]).unwrap();
    assert_eq!(repeated("b"), 1);
}

/// A chamber witnesses the logs of all its workshops with one key.
#[test]
fn a_witness_of_two_logs_remembers_each() {
    let shop = shop();
    let second = shop.dir.path().join("second/log");
    let other = Log::create(&second, "other.example/attempts").unwrap();
    Log::open(&shop.log).unwrap().append(&super::attempts(0, 3)).unwrap();
    other.append(&super::attempts(0, 5)).unwrap();
    let published = fs::read_to_string(&shop.keys).unwrap();
    fs::write(&shop.keys, format!("{published}\n{}\n", other.verifier().text())).unwrap();
    let key = fresh_key(shop.dir.path(), "");
    let cosign = |log: &Path, more: &[&Path]| {
        let arguments = [log, path("--key"), &key, path("--name"), path("w.example/1"), path("--keys"), &shop.keys];
        run(&[&arguments[..], more].concat(), &["log", "witness"], None)
    };
    for log in [&shop.log, &second] {
        let (code, said) = cosign(log, &[]);
        assert!(code == 0 && said.contains("seen for the first time"), "{code}: {said}");
    }
    for (log, seen) in [(&shop.log, "the 3 seen before"), (&second, "the 5 seen before")] {
        let (code, said) = cosign(log, &[]);
        assert!(code == 0 && said.contains(seen), "{code}: {said}");
    }
    // The first one's memory lies where it always did.
    let first = key.with_extension("seen");
    let (code, said) = cosign(&second, &[path("--seen"), &first]);
    assert!(code == 2 && said.contains("remembers the log shop.example/attempts") && said.contains("--seen"), "{said}");
    // A log that was made anew under its name is refused as before.
    fs::remove_dir_all(shop.dir.path().join("second")).unwrap();
    let anew = Log::create(&second, "other.example/attempts").unwrap();
    fs::write(&shop.keys, anew.verifier().text()).unwrap();
    let (code, said) = cosign(&second, &[]);
    assert!(code == 1 && said.contains("the log was truncated"), "{code}: {said}");
}

#[test]
fn a_rewritten_log_ends_the_trust_in_it() {
    let shop = shop();
    let own = Log::open(&shop.log).unwrap();
    own.append(&super::attempts(0, 3)).unwrap();
    // Whoever holds the key shows one log to the auditor and another to the insurer.
    let twin = shop.dir.path().join("twin/log");
    copy(&shop.log, &twin);
    copy(&private_folder(&shop.log), &private_folder(&twin));
    own.append(&super::attempts(3, 4)).unwrap();
    Log::open(&twin).unwrap().append(&super::attempts(30, 31)).unwrap();
    let kept = shop.dir.path().join("kept");
    fs::copy(shop.log.join("checkpoint"), &kept).unwrap();
    let check = |log: &Path| run(&[log, path("--keys"), &shop.keys, path("--earlier"), &kept], &["log", "check"], None);
    let (code, said) = check(&shop.log);
    assert!(code == 0 && said.contains("begins with every checkpoint"), "{said}");
    let (code, said) = check(&twin);
    assert!(code == 1 && said.contains("the log was forked"), "{code}: {said}");
    let again = shop.dir.path().join("again/log");
    Log::create(&again, "shop.example/attempts").unwrap();
    let (code, said) = check(&again);
    assert!(code == 1 && said.contains("not signed by the key"), "{code}: {said}");
    fs::remove_dir_all(shop.log.join("tile")).unwrap();
    let (code, said) = check(&shop.log);
    assert!(code == 2 && said.contains("tile"), "{code}: {said}");
    for (arguments, words) in [
        (vec![path("verify"), path("samples/good"), path("--log"), &kept], "holds no log"),
        (vec![path("log"), path("show"), path("none")], "log new none"),
        (vec![path("log"), path("new"), path("x"), path("--origin"), path("a b")], "without blanks"),
    ] {
        let (code, said) = run(&arguments, &[], None);
        assert!(code == 2 && said.contains(words), "{code}: {said}");
    }
}

/// What is published tells nothing about vehicle and people to who does not have the job.
#[test]
fn an_entry_does_not_give_the_job_away() {
    let shop = shop();
    let job = job(shop.dir.path(), 1, 60);
    run(&[&job, path("--log"), &shop.log], &["verify"], None);
    let entries = fs::read(shop.log.join("tile/entries/000.p/1")).unwrap();
    let text = String::from_utf8_lossy(&entries);
    assert!(text.contains("\"verdict\":\"retake\""));
    // Neither what was typed nor any digest that could be tried with guesses of it.
    let digests = [job.join("job.toml"), job.join("../setup.toml"), job.join("photos/a.png")]
        .map(|file| digest(&fs::read(file).unwrap()));
    assert!(!text.contains("R-7") && !text.contains("J 1"));
    assert!(digests.iter().all(|digest| !text.contains(digest.as_str())));
}

/// As entries have hashes.
fn digest(bytes: &[u8]) -> String {
    use base64::Engine;
    use sha2::Digest;
    base64::engine::general_purpose::STANDARD_NO_PAD.encode(sha2::Sha256::digest(bytes))
}
