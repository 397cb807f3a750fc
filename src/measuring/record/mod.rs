//! The waist of the house: `result/1`, plain serde types. Reports, audits,
//! statistics and pages read only this.

mod bay;
mod context;
mod doubt;
mod facts;
mod inputs;
mod moves;
mod photo_look;
mod plan;
mod schema;
mod told;
mod training;
mod trends;
mod types;

pub use bay::{BayLimit, BayPhoto, BayRecord, BaySheet};
pub use context::{Context, KitUpkeep, PrerequisiteRecord, SheetRecord, Tool, WaiverRecord};
pub use doubt::{DetectableRecord, SensitivityRecord};
pub use facts::{CheckFacts, ContextFacts, CredentialFacts, Facts, FindingFacts, PhotoFacts};
pub use inputs::{AttachmentRecord, InputRecord};
pub use moves::{AimRecord, FirstRecord, PositionFigure, PositionRecord, TurnedRecord};
pub use photo_look::{LookedCarrier, LookedMarker, PhotoLook};
pub use plan::{
    LeastPhotos, PlanBay, PlanBody, PlanRecord, PlannedFollowUp, PlannedStation, PredictedCheck, SetupCheckRecord,
};
pub use schema::{schema, schemas};
pub use told::{body_told, told};
pub use training::{DrillAnswer, DrillMark, GalleryEntry, JobMark, MarkedAnswer};
pub use trends::{
    AttemptsRecord, CapabilityRecord, ChartRecord, CusumRecord, EffectRecord, FindingCount, GroupRecord, JobPointer,
    MisplacementRecord, ReadRecord, TendencyRecord, TestsRecord, TrendsRecord, VerdictShare, WeekMean,
};
pub use types::{
    AttemptPhoto, AttemptRecord, BudgetLine, CarrierRecord, CarrierUncertainty, CheckRecord, FindingRecord, JobRecord,
    MarkerRecord, MeasuredRecord, MovedRecord, NextPhotoRecord, OtherwiseRecord, Outline, PhotoRecord, ReadingRecord,
    RideHeightRecord,
};

pub use crate::credentials::Credentials;
pub use crate::verdict::{Level, Verdict};
