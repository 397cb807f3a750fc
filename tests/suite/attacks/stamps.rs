//! Attacks on timestamps, by whoever runs an authority or has its clock, and by whoever puts a file where one is looked for.

use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};

use baywitness::custody::moments;
use baywitness::evidence::NAMESPACE;
use baywitness::record::JobRecord;
use serde_json::json;
use time::format_description::well_known::Rfc3339;

use super::issuer::{BENCH, GOOD, REPORT, TAGS, ago, failed, passed, written};
use super::workshop::{key, signers};
use crate::evidence::doors::{run, seal_with, small_job};

/// An authority that lends its clock, or one whose token is old and is put beside new evidence.
#[test]
fn timestamps_of_times_that_cannot_be() {
    let (yesterday, today) = (written(ago(1)), written(ago(0)));
    let check = |name: &str, tokens: &[(&str, &str)]| BENCH.check(&BENCH.stamped("sealed", name, tokens));
    let renewed = [("old", "20190101000000Z"), ("good", "20190601000000Z"), ("good", today.as_str())];
    for (name, tokens) in [("once", &renewed[2..]), ("renewed", &renewed[..])] {
        let (code, said) = check(name, tokens);
        assert_eq!((code, passed(&said)), (0, tokens.len()), "{name}: {said}");
    }
    for (name, tokens, words) in [
        ("ahead", vec![("good", "20390101000000Z")], "ahead of this machine's clock"),
        (
            "falls",
            vec![("good", yesterday.as_str()), ("good", "20160101000000Z")],
            "before the timestamp that it covers",
        ),
        ("hides", vec![("old", "20190101000000Z"), ("good", "20160101000000Z")], "before the timestamp that it covers"),
        ("late", vec![("old", "20230101000000Z")], "had ended when it was made"),
        ("early", vec![("good", "20140101000000Z")], "had not begun when it was made"),
    ] {
        let (code, said) = check(name, &tokens);
        assert!(code == 1 && failed(&said, words), "{name}: {code}: {said}");
    }
    // What covers an authority's certificate that has ended must count itself.
    let (code, said) = check("uncovered", &[("old", "20190101000000Z"), ("strange", "20190601000000Z")]);
    assert!(code == 0 && passed(&said) == 0 && said.contains("no newer timestamp that counts covers it"), "{said}");
}

/// A certificate for something else stamps, by an authority that the reader lists for other reasons.
#[test]
fn certificates_that_are_not_for_timestamps_alone() {
    for use_of_it in ["uncritical", "serves", "server", "signs"] {
        // That for signatures is there already.
        if use_of_it != "signs" {
            BENCH.listed.issue(use_of_it, GOOD, use_of_it);
        }
        let folder = BENCH.stamped("sealed", &format!("use-{use_of_it}"), &[(use_of_it, &written(ago(0)))]);
        let (code, said) = BENCH.check(&folder);
        assert!(code == 1 && failed(&said, "not for timestamps alone"), "{use_of_it}: {code}: {said}");
    }
}

/// Evidence is invented and an authority with a wrong clock found for it: the job itself says that it was later.
#[test]
fn a_folder_stamped_before_its_photos_were_taken() {
    let shop = &BENCH.shop;
    for (name, at, stamped_before) in [("before", ago(-1), true), ("after", ago(1), false)] {
        let at = at.replace_nanosecond(0).unwrap();
        let job = small_job(&shop.at(&format!("{name}-in")));
        let calibration = format!("[calibration]\nresult = \"successful\"\nat = {}\n", at.format(&Rfc3339).unwrap());
        let text = fs::read_to_string(job.join("job.toml")).unwrap();
        fs::write(job.join("job.toml"), text + &calibration).unwrap();
        let (code, said) = seal_with(&job, &shop.at(&format!("{name}-sealed")), &shop.key, None);
        assert_eq!(code, 0, "{said}");
        let folder = BENCH.stamped(&format!("{name}-sealed"), name, &[("good", &written(ago(0)))]);
        let (code, said) = BENCH.check(&folder);
        let told = failed(&said, "stamped before the calibration ran");
        assert_eq!((code, told), (i32::from(stamped_before), stamped_before), "{said}");
        let json = fs::read(folder.join("data/result.json")).unwrap();
        let latest = moments::latest(&JobRecord::from_json(&json).unwrap());
        assert_eq!(latest, Some((at, "calibration".to_owned())));
        // A photo that knows its own time is later still.
        let mut record: serde_json::Value = serde_json::from_slice(&json).unwrap();
        record["photos"][1]["taken"] = json!("2045-01-02T03:04:05+01:00");
        let latest = moments::latest(&serde_json::from_value(record).unwrap()).unwrap();
        assert_eq!((latest.0.unix_timestamp(), latest.1.as_str()), (2_366_935_445, "photos/b.png"));
    }
    let json = fs::read(shop.at("sealed/data/result.json")).unwrap();
    assert_eq!(moments::latest(&JobRecord::from_json(&json).unwrap()), None);
}

