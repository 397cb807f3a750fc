//! `baywitness log`.

use std::path::{Path, PathBuf};

use time::OffsetDateTime;

use super::codes::UNREADABLE;
use super::logged::read_keys;
use super::output::{complain, language, say, shown};
use super::seal::ask;
use crate::evidence::Key;
use crate::transparency::{
    Attempt, KeyKind, Log, LogError, LogFolder, NoteSigner, VerifierKey, check_name, memory, out_of_order,
    private_folder, read_checkpoint, witness, witnessed,
};
use crate::words::say;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[command(subcommand)]
    what: What,
}

#[derive(Debug, clap::Subcommand)]
enum What {
    New {
        #[arg(value_name = "DIR")]
        folder: PathBuf,
        #[arg(long, value_name = "NAME")]
        origin: String,
    },
    Show {
        #[arg(value_name = "DIR")]
        folder: PathBuf,
        #[arg(long, value_name = "N", default_value_t = 20)]
        last: usize,
    },
    Check {
        #[arg(value_name = "DIR")]
        folder: PathBuf,
        #[arg(long, value_name = "FILE")]
        keys: Option<PathBuf>,
        #[arg(long, value_name = "FILE")]
        earlier: Vec<PathBuf>,
    },
    Witness {
        #[arg(value_name = "DIR")]
        folder: PathBuf,
        #[arg(long, value_name = "FILE")]
        key: PathBuf,
        #[arg(long, value_name = "NAME")]
        name: String,
        #[arg(long, value_name = "FILE")]
        keys: PathBuf,
        #[arg(long, value_name = "FILE")]
        seen: Option<PathBuf>,
    },
}

const REWRITTEN: u8 = 1;
const OPEN: u8 = 3;

/// Makes, shows, checks or cosigns a log.
pub(super) fn run(arguments: &Arguments) -> u8 {
    let done = match &arguments.what {
        What::New { folder, origin } => new(folder, origin).map(|words| (words, 0)),
        What::Show { folder, last } => show(folder, *last).map(|words| (words, 0)),
        What::Check { folder, keys, earlier } => check(folder, keys.as_deref(), earlier),
        What::Witness { folder, key, name, keys, seen } => {
            cosign(folder, key, name, keys, seen.as_deref()).map(|words| (words, 0))
        }
    };
    match done {
        Ok((words, code)) => {
            say(&words, None);
            code
        }
        Err((message, code)) => {
            complain(&message);
            code
        }
    }
}

type Failed = (String, u8);

fn failed(e: LogError) -> Failed {
    let code = if matches!(e, LogError::Rewritten { .. } | LogError::File { .. }) { REWRITTEN } else { UNREADABLE };
    (e.phrase().say(language()), code)
}

fn unreadable(message: String) -> Failed {
    (message, UNREADABLE)
}

fn new(folder: &Path, origin: &str) -> Result<String, Failed> {
    let log = Log::create(folder, origin).map_err(|e| unreadable(e.phrase().say(language())))?;
    let made = say!(language(), "cli-log-made", log = origin, folder = shown(folder));
    let private = say!(language(), "cli-log-private", folder = shown(&private_folder(folder)));
    Ok(format!("{made}\n{}\n{private}\n", log.verifier().text()))
}

fn show(folder: &Path, last: usize) -> Result<String, Failed> {
    let log = LogFolder::open(folder).map_err(failed)?;
    let first = log.checkpoint.size.saturating_sub(last as u64);
    let mut text = String::new();
    log.each_entry(|n, entry| {
        if n >= first {
            text.push_str(&match Attempt::read(&entry) {
                Ok(a) => {
                    let photos = a.files.photos.len();
                    let shown = match a.attempt {
                        Some(number) => say!(language(), "cli-log-attempt", photos = photos, attempt = number),
                        None => say!(language(), "cli-log-photos", photos = photos),
                    };
                    format!("{n:8}  {}  {:10}  {:6}  {shown}\n", a.when(), a.verdict, a.by)
                }
                Err(why) => format!("{n:8}  {}\n", why.say(language())),
            });
        }
    })
    .map_err(failed)?;
    let (count, origin) = (log.checkpoint.size, log.checkpoint.origin.as_str());
    text.push_str(&(say!(language(), "cli-log-size", count = count, log = origin) + "\n"));
    Ok(text)
}

