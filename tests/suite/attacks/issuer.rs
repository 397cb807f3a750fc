//! Throw-away issuers of stock `openssl`, with certificates of any use and tokens of any time, and a workshop whose sealed
//! job and signed report they are put to.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::{LazyLock, Mutex, MutexGuard, PoisonError};

use sha2::{Digest, Sha512};
use time::OffsetDateTime;
use time::macros::format_description;

use super::workshop::Workshop;
use crate::evidence::doors::{run, seal_with, small_job};
use crate::evidence::pades::{own, report};
use crate::evidence::stamps::{ASKS_NOTHING, openssl};

const CONFIG: &str = "\
[root]
basicConstraints = critical,CA:true
keyUsage = critical,keyCertSign
[stamps]
extendedKeyUsage = critical,timeStamping
[uncritical]
extendedKeyUsage = timeStamping
[serves]
extendedKeyUsage = critical,timeStamping,serverAuth
[server]
extendedKeyUsage = critical,serverAuth
[signs]
keyUsage = critical,digitalSignature
[wraps]
keyUsage = critical,keyEncipherment
[own]
database = index
new_certs_dir = .
default_md = sha256
policy = any
unique_subject = no
rand_serial = yes
[any]
commonName = supplied
";

pub(super) const KEY: &str = "genpkey -algorithm EC -pkeyopt ec_paramgen_curve:P-256 -out";
pub(super) const TAGS: &str = "tagmanifest-sha512.txt";
pub(super) const GOOD: [&str; 2] = ["20150101000000Z", "20400101000000Z"];
const OLD: [&str; 2] = ["20150101000000Z", "20200101000000Z"];

/// A root that issues certificates of any time and use; tokens of any time are made with them.
pub(super) struct Issuer {
    pub(super) dir: PathBuf,
    /// Its files have one name each, and tests run beside each other.
    busy: Mutex<()>,
}

impl Issuer {
    pub(super) fn new(dir: PathBuf) -> Self {
        fs::create_dir_all(&dir).unwrap();
        fs::write(dir.join("conf"), ASKS_NOTHING.to_owned() + CONFIG).unwrap();
        fs::write(dir.join("index"), "").unwrap();
        assert!(openssl(&dir, &format!("{KEY} ca.key")));
        let root =
            "req -new -x509 -key ca.key -subj /CN=ca-invented -days 30 -config conf -extensions root -out ca.pem";
        assert!(openssl(&dir, root));
        Issuer { dir, busy: Mutex::new(()) }
    }

    pub(super) fn at(&self, name: &str) -> PathBuf {
        self.dir.join(name)
    }

