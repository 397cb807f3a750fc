//! The first bytes of a connection: encrypted, or somebody who typed the
//! address without "https" and is sent to the right one.

use std::convert::Infallible;
use std::io;
use std::sync::Arc;

use hyper::header::{ACCEPT_LANGUAGE, HOST, LOCATION};
use hyper::{Request, Response, StatusCode};
use rustls::ServerConfig;
use rustls::crypto::ring::default_provider;
use rustls::version::TLS13;
use tokio::net::TcpStream;
use tokio::time::timeout;
use tokio_rustls::TlsAcceptor;
use tokio_rustls::server::TlsStream;

use super::{Error, Keeper};
use crate::web::limits;
use crate::words::{Language, say};

/// How every encrypted connection begins (RFC 8446, 5.1: a record of type handshake).
const HANDSHAKE: u8 = 0x16;

/// Lets connections in.
pub(in crate::web) struct Door {
    acceptor: TlsAcceptor,
}

/// A connection that came in.
pub(in crate::web) enum Entered {
    /// Encrypted.
    Encrypted(Box<TlsStream<TcpStream>>),
    /// Not encrypted: it gets no page.
    Plain(TcpStream),
}

impl Door {
    /// TLS 1.3 alone: every browser with a camera for pages has it.
    pub(in crate::web) fn new(keeper: Arc<Keeper>) -> Result<Self, Error> {
        let mut config = ServerConfig::builder_with_provider(Arc::new(default_provider()))
            .with_protocol_versions(&[&TLS13])
            .map_err(|e| Error::Make(e.to_string()))?
            .with_no_client_auth()
            .with_cert_resolver(keeper);
        config.alpn_protocols = vec![b"http/1.1".to_vec()];
        Ok(Door { acceptor: TlsAcceptor::from(Arc::new(config)) })
    }

    /// Waits for the first bytes, and for the handshake; neither for long.
    pub(in crate::web) async fn enter(&self, stream: TcpStream) -> io::Result<Entered> {
        let entered = async {
            let mut first = [0];
            match stream.peek(&mut first).await? {
                0 => Err(io::ErrorKind::UnexpectedEof.into()),
                _ if first[0] != HANDSHAKE => Ok(Entered::Plain(stream)),
                _ => Ok(Entered::Encrypted(Box::new(self.acceptor.accept(stream).await?))),
            }
        };
        timeout(limits::HEAD_TIME, entered).await?
    }
}

/// Sends a browser that came without encryption to the page.
pub(in crate::web) async fn send_on<B>(request: Request<B>) -> Result<Response<String>, Infallible> {
    let language = |r: &Request<B>| Language::of_header(r.headers().get(ACCEPT_LANGUAGE)?.to_str().ok()?);
    let words = say!(language(&request).unwrap_or_default(), "page-tls-plain");
    let mut answer = Response::new(format!("{words}\n"));
    *answer.status_mut() = StatusCode::BAD_REQUEST;
    let path = request.uri().path_and_query().map_or("/", |p| p.as_str());
    let host = request.headers().get(HOST).and_then(|h| h.to_str().ok());
    let to = host.filter(|h| !h.is_empty() && h.bytes().all(|b| b.is_ascii_alphanumeric() || b".-:[]".contains(&b)));
    if let Some(Ok(to)) = to.map(|host| format!("https://{host}{path}").parse()) {
        *answer.status_mut() = StatusCode::TEMPORARY_REDIRECT;
        answer.headers_mut().insert(LOCATION, to);
    }
    Ok(answer)
}
