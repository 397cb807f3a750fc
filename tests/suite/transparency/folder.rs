//! The folder itself: grown in any steps it is one tree; whatever is done to it is seen.

use std::fs;
use std::path::{Path, PathBuf};

use baywitness::transparency::{
    Checkpoint, KeyKind, Log, LogFolder, NoteSigner, SignedNote, Vouched, private_folder, read_checkpoint, witness,
};
use baywitness::words::Language;

use super::{attempts, log, names};

pub(super) fn copy(from: &Path, to: &Path) {
    fs::create_dir_all(to).unwrap();
    for entry in fs::read_dir(from).unwrap().map(Result::unwrap) {
        let target = to.join(entry.file_name());
        if entry.path().is_dir() {
            copy(&entry.path(), &target);
        } else {
            fs::copy(entry.path(), target).unwrap();
        }
    }
}

fn files(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for path in fs::read_dir(folder).unwrap().map(|e| e.unwrap().path()) {
        if path.is_dir() { found.extend(files(&path)) } else { found.push(path) }
    }
    found.sort();
    found
}

fn below(folder: &Path) -> Vec<String> {
    let relative = |p: PathBuf| p.strip_prefix(folder).unwrap().to_str().unwrap().to_owned();
    files(folder).into_iter().map(relative).collect()
}

/// One by one, in packs that end before, at and beyond a tile, and at once: the same tree, each state the start of the next.
#[test]
fn a_log_grown_in_any_steps_is_the_same_tree() {
    let dir = tempfile::tempdir().unwrap();
    let (own, folder) = log(dir.path());
    let mut kept = vec![LogFolder::open(&folder).unwrap().checkpoint];
    for (from, to) in [(0, 1), (1, 2), (2, 3), (3, 255), (255, 256), (256, 257), (257, 511), (511, 700)] {
        let done = own.append(&attempts(from, to)).unwrap();
        assert!(done.repaired.is_empty());
        for (proof, n) in done.proofs().unwrap().iter().zip(from as u64..) {
            let shown = proof.check().unwrap();
            assert_eq!((proof.index, shown.checkpoint.size), (n, to as u64));
            assert_eq!(shown.attempt.files.job, n.to_string());
        }
        let now = LogFolder::open(&folder).unwrap();
        assert_eq!(now.checkpoint.size, to as u64);
        assert_eq!(now.note.vouched_by(&own.verifier()), Vouched::Yes(None));
        for earlier in &kept {
            now.check_earlier(earlier, Path::new("kept")).unwrap();
        }
        kept.push(now.checkpoint);
    }
    assert_eq!(names(&LogFolder::open(&folder).unwrap()), (0..700).map(|n| n.to_string()).collect::<Vec<_>>());
    let other = dir.path().join("other/log");
    let once = Log::create(&other, "shop.example/attempts").unwrap();
    once.append(&attempts(0, 700)).unwrap();
    assert_eq!(LogFolder::open(&other).unwrap().checkpoint, kept[kept.len() - 1]);
    // What `tlog-tiles` wants of 700 entries, and nothing that is not published.
    let wanted = ["tile/0/000", "tile/0/001", "tile/0/002.p/188", "tile/1/000.p/2"];
    let entries = ["tile/entries/000", "tile/entries/001", "tile/entries/002.p/188"];
    assert_eq!(below(&other), [&["checkpoint"][..], &wanted, &entries, &["verifier-key"]].concat());
}

/// A level of its own above 65,536 entries: the specification's example.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn seventy_thousand_entries_lie_where_the_specification_has_them() {
    let dir = tempfile::tempdir().unwrap();
    let (own, folder) = log(dir.path());
    own.append(&attempts(0, 65_530)).unwrap();
    let before = LogFolder::open(&folder).unwrap().checkpoint;
    own.append(&attempts(65_530, 70_000)).unwrap();
    let tiles = below(&folder);
    assert_eq!(tiles.iter().filter(|t| t.starts_with("tile/0/") && !t.contains(".p/")).count(), 273);
    for one in ["tile/0/273.p/112", "tile/1/000", "tile/1/001.p/17", "tile/2/000.p/1", "tile/entries/273.p/112"] {
        assert!(tiles.iter().any(|t| t == one), "{one}");
    }
    let now = LogFolder::open(&folder).unwrap();
    now.check_earlier(&before, Path::new("kept")).unwrap();
    assert_eq!(names(&now).len(), 70_000);
}

