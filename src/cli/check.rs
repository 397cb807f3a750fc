//! `baywitness check`.

use std::path::{Path, PathBuf};

use time::OffsetDateTime;

use super::anchors::AnchorsOption;
use super::check_copy::{self, MEASURED, measured, not_measured};
use super::check_pdf;
use super::codes::UNREADABLE;
use super::log_check::LogTrust;
use super::output::{JsonTarget, complain, language, tell, write_json};
use super::threads::pool;
use super::unpacked::{self, Unpacking};
use super::who_stamped;
use crate::credentials::{BUILT_IN, Source, State, summary};
use crate::custody::{AGREE_U, Remeasured, remeasure};
use crate::evidence::{
    Authorities, Certificates, INDEX, Inspection, Item, Outcome, Signers, inspect, inspect_index, is_evidence, is_pdf,
};
use crate::words::{Figure, Language, phrase, say};

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(value_name = "DIR")]
    folder: PathBuf,
    #[arg(long, value_name = "FILE")]
    signers: Option<PathBuf>,
    #[arg(long, value_name = "FILE")]
    certificates: Option<PathBuf>,
    #[arg(long, value_name = "FILE")]
    timestamp_ca: Option<PathBuf>,
    #[command(flatten)]
    anchors: AnchorsOption,
    #[arg(long, value_name = "FILE")]
    log_keys: Option<PathBuf>,
    #[arg(long, value_name = "DIR")]
    log: Option<PathBuf>,
    #[cfg(feature = "sensor-pattern")]
    #[arg(long, value_name = "DIR")]
    cameras: Option<PathBuf>,
    #[arg(long, value_name = "FILE|-")]
    json: Option<JsonTarget>,
    #[arg(long, value_name = "N")]
    threads: Option<usize>,
}

const ALTERED: u8 = 1;
/// Nobody who counts signed it, or its verdict is not confirmed.
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
    found: String,
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
    certificates: Option<Certificates>,
    logs: LogTrust,
    credentials: Source,
    #[cfg(feature = "sensor-pattern")]
    cameras: Option<super::origin::Cameras>,
}

impl Trusted {
    fn read(arguments: &Arguments) -> Result<Trusted, String> {
        let signers = arguments.signers.as_deref().map(read_signers).transpose()?;
        let authorities = arguments.timestamp_ca.as_deref().map(|path| {
            let pem = std::fs::read(path).map_err(|e| cannot_read(path, &e))?;
            Authorities::read(&pem, &path.display().to_string()).map_err(|e| e.phrase().say(language()))
        });
        let certificates = arguments.certificates.as_deref().map(read_certificates).transpose()?;
        let logs = LogTrust::read(arguments.log_keys.as_deref(), arguments.log.as_deref())?;
        Ok(Trusted {
            signers,
            authorities: authorities.transpose()?,
            certificates,
            logs,
            credentials: arguments.anchors.source()?,
            #[cfg(feature = "sensor-pattern")]
            cameras: arguments.cameras.as_deref().map(super::origin::Cameras::read).transpose()?,
        })
    }
}

impl Trusted {
    fn of_reports(&self) -> check_pdf::Trust<'_> {
        check_pdf::Trust { certificates: self.certificates.as_ref(), authorities: self.authorities.as_ref() }
    }
}

fn open_and_check(arguments: &Arguments, trusted: &Trusted) -> Result<u8, String> {
    let folder = &arguments.folder;
    if folder.is_file() && is_pdf(folder) {
        let (items, signer) = check_pdf::look(folder, trusted.of_reports())?;
        let intact = items.iter().all(|item| item.outcome != Outcome::Failed);
        let came = Came { intact, signed: true, unconfirmed: false, copy: None };
        return conclude(&items, came, signer.as_deref(), arguments);
    }
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
        let folder = folder.display().to_string();
        return Err(say!(language(), "evidence-several", folder = folder, index = INDEX));
    }
    if folder.is_dir() && !is_evidence(folder) {
        return Err(say!(language(), "evidence-no-folder", folder = folder.display().to_string()));
    }
    check(folder, arguments, trusted)
}

