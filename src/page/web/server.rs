//! Connections: so many at a time, none for ever without a word.

use std::io;
use std::net::SocketAddr;
use std::path::PathBuf;
use std::sync::Arc;
use std::time::Duration;

use hyper::server::conn::http1;
use hyper_util::rt::{TokioIo, TokioTimer};
use hyper_util::service::TowerToHyperService;
use tokio::net::{TcpListener, TcpStream};
use tokio::sync::Semaphore;

use super::app::{App, Options};
use super::limits;
use super::pairing::reachable;
use super::routes::routes;

/// Why the page can't be served.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// The address is taken or not this machine's.
    #[error("cannot listen on {address} ({source}): name another --listen ADDR:PORT, or stop what listens there")]
    Listen {
        /// Where.
        address: SocketAddr,
        /// What the system said.
        source: io::Error,
    },
    /// The folder of jobs.
    #[error("cannot use {jobs} as the folder of jobs ({source}): name another --jobs DIR")]
    Jobs {
        /// Which.
        jobs: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// Threads or timers.
    #[error("cannot start the server ({0})")]
    Start(#[from] io::Error),
}

/// A page that listens.
pub struct Server {
    runtime: tokio::runtime::Runtime,
    listener: TcpListener,
    address: SocketAddr,
    app: Arc<App>,
}

impl Server {
    /// Listens; nobody is answered before [`Server::run`].
    ///
    /// # Errors
    /// The address or the folder of jobs can't be used.
    pub fn bind(options: Options) -> Result<Self, Error> {
        let runtime = tokio::runtime::Builder::new_multi_thread().enable_all().build()?;
        let wanted = options.listen;
        let bound = runtime.block_on(TcpListener::bind(wanted)).and_then(|l| Ok((l.local_addr()?, l)));
        let (address, listener) = bound.map_err(|source| Error::Listen { address: wanted, source })?;
        let jobs = options.jobs.clone();
        let app = App::new(options, address).map_err(|source| Error::Jobs { jobs, source })?;
        Ok(Server { runtime, listener, address, app })
    }

    /// Where it listens.
    pub fn address(&self) -> SocketAddr {
        self.address
    }

    /// The page's address for a browser; with the pairing code where one is needed.
    pub fn link(&self) -> String {
        let at = reachable(self.address);
        match self.app.pairing.code() {
            Some(code) => format!("http://{at}/pair/{code}"),
            None => format!("http://{at}/"),
        }
    }

    /// The code that connects devices, where one is needed.
    pub fn pairing_code(&self) -> Option<&str> {
        self.app.pairing.code()
    }

    /// Answers until the program is told to stop (interrupt).
    ///
    /// # Errors
    /// The system can't say that the program is told to stop.
    pub fn run(self) -> Result<(), Error> {
        let Server { runtime, listener, address, app } = self;
        let shelf = Arc::clone(&app);
        // A first look at the folder, so that the first page does not wait for it.
        runtime.spawn_blocking(move || shelf.shelf.refresh(true));
        runtime.block_on(async move {
            tokio::select! {
                () = accept(listener, address, app) => Ok(()),
                stopped = tokio::signal::ctrl_c() => stopped,
            }
        })?;
        runtime.shutdown_timeout(Duration::from_secs(5));
        Ok(())
    }
}

async fn accept(listener: TcpListener, address: SocketAddr, app: Arc<App>) {
    let places = Arc::new(Semaphore::new(limits::CONNECTIONS));
    let service = routes(&app, address);
    loop {
        let Ok(place) = Arc::clone(&places).acquire_owned().await else { return };
        let Ok((stream, _)) = listener.accept().await else {
            // Out of file handles, perhaps: what is open goes on.
            tokio::time::sleep(Duration::from_millis(100)).await;
            continue;
        };
        let service = service.clone();
        tokio::spawn(async move {
            serve(stream, service).await;
            drop(place);
        });
    }
}

async fn serve(stream: TcpStream, service: axum::Router) {
    // Answers are small and waited for.
    let _ = stream.set_nodelay(true);
    let mut http = http1::Builder::new();
    http.timer(TokioTimer::new()).header_read_timeout(limits::HEAD_TIME).max_buf_size(limits::HEAD_BYTES);
    // A connection that breaks off is the other side's choice.
    let _ = http.serve_connection(TokioIo::new(stream), TowerToHyperService::new(service)).await;
}