/// Tokens are read one after the other up to the first name that is missing: whatever bears a later one lay there unseen.
#[test]
fn a_file_that_calls_itself_a_timestamp() {
    let today = written(ago(0));
    let two = [("good", today.as_str()), ("good", today.as_str())];
    let honest = BENCH.stamped("sealed", "two", &two);
    let (code, said) = BENCH.check(&honest);
    assert_eq!((code, passed(&said)), (0, 2), "{said}");
    let (code, said) = run(&[&honest, Path::new("--out"), &BENCH.shop.at("two-copy")], &["redact"], None);
    assert_eq!(code, 0, "{said}");
    let (code, said) = BENCH.check(&BENCH.shop.at("two-copy"));
    assert_eq!((code, passed(&said)), (0, 2), "{said}");
    let [junk, gap] =
        [("junk", &two[..1]), ("gap", &two[..])].map(|(name, tokens)| BENCH.stamped("sealed", name, tokens));
    fs::write(junk.join(format!("{TAGS}.9.tsr")), "<p>another report</p>").unwrap();
    fs::remove_file(gap.join(format!("{TAGS}.tsr"))).unwrap();
    for (folder, name) in [(&junk, "9.tsr"), (&gap, "2.tsr")] {
        let words = format!("{name}: it is not a timestamp in its turn");
        let (code, said) = BENCH.check(folder);
        assert!(code == 1 && failed(&said, &words), "{code}: {said}");
        let (code, said) = run(&[folder, Path::new("--out"), &BENCH.shop.at("no-copy")], &["redact"], None);
        assert!(code != 0 && !BENCH.shop.at("no-copy").exists(), "{code}: {said}");
        let out = BENCH.shop.at(&format!("audit-{name}"));
        assert_ne!(run(&[folder, Path::new("--out"), &out], &["audit"], None).0, 0);
        assert!(fs::read_to_string(out.join("audit.csv")).unwrap().contains("altered"));
    }
}

/// A folder's newest timestamp tells until when it counts; a file that is none would keep it off the list.
#[test]
fn a_timestamp_that_must_be_renewed_hidden_by_a_file_that_is_none() {
    let folder = BENCH.stamped("sealed", "due", &[("good", &written(ago(0)))]);
    let due = || run(&[&folder], &["due", "--on", "2040-01-01"], None);
    let (code, said) = due();
    assert!(code == 0 && said.contains("1 due"), "{code}: {said}");
    for name in ["2.tsr", "9.tsr"] {
        let junk = folder.join(format!("{TAGS}.{name}"));
        fs::write(&junk, "none").unwrap();
        let (code, said) = due();
        assert!(code == 2 && said.contains(name), "{code}: {said}");
        fs::remove_file(junk).unwrap();
    }
}

/// Nobody can tell that there was one; a reader who asks for it is told that there is none.
#[test]
fn a_timestamp_taken_out() {
    let told = |said: &str| {
        let words = "none, though authorities were given";
        said.lines().any(|line| line.starts_with("not checkable   timestamp") && line.contains(words))
    };
    let (code, said) = BENCH.check(&BENCH.copy("sealed", "taken-out"));
    assert!(code == 0 && told(&said), "{code}: {said}");
    let (code, said) = BENCH.check_pdf("taken-out", &REPORT.0, &REPORT.1);
    assert!(code == 0 && told(&said), "{code}: {said}");
    for folder in [BENCH.shop.at("taken-out"), BENCH.shop.at("taken-out.pdf")] {
        assert!(!run(&[&folder], &["check"], None).1.contains("timestamp"));
    }
}

