//! What a photo's maker did to its light from place to place.
//!
//! Phones compress a scene's light: a gain that follows the blurred picture lifts the dark and lowers the
//! bright (F. Durand and J. Dorsey, Fast Bilateral Filtering for the Display of High-Dynamic-Range Images,
//! SIGGRAPH 2002). Around edges that gain runs from that of black to that of white, within some ten pixels: levels
//! run up to the edges and bend what shows where they lie (by .1 px). How it runs there nobody but
//! the maker knows; so each patch of a marker gets a gain, its slopes, and what white has beyond that, as unknowns with a
//! prior whose spread the marker's own residuals tell (`patches`).
//!
//! Gains that lift white reach the end of the scale. Behind them lies the curve of the display, steep in the dark and
//! flat near white; levels are kept as they would be without its shoulder, v = p (1 - c p^2), and
//! what is white to the end hardly says more than that (J. Tobin, Econometrica 26, 1958).

/// Full scale, grey levels.
const FULL: f32 = 255.0;
/// How much the shoulder bends: c of the text, for levels as shares of full scale. A highlight shoulder, sRGB's curve
/// and a mild S curve in a row bend like that (computed; phones differ).
const BEND: f32 = 0.135;
/// Least slope of the shoulder: beyond, it runs on straight.
const LEAST_SLOPE: f32 = 0.5;
/// From here on, grey levels are the end of the scale.
const END: f32 = 254.0;
/// From here on they may be: what comes after light was cut (noise reduction, sharpening, JPEG) scatters them.
/// Taken at their word they hold levels down beside edges, and corners seem to lie .02 px too far out.
pub(super) const NEAR_END: f32 = 250.0;

/// How well black and contrast are known where gains are unknowns (1 sigma, share of them), and of what at least,
/// grey levels.
const HELD_SHARE: f64 = 0.05;
const LEAST_HELD: f64 = 10.0;

/// How a marker's light was changed from patch to patch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Gain {
    /// Standard deviation of the gain's logarithm.
    pub(super) spread: f32,
    /// Grey levels of black and contrast as found in the photo as a whole, without its shoulder: what is white to
    /// the end would let them run away.
    pub(super) held: [f64; 2],
}

impl Gain {
    /// The prior of black and contrast: index among the light's parameters, weight, and weight times how far
    /// they are off.
    pub(super) fn prior(&self, light: &[f64; 6]) -> [(usize, f64, f64); 2] {
        [(0, self.held[0]), (3, self.held[1])].map(|(k, held)| {
            let weight = (HELD_SHARE * held.abs().max(LEAST_HELD)).powi(-2);
            (k, weight, weight * (held - light[k]))
        })
    }
}

/// A level's grey and its slope: what is seen of it.
pub(super) fn shoulder(level: f32) -> (f32, f32) {
    let x = level / FULL;
    let end = ((1.0 - LEAST_SLOPE) / (3.0 * BEND)).sqrt();
    let kept = x.clamp(0.0, end);
    let slope = 1.0 - 3.0 * BEND * kept * kept;
    (FULL * (kept * (1.0 - BEND * kept * kept) + slope * (x - kept)), slope)
}

/// What a pixel's grey says about its level: the residual and the slope, of which only the share `beyond` counts
/// where both are near the end of the scale (none, and levels would run away).
pub(super) fn seen(level: f32, grey: f32, beyond: f32) -> (f32, f32) {
    let (expected, slope) = shoulder(level);
    if grey < NEAR_END {
        (grey - expected, slope)
    } else if expected < NEAR_END {
        (NEAR_END - expected, slope)
    } else {
        ((grey - expected) * beyond, slope * beyond)
    }
}

/// Likewise before anything is known of a shoulder: none where both are the end of the scale.
pub(super) fn seen_plainly(level: f32, grey: f32) -> (f32, f32) {
    if grey >= END && level >= grey { (0.0, 0.0) } else { (grey - level, 1.0) }
}

/// The level behind a grey.
pub(super) fn without_shoulder(grey: f64) -> f64 {
    // The shoulder is monotonous, its slope at least LEAST_SLOPE: Newton's steps settle.
    (0..8).fold(grey, |level, _| {
        let (expected, slope) = shoulder(level as f32);
        level + (grey - f64::from(expected)) / f64::from(slope)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_shoulder_runs_on_and_turns_back() {
        for i in -20..400 {
            let level = i as f32;
            let (grey, slope) = shoulder(level);
            let numeric = (shoulder(level + 0.5).0 - shoulder(level - 0.5).0) / 1.0;
            assert!((numeric - slope).abs() < 0.01, "{level}: {numeric} {slope}");
            assert!((without_shoulder(f64::from(grey)) - f64::from(level)).abs() < 0.01, "{level}");
        }
    }

    /// A shoulder exp(-x) above 70 % light, IEC 61966-2-1's curve, and a third of an S curve, computed here.
    #[test]
    fn the_shoulder_is_that_of_a_display_curve() {
        let display = |x: f64| {
            let x = if x > 0.7 { 0.7 + 0.3 * (1.0 - (-(x - 0.7) / 0.3).exp()) / (1.0 - (-1.0f64).exp()) } else { x };
            let y = 1.055 * x.powf(1.0 / 2.4) - 0.055;
            y + 0.35 * (y * y * (3.0 - 2.0 * y) - y)
        };
        // Levels that are a power of light, of the same slope in the dark.
        let level = |x: f64| display(0.1) / (1.0 - 0.135 * 0.33f64.powi(2)) * (x / 0.1).powf(0.6);
        for x in [0.1, 0.3, 0.5, 0.7, 0.8] {
            let (grey, _) = shoulder((255.0 * level(x)) as f32);
            assert!((f64::from(grey) / 255.0 - display(x)).abs() < 0.03, "{x}: {grey} {}", 255.0 * display(x));
        }
    }

    #[test]
    fn what_is_white_to_the_end_hardly_says_more() {
        let ((whole, slope), (part, less)) = (seen(400.0, 255.0, 1.0), seen(400.0, 255.0, 0.1));
        assert!(whole < -20.0 && (part - 0.1 * whole).abs() < 1e-4 && (less - 0.1 * slope).abs() < 1e-6);
        assert_eq!(seen_plainly(400.0, 255.0), (0.0, 0.0));
        // Levels below the end are lifted up to it, whatever scattered the grey; greys below it count in full.
        assert!(seen(200.0, 255.0, 0.1).0 > 50.0 && seen(200.0, 255.0, 0.1) == seen(200.0, 251.0, 0.1));
        assert!(seen(400.0, 200.0, 0.1).0 < -50.0);
    }
}
