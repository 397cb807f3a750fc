//! What a picture shows at a glance: which markers of a kit, for whoever aims
//! the camera. Nothing is measured from it.

use std::collections::BTreeSet;

use crate::detect::find_markers;
use crate::marker::{Carrier, Dictionary, Kit, Role};
use crate::photo::{self, Error, Luma};
use crate::record::LookedMarker;

/// Markers of a kit in a picture.
#[derive(Debug, Clone, PartialEq)]
pub struct Glance {
    /// Pixels in a row and rows of the stored picture.
    pub size_px: [usize; 2],
    /// The kit's markers; corners on the stored picture.
    pub markers: Vec<LookedMarker>,
    /// Names of the carriers of which a marker is seen, in the kit's order.
    pub seen: Vec<String>,
    /// Names of the others; a one-time card is never missed.
    pub missing: Vec<String>,
    /// Whether the stand is seen, and something that does not move with it.
    pub ties: bool,
}

/// Looks at a picture that was read already.
pub fn glance(picture: &Luma, kit: &Kit) -> Glance {
    let bearer = |id: u32| kit.carriers.iter().find(|c| c.markers.iter().any(|m| m.id == id));
    let found = find_markers(picture, Dictionary::tag36h11());
    let markers: Vec<LookedMarker> = found
        .markers
        .iter()
        .filter_map(|m| {
            let corners_px = m.corners_px.map(|c| [c.x, c.y]);
            Some(LookedMarker { id: m.id, carrier: bearer(m.id)?.name.clone(), corners_px })
        })
        .collect();
    let shown: BTreeSet<&str> = markers.iter().map(|m| m.carrier.as_str()).collect();
    let is_shown = |c: &&Carrier| shown.contains(c.name.as_str());
    let names = |keep: &dyn Fn(&&Carrier) -> bool| -> Vec<String> {
        kit.carriers.iter().filter(|c| keep(c)).map(|c| c.name.clone()).collect()
    };
    let of_stand = |c: &&Carrier| c.role == Role::Target;
    Glance {
        size_px: [picture.width(), picture.height()],
        seen: names(&is_shown),
        missing: names(&|c| !is_shown(c) && c.role != Role::Card),
        ties: kit.carriers.iter().any(|c| is_shown(&c) && of_stand(&c))
            && kit.carriers.iter().any(|c| is_shown(&c) && !of_stand(&c)),
        markers,
    }
}

/// The same for a picture's bytes.
///
/// # Errors
/// They are no picture that can be read.
pub fn glance_at(bytes: &[u8], kit: &Kit) -> Result<Glance, Error> {
    Ok(glance(&photo::decode(bytes, "the picture")?.luma, kit))
}
