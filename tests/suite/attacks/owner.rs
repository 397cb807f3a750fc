//! Attacks by whoever owns the key, in places of a sealed folder that look as if nobody compared them: answers by odd
//! names, who measured, whose sheet it was, what lies beside the payload, lines of the labels.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::LazyLock;

use baywitness::custody::look_at_masked;
use baywitness::evidence::{BagPath, Contents, Key, Manifest, seal_several};
use baywitness::record::JobRecord;
use serde_json::{Value, json};
use sha2::{Digest, Sha512};

use super::rewrite;
use super::workshop::Workshop;
use crate::audit::copy;
use crate::evidence::doors::{run, seal_with, small_job};
use crate::evidence::{contents, files, payload};

const TAGS: &str = "tagmanifest-sha512.txt";
const LIST: &str = "manifest-sha512.txt";
const LABELS: &str = "bag-info.txt";

/// A job with a sheet of its own, and the same one whose sheet is found in the workshop's library.
static WORKSHOP: LazyLock<Workshop> = LazyLock::new(|| {
    let shop = Workshop::new();
    let job = small_job(&shop.at("job"));
    rewrite(&job.join("job.toml"), |text| {
        format!("{text}[prerequisites]\ncredentials = \"bay not swept\"\n[calibration]\nresult = \"successful\"\n")
    });
    assert_eq!(seal_with(&job, &shop.at("sealed"), &shop.key, None).0, 0);
    let (library, sheet) = (shop.at("library"), shop.at("library/setups/sheet.toml"));
    fs::create_dir_all(sheet.parent().unwrap()).unwrap();
    fs::copy(shop.at("job/setup.toml"), sheet).unwrap();
    rewrite(&job.join("job.toml"), |text| text.replace("../setup.toml", "sheet"));
    let (key, models) = (Path::new("--key"), Path::new("--models"));
    let arguments = [&job, Path::new("--out"), &shop.at("shared"), key, &shop.key, models, &library];
    assert_eq!(run(&arguments, &["seal"], None).0, 0);
    for folder in ["sealed", "shared"] {
        let masked = shop.at(&format!("{folder}-masked"));
        assert_eq!(run(&[&shop.at(folder), Path::new("--out"), &masked], &["redact"], None).0, 0);
    }
    shop
});

/// The result rewritten, as the program writes results.
fn rewritten(result: &[u8], change: impl FnOnce(&mut Value)) -> Vec<u8> {
    let mut record: Value = serde_json::from_slice(result).unwrap();
    let before = record.clone();
    change(&mut record);
    assert_ne!(record, before);
    serde_json::from_value::<JobRecord>(record).unwrap().to_json().unwrap()
}

/// What `check` says after the owner rewrote the result, took the reports out and sealed anew.
fn checked(from: &str, out: &str, change: impl FnOnce(&mut Value)) -> (i32, String) {
    WORKSHOP.checked((from, Some(&WORKSHOP.key)), out, |all| {
        let result = rewritten(&all["result.json"], change);
        all.insert("result.json".to_owned(), result);
        all.retain(|name, _| ![".html", ".pdf"].iter().any(|end| name.ends_with(end)));
    })
}

/// A copy of a sealed folder after its owner changed files in it, listed all that lies there and signed the list.
fn listed_anew(from: &str, out: &str, change: impl FnOnce(&Path)) -> PathBuf {
    let shop = &*WORKSHOP;
    let folder = shop.at(out);
    copy(&shop.at(from), &folder);
    change(&folder);
    let signature = folder.join(format!("{TAGS}.sig"));
    // A copy has none of its own.
    let _ = fs::remove_file(&signature);
    fs::remove_file(folder.join(TAGS)).unwrap();
    let digest = |bytes: Vec<u8>| Sha512::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect::<String>();
    let list = |of_payload: bool| {
        let mut list = Manifest::default();
        for file in files(&folder) {
            let name = file.strip_prefix(&folder).unwrap().to_str().unwrap().to_owned();
            if name.starts_with("data/") == of_payload {
                list.entries.insert(BagPath::new(&name).unwrap(), digest(fs::read(file).unwrap()));
            }
        }
        list.text()
    };
    fs::write(folder.join(LIST), list(true)).unwrap();
    let tags = list(false);
    fs::write(folder.join(TAGS), tags).unwrap();
    let mut sign = Command::new("ssh-keygen");
    sign.args(["-q", "-Y", "sign", "-n", "baywitness-evidence", "-f"]).arg(&shop.key).arg(folder.join(TAGS));
    assert!(sign.stderr(Stdio::null()).status().unwrap().success() && signature.is_file());
    folder
}

