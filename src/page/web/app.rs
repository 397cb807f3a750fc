//! What every request shares.

use std::net::SocketAddr;
use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};

use time::{OffsetDateTime, UtcOffset};
use tokio::sync::Semaphore;

use super::error::Error;
use super::limits;
use super::tls::{Keeper, Tls};
use crate::evidence::Key;
use crate::folder::Models;
use crate::job;
use crate::transparency::Log;
use crate::web::desk::{Desk, Plans, Previews};
use crate::web::entry::{Pace, Pairing, reachable};
use crate::web::folders::{Library, Shelf, folder};
use crate::words::Phrase;

/// How to serve.
#[derive(Debug)]
pub struct Options {
    /// Where to listen; port 0 takes any that is free.
    pub listen: SocketAddr,
    /// The folder of job folders; made where it does not exist.
    pub jobs: PathBuf,
    /// Where set-up sheets, kits and cameras are found by name.
    pub models: Models,
    /// Signs closed jobs.
    pub key: Option<Key>,
    /// Encryption; without it the page speaks plain HTTP.
    pub tls: Option<Tls>,
    /// Names that phones type for this machine; the first stands in the square.
    pub names: Vec<String>,
    /// Tells whoever runs the page what they should know.
    pub note: fn(&Phrase),
    /// Gets every verdict that changed.
    pub log: Option<Log>,
    /// The bay's clock against UTC, asked before there are threads.
    pub offset: UtcOffset,
}

/// The page's state.
pub(super) struct App {
    pub(super) options: job::Options,
    pub(super) key: Option<Key>,
    pub(super) log: Option<Arc<Log>>,
    pub(super) offset: UtcOffset,
    pub(super) shelf: Arc<Shelf>,
    pub(super) desk: Arc<Desk>,
    pub(super) library: Library,
    pub(super) plans: Plans,
    pub(super) previews: Previews,
    pub(super) pairing: Pairing,
    /// The certificate, where the page is encrypted.
    pub(super) certificate: Option<Arc<Keeper>>,
    /// What phones type instead of the address.
    pub(super) name: Option<String>,
    /// Whether everybody in the network can read along.
    pub(super) open: bool,
    pub(super) uploads: Arc<Semaphore>,
    /// Live pictures that are looked at.
    pub(super) glances: Arc<Semaphore>,
    pub(super) pace: Pace,
    /// Open streams of events.
    pub(super) streams: AtomicUsize,
}

impl App {
    /// Nobody needs to pair with a page that only this machine can open.
    pub(super) fn new(options: Options, address: SocketAddr) -> Result<Arc<App>, Error> {
        let unwritable = |source| Error::Jobs { jobs: options.jobs.clone(), source };
        std::fs::create_dir_all(&options.jobs).map_err(unwritable)?;
        let jobs = std::fs::canonicalize(&options.jobs).map_err(unwritable)?;
        let pairing = Pairing::new(address, &jobs).map_err(unwritable)?;
        let names = Keeper::names(&options.names, reachable(address).ip())?;
        let keeper = |tls: &Tls| Keeper::open(tls, &jobs, &names, options.note);
        let certificate = options.tls.as_ref().map(keeper).transpose()?.map(Arc::new);
        // Sheets that the shop types lie beside its jobs.
        let job_options = job::Options { models: options.models.after(folder(&jobs)) };
        let shelf = Arc::new(Shelf::new(jobs));
        let log = options.log.map(Arc::new);
        Ok(Arc::new(App {
            key: options.key,
            offset: options.offset,
            desk: Arc::new(Desk::new(job_options.clone(), Arc::clone(&shelf), log.clone())),
            log,
            shelf,
            library: Library::new(job_options.models.clone()),
            plans: Plans::default(),
            previews: Previews::default(),
            pairing,
            open: certificate.is_none() && !address.ip().is_loopback(),
            certificate,
            name: options.names.into_iter().next(),
            glances: Arc::new(Semaphore::new(limits::GLANCES)),
            pace: Pace::default(),
            uploads: Arc::new(Semaphore::new(limits::UPLOADS)),
            streams: AtomicUsize::new(0),
            options: job_options,
        }))
    }

    /// The time at the bay.
    pub(super) fn now(&self) -> OffsetDateTime {
        let now = OffsetDateTime::now_utc().to_offset(self.offset);
        now.replace_nanosecond(0).unwrap_or(now)
    }

    /// A place among the streams of events; given back when dropped.
    pub(super) fn stream_place(self: &Arc<App>) -> Option<StreamPlace> {
        let before = self.streams.fetch_add(1, Ordering::AcqRel);
        let place = StreamPlace(Arc::clone(self));
        (before < limits::EVENT_STREAMS).then_some(place)
    }
}

/// One of the streams of events.
pub(super) struct StreamPlace(Arc<App>);

impl Drop for StreamPlace {
    fn drop(&mut self) {
        self.0.streams.fetch_sub(1, Ordering::AcqRel);
    }
}
