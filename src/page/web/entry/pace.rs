//! How often each device sends a live picture.

use std::collections::HashMap;
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, Instant};

use super::devices::Who;
use crate::web::limits;

/// When each device last sent one.
pub(in crate::web) type Pace = Mutex<HashMap<Option<Arc<str>>, Instant>>;

/// Whether a device sends more than its share.
pub(in crate::web) fn too_soon(pace: &Pace, who: &Who) -> bool {
    let mut last = pace.lock().unwrap_or_else(PoisonError::into_inner);
    let share = Duration::from_secs_f64(1.0 / limits::GLANCES_A_SECOND);
    if last.get(&who.id).is_some_and(|at| at.elapsed() < share) {
        return true;
    }
    last.retain(|_, at| at.elapsed() < share);
    last.insert(who.id.clone(), Instant::now());
    false
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_device_that_sends_too_fast_waits_and_others_do_not() {
        let pace = Pace::default();
        let who = |id: &str| Who { name: id.into(), id: Some(id.into()) };
        assert!(!too_soon(&pace, &who("a")) && too_soon(&pace, &who("a")) && !too_soon(&pace, &who("b")));
    }
}
