//! The job's one-time card in the photos.

use super::explanation::Explanation;
use super::{Case, Finding, Open, PhotoFacts, Rule, Touches};
use crate::folder::CARD_IDS;
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "card", codes: &["card-not-seen", "card-of-another-job"], touches: Touches::Everything, find };

pub(super) const EXPLAIN: &[Explanation] =
    &[Explanation::of("card-not-seen", Level::Stop), Explanation::of("card-of-another-job", Level::Stop)];

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
