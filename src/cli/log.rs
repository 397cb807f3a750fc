//! `baywitness log`.

use std::path::{Path, PathBuf};

use time::OffsetDateTime;

use super::UNREADABLE;
use super::logged::read_keys;
use super::output::{complain, say};
use super::seal::ask;
use crate::evidence::Key;
use crate::transparency::{
    Attempt, KeyKind, Log, LogError, LogFolder, NoteSigner, VerifierKey, check_name, out_of_order, private_folder,
    read_checkpoint, witness, witnessed,
};

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[command(subcommand)]
    what: What,
}

#[derive(Debug, clap::Subcommand)]
enum What {
    /// Make an empty log with a key of its own
    ///
    /// Prints the verifier key to publish. The private key, and the secret that salts repair orders, lie in DIR.private.
    New {
        /// The log's folder
        #[arg(value_name = "DIR")]
        folder: PathBuf,
        /// The log's name, as a web address without https://, such as shop.example/attempts
        #[arg(long, value_name = "NAME")]
        origin: String,
    },
    /// List the newest entries
    Show {
        /// The log's folder
        #[arg(value_name = "DIR")]
        folder: PathBuf,
        /// How many
        #[arg(long, value_name = "N", default_value_t = 20)]
        last: usize,
    },
    /// Check every entry, hash and signature, and that no entry was changed since a checkpoint was kept
    #[command(
        after_help = "Exit code: 0 it holds, 1 it was rewritten, truncated, forked or altered, 2 unreadable, 3 it \
                            holds, but no key that counts signed it or times are out of order"
    )]
    Check {
        /// The log's folder
        #[arg(value_name = "DIR")]
        folder: PathBuf,
        /// Whose logs and witnesses count: a file of verifier keys, one a line
        #[arg(long, value_name = "FILE")]
        keys: Option<PathBuf>,
        /// A checkpoint that was kept from before; may be given several times
        #[arg(long, value_name = "FILE")]
        earlier: Vec<PathBuf>,
    },
    /// Cosign the newest checkpoint as a witness, where it continues what this witness has seen
    ///
    /// Run on another machine than the log's, on the shared folder or a copy of it. The cosigned checkpoint is put into
    /// DIR/witnessed; from a copy it is carried back there.
    #[command(
        after_help = "Exit code: 0 cosigned, 1 refused: the log was rewritten, truncated, forked or altered, 2 unreadable"
    )]
    Witness {
        /// The log's folder
        #[arg(value_name = "DIR")]
        folder: PathBuf,
        /// The witness's key of ssh-keygen (ed25519), of no other use
        #[arg(long, value_name = "FILE")]
        key: PathBuf,
        /// The witness's name, such as association.example/witness
        #[arg(long, value_name = "NAME")]
        name: String,
        /// The verifier key of the log: a file with one key a line
        #[arg(long, value_name = "FILE")]
        keys: PathBuf,
        /// Where this witness remembers what it saw (default: KEY.seen)
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
    (e.to_string(), code)
}

fn unreadable(message: String) -> Failed {
    (message, UNREADABLE)
}

fn new(folder: &Path, origin: &str) -> Result<String, Failed> {
    let log = Log::create(folder, origin).map_err(|e| unreadable(e.to_string()))?;
    Ok(format!(
        "Made the log {origin} in {}. Publish that folder, and give this line to whoever checks it:\n{}\nNever publish {}: it \
         holds the log's key. An auditor may be given order-salt from it, to name the repair orders of missing attempts.\n",
        folder.display(),
        log.verifier().text(),
        private_folder(folder).display()
    ))
}

