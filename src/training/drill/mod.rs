//! Drills: jobs with hidden misplacements, answered by a trainee, marked.

mod draw;
mod folder;
mod giving_back;
mod mark;
mod measures;
mod sealed;

pub use draw::LEVELS;
pub use folder::{Made, NewDrill, answer, answers, make};
pub use mark::{Marked, mark};
