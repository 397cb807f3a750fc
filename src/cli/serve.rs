//! `baywitness serve`.

use std::net::SocketAddr;
use std::path::{Path, PathBuf};

use time::UtcOffset;

use super::anchors::AnchorsOption;
use super::codes::UNREADABLE;
use super::logged;
use super::output::{cannot_write, colour, complain, language, make_folder, note, say};
use super::pdf_signer;
use super::seal::ask;
use crate::evidence::Key;
use crate::folder::Models;
use crate::web::{Options, Server, Tls, qr_text};
use crate::words::say;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(long, value_name = "ADDR:PORT", default_value = "127.0.0.1:8425")]
    listen: SocketAddr,
    #[arg(long, value_name = "DIR", default_value = "jobs")]
    jobs: PathBuf,
    #[arg(long, value_name = "FILE")]
    key: Option<PathBuf>,
    #[arg(long, value_name = "FILE")]
    sign_pdf: Option<PathBuf>,
    #[arg(long, value_name = "FILE", requires = "sign_pdf")]
    certificate: Option<PathBuf>,
    #[arg(long, value_name = "FILE", requires = "tls_key")]
    tls_cert: Option<PathBuf>,
    #[arg(long, value_name = "FILE", requires = "tls_cert")]
    tls_key: Option<PathBuf>,
    #[arg(long, conflicts_with = "tls_cert")]
    tls_own: bool,
    #[arg(long = "name", value_name = "NAME")]
    names: Vec<String>,
    #[arg(long, value_name = "DIR")]
    log: Option<PathBuf>,
    #[command(flatten)]
    anchors: AnchorsOption,
    #[arg(long, value_name = "DIR")]
    models: Option<PathBuf>,
}

/// Serves the technician's page until it is interrupted.
pub(super) fn run(arguments: Arguments) -> u8 {
    match serve(arguments) {
        Ok(()) => 0,
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

fn serve(arguments: Arguments) -> Result<(), String> {
    can_be_written(&arguments.jobs)?;
    let server = Server::bind(ready(arguments)?).map_err(|e| e.phrase().say(language()))?;
    say(&greeting(&server), None);
    server.run().map_err(|e| e.phrase().say(language()))
}

/// Jobs that cannot be kept are told before a phone sends the first photo.
fn can_be_written(jobs: &Path) -> Result<(), String> {
    make_folder(jobs)?;
    let trial = jobs.join(format!(".trial-{}", std::process::id()));
    let written = std::fs::File::create_new(&trial).map_err(|e| cannot_write(jobs, &e));
    let _ = std::fs::remove_file(&trial);
    written.map(drop)
}

/// What was typed as one ready value.
fn ready(arguments: Arguments) -> Result<Options, String> {
    let models = Models::standard(arguments.models.as_deref()).map_err(|e| e.say(language()))?;
    let open = |path: &Path| Key::open(path, &ask).map_err(|e| e.phrase().say(language()));
    Ok(Options {
        listen: arguments.listen,
        jobs: arguments.jobs,
        models,
        credentials: arguments.anchors.source()?,
        key: arguments.key.as_deref().map(open).transpose()?,
        pdf_signer: pdf_signer::open(arguments.sign_pdf.as_deref(), arguments.certificate.as_deref())?,
        tls: tls(arguments.tls_cert.zip(arguments.tls_key), arguments.tls_own),
        names: arguments.names,
        note: |words| note(&format!("{}\n", words.say(language()))),
        log: arguments.log.as_deref().map(logged::open).transpose()?,
        offset: UtcOffset::current_local_offset().unwrap_or(UtcOffset::UTC),
    })
}

fn tls(files: Option<(PathBuf, PathBuf)>, own: bool) -> Option<Tls> {
    match files {
        Some((certificate, key)) => Some(Tls::Files { certificate, key }),
        None => own.then_some(Tls::Own),
    }
}

fn greeting(server: &Server) -> String {
    let link = server.link();
    let Some(code) = server.pairing_code() else {
        return format!("{}\n{}", say!(language(), "cli-serve-alone", link = link), encryption(server));
    };
    let square = if colour(None) { qr_text(&server.square()).unwrap_or_default() } else { String::new() };
    let language = language();
    let code = format!("{}-{}", &code[..code.len() / 2], &code[code.len() / 2..]);
    let network =
        if server.is_open() { say!(language, "cli-serve-open") } else { say!(language, "cli-serve-encrypted") };
    let sentences = [say!(language, "cli-serve-code", code = code), network, say!(language, "cli-serve-end")];
    let at = say!(language, "cli-serve-at", link = link);
    format!("{square}{at}\n{}\n{}", sentences.join(" "), encryption(server))
}

/// What to compare with what a phone shows, and what is doubtful.
fn encryption(server: &Server) -> String {
    let mut lines = String::new();
    if let Some(print) = server.fingerprint() {
        lines.push_str(&(say!(language(), "cli-serve-certificate", digest = print) + "\n"));
    }
    if let Some(print) = server.root_fingerprint() {
        lines.push_str(&(say!(language(), "cli-serve-root", digest = print) + "\n"));
    }
    for doubt in server.doubts() {
        lines.push_str(&format!("Note: {}\n", doubt.say(language())));
    }
    lines
}