/// A token is over the bytes and the digests, and names nobody but the authority: whoever has a stamped folder puts his
/// own signature in the place of the other, and it was "his" since then.
#[test]
fn a_stamped_folder_signed_anew_by_somebody_else() {
    let folder = BENCH.stamped("sealed", "signed-anew", &[("good", &written(ago(0)))]);
    let home = BENCH.shop.at("thief");
    fs::create_dir_all(&home).unwrap();
    let theirs = key(&home, "own");
    fs::remove_file(folder.join(format!("{TAGS}.sig"))).unwrap();
    let mut sign = Command::new("ssh-keygen");
    sign.args(["-q", "-Y", "sign", "-n", NAMESPACE, "-f"]).arg(&theirs).arg(folder.join(TAGS));
    assert!(sign.stderr(Stdio::null()).status().unwrap().success());
    let (list, root) = (signers(&home, &theirs, ""), BENCH.listed.at("ca.pem"));
    let arguments = [&folder, Path::new("--signers"), &list, Path::new("--timestamp-ca"), &root];
    let (code, said) = run(&arguments, &["check"], None);
    assert_eq!((code, passed(&said)), (0, 1), "{said}");
    // The first owner's list does not name him.
    assert_eq!(BENCH.check(&folder).0, 3);
}

/// What the program says and how it ends, where it ends within a minute; else it is stopped.
#[cfg(unix)]
fn ended(arguments: &[&Path]) -> (i32, String) {
    let mut command = crate::program::program();
    command.args(arguments).stdin(Stdio::null()).stdout(Stdio::piped()).stderr(Stdio::piped());
    let mut child = command.spawn().unwrap();
    let begun = std::time::Instant::now();
    while child.try_wait().unwrap().is_none() {
        if begun.elapsed() > std::time::Duration::from_secs(60) {
            child.kill().unwrap();
            child.wait().unwrap();
            panic!("{arguments:?} does not end");
        }
        std::thread::sleep(std::time::Duration::from_millis(20));
    }
    let output = child.wait_with_output().unwrap();
    let text = [output.stdout, output.stderr].map(|b| String::from_utf8(b).unwrap()).concat();
    (output.status.code().unwrap(), text)
}

/// Whoever reads a pipe waits for whoever writes into it: one such folder would keep a whole archive from being audited.
#[cfg(unix)]
#[test]
fn a_pipe_or_a_file_without_end_in_place_of_a_small_one() {
    let archive = BENCH.shop.at("pipes");
    fs::create_dir_all(&archive).unwrap();
    let check = Path::new("check");
    let names = ["bagit.txt", TAGS, "tagmanifest-sha512.txt.sig", "tagmanifest-sha512.txt.tsr", "data/redaction.json"];
    for (n, name) in names.into_iter().enumerate() {
        let folder = BENCH.copy("sealed", &format!("pipes/{n}"));
        let file = folder.join(name);
        if file.exists() {
            fs::remove_file(&file).unwrap();
        }
        assert!(Command::new("mkfifo").arg(&file).status().unwrap().success(), "this test needs mkfifo");
        let (code, said) = ended(&[check, &folder]);
        assert!(code == 1 && failed(&said, "it is not a file of"), "{name}: {code}: {said}");
    }
    let (code, said) = ended(&[Path::new("due"), &archive]);
    assert!(code == 2 && said.contains("it is not a file of a timestamp's size"), "{code}: {said}");
    // It takes no room on the disk, and would take all memory.
    let endless = BENCH.copy("sealed", "endless");
    fs::File::create(endless.join(format!("{TAGS}.sig"))).unwrap().set_len(1 << 36).unwrap();
    let (code, said) = ended(&[check, &endless]);
    assert!(code == 1 && failed(&said, "it is not a file of a signature's size"), "{code}: {said}");
    BENCH.copy("sealed", "pipes/honest");
    let out = BENCH.shop.at("pipes-audit");
    let (code, said) = ended(&[Path::new("audit"), &archive, Path::new("--out"), &out]);
    let table = fs::read_to_string(out.join("audit.csv")).unwrap();
    let altered = table.lines().filter(|line| line.contains("altered")).count();
    assert!(code != 0 && altered == names.len(), "{code}: {said}\n{table}");
    assert_eq!(table.lines().count(), names.len() + 2, "{table}");
}
