//! Evidence folders: nothing that happens to one goes unseen, and stock tools
//! (OpenSSH's ssh-keygen, the Library of Congress's bagit) agree.

#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "test support: a panic is the message")]
#![allow(clippy::print_stderr, reason = "a skipped check says so")]

use std::collections::BTreeMap;
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use baywitness::evidence::{Bytes, Contents, Key, SealError, inspect, seal};
use rand::{RngExt, SeedableRng};

mod copies;
pub(crate) mod doors;
mod flips;
pub(crate) mod honest_copies;
pub(crate) mod pades;
mod reports;
pub(crate) mod stamps;
mod tars;

/// A folder of made-up payload, signed by a fresh key of ssh-keygen.
fn sealed(dir: &Path) -> (PathBuf, PathBuf) {
    let key = fresh_key(dir, "");
    let mut contents = Contents::default();
    for (name, text) in
        [("result.json", "{}\n"), ("job/job.toml", "format = \"job/1\"\n"), ("job/photos/50% ä.jpg", "\0\u{1}")]
    {
        contents.payload.insert(name.to_owned(), Bytes::Here(text.as_bytes().to_vec()));
    }
    contents.info.push(("External-Identifier".to_owned(), "A line\nand another".to_owned()));
    let out = dir.join("sealed");
    seal(&out, &contents, Some(&Key::open(&key, &|_| None).unwrap()), None).unwrap();
    (out, key)
}

pub(crate) fn fresh_key(dir: &Path, passphrase: &str) -> PathBuf {
    let key = dir.join("key");
    let made = Command::new("ssh-keygen")
        .args(["-q", "-t", "ed25519", "-N", passphrase, "-C", "invented", "-f"])
        .arg(&key)
        .status();
    assert!(made.unwrap().success(), "these tests need ssh-keygen");
    key
}

/// A folder's payload sealed anew, changed: every digest fits, and so does the seal's signature where there is a key.
pub(crate) fn sealed_anew(
    from: &Path,
    to: &Path,
    key: Option<&Path>,
    change: impl FnOnce(&mut BTreeMap<String, Vec<u8>>),
) {
    let mut all = payload(from);
    change(&mut all);
    seal(to, &contents(from, all), key.map(|key| Key::open(key, &|_| None).unwrap()).as_ref(), None).unwrap();
}

/// A folder's payload, by the files' names.
pub(crate) fn payload(folder: &Path) -> BTreeMap<String, Vec<u8>> {
    let payload = folder.join("data");
    let named = |file: &PathBuf| file.strip_prefix(&payload).unwrap().to_str().unwrap().to_owned();
    files(&payload).iter().map(|file| (named(file), fs::read(file).unwrap())).collect()
}

/// A payload under a folder's labels, to be sealed.
pub(crate) fn contents(folder: &Path, payload: BTreeMap<String, Vec<u8>>) -> Contents {
    let payload = payload.into_iter().map(|(name, bytes)| (name, Bytes::Here(bytes))).collect();
    Contents { payload, info: labels(folder) }
}

/// What a folder's labels say, but how large its payload is.
fn labels(folder: &Path) -> Vec<(String, String)> {
    let text = fs::read_to_string(folder.join("bag-info.txt")).unwrap();
    let lines = text.lines().filter_map(|line| line.split_once(": ")).filter(|(label, _)| *label != "Payload-Oxum");
    lines.map(|(label, value)| (label.to_owned(), value.to_owned())).collect()
}

pub(crate) fn files(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap().map(Result::unwrap) {
        let path = entry.path();
        if path.is_dir() { found.extend(files(&path)) } else { found.push(path) }
    }
    found.sort();
    found
}

#[test]
fn an_untouched_folder_is_intact() {
    let dir = tempfile::tempdir().unwrap();
    let (folder, _) = sealed(dir.path());
    let found = inspect(&folder).unwrap();
    assert!(found.intact() && found.signed, "{:#?}", found.items);
}

#[test]
fn every_flipped_byte_is_seen() {
    let dir = tempfile::tempdir().unwrap();
    let (folder, _) = sealed(dir.path());
    let mut random = rand::rngs::ChaCha8Rng::seed_from_u64(8);
    let files = files(&folder);
    // Each file is small: every place of each, with one random change.
    let mut places = 0;
    for file in &files {
        let good = fs::read(file).unwrap();
        for at in 0..good.len() {
            let mut bad = good.clone();
            bad[at] ^= random.random_range(1..=255_u8);
            fs::write(file, &bad).unwrap();
            assert!(
                !inspect(&folder).unwrap().intact(),
                "{} at {at}: {:?} became {:?}",
                file.display(),
                good[at],
                bad[at]
            );
            places += 1;
        }
        fs::write(file, &good).unwrap();
    }
    assert!(places > 1000 && files.len() == 8, "{places} places of {} files", files.len());
    assert!(inspect(&folder).unwrap().intact());
}