/// Of a prerequisite called `credentials` and of what a scan tool says under `tool`, by those names alone, nobody asked.
#[test]
fn answers_by_names_that_nobody_compared() {
    let (code, said) = checked("sealed", "tick", |record| {
        assert_eq!(record["context"]["prerequisites"]["credentials"], "bay not swept");
        record["context"]["prerequisites"]["credentials"] = json!("bay swept");
    });
    assert!(code == 1 && said.contains("context.prerequisites.credentials"), "{code}: {said}");
    let (code, said) = checked("sealed", "scan", |record| {
        record["context"]["calibration"]["tool"] = json!("an invented scan tool");
    });
    assert!(code == 1 && said.contains("context.calibration.tool"), "{code}: {said}");
    let (code, said) = checked("sealed", "older", |record| {
        record["tool"]["version"] = json!("0.0.1");
        record["context"]["prerequisites"]["not_checked"] = json!("bay swept");
    });
    assert!(code == 1 && said.contains("context.prerequisites.not_checked"), "{code}: {said}");
}

/// Reports show who measured.
#[test]
fn another_program_named_as_the_one_that_measured() {
    for (out, version) in [("named", None), ("named-older", Some("0.0.1"))] {
        let (code, said) = checked("sealed", out, |record| {
            record["tool"]["name"] = json!("Invented Accredited Laboratory No. 7, baywitness");
            version.into_iter().for_each(|version| record["tool"]["version"] = json!(version));
        });
        assert!(code == 1 && said.contains("tool.name"), "{out}: {code}: {said}");
    }
    let masked = masked("sealed", "named-masked", |record| record["tool"]["name"] = json!("another program"));
    assert!(masked.contains("tool.name"), "{masked}");
}

/// In what the masked photos of a copy differ from a result that its owner rewrote.
fn masked(from: &str, out: &str, change: impl FnOnce(&mut Value)) -> String {
    let folder = WORKSHOP.at(out);
    copy(&WORKSHOP.at(&format!("{from}-masked")), &folder);
    let result = folder.join("data/result.json");
    fs::write(&result, rewritten(&fs::read(&result).unwrap(), change)).unwrap();
    format!("{:?}", look_at_masked(&folder.join("data")).unwrap().differences)
}

/// The list of what was read says where a sheet was found; a sealed one lies in the folder either way.
#[test]
fn a_workshops_own_sheet_said_to_be_somebody_elses() {
    let shop = &*WORKSHOP;
    for honest in ["sealed", "shared"] {
        let (code, said) = shop.check(&shop.at(honest));
        assert_eq!(code, 0, "{honest}: {said}");
        let differences = look_at_masked(&shop.at(&format!("{honest}-masked")).join("data")).unwrap().differences;
        assert_eq!(differences, Ok(Vec::new()), "{honest}");
    }
    let maker = "the vehicle maker's service information, compared";
    for (n, (from, place)) in [
        ("sealed", Some(maker)),
        ("sealed", Some("embedded models")),
        ("sealed", Some("--models folder")),
        ("shared", Some(maker)),
        ("shared", Some("embedded models")),
        ("shared", Some("job folder")),
        ("shared", None),
    ]
    .into_iter()
    .enumerate()
    {
        let found_in = |record: &mut Value| {
            let inputs = record["inputs"].as_array_mut().unwrap();
            let sheet = inputs.iter_mut().find(|input| input["role"] == "setup").unwrap();
            sheet["found_in"] = json!(place);
        };
        let (code, said) = checked(from, &format!("found-{n}"), found_in);
        assert!(code == 1 && said.contains("].found_in"), "{from} {place:?}: {code}: {said}");
        let said = masked(from, &format!("found-{n}-masked"), found_in);
        assert!(said.contains("].found_in"), "{from} {place:?}: {said}");
    }
    // The program's own models have their bytes.
    let job = small_job(&shop.at("carried"));
    rewrite(&job.join("job.toml"), |text| {
        let text = text.replace("../setup.toml", "demo-front-radar");
        text.replace("../kit", "demo-bay").replace("../camera.toml", "demo-phone")
    });
    assert_eq!(seal_with(&job, &shop.at("of-program"), &shop.key, None).0, 0);
    let (code, said) = shop.check(&shop.at("of-program"));
    assert_eq!(code, 0, "{said}");
    let result = fs::read_to_string(shop.at("of-program/data/result.json")).unwrap();
    assert_eq!(result.matches("\"embedded models\"").count(), 3);
}

/// The list that the key signs has a certificate beside the payload, another list of digests, or a whole job.
#[test]
fn anything_listed_beside_a_signed_payload() {
    let shop = &*WORKSHOP;
    let (code, said) = shop.check(&listed_anew("sealed", "listed-honest", |_| ()));
    assert_eq!(code, 0, "{said}");
    for (out, name) in [
        ("beside-page", "CERTIFICATE.html"),
        ("beside-list", "manifest-sha256.txt"),
        ("beside-job", "earlier/job.toml"),
    ] {
        let folder = listed_anew("sealed", out, |folder| {
            let file = folder.join(name);
            fs::create_dir_all(file.parent().unwrap()).unwrap();
            fs::write(file, "within").unwrap();
        });
        let (code, said) = shop.check(&folder);
        assert!(code == 1 && said.contains(&format!("{name} is nothing that sealing puts there")), "{code}: {said}");
        let copied = shop.at(&format!("{out}-masked"));
        assert_eq!(run(&[&folder, Path::new("--out"), &copied], &["redact"], None).0, 2);
        // Nor does a copy that was made by other means carry it along.
        let carried = shop.at(&format!("{out}-carried"));
        let mut all = payload(&shop.at("sealed-masked"));
        for file in files(&folder).iter().filter(|file| !file.starts_with(folder.join("data"))) {
            let name = file.strip_prefix(&folder).unwrap().to_str().unwrap();
            all.insert(format!("sealed/{name}"), fs::read(file).unwrap());
        }
        baywitness::evidence::seal(&carried, &contents(&shop.at("sealed-masked"), all), None, None).unwrap();
        let (code, said) = shop.check(&carried);
        assert!(code == 1 && said.contains(&format!("sealed/{name} was not sealed")), "{code}: {said}");
    }
    for name in ["within on all counts", "data/job/within on all counts"] {
        let folder = listed_anew("sealed", &format!("empty-{}", name.len()), |folder| {
            fs::create_dir(folder.join(name)).unwrap();
        });
        let (code, said) = shop.check(&folder);
        assert!(code == 1 && said.contains(&format!("{name} is a folder without files")), "{code}: {said}");
    }
}

