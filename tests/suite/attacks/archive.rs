//! Attacks on an archive: what was taken out of it, hidden in it, or typed for whoever opens its tables.

use std::fs;
use std::path::{Path, PathBuf};

use serde_json::Value;

use crate::audit::copy;
use crate::evidence::doors::{run, small_job};
use crate::evidence::{files, fresh_key};

fn path(text: &str) -> &Path {
    Path::new(text)
}

fn audit(archive: &Path, out: &Path) -> (i32, String) {
    run(&[archive, path("--out"), out], &["audit"], None)
}

/// The audit's lines: path below the archive, what became of the evidence, what is said.
fn lines(archive: &Path, out: &Path) -> Vec<(String, String, String)> {
    let text = fs::read_to_string(out.join("audit.jsonl")).unwrap();
    let one = |line: &str| {
        let line: Value = serde_json::from_str(line).unwrap();
        let result = fs::read(out.join(line["result"].as_str().unwrap())).unwrap();
        let result: Value = serde_json::from_slice(&result).unwrap();
        let whole = Path::new(line["path"].as_str().unwrap());
        let path = whole.strip_prefix(archive).unwrap().display().to_string();
        let word = |value: &Value| value.as_str().unwrap_or_default().to_owned();
        (path, word(&line["evidence"]), word(&result["message"]))
    };
    text.lines().map(one).collect()
}

fn paths(archive: &Path, out: &Path) -> Vec<String> {
    lines(archive, out).into_iter().map(|(path, ..)| path).collect()
}

/// A job of its own number and photos below a folder.
fn job(folder: &Path, number: u8) -> PathBuf {
    let job = small_job(folder);
    super::rewrite(&job.join("job.toml"), |text| {
        text.replace("job = \"J 1\"", &format!("job = \"J {number}\"\nseries = \"R-7\"\nattempt = {number}"))
    });
    for name in ["a.png", "b.png"] {
        let grey = image::Luma([40 + 3 * number + u8::from(name == "b.png")]);
        image::GrayImage::from_pixel(320, 240, grey).save(job.join("photos").join(name)).unwrap();
    }
    job
}

/// An archive of two jobs, below `D-1` and `D-2`.
fn archive(dir: &Path) -> PathBuf {
    let archive = dir.join("archive");
    job(&archive.join("may/D-1"), 1);
    job(&archive.join("may/D-2"), 2);
    archive
}

/// Two jobs of one repair order are sealed and signed; the one that is outside goes, and with it no key is needed.
#[test]
fn a_member_of_a_signed_repair_order_removed() {
    let dir = tempfile::tempdir().unwrap();
    let key = fresh_key(dir.path(), "");
    let list = dir.path().join("signers");
    fs::write(&list, format!("T1 {}", fs::read_to_string(key.with_extension("pub")).unwrap())).unwrap();
    let jobs = [1, 2].map(|n| job(&dir.path().join(format!("in-{n}")), n));
    let (archive, out) = (dir.path().join("archive"), dir.path().join("out"));
    let order = archive.join("order");
    fs::create_dir(&archive).unwrap();
    let arguments = [&jobs[0], &jobs[1], path("--out"), &order, path("--key"), &key];
    let (code, said) = run(&arguments, &["seal"], None);
    assert_eq!(code, 0, "{said}");
    let check = |folder: &Path| run(&[folder, path("--signers"), &list], &["check"], None);
    let mut folders: Vec<PathBuf> = fs::read_dir(&order).unwrap().map(|e| e.unwrap().path()).collect();
    folders.retain(|p| p.is_dir());
    folders.sort();
    // As it was sealed: no line but those of the jobs.
    let (code, said) = audit(&archive, &out);
    assert!(code == 4 && said.contains("2 jobs"), "{code}: {said}");
    let (code, said) = check(&folders[1]);
    assert!(code == 0 && said.contains("signature of the repair order's index"), "{code}: {said}");
    let gone = folders[0].file_name().unwrap().to_str().unwrap().to_owned();
    fs::remove_dir_all(&folders[0]).unwrap();
    let missing = format!("{gone}/tagmanifest-sha512.txt is missing");
    let (code, said) = check(&folders[1]);
    assert!(code == 1 && said.contains(&missing), "{code}: {said}");
    let fresh = dir.path().join("fresh");
    assert_eq!(audit(&archive, &fresh).0, 2);
    let found = lines(&archive, &fresh);
    let of_order = found.iter().find(|(path, ..)| path == "order").unwrap();
    assert!(of_order.1 == "altered" && of_order.2.contains(&missing), "{found:?}");
    // An index that was written to fit has no signature of the workshop's.
    super::rewrite(&order.join("index-sha512.txt"), |text| {
        text.lines().filter(|l| !l.contains(&gone)).map(|l| format!("{l}\n")).collect()
    });
    for harm in [|_: &Path| (), |sig: &Path| fs::remove_file(sig).unwrap()] {
        harm(&order.join("index-sha512.txt.sig"));
        assert_eq!(audit(&archive, &fresh).0, 2);
        let found = lines(&archive, &fresh);
        let of_order = found.iter().find(|(path, ..)| path == "order").unwrap();
        assert!(of_order.2.contains("is not signed by who signed"), "{found:?}");
    }
    // Put in later: it is none of those that were sealed.
    copy(&folders[1], &order.join("later"));
    assert_eq!(audit(&archive, &fresh).0, 2);
    assert!(lines(&archive, &fresh).iter().any(|line| line.2.contains("later/tagmanifest-sha512.txt was added")));
}

