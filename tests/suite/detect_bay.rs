//! The detector on rendered bay photos with exact truth (an independent renderer's; skipped
//! where the photos are absent). `BAY_EVERY=1` takes all photos, `BAY_ONLY=text` some.
#![allow(clippy::print_stderr, reason = "the table is the point")]

use crate::detect_support::{Score, bay_photos, load, shared_photos, strays};
use baywitness::detect::find_markers;
use baywitness::marker::Dictionary;

#[test]
fn corners_on_bay_photos() {
    let Some(shared) = shared_photos() else { return };
    let only = std::env::var("BAY_ONLY").unwrap_or_default();
    let every = std::env::var("BAY_EVERY").ok().and_then(|s| s.parse().ok()).unwrap_or(6);
    let sizes = [20.0, 40.0, 60.0, 90.0, 130.0, 200.0, 1000.0];
    let mut scores = vec![Score::default(); sizes.len()];
    let mut all = Score::default();
    let (mut stray, mut seconds, mut photos) = (0, 0.0, 0);
    let special = |job: &str| ["motion_blur", "digital_zoom"].contains(&job);
    let chosen = bay_photos(&shared).into_iter().filter(|p| p.path.to_string_lossy().contains(&only));
    for photo in chosen.step_by(every) {
        let luma = load(&photo.path);
        let clock = std::time::Instant::now();
        let found = find_markers(&luma, Dictionary::tag36h11());
        seconds += clock.elapsed().as_secs_f64();
        photos += 1;
        let mut own = Score::default();
        own.add(&photo.markers, &found, |m| m.visible > 0.99);
        let strays = strays(&photo.markers, &found);
        stray += strays.len();
        for marker in photo.markers.iter().filter(|m| m.visible > 0.99) {
            let mut one = Score::default();
            one.add(std::slice::from_ref(marker), &found, |_| true);
            if one.found == 0 || one.worst > 0.1 {
                let tilt = marker.facing.acos().to_degrees();
                eprintln!(
                    "  id {} of {:.0} px, tilted by {tilt:.0} deg: {one} {:.1?}",
                    marker.id,
                    marker.side,
                    marker.corners.map(|c| (c.x, c.y))
                );
            }
        }
        let name = photo.path.file_stem().unwrap_or_default().to_string_lossy();
        let (offset, blur) = (found.edge_offset_px, found.blur_px);
        eprintln!("{:16} {name:9} {own}, offset {offset:+.2} blur {blur:.2} stray {strays:?}", photo.job);
        if !special(&photo.job) {
            all.add(&photo.markers, &found, |m| m.visible > 0.99 && m.side >= 40.0);
            for (score, range) in scores.iter_mut().zip(sizes.windows(2)) {
                score.add(&photo.markers, &found, |m| m.visible > 0.99 && (range[0]..range[1]).contains(&m.side));
            }
        }
    }
    for (score, size) in scores.iter().zip(&sizes) {
        eprintln!("from {size:4} px: {score}");
    }
    eprintln!("all from 40 px:  {all}; {stray} strays; {:.1} ms a photo", 1e3 * seconds / f64::from(photos));
    assert_eq!((all.found, stray), (all.shown, 0));
    assert!(all.rms() < 0.020 && all.worst < 0.1, "{all}");
}
