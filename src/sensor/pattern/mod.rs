//! A sensor's own pattern: photo response non-uniformity.
//!
//! | file | from | to |
//! |---|---|---|
//! | `residual` | a photo | what a denoising filter takes away |
//! | `estimate` | residuals of one camera's photos | its pattern |
//! | `digest` | a pattern | its largest signs, in at most a megabyte |
//! | `correlate` | residual and digest | correlation by shift, peak-to-correlation energy |
//! | `search` | a photo and a digest | the best place: turned, cropped, a little scaled |
//! | `verdict` | what several digests gave | this camera, another one, can't tell |
//!
//! Values are display luma, 0 to 255; places are pixels of the stored grid,
//! right and down from its first pixel.

mod correlate;
mod digest;
mod error;
mod estimate;
mod fourier;
mod plane;
mod residual;
mod search;
mod verdict;

pub use digest::{Digest, LIMIT_BYTES};
pub use error::Error;
pub use estimate::{Estimate, LEAST_PHOTOS};
pub use plane::{Grey, Plane};
pub use residual::{filtered, residual};
pub use search::{Found, MATCH_PCE, Search, find};
pub use verdict::{Doubt, MEASURED_CHANCE, Says, judge};
