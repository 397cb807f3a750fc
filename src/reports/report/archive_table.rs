//! An audited archive as Apache Parquet (format version 2, as its specification
//! at parquet.apache.org has it): one row for each job, typed columns.
//!
//! Flat columns come first, then for each quantity of the archive's checks its
//! value and expanded uncertainty, then lists: what a check or a finding says
//! stands at the same place of each list of its group. A job with two checks of
//! one quantity has the first of them in the flat columns, all in the lists.

use std::io::Write;
use std::sync::Arc;

use parquet::data_type::{ByteArray, ByteArrayType, DataType, DoubleType, Int32Type, Int64Type};
use parquet::errors::ParquetError;
use parquet::file::properties::WriterProperties;
use parquet::file::writer::SerializedFileWriter;
use parquet::schema::parser::parse_message_type;
use time::OffsetDateTime;
use time::format_description::well_known::Rfc3339;

use super::html::ArchiveRow;
use crate::record::{CheckRecord, JobRecord, Level};
use crate::words::{Language, Phrase, phrase};

/// Why a table cannot be written.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub struct TableError(#[from] ParquetError);

impl TableError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        phrase!("report-no-table", why = self.0.to_string())
    }
}

/// Rows that are written together, which is how many stay in memory.
const ROWS: usize = 1000;

/// The cells of a column so far.
#[derive(Debug)]
enum Cells {
    Text(Vec<Option<String>>),
    Integer(Vec<Option<i32>>),
    /// Milliseconds since 1970, UTC.
    Time(Vec<Option<i64>>),
    Number(Vec<Option<f64>>),
    Texts(Vec<Vec<Option<String>>>),
    Numbers(Vec<Vec<Option<f64>>>),
}

/// A column; those of a group lie side by side and are lists of one struct.
#[derive(Debug)]
struct Column {
    group: Option<&'static str>,
    name: String,
    cells: Cells,
}

/// A table that is being written.
#[derive(Debug)]
pub struct ArchiveTable<W: Write + Send> {
    quantities: Vec<String>,
    writer: SerializedFileWriter<W>,
    columns: Vec<Column>,
    rows: usize,
}

/// What the flat columns of a record's checks are called: the quantity, with
/// what it is measured from, target and step where the sheet names them.
pub fn table_quantities(record: &JobRecord) -> impl Iterator<Item = String> {
    record.checks.iter().map(key)
}

fn key(check: &CheckRecord) -> String {
    let mut key = check.quantity.clone();
    for (sign, part) in [("_from_", &check.from), ("@", &check.target), ("#", &check.step)] {
        if let Some(part) = part {
            key.push_str(sign);
            key.push_str(part);
        }
    }
    // A message's grammar has no word for anything else.
    key.chars().map(|c| if c.is_ascii_alphanumeric() || "_@#-".contains(c) { c } else { '_' }).collect()
}

impl<W: Write + Send> ArchiveTable<W> {
    /// A table with flat columns for these quantities ([`table_quantities`]).
    ///
    /// # Errors
    /// None that a quantity's name can cause.
    pub fn new(sink: W, quantities: Vec<String>) -> Result<Self, TableError> {
        let columns = columns(None, &quantities);
        let schema = Arc::new(parse_message_type(&message(&columns))?);
        let properties = Arc::new(WriterProperties::builder().set_created_by(created_by()).build());
        let writer = SerializedFileWriter::new(sink, schema, properties)?;
        Ok(ArchiveTable { quantities, writer, columns, rows: 0 })
    }

