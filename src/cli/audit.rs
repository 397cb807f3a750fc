//! `baywitness audit`.

use std::io::{BufRead, IsTerminal, Write};
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use rayon::prelude::*;

use super::anchors::AnchorsOption;
use super::audit_words::{change_words, evidence_words, kept_report, kept_words, report_words};
use super::check::{read_certificates, read_signers};
use super::codes::UNREADABLE;
use super::log_check;
use super::output::{cannot_read, complain, language, no_stdout, say};
use super::threads::pool;
use super::verify::worse;
use crate::credentials::counts as counts_of;
use crate::custody::audit::{self, Audit, Change, Found, Judged, Ledger, Outcome, Progress, Sort, Tally, Trust};
use crate::evidence::{Certificates, Signers, is_evidence, is_one_file};
use crate::folder::Models;
use crate::input::printable;
use crate::job::Options;
use crate::record::{JobRecord, Verdict, told};
use crate::report::{ArchiveLog, ArchiveRow, archive_end, archive_row, archive_start, table_cell};
use crate::words::{Figure, Language, say};

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(value_name = "PATH", required_unless_present = "stdin", conflicts_with = "stdin")]
    paths: Vec<PathBuf>,
    #[arg(long, value_name = "DIR", required_unless_present = "stdin", conflicts_with = "stdin")]
    out: Option<PathBuf>,
    #[arg(long)]
    stdin: bool,
    #[arg(long, conflicts_with = "stdin")]
    recompute: bool,
    #[arg(long, value_name = "FILE")]
    signers: Option<PathBuf>,
    #[arg(long, value_name = "FILE")]
    certificates: Option<PathBuf>,
    #[arg(long, value_name = "DIR", conflicts_with = "stdin")]
    log: Option<PathBuf>,
    #[arg(long, value_name = "FILE", requires = "log")]
    log_keys: Option<PathBuf>,
    #[arg(long, value_name = "FILE", requires = "log")]
    log_earlier: Vec<PathBuf>,
    #[arg(long, value_name = "FILE", requires = "log")]
    log_orders: Option<PathBuf>,
    #[command(flatten)]
    anchors: AnchorsOption,
    #[cfg(feature = "sensor-pattern")]
    #[arg(long, value_name = "DIR", conflicts_with = "stdin")]
    cameras: Option<PathBuf>,
    #[arg(long, value_name = "DIR")]
    models: Option<PathBuf>,
    #[arg(long, value_name = "N")]
    threads: Option<usize>,
}

/// Judges an archive.
pub(super) fn run(arguments: &Arguments) -> u8 {
    prepare(arguments)
        .and_then(|(own, pool)| {
            let trust =
                Trust { options: &own.options, signers: own.signers.as_ref(), certificates: own.certificates.as_ref() };
            pool.install(|| if arguments.stdin { from_stdin(trust) } else { archive(arguments, trust) })
        })
        .unwrap_or_else(|message| {
            complain(&message);
            UNREADABLE
        })
}

/// Whom the auditor trusts, as it was read.
struct Trusted {
    options: Options,
    signers: Option<Signers>,
    certificates: Option<Certificates>,
}

fn prepare(arguments: &Arguments) -> Result<(Trusted, rayon::ThreadPool), String> {
    let models = Models::standard(arguments.models.as_deref()).map_err(|e| e.say(language()))?;
    let signers = arguments.signers.as_deref().map(read_signers).transpose()?;
    let certificates = arguments.certificates.as_deref().map(read_certificates).transpose()?;
    let options = Options { models, credentials: arguments.anchors.source()? };
    Ok((Trusted { options, signers, certificates }, pool(arguments.threads)?))
}

fn archive(arguments: &Arguments, trust: Trust) -> Result<u8, String> {
    let mut code = 0;
    let found = audit::find(&arguments.paths, &mut |path, why| {
        complain(&cannot_read(path, &why.phrase().say(language())));
        code = UNREADABLE;
    });
    if found.is_empty() {
        return Err(say!(language(), "cli-audit-nothing"));
    }
    let out = arguments.out.as_deref().unwrap_or(Path::new("."));
    let start = Instant::now();
    let last = std::sync::Mutex::new(start);
    let progress = |p: Progress| show(p, start, &last);
    let (ledger, audit) = audit::audit((&arguments.paths, &found), trust, out, arguments.recompute, &progress)
        .map_err(|e| e.phrase().say(language()))?;
    if std::io::stderr().is_terminal() {
        let _ = write!(std::io::stderr(), "\r\x1b[K");
    }
    let held = hold(arguments, &ledger, &audit, out);
    let told = held.as_ref().ok().and_then(Option::as_ref).map(|held| held.told(language()));
    write_reports(&ledger, &audit, told.as_ref())
        .map_err(|e| say!(language(), "cli-audit-no-report", why = e.to_string()))?;
    code = audit.tally.exits().fold(code, worse);
    say(&summary(&audit, out, language()), None);
    #[cfg(feature = "sensor-pattern")]
    if let Some(cameras) = &arguments.cameras {
        say(&super::origin_audit::audit(cameras, &ledger, &audit, out)?, None);
    }
    if let Some(held) = held? {
        say(&held.words(out, language()), None);
        code = worse(code, held.exit());
    }
    Ok(code)
}

