//! What `plan` predicts of one photo after a move, beside what that photo states.

use baywitness::folder::Models;
use baywitness::job::{self, PlanOptions, Wanted, plan};
use baywitness::synth::{PhotoSpec, StandError};

use crate::{planned, staged};

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_follow_up_photo_from_the_planned_place_states_what_was_predicted() {
    let mut scene = staged::scene(0.4);
    scene.spec.job.remove("reading");
    let options = PlanOptions { photos: Some(2), after_move: true, ..PlanOptions::default() };
    let vehicle = planned::vehicle(&scene);
    let wanted = Wanted { kit: &scene.kit, setup: &scene.setup, camera: &scene.camera, vehicle: &vehicle };
    let plan = plan(wanted, &options);
    let follow = plan.follow_up.as_ref().unwrap();
    assert!(follow.station.sees.iter().any(|name| name == "stand"), "{follow:?}");
    let photo = |file: &str, s: &baywitness::record::PlannedStation| PhotoSpec::new(file, s.position_mm, s.look_at_mm);
    scene.spec.moves = vec![StandError::from([0.0, -8.0, 0.0, 0.0, 0.0, 0.0])];
    scene.spec.stand.error = StandError::from([0.0, 8.0, 0.0, 0.0, 0.0, 0.0]);
    let mut after = photo("c.jpg", &follow.station);
    after.after_move = 1;
    scene.spec.photo = Some(vec![photo("a.jpg", &plan.stations[0]), photo("b.jpg", &plan.stations[1]), after]);
    let folder = tempfile::tempdir().unwrap();
    scene.stage(folder.path(), &mut |_| ()).unwrap();
    let record = job::verify(folder.path(), &job::Options::new(Models::embedded())).unwrap();
    for (check, predicted) in record.checks.iter().zip(&follow.predicted) {
        let (stated, predicted) = (check.expanded_uncertainty.unwrap(), predicted.expanded_uncertainty.unwrap());
        println!("{}: predicted {predicted:.4}, stated {stated:.4}", check.quantity);
        assert!((0.65..1.4).contains(&(predicted / stated)), "{}: {predicted} against {stated}", check.quantity);
    }
    // The photos before the move place the vehicle, so that one photo is worth nearly what two are; for the height more, as a
    // third one tells how much higher than wide the prints are.
    for (one, two) in follow.predicted.iter().zip(&plan.predicted) {
        let [one, two] = [one, two].map(|p| p.expanded_uncertainty.unwrap());
        assert!(one > 0.25 * two && one < 3.0 * two, "{one} after a move, {two} before it");
    }
}
