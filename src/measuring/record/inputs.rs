//! The files of a job: those that were read and those that are kept with it.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A file that was read.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct InputRecord {
    /// job, setup, kit, layout, camera, stand, photo or attachment.
    #[serde(deserialize_with = "present_role")]
    pub role: String,
    /// Path as the job names it.
    pub file: String,
    /// Where a name was found, when it is not a file of the job folder.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub found_in: Option<String>,
    /// SHA-256 of the bytes, lower-case hex.
    pub sha256: String,
}

impl InputRecord {
    /// SHA-256 of a job's photos, sorted.
    pub fn of_photos(inputs: &[InputRecord]) -> Vec<&str> {
        let mut photos: Vec<&str> = inputs.iter().filter(|i| i.role == "photo").map(|i| i.sha256.as_str()).collect();
        photos.sort_unstable();
        photos
    }
}

/// Records of before 0.2 call a kit's role `rig`.
fn present_role<'de, D: serde::Deserializer<'de>>(deserializer: D) -> Result<String, D::Error> {
    String::deserialize(deserializer).map(|role| if role == "rig" { "kit".to_owned() } else { role })
}

/// A kept file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct AttachmentRecord {
    /// Path as the job names it.
    pub file: String,
    /// Its kind.
    pub kind: String,
    /// SHA-256 of the bytes.
    pub sha256: String,
}
