//! Signed PDF reports, as poppler's pdfsig and stock openssl read them: programs
//! that know nothing of how they were made. Where poppler is missing the checks
//! say so and are skipped.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use baywitness::evidence::{Identity, PadesError, Problem, SignedPdf, own_certificate, sign_pdf};
use rand::{RngExt, SeedableRng};
use time::macros::datetime;

use super::doors::{run, small_job};
use super::stamps::{Authority, openssl};

fn path(text: &str) -> &Path {
    Path::new(text)
}

/// A certificate as the program makes it.
pub(crate) fn own(dir: &Path, name: &str) -> PathBuf {
    let file = dir.join(format!("{name}.pem"));
    let (code, said) = run(&[path(name), path("--out"), &file], &["certificate"], None);
    assert!(code == 0 && said.contains("SHA-256"), "{said}");
    file
}

/// A job's report, signed where a key is given.
pub(crate) fn report(job: &Path, out: &Path, signer: &[&Path]) -> PathBuf {
    let mut arguments = vec![job, path("--report"), out];
    for (option, file) in ["--sign-pdf", "--certificate"].iter().zip(signer) {
        arguments.extend([path(option), *file]);
    }
    let (code, said) = run(&arguments, &["verify"], None);
    assert_eq!(code, 4, "{said}");
    let pdf = super::files(out).into_iter().find(|f| f.extension().is_some_and(|e| e == "pdf"));
    pdf.unwrap()
}

/// What poppler says of a signature; `None`, with a word, where it is not installed.
pub(crate) fn pdfsig(file: &Path) -> Option<String> {
    match Command::new("pdfsig").arg(file).output() {
        Ok(output) => Some([output.stdout, output.stderr].map(|b| String::from_utf8_lossy(&b).into_owned()).concat()),
        Err(_) => {
            eprintln!("skipped: pdfsig is not installed");
            None
        }
    }
}

/// The signed bytes and the signature, taken apart as ISO 32000-1, 12.8.1 says.
fn parts(pdf: &[u8]) -> (Vec<u8>, Vec<u8>) {
    let text = String::from_utf8_lossy(pdf);
    let range = text.rsplit("/ByteRange[").next().unwrap().split(']').next().unwrap();
    let [a, b, c, d] = range.split_whitespace().map(|n| n.parse().unwrap()).collect::<Vec<usize>>()[..] else {
        panic!("{range}")
    };
    assert_eq!((a, c + d), (0, pdf.len()), "the range ends with the file");
    let digits = std::str::from_utf8(&pdf[b + 1..c - 1]).unwrap();
    let der = (0..digits.len()).step_by(2).map(|i| u8::from_str_radix(&digits[i..i + 2], 16).unwrap()).collect();
    ([&pdf[..b], &pdf[c..]].concat(), der)
}

/// Stock openssl accepts the signature as one of CAdES, which must name its certificate.
fn openssl_accepts(dir: &Path, pdf: &[u8], root: &Path) -> bool {
    let (signed, der) = parts(pdf);
    fs::write(dir.join("signed.bin"), signed).unwrap();
    fs::write(dir.join("signature.der"), der).unwrap();
    fs::copy(root, dir.join("trusted.crt")).unwrap();
    let line = "cms -verify -cades -inform DER -in signature.der -content signed.bin -binary -CAfile trusted.crt -purpose any -out checked.bin";
    openssl(dir, line)
}

/// A key of stock openssl with a certificate of its own.
fn by_openssl(dir: &Path, name: &str, key: &str, extension: &str) -> (PathBuf, PathBuf) {
    assert!(openssl(dir, &format!("{key} -out {name}.key")));
    let line = format!(
        "req -new -x509 -key {name}.key -subj /CN=Invented-{name} -days 30 -addext {extension} -out {name}.crt"
    );
    assert!(openssl(dir, &line));
    (dir.join(format!("{name}.key")), dir.join(format!("{name}.crt")))
}

const SIGNS: &str = "keyUsage=critical,digitalSignature";