    /// Adds a folder.
    ///
    /// # Errors
    /// None that a row can cause.
    pub fn push(&mut self, row: &ArchiveRow) -> Result<(), TableError> {
        for (own, one) in self.columns.iter_mut().zip(columns(Some(row), &self.quantities)) {
            match (&mut own.cells, one.cells) {
                (Cells::Text(all), Cells::Text(one)) => all.extend(one),
                (Cells::Integer(all), Cells::Integer(one)) => all.extend(one),
                (Cells::Time(all), Cells::Time(one)) => all.extend(one),
                (Cells::Number(all), Cells::Number(one)) => all.extend(one),
                (Cells::Texts(all), Cells::Texts(one)) => all.extend(one),
                (Cells::Numbers(all), Cells::Numbers(one)) => all.extend(one),
                // The same function makes both.
                _ => {}
            }
        }
        self.rows += 1;
        if self.rows == ROWS { self.flush() } else { Ok(()) }
    }

    /// Ends the table and gives back what it was written to.
    ///
    /// # Errors
    /// None that a table can cause.
    pub fn finish(mut self) -> Result<W, TableError> {
        self.flush()?;
        Ok(self.writer.into_inner()?)
    }

    /// Writes the rows so far as a row group.
    fn flush(&mut self) -> Result<(), TableError> {
        if self.rows == 0 {
            return Ok(());
        }
        let columns = std::mem::replace(&mut self.columns, columns(None, &self.quantities));
        self.rows = 0;
        let mut group = self.writer.next_row_group()?;
        for column in columns {
            match column.cells {
                Cells::Text(cells) => flat::<ByteArrayType, _>(&mut group, cells.into_iter().map(bytes))?,
                Cells::Integer(cells) => flat::<Int32Type, _>(&mut group, cells.into_iter())?,
                Cells::Time(cells) => flat::<Int64Type, _>(&mut group, cells.into_iter())?,
                Cells::Number(cells) => flat::<DoubleType, _>(&mut group, cells.into_iter())?,
                Cells::Texts(lists) => {
                    listed::<ByteArrayType, _>(
                        &mut group,
                        lists.into_iter().map(|l| l.into_iter().map(bytes).collect()),
                    )?;
                }
                Cells::Numbers(lists) => listed::<DoubleType, _>(&mut group, lists.into_iter())?,
            }
        }
        group.close()?;
        Ok(())
    }
}

fn created_by() -> String {
    concat!("baywitness version ", env!("CARGO_PKG_VERSION")).to_owned()
}

fn bytes(text: Option<String>) -> Option<ByteArray> {
    text.map(|t| ByteArray::from(t.into_bytes()))
}

type Group<'a, W> = parquet::file::writer::SerializedRowGroupWriter<'a, W>;

fn flat<T: DataType, W: Write + Send>(
    group: &mut Group<W>,
    cells: impl Iterator<Item = Option<T::T>>,
) -> Result<(), TableError> {
    let (mut values, mut defined) = (Vec::new(), Vec::new());
    for cell in cells {
        defined.push(i16::from(cell.is_some()));
        values.extend(cell);
    }
    write::<T, _>(group, &values, &defined, None)
}

/// Levels of a list's leaf: 0 an empty list, 1 an element without a value, 2 one
/// with; repeated where it is not the first of its row.
fn listed<T: DataType, W: Write + Send>(
    group: &mut Group<W>,
    lists: impl Iterator<Item = Vec<Option<T::T>>>,
) -> Result<(), TableError> {
    let (mut values, mut defined, mut repeated) = (Vec::new(), Vec::new(), Vec::new());
    for list in lists {
        if list.is_empty() {
            defined.push(0);
            repeated.push(0);
        }
        for (n, cell) in list.into_iter().enumerate() {
            defined.push(1 + i16::from(cell.is_some()));
            repeated.push(i16::from(n > 0));
            values.extend(cell);
        }
    }
    write::<T, _>(group, &values, &defined, Some(&repeated))
}

fn write<T: DataType, W: Write + Send>(
    group: &mut Group<W>,
    values: &[T::T],
    defined: &[i16],
    repeated: Option<&[i16]>,
) -> Result<(), TableError> {
    let missing = || ParquetError::General("the schema has fewer columns than the table".to_owned());
    let mut column = group.next_column()?.ok_or_else(missing)?;
    column.typed::<T>().write_batch(values, Some(defined), repeated)?;
    column.close()?;
    Ok(())
}

