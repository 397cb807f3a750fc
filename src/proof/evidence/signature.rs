//! SSHSIG signatures (OpenSSH `PROTOCOL.sshsig`), ed25519.

use ssh_key::{HashAlg, LineEnding, PublicKey, SshSig};

use crate::words::{Phrase, phrase};

/// What a signature of an evidence folder is for: `ssh-keygen -Y verify -n` takes this name.
pub const NAMESPACE: &str = "baywitness-evidence";
pub(super) const HASH: HashAlg = HashAlg::Sha512;

/// A signature over a tag manifest.
#[derive(Debug, Clone)]
pub struct Signature {
    pem: String,
    parsed: SshSig,
}

impl Signature {
    pub(super) fn new(parsed: SshSig) -> Result<Self, ssh_key::Error> {
        Ok(Signature { pem: parsed.to_pem(LineEnding::LF)?, parsed })
    }

    /// The signature file's text.
    pub(super) fn pem(&self) -> &str {
        &self.pem
    }

    /// Reads a signature file; it must be spelled as `ssh-keygen` and this
    /// program spell it, so that no change of it goes unseen.
    ///
    /// # Errors
    /// What is wrong.
    pub fn read(text: &str) -> Result<Self, Phrase> {
        let none = |e: ssh_key::Error| phrase!("evidence-signature-none", why = e.to_string());
        let parsed = SshSig::from_pem(text).map_err(none)?;
        let signature = Signature::new(parsed).map_err(none)?;
        let same = |a: &str, b: &str| a.lines().collect::<String>() == b.lines().collect::<String>();
        if !same(signature.pem.trim_end(), text.trim_end()) || text.trim_end().len() + 1 != text.len() {
            return Err(phrase!("evidence-signature-spelling"));
        }
        Ok(signature)
    }

    /// The key that signed.
    pub fn key(&self) -> PublicKey {
        PublicKey::new(self.parsed.public_key().clone(), "")
    }

    /// The key's fingerprint as OpenSSH shows it (`SHA256:...`).
    pub fn fingerprint(&self) -> String {
        self.key().fingerprint(HashAlg::Sha256).to_string()
    }

    /// Whether it is a true signature of a message, for evidence folders.
    ///
    /// # Errors
    /// What is wrong.
    pub fn check(&self, message: &[u8]) -> Result<(), Phrase> {
        if self.parsed.namespace() != NAMESPACE {
            return Err(phrase!("evidence-signature-purpose", namespace = self.parsed.namespace(), own = NAMESPACE));
        }
        if !self.parsed.algorithm().is_ed25519() {
            return Err(phrase!("evidence-signature-kind", kind = self.parsed.algorithm().to_string()));
        }
        self.key().verify(NAMESPACE, message, &self.parsed).map_err(|_| phrase!("evidence-signature-bytes"))
    }
}