/// Whoever makes a job of the folder above them hides all that lie below it.
#[test]
fn jobs_hidden_below_another_job() {
    let dir = tempfile::tempdir().unwrap();
    let (archive, out) = (archive(dir.path()), dir.path().join("out"));
    let both = ["may/D-1/J 1", "may/D-2/J 1"];
    assert_eq!(audit(&archive, &out).0, 4);
    assert_eq!(paths(&archive, &out), both);
    let cover = job(&dir.path().join("cover"), 3);
    copy(&cover, &archive.join("may"));
    for name in ["kit.toml", "setup.toml", "camera.toml"] {
        fs::copy(dir.path().join("cover").join(name), archive.join(name)).unwrap();
    }
    for out in [&out, &dir.path().join("fresh")] {
        assert_eq!(audit(&archive, out).0, 4);
        assert_eq!(paths(&archive, out), ["may", both[0], both[1]]);
    }
    // Nor is any folder of a job a hiding place.
    for below in ["photos", "aside", "sealed"] {
        copy(&archive.join("may/D-1"), &archive.join("may").join(below).join("D-3"));
        audit(&archive, &out);
        let hidden = format!("may/{below}/D-3/J 1");
        assert!(paths(&archive, &out).contains(&hidden), "{hidden}");
    }
}

/// A folder that the auditor has seen is taken away; one that only moved is not named.
#[test]
fn a_folder_that_an_earlier_audit_knew_removed() {
    let dir = tempfile::tempdir().unwrap();
    let (archive, out) = (archive(dir.path()), dir.path().join("out"));
    assert_eq!(audit(&archive, &out).0, 4);
    fs::rename(archive.join("may"), archive.join("2026")).unwrap();
    assert_eq!(audit(&archive, &out).0, 4);
    assert_eq!(paths(&archive, &out), ["2026/D-1/J 1", "2026/D-2/J 1"]);
    fs::remove_dir_all(archive.join("2026/D-1")).unwrap();
    for more in [&[][..], &[path("--recompute")], &[]] {
        let arguments = [&[archive.as_path(), path("--out"), &out], more].concat();
        let (code, said) = run(&arguments, &["audit"], None);
        assert_eq!(code, 2, "{said}");
        let found = lines(&archive, &out);
        assert_eq!(found.len(), 2, "{found:?}");
        assert!(found[0].0 == "2026/D-1/J 1" && found[0].1 == "gone" && found[0].2.contains("is no more"), "{found:?}");
    }
    // Of what nobody asked for now, nothing is said.
    let (code, said) = audit(&archive.join("2026/D-2"), &out);
    assert!(code == 4 && said.contains("1 jobs"), "{code}: {said}");
}

