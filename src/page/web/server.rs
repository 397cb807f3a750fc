//! Connections: so many at a time, none for ever without a word.

use std::net::SocketAddr;
use std::sync::Arc;
use std::time::Duration;

use hyper::server::conn::http1;
use hyper::service::service_fn;
use hyper_util::rt::{TokioIo, TokioTimer};
use hyper_util::service::TowerToHyperService;
use tokio::io::{AsyncRead, AsyncWrite};
use tokio::net::{TcpListener, TcpStream};
use tokio::sync::Semaphore;

use super::app::{App, Options};
use super::error::Error;
use super::limits;
use super::tls::{Door, Entered, digits, send_on};
use crate::web::entry::{Places, reachable};
use crate::web::routes::routes;
use crate::words::Phrase;

/// A page that listens.
pub struct Server {
    runtime: tokio::runtime::Runtime,
    listener: TcpListener,
    address: SocketAddr,
    app: Arc<App>,
    /// None: the page speaks plain HTTP.
    door: Option<Arc<Door>>,
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
        let app = App::new(options, address)?;
        let door = app.certificate.as_ref().map(|c| Door::new(Arc::clone(c))).transpose()?.map(Arc::new);
        Ok(Server { runtime, listener, address, app, door })
    }

    /// Where it listens.
    pub fn address(&self) -> SocketAddr {
        self.address
    }

    /// The page's address for a browser; with the pairing code where one is needed.
    pub fn link(&self) -> String {
        let at = reachable(self.address);
        let scheme = if self.door.is_some() { "https" } else { "http" };
        let host = match &self.app.name {
            Some(name) => format!("{name}:{}", at.port()),
            None => at.to_string(),
        };
        match self.app.pairing.code() {
            Some(code) => format!("{scheme}://{host}/pair/{code}"),
            None => format!("{scheme}://{host}/"),
        }
    }

    /// The same for the square: behind `#`, which no browser sends, the digits of the
    /// certificate's SHA-256.
    pub fn square(&self) -> String {
        match self.fingerprint() {
            Some(print) => format!("{}#{}", self.link(), digits(&print)),
            None => self.link(),
        }
    }

    /// SHA-256 of the certificate that browsers are shown, where there is one.
    pub fn fingerprint(&self) -> Option<String> {
        self.app.certificate.as_ref().map(|c| c.fingerprint())
    }

    /// SHA-256 of the page's own root, which phones can be told to trust.
    pub fn root_fingerprint(&self) -> Option<String> {
        self.app.certificate.as_ref()?.root().map(|(_, print)| print)
    }

    /// Whether everybody in the network can read along.
    pub fn is_open(&self) -> bool {
        self.app.open
    }

    /// What is doubtful about the certificate, each with its remedy.
    pub fn doubts(&self) -> Vec<Phrase> {
        let name = self.app.name.clone().unwrap_or_else(|| reachable(self.address).ip().to_string());
        self.app.certificate.as_ref().map(|c| c.doubts(&name)).unwrap_or_default()
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
        let Server { runtime, listener, address, app, door } = self;
        let shelf = Arc::clone(&app);
        // A first look at the folder, so that the first page does not wait for it.
        runtime.spawn_blocking(move || shelf.shelf.refresh(true));
        if let Some(certificate) = &app.certificate {
            runtime.spawn(Arc::clone(certificate).watch());
        }
        runtime.block_on(async move {
            tokio::select! {
                () = accept(listener, address, app, door) => Ok(()),
                stopped = tokio::signal::ctrl_c() => stopped,
            }
        })?;
        runtime.shutdown_timeout(Duration::from_secs(5));
        Ok(())
    }
}

async fn accept(listener: TcpListener, address: SocketAddr, app: Arc<App>, door: Option<Arc<Door>>) {
    let places = Arc::new(Semaphore::new(limits::CONNECTIONS));
    let from_one = Places::default();
    let service = routes(&app, address);
    loop {
        let Ok(place) = Arc::clone(&places).acquire_owned().await else { return };
        let Ok((stream, peer)) = listener.accept().await else {
            // Out of file handles, perhaps: what is open goes on.
            tokio::time::sleep(Duration::from_millis(100)).await;
            continue;
        };
        // Whoever holds too many is hung up on, so that others find a place.
        let Some(own_place) = from_one.take(peer.ip()) else { continue };
        let (service, door) = (service.clone(), door.clone());
        tokio::spawn(async move {
            serve(stream, door, service).await;
            drop((place, own_place));
        });
    }
}

async fn serve(stream: TcpStream, door: Option<Arc<Door>>, service: axum::Router) {
    // Answers are small and waited for.
    let _ = stream.set_nodelay(true);
    let Some(door) = door else { return speak(stream, service).await };
    match door.enter(stream).await {
        Ok(Entered::Encrypted(stream)) => speak(*stream, service).await,
        Ok(Entered::Plain(stream)) => {
            let mut http = http();
            // What becomes of the answer is the other side's choice.
            let _ = http.keep_alive(false).serve_connection(TokioIo::new(stream), service_fn(send_on)).await;
        }
        // No handshake, or one that failed: rustls has said why.
        Err(_) => {}
    }
}

fn http() -> http1::Builder {
    let mut http = http1::Builder::new();
    http.timer(TokioTimer::new()).header_read_timeout(limits::HEAD_TIME).max_buf_size(limits::HEAD_BYTES);
    http
}

async fn speak(stream: impl AsyncRead + AsyncWrite + Unpin + Send + 'static, service: axum::Router) {
    // A connection that breaks off is the other side's choice.
    let _ = http().serve_connection(TokioIo::new(stream), TowerToHyperService::new(service)).await;
}
