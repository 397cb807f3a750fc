//! The job's one-time card in the photos.

use super::explanation::Explanation;
use super::{Case, Finding, Open, PhotoFacts, Rule, Touches};
use crate::folder::CARD_IDS;
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["card-not-seen", "card-of-another-job"],
    title: "Job card",
    rationale: "A code that exists for this job only, seen in a photo, proves that the photo was taken for this job.",
    method: "The ids kept for cards, as found in each photo, against the job's. Exact, but for a marker that is read as \
             another one (below 1e-6 for a photo); one photo that shows the whole card vouches for the photos that the \
             adjustment joins with it.",
    touches: Touches::Everything,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[
    Explanation {
        code: "card-not-seen",
        level: Level::Stop,
        title: "The job's card is in no photo",
        meaning: "The job has a one-time card, and no photo shows all of its markers, so nothing proves that the photos were taken for it.",
        cause: "The card lay flat or too far off, something stood in front of it, or the photos are older than the card.",
        look: "Open the photos: is the card upright and as large as a wheel plate's marker?",
        remedy: "Put the card upright where the photos show it, on the bonnet or beside the stand, and take one more photo.",
    },
    Explanation {
        code: "card-of-another-job",
        level: Level::Stop,
        title: "A photo shows another job's card",
        meaning: "Markers that are kept for cards were found in a photo, but they are not the code of this job.",
        cause: "Photos of two jobs were mixed up, or the old card stayed in the bay.",
        look: "Compare the ids in the message with the card on the bench.",
        remedy: "Leave that photo out, or take it again with this job's card.",
    },
];

fn find(case: &Case) -> Vec<Finding> {
    let card = &case.job.card;
    if card.is_empty() {
        return Vec::new();
    }
    let mut found: Vec<Finding> = case.photos.iter().enumerate().filter_map(|(j, p)| foreign(j, p, card)).collect();
    let whole = |p: &PhotoFacts| card.iter().all(|id| on_cards(p).any(|seen| seen == *id));
    if !case.photos.iter().any(whole) {
        let most = case.photos.iter().map(|p| card.iter().filter(|id| on_cards(p).any(|s| s == **id)).count()).max();
        let message = phrase!("findings-card-not-seen", ids = list(card), most = most.unwrap_or(0), all = card.len());
        // What is missing is the proof of when; the figures are those of the photos.
        found.push(Finding::new("card-not-seen", Level::Stop, message).touching(Touches::Nothing));
    }
    found
}

/// A photo with a card that is not this job's.
fn foreign(j: usize, photo: &PhotoFacts, card: &[u32]) -> Option<Finding> {
    let others: Vec<u32> = on_cards(photo).filter(|id| !card.contains(id)).collect();
    if others.is_empty() {
        return None;
    }
    let message = phrase!("findings-card-of-another-job", photo = photo.file, others = list(&others), own = list(card));
    let finding = Finding::new("card-of-another-job", Level::Stop, message).in_photo(photo.file);
    Some(finding.leaving(vec![Open::WithoutPhoto(j)]))
}

fn on_cards<'a>(photo: &'a PhotoFacts) -> impl Iterator<Item = u32> + 'a {
    let [first, last] = CARD_IDS;
    photo.sightings.markers.iter().map(|m| m.id).filter(move |id| (first..=last).contains(id))
}

fn list(ids: &[u32]) -> String {
    ids.iter().map(u32::to_string).collect::<Vec<_>>().join(", ")
}