/// Holds the archive against the log that was named, if one was.
fn hold(arguments: &Arguments, ledger: &Ledger, audit: &Audit, out: &Path) -> Result<Option<log_check::Held>, String> {
    let Some(folder) = &arguments.log else { return Ok(None) };
    let asked = log_check::Asked {
        folder,
        keys: arguments.log_keys.as_deref(),
        earlier: &arguments.log_earlier,
        orders: arguments.log_orders.as_deref(),
    };
    log_check::audit(ledger, audit, out, &asked).map(Some)
}

/// Rate and time left, on a terminal, a few times a second.
fn show(p: Progress, start: Instant, last: &std::sync::Mutex<Instant>) {
    if !std::io::stderr().is_terminal() {
        return;
    }
    let Ok(mut last) = last.try_lock() else { return };
    if last.elapsed() < Duration::from_millis(200) && p.done < p.total {
        return;
    }
    *last = Instant::now();
    let judged = (p.done - p.kept) as f64;
    let rate = judged / start.elapsed().as_secs_f64().max(1e-3);
    let left = if rate > 0.0 { (p.total - p.done) as f64 / rate } else { 0.0 };
    let words = say!(
        language(),
        "evidence-audit-progress",
        done = p.done,
        total = p.total,
        kept = p.kept,
        rate = Figure::fixed(rate, 1),
        left = Figure::fixed(left, 0),
    );
    let _ = write!(std::io::stderr(), "\r\x1b[K{words}");
}

const LADDER: [Option<Verdict>; 5] =
    [Some(Verdict::Within), Some(Verdict::Outside), Some(Verdict::NotProven), Some(Verdict::Retake), None];

fn counts(audit: &Audit) -> [(Option<Verdict>, usize); 5] {
    LADDER.map(|v| (v, audit.tally.of(v)))
}

fn summary(audit: &Audit, out: &Path, language: Language) -> String {
    let mut text = say!(language, "evidence-audit-jobs", count = audit.lines.len(), kept = audit.kept);
    text.push('\n');
    for (verdict, count) in counts(audit) {
        let words = match verdict {
            Some(verdict) => verdict.phrase().say(language),
            None => say!(language, "evidence-audit-unreadable"),
        };
        text.push_str(&format!("{count:8}  {words}\n"));
    }
    let Tally { across, changed, other_version: other, .. } = audit.tally;
    if across > 0 {
        text.push_str(&format!("{across:8}  {}\n", say!(language, "evidence-audit-across")));
    }
    if changed > 0 {
        text.push_str(&format!("{changed:8}  {}\n", say!(language, "evidence-audit-changed")));
    }
    if other > 0 {
        text.push_str(&format!("{other:8}  {}\n", say!(language, "evidence-audit-other-version")));
    }
    let file = out.join("report.html").display().to_string();
    text.push_str(&format!("{}\n", say!(language, "evidence-audit-report", file = file)));
    text
}

/// The page and the tables, a few jobs at a time.
fn write_reports(
    ledger: &Ledger,
    audit: &Audit,
    log: Option<&log_check::Told>,
) -> Result<(), Box<dyn std::error::Error>> {
    let mut page = ledger.create("report.html")?;
    let shown = log.map(log_check::Told::shown);
    let shown = shown.as_ref().map(|findings| ArchiveLog { summary: log.map_or("", |l| &l.summary), findings });
    page.write_all(archive_start(&counts(audit), shown.as_ref(), language()).as_bytes())?;
    let mut table = csv::Writer::from_writer(ledger.create("audit.csv")?);
    table.write_record(COLUMNS)?;
    let mut failed: Option<Box<dyn std::error::Error>> = None;
    audit::each_outcome(ledger, audit.lines.iter()?, |_, line, outcome| {
        let of_line = log.map_or(Vec::new(), |log| log.of(&line.path));
        let row = with_row(line, &outcome, Some(language()), &of_line, |row| archive_row(row, language()));
        let written = page.write_all(row.as_bytes()).map_err(Into::into);
        let codes = of_line.iter().map(|[code, _]| *code).collect::<Vec<_>>().join(" ");
        let written = written
            .and_then(|()| table.write_record(fields(line, &outcome, codes).map(table_cell)).map_err(Into::into));
        if let Err(e) = written {
            failed.get_or_insert(e);
        }
    })?;
    failed.map_or(Ok(()), Err)?;
    // What the log knows and no folder shows: a row without a folder.
    for (code, message) in log.iter().flat_map(|log| log.without_folder()) {
        let mut row = [const { String::new() }; COLUMNS.len()];
        (row[17], row[18]) = (message.to_owned(), code.to_owned());
        table.write_record(row.map(table_cell))?;
    }
    page.write_all(archive_end().as_bytes())?;
    page.finish()?;
    table.into_inner().map_err(|e| e.into_error())?.finish()?;
    let mut changed = ledger.create("differences.json")?;
    differences(audit, &mut changed)?;
    changed.finish()?;
    #[cfg(feature = "parquet")]
    write_parquet(ledger, audit)?;
    Ok(())
}