/// Other names, links and depth keep a job from being read; it is said of each.
#[cfg(unix)]
#[test]
fn a_job_kept_from_being_read_by_its_name() {
    let dir = tempfile::tempdir().unwrap();
    let (archive, out) = (archive(dir.path()), dir.path().join("out"));
    let named = |words: &str, what: &Path| {
        let (code, said) = audit(&archive, &out);
        assert!(said.contains(&what.display().to_string()) && said.contains(words), "{words}: {said}");
        assert_eq!(code, 2, "{said}");
    };
    let job_file = archive.join("may/D-1/J 1/job.toml");
    for name in ["Job.toml", "job.toml ", "job.toml.old"] {
        fs::rename(&job_file, job_file.with_file_name(name)).unwrap();
        named("looks like a job file", &job_file.with_file_name(name));
        fs::rename(job_file.with_file_name(name), &job_file).unwrap();
    }
    let sealed = dir.path().join("sealed.tar");
    assert_eq!(run(&[&archive.join("may/D-1/J 1"), path("--out"), &sealed], &["seal"], None).0, 0);
    for (name, words) in [("D-9.tar ", "rename it"), ("D-9.dat", "rename it"), ("D-9.zip", "rename it")] {
        let hidden = archive.join(name);
        fs::copy(&sealed, &hidden).unwrap();
        named(words, &hidden);
        fs::remove_file(&hidden).unwrap();
    }
    fs::write(archive.join("more.zip"), "PK").unwrap();
    named("unpack it", &archive.join("more.zip"));
    fs::remove_file(archive.join("more.zip")).unwrap();
    let away = dir.path().join("away");
    fs::rename(archive.join("may/D-1"), &away).unwrap();
    for target in [&away, &sealed] {
        let link = archive.join("D-1.tar");
        std::os::unix::fs::symlink(target, &link).unwrap();
        named("leads out of what is audited", &link);
        fs::remove_file(&link).unwrap();
    }
    let deep = (0..45).fold(archive.clone(), |path, _| path.join("x"));
    fs::create_dir_all(&deep).unwrap();
    fs::rename(&away, deep.join("D-1")).unwrap();
    named("too many folders", &(0..41).fold(archive.clone(), |path, _| path.join("x")));
    fs::rename(deep.join("D-1"), archive.join("may/D-1")).unwrap();
    fs::remove_dir_all(archive.join("x")).unwrap();
    // A link within the archive, an editor's leftovers, attachments of a job: nothing to say.
    std::os::unix::fs::symlink(archive.join("may/D-2"), archive.join("again")).unwrap();
    fs::write(job_file.with_file_name("job.toml~"), "").unwrap();
    fs::write(job_file.with_file_name("scan.zip"), "PK").unwrap();
    fs::write(job_file.with_file_name("scan.tar"), "").unwrap();
    let (code, said) = audit(&archive, &out);
    assert!(code == 4 && said.contains("2 jobs"), "{code}: {said}");
}

/// Size and time of a file are easily put back.
#[test]
fn evidence_overwritten_with_size_and_time_put_back() {
    let dir = tempfile::tempdir().unwrap();
    let (archive, out) = (dir.path().join("archive"), dir.path().join("out"));
    let sealed = archive.join("E");
    fs::create_dir(&archive).unwrap();
    assert_eq!(run(&[&job(&dir.path().join("in"), 1), path("--out"), &sealed], &["seal"], None).0, 0);
    assert_eq!(audit(&archive, &out).0, 4);
    assert!(audit(&archive, &out).1.contains("1 of them kept"), "nothing changed, nothing is judged again");
    let photo = sealed.join("data/job/photos/a.png");
    let (mut bytes, before) = (fs::read(&photo).unwrap(), fs::metadata(&photo).unwrap().modified().unwrap());
    let middle = bytes.len() / 2;
    bytes[middle] ^= 0x55;
    fs::write(&photo, &bytes).unwrap();
    fs::File::options().write(true).open(&photo).unwrap().set_modified(before).unwrap();
    let (code, said) = audit(&archive, &out);
    assert_eq!(code, 2, "{said}");
    assert_eq!(lines(&archive, &out)[0].1, "altered");
}

