//! A bay check for people: words, a map, a page.

mod map;
mod words;

pub use map::{bay_html, bay_svg};
pub use words::bay_text;
