//! Timestamps (RFC 3161) by a throw-away authority of stock `openssl ts`, both
//! ways: it answers our requests, and it checks the tokens that we keep.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use super::doors::{run, small_job};

pub(crate) struct Authority {
    dir: PathBuf,
}

/// How a configuration of stock `openssl` begins: nothing is asked.
pub(crate) const ASKS_NOTHING: &str = "[req]\ndistinguished_name = name\nprompt = no\n[name]\nCN = invented\n";

const CONFIG: &str = "\
[ca]
basicConstraints = critical,CA:true
keyUsage = critical,keyCertSign
[stamper]
basicConstraints = CA:false
keyUsage = critical,digitalSignature
extendedKeyUsage = critical,timeStamping
[tsa]
default_tsa = tsa_default
[tsa_default]
serial = SERIAL
crypto_device = builtin
signer_digest = sha256
default_policy = 1.2.3.4.1
digests = sha256, sha384, sha512
accuracy = secs:1, millisecs:500
ordering = no
tsa_name = yes
ess_cert_id_chain = no
ess_cert_id_alg = sha256
clock_precision_digits = PRECISION
";

pub(crate) fn openssl(dir: &Path, line: &str) -> bool {
    let out = Command::new("openssl").current_dir(dir).args(line.split(' ')).output().unwrap();
    if !out.status.success() {
        eprintln!("openssl {line}: {}", String::from_utf8_lossy(&out.stderr));
    }
    out.status.success()
}

impl Authority {
    /// A root, and a certificate for timestamps by it; `key` as `openssl genpkey` names it.
    pub(crate) fn new(dir: &Path, key: &str, digits: usize) -> Authority {
        fs::create_dir_all(dir).unwrap();
        fs::write(dir.join("serial"), "01\n").unwrap();
        fs::write(
            dir.join("conf"),
            (ASKS_NOTHING.to_owned() + CONFIG).replace("SERIAL", "serial").replace("PRECISION", &digits.to_string()),
        )
        .unwrap();
        for (name, extensions) in [("ca", "ca"), ("tsa", "stamper")] {
            assert!(openssl(dir, &format!("genpkey {key} -out {name}.key")));
            let by = if name == "ca" { "-x509".to_owned() } else { "-x509 -CA ca.pem -CAkey ca.key".to_owned() };
            assert!(openssl(
                dir,
                &format!(
                    "req -new {by} -key {name}.key -subj /CN={name}-invented -days 30 -config conf -extensions {extensions} -out {name}.pem"
                )
            ));
        }
        Authority { dir: dir.to_path_buf() }
    }

    pub(crate) fn answer(&self, request: &Path, out: &Path, options: &str) {
        let (request, out) = (request.display(), out.display());
        let line =
            format!("ts -reply -config conf -queryfile {request} -signer tsa.pem -inkey tsa.key -out {out}{options}");
        assert!(openssl(&self.dir, &line));
    }

    pub(crate) fn root(&self) -> PathBuf {
        self.dir.join("ca.pem")
    }

    fn accepts(&self, stamped: &Path, answer: &Path) -> bool {
        let (stamped, answer) = (stamped.display(), answer.display());
        openssl(&self.dir, &format!("ts -verify -data {stamped} -in {answer} -CAfile ca.pem"))
    }
}

fn check(folder: &Path, root: &Path) -> (i32, String) {
    run(&[folder, Path::new("--timestamp-ca"), root], &["check"], None)
}

fn sealed(dir: &Path) -> PathBuf {
    let (job, out) = (small_job(&dir.join("in")), dir.join("evidence"));
    let (code, text) = run(&[&job, Path::new("--out"), &out], &["seal"], None);
    assert_eq!(code, 0, "{text}");
    out
}

fn stamp(folder: &Path, authority: &Authority, dir: &Path) -> (i32, String) {
    let (request, answer) = (dir.join("ask.tsq"), dir.join("answer.tsr"));
    let (code, text) = run(&[folder, Path::new("--request"), &request], &["stamp"], None);
    assert_eq!(code, 0, "{text}");
    authority.answer(&request, &answer, "");
    run(&[folder, Path::new("--answer"), &answer], &["stamp"], None)
}

#[test]
fn stock_openssl_answers_requests_and_accepts_what_is_kept() {
    let dir = tempfile::tempdir().unwrap();
    for (n, key) in ["-algorithm RSA -pkeyopt rsa_keygen_bits:2048", "-algorithm EC -pkeyopt ec_paramgen_curve:P-256"]
        .into_iter()
        .enumerate()
    {
        let home = dir.path().join(n.to_string());
        let authority = Authority::new(&home.join("authority"), key, 3 * n);
        let folder = sealed(&home);
        let (code, text) = stamp(&folder, &authority, &home);
        assert_eq!(code, 0, "{text}");
        let (manifest, kept) = (folder.join("tagmanifest-sha512.txt"), folder.join("tagmanifest-sha512.txt.tsr"));
        assert!(authority.accepts(&manifest, &kept));
        let (code, text) = check(&folder, &authority.root());
        assert_eq!(code, 3, "{text}");
        assert!(text.contains("sealed no later than 2") && text.contains("passed          authority"), "{text}");
        // Stamped again before the certificate ends: the second token is over the first one's file.
        assert_eq!(stamp(&folder, &authority, &home).0, 0);
        assert!(authority.accepts(&kept, &folder.join("tagmanifest-sha512.txt.2.tsr")));
        let (code, text) = check(&folder, &authority.root());
        assert_eq!((code, text.matches("sealed no later").count()), (3, 2), "{text}");
        // Another authority may renew, which a reader who does not list it cannot judge; nothing is altered by that.
        let other = Authority::new(&home.join("other"), key, 0);
        let unlisted = |root: &Path| {
            let (code, text) = check(&folder, root);
            let found = |outcome: &str| text.matches(&format!("{outcome:<14}  authority")).count();
            assert!(code == 3 && text.contains("leads to none of the given authorities"), "{text}");
            [found("passed"), found("not checkable")]
        };
        assert_eq!(unlisted(&other.root()), [0, 2]);
        assert_eq!(stamp(&folder, &other, &home).0, 0);
        assert_eq!(unlisted(&authority.root()), [2, 1]);
        assert_eq!(unlisted(&other.root()), [1, 2]);
        let both = home.join("both.pem");
        fs::write(&both, [authority.root(), other.root()].map(|root| fs::read(root).unwrap()).concat()).unwrap();
        let (code, text) = check(&folder, &both);
        assert_eq!((code, text.matches("passed          authority").count()), (3, 3), "{text}");
        // Nobody is named without one.
        assert!(run(&[&folder], &["check"], None).1.contains("not checkable   authority"));
    }
}

