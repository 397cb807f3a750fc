//! The waist of the house: `result/1`, plain serde types. Reports, audits,
//! statistics and pages read only this.

mod bay;
mod doubt;
mod plan;
mod types;

pub use doubt::{DetectableRecord, SensitivityRecord};

pub use bay::{BayLimit, BayPhoto, BayRecord, BaySheet};
pub use plan::{LeastPhotos, PlanBay, PlanBody, PlanRecord, PlannedStation, PredictedCheck, SetupCheckRecord};

pub use types::{
    AttachmentRecord, AttemptPhoto, AttemptRecord, BudgetLine, CarrierRecord, CarrierUncertainty, CheckRecord, Context,
    FindingRecord, InputRecord, JobRecord, KitRecord, MarkerRecord, MeasuredRecord, MovedRecord, NextPhotoRecord, Outline,
    PhotoRecord, PrerequisiteRecord, ReadingRecord, RideHeightRecord, SheetRecord, Tool, WaiverRecord,
};

pub use crate::verdict::{Level, Verdict};
