//! Keys that sign, as people have them: a file of `ssh-keygen`, with or
//! without a passphrase, or one that an agent (or a token) holds.

use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use ssh_key::{PrivateKey, SshSig};

use super::signature::{HASH, NAMESPACE, Signature};

/// Asked for a passphrase with the key file's name; none: nobody can be asked.
pub type Passphrase<'a> = &'a dyn Fn(&Path) -> Option<String>;

/// A key that signs.
#[derive(Debug)]
pub enum Key {
    /// In memory.
    Private(Box<PrivateKey>),
    /// Named by its public half: `ssh-keygen` asks the agent or the token.
    Agent(PathBuf),
}

/// Why a key does not sign.
#[derive(Debug, thiserror::Error)]
pub enum KeyError {
    /// The file cannot be read.
    #[error("cannot read the key {path}: {source}")]
    Read {
        /// Which file.
        path: PathBuf,
        /// What the system said.
        source: std::io::Error,
    },
    /// The file holds no key.
    #[error(
        "{path} is no private key of ssh-keygen ({why}): name an ed25519 key, or its .pub file where an agent holds it"
    )]
    NoKey {
        /// Which file.
        path: PathBuf,
        /// What is wrong.
        why: String,
    },
    /// Another kind of key.
    #[error("{path} is a key of the kind {kind}: make one with `ssh-keygen -t ed25519`")]
    Kind {
        /// Which file.
        path: PathBuf,
        /// Its kind.
        kind: String,
    },
    /// It is locked.
    #[error(
        "the key {path} has a passphrase{why}: type it at a terminal, or add the key to the agent and name its .pub file"
    )]
    Locked {
        /// Which file.
        path: PathBuf,
        /// More, if anything.
        why: &'static str,
    },
    /// `ssh-keygen` did not sign.
    #[error("ssh-keygen does not sign with {path}: {why}")]
    Agent {
        /// The public key.
        path: PathBuf,
        /// What it said.
        why: String,
    },
    /// The cipher failed.
    #[error("cannot sign: {0}")]
    Sign(String),
}

impl Key {
    /// Reads a key file. A `.pub` file names a key that an agent holds.
    ///
    /// # Errors
    /// Not a key, of another kind, or locked.
    pub fn open(path: &Path, passphrase: Passphrase) -> Result<Self, KeyError> {
        if path.extension().is_some_and(|e| e == "pub") {
            return Ok(Key::Agent(path.to_path_buf()));
        }
        let text =
            std::fs::read_to_string(path).map_err(|source| KeyError::Read { path: path.to_path_buf(), source })?;
        let no_key = |e: ssh_key::Error| KeyError::NoKey { path: path.to_path_buf(), why: e.to_string() };
        let mut key = PrivateKey::from_openssh(&text).map_err(no_key)?;
        let locked = |why| KeyError::Locked { path: path.to_path_buf(), why };
        if key.is_encrypted() {
            let typed = passphrase(path).ok_or_else(|| locked(""))?;
            key = key.decrypt(typed).map_err(|_| locked(", and what was typed is not it"))?;
        }
        if !key.algorithm().is_ed25519() {
            return Err(KeyError::Kind { path: path.to_path_buf(), kind: key.algorithm().to_string() });
        }
        Ok(Key::Private(Box::new(key)))
    }

    /// The secret itself, for signatures of another form; none where an agent holds it.
    pub fn seed(&self) -> Option<[u8; 32]> {
        match self {
            Key::Private(key) => key.key_data().ed25519().map(|pair| pair.private.to_bytes()),
            Key::Agent(_) => None,
        }
    }

    /// Signs a message for an evidence folder.
    ///
    /// # Errors
    /// The key or the agent refuses.
    pub fn sign(&self, message: &[u8]) -> Result<Signature, KeyError> {
        let said = |e: ssh_key::Error| KeyError::Sign(e.to_string());
        match self {
            Key::Private(key) => {
                SshSig::sign(key.as_ref(), NAMESPACE, HASH, message).and_then(Signature::new).map_err(said)
            }
            Key::Agent(public) => by_ssh_keygen(public, message),
        }
    }
}

fn by_ssh_keygen(public: &Path, message: &[u8]) -> Result<Signature, KeyError> {
    let failed = |why: String| KeyError::Agent { path: public.to_path_buf(), why };
    let mut child = Command::new("ssh-keygen")
        .args(["-Y", "sign", "-n", NAMESPACE, "-f"])
        .arg(public)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .map_err(|e| failed(format!("it cannot be started ({e}); install the OpenSSH client")))?;
    if let Some(mut to) = child.stdin.take() {
        to.write_all(message).map_err(|e| failed(e.to_string()))?;
    }
    let output = child.wait_with_output().map_err(|e| failed(e.to_string()))?;
    if !output.status.success() {
        let said = String::from_utf8_lossy(&output.stderr);
        return Err(failed(format!("{}; is the key added to the agent (ssh-add)?", said.trim())));
    }
    Signature::read(&String::from_utf8_lossy(&output.stdout)).map_err(|why| failed(format!("its answer {why}")))
}
