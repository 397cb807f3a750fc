//! Keys that sign, as people have them: a file of `ssh-keygen`, with or
//! without a passphrase, or one that an agent (or a token) holds.

use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use ssh_key::{PrivateKey, SshSig};

use super::cannot;
use super::signature::{HASH, NAMESPACE, Signature};
use crate::words::{Language, Phrase, phrase};

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
#[error("{}", self.phrase().say(Language::English))]
pub enum KeyError {
    /// The file cannot be read.
    Read {
        /// Which file.
        path: PathBuf,
        /// What the system said.
        source: std::io::Error,
    },
    /// The file holds no key.
    NoKey {
        /// Which file.
        path: PathBuf,
        /// What is wrong.
        why: String,
    },
    /// Another kind of key.
    Kind {
        /// Which file.
        path: PathBuf,
        /// Its kind.
        kind: String,
    },
    /// It is locked.
    Locked {
        /// Which file.
        path: PathBuf,
        /// Whether something was typed that is not the passphrase.
        wrong: bool,
    },
    /// `ssh-keygen` did not sign.
    Agent {
        /// The public key.
        path: PathBuf,
        /// What it said.
        why: Phrase,
    },
    /// The cipher failed.
    Sign(String),
}

impl KeyError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            KeyError::Read { path, source } => cannot("key", path, source),
            KeyError::NoKey { path, why } => {
                phrase!("evidence-key-none", path = path.display().to_string(), why = why)
            }
            KeyError::Kind { path, kind } => {
                phrase!("evidence-key-kind", path = path.display().to_string(), kind = kind)
            }
            KeyError::Locked { path, wrong } => {
                let typed = if *wrong { "wrong" } else { "nothing" };
                phrase!("evidence-key-locked", path = path.display().to_string(), typed = typed)
            }
            KeyError::Agent { path, why } => {
                phrase!("evidence-key-agent", path = path.display().to_string(), why = why.clone())
            }
            KeyError::Sign(why) => phrase!("evidence-key-sign", why = why),
        }
    }
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
        let locked = |wrong| KeyError::Locked { path: path.to_path_buf(), wrong };
        if key.is_encrypted() {
            let typed = passphrase(path).ok_or_else(|| locked(false))?;
            key = key.decrypt(typed).map_err(|_| locked(true))?;
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
    let failed = |why: Phrase| KeyError::Agent { path: public.to_path_buf(), why };
    let mut child = Command::new("ssh-keygen")
        .args(["-Y", "sign", "-n", NAMESPACE, "-f"])
        .arg(public)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .map_err(|e| failed(phrase!("evidence-key-not-started", why = e.to_string())))?;
    if let Some(mut to) = child.stdin.take() {
        to.write_all(message).map_err(|e| failed(phrase!("evidence-said", why = e.to_string())))?;
    }
    let output = child.wait_with_output().map_err(|e| failed(phrase!("evidence-said", why = e.to_string())))?;
    if !output.status.success() {
        let said = String::from_utf8_lossy(&output.stderr);
        return Err(failed(phrase!("evidence-key-refused", why = said.trim())));
    }
    Signature::read(&String::from_utf8_lossy(&output.stdout))
        .map_err(|why| failed(phrase!("evidence-key-answer", why = why)))
}
