//! The waist of the house: `result/1`, plain serde types. Reports, audits,
//! statistics and pages read only this.

mod doubt;
mod types;

pub use doubt::{DetectableRecord, SensitivityRecord};
pub use types::{
    AttachmentRecord, BudgetLine, CarrierRecord, CarrierUncertainty, CheckRecord, Context, FindingRecord, InputRecord,
    JobRecord, MarkerRecord, MeasuredRecord, Outline, PhotoRecord, PrerequisiteRecord, ReadingRecord, SheetRecord,
    Tool, WaiverRecord,
};

pub use crate::verdict::{Level, Verdict};
