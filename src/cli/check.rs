//! `baywitness check`.

use std::path::{Path, PathBuf};

use time::OffsetDateTime;

use super::UNREADABLE;
use super::log_check::LogTrust;
use super::output::{JsonTarget, complain, say, write_json};
use super::threads::pool;
use super::unpacked::{self, Unpacking};
use crate::custody::{AGREE_U, RemeasureError, remeasure};
use crate::evidence::{Authorities, INDEX, Inspection, Item, Outcome, Signers, inspect, is_evidence};

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Evidence folder, also as one file
    #[arg(value_name = "DIR")]
    folder: PathBuf,
    /// Whose signatures count: a file of allowed signers, as ssh-keygen has it
    #[arg(long, value_name = "FILE")]
    signers: Option<PathBuf>,
    /// Whose timestamps count: root certificates of authorities (PEM)
    #[arg(long, value_name = "FILE")]
    timestamp_ca: Option<PathBuf>,
    /// Whose logs of attempts count: a file of verifier keys of logs and witnesses, one a line
    #[arg(long, value_name = "FILE")]
    log_keys: Option<PathBuf>,
    /// The log of attempts as it is now: it must still begin with what the folder's proof was signed for
    #[arg(long, value_name = "DIR")]
    log: Option<PathBuf>,
    /// Write the checks as JSON to a file, or to standard output with `-`
    #[arg(long, value_name = "FILE|-")]
    json: Option<JsonTarget>,
    /// Number of threads (default: one for each core)
    #[arg(long, value_name = "N")]
    threads: Option<usize>,
}

const ALTERED: u8 = 1;
const UNSIGNED: u8 = 3;

/// What is written as JSON (`check/1`).
#[derive(serde::Serialize)]
struct Record<'a> {
    format: &'static str,
    folder: String,
    outcome: &'static str,
    signer: Option<&'a str>,
    checks: Vec<RecordItem<'a>>,
}

#[derive(serde::Serialize)]
struct RecordItem<'a> {
    what: &'a str,
    outcome: &'static str,
    found: &'a str,
}

/// Checks an evidence folder and measures its photos again.
pub(super) fn run(arguments: &Arguments) -> u8 {
    // The local time zone is told only to a program that has no other threads yet.
    let trusted = Trusted::read(arguments);
    let checked = trusted.and_then(|trusted| pool(arguments.threads)?.install(|| open_and_check(arguments, &trusted)));
    checked.unwrap_or_else(|message| {
        complain(&message);
        UNREADABLE
    })
}

/// Whom the reader trusts.
struct Trusted {
    signers: Option<Signers>,
    authorities: Option<Authorities>,
    logs: LogTrust,
}

impl Trusted {
    fn read(arguments: &Arguments) -> Result<Trusted, String> {
        let signers = arguments.signers.as_deref().map(read_signers).transpose()?;
        let authorities = arguments.timestamp_ca.as_deref().map(|path| {
            let pem = std::fs::read(path)
                .map_err(|e| format!("cannot read the timestamp authorities {}: {e}", path.display()))?;
            Authorities::read(&pem, &path.display().to_string()).map_err(|e| e.to_string())
        });
        let logs = LogTrust::read(arguments.log_keys.as_deref(), arguments.log.as_deref())?;
        Ok(Trusted { signers, authorities: authorities.transpose()?, logs })
    }
}

fn open_and_check(arguments: &Arguments, trusted: &Trusted) -> Result<u8, String> {
    let folder = &arguments.folder;
    match unpacked::open(folder) {
        Ok(opened) if opened.was_one_file => return check(&opened.folder, arguments, trusted),
        Ok(_) => {}
        Err(Unpacking::Altered(words)) => {
            complain(&words);
            return Ok(ALTERED);
        }
        Err(Unpacking::Failed(words)) => return Err(words),
    }
    if folder.join(INDEX).is_file() && !is_evidence(folder) {
        return Err(format!(
            "{0} holds the evidence folders of one repair order: check each of them (`baywitness check {0}/NAME`), or all \
             with `baywitness audit`; its own {INDEX} is read by `sha512sum -c`",
            folder.display()
        ));
    }
    if folder.is_dir() && !is_evidence(folder) {
        return Err(format!("{} is no evidence folder: name one that `baywitness seal` made", folder.display()));
    }
    check(folder, arguments, trusted)
}

