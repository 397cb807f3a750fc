//! What people read: the terminal text, the self-contained HTML report, the
//! PDF and the customer's page.
//!
//! All are pure functions of a [`JobRecord`](crate::record::JobRecord): the
//! caller reads photos and writes files. Words are the trade's (squareness,
//! tilt, level, centring), a signed value is always shown with its direction
//! in words, and no meaning is carried by colour alone.

#[cfg(feature = "parquet")]
mod archive_table;
mod bay;
mod cell;
mod clean;
mod customer;
mod figures;
mod html;
mod icons;
mod label;
mod named;
mod pdf;
mod pictures;
mod plan;
mod procedure;
mod side;
mod text;
mod todo;
mod training;
mod trends;

#[cfg(feature = "parquet")]
pub use archive_table::{ArchiveTable, TableError, table_quantities};
pub use bay::{bay_html, bay_svg, bay_text};
pub use cell::table_cell;
pub use customer::{by_series, customer_html, file_stem, series_html, stem};
pub use html::{ArchiveLog, ArchiveRow, PhotoPicture, archive_end, archive_row, archive_start, html};
pub use html::{colours_css, verdict_class, verdict_symbol};
pub use icons::{move_icon, unmeasured_symbol};
pub use pdf::{PdfError, digest, pdf, pdf_saying};
pub use pictures::{PictureError, pictures, small_jpeg};
pub use plan::{plan_html, plan_svg, plan_text, setup_html, setup_text};
pub use side::{Side, side};
pub use text::{TextOptions, text};
pub use todo::{move_is_held, repeats_a_check};
pub use training::{drill_text, gallery_html, progress_html};
pub use trends::{effect_words, trends_csv, trends_html};