/// The same in the index of a repair order.
#[test]
fn more_listed_in_the_index_of_a_repair_order() {
    let shop = &*WORKSHOP;
    let held = |name: &str| -> Contents { contents(&shop.at(name), payload(&shop.at(name))) };
    let key = Key::open(&shop.key, &|_| None).unwrap();
    for (out, pages) in [("order", vec![]), ("order-more", vec![("certificate.html", b"within".to_vec())])] {
        let more = !pages.is_empty();
        seal_several(&shop.at(out), &[("sealed".to_owned(), held("sealed"))], &pages, Some(&key)).unwrap();
        let (code, said) = shop.check(&shop.at(out).join("sealed"));
        let told = said.contains("certificate.html is nothing that sealing puts there");
        assert_eq!((code, told), (i32::from(more), more), "{said}");
    }
}

/// Readers of labels go on with a line, or take the first or the last of two; `check` looked at plain lines alone.
#[test]
fn lines_of_the_labels_that_nobody_compared() {
    let shop = &*WORKSHOP;
    let (code, said) = checked("sealed", "labels-older", |record| record["tool"]["version"] = json!("0.0.1"));
    assert_eq!(code, 0, "{said}");
    type Change = fn(&str) -> String;
    let changes: [(&str, Change); 6] = [
        ("continued", |text| text.replace("Verdict: retake\n", "Verdict: retake\n  but within by hand\n")),
        ("continued-so", |text| text.replace("Verdict: retake\n", "Verdict: retake\n  by hand: within\n")),
        ("no-blank", |text| format!("{text}Verdict:within\n")),
        ("count-twice", |text| format!("{text}Payload-Oxum: 1.1\n")),
        ("verdict-twice", |text| {
            let without = text.lines().filter(|line| !line.starts_with("External-Description"));
            without.map(|line| format!("{line}\n")).collect::<String>() + "Verdict: retake\n"
        }),
        ("counted", |text| text.replace("Payload-Oxum: ", "Payload-Oxum: 1")),
    ];
    for from in ["sealed", "labels-older"] {
        let (code, said) = shop.check(&listed_anew(from, &format!("{from}-plain"), |_| ()));
        assert_eq!(code, 0, "{said}");
        for (name, change) in changes {
            let folder = listed_anew(from, &format!("{from}-{name}"), |folder| rewrite(&folder.join(LABELS), change));
            let (code, said) = shop.check(&folder);
            assert!(code == 1 && said.contains(LABELS), "{from} {name}: {code}: {said}");
        }
    }
    // Nobody signs a copy: its own labels are counted too.
    for (n, more) in ["", "Payload-Oxum: 1.1\n", "External-Identifier: J 1\n"].into_iter().enumerate() {
        let folder = listed_anew("sealed-masked", &format!("masked-labels-{n}"), |folder| {
            let labels = fs::read_to_string(folder.join(LABELS)).unwrap();
            fs::write(folder.join(LABELS), labels + more).unwrap();
        });
        let (code, said) = shop.check(&folder);
        let told = said.contains("bag-info.txt says what no copy says of itself");
        assert_eq!((code == 1, told), (n > 0, n > 0), "{more}: {code}: {said}");
    }
    // Of a copy, whose payload is another, the sealed labels are held against the sealed list.
    let folder = listed_anew("sealed", "counted-for-a-copy", |folder| {
        rewrite(&folder.join(LABELS), |text| text.replace("Payload-Oxum: ", "Payload-Oxum: 1."));
    });
    let sealed = shop.at("sealed-masked");
    let forged = shop.at("counted-masked");
    let mut all = payload(&sealed);
    for name in [TAGS, &format!("{TAGS}.sig"), LIST, LABELS] {
        all.insert(format!("sealed/{name}"), fs::read(folder.join(name)).unwrap());
    }
    baywitness::evidence::seal(&forged, &contents(&sealed, all), None, None).unwrap();
    let differences = look_at_masked(&forged.join("data")).unwrap().differences.unwrap();
    assert!(format!("{differences:?}").contains("Payload-Oxum"), "{differences:?}");
}
