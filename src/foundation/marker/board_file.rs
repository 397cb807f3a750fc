//! Reading and writing boards (`board/1`).

use std::path::Path;

use crate::input::{Document, Error, SourceFile, Table, Writer};

use super::board::{Board, BoardKind};
use super::kit_file::{FAMILY, LAST_ID};
use crate::words::phrase;

const FORMAT: &str = "board/1";
const MOST: u32 = 200;
const LARGEST_MM: f64 = 2_000.0;

impl Board {
    /// Reads a board file from disk.
    ///
    /// # Errors
    /// Unreadable, or wrong in any way: names file, line, key and remedy.
    pub fn read(path: &Path) -> Result<Self, Error> {
        let file = SourceFile::read(path)?;
        Board::from_toml(file.text()?, file.name())
    }

    /// Reads a board file's text; `file` is its name for messages.
    ///
    /// # Errors
    /// Wrong in any way: names file, line, key and remedy.
    pub fn from_toml(text: &str, file: &str) -> Result<Self, Error> {
        let document = Document::parse(text, file, FORMAT)?;
        let root = document.root();
        let markers = root.need("kind")?.choice("board", &[("markers", true), ("chessboard", false)])?;
        let kind = if markers { read_markers(&root)? } else { read_chessboard(&root)? };
        let u_scale_relative = root.maybe("u_scale_relative", |v| v.uncertainty(0.1, ""))?.unwrap_or(0.0005);
        Ok(Board { kind, u_scale_relative })
    }

    /// The board file's text.
    pub fn to_toml(&self) -> String {
        let mut w = Writer::new(FORMAT);
        match &self.kind {
            BoardKind::Markers { columns, rows, first_id, size_mm, gap_mm } => {
                w.key("kind", "markers");
                w.key("family", FAMILY);
                w.key("columns", i64::from(*columns));
                w.key("rows", i64::from(*rows));
                w.key("first_id", i64::from(*first_id));
                w.key("size_mm", *size_mm);
                w.key("gap_mm", *gap_mm);
            }
            BoardKind::Chessboard { inner_corners, square_mm } => {
                w.key("kind", "chessboard");
                w.key("inner_corners", inner_corners.map(i64::from).to_vec());
                w.key("square_mm", *square_mm);
            }
        }
        w.key("u_scale_relative", self.u_scale_relative);
        w.finish()
    }
}

fn read_markers(root: &Table) -> Result<BoardKind, Error> {
    let root = root.clone().allow(&[
        "format",
        "kind",
        "family",
        "columns",
        "rows",
        "first_id",
        "size_mm",
        "gap_mm",
        "u_scale_relative",
    ])?;
    root.need("family")?.choice("family", &[(FAMILY, ())])?;
    let columns = root.need("columns")?.whole(1, MOST)?;
    let rows = root.need("rows")?.whole(1, MOST)?;
    let first_id = root.need("first_id")?.whole(0, LAST_ID)?;
    let last_id = first_id + columns * rows - 1;
    if last_id > LAST_ID {
        return Err(root.need("first_id")?.error(
            phrase!("doors-board-ids", columns = columns, rows = rows, first = first_id, last = last_id, end = LAST_ID),
            phrase!("doors-board-ids-remedy"),
        ));
    }
    Ok(BoardKind::Markers {
        columns,
        rows,
        first_id,
        size_mm: root.need("size_mm")?.positive(LARGEST_MM, "mm")?,
        gap_mm: root.need("gap_mm")?.positive(LARGEST_MM, "mm")?,
    })
}

fn read_chessboard(root: &Table) -> Result<BoardKind, Error> {
    let root = root.clone().allow(&["format", "kind", "inner_corners", "square_mm", "u_scale_relative"])?;
    Ok(BoardKind::Chessboard {
        inner_corners: root.need("inner_corners")?.array(|v| v.whole(2, MOST))?,
        square_mm: root.need("square_mm")?.positive(LARGEST_MM, "mm")?,
    })
}