#[test]
fn added_missing_and_strange_files_are_seen() {
    let dir = tempfile::tempdir().unwrap();
    let (folder, _) = sealed(dir.path());
    let expect = |change: &dyn Fn(), undo: &dyn Fn(), words: &str| {
        change();
        let found = inspect(&folder).unwrap();
        let said: Vec<String> = found.items.iter().map(|i| i.found.say(baywitness::words::Language::English)).collect();
        assert!(!found.intact() && said.join("\n").contains(words), "{words}: {said:#?}");
        undo();
        assert!(inspect(&folder).unwrap().intact(), "{words}");
    };
    for (name, words) in [
        ("data/more.txt", "was added"),
        ("note.txt", "was added"),
        ("fetch.txt", "fetch.txt"),
        ("data/RESULT.json", "upper and lower case"),
        ("data/con.txt", "specially"),
        ("data/a\\b", "not every system"),
    ] {
        let path = folder.join(name);
        expect(&|| fs::write(&path, "x").unwrap(), &|| fs::remove_file(&path).unwrap(), words);
    }
    for name in ["data/result.json", "manifest-sha512.txt", "bagit.txt", "bag-info.txt", "tagmanifest-sha512.txt"] {
        let (path, away) = (folder.join(name), dir.path().join("away"));
        expect(&|| fs::rename(&path, &away).unwrap(), &|| fs::rename(&away, &path).unwrap(), "");
    }
    #[cfg(unix)]
    {
        let link = folder.join("data/link.jpg");
        let make = || std::os::unix::fs::symlink("/etc/hostname", &link).unwrap();
        expect(&make, &|| fs::remove_file(&link).unwrap(), "link");
        let (real, away) = (folder.join("data/job"), dir.path().join("job"));
        let swap = || {
            fs::rename(&real, &away).unwrap();
            std::os::unix::fs::symlink(&away, &real).unwrap();
        };
        let back = || {
            fs::remove_file(&real).unwrap();
            fs::rename(&away, &real).unwrap();
        };
        expect(&swap, &back, "link");
    }
}

#[test]
fn paths_that_lead_elsewhere_are_never_followed() {
    let dir = tempfile::tempdir().unwrap();
    let (folder, _) = sealed(dir.path());
    fs::write(dir.path().join("secret"), "x").unwrap();
    let path = folder.join("manifest-sha512.txt");
    let good = fs::read_to_string(&path).unwrap();
    for trick in ["data/../../secret", "/etc/hostname", "../secret", "data/%0A", "C:/x"] {
        fs::write(&path, format!("{good}{}  {trick}\n", "0".repeat(128))).unwrap();
        let found = inspect(&folder).unwrap();
        let said = found
            .items
            .iter()
            .find(|i| i.what == "manifests")
            .map(|i| i.found.say(baywitness::words::Language::English))
            .unwrap_or_default();
        assert!(!found.intact() && said.contains("names"), "{trick}: {said}");
    }
}

#[test]
fn the_same_contents_and_key_give_the_same_bytes() {
    let dir = tempfile::tempdir().unwrap();
    let key = Key::open(&fresh_key(dir.path(), ""), &|_| None).unwrap();
    let mut contents = Contents::default();
    contents.payload.insert("a.txt".to_owned(), Bytes::Here(b"a".to_vec()));
    let all = ["one", "two"].map(|name| {
        let out = dir.path().join(name);
        seal(&out, &contents, Some(&key), None).unwrap();
        files(&out).iter().map(|f| (f.strip_prefix(&out).unwrap().to_owned(), fs::read(f).unwrap())).collect::<Vec<_>>()
    });
    assert_eq!(all[0], all[1]);
}

#[test]
fn nothing_is_written_over_or_left_half() {
    let dir = tempfile::tempdir().unwrap();
    let out = dir.path().join("out");
    let mut contents = Contents::default();
    let gone = Bytes::File { path: dir.path().join("gone.jpg"), sha256: None };
    contents.payload.insert("a.jpg".to_owned(), gone);
    assert!(matches!(seal(&out, &contents, None, None), Err(SealError::Io { doing: "read", .. })));
    let photo = dir.path().join("b.jpg");
    fs::write(&photo, "now").unwrap();
    contents.payload = [("b.jpg".to_owned(), Bytes::File { path: photo, sha256: Some("0".repeat(64)) })].into();
    assert!(matches!(seal(&out, &contents, None, None), Err(SealError::Changed(_))));
    contents.payload = [("../x".to_owned(), Bytes::Here(Vec::new()))].into();
    assert!(matches!(seal(&out, &contents, None, None), Err(SealError::Path { .. })));
    contents.payload = ["A", "a"].map(|n| (n.to_owned(), Bytes::Here(Vec::new()))).into();
    assert!(matches!(seal(&out, &contents, None, None), Err(SealError::Alike(..))));
    let left: Vec<_> = fs::read_dir(dir.path()).unwrap().map(|e| e.unwrap().file_name()).collect();
    assert_eq!(left, ["b.jpg"], "nothing half-written stays");
    fs::create_dir(&out).unwrap();
    contents.payload.clear();
    assert!(matches!(seal(&out, &contents, None, None), Err(SealError::Exists(_))));
}

