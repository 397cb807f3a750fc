//! Finding the board in photos.

use std::path::PathBuf;

use rayon::prelude::*;

use super::Error;
use super::seen::BoardPhoto;
use super::target::Target;
use crate::detect::find_markers;
use crate::marker::{Board, BoardKind, Dictionary};
use crate::photo;

/// Reads all photos and finds the board's elements in them, in their order.
///
/// # Errors
/// A photo that can't be read, or a kind of board that can't be found.
pub fn look(board: &Board, photos: &[PathBuf]) -> Result<Vec<BoardPhoto>, Error> {
    if matches!(board.kind, BoardKind::Chessboard { .. }) {
        return Err(Error::Chessboard);
    }
    let target = Target::new(board);
    let one = |path: &PathBuf| -> Result<BoardPhoto, Error> {
        let photo = photo::read(path)?;
        let sightings = find_markers(&photo.luma, Dictionary::tag36h11());
        let size_px = [photo.width as u32, photo.height as u32];
        Ok(BoardPhoto::of_markers(&path.display().to_string(), size_px, photo.exif, &target, &sightings))
    };
    photos.par_iter().map(one).collect()
}