fn check(folder: &Path, arguments: &Arguments, trusted: &Trusted) -> Result<u8, String> {
    let mut inspection = inspect(folder).map_err(|e| cannot_read(folder, &e))?;
    let signer = who_signed(&mut inspection, trusted.signers.as_ref());
    let stamped = who_stamped::of_folder(folder, &inspection, trusted.authorities.as_ref());
    inspection.items.extend(stamped);
    inspection.items.extend(trusted.logs.check(&folder.join("data")));
    inspection.items.extend(check_pdf::of_sealed(&folder.join("data"), trusted.of_reports()));
    if !inspection.intact() {
        inspection.items.push(measured(Outcome::NotCheckable, phrase!("evidence-not-measured")));
    } else if inspection.is_copy() {
        inspection.items.extend(check_copy::look(&folder.join("data")));
    } else {
        measured_again(folder, &trusted.credentials, &mut inspection.items);
    }
    inspection.items.extend(of_series(folder));
    let mut came = Came { intact: inspection.intact(), signed: inspection.signed, unconfirmed: false, copy: None };
    let again = inspection.items.iter().any(|item| item.what == MEASURED && item.outcome == Outcome::Passed);
    if inspection.is_copy() {
        came.copy = Some(again);
    } else {
        came.unconfirmed = !again;
    }
    #[cfg(feature = "sensor-pattern")]
    if let Some(cameras) = &trusted.cameras {
        who_photographed(folder, cameras, &mut inspection.items);
    }
    conclude(&inspection.items, came, signer.as_deref(), arguments)
}

/// What a check came to, but for who signed.
struct Came {
    intact: bool,
    signed: bool,
    /// Whether its verdict is not what measuring again says to this reader: what the sheet requires was not validated.
    unconfirmed: bool,
    /// Of a masked copy, whether its photos were measured again.
    copy: Option<bool>,
}

/// Says what was found; whether it is intact, and signed by anybody, gives the exit code with who signed.
fn conclude(items: &[Item], came: Came, signer: Option<&str>, arguments: &Arguments) -> Result<u8, String> {
    let code = match (came.intact, signer) {
        (false, _) => ALTERED,
        (true, Some(_)) if came.unconfirmed => UNSIGNED,
        (true, Some(_)) => 0,
        (true, None) => UNSIGNED,
    };
    let outcome = match code {
        ALTERED => "altered",
        UNSIGNED if signer.is_some() => "intact and signed, verdict not confirmed",
        UNSIGNED if came.signed => "intact, signer unknown",
        UNSIGNED => "intact, unsigned",
        _ => "intact and signed",
    };
    tell(&words(items, outcome, came.copy, language()), arguments.json.as_ref());
    if let Some(target) = &arguments.json {
        let checks = items.iter().map(|i| RecordItem {
            what: &i.what,
            outcome: name(i.outcome),
            found: i.found.say(Language::English),
        });
        let record = Record {
            format: "check/1",
            folder: arguments.folder.display().to_string(),
            outcome,
            signer,
            checks: checks.collect(),
        };
        write_json(target, &record)?;
    }
    Ok(code)
}

/// Where the folder lies beside the index of its repair order: whether that holds, and all of its folders are there.
fn of_series(folder: &Path) -> Vec<Item> {
    let beside = folder.canonicalize().ok().and_then(|whole| Some(whole.parent()?.to_path_buf()));
    let Some(beside) = beside.filter(|beside| beside.join(INDEX).is_file()) else { return Vec::new() };
    let mut items = inspect_index(&beside).items;
    items.extend(check_pdf::of_order(&beside));
    items
}

pub(super) fn read_signers(path: &Path) -> Result<Signers, String> {
    let text = std::fs::read_to_string(path).map_err(|e| cannot_read(path, &e))?;
    // Times without Z are local ones; where the system does not tell, UTC.
    let now = OffsetDateTime::now_local().unwrap_or_else(|_| OffsetDateTime::now_utc());
    Signers::read(&text, &path.display().to_string(), now).map_err(|e| e.phrase().say(language()))
}

pub(super) fn read_certificates(path: &Path) -> Result<Certificates, String> {
    Certificates::open(path).map_err(|e| e.phrase().say(language()))
}

/// Who signed, of those whose signatures count.
fn who_signed(inspection: &mut Inspection, signers: Option<&Signers>) -> Option<String> {
    let signature = inspection.signature.as_ref()?;
    let (outcome, found, who) = match signers.map(|s| s.who(&signature.key())) {
        None => (Outcome::NotCheckable, phrase!("evidence-no-signers"), None),
        Some(Ok(who)) => (Outcome::Passed, phrase!("evidence-signer", who = who), Some(who.to_owned())),
        Some(Err(why)) => (Outcome::NotCheckable, phrase!("evidence-signer-unknown", why = why), None),
    };
    inspection.items.push(Item { what: "signer".to_owned(), outcome, found });
    who
}

fn measured_again(folder: &Path, credentials: &Source, items: &mut Vec<Item>) {
    let again = remeasure(&folder.join("data"), credentials);
    items.extend(again.as_ref().ok().and_then(signed_photos));
    if let Some(again) = again.as_ref().ok().filter(|again| again.differences.is_empty()) {
        items.push(check_pdf::of_result(&folder.join("data"), &again.recorded));
    }
    items.push(match again {
        Ok(again) => compared(&again),
        Err(why) => not_measured(&why),
    });
}

