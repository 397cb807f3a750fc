//! Attacks on a sealed folder by whoever owns the key: more in it, less in it, or something else on its labels than
//! sealing the job puts there.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::sync::LazyLock;

use baywitness::evidence::{Contents, Key, seal, seal_several};
use serde_json::{Value, json};

use super::rewrite;
use super::workshop::Workshop;
use crate::evidence::doors::{run, seal_with, small_job};
use crate::evidence::{contents, payload};

static WORKSHOP: LazyLock<Workshop> = LazyLock::new(|| {
    let shop = Workshop::new();
    assert_eq!(seal_with(&small_job(&shop.at("job")), &shop.at("sealed"), &shop.key, None).0, 0);
    shop
});

/// What `check` says of the sealed folder after its owner changed it and sealed it again.
fn checked(out: &str, change: impl FnOnce(&mut BTreeMap<String, Vec<u8>>)) -> (i32, String) {
    WORKSHOP.checked(("sealed", Some(&WORKSHOP.key)), out, change)
}

/// What a folder holds, to be sealed again.
fn held(folder: &Path) -> Contents {
    contents(folder, payload(folder))
}

/// Archives read a folder's labels before anything else in it.
#[test]
fn labels_that_say_another_verdict() {
    let shop = &*WORKSHOP;
    let (code, said) = checked("honest", |_| ());
    assert_eq!(code, 0, "{said}");
    type Change = fn(&mut Vec<(String, String)>);
    let changes: [(&str, Change); 4] = [
        ("verdict", |all| all.iter_mut().filter(|l| l.0 == "Verdict").for_each(|l| l.1 = "within".to_owned())),
        ("job", |all| all[0].1 = "another job".to_owned()),
        ("more", |all| all.push(("Verdict".to_owned(), "within".to_owned()))),
        ("less", |all| all.retain(|l| l.0 != "Verdict")),
    ];
    for (name, change) in changes {
        let mut contents = held(&shop.at("sealed"));
        change(&mut contents.info);
        seal(&shop.at(&format!("label-{name}")), &contents, Some(&Key::open(&shop.key, &|_| None).unwrap()), None)
            .unwrap();
        let (code, said) = shop.check(&shop.at(&format!("label-{name}")));
        assert!(code == 1 && said.contains("bag-info.txt"), "{name}: {code}: {said}");
    }
}

/// Something that looks like another report lies beside the real one; or a result says more than it says, or twice.
#[test]
fn more_in_a_sealed_folder_than_sealing_puts_there() {
    for (n, name) in ["report-final.html", "OTHER.pdf", "job/photos.txt", "models/notes.txt"].iter().enumerate() {
        let (code, said) = checked(&format!("more-{n}"), |all| {
            all.insert((*name).to_owned(), b"another story".to_vec());
        });
        assert!(code == 1 && said.contains(&format!("has data/{name}")), "{name}: {code}: {said}");
    }
    let rewritten = |out: &str, change: fn(&mut Value, &str) -> String| {
        let (code, said) = checked(&format!("result-{out}"), |all| {
            let text = String::from_utf8(all["result.json"].clone()).unwrap();
            let new = change(&mut serde_json::from_str(&text).unwrap(), &text);
            assert_ne!(new, text);
            all.insert("result.json".to_owned(), new.into_bytes());
            all.retain(|name, _| ![".html", ".pdf"].iter().any(|end| name.ends_with(end)));
        });
        let why = ["result.json is not as the program writes it", "duplicate field"];
        assert!(code == 1 && why.iter().any(|why| said.contains(why)), "{out}: {code}: {said}");
    };
    rewritten("key", |record, _| {
        record["approved_by"] = json!("an invented authority");
        format!("{}\n", serde_json::to_string_pretty(record).unwrap())
    });
    rewritten("twice", |_, text| {
        text.replacen("{", "{\n  \"verdict\": \"within\",", 1).replacen("\"verdict\"", "\"job\"", 1)
    });
}

/// Where a folder has no report, that is said: the reader does not have to know that sealing puts some there.
#[test]
fn reports_taken_out_before_sealing() {
    let (_, said) = checked("bare", |all| {
        all.retain(|name, _| ![".html", ".pdf"].iter().any(|end| name.ends_with(end)));
    });
    let line =
        said.lines().find(|line| line.contains("there is none in the folder")).unwrap_or_else(|| panic!("{said}"));
    assert!(line.starts_with("not checkable") && line.contains("reports"), "{line}");
}

/// The page of a repair order is bound by the index alone, which the same key signs.
#[test]
fn the_page_of_a_repair_order_rewritten() {
    let shop = &*WORKSHOP;
    let jobs = [1, 2].map(|attempt| {
        let job = small_job(&shop.at(&format!("attempt-{attempt}")));
        rewrite(&job.join("job.toml"), |text| {
            text.replace("job = \"J 1\"", &format!("job = \"J {attempt}\"\nseries = \"R-1\"\nattempt = {attempt}"))
        });
        job
    });
    let order = shop.at("order");
    // Named in another order than their times: the page is the same.
    let (code, said) =
        run(&[&jobs[1], &jobs[0], Path::new("--out"), &order, Path::new("--key"), &shop.key], &["seal"], None);
    assert_eq!(code, 0, "{said}");
    let member = fs::read_dir(&order).unwrap().map(|e| e.unwrap().path()).find(|p| p.is_dir()).unwrap();
    let (code, said) = shop.check(&member);
    assert!(code == 0 && said.contains("repair order's page"), "{code}: {said}");
    let forged = shop.at("forged");
    let members = fs::read_dir(&order).unwrap().map(|e| e.unwrap().path()).filter(|p| p.is_dir());
    let members = members.map(|m| (m.file_name().unwrap().to_str().unwrap().to_owned(), held(&m)));
    let page = fs::read_to_string(order.join("repair-order.html")).unwrap().replace("R-1", "R-2").into_bytes();
    let key = Key::open(&shop.key, &|_| None).unwrap();
    seal_several(&forged, &members.collect::<Vec<_>>(), &[("repair-order.html", page)], Some(&key)).unwrap();
    let (code, said) = shop.check(&forged.join(member.file_name().unwrap()));
    assert!(code == 1 && said.contains("repair-order.html: not what"), "{code}: {said}");
    let (_, said) = run(&[&forged, Path::new("--out"), &shop.at("audited")], &["audit"], None);
    let lines = fs::read_to_string(shop.at("audited").join("audit.jsonl")).unwrap();
    let line: Value = serde_json::from_str(lines.lines().next().unwrap()).unwrap();
    let result = fs::read_to_string(shop.at("audited").join(line["result"].as_str().unwrap())).unwrap();
    assert!(line["evidence"] == "altered" && result.contains("repair-order.html: not what"), "{said} {line} {result}");
}
