//! Where to stand, planned once for each sheet, kit, camera and vehicle.

use std::collections::HashMap;
use std::sync::{Arc, Mutex, PoisonError};

use crate::camera::Profile;
use crate::folder::Vehicle;
use crate::job::{self, PlanOptions, Reach, Wanted};
use crate::marker::Kit;
use crate::record::PlanRecord;
use crate::setup::Setup;
use crate::web::limits;
use crate::words::Value;

/// Plans by the bytes of what they were made from.
#[derive(Default)]
pub(in crate::web) struct Plans {
    known: Mutex<HashMap<String, Arc<PlanRecord>>>,
}

/// What a job names, read: from its own folder, else by name.
pub(in crate::web) struct Named {
    pub(in crate::web) setup: Setup,
    pub(in crate::web) kit: Kit,
    pub(in crate::web) camera: Profile,
    pub(in crate::web) key: String,
}

impl Plans {
    /// The plan of a job, made where it is not known; takes a second then.
    pub(in crate::web) fn plan(&self, named: &Named, vehicle: &Vehicle) -> Result<Arc<PlanRecord>, Value> {
        let known =
            |plans: &Plans| plans.known.lock().unwrap_or_else(PoisonError::into_inner).get(&named.key).map(Arc::clone);
        if let Some(plan) = known(self) {
            return Ok(plan);
        }
        let Named { setup, kit, camera, .. } = named;
        setup.check_against(kit).map_err(|p| Value::from(p.phrase()))?;
        let ahead_mm = setup.limits.free_ahead_mm.unwrap_or(Reach::default().ahead_mm);
        let options = PlanOptions { reach: Reach { ahead_mm, ..Reach::default() }, ..PlanOptions::default() };
        let plan = Arc::new(job::plan(Wanted { kit, setup, camera, vehicle }, &options));
        let mut plans = self.known.lock().unwrap_or_else(PoisonError::into_inner);
        if plans.len() >= limits::PLANS {
            plans.clear();
        }
        plans.insert(named.key.clone(), Arc::clone(&plan));
        Ok(plan)
    }
}