/// The schema in the specification's own notation.
fn message(columns: &[Column]) -> String {
    let mut text = "message job {\n".to_owned();
    for (n, column) in columns.iter().enumerate() {
        let kind = match column.cells {
            Cells::Text(_) | Cells::Texts(_) => ("binary", " (STRING)"),
            Cells::Integer(_) => ("int32", ""),
            Cells::Time(_) => ("int64", " (TIMESTAMP(MILLIS,true))"),
            Cells::Number(_) | Cells::Numbers(_) => ("double", ""),
        };
        let group_of = |k: Option<usize>| k.and_then(|k| columns.get(k)).and_then(|c| c.group);
        if let Some(group) = column.group.filter(|_| group_of(n.checked_sub(1)) != column.group) {
            text.push_str(&format!(
                "required group {group} (LIST) {{ repeated group list {{ required group element {{\n"
            ));
        }
        text.push_str(&format!("optional {} {}{};\n", kind.0, column.name, kind.1));
        if column.group.is_some() && group_of(Some(n + 1)) != column.group {
            text.push_str("} } }\n");
        }
    }
    text + "}\n"
}

/// The columns with the cells of a row, or none.
fn columns(row: Option<&ArchiveRow>, quantities: &[String]) -> Vec<Column> {
    let record = row.and_then(|r| r.outcome.ok());
    let mut all = Vec::new();
    let mut add = |group: Option<&'static str>, name: &str, cells: Cells| {
        all.push(Column { group, name: name.to_owned(), cells });
    };
    for (name, cell) in texts(row, record) {
        add(None, name, Cells::Text(row.map(|_| cell).into_iter().collect()));
    }
    let integer =
        |cell: Option<i64>| Cells::Integer(row.map(|_| cell.and_then(|n| i32::try_from(n).ok())).into_iter().collect());
    add(None, "exit", integer(row.map(|r| i64::from(r.exit))));
    add(None, "attempt", integer(record.and_then(|r| r.context.attempt).map(i64::from)));
    let taken = record.and_then(|r| r.context.taken.as_deref()).and_then(|t| OffsetDateTime::parse(t, &Rfc3339).ok());
    let milliseconds = taken.and_then(|t| i64::try_from(t.unix_timestamp_nanos() / 1_000_000).ok());
    add(None, "taken_at", Cells::Time(row.map(|_| milliseconds).into_iter().collect()));
    let checks: &[CheckRecord] = record.map_or(&[], |r| &r.checks);
    for quantity in quantities {
        let check = checks.iter().find(|c| key(c) == *quantity);
        let number = |value: Option<f64>| Cells::Number(row.map(|_| value).into_iter().collect());
        add(None, quantity, number(check.and_then(|c| c.value)));
        add(None, &format!("U_{quantity}"), number(check.and_then(|c| c.expanded_uncertainty)));
    }
    lists(row, record, checks, &mut add);
    all
}