fn check(folder: &Path, arguments: &Arguments, trusted: &Trusted) -> Result<u8, String> {
    let mut inspection = inspect(folder).map_err(|e| format!("cannot read the folder {}: {e}", folder.display()))?;
    let signer = who_signed(&mut inspection, trusted.signers.as_ref());
    who_stamped(&mut inspection, trusted.authorities.as_ref(), OffsetDateTime::now_utc());
    inspection.items.extend(trusted.logs.check(&folder.join("data")));
    let copy = inspection.items.iter().any(|item| item.what == "sealed files");
    if inspection.intact() && !copy {
        measured_again(folder, &mut inspection.items);
    } else {
        let found = if copy {
            "not measured again: the photos are masked, the sealed folder holds them whole".to_owned()
        } else {
            "not measured again: the bytes are not those that were sealed".to_owned()
        };
        inspection.items.push(Item { what: MEASURED.to_owned(), outcome: Outcome::NotCheckable, found });
    }
    let code = match (inspection.intact(), &signer) {
        (false, _) => ALTERED,
        (true, Some(_)) => 0,
        (true, None) => UNSIGNED,
    };
    let outcome = match code {
        ALTERED => "altered",
        UNSIGNED if inspection.signed => "intact, signer unknown",
        UNSIGNED => "intact, unsigned",
        _ => "intact and signed",
    };
    say(&words(&inspection.items, outcome), arguments.json.as_ref());
    if let Some(target) = &arguments.json {
        let checks =
            inspection.items.iter().map(|i| RecordItem { what: &i.what, outcome: name(i.outcome), found: &i.found });
        let record = Record {
            format: "check/1",
            folder: arguments.folder.display().to_string(),
            outcome,
            signer: signer.as_deref(),
            checks: checks.collect(),
        };
        write_json(target, &record)?;
    }
    Ok(code)
}

const MEASURED: &str = "measured again";

pub(super) fn read_signers(path: &Path) -> Result<Signers, String> {
    let text = std::fs::read_to_string(path).map_err(|e| format!("cannot read the signers {}: {e}", path.display()))?;
    // Times without Z are local ones; where the system does not tell, UTC.
    let now = OffsetDateTime::now_local().unwrap_or_else(|_| OffsetDateTime::now_utc());
    Signers::read(&text, &path.display().to_string(), now).map_err(|e| e.to_string())
}

/// Who signed, of those whose signatures count.
fn who_signed(inspection: &mut Inspection, signers: Option<&Signers>) -> Option<String> {
    let signature = inspection.signature.as_ref()?;
    let (outcome, found, who) = match signers.map(|s| s.who(&signature.key())) {
        None => (Outcome::NotCheckable, "no list of signers was given (--signers)".to_owned(), None),
        Some(Ok(who)) => (Outcome::Passed, format!("{who}, who is listed"), Some(who.to_owned())),
        Some(Err(why)) => (Outcome::NotCheckable, why, None),
    };
    inspection.items.push(Item { what: "signer".to_owned(), outcome, found });
    who
}

/// Whether the timestamps are by authorities that count, and each was stamped
/// again before its authority's certificate ended.
fn who_stamped(inspection: &mut Inspection, authorities: Option<&Authorities>, now: OffsetDateTime) {
    let mut judged = Vec::new();
    for (n, token) in inspection.tokens.iter().enumerate() {
        let covered = inspection.tokens.get(n + 1).map_or(now, |next| next.time);
        judged.push(match authorities.map(|a| a.vouch_for(token)) {
            None => (Outcome::NotCheckable, "no authority's certificate was given (--timestamp-ca)".to_owned()),
            Some(Err(why)) => (Outcome::Failed, why),
            Some(Ok(())) if covered > token.ends() => (
                Outcome::NotCheckable,
                format!("its certificate ended on {}, and no newer timestamp covers it", token.ends().date()),
            ),
            Some(Ok(())) => {
                (Outcome::Passed, format!("{}; its certificate ends on {}", token.authority(), token.ends().date()))
            }
        });
    }
    let items = judged.into_iter().map(|(outcome, found)| Item { what: "authority".to_owned(), outcome, found });
    inspection.items.extend(items);
}

fn measured_again(folder: &Path, items: &mut Vec<Item>) {
    let (outcome, found) = match remeasure(&folder.join("data")) {
        Ok(again) if again.differences.is_empty() => (
            Outcome::Passed,
            format!(
                "{}; every value within {AGREE_U} of its standard uncertainty of the recorded one",
                again.now.verdict.words()
            ),
        ),
        Ok(again) => {
            let versions = (&again.recorded.tool.version, &again.now.tool.version);
            let version = if versions.0 == versions.1 {
                String::new()
            } else {
                format!(" (recorded by version {}, measured by {})", versions.0, versions.1)
            };
            (Outcome::Failed, format!("{}{version}", again.differences.join("; ")))
        }
        Err(e @ (RemeasureError::NoJob | RemeasureError::Result(_) | RemeasureError::Job(_))) => {
            (Outcome::Failed, e.to_string())
        }
    };
    items.push(Item { what: MEASURED.to_owned(), outcome, found });
}

fn words(items: &[Item], outcome: &str) -> String {
    let mut text = String::new();
    for item in items {
        text.push_str(&format!("{:<14}  {:<15}  {}\n", name(item.outcome), item.what, item.found));
    }
    text.push_str(&format!("\n{outcome}\n"));
    text
}

fn name(outcome: Outcome) -> &'static str {
    match outcome {
        Outcome::Passed => "passed",
        Outcome::Failed => "failed",
        Outcome::NotCheckable => "not checkable",
    }
}
