//! From sightings to poses: both solutions of a flat body, who sees whom, one
//! least-squares adjustment over all photos, and the joint covariance.
//!
//! The order of the files is the order of the work: `views` is the question,
//! `homography`, `ippe`, `resection` and `link` give a start, `columns`,
//! `residual` and `normal` set up the equations, `adjust` solves them (`again` and
//! `snoop` look after what does not fit, `tremor` finds how unsteady the hand was), `scene`
//! is the answer (`prints` adds what no number of photos averages out); `score` and `bodies` ask it further questions, `slide` looks at sheets that were left out, `freed` asks anew with something set free, `astray` which print keeps photos from settling.

mod adjust;
mod again;
mod astray;
mod bodies;
mod columns;
mod expect;
mod extra;
mod foreseen;
mod freed;
mod homography;
mod inverse;
mod ippe;
mod link;
mod normal;
mod order;
mod prints;
mod resection;
mod residual;
mod scene;
mod score;
mod sides;
mod slide;
mod snoop;
mod source;
mod state;
mod station;
mod tremor;
mod unknowns;
mod views;
mod without;
mod work;

pub use adjust::{adjust, adjust_from, adjust_near};
pub use astray::astray;
pub use bodies::{BODY, Bodies};
pub use expect::{Presumed, expect};
pub use extra::Extra;
pub use foreseen::Foreseen;
pub use freed::{Freed, Resized};
pub use homography::homography;
pub use ippe::plane_poses;
pub use scene::{Scene, SolvedPhoto, SolvedView};
pub use score::ScoreTest;
pub use slide::Slide;
pub use source::Source;
pub use views::{EDGE_SIDE_PX, PhotoView, Problem, U_EDGE_BY_SIZE_PX, View, doubled};
pub use without::{Influence, LeftOut};
pub use work::Options;

use crate::words::{Phrase, phrase};

/// Why no scene could be made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Error {
    /// No photo shows a marker of the kit.
    NothingSeen {
        /// How many photos were looked at.
        photos: usize,
    },
    /// The adjustment did not settle.
    NotSettled {
        /// How many photos took part.
        photos: usize,
        /// Where it stuck.
        why: Unsettled,
    },
}

impl Error {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            Error::NothingSeen { photos } => phrase!("doors-pose-nothing-seen", photos = *photos),
            Error::NotSettled { photos, why } => {
                let why = match why {
                    Unsettled::FirstSolution => "first",
                    Unsettled::Singular => "singular",
                    Unsettled::NoCovariance => "covariance",
                };
                phrase!("doors-pose-unsettled", photos = *photos, why = why)
            }
        }
    }
}

/// Where an adjustment stuck.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unsettled {
    /// The first solution does not fit the photos.
    FirstSolution,
    /// The equations are singular.
    Singular,
    /// The covariance does not exist.
    NoCovariance,
}
