//! What is read and printed: reports as text, HTML and PDF, the customer's page,
//! the sheets of a kit. All of it is made from records; nothing here measures.

use baywitness_measuring::{credentials, folder, geom, input, marker, num, photo, quantity, record, setup, verdict};
pub(crate) use baywitness_words as words;

pub mod report;
pub mod sheet;
pub(crate) mod typeface;
