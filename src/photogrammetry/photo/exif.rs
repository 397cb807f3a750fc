//! What a photo's own record says.

use time::{OffsetDateTime, PrimitiveDateTime};

use super::Orientation;

/// The EXIF values that a job needs; an absent or unreadable one is `None`.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Exif {
    /// Camera maker.
    pub make: Option<String>,
    /// Camera model.
    pub model: Option<String>,
    /// Focal length, mm.
    pub focal_length_mm: Option<f64>,
    /// Focal length for the same angle of view on 35 mm film, mm.
    pub focal_length_35mm: Option<f64>,
    /// Digital zoom ratio.
    pub digital_zoom: Option<f64>,
    /// How to turn the picture for people.
    pub orientation: Option<Orientation>,
    /// When it was taken, where the record holds the offset from UTC.
    pub taken: Option<OffsetDateTime>,
    /// The local time as written, where no offset is known: not checkable.
    pub taken_local: Option<String>,
    /// When it was taken by the satellites' clock (UTC), where they were received: no clock of the phone's own.
    pub satellites: Option<OffsetDateTime>,
    /// Pixel size that the record claims.
    pub pixel_size: Option<[u32; 2]>,
    /// Software that wrote or edited the file.
    pub software: Option<String>,
    /// What it holds that tells about people or things rather than the picture,
    /// in words; the values themselves are not read.
    pub private: Vec<&'static str>,
}

impl Exif {
    /// The local time as written, where the record states no offset from UTC.
    pub fn local_time(&self) -> Option<PrimitiveDateTime> {
        super::exif_time::local_time(self.taken_local.as_deref()?)
    }
}