fn show(folder: &Path, last: usize) -> Result<String, Failed> {
    let log = LogFolder::open(folder).map_err(failed)?;
    let first = log.checkpoint.size.saturating_sub(last as u64);
    let mut text = String::new();
    log.each_entry(|n, entry| {
        if n >= first {
            text.push_str(&match Attempt::read(&entry) {
                Ok(a) => {
                    let number = a.attempt.map_or(String::new(), |n| format!(", attempt {n}"));
                    let photos = a.files.photos.len();
                    format!("{n:8}  {}  {:10}  {:6}  {photos} photos{number}\n", a.when(), a.verdict, a.by)
                }
                Err(why) => format!("{n:8}  {why}\n"),
            });
        }
    })
    .map_err(failed)?;
    text.push_str(&format!("{} entries in {}\n", log.checkpoint.size, log.checkpoint.origin));
    Ok(text)
}

fn check(folder: &Path, keys: Option<&Path>, earlier: &[PathBuf]) -> Result<(String, u8), Failed> {
    let keys = keys.map(read_keys).transpose().map_err(unreadable)?.unwrap_or_default();
    let log = LogFolder::open(folder).map_err(failed)?;
    let false_key = |path: &Path, why| failed(LogError::Rewritten { path: path.to_path_buf(), why });
    let vouchers = log.checkpoint.vouchers(&log.note, &keys).map_err(|why| false_key(folder, why))?;
    let (mut times, mut odd) = (Vec::new(), 0);
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
    let mut text = format!(
        "{}: {} entries, every one as its hash says, every hash as the checkpoint's root says\n",
        log.checkpoint.origin, log.checkpoint.size
    );
    for (path, kept, note) in witnessed(folder).map_err(failed)? {
        log.check_earlier(&kept, &path).map_err(failed)?;
        for (name, time) in kept.vouchers(&note, &keys).map_err(|why| false_key(&path, why))?.witnesses {
            let when = OffsetDateTime::from_unix_timestamp(time.try_into().unwrap_or(i64::MAX));
            let when = when.map_or(time.to_string(), |t| t.to_string());
            text.push_str(&format!("{name} saw {} entries at {when}\n", kept.size));
        }
    }
    if !earlier.is_empty() {
        text.push_str("It begins with every checkpoint that was given.\n");
    }
    let disordered = out_of_order(&times).len();
    if disordered > 0 {
        text.push_str(&format!(
            "{disordered} entries have times that do not fit their neighbours' (`baywitness audit --log` names them).\n"
        ));
    }
    if odd > 0 {
        text.push_str(&format!("{odd} entries are not of this program.\n"));
    }
    if !vouchers.log {
        text.push_str("Whether the log signed it is not known: its verifier key was not given (--keys).\n");
    }
    Ok((text, if vouchers.log && disordered == 0 { 0 } else { OPEN }))
}

fn cosign(folder: &Path, key: &Path, name: &str, keys: &Path, seen: Option<&Path>) -> Result<String, Failed> {
    check_name(name).map_err(unreadable)?;
    let keys: Vec<VerifierKey> = read_keys(keys).map_err(unreadable)?;
    let opened = Key::open(key, &ask).map_err(|e| unreadable(e.to_string()))?;
    let seed = opened.seed().ok_or_else(|| {
        unreadable(format!(
            "{} names a key that an agent holds, which signs no notes: name the private key",
            key.display()
        ))
    })?;
    let signer = NoteSigner::new(name, &seed);
    let own = seen.map_or_else(
        || {
            let mut file = key.as_os_str().to_owned();
            file.push(".seen");
            PathBuf::from(file)
        },
        Path::to_path_buf,
    );
    let now = u64::try_from(OffsetDateTime::now_utc().unix_timestamp()).unwrap_or(0);
    let done = witness(folder, &keys, &signer, &own, now).map_err(failed)?;
    let before = done.before.map_or("seen for the first time".to_owned(), |n| format!("continues the {n} seen before"));
    Ok(format!(
        "Cosigned {} at {} entries, which {before}: {}\nThe witness's key, to give to whoever checks the log:\n{}\n",
        done.checkpoint.origin,
        done.checkpoint.size,
        done.file.display(),
        signer.verifier(KeyKind::Witness).text()
    ))
}
