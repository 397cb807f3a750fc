//! The sheet wants content credentials that the photos do not bear out.

use super::{Case, Explanation, Finding, PhotoFacts, Rule, Touches};
use crate::credentials::{BUILT_IN, Credentials};
use crate::verdict::Level;
use crate::words::{Phrase, phrase};

pub(super) const RULE: Rule = Rule {
    name: "credentials-lacking",
    codes: &["credentials-lacking"],
    // Who took the photos says nothing of what they show: figures and moves stand.
    touches: Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("credentials-lacking", Level::Stop)];

/// One finding for the whole job: it is about the set-up, whichever photos lack.
fn find(case: &Case) -> Vec<Finding> {
    if !case.setup.credentials_required {
        return Vec::new();
    }
    let mut counted: Vec<&PhotoFacts> = case.photos.iter().filter(|p| p.problem.is_none()).collect();
    if counted.is_empty() {
        counted = case.photos.iter().collect();
    }
    let lacking: Vec<(&str, Phrase)> = counted.iter().filter_map(|p| Some((p.file, lacks(p.credentials)?))).collect();
    if lacking.is_empty() && !counted.is_empty() {
        return Vec::new();
    }
    let unread = !BUILT_IN && counted.iter().all(|p| p.credentials.is_none());
    let message = if unread {
        phrase!("findings-credentials-not-built-in")
    } else {
        let photos: Vec<Phrase> = lacking
            .into_iter()
            .map(|(photo, why)| phrase!("findings-credentials-of-photo", photo = photo, why = why))
            .collect();
        phrase!("findings-credentials-lacking", photos = photos)
    };
    vec![Finding::new("credentials-lacking", Level::Stop, message)]
}

/// Why a photo's credentials do not suffice.
fn lacks(credentials: Option<&Credentials>) -> Option<Phrase> {
    let Some(found) = credentials else { return Some(phrase!("findings-credentials-none")) };
    if found.suffice() {
        return None;
    }
    Some(match found.edits_named() {
        edits if found.state == crate::credentials::State::Trusted => {
            phrase!("findings-credentials-edited", edits = edits)
        }
        _ => found.phrase(),
    })
}
