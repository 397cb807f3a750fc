//! The floor of a bay from sheets all over it.

use baywitness::folder::Vehicle;
use baywitness::job::{BayWanted, check_bay};
use baywitness::marker::Role;
use baywitness::record::Verdict;
use baywitness::setup::Limits;

use super::{scene, stage};

/// Where the floor begins to rise, mm before the rear axle, and how much, degrees.
const HINGE_MM: f64 = 3800.0;
const RISE_DEG: f64 = 0.6;

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_rise_before_the_wheels_is_measured_sheet_by_sheet() {
    let mut scene = scene(&[("a.jpg", &|_| ()), ("b.jpg", &|_| ())]);
    let first = scene.kit.with_role(Role::Floor).next().unwrap();
    let sheet = scene.kit.carriers[first].clone();
    scene.kit.carriers.retain(|c| c.role != Role::Floor && c.role != Role::Target);
    scene.setup.checks.retain(|c| !c.quantity.is_of_target() && c.target.is_none());
    let places =
        [[3300.0, 1300.0], [3300.0, -1300.0], [4300.0, 700.0], [4300.0, -700.0], [5300.0, 900.0], [5300.0, -900.0]];
    for i in 0..places.len() as u32 {
        let mut one = sheet.clone();
        one.name = format!("sheet-{}", i + 1);
        one.markers[0].id = 300 + i;
        one.markers[0].size_mm = [200.0; 2];
        scene.kit.carriers.push(one);
    }
    scene.spec.floor.sheets = places.map(|[x, y]| [x, y, 0.0]).to_vec();
    (scene.spec.floor.slope_deg, scene.spec.floor.slope_from_x_mm) = (RISE_DEG, HINGE_MM);
    let folder = tempfile::tempdir().unwrap();
    stage(&scene, folder.path());

    let photos = ["a.jpg", "b.jpg"].map(|f| folder.path().join("photos").join(f));
    let vehicle =
        Vehicle { floor_below_hub_mm: Some(321.0), nose_from_rear_axle_mm: Some(3490.0), ..Vehicle::default() };
    let limits =
        Limits { floor_slope_deg: Some(0.2), floor_flatness_mm_per_m: Some(30.0), free_ahead_mm: Some(1500.0) };
    let wanted = BayWanted { kit: &scene.kit, camera: &scene.camera, vehicle: &vehicle, limits: &limits };
    let record = check_bay(&photos, &wanted).unwrap();
    for (sheet, [x, _]) in record.sheets.iter().zip(places) {
        let exact = (x - HINGE_MM).max(0.0) * RISE_DEG.to_radians().sin();
        println!("{}: {:.2} +-{:.2}, truth {exact:.2}", sheet.name, sheet.height_mm, sheet.expanded_uncertainty_mm);
        // Twice the 95 % interval, and half a millimetre for plates that seat elsewhere than at the typed height.
        assert!((sheet.height_mm - exact).abs() < 2.0 * sheet.expanded_uncertainty_mm + 0.5, "{sheet:?}");
    }
    let verdict = |what: &str| record.limits.iter().find(|l| l.what.contains(what)).unwrap().verdict;
    assert_eq!(verdict("slope"), Some(Verdict::Outside), "{:?}", record.limits);
    assert_eq!(verdict("free"), Some(Verdict::Within), "{:?}", record.limits);
    assert!(record.slope_deg[0] > 0.2, "it rises to the front: {:?}", record.slope_deg);
}
