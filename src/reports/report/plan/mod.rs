//! A plan for people: words for the terminal, a drawing, a page.

mod drawing;
mod page;
mod sheet_page;
mod words;

pub use drawing::plan_svg;
pub use page::plan_html;
pub use sheet_page::{setup_html, setup_text};
pub use words::plan_text;
