//! `baywitness audit`.

use std::io::{BufRead, IsTerminal, Write};
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use rayon::prelude::*;

use super::UNREADABLE;
use super::check::read_signers;
use super::log_check;
use super::output::{complain, say};
use super::threads::pool;
use super::verify::worse;
use crate::custody::audit::{self, Audit, Change, Found, Judged, Ledger, Outcome, Progress, Sort};
use crate::evidence::{Signers, is_evidence, is_one_file};
use crate::folder::Models;
use crate::job::Options;
use crate::record::Verdict;
use crate::report::{ArchiveRow, archive_end, archive_row, archive_start};

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Folders that hold job and evidence folders, or are ones
    #[arg(value_name = "PATH", required_unless_present = "stdin", conflicts_with = "stdin")]
    paths: Vec<PathBuf>,
    /// Where results and the report go; run again, only what is new or changed is judged
    #[arg(long, value_name = "DIR", required_unless_present = "stdin", conflicts_with = "stdin")]
    out: Option<PathBuf>,
    /// Read job paths from standard input and write one JSON line for each to standard output
    #[arg(long)]
    stdin: bool,
    /// Judge again what was judged before, by any version of the program, and list what that changed
    #[arg(long, conflicts_with = "stdin")]
    recompute: bool,
    /// Whose signatures count: a file of allowed signers, as ssh-keygen has it
    #[arg(long, value_name = "FILE")]
    signers: Option<PathBuf>,
    /// Hold the archive against this log of attempts; what differs goes into log.json, the newest checkpoint into log-checkpoint
    #[arg(long, value_name = "DIR", conflicts_with = "stdin")]
    log: Option<PathBuf>,
    /// Whose logs and witnesses count: a file of verifier keys, one a line
    #[arg(long, value_name = "FILE", requires = "log")]
    log_keys: Option<PathBuf>,
    /// A checkpoint of the log that was kept from before (the one in the audit's own folder is used in any case)
    #[arg(long, value_name = "FILE", requires = "log")]
    log_earlier: Vec<PathBuf>,
    /// The log's secret that tells which repair order a missing attempt was of (default: DIR.private/order-salt, where it is)
    #[arg(long, value_name = "FILE", requires = "log")]
    log_orders: Option<PathBuf>,
    /// Folder with setups/, kits/ and cameras/ to look for names in
    #[arg(long, value_name = "DIR")]
    models: Option<PathBuf>,
    /// Number of threads (default: one for each core)
    #[arg(long, value_name = "N")]
    threads: Option<usize>,
}

/// Judges an archive.
pub(super) fn run(arguments: &Arguments) -> u8 {
    prepare(arguments)
        .and_then(|(options, signers, pool)| {
            pool.install(|| {
                if arguments.stdin {
                    from_stdin(&options, signers.as_ref())
                } else {
                    archive(arguments, &options, signers.as_ref())
                }
            })
        })
        .unwrap_or_else(|message| {
            complain(&message);
            UNREADABLE
        })
}

fn prepare(arguments: &Arguments) -> Result<(Options, Option<Signers>, rayon::ThreadPool), String> {
    let models = Models::standard(arguments.models.as_deref()).map_err(|e| e.to_string())?;
    let signers = arguments.signers.as_deref().map(read_signers).transpose()?;
    Ok((Options { models }, signers, pool(arguments.threads)?))
}

fn archive(arguments: &Arguments, options: &Options, signers: Option<&Signers>) -> Result<u8, String> {
    let mut code = 0;
    let found = audit::find(&arguments.paths, &mut |path, e| {
        complain(&format!("cannot read the folder {}: {e}", path.display()));
        code = UNREADABLE;
    });
    if found.is_empty() {
        return Err("no job or evidence folder was found: name a folder that holds some".to_owned());
    }
    let out = arguments.out.as_deref().unwrap_or(Path::new("."));
    let start = Instant::now();
    let last = std::sync::Mutex::new(start);
    let progress = |p: Progress| show(p, start, &last);
    let (ledger, audit) =
        audit::audit(&found, options, signers, out, arguments.recompute, &progress).map_err(|e| e.to_string())?;
    if std::io::stderr().is_terminal() {
        let _ = write!(std::io::stderr(), "\r\x1b[K");
    }
    write_reports(&ledger, &audit).map_err(|e| format!("cannot write the report of the audit: {e}"))?;
    for line in &audit.lines {
        code = worse(code, line.exit);
    }
    say(&summary(&audit, out), None);
    if let Some(folder) = &arguments.log {
        let asked = log_check::Asked {
            folder,
            keys: arguments.log_keys.as_deref(),
            earlier: &arguments.log_earlier,
            orders: arguments.log_orders.as_deref(),
        };
        code = worse(code, log_check::audit(&ledger, &audit, out, &asked)?);
    }
    Ok(code)
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
    let _ = write!(
        std::io::stderr(),
        "\r\x1b[K{} of {} ({} from before), {rate:.1} a second, {left:.0} s left",
        p.done,
        p.total,
        p.kept
    );
}