#[test]
fn an_answer_goes_in_while_sealing_and_bare_tokens_count() {
    let dir = tempfile::tempdir().unwrap();
    let authority = Authority::new(&dir.path().join("authority"), "-algorithm EC -pkeyopt ec_paramgen_curve:P-384", 0);
    let (job, first) = (small_job(&dir.path().join("in")), dir.path().join("first"));
    let (request, token) = (dir.path().join("ask"), dir.path().join("token"));
    let ask = [&job, Path::new("--out"), &first, Path::new("--timestamp-request"), &request];
    assert_eq!(run(&ask, &["seal"], None).0, 0);
    authority.answer(&request, &token, " -token_out");
    let second = dir.path().join("second");
    let answer = |out| [&job, Path::new("--out"), out, Path::new("--timestamp"), &token].map(Path::to_path_buf);
    let (code, text) = run(&answer(&second).each_ref().map(PathBuf::as_path), &["seal"], None);
    assert_eq!(code, 0, "{text}");
    assert!(authority.accepts(&second.join("tagmanifest-sha512.txt"), &second.join("tagmanifest-sha512.txt.tsr")));
    // For another job it is none, and nothing is left of the attempt.
    fs::write(job.join("notes (ä).txt"), "changed").unwrap();
    let third = dir.path().join("third");
    let (code, text) = run(&answer(&third).each_ref().map(PathBuf::as_path), &["seal"], None);
    assert!(code == 2 && text.contains("other bytes") && !third.exists(), "{text}");
}

#[test]
fn altered_and_unfit_tokens_fail() {
    let dir = tempfile::tempdir().unwrap();
    let authority = Authority::new(&dir.path().join("authority"), "-algorithm EC -pkeyopt ec_paramgen_curve:P-256", 0);
    let folder = sealed(dir.path());
    assert_eq!(stamp(&folder, &authority, dir.path()).0, 0);
    let kept = folder.join("tagmanifest-sha512.txt.tsr");
    let bytes = fs::read(&kept).unwrap();
    let (mut found, mut tried) = (0, 0);
    for place in (0..bytes.len()).step_by(7) {
        let mut altered = bytes.clone();
        altered[place] ^= 0x10;
        let read = baywitness::evidence::Token::read(&altered);
        let manifest = fs::read(folder.join("tagmanifest-sha512.txt")).unwrap();
        let pem = fs::read(authority.root()).unwrap();
        let trusted = baywitness::evidence::Authorities::read(&pem, "ca.pem").unwrap();
        let holds = read.is_ok_and(|t| t.check(&manifest).is_ok() && trusted.vouch_for(&t).is_ok());
        found += usize::from(!holds);
        tried += 1;
    }
    // What surrounds the signed parts may be spelled otherwise, what is signed may not.
    assert!(found * 20 >= tried * 19, "{found} of {tried}");
    fs::write(&kept, &bytes[..bytes.len() - 1]).unwrap();
    let (code, text) = check(&folder, &authority.root());
    assert!(code == 1 && text.contains("tagmanifest-sha512.txt.tsr: it is no timestamp"), "{text}");
    let root = fs::read(authority.root()).unwrap();
    assert!(baywitness::evidence::Authorities::read(&root[..40], "x").is_err());
}

#[test]
fn one_file_is_stamped_and_stays_one() {
    let dir = tempfile::tempdir().unwrap();
    let authority = Authority::new(&dir.path().join("authority"), "-algorithm EC -pkeyopt ec_paramgen_curve:P-256", 0);
    let (job, file) = (small_job(&dir.path().join("in")), dir.path().join("sealed.tar"));
    assert_eq!(run(&[&job, Path::new("--out"), &file], &["seal"], None).0, 0);
    for n in 1..3 {
        let (code, text) = stamp(&file, &authority, dir.path());
        assert!(code == 0 && text.contains("sealed.tar") && file.is_file(), "{text}");
        let (code, text) = check(&file, &authority.root());
        assert_eq!((code, text.matches("sealed no later").count()), (3, n), "{text}");
    }
    // An answer for another folder changes nothing.
    let whole = fs::read(&file).unwrap();
    let (code, text) = run(&[&file, Path::new("--answer"), &dir.path().join("answer.tsr")], &["stamp"], None);
    assert_eq!(code, 2, "{text}");
    assert!(whole == fs::read(&file).unwrap(), "{text}");
    let beside = fs::read_dir(dir.path()).unwrap().filter(|e| e.as_ref().unwrap().path().is_dir()).count();
    assert_eq!(beside, 2, "nothing is unpacked beside it");
}
