//! A photo's manifest store read and validated with the `c2pa` crate.

use std::io::Cursor;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::time::Duration;

use c2pa::assertions::{Action, Actions, DigitalSourceType, SoftwareAgent};
use c2pa::validation_status as code;
use c2pa::{Context, Manifest, Reader, Settings, ValidationState};

use time::OffsetDateTime;
use time::format_description::well_known::Rfc3339;

use super::chain::is_of_authorities;
use super::{Anchors, Credentials, Edit, Failure, State};
use crate::photo::Kind;

/// No more of a text is kept that a stranger wrote.
const MOST_CHARACTERS: usize = 120;
/// No more failures or edits are listed.
const MOST_LISTED: usize = 20;

/// Validates the manifest store of a photo that carries one.
pub(super) fn read(bytes: &[u8], kind: Kind, anchors: Option<&Anchors>) -> Credentials {
    // A fault of the crate on a hostile file is that file's fault.
    let read = catch_unwind(AssertUnwindSafe(|| open(bytes, kind, anchors)));
    match read {
        Ok(Ok(reader)) => catch_unwind(AssertUnwindSafe(|| told(&reader)))
            .unwrap_or_else(|_| Credentials::unreadable(code::GENERAL_ERROR)),
        Ok(Err(e)) => Credentials::unreadable(code_of(&e)),
        Err(_) => Credentials::unreadable(code::GENERAL_ERROR),
    }
}

fn open(bytes: &[u8], kind: Kind, anchors: Option<&Anchors>) -> c2pa::Result<Reader> {
    let format = match kind {
        Kind::Jpeg => "image/jpeg",
        Kind::Png => "image/png",
        Kind::Heic => "image/heic",
    };
    Reader::from_context(Context::new().with_settings(settings(anchors)?)?).with_stream(format, Cursor::new(bytes))
}

/// Nothing is fetched, and nobody is trusted but who is named.
fn settings(anchors: Option<&Anchors>) -> c2pa::Result<Settings> {
    let mut settings =
        Settings::new().with_value("verify.verify_trust", true)?.with_value("verify.verify_timestamp_trust", true)?;
    settings.verify.verify_after_reading = true;
    settings.verify.ocsp_fetch = false;
    settings.verify.remote_manifest_fetch = false;
    settings.core.allowed_network_hosts = Some(Vec::new());
    settings.core.decode_identity_assertions = false;
    settings.trust.user_anchors = None;
    settings.trust.allowed_list = None;
    settings.trust.trust_anchors = anchors.map(|a| a.pem.clone());
    Ok(settings)
}

/// The status code of a store that cannot be opened at all.
fn code_of(error: &c2pa::Error) -> &'static str {
    match error {
        c2pa::Error::ClaimMissing { .. } => code::CLAIM_MISSING,
        c2pa::Error::AssertionMissing { .. } => code::ASSERTION_MISSING,
        c2pa::Error::HashMismatch(_) => code::ASSERTION_HASHEDURI_MISMATCH,
        _ => code::GENERAL_ERROR,
    }
}

fn told(reader: &Reader) -> Credentials {
    let Some(manifest) = reader.active_manifest() else {
        return Credentials::unreadable(code::CLAIM_MISSING);
    };
    let signature = manifest.signature_info();
    let text = |part: Option<&String>| part.map(|t| short(t)).filter(|t| !t.is_empty());
    let signer = signature.and_then(|s| text(s.common_name.as_ref()).or_else(|| text(s.issuer.as_ref())));
    let failures = failures(reader);
    let generator = manifest.claim_generator_info.as_ref().and_then(|all| all.first()).map(|g| match &g.version {
        Some(version) => short(&format!("{} {version}", g.name)),
        None => short(&g.name),
    });
    Credentials {
        state: state(reader, &failures),
        signer,
        signed: proven_time(reader).map(short),
        generator: generator.or_else(|| manifest.claim_generator().map(short)),
        not_hashed: not_hashed(reader),
        edits: edits(manifest),
        failures,
    }
}

/// Codes that say that a certificate is out of its time, and nothing else.
const OUT_OF_TIME: [&str; 2] = [code::SIGNING_CREDENTIAL_EXPIRED, code::CLAIM_SIGNATURE_OUTSIDE_VALIDITY];

fn state(reader: &Reader, failures: &[Failure]) -> State {
    match reader.validation_state() {
        ValidationState::Trusted if vouched_for(reader) => return State::Trusted,
        ValidationState::Trusted => return State::UnknownSigner,
        ValidationState::Valid => return State::UnknownSigner,
        ValidationState::Invalid => {}
    }
    let signed = reader
        .validation_results()
        .and_then(|r| r.active_manifest())
        .is_some_and(|m| m.success().iter().any(|s| s.code() == code::CLAIM_SIGNATURE_VALIDATED));
    let only = |codes: &[&str]| {
        let mut all = failures.iter().map(|f| f.code.as_str()).filter(|c| *c != code::SIGNING_CREDENTIAL_UNTRUSTED);
        signed && all.all(|c| codes.contains(&c))
    };
    let any = |codes: &[&str]| failures.iter().any(|f| codes.contains(&f.code.as_str()));
    let revoked = [code::SIGNING_CREDENTIAL_REVOKED];
    match () {
        () if only(&OUT_OF_TIME) && any(&OUT_OF_TIME) => State::Expired,
        () if only(&[OUT_OF_TIME[0], OUT_OF_TIME[1], revoked[0]]) && any(&revoked) => State::Revoked,
        () => State::Broken,
    }
}