const LADDER: [Option<Verdict>; 5] =
    [Some(Verdict::Within), Some(Verdict::Outside), Some(Verdict::NotProven), Some(Verdict::Retake), None];

fn counts(audit: &Audit) -> [(Option<Verdict>, usize); 5] {
    LADDER.map(|v| (v, audit.lines.iter().filter(|l| l.verdict == v).count()))
}

fn summary(audit: &Audit, out: &Path) -> String {
    let mut text = format!("{} jobs, {} of them kept from an earlier run\n", audit.lines.len(), audit.kept);
    for (verdict, count) in counts(audit) {
        text.push_str(&format!("{count:8}  {}\n", verdict.map_or("unreadable or altered", Verdict::words)));
    }
    let across = audit.lines.iter().filter(|l| !l.across.is_empty()).count();
    if across > 0 {
        text.push_str(&format!("{across:8}  share a photo or a set-up with an earlier job: see the report\n"));
    }
    let changed = audit.lines.iter().filter(|l| !l.changed.is_empty()).count();
    if changed > 0 {
        text.push_str(&format!("{changed:8}  say otherwise than before they were recomputed: see the report\n"));
    }
    let other = audit.lines.iter().filter(|l| l.version != env!("CARGO_PKG_VERSION")).count();
    if other > 0 {
        text.push_str(&format!(
            "{other:8}  were judged by another version of the program: --recompute judges them again\n"
        ));
    }
    text.push_str(&format!("Report: {}\n", out.join("report.html").display()));
    text
}

/// The page and the tables, a few jobs at a time.
fn write_reports(ledger: &Ledger, audit: &Audit) -> Result<(), Box<dyn std::error::Error>> {
    let mut page = ledger.create("report.html")?;
    page.write_all(archive_start("Audit of set-ups", &counts(audit)).as_bytes())?;
    let mut table = csv::Writer::from_writer(ledger.create("audit.csv")?);
    table.write_record(COLUMNS)?;
    let mut failed: Option<Box<dyn std::error::Error>> = None;
    audit::each_outcome(ledger, &audit.lines, |_, line, outcome| {
        let row = with_row(line, &outcome, archive_row);
        let written = page.write_all(row.as_bytes()).map_err(Into::into);
        let written = written.and_then(|()| table.write_record(fields(line, &outcome)).map_err(Into::into));
        if let Err(e) = written {
            failed.get_or_insert(e);
        }
    })?;
    failed.map_or(Ok(()), Err)?;
    page.write_all(archive_end().as_bytes())?;
    page.finish()?;
    table.into_inner().map_err(|e| e.into_error())?.finish()?;
    let mut changed = ledger.create("differences.json")?;
    changed.write_all(&differences(audit)?)?;
    changed.finish()?;
    #[cfg(feature = "parquet")]
    write_parquet(ledger, audit)?;
    Ok(())
}

/// Gives a line and its outcome to who makes a row of them.
fn with_row<T>(line: &Judged, outcome: &Outcome, make: impl FnOnce(&ArchiveRow) -> T) -> T {
    let evidence = line.evidence.as_ref().map(|words| match &line.signer {
        Some(who) => format!("{words} by {who}"),
        None => words.clone(),
    });
    let across: Vec<[&str; 3]> =
        line.across.iter().map(|lead| [&lead.code, &lead.other, &lead.message].map(String::as_str)).collect();
    let changed: Vec<String> = line.changed.iter().map(words_of).collect();
    make(&ArchiveRow {
        path: &line.path,
        exit: line.exit,
        digest: &line.digest,
        result: line.result.as_str().unwrap_or_default(),
        outcome: outcome.as_ref().map(|record| &**record).map_err(String::as_str),
        evidence: evidence.as_deref(),
        across: &across,
        changed: &changed,
    })
}

