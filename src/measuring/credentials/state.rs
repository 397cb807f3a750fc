//! What a record says of one photo's content credentials.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::words::{Language, Phrase, Value, phrase};

/// How far a photo's content credentials go; a photo without any has no entry.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum State {
    /// Every hash and the signature hold, and a trust anchor vouches for the signer.
    Trusted,
    /// Every hash and the signature hold; nobody vouches for the signer.
    UnknownSigner,
    /// Every hash and the signature hold; the signer's certificate is not valid at the time that can be proven:
    /// that of a trusted timestamp, else that of the verification.
    Expired,
    /// The signer's certificate was revoked, as the manifest itself bears out.
    Revoked,
    /// A hash, an assertion or the signature does not hold, or the manifest cannot be read.
    Broken,
}

impl State {
    /// All, the best first.
    pub const ALL: [State; 5] = [State::Trusted, State::UnknownSigner, State::Expired, State::Revoked, State::Broken];

    /// The name in records.
    pub fn name(self) -> &'static str {
        ["trusted", "unknown_signer", "expired", "revoked", "broken"][self as usize]
    }

    /// Whether the photo's bytes are those that were signed, whoever signed them.
    pub fn holds(self) -> bool {
        self != State::Broken
    }
}

/// A photo's content credentials.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct Credentials {
    /// How far they go.
    pub state: State,
    /// Who signed, as the certificate has it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub signer: Option<String>,
    /// When it was signed, RFC 3339, by a timestamp in the manifest that holds and is trusted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub signed: Option<String>,
    /// The device or program that made the claim, as it calls itself.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub generator: Option<String>,
    /// What does not hold; the codes are those of the C2PA technical specification, section "Validation status codes".
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub failures: Vec<Failure>,
    /// First byte and length of each stretch that the hash over the file's bytes leaves out (the manifest itself).
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub not_hashed: Vec<[u64; 2]>,
    /// What was done to the picture, as the manifest itself lists it; what a camera does when it takes one is left out.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub edits: Vec<Edit>,
}

/// One part of a manifest that does not hold.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct Failure {
    /// `assertion.dataHash.mismatch`, ...
    pub code: String,
    /// The assertion, claim or signature that it is about, by its label.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub about: Option<String>,
}

/// One action that a manifest lists.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct Edit {
    /// `c2pa.color_adjustments`, ...
    pub action: String,
    /// When, as the manifest has it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub when: Option<String>,
    /// By which program, as the manifest has it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub program: Option<String>,
    /// Where the picture comes from, where that is no camera: the last part of the IPTC digital source type.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub source_type: Option<String>,
}

impl Credentials {
    /// Credentials whose manifest cannot be read.
    #[cfg(feature = "credentials")]
    pub(super) fn unreadable(code: &str) -> Self {
        let failures = vec![Failure { code: code.to_owned(), about: None }];
        Credentials {
            state: State::Broken,
            signer: None,
            signed: None,
            generator: None,
            failures,
            not_hashed: Vec::new(),
            edits: Vec::new(),
        }
    }

    /// Whether a sheet that requires credentials is content: a trusted signer, and no edit.
    pub fn suffice(&self) -> bool {
        self.state == State::Trusted && self.edits.is_empty()
    }

    /// The state with what there is to say of it.
    pub fn phrase(&self) -> Phrase {
        let signer = match &self.signer {
            Some(name) => Value::from(name),
            None => phrase!("verdict-credentials-nameless").into(),
        };
        match self.state {
            State::Broken => phrase!("verdict-credentials-broken", failures = self.failures_named()),
            state => phrase!("verdict-credentials-by", state = state.name(), signer = signer),
        }
    }

    /// The same in a language.
    pub fn say(&self, language: Language) -> String {
        self.phrase().say(language)
    }

    /// What does not hold: code, and what it is about.
    pub fn failures_named(&self) -> Vec<String> {
        let one = |f: &Failure| match &f.about {
            Some(about) => format!("{} ({about})", f.code),
            None => f.code.clone(),
        };
        self.failures.iter().map(one).collect()
    }

    /// The edits' names: action, and the program where one is named.
    pub fn edits_named(&self) -> Vec<String> {
        let one = |e: &Edit| {
            let beside: Vec<&str> = [&e.source_type, &e.program].into_iter().flatten().map(String::as_str).collect();
            if beside.is_empty() { e.action.clone() } else { format!("{} ({})", e.action, beside.join(", ")) }
        };
        self.edits.iter().map(one).collect()
    }

    /// Whether two readings of the same bytes say the same of the bytes; who is
    /// trusted and what has expired meanwhile are other questions.
    pub fn same_bytes(&self, other: &Credentials) -> bool {
        self.state.holds() == other.state.holds() && self.edits == other.edits && self.signer == other.signer
    }
}
