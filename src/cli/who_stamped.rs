//! Whose timestamps count, of a sealed folder and of a signed report, and whether their times can be.

use std::path::Path;

use time::{Duration, OffsetDateTime};

use crate::custody::moments;
use crate::evidence::{Authorities, Distrust, Inspection, Item, Outcome, PAYLOAD, Token};
use crate::words::{Phrase, Value, phrase};

/// Clocks of phones, authorities and readers agree within so much, as everywhere here (common practice, no source).
pub(super) const CLOCKS: Duration = Duration::seconds(300);

/// Phones' clocks, which nobody may have set, agree with those of authorities within an hour, which summer time is (common
/// practice, no source).
const PHONES: Duration = Duration::hours(1);

/// What was photographed last, and what says so.
pub(super) type Taken = (OffsetDateTime, String);

/// Whether a folder's timestamps are by authorities that count, and of times that can be; of a masked copy also those of
/// the sealed folder. Where the reader asked for them and there is none, that is said.
pub(super) fn of_folder(folder: &Path, inspection: &Inspection, authorities: Option<&Authorities>) -> Vec<Item> {
    let now = OffsetDateTime::now_utc();
    // What an altered folder says of its photos is nobody's word.
    let taken = inspection.intact().then(|| moments::of_payload(&folder.join(PAYLOAD))).flatten();
    let chains = [&inspection.sealed_tokens, &inspection.tokens];
    let mut items: Vec<Item> =
        chains.into_iter().flat_map(|tokens| who_stamped(tokens, authorities, now, taken.as_ref())).collect();
    if authorities.is_some() && !inspection.items.iter().any(|item| item.what == "timestamp") {
        items.push(unstamped());
    }
    items
}

/// What is said where no timestamp is, and the reader asked for one.
pub(super) fn unstamped() -> Item {
    Item { what: "timestamp".to_owned(), outcome: Outcome::NotCheckable, found: phrase!("evidence-unstamped") }
}

/// Whether timestamps, each over the one before, are by authorities that count and of times that can be, and each was
/// stamped again before its authority's certificate ended.
pub(super) fn who_stamped(
    tokens: &[Token],
    authorities: Option<&Authorities>,
    now: OffsetDateTime,
    taken: Option<&Taken>,
) -> Vec<Item> {
    // Since when something that counts covers what was looked at last, from the newest back.
    let mut covered = now;
    let mut items = Vec::new();
    for (n, token) in tokens.iter().enumerate().rev() {
        let before = n.checked_sub(1).map(|n| tokens[n].time);
        let (outcome, found) = match impossible(token, before, now) {
            Some(why) => (Outcome::Failed, why),
            None => judge(token, authorities, covered, taken),
        };
        if outcome == Outcome::Passed {
            covered = token.time;
        }
        items.push(Item { what: "authority".to_owned(), outcome, found });
    }
    items.reverse();
    items
}

/// A time that no clock had, whoever says so.
fn impossible(token: &Token, before: Option<OffsetDateTime>, now: OffsetDateTime) -> Option<Phrase> {
    let wrong = |problem: &'static str| Some(phrase!("evidence-stamp-time", problem = problem, when = token.when()));
    if token.time - now > CLOCKS {
        return wrong("ahead");
    }
    before.filter(|before| *before - token.time > CLOCKS).and_then(|_| wrong("falls"))
}

fn judge(
    token: &Token,
    authorities: Option<&Authorities>,
    covered: OffsetDateTime,
    taken: Option<&Taken>,
) -> (Outcome, Phrase) {
    match authorities.map(|a| a.vouch_for(token)) {
        None => return (Outcome::NotCheckable, phrase!("evidence-no-authority")),
        Some(Err(Distrust::Unknown(why))) => {
            let who = token.authority();
            return (Outcome::NotCheckable, phrase!("evidence-authority-unlisted", who = who, why = why));
        }
        Some(Err(Distrust::Wrong(why))) => return (Outcome::Failed, phrase!("evidence-authority-false", why = why)),
        Some(Ok(())) => {}
    }
    if let Some((_, what)) = taken.filter(|(taken, _)| *taken - token.time > PHONES) {
        return (Outcome::Failed, phrase!("evidence-stamped-before", when = token.when(), what = what));
    }
    let day = Value::moment(token.ends().date().to_string());
    if covered > token.ends() {
        return (Outcome::NotCheckable, phrase!("evidence-authority-ended", day = day));
    }
    (Outcome::Passed, phrase!("evidence-authority", who = token.authority(), day = day))
}