fn words_of(change: &Change) -> String {
    let moved = change.in_u.map_or(String::new(), |n| format!(", {n:+.2} u"));
    format!("{}: {} before, now {}{moved}", change.what, change.earlier, change.now)
}

/// What the recomputation changed (`differences/1`): changed verdicts first.
fn differences(audit: &Audit) -> serde_json::Result<Vec<u8>> {
    #[derive(serde::Serialize)]
    struct Job<'a> {
        path: &'a str,
        result: &'a serde_json::Value,
        changed: &'a [Change],
    }
    let changed = audit.lines.iter().filter(|line| !line.changed.is_empty());
    let mut jobs: Vec<Job> =
        changed.map(|line| Job { path: &line.path, result: &line.result, changed: &line.changed }).collect();
    jobs.sort_by_key(|job| job.changed.iter().all(|c| c.what != "verdict"));
    let mut json = serde_json::to_vec_pretty(&serde_json::json!({ "format": "differences/1", "jobs": jobs }))?;
    json.push(b'\n');
    Ok(json)
}

#[cfg(feature = "parquet")]
fn write_parquet(ledger: &Ledger, audit: &Audit) -> Result<(), Box<dyn std::error::Error>> {
    let mut quantities = std::collections::BTreeSet::new();
    audit::each_outcome(ledger, &audit.lines, |_, _, outcome| {
        quantities.extend(outcome.iter().flat_map(|record| crate::report::table_quantities(record)));
    })?;
    let mut table =
        crate::report::ArchiveTable::new(ledger.create("audit.parquet")?, quantities.into_iter().collect())?;
    let mut failed = None;
    audit::each_outcome(ledger, &audit.lines, |_, line, outcome| {
        if let Err(e) = with_row(line, &outcome, |row| table.push(row)) {
            failed.get_or_insert(e);
        }
    })?;
    failed.map_or(Ok(()), Err)?;
    table.finish()?.finish()?;
    Ok(())
}

const COLUMNS: [&str; 18] = [
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
];

fn fields(line: &Judged, outcome: &Outcome) -> [String; 18] {
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
        line.path.clone(),
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
        line.across.iter().map(|lead| format!("{} {}", lead.code, lead.other)).collect::<Vec<_>>().join("; "),
        line.changed.iter().map(words_of).collect::<Vec<_>>().join("; "),
        outcome.as_ref().err().cloned().unwrap_or_default(),
    ]
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
fn from_stdin(options: &Options, signers: Option<&Signers>) -> Result<u8, String> {
    let many = 4 * rayon::current_num_threads();
    let mut lines = std::io::stdin().lock().lines();
    loop {
        let paths: Vec<String> = lines
            .by_ref()
            .filter(|line| line.as_ref().map_or(true, |text| !text.trim().is_empty()))
            .take(many)
            .collect::<Result<_, _>>()
            .map_err(|e| format!("cannot read standard input: {e}"))?;
        if paths.is_empty() {
            return Ok(0);
        }
        let judged: Vec<Line> = paths.par_iter().map(|path| line(path, options, signers)).collect();
        let mut text = String::new();
        for line in judged {
            text.push_str(&serde_json::to_string(&line).map_err(|e| e.to_string())?);
            text.push('\n');
        }
        let mut out = std::io::stdout().lock();
        out.write_all(text.as_bytes())
            .and_then(|()| out.flush())
            .map_err(|e| format!("cannot write to standard output: {e}"))?;
    }
}

fn line(path: &str, options: &Options, signers: Option<&Signers>) -> Line {
    let folder = PathBuf::from(path);
    let sort = match () {
        () if is_evidence(&folder) => Sort::Evidence,
        () if is_one_file(&folder) && folder.is_file() => Sort::OneFile,
        () => Sort::Job,
    };
    let judged = audit::judge(&Found { path: folder, sort }, options, signers);
    Line { path: path.to_owned(), exit: judged.exit, verdict: judged.verdict, result: judged.result }
}
