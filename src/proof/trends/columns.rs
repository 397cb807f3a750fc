//! Results from the table of an audit (`audit.parquet`): only the columns that
//! statistics need are read, a batch of rows at a time.

use std::borrow::Cow;
use std::fs::File;
use std::path::Path;

use parquet::errors::ParquetError;
use parquet::file::reader::{FileReader, SerializedFileReader};
use parquet::record::{Field, Row};
use parquet::schema::types::Type;
use serde::Deserialize;
use serde::de::IntoDeserializer;
use serde::de::value::{Error as Unknown, StrDeserializer};

use crate::record::{CheckFacts, ContextFacts, Facts, FindingFacts};
use crate::words::{Value, phrase};

/// Top columns that are read.
const WANTED: [&str; 15] = [
    "path",
    "verdict",
    "job",
    "series",
    "setup",
    "kit",
    "vehicle",
    "technician",
    "bay",
    "taken",
    "result",
    "attempt",
    "cameras",
    "findings",
    "checks",
];

/// Rows of a table, at most: ten times what anybody has.
const MOST_ROWS: i64 = 100_000_000;

/// What a row says: its facts, where its result lies, and its folder.
pub(super) type RowFacts = (Facts<'static>, Option<String>);

/// Gives every row to `take`.
///
/// # Errors
/// In words: it is no Parquet, is damaged, or is not the table of an audit.
pub(super) fn each_row(path: &Path, take: &mut dyn FnMut(RowFacts)) -> Result<(), Value> {
    let damaged = |e: ParquetError| Value::from(phrase!("trends-parquet-damaged", why = e.to_string()));
    let file = File::open(path).map_err(|e| Value::from(e.to_string()))?;
    let size = file.metadata().map_err(|e| Value::from(e.to_string()))?.len();
    let reader = SerializedFileReader::new(file).map_err(damaged)?;
    let meta = reader.metadata();
    if !(0..=MOST_ROWS).contains(&meta.file_metadata().num_rows()) {
        return Err(phrase!("trends-parquet-rows").into());
    }
    // Nothing is compressed here, so that no column can be larger than the file.
    for column in meta.row_groups().iter().flat_map(|group| group.columns()) {
        if !u64::try_from(column.uncompressed_size()).is_ok_and(|bytes| bytes <= size) {
            return Err(phrase!("trends-parquet-column").into());
        }
    }
    let schema = meta.file_metadata().schema();
    let fields: Vec<_> = schema.get_fields().iter().filter(|f| WANTED.contains(&f.name())).cloned().collect();
    if fields.len() != WANTED.len() {
        return Err(phrase!("trends-parquet-other").into());
    }
    let projection = Type::group_type_builder(schema.name()).with_fields(fields).build().map_err(damaged)?;
    for row in reader.get_row_iter(Some(projection)).map_err(damaged)? {
        take(facts(&row.map_err(damaged)?)?);
    }
    Ok(())
}

fn text(field: &Field) -> Option<Cow<'static, str>> {
    match field {
        Field::Str(text) => Some(Cow::Owned(text.clone())),
        _ => None,
    }
}

fn number(field: &Field) -> Option<f64> {
    match field {
        Field::Double(value) => Some(*value),
        _ => None,
    }
}

/// A word of an enumeration.
fn word<'a, T: Deserialize<'a>>(field: &'a Field) -> Option<T> {
    let Field::Str(text) = field else { return None };
    let word: StrDeserializer<Unknown> = text.as_str().into_deserializer();
    T::deserialize(word).ok()
}

/// The elements of a list of structs.
fn elements(field: &Field) -> impl Iterator<Item = &Row> {
    let list = match field {
        Field::ListInternal(list) => list.elements(),
        _ => &[],
    };
    list.iter().filter_map(|element| match element {
        Field::Group(row) => Some(row),
        _ => None,
    })
}

fn facts(row: &Row) -> Result<RowFacts, Value> {
    let of =
        |row: &Row, name: &str| row.get_column_iter().find(|(n, _)| *n == name).map_or(Field::Null, |(_, f)| f.clone());
    let own = |name: &str| of(row, name);
    let context = ContextFacts {
        setup: text(&own("setup")),
        kit: text(&own("kit")),
        rig: None,
        cameras: elements(&own("cameras")).filter_map(|e| text(&of(e, "camera"))).collect(),
        vehicle: text(&own("vehicle")),
        series: text(&own("series")),
        attempt: match own("attempt") {
            Field::Int(n) => u32::try_from(n).ok(),
            _ => None,
        },
        bay: text(&own("bay")),
        technician: text(&own("technician")),
        taken: text(&own("taken")),
    };
    let strange = || Value::from(phrase!("trends-parquet-part"));
    let check = |e: &Row| {
        Some(CheckFacts {
            quantity: text(&of(e, "quantity"))?,
            target: text(&of(e, "target")),
            step: text(&of(e, "step")),
            unit: text(&of(e, "unit"))?,
            nominal: number(&of(e, "nominal"))?,
            lower: number(&of(e, "lower")),
            upper: number(&of(e, "upper")),
            value: number(&of(e, "value")),
            verdict: word(&of(e, "verdict"))?,
        })
    };
    let finding = |e: &Row| Some(FindingFacts { code: text(&of(e, "code"))?, level: word(&of(e, "level"))? });
    let verdict = own("verdict");
    let facts = Facts {
        format: if matches!(verdict, Field::Null) { "error/1".into() } else { "result/1".into() },
        job: text(&own("job")).unwrap_or_default(),
        context,
        verdict: word(&verdict),
        checks: elements(&own("checks")).map(check).collect::<Option<_>>().ok_or_else(strange)?,
        findings: elements(&own("findings")).map(finding).collect::<Option<_>>().ok_or_else(strange)?,
        path: text(&own("path")),
        result: None,
        message: None,
    };
    Ok((facts, text(&own("result")).map(Cow::into_owned)))
}