#[test]
fn stock_readers_say_who_signed() {
    let dir = tempfile::tempdir().unwrap();
    let job = small_job(&dir.path().join("in"));
    let plain = fs::read(report(&job, &dir.path().join("plain"), &[])).unwrap();
    let workshop = own(dir.path(), "Invented workshop Ä");
    let rsa = by_openssl(dir.path(), "rsa", "genpkey -algorithm RSA -pkeyopt rsa_keygen_bits:2048", SIGNS);
    // The older form of a key's file, and the other curve.
    let ec = by_openssl(dir.path(), "ec", "ecparam -name secp384r1 -genkey -noout", SIGNS);
    for (name, signer, certificate, digest) in [
        ("Invented workshop Ä", vec![workshop.as_path()], workshop.with_extension("crt"), "SHA-256"),
        ("Invented-rsa", vec![&rsa.0, &rsa.1], rsa.1.clone(), "SHA-256"),
        ("Invented-ec", vec![&ec.0, &ec.1], ec.1.clone(), "SHA-384"),
    ] {
        let file = report(&job, &dir.path().join(name), &signer);
        let bytes = fs::read(&file).unwrap();
        // What was there stays, byte for byte, and an unsigned report is what it was.
        assert!(bytes.starts_with(&plain), "{name}");
        assert!(openssl_accepts(dir.path(), &bytes, &certificate), "{name}");
        if let Some(said) = pdfsig(&file) {
            for words in [
                &format!("Signer Certificate Common Name: {name}"),
                &format!("Signing Hash Algorithm: {digest}"),
                "Signature Type: ETSI.CAdES.detached",
                "Total document signed",
                "Signature Validation: Signature is Valid",
            ] {
                assert!(said.contains(words), "{name}: {words}: {said}");
            }
        }
        let (code, said) = run(&[&file, path("--certificates"), &certificate], &["check"], None);
        assert!(code == 0 && said.contains("over the whole file"), "{code}: {said}");
        let (code, said) = run(&[&file], &["check"], None);
        assert!(code == 3 && said.contains("--certificates"), "{code}: {said}");
    }
    // Somebody else's certificate of the same name is somebody else's.
    let other = own(&dir.path().join("other"), "Invented workshop Ä");
    let file = report(&job, &dir.path().join("theirs"), &[&other]);
    let ours = workshop.with_extension("crt");
    let (code, said) = run(&[&file, path("--certificates"), &ours], &["check"], None);
    assert!(code == 3 && said.contains("not among those"), "{code}: {said}");
    if let Ok(output) = Command::new("qpdf").arg("--check").arg(&file).output() {
        let said = String::from_utf8_lossy(&output.stdout).into_owned();
        assert!(said.contains("No syntax or stream encoding errors found"), "{said}");
    }
}

/// A small report, signed in this process, and its certificate.
fn signed(dir: &Path) -> (Vec<u8>, Identity) {
    let made = own_certificate("Invented", 1, datetime!(2026-05-01 0:00 UTC)).unwrap();
    let file = dir.join("key.pem");
    fs::write(&file, made.private_pem).unwrap();
    let identity = Identity::open(&file, &file).unwrap();
    let (record, pictures) = crate::report::fixture::job(&crate::report::fixture::GOOD, 2);
    let language = baywitness::words::Language::English;
    let pdf = baywitness::report::pdf(&record, &pictures, b"{}", language).unwrap();
    (sign_pdf(&pdf, &identity, "Signature", datetime!(2026-05-02 10:11:12 UTC)).unwrap(), identity)
}

fn holds(bytes: &[u8]) -> bool {
    SignedPdf::read(bytes.to_vec()).is_ok_and(|signed| signed.check().is_ok())
}

#[test]
fn every_flipped_byte_that_was_signed_is_seen() {
    let dir = tempfile::tempdir().unwrap();
    let (good, _) = signed(dir.path());
    assert!(holds(&good));
    assert_eq!(SignedPdf::read(good.clone()).unwrap().claimed(), Some(datetime!(2026-05-02 10:11:12 UTC)));
    let hole = hole(&good);
    let mut random = rand::rngs::ChaCha8Rng::seed_from_u64(21);
    let mut unseen = Vec::new();
    for n in 0..400 {
        // Half of them in what was added, which is short beside the report.
        let from = if n % 2 == 0 { 0 } else { hole - 4000 };
        let at = random.random_range(from..good.len());
        let mut bad = good.clone();
        bad[at] ^= 1 << random.random_range(0..7);
        // The signature's own digits may be spelled in upper case.
        let same_digit = at >= hole && good[at].eq_ignore_ascii_case(&bad[at]);
        if holds(&bad) && !same_digit {
            unseen.push((at, char::from(good[at]), char::from(bad[at])));
        }
    }
    assert!(unseen.is_empty(), "{unseen:?}");
    // And poppler says so too.
    let mut bad = good.clone();
    bad[good.len() / 3] ^= 1;
    fs::write(dir.path().join("bad.pdf"), &bad).unwrap();
    if let Some(said) = pdfsig(&dir.path().join("bad.pdf")) {
        assert!(!said.contains("Signature is Valid") && said.contains("Digest Mismatch"), "{said}");
    }
    let (code, said) = run(&[&dir.path().join("bad.pdf")], &["check"], None);
    assert!(code == 1 && said.contains("does not hold"), "{code}: {said}");
}

