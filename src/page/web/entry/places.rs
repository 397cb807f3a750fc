//! How many connections each address holds.

use std::collections::HashMap;
use std::net::IpAddr;
use std::sync::{Arc, Mutex, PoisonError};

use crate::web::limits;

/// Connections by the address that they come from.
#[derive(Clone, Default)]
pub(in crate::web) struct Places {
    held: Arc<Mutex<HashMap<IpAddr, usize>>>,
}

/// One of them; given back when dropped.
pub(in crate::web) struct Place {
    places: Places,
    from: IpAddr,
}

impl Places {
    /// A place, where the address holds less than its share.
    pub(in crate::web) fn take(&self, from: IpAddr) -> Option<Place> {
        let mut all = self.held.lock().unwrap_or_else(PoisonError::into_inner);
        let held = all.entry(from).or_default();
        if *held >= limits::FROM_ONE {
            return None;
        }
        *held += 1;
        Some(Place { places: self.clone(), from })
    }
}

impl Drop for Place {
    fn drop(&mut self) {
        let mut all = self.places.held.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(held) = all.get_mut(&self.from) {
            *held -= 1;
            if *held == 0 {
                all.remove(&self.from);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_address_leaves_places_for_others_and_gets_its_own_back() {
        let places = Places::default();
        let (greedy, other): (IpAddr, IpAddr) = ("10.0.0.1".parse().unwrap(), "10.0.0.2".parse().unwrap());
        let mut held: Vec<Place> = std::iter::from_fn(|| places.take(greedy)).collect();
        assert_eq!(held.len(), limits::FROM_ONE);
        assert!(places.take(other).is_some());
        held.pop();
        assert!(places.take(greedy).is_some());
        drop(held);
        assert!(places.held.lock().unwrap().is_empty());
    }
}