fn compared(again: &Remeasured) -> Item {
    let (recorded, now) = (again.recorded.tool.words(), again.now.tool.words());
    if again.differences.is_empty() {
        let (was, is) = (again.recorded.verdict, again.now.verdict);
        if was != is {
            let (was, is, share) = (was.phrase(), is.phrase(), Figure::plain(AGREE_U));
            let found = phrase!("evidence-measured-unconfirmed", recorded = was, verdict = is, share = share);
            return measured(Outcome::NotCheckable, found);
        }
        let found = phrase!(
            "evidence-measured",
            verdict = again.now.verdict.phrase(),
            share = Figure::plain(AGREE_U),
            sentences = if recorded == now { "compared" } else { "not" },
            recorded = recorded,
        );
        return measured(Outcome::Passed, found);
    }
    let differences = again.differing();
    let found = if recorded == now {
        phrase!("evidence-measured-otherwise", differences = differences)
    } else {
        phrase!("evidence-measured-by-other", differences = differences, recorded = recorded, now = now)
    };
    measured(Outcome::Failed, found)
}

/// What became of the photos' content credentials; nothing where nobody speaks of any.
fn signed_photos(again: &Remeasured) -> Option<Item> {
    let recorded = summary(again.recorded.credentials());
    let (outcome, found) = if BUILT_IN {
        let found = again.credentials.iter().map(|(_, c)| c.as_ref());
        let trusted = found.clone().all(|c| c.is_some_and(|c| c.state == State::Trusted));
        let broken = found.clone().flatten().any(|c| !c.state.holds());
        let words = summary(found).or_else(|| recorded.map(|_| phrase!("evidence-credentials-gone")))?;
        match () {
            () if broken => (Outcome::Failed, words),
            () if trusted => (Outcome::Passed, words),
            () => (Outcome::NotCheckable, words),
        }
    } else {
        (Outcome::NotCheckable, phrase!("evidence-credentials-as-recorded", counts = recorded?))
    };
    Some(Item { what: "credentials".to_owned(), outcome, found })
}

/// Which camera took each photo, by its sensor's pattern.
#[cfg(feature = "sensor-pattern")]
fn who_photographed(folder: &Path, cameras: &super::origin::Cameras, items: &mut Vec<Item>) {
    use super::origin::{ANOTHER, THIS};
    let payload = folder.join("data");
    let record = std::fs::read(payload.join("result.json")).map_err(|e| e.to_string());
    let record = record.and_then(|bytes| crate::record::JobRecord::from_json(&bytes).map_err(|e| e.to_string()));
    let job = crate::custody::find_sealed_job(&payload).map_or_else(|| payload.clone(), |job| payload.join(job));
    let item = |outcome, found| Item { what: "sensor pattern".to_owned(), outcome, found };
    match record.and_then(|record| cameras.of_job(&job, &record)) {
        Ok(told) => items.extend(told.iter().map(|photo| {
            let outcome = match photo.says() {
                THIS => Outcome::Passed,
                ANOTHER => Outcome::Failed,
                _ => Outcome::NotCheckable,
            };
            item(outcome, photo.phrase().clone())
        })),
        Err(why) => items.push(item(Outcome::NotCheckable, phrase!("pattern-not-looked", why = why))),
    }
}

fn words(items: &[Item], outcome: &str, copy: Option<bool>, language: Language) -> String {
    let rows: Vec<[String; 3]> = items
        .iter()
        .map(|item| {
            [
                say!(language, "evidence-outcome", outcome = name(item.outcome)),
                say!(language, "evidence-item", item = item.what.replace(' ', "-")),
                item.found.say(language),
            ]
        })
        .collect();
    let width = |column: usize, least: usize| {
        rows.iter().map(|r| r[column].chars().count()).chain([least]).max().unwrap_or(least)
    };
    let (first, second) = (width(0, 14), width(1, 15));
    let mut text = String::new();
    for [outcome, item, found] in &rows {
        text.push_str(&format!("{outcome:<first$}  {item:<second$}  {found}\n"));
    }
    let state = match outcome {
        "altered" => "altered",
        "intact, signer unknown" => "unknown",
        "intact, unsigned" => "unsigned",
        "intact and signed, verdict not confirmed" => "unconfirmed",
        _ => "signed",
    };
    let whole = say!(language, "evidence-whole", state = state);
    // A copy says less than the folder that it was made from, whatever its exit code.
    let whole = match copy.filter(|_| state != "altered") {
        Some(again) => {
            say!(language, "evidence-whole-copy", state = whole, measured = if again { "yes" } else { "no" })
        }
        None => whole,
    };
    text.push_str(&format!("\n{whole}\n"));
    text
}

fn cannot_read(path: &Path, why: &std::io::Error) -> String {
    say!(language(), "evidence-cannot-read", path = path.display().to_string(), why = why.to_string())
}

fn name(outcome: Outcome) -> &'static str {
    match outcome {
        Outcome::Passed => "passed",
        Outcome::Failed => "failed",
        Outcome::NotCheckable => "not checkable",
    }
}