/// Gives a line and its outcome to who makes a row of them: in a language for
/// people, as it is kept for tables. People see names of files that turn the writing with escapes.
fn with_row<T>(
    line: &Judged,
    outcome: &Outcome,
    language: Option<Language>,
    log: &[[&str; 2]],
    make: impl FnOnce(&ArchiveRow) -> T,
) -> T {
    let evidence = line.evidence.as_ref().map(|words| match (language, &line.signer) {
        (Some(language), who) => evidence_words(words, who.as_deref(), language),
        (None, Some(who)) => format!("{words} by {who}"),
        (None, None) => words.clone(),
    });
    let report = line.report.as_ref().map(|report| match language {
        Some(language) => report_words(report, language),
        None => kept_report(report),
    });
    let meant: Vec<String> = line
        .across
        .iter()
        .map(|lead| told(lead.message_phrase.as_ref(), &lead.message, language.unwrap_or_default()))
        .map(|meant| if language.is_some() { printable(meant) } else { meant })
        .collect();
    let seen = |text: &str| if language.is_some() { printable(text.to_owned()) } else { text.to_owned() };
    let (path, why) = (seen(&line.path), outcome.as_ref().err().map(|why| seen(why)).unwrap_or_default());
    let others: Vec<String> = line.across.iter().map(|lead| seen(&lead.other)).collect();
    let leads = line.across.iter().zip(&others).zip(&meant);
    let across: Vec<[&str; 3]> = leads.map(|((lead, other), meant)| [lead.code.as_str(), other, meant]).collect();
    let changed: Vec<String> =
        line.changed.iter().map(|c| language.map_or_else(|| kept_words(c), |l| change_words(c, l))).collect();
    make(&ArchiveRow {
        path: &path,
        exit: line.exit,
        digest: &line.digest,
        result: line.result.as_str().unwrap_or_default(),
        outcome: outcome.as_ref().map(|record| &**record).map_err(|_| why.as_str()),
        evidence: evidence.as_deref(),
        report: report.as_deref(),
        across: &across,
        changed: &changed,
        verdict_changed: line.changed.iter().any(|c| c.what == "verdict"),
        log,
    })
}

/// What the recomputation changed (`differences/1`): changed verdicts first.
fn differences(audit: &Audit, out: &mut impl Write) -> Result<(), Box<dyn std::error::Error>> {
    #[derive(serde::Serialize)]
    struct Job<'a> {
        path: &'a str,
        result: &'a serde_json::Value,
        changed: &'a [Change],
    }
    let mut jobs = 0;
    write!(out, "{{\n  \"format\": \"differences/1\",\n  \"jobs\": [")?;
    // Twice through the lines: an archive may have more than fit into memory.
    for of_verdict in [true, false].into_iter().filter(|_| audit.tally.changed > 0) {
        for line in audit.lines.iter()? {
            let Judged { path, result, changed, .. } = &line?;
            if changed.is_empty() || changed.iter().any(|c| c.what == "verdict") != of_verdict {
                continue;
            }
            let job = serde_json::to_string_pretty(&Job { path, result, changed })?.replace('\n', "\n    ");
            write!(out, "{}\n    {job}", if jobs > 0 { "," } else { "" })?;
            jobs += 1;
        }
    }
    writeln!(out, "{}]\n}}", if jobs > 0 { "\n  " } else { "" })?;
    Ok(())
}

#[cfg(feature = "parquet")]
fn write_parquet(ledger: &Ledger, audit: &Audit) -> Result<(), Box<dyn std::error::Error>> {
    let mut quantities = std::collections::BTreeSet::new();
    audit::each_outcome(ledger, audit.lines.iter()?, |_, _, outcome| {
        quantities.extend(outcome.iter().flat_map(|record| crate::report::table_quantities(record)));
    })?;
    let mut table =
        crate::report::ArchiveTable::new(ledger.create("audit.parquet")?, quantities.into_iter().collect())?;
    let mut failed = None;
    audit::each_outcome(ledger, audit.lines.iter()?, |_, line, outcome| {
        if let Err(e) = with_row(line, &outcome, None, &[], |row| table.push(row)) {
            failed.get_or_insert(e);
        }
    })?;
    failed.map_or(Ok(()), Err)?;
    table.finish()?.finish()?;
    Ok(())
}