/// One flipped bit in any file is named; in the checkpoint, by its signature.
#[test]
fn every_flipped_byte_is_seen() {
    let dir = tempfile::tempdir().unwrap();
    let (own, folder) = log(dir.path());
    own.append(&attempts(0, 300)).unwrap();
    let tried = files(&folder);
    assert_eq!(tried.len(), 7, "{tried:?}");
    for path in tried.iter().filter(|p| !p.ends_with("verifier-key")) {
        let whole = fs::read(path).unwrap();
        for at in (0..whole.len()).step_by(whole.len() / 9 + 1) {
            let mut flipped = whole.clone();
            flipped[at] ^= 4;
            fs::write(path, flipped).unwrap();
            let holds = LogFolder::open(&folder).is_ok_and(|log| {
                let signed = log.checkpoint.vouchers(&log.note, &[own.verifier()]).is_ok_and(|v| v.log);
                signed && log.each_entry(|_, _| ()).is_ok()
            });
            assert!(!holds, "byte {at} of {}", path.display());
            fs::write(path, &whole).unwrap();
        }
        fs::remove_file(path).unwrap();
        assert!(LogFolder::open(&folder).and_then(|log| log.each_entry(|_, _| ())).is_err(), "{}", path.display());
        fs::write(path, &whole).unwrap();
    }
    names(&LogFolder::open(&folder).unwrap());
}

/// Who has the key can sign anything: what an auditor or a witness kept shows it.
#[test]
fn forks_and_truncations_are_named() {
    let dir = tempfile::tempdir().unwrap();
    let (own, folder) = log(dir.path());
    own.append(&attempts(0, 5)).unwrap();
    let twin = dir.path().join("twin/log");
    copy(&folder, &twin);
    copy(&private_folder(&folder), &private_folder(&twin));
    own.append(&attempts(5, 8)).unwrap();
    Log::open(&twin).unwrap().append(&attempts(15, 18)).unwrap();
    let (kept, _) = read_checkpoint(&folder.join("checkpoint")).unwrap();
    let said = |log: &Path, earlier: &Checkpoint| {
        LogFolder::open(log).unwrap().check_earlier(earlier, Path::new("kept")).unwrap_err().to_string()
    };
    names(&LogFolder::open(&twin).unwrap());
    assert!(said(&twin, &kept).contains("two checkpoints of 8 entries with different roots: the log was forked"));
    Log::open(&twin).unwrap().append(&attempts(18, 19)).unwrap();
    assert!(said(&twin, &kept).contains("does not begin with the 8 entries of kept: the log was rewritten"));
    let (longer, _) = read_checkpoint(&twin.join("checkpoint")).unwrap();
    assert!(said(&folder, &longer).contains("has 8 entries where kept has 9: the log was truncated"));
    let other = Checkpoint { origin: "other.example/log".to_owned(), ..kept };
    assert!(said(&folder, &other).contains("other.example/log"));
    // A witness that saw one of them does not sign the other.
    let (signer, seen) = (NoteSigner::new("witness.example/1", &[7; 32]), dir.path().join("seen"));
    let keys = [own.verifier()];
    let done = witness(&folder, &keys, &signer, &seen, 1_800_000_000).unwrap();
    assert_eq!((done.before, done.checkpoint.size), (None, 8));
    let refused = witness(&twin, &keys, &signer, &seen, 1_800_000_001).unwrap_err().to_string();
    assert!(refused.contains("the log was rewritten"), "{refused}");
    assert!(!twin.join("witnessed").exists());
    own.append(&attempts(8, 12)).unwrap();
    let done = witness(&folder, &keys, &signer, &seen, 1_800_000_002).unwrap();
    assert_eq!((done.before, done.checkpoint.size), (Some(8), 12));
    let (public, note) = read_checkpoint(&folder.join("checkpoint")).unwrap();
    let known = [own.verifier(), signer.verifier(KeyKind::Witness)];
    let vouchers = public.vouchers(&note, &known).unwrap();
    assert_eq!(vouchers.witnesses, [("witness.example/1".to_owned(), 1_800_000_002)]);
    // Nor one whose key it does not know.
    let strange = [NoteSigner::new("shop.example/attempts", &[9; 32]).verifier(KeyKind::Log)];
    assert!(witness(&folder, &strange, &signer, &seen, 0).unwrap_err().to_string().contains("not signed by the key"));
    assert!(witness(&folder, &[], &signer, &seen, 0).unwrap_err().to_string().contains("was not given"));
}