/// Photos that contradict are left in the folder and out of the list.
#[test]
fn photos_left_out_of_the_jobs_list() {
    let dir = tempfile::tempdir().unwrap();
    let job = job(&dir.path().join("archive"), 1);
    let findings = || {
        let json = dir.path().join("result.json");
        run(&[&job, path("--json"), &json], &["verify"], None);
        let record: Value = serde_json::from_slice(&fs::read(&json).unwrap()).unwrap();
        let all = record["findings"].as_array().unwrap().clone();
        all.into_iter().filter(|f| f["message_phrase"]["key"] == "findings-photos-not-listed").collect::<Vec<_>>()
    };
    // A job that lists none has all that lie there.
    assert!(findings().is_empty());
    let lists = |names: &str| {
        let text = fs::read_to_string(job.join("job.toml")).unwrap();
        let rest: String = text.lines().filter(|l| !l.starts_with("photos")).map(|l| format!("{l}\n")).collect();
        fs::write(job.join("job.toml"), rest.replacen("setup =", &format!("photos = [{names}]\nsetup ="), 1)).unwrap();
    };
    lists("\"photos/a.png\", \"photos/b.png\"");
    assert!(findings().is_empty());
    let out = dir.path().join("out");
    audit(&dir.path().join("archive"), &out);
    lists("\"photos/a.png\"");
    for n in 0..7 {
        fs::copy(job.join("photos/a.png"), job.join(format!("photos/c{n}.png"))).unwrap();
    }
    let found = findings();
    assert_eq!(found.len(), 1);
    assert!(found[0]["message"].as_str().unwrap().contains("photos/b.png, photos/c0.png"), "{found:?}");
    assert!(found[0]["message"].as_str().unwrap().contains("and 2 more"), "{found:?}");
    audit(&dir.path().join("archive"), &out);
    assert!(fs::read_to_string(out.join("audit.csv")).unwrap().contains("record-incomplete"));
    // Sealed with the rest, and a masked copy does not show them.
    let (sealed, masked) = (dir.path().join("sealed"), dir.path().join("masked"));
    assert_eq!(run(&[&job, path("--out"), &sealed], &["seal"], None).0, 0);
    assert!(sealed.join("data/job/photos/c6.png").is_file());
    assert_eq!(run(&[&sealed], &["check"], None).0, 3);
    let (code, said) = run(&[&sealed, path("--out"), &masked], &["redact"], None);
    assert_eq!(code, 0, "{said}");
    let pictures = files(&masked).into_iter().filter(|f| f.extension().is_some_and(|e| e == "png")).count();
    assert_eq!(pictures, 1);
}

/// What is typed lands in a table that a spreadsheet opens.
#[test]
fn a_formula_typed_as_a_jobs_number() {
    let dir = tempfile::tempdir().unwrap();
    let (archive, out) = (dir.path().join("archive"), dir.path().join("out"));
    let job = small_job(&archive);
    let typed = [("job", "=HYPERLINK(\"x\")"), ("technician", "@SUM(1)"), ("bay", "-2")];
    super::rewrite(&job.join("job.toml"), |text| {
        let [number, who, bay] = typed.map(|(key, value)| format!("{key} = '{value}'"));
        text.replace("job = \"J 1\"", &format!("{number}\n{who}\n{bay}"))
    });
    audit(&archive, &out);
    let trends = dir.path().join("trends");
    assert_eq!(run(&[&out, path("--out"), &trends, path("--names")], &["trends"], None).0, 0);
    let cells = |table: &Path| -> Vec<String> {
        let mut table = csv::Reader::from_path(table).unwrap();
        table.records().flat_map(|row| row.unwrap().iter().map(str::to_owned).collect::<Vec<_>>()).collect()
    };
    for table in [out.join("audit.csv"), trends.join("jobs.csv"), trends.join("trends.csv")] {
        let cells = cells(&table);
        let runs = |c: &&String| c.starts_with(['=', '+', '-', '@', '\t', '\r']) && c.parse::<f64>().is_err();
        assert_eq!(cells.iter().find(runs), None, "{}", table.display());
        assert!(cells.iter().any(|c| c.starts_with("'@SUM")), "{}: {cells:?}", table.display());
    }
    let own = cells(&out.join("audit.csv"));
    assert!(own.contains(&"'=HYPERLINK(\"x\")".to_owned()) && own.contains(&"-2".to_owned()), "{own:?}");
}

/// A folder's name that clears the auditor's terminal, or adds a line to his table.
#[cfg(unix)]
#[test]
fn a_folders_name_that_controls_the_auditors_terminal() {
    let dir = tempfile::tempdir().unwrap();
    let (archive, out) = (dir.path().join("archive"), dir.path().join("out"));
    fs::create_dir(&archive).unwrap();
    small_job(&archive.join("plain Ü"));
    small_job(&archive.join("x\u{1b}[2K\r\n=1\u{202e}"));
    audit(&archive, &out);
    let text = fs::read_to_string(out.join("audit.csv")).unwrap();
    assert!(!text.contains(['\u{1b}', '\r', '\u{202e}']), "{text:?}");
    assert_eq!(text.lines().count(), 3, "{text:?}");
    assert!(text.contains("x\\u{1b}[2K\\r\\n=1\\u{202e}") && text.contains("plain Ü"), "{text:?}");
}