/// Stock OpenSSH accepts the signature, and refuses it for other bytes.
#[test]
fn ssh_keygen_accepts_the_signature() {
    let dir = tempfile::tempdir().unwrap();
    let (folder, key) = sealed(dir.path());
    let public = fs::read_to_string(key.with_extension("pub")).unwrap();
    let signers = dir.path().join("signers");
    fs::write(&signers, format!("shop@invented.example namespaces=\"baywitness-evidence\" {public}")).unwrap();
    let verify = |message: &[u8]| {
        let mut child = Command::new("ssh-keygen")
            .args(["-Y", "verify", "-I", "shop@invented.example", "-n", "baywitness-evidence", "-f"])
            .arg(&signers)
            .arg("-s")
            .arg(folder.join("tagmanifest-sha512.txt.sig"))
            .stdin(Stdio::piped())
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .unwrap();
        child.stdin.take().unwrap().write_all(message).unwrap();
        child.wait().unwrap().success()
    };
    let message = fs::read(folder.join("tagmanifest-sha512.txt")).unwrap();
    assert!(verify(&message));
    assert!(!verify(&message[1..]));
}

/// A signature that ssh-keygen made is accepted, one for another use is not.
#[test]
fn a_signature_by_ssh_keygen_is_accepted() {
    let dir = tempfile::tempdir().unwrap();
    let (folder, key) = sealed(dir.path());
    let signature = folder.join("tagmanifest-sha512.txt.sig");
    for (namespace, accepted) in [("baywitness-evidence", true), ("file", false)] {
        fs::remove_file(&signature).unwrap();
        let signed = Command::new("ssh-keygen")
            .args(["-q", "-Y", "sign", "-n", namespace, "-f"])
            .arg(&key)
            .arg(folder.join("tagmanifest-sha512.txt"))
            .stderr(Stdio::null())
            .status();
        assert!(signed.unwrap().success());
        let found = inspect(&folder).unwrap();
        assert_eq!((found.intact(), found.signed), (accepted, accepted), "{namespace}: {:#?}", found.items);
    }
}

#[test]
fn a_key_with_a_passphrase_is_unlocked_by_it_alone() {
    let dir = tempfile::tempdir().unwrap();
    let path = fresh_key(dir.path(), "open sesame");
    assert!(Key::open(&path, &|_| None).unwrap_err().to_string().contains("passphrase"));
    assert!(Key::open(&path, &|_| Some("wrong".to_owned())).unwrap_err().to_string().contains("is not it"));
    let key = Key::open(&path, &|_| Some("open sesame".to_owned())).unwrap();
    key.sign(b"x").unwrap().check(b"x").unwrap();
    let public = path.with_extension("pub");
    let renamed = dir.path().join("public");
    fs::copy(&public, &renamed).unwrap();
    assert!(Key::open(&renamed, &|_| None).unwrap_err().to_string().contains("private key"));
}

/// An agent's key is named by its public half.
#[cfg(unix)]
#[test]
fn an_agent_signs() {
    let dir = tempfile::tempdir().unwrap();
    let path = fresh_key(dir.path(), "");
    let socket = dir.path().join("agent");
    let mut agent = Command::new("ssh-agent").arg("-D").arg("-a").arg(&socket).stdout(Stdio::null()).spawn().unwrap();
    while !socket.exists() {
        std::thread::sleep(std::time::Duration::from_millis(20));
    }
    let added =
        Command::new("ssh-add").arg("-q").arg(&path).env("SSH_AUTH_SOCK", &socket).stderr(Stdio::null()).status();
    let public = path.with_extension("pub");
    fs::remove_file(&path).unwrap();
    let job = dir.path().join("job");
    let sealed = doors::seal_with(&doors::small_job(&job), &dir.path().join("sealed"), &public, Some(&socket));
    let _ = agent.kill();
    let _ = agent.wait();
    assert!(added.unwrap().success());
    assert_eq!(sealed.0, 0, "{}", sealed.1);
    assert!(inspect(&dir.path().join("sealed")).unwrap().signed);
}