const COLUMNS: [&str; 21] = [
    "path",
    "exit",
    "verdict",
    "job",
    "series",
    "attempt",
    "setup",
    "kit",
    "vehicle",
    "technician",
    "bay",
    "taken",
    "evidence",
    "checks",
    "findings",
    "across",
    "changed",
    "message",
    "log",
    "credentials",
    "report_signature",
];

fn fields(line: &Judged, outcome: &Outcome, log: String) -> [String; COLUMNS.len()] {
    let record = outcome.as_ref().ok();
    let context = record.map(|r| r.context.clone()).unwrap_or_default();
    let checks = record.map_or(Vec::new(), |r| {
        let one = |c: &crate::record::CheckRecord| {
            let value = c.value.map_or("none".to_owned(), |v| format!("{v:.4}"));
            format!("{}={value} {} {}", c.quantity, c.unit, c.verdict.name())
        };
        r.checks.iter().map(one).collect()
    });
    let findings: Vec<&str> = record.map_or(Vec::new(), |r| r.findings.iter().map(|f| f.code.as_str()).collect());
    [
        printable(line.path.clone()),
        line.exit.to_string(),
        line.verdict.map_or(String::new(), |v| v.name().to_owned()),
        record.map_or(String::new(), |r| r.job.clone()),
        context.series.unwrap_or_default(),
        context.attempt.map_or(String::new(), |a| a.to_string()),
        context.setup,
        context.kit,
        context.vehicle.unwrap_or_default(),
        context.technician.unwrap_or_default(),
        context.bay.unwrap_or_default(),
        context.taken.unwrap_or_default(),
        line.evidence.clone().unwrap_or_default(),
        checks.join("; "),
        findings.join(" "),
        printable(
            line.across.iter().map(|lead| format!("{} {}", lead.code, lead.other)).collect::<Vec<_>>().join("; "),
        ),
        line.changed.iter().map(kept_words).collect::<Vec<_>>().join("; "),
        printable(outcome.as_ref().err().cloned().unwrap_or_default()),
        log,
        record.map_or(String::new(), |record| signed(record)),
        line.report.as_ref().map_or(String::new(), kept_report),
    ]
}

/// Photos by the state of their content credentials; nothing where none has any.
fn signed(record: &JobRecord) -> String {
    let mut counted: Vec<(&str, usize)> =
        counts_of(record.credentials()).into_iter().map(|(state, n)| (state.name(), n)).collect();
    let with: usize = counted.iter().map(|(_, n)| n).sum();
    if with > 0 && with < record.photos.len() {
        counted.push(("none", record.photos.len() - with));
    }
    counted.iter().map(|(state, n)| format!("{state} {n}")).collect::<Vec<_>>().join("; ")
}

/// A line on standard output.
#[derive(serde::Serialize)]
struct Line {
    path: String,
    exit: u8,
    verdict: Option<Verdict>,
    result: serde_json::Value,
}

/// Paths in, lines out, in the same order; as many at once as there are threads.
fn from_stdin(trust: Trust) -> Result<u8, String> {
    let many = 4 * rayon::current_num_threads();
    let mut lines = std::io::stdin().lock().lines();
    loop {
        let paths: Vec<String> = lines
            .by_ref()
            .filter(|line| line.as_ref().map_or(true, |text| !text.trim().is_empty()))
            .take(many)
            .collect::<Result<_, _>>()
            .map_err(|e| say!(language(), "cli-no-stdin", why = e.to_string()))?;
        if paths.is_empty() {
            return Ok(0);
        }
        let judged: Vec<Line> = paths.par_iter().map(|path| line(path, trust)).collect();
        let mut text = String::new();
        for line in judged {
            text.push_str(&serde_json::to_string(&line).map_err(|e| e.to_string())?);
            text.push('\n');
        }
        let mut out = std::io::stdout().lock();
        out.write_all(text.as_bytes()).and_then(|()| out.flush()).map_err(|e| no_stdout(&e))?;
    }
}

fn line(path: &str, trust: Trust) -> Line {
    let folder = PathBuf::from(path);
    let sort = match () {
        () if is_evidence(&folder) => Sort::Evidence,
        () if is_one_file(&folder) && folder.is_file() => Sort::OneFile,
        () => Sort::Job,
    };
    let judged = audit::judge(&Found { path: folder, sort }, trust);
    Line { path: path.to_owned(), exit: judged.exit, verdict: judged.verdict, result: judged.result }
}
