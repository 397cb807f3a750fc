//! Statistics of an archive for people: one page, one table.

mod charts;
mod csv;
mod draw;
mod lists;
mod page;
mod words;

pub use csv::trends_csv;
pub use page::trends_html;
pub use words::effect_words;
