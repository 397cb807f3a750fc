//! `baywitness certificate`.

use std::path::{Path, PathBuf};

use time::OffsetDateTime;

use super::codes::UNREADABLE;
use super::output::{cannot_write, complain, language, say, shown, write_file};
use crate::evidence::own_certificate;
use crate::folder::write_private;
use crate::words::{Value, say};

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(value_name = "NAME")]
    name: String,
    #[arg(long, value_name = "FILE")]
    out: PathBuf,
    #[arg(long, value_name = "N", default_value_t = 3)]
    years: u32,
}

/// Makes a key with a certificate that vouches for itself.
pub(super) fn run(arguments: &Arguments) -> u8 {
    match make(arguments) {
        Ok(words) => {
            say(&words, None);
            0
        }
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

fn make(arguments: &Arguments) -> Result<String, String> {
    let (private, public) = (arguments.out.as_path(), arguments.out.with_extension("crt"));
    if private == public {
        return Err(say!(language(), "cli-certificate-ending", file = shown(private)));
    }
    // A key that signed reports is never written over.
    for file in [private, &public] {
        if std::fs::symlink_metadata(file).is_ok() {
            return Err(say!(language(), "evidence-exists", form = "file", path = shown(file)));
        }
    }
    let made = own_certificate(&arguments.name, arguments.years, OffsetDateTime::now_utc());
    let made = made.map_err(|e| e.phrase().say(language()))?;
    if let Some(folder) = private.parent().filter(|p| !p.as_os_str().is_empty()) {
        std::fs::create_dir_all(folder).map_err(|e| cannot_write(folder, &e))?;
    }
    write_private(private, made.private_pem.as_bytes()).map_err(|e| cannot_write(private, &e))?;
    write_file(&public, made.public_pem.as_bytes())?;
    let (file, ends) = (shown(private), Value::moment(made.ends.date().to_string()));
    let told = say!(language(), "cli-certificate-made", file = file, public = shown(&public), ends = ends);
    let print = say!(language(), "cli-serve-certificate", digest = made.fingerprint);
    Ok(format!("{told}\n{print}\n{}\n", next(private)))
}

fn next(private: &Path) -> String {
    say!(language(), "cli-certificate-next", file = shown(private))
}
