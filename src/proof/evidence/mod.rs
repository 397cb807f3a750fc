//! The evidence folder: a job's bytes, result and report as a BagIt bag
//! (RFC 8493, SHA-512), signed over its tag manifest (SSHSIG, as OpenSSH makes
//! and checks it), stamped by an authority where wanted (RFC 3161).
//!
//! A report as PDF may bear a signature of its own, which any reader of PDF shows (`pades`).
//!
//! Writing and checking are apart: [`seal`] makes a folder of given contents,
//! [`inspect`] looks at a folder that may be anything and trusts nothing in it.
//! What the contents mean (does the result follow from the photos?) is for the
//! `job` room to say.

mod bag_path;
mod index;
mod inspect;
mod inspection;
mod key;
mod manifest;
mod one_file;
mod pades;
mod place;
mod redacted;
mod seal;
mod several;
mod signature;
mod signed_data;
mod signers;
mod small_file;
mod timestamp;

use crate::words::{Phrase, phrase};

pub use bag_path::{BagPath, PathProblem};
pub use index::inspect_index;
pub use inspect::{inspect, is_evidence};
pub use inspection::{Inspection, Item, Outcome};
pub use key::{Key, KeyError, Passphrase};
pub use manifest::Manifest;
pub(crate) use one_file::MOST_ONE_FILE;
pub use one_file::{OneFileError, holds_evidence, is_one_file, pack, repack, unpack};
pub use pades::{
    Certificates, Earlier, Identity, OwnCertificate, PadesError, Problem, SignedPdf, Standing, is_pdf, own_certificate,
    sign_pdf,
};
pub use place::find_sealed_job;
pub(crate) use place::{MOST_UP, joined, sealed_job};
pub(crate) use redacted::copy_info;
pub use redacted::{REDACTION, Redaction, SEALED};
pub use seal::{Answer, Bytes, Contents, SealError, seal};
pub(crate) use seal::{SIZE, info_text, label_text};
pub use several::seal_several;
pub use signature::{NAMESPACE, Signature};
pub use signers::{Signer, Signers, SignersError};
pub(crate) use small_file::{MOST_FILE, MOST_MANIFEST, MOST_SMALL, read_result, read_small};
pub use timestamp::{
    Authorities, AuthoritiesError, Distrust, StampError, Token, TokenError, newest_token, stamp, stamp_request,
};

/// That something cannot be done with a file: `read`, `write`, `make` (a folder), `rename`, `remove`, `lock`,
/// `protect`, `key` (read one), `random` (get random numbers for it).
pub(crate) fn cannot(doing: &str, path: &std::path::Path, why: &std::io::Error) -> Phrase {
    phrase!("evidence-cannot", doing = doing, path = path.display().to_string(), why = why.to_string())
}

/// Files of the folder that are not payload.
pub(crate) const BAGIT: &str = "bagit.txt";
pub(crate) const BAG_INFO: &str = "bag-info.txt";
pub(crate) const MANIFEST: &str = "manifest-sha512.txt";
pub(crate) const TAG_MANIFEST: &str = "tagmanifest-sha512.txt";
/// The signature over the tag manifest.
pub const SIGNATURE: &str = "tagmanifest-sha512.txt.sig";
/// What the tag manifest lists, and nothing else.
pub(crate) const TAG_FILES: [&str; 3] = [BAGIT, BAG_INFO, MANIFEST];
/// The index of the evidence folders of one repair order, and the signature over it.
pub const INDEX: &str = "index-sha512.txt";
/// See [`INDEX`].
pub const INDEX_SIGNATURE: &str = "index-sha512.txt.sig";
/// The page of a repair order beside its evidence folders.
pub const ORDER_PAGE: &str = "repair-order.html";
/// The result in the payload.
pub(crate) const RESULT: &str = "result.json";
/// The payload folder.
pub const PAYLOAD: &str = "data";
/// What `bagit.txt` of a bag of version 1.0 says.
pub(crate) const DECLARATION: &str = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";