/// A restored older copy of the published folder: going on would fork the log.
#[test]
fn a_log_that_went_back_is_not_written_to() {
    let dir = tempfile::tempdir().unwrap();
    let (own, folder) = log(dir.path());
    own.append(&attempts(0, 5)).unwrap();
    let old = dir.path().join("old");
    copy(&folder, &old);
    own.append(&attempts(5, 260)).unwrap();
    fs::remove_dir_all(&folder).unwrap();
    copy(&old, &folder);
    let refused = own.append(&attempts(5, 6)).unwrap_err().to_string();
    assert!(refused.contains("went back to an older copy") && refused.contains("fork"), "{refused}");
    assert_eq!(LogFolder::open(&folder).unwrap().checkpoint.size, 5, "nothing was written");
    let again = Log::create(&folder, "shop.example/attempts").unwrap_err().to_string();
    assert!(again.contains("never anew"), "{again}");
}

/// Cut off before it was signed: taken away and said. After: published and said.
#[test]
fn what_was_cut_off_is_put_right() {
    let dir = tempfile::tempdir().unwrap();
    let (own, folder) = log(dir.path());
    own.append(&attempts(0, 254)).unwrap();
    let (before, newest) = (dir.path().join("before"), private_folder(&folder).join("newest"));
    copy(&folder, &before);
    let unsigned = fs::read(&newest).unwrap();
    own.append(&attempts(254, 258)).unwrap();
    let signed = fs::read(&newest).unwrap();
    // All tiles of the append, nothing signed, and part of a file.
    fs::copy(before.join("checkpoint"), folder.join("checkpoint")).unwrap();
    copy(&before, &folder);
    fs::write(&newest, unsigned).unwrap();
    fs::write(folder.join("tile/0/001.p/.2.part"), "x").unwrap();
    let done = own.append(&attempts(300, 301)).unwrap();
    assert!(done.repaired[0].say(Language::English).contains("never acknowledged"), "{:?}", done.repaired);
    let now = LogFolder::open(&folder).unwrap();
    assert_eq!(names(&now).last().unwrap(), "300");
    assert!(below(&folder).iter().all(|f| !f.contains(".part") && !f.contains("001")), "{:?}", below(&folder));
    // Signed, not yet public.
    fs::remove_dir_all(&folder).unwrap();
    copy(&before, &folder);
    fs::write(&newest, &signed).unwrap();
    let refused = own.append(&attempts(400, 401)).unwrap_err().to_string();
    assert!(refused.contains("fork"), "its tiles are not there: {refused}");
    let twin = dir.path().join("twin/log");
    copy(&before, &twin);
    copy(&private_folder(&folder), &private_folder(&twin));
    fs::copy(before.join("checkpoint"), private_folder(&twin).join("newest")).unwrap();
    let other = Log::open(&twin).unwrap();
    other.append(&attempts(254, 258)).unwrap();
    fs::copy(before.join("checkpoint"), twin.join("checkpoint")).unwrap();
    let done = other.append(&[]).unwrap();
    assert!(done.repaired[0].say(Language::English).contains("is published: 258 entries"), "{:?}", done.repaired);
    assert_eq!(fs::read_to_string(twin.join("checkpoint")).unwrap().as_bytes(), signed);
    assert_eq!(names(&LogFolder::open(&twin).unwrap()).len(), 258);
}

/// A proof that was changed anywhere shows nothing.
#[test]
fn a_changed_proof_shows_nothing() {
    use baywitness::transparency::AttemptProof;
    let dir = tempfile::tempdir().unwrap();
    let (own, _) = log(dir.path());
    let proofs = own.append(&attempts(0, 11)).unwrap().proofs().unwrap();
    let text = proofs[6].to_text();
    let shows = |text: &str| {
        let proof = AttemptProof::read(text).and_then(|proof| proof.check().map(|shown| (proof.note, shown)));
        proof.and_then(|(note, shown)| shown.checkpoint.vouchers(&note, &[own.verifier()])).is_ok_and(|v| v.log)
    };
    assert!(shows(&text));
    for at in (0..text.len()).filter(|at| text.is_char_boundary(*at)) {
        let mut bytes = text.clone().into_bytes();
        bytes[at] ^= 1;
        if let Ok(changed) = String::from_utf8(bytes) {
            assert!(!shows(&changed), "byte {at}: {changed}");
        }
    }
    assert!(!shows(&text.replace("index 6", "index 7")) && !shows(&(text.clone() + "\n")));
    let other = SignedNote { text: proofs[6].note.text.clone(), signatures: Vec::new() };
    assert!(AttemptProof::read(&AttemptProof { note: other, ..proofs[6].clone() }.to_text()).is_err());
}
