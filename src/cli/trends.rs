//! `baywitness trends`.

use std::fmt::Write;
use std::path::{Path, PathBuf};

use rand::TryRng;

use super::codes::UNREADABLE;
use super::output::{complain, language, make_folder, say, write_file, write_json};
use super::threads::pool;
use crate::record::TrendsRecord;
use crate::report::{effect_words, table_cell};
use crate::trends::{COLUMNS, Factor, Options, PeopleKey, Trends, trends};
use crate::words::{Figure, Language, say};

/// What is typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(required = true, value_name = "DIR|FILE")]
    paths: Vec<PathBuf>,
    #[arg(long, value_name = "DIR")]
    out: PathBuf,
    #[arg(long, value_name = "WHAT", default_value = "technician")]
    by: By,
    #[arg(long)]
    names: bool,
    #[arg(long, value_name = "DIR")]
    reports: Vec<PathBuf>,
    #[arg(long, value_name = "N")]
    threads: Option<usize>,
}

#[derive(Debug, Clone, Copy, clap::ValueEnum)]
enum By {
    Technician,
    Bay,
    Setup,
    Vehicle,
}

impl By {
    fn factor(self) -> Factor {
        match self {
            By::Technician => Factor::Technician,
            By::Bay => Factor::Bay,
            By::Setup => Factor::Setup,
            By::Vehicle => Factor::Vehicle,
        }
    }
}

/// Runs the command: 0 done, 2 unreadable.
pub(super) fn run(args: &Arguments) -> u8 {
    match pool(args.threads).and_then(|pool| pool.install(|| write_trends(args))) {
        Ok(()) => 0,
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

fn write_trends(args: &Arguments) -> Result<(), String> {
    let out = &args.out;
    make_folder(out)?;
    let key = if args.names { None } else { Some(people_key(&out.join("people.key"))?) };
    let options = Options { by: args.by.factor(), out, reports: &args.reports, people: key.as_ref() };
    let found = trends(&args.paths, &options).map_err(|e| e.phrase().say(language()))?;
    let record = &found.record;
    write_json(&super::output::JsonTarget::File(out.join("trends.json")), record)?;
    write_file(&out.join("trends.csv"), crate::report::trends_csv(record).as_bytes())?;
    write_file(&out.join("report.html"), crate::report::trends_html(record, language()).as_bytes())?;
    let jobs = out.join("jobs.csv");
    super::output::write_file_by(&jobs, |file| jobs_csv(&found, file))?;
    say(&summary(record, out, language()), None);
    Ok(())
}

fn jobs_csv(found: &Trends, file: &mut impl std::io::Write) -> std::io::Result<()> {
    let mut table = csv::Writer::from_writer(file);
    table.write_record(COLUMNS)?;
    for row in found.rows() {
        table.write_record(row.map(table_cell))?;
    }
    table.flush()
}

fn summary(record: &TrendsRecord, out: &Path, language: Language) -> String {
    let read = &record.read;
    let mut text = say!(language, "trends-said-jobs", count = read.results);
    for (count, what) in
        [(read.copies, "copies"), (read.errors, "errors"), (read.unreadable, "unreadable"), (read.others, "others")]
    {
        if count > 0 {
            let _ = write!(text, ", {}", say!(language, "trends-said-also", what = what, count = count));
        }
    }
    text.push('\n');
    for words in read.unreadable_in(language) {
        let _ = writeln!(text, "  {}", say!(language, "trends-said-unreadable", words = words));
    }
    for v in &record.verdicts {
        let share = Figure::fixed(100.0 * v.share, 1);
        let verdict = v.verdict.phrase();
        let said = say!(language, "trends-said-verdict", verdict = verdict, share = share);
        let _ = writeln!(text, "{:8}  {said}", v.count);
    }
    if record.effects.is_empty() {
        let _ = writeln!(text, "{}", say!(language, "trends-said-nothing"));
    }
    for effect in &record.effects {
        let _ = writeln!(text, "* {}", effect_words(effect, language));
    }
    let file = out.join("report.html").display().to_string();
    let _ = writeln!(text, "{}", say!(language, "trends-said-report", file = file));
    text
}

/// The archive's key, made where there is none: 32 random bytes in hex.
fn people_key(path: &Path) -> Result<PeopleKey, String> {
    match std::fs::read_to_string(path) {
        Ok(text) => {
            let bytes: Option<Vec<u8>> =
                (0..32).map(|i| text.get(2 * i..2 * i + 2).and_then(|h| u8::from_str_radix(h, 16).ok())).collect();
            let bytes = bytes.and_then(|b| b.try_into().ok());
            bytes.map(PeopleKey).ok_or_else(|| {
                crate::words::say!(super::output::language(), "cli-no-people-key", path = super::output::shown(path))
            })
        }
        Err(e) if e.kind() == std::io::ErrorKind::NotFound => {
            let mut bytes = [0; 32];
            rand::rngs::SysRng.try_fill_bytes(&mut bytes).map_err(|e| {
                crate::words::say!(super::output::language(), "training-no-random-bytes", why = e.to_string())
            })?;
            let text: String = bytes.iter().map(|b| format!("{b:02x}")).collect();
            write_file(path, (text + "\n").as_bytes())?;
            keep_private(path)?;
            Ok(PeopleKey(bytes))
        }
        Err(e) => Err(super::output::cannot_read(path, &e)),
    }
}

#[cfg(unix)]
fn keep_private(path: &Path) -> Result<(), String> {
    use std::os::unix::fs::PermissionsExt;
    std::fs::set_permissions(path, std::fs::Permissions::from_mode(0o600))
        .map_err(|e| super::output::cannot_write(path, &e))
}

#[cfg(not(unix))]
fn keep_private(_: &Path) -> Result<(), String> {
    Ok(())
}
