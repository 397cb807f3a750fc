//! A photo's picture for people.

/// A photo's picture for people.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PhotoPicture {
    /// The photo's path as the record names it.
    pub file: String,
    /// The upright preview, JPEG.
    pub jpeg_bytes: Vec<u8>,
    /// Width of the preview, px.
    pub width: u32,
    /// Height of the preview, px.
    pub height: u32,
    /// Width of the stored picture, px.
    pub stored_width: u32,
    /// Height of the stored picture, px.
    pub stored_height: u32,
    /// EXIF orientation of the stored picture, 1 to 8.
    pub orientation: u8,
}