/// Where the signature's place begins.
fn hole(pdf: &[u8]) -> usize {
    let mark = b"]/Contents<";
    pdf.windows(mark.len()).rposition(|w| w == mark).unwrap() + mark.len()
}

#[test]
fn what_is_added_cut_off_or_moved_is_seen() {
    let dir = tempfile::tempdir().unwrap();
    let (good, identity) = signed(dir.path());
    let problem = |bytes: &[u8]| match SignedPdf::read(bytes.to_vec()).map(|s| s.check()) {
        Err(PadesError::Pdf(problem)) => Some(problem),
        _ => None,
    };
    // A later state of the document, as an editor writes it.
    let longer = [&good[..], b"1 0 obj\n<<>>\nendobj\n%%EOF\n"].concat();
    assert_eq!(problem(&longer), Some(Problem::Range));
    assert_eq!(problem(&good[..good.len() - 1]), Some(Problem::Range));
    // Another hole than the signature: a range that leaves out something else.
    let at = hole(&good) - 1;
    let moved = String::from_utf8_lossy(&good[at - 60..at]).into_owned();
    let numbers: Vec<&str> = moved.split('[').next_back().unwrap().split_whitespace().collect();
    let smaller = format!("{:<10}", numbers[1].parse::<usize>().unwrap() - 1);
    let bad = replaced(&good, format!("{:<10}", numbers[1]).as_bytes(), smaller.as_bytes());
    assert_eq!(problem(&bad), Some(Problem::Range));
    let plain = b"%PDF-1.7\nnothing signed";
    assert_eq!(problem(plain), Some(Problem::Unsigned));
    assert_eq!(problem(b"no pdf"), Some(Problem::NoPdf));
    // Signed twice, or something else than a report.
    let again = sign_pdf(&good, &identity, "x", datetime!(2026-05-02 0:00 UTC));
    assert!(matches!(again, Err(PadesError::Pdf(Problem::NoPdf | Problem::SignedAlready))), "{again:?}");
    for bytes in [&b""[..], b"%PDF-1.7\nstartxref\n0\n%%EOF", &good[..good.len() / 2], &good[good.len() / 2..]] {
        assert!(sign_pdf(bytes, &identity, "x", datetime!(2026-05-02 0:00 UTC)).is_err());
    }
    // Before the certificate began, and after it ended.
    for (moment, wanted) in
        [(datetime!(2026-04-30 0:00 UTC), Problem::Early), (datetime!(2027-05-02 0:00 UTC), Problem::Late)]
    {
        let refused = sign_pdf(&good, &identity, "x", moment);
        assert!(matches!(refused, Err(PadesError::File { problem, .. }) if problem == wanted), "{refused:?}");
    }
}

fn replaced(bytes: &[u8], from: &[u8], to: &[u8]) -> Vec<u8> {
    let at = bytes.windows(from.len()).rposition(|w| w == from).unwrap();
    [&bytes[..at], to, &bytes[at + from.len()..]].concat()
}

#[test]
fn a_timestamp_goes_into_the_signature_and_the_signature_stays() {
    let dir = tempfile::tempdir().unwrap();
    let authority = Authority::new(&dir.path().join("authority"), "-algorithm EC -pkeyopt ec_paramgen_curve:P-256", 0);
    let job = small_job(&dir.path().join("in"));
    let key = own(dir.path(), "Invented");
    let file = report(&job, &dir.path().join("report"), &[&key]);
    let other = report(&job, &dir.path().join("other"), &[&key]);
    let before = fs::read(&file).unwrap();
    let (request, answer) = (dir.path().join("ask.tsq"), dir.path().join("answer.tsr"));
    let (code, said) = run(&[&file, path("--request"), &request], &["stamp"], None);
    assert_eq!(code, 0, "{said}");
    authority.answer(&request, &answer, "");
    // For another signature of the same report it is none.
    let (code, said) = run(&[&other, path("--answer"), &answer], &["stamp"], None);
    assert!(code == 2 && said.contains("other bytes"), "{code}: {said}");
    let (code, said) = run(&[&file, path("--answer"), &answer], &["stamp"], None);
    assert!(code == 0 && said.contains("tsa-invented"), "{code}: {said}");
    let after = fs::read(&file).unwrap();
    assert_eq!((parts(&before).0, before.len()), (parts(&after).0, after.len()), "what is signed stays");
    assert!(openssl_accepts(dir.path(), &after, &key.with_extension("crt")));
    if let Some(said) = pdfsig(&file) {
        assert!(said.contains("Signature is Valid") && said.contains("Total document signed"), "{said}");
    }
    let check = |root: &Path| {
        let certificate = key.with_extension("crt");
        let arguments = [&file, path("--certificates"), &certificate, path("--timestamp-ca"), root];
        run(&arguments, &["check"], None)
    };
    let (code, said) = check(&authority.root());
    assert!(
        code == 0 && said.contains("signed no later than 2") && said.contains("passed          authority"),
        "{said}"
    );
    let strange = Authority::new(&dir.path().join("strange"), "-algorithm EC -pkeyopt ec_paramgen_curve:P-256", 0);
    // A reader who does not list the authority cannot judge it; the signature stands.
    let (code, said) = check(&strange.root());
    assert!(code == 0 && said.contains("not checkable   authority"), "{code}: {said}");
    let (code, said) = run(&[&file, path("--answer"), &answer], &["stamp"], None);
    assert!(code == 2 && said.contains("already"), "{code}: {said}");
    let (code, said) = run(&[&file, path("--request"), &request], &["stamp"], None);
    assert!(code == 2 && said.contains("already"), "{code}: {said}");
}