    fn alone(&self) -> MutexGuard<'_, ()> {
        self.busy.lock().unwrap_or_else(PoisonError::into_inner)
    }

    pub(super) fn issue(&self, name: &str, [from, to]: [&str; 2], extensions: &str) {
        let _alone = self.alone();
        assert!(openssl(&self.dir, &format!("{KEY} {name}.key")));
        assert!(openssl(&self.dir, &format!("req -new -key {name}.key -subj /CN={name} -config conf -out {name}.csr")));
        let line = format!(
            "ca -batch -notext -config conf -name own -in {name}.csr -cert ca.pem -keyfile ca.key -startdate {from} \
             -enddate {to} -extensions {extensions} -out {name}.pem"
        );
        assert!(openssl(&self.dir, &line));
    }

    /// A token (RFC 3161) of a digest by one of its certificates, as if it was that time.
    pub(super) fn token(&self, digest: &[u8], by: &str, when: &str) -> Vec<u8> {
        let algorithm = der(0x30, &[&[6, 9, 0x60, 0x86, 0x48, 1, 0x65, 3, 4, 2, 3], &[5, 0]]);
        let imprint = der(0x30, &[&algorithm, &der(4, &[digest])]);
        let (version, policy, serial) = ([2, 1, 1], [6, 4, 0x2a, 3, 4, 1], [2, 1, 77]);
        let info = der(0x30, &[&version, &policy, &imprint, &serial, &der(0x18, &[when.as_bytes()])]);
        let _alone = self.alone();
        fs::write(self.at("info"), info).unwrap();
        let line = format!(
            "cms -sign -binary -nodetach -econtent_type 1.2.840.113549.1.9.16.1.4 -cades -md sha256 -nosmimecap -in info \
             -signer {by}.pem -inkey {by}.key -outform DER -out token"
        );
        assert!(openssl(&self.dir, &line));
        fs::read(self.at("token")).unwrap()
    }

    /// A PDF whose last signature is made anew with one of its certificates.
    pub(super) fn signed(&self, pdf: &[u8], by: &str) -> Vec<u8> {
        let _alone = self.alone();
        let [from, to] = place(pdf);
        fs::write(self.at("content"), [&pdf[..from], &pdf[to..]].concat()).unwrap();
        let line = format!(
            "cms -sign -binary -cades -md sha256 -nosmimecap -in content -signer {by}.pem -inkey {by}.key -outform DER \
             -out signature"
        );
        assert!(openssl(&self.dir, &line));
        let signature = fs::read(self.at("signature")).unwrap();
        let digits: String = signature.iter().map(|byte| format!("{byte:02x}")).collect();
        let mut pdf = pdf.to_vec();
        pdf[from + 1..to - 1].fill(b'0');
        pdf[from + 1..][..digits.len()].copy_from_slice(digits.as_bytes());
        pdf
    }
}

/// A value of up to 64 kB (ITU-T X.690).
fn der(tag: u8, parts: &[&[u8]]) -> Vec<u8> {
    let content = parts.concat();
    let length = match u16::try_from(content.len()).unwrap().to_be_bytes() {
        [0, short @ 0..128] => vec![short],
        [0, long] => vec![0x81, long],
        both => vec![0x82, both[0], both[1]],
    };
    [vec![tag], length, content].concat()
}

/// Where the place of the last signature begins and ends.
fn place(pdf: &[u8]) -> [usize; 2] {
    let mark = b"/ByteRange[";
    let at = pdf.windows(mark.len()).rposition(|w| w == mark).unwrap() + mark.len();
    let text = String::from_utf8_lossy(&pdf[at..at + 60]).into_owned();
    let numbers: Vec<usize> = text.split_whitespace().take(3).map(|n| n.parse().unwrap()).collect();
    [numbers[1], numbers[2]]
}

/// A time as tokens and PDFs write it.
pub(super) fn written(time: OffsetDateTime) -> String {
    time.format(&format_description!("[year][month][day][hour][minute][second]Z")).unwrap()
}

pub(super) fn ago(days: i64) -> OffsetDateTime {
    OffsetDateTime::now_utc() - time::Duration::days(days)
}

/// A workshop with a sealed job, an authority that its reader lists, and one that he does not.
pub(super) struct Bench {
    pub(super) shop: Workshop,
    pub(super) listed: Issuer,
    pub(super) other: Issuer,
}

pub(super) static BENCH: LazyLock<Bench> = LazyLock::new(|| {
    let shop = Workshop::new();
    assert_eq!(seal_with(&small_job(&shop.at("in")), &shop.at("sealed"), &shop.key, None).0, 0);
    let (listed, other) = (Issuer::new(shop.at("listed")), Issuer::new(shop.at("unlisted")));
    for (name, counts, extensions) in [("good", GOOD, "stamps"), ("old", OLD, "stamps"), ("signs", GOOD, "signs")] {
        listed.issue(name, counts, extensions);
    }
    other.issue("strange", GOOD, "stamps");
    Bench { shop, listed, other }
});

