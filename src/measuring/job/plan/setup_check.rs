//! A set-up sheet explained, doubted, and tried with every kit.

use crate::camera::Profile;
use crate::folder::Vehicle;
use crate::job::plan::{PlanOptions, Reach, Wanted, plan};
use crate::marker::Kit;
use crate::quantity::Quantity;
use crate::record::SetupCheckRecord;
use crate::setup::{Doubt, Setup};
use crate::verdict::findings::not_checked;
use crate::words::{Language, Phrase};

/// Explains a sheet; of the kits those that have its carriers are planned with.
pub fn setup_check(setup: &Setup, kits: &[Kit], camera: &Profile, vehicle: &Vehicle) -> SetupCheckRecord {
    let ahead_mm = setup.limits.free_ahead_mm.unwrap_or(Reach::default().ahead_mm);
    let options = PlanOptions { reach: Reach { ahead_mm, ..Reach::default() }, ..PlanOptions::default() };
    let mut plans: Vec<_> = kits
        .iter()
        .filter(|kit| setup.check_against(kit).is_ok())
        .map(|kit| plan(Wanted { kit, setup, camera, vehicle }, &options))
        // A reference on the wall has no stand: there is nothing to take photos of.
        .filter(|plan| !plan.stations.is_empty())
        .collect();
    plans.sort_by_key(|p| (p.predicted.iter().filter(|c| !c.can_decide).count(), p.stations.len()));
    let (contradictions, questions): (Vec<Doubt>, Vec<Doubt>) =
        setup.doubts().into_iter().partition(|d| d.contradiction);
    let phrases = |doubts: Vec<Doubt>| -> Vec<Phrase> { doubts.into_iter().map(|d| d.message).collect() };
    let english = |all: &[Phrase]| all.iter().map(|p| p.say(Language::English)).collect();
    let (asked, contradictions, questions) = (setup.in_words(), phrases(contradictions), phrases(questions));
    SetupCheckRecord {
        format: "setup-check/1".into(),
        setup: setup.name.clone(),
        title: setup.title.clone(),
        source: setup.source.clone(),
        words: english(&asked),
        words_phrases: asked,
        not_checked: not_checked(setup).into_iter().map(Quantity::trade_name).collect(),
        contradictions: english(&contradictions),
        contradictions_phrases: contradictions,
        questions: english(&questions),
        questions_phrases: questions,
        kits: plans,
    }
}