#[test]
fn a_sealed_report_is_signed_and_stays_sealed() {
    let dir = tempfile::tempdir().unwrap();
    let job = small_job(&dir.path().join("in"));
    let key = own(dir.path(), "Invented");
    let (out, answer) = (dir.path().join("sealed"), dir.path().join("answer"));
    let (code, said) = run(&[&job, path("--out"), &out, path("--sign-pdf"), &key], &["seal"], None);
    assert_eq!(code, 0, "{said}");
    let file = out.join("data/report.pdf");
    assert!(holds(&fs::read(&file).unwrap()));
    assert_eq!(run(&[&out], &["check"], None).0, 3);
    fs::write(&answer, "any").unwrap();
    let (code, said) = run(&[&file, path("--answer"), &answer], &["stamp"], None);
    assert!(code == 2 && said.contains("never changed"), "{code}: {said}");
    // A signature is new each time: an answer for an earlier sealing cannot fit.
    let again = [&job, path("--out"), &answer, path("--sign-pdf"), &key, path("--timestamp"), &answer];
    assert_eq!(run(&again, &["seal"], None).0, 2);
}

#[test]
fn keys_and_certificates_of_no_use_are_refused_with_a_remedy() {
    let dir = tempfile::tempdir().unwrap();
    let home = dir.path();
    let job = small_job(&home.join("in"));
    let own = own(home, "Invented");
    let small = by_openssl(home, "small", "genpkey -algorithm RSA -pkeyopt rsa_keygen_bits:1024", SIGNS);
    let seals = by_openssl(home, "seals", "genpkey -algorithm ED25519", SIGNS);
    let agrees = by_openssl(
        home,
        "agrees",
        "genpkey -algorithm EC -pkeyopt ec_paramgen_curve:P-256",
        "keyUsage=critical,keyAgreement",
    );
    assert!(openssl(home, "pkcs8 -topk8 -in small.key -passout pass:invented -out locked.key"));
    let ssh = super::fresh_key(home, "");
    let missing = home.join("none.pem");
    let crt = own.with_extension("crt");
    for (key, certificate, words) in [
        (&small.0, &small.1, "its key is of another kind"),
        (&seals.0, &seals.1, "its key is of another kind"),
        (&agrees.0, &agrees.1, "for other uses than signatures"),
        (&home.join("locked.key"), &small.1, "openssl pkey"),
        (&own, &small.1, "none of its certificates belongs"),
        (&crt, &crt, "no private key in PEM"),
        (&small.0, &small.0, "its key is of another kind"),
        (&own, &job.join("job.toml"), "no certificate in PEM"),
        (&ssh, &crt, "no private key in PEM"),
        (&missing, &crt, "cannot read"),
    ] {
        let out = home.join("out");
        let arguments = [&job, path("--report"), &out, path("--sign-pdf"), key, path("--certificate"), certificate];
        let (code, said) = run(&arguments, &["verify"], None);
        assert!(code == 2 && said.contains(words) && !out.exists(), "{words}: {code}: {said}");
    }
    for (name, out, years, words) in [
        (" ", "a.pem", "3", "the name is empty"),
        ("a", "a.crt", "3", "ending"),
        ("a", "a.pem", "11", "1 to 10 years"),
        ("a", "Invented.pem", "3", "already there"),
    ] {
        let arguments = [path(name), path("--out"), &home.join(out), path("--years"), path(years)];
        let (code, said) = run(&arguments, &["certificate"], None);
        assert!(code == 2 && said.contains(words), "{words}: {code}: {said}");
    }
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        assert_eq!(fs::metadata(&own).unwrap().permissions().mode() & 0o777, 0o600);
    }
}
