//! Reading and writing surveyed layouts (`layout/1`, JSON).

use std::collections::BTreeSet;

use nalgebra::DMatrix;
use serde::{Deserialize, Serialize};

use crate::input::{self, Error, Place, SourceFile};

use super::kit::{Kit, Layout};
use crate::words::{Phrase, phrase};

const FORMAT: &str = "layout/1";

/// A covariance over a hundred markers takes about 8 MB.
pub const MAX_LAYOUT_BYTES: u64 = 64 * 1024 * 1024;

/// The file as it is written. Unknown keys are ignored, as in every JSON
/// result: a later version may add some.
#[derive(Debug, Serialize, Deserialize)]
struct LayoutFile {
    format: String,
    #[serde(alias = "rig_sha256")]
    kit_sha256: String,
    ids: Vec<u32>,
    covariance: Vec<Vec<f64>>,
    /// Optional: likewise with each marker's relative size as seventh value.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    covariance_with_sizes: Option<Vec<Vec<f64>>>,
}

/// Reads the layout of a kit. Markers that it does not list keep the kit's
/// `u_layout_mm`.
///
/// # Errors
/// Not such a file, not that of this kit file, ids that the kit does not have,
/// or a covariance that no errors can have.
pub fn read_layout(file: &SourceFile, kit: &Kit, kit_sha256: &str) -> Result<Layout, Error> {
    let text = file.text()?;
    let wrong =
        |key: &str, problem: Phrase| Error::new(file.name(), problem, phrase!("doors-layout-remedy")).key_path(key);
    let read: LayoutFile = serde_json::from_str(text).map_err(|e| {
        let place = Place { line: e.line().max(1), column: e.column().max(1) };
        let message = e.to_string();
        let message = message.split(" at line ").next().unwrap_or_default();
        wrong("", phrase!("doors-no-layout", why = message)).at(Some(place))
    })?;
    let wrong = |key: &str, problem: Phrase| {
        let offset = text.find(&format!("\"{key}\"")).unwrap_or(0);
        wrong(key, problem).at(Some(Place::of_offset(text, offset)))
    };
    if read.format != FORMAT {
        let shown: String = read.format.chars().take(40).collect();
        return Err(wrong("format", phrase!("doors-format-other", found = shown, wanted = FORMAT)));
    }
    if !read.kit_sha256.eq_ignore_ascii_case(kit_sha256) {
        return Err(wrong("kit_sha256", phrase!("doors-layout-other-kit")));
    }
    let mut seen = BTreeSet::new();
    for id in &read.ids {
        if kit.marker(*id).is_none() {
            return Err(wrong("ids", phrase!("doors-layout-no-marker", id = *id)));
        }
        if !seen.insert(id) {
            return Err(wrong("ids", phrase!("doors-layout-twice", id = *id)));
        }
    }
    let covariance =
        input::covariance(&read.covariance, 6 * read.ids.len()).map_err(|problem| wrong("covariance", problem))?;
    let with_sizes = read
        .covariance_with_sizes
        .map(|rows| input::covariance(&rows, 7 * read.ids.len()))
        .transpose()
        .map_err(|problem| wrong("covariance_with_sizes", problem))?;
    Ok(Layout { ids: read.ids, covariance, with_sizes })
}

impl Layout {
    /// The layout file's text for the kit file with this SHA-256.
    pub fn to_json(&self, kit_sha256: &str) -> String {
        let rows = |matrix: &DMatrix<f64>| matrix.row_iter().map(|row| row.iter().copied().collect()).collect();
        let file = LayoutFile {
            format: FORMAT.to_owned(),
            kit_sha256: kit_sha256.to_owned(),
            ids: self.ids.clone(),
            covariance: rows(&self.covariance),
            covariance_with_sizes: self.with_sizes.as_ref().map(rows),
        };
        // Numbers and texts always serialise; a covariance is finite by construction.
        serde_json::to_string(&file).unwrap_or_default()
    }
}