fn check(folder: &Path, keys: Option<&Path>, earlier: &[PathBuf]) -> Result<(String, u8), Failed> {
    let keys = keys.map(read_keys).transpose().map_err(unreadable)?.unwrap_or_default();
    let log = LogFolder::open(folder).map_err(failed)?;
    let false_key = |path: &Path, why| failed(LogError::Rewritten { path: path.to_path_buf(), why });
    let vouchers = log.checkpoint.vouchers(&log.note, &keys).map_err(|why| false_key(folder, why))?;
    let (mut times, mut odd) = (Vec::new(), 0_usize);
    log.each_entry(|_, entry| match Attempt::read(&entry) {
        Ok(attempt) => times.push(attempt.seconds()),
        Err(_) => odd += 1,
    })
    .map_err(failed)?;
    for path in earlier {
        let (kept, note) = read_checkpoint(path).map_err(failed)?;
        kept.vouchers(&note, &keys).map_err(|why| false_key(path, why))?;
        log.check_earlier(&kept, path).map_err(failed)?;
    }
    let language = language();
    let (count, origin) = (log.checkpoint.size, log.checkpoint.origin.as_str());
    let mut said = vec![say!(language, "cli-log-holds", log = origin, count = count)];
    for (path, kept, note) in witnessed(folder).map_err(failed)? {
        log.check_earlier(&kept, &path).map_err(failed)?;
        for (name, time) in kept.vouchers(&note, &keys).map_err(|why| false_key(&path, why))?.witnesses {
            let when = OffsetDateTime::from_unix_timestamp(time.try_into().unwrap_or(i64::MAX));
            let when = when.map_or(time.to_string(), |t| t.to_string());
            said.push(say!(language, "cli-log-witnessed", witness = name, count = kept.size, when = when));
        }
    }
    if !earlier.is_empty() {
        said.push(say!(language, "cli-log-continues"));
    }
    let disordered = out_of_order(&times).len();
    if disordered > 0 {
        said.push(say!(language, "cli-log-disordered", count = disordered));
    }
    if odd > 0 {
        said.push(say!(language, "cli-log-odd", count = odd));
    }
    if !vouchers.log {
        said.push(say!(language, "cli-log-no-key"));
    }
    Ok((said.join("\n") + "\n", if vouchers.log && disordered == 0 { 0 } else { OPEN }))
}

fn cosign(folder: &Path, key: &Path, name: &str, keys: &Path, seen: Option<&Path>) -> Result<String, Failed> {
    check_name(name).map_err(|why| unreadable(why.say(language())))?;
    let keys: Vec<VerifierKey> = read_keys(keys).map_err(unreadable)?;
    let opened = Key::open(key, &ask).map_err(|e| unreadable(e.phrase().say(language())))?;
    let seed = opened.seed().ok_or_else(|| unreadable(say!(language(), "cli-log-agent-key", key = shown(key))))?;
    let signer = NoteSigner::new(name, &seed);
    let own = match seen {
        Some(seen) => seen.to_path_buf(),
        None => memory(key, &LogFolder::open(folder).map_err(failed)?.checkpoint.origin),
    };
    let now = u64::try_from(OffsetDateTime::now_utc().unix_timestamp()).unwrap_or(0);
    let done = witness(folder, &keys, &signer, &own, now).map_err(failed)?;
    let language = language();
    let (origin, count, file) = (done.checkpoint.origin.as_str(), done.checkpoint.size, shown(&done.file));
    let cosigned = match done.before {
        None => say!(language, "cli-log-cosigned-first", log = origin, count = count, file = file),
        Some(seen) => say!(language, "cli-log-cosigned", log = origin, count = count, seen = seen, file = file),
    };
    let key = say!(language, "cli-log-witness-key");
    Ok(format!("{cosigned}\n{key}\n{}\n", signer.verifier(KeyKind::Witness).text()))
}
