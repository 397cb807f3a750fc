//! Finding the board in photos.

use std::path::PathBuf;

use rayon::prelude::*;

use super::Error;
use super::chessboard;
use super::seen::BoardPhoto;
use super::target::Target;
use crate::detect::find_markers;
use crate::marker::{Board, BoardKind, Dictionary};
use crate::photo;

/// Reads all photos and finds the board's elements in them, in their order.
///
/// # Errors
/// A photo that can't be read.
pub fn look(board: &Board, photos: &[PathBuf]) -> Result<Vec<BoardPhoto>, Error> {
    let target = Target::new(board);
    let one = |path: &PathBuf| -> Result<BoardPhoto, Error> {
        let photo = photo::read(path)?;
        let file = path.display().to_string();
        let size_px = [photo.width as u32, photo.height as u32];
        if let BoardKind::Chessboard { inner_corners, .. } = board.kind {
            let corners = chessboard::find(&photo.luma, inner_corners).unwrap_or_default();
            return Ok(BoardPhoto::of_corners(&file, size_px, photo.exif, &corners));
        }
        let sightings = find_markers(&photo.luma, Dictionary::tag36h11());
        Ok(BoardPhoto::of_markers(&file, size_px, photo.exif, &target, &sightings))
    };
    photos.par_iter().map(one).collect()
}
