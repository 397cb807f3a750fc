//! JSON schemas of what the program writes, made from the types that write it.

use schemars::{JsonSchema, Schema, generate::SchemaSettings};

use super::{BayRecord, DrillMark, JobRecord, PhotoLook, PlanRecord, SetupCheckRecord, TrendsRecord};

/// A format that has a schema.
type Made = (&'static str, fn(&str) -> Schema);

/// Formats and how their schemas are made, by name.
const MADE: [Made; 7] = [
    ("result/1", of::<JobRecord>),
    ("plan/1", of::<PlanRecord>),
    ("bay/1", of::<BayRecord>),
    ("trends/1", of::<TrendsRecord>),
    ("setup-check/1", of::<SetupCheckRecord>),
    ("photo-look/1", of::<PhotoLook>),
    ("drill-mark/1", of::<DrillMark>),
];

/// The formats that [`schema`] knows.
pub fn schemas() -> impl Iterator<Item = &'static str> {
    MADE.iter().map(|(format, _)| *format)
}

/// The JSON schema (draft 2020-12) of a format, as text; `None` for one that it
/// does not know. It says what is written: readers take files that lack the keys
/// that came later, and ignore keys that they don't know.
pub fn schema(format: &str) -> Option<String> {
    let (format, make) = MADE.iter().find(|(name, _)| *name == format)?;
    let text = serde_json::to_string_pretty(&make(format)).ok()?;
    Some(text + "\n")
}

fn of<T: JsonSchema>(format: &str) -> Schema {
    let mut schema = SchemaSettings::draft2020_12().for_serialize().into_generator().into_root_schema_for::<T>();
    // The first key says which format it is.
    if let Some(first) = schema.pointer_mut("/properties/format").and_then(|v| v.as_object_mut()) {
        first.insert("const".to_owned(), format.into());
    }
    schema
}