/// Flat texts, by their names.
fn texts(row: Option<&ArchiveRow>, record: Option<&JobRecord>) -> [(&'static str, Option<String>); 19] {
    let context = record.map(|r| &r.context);
    let own = |text: Option<&str>| text.filter(|t| !t.is_empty()).map(str::to_owned);
    [
        ("path", row.map(|r| r.path.to_owned())),
        ("verdict", record.map(|r| r.verdict.name().to_owned())),
        ("job", record.map(|r| r.job.clone())),
        ("series", context.and_then(|c| c.series.clone())),
        ("setup", own(context.map(|c| c.setup.as_str()))),
        ("kit", own(context.map(|c| c.kit.as_str()))),
        ("vehicle", context.and_then(|c| c.vehicle.clone())),
        ("technician", context.and_then(|c| c.technician.clone())),
        ("bay", context.and_then(|c| c.bay.clone())),
        ("taken", context.and_then(|c| c.taken.clone())),
        ("reason", record.map(|r| r.reason.clone())),
        ("message", row.and_then(|r| r.outcome.err()).map(str::to_owned)),
        ("evidence", own(row.and_then(|r| r.evidence))),
        ("report_signature", own(row.and_then(|r| r.report))),
        ("digest", own(row.map(|r| r.digest))),
        ("result", own(row.map(|r| r.result))),
        ("version", record.map(|r| r.tool.version.clone())),
        (
            "across",
            row.map(|r| {
                r.across.iter().map(|[code, other, _]| format!("{code} {other}")).collect::<Vec<_>>().join("; ")
            })
            .filter(|t| !t.is_empty()),
        ),
        ("changed", row.map(|r| r.changed.join("; ")).filter(|t| !t.is_empty())),
    ]
}

/// Lists of cameras, inputs, findings and checks.
fn lists(
    row: Option<&ArchiveRow>,
    record: Option<&JobRecord>,
    checks: &[CheckRecord],
    add: &mut impl FnMut(Option<&'static str>, &str, Cells),
) {
    let texts = |list: Vec<Option<String>>| Cells::Texts(row.map(|_| list).into_iter().collect());
    let named = |list: Vec<&str>| texts(list.into_iter().map(|t| Some(t.to_owned())).collect());
    add(
        Some("cameras"),
        "camera",
        named(record.map_or(Vec::new(), |r| r.context.cameras.iter().map(String::as_str).collect())),
    );
    let inputs = record.map_or(&[][..], |r| &r.inputs);
    add(Some("inputs"), "role", named(inputs.iter().map(|i| i.role.as_str()).collect()));
    add(Some("inputs"), "file", named(inputs.iter().map(|i| i.file.as_str()).collect()));
    add(Some("inputs"), "sha256", named(inputs.iter().map(|i| i.sha256.as_str()).collect()));
    let findings = record.map_or(&[][..], |r| &r.findings);
    add(Some("findings"), "code", named(findings.iter().map(|f| f.code.as_str()).collect()));
    add(Some("findings"), "level", named(findings.iter().map(|f| level(f.level)).collect()));
    let credentials = record.into_iter().flat_map(JobRecord::credentials);
    add(Some("credentials"), "state", named(credentials.map(|c| c.map_or("none", |c| c.state.name())).collect()));
    let of_checks =
        |get: fn(&CheckRecord) -> Option<&str>| texts(checks.iter().map(|c| get(c).map(str::to_owned)).collect());
    add(Some("checks"), "quantity", of_checks(|c| Some(&c.quantity)));
    add(Some("checks"), "from", of_checks(|c| c.from.as_deref()));
    add(Some("checks"), "target", of_checks(|c| c.target.as_deref()));
    add(Some("checks"), "step", of_checks(|c| c.step.as_deref()));
    add(Some("checks"), "unit", of_checks(|c| Some(&c.unit)));
    add(Some("checks"), "verdict", of_checks(|c| Some(c.verdict.name())));
    let numbers = |get: fn(&CheckRecord) -> Option<f64>| {
        Cells::Numbers(row.map(|_| checks.iter().map(get).collect()).into_iter().collect())
    };
    add(Some("checks"), "nominal", numbers(|c| Some(c.nominal)));
    add(Some("checks"), "lower", numbers(|c| c.lower));
    add(Some("checks"), "upper", numbers(|c| c.upper));
    add(Some("checks"), "value", numbers(|c| c.value));
    add(Some("checks"), "standard_uncertainty", numbers(|c| c.standard_uncertainty));
    add(Some("checks"), "expanded_uncertainty", numbers(|c| c.expanded_uncertainty));
}

fn level(level: Level) -> &'static str {
    match level {
        Level::Void => "void",
        Level::Stop => "stop",
        Level::Warn => "warn",
        Level::Note => "note",
    }
}
