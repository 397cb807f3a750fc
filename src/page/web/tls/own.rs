//! A certificate of the page's own: made once, kept with the jobs, readable by
//! nobody else.
//!
//! A root vouches for the page's certificate, since phones only let a root be
//! trusted. The root's key is thrown away as soon as it has signed: nobody can
//! make another certificate that a phone which trusts this root would take.

use std::net::IpAddr;
use std::path::{Path, PathBuf};
use std::time::{Duration, SystemTime};

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use rcgen::{
    BasicConstraints, CertificateParams, CertifiedIssuer, DnType, ExtendedKeyUsagePurpose, IsCa, KeyPair,
    KeyUsagePurpose,
};

use super::Error;
use super::identity::Identity;
use crate::folder::write_private;

/// Key, the page's certificate and the root's, in the folder of jobs.
const KEPT: &str = ".baywitness-tls.pem";
/// How long it counts. Phones refuse what counts for more than 825 days (common
/// practice, from memory); clocks may differ by a day at either end.
const DAYS: u32 = 820;
const DAY: Duration = Duration::from_secs(86_400);

/// Where the own certificate of a folder of jobs is.
pub(super) fn file(jobs: &Path) -> PathBuf {
    jobs.join(KEPT)
}

/// Makes the certificate where there is none or the old one's time is over.
/// Whether it was made now.
pub(super) fn make_once(jobs: &Path, names: &[String], now: SystemTime) -> Result<bool, Error> {
    let file = file(jobs);
    if file.exists() {
        let old = Identity::read(&file, &file)?;
        if old.until.is_none_or(|until| until > now) {
            return Ok(false);
        }
    }
    let text = made(names, now)?;
    write_private(&file, text.as_bytes()).map_err(|source| Error::File { writing: true, file, source })?;
    Ok(true)
}

fn made(names: &[String], now: SystemTime) -> Result<String, Error> {
    let broken = |e: rcgen::Error| Error::Make(e.to_string());
    let named = |common: &str, names: Vec<String>| -> Result<CertificateParams, rcgen::Error> {
        let mut params = CertificateParams::new(names)?;
        params.distinguished_name.push(DnType::CommonName, common);
        params.not_before = (now - DAY).into();
        params.not_after = (now + DAY * DAYS).into();
        Ok(params)
    };
    let main = names.first().map_or("this machine", String::as_str);
    // A phone may know an earlier root: two of one name would be taken for each other.
    let day = time::OffsetDateTime::from(now).date();
    let mut root = named(&format!("baywitness page {main}, root of {day}"), Vec::new()).map_err(broken)?;
    root.is_ca = IsCa::Ca(BasicConstraints::Constrained(0));
    root.key_usages = vec![KeyUsagePurpose::KeyCertSign, KeyUsagePurpose::CrlSign];
    let root = CertifiedIssuer::self_signed(root, KeyPair::generate().map_err(broken)?).map_err(broken)?;
    let mut page = named(&format!("baywitness page {main}"), names.to_vec()).map_err(broken)?;
    page.key_usages = vec![KeyUsagePurpose::DigitalSignature];
    page.extended_key_usages = vec![ExtendedKeyUsagePurpose::ServerAuth];
    page.use_authority_key_identifier_extension = true;
    let key = KeyPair::generate().map_err(broken)?;
    let page = page.signed_by(&key, &root).map_err(broken)?;
    // The root's key ends here.
    let parts = [("PRIVATE KEY", key.serialized_der()), ("CERTIFICATE", page.der()), ("CERTIFICATE", root.der())];
    Ok(parts.iter().map(|(label, der)| pem(label, der)).collect())
}

/// RFC 7468.
fn pem(label: &str, der: &[u8]) -> String {
    let lines: Vec<String> =
        STANDARD.encode(der).as_bytes().chunks(64).map(|l| String::from_utf8_lossy(l).into()).collect();
    format!("-----BEGIN {label}-----\n{}\n-----END {label}-----\n", lines.join("\n"))
}

/// What a certificate is made for: the names typed, those of this machine, its
/// addresses. The first is what phones use.
pub(in crate::web) fn names_of(typed: &[String], address: IpAddr, host: Option<&str>) -> Result<Vec<String>, Error> {
    let mut names: Vec<String> = typed.to_vec();
    names.push(address.to_string());
    if let Some(host) = host.filter(|h| is_name(h)) {
        names.extend([host.to_owned(), format!("{host}.local")]);
    }
    names.extend(["localhost", "127.0.0.1", "::1"].map(str::to_owned));
    if let Some(wrong) = names.iter().find(|n| !is_name(n) && n.parse::<IpAddr>().is_err()) {
        return Err(Error::Name(wrong.clone()));
    }
    let mut once = Vec::new();
    for name in names {
        if !once.contains(&name) {
            once.push(name);
        }
    }
    Ok(once)
}

/// RFC 1123, 2.1.
fn is_name(name: &str) -> bool {
    let label = |l: &str| {
        (1..=63).contains(&l.len())
            && l.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-')
            && !l.starts_with('-')
            && !l.ends_with('-')
    };
    name.len() <= 253 && name.split('.').all(label)
}
