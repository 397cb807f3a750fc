//! Whose timestamps count, of a sealed folder and of a signed report.

use time::OffsetDateTime;

use crate::evidence::{Authorities, Item, Outcome, Token};
use crate::words::{Value, phrase};

/// Whether the timestamps are by authorities that count, and each was stamped
/// again before its authority's certificate ended.
pub(super) fn who_stamped(tokens: &[Token], authorities: Option<&Authorities>, now: OffsetDateTime) -> Vec<Item> {
    let mut judged = Vec::new();
    for (n, token) in tokens.iter().enumerate() {
        let covered = tokens.get(n + 1).map_or(now, |next| next.time);
        judged.push(match authorities.map(|a| a.vouch_for(token)) {
            None => (Outcome::NotCheckable, phrase!("evidence-no-authority")),
            Some(Err(why)) => (Outcome::Failed, phrase!("evidence-authority-false", why = why)),
            Some(Ok(())) if covered > token.ends() => (
                Outcome::NotCheckable,
                phrase!("evidence-authority-ended", day = Value::moment(token.ends().date().to_string())),
            ),
            Some(Ok(())) => {
                let day = Value::moment(token.ends().date().to_string());
                (Outcome::Passed, phrase!("evidence-authority", who = token.authority().to_string(), day = day))
            }
        });
    }
    judged.into_iter().map(|(outcome, found)| Item { what: "authority".to_owned(), outcome, found }).collect()
}
