//! A sensor that measures one colour per pixel, and the interpolation of the others.

use rayon::prelude::*;

use crate::synth::trace::Light;

/// Filters of five by five (times sixteen), by Malvar, He and Cutler
/// (High-quality linear interpolation for demosaicing of Bayer-patterned color
/// images, 2004, figure 2): green at red or blue; the colour of the row's
/// neighbours at green; red at blue and blue at red.
const GREEN: [i8; 25] = [0, 0, -2, 0, 0, 0, 0, 4, 0, 0, -2, 4, 8, 4, -2, 0, 0, 4, 0, 0, 0, 0, -2, 0, 0];
const BESIDE: [i8; 25] = [0, 0, 1, 0, 0, 0, -2, 0, -2, 0, -2, 8, 10, 8, -2, 0, -2, 0, -2, 0, 0, 0, 1, 0, 0];
const OPPOSITE: [i8; 25] = [0, 0, -3, 0, 0, 0, 4, 0, 4, 0, -3, 0, 12, 0, -3, 0, 4, 0, 4, 0, 0, 0, -3, 0, 0];

/// Full scale: what is brighter is cut off before anything is interpolated.
const FULL: f32 = 1.0;

/// Measures red, green, green and blue in turn (Bayer 1976, RGGB) and interpolates.
pub(super) fn mosaic(light: &mut Light) {
    let (width, height) = (light.width, light.height);
    if width < 5 || height < 5 {
        return;
    }
    let colour = |u: usize, v: usize| u % 2 + v % 2;
    let raw: Vec<f32> =
        (0..width * height).into_par_iter().map(|i| light.rgb[i][colour(i % width, i / width)].min(FULL)).collect();
    // The column's neighbours: the row's filter turned by a quarter.
    let below: [i8; 25] = std::array::from_fn(|i| BESIDE[i % 5 * 5 + i / 5]);
    light.rgb.par_chunks_mut(width).enumerate().for_each(|(v, line)| {
        let rows = [0, 1, 2, 3, 4].map(|k| &raw[mirrored(v, k, height) * width..][..width]);
        for (u, out) in line.iter_mut().enumerate() {
            let columns = [0, 1, 2, 3, 4].map(|k| mirrored(u, k, width));
            let window: [f32; 25] = std::array::from_fn(|i| rows[i / 5][columns[i % 5]]);
            let filtered =
                |filter: &[i8; 25]| window.iter().zip(filter).map(|(x, w)| x * f32::from(*w)).sum::<f32>() / 16.0;
            let own = window[12];
            *out = match (u % 2, v % 2) {
                (0, 0) => [own, filtered(&GREEN), filtered(&OPPOSITE)],
                (1, 0) => [filtered(&BESIDE), own, filtered(&below)],
                (0, _) => [filtered(&below), own, filtered(&BESIDE)],
                _ => [filtered(&OPPOSITE), filtered(&GREEN), own],
            };
        }
    });
}

/// The place two before `p + k`; beyond an edge mirrored about its last pixel, which keeps the colours' order.
fn mirrored(p: usize, k: usize, n: usize) -> usize {
    let place = (p + k).abs_diff(2);
    if place >= n { 2 * (n - 1) - place } else { place }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn picture(width: usize, height: usize, value: impl Fn(f32, f32) -> [f32; 3]) -> Light {
        let rgb = (0..width * height).map(|i| value((i % width) as f32, (i / width) as f32)).collect();
        Light { width, height, rgb }
    }

    #[test]
    fn filters_are_the_papers() {
        // Figure 2 there, in eighths; ours are sixteenths. Each sums to one.
        for filter in [GREEN, BESIDE, OPPOSITE] {
            assert_eq!(filter.iter().map(|w| i32::from(*w)).sum::<i32>(), 16);
        }
        assert_eq!((GREEN[12], BESIDE[12], OPPOSITE[12]), (8, 10, 12));
    }

    #[test]
    fn even_colours_and_grey_ramps_come_back_exactly() {
        let mut light = picture(22, 18, |_, _| [0.2, 0.5, 0.7]);
        mosaic(&mut light);
        assert!(
            light
                .rgb
                .iter()
                .all(|c| (c[0] - 0.2).abs() < 1e-6 && (c[1] - 0.5).abs() < 1e-6 && (c[2] - 0.7).abs() < 1e-6)
        );
        let ramp = |u: f32, v: f32| [0.1 + 0.011 * u + 0.017 * v; 3];
        let mut light = picture(22, 18, ramp);
        mosaic(&mut light);
        for v in 2..16usize {
            for u in 2..20usize {
                let [wanted, ..] = ramp(u as f32, v as f32);
                assert!(light.rgb[v * 22 + u].iter().all(|c| (c - wanted).abs() < 1e-6), "{u} {v}");
            }
        }
    }

    #[test]
    fn a_fine_edge_gets_false_colour_and_saturation_is_cut_first() {
        let mut light = picture(24, 24, |u, _| [if u < 11.0 { 0.1 } else { 0.8 }; 3]);
        mosaic(&mut light);
        let spread = |c: &[f32; 3]| c.iter().fold(0.0f32, |a, b| a.max(*b)) - c.iter().fold(1.0f32, |a, b| a.min(*b));
        assert!(light.rgb.iter().map(spread).fold(0.0, f32::max) > 0.05);
        let far = |i: &usize| (i % 24) < 7 || (i % 24) > 15;
        assert!((0..576).filter(far).all(|i| spread(&light.rgb[i]) < 1e-6));
        let mut light = picture(12, 12, |_, _| [3.0; 3]);
        mosaic(&mut light);
        assert!(light.rgb.iter().flatten().all(|c| (c - 1.0).abs() < 1e-6));
    }
}
