//! What the photos of a masked copy say.

use std::path::Path;

use crate::custody::{MASKED_AGREE_U, MaskedCopy, RemeasureError, further, look_at_masked};
use crate::evidence::{Item, Outcome};
use crate::words::{Figure, Phrase, phrase};

/// What measuring again is called among the checks.
pub(super) const MEASURED: &str = "measured again";

/// How measuring again went.
pub(super) fn measured(outcome: Outcome, found: Phrase) -> Item {
    Item { what: MEASURED.to_owned(), outcome, found }
}

/// Why nothing was measured again: the machine's fault, or the folder's.
pub(super) fn not_measured(why: &RemeasureError) -> Item {
    match why {
        RemeasureError::Room(_) => measured(Outcome::NotCheckable, why.phrase()),
        _ => measured(Outcome::Failed, phrase!("evidence-not-measurable", why = why.phrase())),
    }
}

/// Whether a copy's masked photos show what was sealed, and whether they measure it.
pub(super) fn look(payload: &Path) -> Vec<Item> {
    look_at_masked(payload).map_or_else(|why| vec![not_measured(&why)], items)
}

fn items(copy: MaskedCopy) -> Vec<Item> {
    let (photos, markers) = (copy.recorded.photos.len(), copy.markers);
    let (outcome, found) = match (copy.strange.is_empty(), markers) {
        (false, _) => (Outcome::Failed, further(copy.strange)),
        (true, 0) => (Outcome::NotCheckable, phrase!("evidence-masked-no-markers")),
        (true, _) => (Outcome::Passed, phrase!("evidence-masked", photos = photos, markers = markers)),
    };
    let again = match copy.differences {
        Err(why) => measured(Outcome::NotCheckable, why),
        Ok(differences) if differences.is_empty() => {
            let (verdict, share) = (copy.recorded.verdict.phrase(), Figure::plain(MASKED_AGREE_U));
            measured(Outcome::Passed, phrase!("evidence-masked-measured", verdict = verdict, share = share))
        }
        Ok(differences) => {
            let differences = further(differences);
            measured(Outcome::Failed, phrase!("evidence-measured-otherwise", differences = differences))
        }
    };
    vec![Item { what: "masked photos".to_owned(), outcome, found }, again]
}
