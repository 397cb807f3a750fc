//! What else would explain the photos almost as well as the best explanation, in words.

use super::case::Case;
use super::print_scale_wrong::Prints;
use super::suspects::{LEVEL, RIVAL, Suspect};
use crate::pose::Extra;
use crate::verdict::words::{either, sentences};
use crate::words::{Phrase, phrase};

impl Case<'_> {
    /// A message, and what else would explain the photos almost as well.
    pub(super) fn with_rivals(&self, message: Phrase) -> Phrase {
        sentences(message, self.rivals())
    }

    /// The best explanation, when it is significant and of the wanted kind.
    pub(super) fn culprit(&self, wanted: impl Fn(&Extra) -> bool) -> Option<&Suspect> {
        self.suspects.first().filter(|s| s.chance < LEVEL && wanted(&s.extra))
    }

    /// In words: what else would explain the misfit almost as well as the best
    /// explanation; `None` where nothing does.
    fn rivals(&self) -> Option<Phrase> {
        let best = self.suspects.first()?;
        let mut words: Vec<Phrase> = Vec::new();
        let near = |s: &&Suspect| best.weight - s.weight < RIVAL && s.chance < LEVEL;
        for rival in self.suspects.iter().skip(1).filter(near) {
            let said = self.words(&rival.extra);
            if said != self.words(&best.extra) && !words.contains(&said) {
                words.push(said);
            }
        }
        words.truncate(3);
        Some(phrase!("findings-rivals", rivals = either(words)?))
    }

    /// What a suspect says has happened.
    fn words(&self, extra: &Extra) -> Phrase {
        let vehicle = || phrase!("verdict-body", role = "vehicle");
        match extra {
            Extra::CarrierMoved { carrier, .. } => phrase!("findings-if-moved", body = self.body(*carrier)),
            Extra::GroupRolled { .. } | Extra::GroupMoved { .. } => phrase!("findings-if-moved", body = vehicle()),
            Extra::Scale { carriers } => match self.prints(carriers) {
                Prints::Of(one) => phrase!("findings-if-size", body = self.body(one)),
                Prints::Kind(kind) => phrase!("findings-if-size-kind", kind = kind),
                Prints::All => phrase!("findings-if-sizes"),
            },
            Extra::Focal { photos } if photos.len() == 1 => {
                phrase!("findings-if-zoomed", photo = self.photos[photos[0]].file)
            }
            Extra::Focal { .. } => phrase!("findings-if-focal"),
            Extra::HalfTurned { .. } => phrase!("findings-if-half-turned"),
            Extra::Displaced { carrier, id } => {
                phrase!("findings-if-displaced", marker = id.to_string(), body = self.body(*carrier))
            }
            Extra::MarkerOff { carrier, id, photo } => {
                let file = self.photos[*photo].file;
                phrase!("findings-if-marker", marker = id.to_string(), body = self.body(*carrier), photo = file)
            }
            Extra::Lens { photos } if photos.len() == 1 => {
                phrase!("findings-if-lens-one", photo = self.photos[photos[0]].file)
            }
            Extra::Lens { .. } => phrase!("findings-if-lens"),
            Extra::OffFloor { carriers, .. } => {
                phrase!("findings-if-off-floor", count = carriers.len(), sheets = self.own_names(carriers))
            }
        }
    }
}
