//! PDF reports signed with a certificate, and their timestamps.

use std::path::Path;

use time::OffsetDateTime;

use super::answer::read_answer;
use super::output::{cannot_read, language, shown, write_named};
use crate::evidence::{Identity, PadesError, SignedPdf, is_evidence, sign_pdf};
use crate::words::{Language, Phrase, Value, phrase, say};

/// The largest PDF that is read; a report of 50 photos has some 20 MB.
const MOST_BYTES: u64 = 1 << 29;

/// The key and its certificate, where a key was named; both may lie in the key's file.
pub(super) fn open(key: Option<&Path>, certificate: Option<&Path>) -> Result<Option<Identity>, String> {
    let open = |key: &Path| {
        let identity = Identity::open(key, certificate.unwrap_or(key)).map_err(|e| words(&e))?;
        Ok(identity)
    };
    key.map(open).transpose()
}

/// A report with its signature, where somebody signs.
pub(super) fn sign(report: Vec<u8>, signer: Option<&Identity>, spoken: Language) -> Result<Vec<u8>, String> {
    let Some(identity) = signer else { return Ok(report) };
    let field = say!(spoken, "evidence-pdf-field");
    sign_pdf(&report, identity, &field, OffsetDateTime::now_utc()).map_err(|e| words(&e))
}

/// A report that is made anew without a key does not take the place of a signed one: that one is kept beside it, and the
/// new one says so, also when it is made again later.
pub(super) fn set_aside(file: &Path) -> Result<Option<Phrase>, String> {
    let kept = file.with_extension("signed.pdf");
    let signed = |file: &Path| file.is_file().then(|| read(file).ok()).flatten().map(|signed| signed.signer());
    let who = match signed(file) {
        Some(who) => {
            std::fs::rename(file, &kept).map_err(|e| super::output::cannot_write(&kept, &e))?;
            Some(who)
        }
        None => signed(&kept),
    };
    let name = kept.file_name().unwrap_or_default().to_string_lossy().into_owned();
    Ok(who.map(|who| phrase!("evidence-pdf-not-signed", who = who, file = name)))
}

/// Writes the request for a timestamp of a report's signature.
pub(super) fn request_stamp(file: &Path, request: &Path) -> Result<String, String> {
    let signed = read(file)?;
    write_named(request, &signed.stamp_request().map_err(|e| of_file(file, &e))?)?;
    Ok(say!(language(), "cli-stamp-request", file = shown(request), folder = shown(file)) + "\n")
}

/// Puts the answer into the report.
pub(super) fn stamp(file: &Path, answer: &Path) -> Result<String, String> {
    // A sealed folder's report must stay as it was sealed.
    if file.canonicalize().is_ok_and(|f| f.ancestors().skip(1).any(is_evidence)) {
        return Err(say!(language(), "cli-stamp-sealed", file = shown(file)));
    }
    let (_, bytes) = read_answer(answer)?;
    let (stamped, token) = read(file)?.stamped(&bytes).map_err(|e| of_file(file, &e))?;
    write_named(file, &stamped)?;
    let (authority, when, ends) = (token.authority(), token.when(), Value::moment(token.ends().date().to_string()));
    let file = shown(file);
    Ok(say!(language(), "cli-stamped-pdf", file = file, authority = authority, when = when, ends = ends) + "\n")
}

fn read(file: &Path) -> Result<SignedPdf, String> {
    SignedPdf::read(read_bytes(file)?).map_err(|e| of_file(file, &e))
}

/// A file of a report's size.
pub(super) fn read_bytes(file: &Path) -> Result<Vec<u8>, String> {
    let size = std::fs::metadata(file).map_err(|e| cannot_read(file, &e))?.len();
    if size > MOST_BYTES {
        return Err(say!(language(), "cli-pdf-large", file = shown(file)));
    }
    std::fs::read(file).map_err(|e| cannot_read(file, &e))
}

fn words(e: &PadesError) -> String {
    e.phrase().say(language())
}

/// What is wrong with a file, by its name.
pub(super) fn of_file(file: &Path, e: &PadesError) -> String {
    say!(language(), "evidence-file-wrong", file = shown(file), why = words(e))
}