/// When the claim was signed, by a timestamp that holds and is trusted.
fn proven_time(reader: &Reader) -> Option<&str> {
    let results = reader.validation_results()?.active_manifest()?;
    results.success().iter().find(|s| s.code() == code::TIMESTAMP_TRUSTED)?;
    reader.active_manifest()?.signature_info()?.time.as_deref()
}

/// Whether only authorities stand between the signer and the anchor, when it
/// was signed: by a timestamp that holds, else when it was validated.
fn vouched_for(reader: &Reader) -> bool {
    let signature = reader.active_manifest().and_then(|m| m.signature_info());
    let time = proven_time(reader).or_else(|| reader.validation_results().and_then(|r| r.validation_time()));
    let time = time.and_then(|t| OffsetDateTime::parse(t, &Rfc3339).ok());
    let since_1970 = time.and_then(|t| u64::try_from(t.unix_timestamp()).ok()).map(Duration::from_secs);
    signature.zip(since_1970).is_some_and(|(s, at)| is_of_authorities(s.cert_chain(), at))
}

/// What failed, in the manifest itself and in what it was made from.
fn failures(reader: &Reader) -> Vec<Failure> {
    let Some(results) = reader.validation_results() else { return Vec::new() };
    let own = results.active_manifest().into_iter().flat_map(|m| m.failure());
    let parts = results.ingredient_deltas().into_iter().flatten().flat_map(|d| d.validation_deltas().failure());
    let mut found: Vec<Failure> = Vec::new();
    for status in own.chain(parts).take(MOST_LISTED) {
        let about = status.url().and_then(|url| url.rsplit(['/', '=']).next()).map(short).filter(|a| !a.is_empty());
        let failure = Failure { code: short(status.code()), about };
        if !found.contains(&failure) {
            found.push(failure);
        }
    }
    found
}

/// The stretches of the file that the active manifest's hash leaves out.
fn not_hashed(reader: &Reader) -> Vec<[u64; 2]> {
    let Ok(report) = serde_json::from_str::<serde_json::Value>(&reader.detailed_json()) else { return Vec::new() };
    let store = reader.active_label().and_then(|label| report.get("manifests")?.get(label)?.get("assertion_store"));
    let exclusions = store.and_then(|s| s.get("c2pa.hash.data")?.get("exclusions")?.as_array());
    let range = |e: &serde_json::Value| Some([e.get("start")?.as_u64()?, e.get("length")?.as_u64()?]);
    exclusions.into_iter().flatten().take(MOST_LISTED).filter_map(range).collect()
}

/// Sources that are a camera's own work.
const BY_A_CAMERA: [DigitalSourceType; 2] =
    [DigitalSourceType::DigitalCapture, DigitalSourceType::ComputationalCapture];

/// What the manifest lists beside that a camera took the picture.
fn edits(manifest: &Manifest) -> Vec<Edit> {
    let mut found = Vec::new();
    for assertion in manifest.assertions().iter().filter(|a| a.label().starts_with("c2pa.actions")) {
        match assertion.to_assertion::<Actions>() {
            Ok(actions) => found.extend(actions.actions().iter().filter_map(edit)),
            // What cannot be read is not taken for nothing.
            Err(_) => {
                found.push(Edit { action: short(assertion.label()), when: None, program: None, source_type: None })
            }
        }
    }
    // A picture made from another one was opened, whether its actions say so or not.
    if found.is_empty() && !manifest.ingredients().is_empty() {
        found.push(Edit { action: "c2pa.opened".to_owned(), when: None, program: None, source_type: None });
    }
    found.dedup();
    found.truncate(MOST_LISTED);
    found
}

fn edit(action: &Action) -> Option<Edit> {
    let from = action.source_type();
    let by_a_camera = from.is_none_or(|t| BY_A_CAMERA.contains(t));
    if action.action() == "c2pa.created" && by_a_camera {
        return None;
    }
    let program = match action.software_agent() {
        Some(SoftwareAgent::String(name)) => Some(short(name)),
        Some(SoftwareAgent::ClaimGeneratorInfo(info)) => Some(short(&info.name)),
        None => None,
    };
    let source_type = from.filter(|_| !by_a_camera).and_then(|t| serde_json::to_value(t).ok());
    let source_type = source_type.and_then(|v| Some(short(v.as_str()?.rsplit('/').next()?)));
    Some(Edit { action: short(action.action()), when: action.when().map(short), program, source_type })
}

/// A stranger's text for a record: one line, not too long.
fn short(text: &str) -> String {
    text.chars().filter(|c| !c.is_control()).take(MOST_CHARACTERS).collect::<String>().trim().to_owned()
}
