//! A TLS client (rustls) that knows a certificate by its fingerprint alone, as
//! somebody does who compares what the terminal shows.

use std::io::{self, Read, Write};
use std::net::{SocketAddr, TcpStream};
use std::sync::Arc;
use std::time::Duration;

use rustls::client::danger::{HandshakeSignatureValid, ServerCertVerified, ServerCertVerifier};
use rustls::crypto::{CryptoProvider, ring, verify_tls13_signature};
use rustls::pki_types::{CertificateDer, ServerName, UnixTime};
use rustls::{ClientConfig, ClientConnection, DigitallySignedStruct, RootCertStore, SignatureScheme, StreamOwned};

use super::client::{Answer, answer, sha256};

/// Takes the certificate with these digits and no other.
#[derive(Debug)]
struct Pinned {
    sha256: String,
    provider: Arc<CryptoProvider>,
}

impl ServerCertVerifier for Pinned {
    fn verify_server_cert(
        &self,
        end: &CertificateDer<'_>,
        _: &[CertificateDer<'_>],
        _: &ServerName<'_>,
        _: &[u8],
        _: UnixTime,
    ) -> Result<ServerCertVerified, rustls::Error> {
        match sha256(end) == self.sha256 {
            true => Ok(ServerCertVerified::assertion()),
            false => Err(rustls::Error::General("another fingerprint".into())),
        }
    }

    fn verify_tls12_signature(
        &self,
        _: &[u8],
        _: &CertificateDer<'_>,
        _: &DigitallySignedStruct,
    ) -> Result<HandshakeSignatureValid, rustls::Error> {
        Err(rustls::Error::General("TLS 1.2".into()))
    }

    fn verify_tls13_signature(
        &self,
        message: &[u8],
        cert: &CertificateDer<'_>,
        signed: &DigitallySignedStruct,
    ) -> Result<HandshakeSignatureValid, rustls::Error> {
        verify_tls13_signature(message, cert, signed, &self.provider.signature_verification_algorithms)
    }

    fn supported_verify_schemes(&self) -> Vec<SignatureScheme> {
        self.provider.signature_verification_algorithms.supported_schemes()
    }
}

/// Whom a client trusts.
pub(crate) enum Trust<'a> {
    /// A fingerprint as the terminal shows it.
    Print(&'a str),
    /// A root in DER, as `/root.crt` gives it.
    Root(&'a [u8]),
}

fn config(trust: &Trust) -> ClientConfig {
    let provider = Arc::new(ring::default_provider());
    let builder = ClientConfig::builder_with_provider(Arc::clone(&provider))
        .with_protocol_versions(&[&rustls::version::TLS13])
        .unwrap();
    match trust {
        Trust::Print(print) => {
            let sha256 = print.replace(':', "").to_lowercase();
            let pinned = Pinned { sha256, provider };
            builder.dangerous().with_custom_certificate_verifier(Arc::new(pinned)).with_no_client_auth()
        }
        Trust::Root(der) => {
            let mut roots = RootCertStore::empty();
            roots.add(CertificateDer::from(der.to_vec())).unwrap();
            builder.with_root_certificates(roots).with_no_client_auth()
        }
    }
}

/// One request to `name` at an address; its bytes as they are.
pub(crate) fn ask(at: SocketAddr, name: &str, trust: &Trust, request: &str) -> io::Result<Answer> {
    let name = ServerName::try_from(name.to_owned()).unwrap();
    let client = ClientConnection::new(Arc::new(config(trust)), name).unwrap();
    let socket = TcpStream::connect(at)?;
    socket.set_read_timeout(Some(Duration::from_secs(20)))?;
    let mut stream = StreamOwned::new(client, socket);
    stream.write_all(request.as_bytes())?;
    let mut all = Vec::new();
    stream.read_to_end(&mut all)?;
    answer(&all).ok_or_else(|| io::Error::other("no answer"))
}

/// A page.
pub(crate) fn get(at: SocketAddr, name: &str, trust: &Trust, path: &str, cookie: &str) -> io::Result<Answer> {
    let request = format!(
        "GET {path} HTTP/1.1\r\nHost: {name}:{}\r\nAccept: text/html\r\nCookie: {cookie}\r\nConnection: close\r\n\r\n",
        at.port()
    );
    ask(at, name, trust, &request)
}
