//! A job's content credentials in one line.

use super::{Credentials, State};
use crate::words::{Phrase, phrase};

/// How many photos are in each state, the best state first; those without any are not in it.
pub fn counts<'a>(photos: impl IntoIterator<Item = Option<&'a Credentials>>) -> Vec<(State, usize)> {
    let states: Vec<State> = photos.into_iter().flatten().map(|c| c.state).collect();
    let count = |state: State| (state, states.iter().filter(|s| **s == state).count());
    State::ALL.into_iter().map(count).filter(|(_, n)| *n > 0).collect()
}

/// For people: each state with its number of photos, and the photos without any
/// where another has some; `None` where no photo has any.
pub fn summary<'a>(photos: impl IntoIterator<Item = Option<&'a Credentials>>) -> Option<Phrase> {
    let photos: Vec<Option<&Credentials>> = photos.into_iter().collect();
    let counted = counts(photos.iter().copied());
    if counted.is_empty() {
        return None;
    }
    let with: usize = counted.iter().map(|(_, n)| n).sum();
    let one = |(state, n): (State, usize)| phrase!("verdict-credentials-count", state = state.name(), count = n);
    let without = photos.len() - with;
    let none = (without > 0).then(|| phrase!("verdict-credentials-count", state = "none", count = without));
    let parts: Vec<Phrase> = counted.into_iter().map(one).chain(none).collect();
    Some(phrase!("verdict-credentials-counts", parts = parts))
}
