//! Two photos of one tripod beside each other: which bodies stand elsewhere.
//!
//! A camera that stands still does not give the same picture twice: it focuses anew,
//! its stabiliser rests elsewhere, the floor gives way a little. All of that shifts,
//! turns, scales and tilts the picture as a whole; the bodies that stay say by how
//! much ([`super::whole`]). A body that goes another way has moved, as in a
//! survey of a dam whose reference points must agree among each other before any
//! other point is judged by them (congruence test).

use super::body::Body;
use super::whole::Common;
use crate::detect::Sightings;
use crate::marker::{Kit, Role};
use crate::pose::{PhotoView, View};

/// The chance that two photos between which nothing moved have anything called moved.
pub const FALSE_MOTION: f64 = 0.005;

/// What one photo of the tripod shows of the kit.
#[derive(Debug, Clone)]
pub struct Frame {
    size_px: [usize; 2],
    view: PhotoView,
}

/// What happened between two photos of one tripod.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Between {
    /// Nothing moved.
    Rest,
    /// The stand alone did.
    Stand,
    /// The tripod itself was moved, or stand and vehicle at once.
    Tripod,
    /// All marks of the vehicle, while the floor sheets stayed.
    Vehicle,
    /// One carrier beside the stand.
    One(String),
    /// It can't be told.
    Untold(Untold),
}

/// Why two photos can't be compared.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Untold {
    /// One of them does not show the stand.
    NoStand,
    /// They share nothing that does not move with the stand.
    NothingFixed,
    /// They have different sizes.
    OtherSize,
}

impl Frame {
    /// The kit's markers of a photo that was looked at.
    pub fn new(kit: &Kit, size_px: [usize; 2], sightings: &Sightings) -> Self {
        Frame::of(size_px, PhotoView::from_sightings(kit, 0, sightings))
    }

    /// The same where the kit's markers are known already.
    pub fn of(size_px: [usize; 2], view: PhotoView) -> Self {
        Frame { size_px, view }
    }

    /// Whether it shows the stand and something that does not move with it.
    pub(super) fn shows(&self, kit: &Kit) -> Result<(), Untold> {
        let any = |wanted: &dyn Fn(Role) -> bool| self.view.views.iter().any(|v| wanted(kit.carriers[v.carrier].role));
        match () {
            () if !any(&|r| r == Role::Target) => Err(Untold::NoStand),
            () if !any(&is_fixed) => Err(Untold::NothingFixed),
            () => Ok(()),
        }
    }

    /// What happened from this photo to a later one.
    pub fn until(&self, later: &Frame, kit: &Kit) -> Between {
        if self.size_px != later.size_px {
            return Between::Untold(Untold::OtherSize);
        }
        let of = |wanted: &dyn Fn(Role) -> bool| -> Vec<Body> {
            let carriers = (0..kit.carriers.len()).filter(|k| wanted(kit.carriers[*k].role));
            carriers.filter_map(|k| self.body(later, k)).collect()
        };
        let (stands, fixed) = (of(&|r| r == Role::Target), of(&is_fixed));
        match () {
            () if stands.is_empty() => return Between::Untold(Untold::NoStand),
            () if fixed.is_empty() => return Between::Untold(Untold::NothingFixed),
            () => {}
        }
        let limit = FALSE_MOTION / 2.0;
        let all: Vec<&Body> = fixed.iter().collect();
        let common = Common::of(&all);
        if common.chance < limit {
            return who_moved(&fixed, &stands, kit, limit);
        }
        let of_each = limit / stands.len() as f64;
        if stands.iter().any(|s| common.chance_of(s) < of_each) { Between::Stand } else { Between::Rest }
    }

    /// How one carrier's corners went, where both photos show any of them well enough.
    fn body(&self, later: &Frame, carrier: usize) -> Option<Body> {
        let own = self.view.views.iter().filter(|v| v.carrier == carrier);
        let pairs: Vec<(&View, &View)> =
            own.filter_map(|a| Some((a, later.view.views.iter().find(|b| b.id == a.id)?))).collect();
        let u2_edge = self.view.u_edge_offset_px.powi(2) + later.view.u_edge_offset_px.powi(2);
        Body::of(carrier, &pairs, u2_edge, self.size_px)
    }
}

/// Whether a carrier stays while the stand is moved.
fn is_fixed(role: Role) -> bool {
    role == Role::Floor || role.is_on_vehicle()
}

/// The fewest bodies without which the others agree: one of them, else the vehicle's, else it was the tripod.
fn who_moved(fixed: &[Body], stands: &[Body], kit: &Kit, limit: f64) -> Between {
    let role = |b: &Body| kit.carriers[b.carrier].role;
    let without = |out: &dyn Fn(&Body) -> bool| {
        let rest: Vec<&Body> = fixed.iter().filter(|b| !out(b)).collect();
        // One body agrees with itself: that proves nothing.
        (rest.len() >= 2).then(|| Common::of(&rest)).filter(|common| common.chance >= limit)
    };
    let singles = fixed.iter().filter_map(|one| Some((without(&|b| b.carrier == one.carrier)?.chance, one)));
    if let Some((_, one)) = singles.max_by(|a, b| a.0.total_cmp(&b.0)) {
        return Between::One(kit.carriers[one.carrier].name.clone());
    }
    // Sheets lie in one plane, whose picture every move of the camera fits: then vehicle and stand both leave it.
    let stays = |common: &Common| stands.iter().all(|s| common.chance_of(s) >= limit);
    match without(&|b| role(b).is_on_vehicle()) {
        Some(sheets) if stays(&sheets) => Between::Vehicle,
        _ => Between::Tripod,
    }
}