impl Bench {
    /// A copy of a sealed folder.
    pub(super) fn copy(&self, from: &str, to: &str) -> PathBuf {
        let (from, to) = (self.shop.at(from), self.shop.at(to));
        for file in crate::evidence::files(&from) {
            let there = to.join(file.strip_prefix(&from).unwrap());
            fs::create_dir_all(there.parent().unwrap()).unwrap();
            fs::copy(file, there).unwrap();
        }
        to
    }

    /// A copy of a sealed folder with tokens, each over the one before, by `strange` or one of the listed authority.
    pub(super) fn stamped(&self, from: &str, to: &str, tokens: &[(&str, &str)]) -> PathBuf {
        let folder = self.copy(from, to);
        let mut over = TAGS.to_owned();
        for (n, (by, when)) in tokens.iter().enumerate() {
            let digest = Sha512::digest(fs::read(folder.join(&over)).unwrap());
            let issuer = if *by == "strange" { &self.other } else { &self.listed };
            over = if n == 0 { format!("{TAGS}.tsr") } else { format!("{TAGS}.{}.tsr", n + 1) };
            fs::write(folder.join(&over), issuer.token(&digest, by, when)).unwrap();
        }
        folder
    }

    pub(super) fn check(&self, folder: &Path) -> (i32, String) {
        let (signers, authorities) = (Path::new("--signers"), Path::new("--timestamp-ca"));
        run(&[folder, signers, &self.shop.list, authorities, &self.listed.at("ca.pem")], &["check"], None)
    }

    /// What `check` says of a PDF, to a reader who lists one certificate.
    pub(super) fn check_pdf(&self, name: &str, pdf: &[u8], certificate: &Path) -> (i32, String) {
        let file = self.shop.at(&format!("{name}.pdf"));
        fs::write(&file, pdf).unwrap();
        let (certificates, authorities) = (Path::new("--certificates"), Path::new("--timestamp-ca"));
        run(&[&file, certificates, certificate, authorities, &self.listed.at("ca.pem")], &["check"], None)
    }

    /// A PDF with a timestamp of its signature put in.
    pub(super) fn stamped_pdf(&self, pdf: &[u8], when: &str) -> Vec<u8> {
        let dir = tempfile::tempdir().unwrap();
        let [file, request, answer] = ["a.pdf", "ask", "answer"].map(|name| dir.path().join(name));
        fs::write(&file, pdf).unwrap();
        let (code, said) = run(&[&file, Path::new("--request"), &request], &["stamp"], None);
        assert_eq!(code, 0, "{said}");
        let asked = fs::read(&request).unwrap();
        let at = asked.windows(2).position(|w| w == [4, 64]).unwrap() + 2;
        fs::write(&answer, self.listed.token(&asked[at..at + 64], "good", when)).unwrap();
        let (code, said) = run(&[&file, Path::new("--answer"), &answer], &["stamp"], None);
        assert_eq!(code, 0, "{said}");
        fs::read(&file).unwrap()
    }
}

/// A signed report of the workshop, and its certificate.
pub(super) static REPORT: LazyLock<(Vec<u8>, PathBuf)> = LazyLock::new(|| {
    let shop = &BENCH.shop;
    let key = own(&shop.at(""), "Invented-workshop");
    let file = report(&small_job(&shop.at("report-in")), &shop.at("report"), &[&key]);
    (fs::read(file).unwrap(), key.with_extension("crt"))
});

/// The report with another time by the signer's own clock; it has to be signed anew.
pub(super) fn claiming(when: &str) -> Vec<u8> {
    let mut pdf = REPORT.0.clone();
    let at = pdf.windows(5).rposition(|w| w == b"/M(D:").unwrap() + 5;
    pdf[at..at + 14].copy_from_slice(&when.as_bytes()[..14]);
    pdf
}

pub(super) fn failed(said: &str, words: &str) -> bool {
    said.lines().any(|line| line.starts_with("failed") && line.contains(words))
}

pub(super) fn passed(said: &str) -> usize {
    said.matches("passed          authority").count()
}
